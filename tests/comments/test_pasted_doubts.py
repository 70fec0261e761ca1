"""Pasted pages where lines can be taken for one another: what is kept, and what is shown."""

from __future__ import annotations

import pytest

from tests.comments.conftest import Read


@pytest.mark.parametrize(
    ("words", "text"),
    [
        pytest.param("20", "20", id="a number alone"),
        pytest.param("27\n4", "27", id="a number and its likes"),
        pytest.param("8\n8", "8", id="the same number twice"),
        pytest.param("7\n14\n21\n3", "7\n14\n21", id="several numbers"),
        pytest.param("12 please\n1.2K", "12 please", id="many likes"),
        pytest.param("12 please\n1,204", "12 please", id="a count with a comma"),
        pytest.param("12 please\n👍 3", "12 please", id="a thumb"),
        pytest.param("12\n14\nTranslate\n3", "12\n14", id="numbers above a button"),
        pytest.param("12\nShow more\n3", "12", id="a number above a button"),
    ],
)
def test_a_number_below_the_words_is_a_count_where_the_page_counts(
    read: Read, words: str, text: str
) -> None:
    rest = "".join(
        f"{name}\n2 days ago\nhello\n{name_count}\nReply\n"
        for name, name_count in [("A", 3), ("B", 14), ("C", "2K")]
    )
    export = read(f"Gran T\n5 days ago\n{words}\nReply\n{rest}")
    assert export.comments[0].text == text
    assert export.unreadable == ()


def test_numbers_that_may_be_the_writer_s_are_listed(read: Read) -> None:
    rest = "".join(f"{name}\n2 days ago\n9 please\n2K\nReply\n" for name in "ABC")
    export = read(f"Gran T\n5 days ago\nhello\n14\nReply\n{rest}")
    assert any("line 4 (14)" in note for note in export.notes)


@pytest.mark.parametrize(
    "page",
    [
        pytest.param(
            "Gran T\n5 days ago\nMy vote is\n14\nReply\n", id="a page that shows no counts"
        ),
        pytest.param(
            "Gran T\n5 days ago\nMy vote:\n14\nReply\nA\n2 days ago\nhi\n2K\nReply\n",
            id="words that lead up to the number",
        ),
    ],
)
def test_a_number_that_cannot_be_told_apart_is_shown(read: Read, page: str) -> None:
    export = read(page)
    assert "14" not in export.comments[0].text
    assert [(one.place, one.text) for one in export.unreadable] == [("line 4", "14")]
    assert "the writer may have meant it" in export.unreadable[0].why


def test_two_numbers_that_cannot_be_told_apart_are_shown_and_not_counted(read: Read) -> None:
    """The second may be a second page or a count of likes: neither is decided."""
    export = read("Gran T\n5 days ago\n7\n14\nReply\nAnnie\n2 days ago\n8 please\nReply\n")
    assert [(one.author, one.text) for one in export.comments] == [("Annie", "8 please")]
    [shown] = export.unreadable
    assert (shown.place, shown.text) == ("line 1", "7 / 14")
    assert "by Gran T" in shown.why
    assert "cannot be told" in shown.why


def test_numbers_in_doubt_do_not_speak_for_each_other(read: Read) -> None:
    page = "".join(
        f"{name}\n2 days ago\n7\n{count}\nReply\n"
        for name, count in zip("ABCD", "1234", strict=True)
    )
    export = read(page)
    assert export.comments == ()
    assert [one.text for one in export.unreadable] == ["7 / 1", "7 / 2", "7 / 3", "7 / 4"]


def test_a_number_below_all_words_is_a_count(read: Read) -> None:
    """A page that shows a number below words that need none shows one below all."""
    page = "".join(
        f"{name}\n2 days ago\n{said}\n{count}\nReply\n"
        for name, said, count in [("A", "7", 1), ("B", "12 please", 0), ("C", "8", 2)]
    )
    export = read(page)
    assert [one.text for one in export.comments] == ["7", "12 please", "8"]
    assert export.unreadable == ()


def test_words_that_read_like_a_time_stay_words(read: Read) -> None:
    page = (
        "Gran T\n2 days ago\nI told my sister\nyesterday\nand she says 12\n4\nReply\n"
        "Annie\n2 days ago\nyesterday\nReply\n"
        "Bo\n1 day ago\n30 years ago\nI stitched 44\nReply\n"
    )
    export = read(page)
    assert [(one.author, one.text) for one in export.comments] == [
        ("Gran T", "I told my sister\nyesterday\nand she says 12"),
        ("Annie", "yesterday"),
        ("Bo", "30 years ago\nI stitched 44"),
    ]
    assert any("read like a time" in note and "line 4" in note for note in export.notes)


