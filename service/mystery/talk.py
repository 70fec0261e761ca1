"""The words of talk around a guess: small words, guess words, tails, chat.

All words are written as they are compared (no case, no accents, no apostrophes): "im", "nao".
Several languages stand together; a word that would say something else in another is left out.
"""

from __future__ import annotations

#: Words that carry no part of a name's meaning: articles, prepositions, conjunctions, pronouns.
SMALL_WORDS = frozenset(
    """
    the a an of on in at by to for from with and or nor but as into onto over under upon off up down out
    is are was were be it its he she his her they their my our your we you i me us him them this that
    these those there here so not no
    der die das dem den des ein eine einen einem einer eines und oder im am zum zur vom von mit auf aus
    bei nach vor fur in an
    le la les l un une de du des d et ou au aux en dans sur sous avec pour par chez
    el los las lo una unos unas y o del al con por para sin sobre
    il gli i uno e dei della delle degli dello dal dalla nel nella nelle nei sul sulla sui alla alle agli
    per tra fra
    os as um uma do da dos das no na nos nas ao aos com
    het een van te op aan bij met voor naar uit ter
    ett av pa i och med till fran for vid om som den det de en et og til fra ved paa pa
    w z na do od i oraz przy pod nad ze we
    """.split()
)

#: Articles of other languages that a viewer may leave out or put in.
FOREIGN_ARTICLES = frozenset(
    """
    der die das den dem des ein eine le la les l un une du el los las lo una unos unas il gli i uno o
    os as um uma het de een den det en ett et
    """.split()
)

#: Small words that hardly stand in an English name.
FOREIGN_SMALL_WORDS = frozenset(
    """
    der die das dem des ein eine im auf am zum zur und vom le la les du un une et aux el los las del una
    il gli dei della delle nel nella os um uma dos das nos het een van och og av de di da y dla przy nad ze til paa uden zonder met voor
    """.split()
)

#: What hardly stands in a name of another language: its verbs of being, its questions.
FOREIGN_TALK = frozenset(
    """
    ist sind bin hat war wird wie was wer wo wann warum bitte danke est sont cest suis etait comment combien
    quand qui quoi pourquoi es esta son soy era fue como donde cuanto quien porque sono siamo come quanto
    dove perche sao estou hoje hoe waarom wat wie waar zijn ar vad hur hvad hvor jest gdzie jak ich je yo io
    eu ik jag jeg me mi te se nous vous wir ihr mir mich dich
    """.split()
)

#: "and" in other languages and in haste.
ANDS = frozenset(("n", "plus", "und", "et", "y", "e", "en", "och", "og", "i", "oraz", "a"))

#: Words that may stand before an offered name and change nothing.
GUESS_WORDS = frozenset(
    """
    i im id ill ive we wed me my our is it its this that thats be being would could might may must
    should shall can has have had got gotta to going gonna go with for of as at on in by like so ok
    okay right now well and or then oh ooh oohh ah aha aah eh er erm um umm uh hm hmm hmmm mm mmm wow omg
    ohh gosh golly goodness blimey crikey ha haha hah hehe lol lmao hi hey hello yo yes yep yeah yay yup
    nope wait hang hold think thinking believe believing reckon reckoning guess guessing guesses say
    saying bet betting wager vote voting votes suspect fancy feel feeling suggest offer submit submitting
    call calling calls declare definitely probably surely sure certain certainly absolutely maybe
    mayby perhaps possibly possible potentially likely obviously clearly honestly simply just really
    totally actually finally literally pretty quite fairly very most almost about how what whats why
    name named names title titled titles called entitled known piece pattern design chart picture
    mystery answer final first second third last next only one other another try attempt go shot stab
    wild random dark pick choice choose choosing chose opinion humble imo imho guesswork hunch theory
    entry tip money hat penny pennies ring put putting throw throwing lock locking stick sticking plump
    plumping opt opting settle settling lean leaning leans towards looks look looking sounds sound seems
    seem feels screams shouts know knew figured figure worked cracked solved spotted got it out all
    today tonight todays tonights time 100 percent page pg pages number no1 day night morning evening
    everyone everybody yall folks ladies friends dear lovely please pls thanks thank you x xx xxx
    the a an here comes goes mind take taking after still also again let lets see hear heres edit ps
    two three four five 1 2 3 4 5 1st 2nd 3rd solution do does did positive convinced
    """.split()
)

