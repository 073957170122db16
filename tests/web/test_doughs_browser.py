"""The pages of a dough in a real browser: by keyboard alone, on a narrow page, in the evening, and soon enough."""

import re

import pytest
from tests.web.browsing import DESK, PHONE, open_pages
from tests.web.served import served

from lumped.web.paths import ASK

pytestmark = pytest.mark.browser

SALT = "/dough/ropewalk-salt.toml"
FIGURE = ".reading [data-figure=resistivity]"


@pytest.fixture(scope="module")
def address():
    with served() as (_, address):
        yield address


@pytest.fixture
def table(browser, address):
    yield from open_pages(browser, address)


def ready(page):
    page.wait_for_selector(".what-ifs dd", timeout=30_000)
    return page


def test_the_keyboard_moves_an_amount_and_the_address_keeps_it(table):
    page = ready(table(SALT))
    before = page.locator(FIGURE).inner_text()
    page.locator("#drag-2").focus()
    for _ in range(10):
        page.keyboard.press("ArrowLeft")
    assert page.locator("#amount-2").input_value() == "63 g"
    page.wait_for_function("(old) => document.querySelector('.reading .figure').textContent !== old", arg=before)
    page.wait_for_url("**?table-salt=63+g")
    moved = page.locator(FIGURE).inner_text()
    page.reload()
    ready(page)
    assert page.locator(FIGURE).inner_text() == moved
    page.get_by_role("link", name="Put it back as it was").click()
    page.wait_for_function("(old) => document.querySelector('.reading .figure')?.textContent === old", arg=before)


def test_words_for_an_amount_move_its_slider(table):
    page = ready(table(SALT))
    page.locator("#amount-2").fill("30 g")
    page.wait_for_function("document.getElementById('drag-2').value === '30'")


@pytest.mark.parametrize("amount", ["0", "0 g", "0.0"])
def test_nothing_of_an_ingredient_moves_its_slider_to_the_end_and_back(table, amount):
    page = ready(table(SALT))
    page.locator("#amount-2").fill(amount)
    page.wait_for_function("document.getElementById('drag-2').value === '0'")
    assert page.locator("#drag-2").get_attribute("aria-valuetext") == "0 g"
    assert page.evaluate("document.getElementById('drag-1').value") != "0"
    page.locator("#amount-2").fill("30 g")
    page.wait_for_function("document.getElementById('drag-2').value === '30'")


def test_a_number_tells_its_source_to_whoever_uses_the_keyboard(table):
    page = ready(table(SALT))
    page.locator(FIGURE).focus()
    page.keyboard.press("Enter")
    slip = page.get_by_role("dialog", name="Resistivity of the dough")
    slip.wait_for()
    assert "From memory" in slip.inner_text()
    assert "CRC Handbook" in slip.inner_text()
    page.keyboard.press("Escape")
    slip.wait_for(state="hidden")
    assert page.locator(FIGURE).evaluate("element => element === document.activeElement")


def test_touching_the_map_reads_the_dough_there_and_so_do_the_arrow_keys(table):
    page = table(f"/mix?of={SALT}")
    page.wait_for_selector(".touched-here circle", state="attached", timeout=30_000)
    page.wait_for_function("document.querySelector('.reading .figure')?.textContent.includes('Ω·m')")
    before = page.locator(FIGURE).inner_text()
    picture = page.locator(".touching svg").bounding_box()
    page.mouse.click(picture["x"] + 0.42 * picture["width"], picture["y"] + 0.45 * picture["height"])
    page.wait_for_function("(old) => document.querySelector('.reading .figure').textContent !== old", arg=before)
    touched = page.locator("[href*='table-salt=']").first.get_attribute("href")
    page.keyboard.press("ArrowUp")
    page.wait_for_function(
        "(old) => document.querySelector(\"[href*='table-salt=']\").getAttribute('href') !== old", arg=touched
    )


