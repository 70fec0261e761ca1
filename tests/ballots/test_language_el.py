"""Greek comments, as people write them, read as any fair reader would."""

from __future__ import annotations

import pytest

from tests.ballots.heard import heard

GREEK = {
    "a page and please": ("σελίδα 42 παρακαλώ", "counts 42"),
    "a vote": ("Ψηφίζω το 17!", "counts 17"),
    "the article alone": ("την 33 για μένα, ευχαριστώ", "counts 33"),
    "a page word cut short": ("σελ. 8", "counts 8"),
    "a number word": ("σαράντα δύο", "counts 42"),
    "capitals have no accents": ("ΕΙΚΟΣΙ ΕΠΤΑ", "counts 27"),
    "accents dropped": ("πενηντα εξι παρακαλω", "counts 56"),
    "eight as it is spoken": ("τριάντα οχτώ", "counts 38"),
    "a choice in words": ("Διαλέγω το εξήντα τρία", "counts 63"),
    "an ordinal": ("δωδέκατη σελίδα παρακαλώ", "counts 12"),
    "the last page": ("τελευταία σελίδα!", "counts 63"),
    "the first page": ("πρώτη σελίδα", "counts 1"),
    "a corner": ("πάνω δεξιά γωνία", "counts 9"),
    "a corner unsaid": ("κάτω αριστερά", "counts 55"),
    "the very middle": ("ακριβώς στη μέση", "counts 32"),
    "a correction": ("12... όχι όχι, 21", "counts 21"),
    "one ruled out": ("όχι το 13, το 31", "counts 31"),
    "an age beside": ("είμαι 56 χρονών, βάλε το 9", "counts 9"),
    "a lucky number": ("Ο τυχερός μου αριθμός είναι το 7", "counts 7"),
    "in Latin letters": ("selida 42 parakalo", "counts 42"),
    "a number word in Latin letters": ("saranta dyo, efxaristo!", "counts 42"),
    "begin with": ("Ξεκίνα από το 19", "counts 19"),
    "a greeting from home": ("Καλησπέρα από την Κρήτη! 24 😊", "counts 24"),
    "a number": ("το νούμερο 51 παρακαλώ", "counts 51"),
    "I say": ("εγώ λέω 45", "counts 45"),
    "how about, with the Greek question mark": ("Τι λέτε για το 48;", "counts 48"),
    "do it": ("να κάνεις τη 22", "counts 22"),
    "years beside": ("Κεντάω 3 χρόνια. Η σελίδα μου είναι η 14", "counts 14"),
    "number cut short": ("αρ. 29", "counts 29"),
    "either of two": ("12 ή 13", "look 12 13"),
    "a question with the Greek question mark": ("το 42 είναι πιασμένο;", "look 42"),
    "a range": ("μεταξύ 20 και 30", "look"),
    "pointing": ("ό,τι είπε η Μαρία", "look"),
    "the husband's": ("ο άντρας μου λέει 15", "look 15"),
    "about there": ("γύρω στο 40", "look 40"),
    "years of stitching": ("κεντάω 20 χρόνια", "none no-page"),
    "any page": ("όποια θέλεις", "none no-page"),
    "left to the host": ("ό,τι να 'ναι, διάλεξε εσύ", "none no-page"),
    "taken back": ("ακυρώστε την ψήφο μου", "none withdrawn"),
    "no such page": ("σελίδα 99", "none off-chart"),
    "cats and pieces": ("έχω 3 γάτες και 5 εργόχειρα", "none no-page"),
    "all but one": ("εκτός από το 13", "none no-page"),
    "the hour": ("στις 8 το βράδυ με τον καφέ μου", "none no-page"),
}


@pytest.mark.parametrize(("text", "said"), GREEK.values(), ids=GREEK)
def test_a_greek_comment_is_read(text: str, said: str) -> None:
    assert heard(text) == said
