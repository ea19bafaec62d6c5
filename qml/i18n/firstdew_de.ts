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
    <name>AwayPage</name>
    <message>
        <source>Days away</source>
        <translation>Abwesend</translation>
    </message>
    <message>
        <source>No bath is planned on these days; the course moves around them.</source>
        <translation>An diesen Tagen wird kein Bad geplant; die Kur weicht aus.</translation>
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
</context>
<context>
    <name>BotherPage</name>
    <message>
        <source>How much it bothers you</source>
        <translation>Wie sehr es Sie stört</translation>
    </message>
    <message>
        <source>Over the last week, which comes nearest?</source>
        <translation>Was trifft für die letzte Woche am ehesten zu?</translation>
    </message>
    <message>
        <source>I hardly notice it and it stops me from nothing</source>
        <translation>Ich bemerke es kaum und es hindert mich an nichts</translation>
    </message>
    <message>
        <source>I can live with it, and now and then it gets in my way</source>
        <translation>Ich kann damit leben, ab und zu stört es</translation>
    </message>
    <message>
        <source>I can barely live with it, and it often gets in my way</source>
        <translation>Ich kann kaum damit leben, es stört oft</translation>
    </message>
    <message>
        <source>I cannot live with it; it is always in my way</source>
        <translation>Ich kann nicht damit leben, es stört immer</translation>
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
        <translation>Behandlungsblatt</translation>
    </message>
    <message>
        <source>Prescriber</source>
        <translation>Verordnet von</translation>
    </message>
    <message>
        <source>Given</source>
        <translation>Ausgestellt</translation>
    </message>
    <message>
        <source>Sites</source>
        <translation>Stellen</translation>
    </message>
    <message>
        <source>Course</source>
        <translation>Kur</translation>
    </message>
    <message>
        <source>Days</source>
        <translation>Tage</translation>
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
        <source>Time to raise</source>
        <translation>Zeit zum Hochregeln</translation>
    </message>
    <message>
        <source>Time to lower</source>
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
    <message>
        <source>From %1, %2</source>
        <translation>Von %1, %2</translation>
    </message>
    <message>
        <source>Direct current at most %1</source>
        <translation>Gleichstrom höchstens %1</translation>
    </message>
    <message>
        <source>Pulsed current at most %1</source>
        <translation>Pulsstrom höchstens %1</translation>
    </message>
    <message>
        <source>Review on %1</source>
        <translation>Kontrolle am %1</translation>
    </message>
    <message>
        <source>Take in a care sheet</source>
        <translation>Behandlungsblatt einlesen</translation>
    </message>
    <message>
        <source>A file from your prescriber. It can lower the limits, never raise them.</source>
        <translation>Eine Datei aus Ihrer Praxis. Sie kann Grenzen senken, nie anheben.</translation>
    </message>
    <message>
        <source>%1: %2 (before: %3)</source>
        <translation>%1: %2 (vorher: %3)</translation>
    </message>
    <message>
        <source>Take it over</source>
        <translation>Übernehmen</translation>
    </message>
</context>
<context>
    <name>CautionList</name>
    <message>
        <source>Firstdew is not a medical device and makes no diagnosis. Follow your machine's instructions, local rules and your clinician.</source>
        <translation>Firstdew ist kein Medizinprodukt und stellt keine Diagnose. Es gelten die Anleitung Ihres Geräts, die Regeln vor Ort und Ihre Ärztin oder Ihr Arzt.</translation>
    </message>
    <message>
        <source>Never go above the limits. If it hurts, lower the current or stop.</source>
        <translation>Nie über die Grenzen gehen. Wenn es schmerzt: Strom senken oder aufhören.</translation>
    </message>
    <message>
        <source>No bath while one of the health questions says stop.</source>
        <translation>Kein Bad, solange eine Gesundheitsfrage dagegen spricht.</translation>
    </message>
    <message>
        <source>Children only with medical advice and an adult beside them.</source>
        <translation>Kinder nur nach ärztlichem Rat und mit einem Erwachsenen daneben.</translation>
    </message>
    <message>
        <source>Burns, blisters, faintness or palpitations: stop and seek help.</source>
        <translation>Verbrennung, Blasen, Schwäche oder Herzklopfen: aufhören und Hilfe holen.</translation>
    </message>
    <message>
        <source>Keep leads and water away from mains electricity.</source>
        <translation>Kabel und Wasser von Netzstrom fernhalten.</translation>
    </message>
    <message>
        <source>Use only the machine made for it to drive the current.</source>
        <translation>Den Strom nur mit dem dafür gebauten Gerät erzeugen.</translation>
    </message>
