"""Figures are found by address; a call may leave keys out as long as one figure alone fits."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from temperbook.records.addresses import matching, split
from temperbook.records.figures import BASIS_KEYS, Figure, address, basis_text

KNOWN = [
    "a/b#anneal@heat=torch",
    "a/b#anneal@heat=kiln",
    "a/b#anneal@form=wire,heat=kiln",
    "a/b#solidus",
    "a/b#solidus@state=cast",
    "a/bc#solidus@state=cast",
]


def test_split() -> None:
    assert split("a/b#anneal@heat=torch,form=wire") == (
        "a/b#anneal",
        {"heat": "torch", "form": "wire"},
    )
    assert split("a/b#solidus") == ("a/b#solidus", {})
    assert split("a/b#anneal@ heat = torch ,") == ("a/b#anneal", {"heat": "torch"})


@pytest.mark.parametrize(
    ("call", "found"),
    [
        ("a/b#anneal@heat=torch", ["a/b#anneal@heat=torch"]),
        ("a/b#anneal", KNOWN[:3]),
        ("a/b#anneal@heat=kiln", ["a/b#anneal@heat=kiln"]),
        ("a/b#anneal@form=wire", ["a/b#anneal@form=wire,heat=kiln"]),
        ("a/b#anneal@heat=kiln,form=wire", ["a/b#anneal@form=wire,heat=kiln"]),
        ("a/b#solidus", ["a/b#solidus"]),
        ("a/bc#solidus", ["a/bc#solidus@state=cast"]),
        ("a/b#anneal@heat=fire", []),
        ("a/b#anneal@heat", []),
        ("a/b", []),
        ("", []),
    ],
)
def test_matching(call: str, found: list[str]) -> None:
    """The very address wins over others that would fit as well."""
    assert matching(call, KNOWN) == found


@pytest.mark.parametrize(
    ("value", "text"),
    [("dark red", "dark-red"), ("EU, pierced parts", "eu-pierced-parts"), (37.0, "37"),
     (0.5, "0.5"), ("any", "any"), ("600-e0.1", "600-e0.1")],
)  # fmt: skip
def test_basis_text(value: str | float, text: str) -> None:
    assert basis_text(value) == text


@given(
    st.dictionaries(
        st.sampled_from([key for key in BASIS_KEYS if key != "reduction"]),
        st.from_regex(r"[a-z]{1,6}( [a-z]{1,6})?", fullmatch=True),
    )
)
def test_a_figure_is_found_by_its_own_address_and_by_any_part_of_it(basis: dict[str, str]) -> None:
    figure = Figure(value=1, unit="mm", how="practice", **basis)
    full = address("a/b", "size", figure.basis())
    assert matching(full, [*KNOWN, full]) == [full]
    for key in figure.basis():
        part = address("a/b", "size", {key: figure.basis()[key]})
        assert matching(part, [*KNOWN, full]) == [full]
