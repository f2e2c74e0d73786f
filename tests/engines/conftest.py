"""A phone with another engine than Chromium; the site is served as to the tests in Chromium."""

import pytest

from tests.browser.conftest import SMALL, server, site  # noqa: F401 (fixtures for these tests too)
from tests.engines import firefox, webkit


@pytest.fixture(params=[firefox, webkit], ids=["firefox", "webkit"])
def open_phone(request, tmp_path):
    """Open a browser of phone size, to be closed by a `with`; again, it is the same phone."""
    return lambda: request.param.open_phone(tmp_path / "phone", SMALL)
