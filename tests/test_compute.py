"""`temperbook compute`: answers in words and as JSON, and what it says to a wrong question."""

from __future__ import annotations

import json
import math

import pytest
from click.testing import CliRunner, Result

from temperbook.cli import main
from temperbook.metal import register
from temperbook.paths import Project
from temperbook.views import formulas


def compute(*words: str) -> Result:
    return CliRunner().invoke(main, ["compute", *words])


def answered(*words: str) -> dict[str, dict[str, float]]:
    result = compute(*words, "--json")
    assert result.exit_code == 0, result.output
    outputs: dict[str, dict[str, float]] = json.loads(result.output)["outputs"]
    return outputs


def test_the_list_names_every_formula() -> None:
    text = compute().output
    listed = json.loads(compute("--json").output)
    assert [entry["formula"] for entry in listed] == list(register.FORMULAS)
    for formula in register.FORMULAS:
        assert f"\n{formula} " in f"\n{text}"


def test_words_and_json_say_the_same() -> None:
    words = ("reduction", "from=round 1.0", "to=round 0.4")
    text = compute(*words).output
    outputs = answered(*words)
    assert outputs["area"] == {"value": pytest.approx(84), "unit": "percent"}
    assert outputs["true-strain"]["value"] == pytest.approx(2 * math.log(2.5))
    assert "84 percent" in text
    assert "60 percent" in text


def test_units_are_converted() -> None:
    """An inch is 25.4 mm and 1200 degF are 648.9 degC: definitions."""
    inches = answered("grains-across", "diameter=1in", "grain-size=25.4um")
    assert inches["number"]["value"] == pytest.approx(1000)
    hot = answered("brightness-temperature", "temperature=1200degF", "emissivity=1")
    assert hot["temperature"]["value"] == pytest.approx(648.889, abs=0.001)
    per_cent = answered("reduction-basis", "value=60%", "of=diameter", "section=round")
    assert per_cent["area"]["value"] == pytest.approx(84)


def test_an_alloy_stands_for_its_density() -> None:
    outputs = answered("mass", "alloy=sterling", "section=square 6", "length=60")
    assert outputs["mass"]["value"] == pytest.approx(10.36 * 36 * 60 / 1000)


def test_gauges_and_units_in_sections() -> None:
    """18 AWG is 1.024 mm; an inch 25.4 mm: definitions."""
    outputs = answered("reduction", "from=round 18awg", "to=round 0.512mm")
    assert outputs["diameter"]["value"] == pytest.approx(50)
    flat = answered("reduction", "from=flat 1in x 0.1in", "to=flat 25.4 x 1.27")
    assert flat["thickness"]["value"] == pytest.approx(50)


def test_the_json_has_one_form() -> None:
    """{"formula", "inputs", "outputs": {name: {"value", "unit"}}, "notes": [{"id", "text"}]}."""
    words = ("mass", "alloy=sterling", "section=round 0.04in", "length=10in", "--json")
    found = json.loads(compute(*words).output)
    assert list(found) == ["formula", "inputs", "outputs", "notes"]
    assert found["inputs"] == {
        "alloy": "silver/sterling-925",
        "section": "round 1.016",
        "length": pytest.approx(254),
    }
    units = {name: output["unit"] for name, output in found["outputs"].items()}
    assert units == {"mass": "g", "troy-ounces": "ozt", "pennyweights": "dwt"}
    assert [note["id"] for note in found["notes"]] == ["density"]


def test_outputs_that_are_no_numbers() -> None:
    outputs = answered("heat-colour", "temperature=1400degF")
    assert outputs["in-gamut"] == {"value": False, "unit": ""}
    assert outputs["hex"]["value"].startswith("#")
    assert len(outputs["seen-as"]["value"]) > 3
    text = compute("heat-colour", "temperature=760").output
    assert "in-gamut           no" in text
    assert "Chapman, workshop ranges: dark red" in text
    sizes = answered("draw-schedule", "from=1", "to=0.5", "per-draw=50")["sizes"]
    assert sizes == {"value": [pytest.approx(0.5**0.5), 0.5], "unit": "mm"}


