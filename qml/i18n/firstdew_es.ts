<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="es">
<context>
    <name>About</name>
    <message>
        <source>About and cautions</source>
        <translation>Acerca de Firstdew y advertencias</translation>
    </message>
    <message>
        <source>Privacy</source>
        <translation>Privacidad</translation>
    </message>
    <message>
        <source>No account, no network. Nothing leaves this phone unless you share it.</source>
        <translation>Sin cuenta y sin red. Nada sale de este teléfono si usted no lo comparte.</translation>
    </message>
    <message>
        <source>Firstdew %1</source>
        <translation>Firstdew %1</translation>
    </message>
    <message>
        <source>Free software under the Apache licence 2.0. Typefaces Inter and Noto Sans Arabic under the SIL Open Font Licence 1.1.</source>
        <translation>Software libre con licencia Apache 2.0. Tipos de letra Inter y Noto Sans Arabic con licencia SIL Open Font 1.1.</translation>
    </message>
</context>
<context>
    <name>ActionButton</name>
    <message>
        <source>Not possible yet</source>
        <translation>Todavía no es posible</translation>
    </message>
</context>
<context>
    <name>AppLocked</name>
    <message>
        <source>Confirm that it is you</source>
        <translation>Confirme que es usted</translation>
    </message>
    <message>
        <source>Firstdew is locked</source>
        <translation>Firstdew está bloqueado</translation>
    </message>
    <message>
        <source>Firstdew: switch the app lock on or off</source>
        <translation>Firstdew: activar o desactivar el bloqueo de la aplicación</translation>
    </message>
    <message>
        <source>Open Firstdew</source>
        <translation>Abrir Firstdew</translation>
    </message>
    <message>
        <source>Firstdew asks for this phone&apos;s lock before the app lock is switched on or off.</source>
        <translation>Firstdew pide el bloqueo de este teléfono antes de activar o desactivar el bloqueo de la aplicación.</translation>
    </message>
    <message>
        <source>Your diary opens once this phone&apos;s lock confirms that it is you.</source>
        <translation>Su diario se abre cuando el bloqueo de este teléfono confirma que es usted.</translation>
    </message>
    <message>
        <source>Checking …</source>
        <translation>Comprobando…</translation>
    </message>
    <message>
        <source>That was not right. Try again.</source>
        <translation>No es correcto. Inténtelo de nuevo.</translation>
    </message>
    <message>
        <source>Hide what I type</source>
        <translation>Ocultar lo que escribo</translation>
    </message>
    <message>
        <source>Show what I type</source>
        <translation>Mostrar lo que escribo</translation>
    </message>
    <message>
        <source>This phone did not confirm you. Try again.</source>
        <translation>Este teléfono no le ha reconocido. Inténtelo de nuevo.</translation>
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
        <translation>Como tabla</translation>
    </message>
</context>
<context>
    <name>AwayPage</name>
    <message>
        <source>Days away</source>
        <translation>Días fuera</translation>
    </message>
    <message>
        <source>From</source>
        <translation>Desde</translation>
    </message>
    <message>
        <source>To</source>
        <translation>Hasta</translation>
    </message>
    <message>
        <source>Add</source>
        <translation>Añadir</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 a %2</translation>
    </message>
    <message>
        <source>Remove %1 to %2</source>
        <translation>Quitar %1 a %2</translation>
    </message>
    <message>
        <source>No session is planned on these days. The course moves around them. If a top-up would be due then, it is offered before you leave.</source>
        <translation>En estos días no se planifica ninguna sesión; el ciclo se adapta. Si tocara un refuerzo en esos días, se ofrece antes de salir.</translation>
    </message>
    <message>
        <source>Taking the kit along</source>
        <translation>Llevar el material de viaje</translation>
    </message>
</context>
<context>
    <name>BackButton</name>
    <message>
        <source>Back</source>
        <translation>Atrás</translation>
    </message>
</context>
<context>
    <name>Bath</name>
    <message>
        <source>Before a session, Firstdew has to know where you treat, with which machine, and your answers to the health questions.</source>
        <translation>Antes de una sesión, Firstdew necesita saber qué zona trata, con qué aparato y sus respuestas a las preguntas de salud.</translation>
    </message>
</context>
<context>
    <name>BathAfter</name>
    <message>
        <source>Done</source>
        <translation>Listo</translation>
    </message>
    <message>
        <source>Stopped</source>
        <translation>Sesión detenida</translation>
    </message>
    <message>
        <source>The batteries are nearly empty.</source>
        <translation>Las pilas están casi agotadas.</translation>
    </message>
    <message>
        <source>How did it feel?</source>
        <translation>¿Qué sensación tuvo?</translation>
    </message>
    <message>
        <source>Highest comfortable reading</source>
        <translation>Lectura cómoda máxima</translation>
    </message>
    <message>
        <source>Skin now</source>
        <translation>La piel ahora</translation>
    </message>
    <message>
        <source>Save in the diary</source>
        <translation>Guardar en el diario</translation>
    </message>
    <message>
        <source>Current at zero, machine off. Then take your hands or feet out.</source>
        <translation>Corriente a cero, aparato apagado y después saque las manos o los pies.</translation>
    </message>
    <message>
        <source>Current at zero, machine off, then take the pads off.</source>
        <translation>Corriente a cero, aparato apagado y después quite las almohadillas.</translation>
    </message>
    <message>
        <source>Dry your skin and the kit completely.</source>
        <translation>Seque del todo la piel y el material.</translation>
    </message>
    <message>
        <source>Take the batteries out.</source>
        <translation>Saque las pilas.</translation>
    </message>
    <message>
        <source>Look at the skin tomorrow.</source>
        <translation>Mire la piel mañana.</translation>
    </message>
    <message>
        <source>Not entered</source>
        <translation>Sin anotar</translation>
    </message>
    <message>
        <source>Irritated skin settles with rest and plain moisturiser. A mild hydrocortisone cream can help: ask a pharmacist.</source>
        <translation>La piel irritada se calma con descanso y una crema hidratante sencilla. Una crema suave de hidrocortisona puede ayudar: pregunte en la farmacia.</translation>
    </message>
    <message>
        <source>No further session there until a clinician has seen it. Seek help if it is painful or large.</source>
        <translation>Ninguna sesión más ahí hasta que lo vea un profesional sanitario. Busque ayuda si duele o es grande.</translation>
    </message>
    <message>
        <source>Note (optional)</source>
        <translation>Nota (opcional)</translation>
    </message>
    <message>
        <source>Look at your skin and say how it is.</source>
        <translation>Mire su piel y diga cómo está.</translation>
    </message>
    <message>
        <source>Did somebody teach you this session?</source>
        <translation>¿Le enseñó alguien esta sesión?</translation>
    </message>
    <message>
        <source>Mark it</source>
        <translation>Anotarlo</translation>
    </message>
    <message>
        <source>The current would not rise</source>
        <translation>La corriente no subía</translation>
    </message>
</context>
<context>
    <name>BathAsLast</name>
    <message>
        <source>Next: %1</source>
        <translation>A continuación: %1</translation>
    </message>
    <message>
        <source>Change</source>
        <translation>Cambiar</translation>
    </message>
    <message>
        <source>Adult beside the child: %1</source>
        <translation>Persona adulta acompañante: %1</translation>
    </message>
    <message>
        <source>True</source>
        <translation>Es así</translation>
    </message>
    <message>
        <source>Not quite</source>
        <translation>No del todo</translation>
    </message>
    <message>
        <source>Set up, then switch on</source>
        <translation>Prepare todo y encienda</translation>
    </message>
    <message>
        <source>The batteries are nearly empty. Have new ones at hand.</source>
        <translation>Las pilas están casi agotadas. Tenga otras a mano.</translation>
    </message>
    <message>
        <source>Continue</source>
        <translation>Continuar</translation>
    </message>
    <message>
        <source>Enough for today</source>
        <translation>Basta por hoy</translation>
    </message>
    <message>
        <source>Practice without current</source>
        <translation>Practicar sin corriente</translation>
    </message>
</context>
<context>
    <name>BathBlocked</name>
    <message>
        <source>No session now</source>
        <translation>Ahora no haga ninguna sesión</translation>
    </message>
    <message>
        <source>Ask a clinician first</source>
        <translation>Consulte antes a un profesional sanitario</translation>
    </message>
    <message>
        <source>Because of this, there must be no session until a clinician has approved treatment:</source>
        <translation>Por esto no debe haber ninguna sesión hasta que un profesional sanitario lo autorice:</translation>
    </message>
    <message>
        <source>Go on only with a clinician&apos;s word on this:</source>
        <translation>Siga solo si un profesional sanitario ha autorizado esto:</translation>
    </message>
    <message>
        <source>What is safe now: leave the machine off. Nothing is lost by waiting.</source>
        <translation>Lo seguro ahora: deje el aparato apagado. No se pierde nada por esperar.</translation>
    </message>
    <message>
        <source>A clinician has approved it</source>
        <translation>Un profesional sanitario lo ha autorizado</translation>
    </message>
    <message>
        <source>Who approved it</source>
        <translation>Quién lo autorizó</translation>
    </message>
    <message>
        <source>Record and go on</source>
        <translation>Anotar y continuar</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Atrás</translation>
    </message>
    <message>
        <source>Only if a doctor or nurse who knows of this and of your treatment said yes. The name goes onto the summary.</source>
        <translation>Solo si un médico o un profesional de enfermería que conoce esto y su tratamiento ha dicho que sí. El nombre aparece en el resumen.</translation>
    </message>
</context>
<context>
    <name>BathChoose</name>
    <message>
        <source>Where</source>
        <translation>Dónde</translation>
    </message>
    <message>
        <source>Current</source>
        <translation>Corriente</translation>
    </message>
    <message>
        <source>Who can tap the phone</source>
        <translation>Quién puede tocar el teléfono</translation>
    </message>
    <message>
        <source>Which side first</source>
        <translation>Qué lado primero</translation>
    </message>
    <message>
        <source>Right side</source>
        <translation>Lado derecho</translation>
    </message>
    <message>
        <source>Left side</source>
        <translation>Lado izquierdo</translation>
    </message>
    <message>
        <source>Adult beside the child: %1</source>
        <translation>Persona adulta acompañante: %1</translation>
    </message>
    <message>
        <source>Continue</source>
        <translation>Continuar</translation>
    </message>
    <message>
        <source>Enough for today</source>
        <translation>Basta por hoy</translation>
    </message>
    <message>
        <source>Practice without current</source>
        <translation>Practicar sin corriente</translation>
    </message>
</context>
<context>
    <name>BathExits</name>
    <message>
        <source>It is unpleasant</source>
        <translation>Me molesta</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Parar</translation>
    </message>
    <message>
        <source>Stop: a tap anywhere</source>
        <translation>Parar: toque en cualquier sitio</translation>
    </message>
    <message>
        <source>A tap anywhere stops.</source>
        <translation>Un toque en cualquier sitio detiene la sesión.</translation>
    </message>
</context>
<context>
    <name>BathMeanwhile</name>
    <message>
        <source>Welcome back</source>
        <translation>Hola de nuevo</translation>
    </message>
    <message>
        <source>The session was interrupted: %1. The current may still be flowing.</source>
        <translation>La sesión se interrumpió: %1. Puede que la corriente siga pasando.</translation>
    </message>
    <message>
        <source>What did the machine do meanwhile?</source>
        <translation>¿Qué hizo el aparato mientras tanto?</translation>
    </message>
    <message>
        <source>I switched it off</source>
        <translation>Lo apagué</translation>
    </message>
    <message>
        <source>I took hands or feet out</source>
        <translation>Saqué las manos o los pies</translation>
    </message>
    <message>
        <source>I do not know</source>
        <translation>No lo sé</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Parar</translation>
    </message>
    <message>
        <source>If you are unsure: machine off now. Switched off less than ten minutes ago, the session goes on; otherwise it starts again or ends, and what you did is kept.</source>
        <translation>Si no lo sabe con seguridad: apague el aparato ahora. Si se apagó hace menos de diez minutos, la sesión sigue; si no, empieza otra vez o termina, y lo que hizo se conserva.</translation>
    </message>
</context>
<context>
    <name>BathMeter</name>
    <message>
        <source>Aim %1</source>
        <translation>Objetivo %1</translation>
    </message>
    <message>
        <source>Limit %1</source>
        <translation>Límite %1</translation>
    </message>
    <message>
        <source>Meter: %1</source>
        <translation>Medidor: %1</translation>
    </message>
    <message>
        <source>Meter shows less</source>
        <translation>El medidor marca menos</translation>
    </message>
    <message>
        <source>Enter the meter reading, now %1</source>
        <translation>Introducir la lectura del medidor, ahora %1</translation>
    </message>
    <message>
        <source>Meter shows more</source>
        <translation>El medidor marca más</translation>
    </message>
    <message>
        <source>Meter reading, mA</source>
        <translation>Medidor, mA</translation>
    </message>
    <message>
        <source>Delete</source>
        <translation>Borrar</translation>
    </message>
    <message>
        <source>Enter</source>
        <translation>Introducir</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Parar</translation>
    </message>
    <message>
        <source>Practice: enter any number</source>
        <translation>Práctica: escriba cualquier número</translation>
    </message>
    <message>
        <source>Enter meter reading</source>
        <translation>Anotar la lectura</translation>
    </message>
    <message>
        <source>Enter the meter reading</source>
        <translation>Introducir la lectura del medidor</translation>
    </message>
    <message>
        <source>Above the limit of %1</source>
        <translation>Por encima del límite de %1</translation>
    </message>
</context>
<context>
    <name>BathPracticeOver</name>
    <message>
        <source>That was practice</source>
        <translation>Eso fue práctica</translation>
    </message>
    <message>
        <source>Nothing of it was recorded.</source>
        <translation>No se ha guardado nada de ello.</translation>
    </message>
    <message>
        <source>After a real session you dry your skin and the kit, say how it felt, and look at your skin.</source>
        <translation>Después de una sesión real, seque la piel y el material, diga qué sensación tuvo y mírese la piel.</translation>
    </message>
    <message>
        <source>Practise again</source>
        <translation>Practicar otra vez</translation>
    </message>
    <message>
        <source>Leave practice</source>
        <translation>Salir de la práctica</translation>
    </message>
</context>
<context>
    <name>BathPracticeStart</name>
    <message>
        <source>Practice</source>
        <translation>Práctica</translation>
    </message>
    <message>
        <source>Go through a whole session with the machine off: every step, picture and spoken word. Nothing is recorded.</source>
        <translation>Recorra una sesión entera con el aparato apagado: cada paso, cada dibujo y cada aviso hablado. No se guarda nada.</translation>
    </message>
    <message numerus="yes">
        <source>What takes minutes takes %n second(s) here.</source>
        <translation>
            <numerusform>Lo que dura minutos dura aquí %n segundo.</numerusform>
            <numerusform>Lo que dura minutos dura aquí %n segundos.</numerusform>
        </translation>
    </message>
    <message>
        <source>Where</source>
        <translation>Dónde</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Atrás</translation>
    </message>
    <message>
        <source>Begin practice</source>
        <translation>Empezar la práctica</translation>
    </message>
    <message>
        <source>Leave the machine off the whole time.</source>
        <translation>Deje el aparato apagado todo el tiempo.</translation>
    </message>
</context>
<context>
    <name>BathPrepare</name>
    <message>
        <source>Prepare: %1</source>
        <translation>Preparar: %1</translation>
    </message>
    <message>
        <source>About 12 hours ago</source>
        <translation>Hace unas 12 horas</translation>
    </message>
    <message>
        <source>Within a few hours</source>
        <translation>En las últimas horas</translation>
    </message>
    <message>
        <source>Two days ago</source>
        <translation>Hace dos días</translation>
    </message>
    <message>
        <source>Yesterday</source>
        <translation>Ayer</translation>
    </message>
    <message>
        <source>Today</source>
        <translation>Hoy</translation>
    </message>
    <message>
        <source>Test the volume</source>
        <translation>Comprobar el volumen</translation>
    </message>
    <message>
        <source>Begin</source>
        <translation>Empezar</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Atrás</translation>
    </message>
    <message>
        <source>No</source>
        <translation>No</translation>
    </message>
    <message>
        <source>Yes</source>
        <translation>Sí</translation>
    </message>
    <message>
        <source>The batteries are nearly empty. Have new ones at hand.</source>
        <translation>Las pilas están casi agotadas. Tenga otras a mano.</translation>
    </message>
    <message>
        <source>You raise and lower with the remote control. While your hands are in, any key or a tap anywhere on the screen, with elbow or nose, stops. For the swap: meter at zero, hands out, dry them, swap, tap. The phone waits. It cannot see the current: watch the meter yourself.</source>
        <translation>Usted sube y baja la corriente con el mando a distancia. Mientras tenga las manos dentro, cualquier tecla o un toque en cualquier sitio de la pantalla, con el codo o la nariz, detiene la sesión. Para cambiar la polaridad: medidor a cero, manos fuera, séquelas, haga el cambio y toque la pantalla. El teléfono espera. No puede ver la corriente: vigile usted el medidor.</translation>
    </message>
    <message>
        <source>All checked</source>
        <translation>Todo revisado</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 de %2</translation>
    </message>
    <message>
        <source>Next</source>
        <translation>Siguiente</translation>
    </message>
    <message>
        <source>Checked</source>
        <translation>Revisado</translation>
    </message>
    <message>
        <source>A soft sound runs through the session. If it stops, turn the current to zero and switch the machine off.</source>
        <translation>Durante toda la sesión se oye un sonido suave. Si se interrumpe, baje la corriente a cero y apague el aparato.</translation>
    </message>
    <message>
        <source>%1: antiperspirant with aluminium in the last 24 hours?</source>
        <translation>%1: ¿antitranspirante con aluminio en las últimas 24 horas?</translation>
    </message>
    <message>
        <source>%1: shaved in the last three days?</source>
        <translation>%1: ¿afeitado en los últimos tres días?</translation>
    </message>
    <message>
        <source>%1: small cuts on the skin?</source>
        <translation>%1: ¿cortes pequeños en la piel?</translation>
    </message>
</context>
<context>
    <name>BathRun</name>
    <message>
        <source>Next: %1</source>
        <translation>Después: %1</translation>
    </message>
    <message>
        <source>Too high. Turn it down on the machine now.</source>
        <translation>Demasiado alta. Bájela ahora en el aparato.</translation>
    </message>
    <message>
        <source>Down to %1 or less. Then enter what the meter shows.</source>
        <translation>Baje a %1 o menos. Después escriba lo que marca el medidor.</translation>
    </message>
    <message>
        <source>The last steps could not be saved yet. The session goes on; it is tried again.</source>
        <translation>Los últimos pasos aún no se han podido guardar. La sesión sigue; se intentará otra vez.</translation>
    </message>
    <message>
        <source>You cannot hear Firstdew right now. Watch the screen, or stop.</source>
        <translation>Ahora no se oye a Firstdew. Mire la pantalla o pare.</translation>
    </message>
    <message>
        <source>Down</source>
        <translation>Baje</translation>
    </message>
    <message>
        <source>Still %1</source>
        <translation>Sigue en %1</translation>
    </message>
    <message>
        <source>That was a slip: go on (%1)</source>
        <translation>Fue sin querer: seguir (%1)</translation>
    </message>
</context>
<context>
    <name>BathScreening</name>
    <message>
        <source>Health questions</source>
        <translation>Preguntas de salud</translation>
    </message>
    <message>
        <source>Has anything changed?</source>
        <translation>¿Ha cambiado algo?</translation>
    </message>
    <message>
        <source>Since you last answered: pregnancy, implants, illness, skin, medicines for the heart, or anything else on the list?</source>
        <translation>Desde su última respuesta: embarazo, implantes, enfermedad, piel, medicinas para el corazón o cualquier otra cosa de la lista.</translation>
    </message>
    <message>
        <source>That is all</source>
        <translation>Eso es todo</translation>
    </message>
    <message>
        <source>Nothing has changed</source>
        <translation>No ha cambiado nada</translation>
    </message>
    <message>
        <source>Something has changed</source>
        <translation>Algo ha cambiado</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Atrás</translation>
    </message>
    <message>
        <source>Answer each question for the person treated, as things are today.</source>
        <translation>Responda a cada pregunta por la persona tratada, tal como está hoy.</translation>
    </message>
    <message>
        <source>The list</source>
        <translation>La lista</translation>
    </message>
</context>
<context>
    <name>BotherPage</name>
    <message>
        <source>Over the last week, which comes nearest?</source>
        <translation>¿Qué se ajusta mejor a la última semana?</translation>
    </message>
    <message>
        <source>I can live with it, and now and then it gets in my way</source>
        <translation>Puedo vivir con ello, y a veces me limita en mi día a día</translation>
    </message>
    <message>
        <source>I can barely live with it, and it often gets in my way</source>
        <translation>Apenas puedo vivir con ello, y a menudo me limita en mi día a día</translation>
    </message>
    <message>
        <source>I cannot live with it; it is always in my way</source>
        <translation>No puedo vivir con ello; siempre me limita en mi día a día</translation>
    </message>
    <message>
        <source>How much the sweating bothers you</source>
        <translation>Cuánto le molesta el sudor</translation>
    </message>
    <message>
        <source>I hardly notice it, and it never gets in my way</source>
        <translation>Apenas lo noto y nunca me limita en mi día a día</translation>
    </message>
</context>
<context>
    <name>BottomBar</name>
    <message>
        <source>Places</source>
        <translation>Secciones</translation>
    </message>
</context>
<context>
    <name>CareSheetPage</name>
    <message>
        <source>Care sheet</source>
        <translation>Hoja de cuidados</translation>
    </message>
    <message>
        <source>From %1, %2</source>
        <translation>De %1, %2</translation>
    </message>
    <message>
        <source>Add a care sheet</source>
        <translation>Añadir una hoja de cuidados</translation>
    </message>
    <message>
        <source>Use this care sheet</source>
        <translation>Usar esta hoja de cuidados</translation>
    </message>
    <message>
        <source>Show as a code to scan</source>
        <translation>Mostrar como código para escanear</translation>
    </message>
    <message>
        <source>The care sheet as a QR code</source>
        <translation>La hoja de cuidados como código QR</translation>
    </message>
    <message>
        <source>It holds the whole care sheet. Show it only to those who treat you.</source>
        <translation>Contiene toda la hoja de cuidados. Muéstrelo solo a quienes llevan su tratamiento.</translation>
    </message>
    <message>
        <source>In use for: %1</source>
        <translation>Vale para: %1</translation>
    </message>
    <message>
        <source>This care sheet changes nothing: you already have it, or a newer one is in use.</source>
        <translation>Esta hoja no cambia nada: ya la tiene, o vale una más reciente.</translation>
    </message>
    <message>
        <source>Allows more than now. %1</source>
        <translation>Permite más que ahora. %1</translation>
    </message>
    <message>
        <source>My prescriber told me that more is allowed from now on</source>
        <translation>Mi médico me ha dicho que desde ahora se permite más</translation>
    </message>
    <message>
        <source>From your prescriber: the code on paper or on another phone, a picture of it, or a file. No care sheet can raise the usual limits.</source>
        <translation>De su médico: el código en papel o en otro teléfono, una foto de él o un archivo. Ninguna hoja de cuidados puede subir los límites habituales.</translation>
    </message>
    <message>
        <source>Stop the camera</source>
        <translation>Parar la cámara</translation>
    </message>
    <message>
        <source>Scan the code</source>
        <translation>Leer el código</translation>
    </message>
    <message>
        <source>What the camera sees. Hold the code in the middle.</source>
        <translation>Lo que ve la cámara. Ponga el código en el centro.</translation>
    </message>
    <message>
        <source>The camera cannot be used. Take a picture of the code and choose that.</source>
        <translation>No se puede usar la cámara. Haga una foto del código y elíjala.</translation>
    </message>
</context>
<context>
    <name>CasePage</name>
    <message>
        <source>Name not given</source>
        <translation>Sin nombre</translation>
    </message>
    <message>
        <source>Choose somebody from the caseload.</source>
        <translation>Elija a alguien de las personas a su cargo.</translation>
    </message>
</context>
<context>
    <name>CaseRow</name>
    <message>
        <source>Name not given</source>
        <translation>Sin nombre</translation>
    </message>
</context>
<context>
    <name>CaseText</name>
    <message>
        <source>%1: blister or burn since %2</source>
        <translation>%1: ampolla o quemadura desde el %2</translation>
    </message>
    <message>
        <source>%1: a health answer stops sessions since %2</source>
        <translation>%1: sesiones bloqueadas desde el %2 (preguntas de salud)</translation>
    </message>
    <message>
        <source>%1: stopped in the first course on %2</source>
        <translation>%1: dejó el primer ciclo el %2</translation>
    </message>
    <message>
        <source>%1: the course did not help, last session %2</source>
        <translation>%1: el ciclo no ayudó, última sesión el %2</translation>
    </message>
    <message>
        <source>%1: top-up overdue since %2</source>
        <translation>%1: refuerzo atrasado desde el %2</translation>
    </message>
    <message>
        <source>Silent since %1</source>
        <translation>Sin noticias desde el %1</translation>
    </message>
    <message>
        <source>Doing well, last entry %1</source>
        <translation>Va bien, última anotación el %1</translation>
    </message>
    <message>
        <source>This is another kind of file, or a back-up. Type the passphrase below if it is a back-up.</source>
        <translation>Es otro tipo de archivo o una copia de seguridad. Si es una copia, escriba abajo la contraseña.</translation>
    </message>
    <message>
        <source>The passphrase does not open it. Ask its owner for the right one.</source>
        <translation>La contraseña no lo abre. Pida la correcta a esa persona.</translation>
    </message>
    <message>
        <source>This folder cannot be read now. Look whether it is still there, or choose another one.</source>
        <translation>Esta carpeta no se puede leer ahora. Mire si sigue ahí o elija otra.</translation>
    </message>
    <message>
        <source>This folder holds too many files. Put the records into a folder of their own.</source>
        <translation>Esta carpeta tiene demasiados archivos. Ponga los historiales en una carpeta propia.</translation>
    </message>
    <message>
        <source>It is damaged, or came over in part. Ask its owner to send it again.</source>
        <translation>Está dañado o llegó incompleto. Pida a esa persona que lo envíe otra vez.</translation>
    </message>
    <message>
        <source>%1: dry spells shorter since about %2</source>
        <translation>%1: periodos secos más cortos desde alrededor del %2</translation>
    </message>
</context>
<context>
    <name>CaseView</name>
    <message>
        <source>Make a care sheet</source>
        <translation>Hacer una hoja de cuidados</translation>
    </message>
    <message>
        <source>Share the summary</source>
        <translation>Compartir el resumen</translation>
    </message>
    <message>
        <source>The summary of %1</source>
        <translation>El resumen de %1</translation>
    </message>
