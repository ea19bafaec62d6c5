<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="pt_BR">
<context>
    <name>About</name>
    <message>
        <source>About and cautions</source>
        <translation>Sobre o app e precauções</translation>
    </message>
    <message>
        <source>Privacy</source>
        <translation>Privacidade</translation>
    </message>
    <message>
        <source>No account, no network. Nothing leaves this phone unless you share it.</source>
        <translation>Sem conta e sem internet. Nada sai deste celular se você não compartilhar.</translation>
    </message>
    <message>
        <source>Firstdew %1</source>
        <translation>Firstdew %1</translation>
    </message>
    <message>
        <source>Free software under the Apache licence 2.0. Typefaces Inter and Noto Sans Arabic under the SIL Open Font Licence 1.1.</source>
        <translation>Software livre sob a licença Apache 2.0. Fontes Inter e Noto Sans Arabic sob a licença SIL Open Font 1.1.</translation>
    </message>
</context>
<context>
    <name>ActionButton</name>
    <message>
        <source>Not possible yet</source>
        <translation>Ainda não é possível</translation>
    </message>
</context>
<context>
    <name>AppLocked</name>
    <message>
        <source>Confirm that it is you</source>
        <translation>Confirme que é você</translation>
    </message>
    <message>
        <source>Firstdew is locked</source>
        <translation>O Firstdew está bloqueado</translation>
    </message>
    <message>
        <source>Firstdew: switch the app lock on or off</source>
        <translation>Firstdew: ativar ou desativar o bloqueio do aplicativo</translation>
    </message>
    <message>
        <source>Open Firstdew</source>
        <translation>Abrir o Firstdew</translation>
    </message>
    <message>
        <source>Firstdew asks for this phone&apos;s lock before the app lock is switched on or off.</source>
        <translation>O Firstdew pede o bloqueio deste telefone antes de ativar ou desativar o bloqueio do aplicativo.</translation>
    </message>
    <message>
        <source>Your diary opens once this phone&apos;s lock confirms that it is you.</source>
        <translation>Seu diário abre assim que o bloqueio deste telefone confirmar que é você.</translation>
    </message>
    <message>
        <source>Checking …</source>
        <translation>Verificando…</translation>
    </message>
    <message>
        <source>That was not right. Try again.</source>
        <translation>Não está certo. Tente de novo.</translation>
    </message>
    <message>
        <source>Hide what I type</source>
        <translation>Ocultar o que digito</translation>
    </message>
    <message>
        <source>Show what I type</source>
        <translation>Mostrar o que digito</translation>
    </message>
    <message>
        <source>This phone did not confirm you. Try again.</source>
        <translation>Este telefone não confirmou que é você. Tente de novo.</translation>
    </message>
    <message>
        <source>Confirm</source>
        <translation>Confirmar</translation>
    </message>
    <message>
        <source>Unlock</source>
        <translation>Desbloquear</translation>
    </message>
</context>
<context>
    <name>AsTable</name>
    <message>
        <source>As a table</source>
        <translation>Em tabela</translation>
    </message>
</context>
<context>
    <name>AwayPage</name>
    <message>
        <source>Days away</source>
        <translation>Dias fora</translation>
    </message>
    <message>
        <source>No session is planned on these days. The course moves around them. If a top-up would be due then, it is offered before you leave.</source>
        <translation>Nenhuma sessão é marcada nesses dias: o ciclo se ajusta a eles. Se uma sessão de manutenção cair nesse período, ela é oferecida antes de você sair.</translation>
    </message>
    <message>
        <source>From</source>
        <translation>De</translation>
    </message>
    <message>
        <source>To</source>
        <translation>Até</translation>
    </message>
    <message>
        <source>Add</source>
        <translation>Adicionar</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 a %2</translation>
    </message>
    <message>
        <source>Remove %1 to %2</source>
        <translation>Remover %1 a %2</translation>
    </message>
    <message>
        <source>Taking the kit along</source>
        <translation>Levar o material na viagem</translation>
    </message>
</context>
<context>
    <name>BackButton</name>
    <message>
        <source>Back</source>
        <translation>Voltar</translation>
    </message>
</context>
<context>
    <name>Bath</name>
    <message>
        <source>Before a session, Firstdew has to know where you treat, with which machine, and your answers to the health questions.</source>
        <translation>Antes de uma sessão, o Firstdew precisa saber onde você trata, com qual aparelho, e as suas respostas às perguntas de saúde.</translation>
    </message>
</context>
<context>
    <name>BathAfter</name>
    <message>
        <source>Done</source>
        <translation>Concluída</translation>
    </message>
    <message>
        <source>Stopped</source>
        <translation>Interrompida</translation>
    </message>
    <message>
        <source>Current at zero, machine off, then take the pads off.</source>
        <translation>Corrente em zero, aparelho desligado. Depois tire as esponjas.</translation>
    </message>
    <message>
        <source>Current at zero, machine off. Then take your hands or feet out.</source>
        <translation>Corrente em zero, aparelho desligado. Depois tire as mãos ou os pés da água.</translation>
    </message>
    <message>
        <source>Dry your skin and the kit completely.</source>
        <translation>Seque completamente a pele e o material.</translation>
    </message>
    <message>
        <source>Take the batteries out.</source>
        <translation>Tire as pilhas.</translation>
    </message>
    <message>
        <source>Look at the skin tomorrow.</source>
        <translation>Olhe a pele amanhã.</translation>
    </message>
    <message>
        <source>The batteries are nearly empty.</source>
        <translation>As pilhas estão quase no fim.</translation>
    </message>
    <message>
        <source>How did it feel?</source>
        <translation>Como foi a sensação?</translation>
    </message>
    <message>
        <source>The current would not rise</source>
        <translation>A corrente não subia</translation>
    </message>
    <message>
        <source>Highest comfortable reading</source>
        <translation>Maior leitura confortável</translation>
    </message>
    <message>
        <source>Not entered</source>
        <translation>Sem leitura</translation>
    </message>
    <message>
        <source>Skin now</source>
        <translation>A pele agora</translation>
    </message>
    <message>
        <source>Irritated skin settles with rest and plain moisturiser. A mild hydrocortisone cream can help: ask a pharmacist.</source>
        <translation>A pele irritada melhora com descanso e um hidratante simples. Um creme suave de hidrocortisona pode ajudar: pergunte na farmácia.</translation>
    </message>
    <message>
        <source>No further session there until a clinician has seen it. Seek help if it is painful or large.</source>
        <translation>Nenhuma outra sessão nessa área até um profissional de saúde examinar. Procure ajuda se doer ou for grande.</translation>
    </message>
    <message>
        <source>Note (optional)</source>
        <translation>Nota (opcional)</translation>
    </message>
    <message>
        <source>Did somebody teach you this session?</source>
        <translation>Alguém orientou você nesta sessão?</translation>
    </message>
    <message>
        <source>Mark it</source>
        <translation>Registrar</translation>
    </message>
    <message>
        <source>Look at your skin and say how it is.</source>
        <translation>Olhe a sua pele e diga como ela está.</translation>
    </message>
    <message>
        <source>Save in the diary</source>
        <translation>Salvar no diário</translation>
    </message>
</context>
<context>
    <name>BathAsLast</name>
    <message>
        <source>Next: %1</source>
        <translation>A seguir: %1</translation>
    </message>
    <message>
        <source>Change</source>
        <translation>Mudar</translation>
    </message>
    <message>
        <source>Adult beside the child: %1</source>
        <translation>Adulto ao lado da criança: %1</translation>
    </message>
    <message>
        <source>Set up, then switch on</source>
        <translation>Preparar e depois ligar</translation>
    </message>
    <message>
        <source>The batteries are nearly empty. Have new ones at hand.</source>
        <translation>As pilhas estão quase no fim. Tenha outras à mão.</translation>
    </message>
    <message>
        <source>Practice without current</source>
        <translation>Treinar sem corrente</translation>
    </message>
    <message>
        <source>True</source>
        <translation>Certo</translation>
    </message>
    <message>
        <source>Not quite</source>
        <translation>Nem tudo</translation>
    </message>
    <message>
        <source>Continue</source>
        <translation>Continuar</translation>
    </message>
    <message>
        <source>Enough for today</source>
        <translation>Por hoje chega</translation>
    </message>
</context>
<context>
    <name>BathBlocked</name>
    <message>
        <source>No session now</source>
        <translation>Sem sessão agora</translation>
    </message>
    <message>
        <source>Ask a clinician first</source>
        <translation>Pergunte antes a um profissional de saúde</translation>
    </message>
    <message>
        <source>Because of this, there must be no session until a clinician has approved treatment:</source>
        <translation>Por causa disto, não pode haver nenhuma sessão até um profissional de saúde liberar:</translation>
    </message>
    <message>
        <source>Go on only with a clinician&apos;s word on this:</source>
        <translation>Continue somente se um profissional de saúde tiver liberado você quanto a isto:</translation>
    </message>
    <message>
        <source>What is safe now: leave the machine off. Nothing is lost by waiting.</source>
        <translation>O que é seguro agora: deixe o aparelho desligado. Não se perde nada em esperar.</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Voltar</translation>
    </message>
    <message>
        <source>A clinician has approved it</source>
        <translation>Um profissional de saúde liberou</translation>
    </message>
    <message>
        <source>Only if a doctor or nurse who knows of this and of your treatment said yes. The name goes onto the summary.</source>
        <translation>Somente se um médico ou enfermeiro que conhece isto e o seu tratamento disse que sim. O nome aparece no resumo.</translation>
    </message>
    <message>
        <source>Who approved it</source>
        <translation>Quem liberou</translation>
    </message>
    <message>
        <source>Record and go on</source>
        <translation>Registrar e continuar</translation>
    </message>
</context>
<context>
    <name>BathChoose</name>
    <message>
        <source>Where</source>
        <translation>Onde</translation>
    </message>
    <message>
        <source>Current</source>
        <translation>Corrente</translation>
    </message>
    <message>
        <source>Who can tap the phone</source>
        <translation>Quem pode tocar no celular</translation>
    </message>
    <message>
        <source>Which side first</source>
        <translation>Qual lado primeiro</translation>
    </message>
    <message>
        <source>Right side</source>
        <translation>Lado direito</translation>
    </message>
    <message>
        <source>Left side</source>
        <translation>Lado esquerdo</translation>
    </message>
    <message>
        <source>Adult beside the child: %1</source>
        <translation>Adulto ao lado da criança: %1</translation>
    </message>
    <message>
        <source>Practice without current</source>
        <translation>Treinar sem corrente</translation>
    </message>
    <message>
        <source>Continue</source>
        <translation>Continuar</translation>
    </message>
    <message>
        <source>Enough for today</source>
        <translation>Por hoje chega</translation>
    </message>
</context>
<context>
    <name>BathExits</name>
    <message>
        <source>Stop: a tap anywhere</source>
        <translation>Parar: toque em qualquer lugar</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Parar</translation>
    </message>
    <message>
        <source>It is unpleasant</source>
        <translation>Está desa­gradável</translation>
    </message>
    <message>
        <source>A tap anywhere stops.</source>
        <translation>Um toque em qualquer lugar interrompe a sessão.</translation>
    </message>
</context>
<context>
    <name>BathMeanwhile</name>
    <message>
        <source>Welcome back</source>
        <translation>Olá de novo</translation>
    </message>
    <message>
        <source>The session was interrupted: %1. The current may still be flowing.</source>
        <translation>A sessão foi interrompida: %1. Ainda pode estar passando corrente.</translation>
    </message>
    <message>
        <source>What did the machine do meanwhile?</source>
        <translation>O que o aparelho fez nesse meio-tempo?</translation>
    </message>
    <message>
        <source>I switched it off</source>
        <translation>Eu desliguei o aparelho</translation>
    </message>
    <message>
        <source>I took hands or feet out</source>
        <translation>Tirei as mãos ou os pés da água</translation>
    </message>
    <message>
        <source>I do not know</source>
        <translation>Não sei</translation>
    </message>
    <message>
        <source>If you are unsure: machine off now. Switched off less than ten minutes ago, the session goes on; otherwise it starts again or ends, and what you did is kept.</source>
        <translation>Na dúvida: desligue o aparelho agora. Se ele foi desligado há menos de dez minutos, a sessão continua; senão, ela recomeça ou termina, e o que você fez fica guardado.</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Parar</translation>
    </message>
</context>
<context>
    <name>BathMeter</name>
    <message>
        <source>Aim %1</source>
        <translation>Alvo %1</translation>
    </message>
    <message>
        <source>Limit %1</source>
        <translation>Limite %1</translation>
    </message>
    <message>
        <source>Meter: %1</source>
        <translation>Medidor: %1</translation>
    </message>
    <message>
        <source>Practice: enter any number</source>
        <translation>Treino: digite qualquer número</translation>
    </message>
    <message>
        <source>Meter shows less</source>
        <translation>O medidor mostra menos</translation>
    </message>
    <message>
        <source>Enter meter reading</source>
        <translation>Anotar leitura do medidor</translation>
    </message>
    <message>
        <source>Enter the meter reading</source>
        <translation>Digitar a leitura do medidor</translation>
    </message>
    <message>
        <source>Enter the meter reading, now %1</source>
        <translation>Digitar a leitura do medidor, agora %1</translation>
    </message>
    <message>
        <source>Meter shows more</source>
        <translation>O medidor mostra mais</translation>
    </message>
    <message>
        <source>Meter reading, mA</source>
        <translation>Medidor, mA</translation>
    </message>
    <message>
        <source>Above the limit of %1</source>
        <translation>Acima do limite de %1</translation>
    </message>
    <message>
        <source>Delete</source>
        <translation>Apagar</translation>
    </message>
    <message>
        <source>Enter</source>
        <translation>Anotar</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Parar</translation>
    </message>
</context>
<context>
    <name>BathPracticeOver</name>
    <message>
        <source>That was practice</source>
        <translation>Isso foi um treino</translation>
    </message>
    <message>
        <source>Nothing of it was recorded.</source>
        <translation>Nada disso foi registrado.</translation>
    </message>
    <message>
        <source>After a real session you dry your skin and the kit, say how it felt, and look at your skin.</source>
        <translation>Depois de uma sessão de verdade, você seca a pele e o material, diz como foi a sensação e olha a pele.</translation>
    </message>
    <message>
        <source>Practise again</source>
        <translation>Treinar de novo</translation>
    </message>
    <message>
        <source>Leave practice</source>
        <translation>Sair do treino</translation>
    </message>
</context>
<context>
    <name>BathPracticeStart</name>
    <message>
        <source>Practice</source>
        <translation>Treino</translation>
    </message>
    <message>
        <source>Go through a whole session with the machine off: every step, picture and spoken word. Nothing is recorded.</source>
        <translation>Faça uma sessão inteira com o aparelho desligado: cada passo, cada desenho e cada aviso falado. Nada é registrado.</translation>
    </message>
    <message numerus="yes">
        <source>What takes minutes takes %n second(s) here.</source>
        <translation>
            <numerusform>O que leva minutos aqui leva %n segundo.</numerusform>
            <numerusform>O que leva minutos aqui leva %n segundos.</numerusform>
        </translation>
    </message>
    <message>
        <source>Leave the machine off the whole time.</source>
        <translation>Deixe o aparelho desligado o tempo todo.</translation>
    </message>
    <message>
        <source>Where</source>
        <translation>Onde</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Voltar</translation>
    </message>
    <message>
        <source>Begin practice</source>
        <translation>Começar o treino</translation>
    </message>
</context>
<context>
    <name>BathPrepare</name>
    <message>
        <source>Prepare: %1</source>
        <translation>Preparar: %1</translation>
    </message>
    <message>
        <source>All checked</source>
        <translation>Tudo conferido</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 de %2</translation>
    </message>
    <message>
        <source>No</source>
        <translation>Não</translation>
    </message>
    <message>
        <source>About 12 hours ago</source>
        <translation>Há cerca de 12 horas</translation>
    </message>
    <message>
        <source>Within a few hours</source>
        <translation>Nas últimas horas</translation>
    </message>
    <message>
        <source>Two days ago</source>
        <translation>Há dois dias</translation>
    </message>
    <message>
        <source>Yesterday</source>
        <translation>Ontem</translation>
    </message>
    <message>
        <source>Today</source>
        <translation>Hoje</translation>
    </message>
    <message>
        <source>Yes</source>
        <translation>Sim</translation>
    </message>
    <message>
        <source>You raise and lower with the remote control. While your hands are in, any key or a tap anywhere on the screen, with elbow or nose, stops. For the swap: meter at zero, hands out, dry them, swap, tap. The phone waits. It cannot see the current: watch the meter yourself.</source>
        <translation>Você aumenta e diminui a corrente com o controle remoto. Enquanto as mãos estão na água, qualquer tecla ou um toque em qualquer lugar da tela, com o cotovelo ou o nariz, interrompe a sessão. Para inverter a polaridade: medidor em zero, mãos fora, seque as mãos, inverta, toque na tela. O celular espera. Ele não enxerga a corrente: quem acompanha o medidor é você.</translation>
    </message>
    <message>
        <source>A soft sound runs through the session. If it stops, turn the current to zero and switch the machine off.</source>
        <translation>Um som suave toca durante toda a sessão. Se ele parar, diminua a corrente até zero e desligue o aparelho.</translation>
    </message>
    <message>
        <source>The batteries are nearly empty. Have new ones at hand.</source>
        <translation>As pilhas estão quase no fim. Tenha outras à mão.</translation>
    </message>
    <message>
        <source>Test the volume</source>
        <translation>Testar o volume</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Voltar</translation>
    </message>
    <message>
        <source>Next</source>
        <translation>Avançar</translation>
    </message>
    <message>
        <source>Checked</source>
        <translation>Conferido</translation>
    </message>
    <message>
        <source>Begin</source>
        <translation>Começar</translation>
    </message>
    <message>
        <source>%1: antiperspirant with aluminium in the last 24 hours?</source>
        <translation>%1: antitranspirante com alumínio nas últimas 24 horas?</translation>
    </message>
    <message>
        <source>%1: shaved in the last three days?</source>
        <translation>%1: pelos raspados nos últimos três dias?</translation>
    </message>
    <message>
        <source>%1: small cuts on the skin?</source>
        <translation>%1: pequenos cortes na pele?</translation>
    </message>
</context>
<context>
    <name>BathRun</name>
    <message>
        <source>Too high. Turn it down on the machine now.</source>
        <translation>Alta demais. Diminua a corrente no aparelho agora.</translation>
    </message>
    <message>
        <source>Down</source>
        <translation>Diminua</translation>
    </message>
    <message>
        <source>Down to %1 or less. Then enter what the meter shows.</source>
        <translation>Diminua até %1 ou menos. Depois digite o que o medidor mostra.</translation>
    </message>
    <message>
        <source>Next: %1</source>
        <translation>A seguir: %1</translation>
    </message>
    <message>
        <source>You cannot hear Firstdew right now. Watch the screen, or stop.</source>
        <translation>Você não consegue ouvir o Firstdew agora. Olhe a tela ou pare.</translation>
    </message>
    <message>
        <source>The last steps could not be saved yet. The session goes on; it is tried again.</source>
        <translation>Os últimos passos ainda não puderam ser salvos. A sessão continua; vamos tentar de novo.</translation>
    </message>
    <message>
        <source>Still %1</source>
        <translation>Ainda %1</translation>
    </message>
    <message>
        <source>That was a slip: go on (%1)</source>
        <translation>Foi sem querer: continuar (%1)</translation>
    </message>
</context>
<context>
    <name>BathScreening</name>
    <message>
        <source>Health questions</source>
        <translation>Perguntas de saúde</translation>
    </message>
    <message>
        <source>Has anything changed?</source>
        <translation>Alguma coisa mudou?</translation>
    </message>
    <message>
        <source>Answer each question for the person treated, as things are today.</source>
        <translation>Responda a cada pergunta sobre a pessoa tratada, como está hoje.</translation>
    </message>
    <message>
        <source>Since you last answered: pregnancy, implants, illness, skin, medicines for the heart, or anything else on the list?</source>
        <translation>Desde a última resposta: gravidez, implantes, doença, pele, remédios para o coração ou qualquer outra coisa da lista?</translation>
    </message>
    <message>
        <source>The list</source>
        <translation>A lista</translation>
    </message>
    <message>
        <source>Something has changed</source>
        <translation>Algo mudou</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Voltar</translation>
    </message>
    <message>
        <source>Nothing has changed</source>
        <translation>Nada mudou</translation>
    </message>
    <message>
        <source>That is all</source>
        <translation>É só isso</translation>
    </message>
</context>
<context>
    <name>BotherPage</name>
    <message>
        <source>How much the sweating bothers you</source>
        <translation>Quanto o suor incomoda você</translation>
    </message>
    <message>
        <source>Over the last week, which comes nearest?</source>
        <translation>Na última semana, qual frase chega mais perto?</translation>
    </message>
    <message>
        <source>I hardly notice it, and it never gets in my way</source>
        <translation>Quase não percebo, e nunca me atrapalha</translation>
    </message>
    <message>
        <source>I can live with it, and now and then it gets in my way</source>
        <translation>Dá para conviver, e às vezes me atrapalha</translation>
    </message>
    <message>
        <source>I can barely live with it, and it often gets in my way</source>
        <translation>Mal dá para conviver, e me atrapalha com frequência</translation>
    </message>
    <message>
        <source>I cannot live with it; it is always in my way</source>
        <translation>Não dá para conviver; sempre me atrapalha</translation>
    </message>
</context>
<context>
    <name>BottomBar</name>
    <message>
        <source>Places</source>
        <translation>Seções</translation>
    </message>
</context>
<context>
    <name>CareSheetPage</name>
    <message>
        <source>Care sheet</source>
        <translation>Ficha de cuidados</translation>
    </message>
    <message>
        <source>From %1, %2</source>
        <translation>Quem deu: %1, %2</translation>
    </message>
    <message>
        <source>In use for: %1</source>
        <translation>Em uso para: %1</translation>
    </message>
    <message>
        <source>Show as a code to scan</source>
        <translation>Mostrar como código para escanear</translation>
    </message>
    <message>
        <source>The care sheet as a QR code</source>
        <translation>A ficha de cuidados em QR code</translation>
    </message>
    <message>
        <source>It holds the whole care sheet. Show it only to those who treat you.</source>
        <translation>Ele contém a ficha de cuidados inteira. Mostre só a quem trata você.</translation>
    </message>
    <message>
        <source>Add a care sheet</source>
        <translation>Adicionar uma ficha de cuidados</translation>
    </message>
    <message>
        <source>From your prescriber: the code on paper or on another phone, a picture of it, or a file. No care sheet can raise the usual limits.</source>
        <translation>Vem do médico que prescreveu: o código em papel ou em outro celular, uma foto dele ou um arquivo. Nenhuma ficha de cuidados pode aumentar os limites usuais.</translation>
    </message>
    <message>
        <source>Stop the camera</source>
        <translation>Parar a câmera</translation>
    </message>
    <message>
        <source>Scan the code</source>
        <translation>Escanear o código</translation>
    </message>
    <message>
        <source>What the camera sees. Hold the code in the middle.</source>
        <translation>O que a câmera vê. Mantenha o código no centro.</translation>
    </message>
    <message>
        <source>The camera cannot be used. Take a picture of the code and choose that.</source>
        <translation>Não é possível usar a câmera. Tire uma foto do código e escolha a foto.</translation>
    </message>
    <message>
        <source>This care sheet changes nothing: you already have it, or a newer one is in use.</source>
        <translation>Esta ficha de cuidados não muda nada: você já tem esta, ou uma mais nova está em uso.</translation>
    </message>
    <message>
        <source>Allows more than now. %1</source>
        <translation>Permite mais do que agora. %1</translation>
    </message>
    <message>
        <source>My prescriber told me that more is allowed from now on</source>
        <translation>O médico que prescreveu me disse que, a partir de agora, é permitido mais</translation>
    </message>
    <message>
        <source>Use this care sheet</source>
        <translation>Usar esta ficha</translation>
    </message>
</context>
<context>
    <name>CasePage</name>
    <message>
        <source>Name not given</source>
        <translation>Sem nome</translation>
    </message>
    <message>
        <source>Choose somebody from the caseload.</source>
        <translation>Escolha uma pessoa em Meus pacientes.</translation>
    </message>
</context>
<context>
    <name>CaseRow</name>
    <message>
        <source>Name not given</source>
        <translation>Sem nome</translation>
    </message>
</context>
<context>
    <name>CaseText</name>
    <message>
        <source>%1: blister or burn since %2</source>
        <translation>%1: bolha ou queimadura desde %2</translation>
    </message>
    <message>
        <source>%1: a health answer stops sessions since %2</source>
        <translation>%1: sessões bloqueadas desde %2 (perguntas de saúde)</translation>
    </message>
    <message>
        <source>%1: stopped in the first course on %2</source>
        <translation>%1: parou durante o ciclo inicial em %2</translation>
    </message>
    <message>
        <source>%1: the course did not help, last session %2</source>
        <translation>%1: o ciclo não ajudou, última sessão em %2</translation>
    </message>
    <message>
        <source>%1: top-up overdue since %2</source>
        <translation>%1: sessão de manutenção atrasada desde %2</translation>
    </message>
    <message>
        <source>Silent since %1</source>
        <translation>Sem notícias desde %1</translation>
    </message>
    <message>
        <source>Doing well, last entry %1</source>
        <translation>Vai bem, última anotação em %1</translation>
    </message>
    <message>
        <source>This is another kind of file, or a back-up. Type the passphrase below if it is a back-up.</source>
        <translation>Este arquivo é de outro tipo ou é um backup. Se for um backup, digite a senha abaixo.</translation>
    </message>
    <message>
        <source>The passphrase does not open it. Ask its owner for the right one.</source>
        <translation>A senha não abre o arquivo. Peça a senha certa a quem o enviou.</translation>
    </message>
    <message>
        <source>This folder cannot be read now. Look whether it is still there, or choose another one.</source>
        <translation>Não é possível ler esta pasta agora. Veja se ela ainda está lá ou escolha outra.</translation>
    </message>
    <message>
        <source>This folder holds too many files. Put the records into a folder of their own.</source>
        <translation>Esta pasta tem arquivos demais. Coloque os históricos em uma pasta só deles.</translation>
    </message>
    <message>
        <source>It is damaged, or came over in part. Ask its owner to send it again.</source>
        <translation>O arquivo está danificado ou chegou incompleto. Peça a quem o enviou que envie de novo.</translation>
    </message>
    <message>
        <source>%1: dry spells shorter since about %2</source>
        <translation>%1: períodos secos mais curtos desde por volta de %2</translation>
    </message>
</context>
<context>
    <name>CaseView</name>
    <message>
        <source>Make a care sheet</source>
        <translation>Fazer uma ficha de cuidados</translation>
    </message>
    <message>
        <source>Share the summary</source>
        <translation>Compartilhar o resumo</translation>
    </message>
    <message>
        <source>The summary of %1</source>
        <translation>O resumo de %1</translation>
    </message>
