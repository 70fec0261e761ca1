"""Portuguese, as viewers write it under a video, in Portugal and Brazil."""

from __future__ import annotations

from service.ballots.language import Language, phrases
from service.ballots.languages import pt_choices, pt_composed, pt_counts, pt_numbers, pt_told
from service.ballots.languages.spelling import extended, one_after_another

_PLAIN = Language(
    code="pt",
    plural_s=True,
    everyday=phrases(
        """
        eu | o | a | os | as | e | é | que | de | da | do | das | na | no | nas | em | por |
        para | pra | pro | pela | pelo | com | sem | meu | minha | teu | tua | seu | sua | me |
        te | se | não | sim | mais | mas | muito | muita | porque | olá | oi | obrigada |
        obrigado | favor | pfv | beijinhos | beijos | beijo | abraço | bom | boa | dia | tarde |
        noite | quero | queria | voto | vou | vai | vamos | escolho | prefiro | acho | gosto |
        gostaria | adoro | está | tá | estou | tô | esta | este | essa | esse | isso | lindo |
        linda | lindos | maravilhoso | maravilhosa | tudo | todos | todas | quando | como | qual |
        já | também | agora | hoje | sempre | há | tem | tenho | você | vocês | tu | nós | seja |
        digo | diria | melhor | menos | qualquer | alguém | cima | baixo | canto | direita |
        esquerda | última | meio | marido | sorte | pois | então | ai | gente | meninas |
        parabéns | anos | ano | uma | um | foi | ser | começa | começar | outra | até | ou | ao |
        à | às | só | aqui | semana | ainda | desculpa | mudei | depois | senão | kkk | kkkk |
        rsrs | capricho | saudade | mundo | quis | diz | par | número | bonito | bonita | parece |
        nos | desde | vale | entre | mil | todo | cada | nem | algum | alguma | mesmo | mesma |
        lado | quanto | tanto | pouco | outro | outros | outras | dele | dela | nosso | nossa |
        vossa | onde | quem | porquê | embora | antes | enquanto | durante | contra | segundo |
        era | eram | fui | estar | estão | estava | sou | são | somos | tinha | ter | temos |
        fazer | faz | fiz | dizer | pode | posso | vezes | vez | noites | manhã | amanhã | coisa |
        coisas | trabalho | nunca | ninguém | nenhuma | elas | eles | ela | ele | amiga | amigas |
        senhora | bem | olha | veja | surpresa | vontade | verdade | bordar | bordando | bordado |
        linha | página | num | numa | dum | duma | nele | nela | disso | isto | aquela | aquele |
        aí | cá | ora | tão | gostei | amei | senti | fosse | fosses | quiser | vá | curiosa |
        cara | vi | vídeo | ti | jamais | volta | grande | algo | mim | ganhar | kkkkk
        """
    ),
    numbers=pt_numbers.numbers(),
    ordinals=pt_numbers.ordinals(),
    ordinal_endings=frozenset({"o", "a"}),
    page=phrases(
        "página | páginas | pag | pág | págs | p | pg | folha | página número | pag num | página nr"
    ),
    number=phrases("número | num | nr | nr. | núm | núm. | no. | n. | n.o. | números | numerinho"),
    fillers=phrases(
        """
        a | o | na | no | as | os | minha | meu | essa | esse | esta | este | aquela | mesmo |
        mesma | definitivamente | claramente | certamente | com certeza | talvez | quem sabe |
        por favor | pfv | sem dúvida | sempre | também | só | simplesmente | diretamente |
        outra vez | de novo | novamente | hoje | agora | desta vez | dessa vez | linda | bela |
        famosa | sim | então | já | pois | melhor | n | pessoalmente | sinceramente | obviamente |
        no fim | afinal | senão | se não | primeiro | para começar | pra começar | hmm | ah | né |
        boa | grande | querida | uma | um | bem | ainda | aí | logo
        """
    ),
    choice_before=phrases(pt_choices.CHOICE_BEFORE)
    + phrases(pt_choices.GOING)
    + one_after_another(pt_choices.GOING, pt_choices.LEADING_TO),
    choice_after=phrases(pt_choices.CHOICE_AFTER),
    other_before=phrases(pt_counts.OTHER_BEFORE),
    other_after=phrases(pt_counts.OTHER_AFTER),
    weak_before=phrases(pt_counts.WEAK_BEFORE),
    weak_after=phrases(pt_counts.WEAK_AFTER),
    neutral_before=phrases(pt_counts.NEUTRAL_BEFORE),
    neutral_after=phrases(pt_counts.NEUTRAL_AFTER),
    lucky_before=phrases(
        """
        número da sorte | número da sorte é | número da sorte é o | número de sorte | da sorte é |
        número favorito | número favorito é | número preferido | número preferido é |
        número do coração | número é | meu número é | meu número | número da sorte sempre foi |
        favorito é o | número de camisola | número da camisa
        """
    ),
    not_before=phrases(pt_choices.NOT_BEFORE),
    not_after=phrases(pt_choices.NOT_AFTER),
    correction=phrases(pt_choices.CORRECTION),
    soft_correction=phrases(
        """
        melhor | não , | não . | ... não | .. não | desculpa | na verdade | afinal | no fim |
        digo | mais vale | vá | tá bom | ok | agora | desta vez | dessa vez | hoje
        """
    ),
    own_voice=phrases("eu | mas | nós | voto | prefiro | então"),
    if_words=phrases("se"),
    being=phrases("é | era | cai"),
    either=phrases(
        "ou | ou então | ou talvez | ou quem sabe | ou senão | ou até | ou ainda | ou mesmo"
    ),
    also=phrases("e | & | mais | e também | assim como | e depois | e talvez | junto com | e a"),
    first_choice=phrases(
        """
        primeira opção | 1a opção | primeira escolha | primeira opção é | opção principal |
        como primeira opção | em primeiro lugar | primeira preferência | em primeiro |
        de preferência | como primeira
        """
    ),
    second_choice=phrases(
        """
        segunda opção | 2a opção | segunda escolha | segunda opção é | como segunda opção |
        segunda | em segundo lugar | em segundo | segunda preferência | de reserva | plano b |
        como alternativa | como segunda | em alternativa
        """
    )
    + phrases(pt_choices.TAKEN),
    second=phrases(
        """
        senão | se não | ou senão | e se não | caso contrário | em alternativa |
        como alternativa | segunda opção | segunda | em segundo lugar | em segundo | depois |
        e depois | de reserva | plano b | seguida de | seguida da | seguido de | em último caso |
        na pior das hipóteses | quando muito | alternativamente
        """
    )
    + one_after_another(pt_choices.TAKEN_AFTER, pt_choices.TAKEN),
    condition=phrases(pt_choices.CONDITION),
    depends=phrases(
        """
        depende | a que tiver | a menos que | a não ser que | desde que | contanto que | só se |
        conforme o que | consoante
        """
    ),
    ranked=phrases(
        """
        nessa ordem | nesta ordem | por ordem | por essa ordem | por esta ordem |
        ordem de preferência
        """
    ),
    tally_before=phrases(
        "votos para a | votos para | votos na | votos pra | pessoas na | votos no"
    ),
    topics=phrases(
        """
        tamanho | agulha | agulhas | fio | fios | linha | linhas | tecido | linho | etamine |
        aida | cor | cores | hora | horas | preço | custa | minutos | graus | pontos |
        meadas | bastidor | lâmpada | lupa | comboio | trem | ônibus | autocarro | barco |
        episódio | temporada | capítulo | música | filme | receita | cm | mm | watts | idade |
        anos | tempo
        """
    ),
    ages=phrases(
        """
        minha idade | ano em que nasci | ano do meu nascimento | ano que nasci |
        dia em que nasci | dia que nasci | data de nascimento | meu aniversário | meu niver |
        nasci em | nasci no dia | os anos que tenho
        """
    ),
    reported_before=phrases(pt_choices.REPORTED_BEFORE),
    family_before=phrases(pt_choices.FAMILY_BEFORE),
    reported_after=phrases(pt_choices.REPORTED_AFTER),
    saying=phrases(
        """
        diz | disse | dizia | dizem | falou | grita | gritou | pergunta | perguntou | escreve |
        escreveu | repete
        """
    ),
    asking=phrases(pt_choices.ASKING),
    suggesting=phrases(pt_choices.SUGGESTING),
    # Number words that are words elsewhere: três (fr "very"), dois (fr "must"), sete (it "thirst"),
    # onze (nl "our"), doze (en); um is an article.
    doubtful=phrases("um | dois | três | sete | onze | doze"),
    roughly_before=phrases(
        """
        por volta da | por volta de | por volta do | cerca de | cerca da | aproximadamente |
        mais ou menos | perto da | perto de | perto do | quase | à volta da | à volta de |
        lá para a | lá pela | algures na | próxima da | próximo da | nos arredores da |
        em torno da | em torno de | tipo
        """
    ),
    roughly_after=phrases(
        """
        mais ou menos | aproximadamente | ou por aí | ou por ali | ou assim | ou perto |
        ou algo assim | e tal | e pouco | e picos | ou arredores
        """
    ),
    between=phrases("entre | algo entre | alguma entre"),
    through=phrases("a | ao | até | até à | até a"),
    question_before=phrases(
        "de | das | entre | até | são | as | todas as | só há | só tem | há | até à"
    ),
    goes_on=phrases("também | seria | parece | era | é bonita | é linda"),
    relative_before=phrases(
        """
        ao lado da | ao lado de | ao lado do | lado da | junto da | junto à | junto a | colada à |
        colada na | em frente da | em frente à | vizinha da | que toca na | encostada à
        """
    ),
    relative_after=phrases(
        """
        a contar do fim | a partir do fim | de trás para frente | de trás pra frente |
        contando do fim
        """
    ),
    above=phrases(
        "em cima da | em cima de | acima da | acima de | por cima da | logo acima da | sobre a"
    ),
    below=phrases(
        """
        em baixo da | embaixo da | abaixo da | abaixo de | debaixo da | por baixo da |
        logo abaixo da | sob a
        """
    ),
    later=phrases(
        """
        direita da | direita de | à direita da | à direita de | depois da | após a | a seguir à |
        seguinte à | logo depois da
        """
    ),
    earlier=phrases(
        """
        esquerda da | esquerda de | à esquerda da | à esquerda de | antes da | anterior à |
        logo antes da
        """
    ),
    withdrawn=phrases(pt_choices.WITHDRAWN) + one_after_another(pt_choices.WITHDRAWN, "voto"),
    abstaining=phrases(pt_choices.ABSTAINING),
    pointing=phrases(pt_choices.POINTING),
    agreeing=phrases(
        """
        concordo | eu também | também eu | igual | o mesmo | sim | exato | exatamente |
        totalmente | +1 | idem | isso | apoio | subscrevo | a mesma | claro | estou contigo |
        estou com você | ia dizer | assino embaixo
        """
    ),
    kinds=phrases(pt_choices.KINDS),
    first=phrases("primeira | primeiro | primeirona | 1a | 1o | primeiríssima"),
    last=phrases("última | último | ultimíssima | derradeira"),
    corner=phrases("canto | cantos | cantinho | esquina | quina"),
    top=phrases(
        "cima | em cima | de cima | superior | topo | no topo | lá em cima | alto | no alto"
    ),
    bottom=phrases(
        """
        baixo | em baixo | embaixo | de baixo | debaixo | inferior | lá em baixo | lá embaixo |
        no fundo
        """
    ),
    left=phrases("esquerda | esquerdo | da esquerda | à esquerda | do lado esquerdo"),
    right=phrases("direita | direito | da direita | à direita | do lado direito"),
    middle=phrases(
        """
        meio | do meio | no meio | centro | do centro | no centro | central | bem no meio |
        bem no centro | mesmo no meio | mesmo no centro | meinho
        """
    ),
    row=phrases("fila | fileira | linha"),
    column=phrases("coluna"),
    times=phrases("vezes | multiplicado por"),
    plus=phrases("mais"),
    minus=phrases("menos"),
    divided_by=phrases("dividido por"),
    sum_before=phrases(
        """
        a metade de | metade de | o dobro de | dobro de | um terço de | um quarto de |
        raiz de
        """
    ),
    part_of=phrases("de | do | da | dos | das"),
    whole_chart=phrases(
        """
        do gráfico | do esquema | do mapa | da grade | do padrão | de tudo | do desenho |
        do bordado
        """
    ),
    replacing=phrases("troca | trocar | troco | muda | mudar | mudo | substitui | passa"),
    replaced_by=phrases("por | para | pelo | pela"),
    concluding=phrases("então | portanto | por isso"),
    asked_later=phrases("está livre | ainda está livre | já foi | já saiu | já escolheram"),
    told_from_last=phrases(
        """
        penúltima | antepenúltima | a penúltima | penúltimo | segunda a contar do fim |
        antes da última
        """
    ),
)

LANGUAGE = extended(extended(_PLAIN, pt_composed.GROUPS), pt_told.GROUPS)
