"""The contrast formula that the pictures are measured by, against values that W3C prints.

WCAG 2.2 (W3C, 2023), definitions "relative luminance" and "contrast ratio"; Understanding success
criterion 1.4.3 prints some of these, the greys are the known edges of 4.5, 3 and 7 to 1.
"""

from __future__ import annotations

import pytest

from tests.announce.wcag import contrast


@pytest.mark.parametrize(
    ("one", "other", "ratio"),
    [
        ("#000000", "#FFFFFF", 21.0),
        ("#767676", "#FFFFFF", 4.5422),
        ("#777777", "#FFFFFF", 4.4781),
        ("#949494", "#FFFFFF", 3.0335),
        ("#959595", "#FFFFFF", 2.9953),
        ("#595959", "#FFFFFF", 7.0047),
        ("#0000FF", "#FFFFFF", 8.5925),
        ("#FF0000", "#FFFFFF", 3.9985),
        ("#FFFFFF", "#FFFFFF", 1.0),
    ],
)
def test_the_formula_gives_the_published_ratios(one: str, other: str, ratio: float) -> None:
    assert contrast(one, other) == pytest.approx(ratio, abs=0.0001)
    assert contrast(other, one) == contrast(one, other)