</context>
<context>
    <name>Caseload</name>
    <message>
        <source>Caseload</source>
        <translation>Meus pacientes</translation>
    </message>
    <message>
        <source>Reading file %1 of %2</source>
        <translation>Lendo o arquivo %1 de %2</translation>
    </message>
    <message>
        <source>%1 of %2 need a call.</source>
        <translation>Quem precisa de uma ligação: %1 de %2.</translation>
    </message>
    <message>
        <source>All are doing well.</source>
        <translation>Todos vão bem.</translation>
    </message>
    <message numerus="yes">
        <source>%n file(s) could not be read. See the end of the list.</source>
        <translation>
            <numerusform>%n arquivo não pôde ser lido. Veja o fim da lista.</numerusform>
            <numerusform>%n arquivos não puderam ser lidos. Veja o fim da lista.</numerusform>
        </translation>
    </message>
    <message>
        <source>There are no records in these files.</source>
        <translation>Não há históricos nestes arquivos.</translation>
    </message>
    <message>
        <source>Ask the people you teach for their record or back-up, and put the files into one folder. They are read here and stay as they are.</source>
        <translation>Peça às pessoas que você ensina o histórico ou o backup delas e coloque os arquivos em uma pasta. Eles são lidos ali e ficam como estão.</translation>
    </message>
    <message>
        <source>Not read</source>
        <translation>Não lidos</translation>
    </message>
    <message>
        <source>Passphrase of the back-ups</source>
        <translation>Senha dos backups</translation>
    </message>
    <message>
        <source>It is forgotten when you close Firstdew.</source>
        <translation>Ela é esquecida quando você fecha o Firstdew.</translation>
    </message>
    <message>
        <source>Open with this passphrase</source>
        <translation>Abrir com esta senha</translation>
    </message>
    <message>
        <source>Where the records are</source>
        <translation>Onde estão os históricos</translation>
    </message>
    <message>
        <source>Choose the folder</source>
        <translation>Escolher a pasta</translation>
    </message>
    <message>
        <source>Add a file</source>
        <translation>Adicionar um arquivo</translation>
    </message>
    <message>
        <source>Read the files again</source>
        <translation>Ler os arquivos de novo</translation>
    </message>
    <message>
        <source>Read the files in %1</source>
        <translation>Ler os arquivos em %1</translation>
    </message>
    <message>
        <source>Make a care sheet</source>
        <translation>Fazer uma ficha de cuidados</translation>
    </message>
    <message>
        <source>Choose somebody from the list.</source>
        <translation>Escolha uma pessoa da lista.</translation>
    </message>
    <message>
        <source>Name not given</source>
        <translation>Sem nome</translation>
    </message>
</context>
<context>
    <name>CheckInCard</name>
    <message>
        <source>%1 today?</source>
        <translation>%1: a pele hoje?</translation>
    </message>
</context>
<context>
    <name>CheckedIn</name>
    <message>
        <source>Undo</source>
        <translation>Desfazer</translation>
    </message>
    <message>
        <source>Change</source>
        <translation>Mudar</translation>
    </message>
</context>
<context>
    <name>ChoiceChip</name>
    <message>
        <source>Not possible yet</source>
        <translation>Ainda não é possível</translation>
    </message>
</context>
<context>
    <name>ComparisonCard</name>
    <message>
        <source>Is a shorter session enough?</source>
        <translation>Uma sessão mais curta basta?</translation>
    </message>
    <message>
        <source>You can find out by comparing the two, one dry spell after the other.</source>
        <translation>Você pode descobrir comparando as duas, um período seco após o outro.</translation>
    </message>
    <message>
        <source>How it works</source>
        <translation>Como funciona</translation>
    </message>
    <message>
        <source>Compare again</source>
        <translation>Comparar de novo</translation>
    </message>
    <message>
        <source>My prescriber or nurse agrees</source>
        <translation>Meu médico ou a enfermagem concorda</translation>
    </message>
    <message>
        <source>Start comparing</source>
        <translation>Começar a comparar</translation>
    </message>
    <message>
        <source>Leave the comparison</source>
        <translation>Sair da comparação</translation>
    </message>
</context>
<context>
    <name>CourseDates</name>
    <message>
        <source>%1, done</source>
        <translation>%1, feita</translation>
    </message>
    <message>
        <source>%1, planned. Tap to move it.</source>
        <translation>%1, marcada. Toque para mudar a data.</translation>
    </message>
    <message>
        <source>Move session %1</source>
        <translation>Mudar a data da sessão %1</translation>
    </message>
</context>
<context>
    <name>CoursePlan</name>
    <message>
        <source>Plan a course</source>
        <translation>Planejar um ciclo</translation>
    </message>
    <message>
        <source>Single sessions keep you dry now. A whole course is for the beginning, or when full sweating is back.</source>
        <translation>Agora basta uma sessão de vez em quando para manter a pele seca. Um ciclo inteiro é para o começo ou para quando o suor forte volta.</translation>
    </message>
    <message>
        <source>Sessions of this course</source>
        <translation>Sessões deste ciclo</translation>
    </message>
    <message>
        <source>Move</source>
        <translation>Mudar</translation>
    </message>
    <message>
        <source>Where sessions crowd</source>
        <translation>Quando as sessões se acumulam</translation>
    </message>
    <message>
        <source>Close together</source>
        <translation>Em dias seguidos</translation>
    </message>
    <message>
        <source>A day between</source>
        <translation>Com um dia entre elas</translation>
    </message>
    <message>
        <source>Planned to end by %1. If you miss a session, the rest moves.</source>
        <translation>Termina até %1, se possível. Uma sessão perdida muda de data sozinha, e o resto é planejado de novo.</translation>
    </message>
    <message>
        <source>Start again</source>
        <translation>Começar de novo</translation>
    </message>
    <message>
        <source>Choose</source>
        <translation>Escolher</translation>
    </message>
    <message>
        <source>First session</source>
        <translation>Primeira sessão</translation>
    </message>
    <message>
        <source>Days that suit you (none = any day)</source>
        <translation>Dias bons para você (nenhum = qualquer dia)</translation>
    </message>
    <message>
        <source>Move session %1</source>
        <translation>Mudar a data da sessão %1</translation>
    </message>
    <message>
        <source>New day</source>
        <translation>Nova data</translation>
    </message>
    <message>
        <source>Plan the course</source>
        <translation>Planejar o ciclo</translation>
    </message>
</context>
<context>
    <name>DampnessLine</name>
    <message>
        <source>Dampness over time, %1</source>
        <translation>Suor ao longo do tempo, %1</translation>
    </message>
    <message>
        <source>No check-in in this time.</source>
        <translation>Nenhuma anotação neste período.</translation>
    </message>
    <message numerus="yes">
        <source>%n check-in(s) here. After two weeks of them the line begins to tell how long you stay dry.</source>
        <translation>
            <numerusform>%n anotação aqui. Depois de duas semanas de anotações, a linha começa a mostrar quanto tempo a pele fica seca.</numerusform>
            <numerusform>%n anotações aqui. Depois de duas semanas de anotações, a linha começa a mostrar quanto tempo a pele fica seca.</numerusform>
        </translation>
    </message>
    <message>
        <source>Marks below show your sessions. Diamonds above: weighings, in mg a minute.</source>
        <translation>As marcas embaixo mostram as suas sessões. Losangos em cima: pesagens, em mg por minuto.</translation>
    </message>
    <message>
        <source>Marks below show your sessions.</source>
        <translation>As marcas embaixo mostram as suas sessões.</translation>
    </message>
    <message>
        <source>Diamonds above: weighings, in mg a minute.</source>
        <translation>Losangos em cima: pesagens, em mg por minuto.</translation>
    </message>
    <message>
        <source>Meter readings of the sessions, %1</source>
        <translation>Leituras do medidor nas sessões, %1</translation>
    </message>
    <message>
        <source>Dots: highest comfortable reading of each session, in mA. Rings: where it was unpleasant or painful.</source>
        <translation>Pontos: maior leitura confortável de cada sessão, em mA. Anéis: onde foi desagradável ou dolorosa.</translation>
    </message>
</context>
<context>
    <name>DayPage</name>
    <message>
        <source>More than the usual upper limit of healthy people.</source>
        <translation>Mais do que o limite superior habitual de pessoas saudáveis.</translation>
    </message>
    <message>
        <source>Within the usual range of healthy people.</source>
        <translation>Dentro da faixa habitual de pessoas saudáveis.</translation>
    </message>
    <message>
        <source>Day before</source>
        <translation>Dia anterior</translation>
    </message>
    <message>
        <source>Day after</source>
        <translation>Dia seguinte</translation>
    </message>
    <message>
        <source>Nothing here yet</source>
        <translation>Nada aqui ainda</translation>
    </message>
    <message>
        <source>Your notes for a day appear here.</source>
        <translation>O que você anotar de um dia aparece aqui.</translation>
    </message>
    <message>
        <source>Corrected; the first entry is kept beside it.</source>
        <translation>Corrigida; a primeira anotação fica guardada ao lado.</translation>
    </message>
    <message>
        <source>Finished, %1</source>
        <translation>Concluída, %1</translation>
    </message>
    <message>
        <source>Stopped early, %1</source>
        <translation>Interrompida, %1</translation>
    </message>
    <message>
        <source>Comfortable at %1</source>
        <translation>Confortável com %1</translation>
    </message>
    <message>
        <source>How much it bothers you: %1 of 4</source>
        <translation>Incômodo: %1 de 4</translation>
    </message>
    <message>
        <source>Skin: %1</source>
        <translation>Pele: %1</translation>
    </message>
    <message>
        <source>Correct this session</source>
        <translation>Corrigir esta sessão</translation>
    </message>
    <message>
        <source>Delete this entry</source>
        <translation>Excluir esta anotação</translation>
    </message>
    <message>
        <source>Delete this entry?</source>
        <translation>Excluir esta anotação?</translation>
    </message>
    <message>
        <source>It no longer counts. The original stays in your history.</source>
        <translation>Ela não conta mais. O original fica no seu histórico.</translation>
    </message>
    <message>
        <source>Delete</source>
        <translation>Excluir</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Manter</translation>
    </message>
    <message>
        <source>Weighing: %1 in %2, %3 a minute</source>
        <translation>Pesagem: %1 em %2, %3 por minuto</translation>
    </message>
</context>
<context>
    <name>DaySheet</name>
    <message>
        <source>Done</source>
        <translation>Pronto</translation>
    </message>
</context>
<context>
    <name>DaySheetPick</name>
    <message>
        <source>The month before</source>
        <translation>Mês anterior</translation>
    </message>
    <message>
        <source>The month after</source>
        <translation>Mês seguinte</translation>
    </message>
</context>
<context>
    <name>DaysAround</name>
    <message>
        <source>The next fourteen days</source>
        <translation>Os próximos catorze dias</translation>
    </message>
    <message>
        <source>The last seven days</source>
        <translation>Os últimos sete dias</translation>
    </message>
</context>
<context>
    <name>DaysBack</name>
    <message>
        <source>%1, to fill in</source>
        <translation>%1, sem anotação</translation>
    </message>
</context>
<context>
    <name>DewCall</name>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>You put it off to this evening. A reminder will come.</source>
        <translation>Você adiou para hoje à noite. Vai chegar um lembrete.</translation>
    </message>
    <message>
        <source>Start now</source>
        <translation>Começar agora</translation>
    </message>
    <message>
        <source>This evening</source>
        <translation>Hoje à noite</translation>
    </message>
    <message>
        <source>Tomorrow</source>
        <translation>Amanhã</translation>
    </message>
    <message>
        <source>Not this time</source>
        <translation>Desta vez não</translation>
    </message>
    <message>
        <source>I did one</source>
        <translation>Já fiz uma</translation>
    </message>
    <message>
        <source>More</source>
        <translation>Mais</translation>
    </message>
    <message>
        <source>Why?</source>
        <translation>Por quê?</translation>
    </message>
</context>
<context>
    <name>Diary</name>
    <message>
        <source>Everywhere</source>
        <translation>Todas as áreas</translation>
    </message>
    <message>
        <source>Send to your prescriber</source>
        <translation>Enviar ao seu médico</translation>
    </message>
    <message>
        <source>Filter: on</source>
        <translation>Filtro: ativo</translation>
    </message>
    <message>
        <source>Filter</source>
        <translation>Filtro</translation>
    </message>
    <message>
        <source>Nothing here yet</source>
        <translation>Nada aqui ainda</translation>
    </message>
    <message>
        <source>Each check-in on Today draws one dot here. After two weeks of them you see how long you stay dry, and if the treatment works.</source>
        <translation>Cada anotação em Hoje desenha um ponto aqui. Depois de duas semanas, você vê quanto tempo a pele fica seca e se o tratamento funciona.</translation>
    </message>
    <message>
        <source>Month</source>
        <translation>Mês</translation>
    </message>
    <message>
        <source>Quarter</source>
        <translation>3 meses</translation>
    </message>
    <message>
        <source>Year</source>
        <translation>Ano</translation>
    </message>
    <message>
        <source>All</source>
        <translation>Tudo</translation>
    </message>
    <message>
        <source>Earlier</source>
        <translation>Antes</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 a %2</translation>
    </message>
    <message>
        <source>Later</source>
        <translation>Depois</translation>
    </message>
    <message>
        <source>Left out: days with %1</source>
        <translation>Não entram: dias com %1</translation>
    </message>
    <message>
        <source>Summary for your prescriber</source>
        <translation>Resumo para o seu médico</translation>
    </message>
    <message>
        <source>More about this day</source>
        <translation>Ver e anotar mais</translation>
    </message>
    <message>
        <source>See a day</source>
        <translation>Ver dia por dia</translation>
    </message>
    <message>
        <source>How much it bothers you</source>
        <translation>Quanto o suor incomoda</translation>
    </message>
    <message>
        <source>Skin after a session</source>
        <translation>A pele depois de uma sessão</translation>
    </message>
    <message>
        <source>Weighing</source>
        <translation>Pesagem</translation>
    </message>
    <message>
        <source>Other treatments</source>
        <translation>Outros tratamentos</translation>
    </message>
    <message>
        <source>What is shown</source>
        <translation>O que é mostrado</translation>
    </message>
    <message>
        <source>Where</source>
        <translation>Onde</translation>
    </message>
    <message>
        <source>Sessions and readings</source>
        <translation>Sessões e leituras</translation>
    </message>
    <message>
        <source>Shown</source>
        <translation>Visíveis</translation>
    </message>
    <message>
        <source>Hidden</source>
        <translation>Ocultas</translation>
    </message>
    <message>
        <source>Leave out days with</source>
        <translation>Deixar de fora os dias com</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Pronto</translation>
    </message>
</context>
<context>
    <name>DonePage</name>
    <message>
        <source>Correct this session</source>
        <translation>Corrigir esta sessão</translation>
    </message>
    <message>
        <source>A session I did</source>
        <translation>Uma sessão que eu fiz</translation>
    </message>
    <message>
        <source>Where</source>
        <translation>Onde</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Quando</translation>
    </message>
    <message>
        <source>Today</source>
        <translation>Hoje</translation>
    </message>
    <message>
        <source>Yesterday</source>
        <translation>Ontem</translation>
    </message>
    <message>
        <source>Or another day</source>
        <translation>Ou outro dia</translation>
    </message>
    <message>
        <source>To its end?</source>
        <translation>Até o fim?</translation>
    </message>
    <message>
        <source>Yes</source>
        <translation>Sim</translation>
    </message>
    <message>
        <source>Stopped early</source>
        <translation>Parei antes</translation>
    </message>
    <message>
        <source>Current</source>
        <translation>Corrente</translation>
    </message>
    <message>
        <source>How did it feel?</source>
        <translation>Como foi a sensação?</translation>
    </message>
    <message>
        <source>Skin since then</source>
        <translation>A pele desde então</translation>
    </message>
    <message>
        <source>Note (optional)</source>
        <translation>Nota (opcional)</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Salvar</translation>
    </message>
</context>
<context>
    <name>Drawings</name>
    <message>
        <source>A hand. The ring comes off, the watch lies beside it.</source>
        <translation>Uma mão. O anel sai do dedo, o relógio está ao lado.</translation>
    </message>
    <message>
        <source>A hand. Under a magnifying glass: a cut and red spots.</source>
        <translation>Uma mão. Sob uma lupa: um corte e manchas vermelhas.</translation>
    </message>
    <message>
        <source>A foot. Under a magnifying glass: a cut and red spots.</source>
        <translation>Um pé. Sob uma lupa: um corte e manchas vermelhas.</translation>
    </message>
    <message>
        <source>One arm raised. Under a magnifying glass: red spots in the armpit.</source>
        <translation>Um braço levantado. Sob uma lupa: manchas vermelhas na axila.</translation>
    </message>
    <message>
        <source>A fingertip puts a thin layer of jelly on a cut, and only there.</source>
        <translation>A ponta de um dedo passa uma camada fina de vaselina em um corte, e só ali.</translation>
    </message>
    <message>
        <source>An antiperspirant beside an armpit, struck out. Below it: 24 hours.</source>
        <translation>Um antitranspirante ao lado de uma axila, riscado. Embaixo: 24 horas.</translation>
    </message>
    <message>
        <source>A razor beside an armpit, struck out. Below it: three days.</source>
        <translation>Um aparelho de barbear ao lado de uma axila, riscado. Embaixo: três dias.</translation>
    </message>
    <message>
        <source>Two trays are put on a wooden table.</source>
        <translation>Duas bandejas são colocadas sobre uma mesa de madeira.</translation>
    </message>
    <message>
        <source>Two trays are put on the floor in front of a chair.</source>
        <translation>Duas bandejas são colocadas no chão, na frente de uma cadeira.</translation>
    </message>
    <message>
        <source>The plate goes into the tray, and the grid over the plate.</source>
        <translation>A placa vai dentro da bandeja, e a grade por cima da placa.</translation>
    </message>
    <message>
        <source>Two pads go into a bowl of water.</source>
        <translation>Duas esponjas vão para uma tigela com água.</translation>
    </message>
    <message>
        <source>A battery goes into its place, plus and minus as marked.</source>
        <translation>Uma pilha vai para o lugar dela, com o mais e o menos como indicado.</translation>
    </message>
    <message>
        <source>The machine is off. Two leads are plugged in.</source>
        <translation>O aparelho está desligado. Dois cabos são conectados.</translation>
    </message>
    <message>
        <source>Somebody has both hands in trays. A helper stands close by, a finger on the knob.</source>
        <translation>Uma pessoa está com as duas mãos nas bandejas. Quem ajuda está bem perto, com um dedo no botão giratório.</translation>
    </message>
    <message>
        <source>Two hands in two trays. Between them lies the remote, within their reach.</source>
        <translation>Duas mãos em duas bandejas. Entre elas fica o controle remoto, ao alcance.</translation>
    </message>
    <message>
        <source>A finger switches the machine off. The meter shows zero.</source>
        <translation>Um dedo desliga o aparelho. O medidor mostra zero.</translation>
    </message>
    <message>
        <source>A finger switches the machine on. The light comes on, the meter shows zero.</source>
        <translation>Um dedo liga o aparelho. A luz acende, o medidor mostra zero.</translation>
    </message>
    <message>
        <source>The meter under a magnifying glass. It shows zero.</source>
        <translation>O medidor sob uma lupa. Ele mostra zero.</translation>
    </message>
    <message>
        <source>Fingers turn the knob up in small steps. The meter rises.</source>
        <translation>Dedos giram o botão para aumentar, aos poucos. O medidor sobe.</translation>
    </message>
    <message>
        <source>Fingers turn the knob down in small steps. The meter is at zero.</source>
        <translation>Dedos giram o botão para diminuir, aos poucos. O medidor está em zero.</translation>
    </message>
    <message>
        <source>A finger on the upper button of the remote. Up in small steps.</source>
        <translation>Um dedo no botão de cima do controle remoto. Aumenta aos poucos.</translation>
    </message>
    <message>
        <source>A finger on the lower button of the remote. Down in small steps.</source>
        <translation>Um dedo no botão de baixo do controle remoto. Diminui aos poucos.</translation>
    </message>
    <message>
        <source>Two hands flat in two trays, under water.</source>
        <translation>Duas mãos abertas em duas bandejas, debaixo da água.</translation>
    </message>
    <message>
        <source>Two feet flat in two trays, under water.</source>
        <translation>Dois pés apoiados em duas bandejas, debaixo da água.</translation>
    </message>
    <message>
        <source>Somebody seated: the right hand in one tray, the right foot in another. The left ones rest outside.</source>
        <translation>Uma pessoa sentada: a mão direita em uma bandeja, o pé direito em outra. A mão e o pé esquerdos descansam fora.</translation>
    </message>
    <message>
        <source>Somebody seated: the left hand in one tray, the left foot in another. The right ones rest outside.</source>
        <translation>Uma pessoa sentada: a mão esquerda em uma bandeja, o pé esquerdo em outra. A mão e o pé direitos descansam fora.</translation>
    </message>
    <message>
        <source>A pad under each arm, each on a lead to the machine.</source>
        <translation>Uma esponja debaixo de cada braço, cada uma com um cabo até o aparelho.</translation>
    </message>
    <message>
        <source>Both hands come out of the trays.</source>
        <translation>As duas mãos saem das bandejas.</translation>
    </message>
    <message>
        <source>The meter shows zero. Each lead goes to the place of the other.</source>
        <translation>O medidor mostra zero. Cada cabo vai para o lugar do outro.</translation>
    </message>
    <message>
        <source>The meter shows zero. A finger flips the polarity switch.</source>
        <translation>O medidor mostra zero. Um dedo vira a chave de polaridade.</translation>
    </message>
    <message>
        <source>The two pads change sides: right goes left, left goes right.</source>
        <translation>As duas esponjas trocam de lado: a direita vai para a esquerda, a esquerda vai para a direita.</translation>
    </message>
    <message>
        <source>The pads come off, away from both armpits.</source>
        <translation>As esponjas saem das duas axilas.</translation>
    </message>
    <message>
        <source>Two hands are dried with a towel.</source>
        <translation>Duas mãos são secas com uma toalha.</translation>
    </message>
    <message>
        <source>Two feet are dried with a towel.</source>
        <translation>Dois pés são secos com uma toalha.</translation>
    </message>
    <message>
        <source>Tray, plate and grid stand upright and drip dry.</source>
        <translation>A bandeja, a placa e a grade ficam em pé e escorrem.</translation>
    </message>
    <message>
        <source>A jug with %1 is poured into a low tray. A line across the tray marks the level.</source>
        <translation>Uma jarra com %1 é despejada em uma bandeja baixa. Uma linha na bandeja marca o nível.</translation>
    </message>
</context>
<context>
    <name>FileChoice</name>
    <message>
        <source>Choose a file</source>
        <translation>Escolher um arquivo</translation>
    </message>
    <message>
        <source>Chosen: %1</source>
        <translation>Escolhido: %1</translation>
    </message>
    <message>
        <source>Put a file that ends in %1 into %2, then look again.</source>
        <translation>Coloque em %2 um arquivo que termine em %1 e procure de novo.</translation>
    </message>
    <message>
        <source>Look again</source>
        <translation>Procurar de novo</translation>
    </message>
</context>
<context>
    <name>FirstStart</name>
    <message>
        <source>Before you begin</source>
        <translation>Antes de começar</translation>
    </message>
    <message>
        <source>Where?</source>
        <translation>Onde?</translation>
    </message>
    <message>
        <source>Who is it for?</source>
        <translation>Para quem é?</translation>
    </message>
    <message>
        <source>Your machine</source>
        <translation>Seu aparelho</translation>
    </message>
    <message>
        <source>Health questions</source>
        <translation>Perguntas de saúde</translation>
    </message>
    <message>
        <source>When should we ask?</source>
        <translation>A que horas perguntar?</translation>
    </message>
    <message>
        <source>Step %1 of %2</source>
        <translation>Passo %1 de %2</translation>
    </message>
    <message>
        <source>Choose every place you treat. It can be changed in Settings.</source>
        <translation>Escolha cada área que você trata. Dá para mudar em Ajustes.</translation>
    </message>
    <message>
        <source>Some answers mean no session until a clinician has said yes. Your answers stay on this phone.</source>
        <translation>Com algumas respostas, não pode haver sessão até um profissional de saúde liberar. As suas respostas ficam neste celular.</translation>
    </message>
    <message>
        <source>Once a day Firstdew asks how damp your skin is. Two taps are enough.</source>
        <translation>Uma vez por dia, o Firstdew pergunta se a pele está úmida, e quanto. Bastam dois toques.</translation>
    </message>
    <message>
        <source>Check-in at</source>
        <translation>Anotação do dia às</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Passo anterior</translation>
    </message>
    <message>
        <source>I have read this</source>
        <translation>Li e entendi</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Pronto</translation>
    </message>
    <message>
        <source>Next</source>
        <translation>Avançar</translation>
    </message>
</context>
<context>
    <name>HandOverPage</name>
    <message>
        <source>Hand it over</source>
        <translation>Entregar</translation>
    </message>
    <message>
        <source>This care sheet is not complete. Go back and fill in what is marked.</source>
        <translation>Esta ficha de cuidados não está completa. Volte e preencha o que está marcado.</translation>
    </message>
    <message>
        <source>Look at it</source>
        <translation>Ver</translation>
    </message>
    <message>
        <source>On the screen</source>
        <translation>Na tela</translation>
    </message>
    <message>
        <source>In their Firstdew: Plan, Care sheet, Scan the code.</source>
        <translation>No Firstdew da pessoa: Plano, Ficha de cuidados, Escanear o código.</translation>
    </message>
    <message>
        <source>The care sheet as a QR code</source>
        <translation>A ficha de cuidados em QR code</translation>
    </message>
    <message>
        <source>On paper</source>
        <translation>No papel</translation>
    </message>
    <message>
        <source>Print or share the page</source>
        <translation>Imprimir ou compartilhar a página</translation>
    </message>
    <message>
        <source>Save the page</source>
        <translation>Salvar a página</translation>
    </message>
    <message>
        <source>The page as it will be printed</source>
        <translation>A página como será impressa</translation>
    </message>
    <message>
        <source>As a file</source>
        <translation>Em arquivo</translation>
    </message>
    <message>
        <source>Share the file</source>
        <translation>Compartilhar o arquivo</translation>
    </message>
    <message>
        <source>Save the file</source>
        <translation>Salvar o arquivo</translation>
    </message>
</context>
<context>
    <name>HealthForm</name>
    <message>
        <source>No</source>
        <translation>Não</translation>
    </message>
    <message>
        <source>Yes</source>
        <translation>Sim</translation>
    </message>
    <message>
        <source>You answered yes on %1. That counts until a clinician has approved treatment.</source>
        <translation>Você respondeu sim em %1. Isso vale até um profissional de saúde liberar.</translation>
    </message>
    <message>
        <source>Approved by %1 until %2.</source>
        <translation>Liberação de %1, válida até %2.</translation>
    </message>
    <message>
        <source>The approval by %1 has expired. Ask again before your next session.</source>
        <translation>A liberação dada por %1 venceu. Pergunte de novo antes da próxima sessão.</translation>
    </message>
    <message>
        <source>No session until a clinician has said that it is safe for you.</source>
        <translation>Nenhuma sessão até um profissional de saúde dizer que é seguro para você.</translation>
    </message>
    <message>
        <source>Ask a clinician first and note who said yes.</source>
        <translation>Pergunte antes a um profissional de saúde e anote quem disse que sim.</translation>
    </message>
    <message>
        <source>Usually no obstacle; one hospital lists it. Mention it to your clinician.</source>
        <translation>Em geral não impede; um hospital cita isto. Comente com o seu profissional de saúde.</translation>
    </message>
</context>
<context>
    <name>HealthQuestions</name>
    <message>
        <source>Health questions</source>
        <translation>Perguntas de saúde</translation>
    </message>
    <message>
        <source>Some answers mean no session until a clinician has said yes. Your answers stay on this phone.</source>
        <translation>Com algumas respostas, não pode haver sessão até um profissional de saúde liberar. As suas respostas ficam neste celular.</translation>
    </message>
    <message>
        <source>Not approved: %1</source>
        <translation>Sem liberação: %1</translation>
    </message>
    <message>
        <source>Who said that it is safe?</source>
        <translation>Quem disse que é seguro?</translation>
    </message>
    <message>
        <source>Name of the doctor or nurse. It goes into your record.</source>
        <translation>Nome do médico ou enfermeiro. Fica no seu histórico.</translation>
    </message>
    <message>
        <source>On which day?</source>
        <translation>Em que dia?</translation>
    </message>
    <message>
        <source>Record the approval</source>
        <translation>Registrar a liberação</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Salvar</translation>
    </message>