</context>
<context>
    <name>CheckInCard</name>
    <message>
        <source>%1 today?</source>
        <translation>%1 heute?</translation>
    </message>
    <message>
        <source>Undo</source>
        <translation>Rückgängig</translation>
    </message>
    <message>
        <source>Change</source>
        <translation>Ändern</translation>
    </message>
    <message>
        <source>Did anything stir it up?</source>
        <translation>War etwas der Anlass?</translation>
    </message>
</context>
<context>
    <name>CoursePlan</name>
    <message>
        <source>First course</source>
        <translation>Erste Kur</translation>
    </message>
    <message>
        <source>Baths of this course</source>
        <translation>Bäder dieser Kur</translation>
    </message>
    <message>
        <source>Move</source>
        <translation>Verschieben</translation>
    </message>
    <message>
        <source>Ends by %1 at the latest if it can. A missed bath moves by itself; the rest is planned anew.</source>
        <translation>Endet möglichst bis %1. Ein versäumtes Bad rückt von selbst weiter; der Rest wird neu geplant.</translation>
    </message>
    <message>
        <source>Begin anew</source>
        <translation>Neu beginnen</translation>
    </message>
    <message>
        <source>Choose</source>
        <translation>Wählen</translation>
    </message>
    <message>
        <source>First bath</source>
        <translation>Erstes Bad</translation>
    </message>
    <message>
        <source>Days on which a bath fits; none chosen means all</source>
        <translation>Tage, an denen ein Bad passt; keiner gewählt heißt alle</translation>
    </message>
    <message>
        <source>Plan the course</source>
        <translation>Kur planen</translation>
    </message>
    <message>
        <source>Move bath %1</source>
        <translation>Bad %1 verschieben</translation>
    </message>
    <message>
        <source>New day</source>
        <translation>Neuer Tag</translation>
    </message>
</context>
<context>
    <name>DampnessLine</name>
    <message>
        <source>Dampness over time, %1</source>
        <translation>Feuchte im Verlauf, %1</translation>
    </message>
    <message>
        <source>today</source>
        <translation>heute</translation>
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
        <source>Broken off, %1</source>
        <translation>Abgebrochen, %1</translation>
    </message>
    <message>
        <source>Comfortable at %1</source>
        <translation>Angenehm bei %1</translation>
    </message>
    <message>
        <source>Bother score %1 of 4</source>
        <translation>Belastung %1 von 4</translation>
    </message>
    <message>
        <source>Skin: %1</source>
        <translation>Haut: %1</translation>
    </message>
    <message>
        <source>Withdraw this entry</source>
        <translation>Eintrag zurückziehen</translation>
    </message>
    <message>
        <source>Withdraw this entry?</source>
        <translation>Eintrag zurückziehen?</translation>
    </message>
    <message>
        <source>It no longer counts. The record keeps that it was there.</source>
        <translation>Er zählt nicht mehr. Die Aufzeichnung behält, dass es ihn gab.</translation>
    </message>
    <message>
        <source>Withdraw</source>
        <translation>Zurückziehen</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Behalten</translation>
    </message>
