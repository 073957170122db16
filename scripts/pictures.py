"""Make the pictures of the README and the docs: the real app at a desk and on a phone, day and evening; the sheet."""

import io
import re
import shutil
import signal
import subprocess
import sys
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from pathlib import Path

from PIL import Image
from playwright.sync_api import Page, sync_playwright

from lumped.app import check
from lumped.paper import sheet_data, typeset

ROOT = Path(__file__).parents[1]
PICTURES = ROOT / "docs" / "pictures"
FLAGS = ["--no-sandbox", "--disable-gpu", "--disable-background-networking", "--enable-unsafe-swiftshader"]
DESK, PHONE = {"width": 1280, "height": 800}, {"width": 390, "height": 844}


@contextmanager
def served() -> Iterator[str]:
    """Serve the app on a free port; give its address."""
    process = subprocess.Popen(
        [sys.executable, "-m", "lumped", "serve", "--port", "0"], stdout=subprocess.PIPE, text=True
    )
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


SHOTS: list[tuple[str, str, dict[str, int], str, Callable[[Page], None]]] = [
    ("app", "/shape/harbour-mouth", DESK, "light", settle),
    ("app-evening", "/shape/chain-ferry", DESK, "dark", settle),
    ("app-table", "/", DESK, "light", drawn),
    ("app-phone", "/shape/channel-buoys", PHONE, "light", settle),
    ("app-phone-evening", "/", PHONE, "dark", drawn),
    ("app-level-lines", "/shape/ropewalk", DESK, "light", level_lines),
    ("app-turned", "/shape/breakwater", DESK, "light", turned),
    ("app-what-goes-wrong", "/story/crowded-quays.toml", DESK, "light", settle),
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


if __name__ == "__main__":
    PICTURES.mkdir(parents=True, exist_ok=True)
    shoot_pages()
    shoot_sheet()
    print(*sorted(re.sub(r".*/", "", str(path)) for path in PICTURES.glob("*.png")), sep="\n")
