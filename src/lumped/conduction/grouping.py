"""Groups of unknowns that move together, for the coarser network of a multigrid level.

Two rules, both by the strength of links alone, so that contrast, half-filled skin cells and bodies that don't touch
are no special cases:

- a *guest* is an unknown whose strongest link is weak beside what its neighbour there has for its own: it follows that
  neighbour, its *host*, wherever that goes. Skin cells and insulator beside conductor are guests.
- hosts in one block of 2 × 2 × 2 cells are one group if links that are strong for both ends lead from one to another.
"""

import numpy as np
from numpy.typing import NDArray

from lumped.compiling import compiled
from lumped.conduction.network import Network, arranged

__all__ = ["coarser", "grouped"]

Integers = NDArray[np.int64]
_GUEST = 0.7  # of the neighbour's own strongest link
_STRONG = 0.1  # of the strongest link of either end


def grouped(network: Network) -> Integers:
    """Give the group of each unknown, (n,), numbered from 0 in the order of the unknowns.

    Examples
    --------
    >>> from lumped.conduction.network import laid_out
    >>> line = laid_out(np.array([[0, 1], [1, 2], [2, 3]]), np.array([1.0, 1.0, 1.0]), np.zeros(4),
    ...                 np.array([[k, 0, 0] for k in range(4)]))
    >>> groups = grouped(line)
    >>> groups[np.argsort(line.order)].tolist()
    [0, 0, 1, 1]
    """
    block = network.cell // 2
    low, extent = block.min(axis=0), np.ptp(block, axis=0) + 1
    key = np.ravel_multi_index(tuple((block - low).T), tuple(extent))
    root = _rooted(network.starts, network.columns, network.conductance, network.leak, key)
    return np.asarray(_numbered(root))


def coarser(network: Network, group: Integers) -> tuple[Network, Integers]:
    """Join each group to one unknown: links between groups add up, those within vanish.

    Returns
    -------
    Network
        The coarser network.
    (n,) int
        Its unknown for each unknown of the finer one.
    """
    count = int(group.max()) + 1
    starts, columns, links = _summed(network.starts, network.columns, network.conductance, group, count)
    cell = np.zeros((count, 3), dtype=np.int64)
    cell[group[::-1]] = network.cell[::-1] // 2
    found = arranged(starts, columns, links, np.bincount(group, network.leak, count).astype(float), cell)
    place = np.empty(count, dtype=np.int64)
    place[found.order] = np.arange(count)
    return found, place[group]


@compiled
def _numbered(root):  # type: ignore[no-untyped-def]
    """Number the groups from 0, in the order of the unknowns that they are named after."""
    number = np.full(len(root), -1, np.int64)
    count = 0
    for i in range(len(root)):
        if root[i] == i:
            number[i] = count
            count += 1
    return number[root]


@compiled
def _summed(starts, columns, links, group, count):  # type: ignore[no-untyped-def]
    """Rows of the groups: links between two groups added up."""
    first, after = np.full(count, -1, np.int64), np.full(len(group), -1, np.int64)  # the members of each, as a chain
    for i in range(len(group) - 1, -1, -1):
        after[i] = first[group[i]]
        first[group[i]] = i
    new_starts, new_columns, new_links = np.zeros(count + 1, np.int32), np.empty_like(columns), np.empty_like(links)
    where = np.full(count, -1, np.int64)
    e = 0
    for k in range(count):
        begin, i = e, first[k]
        while i >= 0:
            for a in range(starts[i], starts[i + 1]):
                j = group[columns[a]]
                if j == k:
                    continue
                if where[j] < begin:
                    where[j] = e
                    new_columns[e], new_links[e] = j, 0.0
                    e += 1
                new_links[where[j]] += links[a]
            i = after[i]
        new_starts[k + 1] = e
    return new_starts, new_columns[:e].copy(), new_links[:e].copy()


@compiled
def _rooted(starts, columns, links, leak, block):  # type: ignore[no-untyped-def]
    """Number of one unknown in the group of each, the same for all in a group.

    What an unknown leaks to a lead is a link, too: one that a lead holds follows nobody.
    """
    n = len(starts) - 1
    strongest, host = np.zeros(n), np.arange(n)
    for i in range(n):
        for e in range(starts[i], starts[i + 1]):
            if links[e] > strongest[i]:
                strongest[i], host[i] = links[e], columns[e]
    parent = np.arange(n)
    guest = strongest >= leak
    strongest = np.maximum(strongest, leak)
    for i in range(n):
        guest[i] &= strongest[i] < _GUEST * strongest[host[i]]
    for i in range(n):
        if guest[i]:
            continue
        for e in range(starts[i], starts[i + 1]):
            j = columns[e]
            near = j < i and not guest[j] and block[i] == block[j]
            if near and links[e] >= _STRONG * max(strongest[i], strongest[j]):
                _joined(parent, i, j)
    for i in range(n):
        if guest[i]:
            _joined(parent, host[i], i)
    for i in range(n):
        parent[i] = _root(parent, i)
    return parent


@compiled
def _root(parent, i):  # type: ignore[no-untyped-def]
    while parent[i] != i:
        parent[i] = parent[parent[i]]
        i = parent[i]
    return i


@compiled
def _joined(parent, i, j):  # type: ignore[no-untyped-def]
    """Join two groups; the first one's number stays."""
    parent[_root(parent, j)] = _root(parent, i)
