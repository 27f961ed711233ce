"""What records and views agree on; and one slip is one problem, whatever rests on it."""

from __future__ import annotations

from temperbook import checks
from temperbook.paths import Project
from temperbook.records import link_prose
from temperbook.records.load import load
from temperbook.views import routes, sections


def test_the_pages_that_prose_may_link_to_are_those_of_the_site() -> None:
    assert ("home", *sections.SECTIONS) == link_prose.PAGES


def test_the_kinds_that_prose_may_link_to_have_an_address() -> None:
    for kind, target in link_prose.LINKED.items():
        address = routes.page(target, "some/id")
        assert address.endswith(("some/id/", "#some/id")), kind


def test_one_broken_file_is_one_problem_whatever_rests_on_it(small: Project) -> None:
    """Rows, calls and exercises that name an alloy with a slip are right; only the slip is told."""
    for stem in ("copper/net-bronze", "copper/loft-bronze"):
        path = small.data / "alloys" / f"{stem}.yaml"
        path.write_text(path.read_text(encoding="utf-8") + "  broken: [\n", encoding="utf-8")
    library, found = load(small)
    found += checks.run(library)
    assert [problem.file for problem in found] == [
        "data/alloys/copper/loft-bronze.yaml",
        "data/alloys/copper/net-bronze.yaml",
    ]


def test_one_broken_table_is_one_problem_whatever_rests_on_it(small: Project) -> None:
    path = small.data / "evidence" / "loft-sheet-1.csv"
    path.write_text(path.read_text(encoding="utf-8").replace("id,record", "id;record"), "utf-8")
    library, found = load(small)
    found += checks.run(library)
    assert [problem.file for problem in found] == ["data/evidence/loft-sheet-1.csv"]
