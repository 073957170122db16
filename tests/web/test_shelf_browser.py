"""Forms for packets and batches in a real browser: what was typed stays, and big files are refused in words."""

import pytest
from tests.web.browsing import PHONE, open_pages
from tests.web.served import served

from lumped.web import paths

pytestmark = pytest.mark.browser


@pytest.fixture(scope="module")
def address():
    with served() as (_, address):
        yield address


@pytest.fixture
def table(browser, address):
    yield from open_pages(browser, address)


def test_a_slip_keeps_everything_that_was_typed_and_leads_to_its_field(table):
    page = table("/packet", viewport=PHONE)
    typed = {"title": "mill <flour>", "fat_g": "-3", "protein_g": "10,2", "allergens": "wheat"}
    for name, text in typed.items():
        page.locator(f"[name={name}]").fill(text)
    page.locator("[name=like]").select_option("plain-flour")
    page.get_by_role("button", name="Write it down").click()
    page.wait_for_function("document.activeElement.name === 'title'")
    assert "can't stand here" in page.locator(".field:has([name=title]) .amiss").inner_text()
    assert {name: page.locator(f"[name={name}]").input_value() for name in typed} == typed
    assert page.locator("[name=like]").input_value() == "plain-flour"
    page.locator("[name=title]").fill("mill flour")
    page.locator("[name=fat_g]").fill("1")
    page.get_by_role("button", name="Write it down").click()
    page.wait_for_url("**/notebook/*")
    page.get_by_role("heading", name="mill flour").wait_for()


def test_a_table_of_ten_megabytes_is_refused_in_words(table, tmp_path):
    file = tmp_path / "big.csv"
    file.write_text("title,salt_g\n" + "salt,1\n" * 1_500_000)
    page = table("/")
    page.locator("input[name=files]").set_input_files(str(file))
    assert "larger than 2 MB" in page.get_by_role("alert").inner_text()


def test_pages_of_the_shelf_are_no_wider_than_a_phone(table):
    page = table("/pantry", viewport=PHONE, scheme="dark")
    for path in ("/pantry", "/ingredient?name=plain-flour", "/packet", "/batch?of=/dough/ropewalk-salt.toml"):
        page.goto(page.evaluate("location.origin") + path)
        page.wait_for_selector(".larder-row, .ingredient, form.fill", state="attached")
        page.evaluate("for (const each of document.querySelectorAll('details')) each.open = true")
        assert page.evaluate("document.documentElement.scrollWidth") <= PHONE["width"]


def test_names_with_blanks_and_strokes_lead_to_their_ingredient(table):
    page = table("/dough/ropewalk-salt.toml")
    page.locator("a.about").first.click()
    page.wait_for_selector(".ingredient")
    assert page.locator("h1").inner_text() == "plain wheat flour"
    page.goto(page.evaluate("location.origin") + paths.ingredient("rice/corn"))
    page.get_by_text("no ingredient “rice/corn”").wait_for()


def test_a_kept_batch_is_opened_in_its_form_and_changed(table):
    page = table("/batch?of=/dough/ropewalk-salt.toml", viewport=PHONE)
    page.wait_for_selector("form.fill")
    page.locator("[name=title]").fill("Friday's batch")
    page.locator("[name=weighed_after_g]").fill("420")
    page.locator("[name=notes]").fill('stirred <b>long</b>,\nleft "the side"')
    page.locator("[name=feel][value='4']").check(force=True)
    page.get_by_role("button", name="Write it down").click()
    page.get_by_role("link", name="Change it").click()
    page.get_by_role("heading", level=1, name="Change “Friday's batch”").wait_for()
    page.wait_for_selector("form.fill")
    assert page.locator("[name=weighed_after_g]").input_value() == "420"
    assert page.locator("[name=notes]").input_value() == 'stirred <b>long</b>,\nleft "the side"'
    assert page.locator("[name=feel]:checked").input_value() == "4"
    page.locator("[name=notes]").type(" at last")
    page.locator("[name=weighed_after_g]").fill("-1")
    page.get_by_role("button", name="Write down what has changed").click()
    page.wait_for_function("document.activeElement.name === 'weighed_after_g'")
    page.locator("[name=weighed_after_g]").fill("415")
    page.get_by_role("button", name="Write down what has changed").click()
    page.get_by_text("415 g came out").wait_for()
    page.get_by_text("at last").first.wait_for()
    page.get_by_text("revision 2").first.wait_for()
