"""Lets `python -m temperbook` do what the `temperbook` command does."""

from temperbook.cli import main

if __name__ == "__main__":
    main()
