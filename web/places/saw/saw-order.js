/** The pieces in the order in which they are cut, each with what its group is called. */
export function inOrder(view) {
  const find = ({ entry, part }) => view.pieces.find((each) => each.entry === entry && each.part === part);
  return view.cuts.groups.flatMap(({ said, pieces }) => pieces.map((each) => ({ ...find(each), group: said })));
}
