"""What a thumb does with a cutting plan, and what the page asks of its workers for one."""

from tests.browser.hand import field_called, keep_as, try_example
from tests.browser.words import USE_PLAN

WATCHED = """
const { postMessage: post, terminate: end } = Worker.prototype;
const numbers = new Map();
const numberOf = (worker) => {
  if (!numbers.has(worker)) numbers.set(worker, numbers.size);
  return numbers.get(worker);
};
window.asked = [];
window.ended = [];
window.made = () => numbers.size;
window.holdFrom = Infinity;
window.held = null;
Worker.prototype.postMessage = function (message, ...more) {
  const number = numberOf(this);
  const { do: what, effort } = message.ask === "question" ? JSON.parse(message.text) : {};
  if (what) window.asked.push({ worker: number, do: what, effort });
  if (what === "plan" && effort >= window.holdFrom) window.held = this;
  else post.call(this, message, ...more);
};
Worker.prototype.terminate = function () {
  window.ended.push(numberOf(this));
  end.call(this);
};
"""
"""Each question with its worker; from the effort `holdFrom` on a plan is never answered."""

BEFORE_A_BETTER_ONE = "window.holdFrom = 1"


def watched_phone(phone, server, script="", *, has_clock=False):
    """A phone just opened whose workers are watched; its clock can be put forward."""
    context = phone(service_workers="block")
    context.add_init_script(WATCHED + script)
    page = context.pages[0]
    if has_clock:
        page.clock.install()
    page.goto(server.address)
    return page


def keep_carcass(page, server):
    """A carcass of the record cabinet, whose parts are to be cut out of sheets."""
    page.goto(f"{server.address}#work-out/carcass")
    try_example(page)
    keep_as(page, "Carcass")


def keep_panels(page, server, panels):
    """Panels 3/4″ thick to be cut out of sheets, each (length, width, how many) in inches."""
    for number, (length, width, many) in enumerate(panels, 1):
        page.goto(f"{server.address}#work-out/piece_by_hand")
        for label, text in (
            ("Length", length),
            ("How many", many),
            ("Stock width", width),
            ("Stock thickness", "3/4"),
        ):
            field_called(page, label).fill(str(text))
        keep_as(page, f"Panel {number}")
        page.evaluate("location.hash = 'project'")


def open_plan(page):
    """From the project to its plan, once there is one."""
    page.evaluate("location.hash = 'project'")
    page.get_by_role("button", name="Plan the cuts").tap()
    page.get_by_role("heading", name="Cutting plan").wait_for()
    page.locator(".plan-verdict:not(:empty)").wait_for()


def use_plan(page):
    """The search is over, and its plan goes into the project."""
    page.get_by_role("button", name="Stop", exact=True).wait_for(state="hidden")
    page.get_by_role("button", name=USE_PLAN).tap()
    page.locator("#place").get_by_role("button", name="At the saw").wait_for()


def to_the_saw(page):
    """The pieces by the boards of the plan."""
    page.locator("#place").get_by_role("button", name="At the saw").tap()
    page.locator(".saw-main").wait_for()


def asked(page, what):
    """The questions of a kind that were asked, in their order."""
    return page.evaluate("(what) => window.asked.filter((each) => each.do === what)", what)
