"""Make the pictures of the README and the docs: the real app at a desk and on a phone; the sheet, a card, labels."""

import io
import os
import re
import shutil
import signal
import subprocess
import sys
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from datetime import date
from pathlib import Path
from tempfile import TemporaryDirectory

from PIL import Image
from playwright.sync_api import Page, sync_playwright

from lumped.app import check
from lumped.app.cards import card, write_card
from lumped.app.tags import tags, write_tags
from lumped.paper import sheet_data, typeset

ROOT = Path(__file__).parents[1]
PICTURES = ROOT / "docs" / "pictures"
FLAGS = ["--no-sandbox", "--disable-gpu", "--disable-background-networking", "--enable-unsafe-swiftshader"]
DESK, PHONE, TALL = {"width": 1280, "height": 800}, {"width": 390, "height": 844}, {"width": 1280, "height": 1340}


@contextmanager
def served() -> Iterator[str]:
    """Serve the app on a free port, with a notebook of its own; give its address."""
    with TemporaryDirectory(prefix="lumped-") as folder:
        environment = os.environ | {
            "LUMPED_NOTEBOOK": f"{folder}/notebook.sqlite",
            "LUMPED_WHO": "the harbour mistress",
        }
        process = subprocess.Popen(
            [sys.executable, "-m", "lumped", "serve", "--port", "0"],
            stdout=subprocess.PIPE, text=True, env=environment,
        )  # fmt: skip
        assert process.stdout is not None
        try:
            yield process.stdout.readline().split(" is at ")[1].split()[0]
        finally:
            process.send_signal(signal.SIGINT)
            process.wait(15)
            process.stdout.close()


def settle(page: Page) -> None:
    page.wait_for_selector("[data-effort=full]", timeout=60_000)
    page.wait_for_timeout(400)


def drawn(page: Page) -> None:
    page.wait_for_function("[...document.querySelectorAll('.drawing')].every(each => each.querySelector('svg'))")
    page.wait_for_timeout(400)


def level_lines(page: Page) -> None:
    settle(page)
    page.locator("[data-key=potential]").check(force=True)
    page.wait_for_selector(".drawing [data-volts]", state="attached")
    page.wait_for_timeout(300)


def turned(page: Page) -> None:
    settle(page)
    page.locator("[data-key=turn]").check(force=True)
    page.wait_for_function("document.querySelector('.turntable canvas')?.width > 300")
    page.locator(".turntable").focus()
    for key in ["ArrowDown"] * 6 + ["ArrowRight"] * 3:
        page.keyboard.press(key)
    page.locator(".turntable").evaluate("element => element.blur()")
    page.wait_for_timeout(300)


def written_down(page: Page) -> None:
    """Write a sculpture down, tap what happened on three tables, and write another name over it."""
    settle(page)
    for count, seen in enumerate(("bright", "bright", "dim"), 1):
        page.locator(f"[data-slip=light] [data-seen={seen}]").click()
        page.locator("[data-slip=light]", has_text=f"of {count} tables" if count > 1 else "One table").wait_for()
    page.locator("input[name=title]").fill("The harbour light, our table")
    page.locator("input[name=why]").fill("Named for whose table it is")
    page.locator("input[name=why]").press("Enter")
    page.locator(".leaf-row", has_text="Revision 2").wait_for()
    page.locator("input[name=why]").fill("")
    page.locator("input[name=why]").evaluate("element => element.blur()")
    page.locator(".said").evaluate("element => element.remove()")  # it tells a folder of this computer
    page.locator(".changes li").first.wait_for()
    page.wait_for_timeout(400)


def dragged(page: Page) -> None:
    """Take salt away, and wait for what follows from that."""
    page.wait_for_selector(".what-ifs dd", timeout=30_000)
    page.locator("#drag-2").focus()
    for _ in range(40):
        page.keyboard.press("ArrowLeft")
    page.wait_for_url("**?table-salt=33+g")
    page.locator("#drag-2").evaluate("element => element.blur()")
    page.wait_for_timeout(900)