def test_words_that_look_like_buttons_are_shown_and_never_make_a_vote(read: Read) -> None:
    page = (
        "Gran T\n5 days ago\nReply\nReply\n"
        "Annie\n4 days ago\nTranslate\n2\nReply\n"
        "Cy\n4 days ago\nShow more\nof the hall, 12\nReply\n"
    )
    export = read(page)
    assert [(one.author, one.text) for one in export.comments] == [
        ("Cy", "Show more\nof the hall, 12")
    ]
    assert [one.text for one in export.unreadable] == ["Reply / Reply", "Translate / 2 / Reply"]


def test_a_comment_whose_answer_button_is_missing_is_not_swallowed(read: Read) -> None:
    page = (
        "Gran T\n5 days ago\n12\nReply\nAnnie\n4 days ago\n8\n\nBo\n3 days ago\n14\nReply\n"
        "Cy\n2 days ago\n9\nReply\n"
    )
    assert [(one.author, one.text) for one in read(page).comments] == [
        ("Gran T", "12"),
        ("Annie", "8"),
        ("Bo", "14"),
        ("Cy", "9"),
    ]


def test_authors_with_odd_names_are_authors(read: Read) -> None:
    names = [
        "42",
        "the 6.30 ferry",
        "Frogging, Again",
        '"Hoop" (yes really)',
        "糸と風",
        "1984",
        "Reply All",
    ]
    page = "".join(f"{name}\n2 days ago\nhello from here\nReply\n" for name in names)
    assert [one.author for one in read(page).comments] == names


def test_comments_without_a_name_are_read_and_told(read: Read) -> None:
    export = read("3 days ago\n12\nReply\n2 days ago\n44\nReply\n")
    assert [(one.author, one.text) for one in export.comments] == [("", "12"), ("", "44")]
    assert any("without an author's name: 2" in note for note in export.notes)


def test_what_is_taken_out_is_told(read: Read) -> None:
    page = (
        "148 comments\nLatest on top\n"
        "Gran T\n5 days ago\n12\nShow more\n3\nReply\nThis comment was removed\n\n"
        "Annie\n2 days ago\n8\nReply\nsome words of nobody\n"
        "Bo\n2 days ago\n❤️\nReply\n"
    )
    export = read(page)
    assert len(export.comments) == 3
    told = " ".join(export.notes)
    assert "148 comments / Latest on top" in told
    assert "removed at their source: 1 (line 9)" in told
    assert "Folded comments, whose words may be cut off: 1 (line 3)" in told
    assert [(one.place, one.text) for one in export.unreadable] == [
        ("line 15", "some words of nobody")
    ]


def test_much_text_above_the_first_time_is_shown_line_by_line(read: Read) -> None:
    above = "".join(f"words {number}\n" for number in range(20))
    export = read(f"{above}Gran T\n5 days ago\n12\nReply\n")
    assert [one.place for one in export.unreadable] == [
        f"line {number}" for number in range(13, 21)
    ]


def test_no_line_of_a_page_disappears(read: Read) -> None:
    """Every line is a comment's, an author's or a time's, a known button or count, or is shown."""
    page = "Gran T\n5 days ago\nalpha\nbeta 12\n3\nReply\ngamma\nAnnie\n2 days ago\ndelta\nReply\nepsilon\n"
    export = read(page)
    shown = " ".join(
        [one.text for one in export.comments]
        + [one.text for one in export.unreadable]
        + list(export.notes)
    )
    for word in ("alpha", "beta", "gamma", "delta", "epsilon"):
        assert word in shown


def test_words_below_a_line_of_buttons_are_shown(read: Read) -> None:
    export = read("Gran T\n5 days ago\n12\nLike · Reply · 3\nmore of it\n")
    assert [one.text for one in export.comments] == ["12"]
    assert [one.text for one in export.unreadable] == ["more of it"]


def test_words_below_the_last_time_are_shown_where_times_stand_last(read: Read) -> None:
    export = read("Gran T\n12\n5 days ago\nLike\nReply\nAnnie\nmy vote is 14\n")
    assert [(one.author, one.text) for one in export.comments] == [("Gran T", "12")]
    assert [one.text for one in export.unreadable] == ["Annie", "my vote is 14"]


def test_numbers_above_a_pinned_comment_do_not_hide_it(read: Read) -> None:
    """Found by random pages."""
    export = read("12\n12\n3 days ago\nPinned by the host\nBo: 14\n")
    assert ["14" in one.text for one in export.comments] == [True]


def test_comments_without_words_are_told_where_a_page_has_no_buttons(read: Read) -> None:
    export = read("Gran T\n5 days ago\nAnnie\n4 days ago\n8\nBo\n3 days ago\nno page\n")
    assert [(one.author, one.text) for one in export.comments] == [
        ("Annie", "8"),
        ("Bo", "no page"),
    ]
    assert ["Gran T" in one.why for one in export.unreadable] == [True]


def test_a_number_below_a_button_is_surely_a_count(read: Read) -> None:
    export = read("Gran T\n5 days ago\nhello\nLike\n14\nReply\nAnnie\n4 days ago\nhi\nReply\n")
    assert [one.text for one in export.comments] == ["hello", "hi"]
    assert export.unreadable == ()
    assert any("counts of likes: 1." in note for note in export.notes)
