"""Bowls for tests of safety, and random ones."""

from hypothesis import strategies as st

from lumped.pantry import pantry

PANTRY = pantry()
SALT_DOUGH = {"plain-flour": 0.125, "table-salt": 0.036, "cream-of-tartar": 0.009, "tap-water": 0.237}
RICE_DOUGH = {"rice-flour": 0.2, "table-salt": 0.05, "distilled-water": 0.15}
SUGAR_DOUGH = {"plain-flour": 0.15, "granulated-sugar": 0.12, "distilled-water": 0.07, "vegetable-oil": 0.04}
BOWLS = st.dictionaries(st.sampled_from(sorted(PANTRY)), st.floats(1e-3, 1.0), min_size=1, max_size=8)
