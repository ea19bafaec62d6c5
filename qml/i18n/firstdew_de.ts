<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de_DE">
<context>
    <name>About</name>
    <message>
        <source>About and cautions</source>
        <translation>Über Firstdew und Warnhinweise</translation>
    </message>
    <message>
        <source>Privacy</source>
        <translation>Privatsphäre</translation>
    </message>
    <message>
        <source>No account, no network. Nothing leaves this phone unless you share it.</source>
        <translation>Kein Konto, kein Netz. Nichts verlässt dieses Telefon, außer Sie teilen es.</translation>
    </message>
    <message>
        <source>Firstdew %1</source>
        <translation>Firstdew %1</translation>
    </message>
    <message>
        <source>Free software under the Apache licence 2.0. Typefaces Inter and Noto Sans Arabic under the SIL Open Font Licence 1.1.</source>
        <translation>Freie Software unter der Apache-Lizenz 2.0. Schriften Inter und Noto Sans Arabic unter der SIL Open Font License 1.1.</translation>
    </message>
</context>
<context>
    <name>ActionButton</name>
    <message>
        <source>Not possible yet</source>
        <translation>Noch nicht möglich</translation>
    </message>
</context>
<context>
    <name>AppLocked</name>
    <message>
        <source>Confirm that it is you</source>
        <translation>Bestätigen Sie, dass Sie es sind</translation>
    </message>
    <message>
        <source>Firstdew is locked</source>
        <translation>Firstdew ist gesperrt</translation>
    </message>
    <message>
        <source>Firstdew: switch the app lock on or off</source>
        <translation>Firstdew: App-Sperre ein- oder ausschalten</translation>
    </message>
    <message>
        <source>Open Firstdew</source>
        <translation>Firstdew öffnen</translation>
    </message>
    <message>
        <source>Firstdew asks for this phone&apos;s lock before the app lock is switched on or off.</source>
        <translation>Firstdew fragt nach der Sperre dieses Telefons, bevor die App-Sperre ein- oder ausgeschaltet wird.</translation>
    </message>
    <message>
        <source>Your diary opens once this phone&apos;s lock confirms that it is you.</source>
        <translation>Ihr Tagebuch öffnet sich, sobald die Sperre dieses Telefons bestätigt, dass Sie es sind.</translation>
    </message>
    <message>
        <source>Checking …</source>
        <translation>Wird geprüft …</translation>
    </message>
    <message>
        <source>That was not right. Try again.</source>
        <translation>Das war nicht richtig. Versuchen Sie es noch einmal.</translation>
    </message>
    <message>
        <source>Hide what I type</source>
        <translation>Verbergen, was ich schreibe</translation>
    </message>
    <message>
        <source>Show what I type</source>
        <translation>Zeigen, was ich schreibe</translation>
    </message>
    <message>
        <source>This phone did not confirm you. Try again.</source>
        <translation>Dieses Telefon hat Sie nicht bestätigt. Versuchen Sie es noch einmal.</translation>
    </message>
    <message>
        <source>Confirm</source>
        <translation>Bestätigen</translation>
    </message>
    <message>
        <source>Unlock</source>
        <translation>Entsperren</translation>
    </message>
</context>
<context>
    <name>AsTable</name>
    <message>
        <source>As a table</source>
        <translation>Als Tabelle</translation>
    </message>
</context>
<context>
    <name>AwayPage</name>
    <message>
        <source>Days away</source>
        <translation>Abwesend</translation>
    </message>
    <message>
        <source>From</source>
        <translation>Von</translation>
    </message>
    <message>
        <source>To</source>
        <translation>Bis</translation>
    </message>
    <message>
        <source>Add</source>
        <translation>Hinzufügen</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>Remove %1 to %2</source>
        <translation>%1 bis %2 entfernen</translation>
    </message>
    <message>
        <source>No session is planned on these days. The course moves around them. If a top-up would be due then, it is offered before you leave.</source>
        <translation>An diesen Tagen wird keine Sitzung geplant; die Behandlungs­serie weicht aus. Wäre dann eine Auffrischung fällig, wird sie vor der Abreise angeboten.</translation>
    </message>
    <message>
        <source>Taking the kit along</source>
        <translation>Das Zubehör mitnehmen</translation>
    </message>
</context>
<context>
    <name>BackButton</name>
    <message>
        <source>Back</source>
        <translation>Zurück</translation>
    </message>
</context>
<context>
    <name>Bath</name>
    <message>
        <source>Before a session, Firstdew has to know where you treat, with which machine, and your answers to the health questions.</source>
        <translation>Vor einer Sitzung braucht Firstdew: die Stelle, Ihr Gerät und Ihre Antworten auf die Gesundheits­fragen.</translation>
    </message>
</context>
<context>
    <name>BathAfter</name>
    <message>
        <source>Done</source>
        <translation>Fertig</translation>
    </message>
    <message>
        <source>Stopped</source>
        <translation>Gestoppt</translation>
    </message>
    <message>
        <source>The batteries are nearly empty.</source>
        <translation>Die Batterien sind fast leer.</translation>
    </message>
    <message>
        <source>How did it feel?</source>
        <translation>Wie hat es sich angefühlt?</translation>
    </message>
    <message>
        <source>Highest comfortable reading</source>
        <translation>Höchster noch angenehmer Wert</translation>
    </message>
    <message>
        <source>Skin now</source>
        <translation>Haut jetzt</translation>
    </message>
    <message>
        <source>Save in the diary</source>
        <translation>Ins Tagebuch eintragen</translation>
    </message>
    <message>
        <source>Current at zero, machine off. Then take your hands or feet out.</source>
        <translation>Strom auf null, Gerät aus, dann Hände oder Füße herausnehmen.</translation>
    </message>
    <message>
        <source>Current at zero, machine off, then take the pads off.</source>
        <translation>Strom auf null, Gerät aus, dann die Elektroden­polster abnehmen.</translation>
    </message>
    <message>
        <source>Dry your skin and the kit completely.</source>
        <translation>Haut und Zubehör ganz trocknen.</translation>
    </message>
    <message>
        <source>Take the batteries out.</source>
        <translation>Die Batterien herausnehmen.</translation>
    </message>
    <message>
        <source>Look at the skin tomorrow.</source>
        <translation>Morgen die Haut ansehen.</translation>
    </message>
    <message>
        <source>Not entered</source>
        <translation>Nicht eingegeben</translation>
    </message>
    <message>
        <source>Irritated skin settles with rest and plain moisturiser. A mild hydrocortisone cream can help: ask a pharmacist.</source>
        <translation>Gereizte Haut erholt sich mit Ruhe und einfacher Feuchtigkeits­creme. Eine milde Hydrocortison­creme kann helfen: Fragen Sie in der Apotheke.</translation>
    </message>
    <message>
        <source>No further session there until a clinician has seen it. Seek help if it is painful or large.</source>
        <translation>Dort keine weitere Sitzung, bis eine Ärztin oder ein Arzt die Stelle angesehen hat. Holen Sie Hilfe, wenn es schmerzt oder groß ist.</translation>
    </message>
    <message>
        <source>Note (optional)</source>
        <translation>Notiz (freiwillig)</translation>
    </message>
    <message>
        <source>Look at your skin and say how it is.</source>
        <translation>Sehen Sie Ihre Haut an und sagen Sie, wie sie ist.</translation>
    </message>
    <message>
        <source>Did somebody teach you this session?</source>
        <translation>Hat Sie jemand bei dieser Sitzung angeleitet?</translation>
    </message>
    <message>
        <source>Mark it</source>
        <translation>Festhalten</translation>
    </message>
    <message>
        <source>The current would not rise</source>
        <translation>Der Strom stieg nicht</translation>
    </message>
</context>
<context>
    <name>BathAsLast</name>
    <message>
        <source>Next: %1</source>
        <translation>Als Nächstes: %1</translation>
    </message>
    <message>
        <source>Change</source>
        <translation>Ändern</translation>
    </message>
    <message>
        <source>Adult beside the child: %1</source>
        <translation>Erwachsene Begleitperson: %1</translation>
    </message>
    <message>
        <source>True</source>
        <translation>Stimmt</translation>
    </message>
    <message>
        <source>Not quite</source>
        <translation>Nicht ganz</translation>
    </message>
    <message>
        <source>Set up, then switch on</source>
        <translation>Aufbauen, dann einschalten</translation>
    </message>
    <message>
        <source>The batteries are nearly empty. Have new ones at hand.</source>
        <translation>Die Batterien sind fast leer. Halten Sie neue bereit.</translation>
    </message>
    <message>
        <source>Continue</source>
        <translation>Weiter</translation>
    </message>
    <message>
        <source>Enough for today</source>
        <translation>Genug für heute</translation>
    </message>
    <message>
        <source>Practice without current</source>
        <translation>Üben ohne Strom</translation>
    </message>
</context>
<context>
    <name>BathBlocked</name>
    <message>
        <source>No session now</source>
        <translation>Jetzt keine Sitzung</translation>
    </message>
    <message>
        <source>Ask a clinician first</source>
        <translation>Erst ärztlichen Rat holen</translation>
    </message>
    <message>
        <source>Because of this, there must be no session until a clinician has approved treatment:</source>
        <translation>Deshalb darf es keine Sitzung geben, bis das ärztlich freigegeben ist:</translation>
    </message>
    <message>
        <source>Go on only with a clinician&apos;s word on this:</source>
        <translation>Weiter nur mit ärztlicher Freigabe für diesen Punkt:</translation>
    </message>
    <message>
        <source>What is safe now: leave the machine off. Nothing is lost by waiting.</source>
        <translation>Sicher ist jetzt: Gerät ausgeschaltet lassen. Durch Warten geht nichts verloren.</translation>
    </message>
    <message>
        <source>A clinician has approved it</source>
        <translation>Es ist ärztlich freigegeben</translation>
    </message>
    <message>
        <source>Who approved it</source>
        <translation>Wer hat es freigegeben?</translation>
    </message>
    <message>
        <source>Record and go on</source>
        <translation>Eintragen und weiter</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Zurück</translation>
    </message>
    <message>
        <source>Only if a doctor or nurse who knows of this and of your treatment said yes. The name goes onto the summary.</source>
        <translation>Nur wenn eine Ärztin, ein Arzt oder eine Pflegekraft, die davon und von Ihrer Behandlung weiß, ja gesagt hat. Der Name kommt in den Bericht.</translation>
    </message>
</context>
<context>
    <name>BathChoose</name>
    <message>
        <source>Where</source>
        <translation>Wo</translation>
    </message>
    <message>
        <source>Current</source>
        <translation>Strom</translation>
    </message>
    <message>
        <source>Who can tap the phone</source>
        <translation>Wer kann das Telefon bedienen?</translation>
    </message>
    <message>
        <source>Which side first</source>
        <translation>Welche Seite zuerst?</translation>
    </message>
    <message>
        <source>Right side</source>
        <translation>Rechte Seite</translation>
    </message>
    <message>
        <source>Left side</source>
        <translation>Linke Seite</translation>
    </message>
    <message>
        <source>Adult beside the child: %1</source>
        <translation>Erwachsene Begleitperson: %1</translation>
    </message>
    <message>
        <source>Continue</source>
        <translation>Weiter</translation>
    </message>
    <message>
        <source>Enough for today</source>
        <translation>Genug für heute</translation>
    </message>
    <message>
        <source>Practice without current</source>
        <translation>Üben ohne Strom</translation>
    </message>
</context>
<context>
    <name>BathExits</name>
    <message>
        <source>It is unpleasant</source>
        <translation>Unan­genehm</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Stopp</translation>
    </message>
    <message>
        <source>Stop: a tap anywhere</source>
        <translation>Stopp: irgendwo antippen</translation>
    </message>
    <message>
        <source>A tap anywhere stops.</source>
        <translation>Ein Tippen irgendwohin stoppt.</translation>
    </message>
</context>
<context>
    <name>BathMeanwhile</name>
    <message>
        <source>Welcome back</source>
        <translation>Willkommen zurück</translation>
    </message>
    <message>
        <source>The session was interrupted: %1. The current may still be flowing.</source>
        <translation>Die Sitzung wurde unterbrochen: %1. Der Strom fließt vielleicht noch.</translation>
    </message>
    <message>
        <source>What did the machine do meanwhile?</source>
        <translation>Was hat das Gerät inzwischen getan?</translation>
    </message>
    <message>
        <source>I switched it off</source>
        <translation>Ich habe es ausgeschaltet</translation>
    </message>
    <message>
        <source>I took hands or feet out</source>
        <translation>Ich habe Hände oder Füße herausgenommen</translation>
    </message>
    <message>
        <source>I do not know</source>
        <translation>Ich weiß es nicht</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Stopp</translation>
    </message>
    <message>
        <source>If you are unsure: machine off now. Switched off less than ten minutes ago, the session goes on; otherwise it starts again or ends, and what you did is kept.</source>
        <translation>Wenn Sie unsicher sind: jetzt Gerät aus. Wurde es vor weniger als zehn Minuten ausgeschaltet, geht die Sitzung weiter; sonst beginnt sie von vorn oder endet. Was Sie gemacht haben, bleibt erhalten.</translation>
    </message>
</context>
<context>
    <name>BathMeter</name>
    <message>
        <source>Aim %1</source>
        <translation>Ziel %1</translation>
    </message>
    <message>
        <source>Limit %1</source>
        <translation>Grenze %1</translation>
    </message>
    <message>
        <source>Meter: %1</source>
        <translation>Anzeige: %1</translation>
    </message>
    <message>
        <source>Meter shows less</source>
        <translation>Anzeige zeigt weniger</translation>
    </message>
    <message>
        <source>Enter the meter reading, now %1</source>
        <translation>Angezeigten Wert eingeben, jetzt %1</translation>
    </message>
    <message>
        <source>Meter shows more</source>
        <translation>Anzeige zeigt mehr</translation>
    </message>
    <message>
        <source>Meter reading, mA</source>
        <translation>Anzeige, mA</translation>
    </message>
    <message>
        <source>Delete</source>
        <translation>Löschen</translation>
    </message>
    <message>
        <source>Enter</source>
        <translation>Eingeben</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Stopp</translation>
    </message>
    <message>
        <source>Practice: enter any number</source>
        <translation>Übung: eine beliebige Zahl eingeben</translation>
    </message>
    <message>
        <source>Enter meter reading</source>
        <translation>Anzeige eingeben</translation>
    </message>
    <message>
        <source>Enter the meter reading</source>
        <translation>Angezeigten Wert eingeben</translation>
    </message>
    <message>
        <source>Above the limit of %1</source>
        <translation>Über der Grenze von %1</translation>
    </message>
</context>
<context>
    <name>BathPracticeOver</name>
    <message>
        <source>That was practice</source>
        <translation>Das war eine Übung</translation>
    </message>
    <message>
        <source>Nothing of it was recorded.</source>
        <translation>Davon wurde nichts aufgezeichnet.</translation>
    </message>
    <message>
        <source>After a real session you dry your skin and the kit, say how it felt, and look at your skin.</source>
        <translation>Nach einer echten Sitzung trocknen Sie Haut und Zubehör, sagen, wie es war, und sehen sich Ihre Haut an.</translation>
    </message>
    <message>
        <source>Practise again</source>
        <translation>Noch einmal üben</translation>
    </message>
    <message>
        <source>Leave practice</source>
        <translation>Übung verlassen</translation>
    </message>
</context>
<context>
    <name>BathPracticeStart</name>
    <message>
        <source>Practice</source>
        <translation>Übung</translation>
    </message>
    <message>
        <source>Go through a whole session with the machine off: every step, picture and spoken word. Nothing is recorded.</source>
        <translation>Gehen Sie eine ganze Sitzung mit aus­geschaltetem Gerät durch: jeder Schritt, jedes Bild, jede Ansage. Nichts wird aufgezeichnet.</translation>
    </message>
    <message numerus="yes">
        <source>What takes minutes takes %n second(s) here.</source>
        <translation>
            <numerusform>Was Minuten dauert, dauert hier %n Sekunde.</numerusform>
            <numerusform>Was Minuten dauert, dauert hier %n Sekunden.</numerusform>
        </translation>
    </message>
    <message>
        <source>Where</source>
        <translation>Wo</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Zurück</translation>
    </message>
    <message>
        <source>Begin practice</source>
        <translation>Übung beginnen</translation>
    </message>
    <message>
        <source>Leave the machine off the whole time.</source>
        <translation>Lassen Sie das Gerät die ganze Zeit aus.</translation>
    </message>
</context>
<context>
    <name>BathPrepare</name>
    <message>
        <source>Prepare: %1</source>
        <translation>Vorbereiten: %1</translation>
    </message>
    <message>
        <source>About 12 hours ago</source>
        <translation>Vor etwa 12 Stunden</translation>
    </message>
    <message>
        <source>Within a few hours</source>
        <translation>In den letzten Stunden</translation>
    </message>
    <message>
        <source>Two days ago</source>
        <translation>Vor zwei Tagen</translation>
    </message>
    <message>
        <source>Yesterday</source>
        <translation>Gestern</translation>
    </message>
    <message>
        <source>Today</source>
        <translation>Heute</translation>
    </message>
    <message>
        <source>Test the volume</source>
        <translation>Lautstärke prüfen</translation>
    </message>
    <message>
        <source>Begin</source>
        <translation>Beginnen</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Zurück</translation>
    </message>
    <message>
        <source>No</source>
        <translation>Nein</translation>
    </message>
    <message>
        <source>Yes</source>
        <translation>Ja</translation>
    </message>
    <message>
        <source>The batteries are nearly empty. Have new ones at hand.</source>
        <translation>Die Batterien sind fast leer. Halten Sie neue bereit.</translation>
    </message>
    <message>
        <source>You raise and lower with the remote control. While your hands are in, any key or a tap anywhere on the screen, with elbow or nose, stops. For the swap: meter at zero, hands out, dry them, swap, tap. The phone waits. It cannot see the current: watch the meter yourself.</source>
        <translation>Sie regeln mit der Fern­bedienung hoch und herunter. Solange Ihre Hände im Wasser sind, heißt jede Taste und jedes Tippen auf den Bildschirm, mit Ellbogen oder Nase: Stopp. Zum Umpolen: Anzeige auf null, Hände heraus, abtrocknen, umpolen, tippen. Das Telefon wartet. Es sieht den Strom nicht: Achten Sie selbst auf die Anzeige.</translation>
    </message>
    <message>
        <source>All checked</source>
        <translation>Alles geprüft</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 von %2</translation>
    </message>
    <message>
        <source>Next</source>
        <translation>Weiter</translation>
    </message>
    <message>
        <source>Checked</source>
        <translation>Geprüft</translation>
    </message>
    <message>
        <source>A soft sound runs through the session. If it stops, turn the current to zero and switch the machine off.</source>
        <translation>Ein leises Rauschen läuft während der ganzen Sitzung. Wenn es aufhört, regeln Sie den Strom auf null und schalten das Gerät aus.</translation>
    </message>
    <message>
        <source>%1: antiperspirant with aluminium in the last 24 hours?</source>
        <translation>%1: in den letzten 24 Stunden ein Anti­transpirant mit Aluminium benutzt?</translation>
    </message>
    <message>
        <source>%1: shaved in the last three days?</source>
        <translation>%1: in den letzten drei Tagen rasiert?</translation>
    </message>
    <message>
        <source>%1: small cuts on the skin?</source>
        <translation>%1: kleine Schnitte in der Haut?</translation>
    </message>
</context>
<context>
    <name>BathRun</name>
    <message>
        <source>Next: %1</source>
        <translation>Danach: %1</translation>
    </message>
    <message>
        <source>Too high. Turn it down on the machine now.</source>
        <translation>Zu hoch. Jetzt am Gerät herunterregeln.</translation>
    </message>
    <message>
        <source>Down to %1 or less. Then enter what the meter shows.</source>
        <translation>Auf %1 oder weniger. Dann eingeben, was die Anzeige zeigt.</translation>
    </message>
    <message>
        <source>The last steps could not be saved yet. The session goes on; it is tried again.</source>
        <translation>Die letzten Schritte ließen sich noch nicht speichern. Die Sitzung geht weiter; es wird noch einmal versucht.</translation>
    </message>
    <message>
        <source>You cannot hear Firstdew right now. Watch the screen, or stop.</source>
        <translation>Firstdew ist gerade nicht zu hören. Achten Sie auf den Bildschirm oder stoppen Sie.</translation>
    </message>
    <message>
        <source>Down</source>
        <translation>Runter</translation>
    </message>
    <message>
        <source>Still %1</source>
        <translation>Immer noch %1</translation>
    </message>
    <message>
        <source>That was a slip: go on (%1)</source>
        <translation>Das war ein Versehen: weiter (%1)</translation>
    </message>
</context>
<context>
    <name>BathScreening</name>
    <message>
        <source>Health questions</source>
        <translation>Gesundheits­fragen</translation>
    </message>
    <message>
        <source>Has anything changed?</source>
        <translation>Hat sich etwas geändert?</translation>
    </message>
    <message>
        <source>Since you last answered: pregnancy, implants, illness, skin, medicines for the heart, or anything else on the list?</source>
        <translation>Seit Ihrer letzten Antwort: Schwanger­schaft, Implantate, Krankheit, Haut, Herz­medikamente oder sonst etwas auf der Liste?</translation>
    </message>
    <message>
        <source>That is all</source>
        <translation>Das ist alles</translation>
    </message>
    <message>
        <source>Nothing has changed</source>
        <translation>Nichts hat sich geändert</translation>
    </message>
    <message>
        <source>Something has changed</source>
        <translation>Etwas hat sich geändert</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Zurück</translation>
    </message>
    <message>
        <source>Answer each question for the person treated, as things are today.</source>
        <translation>Beantworten Sie jede Frage für die behandelte Person, so wie es heute ist.</translation>
    </message>
    <message>
        <source>The list</source>
        <translation>Die Liste</translation>
    </message>
</context>
<context>
    <name>BotherPage</name>
    <message>
        <source>Over the last week, which comes nearest?</source>
        <translation>Was trifft für die letzte Woche am ehesten zu?</translation>
    </message>
    <message>
        <source>I can live with it, and now and then it gets in my way</source>
        <translation>Ich kann damit leben, und ab und zu stört es mich</translation>
    </message>
    <message>
        <source>I can barely live with it, and it often gets in my way</source>
        <translation>Ich kann kaum damit leben, und es stört mich oft</translation>
    </message>
    <message>
        <source>I cannot live with it; it is always in my way</source>
        <translation>Ich kann nicht damit leben; es stört mich immer</translation>
    </message>
    <message>
        <source>How much the sweating bothers you</source>
        <translation>Wie sehr das Schwitzen Sie stört</translation>
    </message>
    <message>
        <source>I hardly notice it, and it never gets in my way</source>
        <translation>Ich bemerke es kaum, und es stört mich nie</translation>
    </message>
</context>
<context>
    <name>BottomBar</name>
    <message>
        <source>Places</source>
        <translation>Bereiche</translation>
    </message>
</context>
<context>
    <name>CareSheetPage</name>
    <message>
        <source>Care sheet</source>
        <translation>Behandlungs­blatt</translation>
    </message>
    <message>
        <source>From %1, %2</source>
        <translation>Von %1, %2</translation>
    </message>
    <message>
        <source>Add a care sheet</source>
        <translation>Behandlungs­blatt hinzufügen</translation>
    </message>
    <message>
        <source>Use this care sheet</source>
        <translation>Dieses Blatt übernehmen</translation>
    </message>
    <message>
        <source>Show as a code to scan</source>
        <translation>Als Code zum Einlesen zeigen</translation>
    </message>
    <message>
        <source>The care sheet as a QR code</source>
        <translation>Das Behandlungs­blatt als QR-Code</translation>
    </message>
    <message>
        <source>It holds the whole care sheet. Show it only to those who treat you.</source>
        <translation>Er enthält das ganze Behandlungs­blatt. Zeigen Sie ihn nur denen, die Sie behandeln.</translation>
    </message>
    <message>
        <source>In use for: %1</source>
        <translation>Gilt für: %1</translation>
    </message>
    <message>
        <source>This care sheet changes nothing: you already have it, or a newer one is in use.</source>
        <translation>Dieses Blatt ändert nichts: Sie haben es schon, oder ein neueres gilt.</translation>
    </message>
    <message>
        <source>Allows more than now. %1</source>
        <translation>Erlaubt mehr als jetzt. %1</translation>
    </message>
    <message>
        <source>My prescriber told me that more is allowed from now on</source>
        <translation>Meine Praxis hat mir gesagt, dass ab jetzt mehr erlaubt ist</translation>
    </message>
    <message>
        <source>From your prescriber: the code on paper or on another phone, a picture of it, or a file. No care sheet can raise the usual limits.</source>
        <translation>Von Ihrer Praxis: der Code auf Papier oder einem anderen Telefon, ein Bild davon oder eine Datei. Kein Behandlungs­blatt kann die üblichen Grenzen erhöhen.</translation>
    </message>
    <message>
        <source>Stop the camera</source>
        <translation>Kamera anhalten</translation>
    </message>
    <message>
        <source>Scan the code</source>
        <translation>Code einlesen</translation>
    </message>
    <message>
        <source>What the camera sees. Hold the code in the middle.</source>
        <translation>Was die Kamera sieht. Halten Sie den Code in die Mitte.</translation>
    </message>
    <message>
        <source>The camera cannot be used. Take a picture of the code and choose that.</source>
        <translation>Die Kamera lässt sich nicht verwenden. Machen Sie ein Bild vom Code und wählen Sie es aus.</translation>
    </message>
</context>
<context>
    <name>CasePage</name>
    <message>
        <source>Name not given</source>
        <translation>Kein Name angegeben</translation>
    </message>
    <message>
        <source>Choose somebody from the caseload.</source>
        <translation>Wählen Sie jemanden aus der Liste Ihrer Betreuten.</translation>
    </message>
</context>
<context>
    <name>CaseRow</name>
    <message>
        <source>Name not given</source>
        <translation>Kein Name angegeben</translation>
    </message>
</context>
<context>
    <name>CaseText</name>
    <message>
        <source>%1: blister or burn since %2</source>
        <translation>%1: Blase oder Verbrennung seit dem %2</translation>
    </message>
    <message>
        <source>%1: a health answer stops sessions since %2</source>
        <translation>%1: seit dem %2 keine Sitzungen wegen einer Gesundheits­antwort</translation>
    </message>
    <message>
        <source>%1: stopped in the first course on %2</source>
        <translation>%1: in der ersten Behandlungs­serie aufgehört am %2</translation>
    </message>
    <message>
        <source>%1: the course did not help, last session %2</source>
        <translation>%1: Die Behandlungs­serie hat nicht geholfen, letzte Sitzung am %2</translation>
    </message>
    <message>
        <source>%1: top-up overdue since %2</source>
        <translation>%1: Auffrischung überfällig seit dem %2</translation>
    </message>
    <message>
        <source>Silent since %1</source>
        <translation>Keine Nachricht seit dem %1</translation>
    </message>
    <message>
        <source>Doing well, last entry %1</source>
        <translation>Alles gut, letzter Eintrag am %1</translation>
    </message>
    <message>
        <source>This is another kind of file, or a back-up. Type the passphrase below if it is a back-up.</source>
        <translation>Das ist eine andere Art Datei oder eine Sicherung. Ist es eine Sicherung, geben Sie unten das Kennwort ein.</translation>
    </message>
    <message>
        <source>The passphrase does not open it. Ask its owner for the right one.</source>
        <translation>Das Kennwort öffnet sie nicht. Fragen Sie die Person nach dem richtigen.</translation>
    </message>
    <message>
        <source>This folder cannot be read now. Look whether it is still there, or choose another one.</source>
        <translation>Dieser Ordner lässt sich jetzt nicht lesen. Sehen Sie nach, ob er noch da ist, oder wählen Sie einen anderen.</translation>
    </message>
    <message>
        <source>This folder holds too many files. Put the records into a folder of their own.</source>
        <translation>In diesem Ordner sind zu viele Dateien. Legen Sie die Aufzeichnungen in einen eigenen Ordner.</translation>
    </message>
    <message>
        <source>It is damaged, or came over in part. Ask its owner to send it again.</source>
        <translation>Sie ist beschädigt oder nur zum Teil angekommen. Bitten Sie die Person, sie noch einmal zu senden.</translation>
    </message>
    <message>
        <source>%1: dry spells shorter since about %2</source>
        <translation>%1: trockene Zeiten kürzer, etwa seit dem %2</translation>
    </message>
</context>
<context>
    <name>CaseView</name>
    <message>
        <source>Make a care sheet</source>
        <translation>Behandlungs­blatt ausfüllen</translation>
    </message>
    <message>
        <source>Share the summary</source>
        <translation>Bericht teilen</translation>
    </message>
    <message>
        <source>The summary of %1</source>
        <translation>Der Bericht von %1</translation>
    </message>
