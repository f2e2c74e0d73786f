"""A window of phone size with WebKitGTK's engine, opened by WebKitWebDriver.

Run by the system's Python, which has GTK; the engine's own small browser is never as narrow as a
phone, and lacks the storage that phones have. After `--automation`: the folder that keeps the
profile, the width and the height.
"""

import argparse

import gi

gi.require_version("Gtk", "3.0")
gi.require_version("WebKit2", "4.1")
from gi.repository import Gtk, WebKit2  # noqa: E402 (only after the versions are said)

FEATURES = {"StorageAPI", "StorageAPIEstimate", "FileSystem"}


def phone_settings():
    """The engine's settings, with the storage that phones have."""
    settings = WebKit2.Settings()
    features = WebKit2.Settings.get_all_features()
    for feature in map(features.get, range(features.get_length())):
        if feature.get_identifier() in FEATURES:
            settings.set_feature_enabled(feature, True)
    return settings


def open_window(context, width, height):
    """Open the one window; returns the view in it, as WebDriver wants it."""
    view = WebKit2.WebView(
        web_context=context, is_controlled_by_automation=True, settings=phone_settings()
    )
    window = Gtk.Window(decorated=False)
    window.set_default_size(width, height)
    window.add(view)
    window.show_all()
    window.connect("destroy", lambda _: Gtk.main_quit())
    return view


def main():
    """Wait for WebDriver's session, and give it its window."""
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--automation", action="store_true", required=True)
    parser.add_argument("profile")
    parser.add_argument("width", type=int)
    parser.add_argument("height", type=int)
    options = parser.parse_args()
    manager = WebKit2.WebsiteDataManager(
        base_data_directory=options.profile, base_cache_directory=f"{options.profile}/cache"
    )
    context = WebKit2.WebContext(website_data_manager=manager)
    context.set_automation_allowed(True)

    def started(_context, session):
        about = WebKit2.ApplicationInfo()
        about.set_name("phone")
        about.set_version(
            WebKit2.get_major_version(), WebKit2.get_minor_version(), WebKit2.get_micro_version()
        )
        session.set_application_info(about)
        session.connect(
            "create-web-view", lambda _: open_window(context, options.width, options.height)
        )

    context.connect("automation-started", started)
    Gtk.main()


main()
