"""The line of a trial as it lies on the table: pack, lamp, and a mould of dough with its two screws."""

from lumped.picture.theme import lamp_colour

__all__ = ["trial_drawing"]

_DOUGH, _PLASTIC, _STEEL, _RED, _BLACK = "#d9a877", "#dfe6e8", "#8d9196", "#b8402f", "currentColor"
_BORE = {"straw": 9.0, "barrel": 17.0}  # mm on the drawing


def trial_drawing(line: dict[str, str], go: str) -> str:
    """Draw the line, as an SVG.

    Parameters
    ----------
    line : dict
        `mould`, its `kind` ("tube" or "cube"), `lamp`, and whether there is a `resistor`.
    go : str
        What the lamp does with a good batch.

    Examples
    --------
    >>> straw = {"mould": "straw", "kind": "tube", "lamp": "lamp-red", "resistor": "yes"}
    >>> trial_drawing(straw, "bright").count('class="ray"'), trial_drawing(straw, "dark").count('class="ray"')
    (14, 0)
    """
    tube = line["kind"] == "tube"
    wires = _wires((32.0, 52.0) if tube else (52.0, 43.0), (88.0, 52.0) if tube else (72.0, 43.0))
    body = _tube(_BORE.get(line["mould"], 12.0)) if tube else _hollow()
    resistor = '<rect x="81" y="20.5" width="14" height="5" rx="2.2" fill="#e4d2ad" stroke="#6b5136"/>'
    return (
        '<svg viewBox="0 0 124 68" aria-hidden="true" fill="none" stroke-width="0.6" stroke-linecap="round">'
        f"{wires}{resistor if line['resistor'] else ''}{body}{_lamp(line['lamp'], go)}{_pack()}</svg>"
    )


def _wires(first: tuple[float, float], second: tuple[float, float]) -> str:
    """Black from the pack to the lamp, the lamp to the first screw, the second screw to the pack by the red wire."""
    return (
        f'<path d="M54 8 C46 6 36 6 29.5 14 V20" stroke="{_BLACK}" stroke-width="1"/>'
        f'<path d="M24.5 20 V33 C24.5 44 20 {first[1]} {first[0] - 8 if first[1] > 50 else first[0]} {first[1]}" '
        f'stroke="{_STEEL}" stroke-width="1"/>'
        f'<path d="M70 8 C78 6 88 8 88 20 V30 C88 44 108 42 {second[0] + 8 if second[1] > 50 else second[0]} '
        f'{second[1]}" stroke="{_RED}" stroke-width="1"/>'
    )


def _tube(bore: float) -> str:
    """Screws in both ends of a tube of dough."""
    tube = (
        f'<rect x="28" y="{52 - bore / 2:g}" width="64" height="{bore:g}" rx="1.2" fill="{_DOUGH}"/>'
        f'<rect x="28" y="{51 - bore / 2:g}" width="64" height="{bore + 2:g}" rx="1.6" fill="{_PLASTIC}" '
        f'fill-opacity="0.35" stroke="{_STEEL}"/>'
    )
    return tube + _screw(24.0, 50.0, 1) + _screw(96.0, 70.0, -1)


def _screw(head: float, tip: float, way: int) -> str:
    low, thread = min(head, tip), "".join(f"M{head + way * x} 50.6 l0.9 2.8" for x in range(5, 25, 3))
    return (
        f'<rect x="{low:g}" y="50.9" width="{abs(tip - head):g}" height="2.2" rx="0.6" fill="{_STEEL}"/>'
        f'<path d="{thread}" stroke="#5f6368" stroke-width="0.5"/>'
        f'<rect x="{head - 1.2:g}" y="48.6" width="2.4" height="6.8" rx="0.9" fill="#74787d"/>'
    )


def _hollow() -> str:
    """Two screws that stand in a hollow of dough."""
    screws = "".join(
        f'<rect x="{x - 1.1:g}" y="43" width="2.2" height="15" fill="{_STEEL}"/>'
        f'<rect x="{x - 3:g}" y="41.4" width="6" height="2.2" rx="0.9" fill="#74787d"/>'
        for x in (52, 72)
    )
    return (
        f'<path d="M40 48 H84 L80 64 H44 Z" fill="{_DOUGH}"/>{screws}'
        f'<path d="M32 46.5 H40 L44 65 H80 L84 46.5 H92" stroke="{_STEEL}" stroke-width="1.6"/>'
    )


def _lamp(key: str, go: str) -> str:
    """The lamp from the side, rays over it where it shines; ink behind both, for pale lamps."""
    colour = lamp_colour(key.removeprefix("lamp-"))
    turned = range(-90, 91, 30) if go == "bright" else ()
    rays = "".join(
        f'<path class="ray" d="M27 6.5 V2.5" transform="rotate({angle} 27 13)" stroke="{stroke}" '
        f'stroke-opacity="{share}" stroke-width="{width}"/>'
        for stroke, share, width in (("currentColor", 0.6, 1.8), (colour, 1.0, 1.2)) for angle in turned
    )  # fmt: skip
    lens, glow = "M22 20 V13 A5 5 0 0 1 32 13 V20 Z", 1.0 if go == "bright" else 0.25
    return (
        f'{rays}<path d="{lens}" stroke="currentColor" stroke-opacity="0.6" stroke-width="1.4"/>'
        f'<path d="{lens}" fill="{colour}" fill-opacity="{glow:g}" stroke="{colour}"/>'
        '<rect x="21" y="19" width="12" height="2" rx="0.6" fill="currentColor" fill-opacity="0.55"/>'
    )


def _pack() -> str:
    return (
        '<rect x="52" y="3" width="20" height="13" rx="1.6" fill="currentColor" fill-opacity="0.18" '
        'stroke="currentColor" stroke-opacity="0.6"/>'
        '<path d="M55 7 H69 M55 12 H69" stroke="currentColor" stroke-opacity="0.6" stroke-width="2.6"/>'
    )
