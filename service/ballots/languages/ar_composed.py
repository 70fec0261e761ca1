"""Arabic phrases put together of parts: what viewers say in many ways that differ in a word."""

from __future__ import annotations

from collections.abc import Mapping

from service.ballots.language import Phrase, each_of, phrases

_GONE = "محجوزة | محجوز | متاحة | فاضية | مأخوذة | موجودة | مطرزة | مختارة | خالصة | فاضي | راحت | انحجزت | أخذت"

GROUPS: Mapping[str, tuple[Phrase, ...]] = {
    "printed": phrases("كتاب | الكتاب | مجلة | المجلة | رواية | الرواية"),
    "again": phrases("مرة أخرى | تاني | مجددا"),
    "named_before": phrases("أتفق مع | اتفق مع"),
    "counting_pages": phrases("صفحة | صفحه | صفحات | ورقة | ورقات"),
    "everyday": phrases(
        """
        fadlek | wallah | habibti | samahti | safha | عمري | ياريت | الباص | قصدي
        """
    ),
    "page": phrases("saf7a | safha | el saf7a | el safha | alsafha | sfha | sf7a"),
    "number": phrases("ra8m | رقم الصفحة"),
    "choice_before": each_of(
        "سجلوني | سجليني | سجلني | حطوني | حطيني | اكتبيني | اكتبوني | احسبوني",
        "على | في | مع | ل | للصفحة | على صفحة",
    )
    + each_of(
        "أتمنى | اتمنى | نفسي | ودي | أحب | حابة | يا ريت | ياريت | أود | أبغى",
        "أشوف | اشوف | نشوف | تكون | لو | لو تكون | أن تكون | رؤية |",
        "صفحة | الصفحة | رقم |",
    )
    + each_of("أراهن | اراهن | صوتت | تصويتي | أصر", "على | ل", "صفحة | الصفحة | رقم |")
    + each_of("الخيار | خياري | اختياري", "الأول | الثاني | الثالث | الاول", ": | هو |")
    + phrases(
        "بالنسبة لي | بالنسبة الي | من جهتي | ana ma3 | ana m3 | sawti ma3 | sawty | a5tar | ekhtart | biddi | 3ayza | abgha | الثاني | الثالث | احتياط | ولكن أنا | وأنا | بس أنا"
    ),
    "choice_after": phrases(
        "law sama7ti | law sama7t | law samahti | min fadlik | min fadlek | mn fadlek | plz | please | أحلى | أجمل"
    ),
    "first_choice": phrases("الخيار الأول | الأول | أولا"),
    "second_choice": phrases("الثاني | الخيار الثاني | احتياط | ثانيا"),
    "second": each_of("وإذا | واذا | إذا | لو | وإن كانت", _GONE)
    + phrases("وإلا | والا | الثالث | احتياط"),
    "correction": phrases("غيرت رأيي | قصدي | آسفة قصدي | غلطت | لا قصدي | أقصد | بدل | بدلا من"),
    "neutral_before": phrases("قصدي | آسفة | بدل | غيرت رأيي | # إلى | # الى | خلوها | خليها"),
    "neutral_after": phrases("مو # | مش # | وليس # | إلى # | لا # | خلوها #"),
    "not_before": phrases("مو | مش | وليس | ليس | بدل | بدلا من | عوضا عن | ومو | ومش"),
    "reported_before": each_of(
        "أتفق | اتفق | متفقة | موافقة | أوافق", "مع | على", "صفحة | رقم | صاحبة |"
    ),
    "reported_after": each_of("لسه | لسا | هل | لا تزال | ما زالت | صارت |", _GONE),
    "asked_later": each_of("هي | هل هي | ولا |", _GONE),
    "pointing": each_of(
        "نفس | مثل | زي | متل",
        "اللي | التي | الذي | ما | الأخت | التعليق",
        "فوقي | فوق | قبلي | قالت | قال | قالت * | قال * | اختارت | كتبت",
    )
    + phrases(
        "صفحة عمري | رقم عمري | على عمري | نفس عمري | على سني | تاريخ ميلادي | عيد ميلادي | يوم ميلادي | رقم بيتي | سنة ميلادي"
    ),
    "withdrawn": each_of(
        "الغوا | الغي | أسحب | اسحب | احذفوا | احذفي | لا تحسبوا | لا تحتسبوا | تجاهلوا | امسحوا",
        "صوتي | تصويتي | تعليقي | اختياري",
    ),
    "abstaining": phrases(
        "اختاري انتي | اختاري أنتي | انتي اختاري | فاجئينا | فاجئيني | مش عارفة أختار | ما عرفت أختار | على ذوقك | اللي تحبيه"
    ),
    "replacing": phrases("غيروا | غيري | غير | بدلوا | بدلي | استبدلوا | عدلوا | غيرولي"),
    "replaced_by": phrases("إلى | الى | ب | ل | لـ | على"),
    "other_before": phrases(
        "الباص | باص | الحافلة | القطار | الغرفة | غرفة | الحلقة | مشيت | ركضت | فزنا | خسرنا | قماش | قماشة | ايدا | آيدا"
    ),
    "other_after": phrases("كيلومتر | كيلو | خطوة | فناجين | فنجان | ريال | جنيه | درهم | بخيطين"),
    "times": phrases("ضرب | في | x"),
    "plus": phrases("زائد | جمع"),
    "minus": phrases("ناقص"),
    "divided_by": phrases("تقسيم | على"),
    "sum_before": phrases("نصف | نص | ضعف"),
    "part_of": phrases("من | في"),
    "whole_chart": phrases("من المخطط | من الرسمة | من الباترون | في المخطط | من اللوحة"),
    "middle": phrases("بالنص | اللي بالنص | في النص | اللي في النص | النص"),
}
