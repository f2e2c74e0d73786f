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
