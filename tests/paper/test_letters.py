"""The letters that ship in the package."""

from importlib.resources import files

from PIL import ImageFont


def test_letters_and_their_licence_ship_and_stay_small():
    folder = files("lumped.paper").joinpath("fonts")
    sizes = {entry.name: len(entry.read_bytes()) for entry in folder.iterdir()}
    assert {"LICENSE-DejaVu.txt", "LICENSE-Noto-Sans-CJK.txt"} <= set(sizes)
    assert sum(sizes.values()) < 3_000_000


def test_letters_have_every_sign_that_the_texts_use():
    folder = files("lumped.paper").joinpath("fonts")
    text = "".join(file.read_text(encoding="utf-8") for file in files("lumped.texts").joinpath("en").iterdir())
    for name in ("DejaVuSerif.ttf", "DejaVuSerif-Bold.ttf", "DejaVuSerif-Italic.ttf"):
        font = ImageFont.truetype(str(folder.joinpath(name)), 40)
        missing = bytes(font.getmask("\U0010ffff"))
        lost = {each for each in set(text) if each.isprintable() and not each.isspace()
                and bytes(font.getmask(each)) == missing}  # fmt: skip
        assert not lost, name