</context>
<context>
    <name>Caseload</name>
    <message>
        <source>Caseload</source>
        <translation>Meine Betreuten</translation>
    </message>
    <message>
        <source>Reading file %1 of %2</source>
        <translation>Datei %1 von %2 wird gelesen</translation>
    </message>
    <message>
        <source>%1 of %2 need a call.</source>
        <translation>Ein Anruf ist nötig bei %1 von %2.</translation>
    </message>
    <message>
        <source>All are doing well.</source>
        <translation>Allen geht es gut.</translation>
    </message>
    <message numerus="yes">
        <source>%n file(s) could not be read. See the end of the list.</source>
        <translation>
            <numerusform>%n Datei ließ sich nicht lesen. Siehe Ende der Liste.</numerusform>
            <numerusform>%n Dateien ließen sich nicht lesen. Siehe Ende der Liste.</numerusform>
        </translation>
    </message>
    <message>
        <source>There are no records in these files.</source>
        <translation>In diesen Dateien sind keine Aufzeichnungen.</translation>
    </message>
    <message>
        <source>Ask the people you teach for their record or back-up, and put the files into one folder. They are read here and stay as they are.</source>
        <translation>Bitten Sie die Menschen, die Sie anleiten, um ihre Aufzeichnung oder Sicherung und legen Sie die Dateien in einen Ordner. Sie werden hier gelesen und bleiben, wie sie sind.</translation>
    </message>
    <message>
        <source>Not read</source>
        <translation>Nicht gelesen</translation>
    </message>
    <message>
        <source>Passphrase of the back-ups</source>
        <translation>Kennwort der Sicherungen</translation>
    </message>
    <message>
        <source>It is forgotten when you close Firstdew.</source>
        <translation>Es wird vergessen, wenn Sie Firstdew schließen.</translation>
    </message>
    <message>
        <source>Open with this passphrase</source>
        <translation>Mit diesem Kennwort öffnen</translation>
    </message>
    <message>
        <source>Where the records are</source>
        <translation>Wo die Aufzeichnungen liegen</translation>
    </message>
    <message>
        <source>Choose the folder</source>
        <translation>Ordner auswählen</translation>
    </message>
    <message>
        <source>Add a file</source>
        <translation>Datei hinzufügen</translation>
    </message>
    <message>
        <source>Read the files again</source>
        <translation>Dateien neu lesen</translation>
    </message>
    <message>
        <source>Read the files in %1</source>
        <translation>Dateien in %1 lesen</translation>
    </message>
    <message>
        <source>Make a care sheet</source>
        <translation>Behandlungs­blatt ausfüllen</translation>
    </message>
    <message>
        <source>Choose somebody from the list.</source>
        <translation>Wählen Sie jemanden aus der Liste.</translation>
    </message>
    <message>
        <source>Name not given</source>
        <translation>Kein Name angegeben</translation>
    </message>
</context>
<context>
    <name>CheckInCard</name>
    <message>
        <source>%1 today?</source>
        <translation>%1 heute?</translation>
    </message>
</context>
<context>
    <name>CheckedIn</name>
    <message>
        <source>Undo</source>
        <translation>Rückgängig</translation>
    </message>
    <message>
        <source>Change</source>
        <translation>Ändern</translation>
    </message>
</context>
<context>
    <name>ChoiceChip</name>
    <message>
        <source>Not possible yet</source>
        <translation>Noch nicht möglich</translation>
    </message>
</context>
<context>
    <name>ComparisonCard</name>
    <message>
        <source>Is a shorter session enough?</source>
        <translation>Reicht eine kürzere Sitzung?</translation>
    </message>
    <message>
        <source>You can find out by comparing the two, one dry spell after the other.</source>
        <translation>Das finden Sie heraus, indem Sie beide vergleichen, eine trockene Zeit nach der anderen.</translation>
    </message>
    <message>
        <source>How it works</source>
        <translation>So geht es</translation>
    </message>
    <message>
        <source>Compare again</source>
        <translation>Noch einmal vergleichen</translation>
    </message>
    <message>
        <source>My prescriber or nurse agrees</source>
        <translation>Meine Praxis oder Pflegekraft ist einverstanden</translation>
    </message>
    <message>
        <source>Start comparing</source>
        <translation>Vergleich beginnen</translation>
    </message>
    <message>
        <source>Leave the comparison</source>
        <translation>Vergleich beenden</translation>
    </message>
</context>
<context>
    <name>CourseDates</name>
    <message>
        <source>%1, done</source>
        <translation>%1, erledigt</translation>
    </message>
    <message>
        <source>%1, planned. Tap to move it.</source>
        <translation>%1, geplant. Antippen, um sie zu verschieben.</translation>
    </message>
    <message>
        <source>Move session %1</source>
        <translation>Sitzung %1 verschieben</translation>
    </message>
</context>
<context>
    <name>CoursePlan</name>
    <message>
        <source>Sessions of this course</source>
        <translation>Sitzungen dieser Behandlungs­serie</translation>
    </message>
    <message>
        <source>Move</source>
        <translation>Verschieben</translation>
    </message>
    <message>
        <source>Planned to end by %1. If you miss a session, the rest moves.</source>
        <translation>Endet möglichst bis spätestens %1. Eine versäumte Sitzung verschiebt sich von selbst; der Rest wird neu geplant.</translation>
    </message>
    <message>
        <source>Start again</source>
        <translation>Neu beginnen</translation>
    </message>
    <message>
        <source>Choose</source>
        <translation>Wählen</translation>
    </message>
    <message>
        <source>First session</source>
        <translation>Erste Sitzung</translation>
    </message>
    <message>
        <source>Days that suit you (none = any day)</source>
        <translation>Tage, die Ihnen passen (ohne Auswahl: alle)</translation>
    </message>
    <message>
        <source>Plan the course</source>
        <translation>Behandlungs­serie planen</translation>
    </message>
    <message>
        <source>Move session %1</source>
        <translation>Sitzung %1 verschieben</translation>
    </message>
    <message>
        <source>New day</source>
        <translation>Neuer Tag</translation>
    </message>
    <message>
        <source>Plan a course</source>
        <translation>Eine Behandlungs­serie planen</translation>
    </message>
    <message>
        <source>Single sessions keep you dry now. A whole course is for the beginning, or when full sweating is back.</source>
        <translation>Einzelne Sitzungen halten Sie jetzt trocken. Eine ganze Behandlungs­serie ist für den Anfang da, oder wenn das starke Schwitzen wieder da ist.</translation>
    </message>
    <message>
        <source>Where sessions crowd</source>
        <translation>Wenn Sitzungen dicht aufeinander folgen</translation>
    </message>
    <message>
        <source>Close together</source>
        <translation>Dicht hintereinander</translation>
    </message>
    <message>
        <source>A day between</source>
        <translation>Mit einem Tag dazwischen</translation>
    </message>
</context>
<context>
    <name>DampnessLine</name>
    <message>
        <source>Dampness over time, %1</source>
        <translation>Feuchte im Verlauf, %1</translation>
    </message>
    <message>
        <source>Marks below show your sessions. Diamonds above: weighings, in mg a minute.</source>
        <translation>Striche unten: Ihre Sitzungen. Rauten oben: gewogener Schweiß, in mg je Minute.</translation>
    </message>
    <message>
        <source>Marks below show your sessions.</source>
        <translation>Striche unten: Ihre Sitzungen.</translation>
    </message>
    <message>
        <source>No check-in in this time.</source>
        <translation>Kein Tages­eintrag in dieser Zeit.</translation>
    </message>
    <message numerus="yes">
        <source>%n check-in(s) here. After two weeks of them the line begins to tell how long you stay dry.</source>
        <translation>
            <numerusform>%n Tages­eintrag hier. Nach zwei Wochen mit Einträgen beginnt die Linie zu zeigen, wie lange Sie trocken bleiben.</numerusform>
            <numerusform>%n Tages­einträge hier. Nach zwei Wochen mit Einträgen beginnt die Linie zu zeigen, wie lange Sie trocken bleiben.</numerusform>
        </translation>
    </message>
    <message>
        <source>Diamonds above: weighings, in mg a minute.</source>
        <translation>Rauten oben: gewogener Schweiß, in mg je Minute.</translation>
    </message>
    <message>
        <source>Meter readings of the sessions, %1</source>
        <translation>Messwerte bei den Sitzungen, %1</translation>
    </message>
    <message>
        <source>Dots: highest comfortable reading of each session, in mA. Rings: where it was unpleasant or painful.</source>
        <translation>Punkte: höchster angenehmer Messwert jeder Sitzung, in mA. Ringe: wo es unangenehm oder schmerzhaft war.</translation>
    </message>
</context>
<context>
    <name>DayPage</name>
    <message>
        <source>Corrected; the first entry is kept beside it.</source>
        <translation>Berichtigt; der erste Eintrag bleibt daneben erhalten.</translation>
    </message>
    <message>
        <source>Finished, %1</source>
        <translation>Beendet, %1</translation>
    </message>
    <message>
        <source>Comfortable at %1</source>
        <translation>Angenehm bei %1</translation>
    </message>
    <message>
        <source>How much it bothers you: %1 of 4</source>
        <translation>Belastung %1 von 4</translation>
    </message>
    <message>
        <source>Skin: %1</source>
        <translation>Haut: %1</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Behalten</translation>
    </message>
    <message>
        <source>More than the usual upper limit of healthy people.</source>
        <translation>Mehr als die übliche Obergrenze bei gesunden Menschen.</translation>
    </message>
    <message>
        <source>Within the usual range of healthy people.</source>
        <translation>Im üblichen Bereich bei gesunden Menschen.</translation>
    </message>
    <message>
        <source>Day before</source>
        <translation>Tag davor</translation>
    </message>
    <message>
        <source>Day after</source>
        <translation>Tag danach</translation>
    </message>
    <message>
        <source>Nothing here yet</source>
        <translation>Noch nichts hier</translation>
    </message>
    <message>
        <source>Your notes for a day appear here.</source>
        <translation>Hier steht, was Sie zu einem Tag notieren.</translation>
    </message>
    <message>
        <source>Stopped early, %1</source>
        <translation>Vorzeitig beendet, %1</translation>
    </message>
    <message>
        <source>Correct this session</source>
        <translation>Diese Sitzung berichtigen</translation>
    </message>
    <message>
        <source>Delete this entry</source>
        <translation>Diesen Eintrag löschen</translation>
    </message>
    <message>
        <source>Delete this entry?</source>
        <translation>Diesen Eintrag löschen?</translation>
    </message>
    <message>
        <source>It no longer counts. The original stays in your history.</source>
        <translation>Er zählt nicht mehr. Das Original bleibt in Ihrem Verlauf.</translation>
    </message>
    <message>
        <source>Delete</source>
        <translation>Löschen</translation>
    </message>
    <message>
        <source>Weighing: %1 in %2, %3 a minute</source>
        <translation>Gewogen: %1 in %2, %3 je Minute</translation>
    </message>
</context>
<context>
    <name>DaySheet</name>
    <message>
        <source>Done</source>
        <translation>Fertig</translation>
    </message>
</context>
<context>
    <name>DaySheetPick</name>
    <message>
        <source>The month before</source>
        <translation>Der Monat davor</translation>
    </message>
    <message>
        <source>The month after</source>
        <translation>Der Monat danach</translation>
    </message>
</context>
<context>
    <name>DaysAround</name>
    <message>
        <source>The next fourteen days</source>
        <translation>Die nächsten vierzehn Tage</translation>
    </message>
    <message>
        <source>The last seven days</source>
        <translation>Die letzten sieben Tage</translation>
    </message>
</context>
<context>
    <name>DaysBack</name>
    <message>
        <source>%1, to fill in</source>
        <translation>%1, nachzutragen</translation>
    </message>
</context>
<context>
    <name>DewCall</name>
    <message>
        <source>You put it off to this evening. A reminder will come.</source>
        <translation>Auf heute Abend verschoben. Eine Erinnerung kommt.</translation>
    </message>
    <message>
        <source>Start now</source>
        <translation>Jetzt beginnen</translation>
    </message>
    <message>
        <source>This evening</source>
        <translation>Heute Abend</translation>
    </message>
    <message>
        <source>Tomorrow</source>
        <translation>Morgen</translation>
    </message>
    <message>
        <source>Not this time</source>
        <translation>Diesmal nicht</translation>
    </message>
    <message>
        <source>Why?</source>
        <translation>Warum?</translation>
    </message>
    <message>
        <source>I did one</source>
        <translation>Schon gemacht</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>More</source>
        <translation>Mehr</translation>
    </message>
</context>
<context>
    <name>Diary</name>
    <message>
        <source>Month</source>
        <translation>Monat</translation>
    </message>
    <message>
        <source>Quarter</source>
        <translation>3 Monate</translation>
    </message>
    <message>
        <source>Year</source>
        <translation>Jahr</translation>
    </message>
    <message>
        <source>All</source>
        <translation>Alles</translation>
    </message>
    <message>
        <source>Nothing here yet</source>
        <translation>Noch nichts hier</translation>
    </message>
    <message>
        <source>How much it bothers you</source>
        <translation>Wie sehr es Sie stört</translation>
    </message>
    <message>
        <source>Skin after a session</source>
        <translation>Haut nach der Sitzung</translation>
    </message>
    <message>
        <source>Weighing</source>
        <translation>Schweiß wiegen</translation>
    </message>
    <message>
        <source>Summary for your prescriber</source>
        <translation>Bericht für Ihre Praxis</translation>
    </message>
    <message>
        <source>Filter: on</source>
        <translation>Filter: an</translation>
    </message>
    <message>
        <source>Filter</source>
        <translation>Filter</translation>
    </message>
    <message>
        <source>Earlier</source>
        <translation>Früher</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>Later</source>
        <translation>Später</translation>
    </message>
    <message>
        <source>More about this day</source>
        <translation>Mehr ansehen und notieren</translation>
    </message>
    <message>
        <source>See a day</source>
        <translation>Einzelne Tage ansehen</translation>
    </message>
    <message>
        <source>What is shown</source>
        <translation>Was gezeigt wird</translation>
    </message>
    <message>
        <source>Where</source>
        <translation>Wo</translation>
    </message>
    <message>
        <source>Everywhere</source>
        <translation>Überall</translation>
    </message>
    <message>
        <source>Sessions and readings</source>
        <translation>Sitzungen und Messwerte</translation>
    </message>
    <message>
        <source>Shown</source>
        <translation>Gezeigt</translation>
    </message>
    <message>
        <source>Hidden</source>
        <translation>Ausgeblendet</translation>
    </message>
    <message>
        <source>Leave out days with</source>
        <translation>Tage auslassen mit</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Fertig</translation>
    </message>
    <message>
        <source>Left out: days with %1</source>
        <translation>Ausgelassen: Tage mit %1</translation>
    </message>
    <message>
        <source>Send to your prescriber</source>
        <translation>An Ihre Praxis schicken</translation>
    </message>
    <message>
        <source>Other treatments</source>
        <translation>Andere Behandlungen</translation>
    </message>
    <message>
        <source>Each check-in on Today draws one dot here. After two weeks of them you see how long you stay dry, and if the treatment works.</source>
        <translation>Jeder Tages­eintrag unter „Heute“ zeichnet hier einen Punkt. Nach zwei Wochen mit Einträgen sehen Sie, wie lange Sie trocken bleiben und ob die Behandlung wirkt.</translation>
    </message>
</context>
<context>
    <name>DonePage</name>
    <message>
        <source>Correct this session</source>
        <translation>Diese Sitzung berichtigen</translation>
    </message>
    <message>
        <source>A session I did</source>
        <translation>Eine Sitzung, die ich gemacht habe</translation>
    </message>
    <message>
        <source>Where</source>
        <translation>Wo</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Wann</translation>
    </message>
    <message>
        <source>Today</source>
        <translation>Heute</translation>
    </message>
    <message>
        <source>Yesterday</source>
        <translation>Gestern</translation>
    </message>
    <message>
        <source>Or another day</source>
        <translation>Oder ein anderer Tag</translation>
    </message>
    <message>
        <source>To its end?</source>
        <translation>Bis zum Ende?</translation>
    </message>
    <message>
        <source>Yes</source>
        <translation>Ja</translation>
    </message>
    <message>
        <source>Stopped early</source>
        <translation>Vorzeitig beendet</translation>
    </message>
    <message>
        <source>Current</source>
        <translation>Strom</translation>
    </message>
    <message>
        <source>How did it feel?</source>
        <translation>Wie hat es sich angefühlt?</translation>
    </message>
    <message>
        <source>Skin since then</source>
        <translation>Haut seither</translation>
    </message>
    <message>
        <source>Note (optional)</source>
        <translation>Notiz (freiwillig)</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Speichern</translation>
    </message>
</context>
<context>
    <name>Drawings</name>
    <message>
        <source>A hand. The ring comes off, the watch lies beside it.</source>
        <translation>Eine Hand. Der Ring wird abgezogen, die Uhr liegt daneben.</translation>
    </message>
    <message>
        <source>A fingertip puts a thin layer of jelly on a cut, and only there.</source>
        <translation>Eine Fingerspitze trägt eine dünne Schicht Vaseline auf einen Schnitt auf, und nur dort.</translation>
    </message>
    <message>
        <source>Two trays are put on a wooden table.</source>
        <translation>Zwei Schalen werden auf einen Holztisch gestellt.</translation>
    </message>
    <message>
        <source>Two trays are put on the floor in front of a chair.</source>
        <translation>Zwei Schalen werden vor einem Stuhl auf den Boden gestellt.</translation>
    </message>
    <message>
        <source>The plate goes into the tray, and the grid over the plate.</source>
        <translation>Die Platte kommt in die Schale, das Gitter über die Platte.</translation>
    </message>
    <message>
        <source>Two pads go into a bowl of water.</source>
        <translation>Zwei Elektrodenpolster kommen in eine Schüssel mit Wasser.</translation>
    </message>
    <message>
        <source>A battery goes into its place, plus and minus as marked.</source>
        <translation>Eine Batterie kommt in ihr Fach, Plus und Minus wie angegeben.</translation>
    </message>
    <message>
        <source>The machine is off. Two leads are plugged in.</source>
        <translation>Das Gerät ist aus. Zwei Kabel werden eingesteckt.</translation>
    </message>
    <message>
        <source>Two hands in two trays. Between them lies the remote, within their reach.</source>
        <translation>Zwei Hände in zwei Schalen. Dazwischen liegt die Fernbedienung, in ihrer Reichweite.</translation>
    </message>
    <message>
        <source>A finger switches the machine off. The meter shows zero.</source>
        <translation>Ein Finger schaltet das Gerät aus. Die Anzeige steht auf null.</translation>
    </message>
    <message>
        <source>A finger switches the machine on. The light comes on, the meter shows zero.</source>
        <translation>Ein Finger schaltet das Gerät ein. Das Licht geht an, die Anzeige steht auf null.</translation>
    </message>
    <message>
        <source>The meter under a magnifying glass. It shows zero.</source>
        <translation>Die Anzeige unter einer Lupe. Sie steht auf null.</translation>
    </message>
    <message>
        <source>Fingers turn the knob up in small steps. The meter rises.</source>
        <translation>Finger drehen den Regler in kleinen Schritten hoch. Die Anzeige steigt.</translation>
    </message>
    <message>
        <source>Fingers turn the knob down in small steps. The meter is at zero.</source>
        <translation>Finger drehen den Regler in kleinen Schritten herunter. Die Anzeige steht auf null.</translation>
    </message>
    <message>
        <source>A finger on the upper button of the remote. Up in small steps.</source>
        <translation>Ein Finger auf der oberen Taste der Fernbedienung. In kleinen Schritten hoch.</translation>
    </message>
    <message>
        <source>A finger on the lower button of the remote. Down in small steps.</source>
        <translation>Ein Finger auf der unteren Taste der Fernbedienung. In kleinen Schritten herunter.</translation>
    </message>
    <message>
        <source>Two hands flat in two trays, under water.</source>
        <translation>Zwei Hände flach in zwei Schalen, unter Wasser.</translation>
    </message>
    <message>
        <source>Two feet flat in two trays, under water.</source>
        <translation>Zwei Füße flach in zwei Schalen, unter Wasser.</translation>
    </message>
    <message>
        <source>A pad under each arm, each on a lead to the machine.</source>
        <translation>Ein Elektrodenpolster unter jedem Arm, jedes mit einem Kabel am Gerät.</translation>
    </message>
    <message>
        <source>Both hands come out of the trays.</source>
        <translation>Beide Hände kommen aus den Schalen.</translation>
    </message>
    <message>
        <source>The meter shows zero. Each lead goes to the place of the other.</source>
        <translation>Die Anzeige steht auf null. Jedes Kabel kommt an den Platz des anderen.</translation>
    </message>
    <message>
        <source>The meter shows zero. A finger flips the polarity switch.</source>
        <translation>Die Anzeige steht auf null. Ein Finger legt den Polschalter um.</translation>
    </message>
    <message>
        <source>The two pads change sides: right goes left, left goes right.</source>
        <translation>Die beiden Elektrodenpolster tauschen die Seiten: rechts nach links, links nach rechts.</translation>
    </message>
    <message>
        <source>The pads come off, away from both armpits.</source>
        <translation>Die Elektrodenpolster werden abgenommen, weg von beiden Achseln.</translation>
    </message>
    <message>
        <source>Two hands are dried with a towel.</source>
        <translation>Zwei Hände werden mit einem Handtuch abgetrocknet.</translation>
    </message>
    <message>
        <source>Two feet are dried with a towel.</source>
        <translation>Zwei Füße werden mit einem Handtuch abgetrocknet.</translation>
    </message>
    <message>
        <source>Tray, plate and grid stand upright and drip dry.</source>
        <translation>Schale, Platte und Gitter stehen aufrecht und trocknen ab.</translation>
    </message>
    <message>
        <source>A hand. Under a magnifying glass: a cut and red spots.</source>
        <translation>Eine Hand. Unter einer Lupe: ein Schnitt und rote Flecken.</translation>
    </message>
    <message>
        <source>A foot. Under a magnifying glass: a cut and red spots.</source>
        <translation>Ein Fuß. Unter einer Lupe: ein Schnitt und rote Flecken.</translation>
    </message>
    <message>
        <source>One arm raised. Under a magnifying glass: red spots in the armpit.</source>
        <translation>Ein Arm gehoben. Unter einer Lupe: rote Flecken in der Achsel.</translation>
    </message>
    <message>
        <source>An antiperspirant beside an armpit, struck out. Below it: 24 hours.</source>
        <translation>Ein Antitranspirant neben einer Achsel, durchgestrichen. Darunter: 24 Stunden.</translation>
    </message>
    <message>
        <source>A razor beside an armpit, struck out. Below it: three days.</source>
        <translation>Ein Rasierer neben einer Achsel, durchgestrichen. Darunter: drei Tage.</translation>
    </message>
    <message>
        <source>Somebody has both hands in trays. A helper stands close by, a finger on the knob.</source>
        <translation>Jemand hat beide Hände in Schalen. Wer hilft, steht daneben, einen Finger am Regler.</translation>
    </message>
    <message>
        <source>Somebody seated: the right hand in one tray, the right foot in another. The left ones rest outside.</source>
        <translation>Jemand sitzt: die rechte Hand in einer Schale, der rechte Fuß in einer anderen. Linke Hand und linker Fuß ruhen außerhalb.</translation>
    </message>
    <message>
        <source>Somebody seated: the left hand in one tray, the left foot in another. The right ones rest outside.</source>
        <translation>Jemand sitzt: die linke Hand in einer Schale, der linke Fuß in einer anderen. Rechte Hand und rechter Fuß ruhen außerhalb.</translation>
    </message>
    <message>
        <source>A jug with %1 is poured into a low tray. A line across the tray marks the level.</source>
        <translation>Ein Krug mit %1 wird in eine flache Schale gegossen. Ein Strich quer über die Schale zeigt, wie hoch das Wasser steht.</translation>
    </message>
</context>
<context>
    <name>FileChoice</name>
    <message>
        <source>Look again</source>
        <translation>Noch einmal nachsehen</translation>
    </message>
    <message>
        <source>Put a file that ends in %1 into %2, then look again.</source>
        <translation>Legen Sie eine Datei mit der Endung %1 in %2 ab und sehen Sie noch einmal nach.</translation>
    </message>
    <message>
        <source>Choose a file</source>
        <translation>Datei auswählen</translation>
    </message>
    <message>
        <source>Chosen: %1</source>
        <translation>Ausgewählt: %1</translation>
    </message>
</context>
<context>
    <name>FirstStart</name>
    <message>
        <source>Before you begin</source>
        <translation>Bevor Sie beginnen</translation>
    </message>
    <message>
        <source>Who is it for?</source>
        <translation>Für wen ist es?</translation>
    </message>
    <message>
        <source>Where?</source>
        <translation>Wo?</translation>
    </message>
    <message>
        <source>Your machine</source>
        <translation>Ihr Gerät</translation>
    </message>
    <message>
        <source>Health questions</source>
        <translation>Gesundheits­fragen</translation>
    </message>
    <message>
        <source>When should we ask?</source>
        <translation>Wann sollen wir fragen?</translation>
    </message>
    <message>
        <source>Step %1 of %2</source>
        <translation>Schritt %1 von %2</translation>
    </message>
    <message>
        <source>Some answers mean no session until a clinician has said yes. Your answers stay on this phone.</source>
        <translation>Bei manchen Antworten gilt: keine Sitzung, bis sie ärztlich freigegeben ist. Ihre Antworten bleiben auf diesem Telefon.</translation>
    </message>
    <message>
        <source>Once a day Firstdew asks how damp your skin is. Two taps are enough.</source>
        <translation>Einmal am Tag fragt Firstdew, wie feucht Ihre Haut ist. Zweimal tippen genügt.</translation>
    </message>
    <message>
        <source>Check-in at</source>
        <translation>Tages­eintrag um</translation>
    </message>
    <message>
        <source>I have read this</source>
        <translation>Ich habe das gelesen</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Fertig</translation>
    </message>
    <message>
        <source>Next</source>
        <translation>Weiter</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Einen Schritt zurück</translation>
    </message>
    <message>
        <source>Choose every place you treat. It can be changed in Settings.</source>
        <translation>Wählen Sie jede Stelle, die Sie behandeln. In den Einstellungen lässt sich das ändern.</translation>
    </message>
</context>
<context>
    <name>HandOverPage</name>
    <message>
        <source>Hand it over</source>
        <translation>Übergeben</translation>
    </message>
    <message>
        <source>This care sheet is not complete. Go back and fill in what is marked.</source>
        <translation>Dieses Behandlungs­blatt ist nicht vollständig. Gehen Sie zurück und füllen Sie aus, was markiert ist.</translation>
    </message>
    <message>
        <source>Look at it</source>
        <translation>Ansehen</translation>
    </message>
    <message>
        <source>On the screen</source>
        <translation>Auf dem Bildschirm</translation>
    </message>
    <message>
        <source>In their Firstdew: Plan, Care sheet, Scan the code.</source>
        <translation>In Firstdew auf dem anderen Telefon: Plan, Behandlungs­blatt, Code einlesen.</translation>
    </message>
    <message>
        <source>The care sheet as a QR code</source>
        <translation>Das Behandlungs­blatt als QR-Code</translation>
    </message>
    <message>
        <source>On paper</source>
        <translation>Auf Papier</translation>
    </message>
    <message>
        <source>Print or share the page</source>
        <translation>Seite drucken oder teilen</translation>
    </message>
    <message>
        <source>The page as it will be printed</source>
        <translation>Die Seite, wie sie gedruckt wird</translation>
    </message>
    <message>
        <source>As a file</source>
        <translation>Als Datei</translation>
    </message>
    <message>
        <source>Save the page</source>
        <translation>Seite speichern</translation>
    </message>
    <message>
        <source>Share the file</source>
        <translation>Datei teilen</translation>
    </message>
    <message>
        <source>Save the file</source>
        <translation>Datei speichern</translation>
    </message>
</context>
<context>
    <name>HealthForm</name>
    <message>
        <source>No</source>
        <translation>Nein</translation>
    </message>
    <message>
        <source>Yes</source>
        <translation>Ja</translation>
    </message>
    <message>
        <source>No session until a clinician has said that it is safe for you.</source>
        <translation>Keine Sitzung, bis eine Ärztin oder ein Arzt sagt, dass es für Sie unbedenklich ist.</translation>
    </message>
    <message>
        <source>Ask a clinician first and note who said yes.</source>
        <translation>Erst ärztlichen Rat holen und notieren, wer zugestimmt hat.</translation>
    </message>
    <message>
        <source>Usually no obstacle; one hospital lists it. Mention it to your clinician.</source>
        <translation>Meist kein Hindernis; eine Klinik führt es auf. Erwähnen Sie es in Ihrer Praxis.</translation>
    </message>
    <message>
        <source>Approved by %1 until %2.</source>
        <translation>Freigegeben von %1, gültig bis %2.</translation>
    </message>
    <message>
        <source>The approval by %1 has expired. Ask again before your next session.</source>
        <translation>Die Freigabe von %1 ist abgelaufen. Fragen Sie vor Ihrer nächsten Sitzung noch einmal.</translation>
    </message>
    <message>
        <source>You answered yes on %1. That counts until a clinician has approved treatment.</source>
        <translation>Am %1 haben Sie mit Ja geantwortet. Das gilt, bis es ärztlich freigegeben ist.</translation>
    </message>
</context>
<context>
    <name>HealthQuestions</name>
    <message>
        <source>Health questions</source>
        <translation>Gesundheits­fragen</translation>
    </message>
    <message>
        <source>Some answers mean no session until a clinician has said yes. Your answers stay on this phone.</source>
        <translation>Bei manchen Antworten gilt: keine Sitzung, bis sie ärztlich freigegeben ist. Ihre Antworten bleiben auf diesem Telefon.</translation>
    </message>
    <message>
        <source>Not approved: %1</source>
        <translation>Nicht freigegeben: %1</translation>
    </message>
    <message>
        <source>Who said that it is safe?</source>
        <translation>Wer hat gesagt, dass es unbedenklich ist?</translation>
    </message>
    <message>
        <source>Record the approval</source>
        <translation>Freigabe festhalten</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Speichern</translation>
    </message>
    <message>
        <source>Name of the doctor or nurse. It goes into your record.</source>
        <translation>Name der Ärztin, des Arztes oder der Pflegekraft. Er kommt in Ihre Aufzeichnung.</translation>
    </message>
    <message>
        <source>On which day?</source>
        <translation>An welchem Tag?</translation>
    </message>
