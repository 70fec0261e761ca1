"""Portuguese words beside a number: what it counts, measures or names if it is no page."""

from __future__ import annotations

OTHER_BEFORE = """
minuto | minutos | nota | dou um | te dou um | é o meu | é a minha | é meu | é minha | 5 de |
9 de | 8 de | 10 de | tenho | tenho já | já tenho | eu tenho | tem | têm | temos | tinha |
tinham | tive | teve | terei | faço | fiz | fez | farei | completo | completei | vou fazer |
aniversário é | aniversário é dia | aniversário dia | niver é | anos aos | idade de | há | ha |
há já | há quase | há mais de | faz | já faz | desde | desde os | desde o | até | até aos |
até os | aos | as minhas | os meus | meus | minhas | teus | tuas | seus | suas | nossos | nossas |
estes | estas | esses | essas | uns | umas | cada | todos os | todas as | mais de | menos de |
pelo menos | no mínimo | no máximo | total de | um total de | faltam | falta | me faltam |
faltam-me | restam | sobram | ano | os anos | nos anos | o ano | no ano de | do ano | em |
nasci em | nascida em | nascido em | nasci no | nasci a | nasci dia | janeiro | fevereiro |
março | abril | maio | junho | julho | agosto | setembro | outubro | novembro | dezembro |
segunda-feira | terça-feira | quarta-feira | quinta-feira | sexta-feira | sábado | domingo | dia |
o dia | no dia | dias | semana | mês | hora | horas | às | as | das | pelas | episódio |
capítulo | parte | temporada | volume | vídeo | video | live | nível | passo | etapa | volta |
andar | piso | linha | fila | fileira | coluna | ônibus | autocarro | metro | metrô | comboio |
trem | rota | rua | estrada | avenida | porta | quarto | casa | prédio | apartamento | apto |
moro no | vivo no | tamanho | número de sapato | calço | agulha | agulhas | etamine | etamine de |
aida | aida de | tecido | tecido de | linho | linho de | panamá | fio | fios |
linhas | cor | cores | meada | meadas | referência | ref | modelo | graus | forno a |
temperatura | vento de | ventos de | rajadas de | força | paguei | custa | custou | custam |
vale | comprei | vendi | ganhei | perdi | bordei | bordado | terminei | acabei | já vi | vi |
assisti | li | bebi | comi | esperei | dormi | contei | uso | usei | utilizo | obrigada pelos |
obrigada por estes | obrigada por esses | obrigada pelas | obrigado pelos | parabéns pelos |
parabéns pelas | por estes | por esses | por estas | por essas | pelos | top | vezes |
multiplicado por | dividido por | placar | covid | natal | versão | canal | sai dia |
até dia | somos | são | éramos | eram | serão | há uns | havia | houve | levei | levo | demorei |
demora | demorou | dura | duram | duraram | passaram | passam | inscrita número | fã número |
estou na página | estou na | já estou na página | cheguei na página | cheguei à página |
vou na página | parei na página | minha página | ainda estou na página | acabando a página |
terminando a página | acabei a página | a acabar a página | bordando a página | receita para |
grupo de | pacote de | caixa de | lote de | par de | equipe de | equipa de | família de |
gráfico de | hoje é dia | amanhã é dia | hoje é | os | nós | nós as | ver passar | aprendi aos
"""

OTHER_AFTER = """
de 5 | de 10 | em 10 | anos | ano | aninhos | meses | mês | semana | semanas | dia | dias | hora |
horas | horinhas | h | hs | hrs | minuto | minutos | min | mins | segundo | segundos | séculos |
noite | noites | tarde | tardes | manhãs | manhã | fins de semana | inverno | invernos | verão |
verões | vez | vezes | gato | gatos | gata | gatas | gatinhos | cão | cães | cachorro |
cachorros | filho | filhos | filha | filhas | crianças | neto | netos | neta | netas | netinhos |
irmãos | irmãs | amigas | amigos | pessoas | gente | mulheres | homens | inscritos | inscritas |
ponto | pontos | pontinhos | cruzes | fio | fios | linha | linhas | cor | cores | tons | meada |
meadas | bobinas | agulha | agulhas | projeto | projetos | trabalhos | trabalho | bordados |
quadros | gráficos | páginas | folhas | tecidos | bastidor | bastidores | vídeo | vídeos |
episódio | episódios | capítulo | capítulos | partes | fileiras | colunas | quadradinhos |
quadrados | cm | mm | m | km | metro | metros | quilômetros | quilómetros | centímetros |
polegadas | kg | quilo | quilos | gramas | g | litro | litros | ml | graus | grau | nós | euro |
euros | reais | real | contos | paus | dólares | centavos | cêntimos | por cento | visualizações |
comentários | votos | curtidas | likes | gostos | estrelas | xícara | xícaras | chávena |
chávenas | café | cafés | cafezinhos | chá | chás | biscoitos | bolachas | bolo | bolos | copo |
copos | velas | ovos | ovelhas | galinhas | cavalos | vacas | pássaros | barcos | livro | livros |
romances | filmes | músicas | canções | coisas | motivos | razões | tentativas | chances |
lugares | quartos | casas | andares | degraus | mil | milhão | milhões | centenas | dezenas |
dúzias | de nós | de vocês | delas | deles | das minhas | dos meus | de janeiro | de fevereiro |
de março | de abril | de maio | de junho | de julho | de agosto | de setembro | de outubro |
de novembro | de dezembro | da manhã | da tarde | da noite | da madrugada | em ponto | por dia |
por semana | por mês | por ano | primeiras | primeiros | últimas | últimos | sacos | caixas |
pacotes | pares | novelos | cachecóis | meias | lâmpadas | watts | volts | convidados |
presentes | cartas | letras | palavras | mensagens | mãos | dedos | olhos | vidas | maridos |
países | etapas | voltas | rodadas | count | ct | aninho | semaninhas
"""

