"""The list of files kept for use without network, and the version: both from the content."""

import base64
import hashlib
import json
from pathlib import Path

SLOT = "self.__WB_MANIFEST"
# Only a browser that offers to install the app looks at the screenshots.
NOT_KEPT = ("icons/screenshot-",)


def kept_files(site: Path) -> list[dict[str, str]]:
    """List the files under `site` as Workbox's precaching takes them.

    `integrity` lets the browser refuse a file that belongs to another version, as when it asks
    while a new version is being copied to the host.
    """
    kept = []
    for file in sorted(site.rglob("*")):
        url = file.relative_to(site).as_posix()
        if file.is_file() and url != "service-worker.js" and not url.startswith(NOT_KEPT):
            digest = hashlib.sha256(file.read_bytes()).digest()
            integrity = "sha256-" + base64.b64encode(digest).decode()
            kept.append({"url": url, "revision": digest.hex()[:16], "integrity": integrity})
    return kept


def write(site: Path) -> str:
    """Write `version.json`, and the list into the service worker; return the version.

    Raises ValueError unless the service worker has exactly one place for the list.
    """
    service_worker = site / "service-worker.js"
    code = service_worker.read_text(encoding="utf-8")
    if code.count(SLOT) != 1:
        raise ValueError(f"web/offline/service-worker.js must say {SLOT} exactly once.")
    version = hashlib.sha256((json.dumps(kept_files(site)) + code).encode()).hexdigest()[:12]
    (site / "version.json").write_text(json.dumps({"version": version}) + "\n")
    filled = code.replace(SLOT, json.dumps(kept_files(site), separators=(",", ":")))
    service_worker.write_text(filled, encoding="utf-8")
    return version