</context>
<context>
    <name>DaysBack</name>
    <message>
        <source>%1, to fill in</source>
        <translation>%1, nachzutragen</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Fertig</translation>
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
        <source>What speaks against it? The answer goes into your record; the call comes back when a later check-in asks for it.</source>
        <translation>Was spricht dagegen? Die Antwort wird aufgezeichnet; der Hinweis kommt wieder, wenn ein späterer Eintrag es verlangt.</translation>
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
</context>
<context>
    <name>Diary</name>
    <message>
        <source>Month</source>
        <translation>Monat</translation>
    </message>
    <message>
        <source>Quarter</source>
        <translation>Quartal</translation>
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
        <source>Each check-in on Today draws one point here. After two weeks the line begins to tell how long you stay dry.</source>
        <translation>Jeder Eintrag unter Heute setzt hier einen Punkt. Nach zwei Wochen zeigt die Linie, wie lange Sie trocken bleiben.</translation>
    </message>
    <message>
        <source>Go to Today</source>
        <translation>Zu Heute</translation>
    </message>
    <message>
        <source>Note more</source>
        <translation>Mehr notieren</translation>
    </message>
    <message>
        <source>How much it bothers you</source>
        <translation>Wie sehr es Sie stört</translation>
    </message>
    <message>
        <source>Skin after a bath</source>
        <translation>Haut nach dem Bad</translation>
    </message>
    <message>
        <source>Weighing</source>
        <translation>Wägung</translation>
    </message>
</context>
<context>
    <name>FileChoice</name>
    <message>
        <source>No such file (.%1) in %2. Put it there and look again.</source>
        <translation>Keine solche Datei (.%1) in %2. Legen Sie sie dort ab und sehen Sie noch einmal nach.</translation>
    </message>
    <message>
        <source>Look again</source>
        <translation>Noch einmal nachsehen</translation>
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
        <translation>Gesundheitsfragen</translation>
    </message>
    <message>
        <source>Your daily hour</source>
        <translation>Ihre tägliche Stunde</translation>
    </message>
    <message>
        <source>Step %1 of %2</source>
        <translation>Schritt %1 von %2</translation>
    </message>
    <message>
        <source>Choose every place you treat. It can be changed in Plan.</source>
        <translation>Wählen Sie jede Stelle, die Sie behandeln. Unter Plan lässt es sich ändern.</translation>
    </message>
    <message>
        <source>Some answers mean no bath until a clinician has said yes. Your answers stay on this phone.</source>
        <translation>Manche Antworten bedeuten: kein Bad, bis es ärztlich erlaubt ist. Ihre Antworten bleiben auf diesem Telefon.</translation>
    </message>
    <message>
        <source>Once a day Firstdew asks how damp your skin is. Two taps are enough.</source>
        <translation>Einmal am Tag fragt Firstdew, wie feucht Ihre Haut ist. Zweimal tippen genügt.</translation>
    </message>
    <message>
        <source>Check-in at</source>
        <translation>Eintrag um</translation>
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
        <source>One step back</source>
        <translation>Einen Schritt zurück</translation>
    </message>
</context>
<context>
    <name>Frame</name>
    <message>
        <source>Back</source>
        <translation>Zurück</translation>
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
        <source>Cleared by %1.</source>
        <translation>Erlaubt von %1.</translation>
    </message>
    <message>
        <source>No bath until a clinician has said that it is safe for you.</source>
        <translation>Kein Bad, bis es ärztlich für unbedenklich erklärt ist.</translation>
    </message>
    <message>
        <source>Ask a clinician first and note who said yes.</source>
        <translation>Erst ärztlich fragen und notieren, wer ja gesagt hat.</translation>
    </message>
    <message>
        <source>Usually no obstacle; one hospital lists it. Mention it to your clinician.</source>
        <translation>Meist kein Hindernis; eine Klinik führt es auf. Sprechen Sie es an.</translation>
    </message>
</context>
<context>
    <name>HealthQuestions</name>
    <message>
        <source>Health questions</source>
        <translation>Gesundheitsfragen</translation>
    </message>
    <message>
        <source>Some answers mean no bath until a clinician has said yes. Your answers stay on this phone.</source>
        <translation>Manche Antworten bedeuten: kein Bad, bis es ärztlich erlaubt ist. Ihre Antworten bleiben auf diesem Telefon.</translation>
    </message>
    <message>
        <source>Not cleared: %1</source>
        <translation>Nicht erlaubt: %1</translation>
    </message>
    <message>
        <source>Who said that it is safe?</source>
        <translation>Wer hat gesagt, dass es unbedenklich ist?</translation>
    </message>
    <message>
        <source>Name of the doctor or nurse. It goes into your record with today's date.</source>
        <translation>Name von Ärztin, Arzt oder Pflegekraft. Er wird mit dem heutigen Datum aufgezeichnet.</translation>
    </message>
    <message>
        <source>Record that it is cleared</source>
        <translation>Erlaubnis aufzeichnen</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Speichern</translation>
    </message>
