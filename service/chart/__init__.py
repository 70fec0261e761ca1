"""The printed chart as a grid of pages: numbering, joined pages, which pages are votable."""