</context>
<context>
    <name>KeepPage</name>
    <message>
        <source>Back-up, export and delete</source>
        <translation>Backup, exportar e excluir</translation>
    </message>
    <message>
        <source>Done: %1</source>
        <translation>Pronto: %1</translation>
    </message>
    <message>
        <source>Done.</source>
        <translation>Pronto.</translation>
    </message>
    <message>
        <source>Share it</source>
        <translation>Compartilhar</translation>
    </message>
    <message>
        <source>Your record is as it was.</source>
        <translation>O seu histórico está como antes.</translation>
    </message>
    <message>
        <source>Back-up</source>
        <translation>Backup</translation>
    </message>
    <message>
        <source>One encrypted file (OpenPGP) with everything. Without the passphrase nobody can open it – not even you.</source>
        <translation>Um único arquivo criptografado (OpenPGP) com tudo. Sem a senha ninguém consegue abrir – nem você.</translation>
    </message>
    <message>
        <source>Passphrase</source>
        <translation>Senha</translation>
    </message>
    <message>
        <source>At least eight characters.</source>
        <translation>Pelo menos oito caracteres.</translation>
    </message>
    <message>
        <source>Hide what I type</source>
        <translation>Ocultar o que digito</translation>
    </message>
    <message>
        <source>Show what I type</source>
        <translation>Mostrar o que digito</translation>
    </message>
    <message>
        <source>Make a back-up</source>
        <translation>Fazer um backup</translation>
    </message>
    <message>
        <source>Restore</source>
        <translation>Restaurar</translation>
    </message>
    <message>
        <source>Passphrase of the back-up</source>
        <translation>Senha do backup</translation>
    </message>
    <message>
        <source>What is here now is replaced. A copy of it is kept.</source>
        <translation>O que está aqui agora é substituído. Uma cópia fica guardada.</translation>
    </message>
    <message>
        <source>Export</source>
        <translation>Exportar</translation>
    </message>
    <message>
        <source>These files are not encrypted; share them with care.</source>
        <translation>Estes arquivos não são criptografados; compartilhe com cuidado.</translation>
    </message>
    <message>
        <source>Everything, as JSON</source>
        <translation>Tudo, em JSON</translation>
    </message>
    <message>
        <source>Tables for a spreadsheet, as CSV</source>
        <translation>Tabelas para planilha, em CSV</translation>
    </message>
    <message>
        <source>For medical records, as FHIR</source>
        <translation>Para prontuários, em FHIR</translation>
    </message>
    <message>
        <source>Planned sessions, for a calendar</source>
        <translation>Sessões marcadas, para um calendário</translation>
    </message>
    <message>
        <source>Firstdew sessions</source>
        <translation>Sessões do Firstdew</translation>
    </message>
    <message>
        <source>A session is planned</source>
        <translation>Há uma sessão marcada</translation>
    </message>
    <message>
        <source>Import</source>
        <translation>Importar</translation>
    </message>
    <message>
        <source>Add from this file</source>
        <translation>Adicionar deste arquivo</translation>
    </message>
    <message>
        <source>Add as a new person</source>
        <translation>Adicionar como nova pessoa</translation>
    </message>
    <message>
        <source>Delete</source>
        <translation>Excluir</translation>
    </message>
    <message>
        <source>Gone for good, here and in the copies on this phone. Files that you exported or shared stay where they are. Make a back-up first if in doubt.</source>
        <translation>Some para sempre, aqui e nas cópias neste celular. Os arquivos que você exportou ou compartilhou ficam onde estão. Na dúvida, faça um backup antes.</translation>
    </message>
    <message>
        <source>Delete this person</source>
        <translation>Excluir esta pessoa</translation>
    </message>
    <message>
        <source>The record of %1 is deleted for good.</source>
        <translation>O histórico de %1 é excluído para sempre.</translation>
    </message>
    <message>
        <source>this person</source>
        <translation>esta pessoa</translation>
    </message>
    <message>
        <source>Delete everything</source>
        <translation>Excluir tudo</translation>
    </message>
    <message>
        <source>Every record on this phone is deleted for good.</source>
        <translation>Todos os históricos neste celular são excluídos para sempre.</translation>
    </message>
    <message>
        <source>Keep things as they are</source>
        <translation>Deixar tudo como está</translation>
    </message>
</context>
<context>
    <name>LimitsCard</name>
    <message>
        <source>Limits</source>
        <translation>Limites</translation>
    </message>
    <message>
        <source>Your birthday is not set, so the lower limits for children count.</source>
        <translation>A sua data de nascimento não foi informada, por isso valem os limites mais baixos, de crianças.</translation>
    </message>
    <message>
        <source>Adult beside the child: %1</source>
        <translation>Adulto ao lado da criança: %1</translation>
    </message>
    <message>
        <source>at most %1</source>
        <translation>no máximo %1</translation>
    </message>
    <message>
        <source>not used</source>
        <translation>não é usada</translation>
    </message>
</context>
<context>
    <name>MachineForm</name>
    <message>
        <source>Make or model</source>
        <translation>Marca ou modelo</translation>
    </message>
    <message>
        <source>Optional</source>
        <translation>Opcional</translation>
    </message>
    <message>
        <source>Current it gives (see its instructions)</source>
        <translation>Corrente que ele fornece (veja as instruções)</translation>
    </message>
    <message>
        <source>Choose at least one.</source>
        <translation>Escolha pelo menos uma.</translation>
    </message>
    <message>
        <source>Size of one armpit pad in cm² (length × width)</source>
        <translation>Tamanho de uma esponja de axila em cm² (comprimento × largura)</translation>
    </message>
    <message>
        <source>Optional. Until it is entered, the limit for armpits stays low.</source>
        <translation>Opcional. Enquanto não for informado, o limite para as axilas fica baixo.</translation>
    </message>
    <message>
        <source>How is polarity reversed?</source>
        <translation>Como se inverte a polaridade?</translation>
    </message>
    <message>
        <source>By swapping the leads</source>
        <translation>Invertendo os cabos</translation>
    </message>
    <message>
        <source>By a switch</source>
        <translation>Com uma chave</translation>
    </message>
    <message>
        <source>By exchanging the armpit pads</source>
        <translation>Trocando as esponjas das axilas entre si</translation>
    </message>
    <message>
        <source>Is there a remote control?</source>
        <translation>Há um controle remoto?</translation>
    </message>
    <message>
        <source>No</source>
        <translation>Não</translation>
    </message>
    <message>
        <source>Yes</source>
        <translation>Sim</translation>
    </message>
    <message>
        <source>What does it run on?</source>
        <translation>O que alimenta o aparelho?</translation>
    </message>
    <message>
        <source>Batteries</source>
        <translation>Pilhas</translation>
    </message>
    <message>
        <source>Mains adapter</source>
        <translation>Adaptador de tomada</translation>
    </message>
</context>
<context>
    <name>MachinePage</name>
    <message>
        <source>Machine and kit</source>
        <translation>Aparelho e material</translation>
    </message>
    <message>
        <source>Batteries</source>
        <translation>Pilhas</translation>
    </message>
    <message numerus="yes">
        <source>About %n session(s) left. A set of four alkaline cells lasts about three.</source>
        <translation>
            <numerusform>Resta cerca de %n sessão. Um jogo de quatro pilhas alcalinas dura cerca de três.</numerusform>
            <numerusform>Restam cerca de %n sessões. Um jogo de quatro pilhas alcalinas dura cerca de três.</numerusform>
        </translation>
    </message>
    <message>
        <source>Say when you put in new ones, and Firstdew counts the sessions.</source>
        <translation>Avise quando puser pilhas novas, e o Firstdew conta as sessões.</translation>
    </message>
    <message>
        <source>New batteries put in</source>
        <translation>Pus pilhas novas</translation>
    </message>
    <message>
        <source>Machine</source>
        <translation>Aparelho</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Salvar</translation>
    </message>
    <message>
        <source>Where it is used</source>
        <translation>Onde é usado</translation>
    </message>
    <message>
        <source>The batteries are probably used up. Put in new ones.</source>
        <translation>As pilhas provavelmente acabaram. Ponha pilhas novas.</translation>
    </message>
</context>
<context>
    <name>MakeSheetPage</name>
    <message>
        <source>Make a care sheet</source>
        <translation>Fazer uma ficha de cuidados</translation>
    </message>
    <message>
        <source>Call me before you go on.</source>
        <translation>Ligue para mim antes de continuar.</translation>
    </message>
    <message>
        <source>Check how you do it with Firstdew, do three more sessions, then call me.</source>
        <translation>Confira com o Firstdew como você faz, faça mais três sessões e depois ligue para mim.</translation>
    </message>
    <message>
        <source>See your doctor about other treatments.</source>
        <translation>Converse com o seu médico sobre outros tratamentos.</translation>
    </message>
    <message>
        <source>None</source>
        <translation>Nenhum</translation>
    </message>
    <message>
        <source>Days I choose</source>
        <translation>Dias que eu escolho</translation>
    </message>
    <message>
        <source>For whom</source>
        <translation>Para quem</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nome</translation>
    </message>
    <message>
        <source>Optional. It stands on the paper alone, not in the code.</source>
        <translation>Opcional. Aparece só no papel, não no código.</translation>
    </message>
    <message>
        <source>Age</source>
        <translation>Idade</translation>
    </message>
    <message>
        <source>Adult</source>
        <translation>Adulto</translation>
    </message>
    <message>
        <source>Under 18</source>
        <translation>Menos de 18</translation>
    </message>
    <message>
        <source>Where to treat</source>
        <translation>Onde tratar</translation>
    </message>
    <message>
        <source>Current</source>
        <translation>Corrente</translation>
    </message>
    <message>
        <source>As it suits the person</source>
        <translation>A que for melhor para a pessoa</translation>
    </message>
    <message>
        <source>Limit, direct current</source>
        <translation>Limite, corrente contínua</translation>
    </message>
    <message>
        <source>Limit, pulsed current</source>
        <translation>Limite, corrente pulsada</translation>
    </message>
    <message>
        <source>Level to begin with at home</source>
        <translation>Nível para começar em casa</translation>
    </message>
    <message>
        <source>Size of one armpit pad</source>
        <translation>Tamanho de uma esponja de axila</translation>
    </message>
    <message>
        <source>Course</source>
        <translation>Ciclo</translation>
    </message>
    <message>
        <source>Tap the days of the sessions. Day 1 is the first.</source>
        <translation>Toque nos dias das sessões. O dia 1 é o primeiro.</translation>
    </message>
    <message>
        <source>Day %1</source>
        <translation>Dia %1</translation>
    </message>
    <message>
        <source>Another week</source>
        <translation>Mais uma semana</translation>
    </message>
    <message>
        <source>First session, for the dates on paper</source>
        <translation>Primeira sessão, para as datas no papel</translation>
    </message>
    <message>
        <source>Leave the dates open</source>
        <translation>Deixar as datas em aberto</translation>
    </message>
    <message>
        <source>Afterwards</source>
        <translation>Depois</translation>
    </message>
    <message>
        <source>Review</source>
        <translation>Avaliação</translation>
    </message>
    <message>
        <source>Without a review</source>
        <translation>Sem avaliação</translation>
    </message>
    <message>
        <source>If the course does not help</source>
        <translation>Se o ciclo não ajudar</translation>
    </message>
    <message>
        <source>In your own words</source>
        <translation>Com as suas palavras</translation>
    </message>
    <message>
        <source>From whom</source>
        <translation>De quem</translation>
    </message>
    <message>
        <source>Your name</source>
        <translation>Seu nome</translation>
    </message>
    <message>
        <source>Whom to call, with a number</source>
        <translation>Para quem ligar, com número</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation>Notas</translation>
    </message>
    <message>
        <source>Optional</source>
        <translation>Opcional</translation>
    </message>
    <message>
        <source>Time for the hands</source>
        <translation>Tempo para as mãos</translation>
    </message>
    <message>
        <source>How long the voice waits where both hands are in the water.</source>
        <translation>Quanto tempo a voz espera quando as duas mãos estão na água.</translation>
    </message>
    <message>
        <source>To turn up</source>
        <translation>Para aumentar</translation>
    </message>
    <message>
        <source>To turn down</source>
        <translation>Para diminuir</translation>
    </message>
    <message>
        <source>To swap</source>
        <translation>Para inverter</translation>
    </message>
    <message>
        <source>Hand it over</source>
        <translation>Entregar</translation>
    </message>
</context>
<context>
    <name>MonthDots</name>
    <message>
        <source>nothing noted</source>
        <translation>nada anotado</translation>
    </message>
    <message>
        <source>Dampness over time, %1</source>
        <translation>Suor ao longo do tempo, %1</translation>
    </message>
    <message>
        <source>No check-in in these weeks. Tap a day to add one.</source>
        <translation>Nenhuma anotação nestas semanas. Toque em um dia para adicionar uma.</translation>
    </message>
    <message>
        <source>A bar under a day is a session. Tap a day to see and correct it.</source>
        <translation>Uma barra embaixo de um dia é uma sessão. Toque em um dia para ver e corrigir.</translation>
    </message>
    <message>
        <source>Tap a day to see and correct it.</source>
        <translation>Toque em um dia para ver e corrigir.</translation>
    </message>
</context>
<context>
    <name>MovePage</name>
    <message>
        <source>Move to another phone</source>
        <translation>Passar para outro celular</translation>
    </message>
    <message>
        <source>Your record goes to the other phone as one encrypted file. Which phone is this?</source>
        <translation>O seu histórico vai para o outro celular em um único arquivo criptografado. Qual celular é este?</translation>
    </message>
    <message>
        <source>The old one: send from here</source>
        <translation>O antigo: enviar daqui</translation>
    </message>
    <message>
        <source>The new one: bring it here</source>
        <translation>O novo: trazer para cá</translation>
    </message>
    <message>
        <source>1. Choose a passphrase</source>
        <translation>1. Escolha uma senha</translation>
    </message>
    <message>
        <source>You type it once more on the new phone. Without it nobody can open the file – not even you.</source>
        <translation>Você digita a senha mais uma vez no celular novo. Sem ela ninguém consegue abrir o arquivo – nem você.</translation>
    </message>
    <message>
        <source>Passphrase</source>
        <translation>Senha</translation>
    </message>
    <message>
        <source>At least eight characters.</source>
        <translation>Pelo menos oito caracteres.</translation>
    </message>
    <message>
        <source>Hide what I type</source>
        <translation>Ocultar o que digito</translation>
    </message>
    <message>
        <source>Show what I type</source>
        <translation>Mostrar o que digito</translation>
    </message>
    <message>
        <source>2. Send the file to the new phone</source>
        <translation>2. Envie o arquivo ao celular novo</translation>
    </message>
    <message>
        <source>Use a cable, a memory card, or a message to yourself.</source>
        <translation>Use um cabo, um cartão de memória ou uma mensagem para o seu próprio contato.</translation>
    </message>
    <message>
        <source>3. On the new phone</source>
        <translation>3. No celular novo</translation>
    </message>
    <message>
        <source>Open Firstdew there and tap “Move from another phone”. Choose the file and type the passphrase. It then has to show these numbers:</source>
        <translation>Abra lá o Firstdew e toque em “Trazer de outro celular”. Escolha o arquivo e digite a senha. Ele tem de mostrar estes números:</translation>
    </message>
    <message>
        <source>Keep this phone as it is until you have seen them.</source>
        <translation>Deixe este celular como está até você ver esses números lá.</translation>
    </message>
    <message>
        <source>Bring the record here</source>
        <translation>Trazer o histórico para cá</translation>
    </message>
    <message>
        <source>On the old phone, open Settings, “Move to another phone”, and send the file to this one. Then choose it here.</source>
        <translation>No celular antigo, abra Ajustes, “Passar para outro celular”, e envie o arquivo para este. Depois escolha o arquivo aqui.</translation>
    </message>
    <message>
        <source>Choose the file</source>
        <translation>Escolher o arquivo</translation>
    </message>
    <message>
        <source>Its passphrase</source>
        <translation>A senha dele</translation>
    </message>
    <message>
        <source>The file holds</source>
        <translation>O arquivo contém</translation>
    </message>
    <message>
        <source>What is on this phone now is replaced. A copy of it is kept.</source>
        <translation>O que está neste celular agora é substituído. Uma cópia fica guardada.</translation>
    </message>
    <message>
        <source>Everything is here.</source>
        <translation>Tudo está aqui.</translation>
    </message>
    <message>
        <source>Compare the numbers with the old phone. Then you can delete the record there.</source>
        <translation>Compare os números com os do celular antigo. Depois você pode excluir o histórico lá.</translation>
    </message>
    <message>
        <source>What was on this phone before is kept in %1</source>
        <translation>O que estava neste celular antes fica guardado em %1</translation>
    </message>
    <message>
        <source>Make the file</source>
        <translation>Criar o arquivo</translation>
    </message>
    <message>
        <source>Send the file</source>
        <translation>Enviar o arquivo</translation>
    </message>
    <message>
        <source>Look into it</source>
        <translation>Ver o conteúdo</translation>
    </message>
    <message>
        <source>Use it here</source>
        <translation>Usar aqui</translation>
    </message>
    <message>
        <source>Replace what is here</source>
        <translation>Substituir o que está aqui</translation>
    </message>
    <message>
        <source>Go to Today</source>
        <translation>Ir para Hoje</translation>
    </message>
</context>
<context>
    <name>NextAction</name>
    <message>
        <source>Plan the first course</source>
        <translation>Planeje o ciclo inicial</translation>
    </message>
    <message>
        <source>Next session: %1</source>
        <translation>Próxima sessão: %1</translation>
    </message>
    <message>
        <source>Why?</source>
        <translation>Por quê?</translation>
    </message>
    <message>
        <source>Start now</source>
        <translation>Começar agora</translation>
    </message>
    <message>
        <source>Move it</source>
        <translation>Mudar a data</translation>
    </message>
    <message>
        <source>I did one</source>
        <translation>Já fiz uma</translation>
    </message>
    <message>
        <source>Move session %1</source>
        <translation>Mudar a data da sessão %1</translation>
    </message>
    <message>
        <source>Choose the course</source>
        <translation>Escolher o ciclo</translation>
    </message>
    <message>
        <source>I already treat</source>
        <translation>Já faço o tratamento</translation>
    </message>
    <message>
        <source>Go on to keeping dry</source>
        <translation>Passar para a manutenção</translation>
    </message>
    <message>
        <source>Your care sheet says: %1</source>
        <translation>A sua ficha de cuidados diz: %1</translation>
    </message>
    <message>
        <source>Say how it is now</source>
        <translation>Dizer como está agora</translation>
    </message>
    <message>
        <source>Go on to twelve sessions</source>
        <translation>Continuar até doze sessões</translation>
    </message>
    <message>
        <source>Check how you do it</source>
        <translation>Conferir como você faz</translation>
    </message>
    <message>
        <source>See the health questions</source>
        <translation>Ver as perguntas de saúde</translation>
    </message>
</context>
<context>
    <name>NotNowSheet</name>
    <message>
        <source>Not this time</source>
        <translation>Desta vez não</translation>
    </message>
    <message>
        <source>What&apos;s the reason? The answer goes into your record; the call comes back when a later check-in asks for it.</source>
        <translation>Qual é o motivo? A resposta fica no seu histórico; o aviso volta quando uma anotação posterior pedir.</translation>
    </message>
    <message>
        <source>The dampness has another cause</source>
        <translation>O suor tem outra causa</translation>
    </message>
    <message>
        <source>My skin needs a rest</source>
        <translation>Minha pele precisa de descanso</translation>
    </message>
    <message>
        <source>No time</source>
        <translation>Sem tempo</translation>
    </message>
    <message>
        <source>I am away from the machine</source>
        <translation>Estou longe do aparelho</translation>
    </message>
    <message>
        <source>Something else</source>
        <translation>Outra coisa</translation>
    </message>
</context>
<context>
    <name>OtherPage</name>
    <message>
        <source>Other treatments</source>
        <translation>Outros tratamentos</translation>
    </message>
    <message>
        <source>Note what else dries your skin. Dry spells in that time are left out of your outlook, and your prescriber sees it in the summary.</source>
        <translation>Anote o que mais seca a sua pele. Os períodos secos desse tempo não entram na previsão, e o médico que prescreveu vê isso no resumo.</translation>
    </message>
    <message>
        <source>What is it?</source>
        <translation>O que é?</translation>
    </message>
    <message>
        <source>Its name</source>
        <translation>Nome</translation>
    </message>
    <message>
        <source>Optional</source>
        <translation>Opcional</translation>
    </message>
    <message>
        <source>Where (none = everywhere)</source>
        <translation>Onde (nenhuma = todas as áreas)</translation>
    </message>
    <message>
        <source>Works since</source>
        <translation>Faz efeito desde</translation>
    </message>
    <message>
        <source>Does it still work?</source>
        <translation>Ainda faz efeito?</translation>
    </message>
    <message>
        <source>Yes</source>
        <translation>Sim</translation>
    </message>
    <message>
        <source>It ended</source>
        <translation>Terminou</translation>
    </message>
    <message>
        <source>Last day</source>
        <translation>Último dia</translation>
    </message>
    <message>
        <source>Remove %1</source>
        <translation>Remover %1</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Salvar</translation>
    </message>
</context>
<context>
    <name>Outgoing</name>
    <message>
        <source>Handed over.</source>
        <translation>Entregue.</translation>
    </message>
    <message>
        <source>Saved as %1.</source>
        <translation>Salvo como %1.</translation>
    </message>
</context>
<context>
    <name>OutlookStrip</name>
    <message>
        <source>session planned</source>
        <translation>sessão marcada</translation>
    </message>
    <message>
        <source>No session planned</source>
        <translation>Nenhuma sessão marcada</translation>
    </message>
    <message>
        <source>Session today</source>
        <translation>Sessão hoje</translation>
    </message>
    <message>
        <source>Session %1</source>
        <translation>Sessão %1</translation>
    </message>
    <message>
        <source>Chance of dampness by day, %1</source>
        <translation>Chance de suor por dia, %1</translation>
    </message>
    <message>
        <source>Bars come with the first session.</source>
        <translation>As barras aparecem com a primeira sessão.</translation>
    </message>
    <message>
        <source>Planned session. The fuller a bar, the likelier it is damp by that day; after a session it starts again.</source>
        <translation>Sessão marcada. Quanto mais cheia a barra, maior a chance de haver suor até esse dia; depois de uma sessão, recomeça.</translation>
    </message>
    <message>
        <source>The fuller a bar, the likelier it is damp by that day.</source>
        <translation>Quanto mais cheia a barra, maior a chance de haver suor até esse dia.</translation>
    </message>
</context>
<context>
    <name>PaceChoice</name>
    <message>
        <source>Close together, done by %1</source>
        <translation>Em dias seguidos, até %1</translation>
    </message>
    <message>
        <source>A day between, done by %1</source>
        <translation>Com um dia entre elas, até %1</translation>
    </message>