</context>
<context>
    <name>Caseload</name>
    <message>
        <source>Caseload</source>
        <translation>Personas a mi cargo</translation>
    </message>
    <message>
        <source>Reading file %1 of %2</source>
        <translation>Leyendo el archivo %1 de %2</translation>
    </message>
    <message>
        <source>%1 of %2 need a call.</source>
        <translation>Necesitan una llamada: %1 de %2.</translation>
    </message>
    <message>
        <source>All are doing well.</source>
        <translation>Todas las personas van bien.</translation>
    </message>
    <message numerus="yes">
        <source>%n file(s) could not be read. See the end of the list.</source>
        <translation>
            <numerusform>%n archivo no se pudo leer. Vea el final de la lista.</numerusform>
            <numerusform>%n archivos no se pudieron leer. Vea el final de la lista.</numerusform>
        </translation>
    </message>
    <message>
        <source>There are no records in these files.</source>
        <translation>No hay historiales en estos archivos.</translation>
    </message>
    <message>
        <source>Ask the people you teach for their record or back-up, and put the files into one folder. They are read here and stay as they are.</source>
        <translation>Pida a las personas a las que enseña su historial o su copia de seguridad y ponga los archivos en una carpeta. Aquí se leen y quedan como están.</translation>
    </message>
    <message>
        <source>Not read</source>
        <translation>No leídos</translation>
    </message>
    <message>
        <source>Passphrase of the back-ups</source>
        <translation>Contraseña de las copias</translation>
    </message>
    <message>
        <source>It is forgotten when you close Firstdew.</source>
        <translation>Se olvida al cerrar Firstdew.</translation>
    </message>
    <message>
        <source>Open with this passphrase</source>
        <translation>Abrir con esta contraseña</translation>
    </message>
    <message>
        <source>Where the records are</source>
        <translation>Dónde están los historiales</translation>
    </message>
    <message>
        <source>Choose the folder</source>
        <translation>Elegir la carpeta</translation>
    </message>
    <message>
        <source>Add a file</source>
        <translation>Añadir un archivo</translation>
    </message>
    <message>
        <source>Read the files again</source>
        <translation>Leer otra vez los archivos</translation>
    </message>
    <message>
        <source>Read the files in %1</source>
        <translation>Leer los archivos de %1</translation>
    </message>
    <message>
        <source>Make a care sheet</source>
        <translation>Hacer una hoja de cuidados</translation>
    </message>
    <message>
        <source>Choose somebody from the list.</source>
        <translation>Elija a alguien de la lista.</translation>
    </message>
    <message>
        <source>Name not given</source>
        <translation>Sin nombre</translation>
    </message>
</context>
<context>
    <name>CheckInCard</name>
    <message>
        <source>%1 today?</source>
        <translation>¿%1 hoy?</translation>
    </message>
</context>
<context>
    <name>CheckedIn</name>
    <message>
        <source>Undo</source>
        <translation>Deshacer</translation>
    </message>
    <message>
        <source>Change</source>
        <translation>Cambiar</translation>
    </message>
</context>
<context>
    <name>ChoiceChip</name>
    <message>
        <source>Not possible yet</source>
        <translation>Todavía no es posible</translation>
    </message>
</context>
<context>
    <name>ComparisonCard</name>
    <message>
        <source>Is a shorter session enough?</source>
        <translation>¿Basta una sesión más corta?</translation>
    </message>
    <message>
        <source>You can find out by comparing the two, one dry spell after the other.</source>
        <translation>Puede averiguarlo comparando las dos, un periodo seco tras otro.</translation>
    </message>
    <message>
        <source>How it works</source>
        <translation>Cómo funciona</translation>
    </message>
    <message>
        <source>Compare again</source>
        <translation>Comparar otra vez</translation>
    </message>
    <message>
        <source>My prescriber or nurse agrees</source>
        <translation>Mi médico o el personal de enfermería está de acuerdo</translation>
    </message>
    <message>
        <source>Start comparing</source>
        <translation>Empezar a comparar</translation>
    </message>
    <message>
        <source>Leave the comparison</source>
        <translation>Dejar la comparación</translation>
    </message>
</context>
<context>
    <name>CourseDates</name>
    <message>
        <source>%1, done</source>
        <translation>%1, hecha</translation>
    </message>
    <message>
        <source>%1, planned. Tap to move it.</source>
        <translation>%1, prevista. Toque para moverla.</translation>
    </message>
    <message>
        <source>Move session %1</source>
        <translation>Mover la sesión %1</translation>
    </message>
</context>
<context>
    <name>CoursePlan</name>
    <message>
        <source>Sessions of this course</source>
        <translation>Sesiones de este ciclo</translation>
    </message>
    <message>
        <source>Move</source>
        <translation>Mover</translation>
    </message>
    <message>
        <source>Planned to end by %1. If you miss a session, the rest moves.</source>
        <translation>Si es posible, termina como muy tarde: %1. Una sesión perdida se mueve sola; el resto se planifica de nuevo.</translation>
    </message>
    <message>
        <source>Start again</source>
        <translation>Empezar de nuevo</translation>
    </message>
    <message>
        <source>Choose</source>
        <translation>Elegir</translation>
    </message>
    <message>
        <source>First session</source>
        <translation>Primera sesión</translation>
    </message>
    <message>
        <source>Days that suit you (none = any day)</source>
        <translation>Días que le convienen (si no elige, todos)</translation>
    </message>
    <message>
        <source>Plan the course</source>
        <translation>Planificar el ciclo</translation>
    </message>
    <message>
        <source>Move session %1</source>
        <translation>Mover la sesión %1</translation>
    </message>
    <message>
        <source>New day</source>
        <translation>Nuevo día</translation>
    </message>
    <message>
        <source>Plan a course</source>
        <translation>Planificar un ciclo</translation>
    </message>
    <message>
        <source>Single sessions keep you dry now. A whole course is for the beginning, or when full sweating is back.</source>
        <translation>Ahora le bastan sesiones sueltas para mantener la piel seca. Un ciclo entero es para el comienzo o para cuando vuelve la sudoración intensa.</translation>
    </message>
    <message>
        <source>Where sessions crowd</source>
        <translation>Cuando se juntan sesiones</translation>
    </message>
    <message>
        <source>Close together</source>
        <translation>Seguidas</translation>
    </message>
    <message>
        <source>A day between</source>
        <translation>Con un día en medio</translation>
    </message>
</context>
<context>
    <name>DampnessLine</name>
    <message>
        <source>Dampness over time, %1</source>
        <translation>Evolución de la humedad, %1</translation>
    </message>
    <message>
        <source>Marks below show your sessions. Diamonds above: weighings, in mg a minute.</source>
        <translation>Marcas abajo: sus sesiones. Rombos arriba: pesajes, en mg por minuto.</translation>
    </message>
    <message>
        <source>Marks below show your sessions.</source>
        <translation>Marcas abajo: sus sesiones.</translation>
    </message>
    <message>
        <source>No check-in in this time.</source>
        <translation>Ninguna anotación en este tiempo.</translation>
    </message>
    <message numerus="yes">
        <source>%n check-in(s) here. After two weeks of them the line begins to tell how long you stay dry.</source>
        <translation>
            <numerusform>%n anotación aquí. Tras dos semanas con anotaciones, la línea empieza a mostrar cuánto tiempo sigue seca su piel.</numerusform>
            <numerusform>%n anotaciones aquí. Tras dos semanas con anotaciones, la línea empieza a mostrar cuánto tiempo sigue seca su piel.</numerusform>
        </translation>
    </message>
    <message>
        <source>Diamonds above: weighings, in mg a minute.</source>
        <translation>Rombos arriba: pesajes, en mg por minuto.</translation>
    </message>
    <message>
        <source>Meter readings of the sessions, %1</source>
        <translation>Lecturas en las sesiones, %1</translation>
    </message>
    <message>
        <source>Dots: highest comfortable reading of each session, in mA. Rings: where it was unpleasant or painful.</source>
        <translation>Puntos: lectura cómoda máxima de cada sesión, en mA. Anillos: donde fue desagradable o dolorosa.</translation>
    </message>
</context>
<context>
    <name>DayPage</name>
    <message>
        <source>Corrected; the first entry is kept beside it.</source>
        <translation>Corregido; la primera anotación se conserva al lado.</translation>
    </message>
    <message>
        <source>Finished, %1</source>
        <translation>Terminada, %1</translation>
    </message>
    <message>
        <source>Comfortable at %1</source>
        <translation>Cómoda con %1</translation>
    </message>
    <message>
        <source>How much it bothers you: %1 of 4</source>
        <translation>Molestia %1 de 4</translation>
    </message>
    <message>
        <source>Skin: %1</source>
        <translation>Piel: %1</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Conservar</translation>
    </message>
    <message>
        <source>More than the usual upper limit of healthy people.</source>
        <translation>Más que el límite superior habitual en personas sanas.</translation>
    </message>
    <message>
        <source>Within the usual range of healthy people.</source>
        <translation>Dentro de lo habitual en personas sanas.</translation>
    </message>
    <message>
        <source>Day before</source>
        <translation>Día anterior</translation>
    </message>
    <message>
        <source>Day after</source>
        <translation>Día siguiente</translation>
    </message>
    <message>
        <source>Nothing here yet</source>
        <translation>Aún no hay nada</translation>
    </message>
    <message>
        <source>Your notes for a day appear here.</source>
        <translation>Aquí figura lo que anote de un día.</translation>
    </message>
    <message>
        <source>Stopped early, %1</source>
        <translation>Terminada antes, %1</translation>
    </message>
    <message>
        <source>Correct this session</source>
        <translation>Corregir esta sesión</translation>
    </message>
    <message>
        <source>Delete this entry</source>
        <translation>Borrar esta anotación</translation>
    </message>
    <message>
        <source>Delete this entry?</source>
        <translation>¿Borrar esta anotación?</translation>
    </message>
    <message>
        <source>It no longer counts. The original stays in your history.</source>
        <translation>Ya no cuenta. El original queda en su historial.</translation>
    </message>
    <message>
        <source>Delete</source>
        <translation>Borrar</translation>
    </message>
    <message>
        <source>Weighing: %1 in %2, %3 a minute</source>
        <translation>Pesaje: %1 en %2, %3 por minuto</translation>
    </message>
</context>
<context>
    <name>DaySheet</name>
    <message>
        <source>Done</source>
        <translation>Listo</translation>
    </message>
</context>
<context>
    <name>DaySheetPick</name>
    <message>
        <source>The month before</source>
        <translation>El mes anterior</translation>
    </message>
    <message>
        <source>The month after</source>
        <translation>El mes siguiente</translation>
    </message>
</context>
<context>
    <name>DaysAround</name>
    <message>
        <source>The next fourteen days</source>
        <translation>Los próximos catorce días</translation>
    </message>
    <message>
        <source>The last seven days</source>
        <translation>Los últimos siete días</translation>
    </message>
</context>
<context>
    <name>DaysBack</name>
    <message>
        <source>%1, to fill in</source>
        <translation>%1, por completar</translation>
    </message>
</context>
<context>
    <name>DewCall</name>
    <message>
        <source>You put it off to this evening. A reminder will come.</source>
        <translation>Lo dejó para esta noche. Llegará un recordatorio.</translation>
    </message>
    <message>
        <source>Start now</source>
        <translation>Empezar ahora</translation>
    </message>
    <message>
        <source>This evening</source>
        <translation>Esta noche</translation>
    </message>
    <message>
        <source>Tomorrow</source>
        <translation>Mañana</translation>
    </message>
    <message>
        <source>Not this time</source>
        <translation>Esta vez no</translation>
    </message>
    <message>
        <source>Why?</source>
        <translation>¿Por qué?</translation>
    </message>
    <message>
        <source>I did one</source>
        <translation>Ya hice una</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>More</source>
        <translation>Más</translation>
    </message>
</context>
<context>
    <name>Diary</name>
    <message>
        <source>Month</source>
        <translation>Mes</translation>
    </message>
    <message>
        <source>Quarter</source>
        <translation>3 meses</translation>
    </message>
    <message>
        <source>Year</source>
        <translation>Año</translation>
    </message>
    <message>
        <source>All</source>
        <translation>Todo</translation>
    </message>
    <message>
        <source>Nothing here yet</source>
        <translation>Aún no hay nada</translation>
    </message>
    <message>
        <source>How much it bothers you</source>
        <translation>Cuánto le molesta</translation>
    </message>
    <message>
        <source>Skin after a session</source>
        <translation>La piel tras la sesión</translation>
    </message>
    <message>
        <source>Weighing</source>
        <translation>Pesaje</translation>
    </message>
    <message>
        <source>Summary for your prescriber</source>
        <translation>Resumen para su médico</translation>
    </message>
    <message>
        <source>Filter: on</source>
        <translation>Filtro: activo</translation>
    </message>
    <message>
        <source>Filter</source>
        <translation>Filtro</translation>
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
        <translation>Después</translation>
    </message>
    <message>
        <source>More about this day</source>
        <translation>Ver y anotar más</translation>
    </message>
    <message>
        <source>See a day</source>
        <translation>Ver días sueltos</translation>
    </message>
    <message>
        <source>What is shown</source>
        <translation>Qué se muestra</translation>
    </message>
    <message>
        <source>Where</source>
        <translation>Dónde</translation>
    </message>
    <message>
        <source>Everywhere</source>
        <translation>En todas partes</translation>
    </message>
    <message>
        <source>Sessions and readings</source>
        <translation>Sesiones y lecturas</translation>
    </message>
    <message>
        <source>Shown</source>
        <translation>Visibles</translation>
    </message>
    <message>
        <source>Hidden</source>
        <translation>Ocultas</translation>
    </message>
    <message>
        <source>Leave out days with</source>
        <translation>Omitir los días con</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Listo</translation>
    </message>
    <message>
        <source>Left out: days with %1</source>
        <translation>Se omiten los días con %1</translation>
    </message>
    <message>
        <source>Send to your prescriber</source>
        <translation>Enviar a su médico</translation>
    </message>
    <message>
        <source>Other treatments</source>
        <translation>Otros tratamientos</translation>
    </message>
    <message>
        <source>Each check-in on Today draws one dot here. After two weeks of them you see how long you stay dry, and if the treatment works.</source>
        <translation>Cada anotación en «Hoy» dibuja aquí un punto. Tras dos semanas con anotaciones verá cuánto tiempo sigue seca su piel y si el tratamiento funciona.</translation>
    </message>
</context>
<context>
    <name>DonePage</name>
    <message>
        <source>Correct this session</source>
        <translation>Corregir esta sesión</translation>
    </message>
    <message>
        <source>A session I did</source>
        <translation>Una sesión que hice</translation>
    </message>
    <message>
        <source>Where</source>
        <translation>Dónde</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Cuándo</translation>
    </message>
    <message>
        <source>Today</source>
        <translation>Hoy</translation>
    </message>
    <message>
        <source>Yesterday</source>
        <translation>Ayer</translation>
    </message>
    <message>
        <source>Or another day</source>
        <translation>U otro día</translation>
    </message>
    <message>
        <source>To its end?</source>
        <translation>¿Hasta el final?</translation>
    </message>
    <message>
        <source>Yes</source>
        <translation>Sí</translation>
    </message>
    <message>
        <source>Stopped early</source>
        <translation>Terminada antes</translation>
    </message>
    <message>
        <source>Current</source>
        <translation>Corriente</translation>
    </message>
    <message>
        <source>How did it feel?</source>
        <translation>¿Qué sensación tuvo?</translation>
    </message>
    <message>
        <source>Skin since then</source>
        <translation>La piel desde entonces</translation>
    </message>
    <message>
        <source>Note (optional)</source>
        <translation>Nota (opcional)</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Guardar</translation>
    </message>
</context>
<context>
    <name>Drawings</name>
    <message>
        <source>A hand. The ring comes off, the watch lies beside it.</source>
        <translation>Una mano. El anillo sale, el reloj está al lado.</translation>
    </message>
    <message>
        <source>A fingertip puts a thin layer of jelly on a cut, and only there.</source>
        <translation>La punta de un dedo pone una capa fina de vaselina sobre un corte, y solo ahí.</translation>
    </message>
    <message>
        <source>Two trays are put on a wooden table.</source>
        <translation>Se ponen dos bandejas sobre una mesa de madera.</translation>
    </message>
    <message>
        <source>Two trays are put on the floor in front of a chair.</source>
        <translation>Se ponen dos bandejas en el suelo delante de una silla.</translation>
    </message>
    <message>
        <source>The plate goes into the tray, and the grid over the plate.</source>
        <translation>La placa va dentro de la bandeja, y la rejilla encima de la placa.</translation>
    </message>
    <message>
        <source>Two pads go into a bowl of water.</source>
        <translation>Dos almohadillas van a un cuenco con agua.</translation>
    </message>
    <message>
        <source>A battery goes into its place, plus and minus as marked.</source>
        <translation>Una pila va a su sitio, el más y el menos como está marcado.</translation>
    </message>
    <message>
        <source>The machine is off. Two leads are plugged in.</source>
        <translation>El aparato está apagado. Se conectan dos cables.</translation>
    </message>
    <message>
        <source>Two hands in two trays. Between them lies the remote, within their reach.</source>
        <translation>Dos manos en dos bandejas. Entre ellas está el mando a distancia, a su alcance.</translation>
    </message>
    <message>
        <source>A finger switches the machine off. The meter shows zero.</source>
        <translation>Un dedo apaga el aparato. El medidor marca cero.</translation>
    </message>
    <message>
        <source>A finger switches the machine on. The light comes on, the meter shows zero.</source>
        <translation>Un dedo enciende el aparato. La luz se enciende, el medidor marca cero.</translation>
    </message>
    <message>
        <source>The meter under a magnifying glass. It shows zero.</source>
        <translation>El medidor bajo una lupa. Marca cero.</translation>
    </message>
    <message>
        <source>Fingers turn the knob up in small steps. The meter rises.</source>
        <translation>Unos dedos suben el mando giratorio poco a poco. El medidor sube.</translation>
    </message>
    <message>
        <source>Fingers turn the knob down in small steps. The meter is at zero.</source>
        <translation>Unos dedos bajan el mando giratorio poco a poco. El medidor está a cero.</translation>
    </message>
    <message>
        <source>A finger on the upper button of the remote. Up in small steps.</source>
        <translation>Un dedo en el botón de arriba del mando a distancia. Subir poco a poco.</translation>
    </message>
    <message>
        <source>A finger on the lower button of the remote. Down in small steps.</source>
        <translation>Un dedo en el botón de abajo del mando a distancia. Bajar poco a poco.</translation>
    </message>
    <message>
        <source>Two hands flat in two trays, under water.</source>
        <translation>Dos manos planas en dos bandejas, bajo el agua.</translation>
    </message>
    <message>
        <source>Two feet flat in two trays, under water.</source>
        <translation>Dos pies planos en dos bandejas, bajo el agua.</translation>
    </message>
    <message>
        <source>A pad under each arm, each on a lead to the machine.</source>
        <translation>Una almohadilla bajo cada brazo, cada una con un cable al aparato.</translation>
    </message>
    <message>
        <source>Both hands come out of the trays.</source>
        <translation>Las dos manos salen de las bandejas.</translation>
    </message>
    <message>
        <source>The meter shows zero. Each lead goes to the place of the other.</source>
        <translation>El medidor marca cero. Cada cable va al lugar del otro.</translation>
    </message>
    <message>
        <source>The meter shows zero. A finger flips the polarity switch.</source>
        <translation>El medidor marca cero. Un dedo cambia el interruptor de polaridad.</translation>
    </message>
    <message>
        <source>The two pads change sides: right goes left, left goes right.</source>
        <translation>Las dos almohadillas cambian de lado: la derecha a la izquierda, la izquierda a la derecha.</translation>
    </message>
    <message>
        <source>The pads come off, away from both armpits.</source>
        <translation>Las almohadillas se quitan de las dos axilas.</translation>
    </message>
    <message>
        <source>Two hands are dried with a towel.</source>
        <translation>Se secan dos manos con una toalla.</translation>
    </message>
    <message>
        <source>Two feet are dried with a towel.</source>
        <translation>Se secan dos pies con una toalla.</translation>
    </message>
    <message>
        <source>Tray, plate and grid stand upright and drip dry.</source>
        <translation>La bandeja, la placa y la rejilla están de pie y se secan.</translation>
    </message>
    <message>
        <source>A hand. Under a magnifying glass: a cut and red spots.</source>
        <translation>Una mano. Bajo una lupa: un corte y manchas rojas.</translation>
    </message>
    <message>
        <source>A foot. Under a magnifying glass: a cut and red spots.</source>
        <translation>Un pie. Bajo una lupa: un corte y manchas rojas.</translation>
    </message>
    <message>
        <source>One arm raised. Under a magnifying glass: red spots in the armpit.</source>
        <translation>Un brazo en alto. Bajo una lupa: manchas rojas en la axila.</translation>
    </message>
    <message>
        <source>An antiperspirant beside an armpit, struck out. Below it: 24 hours.</source>
        <translation>Un antitranspirante junto a una axila, tachado. Debajo: 24 horas.</translation>
    </message>
    <message>
        <source>A razor beside an armpit, struck out. Below it: three days.</source>
        <translation>Una maquinilla de afeitar junto a una axila, tachada. Debajo: tres días.</translation>
    </message>
    <message>
        <source>Somebody has both hands in trays. A helper stands close by, a finger on the knob.</source>
        <translation>Alguien tiene las dos manos en bandejas. Quien ayuda está al lado, con un dedo en el mando giratorio.</translation>
    </message>
    <message>
        <source>Somebody seated: the right hand in one tray, the right foot in another. The left ones rest outside.</source>
        <translation>Una persona sentada: la mano derecha en una bandeja, el pie derecho en otra. La mano y el pie izquierdos descansan fuera.</translation>
    </message>
    <message>
        <source>Somebody seated: the left hand in one tray, the left foot in another. The right ones rest outside.</source>
        <translation>Una persona sentada: la mano izquierda en una bandeja, el pie izquierdo en otra. La mano y el pie derechos descansan fuera.</translation>
    </message>
    <message>
        <source>A jug with %1 is poured into a low tray. A line across the tray marks the level.</source>
        <translation>Se vierte una jarra con %1 en una bandeja baja. Una línea a lo ancho de la bandeja marca el nivel.</translation>
    </message>
</context>
<context>
    <name>FileChoice</name>
    <message>
        <source>Look again</source>
        <translation>Mirar otra vez</translation>
    </message>
    <message>
        <source>Put a file that ends in %1 into %2, then look again.</source>
        <translation>Ponga en %2 un archivo que termine en %1 y mire otra vez.</translation>
    </message>
    <message>
        <source>Choose a file</source>
        <translation>Elegir un archivo</translation>
    </message>
    <message>
        <source>Chosen: %1</source>
        <translation>Elegido: %1</translation>
    </message>
</context>
<context>
    <name>FirstStart</name>
    <message>
        <source>Before you begin</source>
        <translation>Antes de empezar</translation>
    </message>
    <message>
        <source>Who is it for?</source>
        <translation>¿Para quién es?</translation>
    </message>
    <message>
        <source>Where?</source>
        <translation>¿Dónde?</translation>
    </message>
    <message>
        <source>Your machine</source>
        <translation>Su aparato</translation>
    </message>
    <message>
        <source>Health questions</source>
        <translation>Preguntas de salud</translation>
    </message>
    <message>
        <source>When should we ask?</source>
        <translation>¿A qué hora le preguntamos?</translation>
    </message>
    <message>
        <source>Step %1 of %2</source>
        <translation>Paso %1 de %2</translation>
    </message>
    <message>
        <source>Some answers mean no session until a clinician has said yes. Your answers stay on this phone.</source>
        <translation>Con algunas respuestas no puede haber ninguna sesión hasta que un profesional sanitario la autorice. Sus respuestas quedan en este teléfono.</translation>
    </message>
    <message>
        <source>Once a day Firstdew asks how damp your skin is. Two taps are enough.</source>
        <translation>Una vez al día Firstdew pregunta por la humedad de su piel. Bastan dos toques.</translation>
    </message>
    <message>
        <source>Check-in at</source>
        <translation>Anotación a las</translation>
    </message>
    <message>
        <source>I have read this</source>
        <translation>Lo he leído</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Listo</translation>
    </message>
    <message>
        <source>Next</source>
        <translation>Siguiente</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Paso anterior</translation>
    </message>
    <message>
        <source>Choose every place you treat. It can be changed in Settings.</source>
        <translation>Elija cada zona que trata. Se puede cambiar en Ajustes.</translation>
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
        <translation>Esta hoja de cuidados no está completa. Vuelva atrás y rellene lo marcado.</translation>
    </message>
    <message>
        <source>Look at it</source>
        <translation>Verlo</translation>
    </message>
    <message>
        <source>On the screen</source>
        <translation>En la pantalla</translation>
    </message>
    <message>
        <source>In their Firstdew: Plan, Care sheet, Scan the code.</source>
        <translation>En el Firstdew de esa persona: Plan, Hoja de cuidados, Leer el código.</translation>
    </message>
    <message>
        <source>The care sheet as a QR code</source>
        <translation>La hoja de cuidados como código QR</translation>
    </message>
    <message>
        <source>On paper</source>
        <translation>En papel</translation>
    </message>
    <message>
        <source>Print or share the page</source>
        <translation>Imprimir o compartir la página</translation>
    </message>
    <message>
        <source>The page as it will be printed</source>
        <translation>La página como se imprimirá</translation>
    </message>
    <message>
        <source>As a file</source>
        <translation>Como archivo</translation>
    </message>
    <message>
        <source>Save the page</source>
        <translation>Guardar la página</translation>
    </message>
    <message>
        <source>Share the file</source>
        <translation>Compartir el archivo</translation>
    </message>
    <message>
        <source>Save the file</source>
        <translation>Guardar el archivo</translation>
    </message>
</context>
<context>
    <name>HealthForm</name>
    <message>
        <source>No</source>
        <translation>No</translation>
    </message>
    <message>
        <source>Yes</source>
        <translation>Sí</translation>
    </message>
    <message>
        <source>No session until a clinician has said that it is safe for you.</source>
        <translation>Ninguna sesión hasta que un profesional sanitario diga que es seguro para usted.</translation>
    </message>
    <message>
        <source>Ask a clinician first and note who said yes.</source>
        <translation>Consulte antes a un profesional sanitario y anote quién dijo que sí.</translation>
    </message>
    <message>
        <source>Usually no obstacle; one hospital lists it. Mention it to your clinician.</source>
        <translation>Normalmente no lo impide; un hospital lo menciona. Coméntelo con su profesional sanitario.</translation>
    </message>
    <message>
        <source>Approved by %1 until %2.</source>
        <translation>Autorizado por %1. Vale hasta: %2.</translation>
    </message>
    <message>
        <source>The approval by %1 has expired. Ask again before your next session.</source>
        <translation>La autorización de %1 ha caducado. Pregunte otra vez antes de su próxima sesión.</translation>
    </message>
    <message>
        <source>You answered yes on %1. That counts until a clinician has approved treatment.</source>
        <translation>El %1 respondió que sí. Eso vale hasta que un profesional sanitario lo haya autorizado.</translation>
    </message>
</context>
<context>
    <name>HealthQuestions</name>
    <message>
        <source>Health questions</source>
        <translation>Preguntas de salud</translation>
    </message>
    <message>
        <source>Some answers mean no session until a clinician has said yes. Your answers stay on this phone.</source>
        <translation>Con algunas respuestas no puede haber ninguna sesión hasta que un profesional sanitario la autorice. Sus respuestas quedan en este teléfono.</translation>
    </message>
    <message>
        <source>Not approved: %1</source>
        <translation>Sin autorizar: %1</translation>
    </message>
    <message>
        <source>Who said that it is safe?</source>
        <translation>¿Quién dijo que es seguro?</translation>
    </message>
    <message>
        <source>Record the approval</source>
        <translation>Anotar la autorización</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Guardar</translation>
    </message>
    <message>
        <source>Name of the doctor or nurse. It goes into your record.</source>
        <translation>Nombre del médico o del profesional de enfermería. Se guarda en su historial.</translation>
    </message>
    <message>
        <source>On which day?</source>
        <translation>¿Qué día?</translation>
    </message>
