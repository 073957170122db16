"""Figures as people read them, the same in the terminal, on paper and on the page."""

import pytest

from lumped.verdict import Span


@pytest.mark.parametrize(
    ("span", "scale", "text"),
    [
        ((1.0, 0.99, 1.01), 1.0, "1.0"),
        ((1.0, 0.99, 1.01), 1e3, "1,000 (990 to 1,010)"),
        ((-5.63, -6.0, -5.4), 1.0, "−5.6 (−6.0 to −5.4)"),
        ((-1e-9, -2e-9, 0.0), 1e3, "0.0"),
        ((0.19234, 0.0512, 0.43), 1e3, "192 (51.2 to 430)"),
    ],
)
def test_a_figure_keeps_what_could_be_measured(span, scale: float, text: str):
    assert Span(mean=span[0], low=span[1], high=span[2]).text(scale=scale) == text
