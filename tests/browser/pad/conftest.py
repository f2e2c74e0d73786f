"""The pad, opened: at once, or while the core is still held back."""

import pytest

from tests.browser.pad.in_pad import entry


@pytest.fixture
def pad(phone, server):
    """The pad of a phone just opened."""
    opened = phone().pages[0]
    opened.goto(server.address)
    return opened


@pytest.fixture
def waking(phone, server):
    """The pad while the core is not there yet: it is held until `wake(page)`."""
    context = phone(service_workers="block")
    context.add_init_script(
        """
        const post = Worker.prototype.postMessage;
        const waiting = [];
        window.asleep = true;
        window.wake = () => {
          window.asleep = false;
          for (const each of waiting) post.apply(...each);
        };
        Worker.prototype.postMessage = function (...message) {
          if (window.asleep) waiting.push([this, message]);
          else post.apply(this, message);
        };
        """
    )
    opened = context.pages[0]
    opened.goto(server.address)
    entry(opened).wait_for()
    return opened
