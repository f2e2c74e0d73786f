"""Make a folder again only when what it is made from has changed."""

import contextlib
import fcntl
import hashlib
import shutil
from collections.abc import Callable, Iterable, Iterator
from pathlib import Path

LITTER = {"__pycache__", "node_modules"}


def files_under(folder: Path) -> list[Path]:
    """Every file under `folder` in a fixed order, without caches and installed packages."""
    found = (each for each in folder.rglob("*") if each.is_file())
    return sorted(each for each in found if not LITTER & set(each.relative_to(folder).parts))


def fingerprint(sources: Iterable[Path], *facts: str) -> str:
    """SHA-256 (hex) of the names and contents of files and folders, and of further `facts`.

    Where the tree lies and when its files were written do not matter.
    """
    digest = hashlib.sha256()
    for source in sources:
        for file in files_under(source) if source.is_dir() else [source]:
            inside = file.relative_to(source.parent).as_posix()
            content = hashlib.sha256(file.read_bytes()).hexdigest()
            digest.update(f"{inside}\0{content}\n".encode())
    for fact in facts:
        digest.update(f"{fact}\n".encode())
    return digest.hexdigest()


def made(folder: Path, key: str, make: Callable[[Path], None], work: Path | None = None) -> bool:
    """Let `make` fill `folder` unless it was made under the same `key`; say whether it did.

    It is filled under another name and moved, so a build that breaks off leaves the old one.
    That, and a note of the key, lie in `work`, else beside `folder`.
    """
    work = work or folder.parent
    stamp = work / f"{folder.name}.key"
    if folder.is_dir() and stamp.is_file() and stamp.read_text() == key:
        return False
    fresh = work / f"{folder.name}.new"
    shutil.rmtree(fresh, ignore_errors=True)
    fresh.mkdir(parents=True)
    make(fresh)
    stamp.unlink(missing_ok=True)
    shutil.rmtree(folder, ignore_errors=True)
    fresh.rename(folder)
    stamp.write_text(key)
    return True


@contextlib.contextmanager
def one_at_a_time(work: Path) -> Iterator[None]:
    """Hold `work` for this process; a second build waits for the first."""
    work.mkdir(parents=True, exist_ok=True)
    with (work / "lock").open("w") as lock:
        fcntl.flock(lock, fcntl.LOCK_EX)
        yield
