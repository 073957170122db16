"""Sculptures written in a few lines."""

from pathlib import Path

HEAD = """
kind = "sculpture"
schema = 1
title = "A test"
[doughs.salt]
resistivity_ohm_m = 0.2
low_ohm_m = 0.15
high_ohm_m = 0.3
measured_by = "four-needles-ac"
[doughs.wall]
resistivity_ohm_m = 400
low_ohm_m = 300
high_ohm_m = 600
measured_by = "plates-ac-1khz"
"""


def sculpture_file(folder: Path, text: str, head: str = HEAD) -> Path:
    """Write a sculpture file with two measured doughs and what is given."""
    path = folder / "sculpture.toml"
    path.write_text(head + text, encoding="utf-8")
    return path


def roll(name: str, more: str = "", length: float = 60, diameter: float = 16) -> str:
    return f"""
[[lumps]]
name = "{name}"
dough = "salt"
shape = "roll"
length_mm = {length}
diameter_mm = {diameter}
{more}
"""


def part(name: str, key: str, more: str = "", **legs: str) -> str:
    places = "\n".join(f'legs.{leg} = "{place}"' for leg, place in legs.items())
    return f'\n[[parts]]\nname = "{name}"\npart = "{key}"\n{places}\n{more}\n'
