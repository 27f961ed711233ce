"""The statements of a record that are no figures: composition, rules, remarks, causes, advice."""

from __future__ import annotations

from collections.abc import Iterator

from temperbook.records.figures import Provenance
from temperbook.records.models import RULES, Record
from temperbook.records.yaml_reader import Location

ALONE = ("composition_source", *RULES, "cooling")
LISTED = ("remarks", "causes", "now", "prevent")


def stated(record: Record) -> Iterator[tuple[Location, Provenance]]:
    """Each with its place in the record; a record of another kind lacks what it has no key for."""
    for key in ALONE:
        said = getattr(record, key, None)
        if said is not None:
            yield (key,), said
    for key in LISTED:
        for position, said in enumerate(getattr(record, key, ())):
            yield (key, position), said
