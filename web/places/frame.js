import { identity } from "../store/project/identity.js";
import { notice } from "./notices.js";
import { placeOf } from "./places.js";
import { projectActs } from "./project-acts.js";

/**
 * Draws the place that the address names, and again whenever the address or the open document is another.
 * @param {import("./place").App} app all that places get, but for `project`
 * @param {HTMLElement} host where they are drawn
 * @returns {{draw(): void, arrive(): void, refresh(changed: string[]): void}}
 */
export function frame(app, host) {
  /** @type {import("./place").Place | null} */
  let shown = null;
  /** What was open when it was drawn. */
  let here = null;
  const opened = () => identity(app.state.get().record);

  function draw() {
    const place = placeOf(location.hash);
    here = { of: opened(), isOfEntry: place.isOfEntry };
    app.sheet.close();
    // What is picked there would go into a field of the place that is left.
    document.querySelector("dialog.pick")?.close();
    shown?.leave?.();
    shown = place.draw({ ...app, project: projectActs(app, here) });
    host.replaceChildren(shown.node);
    host.dataset.shows = location.hash.slice(1);
    host.scrollTop = 0;
    head(place);
  }

  /** The address is another one. */
  function arrive() {
    draw();
    host.focus({ preventScroll: true });
    shown.land?.();
  }

  function refresh(changed) {
    here.of ??= opened();
    if (here.of !== opened()) otherOpened();
    else shown.refresh?.(changed);
  }

  /** A place is drawn anew for another document; one of an entry is left, for ids mean another entry there. */
  function otherOpened() {
    if (here.isOfEntry) {
      history.replaceState(null, "", "#project");
      notice("What was shown here is not in the project that is open now.");
    }
    draw();
  }

  return { draw, arrive, refresh };
}

/** What the title, the window and the tabs say of the place that is shown. */
function head({ title, tab }) {
  document.getElementById("place-title").textContent = title;
  document.title = `${title} · Sawside`;
  document.body.dataset.tab = tab ?? "";
  for (const link of document.getElementById("places").children) {
    if (link.dataset.place === tab) link.setAttribute("aria-current", "page");
    else link.removeAttribute("aria-current");
  }
}