</context>
<context>
    <name>KeepPage</name>
    <message>
        <source>Back-up, export and delete</source>
        <translation>Sichern, exportieren und löschen</translation>
    </message>
    <message>
        <source>Firstdew sessions</source>
        <translation>Firstdew-Sitzungen</translation>
    </message>
    <message>
        <source>A session is planned</source>
        <translation>Eine Sitzung ist geplant</translation>
    </message>
    <message>
        <source>Done: %1</source>
        <translation>Fertig: %1</translation>
    </message>
    <message>
        <source>Done.</source>
        <translation>Fertig.</translation>
    </message>
    <message>
        <source>Your record is as it was.</source>
        <translation>Ihre Daten sind unverändert.</translation>
    </message>
    <message>
        <source>Back-up</source>
        <translation>Sicherung</translation>
    </message>
    <message>
        <source>One encrypted file (OpenPGP) with everything. Without the passphrase nobody can open it – not even you.</source>
        <translation>Eine verschlüsselte Datei (OpenPGP) mit allem. Ohne das Kennwort kann niemand sie öffnen, auch Sie nicht.</translation>
    </message>
    <message>
        <source>Passphrase</source>
        <translation>Kennwort</translation>
    </message>
    <message>
        <source>At least eight characters.</source>
        <translation>Mindestens acht Zeichen.</translation>
    </message>
    <message>
        <source>Make a back-up</source>
        <translation>Sicherung anlegen</translation>
    </message>
    <message>
        <source>Restore</source>
        <translation>Wieder­herstellen</translation>
    </message>
    <message>
        <source>Passphrase of the back-up</source>
        <translation>Kennwort der Sicherung</translation>
    </message>
    <message>
        <source>What is here now is replaced. A copy of it is kept.</source>
        <translation>Was jetzt hier ist, wird ersetzt. Eine Kopie bleibt erhalten.</translation>
    </message>
    <message>
        <source>Export</source>
        <translation>Exportieren</translation>
    </message>
    <message>
        <source>These files are not encrypted; share them with care.</source>
        <translation>Diese Dateien sind nicht verschlüsselt; geben Sie sie mit Bedacht weiter.</translation>
    </message>
    <message>
        <source>Everything, as JSON</source>
        <translation>Alles, als JSON</translation>
    </message>
    <message>
        <source>For medical records, as FHIR</source>
        <translation>Für Krankenakten, als FHIR</translation>
    </message>
    <message>
        <source>Planned sessions, for a calendar</source>
        <translation>Geplante Sitzungen, für einen Kalender</translation>
    </message>
    <message>
        <source>Import</source>
        <translation>Importieren</translation>
    </message>
    <message>
        <source>Add from this file</source>
        <translation>Aus dieser Datei hinzufügen</translation>
    </message>
    <message>
        <source>Delete</source>
        <translation>Löschen</translation>
    </message>
    <message>
        <source>Delete this person</source>
        <translation>Diese Person löschen</translation>
    </message>
    <message>
        <source>The record of %1 is deleted for good.</source>
        <translation>Die Aufzeichnung von %1 wird endgültig gelöscht.</translation>
    </message>
    <message>
        <source>this person</source>
        <translation>dieser Person</translation>
    </message>
    <message>
        <source>Delete everything</source>
        <translation>Alles löschen</translation>
    </message>
    <message>
        <source>Every record on this phone is deleted for good.</source>
        <translation>Alle Aufzeichnungen auf diesem Telefon werden endgültig gelöscht.</translation>
    </message>
    <message>
        <source>Keep things as they are</source>
        <translation>Alles lassen, wie es ist</translation>
    </message>
    <message>
        <source>Tables for a spreadsheet, as CSV</source>
        <translation>Tabellen für eine Tabellen­kalkulation, als CSV</translation>
    </message>
    <message>
        <source>Share it</source>
        <translation>Teilen</translation>
    </message>
    <message>
        <source>Hide what I type</source>
        <translation>Verbergen, was ich schreibe</translation>
    </message>
    <message>
        <source>Show what I type</source>
        <translation>Zeigen, was ich schreibe</translation>
    </message>
    <message>
        <source>Add as a new person</source>
        <translation>Als neue Person hinzufügen</translation>
    </message>
    <message>
        <source>Gone for good, here and in the copies on this phone. Files that you exported or shared stay where they are. Make a back-up first if in doubt.</source>
        <translation>Endgültig weg, hier und in den Kopien auf diesem Telefon. Dateien, die Sie exportiert oder geteilt haben, bleiben, wo sie sind. Machen Sie im Zweifel zuerst eine Sicherung.</translation>
    </message>
</context>
<context>
    <name>LimitsCard</name>
    <message>
        <source>Limits</source>
        <translation>Grenzen</translation>
    </message>
    <message>
        <source>Your birthday is not set, so the lower limits for children count.</source>
        <translation>Ihr Geburtstag fehlt, deshalb gelten die niedrigeren Grenzen für Kinder.</translation>
    </message>
    <message>
        <source>Adult beside the child: %1</source>
        <translation>Erwachsene Begleitperson: %1</translation>
    </message>
    <message>
        <source>at most %1</source>
        <translation>höchstens %1</translation>
    </message>
    <message>
        <source>not used</source>
        <translation>nicht benutzt</translation>
    </message>
</context>
<context>
    <name>MachineForm</name>
    <message>
        <source>Make or model</source>
        <translation>Marke oder Modell</translation>
    </message>
    <message>
        <source>Optional</source>
        <translation>Optional</translation>
    </message>
    <message>
        <source>Current it gives (see its instructions)</source>
        <translation>Stromart, die es liefert (siehe Anleitung)</translation>
    </message>
    <message>
        <source>Choose at least one.</source>
        <translation>Wählen Sie mindestens eine.</translation>
    </message>
    <message>
        <source>How is polarity reversed?</source>
        <translation>Wie wird umgepolt?</translation>
    </message>
    <message>
        <source>By swapping the leads</source>
        <translation>Durch Tausch der Kabel</translation>
    </message>
    <message>
        <source>By a switch</source>
        <translation>Mit einem Schalter</translation>
    </message>
    <message>
        <source>Is there a remote control?</source>
        <translation>Gibt es eine Fern­bedienung?</translation>
    </message>
    <message>
        <source>No</source>
        <translation>Nein</translation>
    </message>
    <message>
        <source>Yes</source>
        <translation>Ja</translation>
    </message>
    <message>
        <source>What does it run on?</source>
        <translation>Womit läuft es?</translation>
    </message>
    <message>
        <source>Batteries</source>
        <translation>Batterien</translation>
    </message>
    <message>
        <source>Mains adapter</source>
        <translation>Netzteil</translation>
    </message>
    <message>
        <source>Size of one armpit pad in cm² (length × width)</source>
        <translation>Größe eines Elektroden­polsters für die Achsel in cm² (Länge × Breite)</translation>
    </message>
    <message>
        <source>Optional. Until it is entered, the limit for armpits stays low.</source>
        <translation>Optional. Bis sie eingegeben ist, bleibt die Grenze für die Achseln niedrig.</translation>
    </message>
    <message>
        <source>By exchanging the armpit pads</source>
        <translation>Durch Tausch der Elektroden­polster an den Achseln</translation>
    </message>
</context>
<context>
    <name>MachinePage</name>
    <message>
        <source>Machine and kit</source>
        <translation>Gerät und Zubehör</translation>
    </message>
    <message>
        <source>Batteries</source>
        <translation>Batterien</translation>
    </message>
    <message numerus="yes">
        <source>About %n session(s) left. A set of four alkaline cells lasts about three.</source>
        <translation>
            <numerusform>Noch etwa %n Sitzung. Vier Alkalizellen reichen für etwa drei.</numerusform>
            <numerusform>Noch etwa %n Sitzungen. Vier Alkalizellen reichen für etwa drei.</numerusform>
        </translation>
    </message>
    <message>
        <source>Say when you put in new ones, and Firstdew counts the sessions.</source>
        <translation>Geben Sie an, wenn Sie neue einlegen; dann zählt Firstdew die Sitzungen.</translation>
    </message>
    <message>
        <source>New batteries put in</source>
        <translation>Neue Batterien eingelegt</translation>
    </message>
    <message>
        <source>Machine</source>
        <translation>Gerät</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Speichern</translation>
    </message>
    <message>
        <source>Where it is used</source>
        <translation>Wo es benutzt wird</translation>
    </message>
    <message>
        <source>The batteries are probably used up. Put in new ones.</source>
        <translation>Die Batterien sind wahrscheinlich leer. Legen Sie neue ein.</translation>
    </message>
</context>
<context>
    <name>MakeSheetPage</name>
    <message>
        <source>Make a care sheet</source>
        <translation>Behandlungs­blatt ausfüllen</translation>
    </message>
    <message>
        <source>Call me before you go on.</source>
        <translation>Rufen Sie mich an, bevor Sie weitermachen.</translation>
    </message>
    <message>
        <source>Check how you do it with Firstdew, do three more sessions, then call me.</source>
        <translation>Prüfen Sie mit Firstdew, wie Sie es machen, machen Sie drei weitere Sitzungen und rufen Sie mich dann an.</translation>
    </message>
    <message>
        <source>See your doctor about other treatments.</source>
        <translation>Sprechen Sie in der Praxis über andere Behandlungen.</translation>
    </message>
    <message>
        <source>None</source>
        <translation>Keine</translation>
    </message>
    <message>
        <source>Days I choose</source>
        <translation>Tage nach Wahl</translation>
    </message>
    <message>
        <source>For whom</source>
        <translation>Für wen</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>Optional. It stands on the paper alone, not in the code.</source>
        <translation>Optional. Er steht nur auf dem Papier, nicht im Code.</translation>
    </message>
    <message>
        <source>Age</source>
        <translation>Alter</translation>
    </message>
    <message>
        <source>Adult</source>
        <translation>Erwachsen</translation>
    </message>
    <message>
        <source>Under 18</source>
        <translation>Unter 18</translation>
    </message>
    <message>
        <source>Where to treat</source>
        <translation>Wo behandelt wird</translation>
    </message>
    <message>
        <source>Current</source>
        <translation>Strom</translation>
    </message>
    <message>
        <source>As it suits the person</source>
        <translation>Wie es zur Person passt</translation>
    </message>
    <message>
        <source>Limit, direct current</source>
        <translation>Grenze, Gleichstrom</translation>
    </message>
    <message>
        <source>Limit, pulsed current</source>
        <translation>Grenze, Pulsstrom</translation>
    </message>
    <message>
        <source>Size of one armpit pad</source>
        <translation>Größe eines Elektroden­polsters für die Achsel</translation>
    </message>
    <message>
        <source>Course</source>
        <translation>Behandlungs­serie</translation>
    </message>
    <message>
        <source>Tap the days of the sessions. Day 1 is the first.</source>
        <translation>Tippen Sie auf die Tage der Sitzungen. Tag 1 ist der erste.</translation>
    </message>
    <message>
        <source>Day %1</source>
        <translation>Tag %1</translation>
    </message>
    <message>
        <source>Another week</source>
        <translation>Noch eine Woche</translation>
    </message>
    <message>
        <source>First session, for the dates on paper</source>
        <translation>Erste Sitzung, für die Daten auf dem Papier</translation>
    </message>
    <message>
        <source>Leave the dates open</source>
        <translation>Daten offen lassen</translation>
    </message>
    <message>
        <source>Afterwards</source>
        <translation>Danach</translation>
    </message>
    <message>
        <source>Review</source>
        <translation>Kontrolle</translation>
    </message>
    <message>
        <source>Without a review</source>
        <translation>Ohne Kontrolle</translation>
    </message>
    <message>
        <source>If the course does not help</source>
        <translation>Wenn die Behandlungs­serie nicht hilft</translation>
    </message>
    <message>
        <source>In your own words</source>
        <translation>In eigenen Worten</translation>
    </message>
    <message>
        <source>From whom</source>
        <translation>Von wem</translation>
    </message>
    <message>
        <source>Your name</source>
        <translation>Ihr Name</translation>
    </message>
    <message>
        <source>Whom to call, with a number</source>
        <translation>Wen anrufen, mit Nummer</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation>Bemerkungen</translation>
    </message>
    <message>
        <source>Optional</source>
        <translation>Optional</translation>
    </message>
    <message>
        <source>Time for the hands</source>
        <translation>Zeit für die Hände</translation>
    </message>
    <message>
        <source>How long the voice waits where both hands are in the water.</source>
        <translation>So lange wartet die Stimme, wenn beide Hände im Wasser sind.</translation>
    </message>
    <message>
        <source>To turn up</source>
        <translation>Zum Hochregeln</translation>
    </message>
    <message>
        <source>To turn down</source>
        <translation>Zum Herunterregeln</translation>
    </message>
    <message>
        <source>To swap</source>
        <translation>Zum Umpolen</translation>
    </message>
    <message>
        <source>Hand it over</source>
        <translation>Übergeben</translation>
    </message>
    <message>
        <source>Level to begin with at home</source>
        <translation>Stärke für den Anfang zu Hause</translation>
    </message>
</context>
<context>
    <name>MonthDots</name>
    <message>
        <source>Dampness over time, %1</source>
        <translation>Feuchte im Verlauf, %1</translation>
    </message>
    <message>
        <source>No check-in in these weeks. Tap a day to add one.</source>
        <translation>Kein Tages­eintrag in diesen Wochen. Tippen Sie auf einen Tag, um einen nachzutragen.</translation>
    </message>
    <message>
        <source>A bar under a day is a session. Tap a day to see and correct it.</source>
        <translation>Ein Balken unter einem Tag ist eine Sitzung. Tippen Sie auf einen Tag, um ihn zu sehen und zu berichtigen.</translation>
    </message>
    <message>
        <source>Tap a day to see and correct it.</source>
        <translation>Tippen Sie auf einen Tag, um ihn zu sehen und zu berichtigen.</translation>
    </message>
    <message>
        <source>nothing noted</source>
        <translation>nichts notiert</translation>
    </message>
</context>
<context>
    <name>MovePage</name>
    <message>
        <source>Move to another phone</source>
        <translation>Auf ein anderes Telefon umziehen</translation>
    </message>
    <message>
        <source>Your record goes to the other phone as one encrypted file. Which phone is this?</source>
        <translation>Ihre Aufzeichnung kommt als eine verschlüsselte Datei auf das andere Telefon. Welches Telefon ist dieses?</translation>
    </message>
    <message>
        <source>The old one: send from here</source>
        <translation>Das alte: von hier senden</translation>
    </message>
    <message>
        <source>The new one: bring it here</source>
        <translation>Das neue: hierher holen</translation>
    </message>
    <message>
        <source>1. Choose a passphrase</source>
        <translation>1. Kennwort wählen</translation>
    </message>
    <message>
        <source>You type it once more on the new phone. Without it nobody can open the file – not even you.</source>
        <translation>Sie geben es auf dem neuen Telefon noch einmal ein. Ohne das Kennwort kann niemand die Datei öffnen – auch Sie nicht.</translation>
    </message>
    <message>
        <source>Passphrase</source>
        <translation>Kennwort</translation>
    </message>
    <message>
        <source>At least eight characters.</source>
        <translation>Mindestens acht Zeichen.</translation>
    </message>
    <message>
        <source>Hide what I type</source>
        <translation>Verbergen, was ich schreibe</translation>
    </message>
    <message>
        <source>Show what I type</source>
        <translation>Zeigen, was ich schreibe</translation>
    </message>
    <message>
        <source>2. Send the file to the new phone</source>
        <translation>2. Datei an das neue Telefon senden</translation>
    </message>
    <message>
        <source>Use a cable, a memory card, or a message to yourself.</source>
        <translation>Nehmen Sie ein Kabel, eine Speicherkarte oder eine Nachricht an sich selbst.</translation>
    </message>
    <message>
        <source>3. On the new phone</source>
        <translation>3. Auf dem neuen Telefon</translation>
    </message>
    <message>
        <source>Open Firstdew there and tap “Move from another phone”. Choose the file and type the passphrase. It then has to show these numbers:</source>
        <translation>Öffnen Sie dort Firstdew und tippen Sie auf „Von einem anderen Telefon umziehen“. Wählen Sie die Datei und geben Sie das Kennwort ein. Dann muss es diese Zahlen zeigen:</translation>
    </message>
    <message>
        <source>Keep this phone as it is until you have seen them.</source>
        <translation>Lassen Sie dieses Telefon, wie es ist, bis Sie sie gesehen haben.</translation>
    </message>
    <message>
        <source>Bring the record here</source>
        <translation>Aufzeichnung hierher holen</translation>
    </message>
    <message>
        <source>On the old phone, open Settings, “Move to another phone”, and send the file to this one. Then choose it here.</source>
        <translation>Öffnen Sie auf dem alten Telefon die Einstellungen, „Auf ein anderes Telefon umziehen“, und senden Sie die Datei an dieses. Dann wählen Sie sie hier aus.</translation>
    </message>
    <message>
        <source>Choose the file</source>
        <translation>Datei auswählen</translation>
    </message>
    <message>
        <source>Its passphrase</source>
        <translation>Das Kennwort der Datei</translation>
    </message>
    <message>
        <source>The file holds</source>
        <translation>In der Datei sind</translation>
    </message>
    <message>
        <source>What is on this phone now is replaced. A copy of it is kept.</source>
        <translation>Was jetzt auf diesem Telefon ist, wird ersetzt. Eine Kopie davon bleibt.</translation>
    </message>
    <message>
        <source>Everything is here.</source>
        <translation>Alles ist da.</translation>
    </message>
    <message>
        <source>Compare the numbers with the old phone. Then you can delete the record there.</source>
        <translation>Vergleichen Sie die Zahlen mit dem alten Telefon. Dann können Sie die Aufzeichnung dort löschen.</translation>
    </message>
    <message>
        <source>What was on this phone before is kept in %1</source>
        <translation>Was vorher auf diesem Telefon war, liegt in %1</translation>
    </message>
    <message>
        <source>Make the file</source>
        <translation>Datei machen</translation>
    </message>
    <message>
        <source>Send the file</source>
        <translation>Datei senden</translation>
    </message>
    <message>
        <source>Look into it</source>
        <translation>Hineinsehen</translation>
    </message>
    <message>
        <source>Use it here</source>
        <translation>Hier verwenden</translation>
    </message>
    <message>
        <source>Replace what is here</source>
        <translation>Ersetzen, was hier ist</translation>
    </message>
    <message>
        <source>Go to Today</source>
        <translation>Zu Heute</translation>
    </message>
</context>
<context>
    <name>NextAction</name>
    <message>
        <source>Plan the first course</source>
        <translation>Die erste Behandlungs­serie planen</translation>
    </message>
    <message>
        <source>Next session: %1</source>
        <translation>Nächste Sitzung: %1</translation>
    </message>
    <message>
        <source>Why?</source>
        <translation>Warum?</translation>
    </message>
    <message>
        <source>Start now</source>
        <translation>Jetzt beginnen</translation>
    </message>
    <message>
        <source>Choose the course</source>
        <translation>Behandlungs­serie wählen</translation>
    </message>
    <message>
        <source>Go on to keeping dry</source>
        <translation>Weiter mit Trockenhalten</translation>
    </message>
    <message>
        <source>See the health questions</source>
        <translation>Gesundheits­fragen ansehen</translation>
    </message>
    <message>
        <source>I already treat</source>
        <translation>Ich behandle schon</translation>
    </message>
    <message>
        <source>I did one</source>
        <translation>Schon gemacht</translation>
    </message>
    <message>
        <source>Your care sheet says: %1</source>
        <translation>Auf Ihrem Behandlungs­blatt steht: %1</translation>
    </message>
    <message>
        <source>Say how it is now</source>
        <translation>Sagen, wie es jetzt ist</translation>
    </message>
    <message>
        <source>Go on to twelve sessions</source>
        <translation>Bis zwölf Sitzungen weitermachen</translation>
    </message>
    <message>
        <source>Check how you do it</source>
        <translation>Prüfen, wie Sie es machen</translation>
    </message>
    <message>
        <source>Move it</source>
        <translation>Verschieben</translation>
    </message>
    <message>
        <source>Move session %1</source>
        <translation>Sitzung %1 verschieben</translation>
    </message>
</context>
<context>
    <name>NotNowSheet</name>
    <message>
        <source>Not this time</source>
        <translation>Diesmal nicht</translation>
    </message>
    <message>
        <source>The dampness has another cause</source>
        <translation>Die Feuchte hat einen anderen Grund</translation>
    </message>
    <message>
        <source>My skin needs a rest</source>
        <translation>Meine Haut braucht Ruhe</translation>
    </message>
    <message>
        <source>No time</source>
        <translation>Keine Zeit</translation>
    </message>
    <message>
        <source>I am away from the machine</source>
        <translation>Das Gerät ist nicht hier</translation>
    </message>
    <message>
        <source>Something else</source>
        <translation>Etwas anderes</translation>
    </message>
    <message>
        <source>What&apos;s the reason? The answer goes into your record; the call comes back when a later check-in asks for it.</source>
        <translation>Was spricht dagegen? Die Antwort wird aufgezeichnet; der Hinweis kommt wieder, wenn ein späterer Tages­eintrag es verlangt.</translation>
    </message>
</context>
<context>
    <name>OtherPage</name>
    <message>
        <source>Other treatments</source>
        <translation>Andere Behandlungen</translation>
    </message>
    <message>
        <source>Note what else dries your skin. Dry spells in that time are left out of your outlook, and your prescriber sees it in the summary.</source>
        <translation>Tragen Sie ein, was Ihre Haut sonst noch trocknet. Trockene Zeiten in dieser Spanne zählen für den Ausblick nicht mit, und Ihre Praxis sieht es im Bericht.</translation>
    </message>
    <message>
        <source>What is it?</source>
        <translation>Was ist es?</translation>
    </message>
    <message>
        <source>Its name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>Optional</source>
        <translation>Optional</translation>
    </message>
    <message>
        <source>Where (none = everywhere)</source>
        <translation>Wo (keine = überall)</translation>
    </message>
    <message>
        <source>Works since</source>
        <translation>Wirkt seit</translation>
    </message>
    <message>
        <source>Does it still work?</source>
        <translation>Wirkt es noch?</translation>
    </message>
    <message>
        <source>Yes</source>
        <translation>Ja</translation>
    </message>
    <message>
        <source>It ended</source>
        <translation>Es ist vorbei</translation>
    </message>
    <message>
        <source>Last day</source>
        <translation>Letzter Tag</translation>
    </message>
    <message>
        <source>Remove %1</source>
        <translation>%1 entfernen</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Speichern</translation>
    </message>
</context>
<context>
    <name>Outgoing</name>
    <message>
        <source>Handed over.</source>
        <translation>Übergeben.</translation>
    </message>
    <message>
        <source>Saved as %1.</source>
        <translation>Gespeichert als %1.</translation>
    </message>
</context>
<context>
    <name>OutlookStrip</name>
    <message>
        <source>Chance of dampness by day, %1</source>
        <translation>Wahrschein­lichkeit von Feuchte je Tag, %1</translation>
    </message>
    <message>
        <source>No session planned</source>
        <translation>Keine Sitzung geplant</translation>
    </message>
    <message>
        <source>Session today</source>
        <translation>Sitzung heute</translation>
    </message>
    <message>
        <source>Session %1</source>
        <translation>Sitzung %1</translation>
    </message>
    <message>
        <source>Bars come with the first session.</source>
        <translation>Balken kommen mit der ersten Sitzung.</translation>
    </message>
    <message>
        <source>Planned session. The fuller a bar, the likelier it is damp by that day; after a session it starts again.</source>
        <translation>Geplante Sitzung. Je voller ein Balken, desto wahrschein­licher ist die Haut bis zu dem Tag feucht; nach einer Sitzung beginnt es von vorn.</translation>
    </message>
    <message>
        <source>session planned</source>
        <translation>Sitzung geplant</translation>
    </message>
    <message>
        <source>The fuller a bar, the likelier it is damp by that day.</source>
        <translation>Je voller ein Balken, desto wahrschein­licher ist die Haut bis zu dem Tag feucht.</translation>
    </message>
</context>
<context>
    <name>PaceChoice</name>
    <message>
        <source>Close together, done by %1</source>
        <translation>Dicht hintereinander, fertig: %1</translation>
    </message>
    <message>
        <source>A day between, done by %1</source>
        <translation>Mit einem Tag dazwischen, fertig: %1</translation>
    </message>
