"""Random networks and bodies that multigrid has to bear."""

import numpy as np

from lumped.conduction.network import laid_out


def blob(seed, contrast, extent=11, fill=0.6):
    """A random body in a box: cells with one of two conductivities, slivers between, connected or not."""
    random = np.random.default_rng(seed)
    there = random.random((extent, extent, extent)) < fill
    sigma = np.where(random.random(there.shape) < 0.5, 1.0, 1.0 / contrast)
    number = np.full(there.shape, -1)
    number[there] = np.arange(there.sum())
    edges, conductance = [], []
    for axis in range(3):
        near = [slice(None)] * 3
        far = [slice(None)] * 3
        near[axis], far[axis] = slice(None, -1), slice(1, None)
        near, far = tuple(near), tuple(far)
        both = there[near] & there[far]
        share = random.choice([1.0, 0.5, 1e-3], size=both.shape)
        mean = 2 / (1 / sigma[near] + 1 / sigma[far])
        edges.append(np.column_stack([number[near][both], number[far][both]]))
        conductance.append((share * mean)[both])
    return np.concatenate(edges), np.concatenate(conductance), np.argwhere(there)


def grounded(seed, contrast, **more):
    """A blob of which every cell leaks a little and a few much."""
    edges, conductance, cell = blob(seed, contrast, **more)
    leak = np.where(np.random.default_rng(seed).random(len(cell)) < 0.02, 1.0, 1e-9)
    return laid_out(edges, conductance, leak, cell)