@pytest.mark.parametrize(
    "path", [SALT, *(f"/{what}?of={SALT}" for what in ("swap", "salt", "mix", "care", "wall", "make"))]
)
def test_no_page_of_a_dough_is_wider_than_a_phone_and_fingers_can_meet_what_lies_there(table, path):
    page = table(path, viewport=PHONE, scheme="dark")
    page.wait_for_load_state("networkidle")
    page.wait_for_timeout(400)
    assert page.evaluate("document.documentElement.scrollWidth") <= PHONE["width"]
    for what in (".drag", ".take", "summary", ".way", ".back", ".tag", ".figure", "select"):
        heights = page.locator(what).evaluate_all("all => all.map(each => each.getBoundingClientRect().height)")
        assert min((height for height in heights if height), default=44) >= 43.5, what  # px; the usual least


def test_what_is_long_is_folded_on_a_phone_and_stays_as_somebody_left_it(table):
    def folds(page):
        page.wait_for_selector(".fold", timeout=30_000)
        return page.locator(".fold").evaluate_all("all => all.map(each => each.open)")

    assert all(folds(table(f"/care?of={SALT}")))
    page = table(f"/care?of={SALT}", viewport=PHONE)
    assert not any(folds(page))
    assert page.locator(".caution").first.is_visible()
    assert not page.locator(".caution").last.is_visible()
    page.locator(".fold", has_text="Doses").locator("summary").click()
    page.locator("input[inputmode=decimal]").first.fill("4")
    page.wait_for_url("**age=4**")
    page.get_by_text("a child aged 4").first.wait_for()
    page.wait_for_function("[...document.querySelectorAll('.fold')].filter(each => each.open).length === 1")
    assert page.locator(".fold", has_text="Doses").locator("table").is_visible()
    page.evaluate("window.dispatchEvent(new Event('beforeprint'))")
    assert all(folds(page))


def test_text_twice_as_large_still_fits_a_desk(table):
    page = ready(table(SALT, viewport=DESK))
    page.evaluate("document.documentElement.style.fontSize = '200%'")
    assert page.evaluate("document.documentElement.scrollWidth") <= DESK["width"]
    assert not re.search(r"\bNaN\b|undefined", page.locator(".recipe").inner_text())


def test_a_plan_for_a_class_is_kept_by_its_address_and_printed_without_its_questions(table):
    page = table(f"/make?of={SALT}")
    page.wait_for_selector("[data-figure=made]", timeout=30_000)
    page.locator("input[name=people]").fill("14")
    page.wait_for_url("**people=14**")
    page.get_by_text("for 14 people").wait_for()
    page.reload()
    page.get_by_text("for 14 people").wait_for(timeout=30_000)
    page.set_viewport_size({"width": 700, "height": 1000})  # px; paper is narrower than a desk
    assert page.locator(".shop thead").first.is_hidden()
    page.emulate_media(media="print")
    assert page.locator(".shop thead").first.is_visible()
    assert page.locator(".wishes").is_hidden()
    assert page.locator(".caution .figure").first.is_hidden()


def test_every_page_of_a_dough_is_written_in_ink_and_not_in_the_colour_of_warnings(table):
    page = table("/swap?of=" + SALT)
    colours = set()
    for what in ASK:
        page.goto(page.evaluate("location.origin") + f"/{what}?of={SALT}")
        page.wait_for_selector(f".question.{what} h1")
        colours.add(page.evaluate("getComputedStyle(document.querySelector('h1')).color"))
    assert len(colours) == 1, colours


def test_japanese_names_have_letters_on_a_computer_without_any(table):
    page = table("/ingredient?name=cream-of-tartar")
    page.wait_for_selector(".ingredient", timeout=30_000)
    page.wait_for_load_state("networkidle")
    assert page.evaluate(
        "[...document.fonts].some(each => each.family.includes('Japanese') && each.status === 'loaded')"
    )
