"""The shape of every message and of every answer, written down once.

`messages.MESSAGES` lists them by name; the other files hold what they are made of. Nothing at run
time asks for these: the tests hold every answer to them, and the build tells the page's code of
them. Imports: nothing but each other.
"""
