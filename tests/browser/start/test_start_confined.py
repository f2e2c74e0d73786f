"""Page and worker run no text as code and reach no other place, with or without a server."""

from tests.browser.start.start_support import answers_rightly, open_at, wait_until_kept
from web.build import serving

ELSEWHERE = "https://elsewhere.invalid/"
# In a task of its own: what the test itself evaluates is exempt from the policy.
TRY = """
(elsewhere) => new Promise((resolve) => setTimeout(async () => {
  const seen = {};
  self.addEventListener("securitypolicyviolation", ({ effectiveDirective }) => {
    seen[effectiveDirective] = true;
  });
  try { (0, eval)("1"); seen.eval = "ran"; } catch (error) { seen.eval = error.name; }
  await fetch(elsewhere).catch(() => {});
  setTimeout(() => resolve(seen), 100);
}))
"""
REFUSED = {"eval": "EvalError", "script-src": True, "connect-src": True}


def confined(where):
    """What came of running text as code and of asking another place."""
    return where.evaluate(TRY, ELSEWHERE)


def test_page_and_worker_are_confined_with_the_server_and_without_it(phone, server):
    context = phone()
    page = open_at(context, server.address)
    answers_rightly(page)
    assert confined(page) == REFUSED
    assert confined(page.workers[0]) == REFUSED
    wait_until_kept(page)
    context.close()
    server.stop()

    page = open_at(phone(), server.address)
    answers_rightly(page)
    assert confined(page) == REFUSED
    assert confined(page.workers[0]) == REFUSED


def test_a_worker_without_the_header_would_not_be_confined(phone, tmp_path):
    (tmp_path / "index.html").write_text("<!doctype html><title>Bare</title>")
    (tmp_path / "bare.js").write_text("")
    with serving.started(tmp_path) as bare:
        page = open_at(phone(), bare.address)
        with page.expect_worker() as started:
            page.evaluate("() => { globalThis.bare = new Worker('bare.js', { type: 'module' }); }")
        seen = confined(started.value)
    assert seen == {"eval": "ran"}


def test_the_service_worker_states_the_same_policy_as_the_page(phone, server):
    context = phone()
    page = open_at(context, server.address)
    wait_until_kept(page)
    page.reload()
    sent = "async (url) => (await fetch(url)).headers.get('Content-Security-Policy')"
    for name in ("worker.js", "index.html"):
        stated = page.locator("meta[http-equiv=Content-Security-Policy]").get_attribute("content")
        assert page.evaluate(sent, name) == f"{stated}; frame-ancestors 'none'"
