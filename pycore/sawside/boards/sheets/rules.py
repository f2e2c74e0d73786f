"""Which cuts the shop's rules let be made next."""

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Rules:
    """`first` side to be divided, the most `stages`, and the sides of the largest part (from long
    to short) that is cut further after the first level; None for any."""

    first: int | None
    stages: int | None
    handled: tuple[int, int] | None

    def after(self, state, along, length, width):
        """The state (level, side divided last) once a part of this size is cut; None where it may
        not be. A sheet starts with (0, None)."""
        level, last = state
        if along == last:
            return state
        if last is None:
            return None if self.first not in (None, along) else (1, along)
        if self.stages is not None and level >= self.stages:
            return None
        if level == 1 and not self._handy(length, width):
            return None
        return level + 1, along

    def _handy(self, length, width):
        if self.handled is None:
            return True
        return max(length, width) <= self.handled[0] and min(length, width) <= self.handled[1]

    def block(self, state, item):
        """Whether a part that a block of matched panels is may be cut apart."""
        after = self.after(state, item.along, item.length, item.width)
        if after is None:
            return False
        deepest = after[0] + item.deep - 1
        return self.stages is None or deepest <= self.stages

    def allow(self, tree, length, width, items, state=(0, None)):
        """Whether a whole tree of cuts, from a part of this size on, keeps to the rules."""
        if tree is None:
            return True
        if tree[0] == "item":
            item = items[tree[1]]
            return item.tree is None or self.block(state, item)
        along, parts = tree
        after = self.after(state, along, length, width)
        if after is None:
            return False
        sizes = ((size, width) if along == 0 else (length, size) for size, _ in parts)
        return all(
            self.allow(child, *size, items, after)
            for (_, child), size in zip(parts, sizes, strict=True)
        )
