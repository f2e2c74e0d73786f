"""A cutting plan, cut at the saw, and a coat of finish ticked, in Firefox and WebKit.

The search has a worker of its own; the moments are those of the device's clock.
"""

from tests.browser.words import EXAMPLE, SAVE, SAVE_TO_PROJECT, SAVED, USE_PLAN

ANSWER = "output[name=result] .main-answer"
TICKED = "() => [...document.querySelectorAll('.check-box')].some((each) => each.checked)"


def keep(phone, server, question, name):
    """The example of a question, kept in the project."""
    phone.goto(f"{server.address}#work-out/{question}")
    phone.tap(EXAMPLE)
    phone.until(lambda: phone.evaluate(answered()), "an answer")
    phone.tap(SAVE_TO_PROJECT)
    phone.type("Name", name)
    phone.tap(SAVE)
    phone.wait_for("#notices", f"{SAVED} {name}")


def answered():
    """Whether an answer stands there that belongs to what is filled in."""
    return "() => Boolean(document.querySelector('output[name=result]:not(.waiting) .main-answer'))"


def test_parts_are_planned_and_cut_in_the_order_of_the_plan(open_phone, server):
    with open_phone() as phone:
        phone.goto(server.address)
        keep(phone, server, "carcass", "Carcass")
        phone.goto(f"{server.address}#plan")
        phone.wait_for(".plan-body", "pieces to cut")
        phone.wait_for(".plan-body", "No plan buys less.")
        phone.tap(USE_PLAN)
        phone.wait_for("#notices", "Saved a cutting plan")
        phone.tap("At the saw")
        phone.wait_for("#place", "Sheet 1")
        phone.tap("Cut one")
        phone.wait_for("#place", "✓ cut")


def test_a_coat_that_is_ticked_moves_the_steps_after_it(open_phone, server):
    with open_phone() as phone:
        phone.goto(server.address)
        keep(phone, server, "coats", "Varnish")
        phone.goto(f"{server.address}#work-out/coats/1")
        phone.tap("First coat")
        phone.until(lambda: phone.evaluate(TICKED), "a step that is ticked")
        phone.wait_for("#place", "Second coat")
