"""What can hurt when wood is finished, each with the published source that says it.

Rags: NFPA, safety tip sheet on oily rags (read): spread flat outdoors to dry, never piled, then a
metal can with a tight lid, filled with water and detergent. At work, 29 CFR 1910.106(h)(8)(iii),
closed metal waste cans emptied daily, and 1926.252(e), covered fire resistant containers (read in
secondary copies). Flames, original cans: the same tip sheet. Dust: NIOSH Pocket Guide, wood dust,
1 mg/m³, potential occupational carcinogen (read). Safety data sheets: 29 CFR 1910.1200; lead
paint: EPA, 40 CFR 745; waste: EPA, household hazardous waste; all from memory. Gloves and
cartridges: as the labels of such goods say, from memory. That a sander without a vacuum is soon
past the limit, and that oiled dust heats up: common practice, no source.
"""

from sawside.wood.caution import Caution


def _caution(short, more):
    return Caution(short, f"{short} {more}")


RAGS = _caution(
    "Spread oily rags flat outdoors to dry; never pile them.",
    "Piled or wadded up, they heat up by themselves and can catch fire within hours. Weigh them "
    "down in one layer, away from buildings. Put dry ones in a metal can with a tight lid, filled "
    "with water and detergent, and ask your town how to get rid of it (NFPA tip sheet on oily "
    "rags). A workplace needs closed metal waste cans, emptied daily (29 CFR 1910.106).",
)
SOLVENT = _caution(
    "No flames, sparks or pilot lights; open the windows.",
    "The vapor catches fire, and it runs along the floor. Don’t smoke, and keep the liquid in its "
    "own can with the lid on (NFPA). Wear gloves and eye protection, and a respirator with organic "
    "vapor cartridges if the can or its safety data sheet says so (29 CFR 1910.1200). Spray only "
    "where local rules allow it. The maker’s sheet comes first.",
)
WATER = _caution(
    "Open a window, and keep it off skin and out of eyes.",
    "Wear gloves and eye protection. What the can and its safety data sheet say about air and "
    "respirators comes first (29 CFR 1910.1200).",
)
DUST = _caution(
    "Wear a dust respirator to sand, and collect the dust.",
    "Wood dust can cause cancer: NIOSH’s limit is 1 mg in a cubic meter of air, which a sander "
    "without a vacuum is soon past. Dust of a finish isn’t better. Empty the dust bag "
    "outdoors after oiled wood: the dust can heat up by itself like oily rags. Old paint may have "
    "lead in it: have it tested before you sand it, and follow local rules (EPA).",
)
CURING = _caution(
    "Until it’s cured, keep children, food and hot things off it.",
    "It can give off vapor and mark long after it feels dry. Keep the cans locked away from "
    "children. Don’t pour leftovers down a drain or on the ground: take them to your town’s "
    "hazardous waste collection (EPA).",
)
_BUYING = {
    RAGS: "Piled up, they heat up by themselves and can catch fire (NFPA): see Coats.",
    SOLVENT: "The vapor catches fire (NFPA). The maker’s sheet comes first: see Coats.",
    WATER: "The can and its safety data sheet come first: see Coats.",
}


def to_buyers(caution):
    """The same caution for who only buys the finish, with where all of it stands."""
    return _caution(caution.short, _BUYING[caution])


SOURCES = (
    "Rags and flames: NFPA tip sheet on oily rags; 29 CFR 1910.106(h)(8)(iii) and 1926.252(e), "
    "read in secondary copies. Dust: NIOSH Pocket Guide, wood dust. From memory: safety data "
    "sheets, 29 CFR 1910.1200; lead paint and waste, EPA."
)
