import { element } from "../../widgets/element.js";

/** Said where a project has nothing to show: what would stand here, or why it can't be shown. */
export function nothingYet(app, sentence) {
  const { unshown } = app.state.get();
  if (!unshown) return element("p", { class: "help" }, sentence);
  return element("p", { class: "error" }, `${unshown.message} ${unshown.remedy}`);
}
