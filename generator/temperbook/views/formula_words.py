"""What the forms of the formulas say: by subject, the question that each answers, its outputs."""

from __future__ import annotations

from temperbook.metal import register

# Formulas by subject, in the order in which a bench asks; one that is not named comes last.
SUBJECTS = {
    "Reduction, length, mass": ("reduction", "reduction-basis", "rolled-length", "mass"),
    "Composition and charge": (
        "melt-charge",
        "alloying",
        "change-fineness",
        "fineness",
        "density",
        "atomic-percent",
    ),
    "Heat": ("heat-to-melt", "heat-colour", "brightness-temperature", "anneal-equivalent"),
    "Rolling": ("max-draft", "roll-force", "temper"),
    "Drawing and wire": (
        "draw-schedule",
        "draw-margin",
        "breaking-load",
        "grains-across",
        "draw-force",
        "delta-factor",
    ),
    "Sizes": ("gauge", "ring-size", "ring-blank"),
}
OTHERS = "More"

ANSWERS = {
    "reduction": "How much metal is gone between two sections, on each basis that they have.",
    "reduction-basis": "What a percentage of one measure is of the others.",
    "rolled-length": "How long a piece becomes when its section is worked down.",
    "mass": "What a length of stock weighs.",
    "melt-charge": "How much to melt, and of which metal, for a finished mass.",
    "alloying": "What to add to the metal in hand for the composition that you want.",
    "change-fineness": "What to add for a lower or a higher fineness.",
    "fineness": "What a carat is in parts per thousand, and which standards are nearest.",
    "density": "How dense an alloy is, as far as mixing tells.",
    "atomic-percent": "What shares by mass are when atoms are counted.",
    "heat-to-melt": "How much heat goes into the metal from cold to pouring.",
    "heat-colour": "What colour and how bright a heat glows, and what observers call it.",
    "brightness-temperature": "How much cooler bright metal looks than it is.",
    "anneal-equivalent": "How long an anneal takes at another temperature, about.",
    "max-draft": "How much thickness the rolls can take in one pass before they slip.",
    "roll-force": "How hard the metal pushes the rolls apart, at least.",
    "temper": "What temper or hardness a last reduction leaves, by the alloy's own table.",
    "draw-schedule": "Which holes lead from one diameter to another, in the fewest draws.",
    "draw-margin": "How much strength a fine wire has left when it leaves the hole.",
    "breaking-load": "What load breaks a wire.",
    "grains-across": "How many grains lie across a wire.",
    "draw-force": "How hard a draw pulls, and what stress the wire bears.",
    "delta-factor": "Whether a die and a draw strain the middle of the wire.",
    "gauge": "What a gauge number is in millimetres, or which number is nearest.",
    "ring-size": "What a ring size measures inside.",
    "ring-blank": "How long a strip to cut for a ring.",
}

# Labels of outputs, for a formula or for all; any other is its name with a capital.
OUTPUTS = {
    "area": "Off the area",
    "thickness": "Off the thickness",
    "diameter": "Off the diameter",
    "length-ratio": "Length, as a multiple",
    "troy-ounces": "In troy ounces",
    "pennyweights": "In pennyweights",
    "charge": "To melt",
    "least-metal-added": "To add, altogether",
    "add": "To add",
    "draft": "Greatest draft",
    "load-kgf": "In kilogram-force",
    "x": "Chromaticity x",
    "y": "Chromaticity y",
    "hex": "Colour on a screen",
    "in-gamut": "A screen can show its hue",
    "draw-margin draw-stress": "Draw stress, as drawn",
    "draw-stress-annealed": "Draw stress, annealed first",
    "strength-used": "Strength that the draw uses",
    "draw-margin breaking-load": "Breaking load, as drawn",
    "breaking-load-annealed": "Breaking load, annealed first",
    "draw-margin draw-force": "Pull of the draw, as drawn",
    "draw-force-annealed": "Pull of the draw, annealed first",
    "nick-share": "What a nick takes of the section",
    "nick-load": "What a nick takes, as drawn",
    "nick-load-annealed": "What a nick takes, annealed first",
    "hardness": "Hardness, about",
    "hardness-low": "Hardness, at least",
    "hardness-high": "Hardness, at most",
    "temper": "Temper reached",
    "next-temper": "Next temper",
    "to-solidus": "Up to the solidus",
    "melting": "To melt it",
    "superheat": "Above the liquidus",
    "heat": "Altogether",
    "nearest": "Nearest number",
    "difference": "Thicker than that by",
    "seen-as": "What observers call it",
    "delta": "Delta",
    "density": "Density",
    "anneal-equivalent time": "Time at the other temperature",
    "grains-across number": "Grains across",
    "gauge mm": "In millimetres",
    "gauge in": "In inches",
}

# How a field is written, where its kind does not say it.
HINTS = {
    "gauge number": "18, 0 or 2/0",
    "ring-size size": "54, 7 1/2 or L 1/2",
    "ring-blank size": "54, 7 1/2 or L 1/2",
    "plan start": "Left open: annealed",
    "used start": "Left open: annealed",
    "plan temper": "Left open: as it comes from the last run",
    "backward temper": "Left open: as it comes from the last run",
    "backward anneals": "Left empty: 1",
    "plan process": "Left open: follows from the sections",
    "used process": "Left open: follows from the sections",
    "backward process": "Left open: follows from the sections",
}

# Outputs that people look for, before the others.
FIRST = {"heat-colour": ("seen-as", "hex")}


def subject_of(formula_id: str) -> str:
    """The subject that a formula stands under."""
    return next((title for title, ids in SUBJECTS.items() if formula_id in ids), OTHERS)


def subjects() -> dict[str, list[str]]:
    """Ids of all formulas by subject."""
    found = {title: [i for i in ids if i in register.FORMULAS] for title, ids in SUBJECTS.items()}
    others = [i for i in register.FORMULAS if subject_of(i) == OTHERS]
    return {title: ids for title, ids in {**found, OTHERS: others}.items() if ids}


def answers(formula_id: str) -> str:
    """What a formula answers, in a sentence; its label where none is written."""
    return ANSWERS.get(formula_id, f"{register.FORMULAS[formula_id].label}.")


def output(formula_id: str, name: str) -> str:
    """The label of an output: `Off the area`, `True strain`."""
    said = OUTPUTS.get(f"{formula_id} {name}") or OUTPUTS.get(name)
    return said or name.replace("-", " ").capitalize()
