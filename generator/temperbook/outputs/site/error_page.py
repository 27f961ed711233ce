"""What `temperbook serve` shows while the records have problems."""

from __future__ import annotations

from html import escape

from temperbook.problems import DataProblems


def error_page(problems: DataProblems) -> str:
    """The problems as a page, in the words of the terminal."""
    listed = "".join(f"<li><pre>{escape(str(problem))}</pre></li>" for problem in problems.problems)
    return (
        f"<h1>{escape(problems.summary())}</h1>"
        "<p>The handbook is made again as soon as a file is saved.</p>"
        f'<ol class="problems">{listed}</ol>'
    )
