"""From what a table or a label prints to compounds that sum to one.

Tables print nutrients: carbohydrate by difference, ash, milligrams of metals. A dough needs compounds. Starch is what
carbohydrate is less fibre and sugars; a metal sits in a salt with the anion that is usual in that food; what of the
ash no metal explains does not dissolve.
"""

from collections.abc import Mapping

from lumped.chemistry.compounds import compound, compounds, molar_mass_of
from lumped.errors import InputError

__all__ = ["METALS", "composed"]

METALS = {"sodium": "Na", "potassium": "K", "magnesium": "Mg", "calcium": "Ca"}
_ACID_OF = {"dihydrogen-citrate": "citric-acid"}
_SLACK = 0.03  # tables round each of a dozen rows, and energy tables leave out acids


def composed(printed: Mapping[str, float], *, anion: str = "", where: str = "") -> dict[str, float]:
    """Give the mass shares of compounds.

    Parameters
    ----------
    printed : mapping of str to float
        Mass shares as printed: compounds by their key, and "carbohydrate", "sugars", "ash", and metals. [1]
    anion : str
        What the metals are salts of: "dihydrogen-phosphate", "hydrogen-carbonate", "dihydrogen-citrate"; "" if their
        salts are printed as compounds, and metals only repeat it.
    where : str
        Which ingredient, for the message.

    Returns
    -------
    dict of str to float
        Shares by compound, water first; they sum to one. [1]

    Raises
    ------
    InputError
        If a share is negative or the shares don't sum to one within 3 %.

    Examples
    --------
    >>> flour = {"water": 0.12, "protein": 0.10, "fat": 0.01, "carbohydrate": 0.7653, "ash": 0.0047}
    >>> {key: round(share, 4) for key, share in composed(flour).items()}
    {'water': 0.12, 'starch': 0.7653, 'protein': 0.1, 'fat': 0.01, 'other': 0.0047}
    """
    shares = {key: float(share) for key, share in printed.items() if key in _keys()}
    _refuse_negative(printed, where)
    sugars = sum(shares.get(key, 0.0) for key in ("sucrose", "glucose", "fructose", "maltose"))
    unnamed = max(printed.get("sugars", 0.0) - sugars, 0.0)
    sweet = sugars + unnamed if "sugars" in printed else 0.0
    starch = printed.get("carbohydrate", 0.0) - shares.get("fibre", 0.0) - sweet
    shares["sucrose"] = shares.get("sucrose", 0.0) + unnamed
    shares["starch"] = shares.get("starch", 0.0) + max(starch, 0.0)
    salts = _salts(printed, anion)
    acid = _ACID_OF.get(anion)
    if acid:
        moles = ((key, share / (compound(key).molar_mass or 1.0)) for key, share in salts.items())
        taken = sum(amount * compound(key).acids["citric"] for key, amount in moles)
        shares[acid] = max(shares.get(acid, 0.0) - taken * (compound(acid).molar_mass or 0.0), 0.0)
    ash, gone = printed.get("ash", 0.0), sum(salts.values())
    shares["other"] = shares.get("other", 0.0) + max(ash - gone, 0.0)
    if not acid:  # such salts lose water when they are burnt to ash: the rest of their mass was counted as starch
        shares["starch"] = max(shares["starch"] - max(gone - ash, 0.0), 0.0)
    for key, share in salts.items():
        shares[key] = shares.get(key, 0.0) + share
    return _whole(shares, where)


def _salts(printed: Mapping[str, float], anion: str) -> dict[str, float]:
    """Mass shares of the salts that the printed metals stand for. [1]"""
    if not anion:
        return {}
    salts = {}
    for metal, symbol in METALS.items():
        if printed.get(metal, 0.0) > 0:
            salt = compound(f"{metal}-{anion}")
            salts[salt.key] = printed[metal] * (salt.molar_mass or 0.0) / molar_mass_of(symbol)
    return salts


def _refuse_negative(printed: Mapping[str, float], where: str) -> None:
    for key, share in printed.items():
        if not share >= 0:
            raise InputError("pantry-negative", where=where, row=key, value=f"{100 * share:g}")


def _whole(shares: Mapping[str, float], where: str) -> dict[str, float]:
    total = sum(shares.values())
    if not abs(total - 1) <= _SLACK:
        raise InputError("pantry-sum", where=where, total=f"{100 * total:.1f}")
    return {key: shares[key] / total for key in _keys() if shares.get(key, 0.0) > 0}


def _keys() -> tuple[str, ...]:
    return tuple(each.key for each in compounds())
