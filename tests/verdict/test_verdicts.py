"""What goes wrong on a table gets a verdict, with its cause; what holds for any sculpture holds."""

from pathlib import Path

import pytest
from tests.table import part, roll, sculpture_file

from lumped.sculpt import Effort, find_near_pairs, read_sculpture, settled
from lumped.verdict import judge

QUICK = Effort.named("quick")
TWO = roll("A") + roll("B", 'place = "right of A, gap 6 mm"')
LAMP = {
    "long": "top of A, 6 mm from the right end, 12 mm deep",
    "short": "top of B, 6 mm from the left end, 12 mm deep",
}
PACK = part("pack", "pack-4aa-alkaline", red="left end of A, 20 mm deep", black="right end of B, 20 mm deep")


def verdict(folder: Path, text: str):
    return judge(read_sculpture(sculpture_file(folder, text)), QUICK)


def test_a_lamp_over_a_gap_is_lit(tmp_path):
    lamp = verdict(tmp_path, TWO + part("lamp", "lamp-red", **LAMP) + PACK).part("lamp")
    assert lamp.state == "bright"
    assert lamp.reasons == ()
    assert lamp.current.low < lamp.current.mean < lamp.current.high


CAUSES = [
    ("wrong-way", TWO + part("lamp", "lamp-red", long=LAMP["short"], short=LAMP["long"]) + PACK),
    ("leg-out", TWO + part("lamp", "lamp-red", long=LAMP["long"], short="dangling") + PACK),
    ("no-pack", TWO + part("lamp", "lamp-red", **LAMP)),
    ("pack-leg-out", TWO + part("lamp", "lamp-red", **LAMP) + part("pack", "pack-4aa-alkaline", red="dangling", black="right end of B, 20 mm deep")),
    ("bridged", roll("A") + part("lamp", "lamp-red", long="top of A, 40 % along, 12 mm deep", short="top of A, 60 % along, 12 mm deep") + part("pack", "pack-4aa-alkaline", red="left end of A, 15 mm deep", black="right end of A, 15 mm deep")),
    ("bridged", roll("A") + roll("B", 'place = "right of A, pressed 3 mm"') + part("lamp", "lamp-red", **LAMP) + PACK),
    ("metal-touch", TWO + part("lamp", "lamp-red", **LAMP) + part("pack", "pack-4aa-alkaline", red="top of A, 6 mm from the right end, 10 mm deep", black="top of B, 6 mm from the left end, 10 mm deep")),
    ("pack-tired", TWO + part("lamp", "lamp-white", **LAMP) + PACK.replace("legs.red", 'state = "tired"\nlegs.red')),
    ("pack-weak", TWO + part("lamp", "lamp-red", **LAMP) + PACK.replace("4aa-alkaline", "2aa-nimh")),
    ("bypassed", TWO + part("lamp", "lamp-red", **LAMP) + part("key", "switch", 'state = "closed"', one="top of A, 70 % along, 12 mm deep", other="top of B, 30 % along, 12 mm deep") + PACK),
    ("pack-in-one", TWO + part("lamp", "lamp-red", **LAMP) + part("pack", "pack-4aa-alkaline", red="left end of A, 20 mm deep", black="top of A, 50 % along, 12 mm deep")),
    ("bridged", TWO + part("lamp", "lamp-red", long="top of A, 40 % along, 12 mm deep", short="top of A, 60 % along, 12 mm deep") + part("other", "lamp-red", **LAMP) + PACK),
    ("not-connected", TWO + roll("C", 'place = "behind A, gap 20 mm"') + part("lamp", "lamp-red", long="top of C, 40 % along, 12 mm deep", short="top of B, 60 % along, 12 mm deep") + part("other", "lamp-red", **LAMP) + PACK),
    ("switch-open", TWO + roll("C", 'place = "behind A, gap 6 mm"') + part("lamp", "lamp-red", **LAMP) + part("switch", "switch", 'state = "open"', one="top of C, 50 % along, 12 mm deep", other="top of A, 50 % along, 12 mm deep") + PACK.replace("left end of A", "left end of C")),
]  # fmt: skip


