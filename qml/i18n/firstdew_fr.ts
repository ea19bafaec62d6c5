<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="fr_FR">
<context>
    <name>About</name>
    <message>
        <source>About and cautions</source>
        <translation>À propos et précautions</translation>
    </message>
    <message>
        <source>Privacy</source>
        <translation>Vie privée</translation>
    </message>
    <message>
        <source>No account, no network. Nothing leaves this phone unless you share it.</source>
        <translation>Ni compte, ni réseau. Rien ne quitte ce téléphone sans que vous le partagiez.</translation>
    </message>
    <message>
        <source>Firstdew %1</source>
        <translation>Firstdew %1</translation>
    </message>
    <message>
        <source>Free software under the Apache licence 2.0. Typefaces Inter and Noto Sans Arabic under the SIL Open Font Licence 1.1.</source>
        <translation>Logiciel libre sous licence Apache 2.0. Polices Inter et Noto Sans Arabic sous licence SIL Open Font 1.1.</translation>
    </message>
</context>
<context>
    <name>ActionButton</name>
    <message>
        <source>Not possible yet</source>
        <translation>Pas encore possible</translation>
    </message>
</context>
<context>
    <name>AppLocked</name>
    <message>
        <source>Confirm that it is you</source>
        <translation>Confirmez que c’est bien vous</translation>
    </message>
    <message>
        <source>Firstdew is locked</source>
        <translation>Firstdew est verrouillé</translation>
    </message>
    <message>
        <source>Firstdew: switch the app lock on or off</source>
        <translation>Firstdew&#xa0;: activer ou désactiver le verrouillage</translation>
    </message>
    <message>
        <source>Open Firstdew</source>
        <translation>Ouvrir Firstdew</translation>
    </message>
    <message>
        <source>Firstdew asks for this phone&apos;s lock before the app lock is switched on or off.</source>
        <translation>Firstdew demande le verrouillage de ce téléphone avant d’activer ou de désactiver celui de l’application.</translation>
    </message>
    <message>
        <source>Your diary opens once this phone&apos;s lock confirms that it is you.</source>
        <translation>Votre journal s’ouvre dès que le verrouillage de ce téléphone confirme que c’est bien vous.</translation>
    </message>
    <message>
        <source>Checking …</source>
        <translation>Vérification…</translation>
    </message>
    <message>
        <source>That was not right. Try again.</source>
        <translation>Ce n’est pas correct. Réessayez.</translation>
    </message>
    <message>
        <source>Hide what I type</source>
        <translation>Masquer ce que j’écris</translation>
    </message>
    <message>
        <source>Show what I type</source>
        <translation>Montrer ce que j’écris</translation>
    </message>
    <message>
        <source>This phone did not confirm you. Try again.</source>
        <translation>Ce téléphone ne vous a pas reconnu. Réessayez.</translation>
    </message>
    <message>
        <source>Confirm</source>
        <translation>Confirmer</translation>
    </message>
    <message>
        <source>Unlock</source>
        <translation>Déverrouiller</translation>
    </message>
</context>
<context>
    <name>AsTable</name>
    <message>
        <source>As a table</source>
        <translation>En tableau</translation>
    </message>
</context>
<context>
    <name>AwayPage</name>
    <message>
        <source>Days away</source>
        <translation>Absences</translation>
    </message>
    <message>
        <source>No session is planned on these days. The course moves around them. If a top-up would be due then, it is offered before you leave.</source>
        <translation>Aucune séance n’est prévue ces jours‑là. La cure se décale en conséquence. Si une séance d’entretien tombe dans cette période, elle est proposée avant votre départ.</translation>
    </message>
    <message>
        <source>From</source>
        <translation>Du</translation>
    </message>
    <message>
        <source>To</source>
        <translation>Au</translation>
    </message>
    <message>
        <source>Add</source>
        <translation>Ajouter</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 – %2</translation>
    </message>
    <message>
        <source>Remove %1 to %2</source>
        <translation>Supprimer %1 – %2</translation>
    </message>
    <message>
        <source>Taking the kit along</source>
        <translation>Emporter le matériel</translation>
    </message>
</context>
<context>
    <name>BackButton</name>
    <message>
        <source>Back</source>
        <translation>Retour</translation>
    </message>
</context>
<context>
    <name>Bath</name>
    <message>
        <source>Before a session, Firstdew has to know where you treat, with which machine, and your answers to the health questions.</source>
        <translation>Avant une séance, Firstdew doit savoir où vous traitez, avec quel appareil, et connaître vos réponses aux questions de santé.</translation>
    </message>
</context>
<context>
    <name>BathAfter</name>
    <message>
        <source>Done</source>
        <translation>Terminé</translation>
    </message>
    <message>
        <source>Stopped</source>
        <translation>Séance arrêtée</translation>
    </message>
    <message>
        <source>Current at zero, machine off, then take the pads off.</source>
        <translation>Courant à zéro, appareil éteint, puis retirez les électrodes.</translation>
    </message>
    <message>
        <source>Current at zero, machine off. Then take your hands or feet out.</source>
        <translation>Courant à zéro, appareil éteint, puis sortez les mains ou les pieds de l’eau.</translation>
    </message>
    <message>
        <source>Dry your skin and the kit completely.</source>
        <translation>Séchez complètement la peau et le matériel.</translation>
    </message>
    <message>
        <source>Take the batteries out.</source>
        <translation>Retirez les piles.</translation>
    </message>
    <message>
        <source>Look at the skin tomorrow.</source>
        <translation>Regardez la peau demain.</translation>
    </message>
    <message>
        <source>The batteries are nearly empty.</source>
        <translation>Les piles sont presque vides.</translation>
    </message>
    <message>
        <source>How did it feel?</source>
        <translation>Qu’avez‑vous ressenti&#xa0;?</translation>
    </message>
    <message>
        <source>The current would not rise</source>
        <translation>Le courant ne montait pas</translation>
    </message>
    <message>
        <source>Highest comfortable reading</source>
        <translation>Plus haute valeur confortable</translation>
    </message>
    <message>
        <source>Not entered</source>
        <translation>Non saisie</translation>
    </message>
    <message>
        <source>Skin now</source>
        <translation>Peau maintenant</translation>
    </message>
    <message>
        <source>Irritated skin settles with rest and plain moisturiser. A mild hydrocortisone cream can help: ask a pharmacist.</source>
        <translation>Une peau irritée se calme avec du repos et une crème hydratante simple. Une crème douce à l’hydrocortisone peut aider&#xa0;: demandez conseil en pharmacie.</translation>
    </message>
    <message>
        <source>No further session there until a clinician has seen it. Seek help if it is painful or large.</source>
        <translation>Aucune autre séance sur cette zone avant qu’un professionnel de santé l’ait vue. Demandez de l’aide si c’est douloureux ou étendu.</translation>
    </message>
    <message>
        <source>Note (optional)</source>
        <translation>Remarque (facultatif)</translation>
    </message>
    <message>
        <source>Did somebody teach you this session?</source>
        <translation>Cette séance a‑t‑elle été encadrée par quelqu’un&#xa0;?</translation>
    </message>
    <message>
        <source>Mark it</source>
        <translation>Le noter</translation>
    </message>
    <message>
        <source>Look at your skin and say how it is.</source>
        <translation>Regardez votre peau et dites comment elle est.</translation>
    </message>
    <message>
        <source>Save in the diary</source>
        <translation>Garder dans le journal</translation>
    </message>
</context>
<context>
    <name>BathAsLast</name>
    <message>
        <source>Next: %1</source>
        <translation>Ensuite&#xa0;: %1</translation>
    </message>
    <message>
        <source>Change</source>
        <translation>Modifier</translation>
    </message>
    <message>
        <source>Adult beside the child: %1</source>
        <translation>Adulte auprès de l’enfant&#xa0;: %1</translation>
    </message>
    <message>
        <source>Set up, then switch on</source>
        <translation>Installer, puis allumer</translation>
    </message>
    <message>
        <source>The batteries are nearly empty. Have new ones at hand.</source>
        <translation>Les piles sont presque vides. Gardez‑en des neuves à portée de main.</translation>
    </message>
    <message>
        <source>Practice without current</source>
        <translation>Entraînement sans courant</translation>
    </message>
    <message>
        <source>True</source>
        <translation>C’est vrai</translation>
    </message>
    <message>
        <source>Not quite</source>
        <translation>Pas tout à fait</translation>
    </message>
    <message>
        <source>Continue</source>
        <translation>Continuer</translation>
    </message>
    <message>
        <source>Enough for today</source>
        <translation>Assez pour aujourd’hui</translation>
    </message>
</context>
<context>
    <name>BathBlocked</name>
    <message>
        <source>No session now</source>
        <translation>Pas de séance maintenant</translation>
    </message>
    <message>
        <source>Ask a clinician first</source>
        <translation>Demandez d’abord à un professionnel de santé</translation>
    </message>
    <message>
        <source>Because of this, there must be no session until a clinician has approved treatment:</source>
        <translation>Pour cette raison, aucune séance ne doit avoir lieu avant l’autorisation d’un professionnel de santé&#xa0;:</translation>
    </message>
    <message>
        <source>Go on only with a clinician&apos;s word on this:</source>
        <translation>Ne continuez qu’avec l’accord d’un professionnel de santé sur ce point&#xa0;:</translation>
    </message>
    <message>
        <source>What is safe now: leave the machine off. Nothing is lost by waiting.</source>
        <translation>Ce qui est sûr maintenant&#xa0;: laisser l’appareil éteint. Attendre ne fait rien perdre.</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Retour</translation>
    </message>
    <message>
        <source>A clinician has approved it</source>
        <translation>Un professionnel de santé l’a autorisé</translation>
    </message>
    <message>
        <source>Only if a doctor or nurse who knows of this and of your treatment said yes. The name goes onto the summary.</source>
        <translation>Seulement si un médecin, un infirmier ou une infirmière, au courant de ce point et de votre traitement, a dit oui. Le nom figurera dans la synthèse.</translation>
    </message>
    <message>
        <source>Who approved it</source>
        <translation>Qui l’a autorisé</translation>
    </message>
    <message>
        <source>Record and go on</source>
        <translation>Noter et continuer</translation>
    </message>
</context>
<context>
    <name>BathChoose</name>
    <message>
        <source>Where</source>
        <translation>Où</translation>
    </message>
    <message>
        <source>Current</source>
        <translation>Courant</translation>
    </message>
    <message>
        <source>Who can tap the phone</source>
        <translation>Qui peut toucher le téléphone</translation>
    </message>
    <message>
        <source>Which side first</source>
        <translation>Quel côté d’abord</translation>
    </message>
    <message>
        <source>Right side</source>
        <translation>Côté droit</translation>
    </message>
    <message>
        <source>Left side</source>
        <translation>Côté gauche</translation>
    </message>
    <message>
        <source>Adult beside the child: %1</source>
        <translation>Adulte auprès de l’enfant&#xa0;: %1</translation>
    </message>
    <message>
        <source>Practice without current</source>
        <translation>Entraînement sans courant</translation>
    </message>
    <message>
        <source>Continue</source>
        <translation>Continuer</translation>
    </message>
    <message>
        <source>Enough for today</source>
        <translation>Assez pour aujourd’hui</translation>
    </message>
</context>
<context>
    <name>BathExits</name>
    <message>
        <source>Stop: a tap anywhere</source>
        <translation>Stop&#xa0;: touchez n’importe où</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Stop</translation>
    </message>
    <message>
        <source>It is unpleasant</source>
        <translation>C’est désagréable</translation>
    </message>
    <message>
        <source>A tap anywhere stops.</source>
        <translation>Toucher l’écran n’importe où arrête tout.</translation>
    </message>
</context>
<context>
    <name>BathMeanwhile</name>
    <message>
        <source>Welcome back</source>
        <translation>Vous revoilà</translation>
    </message>
    <message>
        <source>The session was interrupted: %1. The current may still be flowing.</source>
        <translation>La séance a été interrompue&#xa0;: %1. Le courant passe peut-être encore.</translation>
    </message>
    <message>
        <source>What did the machine do meanwhile?</source>
        <translation>Qu’a fait l’appareil entre-temps&#xa0;?</translation>
    </message>
    <message>
        <source>I switched it off</source>
        <translation>Je l’ai éteint</translation>
    </message>
    <message>
        <source>I took hands or feet out</source>
        <translation>J’ai sorti les mains ou les pieds</translation>
    </message>
    <message>
        <source>I do not know</source>
        <translation>Je ne sais pas</translation>
    </message>
    <message>
        <source>If you are unsure: machine off now. Switched off less than ten minutes ago, the session goes on; otherwise it starts again or ends, and what you did is kept.</source>
        <translation>En cas de doute&#xa0;: éteignez l’appareil maintenant. S’il a été éteint il y a moins de dix minutes, la séance continue&#xa0;; sinon, elle recommence ou se termine, et ce que vous avez fait est gardé.</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Stop</translation>
    </message>
</context>
<context>
    <name>BathMeter</name>
    <message>
        <source>Aim %1</source>
        <translation>Visez %1</translation>
    </message>
    <message>
        <source>Limit %1</source>
        <translation>Limite %1</translation>
    </message>
    <message>
        <source>Meter: %1</source>
        <translation>Afficheur&#xa0;: %1</translation>
    </message>
    <message>
        <source>Practice: enter any number</source>
        <translation>Entraînement&#xa0;: saisissez un nombre quelconque</translation>
    </message>
    <message>
        <source>Meter shows less</source>
        <translation>L’afficheur indique moins</translation>
    </message>
    <message>
        <source>Enter meter reading</source>
        <translation>Saisir la valeur affichée</translation>
    </message>
    <message>
        <source>Enter the meter reading</source>
        <translation>Saisissez la valeur affichée</translation>
    </message>
    <message>
        <source>Enter the meter reading, now %1</source>
        <translation>Saisissez la valeur affichée, actuellement %1</translation>
    </message>
    <message>
        <source>Meter shows more</source>
        <translation>L’afficheur indique plus</translation>
    </message>
    <message>
        <source>Meter reading, mA</source>
        <translation>Afficheur, mA</translation>
    </message>
    <message>
        <source>Above the limit of %1</source>
        <translation>Au‑dessus de la limite de %1</translation>
    </message>
    <message>
        <source>Delete</source>
        <translation>Effacer</translation>
    </message>
    <message>
        <source>Enter</source>
        <translation>Valider</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Stop</translation>
    </message>
</context>
<context>
    <name>BathPracticeOver</name>
    <message>
        <source>That was practice</source>
        <translation>C’était un entraînement</translation>
    </message>
    <message>
        <source>Nothing of it was recorded.</source>
        <translation>Rien n’a été enregistré.</translation>
    </message>
    <message>
        <source>After a real session you dry your skin and the kit, say how it felt, and look at your skin.</source>
        <translation>Après une vraie séance, vous séchez la peau et le matériel, dites comment c’était et regardez votre peau.</translation>
    </message>
    <message>
        <source>Practise again</source>
        <translation>S’entraîner encore</translation>
    </message>
    <message>
        <source>Leave practice</source>
        <translation>Quitter l’entraînement</translation>
    </message>
</context>
<context>
    <name>BathPracticeStart</name>
    <message>
        <source>Practice</source>
        <translation>Entraînement</translation>
    </message>
    <message>
        <source>Go through a whole session with the machine off: every step, picture and spoken word. Nothing is recorded.</source>
        <translation>Parcourez une séance entière, appareil éteint&#xa0;: chaque étape, chaque image, chaque annonce. Rien n’est enregistré.</translation>
    </message>
    <message numerus="yes">
        <source>What takes minutes takes %n second(s) here.</source>
        <translation>
            <numerusform>Ce qui dure des minutes dure ici %n seconde.</numerusform>
            <numerusform>Ce qui dure des minutes dure ici %n secondes.</numerusform>
        </translation>
    </message>
    <message>
        <source>Leave the machine off the whole time.</source>
        <translation>Laissez l’appareil éteint tout le temps.</translation>
    </message>
    <message>
        <source>Where</source>
        <translation>Où</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Retour</translation>
    </message>
    <message>
        <source>Begin practice</source>
        <translation>Commencer l’entraînement</translation>
    </message>
</context>
<context>
    <name>BathPrepare</name>
    <message>
        <source>Prepare: %1</source>
        <translation>Préparation&#xa0;: %1</translation>
    </message>
    <message>
        <source>All checked</source>
        <translation>Tout est vérifié</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 sur %2</translation>
    </message>
    <message>
        <source>No</source>
        <translation>Non</translation>
    </message>
    <message>
        <source>About 12 hours ago</source>
        <translation>Il y a environ 12 heures</translation>
    </message>
    <message>
        <source>Within a few hours</source>
        <translation>Il y a quelques heures</translation>
    </message>
    <message>
        <source>Two days ago</source>
        <translation>Il y a deux jours</translation>
    </message>
    <message>
        <source>Yesterday</source>
        <translation>Hier</translation>
    </message>
    <message>
        <source>Today</source>
        <translation>Aujourd’hui</translation>
    </message>
    <message>
        <source>Yes</source>
        <translation>Oui</translation>
    </message>
    <message>
        <source>You raise and lower with the remote control. While your hands are in, any key or a tap anywhere on the screen, with elbow or nose, stops. For the swap: meter at zero, hands out, dry them, swap, tap. The phone waits. It cannot see the current: watch the meter yourself.</source>
        <translation>Vous montez et baissez le courant avec la télécommande. Tant que vos mains sont dans l’eau, n’importe quelle touche, ou l’écran touché n’importe où du coude ou du nez, arrête la séance. Pour l’inversion&#xa0;: afficheur à zéro, mains hors de l’eau, séchez‑les, inversez, touchez l’écran. Le téléphone attend. Il ne voit pas le courant&#xa0;: surveillez vous-même l’afficheur.</translation>
    </message>
    <message>
        <source>A soft sound runs through the session. If it stops, turn the current to zero and switch the machine off.</source>
        <translation>Un léger son accompagne toute la séance. S’il s’arrête, ramenez le courant à zéro et éteignez l’appareil.</translation>
    </message>
    <message>
        <source>The batteries are nearly empty. Have new ones at hand.</source>
        <translation>Les piles sont presque vides. Gardez‑en des neuves à portée de main.</translation>
    </message>
    <message>
        <source>Test the volume</source>
        <translation>Tester le volume</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Retour</translation>
    </message>
    <message>
        <source>Next</source>
        <translation>Suivant</translation>
    </message>
    <message>
        <source>Checked</source>
        <translation>Vérifié</translation>
    </message>
    <message>
        <source>Begin</source>
        <translation>Commencer</translation>
    </message>
    <message>
        <source>%1: antiperspirant with aluminium in the last 24 hours?</source>
        <translation>%1&#xa0;: antitranspirant à l’aluminium dans les dernières 24 heures&#xa0;?</translation>
    </message>
    <message>
        <source>%1: shaved in the last three days?</source>
        <translation>%1&#xa0;: rasage dans les trois derniers jours&#xa0;?</translation>
    </message>
    <message>
        <source>%1: small cuts on the skin?</source>
        <translation>%1&#xa0;: petites coupures sur la peau&#xa0;?</translation>
    </message>
</context>
<context>
    <name>BathRun</name>
    <message>
        <source>Too high. Turn it down on the machine now.</source>
        <translation>Trop haut. Baissez maintenant sur l’appareil.</translation>
    </message>
    <message>
        <source>Down</source>
        <translation>Baissez</translation>
    </message>
    <message>
        <source>Down to %1 or less. Then enter what the meter shows.</source>
        <translation>Baissez à %1 ou moins. Puis saisissez ce qu’indique l’afficheur.</translation>
    </message>
    <message>
        <source>Next: %1</source>
        <translation>Ensuite&#xa0;: %1</translation>
    </message>
    <message>
        <source>You cannot hear Firstdew right now. Watch the screen, or stop.</source>
        <translation>Vous n’entendez pas Firstdew en ce moment. Regardez l’écran, ou arrêtez.</translation>
    </message>
    <message>
        <source>The last steps could not be saved yet. The session goes on; it is tried again.</source>
        <translation>Les dernières étapes n’ont pas encore pu être enregistrées. La séance continue&#xa0;; un nouvel essai est en cours.</translation>
    </message>
    <message>
        <source>Still %1</source>
        <translation>Toujours %1</translation>
    </message>
    <message>
        <source>That was a slip: go on (%1)</source>
        <translation>Appui involontaire&#xa0;: continuer (%1)</translation>
    </message>
</context>
<context>
    <name>BathScreening</name>
    <message>
        <source>Health questions</source>
        <translation>Questions de santé</translation>
    </message>
    <message>
        <source>Has anything changed?</source>
        <translation>Quelque chose a‑t‑il changé&#xa0;?</translation>
    </message>
    <message>
        <source>Answer each question for the person treated, as things are today.</source>
        <translation>Répondez à chaque question pour la personne traitée, selon sa situation d’aujourd’hui.</translation>
    </message>
    <message>
        <source>Since you last answered: pregnancy, implants, illness, skin, medicines for the heart, or anything else on the list?</source>
        <translation>Depuis vos dernières réponses&#xa0;: grossesse, implants, maladie, peau, médicaments pour le cœur, ou autre chose de la liste&#xa0;?</translation>
    </message>
    <message>
        <source>The list</source>
        <translation>La liste</translation>
    </message>
    <message>
        <source>Something has changed</source>
        <translation>Quelque chose a changé</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Retour</translation>
    </message>
    <message>
        <source>Nothing has changed</source>
        <translation>Rien n’a changé</translation>
    </message>
    <message>
        <source>That is all</source>
        <translation>C’est tout</translation>
    </message>
</context>
<context>
    <name>BotherPage</name>
    <message>
        <source>How much the sweating bothers you</source>
        <translation>La gêne due à la transpiration</translation>
    </message>
    <message>
        <source>Over the last week, which comes nearest?</source>
        <translation>Sur la dernière semaine, quelle phrase correspond le mieux&#xa0;?</translation>
    </message>
    <message>
        <source>I hardly notice it, and it never gets in my way</source>
        <translation>Je la remarque à peine, et elle ne me gêne jamais</translation>
    </message>
    <message>
        <source>I can live with it, and now and then it gets in my way</source>
        <translation>Je vis avec, et elle me gêne de temps en temps</translation>
    </message>
    <message>
        <source>I can barely live with it, and it often gets in my way</source>
        <translation>J’ai du mal à vivre avec, et elle me gêne souvent</translation>
    </message>
    <message>
        <source>I cannot live with it; it is always in my way</source>
        <translation>Je ne peux pas vivre avec&#xa0;; elle me gêne tout le temps</translation>
    </message>
</context>
<context>
    <name>BottomBar</name>
    <message>
        <source>Places</source>
        <translation>Rubriques</translation>
    </message>
</context>
<context>
    <name>CareSheetPage</name>
    <message>
        <source>Care sheet</source>
        <translation>Fiche de soins</translation>
    </message>
    <message>
        <source>From %1, %2</source>
        <translation>De %1, %2</translation>
    </message>
    <message>
        <source>In use for: %1</source>
        <translation>En vigueur pour&#xa0;: %1</translation>
    </message>
    <message>
        <source>Show as a code to scan</source>
        <translation>Afficher un code à scanner</translation>
    </message>
    <message>
        <source>The care sheet as a QR code</source>
        <translation>La fiche de soins en code QR</translation>
    </message>
    <message>
        <source>It holds the whole care sheet. Show it only to those who treat you.</source>
        <translation>Il contient toute la fiche de soins. Ne le montrez qu’aux personnes qui vous soignent.</translation>
    </message>
    <message>
        <source>Add a care sheet</source>
        <translation>Ajouter une fiche de soins</translation>
    </message>
    <message>
        <source>From your prescriber: the code on paper or on another phone, a picture of it, or a file. No care sheet can raise the usual limits.</source>
        <translation>De votre médecin&#xa0;: le code sur papier ou sur un autre téléphone, une photo du code, ou un fichier. Aucune fiche de soins ne peut relever les limites habituelles.</translation>
    </message>
    <message>
        <source>Stop the camera</source>
        <translation>Arrêter la caméra</translation>
    </message>
    <message>
        <source>Scan the code</source>
        <translation>Scanner le code</translation>
    </message>
    <message>
        <source>What the camera sees. Hold the code in the middle.</source>
        <translation>Ce que voit la caméra. Gardez le code au milieu.</translation>
    </message>
    <message>
        <source>The camera cannot be used. Take a picture of the code and choose that.</source>
        <translation>La caméra n’est pas utilisable. Prenez le code en photo et choisissez cette photo.</translation>
    </message>
    <message>
        <source>This care sheet changes nothing: you already have it, or a newer one is in use.</source>
        <translation>Cette fiche de soins ne change rien&#xa0;: vous l’avez déjà, ou une plus récente est en vigueur.</translation>
    </message>
    <message>
        <source>Allows more than now. %1</source>
        <translation>Autorise plus que maintenant. %1</translation>
    </message>
    <message>
        <source>My prescriber told me that more is allowed from now on</source>
        <translation>Mon médecin m’a dit que davantage est autorisé désormais</translation>
    </message>
    <message>
        <source>Use this care sheet</source>
        <translation>Utiliser cette fiche</translation>
    </message>
</context>
<context>
    <name>CasePage</name>
    <message>
        <source>Name not given</source>
        <translation>Nom non indiqué</translation>
    </message>
    <message>
        <source>Choose somebody from the caseload.</source>
        <translation>Choisissez quelqu’un parmi les personnes suivies.</translation>
    </message>
</context>
<context>
    <name>CaseRow</name>
    <message>
        <source>Name not given</source>
        <translation>Nom non indiqué</translation>
    </message>
</context>
<context>
    <name>CaseText</name>
    <message>
        <source>%1: blister or burn since %2</source>
        <translation>%1&#xa0;: cloque ou brûlure depuis le %2</translation>
    </message>
    <message>
        <source>%1: a health answer stops sessions since %2</source>
        <translation>%1&#xa0;: séances bloquées depuis le %2 (questions de santé)</translation>
    </message>
    <message>
        <source>%1: stopped in the first course on %2</source>
        <translation>%1&#xa0;: arrêt pendant la cure initiale le %2</translation>
    </message>
    <message>
        <source>%1: the course did not help, last session %2</source>
        <translation>%1&#xa0;: la cure n’a pas aidé, dernière séance le %2</translation>
    </message>
    <message>
        <source>%1: top-up overdue since %2</source>
        <translation>%1&#xa0;: séance d’entretien en retard depuis le %2</translation>
    </message>
    <message>
        <source>Silent since %1</source>
        <translation>Sans nouvelles depuis le %1</translation>
    </message>
    <message>
        <source>Doing well, last entry %1</source>
        <translation>Va bien, dernière entrée le %1</translation>
    </message>
    <message>
        <source>This is another kind of file, or a back-up. Type the passphrase below if it is a back-up.</source>
        <translation>C’est un autre type de fichier, ou une sauvegarde. Si c’est une sauvegarde, saisissez sa phrase secrète ci‑dessous.</translation>
    </message>
    <message>
        <source>The passphrase does not open it. Ask its owner for the right one.</source>
        <translation>La phrase secrète ne l’ouvre pas. Demandez la bonne à la personne.</translation>
    </message>
    <message>
        <source>This folder cannot be read now. Look whether it is still there, or choose another one.</source>
        <translation>Ce dossier ne peut pas être lu maintenant. Vérifiez qu’il existe encore, ou choisissez‑en un autre.</translation>
    </message>
    <message>
        <source>This folder holds too many files. Put the records into a folder of their own.</source>
        <translation>Ce dossier contient trop de fichiers. Mettez les historiques dans un dossier à part.</translation>
    </message>
    <message>
        <source>It is damaged, or came over in part. Ask its owner to send it again.</source>
        <translation>Il est abîmé ou incomplet. Demandez à la personne de l’envoyer à nouveau.</translation>
    </message>
    <message>
        <source>%1: dry spells shorter since about %2</source>
        <translation>%1&#xa0;: périodes sèches plus courtes depuis le %2 environ</translation>
    </message>
</context>
<context>
    <name>CaseView</name>
    <message>
        <source>Make a care sheet</source>
        <translation>Rédiger une fiche de soins</translation>
    </message>
    <message>
        <source>Share the summary</source>
        <translation>Partager la synthèse</translation>
    </message>
    <message>
        <source>The summary of %1</source>
        <translation>La synthèse de %1</translation>
    </message>
