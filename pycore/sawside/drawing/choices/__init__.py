"""The small drawings beside the words of a choice, where a picture tells more than they do.

Each is a dict of the choice's value to a drawing about an inch wide, without texts: no sizes.
"""