@pytest.mark.parametrize(("code", "text"), CAUSES)
def test_a_lamp_that_does_not_light_gets_its_cause(tmp_path, code: str, text: str):
    lamp = verdict(tmp_path, text).part("lamp")
    assert lamp.state != "bright"
    assert lamp.reasons[0].code == code


def test_two_lamps_in_a_row_disappoint_because_each_lump_costs_again(tmp_path):
    text = roll("A", length=45, diameter=18)
    for name, before in (("B", "A"), ("C", "B")):
        text += roll(name, f'place = "right of {before}, gap 6 mm"', length=45, diameter=18)
    text += part("lamp", "lamp-red", **LAMP)
    text += part(
        "other",
        "lamp-red",
        long="top of B, 6 mm from the right end, 12 mm deep",
        short="top of C, 6 mm from the left end, 12 mm deep",
    )
    judged = verdict(tmp_path, text + PACK.replace("end of B", "end of C"))
    assert {judged.part(name).state for name in ("lamp", "other")} <= {"dark", "barely-lit", "dim"}
    assert {reason.code for reason in judged.part("lamp").reasons} == {"metal", "in-a-row"}
    assert judged.budget.metal > 2.0  # three lumps of about 1.2 V: the textbook's sum of lamp volts forgets them


def test_two_cells_lose_their_volts_where_metal_meets_dough(tmp_path):
    lamp = verdict(tmp_path, TWO + part("lamp", "lamp-red", **LAMP) + PACK.replace("4aa", "2aa")).part("lamp")
    assert lamp.state in ("dark", "barely-lit")
    assert lamp.reasons[0].code == "metal"


def test_wires_of_a_pack_that_touch_are_a_short_and_a_fuse_trips(tmp_path):
    wires = part("pack", "pack-4aa-nimh", red="top of A, 12 mm deep", black="top of A, 12 mm deep")
    bare, fused = verdict(tmp_path, roll("A") + wires), verdict(tmp_path, roll("A") + wires + "fuse = true\n")
    assert bare.part("pack").state == "nearly-shorted"
    assert bare.part("pack").reasons[0].code == "metal-touch"
    assert fused.part("pack").state == "fuse-tripped"
    assert any("SHORTED" in caution for caution in bare.cautions)


def test_a_leg_longer_than_its_lump_and_one_that_is_hardly_in_are_found(tmp_path):
    legs = {
        "long": "top of A, 6 mm from the right end, 40 mm deep",
        "short": "top of B, 6 mm from the left end, 1 mm deep",
    }
    findings = verdict(tmp_path, TWO + part("lamp", "lamp-red", **legs) + PACK).findings
    assert any("only 16 mm of 40 mm are in dough" in each for each in findings)
    assert any("only 1 mm deep" in each for each in findings)


def test_the_current_eats_the_red_wire_and_the_lamps_short_leg(tmp_path):
    judged = verdict(tmp_path, TWO + part("lamp", "lamp-red", **LAMP) + PACK)
    (eaten,) = (each for each in judged.findings if "eats" in each)
    # 5 µm of tin on 12 mm of a leg 0.5 mm square: 0.24 cm², 0.87 mg; at 118.7 g/mol and two electrons 1.42 C
    minutes = 1.42 / judged.part("lamp").current.mean / 60
    assert f"the tin on the short leg of “lamp” in about {minutes:.0f} min" in eaten
    assert "the red wire of “pack”" in eaten
    assert "long leg" not in eaten
    assert "black wire" not in eaten


def test_a_lamp_whose_state_is_a_range_says_on_what_it_hangs(tmp_path):
    from tests.table import HEAD

    head = HEAD.replace("low_ohm_m = 0.15", "low_ohm_m = 0.05").replace("high_ohm_m = 0.3", "high_ohm_m = 1.0")
    text = TWO + part("lamp", "lamp-red", **LAMP) + PACK
    lamp = judge(read_sculpture(sculpture_file(tmp_path, text, head)), QUICK).part("lamp")
    assert len(lamp.states) > 1
    assert lamp.reasons[0].code in ("range-dough", "range-dough-hot")


