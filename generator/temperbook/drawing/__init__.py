"""Views become shapes in millimetres: scales, grain pictures, sections, sheets. No markup, no
files."""
