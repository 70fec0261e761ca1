"""Chinese phrases put together of parts, and what viewers say in pinyin."""

from __future__ import annotations

from collections.abc import Mapping

from service.ballots.language import Phrase, each_of, phrases

_GONE = (
    "有人 选 了 | 有人 选 | 被 选 了 | 被 选 | 选 了 | 被 抢 了 | 没 了 | 投 了 | 绣 了 | 绣 完 了"
)

GROUPS: Mapping[str, tuple[Phrase, ...]] = {
    "printed": phrases("书 | 小说 | 杂志 | 报纸 | 书里"),
    "again": phrases("又"),
    "counting_pages": phrases("页 | 頁"),
    "everyday": phrases(
        "wo | xuan | xiexie | qing | nihao | dajia | toupiao | yao | xihuan | woyao | woxuan | zhichi | xiang | kan | xie xie"
    ),
    "page": phrases("ye | ye ma"),
    "number": phrases("di | hao"),
    "choice_before": each_of(
        "第一选择 | 第二选择 | 第三选择 | 第一志愿 | 第二志愿 | 第三志愿 | 首选", "是 | ： |"
    )
    + each_of("把 我 的 | 我 的", "票 | 一票", "投 给 | 给 | 投 | 改 投")
    + each_of(
        "可以 | 能 | 能不能 | 可不可以 | 能 不能", "做 | 绣 | 选 | 先 绣 | 先 做 | 来", "第 |"
    )
    + phrases(
        "其次 | 首选 | 备选 | 候补 | 但 我 选 | 但 我 | 不过 我 选 | 我 还是 选 | wo xuan | xuan | wo yao | woxuan | woyao | wo tou | "
        "wo xiang yao | wo xiang kan | qing xuan | tou | zhichi"
    ),
    "choice_after": phrases("ye | hao | ba | xiexie | xie xie | qing | ye xiexie"),
    "first_choice": phrases("首选 | 第一选择 | 第一志愿"),
    "second_choice": phrases("其次 | 备选 | 候补 | 第二选择 | 第二志愿"),
    "second": phrases(
        "如果 被 选 了 | 被 选 了 就 | 被 选 的话 | 第三选择 | 第三志愿 | 候补 | 没 了 就"
    ),
    "neutral_after": phrases(
        "吗 | 嗎 | 改成 # | 换成 # | 改为 # | 不是 # | 不 # | 改成 | 换成 | 改为"
    ),
    "neutral_before": phrases("改成 | 换成 | 改为 | 换 成 | 改 成"),
    "not_before": phrases("而不是 | 并 不是 | 可 不要"),
    "reported_after": each_of("已经 | 是不是 | 是不是 已经 | 还 没 | 好像", _GONE)
    + phrases("还 在 吗 | 还在 吗 | 还有 吗 | 有 人 选 了 吗"),
    "asked_later": phrases("有人 选 了 吗 | 还 在 吗 | 已经 被 选 了 吗 | 还有 吗"),
    "reported_before": phrases(
        "没人 | 没有人 | 沒人 | 要是 没人 | 同意 | 赞同 | 有人 说 | 说 的 | 那位 说"
    ),
    "pointing": each_of(
        "跟 | 和 | 同 | 与",
        "楼上 | 上面 | 前面 | 楼上 那位 | 上面 那位 | 上一位",
        "一样 | 相同 | 同样 |",
    )
    + phrases(
        "我 的 年龄 | 我 的 生日 | 我 的 岁数 | 我 的 门牌号 | 我 的 出生 年份 | 结婚 纪念日 | 楼上 说 的 | 她 说 的 | 他 说 的"
    ),
    "withdrawn": each_of(
        "取消 | 撤回 | 收回 | 删掉 | 删除 | 作废 | 请 取消", "我 的 |", "投票 | 票 | 选择 | 留言"
    ),
    "abstaining": phrases("你 决定 吧 | 都 喜欢 | 给 我们 惊喜 | 选不出来 | 听 你 的"),
    "kinds": phrases("二十几 | 三十几 | 四十几 | 五十几 | 十几 | 三十多 | 二十多 | 四十多"),
    "other_before": phrases("赢 了 | 输 了 | 昨天 | 走 了 | 房间 | 病房"),
    "other_after": phrases(
        "比 # | 比 | 路 公交 | 路 | 公里 | 步 | 块 | 块 钱 | 元 | ct 的 布 | 集"
    ),
    "times": phrases("乘 | 乘以 | 乘 以 | x"),
    "plus": phrases("加 | 加上"),
    "minus": phrases("减 | 减去"),
    "divided_by": phrases("除以"),
}
