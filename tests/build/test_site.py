"""The static site, as a static host gets it."""

import base64
import hashlib
import json
import re
import shutil
import zipfile

import pytest

from web.build import environment, precache, site
from web.build.environment import ROOT
from web.build.steps import files_under


@pytest.fixture(scope="module")
def built():
    """The folder that `python3 build.py site` writes."""
    return site.build(environment.ready())


def contents(folder):
    """Return {name inside: bytes} of a folder."""
    return {str(each.relative_to(folder)): each.read_bytes() for each in files_under(folder)}


def test_two_builds_of_the_same_sources_are_the_same_bytes(built, tmp_path):
    """In another place and at another time; so the version says what a person really has."""
    leave = shutil.ignore_patterns("node_modules", "__pycache__")
    for part in ("web", "pycore"):
        shutil.copytree(ROOT / part, tmp_path / part, ignore=leave, copy_function=shutil.copyfile)
    (tmp_path / "web/node_modules").symlink_to(ROOT / "web/node_modules")
    for known in ("fetched", "fetched.key"):  # bound to the lock by hash already
        source = ROOT / ".build" / known
        copy = shutil.copytree if source.is_dir() else shutil.copy
        (tmp_path / ".build").mkdir(exist_ok=True)
        copy(source, tmp_path / ".build" / known)
    again = contents(site.build(environment.ready(), tmp_path))
    first = contents(built)
    assert first.keys() == again.keys()
    assert [name for name in first if first[name] != again[name]] == []


def test_every_file_that_the_page_needs_is_kept_for_use_without_network(built):
    """The list in the service worker names each file, with the hash of what lies there."""
    code = (built / "service-worker.js").read_text()
    entry = r'\{"url":"([^"]+)","revision":"[0-9a-f]{16}","integrity":"sha256-([^"]+)"\}'
    listed = dict(re.findall(entry, code))
    files = contents(built)
    not_kept = {name for name in files if name.startswith("icons/screenshot-")}
    assert set(listed) == set(files) - not_kept - {"service-worker.js"}
    for name, integrity in listed.items():
        assert base64.b64decode(integrity) == hashlib.sha256(files[name]).digest(), name


def test_what_is_for_checks_alone_is_not_sent(built):
    """TypeScript and its shapes are for us; a phone gets what runs."""
    assert [name for name in contents(built) if name.endswith((".ts", ".map"))] == []


def wheels_in(folder):
    """Return {distribution: names of its files} of the wheels in `folder`."""
    return {each.name.split("-")[0]: set(names_in(each)) for each in folder.glob("*.whl")}


def names_in(archive):
    """The names of the files in an archive, without what they were compiled from."""
    with zipfile.ZipFile(archive) as opened:
        return [re.sub(r"\.py$", ".pyc", each) for each in opened.namelist()]


def test_the_wheels_and_their_rest_are_all_that_was_built_but_for_tests(built):
    """Nothing is lost where the wheels are parted in what the first answer needs and the rest."""
    first, rest = wheels_in(built / "python/wheels"), names_in(built / "python/wheels-rest.zip")
    whole = wheels_in(built.parent / ".build/wheels")
    assert first.keys() == whole.keys()
    left_out = re.compile(r"(^|/)(tests?|testsuite|sboms)/")
    wanted = {name for names in whole.values() for name in names if not left_out.search(name)}
    assert set(rest).union(*first.values()) == wanted
    twice = [name for name in rest if any(name in names for names in first.values())]
    assert all(name.endswith(".dist-info/RECORD") for name in twice)


def test_a_first_visit_waits_for_no_question(built):
    """What is sent before the first answer does not grow with the questions."""
    first = wheels_in(built / "python/wheels")["sawside"]
    beyond = ("drawing/", "reckoners/", "reckoning/", "project/", "tally/", "messages.")
    assert "sawside/door.pyc" in first
    assert [each for each in first if each.removeprefix("sawside/").startswith(beyond)] == []


def test_page_manifest_and_styles_name_only_files_of_the_site_and_relatively(built):
    """So it works in any folder of any static host, and asks nothing of another."""
    named = re.findall(r'(?:href|src)="([^"#]*)"', (built / "index.html").read_text())
    manifest = json.loads((built / "manifest.webmanifest").read_text())
    named += [each["src"] for each in manifest["icons"] + manifest.get("screenshots", [])]
    named += re.findall(r"url\(([^)]*)\)", (built / "styles.css").read_text())
    assert len(named) > 5
    assert [each for each in named if not (built / each).is_file() or each.startswith("/")] == []
    assert manifest["start_url"] == manifest["scope"] == "./"


def small_site(folder, page):
    """A site of two files, for the version alone."""
    folder.mkdir()
    (folder / "index.html").write_text(page)
    (folder / "service-worker.js").write_text(f"keep({precache.SLOT})")
    return folder


def test_the_version_follows_the_content(tmp_path):
    """The same files are the same version, one changed letter is another."""
    pages = {"one": "page", "two": "page", "three": "Page"}
    versions = [precache.write(small_site(tmp_path / name, pages[name])) for name in pages]
    assert versions[0] == versions[1] != versions[2]
    said = json.loads((tmp_path / "one/version.json").read_text())
    assert said == {"version": versions[0]}


def test_a_service_worker_without_place_for_the_list_is_refused(tmp_path):
    """Else a site would be built that keeps nothing."""
    folder = small_site(tmp_path / "site", "page")
    (folder / "service-worker.js").write_text("keep([])")
    with pytest.raises(ValueError, match="exactly once"):
        precache.write(folder)
