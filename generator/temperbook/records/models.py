"""The shape of each kind of record. Fields are the keys of the YAML files, in their order."""

from __future__ import annotations

from typing import Annotated, Any, Literal

from pydantic import Field

from temperbook.records.causes import Cause, Which
from temperbook.records.figures import Figure, Provenance, Remark, Rule, Strict, Text

Id = Annotated[str, Field(pattern=r"^[A-Za-z0-9]+([-/.][A-Za-z0-9]+)*$")]
Figures = dict[str, list[Figure]]


class Record(Strict):
    """What every record has: an id that equals its path below the folder of its kind."""

    id: Id


class Alloy(Record):
    """An alloy: what it is made of and how it is worked. `data/alloys/<family>/<name>.yaml`.

    melt: who may melt it. worked: cold, hot alone, or only as it was cast.
    """

    name: Text
    short: Annotated[str, Field(min_length=1, max_length=14)]
    also: list[Text] = []
    about: Text
    composition: dict[str, float]
    composition_source: Provenance
    melt: Literal["bench", "buy-stock", "licensed", "never"] = "bench"
    worked: Literal["cold", "hot", "cast"] = "cold"
    subjects: list[Text] = []
    figures: Figures = {}
    structure: Rule | None = None
    heating: Rule | None = None
    quench: Rule | None = None
    pickle: Rule | None = None
    remarks: list[Remark] = []
    cautions: list[Text] = []

    @property
    def family(self) -> str:
        """The folder that the record stands in."""
        return self.id.split("/")[0]


class Solder(Record):
    """A filler that joins metal hot and melts before it. `data/solders/<family>/<name>.yaml`.

    joins: the alloys that it is made for, by id.
    """

    name: Text
    short: Annotated[str, Field(min_length=1, max_length=14)]
    also: list[Text] = []
    about: Text
    composition: dict[str, float]
    composition_source: Provenance
    melt: Literal["bench", "buy-stock", "licensed", "never"] = "bench"
    joins: list[Text] = []
    subjects: list[Text] = []
    figures: Figures = {}
    remarks: list[Remark] = []
    cautions: list[Text] = []

    @property
    def family(self) -> str:
        """The folder that the record stands in."""
        return self.id.split("/")[0]


class Subject(Record):
    """Something a source speaks of that is not one alloy: a system, a family, a bench rule."""

    name: Text
    about: Text | None = None
    figures: Figures = {}
    cooling: Rule | None = None
    remarks: list[Remark] = []


class Element(Record):
    """A chemical element, by its symbol."""

    name: Text
    figures: Figures = {}


class ColourTable(Record):
    """One observer's names for the colours of heat."""

    name: Text
    observer: Text
    figures: Figures = {}


class Fault(Record):
    """A fault of the metal: what one sees, why, and what to do. `data/faults/<name>.yaml`.

    when: words of the work in which it shows. looks: words for what it looks like. save: whether
    the piece can be saved, by rule. numbers: addresses of figures that belong to it. prone: the
    alloys that it is likeliest in. cautions: the first that hurts at once stands on top.
    """

    name: Text
    seen: Text
    when: Annotated[list[Text], Field(min_length=1)]
    looks: Annotated[list[Text], Field(min_length=1)]
    picture: Text
    causes: Annotated[list[Cause], Field(min_length=1)]
    save: Literal["as-it-is", "cut-back", "remelt", "refine"]
    now: Annotated[list[Remark], Field(min_length=1)]
    prevent: Annotated[list[Remark], Field(min_length=1)]
    prone: Which | None = None
    numbers: list[Text] = []
    see: list[Text] = []
    cautions: list[Text] = []
    figures: Figures = {}


class Applies(Strict):
    """Where a caution stands without being named: by composition, family, or everywhere."""

    always: bool = False
    elements: dict[str, float] = {}
    families: list[Text] = []
    structure: list[Text] = []
    record_only: bool = False


