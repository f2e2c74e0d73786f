/** @import { Reckoner } from "../../python/contract.d.ts" */

/**
 * Whether a question belongs in a list; an older core, which the page remembers while the new one starts, has no others.
 * @param {Reckoner} question
 */
export const isOffered = ({ offered }) => offered !== false;
