"""Hindi phrases put together of parts, in both scripts: ways of saying that differ in a word."""

from __future__ import annotations

from collections.abc import Mapping

from service.ballots.language import Phrase, each_of, phrases

GROUPS: Mapping[str, tuple[Phrase, ...]] = {
    "printed": phrases("किताब | पत्रिका | उपन्यास | अखबार"),
    "again": phrases("फिर | फिर से"),
    "named_before": phrases("सहमत हूँ"),
    "counting_pages": phrases("पेज | पन्ने | पृष्ठ | पेजों | पन्नों"),
    "everyday": phrases(
        """
        dekhna | dekhni | wala | waala | jaise | upar | neeche | mein | abhi | phir | sabse | koi | kisi | hoon |
        karein | karenge | chuno | chuna | agar | lekin | magar | haanji | umar | janamdin
        """
    ),
    "page": phrases("pej | pag number | page no | page numbar"),
    "number": phrases("numbar | nambr | no wala"),
    "choice_before": each_of(
        "mera | mere | meri | hamara",
        "vote | choice | pasand | page | number | matt",
        "hai | jata hai | to | ke liye | : |",
    )
    + each_of("मेरा | मेरी | हमारा", "वोट | चुनाव | पसंद | मत | पेज", "तो | जाता है | है |")
    + each_of("पहली | दूसरी | तीसरी | पहला | दूसरा | तीसरा", "पसंद | विकल्प | चॉइस |", ": | है |")
    + each_of("pehli | dusri | teesri | pehla | dusra", "pasand | choice |", ": |")
    + phrases(
        "main to | mai | mein to | hum | lekin main | पर मैं | लेकिन मैं | मगर मैं | mujhe to | muje | mjhe | chalo na | दूसरी | तीसरी"
    ),
    "choice_after": each_of(
        "ko | ke liye | pe | par | wala | wali",
        "vote | mera vote | do | dena | karo | chahiye | dikhao |",
    )
    + each_of(
        "dekhna | dekhni | lena | karna | chunna | banwana",
        "hai | he | chahti | chahungi | chahti hu |",
    )
    + each_of("देखना | लेना | करना | चुनना", "है | चाहती | चाहूँगी")
    + phrases(
        "हो तो मज़ा आ जाए | करें | ho to maza aa jaye | wala page karo | number didi | number ji | didi | दीदी"
    ),
    "not_after": phrases("ki jagah | ke badle | की जगह | के बदले | नहीं"),
    "first_choice": phrases("पहली | pehli"),
    "second_choice": phrases("दूसरी | dusri | doosri"),
    "stopgap": phrases("नहीं तो | वरना | nahi to | nahi toh | warna"),
    "correction": phrases(
        "की जगह | के बदले | ki jagah | ke badle | बदलकर | बदल कर | badalkar | badal kar"
    ),
    "neutral_after": phrases(
        "की जगह | के बदले | ki jagah | ke badle | बदलकर | बदल कर | badalkar | नहीं तो | nahi to | nahi toh"
    ),
    "neutral_before": phrases(
        "सॉरी | sorry | की जगह | ki jagah | badalkar | नहीं तो | nahi to | nahi toh"
    ),
    "reported_after": each_of("से | se", "सहमत | sehmat | sahmat")
    + each_of("खाली | बचा | लिया | हो | ले", "है | गया | चुका | लिया | हुआ", "क्या |")
    + each_of("khali | bacha | ho gaya | le liya | ho chuka", "hai | kya |"),
    "asked_later": phrases(
        "हो गया क्या | खाली है क्या | खाली है | बचा है | ho gaya kya | khali hai kya"
    ),
    "pointing": each_of(
        "जो | वही जो | जैसा | जो भी",
        "ऊपर | ऊपर वाली | ऊपर वाले | मेरी * | *",
        "दीदी | ने |",
        "ने | कहा |",
        "कहा | चुना | बोला |",
    )
    + each_of(
        "jo | wahi jo | jaisa | jo bhi",
        "upar | upar wali | *",
        "didi ne | ne |",
        "kaha | chuna | bola | likha",
    )
    + phrases(
        "ऊपर वाली दीदी | upar wali didi | meri umar wala | meri umr wala | mera janamdin | mera birthday | meri age wala | मेरी उम्र जितना"
    ),
    "withdrawn": each_of(
        "मेरा | mera",
        "वोट | vote",
        "हटा दो | रद्द करें | कैंसल कर दो | वापस | मत गिनो | hata do | cancel karo | wapas lo | mat gino | hatao",
    ),
    "kinds": phrases("के बीच | ke beech | ke bich"),
    "other_before": phrases("bus | बस | aaj | आज | कमरा | kamra | episode | एपिसोड"),
    "other_after": phrases("की हूँ | का हूँ | की हो गई")
    + phrases(
        "के बीच | ke beech | ke bich | किलोमीटर | किमी | कप | कप चाय | साल की | kilometer | cup | cup chai | saal ki | saal | rupaye | रुपये | ghante | din | mahine"
    ),
    "times": phrases("गुना | गुणा | guna | x | इंटू | into"),
    "plus": phrases("प्लस | जमा | plus | jama"),
    "minus": phrases("माइनस | घटा | minus"),
    "sum_before": phrases("का आधा | aadha"),
}
