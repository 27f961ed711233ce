# SPDX-License-Identifier: MIT
"""Temperbook: from records of alloys to a handbook, wall charts and reading packs."""
