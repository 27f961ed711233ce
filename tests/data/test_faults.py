"""Every fault has a picture, ranked causes, checks that tell them apart, a remedy and a source."""

from __future__ import annotations

import re

from temperbook.derive import faults
from temperbook.derive.handbook import Handbook
from temperbook.drawing.pictures import PICTURES
from temperbook.records.load import Library
from temperbook.views import fault as view

ASKED = 45
# What the issue names; each must be a fault of its own.
NAMED = {
    "edge-cracks", "alligator", "centre-burst", "centre-buckle", "wavy-edges", "lamination",
    "blisters", "rolled-in-scale", "orange-peel", "fire-cracking", "order-embrittlement",
    "hot-short", "firestain", "hydrogen-sickness", "season-cracking", "quench-cracks", "burnt",
    "necking", "die-scoring", "chatter-marks", "drawn-slivers", "groove-fins", "gas-porosity",
    "pipe", "cold-shut", "crucible-grit", "spitting", "segregation", "dezincification", "curl",
    "camber", "ring-opens", "ring-cracks",
}  # fmt: skip


def test_the_faults_of_the_bench_are_there(library: Library) -> None:
    assert len(library.faults) >= ASKED
    assert set(library.faults) >= NAMED


def test_every_part_of_the_work_has_faults(library: Library) -> None:
    shown = {word for fault in library.faults.values() for word in fault.when}
    assert shown == set(library.vocabulary.words["work"])
    assert {word for f in library.faults.values() for word in f.looks} == set(
        library.vocabulary.words["looks"]
    )


def test_every_fault_has_its_own_picture(library: Library) -> None:
    for fault_id, fault in library.faults.items():
        assert fault.picture == f"fault-{fault_id}"
        assert fault.picture in PICTURES, fault_id


def test_causes_are_ranked_and_told_apart(library: Library) -> None:
    for fault_id, fault in library.faults.items():
        assert len(fault.causes) >= 2, fault_id
        first = fault.causes[faults.ranked(fault)[0]]
        assert first.likely in ("usual", "often"), fault_id
        tells = [cause.tell for cause in fault.causes]
        assert len(set(tells)) == len(tells), f"{fault_id}: one check cannot tell two causes apart"
        assert all(len(tell.split()) >= 4 for tell in tells), fault_id


def test_something_of_every_fault_rests_on_a_source(library: Library) -> None:
    for fault_id, fault in library.faults.items():
        said = [*fault.causes, *fault.now, *fault.prevent]
        assert any(one.from_ for one in said), fault_id
        for one in said:
            for row in one.from_:
                assert row in library.evidence, (fault_id, row)


def test_texts_of_faults_are_short_and_type_no_numbers(library: Library) -> None:
    units = re.compile(r"\d\s*(?:°|deg|%|mm|µm|MPa|HV|g\b|min\b|minutes|seconds|hours|percent)")
    words = sentences = 0
    for fault_id, fault in library.faults.items():
        texts = [fault.seen, *(c.text for c in fault.causes)]
        texts += [c.tell for c in fault.causes]
        texts += [r.text for r in (*fault.now, *fault.prevent)]
        for text in texts:
            assert not units.search(text), (fault_id, text)
            parts = [part for part in re.split(r"[.;:?!]\s", text) if part.strip()]
            sentences += len(parts)
            words += len(text.split())
    assert words / sentences < 20


def test_kindred_faults_name_each_other_and_never_themselves(library: Library) -> None:
    for fault_id, fault in library.faults.items():
        assert fault_id not in fault.see


def test_the_caution_on_top_is_the_first_that_hurts_at_once(handbook: Handbook) -> None:
    """Not the gravest: a caution on arsenic does not head every crack in hot metal."""
    for fault in handbook.library.faults.values():
        at_once = [i for i in fault.cautions if handbook.library.cautions[i].immediate]
        assert at_once, fault.id
        urgent = view.shown(fault, handbook).urgent
        assert urgent is not None
        assert urgent.name == handbook.library.cautions[at_once[0]].name, fault.id
    hot = view.shown(handbook.library.faults["hot-short"], handbook)
    assert hot.urgent is not None
    assert hot.urgent.name == "Hot metal that no longer glows"
