"""The app in a real browser: what is drawn, moved by keyboard, touched, and that its words are the command line's."""

import io
import json
import signal
import subprocess
import sys
import urllib.error
import urllib.request
from pathlib import Path

import numpy as np
import pytest
from PIL import Image
from tests.web.browsing import PHONE, open_pages, settle
from tests.web.served import served

from lumped.app.examples import example_text

pytestmark = pytest.mark.browser

DOUGH = (0xC9, 0x8A, 0x5E)
DEMO = Path(__file__).parents[2] / "demo"


@pytest.fixture(scope="module")
def address():
    with served() as (_, address):
        yield address


@pytest.fixture
def table(browser, address):
    yield from open_pages(browser, address)


def words(page):
    """The verdict as the page says it: headline of each part, and all reasons."""
    slips = page.locator("[data-slip]").all()
    headlines = {slip.get_attribute("data-slip"): slip.locator(".state").inner_text() for slip in slips}
    return headlines, page.locator("[data-slip] .why li").all_inner_texts()


def pixels(locator):
    return np.asarray(Image.open(io.BytesIO(locator.screenshot())).convert("RGB")).astype(int)


def share_like(picture, colour, within=45):
    """Share of pixels near a colour."""
    return float(np.mean(np.linalg.norm(picture - np.array(colour), axis=-1) < within))


def test_the_keyboard_moves_a_slider_and_the_verdict_follows(table):
    page = settle(table("/shape/harbour-mouth"))
    assert "dark" not in words(page)[0]["light"]
    slider = page.locator("[data-slider=gap]")
    for _ in range(30):
        page.keyboard.press("Tab")
        if slider.evaluate("element => element === document.activeElement"):
            break
    for _ in range(4):
        page.keyboard.press("ArrowLeft")
    assert page.locator(".slide output").first.inner_text() == "4 mm"
    page.keyboard.press("Home")
    page.wait_for_selector("[data-slip=light] .state:text-is('dark')", timeout=20_000)
    assert page.locator(".slide output").first.inner_text() == "pressed in 2 mm"
    assert "Dough joins its two legs" in words(page)[1][0]
    assert "light: dark" in page.locator(".lies [role=status]").inner_text()
    assert "dark" in page.locator(".drawing svg").text_content()
    assert page.url.endswith("?gap=-2")
    page.reload()
    settle(page)
    assert words(page)[0]["light"] == "dark"
    assert slider.input_value() == "-2"


@pytest.mark.parametrize("name", ["harbour-light", "ebb-light"])
def test_a_demo_sculpture_is_judged_in_the_words_of_the_command_line(table, name):
    page = settle(table(f"/story/{name}.toml"))
    command = [sys.executable, "-m", "lumped", "check", str(DEMO / f"{name}.toml"), "--json"]
    verdict = json.loads(subprocess.run(command, capture_output=True, check=True, text=True).stdout)
    headlines, reasons = words(page)
    assert headlines == {part["part"]: part["headline"] for part in verdict["parts"]}
    assert reasons == [reason["text"] for part in verdict["parts"] for reason in part["reasons"]]
    assert (headlines["light"] == "dark") is (name == "ebb-light")


def test_the_drawing_shows_dough_and_its_level_lines_tell_volts(table):
    page = settle(table("/story/harbour-light.toml"))
    assert share_like(pixels(page.locator(".drawing")), DOUGH) > 0.08
    page.locator("[data-key=potential]").check(force=True)
    line = page.locator(".drawing [data-volts]").first
    line.wait_for(state="attached")
    line.locator("path").first.dispatch_event("pointerover", {"bubbles": True})
    assert page.locator(".volts-slip").inner_text() == f"{float(line.get_attribute('data-volts')):.2f} V"


