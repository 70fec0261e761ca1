"""Three exports as hosts hand them in: a table, a collection, a pasted page.

What is expected was read off the files by a person, or is read from them in another way here.
"""

from __future__ import annotations

import csv
import json
from datetime import UTC, datetime, timedelta
from pathlib import Path

from service.comments.identity import merge_batch, voter_of
from service.comments.spans import Span
from tests.comments.conftest import COPIED, TICK, Read

GUILD = "Vennersey Stitchers' Guild"


def test_every_row_of_the_table_is_a_comment(read: Read, exports: Path) -> None:
    export = read((exports / "comments.csv").read_bytes(), name="comments.csv")
    with (exports / "comments.csv").open(encoding="utf-8", newline="") as file:
        rows = list(csv.DictReader(file))
    assert (export.format, export.unreadable, export.notes) == ("table", (), ())
    assert len(export.comments) == len(rows) == 60
    for comment, row in zip(export.comments, rows, strict=True):
        assert (comment.id, comment.author, comment.author_id) == (
            row["id"],
            row["author"],
            row["author_id"],
        )
        assert comment.text == row["text"]
        assert comment.reply_to == (row["reply_to"] or None)
        assert comment.posted == Span.at(datetime.fromisoformat(row["posted_at"]))
        edited = row["edited_at"]
        assert comment.edited == (Span.at(datetime.fromisoformat(edited)) if edited else None)


def test_a_row_of_the_table_over_several_lines_knows_where_it_began(
    read: Read, exports: Path
) -> None:
    export = read((exports / "comments.csv").read_bytes())
    places = {one.id: one.place for one in export.comments}
    assert (places["c10401"], places["c10402"], places["c10409"]) == ("line 2", "line 5", "line 15")


def test_the_two_annies_of_the_table_are_two_voters(read: Read, exports: Path) -> None:
    export = read((exports / "comments.csv").read_bytes())
    assert len({voter_of(one) for one in export.comments if one.author == "Annie"}) == 2


def test_every_item_of_the_collection_is_a_comment(read: Read, exports: Path) -> None:
    content = (exports / "comments.as2.json").read_bytes()
    export = read(content)
    items = json.loads(content)["orderedItems"]
    assert (export.format, export.unreadable, export.notes) == ("activitystreams", (), ())
    assert [one.id for one in export.comments] == [item["id"] for item in items]
    assert [one.reply_to for one in export.comments] == [item["inReplyTo"] for item in items]
    assert [one.posted for one in export.comments] == [
        Span.at(datetime.fromisoformat(item["published"])) for item in items
    ]
    edited = {one.id: one.edited for one in export.comments if one.edited}
    assert edited == {
        item["id"]: Span.at(datetime.fromisoformat(item["updated"]))
        for item in items
        if "updated" in item
    }


def test_the_words_of_the_collection_are_as_a_reader_sees_them(read: Read, exports: Path) -> None:
    export = read((exports / "comments.as2.json").read_bytes())
    said = {(one.id or "").rpartition("/")[2]: (one.author, one.text) for one in export.comments}
    assert {number: said[number] for number in ("25", "23", "21", "20", "19", "17", "14")} == {
        "25": ("kittiwake", "That’s 55 by the way, I counted (twice)"),
        "23": (
            '"Hoop" (yes really)',
            "My stall number at the spring fair was 57 so 57, see the photo",
        ),
        "21": ("lamplight", "18 count, 2 over 1, 63 pages… I take my hat off.\n\nMy vote: 21"),
        "20": ("puntini", "Prima la 10 e poi, se è già presa, la 11"),
        "19": ("Gran T", "@backstitch they start at 1, love"),
        "17": ("kn-all", "smack in the middle\nof the chart, middle of the night here"),
        "14": ("le fil du vent", "La vingt-quatre s'il vous plaît !"),
    }
    assert said["13"][1] == "> 30 then 🎉\n\nyou were quick! I'll have 31, next door"
    assert said["9"][1].endswith("14,000 crosses.\n\nPage 50, and fair winds.")
    assert said["8"][1] == "I <3 this. Eleven please"
    assert said["7"][1] == "Siebenunddreißig bitte!\nLiebe Grüße vom Deich"
    assert said["5"][1] == (
        "Asked the kids:\n\n- the big one says 4\n- the middle one says 40\n"
        '- the small one says "banana"\n\nhelp'
    )
    assert said["4"][1] == "~~14~~ 41"
    assert said["2"] == ("Gran T", "Page 12, dear & mind the step")