</context>
<context>
    <name>Page</name>
    <message>
        <source>Stage</source>
        <translation>Stand</translation>
    </message>
    <message>
        <source>%1 completed</source>
        <translation>%1 beendet</translation>
    </message>
    <message>
        <source>%1 interrupted</source>
        <translation>%1 abgebrochen</translation>
    </message>
    <message>
        <source>Sessions in the period</source>
        <translation>Sitzungen im Zeitraum</translation>
    </message>
    <message>
        <source>Next session</source>
        <translation>Nächste Sitzung</translation>
    </message>
    <message numerus="yes">
        <source>%n earlier</source>
        <translation>
            <numerusform>%n früherer Eintrag</numerusform>
            <numerusform>%n frühere Einträge</numerusform>
        </translation>
    </message>
    <message>
        <source>Health questions: nothing answered with yes.</source>
        <translation>Gesundheitsfragen: nichts mit Ja beantwortet.</translation>
    </message>
    <message>
        <source>Answered with yes: %1.</source>
        <translation>Mit Ja beantwortet: %1.</translation>
    </message>
    <message>
        <source>Approved by %1 on %2: %3.</source>
        <translation>Freigegeben von %1 am %2: %3.</translation>
    </message>
    <message>
        <source>Machine: %1.</source>
        <translation>Gerät: %1.</translation>
    </message>
    <message>
        <source>direct and pulsed current</source>
        <translation>Gleich- und Pulsstrom</translation>
    </message>
    <message>
        <source>direct current</source>
        <translation>Gleichstrom</translation>
    </message>
    <message>
        <source>Recorded by the person at home; not a medical device, no diagnosis. Machine&apos;s instructions, local rules and the clinician come first. Burns, blisters, faintness or palpitations: stop and seek help.</source>
        <translation>Zu Hause von der Person selbst aufgezeichnet; kein Medizinprodukt, keine Diagnose. Anleitung des Geräts, Regeln vor Ort und ärztlicher Rat gehen vor. Verbrennung, Blasen, Schwindel oder Ohnmachtsgefühl, Herzrasen oder Herzstolpern: aufhören und Hilfe holen.</translation>
    </message>
    <message>
        <source>Iontophoresis summary</source>
        <translation>Bericht zur Iontophorese</translation>
    </message>
    <message>
        <source>Name not given</source>
        <translation>Kein Name angegeben</translation>
    </message>
    <message>
        <source>%1   ·   %2 to %3</source>
        <translation>%1   ·   %2 bis %3</translation>
    </message>
    <message>
        <source>No site in use.</source>
        <translation>Keine Stelle in Behandlung.</translation>
    </message>
    <message>
        <source>%1 of %2 sessions done</source>
        <translation>%1 von %2 Sitzungen gemacht</translation>
    </message>
    <message numerus="yes">
        <source>Batteries: about %n session(s) left.</source>
        <translation>
            <numerusform>Batterien: noch etwa %n Sitzung.</numerusform>
            <numerusform>Batterien: noch etwa %n Sitzungen.</numerusform>
        </translation>
    </message>
    <message>
        <source>interrupted</source>
        <translation>abgebrochen</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Tag</translation>
    </message>
    <message>
        <source>Site</source>
        <translation>Stelle</translation>
    </message>
    <message>
        <source>Current</source>
        <translation>Strom</translation>
    </message>
    <message>
        <source>Highest</source>
        <translation>Höchster</translation>
    </message>
    <message>
        <source>Comfortable</source>
        <translation>Angenehm</translation>
    </message>
    <message>
        <source>Charge</source>
        <translation>Ladung</translation>
    </message>
    <message>
        <source>Felt</source>
        <translation>Empfunden</translation>
    </message>
    <message>
        <source>Sessions</source>
        <translation>Sitzungen</translation>
    </message>
    <message numerus="yes">
        <source>%n earlier; all of them are in the exports.</source>
        <translation>
            <numerusform>%n frühere; sie steht in den Exporten.</numerusform>
            <numerusform>%n frühere; alle stehen in den Exporten.</numerusform>
        </translation>
    </message>
    <message>
        <source>The health questions have not been answered yet.</source>
        <translation>Die Gesundheitsfragen sind noch nicht beantwortet.</translation>
    </message>
    <message>
        <source>Care sheet of %1, %2, for: %3.</source>
        <translation>Behandlungsblatt von %1, %2, für: %3.</translation>
    </message>
    <message>
        <source>The size of the armpit pads is not entered, so their limit is kept low.</source>
        <translation>Die Größe der Elektrodenpolster für die Achseln ist nicht eingetragen; ihre Grenze bleibt deshalb niedrig.</translation>
    </message>
    <message>
        <source>Health questions and prescription</source>
        <translation>Gesundheitsfragen und Verordnung</translation>
    </message>
    <message numerus="yes">
        <source>Check-ins on %n day(s): %1.</source>
        <translation>
            <numerusform>Tageseinträge an %n Tag: %1.</numerusform>
            <numerusform>Tageseinträge an %n Tagen: %1.</numerusform>
        </translation>
    </message>
    <message>
        <source>Days with a circumstance: %1.</source>
        <translation>Tage mit einem Umstand: %1.</translation>
    </message>
    <message>
        <source>Weighed: %1.</source>
        <translation>Gewogen: %1.</translation>
    </message>
    <message>
        <source>Severity is asked in the app&apos;s own words, in four steps after the HDSS.</source>
        <translation>Der Schweregrad wird mit eigenen Worten der App in vier Stufen nach der HDSS erfragt.</translation>
    </message>
    <message>
        <source>Figures of this period</source>
        <translation>Zahlen dieses Zeitraums</translation>
    </message>
    <message>
        <source>Stop and look</source>
        <translation>Anhalten und hinsehen</translation>
    </message>
    <message>
        <source>It does not work yet</source>
        <translation>Es wirkt noch nicht</translation>
    </message>
    <message>
        <source>It works in part</source>
        <translation>Es wirkt teilweise</translation>
    </message>
    <message>
        <source>It works</source>
        <translation>Es wirkt</translation>
    </message>
    <message>
        <source>Too early to say</source>
        <translation>Noch zu früh</translation>
    </message>
    <message numerus="yes">
        <source>The meter was above the limit in %n session(s), last on %1.</source>
        <translation>
            <numerusform>Die Anzeige lag in %n Sitzung über der Grenze, am %1.</numerusform>
            <numerusform>Die Anzeige lag in %n Sitzungen über der Grenze, zuletzt am %1.</numerusform>
        </translation>
    </message>
    <message>
        <source>The course brought no response (%1). Talk about other treatments.</source>
        <translation>Die Behandlungsserie blieb ohne Wirkung (%1). Bitte andere Behandlungen besprechen.</translation>
    </message>
    <message>
        <source>The review named on the care sheet is due (%1).</source>
        <translation>Die auf dem Behandlungsblatt genannte Kontrolle ist fällig (%1).</translation>
    </message>
    <message numerus="yes">
        <source>There are %n question(s) for you, below.</source>
        <translation>
            <numerusform>Unten steht %n Frage an Sie.</numerusform>
            <numerusform>Unten stehen %n Fragen an Sie.</numerusform>
        </translation>
    </message>
    <message>
        <source>no birth date entered</source>
        <translation>kein Geburtsdatum eingetragen</translation>
    </message>
    <message numerus="yes">
        <source>child, %n year(s)</source>
        <translation>
            <numerusform>Kind, %n Jahr</numerusform>
            <numerusform>Kind, %n Jahre</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>adult, %n year(s)</source>
        <translation>
            <numerusform>erwachsen, %n Jahr</numerusform>
            <numerusform>erwachsen, %n Jahre</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>damp days a week: %1</source>
        <translation>feuchte Tage je Woche: %1</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>site: its verdict</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>For you to do</source>
        <translation>Worum Sie gebeten werden</translation>
    </message>
    <message>
        <source>Nothing at present.</source>
        <translation>Nichts ist offen.</translation>
    </message>
    <message numerus="yes">
        <source>%1, for %n second(s)</source>
        <translation>
            <numerusform>%1, für %n Sekunde</numerusform>
            <numerusform>%1, für %n Sekunden</numerusform>
        </translation>
    </message>
    <message>
        <source>Skin and current in this period</source>
        <translation>Haut und Strom in diesem Zeitraum</translation>
    </message>
    <message>
        <source>Skin</source>
        <translation>Haut</translation>
    </message>
    <message>
        <source>Nothing recorded.</source>
        <translation>Nichts aufgezeichnet.</translation>
    </message>
    <message>
        <source>Above the limit</source>
        <translation>Über der Grenze</translation>
    </message>
    <message>
        <source>No sessions in this period.</source>
        <translation>Keine Sitzungen in diesem Zeitraum.</translation>
    </message>
    <message>
        <source>Limits now</source>
        <translation>Grenzen jetzt</translation>
    </message>
    <message>
        <source>%1 on %2</source>
        <comment>score on day</comment>
        <translation>%1 am %2</translation>
    </message>
    <message>
        <source>Course</source>
        <translation>Behandlungsserie</translation>
    </message>
    <message numerus="yes">
        <source>%n of them on another day than planned</source>
        <translation>
            <numerusform>%n davon an einem anderen Tag als geplant</numerusform>
            <numerusform>%n davon an einem anderen Tag als geplant</numerusform>
        </translation>
    </message>
    <message>
        <source>Highest comfortable in the period</source>
        <translation>Höchster angenehmer Strom im Zeitraum</translation>
    </message>
    <message>
        <source>Usual dry spell, all time</source>
        <translation>Übliche trockene Zeit, insgesamt</translation>
    </message>
    <message>
        <source>Other treatments</source>
        <translation>Andere Behandlungen</translation>
    </message>
    <message>
        <source>Dry spells in this time are left out of the outlook.</source>
        <translation>Trockene Zeiten in dieser Spanne zählen für den Ausblick nicht mit.</translation>
    </message>
    <message>
        <source>Taught: %1.</source>
        <translation>Angeleitet: %1.</translation>
    </message>
    <message>
        <source>Seen: %1.</source>
        <translation>Gesehen: %1.</translation>
    </message>
    <message>
        <source>%1, %2: at most %3</source>
        <translation>%1, %2: höchstens %3</translation>
    </message>
    <message>
        <source>Your treatment plan</source>
        <translation>Ihr Behandlungsplan</translation>
    </message>
    <message>
        <source>For: %1</source>
        <translation>Für: %1</translation>
    </message>
    <message>
        <source>From %1, %2</source>
        <translation>Von %1, %2</translation>
    </message>
    <message>
        <source>The app or the machine may show a lower limit. The lowest one counts.</source>
        <translation>App oder Gerät können eine niedrigere Grenze zeigen. Die niedrigste gilt.</translation>
    </message>
    <message>
        <source>Current to zero and polarity swapped after each part.</source>
        <translation>Nach jedem Teil: Strom auf null und umpolen.</translation>
    </message>
    <message>
        <source>In Firstdew: Plan, Care sheet, Scan the code.</source>
        <translation>In Firstdew: Plan, Behandlungsblatt, Code einlesen.</translation>
    </message>
    <message>
        <source>Day %1</source>
        <translation>Tag %1</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>weekday and day</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>Your sessions</source>
        <translation>Ihre Sitzungen</translation>
    </message>
    <message>
        <source>Tick each session when it is done.</source>
        <translation>Haken Sie jede Sitzung ab, wenn sie gemacht ist.</translation>
    </message>
    <message>
        <source>If you begin on another day, every day moves along.</source>
        <translation>Bei einem anderen Anfangstag verschieben sich alle Tage mit.</translation>
    </message>
    <message>
        <source>Day 1 is the day of your first session.</source>
        <translation>Tag 1 ist der Tag Ihrer ersten Sitzung.</translation>
    </message>
    <message>
        <source>Firstdew tells you when the next one is due.</source>
        <translation>Firstdew sagt Ihnen, wann die nächste fällig ist.</translation>
    </message>
    <message>
        <source>Look at the skin. Cover small cuts with jelly.</source>
        <translation>Haut ansehen. Kleine Schnitte mit Vaseline abdecken.</translation>
    </message>
    <message>
        <source>Soak the pads.</source>
        <translation>Die Elektrodenpolster tränken.</translation>
    </message>
    <message>
        <source>Plate in, grid over it, then warm water.</source>
        <translation>Platte hinein, Gitter darüber, dann warmes Wasser.</translation>
    </message>
    <message>
        <source>Put the pads on. Switch on: the meter shows zero.</source>
        <translation>Polster anlegen. Einschalten: Anzeige auf null.</translation>
    </message>
    <message>
        <source>Skin under water. Switch on: the meter shows zero.</source>
        <translation>Haut unter Wasser. Einschalten: Anzeige auf null.</translation>
    </message>
    <message>
        <source>Turn up slowly. It may prickle. It must not hurt.</source>
        <translation>Langsam hochregeln. Es darf kribbeln. Es darf nicht wehtun.</translation>
    </message>
    <message>
        <source>Between the parts: down to zero, swap or change sides, up again.</source>
        <translation>Zwischen den Teilen: auf null, umpolen oder Seite wechseln, wieder hoch.</translation>
    </message>
    <message>
        <source>Between the parts: down to zero, swap, up again.</source>
        <translation>Zwischen den Teilen: auf null, umpolen, wieder hoch.</translation>
    </message>
    <message>
        <source>Down to zero, machine off. Then the pads come off.</source>
        <translation>Auf null, Gerät aus. Dann die Polster abnehmen.</translation>
    </message>
    <message>
        <source>Down to zero, machine off. Then take your hands or feet out.</source>
        <translation>Auf null, Gerät aus. Dann Hände oder Füße herausnehmen.</translation>
    </message>
    <message>
        <source>An adult stays beside the child the whole time.</source>
        <translation>Eine erwachsene Person bleibt die ganze Zeit beim Kind.</translation>
    </message>
    <message>
        <source>Both hands in the water: somebody stays beside you.</source>
        <translation>Beide Hände im Wasser: Jemand bleibt bei Ihnen.</translation>
    </message>
    <message>
        <source>Each session: %1</source>
        <translation>Jede Sitzung: %1</translation>
    </message>
    <message>
        <source>When to stop</source>
        <translation>Wann Sie aufhören</translation>
    </message>
    <message>
        <source>It hurts, you feel faint, or your heart races: turn down to zero, machine off, then take your hands or feet out.</source>
        <translation>Es tut weh, Ihnen wird schwach oder schwindlig, oder das Herz rast: auf null regeln, Gerät aus, dann Hände oder Füße heraus.</translation>
    </message>
    <message>
        <source>A burn or a blister: leave the machine off until a clinician has looked at it.</source>
        <translation>Verbrennung oder Blase: Lassen Sie das Gerät aus, bis eine Ärztin oder ein Arzt sie angesehen hat.</translation>
    </message>
    <message>
        <source>Pregnant, a new implant, or another health answer changed: leave the machine off and ask first.</source>
        <translation>Schwangerschaft, ein neues Implantat, oder eine andere Gesundheitsantwort hat sich geändert: Gerät aus lassen und erst fragen.</translation>
    </message>
    <message>
        <source>Call: %1</source>
        <translation>Anrufen: %1</translation>
    </message>
    <message>
        <source>Afterwards</source>
        <translation>Danach</translation>
    </message>
    <message>
        <source>Review: %1</source>
        <translation>Kontrolle: %1</translation>
    </message>
    <message>
        <source>If the course does not help: %1</source>
        <translation>Wenn die Behandlungsserie nicht hilft: %1</translation>
    </message>
    <message>
        <source>Written with Firstdew, which is not a medical device. Follow your machine&apos;s instructions and your clinician.</source>
        <translation>Mit Firstdew geschrieben, das kein Medizinprodukt ist. Halten Sie sich an die Anleitung Ihres Geräts und an ärztlichen Rat.</translation>
    </message>
    <message>
        <source>No session for now</source>
        <translation>Vorerst keine Sitzung</translation>
    </message>
    <message>
        <source>Not started yet</source>
        <translation>Noch nicht begonnen</translation>
    </message>
    <message>
        <source>Look at the skin (%1): a burn was noted on %2. No session there until you have.</source>
        <translation>Haut ansehen (%1): Am %2 wurde eine Verbrennung notiert. Bis Sie nachgesehen haben, dort keine Sitzung.</translation>
    </message>
    <message>
        <source>Look at the skin (%1): a blister was noted on %2. No session there until you have.</source>
        <translation>Haut ansehen (%1): Am %2 wurde eine Blase notiert. Bis Sie nachgesehen haben, dort keine Sitzung.</translation>
    </message>
    <message>
        <source>Is this treatment possible with %1 (answered yes on %2)? No session until a clinician has approved treatment.</source>
        <translation>Ist die Behandlung trotz %1 möglich (am %2 mit Ja beantwortet)? Keine Sitzung, bis das ärztlich freigegeben ist.</translation>
    </message>
    <message>
        <source>%1: %2 · %3</source>
        <comment>day: site · skin</comment>
        <translation>%1: %2 · %3</translation>
    </message>
    <message>
        <source>%1: %2 · %3 with a limit of %4</source>
        <comment>day: site · peak, limit</comment>
        <translation>%1: %2 · %3 bei einer Grenze von %4</translation>
    </message>
    <message>
        <source>%1 · %2: %3. %4.</source>
        <comment>kind of current · sites: limit. Who set it.</comment>
        <translation>%1 · %2: %3. %4.</translation>
    </message>
    <message>
        <source>No prescriber has set a limit.</source>
        <translation>Keine Praxis hat eine Grenze festgelegt.</translation>
    </message>
    <message>
        <source>%1 on %2, to begin with</source>
        <comment>score on day</comment>
        <translation>%1 am %2, zu Beginn</translation>
    </message>
    <message numerus="yes">
        <source>%n dry spell(s) seen to the end</source>
        <translation>
            <numerusform>%n trockene Zeit bis zum Ende beobachtet</numerusform>
            <numerusform>%n trockene Zeiten bis zum Ende beobachtet</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n not seen to the end</source>
        <comment>dry spells</comment>
        <translation>
            <numerusform>%n nicht bis zum Ende beobachtet</numerusform>
            <numerusform>%n nicht bis zum Ende beobachtet</numerusform>
        </translation>
    </message>
    <message>
        <source>not known yet</source>
        <translation>noch nicht bekannt</translation>
    </message>
    <message>
        <source>planned from %1</source>
        <translation>geplant ab %1</translation>
    </message>
    <message>
        <source>last session on %1</source>
        <translation>letzte Sitzung am %1</translation>
    </message>
    <message>
        <source>Severity 1–4, own answer (modelled on the HDSS)</source>
        <translation>Schweregrad 1–4, eigene Angabe (nach dem Vorbild der HDSS)</translation>
    </message>
    <message>
        <source>Last check-in</source>
        <translation>Letzter Tageseintrag</translation>
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
            <numerusform>%n im Zeitraum</numerusform>
            <numerusform>%n im Zeitraum</numerusform>
        </translation>
    </message>
    <message>
        <source>Days a week noted as damp, also after heat or effort, 0 to 7. Dark: wet or dripping. Ticks: sessions.</source>
        <translation>Feuchte Tage je Woche, auch bei Hitze, Anstrengung. Dunkel: nass, tropfend. Striche: Sitzungen.</translation>
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
        <translation>%1 · %2 (Grenze %3)</translation>
    </message>
    <message>
        <source>%1 · %2</source>
        <comment>level · day</comment>
        <translation>%1 · %2</translation>
    </message>
    <message numerus="yes">
        <source>Days dry after the latest %n session(s). Hollow: first damp day unknown. Pointed: end not seen.</source>
        <translation>
            <numerusform>Trockene Tage nach der letzten Sitzung. Hohl: Ende ungenau. Spitz: Ende nicht beobachtet.</numerusform>
            <numerusform>Trockene Tage nach den letzten %n Sitzungen. Hohl: Ende ungenau. Spitz: Ende nicht beobachtet.</numerusform>
        </translation>
    </message>
    <message>
        <source>Begin with %1 or less.</source>
        <translation>Mit %1 oder weniger beginnen.</translation>
    </message>
    <message>
        <source>Armpit pads: %1.</source>
        <translation>Elektrodenpolster für die Achseln: %1.</translation>
    </message>
    <message>
        <source>Mean charge a session: %1.</source>
        <translation>Mittlere Ladung je Sitzung: %1.</translation>
    </message>
    <message>
        <source>%1 a minute on %2</source>
        <translation>%1 je Minute am %2</translation>
    </message>
    <message>
        <source>Dry spells are reckoned from the last session to the first clammy day, with days not seen and top-ups made while still dry taken as what they are (interval- and right-censored). Response by HDSS: two steps strong, one good (Gülmez &amp; Solak, J Clin Med 2026;15:640, where %1 of %2 responded).</source>
        <translation>Trockene Zeiten zählen von der letzten Sitzung bis zum ersten klammen Tag; nicht gesehene Tage und Auffrischungen im noch trockenen Zustand gelten als das, was sie sind (intervall- und rechtszensiert). Ansprechen nach HDSS: zwei Stufen stark, eine gut (Gülmez &amp; Solak, J Clin Med 2026;15:640; dort sprachen %1 von %2 an).</translation>
    </message>
    <message numerus="yes">
        <source>median %n day(s) (%1: %2 to %3)</source>
        <translation>
            <numerusform>Median %n Tag (%1: %2 bis %3)</numerusform>
            <numerusform>Median %n Tage (%1: %2 bis %3)</numerusform>
        </translation>
    </message>
    <message>
        <source>Batteries: probably used up.</source>
        <translation>Batterien: wahrscheinlich leer.</translation>
    </message>
    <message>
        <source>severity %1&#xa0;now, %2&#xa0;before</source>
        <translation>Schweregrad jetzt&#xa0;%1, vorher&#xa0;%2</translation>
    </message>
</context>
<context>
    <name>People</name>
    <message>
        <source>People</source>
        <translation>Personen</translation>
    </message>
    <message>
        <source>Each person has a record of their own; nothing is mixed.</source>
        <translation>Jede Person hat eine eigene Aufzeichnung; nichts wird vermischt.</translation>
    </message>
    <message>
        <source>Me</source>
        <translation>Ich</translation>
    </message>
    <message>
        <source>Adult beside the child: %1</source>
        <translation>Erwachsene Begleitperson: %1</translation>
    </message>
    <message>
        <source>Shown now</source>
        <translation>Jetzt gezeigt</translation>
    </message>
    <message>
        <source>Show</source>
        <translation>Zeigen</translation>
    </message>
    <message>
        <source>Your details</source>
        <translation>Ihre Angaben</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Speichern</translation>
    </message>
    <message>
        <source>Add somebody</source>
        <translation>Jemanden hinzufügen</translation>
    </message>
    <message>
        <source>Add</source>
        <translation>Hinzufügen</translation>
    </message>
</context>
<context>
    <name>PersonForm</name>
    <message>
        <source>First name, or what you like to be called</source>
        <translation>Vorname, oder wie Sie genannt werden möchten</translation>
    </message>
    <message>
        <source>Optional</source>
        <translation>Optional</translation>
    </message>
    <message>
        <source>Birthday</source>
        <translation>Geburtstag</translation>
    </message>
    <message>
        <source>The adult beside the child</source>
        <translation>Erwachsene Begleitperson</translation>
    </message>
    <message>
        <source>Children are treated only with medical advice and an adult beside them.</source>
        <translation>Kinder werden nur mit ärztlichem Rat und in Begleitung einer erwachsenen Person behandelt.</translation>
    </message>
    <message>
        <source>Height in centimetres</source>
        <translation>Größe in Zentimetern</translation>
    </message>
    <message>
        <source>Optional. With the weight it tells how large the treated skin is.</source>
        <translation>Optional. Zusammen mit dem Gewicht zeigt sie, wie groß die behandelte Hautfläche ist.</translation>
    </message>
    <message>
        <source>Weight in kilograms</source>
        <translation>Gewicht in Kilogramm</translation>
    </message>
    <message>
        <source>It sets your current limit. Without it, the children&apos;s limits apply.</source>
        <translation>Er entscheidet, welche Grenzen gelten. Ohne ihn gelten die für Kinder.</translation>
    </message>
    <message>
        <source>Write a number from %1 to %2.</source>
        <translation>Schreiben Sie eine Zahl von %1 bis %2.</translation>
    </message>
</context>
<context>
    <name>PickRow</name>
    <message>
        <source>Choose</source>
        <translation>Wählen</translation>
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
        <translation>Nächste Sitzung: %1</translation>
    </message>
    <message numerus="yes">
        <source>The course will end %n day(s) late.</source>
        <translation>
            <numerusform>Die Behandlungs­serie läuft %n Tag über ihre vier Wochen hinaus.</numerusform>
            <numerusform>Die Behandlungs­serie läuft %n Tage über ihre vier Wochen hinaus.</numerusform>
        </translation>
    </message>
    <message>
        <source>Choose the course</source>
        <translation>Behandlungs­serie wählen</translation>
    </message>
    <message>
        <source>Course</source>
        <translation>Behandlungs­serie</translation>
    </message>
    <message>
        <source>Continue</source>
        <translation>Fortsetzen</translation>
    </message>
    <message>
        <source>Pause</source>
        <translation>Aussetzen</translation>
    </message>
    <message>
        <source>Health questions</source>
        <translation>Gesundheits­fragen</translation>
    </message>
    <message>
        <source>To be answered</source>
        <translation>Zu beantworten</translation>
    </message>
    <message>
        <source>Needs a clinician&apos;s approval</source>
        <translation>Etwas spricht dagegen</translation>
    </message>
    <message>
        <source>Answered</source>
        <translation>Beantwortet</translation>
    </message>
    <message>
        <source>Days away</source>
        <translation>Abwesend</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>None</source>
        <translation>Keine</translation>
    </message>
    <message>
        <source>Care sheet</source>
        <translation>Behandlungs­blatt</translation>
    </message>
    <message>
        <source>From %1, %2</source>
        <translation>Von %1, %2</translation>
    </message>
    <message>
        <source>None yet</source>
        <translation>Noch keines</translation>
    </message>
    <message>
        <source>Say where you treat and with which machine; your limits and your plan then stand here.</source>
        <translation>Geben Sie an, wo und mit welchem Gerät Sie behandeln; dann stehen hier Ihre Grenzen und Ihr Plan.</translation>
    </message>
    <message>
        <source>Settings</source>
        <translation>Einstellungen</translation>
    </message>
    <message>
        <source>Tap a day to move its session.</source>
        <translation>Tippen Sie auf einen Tag, um seine Sitzung zu verschieben.</translation>
    </message>
    <message>
        <source>Taught by somebody</source>
        <translation>Von jemandem angeleitet</translation>
    </message>
    <message>
        <source>Not marked</source>
        <translation>Nicht festgehalten</translation>
    </message>
    <message>
        <source>Practice</source>
        <translation>Übung</translation>
    </message>
    <message>
        <source>A whole session with the machine off</source>
        <translation>Eine ganze Sitzung mit aus­geschaltetem Gerät</translation>
    </message>
</context>
<context>
    <name>PracticeBanner</name>
    <message>
        <source>Practice: machine stays off</source>
        <translation>Übung: Gerät bleibt aus</translation>
    </message>
    <message>
        <source>Leave practice</source>
        <translation>Übung verlassen</translation>
    </message>
</context>
<context>
    <name>Prompts</name>
    <message>
        <source>Check everything on the list. Machine off, current at zero.</source>
        <translation>Prüfen Sie alles auf der Liste. Gerät aus, Strom auf null.</translation>
    </message>
    <message>
        <source>Hands in, in fifteen seconds. Keep them still under the water.</source>
        <translation>In fünfzehn Sekunden die Hände hinein. Halten Sie sie unter Wasser still.</translation>
    </message>
    <message>
        <source>Raise the current slowly. It may prickle. It must not hurt.</source>
        <translation>Den Strom langsam hochregeln. Es darf kribbeln. Es darf nicht wehtun.</translation>
    </message>
    <message>
        <source>Hold still. Everything stays under water.</source>
        <translation>Stillhalten. Alles bleibt unter Wasser.</translation>
    </message>
    <message>
        <source>Lower the current to zero. Slowly.</source>
        <translation>Den Strom auf null herunterregeln. Langsam.</translation>
    </message>
    <message>
        <source>Machine off. Now take your hands or feet out, and dry your skin.</source>
        <translation>Gerät aus. Jetzt Hände oder Füße herausnehmen und die Haut abtrocknen.</translation>
    </message>
    <message>
        <source>Look at the meter.</source>
        <translation>Auf die Anzeige schauen.</translation>
    </message>
    <message>
        <source>Half way.</source>
        <translation>Die Hälfte ist um.</translation>
    </message>
    <message>
        <source>One minute left.</source>
        <translation>Noch eine Minute.</translation>
    </message>
    <message>
        <source>Ten seconds.</source>
        <translation>Zehn Sekunden.</translation>
    </message>
    <message>
        <source>Done.</source>
        <translation>Fertig.</translation>
    </message>
    <message>
        <source>Too high! Lower the current now.</source>
        <translation>Zu hoch! Jetzt den Strom herunterregeln.</translation>
    </message>
    <message>
        <source>Machine off. Now.</source>
        <translation>Gerät aus. Jetzt.</translation>
    </message>
    <message>
        <source>Check the list. Then start again from the beginning.</source>
        <translation>Prüfen Sie die Liste. Dann noch einmal von vorn beginnen.</translation>
    </message>
    <message>
        <source>Lower it a little, until it is comfortable.</source>
        <translation>Ein wenig herunterregeln, bis es angenehm ist.</translation>
    </message>
    <message>
        <source>Stopped. Current at zero, machine off. Then take your hands or feet out.</source>
        <translation>Gestoppt. Strom auf null, Gerät aus, dann Hände oder Füße herausnehmen.</translation>
    </message>
    <message>
        <source>This is how loud I am. Can you hear me over the water?</source>
        <translation>So laut bin ich. Hören Sie mich trotz des Wassers?</translation>
    </message>
    <message>
        <source>Switch the machine on. Is the meter at zero, and is it set to direct current? Then tap.</source>
        <translation>Das Gerät einschalten. Steht die Anzeige auf null, und ist es auf Gleichstrom gestellt? Dann tippen.</translation>
    </message>
    <message>
        <source>Switch the machine on. Is the meter at zero, and is the light for pulsed current on? Then tap.</source>
        <translation>Das Gerät einschalten. Steht die Anzeige auf null, und leuchtet das Licht für Pulsstrom? Dann tippen.</translation>
    </message>
    <message>
        <source>Raise the current slowly with the remote. It may prickle. It must not hurt.</source>
        <translation>Den Strom mit der Fernbedienung langsam hochregeln. Es darf kribbeln. Es darf nicht wehtun.</translation>
    </message>
    <message>
        <source>Hold still. Both pads stay where they are.</source>
        <translation>Stillhalten. Beide Elektrodenpolster bleiben, wo sie sind.</translation>
    </message>
    <message>
        <source>Lower the current to zero with the remote. Slowly.</source>
        <translation>Den Strom mit der Fernbedienung auf null herunterregeln. Langsam.</translation>
    </message>
    <message>
        <source>Is the meter at zero? Only then take your hands out. Dry them, and tap.</source>
        <translation>Steht die Anzeige auf null? Erst dann die Hände herausnehmen. Abtrocknen und tippen.</translation>
    </message>
    <message>
        <source>Is the meter at zero? Only then take your hands out. Dry them, switch the machine off, and tap.</source>
        <translation>Steht die Anzeige auf null? Erst dann die Hände herausnehmen. Abtrocknen, das Gerät ausschalten und tippen.</translation>
    </message>
    <message>
        <source>Current at zero? Now swap the two leads. Cover small cuts again. Then tap.</source>
        <translation>Strom auf null? Jetzt die beiden Kabel vertauschen. Kleine Schnitte wieder abdecken. Dann tippen.</translation>
    </message>
    <message>
        <source>Current at zero? Now flip the polarity switch. Cover small cuts again. Then tap.</source>
        <translation>Strom auf null? Jetzt den Polschalter umlegen. Kleine Schnitte wieder abdecken. Dann tippen.</translation>
    </message>
    <message>
        <source>Current at zero? Soak the pads again, and swap the two leads. Then tap.</source>
        <translation>Strom auf null? Die Elektrodenpolster wieder tränken und die beiden Kabel vertauschen. Dann tippen.</translation>
    </message>
    <message>
        <source>Current at zero? Soak the pads again, and flip the polarity switch. Then tap.</source>
        <translation>Strom auf null? Die Elektrodenpolster wieder tränken und den Polschalter umlegen. Dann tippen.</translation>
    </message>
    <message>
        <source>Current at zero? Soak the pads again, and exchange them, right with left. Then tap.</source>
        <translation>Strom auf null? Die Elektrodenpolster wieder tränken und tauschen, rechts gegen links. Dann tippen.</translation>
    </message>
    <message>
        <source>Current at zero? Now change to the other side. Cover small cuts again. Then tap.</source>
        <translation>Strom auf null? Jetzt zur anderen Seite wechseln. Kleine Schnitte wieder abdecken. Dann tippen.</translation>
    </message>
    <message>
        <source>Machine off. Now take the pads off, and dry your skin.</source>
        <translation>Gerät aus. Jetzt die Elektrodenpolster abnehmen und die Haut abtrocknen.</translation>
    </message>
    <message>
        <source>Dry your skin and the kit.</source>
        <translation>Die Haut und das Zubehör trocknen.</translation>
    </message>
    <message>
        <source>I was away. What did the machine do? If you do not know, machine off. Then answer on the screen.</source>
        <translation>Ich war weg. Was hat das Gerät getan? Wenn Sie es nicht wissen: Gerät aus. Dann auf dem Bildschirm antworten.</translation>
    </message>
    <message>
        <source>It is enough for today.</source>
        <translation>Für heute ist es genug.</translation>
    </message>
    <message>
        <source>That was too long ago. This session is over. What you did is kept.</source>
        <translation>Das ist zu lange her. Diese Sitzung ist beendet. Was Sie gemacht haben, bleibt erhalten.</translation>
    </message>
    <message>
        <source>Stopped. Current at zero, machine off, then take the pads off.</source>
        <translation>Gestoppt. Strom auf null, Gerät aus, dann die Elektrodenpolster abnehmen.</translation>
    </message>
    <message>
        <source>Practice: the machine stays off. In a real session you switch it on now. Then tap.</source>
        <translation>Übung: Das Gerät bleibt aus. In einer echten Sitzung schalten Sie es jetzt ein. Dann tippen.</translation>
    </message>
    <message>
        <source>Practice: no current. In a real session you turn it up slowly now.</source>
        <translation>Übung: kein Strom. In einer echten Sitzung regeln Sie ihn jetzt langsam hoch.</translation>
    </message>
    <message>
        <source>Practice: no current. In a real session you turn it down to zero now.</source>
        <translation>Übung: kein Strom. In einer echten Sitzung regeln Sie ihn jetzt auf null herunter.</translation>
    </message>