</context>
<context>
    <name>Page</name>
    <message>
        <source>The health questions have not been answered yet.</source>
        <translation>As perguntas de saúde ainda não foram respondidas.</translation>
    </message>
    <message>
        <source>Health questions: nothing answered with yes.</source>
        <translation>Perguntas de saúde: nenhuma respondida com sim.</translation>
    </message>
    <message>
        <source>Answered with yes: %1.</source>
        <translation>Respondido com sim: %1.</translation>
    </message>
    <message>
        <source>direct and pulsed current</source>
        <translation>corrente contínua e pulsada</translation>
    </message>
    <message>
        <source>direct current</source>
        <translation>corrente contínua</translation>
    </message>
    <message>
        <source>Machine: %1.</source>
        <translation>Aparelho: %1.</translation>
    </message>
    <message>
        <source>Health questions and prescription</source>
        <translation>Perguntas de saúde e prescrição</translation>
    </message>
    <message>
        <source>Approved by %1 on %2: %3.</source>
        <translation>Liberação de %1 em %2: %3.</translation>
    </message>
    <message>
        <source>Care sheet of %1, %2, for: %3.</source>
        <translation>Ficha de cuidados (quem deu: %1), %2, para: %3.</translation>
    </message>
    <message>
        <source>Taught: %1.</source>
        <translation>Sessão com orientação: %1.</translation>
    </message>
    <message>
        <source>Seen: %1.</source>
        <translation>Observado: %1.</translation>
    </message>
    <message>
        <source>The size of the armpit pads is not entered, so their limit is kept low.</source>
        <translation>O tamanho das esponjas de axila não foi informado, por isso o limite delas fica baixo.</translation>
    </message>
    <message numerus="yes">
        <source>Batteries: about %n session(s) left.</source>
        <translation>
            <numerusform>Pilhas: resta cerca de %n sessão.</numerusform>
            <numerusform>Pilhas: restam cerca de %n sessões.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Check-ins on %n day(s): %1.</source>
        <translation>
            <numerusform>Anotações em %n dia: %1.</numerusform>
            <numerusform>Anotações em %n dias: %1.</numerusform>
        </translation>
    </message>
    <message>
        <source>Days with a circumstance: %1.</source>
        <translation>Dias com uma circunstância: %1.</translation>
    </message>
    <message>
        <source>Weighed: %1.</source>
        <translation>Pesagem: %1.</translation>
    </message>
    <message>
        <source>interrupted</source>
        <translation>interrompida</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Dia</translation>
    </message>
    <message>
        <source>Site</source>
        <translation>Área</translation>
    </message>
    <message>
        <source>Current</source>
        <translation>Corrente</translation>
    </message>
    <message>
        <source>Highest</source>
        <translation>Máxima</translation>
    </message>
    <message>
        <source>Comfortable</source>
        <translation>Confortável</translation>
    </message>
    <message>
        <source>Charge</source>
        <translation>Carga</translation>
    </message>
    <message>
        <source>Felt</source>
        <translation>Sensação</translation>
    </message>
    <message>
        <source>Severity is asked in the app&apos;s own words, in four steps after the HDSS.</source>
        <translation>A gravidade é perguntada com palavras próprias do app, em quatro graus, seguindo a HDSS.</translation>
    </message>
    <message>
        <source>Name not given</source>
        <translation>Sem nome</translation>
    </message>
    <message>
        <source>%1   ·   %2 to %3</source>
        <translation>%1   ·   %2 a %3</translation>
    </message>
    <message>
        <source>Figures of this period</source>
        <translation>Números deste período</translation>
    </message>
    <message>
        <source>Sessions</source>
        <translation>Sessões</translation>
    </message>
    <message numerus="yes">
        <source>%n earlier; all of them are in the exports.</source>
        <translation>
            <numerusform>%n anterior; todas estão nas exportações.</numerusform>
            <numerusform>%n anteriores; todas estão nas exportações.</numerusform>
        </translation>
    </message>
    <message>
        <source>Stop and look</source>
        <translation>Parar e examinar</translation>
    </message>
    <message>
        <source>No session for now</source>
        <translation>Sem sessões por enquanto</translation>
    </message>
    <message>
        <source>It does not work yet</source>
        <translation>Ainda não funciona</translation>
    </message>
    <message>
        <source>It works in part</source>
        <translation>Funciona em parte</translation>
    </message>
    <message>
        <source>It works</source>
        <translation>Funciona</translation>
    </message>
    <message>
        <source>Too early to say</source>
        <translation>Cedo demais para dizer</translation>
    </message>
    <message>
        <source>Not started yet</source>
        <translation>Ainda não começou</translation>
    </message>
    <message>
        <source>Look at the skin (%1): a burn was noted on %2. No session there until you have.</source>
        <translation>Examine a pele (%1): foi anotada uma queimadura em %2. Nenhuma sessão nessa área até você examinar.</translation>
    </message>
    <message>
        <source>Look at the skin (%1): a blister was noted on %2. No session there until you have.</source>
        <translation>Examine a pele (%1): foi anotada uma bolha em %2. Nenhuma sessão nessa área até você examinar.</translation>
    </message>
    <message numerus="yes">
        <source>The meter was above the limit in %n session(s), last on %1.</source>
        <translation>
            <numerusform>O medidor ficou acima do limite em %n sessão, a última em %1.</numerusform>
            <numerusform>O medidor ficou acima do limite em %n sessões, a última em %1.</numerusform>
        </translation>
    </message>
    <message>
        <source>Is this treatment possible with %1 (answered yes on %2)? No session until a clinician has approved treatment.</source>
        <translation>Este tratamento é possível com %1 (respondido sim em %2)? Nenhuma sessão até um profissional de saúde liberar.</translation>
    </message>
    <message>
        <source>The course brought no response (%1). Talk about other treatments.</source>
        <translation>O ciclo não trouxe resposta (%1). Conversem sobre outros tratamentos.</translation>
    </message>
    <message>
        <source>The review named on the care sheet is due (%1).</source>
        <translation>Está na hora da avaliação indicada na ficha de cuidados (%1).</translation>
    </message>
    <message numerus="yes">
        <source>There are %n question(s) for you, below.</source>
        <translation>
            <numerusform>Há %n pergunta para você, abaixo.</numerusform>
            <numerusform>Há %n perguntas para você, abaixo.</numerusform>
        </translation>
    </message>
    <message>
        <source>no birth date entered</source>
        <translation>sem data de nascimento</translation>
    </message>
    <message numerus="yes">
        <source>child, %n year(s)</source>
        <translation>
            <numerusform>criança, %n ano</numerusform>
            <numerusform>criança, %n anos</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>adult, %n year(s)</source>
        <translation>
            <numerusform>pessoa adulta, %n ano</numerusform>
            <numerusform>pessoa adulta, %n anos</numerusform>
        </translation>
    </message>
    <message>
        <source>Iontophoresis summary</source>
        <translation>Resumo da iontoforese</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 a %2</translation>
    </message>
    <message>
        <source>damp days a week: %1</source>
        <translation>dias com suor por semana: %1</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>site: its verdict</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>No site in use.</source>
        <translation>Nenhuma área em uso.</translation>
    </message>
    <message>
        <source>For you to do</source>
        <translation>O que pedimos a você</translation>
    </message>
    <message>
        <source>Nothing at present.</source>
        <translation>Nada no momento.</translation>
    </message>
    <message>
        <source>%1: %2 · %3</source>
        <comment>day: site · skin</comment>
        <translation>%1: %2 · %3</translation>
    </message>
    <message>
        <source> · %1 · %2</source>
        <comment>continues a line: current, its kind</comment>
        <translation> · %1 · %2</translation>
    </message>
    <message>
        <source>%1: %2 · %3 with a limit of %4</source>
        <comment>day: site · peak, limit</comment>
        <translation>%1: %2 · %3 com limite de %4</translation>
    </message>
    <message numerus="yes">
        <source>%1, for %n second(s)</source>
        <translation>
            <numerusform>%1, por %n segundo</numerusform>
            <numerusform>%1, por %n segundos</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n earlier</source>
        <translation>
            <numerusform>%n anterior</numerusform>
            <numerusform>%n anteriores</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 · %2: %3. %4.</source>
        <comment>kind of current · sites: limit. Who set it.</comment>
        <translation>%1 · %2: %3. %4.</translation>
    </message>
    <message>
        <source>Skin and current in this period</source>
        <translation>Pele e corrente neste período</translation>
    </message>
    <message>
        <source>Skin</source>
        <translation>Pele</translation>
    </message>
    <message>
        <source>Nothing recorded.</source>
        <translation>Nada registrado.</translation>
    </message>
    <message>
        <source>Above the limit</source>
        <translation>Acima do limite</translation>
    </message>
    <message>
        <source>No sessions in this period.</source>
        <translation>Nenhuma sessão neste período.</translation>
    </message>
    <message>
        <source>Limits now</source>
        <translation>Limites atuais</translation>
    </message>
    <message>
        <source>No prescriber has set a limit.</source>
        <translation>Nenhum limite definido por quem prescreveu.</translation>
    </message>
    <message>
        <source>Other treatments</source>
        <translation>Outros tratamentos</translation>
    </message>
    <message>
        <source>Dry spells in this time are left out of the outlook.</source>
        <translation>Os períodos secos desse tempo não entram na previsão.</translation>
    </message>
    <message>
        <source>%1 · %2</source>
        <comment>milliamperes · kind of current</comment>
        <translation>%1 · %2</translation>
    </message>
    <message>
        <source>%1 · %2 (limit %3)</source>
        <comment>level · day</comment>
        <translation>%1 · %2 (limite %3)</translation>
    </message>
    <message>
        <source>%1 · %2</source>
        <comment>level · day</comment>
        <translation>%1 · %2</translation>
    </message>
    <message>
        <source>%1 on %2, to begin with</source>
        <comment>score on day</comment>
        <translation>%1 em %2, no começo</translation>
    </message>
    <message>
        <source>%1 on %2</source>
        <comment>score on day</comment>
        <translation>%1 em %2</translation>
    </message>
    <message numerus="yes">
        <source>%n dry spell(s) seen to the end</source>
        <translation>
            <numerusform>%n período seco visto até o fim</numerusform>
            <numerusform>%n períodos secos vistos até o fim</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n not seen to the end</source>
        <comment>dry spells</comment>
        <translation>
            <numerusform>%n não visto até o fim</numerusform>
            <numerusform>%n não vistos até o fim</numerusform>
        </translation>
    </message>
    <message>
        <source>not known yet</source>
        <translation>ainda não se sabe</translation>
    </message>
    <message>
        <source>%1 of %2 sessions done</source>
        <translation>%1 de %2 sessões feitas</translation>
    </message>
    <message>
        <source>planned from %1</source>
        <translation>marcado a partir de %1</translation>
    </message>
    <message>
        <source>last session on %1</source>
        <translation>última sessão em %1</translation>
    </message>
    <message numerus="yes">
        <source>%n of them on another day than planned</source>
        <translation>
            <numerusform>%n delas em outro dia, não no previsto</numerusform>
            <numerusform>%n delas em outro dia, não no previsto</numerusform>
        </translation>
    </message>
    <message>
        <source>Stage</source>
        <translation>Etapa</translation>
    </message>
    <message>
        <source>Course</source>
        <translation>Ciclo</translation>
    </message>
    <message>
        <source>Severity 1–4, own answer (modelled on the HDSS)</source>
        <translation>Gravidade 1–4, resposta própria (seguindo a HDSS)</translation>
    </message>
    <message>
        <source>%1 completed</source>
        <translation>concluídas: %1</translation>
    </message>
    <message>
        <source>%1 interrupted</source>
        <translation>interrompidas: %1</translation>
    </message>
    <message>
        <source>Sessions in the period</source>
        <translation>Sessões no período</translation>
    </message>
    <message>
        <source>Highest comfortable in the period</source>
        <translation>Maior leitura confortável no período</translation>
    </message>
    <message>
        <source>Usual dry spell, all time</source>
        <translation>Período seco habitual, desde o começo</translation>
    </message>
    <message>
        <source>Last check-in</source>
        <translation>Última anotação</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>day, level</comment>
        <translation>%1, %2</translation>
    </message>
    <message numerus="yes">
        <source>%n in the period</source>
        <comment>check-ins</comment>
        <translation>
            <numerusform>%n no período</numerusform>
            <numerusform>%n no período</numerusform>
        </translation>
    </message>
    <message>
        <source>Next session</source>
        <translation>Próxima sessão</translation>
    </message>
    <message numerus="yes">
        <source>Days dry after the latest %n session(s). Hollow: first damp day unknown. Pointed: end not seen.</source>
        <translation>
            <numerusform>Dias secos após a última sessão. Vazada: fim impreciso. Em ponta: fim não observado.</numerusform>
            <numerusform>Dias secos após as últimas %n sessões. Vazada: fim impreciso. Em ponta: fim não observado.</numerusform>
        </translation>
    </message>
    <message>
        <source>Days a week noted as damp, also after heat or effort, 0 to 7. Dark: wet or dripping. Ticks: sessions.</source>
        <translation>Dias com suor por semana, calor e esforço incluídos. Escuro: molhada, pingando. Traços: sessões.</translation>
    </message>
    <message>
        <source>Recorded by the person at home; not a medical device, no diagnosis. Machine&apos;s instructions, local rules and the clinician come first. Burns, blisters, faintness or palpitations: stop and seek help.</source>
        <translation>Registrado em casa pela própria pessoa; não é um dispositivo médico nem um diagnóstico. As instruções do aparelho, as normas locais e o profissional de saúde vêm em primeiro lugar. Queimaduras, bolhas, sensação de desmaio ou palpitações: pare e procure ajuda.</translation>
    </message>
    <message>
        <source>%1, %2: at most %3</source>
        <translation>%1, %2: no máximo %3</translation>
    </message>
    <message>
        <source>Your treatment plan</source>
        <translation>Seu plano de tratamento</translation>
    </message>
    <message>
        <source>For: %1</source>
        <translation>Para: %1</translation>
    </message>
    <message>
        <source>From %1, %2</source>
        <translation>Quem deu: %1, %2</translation>
    </message>
    <message>
        <source>Begin with %1 or less.</source>
        <translation>Comece com %1 ou menos.</translation>
    </message>
    <message>
        <source>The app or the machine may show a lower limit. The lowest one counts.</source>
        <translation>O app ou o aparelho podem mostrar um limite menor. Vale o mais baixo.</translation>
    </message>
    <message>
        <source>Current to zero and polarity swapped after each part.</source>
        <translation>Depois de cada parte: corrente em zero e polaridade invertida.</translation>
    </message>
    <message>
        <source>In Firstdew: Plan, Care sheet, Scan the code.</source>
        <translation>No Firstdew: Plano, Ficha de cuidados, Escanear o código.</translation>
    </message>
    <message>
        <source>Day %1</source>
        <translation>Dia %1</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>weekday and day</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>Your sessions</source>
        <translation>Suas sessões</translation>
    </message>
    <message>
        <source>Tick each session when it is done.</source>
        <translation>Marque cada sessão quando estiver feita.</translation>
    </message>
    <message>
        <source>If you begin on another day, every day moves along.</source>
        <translation>Se você começar em outro dia, todos os outros dias também mudam.</translation>
    </message>
    <message>
        <source>Day 1 is the day of your first session.</source>
        <translation>O dia 1 é o dia da sua primeira sessão.</translation>
    </message>
    <message>
        <source>Firstdew tells you when the next one is due.</source>
        <translation>O Firstdew avisa quando é a próxima.</translation>
    </message>
    <message>
        <source>Look at the skin. Cover small cuts with jelly.</source>
        <translation>Olhe a pele. Cubra cortes pequenos com vaselina.</translation>
    </message>
    <message>
        <source>Soak the pads.</source>
        <translation>Encharque as esponjas.</translation>
    </message>
    <message>
        <source>Plate in, grid over it, then warm water.</source>
        <translation>Placa dentro, grade por cima, depois água morna.</translation>
    </message>
    <message>
        <source>Put the pads on. Switch on: the meter shows zero.</source>
        <translation>Coloque as esponjas nas axilas. Ligue: o medidor mostra zero.</translation>
    </message>
    <message>
        <source>Skin under water. Switch on: the meter shows zero.</source>
        <translation>Pele debaixo da água. Ligue: o medidor mostra zero.</translation>
    </message>
    <message>
        <source>Turn up slowly. It may prickle. It must not hurt.</source>
        <translation>Aumente devagar. Pode formigar. Não pode doer.</translation>
    </message>
    <message>
        <source>Between the parts: down to zero, swap or change sides, up again.</source>
        <translation>Entre as partes: diminua até zero, inverta ou mude de lado, aumente.</translation>
    </message>
    <message>
        <source>Between the parts: down to zero, swap, up again.</source>
        <translation>Entre as partes: diminua até zero, inverta, aumente.</translation>
    </message>
    <message>
        <source>Down to zero, machine off. Then the pads come off.</source>
        <translation>Diminua até zero, desligue o aparelho. Depois tire as esponjas.</translation>
    </message>
    <message>
        <source>Down to zero, machine off. Then take your hands or feet out.</source>
        <translation>Diminua até zero, desligue o aparelho. Depois tire as mãos ou os pés da água.</translation>
    </message>
    <message>
        <source>An adult stays beside the child the whole time.</source>
        <translation>Um adulto fica ao lado da criança o tempo todo.</translation>
    </message>
    <message>
        <source>Both hands in the water: somebody stays beside you.</source>
        <translation>As duas mãos na água: alguém fica ao seu lado.</translation>
    </message>
    <message>
        <source>Each session: %1</source>
        <translation>Cada sessão: %1</translation>
    </message>
    <message>
        <source>When to stop</source>
        <translation>Quando parar</translation>
    </message>
    <message>
        <source>It hurts, you feel faint, or your heart races: turn down to zero, machine off, then take your hands or feet out.</source>
        <translation>Se doer, der sensação de desmaio ou o coração disparar: diminua até zero, desligue o aparelho e depois tire as mãos ou os pés da água.</translation>
    </message>
    <message>
        <source>A burn or a blister: leave the machine off until a clinician has looked at it.</source>
        <translation>Queimadura ou bolha: deixe o aparelho desligado até um profissional de saúde examinar.</translation>
    </message>
    <message>
        <source>Pregnant, a new implant, or another health answer changed: leave the machine off and ask first.</source>
        <translation>Gravidez, implante novo ou mudança em outra resposta de saúde: deixe o aparelho desligado e pergunte antes.</translation>
    </message>
    <message>
        <source>Call: %1</source>
        <translation>Ligue para: %1</translation>
    </message>
    <message>
        <source>Afterwards</source>
        <translation>Depois</translation>
    </message>
    <message>
        <source>Review: %1</source>
        <translation>Avaliação: %1</translation>
    </message>
    <message>
        <source>If the course does not help: %1</source>
        <translation>Se o ciclo não ajudar: %1</translation>
    </message>
    <message>
        <source>Written with Firstdew, which is not a medical device. Follow your machine&apos;s instructions and your clinician.</source>
        <translation>Feito com o Firstdew, que não é um dispositivo médico. Siga as instruções do seu aparelho e o seu profissional de saúde.</translation>
    </message>
    <message>
        <source>Armpit pads: %1.</source>
        <translation>Esponjas de axila: %1.</translation>
    </message>
    <message>
        <source>Mean charge a session: %1.</source>
        <translation>Carga média por sessão: %1.</translation>
    </message>
    <message>
        <source>%1 a minute on %2</source>
        <translation>%1 por minuto em %2</translation>
    </message>
    <message>
        <source>Dry spells are reckoned from the last session to the first clammy day, with days not seen and top-ups made while still dry taken as what they are (interval- and right-censored). Response by HDSS: two steps strong, one good (Gülmez &amp; Solak, J Clin Med 2026;15:640, where %1 of %2 responded).</source>
        <translation>Os períodos secos são contados da última sessão até o primeiro dia com a pele úmida; os dias sem anotação e as sessões de manutenção feitas com a pele ainda seca são tratados como o que são (censura intervalar e à direita). Resposta pela HDSS: dois graus, forte; um, boa (Gülmez &amp; Solak, J Clin Med 2026;15:640, em que %1 de %2 responderam).</translation>
    </message>
    <message numerus="yes">
        <source>median %n day(s) (%1: %2 to %3)</source>
        <translation>
            <numerusform>mediana %n dia (%1: %2 a %3)</numerusform>
            <numerusform>mediana %n dias (%1: %2 a %3)</numerusform>
        </translation>
    </message>
    <message>
        <source>Batteries: probably used up.</source>
        <translation>Pilhas: provavelmente gastas.</translation>
    </message>
    <message>
        <source>severity %1&#xa0;now, %2&#xa0;before</source>
        <translation>gravidade %1&#xa0;agora, %2&#xa0;antes</translation>
    </message>
</context>
<context>
    <name>People</name>
    <message>
        <source>People</source>
        <translation>Pessoas</translation>
    </message>
    <message>
        <source>Each person has a record of their own; nothing is mixed.</source>
        <translation>Cada pessoa tem o seu próprio histórico; nada se mistura.</translation>
    </message>
    <message>
        <source>Me</source>
        <translation>Eu</translation>
    </message>
    <message>
        <source>Adult beside the child: %1</source>
        <translation>Adulto ao lado da criança: %1</translation>
    </message>
    <message>
        <source>Shown now</source>
        <translation>Em exibição</translation>
    </message>
    <message>
        <source>Show</source>
        <translation>Mostrar</translation>
    </message>
    <message>
        <source>Your details</source>
        <translation>Seus dados</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Salvar</translation>
    </message>
    <message>
        <source>Add somebody</source>
        <translation>Adicionar uma pessoa</translation>
    </message>
    <message>
        <source>Add</source>
        <translation>Adicionar</translation>
    </message>
</context>
<context>
    <name>PersonForm</name>
    <message>
        <source>First name, or what you like to be called</source>
        <translation>Nome, ou o apelido que você prefere</translation>
    </message>
    <message>
        <source>Optional</source>
        <translation>Opcional</translation>
    </message>
    <message>
        <source>Birthday</source>
        <translation>Data de nascimento</translation>
    </message>
    <message>
        <source>It sets your current limit. Without it, the children&apos;s limits apply.</source>
        <translation>Define quais limites valem. Sem ela, valem os de crianças.</translation>
    </message>
    <message>
        <source>Height in centimetres</source>
        <translation>Altura em centímetros</translation>
    </message>
    <message>
        <source>Optional. With the weight it tells how large the treated skin is.</source>
        <translation>Opcional. Com o peso, indica o tamanho da pele tratada.</translation>
    </message>
    <message>
        <source>Write a number from %1 to %2.</source>
        <translation>Digite um número de %1 a %2.</translation>
    </message>
    <message>
        <source>Weight in kilograms</source>
        <translation>Peso em quilos</translation>
    </message>
    <message>
        <source>The adult beside the child</source>
        <translation>O adulto ao lado da criança</translation>
    </message>
    <message>
        <source>Children are treated only with medical advice and an adult beside them.</source>
        <translation>Crianças só são tratadas com orientação médica e um adulto ao lado.</translation>
    </message>
</context>
<context>
    <name>PickRow</name>
    <message>
        <source>Choose</source>
        <translation>Escolher</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
</context>
<context>
    <name>Plan</name>
    <message>
        <source>None yet</source>
        <translation>Ainda nenhuma</translation>
    </message>
    <message>
        <source>From %1, %2</source>
        <translation>Quem deu: %1, %2</translation>
    </message>
    <message>
        <source>Settings</source>
        <translation>Ajustes</translation>
    </message>
    <message>
        <source>Say where you treat and with which machine; your limits and your plan then stand here.</source>
        <translation>Diga onde você trata e com qual aparelho; então os seus limites e o seu plano aparecem aqui.</translation>
    </message>
    <message>
        <source>Next session: %1</source>
        <translation>Próxima sessão: %1</translation>
    </message>
    <message>
        <source>Tap a day to move its session.</source>
        <translation>Toque em um dia para mudar a sessão dele.</translation>
    </message>
    <message numerus="yes">
        <source>The course will end %n day(s) late.</source>
        <translation>
            <numerusform>O ciclo ultrapassa as quatro semanas em %n dia.</numerusform>
            <numerusform>O ciclo ultrapassa as quatro semanas em %n dias.</numerusform>
        </translation>
    </message>
    <message>
        <source>Choose the course</source>
        <translation>Escolher o ciclo</translation>
    </message>
    <message>
        <source>Course</source>
        <translation>Ciclo</translation>
    </message>
    <message>
        <source>Continue</source>
        <translation>Continuar</translation>
    </message>
    <message>
        <source>Pause</source>
        <translation>Pausar</translation>
    </message>
    <message>
        <source>Health questions</source>
        <translation>Perguntas de saúde</translation>
    </message>
    <message>
        <source>To be answered</source>
        <translation>A responder</translation>
    </message>
    <message>
        <source>Needs a clinician&apos;s approval</source>
        <translation>Algo impede</translation>
    </message>
    <message>
        <source>Answered</source>
        <translation>Respondidas</translation>
    </message>
    <message>
        <source>Days away</source>
        <translation>Dias fora</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 a %2</translation>
    </message>
    <message>
        <source>None</source>
        <translation>Nenhum</translation>
    </message>
    <message>
        <source>Taught by somebody</source>
        <translation>Sessão com orientação</translation>
    </message>
    <message>
        <source>Not marked</source>
        <translation>Não registrado</translation>
    </message>
    <message>
        <source>Practice</source>
        <translation>Treino</translation>
    </message>
    <message>
        <source>A whole session with the machine off</source>
        <translation>Uma sessão inteira com o aparelho desligado</translation>
    </message>
    <message>
        <source>Care sheet</source>
        <translation>Ficha de cuidados</translation>
    </message>
</context>
<context>
    <name>PracticeBanner</name>
    <message>
        <source>Practice: machine stays off</source>
        <translation>Treino: o aparelho fica desligado</translation>
    </message>
    <message>
        <source>Leave practice</source>
        <translation>Sair do treino</translation>
    </message>
</context>
<context>
    <name>Prompts</name>
    <message>
        <source>Check everything on the list. Machine off, current at zero.</source>
        <translation>Confira tudo da lista. Aparelho desligado, corrente em zero.</translation>
    </message>
    <message>
        <source>Switch the machine on. Is the meter at zero, and is it set to direct current? Then tap.</source>
        <translation>Ligue o aparelho. O medidor está em zero, e o aparelho em corrente contínua? Então toque na tela.</translation>
    </message>
    <message>
        <source>Switch the machine on. Is the meter at zero, and is the light for pulsed current on? Then tap.</source>
        <translation>Ligue o aparelho. O medidor está em zero, e a luz de corrente pulsada acesa? Então toque na tela.</translation>
    </message>
    <message>
        <source>Hands in, in fifteen seconds. Keep them still under the water.</source>
        <translation>Em quinze segundos, mãos na água. Deixe as mãos paradas debaixo da água.</translation>
    </message>
    <message>
        <source>Raise the current slowly. It may prickle. It must not hurt.</source>
        <translation>Aumente a corrente devagar. Pode formigar. Não pode doer.</translation>
    </message>
    <message>
        <source>Raise the current slowly with the remote. It may prickle. It must not hurt.</source>
        <translation>Aumente a corrente devagar com o controle remoto. Pode formigar. Não pode doer.</translation>
    </message>
    <message>
        <source>Hold still. Everything stays under water.</source>
        <translation>Não se mexa. Tudo fica debaixo da água.</translation>
    </message>
    <message>
        <source>Hold still. Both pads stay where they are.</source>
        <translation>Não se mexa. As duas esponjas ficam onde estão.</translation>
    </message>
    <message>
        <source>Lower the current to zero. Slowly.</source>
        <translation>Diminua a corrente até zero. Devagar.</translation>
    </message>
    <message>
        <source>Lower the current to zero with the remote. Slowly.</source>
        <translation>Diminua a corrente até zero com o controle remoto. Devagar.</translation>
    </message>
    <message>
        <source>Is the meter at zero? Only then take your hands out. Dry them, and tap.</source>
        <translation>O medidor está em zero? Só então tire as mãos da água. Seque as mãos e toque na tela.</translation>
    </message>
    <message>
        <source>Is the meter at zero? Only then take your hands out. Dry them, switch the machine off, and tap.</source>
        <translation>O medidor está em zero? Só então tire as mãos da água. Seque as mãos, desligue o aparelho e toque na tela.</translation>
    </message>
    <message>
        <source>Current at zero? Now swap the two leads. Cover small cuts again. Then tap.</source>
        <translation>Corrente em zero? Agora inverta os dois cabos. Cubra de novo os cortes pequenos. Depois toque na tela.</translation>
    </message>
    <message>
        <source>Current at zero? Now flip the polarity switch. Cover small cuts again. Then tap.</source>
        <translation>Corrente em zero? Agora vire a chave de polaridade. Cubra de novo os cortes pequenos. Depois toque na tela.</translation>
    </message>
    <message>
        <source>Current at zero? Soak the pads again, and swap the two leads. Then tap.</source>
        <translation>Corrente em zero? Encharque de novo as esponjas e inverta os dois cabos. Depois toque na tela.</translation>
    </message>
    <message>
        <source>Current at zero? Soak the pads again, and flip the polarity switch. Then tap.</source>
        <translation>Corrente em zero? Encharque de novo as esponjas e vire a chave de polaridade. Depois toque na tela.</translation>
    </message>
    <message>
        <source>Current at zero? Soak the pads again, and exchange them, right with left. Then tap.</source>
        <translation>Corrente em zero? Encharque de novo as esponjas e troque uma pela outra, a direita com a esquerda. Depois toque na tela.</translation>
    </message>
    <message>
        <source>Current at zero? Now change to the other side. Cover small cuts again. Then tap.</source>
        <translation>Corrente em zero? Agora mude para o outro lado. Cubra de novo os cortes pequenos. Depois toque na tela.</translation>
    </message>
    <message>
        <source>Machine off. Now take your hands or feet out, and dry your skin.</source>
        <translation>Desligue o aparelho. Agora tire as mãos ou os pés da água e seque a pele.</translation>
    </message>
    <message>
        <source>Machine off. Now take the pads off, and dry your skin.</source>
        <translation>Desligue o aparelho. Agora tire as esponjas e seque a pele.</translation>
    </message>
    <message>
        <source>Dry your skin and the kit.</source>
        <translation>Seque a pele e o material.</translation>
    </message>
    <message>
        <source>Look at the meter.</source>
        <translation>Olhe o medidor.</translation>
    </message>
    <message>
        <source>Half way.</source>
        <translation>Metade do tempo.</translation>
    </message>
    <message>
        <source>One minute left.</source>
        <translation>Falta um minuto.</translation>
    </message>
    <message>
        <source>Ten seconds.</source>
        <translation>Dez segundos.</translation>
    </message>
    <message>
        <source>Done.</source>
        <translation>Terminou.</translation>
    </message>
    <message>
        <source>Too high! Lower the current now.</source>
        <translation>Alta demais! Diminua a corrente agora.</translation>
    </message>
    <message>
        <source>Machine off. Now.</source>
        <translation>Desligue o aparelho. Agora.</translation>
    </message>
    <message>
        <source>Check the list. Then start again from the beginning.</source>
        <translation>Confira a lista. Depois comece de novo, do início.</translation>
    </message>
    <message>
        <source>Lower it a little, until it is comfortable.</source>
        <translation>Diminua um pouco, até ficar confortável.</translation>
    </message>
    <message>
        <source>I was away. What did the machine do? If you do not know, machine off. Then answer on the screen.</source>
        <translation>Fiquei fora por um tempo. O que o aparelho fez? Se você não sabe, desligue o aparelho. Depois responda na tela.</translation>
    </message>
    <message>
        <source>It is enough for today.</source>
        <translation>Por hoje chega.</translation>
    </message>
    <message>
        <source>That was too long ago. This session is over. What you did is kept.</source>
        <translation>Passou tempo demais. Esta sessão terminou. O que você fez fica guardado.</translation>
    </message>
    <message>
        <source>Stopped. Current at zero, machine off. Then take your hands or feet out.</source>
        <translation>Interrompida. Corrente em zero, aparelho desligado. Depois tire as mãos ou os pés da água.</translation>
    </message>
    <message>
        <source>Stopped. Current at zero, machine off, then take the pads off.</source>
        <translation>Interrompida. Corrente em zero, aparelho desligado. Depois tire as esponjas.</translation>
    </message>
    <message>
        <source>Practice: the machine stays off. In a real session you switch it on now. Then tap.</source>
        <translation>Treino: o aparelho fica desligado. Em uma sessão de verdade, você liga o aparelho agora. Depois toque na tela.</translation>
    </message>
    <message>
        <source>Practice: no current. In a real session you turn it up slowly now.</source>
        <translation>Treino: sem corrente. Em uma sessão de verdade, agora você aumenta devagar.</translation>
    </message>
    <message>
        <source>Practice: no current. In a real session you turn it down to zero now.</source>
        <translation>Treino: sem corrente. Em uma sessão de verdade, agora você diminui até zero.</translation>
    </message>
    <message>
        <source>This is how loud I am. Can you hear me over the water?</source>
        <translation>Este é o volume da minha voz. Você me ouve com o barulho da água?</translation>
    </message>
