"""Portuguese words that choose a page, rule it out, take it back, ask about it, tell of others."""

from __future__ import annotations

#: What stands between a verb of choice and the page.
LEADING_TO = """
com | de | da | do | na | no | em | pela | pelo | por | a | o | ao | à | para | para a | para o |
pra | pro
"""
GOING = """
voto | eu voto | votei | votaria | vou votar | quero votar | votamos | vote | votem | votando |
votado | meu voto vai | o meu voto vai | voto vai | meu voto é | voto é | meu voto fica | vou |
eu vou | vamos | bora | ia | iria | fico | eu fico | ficamos | ficaria | começa | comece |
comecem | começar | começamos | começaria | começarmos | começássemos | inicia | inicie |
iniciar | iniciem | aposto | apostaria | eu aposto | continuo | sigo | mudo | troco | altero |
mudar | trocar | passo | mudei | troquei | mantenho | me põe | põe-me | coloca | coloquem | põe |
ponham | anota | anotem | anota aí | inclino-me | me inclino | conta comigo | contem comigo |
torço | tô torcendo | estou torcendo | arrisco | jogo | opto | optaria | optei | decido | decidi |
me decidi | voto mesmo | minha escolha vai | escolha vai | escolha recai | escolha cai | parte |
partir
"""

CHOICE_BEFORE = """
o que tem na | ver o que tem na | o que há na | ver o que há na | o que esconde a |
se esconde na | fiel ao | fiel à | ter | votos | votar | mi voto | meu voto | o meu voto |
escolho | eu escolho | escolhi | escolheria | escolherei | escolher | escolha | escolha é |
escolhemos | minha escolha | minha escolha é | escolha seria | escolhido | escolhia | opção |
opção é | quero | eu quero | quero ver | queria | eu queria | queria ver | queremos | quería |
gostaria | gostaria de ver | gostaria da | gostaria que fosse | gostava | gostava da |
gostava que fosse | gostava de ver | gosto da | gosto mais da | gosto | adoraria | adoraria ver |
adorava | adorava ver | amaria | amaria ver | prefiro | eu prefiro | preferia | preferiria |
preferida é | preferido é | favorita é | favorito é | preferência é | preferência pela | digo |
eu digo | diria | eu diria | direi | proponho | sugiro | sugeria | sugestão | que seja | seja |
que fosse | fosse | seria | será | para mim | para mim é | pra mim | pra mim é | por mim |
por mim é | cá para mim | cá pra mim | da minha parte | eu | nós | a minha é | minha é | a minha |
minha | acho que | eu acho que | acho que é | acho que a | acho que vou de | acho que vou na |
penso que | penso na | que tal | e se | por que não | porque não | vem | manda | manda a |
manda ver na | pode ser | faz | faça | façam | fazer | façamos | faria | fizesse | fizéssemos |
borda | borde | bordem | bordar | bordamos | tomara | tomara que seja | tomara que saia |
tomara que ganhe | que ganhe | que saia | quem sabe | me chama | chama | me atrai | atrai |
me agrada | apetece | apetece-me | coração diz | meu coração diz | coração manda | intuição diz |
intuição | instinto diz | palpite | meu palpite | palpite é | preciso ver | preciso | preciso da |
peço | pedimos | solicito | time | equipe | equipa | team | dá | dê | dá-me | me dá | me dê |
resposta | resposta é | pego | tomo | seleciono | seleção | confirmo | vejamos | ver | vota |
votem na | quis dizer | queria dizer | queria escrever | quis escrever | dedos cruzados pela |
dedos cruzados para a | torcendo pela | fechada com a | fechado com a | fecho com | fecho com a |
fecho na | tô com a | estou com a | estou pela | sou pela | sou mais a | sou mais |
sou a favor da | a favor da | me vejo na | cravo | cravo na | com certeza | sem dúvida | pela |
pelo | pra | pro | viva a
"""