</context>
<context>
    <name>RemindersPage</name>
    <message>
        <source>Reminders</source>
        <translation>Erinnerungen</translation>
    </message>
    <message>
        <source>On</source>
        <translation>Ein</translation>
    </message>
    <message>
        <source>Off</source>
        <translation>Aus</translation>
    </message>
    <message>
        <source>Daily check-in</source>
        <translation>Tages­eintrag</translation>
    </message>
    <message>
        <source>Sessions</source>
        <translation>Sitzungen</translation>
    </message>
    <message>
        <source>Quiet from</source>
        <translation>Ruhe ab</translation>
    </message>
    <message>
        <source>Quiet until</source>
        <translation>Ruhe bis</translation>
    </message>
    <message>
        <source>Remind of a back-up each month</source>
        <translation>Jeden Monat an eine Sicherung erinnern</translation>
    </message>
    <message>
        <source>Yes</source>
        <translation>Ja</translation>
    </message>
    <message>
        <source>No</source>
        <translation>Nein</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Speichern</translation>
    </message>
    <message>
        <source>More: top-ups come earlier and more often. Fewer: fewer sessions, more damp days. Usual: 2.</source>
        <translation>Mehr: Auffrischungen kommen früher und öfter. Weniger: weniger Sitzungen, mehr feuchte Tage. Üblich: 2.</translation>
    </message>
    <message>
        <source>How many sessions is one damp spell worth to you?</source>
        <translation>Wie viele Sitzungen ist es Ihnen wert, eine feuchte Zeit zu vermeiden?</translation>
    </message>
</context>
<context>
    <name>SetUpFirst</name>
    <message>
        <source>Set up</source>
        <translation>Einrichten</translation>
    </message>
</context>
<context>
    <name>SetUpGoOn</name>
    <message>
        <source>Not everything is set up yet</source>
        <translation>Noch ist nicht alles eingerichtet</translation>
    </message>
    <message>
        <source>Before a session, Firstdew has to know your machine and your answers to the health questions.</source>
        <translation>Vor einer Sitzung muss Firstdew Ihr Gerät und Ihre Antworten auf die Gesundheits­fragen kennen.</translation>
    </message>
    <message>
        <source>Continue the set-up</source>
        <translation>Einrichtung fortsetzen</translation>
    </message>
</context>
<context>
    <name>Settings</name>
    <message>
        <source>Settings</source>
        <translation>Einstellungen</translation>
    </message>
    <message>
        <source>Me</source>
        <translation>Ich</translation>
    </message>
    <message>
        <source>Voice only</source>
        <translation>Nur Stimme</translation>
    </message>
    <message>
        <source>Tones only</source>
        <translation>Nur Töne</translation>
    </message>
    <message>
        <source>Vibration only</source>
        <translation>Nur Vibration</translation>
    </message>
    <message>
        <source>Voice and tones</source>
        <translation>Stimme und Töne</translation>
    </message>
    <message>
        <source>Machine and kit</source>
        <translation>Gerät und Zubehör</translation>
    </message>
    <message>
        <source>Not set</source>
        <translation>Nicht angegeben</translation>
    </message>
    <message numerus="yes">
        <source>Batteries: about %n session(s) left</source>
        <translation>
            <numerusform>Batterien: noch etwa %n Sitzung</numerusform>
            <numerusform>Batterien: noch etwa %n Sitzungen</numerusform>
        </translation>
    </message>
    <message>
        <source>Reminders</source>
        <translation>Erinnerungen</translation>
    </message>
    <message>
        <source>Check-in %1, quiet %2 to %3</source>
        <translation>Tages­eintrag %1, Ruhe %2 bis %3</translation>
    </message>
    <message>
        <source>Off</source>
        <translation>Aus</translation>
    </message>
    <message>
        <source>People</source>
        <translation>Personen</translation>
    </message>
    <message>
        <source>Appearance and language</source>
        <translation>Aussehen und Sprache</translation>
    </message>
    <message>
        <source>Dark</source>
        <translation>Dunkel</translation>
    </message>
    <message>
        <source>Light</source>
        <translation>Hell</translation>
    </message>
    <message>
        <source>Match phone</source>
        <translation>Wie das Telefon</translation>
    </message>
    <message>
        <source>Move to another phone</source>
        <translation>Auf ein anderes Telefon umziehen</translation>
    </message>
    <message>
        <source>Take everything with you</source>
        <translation>Alles mitnehmen</translation>
    </message>
    <message>
        <source>Back-up, export and delete</source>
        <translation>Sichern, exportieren und löschen</translation>
    </message>
    <message>
        <source>About and cautions</source>
        <translation>Über Firstdew und Warnhinweise</translation>
    </message>
    <message>
        <source>Version %1</source>
        <translation>Version %1</translation>
    </message>
    <message>
        <source>I teach others</source>
        <translation>Ich leite andere an</translation>
    </message>
    <message>
        <source>Caseload</source>
        <translation>Meine Betreuten</translation>
    </message>
    <message>
        <source>Who needs a call, and care sheets for them</source>
        <translation>Wer einen Anruf braucht, und Behandlungs­blätter</translation>
    </message>
    <message>
        <source>Batteries: probably used up</source>
        <translation>Batterien: wahrscheinlich leer</translation>
    </message>
    <message>
        <source>Ask for this phone&apos;s lock before showing the diary</source>
        <translation>Nach der Sperre dieses Telefons fragen, bevor das Tagebuch erscheint</translation>
    </message>
    <message>
        <source>Firstdew: switch the app lock on or off</source>
        <translation>Firstdew: App-Sperre ein- oder ausschalten</translation>
    </message>
    <message>
        <source>This phone could not ask for its lock. Nothing was changed.</source>
        <translation>Dieses Telefon konnte nicht nach seiner Sperre fragen. Es wurde nichts geändert.</translation>
    </message>
    <message>
        <source>When Firstdew starts, and when you come back after a minute. A session is never locked.</source>
        <translation>Wenn Firstdew startet und wenn Sie nach einer Minute zurückkommen. Eine Sitzung wird nie gesperrt.</translation>
    </message>
    <message>
        <source>This phone has no lock that Firstdew can ask for: your diary opens without it.</source>
        <translation>Dieses Telefon hat keine Sperre, nach der Firstdew fragen kann: Ihr Tagebuch öffnet sich ohne sie.</translation>
    </message>
    <message>
        <source>For this, the phone needs a lock of its own that Firstdew can ask for.</source>
        <translation>Dafür braucht das Telefon eine eigene Sperre, nach der Firstdew fragen kann.</translation>
    </message>
</context>
<context>
    <name>SettingsPage</name>
    <message>
        <source>Appearance and language</source>
        <translation>Aussehen und Sprache</translation>
    </message>
    <message>
        <source>Theme</source>
        <translation>Aussehen</translation>
    </message>
    <message>
        <source>Match phone</source>
        <translation>Wie das Telefon</translation>
    </message>
    <message>
        <source>Light</source>
        <translation>Hell</translation>
    </message>
    <message>
        <source>Dark</source>
        <translation>Dunkel</translation>
    </message>
    <message>
        <source>Text size</source>
        <translation>Textgröße</translation>
    </message>
    <message>
        <source>Small</source>
        <translation>Klein</translation>
    </message>
    <message>
        <source>Normal</source>
        <translation>Normal</translation>
    </message>
    <message>
        <source>Large</source>
        <translation>Groß</translation>
    </message>
    <message>
        <source>Larger</source>
        <translation>Sehr groß</translation>
    </message>
    <message>
        <source>Largest</source>
        <translation>Riesig</translation>
    </message>
    <message>
        <source>Language</source>
        <translation>Sprache</translation>
    </message>
</context>
<context>
    <name>Sheet</name>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
</context>
<context>
    <name>SheetText</name>
    <message>
        <source>From</source>
        <translation>Von</translation>
    </message>
    <message>
        <source>Given on</source>
        <translation>Ausgestellt am</translation>
    </message>
    <message>
        <source>For</source>
        <translation>Für</translation>
    </message>
    <message>
        <source>Course</source>
        <translation>Behandlungs­serie</translation>
    </message>
    <message>
        <source>Session days</source>
        <translation>Sitzungstage</translation>
    </message>
    <message>
        <source>Current</source>
        <translation>Strom</translation>
    </message>
    <message>
        <source>Limit, direct</source>
        <translation>Grenze, Gleichstrom</translation>
    </message>
    <message>
        <source>Limit, pulsed</source>
        <translation>Grenze, Pulsstrom</translation>
    </message>
    <message>
        <source>Time to turn up</source>
        <translation>Zeit zum Hochregeln</translation>
    </message>
    <message>
        <source>Time to turn down</source>
        <translation>Zeit zum Herunterregeln</translation>
    </message>
    <message>
        <source>Time to swap</source>
        <translation>Zeit zum Umpolen</translation>
    </message>
    <message>
        <source>Review</source>
        <translation>Kontrolle</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation>Bemerkungen</translation>
    </message>
    <message numerus="yes">
        <source>%n second(s)</source>
        <translation>
            <numerusform>%n Sekunde</numerusform>
            <numerusform>%n Sekunden</numerusform>
        </translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>not set</source>
        <translation>nicht festgelegt</translation>
    </message>
    <message>
        <source>%1: %2 (now %3)</source>
        <translation>%1: %2 (jetzt %3)</translation>
    </message>
    <message>
        <source>Armpit pads</source>
        <translation>Elektroden­polster, Achseln</translation>
    </message>
    <message>
        <source>If the course does not help</source>
        <translation>Wenn die Behandlungs­serie nicht hilft</translation>
    </message>
    <message>
        <source>%1: the course that runs now goes on.</source>
        <translation>%1: Die laufende Behandlungs­serie geht weiter.</translation>
    </message>
    <message numerus="yes">
        <source>%1: a course of %n session(s) begins today.</source>
        <translation>
            <numerusform>%1: Heute beginnt eine Behandlungs­serie mit %n Sitzung.</numerusform>
            <numerusform>%1: Heute beginnt eine Behandlungs­serie mit %n Sitzungen.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 It takes the place of the one that runs now.</source>
        <translation>%1 Sie tritt an die Stelle der laufenden.</translation>
    </message>
    <message>
        <source>Level to begin with</source>
        <translation>Stärke zu Beginn</translation>
    </message>
    <message>
        <source>Whom to call</source>
        <translation>Wen anrufen</translation>
    </message>
    <message>
        <source>As usual: %1</source>
        <translation>Wie üblich: %1</translation>
    </message>
    <message>
        <source>Left open</source>
        <translation>Offen</translation>
    </message>
    <message numerus="yes">
        <source>%1: %2 times %n minute(s)</source>
        <translation>
            <numerusform>%1: %2-mal %n Minute</numerusform>
            <numerusform>%1: %2-mal %n Minuten</numerusform>
        </translation>
    </message>
    <message>
        <source>Too high: %1 is the usual limit. Lower it.</source>
        <translation>Zu hoch: %1 ist die übliche Grenze. Senken Sie den Wert.</translation>
    </message>
    <message>
        <source>Type your name, on one short line.</source>
        <translation>Geben Sie Ihren Namen ein, in einer kurzen Zeile.</translation>
    </message>
    <message>
        <source>Choose where to treat.</source>
        <translation>Wählen Sie, wo behandelt wird.</translation>
    </message>
    <message>
        <source>Armpits need pulsed current. Choose that one.</source>
        <translation>Achseln brauchen Pulsstrom. Wählen Sie diesen.</translation>
    </message>
    <message>
        <source>Choose up to 60 days, from day 1.</source>
        <translation>Wählen Sie bis zu 60 Tage, ab Tag 1.</translation>
    </message>
    <message>
        <source>This lies before the day of the sheet. Choose a later day.</source>
        <translation>Das liegt vor dem Tag des Blatts. Wählen Sie einen späteren Tag.</translation>
    </message>
    <message>
        <source>Keep it to one short line.</source>
        <translation>Schreiben Sie nur eine kurze Zeile.</translation>
    </message>
    <message>
        <source>Too long for the code. Shorten it.</source>
        <translation>Zu lang für den Code. Kürzen Sie es.</translation>
    </message>
    <message>
        <source>This value cannot be used. Change it.</source>
        <translation>Dieser Wert ist nicht brauchbar. Ändern Sie ihn.</translation>
    </message>
    <message>
        <source>%1 each</source>
        <translation>je %1</translation>
    </message>
</context>
<context>
    <name>SkinPage</name>
    <message>
        <source>Skin after a session</source>
        <translation>Haut nach der Sitzung</translation>
    </message>
    <message>
        <source>Burns or blisters: no session there until a clinician has looked at it.</source>
        <translation>Verbrennung oder Blasen: dort keine Sitzung, bis es ärztlich angesehen wurde.</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>Optional</source>
        <translation>Optional</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Speichern</translation>
    </message>
</context>
<context>
    <name>SoundPage</name>
    <message>
        <source>Voice and tones</source>
        <translation>Stimme und Töne</translation>
    </message>
    <message>
        <source>During a session each step, the minutes and the end are said aloud, so that nobody has to look at the phone.</source>
        <translation>Während einer Sitzung werden jeder Schritt, die Minuten und das Ende angesagt, damit niemand auf das Telefon sehen muss.</translation>
    </message>
    <message>
        <source>What is heard</source>
        <translation>Was zu hören ist</translation>
    </message>
    <message>
        <source>Voice only</source>
        <translation>Nur Stimme</translation>
    </message>
    <message>
        <source>Tones only</source>
        <translation>Nur Töne</translation>
    </message>
    <message>
        <source>The voice speaks English so far.</source>
        <translation>Die Stimme spricht bisher Englisch.</translation>
    </message>
    <message>
        <source>Test the volume</source>
        <translation>Lautstärke prüfen</translation>
    </message>
    <message>
        <source>Vibration only</source>
        <translation>Nur Vibration</translation>
    </message>
    <message>
        <source>With both hands under water nobody feels the phone: there, voice and tones are heard all the same.</source>
        <translation>Mit beiden Händen unter Wasser spürt niemand das Telefon: Dort sind Stimme und Töne trotzdem zu hören.</translation>
    </message>
    <message>
        <source>Each step also felt as a vibration</source>
        <translation>Jeder Schritt auch als Vibration</translation>
    </message>
    <message>
        <source>Yes</source>
        <translation>Ja</translation>
    </message>
    <message>
        <source>No</source>
        <translation>Nein</translation>
    </message>
    <message>
        <source>A reading above the limit sounds the alarm whatever is chosen here. The phone cannot see the current, only what is entered.</source>
        <translation>Ein Wert über der Grenze löst den Alarm aus, was auch immer hier gewählt ist. Das Telefon sieht den Strom nicht, nur was eingegeben wird.</translation>
    </message>
    <message>
        <source>Which voice</source>
        <translation>Welche Stimme</translation>
    </message>
    <message>
        <source>Recorded voice</source>
        <translation>Aufgenommene Stimme</translation>
    </message>
    <message>
        <source>Voice of this device</source>
        <translation>Stimme dieses Telefons</translation>
    </message>
    <message>
        <source>The recorded voice speaks English. The voice of this device speaks your language.</source>
        <translation>Die aufgenommene Stimme spricht Englisch. Die Stimme dieses Telefons spricht Ihre Sprache.</translation>
    </message>
    <message>
        <source>You can choose the voice of this phone once it offers one for your language.</source>
        <translation>Die Stimme dieses Telefons lässt sich wählen, sobald das Telefon eine für Ihre Sprache anbietet.</translation>
    </message>
    <message>
        <source>A pedal or a switch stops a session, like a key</source>
        <translation>Ein Pedal oder Taster stoppt eine Sitzung wie eine Taste</translation>
    </message>
    <message>
        <source>A soft sound runs through the session. If it stops, turn the current to zero and switch the machine off.</source>
        <translation>Ein leises Rauschen läuft während der ganzen Sitzung. Wenn es aufhört, regeln Sie den Strom auf null und schalten das Gerät aus.</translation>
    </message>
    <message>
        <source>The recorded voice does not speak your language. The voice of this device speaks in its place: test the volume, and hear whether you understand it.</source>
        <translation>Die aufgenommene Stimme spricht Ihre Sprache nicht. An ihrer Stelle spricht die Stimme dieses Geräts: Prüfen Sie die Lautstärke und hören Sie, ob Sie sie verstehen.</translation>
    </message>
    <message>
        <source>You can follow a session by the tones and on the screen. Both hands under water stays closed until a voice is known to speak your language.</source>
        <translation>Sie können einer Sitzung mit den Tönen und auf dem Bildschirm folgen. „Beide Hände unter Wasser“ bleibt gesperrt, bis eine Stimme bekannt ist, die Ihre Sprache spricht.</translation>
    </message>
</context>
<context>
    <name>Stepper</name>
    <message>
        <source>%1: less</source>
        <translation>%1: weniger</translation>
    </message>
    <message>
        <source>%1: more</source>
        <translation>%1: mehr</translation>
    </message>
</context>
<context>
    <name>StirredUp</name>
    <message>
        <source>Anything that might explain it?</source>
        <translation>Gab es einen Auslöser?</translation>
    </message>
</context>
<context>
    <name>StoreTrouble</name>
    <message>
        <source>Your record could not be opened</source>
        <translation>Ihre Aufzeichnung ließ sich nicht öffnen</translation>
    </message>
    <message>
        <source>The file with your record is damaged.</source>
        <translation>Die Datei mit Ihrer Aufzeichnung ist beschädigt.</translation>
    </message>
    <message>
        <source>A newer Firstdew wrote this record.</source>
        <translation>Ein neueres Firstdew hat diese Aufzeichnung geschrieben.</translation>
    </message>
    <message>
        <source>Another program is using your record.</source>
        <translation>Ein anderes Programm benutzt Ihre Aufzeichnung.</translation>
    </message>
    <message>
        <source>Your record cannot be written to.</source>
        <translation>In Ihre Aufzeichnung lässt sich nicht schreiben.</translation>
    </message>
    <message>
        <source>The file in its place is not a Firstdew record, or is damaged at its very beginning.</source>
        <translation>Die Datei an ihrer Stelle ist keine Aufzeichnung von Firstdew oder ist gleich am Anfang beschädigt.</translation>
    </message>
    <message>
        <source>The file with your record is not there or cannot be read.</source>
        <translation>Die Datei mit Ihrer Aufzeichnung ist nicht da oder lässt sich nicht lesen.</translation>
    </message>
    <message>
        <source>Firstdew can put what is still readable, and what a copy beside it holds, into a new file. The damaged file is kept.</source>
        <translation>Firstdew kann in eine neue Datei schreiben, was noch lesbar ist und was eine Kopie daneben enthält. Die beschädigte Datei bleibt erhalten.</translation>
    </message>
    <message>
        <source>Update Firstdew, then open it again.</source>
        <translation>Aktualisieren Sie Firstdew, dann öffnen Sie es noch einmal.</translation>
    </message>
    <message>
        <source>Close that program, then try again.</source>
        <translation>Schließen Sie dieses Programm, dann versuchen Sie es noch einmal.</translation>
    </message>
    <message>
        <source>Let yourself write to the file and its folder, then try again.</source>
        <translation>Geben Sie sich das Recht, in die Datei und ihren Ordner zu schreiben, dann versuchen Sie es noch einmal.</translation>
    </message>
    <message>
        <source>Move that file elsewhere, put your record in its place, then try again.</source>
        <translation>Legen Sie diese Datei woanders ab und Ihre Aufzeichnung an ihre Stelle, dann versuchen Sie es noch einmal.</translation>
    </message>
    <message>
        <source>Look whether the folder is there and belongs to you, then try again.</source>
        <translation>Sehen Sie nach, ob der Ordner da ist und Ihnen gehört, dann versuchen Sie es noch einmal.</translation>
    </message>
    <message>
        <source>Try again in a moment.</source>
        <translation>Versuchen Sie es gleich noch einmal.</translation>
    </message>
    <message>
        <source>Nothing was changed in it.</source>
        <translation>Daran wurde nichts geändert.</translation>
    </message>
    <message>
        <source>Leave the machine off until your record is open: your limits and answers stand in it.</source>
        <translation>Lassen Sie das Gerät aus, bis Ihre Aufzeichnung offen ist: Darin stehen Ihre Grenzen und Antworten.</translation>
    </message>
    <message>
        <source>Repair the record</source>
        <translation>Aufzeichnung reparieren</translation>
    </message>
    <message>
        <source>Try again</source>
        <translation>Noch einmal versuchen</translation>
    </message>
    <message>
        <source>Restore a back-up</source>
        <translation>Eine Sicherung wieder­herstellen</translation>
    </message>
    <message>
        <source>It takes the place of the damaged file, which is kept.</source>
        <translation>Sie tritt an die Stelle der beschädigten Datei; diese bleibt erhalten.</translation>
    </message>
    <message>
        <source>Passphrase of the back-up</source>
        <translation>Kennwort der Sicherung</translation>
    </message>
    <message>
        <source>Restore</source>
        <translation>Wieder­herstellen</translation>
    </message>
</context>
<context>
    <name>SummaryPage</name>
    <message>
        <source>Summary for your prescriber</source>
        <translation>Bericht für Ihre Praxis</translation>
    </message>
    <message>
        <source>How far back</source>
        <translation>Zeitraum</translation>
    </message>
    <message>
        <source>A month</source>
        <translation>Ein Monat</translation>
    </message>
    <message>
        <source>Three months</source>
        <translation>Drei Monate</translation>
    </message>
    <message>
        <source>Half a year</source>
        <translation>Ein halbes Jahr</translation>
    </message>
    <message>
        <source>A year</source>
        <translation>Ein Jahr</translation>
    </message>
    <message>
        <source>Share the summary</source>
        <translation>Bericht teilen</translation>
    </message>
    <message>
        <source>Questions for the prescriber</source>
        <translation>Fragen an die Praxis</translation>
    </message>
    <message>
        <source>Take back: %1</source>
        <translation>Zurücknehmen: %1</translation>
    </message>
    <message>
        <source>Your questions appear near the top of the page.</source>
        <translation>Was Sie fragen möchten, steht weit oben auf der Seite.</translation>
    </message>
    <message>
        <source>Your question</source>
        <translation>Ihre Frage</translation>
    </message>
    <message>
        <source>Put it on the page</source>
        <translation>Auf die Seite setzen</translation>
    </message>
    <message>
        <source>Look at it</source>
        <translation>Ansehen</translation>
    </message>
    <message>
        <source>A page that says how it goes and what you ask, and a second one with every session. Nothing leaves the phone before you choose where it goes.</source>
        <translation>Eine Seite, die sagt, wie es läuft und was Sie fragen, und eine zweite mit jeder Sitzung. Nichts verlässt das Telefon, bevor Sie wählen, wohin es geht.</translation>
    </message>
    <message>
        <source>Hide the page</source>
        <translation>Seite ausblenden</translation>
    </message>
    <message>
        <source>Show the page here</source>
        <translation>Seite hier zeigen</translation>
    </message>
    <message>
        <source>The first page as it will be printed</source>
        <translation>Die erste Seite, wie sie gedruckt wird</translation>
    </message>
    <message>
        <source>Save it as a file</source>
        <translation>Als Datei speichern</translation>
    </message>
</context>
<context>
    <name>TallyLines</name>
    <message numerus="yes">
        <source>%n person(s)</source>
        <translation>
            <numerusform>%n Person</numerusform>
            <numerusform>%n Personen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n check-in(s)</source>
        <translation>
            <numerusform>%n Tages­eintrag</numerusform>
            <numerusform>%n Tages­einträge</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n session(s)</source>
        <translation>
            <numerusform>%n Sitzung</numerusform>
            <numerusform>%n Sitzungen</numerusform>
        </translation>
    </message>
    <message>
        <source>Last entry: %1</source>
        <translation>Letzter Eintrag: %1</translation>
    </message>
</context>
<context>
    <name>TaughtPage</name>
    <message>
        <source>A taught session</source>
        <translation>Eine angeleitete Sitzung</translation>
    </message>
    <message>
        <source>Did somebody who knows the treatment watch a session? Mark together what they saw. It goes onto the summary.</source>
        <translation>Hat jemand, der die Behandlung kennt, bei einer Sitzung zugesehen? Halten Sie gemeinsam fest, was zu sehen war. Es kommt in den Bericht.</translation>
    </message>
    <message>
        <source>Where</source>
        <translation>Wo</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Wann</translation>
    </message>
    <message>
        <source>Who watched</source>
        <translation>Wer zugesehen hat</translation>
    </message>
    <message>
        <source>A name or a role, for example: the nurse</source>
        <translation>Ein Name oder eine Rolle, zum Beispiel: die Pflegekraft</translation>
    </message>
    <message>
        <source>What they saw</source>
        <translation>Was zu sehen war</translation>
    </message>
    <message>
        <source>Current</source>
        <translation>Strom</translation>
    </message>
    <message>
        <source>Level agreed to begin with at home</source>
        <translation>Vereinbarte Stärke für den Beginn zu Hause</translation>
    </message>
    <message>
        <source>None agreed</source>
        <translation>Keine vereinbart</translation>
    </message>
    <message>
        <source>%1, limit %2</source>
        <translation>%1, Grenze %2</translation>
    </message>
    <message>
        <source>Remove %1</source>
        <translation>%1 entfernen</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Speichern</translation>
    </message>
</context>
<context>
    <name>TaughtText</name>
    <message>
        <source>Checked the skin and took off jewellery</source>
        <translation>Haut angesehen und Schmuck abgelegt</translation>
    </message>
    <message>
        <source>Soaked the pads and fitted them tight</source>
        <translation>Die Elektroden­polster getränkt und fest angelegt</translation>
    </message>
    <message>
        <source>Set out trays, plates and water</source>
        <translation>Schalen, Platten und Wasser bereitgestellt</translation>
    </message>
    <message>
        <source>Turned up slowly and said when it was enough</source>
        <translation>Langsam hochgeregelt und gesagt, wann es genug war</translation>
    </message>
    <message>
        <source>Swapped at zero</source>
        <translation>Bei null umgepolt</translation>
    </message>
    <message>
        <source>Knows what to do when a pad comes off</source>
        <translation>Weiß, was zu tun ist, wenn sich ein Elektroden­polster löst</translation>
    </message>
    <message>
        <source>Knows what to do when a hand or foot comes out of the water</source>
        <translation>Weiß, was zu tun ist, wenn eine Hand oder ein Fuß aus dem Wasser kommt</translation>
    </message>
    <message>
        <source>Knows when to stop and whom to call</source>
        <translation>Weiß, wann aufzuhören und wer anzurufen ist</translation>
    </message>
    <message>
        <source>%1, %2, with %3</source>
        <comment>taught: site, day, who watched</comment>
        <translation>%1, %2, mit %3</translation>
    </message>
    <message>
        <source>%1. %2: %3 agreed</source>
        <comment>taught: line, kind of current, milliamperes</comment>
        <translation>%1. %2: %3 vereinbart</translation>
    </message>
</context>
<context>
    <name>Technique</name>
    <message>
        <source>Was the current as high as is comfortable, and never above your limit? A weak current does little.</source>
        <translation>War der Strom so hoch, wie es angenehm ist, und nie über Ihrer Grenze? Ein schwacher Strom bewirkt wenig.</translation>
    </message>
    <message>
        <source>Was the polarity swapped half-way, each time?</source>
        <translation>Wurde jedes Mal nach der Hälfte umgepolt?</translation>
    </message>
    <message>
        <source>Was the skin free of cream? Cream keeps the current off. Petroleum jelly goes on cuts only.</source>
        <translation>War die Haut frei von Creme? Creme hält den Strom ab. Vaseline kommt nur auf Schnitte.</translation>
    </message>
    <message>
        <source>Was everything under water, flat on the grid and without pressing?</source>
        <translation>War alles unter Wasser, flach auf dem Gitter und ohne Druck?</translation>
    </message>
    <message>
        <source>With the machine off: is each lead in fully? Are the pads soaked through and tight?</source>
        <translation>Bei aus­geschaltetem Gerät: Steckt jedes Kabel ganz? Sind die Elektroden­polster durchtränkt und liegen sie fest an?</translation>
    </message>
    <message>
        <source>With the machine off: is each lead in fully? Does each plate lie under its grid?</source>
        <translation>Bei aus­geschaltetem Gerät: Steckt jedes Kabel ganz? Liegt jede Platte unter ihrem Gitter?</translation>
    </message>
    <message>
        <source>Are the batteries fresh? Four alkaline cells last about three sessions.</source>
        <translation>Sind die Batterien frisch? Vier Alkalizellen reichen für etwa drei Sitzungen.</translation>
    </message>
    <message>
        <source>Is your water very soft? It conducts badly. Ask your nurse or prescriber what to do, and add nothing by yourself, not even salt.</source>
        <translation>Ist Ihr Wasser sehr weich? Es leitet schlecht. Fragen Sie Ihre Pflegekraft oder Ihre Praxis, was zu tun ist, und geben Sie von sich aus nichts hinein, auch kein Salz.</translation>
    </message>
</context>
<context>
    <name>TechniquePage</name>
    <message>
        <source>Check how you do it</source>
        <translation>Prüfen, wie Sie es machen</translation>
    </message>
    <message>
        <source>Go through this before your next session. One small thing is often the reason why it does not help, or why the current will not rise.</source>
        <translation>Gehen Sie das vor Ihrer nächsten Sitzung durch. Oft ist eine Kleinigkeit der Grund, warum es nicht hilft oder der Strom nicht steigt.</translation>
    </message>
</context>
<context>
    <name>TimePick</name>
    <message>
        <source>%1, chosen</source>
        <translation>%1, gewählt</translation>
    </message>
</context>
<context>
    <name>TodayHeader</name>
    <message>
        <source>Summary for your prescriber</source>
        <translation>Bericht für Ihre Praxis</translation>
    </message>
    <message>
        <source>Change person, now %1</source>
        <translation>Person wechseln, jetzt %1</translation>
    </message>
