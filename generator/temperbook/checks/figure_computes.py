"""A computed figure of a record can be computed: its formula is known, its inputs fit, and it gives
the quantity."""

from __future__ import annotations

from collections.abc import Iterator

from temperbook.checks.prose_computes import fault
from temperbook.checks.statements import figures
from temperbook.problems import Problem
from temperbook.records.load import Library
from temperbook.records.yaml_reader import shown_location


def check(library: Library) -> Iterator[Problem]:
    """Computed figures that come to nothing."""
    for placed, quantity, figure in figures(library):
        if figure.how != "computed" or not figure.formula:
            continue
        wrong = fault(figure.formula, figure.inputs, [quantity], library)
        if wrong:
            yield placed.document.problem(
                placed.at,
                f"{shown_location(placed.at)} cannot be computed",
                found=f"formula: {figure.formula}, inputs: {dict(figure.inputs)}",
                needed=wrong,
                mend="correct the formula or its inputs; its output is named as the quantity",
            )
