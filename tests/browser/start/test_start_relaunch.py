"""Opened again without network: at once from the snapshot, or the slow way if that is no good."""

import pytest

from tests.browser.start.start_support import (
    answers_rightly,
    open_at,
    wait_for_snapshot,
    wait_until_kept,
    way_of_start,
)

CHANGE = """
async (change) => {
  const cache = await caches.open("python-snapshot");
  const [key] = await cache.keys();
  const kept = await cache.match(key);
  let bytes = new Uint8Array(await kept.arrayBuffer());
  const facts = JSON.parse(decodeURIComponent(kept.headers.get("X-Snapshot")));
  const sum = async () => Array.from(
    new Uint8Array(await crypto.subtle.digest("SHA-256", bytes)),
    (each) => each.toString(16).padStart(2, "0"),
  ).join("");
  if (change === "cut short") bytes = bytes.slice(0, bytes.length / 2);
  if (change === "one bit turned") bytes[bytes.length >> 1] ^= 1;
  if (change === "of another version") facts.build = "0".repeat(64);
  if (change === "of another form") facts.format = 0;
  if (change === "without its facts") for (const name of Object.keys(facts)) delete facts[name];
  if (change === "of a runtime with another header") facts.header[0] ^= 1;
  if (change === "whole but senseless") {
    bytes.fill(0x55, bytes.length / 4);
    facts.sha256 = await sum();
  }
  if (change === "of a core that answers otherwise") facts.trial = "{}";
  const headers = { "X-Snapshot": encodeURIComponent(JSON.stringify(facts)) };
  await cache.put(key, new Response(bytes, { headers }));
}
"""
DAMAGES = [
    "cut short",
    "one bit turned",
    "of another version",
    "of another form",
    "without its facts",
    "of a runtime with another header",
    "whole but senseless",
    "of a core that answers otherwise",
]


@pytest.fixture
def kept(phone, server):
    """Visit once and stop the server; returns the address, which from then on is out of reach."""
    context = phone()
    wait_until_kept(open_at(context, server.address))
    context.close()
    server.stop()
    return server.address


def test_without_network_the_core_comes_up_from_the_snapshot_and_answers(phone, kept):
    page = open_at(phone(), kept)
    assert way_of_start(page) == "snapshot"
    answers_rightly(page)


def test_every_kind_of_damaged_snapshot_is_replaced_without_a_word(phone, kept):
    context = phone()
    page = open_at(context, kept)
    for damage in DAMAGES:
        page.evaluate(CHANGE, damage)
        page.reload()
        assert way_of_start(page) == "slow", damage
        answers_rightly(page)
        wait_for_snapshot(page)
        page.reload()
        assert way_of_start(page) == "snapshot", damage


def test_a_restoring_that_hangs_is_given_up_for_the_slow_way(phone, kept):
    context = phone()
    context.add_init_script(
        """
        const Real = Worker;
        globalThis.Worker = class extends Real {
          postMessage(message, handedOver) {
            if (message.ask !== "memory") super.postMessage(message, handedOver);
          }
        };
        """
    )
    page = open_at(context, kept)
    assert way_of_start(page) == "slow"
    answers_rightly(page)


def test_a_worker_that_dies_is_replaced_and_its_question_asked_again(phone, kept):
    context = phone()
    context.add_init_script(
        """
        const Real = Worker;
        globalThis.Worker = class extends Real {
          postMessage(message, handedOver) {
            if (message.text?.includes("13/16") && !globalThis.died) {
              globalThis.died = true;
              this.onmessage({ data: { say: "failed", reason: "died" } });
            } else super.postMessage(message, handedOver);
          }
        };
        """
    )
    page = open_at(context, kept)
    way_of_start(page)
    page.get_by_role("textbox", name="Length or sum").fill("7-13/16")
    answer = page.locator("output[name=pad-answer]")
    answer.get_by_text("seven and thirteen sixteenths inches").wait_for()
    assert page.evaluate("() => globalThis.died")