</context>
<context>
    <name>KeepPage</name>
    <message>
        <source>Back-up, export and delete</source>
        <translation>Sichern, ausgeben und löschen</translation>
    </message>
    <message>
        <source>Firstdew baths</source>
        <translation>Firstdew-Bäder</translation>
    </message>
    <message>
        <source>A bath is planned</source>
        <translation>Ein Bad ist geplant</translation>
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
        <translation>Ihre Aufzeichnung ist wie zuvor.</translation>
    </message>
    <message>
        <source>Back-up</source>
        <translation>Sicherung</translation>
    </message>
    <message>
        <source>One encrypted file (OpenPGP) with everything. Without the passphrase nobody can open it, you neither.</source>
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
        <translation>Wiederherstellen</translation>
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
        <translation>Ausgeben</translation>
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
        <source>Planned baths, for a calendar</source>
        <translation>Geplante Bäder, für einen Kalender</translation>
    </message>
    <message>
        <source>Import</source>
        <translation>Einlesen</translation>
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
        <source>Gone for good, here and in the copies on this phone. Make a back-up first if in doubt.</source>
        <translation>Endgültig weg, hier und in den Kopien auf diesem Telefon. Im Zweifel erst eine Sicherung anlegen.</translation>
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
</context>
<context>
    <name>MachineForm</name>
    <message>
        <source>What it says on the machine</source>
        <translation>Was auf dem Gerät steht</translation>
    </message>
    <message>
        <source>May stay empty.</source>
        <translation>Darf leer bleiben.</translation>
    </message>
    <message>
        <source>Current it gives (see its instructions)</source>
        <translation>Strom, den es liefert (siehe Anleitung)</translation>
    </message>
    <message>
        <source>Choose at least one.</source>
        <translation>Wählen Sie mindestens einen.</translation>
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
        <translation>Gibt es eine Fernbedienung?</translation>
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
        <source>About %n bath(s) left. A set of four alkaline cells lasts about three.</source>
        <translation><numerusform>Noch etwa %n Bad. Vier Alkalizellen reichen für etwa drei.</numerusform><numerusform>Noch etwa %n Bäder. Vier Alkalizellen reichen für etwa drei.</numerusform></translation>
    </message>
    <message>
        <source>Say when you put in new ones, and Firstdew counts the baths.</source>
        <translation>Sagen Sie, wann Sie neue einlegen, dann zählt Firstdew die Bäder.</translation>
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
</context>
<context>
    <name>Main</name>
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
    <name>NextAction</name>
    <message>
        <source>Plan the first course</source>
        <translation>Die erste Kur planen</translation>
    </message>
    <message>
        <source>Next bath: %1</source>
        <translation>Nächstes Bad: %1</translation>
    </message>
    <message>
        <source>Why?</source>
        <translation>Warum?</translation>
    </message>
    <message>
        <source>Start the bath</source>
        <translation>Bad beginnen</translation>
    </message>
    <message>
        <source>Choose the course</source>
        <translation>Kur wählen</translation>
    </message>
    <message>
        <source>Go on to keeping dry</source>
        <translation>Weiter mit Trockenhalten</translation>
    </message>
    <message>
        <source>See the health questions</source>
        <translation>Gesundheitsfragen ansehen</translation>
    </message>
