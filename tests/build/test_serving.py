"""The server that `serve` and the browser tests use."""

import gzip
import http.client
import re

import pytest

from web.build import serving

PAGE = """<meta
  http-equiv="Content-Security-Policy"
  content="default-src 'self'; object-src 'none'"
/>"""
POLICY = "default-src 'self'; object-src 'none'; frame-ancestors 'none'"


@pytest.fixture
def folder(tmp_path):
    """A small site, with a file beside it that is nobody's business."""
    site = tmp_path / "site"
    (site / "python").mkdir(parents=True)
    (site / "index.html").write_text(PAGE)
    (site / "worker.js").write_text("1;" * 500)
    (site / "python/runtime.wasm").write_bytes(b"\0asm" * 100)
    (site / "python/library.pack").write_bytes(b"abc" * 100)
    (site / "manifest.webmanifest").write_text("{}")
    (tmp_path / "private.txt").write_text("private")
    (site / "leak.txt").symlink_to(tmp_path / "private.txt")
    return site


@pytest.fixture
def server(folder):
    """A running server of that site."""
    with serving.started(folder) as running:
        yield running


def get(server, path, method="GET", **headers):
    """Ask for a path as it stands; return status, headers and body."""
    connection = http.client.HTTPConnection("127.0.0.1", server.server_port, timeout=30)
    connection.request(method, path, headers=headers)
    answer = connection.getresponse()
    body = answer.read()
    connection.close()
    return answer.status, answer.headers, body


@pytest.mark.parametrize(
    ("path", "kind"),
    [
        ("/", "text/html; charset=utf-8"),
        ("/index.html?from=home", "text/html; charset=utf-8"),
        ("/worker.js", "text/javascript; charset=utf-8"),
        ("/python/runtime.wasm", "application/wasm"),
        ("/python/library.pack", "application/octet-stream"),
        ("/manifest.webmanifest", "application/manifest+json"),
    ],
)
def test_each_kind_of_file_is_named_as_browsers_want_it(server, path, kind):
    """A module, a wasm and a manifest are refused under another name."""
    status, headers, _body = get(server, path)
    assert (status, headers["Content-Type"]) == (200, kind)


@pytest.mark.parametrize("path", ["/", "/worker.js"])
def test_the_policy_of_the_page_is_sent_with_page_and_worker(server, path):
    """A worker inherits no policy from the page's meta tag."""
    assert get(server, path)[1]["Content-Security-Policy"] == POLICY


def test_text_and_wasm_are_sent_compressed_and_whole(server, folder):
    """What arrives unpacks to the file; the length sent is the compressed one."""
    for name in ("worker.js", "python/runtime.wasm"):
        _status, headers, body = get(server, f"/{name}", **{"Accept-Encoding": "br, gzip"})
        assert headers["Content-Encoding"] == "gzip"
        assert int(headers["Content-Length"]) == len(body)
        assert gzip.decompress(body) == (folder / name).read_bytes()


def test_nothing_is_compressed_for_those_who_do_not_ask(server, folder):
    """Packs are compressed within, and a client may take none at all."""
    asked = get(server, "/python/library.pack", **{"Accept-Encoding": "gzip"})
    unasked = get(server, "/worker.js")
    assert "Content-Encoding" not in asked[1]
    assert "Content-Encoding" not in unasked[1]
    assert unasked[2] == (folder / "worker.js").read_bytes()


def test_an_unchanged_file_is_not_sent_again_and_a_changed_one_is(server, folder):
    """Each use asks whether the copy at hand is still the file."""
    _status, headers, _body = get(server, "/worker.js")
    assert headers["Cache-Control"] == "no-cache"
    known = {"If-None-Match": headers["ETag"]}
    assert get(server, "/worker.js", **known)[::2] == (304, b"")
    (folder / "worker.js").write_text("2;")
    assert get(server, "/worker.js", **known)[::2] == (200, b"2;")


def test_head_says_all_but_the_body(server):
    """As a browser's download manager asks."""
    status, headers, body = get(server, "/worker.js", method="HEAD")
    assert (status, headers["Content-Length"], body) == (200, "1000", b"")


@pytest.mark.parametrize(
    "path",
    [
        "/../private.txt",
        "/%2e%2e/private.txt",
        "/python/../../private.txt",
        "/leak.txt",
        "//private.txt",
        "/missing.js",
        "/python/",
        "/index.html%00.js",
    ],
)
def test_nothing_outside_the_folder_is_ever_sent(server, path):
    """Neither by dots, nor by a link, nor by odd characters; nor is there a list of files."""
    status, _headers, body = get(server, path)
    assert status == 404
    assert b"private" not in body


def test_a_stopped_server_answers_nobody(folder):
    """Connections kept alive are cut too: offline tests must not be fooled."""
    with serving.started(folder) as server:
        kept = http.client.HTTPConnection("127.0.0.1", server.server_port, timeout=30)
        kept.request("GET", "/")
        assert kept.getresponse().read() == PAGE.encode()
        server.stop()
        kept.sock.settimeout(30)
        assert kept.sock.recv(1) == b""  # cut at the other end
        kept.close()
        with pytest.raises(ConnectionRefusedError):
            get(server, "/")


def test_it_listens_on_this_machine_alone(server):
    """The garage's network is none of its business."""
    assert server.server_address[0] == "127.0.0.1"
    assert re.fullmatch(r"http://localhost:\d+/", server.address)
