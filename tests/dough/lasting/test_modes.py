import numpy as np
import pytest

from lumped.dough.lasting.layers import Piece, layer_shares, solve_layers
from lumped.dough.lasting.modes import modes_of

PIECES = [Piece(shape="slab", thickness=0.02), Piece(shape="roll", thickness=0.02), Piece(shape="ball", thickness=0.02)]


@pytest.mark.parametrize("piece", PIECES, ids=lambda piece: piece.shape)
def test_a_step_of_the_modes_is_the_step_of_the_layers(piece):
    """An implicit step of 300 s of a piece that is hot throughout and gives 2 W from its face."""
    shares, passing, store, away, step = layer_shares(12, piece.power), 0.5, 3.5e6, 2.0, 300.0
    volume = piece.volume * shares
    within = np.cumsum(volume)
    ties = passing * piece.area_of(within)[:-1] / np.diff(piece.reach_of(within - volume / 2))
    diagonal = store * volume / step + np.append(ties, 0.0) + np.append(0.0, ties)
    heat = store * volume / step * 350.0 - away * np.eye(12)[-1]
    layers = solve_layers(-ties[:, None], diagonal[:, None], heat[:, None])[:, 0]

    modes = modes_of(12, piece.power)
    left = 1 / (1 + step * piece.power * passing / (store * piece.depth**2) * modes.decay)
    found = left * (350.0 * modes.even - step * away / (store * piece.volume) * modes.face)
    assert found @ modes.face == pytest.approx(layers[-1], rel=1e-10)
    assert modes.mean(found) == pytest.approx(shares @ layers, rel=1e-10)


def test_a_slab_decays_as_fast_as_its_cosines():
    decay = modes_of(64, 1).decay
    assert decay[0] == pytest.approx(0.0, abs=1e-9)
    np.testing.assert_allclose(decay[1:4], np.pi**2 * np.arange(1, 4) ** 2, rtol=1e-2)  # 64 layers


def test_a_ball_and_a_roll_decay_as_fast_as_their_first_waves():
    # tan x = x at 4.4934 and J1 at 3.8317 [DLMF 10.21]: tight faces; rates are three and two times the depth's
    assert 3 * modes_of(64, 3).decay[1] == pytest.approx(4.4934**2, rel=1e-2)
    assert 2 * modes_of(64, 2).decay[1] == pytest.approx(3.8317**2, rel=1e-2)


def test_a_piece_that_is_even_is_even_in_its_middle_and_at_its_face():
    for power in (1, 2, 3):
        modes = modes_of(16, power)
        assert modes.even @ modes.face == pytest.approx(1.0)
        assert modes.even @ modes.middle == pytest.approx(1.0)
        assert modes.mean(modes.even) == pytest.approx(1.0)
