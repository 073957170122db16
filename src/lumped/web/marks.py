"""A small drawing beside each part's words, so that its state is seen before it is read."""

from lumped.picture.theme import lamp_colour

__all__ = ["mark"]

_RAYS = {"barely-lit": 0, "dim": 6, "bright": 12, "too-hot": 12}
_FILL = {"dark": 0.12, "barely-lit": 0.4, "dim": 0.65, "bright": 1.0, "too-hot": 1.0}


def mark(kind: str, key: str, state: str) -> str:
    """Draw the mark of a part in a state.

    Parameters
    ----------
    kind : str
        Kind of part: "lamp", "motor", …
    key : str
        Its key in the handbook, which names a lamp's colour.
    state : str
        One of the states of its kind.

    Returns
    -------
    str
        SVG.

    Examples
    --------
    >>> mark("lamp", "lamp-red", "dim").count('class="ray"')  # each in ink, and in its colour on top
    12
    """
    drawn = {"lamp": _lamp, "motor": _motor, "pack": _pack, "switch": _switch}.get(kind, _resistor)
    inside = drawn(key, state)
    return f'<svg viewBox="-24 -24 48 48" aria-hidden="true" fill="none" stroke-linecap="round">{inside}</svg>'


def _lamp(key: str, state: str) -> str:
    """The lens from above, round with one flat edge; rays by how bright it is; ink behind both, for pale lamps."""
    colour, count = lamp_colour(key.removeprefix("lamp-")), _RAYS.get(state, 0)
    length = 6 if state == "dim" else 9
    rays = "".join(
        f'<path class="ray" d="M0 -17 V{-17 - length + 3 * (k % 2)}" transform="rotate({360 * k / count:g})"/>'
        for k in range(count)
    )
    lens = "M9 -8.5 A12.4 12.4 0 1 0 9 8.5 Z"
    edge = f'<path d="{lens}" stroke-width="{{width}}"/>{rays}'
    body = f'<path d="{lens}" fill="{colour}" fill-opacity="{_FILL.get(state, 0.1)}"/>'
    return (
        f'<g stroke="currentColor" stroke-opacity="0.6" stroke-width="4">{edge.format(width=4)}</g>{body}'
        f'<g stroke="{colour}" stroke-width="2.4">{edge.format(width=2)}</g>{_CROSS if state == "too-hot" else ""}'
    )


_CROSS = '<path d="M-7 -7 L7 7 M7 -7 L-7 7" stroke="#3a1208" stroke-width="3"/>'


def _motor(_key: str, state: str) -> str:
    """A paper propeller; it turns if the motor does."""
    seconds = {"turning": 0.9, "straining": 4.0}.get(state)
    spins = f' class="spins" style="--turn: {seconds}s"' if seconds else ""
    blade = "M0 0 C6 -6 7 -16 0 -21 C-7 -16 -6 -6 0 0 Z"
    blades = "".join(
        f'<path d="{blade}" transform="rotate({120 * k})" fill="currentColor" fill-opacity="0.55" '
        'stroke="currentColor" stroke-width="1.5"/>'
        for k in range(3)
    )
    return f'<g{spins}>{blades}</g><circle r="3.5" fill="currentColor"/>'


def _pack(_key: str, state: str) -> str:
    """Two wires, red and black; a warning where they are as good as joined."""
    wires = (
        '<path d="M-9 22 C-9 6 -15 2 -11 -8" stroke="#b8402f" stroke-width="4"/>'
        '<path d="M9 22 C9 6 15 2 11 -8" stroke="currentColor" stroke-width="4"/>'
    )
    if state in ("nearly-shorted", "fuse-tripped"):
        return wires + '<path d="M2 -24 L-6 -12 L0 -12 L-3 -1 L7 -15 L1 -15 Z" fill="#c8452c"/>'
    tips = '<path d="M-11 -8 L-9 -18 M11 -8 L9 -18" stroke="currentColor" stroke-opacity="0.7" stroke-width="2"/>'
    return wires + tips


def _switch(_key: str, state: str) -> str:
    arm = "M-12 0 L12 0" if state == "closed" else "M-12 0 L9 -14"
    return (
        f'<path d="M-22 0 L-12 0 M12 0 L22 0 {arm}" stroke="currentColor" stroke-width="3"/>'
        '<circle cx="-12" r="2.6" fill="currentColor"/><circle cx="12" r="2.6" fill="currentColor"/>'
    )


def _resistor(_key: str, _state: str) -> str:
    return (
        '<path d="M-22 0 L-12 0 M12 0 L22 0" stroke="currentColor" stroke-width="3"/>'
        '<rect x="-12" y="-6" width="24" height="12" rx="2" stroke="currentColor" stroke-width="2.5"/>'
    )
