"""How the site is made from `web/` and `pycore/`.

environment  the Python and node that everything below runs with
browsers     the browsers that the tests drive, from Debian's packages
steps        make a folder again only when what it is made from has changed
core_wheels  the wheels that the browser's Python loads
site         all of it together in `.site/`
precache     the list of files kept for use without network, and the version
sizes        what a first visit loads
serving      the static server of `serve` and of the tests
style        the format that `format` writes
lock         renew the lock files

Only the standard library is imported here, so that `build.py` runs on a bare Python.
"""