def test_legs_twisted_together_outside_put_a_lamp_straight_on_the_pack(tmp_path):
    text = roll("A") + part("lamp", "lamp-red", long="dangling", short="dangling")
    text += part("pack", "pack-4aa-alkaline", red="dangling", black="dangling")
    from tests.table import HEAD

    head = 'joined = [["pack.red", "lamp.long"], ["pack.black", "lamp.short"]]\n' + HEAD
    judged = judge(read_sculpture(sculpture_file(tmp_path, text, head)), QUICK)
    assert judged.part("lamp").state == "too-hot"
    assert judged.part("lamp").current.mean > 0.2  # about 0.4 A from memory of the trade: it burns out


def test_two_packs_are_found(tmp_path):
    second = part(
        "second", "pack-4aa-alkaline", red="top of B, 70 % along, 12 mm deep", black="top of A, 30 % along, 12 mm deep"
    )
    judged = verdict(tmp_path, TWO + part("lamp", "lamp-red", **LAMP) + PACK + second)
    assert judged.part("lamp").reasons[0].code == "two-packs"
    assert any("2 packs" in finding for finding in judged.findings)


@pytest.mark.parametrize(
    ("gap", "drawn", "other", "touching"), [(1.0, "bright", "dark", True), (-0.3, "dark", "bright", False)]
)
def test_a_gap_finer_than_a_hand_is_judged_both_ways(tmp_path, gap: float, drawn: str, other: str, touching: bool):
    words = f"gap {gap} mm" if gap > 0 else f"pressed {-gap} mm"
    text = roll("A") + roll("B", f'place = "right of A, {words}"') + part("lamp", "lamp-red", **LAMP) + PACK
    lamp = verdict(tmp_path, text).part("lamp")
    assert lamp.state == drawn
    assert [(flip.state, flip.touching) for flip in lamp.flips] == [(other, touching)]
    assert "“A” and “B”" in lamp.headline


def test_thin_pins_leave_a_motor_still_and_nails_turn_it(tmp_path):
    hulls = "".join(
        f'[[lumps]]\nname = "{name}"\ndough = "salt"\nshape = "block"\nlength_mm = 60\nwidth_mm = 24\nheight_mm = 22\n{place}\n'
        for name, place in (("A", ""), ("B", 'place = "in front of A, gap 8 mm"'))
    )
    pins = {
        "red": "top of A, 15 mm from the right end, 10 mm deep",
        "black": "top of B, 15 mm from the right end, 10 mm deep",
    }
    pack = {leg: place.replace("right", "left") for leg, place in pins.items()}
    nails = {leg: place.replace("10 mm deep", "20 mm deep") for leg, place in pins.items()}
    packs = {leg: place.replace("10 mm deep", "20 mm deep") for leg, place in pack.items()}
    thin = hulls + part("motor", "motor-ordinary", **pins) + part("pack", "pack-4aa-alkaline", **pack)
    thick = part("motor", "motor-ordinary", 'leads = "nail-iron-3mm"', **nails)
    thick = hulls + thick + part("pack", "pack-4aa-alkaline", 'leads = "nail-iron-3mm"', **packs)
    still, turning = verdict(tmp_path, thin).part("motor"), verdict(tmp_path, thick).part("motor")
    assert (still.state, still.speed.mean) == ("still", 0.0)
    assert {reason.code for reason in still.reasons} & {"metal", "legs-thin", "path"}
    assert turning.state in ("turning", "straining")
    assert turning.speed.mean > 0


def test_a_wall_that_insulates_saves_lumps_that_meet_and_a_wall_that_conducts_does_not(tmp_path):
    block = '[[lumps]]\nname = "W"\ndough = "{dough}"\nshape = "block"\nlength_mm = 10\nwidth_mm = 30\nheight_mm = 20\nplace = "between A and B"\n'
    text = roll("A") + roll("B", 'place = "right of A, gap 8 mm"')
    rest = part("lamp", "lamp-red", **LAMP) + PACK
    assert verdict(tmp_path, text + block.format(dough="wall") + rest).part("lamp").state == "bright"
    assert verdict(tmp_path, text + block.format(dough="salt") + rest).part("lamp").state == "dark"