</context>
<context>
    <name>OutlookStrip</name>
    <message>
        <source>%1 today, %2 in two weeks</source>
        <translation>%1 heute, %2 in zwei Wochen</translation>
    </message>
    <message>
        <source>No forecast before the first bath</source>
        <translation>Keine Vorhersage vor dem ersten Bad</translation>
    </message>
    <message>
        <source>Chance of dampness by day, %1</source>
        <translation>Wahrscheinlichkeit von Feuchte je Tag, %1</translation>
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
        <translation>Erwachsener beim Kind: %1</translation>
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
        <translation>Vorname, oder wie Sie heißen möchten</translation>
    </message>
    <message>
        <source>May stay empty.</source>
        <translation>Darf leer bleiben.</translation>
    </message>
    <message>
        <source>Birthday</source>
        <translation>Geburtstag</translation>
    </message>
    <message>
        <source>Year-month-day, for example 1990-04-23. It decides which limits count.</source>
        <translation>Jahr-Monat-Tag, zum Beispiel 1990-04-23. Danach richten sich die Grenzen.</translation>
    </message>
    <message>
        <source>That is no day that has been. Write it like 1990-04-23.</source>
        <translation>Das ist kein vergangener Tag. Schreiben Sie ihn wie 1990-04-23.</translation>
    </message>
    <message>
        <source>The adult beside the child</source>
        <translation>Der Erwachsene beim Kind</translation>
    </message>
    <message>
        <source>Children are treated only with medical advice and an adult beside them.</source>
        <translation>Kinder werden nur nach ärztlichem Rat und mit einem Erwachsenen daneben behandelt.</translation>
    </message>
</context>
<context>
    <name>Plan</name>
    <message>
        <source>Next bath: %1</source>
        <translation>Nächstes Bad: %1</translation>
    </message>
    <message>
        <source>%1, done</source>
        <translation>%1, erledigt</translation>
    </message>
    <message>
        <source>%1, planned</source>
        <translation>%1, geplant</translation>
    </message>
    <message numerus="yes">
        <source>The course runs %n day(s) past its four weeks.</source>
        <translation><numerusform>Die Kur läuft %n Tag über ihre vier Wochen hinaus.</numerusform><numerusform>Die Kur läuft %n Tage über ihre vier Wochen hinaus.</numerusform></translation>
    </message>
    <message>
        <source>Choose the course</source>
        <translation>Kur wählen</translation>
    </message>
    <message>
        <source>Course</source>
        <translation>Kur</translation>
    </message>
    <message>
        <source>Go on</source>
        <translation>Fortsetzen</translation>
    </message>
    <message>
        <source>Pause</source>
        <translation>Aussetzen</translation>
    </message>
    <message>
        <source>Limits</source>
        <translation>Grenzen</translation>
    </message>
    <message>
        <source>Limits stand here once a site is chosen.</source>
        <translation>Hier stehen die Grenzen, sobald eine Stelle gewählt ist.</translation>
    </message>
    <message>
        <source>Your birthday is not set, so the lower limits for children count.</source>
        <translation>Ihr Geburtstag fehlt, deshalb gelten die niedrigeren Grenzen für Kinder.</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>at most %1</source>
        <translation>höchstens %1</translation>
    </message>
    <message>
        <source>not used</source>
        <translation>nicht benutzt</translation>
    </message>
    <message>
        <source>Health questions</source>
        <translation>Gesundheitsfragen</translation>
    </message>
    <message>
        <source>To be answered</source>
        <translation>Zu beantworten</translation>
    </message>
    <message>
        <source>Something stands in the way</source>
        <translation>Etwas steht im Weg</translation>
    </message>
    <message>
        <source>Answered</source>
        <translation>Beantwortet</translation>
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
        <source>Batteries: about %n bath(s) left</source>
        <translation><numerusform>Batterien: noch etwa %n Bad</numerusform><numerusform>Batterien: noch etwa %n Bäder</numerusform></translation>
    </message>
    <message>
        <source>Reminders</source>
        <translation>Erinnerungen</translation>
    </message>
    <message>
        <source>Check-in %1, quiet %2 to %3</source>
        <translation>Eintrag %1, Ruhe %2 bis %3</translation>
    </message>
    <message>
        <source>Off</source>
        <translation>Aus</translation>
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
        <source>People</source>
        <translation>Personen</translation>
    </message>
    <message>
        <source>Me</source>
        <translation>Ich</translation>
    </message>
    <message>
        <source>Care sheet</source>
        <translation>Behandlungsblatt</translation>
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
        <source>As the phone</source>
        <translation>Wie das Telefon</translation>
    </message>
    <message>
        <source>Back-up, export and delete</source>
        <translation>Sichern, ausgeben und löschen</translation>
    </message>
    <message>
        <source>About and cautions</source>
        <translation>Über Firstdew und Warnhinweise</translation>
    </message>
    <message>
        <source>Version %1</source>
        <translation>Version %1</translation>
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
        <translation>Täglicher Eintrag</translation>
    </message>
    <message>
        <source>Baths</source>
        <translation>Bäder</translation>
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
        <source>As the phone</source>
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
        <translation>Größer</translation>
    </message>
    <message>
        <source>Largest</source>
        <translation>Am größten</translation>
    </message>
    <message>
        <source>Motion</source>
        <translation>Bewegung</translation>
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
    <name>SiteForm</name>
    <message>
        <source>One hand with one foot</source>
        <translation>Eine Hand mit einem Fuß</translation>
    </message>
