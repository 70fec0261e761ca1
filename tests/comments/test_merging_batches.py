"""Batches merged: what is new, edited, unchanged, and since when the words stand."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, datetime, timedelta

import pytest

from service.comments.comment import Comment
from service.comments.identity import KnownComment, Merge, Version, merge_batch
from service.comments.spans import Span
from service.comments.versions import voter_in

START = datetime(2026, 2, 27, 18, 0, tzinfo=UTC)


def at(hours: float) -> datetime:
    return START + timedelta(hours=hours)


def exactly(hours: float) -> Span:
    return Span.at(at(hours))


def between(first: float, last: float) -> Span:
    return Span(at(first), at(last))


def said(
    text: str,
    posted: Span | float = 0,
    *,
    id: str | None = "c1",  # noqa: A002 - as the field is called
    author: str = "Gran T",
    author_id: str | None = None,
    edited: Span | float | None = None,
) -> Comment:
    when = posted if isinstance(posted, Span) else exactly(posted)
    changed = exactly(edited) if isinstance(edited, int | float) else edited
    return Comment(author, text, when, id=id, author_id=author_id, edited=changed)


def known_after(*batches: tuple[float, list[Comment]]) -> list[KnownComment]:
    """What is known after these batches, each with the hour of its copying."""
    known: dict[str, KnownComment] = {}
    for hour, batch in batches:
        merge = merge_batch(known.values(), batch, at(hour))
        for one in (*merge.new, *merge.edited, *merge.confirmed):
            known[one.key] = one
    return list(known.values())


def only(known: list[KnownComment]) -> KnownComment:
    assert len(known) == 1
    return known[0]


def words(known: KnownComment) -> list[tuple[str, Span]]:
    return [(version.text, version.written) for version in known.versions]


def test_a_first_batch_is_all_new() -> None:
    merge = merge_batch((), [said("12"), said("14", 1, id="c2", author="Annie")], at(2))
    assert [one.comment.text for one in merge.new] == ["12", "14"]
    assert (merge.edited, merge.unchanged, merge.confirmed) == ((), (), ())
    assert words(merge.new[0]) == [("12", exactly(0))]


def test_the_same_batch_again_changes_nothing() -> None:
    batch = [said("12"), said("14", between(0, 5), id=None, author="Annie"), said("9", 3, id="c3")]
    first = merge_batch((), batch, at(5))
    again = merge_batch(first.new, batch, at(5))
    assert again == Merge((), (), tuple(one.key for one in first.new))


def test_a_later_batch_with_the_same_words_only_confirms_them() -> None:
    first = merge_batch((), [said("12")], at(1))
    later = merge_batch(first.new, [said("12")], at(9))
    assert later.new == later.edited == ()
    assert later.unchanged == (first.new[0].key,)
    assert later.confirmed[0].versions == (Version("12", exactly(0), between(1, 9)),)


def test_other_words_under_one_id_are_an_edit_between_the_batches() -> None:
    known = only(known_after((1, [said("12")]), (9, [said("14")])))
    assert words(known) == [("12", exactly(0)), ("14", between(1, 9))]
    assert known.comment.text == "14"
    assert known.comment.written == between(1, 9)


def test_an_edit_is_narrowed_by_the_last_batch_that_showed_the_old_words() -> None:
    known = only(known_after((1, [said("12")]), (4, [said("12")]), (9, [said("14")])))
    assert words(known)[1] == ("14", between(4, 9))


def test_the_edit_time_of_the_source_is_kept() -> None:
    known = only(known_after((1, [said("12")]), (9, [said("14", edited=3)])))
    assert words(known) == [("12", exactly(0)), ("14", exactly(3))]


def test_an_edit_mark_without_a_time_is_narrowed_by_the_batches() -> None:
    marked = said("14", edited=between(0, 9))
    known = only(known_after((4, [said("12")]), (9, [marked])))
    assert words(known)[1] == ("14", between(4, 9))


def test_words_that_an_earlier_batch_held_count_from_there() -> None:
    """They were touched again afterwards, but they stood as they stand."""
    known = only(known_after((4, [said("12")]), (9, [said("12", edited=6)])))
    assert words(known) == [("12", exactly(0))]


def test_an_edit_that_the_first_batch_did_not_tell_is_learned_from_the_second() -> None:
    known = only(known_after((4, [said("12")]), (9, [said("12", edited=2)])))
    assert words(known) == [("12", exactly(2))]


def test_words_taken_up_again_are_an_edit_once_more() -> None:
    known = only(known_after((1, [said("12")]), (4, [said("14")]), (9, [said("12")])))
    assert words(known) == [
        ("12", exactly(0)),
        ("14", between(1, 4)),
        ("12", between(4, 9)),
    ]


def test_an_older_batch_handed_in_late_comes_before() -> None:
    known = only(known_after((9, [said("14")]), (3, [said("12")])))
    assert words(known) == [("12", exactly(0)), ("14", between(3, 9))]


def test_an_older_batch_narrows_an_edit() -> None:
    known = only(known_after((1, [said("12")]), (9, [said("14")]), (5, [said("12")])))
    assert known.versions[0].seen == between(1, 5)
    assert words(known)[0] == ("12", exactly(0))


def test_spaces_and_line_breaks_are_no_edit() -> None:
    merge = merge_batch(
        merge_batch((), [said("12  please\nthanks")], at(1)).new, [said("12 please thanks ")], at(1)
    )
    assert merge.edited == ()


def test_without_ids_author_words_and_time_recognise_a_comment() -> None:
    pasted = said("12", between(-6, 1), id=None)
    later = said("12", between(-2, 3), id=None)
    known = only(known_after((1, [pasted]), (9, [later])))
    assert known.comment.posted == between(-2, 1)
    assert words(known) == [("12", between(-2, 1))]


def test_an_exact_export_settles_a_pasted_time() -> None:
    pasted = said("12", between(-6, 1), id=None)
    exported = replace(said("12", 0, id="c1", author_id="a-7"), reply_to="c0")
    known = only(known_after((1, [pasted]), (9, [exported])))
    assert known.comment.posted == exactly(0)
    assert (known.comment.id, known.comment.author_id) == ("c1", "a-7")
    assert known.comment.reply_to == "c0"
    assert words(known) == [("12", exactly(0))]


@pytest.mark.parametrize(
    "other",
    [
        pytest.param(said("12", 30, id=None), id="a time that cannot be the same"),
        pytest.param(said("12", 0, id=None, author="Annie"), id="another author"),
        pytest.param(said("14", between(-6, 1), id=None), id="other words in the same span"),
    ],
)
def test_what_cannot_be_the_same_comment_is_a_new_one(other: Comment) -> None:
    first = said("12", between(-6, 1), id=None)
    assert len(known_after((1, [first]), (40, [other]))) == 2


def test_two_authors_of_one_name_are_told_apart_by_their_ids() -> None:
    batch = [
        said("8", id=None, author="Annie", author_id="a-1"),
        said("8", id=None, author="Annie", author_id="a-2"),
    ]
    assert len(known_after((1, batch))) == 2


def test_other_words_at_the_same_second_are_an_edit_where_there_are_no_ids() -> None:
    known = only(known_after((1, [said("12", 0, id=None)]), (9, [said("14", 0, id=None)])))
    assert words(known) == [("12", exactly(0)), ("14", between(1, 9))]


def test_two_comments_of_the_same_second_are_two() -> None:
    batch = [said("12", 0, id=None), said("14", 0, id=None)]
    known = known_after((1, batch), (9, batch))
    assert sorted(one.comment.text for one in known) == ["12", "14"]


def test_which_of_two_comments_of_one_second_was_edited_is_not_guessed() -> None:
    known = known_after(
        (1, [said("12", 0, id=None), said("14", 0, id=None)]),
        (9, [said("20", 0, id=None), said("21", 0, id=None)]),
    )
    assert sorted(one.comment.text for one in known) == ["12", "14", "20", "21"]


def test_which_of_two_new_comments_an_old_one_became_is_not_guessed() -> None:
    known = known_after(
        (1, [said("12", 0, id=None)]), (9, [said("20", 0, id=None), said("21", 0, id=None)])
    )
    assert sorted(one.comment.text for one in known) == ["12", "20", "21"]


def test_a_second_comment_of_the_same_second_is_no_edit_of_the_first() -> None:
    first = said("12", 0, id=None)
    known = known_after((1, [first]), (9, [first, said("14", 0, id=None)]))
    assert sorted(one.comment.text for one in known) == ["12", "14"]


def test_nobody_s_comments_are_not_edits_of_each_other() -> None:
    known = known_after(
        (1, [said("12", 0, id=None, author="")]), (9, [said("14", 0, id=None, author="")])
    )
    assert len(known) == 2


def test_repeats_inside_one_batch_collapse() -> None:
    batch = [
        said("12"),
        said("12"),
        said("9", between(0, 5), id=None),
        said("9", between(0, 5), id=None),
    ]
    assert len(merge_batch((), batch, at(9)).new) == 2


def test_one_id_shown_before_and_after_an_edit_is_one_comment() -> None:
    merge = merge_batch((), [said("14", edited=3), said("12")], at(9))
    assert words(merge.new[0]) == [("12", exactly(0)), ("14", exactly(3))]
    assert len(merge.new) == 1


def test_one_id_with_two_texts_in_no_order_is_kept_as_two() -> None:
    merge = merge_batch((), [said("12"), said("14")], at(9))
    assert sorted(one.comment.text for one in merge.new) == ["12", "14"]
    assert len({one.key for one in merge.new}) == 2


def test_versions_that_were_kept_without_their_copying_are_merged_all_the_same() -> None:
    kept = KnownComment("c1", said("12"), (Version("12", exactly(0)),))
    merge = merge_batch([kept], [said("14")], at(9))
    assert words(merge.edited[0]) == [("12", exactly(0)), ("14", between(0, 9))]


def test_the_same_words_stand_from_the_older_batch_whichever_comes_in_first() -> None:
    older = (10.0, [said("13", 1)])
    later = (30.0, [said("13", 1, edited=20)])
    for order in ((older, later), (later, older)):
        assert words(only(known_after(*order))) == [("13", exactly(1))], order


def test_the_same_words_of_nobody_may_be_two_people_s() -> None:
    twice = [
        replace(said("12", id=None, author=""), place="line 1"),
        replace(said("12", id=None, author=""), place="line 2"),
    ]
    known = known_after((1, twice), (1, twice))
    assert len(known) == 2
    assert len({voter_in(one) for one in known}) == 2