</context>
<context>
    <name>Caseload</name>
    <message>
        <source>Caseload</source>
        <translation>Personnes suivies</translation>
    </message>
    <message>
        <source>Reading file %1 of %2</source>
        <translation>Lecture du fichier %1 sur %2</translation>
    </message>
    <message>
        <source>%1 of %2 need a call.</source>
        <translation>À appeler&#xa0;: %1 sur %2.</translation>
    </message>
    <message>
        <source>All are doing well.</source>
        <translation>Tout le monde va bien.</translation>
    </message>
    <message numerus="yes">
        <source>%n file(s) could not be read. See the end of the list.</source>
        <translation>
            <numerusform>%n fichier n’a pas pu être lu. Voir la fin de la liste.</numerusform>
            <numerusform>%n fichiers n’ont pas pu être lus. Voir la fin de la liste.</numerusform>
        </translation>
    </message>
    <message>
        <source>There are no records in these files.</source>
        <translation>Ces fichiers ne contiennent aucun historique.</translation>
    </message>
    <message>
        <source>Ask the people you teach for their record or back-up, and put the files into one folder. They are read here and stay as they are.</source>
        <translation>Demandez aux personnes que vous formez leur historique ou leur sauvegarde, et mettez les fichiers dans un même dossier. Ils sont lus ici et restent tels quels.</translation>
    </message>
    <message>
        <source>Not read</source>
        <translation>Non lus</translation>
    </message>
    <message>
        <source>Passphrase of the back-ups</source>
        <translation>Phrase secrète des sauvegardes</translation>
    </message>
    <message>
        <source>It is forgotten when you close Firstdew.</source>
        <translation>Elle est oubliée quand vous fermez Firstdew.</translation>
    </message>
    <message>
        <source>Open with this passphrase</source>
        <translation>Ouvrir avec cette phrase</translation>
    </message>
    <message>
        <source>Where the records are</source>
        <translation>Où sont les historiques</translation>
    </message>
    <message>
        <source>Choose the folder</source>
        <translation>Choisir le dossier</translation>
    </message>
    <message>
        <source>Add a file</source>
        <translation>Ajouter un fichier</translation>
    </message>
    <message>
        <source>Read the files again</source>
        <translation>Relire les fichiers</translation>
    </message>
    <message>
        <source>Read the files in %1</source>
        <translation>Lire les fichiers de %1</translation>
    </message>
    <message>
        <source>Make a care sheet</source>
        <translation>Rédiger une fiche de soins</translation>
    </message>
    <message>
        <source>Choose somebody from the list.</source>
        <translation>Choisissez quelqu’un dans la liste.</translation>
    </message>
    <message>
        <source>Name not given</source>
        <translation>Nom non indiqué</translation>
    </message>
</context>
<context>
    <name>CheckInCard</name>
    <message>
        <source>%1 today?</source>
        <translation>%1&#xa0;: la peau est…</translation>
    </message>
</context>
<context>
    <name>CheckedIn</name>
    <message>
        <source>Undo</source>
        <translation>Annuler</translation>
    </message>
    <message>
        <source>Change</source>
        <translation>Modifier</translation>
    </message>
</context>
<context>
    <name>ChoiceChip</name>
    <message>
        <source>Not possible yet</source>
        <translation>Pas encore possible</translation>
    </message>
</context>
<context>
    <name>ComparisonCard</name>
    <message>
        <source>Is a shorter session enough?</source>
        <translation>Une séance plus courte suffit‑elle&#xa0;?</translation>
    </message>
    <message>
        <source>You can find out by comparing the two, one dry spell after the other.</source>
        <translation>Vous pouvez le savoir en comparant les deux, une période sèche après l’autre.</translation>
    </message>
    <message>
        <source>How it works</source>
        <translation>Comment ça marche</translation>
    </message>
    <message>
        <source>Compare again</source>
        <translation>Comparer à nouveau</translation>
    </message>
    <message>
        <source>My prescriber or nurse agrees</source>
        <translation>Mon médecin ou le personnel infirmier est d’accord</translation>
    </message>
    <message>
        <source>Start comparing</source>
        <translation>Commencer à comparer</translation>
    </message>
    <message>
        <source>Leave the comparison</source>
        <translation>Quitter la comparaison</translation>
    </message>
</context>
<context>
    <name>CourseDates</name>
    <message>
        <source>%1, done</source>
        <translation>%1, faite</translation>
    </message>
    <message>
        <source>%1, planned. Tap to move it.</source>
        <translation>%1, prévue. Touchez pour la déplacer.</translation>
    </message>
    <message>
        <source>Move session %1</source>
        <translation>Déplacer la séance %1</translation>
    </message>
</context>
<context>
    <name>CoursePlan</name>
    <message>
        <source>Plan a course</source>
        <translation>Planifier une cure</translation>
    </message>
    <message>
        <source>Single sessions keep you dry now. A whole course is for the beginning, or when full sweating is back.</source>
        <translation>Des séances isolées vous gardent au sec maintenant. Une cure complète sert au début, ou quand la forte transpiration est revenue.</translation>
    </message>
    <message>
        <source>Sessions of this course</source>
        <translation>Séances de cette cure</translation>
    </message>
    <message>
        <source>Move</source>
        <translation>Déplacer</translation>
    </message>
    <message>
        <source>Where sessions crowd</source>
        <translation>Quand les séances se rapprochent</translation>
    </message>
    <message>
        <source>Close together</source>
        <translation>Rapprochées</translation>
    </message>
    <message>
        <source>A day between</source>
        <translation>Un jour d’intervalle</translation>
    </message>
    <message>
        <source>Planned to end by %1. If you miss a session, the rest moves.</source>
        <translation>Fin au plus tard, si possible&#xa0;: %1. Une séance manquée se décale d’elle-même et le reste est replanifié.</translation>
    </message>
    <message>
        <source>Start again</source>
        <translation>Recommencer</translation>
    </message>
    <message>
        <source>Choose</source>
        <translation>Choisir</translation>
    </message>
    <message>
        <source>First session</source>
        <translation>Première séance</translation>
    </message>
    <message>
        <source>Days that suit you (none = any day)</source>
        <translation>Jours qui vous conviennent (aucun = tous)</translation>
    </message>
    <message>
        <source>Move session %1</source>
        <translation>Déplacer la séance %1</translation>
    </message>
    <message>
        <source>New day</source>
        <translation>Nouveau jour</translation>
    </message>
    <message>
        <source>Plan the course</source>
        <translation>Planifier la cure</translation>
    </message>
</context>
<context>
    <name>DampnessLine</name>
    <message>
        <source>Dampness over time, %1</source>
        <translation>Évolution de l’humidité, %1</translation>
    </message>
    <message>
        <source>No check-in in this time.</source>
        <translation>Aucune note du jour sur cette période.</translation>
    </message>
    <message numerus="yes">
        <source>%n check-in(s) here. After two weeks of them the line begins to tell how long you stay dry.</source>
        <translation>
            <numerusform>%n note du jour ici. Après deux semaines de notes, la ligne commence à montrer combien de temps vous restez au sec.</numerusform>
            <numerusform>%n notes du jour ici. Après deux semaines de notes, la ligne commence à montrer combien de temps vous restez au sec.</numerusform>
        </translation>
    </message>
    <message>
        <source>Marks below show your sessions. Diamonds above: weighings, in mg a minute.</source>
        <translation>Repères en bas&#xa0;: vos séances. Losanges en haut&#xa0;: pesées, en mg par minute.</translation>
    </message>
    <message>
        <source>Marks below show your sessions.</source>
        <translation>Repères en bas&#xa0;: vos séances.</translation>
    </message>
    <message>
        <source>Diamonds above: weighings, in mg a minute.</source>
        <translation>Losanges en haut&#xa0;: pesées, en mg par minute.</translation>
    </message>
    <message>
        <source>Meter readings of the sessions, %1</source>
        <translation>Valeurs affichées pendant les séances, %1</translation>
    </message>
    <message>
        <source>Dots: highest comfortable reading of each session, in mA. Rings: where it was unpleasant or painful.</source>
        <translation>Points&#xa0;: plus haute valeur confortable de chaque séance, en mA. Anneaux&#xa0;: là où c’était désagréable ou douloureux.</translation>
    </message>
</context>
<context>
    <name>DayPage</name>
    <message>
        <source>More than the usual upper limit of healthy people.</source>
        <translation>Au‑dessus de la limite supérieure habituelle chez les personnes en bonne santé.</translation>
    </message>
    <message>
        <source>Within the usual range of healthy people.</source>
        <translation>Dans les valeurs habituelles des personnes en bonne santé.</translation>
    </message>
    <message>
        <source>Day before</source>
        <translation>Jour précédent</translation>
    </message>
    <message>
        <source>Day after</source>
        <translation>Jour suivant</translation>
    </message>
    <message>
        <source>Nothing here yet</source>
        <translation>Rien ici pour l’instant</translation>
    </message>
    <message>
        <source>Your notes for a day appear here.</source>
        <translation>Ce que vous notez pour un jour apparaît ici.</translation>
    </message>
    <message>
        <source>Corrected; the first entry is kept beside it.</source>
        <translation>Corrigé&#xa0;; la première version est conservée à côté.</translation>
    </message>
    <message>
        <source>Finished, %1</source>
        <translation>Terminée, %1</translation>
    </message>
    <message>
        <source>Stopped early, %1</source>
        <translation>Arrêtée avant la fin, %1</translation>
    </message>
    <message>
        <source>Comfortable at %1</source>
        <translation>Confortable à %1</translation>
    </message>
    <message>
        <source>How much it bothers you: %1 of 4</source>
        <translation>Score de gêne&#xa0;: %1 sur 4</translation>
    </message>
    <message>
        <source>Skin: %1</source>
        <translation>Peau&#xa0;: %1</translation>
    </message>
    <message>
        <source>Correct this session</source>
        <translation>Corriger cette séance</translation>
    </message>
    <message>
        <source>Delete this entry</source>
        <translation>Supprimer cette entrée</translation>
    </message>
    <message>
        <source>Delete this entry?</source>
        <translation>Supprimer cette entrée&#xa0;?</translation>
    </message>
    <message>
        <source>It no longer counts. The original stays in your history.</source>
        <translation>Elle ne compte plus. L’original reste dans votre historique.</translation>
    </message>
    <message>
        <source>Delete</source>
        <translation>Supprimer</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Garder</translation>
    </message>
    <message>
        <source>Weighing: %1 in %2, %3 a minute</source>
        <translation>Pesée&#xa0;: %1 en %2, %3 par minute</translation>
    </message>
</context>
<context>
    <name>DaySheet</name>
    <message>
        <source>Done</source>
        <translation>Terminé</translation>
    </message>
</context>
<context>
    <name>DaySheetPick</name>
    <message>
        <source>The month before</source>
        <translation>Le mois précédent</translation>
    </message>
    <message>
        <source>The month after</source>
        <translation>Le mois suivant</translation>
    </message>
</context>
<context>
    <name>DaysAround</name>
    <message>
        <source>The next fourteen days</source>
        <translation>Les quatorze prochains jours</translation>
    </message>
    <message>
        <source>The last seven days</source>
        <translation>Les sept derniers jours</translation>
    </message>
</context>
<context>
    <name>DaysBack</name>
    <message>
        <source>%1, to fill in</source>
        <translation>%1, à compléter</translation>
    </message>
</context>
<context>
    <name>DewCall</name>
    <message>
        <source>%1: %2</source>
        <translation>%1&#xa0;: %2</translation>
    </message>
    <message>
        <source>You put it off to this evening. A reminder will come.</source>
        <translation>Reporté à ce soir. Un rappel viendra.</translation>
    </message>
    <message>
        <source>Start now</source>
        <translation>Commencer</translation>
    </message>
    <message>
        <source>This evening</source>
        <translation>Ce soir</translation>
    </message>
    <message>
        <source>Tomorrow</source>
        <translation>Demain</translation>
    </message>
    <message>
        <source>Not this time</source>
        <translation>Pas cette fois</translation>
    </message>
    <message>
        <source>I did one</source>
        <translation>Séance faite</translation>
    </message>
    <message>
        <source>More</source>
        <translation>Autres choix</translation>
    </message>
    <message>
        <source>Why?</source>
        <translation>Pourquoi&#xa0;?</translation>
    </message>
</context>
<context>
    <name>Diary</name>
    <message>
        <source>Everywhere</source>
        <translation>Partout</translation>
    </message>
    <message>
        <source>Send to your prescriber</source>
        <translation>Envoyer à votre médecin</translation>
    </message>
    <message>
        <source>Filter: on</source>
        <translation>Filtre&#xa0;: actif</translation>
    </message>
    <message>
        <source>Filter</source>
        <translation>Filtre</translation>
    </message>
    <message>
        <source>Nothing here yet</source>
        <translation>Rien ici pour l’instant</translation>
    </message>
    <message>
        <source>Each check-in on Today draws one dot here. After two weeks of them you see how long you stay dry, and if the treatment works.</source>
        <translation>Chaque note du jour dessine un point ici. Après deux semaines de notes, vous voyez combien de temps vous restez au sec et si le traitement est efficace.</translation>
    </message>
    <message>
        <source>Month</source>
        <translation>Mois</translation>
    </message>
    <message>
        <source>Quarter</source>
        <translation>3 mois</translation>
    </message>
    <message>
        <source>Year</source>
        <translation>Année</translation>
    </message>
    <message>
        <source>All</source>
        <translation>Tout</translation>
    </message>
    <message>
        <source>Earlier</source>
        <translation>Plus tôt</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 – %2</translation>
    </message>
    <message>
        <source>Later</source>
        <translation>Plus tard</translation>
    </message>
    <message>
        <source>Left out: days with %1</source>
        <translation>Jours laissés de côté&#xa0;: %1</translation>
    </message>
    <message>
        <source>Summary for your prescriber</source>
        <translation>Synthèse pour votre médecin</translation>
    </message>
    <message>
        <source>More about this day</source>
        <translation>Voir et noter plus</translation>
    </message>
    <message>
        <source>See a day</source>
        <translation>Voir un jour précis</translation>
    </message>
    <message>
        <source>How much it bothers you</source>
        <translation>La gêne que vous ressentez</translation>
    </message>
    <message>
        <source>Skin after a session</source>
        <translation>Peau après une séance</translation>
    </message>
    <message>
        <source>Weighing</source>
        <translation>Pesée</translation>
    </message>
    <message>
        <source>Other treatments</source>
        <translation>Autres traitements</translation>
    </message>
    <message>
        <source>What is shown</source>
        <translation>Ce qui est affiché</translation>
    </message>
    <message>
        <source>Where</source>
        <translation>Où</translation>
    </message>
    <message>
        <source>Sessions and readings</source>
        <translation>Séances et valeurs</translation>
    </message>
    <message>
        <source>Shown</source>
        <translation>Affiché</translation>
    </message>
    <message>
        <source>Hidden</source>
        <translation>Masqué</translation>
    </message>
    <message>
        <source>Leave out days with</source>
        <translation>Laisser de côté les jours avec</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Terminé</translation>
    </message>
</context>
<context>
    <name>DonePage</name>
    <message>
        <source>Correct this session</source>
        <translation>Corriger cette séance</translation>
    </message>
    <message>
        <source>A session I did</source>
        <translation>Une séance que j’ai faite</translation>
    </message>
    <message>
        <source>Where</source>
        <translation>Où</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Quand</translation>
    </message>
    <message>
        <source>Today</source>
        <translation>Aujourd’hui</translation>
    </message>
    <message>
        <source>Yesterday</source>
        <translation>Hier</translation>
    </message>
    <message>
        <source>Or another day</source>
        <translation>Ou un autre jour</translation>
    </message>
    <message>
        <source>To its end?</source>
        <translation>Jusqu’au bout&#xa0;?</translation>
    </message>
    <message>
        <source>Yes</source>
        <translation>Oui</translation>
    </message>
    <message>
        <source>Stopped early</source>
        <translation>Arrêtée avant la fin</translation>
    </message>
    <message>
        <source>Current</source>
        <translation>Courant</translation>
    </message>
    <message>
        <source>How did it feel?</source>
        <translation>Qu’avez‑vous ressenti&#xa0;?</translation>
    </message>
    <message>
        <source>Skin since then</source>
        <translation>État de la peau depuis</translation>
    </message>
    <message>
        <source>Note (optional)</source>
        <translation>Remarque (facultatif)</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Enregistrer</translation>
    </message>
</context>
<context>
    <name>Drawings</name>
    <message>
        <source>A hand. The ring comes off, the watch lies beside it.</source>
        <translation>Une main. La bague est retirée, la montre est posée à côté.</translation>
    </message>
    <message>
        <source>A hand. Under a magnifying glass: a cut and red spots.</source>
        <translation>Une main. Sous une loupe&#xa0;: une coupure et des taches rouges.</translation>
    </message>
    <message>
        <source>A foot. Under a magnifying glass: a cut and red spots.</source>
        <translation>Un pied. Sous une loupe&#xa0;: une coupure et des taches rouges.</translation>
    </message>
    <message>
        <source>One arm raised. Under a magnifying glass: red spots in the armpit.</source>
        <translation>Un bras levé. Sous une loupe&#xa0;: des taches rouges à l’aisselle.</translation>
    </message>
    <message>
        <source>A fingertip puts a thin layer of jelly on a cut, and only there.</source>
        <translation>Le bout d’un doigt met une fine couche de vaseline sur une coupure, et seulement là.</translation>
    </message>
    <message>
        <source>An antiperspirant beside an armpit, struck out. Below it: 24 hours.</source>
        <translation>Un antitranspirant près d’une aisselle, barré. Dessous&#xa0;: 24 heures.</translation>
    </message>
    <message>
        <source>A razor beside an armpit, struck out. Below it: three days.</source>
        <translation>Un rasoir près d’une aisselle, barré. Dessous&#xa0;: trois jours.</translation>
    </message>
    <message>
        <source>Two trays are put on a wooden table.</source>
        <translation>Deux bacs sont posés sur une table en bois.</translation>
    </message>
    <message>
        <source>Two trays are put on the floor in front of a chair.</source>
        <translation>Deux bacs sont posés au sol devant une chaise.</translation>
    </message>
    <message>
        <source>The plate goes into the tray, and the grid over the plate.</source>
        <translation>La plaque va dans le bac, et la grille par‑dessus la plaque.</translation>
    </message>
    <message>
        <source>Two pads go into a bowl of water.</source>
        <translation>Deux électrodes vont dans un bol d’eau.</translation>
    </message>
    <message>
        <source>A battery goes into its place, plus and minus as marked.</source>
        <translation>Une pile va à sa place, plus et moins comme indiqué.</translation>
    </message>
    <message>
        <source>The machine is off. Two leads are plugged in.</source>
        <translation>L’appareil est éteint. Deux câbles sont branchés.</translation>
    </message>
    <message>
        <source>Somebody has both hands in trays. A helper stands close by, a finger on the knob.</source>
        <translation>Une personne a les deux mains dans des bacs. Quelqu’un qui aide se tient tout près, un doigt sur le bouton.</translation>
    </message>
    <message>
        <source>Two hands in two trays. Between them lies the remote, within their reach.</source>
        <translation>Deux mains dans deux bacs. Entre elles, la télécommande, à leur portée.</translation>
    </message>
    <message>
        <source>A finger switches the machine off. The meter shows zero.</source>
        <translation>Un doigt éteint l’appareil. L’afficheur indique zéro.</translation>
    </message>
    <message>
        <source>A finger switches the machine on. The light comes on, the meter shows zero.</source>
        <translation>Un doigt allume l’appareil. Le voyant s’allume, l’afficheur indique zéro.</translation>
    </message>
    <message>
        <source>The meter under a magnifying glass. It shows zero.</source>
        <translation>L’afficheur sous une loupe. Il indique zéro.</translation>
    </message>
    <message>
        <source>Fingers turn the knob up in small steps. The meter rises.</source>
        <translation>Des doigts tournent le bouton vers le haut, par petits pas. L’afficheur monte.</translation>
    </message>
    <message>
        <source>Fingers turn the knob down in small steps. The meter is at zero.</source>
        <translation>Des doigts tournent le bouton vers le bas, par petits pas. L’afficheur est à zéro.</translation>
    </message>
    <message>
        <source>A finger on the upper button of the remote. Up in small steps.</source>
        <translation>Un doigt sur la touche du haut de la télécommande. On monte par petits pas.</translation>
    </message>
    <message>
        <source>A finger on the lower button of the remote. Down in small steps.</source>
        <translation>Un doigt sur la touche du bas de la télécommande. On baisse par petits pas.</translation>
    </message>
    <message>
        <source>Two hands flat in two trays, under water.</source>
        <translation>Deux mains à plat dans deux bacs, sous l’eau.</translation>
    </message>
    <message>
        <source>Two feet flat in two trays, under water.</source>
        <translation>Deux pieds à plat dans deux bacs, sous l’eau.</translation>
    </message>
    <message>
        <source>Somebody seated: the right hand in one tray, the right foot in another. The left ones rest outside.</source>
        <translation>Une personne assise&#xa0;: la main droite dans un bac, le pied droit dans un autre. La main et le pied gauches restent dehors.</translation>
    </message>
    <message>
        <source>Somebody seated: the left hand in one tray, the left foot in another. The right ones rest outside.</source>
        <translation>Une personne assise&#xa0;: la main gauche dans un bac, le pied gauche dans un autre. La main et le pied droits restent dehors.</translation>
    </message>
    <message>
        <source>A pad under each arm, each on a lead to the machine.</source>
        <translation>Une électrode sous chaque bras, chacune reliée à l’appareil par un câble.</translation>
    </message>
    <message>
        <source>Both hands come out of the trays.</source>
        <translation>Les deux mains sortent des bacs.</translation>
    </message>
    <message>
        <source>The meter shows zero. Each lead goes to the place of the other.</source>
        <translation>L’afficheur indique zéro. Chaque câble prend la place de l’autre.</translation>
    </message>
    <message>
        <source>The meter shows zero. A finger flips the polarity switch.</source>
        <translation>L’afficheur indique zéro. Un doigt bascule l’inverseur de polarité.</translation>
    </message>
    <message>
        <source>The two pads change sides: right goes left, left goes right.</source>
        <translation>Les deux électrodes changent de côté&#xa0;: la droite à gauche, la gauche à droite.</translation>
    </message>
    <message>
        <source>The pads come off, away from both armpits.</source>
        <translation>On retire les électrodes des deux aisselles.</translation>
    </message>
    <message>
        <source>Two hands are dried with a towel.</source>
        <translation>Deux mains sont séchées avec une serviette.</translation>
    </message>
    <message>
        <source>Two feet are dried with a towel.</source>
        <translation>Deux pieds sont séchés avec une serviette.</translation>
    </message>
    <message>
        <source>Tray, plate and grid stand upright and drip dry.</source>
        <translation>Le bac, la plaque et la grille sont debout et s’égouttent.</translation>
    </message>
    <message>
        <source>A jug with %1 is poured into a low tray. A line across the tray marks the level.</source>
        <translation>Un pichet de %1 est versé dans un bac peu profond. Un trait en travers du bac marque le niveau.</translation>
    </message>
</context>
<context>
    <name>FileChoice</name>
    <message>
        <source>Choose a file</source>
        <translation>Choisir un fichier</translation>
    </message>
    <message>
        <source>Chosen: %1</source>
        <translation>Choisi&#xa0;: %1</translation>
    </message>
    <message>
        <source>Put a file that ends in %1 into %2, then look again.</source>
        <translation>Mettez un fichier se terminant par %1 dans %2, puis revérifiez.</translation>
    </message>
    <message>
        <source>Look again</source>
        <translation>Revérifier</translation>
    </message>
</context>
<context>
    <name>FirstStart</name>
    <message>
        <source>Before you begin</source>
        <translation>Avant de commencer</translation>
    </message>
    <message>
        <source>Where?</source>
        <translation>Où&#xa0;?</translation>
    </message>
    <message>
        <source>Who is it for?</source>
        <translation>Pour qui&#xa0;?</translation>
    </message>
    <message>
        <source>Your machine</source>
        <translation>Votre appareil</translation>
    </message>
    <message>
        <source>Health questions</source>
        <translation>Questions de santé</translation>
    </message>
    <message>
        <source>When should we ask?</source>
        <translation>Votre note du jour</translation>
    </message>
    <message>
        <source>Step %1 of %2</source>
        <translation>Étape %1 sur %2</translation>
    </message>
    <message>
        <source>Choose every place you treat. It can be changed in Settings.</source>
        <translation>Choisissez toutes les zones que vous traitez. Vous pourrez changer cela dans les Réglages.</translation>
    </message>
    <message>
        <source>Some answers mean no session until a clinician has said yes. Your answers stay on this phone.</source>
        <translation>Certaines réponses empêchent toute séance jusqu’à l’accord d’un professionnel de santé. Vos réponses restent sur ce téléphone.</translation>
    </message>
    <message>
        <source>Once a day Firstdew asks how damp your skin is. Two taps are enough.</source>
        <translation>Une fois par jour, Firstdew demande si votre peau est humide. Deux appuis suffisent.</translation>
    </message>
    <message>
        <source>Check-in at</source>
        <translation>Note du jour à</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Étape précédente</translation>
    </message>
    <message>
        <source>I have read this</source>
        <translation>J’ai lu ceci</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Terminé</translation>
    </message>
    <message>
        <source>Next</source>
        <translation>Suivant</translation>
    </message>
</context>
<context>
    <name>HandOverPage</name>
    <message>
        <source>Hand it over</source>
        <translation>Remettre la fiche</translation>
    </message>
    <message>
        <source>This care sheet is not complete. Go back and fill in what is marked.</source>
        <translation>Cette fiche de soins est incomplète. Revenez en arrière et remplissez ce qui est signalé.</translation>
    </message>
    <message>
        <source>Look at it</source>
        <translation>La regarder</translation>
    </message>
    <message>
        <source>On the screen</source>
        <translation>Sur l’écran</translation>
    </message>
    <message>
        <source>In their Firstdew: Plan, Care sheet, Scan the code.</source>
        <translation>Dans le Firstdew de la personne&#xa0;: Plan, Fiche de soins, Scanner le code.</translation>
    </message>
    <message>
        <source>The care sheet as a QR code</source>
        <translation>La fiche de soins en code QR</translation>
    </message>
    <message>
        <source>On paper</source>
        <translation>Sur papier</translation>
    </message>
    <message>
        <source>Print or share the page</source>
        <translation>Imprimer ou partager la page</translation>
    </message>
    <message>
        <source>Save the page</source>
        <translation>Enregistrer la page</translation>
    </message>
    <message>
        <source>The page as it will be printed</source>
        <translation>La page telle qu’elle sera imprimée</translation>
    </message>
    <message>
        <source>As a file</source>
        <translation>En fichier</translation>
    </message>
    <message>
        <source>Share the file</source>
        <translation>Partager le fichier</translation>
    </message>
    <message>
        <source>Save the file</source>
        <translation>Enregistrer le fichier</translation>
    </message>
</context>
<context>
    <name>HealthForm</name>
    <message>
        <source>No</source>
        <translation>Non</translation>
    </message>
    <message>
        <source>Yes</source>
        <translation>Oui</translation>
    </message>
    <message>
        <source>You answered yes on %1. That counts until a clinician has approved treatment.</source>
        <translation>Vous avez répondu oui (%1). Cela vaut jusqu’à l’autorisation d’un professionnel de santé.</translation>
    </message>
    <message>
        <source>Approved by %1 until %2.</source>
        <translation>Autorisé par %1. Valable jusqu’à cette date&#xa0;: %2.</translation>
    </message>
    <message>
        <source>The approval by %1 has expired. Ask again before your next session.</source>
        <translation>L’autorisation de %1 a expiré. Redemandez‑la avant votre prochaine séance.</translation>
    </message>
    <message>
        <source>No session until a clinician has said that it is safe for you.</source>
        <translation>Pas de séance avant qu’un professionnel de santé ait dit que c’est sans danger pour vous.</translation>
    </message>
    <message>
        <source>Ask a clinician first and note who said yes.</source>
        <translation>Demandez d’abord à un professionnel de santé et notez qui a dit oui.</translation>
    </message>
    <message>
        <source>Usually no obstacle; one hospital lists it. Mention it to your clinician.</source>
        <translation>En général, ce n’est pas un obstacle&#xa0;; un hôpital le mentionne. Signalez‑le au professionnel de santé qui vous suit.</translation>
    </message>
</context>
<context>
    <name>HealthQuestions</name>
    <message>
        <source>Health questions</source>
        <translation>Questions de santé</translation>
    </message>
    <message>
        <source>Some answers mean no session until a clinician has said yes. Your answers stay on this phone.</source>
        <translation>Certaines réponses empêchent toute séance jusqu’à l’accord d’un professionnel de santé. Vos réponses restent sur ce téléphone.</translation>
    </message>
    <message>
        <source>Not approved: %1</source>
        <translation>Non autorisé&#xa0;: %1</translation>
    </message>
    <message>
        <source>Who said that it is safe?</source>
        <translation>Qui a dit que c’est sans danger&#xa0;?</translation>
    </message>
    <message>
        <source>Name of the doctor or nurse. It goes into your record.</source>
        <translation>Nom du médecin, de l’infirmier ou de l’infirmière. Il sera noté dans votre historique.</translation>
    </message>
    <message>
        <source>On which day?</source>
        <translation>Quel jour&#xa0;?</translation>
    </message>
    <message>
        <source>Record the approval</source>
        <translation>Noter l’autorisation</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Enregistrer</translation>
    </message>
