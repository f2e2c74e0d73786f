/** @import { PieceAt } from "../../python/contract.d.ts" */

/**
 * What a piece is known by in a drawing, and to who looks for it.
 * @param {PieceAt} place
 */
export const pieceKey = ({ entry, part }) => `${entry}/${part}`;
