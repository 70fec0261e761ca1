"""Turkish, read when a comment is plainly written in it."""

from __future__ import annotations

from num2words import num2words

from service.ballots.language import Language, phrases
from service.ballots.languages import tr_composed
from service.ballots.languages.spelling import extended, joined, with_slips

#: "Dördüncü" and "otuz dokuzuncu" as they are typed without their dots, and common slips.
_SLIPS = (("dort", "dord"), ("sekiz", "sekis"), ("yirmi", "yirim"), ("dokuz", "dokus"))


def _numbers() -> dict[str, int]:
    found = {joined(num2words(value, lang="tr")): value for value in (*range(201), 300, 400, 500)}
    hundred = {"bir" + word: value for word, value in found.items() if 100 <= value < 200}
    return with_slips(found | hundred, _SLIPS)


def _ordinals() -> dict[str, int]:
    return {joined(num2words(value, lang="tr", to="ordinal")): value for value in range(1, 201)} | {
        "ilk": 1
    }


_PLAIN = Language(
    code="tr",
    everyday=phrases(
        """
        arası | arasında | beğendim | eşim | oldu | görüşürüz | ben | sen | biz | siz | bana | sana |
        bize | size | beni | seni | benim | senin | bizim | sizin | bu | şu | o | ve | veya | ya | da |
        de | ama | fakat | için | ile | gibi | kadar | daha | çok | en | her | hiç | ne | neden | nasıl |
        kim | hangi | nerede | var | yok | değil | evet | hayır | lütfen | teşekkürler | teşekkür |
        ederim | sağol | sağolun | merhaba | selam | selamlar | günaydın | sevgiler | kolay | gelsin |
        ellerinize | emeğinize | sağlık | harika | güzel | muhteşem | süper | sayfa | sayfası | sayfayı |
        sayfadan | sayfaya | numara | oyum | oyumu | oy | seçiyorum | seçerim | diyorum | derim | olsun |
        istiyorum | isterim | başla | başlayalım | başlasın | bence | belki | tabii | tabiki |
        kesinlikle | bugün | yine | şimdi | herkes | hepsi | son | ilk | köşe | köşesi | üst | alt | sağ |
        sol | orta | ortadaki | uğurlu | sayım | yıldır | yaşındayım | hariç | saymayın | mı | mi | mu |
        mü | olur | olabilir | alalım | gelin | hocam | canım
        """
    ),
    numbers=_numbers(),
    ordinals=_ordinals(),
    untelling=phrases("on | elli | kirk | bin | bir | alti | bes | yuz | sen"),
    page=phrases("""
        sayfa | sayfası | sayfayı | sayfadan | sayfaya | sayfasını | sayfasından | sf | sf. | s. |
        syf | sayfa no | sayfa numarası
        """),
    number=phrases("numara | no | no. | nr | sayı | numarası | num"),
    dotted=phrases("""
        sayfa | sayfası | sayfayı | sayfadan | sayfaya | sıra | sütun | bölüm | kat | gün | yıl |
        hafta | yaş | sf
        """),
    fillers=phrases(
        """
        bence | belki | tabii | tabii ki | tabiki | kesinlikle | bugün | bu sefer | bu kez |
        yine | şimdi | lütfen | yani | sadece | hep | hmm | hm | ııı | güzel | benim | o zaman |
        artık | mutlaka | olarak | ise
        """
    ),
    choice_before=phrases(
        """
        oyum | benim oyum | oyumuz | oy | oyumu veriyorum | oyum şuna | seçimim | benim seçimim |
        tercihim | benim tercihim | tercih | tahminim | benim tahminim | favorim | benim favorim |
        bana göre | bence | benden | bizden | benim için | haydi | hadi | lütfen | başlayalım |
        önerim | istediğim | gönlüm | kalbim | içimden gelen | oyumu değiştiriyorum | düzeltme |
        yani | demek istediğim | takım | en iyisi | ben derim ki | diyorum ki | olsun | şansımız |
        sıradaki | sıradaki sayfa | yok yok | yok | aslında
        """
    ),
    choice_after=phrases(
        """
        beğendim | diyecektim | dicektim | diycektim | çok beğendim | güzel olur | lütfen | lutfen | olsun | olsun lütfen | diyorum | derim |
        diyelim | seçiyorum | seçerim | seçtim | seçelim | istiyorum | isterim | olabilir | olur mu |
        olsa | olsa güzel olur | için oy | oyum | benim oyum | benim için | bence | benden | bizden |
        numara | numara lütfen | nolu | no'lu | numaralı | ile başla | ile başlayalım | ile başlayın |
        ile başlasın | den başla | dan başla | den başlayalım | dan başlayalım | başla | başlayalım |
        alalım | alayım | yapalım | yapın | işleyin | işleyelim | gelsin | veriyorum | oy veriyorum |
        tabii | tabii ki | kesinlikle | ilk | önce | ilk önce | favorim | tercihim | seçimim | ye | ya |
        yi | yı | yu | yü | i | ı | u | ü | e | a | den | dan | ten | tan | si | sı | su | sü | nci |
        ncı | ncu | ncü | inci | ıncı | uncu | üncü | nin | nın | pls | please
        """
    ),
    other_before=phrases(
        """
        saat | yaşım | yaş | yıl | tam | toplam | yaklaşık olarak | son | bölüm | kısım | video |
        sezon | seviye | sıra | gün | hafta | ay | beden | iğne | ip | renk |
        aida | sembol | sütun | otobüs | tren | peron | vapur | oda | kat | sokak | model |
        kanal | sıcaklık | eksi | en az | en fazla | fazla | günde | haftada | ayda | her |
        geçen | aldım | işledim | içtim | bekledim | kaldı | ocak | şubat | mart | nisan | mayıs |
        haziran | temmuz | ağustos | eylül | ekim | kasım | aralık | doğum
        """
    ),
    other_after=phrases(
        """
        arası | arasında | arasından | yaş | yaşında | yaşındayım | yaşıma | yıl | yıldır | yıllık |
        yılı | sene | senedir | senelik | ay | aydır | hafta | haftadır | haftalık | gün | gündür |
        günlük | saat | saattir | dakika | dakikadır | dk | saniye | kere | kez | defa | x | yüzde |
        lira | tl | euro | dolar | derece | iplik | ip | kat ip | çile | renk | iğne | numara iğne |
        numara ip | count | ct | cm | mm | m | metre | km | kilo | kg | gram | litre | proje | projem |
        kanaviçe | etamin | desen | sıra | sütun | çocuk | çocuğum | torun | torunum | kedi | kedim |
        köpek | at | tavuk | koyun | inek | kişi | kadın | arkadaş | izleyici | abone | izlenme | beğeni |
        yorum | puan | yıldız | bardak | fincan | kahve | çay | kurabiye | yumurta | kitap | bölüm |
        video | film | şarkı | deneme | şey | soru | mesaj | kelime | kutu | çift | çorap | kış | yaz |
        gece | akşam | sabah | bin | yüz | milyon | düzine | el | parmak | göz | lamba | boncuk | düğme |
        tekne | ada | ocak | şubat | mart | nisan | mayıs | haziran | temmuz | ağustos | eylül | ekim |
        kasım | aralık | tane | adet | farklı | yeni | büyük | küçük | sayfalık
        """
    ),
    weak_before=phrases("de | da | var | bende | daha | henüz | neredeyse | artı"),
    weak_after=phrases("kaldı | bitti | daha | var | puan | oy"),
    neutral_before=phrases(
        """
        merhaba | selam | selamlar | günaydın | iyi | akşamlar | günler | geceler | teşekkürler |
        teşekkür | ederim | sevgiler | canım | hocam | harika | güzel | çok | muhteşem | süper |
        evet | hayır | ve | veya | ama | bu | şu | o | ben | biz | oh | ay | vay | wow | ok |
        tamam | bugün | şimdi | yine | her | zamanki | gibi | sayfa | numara | belki | tabii |
        kesinlikle | x | xx | lol | haha | kolay | gelsin | zor | herkese | ellerinize | sağlık |
        emeğinize | heyecanla | bekliyorum | değil | hariç | ya | da | yoksa | pardon
        """
    ),
    neutral_after=phrases(
        """
        çünkü | ve | veya | ama | bu | o | ben | biz | benim | teşekkürler | teşekkür | ederim |
        sevgiler | merhaba | selam | selamlar | harika | güzel | çok | süper | evet | bugün |
        şimdi | yine | x | xx | lol | haha | kolay | gelsin | iyi | akşamlar | günler | şanslı |
        şans | canım | hocam | ellerinize | sağlık | emeğinize | da | de | bana | bekliyorum |
        heyecanla | diyor | ya | yoksa | ise | için | ile
        """
    ),
    lucky_before=phrases(
        """
        uğurlu sayım | uğurlu sayı | uğurlu numaram | şanslı sayım | şanslı numaram |
        şans numaram | şans sayım | en sevdiğim sayı | sevdiğim sayı | kapı numaram |
        kapı numaramız | forma numaram
        """
    ),
    not_before=phrases("değil de | asla | hariç her şey"),
    not_after=phrases(
        """
        değil | hariç | dışında | olmasın | istemiyorum | istemem | haricinde | yerine |
        hariç hepsi | değil de | olmasın lütfen | uğursuz
        """
    ),
    correction=phrases(
        """
        yok yok | yok pardon | pardon | yanlış | yanlış yazdım | düzeltiyorum | düzeltme |
        fikrimi değiştirdim | değiştiriyorum | değiştirdim | dur | durun | bir dakika |
        hayır hayır | şaka | şaka yaptım | demek istedim | diyecektim | dicektim | diycektim | diyecektm | olacaktı | edit |
        aslında yok
        """
    ),
    soft_correction=phrases("yok | aslında | hayır | daha doğrusu"),
    own_voice=phrases("ben | ama | biz | fakat"),
    if_words=phrases("eğer"),
    being=phrases("dir | dır"),
    either=phrases("veya | ya da | yada | yoksa | veyahut | ya"),
    also=phrases("ve | & | artı | ile"),
    second=phrases("""
        olmazsa | o olmazsa | yoksa | ikinci tercihim | ikinci seçimim | yedek | yedek olarak |
        sonra | değilse
        """),
    first_choice=phrases("birinci tercihim | ilk tercihim | ilk seçimim"),
    second_choice=phrases("ikinci tercihim | ikinci seçimim | yedek | yedek olarak | olmazsa"),
    condition=phrases(
        "boşsa | hâlâ boşsa | eğer | alınmadıysa | seçilmediyse | kimse almadıysa | müsaitse"
    ),
    reported_before=phrases("""
        herkes | çoğunluk | başkaları | birisi | biri | kimse | geçen sefer | geçen hafta |
        neredeyse | insanlar
        """),
    family_before=phrases(
        """
        kocam | eşim | karım | oğlum | kızım | annem | babam | ablam | abim | kardeşim |
        anneannem | babaannem | dedem | torunum | arkadaşım | komşum | kedim | köpeğim |
        kayınvalidem | teyzem | halam
        """
    ),
    reported_after=phrases(
        """
        çok güzel oldu | güzel oldu | çok güzeldi | kazanır | kazanacak | kazanıyor | önde | alındı |
        alındı mı | alınmış | alınmış mı | seçildi | seçildi mi | kapıldı mı | dolu mu | boş mu |
        duruyor mu | diyor | diyorlar | sayfa | sayfa mı | mı | mi | mu | mü | demiş
        """
    ),
    asking=phrases("neden | niye | kim | hangi | ne | nasıl | acaba | kaç"),
    suggesting=phrases(
        "olur mu | olabilir mi | alabilir miyim | başlayabilir miyiz | lütfen | belki"
    ),
    roughly_before=phrases("yaklaşık | aşağı yukarı | civarı"),
    roughly_after=phrases("li | lı | lu | lü | civarı | civarında | gibi | falan | filan | küsur"),
    saying=phrases("diyor | dedi | yazmış | sordu"),
    relative_after=phrases("""
        ün yanı | nin yanı | nin altı | nin üstü | in altındaki | nin altındaki | nin üstündeki |
        in üstündeki
        """),
    withdrawn=phrases(
        """
        oyumu saymayın | oyumu sayma | oyumu geri alıyorum | oyumu geri çekiyorum | oyumu iptal |
        oyumu silin | oyumu sil | oyum geçersiz | oyum sayılmasın | vazgeçtim
        """
    ),
    abstaining=phrases(
        "oy vermiyorum | oy kullanmıyorum | çekimser | karar veremedim | kararsızım"
    ),
    pointing=phrases("""
        aynı | aynısı | aynen | ben de | bende aynı | yukarıdaki gibi | yaşım | doğum günüm |
        kapı numaram | +1 | katılıyorum
        """),
    agreeing=phrases("evet | katılıyorum | aynen | aynısı | ben de | +1"),
    kinds=phrases("""
arası | arasında | arasından | çift sayı | tek sayı | çift sayfa | asal | üst sıra | alt sıra |
sol taraf | sağ taraf | kenar | üst yarı | alt yarı
        """),
    first=phrases("ilk | birinci | en baştaki"),
    last=phrases("son | sonuncu | en son | en sondaki"),
    corner=phrases("köşe | köşesi | köşedeki | köşeden | köşeye | köşesinden"),
    top=phrases("üst | üstteki | yukarı | en üst | üstten"),
    bottom=phrases("alt | alttaki | aşağı | en alt | alttan"),
    left=phrases("sol | soldaki | en sol | soldan"),
    right=phrases("sağ | sağdaki | en sağ | sağdan"),
    middle=phrases("orta | ortadaki | ortası | tam orta | tam ortadaki | ortadan | merkez"),
    row=phrases("sıra | satır"),
    column=phrases("sütun"),
    told_from_last=phrases("sondan bir önceki | sondan ikinci | sondan"),
)

LANGUAGE = extended(_PLAIN, tr_composed.GROUPS)
