"""What the tests ask a page in the browser about itself."""

from __future__ import annotations

import re
from collections.abc import Callable
from dataclasses import dataclass, field
from typing import Any

# Texts that are cut by the left or right edge of the window, and elements that stand out of it.
# Left out: what is hidden from sight on purpose, and what scrolls by itself.
BEYOND = """() => {
  const wide = document.documentElement.clientWidth;
  const unseen = (e) => {
    for (let it = e; it && it !== document.body; it = it.parentElement) {
      const s = getComputedStyle(it);
      if (s.visibility === "hidden" || s.display === "none") return true;
      if (s.clipPath.startsWith("inset(50%")) return true;
      if (it.matches(".skip, dialog:not([open]), [popover]:not(:popover-open)")) return true;
      if (["auto", "scroll"].includes(s.overflowX)) return true;
    }
    return false;
  };
  const beyond = (b) => b.width > 0 && (b.right > wide + 0.5 || b.left < -0.5);
  const wrong = [];
  const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
  while (walker.nextNode()) {
    const node = walker.currentNode;
    if (!node.data.trim() || unseen(node.parentElement)) continue;
    const range = document.createRange();
    range.selectNodeContents(node);
    for (const box of range.getClientRects())
      if (beyond(box)) wrong.push(node.data.trim().slice(0, 60));
  }
  const parts = "img, svg, table, input, button, figure, dl, ul";
  for (const e of document.body.querySelectorAll(parts)) {
    if (beyond(e.getBoundingClientRect()) && !unseen(e))
      wrong.push(`<${e.tagName} ${e.className.baseVal ?? e.className}>`);
  }
  return [...new Set(wrong)];
}"""


@dataclass
class Visit:
    """A page in the browser, with everything that happened on it."""

    page: Any
    context: Any
    said: list[str] = field(default_factory=list)
    asked: list[str] = field(default_factory=list)
    failed: list[str] = field(default_factory=list)

    def complaints(self) -> list[str]:
        """Errors on the console, exceptions, refusals of the content policy, files not found."""
        return [*self.said, *self.failed, *self.page.evaluate("window.refused ?? []")]


Open = Callable[..., Visit]


@dataclass(frozen=True)
class Box:
    """Where something stands in the window [px]."""

    left: float
    top: float
    right: float
    bottom: float


def box(page: Any, selector: str) -> Box:
    """The box of the first such element. Errors: AssertionError where there is none to be seen."""
    found = page.locator(selector).first.bounding_box()
    assert found, f"{selector} is not to be seen"
    return Box(found["x"], found["y"], found["x"] + found["width"], found["y"] + found["height"])


def style(page: Any, selector: str, name: str) -> str:
    """A computed style of the first such element."""
    found: str = page.locator(selector).first.evaluate(
        "(e, name) => getComputedStyle(e).getPropertyValue(name)", name
    )
    return found


def luminance(colour: str) -> float:
    """Relative luminance of `rgb(…)`."""
    numbers = [float(n) for n in re.findall(r"[\d.]+", colour)]
    assert len(numbers) == 3 or numbers[3] == 1, f"{colour} lets something shine through"
    red, green, blue = (
        c / 12.92 if c <= 0.04045 else ((c + 0.055) / 1.055) ** 2.4
        for c in (n / 255 for n in numbers[:3])
    )
    return 0.2126 * red + 0.7152 * green + 0.0722 * blue


def contrast(one: str, other: str) -> float:
    """How far two colours stand apart, 1 to 21."""
    low, high = sorted((luminance(one), luminance(other)))
    return (high + 0.05) / (low + 0.05)


def background(page: Any, selector: str) -> str:
    """The colour behind the first such element: its own or that of what it stands on."""
    found: str = page.locator(selector).first.evaluate("""(e) => {
      for (let it = e; it; it = it.parentElement) {
        const colour = getComputedStyle(it).backgroundColor;
        if (colour !== "rgba(0, 0, 0, 0)") return colour;
      }
      return "rgb(255, 255, 255)";
    }""")
    return found
