/** Whether two values typed or kept are the same; what is not there is as blank. */
export const same = (one, other) => JSON.stringify(one ?? "") === JSON.stringify(other ?? "");