</context>
<context>
    <name>KeepPage</name>
    <message>
        <source>Back-up, export and delete</source>
        <translation>Copiar, exportar y borrar</translation>
    </message>
    <message>
        <source>Firstdew sessions</source>
        <translation>Sesiones de Firstdew</translation>
    </message>
    <message>
        <source>A session is planned</source>
        <translation>Hay una sesión prevista</translation>
    </message>
    <message>
        <source>Done: %1</source>
        <translation>Hecho: %1</translation>
    </message>
    <message>
        <source>Done.</source>
        <translation>Hecho.</translation>
    </message>
    <message>
        <source>Your record is as it was.</source>
        <translation>Su historial está como estaba.</translation>
    </message>
    <message>
        <source>Back-up</source>
        <translation>Copia de seguridad</translation>
    </message>
    <message>
        <source>One encrypted file (OpenPGP) with everything. Without the passphrase nobody can open it – not even you.</source>
        <translation>Un archivo cifrado (OpenPGP) con todo. Sin la contraseña nadie puede abrirlo, usted tampoco.</translation>
    </message>
    <message>
        <source>Passphrase</source>
        <translation>Contraseña</translation>
    </message>
    <message>
        <source>At least eight characters.</source>
        <translation>Ocho caracteres como mínimo.</translation>
    </message>
    <message>
        <source>Make a back-up</source>
        <translation>Hacer una copia</translation>
    </message>
    <message>
        <source>Restore</source>
        <translation>Restaurar</translation>
    </message>
    <message>
        <source>Passphrase of the back-up</source>
        <translation>Contraseña de la copia</translation>
    </message>
    <message>
        <source>What is here now is replaced. A copy of it is kept.</source>
        <translation>Lo que hay ahora se sustituye. Se guarda una copia de ello.</translation>
    </message>
    <message>
        <source>Export</source>
        <translation>Exportar</translation>
    </message>
    <message>
        <source>These files are not encrypted; share them with care.</source>
        <translation>Estos archivos no están cifrados; compártalos con cuidado.</translation>
    </message>
    <message>
        <source>Everything, as JSON</source>
        <translation>Todo, como JSON</translation>
    </message>
    <message>
        <source>For medical records, as FHIR</source>
        <translation>Para historias clínicas, como FHIR</translation>
    </message>
    <message>
        <source>Planned sessions, for a calendar</source>
        <translation>Sesiones previstas, para un calendario</translation>
    </message>
    <message>
        <source>Import</source>
        <translation>Importar</translation>
    </message>
    <message>
        <source>Add from this file</source>
        <translation>Añadir de este archivo</translation>
    </message>
    <message>
        <source>Delete</source>
        <translation>Borrar</translation>
    </message>
    <message>
        <source>Delete this person</source>
        <translation>Borrar a esta persona</translation>
    </message>
    <message>
        <source>The record of %1 is deleted for good.</source>
        <translation>El historial de %1 se borra para siempre.</translation>
    </message>
    <message>
        <source>this person</source>
        <translation>esta persona</translation>
    </message>
    <message>
        <source>Delete everything</source>
        <translation>Borrar todo</translation>
    </message>
    <message>
        <source>Every record on this phone is deleted for good.</source>
        <translation>Todos los historiales de este teléfono se borran para siempre.</translation>
    </message>
    <message>
        <source>Keep things as they are</source>
        <translation>Dejar todo como está</translation>
    </message>
    <message>
        <source>Tables for a spreadsheet, as CSV</source>
        <translation>Tablas para una hoja de cálculo, como CSV</translation>
    </message>
    <message>
        <source>Share it</source>
        <translation>Compartir</translation>
    </message>
    <message>
        <source>Hide what I type</source>
        <translation>Ocultar lo que escribo</translation>
    </message>
    <message>
        <source>Show what I type</source>
        <translation>Mostrar lo que escribo</translation>
    </message>
    <message>
        <source>Add as a new person</source>
        <translation>Añadir como persona nueva</translation>
    </message>
    <message>
        <source>Gone for good, here and in the copies on this phone. Files that you exported or shared stay where they are. Make a back-up first if in doubt.</source>
        <translation>Se borra para siempre, aquí y en las copias de este teléfono. Los archivos que haya exportado o compartido se quedan donde están. En caso de duda, haga antes una copia de seguridad.</translation>
    </message>
</context>
<context>
    <name>LimitsCard</name>
    <message>
        <source>Limits</source>
        <translation>Límites</translation>
    </message>
    <message>
        <source>Your birthday is not set, so the lower limits for children count.</source>
        <translation>Falta su fecha de nacimiento, así que valen los límites más bajos, los de niños.</translation>
    </message>
    <message>
        <source>Adult beside the child: %1</source>
        <translation>Persona adulta acompañante: %1</translation>
    </message>
    <message>
        <source>at most %1</source>
        <translation>como máximo %1</translation>
    </message>
    <message>
        <source>not used</source>
        <translation>no se usa</translation>
    </message>
</context>
<context>
    <name>MachineForm</name>
    <message>
        <source>Make or model</source>
        <translation>Marca o modelo</translation>
    </message>
    <message>
        <source>Optional</source>
        <translation>Opcional</translation>
    </message>
    <message>
        <source>Current it gives (see its instructions)</source>
        <translation>Corriente que da (vea sus instrucciones)</translation>
    </message>
    <message>
        <source>Choose at least one.</source>
        <translation>Elija al menos una.</translation>
    </message>
    <message>
        <source>How is polarity reversed?</source>
        <translation>¿Cómo se invierte la polaridad?</translation>
    </message>
    <message>
        <source>By swapping the leads</source>
        <translation>Cambiando los cables</translation>
    </message>
    <message>
        <source>By a switch</source>
        <translation>Con un interruptor</translation>
    </message>
    <message>
        <source>Is there a remote control?</source>
        <translation>¿Hay mando a distancia?</translation>
    </message>
    <message>
        <source>No</source>
        <translation>No</translation>
    </message>
    <message>
        <source>Yes</source>
        <translation>Sí</translation>
    </message>
    <message>
        <source>What does it run on?</source>
        <translation>¿Con qué funciona?</translation>
    </message>
    <message>
        <source>Batteries</source>
        <translation>Pilas</translation>
    </message>
    <message>
        <source>Mains adapter</source>
        <translation>Adaptador de red</translation>
    </message>
    <message>
        <source>Size of one armpit pad in cm² (length × width)</source>
        <translation>Tamaño de una almohadilla de axila en cm² (largo × ancho)</translation>
    </message>
    <message>
        <source>Optional. Until it is entered, the limit for armpits stays low.</source>
        <translation>Opcional. Mientras no lo indique, el límite para las axilas sigue bajo.</translation>
    </message>
    <message>
        <source>By exchanging the armpit pads</source>
        <translation>Intercambiando las almohadillas de las axilas</translation>
    </message>
</context>
<context>
    <name>MachinePage</name>
    <message>
        <source>Machine and kit</source>
        <translation>Aparato y material</translation>
    </message>
    <message>
        <source>Batteries</source>
        <translation>Pilas</translation>
    </message>
    <message numerus="yes">
        <source>About %n session(s) left. A set of four alkaline cells lasts about three.</source>
        <translation>
            <numerusform>Queda aproximadamente %n sesión. Cuatro pilas alcalinas duran unas tres.</numerusform>
            <numerusform>Quedan aproximadamente %n sesiones. Cuatro pilas alcalinas duran unas tres.</numerusform>
        </translation>
    </message>
    <message>
        <source>Say when you put in new ones, and Firstdew counts the sessions.</source>
        <translation>Indíquelo cuando ponga pilas nuevas, y Firstdew cuenta las sesiones.</translation>
    </message>
    <message>
        <source>New batteries put in</source>
        <translation>Pilas nuevas puestas</translation>
    </message>
    <message>
        <source>Machine</source>
        <translation>Aparato</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Guardar</translation>
    </message>
    <message>
        <source>Where it is used</source>
        <translation>Dónde se usa</translation>
    </message>
    <message>
        <source>The batteries are probably used up. Put in new ones.</source>
        <translation>Es probable que las pilas estén gastadas. Ponga unas nuevas.</translation>
    </message>
</context>
<context>
    <name>MakeSheetPage</name>
    <message>
        <source>Make a care sheet</source>
        <translation>Hacer una hoja de cuidados</translation>
    </message>
    <message>
        <source>Call me before you go on.</source>
        <translation>Llámeme antes de seguir.</translation>
    </message>
    <message>
        <source>Check how you do it with Firstdew, do three more sessions, then call me.</source>
        <translation>Compruebe con Firstdew cómo lo hace, haga tres sesiones más y luego llámeme.</translation>
    </message>
    <message>
        <source>See your doctor about other treatments.</source>
        <translation>Hable con su médico de otros tratamientos.</translation>
    </message>
    <message>
        <source>None</source>
        <translation>Ninguno</translation>
    </message>
    <message>
        <source>Days I choose</source>
        <translation>Días que elijo</translation>
    </message>
    <message>
        <source>For whom</source>
        <translation>Para quién</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nombre</translation>
    </message>
    <message>
        <source>Optional. It stands on the paper alone, not in the code.</source>
        <translation>Opcional. Solo figura en el papel, no en el código.</translation>
    </message>
    <message>
        <source>Age</source>
        <translation>Edad</translation>
    </message>
    <message>
        <source>Adult</source>
        <translation>Persona adulta</translation>
    </message>
    <message>
        <source>Under 18</source>
        <translation>Menor de 18</translation>
    </message>
    <message>
        <source>Where to treat</source>
        <translation>Dónde tratar</translation>
    </message>
    <message>
        <source>Current</source>
        <translation>Corriente</translation>
    </message>
    <message>
        <source>As it suits the person</source>
        <translation>Según la persona</translation>
    </message>
    <message>
        <source>Limit, direct current</source>
        <translation>Límite, corriente continua</translation>
    </message>
    <message>
        <source>Limit, pulsed current</source>
        <translation>Límite, corriente pulsada</translation>
    </message>
    <message>
        <source>Size of one armpit pad</source>
        <translation>Tamaño de una almohadilla de axila</translation>
    </message>
    <message>
        <source>Course</source>
        <translation>Ciclo</translation>
    </message>
    <message>
        <source>Tap the days of the sessions. Day 1 is the first.</source>
        <translation>Toque los días de las sesiones. El día 1 es el primero.</translation>
    </message>
    <message>
        <source>Day %1</source>
        <translation>Día %1</translation>
    </message>
    <message>
        <source>Another week</source>
        <translation>Otra semana</translation>
    </message>
    <message>
        <source>First session, for the dates on paper</source>
        <translation>Primera sesión, para las fechas del papel</translation>
    </message>
    <message>
        <source>Leave the dates open</source>
        <translation>Dejar las fechas abiertas</translation>
    </message>
    <message>
        <source>Afterwards</source>
        <translation>Después</translation>
    </message>
    <message>
        <source>Review</source>
        <translation>Revisión</translation>
    </message>
    <message>
        <source>Without a review</source>
        <translation>Sin revisión</translation>
    </message>
    <message>
        <source>If the course does not help</source>
        <translation>Si el ciclo no ayuda</translation>
    </message>
    <message>
        <source>In your own words</source>
        <translation>Con sus propias palabras</translation>
    </message>
    <message>
        <source>From whom</source>
        <translation>De quién</translation>
    </message>
    <message>
        <source>Your name</source>
        <translation>Su nombre</translation>
    </message>
    <message>
        <source>Whom to call, with a number</source>
        <translation>A quién llamar, con número</translation>
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
        <translation>Tiempo para las manos</translation>
    </message>
    <message>
        <source>How long the voice waits where both hands are in the water.</source>
        <translation>Lo que espera la voz cuando ambas manos están en el agua.</translation>
    </message>
    <message>
        <source>To turn up</source>
        <translation>Para subir</translation>
    </message>
    <message>
        <source>To turn down</source>
        <translation>Para bajar</translation>
    </message>
    <message>
        <source>To swap</source>
        <translation>Para cambiar la polaridad</translation>
    </message>
    <message>
        <source>Hand it over</source>
        <translation>Entregar</translation>
    </message>
    <message>
        <source>Level to begin with at home</source>
        <translation>Nivel para empezar en casa</translation>
    </message>
</context>
<context>
    <name>MonthDots</name>
    <message>
        <source>Dampness over time, %1</source>
        <translation>Evolución de la humedad, %1</translation>
    </message>
    <message>
        <source>No check-in in these weeks. Tap a day to add one.</source>
        <translation>Ninguna anotación en estas semanas. Toque un día para añadir una.</translation>
    </message>
    <message>
        <source>A bar under a day is a session. Tap a day to see and correct it.</source>
        <translation>Una barra bajo un día es una sesión. Toque un día para verlo y corregirlo.</translation>
    </message>
    <message>
        <source>Tap a day to see and correct it.</source>
        <translation>Toque un día para verlo y corregirlo.</translation>
    </message>
    <message>
        <source>nothing noted</source>
        <translation>nada anotado</translation>
    </message>
</context>
<context>
    <name>MovePage</name>
    <message>
        <source>Move to another phone</source>
        <translation>Pasar a otro teléfono</translation>
    </message>
    <message>
        <source>Your record goes to the other phone as one encrypted file. Which phone is this?</source>
        <translation>Su historial pasa al otro teléfono en un solo archivo cifrado. ¿Cuál de los dos es este teléfono?</translation>
    </message>
    <message>
        <source>The old one: send from here</source>
        <translation>El viejo: enviar desde aquí</translation>
    </message>
    <message>
        <source>The new one: bring it here</source>
        <translation>El nuevo: traerlo aquí</translation>
    </message>
    <message>
        <source>1. Choose a passphrase</source>
        <translation>1. Elija una contraseña</translation>
    </message>
    <message>
        <source>You type it once more on the new phone. Without it nobody can open the file – not even you.</source>
        <translation>La escribe otra vez en el teléfono nuevo. Sin ella nadie puede abrir el archivo, ni siquiera usted.</translation>
    </message>
    <message>
        <source>Passphrase</source>
        <translation>Contraseña</translation>
    </message>
    <message>
        <source>At least eight characters.</source>
        <translation>Ocho caracteres como mínimo.</translation>
    </message>
    <message>
        <source>Hide what I type</source>
        <translation>Ocultar lo que escribo</translation>
    </message>
    <message>
        <source>Show what I type</source>
        <translation>Mostrar lo que escribo</translation>
    </message>
    <message>
        <source>2. Send the file to the new phone</source>
        <translation>2. Envíe el archivo al teléfono nuevo</translation>
    </message>
    <message>
        <source>Use a cable, a memory card, or a message to yourself.</source>
        <translation>Use un cable, una tarjeta de memoria o un mensaje a su propio nombre.</translation>
    </message>
    <message>
        <source>3. On the new phone</source>
        <translation>3. En el teléfono nuevo</translation>
    </message>
    <message>
        <source>Open Firstdew there and tap “Move from another phone”. Choose the file and type the passphrase. It then has to show these numbers:</source>
        <translation>Abra allí Firstdew y toque «Traer de otro teléfono». Elija el archivo y escriba la contraseña. Entonces tiene que mostrar estos números:</translation>
    </message>
    <message>
        <source>Keep this phone as it is until you have seen them.</source>
        <translation>Deje este teléfono como está hasta que los haya visto.</translation>
    </message>
    <message>
        <source>Bring the record here</source>
        <translation>Traer el historial aquí</translation>
    </message>
    <message>
        <source>On the old phone, open Settings, “Move to another phone”, and send the file to this one. Then choose it here.</source>
        <translation>En el teléfono viejo, abra Ajustes, «Pasar a otro teléfono», y envíe el archivo a este. Luego elíjalo aquí.</translation>
    </message>
    <message>
        <source>Choose the file</source>
        <translation>Elegir el archivo</translation>
    </message>
    <message>
        <source>Its passphrase</source>
        <translation>Su contraseña</translation>
    </message>
    <message>
        <source>The file holds</source>
        <translation>El archivo contiene</translation>
    </message>
    <message>
        <source>What is on this phone now is replaced. A copy of it is kept.</source>
        <translation>Lo que hay ahora en este teléfono se reemplaza. Se guarda una copia.</translation>
    </message>
    <message>
        <source>Everything is here.</source>
        <translation>Todo está aquí.</translation>
    </message>
    <message>
        <source>Compare the numbers with the old phone. Then you can delete the record there.</source>
        <translation>Compare los números con el teléfono viejo. Después puede borrar allí el historial.</translation>
    </message>
    <message>
        <source>What was on this phone before is kept in %1</source>
        <translation>Lo que había antes en este teléfono se guarda en %1</translation>
    </message>
    <message>
        <source>Make the file</source>
        <translation>Crear el archivo</translation>
    </message>
    <message>
        <source>Send the file</source>
        <translation>Enviar el archivo</translation>
    </message>
    <message>
        <source>Look into it</source>
        <translation>Mirar qué contiene</translation>
    </message>
    <message>
        <source>Use it here</source>
        <translation>Usarlo aquí</translation>
    </message>
    <message>
        <source>Replace what is here</source>
        <translation>Reemplazar lo que hay aquí</translation>
    </message>
    <message>
        <source>Go to Today</source>
        <translation>Ir a Hoy</translation>
    </message>
</context>
<context>
    <name>NextAction</name>
    <message>
        <source>Plan the first course</source>
        <translation>Planifique el primer ciclo</translation>
    </message>
    <message>
        <source>Next session: %1</source>
        <translation>Próxima sesión: %1</translation>
    </message>
    <message>
        <source>Why?</source>
        <translation>¿Por qué?</translation>
    </message>
    <message>
        <source>Start now</source>
        <translation>Empezar ahora</translation>
    </message>
    <message>
        <source>Choose the course</source>
        <translation>Elegir el ciclo</translation>
    </message>
    <message>
        <source>Go on to keeping dry</source>
        <translation>Pasar a mantener la piel seca</translation>
    </message>
    <message>
        <source>See the health questions</source>
        <translation>Ver las preguntas de salud</translation>
    </message>
    <message>
        <source>I already treat</source>
        <translation>Ya me trato</translation>
    </message>
    <message>
        <source>I did one</source>
        <translation>Ya hice una</translation>
    </message>
    <message>
        <source>Your care sheet says: %1</source>
        <translation>Su hoja de cuidados dice: %1</translation>
    </message>
    <message>
        <source>Say how it is now</source>
        <translation>Decir cómo está ahora</translation>
    </message>
    <message>
        <source>Go on to twelve sessions</source>
        <translation>Seguir hasta doce sesiones</translation>
    </message>
    <message>
        <source>Check how you do it</source>
        <translation>Revise cómo lo hace</translation>
    </message>
    <message>
        <source>Move it</source>
        <translation>Moverla</translation>
    </message>
    <message>
        <source>Move session %1</source>
        <translation>Mover la sesión %1</translation>
    </message>
</context>
<context>
    <name>NotNowSheet</name>
    <message>
        <source>Not this time</source>
        <translation>Esta vez no</translation>
    </message>
    <message>
        <source>The dampness has another cause</source>
        <translation>La humedad tiene otra causa</translation>
    </message>
    <message>
        <source>My skin needs a rest</source>
        <translation>Mi piel necesita descanso</translation>
    </message>
    <message>
        <source>No time</source>
        <translation>No tengo tiempo</translation>
    </message>
    <message>
        <source>I am away from the machine</source>
        <translation>No tengo el aparato aquí</translation>
    </message>
    <message>
        <source>Something else</source>
        <translation>Otra cosa</translation>
    </message>
    <message>
        <source>What&apos;s the reason? The answer goes into your record; the call comes back when a later check-in asks for it.</source>
        <translation>¿Qué lo impide? La respuesta queda en su historial; el aviso vuelve cuando una anotación posterior lo pida.</translation>
    </message>
</context>
<context>
    <name>OtherPage</name>
    <message>
        <source>Other treatments</source>
        <translation>Otros tratamientos</translation>
    </message>
    <message>
        <source>Note what else dries your skin. Dry spells in that time are left out of your outlook, and your prescriber sees it in the summary.</source>
        <translation>Anote qué más le seca la piel. Los periodos secos de ese tiempo no cuentan para el pronóstico, y su médico lo ve en el resumen.</translation>
    </message>
    <message>
        <source>What is it?</source>
        <translation>¿Qué es?</translation>
    </message>
    <message>
        <source>Its name</source>
        <translation>Nombre</translation>
    </message>
    <message>
        <source>Optional</source>
        <translation>Opcional</translation>
    </message>
    <message>
        <source>Where (none = everywhere)</source>
        <translation>Dónde (ninguna zona = en todas partes)</translation>
    </message>
    <message>
        <source>Works since</source>
        <translation>Actúa desde</translation>
    </message>
    <message>
        <source>Does it still work?</source>
        <translation>¿Sigue actuando?</translation>
    </message>
    <message>
        <source>Yes</source>
        <translation>Sí</translation>
    </message>
    <message>
        <source>It ended</source>
        <translation>Terminó</translation>
    </message>
    <message>
        <source>Last day</source>
        <translation>Último día</translation>
    </message>
    <message>
        <source>Remove %1</source>
        <translation>Quitar %1</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Guardar</translation>
    </message>
</context>
<context>
    <name>Outgoing</name>
    <message>
        <source>Handed over.</source>
        <translation>Entregado.</translation>
    </message>
    <message>
        <source>Saved as %1.</source>
        <translation>Guardado como %1.</translation>
    </message>
</context>
<context>
    <name>OutlookStrip</name>
    <message>
        <source>Chance of dampness by day, %1</source>
        <translation>Probabilidad de humedad por día, %1</translation>
    </message>
    <message>
        <source>No session planned</source>
        <translation>Ninguna sesión prevista</translation>
    </message>
    <message>
        <source>Session today</source>
        <translation>Sesión hoy</translation>
    </message>
    <message>
        <source>Session %1</source>
        <translation>Sesión %1</translation>
    </message>
    <message>
        <source>Bars come with the first session.</source>
        <translation>Las barras llegan con la primera sesión.</translation>
    </message>
    <message>
        <source>Planned session. The fuller a bar, the likelier it is damp by that day; after a session it starts again.</source>
        <translation>Sesión prevista. Cuanto más llena una barra, más probable es que la piel esté húmeda para ese día; tras una sesión empieza de nuevo.</translation>
    </message>
    <message>
        <source>session planned</source>
        <translation>sesión prevista</translation>
    </message>
    <message>
        <source>The fuller a bar, the likelier it is damp by that day.</source>
        <translation>Cuanto más llena una barra, más probable es que la piel esté húmeda para ese día.</translation>
    </message>
</context>
<context>
    <name>PaceChoice</name>
    <message>
        <source>Close together, done by %1</source>
        <translation>Seguidas, último día: %1</translation>
    </message>
    <message>
        <source>A day between, done by %1</source>
        <translation>Con un día en medio, último día: %1</translation>
    </message>