</context>
<context>
    <name>TravelPage</name>
    <message>
        <source>Taking the kit along</source>
        <translation>Das Zubehör mitnehmen</translation>
    </message>
    <message>
        <source>Before you leave</source>
        <translation>Vor der Abreise</translation>
    </message>
    <message>
        <source>Dry the kit completely before you pack it.</source>
        <translation>Trocknen Sie das Zubehör ganz, bevor Sie es einpacken.</translation>
    </message>
    <message>
        <source>Take the batteries out, and pack new ones.</source>
        <translation>Nehmen Sie die Batterien heraus und packen Sie neue ein.</translation>
    </message>
    <message>
        <source>Pack the machine&apos;s instructions with it, for whoever asks at a border.</source>
        <translation>Packen Sie die Gebrauchs­anweisung des Geräts dazu, falls an einer Grenze jemand fragt.</translation>
    </message>
    <message>
        <source>Where you stay</source>
        <translation>Am Ziel</translation>
    </message>
    <message>
        <source>Set up as at home: dry hands, leads and machine away from the water, nothing of metal under the trays.</source>
        <translation>Bauen Sie auf wie zu Hause: trockene Hände, Kabel und Gerät weg vom Wasser, nichts aus Metall unter den Schalen.</translation>
    </message>
    <message>
        <source>Water differs from place to place. Turn up even more slowly than at home, and go by the meter.</source>
        <translation>Wasser ist nicht überall gleich. Regeln Sie noch langsamer hoch als zu Hause und richten Sie sich nach der Anzeige.</translation>
    </message>
    <message>
        <source>Very soft water conducts badly. Ask your nurse or prescriber what to do, and add nothing by yourself, not even salt.</source>
        <translation>Sehr weiches Wasser leitet schlecht. Fragen Sie Ihre Pflegekraft oder Ihre Praxis, was zu tun ist, und geben Sie von sich aus nichts hinein, auch kein Salz.</translation>
    </message>
    <message>
        <source>The current will not rise</source>
        <translation>Der Strom steigt nicht</translation>
    </message>
</context>
<context>
    <name>TroubleSheet</name>
    <message>
        <source>That could not be saved</source>
        <translation>Das ließ sich nicht speichern</translation>
    </message>
    <message>
        <source>What was recorded before is safe. Make room on the phone or restart the app, then try again.</source>
        <translation>Was vorher aufgezeichnet war, ist sicher. Schaffen Sie Platz auf dem Telefon oder starten Sie die App neu, dann versuchen Sie es noch einmal.</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
</context>
<context>
    <name>UnguardedSheet</name>
    <message>
        <source>The app lock does not work here</source>
        <translation>Die App-Sperre wirkt hier nicht</translation>
    </message>
    <message>
        <source>It is switched on, but this phone has no lock that Firstdew can ask for. So your diary opened without it.</source>
        <translation>Sie ist eingeschaltet, aber dieses Telefon hat keine Sperre, nach der Firstdew fragen kann. Darum hat sich Ihr Tagebuch ohne sie geöffnet.</translation>
    </message>
    <message>
        <source>Set a screen lock in the phone&apos;s own settings, or switch the app lock off under Settings.</source>
        <translation>Richten Sie in den Einstellungen des Telefons eine Bildschirmsperre ein, oder schalten Sie die App-Sperre unter „Einstellungen“ aus.</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
</context>
<context>
    <name>WeeksBars</name>
    <message>
        <source>Damp days a week</source>
        <translation>Feuchte Tage pro Woche</translation>
    </message>
    <message>
        <source>Dampness over time, %1</source>
        <translation>Feuchte im Verlauf, %1</translation>
    </message>
    <message>
        <source>A week with three check-ins or more draws a bar here.</source>
        <translation>Eine Woche mit mindestens drei Tages­einträgen zeichnet hier einen Balken.</translation>
    </message>
    <message>
        <source>Dark: wet or dripping days. Light: clammy days. Marks below show your sessions.</source>
        <translation>Dunkel: nasse oder tropfende Tage. Hell: klamme Tage. Striche darunter zeigen Ihre Sitzungen.</translation>
    </message>
    <message>
        <source>Dark: wet or dripping days. Light: clammy days.</source>
        <translation>Dunkel: nasse oder tropfende Tage. Hell: klamme Tage.</translation>
    </message>
</context>
<context>
    <name>WeighPage</name>
    <message>
        <source>Weighing</source>
        <translation>Schweiß wiegen</translation>
    </message>
    <message>
        <source>Before, in milligrams</source>
        <translation>Vorher, in Milligramm</translation>
    </message>
    <message>
        <source>After, in milligrams</source>
        <translation>Nachher, in Milligramm</translation>
    </message>
    <message>
        <source>It cannot weigh less afterwards; weigh again.</source>
        <translation>Nachher kann es nicht weniger wiegen; wiegen Sie noch einmal.</translation>
    </message>
    <message>
        <source>Minutes</source>
        <translation>Minuten</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Speichern</translation>
    </message>
    <message>
        <source>Weigh a paper, hold it to the skin for five minutes, weigh it again. It takes a scale that shows milligrams.</source>
        <translation>Wiegen Sie ein Papier, halten Sie es fünf Minuten auf die Haut und wiegen Sie es noch einmal. Dazu braucht es eine Waage, die Milligramm anzeigt.</translation>
    </message>
    <message>
        <source>%1 a minute</source>
        <translation>%1 je Minute</translation>
    </message>
</context>
<context>
    <name>Welcome</name>
    <message>
        <source>Welcome to Firstdew</source>
        <translation>Willkommen bei Firstdew</translation>
    </message>
    <message>
        <source>Firstdew leads you through treating sweating hands, feet or armpits with tap water and a small current. It tells you when the next session is due.</source>
        <translation>Firstdew führt Sie durch die Behandlung schwitzender Hände, Füße oder Achseln mit Leitungswasser und schwachem Strom. Es sagt, wann die nächste Sitzung fällig ist.</translation>
    </message>
    <message>
        <source>Move from another phone</source>
        <translation>Von einem anderen Telefon umziehen</translation>
    </message>
</context>
<context>
    <name>WhyPage</name>
    <message>
        <source>Why?</source>
        <translation>Warum?</translation>
    </message>
    <message>
        <source>How long your dry spells last</source>
        <translation>Wie lange Sie trocken bleiben</translation>
    </message>
    <message numerus="yes">
        <source>Based on %n dry spell(s) in your diary.</source>
        <translation>
            <numerusform>Grundlage: %n trockene Zeit in Ihrem Tagebuch.</numerusform>
            <numerusform>Grundlage: %n trockene Zeiten in Ihrem Tagebuch.</numerusform>
        </translation>
    </message>
    <message>
        <source>Still going on, or topped up while dry: %1.</source>
        <translation>Davon noch nicht zu Ende oder durch eine Auffrischung bei trockener Haut beendet: %1.</translation>
    </message>
    <message>
        <source>This is an estimate from your own notes, not a diagnosis. Your prescriber&apos;s word counts.</source>
        <translation>Das ist eine Schätzung aus Ihren Einträgen, keine Diagnose. Es gilt, was Ihre Praxis sagt.</translation>
    </message>
    <message>
        <source>No outlook yet. It begins with a course that is done and about two weeks of check-ins.</source>
        <translation>Noch kein Ausblick. Er beginnt nach einer ab­geschlossenen Behandlungs­serie und etwa zwei Wochen mit Tages­einträgen.</translation>
    </message>
    <message>
        <source>Share of spells still dry</source>
        <translation>Anteil der Zeiten, die noch trocken sind</translation>
    </message>
    <message>
        <source>One damp spell counts as %1 sessions. So a top-up is due %2, or earlier without check-ins.</source>
        <translation>Eine feuchte Zeit zählt so viel wie %1 Sitzungen. Deshalb wird eine Auffrischung fällig: %2; ohne Tages­einträge früher.</translation>
    </message>
    <message>
        <source>The curve shows what share of your dry spells lasts longer than the days below it. The inner band holds the middle half of them, the outer one four in five. Bars: your latest spells; hollow where the change fell between two check-ins, with an arrow where a session came while still dry or the spell goes on. Faint bars: under another treatment.</source>
        <translation>Die Kurve zeigt, welcher Anteil Ihrer trockenen Zeiten länger dauert als die Tage darunter. Das innere Band umfasst die mittlere Hälfte, das äußere vier von fünf. Balken: Ihre letzten trockenen Zeiten; hohl, wo der Wechsel zwischen zwei Tages­einträge fiel, mit Pfeil, wo eine Sitzung bei noch trockener Haut kam oder die Zeit noch läuft. Blasse Balken: unter einer anderen Behandlung.</translation>
    </message>
    <message>
        <source>Left out, under another treatment: %1.</source>
        <translation>Nicht mitgezählt, unter einer anderen Behandlung: %1.</translation>
    </message>
    <message>
        <source>The next days</source>
        <translation>Die nächsten Tage</translation>
    </message>
    <message>
        <source>Of twenty such days, so many would be damp by then if no session comes first.</source>
        <translation>Von zwanzig solchen Tagen wären bis dahin so viele feucht, wenn vorher keine Sitzung stattfindet.</translation>
    </message>
    <message>
        <source>How the forecasts have done</source>
        <translation>Wie gut die Vorhersagen waren</translation>
    </message>
    <message>
        <source>Less</source>
        <translation>Weniger</translation>
    </message>
    <message>
        <source>More</source>
        <translation>Mehr</translation>
    </message>
    <message>
        <source>Your dry spells are getting shorter</source>
        <translation>Ihre trockenen Zeiten werden kürzer</translation>
    </message>