#: Words that may open a comment or a sentence before a bare name.
OPENERS = frozenset(
    """
    so ok okay right now well and or then oh ooh ah aha aah eh er erm um umm uh hm hmm mm wow omg ohh gosh
    golly goodness blimey crikey ha haha hah hehe lol lmao hi hey hello yo yes yep yeah yay yup nope wait
    hang on hold up maybe perhaps possibly probably definitely surely certainly absolutely obviously clearly
    finally everyone everybody methinks mayhaps btw incidentally
    either please pls thanks thank you x xx ps edit guess guessing answer
    teh hte y yall eureka bingo ta da tada gotcha solution got it just dunno otherwise alternatively else
    """.split()
)

#: Words of other languages that may stand before an offered name and change nothing.
GUESS_WORDS_ABROAD = frozenset(
    """
    vsadim se tipla tipl rekla rekl bych zkusim hadam
    dit is kann kan kunne kunde skulle soll sea fuera soit sia seja bylo bylby byc vaere
    ich glaube denke tippe rate sage sag mal meine wurde sagen vielleicht ist es das dass sei konnte doch mal halt eben definitiv naturlich klar ach ganz genau
    mein tipp bestimmt sicher sicherlich heisst wohl auf also ja na hallo moin ware dies dieses bild
    wahrscheinlich vermute schatze fur mich eindeutig war hm titel
    je dirais pense crois parie penche pour vote que cest serait ce est peut etre a mon avis moi ma
    reponse mise sur dire bonjour coucou alors bon ca doit sans doute surement donc bien bah ben evidemment oui titre sagit il
    creo es seria puede ser quizas quiza tal vez diria digo yo apuesto por mi respuesta para pienso me
    parece sera hola pues seguro sin duda debe titulo
    credo sia secondo me penso forse sara direi potrebbe essere e ciao allora direi dico per sicuramente
    deve titolo che
    acho talvez mim aposto em creio eu deve ola sim chuto digo titulo
    ik denk gok zeg geloof dat het misschien volgens mij zou kunnen zijn hoi dag vast zeker titel heet
    jag tror gissar tippar sager att ar kanske hej nog sakert heter maste vara min gissning pa
    jeg gaetter gjetter tipper siger sier maske kanskje er hei mon maa vaere vil si det
    luulen veikkaan arvaan etta se on onko tama ehka olisiko olisi varmaan mina
    mysle sadze uwazam obstawiam zgaduje stawiam mowie ze to moze czy dla mnie chyba wedlug moim zdaniem
    jest czesc hej ten
    myslim je podle asi mozna tipuji tipuju ahoj podla
    szerintem talan lehet hogy ez az gondolom
    cred ca este poate
    bence sanirim belki acaba bu
    mislim da mozda li
    crec ser potser
    menurut saya mungkin ini apakah
    ma arvan et see
    manau kad tai manuprat
    eg held kannski
    ek dink dis
    mi pensas estas
    dwin meddwl mai yw
    я думаю это что может быть наверное по моему мне кажется
    думаю це може мабуть
    νομιζω οτι ειναι μηπως ισως το
    """.split()
)

#: First words of a new statement that follows a name without a stop.
FRESH_START = frozenset(
    """
    because cos coz cuz bc since thanks thank love loving lots greetings cheers hugs hello hi hope
    hopefully lol haha kisses xx xxx pozdrawiam grusse liebe bisous saludos saluti beijinhos groetjes
    hilsen halsningar weil parce porque perche omdat eftersom
    """.split()
)