class Caution(Record):
    """What can hurt, and the usual way to keep it from hurting."""

    name: Text
    signal: Literal["danger", "warning", "caution"]
    quick: Annotated[str, Field(min_length=1, max_length=60)]
    hazard: Text
    consequence: Text | None = None
    avoid: list[Text]
    first_aid: Text | None = None
    decides: Text
    immediate: bool = False
    applies: Applies
    tasks: list[Text] = []
    signs: list[Text] = []
    from_: list[Text] = Field(alias="from")
    figures: Figures = {}


class Source(Record):
    """A published work that figures come from."""

    title: Text
    by: Text
    year: int | None = None
    kind: Text
    link: Annotated[str, Field(pattern=r"^https?://\S+$")] | None = None
    read: Text
    note: Text | None = None


class Term(Record):
    """A word of the trade and what it means."""

    term: Text
    meaning: Text
    see: list[Text] = []


class ChartGroup(Strict):
    """Rows that share one rule, by where their anneal lies against two landmarks of glow."""

    id: Id
    title: Text
    short: Text
    when: Literal["below-glow", "meets-first-red", "hotter"]


class Chart(Record):
    """A chart for the wall or the bench. tasks: work whose cautions it carries where an alloy on
    it brings them."""

    title: Text
    lead: Text
    about: Text
    landmarks: dict[str, Text]
    groups: list[ChartGroup]
    tasks: list[Text] = []
    cautions: list[Text]


class Exercise(Strict):
    """A question whose answers a formula of the register computes."""

    id: Id
    ask: Text
    formula: Text
    inputs: dict[str, Any]
    answers: list[Text]
    why: Text


class Pack(Record):
    """A reading pack: chapters of prose, exercises, glossary, a page to sign."""

    title: Text
    subtitle: Text
    for_: Text = Field(alias="for")
    chapters: list[Text]
    cautions: list[Text]
    exercises: list[Exercise]
    signed: list[Text]
    glossary: list[Text]


class RouteLimit(Provenance):
    """A limit that a route sets in the place of its alloy's own: area reduction [percent]."""

    percent: Annotated[float, Field(gt=0, lt=100)]
    why: Text


class Stretch(Strict):
    """A part of a route that one working does: from one section to another."""

    from_: Text = Field(alias="from")
    to: Text
    start: Literal["cast", "annealed"]
    process: Literal["forge", "groove", "flat", "draw"] | None = None
    temper: Text | None = None
    last: Annotated[float, Field(gt=0, lt=100)] | None = None
    ceiling: RouteLimit | None = None
    first_ceiling: RouteLimit | None = None
    floor: RouteLimit | None = None
    first_floor: RouteLimit | None = None
    why: list[Text]


class Route(Record):
    """A worked route from an ingot to a piece of stock. `data/routes/<name>.yaml`.

    length: of the finished piece [mm]. before, after: what is done around the stretches, in order.
    """

    name: Text
    about: Text
    alloy: Text
    length: Annotated[float, Field(gt=0)] | None = None
    stretches: Annotated[list[Stretch], Field(min_length=1)]
    before: list[Text] = []
    after: list[Text] = []
    cautions: list[Text] = []


class Edition(Record):
    """Which edition of the handbook this is. Nothing reads the clock."""

    name: Text
    date: Annotated[str, Field(pattern=r"^\d{4}-\d{2}-\d{2}$")]
    address: Annotated[str, Field(pattern=r"^https?://\S+/$")]


# Keys of an alloy that hold a rule in a closed word, and the quantity that declares the words.
RULES = {
    "structure": "structure",
    "heating": "heating",
    "quench": "cooling",
    "pickle": "pickle",
}
# Folder below data/ and the model of the records in it.
KINDS: dict[str, type[Record]] = {
    "alloys": Alloy,
    "solders": Solder,
    "faults": Fault,
    "subjects": Subject,
    "elements": Element,
    "colours": ColourTable,
    "cautions": Caution,
    "sources": Source,
    "glossary": Term,
    "charts": Chart,
    "packs": Pack,
    "routes": Route,
    "edition": Edition,
}