</context>
<context>
    <name>Words</name>
    <message>
        <source>Today</source>
        <translation>Heute</translation>
    </message>
    <message>
        <source>Session</source>
        <translation>Sitzung</translation>
    </message>
    <message>
        <source>Diary</source>
        <translation>Tagebuch</translation>
    </message>
    <message>
        <source>Plan</source>
        <translation>Plan</translation>
    </message>
    <message>
        <source>Hands</source>
        <translation>Hände</translation>
    </message>
    <message>
        <source>Feet</source>
        <translation>Füße</translation>
    </message>
    <message>
        <source>Armpits</source>
        <translation>Achseln</translation>
    </message>
    <message>
        <source>Dry</source>
        <translation>Trocken</translation>
    </message>
    <message>
        <source>Clammy</source>
        <translation>Klamm</translation>
    </message>
    <message>
        <source>Wet</source>
        <translation>Nass</translation>
    </message>
    <message>
        <source>Dripping</source>
        <translation>Tropfend</translation>
    </message>
    <message>
        <source>Heat</source>
        <translation>Hitze</translation>
    </message>
    <message>
        <source>Exertion</source>
        <translation>Anstrengung</translation>
    </message>
    <message>
        <source>Stress</source>
        <translation>Stress</translation>
    </message>
    <message>
        <source>Illness</source>
        <translation>Krankheit</translation>
    </message>
    <message>
        <source>Direct current</source>
        <translation>Gleichstrom</translation>
    </message>
    <message>
        <source>Pulsed current</source>
        <translation>Pulsstrom</translation>
    </message>
    <message>
        <source>Hand session</source>
        <translation>Handsitzung</translation>
    </message>
    <message>
        <source>Foot session</source>
        <translation>Fußsitzung</translation>
    </message>
    <message>
        <source>Hand and foot session</source>
        <translation>Hand- und Fußsitzung</translation>
    </message>
    <message>
        <source>Armpit session</source>
        <translation>Achselsitzung</translation>
    </message>
    <message>
        <source>Not started</source>
        <translation>Nicht begonnen</translation>
    </message>
    <message>
        <source>First course</source>
        <translation>Erste Behandlungs­serie</translation>
    </message>
    <message>
        <source>Review</source>
        <translation>Kontrolle</translation>
    </message>
    <message>
        <source>Keeping dry</source>
        <translation>Trockenphase</translation>
    </message>
    <message>
        <source>First dew</source>
        <translation>Erster Tau</translation>
    </message>
    <message>
        <source>Sweating again</source>
        <translation>Schwitzen ist zurück</translation>
    </message>
    <message>
        <source>Paused</source>
        <translation>Ausgesetzt</translation>
    </message>
    <message>
        <source>Fine</source>
        <translation>In Ordnung</translation>
    </message>
    <message>
        <source>Redness</source>
        <translation>Rötung</translation>
    </message>
    <message>
        <source>Itching</source>
        <translation>Juckreiz</translation>
    </message>
    <message>
        <source>Blister</source>
        <translation>Blase</translation>
    </message>
    <message>
        <source>Burn</source>
        <translation>Verbrennung</translation>
    </message>
    <message>
        <source>Nothing felt</source>
        <translation>Nichts gespürt</translation>
    </message>
    <message>
        <source>Comfortable</source>
        <translation>Angenehm</translation>
    </message>
    <message>
        <source>Strong</source>
        <translation>Stark</translation>
    </message>
    <message>
        <source>Unpleasant</source>
        <translation>Unangenehm</translation>
    </message>
    <message>
        <source>Painful</source>
        <translation>Schmerzhaft</translation>
    </message>
    <message>
        <source>Seven sessions in four weeks</source>
        <translation>Sieben Sitzungen in vier Wochen</translation>
    </message>
    <message>
        <source>Three a week for four weeks</source>
        <translation>Drei je Woche, vier Wochen lang</translation>
    </message>
    <message>
        <source>Five a week for two weeks</source>
        <translation>Fünf je Woche, zwei Wochen lang</translation>
    </message>
    <message>
        <source>By prescription</source>
        <translation>Nach Verordnung</translation>
    </message>
    <message>
        <source>Are you pregnant, or might you be?</source>
        <translation>Sind Sie schwanger, oder könnten Sie es sein?</translation>
    </message>
    <message>
        <source>Do you have a pacemaker, a defibrillator or any other powered implant?</source>
        <translation>Haben Sie einen Herz­schrittmacher, einen Defibrillator oder ein anderes elektrisches (aktives) Implantat?</translation>
    </message>
    <message>
        <source>Do you have metal in a bone or joint?</source>
        <translation>Haben Sie Metall in einem Knochen oder Gelenk?</translation>
    </message>
    <message>
        <source>Do you have a heart rhythm disorder or epilepsy?</source>
        <translation>Haben Sie eine Herz­rhythmus­störung oder Epilepsie?</translation>
    </message>
    <message>
        <source>Do you have a tumour or a blood clot at present?</source>
        <translation>Haben Sie zurzeit einen Tumor oder ein Blutgerinnsel?</translation>
    </message>
    <message>
        <source>Is there eczema or inflamed skin where the treatment goes?</source>
        <translation>Ist dort, wo behandelt wird, ein Ekzem oder entzündete Haut?</translation>
    </message>
    <message>
        <source>Is there a wound too large to cover?</source>
        <translation>Gibt es eine Wunde, die zu groß zum Abdecken ist?</translation>
    </message>
    <message>
        <source>Do you wear fixed dental braces?</source>
        <translation>Tragen Sie eine feste Zahnspange?</translation>
    </message>
    <message>
        <source>pregnancy</source>
        <translation>Schwanger­schaft</translation>
    </message>
    <message>
        <source>a powered implant</source>
        <translation>elektrisches Implantat</translation>
    </message>
    <message>
        <source>a metal implant</source>
        <translation>Implantat aus Metall</translation>
    </message>
    <message>
        <source>a heart rhythm disorder or epilepsy</source>
        <translation>Herz­rhythmus­störung oder Epilepsie</translation>
    </message>
    <message>
        <source>a tumour or blood clot</source>
        <translation>Tumor oder Blutgerinnsel</translation>
    </message>
    <message>
        <source>loss of feeling</source>
        <translation>Gefühlsverlust</translation>
    </message>
    <message>
        <source>an age under five</source>
        <translation>Alter unter fünf Jahren</translation>
    </message>
    <message>
        <source>an age under eighteen</source>
        <translation>Alter unter achtzehn Jahren</translation>
    </message>
    <message>
        <source>eczema or inflamed skin</source>
        <translation>Ekzem oder entzündete Haut</translation>
    </message>
    <message>
        <source>a large wound</source>
        <translation>große Wunde</translation>
    </message>
    <message>
        <source>fixed braces</source>
        <translation>feste Zahnspange</translation>
    </message>
    <message>
        <source>Common practice, adults</source>
        <translation>Übliche Praxis, Erwachsene</translation>
    </message>
    <message>
        <source>Common practice, children</source>
        <translation>Übliche Praxis, Kinder</translation>
    </message>
    <message>
        <source>Our own cautious choice, children</source>
        <translation>Unsere vorsichtige Wahl, Kinder</translation>
    </message>
    <message>
        <source>Set by %1</source>
        <translation>Festgelegt von %1</translation>
    </message>
    <message>
        <source>Your machine does not have it</source>
        <translation>Ihr Gerät liefert diese Stromart nicht</translation>
    </message>
    <message>
        <source>Nothing to do now</source>
        <translation>Jetzt ist nichts zu tun</translation>
    </message>
    <message>
        <source>%1 today</source>
        <translation>%1 heute</translation>
    </message>
    <message>
        <source>First dew: top up now</source>
        <translation>Erster Tau: jetzt auffrischen</translation>
    </message>
    <message>
        <source>A top-up is due</source>
        <translation>Eine Auffrischung ist fällig</translation>
    </message>
    <message>
        <source>Keep an eye on it</source>
        <translation>Im Auge behalten</translation>
    </message>
    <message>
        <source>Time for a new course</source>
        <translation>Zeit für eine neue Behandlungs­serie</translation>
    </message>
    <message>
        <source>The course is done</source>
        <translation>Die Behandlungs­serie ist geschafft</translation>
    </message>
    <message>
        <source>Talk to your prescriber</source>
        <translation>Sprechen Sie mit Ihrer Praxis</translation>
    </message>
    <message>
        <source>No session for now</source>
        <translation>Vorerst keine Sitzung</translation>
    </message>
    <message>
        <source>No first course has been set up yet.</source>
        <translation>Es ist noch keine erste Behandlungs­serie eingerichtet.</translation>
    </message>
    <message>
        <source>Session %1 of %2 of the first course is planned for today.</source>
        <translation>Sitzung %1 von %2 der ersten Behandlungs­serie ist für heute geplant.</translation>
    </message>
    <message>
        <source>Session %1 of %2 of the first course is planned for %3.</source>
        <translation>Sitzung %1 von %2 der ersten Behandlungs­serie ist geplant: %3.</translation>
    </message>
    <message numerus="yes">
        <source>The course will end %n day(s) late.</source>
        <translation>
            <numerusform>Die Behandlungs­serie läuft %n Tag über ihre vier Wochen hinaus.</numerusform>
            <numerusform>Die Behandlungs­serie läuft %n Tage über ihre vier Wochen hinaus.</numerusform>
        </translation>
    </message>
    <message>
        <source>The course can no longer finish in time.</source>
        <translation>Die Behandlungs­serie ist in der vorgesehenen Zeit nicht mehr zu schaffen.</translation>
    </message>
    <message numerus="yes">
        <source>All %n session(s) of the course are done.</source>
        <translation>
            <numerusform>%n Sitzung der Behandlungs­serie ist erledigt, keine fehlt.</numerusform>
            <numerusform>Alle %n Sitzungen der Behandlungs­serie sind erledigt.</numerusform>
        </translation>
    </message>
    <message>
        <source>Today&apos;s session is done.</source>
        <translation>Die heutige Sitzung ist erledigt.</translation>
    </message>
    <message numerus="yes">
        <source>There has been no check-in for %n day(s).</source>
        <translation>
            <numerusform>Seit %n Tag gab es keinen Tages­eintrag.</numerusform>
            <numerusform>Seit %n Tagen gab es keinen Tages­eintrag.</numerusform>
        </translation>
    </message>
    <message>
        <source>You answered yes to %1. No session until a clinician has approved treatment.</source>
        <translation>Sie haben mit Ja geantwortet: %1. Keine Sitzung, bis das ärztlich freigegeben ist.</translation>
    </message>
    <message>
        <source>Because of %1, ask a clinician first and note who said yes.</source>
        <translation>Wegen „%1“: Holen Sie erst ärztlichen Rat und notieren Sie, wer zugestimmt hat.</translation>
    </message>
    <message numerus="yes">
        <source>The health questions were last answered %n day(s) ago.</source>
        <translation>
            <numerusform>Die Gesundheits­fragen wurden zuletzt vor %n Tag beantwortet.</numerusform>
            <numerusform>Die Gesundheits­fragen wurden zuletzt vor %n Tagen beantwortet.</numerusform>
        </translation>
    </message>
    <message>
        <source>The health questions have not been answered yet.</source>
        <translation>Die Gesundheits­fragen sind noch nicht beantwortet.</translation>
    </message>
    <message>
        <source>Your machine has only direct current, which must not be used at the armpits.</source>
        <translation>Ihr Gerät hat nur Gleichstrom; er darf an den Achseln nicht benutzt werden.</translation>
    </message>
    <message>
        <source>The score did not get better. There are other treatments; your prescriber can advise.</source>
        <translation>Die Belastung wurde nicht geringer. Es gibt andere Behandlungen; Ihre Praxis berät Sie.</translation>
    </message>
    <message>
        <source>The score is better by one step.</source>
        <translation>Die Belastung ist um eine Stufe geringer.</translation>
    </message>
    <message>
        <source>The score is better by two steps or more.</source>
        <translation>Die Belastung ist um zwei Stufen oder mehr geringer.</translation>
    </message>
    <message>
        <source>You paused this.</source>
        <translation>Sie haben ausgesetzt.</translation>
    </message>
    <message>
        <source>You put it off to this evening.</source>
        <translation>Auf heute Abend verschoben.</translation>
    </message>
    <message>
        <source>You put it off to %1.</source>
        <translation>Verschoben auf: %1.</translation>
    </message>
    <message>
        <source>Skipped this time.</source>
        <translation>Diesmal ausgelassen.</translation>
    </message>
    <message>
        <source>today</source>
        <translation>heute</translation>
    </message>
    <message>
        <source>yesterday</source>
        <translation>gestern</translation>
    </message>
    <message>
        <source>tomorrow</source>
        <translation>morgen</translation>
    </message>
    <message>
        <source>d MMMM</source>
        <comment>date format</comment>
        <translation>d. MMMM</translation>
    </message>
    <message>
        <source>dddd, d MMMM</source>
        <comment>date format</comment>
        <translation>dddd, d. MMMM</translation>
    </message>
    <message>
        <source>%1 mA</source>
        <translation>%1&#xa0;mA</translation>
    </message>
    <message>
        <source>d MMMM yyyy</source>
        <comment>date format</comment>
        <translation>d. MMMM yyyy</translation>
    </message>
    <message>
        <source>Both hands</source>
        <translation>Beide Hände</translation>
    </message>
    <message>
        <source>Both feet</source>
        <translation>Beide Füße</translation>
    </message>
    <message>
        <source>One hand with one foot</source>
        <translation>Eine Hand mit einem Fuß</translation>
    </message>
    <message>
        <source>Right side</source>
        <translation>Rechte Seite</translation>
    </message>
    <message>
        <source>Left side</source>
        <translation>Linke Seite</translation>
    </message>
    <message>
        <source>I have a hand free</source>
        <translation>Ich habe eine Hand frei</translation>
    </message>
    <message>
        <source>Somebody helps me</source>
        <translation>Jemand hilft mir</translation>
    </message>
    <message>
        <source>Both hands under water</source>
        <translation>Beide Hände unter Wasser</translation>
    </message>
    <message>
        <source>You tap each step yourself.</source>
        <translation>Sie bestätigen jeden Schritt selbst.</translation>
    </message>
    <message>
        <source>no response</source>
        <translation>kein Ansprechen</translation>
    </message>
    <message>
        <source>good response</source>
        <translation>gutes Ansprechen</translation>
    </message>
    <message>
        <source>strong response</source>
        <translation>starkes Ansprechen</translation>
    </message>
    <message>
        <source>Is the person treated under five years old?</source>
        <translation>Ist die behandelte Person jünger als fünf Jahre?</translation>
    </message>
    <message>
        <source>Is the person treated under eighteen years old?</source>
        <translation>Ist die behandelte Person jünger als achtzehn Jahre?</translation>
    </message>
    <message>
        <source>Lowered for the size of the treated skin</source>
        <translation>Gesenkt wegen der Größe der behandelten Hautfläche</translation>
    </message>
    <message>
        <source>Armpits are treated with pulsed current only</source>
        <translation>Achseln werden nur mit Pulsstrom behandelt</translation>
    </message>
    <message>
        <source>Treated now, one or two sessions are usually enough.</source>
        <translation>Wenn Sie jetzt behandeln, genügen meist eine oder zwei Sitzungen.</translation>
    </message>
    <message>
        <source>Dampness at rest, noted %1.</source>
        <translation>In Ruhe feucht, notiert: %1.</translation>
    </message>
    <message>
        <source>Dampness noted %1, though the day may explain it. Check again tomorrow.</source>
        <translation>Feuchte notiert: %1. Der Tag kann sie aber erklären. Sehen Sie morgen wieder nach.</translation>
    </message>
    <message>
        <source>Dampness twice in a row, last noted %1.</source>
        <translation>Zweimal nacheinander feucht, zuletzt notiert: %1.</translation>
    </message>
    <message>
        <source>Full sweating at rest, noted %1. It usually needs a new course.</source>
        <translation>Starkes Schwitzen in Ruhe, notiert: %1. Dann ist meist eine neue Behandlungs­serie nötig.</translation>
    </message>
    <message>
        <source>%1: session today</source>
        <translation>%1: heute eine Sitzung</translation>
    </message>
    <message>
        <source>%1: a top-up is due</source>
        <translation>%1: Auffrischung ist fällig</translation>
    </message>
    <message>
        <source>%1: first dew</source>
        <translation>%1: erster Tau</translation>
    </message>
    <message>
        <source>%1: look at the skin</source>
        <translation>%1: Haut ansehen</translation>
    </message>
    <message>
        <source>New batteries soon</source>
        <translation>Bald neue Batterien</translation>
    </message>
    <message>
        <source>Health questions are due</source>
        <translation>Gesundheits­fragen sind fällig</translation>
    </message>
    <message>
        <source>%1: how much does it bother you?</source>
        <translation>%1: Wie sehr stört es Sie?</translation>
    </message>
    <message>
        <source>Show your prescriber</source>
        <translation>Ihrer Praxis zeigen</translation>
    </message>
    <message>
        <source>Time for a back-up</source>
        <translation>Zeit für eine Sicherung</translation>
    </message>
    <message>
        <source>The first course works if you stick to it.</source>
        <translation>Die erste Behandlungs­serie wirkt, wenn Sie sich daran halten.</translation>
    </message>
    <message>
        <source>Before the dampness comes back.</source>
        <translation>Bevor die Feuchte wiederkommt.</translation>
    </message>
    <message>
        <source>The day after a session: any redness, blister or burn?</source>
        <translation>Am Tag nach der Sitzung: Rötung, Blase oder Verbrennung?</translation>
    </message>
    <message>
        <source>The set in the machine lasts about one more session.</source>
        <translation>Der Satz im Gerät reicht noch für etwa eine Sitzung.</translation>
    </message>
    <message>
        <source>Before the next session, as every four weeks.</source>
        <translation>Vor der nächsten Sitzung, wie alle vier Wochen.</translation>
    </message>
    <message>
        <source>One question, four answers.</source>
        <translation>Eine Frage, vier Antworten.</translation>
    </message>
    <message>
        <source>The summary is two taps away.</source>
        <translation>Zweimal tippen, und der Bericht ist da.</translation>
    </message>
    <message>
        <source>An encrypted copy, kept where you choose.</source>
        <translation>Eine verschlüsselte Kopie, wo Sie wollen.</translation>
    </message>
    <message>
        <source>Check list</source>
        <translation>Prüfliste</translation>
    </message>
    <message>
        <source>Hands in</source>
        <translation>Hände hinein</translation>
    </message>
    <message>
        <source>Swap polarity</source>
        <translation>Umpolen</translation>
    </message>
    <message>
        <source>Change side</source>
        <translation>Seite wechseln</translation>
    </message>
    <message>
        <source>Lift out</source>
        <translation>Hände oder Füße heraus</translation>
    </message>
    <message>
        <source>Machine off, current at zero. Confirm the list.</source>
        <translation>Gerät aus, Strom auf null. Bestätigen Sie die Liste.</translation>
    </message>
    <message>
        <source>Raise the current slowly to a comfortable level.</source>
        <translation>Den Strom langsam hochregeln, nur so weit, wie er angenehm ist.</translation>
    </message>
    <message>
        <source>Hold still. Everything stays under water.</source>
        <translation>Stillhalten. Alles bleibt unter Wasser.</translation>
    </message>
    <message>
        <source>Lower the current slowly to zero.</source>
        <translation>Den Strom langsam auf null herunterregeln.</translation>
    </message>
    <message>
        <source>Current at zero? Swap the two leads.</source>
        <translation>Strom auf null? Die beiden Kabel vertauschen.</translation>
    </message>
    <message>
        <source>Current at zero? Flip the polarity switch.</source>
        <translation>Strom auf null? Den Polschalter umlegen.</translation>
    </message>
    <message>
        <source>Current at zero? Change to the other side.</source>
        <translation>Strom auf null? Zur anderen Seite wechseln.</translation>
    </message>
    <message>
        <source>Machine off. Then take your hands or feet out. Dry your skin and the kit.</source>
        <translation>Gerät aus, dann Hände oder Füße herausnehmen. Haut und Zubehör trocknen.</translation>
    </message>
    <message>
        <source>This skin had its session today. Let it rest. Next session: tomorrow at the earliest.</source>
        <translation>Diese Haut hatte heute schon ihre Sitzung. Lassen Sie sie ruhen; die nächste ist frühestens morgen.</translation>
    </message>
    <message>
        <source>The health questions are due. Leave the machine off until they are answered.</source>
        <translation>Die Gesundheits­fragen sind fällig. Lassen Sie das Gerät aus, bis sie beantwortet sind.</translation>
    </message>
    <message>
        <source>A health question stands in the way. Leave the machine off until a clinician has approved treatment.</source>
        <translation>Eine Antwort auf die Gesundheits­fragen spricht dagegen. Lassen Sie das Gerät aus, bis die Behandlung ärztlich freigegeben ist.</translation>
    </message>
    <message>
        <source>Your machine does not have this current. Choose the one it has.</source>
        <translation>Ihr Gerät liefert diese Stromart nicht. Wählen Sie die, die es liefert.</translation>
    </message>
    <message>
        <source>No meter shows that. Read it again; if in doubt, lower the current.</source>
        <translation>Das zeigt kein Gerät an. Lesen Sie noch einmal ab; im Zweifel den Strom senken.</translation>
    </message>
    <message>
        <source>The current may still be flowing. Lower it to zero first.</source>
        <translation>Der Strom fließt vielleicht noch. Regeln Sie ihn zuerst auf null.</translation>
    </message>
    <message>
        <source>Firstdew is not a medical device and makes no diagnosis. Follow your machine&apos;s instructions, local rules and your clinician.</source>
        <translation>Firstdew ist kein Medizinprodukt und stellt keine Diagnose. Halten Sie sich an die Anleitung Ihres Geräts, die Regeln vor Ort und den Rat Ihrer Ärztin oder Ihres Arztes.</translation>
    </message>
    <message>
        <source>Never go above the limits. It may prickle; it must never hurt. If it hurts, lower the current and stop.</source>
        <translation>Nie über die Grenzen gehen. Es darf kribbeln, aber nie wehtun. Wenn es wehtut: Strom senken und aufhören.</translation>
    </message>
    <message>
        <source>Don&apos;t treat if any health question tells you to stop.</source>
        <translation>Keine Sitzung, solange eine Antwort auf die Gesundheits­fragen dagegen spricht.</translation>
    </message>
    <message>
        <source>Treat children only with medical advice and an adult beside them.</source>
        <translation>Kinder nur mit ärztlichem Rat und in Begleitung einer erwachsenen Person behandeln.</translation>
    </message>
    <message>
        <source>Burns, blisters, faintness or palpitations: stop and seek help.</source>
        <translation>Verbrennung, Blasen, Schwindel oder Ohnmachts­gefühl, Herzrasen oder Herzstolpern: aufhören und Hilfe holen.</translation>
    </message>
    <message>
        <source>Keep leads and water away from mains electricity.</source>
        <translation>Kabel und Wasser von Netzstrom fernhalten.</translation>
    </message>
    <message>
        <source>Reminders</source>
        <translation>Erinnerungen</translation>
    </message>
    <message>
        <source>Running session</source>
        <translation>Laufende Sitzung</translation>
    </message>
    <message>
        <source>Reminders may be a few minutes late on this phone.</source>
        <translation>Erinnerungen können etwas später kommen: Dieses Telefon stellt sie nicht minutengenau zu.</translation>
    </message>
    <message>
        <source>While your phone was off</source>
        <translation>Während Ihr Telefon aus war</translation>
    </message>
    <message>
        <source>There were reminders. Open Firstdew to see what matters now.</source>
        <translation>Es gab Erinnerungen. Öffnen Sie Firstdew, um zu sehen, was jetzt zählt.</translation>
    </message>
    <message>
        <source>d MMM</source>
        <comment>date format</comment>
        <translation>d. MMM</translation>
    </message>
    <message>
        <source>This is no back-up, or it was cut short or changed. Take another one.</source>
        <translation>Das ist keine Sicherung, oder sie wurde gekürzt oder verändert. Nehmen Sie eine andere.</translation>
    </message>
    <message>
        <source>There is no room left; nothing was written. Make room and try again.</source>
        <translation>Es ist kein Platz mehr; nichts wurde geschrieben. Schaffen Sie Platz und versuchen Sie es erneut.</translation>
    </message>
    <message>
        <source>A file could not be read or written. Look whether it is still there and whether there is room.</source>
        <translation>Eine Datei ließ sich nicht lesen oder schreiben. Sehen Sie nach, ob sie noch da ist und ob Platz ist.</translation>
    </message>
    <message>
        <source>This file is too large to be the right one.</source>
        <translation>Diese Datei ist zu groß, um die richtige zu sein.</translation>
    </message>
    <message>
        <source>Another program is using the record. Close it and try again.</source>
        <translation>Ein anderes Programm benutzt die Aufzeichnung. Schließen Sie es und versuchen Sie es erneut.</translation>
    </message>
    <message>
        <source>The record is damaged. Keep the file and restore a back-up.</source>
        <translation>Die Aufzeichnung ist beschädigt. Behalten Sie die Datei und stellen Sie eine Sicherung wieder her.</translation>
    </message>
    <message>
        <source>This is from a newer Firstdew. Update the app first.</source>
        <translation>Das stammt von einem neueren Firstdew. Aktualisieren Sie zuerst die App.</translation>
    </message>
    <message>
        <source>This file is not what is needed here (%1). Ask whoever made it.</source>
        <translation>Diese Datei ist nicht, was hier gebraucht wird (%1). Fragen Sie, wer sie gemacht hat.</translation>
    </message>
    <message>
        <source>It does not open with this passphrase, or is damaged. Try again, or take another back-up.</source>
        <translation>Sie lässt sich mit diesem Kennwort nicht öffnen oder ist beschädigt. Versuchen Sie es erneut oder nehmen Sie eine andere Sicherung.</translation>
    </message>
    <message>
        <source>the prescriber</source>
        <translation>der Praxis</translation>
    </message>
    <message>
        <source>the nurse</source>
        <translation>der Pflegekraft</translation>
    </message>
    <message>
        <source>First time here: begin low, and go by what is comfortable.</source>
        <translation>Hier zum ersten Mal: niedrig beginnen und nur so hoch gehen, wie es angenehm ist.</translation>
    </message>
    <message>
        <source>%1 was comfortable last time.</source>
        <translation>%1 waren zuletzt angenehm.</translation>
    </message>
    <message>
        <source>%1 was unpleasant last time, so less.</source>
        <translation>%1 waren zuletzt unangenehm, deshalb weniger.</translation>
    </message>
    <message>
        <source>This is the limit.</source>
        <translation>Das ist die Grenze.</translation>
    </message>
    <message>
        <source>Pulsed current is felt less; try it, if your machine has it.</source>
        <translation>Pulsstrom ist weniger zu spüren; versuchen Sie ihn, wenn Ihr Gerät ihn liefert.</translation>
    </message>
    <message>
        <source>The same level as last time, until it was comfortable.</source>
        <translation>Derselbe Wert wie zuletzt, bis er einmal angenehm war.</translation>
    </message>
    <message>
        <source>Direct current may work better now; ask the adult or nurse who helps.</source>
        <translation>Gleichstrom wirkt jetzt vielleicht besser; fragen Sie die erwachsene Person oder die Pflegekraft, die hilft.</translation>
    </message>
    <message>
        <source>%1 min</source>
        <translation>%1&#xa0;min</translation>
    </message>
    <message>
        <source>Limit %1. %2.</source>
        <translation>Grenze %1. %2.</translation>
    </message>
    <message>
        <source>Not possible. %1.</source>
        <translation>Nicht möglich. %1.</translation>
    </message>
    <message>
        <source>Aim for about %1.</source>
        <translation>Ziel: etwa %1.</translation>
    </message>
    <message>
        <source>Jewellery, watch and piercings off (not needed above the neck)</source>
        <translation>Schmuck, Uhr und Piercings abgelegt (oberhalb des Halses nicht nötig)</translation>
    </message>
    <message>
        <source>Cuts under a thin layer of petroleum jelly, only on the broken skin</source>
        <translation>Verletzungen unter einer dünnen Schicht Vaseline, nur auf der verletzten Haut</translation>
    </message>
    <message>
        <source>Each plate under its grid; skin never touches a plate</source>
        <translation>Jede Platte unter ihrem Gitter; die Haut berührt nie eine Platte</translation>
    </message>
    <message>
        <source>Pads soaked through, and tight</source>
        <translation>Elektroden­polster ganz durchtränkt und fest anliegend</translation>
    </message>
    <message>
        <source>Machine off, current at zero, leads in</source>
        <translation>Gerät aus, Strom auf null, Kabel eingesteckt</translation>
    </message>
    <message>
        <source>Batteries in</source>
        <translation>Batterien eingelegt</translation>
    </message>
    <message>
        <source>All checked, begin</source>
        <translation>Alles geprüft, beginnen</translation>
    </message>
    <message>
        <source>Raised again</source>
        <translation>Wieder hochgeregelt</translation>
    </message>
    <message>
        <source>It is comfortable</source>
        <translation>Der Strom ist angenehm</translation>
    </message>
    <message>
        <source>Changed side</source>
        <translation>Seite gewechselt</translation>
    </message>
    <message>
        <source>The phase waits at zero. Raise again when you are ready.</source>
        <translation>Die Phase ist angehalten, der Strom auf null. Regeln Sie wieder hoch, wenn Sie so weit sind.</translation>
    </message>
    <message>
        <source>The session starts again from its beginning. Machine off, current at zero; confirm the list.</source>
        <translation>Die Sitzung beginnt noch einmal von vorn. Gerät aus, Strom auf null; bestätigen Sie die Liste.</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Phase %1 of %2</source>
        <translation>Phase %1 von %2</translation>
    </message>
    <message>
        <source>none yet</source>
        <translation>noch kein Wert</translation>
    </message>
    <message>
        <source>Use only a machine made for this treatment, with what came with it, to drive the current.</source>
        <translation>Nutzen Sie für den Strom nur ein Gerät, das für diese Behandlung gemacht ist, mit dem mitgelieferten Zubehör.</translation>
    </message>
    <message>
        <source>Raise slowly</source>
        <translation>Langsam hochregeln</translation>
    </message>
    <message>
        <source>Hold still</source>
        <translation>Stillhalten</translation>
    </message>
    <message>
        <source>Lower to zero</source>
        <translation>Auf null herunterregeln</translation>
    </message>
    <message>
        <source>The last session was not finished, so the same level again.</source>
        <translation>Die letzte Sitzung wurde nicht beendet, deshalb noch einmal derselbe Wert.</translation>
    </message>
    <message>
        <source>The skin was irritated after %1, so clearly less.</source>
        <translation>Nach %1 war die Haut gereizt, deshalb deutlich weniger.</translation>
    </message>
    <message>
        <source>It has been a while since your last session here, so start lower than %1.</source>
        <translation>Ihre letzte Sitzung hier ist länger her, deshalb niedriger als mit %1 beginnen.</translation>
    </message>
    <message>
        <source>Switch flipped</source>
        <translation>Schalter umgelegt</translation>
    </message>
    <message>
        <source>Pads exchanged</source>
        <translation>Elektroden­polster getauscht</translation>
    </message>
    <message>
        <source>Leads swapped</source>
        <translation>Kabel vertauscht</translation>
    </message>
    <message>
        <source>Start at %1. Current can creep up, so leave %2 to spare at first.</source>
        <translation>Beginnen Sie mit %1. Der Strom kann langsam ansteigen, deshalb zuerst %2 Spielraum lassen.</translation>
    </message>
    <message>
        <source>I&apos;ve checked my skin: no new redness, blister or burn</source>
        <translation>Ich habe meine Haut geprüft: keine neue Rötung, Blase oder Verbrennung</translation>
    </message>
    <message>
        <source>Hand trays on a table that is not metal</source>
        <translation>Schalen für die Hände auf einem Tisch, der nicht aus Metall ist</translation>
    </message>
    <message>
        <source>Foot trays on the floor</source>
        <translation>Schalen für die Füße auf dem Boden</translation>
    </message>
    <message>
        <source>My helper stays beside me the whole session</source>
        <translation>Wer mir hilft, bleibt die ganze Sitzung neben mir</translation>
    </message>
    <message>
        <source>Remote control within reach of my hands in the water, placed as its maker says</source>
        <translation>Fern­bedienung in Reichweite meiner Hände im Wasser, hingelegt wie vom Hersteller angegeben</translation>
    </message>
    <message>
        <source>Meter at zero: hands in again</source>
        <translation>Anzeige auf null: Hände wieder hinein</translation>
    </message>
    <message>
        <source>On, at zero, direct current</source>
        <translation>An, auf null, Gleichstrom</translation>
    </message>
    <message>
        <source>On, at zero, pulsed light on</source>
        <translation>An, auf null, Pulslicht leuchtet</translation>
    </message>
    <message>
        <source>At zero, hands out and dry</source>
        <translation>Auf null, Hände draußen und trocken</translation>
    </message>
    <message>
        <source>Current is at zero</source>
        <translation>Strom ist auf null</translation>
    </message>
    <message>
        <source>A pad came off</source>
        <translation>Ein Elektroden­polster hat sich gelöst</translation>
    </message>
    <message>
        <source>I took them out</source>
        <translation>Hände oder Füße sind draußen</translation>
    </message>
    <message>
        <source>It kept running, in direct current</source>
        <translation>Es lief weiter, mit Gleichstrom</translation>
    </message>
    <message>
        <source>It kept running, pulsed light on</source>
        <translation>Es lief weiter, Pulslicht leuchtet</translation>
    </message>
    <message>
        <source>Any small cuts? Cover them with a thin layer of petroleum jelly again.</source>
        <translation>Kleine Schnitte? Wieder mit einer dünnen Schicht Vaseline abdecken.</translation>
    </message>
    <message>
        <source>It is enough for today. What you did is kept.</source>
        <translation>Für heute ist es genug. Was Sie gemacht haben, bleibt erhalten.</translation>
    </message>
    <message>
        <source>That was more than ten minutes ago, so this session is over. What you did is kept.</source>
        <translation>Das ist mehr als zehn Minuten her, deshalb ist diese Sitzung beendet. Was Sie gemacht haben, bleibt erhalten.</translation>
    </message>
    <message>
        <source>Another version of Firstdew led this session. It cannot go on from there. What you did is kept. Machine off now.</source>
        <translation>Eine andere Version von Firstdew hat durch diese Sitzung geführt. Von dort kann sie nicht weitergehen. Was Sie gemacht haben, bleibt erhalten. Jetzt Gerät aus.</translation>
    </message>
    <message>
        <source>The session goes on. Machine off, current at zero; confirm the list again.</source>
        <translation>Die Sitzung geht weiter. Gerät aus, Strom auf null; bestätigen Sie die Liste noch einmal.</translation>
    </message>
    <message>
        <source>A blister or burn was noted there. Leave the machine off until a clinician has looked at it.</source>
        <translation>Dort wurde eine Blase oder Verbrennung notiert. Lassen Sie das Gerät aus, bis eine Ärztin oder ein Arzt sie angesehen hat.</translation>
    </message>
    <message>
        <source>Enter the date of birth first. The limit of the current depends on it.</source>
        <translation>Geben Sie zuerst das Geburtsdatum ein. Davon hängt die Grenze für den Strom ab.</translation>
    </message>
    <message>
        <source>Your care sheet prescribes the other current here. Choose that one.</source>
        <translation>Ihr Behandlungs­blatt verordnet hier die andere Stromart. Wählen Sie diese.</translation>
    </message>
    <message>
        <source>With both hands in the water you need a remote control, and none is entered for your machine. Ask somebody to stay beside you.</source>
        <translation>Mit beiden Händen im Wasser brauchen Sie eine Fern­bedienung; für Ihr Gerät ist keine eingetragen. Bitten Sie jemanden, neben Ihnen zu bleiben.</translation>
    </message>
    <message>
        <source>A child is never alone with both hands in the water. Somebody stays beside the child.</source>
        <translation>Ein Kind ist mit beiden Händen im Wasser nie allein. Jemand bleibt neben dem Kind.</translation>
    </message>
    <message>
        <source>Choose who can tap the phone.</source>
        <translation>Wählen Sie, wer das Telefon bedienen kann.</translation>
    </message>
    <message>
        <source>It is enough for today. Leave the machine off; the next session is for tomorrow at the earliest.</source>
        <translation>Für heute ist es genug. Lassen Sie das Gerät aus; die nächste Sitzung ist frühestens morgen.</translation>
    </message>
    <message>
        <source>Machine off. The session starts again once you confirm the list.</source>
        <translation>Gerät aus. Die Sitzung beginnt von vorn, sobald Sie die Liste bestätigen.</translation>
    </message>
    <message>
        <source>With both hands in the water you go by what you hear, and the voice cannot be made ready. Ask somebody to stay beside you.</source>
        <translation>Mit beiden Händen im Wasser richten Sie sich nach dem, was Sie hören; die Stimme lässt sich aber nicht bereit machen. Bitten Sie jemanden, neben Ihnen zu bleiben.</translation>
    </message>
    <message>
        <source>They stay beside you the whole session, tap and enter the readings.</source>
        <translation>Diese Person bleibt die ganze Sitzung neben Ihnen, tippt und gibt die Werte ein.</translation>
    </message>
    <message>
        <source>You raise and lower with the remote. For the swap you take your hands out and tap.</source>
        <translation>Sie regeln mit der Fern­bedienung hoch und herunter. Zum Umpolen nehmen Sie die Hände heraus und tippen.</translation>
    </message>
    <message>
        <source>Pain</source>
        <translation>Schmerz</translation>
    </message>
    <message>
        <source>Kept low until the size of the pads is entered under Machine and kit</source>
        <translation>Niedrig gehalten, bis die Größe der Elektroden­polster unter „Gerät und Zubehör“ eingetragen ist</translation>
    </message>
    <message>
        <source>%1 prescribed the other current</source>
        <translation>Die andere Stromart ist von %1 verordnet</translation>
    </message>
    <message>
        <source>%1, noted %2. No session here until a clinician has looked at it.</source>
        <translation>%1, notiert: %2. Hier keine Sitzung, bis eine Ärztin oder ein Arzt es angesehen hat.</translation>
    </message>
    <message>
        <source>Enter the date of birth first: the limit of the current depends on it.</source>
        <translation>Geben Sie zuerst das Geburtsdatum ein: Davon hängt die Grenze für den Strom ab.</translation>
    </message>
    <message>
        <source>Switch on</source>
        <translation>Einschalten</translation>
    </message>
    <message>
        <source>Hands out</source>
        <translation>Hände heraus</translation>
    </message>
    <message>
        <source>Current at zero? Soak the pads again and flip the polarity switch.</source>
        <translation>Strom auf null? Die Elektroden­polster wieder tränken und den Polschalter umlegen.</translation>
    </message>
    <message>
        <source>Current at zero? Soak the pads again and exchange them, right with left.</source>
        <translation>Strom auf null? Die Elektroden­polster wieder tränken und tauschen, rechts gegen links.</translation>
    </message>
    <message>
        <source>Current at zero? Soak the pads again and swap the two leads.</source>
        <translation>Strom auf null? Die Elektroden­polster wieder tränken und die beiden Kabel vertauschen.</translation>
    </message>
    <message>
        <source>Switch the machine on. Meter at zero, set to direct current?</source>
        <translation>Das Gerät einschalten. Anzeige auf null, auf Gleichstrom gestellt?</translation>
    </message>
    <message>
        <source>Switch the machine on. Meter at zero, light for pulsed current on?</source>
        <translation>Das Gerät einschalten. Anzeige auf null, Licht für Pulsstrom leuchtet?</translation>
    </message>
    <message>
        <source>Put your hands in now and keep them still.</source>
        <translation>Jetzt die Hände hineinlegen und stillhalten.</translation>
    </message>
    <message>
        <source>Raise the current slowly with the remote.</source>
        <translation>Den Strom mit der Fern­bedienung langsam hochregeln.</translation>
    </message>
    <message>
        <source>Hold still. Both pads stay where they are.</source>
        <translation>Stillhalten. Beide Elektroden­polster bleiben, wo sie sind.</translation>
    </message>
    <message>
        <source>Lower the current slowly to zero with the remote.</source>
        <translation>Den Strom mit der Fern­bedienung langsam auf null herunterregeln.</translation>
    </message>
    <message>
        <source>Meter at zero? Only then hands out. Dry them, machine off, and tap.</source>
        <translation>Anzeige auf null? Erst dann Hände heraus. Abtrocknen, Gerät aus und tippen.</translation>
    </message>
    <message>
        <source>Meter at zero? Only then hands out. Dry them and tap.</source>
        <translation>Anzeige auf null? Erst dann Hände heraus. Abtrocknen und tippen.</translation>
    </message>
    <message>
        <source>Machine off, then take the pads off. Dry skin and kit.</source>
        <translation>Gerät aus, dann die Elektroden­polster abnehmen. Haut und Zubehör trocknen.</translation>
    </message>
    <message>
        <source>Dry skin and kit.</source>
        <translation>Haut und Zubehör trocknen.</translation>
    </message>
    <message>
        <source>Watch your skin above %1.</source>
        <translation>Achten Sie über %1 auf Ihre Haut.</translation>
    </message>
    <message>
        <source>Your first three sessions here go step by step.</source>
        <translation>Ihre ersten drei Sitzungen hier gehen Schritt für Schritt.</translation>
    </message>
    <message>
        <source>It has been four weeks or more. Let&apos;s go step by step.</source>
        <translation>Es ist vier Wochen oder länger her. Gehen wir Schritt für Schritt.</translation>
    </message>
    <message>
        <source>Last time something was not right. Let&apos;s go step by step.</source>
        <translation>Beim letzten Mal stimmte etwas nicht. Gehen wir Schritt für Schritt.</translation>
    </message>
    <message>
        <source>Your machine has changed. Let&apos;s go step by step.</source>
        <translation>Ihr Gerät hat sich geändert. Gehen wir Schritt für Schritt.</translation>
    </message>
    <message>
        <source>Your first session with both hands in goes step by step.</source>
        <translation>Ihre erste Sitzung mit beiden Händen im Wasser geht Schritt für Schritt.</translation>
    </message>
    <message>
        <source>Aim %1</source>
        <translation>Ziel %1</translation>
    </message>
    <message>
        <source>Nothing about my health has changed</source>
        <translation>An meiner Gesundheit hat sich nichts geändert</translation>
    </message>
    <message>
        <source>On, at zero, direct current: begin</source>
        <translation>An, auf null, Gleichstrom: beginnen</translation>
    </message>
    <message>
        <source>On, at zero, pulsed light on: begin</source>
        <translation>An, auf null, Pulslicht leuchtet: beginnen</translation>
    </message>
    <message>
        <source>Check</source>
        <translation>Prüfen</translation>
    </message>
    <message>
        <source>Raise</source>
        <translation>Erhöhen</translation>
    </message>
    <message>
        <source>Hold</source>
        <translation>Halten</translation>
    </message>
    <message>
        <source>Lower</source>
        <translation>Senken</translation>
    </message>
    <message>
        <source>Swap</source>
        <translation>Tauschen</translation>
    </message>
    <message>
        <source>Turn down to %1</source>
        <translation>Herunter auf %1</translation>
    </message>
    <message>
        <source>With a screen reader on, a tap anywhere does not stop the session. Ask somebody to stay beside you, or use a pedal or a switch.</source>
        <translation>Mit ein­geschaltetem Vorlese­programm stoppt ein Tippen irgendwohin die Sitzung nicht. Bitten Sie jemanden, bei Ihnen zu bleiben, oder verwenden Sie ein Pedal oder einen Taster.</translation>
    </message>
    <message>
        <source>This passphrase is too short. Choose one of at least eight characters.</source>
        <translation>Dieses Kennwort ist zu kurz. Wählen Sie eines mit mindestens acht Zeichen.</translation>
    </message>
    <message>
        <source>This file may be about somebody else: name or birth date differ, or are missing. Nothing was added.</source>
        <translation>Diese Datei gehört vielleicht zu einer anderen Person: Name oder Geburtsdatum sind anders oder fehlen. Nichts wurde hinzugefügt.</translation>
    </message>
    <message>
        <source>A file of that name is there already. It was left as it is.</source>
        <translation>Eine Datei dieses Namens gibt es schon. Sie blieb, wie sie ist.</translation>
    </message>
    <message>
        <source>The file with your record was moved, deleted or replaced while Firstdew was open. Nothing was saved. Close Firstdew, put the file back and open it again.</source>
        <translation>Die Datei mit Ihrer Aufzeichnung wurde verschoben, gelöscht oder ersetzt, während Firstdew offen war. Nichts wurde gespeichert. Schließen Sie Firstdew, legen Sie die Datei zurück und öffnen Sie es wieder.</translation>
    </message>
    <message>
        <source>This care sheet is dated in the future. Ask for one with the right date.</source>
        <translation>Dieses Blatt trägt ein Datum in der Zukunft. Bitten Sie um eines mit dem richtigen Datum.</translation>
    </message>
    <message>
        <source>Do you have a coil (intrauterine device or system) of any kind?</source>
        <translation>Haben Sie eine Spirale (Intrauterin­pessar oder -system) irgendeiner Art?</translation>
    </message>
    <message>
        <source>the child</source>
        <translation>das Kind</translation>
    </message>
    <message>
        <source>Could %1 be pregnant?</source>
        <translation>Könnte %1 schwanger sein?</translation>
    </message>
    <message>
        <source>Does %1 have a pacemaker, a defibrillator or any other powered implant?</source>
        <translation>Hat %1 einen Herz­schrittmacher, einen Defibrillator oder ein anderes elektrisches (aktives) Implantat?</translation>
    </message>
    <message>
        <source>Does %1 have metal in a bone or joint?</source>
        <translation>Hat %1 Metall in einem Knochen oder Gelenk?</translation>
    </message>
    <message>
        <source>Does %1 have a coil (intrauterine device or system) of any kind?</source>
        <translation>Hat %1 eine Spirale (Intrauterin­pessar oder -system) irgendeiner Art?</translation>
    </message>
    <message>
        <source>Does %1 have a heart rhythm disorder or epilepsy?</source>
        <translation>Hat %1 eine Herz­rhythmus­störung oder Epilepsie?</translation>
    </message>
    <message>
        <source>Does %1 have a tumour or a blood clot at present?</source>
        <translation>Hat %1 zurzeit einen Tumor oder ein Blutgerinnsel?</translation>
    </message>
    <message>
        <source>Is %1 under five years old?</source>
        <translation>Ist %1 jünger als fünf Jahre?</translation>
    </message>
    <message>
        <source>Is %1 under eighteen years old?</source>
        <translation>Ist %1 jünger als achtzehn Jahre?</translation>
    </message>
    <message>
        <source>Does %1 have eczema or inflamed skin where the treatment goes?</source>
        <translation>Hat %1 an der Behandlungs­stelle ein Ekzem oder entzündete Haut?</translation>
    </message>
    <message>
        <source>Does %1 have a wound too large to cover?</source>
        <translation>Hat %1 eine Wunde, die zum Abdecken zu groß ist?</translation>
    </message>
    <message>
        <source>Does %1 wear fixed dental braces?</source>
        <translation>Trägt %1 eine feste Zahnspange?</translation>
    </message>
    <message>
        <source>a coil</source>
        <translation>Spirale</translation>
    </message>
    <message>
        <source>Wet at rest, noted %1. One report is not enough for a new course.</source>
        <translation>In Ruhe nass, notiert: %1. Ein Eintrag reicht nicht für eine neue Behandlungs­serie.</translation>
    </message>
    <message>
        <source>Not better yet</source>
        <translation>Noch nicht besser</translation>
    </message>
    <message>
        <source>Your care sheet prescribes a current that your machine does not have. Ask who wrote it.</source>
        <translation>Ihr Behandlungs­blatt verordnet eine Stromart, die Ihr Gerät nicht liefert. Fragen Sie nach, wer es ausgestellt hat.</translation>
    </message>
    <message>
        <source>Enter first which current your machine has.</source>
        <translation>Geben Sie zuerst ein, welche Stromart Ihr Gerät liefert.</translation>
    </message>
    <message numerus="yes">
        <source>After %n session(s) it is too early to say that it does not help: for many people it takes ten to twelve. First check how you do it.</source>
        <translation>
            <numerusform>Nach %n Sitzung ist es zu früh, um zu sagen, dass es nicht hilft: Bei vielen dauert es zehn bis zwölf. Prüfen Sie zuerst, wie Sie es machen.</numerusform>
            <numerusform>Nach %n Sitzungen ist es zu früh, um zu sagen, dass es nicht hilft: Bei vielen dauert es zehn bis zwölf. Prüfen Sie zuerst, wie Sie es machen.</numerusform>
        </translation>
    </message>
    <message>
        <source>Say how much the sweating bothers you now. Then the app can tell whether the course helped.</source>
        <translation>Sagen Sie, wie sehr das Schwitzen Sie jetzt stört. Dann kann die App sagen, ob die Behandlungs­serie geholfen hat.</translation>
    </message>
    <message>
        <source>The answer comes with the first sessions and a week of check-ins.</source>
        <translation>Die Antwort kommt mit den ersten Sitzungen und einer Woche mit Tages­einträgen.</translation>
    </message>
    <message numerus="yes">
        <source>After %n more check-in(s) there is an answer.</source>
        <translation>
            <numerusform>Nach einem weiteren Tages­eintrag gibt es eine Antwort.</numerusform>
            <numerusform>Nach %n weiteren Tages­einträgen gibt es eine Antwort.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>No change yet. That says little before %n more session(s).</source>
        <translation>
            <numerusform>Noch keine Veränderung. Das sagt wenig, solange noch %n Sitzung fehlt.</numerusform>
            <numerusform>Noch keine Veränderung. Das sagt wenig, solange noch %n Sitzungen fehlen.</numerusform>
        </translation>
    </message>
    <message>
        <source>Too early to say if it works</source>
        <translation>Zu früh, um zu sagen, ob es wirkt</translation>
    </message>
    <message>
        <source>It does not work yet</source>
        <translation>Es wirkt noch nicht</translation>
    </message>
    <message>
        <source>It works in part</source>
        <translation>Es wirkt teilweise</translation>
    </message>
    <message>
        <source>It works</source>
        <translation>Es wirkt</translation>
    </message>
    <message>
        <source>under %1</source>
        <translation>unter %1</translation>
    </message>
    <message>
        <source>Damp days a week: %1.</source>
        <translation>Feuchte Tage pro Woche: %1.</translation>
    </message>
    <message>
        <source>Your latest dry spells were short.</source>
        <translation>Ihre letzten trockenen Zeiten waren kurz.</translation>
    </message>
    <message>
        <source>Show your prescriber the summary. Other treatments can help.</source>
        <translation>Zeigen Sie Ihrer Praxis den Bericht. Andere Behandlungen können helfen.</translation>
    </message>
    <message>
        <source>Many people need 10 to 12 sessions.</source>
        <translation>Viele brauchen 10 bis 12 Sitzungen.</translation>
    </message>
    <message>
        <source>There is no code in this picture that can be read. Take it straight from the front, near and in good light.</source>
        <translation>In diesem Bild ist kein lesbarer Code. Nehmen Sie es gerade von vorn auf, nah und bei gutem Licht.</translation>
    </message>
    <message>
        <source>Waiting at zero</source>
        <translation>Wartet bei null</translation>
    </message>
    <message>
        <source>Ends at %1</source>
        <translation>Endet um %1</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Stopp</translation>
    </message>
    <message>
        <source>Something to look at today</source>
        <translation>Heute bitte nachsehen</translation>
    </message>
    <message>
        <source>Done for today</source>
        <translation>Für heute erledigt</translation>
    </message>
    <message>
        <source>Botulinum injections</source>
        <translation>Botulinum-Spritzen</translation>
    </message>
    <message>
        <source>Tablets</source>
        <translation>Tabletten</translation>
    </message>
    <message>
        <source>Cream or deodorant</source>
        <translation>Creme oder Deodorant</translation>
    </message>
    <message>
        <source>Something else</source>
        <translation>Etwas anderes</translation>
    </message>
    <message>
        <source>%1: %2 to %3</source>
        <comment>treatment: first and last day</comment>
        <translation>%1: %2 bis %3</translation>
    </message>
    <message>
        <source>%1: since %2</source>
        <comment>treatment: first day</comment>
        <translation>%1: seit dem %2</translation>
    </message>
    <message>
        <source>You missed session %1 on %2. It is now today.</source>
        <translation>Sitzung %1 am %2 ist ausgefallen. Sie ist jetzt heute dran.</translation>
    </message>
    <message>
        <source>You missed session %1 on %2. It is now on %3.</source>
        <translation>Sitzung %1 am %2 ist ausgefallen. Sie ist jetzt am %3 dran.</translation>
    </message>
    <message numerus="yes">
        <source>The plan puts %n session(s) on consecutive days.</source>
        <translation>
            <numerusform>Der Plan legt %n Sitzung auf aufeinander­folgende Tage.</numerusform>
            <numerusform>Der Plan legt %n Sitzungen auf aufeinander­folgende Tage.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>With a day between them, it takes %n day(s) more than planned.</source>
        <translation>
            <numerusform>Mit je einem Tag dazwischen dauert es %n Tag länger als vorgesehen.</numerusform>
            <numerusform>Mit je einem Tag dazwischen dauert es %n Tage länger als vorgesehen.</numerusform>
        </translation>
    </message>
    <message>
        <source>You are away on %1.</source>
        <translation>Sie sind am %1 nicht da.</translation>
    </message>
    <message>
        <source>You are away from %1 to %2.</source>
        <translation>Sie sind vom %1 bis %2 nicht da.</translation>
    </message>
    <message>
        <source>Dampness may come back in that time. A top-up before you leave is worth it.</source>
        <translation>In dieser Zeit kann die Feuchte zurückkommen. Eine Auffrischung vor der Abreise lohnt sich.</translation>
    </message>
    <message>
        <source>Top up before you leave</source>
        <translation>Vor der Abreise auffrischen</translation>
    </message>
    <message>
        <source>You are away. The call for a session comes when you are back.</source>
        <translation>Sie sind nicht da. Der Hinweis auf die Sitzung kommt, wenn Sie zurück sind.</translation>
    </message>
    <message>
        <source>%1: dry or clammy today?</source>
        <translation>%1: heute trocken oder klamm?</translation>
    </message>
    <message>
        <source>One tap answers. Or tap here to open Firstdew.</source>
        <translation>Ein Tippen genügt. Oder hier tippen, um Firstdew zu öffnen.</translation>
    </message>
    <message>
        <source>Not everything came over. Your back-up is as it was. Try again with the same file.</source>
        <translation>Es ist nicht alles angekommen. Ihre Sicherung ist, wie sie war. Versuchen Sie es mit derselben Datei noch einmal.</translation>
    </message>
    <message>
        <source>Dampness has probably begun.</source>
        <translation>Die Haut ist wahrscheinlich wieder feucht.</translation>
    </message>
    <message>
        <source>A top-up has been due since %1.</source>
        <translation>Eine Auffrischung ist seit %1 fällig.</translation>
    </message>
    <message>
        <source>You may get clammy by tomorrow. A top-up now is worth it.</source>
        <translation>Bis morgen kann die Haut klamm werden. Eine Auffrischung lohnt sich jetzt.</translation>
    </message>
    <message>
        <source>Going by your check-ins so far, the chance that dampness has begun is %1. The curve above does not include them.</source>
        <translation>Nach Ihren bisherigen Tages­einträgen ist die Haut mit einer Wahrschein­lichkeit von %1 schon wieder feucht. Die Kurve oben berücksichtigt diese Einträge nicht.</translation>
    </message>
    <message>
        <source>The chance that dampness has begun is %1. Today&apos;s report did not change it.</source>
        <translation>Die Haut ist mit einer Wahrschein­lichkeit von %1 schon wieder feucht. Der Eintrag von heute hat daran nichts geändert.</translation>
    </message>
    <message>
        <source>The chance that dampness has begun is %1. Before today&apos;s report it was %2.</source>
        <translation>Die Haut ist mit einer Wahrschein­lichkeit von %1 schon wieder feucht. Vor dem Eintrag von heute waren es %2.</translation>
    </message>
    <message>
        <source>Practice: the phase waits. In a real session you turn it up again when you are ready.</source>
        <translation>Übung: Die Phase ist angehalten. In einer echten Sitzung regeln Sie wieder hoch, wenn Sie so weit sind.</translation>
    </message>
    <message>
        <source>Stays off</source>
        <translation>Bleibt aus</translation>
    </message>
    <message>
        <source>No current</source>
        <translation>Kein Strom</translation>
    </message>
    <message numerus="yes">
        <source>In a real session this takes %n minute(s).</source>
        <translation>
            <numerusform>In einer echten Sitzung dauert das %n Minute.</numerusform>
            <numerusform>In einer echten Sitzung dauert das %n Minuten.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>In a real session this takes %n second(s).</source>
        <translation>
            <numerusform>In einer echten Sitzung dauert das %n Sekunde.</numerusform>
            <numerusform>In einer echten Sitzung dauert das %n Sekunden.</numerusform>
        </translation>
    </message>
    <message>
        <source>You could not start a real session today: %1</source>
        <translation>Eine echte Sitzung könnten Sie heute nicht beginnen: %1</translation>
    </message>
    <message>
        <source>Say who watched, and tick what was seen.</source>
        <translation>Sagen Sie, wer zugesehen hat, und haken Sie ab, was zu sehen war.</translation>
    </message>
    <message>
        <source>This is above the limit of %1 there. Agree on a level up to the limit.</source>
        <translation>Das liegt über der Grenze von %1 dort. Vereinbaren Sie eine Stärke bis zur Grenze.</translation>
    </message>
    <message>
        <source>Begin with the level you agreed on when you were taught.</source>
        <translation>Beginnen Sie mit der Stärke, die bei der Anleitung vereinbart wurde.</translation>
    </message>
    <message>
        <source>Dry skin</source>
        <translation>Trockene Haut</translation>
    </message>
    <message>
        <source>It could not be saved there. Choose another place, or make room first.</source>
        <translation>Dort ließ es sich nicht speichern. Wählen Sie einen anderen Ort oder schaffen Sie zuerst Platz.</translation>
    </message>
    <message>
        <source>Enter height and weight, and the size of this skin counts as well.</source>
        <translation>Größe und Gewicht eintragen, dann zählt auch die Hautfläche hier.</translation>
    </message>
    <message>
        <source>The meter is above the limit. Turn it down, then enter what it shows.</source>
        <translation>Die Anzeige liegt über der Grenze. Regeln Sie herunter und geben Sie dann ein, was sie zeigt.</translation>
    </message>
    <message>
        <source>No sound comes from here, so you would not hear the alarm. Switch the sound on, then begin.</source>
        <translation>Von hier kommt kein Ton, also würden Sie den Alarm nicht hören. Schalten Sie den Ton ein und beginnen Sie dann.</translation>
    </message>
    <message>
        <source>less than 1 in %1</source>
        <translation>weniger als 1 von %1</translation>
    </message>
    <message>
        <source>more than %1 in %2</source>
        <translation>mehr als %1 von %2</translation>
    </message>
    <message>
        <source>about %1 in %2</source>
        <translation>etwa %1 von %2</translation>
    </message>
    <message>
        <source>By %1: %2</source>
        <comment>day, chance</comment>
        <translation>Bis %1: %2</translation>
    </message>
    <message numerus="yes">
        <source>When the chance for the next day was %1, dampness came on %2 of %n day(s).</source>
        <translation>
            <numerusform>Lag die Wahrschein­lichkeit für den nächsten Tag bei %1, kam die Feuchte an %2 von %n Tag.</numerusform>
            <numerusform>Lag die Wahrschein­lichkeit für den nächsten Tag bei %1, kam die Feuchte an %2 von %n Tagen.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>After %n more check-in(s) the app can say how its forecasts have done.</source>
        <translation>
            <numerusform>Nach einem weiteren Tages­eintrag kann die App sagen, wie gut ihre Vorhersagen waren.</numerusform>
            <numerusform>Nach %n weiteren Tages­einträgen kann die App sagen, wie gut ihre Vorhersagen waren.</numerusform>
        </translation>
    </message>
    <message>
        <source>So far the forecasts fit.</source>
        <translation>Bisher passen die Vorhersagen.</translation>
    </message>
    <message>
        <source>The dry spells have not gone as forecast. So the forecast now leaves more room on both sides.</source>
        <translation>Die trockenen Zeiten verliefen anders als vorhergesagt. Deshalb lässt die Vorhersage jetzt nach beiden Seiten mehr Spielraum.</translation>
    </message>
    <message>
        <source>Today&apos;s session was stopped. Most of it was done, so it counts.</source>
        <translation>Die heutige Sitzung wurde vorzeitig beendet. Das meiste war geschafft, deshalb zählt sie.</translation>
    </message>
    <message>
        <source>Saved.</source>
        <translation>Gespeichert.</translation>
    </message>
    <message>
        <source>Taken back.</source>
        <translation>Zurückgenommen.</translation>
    </message>
    <message>
        <source>The alarm is over.</source>
        <translation>Der Alarm ist vorbei.</translation>
    </message>
    <message>
        <source>The sole of a foot counts as %1, by height and weight.</source>
        <translation>Eine Fußsohle zählt als %1, nach Größe und Gewicht.</translation>
    </message>
    <message>
        <source>The palm of a hand counts as %1, by height and weight.</source>
        <translation>Eine Handfläche zählt als %1, nach Größe und Gewicht.</translation>
    </message>
    <message>
        <source>One pad counts as %1, as entered with the machine.</source>
        <translation>Ein Elektroden­polster zählt als %1, wie beim Gerät eingetragen.</translation>
    </message>
    <message>
        <source>One pad counts as %1, as on the care sheet.</source>
        <translation>Ein Elektroden­polster zählt als %1, wie auf dem Behandlungs­blatt.</translation>
    </message>
    <message>
        <source>No pad size is entered, so one pad counts as %1.</source>
        <translation>Die Größe der Elektroden­polster ist nicht eingetragen, daher zählt eines als %1.</translation>
    </message>
    <message>
        <source>%1 of current, about %2 in all</source>
        <translation>%1 Strom, insgesamt etwa %2</translation>
    </message>
    <message>
        <source>%1: no antiperspirant with aluminium for 24 hours</source>
        <translation>%1: seit 24 Stunden kein Anti­transpirant mit Aluminium</translation>
    </message>
    <message>
        <source>%1: not shaved for three days</source>
        <translation>%1: seit drei Tagen nicht rasiert</translation>
    </message>
    <message>
        <source>Warm tap water, about %1 in each tray</source>
        <translation>Warmes Leitungswasser, etwa %1 in jeder Schale</translation>
    </message>
    <message>
        <source>My skin is whole where I treat: no cut, no new redness, no blister or burn</source>
        <translation>Meine Haut ist heil, wo ich behandle: kein Schnitt, keine neue Rötung, keine Blase oder Verbrennung</translation>
    </message>
    <message>
        <source>Ready %1 from %2. %3</source>
        <comment>day, time, what is then fulfilled</comment>
        <translation>Möglich %1 ab %2. %3</translation>
    </message>
    <message>
        <source>%1 left in all</source>
        <translation>insgesamt noch %1</translation>
    </message>
    <message>
        <source>%1 %2 left</source>
        <comment>minutes, seconds</comment>
        <translation>noch %1 %2</translation>
    </message>
    <message>
        <source>That does not belong to this step. Do what the screen says now. If in doubt, lower the current to zero and switch the machine off.</source>
        <translation>Das gehört nicht zu diesem Schritt. Tun Sie jetzt, was der Bildschirm sagt. Im Zweifel regeln Sie den Strom auf null und schalten das Gerät aus.</translation>
    </message>
    <message>
        <source>That did not work. Try again. If it happens again, end any session first, then close Firstdew and open it again.</source>
        <translation>Das hat nicht geklappt. Versuchen Sie es noch einmal. Wenn es wieder geschieht, beenden Sie zuerst eine laufende Sitzung; schließen Sie dann Firstdew und öffnen Sie es wieder.</translation>
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
        <translation>Haben Sie das Gefühl in der Haut verloren, oder haben Sie dort, wo behandelt wird, eine Nerven­krankheit?</translation>
    </message>
    <message>
        <source>Has %1 lost feeling in the skin, or is there a nerve disease where the treatment goes?</source>
        <translation>Hat %1 das Gefühl in der Haut verloren, oder gibt es dort, wo behandelt wird, eine Nerven­krankheit?</translation>
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
            <numerusform>Sie bleiben meist %1 bis %n Tag trocken. Heute ist Tag %2.</numerusform>
            <numerusform>Sie bleiben meist %1 bis %n Tage trocken. Heute ist Tag %2.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>You usually stay dry %1 to %n day(s).</source>
        <translation>
            <numerusform>Sie bleiben meist %1 bis %n Tag trocken.</numerusform>
            <numerusform>Sie bleiben meist %1 bis %n Tage trocken.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Half of your dry spells last longer than %n day(s); four in five are over between day %1 and day %2.</source>
        <translation>
            <numerusform>Die Hälfte Ihrer trockenen Zeiten dauert länger als %n Tag; vier von fünf enden zwischen Tag %1 und Tag %2.</numerusform>
            <numerusform>Die Hälfte Ihrer trockenen Zeiten dauert länger als %n Tage; vier von fünf enden zwischen Tag %1 und Tag %2.</numerusform>
        </translation>
    </message>
    <message>
        <source>Pads off</source>
        <translation>Polster abnehmen</translation>
    </message>
    <message>
        <source>Dry off</source>
        <translation>Abtrocknen</translation>
    </message>
    <message>
        <source>With both hands in the water you go by what you hear, and no voice here is known to speak your language. Ask somebody to stay beside you.</source>
        <translation>Mit beiden Händen im Wasser richten Sie sich nach dem, was Sie hören, und von keiner Stimme hier ist bekannt, dass sie Ihre Sprache spricht. Bitten Sie jemanden, neben Ihnen zu bleiben.</translation>
    </message>
    <message>
        <source>Turn the current to zero</source>
        <translation>Strom auf null regeln</translation>
    </message>
    <message>
        <source>Firstdew has stopped leading your session. Turn the current to zero, switch the machine off, then open Firstdew.</source>
        <translation>Firstdew leitet die Sitzung nicht mehr. Regeln Sie den Strom auf null, schalten Sie das Gerät aus und öffnen Sie dann Firstdew.</translation>
    </message>
    <message>
        <source>Shorter dry spells can have many reasons. If it goes on, tell your nurse or doctor.</source>
        <translation>Kürzere trockene Zeiten können viele Gründe haben. Wenn es so weitergeht, sagen Sie es Ihrer Pflegekraft oder Praxis.</translation>
    </message>
    <message>
        <source>The last session here was half a year ago or more: begin low again, and go by what is comfortable.</source>
        <translation>Die letzte Sitzung hier ist ein halbes Jahr oder länger her: wieder niedrig beginnen und nur so hoch gehen, wie es angenehm ist.</translation>
    </message>
    <message>
        <source>No reading of this current was noted here yet: begin low, and go by what is comfortable.</source>
        <translation>Für diesen Strom ist hier noch kein Messwert notiert: niedrig beginnen und nur so hoch gehen, wie es angenehm ist.</translation>
    </message>
    <message>
        <source>This passphrase is too long. Choose one of fewer than 250 characters.</source>
        <translation>Dieses Kennwort ist zu lang. Wählen Sie eines mit weniger als 250 Zeichen.</translation>
    </message>
    <message numerus="yes">
        <source>Usually dry for %n day(s) since about %1; before that, for %2.</source>
        <comment>days, date, days</comment>
        <translation>
            <numerusform>Übliche trockene Zeit: %n Tag, etwa seit dem %1; davor %2 Tage.</numerusform>
            <numerusform>Übliche trockene Zeit: %n Tage, etwa seit dem %1; davor %2 Tage.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1&#xa0;now, %2&#xa0;before the first session</source>
        <translation>jetzt&#xa0;%1, vor der ersten Sitzung&#xa0;%2</translation>
    </message>
    <message>
        <source>%1&#xa0;now</source>
        <translation>jetzt&#xa0;%1</translation>
    </message>
    <message>
        <source>How much it bothers you: %1&#xa0;now, %2&#xa0;before.</source>
        <translation>Belastung: jetzt&#xa0;%1, vorher&#xa0;%2.</translation>
    </message>
    <message>
        <source>It rests while you pause this site.</source>
        <translation>Er ruht, solange Sie hier aussetzen.</translation>
    </message>
    <message>
        <source>It rests while hands and feet are treated together.</source>
        <translation>Er ruht, solange Hände und Füße zusammen behandelt werden.</translation>
    </message>
    <message>
        <source>It rests until the next check-in.</source>
        <translation>Er ruht bis zum nächsten Tages­eintrag.</translation>
    </message>
    <message>
        <source>It rests while no session is possible.</source>
        <translation>Er ruht, solange keine Sitzung möglich ist.</translation>
    </message>
    <message>
        <source>It rests because the sweating is back.</source>
        <translation>Er ruht, weil das Schwitzen zurück ist.</translation>
    </message>
    <message>
        <source>All pairs are complete.</source>
        <translation>Alle Paare sind vollständig.</translation>
    </message>
    <message>
        <source>It ended early, because the answer was clear.</source>
        <translation>Der Vergleich endete früher, weil die Antwort klar war.</translation>
    </message>
    <message>
        <source>You left it.</source>
        <translation>Sie haben den Vergleich beendet.</translation>
    </message>
    <message>
        <source>It ended because of the skin.</source>
        <translation>Der Vergleich endete wegen der Haut.</translation>
    </message>
    <message>
        <source>It ended because the sweating was back.</source>
        <translation>Der Vergleich endete, weil das Schwitzen zurück war.</translation>
    </message>
    <message>
        <source>It ended with the new course.</source>
        <translation>Der Vergleich endete mit der neuen Behandlungs­serie.</translation>
    </message>
    <message>
        <source>It ended with the other treatment.</source>
        <translation>Der Vergleich endete mit der anderen Behandlung.</translation>
    </message>
    <message>
        <source>It ended because three sessions in a row did not count.</source>
        <translation>Der Vergleich endete, weil drei Sitzungen nacheinander nicht zählten.</translation>
    </message>
    <message>
        <source>Whether the shorter session holds as long could not be told.</source>
        <translation>Ob die kürzere Sitzung ebenso lange wirkt, ließ sich nicht sagen.</translation>
    </message>
    <message numerus="yes">
        <source>The shorter session held about as long: about %n day(s), and the usual one %1.</source>
        <translation>
            <numerusform>Die kürzere Sitzung wirkte etwa ebenso lange: etwa %n Tag, die übliche %1.</numerusform>
            <numerusform>Die kürzere Sitzung wirkte etwa ebenso lange: etwa %n Tage, die übliche %1.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>The shorter session held less long: about %n day(s) instead of %1.</source>
        <translation>
            <numerusform>Die kürzere Sitzung wirkte weniger lange: etwa %n Tag statt %1.</numerusform>
            <numerusform>Die kürzere Sitzung wirkte weniger lange: etwa %n Tage statt %1.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>By these %n dry spell(s) it probably holds for %1 to %2 of the usual time.</source>
        <translation>
            <numerusform>Nach dieser %n trockenen Zeit wirkt sie wahrscheinlich %1 bis %2 der üblichen Zeit.</numerusform>
            <numerusform>Nach diesen %n trockenen Zeiten wirkt sie wahrscheinlich %1 bis %2 der üblichen Zeit.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>You compare a session of %1 with your usual one of %2, in %n pair(s) of dry spells. Chance decides which comes first.</source>
        <translation>
            <numerusform>Sie vergleichen eine Sitzung von %1 mit der üblichen von %2, in %n Paar trockener Zeiten. Der Zufall entscheidet, welche zuerst kommt.</numerusform>
            <numerusform>Sie vergleichen eine Sitzung von %1 mit der üblichen von %2, in %n Paaren trockener Zeiten. Der Zufall entscheidet, welche zuerst kommt.</numerusform>
        </translation>
    </message>
    <message>
        <source>Only the time is shorter. Current and limits stay as they are.</source>
        <translation>Nur die Zeit ist kürzer. Strom und Grenzen bleiben, wie sie sind.</translation>
    </message>
    <message>
        <source>Meanwhile the forecast calls for no top-up. The first clammy day at rest does, unless the skin is still settling on the day after a session. So you may be clammy more often.</source>
        <translation>Die Vorhersage ruft solange zu keiner Auffrischung auf. Das tut der erste Tag, an dem Sie in Ruhe klamm sind, außer wenn sich die Haut am Tag nach einer Sitzung noch beruhigt. Sie können also öfter klamm sein.</translation>
    </message>
    <message>
        <source>Only sessions that the app leads to the end count. Check in every day.</source>
        <translation>Nur Sitzungen, die die App bis zum Ende leitet, zählen. Machen Sie jeden Tag einen Tages­eintrag.</translation>
    </message>
    <message>
        <source>It can take months. It ends earlier if the shorter session clearly holds less long, or if the skin or the sweating requires it. You can leave at any time.</source>
        <translation>Es kann Monate dauern. Wirkt die kürzere klar weniger lange, oder verlangen es Haut oder Schwitzen, endet der Vergleich früher. Sie können ihn jederzeit beenden.</translation>
    </message>
    <message>
        <source>Agree on it with your prescriber or nurse first, and follow your machine&apos;s instructions.</source>
        <translation>Sprechen Sie es zuerst mit Ihrer Praxis oder Pflegekraft ab, und folgen Sie der Anleitung Ihres Geräts.</translation>
    </message>
    <message>
        <source>Pair %1 of %2.</source>
        <translation>Paar %1 von %2.</translation>
    </message>
    <message>
        <source>Until then your sessions are the usual ones, and the forecast calls for top-ups again.</source>
        <translation>Bis dahin machen Sie die üblichen Sitzungen, und die Vorhersage ruft wieder zu Auffrischungen auf.</translation>
    </message>
    <message>
        <source>This dry spell followed the shorter session.</source>
        <translation>Diese trockene Zeit folgte auf die kürzere Sitzung.</translation>
    </message>
    <message>
        <source>This dry spell followed the usual session.</source>
        <translation>Diese trockene Zeit folgte auf die übliche Sitzung.</translation>
    </message>
    <message>
        <source>The next session is the shorter one: %1.</source>
        <translation>Die nächste Sitzung ist die kürzere: %1.</translation>
    </message>
    <message>
        <source>The next session is the usual one: %1.</source>
        <translation>Die nächste Sitzung ist die übliche: %1.</translation>
    </message>
    <message>
        <source>The forecast calls for no top-up meanwhile. A clammy day at rest does.</source>
        <translation>Die Vorhersage ruft solange zu keiner Auffrischung auf. Das tut ein Tag, an dem Sie in Ruhe klamm sind.</translation>
    </message>
    <message>
        <source>From %1 to %2.</source>
        <translation>Vom %1 bis %2.</translation>
    </message>
    <message>
        <source>Sessions are as long as usual again. Talk to your prescriber or nurse about the answer.</source>
        <translation>Sitzungen dauern wieder so lange wie üblich. Sprechen Sie mit Ihrer Praxis oder Pflegekraft über die Antwort.</translation>
    </message>
    <message>
        <source>Shorter session compared with the usual one since %1</source>
        <translation>Kürzere Sitzung im Vergleich mit der üblichen, seit %1</translation>
    </message>
    <message>
        <source>pair %1 of %2; no answer yet</source>
        <translation>Paar %1 von %2; noch keine Antwort</translation>
    </message>
    <message>
        <source>You compare: this time the shorter session, %1.</source>
        <translation>Sie vergleichen: dieses Mal die kürzere Sitzung, %1.</translation>
    </message>
    <message>
        <source>You compare: this time the usual session, %1.</source>
        <translation>Sie vergleichen: dieses Mal die übliche Sitzung, %1.</translation>
    </message>
    <message>
        <source>You compare session lengths: pair %1 of %2. The forecast calls for no top-up meanwhile; a clammy day at rest does.</source>
        <translation>Sie vergleichen Sitzungslängen: Paar %1 von %2. Die Vorhersage ruft solange zu keiner Auffrischung auf; das tut ein Tag, an dem Sie in Ruhe klamm sind.</translation>
    </message>