DAY, HOUR, MINUTE = timedelta(days=1), timedelta(hours=1), timedelta(minutes=1)


def ago(number: int, unit: timedelta) -> Span:
    return Span(COPIED - (number + 1) * unit + TICK, COPIED - number * unit)


#: The page as a person reads it: the author's line, the author, when, the words.
PASTED = [
    (7, GUILD, ago(6, DAY), "Here we go! 63 pages, numbered across from the top left.\n\nWhich one do we start on? Number below, one each please."),
    (16, "kittiwake", ago(6, DAY), "bottom left corner!! where the rocks would be"),
    (21, "Gran T", ago(6, DAY), "Page 12, dear, and turn that kettle off"),
    (27, "marram_mary", ago(6, DAY), "Is 12 taken already?"),
    (32, GUILD, ago(6, DAY), "Nothing is taken, you can all pick the same one 😄"),
    (38, "Bobbin Along", ago(6, DAY), "27"),
    (43, "needlesnpins44", ago(6, DAY), "First!! And 44, obviously"),
    (47, "oldsalt_stitches", ago(6, DAY), "Forty years at sea, 30 of them stitching.\nNever finished anything over 14,000 crosses.\nPage 50, and fair winds."),
    (56, "le fil du vent", ago(6, DAY), "La page 24 s'il vous plaît, et bravo à toutes !"),
    (62, "Frogging, Again", ago(5, DAY), "12... no, hang on, I always lose when I follow the crowd, 46"),
    (68, "wren.at.the.window", ago(5, DAY), "I've got 3 cats, 2 dogs and a 9 month old\nso I stitch in 10 minute bits\n\n38 for me please"),
    (75, "Annie", ago(5, DAY), "8"),
    (80, "Annie", ago(5, DAY), "a different Annie, hello! 58"),
    (87, "the quiet unpicker", ago(5, DAY), "What a sound that wind makes at 12:47. No vote, I only came to listen."),
    (93, "stitching dad of 3", ago(5, DAY), "Asked the kids:\nthe big one says 4\nthe middle one says 40\nthe small one says banana"),
    (103, GUILD, ago(5, DAY), "We shall put the small one down for banana 🍌"),
    (109, "糸と風", ago(5, DAY), "１６ページでお願いします！"),
    (115, "xX_backstitch_Xx", ago(5, DAY), "69 lol"),
    (120, "Gran T", ago(5, DAY), "There are only 63 young man"),
    (125, "xX_backstitch_Xx", ago(5, DAY), "fine. 63"),
    (130, "knots and all", ago(5, DAY), "middle of the night here,\xa0middle of the chart please"),
    (135, "thrift & sea pinks", ago(4, DAY), "Gusts of 70 here, 2 slates off, 1 hen missing, kettle on."),
    (141, '"Hoop" (yes really)', ago(4, DAY), "My wife says not 13, never 13, are you mad, so 31"),
    (146, "Nadelwetter", ago(4, DAY), "Seite 37 bitte, liebe Grüße vom Deich!"),
    (151, "moth hole", ago(4, DAY), "surprise us"),
    (155, "lamplight linen", ago(4, DAY), "18 count, 2 over 1, one thread at a time?\nI take my hat off, both hats\nmy vote: 21"),
    (163, "Tide & Thread", ago(4, DAY), "12 or 14, I'm torn"),
    (169, "olas y puntadas", ago(4, DAY), "¡La 18! Llevo 2 horas viendo vuestros vídeos"),
    (175, "the 6.30 ferry", ago(3, DAY), "Two boats cancelled so I've watched it twice. 19 please"),
    (180, "kruisje voor kruisje", ago(3, DAY), "Ik twijfel nog… 26, nee toch 28"),
    (184, "puntini al vento", ago(3, DAY), "Io direi la ventotto"),
    (190, "sandpiper sews", ago(3, DAY), "❤️❤️❤️"),
    (195, "driftwood & floss", ago(1, DAY), "My nana stitched until she was 93.\n\nPage 60 in her memory.\n\nShe'd have loved all of you."),
    (205, "crofter's daughter", Span(datetime(2026, 3, 4, tzinfo=UTC), datetime(2026, 3, 4, 23, 59, 59, 999999, tzinfo=UTC)), "20"),
    (210, "peg leg pat", ago(23, HOUR), "7\n14\n21"),
    (217, "maré de linhas", ago(20, HOUR), "voto na sessenta 😊"),
    (221, "Tide & Thread", ago(11, HOUR), "Final answer: 14. Sorry for the dithering"),
    (227, "cable & cross", ago(2, HOUR), "I'll reply\nto anyone who can tell me what that lamp is\noh and 35"),
    (234, "gorse bush", ago(58, MINUTE), "Can you show more of the hall next time? 33"),
    (238, "late as ever", Span(COPIED - 5 * MINUTE, COPIED), "Is it too late? 18 if not"),
]  # fmt: skip


