"""A whole case to start from: a project whose questions use each other's answers by name."""

import json
from pkgutil import get_data


def sample_case():
    """A document of today's schema: a record cabinet for an alcove, from its space to its anchors.

    The readings stand first: who types their own there has a case of their own.
    """
    return json.loads(get_data(__package__, "sample_case.json"))
