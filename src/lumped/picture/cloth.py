"""The cloth under every picture."""

from lumped.picture.labels import Box
from lumped.picture.svg import element
from lumped.picture.theme import Theme

__all__ = ["draw_cloth"]


def draw_cloth(frame: Box, theme: Theme, prefix: str) -> str:
    """Draw linen with a stitched hem.

    Parameters
    ----------
    frame : Box
        What it covers. [mm]
    theme : Theme
        Colours.
    prefix : str
        Put before its id.

    Examples
    --------
    >>> from lumped.picture.theme import THEMES
    >>> draw_cloth(Box(0, 0, 100, 50), THEMES["light"], "a-").count('id="a-weave"')
    1
    """
    left, top, width, height = frame.left, -frame.far, frame.right - frame.left, frame.far - frame.near
    slubs = "M0.5 1.2h2.2M6 0.4h1.6M3.4 3h2.8M8.2 3.8h1.4M0.2 5h1.2M5 6.4h3M1.8 7.6h2.4M7.6 9h1.8M3 9.4h1.4"
    threads = "M2 2.2v1.6M7 1.4v2M4.4 4.4v1.4M9 5.6v1.8M0.8 6v1.2M6.2 7.4v1.6"
    weave = element(
        "pattern", element("path", d=slubs + threads, stroke=theme.weave, stroke_width=0.28, fill="none"),
        id=f"{prefix}weave", width=10, height=10, patternUnits="userSpaceOnUse",
    )  # fmt: skip
    whole = {"x": left, "y": top, "width": width, "height": height, "rx": 3.0}
    hem = element("rect", x=left + 2, y=top + 2, width=width - 4, height=height - 4, rx=1.8, fill="none",
                  stroke=theme.hem, stroke_width=0.5, stroke_dasharray="2.4 1.5", stroke_linecap="round",
                  opacity=0.75)  # fmt: skip
    return (
        weave + element("rect", fill=theme.cloth, **whole) + element("rect", fill=f"url(#{prefix}weave)", **whole) + hem
    )
