"""Why a part gets too much is never told by what takes current away."""

from pathlib import Path

from lumped.sculpt import Effort, build_sculpture
from lumped.sculpt.starting import started
from lumped.verdict import judge


def test_a_lamp_that_gets_too_hot_beside_others_is_not_said_to_sit_in_a_row():
    file = started("channel-buoys", {"buoys": 2, "length": 100, "thickness": 26, "dough": "unknown"})
    verdict = judge(build_sculpture(file, Path("demo/buoys.toml")), Effort.named("quick"))
    buoy = verdict.part("buoy 1")
    assert buoy.state == "too-hot"
    assert [reason.code for reason in buoy.reasons] == ["too-much"]