CHOICE_AFTER = """
por favor | porfavor | pf | pff | pfv | pfvr | pfvrr | plis | please | pls | se faz favor | sff |
se fizer favor | fazendo favor | faz favor | por gentileza | obrigada | obrigado | obg | obgd |
brigada | muito obrigada | muito obrigado | obrigadinha | grata | para mim | pra mim | por mim |
para mim obrigada | para nós | para começar | pra começar | para iniciar | para esta semana |
para a próxima | para variar | desta vez | dessa vez | é meu voto | é o meu voto | meu voto |
o meu voto | é a minha escolha | é minha escolha | minha escolha | é a minha |
é a minha favorita | minha favorita | é a minha preferida | me agrada | agrada-me | me chama |
chama-me | me atrai | me parece bem | parece-me bem | parece boa | parece interessante |
parece ótima | seria bom | seria boa | seria ótimo | seria ótima | seria ideal | seria perfeita |
seria legal | seria lindo | seria giro | era giro | era bom | era ótimo | ficava bem | vai bem |
cai bem | vai ser | sem dúvida | sem dúvidas | com certeza | certeza | claro | óbvio |
sem pensar | sem hesitar | primeiro | de cara | na certa | digo eu | digo | eu digo | voto |
voto eu | voto nela | escolho | quero | eu quero | prefiro | acho | acho eu | eu acho | diria |
se for possível | se possível | se puder | se der | se puderes | se puderem |
se não for incómodo | tem meu voto | tem o meu voto | leva meu voto | leva o meu voto |
terá meu voto | bora | vamos | vai | mesmo | serve | me serve | tá bom | não ? | né ? | né |
pode ser | pode ser ? | que tal | que tal ? | forever | todinha
"""

NOT_BEFORE = """
não | não da | não quero | não gosto da | mas não | e não | menos | todas menos | tudo menos |
qualquer uma menos | exceto | excepto | exceção da | salvo | fora | tirando | nunca | jamais |
nem | sem | sem ser | em vez de | em vez da | em vez do | em lugar de | em lugar da |
ao invés da | ao invés de | no lugar da | antes que | outra que não | que não | que não seja |
não seja | diferente da | evita | evite | evitem | evitemos | odeio | detesto | contra |
não * com | não * por | não * pela | não * da | descarto | dispenso
"""

NOT_AFTER = """
não , | não ! | não . | não por favor | não obrigada | não obrigado | não pelo amor |
não pelo amor de deus | não gosto | nem pensar | nem morta | nem morto | nem a pau |
nem por sombras | nunca | jamais | também não | está fora | tá fora | dá azar | traz azar |
me dá medo | dá-me medo | não me agrada | não mesmo | não quero | de jeito nenhum |
de jeito maneira | não liguem | não liguem pra ele | não o ouçam | não ouçam | não lhe liguem |
ignorem
"""

CORRECTION = """
mas enfim | mas pronto | mas tudo bem | mas vá | ai não | ah não | não não | não espera |
não espere | espera | espere | esperem | peraí | pera | perai | desculpa | desculpe | desculpem |
perdão | ops | oops | opa | ups | quis dizer | queria dizer | quis escrever | queria escrever |
quero dizer | aliás | ou melhor | melhor não | melhor dizendo | digo não | enganei-me |
me enganei | enganei | me equivoquei | errei | erro | me confundi | confundi | confundi-me |
corrijo | correção | corrigindo | retifico | retificação | edito | editando | edit | edição |
mudo | mudei | mudei de ideia | mudei de ideias | mudei de opinião | mudo de ideia | mudando |
troco | troquei | pensando bem | pensando melhor | pensei melhor | brincadeira | tô brincando |
estou a brincar | estou brincando | brinco | zoeira | zoando | mentira | kkk não | kkkk não |
rs não | haha não | não existe | não há página | não tem página | corretor | dedo gordo |
digitei errado | escrevi mal | escrevi errado | esquece | esqueçam | afinal não | afinal quero |
na verdade não
"""

#: Said of a page that another stands in for: "a 22 se já tiver sido escolhida".
TAKEN = """
se já tiver sido | se já foi | se já foi escolhida | se já estiver | se já estiver escolhida |
se já está | se já estiver ocupada | se estiver ocupada | se estiver tomada |
se já estiver tomada | se já tiver saído | se já saiu | se já tiverem | se já tiverem escolhido |
se não estiver livre | se não estiver disponível | se não der | se não for possível |
se não puder ser | se não puder | se essa já | se esta já | se essa não | se alguém já |
se for escolhida | se já houver | se já tomada | se já ocupada | caso já tenha | caso já esteja |
caso não dê | caso esteja ocupada | se a primeira já
"""
TAKEN_AFTER = "e | ou | mas | , | . | ; | - | ( | depois | e depois"

