import { settingsIcon } from "../widgets/icons.js";
import { notice } from "../widgets/notice.js";
import { keypadSheet } from "../widgets/sheet.js";
import { offlineSentence, statusLine } from "../widgets/status.js";
import { placeOf } from "./places.js";

const by = (id) => document.getElementById(id);

/** What stays on the screen while the places change: title, tabs, status, notices, keypad sheet. */
export function shell({ state, ask, projects, tally, settings }) {
  const host = by("place");
  const app = {
    state,
    ask,
    projects,
    sheet: keypadSheet(by("sheet"), () => state.get().strip),
    settings,
    go: (place) => (location.hash = place),
    notice: (sentence, action) => notice(by("notices"), sentence, action),
    change,
    tryChange: projects.change,
    undo: () => told(projects.undo()),
    redo: () => told(projects.redo()),
    copy,
    tally,
    tellTally,
    storeRefused: (error) =>
      app.notice(
        `This browser refuses to keep anything (${error.message}). All works, but is gone when the page closes.`,
        null,
      ),
  };

  async function told(doing) {
    const answer = await doing;
    app.notice(answer.ok ? answer.said : `${answer.error.message} ${answer.error.remedy ?? ""}`);
    return answer;
  }

  async function change(act, { undoable = true } = {}) {
    const answer = await projects.change(act);
    if (answer.ok) app.notice(answer.said, undoable ? { label: "Undo", run: app.undo } : null);
    else app.notice(`${answer.error.message} ${answer.error.remedy ?? ""}`);
    return answer;
  }

  /** Say what went wrong with the tally; when all went well the tally itself shows it. */
  async function tellTally(doing) {
    const answer = await doing;
    if (!answer.ok) app.notice(`${answer.error.message} ${answer.error.remedy ?? ""}`);
    return answer;
  }

  async function copy(text) {
    await navigator.clipboard.writeText(text).then(
      () => app.notice(`Copied ${text}`),
      () => app.notice("This browser doesn't let the page copy. Select the number and copy it by hand."),
    );
  }

  let shown = null;
  function draw() {
    const place = placeOf(location.hash);
    app.sheet.close();
    shown = place.draw(app);
    host.replaceChildren(shown);
    host.dataset.shows = location.hash.slice(1);
    host.scrollTop = 0;
    by("place-title").textContent = place.title;
    document.title = `${place.title} · Sawside`;
    for (const link of by("places").children) {
      if (link.dataset.place === place.tab) link.setAttribute("aria-current", "page");
      else link.removeAttribute("aria-current");
    }
  }

  function stateChanged(changed) {
    const now = state.get();
    by("project-name").textContent = now.view?.name ?? "";
    if (changed.includes("core") || changed.includes("offline")) statusLine(by("status"), now);
    if (changed.includes("offline")) offlineChanged(now.offline);
    shown?.refresh?.(changed);
  }

  let phase = null;
  function offlineChanged(offline) {
    if (offline.phase === "ready" && phase === "installing") app.notice(offlineSentence(offline));
    if (offline.update)
      app.notice("A new version is here.", { label: "Use it now", run: () => app.offline.acceptUpdate(), stays: true });
    phase = offline.phase;
  }

  by("to-settings").prepend(settingsIcon());
  addEventListener("hashchange", () => {
    draw();
    host.focus({ preventScroll: true });
  });
  state.subscribe(stateChanged);
  draw();
  stateChanged(["core"]);
  return app;
}
