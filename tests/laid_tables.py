"""Sculptures for tests of pictures and paper, judged once."""

from functools import cache
from pathlib import Path
from tempfile import TemporaryDirectory

from lumped.sculpt import Effort, Sculpture, read_sculpture
from lumped.verdict import Verdict, judge

HEAD = """
kind = "sculpture"
schema = 1
title = "All shapes & <marks>"
[doughs.salt]
resistivity_ohm_m = 0.2
measured_by = "four-needles-ac"
colour = "#c98a5e"
[doughs.dotted]
resistivity_ohm_m = 0.2
measured_by = "four-needles-ac"
colour = "#8fae6b"
mark = "dots"
[doughs.striped]
resistivity_ohm_m = 0.2
measured_by = "four-needles-ac"
mark = "stripes"
[doughs.crossed]
resistivity_ohm_m = 0.2
measured_by = "four-needles-ac"
mark = "crosses"
[doughs.wavy]
resistivity_ohm_m = 400
measured_by = "plates-ac-1khz"
mark = "waves"
"""

ALL_SHAPES = (
    HEAD
    + """
[[lumps]]
name = "ball"
dough = "salt"
shape = "ball"
diameter_mm = 30
[[lumps]]
name = "turned roll"
dough = "dotted"
shape = "roll"
length_mm = 60
diameter_mm = 16
turn_deg = 30
at_mm = [92, -5]
[[lumps]]
name = "lane"
dough = "striped"
shape = "path"
points_mm = [[0, 40], [60, 40], [60, 80]]
diameter_mm = 14
at_mm = [0, 0]
[[lumps]]
name = "slab"
dough = "crossed"
shape = "slab"
length_mm = 60
width_mm = 40
thickness_mm = 10
turn_deg = 12
at_mm = [120, 60]
[[lumps]]
name = "disc"
dough = "wavy"
shape = "disc"
diameter_mm = 24
thickness_mm = 10
place = "on top of slab, pressed 2 mm"
[[lumps]]
name = "block"
dough = "salt"
shape = "block"
length_mm = 30
width_mm = 20
height_mm = 18
place = "right of ball, gap 2 mm"
[[parts]]
name = "red <lamp>"
part = "lamp-red"
legs.long = "top of ball, 10 mm deep"
legs.short = "top of block, 10 mm deep"
[[parts]]
name = "loose lamp"
part = "lamp-blue"
legs.long = "top of slab, 10 % along, 8 mm deep"
legs.short = "dangling"
[[parts]]
name = "gate"
part = "switch"
state = "open"
legs.one = "last end of lane, 10 mm deep"
legs.other = "top of slab, 80 % along, 8 mm deep"
[[parts]]
name = "guard"
part = "resistor-100"
legs.one = "top of turned roll, 20 % along, 8 mm deep"
legs.other = "top of lane, 30 % along, 8 mm deep"
[[parts]]
name = "mill"
part = "motor-low-current"
legs.red = "far side of slab, 10 mm deep"
legs.black = "dangling"
[[parts]]
name = "pack"
part = "pack-4aa-alkaline"
legs.red = "left side of ball, 6 mm deep"
legs.black = "right side of block, 6 mm deep"
"""
)

ONE_ROLL = (
    HEAD
    + """
[[lumps]]
name = "roll"
dough = "salt"
shape = "roll"
length_mm = 80
diameter_mm = 16
[[parts]]
name = "pack"
part = "pack-4aa-alkaline"
legs.red = "left end of roll, 10 mm deep"
legs.black = "right end of roll, 10 mm deep"
"""
)


TWISTED = (
    HEAD.replace("[doughs.salt]", 'joined = [["pack.red", "gate.one"], ["pack.black", "lamp.short"]]\n[doughs.salt]', 1)
    + """
[[lumps]]
name = "roll"
dough = "salt"
shape = "roll"
length_mm = 80
diameter_mm = 16
[[parts]]
name = "lamp"
part = "lamp-red"
legs.long = "right end of roll, 10 mm deep"
legs.short = "dangling"
[[parts]]
name = "gate"
part = "switch"
state = "closed"
legs.one = "dangling"
legs.other = "left end of roll, 10 mm deep"
[[parts]]
name = "pack"
part = "pack-4aa-alkaline"
legs.red = "dangling"
legs.black = "dangling"
"""
)


def long_wall(length: float) -> str:
    """One roll of another length. [mm]"""
    return ONE_ROLL.replace("length_mm = 80", f"length_mm = {length}")


@cache
def sculpture(text: str) -> Sculpture:
    """Read a sculpture from text."""
    with TemporaryDirectory() as folder:
        path = Path(folder) / "sculpture.toml"
        path.write_text(text, encoding="utf-8")
        return read_sculpture(path)


@cache
def verdict(text: str) -> Verdict:
    """Judge a sculpture from text, quickly and once."""
    return judge(sculpture(text), Effort(cells_across=4.0, cells_between=2.0, shifted_grid=False))
