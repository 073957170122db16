"""Meshes against closed forms of volume, and against the rule that each edge has two sides."""

import numpy as np
import pytest
from tests.laid_tables import ALL_SHAPES, sculpture

from lumped.picture import lump_meshes
from lumped.picture.meshes import solid_mesh
from lumped.shape import Ball, Block, Disc, PathRoll, Ring, Roll

PI = np.pi
SOLIDS = {
    "ball": (Ball(centre=(0.01, 0, 0.02), radius=0.02), 4 / 3 * PI * 0.02**3),
    "roll": (Roll(start=(0, 0, 0.01), end=(0.03, 0.04, 0.01), radius=0.01), PI * 0.01**2 * 0.05),
    "block": (Block(centre=(0.1, 0, 0.01), size=(0.05, 0.03, 0.02), turn=0.4), 0.05 * 0.03 * 0.02),
    "disc": (Disc(centre=(0.1, 0, 0.01), radius=0.03, height=0.02), PI * 0.03**2 * 0.02),
    "ring": (Ring(centre=(0.1, 0, 0.01), inner=0.02, outer=0.04, height=0.02), PI * (0.04**2 - 0.02**2) * 0.02),
}


def volume(vertices, triangles):
    a, b, c = (vertices[triangles[:, k]] for k in range(3))
    return float(np.einsum("ij,ij->", a, np.cross(b, c))) / 6


@pytest.mark.parametrize("name", SOLIDS)
@pytest.mark.parametrize("soft", [0.0, 0.25])
def test_each_edge_belongs_to_two_triangles_that_run_it_both_ways(name, soft):
    _, triangles = solid_mesh(SOLIDS[name][0], soft=soft)
    edges = np.concatenate([triangles[:, [0, 1]], triangles[:, [1, 2]], triangles[:, [2, 0]]])
    there = {tuple(edge) for edge in edges.tolist()}
    assert len(there) == len(edges)
    assert {(b, a) for a, b in there} == there


@pytest.mark.parametrize("name", SOLIDS)
def test_sharp_meshes_have_the_volume_of_the_solid(name):
    solid, expected = SOLIDS[name]
    # Circles of 48 corners lack (2π/48)²/6 = 0.3 % of their area, a ball a little more than twice that.
    assert volume(*solid_mesh(solid, soft=0.0)) == pytest.approx(expected, rel=8e-3)


@pytest.mark.parametrize("name", SOLIDS)
def test_rounding_takes_a_little_off_and_adds_nothing(name):
    solid, expected = SOLIDS[name]
    vertices, triangles = solid_mesh(solid)
    assert 0.96 * expected < volume(vertices, triangles) < expected
    assert solid.distance(vertices).max() < 1e-9


def test_a_path_is_closed_pieces_that_reach_its_skin():
    solid = PathRoll(points=((0, 0, 0.01), (0.05, 0, 0.01), (0.05, 0.05, 0.01)), radius=0.01)
    vertices, triangles = solid_mesh(solid)
    undirected = np.sort(np.concatenate([triangles[:, [0, 1]], triangles[:, [1, 2]], triangles[:, [2, 0]]]), axis=1)
    assert set(np.unique(undirected, axis=0, return_counts=True)[1]) == {2}
    assert np.array([vertices.min(axis=0), vertices.max(axis=0)]) == pytest.approx(solid.bounds(), abs=1e-5)


def test_all_lumps_come_as_buffers_with_their_colour():
    meshes = lump_meshes(sculpture(ALL_SHAPES))
    assert [mesh.name for mesh in meshes] == ["ball", "turned roll", "lane", "slab", "disc", "block"]
    assert meshes[0].colour == "#c98a5e"
    for mesh in meshes:
        assert (mesh.vertices.dtype, mesh.triangles.dtype) == (np.float32, np.int32)
        assert mesh.triangles.max() == len(mesh.vertices) - 1
        assert mesh.vertices[:, 2].min() > -1e-6