def touched(page: Page) -> None:
    page.wait_for_selector(".touched-here", state="attached", timeout=30_000)
    page.wait_for_function("document.querySelector('.reading .figure')?.textContent.includes('Ω·m')")
    page.wait_for_timeout(400)


def proposed(page: Page) -> None:
    page.wait_for_selector(".proposal", timeout=30_000)
    page.wait_for_timeout(400)


SHOTS: list[tuple[str, str, dict[str, int], str, Callable[[Page], None]]] = [
    ("app", "/shape/harbour-mouth", DESK, "light", settle),
    ("app-evening", "/shape/chain-ferry", DESK, "dark", settle),
    ("app-table", "/", DESK, "light", drawn),
    ("app-phone", "/shape/channel-buoys", PHONE, "light", settle),
    ("app-phone-evening", "/", PHONE, "dark", drawn),
    ("app-level-lines", "/shape/ropewalk", DESK, "light", level_lines),
    ("app-turned", "/shape/breakwater", DESK, "light", turned),
    ("app-what-goes-wrong", "/story/crowded-quays.toml", DESK, "light", settle),
    ("dough", "/dough/ropewalk-salt.toml", DESK, "light", dragged),
    ("dough-phone-evening", "/dough/ropewalk-sugar.toml", PHONE, "dark", drawn),
    ("dough-mix", "/mix?of=/dough/ropewalk-salt.toml", TALL, "light", touched),
    ("dough-swap", "/swap?of=/dough/ropewalk-salt.toml&without=cream-of-tartar", TALL, "light", proposed),
    ("notebook", "/story/harbour-light.toml", TALL, "light", written_down),
]


def keep(name: str, png: bytes) -> None:
    """Keep a picture in 256 colours: a third of the size, and the eye sees no difference."""
    picture = Image.open(io.BytesIO(png)).convert("RGB")
    picture.quantize(256, kmeans=1, dither=Image.Dither.NONE).save(PICTURES / f"{name}.png", optimize=True)


def shoot_pages() -> None:
    browser_place = shutil.which("chromium") or shutil.which("chromium-browser")
    with served() as address, sync_playwright() as playwright:
        browser = playwright.chromium.launch(executable_path=browser_place, args=FLAGS)
        for name, path, size, scheme, ready in SHOTS:
            context = browser.new_context(viewport=size, color_scheme=scheme)  # type: ignore[arg-type]
            page = context.new_page()
            page.goto(address + path)
            ready(page)
            keep(name, page.screenshot())
            context.close()
        browser.close()


def shoot_sheet() -> None:
    verdict = check(ROOT / "demo" / "harbour-light.toml")
    keep("sheet", typeset("sheet", sheet_data(verdict), kind="png", ppi=96))


def shoot_papers() -> None:
    recipe, day = ROOT / "demo" / "recipes" / "ropewalk-salt.toml", date(2026, 5, 8)
    with TemporaryDirectory(prefix="lumped-") as folder:
        picture, pdf = Path(folder, "card.png"), Path(folder, "tags.pdf")
        write_card(card(recipe, on=day, measures="metric"), picture=picture)
        keep("card", smaller(picture.read_bytes()))
        write_tags(tags(recipe, made_on=day, bags=4, trays=1, tare="6 g"), pdf)
        drawn = subprocess.run(["pdftoppm", "-r", "96", "-png", "-singlefile", pdf], check=True, capture_output=True)
        keep("tags", drawn.stdout)


def smaller(png: bytes, width: int = 800) -> bytes:
    picture, out = Image.open(io.BytesIO(png)), io.BytesIO()
    picture.resize((width, round(width * picture.height / picture.width))).save(out, "PNG")
    return out.getvalue()


if __name__ == "__main__":
    PICTURES.mkdir(parents=True, exist_ok=True)
    shoot_pages()
    shoot_sheet()
    shoot_papers()
    print(*sorted(re.sub(r".*/", "", str(path)) for path in PICTURES.glob("*.png")), sep="\n")
