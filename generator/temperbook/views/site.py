"""Every page of the site, in one list."""

from __future__ import annotations

from temperbook.derive.handbook import Handbook
from temperbook.views import (
    alloy,
    caution,
    fault,
    formula_page,
    plan_form,
    printed,
    route,
    sections,
    solder,
    source,
    subject,
)
from temperbook.views.pages import Page

VIEWS = (
    sections,
    alloy,
    solder,
    fault,
    plan_form,
    formula_page,
    subject,
    caution,
    source,
    printed,
    route,
)


def all_pages(handbook: Handbook) -> list[Page]:
    """The pages of every view."""
    return [page for view in VIEWS for page in view.all_pages(handbook)]
