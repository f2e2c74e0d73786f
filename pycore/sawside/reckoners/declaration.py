"""What a reckoner declares: its fields, its answers, and the function that reckons.

A reckoner is one file in a folder beside this that ends in `RECKONER = Reckoner(...)`. Everything
else, reading what was typed, ranges, telling the answers, the page, is made from that declaration.

`compute(given, show)` gets the values in `given` by their field's key: lengths as exact inches,
angles as exact degrees, numbers (`Fraction`), counts as `int`, a choice as its value, a material as
its `Material`, lengths as a list, rows as a list of the same; None for what was left blank or is
not shown. `show` tells lengths by the person's settings, for the working and the drawing.
It returns a `Reckoning`, or raises `Refusal("impossible", …, field=key)`.

A question with steps to tick is `ticked`: its `compute(given, show, done=NONE_DONE, now=None)` gets
what was done of them in a project, a `Done` by the key of its step, so that what follows goes by
that, and the `datetime` of the person's clock, None where that is unknown: what leads may go by it.
"""

from collections.abc import Callable
from dataclasses import dataclass, field
from datetime import datetime
from fractions import Fraction
from types import MappingProxyType
from typing import Any

from sawside.boards.offer import Offer
from sawside.geometry.case import Shelving
from sawside.geometry.end import End
from sawside.geometry.placed import Fills, Placed
from sawside.lengths.marks import MUSTS
from sawside.reckoners.fields import Field
from sawside.reckoners.jobs import JOBS
from sawside.wood.caution import Caution


@dataclass(frozen=True, slots=True)
class Answer:
    """One answer. The kind says what `compute` gives: length (exact inches, or `Rounded` on a
    mark of its own), lengths (a list of (label, exact inches)), count (int), angle (exact
    degrees), weight (exact pounds, from 0 up) or text (may be put off, `drawing.lazy`).

    `sets` says of an angle that it is set at the saw: "turned" from square or "tilted" from
    upright, or a function of `given` to one of them. `with_turn` is the key of the answer that the
    saw is turned by for the same tilted cut. What no saw reaches then says so by itself.

    A length says in `must` what happens when it is rounded the wrong way: "go in" where a longer
    one would not (rounded down), "stay under" where it is a limit (down), "be there" where somebody
    counts on that much (down), "reach" where a shorter one is not enough (up), "agree" where it is
    a place or size that is as wrong either way (by the person's own rounding), or "case" where that
    hangs on what was filled in: then `compute` gives it rounded by one of these, or bare where it
    is to agree. What else tells the length, a part or a drawing, gets the same
    `show.rounded(length, must)`, so that all tell one number.
    """

    key: str
    label: str
    kind: str = "length"
    sets: str | Callable[[Any], str] | None = None
    with_turn: str | None = None
    must: str | None = None

    def __post_init__(self):
        if (self.must in (*MUSTS, "agree", "case")) != (self.kind in ("length", "lengths")):
            raise ValueError(f"Answer {self.key}: what must it do, go in, reach or agree?")

    @property
    def rounding(self):
        """The key of `marks.MUSTS` by which every case is rounded, or None."""
        return self.must if self.must in MUSTS else None


@dataclass(frozen=True, slots=True)
class Part:
    """A piece to cut; lengths in exact inches."""

    key: str
    name: str
    length: Any
    left: End
    right: End
    drawing: dict
    count: int = 1
    width: Any = None
    thickness: Any = None
    long_side: Any = None
    short_side: Any = None
    layer: int = 1
    """Which layer it is of: one is fitted before the next one is cut."""
    about: tuple[str, ...] = ()
    """What else one needs to make it, a sentence each: grain, edging, the joints cut in it."""
    profile: str = ""
    """What it is sold as, where it has a profile ("Crown molding"): it comes out of sticks, or of
    boards of just its thickness and width."""
    is_edging: bool = False
    """Whether its face is the edge of a panel: it is no face by itself."""


@dataclass(frozen=True, slots=True)
class Step:
    """One step to do and tick. `key` stays whatever is typed, for what was ticked is kept by it.

    `said` is what to do, `about` what goes with it. `due` is when to do it, `earliest` the first
    moment at which it may be done, both None where that hangs on no time. `after` are the keys of
    the steps that it can't be done before; it comes due once these are done, or where it is
    `one_go` with them, by its time alone.
    """

    key: str
    said: str
    about: str = ""
    caution: Caution | None = None
    due: datetime | None = None
    earliest: datetime | None = None
    after: tuple[str, ...] = ()
    one_go: bool = False


@dataclass(frozen=True, slots=True)
class Done:
    """What is known of a step that was ticked: when, the air in exact °F and percent, or None."""

    when: datetime
    fahrenheit: Fraction | None = None
    humidity: Fraction | None = None


