"""Where metal meets dough: the price of passing from electrons to ions.

A lead stands at the potential E against the dough beside it (the dough's side less a reference electrode, whose
constant cancels round any loop). Metal leaves it as ions (or chlorine, oxygen form) the faster the higher E is, and
hydrogen forms from water the faster the lower E is:

    i(E) = A·[ia·exp((E − Ea − δa)/βa) − ic·exp(−(E − Ec + δc)/βc) + (E − E0)/r]

with E0 where the exponentials balance. All terms only grow, so the law is one more part of the circuit, and two like
leads give no voltage by themselves.
"""

import math
from dataclasses import dataclass

from lumped.chemistry.diffusion import FARADAY
from lumped.quantities import Provenance
from lumped.reference import handbook

__all__ = ["Electrode", "dissolved_mass", "electrode", "electrode_provenance", "lump_price", "plating_charge"]

DENSEST = 1e7  # A/m²; beyond this (200 A on a lamp's leg) an exponential goes on as a straight line
_STEPS = 100  # Newton within a bracket that halves: forty are plenty
FIGURES = (
    "anodic_potential", "anodic_exchange_current", "anodic_slope", "anodic_spread",
    "cathodic_potential", "cathodic_exchange_current", "cathodic_slope", "cathodic_spread",
    "polarisation_resistance",
)  # fmt: skip


@dataclass(frozen=True, slots=True, kw_only=True)
class Electrode:
    """The law of one lead in dough; current counts from the metal into the dough.

    Parameters
    ----------
    area : float
        Wetted area A. [m²]
    anodic_potential, cathodic_potential : float
        Potentials Ea and Ec at which the exchange currents flow, of the standard hydrogen scale. [V]
    anodic_exchange, cathodic_exchange : float
        Exchange currents ia and ic. [A/m²]
    anodic_slope, cathodic_slope : float
        Tafel slopes βa and βc. [V for a factor e]
    anodic_shift, cathodic_shift : float
        Overpotentials δa and δc that are added (dear) or taken off (cheap). [V]
    polarisation_resistance : float
        Resistance r near rest of what else happens there (oxygen, traces); infinite if nothing. [Ω·m²]

    Notes
    -----
    Two Tafel lines. Left out: oxygen of the air beyond the microampere that r stands for, the reverse reactions (so
    up to a microampere a cm² flows between unlike metals where thermodynamics would forbid it, tens at the cheap end),
    limits by diffusion, gas bubbles, and the resistance of films. Meant for 1 to 100 mA/cm², not for galvanic cells.
    The shift is an overpotential: it moves current, and with it the potential at rest a little, the same for like
    leads.

    Examples
    --------
    >>> lead = Electrode(
    ...     area=2e-5, anodic_potential=-0.47, anodic_exchange=1.0, anodic_slope=0.0174,
    ...     cathodic_potential=-0.59, cathodic_exchange=0.01, cathodic_slope=0.0514,
    ... )
    >>> abs(lead.current(lead.rest_potential)) < 1e-15, lead.current(-0.37) > 0 > lead.current(-1.1)
    (True, True)
    """

    area: float
    anodic_potential: float
    anodic_exchange: float
    anodic_slope: float
    cathodic_potential: float
    cathodic_exchange: float
    cathodic_slope: float
    anodic_shift: float = 0.0
    cathodic_shift: float = 0.0
    polarisation_resistance: float = math.inf

    def current(self, v: float, /) -> float:
        """Give the current from metal into dough. [A]"""
        (anodic, _), (cathodic, _) = self._densities(v)
        return self.area * (anodic - cathodic + (v - self.rest_potential) / self.polarisation_resistance)

    def slope(self, v: float, /) -> float:
        """Give its derivative. [S]"""
        (_, anodic), (_, cathodic) = self._densities(v)
        return self.area * (
            anodic / self.anodic_slope + cathodic / self.cathodic_slope + 1 / self.polarisation_resistance
        )

    @property
    def rest_potential(self) -> float:
        """Potential at which no current flows: dissolving and hydrogen balance. [V]"""
        upper = self.anodic_potential + self.anodic_shift
        lower = self.cathodic_potential - self.cathodic_shift
        ratio = math.log(self.cathodic_exchange / self.anodic_exchange)
        return (ratio + upper / self.anodic_slope + lower / self.cathodic_slope) / (
            1 / self.anodic_slope + 1 / self.cathodic_slope
        )

    def potential(self, current: float) -> float:
        """Give the potential at which a current flows. [V at A]

        Examples
        --------
        >>> tin = electrode("tin", 0.2e-4)
        >>> round(tin.current(tin.potential(0.005)), 9)
        0.005
        """
        low, high = self.rest_potential - 20, self.rest_potential + 20
        v = self.rest_potential
        for _ in range(_STEPS):
            off = self.current(v) - current
            low, high = (v, high) if off < 0 else (low, v)
            step = v - off / self.slope(v)
            last, v = v, step if low < step < high else (low + high) / 2
            if abs(v - last) <= 1e-14 * max(1.0, abs(v)):
                break
        return v

    def _densities(self, v: float) -> tuple[tuple[float, float], tuple[float, float]]:
        anodic = (v - self.anodic_potential - self.anodic_shift) / self.anodic_slope
        cathodic = -(v - self.cathodic_potential + self.cathodic_shift) / self.cathodic_slope
        return _exponential(self.anodic_exchange, anodic), _exponential(self.cathodic_exchange, cathodic)


