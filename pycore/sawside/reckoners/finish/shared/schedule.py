"""When each coat goes on: after the one before it is dry, and in hours when the person is there.

What was done comes first: a coat that was ticked late or early moves what follows, nothing else.
The air that was noted at a coat holds for those to come, until other air is.
"""

from collections.abc import Mapping
from dataclasses import dataclass, field, replace
from datetime import datetime, timedelta
from fractions import Fraction

from sawside.moments import lasting, lost_hour
from sawside.reckoners.declaration import Step
from sawside.reckoners.finish.shared.coat_words import air_said, early
from sawside.reckoners.finish.shared.drying import Air, drying
from sawside.reckoners.finish.shared.finish_cautions import CURING, DUST, RAGS, SOLVENT, WATER
from sawside.reckoners.finish.shared.finishes import Finish
from sawside.reckoners.finish.shared.hours import Hours

COAT = SANDING = timedelta(minutes=30)
"""What a coat, or sanding before it, takes of a person's time (common practice, no source)."""

_AHEAD = ", and an hour by the clock, which may be set ahead that night"
_SLURRY = "Wipe across the grain, so the slurry stays in the pores."
_GUMMY = "If it’s gummy, wet it with more of the finish and wipe again."
_ONE_GO = ("wet", "wipe", "rags")
"""How the keys of the steps begin that belong to the coat before them."""
WET_COATS = 2
MOST_COATS = 12
_ORDINALS = (
    "First",
    "Second",
    "Third",
    "Fourth",
    "Fifth",
    "Sixth",
    "Seventh",
    "Eighth",
    "Ninth",
    "Tenth",
    "Eleventh",
    "Twelfth",
)


@dataclass(frozen=True, slots=True)
class Plan:
    """What was filled in: `recoat` in exact hours, `cure` in days, `wipe` in minutes, `grit` 0 for
    no sanding between coats. `wet` fills the pores of the first coats with wet sanding."""

    finish: Finish
    coats: int
    recoat: Fraction
    cure: int
    wipe: int
    grit: int
    primed: int
    wet: bool
    air: Air
    hours: Hours
    start: datetime | None

    @property
    def sitting(self):
        """A person's time from the beginning of a coat until it may be left."""
        return COAT + timedelta(minutes=self.wipe)

    def sands(self, coat):
        """The grit that is sanded with before this coat, counted from 1; 0 for none."""
        return 0 if coat == 1 else self.primed if self.primed and coat == 2 else self.grit

    def called(self, coat):
        """What a coat is called in a list."""
        if not self.finish.primed:
            return f"{_ORDINALS[coat - 1]} coat"
        return "Coat of primer" if coat == 1 else f"{_ORDINALS[coat - 2]} coat of paint"


