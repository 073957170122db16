"""Compile the solver's loops, so that the first sculpture does not wait for them: `python scripts/compile.py`.

numba keeps what it compiled beside the source, or in the user's cache where that can't be written.
"""

import numpy as np

from lumped.conduction import FaceSystem, Terminal, solve_ports
from lumped.conduction.kernels import compile_all


def main() -> None:
    compile_all()
    index = np.argwhere(np.ones((10, 10, 10), dtype=bool))
    number = np.arange(len(index)).reshape(10, 10, 10)
    edges = np.column_stack([number[:-1].ravel(), number[1:].ravel()])
    along = np.column_stack([number[:, :-1].ravel(), number[:, 1:].ravel()])
    edges = np.concatenate([edges, along])
    block = FaceSystem(index=index, body=np.zeros(1000, int), edges=edges, conductance=np.ones(len(edges)),
                       conductivity=np.ones(1000), origin=np.zeros(3), pitch=1e-3)  # fmt: skip
    solve_ports(block, [Terminal(name=f"{k}", cells=np.array([k]), conductance=np.ones(1)) for k in (0, 990)])


if __name__ == "__main__":
    main()
