"""What each part of a sculpture does, why, and how surely.

`judge` reads the sculpture as drawn, at both ends of what is unknown, and with doubtful touches the other way; a part's
state is the word for its current or speed in each reading. A cause is named because the part was computed again
without it: state(without cause) > state(as drawn).
"""

from lumped.verdict.budget import Budget
from lumped.verdict.judging import judge
from lumped.verdict.readings import Reading, Readings
from lumped.verdict.reasons import Reason
from lumped.verdict.states import STATES
from lumped.verdict.verdicts import Flip, PartVerdict, Span, Verdict

__all__ = [
    "STATES", "Budget", "Flip", "PartVerdict", "Reading", "Readings", "Reason", "Span", "Verdict", "judge",
]  # fmt: skip