</context>
<context>
    <name>SkinPage</name>
    <message>
        <source>Skin after a bath</source>
        <translation>Haut nach dem Bad</translation>
    </message>
    <message>
        <source>Burns or blisters: no bath there until a clinician has looked at it.</source>
        <translation>Verbrennung oder Blasen: dort kein Bad, bis es ärztlich angesehen wurde.</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Bemerkung</translation>
    </message>
    <message>
        <source>May stay empty.</source>
        <translation>Darf leer bleiben.</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Speichern</translation>
    </message>
</context>
<context>
    <name>Stepper</name>
    <message>
        <source>%1: earlier or less</source>
        <translation>%1: früher oder weniger</translation>
    </message>
    <message>
        <source>%1: later or more</source>
        <translation>%1: später oder mehr</translation>
    </message>
</context>
<context>
    <name>Today</name>
    <message>
        <source>Change person, now %1</source>
        <translation>Person wechseln, jetzt %1</translation>
    </message>
    <message>
        <source>Welcome to Firstdew</source>
        <translation>Willkommen bei Firstdew</translation>
    </message>
    <message>
        <source>Say where you treat and with which machine. It takes two minutes and can be left at any point.</source>
        <translation>Sagen Sie, wo und mit welchem Gerät Sie behandeln. Es dauert zwei Minuten und lässt sich jederzeit unterbrechen.</translation>
    </message>
    <message>
        <source>Set up</source>
        <translation>Einrichten</translation>
    </message>
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
    <name>WeighPage</name>
    <message>
        <source>Weighing</source>
        <translation>Wägung</translation>
    </message>
    <message>
        <source>Weigh a paper, hold it to the skin for five minutes, weigh it again.</source>
        <translation>Ein Papier wiegen, fünf Minuten auf die Haut legen, wieder wiegen.</translation>
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
        <translation>Nachher kann es nicht leichter sein; wiegen Sie noch einmal.</translation>
    </message>
    <message>
        <source>Minutes</source>
        <translation>Minuten</translation>
    </message>
    <message>
        <source>%1 mg in %2 minutes</source>
        <translation>%1 mg in %2 Minuten</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Speichern</translation>
    </message>
</context>
<context>
    <name>WhySheet</name>
    <message>
        <source>Why?</source>
        <translation>Warum?</translation>
    </message>
    <message numerus="yes">
        <source>Reckoned from %n dry spell(s) in your diary.</source>
        <translation><numerusform>Berechnet aus %n Trockenzeit in Ihrem Tagebuch.</numerusform><numerusform>Berechnet aus %n Trockenzeiten in Ihrem Tagebuch.</numerusform></translation>
    </message>
    <message>
        <source>A top-up counts as due when the chance of dampness reaches %1: %2.</source>
        <translation>Ein Auffrischen gilt als fällig, wenn die Wahrscheinlichkeit von Feuchte %1 erreicht: %2.</translation>
    </message>
    <message>
        <source>This is an estimate from your own notes, not a diagnosis. Your prescriber's word counts.</source>
        <translation>Das ist eine Schätzung aus Ihren Einträgen, keine Diagnose. Es gilt, was Ihre Praxis sagt.</translation>
    </message>
