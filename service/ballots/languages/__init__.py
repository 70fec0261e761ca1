"""The languages a round can switch on, one data file each."""

from __future__ import annotations

from service.ballots.language import Language
from service.ballots.languages import (
    alike,
    ar,
    cs,
    da,
    de,
    el,
    en,
    es,
    fi,
    fr,
    hi,
    it,
    ja,
    ko,
    nl,
    no,
    pl,
    pt,
    ru,
    sv,
    tr,
    uk,
    zh,
)
from service.ballots.languages.spelling import extended

LANGUAGES: dict[str, Language] = {
    language.code: extended(language, alike.GROUPS.get(language.code, {}))
    for language in (
        en.LANGUAGE,
        de.LANGUAGE,
        fr.LANGUAGE,
        ru.LANGUAGE,
        nl.LANGUAGE,
        uk.LANGUAGE,
        es.LANGUAGE,
        el.LANGUAGE,
        ar.LANGUAGE,
        sv.LANGUAGE,
        hi.LANGUAGE,
        it.LANGUAGE,
        da.LANGUAGE,
        pt.LANGUAGE,
        no.LANGUAGE,
        ja.LANGUAGE,
        fi.LANGUAGE,
        zh.LANGUAGE,
        pl.LANGUAGE,
        ko.LANGUAGE,
        cs.LANGUAGE,
        tr.LANGUAGE,
    )
}