</context>
<context>
    <name>KeepPage</name>
    <message>
        <source>Back-up, export and delete</source>
        <translation>Sauvegarder, exporter et supprimer</translation>
    </message>
    <message>
        <source>Done: %1</source>
        <translation>Fait&#xa0;: %1</translation>
    </message>
    <message>
        <source>Done.</source>
        <translation>Fait.</translation>
    </message>
    <message>
        <source>Share it</source>
        <translation>Partager</translation>
    </message>
    <message>
        <source>Your record is as it was.</source>
        <translation>Votre historique est inchangé.</translation>
    </message>
    <message>
        <source>Back-up</source>
        <translation>Sauvegarde</translation>
    </message>
    <message>
        <source>One encrypted file (OpenPGP) with everything. Without the passphrase nobody can open it – not even you.</source>
        <translation>Un seul fichier chiffré (OpenPGP) avec tout. Sans la phrase secrète, personne ne peut l’ouvrir, pas même vous.</translation>
    </message>
    <message>
        <source>Passphrase</source>
        <translation>Phrase secrète</translation>
    </message>
    <message>
        <source>At least eight characters.</source>
        <translation>Au moins huit caractères.</translation>
    </message>
    <message>
        <source>Hide what I type</source>
        <translation>Masquer ce que j’écris</translation>
    </message>
    <message>
        <source>Show what I type</source>
        <translation>Montrer ce que j’écris</translation>
    </message>
    <message>
        <source>Make a back-up</source>
        <translation>Faire une sauvegarde</translation>
    </message>
    <message>
        <source>Restore</source>
        <translation>Restaurer</translation>
    </message>
    <message>
        <source>Passphrase of the back-up</source>
        <translation>Phrase secrète de la sauvegarde</translation>
    </message>
    <message>
        <source>What is here now is replaced. A copy of it is kept.</source>
        <translation>Ce qui est ici maintenant sera remplacé. Une copie en est gardée.</translation>
    </message>
    <message>
        <source>Export</source>
        <translation>Exporter</translation>
    </message>
    <message>
        <source>These files are not encrypted; share them with care.</source>
        <translation>Ces fichiers ne sont pas chiffrés&#xa0;; partagez‑les avec prudence.</translation>
    </message>
    <message>
        <source>Everything, as JSON</source>
        <translation>Tout, en JSON</translation>
    </message>
    <message>
        <source>Tables for a spreadsheet, as CSV</source>
        <translation>Tableaux pour un tableur, en CSV</translation>
    </message>
    <message>
        <source>For medical records, as FHIR</source>
        <translation>Pour un dossier médical, en FHIR</translation>
    </message>
    <message>
        <source>Planned sessions, for a calendar</source>
        <translation>Séances prévues, pour un agenda</translation>
    </message>
    <message>
        <source>Firstdew sessions</source>
        <translation>Séances Firstdew</translation>
    </message>
    <message>
        <source>A session is planned</source>
        <translation>Une séance est prévue</translation>
    </message>
    <message>
        <source>Import</source>
        <translation>Importer</translation>
    </message>
    <message>
        <source>Add from this file</source>
        <translation>Ajouter depuis ce fichier</translation>
    </message>
    <message>
        <source>Add as a new person</source>
        <translation>Créer une nouvelle personne</translation>
    </message>
    <message>
        <source>Delete</source>
        <translation>Supprimer</translation>
    </message>
    <message>
        <source>Gone for good, here and in the copies on this phone. Files that you exported or shared stay where they are. Make a back-up first if in doubt.</source>
        <translation>Effacé définitivement, ici et dans les copies sur ce téléphone. Les fichiers que vous avez exportés ou partagés restent où ils sont. En cas de doute, faites d’abord une sauvegarde.</translation>
    </message>
    <message>
        <source>Delete this person</source>
        <translation>Supprimer cette personne</translation>
    </message>
    <message>
        <source>The record of %1 is deleted for good.</source>
        <translation>L’historique de %1 sera supprimé définitivement.</translation>
    </message>
    <message>
        <source>this person</source>
        <translation>cette personne</translation>
    </message>
    <message>
        <source>Delete everything</source>
        <translation>Tout supprimer</translation>
    </message>
    <message>
        <source>Every record on this phone is deleted for good.</source>
        <translation>Tous les historiques de ce téléphone seront supprimés définitivement.</translation>
    </message>
    <message>
        <source>Keep things as they are</source>
        <translation>Ne rien changer</translation>
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
        <translation>Votre date de naissance n’est pas indiquée&#xa0;: ce sont donc les limites plus basses des enfants qui comptent.</translation>
    </message>
    <message>
        <source>Adult beside the child: %1</source>
        <translation>Adulte auprès de l’enfant&#xa0;: %1</translation>
    </message>
    <message>
        <source>at most %1</source>
        <translation>%1 au maximum</translation>
    </message>
    <message>
        <source>not used</source>
        <translation>non utilisé</translation>
    </message>
</context>
<context>
    <name>MachineForm</name>
    <message>
        <source>Make or model</source>
        <translation>Marque ou modèle</translation>
    </message>
    <message>
        <source>Optional</source>
        <translation>Facultatif</translation>
    </message>
    <message>
        <source>Current it gives (see its instructions)</source>
        <translation>Courant fourni (voir son mode d’emploi)</translation>
    </message>
    <message>
        <source>Choose at least one.</source>
        <translation>Choisissez‑en au moins un.</translation>
    </message>
    <message>
        <source>Size of one armpit pad in cm² (length × width)</source>
        <translation>Taille d’une électrode d’aisselle en cm² (longueur × largeur)</translation>
    </message>
    <message>
        <source>Optional. Until it is entered, the limit for armpits stays low.</source>
        <translation>Facultatif. Tant qu’elle n’est pas saisie, la limite pour les aisselles reste basse.</translation>
    </message>
    <message>
        <source>How is polarity reversed?</source>
        <translation>Comment inverse‑t‑on la polarité&#xa0;?</translation>
    </message>
    <message>
        <source>By swapping the leads</source>
        <translation>En échangeant les câbles</translation>
    </message>
    <message>
        <source>By a switch</source>
        <translation>Avec un inverseur</translation>
    </message>
    <message>
        <source>By exchanging the armpit pads</source>
        <translation>En échangeant les électrodes d’aisselle</translation>
    </message>
    <message>
        <source>Is there a remote control?</source>
        <translation>Y a‑t‑il une télécommande&#xa0;?</translation>
    </message>
    <message>
        <source>No</source>
        <translation>Non</translation>
    </message>
    <message>
        <source>Yes</source>
        <translation>Oui</translation>
    </message>
    <message>
        <source>What does it run on?</source>
        <translation>Comment est‑il alimenté&#xa0;?</translation>
    </message>
    <message>
        <source>Batteries</source>
        <translation>Piles</translation>
    </message>
    <message>
        <source>Mains adapter</source>
        <translation>Bloc secteur</translation>
    </message>
</context>
<context>
    <name>MachinePage</name>
    <message>
        <source>Machine and kit</source>
        <translation>Appareil et matériel</translation>
    </message>
    <message>
        <source>Batteries</source>
        <translation>Piles</translation>
    </message>
    <message numerus="yes">
        <source>About %n session(s) left. A set of four alkaline cells lasts about three.</source>
        <translation>
            <numerusform>Il reste environ %n séance. Quatre piles alcalines suffisent pour environ trois.</numerusform>
            <numerusform>Il reste environ %n séances. Quatre piles alcalines suffisent pour environ trois.</numerusform>
        </translation>
    </message>
    <message>
        <source>Say when you put in new ones, and Firstdew counts the sessions.</source>
        <translation>Dites quand vous mettez des piles neuves, et Firstdew compte les séances.</translation>
    </message>
    <message>
        <source>New batteries put in</source>
        <translation>Piles neuves mises</translation>
    </message>
    <message>
        <source>Machine</source>
        <translation>Appareil</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Enregistrer</translation>
    </message>
    <message>
        <source>Where it is used</source>
        <translation>Où il est utilisé</translation>
    </message>
    <message>
        <source>The batteries are probably used up. Put in new ones.</source>
        <translation>Les piles sont probablement vides. Mettez‑en des neuves.</translation>
    </message>
</context>
<context>
    <name>MakeSheetPage</name>
    <message>
        <source>Make a care sheet</source>
        <translation>Rédiger une fiche de soins</translation>
    </message>
    <message>
        <source>Call me before you go on.</source>
        <translation>Appelez‑moi avant de continuer.</translation>
    </message>
    <message>
        <source>Check how you do it with Firstdew, do three more sessions, then call me.</source>
        <translation>Vérifiez vos gestes avec Firstdew, faites trois séances de plus, puis appelez‑moi.</translation>
    </message>
    <message>
        <source>See your doctor about other treatments.</source>
        <translation>Parlez d’autres traitements avec votre médecin.</translation>
    </message>
    <message>
        <source>None</source>
        <translation>Aucune</translation>
    </message>
    <message>
        <source>Days I choose</source>
        <translation>Jours que je choisis</translation>
    </message>
    <message>
        <source>For whom</source>
        <translation>Pour qui</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nom</translation>
    </message>
    <message>
        <source>Optional. It stands on the paper alone, not in the code.</source>
        <translation>Facultatif. Il figure seulement sur le papier, pas dans le code.</translation>
    </message>
    <message>
        <source>Age</source>
        <translation>Âge</translation>
    </message>
    <message>
        <source>Adult</source>
        <translation>Adulte</translation>
    </message>
    <message>
        <source>Under 18</source>
        <translation>Moins de 18 ans</translation>
    </message>
    <message>
        <source>Where to treat</source>
        <translation>Zones à traiter</translation>
    </message>
    <message>
        <source>Current</source>
        <translation>Courant</translation>
    </message>
    <message>
        <source>As it suits the person</source>
        <translation>Selon la personne</translation>
    </message>
    <message>
        <source>Limit, direct current</source>
        <translation>Limite, courant continu</translation>
    </message>
    <message>
        <source>Limit, pulsed current</source>
        <translation>Limite, courant pulsé</translation>
    </message>
    <message>
        <source>Level to begin with at home</source>
        <translation>Intensité pour débuter à la maison</translation>
    </message>
    <message>
        <source>Size of one armpit pad</source>
        <translation>Taille d’une électrode d’aisselle</translation>
    </message>
    <message>
        <source>Course</source>
        <translation>Cure</translation>
    </message>
    <message>
        <source>Tap the days of the sessions. Day 1 is the first.</source>
        <translation>Touchez les jours des séances. Le jour 1 est le premier.</translation>
    </message>
    <message>
        <source>Day %1</source>
        <translation>Jour %1</translation>
    </message>
    <message>
        <source>Another week</source>
        <translation>Une semaine de plus</translation>
    </message>
    <message>
        <source>First session, for the dates on paper</source>
        <translation>Première séance, pour les dates sur papier</translation>
    </message>
    <message>
        <source>Leave the dates open</source>
        <translation>Laisser les dates ouvertes</translation>
    </message>
    <message>
        <source>Afterwards</source>
        <translation>Ensuite</translation>
    </message>
    <message>
        <source>Review</source>
        <translation>Bilan</translation>
    </message>
    <message>
        <source>Without a review</source>
        <translation>Sans bilan</translation>
    </message>
    <message>
        <source>If the course does not help</source>
        <translation>Si la cure n’aide pas</translation>
    </message>
    <message>
        <source>In your own words</source>
        <translation>Avec vos mots</translation>
    </message>
    <message>
        <source>From whom</source>
        <translation>De la part de</translation>
    </message>
    <message>
        <source>Your name</source>
        <translation>Votre nom</translation>
    </message>
    <message>
        <source>Whom to call, with a number</source>
        <translation>Qui appeler, avec le numéro</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation>Remarques</translation>
    </message>
    <message>
        <source>Optional</source>
        <translation>Facultatif</translation>
    </message>
    <message>
        <source>Time for the hands</source>
        <translation>Temps pour les mains</translation>
    </message>
    <message>
        <source>How long the voice waits where both hands are in the water.</source>
        <translation>Le temps que la voix laisse quand les deux mains sont dans l’eau.</translation>
    </message>
    <message>
        <source>To turn up</source>
        <translation>Pour monter</translation>
    </message>
    <message>
        <source>To turn down</source>
        <translation>Pour baisser</translation>
    </message>
    <message>
        <source>To swap</source>
        <translation>Pour inverser</translation>
    </message>
    <message>
        <source>Hand it over</source>
        <translation>Remettre la fiche</translation>
    </message>
</context>
<context>
    <name>MonthDots</name>
    <message>
        <source>nothing noted</source>
        <translation>rien de noté</translation>
    </message>
    <message>
        <source>Dampness over time, %1</source>
        <translation>Évolution de l’humidité, %1</translation>
    </message>
    <message>
        <source>No check-in in these weeks. Tap a day to add one.</source>
        <translation>Aucune note du jour ces semaines‑là. Touchez un jour pour en ajouter une.</translation>
    </message>
    <message>
        <source>A bar under a day is a session. Tap a day to see and correct it.</source>
        <translation>Une barre sous un jour est une séance. Touchez un jour pour le voir et le corriger.</translation>
    </message>
    <message>
        <source>Tap a day to see and correct it.</source>
        <translation>Touchez un jour pour le voir et le corriger.</translation>
    </message>
</context>
<context>
    <name>MovePage</name>
    <message>
        <source>Move to another phone</source>
        <translation>Passer à un autre téléphone</translation>
    </message>
    <message>
        <source>Your record goes to the other phone as one encrypted file. Which phone is this?</source>
        <translation>Votre historique va sur l’autre téléphone en un seul fichier chiffré. Quel téléphone est celui‑ci&#xa0;?</translation>
    </message>
    <message>
        <source>The old one: send from here</source>
        <translation>L’ancien&#xa0;: envoyer d’ici</translation>
    </message>
    <message>
        <source>The new one: bring it here</source>
        <translation>Le nouveau&#xa0;: recevoir ici</translation>
    </message>
    <message>
        <source>1. Choose a passphrase</source>
        <translation>1. Choisissez une phrase secrète</translation>
    </message>
    <message>
        <source>You type it once more on the new phone. Without it nobody can open the file – not even you.</source>
        <translation>Vous la saisirez une fois de plus sur le nouveau téléphone. Sans elle, personne ne peut ouvrir le fichier, pas même vous.</translation>
    </message>
    <message>
        <source>Passphrase</source>
        <translation>Phrase secrète</translation>
    </message>
    <message>
        <source>At least eight characters.</source>
        <translation>Au moins huit caractères.</translation>
    </message>
    <message>
        <source>Hide what I type</source>
        <translation>Masquer ce que j’écris</translation>
    </message>
    <message>
        <source>Show what I type</source>
        <translation>Montrer ce que j’écris</translation>
    </message>
    <message>
        <source>2. Send the file to the new phone</source>
        <translation>2. Envoyez le fichier au nouveau téléphone</translation>
    </message>
    <message>
        <source>Use a cable, a memory card, or a message to yourself.</source>
        <translation>Servez‑vous d’un câble, d’une carte mémoire ou d’un message à vous-même.</translation>
    </message>
    <message>
        <source>3. On the new phone</source>
        <translation>3. Sur le nouveau téléphone</translation>
    </message>
    <message>
        <source>Open Firstdew there and tap “Move from another phone”. Choose the file and type the passphrase. It then has to show these numbers:</source>
        <translation>Ouvrez‑y Firstdew et touchez «&#xa0;Venir d’un autre téléphone&#xa0;». Choisissez le fichier et saisissez la phrase secrète. Ces nombres doivent alors s’afficher&#xa0;:</translation>
    </message>
    <message>
        <source>Keep this phone as it is until you have seen them.</source>
        <translation>Gardez ce téléphone tel quel tant que vous ne les avez pas vus.</translation>
    </message>
    <message>
        <source>Bring the record here</source>
        <translation>Recevoir l’historique ici</translation>
    </message>
    <message>
        <source>On the old phone, open Settings, “Move to another phone”, and send the file to this one. Then choose it here.</source>
        <translation>Sur l’ancien téléphone, ouvrez les Réglages, «&#xa0;Passer à un autre téléphone&#xa0;», et envoyez le fichier à celui‑ci. Puis choisissez‑le ici.</translation>
    </message>
    <message>
        <source>Choose the file</source>
        <translation>Choisir le fichier</translation>
    </message>
    <message>
        <source>Its passphrase</source>
        <translation>Sa phrase secrète</translation>
    </message>
    <message>
        <source>The file holds</source>
        <translation>Le fichier contient</translation>
    </message>
    <message>
        <source>What is on this phone now is replaced. A copy of it is kept.</source>
        <translation>Ce qui est maintenant sur ce téléphone sera remplacé. Une copie en est gardée.</translation>
    </message>
    <message>
        <source>Everything is here.</source>
        <translation>Tout est là.</translation>
    </message>
    <message>
        <source>Compare the numbers with the old phone. Then you can delete the record there.</source>
        <translation>Comparez les nombres avec l’ancien téléphone. Vous pourrez ensuite y supprimer l’historique.</translation>
    </message>
    <message>
        <source>What was on this phone before is kept in %1</source>
        <translation>Ce qui était sur ce téléphone avant est gardé dans %1</translation>
    </message>
    <message>
        <source>Make the file</source>
        <translation>Créer le fichier</translation>
    </message>
    <message>
        <source>Send the file</source>
        <translation>Envoyer le fichier</translation>
    </message>
    <message>
        <source>Look into it</source>
        <translation>Voir son contenu</translation>
    </message>
    <message>
        <source>Use it here</source>
        <translation>L’utiliser ici</translation>
    </message>
    <message>
        <source>Replace what is here</source>
        <translation>Remplacer ce qui est ici</translation>
    </message>
    <message>
        <source>Go to Today</source>
        <translation>Vers l’accueil</translation>
    </message>
</context>
<context>
    <name>NextAction</name>
    <message>
        <source>Plan the first course</source>
        <translation>Planifier la cure initiale</translation>
    </message>
    <message>
        <source>Next session: %1</source>
        <translation>Prochaine séance&#xa0;: %1</translation>
    </message>
    <message>
        <source>Why?</source>
        <translation>Pourquoi&#xa0;?</translation>
    </message>
    <message>
        <source>Start now</source>
        <translation>Commencer</translation>
    </message>
    <message>
        <source>Move it</source>
        <translation>La déplacer</translation>
    </message>
    <message>
        <source>I did one</source>
        <translation>Séance faite</translation>
    </message>
    <message>
        <source>Move session %1</source>
        <translation>Déplacer la séance %1</translation>
    </message>
    <message>
        <source>Choose the course</source>
        <translation>Choisir la cure</translation>
    </message>
    <message>
        <source>I already treat</source>
        <translation>Je traite déjà</translation>
    </message>
    <message>
        <source>Go on to keeping dry</source>
        <translation>Passer au maintien au sec</translation>
    </message>
    <message>
        <source>Your care sheet says: %1</source>
        <translation>Votre fiche de soins dit&#xa0;: %1</translation>
    </message>
    <message>
        <source>Say how it is now</source>
        <translation>Dire où vous en êtes</translation>
    </message>
    <message>
        <source>Go on to twelve sessions</source>
        <translation>Aller jusqu’à douze séances</translation>
    </message>
    <message>
        <source>Check how you do it</source>
        <translation>Vérifier vos gestes</translation>
    </message>
    <message>
        <source>See the health questions</source>
        <translation>Voir les questions de santé</translation>
    </message>
</context>
<context>
    <name>NotNowSheet</name>
    <message>
        <source>Not this time</source>
        <translation>Pas cette fois</translation>
    </message>
    <message>
        <source>What&apos;s the reason? The answer goes into your record; the call comes back when a later check-in asks for it.</source>
        <translation>Pour quelle raison&#xa0;? La réponse est notée dans votre historique&#xa0;; le rappel revient quand une note du jour ultérieure le demande.</translation>
    </message>
    <message>
        <source>The dampness has another cause</source>
        <translation>L’humidité a une autre cause</translation>
    </message>
    <message>
        <source>My skin needs a rest</source>
        <translation>Ma peau a besoin de repos</translation>
    </message>
    <message>
        <source>No time</source>
        <translation>Pas le temps</translation>
    </message>
    <message>
        <source>I am away from the machine</source>
        <translation>Je suis loin de l’appareil</translation>
    </message>
    <message>
        <source>Something else</source>
        <translation>Autre chose</translation>
    </message>
</context>
<context>
    <name>OtherPage</name>
    <message>
        <source>Other treatments</source>
        <translation>Autres traitements</translation>
    </message>
    <message>
        <source>Note what else dries your skin. Dry spells in that time are left out of your outlook, and your prescriber sees it in the summary.</source>
        <translation>Notez ce qui assèche votre peau par ailleurs. Les périodes sèches de ce temps‑là ne comptent pas dans vos prévisions, et votre médecin le voit dans la synthèse.</translation>
    </message>
    <message>
        <source>What is it?</source>
        <translation>Qu’est‑ce que c’est&#xa0;?</translation>
    </message>
    <message>
        <source>Its name</source>
        <translation>Son nom</translation>
    </message>
    <message>
        <source>Optional</source>
        <translation>Facultatif</translation>
    </message>
    <message>
        <source>Where (none = everywhere)</source>
        <translation>Où (aucune zone = partout)</translation>
    </message>
    <message>
        <source>Works since</source>
        <translation>Agit depuis</translation>
    </message>
    <message>
        <source>Does it still work?</source>
        <translation>Agit‑il encore&#xa0;?</translation>
    </message>
    <message>
        <source>Yes</source>
        <translation>Oui</translation>
    </message>
    <message>
        <source>It ended</source>
        <translation>C’est fini</translation>
    </message>
    <message>
        <source>Last day</source>
        <translation>Dernier jour</translation>
    </message>
    <message>
        <source>Remove %1</source>
        <translation>Supprimer %1</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Enregistrer</translation>
    </message>
</context>
<context>
    <name>Outgoing</name>
    <message>
        <source>Handed over.</source>
        <translation>Remis.</translation>
    </message>
    <message>
        <source>Saved as %1.</source>
        <translation>Enregistré sous %1.</translation>
    </message>
</context>
<context>
    <name>OutlookStrip</name>
    <message>
        <source>session planned</source>
        <translation>séance prévue</translation>
    </message>
    <message>
        <source>No session planned</source>
        <translation>Aucune séance prévue</translation>
    </message>
    <message>
        <source>Session today</source>
        <translation>Séance aujourd’hui</translation>
    </message>
    <message>
        <source>Session %1</source>
        <translation>Séance&#xa0;: %1</translation>
    </message>
    <message>
        <source>Chance of dampness by day, %1</source>
        <translation>Risque d’humidité jour par jour, %1</translation>
    </message>
    <message>
        <source>Bars come with the first session.</source>
        <translation>Les barres viendront avec la première séance.</translation>
    </message>
    <message>
        <source>Planned session. The fuller a bar, the likelier it is damp by that day; after a session it starts again.</source>
        <translation>Séance prévue. Plus une barre est pleine, plus il est probable que la peau soit humide d’ici ce jour‑là&#xa0;; après une séance, tout repart de zéro.</translation>
    </message>
    <message>
        <source>The fuller a bar, the likelier it is damp by that day.</source>
        <translation>Plus une barre est pleine, plus il est probable que la peau soit humide d’ici ce jour‑là.</translation>
    </message>
</context>
<context>
    <name>PaceChoice</name>
    <message>
        <source>Close together, done by %1</source>
        <translation>Rapprochées, fin&#xa0;: %1</translation>
    </message>
    <message>
        <source>A day between, done by %1</source>
        <translation>Un jour d’intervalle, fin&#xa0;: %1</translation>
    </message>
