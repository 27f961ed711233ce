"""Pure functions of the subject on floats in declared units. No files, no records, no words."""
