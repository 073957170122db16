"""Everything of one picture in its place, in millimetres, before anything is drawn."""

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from lumped.picture.bodies import Body, place_bodies
from lumped.picture.ground import Ground
from lumped.picture.labels import Box, Label
from lumped.picture.outlines import outline
from lumped.picture.viewing import View
from lumped.picture.wires import Wire, lay_wires
from lumped.picture.wording import place_words

__all__ = ["Arrangement", "arrange"]

_LETTERS = (2.6, 9.0)  # mm; least and greatest size of letters
_MARGIN = 48.0  # mm of cloth for bodies, wires and words


@dataclass(frozen=True, slots=True, kw_only=True)
class Arrangement:
    """What is where. Lengths in mm; `box` holds all of it."""

    view: View
    bodies: tuple[Body, ...]
    wires: tuple[Wire, ...]
    labels: tuple[Label, ...]
    box: Box


def arrange(view: View, *, letters: float | None = None, labels: bool = True, legs: bool = False) -> Arrangement:
    """Arrange a picture.

    Parameters
    ----------
    view : View
        What is shown.
    letters : float, optional
        Size of the letters; by default in proportion to the sculpture. [mm]
    labels : bool
        Whether words are written.
    legs : bool
        Whether each leg says its name and depth.

    Returns
    -------
    Arrangement
    """
    sculpture = view.sculpture
    solids = [lump.solid for lump in sculpture.lumps]
    boxes = 1e3 * np.array([solid.bounds()[:, :2] for solid in solids])
    extent = float(np.max(boxes[:, 1].max(axis=0) - boxes[:, 0].min(axis=0)))
    size = letters or float(np.clip(extent / 48, *_LETTERS))
    ground = Ground(solids, _MARGIN + 4 * size)
    bodies = place_bodies(sculpture, ground)
    wires = lay_wires(sculpture, bodies, ground)
    words = place_words(view, bodies, wires, ground, size, legs=legs) if labels else ()
    return Arrangement(view=view, bodies=bodies, wires=wires, labels=words, box=_box(view, bodies, wires, words))


def _box(view: View, bodies: tuple[Body, ...], wires: tuple[Wire, ...], labels: tuple[Label, ...]) -> Box:
    points: list[NDArray[np.float64]] = [loop for lump in view.sculpture.lumps for loop in outline(lump.solid)]
    points += [body.corners for body in bodies] + [wire.points for wire in wires]
    points += [label.box.samples for label in labels]
    return Box.of(np.concatenate(points)).widened(1.0)
