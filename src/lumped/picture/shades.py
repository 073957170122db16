"""Shades of a map: dough, baked crust, plum, in even steps of lightness, so that ink and every eye can read them.

Computed in Oklab, where equal distances look equal; lightness alone orders the shades, hue only keeps them warm.
"""

import numpy as np
from numpy.typing import NDArray

__all__ = ["shades"]

Floats = NDArray[np.float64]
_LIGHTNESS = (0.945, 0.36)
_CHROMA = ((0.0, 0.5, 1.0), (0.045, 0.115, 0.085))
_HUE = ((0.0, 0.5, 1.0), (88.0, 48.0, -15.0))
# Oklab to cone responses, and from there to linear sRGB; B. Ottosson, "A perceptual color space for image processing"
# (2020), from memory: a test holds the shades against CIE lightness.
_TO_CONES = np.array([[1, 0.3963377774, 0.2158037573], [1, -0.1055613458, -0.0638541728],
                      [1, -0.0894841775, -1.2914855480]])  # fmt: skip
_TO_RGB = np.array([[4.0767416621, -3.3077115913, 0.2309699292], [-1.2684380046, 2.6097574011, -0.3413193965],
                    [-0.0041960863, -0.7034186147, 1.7076147010]])  # fmt: skip


def shades(count: int) -> tuple[str, ...]:
    """Give so many shades, the lightest first.

    Parameters
    ----------
    count : int
        How many.

    Returns
    -------
    tuple of str
        As #rrggbb.

    Examples
    --------
    >>> len(shades(5)), shades(2)[0]
    (5, '#f9eccb')
    """
    along = np.linspace(0.0, 1.0, count) if count > 1 else np.zeros(1)
    lightness = _LIGHTNESS[0] + along * (_LIGHTNESS[1] - _LIGHTNESS[0])
    chroma, hue = np.interp(along, *_CHROMA), np.radians(np.interp(along, *_HUE))
    lab = np.column_stack([lightness, chroma * np.cos(hue), chroma * np.sin(hue)])
    linear = np.clip((lab @ _TO_CONES.T) ** 3 @ _TO_RGB.T, 0.0, 1.0)
    shown = np.where(linear <= 0.0031308, 12.92 * linear, 1.055 * linear ** (1 / 2.4) - 0.055)
    return tuple("#" + "".join(f"{round(255 * part):02x}" for part in each) for each in shown)
