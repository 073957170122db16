"""What a drying piece does, in words: in a lesson, overnight, after three days, and where it stops."""

import numpy as np

from lumped.dough.lasting.outlook import HOUR, Outlook
from lumped.dough.lasting.wording import millimetres_text, percent_text
from lumped.dough.material import CONDUCTS_BELOW
from lumped.quantities import Value, short_text
from lumped.reference import handbook
from lumped.texts import say

__all__ = ["MOMENTS", "moment_words", "piece_words", "rest_words", "times_text"]

MOMENTS = {"lesson": 0.75 * HOUR, "night": 16 * HOUR, "days": 72 * HOUR}
_HARDLY = 0.005  # share of its water; nobody sees that
_LEVEL = 0.1  # share of its water; with less of it gained or lost a piece is called as it was
_SAME, _LOST = 1.1, 100.0  # how many times as resistive
_SKIN = 1e-4  # m; thinner is not felt
_BALANCE = 0.02  # share of its water


def piece_words(found: Outlook) -> str:
    """Say which piece it is and where it lies: shape, thickness, length or area, cover, room."""
    piece, where = found.piece, found.where
    sizes = {"thick": short_text(1e3 * float(np.max(piece.thickness)), 3)}
    extent = float(np.max(piece.extent))
    sizes |= {"long": short_text(1e2 * extent, 3)} if piece.shape == "roll" else {"area": short_text(1e4 * extent, 3)}
    return say(
        "drying-piece", piece=say(f"drying-picture-{piece.shape}", **sizes), cover=say(f"drying-{where.cover}"),
        room=f"{where.temperature - 273.15:.0f}", humidity=f"{100 * where.humidity:.0f}",
    )  # fmt: skip


def moment_words(found: Outlook, moment: str) -> str:
    """Say what a piece is like at one of the `MOMENTS`.

    Parameters
    ----------
    found : Outlook
        The piece, followed at least so far.
    moment : str
        "lesson", "night" or "days".
    """
    time, when = MOMENTS[moment], say(f"lasting-dry-{moment}")
    lost = found.at("loss", time)
    if abs(lost.mean) < _HARDLY and lost.low > -4 * _HARDLY and lost.high < 4 * _HARDLY:
        return say("lasting-dry-keeps", when=when)
    if lost.low < 0 < lost.high:
        ends = {"gained": _percent(-lost.low), "lost": _percent(lost.high)}
        return say(f"lasting-dry-{'level' if max(-lost.low, lost.high) < _LEVEL else 'either'}", when=when, **ends)
    if lost.high <= 0:
        return say("lasting-dry-gains", when=when, gained=percent_text(_turned(lost)), carries=_carries(found, time))
    return say("lasting-dry-loses", when=when, lost=percent_text(lost), skin=_skin(found, time),
               carries=_carries(found, time))  # fmt: skip


def _turned(lost: Value) -> Value:
    return Value(mean=-lost.mean, low=-lost.high, high=-lost.low, unit="")


def _percent(share: float) -> str:
    return percent_text(Value.exact(share, ""))


def _skin(found: Outlook, time: float) -> str:
    skin, limit = found.at("skin", time), handbook().value("lasting", "skin", "content").mean
    if found.at("middle", 0.0).mean < limit:
        return say("lasting-dry-stiff")
    if found.at("middle", time).mean < limit:
        return say("lasting-dry-through")
    return say("lasting-dry-skin", depth=millimetres_text(skin)) if skin.mean > _SKIN else say("lasting-dry-soft")


def _carries(found: Outlook, time: float) -> str:
    worse = found.at("worse", time)
    if worse.mean < 1 / _SAME:
        better = Value(mean=1 / worse.mean, low=1 / worse.high, high=1 / worse.low, unit="")
        return say("lasting-dry-better", times=times_text(better))
    if worse.mean < _SAME:
        return say("lasting-dry-same" if found.at("resistivity", 0.0).mean < CONDUCTS_BELOW else "lasting-dry-blocks")
    if worse.mean > _LOST:
        return say("lasting-dry-lost")
    return say("lasting-dry-worse", times=times_text(worse))


def times_text(factor: Value) -> str:
    """Write how many times something is with its interval; beyond a thousand nobody tells apart."""
    mean, low, high = (short_text(min(each, 1000.0)) for each in (factor.mean, factor.low, factor.high))
    if factor.mean > 1000:
        return say("lasting-more-than", count=mean)
    return f"{mean} ({low} to {say('lasting-more-than', count=high) if factor.high > 1000 else high})"


def rest_words(found: Outlook) -> tuple[str, ...]:
    """Say at which humidity a dough keeps its water, and where it stops in its room."""
    ends = {end: f"{100 * getattr(found.fresh, end):.0f}" for end in ("mean", "low", "high")}
    room = f"{100 * found.where.humidity:.0f}"
    words = [say("lasting-rest-border", **ends)]
    if found.rest.low > _BALANCE:
        words.append(say("lasting-rest-dries", room=room, lost=percent_text(found.rest)))
    elif found.rest.high < -_BALANCE:
        words.append(say("lasting-rest-wets", room=room))
    else:
        words.append(say("lasting-rest-level", room=room))
    if found.where.cover != "open":
        words.append(say("lasting-rest-cover"))
    return tuple(words)
