"""Rules that point at figures far from the trend; references: Tabor on hardness, and mixing."""

from __future__ import annotations

import pytest

from temperbook.derive import outliers
from temperbook.derive.handbook import Handbook, derive
from temperbook.paths import Project
from temperbook.records.load import load

# What the rules point at and why it stands.
EXPLAINED = {
    (
        "copper/common-brass",
        "density",
    ): "zinc shrinks copper: two sheets agree, the more zinc the more",
    ("copper/muntz-metal", "density"): "zinc shrinks copper: two sheets agree",
    ("copper/naval-brass", "density"): "zinc shrinks copper: two sheets agree",
    ("copper/nickel-silver-10", "density"): "zinc shrinks copper, with nickel too: sheets agree",
    ("copper/nickel-silver-12", "density"): "zinc shrinks copper, with nickel too: sheets agree",
    ("copper/nickel-silver-55-18", "density"): "zinc shrinks copper, with nickel too: sheets agree",
    ("copper/silicon-bronze", "density"): "silicon shrinks copper: two sheets agree",
    ("gold/9ct-yellow", "anneal"): "a supplier's kiln setting; the record warns that it lies near",
    ("gold/fine-999", "tensile"): "metal so soft that Tabor's rule no longer holds",
    ("titanium-niobium/niobium", "anneal"): "for a vacuum; its stop is for air, as the record says",
    (
        "titanium-niobium/titanium-grade-1",
        "anneal",
    ): "a crystal change sets the limit, not melting; the record says so",
    (
        "titanium-niobium/titanium-grade-2",
        "anneal",
    ): "a crystal change sets the limit, not melting; the record says so",
}


def small_with(small: Project, old: str, new: str) -> list[str]:
    path = small.data / "alloys/copper/net-bronze.yaml"
    text = path.read_text(encoding="utf-8")
    assert text.count(old) == 1
    path.write_text(text.replace(old, new), encoding="utf-8")
    return [o.quantity for o in outliers.of(derive(load(small)[0]))]


def test_sound_figures_are_left_alone(small: Project) -> None:
    assert outliers.of(derive(load(small)[0])) == []


@pytest.mark.parametrize(
    ("old", "new", "quantity"),
    [
        ("{value: 8.7, unit: g/cm3", "{value: 7.8, unit: g/cm3", "density"),
        ("{low: 550, high: 600, unit: degC", "{low: 550, high: 760, unit: degC", "anneal"),
    ],
)
def test_a_slip_is_found(old: str, new: str, quantity: str, small: Project) -> None:
    """Figures swapped round, as a typist does; 0.9 of 840 degC in kelvin is 729 degC."""
    assert small_with(small, old, new) == [quantity]


def test_every_outlier_of_the_handbook_is_understood(handbook: Handbook) -> None:
    found = {(o.record, o.quantity) for o in outliers.of(handbook)}
    assert found == set(EXPLAINED)
