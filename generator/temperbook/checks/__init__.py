"""The rules that the data must obey, one a file. The list below is all there is to know of them."""

from __future__ import annotations

from temperbook.checks import (
    composition_sums_to_100,
    evidence_grade_suffices,
    figure_agrees_with_evidence,
    figure_computes,
    number_within_physical_sense,
    poison_is_not_melted,
    prose_computes,
    prose_types_no_numbers,
    provenance_is_complete,
    route_can_be_planned,
    rule_agrees_with_evidence,
    solidus_below_liquidus,
    source_is_used,
)
from temperbook.problems import Problem
from temperbook.records.load import Library

RULES = (
    provenance_is_complete,
    figure_agrees_with_evidence,
    figure_computes,
    rule_agrees_with_evidence,
    evidence_grade_suffices,
    composition_sums_to_100,
    solidus_below_liquidus,
    number_within_physical_sense,
    poison_is_not_melted,
    source_is_used,
    prose_types_no_numbers,
    prose_computes,
    route_can_be_planned,
)


def run(library: Library) -> list[Problem]:
    """What the rules find, even where other problems keep the handbook from being made."""
    return [problem for rule in RULES for problem in rule.check(library)]
