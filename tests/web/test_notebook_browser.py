"""The notebook in a real browser: what only a browser shows of writing down, looking back and tapping."""

import re

import pytest
from tests.web.browsing import DESK, PHONE, open_pages, settle
from tests.web.served import served

from lumped.app.examples import example_text

pytestmark = pytest.mark.browser

NASTY = "<img src=x onerror=alert(1)>"
WIDE = [PHONE, DESK]


@pytest.fixture(scope="module")
def address():
    with served() as (_, address):
        yield address


@pytest.fixture
def table(browser, address):
    yield from open_pages(browser, address)


def write_down(page, title=""):
    """Write the sculpture on the page down, by keyboard; give its address."""
    page.locator("input[name=title]").fill(title) if title else page.locator("input[name=title]").focus()
    page.locator("input[name=title]").press("Enter")
    page.locator(".said:not(:empty)").wait_for()
    page.wait_for_url("**/notebook/*")
    return re.sub(r"http://[^/]+|\?.*", "", page.url)


def revisions(page):
    return page.locator(".past > .leaves .leaf-row").all_inner_texts()


def test_what_is_written_down_is_there_after_reloading_and_its_past_can_be_gone_through(table):
    page = settle(table("/shape/harbour-mouth"))
    write_down(page, "Our harbour")
    page.locator("[data-slider=gap]").press("Home")
    page.wait_for_selector("[data-slip=light] .state:text-is('dark')", timeout=20_000)
    write_down(page)
    page.locator(".leaf-row", has_text="Revision 2").wait_for()
    settle(page.reload() and page)
    assert page.locator("[data-slider=gap]").input_value() == "-2"
    assert "gap 6 mm → right of west quay, pressed 2 mm" in page.locator(".changes").inner_text()
    page.locator(".past .take", has_text="Bring it back").click()
    page.locator(".kept-line:focus", has_text="Brought back from revision 1").wait_for()
    settle(page)
    assert page.locator("[data-slip=light] .state").inner_text() == "bright"
    assert page.locator("[data-slider=gap]").input_value() == "6"
    page.locator(".take", has_text="Take it out").click()
    page.locator(".old-slip .take", has_text="Bring it back").click()
    page.locator(".kept-line", has_text="Brought back from revision 3").wait_for()
    assert len(revisions(page)) == 5
    page.locator(".past a", has_text="Revision 2").click()
    page.wait_for_url("**/2")
    assert "This is an old one: revision 2 of 5" in page.locator(".old-slip").inner_text()
    settle(page)
    assert page.locator("[data-slip=light] .state").inner_text() == "dark"


def test_what_is_pulled_about_after_writing_down_is_not_lost_by_reloading(table):
    page = settle(table("/shape/harbour-mouth"))
    address = write_down(page, "Kept, then moved")
    page.locator("[data-slider=gap]").press("End")
    page.wait_for_url("**/notebook/*?gap=15")
    settle(page.reload() and page)
    assert page.locator("[data-slider=gap]").input_value() == "15"
    page.goto(page.url.split("/notebook")[0] + address)
    settle(page)
    assert page.locator("[data-slider=gap]").input_value() == "6"


def test_one_tap_by_keyboard_is_noted_and_the_keyboard_stays_where_it_is(table):
    page = settle(table("/story/harbour-light.toml"))
    tap = page.locator("[data-slip=light] [data-seen=bright]")
    tap.focus()
    page.keyboard.press("Enter")
    noted = page.locator("[data-slip=light] [role=status]", has_text="Noted: bright. As it was said.")
    noted.wait_for()
    assert "The sculpture was written down with it, as revision 1." in noted.inner_text()
    assert tap.get_attribute("aria-pressed") == "true"
    assert tap.evaluate("element => element === document.activeElement")
    assert page.locator("[data-slip=light] .seen").get_attribute("aria-label") == "What “light” does on your table"
    page.wait_for_url("**/notebook/*")
    page.keyboard.press("Tab")
    page.keyboard.press("Tab")
    page.keyboard.press("Tab")
    page.keyboard.press("Enter")
    page.locator("[data-slip=light] .noted", has_text="Taken back.").wait_for()
    page.wait_for_function("document.activeElement?.dataset.seen === 'bright'")