</context>
<context>
    <name>RemindersPage</name>
    <message>
        <source>Reminders</source>
        <translation>Lembretes</translation>
    </message>
    <message>
        <source>On</source>
        <translation>Ligados</translation>
    </message>
    <message>
        <source>Off</source>
        <translation>Desligados</translation>
    </message>
    <message>
        <source>Daily check-in</source>
        <translation>Anotação do dia</translation>
    </message>
    <message>
        <source>Sessions</source>
        <translation>Sessões</translation>
    </message>
    <message>
        <source>Quiet from</source>
        <translation>Silêncio desde</translation>
    </message>
    <message>
        <source>Quiet until</source>
        <translation>Silêncio até</translation>
    </message>
    <message>
        <source>Remind of a back-up each month</source>
        <translation>Lembrar do backup todo mês</translation>
    </message>
    <message>
        <source>Yes</source>
        <translation>Sim</translation>
    </message>
    <message>
        <source>No</source>
        <translation>Não</translation>
    </message>
    <message>
        <source>How many sessions is one damp spell worth to you?</source>
        <translation>Quantas sessões vale, para você, evitar um período com suor?</translation>
    </message>
    <message>
        <source>More: top-ups come earlier and more often. Fewer: fewer sessions, more damp days. Usual: 2.</source>
        <translation>Mais: as sessões de manutenção vêm mais cedo e com mais frequência. Menos: menos sessões, mais dias com suor. Usual: 2.</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Salvar</translation>
    </message>
</context>
<context>
    <name>SetUpFirst</name>
    <message>
        <source>Set up</source>
        <translation>Configurar</translation>
    </message>
</context>
<context>
    <name>SetUpGoOn</name>
    <message>
        <source>Not everything is set up yet</source>
        <translation>A configuração ainda não está completa</translation>
    </message>
    <message>
        <source>Before a session, Firstdew has to know your machine and your answers to the health questions.</source>
        <translation>Antes de uma sessão, o Firstdew precisa conhecer o seu aparelho e as suas respostas às perguntas de saúde.</translation>
    </message>
    <message>
        <source>Continue the set-up</source>
        <translation>Continuar a configuração</translation>
    </message>
</context>
<context>
    <name>Settings</name>
    <message>
        <source>Settings</source>
        <translation>Ajustes</translation>
    </message>
    <message>
        <source>Me</source>
        <translation>Eu</translation>
    </message>
    <message>
        <source>Voice only</source>
        <translation>Só voz</translation>
    </message>
    <message>
        <source>Tones only</source>
        <translation>Só bipes</translation>
    </message>
    <message>
        <source>Vibration only</source>
        <translation>Só vibração</translation>
    </message>
    <message>
        <source>Voice and tones</source>
        <translation>Voz e bipes</translation>
    </message>
    <message>
        <source>Machine and kit</source>
        <translation>Aparelho e material</translation>
    </message>
    <message>
        <source>Not set</source>
        <translation>Não informado</translation>
    </message>
    <message numerus="yes">
        <source>Batteries: about %n session(s) left</source>
        <translation>
            <numerusform>Pilhas: resta cerca de %n sessão</numerusform>
            <numerusform>Pilhas: restam cerca de %n sessões</numerusform>
        </translation>
    </message>
    <message>
        <source>Reminders</source>
        <translation>Lembretes</translation>
    </message>
    <message>
        <source>Check-in %1, quiet %2 to %3</source>
        <translation>Anotação às %1, silêncio das %2 às %3</translation>
    </message>
    <message>
        <source>Off</source>
        <translation>Desligados</translation>
    </message>
    <message>
        <source>People</source>
        <translation>Pessoas</translation>
    </message>
    <message>
        <source>Appearance and language</source>
        <translation>Aparência e idioma</translation>
    </message>
    <message>
        <source>Dark</source>
        <translation>Escuro</translation>
    </message>
    <message>
        <source>Light</source>
        <translation>Claro</translation>
    </message>
    <message>
        <source>Match phone</source>
        <translation>Como no celular</translation>
    </message>
    <message>
        <source>Move to another phone</source>
        <translation>Passar para outro celular</translation>
    </message>
    <message>
        <source>Take everything with you</source>
        <translation>Leve tudo com você</translation>
    </message>
    <message>
        <source>Back-up, export and delete</source>
        <translation>Backup, exportar e excluir</translation>
    </message>
    <message>
        <source>I teach others</source>
        <translation>Ensino outras pessoas</translation>
    </message>
    <message>
        <source>Caseload</source>
        <translation>Meus pacientes</translation>
    </message>
    <message>
        <source>Who needs a call, and care sheets for them</source>
        <translation>Quem precisa de uma ligação, e fichas de cuidados</translation>
    </message>
    <message>
        <source>About and cautions</source>
        <translation>Sobre o app e precauções</translation>
    </message>
    <message>
        <source>Version %1</source>
        <translation>Versão %1</translation>
    </message>
    <message>
        <source>Batteries: probably used up</source>
        <translation>Pilhas: provavelmente gastas</translation>
    </message>
    <message>
        <source>Ask for this phone&apos;s lock before showing the diary</source>
        <translation>Pedir o bloqueio deste telefone antes de mostrar o diário</translation>
    </message>
    <message>
        <source>Firstdew: switch the app lock on or off</source>
        <translation>Firstdew: ativar ou desativar o bloqueio do aplicativo</translation>
    </message>
    <message>
        <source>This phone could not ask for its lock. Nothing was changed.</source>
        <translation>Este telefone não conseguiu pedir seu bloqueio. Nada foi alterado.</translation>
    </message>
    <message>
        <source>When Firstdew starts, and when you come back after a minute. A session is never locked.</source>
        <translation>Quando o Firstdew inicia e quando você volta depois de um minuto. Uma sessão nunca é bloqueada.</translation>
    </message>
    <message>
        <source>This phone has no lock that Firstdew can ask for: your diary opens without it.</source>
        <translation>Este telefone não tem um bloqueio que o Firstdew possa pedir: seu diário abre sem ele.</translation>
    </message>
    <message>
        <source>For this, the phone needs a lock of its own that Firstdew can ask for.</source>
        <translation>Para isso, o telefone precisa de um bloqueio próprio que o Firstdew possa pedir.</translation>
    </message>
</context>
<context>
    <name>SettingsPage</name>
    <message>
        <source>Appearance and language</source>
        <translation>Aparência e idioma</translation>
    </message>
    <message>
        <source>Theme</source>
        <translation>Tema</translation>
    </message>
    <message>
        <source>Match phone</source>
        <translation>Como no celular</translation>
    </message>
    <message>
        <source>Light</source>
        <translation>Claro</translation>
    </message>
    <message>
        <source>Dark</source>
        <translation>Escuro</translation>
    </message>
    <message>
        <source>Text size</source>
        <translation>Tamanho do texto</translation>
    </message>
    <message>
        <source>Small</source>
        <translation>Pequeno</translation>
    </message>
    <message>
        <source>Normal</source>
        <translation>Normal</translation>
    </message>
    <message>
        <source>Large</source>
        <translation>Grande</translation>
    </message>
    <message>
        <source>Larger</source>
        <translation>Maior</translation>
    </message>
    <message>
        <source>Largest</source>
        <translation>Máximo</translation>
    </message>
    <message>
        <source>Language</source>
        <translation>Idioma</translation>
    </message>
</context>
<context>
    <name>Sheet</name>
    <message>
        <source>Close</source>
        <translation>Fechar</translation>
    </message>
</context>
<context>
    <name>SheetText</name>
    <message>
        <source>From</source>
        <translation>Quem deu</translation>
    </message>
    <message>
        <source>Given on</source>
        <translation>Entregue em</translation>
    </message>
    <message>
        <source>For</source>
        <translation>Para</translation>
    </message>
    <message>
        <source>Course</source>
        <translation>Ciclo</translation>
    </message>
    <message>
        <source>Session days</source>
        <translation>Dias de sessão</translation>
    </message>
    <message>
        <source>Current</source>
        <translation>Corrente</translation>
    </message>
    <message>
        <source>Limit, direct</source>
        <translation>Limite, contínua</translation>
    </message>
    <message>
        <source>Limit, pulsed</source>
        <translation>Limite, pulsada</translation>
    </message>
    <message>
        <source>Time to turn up</source>
        <translation>Tempo para aumentar</translation>
    </message>
    <message>
        <source>Time to turn down</source>
        <translation>Tempo para diminuir</translation>
    </message>
    <message>
        <source>Time to swap</source>
        <translation>Tempo para inverter</translation>
    </message>
    <message>
        <source>Review</source>
        <translation>Avaliação</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation>Notas</translation>
    </message>
    <message>
        <source>Armpit pads</source>
        <translation>Esponjas de axila</translation>
    </message>
    <message>
        <source>If the course does not help</source>
        <translation>Se o ciclo não ajudar</translation>
    </message>
    <message>
        <source>Level to begin with</source>
        <translation>Nível para começar</translation>
    </message>
    <message>
        <source>Whom to call</source>
        <translation>Para quem ligar</translation>
    </message>
    <message numerus="yes">
        <source>%n second(s)</source>
        <translation>
            <numerusform>%n segundo</numerusform>
            <numerusform>%n segundos</numerusform>
        </translation>
    </message>
    <message>
        <source>As usual: %1</source>
        <translation>Usual: %1</translation>
    </message>
    <message>
        <source>Left open</source>
        <translation>Em aberto</translation>
    </message>
    <message numerus="yes">
        <source>%1: %2 times %n minute(s)</source>
        <translation>
            <numerusform>%1: %2 vezes %n minuto</numerusform>
            <numerusform>%1: %2 vezes %n minutos</numerusform>
        </translation>
    </message>
    <message>
        <source>Too high: %1 is the usual limit. Lower it.</source>
        <translation>Alto demais: %1 é o limite usual. Diminua.</translation>
    </message>
    <message>
        <source>Type your name, on one short line.</source>
        <translation>Digite o seu nome, em uma linha curta.</translation>
    </message>
    <message>
        <source>Choose where to treat.</source>
        <translation>Escolha onde tratar.</translation>
    </message>
    <message>
        <source>Armpits need pulsed current. Choose that one.</source>
        <translation>As axilas precisam de corrente pulsada. Escolha essa.</translation>
    </message>
    <message>
        <source>Choose up to 60 days, from day 1.</source>
        <translation>Escolha até 60 dias, a partir do dia 1.</translation>
    </message>
    <message>
        <source>This lies before the day of the sheet. Choose a later day.</source>
        <translation>Fica antes do dia da ficha. Escolha um dia posterior.</translation>
    </message>
    <message>
        <source>Keep it to one short line.</source>
        <translation>Escreva só uma linha curta.</translation>
    </message>
    <message>
        <source>Too long for the code. Shorten it.</source>
        <translation>Longo demais para o código. Encurte.</translation>
    </message>
    <message>
        <source>This value cannot be used. Change it.</source>
        <translation>Este valor não pode ser usado. Mude.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1: the course that runs now goes on.</source>
        <translation>%1: o ciclo em andamento continua.</translation>
    </message>
    <message numerus="yes">
        <source>%1: a course of %n session(s) begins today.</source>
        <translation>
            <numerusform>%1: um ciclo de %n sessão começa hoje.</numerusform>
            <numerusform>%1: um ciclo de %n sessões começa hoje.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 It takes the place of the one that runs now.</source>
        <translation>%1 Ele substitui o que está em andamento.</translation>
    </message>
    <message>
        <source>not set</source>
        <translation>não definido</translation>
    </message>
    <message>
        <source>%1: %2 (now %3)</source>
        <translation>%1: %2 (agora %3)</translation>
    </message>
    <message>
        <source>%1 each</source>
        <translation>%1 cada</translation>
    </message>
</context>
<context>
    <name>SkinPage</name>
    <message>
        <source>Skin after a session</source>
        <translation>A pele depois de uma sessão</translation>
    </message>
    <message>
        <source>Burns or blisters: no session there until a clinician has looked at it.</source>
        <translation>Queimaduras ou bolhas: nenhuma sessão nessa área até um profissional de saúde examinar.</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>Optional</source>
        <translation>Opcional</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Salvar</translation>
    </message>
</context>
<context>
    <name>SoundPage</name>
    <message>
        <source>Voice and tones</source>
        <translation>Voz e bipes</translation>
    </message>
    <message>
        <source>Voice only</source>
        <translation>Só voz</translation>
    </message>
    <message>
        <source>Tones only</source>
        <translation>Só bipes</translation>
    </message>
    <message>
        <source>During a session each step, the minutes and the end are said aloud, so that nobody has to look at the phone.</source>
        <translation>Durante a sessão, cada passo, os minutos e o fim são falados em voz alta, para ninguém precisar olhar o celular.</translation>
    </message>
    <message>
        <source>A soft sound runs through the session. If it stops, turn the current to zero and switch the machine off.</source>
        <translation>Um som suave toca durante toda a sessão. Se ele parar, diminua a corrente até zero e desligue o aparelho.</translation>
    </message>
    <message>
        <source>What is heard</source>
        <translation>O que se ouve</translation>
    </message>
    <message>
        <source>Vibration only</source>
        <translation>Só vibração</translation>
    </message>
    <message>
        <source>With both hands under water nobody feels the phone: there, voice and tones are heard all the same.</source>
        <translation>Com as duas mãos na água, ninguém sente o celular: nesse caso, a voz e os bipes são ouvidos do mesmo jeito.</translation>
    </message>
    <message>
        <source>Each step also felt as a vibration</source>
        <translation>Cada passo também com vibração</translation>
    </message>
    <message>
        <source>Yes</source>
        <translation>Sim</translation>
    </message>
    <message>
        <source>No</source>
        <translation>Não</translation>
    </message>
    <message>
        <source>A pedal or a switch stops a session, like a key</source>
        <translation>Um pedal ou um botão externo interrompe a sessão, como uma tecla</translation>
    </message>
    <message>
        <source>A reading above the limit sounds the alarm whatever is chosen here. The phone cannot see the current, only what is entered.</source>
        <translation>Uma leitura acima do limite dispara o alarme, seja qual for a escolha aqui. O celular não enxerga a corrente, só o que é digitado.</translation>
    </message>
    <message>
        <source>Which voice</source>
        <translation>Qual voz</translation>
    </message>
    <message>
        <source>Recorded voice</source>
        <translation>Voz gravada</translation>
    </message>
    <message>
        <source>Voice of this device</source>
        <translation>Voz deste celular</translation>
    </message>
    <message>
        <source>You can choose the voice of this phone once it offers one for your language.</source>
        <translation>A voz deste celular poderá ser escolhida quando o celular oferecer uma para o seu idioma.</translation>
    </message>
    <message>
        <source>The recorded voice speaks English. The voice of this device speaks your language.</source>
        <translation>A voz gravada fala inglês. A voz deste celular fala o seu idioma.</translation>
    </message>
    <message>
        <source>The voice speaks English so far.</source>
        <translation>Por enquanto, a voz fala inglês.</translation>
    </message>
    <message>
        <source>Test the volume</source>
        <translation>Testar o volume</translation>
    </message>
    <message>
        <source>The recorded voice does not speak your language. The voice of this device speaks in its place: test the volume, and hear whether you understand it.</source>
        <translation>A voz gravada não fala o seu idioma. A voz deste celular fala no lugar dela: teste o volume e ouça se você a entende.</translation>
    </message>
    <message>
        <source>You can follow a session by the tones and on the screen. Both hands under water stays closed until a voice is known to speak your language.</source>
        <translation>Você pode acompanhar uma sessão pelos bipes e na tela. “As duas mãos na água” fica fechado até que se conheça uma voz que fale o seu idioma.</translation>
    </message>
</context>
<context>
    <name>Stepper</name>
    <message>
        <source>%1: less</source>
        <translation>%1: menos</translation>
    </message>
    <message>
        <source>%1: more</source>
        <translation>%1: mais</translation>
    </message>
</context>
<context>
    <name>StirredUp</name>
    <message>
        <source>Anything that might explain it?</source>
        <translation>Houve algo que possa explicar isso?</translation>
    </message>
</context>
<context>
    <name>StoreTrouble</name>
    <message>
        <source>Your record could not be opened</source>
        <translation>Não foi possível abrir o seu histórico</translation>
    </message>
    <message>
        <source>The file with your record is damaged.</source>
        <translation>O arquivo com o seu histórico está danificado.</translation>
    </message>
    <message>
        <source>A newer Firstdew wrote this record.</source>
        <translation>Um Firstdew mais novo gravou este histórico.</translation>
    </message>
    <message>
        <source>Another program is using your record.</source>
        <translation>Outro programa está usando o seu histórico.</translation>
    </message>
    <message>
        <source>Your record cannot be written to.</source>
        <translation>Não é possível gravar no seu histórico.</translation>
    </message>
    <message>
        <source>The file in its place is not a Firstdew record, or is damaged at its very beginning.</source>
        <translation>O arquivo que está no lugar não é um histórico do Firstdew, ou está danificado logo no começo.</translation>
    </message>
    <message>
        <source>The file with your record is not there or cannot be read.</source>
        <translation>O arquivo com o seu histórico não está lá ou não pode ser lido.</translation>
    </message>
    <message>
        <source>Firstdew can put what is still readable, and what a copy beside it holds, into a new file. The damaged file is kept.</source>
        <translation>O Firstdew pode pôr em um arquivo novo o que ainda dá para ler e o que há em uma cópia ao lado dele. O arquivo danificado fica guardado.</translation>
    </message>
    <message>
        <source>Update Firstdew, then open it again.</source>
        <translation>Atualize o Firstdew e abra de novo.</translation>
    </message>
    <message>
        <source>Close that program, then try again.</source>
        <translation>Feche esse programa e tente de novo.</translation>
    </message>
    <message>
        <source>Let yourself write to the file and its folder, then try again.</source>
        <translation>Dê permissão à sua conta para gravar no arquivo e na pasta dele, e tente de novo.</translation>
    </message>
    <message>
        <source>Move that file elsewhere, put your record in its place, then try again.</source>
        <translation>Mova esse arquivo para outro lugar, ponha o seu histórico no lugar dele e tente de novo.</translation>
    </message>
    <message>
        <source>Look whether the folder is there and belongs to you, then try again.</source>
        <translation>Veja se a pasta está lá e se é sua, e tente de novo.</translation>
    </message>
    <message>
        <source>Try again in a moment.</source>
        <translation>Tente de novo daqui a pouco.</translation>
    </message>
    <message>
        <source>Nothing was changed in it.</source>
        <translation>Nada foi mudado nele.</translation>
    </message>
    <message>
        <source>Leave the machine off until your record is open: your limits and answers stand in it.</source>
        <translation>Deixe o aparelho desligado até o seu histórico abrir: nele estão os seus limites e as suas respostas.</translation>
    </message>
    <message>
        <source>Repair the record</source>
        <translation>Reparar o histórico</translation>
    </message>
    <message>
        <source>Try again</source>
        <translation>Tentar de novo</translation>
    </message>
    <message>
        <source>Restore a back-up</source>
        <translation>Restaurar um backup</translation>
    </message>
    <message>
        <source>It takes the place of the damaged file, which is kept.</source>
        <translation>Ele toma o lugar do arquivo danificado, que fica guardado.</translation>
    </message>
    <message>
        <source>Passphrase of the back-up</source>
        <translation>Senha do backup</translation>
    </message>
    <message>
        <source>Restore</source>
        <translation>Restaurar</translation>
    </message>
</context>
<context>
    <name>SummaryPage</name>
    <message>
        <source>Summary for your prescriber</source>
        <translation>Resumo para o seu médico</translation>
    </message>
    <message>
        <source>A page that says how it goes and what you ask, and a second one with every session. Nothing leaves the phone before you choose where it goes.</source>
        <translation>Uma página que diz como vai o tratamento e o que você pergunta, e outra com todas as sessões. Nada sai do celular antes de você escolher para onde vai.</translation>
    </message>
    <message>
        <source>How far back</source>
        <translation>Período</translation>
    </message>
    <message>
        <source>A month</source>
        <translation>Um mês</translation>
    </message>
    <message>
        <source>Three months</source>
        <translation>Três meses</translation>
    </message>
    <message>
        <source>Half a year</source>
        <translation>Seis meses</translation>
    </message>
    <message>
        <source>A year</source>
        <translation>Um ano</translation>
    </message>
    <message>
        <source>Share the summary</source>
        <translation>Compartilhar o resumo</translation>
    </message>
    <message>
        <source>Save it as a file</source>
        <translation>Salvar em arquivo</translation>
    </message>
    <message>
        <source>Look at it</source>
        <translation>Ver</translation>
    </message>
    <message>
        <source>Hide the page</source>
        <translation>Ocultar a página</translation>
    </message>
    <message>
        <source>Show the page here</source>
        <translation>Mostrar a página aqui</translation>
    </message>
    <message>
        <source>The first page as it will be printed</source>
        <translation>A primeira página como será impressa</translation>
    </message>
    <message>
        <source>Questions for the prescriber</source>
        <translation>Perguntas para o seu médico</translation>
    </message>
    <message>
        <source>Take back: %1</source>
        <translation>Retirar: %1</translation>
    </message>
    <message>
        <source>Your questions appear near the top of the page.</source>
        <translation>O que você quer perguntar aparece no alto da página.</translation>
    </message>
    <message>
        <source>Your question</source>
        <translation>A sua pergunta</translation>
    </message>
    <message>
        <source>Put it on the page</source>
        <translation>Pôr na página</translation>
    </message>
</context>
<context>
    <name>TallyLines</name>
    <message numerus="yes">
        <source>%n person(s)</source>
        <translation>
            <numerusform>%n pessoa</numerusform>
            <numerusform>%n pessoas</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n check-in(s)</source>
        <translation>
            <numerusform>%n anotação do dia</numerusform>
            <numerusform>%n anotações do dia</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n session(s)</source>
        <translation>
            <numerusform>%n sessão</numerusform>
            <numerusform>%n sessões</numerusform>
        </translation>
    </message>
    <message>
        <source>Last entry: %1</source>
        <translation>Último registro: %1</translation>
    </message>
</context>
<context>
    <name>TaughtPage</name>
    <message>
        <source>A taught session</source>
        <translation>Uma sessão com orientação</translation>
    </message>
    <message>
        <source>Did somebody who knows the treatment watch a session? Mark together what they saw. It goes onto the summary.</source>
        <translation>Alguém que conhece o tratamento assistiu a uma sessão? Marquem juntos o que a pessoa viu. Isso vai para o resumo.</translation>
    </message>
    <message>
        <source>Where</source>
        <translation>Onde</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Quando</translation>
    </message>
    <message>
        <source>Who watched</source>
        <translation>Quem assistiu</translation>
    </message>
    <message>
        <source>A name or a role, for example: the nurse</source>
        <translation>Um nome ou uma função, por exemplo: enfermagem</translation>
    </message>
    <message>
        <source>What they saw</source>
        <translation>O que a pessoa viu</translation>
    </message>
    <message>
        <source>Current</source>
        <translation>Corrente</translation>
    </message>
    <message>
        <source>Level agreed to begin with at home</source>
        <translation>Nível combinado para começar em casa</translation>
    </message>
    <message>
        <source>None agreed</source>
        <translation>Nenhum combinado</translation>
    </message>
    <message>
        <source>%1, limit %2</source>
        <translation>%1, limite %2</translation>
    </message>
    <message>
        <source>Remove %1</source>
        <translation>Remover %1</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Salvar</translation>
    </message>
</context>
<context>
    <name>TaughtText</name>
    <message>
        <source>Checked the skin and took off jewellery</source>
        <translation>Examinou a pele e tirou as joias</translation>
    </message>
    <message>
        <source>Soaked the pads and fitted them tight</source>
        <translation>Encharcou as esponjas e ajustou bem</translation>
    </message>
    <message>
        <source>Set out trays, plates and water</source>
        <translation>Arrumou as bandejas, as placas e a água</translation>
    </message>
    <message>
        <source>Turned up slowly and said when it was enough</source>
        <translation>Aumentou devagar e disse quando era suficiente</translation>
    </message>
    <message>
        <source>Swapped at zero</source>
        <translation>Inverteu a polaridade em zero</translation>
    </message>
    <message>
        <source>Knows what to do when a pad comes off</source>
        <translation>Sabe o que fazer quando uma esponja se solta</translation>
    </message>
    <message>
        <source>Knows what to do when a hand or foot comes out of the water</source>
        <translation>Sabe o que fazer quando uma mão ou um pé sai da água</translation>
    </message>
    <message>
        <source>Knows when to stop and whom to call</source>
        <translation>Sabe quando parar e para quem ligar</translation>
    </message>
    <message>
        <source>%1, %2, with %3</source>
        <comment>taught: site, day, who watched</comment>
        <translation>%1, %2, com %3</translation>
    </message>
    <message>
        <source>%1. %2: %3 agreed</source>
        <comment>taught: line, kind of current, milliamperes</comment>
        <translation>%1. %2: %3 combinado</translation>
    </message>
</context>
<context>
    <name>Technique</name>
    <message>
        <source>Was the current as high as is comfortable, and never above your limit? A weak current does little.</source>
        <translation>A corrente estava tão alta quanto é confortável, e nunca acima do seu limite? Uma corrente fraca faz pouco.</translation>
    </message>
    <message>
        <source>Was the polarity swapped half-way, each time?</source>
        <translation>A polaridade foi invertida na metade, todas as vezes?</translation>
    </message>
    <message>
        <source>Was the skin free of cream? Cream keeps the current off. Petroleum jelly goes on cuts only.</source>
        <translation>A pele estava sem creme? O creme barra a corrente. A vaselina vai só nos cortes.</translation>
    </message>
    <message>
        <source>Was everything under water, flat on the grid and without pressing?</source>
        <translation>Estava tudo debaixo da água, apoiado na grade e sem apertar?</translation>
    </message>
    <message>
        <source>With the machine off: is each lead in fully? Are the pads soaked through and tight?</source>
        <translation>Com o aparelho desligado: cada cabo está bem encaixado? As esponjas estão encharcadas e bem ajustadas?</translation>
    </message>
    <message>
        <source>With the machine off: is each lead in fully? Does each plate lie under its grid?</source>
        <translation>Com o aparelho desligado: cada cabo está bem encaixado? Cada placa está debaixo da sua grade?</translation>
    </message>
    <message>
        <source>Are the batteries fresh? Four alkaline cells last about three sessions.</source>
        <translation>As pilhas são novas? Quatro pilhas alcalinas duram cerca de três sessões.</translation>
    </message>
    <message>
        <source>Is your water very soft? It conducts badly. Ask your nurse or prescriber what to do, and add nothing by yourself, not even salt.</source>
        <translation>A sua água é muito mole, com poucos minerais? Ela conduz mal. Pergunte ao médico que prescreveu ou à enfermagem o que fazer, e não acrescente nada por conta própria, nem sal.</translation>
    </message>
