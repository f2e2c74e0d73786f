"""Trees of cuts: a part is `None` (an offcut), ("item", which, turned), or (side divided, ((size,
part), …)): parts one after the other, that is, cut off in this order."""


def chain(along, parts):
    """Parts beside each other along one side: those that are themselves divided so are joined in,
    from large to small, and all that is left is one offcut at the end."""
    flat, left = [], 0
    for size, part in parts:
        if part is None:
            left += size
        elif part[0] == along:
            for inner, child in part[1]:
                if child is None:
                    left += inner
                else:
                    flat.append((inner, child))
        else:
            flat.append((size, part))
    flat.sort(key=lambda each: (-each[0], repr(each[1])))
    if left:
        flat.append((left, None))
    if len(flat) == 1:
        return flat[0][1]
    return along, tuple(flat)


def offcuts(tree, length, width):
    """Yield (length, width) of every offcut of a part of this size, kerfs still in them."""
    if tree is None:
        yield length, width
    elif tree[0] != "item":
        along, parts = tree
        for size, part in parts:
            yield from offcuts(part, *((size, width) if along == 0 else (length, size)))


def used(tree):
    """Yield the places of the items in a tree, each as often as it is there."""
    if tree is None:
        return
    if tree[0] == "item":
        yield tree[1]
    else:
        for _, part in tree[1]:
            yield from used(part)


def set_ups(tree):
    """Yield (side divided, size) of every cut of a tree: what a fence or a stop is set to."""
    if tree is not None and tree[0] != "item":
        along, parts = tree
        yield from ((along, size) for size, _ in parts[:-1])
        for _, part in parts:
            yield from set_ups(part)
