import { element } from "../../widgets/element.js";
import { smallPicture } from "../../widgets/pictures/small-picture.js";
import { pinButton } from "./pin.js";

/** @import { Reckoner } from "../../python/contract.d.ts" */
/** @import { App } from "../place.d.ts" */

/**
 * The way to a question, with its picture.
 * @param {Reckoner} question
 */
export const questionLink = ({ key, title, picture }) =>
  element("a", { class: "question-link", href: `#work-out/${key}` }, smallPicture(picture), title);

/**
 * Questions in rows, each with what pins it.
 * @param {App} app
 * @param {Reckoner[]} questions
 */
export const questionRows = (app, questions) =>
  element(
    "ul",
    { class: "question-rows" },
    questions.map((each) => element("li", {}, questionLink(each), pinButton(app, each))),
  );
