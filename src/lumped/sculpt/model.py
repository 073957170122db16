"""The sculpture file: what may stand in it, as a model that also publishes its JSON Schema.

Only what can't be read or can't exist is refused here. A leg that dangles, wires that touch, two packs: such a file
loads and gets a verdict.
"""

from typing import Annotated, Any, Literal

from pydantic import BaseModel, ConfigDict, Field, StringConstraints, field_validator, model_validator

from lumped.documents import Degrees, Length
from lumped.errors import InputError
from lumped.sculpt.places import read_leg_place, read_lump_place

__all__ = ["SculptureFile", "sculpture_schema"]

Name = Annotated[
    str, StringConstraints(min_length=1, max_length=60, pattern=r"^[^,~@\x00-\x1f\x7f“”]+$", strip_whitespace=True)
]
Text = Annotated[str, StringConstraints(pattern=r"^[^\x00-\x08\x0b-\x1f\x7f]*$")]
Size = Annotated[Length, Field(ge=0.5, le=2000)]
Where = Annotated[Length, Field(ge=-2000, le=2000)]
Colour = Annotated[str, StringConstraints(pattern=r"^#[0-9a-fA-F]{6}$")]
Resistivity = Annotated[float, Field(ge=1e-3, le=1e9, allow_inf_nan=False)]
Number = Annotated[float, Field(allow_inf_nan=False)]


class _Table(BaseModel):
    model_config = ConfigDict(extra="forbid", frozen=True, str_strip_whitespace=True)


class DoughEntry(_Table):
    """A dough: a recipe file, or a measured resistivity and how it was measured, or frankly unknown."""

    recipe: str | None = Field(None, description="Path of a recipe file, from the sculpture file's own folder.")
    resistivity_ohm_m: Resistivity | None = Field(None, description="Measured resistivity. [Ω·m]")
    low_ohm_m: Resistivity | None = Field(None, description="Lower end of the measured interval. [Ω·m]")
    high_ohm_m: Resistivity | None = Field(None, description="Upper end of the measured interval. [Ω·m]")
    measured_by: str | None = Field(None, description="How the resistivity was measured.")
    unknown: Literal["conducting", "insulating"] | None = Field(None, description="I don't know my dough.")
    colour: Colour = Field("#d9a066", description="What the dough looks like, as #rrggbb.")
    mark: Literal["plain", "dots", "stripes", "crosses", "waves"] = Field(
        "plain", description="A mark pressed into it, so that doughs are told apart without colour."
    )

    @model_validator(mode="after")
    def _one_way_only(self) -> "DoughEntry":
        ways = [self.recipe is not None, self.resistivity_ohm_m is not None, self.unknown is not None]
        if sum(ways) != 1:
            raise InputError("sculpture-dough-ways")
        if self.resistivity_ohm_m is not None and not self.measured_by:
            raise InputError("sculpture-measured-by")
        return self


class _Lump(_Table):
    name: Name
    dough: str = Field(description="Name of one of the doughs.")
    place: str = Field("on the table", description='Where it lies, in words: "right of A, gap 4 mm".')
    at_mm: tuple[Where, Where] | tuple[Where, Where, Where] | None = Field(
        None, description="Or its middle in millimetres: to the right, away from you, and up from the table."
    )
    turn_deg: Degrees = Field(0.0, description="Turned anticlockwise as seen from above. [°]")

    @field_validator("place")
    @classmethod
    def _place_reads(cls, place: str) -> str:
        read_lump_place(place)
        return place

    @model_validator(mode="after")
    def _one_place(self) -> "_Lump":
        if self.at_mm is not None and "place" in self.model_fields_set:
            raise InputError("sculpture-two-places")
        return self


class BallEntry(_Lump):
    """A ball."""

    shape: Literal["ball"]
    diameter_mm: Size


class RollEntry(_Lump):
    """A straight roll with flat ends, lying; `turn_deg = 90` points it away from you."""

    shape: Literal["roll"]
    length_mm: Size
    diameter_mm: Size


class PathEntry(_Lump):
    """A roll along a path on the table."""

    shape: Literal["path"]
    points_mm: Annotated[list[tuple[Where, Where]], Field(min_length=2, max_length=100)]
    diameter_mm: Size


class SlabEntry(_Lump):
    """A flat slab."""

    shape: Literal["slab"]
    length_mm: Size
    width_mm: Size
    thickness_mm: Size


class BlockEntry(_Lump):
    """A block."""

    shape: Literal["block"]
    length_mm: Size
    width_mm: Size
    height_mm: Size


class DiscEntry(_Lump):
    """A disc that lies flat."""

    shape: Literal["disc"]
    diameter_mm: Size
    thickness_mm: Size


LumpEntry = Annotated[
    BallEntry | RollEntry | PathEntry | SlabEntry | BlockEntry | DiscEntry, Field(discriminator="shape")
]


class LegAt(_Table):
    """A leg in absolute millimetres: where it goes in, where it points, how deep."""

    at_mm: tuple[Where, Where, Where]
    towards: tuple[Number, Number, Number] = (0.0, 0.0, -1.0)
    depth_mm: Size

    @field_validator("towards")
    @classmethod
    def _points_somewhere(cls, towards: tuple[float, float, float]) -> tuple[float, float, float]:
        if not any(towards):
            raise InputError("sculpture-no-direction")
        return towards


class PartEntry(_Table):
    """A part and where its legs go."""

    name: Name
    part: str = Field(description="Key of a part in the handbook, such as lamp-red or pack-4aa-alkaline.")
    legs: dict[str, str | LegAt] = Field(description="Where each leg goes, by the leg's name.")
    leads: str | None = Field(None, description="Another gauge for all its legs, such as nail-iron-3mm.")
    state: Literal["open", "closed", "fresh", "tired"] | None = Field(
        None, description="A switch is open or closed, a pack fresh or tired."
    )
    fuse: bool = Field(False, description="A pack with a resettable fuse.")

    @field_validator("legs")
    @classmethod
    def _places_read(cls, legs: dict[str, str | LegAt]) -> dict[str, str | LegAt]:
        for place in legs.values():
            if isinstance(place, str):
                read_leg_place(place)
        return legs


class SculptureFile(_Table):
    """A sculpture: doughs, lumps in order (where they overlap the later one wins), parts with their legs."""

    kind: Literal["sculpture"]
    schema_: Literal[1] = Field(alias="schema")
    title: Annotated[Text, StringConstraints(min_length=1, max_length=120)]
    story: Text = Field("", description="What it is about.")
    invented: bool = Field(False, description="The people, places and readings in this file are invented.")
    doughs: Annotated[dict[Name, DoughEntry], Field(min_length=1, max_length=50)]
    lumps: Annotated[list[LumpEntry], Field(min_length=1, max_length=500)]
    parts: Annotated[list[PartEntry], Field(max_length=100)] = []
    joined: Annotated[list[tuple[str, str]], Field(max_length=200)] = Field(
        [], description='Legs twisted together outside the dough: [["pack.red", "lamp.long"]].'
    )


def sculpture_schema() -> dict[str, Any]:
    """Give the JSON Schema of a sculpture file.

    Examples
    --------
    >>> sorted(sculpture_schema()["required"])
    ['doughs', 'kind', 'lumps', 'schema', 'title']
    """
    return {"$schema": "https://json-schema.org/draft/2020-12/schema", **SculptureFile.model_json_schema()}
