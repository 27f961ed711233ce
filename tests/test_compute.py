"""`temperbook compute`: answers in words and as JSON, and what it says to a wrong question."""

from __future__ import annotations

import json
import math

import pytest
from click.testing import CliRunner, Result

from temperbook.cli import main
from temperbook.metal import register
from temperbook.views import typed


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
        (("reduction", "from=round 1", "from=round 2"), "from is given twice"),
        (("reduction", "from=round 1", "to=round 2"), "is larger than"),
        (("grains-across", "diameter=1degC", "grain-size=0.05"), "is no mm"),
        (("grains-across", "diameter=1furlong", "grain-size=0.05"), "unknown unit"),
        (("max-draft", "roll-radius=60", "friction=0.1mm"), "is no plain number"),
        (("mass", "alloy=stirling", "section=square 6", "length=60"), "not the name of one alloy"),
        (("draw-schedule", "from=1", "to=0.5", "per-draw=20", "holes=a,b"), "holes are sizes"),
        (("brightness-temperature", "temperature=600", "emissivity=0.1", "find=maybe"), "true or"),
    ],
)
def test_a_wrong_question_is_told_what_would_do(words: tuple[str, ...], said: str) -> None:
    result = compute(*words)
    assert result.exit_code == 2
    assert said in result.output


@pytest.mark.parametrize(
    ("text", "unit", "value"),
    [
        ("5", "mm", 5.0),
        ("-3.5", "degC", -3.5),
        ("2 in", "mm", 50.8),
        ("round 1.0", "section (mm)", "round 1.0"),
        ("area", "thickness | diameter | area", "area"),
    ],
)
def test_what_people_type(text: str, unit: str, value: object) -> None:
    assert typed.value(text, unit) == (pytest.approx(value) if isinstance(value, float) else value)
