"""Portuguese votes told in a roundabout way, and talk that only sounds like a vote."""

from __future__ import annotations

from collections.abc import Mapping

from service.ballots.language import Phrase, each_of, phrases

_THAT = "esse | essa | isso | este | esta | esse número | essa página | essa mesmo"
_FACT = """
aniversário | idade | data de nascimento | ano de nascimento | número da casa | número do sapato |
número da sorte | aniversário de casamento
"""

GROUPS: Mapping[str, tuple[Phrase, ...]] = {
    "saying": phrases("tinha escrito | comentou | postou | botou | pôs"),
    "own_voice": phrases("quero | escolho | prefiro"),
    "printed": phrases("revista | jornal | livro | romance | catálogo"),
    "voting": phrases("voto | meu voto | escolho | votar | fico com"),
    "rated": phrases("dou um | é um | dou nota | nota"),
    "finished": phrases("pronta | feita | terminada | concluída"),
    "halving": phrases("metade de"),
    "any_of": phrases("qualquer | algo | qualquer página"),
    "torn": phrases("dúvida | indecisa | indeciso | dividida | decidir"),
    "other_after": phrases("do disco | do álbum | da lista | ao todo | no total | na loteria")
    + phrases("por dia | por noite"),
    "second": phrases("""
        se já tiver dona | se já tiver dono | se já tiver | se já foi | se já tiver sido |
        se já estiver | se essa já foi | se alguém já
        """),
    "choice_after": each_of(
        "é | e",
        "o |",
        "meu | nosso",
        "número da sorte | numero da sorte | número preferido | favorito | número favorito",
    )
    + phrases("decidido | está decidido"),
    "winning": phrases("ganha | vence | ganhou"),
    "wondering": phrases("se o | se a | se é | o que | como"),
    "again": phrases("de novo | outra vez | novamente"),
    "named_before": phrases("""
        concordo com | concordo com a | concordo com o | de acordo com a | de acordo com o
        """),
    "answered": phrases("senão | caso contrário")
    + phrases("se sim | nesse caso | se for | se não | então | se já foi"),
    "today": phrases("hoje | amanhã"),
    "wishing": each_of("se", "eu | a gente |", "pudesse | fosse | tivesse | desse | ousasse")
    + phrases(
        """
        eu queria ter | queria ter | gostaria de ter | teria gostado | quem me dera | eu preferia ter | adorava ter |
        pena da
        """
    ),
    "turning": phrases("mas | enfim | porém | tudo bem | paciência | mesmo assim"),
    "reported_before": each_of(
        "teria | eu teria | tinha | eu ia | ia | quase",
        "dito | escolhido | votado | votado na | posto | pedido | pego | dizer | votar | escolher | disse | votei",
        "o | a | no | na |",
    )
    + each_of(
        "amigas | amigos | filhas | elas | eles | todos | todas | vocês",
        "disseram | escolheram | votaram | querem",
    )
    + phrases("você disse | disseste | acho que era a | acho que era o | era a | era o"),
    "reported_after": phrases("um dia | um dia desses | da próxima | da próxima vez | mais tarde")
    + each_of("já | já foi | foi | já está", "feita | tomada | escolhida | bordada | pega | ida"),
    "sum_after": phrases("ao quadrado | ao cubo"),
    "it_is": phrases("está | tá | faz | são | é | estão"),
    "weather": phrases("aqui | lá fora | fora | à sombra | graus | em casa"),
    "other_before": each_of("comecei | iniciei | terminei", "pelo | pela | por | com a | na | no")
    + phrases("agora estou na | agora vou na | já vou na")
    + phrases(
        "hoje é dia | hoje já é | já é dia | hoje já é dia | hoje é | estamos a dia | aqui faz | aqui está | aqui tá | aqui estão | cá estão | cá faz | hoje faz | sessão | já faz"
    ),
    "owning": phrases("meu | minha | meus | minhas | nosso | nossa | seu | sua"),
    "own_piece": each_of("do | da | dos", "meu | minha | meus | nosso | nossa"),
    "whereabouts": phrases(
        "estou | tô | to | ainda | parei | cheguei | terminei | acabei | ando | já | presa | vou | só"
    ),
    "being": phrases("têm | tem | são | faz | fazem | tinham"),
    "choice_before": each_of(
        "põe | poe | ponha | coloca | coloque | marca | marque | bota",
        "um | uma | meu | o meu | aí um |",
        "x | xis | cruz | risquinho | ponto | estrela | voto | nome | check",
        "em | no | na | ao lado do | ao lado da",
    )
    + each_of(
        "vamos | bora | passamos | pula | pulamos | passa",
        "pra | para | para a | pra a | à | com a | de",
    )
    + phrases(
        "bota a | bota aí a | põe a | poe a | manda a | manda | mete a | vai | vai a | vai na | força | bora | bora a | anda | dá-lhe"
    ),
    "earlier": phrases("logo antes da"),
    "above": phrases(
        "a de cima da | de cima da | em cima da | a que fica em cima da | logo acima da | acima da"
    ),
    "below": phrases(
        "a de baixo da | de baixo da | embaixo da | a que fica embaixo da | logo abaixo da | abaixo da"
    ),
    "correction": phrases("quer dizer | aliás | ou melhor | digo"),
    "condition": phrases("se já tiver ido"),
    "concluding": phrases(
        "mas de preferência | de preferência | mas prefiro | preferencialmente | principalmente | mas principalmente | melhor"
    ),
    "pointing_back": each_of(
        "esse é | este é | essa é | aí está | então esse é | eis | aqui está | fica",
        "o meu | meu | a minha | minha | o | a",
        "voto | número | página | escolha | resposta | palpite",
    )
    + each_of(
        "usa | use | usem | pega | pegue | faz | faça | escolhe | vota | então | quero | voto em | vai com | coloca | bota",
        _THAT,
    )
    + phrases(
        "essa por favor | esse por favor | bom presente | belo presente | de presente | pelo meu aniversário | um sinal | é um sinal | fica a dica | fica a sugestão | só digo isso"
    ),
    "own_facts": each_of("meu | minha | o meu | a minha | o | a |", _FACT)
    + each_of(
        "o aniversário | aniversário | a idade | idade | o número da casa",
        "da | do | de",
        "minha * | meu * | *",
    )
    + each_of(
        "o número de | número de | quantos | quantas",
        "* | * *",
        "que tenho | que eu tenho | eu tenho | tenho",
    ),
    "as_named": phrases("como | igual a | igual à | igual ao | mesma que | o mesmo que"),
    "pointing": each_of(
        "como | igual | mesma que | o mesmo que",
        "a | o | à | ao",
        "moça | moço | senhora | senhor | menina | colega | pessoa",
        "de cima | acima | de antes | aí de cima",
    ),
    "described": each_of(
        "a | a página | aquela | a parte | o quadradinho | o pedaço",
        "da | do | das | dos | com as | com a | com o | onde tem | que tem | onde está | em que aparece | onde aparece",
    ),
    "withdrawn": each_of(
        "esquece | esqueçam | ignora | ignorem | desconsidera",
        "o que eu | o que | tudo que eu",
        "disse | falei | escrevi",
    ),
    "not_after": phrases("não | não que | não q | não porque | não pq | não né"),
    "letting_choose": each_of("deixei | deixamos", "* * | * * * |", "escolher | decidir"),
    "because": phrases("porque | pq | já que | pois"),
    "abstaining": phrases("decide tu | decide você | você decide | desempata")
    + phrases(
        "mas não sei | mas sei lá | mas não tenho certeza | não consigo decidir | estou em dúvida | ainda não sei | não tenho certeza | ainda estou pensando | o que você quiser | a que você quiser | qualquer uma serve"
    ),
    "asked_plainly": phrases(
        "deve já ter | já deve ter | com certeza já | acho que já foi | já deve estar"
    ),
    "neutral_after": phrases(
        "não ? | não ?? | não sei | não é | não foi | não está | não me | não te | não se | não a #  | não # | não o #"
    ),
}