</context>
<context>
    <name>Page</name>
    <message>
        <source>The health questions have not been answered yet.</source>
        <translation>Les questions de santé n’ont pas encore reçu de réponse.</translation>
    </message>
    <message>
        <source>Health questions: nothing answered with yes.</source>
        <translation>Questions de santé&#xa0;: aucune réponse «&#xa0;oui&#xa0;».</translation>
    </message>
    <message>
        <source>Answered with yes: %1.</source>
        <translation>Réponse «&#xa0;oui&#xa0;»&#xa0;: %1.</translation>
    </message>
    <message>
        <source>direct and pulsed current</source>
        <translation>courant continu et courant pulsé</translation>
    </message>
    <message>
        <source>direct current</source>
        <translation>courant continu</translation>
    </message>
    <message>
        <source>Machine: %1.</source>
        <translation>Appareil&#xa0;: %1.</translation>
    </message>
    <message>
        <source>Health questions and prescription</source>
        <translation>Questions de santé et prescription</translation>
    </message>
    <message>
        <source>Approved by %1 on %2: %3.</source>
        <translation>Autorisé par %1 le %2&#xa0;: %3.</translation>
    </message>
    <message>
        <source>Care sheet of %1, %2, for: %3.</source>
        <translation>Fiche de soins de %1, %2, pour&#xa0;: %3.</translation>
    </message>
    <message>
        <source>Taught: %1.</source>
        <translation>Séance encadrée&#xa0;: %1.</translation>
    </message>
    <message>
        <source>Seen: %1.</source>
        <translation>Vu&#xa0;: %1.</translation>
    </message>
    <message>
        <source>The size of the armpit pads is not entered, so their limit is kept low.</source>
        <translation>La taille des électrodes d’aisselle n’est pas saisie&#xa0;; leur limite est donc gardée basse.</translation>
    </message>
    <message numerus="yes">
        <source>Batteries: about %n session(s) left.</source>
        <translation>
            <numerusform>Piles&#xa0;: environ %n séance restante.</numerusform>
            <numerusform>Piles&#xa0;: environ %n séances restantes.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Check-ins on %n day(s): %1.</source>
        <translation>
            <numerusform>Notes du jour sur %n jour&#xa0;: %1.</numerusform>
            <numerusform>Notes du jour sur %n jours&#xa0;: %1.</numerusform>
        </translation>
    </message>
    <message>
        <source>Days with a circumstance: %1.</source>
        <translation>Jours avec une circonstance&#xa0;: %1.</translation>
    </message>
    <message>
        <source>Weighed: %1.</source>
        <translation>Pesées&#xa0;: %1.</translation>
    </message>
    <message>
        <source>interrupted</source>
        <translation>interrompue</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Jour</translation>
    </message>
    <message>
        <source>Site</source>
        <translation>Zone</translation>
    </message>
    <message>
        <source>Current</source>
        <translation>Courant</translation>
    </message>
    <message>
        <source>Highest</source>
        <translation>Maximum</translation>
    </message>
    <message>
        <source>Comfortable</source>
        <translation>Confortable</translation>
    </message>
    <message>
        <source>Charge</source>
        <translation>Charge</translation>
    </message>
    <message>
        <source>Felt</source>
        <translation>Ressenti</translation>
    </message>
    <message>
        <source>Severity is asked in the app&apos;s own words, in four steps after the HDSS.</source>
        <translation>La sévérité est demandée avec les mots de l’application, en quatre niveaux d’après l’HDSS.</translation>
    </message>
    <message>
        <source>Name not given</source>
        <translation>Nom non indiqué</translation>
    </message>
    <message>
        <source>%1   ·   %2 to %3</source>
        <translation>%1   ·   %2 – %3</translation>
    </message>
    <message>
        <source>Figures of this period</source>
        <translation>Chiffres de cette période</translation>
    </message>
    <message>
        <source>Sessions</source>
        <translation>Séances</translation>
    </message>
    <message numerus="yes">
        <source>%n earlier; all of them are in the exports.</source>
        <translation>
            <numerusform>%n antérieure&#xa0;; elle figure dans les exports.</numerusform>
            <numerusform>%n antérieures&#xa0;; toutes figurent dans les exports.</numerusform>
        </translation>
    </message>
    <message>
        <source>Stop and look</source>
        <translation>Arrêter et regarder</translation>
    </message>
    <message>
        <source>No session for now</source>
        <translation>Pas de séance pour l’instant</translation>
    </message>
    <message>
        <source>It does not work yet</source>
        <translation>Pas encore efficace</translation>
    </message>
    <message>
        <source>It works in part</source>
        <translation>Efficace en partie</translation>
    </message>
    <message>
        <source>It works</source>
        <translation>Efficace</translation>
    </message>
    <message>
        <source>Too early to say</source>
        <translation>Trop tôt pour le dire</translation>
    </message>
    <message>
        <source>Not started yet</source>
        <translation>Pas encore commencé</translation>
    </message>
    <message>
        <source>Look at the skin (%1): a burn was noted on %2. No session there until you have.</source>
        <translation>Regardez la peau (%1)&#xa0;: une brûlure a été notée le %2. Pas de séance sur cette zone avant que vous l’ayez vue.</translation>
    </message>
    <message>
        <source>Look at the skin (%1): a blister was noted on %2. No session there until you have.</source>
        <translation>Regardez la peau (%1)&#xa0;: une cloque a été notée le %2. Pas de séance sur cette zone avant que vous l’ayez vue.</translation>
    </message>
    <message numerus="yes">
        <source>The meter was above the limit in %n session(s), last on %1.</source>
        <translation>
            <numerusform>L’afficheur a dépassé la limite lors de %n séance, le %1.</numerusform>
            <numerusform>L’afficheur a dépassé la limite lors de %n séances, la dernière fois le %1.</numerusform>
        </translation>
    </message>
    <message>
        <source>Is this treatment possible with %1 (answered yes on %2)? No session until a clinician has approved treatment.</source>
        <translation>Ce traitement est‑il possible malgré ce point&#xa0;: %1 (réponse «&#xa0;oui&#xa0;» le %2)&#xa0;? Pas de séance avant l’autorisation d’un professionnel de santé.</translation>
    </message>
    <message>
        <source>The course brought no response (%1). Talk about other treatments.</source>
        <translation>La cure n’a apporté aucune réponse (%1). À discuter&#xa0;: d’autres traitements.</translation>
    </message>
    <message>
        <source>The review named on the care sheet is due (%1).</source>
        <translation>Le bilan prévu sur la fiche de soins est à faire (%1).</translation>
    </message>
    <message numerus="yes">
        <source>There are %n question(s) for you, below.</source>
        <translation>
            <numerusform>Il y a %n question pour vous, ci‑dessous.</numerusform>
            <numerusform>Il y a %n questions pour vous, ci‑dessous.</numerusform>
        </translation>
    </message>
    <message>
        <source>no birth date entered</source>
        <translation>aucune date de naissance saisie</translation>
    </message>
    <message numerus="yes">
        <source>child, %n year(s)</source>
        <translation>
            <numerusform>enfant, %n an</numerusform>
            <numerusform>enfant, %n ans</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>adult, %n year(s)</source>
        <translation>
            <numerusform>adulte, %n an</numerusform>
            <numerusform>adulte, %n ans</numerusform>
        </translation>
    </message>
    <message>
        <source>Iontophoresis summary</source>
        <translation>Synthèse d’iontophorèse</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 – %2</translation>
    </message>
    <message>
        <source>damp days a week: %1</source>
        <translation>jours humides par semaine&#xa0;: %1</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>site: its verdict</comment>
        <translation>%1&#xa0;: %2</translation>
    </message>
    <message>
        <source>No site in use.</source>
        <translation>Aucune zone traitée.</translation>
    </message>
    <message>
        <source>For you to do</source>
        <translation>À faire de votre part</translation>
    </message>
    <message>
        <source>Nothing at present.</source>
        <translation>Rien pour le moment.</translation>
    </message>
    <message>
        <source>%1: %2 · %3</source>
        <comment>day: site · skin</comment>
        <translation>%1&#xa0;: %2 · %3</translation>
    </message>
    <message>
        <source> · %1 · %2</source>
        <comment>continues a line: current, its kind</comment>
        <translation> · %1 · %2</translation>
    </message>
    <message>
        <source>%1: %2 · %3 with a limit of %4</source>
        <comment>day: site · peak, limit</comment>
        <translation>%1&#xa0;: %2 · %3 pour une limite de %4</translation>
    </message>
    <message numerus="yes">
        <source>%1, for %n second(s)</source>
        <translation>
            <numerusform>%1, pendant %n seconde</numerusform>
            <numerusform>%1, pendant %n secondes</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n earlier</source>
        <translation>
            <numerusform>%n plus ancienne</numerusform>
            <numerusform>%n plus anciennes</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 · %2: %3. %4.</source>
        <comment>kind of current · sites: limit. Who set it.</comment>
        <translation>%1 · %2&#xa0;: %3. %4.</translation>
    </message>
    <message>
        <source>Skin and current in this period</source>
        <translation>Peau et courant sur cette période</translation>
    </message>
    <message>
        <source>Skin</source>
        <translation>Peau</translation>
    </message>
    <message>
        <source>Nothing recorded.</source>
        <translation>Rien de noté.</translation>
    </message>
    <message>
        <source>Above the limit</source>
        <translation>Au‑dessus de la limite</translation>
    </message>
    <message>
        <source>No sessions in this period.</source>
        <translation>Aucune séance sur cette période.</translation>
    </message>
    <message>
        <source>Limits now</source>
        <translation>Limites actuelles</translation>
    </message>
    <message>
        <source>No prescriber has set a limit.</source>
        <translation>Aucun médecin n’a fixé de limite.</translation>
    </message>
    <message>
        <source>Other treatments</source>
        <translation>Autres traitements</translation>
    </message>
    <message>
        <source>Dry spells in this time are left out of the outlook.</source>
        <translation>Les périodes sèches de ce temps‑là ne comptent pas dans les prévisions.</translation>
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
        <translation>%1 le %2, au début</translation>
    </message>
    <message>
        <source>%1 on %2</source>
        <comment>score on day</comment>
        <translation>%1 le %2</translation>
    </message>
    <message numerus="yes">
        <source>%n dry spell(s) seen to the end</source>
        <translation>
            <numerusform>%n période sèche suivie jusqu’à sa fin</numerusform>
            <numerusform>%n périodes sèches suivies jusqu’à leur fin</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n not seen to the end</source>
        <comment>dry spells</comment>
        <translation>
            <numerusform>%n non suivie jusqu’à sa fin</numerusform>
            <numerusform>%n non suivies jusqu’à leur fin</numerusform>
        </translation>
    </message>
    <message>
        <source>not known yet</source>
        <translation>pas encore connue</translation>
    </message>
    <message>
        <source>%1 of %2 sessions done</source>
        <translation>séances faites&#xa0;: %1 sur %2</translation>
    </message>
    <message>
        <source>planned from %1</source>
        <translation>prévue à partir du %1</translation>
    </message>
    <message>
        <source>last session on %1</source>
        <translation>dernière séance le %1</translation>
    </message>
    <message numerus="yes">
        <source>%n of them on another day than planned</source>
        <translation>
            <numerusform>dont %n un autre jour que prévu</numerusform>
            <numerusform>dont %n un autre jour que prévu</numerusform>
        </translation>
    </message>
    <message>
        <source>Stage</source>
        <translation>Stade</translation>
    </message>
    <message>
        <source>Course</source>
        <translation>Cure</translation>
    </message>
    <message>
        <source>Severity 1–4, own answer (modelled on the HDSS)</source>
        <translation>Sévérité de 1 à 4, réponse de la personne (d’après l’HDSS)</translation>
    </message>
    <message>
        <source>%1 completed</source>
        <translation>terminées&#xa0;: %1</translation>
    </message>
    <message>
        <source>%1 interrupted</source>
        <translation>interrompues&#xa0;: %1</translation>
    </message>
    <message>
        <source>Sessions in the period</source>
        <translation>Séances de la période</translation>
    </message>
    <message>
        <source>Highest comfortable in the period</source>
        <translation>Plus haute intensité confortable de la période</translation>
    </message>
    <message>
        <source>Usual dry spell, all time</source>
        <translation>Période sèche habituelle, depuis le début</translation>
    </message>
    <message>
        <source>Last check-in</source>
        <translation>Dernière note du jour</translation>
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
            <numerusform>%n sur la période</numerusform>
            <numerusform>%n sur la période</numerusform>
        </translation>
    </message>
    <message>
        <source>Next session</source>
        <translation>Prochaine séance</translation>
    </message>
    <message numerus="yes">
        <source>Days dry after the latest %n session(s). Hollow: first damp day unknown. Pointed: end not seen.</source>
        <translation>
            <numerusform>Jours au sec après la dernière séance. Creux&#xa0;: fin imprécise. Pointe&#xa0;: fin non observée.</numerusform>
            <numerusform>Jours au sec après les %n dernières séances. Creux&#xa0;: fin imprécise. Pointe&#xa0;: fin non observée.</numerusform>
        </translation>
    </message>
    <message>
        <source>Days a week noted as damp, also after heat or effort, 0 to 7. Dark: wet or dripping. Ticks: sessions.</source>
        <translation>Jours humides par semaine, chaleur et effort compris. Foncé&#xa0;: mouillé ou trempé. Traits&#xa0;: séances.</translation>
    </message>
    <message>
        <source>Recorded by the person at home; not a medical device, no diagnosis. Machine&apos;s instructions, local rules and the clinician come first. Burns, blisters, faintness or palpitations: stop and seek help.</source>
        <translation>Noté par la personne à la maison&#xa0;; ni dispositif médical, ni diagnostic. Le mode d’emploi de l’appareil, les règles locales et le professionnel de santé passent avant. Brûlures, cloques, sensation de malaise ou palpitations&#xa0;: arrêter et demander de l’aide.</translation>
    </message>
    <message>
        <source>%1, %2: at most %3</source>
        <translation>%1, %2&#xa0;: %3 au maximum</translation>
    </message>
    <message>
        <source>Your treatment plan</source>
        <translation>Votre plan de traitement</translation>
    </message>
    <message>
        <source>For: %1</source>
        <translation>Pour&#xa0;: %1</translation>
    </message>
    <message>
        <source>From %1, %2</source>
        <translation>De %1, %2</translation>
    </message>
    <message>
        <source>Begin with %1 or less.</source>
        <translation>Commencez à %1 ou moins.</translation>
    </message>
    <message>
        <source>The app or the machine may show a lower limit. The lowest one counts.</source>
        <translation>L’application ou l’appareil peut indiquer une limite plus basse. C’est la plus basse qui compte.</translation>
    </message>
    <message>
        <source>Current to zero and polarity swapped after each part.</source>
        <translation>Après chaque partie&#xa0;: courant à zéro, puis polarité inversée.</translation>
    </message>
    <message>
        <source>In Firstdew: Plan, Care sheet, Scan the code.</source>
        <translation>Dans Firstdew&#xa0;: Plan, Fiche de soins, Scanner le code.</translation>
    </message>
    <message>
        <source>Day %1</source>
        <translation>Jour %1</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>weekday and day</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>Your sessions</source>
        <translation>Vos séances</translation>
    </message>
    <message>
        <source>Tick each session when it is done.</source>
        <translation>Cochez chaque séance quand elle est faite.</translation>
    </message>
    <message>
        <source>If you begin on another day, every day moves along.</source>
        <translation>Si vous commencez un autre jour, tous les jours se décalent.</translation>
    </message>
    <message>
        <source>Day 1 is the day of your first session.</source>
        <translation>Le jour 1 est celui de votre première séance.</translation>
    </message>
    <message>
        <source>Firstdew tells you when the next one is due.</source>
        <translation>Firstdew vous dit quand la prochaine est à faire.</translation>
    </message>
    <message>
        <source>Look at the skin. Cover small cuts with jelly.</source>
        <translation>Regardez la peau. Couvrez les petites coupures de vaseline.</translation>
    </message>
    <message>
        <source>Soak the pads.</source>
        <translation>Imbibez les électrodes.</translation>
    </message>
    <message>
        <source>Plate in, grid over it, then warm water.</source>
        <translation>Plaque dans le bac, grille par‑dessus, puis eau tiède.</translation>
    </message>
    <message>
        <source>Put the pads on. Switch on: the meter shows zero.</source>
        <translation>Placez les électrodes. Allumez&#xa0;: l’afficheur indique zéro.</translation>
    </message>
    <message>
        <source>Skin under water. Switch on: the meter shows zero.</source>
        <translation>Peau sous l’eau. Allumez&#xa0;: l’afficheur indique zéro.</translation>
    </message>
    <message>
        <source>Turn up slowly. It may prickle. It must not hurt.</source>
        <translation>Montez lentement. Ça peut picoter. Ça ne doit pas faire mal.</translation>
    </message>
    <message>
        <source>Between the parts: down to zero, swap or change sides, up again.</source>
        <translation>Entre les parties&#xa0;: revenez à zéro, inversez ou changez de côté, remontez.</translation>
    </message>
    <message>
        <source>Between the parts: down to zero, swap, up again.</source>
        <translation>Entre les parties&#xa0;: revenez à zéro, inversez, remontez.</translation>
    </message>
    <message>
        <source>Down to zero, machine off. Then the pads come off.</source>
        <translation>Revenez à zéro, éteignez l’appareil. Ensuite, retirez les électrodes.</translation>
    </message>
    <message>
        <source>Down to zero, machine off. Then take your hands or feet out.</source>
        <translation>Revenez à zéro, éteignez l’appareil. Ensuite, sortez les mains ou les pieds.</translation>
    </message>
    <message>
        <source>An adult stays beside the child the whole time.</source>
        <translation>Un adulte reste tout le temps auprès de l’enfant.</translation>
    </message>
    <message>
        <source>Both hands in the water: somebody stays beside you.</source>
        <translation>Les deux mains dans l’eau&#xa0;: quelqu’un reste près de vous.</translation>
    </message>
    <message>
        <source>Each session: %1</source>
        <translation>Chaque séance&#xa0;: %1</translation>
    </message>
    <message>
        <source>When to stop</source>
        <translation>Quand arrêter</translation>
    </message>
    <message>
        <source>It hurts, you feel faint, or your heart races: turn down to zero, machine off, then take your hands or feet out.</source>
        <translation>Ça fait mal, vous sentez venir un malaise ou votre cœur s’emballe&#xa0;: ramenez à zéro, éteignez l’appareil, puis sortez les mains ou les pieds.</translation>
    </message>
    <message>
        <source>A burn or a blister: leave the machine off until a clinician has looked at it.</source>
        <translation>Une brûlure ou une cloque&#xa0;: laissez l’appareil éteint jusqu’à ce qu’un professionnel de santé l’ait vue.</translation>
    </message>
    <message>
        <source>Pregnant, a new implant, or another health answer changed: leave the machine off and ask first.</source>
        <translation>Grossesse, nouvel implant ou autre réponse de santé qui change&#xa0;: laissez l’appareil éteint et demandez d’abord conseil.</translation>
    </message>
    <message>
        <source>Call: %1</source>
        <translation>Appeler&#xa0;: %1</translation>
    </message>
    <message>
        <source>Afterwards</source>
        <translation>Ensuite</translation>
    </message>
    <message>
        <source>Review: %1</source>
        <translation>Bilan&#xa0;: %1</translation>
    </message>
    <message>
        <source>If the course does not help: %1</source>
        <translation>Si la cure n’aide pas&#xa0;: %1</translation>
    </message>
    <message>
        <source>Written with Firstdew, which is not a medical device. Follow your machine&apos;s instructions and your clinician.</source>
        <translation>Rédigé avec Firstdew, qui n’est pas un dispositif médical. Suivez le mode d’emploi de votre appareil et l’avis du professionnel de santé qui vous suit.</translation>
    </message>
    <message>
        <source>Armpit pads: %1.</source>
        <translation>Électrodes d’aisselle&#xa0;: %1.</translation>
    </message>
    <message>
        <source>Mean charge a session: %1.</source>
        <translation>Charge moyenne par séance&#xa0;: %1.</translation>
    </message>
    <message>
        <source>%1 a minute on %2</source>
        <translation>%1 par minute le %2</translation>
    </message>
    <message>
        <source>Dry spells are reckoned from the last session to the first clammy day, with days not seen and top-ups made while still dry taken as what they are (interval- and right-censored). Response by HDSS: two steps strong, one good (Gülmez &amp; Solak, J Clin Med 2026;15:640, where %1 of %2 responded).</source>
        <translation>Les périodes sèches sont calculées de la dernière séance au premier jour moite&#xa0;; les jours non observés et les séances d’entretien faites encore au sec sont pris pour ce qu’ils sont (censure par intervalle et à droite). Réponse selon l’HDSS&#xa0;: deux niveaux, forte&#xa0;; un niveau, bonne (Gülmez &amp; Solak, J Clin Med 2026;15:640, où %1 de %2 personnes ont répondu).</translation>
    </message>
    <message numerus="yes">
        <source>median %n day(s) (%1: %2 to %3)</source>
        <translation>
            <numerusform>médiane&#xa0;: %n jour (%1&#xa0;: de %2 à %3)</numerusform>
            <numerusform>médiane&#xa0;: %n jours (%1&#xa0;: de %2 à %3)</numerusform>
        </translation>
    </message>
    <message>
        <source>Batteries: probably used up.</source>
        <translation>Piles&#xa0;: probablement vides.</translation>
    </message>
    <message>
        <source>severity %1&#xa0;now, %2&#xa0;before</source>
        <translation>sévérité&#xa0;: %1&#xa0;maintenant, %2&#xa0;avant</translation>
    </message>
</context>
<context>
    <name>People</name>
    <message>
        <source>People</source>
        <translation>Personnes</translation>
    </message>
    <message>
        <source>Each person has a record of their own; nothing is mixed.</source>
        <translation>Chaque personne a son propre historique&#xa0;; rien n’est mélangé.</translation>
    </message>
    <message>
        <source>Me</source>
        <translation>Moi</translation>
    </message>
    <message>
        <source>Adult beside the child: %1</source>
        <translation>Adulte auprès de l’enfant&#xa0;: %1</translation>
    </message>
    <message>
        <source>Shown now</source>
        <translation>Affiché maintenant</translation>
    </message>
    <message>
        <source>Show</source>
        <translation>Afficher</translation>
    </message>
    <message>
        <source>Your details</source>
        <translation>Vos informations</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Enregistrer</translation>
    </message>
    <message>
        <source>Add somebody</source>
        <translation>Ajouter quelqu’un</translation>
    </message>
    <message>
        <source>Add</source>
        <translation>Ajouter</translation>
    </message>
</context>
<context>
    <name>PersonForm</name>
    <message>
        <source>First name, or what you like to be called</source>
        <translation>Prénom, ou nom que vous préférez</translation>
    </message>
    <message>
        <source>Optional</source>
        <translation>Facultatif</translation>
    </message>
    <message>
        <source>Birthday</source>
        <translation>Date de naissance</translation>
    </message>
    <message>
        <source>It sets your current limit. Without it, the children&apos;s limits apply.</source>
        <translation>Elle détermine les limites qui comptent. Sans elle, ce sont celles des enfants.</translation>
    </message>
    <message>
        <source>Height in centimetres</source>
        <translation>Taille en centimètres</translation>
    </message>
    <message>
        <source>Optional. With the weight it tells how large the treated skin is.</source>
        <translation>Facultatif. Avec le poids, elle indique la surface de peau traitée.</translation>
    </message>
    <message>
        <source>Write a number from %1 to %2.</source>
        <translation>Écrivez un nombre de %1 à %2.</translation>
    </message>
    <message>
        <source>Weight in kilograms</source>
        <translation>Poids en kilogrammes</translation>
    </message>
    <message>
        <source>The adult beside the child</source>
        <translation>L’adulte auprès de l’enfant</translation>
    </message>
    <message>
        <source>Children are treated only with medical advice and an adult beside them.</source>
        <translation>Les enfants ne sont traités qu’avec un avis médical et un adulte auprès d’eux.</translation>
    </message>
</context>
<context>
    <name>PickRow</name>
    <message>
        <source>Choose</source>
        <translation>Choisir</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1&#xa0;: %2</translation>
    </message>
</context>
<context>
    <name>Plan</name>
    <message>
        <source>None yet</source>
        <translation>Pas encore</translation>
    </message>
    <message>
        <source>From %1, %2</source>
        <translation>De %1, %2</translation>
    </message>
    <message>
        <source>Settings</source>
        <translation>Réglages</translation>
    </message>
    <message>
        <source>Say where you treat and with which machine; your limits and your plan then stand here.</source>
        <translation>Dites où vous traitez et avec quel appareil&#xa0;; vos limites et votre plan s’afficheront alors ici.</translation>
    </message>
    <message>
        <source>Next session: %1</source>
        <translation>Prochaine séance&#xa0;: %1</translation>
    </message>
    <message>
        <source>Tap a day to move its session.</source>
        <translation>Touchez un jour pour déplacer sa séance.</translation>
    </message>
    <message numerus="yes">
        <source>The course will end %n day(s) late.</source>
        <translation>
            <numerusform>La cure dépasse ses quatre semaines de %n jour.</numerusform>
            <numerusform>La cure dépasse ses quatre semaines de %n jours.</numerusform>
        </translation>
    </message>
    <message>
        <source>Choose the course</source>
        <translation>Choisir la cure</translation>
    </message>
    <message>
        <source>Course</source>
        <translation>Cure</translation>
    </message>
    <message>
        <source>Continue</source>
        <translation>Reprendre</translation>
    </message>
    <message>
        <source>Pause</source>
        <translation>Suspendre</translation>
    </message>
    <message>
        <source>Health questions</source>
        <translation>Questions de santé</translation>
    </message>
    <message>
        <source>To be answered</source>
        <translation>À remplir</translation>
    </message>
    <message>
        <source>Needs a clinician&apos;s approval</source>
        <translation>Un point fait obstacle</translation>
    </message>
    <message>
        <source>Answered</source>
        <translation>Remplies</translation>
    </message>
    <message>
        <source>Days away</source>
        <translation>Absences</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 – %2</translation>
    </message>
    <message>
        <source>None</source>
        <translation>Aucune</translation>
    </message>
    <message>
        <source>Taught by somebody</source>
        <translation>Séance encadrée</translation>
    </message>
    <message>
        <source>Not marked</source>
        <translation>Non noté</translation>
    </message>
    <message>
        <source>Practice</source>
        <translation>Entraînement</translation>
    </message>
    <message>
        <source>A whole session with the machine off</source>
        <translation>Une séance entière, appareil éteint</translation>
    </message>
    <message>
        <source>Care sheet</source>
        <translation>Fiche de soins</translation>
    </message>
</context>
<context>
    <name>PracticeBanner</name>
    <message>
        <source>Practice: machine stays off</source>
        <translation>Entraînement&#xa0;: appareil éteint</translation>
    </message>
    <message>
        <source>Leave practice</source>
        <translation>Quitter l’entraînement</translation>
    </message>
</context>
<context>
    <name>Prompts</name>
    <message>
        <source>Check everything on the list. Machine off, current at zero.</source>
        <translation>Vérifiez tout sur la liste. Appareil éteint, courant à zéro.</translation>
    </message>
    <message>
        <source>Switch the machine on. Is the meter at zero, and is it set to direct current? Then tap.</source>
        <translation>Allumez l’appareil. L’afficheur est-il à zéro, et l’appareil réglé sur courant continu&#xa0;? Alors, touchez l’écran.</translation>
    </message>
    <message>
        <source>Switch the machine on. Is the meter at zero, and is the light for pulsed current on? Then tap.</source>
        <translation>Allumez l’appareil. L’afficheur est-il à zéro, et le voyant du courant pulsé allumé&#xa0;? Alors, touchez l’écran.</translation>
    </message>
    <message>
        <source>Hands in, in fifteen seconds. Keep them still under the water.</source>
        <translation>Dans quinze secondes, mettez les mains dans l’eau. Gardez-les immobiles sous l’eau.</translation>
    </message>
    <message>
        <source>Raise the current slowly. It may prickle. It must not hurt.</source>
        <translation>Montez le courant lentement. Ça peut picoter. Ça ne doit pas faire mal.</translation>
    </message>
    <message>
        <source>Raise the current slowly with the remote. It may prickle. It must not hurt.</source>
        <translation>Montez le courant lentement avec la télécommande. Ça peut picoter. Ça ne doit pas faire mal.</translation>
    </message>
    <message>
        <source>Hold still. Everything stays under water.</source>
        <translation>Ne bougez plus. Tout reste sous l’eau.</translation>
    </message>
    <message>
        <source>Hold still. Both pads stay where they are.</source>
        <translation>Ne bougez plus. Les deux électrodes restent en place.</translation>
    </message>
    <message>
        <source>Lower the current to zero. Slowly.</source>
        <translation>Baissez le courant à zéro. Lentement.</translation>
    </message>
    <message>
        <source>Lower the current to zero with the remote. Slowly.</source>
        <translation>Baissez le courant à zéro avec la télécommande. Lentement.</translation>
    </message>
    <message>
        <source>Is the meter at zero? Only then take your hands out. Dry them, and tap.</source>
        <translation>L’afficheur est-il à zéro&#xa0;? Seulement alors, sortez les mains. Séchez-les, et touchez l’écran.</translation>
    </message>
    <message>
        <source>Is the meter at zero? Only then take your hands out. Dry them, switch the machine off, and tap.</source>
        <translation>L’afficheur est-il à zéro&#xa0;? Seulement alors, sortez les mains. Séchez-les, éteignez l’appareil, et touchez l’écran.</translation>
    </message>
    <message>
        <source>Current at zero? Now swap the two leads. Cover small cuts again. Then tap.</source>
        <translation>Courant à zéro&#xa0;? Maintenant, échangez les deux câbles. Recouvrez les petites coupures. Puis touchez l’écran.</translation>
    </message>
    <message>
        <source>Current at zero? Now flip the polarity switch. Cover small cuts again. Then tap.</source>
        <translation>Courant à zéro&#xa0;? Maintenant, basculez l’inverseur de polarité. Recouvrez les petites coupures. Puis touchez l’écran.</translation>
    </message>
    <message>
        <source>Current at zero? Soak the pads again, and swap the two leads. Then tap.</source>
        <translation>Courant à zéro&#xa0;? Imbibez à nouveau les électrodes, et échangez les deux câbles. Puis touchez l’écran.</translation>
    </message>
    <message>
        <source>Current at zero? Soak the pads again, and flip the polarity switch. Then tap.</source>
        <translation>Courant à zéro&#xa0;? Imbibez à nouveau les électrodes, et basculez l’inverseur de polarité. Puis touchez l’écran.</translation>
    </message>
    <message>
        <source>Current at zero? Soak the pads again, and exchange them, right with left. Then tap.</source>
        <translation>Courant à zéro&#xa0;? Imbibez à nouveau les électrodes, et échangez-les, la droite avec la gauche. Puis touchez l’écran.</translation>
    </message>
    <message>
        <source>Current at zero? Now change to the other side. Cover small cuts again. Then tap.</source>
        <translation>Courant à zéro&#xa0;? Maintenant, changez de côté. Recouvrez les petites coupures. Puis touchez l’écran.</translation>
    </message>
    <message>
        <source>Machine off. Now take your hands or feet out, and dry your skin.</source>
        <translation>Éteignez l’appareil. Maintenant, sortez les mains ou les pieds, et séchez la peau.</translation>
    </message>
    <message>
        <source>Machine off. Now take the pads off, and dry your skin.</source>
        <translation>Éteignez l’appareil. Maintenant, retirez les électrodes, et séchez la peau.</translation>
    </message>
    <message>
        <source>Dry your skin and the kit.</source>
        <translation>Séchez la peau et le matériel.</translation>
    </message>
    <message>
        <source>Look at the meter.</source>
        <translation>Regardez l’afficheur.</translation>
    </message>
    <message>
        <source>Half way.</source>
        <translation>La moitié est faite.</translation>
    </message>
    <message>
        <source>One minute left.</source>
        <translation>Encore une minute.</translation>
    </message>
    <message>
        <source>Ten seconds.</source>
        <translation>Dix secondes.</translation>
    </message>
    <message>
        <source>Done.</source>
        <translation>Terminé.</translation>
    </message>
    <message>
        <source>Too high! Lower the current now.</source>
        <translation>Trop haut&#xa0;! Baissez le courant maintenant.</translation>
    </message>
    <message>
        <source>Machine off. Now.</source>
        <translation>Éteignez l’appareil. Maintenant.</translation>
    </message>
    <message>
        <source>Check the list. Then start again from the beginning.</source>
        <translation>Vérifiez la liste. Puis recommencez depuis le début.</translation>
    </message>
    <message>
        <source>Lower it a little, until it is comfortable.</source>
        <translation>Baissez un peu, jusqu’à ce que ce soit confortable.</translation>
    </message>
    <message>
        <source>I was away. What did the machine do? If you do not know, machine off. Then answer on the screen.</source>
        <translation>Il y a eu une interruption. Qu’a fait l’appareil&#xa0;? Si vous ne savez pas, éteignez-le. Puis répondez à l’écran.</translation>
    </message>
    <message>
        <source>It is enough for today.</source>
        <translation>C’est assez pour aujourd’hui.</translation>
    </message>
    <message>
        <source>That was too long ago. This session is over. What you did is kept.</source>
        <translation>C’était il y a trop longtemps. Cette séance est finie. Ce que vous avez fait est gardé.</translation>
    </message>
    <message>
        <source>Stopped. Current at zero, machine off. Then take your hands or feet out.</source>
        <translation>Arrêté. Courant à zéro, appareil éteint, puis sortez les mains ou les pieds.</translation>
    </message>
    <message>
        <source>Stopped. Current at zero, machine off, then take the pads off.</source>
        <translation>Arrêté. Courant à zéro, appareil éteint, puis retirez les électrodes.</translation>
    </message>
    <message>
        <source>Practice: the machine stays off. In a real session you switch it on now. Then tap.</source>
        <translation>Entraînement&#xa0;: l’appareil reste éteint. Dans une vraie séance, vous l’allumez maintenant. Puis touchez l’écran.</translation>
    </message>
    <message>
        <source>Practice: no current. In a real session you turn it up slowly now.</source>
        <translation>Entraînement&#xa0;: pas de courant. Dans une vraie séance, vous le montez lentement maintenant.</translation>
    </message>
    <message>
        <source>Practice: no current. In a real session you turn it down to zero now.</source>
        <translation>Entraînement&#xa0;: pas de courant. Dans une vraie séance, vous le baissez à zéro maintenant.</translation>
    </message>
    <message>
        <source>This is how loud I am. Can you hear me over the water?</source>
        <translation>Voici le volume de ma voix. M’entendez-vous malgré le bruit de l’eau&#xa0;?</translation>
    </message>
