"""Puts a new folder in the place of an old one in a single step, so that nothing built is ever
lost."""

from __future__ import annotations

import ctypes
import os
import shutil
import tempfile
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

_RENAME_EXCHANGE = 2
_AT_FDCWD = -100


@contextmanager
def replacing(target: Path) -> Iterator[Path]:
    """An empty folder beside `target` to build in; it takes the target's place if nothing is
    raised."""
    target = target.absolute()
    target.parent.mkdir(parents=True, exist_ok=True)
    _recover(target)
    fresh = Path(tempfile.mkdtemp(prefix=f".{target.name}-new-", dir=target.parent))
    fresh.chmod(0o755)
    try:
        yield fresh
        _put(fresh, target)
    finally:
        shutil.rmtree(fresh, ignore_errors=True)
        _recover(target)


def _put(fresh: Path, target: Path) -> None:
    if not target.exists():
        fresh.rename(target)
    elif not _exchanged(fresh, target):
        old = _old(target)
        target.rename(old)
        fresh.rename(target)
        shutil.rmtree(old, ignore_errors=True)


def _exchanged(one: Path, other: Path) -> bool:
    """Whether Linux exchanged the two names at once."""
    try:
        renameat2 = ctypes.CDLL(None, use_errno=True).renameat2
    except (OSError, AttributeError):
        return False
    names = (os.fsencode(one), os.fsencode(other))
    return bool(renameat2(_AT_FDCWD, names[0], _AT_FDCWD, names[1], _RENAME_EXCHANGE) == 0)


def _old(target: Path) -> Path:
    return target.with_name(f".{target.name}-old")


def _recover(target: Path) -> None:
    """Mends what was stopped between the two renames."""
    old = _old(target)
    if old.exists() and not target.exists():
        old.rename(target)
    elif old.exists():
        shutil.rmtree(old, ignore_errors=True)
