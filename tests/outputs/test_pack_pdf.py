"""The reading pack on both papers: complete, in our own type, no sign missing, no page empty."""

from __future__ import annotations

import json
from collections.abc import Iterator
from dataclasses import asdict, dataclass
from pathlib import Path
from typing import Any

import pytest
from click.testing import CliRunner
from outputs.building import once, run, shared
from outputs.pdf_reading import MM, PageRead, overlapping, read_once, squeezed
from pypdf import PdfReader

from temperbook.cli import main
from temperbook.derive.handbook import Handbook
from temperbook.drawing.lettering import lacks
from temperbook.views import pack as pack_view
from temperbook.views.pack import PackShown

pytestmark = pytest.mark.usefixtures("read_once")
PACK = "first-week"
SIZES = {"a4": (210, 297), "letter": (215.9, 279.4)}
LEAST = 350  # letters that a page without a picture holds, lest it is nearly empty
FOOT = 20  # mm at the lower edge that hold the page's number
DRAWN = 12  # lines and shapes that make a picture, beyond the rules of a page


@dataclass(frozen=True)
class Booklet:
    """A pack on one paper: its file, what it must say, and its pages as read."""

    size: str
    pdf: Path
    said: PackShown
    pages: list[PageRead]

    @property
    def texts(self) -> list[str]:
        return ["\n".join(r.text for r in page.runs) for page in self.pages]


@pytest.fixture(
    scope="session",
    params=list(SIZES),
)
def booklet(
    request: pytest.FixtureRequest, tmp_path_factory: pytest.TempPathFactory, handbook: Handbook
) -> Booklet:
    size = request.param
    words = ("pack", PACK, "--paper", size, "-o")
    name = f"{PACK}-{size}.pdf"
    pdf = once(shared(tmp_path_factory), name, lambda target: run(*words, str(target)))
    said = pack_view.shown(handbook.library.packs[PACK], handbook)
    return Booklet(size, pdf, said, read_once(pdf))


def whole(booklet: Booklet) -> str:
    """All text without spaces and feet of pages, so that lines and pages may break anywhere."""
    end = SIZES[booklet.size][1] - FOOT
    return squeezed("".join(r.text for page in booklet.pages for r in page.runs if r.base < end))


def strings(data: Any) -> Iterator[str]:
    """Every text in plain data."""
    if isinstance(data, str):
        yield data
    elif isinstance(data, dict):
        for value in data.values():
            yield from strings(value)
    elif isinstance(data, list | tuple):
        for value in data:
            yield from strings(value)


def test_the_pages_have_the_size_of_their_paper(booklet: Booklet) -> None:
    for page in PdfReader(booklet.pdf).pages:
        box = (float(page.mediabox.width) / MM, float(page.mediabox.height) / MM)
        assert box == pytest.approx(SIZES[booklet.size], abs=0.1)


def test_it_is_a_booklet_and_no_leaflet(booklet: Booklet) -> None:
    assert len(booklet.texts) >= 12


def test_chapters_come_in_their_order_after_a_list_of_them(booklet: Booklet) -> None:
    text = whole(booklet)
    heads = [squeezed(f"{n}{c.title}") for n, c in enumerate(booklet.said.chapters, 1)]
    listed = [text.index(head) for head in heads]
    begun = [text.index(head, listed[-1] + len(heads[-1])) for head in heads]
    assert listed == sorted(listed)
    assert begun == sorted(begun)
    for chapter, start, end in zip(
        booklet.said.chapters, begun, [*begun[1:], len(text)], strict=True
    ):
        first = squeezed(chapter.passages[0].said[0].text)
        assert start < text.index(first) < end, chapter.title


def test_every_sentence_of_every_chapter_is_printed(booklet: Booklet) -> None:
    text = whole(booklet)

    def check(passage: Any) -> None:
        for piece in passage.said:
            for words in strings(asdict(piece)["text"]):
                assert squeezed(words) in text, words
        for child in passage.children:
            check(child)
        assert squeezed(passage.caption) in text, passage.caption

    count = 0
    for chapter in booklet.said.chapters:
        for passage in chapter.passages:
            check(passage)
            count += 1
    assert count > 60


def test_the_exercises_have_questions_answers_and_formulas(booklet: Booklet) -> None:
    text = whole(booklet)
    assert len(booklet.said.exercises) == 6
    for exercise in booklet.said.exercises:
        assert squeezed(exercise.ask) in text, exercise.ask
        assert squeezed(exercise.why) in text, exercise.why
        assert squeezed(exercise.formula) in text, exercise.formula
        assert exercise.answers
        for name, value in exercise.answers:
            assert squeezed(f"{name} {value}") in text, (name, value)
        assert "{" not in exercise.ask + exercise.why
    answers = next(n for n, t in enumerate(booklet.texts) if squeezed(t).startswith("Answers"))
    for exercise in booklet.said.exercises:
        before = squeezed("".join(booklet.texts[:answers]))
        assert squeezed(exercise.why) not in before, "an answer stands before its page"


