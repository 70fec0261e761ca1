"""Japanese, as viewers write it under a video, in its own script and in Latin letters.

The spaces between words here are for the eye; viewers write none.
"""

from __future__ import annotations

from service.ballots.cutting import as_cut
from service.ballots.language import Language, Phrase, phrases
from service.ballots.languages import ja_composed, ja_counts, ja_numbers
from service.ballots.languages.spelling import extended


def _counted(block: str) -> tuple[Phrase, ...]:
    """The phrases with every counter that may stand before them: 番で, ページで, で."""
    found = phrases(block)
    counters = [phrase for part in ja_counts.COUNTERS for phrase in (phrases(part) or ((),))]
    return tuple(counter + phrase for counter in counters for phrase in found)


_WRITTEN = Language(
    code="ja",
    everyday=phrases(
        """
        が | は | を | に | で | も | の | です | ます | でした | ました | ください | お願いします | お願い | ありがとう |
        ありがとうございます | こんにちは | 私 | 今回 | 番 | ページ | 希望 | 一票 | から | ね | よ | いつも | 楽しみ | 素敵 |
        onegaishimasu | onegai | shimasu | kudasai | desu | masu | arigatou | gozaimasu | konnichiwa | peeji | peji |
        pe-ji | watashi | kibou | kara | itsumo | tanoshimi | hajimete | ganbatte | kaze | makenaide | suki | dewa
        """
    ),
    numbers=ja_numbers.numbers(),
    ordinals=ja_numbers.ordinals(),
    page=phrases(
        "ページ | ぺーじ | 頁 | ペイジ | ページ目 | ページ 目 | ページ 番号 | ページ 数 は | peeji | peji | pe-ji"
    ),
    number=phrases(
        "第 | 番 | ばん | 番号 | 番号 は | ナンバー | no | no. | 数字 | 数字 は | 番 の ページ"
    ),
    fillers=phrases(
        """
        やっぱり | やはり | もちろん | 絶対 | 絶対に | ぜひ | 是非 | きっと | たぶん | 多分 | 今回 は | 今日 は | 次 は | また |
        どうか | なんとなく | もう 絶対
        """
    ),
    choice_before=phrases(
        """
        投票 | 投票 は | 投票 します | 私 の 投票 は | 私 の 一票 は | 一票 は | 一票 | 希望 | 希望 は | 希望 ページ は | 私 の 希望 は |
        選択 | 選択 は | 選びます | 私 の 選択 は | 私 は | わたし は | 僕 は | 私 なら | 答え は | 予想 は | 予想 | 推し は | おすすめ は |
        リクエスト は | リクエスト | 次 は | 今回 は | 今度 は | お願いします | できれば | 可能 なら | もし よければ | よければ | 変更 して |
        訂正 します | 正しく は | じゃ なくて | では なくて | じゃなくて | ではなく | toohyou | tohyo | watashi wa | kondo wa | tsugi wa
        """
    ),
    choice_after=_counted(
        """
        で | で お願いします | で お願い | で おねがいします | で よろしく | で よろしくお願いします | を お願いします | を お願い |
        を | を 希望 | 希望 | 希望 です | 希望 します | を 希望 します | お願いします | お願い | おねがいします | よろしく |
        よろしくお願いします | ください | を ください | がいい | が いい | が いい です | が いい な | が 良い | が 良い です | が いい かな | が よい |
        が 好き | が 好き です | が 気になる | が 気になります | が 見たい | が 見たい です | を 見たい | を 見たい です | に 一票 | に 一票 です |
        へ 一票 | 一票 | に 投票 | に 投票 します | へ 投票 | に 入れます | に します | に する | に 決めた | に 決めました | に したい | に 賭けます |
        を 選びます | を 選ぶ | を 選び ます | を 選択 | から 始めて | から 始めて ください | から はじめて | から 始めて ほしい | から お願いします |
        から | から スタート | スタート | で スタート | で 始めて | を 縫って | を 縫って ください | を 縫って ほしい | を 刺して | を 刺して ください |
        を 刺して ほしい | を 推します | 推し | 推し です | を おすすめ | が おすすめ | はどう | は どう | は どう です か | はどうですか | は どうですか |
        は いかが | は いかがですか | は いかが です か | なんて どう | なんて どう です か | どうでしょう | は どうでしょう | です | だ と 思います | だ と 思う |
        と 予想 | と 予想 します | かな | かな と | に 変更 | に 変更 します | に 変えます | が 呼んで | に 惹かれ | に 惹かれます | に ピン
        """
    )
    + phrases(
        """
        番 | ページ | ぺーじ | ばん | 頁 | 番 の ページ | ページ 目 | 番 目 の ページ | 番 ページ | ban | peeji | peji | ban de | peeji de | peji de |
        ban wo | peeji wo | ban ga ii | peeji ga ii | ga ii | de | onegaishimasu | onegai | onegai shimasu | kudasai | desu | kibou
        """
    ),
    other_before=phrases(ja_counts.OTHER_BEFORE),
    other_after=phrases(ja_counts.OTHER_AFTER),
    weak_before=phrases(ja_counts.WEAK_BEFORE),
    weak_after=phrases(ja_counts.WEAK_AFTER),
    neutral_before=phrases(ja_counts.NEUTRAL_BEFORE),
    neutral_after=phrases(ja_counts.NEUTRAL_AFTER),
    lucky_before=phrases(
        """
        ラッキーナンバー | ラッキーナンバー は | ラッキーナンバー の | 好きな 数字 は | 好きな 数字 | 好きな 番号 は | 私 の 好きな 数字 は |
        幸運 の 数字 は | 幸運 の 数字 | ラッキー な 数字 は | 私 の 数字 は
        """
    ),
    not_before=phrases("じゃ ない | 以外 の"),
    not_after=_counted(
        """
        以外 | 以外 で | 以外 なら | は 嫌 | は いや | は イヤ | は だめ | は ダメ | は 無し | は なし | は やめて | は 避けて | は やめて ください | では なく |
        では なくて | じゃ なく | じゃ なくて | ではなく | ではなくて | じゃなく | じゃなくて | を 除いて | を 除く | 抜き で | は 縁起 が 悪い
        """
    ),
    correction=phrases(
        """
        いや | いやいや | いえ | じゃなくて | じゃ なくて | ではなくて | では なくて | ではなく | では なく | 間違えました | 間違えた | 間違い |
        まちがえた | 訂正 | 訂正 します | 変更 します | 変更 して | やっぱり | やっぱ | ごめんなさい | すみません | 失礼しました | 冗談 です | 冗談 |
        うそ | 正しく は | もとい
        """
    ),
    soft_correction=phrases("やはり | むしろ | それより | あ"),
    either=phrases("か | または | もしくは | あるいは | それとも | ka"),
    also=phrases("と | や | とか | そして | および | & | to"),
    second=phrases(
        """
        が ダメ なら | が だめ なら | が 無理 なら | が 埋まって いたら | が 取られて いたら | ダメ なら | だめ なら | 無理 なら | 第二希望 | 第二希望 は |
        第2希望 | 二番目 は | 次点 は | 次点 で | 次点 | なければ | でなければ | その 次 は | その 次 | 次 に
        """
    ),
    first_choice=phrases("第一希望 | 第一希望 は | 第一候補 | 第一候補 は"),
    second_choice=phrases("第二希望 | 第二希望 は | 第二候補 | 第二候補 は | 次点"),
    condition=_counted(
        """
        が 空いて いたら | が 空いて いれば | が 空いて たら | が まだ なら | が まだ なら ば | が 埋まって いなければ | が 残って いれば |
        が 残って いたら | も 誰も | もし 誰も | 誰も いなければ | なら もし
        """
    ),
    depends=phrases("次第 | によります | 場合 は"),
    ranked=phrases("の 順 で | の 順番 で | 順 に | この 順 で | 希望 順 に"),
    tally_before=phrases("人 が | 票 が"),
    topics=phrases("サイズ | 針 | 布 | 糸 | 色 | カウント | 何分 | 何時間 | 値段 | 円 | 本取り"),
    ages=phrases("私 の 年齢 | 生まれ年 | 誕生日 | 生年月日 | 私 の 歳"),
    reported_before=phrases(
        """
        みんな | みなさん は | 皆さん は | みんな が | 皆 | 誰か | 誰か が | 多く の 人 | 多い の は | 大勢 | 前回 は | 前回 | 人気 は | コメント欄 |
        迷った けど | 最初 は | 本当 は
        """
    ),
    family_before=phrases(
        """
        夫 | 旦那 | 主人 | 妻 | 嫁 | 息子 | 娘 | 母 | 父 | お母さん | お父さん | ママ | パパ | おばあちゃん | おじいちゃん | 祖母 | 祖父 | 姉 |
        妹 | 兄 | 弟 | 友達 | 友人 | 孫 | 子供 | 子ども | 猫 | 犬 | 彼氏 | 彼女 | 義母 | 同僚 | 隣 の 人
        """
    ),
    reported_after=_counted(
        """
        は もう | って もう | って 誰か | って 誰 か | は もう 出 | は もう 出ました か | は まだ | は 取られ | は 誰か | が 人気 | が 多い | が 優勢 | が 勝ち そう | が 勝ちそう | が 勝つ |
        が リード | と 言って | と 言って います | って 言って | と 言う | と 言った | だ そう です | だそうです | だって | と 夫 | が 一位 | に なり そう
        """
    ),
    asking=phrases("なぜ | なんで | どうして | 誰が | 誰か | もう | 何 | いつ | どこ"),
    suggesting=phrases("どう | いかが | お願い | ください"),
    saying=phrases("言って | 言います | 言った | 言う | 言ってる | 言いました | 書いて"),
    goes_on=phrases("も いい | も 好き | も 素敵"),
    roughly_before=phrases("だいたい | 大体 | およそ | 約 | ほぼ | 大まかに"),
    roughly_after=_counted(
        """
        台 | 台 の | 台 で | 台 ならどこでも | 台 ならどれでも |
        くらい | ぐらい | くらい で | ぐらい で | あたり | あたり で | 辺り | 辺り で | 前後 | 付近 | 近く | の 近く | の あたり | の 辺り | ごろ | ちょっと |
        くらい が | あたり が
        """
    ),
    between=phrases("間"),
    through=phrases("から | 〜 | ~"),
    question_before=phrases("全 | 全部 で"),
    relative_after=_counted(
        """
        の 下 | の 上 | の 隣 | の となり | の 横 | の 右 | の 左 | の 右隣 | の 左隣 | の すぐ 下 | の すぐ 上 | の 次 | の 前 の | の 斜め | の 真下 | の 真上
        """
    ),
    withdrawn=phrases(
        """
        投票 を 取り消し | 投票 を 取り消します | 投票 取り消し | 投票 を キャンセル | 投票 を 撤回 | 票 を 取り消し | 票 を 取り消します | 一票 を 取り消し |
        私 の 投票 は 無し | 私 の 投票 は なし | 私 の 票 は | 投票 は 無効 | 投票 を なかった | 撤回 します | 投票 を 無効 | 投票 は 数えないで |
        さっき の 投票 は 取り消し | コメント は 無視 | 投票 は 無視 | 取り消します | 取り消して ください | 取り消し で | 辞退 します
        """
    ),
    abstaining=phrases(
        """
        お任せ | お任せします | お任せ します | おまかせ | おまかせします | おまかせ します | どこでも | どこ でも | どれでも | どれ でも | 何でも | 何番 でも |
        どの ページ でも | 好き な ところ | 好きなところ | お好き な | 決められない | 決められません | 決められ ません | 迷って 決められ | 棄権 | 投票 しません |
        ランダム | 適当 に | 特に 希望 は ありません | 希望 は ありません | 希望 なし
        """
    ),
    pointing=phrases(
        """
        上 の 方 と 同じ | 上 の 人 と 同じ | と 同じ | 同じ | 同じく | 同じ です | 同上 | 同意 | 右 に 同じ | 上 に 同じ | 私 も 同じ | 私 も それ | 私 も それ で |
        それ で お願いします | 私 の 年齢 で | 私 の 年齢 の | 私 の 誕生日 で | +1 | onaji
        """
    ),
    agreeing=phrases("同意 | 同じ | 私 も | わかる | それ | 賛成 | いいね | はい | +1"),
    kinds=phrases(
        """
        偶数 | 奇数 | 偶数 の ページ | 奇数 の ページ | 素数 | 一番上 の 段 | 一番下 の 段 | 上 の 方 の | 下 の 方 の | 端っこ | 端 の | 端 | 真ん中 あたり | 真ん中あたり |
        真ん中 の 辺 | 中央 付近 | 中央 あたり | 上半分 | 下半分 | 右側 | 左側 | 右端 | 左端 | 二桁 | 一桁
        """
    ),
    first=phrases("最初 | 最初 の | 一番 最初 | 一番 最初 の | 先頭 | 先頭 の | saisho no"),
    last=phrases(
        "最後 | 最後 の | 一番 最後 | 一番 最後 の | ラスト | ラスト の | 最終 | saigo no"
    ),
    corner=phrases(
        "角 | 角 の | 隅 | 隅 の | 隅っこ | 隅っこ の | すみっこ | すみっこ の | コーナー | の 角 | の 隅 | の 隅っこ | の コーナー | かど"
    ),
    top=phrases("上 | 一番上 | 上 の"),
    bottom=phrases("下 | 一番下 | 下 の"),
    left=phrases("左 | 左 の | 一番左"),
    right=phrases("右 | 右 の | 一番右"),
    middle=phrases(
        "真ん中 | 真ん中 の | まんなか | まんなか の | ど真ん中 | ど真ん中 の | 中央 | 中央 の | 中心 | 中心 の | ちょうど 真ん中 | ちょうど 真ん中 の"
    ),
    row=phrases("段 | 段目 | 行 | 行目"),
    column=phrases("列 | 列目"),
    told_from_last=phrases("最後 から 二番目 | 最後 から 2番目 | 最後 の 一つ 前 | 最後 の 前"),
    doubtful=phrases("一番"),
)

LANGUAGE = as_cut(extended(_WRITTEN, ja_composed.GROUPS))