</context>
<context>
    <name>Page</name>
    <message>
        <source>Stage</source>
        <translation>Etapa</translation>
    </message>
    <message>
        <source>%1 completed</source>
        <translation>%1 completas</translation>
    </message>
    <message>
        <source>%1 interrupted</source>
        <translation>%1 interrumpidas</translation>
    </message>
    <message>
        <source>Sessions in the period</source>
        <translation>Sesiones en el periodo</translation>
    </message>
    <message>
        <source>Next session</source>
        <translation>Próxima sesión</translation>
    </message>
    <message numerus="yes">
        <source>%n earlier</source>
        <translation>
            <numerusform>%n anterior</numerusform>
            <numerusform>%n anteriores</numerusform>
        </translation>
    </message>
    <message>
        <source>Health questions: nothing answered with yes.</source>
        <translation>Preguntas de salud: ninguna respondida con sí.</translation>
    </message>
    <message>
        <source>Answered with yes: %1.</source>
        <translation>Respondido con sí: %1.</translation>
    </message>
    <message>
        <source>Approved by %1 on %2: %3.</source>
        <translation>Autorizado por %1 el %2: %3.</translation>
    </message>
    <message>
        <source>Machine: %1.</source>
        <translation>Aparato: %1.</translation>
    </message>
    <message>
        <source>direct and pulsed current</source>
        <translation>corriente continua y pulsada</translation>
    </message>
    <message>
        <source>direct current</source>
        <translation>corriente continua</translation>
    </message>
    <message>
        <source>Recorded by the person at home; not a medical device, no diagnosis. Machine&apos;s instructions, local rules and the clinician come first. Burns, blisters, faintness or palpitations: stop and seek help.</source>
        <translation>Anotado en casa por la propia persona; no es un producto sanitario ni hace diagnósticos. Las instrucciones del aparato, las normas locales y el profesional sanitario van primero. Quemaduras, ampollas, mareo o sensación de desmayo, o palpitaciones: pare y busque ayuda.</translation>
    </message>
    <message>
        <source>Iontophoresis summary</source>
        <translation>Resumen de iontoforesis</translation>
    </message>
    <message>
        <source>Name not given</source>
        <translation>Sin nombre</translation>
    </message>
    <message>
        <source>%1   ·   %2 to %3</source>
        <translation>%1   ·   %2 a %3</translation>
    </message>
    <message>
        <source>No site in use.</source>
        <translation>Ninguna zona en tratamiento.</translation>
    </message>
    <message>
        <source>%1 of %2 sessions done</source>
        <translation>%1 de %2 sesiones hechas</translation>
    </message>
    <message numerus="yes">
        <source>Batteries: about %n session(s) left.</source>
        <translation>
            <numerusform>Pilas: queda aproximadamente %n sesión.</numerusform>
            <numerusform>Pilas: quedan aproximadamente %n sesiones.</numerusform>
        </translation>
    </message>
    <message>
        <source>interrupted</source>
        <translation>interrumpida</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Día</translation>
    </message>
    <message>
        <source>Site</source>
        <translation>Zona</translation>
    </message>
    <message>
        <source>Current</source>
        <translation>Corriente</translation>
    </message>
    <message>
        <source>Highest</source>
        <translation>Máxima</translation>
    </message>
    <message>
        <source>Comfortable</source>
        <translation>Cómoda</translation>
    </message>
    <message>
        <source>Charge</source>
        <translation>Carga</translation>
    </message>
    <message>
        <source>Felt</source>
        <translation>Sensación</translation>
    </message>
    <message>
        <source>Sessions</source>
        <translation>Sesiones</translation>
    </message>
    <message numerus="yes">
        <source>%n earlier; all of them are in the exports.</source>
        <translation>
            <numerusform>%n anterior; está en las exportaciones.</numerusform>
            <numerusform>%n anteriores; todas están en las exportaciones.</numerusform>
        </translation>
    </message>
    <message>
        <source>The health questions have not been answered yet.</source>
        <translation>Las preguntas de salud aún no se han respondido.</translation>
    </message>
    <message>
        <source>Care sheet of %1, %2, for: %3.</source>
        <translation>Hoja de cuidados de %1, %2, para: %3.</translation>
    </message>
    <message>
        <source>The size of the armpit pads is not entered, so their limit is kept low.</source>
        <translation>No está indicado el tamaño de las almohadillas de axila; por eso su límite se mantiene bajo.</translation>
    </message>
    <message>
        <source>Health questions and prescription</source>
        <translation>Preguntas de salud y prescripción</translation>
    </message>
    <message numerus="yes">
        <source>Check-ins on %n day(s): %1.</source>
        <translation>
            <numerusform>Anotaciones en %n día: %1.</numerusform>
            <numerusform>Anotaciones en %n días: %1.</numerusform>
        </translation>
    </message>
    <message>
        <source>Days with a circumstance: %1.</source>
        <translation>Días con una circunstancia: %1.</translation>
    </message>
    <message>
        <source>Weighed: %1.</source>
        <translation>Pesajes: %1.</translation>
    </message>
    <message>
        <source>Severity is asked in the app&apos;s own words, in four steps after the HDSS.</source>
        <translation>La gravedad se pregunta con palabras propias de la aplicación, en cuatro grados según la HDSS.</translation>
    </message>
    <message>
        <source>Figures of this period</source>
        <translation>Cifras de este periodo</translation>
    </message>
    <message>
        <source>Stop and look</source>
        <translation>Parar y mirar</translation>
    </message>
    <message>
        <source>It does not work yet</source>
        <translation>Todavía no funciona</translation>
    </message>
    <message>
        <source>It works in part</source>
        <translation>Funciona en parte</translation>
    </message>
    <message>
        <source>It works</source>
        <translation>Funciona</translation>
    </message>
    <message>
        <source>Too early to say</source>
        <translation>Demasiado pronto para decirlo</translation>
    </message>
    <message numerus="yes">
        <source>The meter was above the limit in %n session(s), last on %1.</source>
        <translation>
            <numerusform>El medidor estuvo por encima del límite en %n sesión, el %1.</numerusform>
            <numerusform>El medidor estuvo por encima del límite en %n sesiones, la última el %1.</numerusform>
        </translation>
    </message>
    <message>
        <source>The course brought no response (%1). Talk about other treatments.</source>
        <translation>El ciclo no dio resultado (%1). Hablen de otros tratamientos.</translation>
    </message>
    <message>
        <source>The review named on the care sheet is due (%1).</source>
        <translation>Toca la revisión indicada en la hoja de cuidados (%1).</translation>
    </message>
    <message numerus="yes">
        <source>There are %n question(s) for you, below.</source>
        <translation>
            <numerusform>Hay %n pregunta para usted, abajo.</numerusform>
            <numerusform>Hay %n preguntas para usted, abajo.</numerusform>
        </translation>
    </message>
    <message>
        <source>no birth date entered</source>
        <translation>sin fecha de nacimiento</translation>
    </message>
    <message numerus="yes">
        <source>child, %n year(s)</source>
        <translation>
            <numerusform>menor, %n año</numerusform>
            <numerusform>menor, %n años</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>adult, %n year(s)</source>
        <translation>
            <numerusform>persona adulta, %n año</numerusform>
            <numerusform>persona adulta, %n años</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 a %2</translation>
    </message>
    <message>
        <source>damp days a week: %1</source>
        <translation>días húmedos por semana: %1</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>site: its verdict</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>For you to do</source>
        <translation>Lo que se le pide</translation>
    </message>
    <message>
        <source>Nothing at present.</source>
        <translation>No hay nada pendiente.</translation>
    </message>
    <message numerus="yes">
        <source>%1, for %n second(s)</source>
        <translation>
            <numerusform>%1, durante %n segundo</numerusform>
            <numerusform>%1, durante %n segundos</numerusform>
        </translation>
    </message>
    <message>
        <source>Skin and current in this period</source>
        <translation>Piel y corriente en este periodo</translation>
    </message>
    <message>
        <source>Skin</source>
        <translation>Piel</translation>
    </message>
    <message>
        <source>Nothing recorded.</source>
        <translation>Nada registrado.</translation>
    </message>
    <message>
        <source>Above the limit</source>
        <translation>Por encima del límite</translation>
    </message>
    <message>
        <source>No sessions in this period.</source>
        <translation>Sin sesiones en este periodo.</translation>
    </message>
    <message>
        <source>Limits now</source>
        <translation>Límites ahora</translation>
    </message>
    <message>
        <source>%1 on %2</source>
        <comment>score on day</comment>
        <translation>%1 el %2</translation>
    </message>
    <message>
        <source>Course</source>
        <translation>Ciclo</translation>
    </message>
    <message numerus="yes">
        <source>%n of them on another day than planned</source>
        <translation>
            <numerusform>%n de ellas en otro día que el previsto</numerusform>
            <numerusform>%n de ellas en otro día que el previsto</numerusform>
        </translation>
    </message>
    <message>
        <source>Highest comfortable in the period</source>
        <translation>Lectura cómoda máxima en el periodo</translation>
    </message>
    <message>
        <source>Usual dry spell, all time</source>
        <translation>Periodo seco habitual, en total</translation>
    </message>
    <message>
        <source>Other treatments</source>
        <translation>Otros tratamientos</translation>
    </message>
    <message>
        <source>Dry spells in this time are left out of the outlook.</source>
        <translation>Los periodos secos de ese tiempo no cuentan para el pronóstico.</translation>
    </message>
    <message>
        <source>Taught: %1.</source>
        <translation>Sesión guiada: %1.</translation>
    </message>
    <message>
        <source>Seen: %1.</source>
        <translation>Se vio: %1.</translation>
    </message>
    <message>
        <source>%1, %2: at most %3</source>
        <translation>%1, %2: como máximo %3</translation>
    </message>
    <message>
        <source>Your treatment plan</source>
        <translation>Su plan de tratamiento</translation>
    </message>
    <message>
        <source>For: %1</source>
        <translation>Para: %1</translation>
    </message>
    <message>
        <source>From %1, %2</source>
        <translation>De %1, %2</translation>
    </message>
    <message>
        <source>The app or the machine may show a lower limit. The lowest one counts.</source>
        <translation>La aplicación o el aparato pueden mostrar un límite menor. Vale el más bajo.</translation>
    </message>
    <message>
        <source>Current to zero and polarity swapped after each part.</source>
        <translation>Tras cada parte: corriente a cero y cambio de polaridad.</translation>
    </message>
    <message>
        <source>In Firstdew: Plan, Care sheet, Scan the code.</source>
        <translation>En Firstdew: Plan, Hoja de cuidados, Leer el código.</translation>
    </message>
    <message>
        <source>Day %1</source>
        <translation>Día %1</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>weekday and day</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>Your sessions</source>
        <translation>Sus sesiones</translation>
    </message>
    <message>
        <source>Tick each session when it is done.</source>
        <translation>Marque cada sesión cuando esté hecha.</translation>
    </message>
    <message>
        <source>If you begin on another day, every day moves along.</source>
        <translation>Si empieza otro día, todos los días se mueven igual.</translation>
    </message>
    <message>
        <source>Day 1 is the day of your first session.</source>
        <translation>El día 1 es el de su primera sesión.</translation>
    </message>
    <message>
        <source>Firstdew tells you when the next one is due.</source>
        <translation>Firstdew le dice cuándo toca la siguiente.</translation>
    </message>
    <message>
        <source>Look at the skin. Cover small cuts with jelly.</source>
        <translation>Mire la piel. Cubra cortes pequeños con vaselina.</translation>
    </message>
    <message>
        <source>Soak the pads.</source>
        <translation>Empape las almohadillas.</translation>
    </message>
    <message>
        <source>Plate in, grid over it, then warm water.</source>
        <translation>La placa dentro, la rejilla encima, luego agua templada.</translation>
    </message>
    <message>
        <source>Put the pads on. Switch on: the meter shows zero.</source>
        <translation>Ponga las almohadillas. Encienda: el medidor marca cero.</translation>
    </message>
    <message>
        <source>Skin under water. Switch on: the meter shows zero.</source>
        <translation>Piel bajo el agua. Encienda: el medidor marca cero.</translation>
    </message>
    <message>
        <source>Turn up slowly. It may prickle. It must not hurt.</source>
        <translation>Suba despacio. Puede hormiguear. No debe doler.</translation>
    </message>
    <message>
        <source>Between the parts: down to zero, swap or change sides, up again.</source>
        <translation>Entre las partes: baje a cero, cambie la polaridad o el lado y suba.</translation>
    </message>
    <message>
        <source>Between the parts: down to zero, swap, up again.</source>
        <translation>Entre las partes: baje a cero, cambie la polaridad y suba.</translation>
    </message>
    <message>
        <source>Down to zero, machine off. Then the pads come off.</source>
        <translation>Baje a cero, apague. Luego quite las almohadillas.</translation>
    </message>
    <message>
        <source>Down to zero, machine off. Then take your hands or feet out.</source>
        <translation>Baje a cero, apague. Luego saque manos o pies.</translation>
    </message>
    <message>
        <source>An adult stays beside the child the whole time.</source>
        <translation>Una persona adulta se queda junto al niño todo el tiempo.</translation>
    </message>
    <message>
        <source>Both hands in the water: somebody stays beside you.</source>
        <translation>Ambas manos en el agua: alguien se queda a su lado.</translation>
    </message>
    <message>
        <source>Each session: %1</source>
        <translation>Cada sesión: %1</translation>
    </message>
    <message>
        <source>When to stop</source>
        <translation>Cuándo parar</translation>
    </message>
    <message>
        <source>It hurts, you feel faint, or your heart races: turn down to zero, machine off, then take your hands or feet out.</source>
        <translation>Duele, siente mareo o que va a desmayarse, o el corazón se acelera: baje a cero, apague y luego saque manos o pies.</translation>
    </message>
    <message>
        <source>A burn or a blister: leave the machine off until a clinician has looked at it.</source>
        <translation>Quemadura o ampolla: deje el aparato apagado hasta que la vea un profesional sanitario.</translation>
    </message>
    <message>
        <source>Pregnant, a new implant, or another health answer changed: leave the machine off and ask first.</source>
        <translation>Embarazo, un implante nuevo u otra respuesta de salud distinta: deje el aparato apagado y pregunte antes.</translation>
    </message>
    <message>
        <source>Call: %1</source>
        <translation>Llame a: %1</translation>
    </message>
    <message>
        <source>Afterwards</source>
        <translation>Después</translation>
    </message>
    <message>
        <source>Review: %1</source>
        <translation>Revisión: %1</translation>
    </message>
    <message>
        <source>If the course does not help: %1</source>
        <translation>Si el ciclo no ayuda: %1</translation>
    </message>
    <message>
        <source>Written with Firstdew, which is not a medical device. Follow your machine&apos;s instructions and your clinician.</source>
        <translation>Escrito con Firstdew, que no es un producto sanitario. Siga las instrucciones de su aparato y las de su profesional sanitario.</translation>
    </message>
    <message>
        <source>No session for now</source>
        <translation>Por ahora, ninguna sesión</translation>
    </message>
    <message>
        <source>Not started yet</source>
        <translation>Aún sin empezar</translation>
    </message>
    <message>
        <source>Look at the skin (%1): a burn was noted on %2. No session there until you have.</source>
        <translation>Mire la piel (%1): el %2 se anotó una quemadura. Hasta que la haya mirado, ninguna sesión ahí.</translation>
    </message>
    <message>
        <source>Look at the skin (%1): a blister was noted on %2. No session there until you have.</source>
        <translation>Mire la piel (%1): el %2 se anotó una ampolla. Hasta que la haya mirado, ninguna sesión ahí.</translation>
    </message>
    <message>
        <source>Is this treatment possible with %1 (answered yes on %2)? No session until a clinician has approved treatment.</source>
        <translation>¿Es posible el tratamiento con %1 (respuesta «sí» el %2)? Ninguna sesión hasta que un profesional sanitario lo autorice.</translation>
    </message>
    <message>
        <source>%1: %2 · %3</source>
        <comment>day: site · skin</comment>
        <translation>%1: %2 · %3</translation>
    </message>
    <message>
        <source>%1: %2 · %3 with a limit of %4</source>
        <comment>day: site · peak, limit</comment>
        <translation>%1: %2 · %3 con un límite de %4</translation>
    </message>
    <message>
        <source>%1 · %2: %3. %4.</source>
        <comment>kind of current · sites: limit. Who set it.</comment>
        <translation>%1 · %2: %3. %4.</translation>
    </message>
    <message>
        <source>No prescriber has set a limit.</source>
        <translation>Ningún médico ha fijado un límite.</translation>
    </message>
    <message>
        <source>%1 on %2, to begin with</source>
        <comment>score on day</comment>
        <translation>%1 el %2, al principio</translation>
    </message>
    <message numerus="yes">
        <source>%n dry spell(s) seen to the end</source>
        <translation>
            <numerusform>%n periodo seco observado hasta el final</numerusform>
            <numerusform>%n periodos secos observados hasta el final</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n not seen to the end</source>
        <comment>dry spells</comment>
        <translation>
            <numerusform>%n no observado hasta el final</numerusform>
            <numerusform>%n no observados hasta el final</numerusform>
        </translation>
    </message>
    <message>
        <source>not known yet</source>
        <translation>aún no se sabe</translation>
    </message>
    <message>
        <source>planned from %1</source>
        <translation>previsto desde el %1</translation>
    </message>
    <message>
        <source>last session on %1</source>
        <translation>última sesión el %1</translation>
    </message>
    <message>
        <source>Severity 1–4, own answer (modelled on the HDSS)</source>
        <translation>Gravedad 1–4, respuesta propia (según el modelo HDSS)</translation>
    </message>
    <message>
        <source>Last check-in</source>
        <translation>Última anotación</translation>
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
            <numerusform>%n en el periodo</numerusform>
            <numerusform>%n en el periodo</numerusform>
        </translation>
    </message>
    <message>
        <source>Days a week noted as damp, also after heat or effort, 0 to 7. Dark: wet or dripping. Ticks: sessions.</source>
        <translation>Días húmedos por semana, también con calor o esfuerzo. Oscuro: mojado o más. Marcas: sesiones.</translation>
    </message>
    <message>
        <source> · %1 · %2</source>
        <comment>continues a line: current, its kind</comment>
        <translation> · %1 · %2</translation>
    </message>
    <message>
        <source>%1 · %2</source>
        <comment>milliamperes · kind of current</comment>
        <translation>%1 · %2</translation>
    </message>
    <message>
        <source>%1 · %2 (limit %3)</source>
        <comment>level · day</comment>
        <translation>%1 · %2 (límite %3)</translation>
    </message>
    <message>
        <source>%1 · %2</source>
        <comment>level · day</comment>
        <translation>%1 · %2</translation>
    </message>
    <message numerus="yes">
        <source>Days dry after the latest %n session(s). Hollow: first damp day unknown. Pointed: end not seen.</source>
        <translation>
            <numerusform>Días secos tras la última sesión. Hueco: final impreciso. En punta: final no observado.</numerusform>
            <numerusform>Días secos tras las últimas %n sesiones. Hueco: final impreciso. En punta: final no observado.</numerusform>
        </translation>
    </message>
    <message>
        <source>Begin with %1 or less.</source>
        <translation>Empiece con %1 o menos.</translation>
    </message>
    <message>
        <source>Armpit pads: %1.</source>
        <translation>Almohadillas de axila: %1.</translation>
    </message>
    <message>
        <source>Mean charge a session: %1.</source>
        <translation>Carga media por sesión: %1.</translation>
    </message>
    <message>
        <source>%1 a minute on %2</source>
        <translation>%1 por minuto el %2</translation>
    </message>
    <message>
        <source>Dry spells are reckoned from the last session to the first clammy day, with days not seen and top-ups made while still dry taken as what they are (interval- and right-censored). Response by HDSS: two steps strong, one good (Gülmez &amp; Solak, J Clin Med 2026;15:640, where %1 of %2 responded).</source>
        <translation>Los periodos secos se cuentan desde la última sesión hasta el primer día húmedo; los días no vistos y los refuerzos hechos con la piel aún seca se toman como lo que son (censura por intervalo y por la derecha). Respuesta por HDSS: dos grados, fuerte; uno, buena (Gülmez &amp; Solak, J Clin Med 2026;15:640, donde respondió el %1 de %2).</translation>
    </message>
    <message numerus="yes">
        <source>median %n day(s) (%1: %2 to %3)</source>
        <translation>
            <numerusform>mediana %n día (%1: %2 a %3)</numerusform>
            <numerusform>mediana %n días (%1: %2 a %3)</numerusform>
        </translation>
    </message>
    <message>
        <source>Batteries: probably used up.</source>
        <translation>Pilas: probablemente gastadas.</translation>
    </message>
    <message>
        <source>severity %1&#xa0;now, %2&#xa0;before</source>
        <translation>gravedad %1&#xa0;ahora, %2&#xa0;antes</translation>
    </message>
</context>
<context>
    <name>People</name>
    <message>
        <source>People</source>
        <translation>Personas</translation>
    </message>
    <message>
        <source>Each person has a record of their own; nothing is mixed.</source>
        <translation>Cada persona tiene su propio historial; nada se mezcla.</translation>
    </message>
    <message>
        <source>Me</source>
        <translation>Yo</translation>
    </message>
    <message>
        <source>Adult beside the child: %1</source>
        <translation>Persona adulta acompañante: %1</translation>
    </message>
    <message>
        <source>Shown now</source>
        <translation>En pantalla ahora</translation>
    </message>
    <message>
        <source>Show</source>
        <translation>Mostrar</translation>
    </message>
    <message>
        <source>Your details</source>
        <translation>Sus datos</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Guardar</translation>
    </message>
    <message>
        <source>Add somebody</source>
        <translation>Añadir a alguien</translation>
    </message>
    <message>
        <source>Add</source>
        <translation>Añadir</translation>
    </message>
</context>
<context>
    <name>PersonForm</name>
    <message>
        <source>First name, or what you like to be called</source>
        <translation>Nombre, o como quiera que le llamen</translation>
    </message>
    <message>
        <source>Optional</source>
        <translation>Opcional</translation>
    </message>
    <message>
        <source>Birthday</source>
        <translation>Fecha de nacimiento</translation>
    </message>
    <message>
        <source>The adult beside the child</source>
        <translation>Persona adulta acompañante</translation>
    </message>
    <message>
        <source>Children are treated only with medical advice and an adult beside them.</source>
        <translation>Los niños se tratan solo con consejo médico y con una persona adulta al lado.</translation>
    </message>
    <message>
        <source>Height in centimetres</source>
        <translation>Estatura en centímetros</translation>
    </message>
    <message>
        <source>Optional. With the weight it tells how large the treated skin is.</source>
        <translation>Opcional. Con el peso indica cuánta piel se trata.</translation>
    </message>
    <message>
        <source>Weight in kilograms</source>
        <translation>Peso en kilogramos</translation>
    </message>
    <message>
        <source>It sets your current limit. Without it, the children&apos;s limits apply.</source>
        <translation>Decide qué límites valen. Sin ella valen los de niños.</translation>
    </message>
    <message>
        <source>Write a number from %1 to %2.</source>
        <translation>Escriba un número de %1 a %2.</translation>
    </message>
</context>
<context>
    <name>PickRow</name>
    <message>
        <source>Choose</source>
        <translation>Elegir</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
</context>
<context>
    <name>Plan</name>
    <message>
        <source>Next session: %1</source>
        <translation>Próxima sesión: %1</translation>
    </message>
    <message numerus="yes">
        <source>The course will end %n day(s) late.</source>
        <translation>
            <numerusform>El ciclo se alarga %n día más de las cuatro semanas.</numerusform>
            <numerusform>El ciclo se alarga %n días más de las cuatro semanas.</numerusform>
        </translation>
    </message>
    <message>
        <source>Choose the course</source>
        <translation>Elegir el ciclo</translation>
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
        <translation>Pausa</translation>
    </message>
    <message>
        <source>Health questions</source>
        <translation>Preguntas de salud</translation>
    </message>
    <message>
        <source>To be answered</source>
        <translation>Por responder</translation>
    </message>
    <message>
        <source>Needs a clinician&apos;s approval</source>
        <translation>Algo lo impide</translation>
    </message>
    <message>
        <source>Answered</source>
        <translation>Respondidas</translation>
    </message>
    <message>
        <source>Days away</source>
        <translation>Días fuera</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 a %2</translation>
    </message>
    <message>
        <source>None</source>
        <translation>Ninguno</translation>
    </message>
    <message>
        <source>Care sheet</source>
        <translation>Hoja de cuidados</translation>
    </message>
    <message>
        <source>From %1, %2</source>
        <translation>De %1, %2</translation>
    </message>
    <message>
        <source>None yet</source>
        <translation>Aún ninguna</translation>
    </message>
    <message>
        <source>Say where you treat and with which machine; your limits and your plan then stand here.</source>
        <translation>Indique qué zona trata y con qué aparato; entonces aparecerán aquí sus límites y su plan.</translation>
    </message>
    <message>
        <source>Settings</source>
        <translation>Ajustes</translation>
    </message>
    <message>
        <source>Tap a day to move its session.</source>
        <translation>Toque un día para mover su sesión.</translation>
    </message>
    <message>
        <source>Taught by somebody</source>
        <translation>Sesión guiada</translation>
    </message>
    <message>
        <source>Not marked</source>
        <translation>Sin anotar</translation>
    </message>
    <message>
        <source>Practice</source>
        <translation>Práctica</translation>
    </message>
    <message>
        <source>A whole session with the machine off</source>
        <translation>Una sesión entera con el aparato apagado</translation>
    </message>
</context>
<context>
    <name>PracticeBanner</name>
    <message>
        <source>Practice: machine stays off</source>
        <translation>Práctica: el aparato sigue apagado</translation>
    </message>
    <message>
        <source>Leave practice</source>
        <translation>Salir de la práctica</translation>
    </message>
</context>
<context>
    <name>Prompts</name>
    <message>
        <source>Check everything on the list. Machine off, current at zero.</source>
        <translation>Compruebe todo lo de la lista. Aparato apagado, corriente a cero.</translation>
    </message>
    <message>
        <source>Hands in, in fifteen seconds. Keep them still under the water.</source>
        <translation>Dentro de quince segundos, meta las manos. Manténgalas quietas bajo el agua.</translation>
    </message>
    <message>
        <source>Raise the current slowly. It may prickle. It must not hurt.</source>
        <translation>Suba la corriente despacio. Puede hormiguear. No debe doler.</translation>
    </message>
    <message>
        <source>Hold still. Everything stays under water.</source>
        <translation>No se mueva. Todo sigue bajo el agua.</translation>
    </message>
    <message>
        <source>Lower the current to zero. Slowly.</source>
        <translation>Baje la corriente a cero. Despacio.</translation>
    </message>
    <message>
        <source>Machine off. Now take your hands or feet out, and dry your skin.</source>
        <translation>Apague el aparato. Ahora saque las manos o los pies y séquelos.</translation>
    </message>
    <message>
        <source>Look at the meter.</source>
        <translation>Mire el medidor.</translation>
    </message>
    <message>
        <source>Half way.</source>
        <translation>Va por la mitad.</translation>
    </message>
    <message>
        <source>One minute left.</source>
        <translation>Queda un minuto.</translation>
    </message>
    <message>
        <source>Ten seconds.</source>
        <translation>Diez segundos.</translation>
    </message>
    <message>
        <source>Done.</source>
        <translation>Terminado.</translation>
    </message>
    <message>
        <source>Too high! Lower the current now.</source>
        <translation>¡Demasiado alta! Baje la corriente ahora.</translation>
    </message>
    <message>
        <source>Machine off. Now.</source>
        <translation>Apague el aparato. Ahora.</translation>
    </message>
    <message>
        <source>Check the list. Then start again from the beginning.</source>
        <translation>Compruebe la lista. Luego empiece otra vez desde el principio.</translation>
    </message>
    <message>
        <source>Lower it a little, until it is comfortable.</source>
        <translation>Bájela un poco, hasta que sea cómoda.</translation>
    </message>
    <message>
        <source>Stopped. Current at zero, machine off. Then take your hands or feet out.</source>
        <translation>Detenido. Corriente a cero, aparato apagado, y después saque las manos o los pies.</translation>
    </message>
    <message>
        <source>This is how loud I am. Can you hear me over the water?</source>
        <translation>Así de alto hablo. ¿Me oye por encima del ruido del agua?</translation>
    </message>
    <message>
        <source>Switch the machine on. Is the meter at zero, and is it set to direct current? Then tap.</source>
        <translation>Encienda el aparato. ¿Está el medidor a cero y el aparato en corriente continua? Entonces toque la pantalla.</translation>
    </message>
    <message>
        <source>Switch the machine on. Is the meter at zero, and is the light for pulsed current on? Then tap.</source>
        <translation>Encienda el aparato. ¿Está el medidor a cero y la luz de corriente pulsada encendida? Entonces toque la pantalla.</translation>
    </message>
    <message>
        <source>Raise the current slowly with the remote. It may prickle. It must not hurt.</source>
        <translation>Suba la corriente despacio con el mando a distancia. Puede hormiguear. No debe doler.</translation>
    </message>
    <message>
        <source>Hold still. Both pads stay where they are.</source>
        <translation>No se mueva. Las dos almohadillas siguen en su sitio.</translation>
    </message>
    <message>
        <source>Lower the current to zero with the remote. Slowly.</source>
        <translation>Baje la corriente a cero con el mando a distancia. Despacio.</translation>
    </message>
    <message>
        <source>Is the meter at zero? Only then take your hands out. Dry them, and tap.</source>
        <translation>¿Está el medidor a cero? Solo entonces saque las manos. Séquelas y toque la pantalla.</translation>
    </message>
    <message>
        <source>Is the meter at zero? Only then take your hands out. Dry them, switch the machine off, and tap.</source>
        <translation>¿Está el medidor a cero? Solo entonces saque las manos. Séquelas, apague el aparato y toque la pantalla.</translation>
    </message>
    <message>
        <source>Current at zero? Now swap the two leads. Cover small cuts again. Then tap.</source>
        <translation>¿Corriente a cero? Ahora intercambie los dos cables. Cubra otra vez los cortes pequeños. Luego toque la pantalla.</translation>
    </message>
    <message>
        <source>Current at zero? Now flip the polarity switch. Cover small cuts again. Then tap.</source>
        <translation>¿Corriente a cero? Ahora cambie el interruptor de polaridad. Cubra otra vez los cortes pequeños. Luego toque la pantalla.</translation>
    </message>
    <message>
        <source>Current at zero? Soak the pads again, and swap the two leads. Then tap.</source>
        <translation>¿Corriente a cero? Vuelva a empapar las almohadillas e intercambie los dos cables. Luego toque la pantalla.</translation>
    </message>
    <message>
        <source>Current at zero? Soak the pads again, and flip the polarity switch. Then tap.</source>
        <translation>¿Corriente a cero? Vuelva a empapar las almohadillas y cambie el interruptor de polaridad. Luego toque la pantalla.</translation>
    </message>
    <message>
        <source>Current at zero? Soak the pads again, and exchange them, right with left. Then tap.</source>
        <translation>¿Corriente a cero? Vuelva a empapar las almohadillas e intercámbielas, la derecha por la izquierda. Luego toque la pantalla.</translation>
    </message>
    <message>
        <source>Current at zero? Now change to the other side. Cover small cuts again. Then tap.</source>
        <translation>¿Corriente a cero? Ahora pase al otro lado. Cubra otra vez los cortes pequeños. Luego toque la pantalla.</translation>
    </message>
    <message>
        <source>Machine off. Now take the pads off, and dry your skin.</source>
        <translation>Apague el aparato. Ahora quite las almohadillas y séquese la piel.</translation>
    </message>
    <message>
        <source>Dry your skin and the kit.</source>
        <translation>Seque la piel y el material.</translation>
    </message>
    <message>
        <source>I was away. What did the machine do? If you do not know, machine off. Then answer on the screen.</source>
        <translation>Me ausenté. ¿Qué hizo el aparato? Si no lo sabe, apague el aparato. Luego responda en la pantalla.</translation>
    </message>
    <message>
        <source>It is enough for today.</source>
        <translation>Ya es suficiente por hoy.</translation>
    </message>
    <message>
        <source>That was too long ago. This session is over. What you did is kept.</source>
        <translation>Ha pasado demasiado tiempo. Esta sesión ha terminado. Lo que hizo se conserva.</translation>
    </message>
    <message>
        <source>Stopped. Current at zero, machine off, then take the pads off.</source>
        <translation>Detenido. Corriente a cero, aparato apagado, y después quite las almohadillas.</translation>
    </message>
    <message>
        <source>Practice: the machine stays off. In a real session you switch it on now. Then tap.</source>
        <translation>Práctica: el aparato sigue apagado. En una sesión real lo enciende ahora. Luego toque la pantalla.</translation>
    </message>
    <message>
        <source>Practice: no current. In a real session you turn it up slowly now.</source>
        <translation>Práctica: sin corriente. En una sesión real la sube ahora despacio.</translation>
    </message>
    <message>
        <source>Practice: no current. In a real session you turn it down to zero now.</source>
        <translation>Práctica: sin corriente. En una sesión real la baja ahora a cero.</translation>
    </message>
