"""Markup and files. Templates stand beside the module that fills them; they only draw what they
get."""
