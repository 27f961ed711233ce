"""One page of each kind, and the longest of each, as they come from the records."""

from __future__ import annotations

from outputs.building import ROOT

SECTIONS = [
    "",
    "alloys/",
    "when-it-cracks/",
    "heat-colours/",
    "reduction/",
    "work-it-out/",
    "routes/",
    "cautions/",
    "wall-charts/",
    "reading-packs/",
    "formulas/",
    "glossary/",
    "sources/",
    "how-we-choose/",
]
RECORDS = [
    "compare/hardening/",
    "solders/silver/bag-7/",
    "steps/roll/",
    "when-it-cracks/edge-cracks/",
    "alloys/silver/sterling-925/",
    "subjects/system/ag-cu/",
    "elements/Cu/",
    "heat-colours/howe/",
    "cautions/pickle-acid/",
    "work-it-out/reduction/",
    "work-it-out/plan/",
    "sources/nist-agcu/",
    "wall-charts/anneal/",
    "reading-packs/first-week/",
    "routes/sterling-sheet/",
]
EACH_KIND = [*SECTIONS, *RECORDS]
# What tends to break a narrow page: the longest tables, names and numbers of each kind.
LONGEST = [
    "compare/anneals/",
    "steps/",
    "compare/",
    "tables/",
    "solders/",
    "compare/cooling/",
    "when-it-cracks/order-embrittlement/",
    "steps/why-metal-cracks/",
    "alloys/copper/phosphor-bronze/",
    "alloys/copper/tough-pitch/",
    "alloys/gold/18ct-nickel-white/",
    "subjects/family/platinum-alloys/",
    "subjects/bench/pickle/",
    "sources/rio-grande-silver-hardness/",
    "work-it-out/draw-margin/",
    "work-it-out/rolled-length/",
    "routes/copper-wire/",
    "no/such/page/",
]
ALLOYS = [
    f"alloys/{path.relative_to(ROOT / 'data/alloys').with_suffix('').as_posix()}/"
    for path in sorted((ROOT / "data/alloys").rglob("*.yaml"))
]
