"""A symmetric system of linear equations in floats, by elimination.

Only + - * / take part, in a fixed order, so that every machine comes to the same digits.
"""


def solved(rows, right):
    """The unknowns of a symmetric system that is positive; `rows` are lists of floats."""
    size = len(right)
    rows = [[*row, value] for row, value in zip(rows, right, strict=True)]
    for pivot in range(size):
        top = rows[pivot]
        for below in range(pivot + 1, size):
            times = rows[below][pivot] / top[pivot]
            if times:
                rows[below][pivot:] = [
                    each - times * over
                    for each, over in zip(rows[below][pivot:], top[pivot:], strict=True)
                ]
    found = [0.0] * size
    for at in reversed(range(size)):
        row = rows[at]
        rest = row[size]
        for later in range(at + 1, size):
            rest -= row[later] * found[later]
        found[at] = rest / row[at]
    return found
