<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="en">
<context>
    <name>BathPracticeStart</name>
    <message numerus="yes">
        <source>What takes minutes takes %n second(s) here.</source>
        <translation>
            <numerusform>What takes minutes takes %n second here.</numerusform>
            <numerusform>What takes minutes takes %n seconds here.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>Caseload</name>
    <message numerus="yes">
        <source>%n file(s) could not be read. See the end of the list.</source>
        <translation>
            <numerusform>%n file could not be read. See the end of the list.</numerusform>
            <numerusform>%n files could not be read. See the end of the list.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>DampnessLine</name>
    <message numerus="yes">
        <source>%n check-in(s) here. After two weeks of them the line begins to tell how long you stay dry.</source>
        <translation>
            <numerusform>%n check-in here. After two weeks of them the line begins to tell how long you stay dry.</numerusform>
            <numerusform>%n check-ins here. After two weeks of them the line begins to tell how long you stay dry.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>MachinePage</name>
    <message numerus="yes">
        <source>About %n session(s) left. A set of four alkaline cells lasts about three.</source>
        <translation>
            <numerusform>About %n session left. A set of four alkaline cells lasts about three.</numerusform>
            <numerusform>About %n sessions left. A set of four alkaline cells lasts about three.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>Page</name>
    <message numerus="yes">
        <source>%n earlier</source>
        <translation>
            <numerusform>%n earlier</numerusform>
            <numerusform>%n earlier</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Batteries: about %n session(s) left.</source>
        <translation>
            <numerusform>Batteries: about %n session left.</numerusform>
            <numerusform>Batteries: about %n sessions left.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n earlier; all of them are in the exports.</source>
        <translation>
            <numerusform>%n earlier; it is in the exports.</numerusform>
            <numerusform>%n earlier; all of them are in the exports.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Check-ins on %n day(s): %1.</source>
        <translation>
            <numerusform>Check-ins on %n day: %1.</numerusform>
            <numerusform>Check-ins on %n days: %1.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>The meter was above the limit in %n session(s), last on %1.</source>
        <translation>
            <numerusform>The meter was above the limit in %n session, on %1.</numerusform>
            <numerusform>The meter was above the limit in %n sessions, last on %1.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>There are %n question(s) for you, below.</source>
        <translation>
            <numerusform>There is %n question for you, below.</numerusform>
            <numerusform>There are %n questions for you, below.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>child, %n year(s)</source>
        <translation>
            <numerusform>child, %n year</numerusform>
            <numerusform>child, %n years</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>adult, %n year(s)</source>
        <translation>
            <numerusform>adult, %n year</numerusform>
            <numerusform>adult, %n years</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1, for %n second(s)</source>
        <translation>
            <numerusform>%1, for %n second</numerusform>
            <numerusform>%1, for %n seconds</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n of them on another day than planned</source>
        <translation>
            <numerusform>%n of them on another day than planned</numerusform>
            <numerusform>%n of them on another day than planned</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n dry spell(s) seen to the end</source>
        <translation>
            <numerusform>%n dry spell seen to the end</numerusform>
            <numerusform>%n dry spells seen to the end</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n not seen to the end</source>
        <comment>dry spells</comment>
        <translation>
            <numerusform>%n not seen to the end</numerusform>
            <numerusform>%n not seen to the end</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n in the period</source>
        <comment>check-ins</comment>
        <translation>
            <numerusform>%n in the period</numerusform>
            <numerusform>%n in the period</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Days dry after the latest %n session(s). Hollow: first damp day unknown. Pointed: end not seen.</source>
        <translation>
            <numerusform>Days dry after the latest session. Hollow: first damp day unknown. Pointed: end not seen.</numerusform>
            <numerusform>Days dry after the latest %n sessions. Hollow: first damp day unknown. Pointed: end not seen.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>median %n day(s) (%1: %2 to %3)</source>
        <translation>
            <numerusform>median %n day (%1: %2 to %3)</numerusform>
            <numerusform>median %n days (%1: %2 to %3)</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>Plan</name>
    <message numerus="yes">
        <source>The course will end %n day(s) late.</source>
        <translation>
            <numerusform>The course will end %n day late.</numerusform>
            <numerusform>The course will end %n days late.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>Settings</name>
    <message numerus="yes">
        <source>Batteries: about %n session(s) left</source>
        <translation>
            <numerusform>Batteries: about %n session left</numerusform>
            <numerusform>Batteries: about %n sessions left</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>SheetText</name>
    <message numerus="yes">
        <source>%n second(s)</source>
        <translation>
            <numerusform>%n second</numerusform>
            <numerusform>%n seconds</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1: a course of %n session(s) begins today.</source>
        <translation>
            <numerusform>%1: a course of %n session begins today.</numerusform>
            <numerusform>%1: a course of %n sessions begins today.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1: %2 times %n minute(s)</source>
        <translation>
            <numerusform>%1: %2 times %n minute</numerusform>
            <numerusform>%1: %2 times %n minutes</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>TallyLines</name>
    <message numerus="yes">
        <source>%n person(s)</source>
        <translation>
            <numerusform>%n person</numerusform>
            <numerusform>%n people</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n check-in(s)</source>
        <translation>
            <numerusform>%n check-in</numerusform>
            <numerusform>%n check-ins</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n session(s)</source>
        <translation>
            <numerusform>%n session</numerusform>
            <numerusform>%n sessions</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>WhyPage</name>
    <message numerus="yes">
        <source>Based on %n dry spell(s) in your diary.</source>
        <translation>
            <numerusform>Based on %n dry spell in your diary.</numerusform>
            <numerusform>Based on %n dry spells in your diary.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>Words</name>
    <message numerus="yes">
        <source>The course will end %n day(s) late.</source>
        <translation>
            <numerusform>The course will end %n day late.</numerusform>
            <numerusform>The course will end %n days late.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>There has been no check-in for %n day(s).</source>
        <translation>
            <numerusform>There has been no check-in for %n day.</numerusform>
            <numerusform>There has been no check-in for %n days.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>The health questions were last answered %n day(s) ago.</source>
        <translation>
            <numerusform>The health questions were last answered %n day ago.</numerusform>
            <numerusform>The health questions were last answered %n days ago.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>All %n session(s) of the course are done.</source>
        <translation>
            <numerusform>The %n session of the course is done.</numerusform>
            <numerusform>All %n sessions of the course are done.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>After %n session(s) it is too early to say that it does not help: for many people it takes ten to twelve. First check how you do it.</source>
        <translation>
            <numerusform>After %n session it is too early to say that it does not help: for many people it takes ten to twelve. First check how you do it.</numerusform>
            <numerusform>After %n sessions it is too early to say that it does not help: for many people it takes ten to twelve. First check how you do it.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>After %n more check-in(s) there is an answer.</source>
        <translation>
            <numerusform>After %n more check-in there is an answer.</numerusform>
            <numerusform>After %n more check-ins there is an answer.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>No change yet. That says little before %n more session(s).</source>
        <translation>
            <numerusform>No change yet. That says little before %n more session.</numerusform>
            <numerusform>No change yet. That says little before %n more sessions.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>The plan puts %n session(s) on consecutive days.</source>
        <translation>
            <numerusform>The plan puts %n session on consecutive days.</numerusform>
            <numerusform>The plan puts %n sessions on consecutive days.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>With a day between them, it takes %n day(s) more than planned.</source>
        <translation>
            <numerusform>With a day between them, it takes %n day more than planned.</numerusform>
            <numerusform>With a day between them, it takes %n days more than planned.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>In a real session this takes %n minute(s).</source>
        <translation>
            <numerusform>In a real session this takes %n minute.</numerusform>
            <numerusform>In a real session this takes %n minutes.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>In a real session this takes %n second(s).</source>
        <translation>
            <numerusform>In a real session this takes %n second.</numerusform>
            <numerusform>In a real session this takes %n seconds.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>When the chance for the next day was %1, dampness came on %2 of %n day(s).</source>
        <translation>
            <numerusform>When the chance for the next day was %1, dampness came on %2 of %n day.</numerusform>
            <numerusform>When the chance for the next day was %1, dampness came on %2 of %n days.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>After %n more check-in(s) the app can say how its forecasts have done.</source>
        <translation>
            <numerusform>After %n more check-in the app can say how its forecasts have done.</numerusform>
            <numerusform>After %n more check-ins the app can say how its forecasts have done.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>You usually stay dry %1 to %n day(s). Today is day %2.</source>
        <translation>
            <numerusform>You usually stay dry %1 to %n day. Today is day %2.</numerusform>
            <numerusform>You usually stay dry %1 to %n days. Today is day %2.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>You usually stay dry %1 to %n day(s).</source>
        <translation>
            <numerusform>You usually stay dry %1 to %n day.</numerusform>
            <numerusform>You usually stay dry %1 to %n days.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Half of your dry spells last longer than %n day(s); four in five are over between day %1 and day %2.</source>
        <translation>
            <numerusform>Half of your dry spells last longer than %n day; four in five are over between day %1 and day %2.</numerusform>
            <numerusform>Half of your dry spells last longer than %n days; four in five are over between day %1 and day %2.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Usually dry for %n day(s) since about %1; before that, for %2.</source>
        <comment>days, date, days</comment>
        <translation>
            <numerusform>Usually dry for %n day since about %1; before that, for %2.</numerusform>
            <numerusform>Usually dry for %n days since about %1; before that, for %2.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>The shorter session held about as long: about %n day(s), and the usual one %1.</source>
        <translation>
            <numerusform>The shorter session held about as long: about %n day, and the usual one %1.</numerusform>
            <numerusform>The shorter session held about as long: about %n days, and the usual one %1.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>The shorter session held less long: about %n day(s) instead of %1.</source>
        <translation>
            <numerusform>The shorter session held less long: about %n day instead of %1.</numerusform>
            <numerusform>The shorter session held less long: about %n days instead of %1.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>By these %n dry spell(s) it probably holds for %1 to %2 of the usual time.</source>
        <translation>
            <numerusform>By this %n dry spell it probably holds for %1 to %2 of the usual time.</numerusform>
            <numerusform>By these %n dry spells it probably holds for %1 to %2 of the usual time.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>You compare a session of %1 with your usual one of %2, in %n pair(s) of dry spells. Chance decides which comes first.</source>
        <translation>
            <numerusform>You compare a session of %1 with your usual one of %2, in %n pair of dry spells. Chance decides which comes first.</numerusform>
            <numerusform>You compare a session of %1 with your usual one of %2, in %n pairs of dry spells. Chance decides which comes first.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>firstdew::controls::SpellColumnsChart</name>
    <message numerus="yes">
        <source>%1: %n day(s) dry</source>
        <translation>
            <numerusform>%1: %n day dry</numerusform>
            <numerusform>%1: %n days dry</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>firstdew::viewmodels::DiaryModel</name>
    <message numerus="yes">
        <source>%1: %n day(s)</source>
        <translation>
            <numerusform>%1: %n day</numerusform>
            <numerusform>%1: %n days</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n session(s)</source>
        <translation>
            <numerusform>%n session</numerusform>
            <numerusform>%n sessions</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n damp day(s) of %1 with a check-in</source>
        <translation>
            <numerusform>%n damp day of %1 with a check-in</numerusform>
            <numerusform>%n damp days of %1 with a check-in</numerusform>
        </translation>
    </message>
</context>
</TS>