</context>
<context>
    <name>RemindersPage</name>
    <message>
        <source>Reminders</source>
        <translation>Recordatorios</translation>
    </message>
    <message>
        <source>On</source>
        <translation>Sí</translation>
    </message>
    <message>
        <source>Off</source>
        <translation>No</translation>
    </message>
    <message>
        <source>Daily check-in</source>
        <translation>Anotación diaria</translation>
    </message>
    <message>
        <source>Sessions</source>
        <translation>Sesiones</translation>
    </message>
    <message>
        <source>Quiet from</source>
        <translation>Silencio desde</translation>
    </message>
    <message>
        <source>Quiet until</source>
        <translation>Silencio hasta</translation>
    </message>
    <message>
        <source>Remind of a back-up each month</source>
        <translation>Recordar una copia cada mes</translation>
    </message>
    <message>
        <source>Yes</source>
        <translation>Sí</translation>
    </message>
    <message>
        <source>No</source>
        <translation>No</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Guardar</translation>
    </message>
    <message>
        <source>More: top-ups come earlier and more often. Fewer: fewer sessions, more damp days. Usual: 2.</source>
        <translation>Más: los refuerzos llegan antes y más a menudo. Menos: menos sesiones, más días húmedos. Habitual: 2.</translation>
    </message>
    <message>
        <source>How many sessions is one damp spell worth to you?</source>
        <translation>¿Cuántas sesiones haría para evitar un periodo húmedo?</translation>
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
        <translation>Todavía no está todo configurado</translation>
    </message>
    <message>
        <source>Before a session, Firstdew has to know your machine and your answers to the health questions.</source>
        <translation>Antes de una sesión, Firstdew necesita conocer su aparato y sus respuestas a las preguntas de salud.</translation>
    </message>
    <message>
        <source>Continue the set-up</source>
        <translation>Seguir con la configuración</translation>
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
        <translation>Yo</translation>
    </message>
    <message>
        <source>Voice only</source>
        <translation>Solo voz</translation>
    </message>
    <message>
        <source>Tones only</source>
        <translation>Solo tonos</translation>
    </message>
    <message>
        <source>Vibration only</source>
        <translation>Solo vibración</translation>
    </message>
    <message>
        <source>Voice and tones</source>
        <translation>Voz y tonos</translation>
    </message>
    <message>
        <source>Machine and kit</source>
        <translation>Aparato y material</translation>
    </message>
    <message>
        <source>Not set</source>
        <translation>Sin indicar</translation>
    </message>
    <message numerus="yes">
        <source>Batteries: about %n session(s) left</source>
        <translation>
            <numerusform>Pilas: aproximadamente %n sesión más</numerusform>
            <numerusform>Pilas: aproximadamente %n sesiones más</numerusform>
        </translation>
    </message>
    <message>
        <source>Reminders</source>
        <translation>Recordatorios</translation>
    </message>
    <message>
        <source>Check-in %1, quiet %2 to %3</source>
        <translation>Anotación %1, silencio de %2 a %3</translation>
    </message>
    <message>
        <source>Off</source>
        <translation>Desactivados</translation>
    </message>
    <message>
        <source>People</source>
        <translation>Personas</translation>
    </message>
    <message>
        <source>Appearance and language</source>
        <translation>Aspecto e idioma</translation>
    </message>
    <message>
        <source>Dark</source>
        <translation>Oscuro</translation>
    </message>
    <message>
        <source>Light</source>
        <translation>Claro</translation>
    </message>
    <message>
        <source>Match phone</source>
        <translation>Como el teléfono</translation>
    </message>
    <message>
        <source>Move to another phone</source>
        <translation>Pasar a otro teléfono</translation>
    </message>
    <message>
        <source>Take everything with you</source>
        <translation>Llévese todo</translation>
    </message>
    <message>
        <source>Back-up, export and delete</source>
        <translation>Copiar, exportar y borrar</translation>
    </message>
    <message>
        <source>About and cautions</source>
        <translation>Acerca de Firstdew y advertencias</translation>
    </message>
    <message>
        <source>Version %1</source>
        <translation>Versión %1</translation>
    </message>
    <message>
        <source>I teach others</source>
        <translation>Enseño a otras personas</translation>
    </message>
    <message>
        <source>Caseload</source>
        <translation>Personas a mi cargo</translation>
    </message>
    <message>
        <source>Who needs a call, and care sheets for them</source>
        <translation>A quién llamar, y hojas de cuidados</translation>
    </message>
    <message>
        <source>Batteries: probably used up</source>
        <translation>Pilas: probablemente gastadas</translation>
    </message>
    <message>
        <source>Ask for this phone&apos;s lock before showing the diary</source>
        <translation>Pedir el bloqueo de este teléfono antes de mostrar el diario</translation>
    </message>
    <message>
        <source>Firstdew: switch the app lock on or off</source>
        <translation>Firstdew: activar o desactivar el bloqueo de la aplicación</translation>
    </message>
    <message>
        <source>This phone could not ask for its lock. Nothing was changed.</source>
        <translation>Este teléfono no ha podido pedir su bloqueo. No se ha cambiado nada.</translation>
    </message>
    <message>
        <source>When Firstdew starts, and when you come back after a minute. A session is never locked.</source>
        <translation>Al iniciar Firstdew y al volver después de un minuto. Una sesión nunca se bloquea.</translation>
    </message>
    <message>
        <source>This phone has no lock that Firstdew can ask for: your diary opens without it.</source>
        <translation>Este teléfono no tiene un bloqueo que Firstdew pueda pedir: su diario se abre sin él.</translation>
    </message>
    <message>
        <source>For this, the phone needs a lock of its own that Firstdew can ask for.</source>
        <translation>Para esto, el teléfono necesita un bloqueo propio que Firstdew pueda pedir.</translation>
    </message>
</context>
<context>
    <name>SettingsPage</name>
    <message>
        <source>Appearance and language</source>
        <translation>Aspecto e idioma</translation>
    </message>
    <message>
        <source>Theme</source>
        <translation>Aspecto</translation>
    </message>
    <message>
        <source>Match phone</source>
        <translation>Como el teléfono</translation>
    </message>
    <message>
        <source>Light</source>
        <translation>Claro</translation>
    </message>
    <message>
        <source>Dark</source>
        <translation>Oscuro</translation>
    </message>
    <message>
        <source>Text size</source>
        <translation>Tamaño del texto</translation>
    </message>
    <message>
        <source>Small</source>
        <translation>Pequeño</translation>
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
        <translation>Muy grande</translation>
    </message>
    <message>
        <source>Largest</source>
        <translation>Enorme</translation>
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
        <translation>Cerrar</translation>
    </message>
</context>
<context>
    <name>SheetText</name>
    <message>
        <source>From</source>
        <translation>De</translation>
    </message>
    <message>
        <source>Given on</source>
        <translation>Entregada el</translation>
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
        <translation>Días de sesión</translation>
    </message>
    <message>
        <source>Current</source>
        <translation>Corriente</translation>
    </message>
    <message>
        <source>Limit, direct</source>
        <translation>Límite, continua</translation>
    </message>
    <message>
        <source>Limit, pulsed</source>
        <translation>Límite, pulsada</translation>
    </message>
    <message>
        <source>Time to turn up</source>
        <translation>Tiempo para subir</translation>
    </message>
    <message>
        <source>Time to turn down</source>
        <translation>Tiempo para bajar</translation>
    </message>
    <message>
        <source>Time to swap</source>
        <translation>Tiempo para cambiar la polaridad</translation>
    </message>
    <message>
        <source>Review</source>
        <translation>Revisión</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation>Notas</translation>
    </message>
    <message numerus="yes">
        <source>%n second(s)</source>
        <translation>
            <numerusform>%n segundo</numerusform>
            <numerusform>%n segundos</numerusform>
        </translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>not set</source>
        <translation>sin fijar</translation>
    </message>
    <message>
        <source>%1: %2 (now %3)</source>
        <translation>%1: %2 (ahora %3)</translation>
    </message>
    <message>
        <source>Armpit pads</source>
        <translation>Almohadillas de las axilas</translation>
    </message>
    <message>
        <source>If the course does not help</source>
        <translation>Si el ciclo no ayuda</translation>
    </message>
    <message>
        <source>%1: the course that runs now goes on.</source>
        <translation>%1: el ciclo que está en marcha continúa.</translation>
    </message>
    <message numerus="yes">
        <source>%1: a course of %n session(s) begins today.</source>
        <translation>
            <numerusform>%1: hoy empieza un ciclo de %n sesión.</numerusform>
            <numerusform>%1: hoy empieza un ciclo de %n sesiones.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 It takes the place of the one that runs now.</source>
        <translation>%1 Sustituye al que está en marcha.</translation>
    </message>
    <message>
        <source>Level to begin with</source>
        <translation>Nivel para empezar</translation>
    </message>
    <message>
        <source>Whom to call</source>
        <translation>A quién llamar</translation>
    </message>
    <message>
        <source>As usual: %1</source>
        <translation>Lo habitual: %1</translation>
    </message>
    <message>
        <source>Left open</source>
        <translation>Sin indicar</translation>
    </message>
    <message numerus="yes">
        <source>%1: %2 times %n minute(s)</source>
        <translation>
            <numerusform>%1: %2 veces %n minuto</numerusform>
            <numerusform>%1: %2 veces %n minutos</numerusform>
        </translation>
    </message>
    <message>
        <source>Too high: %1 is the usual limit. Lower it.</source>
        <translation>Demasiado: %1 es el límite habitual. Bájelo.</translation>
    </message>
    <message>
        <source>Type your name, on one short line.</source>
        <translation>Escriba su nombre en una línea corta.</translation>
    </message>
    <message>
        <source>Choose where to treat.</source>
        <translation>Elija dónde tratar.</translation>
    </message>
    <message>
        <source>Armpits need pulsed current. Choose that one.</source>
        <translation>Las axilas necesitan corriente pulsada. Elíjala.</translation>
    </message>
    <message>
        <source>Choose up to 60 days, from day 1.</source>
        <translation>Elija hasta 60 días, desde el día 1.</translation>
    </message>
    <message>
        <source>This lies before the day of the sheet. Choose a later day.</source>
        <translation>Es anterior al día de la hoja. Elija un día posterior.</translation>
    </message>
    <message>
        <source>Keep it to one short line.</source>
        <translation>Deje solo una línea corta.</translation>
    </message>
    <message>
        <source>Too long for the code. Shorten it.</source>
        <translation>Demasiado largo para el código. Acórtelo.</translation>
    </message>
    <message>
        <source>This value cannot be used. Change it.</source>
        <translation>Este valor no sirve. Cámbielo.</translation>
    </message>
    <message>
        <source>%1 each</source>
        <translation>%1 cada una</translation>
    </message>
</context>
<context>
    <name>SkinPage</name>
    <message>
        <source>Skin after a session</source>
        <translation>La piel tras la sesión</translation>
    </message>
    <message>
        <source>Burns or blisters: no session there until a clinician has looked at it.</source>
        <translation>Quemaduras o ampollas: ninguna sesión ahí hasta que las vea un profesional sanitario.</translation>
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
        <translation>Guardar</translation>
    </message>
</context>
<context>
    <name>SoundPage</name>
    <message>
        <source>Voice and tones</source>
        <translation>Voz y tonos</translation>
    </message>
    <message>
        <source>During a session each step, the minutes and the end are said aloud, so that nobody has to look at the phone.</source>
        <translation>Durante una sesión se anuncian en voz alta cada paso, los minutos y el final, para que nadie tenga que mirar el teléfono.</translation>
    </message>
    <message>
        <source>What is heard</source>
        <translation>Qué se oye</translation>
    </message>
    <message>
        <source>Voice only</source>
        <translation>Solo voz</translation>
    </message>
    <message>
        <source>Tones only</source>
        <translation>Solo tonos</translation>
    </message>
    <message>
        <source>The voice speaks English so far.</source>
        <translation>La voz habla por ahora en inglés.</translation>
    </message>
    <message>
        <source>Test the volume</source>
        <translation>Comprobar el volumen</translation>
    </message>
    <message>
        <source>Vibration only</source>
        <translation>Solo vibración</translation>
    </message>
    <message>
        <source>With both hands under water nobody feels the phone: there, voice and tones are heard all the same.</source>
        <translation>Con las dos manos bajo el agua nadie siente el teléfono: en ese caso la voz y los tonos se oyen igualmente.</translation>
    </message>
    <message>
        <source>Each step also felt as a vibration</source>
        <translation>Cada paso también como vibración</translation>
    </message>
    <message>
        <source>Yes</source>
        <translation>Sí</translation>
    </message>
    <message>
        <source>No</source>
        <translation>No</translation>
    </message>
    <message>
        <source>A reading above the limit sounds the alarm whatever is chosen here. The phone cannot see the current, only what is entered.</source>
        <translation>Una lectura por encima del límite hace sonar la alarma, se elija lo que se elija aquí. El teléfono no ve la corriente, solo lo que se introduce.</translation>
    </message>
    <message>
        <source>Which voice</source>
        <translation>Qué voz</translation>
    </message>
    <message>
        <source>Recorded voice</source>
        <translation>Voz grabada</translation>
    </message>
    <message>
        <source>Voice of this device</source>
        <translation>Voz de este teléfono</translation>
    </message>
    <message>
        <source>The recorded voice speaks English. The voice of this device speaks your language.</source>
        <translation>La voz grabada habla en inglés. La voz de este teléfono habla su idioma.</translation>
    </message>
    <message>
        <source>You can choose the voice of this phone once it offers one for your language.</source>
        <translation>La voz de este teléfono podrá elegirse cuando el teléfono ofrezca una para su idioma.</translation>
    </message>
    <message>
        <source>A pedal or a switch stops a session, like a key</source>
        <translation>Un pedal o un pulsador detiene la sesión, como una tecla</translation>
    </message>
    <message>
        <source>A soft sound runs through the session. If it stops, turn the current to zero and switch the machine off.</source>
        <translation>Durante toda la sesión se oye un sonido suave. Si se interrumpe, baje la corriente a cero y apague el aparato.</translation>
    </message>
    <message>
        <source>The recorded voice does not speak your language. The voice of this device speaks in its place: test the volume, and hear whether you understand it.</source>
        <translation>La voz grabada no habla su idioma. En su lugar habla la voz de este dispositivo: compruebe el volumen y escuche si la entiende.</translation>
    </message>
    <message>
        <source>You can follow a session by the tones and on the screen. Both hands under water stays closed until a voice is known to speak your language.</source>
        <translation>Puede seguir una sesión por los tonos y en la pantalla. «Ambas manos bajo el agua» permanece cerrado hasta que conste una voz que hable su idioma.</translation>
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
        <translation>%1: más</translation>
    </message>
</context>
<context>
    <name>StirredUp</name>
    <message>
        <source>Anything that might explain it?</source>
        <translation>¿Hay algo que pueda explicarlo?</translation>
    </message>
</context>
<context>
    <name>StoreTrouble</name>
    <message>
        <source>Your record could not be opened</source>
        <translation>No se pudo abrir su historial</translation>
    </message>
    <message>
        <source>The file with your record is damaged.</source>
        <translation>El archivo con su historial está dañado.</translation>
    </message>
    <message>
        <source>A newer Firstdew wrote this record.</source>
        <translation>Este historial es de un Firstdew más nuevo.</translation>
    </message>
    <message>
        <source>Another program is using your record.</source>
        <translation>Otro programa usa su historial.</translation>
    </message>
    <message>
        <source>Your record cannot be written to.</source>
        <translation>No se puede escribir en su historial.</translation>
    </message>
    <message>
        <source>The file in its place is not a Firstdew record, or is damaged at its very beginning.</source>
        <translation>El archivo que está en su lugar no es un historial de Firstdew, o está dañado justo al principio.</translation>
    </message>
    <message>
        <source>The file with your record is not there or cannot be read.</source>
        <translation>El archivo con su historial no está o no se puede leer.</translation>
    </message>
    <message>
        <source>Firstdew can put what is still readable, and what a copy beside it holds, into a new file. The damaged file is kept.</source>
        <translation>Firstdew puede pasar a un archivo nuevo lo que aún se puede leer y lo que contiene una copia junto a él. El archivo dañado se conserva.</translation>
    </message>
    <message>
        <source>Update Firstdew, then open it again.</source>
        <translation>Actualice Firstdew y ábralo otra vez.</translation>
    </message>
    <message>
        <source>Close that program, then try again.</source>
        <translation>Cierre ese programa e inténtelo otra vez.</translation>
    </message>
    <message>
        <source>Let yourself write to the file and its folder, then try again.</source>
        <translation>Dese permiso para escribir en el archivo y en su carpeta e inténtelo otra vez.</translation>
    </message>
    <message>
        <source>Move that file elsewhere, put your record in its place, then try again.</source>
        <translation>Mueva ese archivo a otro sitio, ponga su historial en su lugar e inténtelo otra vez.</translation>
    </message>
    <message>
        <source>Look whether the folder is there and belongs to you, then try again.</source>
        <translation>Mire si la carpeta está ahí y es suya, e inténtelo otra vez.</translation>
    </message>
    <message>
        <source>Try again in a moment.</source>
        <translation>Inténtelo otra vez dentro de un momento.</translation>
    </message>
    <message>
        <source>Nothing was changed in it.</source>
        <translation>No se ha cambiado nada en él.</translation>
    </message>
    <message>
        <source>Leave the machine off until your record is open: your limits and answers stand in it.</source>
        <translation>Deje el aparato apagado hasta que su historial esté abierto: en él están sus límites y sus respuestas.</translation>
    </message>
    <message>
        <source>Repair the record</source>
        <translation>Reparar el historial</translation>
    </message>
    <message>
        <source>Try again</source>
        <translation>Intentar otra vez</translation>
    </message>
    <message>
        <source>Restore a back-up</source>
        <translation>Restaurar una copia de seguridad</translation>
    </message>
    <message>
        <source>It takes the place of the damaged file, which is kept.</source>
        <translation>Ocupa el lugar del archivo dañado, que se conserva.</translation>
    </message>
    <message>
        <source>Passphrase of the back-up</source>
        <translation>Contraseña de la copia</translation>
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
        <translation>Resumen para su médico</translation>
    </message>
    <message>
        <source>How far back</source>
        <translation>Periodo</translation>
    </message>
    <message>
        <source>A month</source>
        <translation>Un mes</translation>
    </message>
    <message>
        <source>Three months</source>
        <translation>Tres meses</translation>
    </message>
    <message>
        <source>Half a year</source>
        <translation>Medio año</translation>
    </message>
    <message>
        <source>A year</source>
        <translation>Un año</translation>
    </message>
    <message>
        <source>Share the summary</source>
        <translation>Compartir el resumen</translation>
    </message>
    <message>
        <source>Questions for the prescriber</source>
        <translation>Preguntas para su médico</translation>
    </message>
    <message>
        <source>Take back: %1</source>
        <translation>Retirar: %1</translation>
    </message>
    <message>
        <source>Your questions appear near the top of the page.</source>
        <translation>Lo que quiera preguntar figura en la parte superior de la página.</translation>
    </message>
    <message>
        <source>Your question</source>
        <translation>Su pregunta</translation>
    </message>
    <message>
        <source>Put it on the page</source>
        <translation>Poner en la página</translation>
    </message>
    <message>
        <source>Look at it</source>
        <translation>Verlo</translation>
    </message>
    <message>
        <source>A page that says how it goes and what you ask, and a second one with every session. Nothing leaves the phone before you choose where it goes.</source>
        <translation>Una página que dice cómo va y qué pregunta usted, y otra con cada sesión. Nada sale del teléfono antes de que elija adónde va.</translation>
    </message>
    <message>
        <source>Hide the page</source>
        <translation>Ocultar la página</translation>
    </message>
    <message>
        <source>Show the page here</source>
        <translation>Mostrar la página aquí</translation>
    </message>
    <message>
        <source>The first page as it will be printed</source>
        <translation>La primera página tal como se imprimirá</translation>
    </message>
    <message>
        <source>Save it as a file</source>
        <translation>Guardar como archivo</translation>
    </message>
</context>
<context>
    <name>TallyLines</name>
    <message numerus="yes">
        <source>%n person(s)</source>
        <translation>
            <numerusform>%n persona</numerusform>
            <numerusform>%n personas</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n check-in(s)</source>
        <translation>
            <numerusform>%n anotación</numerusform>
            <numerusform>%n anotaciones</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n session(s)</source>
        <translation>
            <numerusform>%n sesión</numerusform>
            <numerusform>%n sesiones</numerusform>
        </translation>
    </message>
    <message>
        <source>Last entry: %1</source>
        <translation>Última anotación: %1</translation>
    </message>
</context>
<context>
    <name>TaughtPage</name>
    <message>
        <source>A taught session</source>
        <translation>Una sesión guiada</translation>
    </message>
    <message>
        <source>Did somebody who knows the treatment watch a session? Mark together what they saw. It goes onto the summary.</source>
        <translation>¿Vio una sesión alguien que conoce el tratamiento? Anoten juntos lo que se vio. Aparece en el resumen.</translation>
    </message>
    <message>
        <source>Where</source>
        <translation>Dónde</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Cuándo</translation>
    </message>
    <message>
        <source>Who watched</source>
        <translation>Quién la vio</translation>
    </message>
    <message>
        <source>A name or a role, for example: the nurse</source>
        <translation>Un nombre o una función, por ejemplo: enfermería</translation>
    </message>
    <message>
        <source>What they saw</source>
        <translation>Lo que se vio</translation>
    </message>
    <message>
        <source>Current</source>
        <translation>Corriente</translation>
    </message>
    <message>
        <source>Level agreed to begin with at home</source>
        <translation>Nivel acordado para empezar en casa</translation>
    </message>
    <message>
        <source>None agreed</source>
        <translation>Ninguno acordado</translation>
    </message>
    <message>
        <source>%1, limit %2</source>
        <translation>%1, límite %2</translation>
    </message>
    <message>
        <source>Remove %1</source>
        <translation>Quitar %1</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Guardar</translation>
    </message>
</context>
<context>
    <name>TaughtText</name>
    <message>
        <source>Checked the skin and took off jewellery</source>
        <translation>Miró la piel y se quitó las joyas</translation>
    </message>
    <message>
        <source>Soaked the pads and fitted them tight</source>
        <translation>Empapó las almohadillas y las ajustó bien</translation>
    </message>
    <message>
        <source>Set out trays, plates and water</source>
        <translation>Preparó las bandejas, las placas y el agua</translation>
    </message>
    <message>
        <source>Turned up slowly and said when it was enough</source>
        <translation>Subió despacio y dijo cuándo era suficiente</translation>
    </message>
    <message>
        <source>Swapped at zero</source>
        <translation>Cambió la polaridad con la corriente a cero</translation>
    </message>
    <message>
        <source>Knows what to do when a pad comes off</source>
        <translation>Sabe qué hacer si se suelta una almohadilla</translation>
    </message>
    <message>
        <source>Knows what to do when a hand or foot comes out of the water</source>
        <translation>Sabe qué hacer si una mano o un pie sale del agua</translation>
    </message>
    <message>
        <source>Knows when to stop and whom to call</source>
        <translation>Sabe cuándo parar y a quién llamar</translation>
    </message>
    <message>
        <source>%1, %2, with %3</source>
        <comment>taught: site, day, who watched</comment>
        <translation>%1, %2, con %3</translation>
    </message>
    <message>
        <source>%1. %2: %3 agreed</source>
        <comment>taught: line, kind of current, milliamperes</comment>
        <translation>%1. %2: %3 acordados</translation>
    </message>
</context>
<context>
    <name>Technique</name>
    <message>
        <source>Was the current as high as is comfortable, and never above your limit? A weak current does little.</source>
        <translation>¿Fue la corriente tan alta como resulta cómodo, y nunca por encima de su límite? Una corriente débil hace poco.</translation>
    </message>
    <message>
        <source>Was the polarity swapped half-way, each time?</source>
        <translation>¿Se cambió la polaridad a la mitad, cada vez?</translation>
    </message>
    <message>
        <source>Was the skin free of cream? Cream keeps the current off. Petroleum jelly goes on cuts only.</source>
        <translation>¿Estaba la piel sin crema? La crema impide el paso de la corriente. La vaselina se pone solo en los cortes.</translation>
    </message>
    <message>
        <source>Was everything under water, flat on the grid and without pressing?</source>
        <translation>¿Estaba todo bajo el agua, plano sobre la rejilla y sin apretar?</translation>
    </message>
    <message>
        <source>With the machine off: is each lead in fully? Are the pads soaked through and tight?</source>
        <translation>Con el aparato apagado: ¿está cada cable bien metido? ¿Están las almohadillas empapadas y ajustadas?</translation>
    </message>
    <message>
        <source>With the machine off: is each lead in fully? Does each plate lie under its grid?</source>
        <translation>Con el aparato apagado: ¿está cada cable bien metido? ¿Está cada placa bajo su rejilla?</translation>
    </message>
    <message>
        <source>Are the batteries fresh? Four alkaline cells last about three sessions.</source>
        <translation>¿Son nuevas las pilas? Cuatro pilas alcalinas duran unas tres sesiones.</translation>
    </message>
    <message>
        <source>Is your water very soft? It conducts badly. Ask your nurse or prescriber what to do, and add nothing by yourself, not even salt.</source>
        <translation>¿Es muy blanda su agua? Conduce mal. Pregunte a su profesional de enfermería o a su médico qué hacer, y no añada nada por su cuenta, ni siquiera sal.</translation>
    </message>
