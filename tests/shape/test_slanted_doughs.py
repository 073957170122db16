"""Two doughs that meet on a slant: no closed form, so coarse grids are held against a fine one."""

import numpy as np
import pytest

from lumped.conduction import Terminal, solve_ports
from lumped.shape import Block, Cut, Piece, cells_of

from ..outside.fields import faces

BAR = Block(centre=(0, 0, 0), size=(3, 1, 1))


def slanted_end(turn):
    """The part of the bar beyond a slanted plane through its middle."""
    return Cut(solid=BAR, point=(0, 0, 0), away=(-np.cos(turn), -np.sin(turn), 0))


def resistance(ratio, turn, across):
    pieces = [
        Piece(name="near", solid=BAR, conductivity=1.0),
        Piece(name="far", solid=slanted_end(turn), conductivity=ratio),
    ]
    system = faces(cells_of(pieces, [0, 0], pitch=1 / across, offset=(0, 0.3, 0.6)))
    x, g = system.index[:, 0], 2 * system.pitch * system.conductivity * system.share
    plates = [
        Terminal(name=name, cells=np.flatnonzero(x == end), conductance=g[x == end])
        for name, end in (("near", x.min()), ("far", x.max()))
    ]
    return solve_ports(system, plates, port_rtol=1e-5).resistance("near", "far")


@pytest.mark.parametrize(("ratio", "rtol"), [(2.0, 4e-3), (10.0, 4e-3), (1e4, 1.5e-2)])
@pytest.mark.parametrize("degrees", [20, 45])
def test_a_slanted_interface_is_right_at_six_cells_across(ratio, rtol, degrees):
    turn = np.radians(degrees)
    assert resistance(ratio, turn, 6) == pytest.approx(resistance(ratio, turn, 14), rel=rtol)
