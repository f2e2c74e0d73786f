"""What fits where an opening was measured in several places: the smallest reading counts."""

from fractions import Fraction

from sawside.drawing.tape.opening_in_spots import opening_in_spots
from sawside.lengths.fine import on_fine_marks
from sawside.reckoners.declaration import Reckoning
from sawside.reckoners.tape.shared.by_own_tape import by_own_tape
from sawside.reckoners.tape.shared.clear_of import clear_of


def smallest_reading(given, show):
    """The smallest reading less the room, and how far the readings lie apart."""
    readings, working = _true_readings(given, show)
    smallest, largest = min(readings), max(readings)
    room = given.room or Fraction(0)
    told_fits = _fits_told(readings, show, clear_of(smallest, room, show))
    told = ", ".join(show.number(each) for each in readings)
    working.append(f"Smallest of {told}: {show.number(smallest)}")
    if room:
        working.append(f"{show.number(smallest)} − {show.number(room)}{show.equals(told_fits)}")
    read = {
        "smallest": smallest,
        "largest": largest,
        "apart": largest - smallest,
        "mean": sum(readings, Fraction(0)) / len(readings),
    }
    if given.tape:  # what was corrected lies on no mark of a coarse tape
        read = {key: on_fine_marks(each, show) for key, each in read.items()}
    working.append(
        f"Apart: {show.number(largest)} − {show.number(smallest)}{show.equals(read['apart'])}"
    )
    return Reckoning(
        answers={"fits": told_fits, **read},
        working=tuple(working),
        drawing=opening_in_spots(show, readings, told_fits),
        cautions=(
            "It may be tighter between the spots you measured. Run a stick of that length "
            "through the whole opening.",
        ),
        main="fits",
        verdict=_verdict(told_fits, room, largest > smallest and read["apart"], show),
    )


def _true_readings(given, show):
    """The readings, corrected by the tape, and how."""
    found = [by_own_tape(given.tape, each, show) for each in given.readings]
    return [true for true, _ in found], [line for _, lines in found for line in lines]


def _verdict(fits, room, apart, show):
    tight = "" if room else ", no clearance"
    uneven = f"; varies {show.brief(apart)}" if apart else ""
    return f"Cut {show.bare(fits)}{tight}{uneven}"


def _fits_told(readings, show, fits):
    """What goes in on a mark that is not longer, and no coarser than the readings are."""
    grid = show.settings.grid
    coarse = all((each / grid.step).denominator == 1 for each in readings)
    return show.rounded(fits, "go in") if coarse else on_fine_marks(fits, show, "go in")