def test_the_pasted_page_is_read_as_a_person_reads_it(read: Read, exports: Path) -> None:
    export = read((exports / "pasted.txt").read_bytes())
    assert export.format == "pasted"
    assert [(one.place, one.author, one.posted, one.text) for one in export.comments] == [
        (f"line {line}", author, posted, text) for line, author, posted, text in PASTED
    ]
    assert export.unreadable == ()


def test_the_pasted_page_s_edited_comments_are_open_until_the_copying(
    read: Read, exports: Path
) -> None:
    export = read((exports / "pasted.txt").read_bytes())
    edited = {one.author: one.edited for one in export.comments if one.edited}
    assert edited == {
        GUILD: Span(COPIED - 7 * DAY + TICK, COPIED),
        "Frogging, Again": Span(COPIED - 6 * DAY + TICK, COPIED),
        "kruisje voor kruisje": Span(COPIED - 4 * DAY + TICK, COPIED),
    }


def test_what_the_pasted_page_leaves_open_is_told(read: Read, exports: Path) -> None:
    told = " ".join(read((exports / "pasted.txt").read_bytes()).notes)
    assert (
        "148 comments / Order / Latest on top / Write something kind / Kept on top by the host"
        in told
    )
    assert "removed at their source: 1 (line 85)" in told
    assert "whose words may be cut off: 2 (line 93, 155)" in told
    assert "215 (3)" in told  # the number below peg leg pat's 7, 14 and 21


def test_the_page_and_the_table_of_one_round_meet(read: Read, exports: Path) -> None:
    """Who wrote the same words in both is one comment; the table's exact time settles the page's."""
    copied = COPIED + 2 * HOUR
    page = read((exports / "pasted.txt").read_bytes(), copied_at=copied)
    table = read((exports / "comments.csv").read_bytes(), copied_at=copied)
    merge = merge_batch(merge_batch((), page.comments, copied).new, table.comments, copied)
    settled = {one.comment.text: one.comment for one in merge.confirmed}
    assert settled["27"].posted == Span.at(datetime(2026, 2, 27, 18, 6, 30, tzinfo=UTC))
    assert settled["27"].author_id == "a-0311"
    assert settled["69 lol"].id == "c10424"
