"""Contrast by the formula of WCAG 2.2 (W3C), definitions of relative luminance and contrast ratio."""

from __future__ import annotations


def luminance(colour: str) -> float:
    """The relative luminance of a colour such as "#767676"."""
    red, green, blue = (int(colour[at : at + 2], 16) / 255 for at in (1, 3, 5))
    return 0.2126 * _linear(red) + 0.7152 * _linear(green) + 0.0722 * _linear(blue)


def contrast(one: str, other: str) -> float:
    """The contrast ratio of two colours, from 1 to 21."""
    darker, lighter = sorted((luminance(one), luminance(other)))
    return (lighter + 0.05) / (darker + 0.05)


def _linear(part: float) -> float:
    return part / 12.92 if part <= 0.04045 else ((part + 0.055) / 1.055) ** 2.4
