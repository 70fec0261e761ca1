"""Greek phrases put together of parts: what viewers say in many ways that differ in a word."""

from __future__ import annotations

from collections.abc import Mapping

from service.ballots.language import Phrase, each_of, phrases

_GONE = """
πιασμένο | πιασμένη | ελεύθερη | ελεύθερο | διαθέσιμη | διαθέσιμο | κλεισμένο | κλεισμένη | παρμένο |
παρμένη | κεντημένη | έτοιμη | τελειωμένη
"""
_SAID = "είπε | λέει | διάλεξε | διαλέγει | ψήφισε | ψηφίζει | έγραψε | θέλει | πήρε | πρότεινε | θα πει"
_THE = "το | τη | την | στο | στη | στην | του | της |"

GROUPS: Mapping[str, tuple[Phrase, ...]] = {
    "printed": phrases("βιβλίο | μυθιστόρημα | περιοδικό | εφημερίδα"),
    "turning": phrases("αλλά | όμως"),
    "voting": phrases("ψηφίζω | η ψήφος μου | επιλέγω"),
    "torn": phrases("διστάζω | διαλέξω"),
    "fillers": phrases("to | tin | ti | ton"),
    "again": phrases("πάλι | ξανά"),
    "named_before": phrases("συμφωνώ με | συμφωνώ με το | συμφωνώ με τη | συμφωνώ με την"),
    "answered": phrases("αλλιώς")
    + phrases("αν ναι | αν ναι τότε | τότε | σε αυτή την περίπτωση | αν όχι"),
    "today": phrases("σήμερα"),
    "everyday": phrases("giati | mou | aresei | psifos | tha | kai | einai | poli | mera")
    + phrases("psifizw | thelw | parakalw | lew")
    + phrases("""
        ego | leo | kali | synexeia | kali synexeia | filakia | kalimera | kalispera |
        efxaristo | parakalo | psifizo | thelo | selida | tin | apo
        """)
    + phrases(
        """
        thelo | einai | psifizo | psifos | kalispera | άλλαξε | άλλαξα |
        γράψε | συγγνώμη | εννοούσα | προτίμηση | πιασμένο | νομίζω
        """
    ),
    "choice_before": phrases("""
        psifizw | psifizw to | psifizw tin | thelw | thelw to | thelw tin | dialegw |
        protimw | lew | ego lew
        """)
    + phrases("""
        leo | ego leo | psifizo | psifizo to | psifizo tin | thelo | tha ithela | dialego |
        protimo | pame | ksekina apo
        """)
    + each_of(
        "γράψε με | γράψτε με | βάλε με | βάλτε με | σημείωσέ με | υπολόγισέ με | γράψε μου",
        _THE + "| για | για το | για τη",
    )
    + each_of(
        "η επιλογή μου | η ψήφος μου | επιλογή | προτίμησή μου",
        "είναι | πάει | πέφτει | θα είναι | θα ήταν",
        _THE,
    )
    + each_of(
        "θα ήθελα | θέλω | θα θέλαμε | μακάρι",
        "πολύ | τόσο |",
        "να δω | να κάνεις | να είναι | να γίνει | να δούμε |",
        _THE,
    )
    + each_of(
        "ποντάρω | τα δίνω όλα | στοιχηματίζω | ψηφίζω | πάω | μένω | είμαι",
        "στο | στη | στην | με το | με τη | υπέρ του",
    )
    + each_of("να κάνουμε | μπορείς να κάνεις | μπορούμε να κάνουμε | κάνε μας | να πάμε", _THE)
    + each_of("πρώτη | δεύτερη | τρίτη", "επιλογή | προτίμηση |", ": | είναι | το |")
    + phrases(
        "αλλά εγώ | εγώ όμως | καλύτερα | κατά προτίμηση | ego leo | leo | thelo | psifizo | psifizo to | pame"
    ),
    "choice_after": phrases("parakalo | s'efxaristo")
    + each_of("θα ήταν | είναι", "τέλειο | τέλεια | ωραίο | ωραία | καλό | υπέροχο | φανταστικό")
    + phrases("parakalo | pls | plz"),
    "first_choice": phrases("πρώτη | κατά προτίμηση | καλύτερα"),
    "second_choice": phrases("δεύτερη | εναλλακτικά | ρεζέρβα"),
    "second": each_of(
        "κι αν | και αν | αν", "είναι | το | ήδη |", "πιασμένο | πιασμένη | κλεισμένο | παρμένο"
    )
    + phrases("αλλιώς | τρίτη | εναλλακτικά"),
    "correction": phrases("άλλαξα γνώμη | εννοούσα | λάθος | αντί για | ήθελα να πω | μετάνιωσα"),
    "neutral_before": phrases("εννοούσα | συγγνώμη | αλλιώς | άλλαξα γνώμη | # σε"),
    "neutral_after": phrases("kali | synexeia | filakia | kalimera | efxaristo")
    + phrases("όχι # | όχι το # | σε # | με # | αντί #"),
    "not_before": each_of("και όχι | όχι | αντί για | αντί | όχι πια", _THE),
    "own_voice": phrases("εγώ | αλλά εγώ | όμως εγώ"),
    "reported_before": phrases("μου είπαν | μου είπε | μου πρότειναν | άκουσα")
    + each_of("είναι | ήδη | μήπως είναι", _GONE, "το | η | ο")
    + each_of("κυρία | κοπέλα | αυτή | όποιος", "που", "είπε | λέει | διάλεξε", _THE)
    + each_of("συμφωνώ", "με", "το | τη | την |"),
    "reported_after": each_of("είναι | ήταν", "ήδη | ακόμα | ακόμη |", _GONE)
    + each_of("ήδη | ακόμα | ακόμη", _GONE),
    "asked_later": (
        each_of("είναι | μήπως είναι | ή είναι", "ήδη | ακόμα | ακόμη |", _GONE)
        + each_of("το πήρε | το έχει πάρει | το διάλεξε | το είπε", "κανείς | κάποιος | κανένας")
    ),
    "pointing": each_of(
        "το ίδιο | την ίδια | το ίδιο νούμερο | ίδια | ίδιο",
        "με | όπως",
        "την | τον | τη | το | την * |",
        "από πάνω | πάνω | παραπάνω | προηγούμενη | πιο πάνω | *",
    )
    + each_of("ό , τι | ότι | όπως | αυτό που", _SAID, "η | ο | η * |", "* |")
    + phrases("η ηλικία μου | τα γενέθλιά μου | η γιορτή μου | η χρονιά που γεννήθηκα | όσο είμαι"),
    "withdrawn": phrases("""
        μην μετρήσεις την ψήφο μου | μη μετράς την ψήφο μου | μην μετρήσεις |
        μην τη μετρήσεις | μην μετράς την ψήφο μου
        """)
    + each_of(
        "αποσύρω | σβήστε | σβήσε | ακυρώστε | ακύρωσε | μη μετρήσετε | μην υπολογίσετε | διαγράψτε | αγνοήστε",
        "την | τη |",
        "ψήφο | επιλογή | ψήφος",
        "μου",
    ),
    "abstaining": phrases(
        "διάλεξε εσύ | διάλεξε εσυ | εσύ διάλεξε | δεν μπορώ να διαλέξω | δεν ξέρω τι να διαλέξω | ό , τι θέλεις | "
        "μου είναι αδιάφορο | εκπλήξτε μας"
    ),
    "replacing": phrases("άλλαξε | αλλάξτε | αλλάζω | άλλαξέ | βάλε | αντικατάστησε | αλλάξτε μου"),
    "replaced_by": each_of("σε | με | στο | για", "το | τη |"),
    "roughly_before": phrases(
        "γύρω στο | γύρω στα | γύρω στη | κοντά στο | κάπου στο | περίπου στο | κάπου κοντά στο"
    ),
    "other_before": phrases("τα λέμε στις | συναντιόμαστε στις | τα λέμε")
    + each_of("κερδίσαμε | χάσαμε | νικήσαμε", "με |")
    + phrases(
        "λεωφορείο | τρένο | δωμάτιο | θάλαμος | επεισόδιο | περπάτησα | έτρεξα | καμβά | λινό | aida"
    ),
    "other_after": phrases("χιλιόμετρα | βήματα | καμβά | κλωστές | καφέδες | ct"),
    "sum_before": phrases("το μισό του | το μισό από | μισό του | το διπλάσιο του | το διπλάσιο"),
    "times": phrases("επί | φορές | x"),
    "plus": phrases("συν"),
    "minus": phrases("μείον | πλην"),
    "divided_by": phrases("διά | δια"),
    "part_of": phrases("του | της | από"),
    "whole_chart": phrases(
        "του σχεδίου | του πίνακα | του χάρτη | όλου του σχεδίου | του διαγράμματος | του κεντήματος"
    ),
    "concluding": phrases("οπότε | άρα | λοιπόν"),
    "middle": phrases("η μεσαία | μεσαία | στη μέση | κέντρο | στο κέντρο"),
}
