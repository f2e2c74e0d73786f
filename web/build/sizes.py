"""What a first visit loads, in bytes as stored and as sent."""

import gzip
from pathlib import Path

from web.build.precache import kept_files
from web.build.serving import is_squeezed


def report(site: Path) -> str:
    """Return a table of the files kept by a first visit: kilobytes, and kilobytes as sent."""
    rows = []
    for kept in kept_files(site):
        content = (site / kept["url"]).read_bytes()
        sent = gzip.compress(content, 6) if is_squeezed(kept["url"]) else content
        rows.append((kept["url"], len(content), len(sent)))
    rows.sort(key=lambda row: -row[2])
    rows.append(("together", sum(row[1] for row in rows), sum(row[2] for row in rows)))
    width = max(30, *(len(row[0]) for row in rows))
    lines = [f"{name:{width}} {raw / 1000:9.1f} {sent / 1000:9.1f}" for name, raw, sent in rows]
    heading = f"{'A first visit loads and keeps':{width}} {'kB':>9} {'as sent':>9}"
    return "\n".join([heading, *lines])
