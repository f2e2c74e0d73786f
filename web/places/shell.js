import { refusedByStore } from "../store/page/refused.js";
import { unkeptOf } from "../store/project/draft.js";
import { identity, isOldPicture } from "../store/project/identity.js";
import { element } from "../widgets/element.js";
import { keypadSheet } from "../widgets/keys/sheet.js";
import { notice, unsay } from "../widgets/messages/notice.js";
import { review } from "../widgets/messages/review.js";
import { offlineSentence, statusLine } from "../widgets/messages/status.js";
import { settingsIcon } from "../widgets/pictures/icons.js";
import { placeOf } from "./places.js";

/** What the status line tells of. */
const ON_STATUS = ["core", "offline", "view", "record"];

const by = (id) => document.getElementById(id);

/** Said in the place before anything can be drawn there. */
export const waiting = (sentence) => by("place").replaceChildren(element("p", { class: "opening" }, sentence));

/** What stays on the screen while the places change: title, tabs, status, notices, keypad sheet. */
export function shell({ state, ask, projects, tally, entering, settings, photos }) {
  const host = by("place");
  const app = {
    state,
    ask,
    projects,
    photos,
    accept: review,
    sheet: keypadSheet(by("sheet"), () => state.get().strip),
    settings,
    /** What a bare number means by the settings of the open project. */
    unit: () =>
      settings().unit ?? state.get().described?.settings.find((field) => field.key === "unit").default ?? "in",
    go: (place) => (location.hash = place),
    /** Where an act leads once it is kept, unless the person has gone elsewhere meanwhile. */
    onward() {
      const from = location.hash;
      return (place) => location.hash === from && app.go(place);
    },
    notice: (sentence, action) => notice(by("notices"), host, sentence, action),
    copy,
    tally,
    entering,
    quietly,
    storeRefused,
    erased,
    dropped,
    projectGone: () =>
      app.notice("The browser has cleared what Sawside kept here.", {
        label: "Restore a backup",
        run: () => app.go("backup"),
        stays: true,
        news: true,
      }),
  };

  async function told(doing) {
    const answer = await doing;
    app.notice(answer.ok ? answer.said : `${answer.error.message} ${answer.error.remedy ?? ""}`);
    return answer;
  }

  /** What a place can do to the project: to the document `here.of` that was open when it was drawn, and to no other. */
  const acting = (here) => ({
    /** `was` is the entry as it was when its correction was begun, `pictures` the photos that the act brings. */
    async change(act, { undoable = true, ...how } = {}) {
      const answer = await projects.change(act, { ...how, of: here.of });
      if (answer.ok)
        app.notice(answer.said, undoable ? { label: "Undo", run: () => this.undoStep(answer.step) } : null);
      else app.notice(`${answer.error.message} ${answer.error.remedy ?? ""}`);
      return answer;
    },
    /** The same where the place itself shows what was done. */
    async tryChange(act, how) {
      const answer = await projects.change(act, { ...how, of: here.of });
      if (answer.ok) unsay(by("notices"), host);
      return answer;
    },
    changeBy: (message, how) => projects.changeBy(message, { ...how, of: here.of }),
    undo: () => told(projects.undo(here.of)),
    undoStep: (step) => told(projects.undoStep(step, here.of)),
    redo: () => told(projects.redo(here.of)),
  });

  /** What was typed over a project that was deleted elsewhere can still be copied from what is said of it. */
  function dropped(record) {
    const typed = unkeptOf(state.get(), record).join(", ");
    const sentence = `${record.document.name} was deleted in another tab.`;
    if (!typed) return app.notice(sentence);
    app.notice(`${sentence} Typed there and not kept: ${typed}`, {
      label: "Copy",
      run: () => copy(typed),
      stays: true,
    });
  }

  /** Said once for each cause: it comes with each key press. */
  const alreadySaid = new Set();
  function storeRefused(error) {
    if (alreadySaid.has(error.name)) return;
    alreadySaid.add(error.name);
    const { message, remedy } = refusedByStore(error).error;
    const sentence = `${message} ${remedy} Until then all works, but is gone when the page closes.`;
    app.notice(sentence, { label: "Back up", run: () => app.go("backup"), stays: true, news: true });
  }

  /** The store was erased under the open page, which still has the open project and the tally: they are kept again. */
  async function erased() {
    state.keepAgain();
    await tally.keepAgain();
    const answer = await projects.keepAgain();
    if (!answer) return;
    const { message, remedy } = answer.error ?? {};
    const now = answer.ok
      ? "The open project and the tally are saved again, but photos and other projects are gone. Back up now."
      : `${message} ${remedy} Back up before you reload.`;
    const sentence = `Another tab or the browser erased what Sawside saved. ${now}`;
    app.notice(sentence, { label: "Back up", run: () => app.go("backup"), stays: true, news: true });
  }

  /** Say what went wrong; when all went well the place itself shows it. */
  async function quietly(doing) {
    const answer = await doing;
    if (!answer.ok) app.notice(`${answer.error.message} ${answer.error.remedy ?? ""}`);
    return answer;
  }

  async function copy(text) {
    try {
      await navigator.clipboard.writeText(text);
      app.notice(`Copied ${text}`);
    } catch {
      // Refused, or, as on a page without HTTPS, not there at all.
      app.notice("This browser doesn't let the page copy. Select the number and copy it by hand.");
    }
  }

  let shown = null;
  let here = null;
  const opened = () => identity(state.get().record);
  function draw() {
    const place = placeOf(location.hash);
    here = { of: opened(), isOfEntry: place.isOfEntry };
    app.sheet.close();
    // What is picked there would go into a field of the place that is left.
    document.querySelector("dialog.pick")?.close();
    shown?.leave?.();
    shown = place.draw(Object.assign(Object.create(app), acting(here)));
    host.replaceChildren(shown);
    host.dataset.shows = location.hash.slice(1);
    host.scrollTop = 0;
    by("place-title").textContent = place.title;
    document.title = `${place.title} · Sawside`;
    document.body.dataset.tab = place.tab ?? "";
    for (const link of by("places").children) {
      if (link.dataset.place === place.tab) link.setAttribute("aria-current", "page");
      else link.removeAttribute("aria-current");
    }
  }

  function stateChanged(changed) {
    const now = state.get();
    by("project-name").textContent = now.view?.name ?? "";
    if (ON_STATUS.some((key) => changed.includes(key))) statusLine(by("status"), { ...now, old: isOldPicture(now) });
    if (changed.includes("offline")) offlineChanged(now.offline);
    here.of ??= opened();
    if (here.of !== opened()) otherOpened();
    else shown.refresh?.(changed);
  }

  /** A place is drawn anew for another document; one of an entry is left, for ids mean another entry there. */
  function otherOpened() {
    if (here.isOfEntry) {
      history.replaceState(null, "", "#project");
      app.notice("What was shown here is not in the project that is open now.");
    }
    draw();
  }

  let phase = null;
  function offlineChanged(offline) {
    if (offline.phase === "ready" && phase === "installing") app.notice(offlineSentence(offline), { news: true });
    if (offline.update)
      app.notice("A new version is here.", {
        label: "Use it now",
        run: () => app.offline.acceptUpdate(),
        stays: true,
        news: true,
      });
    phase = offline.phase;
  }

  by("to-settings").prepend(settingsIcon());
  addEventListener("hashchange", () => {
    draw();
    host.focus({ preventScroll: true });
    shown.land?.();
  });
  state.subscribe(stateChanged);
  draw();
  stateChanged(["core"]);
  return app;
}