def test_the_sculpture_turns_under_the_mouse_and_the_arrow_keys(table):
    page = settle(table("/story/harbour-light.toml"))
    page.locator("[data-key=turn]").check(force=True)
    canvas = page.locator(".turntable canvas")
    page.wait_for_function("document.querySelector('.turntable canvas')?.width > 300")
    page.wait_for_timeout(500)
    above = pixels(canvas)
    assert share_like(above, DOUGH, within=70) > 0.05
    around = canvas.bounding_box()
    page.mouse.move(around["x"] + 300, around["y"] + 150)
    page.mouse.down()
    page.mouse.move(around["x"] + 180, around["y"] + 60, steps=4)
    page.mouse.up()
    turned = pixels(canvas)
    assert np.mean(np.abs(turned - above)) > 3
    page.locator(".turntable").focus()
    page.keyboard.press("ArrowLeft")
    assert np.mean(np.abs(pixels(canvas) - turned)) > 1


def test_touching_a_part_shows_its_slip_and_its_numbers_unfold(table):
    page = settle(table("/story/harbour-light.toml"))
    page.locator(".drawing [data-part=light]").dispatch_event("click")
    slip = page.locator("[data-slip=light].touched")
    slip.wait_for()
    assert not slip.locator("dl").is_visible()
    slip.locator("summary").click()
    assert "milliamperes through it" in slip.locator("dl").inner_text()


@pytest.mark.parametrize("path", ["/", "/shape/channel-buoys", "/story/two-packs.toml"])
def test_nothing_is_wider_than_a_phone_in_the_evening(table, path):
    page = table(path, viewport=PHONE, scheme="dark")
    if path != "/":
        settle(page)
    page.wait_for_selector(".drawing svg")
    assert page.evaluate("document.documentElement.scrollWidth") <= PHONE["width"]
    picture = pixels(page.locator("body"))
    assert np.mean(picture) < 100
    assert "rgb(243, 231, 213)" in page.locator("h1").evaluate("element => getComputedStyle(element).color")


def test_drawings_on_one_page_share_no_names(table):
    page = table("/")
    page.wait_for_function("document.querySelectorAll('.thing .drawing svg').length >= 6")
    names = page.locator(".drawing [id]").evaluate_all("all => all.map(each => each.id)")
    assert len(names) > 20
    assert len(set(names)) == len(names)


def test_another_name_for_this_computer_is_refused(address):
    request = urllib.request.Request(address, headers={"Host": "elsewhere.test"})
    with pytest.raises(urllib.error.HTTPError, match="400") as refused:
        urllib.request.urlopen(request)
    refused.value.close()


def test_what_is_touched_is_large_enough_for_a_finger(table):
    page = settle(table("/shape/chain-ferry", viewport=PHONE))
    for what in (".tag", ".slide input", ".take", "summary", ".back"):
        heights = page.locator(what).evaluate_all("all => all.map(each => each.getBoundingClientRect().height)")
        assert min(height for height in heights if height) >= 44, what  # px; the usual least size of a thing to touch


def test_a_file_is_brought_by_the_form_and_markup_in_it_stays_text(table, tmp_path):
    nasty = "<img src=x onerror=alert(1)>"
    text = example_text("harbour-light.toml").replace("west quay", nasty).replace('"The harbour light"', f'"{nasty}"')
    (tmp_path / "mine.toml").write_text(text, "utf-8")
    page = table("/")
    page.locator("input[type=file]").set_input_files(tmp_path / "mine.toml")
    page.wait_for_url("**/brought/*")
    settle(page)
    assert page.locator("h1").inner_text() == nasty
    assert page.locator("img").count() == 0
    with page.expect_download() as download:
        page.locator(".take", has_text="File to keep").click()
    assert Path(download.value.path()).read_text("utf-8") == text


@pytest.mark.parametrize("ending", [signal.SIGINT, signal.SIGTERM])
def test_a_signal_ends_everything_quietly(ending):
    with served() as (process, _):
        children = Path(f"/proc/{process.pid}/task/{process.pid}/children").read_text().split()
        assert children
        process.send_signal(ending)
        _, said = process.communicate(timeout=15)
        assert process.returncode == 0
        assert said == ""
        assert not any(Path(f"/proc/{child}/exe").exists() for child in children)


def test_a_taken_port_is_said_in_words(address):
    port = address.rsplit(":", 1)[1]
    command = [sys.executable, "-m", "lumped", "serve", "--port", port]
    other = subprocess.run(command, capture_output=True, text=True, check=False)
    assert other.returncode == 1
    assert f"Port {port} is in use" in other.stderr