</context>
<context>
    <name>RemindersPage</name>
    <message>
        <source>Reminders</source>
        <translation>Rappels</translation>
    </message>
    <message>
        <source>On</source>
        <translation>Activés</translation>
    </message>
    <message>
        <source>Off</source>
        <translation>Désactivés</translation>
    </message>
    <message>
        <source>Daily check-in</source>
        <translation>Note du jour</translation>
    </message>
    <message>
        <source>Sessions</source>
        <translation>Séances</translation>
    </message>
    <message>
        <source>Quiet from</source>
        <translation>Silence dès</translation>
    </message>
    <message>
        <source>Quiet until</source>
        <translation>Silence jusqu’à</translation>
    </message>
    <message>
        <source>Remind of a back-up each month</source>
        <translation>Rappeler la sauvegarde chaque mois</translation>
    </message>
    <message>
        <source>Yes</source>
        <translation>Oui</translation>
    </message>
    <message>
        <source>No</source>
        <translation>Non</translation>
    </message>
    <message>
        <source>How many sessions is one damp spell worth to you?</source>
        <translation>Combien de séances acceptez‑vous pour éviter une période humide&#xa0;?</translation>
    </message>
    <message>
        <source>More: top-ups come earlier and more often. Fewer: fewer sessions, more damp days. Usual: 2.</source>
        <translation>Plus&#xa0;: les séances d’entretien viennent plus tôt et plus souvent. Moins&#xa0;: moins de séances, plus de jours humides. Habituel&#xa0;: 2.</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Enregistrer</translation>
    </message>
</context>
<context>
    <name>SetUpFirst</name>
    <message>
        <source>Set up</source>
        <translation>Configurer</translation>
    </message>
</context>
<context>
    <name>SetUpGoOn</name>
    <message>
        <source>Not everything is set up yet</source>
        <translation>La configuration n’est pas terminée</translation>
    </message>
    <message>
        <source>Before a session, Firstdew has to know your machine and your answers to the health questions.</source>
        <translation>Avant une séance, Firstdew doit connaître votre appareil et vos réponses aux questions de santé.</translation>
    </message>
    <message>
        <source>Continue the set-up</source>
        <translation>Continuer la configuration</translation>
    </message>
</context>
<context>
    <name>Settings</name>
    <message>
        <source>Settings</source>
        <translation>Réglages</translation>
    </message>
    <message>
        <source>Me</source>
        <translation>Moi</translation>
    </message>
    <message>
        <source>Voice only</source>
        <translation>Voix seule</translation>
    </message>
    <message>
        <source>Tones only</source>
        <translation>Sons seuls</translation>
    </message>
    <message>
        <source>Vibration only</source>
        <translation>Vibration seule</translation>
    </message>
    <message>
        <source>Voice and tones</source>
        <translation>Voix et sons</translation>
    </message>
    <message>
        <source>Machine and kit</source>
        <translation>Appareil et matériel</translation>
    </message>
    <message>
        <source>Not set</source>
        <translation>Non indiqué</translation>
    </message>
    <message numerus="yes">
        <source>Batteries: about %n session(s) left</source>
        <translation>
            <numerusform>Piles&#xa0;: environ %n séance restante</numerusform>
            <numerusform>Piles&#xa0;: environ %n séances restantes</numerusform>
        </translation>
    </message>
    <message>
        <source>Reminders</source>
        <translation>Rappels</translation>
    </message>
    <message>
        <source>Check-in %1, quiet %2 to %3</source>
        <translation>Note du jour à %1, silence de %2 à %3</translation>
    </message>
    <message>
        <source>Off</source>
        <translation>Désactivés</translation>
    </message>
    <message>
        <source>People</source>
        <translation>Personnes</translation>
    </message>
    <message>
        <source>Appearance and language</source>
        <translation>Apparence et langue</translation>
    </message>
    <message>
        <source>Dark</source>
        <translation>Sombre</translation>
    </message>
    <message>
        <source>Light</source>
        <translation>Clair</translation>
    </message>
    <message>
        <source>Match phone</source>
        <translation>Automatique</translation>
    </message>
    <message>
        <source>Move to another phone</source>
        <translation>Passer à un autre téléphone</translation>
    </message>
    <message>
        <source>Take everything with you</source>
        <translation>Tout emporter avec vous</translation>
    </message>
    <message>
        <source>Back-up, export and delete</source>
        <translation>Sauvegarder, exporter et supprimer</translation>
    </message>
    <message>
        <source>I teach others</source>
        <translation>Je forme d’autres personnes</translation>
    </message>
    <message>
        <source>Caseload</source>
        <translation>Personnes suivies</translation>
    </message>
    <message>
        <source>Who needs a call, and care sheets for them</source>
        <translation>Qui appeler, et des fiches de soins pour ces personnes</translation>
    </message>
    <message>
        <source>About and cautions</source>
        <translation>À propos et précautions</translation>
    </message>
    <message>
        <source>Version %1</source>
        <translation>Version %1</translation>
    </message>
    <message>
        <source>Batteries: probably used up</source>
        <translation>Piles&#xa0;: probablement vides</translation>
    </message>
    <message>
        <source>Ask for this phone&apos;s lock before showing the diary</source>
        <translation>Demander le verrouillage de ce téléphone avant d’afficher le journal</translation>
    </message>
    <message>
        <source>Firstdew: switch the app lock on or off</source>
        <translation>Firstdew&#xa0;: activer ou désactiver le verrouillage</translation>
    </message>
    <message>
        <source>This phone could not ask for its lock. Nothing was changed.</source>
        <translation>Ce téléphone n’a pas pu demander son verrouillage. Rien n’a été modifié.</translation>
    </message>
    <message>
        <source>When Firstdew starts, and when you come back after a minute. A session is never locked.</source>
        <translation>Au démarrage de Firstdew, et quand vous y revenez après une minute. Une séance n’est jamais verrouillée.</translation>
    </message>
    <message>
        <source>This phone has no lock that Firstdew can ask for: your diary opens without it.</source>
        <translation>Ce téléphone n’a pas de verrouillage que Firstdew puisse demander&#xa0;: votre journal s’ouvre sans lui.</translation>
    </message>
    <message>
        <source>For this, the phone needs a lock of its own that Firstdew can ask for.</source>
        <translation>Pour cela, le téléphone doit avoir son propre verrouillage, que Firstdew puisse demander.</translation>
    </message>
</context>
<context>
    <name>SettingsPage</name>
    <message>
        <source>Appearance and language</source>
        <translation>Apparence et langue</translation>
    </message>
    <message>
        <source>Theme</source>
        <translation>Thème</translation>
    </message>
    <message>
        <source>Match phone</source>
        <translation>Automatique</translation>
    </message>
    <message>
        <source>Light</source>
        <translation>Clair</translation>
    </message>
    <message>
        <source>Dark</source>
        <translation>Sombre</translation>
    </message>
    <message>
        <source>Text size</source>
        <translation>Taille du texte</translation>
    </message>
    <message>
        <source>Small</source>
        <translation>Petite</translation>
    </message>
    <message>
        <source>Normal</source>
        <translation>Normale</translation>
    </message>
    <message>
        <source>Large</source>
        <translation>Grande</translation>
    </message>
    <message>
        <source>Larger</source>
        <translation>Très grande</translation>
    </message>
    <message>
        <source>Largest</source>
        <translation>Maximale</translation>
    </message>
    <message>
        <source>Language</source>
        <translation>Langue</translation>
    </message>
</context>
<context>
    <name>Sheet</name>
    <message>
        <source>Close</source>
        <translation>Fermer</translation>
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
        <translation>Remise le</translation>
    </message>
    <message>
        <source>For</source>
        <translation>Pour</translation>
    </message>
    <message>
        <source>Course</source>
        <translation>Cure</translation>
    </message>
    <message>
        <source>Session days</source>
        <translation>Jours de séance</translation>
    </message>
    <message>
        <source>Current</source>
        <translation>Courant</translation>
    </message>
    <message>
        <source>Limit, direct</source>
        <translation>Limite, continu</translation>
    </message>
    <message>
        <source>Limit, pulsed</source>
        <translation>Limite, pulsé</translation>
    </message>
    <message>
        <source>Time to turn up</source>
        <translation>Temps pour monter</translation>
    </message>
    <message>
        <source>Time to turn down</source>
        <translation>Temps pour baisser</translation>
    </message>
    <message>
        <source>Time to swap</source>
        <translation>Temps pour inverser</translation>
    </message>
    <message>
        <source>Review</source>
        <translation>Bilan</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation>Remarques</translation>
    </message>
    <message>
        <source>Armpit pads</source>
        <translation>Électrodes d’aisselle</translation>
    </message>
    <message>
        <source>If the course does not help</source>
        <translation>Si la cure n’aide pas</translation>
    </message>
    <message>
        <source>Level to begin with</source>
        <translation>Intensité pour débuter</translation>
    </message>
    <message>
        <source>Whom to call</source>
        <translation>Qui appeler</translation>
    </message>
    <message numerus="yes">
        <source>%n second(s)</source>
        <translation>
            <numerusform>%n seconde</numerusform>
            <numerusform>%n secondes</numerusform>
        </translation>
    </message>
    <message>
        <source>As usual: %1</source>
        <translation>Comme d’habitude&#xa0;: %1</translation>
    </message>
    <message>
        <source>Left open</source>
        <translation>Laissé ouvert</translation>
    </message>
    <message numerus="yes">
        <source>%1: %2 times %n minute(s)</source>
        <translation>
            <numerusform>%1&#xa0;: %2 fois %n minute</numerusform>
            <numerusform>%1&#xa0;: %2 fois %n minutes</numerusform>
        </translation>
    </message>
    <message>
        <source>Too high: %1 is the usual limit. Lower it.</source>
        <translation>Trop haut&#xa0;: %1 est la limite habituelle. Baissez la valeur.</translation>
    </message>
    <message>
        <source>Type your name, on one short line.</source>
        <translation>Écrivez votre nom, sur une seule ligne courte.</translation>
    </message>
    <message>
        <source>Choose where to treat.</source>
        <translation>Choisissez les zones à traiter.</translation>
    </message>
    <message>
        <source>Armpits need pulsed current. Choose that one.</source>
        <translation>Les aisselles demandent un courant pulsé. Choisissez‑le.</translation>
    </message>
    <message>
        <source>Choose up to 60 days, from day 1.</source>
        <translation>Choisissez au plus 60 jours, à partir du jour 1.</translation>
    </message>
    <message>
        <source>This lies before the day of the sheet. Choose a later day.</source>
        <translation>C’est avant le jour de la fiche. Choisissez un jour plus tardif.</translation>
    </message>
    <message>
        <source>Keep it to one short line.</source>
        <translation>Tenez‑vous à une seule ligne courte.</translation>
    </message>
    <message>
        <source>Too long for the code. Shorten it.</source>
        <translation>Trop long pour le code. Raccourcissez.</translation>
    </message>
    <message>
        <source>This value cannot be used. Change it.</source>
        <translation>Cette valeur n’est pas utilisable. Changez‑la.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1&#xa0;: %2</translation>
    </message>
    <message>
        <source>%1: the course that runs now goes on.</source>
        <translation>%1&#xa0;: la cure en cours continue.</translation>
    </message>
    <message numerus="yes">
        <source>%1: a course of %n session(s) begins today.</source>
        <translation>
            <numerusform>%1&#xa0;: une cure de %n séance commence aujourd’hui.</numerusform>
            <numerusform>%1&#xa0;: une cure de %n séances commence aujourd’hui.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 It takes the place of the one that runs now.</source>
        <translation>%1 Elle remplace la cure en cours.</translation>
    </message>
    <message>
        <source>not set</source>
        <translation>non fixé</translation>
    </message>
    <message>
        <source>%1: %2 (now %3)</source>
        <translation>%1&#xa0;: %2 (maintenant %3)</translation>
    </message>
    <message>
        <source>%1 each</source>
        <translation>%1 chacune</translation>
    </message>
</context>
<context>
    <name>SkinPage</name>
    <message>
        <source>Skin after a session</source>
        <translation>Peau après une séance</translation>
    </message>
    <message>
        <source>Burns or blisters: no session there until a clinician has looked at it.</source>
        <translation>Brûlures ou cloques&#xa0;: pas de séance sur cette zone avant qu’un professionnel de santé les ait vues.</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Remarque</translation>
    </message>
    <message>
        <source>Optional</source>
        <translation>Facultatif</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Enregistrer</translation>
    </message>
</context>
<context>
    <name>SoundPage</name>
    <message>
        <source>Voice and tones</source>
        <translation>Voix et sons</translation>
    </message>
    <message>
        <source>Voice only</source>
        <translation>Voix seule</translation>
    </message>
    <message>
        <source>Tones only</source>
        <translation>Sons seuls</translation>
    </message>
    <message>
        <source>During a session each step, the minutes and the end are said aloud, so that nobody has to look at the phone.</source>
        <translation>Pendant une séance, chaque étape, les minutes et la fin sont dites à voix haute, pour que personne n’ait à regarder le téléphone.</translation>
    </message>
    <message>
        <source>A soft sound runs through the session. If it stops, turn the current to zero and switch the machine off.</source>
        <translation>Un léger son accompagne toute la séance. S’il s’arrête, ramenez le courant à zéro et éteignez l’appareil.</translation>
    </message>
    <message>
        <source>What is heard</source>
        <translation>Ce qu’on entend</translation>
    </message>
    <message>
        <source>Vibration only</source>
        <translation>Vibration seule</translation>
    </message>
    <message>
        <source>With both hands under water nobody feels the phone: there, voice and tones are heard all the same.</source>
        <translation>Avec les deux mains sous l’eau, on ne sent pas le téléphone&#xa0;: là, la voix et les sons restent audibles dans tous les cas.</translation>
    </message>
    <message>
        <source>Each step also felt as a vibration</source>
        <translation>Chaque étape aussi en vibration</translation>
    </message>
    <message>
        <source>Yes</source>
        <translation>Oui</translation>
    </message>
    <message>
        <source>No</source>
        <translation>Non</translation>
    </message>
    <message>
        <source>A pedal or a switch stops a session, like a key</source>
        <translation>Une pédale ou un contacteur arrête la séance, comme une touche</translation>
    </message>
    <message>
        <source>A reading above the limit sounds the alarm whatever is chosen here. The phone cannot see the current, only what is entered.</source>
        <translation>Une valeur au‑dessus de la limite déclenche l’alarme, quel que soit le choix fait ici. Le téléphone ne voit pas le courant, seulement ce qui est saisi.</translation>
    </message>
    <message>
        <source>Which voice</source>
        <translation>Quelle voix</translation>
    </message>
    <message>
        <source>Recorded voice</source>
        <translation>Voix enregistrée</translation>
    </message>
    <message>
        <source>Voice of this device</source>
        <translation>Voix de ce téléphone</translation>
    </message>
    <message>
        <source>You can choose the voice of this phone once it offers one for your language.</source>
        <translation>La voix de ce téléphone pourra être choisie dès qu’il en proposera une pour votre langue.</translation>
    </message>
    <message>
        <source>The recorded voice speaks English. The voice of this device speaks your language.</source>
        <translation>La voix enregistrée parle anglais. La voix de ce téléphone parle votre langue.</translation>
    </message>
    <message>
        <source>The voice speaks English so far.</source>
        <translation>La voix ne parle qu’anglais pour l’instant.</translation>
    </message>
    <message>
        <source>Test the volume</source>
        <translation>Tester le volume</translation>
    </message>
    <message>
        <source>The recorded voice does not speak your language. The voice of this device speaks in its place: test the volume, and hear whether you understand it.</source>
        <translation>La voix enregistrée ne parle pas votre langue. La voix de ce téléphone parle à sa place&#xa0;: testez le volume, et écoutez si vous la comprenez.</translation>
    </message>
    <message>
        <source>You can follow a session by the tones and on the screen. Both hands under water stays closed until a voice is known to speak your language.</source>
        <translation>Vous pouvez suivre une séance grâce aux sons et à l’écran. «&#xa0;Les deux mains sous l’eau&#xa0;» reste fermé tant qu’aucune voix connue ne parle votre langue.</translation>
    </message>
</context>
<context>
    <name>Stepper</name>
    <message>
        <source>%1: less</source>
        <translation>%1&#xa0;: moins</translation>
    </message>
    <message>
        <source>%1: more</source>
        <translation>%1&#xa0;: plus</translation>
    </message>
</context>
<context>
    <name>StirredUp</name>
    <message>
        <source>Anything that might explain it?</source>
        <translation>Quelque chose pourrait‑il l’expliquer&#xa0;?</translation>
    </message>
</context>
<context>
    <name>StoreTrouble</name>
    <message>
        <source>Your record could not be opened</source>
        <translation>Votre historique n’a pas pu être ouvert</translation>
    </message>
    <message>
        <source>The file with your record is damaged.</source>
        <translation>Le fichier de votre historique est abîmé.</translation>
    </message>
    <message>
        <source>A newer Firstdew wrote this record.</source>
        <translation>Une version plus récente de Firstdew a écrit cet historique.</translation>
    </message>
    <message>
        <source>Another program is using your record.</source>
        <translation>Un autre programme utilise votre historique.</translation>
    </message>
    <message>
        <source>Your record cannot be written to.</source>
        <translation>Impossible d’écrire dans votre historique.</translation>
    </message>
    <message>
        <source>The file in its place is not a Firstdew record, or is damaged at its very beginning.</source>
        <translation>Le fichier à sa place n’est pas un historique Firstdew, ou il est abîmé dès le début.</translation>
    </message>
    <message>
        <source>The file with your record is not there or cannot be read.</source>
        <translation>Le fichier de votre historique est absent ou illisible.</translation>
    </message>
    <message>
        <source>Firstdew can put what is still readable, and what a copy beside it holds, into a new file. The damaged file is kept.</source>
        <translation>Firstdew peut mettre dans un nouveau fichier ce qui est encore lisible, et ce que contient une copie voisine. Le fichier abîmé est gardé.</translation>
    </message>
    <message>
        <source>Update Firstdew, then open it again.</source>
        <translation>Mettez Firstdew à jour, puis rouvrez‑le.</translation>
    </message>
    <message>
        <source>Close that program, then try again.</source>
        <translation>Fermez ce programme, puis réessayez.</translation>
    </message>
    <message>
        <source>Let yourself write to the file and its folder, then try again.</source>
        <translation>Donnez‑vous le droit d’écrire dans le fichier et dans son dossier, puis réessayez.</translation>
    </message>
    <message>
        <source>Move that file elsewhere, put your record in its place, then try again.</source>
        <translation>Déplacez ce fichier ailleurs, mettez votre historique à sa place, puis réessayez.</translation>
    </message>
    <message>
        <source>Look whether the folder is there and belongs to you, then try again.</source>
        <translation>Vérifiez que le dossier existe et vous appartient, puis réessayez.</translation>
    </message>
    <message>
        <source>Try again in a moment.</source>
        <translation>Réessayez dans un instant.</translation>
    </message>
    <message>
        <source>Nothing was changed in it.</source>
        <translation>Rien n’y a été changé.</translation>
    </message>
    <message>
        <source>Leave the machine off until your record is open: your limits and answers stand in it.</source>
        <translation>Laissez l’appareil éteint tant que votre historique n’est pas ouvert&#xa0;: vos limites et vos réponses s’y trouvent.</translation>
    </message>
    <message>
        <source>Repair the record</source>
        <translation>Réparer l’historique</translation>
    </message>
    <message>
        <source>Try again</source>
        <translation>Réessayer</translation>
    </message>
    <message>
        <source>Restore a back-up</source>
        <translation>Restaurer une sauvegarde</translation>
    </message>
    <message>
        <source>It takes the place of the damaged file, which is kept.</source>
        <translation>Elle prend la place du fichier abîmé, qui est gardé.</translation>
    </message>
    <message>
        <source>Passphrase of the back-up</source>
        <translation>Phrase secrète de la sauvegarde</translation>
    </message>
    <message>
        <source>Restore</source>
        <translation>Restaurer</translation>
    </message>
</context>
<context>
    <name>SummaryPage</name>
    <message>
        <source>Summary for your prescriber</source>
        <translation>Synthèse pour votre médecin</translation>
    </message>
    <message>
        <source>A page that says how it goes and what you ask, and a second one with every session. Nothing leaves the phone before you choose where it goes.</source>
        <translation>Une page qui dit comment ça va et ce que vous demandez, et une deuxième avec chaque séance. Rien ne quitte le téléphone avant que vous choisissiez où l’envoyer.</translation>
    </message>
    <message>
        <source>How far back</source>
        <translation>Période couverte</translation>
    </message>
    <message>
        <source>A month</source>
        <translation>Un mois</translation>
    </message>
    <message>
        <source>Three months</source>
        <translation>Trois mois</translation>
    </message>
    <message>
        <source>Half a year</source>
        <translation>Six mois</translation>
    </message>
    <message>
        <source>A year</source>
        <translation>Un an</translation>
    </message>
    <message>
        <source>Share the summary</source>
        <translation>Partager la synthèse</translation>
    </message>
    <message>
        <source>Save it as a file</source>
        <translation>L’enregistrer en fichier</translation>
    </message>
    <message>
        <source>Look at it</source>
        <translation>La regarder</translation>
    </message>
    <message>
        <source>Hide the page</source>
        <translation>Masquer la page</translation>
    </message>
    <message>
        <source>Show the page here</source>
        <translation>Afficher la page ici</translation>
    </message>
    <message>
        <source>The first page as it will be printed</source>
        <translation>La première page telle qu’elle sera imprimée</translation>
    </message>
    <message>
        <source>Questions for the prescriber</source>
        <translation>Questions pour le médecin</translation>
    </message>
    <message>
        <source>Take back: %1</source>
        <translation>Retirer&#xa0;: %1</translation>
    </message>
    <message>
        <source>Your questions appear near the top of the page.</source>
        <translation>Ce que vous voulez demander figure près du haut de la page.</translation>
    </message>
    <message>
        <source>Your question</source>
        <translation>Votre question</translation>
    </message>
    <message>
        <source>Put it on the page</source>
        <translation>La mettre sur la page</translation>
    </message>
</context>
<context>
    <name>TallyLines</name>
    <message numerus="yes">
        <source>%n person(s)</source>
        <translation>
            <numerusform>%n personne</numerusform>
            <numerusform>%n personnes</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n check-in(s)</source>
        <translation>
            <numerusform>%n note du jour</numerusform>
            <numerusform>%n notes du jour</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n session(s)</source>
        <translation>
            <numerusform>%n séance</numerusform>
            <numerusform>%n séances</numerusform>
        </translation>
    </message>
    <message>
        <source>Last entry: %1</source>
        <translation>Dernière entrée&#xa0;: %1</translation>
    </message>
</context>
<context>
    <name>TaughtPage</name>
    <message>
        <source>A taught session</source>
        <translation>Une séance encadrée</translation>
    </message>
    <message>
        <source>Did somebody who knows the treatment watch a session? Mark together what they saw. It goes onto the summary.</source>
        <translation>Quelqu’un qui connaît le traitement a‑t‑il observé une séance&#xa0;? Notez ensemble ce qui a été vu. Cela figurera dans la synthèse.</translation>
    </message>
    <message>
        <source>Where</source>
        <translation>Où</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Quand</translation>
    </message>
    <message>
        <source>Who watched</source>
        <translation>Qui a observé</translation>
    </message>
    <message>
        <source>A name or a role, for example: the nurse</source>
        <translation>Un nom ou un rôle, par exemple&#xa0;: l’infirmière</translation>
    </message>
    <message>
        <source>What they saw</source>
        <translation>Ce qui a été vu</translation>
    </message>
    <message>
        <source>Current</source>
        <translation>Courant</translation>
    </message>
    <message>
        <source>Level agreed to begin with at home</source>
        <translation>Intensité convenue pour débuter à la maison</translation>
    </message>
    <message>
        <source>None agreed</source>
        <translation>Aucune convenue</translation>
    </message>
    <message>
        <source>%1, limit %2</source>
        <translation>%1, limite %2</translation>
    </message>
    <message>
        <source>Remove %1</source>
        <translation>Supprimer %1</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Enregistrer</translation>
    </message>
</context>
<context>
    <name>TaughtText</name>
    <message>
        <source>Checked the skin and took off jewellery</source>
        <translation>A vérifié la peau et retiré les bijoux</translation>
    </message>
    <message>
        <source>Soaked the pads and fitted them tight</source>
        <translation>A imbibé les électrodes et les a bien ajustées</translation>
    </message>
    <message>
        <source>Set out trays, plates and water</source>
        <translation>A installé les bacs, les plaques et l’eau</translation>
    </message>
    <message>
        <source>Turned up slowly and said when it was enough</source>
        <translation>A monté lentement et dit quand c’était assez</translation>
    </message>
    <message>
        <source>Swapped at zero</source>
        <translation>A inversé à zéro</translation>
    </message>
    <message>
        <source>Knows what to do when a pad comes off</source>
        <translation>Sait que faire quand une électrode se détache</translation>
    </message>
    <message>
        <source>Knows what to do when a hand or foot comes out of the water</source>
        <translation>Sait que faire quand une main ou un pied sort de l’eau</translation>
    </message>
    <message>
        <source>Knows when to stop and whom to call</source>
        <translation>Sait quand arrêter et qui appeler</translation>
    </message>
    <message>
        <source>%1, %2, with %3</source>
        <comment>taught: site, day, who watched</comment>
        <translation>%1, %2, avec %3</translation>
    </message>
    <message>
        <source>%1. %2: %3 agreed</source>
        <comment>taught: line, kind of current, milliamperes</comment>
        <translation>%1. %2&#xa0;: %3 convenus</translation>
    </message>
</context>
<context>
    <name>Technique</name>
    <message>
        <source>Was the current as high as is comfortable, and never above your limit? A weak current does little.</source>
        <translation>Le courant était‑il aussi élevé que le confort le permet, et jamais au‑dessus de votre limite&#xa0;? Un courant faible agit peu.</translation>
    </message>
    <message>
        <source>Was the polarity swapped half-way, each time?</source>
        <translation>La polarité a‑t‑elle été inversée à mi‑temps, à chaque fois&#xa0;?</translation>
    </message>
    <message>
        <source>Was the skin free of cream? Cream keeps the current off. Petroleum jelly goes on cuts only.</source>
        <translation>La peau était‑elle sans crème&#xa0;? La crème empêche le courant de passer. La vaseline se met seulement sur les coupures.</translation>
    </message>
    <message>
        <source>Was everything under water, flat on the grid and without pressing?</source>
        <translation>Tout était‑il sous l’eau, à plat sur la grille et sans appuyer&#xa0;?</translation>
    </message>
    <message>
        <source>With the machine off: is each lead in fully? Are the pads soaked through and tight?</source>
        <translation>Appareil éteint&#xa0;: chaque câble est‑il bien enfoncé&#xa0;? Les électrodes sont‑elles bien imbibées et ajustées&#xa0;?</translation>
    </message>
    <message>
        <source>With the machine off: is each lead in fully? Does each plate lie under its grid?</source>
        <translation>Appareil éteint&#xa0;: chaque câble est‑il bien enfoncé&#xa0;? Chaque plaque est‑elle sous sa grille&#xa0;?</translation>
    </message>
    <message>
        <source>Are the batteries fresh? Four alkaline cells last about three sessions.</source>
        <translation>Les piles sont‑elles neuves&#xa0;? Quatre piles alcalines durent environ trois séances.</translation>
    </message>
    <message>
        <source>Is your water very soft? It conducts badly. Ask your nurse or prescriber what to do, and add nothing by yourself, not even salt.</source>
        <translation>Votre eau est‑elle très douce&#xa0;? Elle conduit mal. Demandez à votre infirmier, à votre infirmière ou à votre médecin ce qu’il faut faire, et n’ajoutez rien de vous-même, pas même du sel.</translation>
    </message>
