"""Chinese, as viewers write it under a video, in simplified and traditional characters.

The spaces between words here are for the eye; viewers write none.
"""

from __future__ import annotations

from service.ballots.cutting import as_cut
from service.ballots.language import Language, Phrase, phrases
from service.ballots.languages import zh_composed, zh_counts, zh_numbers
from service.ballots.languages.spelling import extended


def _counted(block: str) -> tuple[Phrase, ...]:
    """The phrases with every counter that may stand before them: 怎么样, 页怎么样, 号怎么样."""
    found = phrases(block)
    counters = [phrase for part in zh_counts.COUNTERS for phrase in (phrases(part) or ((),))]
    return tuple(counter + phrase for counter in counters for phrase in found)


_WRITTEN = Language(
    code="zh",
    everyday=phrases(
        """
        的 | 了 | 是 | 我 | 我们 | 我們 | 你 | 您 | 他 | 她 | 这 | 這 | 那 | 个 | 個 | 在 | 有 | 不 | 和 | 就 | 也 | 都 | 很 | 吧 | 吗 |
        嗎 | 呢 | 啊 | 请 | 請 | 谢谢 | 謝謝 | 页 | 頁 | 号 | 號 | 选 | 選 | 投 | 投票 | 支持 | 希望 | 喜欢 | 喜歡 | 你好 | 大家好 |
        一个 | 一下 | 一起 | 一样 | 一直 | 一定 | 一些 | 一位 | 一种 | 一张 | 一幅 | 一点 | 一年 | 一天 | 第一次 | 第一名 | 第一眼 |
        十分 | 千万 | 万一 | 百分之百 | 三思 | 四周 | 五彩 | 七彩 | 九月 | 十字绣 | 十字繡 | 什么 | 怎么 | 可以 | 没有 | 非常 | 视频
        """
    ),
    numbers=zh_numbers.numbers(),
    ordinals=zh_numbers.ordinals(),
    page=phrases(
        "页 | 頁 | 页码 | 頁碼 | 页数 | 那页 | 这页 | 那頁 | 這頁 | 那一页 | 这一页 | 那一頁 | 這一頁 | 一页 | 一頁 | 页面 | 页 码 是"
    ),
    number=phrases("第 | 号 | 號 | 号码 | 號碼 | 编号 | 数字 | 數字 | 数字 是 | 号 页 | 页码 是"),
    fillers=phrases(
        """
        是 | 就是 | 就 | 还是 | 還是 | 应该是 | 一定 | 一定 是 | 肯定 | 肯定 是 | 当然 是 | 当然 | 可能 是 | 也许 | 那就 | 这次 | 这 次 | 今天 |
        永远 | 总是 | 再 | 也 | 第
        """
    ),
    choice_before=phrases(
        """
        所以 | 所以 选 | 偏 要 | 偏要 |
        我 投 | 投 | 投给 | 投 给 | 我 投给 | 投票 | 我 投票 | 投票 给 | 投票 给 第 | 我 的 票 | 我 的 票 给 | 我 的 一票 | 我 的 一票 给 | 一票 | 一票 给 |
        投 一票 给 | 投 一票 | 票 给 | 我 的 投票 是 | 我 选 | 我 選 | 选 | 選 | 选择 | 選擇 | 我 选择 | 我 選擇 | 我 的 选择 | 我 的 选择 是 | 我 的 選擇 是 |
        请 选 | 请选 | 想 选 | 我 想 选 | 我 要 | 要 | 我 想要 | 想要 | 我 想 要 | 我 想 看 | 想 看 | 想看 | 我 要 选 | 要 选 | 支持 | 我 支持 | 我 押 | 押 | 希望 |
        希望 是 | 我 希望 | 我 希望 是 | 希望 看到 | 期待 | 期待 看到 | 从 | 從 | 请 从 | 請 從 | 请从 | 先 从 | 就 从 | 可以 从 | 先 绣 | 先绣 | 请 绣 | 请绣 | 绣 | 繡 |
        先 做 | 开始 绣 | 来 | 來 | 来 个 | 来个 | 给 我 | 给我 | 我 觉得 | 我 覺得 | 觉得 | 我 认为 | 我 猜 | 猜 | 我 说 | 那就 | 就 | 还是 | 换成 | 换 成 | 改成 | 改 成 |
        改为 | 改投 | 改 投 | 改选 | 答案 是 | 我 的 答案 是 | 我 的 答案 | 下一页 | 下 一页 选 | 下次 绣 | 请 | 請 | 麻烦 | 拜托 | 拜託 | 可以 选 | 能 不 能 选 | 能不能 绣 |
        可不可以 | 可以 绣 | 建议 | 推荐 | 提名 | 我 的 页码 是 | 我 站 | 站 | 锁定 | 直觉 是 | 直觉 告诉 我 | 我 投 第 | 应该 是
        """
    ),
    choice_after=_counted(
        """
        请 | 請 | 吧 | 谢谢 | 谢谢 你 | 谢谢 啦 | 謝謝 | 拜托 | 拜託 | 拜托 了 | 怎么样 | 怎麼樣 | 如何 | 好吗 | 好 吗 | 好不好 | 可以 吗 | 可以吗 | 行 吗 | 行吗 |
        开始 | 開始 | 开始 吧 | 先 | 是 我 的 选择 | 是 我 选 的 | 我 选 | 我 投 | 我 选 的 | 投 一票 | 一票 | 加一票 | 冲 | 冲 鸭 | 必胜 | 最好 | 最 好看 | 好 | 挺 好 | 不错 |
        好了 | 好 了 | 我 要 | 我 想要 | 我 想 要 | 我 喜欢 | 看起来 不错
        """
    )
    + phrases("页 | 頁 | 号 | 號 | 号 页 | 页 码"),
    other_before=phrases(zh_counts.OTHER_BEFORE),
    other_after=phrases(zh_counts.OTHER_AFTER),
    weak_before=phrases(zh_counts.WEAK_BEFORE),
    weak_after=phrases(zh_counts.WEAK_AFTER),
    neutral_before=phrases(zh_counts.NEUTRAL_BEFORE),
    neutral_after=phrases(zh_counts.NEUTRAL_AFTER),
    lucky_before=phrases(
        """
        幸运 数字 | 幸运 数字 是 | 幸运数字 | 幸运数字 是 | 我 的 幸运 数字 是 | 我 的 幸运 号码 是 | 幸运 号码 是 | 幸运 号 是 | 幸運 數字 是 | 幸運數字 是 | 最 喜欢 的 数字 是 |
        喜欢 的 数字 是 | 喜欢 的 数字 | 喜歡 的 數字 是 | 本命 数字 是
        """
    ),
    not_before=phrases(
        """
        不要 | 不 要 | 不是 | 不 是 | 别 | 別 | 别选 | 别 选 | 不选 | 不 选 | 不 選 | 不投 | 不 投 | 不想要 | 不 想 要 | 除了 | 除 了 | 除 | 而不是 | 而 不是 | 千万 别 | 千万 不要 | 反对 |
        讨厌 | 不要 选 | 别 从 | 不要 从 | 不喜欢 | 不 喜欢
        """
    ),
    not_after=_counted(
        "以外 | 之外 | 除外 | 不要 | 就 算了 | 算了 | 不 行 | 不行 | 不好 | 不 喜欢 | 不喜欢 | 不 吉利"
    ),
    correction=phrases(
        """
        不对 | 不對 | 不 对 | 哦不 | 啊不 | 哦 不 | 啊 不 | 不不 | 不 不 | 改成 | 改 成 | 改为 | 改投 | 改选 | 更正 | 说错 | 说错 了 | 说错了 | 打错 | 打错 了 | 打错了 | 写错 了 |
        写错了 | 手滑 | 我 改 | 我 改主意 | 改主意 | 改变 主意 | 想 错 了 | 开玩笑 | 开玩笑 的 | 等等 | 等一下 | 应该 是 | 我 是 说 | 抱歉 | 不好意思 | 换成
        """
    ),
    soft_correction=phrases("还是 | 還是 | 不 | 算了 | 那就 | 要不 | 其实"),
    either=phrases("或 | 或者 | 或是 | 还是 | 還是 | 要么 | 要不 | 要不然"),
    also=phrases("和 | 与 | 跟 | 以及 | 还有 | 還有 | 加 | 外加 | 然后"),
    second=phrases(
        """
        如果 没有 就 | 如果 没 了 就 | 如果 被 选 了 就 | 如果 有人 选 了 就 | 没有 的话 | 不行 的话 | 不行 就 | 不然 | 不然 就 | 否则 | 其次 | 第二选择 | 备选 | 备选 是 | 然后 是 |
        然后 | 再 来
        """
    ),
    first_choice=phrases("首选 | 首选 是 | 第一选择 | 第一选择 是 | 首先"),
    second_choice=phrases("备选 | 备选 是 | 第二选择 | 第二选择 是 | 其次"),
    condition=_counted(
        """
        如果 没人 | 如果 没有人 | 如果 还 在 | 如果 还 有 | 如果 没 被 | 如果 有人 | 如果 大家 | 要是 没人 | 要是 还 | 如果 能 | 要是 能
        """
    ),
    depends=phrases("看情况 | 看 情况 | 取决于"),
    ranked=phrases("按 顺序 | 按 这个 顺序 | 按顺序 | 按 先后"),
    tally_before=phrases("票 给 | 个 人 选 | 人 选 | 人 投"),
    topics=phrases("尺寸 | 针 | 布 | 线 | 颜色 | 几股 | 多少钱 | 小时 | 分钟 | 多久 | 多大"),
    ages=phrases("我 的 年龄 | 我 的 生日 | 出生 年份 | 生日 | 出生年份"),
    reported_before=phrases(
        """
        大家 | 大家 都 | 都 选 | 很多 人 | 好多 人 | 有人 | 别人 | 他们 | 人家 | 上次 | 上 次 | 差点 | 本来 想 | 本来 | 评论区 | 没 想到 | 我 老公 | 我 老婆 | 我 妈 | 我 女儿 | 我 儿子 |
        老公 说 | 老婆 说 | 女儿 说 | 儿子 说 | 妈妈 说 | 朋友 说
        """
    ),
    family_before=phrases(
        """
        老公 | 老婆 | 丈夫 | 妻子 | 先生 | 太太 | 儿子 | 兒子 | 女儿 | 女兒 | 妈妈 | 媽媽 | 爸爸 | 奶奶 | 爷爷 | 外婆 | 外公 | 姐姐 | 妹妹 | 哥哥 | 弟弟 | 朋友 | 闺蜜 | 孙子 | 孙女 | 孩子 |
        宝宝 | 婆婆 | 同事 | 邻居 | 猫 | 狗 | 老妈 | 男朋友 | 女朋友
        """
    ),
    reported_after=_counted(
        """
        有人 选 了 | 有人 选 | 有人 投 | 有人 要 | 被 选 了 | 被 人 选 | 被 选 | 已经 | 已经 有人 | 会 赢 | 要 赢 | 赢 了 | 领先 | 最多 | 很 热门 | 热门 | 绣 过 | 是不是 | 还 在 吗 |
        还有 吗 | 没人 选 | 好像 有人
        """
    ),
    asking=phrases(
        "为什么 | 為什麼 | 谁 | 誰 | 有没有 | 有 没有 | 是不是 | 怎么 | 什么 | 哪 | 几 | 有人"
    ),
    suggesting=phrases(
        "怎么样 | 怎麼樣 | 可以 | 能 不 能 | 能不能 | 可不可以 | 不如 | 要不 | 请 | 为什么 不"
    ),
    saying=phrases("说 | 說 | 喊 | 问 | 写"),
    goes_on=phrases("也 不错 | 也 好 | 也 很"),
    roughly_before=phrases("大概 | 大约 | 大約 | 约 | 差不多 | 差不多 是 | 大概 是 | 接近 | 靠近"),
    roughly_after=_counted(
        "多 页 | 几 页 | 左右 | 上下 | 附近 | 前后 | 那边 | 那 边 | 那 附近 | 旁边 附近"
    ),
    between=phrases("之间 | 从 | 在"),
    through=phrases("到 | 至"),
    question_before=phrases("共 | 一共 | 总共"),
    relative_after=_counted(
        """
        下面 | 的 下面 | 上面 | 的 上面 | 旁边 | 的 旁边 | 左边 | 的 左边 | 右边 | 的 右边 | 隔壁 | 的 隔壁 | 后面 | 的 后面 | 前面 | 的 前面 | 的 下 一页 | 的 上 一页 | 下边 | 上边
        """
    ),
    withdrawn=phrases(
        """
        撤回 | 撤回 我 的 投票 | 撤回 投票 | 取消 我 的 | 取消 投票 | 我 的 投票 作废 | 投票 作废 | 作废 | 收回 我 的 | 收回 投票 | 别 算 我 | 不要 算 我 | 不要 计 我 | 我 的 票 不 算 | 我 的 票 作废 | 忽略 我 的 |
        无视 我 的 | 我 退出
        """
    ),
    abstaining=phrases(
        """
        随便 | 隨便 | 随意 | 都 可以 | 都可以 | 都 行 | 都行 | 都 好 | 哪 页 都 | 哪一页 都 | 任意 | 任何 一页 | 你 来 选 | 你 来选 | 你 选 吧 | 你 选 | 你 定 | 你 来 定 | 你 决定 | 你 来 决定 | 听 你 的 | 博主 定 |
        博主 决定 | 博主 选 | 弃权 | 棄權 | 不 投票 | 不投票 | 选不出来 | 选 不 出来 | 选择困难 | 还 没 想好 | 没 想好 | 无所谓 | 看 你
        """
    ),
    pointing=phrases(
        """
        楼上 | 樓上 | 跟 楼上 一样 | 同 楼上 | 和 楼上 一样 | 同上 | 一样 | 一樣 | 同意 | 同 | 我 也是 | 我 也 是 | 我 也 一样 | 附议 | 跟 票 | 跟 她 一样 | 和 她 一样 | 我 的 年龄 页 | 我 的 生日 那页 | 上 一位 | +1
        """
    ),
    agreeing=phrases("同意 | 我 也是 | 我 也 是 | 一样 | 赞同 | 支持 | 附议 | 对 | 没错 | +1"),
    kinds=phrases(
        """
        双数 | 雙數 | 单数 | 單數 | 偶数 | 奇数 | 质数 | 双数 页 | 单数 页 | 偶数 页 | 奇数 页 | 最 上面 一 排 | 最 下面 一 排 | 第一排 | 最后 一 排 | 边上 | 边缘 | 靠 边 | 边边 | 中间 附近 | 靠近 中间 | 上 半部分 |
        下 半部分 | 上半部 | 下半部 | 左边 | 右边 | 两位数 | 一位数
        """
    ),
    first=phrases("第一 | 最 前 | 最前 | 最 开始 的 | 最 前面 的"),
    last=phrases("最后 | 最后 一 | 最後 | 最後 一 | 最后 的 | 倒数第一 | 末 | 最 后"),
    corner=phrases("角 | 角落 | 角 的 | 角上 | 角落 的 | 的 角落 | 的 角"),
    top=phrases("上 | 最 上"),
    bottom=phrases("下 | 最 下"),
    left=phrases("左 | 最 左"),
    right=phrases("右 | 最 右"),
    middle=phrases(
        "中间 | 中間 | 中间 的 | 正中间 | 正中間 | 正中间 的 | 中央 | 正中央 | 正中央 的 | 中心 | 正中心 | 中心 的 | 最 中间 | 最 中间 的 | 正中"
    ),
    row=phrases("排 | 行"),
    column=phrases("列"),
    told_from_last=phrases("倒数第二 | 倒数第二 页 | 倒数第二页 | 倒數第二頁"),
)

LANGUAGE = as_cut(extended(_WRITTEN, zh_composed.GROUPS))
