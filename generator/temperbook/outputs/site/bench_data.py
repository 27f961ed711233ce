"""The one file from which the forms in the browser compute: tables, and each formula's record."""

from __future__ import annotations

import json

from temperbook import units
from temperbook.derive import tables
from temperbook.derive.handbook import Handbook
from temperbook.metal import register
from temperbook.views import formula_page, plan_form, typed

ADDRESS = "assets/data/bench.json"


def content(handbook: Handbook) -> str:
    """The file's text: tables, formulas by id, units with what they are in others, words.

    Keys stand in the order of the records, as in Python, where it is the order of an answer; the
    same records give the same bytes.
    """
    data = {
        "tables": tables.all_of(handbook.library),
        "formulas": {f.id: formula_page.data(f) for f in register.FORMULAS.values()},
        "scales": units.EXACT,
        "written": typed.WRITTEN,
        "units": formula_page.shown_units(),
        "families": formula_page.families(handbook),
        "elements": formula_page.element_names(handbook),
        **plan_form.data(handbook),
    }
    return json.dumps(data, ensure_ascii=False, separators=(",", ":")) + "\n"
