"""Portuguese phrases put together of parts: what viewers say in many ways that differ in a word."""

from __future__ import annotations

from collections.abc import Mapping

from service.ballots.language import Phrase, each_of, phrases

_THE = "a | o | na | no | da | do | pela | pelo | pra | para a |"
_TAKEN = """
foi | escolhida | ocupada | tomada | feita | livre | disponível | bordada | votada | pega | saiu |
foi escolhida | foi feita | foi bordada | foi dita | está livre | está ocupada | reservada | fizeram
"""
#: Whoever wrote it, in one word or two.
_OTHERS = "* | * *"
_ABOVE = "de cima | aqui de cima | aí de cima | acima | em cima | aí em cima | aqui em cima | anterior | de antes"
_SAID = """
disse | diz | falou | escolheu | votou | pôs | quer | quiser | escolher | botou | pediu | comentou |
disser | prefere | indicou
"""
_MINE = "minha * | meu * | nosso * | nossa * | meus * | minha * *"
_RANKS = "primeira | segunda | terceira | 1a | 2a | 3a"

GROUPS: Mapping[str, tuple[Phrase, ...]] = {
    "everyday": phrases(
        """
        disseram | concordo | substitui | substitua | segunda | terceira | fizeram | troco | troquem | moça | dona |
        gurias | uai | bah | fofa | sff | casamento | fazia | deixaria | bordas | borda | pf | tua | escolheu
        """
    ),
    "choice_before": each_of(
        "me põe | põe-me | me coloca | coloca-me | me bota | me anota | anota-me | me marca | marca | anota",
        "aí | por favor | o meu voto | meu voto |",
        "na | no | para a | pra | com a | em | a |",
    )
    + each_of(
        "a minha | minha | o meu | meu",
        "escolha | voto | opção | preferida | favorita | preferência | página",
        "recai | cai | vai | seria | é | será | continua | fica",
        "na | no | para a | pra | em | a | sendo a |",
    )
    + each_of(
        "adorava | adoraria | gostava | gostaria | queria | amava | amaria | quero | curtia",
        "que fizesses | que fizesse | que fosse | que saísse | que bordasses | muito | tanto | mesmo",
        "a | ver a | da |",
    )
    + each_of(
        "tenho | sinto |",
        "um fraco | uma queda | um carinho | um palpite",
        "pela | por | na | com a",
    )
    + each_of(
        "me apaixonei | apaixonei-me | apaixonada | encantada | estou | tô | fiquei | sou | fico | voto | "
        "aposto tudo | tudo | boto fé",
        "pela | na | com a | de | no | em | a favor da",
    )
    + each_of(
        "vamos fazer | podes fazer | pode fazer | fazemos | bordamos | vamos de | podia ser | dá pra fazer | "
        "faz | vamos bordar | bora",
        "a | na | de |",
    )
    + each_of(_RANKS, "opção | escolha | preferência", ": | é | seria | a |")
    + each_of(
        "de | como",
        "reserva | suplente | segunda | primeira | segunda opção | alternativa | backup",
    )
    + phrases(
        """
        de preferência | preferencialmente | se possível | tomara que dê | oxalá seja | oxalá | segunda |
        terceira | crava | cravem | manda bala na | partiu | simbora | fechou | voto com força na | vote na
        """
    ),
    "fillers": each_of(
        "se",
        "já |",
        "está | estiver | tá | tiver sido",
        "livre | ocupada | tomada | feita | escolhida",
        "a",
    ),
    "choice_after": phrases(
        """
        pf | pff | sff | plmdds | pelamor | me deixaria feliz | me faria feliz | seria linda | seria top |
        seria show | seria o máximo | ia ser lindo | era lindo | era top | faz-me feliz | deixava-me feliz
        """
    ),
    "first_choice": phrases("preferencialmente | primeira | primeiro"),
    "second_choice": phrases("de suplente | suplente | como reserva | reserva"),
    "second": phrases("de suplente | suplente | terceira | e senão | reserva"),
    "neutral_after": each_of("por | para | pra | em", "a | o |", "#") + phrases("pela # | pelo #"),
    "not_before": each_of(
        "e não | mas não | em vez | ao invés | em lugar | no lugar", _THE + "| de"
    )
    + each_of("não | nunca", "a | o"),
    "reported_before": each_of(
        "ela | ele | elas | eles",
        "quer | querem | pede | prefere | escolhe | diz | dizem",
        "a | o | ver a |",
    )
    + phrases("disseram - me a | disseram - me | me disse a")
    + phrases(
        "disseram-me | me disseram | disse-me | me disse | me falaram | aconselharam-me | ouvi dizer"
    )
    + each_of("concordo | de acordo | acordo", "com", "a | o | a que disse | quem disse |")
    + each_of(
        "senhora | moça | amiga | pessoa | quem | menina | a",
        "que |",
        "disse | falou | votou | escolheu",
        "a | o |",
    )
    + each_of(
        "já | ainda | alguém já | alguém",
        "fizeram | escolheram | disseram | pediram | escolheu | pediu | tem alguém | bordaram",
        "a | na | o",
    )
    + each_of("está | tá | já está", "livre | ocupada | tomada | feita", "a"),
    "reported_after": each_of(
        "já | ainda | ainda está | já está | já tá | está | tá | já foi | ainda não", _TAKEN
    ),
    "asked_later": each_of(
        "já | ainda | já está | está | ou já | tá | já foi | ainda está", _TAKEN
    ),
    "pointing": each_of(
        "a página | a | o número",
        "com o número da | da | do | com a | com o",
        "minha casa | minha idade | meu aniversário | minha porta | meu ano",
    )
    + each_of(
        "o mesmo | a mesma | igual | mesma página | mesmo número | o mesmo número",
        "que | da | do | à |",
        _OTHERS,
        _ABOVE,
    )
    + each_of(
        "o que | a que | como | o mesmo que | a mesma que | igual ao que",
        "* | a * | minha * | a minha * | o *",
        _SAID,
    )
    + each_of(
        "o dia | a idade | a data | o número | o aniversário | o mês | o ano",
        "da | do | de",
        _MINE + " | *",
    )
    + phrases("a minha idade | minha idade | o meu ano de nascimento | o número da minha porta"),
    "withdrawn": phrases(
        "desisti | pode tirar meu voto | tira meu voto | tirem meu voto | pode apagar meu voto"
    )
    + each_of(
        "retiro | tirem | tira | apaga | apaguem | anulem | anula | cancelem | cancela | desconsiderem | "
        "desconsidera | ignorem | ignora | esqueçam | não contem | não considerem | risquem",
        "o meu | meu | a minha | minha",
        "voto | comentário | escolha | opção | mensagem | número",
    ),
    "abstaining": phrases(
        """
        qualquer uma serve | tanto faz | surpreende-nos | surpreenda-nos | nos surpreenda |
        me surpreenda | escolhe tu | escolhe você | a que quiseres | a que você quiser |
        a que preferires | você decide | tu decides | você que sabe | tu é que sabes | todas são lindas |
        não sei qual escolher | não consigo escolher | não consigo decidir
        """
    ),
    "kinds": phrases("a última de todas")
    + each_of(
        "na casa dos | na casa das | na faixa dos | entre os | nos | uma dos",
        "vinte | trinta | quarenta | cinquenta | sessenta",
    )
    + each_of(
        "uma | alguma | qualquer uma",
        "da | do | das | dos",
        "borda | cantos | fila de baixo | fila de cima | "
        "lado direito | lado esquerdo | parte de baixo | parte de cima",
    ),
    "replacing": phrases(
        """
        troquem | trocar | troca | troque | mudem | muda | mude | substitui | substitua | substituam |
        substituir | substituo | alterem | altera | altere | passem | passa | trocava | mudar
        """
    ),
    "replaced_by": each_of("por | para | pra | em | com", "a | o | uma | um |")
    + phrases("pela | pelo"),
    "roughly_before": each_of(
        "mais ou menos | por volta | lá | em torno | cerca | perto | à volta | aproximadamente | pelas bandas",
        "na | pela | pelo | da | do | de | a | pelos |",
    ),
    "between": phrases("entre a | entre o | entre as | algures entre"),
    "other_before": phrases(
        "vemo-nos dia | nos vemos dia | encontramo-nos dia | até dia | vejo-vos dia | parto dia"
    )
    + each_of("em | no | na | tecido | com", "aida | etamine | linho | panamá | tecido", "de |")
    + each_of(
        "ganhámos | ganhamos | perdemos | ganharam | perderam | empatámos | empatamos",
        "# a | # x | # - |",
    )
    + each_of("caminhei | corri | andei | pedalei | caminhado", "uns | quase |")
    + each_of("nasci | nascida", "dia | no dia | a | em")
    + phrases(
        "quarto | sala | cama | enfermaria | ônibus | autocarro | comboio | linha | cais | rua"
    ),
    "other_after": phrases(
        "a # | x # | a zero | fios de | ct | passos | quarteirões | pontinhos por dia"
    ),
    "part_of": phrases("do meu | da minha | do livro | deste"),
    "whole_chart": each_of(
        "do | da | de todo o | de toda a | deste | do seu",
        "gráfico | esquema | mapa | desenho | quadro | padrão | "
        "tabela | bordado | diagrama | trabalho | projeto",
    )
    + phrases("de todas | de tudo"),
    "last": phrases("última de todas | ultimíssima | derradeira"),
    "middle": phrases(
        "a do centro | a do meio | bem no meio | bem no centro | mesmo no meio | bem ao centro"
    ),
    "top": phrases("lá em cima | bem em cima | mesmo em cima"),
    "bottom": phrases("lá em baixo | lá embaixo | bem embaixo | embaixo"),
    "times": phrases("vezes | x"),
}
