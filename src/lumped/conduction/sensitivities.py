"""How each conductance between leads hangs on each lump's conductivity, from the potentials that are there already.

The port matrix is the least energy over all potentials, so its change is the energy's own at the potentials found:

    ∂Y_ij/∂ln σ_p = Σ_faces s_p g Δ_i Δ_j + Σ_pieces [s_p g d_i d_j − g (d_i ∂w_p·X_j + d_j ∂w_p·X_i)],

with Δ the potential difference over a face, d the one between a piece of lead and the dough around it, s_p the share
by which a conductance grows with σ_p, and ∂w_p the change of the lead's weights. No new solution is needed. Summed
over all lumps it gives Y itself, for a dough that conducts twice as well doubles all conductances.
"""

from collections.abc import Sequence

import numpy as np
from numpy.typing import NDArray
from scipy import sparse

from lumped.conduction.leads import Couplings, Lead, Terminal
from lumped.conduction.ports import Ports
from lumped.conduction.solver import coupled
from lumped.conduction.system import FaceSystem

__all__ = ["sensitivities"]

Floats = NDArray[np.float64]


def sensitivities(
    system: FaceSystem, leads: Sequence[Lead | Terminal], ports: Ports, leaning: sparse.csr_array,
    piece: NDArray[np.int64],
) -> Floats:  # fmt: skip
    """Give the change of every port conductance for each lump's conductivity.

    Parameters
    ----------
    system : FaceSystem
        The cells, n of them, and the m faces between them.
    leads : sequence of Lead or Terminal
        The l electrodes, as they were solved. Conductances of terminals are held as they were given.
    ports : Ports
        What `solve_ports` gave for them.
    leaning : (m, p) sparse float
        By what share each face's conductance grows with each lump's conductivity.
    piece : (n,) int
        Lump of each cell, from 0.

    Returns
    -------
    (p, l, l) float
        ∂Y/∂ln σ of each lump: what Y changes by when that lump conducts e times as well, to first order. [S]

    Examples
    --------
    >>> from lumped.conduction import solve_ports
    >>> bar = FaceSystem(index=[[0, 0, 0], [1, 0, 0]], body=[0, 0], edges=[[0, 1]], conductance=[2.0],
    ...                  conductivity=[2.0, 2.0], origin=[0, 0, 0], pitch=1.0)
    >>> ends = [Terminal(name=name, cells=[k], conductance=[1e9]) for k, name in enumerate("ab")]
    >>> halves = sparse.csr_array([[0.5, 0.5]])
    >>> sensitivities(bar, ends, solve_ports(bar, ends), halves, np.array([0, 1]))[:, 0, 0].round(3).tolist()
    [1.0, 1.0]
    """
    count, ports_count = leaning.shape[1], len(ports.names)
    x = ports.potentials.astype(float)
    drop = x[system.edges[:, 0]] - x[system.edges[:, 1]]
    found = np.empty((count, ports_count, ports_count))
    couplings = coupled(system, leads) if leads else None
    for p in range(count):
        share = np.asarray(leaning[:, [p]].todense()).ravel()
        used = np.flatnonzero(share)
        found[p] = drop[used].T @ ((share * system.conductance)[used, None] * drop[used])
        if couplings is not None:
            found[p] += _at_leads(couplings, x, piece == p)
    return found


def _at_leads(couplings: Couplings, x: Floats, mine: NDArray[np.bool_]) -> Floats:
    """What a lump changes at pieces of leads: their conductance, and where their current goes. (l, l) [S]"""
    held = couplings.home >= 0
    weights, g = couplings.weights[held], couplings.conductance[held]
    fall = -(weights @ x)
    fall[np.arange(len(g)), couplings.port[held]] += 1
    share = mine[couplings.home[held]]
    part = sparse.csr_array(weights.multiply(mine[None, :]))
    turned = part @ x - np.asarray(part.sum(axis=1)).reshape(-1, 1) * (weights @ x)
    moved = fall.T @ (g[:, None] * turned)
    return np.asarray(fall.T @ ((share * g)[:, None] * fall) - moved - moved.T)
