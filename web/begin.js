/** The first script of the page, small: what takes longest is on its way before the rest is read. */
import "./python/begun.js";
import { isInReach, networkMayBeBack } from "./python/start/network.js";

const main = Object.assign(document.createElement("script"), { type: "module", src: "main.js" });

/** A page that is lost on its way comes by itself once the network is back: nothing is typed on it yet. */
async function comeAgain() {
  if (await isInReach()) return;
  do await networkMayBeBack();
  while (!(await isInReach()));
  location.reload();
}

main.addEventListener("error", comeAgain);
// It draws on what is there of the page.
if (document.readyState === "loading") document.addEventListener("DOMContentLoaded", () => document.head.append(main));
else document.head.append(main);