</context>
<context>
    <name>TechniquePage</name>
    <message>
        <source>Check how you do it</source>
        <translation>Vérifier vos gestes</translation>
    </message>
    <message>
        <source>Go through this before your next session. One small thing is often the reason why it does not help, or why the current will not rise.</source>
        <translation>Passez ces points en revue avant votre prochaine séance. Un petit détail explique souvent pourquoi ça n’aide pas, ou pourquoi le courant ne monte pas.</translation>
    </message>
</context>
<context>
    <name>TimePick</name>
    <message>
        <source>%1, chosen</source>
        <translation>%1, choisi</translation>
    </message>
</context>
<context>
    <name>TodayHeader</name>
    <message>
        <source>Summary for your prescriber</source>
        <translation>Synthèse pour votre médecin</translation>
    </message>
    <message>
        <source>Change person, now %1</source>
        <translation>Changer de personne, actuellement %1</translation>
    </message>
</context>
<context>
    <name>TravelPage</name>
    <message>
        <source>Taking the kit along</source>
        <translation>Emporter le matériel</translation>
    </message>
    <message>
        <source>Before you leave</source>
        <translation>Avant de partir</translation>
    </message>
    <message>
        <source>Dry the kit completely before you pack it.</source>
        <translation>Séchez complètement le matériel avant de l’emballer.</translation>
    </message>
    <message>
        <source>Take the batteries out, and pack new ones.</source>
        <translation>Retirez les piles et emportez‑en des neuves.</translation>
    </message>
    <message>
        <source>Pack the machine&apos;s instructions with it, for whoever asks at a border.</source>
        <translation>Emportez aussi le mode d’emploi de l’appareil, si quelqu’un le demande à une frontière.</translation>
    </message>
    <message>
        <source>Where you stay</source>
        <translation>Sur place</translation>
    </message>
    <message>
        <source>Set up as at home: dry hands, leads and machine away from the water, nothing of metal under the trays.</source>
        <translation>Installez‑vous comme à la maison&#xa0;: mains sèches, câbles et appareil loin de l’eau, rien en métal sous les bacs.</translation>
    </message>
    <message>
        <source>Water differs from place to place. Turn up even more slowly than at home, and go by the meter.</source>
        <translation>L’eau change d’un endroit à l’autre. Montez encore plus lentement qu’à la maison, et fiez‑vous à l’afficheur.</translation>
    </message>
    <message>
        <source>Very soft water conducts badly. Ask your nurse or prescriber what to do, and add nothing by yourself, not even salt.</source>
        <translation>Une eau très douce conduit mal. Demandez à votre infirmier, à votre infirmière ou à votre médecin ce qu’il faut faire, et n’ajoutez rien de vous-même, pas même du sel.</translation>
    </message>
    <message>
        <source>The current will not rise</source>
        <translation>Le courant ne monte pas</translation>
    </message>
</context>
<context>
    <name>TroubleSheet</name>
    <message>
        <source>That could not be saved</source>
        <translation>Cela n’a pas pu être enregistré</translation>
    </message>
    <message>
        <source>What was recorded before is safe. Make room on the phone or restart the app, then try again.</source>
        <translation>Ce qui était déjà enregistré est en sécurité. Libérez de la place sur le téléphone ou redémarrez l’application, puis réessayez.</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Fermer</translation>
    </message>
</context>
<context>
    <name>UnguardedSheet</name>
    <message>
        <source>The app lock does not work here</source>
        <translation>Le verrouillage de l’application ne fonctionne pas ici</translation>
    </message>
    <message>
        <source>It is switched on, but this phone has no lock that Firstdew can ask for. So your diary opened without it.</source>
        <translation>Il est activé, mais ce téléphone n’a pas de verrouillage que Firstdew puisse demander. Votre journal s’est donc ouvert sans lui.</translation>
    </message>
    <message>
        <source>Set a screen lock in the phone&apos;s own settings, or switch the app lock off under Settings.</source>
        <translation>Définissez un verrouillage de l’écran dans les réglages du téléphone, ou désactivez celui de l’application dans Réglages.</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Fermer</translation>
    </message>
</context>
<context>
    <name>WeeksBars</name>
    <message>
        <source>Damp days a week</source>
        <translation>Jours humides par semaine</translation>
    </message>
    <message>
        <source>Dampness over time, %1</source>
        <translation>Évolution de l’humidité, %1</translation>
    </message>
    <message>
        <source>A week with three check-ins or more draws a bar here.</source>
        <translation>Une semaine avec au moins trois notes du jour dessine une barre ici.</translation>
    </message>
    <message>
        <source>Dark: wet or dripping days. Light: clammy days. Marks below show your sessions.</source>
        <translation>Foncé&#xa0;: jours de peau mouillée ou trempée. Clair&#xa0;: jours de peau moite. Repères en bas&#xa0;: vos séances.</translation>
    </message>
    <message>
        <source>Dark: wet or dripping days. Light: clammy days.</source>
        <translation>Foncé&#xa0;: jours de peau mouillée ou trempée. Clair&#xa0;: jours de peau moite.</translation>
    </message>
</context>
<context>
    <name>WeighPage</name>
    <message>
        <source>Weighing</source>
        <translation>Pesée</translation>
    </message>
    <message>
        <source>Weigh a paper, hold it to the skin for five minutes, weigh it again. It takes a scale that shows milligrams.</source>
        <translation>Pesez un papier, tenez‑le cinq minutes sur la peau, pesez‑le à nouveau. Il faut une balance qui affiche les milligrammes.</translation>
    </message>
    <message>
        <source>Before, in milligrams</source>
        <translation>Avant, en milligrammes</translation>
    </message>
    <message>
        <source>After, in milligrams</source>
        <translation>Après, en milligrammes</translation>
    </message>
    <message>
        <source>It cannot weigh less afterwards; weigh again.</source>
        <translation>Il ne peut pas peser moins après&#xa0;; pesez à nouveau.</translation>
    </message>
    <message>
        <source>Minutes</source>
        <translation>Minutes</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Enregistrer</translation>
    </message>
    <message>
        <source>%1 a minute</source>
        <translation>%1 par minute</translation>
    </message>
</context>
<context>
    <name>Welcome</name>
    <message>
        <source>Welcome to Firstdew</source>
        <translation>Bienvenue dans Firstdew</translation>
    </message>
    <message>
        <source>Firstdew leads you through treating sweating hands, feet or armpits with tap water and a small current. It tells you when the next session is due.</source>
        <translation>Firstdew vous guide pour traiter la transpiration des mains, des pieds ou des aisselles avec de l’eau du robinet et un faible courant. Il vous dit quand la prochaine séance est à faire.</translation>
    </message>
    <message>
        <source>Move from another phone</source>
        <translation>Venir d’un autre téléphone</translation>
    </message>
</context>
<context>
    <name>WhyPage</name>
    <message>
        <source>Why?</source>
        <translation>Pourquoi&#xa0;?</translation>
    </message>
    <message>
        <source>No outlook yet. It begins with a course that is done and about two weeks of check-ins.</source>
        <translation>Pas encore de prévisions. Elles commencent après une cure faite et environ deux semaines de notes du jour.</translation>
    </message>
    <message>
        <source>The next days</source>
        <translation>Les prochains jours</translation>
    </message>
    <message>
        <source>Of twenty such days, so many would be damp by then if no session comes first.</source>
        <translation>Sur vingt jours comparables, voilà combien seraient humides d’ici là si aucune séance n’a lieu avant.</translation>
    </message>
    <message>
        <source>How the forecasts have done</source>
        <translation>Justesse des prévisions</translation>
    </message>
    <message>
        <source>Less</source>
        <translation>Voir moins</translation>
    </message>
    <message>
        <source>More</source>
        <translation>Voir plus</translation>
    </message>
    <message>
        <source>How long your dry spells last</source>
        <translation>Durée de vos périodes sèches</translation>
    </message>
    <message>
        <source>Share of spells still dry</source>
        <translation>Part des périodes encore sèches</translation>
    </message>
    <message>
        <source>The curve shows what share of your dry spells lasts longer than the days below it. The inner band holds the middle half of them, the outer one four in five. Bars: your latest spells; hollow where the change fell between two check-ins, with an arrow where a session came while still dry or the spell goes on. Faint bars: under another treatment.</source>
        <translation>La courbe montre quelle part de vos périodes sèches dure plus longtemps que le nombre de jours indiqué. La bande intérieure en contient la moitié centrale, la bande extérieure quatre sur cinq. Barres&#xa0;: vos dernières périodes&#xa0;; creuses si le changement est tombé entre deux notes du jour, avec une flèche si une séance est venue encore au sec ou si la période continue. Barres pâles&#xa0;: pendant un autre traitement.</translation>
    </message>
    <message numerus="yes">
        <source>Based on %n dry spell(s) in your diary.</source>
        <translation>
            <numerusform>D’après %n période sèche de votre journal.</numerusform>
            <numerusform>D’après %n périodes sèches de votre journal.</numerusform>
        </translation>
    </message>
    <message>
        <source>Still going on, or topped up while dry: %1.</source>
        <translation>Encore en cours, ou séance d’entretien faite au sec&#xa0;: %1.</translation>
    </message>
    <message>
        <source>Left out, under another treatment: %1.</source>
        <translation>Laissées de côté, pendant un autre traitement&#xa0;: %1.</translation>
    </message>
    <message>
        <source>One damp spell counts as %1 sessions. So a top-up is due %2, or earlier without check-ins.</source>
        <translation>Une période humide compte comme %1 séances. Séance d’entretien à faire&#xa0;: %2, ou plus tôt sans notes du jour.</translation>
    </message>
    <message>
        <source>This is an estimate from your own notes, not a diagnosis. Your prescriber&apos;s word counts.</source>
        <translation>C’est une estimation d’après vos propres notes, pas un diagnostic. C’est la parole de votre médecin qui compte.</translation>
    </message>
    <message>
        <source>Your dry spells are getting shorter</source>
        <translation>Vos périodes sèches raccourcissent</translation>
    </message>
