"""What prose names: figures that it calls, pages that it links to, chapters of packs."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from typing import TYPE_CHECKING

from temperbook.problems import Problem, nearest
from temperbook.records import addresses
from temperbook.records.prose import walk

if TYPE_CHECKING:
    from temperbook.records.load import Library
    from temperbook.records.prose import Inline, Prose
    from temperbook.records.vocabulary import Vocabulary

# Pages that the site cannot do without, home first, then in the order of its navigation:
# content/pages/<stem>.md.
PAGES = (
    "home",
    "alloys",
    "steps",
    "when-it-cracks",
    "compare",
    "heat-colours",
    "reduction",
    "work-it-out",
    "routes",
    "tables",
    "cautions",
    "wall-charts",
    "reading-packs",
    "sources",
    "how-we-choose",
)
# The steps of the work, in its order, and the chapters that go with them.
STEPS = tuple(
    f"steps/{stem}"
    for stem in (
        "why-metal-cracks",
        "melt",
        "pour",
        "crop-and-scalp",
        "forge",
        "roll",
        "draw",
        "when-to-anneal",
        "anneal",
        "quench",
        "pickle",
        "finish",
        "inspect",
        "later-heat",
        "test-first",
    )
)
# Pages below those, which the navigation leaves out.
INNER = (
    *STEPS,
    "compare/anneals",
    "compare/limits",
    "compare/hardening",
    "compare/densities",
    "compare/cooling",
    "solders",
    "formulas",
    "glossary",
)
# Kind of a link -> kind of the record that it leads to; `page` leads to content/pages/.
LINKED = {
    "alloy": "alloys",
    "caution": "cautions",
    "term": "glossary",
    "chart": "charts",
    "pack": "packs",
    "route": "routes",
    "solder": "solders",
    "fault": "faults",
    "element": "elements",
    "source": "sources",
    "subject": "subjects",
}
OUTSIDE = ("http", "https")


@dataclass(frozen=True)
class Fault:
    """Why a call leads to no figure."""

    text: str
    needed: str
    mend: str


def problems(library: Library) -> Iterator[Problem]:
    """Pages and chapters that are missing or stray, calls and links that lead nowhere."""
    yield from _pages(library)
    yield from _chapters(library)
    known = library.figures()
    for prose in library.prose.values():
        for call in prose.figure_calls():
            wrong = fault(call.target, known, library)
            if wrong:
                yield Problem(
                    prose.file,
                    call.line,
                    wrong.text,
                    found=f"[[{call.target}]]",
                    needed=wrong.needed,
                    mend=wrong.mend,
                )
        for link in prose.links():
            yield from _link(prose, link, library)
        yield from _pictures(prose, library.vocabulary)


def _pictures(prose: Prose, words: Vocabulary) -> Iterator[Problem]:
    known = words.words.get("picture", {})
    for block in walk(prose.blocks):
        # Without a name the parser has told of it; without words their own file has a problem.
        if known and block.picture and block.picture not in known:
            yield Problem(
                prose.file,
                block.line,
                "calls a picture that does not exist",
                found=f"picture:{block.picture}",
                needed=nearest(block.picture, known),
                mend="correct the name, or draw it in generator/temperbook/drawing/",
            )


def fault(call: str, known: Mapping[str, object], library: Library) -> Fault | None:
    """Why a call fits no figure, or several; None where it fits one or its record is unread."""
    fitting = addresses.matching(call, known)
    if len(fitting) == 1 or (not fitting and library.unread(call.partition("#")[0])):
        return None
    if fitting:
        needed = "one of: " + " ".join(sorted(fitting))
        mend = "add the basis key that tells them apart"
        return Fault("calls several figures at once", needed, mend)
    return Fault(
        "calls a figure that does not exist",
        _near(call, known),
        "correct the address, or enter the figure",
    )


def _near(call: str, known: Mapping[str, object]) -> str:
    """The figures of the same record and quantity, else of the same record, else the likeliest."""
    stem = call.partition("@")[0]
    for start in (f"{stem}@", f"{stem.partition('#')[0]}#"):
        same = [address for address in known if address.startswith(start)]
        if same:
            return nearest(call, same)
    return nearest(call, known)


def _pages(library: Library) -> Iterator[Problem]:
    folder = library.project.shown(library.project.content)
    pages = [f"pages/{stem}" for stem in (*PAGES, *INNER)]
    for stem in pages:
        if stem not in library.prose:
            yield Problem(
                f"{folder}/{stem}.md",
                0,
                "is missing",
                needed="a page with its title: # ...",
                mend="write it; the site links to it",
            )
    chapters = {chapter for pack in library.packs.values() for chapter in pack.chapters}
    packs = {i for kind, i in library.documents if kind == "packs"}
    if packs != library.packs.keys() or not chapters <= library.prose.keys():
        return  # a pack with a slip may mean the rest
    for stem, prose in library.prose.items():
        if stem not in pages and stem not in chapters:
            yield Problem(
                prose.file,
                0,
                "is read by nothing",
                found=stem,
                needed="one of the site's pages, or a chapter of a pack",
                mend="correct its name, or name it in the chapters of a pack",
            )


def _chapters(library: Library) -> Iterator[Problem]:
    for pack_id, pack in library.packs.items():
        for position, chapter in enumerate(pack.chapters):
            if chapter not in library.prose:
                yield library.document(pack_id, "packs").problem(
                    ("chapters", position),
                    "names no file below content/",
                    found=chapter,
                    needed=nearest(chapter, library.prose),
                    mend="correct the path, without .md",
                )


def _link(prose: Prose, link: Inline, library: Library) -> Iterator[Problem]:
    kind, colon, target = link.target.partition(":")
    if kind in OUTSIDE and target.startswith("//"):
        return
    if not colon or (kind != "page" and kind not in LINKED):
        yield Problem(
            prose.file,
            link.line,
            "links in a way that the handbook does not know",
            found=link.target,
            needed=", ".join(f"{k}:id" for k in ("page", *LINKED)) + " or https://...",
            mend="say the kind of page, a colon and its id",
        )
        return
    targets = _targets(kind, library)
    if target not in targets:
        yield Problem(
            prose.file,
            link.line,
            "links to a page that does not exist",
            found=link.target,
            needed=nearest(target, targets),
            mend="correct the id, or write the record",
        )


def _targets(kind: str, library: Library) -> set[str]:
    if kind == "page":
        return {*PAGES, *INNER}
    return {record_id for k, record_id in library.documents if k == LINKED[kind]}
