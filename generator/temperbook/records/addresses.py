"""Finds figures by address. A call may leave out basis keys as long as one figure alone fits."""

from __future__ import annotations

from collections.abc import Iterable


def split(call: str) -> tuple[str, dict[str, str]]:
    """`silver/x#anneal@heat=torch` as its stem `silver/x#anneal` and its keys."""
    stem, _, keys = call.partition("@")
    pairs = (pair.partition("=") for pair in keys.split(",") if pair)
    return stem, {key.strip(): value.strip() for key, _, value in pairs}


def matching(call: str, known: Iterable[str]) -> list[str]:
    """The full addresses that a call fits: the very address, else all that have the call's keys."""
    stem, keys = split(call)
    found = []
    for address in known:
        if address == call:
            return [address]
        if not address.startswith(stem):  # most are of another figure: this alone tells them apart
            continue
        other_stem, other_keys = split(address)
        if other_stem == stem and keys.items() <= other_keys.items():
            found.append(address)
    return found
