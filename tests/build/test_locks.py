"""What is installed is what was locked, for both Pythons and for node."""

import json
import re

import pytest

from web.build import environment, lock
from web.build.environment import ROOT

PYTHON_LOCKS = [
    "pycore/requirements.txt",
    "tests/requirements.txt",
    "web/requirements.txt",
    "web/python-packages.txt",
]


def locked(lock):
    """Return {name: (version, set of SHA-256 hashes)} of a Python lock file."""
    text = (ROOT / lock).read_text().replace("\\\n", " ")
    lines = [line for line in text.splitlines() if line and not line.lstrip().startswith("#")]
    packages = {}
    for line in lines:
        name, version = re.match(r"([a-z0-9-]+)==([^\s;]+)", line).groups()
        packages[name] = (version, frozenset(re.findall(r"--hash=sha256:([0-9a-f]{64})", line)))
    return packages


@pytest.mark.parametrize("lock", PYTHON_LOCKS)
def test_every_python_package_is_pinned_by_version_and_hash(lock):
    """Each line names one version and at least one hash."""
    packages = locked(lock)
    assert packages
    assert all(hashes for _version, hashes in packages.values())


@pytest.mark.parametrize("lock", [*PYTHON_LOCKS, "web/package-lock.json"])
def test_no_lock_names_a_place_to_download_from(lock):
    """Where packages come from is for each machine to say."""
    text = (ROOT / lock).read_text()
    assert not re.search(r"--(index|extra-index|find-links|trusted)|file:|\"resolved\"", text)
    assert not re.search(r"https?://\S+\.(whl|tgz|tar\.gz|zip)|simple/?$", text, re.MULTILINE)


def test_every_node_package_is_pinned_by_version_and_hash():
    """The lock holds an SHA-512 for each package that is not the site itself."""
    packages = json.loads((ROOT / "web/package-lock.json").read_text())["packages"]
    others = {path: each for path, each in packages.items() if path}
    assert len(others) > 5
    for path, each in others.items():
        assert each["version"], path
        assert each["integrity"].startswith("sha512-"), path


def test_direct_node_packages_name_one_version_each():
    """No ranges: the lock is renewed on purpose only."""
    package = json.loads((ROOT / "web/package.json").read_text())
    for version in (package["dependencies"] | package["devDependencies"]).values():
        assert re.fullmatch(r"\d+\.\d+\.\d+", version)


def test_both_pythons_run_the_same_pint():
    """The core under CPython and in the browser computes with one and the same package."""
    here, in_browser = locked(PYTHON_LOCKS[0]), locked(PYTHON_LOCKS[3])
    assert here["pint"] == in_browser["pint"]
    assert set(here) <= set(in_browser)
    assert all(in_browser[name] == here[name] for name in here)


def test_the_core_asks_for_the_locked_pint():
    """`pycore/pyproject.toml` and the lock cannot drift apart."""
    version, _hashes = locked(PYTHON_LOCKS[0])["pint"]
    assert f'"pint=={version}"' in (ROOT / "pycore/pyproject.toml").read_text()


def test_a_lock_is_renewed_though_what_it_says_cannot_be_installed(monkeypatch, tmp_path):
    """As after a package was added to `package.json`: its lock comes first."""
    changed = tmp_path / "package.json"
    changed.write_text("{}")
    commands = []
    monkeypatch.setattr(environment, "NODE_LOCKS", [changed])
    monkeypatch.setattr(
        environment.Environment, "run", lambda _self, *words, **_: commands.append(words)
    )
    monkeypatch.setattr(lock, "without_addresses", lambda _lock: None)
    lock.main([])
    assert [words[1] for words in commands if str(words[0]).endswith("npm")] == ["install"]