WEAK_BEFORE = """
em | de | do | da | dos | das | com | que | uns | um | uma | sobre | entre | ao | à | como |
duas | dois | outros | outras | e meio | e meia | mais
"""

WEAK_AFTER = """
de | da | do | das | dos | e meio | e meia | mais | menos | páginas | lindos | lindas | belos |
belas | grandes | longos | longas | novos | novas | pequenos | pequenas | outros | outras
"""

NEUTRAL_BEFORE = """
ops | oops | ups | desculpa | desculpe | desculpem | correção | erro | espera | olá | ola | oi |
oii | oie | bom | boa | bom dia | boa tarde | boa noite | boas | dia | tarde | noite | ei | opa |
saudações | abraço | abraços | beijo | beijos | beijinho | beijinhos | bjs | ai | oh | ah | uau |
nossa | gente | meninas | menina | amiga | amigas | amigos | todas | todos | tudo | pessoal |
povo | bem | então | e | mas | porque | pois | sim | não sei | se não | ok | tá | está | certo |
vamos | vai | lá | bora | obrigada | obrigado | muito obrigada | lindo | linda | lindos |
maravilhoso | maravilhosa | perfeito | perfeita | incrível | espetáculo | maravilha | fantástico |
fofo | amei | adorei | adoro | a | o | na | no | pra | para | pro | por | eu | me | te | se |
nos | essa | esse | esta | este | aquela | é | que | qual | aqui | aí | ali | agora | hoje |
desta vez | dessa vez | finalmente | enfim | hmm | mmm | hum | página | número | acaso |
ao acaso | sorte | dúvida | dúvidas | certeza | claro | óbvio | também | sempre | de novo |
outra vez | curiosidade | curiosa | ansiosa | ansiedade | vontade | emoção | paciência | favor |
please | coração | trabalho | intuição | instinto | rs | rsrs | kkk | kkkk | haha | hahaha |
minha | meu | talvez | quem sabe | fácil | difícil | sinceramente | pessoalmente | semana | ilha |
costa | capricho | surpresa | suspense | gostei | escolha difícil | vídeo | video | né | uai |
ora | olha | ó | ainda | já
"""

NEUTRAL_AFTER = """
porque | pq | pois | já que | como | mas | e | ou | com | sem | para | pra | por | é | está | tá |
que | quando | onde | se | sim | eu | você | tu | me | te | nos | lhe | a | o | as | um | uma |
minha | meu | na | no | em | ao | à | não * | olá | oi | abraço | abraços | beijo | beijos |
beijinho | beijinhos | bjs | bjos | um beijo | um abraço | saudações | feliz | bom | boa |
bom dia | boa tarde | boa noite | boa semana | boa sorte | lindo | linda | tomara | espero |
acho | sinto | tem | parece | dá | soa | diz | será | seria | sempre | também | já | agora |
hoje | aqui | aí | ali | depois | antes | então | assim | muito | tão | mais | tudo | todos |
todas | gente | meninas | amiga | amigas | rs | rsrs | rsrsrs | kkk | kkkk | kkkkk | haha |
hahaha | hehe | vamos | vai | bora | ok | claro | certeza | talvez | quem sabe | sobretudo |
além | desde | até | enquanto | amanhã | ponto | final | tenho | quero | estou | tô | sou |
adoro | amo | amei | ansiosa | curiosa | né | viu | hein | verdade | esta | este | essa | esse |
isso | havia | há | foi | era | página | número | quase | cada | entre | segundo | parabéns |
força | continua | continue | sucesso | muita | nem | só | querida | fofa | linda demais |
esconde | estava | fica
"""