NONE_DONE = MappingProxyType({})


@dataclass(frozen=True, slots=True)
class Reckoning:
    """What `compute` returns: answers by key, and what goes with them.

    An answer that this case does not have is left out. `main` is the key of the answer that was
    asked for, where that is not the first one declared; it is always there. `verdict` says in a few
    words what to make of it, where the question's own (`Reckoner.verdict`) will not do. `stick` is
    a story stick to be printed (`drawing.paper`). `tape` are the marks (`marks.Grid`) that
    the first answer is counted on, where those are not the person's own. `ends` are the (left,
    right) ends of a piece that is no part, as its length is not known. `fixes` are (what mends it
    in a word or two, the key of the field to change) where the answer is bad. A caution is a text
    whose first sentence is its short line, or a `Caution`.

    `place` tells where the parts stand in a case (`geometry/placed.py`), given the `Shelving` that
    is laid out for it or None; `shelving` is the one laid out here. `fills` is for what stands in
    an opening of another line; `wraps` tells where the parts go around a case, given that and what
    stands before it as `Placed`, None where it is of another size. `stock` is the wood that this
    line offers to be cut. `steps` are to be done in their order, each ticked in a project.
    """

    answers: dict[str, Any]
    working: tuple[str, ...]
    drawing: dict | None = None
    cautions: tuple[str | Caution, ...] = ()
    parts: tuple[Part, ...] = ()
    stick: dict | None = None
    tape: Any = None
    ends: tuple[End, ...] = ()
    main: str = ""
    verdict: str = ""
    fixes: tuple[tuple[str, str], ...] = ()
    place: Callable[[Shelving | None], Placed] | None = None
    shelving: Shelving | None = None
    fills: Fills | None = None
    wraps: Callable[[Placed, tuple[Placed, ...]], Placed | None] | None = None
    steps: tuple[Step, ...] = ()
    stock: tuple[Offer, ...] = ()


@dataclass(frozen=True, slots=True)
class Fit:
    """Which clearance has to cover what an answer may be off by.

    `clearance(given)` is (key of its field, all of it in exact inches, on both sides together), or
    None where this case has none. It gets tight when the true `answer`, one length or a list of
    them, is "less" or "more" than was told.
    """

    answer: str
    clearance: Callable[[Any], tuple[str, Any] | None]
    tight_when: str


@dataclass(frozen=True, slots=True)
class Alike:
    """Fields that are filled in alike as a rule: each whose key begins with `one`, and that which
    begins with `other` and goes on the same, as the ends of a piece. The page asks for them once
    until they are made different; the values of both are always sent. `noun` is what they are."""

    one: str = "left_"
    other: str = "right_"
    noun: str = "ends"


@dataclass(frozen=True, slots=True)
class Reckoner:
    """One question. `asks` is the one sentence that it answers, `words` what a person looks for,
    with a comma between each.

    `source` says where its rule is published, or "Common practice, no source". `job` is the one of
    `jobs.JOBS` under which it is listed, by `order`; `picture` is its own small one, as they have
    them, or None for that of its job. `example` is a filled-in form that works. `basic` are the
    keys of the fields that the plain case needs, all where it is empty; the page folds the others,
    but for those that have to be filled in. `alike` are those that it asks for once. `verdict` is
    the answer in a few words, with the key of an answer in braces where its number stands: "Miter
    {miter}, bevel {bevel}". Exactly one field of `solve_one_of`, while all of them are asked for,
    is left blank and solved for. One that is not `offered` is in no list of questions: an act
    elsewhere opens it. One that is `ticked` has steps.
    """

    key: str
    title: str
    asks: str
    words: str
    fields: tuple[Field, ...]
    answers: tuple[Answer, ...]
    source: str
    compute: Callable[..., Reckoning]
    job: str
    picture: dict[str, str] | None = None
    example: dict[str, Any] = field(default_factory=dict)
    order: int = 100
    makes_parts: bool = False
    solve_one_of: tuple[str, ...] = ()
    basic: tuple[str, ...] = ()
    alike: tuple[Alike, ...] = ()
    verdict: str = ""
    offered: bool = True
    fits: tuple[Fit, ...] = ()
    ticked: bool = False

    def __post_init__(self):
        if self.job not in JOBS:
            raise ValueError(f"Question {self.key}: which job is it for? {', '.join(JOBS)}.")

    def reckoned(self, given, show, done=NONE_DONE, now=None):
        """What `compute` returns, told what was `done` by `now` where it has steps."""
        return self.compute(given, show, done, now) if self.ticked else self.compute(given, show)
