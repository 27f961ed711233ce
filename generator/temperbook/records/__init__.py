"""Read, validate and link the records. No arithmetic on the subject, no layout."""
