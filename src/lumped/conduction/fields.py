"""What goes on inside the dough when its leads are at given potentials: currents, heat, and who takes them.

Everything follows from the cells' potentials. The heat of all faces and lead pieces together is Vᵀ Y V, with Y the
port matrix in the energy form: what goes in at the leads comes out as heat.
"""

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import ArrayLike, NDArray

from lumped.conduction.leads import Lead, Terminal
from lumped.conduction.ports import Ports, cell_potential
from lumped.conduction.solver import coupled
from lumped.conduction.system import FaceSystem

__all__ = ["Fields", "Flows", "fields", "flows"]

Floats = NDArray[np.float64]
Integers = NDArray[np.int64]


@dataclass(frozen=True, slots=True, kw_only=True)
class Fields:
    """The field in all cells.

    Parameters
    ----------
    potential : (n,) float
        Potential of each cell. [V]
    density : (n, 3) float
        Current density in each cell: mean of what passes its faces. [A/m²]
    heat : (n,) float
        Heat made in each cell, that around leads with it. [W]
    crossing : (m,) float
        Current through each face, from its first cell to its second. [A]
    entering : (n, l) float
        Current from each lead into each cell. [A]
    """

    potential: Floats
    density: Floats
    heat: Floats
    crossing: Floats
    entering: Floats


@dataclass(frozen=True, slots=True, kw_only=True)
class Flows:
    """How current goes from lead to lump and from lump to lump.

    Parameters
    ----------
    between : (p, p) float
        Net current from one lump into another; antisymmetric. [A]
    entering : (l, p) float
        Net current from each lead into each lump. [A]
    through : (p,) float
        Current that passes each lump: half of what goes in and out. [A]
    heat : (p,) float
        Heat made in each lump. [W]
    """

    between: Floats
    entering: Floats
    through: Floats
    heat: Floats


def fields(system: FaceSystem, leads: Sequence[Lead | Terminal], ports: Ports, lead_potentials: ArrayLike) -> Fields:
    """Work out the field for given potentials of the leads.

    Parameters
    ----------
    system : FaceSystem
        The cells, n of them, and the m faces between them.
    leads : sequence of Lead or Terminal
        The l electrodes, as they were solved.
    ports : Ports
        What `solve_ports` gave for them.
    lead_potentials : (l,) float
        Potentials of the leads. [V]

    Returns
    -------
    Fields
        In cells where no current can go, all but the potential is zero.

    Examples
    --------
    >>> from lumped.conduction import solve_ports
    >>> bar = FaceSystem(index=[[0, 0, 0], [1, 0, 0]], body=[0, 0], edges=[[0, 1]], conductance=[2.0],
    ...                  conductivity=[2.0, 2.0], origin=[0, 0, 0], pitch=1.0)
    >>> ends = [Terminal(name=name, cells=[k], conductance=[4.0]) for k, name in enumerate("ab")]
    >>> found = fields(bar, ends, solve_ports(bar, ends), [1.0, 0.0])
    >>> found.crossing.round(6).tolist(), round(float(found.heat.sum()), 6)
    ([1.0], 1.0)
    """
    volts = np.asarray(lead_potentials, dtype=float)
    potential = cell_potential(ports, volts)
    first, second = system.edges.T
    drop = potential[first] - potential[second]
    crossing = system.conductance * drop
    heat = np.bincount(first, crossing * drop / 2, system.size) + np.bincount(second, crossing * drop / 2, system.size)
    entering = np.zeros((system.size, len(ports.names)))
    if leads:
        couplings = coupled(system, leads)
        fall = volts[couplings.port] - couplings.weights @ potential
        current = couplings.conductance * fall
        heat += couplings.weights.T @ (current * fall)
        for port in range(len(ports.names)):
            mine = couplings.port == port
            entering[:, port] = couplings.weights[mine].T @ current[mine]
    return Fields(
        potential=potential, density=_density(system, crossing), heat=np.asarray(heat), crossing=crossing,
        entering=entering,
    )  # fmt: skip


def flows(system: FaceSystem, found: Fields, piece: Integers) -> Flows:
    """Sum currents and heat up over lumps.

    Parameters
    ----------
    system : FaceSystem
        The cells.
    found : Fields
        The field in them.
    piece : (n,) int
        Lump that each cell belongs to, from 0.

    Returns
    -------
    Flows
        For as many lumps as the largest number in `piece` tells.

    Examples
    --------
    >>> from lumped.conduction import solve_ports
    >>> bar = FaceSystem(index=[[0, 0, 0], [1, 0, 0]], body=[0, 0], edges=[[0, 1]], conductance=[2.0],
    ...                  conductivity=[2.0, 2.0], origin=[0, 0, 0], pitch=1.0)
    >>> ends = [Terminal(name=name, cells=[k], conductance=[4.0]) for k, name in enumerate("ab")]
    >>> found = flows(bar, fields(bar, ends, solve_ports(bar, ends), [1.0, 0.0]), np.array([0, 1]))
    >>> round(float(found.between[0, 1]), 6), found.through.round(6).tolist()
    (1.0, [1.0, 1.0])
    """
    count = int(piece.max()) + 1
    a, b = piece[system.edges].T
    between = np.zeros((count, count))
    across = a != b
    np.add.at(between, (a[across], b[across]), found.crossing[across])
    between -= between.T
    entering = np.array([np.bincount(piece, column, count) for column in found.entering.T]).reshape(-1, count)
    through = (np.abs(between).sum(axis=0) + np.abs(entering).sum(axis=0)) / 2
    return Flows(
        between=between, entering=entering, through=through, heat=np.bincount(piece, found.heat, count).astype(float)
    )


def _density(system: FaceSystem, crossing: Floats) -> Floats:
    """Current density in cells: along each axis half the sum of what passes the two faces, over a whole face's area."""
    first, second = system.edges.T
    axis = np.argmax(np.abs(system.index[second] - system.index[first]), axis=1)
    along = crossing * np.where(system.index[second, axis] > system.index[first, axis], 1.0, -1.0)
    density = np.zeros((system.size, 3))
    for k in range(3):
        mine = axis == k
        for end in (first, second):
            density[:, k] += np.bincount(end[mine], along[mine], system.size)
    return density / (2 * system.pitch**2)