CONDITION = """
se estiver livre | se ainda estiver | se ainda está | se está livre | se ainda der |
se estiver disponível | se ainda estiver livre | se ainda não | se não foi | se não foi ainda |
se não tiver sido | se não estiver ocupada | se não estiver tomada | se não saiu | se ninguém |
se alguém | se todo mundo | se toda a gente | se todos | se todas | se ganhar |
se estiver ganhando | se estiver a ganhar | se os outros | se a maioria | se meu marido |
se o meu marido | se minha | se for a que | se for essa | a menos que | a não ser que |
desde que | contanto que | só se | somente se | apenas se | enquanto ninguém | depende
"""

REPORTED_BEFORE = """
todo mundo | toda a gente | todos dizem | todas dizem | todos querem | todas querem |
todos pedem | todas pedem | todos votam | todas votam | todos votaram | todas votaram |
todos escolhem | todas escolhem | todos na | todas na | as pessoas | o pessoal | muitos | muitas |
muita gente | a maioria | maioria | os outros | as outras | alguns | algumas | alguém | ninguém |
vocês querem | vocês todas | vejo que | vejo muito | vejo muitos | vejo muitas | vejo muita |
tantos | tantas | ia dizer | ia votar | ia escolher | tinha dito | tinha votado |
tinha escolhido | teria dito | quase disse | quase votei | quase escolhi | estive quase |
estava na dúvida | pensava na | pensei na | pensava | estava pensando | estava a pensar |
a última vez | última vez | da última vez | vez passada | semana passada | rodada passada |
ronda anterior | vai ganhar | ganhará | aposto que ganha | os comentários | nos comentários |
em primeiro lugar está | dizem | elas querem | eles querem | tentada pela | palpite geral
"""

FAMILY_BEFORE = """
marido | esposo | esposa | mulher | namorado | namorada | companheiro | companheira | filho |
filha | filhos | menino | mãe | mamãe | mamã | pai | papai | papá | irmã | irmão | vizinha |
vizinho | avó | avô | vó | vô | vovó | vovô | neta | neto | netinha | netinho | colega | chefe |
patroa | gato | gata | cachorro | cachorra | cadela | tia | tio | prima | primo | sobrinha |
sobrinho | sogra | sogro | cunhada | cunhado | bebê | bebé | caçula | mais velha | mais novo |
papagaio | ele diz | ela diz | ele quer | ela quer | comadre
"""

REPORTED_AFTER = """
não | ganha | vai ganhar | ganhará | está ganhando | tá ganhando | está a ganhar | ganhou |
já ganhou | está na frente | lidera | já foi | já foi escolhida | foi escolhida |
já está ocupada | está ocupada | já está tomada | já tem dona | já saiu | já foi feita |
é popular | é muito popular | tá bombando | sai sempre | diz meu | diz o meu | diz minha |
diz a minha | dizem | dizem todos | quer meu | segundo meu | segundo o meu | para o meu marido |
pro meu marido | já está | já tinha
"""

ASKING = """
alguém | quem | por que | porque | porquê | quando | quanto | quantos | quantas | quanta | como |
onde | o que | que | qual | quais | há | tem | existe | já | é possível | era | são | foi |
foram | está | estão | ninguém | sabem se | sabes se | sabe se | será que | vocês | ainda |
já alguém | é a
"""

SUGGESTING = """
que tal | e se | por que não | porque não | posso | podemos | podia | podíamos | poderia |
poderíamos | podes | pode | podem | poderias | poderiam | dá para | dá pra | pode ser |
podia ser | ainda vou a tempo | ainda dá tempo | cheguei tarde | tarde demais | é tarde |
seria possível | é possível | queres | querem | quer | queria | por favor | pfv | talvez | voto |
escolho | vamos | bora | o que acha da | o que acham da | o que achas da | que dizem da |
que me dizem da | começamos | fazemos | topam | topa | aceitam
"""