</context>
<context>
    <name>Words</name>
    <message>
        <source>Saved.</source>
        <translation>Enregistré.</translation>
    </message>
    <message>
        <source>Taken back.</source>
        <translation>Annulé.</translation>
    </message>
    <message>
        <source>The alarm is over.</source>
        <translation>L’alarme est terminée.</translation>
    </message>
    <message>
        <source>First time here: begin low, and go by what is comfortable.</source>
        <translation>Première fois ici&#xa0;: commencez bas, et fiez‑vous à ce qui est confortable.</translation>
    </message>
    <message>
        <source>Begin with the level you agreed on when you were taught.</source>
        <translation>Commencez à l’intensité convenue lors de l’apprentissage.</translation>
    </message>
    <message>
        <source>%1 was comfortable last time.</source>
        <translation>La dernière fois, %1 était confortable.</translation>
    </message>
    <message>
        <source>%1 was unpleasant last time, so less.</source>
        <translation>La dernière fois, %1 était désagréable, donc moins.</translation>
    </message>
    <message>
        <source>This is the limit.</source>
        <translation>C’est la limite.</translation>
    </message>
    <message>
        <source>The last session was not finished, so the same level again.</source>
        <translation>La dernière séance n’a pas été finie&#xa0;: donc à nouveau la même intensité.</translation>
    </message>
    <message>
        <source>Pulsed current is felt less; try it, if your machine has it.</source>
        <translation>Le courant pulsé se sent moins&#xa0;; essayez‑le, si votre appareil le propose.</translation>
    </message>
    <message>
        <source>The skin was irritated after %1, so clearly less.</source>
        <translation>La peau était irritée après %1, donc nettement moins.</translation>
    </message>
    <message>
        <source>It has been a while since your last session here, so start lower than %1.</source>
        <translation>Votre dernière séance ici remonte à un certain temps&#xa0;: commencez plus bas que %1.</translation>
    </message>
    <message>
        <source>The same level as last time, until it was comfortable.</source>
        <translation>La même intensité que la dernière fois, jusqu’à ce qu’elle soit confortable.</translation>
    </message>
    <message>
        <source>Direct current may work better now; ask the adult or nurse who helps.</source>
        <translation>Le courant continu peut mieux agir maintenant&#xa0;; demandez à l’adulte, à l’infirmier ou à l’infirmière qui aide.</translation>
    </message>
    <message>
        <source>Switch flipped</source>
        <translation>Inverseur basculé</translation>
    </message>
    <message>
        <source>Pads exchanged</source>
        <translation>Électrodes échangées</translation>
    </message>
    <message>
        <source>Leads swapped</source>
        <translation>Câbles échangés</translation>
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
        <translation>Pas possible. %1.</translation>
    </message>
    <message>
        <source>Watch your skin above %1.</source>
        <translation>Surveillez votre peau au‑dessus de %1.</translation>
    </message>
    <message>
        <source>Enter height and weight, and the size of this skin counts as well.</source>
        <translation>Saisissez la taille et le poids, et la surface de cette peau comptera aussi.</translation>
    </message>
    <message>
        <source>Aim for about %1.</source>
        <translation>Visez environ %1.</translation>
    </message>
    <message>
        <source>Start at %1. Current can creep up, so leave %2 to spare at first.</source>
        <translation>Commencez à %1. Le courant peut monter peu à peu&#xa0;: gardez d’abord une marge de %2.</translation>
    </message>
    <message>
        <source>Jewellery, watch and piercings off (not needed above the neck)</source>
        <translation>Bijoux, montre et piercings retirés (inutile au‑dessus du cou)</translation>
    </message>
    <message>
        <source>I&apos;ve checked my skin: no new redness, blister or burn</source>
        <translation>J’ai vérifié ma peau&#xa0;: ni nouvelle rougeur, ni cloque, ni brûlure</translation>
    </message>
    <message>
        <source>Cuts under a thin layer of petroleum jelly, only on the broken skin</source>
        <translation>Coupures sous une fine couche de vaseline, seulement là où la peau est entamée</translation>
    </message>
    <message>
        <source>Hand trays on a table that is not metal</source>
        <translation>Bacs pour les mains sur une table qui n’est pas en métal</translation>
    </message>
    <message>
        <source>Foot trays on the floor</source>
        <translation>Bacs pour les pieds au sol</translation>
    </message>
    <message>
        <source>Each plate under its grid; skin never touches a plate</source>
        <translation>Chaque plaque sous sa grille&#xa0;; la peau ne touche jamais une plaque</translation>
    </message>
    <message>
        <source>Pads soaked through, and tight</source>
        <translation>Électrodes bien imbibées et bien ajustées</translation>
    </message>
    <message>
        <source>Machine off, current at zero, leads in</source>
        <translation>Appareil éteint, courant à zéro, câbles branchés</translation>
    </message>
    <message>
        <source>My helper stays beside me the whole session</source>
        <translation>La personne qui m’aide reste près de moi pendant toute la séance</translation>
    </message>
    <message>
        <source>Remote control within reach of my hands in the water, placed as its maker says</source>
        <translation>Télécommande à portée de mes mains dans l’eau, placée comme le fabricant l’indique</translation>
    </message>
    <message>
        <source>Batteries in</source>
        <translation>Piles en place</translation>
    </message>
    <message>
        <source>Your first three sessions here go step by step.</source>
        <translation>Vos trois premières séances ici se font pas à pas.</translation>
    </message>
    <message>
        <source>It has been four weeks or more. Let&apos;s go step by step.</source>
        <translation>Cela fait quatre semaines ou plus. Allons‑y pas à pas.</translation>
    </message>
    <message>
        <source>Last time something was not right. Let&apos;s go step by step.</source>
        <translation>La dernière fois, quelque chose n’allait pas. Allons‑y pas à pas.</translation>
    </message>
    <message>
        <source>Your machine has changed. Let&apos;s go step by step.</source>
        <translation>Votre appareil a changé. Allons‑y pas à pas.</translation>
    </message>
    <message>
        <source>Your first session with both hands in goes step by step.</source>
        <translation>Votre première séance avec les deux mains dans l’eau se fait pas à pas.</translation>
    </message>
    <message>
        <source>Aim %1</source>
        <translation>Visez %1</translation>
    </message>
    <message>
        <source>Nothing about my health has changed</source>
        <translation>Rien n’a changé pour ma santé</translation>
    </message>
    <message>
        <source>On, at zero, direct current: begin</source>
        <translation>Allumé, à zéro, courant continu&#xa0;: commencer</translation>
    </message>
    <message>
        <source>On, at zero, pulsed light on: begin</source>
        <translation>Allumé, à zéro, voyant pulsé allumé&#xa0;: commencer</translation>
    </message>
    <message>
        <source>All checked, begin</source>
        <translation>Tout est vérifié, commencer</translation>
    </message>
    <message>
        <source>Meter at zero: hands in again</source>
        <translation>Afficheur à zéro&#xa0;: je remets les mains</translation>
    </message>
    <message>
        <source>On, at zero, direct current</source>
        <translation>Allumé, à zéro, courant continu</translation>
    </message>
    <message>
        <source>On, at zero, pulsed light on</source>
        <translation>Allumé, à zéro, voyant pulsé allumé</translation>
    </message>
    <message>
        <source>Raised again</source>
        <translation>Courant remonté</translation>
    </message>
    <message>
        <source>It is comfortable</source>
        <translation>C’est confortable</translation>
    </message>
    <message>
        <source>At zero, hands out and dry</source>
        <translation>À zéro, mains sorties et sèches</translation>
    </message>
    <message>
        <source>Current is at zero</source>
        <translation>Courant à zéro</translation>
    </message>
    <message>
        <source>Changed side</source>
        <translation>Côté changé</translation>
    </message>
    <message>
        <source>A pad came off</source>
        <translation>Électrode détachée</translation>
    </message>
    <message>
        <source>I took them out</source>
        <translation>J’ai tout sorti</translation>
    </message>
    <message>
        <source>It kept running, in direct current</source>
        <translation>Il est resté allumé, en courant continu</translation>
    </message>
    <message>
        <source>It kept running, pulsed light on</source>
        <translation>Il est resté allumé, voyant pulsé allumé</translation>
    </message>
    <message>
        <source>Any small cuts? Cover them with a thin layer of petroleum jelly again.</source>
        <translation>De petites coupures&#xa0;? Recouvrez‑les d’une fine couche de vaseline.</translation>
    </message>
    <message>
        <source>It is enough for today. What you did is kept.</source>
        <translation>C’est assez pour aujourd’hui. Ce que vous avez fait est gardé.</translation>
    </message>
    <message>
        <source>That was more than ten minutes ago, so this session is over. What you did is kept.</source>
        <translation>C’était il y a plus de dix minutes&#xa0;: cette séance est donc finie. Ce que vous avez fait est gardé.</translation>
    </message>
    <message>
        <source>Another version of Firstdew led this session. It cannot go on from there. What you did is kept. Machine off now.</source>
        <translation>Une autre version de Firstdew menait cette séance. Elle ne peut pas continuer de là. Ce que vous avez fait est gardé. Éteignez l’appareil maintenant.</translation>
    </message>
    <message>
        <source>Practice: the phase waits. In a real session you turn it up again when you are ready.</source>
        <translation>Entraînement&#xa0;: la phase attend. Dans une vraie séance, vous remontez quand vous le souhaitez.</translation>
    </message>
    <message>
        <source>The phase waits at zero. Raise again when you are ready.</source>
        <translation>La phase attend à zéro. Remontez quand vous le souhaitez.</translation>
    </message>
    <message>
        <source>The session goes on. Machine off, current at zero; confirm the list again.</source>
        <translation>La séance continue. Appareil éteint, courant à zéro&#xa0;; confirmez à nouveau la liste.</translation>
    </message>
    <message>
        <source>The session starts again from its beginning. Machine off, current at zero; confirm the list.</source>
        <translation>La séance recommence depuis le début. Appareil éteint, courant à zéro&#xa0;; confirmez la liste.</translation>
    </message>
    <message>
        <source>Stays off</source>
        <translation>Reste éteint</translation>
    </message>
    <message>
        <source>No current</source>
        <translation>Sans courant</translation>
    </message>
    <message>
        <source>Check</source>
        <translation>Vérifiez</translation>
    </message>
    <message>
        <source>Switch on</source>
        <translation>Allumez</translation>
    </message>
    <message>
        <source>Hands in</source>
        <translation>Mains à l’eau</translation>
    </message>
    <message>
        <source>Raise</source>
        <translation>Montez</translation>
    </message>
    <message>
        <source>Hold</source>
        <translation>Immobile</translation>
    </message>
    <message>
        <source>Lower</source>
        <translation>Baissez</translation>
    </message>
    <message>
        <source>Hands out</source>
        <translation>Mains dehors</translation>
    </message>
    <message>
        <source>Swap</source>
        <translation>Inversez</translation>
    </message>
    <message>
        <source>Change side</source>
        <translation>Changez de côté</translation>
    </message>
    <message>
        <source>Lift out</source>
        <translation>Retirez tout</translation>
    </message>
    <message numerus="yes">
        <source>In a real session this takes %n minute(s).</source>
        <translation>
            <numerusform>Dans une vraie séance, cela prend %n minute.</numerusform>
            <numerusform>Dans une vraie séance, cela prend %n minutes.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>In a real session this takes %n second(s).</source>
        <translation>
            <numerusform>Dans une vraie séance, cela prend %n seconde.</numerusform>
            <numerusform>Dans une vraie séance, cela prend %n secondes.</numerusform>
        </translation>
    </message>
    <message>
        <source>You could not start a real session today: %1</source>
        <translation>Vous ne pourriez pas commencer une vraie séance aujourd’hui&#xa0;: %1</translation>
    </message>
    <message>
        <source>Waiting at zero</source>
        <translation>En attente à zéro</translation>
    </message>
    <message>
        <source>Ends at %1</source>
        <translation>Fin à %1</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Stop</translation>
    </message>
    <message>
        <source>Turn down to %1</source>
        <translation>Baissez à %1</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Phase %1 of %2</source>
        <translation>Phase %1 sur %2</translation>
    </message>
    <message>
        <source>none yet</source>
        <translation>pas encore de valeur</translation>
    </message>
    <message>
        <source>This skin had its session today. Let it rest. Next session: tomorrow at the earliest.</source>
        <translation>Cette peau a eu sa séance aujourd’hui. Laissez‑la se reposer. Prochaine séance&#xa0;: demain au plus tôt.</translation>
    </message>
    <message>
        <source>The health questions are due. Leave the machine off until they are answered.</source>
        <translation>Il est temps de répondre aux questions de santé. Laissez l’appareil éteint jusqu’à ce que ce soit fait.</translation>
    </message>
    <message>
        <source>A health question stands in the way. Leave the machine off until a clinician has approved treatment.</source>
        <translation>Une question de santé fait obstacle. Laissez l’appareil éteint jusqu’à l’autorisation d’un professionnel de santé.</translation>
    </message>
    <message>
        <source>A blister or burn was noted there. Leave the machine off until a clinician has looked at it.</source>
        <translation>Une cloque ou une brûlure a été notée sur cette zone. Laissez l’appareil éteint jusqu’à ce qu’un professionnel de santé l’ait vue.</translation>
    </message>
    <message>
        <source>Enter the date of birth first. The limit of the current depends on it.</source>
        <translation>Saisissez d’abord la date de naissance. La limite du courant en dépend.</translation>
    </message>
    <message>
        <source>Your care sheet prescribes the other current here. Choose that one.</source>
        <translation>Votre fiche de soins prescrit ici l’autre courant. Choisissez‑le.</translation>
    </message>
    <message>
        <source>Your machine has only direct current, which must not be used at the armpits.</source>
        <translation>Votre appareil n’a que du courant continu, qui ne doit pas être utilisé aux aisselles.</translation>
    </message>
    <message>
        <source>Your machine does not have this current. Choose the one it has.</source>
        <translation>Votre appareil n’a pas ce courant. Choisissez celui qu’il a.</translation>
    </message>
    <message>
        <source>Armpits are treated with pulsed current only</source>
        <translation>Les aisselles se traitent seulement en courant pulsé</translation>
    </message>
    <message>
        <source>The meter is above the limit. Turn it down, then enter what it shows.</source>
        <translation>L’afficheur est au‑dessus de la limite. Baissez, puis saisissez ce qu’il indique.</translation>
    </message>
    <message>
        <source>No meter shows that. Read it again; if in doubt, lower the current.</source>
        <translation>Aucun afficheur n’indique cela. Relisez‑le&#xa0;; en cas de doute, baissez le courant.</translation>
    </message>
    <message>
        <source>With both hands in the water you need a remote control, and none is entered for your machine. Ask somebody to stay beside you.</source>
        <translation>Avec les deux mains dans l’eau, il vous faut une télécommande, et aucune n’est indiquée pour votre appareil. Demandez à quelqu’un de rester près de vous.</translation>
    </message>
    <message>
        <source>With a screen reader on, a tap anywhere does not stop the session. Ask somebody to stay beside you, or use a pedal or a switch.</source>
        <translation>Avec un lecteur d’écran actif, toucher l’écran n’importe où n’arrête pas la séance. Demandez à quelqu’un de rester près de vous, ou servez‑vous d’une pédale ou d’un contacteur.</translation>
    </message>
    <message>
        <source>A child is never alone with both hands in the water. Somebody stays beside the child.</source>
        <translation>Un enfant n’est jamais seul avec les deux mains dans l’eau. Quelqu’un reste près de lui.</translation>
    </message>
    <message>
        <source>Choose who can tap the phone.</source>
        <translation>Choisissez qui peut toucher le téléphone.</translation>
    </message>
    <message>
        <source>There is no code in this picture that can be read. Take it straight from the front, near and in good light.</source>
        <translation>Cette image ne contient aucun code lisible. Prenez‑la bien de face, de près et avec une bonne lumière.</translation>
    </message>
    <message>
        <source>It is enough for today. Leave the machine off; the next session is for tomorrow at the earliest.</source>
        <translation>C’est assez pour aujourd’hui. Laissez l’appareil éteint&#xa0;; la prochaine séance est pour demain au plus tôt.</translation>
    </message>
    <message>
        <source>Machine off. The session starts again once you confirm the list.</source>
        <translation>Appareil éteint. La séance recommence dès que vous confirmez la liste.</translation>
    </message>
    <message>
        <source>Say who watched, and tick what was seen.</source>
        <translation>Dites qui a observé, et cochez ce qui a été vu.</translation>
    </message>
    <message>
        <source>With both hands in the water you go by what you hear, and the voice cannot be made ready. Ask somebody to stay beside you.</source>
        <translation>Avec les deux mains dans l’eau, vous vous fiez à ce que vous entendez, et la voix ne peut pas être préparée. Demandez à quelqu’un de rester près de vous.</translation>
    </message>
    <message>
        <source>The current may still be flowing. Lower it to zero first.</source>
        <translation>Le courant passe peut-être encore. Baissez‑le d’abord à zéro.</translation>
    </message>
    <message>
        <source>This is no back-up, or it was cut short or changed. Take another one.</source>
        <translation>Ce n’est pas une sauvegarde, ou elle a été coupée ou modifiée. Prenez‑en une autre.</translation>
    </message>
    <message>
        <source>It does not open with this passphrase, or is damaged. Try again, or take another back-up.</source>
        <translation>Elle ne s’ouvre pas avec cette phrase secrète, ou elle est abîmée. Réessayez, ou prenez une autre sauvegarde.</translation>
    </message>
    <message>
        <source>This passphrase is too short. Choose one of at least eight characters.</source>
        <translation>Cette phrase secrète est trop courte. Choisissez‑en une d’au moins huit caractères.</translation>
    </message>
    <message>
        <source>This file may be about somebody else: name or birth date differ, or are missing. Nothing was added.</source>
        <translation>Ce fichier concerne peut-être quelqu’un d’autre&#xa0;: le nom ou la date de naissance diffère, ou manque. Rien n’a été ajouté.</translation>
    </message>
    <message>
        <source>A file of that name is there already. It was left as it is.</source>
        <translation>Un fichier de ce nom existe déjà. Il est resté tel quel.</translation>
    </message>
    <message>
        <source>The file with your record was moved, deleted or replaced while Firstdew was open. Nothing was saved. Close Firstdew, put the file back and open it again.</source>
        <translation>Le fichier de votre historique a été déplacé, supprimé ou remplacé pendant que Firstdew était ouvert. Rien n’a été enregistré. Fermez Firstdew, remettez le fichier et rouvrez l’application.</translation>
    </message>
    <message>
        <source>This care sheet is dated in the future. Ask for one with the right date.</source>
        <translation>Cette fiche de soins porte une date dans le futur. Demandez‑en une avec la bonne date.</translation>
    </message>
    <message>
        <source>It could not be saved there. Choose another place, or make room first.</source>
        <translation>Impossible d’enregistrer à cet endroit. Choisissez‑en un autre, ou libérez d’abord de la place.</translation>
    </message>
    <message>
        <source>There is no room left; nothing was written. Make room and try again.</source>
        <translation>Il n’y a plus de place&#xa0;; rien n’a été écrit. Libérez de la place et réessayez.</translation>
    </message>
    <message>
        <source>A file could not be read or written. Look whether it is still there and whether there is room.</source>
        <translation>Un fichier n’a pas pu être lu ou écrit. Vérifiez qu’il existe encore et qu’il y a de la place.</translation>
    </message>
    <message>
        <source>Not everything came over. Your back-up is as it was. Try again with the same file.</source>
        <translation>Tout n’a pas été repris. Votre sauvegarde est inchangée. Réessayez avec le même fichier.</translation>
    </message>
    <message>
        <source>This file is too large to be the right one.</source>
        <translation>Ce fichier est trop gros pour être le bon.</translation>
    </message>
    <message>
        <source>Another program is using the record. Close it and try again.</source>
        <translation>Un autre programme utilise l’historique. Fermez‑le et réessayez.</translation>
    </message>
    <message>
        <source>The record is damaged. Keep the file and restore a back-up.</source>
        <translation>L’historique est abîmé. Gardez le fichier et restaurez une sauvegarde.</translation>
    </message>
    <message>
        <source>This is from a newer Firstdew. Update the app first.</source>
        <translation>Ceci vient d’une version plus récente de Firstdew. Mettez d’abord l’application à jour.</translation>
    </message>
    <message>
        <source>No sound comes from here, so you would not hear the alarm. Switch the sound on, then begin.</source>
        <translation>Aucun son ne sort d’ici&#xa0;: vous n’entendriez pas l’alarme. Activez le son, puis commencez.</translation>
    </message>
    <message>
        <source>This file is not what is needed here (%1). Ask whoever made it.</source>
        <translation>Ce fichier n’est pas celui qu’il faut ici (%1). Demandez à qui l’a créé.</translation>
    </message>
    <message>
        <source>This is above the limit of %1 there. Agree on a level up to the limit.</source>
        <translation>C’est au‑dessus de la limite de %1 pour cette zone. Convenez d’une intensité qui ne la dépasse pas.</translation>
    </message>
    <message>
        <source>d MMMM</source>
        <comment>date format</comment>
        <translation>d MMMM</translation>
    </message>
    <message>
        <source>today</source>
        <translation>aujourd’hui</translation>
    </message>
    <message>
        <source>tomorrow</source>
        <translation>demain</translation>
    </message>
    <message>
        <source>yesterday</source>
        <translation>hier</translation>
    </message>
    <message>
        <source>dddd, d MMMM</source>
        <comment>date format</comment>
        <translation>dddd d MMMM</translation>
    </message>
    <message>
        <source>d MMM</source>
        <comment>date format</comment>
        <translation>d MMM</translation>
    </message>
    <message>
        <source>d MMMM yyyy</source>
        <comment>date format</comment>
        <translation>d MMMM yyyy</translation>
    </message>
    <message>
        <source>%1 mA</source>
        <translation>%1&#xa0;mA</translation>
    </message>
    <message>
        <source>Hands</source>
        <translation>Mains</translation>
    </message>
    <message>
        <source>Feet</source>
        <translation>Pieds</translation>
    </message>
    <message>
        <source>Armpits</source>
        <translation>Aisselles</translation>
    </message>
    <message>
        <source>Both hands</source>
        <translation>Les deux mains</translation>
    </message>
    <message>
        <source>Both feet</source>
        <translation>Les deux pieds</translation>
    </message>
    <message>
        <source>One hand with one foot</source>
        <translation>Une main avec un pied</translation>
    </message>
    <message>
        <source>Hand session</source>
        <translation>Séance des mains</translation>
    </message>
    <message>
        <source>Foot session</source>
        <translation>Séance des pieds</translation>
    </message>
    <message>
        <source>Hand and foot session</source>
        <translation>Séance main et pied</translation>
    </message>
    <message>
        <source>Armpit session</source>
        <translation>Séance des aisselles</translation>
    </message>
    <message>
        <source>Dry</source>
        <translation>Sèche</translation>
    </message>
    <message>
        <source>Clammy</source>
        <translation>Moite</translation>
    </message>
    <message>
        <source>Wet</source>
        <translation>Mouillée</translation>
    </message>
    <message>
        <source>Dripping</source>
        <translation>Trempée</translation>
    </message>
    <message>
        <source>Heat</source>
        <translation>Chaleur</translation>
    </message>
    <message>
        <source>Exertion</source>
        <translation>Effort</translation>
    </message>
    <message>
        <source>Stress</source>
        <translation>Stress</translation>
    </message>
    <message>
        <source>Illness</source>
        <translation>Maladie</translation>
    </message>
    <message>
        <source>Direct current</source>
        <translation>Courant continu</translation>
    </message>
    <message>
        <source>Pulsed current</source>
        <translation>Courant pulsé</translation>
    </message>
    <message>
        <source>Right side</source>
        <translation>Côté droit</translation>
    </message>
    <message>
        <source>Left side</source>
        <translation>Côté gauche</translation>
    </message>
    <message>
        <source>I have a hand free</source>
        <translation>J’ai une main libre</translation>
    </message>
    <message>
        <source>Somebody helps me</source>
        <translation>Quelqu’un m’aide</translation>
    </message>
    <message>
        <source>Both hands under water</source>
        <translation>Les deux mains sous l’eau</translation>
    </message>
    <message>
        <source>You tap each step yourself.</source>
        <translation>Vous confirmez vous-même chaque étape en touchant l’écran.</translation>
    </message>
    <message>
        <source>They stay beside you the whole session, tap and enter the readings.</source>
        <translation>Cette personne reste près de vous pendant toute la séance, touche l’écran et saisit les valeurs.</translation>
    </message>
    <message>
        <source>You raise and lower with the remote. For the swap you take your hands out and tap.</source>
        <translation>Vous montez et baissez avec la télécommande. Pour l’inversion, vous sortez les mains et touchez l’écran.</translation>
    </message>
    <message>
        <source>Nothing felt</source>
        <translation>Rien senti</translation>
    </message>
    <message>
        <source>Comfortable</source>
        <translation>Confortable</translation>
    </message>
    <message>
        <source>Strong</source>
        <translation>Fort</translation>
    </message>
    <message>
        <source>Unpleasant</source>
        <translation>Désagréable</translation>
    </message>
    <message>
        <source>Painful</source>
        <translation>Douloureux</translation>
    </message>
    <message>
        <source>Fine</source>
        <translation>Normale</translation>
    </message>
    <message>
        <source>Redness</source>
        <translation>Rougeur</translation>
    </message>
    <message>
        <source>Dry skin</source>
        <translation>Peau sèche</translation>
    </message>
    <message>
        <source>Itching</source>
        <translation>Démangeaison</translation>
    </message>
    <message>
        <source>Blister</source>
        <translation>Cloque</translation>
    </message>
    <message>
        <source>Burn</source>
        <translation>Brûlure</translation>
    </message>
    <message>
        <source>Pain</source>
        <translation>Douleur</translation>
    </message>
    <message>
        <source>Not started</source>
        <translation>Pas commencé</translation>
    </message>
    <message>
        <source>First course</source>
        <translation>Cure initiale</translation>
    </message>
    <message>
        <source>Review</source>
        <translation>Bilan</translation>
    </message>
    <message>
        <source>Keeping dry</source>
        <translation>Maintien au sec</translation>
    </message>
    <message>
        <source>First dew</source>
        <translation>Première rosée</translation>
    </message>
    <message>
        <source>Sweating again</source>
        <translation>Reprise de la transpiration</translation>
    </message>
    <message>
        <source>Paused</source>
        <translation>En pause</translation>
    </message>
    <message>
        <source>Seven sessions in four weeks</source>
        <translation>Sept séances en quatre semaines</translation>
    </message>
    <message>
        <source>Three a week for four weeks</source>
        <translation>Trois par semaine pendant quatre semaines</translation>
    </message>
    <message>
        <source>Five a week for two weeks</source>
        <translation>Cinq par semaine pendant deux semaines</translation>
    </message>
    <message>
        <source>By prescription</source>
        <translation>Selon la prescription</translation>
    </message>
    <message>
        <source>Botulinum injections</source>
        <translation>Injections de toxine botulique</translation>
    </message>
    <message>
        <source>Tablets</source>
        <translation>Comprimés</translation>
    </message>
    <message>
        <source>Cream or deodorant</source>
        <translation>Crème ou déodorant</translation>
    </message>
    <message>
        <source>Something else</source>
        <translation>Autre chose</translation>
    </message>
    <message>
        <source>%1: %2 to %3</source>
        <comment>treatment: first and last day</comment>
        <translation>%1&#xa0;: %2 – %3</translation>
    </message>
    <message>
        <source>%1: since %2</source>
        <comment>treatment: first day</comment>
        <translation>%1&#xa0;: depuis le %2</translation>
    </message>
    <message>
        <source>no response</source>
        <translation>aucune réponse</translation>
    </message>
    <message>
        <source>good response</source>
        <translation>bonne réponse</translation>
    </message>
    <message>
        <source>strong response</source>
        <translation>forte réponse</translation>
    </message>
    <message>
        <source>Are you pregnant, or might you be?</source>
        <translation>Êtes‑vous enceinte, ou pourriez‑vous l’être&#xa0;?</translation>
    </message>
    <message>
        <source>Do you have a pacemaker, a defibrillator or any other powered implant?</source>
        <translation>Portez‑vous un stimulateur cardiaque (pacemaker), un défibrillateur ou un autre implant électronique&#xa0;?</translation>
    </message>
    <message>
        <source>Do you have metal in a bone or joint?</source>
        <translation>Avez‑vous du métal dans un os ou une articulation&#xa0;?</translation>
    </message>
    <message>
        <source>Do you have a coil (intrauterine device or system) of any kind?</source>
        <translation>Portez‑vous un stérilet (dispositif ou système intra-utérin), quel qu’en soit le type&#xa0;?</translation>
    </message>
    <message>
        <source>Do you have a heart rhythm disorder or epilepsy?</source>
        <translation>Avez‑vous un trouble du rythme cardiaque ou une épilepsie&#xa0;?</translation>
    </message>
    <message>
        <source>Do you have a tumour or a blood clot at present?</source>
        <translation>Avez‑vous actuellement une tumeur ou un caillot sanguin&#xa0;?</translation>
    </message>
    <message>
        <source>Is the person treated under five years old?</source>
        <translation>La personne traitée a‑t‑elle moins de cinq ans&#xa0;?</translation>
    </message>
    <message>
        <source>Is the person treated under eighteen years old?</source>
        <translation>La personne traitée a‑t‑elle moins de dix-huit ans&#xa0;?</translation>
    </message>
    <message>
        <source>Is there eczema or inflamed skin where the treatment goes?</source>
        <translation>Y a‑t‑il de l’eczéma ou une peau enflammée à l’endroit du traitement&#xa0;?</translation>
    </message>
    <message>
        <source>Is there a wound too large to cover?</source>
        <translation>Y a‑t‑il une plaie trop grande pour être couverte&#xa0;?</translation>
    </message>
    <message>
        <source>Do you wear fixed dental braces?</source>
        <translation>Portez‑vous un appareil dentaire fixe&#xa0;?</translation>
    </message>
    <message>
        <source>the child</source>
        <translation>l’enfant</translation>
    </message>
    <message>
        <source>Could %1 be pregnant?</source>
        <translation>Est‑ce que %1 pourrait être enceinte&#xa0;?</translation>
    </message>
    <message>
        <source>Does %1 have a pacemaker, a defibrillator or any other powered implant?</source>
        <translation>Est‑ce que %1 porte un stimulateur cardiaque (pacemaker), un défibrillateur ou un autre implant électronique&#xa0;?</translation>
    </message>
    <message>
        <source>Does %1 have metal in a bone or joint?</source>
        <translation>Est‑ce que %1 a du métal dans un os ou une articulation&#xa0;?</translation>
    </message>
    <message>
        <source>Does %1 have a coil (intrauterine device or system) of any kind?</source>
        <translation>Est‑ce que %1 porte un stérilet (dispositif ou système intra-utérin), quel qu’en soit le type&#xa0;?</translation>
    </message>
    <message>
        <source>Does %1 have a heart rhythm disorder or epilepsy?</source>
        <translation>Est‑ce que %1 a un trouble du rythme cardiaque ou une épilepsie&#xa0;?</translation>
    </message>
    <message>
        <source>Does %1 have a tumour or a blood clot at present?</source>
        <translation>Est‑ce que %1 a actuellement une tumeur ou un caillot sanguin&#xa0;?</translation>
    </message>
    <message>
        <source>Is %1 under five years old?</source>
        <translation>Est‑ce que %1 a moins de cinq ans&#xa0;?</translation>
    </message>
    <message>
        <source>Is %1 under eighteen years old?</source>
        <translation>Est‑ce que %1 a moins de dix-huit ans&#xa0;?</translation>
    </message>
    <message>
        <source>Does %1 have eczema or inflamed skin where the treatment goes?</source>
        <translation>Est‑ce que %1 a de l’eczéma ou une peau enflammée à l’endroit du traitement&#xa0;?</translation>
    </message>
    <message>
        <source>Does %1 have a wound too large to cover?</source>
        <translation>Est‑ce que %1 a une plaie trop grande pour être couverte&#xa0;?</translation>
    </message>
    <message>
        <source>Does %1 wear fixed dental braces?</source>
        <translation>Est‑ce que %1 porte un appareil dentaire fixe&#xa0;?</translation>
    </message>
    <message>
        <source>pregnancy</source>
        <translation>grossesse</translation>
    </message>
    <message>
        <source>a powered implant</source>
        <translation>implant électronique</translation>
    </message>
    <message>
        <source>a metal implant</source>
        <translation>implant métallique</translation>
    </message>
    <message>
        <source>a coil</source>
        <translation>stérilet</translation>
    </message>
    <message>
        <source>a heart rhythm disorder or epilepsy</source>
        <translation>trouble du rythme cardiaque ou épilepsie</translation>
    </message>
    <message>
        <source>a tumour or blood clot</source>
        <translation>tumeur ou caillot sanguin</translation>
    </message>
    <message>
        <source>loss of feeling</source>
        <translation>perte de sensibilité</translation>
    </message>
    <message>
        <source>an age under five</source>
        <translation>âge inférieur à cinq ans</translation>
    </message>
    <message>
        <source>an age under eighteen</source>
        <translation>âge inférieur à dix-huit ans</translation>
    </message>
    <message>
        <source>eczema or inflamed skin</source>
        <translation>eczéma ou peau enflammée</translation>
    </message>
    <message>
        <source>a large wound</source>
        <translation>grande plaie</translation>
    </message>
    <message>
        <source>fixed braces</source>
        <translation>appareil dentaire fixe</translation>
    </message>
    <message>
        <source>the prescriber</source>
        <translation>le médecin</translation>
    </message>
    <message>
        <source>the nurse</source>
        <translation>le personnel infirmier</translation>
    </message>
    <message>
        <source>Common practice, adults</source>
        <translation>Usage courant, adultes</translation>
    </message>
    <message>
        <source>Common practice, children</source>
        <translation>Usage courant, enfants</translation>
    </message>
    <message>
        <source>Our own cautious choice, children</source>
        <translation>Notre propre choix prudent, enfants</translation>
    </message>
    <message>
        <source>Set by %1</source>
        <translation>Fixée par %1</translation>
    </message>
    <message>
        <source>Lowered for the size of the treated skin</source>
        <translation>Abaissée selon la surface de peau traitée</translation>
    </message>
    <message>
        <source>Kept low until the size of the pads is entered under Machine and kit</source>
        <translation>Gardée basse tant que la taille des électrodes n’est pas saisie dans Appareil et matériel</translation>
    </message>
    <message>
        <source>%1 prescribed the other current</source>
        <translation>L’autre courant a été prescrit par %1</translation>
    </message>
    <message>
        <source>Your machine does not have it</source>
        <translation>Votre appareil n’a pas ce courant</translation>
    </message>
    <message>
        <source>less than 1 in %1</source>
        <translation>moins de 1 sur %1</translation>
    </message>
    <message>
        <source>more than %1 in %2</source>
        <translation>plus de %1 sur %2</translation>
    </message>
    <message>
        <source>about %1 in %2</source>
        <translation>environ %1 sur %2</translation>
    </message>
    <message>
        <source>By %1: %2</source>
        <comment>day, chance</comment>
        <translation>D’ici là (%1)&#xa0;: %2</translation>
    </message>
    <message numerus="yes">
        <source>When the chance for the next day was %1, dampness came on %2 of %n day(s).</source>
        <translation>
            <numerusform>Risque annoncé pour le lendemain&#xa0;: %1. L’humidité est venue %2 fois sur %n jour.</numerusform>
            <numerusform>Risque annoncé pour le lendemain&#xa0;: %1. L’humidité est venue %2 fois sur %n jours.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>After %n more check-in(s) the app can say how its forecasts have done.</source>
        <translation>
            <numerusform>Encore %n note du jour, et l’application pourra dire si ses prévisions étaient justes.</numerusform>
            <numerusform>Encore %n notes du jour, et l’application pourra dire si ses prévisions étaient justes.</numerusform>
        </translation>
    </message>
    <message>
        <source>So far the forecasts fit.</source>
        <translation>Jusqu’ici, les prévisions sont justes.</translation>
    </message>
    <message>
        <source>The dry spells have not gone as forecast. So the forecast now leaves more room on both sides.</source>
        <translation>Les périodes sèches n’ont pas suivi les prévisions. Les prévisions laissent donc maintenant plus de marge des deux côtés.</translation>
    </message>
    <message>
        <source>Treated now, one or two sessions are usually enough.</source>
        <translation>En traitant maintenant, une ou deux séances suffisent en général.</translation>
    </message>
    <message>
        <source>Skipped this time.</source>
        <translation>Laissée de côté cette fois.</translation>
    </message>
    <message>
        <source>You put it off to this evening.</source>
        <translation>Reporté à ce soir.</translation>
    </message>
    <message>
        <source>You put it off to %1.</source>
        <translation>Reporté&#xa0;: %1.</translation>
    </message>
    <message>
        <source>You answered yes to %1. No session until a clinician has approved treatment.</source>
        <translation>Vous avez répondu oui à ce point&#xa0;: %1. Pas de séance avant l’autorisation d’un professionnel de santé.</translation>
    </message>
    <message>
        <source>Because of %1, ask a clinician first and note who said yes.</source>
        <translation>À vérifier&#xa0;: %1. Demandez d’abord à un professionnel de santé et notez qui a dit oui.</translation>
    </message>
    <message numerus="yes">
        <source>The health questions were last answered %n day(s) ago.</source>
        <translation>
            <numerusform>Dernières réponses aux questions de santé&#xa0;: il y a %n jour.</numerusform>
            <numerusform>Dernières réponses aux questions de santé&#xa0;: il y a %n jours.</numerusform>
        </translation>
    </message>
    <message>
        <source>The health questions have not been answered yet.</source>
        <translation>Les questions de santé n’ont pas encore reçu de réponse.</translation>
    </message>
    <message>
        <source>%1, noted %2. No session here until a clinician has looked at it.</source>
        <translation>%1 (%2). Pas de séance ici avant qu’un professionnel de santé l’ait vue.</translation>
    </message>
    <message>
        <source>Enter the date of birth first: the limit of the current depends on it.</source>
        <translation>Saisissez d’abord la date de naissance&#xa0;: la limite du courant en dépend.</translation>
    </message>
    <message>
        <source>Your care sheet prescribes a current that your machine does not have. Ask who wrote it.</source>
        <translation>Votre fiche de soins prescrit un courant que votre appareil n’a pas. Demandez à qui l’a rédigée.</translation>
    </message>
    <message>
        <source>Enter first which current your machine has.</source>
        <translation>Indiquez d’abord quel courant a votre appareil.</translation>
    </message>
    <message>
        <source>You missed session %1 on %2. It is now today.</source>
        <translation>Séance %1 manquée (%2). Elle est maintenant prévue aujourd’hui.</translation>
    </message>
    <message>
        <source>You missed session %1 on %2. It is now on %3.</source>
        <translation>Séance %1 manquée (%2). Nouvelle date&#xa0;: %3.</translation>
    </message>
    <message numerus="yes">
        <source>The plan puts %n session(s) on consecutive days.</source>
        <translation>
            <numerusform>Le plan prévoit %n séance sur des jours qui se suivent.</numerusform>
            <numerusform>Le plan prévoit %n séances sur des jours qui se suivent.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>With a day between them, it takes %n day(s) more than planned.</source>
        <translation>
            <numerusform>Avec un jour d’intervalle, il faut %n jour de plus que prévu.</numerusform>
            <numerusform>Avec un jour d’intervalle, il faut %n jours de plus que prévu.</numerusform>
        </translation>
    </message>
    <message>
        <source>You are away on %1.</source>
        <translation>Vous n’êtes pas là le %1.</translation>
    </message>
    <message>
        <source>You are away from %1 to %2.</source>
        <translation>Vous n’êtes pas là du %1 au %2.</translation>
    </message>
    <message>
        <source>Dampness may come back in that time. A top-up before you leave is worth it.</source>
        <translation>L’humidité peut revenir pendant ce temps. Une séance d’entretien avant le départ en vaut la peine.</translation>
    </message>
    <message>
        <source>Today</source>
        <translation>Accueil</translation>
    </message>
    <message>
        <source>Session</source>
        <translation>Séance</translation>
    </message>
    <message>
        <source>Diary</source>
        <translation>Journal</translation>
    </message>
    <message>
        <source>Plan</source>
        <translation>Plan</translation>
    </message>
    <message>
        <source>Nothing to do now</source>
        <translation>Rien à faire maintenant</translation>
    </message>
    <message>
        <source>%1 today</source>
        <translation>%1 aujourd’hui</translation>
    </message>
    <message>
        <source>First dew: top up now</source>
        <translation>Première rosée&#xa0;: séance d’entretien maintenant</translation>
    </message>
    <message>
        <source>Top up before you leave</source>
        <translation>Séance d’entretien avant le départ</translation>
    </message>
    <message>
        <source>A top-up is due</source>
        <translation>Séance d’entretien à faire</translation>
    </message>
    <message>
        <source>Keep an eye on it</source>
        <translation>À surveiller</translation>
    </message>
    <message>
        <source>Time for a new course</source>
        <translation>C’est le moment d’une nouvelle cure</translation>
    </message>
    <message>
        <source>The course is done</source>
        <translation>La cure est faite</translation>
    </message>
    <message>
        <source>Talk to your prescriber</source>
        <translation>Parlez‑en à votre médecin</translation>
    </message>
    <message>
        <source>No session for now</source>
        <translation>Pas de séance pour l’instant</translation>
    </message>
    <message>
        <source>Not better yet</source>
        <translation>Pas encore d’amélioration</translation>
    </message>
    <message>
        <source>No first course has been set up yet.</source>
        <translation>Aucune cure initiale n’a encore été planifiée.</translation>
    </message>
    <message>
        <source>Session %1 of %2 of the first course is planned for today.</source>
        <translation>La séance %1 sur %2 de la cure initiale est prévue pour aujourd’hui.</translation>
    </message>
    <message>
        <source>Session %1 of %2 of the first course is planned for %3.</source>
        <translation>Séance %1 sur %2 de la cure initiale, prévue&#xa0;: %3.</translation>
    </message>
    <message numerus="yes">
        <source>The course will end %n day(s) late.</source>
        <translation>
            <numerusform>La cure dépasse ses quatre semaines de %n jour.</numerusform>
            <numerusform>La cure dépasse ses quatre semaines de %n jours.</numerusform>
        </translation>
    </message>
    <message>
        <source>The course can no longer finish in time.</source>
        <translation>La cure ne peut plus finir dans le temps prévu.</translation>
    </message>
    <message numerus="yes">
        <source>All %n session(s) of the course are done.</source>
        <translation>
            <numerusform>La seule séance de la cure est faite.</numerusform>
            <numerusform>Les %n séances de la cure sont toutes faites.</numerusform>
        </translation>
    </message>
    <message>
        <source>Today&apos;s session is done.</source>
        <translation>La séance du jour est faite.</translation>
    </message>
    <message>
        <source>Today&apos;s session was stopped. Most of it was done, so it counts.</source>
        <translation>La séance du jour a été arrêtée. La plus grande partie était faite&#xa0;: elle compte donc.</translation>
    </message>
    <message>
        <source>Dampness at rest, noted %1.</source>
        <translation>Humidité au repos (%1).</translation>
    </message>
    <message>
        <source>Dampness noted %1, though the day may explain it. Check again tomorrow.</source>
        <translation>Humidité notée (%1), mais la journée peut l’expliquer. Vérifiez à nouveau demain.</translation>
    </message>
    <message>
        <source>Dampness twice in a row, last noted %1.</source>
        <translation>Humidité deux fois de suite, la dernière fois&#xa0;: %1.</translation>
    </message>
    <message>
        <source>Full sweating at rest, noted %1. It usually needs a new course.</source>
        <translation>Forte transpiration au repos (%1). Il faut en général une nouvelle cure.</translation>
    </message>
    <message>
        <source>Wet at rest, noted %1. One report is not enough for a new course.</source>
        <translation>Peau mouillée au repos (%1). Une seule note du jour ne suffit pas pour une nouvelle cure.</translation>
    </message>
    <message>
        <source>Dampness has probably begun.</source>
        <translation>L’humidité a probablement commencé.</translation>
    </message>
    <message>
        <source>A top-up has been due since %1.</source>
        <translation>Séance d’entretien à faire depuis&#xa0;: %1.</translation>
    </message>
    <message>
        <source>You may get clammy by tomorrow. A top-up now is worth it.</source>
        <translation>La peau peut devenir moite d’ici demain. Une séance d’entretien maintenant en vaut la peine.</translation>
    </message>
    <message numerus="yes">
        <source>There has been no check-in for %n day(s).</source>
        <translation>
            <numerusform>Aucune note du jour depuis %n jour.</numerusform>
            <numerusform>Aucune note du jour depuis %n jours.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>After %n session(s) it is too early to say that it does not help: for many people it takes ten to twelve. First check how you do it.</source>
        <translation>
            <numerusform>Après %n séance, il est trop tôt pour dire que ça n’aide pas&#xa0;: beaucoup de personnes ont besoin de dix à douze séances. Vérifiez d’abord vos gestes.</numerusform>
            <numerusform>Après %n séances, il est trop tôt pour dire que ça n’aide pas&#xa0;: beaucoup de personnes ont besoin de dix à douze séances. Vérifiez d’abord vos gestes.</numerusform>
        </translation>
    </message>
    <message>
        <source>Say how much the sweating bothers you now. Then the app can tell whether the course helped.</source>
        <translation>Dites à quel point la transpiration vous gêne maintenant. L’application pourra alors dire si la cure a aidé.</translation>
    </message>
    <message>
        <source>The score did not get better. There are other treatments; your prescriber can advise.</source>
        <translation>Le score ne s’est pas amélioré. Il existe d’autres traitements&#xa0;; votre médecin peut vous conseiller.</translation>
    </message>
    <message>
        <source>The score is better by one step.</source>
        <translation>Le score s’est amélioré d’un niveau.</translation>
    </message>
    <message>
        <source>The score is better by two steps or more.</source>
        <translation>Le score s’est amélioré de deux niveaux ou plus.</translation>
    </message>
    <message>
        <source>You paused this.</source>
        <translation>Vous avez suspendu cette zone.</translation>
    </message>
    <message>
        <source>You are away. The call for a session comes when you are back.</source>
        <translation>Vous n’êtes pas là. Le rappel de séance viendra à votre retour.</translation>
    </message>
    <message>
        <source>Going by your check-ins so far, the chance that dampness has begun is %1. The curve above does not include them.</source>
        <translation>D’après vos notes jusqu’ici, le risque que l’humidité ait commencé est de %1. La courbe ci‑dessus n’en tient pas compte.</translation>
    </message>
    <message>
        <source>The chance that dampness has begun is %1. Today&apos;s report did not change it.</source>
        <translation>Le risque que l’humidité ait commencé est de %1. La note du jour n’y a rien changé.</translation>
    </message>
    <message>
        <source>The chance that dampness has begun is %1. Before today&apos;s report it was %2.</source>
        <translation>Le risque que l’humidité ait commencé est de %1. Avant la note du jour, il était de %2.</translation>
    </message>
    <message>
        <source>%1: dry or clammy today?</source>
        <translation>%1&#xa0;: peau sèche ou moite aujourd’hui&#xa0;?</translation>
    </message>
    <message>
        <source>%1: session today</source>
        <translation>%1&#xa0;: séance aujourd’hui</translation>
    </message>
    <message>
        <source>%1: a top-up is due</source>
        <translation>%1&#xa0;: séance d’entretien à faire</translation>
    </message>
    <message>
        <source>%1: first dew</source>
        <translation>%1&#xa0;: première rosée</translation>
    </message>
    <message>
        <source>%1: look at the skin</source>
        <translation>%1&#xa0;: regardez la peau</translation>
    </message>
    <message>
        <source>New batteries soon</source>
        <translation>Bientôt des piles neuves</translation>
    </message>
    <message>
        <source>Health questions are due</source>
        <translation>Questions de santé à remplir</translation>
    </message>
    <message>
        <source>%1: how much does it bother you?</source>
        <translation>%1&#xa0;: quelle gêne ressentez‑vous&#xa0;?</translation>
    </message>
    <message>
        <source>Show your prescriber</source>
        <translation>À montrer à votre médecin</translation>
    </message>
    <message>
        <source>Time for a back-up</source>
        <translation>Sauvegarde à faire</translation>
    </message>
    <message>
        <source>One tap answers. Or tap here to open Firstdew.</source>
        <translation>Un appui suffit pour répondre. Ou touchez ici pour ouvrir Firstdew.</translation>
    </message>
    <message>
        <source>The first course works if you stick to it.</source>
        <translation>La cure initiale agit quand on s’y tient.</translation>
    </message>
    <message>
        <source>Before the dampness comes back.</source>
        <translation>Avant que l’humidité revienne.</translation>
    </message>
    <message>
        <source>The day after a session: any redness, blister or burn?</source>
        <translation>Le lendemain d’une séance&#xa0;: une rougeur, une cloque ou une brûlure&#xa0;?</translation>
    </message>
    <message>
        <source>The set in the machine lasts about one more session.</source>
        <translation>Le jeu de piles dans l’appareil tient encore environ une séance.</translation>
    </message>
    <message>
        <source>Before the next session, as every four weeks.</source>
        <translation>Avant la prochaine séance, comme toutes les quatre semaines.</translation>
    </message>
    <message>
        <source>One question, four answers.</source>
        <translation>Une question, quatre réponses.</translation>
    </message>
    <message>
        <source>The summary is two taps away.</source>
        <translation>Deux appuis, et la synthèse est là.</translation>
    </message>
    <message>
        <source>An encrypted copy, kept where you choose.</source>
        <translation>Une copie chiffrée, gardée où vous voulez.</translation>
    </message>
    <message>
        <source>Reminders</source>
        <translation>Rappels</translation>
    </message>
    <message>
        <source>Running session</source>
        <translation>Séance en cours</translation>
    </message>
    <message>
        <source>Reminders may be a few minutes late on this phone.</source>
        <translation>Peuvent arriver en retard&#xa0;: ce téléphone ne permet pas de les recevoir à la minute près.</translation>
    </message>
    <message>
        <source>While your phone was off</source>
        <translation>Pendant que votre téléphone était éteint</translation>
    </message>
    <message>
        <source>There were reminders. Open Firstdew to see what matters now.</source>
        <translation>Il y a eu des rappels. Ouvrez Firstdew pour voir ce qui compte maintenant.</translation>
    </message>
    <message>
        <source>Something to look at today</source>
        <translation>Quelque chose à voir aujourd’hui</translation>
    </message>
    <message>
        <source>Done for today</source>
        <translation>Fait pour aujourd’hui</translation>
    </message>
    <message>
        <source>Check list</source>
        <translation>Vérifiez la liste</translation>
    </message>
    <message>
        <source>Raise slowly</source>
        <translation>Montez lentement</translation>
    </message>
    <message>
        <source>Hold still</source>
        <translation>Ne bougez plus</translation>
    </message>
    <message>
        <source>Lower to zero</source>
        <translation>Baissez à zéro</translation>
    </message>
    <message>
        <source>Swap polarity</source>
        <translation>Inversez la polarité</translation>
    </message>
    <message>
        <source>Current at zero? Soak the pads again and flip the polarity switch.</source>
        <translation>Courant à zéro&#xa0;? Imbibez à nouveau les électrodes et basculez l’inverseur de polarité.</translation>
    </message>
    <message>
        <source>Current at zero? Flip the polarity switch.</source>
        <translation>Courant à zéro&#xa0;? Basculez l’inverseur de polarité.</translation>
    </message>
    <message>
        <source>Current at zero? Swap the two leads.</source>
        <translation>Courant à zéro&#xa0;? Échangez les deux câbles.</translation>
    </message>
    <message>
        <source>Current at zero? Soak the pads again and exchange them, right with left.</source>
        <translation>Courant à zéro&#xa0;? Imbibez à nouveau les électrodes et échangez‑les, la droite avec la gauche.</translation>
    </message>
    <message>
        <source>Current at zero? Soak the pads again and swap the two leads.</source>
        <translation>Courant à zéro&#xa0;? Imbibez à nouveau les électrodes et échangez les deux câbles.</translation>
    </message>
    <message>
        <source>Machine off, current at zero. Confirm the list.</source>
        <translation>Appareil éteint, courant à zéro. Confirmez la liste.</translation>
    </message>
    <message>
        <source>Switch the machine on. Meter at zero, set to direct current?</source>
        <translation>Allumez l’appareil. Afficheur à zéro, réglé sur courant continu&#xa0;?</translation>
    </message>
    <message>
        <source>Switch the machine on. Meter at zero, light for pulsed current on?</source>
        <translation>Allumez l’appareil. Afficheur à zéro, voyant du courant pulsé allumé&#xa0;?</translation>
    </message>
    <message>
        <source>Put your hands in now and keep them still.</source>
        <translation>Mettez maintenant les mains dans l’eau et gardez‑les immobiles.</translation>
    </message>
    <message>
        <source>Raise the current slowly with the remote.</source>
        <translation>Montez le courant lentement avec la télécommande.</translation>
    </message>
    <message>
        <source>Raise the current slowly to a comfortable level.</source>
        <translation>Montez le courant lentement jusqu’à un niveau confortable.</translation>
    </message>
    <message>
        <source>Hold still. Both pads stay where they are.</source>
        <translation>Ne bougez plus. Les deux électrodes restent en place.</translation>
    </message>
    <message>
        <source>Hold still. Everything stays under water.</source>
        <translation>Ne bougez plus. Tout reste sous l’eau.</translation>
    </message>
    <message>
        <source>Lower the current slowly to zero with the remote.</source>
        <translation>Baissez lentement le courant à zéro avec la télécommande.</translation>
    </message>
    <message>
        <source>Lower the current slowly to zero.</source>
        <translation>Baissez lentement le courant à zéro.</translation>
    </message>
    <message>
        <source>Meter at zero? Only then hands out. Dry them, machine off, and tap.</source>
        <translation>Afficheur à zéro&#xa0;? Seulement alors, sortez les mains. Séchez‑les, éteignez l’appareil et touchez l’écran.</translation>
    </message>
    <message>
        <source>Meter at zero? Only then hands out. Dry them and tap.</source>
        <translation>Afficheur à zéro&#xa0;? Seulement alors, sortez les mains. Séchez‑les et touchez l’écran.</translation>
    </message>
    <message>
        <source>Current at zero? Change to the other side.</source>
        <translation>Courant à zéro&#xa0;? Changez de côté.</translation>
    </message>
    <message>
        <source>Machine off, then take the pads off. Dry skin and kit.</source>
        <translation>Éteignez l’appareil, puis retirez les électrodes. Séchez la peau et le matériel.</translation>
    </message>
    <message>
        <source>Dry skin and kit.</source>
        <translation>Séchez la peau et le matériel.</translation>
    </message>
    <message>
        <source>Machine off. Then take your hands or feet out. Dry your skin and the kit.</source>
        <translation>Éteignez l’appareil, puis sortez les mains ou les pieds. Séchez la peau et le matériel.</translation>
    </message>
    <message>
        <source>Firstdew is not a medical device and makes no diagnosis. Follow your machine&apos;s instructions, local rules and your clinician.</source>
        <translation>Firstdew n’est pas un dispositif médical et ne pose aucun diagnostic. Suivez le mode d’emploi de votre appareil, les règles locales et l’avis du professionnel de santé qui vous suit.</translation>
    </message>
    <message>
        <source>Never go above the limits. It may prickle; it must never hurt. If it hurts, lower the current and stop.</source>
        <translation>Ne dépassez jamais les limites. Ça peut picoter&#xa0;; ça ne doit jamais faire mal. Si ça fait mal, baissez le courant et arrêtez.</translation>
    </message>
    <message>
        <source>Don&apos;t treat if any health question tells you to stop.</source>
        <translation>Ne traitez pas si une question de santé vous dit d’arrêter.</translation>
    </message>
    <message>
        <source>Treat children only with medical advice and an adult beside them.</source>
        <translation>Ne traitez un enfant qu’avec un avis médical et un adulte auprès de lui.</translation>
    </message>
    <message>
        <source>Burns, blisters, faintness or palpitations: stop and seek help.</source>
        <translation>Brûlures, cloques, sensation de malaise ou palpitations&#xa0;: arrêtez et demandez de l’aide.</translation>
    </message>
    <message>
        <source>Keep leads and water away from mains electricity.</source>
        <translation>Tenez les câbles et l’eau à l’écart du courant secteur.</translation>
    </message>
    <message>
        <source>Use only a machine made for this treatment, with what came with it, to drive the current.</source>
        <translation>Pour produire le courant, utilisez seulement un appareil fabriqué pour ce traitement, avec les accessoires fournis.</translation>
    </message>
    <message>
        <source>The answer comes with the first sessions and a week of check-ins.</source>
        <translation>La réponse vient avec les premières séances et une semaine de notes du jour.</translation>
    </message>
    <message numerus="yes">
        <source>After %n more check-in(s) there is an answer.</source>
        <translation>
            <numerusform>Encore %n note du jour, et la réponse sera là.</numerusform>
            <numerusform>Encore %n notes du jour, et la réponse sera là.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>No change yet. That says little before %n more session(s).</source>
        <translation>
            <numerusform>Pas encore de changement. Cela ne dit pas grand-chose avant %n séance de plus.</numerusform>
            <numerusform>Pas encore de changement. Cela ne dit pas grand-chose avant %n séances de plus.</numerusform>
        </translation>
    </message>
    <message>
        <source>Too early to say if it works</source>
        <translation>Trop tôt pour dire si le traitement est efficace</translation>
    </message>
    <message>
        <source>It does not work yet</source>
        <translation>Pas encore efficace</translation>
    </message>
    <message>
        <source>It works in part</source>
        <translation>Efficace en partie</translation>
    </message>
    <message>
        <source>It works</source>
        <translation>Efficace</translation>
    </message>
    <message>
        <source>under %1</source>
        <translation>moins de %1</translation>
    </message>
    <message>
        <source>Damp days a week: %1.</source>
        <translation>Jours humides par semaine&#xa0;: %1.</translation>
    </message>
    <message>
        <source>Your latest dry spells were short.</source>
        <translation>Vos dernières périodes sèches étaient courtes.</translation>
    </message>
    <message>
        <source>Show your prescriber the summary. Other treatments can help.</source>
        <translation>Montrez la synthèse à votre médecin. D’autres traitements peuvent aider.</translation>
    </message>
    <message>
        <source>Many people need 10 to 12 sessions.</source>
        <translation>Beaucoup de personnes ont besoin de 10 à 12 séances.</translation>
    </message>
    <message>
        <source>The sole of a foot counts as %1, by height and weight.</source>
        <translation>La plante d’un pied compte pour %1, d’après la taille et le poids.</translation>
    </message>
    <message>
        <source>The palm of a hand counts as %1, by height and weight.</source>
        <translation>La paume d’une main compte pour %1, d’après la taille et le poids.</translation>
    </message>
    <message>
        <source>One pad counts as %1, as entered with the machine.</source>
        <translation>Une électrode compte pour %1, comme saisi avec l’appareil.</translation>
    </message>
    <message>
        <source>One pad counts as %1, as on the care sheet.</source>
        <translation>Une électrode compte pour %1, comme sur la fiche de soins.</translation>
    </message>
    <message>
        <source>No pad size is entered, so one pad counts as %1.</source>
        <translation>La taille des électrodes n’est pas saisie&#xa0;; une électrode compte donc pour %1.</translation>
    </message>
    <message>
        <source>%1 of current, about %2 in all</source>
        <translation>%1 de courant, environ %2 en tout</translation>
    </message>
    <message>
        <source>%1: no antiperspirant with aluminium for 24 hours</source>
        <translation>%1&#xa0;: pas d’antitranspirant à l’aluminium depuis 24 heures</translation>
    </message>
    <message>
        <source>%1: not shaved for three days</source>
        <translation>%1&#xa0;: pas de rasage depuis trois jours</translation>
    </message>
    <message>
        <source>Warm tap water, about %1 in each tray</source>
        <translation>Eau du robinet tiède, environ %1 dans chaque bac</translation>
    </message>
    <message>
        <source>My skin is whole where I treat: no cut, no new redness, no blister or burn</source>
        <translation>La peau à traiter est intacte&#xa0;: ni coupure, ni nouvelle rougeur, ni cloque, ni brûlure</translation>
    </message>
    <message>
        <source>Ready %1 from %2. %3</source>
        <comment>day, time, what is then fulfilled</comment>
        <translation>Possible&#xa0;: %1, dès %2. %3</translation>
    </message>
    <message>
        <source>%1 left in all</source>
        <translation>encore %1 en tout</translation>
    </message>
    <message>
        <source>%1 %2 left</source>
        <comment>minutes, seconds</comment>
        <translation>encore %1 %2</translation>
    </message>
    <message>
        <source>That does not belong to this step. Do what the screen says now. If in doubt, lower the current to zero and switch the machine off.</source>
        <translation>Cela ne correspond pas à cette étape. Faites maintenant ce que dit l’écran. En cas de doute, baissez le courant à zéro et éteignez l’appareil.</translation>
    </message>
    <message>
        <source>That did not work. Try again. If it happens again, end any session first, then close Firstdew and open it again.</source>
        <translation>Cela n’a pas marché. Réessayez. Si cela se reproduit, terminez d’abord la séance en cours, puis fermez Firstdew et rouvrez‑le.</translation>
    </message>
    <message>
        <source>, </source>
        <comment>between the parts of a list</comment>
        <translation>, </translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>a name and what belongs to it</comment>
        <translation>%1&#xa0;: %2</translation>
    </message>
    <message>
        <source>Have you lost feeling in the skin, or do you have a nerve disease where the treatment goes?</source>
        <translation>Avez‑vous perdu la sensibilité de la peau à traiter, ou avez‑vous une atteinte des nerfs à cet endroit&#xa0;?</translation>
    </message>
    <message>
        <source>Has %1 lost feeling in the skin, or is there a nerve disease where the treatment goes?</source>
        <translation>Est‑ce que %1 a perdu la sensibilité de la peau à traiter, ou a une atteinte des nerfs à cet endroit&#xa0;?</translation>
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
            <numerusform>Votre peau reste en général sèche de %1 à %n jour. Aujourd’hui&#xa0;: jour %2.</numerusform>
            <numerusform>Votre peau reste en général sèche de %1 à %n jours. Aujourd’hui&#xa0;: jour %2.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>You usually stay dry %1 to %n day(s).</source>
        <translation>
            <numerusform>Votre peau reste en général sèche de %1 à %n jour.</numerusform>
            <numerusform>Votre peau reste en général sèche de %1 à %n jours.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Half of your dry spells last longer than %n day(s); four in five are over between day %1 and day %2.</source>
        <translation>
            <numerusform>La moitié de vos périodes sèches dure plus de %n jour&#xa0;; quatre sur cinq se terminent entre le jour %1 et le jour %2.</numerusform>
            <numerusform>La moitié de vos périodes sèches dure plus de %n jours&#xa0;; quatre sur cinq se terminent entre le jour %1 et le jour %2.</numerusform>
        </translation>
    </message>
    <message>
        <source>Pads off</source>
        <translation>Retirez les électrodes</translation>
    </message>
    <message>
        <source>Dry off</source>
        <translation>Séchez</translation>
    </message>
    <message>
        <source>With both hands in the water you go by what you hear, and no voice here is known to speak your language. Ask somebody to stay beside you.</source>
        <translation>Avec les deux mains dans l’eau, vous vous fiez à ce que vous entendez, et aucune voix connue ici ne parle votre langue. Demandez à quelqu’un de rester près de vous.</translation>
    </message>
    <message>
        <source>Turn the current to zero</source>
        <translation>Ramenez le courant à zéro</translation>
    </message>
    <message>
        <source>Firstdew has stopped leading your session. Turn the current to zero, switch the machine off, then open Firstdew.</source>
        <translation>Firstdew ne guide plus la séance. Ramenez le courant à zéro, éteignez l’appareil, puis ouvrez Firstdew.</translation>
    </message>
    <message>
        <source>Shorter dry spells can have many reasons. If it goes on, tell your nurse or doctor.</source>
        <translation>Des périodes sèches plus courtes peuvent avoir de nombreuses raisons. Si cela continue, parlez‑en à votre médecin ou au personnel infirmier.</translation>
    </message>
    <message>
        <source>The last session here was half a year ago or more: begin low again, and go by what is comfortable.</source>
        <translation>La dernière séance ici remonte à six mois ou plus&#xa0;: recommencez bas, et fiez‑vous à ce qui est confortable.</translation>
    </message>
    <message>
        <source>No reading of this current was noted here yet: begin low, and go by what is comfortable.</source>
        <translation>Aucune valeur de ce courant n’a encore été notée ici&#xa0;: commencez bas, et fiez‑vous à ce qui est confortable.</translation>
    </message>
    <message>
        <source>This passphrase is too long. Choose one of fewer than 250 characters.</source>
        <translation>Cette phrase secrète est trop longue. Choisissez‑en une de moins de 250 caractères.</translation>
    </message>
    <message numerus="yes">
        <source>Usually dry for %n day(s) since about %1; before that, for %2.</source>
        <comment>days, date, days</comment>
        <translation>
            <numerusform>Durée habituelle au sec&#xa0;: %n jour depuis le %1 environ, contre %2 auparavant.</numerusform>
            <numerusform>Durée habituelle au sec&#xa0;: %n jours depuis le %1 environ, contre %2 auparavant.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1&#xa0;now, %2&#xa0;before the first session</source>
        <translation>%1&#xa0;maintenant, %2&#xa0;avant la première séance</translation>
    </message>
    <message>
        <source>%1&#xa0;now</source>
        <translation>%1&#xa0;maintenant</translation>
    </message>
    <message>
        <source>How much it bothers you: %1&#xa0;now, %2&#xa0;before.</source>
        <translation>Score de gêne&#xa0;: %1&#xa0;maintenant, %2&#xa0;avant.</translation>
    </message>
    <message>
        <source>It rests while you pause this site.</source>
        <translation>Elle est suspendue tant que cette zone l’est.</translation>
    </message>
    <message>
        <source>It rests while hands and feet are treated together.</source>
        <translation>Elle est suspendue tant que mains et pieds sont traités ensemble.</translation>
    </message>
    <message>
        <source>It rests until the next check-in.</source>
        <translation>Elle est suspendue jusqu’à la prochaine note du jour.</translation>
    </message>
    <message>
        <source>It rests while no session is possible.</source>
        <translation>Elle est suspendue tant qu’aucune séance n’est possible.</translation>
    </message>
    <message>
        <source>It rests because the sweating is back.</source>
        <translation>Elle est suspendue, car la transpiration est revenue.</translation>
    </message>
    <message>
        <source>All pairs are complete.</source>
        <translation>Toutes les paires sont complètes.</translation>
    </message>
    <message>
        <source>It ended early, because the answer was clear.</source>
        <translation>Elle s’est terminée plus tôt, car la réponse était claire.</translation>
    </message>
    <message>
        <source>You left it.</source>
        <translation>Vous l’avez quittée.</translation>
    </message>
    <message>
        <source>It ended because of the skin.</source>
        <translation>Elle s’est terminée à cause de la peau.</translation>
    </message>
    <message>
        <source>It ended because the sweating was back.</source>
        <translation>Elle s’est terminée, car la transpiration était revenue.</translation>
    </message>
    <message>
        <source>It ended with the new course.</source>
        <translation>Elle s’est terminée avec la nouvelle cure.</translation>
    </message>
    <message>
        <source>It ended with the other treatment.</source>
        <translation>Elle s’est terminée avec l’autre traitement.</translation>
    </message>
    <message>
        <source>It ended because three sessions in a row did not count.</source>
        <translation>Elle s’est terminée, car trois séances de suite ne comptaient pas.</translation>
    </message>
    <message>
        <source>Whether the shorter session holds as long could not be told.</source>
        <translation>On n’a pas pu dire si la séance plus courte agit aussi longtemps.</translation>
    </message>
    <message numerus="yes">
        <source>The shorter session held about as long: about %n day(s), and the usual one %1.</source>
        <translation>
            <numerusform>La séance plus courte a agi à peu près aussi longtemps&#xa0;: environ %n jour, et la séance habituelle %1.</numerusform>
            <numerusform>La séance plus courte a agi à peu près aussi longtemps&#xa0;: environ %n jours, et la séance habituelle %1.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>The shorter session held less long: about %n day(s) instead of %1.</source>
        <translation>
            <numerusform>La séance plus courte a agi moins longtemps&#xa0;: environ %n jour au lieu de %1.</numerusform>
            <numerusform>La séance plus courte a agi moins longtemps&#xa0;: environ %n jours au lieu de %1.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>By these %n dry spell(s) it probably holds for %1 to %2 of the usual time.</source>
        <translation>
            <numerusform>D’après cette %n période sèche, elle agit probablement pendant %1 à %2 du temps habituel.</numerusform>
            <numerusform>D’après ces %n périodes sèches, elle agit probablement pendant %1 à %2 du temps habituel.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>You compare a session of %1 with your usual one of %2, in %n pair(s) of dry spells. Chance decides which comes first.</source>
        <translation>
            <numerusform>Vous comparez une séance de %1 avec l’habituelle de %2, en %n paire de périodes sèches. Le hasard décide laquelle vient en premier.</numerusform>
            <numerusform>Vous comparez une séance de %1 avec l’habituelle de %2, en %n paires de périodes sèches. Le hasard décide laquelle vient en premier.</numerusform>
        </translation>
    </message>
    <message>
        <source>Only the time is shorter. Current and limits stay as they are.</source>
        <translation>Seul le temps est plus court. Le courant et les limites restent les mêmes.</translation>
    </message>
    <message>
        <source>Meanwhile the forecast calls for no top-up. The first clammy day at rest does, unless the skin is still settling on the day after a session. So you may be clammy more often.</source>
        <translation>Entre‑temps, la prévision ne demande aucune séance d’entretien. C’est le premier jour moite au repos qui la demande, sauf si la peau se remet encore le lendemain d’une séance. Vous pouvez donc être moite plus souvent.</translation>
    </message>
    <message>
        <source>Only sessions that the app leads to the end count. Check in every day.</source>
        <translation>Seules comptent les séances que l’application guide jusqu’au bout. Faites une note chaque jour.</translation>
    </message>
    <message>
        <source>It can take months. It ends earlier if the shorter session clearly holds less long, or if the skin or the sweating requires it. You can leave at any time.</source>
        <translation>Cela peut prendre des mois. Si la plus courte agit nettement moins longtemps, ou si la peau ou la transpiration l’exige, elle se termine plus tôt. Vous pouvez la quitter à tout moment.</translation>
    </message>
    <message>
        <source>Agree on it with your prescriber or nurse first, and follow your machine&apos;s instructions.</source>
        <translation>Convenez‑en d’abord avec votre médecin ou le personnel infirmier, et suivez le mode d’emploi de votre appareil.</translation>
    </message>
    <message>
        <source>Pair %1 of %2.</source>
        <translation>Paire %1 sur %2.</translation>
    </message>
    <message>
        <source>Until then your sessions are the usual ones, and the forecast calls for top-ups again.</source>
        <translation>Jusque‑là, vos séances sont les séances habituelles, et la prévision demande de nouveau des séances d’entretien.</translation>
    </message>
    <message>
        <source>This dry spell followed the shorter session.</source>
        <translation>Cette période sèche a suivi la séance plus courte.</translation>
    </message>
    <message>
        <source>This dry spell followed the usual session.</source>
        <translation>Cette période sèche a suivi la séance habituelle.</translation>
    </message>
    <message>
        <source>The next session is the shorter one: %1.</source>
        <translation>La prochaine séance est la plus courte&#xa0;: %1.</translation>
    </message>
    <message>
        <source>The next session is the usual one: %1.</source>
        <translation>La prochaine séance est l’habituelle&#xa0;: %1.</translation>
    </message>
    <message>
        <source>The forecast calls for no top-up meanwhile. A clammy day at rest does.</source>
        <translation>Entre‑temps, la prévision ne demande aucune séance d’entretien. C’est un jour moite au repos qui la demande.</translation>
    </message>
    <message>
        <source>From %1 to %2.</source>
        <translation>Du %1 au %2.</translation>
    </message>
    <message>
        <source>Sessions are as long as usual again. Talk to your prescriber or nurse about the answer.</source>
        <translation>Les séances ont de nouveau leur durée habituelle. Parlez de la réponse avec votre médecin ou le personnel infirmier.</translation>
    </message>
    <message>
        <source>Shorter session compared with the usual one since %1</source>
        <translation>Séance plus courte comparée à l’habituelle depuis le %1</translation>
    </message>
    <message>
        <source>pair %1 of %2; no answer yet</source>
        <translation>paire %1 sur %2&#xa0;; pas encore de réponse</translation>
    </message>
    <message>
        <source>You compare: this time the shorter session, %1.</source>
        <translation>Vous comparez&#xa0;: cette fois, la séance plus courte, %1.</translation>
    </message>
    <message>
        <source>You compare: this time the usual session, %1.</source>
        <translation>Vous comparez&#xa0;: cette fois, la séance habituelle, %1.</translation>
    </message>
    <message>
        <source>You compare session lengths: pair %1 of %2. The forecast calls for no top-up meanwhile; a clammy day at rest does.</source>
        <translation>Vous comparez des durées de séance&#xa0;: paire %1 sur %2. Entre‑temps, la prévision ne demande aucune séance d’entretien&#xa0;; c’est un jour moite au repos qui la demande.</translation>
    </message>
