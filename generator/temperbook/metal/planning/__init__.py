"""The working plan: from one section to another with the fewest anneals that the metal allows."""
