import { svgElement } from "../element.js";

const icon = (...paths) =>
  svgElement(
    "svg",
    { class: "icon", viewBox: "0 0 24 24", "aria-hidden": "true" },
    paths.map((d) => svgElement("path", { d })),
  );

/** Three sliders, for the settings. */
export const settingsIcon = () => icon("M4 7h16M4 12h16M4 17h16", "M9 4v6M15 9v6M7 14v6");

/** A nail, for what is pinned up. */
export const pinIcon = () => icon("M6 4h12v3H6z", "M10.5 7v9l1.5 5 1.5-5V7");
