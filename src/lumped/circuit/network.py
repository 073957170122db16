"""A network: branches with a law between two nodes, and conductors that join many nodes at once."""

from dataclasses import dataclass
from itertools import chain

import numpy as np
from numpy.typing import NDArray
from scipy.sparse.csgraph import connected_components

from lumped.circuit.law import Law

__all__ = ["Branch", "Conductor", "Network"]

ROW_SUM = 1e-9  # of the largest entry; a port matrix that sums worse leaks current and is no conductor


@dataclass(frozen=True, slots=True, kw_only=True)
class Branch:
    """A part, or one lead of it, between two nodes; a node exists by being named.

    Examples
    --------
    >>> from lumped.circuit import StraightLine
    >>> Branch(name="series", law=StraightLine(resistance=100.0), plus="a", minus="b").plus
    'a'
    """

    name: str
    law: Law
    plus: str
    minus: str


@dataclass(frozen=True, slots=True, kw_only=True)
class Conductor:
    """A body of dough, seen from its ports.

    Parameters
    ----------
    nodes : tuple of str
        The ports.
    matrix : (n, n) float
        Port matrix: the currents into the body are `matrix @ potentials`; rows and columns sum to zero. [S]

    Examples
    --------
    >>> Conductor(nodes=("a", "b"), matrix=np.array([[0.1, -0.1], [-0.1, 0.1]])).nodes
    ('a', 'b')
    """

    nodes: tuple[str, ...]
    matrix: NDArray[np.float64]

    def __post_init__(self) -> None:
        count = len(self.nodes)
        if self.matrix.shape != (count, count):
            raise ValueError(f"{count} nodes need a {count} × {count} matrix, not {self.matrix.shape}")
        largest = np.abs(self.matrix).max(initial=0.0)
        sums = np.abs(np.concatenate([self.matrix.sum(axis=0), self.matrix.sum(axis=1)])).max(initial=0.0)
        if not sums <= ROW_SUM * largest:
            raise ValueError(f"rows and columns of a port matrix sum to zero, not to {sums} S")

    def bodies(self) -> tuple["Conductor", ...]:
        """Give the bodies apart where the matrix joins none of one's ports to any of another's.

        Examples
        --------
        >>> two = Conductor(nodes=("a", "b"), matrix=np.zeros((2, 2)))
        >>> [body.nodes for body in two.bodies()]
        [('a',), ('b',)]
        """
        count, label = connected_components(self.matrix != 0, directed=False)
        members = [np.flatnonzero(label == body) for body in range(count)]
        return tuple(
            Conductor(nodes=tuple(self.nodes[k] for k in ports), matrix=self.matrix[np.ix_(ports, ports)])
            for ports in members
        )


@dataclass(frozen=True, slots=True, kw_only=True)
class Network:
    """Branches and conductors that share nodes by name.

    Raises
    ------
    ValueError
        If two branches have the same name.
    """

    branches: tuple[Branch, ...]
    conductors: tuple[Conductor, ...] = ()

    def __post_init__(self) -> None:
        names = [branch.name for branch in self.branches]
        if len(set(names)) < len(names):
            raise ValueError("two branches have the same name")

    @property
    def nodes(self) -> tuple[str, ...]:
        """All nodes, in the order in which they are first named."""
        ends = chain.from_iterable((branch.plus, branch.minus) for branch in self.branches)
        ports = chain.from_iterable(conductor.nodes for conductor in self.conductors)
        return tuple(dict.fromkeys(chain(ends, ports)))

    def pieces(self) -> tuple[tuple[str, ...], ...]:
        """Give the sets of nodes that hang together, each in the order of `nodes`.

        Examples
        --------
        >>> from lumped.circuit import StraightLine
        >>> wire = StraightLine(resistance=1.0)
        >>> one = Branch(name="one", law=wire, plus="a", minus="b")
        >>> two = Branch(name="two", law=wire, plus="c", minus="d")
        >>> Network(branches=(one, two)).pieces()
        (('a', 'b'), ('c', 'd'))
        """
        chief = {node: node for node in self.nodes}

        def root(node: str) -> str:
            while chief[node] != node:
                chief[node] = chief[chief[node]]
                node = chief[node]
            return node

        for one, other in self._links():
            chief[root(other)] = root(one)
        gathered: dict[str, list[str]] = {}
        for node in chief:
            gathered.setdefault(root(node), []).append(node)
        return tuple(map(tuple, gathered.values()))

    def _links(self) -> list[tuple[str, str]]:
        bodies = chain.from_iterable(conductor.bodies() for conductor in self.conductors)
        links = [(branch.plus, branch.minus) for branch in self.branches]
        return links + [(body.nodes[0], node) for body in bodies for node in body.nodes]
