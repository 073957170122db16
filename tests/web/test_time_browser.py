"""The page of how long a dough lasts in a real browser: words and slider move the same, and a phone shows it all."""

import re

import pytest
from tests.web.browsing import PHONE, open_pages
from tests.web.served import served

pytestmark = pytest.mark.browser

PAGE = "/time?of=/dough/ropewalk-salt.toml"


@pytest.fixture(scope="module")
def address():
    with served() as (_, address):
        yield address


@pytest.fixture
def table(browser, address):
    yield from open_pages(browser, address)


def ready(page):
    page.wait_for_selector("[data-strip=mass]", state="attached", timeout=30_000)
    return page


def test_keys_move_a_slider_its_words_the_answer_and_the_address(table):
    page = ready(table(PAGE))
    before = page.locator(".answer .notes").first.inner_text()
    page.locator("#drag-thick").focus()
    for _ in range(4):
        page.keyboard.press("ArrowLeft")
    assert page.locator("#say-thick").input_value() == "10 mm"
    page.wait_for_function("(old) => document.querySelector('.answer .notes').innerText !== old", arg=before)
    page.wait_for_url(re.compile(r"thick=10\+mm"))
    page.reload()
    ready(page)
    assert page.locator("#say-thick").input_value() == "10 mm"


def test_words_move_the_slider_and_what_is_no_figure_leaves_it(table):
    page = ready(table(PAGE))
    page.locator("#say-humidity").fill("60 %")
    page.wait_for_function("document.getElementById('drag-humidity').value === '60'")
    page.locator("#say-humidity").fill("140 %")
    page.get_by_role("alert").wait_for()
    assert "140 % can’t be" in page.get_by_role("alert").inner_text()
    assert page.locator("#say-humidity").input_value() == "140 %"


@pytest.mark.parametrize("scheme", ["light", "dark"])
def test_nothing_is_wider_than_a_phone(table, scheme):
    page = ready(table(PAGE, viewport=PHONE, scheme=scheme))
    page.locator("summary").first.click()
    assert page.evaluate("document.documentElement.scrollWidth") <= PHONE["width"]


def test_the_table_of_hours_lies_within_its_slip(table):
    """A sugar dough's resistivities are the widest figures."""
    page = ready(table(PAGE.replace("salt", "sugar"), viewport={"width": 1280, "height": 900}))
    page.locator(".hours > summary").click()
    page.locator(".hours .tally").wait_for()
    assert page.evaluate("(e => e.scrollWidth - e.clientWidth)(document.querySelector('.hours'))") <= 0
    slip = "document.querySelector('section:has(.hours)').getBoundingClientRect().right"
    assert page.evaluate(f"document.querySelector('.hours .tally').getBoundingClientRect().right < {slip}")
