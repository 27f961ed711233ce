"""Compiles one Typst document: a request as JSON on standard input, the document's files in its
folder.

Run as a script by `compile.py`. Any warning of the compiler is an error, told on standard error,
exit 1.
"""

from __future__ import annotations

import json
import sys
from pathlib import Path
from typing import Any


def run(request: dict[str, Any]) -> str:
    """Writes the files `0000`, `0001`, ...; gives what the compiler warned of, or an empty text."""
    import typst

    try:
        made, told = typst.compile_with_warnings(
            request["template"],
            root=request["root"],
            font_paths=[request["fonts"]],
            ignore_system_fonts=True,
            format=request["format"],
            ppi=request["ppi"],
            sys_inputs={"data": json.dumps(request["data"], ensure_ascii=False)},
            timestamp=request["timestamp"],
        )
    except Exception as error:
        return str(error) or repr(error)
    for number, content in enumerate([made] if isinstance(made, bytes) else made):
        (Path(request["folder"]) / f"{number:04}").write_bytes(content)
    return "; ".join(str(warning) for warning in told)


if __name__ == "__main__":
    sys.exit(run(json.load(sys.stdin)) or None)
