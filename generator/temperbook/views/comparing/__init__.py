"""Pages that set alloys beside each other to answer one question of the bench."""
