#!/usr/bin/python3
"""A window of phone size with WebKitGTK's engine, for WebDriver; run by the system's Python.

The engine's own small browser is never as narrow as a phone, and lacks the storage API.
`WEBKIT_SIZE`, such as 412x915, is its size; `WEBKIT_DATA` is the folder that keeps its profile.
"""

import os
import sys

import gi

gi.require_version("Gtk", "3.0")
gi.require_version("WebKit2", "4.1")
from gi.repository import Gtk, WebKit2  # noqa: E402 (only after the versions are said)

FEATURES = {"StorageAPI", "StorageAPIEstimate", "FileSystem"}


def settings():
    """The engine's settings, with the storage that phones have."""
    made = WebKit2.Settings()
    every = WebKit2.Settings.get_all_features()
    for place in range(every.get_length()):
        feature = every.get(place)
        if feature.get_identifier() in FEATURES:
            made.set_feature_enabled(feature, True)
    return made


def main():
    """Wait for WebDriver to ask for a window."""
    width, height = map(int, os.environ.get("WEBKIT_SIZE", "412x915").split("x"))
    data = os.environ["WEBKIT_DATA"]
    manager = WebKit2.WebsiteDataManager(
        base_data_directory=data, base_cache_directory=f"{data}/cache"
    )
    context = WebKit2.WebContext(website_data_manager=manager)
    context.set_automation_allowed(True)
    shared = settings()

    def window(_session):
        view = WebKit2.WebView(
            web_context=context, is_controlled_by_automation=True, settings=shared
        )
        frame = Gtk.Window(decorated=False)
        frame.set_default_size(width, height)
        frame.add(view)
        frame.show_all()
        frame.resize(width, height)
        frame.connect("destroy", lambda *_: Gtk.main_quit())
        return view

    def started(_context, session):
        about = WebKit2.ApplicationInfo()
        about.set_name("webkit-phone")
        version = (
            WebKit2.get_major_version(),
            WebKit2.get_minor_version(),
            WebKit2.get_micro_version(),
        )
        about.set_version(*version)
        session.set_application_info(about)
        session.connect("create-web-view", window)

    context.connect("automation-started", started)
    if "--automation" not in sys.argv:
        sys.exit("Started by WebKitWebDriver, with --automation.")
    Gtk.main()


main()
