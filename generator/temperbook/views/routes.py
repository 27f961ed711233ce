"""Where each record's page stands in the site, and the anchor of a figure on it."""

from __future__ import annotations

import re

from temperbook.records.link_prose import LINKED
from temperbook.records.load import Library

# kind of record -> folder of its pages
FOLDERS = {
    "alloys": "alloys",
    "solders": "solders",
    "subjects": "subjects",
    "elements": "elements",
    "colours": "heat-colours",
    "cautions": "cautions",
    "sources": "sources",
    "faults": "when-it-cracks",
    "charts": "wall-charts",
    "packs": "reading-packs",
    "routes": "routes",
}


def page(kind: str, record_id: str) -> str:
    """Address of a record's page below the site's root: `alloys/silver/sterling-925/`."""
    if kind == "glossary":
        return f"glossary/#{record_id}"
    return f"{FOLDERS[kind]}/{record_id}/"


def bearer(record_id: str, library: Library) -> str:
    """Address of the page of a record that bears figures."""
    return page(library.kind_of(record_id), record_id)


def figure(address: str, library: Library) -> str:
    """Address of a figure: its record's page and its anchor there."""
    record_id = address.split("#")[0]
    return bearer(record_id, library) + "#" + anchor(address)


def anchor(address: str) -> str:
    """Anchor of a figure on its record's page."""
    return slug(address.split("#", 1)[1])


def slug(text: str) -> str:
    """Lower-case letters, digits and single hyphens."""
    return re.sub(r"[^a-z0-9]+", "-", text.lower()).strip("-")


def linked(target: str, library: Library) -> str:
    """Address of what a link in prose names: `alloy:silver/fine-999`, `page:reduction`,
    `term:pipe`."""
    kind, colon, name = target.partition(":")
    if kind in ("http", "https") or not colon:
        return target
    if kind == "page":
        return "" if name == "home" else f"{name}/"
    return page(LINKED[kind], name)
