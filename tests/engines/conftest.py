"""A phone with another engine than Chromium, and the site on a server that can really be stopped."""

import pytest

from tests.browser.conftest import SMALL, server, site  # noqa: F401 (fixtures for these tests too)
from tests.engines import firefox, webkit


@pytest.fixture(params=[firefox, webkit], ids=["firefox", "webkit"])
def phone(request, tmp_path):
    """Open a browser of phone size; opened again it is the same phone."""
    opened = []

    def open_phone():
        opened.append(request.param.open_phone(tmp_path / "phone", SMALL))
        return opened[-1]

    yield open_phone
