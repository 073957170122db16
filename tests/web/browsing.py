"""Pages in a real browser: whatever they ask for must come from this computer, and nothing may fail in them."""

__all__ = ["DESK", "PHONE", "open_pages", "settle"]

DESK, PHONE = {"width": 1280, "height": 800}, {"width": 390, "height": 844}


def open_pages(browser, address):
    """Give a function that opens pages; a fixture yields from this."""
    contexts, asked, faults = [], [], []

    def lay(path, *, viewport=None, scheme="light"):
        context = browser.new_context(viewport=viewport or DESK, color_scheme=scheme)
        contexts.append(context)
        page = context.new_page()
        page.on("request", lambda request: asked.append(request.url))
        page.on("pageerror", lambda error: faults.append(str(error)))
        page.on("dialog", lambda dialog: (faults.append(dialog.message), dialog.dismiss()))
        page.goto(address + path)
        return page

    yield lay
    for context in contexts:
        context.close()
    assert asked
    assert [
        url for url in asked if not url.startswith((address, address.replace("http", "ws"), "data:", "blob:"))
    ] == []
    assert faults == []


def settle(page):
    """Wait for the full answer."""
    page.wait_for_selector("[data-effort=full]", timeout=30_000)
    return page