</context>
<context>
    <name>TechniquePage</name>
    <message>
        <source>Check how you do it</source>
        <translation>Conferir como você faz</translation>
    </message>
    <message>
        <source>Go through this before your next session. One small thing is often the reason why it does not help, or why the current will not rise.</source>
        <translation>Confira isto antes da próxima sessão. Muitas vezes um detalhe é o motivo de o tratamento não ajudar ou de a corrente não subir.</translation>
    </message>
</context>
<context>
    <name>TimePick</name>
    <message>
        <source>%1, chosen</source>
        <translation>%1, horário escolhido</translation>
    </message>
</context>
<context>
    <name>TodayHeader</name>
    <message>
        <source>Summary for your prescriber</source>
        <translation>Resumo para o seu médico</translation>
    </message>
    <message>
        <source>Change person, now %1</source>
        <translation>Trocar de pessoa, agora %1</translation>
    </message>
</context>
<context>
    <name>TravelPage</name>
    <message>
        <source>Taking the kit along</source>
        <translation>Levar o material na viagem</translation>
    </message>
    <message>
        <source>Before you leave</source>
        <translation>Antes de sair</translation>
    </message>
    <message>
        <source>Dry the kit completely before you pack it.</source>
        <translation>Seque completamente o material antes de guardar.</translation>
    </message>
    <message>
        <source>Take the batteries out, and pack new ones.</source>
        <translation>Tire as pilhas e leve pilhas novas.</translation>
    </message>
    <message>
        <source>Pack the machine&apos;s instructions with it, for whoever asks at a border.</source>
        <translation>Leve junto as instruções do aparelho, para mostrar se alguém perguntar em uma fronteira.</translation>
    </message>
    <message>
        <source>Where you stay</source>
        <translation>Onde você vai ficar</translation>
    </message>
    <message>
        <source>Set up as at home: dry hands, leads and machine away from the water, nothing of metal under the trays.</source>
        <translation>Prepare tudo como em casa: mãos secas, cabos e aparelho longe da água, nada de metal debaixo das bandejas.</translation>
    </message>
    <message>
        <source>Water differs from place to place. Turn up even more slowly than at home, and go by the meter.</source>
        <translation>A água muda de um lugar para outro. Aumente ainda mais devagar do que em casa e guie-se pelo medidor.</translation>
    </message>
    <message>
        <source>Very soft water conducts badly. Ask your nurse or prescriber what to do, and add nothing by yourself, not even salt.</source>
        <translation>Água muito mole, com poucos minerais, conduz mal. Pergunte ao médico que prescreveu ou à enfermagem o que fazer, e não acrescente nada por conta própria, nem sal.</translation>
    </message>
    <message>
        <source>The current will not rise</source>
        <translation>A corrente não sobe</translation>
    </message>
</context>
<context>
    <name>TroubleSheet</name>
    <message>
        <source>That could not be saved</source>
        <translation>Não foi possível salvar</translation>
    </message>
    <message>
        <source>What was recorded before is safe. Make room on the phone or restart the app, then try again.</source>
        <translation>O que foi registrado antes está seguro. Libere espaço no celular ou reinicie o app e tente de novo.</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Fechar</translation>
    </message>
</context>
<context>
    <name>UnguardedSheet</name>
    <message>
        <source>The app lock does not work here</source>
        <translation>O bloqueio do aplicativo não funciona aqui</translation>
    </message>
    <message>
        <source>It is switched on, but this phone has no lock that Firstdew can ask for. So your diary opened without it.</source>
        <translation>Ele está ativado, mas este telefone não tem um bloqueio que o Firstdew possa pedir. Por isso seu diário abriu sem ele.</translation>
    </message>
    <message>
        <source>Set a screen lock in the phone&apos;s own settings, or switch the app lock off under Settings.</source>
        <translation>Defina um bloqueio de tela nas configurações do telefone ou desative o bloqueio do aplicativo em Ajustes.</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Fechar</translation>
    </message>
</context>
<context>
    <name>WeeksBars</name>
    <message>
        <source>Damp days a week</source>
        <translation>Dias com suor por semana</translation>
    </message>
    <message>
        <source>Dampness over time, %1</source>
        <translation>Suor ao longo do tempo, %1</translation>
    </message>
    <message>
        <source>A week with three check-ins or more draws a bar here.</source>
        <translation>Uma semana com três anotações ou mais desenha uma barra aqui.</translation>
    </message>
    <message>
        <source>Dark: wet or dripping days. Light: clammy days. Marks below show your sessions.</source>
        <translation>Escuro: dias de pele molhada ou pingando. Claro: dias de pele úmida. As marcas embaixo mostram as suas sessões.</translation>
    </message>
    <message>
        <source>Dark: wet or dripping days. Light: clammy days.</source>
        <translation>Escuro: dias de pele molhada ou pingando. Claro: dias de pele úmida.</translation>
    </message>
</context>
<context>
    <name>WeighPage</name>
    <message>
        <source>Weighing</source>
        <translation>Pesagem</translation>
    </message>
    <message>
        <source>Weigh a paper, hold it to the skin for five minutes, weigh it again. It takes a scale that shows milligrams.</source>
        <translation>Pese um papel, segure o papel contra a pele por cinco minutos e pese de novo. É preciso uma balança que mostre miligramas.</translation>
    </message>
    <message>
        <source>Before, in milligrams</source>
        <translation>Antes, em miligramas</translation>
    </message>
    <message>
        <source>After, in milligrams</source>
        <translation>Depois, em miligramas</translation>
    </message>
    <message>
        <source>It cannot weigh less afterwards; weigh again.</source>
        <translation>Depois não pode pesar menos; pese de novo.</translation>
    </message>
    <message>
        <source>Minutes</source>
        <translation>Minutos</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Salvar</translation>
    </message>
    <message>
        <source>%1 a minute</source>
        <translation>%1 por minuto</translation>
    </message>
</context>
<context>
    <name>Welcome</name>
    <message>
        <source>Welcome to Firstdew</source>
        <translation>Boas-vindas ao Firstdew</translation>
    </message>
    <message>
        <source>Firstdew leads you through treating sweating hands, feet or armpits with tap water and a small current. It tells you when the next session is due.</source>
        <translation>O Firstdew guia você no tratamento do suor nas mãos, nos pés ou nas axilas com água da torneira e uma corrente fraca. Ele avisa quando é a próxima sessão.</translation>
    </message>
    <message>
        <source>Move from another phone</source>
        <translation>Trazer de outro celular</translation>
    </message>
</context>
<context>
    <name>WhyPage</name>
    <message>
        <source>Why?</source>
        <translation>Por quê?</translation>
    </message>
    <message>
        <source>No outlook yet. It begins with a course that is done and about two weeks of check-ins.</source>
        <translation>Ainda não há previsão. Ela começa com um ciclo concluído e cerca de duas semanas de anotações.</translation>
    </message>
    <message>
        <source>The next days</source>
        <translation>Os próximos dias</translation>
    </message>
    <message>
        <source>Of twenty such days, so many would be damp by then if no session comes first.</source>
        <translation>De cada vinte dias assim, este seria o número de dias com suor até lá, sem uma sessão antes.</translation>
    </message>
    <message>
        <source>How the forecasts have done</source>
        <translation>Quanto as previsões acertaram</translation>
    </message>
    <message>
        <source>Less</source>
        <translation>Menos</translation>
    </message>
    <message>
        <source>More</source>
        <translation>Mais</translation>
    </message>
    <message>
        <source>How long your dry spells last</source>
        <translation>Quanto duram os seus períodos secos</translation>
    </message>
    <message>
        <source>Share of spells still dry</source>
        <translation>Proporção de períodos ainda secos</translation>
    </message>
    <message>
        <source>The curve shows what share of your dry spells lasts longer than the days below it. The inner band holds the middle half of them, the outer one four in five. Bars: your latest spells; hollow where the change fell between two check-ins, with an arrow where a session came while still dry or the spell goes on. Faint bars: under another treatment.</source>
        <translation>A curva mostra que proporção dos períodos secos dura mais do que os dias indicados embaixo. A faixa de dentro contém a metade central deles; a de fora, quatro em cada cinco. Barras: os seus últimos períodos; vazadas onde a mudança ficou entre duas anotações, com seta onde veio uma sessão com a pele ainda seca ou o período continua. Barras claras: com outro tratamento.</translation>
    </message>
    <message numerus="yes">
        <source>Based on %n dry spell(s) in your diary.</source>
        <translation>
            <numerusform>Calculado com %n período seco do seu diário.</numerusform>
            <numerusform>Calculado com %n períodos secos do seu diário.</numerusform>
        </translation>
    </message>
    <message>
        <source>Still going on, or topped up while dry: %1.</source>
        <translation>Ainda em curso, ou com sessão de manutenção feita na pele seca: %1.</translation>
    </message>
    <message>
        <source>Left out, under another treatment: %1.</source>
        <translation>Não entram, por causa de outro tratamento: %1.</translation>
    </message>
    <message>
        <source>One damp spell counts as %1 sessions. So a top-up is due %2, or earlier without check-ins.</source>
        <translation>Um período com suor conta como %1 sessões. Por isso, a data da sessão de manutenção é %2, ou antes se faltarem anotações.</translation>
    </message>
    <message>
        <source>This is an estimate from your own notes, not a diagnosis. Your prescriber&apos;s word counts.</source>
        <translation>É uma estimativa a partir das suas próprias anotações, não um diagnóstico. Vale a palavra do médico que prescreveu.</translation>
    </message>
    <message>
        <source>Your dry spells are getting shorter</source>
        <translation>Seus períodos secos estão ficando mais curtos</translation>
    </message>
