"""Compile the loops that cut and solve, so that the first sculpture does not wait: `python scripts/compile.py`.

numba keeps what it compiled beside the source, or in the user's cache where that can't be written.
"""

import numpy as np

from lumped.conduction import FaceSystem, Lead, solve_ports
from lumped.conduction.kernels import compile_all
from lumped.shape import Block, Piece, Roll, cells_of


def main() -> None:
    compile_all()
    pieces = [
        Piece(name="roll", solid=Roll(start=(0, 0, 0), end=(0.1, 0, 0), radius=0.01), conductivity=3.0),
        Piece(name="block", solid=Block(centre=(0.05, 0, 0), size=(0.02, 0.03, 0.03)), conductivity=0.01),
    ]
    cells = cells_of(pieces, [0, 0], pitch=2e-3)
    system = FaceSystem(
        index=cells.index, body=cells.body, edges=cells.edges, conductance=cells.conductance,
        conductivity=cells.conductivity, origin=cells.origin, pitch=cells.pitch, share=cells.share,
    )  # fmt: skip
    leads = [Lead(name=f"{x:g}", body=0, points=np.array([[x, 0, 0.01], [x, 0, 0]]), radius=3e-4) for x in (0.01, 0.09)]
    solve_ports(system, leads)


if __name__ == "__main__":
    main()