</context>
<context>
    <name>Words</name>
    <message>
        <source>Today</source>
        <translation>Heute</translation>
    </message>
    <message>
        <source>Bath</source>
        <translation>Bad</translation>
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
        <source>Hand and foot</source>
        <translation>Hand und Fuß</translation>
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
        <source>%1: %2</source>
        <translation>%1: %2</translation>
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
        <source>Hand bath</source>
        <translation>Handbad</translation>
    </message>
    <message>
        <source>Foot bath</source>
        <translation>Fußbad</translation>
    </message>
    <message>
        <source>Hand and foot bath</source>
        <translation>Hand- und Fußbad</translation>
    </message>
    <message>
        <source>Pad session</source>
        <translation>Kissensitzung</translation>
    </message>
    <message>
        <source>Not started</source>
        <translation>Nicht begonnen</translation>
    </message>
    <message>
        <source>First course</source>
        <translation>Erste Kur</translation>
    </message>
    <message>
        <source>Review</source>
        <translation>Kontrolle</translation>
    </message>
    <message>
        <source>Keeping dry</source>
        <translation>Bleibt trocken</translation>
    </message>
    <message>
        <source>First dew</source>
        <translation>Erster Tau</translation>
    </message>
    <message>
        <source>Sweating again</source>
        <translation>Schwitzt wieder</translation>
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
        <source>Dryness</source>
        <translation>Trockenheit</translation>
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
        <source>Seven baths in four weeks</source>
        <translation>Sieben Bäder in vier Wochen</translation>
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
        <translation>Haben Sie einen Herzschrittmacher, einen Defibrillator oder ein anderes Implantat mit Strom?</translation>
    </message>
    <message>
        <source>Do you have metal in a bone or joint?</source>
        <translation>Haben Sie Metall in einem Knochen oder Gelenk?</translation>
    </message>
    <message>
        <source>Do you have a coil (intrauterine device) with metal in it?</source>
        <translation>Haben Sie eine Spirale mit Metall?</translation>
    </message>
    <message>
        <source>Do you have a heart rhythm disorder or epilepsy?</source>
        <translation>Haben Sie eine Herzrhythmusstörung oder Epilepsie?</translation>
    </message>
    <message>
        <source>Do you have a tumour or a blood clot at present?</source>
        <translation>Haben Sie zurzeit einen Tumor oder ein Blutgerinnsel?</translation>
    </message>
    <message>
        <source>Have you lost feeling in the skin, or do you have a nerve disease there?</source>
        <translation>Haben Sie das Gefühl in der Haut verloren oder dort ein Nervenleiden?</translation>
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
        <translation>Schwangerschaft</translation>
    </message>
    <message>
        <source>a powered implant</source>
        <translation>Implantat mit Strom</translation>
    </message>
    <message>
        <source>a metal implant</source>
        <translation>Implantat aus Metall</translation>
    </message>
    <message>
        <source>a coil with metal</source>
        <translation>Spirale mit Metall</translation>
    </message>
    <message>
        <source>a heart rhythm disorder or epilepsy</source>
        <translation>Herzrhythmusstörung oder Epilepsie</translation>
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
        <translation>Alter unter fünf</translation>
    </message>
    <message>
        <source>an age under eighteen</source>
        <translation>Alter unter achtzehn</translation>
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
        <source>Current per area of skin</source>
        <translation>Strom je Hautfläche</translation>
    </message>
    <message>
        <source>Not at the armpits</source>
        <translation>Nicht an den Achseln</translation>
    </message>
    <message>
        <source>Your machine does not have it</source>
        <translation>Ihr Gerät hat ihn nicht</translation>
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
        <translation>Ein Auffrischen ist fällig</translation>
    </message>
    <message>
        <source>Keep an eye on it</source>
        <translation>Im Auge behalten</translation>
    </message>
    <message>
        <source>Time for a new course</source>
        <translation>Zeit für eine neue Kur</translation>
    </message>
    <message>
        <source>The course is done</source>
        <translation>Die Kur ist geschafft</translation>
    </message>
    <message>
        <source>Talk to your prescriber</source>
        <translation>Sprechen Sie mit Ihrer Praxis</translation>
    </message>
    <message>
        <source>No bath for now</source>
        <translation>Vorerst kein Bad</translation>
    </message>
    <message>
        <source>No first course has been set up yet.</source>
        <translation>Es ist noch keine erste Kur eingerichtet.</translation>
    </message>
    <message>
        <source>Bath %1 of %2 of the first course is planned for today.</source>
        <translation>Bad %1 von %2 der ersten Kur ist für heute geplant.</translation>
    </message>
    <message>
        <source>Bath %1 of %2 of the first course is planned for %3.</source>
        <translation>Bad %1 von %2 der ersten Kur ist geplant: %3.</translation>
    </message>
    <message numerus="yes">
        <source>The course runs %n day(s) past its four weeks.</source>
        <translation><numerusform>Die Kur läuft %n Tag über ihre vier Wochen hinaus.</numerusform><numerusform>Die Kur läuft %n Tage über ihre vier Wochen hinaus.</numerusform></translation>
    </message>
    <message>
        <source>The course no longer fits its time.</source>
        <translation>Die Kur passt nicht mehr in ihre Zeit.</translation>
    </message>
    <message numerus="yes">
        <source>All %n bath(s) of the course are done.</source>
        <translation><numerusform>%n Bad der Kur ist erledigt, keines fehlt.</numerusform><numerusform>Alle %n Bäder der Kur sind erledigt.</numerusform></translation>
    </message>
    <message>
        <source>Today's bath is done.</source>
        <translation>Das heutige Bad ist erledigt.</translation>
    </message>
    <message>
        <source>You noted dampness at rest on %1.</source>
        <translation>Feuchte in Ruhe notiert: %1.</translation>
    </message>
    <message>
        <source>You noted dampness on %1, though the day may explain it.</source>
        <translation>Feuchte notiert (%1), doch der Tag kann sie erklären.</translation>
    </message>
    <message>
        <source>You noted dampness twice in a row, last on %1.</source>
        <translation>Zweimal nacheinander Feuchte notiert, zuletzt %1.</translation>
    </message>
    <message>
        <source>You noted full sweating at rest on %1.</source>
        <translation>Volles Schwitzen in Ruhe notiert: %1.</translation>
    </message>
    <message>
        <source>Dampness has probably begun (%1).</source>
        <translation>Die Feuchte hat wahrscheinlich begonnen (%1).</translation>
    </message>
    <message>
        <source>You usually stay dry %1 to %2 days. Today is day %3.</source>
        <translation>Sie bleiben meist %1 bis %2 Tage trocken. Heute ist Tag %3.</translation>
    </message>
    <message>
        <source>You usually stay dry %1 to %2 days.</source>
        <translation>Sie bleiben meist %1 bis %2 Tage trocken.</translation>
    </message>
    <message>
        <source>By %1 the chance of dampness reached %2.</source>
        <translation>Die Wahrscheinlichkeit von Feuchte hat %2 erreicht (%1).</translation>
    </message>
    <message numerus="yes">
        <source>There has been no check-in for %n day(s).</source>
        <translation><numerusform>Seit %n Tag gab es keinen Eintrag.</numerusform><numerusform>Seit %n Tagen gab es keinen Eintrag.</numerusform></translation>
    </message>
    <message>
        <source>You answered yes to %1. No bath until a clinician has cleared it.</source>
        <translation>Sie haben mit Ja geantwortet: %1. Kein Bad, bis es ärztlich erlaubt ist.</translation>
    </message>
    <message>
        <source>Because of %1, ask a clinician first and note who said yes.</source>
        <translation>Wegen: %1. Erst ärztlich fragen und notieren, wer ja gesagt hat.</translation>
    </message>
    <message numerus="yes">
        <source>The health questions were last answered %n day(s) ago.</source>
        <translation><numerusform>Die Gesundheitsfragen wurden vor %n Tag beantwortet.</numerusform><numerusform>Die Gesundheitsfragen wurden vor %n Tagen beantwortet.</numerusform></translation>
    </message>
    <message>
        <source>The health questions have not been answered yet.</source>
        <translation>Die Gesundheitsfragen sind noch nicht beantwortet.</translation>
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
        <source>You chose not to top up this time.</source>
        <translation>Sie wollten diesmal nicht auffrischen.</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
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
        <translation>%1 mA</translation>
    </message>
</context>
</TS>
