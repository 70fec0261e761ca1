"""Japanese phrases put together of parts: what viewers say in many ways that differ in a word."""

from __future__ import annotations

from collections.abc import Mapping

from service.ballots.language import Phrase, each_of, phrases

_COUNTED = "番 | ページ | 番 の ページ |"
_GONE = "空いて | 取られ | 残って | 埋まって | 選ばれ | 出 | 出て | 使われ"

GROUPS: Mapping[str, tuple[Phrase, ...]] = {
    "printed": phrases("本 | 雑誌 | 小説 | 新聞"),
    "again": phrases("また"),
    "counting_pages": phrases("ページ | 頁 | ぺーじ"),
    "everyday": phrases("yoroshiku | onegai shimasu | ichiban | kore | ga ii | wo"),
    "choice_before": each_of(
        "第一希望 | 第二希望 | 第三希望 | 第一候補 | 第二候補 | 第三候補", "は | ： |"
    )
    + phrases("ダメ なら | でも 私 は | でも 私 | 次点 は | やっぱり | 第三希望 | 第三希望 は"),
    "first_choice": phrases("第一希望 | 第一候補"),
    "second_choice": phrases("第二希望 | 次点 | 補欠"),
    "second": each_of(
        "が | もし |",
        "ダメ | だめ | 無理 | 取られて | 取られてたら | 埋まって | 空いて なければ",
        "なら | たら | いたら |",
    )
    + phrases("が ダメ なら | がダメ なら | もし 取られて たら | 第三希望 | 取られて たら"),
    "stopgap": phrases("が ダメ なら | ダメ なら | 無理 なら"),
    "neutral_after": each_of(_COUNTED, "を # | じゃなくて # | ではなく # | から #")
    + phrases("がダメなら | がダメ なら | が ダメ なら | が だめ なら | が 無理 なら | を"),
    "correction": phrases(
        "を # に 変更 | から # に 変更 | を # に | 間違えました | 打ち間違い | 訂正"
    ),
    "reported_before": phrases("誰も | 誰 も | 誰かが"),
    "reported_after": each_of(_COUNTED, "は | って | が |", "もう | まだ | 既に", _GONE + "|")
    + each_of(_COUNTED, "の 人 に | の方 に | に", "賛成 | 同意 | 同感")
    + each_of(_COUNTED, "って まだ | って もう | まだ"),
    "asked_later": each_of("もう | まだ | は もう | は まだ", _GONE),
    "other_after": phrases("ページ まで | ページ目 まで | 頁 まで")
    + phrases(
        "番 の バス | 番 バス | 番 の 電車 | 対 # | 対 | 話 | キロ | キロメートル | 杯 | 円 | カウント | 本取り | 歳"
    ),
    "other_before": phrases("# 対 | 第 # 話"),
    "ages": phrases("誕生日"),
    "pointing": each_of(
        "誕生日 | 年齢 | 生年月日 | 結婚記念日 | 部屋番号", "の |", "数字 | 番号 | ページ | で"
    )
    + phrases(
        "誕生日 の 数字 | 私 の 誕生日 | 上 の コメント と 同じ | 上 の 方 と 同じ で | 同じ ページ | 同じ 番号"
    ),
    "withdrawn": each_of(
        "私 の 票 | 投票 | 一票 | 私 の 投票",
        "を | は |",
        "無効 に して | 無効 | 取り消して | 消して | なし で",
    ),
    "kinds": phrases("番台 | 二十番台 | 三十番台"),
    "times": phrases("かける | 掛ける | x"),
    "plus": phrases("足す | たす | プラス"),
    "minus": phrases("引く | ひく | マイナス"),
    "divided_by": phrases("割る | わる"),
}