</context>
<context>
    <name>WorkingCard</name>
    <message>
        <source>Your dry spells, %1</source>
        <translation>Ihre trockenen Zeiten, %1</translation>
    </message>
    <message>
        <source>Dry days after each session, the latest last. A point on top: still dry when the next session came, or dry today.</source>
        <translation>Trockene Tage nach jeder Sitzung, die letzte zuletzt. Eine Spitze oben: noch trocken, als die nächste Sitzung kam, oder heute trocken.</translation>
    </message>
    <message>
        <source>A bar for each dry spell comes here once the course is under way.</source>
        <translation>Für jede trockene Zeit kommt hier ein Balken, sobald die Behandlungs­serie läuft.</translation>
    </message>
</context>
<context>
    <name>firstdew::app::Reminding</name>
    <message>
        <source>Later</source>
        <translation>Später</translation>
    </message>
    <message>
        <source>Start</source>
        <translation>Beginnen</translation>
    </message>
</context>
<context>
    <name>firstdew::controls::DampnessChart</name>
    <message>
        <source>Chance</source>
        <translation>Wahrsch.</translation>
    </message>
</context>
<context>
    <name>firstdew::controls::DrySpellChart</name>
    <message>
        <source>Today, day %1</source>
        <translation>Heute, Tag %1</translation>
    </message>
    <message>
        <source>Days since the session</source>
        <translation>Tage seit der Sitzung</translation>
    </message>
</context>
<context>
    <name>firstdew::controls::SpellColumnsChart</name>
    <message numerus="yes">
        <source>%1: %n day(s) dry</source>
        <translation>
            <numerusform>%1: %n Tag trocken</numerusform>
            <numerusform>%1: %n Tage trocken</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>firstdew::viewmodels::BathModel</name>
    <message>
        <source>Write down who approved it, so that the summary can say so.</source>
        <translation>Schreiben Sie auf, wer es freigegeben hat, damit es im Bericht steht.</translation>
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
            <numerusform>%1: %n Tag</numerusform>
            <numerusform>%1: %n Tage</numerusform>
        </translation>
    </message>
    <message>
        <source>Nothing noted in this time</source>
        <translation>Nichts notiert in dieser Zeit</translation>
    </message>
    <message numerus="yes">
        <source>%n session(s)</source>
        <translation>
            <numerusform>%n Sitzung</numerusform>
            <numerusform>%n Sitzungen</numerusform>
        </translation>
    </message>
    <message>
        <source>session</source>
        <translation>Sitzung</translation>
    </message>
    <message>
        <source>Week from %1</source>
        <translation>Woche ab %1</translation>
    </message>
    <message numerus="yes">
        <source>%n damp day(s) of %1 with a check-in</source>
        <translation>
            <numerusform>%n feuchter Tag von %1 mit Tages­eintrag</numerusform>
            <numerusform>%n feuchte Tage von %1 mit Tages­eintrag</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>firstdew::viewmodels::KeepModel</name>
    <message>
        <source>Save as</source>
        <translation>Speichern unter</translation>
    </message>
</context>
</TS>
