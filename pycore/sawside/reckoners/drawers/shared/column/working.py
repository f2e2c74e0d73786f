"""How the fronts of a column are worked out, line by line, with this case's numbers."""

from sawside.reckoners.drawers.shared.column.heights import lapping, less_of, room_left


def working(given, column, show):
    """Every line: what the fronts share, each of them, and that they fill the opening."""
    high, gap, many = show.number(given.height), show.number(given.gap), given.drawers
    lap = show.number(given.lap) if given.front == "overlay" else ""
    edges = f" + 2 × {lap}" if lap else f" − 2 × {gap}"
    between = gap
    if given.divided == "rails":
        between = show.number(column.between)
        rail = show.number(given.rail)
        taken = f" − 2 × {lap}" if lap else f" + 2 × {gap}"
        yield f"Between fronts: {rail}{taken} = {between}"
    room = show.number(column.room)
    yield f"Fronts share {high}{edges} − {many - 1} × {between} = {room}"
    yield from _shared(given, column, show, room)
    fronts = " + ".join(show.number(each) for each in column.fronts)
    yield f"Together: {fronts} = {room}"
    less = less_of(given, show)
    if given.less is None and lap:
        laps = f"2 × {lap}" if lapping(given) > 1 else lap
        yield f"Box lower by: {show.number(room_left(given, show))} + {laps} = {show.number(less)}"
    for number, each in enumerate(column.fronts, 1):
        box = show.rounded(each - less, "go in")
        yield f"Box {number}: {show.number(each)} − {show.number(less)}{show.equals(box)}"


def _shared(given, column, show, room):
    many, exact = given.drawers, [show.number(each) for each in column.exact]
    if given.layout == "equal":
        yield f"Each: {room} ÷ {many} = {exact[0]}"
    elif given.layout == "step":
        step, steps = show.number(given.step), many * (many - 1) // 2
        yield f"Top front: ({room} − {steps} × {step}) ÷ {many} = {exact[0]}"
        yield f"Bottom front: {exact[0]} + {many - 1} × {step} = {exact[-1]}"
    elif given.layout == "ratio":
        part = show.pure(column.exact[-2] / column.exact[-1])
        yield f"Next to the bottom one: {exact[-1]} × {part} = {exact[-2]}"
    else:
        listed = " − ".join(exact[:-1])
        yield f"Bottom front: {room} − {listed} = {exact[-1]}"
