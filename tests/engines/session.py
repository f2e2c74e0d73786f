"""What a person does with a page, the same in every engine.

An engine's own module (firefox.py, webkit.py) has `open_phone(profile, size)`, which gives a
`Session`; the same profile again is the same phone, opened again.
"""

import time
from abc import ABC, abstractmethod

from tests.browser.hand import KEY_NAMES

# As Playwright's own waiting, in seconds; the slow start of the core takes some of them.
PATIENCE = 90
PAUSE = 0.1
# What can be tapped, by its name; where no name is just that, the first that begins with it.
CONTROL = """
([name, group]) => {
  const named = (each) => (each.ariaLabel ?? each.textContent).trim();
  const title = (each) => each.ariaLabel ?? each.querySelector("legend")?.textContent;
  const groups = [...document.querySelectorAll("[role=group], fieldset, nav, main, dialog")];
  const places = group ? groups.filter((each) => title(each) === group) : [document];
  const controls = places
    .flatMap((place) => [...place.querySelectorAll("a, button, label, summary")])
    .filter((each) => each.checkVisibility());
  return controls.find((each) => named(each) === name)
    ?? controls.find((each) => named(each).startsWith(name)) ?? null;
}
"""
FIELD = """
(label) => [...document.querySelectorAll("input")]
  .filter((each) => each.checkVisibility())
  .find((each) => each.ariaLabel === label
    || [...each.labels].some((every) => every.textContent.trim() === label)) ?? null
"""
SEEN = """
([css, text]) => [...document.querySelectorAll(css)].some((each) =>
  each.checkVisibility() && each.textContent.includes(text))
"""


class Session(ABC):
    """A browser with one page. What is not there yet is waited for, up to PATIENCE seconds."""

    # What the engine's driver raises when the page has changed between a look and a touch.
    changed: type[Exception]

    @abstractmethod
    def goto(self, url):
        """Load `url`."""

    @abstractmethod
    def evaluate(self, script, value=None):
        """Call the JavaScript function `script` with `value`; gives what its promise gives."""

    @abstractmethod
    def element(self, script, value):
        """The element that the function `script` returns, to be clicked, or None."""

    @abstractmethod
    def write(self, element, text):
        """Type `text` on the keyboard in place of what the field `element` holds."""

    @abstractmethod
    def close(self):
        """Close the browser; its profile stays."""

    def __enter__(self):
        """Use it in a `with` block, so that it is closed whatever happens."""
        return self

    def __exit__(self, *_):
        """Close it."""
        self.close()

    def tap(self, name, group=None):
        """Tap the button, link, label or line called `name`, in the group of that name if any."""
        self._touch(lambda control: control.click(), CONTROL, [name, group])

    def type(self, label, text):
        """Type into the field with that label, on the keyboard."""
        self._touch(lambda field: self.write(field, text), FIELD, label)

    def tap_keys(self, label, text):
        """Tap the field with that label, and `text` on the keypad that then comes up."""
        self._touch(lambda field: field.click(), FIELD, label)
        for letter in text:
            self.tap(KEY_NAMES.get(letter, letter), group="Keypad")

    def wait_for(self, css, text):
        """Wait until an element in sight that matches `css` says `text`."""
        self.until(lambda: self.evaluate(SEEN, [css, text]), f"{text!r} in {css}")

    def until(self, look, sought):
        """Wait for what `look` returns to be true, and return it; `sought` says what that is."""
        last = time.monotonic() + PATIENCE
        reason = None
        while True:
            try:
                if seen := look():
                    return seen
            except self.changed as error:
                reason = error
            if time.monotonic() > last:
                text = self.evaluate("() => document.body.innerText")
                missed = f"Not within {PATIENCE} s: {sought}. The page says:\n{text}"
                raise AssertionError(missed) from reason
            time.sleep(PAUSE)

    def _touch(self, touch, script, value):
        def touched():
            if (found := self.element(script, value)) is None:
                return False
            touch(found)
            return True

        self.until(touched, f"to touch {value}")
