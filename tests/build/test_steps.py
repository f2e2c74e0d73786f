"""A build step runs again when, and only when, its sources have changed."""

import pytest

from web.build import steps


def test_a_fingerprint_depends_on_names_and_contents_only(tmp_path):
    """The same tree elsewhere and at another time is the same; a rename is not."""
    for place in ("one", "two"):
        (tmp_path / place / "web").mkdir(parents=True)
        (tmp_path / place / "web/main.js").write_text("1")
    one, two = (steps.fingerprint([tmp_path / place / "web"]) for place in ("one", "two"))
    assert one == two
    (tmp_path / "two/web/main.js").rename(tmp_path / "two/web/other.js")
    renamed = steps.fingerprint([tmp_path / "two/web"])
    (tmp_path / "two/web/other.js").write_text("2")
    changed = steps.fingerprint([tmp_path / "two/web"])
    assert len({one, renamed, changed}) == 3


def test_caches_and_installed_packages_do_not_count(tmp_path):
    """Importing a module must not make the site stale."""
    (tmp_path / "web").mkdir()
    before = steps.fingerprint([tmp_path / "web"])
    for litter in ("__pycache__", "node_modules"):
        (tmp_path / "web" / litter).mkdir()
        (tmp_path / "web" / litter / "file").write_text("x")
    assert steps.fingerprint([tmp_path / "web"]) == before


def test_a_folder_is_made_once_for_each_key(tmp_path):
    """The second time there is nothing to do; a new key empties the folder first."""
    folder = tmp_path / "made"
    assert steps.made(folder, "first", lambda new: (new / "old.txt").touch())
    assert not steps.made(folder, "first", lambda _new: pytest.fail("made again"))
    assert steps.made(folder, "second", lambda new: (new / "new.txt").touch())
    assert [each.name for each in folder.iterdir()] == ["new.txt"]


def test_a_step_that_fails_leaves_the_former_result(tmp_path):
    """And is tried again the next time."""
    folder = tmp_path / "made"
    steps.made(folder, "first", lambda new: (new / "good.txt").touch())

    def fail(_new):
        raise RuntimeError("broken off")

    with pytest.raises(RuntimeError):
        steps.made(folder, "second", fail)
    assert [each.name for each in folder.iterdir()] == ["good.txt"]
    assert steps.made(folder, "second", lambda new: (new / "new.txt").touch())