def test_hardness_in_the_unit_of_its_scale() -> None:
    words = ("temper", "alloy=sterling", "reduction=21", "of=thickness", "form=sheet")
    assert answered(*words)["hardness-low"] == {"value": pytest.approx(90), "unit": "HV"}
    assert answered(*words)["temper"] == {"value": "half-hard", "unit": ""}


def test_nearest_legal_standards_are_a_note() -> None:
    text = compute("fineness", "carat=18").output
    assert "Highest legal standard that it reaches: 750" in text


@pytest.mark.parametrize("formula", register.FORMULAS)
def test_every_example_may_be_typed(formula: str) -> None:
    words = [f"{name}={text}" for name, text in formulas.typed(register.FORMULAS[formula]).items()]
    found = json.loads(compute(formula, *words, "--json").output)
    assert found["outputs"].keys() >= register.FORMULAS[formula].expected.keys()
    assert all({"id", "text"} == note.keys() for note in found["notes"])


def test_broken_records_are_told_and_exit_with_one(small: Project) -> None:
    (small.data / "elements" / "Cu.yaml").write_text("id: [\n", encoding="utf-8")
    words = ["--project", str(small.root), "compute", "density", "composition=Cu 100"]
    result = CliRunner().invoke(main, words)
    assert result.exit_code == 1
    assert "data/elements/Cu.yaml" in result.output


def test_a_note_goes_with_its_answer() -> None:
    example = register.FORMULAS["roll-force"].example
    words = [f"{key}={value}" for key, value in example.items()]
    found = json.loads(compute("roll-force", *words, "--json").output)
    assert found["notes"] == [{"id": "formula", "text": register.FORMULAS["roll-force"].note}]
    assert "underestimates" in compute("roll-force", *words).output


@pytest.mark.parametrize(
    ("words", "said"),
    [
        (("spring",), "no formula is called `spring`"),
        (("reductoin",), "did you mean `reduction`"),
        (("reduction", "from=round 1"), "missing: to"),
        (("reduction", "from"), "`from` is not key=value"),
        (("reduction", "from= ", "to=round 1"), "is not key=value"),
        (("reduction", "from=round 1", "from=round 2"), "from is given twice"),
        (("reduction", "from=round 1", "to=round 2"), "is larger than"),
        (("grains-across", "diameter=1degC", "grain-size=0.05"), "is no mm"),
        (("grains-across", "diameter=1furlong", "grain-size=0.05"), "unknown unit"),
        (("max-draft", "roll-radius=60", "friction=0.1mm"), "is no plain number"),
        (("mass", "alloy=stirling", "section=square 6", "length=60"), "not the name of one alloy"),
        (("mass", "section=square 6", "length=60"), "needed: one of (alloy | density)"),
        (("mass", "alloy=sterling", "section=round 99awg", "length=60"), "no number `99`"),
        (("mass", "density=nan", "section=square 6", "length=60"), "density is a plain number"),
        (("mass", "density=1e400", "section=square 6", "length=60"), "unknown unit"),
        (("mass", "density=10", "section=square 0", "length=60"), "has a size of zero"),
        (("melt-charge", "alloy=sterling", "mass=1", "crop=100", "scalp=0", "loss=0"), "crop lies"),
        (("gauge", "system=cwg", "number=18"), "system is awg, swg or bwg, not `cwg`"),
        (("ring-size", "system=us", "size=big"), "is no size of this system"),
        (("fineness", "carat=25"), "at most at 24"),
        (("heat-colour", "temperature=20"), "between 300 and 3000"),
        (
            ("temper", "alloy=sterling", "reduction=90", "of=thickness", "form=sheet"),
            "ends at 60.0 percent of the area",
        ),
        (("draw-schedule", "from=1", "to=0.5", "per-draw=20", "holes=a,b"), "holes are sizes"),
        (("brightness-temperature", "temperature=600", "emissivity=0.1", "find=maybe"), "true or"),
    ],
)
def test_a_wrong_question_is_told_what_would_do(words: tuple[str, ...], said: str) -> None:
    result = compute(*words)
    assert result.exit_code == 2
    assert said in result.output
