"""Lumps as closed surfaces of triangles, for a view that turns: rounded as hands round dough.

A solid of revolution is its profile (r, z) turned about an axis; a block is the set of points within a small radius of
a smaller block; a path is one such piece for each straight stretch, and a ball at each bend.
"""

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from lumped.sculpt import Sculpture
from lumped.shape import Ball, Block, Disc, PathRoll, Ring, Roll, Solid

__all__ = ["LumpMesh", "lump_meshes", "solid_mesh"]

Floats = NDArray[np.float64]
Mesh = tuple[Floats, NDArray[np.int64]]
_ROUND = 48  # corners of a circle
_BEND = 6  # steps of a rounded edge
_SOFT = 0.25  # radius of a rounded edge, as a share of half the least measure


@dataclass(frozen=True, slots=True, kw_only=True)
class LumpMesh:
    """One lump as triangles.

    Parameters
    ----------
    name, dough, colour : str
        Which lump, of what, and what it looks like.
    vertices : (n, 3) float32
        Corners, z up. [m]
    triangles : (m, 3) int32
        Corners of each triangle, anticlockwise as seen from outside.
    """

    name: str
    dough: str
    colour: str
    vertices: NDArray[np.float32]
    triangles: NDArray[np.int32]


def lump_meshes(sculpture: Sculpture, *, soft: float = _SOFT) -> list[LumpMesh]:
    """Give all lumps as triangles.

    Parameters
    ----------
    sculpture : Sculpture
        What stands on the table.
    soft : float
        How round edges are: radius as a share of half the least measure; 0 is as sharp as computed. [1]

    Returns
    -------
    list of LumpMesh

    Examples
    --------
    >>> from pathlib import Path
    >>> from lumped.sculpt import Lump
    >>> ball = Lump(name="ball", dough="salt", shape="ball", solid=Ball(centre=(0, 0, 0.01), radius=0.01))
    >>> table = Sculpture(title="One ball", story="", invented=True, path=Path(), doughs={}, looks={}, lumps=(ball,),
    ...                   parts=())
    >>> lump_meshes(table)[0].vertices.shape
    (1106, 3)
    """
    meshes = []
    for lump in sculpture.lumps:
        vertices, triangles = solid_mesh(lump.solid, soft=soft)
        look = sculpture.looks.get(lump.dough)
        meshes.append(
            LumpMesh(
                name=lump.name,
                dough=lump.dough,
                colour=look.colour if look else "#d9a066",
                vertices=vertices.astype(np.float32),
                triangles=triangles.astype(np.int32),
            )
        )
    return meshes