</context>
<context>
    <name>TechniquePage</name>
    <message>
        <source>Check how you do it</source>
        <translation>Revise cómo lo hace</translation>
    </message>
    <message>
        <source>Go through this before your next session. One small thing is often the reason why it does not help, or why the current will not rise.</source>
        <translation>Repase esto antes de su próxima sesión. A menudo un pequeño detalle es la causa de que no ayude o de que la corriente no suba.</translation>
    </message>
</context>
<context>
    <name>TimePick</name>
    <message>
        <source>%1, chosen</source>
        <translation>%1, elegido</translation>
    </message>
</context>
<context>
    <name>TodayHeader</name>
    <message>
        <source>Summary for your prescriber</source>
        <translation>Resumen para su médico</translation>
    </message>
    <message>
        <source>Change person, now %1</source>
        <translation>Cambiar de persona, ahora %1</translation>
    </message>
</context>
<context>
    <name>TravelPage</name>
    <message>
        <source>Taking the kit along</source>
        <translation>Llevar el material de viaje</translation>
    </message>
    <message>
        <source>Before you leave</source>
        <translation>Antes de salir</translation>
    </message>
    <message>
        <source>Dry the kit completely before you pack it.</source>
        <translation>Seque del todo el material antes de guardarlo.</translation>
    </message>
    <message>
        <source>Take the batteries out, and pack new ones.</source>
        <translation>Saque las pilas y lleve otras nuevas.</translation>
    </message>
    <message>
        <source>Pack the machine&apos;s instructions with it, for whoever asks at a border.</source>
        <translation>Lleve con él las instrucciones del aparato, por si alguien pregunta en una frontera.</translation>
    </message>
    <message>
        <source>Where you stay</source>
        <translation>Donde se aloje</translation>
    </message>
    <message>
        <source>Set up as at home: dry hands, leads and machine away from the water, nothing of metal under the trays.</source>
        <translation>Prepare todo como en casa: manos secas, cables y aparato lejos del agua, nada de metal bajo las bandejas.</translation>
    </message>
    <message>
        <source>Water differs from place to place. Turn up even more slowly than at home, and go by the meter.</source>
        <translation>El agua cambia de un lugar a otro. Suba aún más despacio que en casa y guíese por el medidor.</translation>
    </message>
    <message>
        <source>Very soft water conducts badly. Ask your nurse or prescriber what to do, and add nothing by yourself, not even salt.</source>
        <translation>El agua muy blanda conduce mal. Pregunte a su profesional de enfermería o a su médico qué hacer, y no añada nada por su cuenta, ni siquiera sal.</translation>
    </message>
    <message>
        <source>The current will not rise</source>
        <translation>La corriente no sube</translation>
    </message>
</context>
<context>
    <name>TroubleSheet</name>
    <message>
        <source>That could not be saved</source>
        <translation>No se pudo guardar</translation>
    </message>
    <message>
        <source>What was recorded before is safe. Make room on the phone or restart the app, then try again.</source>
        <translation>Lo anotado antes está a salvo. Haga sitio en el teléfono o reinicie la aplicación y vuelva a intentarlo.</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Cerrar</translation>
    </message>
</context>
<context>
    <name>UnguardedSheet</name>
    <message>
        <source>The app lock does not work here</source>
        <translation>El bloqueo de la aplicación no funciona aquí</translation>
    </message>
    <message>
        <source>It is switched on, but this phone has no lock that Firstdew can ask for. So your diary opened without it.</source>
        <translation>Está activado, pero este teléfono no tiene un bloqueo que Firstdew pueda pedir. Por eso su diario se ha abierto sin él.</translation>
    </message>
    <message>
        <source>Set a screen lock in the phone&apos;s own settings, or switch the app lock off under Settings.</source>
        <translation>Ponga un bloqueo de pantalla en los ajustes del teléfono, o desactive el bloqueo de la aplicación en Ajustes.</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Cerrar</translation>
    </message>
</context>
<context>
    <name>WeeksBars</name>
    <message>
        <source>Damp days a week</source>
        <translation>Días húmedos por semana</translation>
    </message>
    <message>
        <source>Dampness over time, %1</source>
        <translation>Evolución de la humedad, %1</translation>
    </message>
    <message>
        <source>A week with three check-ins or more draws a bar here.</source>
        <translation>Una semana con tres anotaciones o más dibuja aquí una barra.</translation>
    </message>
    <message>
        <source>Dark: wet or dripping days. Light: clammy days. Marks below show your sessions.</source>
        <translation>Oscuro: días mojados o goteando. Claro: días húmedos. Las marcas de abajo son sus sesiones.</translation>
    </message>
    <message>
        <source>Dark: wet or dripping days. Light: clammy days.</source>
        <translation>Oscuro: días mojados o goteando. Claro: días húmedos.</translation>
    </message>
</context>
<context>
    <name>WeighPage</name>
    <message>
        <source>Weighing</source>
        <translation>Pesaje</translation>
    </message>
    <message>
        <source>Before, in milligrams</source>
        <translation>Antes, en miligramos</translation>
    </message>
    <message>
        <source>After, in milligrams</source>
        <translation>Después, en miligramos</translation>
    </message>
    <message>
        <source>It cannot weigh less afterwards; weigh again.</source>
        <translation>Después no puede pesar menos; pese otra vez.</translation>
    </message>
    <message>
        <source>Minutes</source>
        <translation>Minutos</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Guardar</translation>
    </message>
    <message>
        <source>Weigh a paper, hold it to the skin for five minutes, weigh it again. It takes a scale that shows milligrams.</source>
        <translation>Pese un papel, manténgalo cinco minutos sobre la piel y péselo otra vez. Hace falta una balanza que muestre miligramos.</translation>
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
        <translation>Le damos la bienvenida a Firstdew</translation>
    </message>
    <message>
        <source>Firstdew leads you through treating sweating hands, feet or armpits with tap water and a small current. It tells you when the next session is due.</source>
        <translation>Firstdew le guía en el tratamiento del sudor de manos, pies o axilas con agua del grifo y una corriente débil. Le dice cuándo toca la siguiente sesión.</translation>
    </message>
    <message>
        <source>Move from another phone</source>
        <translation>Traer de otro teléfono</translation>
    </message>
</context>
<context>
    <name>WhyPage</name>
    <message>
        <source>Why?</source>
        <translation>¿Por qué?</translation>
    </message>
    <message>
        <source>How long your dry spells last</source>
        <translation>Cuánto duran sus periodos secos</translation>
    </message>
    <message numerus="yes">
        <source>Based on %n dry spell(s) in your diary.</source>
        <translation>
            <numerusform>Calculado con %n periodo seco de su diario.</numerusform>
            <numerusform>Calculado con %n periodos secos de su diario.</numerusform>
        </translation>
    </message>
    <message>
        <source>Still going on, or topped up while dry: %1.</source>
        <translation>Aún en curso o terminados por un refuerzo con la piel seca: %1.</translation>
    </message>
    <message>
        <source>This is an estimate from your own notes, not a diagnosis. Your prescriber&apos;s word counts.</source>
        <translation>Es una estimación a partir de sus notas, no un diagnóstico. Vale lo que diga su médico.</translation>
    </message>
    <message>
        <source>No outlook yet. It begins with a course that is done and about two weeks of check-ins.</source>
        <translation>Aún no hay pronóstico. Empieza con un ciclo terminado y unas dos semanas de anotaciones.</translation>
    </message>
    <message>
        <source>Share of spells still dry</source>
        <translation>Proporción de periodos aún secos</translation>
    </message>
    <message>
        <source>One damp spell counts as %1 sessions. So a top-up is due %2, or earlier without check-ins.</source>
        <translation>Un periodo húmedo cuenta como %1 sesiones. Por eso toca un refuerzo: %2; sin anotaciones, antes.</translation>
    </message>
    <message>
        <source>The curve shows what share of your dry spells lasts longer than the days below it. The inner band holds the middle half of them, the outer one four in five. Bars: your latest spells; hollow where the change fell between two check-ins, with an arrow where a session came while still dry or the spell goes on. Faint bars: under another treatment.</source>
        <translation>La curva muestra qué proporción de sus periodos secos dura más que los días indicados abajo. La banda interior abarca la mitad central, la exterior cuatro de cada cinco. Barras: sus últimos periodos secos; huecas donde el cambio cayó entre dos anotaciones, con flecha donde hubo una sesión con la piel aún seca o el periodo continúa. Barras tenues: con otro tratamiento.</translation>
    </message>
    <message>
        <source>Left out, under another treatment: %1.</source>
        <translation>Sin contar, con otro tratamiento: %1.</translation>
    </message>
    <message>
        <source>The next days</source>
        <translation>Los próximos días</translation>
    </message>
    <message>
        <source>Of twenty such days, so many would be damp by then if no session comes first.</source>
        <translation>De cada veinte días así, este sería el número de días con humedad para entonces, sin ninguna sesión antes.</translation>
    </message>
    <message>
        <source>How the forecasts have done</source>
        <translation>Cómo han acertado las previsiones</translation>
    </message>
    <message>
        <source>Less</source>
        <translation>Menos</translation>
    </message>
    <message>
        <source>More</source>
        <translation>Más</translation>
    </message>
    <message>
        <source>Your dry spells are getting shorter</source>
        <translation>Sus periodos secos se están acortando</translation>
    </message>
