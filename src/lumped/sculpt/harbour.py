"""The starting shapes themselves: things that stand round an invented harbour, made of rolls, blocks and slabs."""

from typing import Any

from lumped.sculpt.starting import Choice, Document, Slider, StartingShape

__all__ = ["SHAPES"]

Given = Any  # values by name, checked: numbers of sliders, words of choices

_DOUGH = Choice(name="dough", options=("salt", "unknown", "sugar"))
_PACK = Choice(
    name="pack",
    options=("pack-4aa-alkaline", "pack-3aa-alkaline", "pack-2aa-alkaline", "pack-4aa-nimh"),
)
_COLOUR = Choice(name="colour", options=("lamp-red", "lamp-yellow", "lamp-green", "lamp-blue", "lamp-white"))
_WAY = Choice(name="way", options=("right", "wrong"))
_LEADS = Choice(name="leads", options=("pin-motor", "nail-iron-3mm", "strip-steel-10mm"))
_WALL = Choice(name="wall", options=("yes", "no"))
_LAMP_DEPTH = Slider(name="lamp_depth", low=1, high=20, step=1, default=12)
_WIRE_DEPTH = Slider(name="wire_depth", low=1, high=30, step=1, default=20)
_SALT = {"colour": "#c98a5e"}
_SUGAR = {"recipe": "recipes/ropewalk-sugar.toml", "colour": "#e9dcc3", "mark": "waves"}


def _dough(given: Given) -> Document:
    """The dough that everything is made of."""
    match given["dough"]:
        case "salt":
            return {"recipe": "recipes/ropewalk-salt.toml", **_SALT}
        case "sugar":
            return dict(_SUGAR)
        case _:
            return {"unknown": "conducting", **_SALT}


def _pack(given: Given, *, red: str, black: str, leads: str | None = None) -> Document:
    pack = {"name": "pack", "part": given["pack"], "fuse": True, "legs": {"red": red, "black": black}}
    return pack | ({"leads": leads} if leads else {})


def _mm(amount: float) -> str:
    return f"{amount:g} mm"


def _beside(words: str, gap: float) -> str:
    """Say a gap; one below nothing is pressed in."""
    return f"{words}, gap {_mm(gap)}" if gap >= 0 else f"{words}, pressed {_mm(-gap)}"


def _harbour_mouth(given: Given) -> Document:
    """Two quays with water between, a lamp over the gap."""
    quay = {"dough": "dough", "shape": "roll", "length_mm": given["length"], "diameter_mm": given["thickness"]}
    depth = _mm(given["lamp_depth"])
    first, second = ("long", "short") if given["way"] == "right" else ("short", "long")
    wires = f"{_mm(given['wire_depth'])} deep"
    return {
        "doughs": {"dough": _dough(given)},
        "lumps": [
            {"name": "west quay", **quay},
            {"name": "east quay", **quay, "place": _beside("right of west quay", given["gap"])},
        ],
        "parts": [
            {
                "name": "light", "part": given["colour"],
                "legs": {
                    first: f"top of west quay, 6 mm from the right end, {depth} deep",
                    second: f"top of east quay, 6 mm from the left end, {depth} deep",
                },
            },
            _pack(given, red=f"left end of west quay, {wires}", black=f"right end of east quay, {wires}"),
        ],
    }  # fmt: skip


def _channel_buoys(given: Given) -> Document:
    """Two sandbanks along a channel, buoys across it, side by side."""
    bank = {"dough": "dough", "shape": "roll", "length_mm": given["length"], "diameter_mm": given["thickness"]}
    count, depth = int(given["buoys"]), f"{_mm(given['lamp_depth'])} deep"
    wires = f"{_mm(given['wire_depth'])} deep"
    places = [f"{100 * (k + 1) / (count + 1):.0f} % along" for k in range(count)]
    buoys = [
        {
            "name": f"buoy {k}", "part": given["colour"],
            "legs": {"long": f"top of far bank, {place}, {depth}", "short": f"top of near bank, {place}, {depth}"},
        }
        for k, place in enumerate(places, 1)
    ]  # fmt: skip
    return {
        "doughs": {"dough": _dough(given)},
        "lumps": [
            {"name": "far bank", **bank},
            {"name": "near bank", **bank, "place": _beside("in front of far bank", given["gap"])},
        ],
        "parts": [
            *buoys,
            _pack(given, red=f"left end of far bank, {wires}", black=f"left end of near bank, {wires}"),
        ],
    }