def solid_mesh(solid: Solid, *, soft: float = _SOFT) -> Mesh:
    """Give a solid as triangles.

    Parameters
    ----------
    solid : Solid
        The shape.
    soft : float
        How round edges are. [1]

    Returns
    -------
    vertices, triangles
        (n, 3) float [m] and (m, 3) int; each edge belongs to two triangles. A path is several closed surfaces.

    Examples
    --------
    >>> vertices, triangles = solid_mesh(Ball(centre=(0, 0, 0), radius=0.02))
    >>> vertices.shape[1], triangles.shape[1], float(abs(vertices).max().round(3))
    (3, 3, 0.02)
    """
    match solid:
        case Ball():
            angle = np.linspace(-np.pi / 2, np.pi / 2, _ROUND // 2 + 1)
            profile = solid.radius * np.column_stack([np.cos(angle), np.sin(angle)])
            return _moved(_turned(profile), np.eye(3), solid.centre)
        case Disc():
            return _moved(_turned(_drum(solid.radius, solid.height, soft)), np.eye(3), solid.centre)
        case Ring():
            return _moved(_hollow(solid, soft), np.eye(3), solid.centre)
        case Roll():
            return _roll(solid, soft)
        case PathRoll():
            return _joined([solid_mesh(part, soft=0.0) for part in solid.parts()])
        case Block():
            cos, sin = np.cos(solid.turn), np.sin(solid.turn)
            turn = np.array([[cos, -sin, 0], [sin, cos, 0], [0, 0, 1]])
            return _moved(_box(np.array(solid.size), soft), turn, solid.centre)
    raise TypeError(f"no mesh for {type(solid).__name__}")


def _drum(radius: float, height: float, soft: float) -> Floats:
    """Profile of an upright cylinder with rounded edges, from its lower to its upper middle."""
    bend = soft * min(radius, height / 2)
    angle = np.linspace(-np.pi / 2, 0, _BEND + 1) if bend > 0 else np.zeros(1)
    r, z = radius - bend + bend * np.cos(angle), -height / 2 + bend + bend * np.sin(angle)
    half = np.column_stack([r, z])
    ends = np.array([[0.0, -height / 2], [0.0, height / 2]])
    return np.vstack([ends[:1], half, half[::-1] * [1, -1], ends[1:]])


def _turned(profile: Floats) -> Mesh:
    """Turn a profile (r, z), from axis to axis, about the z axis; both ends become one corner each."""
    rings = profile[1:-1]
    angle = 2 * np.pi * np.arange(_ROUND) / _ROUND
    circle = np.column_stack([np.cos(angle), np.sin(angle)])
    points = [np.column_stack([r * circle, np.full(_ROUND, z)]) for r, z in rings]
    poles = np.array([[0, 0, profile[0, 1]], [0, 0, profile[-1, 1]]])
    here = np.arange(_ROUND)
    then, last = np.roll(here, -1), _ROUND * (len(rings) - 1)
    south, north = _ROUND * len(rings), _ROUND * len(rings) + 1
    faces = [np.column_stack([np.full(_ROUND, south), then, here])]
    faces += [_band(_ROUND * k + here, _ROUND * k + then, _ROUND) for k in range(len(rings) - 1)]
    faces.append(np.column_stack([last + here, last + then, np.full(_ROUND, north)]))
    return np.concatenate([*points, poles]), np.concatenate(faces)


def _hollow(ring: Ring, soft: float) -> Mesh:
    """Turn a closed rounded rectangle about the z axis."""
    width = ring.outer - ring.inner
    bend = soft * min(width, ring.height) / 2
    corners = []
    for k, (x, z) in enumerate([(1, -1), (1, 1), (-1, 1), (-1, -1)]):
        angle = np.pi / 2 * (k - 1) + (np.linspace(0, np.pi / 2, _BEND + 1) if bend > 0 else np.zeros(1))
        middle = np.array([(ring.inner + ring.outer) / 2 + x * (width / 2 - bend), z * (ring.height / 2 - bend)])
        corners.append(middle + bend * np.column_stack([np.cos(angle), np.sin(angle)]))
    profile = np.concatenate(corners)
    angle = 2 * np.pi * np.arange(_ROUND) / _ROUND
    points = [np.column_stack([r * np.cos(angle), r * np.sin(angle), np.full(_ROUND, z)]) for r, z in profile]
    here, count = np.arange(_ROUND), len(profile)
    then = np.roll(here, -1)
    faces = [_band(_ROUND * k + here, _ROUND * k + then, _ROUND * ((k + 1) % count) - _ROUND * k) for k in range(count)]
    return np.concatenate(points), np.concatenate(faces)


def _band(here: NDArray[np.int64], then: NDArray[np.int64], up: int) -> NDArray[np.int64]:
    """Two triangles for each side between one ring of corners and the next."""
    return np.concatenate([np.column_stack([here, then, then + up]), np.column_stack([here, then + up, here + up])])


def _roll(roll: Roll, soft: float) -> Mesh:
    axis = np.subtract(roll.end, roll.start)
    length = float(np.linalg.norm(axis))
    up = axis / length
    helper = np.array([0.0, 0.0, 1.0]) if abs(up[2]) < 0.9 else np.array([1.0, 0.0, 0.0])
    first = np.cross(helper, up)
    first /= np.linalg.norm(first)
    turn = np.column_stack([first, np.cross(up, first), up])
    middle = np.add(roll.start, roll.end) / 2
    return _moved(_turned(_drum(roll.radius, length, soft)), turn, middle)


def _box(size: Floats, soft: float) -> Mesh:
    """Points within a bend of a smaller block: a cube of fine squares, each corner pushed out along its own way."""
    bend = soft * float(size.min()) / 2
    edge = np.linspace(-1, 1, 2 * _BEND + 2) if bend > 0 else np.array([-1.0, 1.0])
    u, v = np.meshgrid(edge, edge, indexing="ij")
    count = len(edge)
    number = np.arange(count * count).reshape(count, count)
    a, b, c, d = (each.ravel() for each in (number[:-1, :-1], number[1:, :-1], number[1:, 1:], number[:-1, 1:]))
    square = np.concatenate([np.column_stack([a, b, c]), np.column_stack([a, c, d])])
    points: list[Floats] = []
    faces: list[NDArray[np.int64]] = []
    for axis in range(3):
        for side in (-1.0, 1.0):
            face = np.empty((count * count, 3))
            face[:, axis], face[:, (axis + 1) % 3], face[:, (axis + 2) % 3] = side, u.ravel(), v.ravel()
            faces.append((square if side > 0 else square[:, ::-1]) + len(points) * count * count)
            points.append(face)
    cube, where = np.unique(np.concatenate(points).round(9), axis=0, return_inverse=True)
    triangles = where.ravel()[np.concatenate(faces)]
    return _pushed_out(cube, size, bend), triangles


def _pushed_out(cube: Floats, size: Floats, bend: float) -> Floats:
    if bend == 0:
        return np.asarray(cube * size / 2)
    # Steps along an edge: the middle step is the flat, all others bend by equal angles.
    steps = (np.abs(cube) * (2 * _BEND + 1) - 1) / (2 * _BEND)
    outwards = np.sign(cube) * np.tan(np.pi / 4 * steps)
    outwards /= np.linalg.norm(outwards, axis=1, keepdims=True)
    return np.asarray(np.sign(cube) * (size / 2 - bend) + bend * outwards)


def _moved(mesh: Mesh, turn: Floats, by: Sequence[float] | Floats) -> Mesh:
    return mesh[0] @ turn.T + np.asarray(by), mesh[1]


def _joined(meshes: Sequence[Mesh]) -> Mesh:
    starts = np.cumsum([0, *(len(vertices) for vertices, _ in meshes)])
    triangles = [faces + start for (_, faces), start in zip(meshes, starts[:-1], strict=True)]
    return np.concatenate([vertices for vertices, _ in meshes]), np.concatenate(triangles)
