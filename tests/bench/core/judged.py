"""Many random cases, each held against a judge that shares nothing with the core."""

import random


def judged(name, checks, cases):
    """Yield NAME.oracle_cases, and how many of them were wrong: NAME.oracle_wrong.

    A check takes a random number generator and gives what is wrong as sentences.
    """
    wrong = 0
    for number in range(cases):
        check = checks[number % len(checks)]
        faults = check(random.Random(f"bench {number}"))
        wrong += bool(faults)
        for fault in faults:
            print(f"{check.__name__}: {fault}", flush=True)
    yield f"{name}.oracle_cases", cases
    yield f"{name}.oracle_wrong", wrong