def test_turning_the_whole_table_changes_nothing(tmp_path):
    turned = "".join(roll(name, f"at_mm = [0, {y}]\nturn_deg = 90") for name, y in (("A", 0), ("B", 66)))
    words = {"left": "near", "right": "far"}

    def swap(text: str) -> str:
        for one, other in words.items():
            text = text.replace(f"{one} end", f"{other} end")
        return text

    lamp = {leg: swap(place) for leg, place in LAMP.items()}
    straight = verdict(tmp_path, TWO + part("lamp", "lamp-red", **LAMP) + PACK).part("lamp").current.mean
    across = verdict(tmp_path, turned + part("lamp", "lamp-red", **lamp) + swap(PACK)).part("lamp").current.mean
    assert across == pytest.approx(straight, rel=1e-3)  # the same grid, turned; the gap slides to 0.02 mm


def test_the_budget_adds_up_to_what_the_pack_gives(tmp_path):
    budget = verdict(tmp_path, TWO + part("lamp", "lamp-red", **LAMP) + PACK).budget
    spent = budget.parts + budget.metal + budget.dough_leads + budget.dough_path + budget.pack
    assert spent == pytest.approx(budget.given, rel=1e-8)  # power in is power out to 1e-9 of the largest branch


def test_a_json_verdict_holds_only_numbers_that_json_knows(tmp_path):
    import json

    judged = verdict(tmp_path, TWO + part("lamp", "lamp-red", **LAMP) + PACK)
    assert json.loads(json.dumps(judged.as_dict(), allow_nan=False))["parts"][0]["state"] == "bright"


def test_a_second_pack_that_hangs_by_one_wire_is_only_idle(tmp_path):
    second = part("second", "pack-2aa-alkaline", red="top of A, 40 % along, 10 mm deep", black="dangling")
    judged = verdict(tmp_path, TWO + part("lamp", "lamp-red", **LAMP) + PACK + second)
    assert judged.part("lamp").state == "bright"
    assert judged.part("second").state == "idle"


def test_dearer_metal_alone_lowers_the_current_and_cheaper_metal_raises_it(tmp_path):
    readings = verdict(tmp_path, TWO + part("lamp", "lamp-red", **LAMP) + PACK).readings
    alone = {each.end.price: each.point.currents["lamp"] for each in readings.ends if abs(each.end.price) == 1.0}
    assert alone[-1.0] > 1.1 * readings.drawn.point.currents["lamp"] > 1.2 * alone[1.0]


def test_deeper_legs_cost_less_in_the_dough_close_round_them(tmp_path):
    shallow = {leg: place.replace("12 mm deep", "6 mm deep") for leg, place in LAMP.items()}
    deep, thin = (verdict(tmp_path, TWO + part("lamp", "lamp-red", **legs) + PACK).budget for legs in (LAMP, shallow))
    assert 0 < deep.dough_leads / deep.current < 0.8 * thin.dough_leads / thin.current


def test_an_accidental_touch_is_a_bridge_of_the_handbooks_area(tmp_path):
    sculpture = read_sculpture(sculpture_file(tmp_path, roll("A") + roll("B", 'place = "right of A, gap 1 mm"')))
    bridge = settled(sculpture, find_near_pairs(sculpture)).pieces[0].solid
    assert 3.14159 * bridge.radius**2 == pytest.approx(10e-6, rel=1e-5)
    assert bridge.bounds()[0, 0] < 30e-3 < 31e-3 < bridge.bounds()[1, 0]  # it reaches into both


def test_a_motors_turns_are_its_radians_over_two_pi(tmp_path):
    lumps = roll("A", diameter=26) + roll("B", 'place = "in front of A, gap 8 mm"', diameter=26)
    legs = {"red": "top of A, 40 % along, 24 mm deep", "black": "top of B, 40 % along, 24 mm deep"}
    pack = {leg: place.replace("40 %", "60 %") for leg, place in legs.items()}
    text = part("motor", "motor-ordinary", 'leads = "nail-iron-3mm"', **legs)
    text += part("pack", "pack-4aa-alkaline", 'leads = "nail-iron-3mm"', **pack)
    motor = verdict(tmp_path, lumps + text).part("motor")
    assert float(motor.turns["mean"].replace(",", "")) == pytest.approx(motor.speed.mean * 30 / 3.14159, rel=0.05)
