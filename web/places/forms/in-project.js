/** @import { Act, Answered, Answers, Message, NameUsed, Reckoning } from "../../python/contract.d.ts" */
/** @import { App } from "../place.d.ts" */

/**
 * Ask about what is typed over a kept entry. What names of the project stop is told as the change
 * itself would be refused: a chain that goes round is named whole.
 * @param {App} app
 * @param {() => Act} act the correction that is being typed
 * @returns {<N extends "read" | "reckon">(message: Message<N>) => Promise<Answered<Answers[N]>>}
 */
export const askInProject = (app, act) => async (message) => {
  const answer = await app.ask(message);
  if (answer.ok || !message.document || !message.id) return answer;
  const changed = await app.ask({ do: "change", document: message.document, act: act(), follows: false });
  return changed.ok ? answer : changed;
};

/**
 * How a text was read, and what the project's names in it stand for now.
 * @param {string} text
 * @param {NameUsed[]} [names] as the core found them in the text
 */
export const echoed = (text, names = []) => ({ text, names });

/**
 * The same for each field of a question.
 * @param {Reckoning} answer
 */
export const allEchoed = ({ echoes, names = {} }) =>
  Object.fromEntries(Object.entries(echoes).map(([key, echo]) => [key, echoed(echo, names[key])]));
