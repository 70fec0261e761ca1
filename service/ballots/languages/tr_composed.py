"""Turkish phrases put together of parts: what viewers say in many ways that differ in a word."""

from __future__ import annotations

from collections.abc import Mapping

from service.ballots.language import Phrase, each_of, phrases

_SAID = "dedi | dediyse | diyorsa | seçti | seçtiyse | diyor | yazdı | yazmışsa | derse | istiyor"

#: "One of the twenties", as "yirmilerden" and "yirmili sayfalardan".
_DECADES = (
    "yirmi-ler yirmi-li otuz-lar otuz-lu kırk-lar kırk-lı elli-ler elli-li altmış-lar altmış-lı "
    "yetmiş-ler yetmiş-li seksen-ler seksen-li doksan-lar doksan-lı on-lar on-lu"
).split()
_ONE_OF_A_DECADE = " | ".join(
    word.replace("-", "") + end
    for word in _DECADES
    for end in (
        ("den", "de") if word.endswith("ler") else ("dan", "da") if word.endswith("lar") else ("",)
    )
)

GROUPS: Mapping[str, tuple[Phrase, ...]] = {
    "printed": phrases("kitap | kitapta | kitabın | dergi | dergide | roman | romanda | gazete"),
    "turning": phrases("ama | fakat"),
    "voting": phrases("oyum | seçiyorum"),
    "again": phrases("yine | gene"),
    "counting_pages": phrases("sayfa | sayfalık | sayfa mı"),
    "answered": phrases("yoksa | değilse")
    + phrases("öyleyse | evetse | o zaman | eğer öyleyse | eğer evet ise"),
    "today": phrases("bugün"),
    "kinds": phrases(_ONE_OF_A_DECADE),
    "everyday": phrases(
        "sayfalardan | sayfalar | birini | biri | olsun | olur | dediyse | dedi | yerine | değiştirin | değiştir | beni | yaz | yazın | kocam | dün | yendik | otobüs | numaraya | görmek | çarpı | kere"
    ),
    "choice_before": each_of(
        "birinci | ikinci | üçüncü | ilk", "tercihim | seçimim | seçeneğim |", ": |"
    )
    + phrases(
        "yedek | yedeğim | yedek olarak | ama ben | ben ise | bence de | öncelikle | mümkünse"
    ),
    "choice_after": each_of(
        "numaraya | numarayı | ye | ya | e | a | için |",
        "yaz | yazın | yazar mısın | kaydet | kaydedin",
        "beni |",
    )
    + each_of(
        "yi | yı | yu | yü | i | ı | u | ü | sayfasını |",
        "görmek | yapmanı | işlemeni | seçmek",
        "isterim | istiyorum | isterdim | çok isterim",
    )
    + each_of(
        "olursa | olsa",
        "çok |",
        "sevinirim | mutlu olurum | güzel olur | harika olur | süper olur | sevinirdim",
    )
    + each_of(
        "yapar | işler | yapabilir | başlar | seçer",
        "mısın | misin | mısınız | misiniz | mıyız | miyiz",
    )
    + each_of(
        "den | dan | ten | tan | sayfasından", "yanayım | yana | oyum var | başlasak | başlasın"
    )
    + phrases(
        "demek istedim | demek istemiştim | diyecektim | olmalı | yaptırın | yapsak | ı seçtim | yi seçtim"
    ),
    "first_choice": phrases("birinci | öncelikle | ilk tercihim"),
    "second_choice": phrases("ikinci | yedek | yedek olarak"),
    "second": phrases(
        "doluysa | olmazsa | alındıysa | olmadı | yoksa | boş değilse | üçüncü | yedek"
    ),
    "correction": phrases(
        "yerine | fikrimi değiştirdim | fikir değiştirdim | pardon | yok değil | demek istedim ki | vazgeçtim"
    ),
    "neutral_before": phrases("yerine | pardon | kusura bakmayın | # yerine"),
    "neutral_after": phrases("yerine # | ile değiştirin | ile değiştir | olarak değiştirin"),
    "reported_after": each_of(
        "alındı | dolu | boş | seçildi | söylendi | yapıldı | işlendi | bitti | kapıldı | müsait",
        "mı | mi | mu | mü | mıydı | miydi",
    )
    + each_of(
        "diyen | diyenler | seçen | yazan",
        "oldu | var | hanıma | hanım | arkadaşa | kişiye | herkes",
    )
    + phrases("diyor | diyorlar | dedi | istiyor | seçmiş"),
    "pointing": each_of(
        "yukarıdaki | üstteki | üsttekiyle | yukarıdakiyle | bir üstteki",
        "ile | yorumla | arkadaşla |",
        "aynı | aynısı",
    )
    + each_of("* | * hanım | arkadaş | annem | * ne | üstteki ne", "ne |", _SAID)
    + phrases(
        "* ne dediyse | ne dediyse | yaşım | yaşımı | doğum günüm | doğum yılım | evlilik yıldönümümüz | kapı numaram | aynısı | aynı sayfa"
    ),
    "withdrawn": each_of(
        "oyumu",
        "silin | sil | geri çekiyorum | geri alıyorum | iptal edin | iptal et | saymayın | yok sayın | çekiyorum",
    ),
    "abstaining": phrases(
        "sen seç | siz seçin | fark etmez | farketmez | sürpriz yap | karar veremedim | seçemedim | hepsi güzel | hangisi olursa"
    ),
    "roughly_after": phrases(
        "li | lı | lu | lü | civarı | civarında | gibi | dolaylarında | küsur | ya yakın | e yakın"
    ),
    "other_before": phrases("görüşürüz") + phrases("yendik | yenildik | kazandık | dün"),
    "other_after": phrases("yaşımda | yaşındayken başladım | yaşında başladım")
    + phrases("""
        yaşımdan | yaşımdan beri | yaşından | yaşından beri | yaşındaydım | yaşındayken |
        yaşımdayken | yaşıma kadar
        """)
    + each_of("numaralı", "otobüs | oda | tren | hat | ev | kapı")
    + phrases("kilometre | adım | lira | count etamin | etamin | yendik | kazandık"),
    "times": phrases("kere | çarpı | kez | x"),
    "plus": phrases("artı"),
    "minus": phrases("eksi"),
    "divided_by": phrases("bölü"),
    "part_of": phrases("in | nin"),
    "concluding": phrases("o zaman | yani"),
    "middle": phrases("tam ortadaki | orta | ortada | tam orta | ortasındaki"),
    "reported_before": phrases(
        "kocam | eşim | kızım | oğlum | annem | babam | ablam | kardeşim | görümcem | kayınvalidem | arkadaşım"
    ),
}