</context>
<context>
    <name>Words</name>
    <message>
        <source>Saved.</source>
        <translation>Salvo.</translation>
    </message>
    <message>
        <source>Taken back.</source>
        <translation>Desfeito.</translation>
    </message>
    <message>
        <source>The alarm is over.</source>
        <translation>O alarme passou.</translation>
    </message>
    <message>
        <source>First time here: begin low, and go by what is comfortable.</source>
        <translation>Primeira vez aqui: comece com pouca corrente e guie-se pelo que é confortável.</translation>
    </message>
    <message>
        <source>Begin with the level you agreed on when you were taught.</source>
        <translation>Comece com o nível combinado quando você aprendeu.</translation>
    </message>
    <message>
        <source>%1 was comfortable last time.</source>
        <translation>%1 foi confortável da última vez.</translation>
    </message>
    <message>
        <source>%1 was unpleasant last time, so less.</source>
        <translation>%1 foi desagradável da última vez, então menos.</translation>
    </message>
    <message>
        <source>This is the limit.</source>
        <translation>Este é o limite.</translation>
    </message>
    <message>
        <source>The last session was not finished, so the same level again.</source>
        <translation>A última sessão não terminou, então o mesmo nível de novo.</translation>
    </message>
    <message>
        <source>Pulsed current is felt less; try it, if your machine has it.</source>
        <translation>A corrente pulsada se sente menos; experimente, se o seu aparelho tiver.</translation>
    </message>
    <message>
        <source>The skin was irritated after %1, so clearly less.</source>
        <translation>A pele ficou irritada depois de %1, então bem menos.</translation>
    </message>
    <message>
        <source>It has been a while since your last session here, so start lower than %1.</source>
        <translation>Faz um tempo desde a sua última sessão aqui, então comece abaixo de %1.</translation>
    </message>
    <message>
        <source>The same level as last time, until it was comfortable.</source>
        <translation>O mesmo nível da última vez, até que ele seja confortável.</translation>
    </message>
    <message>
        <source>Direct current may work better now; ask the adult or nurse who helps.</source>
        <translation>A corrente contínua pode funcionar melhor agora; pergunte à pessoa adulta ou ao profissional de enfermagem que ajuda.</translation>
    </message>
    <message>
        <source>Switch flipped</source>
        <translation>Virei a chave</translation>
    </message>
    <message>
        <source>Pads exchanged</source>
        <translation>Troquei as esponjas</translation>
    </message>
    <message>
        <source>Leads swapped</source>
        <translation>Inverti os cabos</translation>
    </message>
    <message>
        <source>%1 min</source>
        <translation>%1&#xa0;min</translation>
    </message>
    <message>
        <source>Limit %1. %2.</source>
        <translation>Limite %1. %2.</translation>
    </message>
    <message>
        <source>Not possible. %1.</source>
        <translation>Não é possível. %1.</translation>
    </message>
    <message>
        <source>Watch your skin above %1.</source>
        <translation>Acima de %1, fique de olho na pele.</translation>
    </message>
    <message>
        <source>Enter height and weight, and the size of this skin counts as well.</source>
        <translation>Informe altura e peso, e o tamanho desta pele também conta.</translation>
    </message>
    <message>
        <source>Aim for about %1.</source>
        <translation>Alvo: cerca de %1.</translation>
    </message>
    <message>
        <source>Start at %1. Current can creep up, so leave %2 to spare at first.</source>
        <translation>Comece com %1. A corrente pode subir sozinha aos poucos, então deixe uma folga de %2 no começo.</translation>
    </message>
    <message>
        <source>Jewellery, watch and piercings off (not needed above the neck)</source>
        <translation>Sem joias, relógio ou piercings (acima do pescoço não é preciso tirar)</translation>
    </message>
    <message>
        <source>I&apos;ve checked my skin: no new redness, blister or burn</source>
        <translation>Olhei minha pele: nenhuma vermelhidão, bolha ou queimadura nova</translation>
    </message>
    <message>
        <source>Cuts under a thin layer of petroleum jelly, only on the broken skin</source>
        <translation>Cortes sob uma camada fina de vaselina, só na pele ferida</translation>
    </message>
    <message>
        <source>Hand trays on a table that is not metal</source>
        <translation>Bandejas das mãos em uma mesa que não seja de metal</translation>
    </message>
    <message>
        <source>Foot trays on the floor</source>
        <translation>Bandejas dos pés no chão</translation>
    </message>
    <message>
        <source>Each plate under its grid; skin never touches a plate</source>
        <translation>Cada placa debaixo da sua grade; a pele nunca encosta em uma placa</translation>
    </message>
    <message>
        <source>Pads soaked through, and tight</source>
        <translation>Esponjas encharcadas e bem ajustadas</translation>
    </message>
    <message>
        <source>Machine off, current at zero, leads in</source>
        <translation>Aparelho desligado, corrente em zero, cabos conectados</translation>
    </message>
    <message>
        <source>My helper stays beside me the whole session</source>
        <translation>Quem me ajuda fica ao meu lado a sessão inteira</translation>
    </message>
    <message>
        <source>Remote control within reach of my hands in the water, placed as its maker says</source>
        <translation>Controle remoto ao alcance das minhas mãos na água, colocado como diz o fabricante</translation>
    </message>
    <message>
        <source>Batteries in</source>
        <translation>Pilhas no lugar</translation>
    </message>
    <message>
        <source>Your first three sessions here go step by step.</source>
        <translation>As suas três primeiras sessões aqui vão passo a passo.</translation>
    </message>
    <message>
        <source>It has been four weeks or more. Let&apos;s go step by step.</source>
        <translation>Faz quatro semanas ou mais. Vamos passo a passo.</translation>
    </message>
    <message>
        <source>Last time something was not right. Let&apos;s go step by step.</source>
        <translation>Da última vez algo não deu certo. Vamos passo a passo.</translation>
    </message>
    <message>
        <source>Your machine has changed. Let&apos;s go step by step.</source>
        <translation>O seu aparelho mudou. Vamos passo a passo.</translation>
    </message>
    <message>
        <source>Your first session with both hands in goes step by step.</source>
        <translation>A sua primeira sessão com as duas mãos na água vai passo a passo.</translation>
    </message>
    <message>
        <source>Aim %1</source>
        <translation>Alvo %1</translation>
    </message>
    <message>
        <source>Nothing about my health has changed</source>
        <translation>Nada mudou na minha saúde</translation>
    </message>
    <message>
        <source>On, at zero, direct current: begin</source>
        <translation>Ligado, em zero, corrente contínua: começar</translation>
    </message>
    <message>
        <source>On, at zero, pulsed light on: begin</source>
        <translation>Ligado, em zero, luz de corrente pulsada acesa: começar</translation>
    </message>
    <message>
        <source>All checked, begin</source>
        <translation>Tudo conferido, começar</translation>
    </message>
    <message>
        <source>Meter at zero: hands in again</source>
        <translation>Medidor em zero: mãos na água de novo</translation>
    </message>
    <message>
        <source>On, at zero, direct current</source>
        <translation>Ligado, em zero, corrente contínua</translation>
    </message>
    <message>
        <source>On, at zero, pulsed light on</source>
        <translation>Ligado, em zero, luz de corrente pulsada acesa</translation>
    </message>
    <message>
        <source>Raised again</source>
        <translation>Já aumentei de novo</translation>
    </message>
    <message>
        <source>It is comfortable</source>
        <translation>Está confortável</translation>
    </message>
    <message>
        <source>At zero, hands out and dry</source>
        <translation>Em zero, mãos fora e secas</translation>
    </message>
    <message>
        <source>Current is at zero</source>
        <translation>A corrente está em zero</translation>
    </message>
    <message>
        <source>Changed side</source>
        <translation>Mudei de lado</translation>
    </message>
    <message>
        <source>A pad came off</source>
        <translation>Uma esponja se soltou</translation>
    </message>
    <message>
        <source>I took them out</source>
        <translation>Tirei da água</translation>
    </message>
    <message>
        <source>It kept running, in direct current</source>
        <translation>Ficou ligado, em corrente contínua</translation>
    </message>
    <message>
        <source>It kept running, pulsed light on</source>
        <translation>Ficou ligado, luz de corrente pulsada acesa</translation>
    </message>
    <message>
        <source>Any small cuts? Cover them with a thin layer of petroleum jelly again.</source>
        <translation>Algum corte pequeno? Cubra de novo com uma camada fina de vaselina.</translation>
    </message>
    <message>
        <source>It is enough for today. What you did is kept.</source>
        <translation>Por hoje chega. O que você fez fica guardado.</translation>
    </message>
    <message>
        <source>That was more than ten minutes ago, so this session is over. What you did is kept.</source>
        <translation>Isso foi há mais de dez minutos, então esta sessão terminou. O que você fez fica guardado.</translation>
    </message>
    <message>
        <source>Another version of Firstdew led this session. It cannot go on from there. What you did is kept. Machine off now.</source>
        <translation>Outra versão do Firstdew guiou esta sessão. Ela não pode continuar dali. O que você fez fica guardado. Desligue o aparelho agora.</translation>
    </message>
    <message>
        <source>Practice: the phase waits. In a real session you turn it up again when you are ready.</source>
        <translation>Treino: a fase espera. Em uma sessão de verdade, você aumenta de novo quando estiver tudo pronto.</translation>
    </message>
    <message>
        <source>The phase waits at zero. Raise again when you are ready.</source>
        <translation>A fase espera em zero. Aumente de novo quando estiver tudo pronto.</translation>
    </message>
    <message>
        <source>The session goes on. Machine off, current at zero; confirm the list again.</source>
        <translation>A sessão continua. Aparelho desligado, corrente em zero; confirme a lista de novo.</translation>
    </message>
    <message>
        <source>The session starts again from its beginning. Machine off, current at zero; confirm the list.</source>
        <translation>A sessão recomeça do início. Aparelho desligado, corrente em zero; confirme a lista.</translation>
    </message>
    <message>
        <source>Stays off</source>
        <translation>Fica desligado</translation>
    </message>
    <message>
        <source>No current</source>
        <translation>Sem corrente</translation>
    </message>
    <message>
        <source>Check</source>
        <translation>Confira</translation>
    </message>
    <message>
        <source>Switch on</source>
        <translation>Ligue</translation>
    </message>
    <message>
        <source>Hands in</source>
        <translation>Mãos na água</translation>
    </message>
    <message>
        <source>Raise</source>
        <translation>Aumente</translation>
    </message>
    <message>
        <source>Hold</source>
        <translation>Imóvel</translation>
    </message>
    <message>
        <source>Lower</source>
        <translation>Diminua</translation>
    </message>
    <message>
        <source>Hands out</source>
        <translation>Mãos fora</translation>
    </message>
    <message>
        <source>Swap</source>
        <translation>Inverta</translation>
    </message>
    <message>
        <source>Change side</source>
        <translation>Mude de lado</translation>
    </message>
    <message>
        <source>Lift out</source>
        <translation>Retire</translation>
    </message>
    <message numerus="yes">
        <source>In a real session this takes %n minute(s).</source>
        <translation>
            <numerusform>Em uma sessão de verdade, isto leva %n minuto.</numerusform>
            <numerusform>Em uma sessão de verdade, isto leva %n minutos.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>In a real session this takes %n second(s).</source>
        <translation>
            <numerusform>Em uma sessão de verdade, isto leva %n segundo.</numerusform>
            <numerusform>Em uma sessão de verdade, isto leva %n segundos.</numerusform>
        </translation>
    </message>
    <message>
        <source>You could not start a real session today: %1</source>
        <translation>Hoje você não poderia começar uma sessão de verdade: %1</translation>
    </message>
    <message>
        <source>Waiting at zero</source>
        <translation>Esperando em zero</translation>
    </message>
    <message>
        <source>Ends at %1</source>
        <translation>Termina às %1</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Parar</translation>
    </message>
    <message>
        <source>Turn down to %1</source>
        <translation>Diminua até %1</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Phase %1 of %2</source>
        <translation>Fase %1 de %2</translation>
    </message>
    <message>
        <source>none yet</source>
        <translation>ainda sem leitura</translation>
    </message>
    <message>
        <source>This skin had its session today. Let it rest. Next session: tomorrow at the earliest.</source>
        <translation>Esta pele já teve a sessão de hoje. Deixe a pele descansar. Próxima sessão: só a partir de amanhã.</translation>
    </message>
    <message>
        <source>The health questions are due. Leave the machine off until they are answered.</source>
        <translation>Está na hora das perguntas de saúde. Deixe o aparelho desligado até responder a elas.</translation>
    </message>
    <message>
        <source>A health question stands in the way. Leave the machine off until a clinician has approved treatment.</source>
        <translation>Uma pergunta de saúde impede a sessão. Deixe o aparelho desligado até um profissional de saúde liberar.</translation>
    </message>
    <message>
        <source>A blister or burn was noted there. Leave the machine off until a clinician has looked at it.</source>
        <translation>Foi anotada uma bolha ou queimadura nessa área. Deixe o aparelho desligado até um profissional de saúde examinar.</translation>
    </message>
    <message>
        <source>Enter the date of birth first. The limit of the current depends on it.</source>
        <translation>Informe antes a data de nascimento. O limite da corrente depende dela.</translation>
    </message>
    <message>
        <source>Your care sheet prescribes the other current here. Choose that one.</source>
        <translation>A sua ficha de cuidados prescreve a outra corrente aqui. Escolha essa.</translation>
    </message>
    <message>
        <source>Your machine has only direct current, which must not be used at the armpits.</source>
        <translation>O seu aparelho só tem corrente contínua, que não pode ser usada nas axilas.</translation>
    </message>
    <message>
        <source>Your machine does not have this current. Choose the one it has.</source>
        <translation>O seu aparelho não tem esta corrente. Escolha a que ele tem.</translation>
    </message>
    <message>
        <source>Armpits are treated with pulsed current only</source>
        <translation>Axilas são tratadas só com corrente pulsada</translation>
    </message>
    <message>
        <source>The meter is above the limit. Turn it down, then enter what it shows.</source>
        <translation>O medidor está acima do limite. Diminua a corrente e depois digite o que ele mostra.</translation>
    </message>
    <message>
        <source>No meter shows that. Read it again; if in doubt, lower the current.</source>
        <translation>Nenhum medidor mostra isso. Leia de novo; na dúvida, diminua a corrente.</translation>
    </message>
    <message>
        <source>With both hands in the water you need a remote control, and none is entered for your machine. Ask somebody to stay beside you.</source>
        <translation>Com as duas mãos na água você precisa de um controle remoto, e nenhum foi informado para o seu aparelho. Peça a alguém que fique ao seu lado.</translation>
    </message>
    <message>
        <source>With a screen reader on, a tap anywhere does not stop the session. Ask somebody to stay beside you, or use a pedal or a switch.</source>
        <translation>Com um leitor de tela ligado, um toque em qualquer lugar não interrompe a sessão. Peça a alguém que fique ao seu lado, ou use um pedal ou um botão externo.</translation>
    </message>
    <message>
        <source>A child is never alone with both hands in the water. Somebody stays beside the child.</source>
        <translation>Uma criança nunca fica sozinha com as duas mãos na água. Alguém fica ao lado da criança.</translation>
    </message>
    <message>
        <source>Choose who can tap the phone.</source>
        <translation>Escolha quem pode tocar no celular.</translation>
    </message>
    <message>
        <source>There is no code in this picture that can be read. Take it straight from the front, near and in good light.</source>
        <translation>Não há nesta foto nenhum código que possa ser lido. Fotografe bem de frente, de perto e com boa luz.</translation>
    </message>
    <message>
        <source>It is enough for today. Leave the machine off; the next session is for tomorrow at the earliest.</source>
        <translation>Por hoje chega. Deixe o aparelho desligado; a próxima sessão, só a partir de amanhã.</translation>
    </message>
    <message>
        <source>Machine off. The session starts again once you confirm the list.</source>
        <translation>Desligue o aparelho. A sessão recomeça quando você confirmar a lista.</translation>
    </message>
    <message>
        <source>Say who watched, and tick what was seen.</source>
        <translation>Diga quem assistiu e marque o que foi visto.</translation>
    </message>
    <message>
        <source>With both hands in the water you go by what you hear, and the voice cannot be made ready. Ask somebody to stay beside you.</source>
        <translation>Com as duas mãos na água você se guia pelo que ouve, e não foi possível preparar a voz. Peça a alguém que fique ao seu lado.</translation>
    </message>
    <message>
        <source>The current may still be flowing. Lower it to zero first.</source>
        <translation>Ainda pode estar passando corrente. Primeiro diminua até zero.</translation>
    </message>
    <message>
        <source>This is no back-up, or it was cut short or changed. Take another one.</source>
        <translation>Isto não é um backup, ou foi cortado ou alterado. Use outro.</translation>
    </message>
    <message>
        <source>It does not open with this passphrase, or is damaged. Try again, or take another back-up.</source>
        <translation>Ele não abre com esta senha, ou está danificado. Tente de novo ou use outro backup.</translation>
    </message>
    <message>
        <source>This passphrase is too short. Choose one of at least eight characters.</source>
        <translation>Esta senha é curta demais. Escolha uma com pelo menos oito caracteres.</translation>
    </message>
    <message>
        <source>This file may be about somebody else: name or birth date differ, or are missing. Nothing was added.</source>
        <translation>Este arquivo pode ser de outra pessoa: o nome ou a data de nascimento são diferentes ou faltam. Nada foi adicionado.</translation>
    </message>
    <message>
        <source>A file of that name is there already. It was left as it is.</source>
        <translation>Já existe um arquivo com esse nome. Ele ficou como está.</translation>
    </message>
    <message>
        <source>The file with your record was moved, deleted or replaced while Firstdew was open. Nothing was saved. Close Firstdew, put the file back and open it again.</source>
        <translation>O arquivo com o seu histórico foi movido, excluído ou trocado enquanto o Firstdew estava aberto. Nada foi salvo. Feche o Firstdew, ponha o arquivo de volta e abra de novo.</translation>
    </message>
    <message>
        <source>This care sheet is dated in the future. Ask for one with the right date.</source>
        <translation>Esta ficha de cuidados tem data no futuro. Peça uma com a data certa.</translation>
    </message>
    <message>
        <source>It could not be saved there. Choose another place, or make room first.</source>
        <translation>Não foi possível salvar ali. Escolha outro lugar ou libere espaço antes.</translation>
    </message>
    <message>
        <source>There is no room left; nothing was written. Make room and try again.</source>
        <translation>Não há mais espaço; nada foi gravado. Libere espaço e tente de novo.</translation>
    </message>
    <message>
        <source>A file could not be read or written. Look whether it is still there and whether there is room.</source>
        <translation>Não foi possível ler ou gravar um arquivo. Veja se ele ainda está lá e se há espaço.</translation>
    </message>
    <message>
        <source>Not everything came over. Your back-up is as it was. Try again with the same file.</source>
        <translation>Nem tudo chegou. O seu backup está como antes. Tente de novo com o mesmo arquivo.</translation>
    </message>
    <message>
        <source>This file is too large to be the right one.</source>
        <translation>Este arquivo é grande demais para ser o certo.</translation>
    </message>
    <message>
        <source>Another program is using the record. Close it and try again.</source>
        <translation>Outro programa está usando o histórico. Feche-o e tente de novo.</translation>
    </message>
    <message>
        <source>The record is damaged. Keep the file and restore a back-up.</source>
        <translation>O histórico está danificado. Guarde o arquivo e restaure um backup.</translation>
    </message>
    <message>
        <source>This is from a newer Firstdew. Update the app first.</source>
        <translation>Isto vem de um Firstdew mais novo. Atualize o app antes.</translation>
    </message>
    <message>
        <source>No sound comes from here, so you would not hear the alarm. Switch the sound on, then begin.</source>
        <translation>Não sai nenhum som daqui, então você não ouviria o alarme. Ligue o som e depois comece.</translation>
    </message>
    <message>
        <source>This file is not what is needed here (%1). Ask whoever made it.</source>
        <translation>Este arquivo não é o que é preciso aqui (%1). Pergunte a quem o fez.</translation>
    </message>
    <message>
        <source>This is above the limit of %1 there. Agree on a level up to the limit.</source>
        <translation>Isto está acima do limite de %1 nessa área. Combinem um nível até o limite.</translation>
    </message>
    <message>
        <source>d MMMM</source>
        <comment>date format</comment>
        <translation>d &apos;de&apos; MMMM</translation>
    </message>
    <message>
        <source>today</source>
        <translation>hoje</translation>
    </message>
    <message>
        <source>tomorrow</source>
        <translation>amanhã</translation>
    </message>
    <message>
        <source>yesterday</source>
        <translation>ontem</translation>
    </message>
    <message>
        <source>dddd, d MMMM</source>
        <comment>date format</comment>
        <translation>dddd, d &apos;de&apos; MMMM</translation>
    </message>
    <message>
        <source>d MMM</source>
        <comment>date format</comment>
        <translation>d MMM</translation>
    </message>
    <message>
        <source>d MMMM yyyy</source>
        <comment>date format</comment>
        <translation>d &apos;de&apos; MMMM &apos;de&apos; yyyy</translation>
    </message>
    <message>
        <source>%1 mA</source>
        <translation>%1&#xa0;mA</translation>
    </message>
    <message>
        <source>Hands</source>
        <translation>Mãos</translation>
    </message>
    <message>
        <source>Feet</source>
        <translation>Pés</translation>
    </message>
    <message>
        <source>Armpits</source>
        <translation>Axilas</translation>
    </message>
    <message>
        <source>Both hands</source>
        <translation>As duas mãos</translation>
    </message>
    <message>
        <source>Both feet</source>
        <translation>Os dois pés</translation>
    </message>
    <message>
        <source>One hand with one foot</source>
        <translation>Uma mão com um pé</translation>
    </message>
    <message>
        <source>Hand session</source>
        <translation>Sessão das mãos</translation>
    </message>
    <message>
        <source>Foot session</source>
        <translation>Sessão dos pés</translation>
    </message>
    <message>
        <source>Hand and foot session</source>
        <translation>Sessão de mão e pé</translation>
    </message>
    <message>
        <source>Armpit session</source>
        <translation>Sessão das axilas</translation>
    </message>
    <message>
        <source>Dry</source>
        <translation>Seca</translation>
    </message>
    <message>
        <source>Clammy</source>
        <translation>Úmida</translation>
    </message>
    <message>
        <source>Wet</source>
        <translation>Molhada</translation>
    </message>
    <message>
        <source>Dripping</source>
        <translation>Pingando</translation>
    </message>
    <message>
        <source>Heat</source>
        <translation>Calor</translation>
    </message>
    <message>
        <source>Exertion</source>
        <translation>Esforço</translation>
    </message>
    <message>
        <source>Stress</source>
        <translation>Estresse</translation>
    </message>
    <message>
        <source>Illness</source>
        <translation>Doença</translation>
    </message>
    <message>
        <source>Direct current</source>
        <translation>Corrente contínua</translation>
    </message>
    <message>
        <source>Pulsed current</source>
        <translation>Corrente pulsada</translation>
    </message>
    <message>
        <source>Right side</source>
        <translation>Lado direito</translation>
    </message>
    <message>
        <source>Left side</source>
        <translation>Lado esquerdo</translation>
    </message>
    <message>
        <source>I have a hand free</source>
        <translation>Tenho uma mão livre</translation>
    </message>
    <message>
        <source>Somebody helps me</source>
        <translation>Alguém me ajuda</translation>
    </message>
    <message>
        <source>Both hands under water</source>
        <translation>As duas mãos na água</translation>
    </message>
    <message>
        <source>You tap each step yourself.</source>
        <translation>Você confirma cada passo com um toque.</translation>
    </message>
    <message>
        <source>They stay beside you the whole session, tap and enter the readings.</source>
        <translation>A pessoa fica ao seu lado a sessão inteira, toca na tela e digita as leituras.</translation>
    </message>
    <message>
        <source>You raise and lower with the remote. For the swap you take your hands out and tap.</source>
        <translation>Você aumenta e diminui com o controle remoto. Para inverter a polaridade, tira as mãos da água e toca na tela.</translation>
    </message>
    <message>
        <source>Nothing felt</source>
        <translation>Não senti nada</translation>
    </message>
    <message>
        <source>Comfortable</source>
        <translation>Confortável</translation>
    </message>
    <message>
        <source>Strong</source>
        <translation>Forte</translation>
    </message>
    <message>
        <source>Unpleasant</source>
        <translation>Desagradável</translation>
    </message>
    <message>
        <source>Painful</source>
        <translation>Dolorosa</translation>
    </message>
    <message>
        <source>Fine</source>
        <translation>Normal</translation>
    </message>
    <message>
        <source>Redness</source>
        <translation>Vermelhidão</translation>
    </message>
    <message>
        <source>Dry skin</source>
        <translation>Pele ressecada</translation>
    </message>
    <message>
        <source>Itching</source>
        <translation>Coceira</translation>
    </message>
    <message>
        <source>Blister</source>
        <translation>Bolha</translation>
    </message>
    <message>
        <source>Burn</source>
        <translation>Queimadura</translation>
    </message>
    <message>
        <source>Pain</source>
        <translation>Dor</translation>
    </message>
    <message>
        <source>Not started</source>
        <translation>Não começou</translation>
    </message>
    <message>
        <source>First course</source>
        <translation>Ciclo inicial</translation>
    </message>
    <message>
        <source>Review</source>
        <translation>Avaliação</translation>
    </message>
    <message>
        <source>Keeping dry</source>
        <translation>Em manutenção</translation>
    </message>
    <message>
        <source>First dew</source>
        <translation>Primeiro suor</translation>
    </message>
    <message>
        <source>Sweating again</source>
        <translation>Suor de volta</translation>
    </message>
    <message>
        <source>Paused</source>
        <translation>Em pausa</translation>
    </message>
    <message>
        <source>Seven sessions in four weeks</source>
        <translation>Sete sessões em quatro semanas</translation>
    </message>
    <message>
        <source>Three a week for four weeks</source>
        <translation>Três por semana durante quatro semanas</translation>
    </message>
    <message>
        <source>Five a week for two weeks</source>
        <translation>Cinco por semana durante duas semanas</translation>
    </message>
    <message>
        <source>By prescription</source>
        <translation>Conforme a prescrição</translation>
    </message>
    <message>
        <source>Botulinum injections</source>
        <translation>Injeções de toxina botulínica</translation>
    </message>
    <message>
        <source>Tablets</source>
        <translation>Comprimidos</translation>
    </message>
    <message>
        <source>Cream or deodorant</source>
        <translation>Creme ou desodorante</translation>
    </message>
    <message>
        <source>Something else</source>
        <translation>Outra coisa</translation>
    </message>
    <message>
        <source>%1: %2 to %3</source>
        <comment>treatment: first and last day</comment>
        <translation>%1: de %2 a %3</translation>
    </message>
    <message>
        <source>%1: since %2</source>
        <comment>treatment: first day</comment>
        <translation>%1: desde %2</translation>
    </message>
    <message>
        <source>no response</source>
        <translation>sem resposta</translation>
    </message>
    <message>
        <source>good response</source>
        <translation>boa resposta</translation>
    </message>
    <message>
        <source>strong response</source>
        <translation>forte resposta</translation>
    </message>
    <message>
        <source>Are you pregnant, or might you be?</source>
        <translation>Você está grávida ou pode estar?</translation>
    </message>
    <message>
        <source>Do you have a pacemaker, a defibrillator or any other powered implant?</source>
        <translation>Você tem marca-passo, desfibrilador ou qualquer outro implante eletrônico?</translation>
    </message>
    <message>
        <source>Do you have metal in a bone or joint?</source>
        <translation>Você tem metal em um osso ou articulação?</translation>
    </message>
    <message>
        <source>Do you have a coil (intrauterine device or system) of any kind?</source>
        <translation>Você tem um DIU (dispositivo ou sistema intrauterino) de qualquer tipo?</translation>
    </message>
    <message>
        <source>Do you have a heart rhythm disorder or epilepsy?</source>
        <translation>Você tem um distúrbio do ritmo do coração ou epilepsia?</translation>
    </message>
    <message>
        <source>Do you have a tumour or a blood clot at present?</source>
        <translation>Você tem atualmente um tumor ou um coágulo de sangue?</translation>
    </message>
    <message>
        <source>Is the person treated under five years old?</source>
        <translation>A pessoa tratada tem menos de cinco anos?</translation>
    </message>
    <message>
        <source>Is the person treated under eighteen years old?</source>
        <translation>A pessoa tratada tem menos de dezoito anos?</translation>
    </message>
    <message>
        <source>Is there eczema or inflamed skin where the treatment goes?</source>
        <translation>Há eczema ou pele inflamada na área do tratamento?</translation>
    </message>
    <message>
        <source>Is there a wound too large to cover?</source>
        <translation>Há uma ferida grande demais para cobrir?</translation>
    </message>
    <message>
        <source>Do you wear fixed dental braces?</source>
        <translation>Você usa aparelho fixo nos dentes?</translation>
    </message>
    <message>
        <source>the child</source>
        <translation>A criança</translation>
    </message>
    <message>
        <source>Could %1 be pregnant?</source>
        <translation>%1 pode ter engravidado?</translation>
    </message>
    <message>
        <source>Does %1 have a pacemaker, a defibrillator or any other powered implant?</source>
        <translation>%1 tem marca-passo, desfibrilador ou qualquer outro implante eletrônico?</translation>
    </message>
    <message>
        <source>Does %1 have metal in a bone or joint?</source>
        <translation>%1 tem metal em um osso ou articulação?</translation>
    </message>
    <message>
        <source>Does %1 have a coil (intrauterine device or system) of any kind?</source>
        <translation>%1 tem um DIU (dispositivo ou sistema intrauterino) de qualquer tipo?</translation>
    </message>
    <message>
        <source>Does %1 have a heart rhythm disorder or epilepsy?</source>
        <translation>%1 tem um distúrbio do ritmo do coração ou epilepsia?</translation>
    </message>
    <message>
        <source>Does %1 have a tumour or a blood clot at present?</source>
        <translation>%1 tem atualmente um tumor ou um coágulo de sangue?</translation>
    </message>
    <message>
        <source>Is %1 under five years old?</source>
        <translation>%1 tem menos de cinco anos?</translation>
    </message>
    <message>
        <source>Is %1 under eighteen years old?</source>
        <translation>%1 tem menos de dezoito anos?</translation>
    </message>
    <message>
        <source>Does %1 have eczema or inflamed skin where the treatment goes?</source>
        <translation>%1 tem eczema ou pele inflamada na área do tratamento?</translation>
    </message>
    <message>
        <source>Does %1 have a wound too large to cover?</source>
        <translation>%1 tem uma ferida grande demais para cobrir?</translation>
    </message>
    <message>
        <source>Does %1 wear fixed dental braces?</source>
        <translation>%1 usa aparelho fixo nos dentes?</translation>
    </message>
    <message>
        <source>pregnancy</source>
        <translation>gravidez</translation>
    </message>
    <message>
        <source>a powered implant</source>
        <translation>um implante eletrônico</translation>
    </message>
    <message>
        <source>a metal implant</source>
        <translation>um implante de metal</translation>
    </message>
    <message>
        <source>a coil</source>
        <translation>um DIU</translation>
    </message>
    <message>
        <source>a heart rhythm disorder or epilepsy</source>
        <translation>um distúrbio do ritmo do coração ou epilepsia</translation>
    </message>
    <message>
        <source>a tumour or blood clot</source>
        <translation>um tumor ou coágulo de sangue</translation>
    </message>
    <message>
        <source>loss of feeling</source>
        <translation>perda de sensibilidade</translation>
    </message>
    <message>
        <source>an age under five</source>
        <translation>idade abaixo de cinco anos</translation>
    </message>
    <message>
        <source>an age under eighteen</source>
        <translation>idade abaixo de dezoito anos</translation>
    </message>
    <message>
        <source>eczema or inflamed skin</source>
        <translation>eczema ou pele inflamada</translation>
    </message>
    <message>
        <source>a large wound</source>
        <translation>uma ferida grande</translation>
    </message>
    <message>
        <source>fixed braces</source>
        <translation>aparelho fixo nos dentes</translation>
    </message>
    <message>
        <source>the prescriber</source>
        <translation>médico que prescreveu</translation>
    </message>
    <message>
        <source>the nurse</source>
        <translation>enfermagem</translation>
    </message>
    <message>
        <source>Common practice, adults</source>
        <translation>Prática habitual, adultos</translation>
    </message>
    <message>
        <source>Common practice, children</source>
        <translation>Prática habitual, crianças</translation>
    </message>
    <message>
        <source>Our own cautious choice, children</source>
        <translation>Nossa própria escolha, mais prudente, crianças</translation>
    </message>
    <message>
        <source>Set by %1</source>
        <translation>Quem definiu: %1</translation>
    </message>
    <message>
        <source>Lowered for the size of the treated skin</source>
        <translation>Reduzido pelo tamanho da pele tratada</translation>
    </message>
    <message>
        <source>Kept low until the size of the pads is entered under Machine and kit</source>
        <translation>Fica baixo até o tamanho das esponjas ser informado em Aparelho e material</translation>
    </message>
    <message>
        <source>%1 prescribed the other current</source>
        <translation>Outra corrente foi prescrita. Quem prescreveu: %1</translation>
    </message>
    <message>
        <source>Your machine does not have it</source>
        <translation>O seu aparelho não tem esta corrente</translation>
    </message>
    <message>
        <source>less than 1 in %1</source>
        <translation>menos de 1 em %1</translation>
    </message>
    <message>
        <source>more than %1 in %2</source>
        <translation>mais de %1 em %2</translation>
    </message>
    <message>
        <source>about %1 in %2</source>
        <translation>cerca de %1 em %2</translation>
    </message>
    <message>
        <source>By %1: %2</source>
        <comment>day, chance</comment>
        <translation>Até %1: %2</translation>
    </message>
    <message numerus="yes">
        <source>When the chance for the next day was %1, dampness came on %2 of %n day(s).</source>
        <translation>
            <numerusform>Quando a chance para o dia seguinte era de %1, o suor veio em %2 de %n dia.</numerusform>
            <numerusform>Quando a chance para o dia seguinte era de %1, o suor veio em %2 de %n dias.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>After %n more check-in(s) the app can say how its forecasts have done.</source>
        <translation>
            <numerusform>Depois de mais %n anotação, o app pode dizer quanto as previsões acertaram.</numerusform>
            <numerusform>Depois de mais %n anotações, o app pode dizer quanto as previsões acertaram.</numerusform>
        </translation>
    </message>
    <message>
        <source>So far the forecasts fit.</source>
        <translation>Até agora, as previsões acertam.</translation>
    </message>
    <message>
        <source>The dry spells have not gone as forecast. So the forecast now leaves more room on both sides.</source>
        <translation>Os períodos secos não foram como previsto. Por isso, a previsão agora deixa mais margem para os dois lados.</translation>
    </message>
    <message>
        <source>Treated now, one or two sessions are usually enough.</source>
        <translation>Tratando agora, em geral bastam uma ou duas sessões.</translation>
    </message>
    <message>
        <source>Skipped this time.</source>
        <translation>Pulada desta vez.</translation>
    </message>
    <message>
        <source>You put it off to this evening.</source>
        <translation>Você adiou para hoje à noite.</translation>
    </message>
    <message>
        <source>You put it off to %1.</source>
        <translation>Você adiou para %1.</translation>
    </message>
    <message>
        <source>You answered yes to %1. No session until a clinician has approved treatment.</source>
        <translation>Você respondeu sim: %1. Nenhuma sessão até um profissional de saúde liberar.</translation>
    </message>
    <message>
        <source>Because of %1, ask a clinician first and note who said yes.</source>
        <translation>Por causa disto: %1. Pergunte antes a um profissional de saúde e anote quem disse que sim.</translation>
    </message>
    <message numerus="yes">
        <source>The health questions were last answered %n day(s) ago.</source>
        <translation>
            <numerusform>A última resposta às perguntas de saúde foi há %n dia.</numerusform>
            <numerusform>A última resposta às perguntas de saúde foi há %n dias.</numerusform>
        </translation>
    </message>
    <message>
        <source>The health questions have not been answered yet.</source>
        <translation>As perguntas de saúde ainda não foram respondidas.</translation>
    </message>
    <message>
        <source>%1, noted %2. No session here until a clinician has looked at it.</source>
        <translation>%1 (anotação: %2). Nenhuma sessão aqui até um profissional de saúde examinar.</translation>
    </message>
    <message>
        <source>Enter the date of birth first: the limit of the current depends on it.</source>
        <translation>Informe antes a data de nascimento: o limite da corrente depende dela.</translation>
    </message>
    <message>
        <source>Your care sheet prescribes a current that your machine does not have. Ask who wrote it.</source>
        <translation>A sua ficha de cuidados prescreve uma corrente que o seu aparelho não tem. Pergunte a quem fez a ficha.</translation>
    </message>
    <message>
        <source>Enter first which current your machine has.</source>
        <translation>Informe antes qual corrente o seu aparelho tem.</translation>
    </message>
    <message>
        <source>You missed session %1 on %2. It is now today.</source>
        <translation>A sessão %1 não foi feita (%2). Agora ela fica para hoje.</translation>
    </message>
    <message>
        <source>You missed session %1 on %2. It is now on %3.</source>
        <translation>A sessão %1 não foi feita (%2). Nova data: %3.</translation>
    </message>
    <message numerus="yes">
        <source>The plan puts %n session(s) on consecutive days.</source>
        <translation>
            <numerusform>O plano põe %n sessão em dias seguidos.</numerusform>
            <numerusform>O plano põe %n sessões em dias seguidos.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>With a day between them, it takes %n day(s) more than planned.</source>
        <translation>
            <numerusform>Com um dia entre elas, leva %n dia a mais do que o previsto.</numerusform>
            <numerusform>Com um dia entre elas, leva %n dias a mais do que o previsto.</numerusform>
        </translation>
    </message>
    <message>
        <source>You are away on %1.</source>
        <translation>Você vai estar fora: %1.</translation>
    </message>
    <message>
        <source>You are away from %1 to %2.</source>
        <translation>Você vai estar fora de %1 a %2.</translation>
    </message>
    <message>
        <source>Dampness may come back in that time. A top-up before you leave is worth it.</source>
        <translation>O suor pode voltar nesse tempo. Vale a pena fazer uma sessão de manutenção antes de sair.</translation>
    </message>
    <message>
        <source>Today</source>
        <translation>Hoje</translation>
    </message>
    <message>
        <source>Session</source>
        <translation>Sessão</translation>
    </message>
    <message>
        <source>Diary</source>
        <translation>Diário</translation>
    </message>
    <message>
        <source>Plan</source>
        <translation>Plano</translation>
    </message>
    <message>
        <source>Nothing to do now</source>
        <translation>Nada para fazer agora</translation>
    </message>
    <message>
        <source>%1 today</source>
        <translation>%1 hoje</translation>
    </message>
    <message>
        <source>First dew: top up now</source>
        <translation>Primeiro suor: sessão de manutenção agora</translation>
    </message>
    <message>
        <source>Top up before you leave</source>
        <translation>Sessão de manutenção antes de sair</translation>
    </message>
    <message>
        <source>A top-up is due</source>
        <translation>Hora da sessão de manutenção</translation>
    </message>
    <message>
        <source>Keep an eye on it</source>
        <translation>Fique de olho</translation>
    </message>
    <message>
        <source>Time for a new course</source>
        <translation>Hora de um novo ciclo</translation>
    </message>
    <message>
        <source>The course is done</source>
        <translation>O ciclo terminou</translation>
    </message>
    <message>
        <source>Talk to your prescriber</source>
        <translation>Fale com o seu médico</translation>
    </message>
    <message>
        <source>No session for now</source>
        <translation>Sem sessões por enquanto</translation>
    </message>
    <message>
        <source>Not better yet</source>
        <translation>Ainda sem melhora</translation>
    </message>
    <message>
        <source>No first course has been set up yet.</source>
        <translation>Nenhum ciclo inicial foi planejado ainda.</translation>
    </message>
    <message>
        <source>Session %1 of %2 of the first course is planned for today.</source>
        <translation>A sessão %1 de %2 do ciclo inicial está marcada para hoje.</translation>
    </message>
    <message>
        <source>Session %1 of %2 of the first course is planned for %3.</source>
        <translation>A sessão %1 de %2 do ciclo inicial está marcada para %3.</translation>
    </message>
    <message numerus="yes">
        <source>The course will end %n day(s) late.</source>
        <translation>
            <numerusform>O ciclo ultrapassa as quatro semanas em %n dia.</numerusform>
            <numerusform>O ciclo ultrapassa as quatro semanas em %n dias.</numerusform>
        </translation>
    </message>
    <message>
        <source>The course can no longer finish in time.</source>
        <translation>Não dá mais para terminar o ciclo no prazo previsto.</translation>
    </message>
    <message numerus="yes">
        <source>All %n session(s) of the course are done.</source>
        <translation>
            <numerusform>A sessão do ciclo (%n) está feita.</numerusform>
            <numerusform>Todas as %n sessões do ciclo estão feitas.</numerusform>
        </translation>
    </message>
    <message>
        <source>Today&apos;s session is done.</source>
        <translation>A sessão de hoje está feita.</translation>
    </message>
    <message>
        <source>Today&apos;s session was stopped. Most of it was done, so it counts.</source>
        <translation>A sessão de hoje foi interrompida. A maior parte foi feita, então ela conta.</translation>
    </message>
    <message>
        <source>Dampness at rest, noted %1.</source>
        <translation>Suor em repouso (anotação: %1).</translation>
    </message>
    <message>
        <source>Dampness noted %1, though the day may explain it. Check again tomorrow.</source>
        <translation>Suor (anotação: %1), embora o dia possa explicar. Confira de novo amanhã.</translation>
    </message>
    <message>
        <source>Dampness twice in a row, last noted %1.</source>
        <translation>Suor duas vezes seguidas (última anotação: %1).</translation>
    </message>
    <message>
        <source>Full sweating at rest, noted %1. It usually needs a new course.</source>
        <translation>Suor forte em repouso (anotação: %1). Em geral é preciso um novo ciclo.</translation>
    </message>
    <message>
        <source>Wet at rest, noted %1. One report is not enough for a new course.</source>
        <translation>Pele molhada em repouso (anotação: %1). Uma anotação só não basta para um novo ciclo.</translation>
    </message>
    <message>
        <source>Dampness has probably begun.</source>
        <translation>O suor provavelmente já começou a voltar.</translation>
    </message>
    <message>
        <source>A top-up has been due since %1.</source>
        <translation>Já é hora da sessão de manutenção desde %1.</translation>
    </message>
    <message>
        <source>You may get clammy by tomorrow. A top-up now is worth it.</source>
        <translation>A pele pode ficar úmida até amanhã. Vale a pena fazer uma sessão de manutenção agora.</translation>
    </message>
    <message numerus="yes">
        <source>There has been no check-in for %n day(s).</source>
        <translation>
            <numerusform>Faz %n dia que não há anotação.</numerusform>
            <numerusform>Faz %n dias que não há anotação.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>After %n session(s) it is too early to say that it does not help: for many people it takes ten to twelve. First check how you do it.</source>
        <translation>
            <numerusform>Depois de %n sessão é cedo para dizer que não ajuda: muitas pessoas precisam de dez a doze. Primeiro, confira como você faz.</numerusform>
            <numerusform>Depois de %n sessões é cedo para dizer que não ajuda: muitas pessoas precisam de dez a doze. Primeiro, confira como você faz.</numerusform>
        </translation>
    </message>
    <message>
        <source>Say how much the sweating bothers you now. Then the app can tell whether the course helped.</source>
        <translation>Diga quanto o suor incomoda você agora. Assim o app pode dizer se o ciclo ajudou.</translation>
    </message>
    <message>
        <source>The score did not get better. There are other treatments; your prescriber can advise.</source>
        <translation>O incômodo não melhorou. Existem outros tratamentos; o médico que prescreveu pode orientar.</translation>
    </message>
    <message>
        <source>The score is better by one step.</source>
        <translation>O incômodo melhorou um grau.</translation>
    </message>
    <message>
        <source>The score is better by two steps or more.</source>
        <translation>O incômodo melhorou dois graus ou mais.</translation>
    </message>
    <message>
        <source>You paused this.</source>
        <translation>Você pôs em pausa.</translation>
    </message>
    <message>
        <source>You are away. The call for a session comes when you are back.</source>
        <translation>Você está fora. O aviso da sessão vem quando você voltar.</translation>
    </message>
    <message>
        <source>Going by your check-ins so far, the chance that dampness has begun is %1. The curve above does not include them.</source>
        <translation>Pelas suas anotações até agora, a chance de o suor ter voltado é de %1. A curva acima não leva isso em conta.</translation>
    </message>
    <message>
        <source>The chance that dampness has begun is %1. Today&apos;s report did not change it.</source>
        <translation>A chance de o suor ter voltado é de %1. A anotação de hoje não mudou isso.</translation>
    </message>
    <message>
        <source>The chance that dampness has begun is %1. Before today&apos;s report it was %2.</source>
        <translation>A chance de o suor ter voltado é de %1. Antes da anotação de hoje era de %2.</translation>
    </message>
    <message>
        <source>%1: dry or clammy today?</source>
        <translation>%1: a pele está seca ou úmida hoje?</translation>
    </message>
    <message>
        <source>%1: session today</source>
        <translation>%1: sessão hoje</translation>
    </message>
    <message>
        <source>%1: a top-up is due</source>
        <translation>%1: hora da sessão de manutenção</translation>
    </message>
    <message>
        <source>%1: first dew</source>
        <translation>%1: primeiro suor</translation>
    </message>
    <message>
        <source>%1: look at the skin</source>
        <translation>%1: olhe a pele</translation>
    </message>
    <message>
        <source>New batteries soon</source>
        <translation>Pilhas novas em breve</translation>
    </message>
    <message>
        <source>Health questions are due</source>
        <translation>Hora das perguntas de saúde</translation>
    </message>
    <message>
        <source>%1: how much does it bother you?</source>
        <translation>%1: quanto o suor incomoda você?</translation>
    </message>
    <message>
        <source>Show your prescriber</source>
        <translation>Mostre ao seu médico</translation>
    </message>
    <message>
        <source>Time for a back-up</source>
        <translation>Hora de fazer um backup</translation>
    </message>
    <message>
        <source>One tap answers. Or tap here to open Firstdew.</source>
        <translation>Basta um toque para responder. Ou toque aqui para abrir o Firstdew.</translation>
    </message>
    <message>
        <source>The first course works if you stick to it.</source>
        <translation>O ciclo inicial funciona quando é seguido à risca.</translation>
    </message>
    <message>
        <source>Before the dampness comes back.</source>
        <translation>Antes que o suor volte.</translation>
    </message>
    <message>
        <source>The day after a session: any redness, blister or burn?</source>
        <translation>O dia depois de uma sessão: alguma vermelhidão, bolha ou queimadura?</translation>
    </message>
    <message>
        <source>The set in the machine lasts about one more session.</source>
        <translation>As pilhas do aparelho duram cerca de mais uma sessão.</translation>
    </message>
    <message>
        <source>Before the next session, as every four weeks.</source>
        <translation>Antes da próxima sessão, como a cada quatro semanas.</translation>
    </message>
    <message>
        <source>One question, four answers.</source>
        <translation>Uma pergunta, quatro respostas.</translation>
    </message>
    <message>
        <source>The summary is two taps away.</source>
        <translation>O resumo está a dois toques.</translation>
    </message>
    <message>
        <source>An encrypted copy, kept where you choose.</source>
        <translation>Uma cópia criptografada, guardada onde você escolher.</translation>
    </message>
    <message>
        <source>Reminders</source>
        <translation>Lembretes</translation>
    </message>
    <message>
        <source>Running session</source>
        <translation>Sessão em andamento</translation>
    </message>
    <message>
        <source>Reminders may be a few minutes late on this phone.</source>
        <translation>Podem atrasar: este celular não deixa que cheguem no minuto certo.</translation>
    </message>
    <message>
        <source>While your phone was off</source>
        <translation>Enquanto o celular estava desligado</translation>
    </message>
    <message>
        <source>There were reminders. Open Firstdew to see what matters now.</source>
        <translation>Houve lembretes. Abra o Firstdew para ver o que importa agora.</translation>
    </message>
    <message>
        <source>Something to look at today</source>
        <translation>Algo para ver hoje</translation>
    </message>
    <message>
        <source>Done for today</source>
        <translation>Feito por hoje</translation>
    </message>
    <message>
        <source>Check list</source>
        <translation>Conferir a lista</translation>
    </message>
    <message>
        <source>Raise slowly</source>
        <translation>Aumentar devagar</translation>
    </message>
    <message>
        <source>Hold still</source>
        <translation>Não se mexer</translation>
    </message>
    <message>
        <source>Lower to zero</source>
        <translation>Diminuir até zero</translation>
    </message>
    <message>
        <source>Swap polarity</source>
        <translation>Inverter a polaridade</translation>
    </message>
    <message>
        <source>Current at zero? Soak the pads again and flip the polarity switch.</source>
        <translation>Corrente em zero? Encharque de novo as esponjas e vire a chave de polaridade.</translation>
    </message>
    <message>
        <source>Current at zero? Flip the polarity switch.</source>
        <translation>Corrente em zero? Vire a chave de polaridade.</translation>
    </message>
    <message>
        <source>Current at zero? Swap the two leads.</source>
        <translation>Corrente em zero? Inverta os dois cabos.</translation>
    </message>
    <message>
        <source>Current at zero? Soak the pads again and exchange them, right with left.</source>
        <translation>Corrente em zero? Encharque de novo as esponjas e troque uma pela outra, a direita com a esquerda.</translation>
    </message>
    <message>
        <source>Current at zero? Soak the pads again and swap the two leads.</source>
        <translation>Corrente em zero? Encharque de novo as esponjas e inverta os dois cabos.</translation>
    </message>
    <message>
        <source>Machine off, current at zero. Confirm the list.</source>
        <translation>Aparelho desligado, corrente em zero. Confirme a lista.</translation>
    </message>
    <message>
        <source>Switch the machine on. Meter at zero, set to direct current?</source>
        <translation>Ligue o aparelho. Medidor em zero, aparelho em corrente contínua?</translation>
    </message>
    <message>
        <source>Switch the machine on. Meter at zero, light for pulsed current on?</source>
        <translation>Ligue o aparelho. Medidor em zero, luz de corrente pulsada acesa?</translation>
    </message>
    <message>
        <source>Put your hands in now and keep them still.</source>
        <translation>Ponha as mãos na água agora e mantenha as mãos paradas.</translation>
    </message>
    <message>
        <source>Raise the current slowly with the remote.</source>
        <translation>Aumente a corrente devagar com o controle remoto.</translation>
    </message>
    <message>
        <source>Raise the current slowly to a comfortable level.</source>
        <translation>Aumente a corrente devagar até um nível confortável.</translation>
    </message>
    <message>
        <source>Hold still. Both pads stay where they are.</source>
        <translation>Não se mexa. As duas esponjas ficam onde estão.</translation>
    </message>
    <message>
        <source>Hold still. Everything stays under water.</source>
        <translation>Não se mexa. Tudo fica debaixo da água.</translation>
    </message>
    <message>
        <source>Lower the current slowly to zero with the remote.</source>
        <translation>Diminua a corrente devagar até zero com o controle remoto.</translation>
    </message>
    <message>
        <source>Lower the current slowly to zero.</source>
        <translation>Diminua a corrente devagar até zero.</translation>
    </message>
    <message>
        <source>Meter at zero? Only then hands out. Dry them, machine off, and tap.</source>
        <translation>Medidor em zero? Só então tire as mãos da água. Seque as mãos, desligue o aparelho e toque na tela.</translation>
    </message>
    <message>
        <source>Meter at zero? Only then hands out. Dry them and tap.</source>
        <translation>Medidor em zero? Só então tire as mãos da água. Seque as mãos e toque na tela.</translation>
    </message>
    <message>
        <source>Current at zero? Change to the other side.</source>
        <translation>Corrente em zero? Mude para o outro lado.</translation>
    </message>
    <message>
        <source>Machine off, then take the pads off. Dry skin and kit.</source>
        <translation>Desligue o aparelho e depois tire as esponjas. Seque a pele e o material.</translation>
    </message>
    <message>
        <source>Dry skin and kit.</source>
        <translation>Seque a pele e o material.</translation>
    </message>
    <message>
        <source>Machine off. Then take your hands or feet out. Dry your skin and the kit.</source>
        <translation>Desligue o aparelho e depois tire as mãos ou os pés da água. Seque a pele e o material.</translation>
    </message>
    <message>
        <source>Firstdew is not a medical device and makes no diagnosis. Follow your machine&apos;s instructions, local rules and your clinician.</source>
        <translation>O Firstdew não é um dispositivo médico e não faz diagnóstico. Siga as instruções do seu aparelho, as normas locais e o seu profissional de saúde.</translation>
    </message>
    <message>
        <source>Never go above the limits. It may prickle; it must never hurt. If it hurts, lower the current and stop.</source>
        <translation>Nunca passe dos limites. Pode formigar; nunca pode doer. Se doer, diminua a corrente e pare.</translation>
    </message>
    <message>
        <source>Don&apos;t treat if any health question tells you to stop.</source>
        <translation>Não faça o tratamento se alguma pergunta de saúde disser para parar.</translation>
    </message>
    <message>
        <source>Treat children only with medical advice and an adult beside them.</source>
        <translation>Crianças: tratamento só com orientação médica e um adulto ao lado.</translation>
    </message>
    <message>
        <source>Burns, blisters, faintness or palpitations: stop and seek help.</source>
        <translation>Queimaduras, bolhas, sensação de desmaio ou palpitações: pare e procure ajuda.</translation>
    </message>
    <message>
        <source>Keep leads and water away from mains electricity.</source>
        <translation>Mantenha os cabos e a água longe da rede elétrica.</translation>
    </message>
    <message>
        <source>Use only a machine made for this treatment, with what came with it, to drive the current.</source>
        <translation>Para a corrente, use somente um aparelho feito para este tratamento, com o que veio com ele.</translation>
    </message>
    <message>
        <source>The answer comes with the first sessions and a week of check-ins.</source>
        <translation>A resposta vem com as primeiras sessões e uma semana de anotações.</translation>
    </message>
    <message numerus="yes">
        <source>After %n more check-in(s) there is an answer.</source>
        <translation>
            <numerusform>Depois de mais %n anotação há uma resposta.</numerusform>
            <numerusform>Depois de mais %n anotações há uma resposta.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>No change yet. That says little before %n more session(s).</source>
        <translation>
            <numerusform>Ainda sem mudança. Isso diz pouco antes de mais %n sessão.</numerusform>
            <numerusform>Ainda sem mudança. Isso diz pouco antes de mais %n sessões.</numerusform>
        </translation>
    </message>
    <message>
        <source>Too early to say if it works</source>
        <translation>Cedo demais para dizer se funciona</translation>
    </message>
    <message>
        <source>It does not work yet</source>
        <translation>Ainda não funciona</translation>
    </message>
    <message>
        <source>It works in part</source>
        <translation>Funciona em parte</translation>
    </message>
    <message>
        <source>It works</source>
        <translation>Funciona</translation>
    </message>
    <message>
        <source>under %1</source>
        <translation>menos de %1</translation>
    </message>
    <message>
        <source>Damp days a week: %1.</source>
        <translation>Dias com suor por semana: %1.</translation>
    </message>
    <message>
        <source>Your latest dry spells were short.</source>
        <translation>Os seus últimos períodos secos foram curtos.</translation>
    </message>
    <message>
        <source>Show your prescriber the summary. Other treatments can help.</source>
        <translation>Mostre o resumo ao médico que prescreveu. Outros tratamentos podem ajudar.</translation>
    </message>
    <message>
        <source>Many people need 10 to 12 sessions.</source>
        <translation>Muitas pessoas precisam de 10 a 12 sessões.</translation>
    </message>
    <message>
        <source>The sole of a foot counts as %1, by height and weight.</source>
        <translation>A sola de um pé conta como %1, pela altura e pelo peso.</translation>
    </message>
    <message>
        <source>The palm of a hand counts as %1, by height and weight.</source>
        <translation>A palma de uma mão conta como %1, pela altura e pelo peso.</translation>
    </message>
    <message>
        <source>One pad counts as %1, as entered with the machine.</source>
        <translation>Uma esponja conta como %1, como informado no aparelho.</translation>
    </message>
    <message>
        <source>One pad counts as %1, as on the care sheet.</source>
        <translation>Uma esponja conta como %1, como na ficha de cuidados.</translation>
    </message>
    <message>
        <source>No pad size is entered, so one pad counts as %1.</source>
        <translation>O tamanho da esponja não foi informado, por isso uma esponja conta como %1.</translation>
    </message>
    <message>
        <source>%1 of current, about %2 in all</source>
        <translation>%1 de corrente, cerca de %2 ao todo</translation>
    </message>
    <message>
        <source>%1: no antiperspirant with aluminium for 24 hours</source>
        <translation>%1: sem antitranspirante com alumínio há 24 horas</translation>
    </message>
    <message>
        <source>%1: not shaved for three days</source>
        <translation>%1: sem raspar os pelos há três dias</translation>
    </message>
    <message>
        <source>Warm tap water, about %1 in each tray</source>
        <translation>Água morna da torneira, cerca de %1 em cada bandeja</translation>
    </message>
    <message>
        <source>My skin is whole where I treat: no cut, no new redness, no blister or burn</source>
        <translation>Minha pele na área tratada está íntegra: sem corte, sem vermelhidão nova, sem bolha nem queimadura</translation>
    </message>
    <message>
        <source>Ready %1 from %2. %3</source>
        <comment>day, time, what is then fulfilled</comment>
        <translation>Possível %1, a partir das %2. %3</translation>
    </message>
    <message>
        <source>%1 left in all</source>
        <translation>%1 restantes ao todo</translation>
    </message>
    <message>
        <source>%1 %2 left</source>
        <comment>minutes, seconds</comment>
        <translation>%1 %2 restantes</translation>
    </message>
    <message>
        <source>That does not belong to this step. Do what the screen says now. If in doubt, lower the current to zero and switch the machine off.</source>
        <translation>Isso não faz parte deste passo. Faça agora o que a tela diz. Na dúvida, diminua a corrente até zero e desligue o aparelho.</translation>
    </message>
    <message>
        <source>That did not work. Try again. If it happens again, end any session first, then close Firstdew and open it again.</source>
        <translation>Isso não funcionou. Tente de novo. Se acontecer outra vez, termine primeiro a sessão em andamento, se houver; depois feche o Firstdew e abra de novo.</translation>
    </message>
    <message>
        <source>, </source>
        <comment>between the parts of a list</comment>
        <translation>, </translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>a name and what belongs to it</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Have you lost feeling in the skin, or do you have a nerve disease where the treatment goes?</source>
        <translation>Você perdeu a sensibilidade na pele que vai ser tratada ou tem uma doença que afeta os nervos dessa região?</translation>
    </message>
    <message>
        <source>Has %1 lost feeling in the skin, or is there a nerve disease where the treatment goes?</source>
        <translation>%1 perdeu a sensibilidade na pele que vai ser tratada ou tem uma doença que afeta os nervos dessa região?</translation>
    </message>
    <message>
        <source>%1 mA·min</source>
        <translation>%1&#xa0;mA·min</translation>
    </message>
    <message>
        <source>%1 s</source>
        <translation>%1&#xa0;s</translation>
    </message>
    <message>
        <source>%1 mg</source>
        <translation>%1&#xa0;mg</translation>
    </message>
    <message>
        <source>%1 ml</source>
        <translation>%1&#xa0;ml</translation>
    </message>
    <message>
        <source>%1 cm²</source>
        <translation>%1&#xa0;cm²</translation>
    </message>
    <message>
        <source>%1%</source>
        <translation>%1%</translation>
    </message>
    <message numerus="yes">
        <source>You usually stay dry %1 to %n day(s). Today is day %2.</source>
        <translation>
            <numerusform>A sua pele costuma ficar seca de %1 a %n dia. Hoje é o dia %2.</numerusform>
            <numerusform>A sua pele costuma ficar seca de %1 a %n dias. Hoje é o dia %2.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>You usually stay dry %1 to %n day(s).</source>
        <translation>
            <numerusform>A sua pele costuma ficar seca de %1 a %n dia.</numerusform>
            <numerusform>A sua pele costuma ficar seca de %1 a %n dias.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Half of your dry spells last longer than %n day(s); four in five are over between day %1 and day %2.</source>
        <translation>
            <numerusform>Metade dos seus períodos secos dura mais de %n dia; quatro em cada cinco terminam entre o dia %1 e o dia %2.</numerusform>
            <numerusform>Metade dos seus períodos secos dura mais de %n dias; quatro em cada cinco terminam entre o dia %1 e o dia %2.</numerusform>
        </translation>
    </message>
    <message>
        <source>Pads off</source>
        <translation>Tire as esponjas</translation>
    </message>
    <message>
        <source>Dry off</source>
        <translation>Seque</translation>
    </message>
    <message>
        <source>With both hands in the water you go by what you hear, and no voice here is known to speak your language. Ask somebody to stay beside you.</source>
        <translation>Com as duas mãos na água você se guia pelo que ouve, e não se sabe de nenhuma voz aqui que fale o seu idioma. Peça a alguém que fique ao seu lado.</translation>
    </message>
    <message>
        <source>Turn the current to zero</source>
        <translation>Diminua a corrente até zero</translation>
    </message>
    <message>
        <source>Firstdew has stopped leading your session. Turn the current to zero, switch the machine off, then open Firstdew.</source>
        <translation>O Firstdew não conduz mais a sessão. Diminua a corrente até zero, desligue o aparelho e depois abra o Firstdew.</translation>
    </message>
    <message>
        <source>Shorter dry spells can have many reasons. If it goes on, tell your nurse or doctor.</source>
        <translation>Períodos secos mais curtos podem ter muitos motivos. Se continuar assim, fale com o seu médico ou com a enfermagem.</translation>
    </message>
    <message>
        <source>The last session here was half a year ago or more: begin low again, and go by what is comfortable.</source>
        <translation>A última sessão aqui foi há seis meses ou mais: recomece com pouca corrente e guie-se pelo que é confortável.</translation>
    </message>
    <message>
        <source>No reading of this current was noted here yet: begin low, and go by what is comfortable.</source>
        <translation>Ainda não foi anotada aqui nenhuma leitura desta corrente: comece com pouca corrente e guie-se pelo que é confortável.</translation>
    </message>
    <message>
        <source>This passphrase is too long. Choose one of fewer than 250 characters.</source>
        <translation>Esta senha é longa demais. Escolha uma com menos de 250 caracteres.</translation>
    </message>
    <message numerus="yes">
        <source>Usually dry for %n day(s) since about %1; before that, for %2.</source>
        <comment>days, date, days</comment>
        <translation>
            <numerusform>Período seco habitual: %n dia desde por volta de %1; antes eram %2.</numerusform>
            <numerusform>Período seco habitual: %n dias desde por volta de %1; antes eram %2.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1&#xa0;now, %2&#xa0;before the first session</source>
        <translation>%1&#xa0;agora, %2&#xa0;antes da primeira sessão</translation>
    </message>
    <message>
        <source>%1&#xa0;now</source>
        <translation>%1&#xa0;agora</translation>
    </message>
    <message>
        <source>How much it bothers you: %1&#xa0;now, %2&#xa0;before.</source>
        <translation>Incômodo: %1&#xa0;agora, %2&#xa0;antes.</translation>
    </message>
    <message>
        <source>It rests while you pause this site.</source>
        <translation>Fica parada enquanto esta área estiver em pausa.</translation>
    </message>
    <message>
        <source>It rests while hands and feet are treated together.</source>
        <translation>Fica parada enquanto mãos e pés são tratados juntos.</translation>
    </message>
    <message>
        <source>It rests until the next check-in.</source>
        <translation>Fica parada até a próxima anotação.</translation>
    </message>
    <message>
        <source>It rests while no session is possible.</source>
        <translation>Fica parada enquanto nenhuma sessão for possível.</translation>
    </message>
    <message>
        <source>It rests because the sweating is back.</source>
        <translation>Fica parada porque o suor voltou.</translation>
    </message>
    <message>
        <source>All pairs are complete.</source>
        <translation>Todos os pares estão completos.</translation>
    </message>
    <message>
        <source>It ended early, because the answer was clear.</source>
        <translation>Terminou antes, porque a resposta era clara.</translation>
    </message>
    <message>
        <source>You left it.</source>
        <translation>Você saiu dela.</translation>
    </message>
    <message>
        <source>It ended because of the skin.</source>
        <translation>Terminou por causa da pele.</translation>
    </message>
    <message>
        <source>It ended because the sweating was back.</source>
        <translation>Terminou porque o suor tinha voltado.</translation>
    </message>
    <message>
        <source>It ended with the new course.</source>
        <translation>Terminou com o novo ciclo.</translation>
    </message>
    <message>
        <source>It ended with the other treatment.</source>
        <translation>Terminou com o outro tratamento.</translation>
    </message>
    <message>
        <source>It ended because three sessions in a row did not count.</source>
        <translation>Terminou porque três sessões seguidas não contaram.</translation>
    </message>
    <message>
        <source>Whether the shorter session holds as long could not be told.</source>
        <translation>Não deu para saber se a sessão mais curta dura o mesmo.</translation>
    </message>
    <message numerus="yes">
        <source>The shorter session held about as long: about %n day(s), and the usual one %1.</source>
        <translation>
            <numerusform>A sessão mais curta durou mais ou menos o mesmo: cerca de %n dia, e a habitual %1.</numerusform>
            <numerusform>A sessão mais curta durou mais ou menos o mesmo: cerca de %n dias, e a habitual %1.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>The shorter session held less long: about %n day(s) instead of %1.</source>
        <translation>
            <numerusform>A sessão mais curta durou menos: cerca de %n dia em vez de %1.</numerusform>
            <numerusform>A sessão mais curta durou menos: cerca de %n dias em vez de %1.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>By these %n dry spell(s) it probably holds for %1 to %2 of the usual time.</source>
        <translation>
            <numerusform>Por este %n período seco, ela provavelmente dura de %1 a %2 do tempo habitual.</numerusform>
            <numerusform>Por estes %n períodos secos, ela provavelmente dura de %1 a %2 do tempo habitual.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>You compare a session of %1 with your usual one of %2, in %n pair(s) of dry spells. Chance decides which comes first.</source>
        <translation>
            <numerusform>Você compara uma sessão de %1 com a habitual de %2, em %n par de períodos secos. O acaso decide qual vem primeiro.</numerusform>
            <numerusform>Você compara uma sessão de %1 com a habitual de %2, em %n pares de períodos secos. O acaso decide qual vem primeiro.</numerusform>
        </translation>
    </message>
    <message>
        <source>Only the time is shorter. Current and limits stay as they are.</source>
        <translation>Só o tempo é mais curto. A corrente e os limites continuam iguais.</translation>
    </message>
    <message>
        <source>Meanwhile the forecast calls for no top-up. The first clammy day at rest does, unless the skin is still settling on the day after a session. So you may be clammy more often.</source>
        <translation>Enquanto isso, a previsão não pede sessão de manutenção. Quem pede é o primeiro dia úmido em repouso, a não ser que a pele ainda esteja se acomodando no dia depois de uma sessão. Por isso, pode haver umidade mais vezes.</translation>
    </message>
    <message>
        <source>Only sessions that the app leads to the end count. Check in every day.</source>
        <translation>Só contam as sessões que o aplicativo conduz até o fim. Anote todos os dias.</translation>
    </message>
    <message>
        <source>It can take months. It ends earlier if the shorter session clearly holds less long, or if the skin or the sweating requires it. You can leave at any time.</source>
        <translation>Pode levar meses. Se a mais curta durar claramente menos, ou a pele ou o suor pedirem, termina antes. Você pode sair a qualquer momento.</translation>
    </message>
    <message>
        <source>Agree on it with your prescriber or nurse first, and follow your machine&apos;s instructions.</source>
        <translation>Combine antes com o seu médico ou a enfermagem e siga as instruções do seu aparelho.</translation>
    </message>
    <message>
        <source>Pair %1 of %2.</source>
        <translation>Par %1 de %2.</translation>
    </message>
    <message>
        <source>Until then your sessions are the usual ones, and the forecast calls for top-ups again.</source>
        <translation>Até lá, as sessões são as habituais e a previsão volta a pedir sessões de manutenção.</translation>
    </message>
    <message>
        <source>This dry spell followed the shorter session.</source>
        <translation>Este período seco veio depois da sessão mais curta.</translation>
    </message>
    <message>
        <source>This dry spell followed the usual session.</source>
        <translation>Este período seco veio depois da sessão habitual.</translation>
    </message>
    <message>
        <source>The next session is the shorter one: %1.</source>
        <translation>A próxima sessão é a mais curta: %1.</translation>
    </message>
    <message>
        <source>The next session is the usual one: %1.</source>
        <translation>A próxima sessão é a habitual: %1.</translation>
    </message>
    <message>
        <source>The forecast calls for no top-up meanwhile. A clammy day at rest does.</source>
        <translation>Enquanto isso, a previsão não pede sessão de manutenção. Quem pede é um dia úmido em repouso.</translation>
    </message>
    <message>
        <source>From %1 to %2.</source>
        <translation>De %1 a %2.</translation>
    </message>
    <message>
        <source>Sessions are as long as usual again. Talk to your prescriber or nurse about the answer.</source>
        <translation>As sessões voltam à duração habitual. Fale sobre a resposta com o seu médico ou a enfermagem.</translation>
    </message>
    <message>
        <source>Shorter session compared with the usual one since %1</source>
        <translation>Sessão mais curta comparada com a habitual desde %1</translation>
    </message>
    <message>
        <source>pair %1 of %2; no answer yet</source>
        <translation>par %1 de %2; ainda sem resposta</translation>
    </message>
    <message>
        <source>You compare: this time the shorter session, %1.</source>
        <translation>Você compara: desta vez, a sessão mais curta, %1.</translation>
    </message>
    <message>
        <source>You compare: this time the usual session, %1.</source>
        <translation>Você compara: desta vez, a sessão habitual, %1.</translation>
    </message>
    <message>
        <source>You compare session lengths: pair %1 of %2. The forecast calls for no top-up meanwhile; a clammy day at rest does.</source>
        <translation>Você compara durações de sessão: par %1 de %2. Enquanto isso, a previsão não pede sessão de manutenção; quem pede é um dia úmido em repouso.</translation>
    </message>
