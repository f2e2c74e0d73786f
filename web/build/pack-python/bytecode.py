"""Compile the standard library and wheels into archives that are the same at every build.

Runs inside Pyodide, started by pack-python.mjs.
"""

import base64
import hashlib
import importlib.util
import io
import re
import zipfile
from importlib._bootstrap_external import _code_to_hash_pyc as to_pyc

FIRST_DAY = (1980, 1, 1, 0, 0, 0)
# Loaded by Pyodide's own scripts, some only on demand.
ALWAYS = (
    "pyodide/",
    "_pyodide/",
    "encodings/__init__",
    "encodings/utf_8",
    "encodings/idna",
    "encodings/ascii",
)
LEFT_OUT = re.compile(r"(^|/)(tests?|testsuite|sboms)/")


def compile_all(in_use, opened):
    """Return the archives by name: the library in use, the wheels as far as they are `opened` by
    the first question, and the rest of both.
    """
    core, rest = {}, {}
    for name, content in read("/stdlib.zip").items():
        wanted = name in in_use or name.startswith(ALWAYS)
        (core if wanted else rest).update([bytecode(name, content, "/lib/python314.zip/")])
    library = archive(core)
    made = {"library.zip": library, "library-rest.bin": archive(rest, onto=library)}
    from pathlib import Path

    more = {}
    for path in sorted(Path("/").glob("*.whl")):
        name, first, others = wheel(path, opened)
        made[f"wheels/{name}"] = archive(first)
        more |= others
    return made | {"wheels-rest.zip": archive(more)}


def bytecode(name, content, folder):
    """Return the name and content of the compiled module; what is no module is left as it is.

    Docstrings are of no use without a prompt, and nothing that is packed reads its own.
    """
    if not name.endswith(".py"):
        return name, content
    code = compile(content, folder + name, "exec", dont_inherit=True, optimize=2)
    # Bound to the source's hash and never checked: there is no source, and no clock in it.
    return f"{name}c", bytes(to_pyc(code, importlib.util.source_hash(content), False))


def wheel(path, opened):
    """Return the name of the wheel at `path` with bytecode for this Python alone, and its files:
    those that are `opened` and what an installer must have, and those that make it whole.
    """
    name, version = path.name.split("-")[:2]
    site = "/lib/python3.14/site-packages/"
    kept = {each: content for each, content in read(path).items() if not LEFT_OUT.search(each)}
    about = f"{name}-{version}.dist-info"
    tagged = re.sub(rb"(?m)^Tag: .*\n", b"", kept[f"{about}/WHEEL"]).rstrip(b"\n")
    kept[f"{about}/WHEEL"] = tagged + b"\nTag: cp314-none-any\n"
    del kept[f"{about}/RECORD"]
    needed = {*opened, f"{about}/METADATA", f"{about}/WHEEL"}
    first, rest = {}, {}
    for each, content in kept.items():
        part = first if each in needed else rest
        part.update([bytecode(each, content, site)])
    # The record of the whole comes with the rest, in place of the first.
    rest[f"{about}/RECORD"] = record(about, first | rest)
    first[f"{about}/RECORD"] = record(about, first)
    return f"{name}-{version}-cp314-none-any.whl", first, rest


def record(about, files):
    """Return what a wheel says of its files; `about` is the folder that this record is in."""
    rows = [f"{each},{digest(content)},{len(content)}\n" for each, content in sorted(files.items())]
    return "".join([*rows, f"{about}/RECORD,,\n"]).encode()


def digest(content):
    return (
        "sha256=" + base64.urlsafe_b64encode(hashlib.sha256(content).digest()).rstrip(b"=").decode()
    )


def read(path):
    with zipfile.ZipFile(path) as source:
        return {each: source.read(each) for each in source.namelist() if not each.endswith("/")}


def archive(files, onto=b""):
    """Return `files` as an archive, or what makes the archive `onto` one of its files and these.

    Python looks for a part of a package only where the package came from, so a library in two
    archives would not do: the rest is of such a form that it is simply put after the first.
    """
    made = io.BytesIO(onto)
    with zipfile.ZipFile(made, "a") as target:
        target.start_dir = len(onto)
        for name in sorted(files):
            entry = zipfile.ZipInfo(name, FIRST_DAY)
            entry.compress_type = zipfile.ZIP_DEFLATED
            entry.create_system = 3
            entry.external_attr = 0o644 << 16
            target.writestr(entry, files[name], compresslevel=9)
    return made.getvalue()[len(onto) :]