def _chain_ferry(given: Given) -> Document:
    """Two hulls and a motor between them, on whatever metal is at hand."""
    hull = {
        "dough": "dough", "shape": "block",
        "length_mm": given["length"], "width_mm": given["thickness"], "height_mm": 24,
    }  # fmt: skip
    depth, apart = f"{_mm(given['pin_depth'])} deep", f"{_mm(given['from_end'])} from the"
    return {
        "doughs": {"dough": _dough(given)},
        "lumps": [
            {"name": "far hull", **hull},
            {"name": "near hull", **hull, "place": _beside("in front of far hull", given["gap"])},
        ],
        "parts": [
            {
                "name": "propeller motor", "part": "motor-ordinary", "leads": given["leads"],
                "legs": {
                    "red": f"top of far hull, {apart} right end, {depth}",
                    "black": f"top of near hull, {apart} right end, {depth}",
                },
            },
            _pack(
                given, leads=given["leads"],
                red=f"top of far hull, {apart} left end, {depth}", black=f"top of near hull, {apart} left end, {depth}",
            ),
        ],
    }  # fmt: skip


def _breakwater(given: Given) -> Document:
    """Two quays that must meet; a wall of sugar dough between them, or not."""
    quay = {"dough": "dough", "shape": "roll", "length_mm": given["length"], "diameter_mm": given["thickness"]}
    walled, depth = given["wall"] == "yes", f"{_mm(given['lamp_depth'])} deep"
    wall = {
        "name": "wall", "dough": "sugar", "shape": "block", "length_mm": given["wall_thickness"] + 2,
        "width_mm": given["thickness"] + 12, "height_mm": given["thickness"] + 6,
        "place": "between west quay and east quay",
    }  # fmt: skip
    wires = f"{_mm(given['wire_depth'])} deep"
    place = _beside("right of west quay", given["wall_thickness"] if walled else -2)
    return {
        "doughs": {"dough": _dough(given)} | ({"sugar": dict(_SUGAR)} if walled else {}),
        "lumps": [{"name": "west quay", **quay}, {"name": "east quay", **quay, "place": place}, *([wall] * walled)],
        "parts": [
            {
                "name": "light", "part": given["colour"],
                "legs": {
                    "long": f"top of west quay, 6 mm from the right end, {depth}",
                    "short": f"top of east quay, 6 mm from the left end, {depth}",
                },
            },
            _pack(given, red=f"left end of west quay, {wires}", black=f"right end of east quay, {wires}"),
        ],
    }  # fmt: skip


def _signal_masts(given: Given) -> Document:
    """Two masts that stand, a lamp at the top, the pack at their feet."""
    mast = {
        "dough": "dough", "shape": "block",
        "length_mm": given["thickness"], "width_mm": given["thickness"], "height_mm": given["height"],
    }  # fmt: skip
    depth, middle = f"{_mm(given['lamp_depth'])} deep", given["thickness"] / 2
    foot = {"shape": "slab", "dough": "dough", "length_mm": 30, "width_mm": 40, "thickness_mm": 14}
    return {
        "doughs": {"dough": _dough(given)},
        "lumps": [
            {"name": "west foot", **foot},
            {"name": "east foot", **foot, "place": _beside("right of west foot", given["gap"])},
            {"name": "west mast", **mast, "place": "on top of west foot, pressed 4 mm"},
            {"name": "east mast", **mast, "place": "on top of east foot, pressed 4 mm"},
        ],
        "parts": [
            {
                "name": "signal", "part": given["colour"],
                "legs": {
                    "long": f"top of west mast, shifted {_mm(max(0, middle - 5))} right, {depth}",
                    "short": f"top of east mast, shifted {_mm(max(0, middle - 5))} left, {depth}",
                },
            },
            _pack(given, red="left side of west foot, 15 mm deep", black="right side of east foot, 15 mm deep"),
        ],
    }  # fmt: skip