</context>
<context>
    <name>Words</name>
    <message>
        <source>Today</source>
        <translation>Hoy</translation>
    </message>
    <message>
        <source>Session</source>
        <translation>Sesión</translation>
    </message>
    <message>
        <source>Diary</source>
        <translation>Diario</translation>
    </message>
    <message>
        <source>Plan</source>
        <translation>Plan</translation>
    </message>
    <message>
        <source>Hands</source>
        <translation>Manos</translation>
    </message>
    <message>
        <source>Feet</source>
        <translation>Pies</translation>
    </message>
    <message>
        <source>Armpits</source>
        <translation>Axilas</translation>
    </message>
    <message>
        <source>Dry</source>
        <translation>Seca</translation>
    </message>
    <message>
        <source>Clammy</source>
        <translation>Húmeda</translation>
    </message>
    <message>
        <source>Wet</source>
        <translation>Mojada</translation>
    </message>
    <message>
        <source>Dripping</source>
        <translation>Goteando</translation>
    </message>
    <message>
        <source>Heat</source>
        <translation>Calor</translation>
    </message>
    <message>
        <source>Exertion</source>
        <translation>Esfuerzo</translation>
    </message>
    <message>
        <source>Stress</source>
        <translation>Estrés</translation>
    </message>
    <message>
        <source>Illness</source>
        <translation>Enfermedad</translation>
    </message>
    <message>
        <source>Direct current</source>
        <translation>Corriente continua</translation>
    </message>
    <message>
        <source>Pulsed current</source>
        <translation>Corriente pulsada</translation>
    </message>
    <message>
        <source>Hand session</source>
        <translation>Sesión de manos</translation>
    </message>
    <message>
        <source>Foot session</source>
        <translation>Sesión de pies</translation>
    </message>
    <message>
        <source>Hand and foot session</source>
        <translation>Sesión de mano y pie</translation>
    </message>
    <message>
        <source>Armpit session</source>
        <translation>Sesión de axilas</translation>
    </message>
    <message>
        <source>Not started</source>
        <translation>Sin empezar</translation>
    </message>
    <message>
        <source>First course</source>
        <translation>Primer ciclo</translation>
    </message>
    <message>
        <source>Review</source>
        <translation>Revisión</translation>
    </message>
    <message>
        <source>Keeping dry</source>
        <translation>Se mantiene seca</translation>
    </message>
    <message>
        <source>First dew</source>
        <translation>Primer rocío</translation>
    </message>
    <message>
        <source>Sweating again</source>
        <translation>Sudor de nuevo</translation>
    </message>
    <message>
        <source>Paused</source>
        <translation>En pausa</translation>
    </message>
    <message>
        <source>Fine</source>
        <translation>Bien</translation>
    </message>
    <message>
        <source>Redness</source>
        <translation>Rojez</translation>
    </message>
    <message>
        <source>Itching</source>
        <translation>Picor</translation>
    </message>
    <message>
        <source>Blister</source>
        <translation>Ampolla</translation>
    </message>
    <message>
        <source>Burn</source>
        <translation>Quemadura</translation>
    </message>
    <message>
        <source>Nothing felt</source>
        <translation>No se notó nada</translation>
    </message>
    <message>
        <source>Comfortable</source>
        <translation>Cómoda</translation>
    </message>
    <message>
        <source>Strong</source>
        <translation>Fuerte</translation>
    </message>
    <message>
        <source>Unpleasant</source>
        <translation>Desagradable</translation>
    </message>
    <message>
        <source>Painful</source>
        <translation>Dolorosa</translation>
    </message>
    <message>
        <source>Seven sessions in four weeks</source>
        <translation>Siete sesiones en cuatro semanas</translation>
    </message>
    <message>
        <source>Three a week for four weeks</source>
        <translation>Tres por semana durante cuatro semanas</translation>
    </message>
    <message>
        <source>Five a week for two weeks</source>
        <translation>Cinco por semana durante dos semanas</translation>
    </message>
    <message>
        <source>By prescription</source>
        <translation>Por prescripción</translation>
    </message>
    <message>
        <source>Are you pregnant, or might you be?</source>
        <translation>¿Está embarazada o podría estarlo?</translation>
    </message>
    <message>
        <source>Do you have a pacemaker, a defibrillator or any other powered implant?</source>
        <translation>¿Lleva marcapasos, desfibrilador u otro implante electrónico?</translation>
    </message>
    <message>
        <source>Do you have metal in a bone or joint?</source>
        <translation>¿Tiene metal en un hueso o articulación?</translation>
    </message>
    <message>
        <source>Do you have a heart rhythm disorder or epilepsy?</source>
        <translation>¿Tiene un trastorno del ritmo cardíaco o epilepsia?</translation>
    </message>
    <message>
        <source>Do you have a tumour or a blood clot at present?</source>
        <translation>¿Tiene ahora un tumor o un coágulo de sangre?</translation>
    </message>
    <message>
        <source>Is there eczema or inflamed skin where the treatment goes?</source>
        <translation>¿Hay eccema o piel inflamada donde se trata?</translation>
    </message>
    <message>
        <source>Is there a wound too large to cover?</source>
        <translation>¿Hay una herida demasiado grande para cubrirla?</translation>
    </message>
    <message>
        <source>Do you wear fixed dental braces?</source>
        <translation>¿Lleva aparato dental fijo?</translation>
    </message>
    <message>
        <source>pregnancy</source>
        <translation>embarazo</translation>
    </message>
    <message>
        <source>a powered implant</source>
        <translation>un implante electrónico</translation>
    </message>
    <message>
        <source>a metal implant</source>
        <translation>un implante de metal</translation>
    </message>
    <message>
        <source>a heart rhythm disorder or epilepsy</source>
        <translation>un trastorno del ritmo cardíaco o epilepsia</translation>
    </message>
    <message>
        <source>a tumour or blood clot</source>
        <translation>un tumor o un coágulo de sangre</translation>
    </message>
    <message>
        <source>loss of feeling</source>
        <translation>pérdida de sensibilidad</translation>
    </message>
    <message>
        <source>an age under five</source>
        <translation>una edad menor de cinco años</translation>
    </message>
    <message>
        <source>an age under eighteen</source>
        <translation>una edad menor de dieciocho años</translation>
    </message>
    <message>
        <source>eczema or inflamed skin</source>
        <translation>eccema o piel inflamada</translation>
    </message>
    <message>
        <source>a large wound</source>
        <translation>una herida grande</translation>
    </message>
    <message>
        <source>fixed braces</source>
        <translation>aparato dental fijo</translation>
    </message>
    <message>
        <source>Common practice, adults</source>
        <translation>Práctica habitual, adultos</translation>
    </message>
    <message>
        <source>Common practice, children</source>
        <translation>Práctica habitual, niños</translation>
    </message>
    <message>
        <source>Our own cautious choice, children</source>
        <translation>Nuestra elección prudente, niños</translation>
    </message>
    <message>
        <source>Set by %1</source>
        <translation>Fijado por %1</translation>
    </message>
    <message>
        <source>Your machine does not have it</source>
        <translation>Su aparato no da esta corriente</translation>
    </message>
    <message>
        <source>Nothing to do now</source>
        <translation>Nada que hacer ahora</translation>
    </message>
    <message>
        <source>%1 today</source>
        <translation>%1 hoy</translation>
    </message>
    <message>
        <source>First dew: top up now</source>
        <translation>Primer rocío: haga ahora un refuerzo</translation>
    </message>
    <message>
        <source>A top-up is due</source>
        <translation>Toca un refuerzo</translation>
    </message>
    <message>
        <source>Keep an eye on it</source>
        <translation>Siga observando</translation>
    </message>
    <message>
        <source>Time for a new course</source>
        <translation>Es hora de un nuevo ciclo</translation>
    </message>
    <message>
        <source>The course is done</source>
        <translation>Ciclo terminado</translation>
    </message>
    <message>
        <source>Talk to your prescriber</source>
        <translation>Hable con su médico</translation>
    </message>
    <message>
        <source>No session for now</source>
        <translation>Por ahora, ninguna sesión</translation>
    </message>
    <message>
        <source>No first course has been set up yet.</source>
        <translation>Todavía no hay un primer ciclo.</translation>
    </message>
    <message>
        <source>Session %1 of %2 of the first course is planned for today.</source>
        <translation>La sesión %1 de %2 del primer ciclo está prevista para hoy.</translation>
    </message>
    <message>
        <source>Session %1 of %2 of the first course is planned for %3.</source>
        <translation>La sesión %1 de %2 del primer ciclo está prevista: %3.</translation>
    </message>
    <message numerus="yes">
        <source>The course will end %n day(s) late.</source>
        <translation>
            <numerusform>El ciclo se alarga %n día más de las cuatro semanas.</numerusform>
            <numerusform>El ciclo se alarga %n días más de las cuatro semanas.</numerusform>
        </translation>
    </message>
    <message>
        <source>The course can no longer finish in time.</source>
        <translation>El ciclo ya no puede terminarse a tiempo.</translation>
    </message>
    <message numerus="yes">
        <source>All %n session(s) of the course are done.</source>
        <translation>
            <numerusform>Está hecha %n sesión del ciclo, no falta ninguna.</numerusform>
            <numerusform>Están hechas las %n sesiones del ciclo.</numerusform>
        </translation>
    </message>
    <message>
        <source>Today&apos;s session is done.</source>
        <translation>La sesión de hoy está hecha.</translation>
    </message>
    <message numerus="yes">
        <source>There has been no check-in for %n day(s).</source>
        <translation>
            <numerusform>Hace %n día que no hay anotaciones.</numerusform>
            <numerusform>Hace %n días que no hay anotaciones.</numerusform>
        </translation>
    </message>
    <message>
        <source>You answered yes to %1. No session until a clinician has approved treatment.</source>
        <translation>Respondió sí a: %1. Ninguna sesión hasta que un profesional sanitario lo autorice.</translation>
    </message>
    <message>
        <source>Because of %1, ask a clinician first and note who said yes.</source>
        <translation>Por «%1», consulte antes a un profesional sanitario y anote quién dijo que sí.</translation>
    </message>
    <message numerus="yes">
        <source>The health questions were last answered %n day(s) ago.</source>
        <translation>
            <numerusform>Las preguntas de salud se respondieron por última vez hace %n día.</numerusform>
            <numerusform>Las preguntas de salud se respondieron por última vez hace %n días.</numerusform>
        </translation>
    </message>
    <message>
        <source>The health questions have not been answered yet.</source>
        <translation>Las preguntas de salud aún no se han respondido.</translation>
    </message>
    <message>
        <source>Your machine has only direct current, which must not be used at the armpits.</source>
        <translation>Su aparato solo da corriente continua, que no debe usarse en las axilas.</translation>
    </message>
    <message>
        <source>The score did not get better. There are other treatments; your prescriber can advise.</source>
        <translation>La molestia no ha mejorado. Hay otros tratamientos; su médico puede aconsejarle.</translation>
    </message>
    <message>
        <source>The score is better by one step.</source>
        <translation>La molestia ha mejorado un grado.</translation>
    </message>
    <message>
        <source>The score is better by two steps or more.</source>
        <translation>La molestia ha mejorado dos grados o más.</translation>
    </message>
    <message>
        <source>You paused this.</source>
        <translation>Usted hizo una pausa.</translation>
    </message>
    <message>
        <source>You put it off to this evening.</source>
        <translation>Lo dejó para esta noche.</translation>
    </message>
    <message>
        <source>You put it off to %1.</source>
        <translation>Lo dejó para: %1.</translation>
    </message>
    <message>
        <source>Skipped this time.</source>
        <translation>Esta vez no se hizo.</translation>
    </message>
    <message>
        <source>today</source>
        <translation>hoy</translation>
    </message>
    <message>
        <source>yesterday</source>
        <translation>ayer</translation>
    </message>
    <message>
        <source>tomorrow</source>
        <translation>mañana</translation>
    </message>
    <message>
        <source>d MMMM</source>
        <comment>date format</comment>
        <translation>d &apos;de&apos; MMMM</translation>
    </message>
    <message>
        <source>dddd, d MMMM</source>
        <comment>date format</comment>
        <translation>dddd, d &apos;de&apos; MMMM</translation>
    </message>
    <message>
        <source>%1 mA</source>
        <translation>%1&#xa0;mA</translation>
    </message>
    <message>
        <source>d MMMM yyyy</source>
        <comment>date format</comment>
        <translation>d &apos;de&apos; MMMM &apos;de&apos; yyyy</translation>
    </message>
    <message>
        <source>Both hands</source>
        <translation>Ambas manos</translation>
    </message>
    <message>
        <source>Both feet</source>
        <translation>Ambos pies</translation>
    </message>
    <message>
        <source>One hand with one foot</source>
        <translation>Una mano con un pie</translation>
    </message>
    <message>
        <source>Right side</source>
        <translation>Lado derecho</translation>
    </message>
    <message>
        <source>Left side</source>
        <translation>Lado izquierdo</translation>
    </message>
    <message>
        <source>I have a hand free</source>
        <translation>Tengo una mano libre</translation>
    </message>
    <message>
        <source>Somebody helps me</source>
        <translation>Alguien me ayuda</translation>
    </message>
    <message>
        <source>Both hands under water</source>
        <translation>Ambas manos bajo el agua</translation>
    </message>
    <message>
        <source>You tap each step yourself.</source>
        <translation>Usted confirma cada paso.</translation>
    </message>
    <message>
        <source>no response</source>
        <translation>sin respuesta</translation>
    </message>
    <message>
        <source>good response</source>
        <translation>buena respuesta</translation>
    </message>
    <message>
        <source>strong response</source>
        <translation>respuesta fuerte</translation>
    </message>
    <message>
        <source>Is the person treated under five years old?</source>
        <translation>¿La persona tratada tiene menos de cinco años?</translation>
    </message>
    <message>
        <source>Is the person treated under eighteen years old?</source>
        <translation>¿La persona tratada tiene menos de dieciocho años?</translation>
    </message>
    <message>
        <source>Lowered for the size of the treated skin</source>
        <translation>Reducido por el tamaño de la piel tratada</translation>
    </message>
    <message>
        <source>Armpits are treated with pulsed current only</source>
        <translation>Las axilas se tratan solo con corriente pulsada</translation>
    </message>
    <message>
        <source>Treated now, one or two sessions are usually enough.</source>
        <translation>Si se trata ahora, suelen bastar una o dos sesiones.</translation>
    </message>
    <message>
        <source>Dampness at rest, noted %1.</source>
        <translation>Humedad en reposo, anotada: %1.</translation>
    </message>
    <message>
        <source>Dampness noted %1, though the day may explain it. Check again tomorrow.</source>
        <translation>Anotó humedad (%1), aunque el día puede explicarla. Compruebe otra vez mañana.</translation>
    </message>
    <message>
        <source>Dampness twice in a row, last noted %1.</source>
        <translation>Humedad dos veces seguidas, la última anotada: %1.</translation>
    </message>
    <message>
        <source>Full sweating at rest, noted %1. It usually needs a new course.</source>
        <translation>Sudoración intensa en reposo, anotada: %1. Suele hacer falta un nuevo ciclo.</translation>
    </message>
    <message>
        <source>%1: session today</source>
        <translation>%1: hoy toca una sesión</translation>
    </message>
    <message>
        <source>%1: a top-up is due</source>
        <translation>%1: toca un refuerzo</translation>
    </message>
    <message>
        <source>%1: first dew</source>
        <translation>%1: primer rocío</translation>
    </message>
    <message>
        <source>%1: look at the skin</source>
        <translation>%1: mire la piel</translation>
    </message>
    <message>
        <source>New batteries soon</source>
        <translation>Pronto pilas nuevas</translation>
    </message>
    <message>
        <source>Health questions are due</source>
        <translation>Tocan las preguntas de salud</translation>
    </message>
    <message>
        <source>%1: how much does it bother you?</source>
        <translation>%1: ¿cuánto le molesta?</translation>
    </message>
    <message>
        <source>Show your prescriber</source>
        <translation>Muéstrelo a su médico</translation>
    </message>
    <message>
        <source>Time for a back-up</source>
        <translation>Es hora de una copia de seguridad</translation>
    </message>
    <message>
        <source>The first course works if you stick to it.</source>
        <translation>El primer ciclo funciona si se cumple.</translation>
    </message>
    <message>
        <source>Before the dampness comes back.</source>
        <translation>Antes de que vuelva la humedad.</translation>
    </message>
    <message>
        <source>The day after a session: any redness, blister or burn?</source>
        <translation>El día después de la sesión: ¿rojez, ampolla o quemadura?</translation>
    </message>
    <message>
        <source>The set in the machine lasts about one more session.</source>
        <translation>El juego del aparato dura más o menos una sesión más.</translation>
    </message>
    <message>
        <source>Before the next session, as every four weeks.</source>
        <translation>Antes de la próxima sesión, como cada cuatro semanas.</translation>
    </message>
    <message>
        <source>One question, four answers.</source>
        <translation>Una pregunta, cuatro respuestas.</translation>
    </message>
    <message>
        <source>The summary is two taps away.</source>
        <translation>El resumen está a dos toques.</translation>
    </message>
    <message>
        <source>An encrypted copy, kept where you choose.</source>
        <translation>Una copia cifrada, guardada donde usted elija.</translation>
    </message>
    <message>
        <source>Check list</source>
        <translation>Lista de comprobación</translation>
    </message>
    <message>
        <source>Hands in</source>
        <translation>Manos dentro</translation>
    </message>
    <message>
        <source>Swap polarity</source>
        <translation>Cambiar la polaridad</translation>
    </message>
    <message>
        <source>Change side</source>
        <translation>Cambiar de lado</translation>
    </message>
    <message>
        <source>Lift out</source>
        <translation>Saque manos o pies</translation>
    </message>
    <message>
        <source>Machine off, current at zero. Confirm the list.</source>
        <translation>Aparato apagado, corriente a cero. Confirme la lista.</translation>
    </message>
    <message>
        <source>Raise the current slowly to a comfortable level.</source>
        <translation>Suba la corriente despacio hasta un nivel cómodo.</translation>
    </message>
    <message>
        <source>Hold still. Everything stays under water.</source>
        <translation>No se mueva. Todo sigue bajo el agua.</translation>
    </message>
    <message>
        <source>Lower the current slowly to zero.</source>
        <translation>Baje la corriente despacio hasta cero.</translation>
    </message>
    <message>
        <source>Current at zero? Swap the two leads.</source>
        <translation>¿Corriente a cero? Intercambie los dos cables.</translation>
    </message>
    <message>
        <source>Current at zero? Flip the polarity switch.</source>
        <translation>¿Corriente a cero? Cambie el interruptor de polaridad.</translation>
    </message>
    <message>
        <source>Current at zero? Change to the other side.</source>
        <translation>¿Corriente a cero? Pase al otro lado.</translation>
    </message>
    <message>
        <source>Machine off. Then take your hands or feet out. Dry your skin and the kit.</source>
        <translation>Apague el aparato y luego saque las manos o los pies. Seque la piel y el material.</translation>
    </message>
    <message>
        <source>This skin had its session today. Let it rest. Next session: tomorrow at the earliest.</source>
        <translation>Esta piel ya tuvo hoy su sesión. Déjela descansar; la siguiente, mañana como muy pronto.</translation>
    </message>
    <message>
        <source>The health questions are due. Leave the machine off until they are answered.</source>
        <translation>Tocan las preguntas de salud. Deje el aparato apagado hasta responderlas.</translation>
    </message>
    <message>
        <source>A health question stands in the way. Leave the machine off until a clinician has approved treatment.</source>
        <translation>Una respuesta de salud lo impide. Deje el aparato apagado hasta que un profesional sanitario autorice el tratamiento.</translation>
    </message>
    <message>
        <source>Your machine does not have this current. Choose the one it has.</source>
        <translation>Su aparato no da esta corriente. Elija la que da.</translation>
    </message>
    <message>
        <source>No meter shows that. Read it again; if in doubt, lower the current.</source>
        <translation>Ningún medidor marca eso. Léalo otra vez; si duda, baje la corriente.</translation>
    </message>
    <message>
        <source>The current may still be flowing. Lower it to zero first.</source>
        <translation>Puede que la corriente siga pasando. Bájela primero a cero.</translation>
    </message>
    <message>
        <source>Firstdew is not a medical device and makes no diagnosis. Follow your machine&apos;s instructions, local rules and your clinician.</source>
        <translation>Firstdew no es un producto sanitario ni hace diagnósticos. Siga las instrucciones de su aparato, las normas locales y las indicaciones de su profesional sanitario.</translation>
    </message>
    <message>
        <source>Never go above the limits. It may prickle; it must never hurt. If it hurts, lower the current and stop.</source>
        <translation>Nunca supere los límites. Puede hormiguear; nunca debe doler. Si duele, baje la corriente y pare.</translation>
    </message>
    <message>
        <source>Don&apos;t treat if any health question tells you to stop.</source>
        <translation>Ninguna sesión mientras una respuesta de salud lo impida.</translation>
    </message>
    <message>
        <source>Treat children only with medical advice and an adult beside them.</source>
        <translation>Trate a los niños solo con consejo médico y con una persona adulta al lado.</translation>
    </message>
    <message>
        <source>Burns, blisters, faintness or palpitations: stop and seek help.</source>
        <translation>Quemaduras, ampollas, mareo o sensación de desmayo, o palpitaciones: pare y busque ayuda.</translation>
    </message>
    <message>
        <source>Keep leads and water away from mains electricity.</source>
        <translation>Mantenga cables y agua lejos de la red eléctrica.</translation>
    </message>
    <message>
        <source>Reminders</source>
        <translation>Recordatorios</translation>
    </message>
    <message>
        <source>Running session</source>
        <translation>Sesión en curso</translation>
    </message>
    <message>
        <source>Reminders may be a few minutes late on this phone.</source>
        <translation>Pueden llegar tarde: este teléfono no los entrega al minuto.</translation>
    </message>
    <message>
        <source>While your phone was off</source>
        <translation>Mientras su teléfono estaba apagado</translation>
    </message>
    <message>
        <source>There were reminders. Open Firstdew to see what matters now.</source>
        <translation>Hubo recordatorios. Abra Firstdew para ver qué importa ahora.</translation>
    </message>
    <message>
        <source>d MMM</source>
        <comment>date format</comment>
        <translation>d MMM</translation>
    </message>
    <message>
        <source>This is no back-up, or it was cut short or changed. Take another one.</source>
        <translation>Esto no es una copia de seguridad, o está cortada o cambiada. Tome otra.</translation>
    </message>
    <message>
        <source>There is no room left; nothing was written. Make room and try again.</source>
        <translation>No queda espacio; no se escribió nada. Libere espacio e inténtelo otra vez.</translation>
    </message>
    <message>
        <source>A file could not be read or written. Look whether it is still there and whether there is room.</source>
        <translation>No se pudo leer o escribir un archivo. Mire si sigue ahí y si hay espacio.</translation>
    </message>
    <message>
        <source>This file is too large to be the right one.</source>
        <translation>Este archivo es demasiado grande para ser el correcto.</translation>
    </message>
    <message>
        <source>Another program is using the record. Close it and try again.</source>
        <translation>Otro programa usa el historial. Ciérrelo e inténtelo otra vez.</translation>
    </message>
    <message>
        <source>The record is damaged. Keep the file and restore a back-up.</source>
        <translation>El historial está dañado. Conserve el archivo y restaure una copia de seguridad.</translation>
    </message>
    <message>
        <source>This is from a newer Firstdew. Update the app first.</source>
        <translation>Esto es de un Firstdew más nuevo. Actualice antes la aplicación.</translation>
    </message>
    <message>
        <source>This file is not what is needed here (%1). Ask whoever made it.</source>
        <translation>Este archivo no es lo que se necesita aquí (%1). Pregunte a quien lo hizo.</translation>
    </message>
    <message>
        <source>It does not open with this passphrase, or is damaged. Try again, or take another back-up.</source>
        <translation>No se abre con esta contraseña o está dañada. Inténtelo otra vez o tome otra copia.</translation>
    </message>
    <message>
        <source>the prescriber</source>
        <translation>su médico</translation>
    </message>
    <message>
        <source>the nurse</source>
        <translation>enfermería</translation>
    </message>
    <message>
        <source>First time here: begin low, and go by what is comfortable.</source>
        <translation>Primera vez aquí: empiece bajo y guíese por lo que sea cómodo.</translation>
    </message>
    <message>
        <source>%1 was comfortable last time.</source>
        <translation>La última vez %1 fue cómodo.</translation>
    </message>
    <message>
        <source>%1 was unpleasant last time, so less.</source>
        <translation>La última vez %1 fue desagradable, así que menos.</translation>
    </message>
    <message>
        <source>This is the limit.</source>
        <translation>Este es el límite.</translation>
    </message>
    <message>
        <source>Pulsed current is felt less; try it, if your machine has it.</source>
        <translation>La corriente pulsada se nota menos; pruébela si su aparato la tiene.</translation>
    </message>
    <message>
        <source>The same level as last time, until it was comfortable.</source>
        <translation>El mismo nivel que la última vez, hasta que haya sido cómodo.</translation>
    </message>
    <message>
        <source>Direct current may work better now; ask the adult or nurse who helps.</source>
        <translation>La corriente continua puede funcionar mejor ahora; pregunte a la persona adulta o al profesional de enfermería que ayuda.</translation>
    </message>
    <message>
        <source>%1 min</source>
        <translation>%1&#xa0;min</translation>
    </message>
    <message>
        <source>Limit %1. %2.</source>
        <translation>Límite %1. %2.</translation>
    </message>
    <message>
        <source>Not possible. %1.</source>
        <translation>No es posible. %1.</translation>
    </message>
    <message>
        <source>Aim for about %1.</source>
        <translation>Objetivo: unos %1.</translation>
    </message>
    <message>
        <source>Jewellery, watch and piercings off (not needed above the neck)</source>
        <translation>Sin joyas, reloj ni piercings (no hace falta por encima del cuello)</translation>
    </message>
    <message>
        <source>Cuts under a thin layer of petroleum jelly, only on the broken skin</source>
        <translation>Heridas bajo una capa fina de vaselina, solo sobre la piel rota</translation>
    </message>
    <message>
        <source>Each plate under its grid; skin never touches a plate</source>
        <translation>Cada placa bajo su rejilla; la piel nunca toca una placa</translation>
    </message>
    <message>
        <source>Pads soaked through, and tight</source>
        <translation>Almohadillas bien empapadas y ajustadas</translation>
    </message>
    <message>
        <source>Machine off, current at zero, leads in</source>
        <translation>Aparato apagado, corriente a cero, cables conectados</translation>
    </message>
    <message>
        <source>Batteries in</source>
        <translation>Pilas puestas</translation>
    </message>
    <message>
        <source>All checked, begin</source>
        <translation>Todo comprobado, empezar</translation>
    </message>
    <message>
        <source>Raised again</source>
        <translation>Ya la he subido</translation>
    </message>
    <message>
        <source>It is comfortable</source>
        <translation>Me resulta cómoda</translation>
    </message>
    <message>
        <source>Changed side</source>
        <translation>Ya he cambiado de lado</translation>
    </message>
    <message>
        <source>The phase waits at zero. Raise again when you are ready.</source>
        <translation>La fase está en pausa, con la corriente a cero. Suba otra vez cuando quiera.</translation>
    </message>
    <message>
        <source>The session starts again from its beginning. Machine off, current at zero; confirm the list.</source>
        <translation>La sesión empieza otra vez desde el principio. Aparato apagado, corriente a cero; confirme la lista.</translation>
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
        <translation>aún sin lectura</translation>
    </message>
    <message>
        <source>Use only a machine made for this treatment, with what came with it, to drive the current.</source>
        <translation>Use para la corriente solo un aparato hecho para este tratamiento, con lo que venía con él.</translation>
    </message>
    <message>
        <source>Raise slowly</source>
        <translation>Subir despacio</translation>
    </message>
    <message>
        <source>Hold still</source>
        <translation>No se mueva</translation>
    </message>
    <message>
        <source>Lower to zero</source>
        <translation>Bajar a cero</translation>
    </message>
    <message>
        <source>The last session was not finished, so the same level again.</source>
        <translation>La última sesión no se terminó, así que otra vez el mismo nivel.</translation>
    </message>
    <message>
        <source>The skin was irritated after %1, so clearly less.</source>
        <translation>La piel quedó irritada después de %1, así que claramente menos.</translation>
    </message>
    <message>
        <source>It has been a while since your last session here, so start lower than %1.</source>
        <translation>Ha pasado un tiempo desde su última sesión aquí, así que empiece por debajo de %1.</translation>
    </message>
    <message>
        <source>Switch flipped</source>
        <translation>Interruptor cambiado</translation>
    </message>
    <message>
        <source>Pads exchanged</source>
        <translation>Almohadillas intercambiadas</translation>
    </message>
    <message>
        <source>Leads swapped</source>
        <translation>Cables intercambiados</translation>
    </message>
    <message>
        <source>Start at %1. Current can creep up, so leave %2 to spare at first.</source>
        <translation>Empiece con %1. La corriente puede subir sola poco a poco: deje al principio un margen de %2.</translation>
    </message>
    <message>
        <source>I&apos;ve checked my skin: no new redness, blister or burn</source>
        <translation>He mirado mi piel: no hay rojez, ampolla ni quemadura nueva</translation>
    </message>
    <message>
        <source>Hand trays on a table that is not metal</source>
        <translation>Bandejas de las manos sobre una mesa que no sea de metal</translation>
    </message>
    <message>
        <source>Foot trays on the floor</source>
        <translation>Bandejas de los pies en el suelo</translation>
    </message>
    <message>
        <source>My helper stays beside me the whole session</source>
        <translation>La persona que me ayuda se queda a mi lado toda la sesión</translation>
    </message>
    <message>
        <source>Remote control within reach of my hands in the water, placed as its maker says</source>
        <translation>Mando a distancia donde lo alcanzo con las manos dentro del agua, colocado como dice su fabricante</translation>
    </message>
    <message>
        <source>Meter at zero: hands in again</source>
        <translation>Medidor a cero: manos dentro otra vez</translation>
    </message>
    <message>
        <source>On, at zero, direct current</source>
        <translation>Encendido, a cero, corriente continua</translation>
    </message>
    <message>
        <source>On, at zero, pulsed light on</source>
        <translation>Encendido, a cero, con luz de corriente pulsada</translation>
    </message>
    <message>
        <source>At zero, hands out and dry</source>
        <translation>A cero, manos fuera y secas</translation>
    </message>
    <message>
        <source>Current is at zero</source>
        <translation>La corriente está a cero</translation>
    </message>
    <message>
        <source>A pad came off</source>
        <translation>Se soltó una almohadilla</translation>
    </message>
    <message>
        <source>I took them out</source>
        <translation>He sacado manos o pies</translation>
    </message>
    <message>
        <source>It kept running, in direct current</source>
        <translation>Siguió en marcha, con corriente continua</translation>
    </message>
    <message>
        <source>It kept running, pulsed light on</source>
        <translation>Siguió en marcha, con luz de corriente pulsada</translation>
    </message>
    <message>
        <source>Any small cuts? Cover them with a thin layer of petroleum jelly again.</source>
        <translation>¿Hay cortes pequeños? Cúbralos otra vez con una capa fina de vaselina.</translation>
    </message>
    <message>
        <source>It is enough for today. What you did is kept.</source>
        <translation>Ya es suficiente por hoy. Lo que hizo se conserva.</translation>
    </message>
    <message>
        <source>That was more than ten minutes ago, so this session is over. What you did is kept.</source>
        <translation>Fue hace más de diez minutos, así que esta sesión ha terminado. Lo que hizo se conserva.</translation>
    </message>
    <message>
        <source>Another version of Firstdew led this session. It cannot go on from there. What you did is kept. Machine off now.</source>
        <translation>Esta sesión la guio otra versión de Firstdew. No puede seguir desde ahí. Lo que hizo se conserva. Apague el aparato ahora.</translation>
    </message>
    <message>
        <source>The session goes on. Machine off, current at zero; confirm the list again.</source>
        <translation>La sesión sigue. Aparato apagado, corriente a cero; confirme otra vez la lista.</translation>
    </message>
    <message>
        <source>A blister or burn was noted there. Leave the machine off until a clinician has looked at it.</source>
        <translation>Ahí se anotó una ampolla o una quemadura. Deje el aparato apagado hasta que la vea un profesional sanitario.</translation>
    </message>
    <message>
        <source>Enter the date of birth first. The limit of the current depends on it.</source>
        <translation>Indique primero la fecha de nacimiento. De ella depende el límite de la corriente.</translation>
    </message>
    <message>
        <source>Your care sheet prescribes the other current here. Choose that one.</source>
        <translation>Su hoja de cuidados prescribe aquí la otra corriente. Elija esa.</translation>
    </message>
    <message>
        <source>With both hands in the water you need a remote control, and none is entered for your machine. Ask somebody to stay beside you.</source>
        <translation>Con las dos manos en el agua necesita un mando a distancia, y su aparato no tiene ninguno anotado. Pida a alguien que se quede a su lado.</translation>
    </message>
    <message>
        <source>A child is never alone with both hands in the water. Somebody stays beside the child.</source>
        <translation>Ningún niño se queda sin compañía con las dos manos en el agua. Alguien se queda a su lado.</translation>
    </message>
    <message>
        <source>Choose who can tap the phone.</source>
        <translation>Elija quién puede tocar el teléfono.</translation>
    </message>
    <message>
        <source>It is enough for today. Leave the machine off; the next session is for tomorrow at the earliest.</source>
        <translation>Ya es suficiente por hoy. Deje el aparato apagado; la siguiente sesión, mañana como muy pronto.</translation>
    </message>
    <message>
        <source>Machine off. The session starts again once you confirm the list.</source>
        <translation>Apague el aparato. La sesión empieza otra vez cuando confirme la lista.</translation>
    </message>
    <message>
        <source>With both hands in the water you go by what you hear, and the voice cannot be made ready. Ask somebody to stay beside you.</source>
        <translation>Con las dos manos en el agua usted se guía por lo que oye, y la voz no se puede preparar. Pida a alguien que se quede a su lado.</translation>
    </message>
    <message>
        <source>They stay beside you the whole session, tap and enter the readings.</source>
        <translation>Esa persona se queda a su lado toda la sesión, toca la pantalla e introduce las lecturas.</translation>
    </message>
    <message>
        <source>You raise and lower with the remote. For the swap you take your hands out and tap.</source>
        <translation>Usted sube y baja la corriente con el mando a distancia. Para cambiar la polaridad, saca las manos y toca la pantalla.</translation>
    </message>
    <message>
        <source>Pain</source>
        <translation>Dolor</translation>
    </message>
    <message>
        <source>Kept low until the size of the pads is entered under Machine and kit</source>
        <translation>Se mantiene bajo hasta que se indique el tamaño de las almohadillas en «Aparato y material»</translation>
    </message>
    <message>
        <source>%1 prescribed the other current</source>
        <translation>La otra corriente la prescribió %1</translation>
    </message>
    <message>
        <source>%1, noted %2. No session here until a clinician has looked at it.</source>
        <translation>%1 (anotación: %2). Ninguna sesión aquí hasta que lo vea un profesional sanitario.</translation>
    </message>
    <message>
        <source>Enter the date of birth first: the limit of the current depends on it.</source>
        <translation>Indique primero la fecha de nacimiento: de ella depende el límite de la corriente.</translation>
    </message>
    <message>
        <source>Switch on</source>
        <translation>Encender</translation>
    </message>
    <message>
        <source>Hands out</source>
        <translation>Manos fuera</translation>
    </message>
    <message>
        <source>Current at zero? Soak the pads again and flip the polarity switch.</source>
        <translation>¿Corriente a cero? Vuelva a empapar las almohadillas y cambie el interruptor de polaridad.</translation>
    </message>
    <message>
        <source>Current at zero? Soak the pads again and exchange them, right with left.</source>
        <translation>¿Corriente a cero? Vuelva a empapar las almohadillas e intercámbielas, la derecha por la izquierda.</translation>
    </message>
    <message>
        <source>Current at zero? Soak the pads again and swap the two leads.</source>
        <translation>¿Corriente a cero? Vuelva a empapar las almohadillas e intercambie los dos cables.</translation>
    </message>
    <message>
        <source>Switch the machine on. Meter at zero, set to direct current?</source>
        <translation>Encienda el aparato. ¿Medidor a cero, corriente continua elegida?</translation>
    </message>
    <message>
        <source>Switch the machine on. Meter at zero, light for pulsed current on?</source>
        <translation>Encienda el aparato. ¿Medidor a cero, luz de corriente pulsada encendida?</translation>
    </message>
    <message>
        <source>Put your hands in now and keep them still.</source>
        <translation>Meta ahora las manos y manténgalas quietas.</translation>
    </message>
    <message>
        <source>Raise the current slowly with the remote.</source>
        <translation>Suba la corriente despacio con el mando a distancia.</translation>
    </message>
    <message>
        <source>Hold still. Both pads stay where they are.</source>
        <translation>No se mueva. Las dos almohadillas siguen en su sitio.</translation>
    </message>
    <message>
        <source>Lower the current slowly to zero with the remote.</source>
        <translation>Baje la corriente despacio hasta cero con el mando a distancia.</translation>
    </message>
    <message>
        <source>Meter at zero? Only then hands out. Dry them, machine off, and tap.</source>
        <translation>¿Medidor a cero? Solo entonces saque las manos. Séquelas, apague el aparato y toque la pantalla.</translation>
    </message>
    <message>
        <source>Meter at zero? Only then hands out. Dry them and tap.</source>
        <translation>¿Medidor a cero? Solo entonces saque las manos. Séquelas y toque la pantalla.</translation>
    </message>
    <message>
        <source>Machine off, then take the pads off. Dry skin and kit.</source>
        <translation>Apague el aparato y luego quite las almohadillas. Seque la piel y el material.</translation>
    </message>
    <message>
        <source>Dry skin and kit.</source>
        <translation>Seque la piel y el material.</translation>
    </message>
    <message>
        <source>Watch your skin above %1.</source>
        <translation>Por encima de %1, vigile la piel.</translation>
    </message>
    <message>
        <source>Your first three sessions here go step by step.</source>
        <translation>Sus tres primeras sesiones aquí van paso a paso.</translation>
    </message>
    <message>
        <source>It has been four weeks or more. Let&apos;s go step by step.</source>
        <translation>Han pasado cuatro semanas o más. Vamos paso a paso.</translation>
    </message>
    <message>
        <source>Last time something was not right. Let&apos;s go step by step.</source>
        <translation>La última vez algo no fue bien. Vamos paso a paso.</translation>
    </message>
    <message>
        <source>Your machine has changed. Let&apos;s go step by step.</source>
        <translation>Su aparato ha cambiado. Vamos paso a paso.</translation>
    </message>
    <message>
        <source>Your first session with both hands in goes step by step.</source>
        <translation>Su primera sesión con las dos manos dentro va paso a paso.</translation>
    </message>
    <message>
        <source>Aim %1</source>
        <translation>Objetivo %1</translation>
    </message>
    <message>
        <source>Nothing about my health has changed</source>
        <translation>Nada ha cambiado en mi salud</translation>
    </message>
    <message>
        <source>On, at zero, direct current: begin</source>
        <translation>Encendido, a cero, corriente continua: empezar</translation>
    </message>
    <message>
        <source>On, at zero, pulsed light on: begin</source>
        <translation>Encendido, a cero, con luz de corriente pulsada: empezar</translation>
    </message>
    <message>
        <source>Check</source>
        <translation>Revise</translation>
    </message>
    <message>
        <source>Raise</source>
        <translation>Suba</translation>
    </message>
    <message>
        <source>Hold</source>
        <translation>Mantenga</translation>
    </message>
    <message>
        <source>Lower</source>
        <translation>Baje</translation>
    </message>
    <message>
        <source>Swap</source>
        <translation>Cambie</translation>
    </message>
    <message>
        <source>Turn down to %1</source>
        <translation>Baje hasta %1</translation>
    </message>
    <message>
        <source>With a screen reader on, a tap anywhere does not stop the session. Ask somebody to stay beside you, or use a pedal or a switch.</source>
        <translation>Con un lector de pantalla activo, un toque en cualquier lugar no detiene la sesión. Pida a alguien que se quede a su lado, o use un pedal o un pulsador.</translation>
    </message>
    <message>
        <source>This passphrase is too short. Choose one of at least eight characters.</source>
        <translation>Esta contraseña es demasiado corta. Elija una de al menos ocho caracteres.</translation>
    </message>
    <message>
        <source>This file may be about somebody else: name or birth date differ, or are missing. Nothing was added.</source>
        <translation>Este archivo puede ser de otra persona: el nombre o la fecha de nacimiento son otros o faltan. No se ha añadido nada.</translation>
    </message>
    <message>
        <source>A file of that name is there already. It was left as it is.</source>
        <translation>Ya hay un archivo con ese nombre. Se ha dejado como está.</translation>
    </message>
    <message>
        <source>The file with your record was moved, deleted or replaced while Firstdew was open. Nothing was saved. Close Firstdew, put the file back and open it again.</source>
        <translation>El archivo con su historial se movió, borró o cambió mientras Firstdew estaba abierto. No se ha guardado nada. Cierre Firstdew, devuelva el archivo a su sitio y ábralo de nuevo.</translation>
    </message>
    <message>
        <source>This care sheet is dated in the future. Ask for one with the right date.</source>
        <translation>Esta hoja lleva una fecha futura. Pida una con la fecha correcta.</translation>
    </message>
    <message>
        <source>Do you have a coil (intrauterine device or system) of any kind?</source>
        <translation>¿Lleva un DIU (dispositivo o sistema intrauterino) de cualquier tipo?</translation>
    </message>
    <message>
        <source>the child</source>
        <translation>el niño o la niña</translation>
    </message>
    <message>
        <source>Could %1 be pregnant?</source>
        <translation>¿Podría %1 estar en estado de embarazo?</translation>
    </message>
    <message>
        <source>Does %1 have a pacemaker, a defibrillator or any other powered implant?</source>
        <translation>¿Lleva %1 un marcapasos, un desfibrilador u otro implante electrónico?</translation>
    </message>
    <message>
        <source>Does %1 have metal in a bone or joint?</source>
        <translation>¿Tiene %1 metal en un hueso o una articulación?</translation>
    </message>
    <message>
        <source>Does %1 have a coil (intrauterine device or system) of any kind?</source>
        <translation>¿Lleva %1 un DIU (dispositivo o sistema intrauterino) de cualquier tipo?</translation>
    </message>
    <message>
        <source>Does %1 have a heart rhythm disorder or epilepsy?</source>
        <translation>¿Tiene %1 un trastorno del ritmo cardíaco o epilepsia?</translation>
    </message>
    <message>
        <source>Does %1 have a tumour or a blood clot at present?</source>
        <translation>¿Tiene %1 ahora un tumor o un coágulo de sangre?</translation>
    </message>
    <message>
        <source>Is %1 under five years old?</source>
        <translation>¿Tiene %1 menos de cinco años?</translation>
    </message>
    <message>
        <source>Is %1 under eighteen years old?</source>
        <translation>¿Tiene %1 menos de dieciocho años?</translation>
    </message>
    <message>
        <source>Does %1 have eczema or inflamed skin where the treatment goes?</source>
        <translation>¿Tiene %1 eccema o piel inflamada en la zona del tratamiento?</translation>
    </message>
    <message>
        <source>Does %1 have a wound too large to cover?</source>
        <translation>¿Tiene %1 una herida demasiado grande para cubrirla?</translation>
    </message>
    <message>
        <source>Does %1 wear fixed dental braces?</source>
        <translation>¿Lleva %1 aparato dental fijo?</translation>
    </message>
    <message>
        <source>a coil</source>
        <translation>un DIU</translation>
    </message>
    <message>
        <source>Wet at rest, noted %1. One report is not enough for a new course.</source>
        <translation>Piel mojada en reposo, anotada: %1. Una sola anotación no basta para un nuevo ciclo.</translation>
    </message>
    <message>
        <source>Not better yet</source>
        <translation>Aún sin mejora</translation>
    </message>
    <message>
        <source>Your care sheet prescribes a current that your machine does not have. Ask who wrote it.</source>
        <translation>Su hoja de cuidados prescribe una corriente que su aparato no tiene. Pregunte a quien la escribió.</translation>
    </message>
    <message>
        <source>Enter first which current your machine has.</source>
        <translation>Indique primero qué corriente da su aparato.</translation>
    </message>
    <message numerus="yes">
        <source>After %n session(s) it is too early to say that it does not help: for many people it takes ten to twelve. First check how you do it.</source>
        <translation>
            <numerusform>Tras %n sesión es pronto para decir que no ayuda: muchas personas necesitan de diez a doce. Revise primero cómo lo hace.</numerusform>
            <numerusform>Tras %n sesiones es pronto para decir que no ayuda: muchas personas necesitan de diez a doce. Revise primero cómo lo hace.</numerusform>
        </translation>
    </message>
    <message>
        <source>Say how much the sweating bothers you now. Then the app can tell whether the course helped.</source>
        <translation>Diga cuánto le molesta ahora el sudor. Así la aplicación puede decir si el ciclo ha ayudado.</translation>
    </message>
    <message>
        <source>The answer comes with the first sessions and a week of check-ins.</source>
        <translation>La respuesta llega con las primeras sesiones y una semana de anotaciones.</translation>
    </message>
    <message numerus="yes">
        <source>After %n more check-in(s) there is an answer.</source>
        <translation>
            <numerusform>Tras %n anotación más hay una respuesta.</numerusform>
            <numerusform>Tras %n anotaciones más hay una respuesta.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>No change yet. That says little before %n more session(s).</source>
        <translation>
            <numerusform>Aún sin cambios. Eso dice poco mientras falte %n sesión.</numerusform>
            <numerusform>Aún sin cambios. Eso dice poco mientras falten %n sesiones.</numerusform>
        </translation>
    </message>
    <message>
        <source>Too early to say if it works</source>
        <translation>Es pronto para decir si funciona</translation>
    </message>
    <message>
        <source>It does not work yet</source>
        <translation>Todavía no funciona</translation>
    </message>
    <message>
        <source>It works in part</source>
        <translation>Funciona en parte</translation>
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
        <translation>Días húmedos por semana: %1.</translation>
    </message>
    <message>
        <source>Your latest dry spells were short.</source>
        <translation>Sus últimos periodos secos fueron cortos.</translation>
    </message>
    <message>
        <source>Show your prescriber the summary. Other treatments can help.</source>
        <translation>Enseñe el resumen a su médico. Otros tratamientos pueden ayudar.</translation>
    </message>
    <message>
        <source>Many people need 10 to 12 sessions.</source>
        <translation>Muchas personas necesitan de 10 a 12 sesiones.</translation>
    </message>
    <message>
        <source>There is no code in this picture that can be read. Take it straight from the front, near and in good light.</source>
        <translation>En esta imagen no hay ningún código que se pueda leer. Tómela de frente, de cerca y con buena luz.</translation>
    </message>
    <message>
        <source>Waiting at zero</source>
        <translation>En espera, en cero</translation>
    </message>
    <message>
        <source>Ends at %1</source>
        <translation>Termina a las %1</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Parar</translation>
    </message>
    <message>
        <source>Something to look at today</source>
        <translation>Hoy hay algo que mirar</translation>
    </message>
    <message>
        <source>Done for today</source>
        <translation>Listo por hoy</translation>
    </message>
    <message>
        <source>Botulinum injections</source>
        <translation>Inyecciones de toxina botulínica</translation>
    </message>
    <message>
        <source>Tablets</source>
        <translation>Pastillas</translation>
    </message>
    <message>
        <source>Cream or deodorant</source>
        <translation>Crema o desodorante</translation>
    </message>
    <message>
        <source>Something else</source>
        <translation>Otra cosa</translation>
    </message>
    <message>
        <source>%1: %2 to %3</source>
        <comment>treatment: first and last day</comment>
        <translation>%1: del %2 al %3</translation>
    </message>
    <message>
        <source>%1: since %2</source>
        <comment>treatment: first day</comment>
        <translation>%1: desde el %2</translation>
    </message>
    <message>
        <source>You missed session %1 on %2. It is now today.</source>
        <translation>No hizo la sesión %1 (%2). Ahora toca hoy.</translation>
    </message>
    <message>
        <source>You missed session %1 on %2. It is now on %3.</source>
        <translation>No hizo la sesión %1 (%2). Ahora toca: %3.</translation>
    </message>
    <message numerus="yes">
        <source>The plan puts %n session(s) on consecutive days.</source>
        <translation>
            <numerusform>El plan pone %n sesión en días seguidos.</numerusform>
            <numerusform>El plan pone %n sesiones en días seguidos.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>With a day between them, it takes %n day(s) more than planned.</source>
        <translation>
            <numerusform>Con un día en medio, dura %n día más de lo previsto.</numerusform>
            <numerusform>Con un día en medio, dura %n días más de lo previsto.</numerusform>
        </translation>
    </message>
    <message>
        <source>You are away on %1.</source>
        <translation>Estará fuera el %1.</translation>
    </message>
    <message>
        <source>You are away from %1 to %2.</source>
        <translation>Estará fuera del %1 al %2.</translation>
    </message>
    <message>
        <source>Dampness may come back in that time. A top-up before you leave is worth it.</source>
        <translation>En ese tiempo puede volver la humedad. Merece la pena un refuerzo antes de salir.</translation>
    </message>
    <message>
        <source>Top up before you leave</source>
        <translation>Haga un refuerzo antes de salir</translation>
    </message>
    <message>
        <source>You are away. The call for a session comes when you are back.</source>
        <translation>Está fuera. El aviso para la sesión llega cuando vuelva.</translation>
    </message>
    <message>
        <source>%1: dry or clammy today?</source>
        <translation>%1: ¿hoy la piel está seca o húmeda?</translation>
    </message>
    <message>
        <source>One tap answers. Or tap here to open Firstdew.</source>
        <translation>Basta un toque. O toque aquí para abrir Firstdew.</translation>
    </message>
    <message>
        <source>Not everything came over. Your back-up is as it was. Try again with the same file.</source>
        <translation>No ha llegado todo. Su copia de seguridad está como estaba. Pruebe otra vez con el mismo archivo.</translation>
    </message>
    <message>
        <source>Dampness has probably begun.</source>
        <translation>Es probable que la humedad ya haya empezado.</translation>
    </message>
    <message>
        <source>A top-up has been due since %1.</source>
        <translation>Toca un refuerzo desde %1.</translation>
    </message>
    <message>
        <source>You may get clammy by tomorrow. A top-up now is worth it.</source>
        <translation>Puede haber humedad para mañana. Un refuerzo ahora merece la pena.</translation>
    </message>
    <message>
        <source>Going by your check-ins so far, the chance that dampness has begun is %1. The curve above does not include them.</source>
        <translation>Según sus anotaciones hasta ahora, la probabilidad de que la humedad haya empezado es de %1. La curva de arriba no las tiene en cuenta.</translation>
    </message>
    <message>
        <source>The chance that dampness has begun is %1. Today&apos;s report did not change it.</source>
        <translation>La probabilidad de que la humedad haya empezado es de %1. La anotación de hoy no la ha cambiado.</translation>
    </message>
    <message>
        <source>The chance that dampness has begun is %1. Before today&apos;s report it was %2.</source>
        <translation>La probabilidad de que la humedad haya empezado es de %1. Antes de la anotación de hoy era de %2.</translation>
    </message>
    <message>
        <source>Practice: the phase waits. In a real session you turn it up again when you are ready.</source>
        <translation>Práctica: la fase está en pausa. En una sesión real vuelve a subir cuando quiera.</translation>
    </message>
    <message>
        <source>Stays off</source>
        <translation>Sigue apagado</translation>
    </message>
    <message>
        <source>No current</source>
        <translation>Sin corriente</translation>
    </message>
    <message numerus="yes">
        <source>In a real session this takes %n minute(s).</source>
        <translation>
            <numerusform>En una sesión real esto dura %n minuto.</numerusform>
            <numerusform>En una sesión real esto dura %n minutos.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>In a real session this takes %n second(s).</source>
        <translation>
            <numerusform>En una sesión real esto dura %n segundo.</numerusform>
            <numerusform>En una sesión real esto dura %n segundos.</numerusform>
        </translation>
    </message>
    <message>
        <source>You could not start a real session today: %1</source>
        <translation>Hoy no podría empezar una sesión real: %1</translation>
    </message>
    <message>
        <source>Say who watched, and tick what was seen.</source>
        <translation>Diga quién la vio y marque lo que se vio.</translation>
    </message>
    <message>
        <source>This is above the limit of %1 there. Agree on a level up to the limit.</source>
        <translation>Eso supera el límite de %1 ahí. Acuerden un nivel hasta el límite.</translation>
    </message>
    <message>
        <source>Begin with the level you agreed on when you were taught.</source>
        <translation>Empiece con el nivel que acordó cuando le enseñaron.</translation>
    </message>
    <message>
        <source>Dry skin</source>
        <translation>Piel seca</translation>
    </message>
    <message>
        <source>It could not be saved there. Choose another place, or make room first.</source>
        <translation>No se pudo guardar ahí. Elija otro lugar o libere espacio primero.</translation>
    </message>
    <message>
        <source>Enter height and weight, and the size of this skin counts as well.</source>
        <translation>Anote la estatura y el peso, y también contará el tamaño de esta piel.</translation>
    </message>
    <message>
        <source>The meter is above the limit. Turn it down, then enter what it shows.</source>
        <translation>El medidor está por encima del límite. Baje la corriente y anote luego lo que marca.</translation>
    </message>
    <message>
        <source>No sound comes from here, so you would not hear the alarm. Switch the sound on, then begin.</source>
        <translation>De aquí no sale ningún sonido, así que no oiría la alarma. Active el sonido y empiece después.</translation>
    </message>
    <message>
        <source>less than 1 in %1</source>
        <translation>menos de 1 de cada %1</translation>
    </message>
    <message>
        <source>more than %1 in %2</source>
        <translation>más de %1 de cada %2</translation>
    </message>
    <message>
        <source>about %1 in %2</source>
        <translation>alrededor de %1 de cada %2</translation>
    </message>
    <message>
        <source>By %1: %2</source>
        <comment>day, chance</comment>
        <translation>Hasta entonces (%1): %2</translation>
    </message>
    <message numerus="yes">
        <source>When the chance for the next day was %1, dampness came on %2 of %n day(s).</source>
        <translation>
            <numerusform>Cuando la probabilidad para el día siguiente era de %1, la humedad llegó en %2 de %n día.</numerusform>
            <numerusform>Cuando la probabilidad para el día siguiente era de %1, la humedad llegó en %2 de %n días.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>After %n more check-in(s) the app can say how its forecasts have done.</source>
        <translation>
            <numerusform>Tras %n anotación más, la aplicación puede decir cómo han acertado sus previsiones.</numerusform>
            <numerusform>Tras %n anotaciones más, la aplicación puede decir cómo han acertado sus previsiones.</numerusform>
        </translation>
    </message>
    <message>
        <source>So far the forecasts fit.</source>
        <translation>Hasta ahora las previsiones han acertado.</translation>
    </message>
    <message>
        <source>The dry spells have not gone as forecast. So the forecast now leaves more room on both sides.</source>
        <translation>Los periodos secos no han ido como se preveía. Por eso la previsión deja ahora más margen a ambos lados.</translation>
    </message>
    <message>
        <source>Today&apos;s session was stopped. Most of it was done, so it counts.</source>
        <translation>La sesión de hoy se interrumpió. La mayor parte estaba hecha, así que cuenta.</translation>
    </message>
    <message>
        <source>Saved.</source>
        <translation>Guardado.</translation>
    </message>
    <message>
        <source>Taken back.</source>
        <translation>Deshecho.</translation>
    </message>
    <message>
        <source>The alarm is over.</source>
        <translation>La alarma ha terminado.</translation>
    </message>
    <message>
        <source>The sole of a foot counts as %1, by height and weight.</source>
        <translation>La planta de un pie cuenta como %1, según la estatura y el peso.</translation>
    </message>
    <message>
        <source>The palm of a hand counts as %1, by height and weight.</source>
        <translation>La palma de una mano cuenta como %1, según la estatura y el peso.</translation>
    </message>
    <message>
        <source>One pad counts as %1, as entered with the machine.</source>
        <translation>Una almohadilla cuenta como %1, según lo anotado con el aparato.</translation>
    </message>
    <message>
        <source>One pad counts as %1, as on the care sheet.</source>
        <translation>Una almohadilla cuenta como %1, según la hoja de cuidados.</translation>
    </message>
    <message>
        <source>No pad size is entered, so one pad counts as %1.</source>
        <translation>No se ha anotado el tamaño, así que una almohadilla cuenta como %1.</translation>
    </message>
    <message>
        <source>%1 of current, about %2 in all</source>
        <translation>%1 de corriente, unos %2 en total</translation>
    </message>
    <message>
        <source>%1: no antiperspirant with aluminium for 24 hours</source>
        <translation>%1: sin antitranspirante con aluminio desde hace 24 horas</translation>
    </message>
    <message>
        <source>%1: not shaved for three days</source>
        <translation>%1: sin afeitar desde hace tres días</translation>
    </message>
    <message>
        <source>Warm tap water, about %1 in each tray</source>
        <translation>Agua templada del grifo, unos %1 en cada bandeja</translation>
    </message>
    <message>
        <source>My skin is whole where I treat: no cut, no new redness, no blister or burn</source>
        <translation>Mi piel está sana donde la trato: sin cortes, sin rojez nueva, sin ampolla ni quemadura</translation>
    </message>
    <message>
        <source>Ready %1 from %2. %3</source>
        <comment>day, time, what is then fulfilled</comment>
        <translation>Posible %1 a partir de las %2. %3</translation>
    </message>
    <message>
        <source>%1 left in all</source>
        <translation>quedan %1 en total</translation>
    </message>
    <message>
        <source>%1 %2 left</source>
        <comment>minutes, seconds</comment>
        <translation>quedan %1 %2</translation>
    </message>
    <message>
        <source>That does not belong to this step. Do what the screen says now. If in doubt, lower the current to zero and switch the machine off.</source>
        <translation>Eso no corresponde a este paso. Haga ahora lo que dice la pantalla. En caso de duda, baje la corriente a cero y apague el aparato.</translation>
    </message>
    <message>
        <source>That did not work. Try again. If it happens again, end any session first, then close Firstdew and open it again.</source>
        <translation>Eso no ha funcionado. Inténtelo otra vez. Si vuelve a ocurrir, termine primero la sesión en curso, si la hay; después cierre Firstdew y ábralo de nuevo.</translation>
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
        <translation>¿Ha perdido sensibilidad en la piel, o tiene una enfermedad de los nervios donde se trata?</translation>
    </message>
    <message>
        <source>Has %1 lost feeling in the skin, or is there a nerve disease where the treatment goes?</source>
        <translation>¿Ha perdido %1 sensibilidad en la piel, o hay una enfermedad de los nervios donde se trata?</translation>
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
        <translation>%1&#xa0;%</translation>
    </message>
    <message numerus="yes">
        <source>You usually stay dry %1 to %n day(s). Today is day %2.</source>
        <translation>
            <numerusform>Su piel suele seguir seca de %1 a %n día. Hoy es el día %2.</numerusform>
            <numerusform>Su piel suele seguir seca de %1 a %n días. Hoy es el día %2.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>You usually stay dry %1 to %n day(s).</source>
        <translation>
            <numerusform>Su piel suele seguir seca de %1 a %n día.</numerusform>
            <numerusform>Su piel suele seguir seca de %1 a %n días.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Half of your dry spells last longer than %n day(s); four in five are over between day %1 and day %2.</source>
        <translation>
            <numerusform>La mitad de sus periodos secos dura más de %n día; cuatro de cada cinco terminan entre el día %1 y el día %2.</numerusform>
            <numerusform>La mitad de sus periodos secos dura más de %n días; cuatro de cada cinco terminan entre el día %1 y el día %2.</numerusform>
        </translation>
    </message>
    <message>
        <source>Pads off</source>
        <translation>Quite las almohadillas</translation>
    </message>
    <message>
        <source>Dry off</source>
        <translation>Séquese</translation>
    </message>
    <message>
        <source>With both hands in the water you go by what you hear, and no voice here is known to speak your language. Ask somebody to stay beside you.</source>
        <translation>Con las dos manos en el agua usted se guía por lo que oye, y no consta que aquí haya una voz que hable su idioma. Pida a alguien que se quede a su lado.</translation>
    </message>
    <message>
        <source>Turn the current to zero</source>
        <translation>Baje la corriente a cero</translation>
    </message>
    <message>
        <source>Firstdew has stopped leading your session. Turn the current to zero, switch the machine off, then open Firstdew.</source>
        <translation>Firstdew ya no guía la sesión. Baje la corriente a cero, apague el aparato y después abra Firstdew.</translation>
    </message>
    <message>
        <source>Shorter dry spells can have many reasons. If it goes on, tell your nurse or doctor.</source>
        <translation>Los periodos secos más cortos pueden tener muchas causas. Si continúa así, dígaselo a su enfermera, enfermero o médico.</translation>
    </message>
    <message>
        <source>The last session here was half a year ago or more: begin low again, and go by what is comfortable.</source>
        <translation>La última sesión aquí fue hace medio año o más: empiece otra vez bajo y guíese por lo que sea cómodo.</translation>
    </message>
    <message>
        <source>No reading of this current was noted here yet: begin low, and go by what is comfortable.</source>
        <translation>Aquí aún no se ha anotado ninguna lectura de esta corriente: empiece bajo y guíese por lo que sea cómodo.</translation>
    </message>
    <message>
        <source>This passphrase is too long. Choose one of fewer than 250 characters.</source>
        <translation>Esta contraseña es demasiado larga. Elija una de menos de 250 caracteres.</translation>
    </message>
    <message numerus="yes">
        <source>Usually dry for %n day(s) since about %1; before that, for %2.</source>
        <comment>days, date, days</comment>
        <translation>
            <numerusform>Periodo seco habitual: %n día desde alrededor del %1; antes, %2.</numerusform>
            <numerusform>Periodo seco habitual: %n días desde alrededor del %1; antes, %2.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1&#xa0;now, %2&#xa0;before the first session</source>
        <translation>ahora&#xa0;%1, antes de la primera sesión&#xa0;%2</translation>
    </message>
    <message>
        <source>%1&#xa0;now</source>
        <translation>ahora&#xa0;%1</translation>
    </message>
    <message>
        <source>How much it bothers you: %1&#xa0;now, %2&#xa0;before.</source>
        <translation>Molestia: ahora&#xa0;%1, antes&#xa0;%2.</translation>
    </message>
    <message>
        <source>It rests while you pause this site.</source>
        <translation>Se detiene mientras esta zona está en pausa.</translation>
    </message>
    <message>
        <source>It rests while hands and feet are treated together.</source>
        <translation>Se detiene mientras manos y pies se tratan juntos.</translation>
    </message>
    <message>
        <source>It rests until the next check-in.</source>
        <translation>Se detiene hasta la próxima anotación.</translation>
    </message>
    <message>
        <source>It rests while no session is possible.</source>
        <translation>Se detiene mientras no se pueda hacer ninguna sesión.</translation>
    </message>
    <message>
        <source>It rests because the sweating is back.</source>
        <translation>Se detiene porque ha vuelto el sudor.</translation>
    </message>
    <message>
        <source>All pairs are complete.</source>
        <translation>Todas las parejas están completas.</translation>
    </message>
    <message>
        <source>It ended early, because the answer was clear.</source>
        <translation>Terminó antes, porque la respuesta era clara.</translation>
    </message>
    <message>
        <source>You left it.</source>
        <translation>Usted la dejó.</translation>
    </message>
    <message>
        <source>It ended because of the skin.</source>
        <translation>Terminó por la piel.</translation>
    </message>
    <message>
        <source>It ended because the sweating was back.</source>
        <translation>Terminó porque había vuelto el sudor.</translation>
    </message>
    <message>
        <source>It ended with the new course.</source>
        <translation>Terminó con el nuevo ciclo.</translation>
    </message>
    <message>
        <source>It ended with the other treatment.</source>
        <translation>Terminó con el otro tratamiento.</translation>
    </message>
    <message>
        <source>It ended because three sessions in a row did not count.</source>
        <translation>Terminó porque tres sesiones seguidas no contaban.</translation>
    </message>
    <message>
        <source>Whether the shorter session holds as long could not be told.</source>
        <translation>No se pudo saber si la sesión más corta dura lo mismo.</translation>
    </message>
    <message numerus="yes">
        <source>The shorter session held about as long: about %n day(s), and the usual one %1.</source>
        <translation>
            <numerusform>La sesión más corta duró más o menos lo mismo: unos %n día, y la habitual %1.</numerusform>
            <numerusform>La sesión más corta duró más o menos lo mismo: unos %n días, y la habitual %1.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>The shorter session held less long: about %n day(s) instead of %1.</source>
        <translation>
            <numerusform>La sesión más corta duró menos: unos %n día en lugar de %1.</numerusform>
            <numerusform>La sesión más corta duró menos: unos %n días en lugar de %1.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>By these %n dry spell(s) it probably holds for %1 to %2 of the usual time.</source>
        <translation>
            <numerusform>Según este %n periodo seco, dura probablemente del %1 al %2 del tiempo habitual.</numerusform>
            <numerusform>Según estos %n periodos secos, dura probablemente del %1 al %2 del tiempo habitual.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>You compare a session of %1 with your usual one of %2, in %n pair(s) of dry spells. Chance decides which comes first.</source>
        <translation>
            <numerusform>Usted compara una sesión de %1 con la habitual de %2, en %n pareja de periodos secos. El azar decide cuál va primero.</numerusform>
            <numerusform>Usted compara una sesión de %1 con la habitual de %2, en %n parejas de periodos secos. El azar decide cuál va primero.</numerusform>
        </translation>
    </message>
    <message>
        <source>Only the time is shorter. Current and limits stay as they are.</source>
        <translation>Solo el tiempo es más corto. La corriente y los límites siguen igual.</translation>
    </message>
    <message>
        <source>Meanwhile the forecast calls for no top-up. The first clammy day at rest does, unless the skin is still settling on the day after a session. So you may be clammy more often.</source>
        <translation>Mientras tanto, la previsión no pide ningún refuerzo. Lo pide el primer día húmedo en reposo, salvo que la piel aún se esté asentando el día después de una sesión. Por eso puede notar humedad más a menudo.</translation>
    </message>
    <message>
        <source>Only sessions that the app leads to the end count. Check in every day.</source>
        <translation>Solo cuentan las sesiones que la aplicación guía hasta el final. Anote cada día.</translation>
    </message>
    <message>
        <source>It can take months. It ends earlier if the shorter session clearly holds less long, or if the skin or the sweating requires it. You can leave at any time.</source>
        <translation>Puede llevar meses. Si la más corta dura claramente menos, o lo piden la piel o el sudor, termina antes. Puede dejarla en cualquier momento.</translation>
    </message>
    <message>
        <source>Agree on it with your prescriber or nurse first, and follow your machine&apos;s instructions.</source>
        <translation>Acuérdelo antes con su médico o el personal de enfermería, y siga las instrucciones de su aparato.</translation>
    </message>
    <message>
        <source>Pair %1 of %2.</source>
        <translation>Pareja %1 de %2.</translation>
    </message>
    <message>
        <source>Until then your sessions are the usual ones, and the forecast calls for top-ups again.</source>
        <translation>Hasta entonces las sesiones son las habituales y la previsión vuelve a pedir refuerzos.</translation>
    </message>
    <message>
        <source>This dry spell followed the shorter session.</source>
        <translation>Este periodo seco siguió a la sesión más corta.</translation>
    </message>
    <message>
        <source>This dry spell followed the usual session.</source>
        <translation>Este periodo seco siguió a la sesión habitual.</translation>
    </message>
    <message>
        <source>The next session is the shorter one: %1.</source>
        <translation>La próxima sesión es la más corta: %1.</translation>
    </message>
    <message>
        <source>The next session is the usual one: %1.</source>
        <translation>La próxima sesión es la habitual: %1.</translation>
    </message>
    <message>
        <source>The forecast calls for no top-up meanwhile. A clammy day at rest does.</source>
        <translation>Mientras tanto, la previsión no pide ningún refuerzo. Lo pide un día húmedo en reposo.</translation>
    </message>
    <message>
        <source>From %1 to %2.</source>
        <translation>Del %1 al %2.</translation>
    </message>
    <message>
        <source>Sessions are as long as usual again. Talk to your prescriber or nurse about the answer.</source>
        <translation>Las sesiones vuelven a durar lo habitual. Hable de la respuesta con su médico o el personal de enfermería.</translation>
    </message>
    <message>
        <source>Shorter session compared with the usual one since %1</source>
        <translation>Sesión más corta comparada con la habitual desde el %1</translation>
    </message>
    <message>
        <source>pair %1 of %2; no answer yet</source>
        <translation>pareja %1 de %2; aún sin respuesta</translation>
    </message>
    <message>
        <source>You compare: this time the shorter session, %1.</source>
        <translation>Usted compara: esta vez la sesión más corta, %1.</translation>
    </message>
    <message>
        <source>You compare: this time the usual session, %1.</source>
        <translation>Usted compara: esta vez la sesión habitual, %1.</translation>
    </message>
    <message>
        <source>You compare session lengths: pair %1 of %2. The forecast calls for no top-up meanwhile; a clammy day at rest does.</source>
        <translation>Usted compara duraciones de sesión: pareja %1 de %2. Mientras tanto, la previsión no pide ningún refuerzo; lo pide un día húmedo en reposo.</translation>
    </message>
