"""What moisture wood comes to when it lies long enough in air of a temperature and humidity."""

from sawside.lengths.display import mixed_text
from sawside.reckoners.declaration import Answer, Reckoner, Reckoning
from sawside.reckoners.fields import choice
from sawside.reckoners.wood.shared.moisture_fields import air_fields
from sawside.wood.moisture import equilibrium, fahrenheit
from sawside.wood.movement import within
from sawside.wood.numbers import number_text, percent_text


def compute(given, show):
    """The moisture in percent of the dry weight, exact."""
    degrees = given.temperature_f if given.scale == "air_f" else fahrenheit(given.temperature_c)
    moisture = equilibrium(degrees, given.humidity)
    means = (
        "Yes, it’s within 6 to 14%: figure movement from the wood’s coefficient."
        if within(moisture)
        else "It’s outside 6 to 14%: figure movement from the wood’s total shrinkage."
    )
    in_fahrenheit = f"{number_text(degrees, 1)} °F" if degrees >= 0 else f"{mixed_text(degrees)} °F"
    return Reckoning(
        answers={"moisture": percent_text(moisture), "means": means},
        working=(
            f"T = {in_fahrenheit}, h = {number_text(given.humidity / 100, 3)}",
            "1800 ÷ W × (K·h ÷ (1 − K·h) + (K1·K·h + 2·K1·K2·K²·h²) ÷ (1 + K1·K·h + K1·K2·K²·h²)) "
            f"= {number_text(moisture, 2)}%, with W, K, K1 and K2 from the temperature",
        ),
        cautions=(
            "A thick board takes weeks to settle, and shop air swings. A moisture meter on the "
            "board tells you more.",
        ),
    )


RECKONER = Reckoner(
    key="equilibrium_moisture",
    title="Moisture from the air",
    asks="What moisture content will wood settle at in this air?",
    words=(
        "moisture content, MC, EMC, humidity, equilibrium, relative humidity, moisture, "
        "temperature, dry, damp, air"
    ),
    order=405,
    job="wood",
    picture={
        "wood": "M3 28h34v8H3z",
        "ink": "M3 32h10M19 32h18",
        "chalk": "M20 3q8 9 8 13a8 8 0 0 1-16 0q0-4 8-13z",
    },
    fields=(
        choice("scale", "Temperature scale", {"air_f": "°F", "air_c": "°C"}),
        *air_fields("scale"),
    ),
    answers=(
        Answer("moisture", "Moisture content", "text"),
        Answer("means", "Can you use it for movement?", "text"),
    ),
    source=(
        "USDA Forest Products Laboratory, Wood Handbook, FPL-GTR-282 (2021), equation 4-5; it "
        "matches every cell of Table 4-2 (2010) within 0.07."
    ),
    compute=compute,
    verdict="Wood settles at {moisture}",
    example={"scale": "air_f", "temperature_f": "68", "humidity": "45"},
)