def _ropewalk(given: Given) -> Document:
    """A rope of dough laid in bends, a lamp at its far end: how far does it reach?"""
    bends, width, pitch = int(given["bends"]), given["width"], given["thickness"] + 8
    corners = [(x * width, -pitch * row) for row in range(bends + 1) for x in ((0, 1) if row % 2 == 0 else (1, 0))]
    last_x, last_y = corners[-1]
    out = 1 if last_x else -1
    half, end = given["thickness"] / 2, ("right" if last_x else "left")
    post = [last_x + out * (given["gap"] + 11), last_y]
    return {
        "doughs": {"dough": _dough(given)},
        "lumps": [
            {"name": "rope", "dough": "dough", "shape": "path", "points_mm": corners, "diameter_mm": 2 * half},
            {"name": "post", "dough": "dough", "shape": "disc", "diameter_mm": 22, "thickness_mm": 18, "at_mm": post},
        ],
        "parts": [
            {
                "name": "rope light", "part": given["colour"],
                "legs": {
                    "long": f"top of rope, 4 mm from the last end, {_mm(max(2, half))} deep",
                    "short": f"top of post, shifted 5 mm {'left' if end == 'right' else 'right'}, 12 mm deep",
                },
            },
            _pack(
                given, red="first end of rope, 15 mm deep",
                black=f"{end} side of post, 10 mm deep",
            ),
        ],
    }  # fmt: skip


def _length(low: float, high: float, default: float) -> Slider:
    return Slider(name="length", low=low, high=high, step=5, default=default)


def _thickness(low: float, high: float, default: float) -> Slider:
    return Slider(name="thickness", low=low, high=high, step=1, default=default)


def _gap(default: float) -> Slider:
    return Slider(name="gap", low=-2, high=15, step=0.5, default=default)


SHAPES = (
    StartingShape(
        key="harbour-mouth", build=_harbour_mouth,
        controls=(
            _gap(6), _length(25, 120, 75), _thickness(10, 35, 16), _LAMP_DEPTH, _WIRE_DEPTH,
            _WAY, _COLOUR, _PACK, _DOUGH,
        ),
    ),
    StartingShape(
        key="channel-buoys", build=_channel_buoys,
        controls=(
            Slider(name="buoys", low=1, high=5, step=1, default=3, unit=""),
            _length(60, 160, 100), _thickness(10, 30, 18), _gap(6), _LAMP_DEPTH, _WIRE_DEPTH,
            _COLOUR, _PACK, _DOUGH,
        ),
    ),
    StartingShape(
        key="chain-ferry", build=_chain_ferry,
        controls=(
            _LEADS, Slider(name="pin_depth", low=3, high=22, step=1, default=10),
            Slider(name="from_end", low=8, high=35, step=1, default=15),
            _length(80, 140, 80), _thickness(12, 40, 24), _gap(8), _PACK, _DOUGH,
        ),
    ),
    StartingShape(
        key="breakwater", build=_breakwater,
        controls=(
            _WALL, Slider(name="wall_thickness", low=3, high=20, step=1, default=8),
            _length(25, 120, 75), _thickness(10, 30, 16), _LAMP_DEPTH, _WIRE_DEPTH, _COLOUR, _PACK, _DOUGH,
        ),
    ),
    StartingShape(
        key="signal-masts", build=_signal_masts,
        controls=(
            Slider(name="height", low=15, high=90, step=5, default=45), _thickness(10, 28, 16), _gap(8),
            _LAMP_DEPTH, _COLOUR, _PACK, _DOUGH,
        ),
    ),
    StartingShape(
        key="ropewalk", build=_ropewalk,
        controls=(
            Slider(name="bends", low=0, high=6, step=1, default=2, unit=""),
            Slider(name="width", low=40, high=120, step=5, default=80), _thickness(8, 24, 14), _gap(5),
            _COLOUR, _PACK, _DOUGH,
        ),
    ),
)  # fmt: skip
