"""Hindi, as viewers write it under a video, in its own script and in Latin letters."""

from __future__ import annotations

from service.ballots.language import Language, phrases
from service.ballots.languages import hi_composed, hi_counts, hi_numbers
from service.ballots.languages.spelling import extended

_PLAIN = Language(
    code="hi",
    # The last words are English, and as much a part of Hindi typed in Latin letters.
    everyday=phrases(
        """
        है | हैं | का | की | के | को | में | से | पर | और | यह | ये | वह | वो | मैं | हम | आप | तुम | मुझे | मेरा | मेरी |
        मेरे | हमारा | नहीं | हाँ | हां | जी | क्या | कि | तो | भी | ही | था | थी | कर | करो | कीजिए | दीजिए | चाहिए |
        बहुत | अच्छा | सुंदर | नमस्ते | धन्यवाद | शुक्रिया | कृपया | प्लीज | दीदी | पेज | पन्ना | पृष्ठ | नंबर | वोट |
        hai | hain | ko | mera | meri | mujhe | kripya | kripaya | dhanyavaad | dhanyavad | shukriya | namaste |
        namaskar | didi | bahut | accha | acha | nahi | nahin | haan | chahiye | kijiye | kijiyega | dijiye | wala |
        wali | karo | kar | karna | karte | chunti | chunta | pasand | hamara | hamari | aapka | aapki | panna | prishth |
        liye | raha | rahi | kya | kaise | kaisa | shuru | yeh | aur | bhi | toh | abhi | saal |
        please | number
        """
    ),
    numbers=hi_numbers.numbers(),
    ordinals=hi_numbers.ordinals(),
    page=phrases(
        """
        पेज | पेज नंबर | पेज न. | पेज नं. | पेज नं | पन्ना | पन्ने | पन्ना नंबर | पन्ना नं. | पृष्ठ | पृष्ठ संख्या |
        पृष्ठ क्रमांक | पृष्ठ नंबर | पेज संख्या | पेज नम्बर | panna | panne | prishth | page number
        """
    ),
    number=phrases("नंबर | नम्बर | नं | नं. | न. | संख्या | क्रमांक | अंक | नम्बर वाला | nambar | sankhya"),
    fillers=phrases(
        """
        यह | ये | वह | वो | है | होगा | होगी | ज़रूर | जरूर | पक्का | शायद | बस | केवल | सिर्फ़ | आज | अब | इस बार |
        फिर से | हमेशा | कृपया | प्लीज | प्लीज़ | जी | तो | भी | ही | अपना | अपनी | मेरा | मेरी | bas | zaroor | shayad |
        kripya | plz | hai | toh
        """
    ),
    choice_before=phrases(
        """
        इसलिए | isliye |
        वोट | मेरा वोट | मेरा वोट है | मेरा वोट जाता है | वोट है | हमारा वोट | मेरा मत | मत | मेरा चुनाव | मेरा चुनाव है |
        चुनाव | मेरी पसंद | मेरी पसंद है | पसंद | मेरी चॉइस | चॉइस | मेरी तरफ से | मेरी तरफ़ से | मेरी ओर से | मेरे हिसाब से |
        मेरे ख्याल से | मेरे ख़याल से | मैं | मैं तो | हम | मैं चुनती हूँ | मैं चुनता हूँ | मैंने चुना | चुना | मुझे | मुझे तो |
        हमें | मुझे चाहिए | मुझे लगता है | लगता है | मेरा अनुमान | मेरा जवाब | मेरा उत्तर | जवाब | कृपया | प्लीज | प्लीज़ |
        क्यों न | क्यों ना | शुरुआत | चलो | चलिए | अगला | अगली | मेरा | मेरी | दिल कहता है | मन कहता है | मैं कहूँगी | कहूँगी |
        बदलकर | बदल कर | mera vote | mera vote hai | mera wala | vote | meri pasand | meri choice | meri taraf se | main |
        mujhe | mujhe chahiye | mere hisaab se | mere khayal se | kripya | chalo | agla | mera
        """
    ),
    choice_after=phrases(
        """
        कृपया | प्लीज | प्लीज़ | प्लीज जी | नंबर | नंबर प्लीज | नंबर कृपया | नंबर वाला | नंबर वाली | नंबर को | नम्बर |
        पेज | पन्ना | पृष्ठ | वाला | वाली | वाले | वाला पेज | वाला पन्ना | वाँ पेज | वां पेज | वा पेज | वीं | को वोट |
        को मेरा वोट | को मेरा मत | पर वोट | के लिए वोट | के लिए | मेरा वोट | मेरी पसंद | मेरी तरफ से | मेरी ओर से |
        मेरे लिए | से शुरू | से शुरु | से शुरुआत | से आरंभ | पर जाएँ | पर चलो | कर दो | कर दीजिए | कर दें | करो | कीजिए |
        करें | करना | कीजिएगा | बनाओ | बनाइए | बनाएँ | बनाएं | बना दो | चुनती | चुनता | चुनूँगी | चुनूंगी | चुनूँगा |
        चुनूंगा | चुनते | चुनना | चुना | लूँगी | लूंगी | लेंगे | लीजिए | ले लो | चाहिए | चाहूँगी | चाहूंगी | चाहती | चाहता |
        पसंद | अच्छा | अच्छा लगेगा | अच्छा रहेगा | ठीक | ठीक रहेगा | सही | सही रहेगा | कैसा | कैसा रहेगा | कैसी रहेगी |
        दे दो | दीजिए | हो जाए | होना चाहिए | देखना | kripya | kripaya | please | plz | pls | number | number please |
        wala | wali | wala page | ko vote | ko mera vote | ko | se shuru | kar do | kar dijiye | karo | kijiye | karna |
        banao | banaiye | chahiye | chunti | chunta | chunungi | lungi | pasand | accha | kaisa rahega | thik
        """
    ),
    other_before=phrases(hi_counts.OTHER_BEFORE),
    other_after=phrases(hi_counts.OTHER_AFTER),
    weak_before=phrases(hi_counts.WEAK_BEFORE),
    weak_after=phrases(hi_counts.WEAK_AFTER),
    neutral_before=phrases(hi_counts.NEUTRAL_BEFORE),
    neutral_after=phrases(hi_counts.NEUTRAL_AFTER),
    lucky_before=phrases(
        """
        लकी नंबर | मेरा लकी नंबर | लकी नंबर है | भाग्यशाली अंक | शुभ अंक | मेरा शुभ अंक | शुभ अंक है | पसंदीदा नंबर |
        मेरा पसंदीदा नंबर | पसंदीदा अंक | मेरा पसंदीदा अंक | lucky number | mera lucky number | pasandida number
        """
    ),
    not_before=phrases("ना | न कि | के बजाय | बजाय"),
    not_after=phrases(
        """
        नहीं | को नहीं | नही | मत | मत करो | मत कीजिए | मत चुनो | छोड़कर | छोड़ कर | को छोड़कर | को छोड़ कर | के अलावा |
        के सिवा | के सिवाय | को छोड़ | की जगह | के बजाय | पसंद नहीं | नहीं चाहिए | nahi | nahin | mat | chhodkar |
        chhod kar | ko chhodkar | ke alawa | ke siva | ki jagah
        """
    ),
    correction=phrases(
        """
        नहीं नहीं | अरे नहीं | ओह नहीं | माफ़ कीजिए | माफ कीजिए | सॉरी | गलती से | ग़लती से | गलत | मेरा मतलब | मतलब |
        बदल रही | बदल रहा | बदलना | बदल दीजिए | बदल दो | मज़ाक | मजाक | रुको | रुकिए | सुधार | nahi nahi | arre nahi |
        matlab | mera matlab | galti se | edit
        """
    ),
    soft_correction=phrases("बल्कि | अब | बेहतर | ठीक है | balki"),
    either=phrases("या | या फिर | अथवा | या शायद | ya | ya phir"),
    also=phrases("और | तथा | व | और फिर | aur | साथ में"),
    second=phrases(
        """
        अगर वो नहीं तो | अगर नहीं तो | नहीं तो | वरना | अन्यथा | अगर लिया जा चुका है तो | अगर ले लिया गया तो | दूसरी पसंद |
        दूसरा विकल्प | उसके बाद | फिर | nahi to | nahi toh | warna | uske baad
        """
    ),
    first_choice=phrases("पहली पसंद | पहला विकल्प | पहली चॉइस | pehli pasand"),
    second_choice=phrases("दूसरी पसंद | दूसरा विकल्प | दूसरी चॉइस | dusri pasand"),
    condition=phrases(
        "अगर खाली | अगर किसी ने | अगर कोई | अगर बचा | अगर उपलब्ध | अगर सब | यदि | agar kisi | agar khali"
    ),
    depends=phrases("निर्भर | के हिसाब से तय | बशर्ते"),
    ranked=phrases("इसी क्रम में | इस क्रम में | क्रम से"),
    tally_before=phrases("लोगों ने | वोट मिले"),
    topics=phrases(
        "साइज़ | साइज | सुई | कपड़ा | कपड़े | धागा | धागे | रंग | काउंट | घंटे | मिनट | कीमत | रुपये"
    ),
    ages=phrases("जन्म का साल | जन्म वर्ष | जन्मदिन | मेरी उम्र | जन्म तिथि"),
    reported_before=phrases(
        """
        सब | सभी | सब लोग | सभी लोग | ज़्यादातर | ज्यादातर | कुछ लोग | लोग | कोई | किसी ने | किसी | बाकी सब | पिछली बार |
        मेरे पति | मेरे पति ने | मेरी पत्नी | मेरा बेटा | मेरे बेटे ने | मेरी बेटी | मेरी बेटी ने | मेरी माँ | मेरी मां |
        मेरी सास | मेरी बहन | मेरी बहन ने | मेरा भाई | मेरी सहेली | मेरी दोस्त | mere pati | meri beti | mera beta | sab |
        sab log | जीतेगा | कमेंट्स
        """
    ),
    family_before=phrases(
        """
        पति | पत्नी | बेटा | बेटे | बेटी | माँ | मां | मम्मी | पापा | पिताजी | दादी | दादा | नानी | नाना | बहन | भाई | सहेली |
        दोस्त | पोता | पोती | सास | ननद | पड़ोसन | बच्चे | बिल्ली | कुत्ता | चाची | मौसी | भतीजी | pati | beti | beta
        """
    ),
    reported_after=phrases(
        """
        जीतेगा | जीतेगी | जीत रहा | जीत गया | आगे है | कह रहे | कह रही | कह रहा | कहते | कहती | कहता | ने कहा | बोल रहे | बोल रही |
        लिया जा चुका | ले लिया गया | ले लिया | किसी ने चुना | हो चुका | हो गया | बन चुका | keh rahe | keh rahi | bol rahe
        """
    ),
    asking=phrases(
        "क्या | क्यों | कौन | किसने | किसी ने | कब | कहाँ | कितने | कितना | कोई | kya | kyun | kaun | kab | kitne"
    ),
    suggesting=phrases(
        "क्या हम | क्या आप | क्या मैं | क्यों न | क्यों ना | कैसा रहेगा | कृपया | प्लीज | kya hum | kya aap | kyun na | please"
    ),
    saying=phrases("कहा | कहते | कहती | कहता | बोली | बोला | बोले | लिखा | पूछा | kaha | bola | boli"),
    goes_on=phrases("भी | भी अच्छा | अच्छा था | bhi"),
    roughly_before=phrases(
        "करीब | क़रीब | लगभग | तकरीबन | आसपास | kareeb | karib | lagbhag | around"
    ),
    roughly_after=phrases(
        "के आसपास | के आस पास | के करीब | के लगभग | के पास | ke aaspaas | ke aas paas | ke kareeb"
    ),
    between=phrases("बीच | के बीच"),
    through=phrases("से | से लेकर | se"),
    question_before=phrases("कुल | में से | total"),
    relative_after=phrases(
        "के बगल | के बग़ल | के बाजू | के ऊपर | के नीचे | के बाद वाला | के बाद | के पहले वाला | से पहले | के दाएँ | के बाएँ | "
        "ke upar | ke neeche | ke niche | ke bagal | ke baad"
    ),
    withdrawn=phrases(
        """
        मेरा वोट मत | मेरा वोट हटा | मेरा वोट हटाइए | मेरा वोट रद्द | मेरा वोट वापस | वोट वापस | मेरा वोट न गिनें | मेरा मत वापस |
        मेरा मत रद्द | मेरा वोट कैंसल | मेरा वोट कैंसिल | मेरा वोट नज़रअंदाज़ | मेरा वोट छोड़ | वोट रद्द | mera vote mat |
        mera vote hata | mera vote cancel | mera vote wapas | mera vote radd | vote wapas
        """
    ),
    abstaining=phrases(
        """
        वोट नहीं | वोट नहीं कर | कोई वोट नहीं | तय नहीं कर | समझ नहीं आ रहा | सोच रही हूँ | कोई भी पेज | कोई भी | कोई भी नंबर |
        कोई सा भी | आप ही चुनिए | आप चुनिए | आप ही चुनें | आप चुनें | आप चुन लीजिए | आप ही चुनो | आपकी मर्ज़ी | आपकी मर्जी |
        जो आप चाहें | जो आपको अच्छा लगे | जो मन हो | कुछ भी | सरप्राइज | koi bhi | aap hi chuno | aap chuniye | aapki marzi |
        kuch bhi | jo aap chahe
        """
    ),
    pointing=phrases(
        """
        ऊपर वाले | ऊपर वाली | ऊपर जैसा | जो ऊपर | वही | वही पेज | वही नंबर | सेम | वही जो | जैसा * ने कहा | जो * ने कहा | मैं भी |
        मैं भी वही | मेरी उम्र | मेरा जन्मदिन | सहमत | wahi | same | main bhi | +1
        """
    ),
    agreeing=phrases("सहमत | मैं भी | बिल्कुल | बिलकुल | हाँ | वही | same | main bhi | +1"),
    kinds=phrases(
        """
        सम संख्या | विषम संख्या | सम पेज | विषम पेज | अभाज्य | ऊपर की पंक्ति | नीचे की पंक्ति | किनारे वाला | किनारा | किनारे का |
        बीच के आसपास | बीच में कहीं | कहीं बीच में | ऊपर का हिस्सा | नीचे का हिस्सा | दो अंकों
        """
    ),
    first=phrases("पहला | पहली | पहले | सबसे पहला | सबसे पहली | प्रथम | pehla | pehli | sabse pehla"),
    last=phrases("आखिरी | आख़िरी | अंतिम | सबसे आखिरी | सबसे आख़िरी | aakhri | aakhiri | akhri | antim"),
    corner=phrases("कोना | कोने | कोने का | कोने वाला | कोने में | kona | kone | kone wala"),
    top=phrases("ऊपर | ऊपरी | ऊपर का | ऊपर वाला | ऊपर की | सबसे ऊपर | upar | upari | upar wala"),
    bottom=phrases(
        "नीचे | निचला | निचले | निचली | नीचे का | नीचे वाला | सबसे नीचे | neeche | niche | nichla"
    ),
    left=phrases(
        "बायाँ | बायां | बाएँ | बाएं | बाईं | बायीं | बाएँ का | बाईं ओर | बायें | bayan | baayan | baye | bayi"
    ),
    right=phrases(
        "दायाँ | दायां | दाएँ | दाएं | दाईं | दायीं | दाहिना | दाहिने | दाहिनी | दाईं ओर | दायें | dayan | daayan | daye | dahina"
    ),
    middle=phrases(
        "बीच का | बीच वाला | बीच वाली | बीचों बीच | बीचोंबीच | बीचो बीच | ठीक बीच | ठीक बीच में | ठीक बीच वाला | मध्य | मध्य का | "
        "मध्य वाला | केंद्र | केंद्र का | केंद्र वाला | सेंटर | सेंटर वाला | beech | beech wala | bich wala | beech ka"
    ),
    row=phrases("पंक्ति | लाइन | कतार"),
    column=phrases("कॉलम | स्तंभ"),
    told_from_last=phrases(
        "आखिरी से पहला | आखिरी से पहले वाला | अंतिम से पहला | आखिरी से दूसरा | aakhri se pehla"
    ),
)

LANGUAGE = extended(_PLAIN, hi_composed.GROUPS)