WITHDRAWN = """
anula o meu | anula meu | anulem o meu | anulem meu | anular o meu | anular meu | anulo o meu |
anulo meu | anule o meu | anule meu | cancela o meu | cancela meu | cancelem o meu |
cancelem meu | cancele meu | cancele o meu | cancelo meu | cancelo o meu | cancelar meu |
cancelar o meu | retiro o meu | retiro meu | retira o meu | retira meu | retire meu |
retirem meu | retirem o meu | retirar meu | retirar o meu | tira meu | tira o meu | tirem meu |
tirem o meu | apaga meu | apaga o meu | apaguem o meu | apaguem meu | elimina o meu |
eliminem o meu | ignora o meu | ignora meu | ignorem meu | ignorem o meu | ignore meu |
ignore o meu | esquece meu | esquece o meu | esqueçam meu | esqueçam o meu | não contem meu |
não contem o meu | não conte meu | não conte o meu | não contes o meu | não considerem meu |
não considerem o meu | não considere meu | meu voto não conta | o meu voto não conta |
desconsidera meu | desconsidere meu | desconsiderem meu | desconsidere o meu |
desconsiderem o meu | desconsidera o meu | afinal não voto | no fim não voto | já não voto |
não voto mais | me retiro | voto nulo | desisto do meu | descontem o meu
"""

ABSTAINING = """
não voto | desta vez não voto | dessa vez não voto | não vou votar | não votarei | não votei |
sem voto | abstenho-me | me abstenho | abstenção | passo a vez | passo a minha vez | não escolho |
não sei qual | não sei ainda | ainda não sei | não tenho preferência | sem preferência |
tanto faz | é-me indiferente | não participo | escolham vocês | escolhe tu | escolhe você |
decide tu | decidam vocês | confio em ti | confio em você | confio em vocês | ainda indecisa |
estou indecisa | ainda estou pensando | ainda estou a pensar | vou pensar ainda
"""

POINTING = """
voto igual a * | voto igual à * | voto igual à minha * | voto igual ao * | voto como * * |
o mesmo | o mesmo que | a mesma | a mesma que | igual a | igual à | igual ao | idem | como acima |
como a de cima | a de cima | mesma página | mesmo número | mesmo voto | também eu | eu também |
ditto | +1 | minha idade | a minha idade | meu aniversário | o meu aniversário |
dia do meu aniversário | minha data de nascimento | a minha data de nascimento |
mês do meu aniversário | número da minha casa | o número da minha casa | meu número da sorte |
número do meu sapato | número que calço | aniversário de casamento | o que disse * | o que diz * |
o que a * disse | como disse * | como diz * | concordo | faço minhas as palavras | copio |
tô com * | assino embaixo | subscrevo
"""

KINDS = """
página par | páginas pares | página ímpar | páginas ímpares | número par | número ímpar |
números pares | números ímpares | número primo | uma par | uma ímpar | múltiplo de |
divisível por | dois dígitos | um dígito | dois algarismos | um algarismo | página da borda |
páginas da borda | na borda | da borda | uma borda | beirada | margem | vintes | trintas |
trintena | vintena | dezena | casa dos vinte | casa dos trinta | casa dos quarenta |
casa dos cinquenta | número alto | número baixo | metade de cima | metade de baixo |
metade superior | metade inferior | metade esquerda | metade direita | fileira de cima |
fileira de baixo | fileira do meio | fila de cima | fila de baixo | fila do meio | linha de cima |
linha de baixo | linha do meio | primeira fila | última fila | primeira fileira | última fileira |
primeira linha | última linha | coluna da esquerda | coluna da direita | coluna do meio |
primeira coluna | última coluna | lado esquerdo | lado direito | à esquerda | à direita |
para cima | para baixo | para o centro | mais para o meio | perto do centro | perto da borda |
perto do fim | perto do início | perto do começo | algures em cima | algures em baixo |
algures no meio | alguma de cima | alguma de baixo | alguma do meio | uma de cima | uma de baixo |
uma do meio
"""