def _exponential(exchange: float, exponent: float) -> tuple[float, float]:
    """Give exchange·exp(exponent) and its derivative to the exponent, straight on beyond DENSEST. [A/m²]"""
    last = math.log(DENSEST / exchange)
    if exponent <= last:
        density = exchange * math.exp(exponent)
        return density, density
    return DENSEST * (1 + exponent - last), DENSEST


def electrode(metal: str, wetted_area: float, *, price: float = 0.0) -> Electrode:
    """Look up a lead of a metal.

    Parameters
    ----------
    metal : str
        Key in the handbook's table of metals.
    wetted_area : float
        Area that dough wets. [m²]
    price : float
        Where in the interval: −1 the cheap end (fewest volts lost), 0 the middle, 1 the dear end. The interval is
        ±0.3 V a lump, anode and cathode together.

    Returns
    -------
    Electrode
        Its law.

    Examples
    --------
    >>> cheap, dear = (electrode("iron", 0.2e-4, price=price) for price in (-1, 1))
    >>> round(dear.potential(0.005) - cheap.potential(0.005), 3)
    0.2
    """
    if not -1 <= price <= 1:
        raise ValueError(f"a price lies between −1 and 1, not at {price}")
    figure = {quantity: handbook().value("metals", metal, quantity).mean for quantity in FIGURES}
    return Electrode(
        area=wetted_area,
        anodic_potential=figure["anodic_potential"],
        anodic_exchange=figure["anodic_exchange_current"],
        anodic_slope=figure["anodic_slope"] / math.log(10),
        cathodic_potential=figure["cathodic_potential"],
        cathodic_exchange=figure["cathodic_exchange_current"],
        cathodic_slope=figure["cathodic_slope"] / math.log(10),
        anodic_shift=price * figure["anodic_spread"],
        cathodic_shift=price * figure["cathodic_spread"],
        polarisation_resistance=figure["polarisation_resistance"],
    )


def electrode_provenance(metal: str) -> Provenance:
    """Say where a metal's figures come from: mostly from memory.

    Examples
    --------
    >>> electrode_provenance("iron").status.value
    'from memory'
    """
    return Provenance.of(handbook().value("metals", metal, quantity).provenance for quantity in FIGURES)


def lump_price(anode: str, cathode: str, current: float, *, wetted_area: float, price: float = 0.0) -> float:
    """Give the volts lost where a current goes into a lump through one lead and out through another.

    Parameters
    ----------
    anode, cathode : str
        Metals of the lead where the current enters the dough, and of that where it leaves.
    current : float
        The current. [A]
    wetted_area : float
        Wetted area of each lead. [m²]
    price : float
        Where in the interval, see `electrode`.

    Returns
    -------
    float
        Volts lost, without the dough's own drop; negative where unlike metals drive the current. [V]

    Examples
    --------
    >>> round(lump_price("iron", "iron", 0.005, wetted_area=0.2e-4), 1)
    0.7
    """
    into = electrode(anode, wetted_area, price=price).potential(current)
    out = electrode(cathode, wetted_area, price=price).potential(-current)
    return into - out


def dissolved_mass(metal: str, charge: float) -> float:
    """Give the mass of metal that a charge takes into the dough, after Faraday.

    Parameters
    ----------
    metal : str
        Key in the handbook's table of metals.
    charge : float
        Charge that entered the dough through the lead. [C]

    Returns
    -------
    float
        The mass; 0 of a metal that does not dissolve. [kg]

    Examples
    --------
    >>> round(dissolved_mass("nickel", 0.010 * 40 * 60) * 1e6, 1)
    7.3
    """
    if not handbook().entry("metals", metal).facts["dissolves"]:
        return 0.0
    return charge * handbook().value("metals", metal, "molar_mass").mean / (_electrons(metal) * FARADAY)


def plating_charge(metal: str, thickness: float, wetted_area: float) -> float:
    """Give the charge after which a plating is gone.

    Parameters
    ----------
    metal : str
        Metal of the plating.
    thickness, wetted_area : float
        Thickness, and area that dough wets. [m, m²]

    Returns
    -------
    float
        The charge; infinite of a metal that does not dissolve. [C]

    Examples
    --------
    >>> round(plating_charge("tin", 5e-6, 0.2e-4), 1)
    1.2
    """
    if not handbook().entry("metals", metal).facts["dissolves"]:
        return math.inf
    mass = thickness * wetted_area * handbook().value("metals", metal, "density").mean
    return mass * _electrons(metal) * FARADAY / handbook().value("metals", metal, "molar_mass").mean


def _electrons(metal: str) -> float:
    return handbook().value("metals", metal, "electrons").mean