def test_cautions_words_and_sources_are_all_there(booklet: Booklet) -> None:
    text, said = whole(booklet), booklet.said
    assert len(said.cautions) >= 10
    for caution in said.cautions:
        assert squeezed(f"{caution.head.signal}{caution.head.name}.") in text, caution.head.name
        numbers = (label.split()[0] for _, label in caution.signs)
        said_of_it = (caution.hazard, caution.consequence, caution.decides)
        for words in (*said_of_it, *caution.first_aid, *caution.avoid, *numbers):
            assert squeezed(words) in text, words
    assert len(said.glossary) >= 20
    for term in said.glossary:
        assert squeezed(f"{term.term}. {term.meaning}") in text, term.term
    assert said.sources
    for source in said.sources:
        assert squeezed(f"{source.text}. {source.note}") in text, source.text
    for _, meaning in said.legend:
        assert squeezed(meaning) in text, meaning


def test_it_ends_with_a_page_to_sign(booklet: Booklet) -> None:
    start = next(
        n for n, t in enumerate(booklet.texts) if squeezed(t).startswith("Shownandunderstood")
    )
    text = squeezed("".join(booklet.texts[start:]))
    for line in (*booklet.said.signed, "Trainer", "Trainee", "Date"):
        assert squeezed(line) in text, line


def test_cover_and_foot_say_which_edition_it_is(booklet: Booklet) -> None:
    cover, said = squeezed(booklet.texts[0]), booklet.said
    for words in (said.title, said.subtitle, said.for_whom, said.edition, said.address):
        assert squeezed(words) in cover, words
    for number, text in enumerate(booklet.texts[1:], 2):
        assert squeezed(f"{said.title}{said.edition}{number}") in squeezed(text), number


def test_the_outline_leads_to_each_chapter(booklet: Booklet) -> None:
    reader = PdfReader(booklet.pdf)
    titles = [entry.title for entry in reader.outline if not isinstance(entry, list)]
    assert titles[1 : 1 + len(booklet.said.chapters)] == [c.title for c in booklet.said.chapters]
    assert reader.metadata is not None
    assert reader.metadata.title == booklet.said.title


def test_our_type_has_every_character(booklet: Booklet) -> None:
    for words in strings(asdict(booklet.said)):
        for weight in (400, 700, 800):
            assert not lacks(words, weight), (words, weight)


def test_no_sign_is_missing_on_paper(booklet: Booklet) -> None:
    for number, text in enumerate(booklet.texts, 1):
        assert "\ufffd" not in text, number
        assert "(cid:" not in text, number
        assert "\x00" not in text, number
    fonts = set()
    for page in PdfReader(booklet.pdf).pages:
        for font in page["/Resources"]["/Font"].values():
            base = font.get_object()["/DescendantFonts"][0].get_object()
            assert {"/FontFile2", "/FontFile3"} & set(base["/FontDescriptor"].get_object())
            fonts.add(base["/BaseFont"].split("+")[1])
    assert fonts
    assert all(name.startswith("AtkinsonHyperlegibleNext-") for name in fonts), fonts


def test_letters_can_be_read_at_arm_s_length(booklet: Booklet) -> None:
    caps = [r.cap for page in booklet.pages for r in page.runs if r.text.strip()]
    assert min(caps) >= 1.8, "mm that a capital is high"


def test_no_page_is_nearly_empty(booklet: Booklet) -> None:
    sign = next(n for n, t in enumerate(booklet.texts) if squeezed(t).startswith("Shownandunder"))
    empty = {
        number: text.replace("\n", " ")[:120]
        for number, (text, page) in enumerate(zip(booklet.texts, booklet.pages, strict=True), 1)
        if 1 < number <= sign and len(text) < LEAST and page.shapes < DRAWN
    }
    assert not empty


def test_texts_do_not_stand_on_each_other(booklet: Booklet) -> None:
    width, height = SIZES[booklet.size]
    for number, page in enumerate(booklet.pages, 1):
        assert not overlapping(page.runs), number
        for r in page.runs:
            if r.text.strip():
                assert 10 < r.left < r.right < width - 10, (number, r)
                assert r.base < height - 8, (number, r)


def test_the_command_says_what_it_wrote(tmp_path: Path) -> None:
    target = tmp_path / "deep" / "pack.pdf"
    result = CliRunner().invoke(
        main, ["pack", PACK, "--paper", "letter", "-o", str(target), "--json"]
    )
    assert result.exit_code == 0, result.output
    told = json.loads(result.stdout)
    assert told == {"file": str(target), "paper": "letter", "bytes": target.stat().st_size}


def test_a_pack_that_there_is_not_brings_the_near_one(tmp_path: Path) -> None:
    result = CliRunner().invoke(main, ["pack", "frist-week", "-o", str(tmp_path / "x.pdf")])
    assert result.exit_code == 2
    assert "no pack is called `frist-week`" in result.output
    assert PACK in result.output
