import { identity } from "../store/project/identity.js";
import { byId } from "../widgets/element.js";
import { notice } from "./notices.js";
import { placeOf } from "./places.js";
import { projectActs } from "./project-acts.js";

/** @import { App, Place } from "./place.d.ts" */

/**
 * Draws the place that the address names, and again whenever the address or the open document is another.
 * @param {Omit<App, "project">} app
 * @param {HTMLElement} host where they are drawn
 * @returns {{draw(): void, arrive(): void, refresh(changed: string[]): void}}
 */
export function frame(app, host) {
  /** @type {Place | null} */
  let shown = null;
  /**
   * What was open when it was drawn.
   * @type {{of: string | null, isOfEntry: boolean}}
   */
  let here = { of: null, isOfEntry: false };
  const opened = () => identity(app.state.get().record);

  function draw() {
    const place = placeOf(location.hash);
    here = { of: opened(), isOfEntry: place.isOfEntry };
    app.sheet.close();
    // What is picked there would go into a field of the place that is left.
    for (const dialog of document.querySelectorAll("dialog")) if (dialog.matches(".pick")) dialog.close();
    shown?.leave?.();
    shown = place.draw({ ...app, project: projectActs(app, here) });
    host.replaceChildren(shown.node);
    host.dataset.shows = location.hash.slice(1);
    host.scrollTop = 0;
    head(place);
    nameWindow();
  }

  /** The address is another one. */
  function arrive() {
    draw();
    host.focus({ preventScroll: true });
    shown?.land?.();
  }

  /** @param {string[]} changed */
  function refresh(changed) {
    here.of ??= opened();
    if (here.of !== opened()) otherOpened();
    else shown?.refresh?.(changed);
    nameWindow();
  }

  /** The window is called by what is shown in it; the name of the project stands once on the screen. */
  function nameWindow() {
    const title = shown?.title?.() || byId("place-title").textContent;
    const project = app.state.get().view?.name ?? "";
    const name = `${title} · Sawside`;
    byId("project-name").textContent = title === project ? "" : project;
    // Asked after every change, as with each key press.
    if (document.title !== name) document.title = name;
  }

  /** A place is drawn anew for another document; one of an entry is left, for ids mean another entry there. */
  function otherOpened() {
    if (here.isOfEntry) {
      history.replaceState(null, "", "#project");
      notice("That item isn’t in the project you have open.");
    }
    draw();
  }

  return { draw, arrive, refresh };
}

/**
 * What the title and the tabs say of the place that is shown.
 * @param {{title: string, tab: string | null}} place
 */
function head({ title, tab }) {
  byId("place-title").textContent = title;
  document.body.dataset.tab = tab ?? "";
  for (const link of byId("places").children) {
    if (link.getAttribute("data-place") === tab) link.setAttribute("aria-current", "page");
    else link.removeAttribute("aria-current");
  }
}