@dataclass(slots=True)
class Schedule:
    """The steps in their order. `coats` are the moments of the coats, `cured` when it is ready;
    None where nothing says when it starts. `dried` is how long the last gap before a coat is."""

    plan: Plan
    done: Mapping
    steps: list = field(default_factory=list)
    coats: list = field(default_factory=list)
    cured: datetime | None = None

    def __post_init__(self):
        dry, lost = None, timedelta()
        for coat in range(1, self.plan.coats + 1):
            left = self._coat(coat, dry, _AHEAD if lost else "")
            dry = left and left + self._dries(coat)
            lost = lost_hour(left, dry) if left else timedelta()
            dry = left and dry + lost
        cure = drying(Fraction(24 * self.plan.cure), self.air, self._how())
        self.cured = left and left + cure
        about = f"{lasting(cure)} after the last coat."
        due = self.cured and self.plan.hours.fit(self.cured, timedelta())
        self._add(Step("cured", "Cured: ready to use", about, CURING), due, self.cured)

    def _coat(self, coat, dry, also):
        """Add the steps of one coat, with what's `also` said of it; gives when it was left to dry,
        or None."""
        plan = self.plan
        there = plan.hours.fit
        begin = plan.start if coat == 1 else dry
        ready = begin
        if grit := plan.sands(coat):
            due = begin and there(begin, SANDING + plan.sitting)
            about = "Lightly, with the grain, until it’s dull. Wipe off all the dust."
            sanded = self._add(
                Step(f"sand{coat}", f"Sand with {grit} grit", about, DUST), due, begin
            )
            key = f"sand{coat}"
            ready = sanded if key in self.done else sanded and sanded + SANDING
            ready = ready and max(ready, begin or ready)
        due = ready and there(ready, plan.sitting)
        applied = self._add(self._applied(coat, also), due, begin)
        self.coats.append(applied)
        return self._after(coat, applied)

    def _applied(self, coat, also):
        caution = SOLVENT if self.plan.finish.flammable else WATER
        about = air_said(self.done.get(f"coat{coat}")) + self.plan.finish.how
        if coat > 1:
            between = drying(self.plan.recoat, self._air(coat - 1), self._how())
            noted = ", in the air you noted" if self._noted(coat - 1) else ""
            about += f" At least {lasting(between)} after the coat before it{noted}{also}."
        return Step(f"coat{coat}", self.plan.called(coat), about, caution)

    def _after(self, coat, applied):
        """Add what is done to a wet coat; gives when it was left to dry."""
        left = applied
        free = applied and applied + COAT
        if self.plan.wet and coat <= WET_COATS:
            about = "By hand while it’s wet, with wet-or-dry paper along the grain."
            left = self._add(Step(f"wet{coat}", "Wet-sand with 400 grit", about), left, left)
        if self.plan.wipe:
            wait = timedelta(minutes=self.plan.wipe)
            about = f"{lasting(wait)} after it went on; leave nothing wet on the wood. "
            about += _SLURRY if self.plan.wet and coat <= WET_COATS else _GUMMY
            due = applied and max(applied + wait, left)
            left = self._add(Step(f"wipe{coat}", "Wipe off what’s left", about), due, due)
            free = left
        if self.plan.finish.rags:
            about = "Brushes, pads and paper towels too."
            self._add(Step(f"rags{coat}", "Spread the rags outdoors", about, RAGS), free, left)
        return left

    def _add(self, step, due, earliest):
        """Add a step after the one before it; gives when it was done, or is due."""
        done = self.done.get(step.key)
        about = step.about
        # Nothing is under the first coat that could be soft.
        if self.steps and done and earliest and done.when < earliest:
            about = f"{early(step.key, lasting(earliest - done.when))}{about}"
        placed = {"after": self._after_of(step), "one_go": step.key.startswith(_ONE_GO)}
        self.steps.append(replace(step, about=about, due=due, earliest=earliest, **placed))
        return done.when if done else due

    def _after_of(self, step):
        """The step before it; of rags the coat, as they are oily before it's wiped off too."""
        before = [each.key for each in self.steps if each.caution is not RAGS]
        if step.caution is RAGS:
            before = [key for key in before if key.startswith("coat")]
        return tuple(before[-1:])

    def _dries(self, coat):
        return drying(self.plan.recoat, self._air(coat), self._how())

    def _how(self):
        return self.plan.finish.dries

    def _air(self, coat):
        """The air in which a coat dries: as it was last noted, or else as it is planned for."""
        air = self.plan.air
        for noted in self._noted(coat):
            air = Air(
                air.fahrenheit if noted.fahrenheit is None else noted.fahrenheit,
                air.humidity if noted.humidity is None else noted.humidity,
            )
        return air

    def _noted(self, coat):
        """What was `done` of this coat and those before it, where air was noted; in their order."""
        there = (self.done.get(f"coat{each}") for each in range(1, coat + 1))
        return [each for each in there if each and not each.fahrenheit is each.humidity is None]

    @property
    def air(self):
        """The air in which what is still to come dries."""
        return self._air(self.plan.coats)

    @property
    def is_noted(self):
        """Whether any of that air was noted."""
        return bool(self._noted(self.plan.coats))
