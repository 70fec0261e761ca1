"""Loopstart: a mystery chart stitched page by page, its pages chosen by the viewers' votes."""
