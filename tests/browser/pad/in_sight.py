"""What of the pad is whole in sight, on a phone upright or on its side, and with large text."""

import sawside

NUMBER = [".pad-answer .fraction-seen", ".pad-card > .primary", ".pad-entry"]
PLACE = [".pad-answer .small-print .aside", ".pad-answer .tape", ".pad-answer .tape-words"]
KEYS = [".key", ".strip"]
SIDEWAYS = (740, 360)

OUT_OF_SIGHT = """
(selectors) => {
  const outside = (box, { left, right, top, bottom }) =>
    box.left < left - 1 || box.right > right + 1 || box.top < top - 1 || box.bottom > bottom + 1;
  const cut = (node, box) => {
    for (let each = node.parentElement; each; each = each.parentElement) {
      const { overflowY, display } = getComputedStyle(each);
      const isOpen = overflowY === "visible" || display === "contents";
      if (!isOpen && outside(box, each.getBoundingClientRect())) return true;
    }
    return outside(box, { left: 0, right: innerWidth, top: 0, bottom: innerHeight });
  };
  const covered = (node, { left, right, top, bottom }) => {
    const middle = [(left + right) / 2, (top + bottom) / 2];
    return [[left + 2, top + 2], middle, [right - 2, bottom - 2]].some((point) => {
      const touched = document.elementFromPoint(...point);
      return !touched || !(node.contains(touched) || touched.contains(node));
    });
  };
  const isWhole = (node) => {
    const box = node.getBoundingClientRect();
    return box.height >= 1 && !cut(node, box) && !covered(node, box);
  };
  return selectors.filter((selector) => {
    const all = [...document.querySelectorAll(selector)].filter((each) => each.checkVisibility());
    return all.length === 0 || !all.every(isWhole);
  });
}
"""

KEEP_TALLY = """(tally) => new Promise((resolve, reject) => {
  const opened = indexedDB.open("sawside");
  opened.onerror = reject;
  opened.onsuccess = () => {
    const writing = opened.result.transaction("page", "readwrite");
    writing.objectStore("page").put(tally, "tally");
    writing.oncomplete = () => {
      opened.result.close();
      resolve();
    };
  };
})"""


def out_of_sight(page, selectors):
    """What of `selectors` is not whole on the screen: cut off, covered or not there at all."""
    return page.evaluate(OUT_OF_SIGHT, selectors)


def fill_tally(page, unit="in", lines=12):
    """Lay lines on the tally, as after a morning's work, and open the pad again."""
    texts = [f"{31 + each} 5/8 + 2 1/4" for each in range(lines)]
    kept = [
        {"id": str(at), "name": "", "text": text, "unit": unit} for at, text in enumerate(texts, 1)
    ]
    tally = {"schema": 2, "next": lines + 1, "lines": kept}
    told = sawside.handle({"do": "tally", "tally": tally, "settings": {"unit": unit}})
    shown = {"tally": told["tally"], "lines": told["lines"], "undo": [], "redo": []}
    page.evaluate(KEEP_TALLY, shown)
    page.reload()
    page.locator(".tally-line").nth(lines - 1).wait_for(state="attached")


def type_whole(page, text):
    """Fill the entry, and wait until its answer is there."""
    page.get_by_role("textbox", name="Length or sum").fill(text)
    page.locator(f'output[name=pad-answer][data-for="{text}"]:not(.waiting)').wait_for()


def enlarge(page):
    """Twice the text size."""
    page.evaluate("document.documentElement.style.fontSize = '200%'")