</context>
<context>
    <name>WorkingCard</name>
    <message>
        <source>Your dry spells, %1</source>
        <translation>Os seus períodos secos, %1</translation>
    </message>
    <message>
        <source>Dry days after each session, the latest last. A point on top: still dry when the next session came, or dry today.</source>
        <translation>Dias secos depois de cada sessão, a mais recente por último. Uma ponta em cima: pele ainda seca quando veio a sessão seguinte, ou seca hoje.</translation>
    </message>
    <message>
        <source>A bar for each dry spell comes here once the course is under way.</source>
        <translation>Aqui aparece uma barra para cada período seco quando o ciclo estiver em andamento.</translation>
    </message>
</context>
<context>
    <name>firstdew::app::Reminding</name>
    <message>
        <source>Start</source>
        <translation>Começar</translation>
    </message>
    <message>
        <source>Later</source>
        <translation>Mais tarde</translation>
    </message>
</context>
<context>
    <name>firstdew::controls::DampnessChart</name>
    <message>
        <source>Chance</source>
        <translation>Chance</translation>
    </message>
</context>
<context>
    <name>firstdew::controls::DrySpellChart</name>
    <message>
        <source>Today, day %1</source>
        <translation>Hoje, dia %1</translation>
    </message>
    <message>
        <source>Days since the session</source>
        <translation>Dias desde a sessão</translation>
    </message>
</context>
<context>
    <name>firstdew::controls::SpellColumnsChart</name>
    <message numerus="yes">
        <source>%1: %n day(s) dry</source>
        <translation>
            <numerusform>%1: %n dia com pele seca</numerusform>
            <numerusform>%1: %n dias com pele seca</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>firstdew::viewmodels::BathModel</name>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Write down who approved it, so that the summary can say so.</source>
        <translation>Anote quem liberou, para que o resumo possa dizer.</translation>
    </message>
</context>
<context>
    <name>firstdew::viewmodels::DiaryModel</name>
    <message numerus="yes">
        <source>%1: %n day(s)</source>
        <translation>
            <numerusform>%1: %n dia</numerusform>
            <numerusform>%1: %n dias</numerusform>
        </translation>
    </message>
    <message>
        <source>Nothing noted in this time</source>
        <translation>Nada anotado neste período</translation>
    </message>
    <message numerus="yes">
        <source>%n session(s)</source>
        <translation>
            <numerusform>%n sessão</numerusform>
            <numerusform>%n sessões</numerusform>
        </translation>
    </message>
    <message>
        <source>session</source>
        <translation>sessão</translation>
    </message>
    <message>
        <source>Week from %1</source>
        <translation>Semana de %1</translation>
    </message>
    <message numerus="yes">
        <source>%n damp day(s) of %1 with a check-in</source>
        <translation>
            <numerusform>%n dia com suor em %1 com anotação</numerusform>
            <numerusform>%n dias com suor em %1 com anotação</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>firstdew::viewmodels::KeepModel</name>
    <message>
        <source>Save as</source>
        <translation>Salvar como</translation>
    </message>
</context>
</TS>
