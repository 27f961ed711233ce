"""Typst: the one way to paper. Data reach it as JSON, never by building source text."""
