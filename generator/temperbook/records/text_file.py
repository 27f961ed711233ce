"""Reads a text file whole, or says why it cannot be read."""

from __future__ import annotations

from pathlib import Path

from temperbook.problems import Problem


def read(path: Path, shown: str) -> tuple[str, Problem | None]:
    """The text of a file, without a byte-order mark; where it cannot be read, a problem beside
    it."""
    try:
        # Spreadsheets and some editors put a byte-order mark first; utf-8-sig takes it off.
        return path.read_text(encoding="utf-8-sig"), None
    except UnicodeDecodeError as error:
        before = error.object[: error.start]
        return "", Problem(
            shown,
            before.count(b"\n") + 1,
            "is not text in UTF-8",
            found=f"byte 0x{error.object[error.start]:02x}",
            needed="a file saved as UTF-8",
            mend="save it again as UTF-8 in your editor or spreadsheet",
        )
    except OSError as error:
        return "", Problem(
            shown,
            0,
            "cannot be read",
            found=error.strerror or str(error),
            needed="a file that you may read",
            mend="look at its name, owner and permissions",
        )