</context>
<context>
    <name>WorkingCard</name>
    <message>
        <source>Your dry spells, %1</source>
        <translation>Sus periodos secos, %1</translation>
    </message>
    <message>
        <source>Dry days after each session, the latest last. A point on top: still dry when the next session came, or dry today.</source>
        <translation>Días secos tras cada sesión, la última al final. Una punta arriba: la piel aún seca al llegar la siguiente sesión, o seca hoy.</translation>
    </message>
    <message>
        <source>A bar for each dry spell comes here once the course is under way.</source>
        <translation>Aquí llega una barra por cada periodo seco cuando el ciclo esté en marcha.</translation>
    </message>
</context>
<context>
    <name>firstdew::app::Reminding</name>
    <message>
        <source>Later</source>
        <translation>Más tarde</translation>
    </message>
    <message>
        <source>Start</source>
        <translation>Empezar</translation>
    </message>
</context>
<context>
    <name>firstdew::controls::DampnessChart</name>
    <message>
        <source>Chance</source>
        <translation>Probabilidad</translation>
    </message>
</context>
<context>
    <name>firstdew::controls::DrySpellChart</name>
    <message>
        <source>Today, day %1</source>
        <translation>Hoy, día %1</translation>
    </message>
    <message>
        <source>Days since the session</source>
        <translation>Días desde la sesión</translation>
    </message>
</context>
<context>
    <name>firstdew::controls::SpellColumnsChart</name>
    <message numerus="yes">
        <source>%1: %n day(s) dry</source>
        <translation>
            <numerusform>%1: %n día seco</numerusform>
            <numerusform>%1: %n días secos</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>firstdew::viewmodels::BathModel</name>
    <message>
        <source>Write down who approved it, so that the summary can say so.</source>
        <translation>Escriba quién lo autorizó, para que figure en el resumen.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
</context>
<context>
    <name>firstdew::viewmodels::DiaryModel</name>
    <message numerus="yes">
        <source>%1: %n day(s)</source>
        <translation>
            <numerusform>%1: %n día</numerusform>
            <numerusform>%1: %n días</numerusform>
        </translation>
    </message>
    <message>
        <source>Nothing noted in this time</source>
        <translation>Nada anotado en este periodo</translation>
    </message>
    <message numerus="yes">
        <source>%n session(s)</source>
        <translation>
            <numerusform>%n sesión</numerusform>
            <numerusform>%n sesiones</numerusform>
        </translation>
    </message>
    <message>
        <source>session</source>
        <translation>sesión</translation>
    </message>
    <message>
        <source>Week from %1</source>
        <translation>Semana desde el %1</translation>
    </message>
    <message numerus="yes">
        <source>%n damp day(s) of %1 with a check-in</source>
        <translation>
            <numerusform>%n día húmedo de %1 con anotación</numerusform>
            <numerusform>%n días húmedos de %1 con anotación</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>firstdew::viewmodels::KeepModel</name>
    <message>
        <source>Save as</source>
        <translation>Guardar como</translation>
    </message>
</context>
</TS>