#: Words of chat: a clause that holds one of them is hardly a bare name.
CHAT = frozenset(
    """
    i im id ill ive you youre youve your yours he hes she shes we were weve my me mine our us they theyre
    their them his her it its this that thats these those who whos what whats when where wheres why how
    am is are isnt arent was wasnt werent be been has hasnt have havent had do does did dont didnt doesnt
    can cant could couldnt will wont would wouldnt should might must lets
    love loved loving like liked want wanted need needed hate hope hoping wish see seen saw look looks
    looking watch watching watched wait waiting stitch stitched stitching start started finish finished
    know knew think thought thanks thank please cheers welcome happy merry good great nice lovely
    beautiful gorgeous pretty amazing stunning wonderful brilliant fantastic fabulous cute sweet clever
    awesome perfect fun funny excited exciting hello hi hey bye goodbye greetings hugs kisses love
    morning evening afternoon everyone everybody all folks ladies friends today tonight tomorrow
    yesterday week weekend page pages pg vote votes stitches thread threads floss fabric aida linen
    needle needles hoop chart charts colour colours color colors border corner video videos episode
    episodes kit kits wip wips flosstube channel comment comments congratulations congrats wow omg
    if when because since while nobody anybody anyone someone somebody else although unless until than
    guess guesses clue clueless idea ideas sorry yes no nope yay haha lol keep going well done
    first last time caller viewer subscriber newbie lurker lurking late early here again too much so
    really very just still not never always ever
    progress work update detail details tension backstitch confetti knots finally bingo eureka gotcha
    hooray hurrah psst shh shhh jove drumroll drum oops whoops ouch ugh argh sigh phew drat fingers crossed suspense hmm
    bitte danke hallo guten abend tag morgen liebe grusse schon schone bonjour bonsoir merci bisous
    salut coucou hola buenas buenos gracias saludos besos ciao buongiorno buonasera grazie saluti
    bellissimo ola obrigada beijinhos hoi groetjes hej tack hilsen pozdrawiam serdecznie kiitos moi
    """.split()
)

#: Words that make a phrase a remark about the day as well as a title ("washing day again").
REMARK_WORDS = frozenset(
    """
    again home day days morning evening tonight today tomorrow monday tuesday wednesday thursday friday
    saturday sunday soon almost nearly here away back out gone done ready late early waiting still
    always never weekend christmas winter spring summer autumn raining snowing time
    """.split()
)

#: Words that people say all day: a title made of nothing else is hardly a name in lower case.
SAYINGS = (
    REMARK_WORDS
    | SMALL_WORDS
    | frozenset(
        """
    good happy new year years thank thanks you hello goodbye night wait one two next first page row
    stitch thread tea bed wish little long way go going come coming came love all just yet now then
    time off start finish keep on hope see perfect finally merry
    """.split()
    )
)

#: Words that people greet with.
GREETINGS = frozenset(
    """
    good morning afternoon evening night day hello goodbye welcome happy merry christmas easter birthday
    new year thank thanks you
    """.split()
)

#: Single words that people exclaim: as a title, hardly a name when shouted.
EXCLAMATIONS = frozenset(
    """
    crumbs crikey blimey golly gosh goodness heavens bother sugar fiddlesticks rats drat bingo wow hooray
    hurrah bravo hallelujah eureka magic snap hush welcome hello goodbye goodnight farewell cheers amen
    patience finally surprise perfect beautiful gorgeous lovely bliss heaven nearly almost enough
    """.split()
)

#: Persons: a clause that holds one of these speaks of somebody's life.
FIRST_PERSON = frozenset(
    "i im ive id ill my me we weve wed our us were he hes she shes his her they theyre theyve their you youre youve your".split()
)

#: Words that point at the piece itself, so that talk beside a name is talk about the piece.
PIECE_TALK = frozenset(
    """
    it this that one mine kit kits chart pattern design designer piece stash stitched stitching started
    made recognise recognised recognize recognized know knew remember see saw spotted spot guess guessed
    answer title page clue gave booklet magazine book copy version framed certain sure
    """.split()
)

#: Words that speak of naming, stitching or owning pieces: talk that holds them may mean the name.
NAMING_TALK = frozenset(
    """
    sort kind call calls crossed bandwagon close part deduce presume wager methinks
    think thinking thinks thought say saying says said believe reckon bet vote votes voting name named
    called money heart gut hear heard read sign label notes mean means yes convinced stand stick back
    want wish hope hoping praying pray vibes vibe remind reminds similar sequel companion partner pair
    series collection catalogue catalog poster torn twist arm fits fit match matches doubt wrong right
    if unless whether lucky own owned stitch stitched stitching bought buy finished finish started working halfway favourite
    favorite love loved adore prize win winner reputation unsee see seen being next do kit kits chart
    pattern design designer stash recognise recognised recognize recognized know knew remember guess
    guessed answer title booklet magazine copy version sure certain piece
    """.split()
)

#: Words with which a new statement runs on behind a name without a stop.
RUN_ON = frozenset("i im ive id my mine its it thats this that these we she he you your".split())

#: Moans and sighs beside a phrase: it may be a remark.
MOANS = frozenset("ugh argh sigh yawn meh grr groan bah blah urgh oof drat sob yuck boo".split())
