"""Which steps of a list come before which, and what that says of those that were not ticked."""


def before_each(steps):
    """{key of a step: the keys of all that have to be done before it}; `steps` in their order."""
    before = {}
    for step in steps:
        before[step.key] = {*step.after}.union(*(before.get(key, ()) for key in step.after))
    return before


def overtaken(steps, done):
    """The keys of steps that nobody ticked, but that have to be done before one that is `done`."""
    before = before_each(steps)
    return set().union(*(before[key] for key in before if key in done)) - {*done}


def come_due(steps, behind, now):
    """The keys of the steps whose time has come at a `datetime`; `behind` are those that are done.

    A time that goes by when another step is done has come once that is done. What is of `one_go`
    with a step comes due with it: who put a coat on and did not tick it still has rags about. Once
    that is ticked it holds up nothing: nobody leaves an oil on unwiped.
    """
    behind, due = {*behind}, set()
    for step in steps:
        if step.key in behind or step.due is None or now < step.due:
            continue
        if behind.issuperset(step.after):
            due.add(step.key)
            if step.one_go:
                behind.add(step.key)
        elif step.one_go and (behind | due).issuperset(step.after):
            due.add(step.key)
    return due
