<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="en">
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
        <source>%n day(s)</source>
        <translation>
            <numerusform>%n day</numerusform>
            <numerusform>%n days</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n earlier</source>
        <translation>
            <numerusform>%n earlier</numerusform>
            <numerusform>%n earlier</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n dry spell(s)</source>
        <translation>
            <numerusform>%n dry spell</numerusform>
            <numerusform>%n dry spells</numerusform>
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
</context>
<context>
    <name>Plan</name>
    <message numerus="yes">
        <source>The course runs %n day(s) past its four weeks.</source>
        <translation>
            <numerusform>The course runs %n day past its four weeks.</numerusform>
            <numerusform>The course runs %n days past its four weeks.</numerusform>
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
        <source>The course runs %n day(s) past its four weeks.</source>
        <translation>
            <numerusform>The course runs %n day past its four weeks.</numerusform>
            <numerusform>The course runs %n days past its four weeks.</numerusform>
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
</TS>
