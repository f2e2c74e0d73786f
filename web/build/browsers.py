"""The three browsers that the tests and the bench drive, from Debian's packages."""

from web.build import debian

CHROMIUM = ["chromium"]
FIREFOX = ["firefox-esr"]
# WebKit needs a screen, and a window of phone size is made with GTK's own Python.
WEBKIT = [
    "webkit2gtk-driver",
    "xvfb",
    "xauth",
    "python3-gi",
    "gir1.2-webkit2-4.1",
    "gir1.2-gtk-3.0",
]


def ready() -> None:
    """See that they are installed; raises debian.NotInstalledError with the command to type."""
    debian.install([*CHROMIUM, *FIREFOX, *WEBKIT])
