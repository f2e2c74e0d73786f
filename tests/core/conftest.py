"""Settings for the properties: the same examples on every run, and no time limits."""

from hypothesis import settings

settings.register_profile(
    "sawside", deadline=None, database=None, derandomize=True, max_examples=300
)
settings.load_profile("sawside")