def test_two_pages_write_at_once_and_neither_overwrites_the_other(table):
    first = settle(table("/story/twin-buoys.toml"))
    address = write_down(first, "Two at one table")
    second = settle(table(address))
    first.locator("input[name=title]").fill("The first one's")
    second.locator("input[name=title]").fill("The second one's")
    first.locator("input[name=title]").press("Enter", no_wait_after=True)
    second.locator("input[name=title]").press("Enter", no_wait_after=True)
    for page in (first, second):
        page.locator(".said:has-text('revision 2'), .sorry:has-text('gone on meanwhile')").first.wait_for()
    [late] = [page for page in (first, second) if page.locator(".leaf .sorry").count()]
    late.locator(".take", has_text="Write mine down after it").click()
    late.locator(".said", has_text="revision 3").wait_for()
    late.locator(".leaf-row", has_text="Revision 3").wait_for()
    changed = late.locator(".changes").inner_text()
    assert "The first one's" in changed
    assert "The second one's" in changed


def test_a_slider_moves_on_and_the_slip_under_the_keyboard_stays(table):
    page = settle(table("/shape/harbour-mouth"))
    summary = page.locator("[data-slip=light] summary")
    summary.focus()
    page.locator("[data-key=wrong]").evaluate("element => element.click()")
    page.wait_for_selector("[data-slip=light] .state:text-is('dark')", timeout=20_000)
    assert summary.evaluate("element => element === document.activeElement")


@pytest.mark.parametrize("size", WIDE, ids=["phone", "desk"])
@pytest.mark.parametrize("scheme", ["light", "dark"])
def test_pages_of_the_notebook_fit_and_are_large_enough_for_a_finger(table, size, scheme):
    page = settle(table("/story/ferry-on-pins.toml", viewport=size, scheme=scheme))
    page.locator("[data-seen]").first.wait_for()
    address = write_down(page, "A name without end " + "ropewalk" * 8)
    page.locator(".past").wait_for()
    for path, ready in ((address, "[data-seen]"), ("/", ".sheaf"), ("/notebook", ".sheaf")):
        page.goto(page.url.split("/", 3)[0] + "//" + page.url.split("/", 3)[2] + path)
        page.locator(ready).first.wait_for()
        assert page.evaluate("document.documentElement.scrollWidth") <= size["width"]
        assert_large_enough(page)
    page.locator(".sheaf", has_text="Ropewalk salt dough").first.click()
    page.wait_for_selector("[data-kneaded]", timeout=20_000)
    assert page.evaluate("document.documentElement.scrollWidth") <= size["width"]
    assert_large_enough(page)


def assert_large_enough(page):
    what = ".tap, .take, .tag, summary, .back, .sheaf, .field input, .field select, .ingredients input"
    heights = page.locator(what).evaluate_all(
        "all => all.map(each => [each.getBoundingClientRect().height, each.className, each.textContent])"
    )
    shown = [each for each in heights if each[0] > 0]
    assert shown
    assert [each for each in shown if each[0] < 44] == []  # px; the usual least size of a thing to touch


@pytest.mark.parametrize("path", ["/shape/channel-buoys", "/notebook"])
def test_letters_twice_as_large_still_fit_a_phone(table, path):
    page = table("/shape/channel-buoys", viewport=PHONE)
    settle(page)
    write_down(page)
    if path == "/notebook":
        page.goto(page.url.split("/notebook")[0] + path)
        page.locator(".sheaf").first.wait_for()
    else:
        page.locator(".past").wait_for()
    page.evaluate("document.documentElement.style.fontSize = '200%'")
    assert page.evaluate("document.documentElement.scrollWidth") <= PHONE["width"]


def test_markup_in_names_and_notes_stays_text(table, tmp_path):
    text = example_text("harbour-light.toml").replace("west quay", NASTY).replace('"The harbour light"', f'"{NASTY}"')
    (tmp_path / "mine.toml").write_text(text, "utf-8")
    page = table("/")
    page.locator("input[type=file]").set_input_files(tmp_path / "mine.toml")
    page.wait_for_url("**/brought/*")
    settle(page)
    address = write_down(page)
    page.locator("input[name=title]").fill(NASTY + "2")
    page.locator("input[name=why]").fill(NASTY)
    page.locator("input[name=title]").press("Enter")
    page.locator(".leaf-row", has_text="Revision 2").wait_for()
    assert NASTY in page.locator(".remark").first.inner_text()
    page.locator(".changes", has_text=NASTY).wait_for()
    for path in (address, address + "/1", "/notebook", "/"):
        page.goto(page.url.split("/", 3)[0] + "//" + page.url.split("/", 3)[2] + path)
        page.locator("h1:visible, b:visible", has_text=NASTY).first.wait_for()
        assert page.locator("img").count() == 0