</context>
<context>
    <name>WorkingCard</name>
    <message>
        <source>Your dry spells, %1</source>
        <translation>Vos périodes sèches, %1</translation>
    </message>
    <message>
        <source>Dry days after each session, the latest last. A point on top: still dry when the next session came, or dry today.</source>
        <translation>Jours au sec après chaque séance, la dernière à la fin. Pointe en haut&#xa0;: encore au sec à la séance suivante, ou au sec aujourd’hui.</translation>
    </message>
    <message>
        <source>A bar for each dry spell comes here once the course is under way.</source>
        <translation>Une barre par période sèche viendra ici une fois la cure en route.</translation>
    </message>
</context>
<context>
    <name>firstdew::app::Reminding</name>
    <message>
        <source>Start</source>
        <translation>Commencer</translation>
    </message>
    <message>
        <source>Later</source>
        <translation>Plus tard</translation>
    </message>
</context>
<context>
    <name>firstdew::controls::DampnessChart</name>
    <message>
        <source>Chance</source>
        <translation>Risque</translation>
    </message>
</context>
<context>
    <name>firstdew::controls::DrySpellChart</name>
    <message>
        <source>Today, day %1</source>
        <translation>Aujourd’hui, jour %1</translation>
    </message>
    <message>
        <source>Days since the session</source>
        <translation>Jours depuis la séance</translation>
    </message>
</context>
<context>
    <name>firstdew::controls::SpellColumnsChart</name>
    <message numerus="yes">
        <source>%1: %n day(s) dry</source>
        <translation>
            <numerusform>%1&#xa0;: %n jour au sec</numerusform>
            <numerusform>%1&#xa0;: %n jours au sec</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>firstdew::viewmodels::BathModel</name>
    <message>
        <source>%1: %2</source>
        <translation>%1&#xa0;: %2</translation>
    </message>
    <message>
        <source>Write down who approved it, so that the summary can say so.</source>
        <translation>Notez qui l’a autorisé, pour que la synthèse puisse le dire.</translation>
    </message>
</context>
<context>
    <name>firstdew::viewmodels::DiaryModel</name>
    <message numerus="yes">
        <source>%1: %n day(s)</source>
        <translation>
            <numerusform>%1&#xa0;: %n jour</numerusform>
            <numerusform>%1&#xa0;: %n jours</numerusform>
        </translation>
    </message>
    <message>
        <source>Nothing noted in this time</source>
        <translation>Rien de noté sur cette période</translation>
    </message>
    <message numerus="yes">
        <source>%n session(s)</source>
        <translation>
            <numerusform>%n séance</numerusform>
            <numerusform>%n séances</numerusform>
        </translation>
    </message>
    <message>
        <source>session</source>
        <translation>séance</translation>
    </message>
    <message>
        <source>Week from %1</source>
        <translation>Semaine du %1</translation>
    </message>
    <message numerus="yes">
        <source>%n damp day(s) of %1 with a check-in</source>
        <translation>
            <numerusform>%n jour humide sur %1 avec une note du jour</numerusform>
            <numerusform>%n jours humides sur %1 avec une note du jour</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>firstdew::viewmodels::KeepModel</name>
    <message>
        <source>Save as</source>
        <translation>Enregistrer sous</translation>
    </message>
</context>
</TS>
