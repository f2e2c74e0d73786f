"""What the machine lacks is installed, or named in the one command to type."""

import os
import shutil

import pytest

from web.build import debian


def test_what_is_installed_is_told_from_what_is_not():
    """dpkg itself is there; a package of an impossible name is not."""
    assert debian.missing(["dpkg", "no-such-package-of-ours"]) == ["no-such-package-of-ours"]


def test_without_leave_to_install_the_command_to_type_is_named(monkeypatch):
    """One line to copy, naming only what is missing."""
    monkeypatch.setattr(os, "geteuid", lambda: 1000)
    with pytest.raises(debian.NotInstalledError) as refused:
        debian.install(["dpkg", "no-such-package-of-ours"])
    command = "apt-get install --yes --no-install-recommends no-such-package-of-ours"
    assert str(refused.value) == f"Missing. Type: sudo {command}"


def test_another_system_is_told_which_packages_are_needed(monkeypatch):
    """Where there is no dpkg there is no command that we could name."""
    monkeypatch.setattr(shutil, "which", lambda _name: None)
    with pytest.raises(debian.NotInstalledError, match="needs Debian, with the packages chromium"):
        debian.install(["chromium"])
