import numpy as np
import pytest

from lumped.dough.lasting.isotherm import Isotherm
from lumped.dough.lasting.segments import Segments


@pytest.mark.parametrize("nodes", [2, 5, 7, 11, 21, 160])
def test_the_piece_is_found_wherever_it_is_sought_first(nodes):
    rng = np.random.default_rng(nodes)
    law = Isotherm(content=np.linspace(0, 1, nodes), activity=np.sort(rng.random((50, nodes)), axis=1))
    pieces = Segments(law, (50,))
    for near in (0.0, 0.5, 1.0):
        limit = 1.4 * rng.random(50) - 0.2
        found = pieces.last_where(lambda activity, content: activity < limit, near=np.full(50, near))  # noqa: B023
        below = (law.activity < limit[:, None]).sum(axis=1) - 1
        np.testing.assert_array_equal(found, np.clip(below, 0, nodes - 2))


def test_one_law_serves_all_cases():
    pieces = Segments(Isotherm(content=np.linspace(0, 1, 11), activity=np.linspace(0, 1, 11)), (2, 2))
    activity, content = pieces.at(np.array([[1, 2, 3, 4]]))
    assert activity.tolist() == content.tolist() == [[0.1, 0.2, 0.30000000000000004, 0.4]]
