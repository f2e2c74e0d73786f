import { draftKey } from "../page/state.js";
import { identity } from "./identity.js";

/** Where the correction of a kept entry waits until it is kept in its turn. */
export const correctionKey = (record, id) => draftKey(`${identity(record)}/${id}`);

/** The same for what belongs to a reading beside its number. */
export const detailsKey = (record, id) => correctionKey(record, `${id}/details`);

/** Where a piece waits that is begun from an entry, until it is kept. */
export const pieceKey = (record, id) => correctionKey(record, `${id}/piece`);

/** Whether something was typed over a kept entry that was not kept. */
export const isUnkept = (state, id) =>
  Boolean(state.record && [correctionKey, detailsKey].some((keyOf) => state[keyOf(state.record, id)]?.changed));

/** All that was typed over what a record holds, and not kept. */
export const unkeptOf = (state, record) =>
  Object.keys(state)
    .filter((key) => key.startsWith(correctionKey(record, "")) && state[key]?.changed)
    .flatMap((key) => state[key].text ?? Object.values(state[key].values ?? state[key].typed ?? {}))
    .filter((each) => typeof each === "string" && each.trim());

/** What is typed and not yet kept, in one slot of the state: it outlives the page. */
export const draftIn = (state, slot) => ({
  get: () => state.get()[slot] ?? {},
  keep: (patch) => state.set({ [slot]: { ...state.get()[slot], ...patch } }),
  drop: () => state.set({ [slot]: undefined }),
});
