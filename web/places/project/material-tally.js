import { element } from "../../widgets/element.js";

/** How much of each material and size the project takes, spoiled pieces counted. */
export function materialTally(tally) {
  return element(
    "details",
    { class: "working" },
    element("summary", {}, "Material"),
    element("ul", {}, tally.map(row)),
  );
}

function row({ material, width, thickness, count, length, rough, spoiled, spoiled_length: wasted }) {
  const size = [width, thickness].filter(Boolean).map(({ brief }) => brief);
  const more = rough.exact === length.exact ? "" : `, ${rough.brief} with allowances`;
  const lost = spoiled ? `, ${wasted.brief} spoiled in ${spoiled} more` : "";
  return element(
    "li",
    { class: "answer" },
    element("strong", {}, [material || "No material named", size.join(" × ")].filter(Boolean).join(", ")),
    element("span", {}, `${count} ${count === 1 ? "piece" : "pieces"}, ${length.brief}${more}${lost}`),
  );
}
