<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<!-- Draft, not reviewed; words of the trade from memory. Entwurf, nicht geprüft; Fachwörter aus dem Gedächtnis. -->
<TS version="2.1" language="de_DE" sourcelanguage="en_GB">
<context>
    <name>Taught</name>
    <message>
        <source>The parts of a door</source>
        <translation type="unfinished">Die Teile einer Tür</translation>
    </message>
    <message>
        <source>What a door is made of, layer by layer, and which parts hold it shut.</source>
        <translation type="unfinished">Woraus eine Tür besteht, Schicht für Schicht, und welche Teile sie geschlossen halten.</translation>
    </message>
    <message>
        <source>this program on one screen</source>
        <translation type="unfinished">dieses Programm auf einem Bildschirm</translation>
    </message>
    <message>
        <source>a scrap door to touch, if there is one</source>
        <translation type="unfinished">eine Schrotttür zum Anfassen, wenn es eine gibt</translation>
    </message>
    <message>
        <source>your service's own procedure (it comes before this lesson)</source>
        <translation type="unfinished">die Vorschrift der eigenen Wehr (sie geht dieser Lektion vor)</translation>
    </message>
    <message>
        <source>the manuals of the tools you own</source>
        <translation type="unfinished">die Anleitungen der eigenen Geräte</translation>
    </message>
    <message>
        <source>the car maker's rescue sheet (layout as in ISO 17840-1)</source>
        <translation type="unfinished">das Rettungsdatenblatt des Herstellers (Aufbau wie in ISO 17840-1)</translation>
    </message>
    <message>
        <source>A simplified door: no glass run, no trim, no wiring, no speaker. A real one hides its seams under paint and rubber.</source>
        <translation type="unfinished">Eine vereinfachte Tür: keine Scheibenführung, keine Verkleidung, keine Kabel, kein Lautsprecher. Eine echte verbirgt ihre Nähte unter Lack und Gummi.</translation>
    </message>
    <message>
        <source>A crew member before any course on vehicle rescue</source>
        <translation type="unfinished">Eine Einsatzkraft vor jedem Lehrgang in technischer Hilfe am Fahrzeug</translation>
    </message>
    <message>
        <source>points at and names skin, hem, seam, shut face, inner bend, inner panel, bar, latch, striker and hinges</source>
        <translation type="unfinished">zeigt und benennt Außenhaut, Falz, Naht, Stirnfläche, innere Biegung, Innenblech, Träger, Schloss, Schließkeil und Scharniere</translation>
    </message>
    <message>
        <source>on the stage or at a scrap door</source>
        <translation type="unfinished">auf der Bühne oder an einer Schrotttür</translation>
    </message>
    <message>
        <source>all of them, and says which of them hold the door shut</source>
        <translation type="unfinished">alle, und sagt, welche davon die Tür geschlossen halten</translation>
    </message>
    <message>
        <source>vehicle anatomy</source>
        <translation type="unfinished">Aufbau des Fahrzeugs</translation>
    </message>
    <message>
        <source>a straight door, nothing pushed yet</source>
        <translation type="unfinished">eine gerade Tür, noch nicht gedrückt</translation>
    </message>
    <message>
        <source>A door is a box</source>
        <translation type="unfinished">Eine Tür ist ein Kasten</translation>
    </message>
    <message>
        <source>From outside you see one sheet. There are two, and they meet only round the edge.</source>
        <translation type="unfinished">Von außen sieht man ein Blech. Es sind zwei, und sie berühren sich nur am Rand.</translation>
    </message>
    <message>
        <source>Turn the picture with the mouse. Ask what keeps the box together.</source>
        <translation type="unfinished">Das Bild mit der Maus drehen. Fragen, was den Kasten zusammenhält.</translation>
    </message>
    <message>
        <source>The outer skin is thin. Its edge is folded round the inner structure.</source>
        <translation type="unfinished">Die Außenhaut ist dünn. Ihr Rand ist um die innere Struktur gefalzt.</translation>
    </message>
    <message>
        <source>Key 1 makes the skin see-through, once more takes it off, once more brings it back.</source>
        <translation type="unfinished">Taste 1 macht die Außenhaut durchsichtig, noch einmal nimmt sie weg, noch einmal bringt sie zurück.</translation>
    </message>
    <message>
        <source>The fold is the hem; its outermost edge is the lip. What joins the sheets in it is the seam: glue, spots of weld, or both.</source>
        <translation type="unfinished">Die Umfaltung ist der Falz; sein äußerster Rand ist die Falzkante. Was die Bleche darin verbindet, ist die Naht: Kleber, Schweißpunkte oder beides.</translation>
    </message>
    <message>
        <source>The stitches on the picture are the seam. They stretch and open where it parts.</source>
        <translation type="unfinished">Die Stiche im Bild sind die Naht. Sie dehnen und öffnen sich, wo sie aufgeht.</translation>
    </message>
    <message>
        <source>The shut face is the door's end. At its inboard corner is the inner bend, and behind that the inner panel.</source>
        <translation type="unfinished">Die Stirnfläche ist das Ende der Tür. An ihrer inneren Ecke liegt die innere Biegung, und dahinter das Innenblech.</translation>
    </message>
    <message>
        <source>The cut shows it best: lip, shut face, bend. Ask where a tip would have to be to push on the inner panel.</source>
        <translation type="unfinished">Der Schnitt zeigt es am besten: Falzkante, Stirnfläche, Biegung. Fragen, wo eine Spitze stehen müsste, um auf das Innenblech zu drücken.</translation>
    </message>
    <message>
        <source>What is inside</source>
        <translation type="unfinished">Was innen ist</translation>
    </message>
    <message>
        <source>The bar runs from end to end. It shields the person, and it ties both ends of the door together.</source>
        <translation type="unfinished">Der Träger läuft von einem Ende zum anderen. Er schützt den Menschen, und er bindet beide Enden der Tür zusammen.</translation>
    </message>
    <message>
        <source>Keys 1 to 9 show and hide the layers.</source>
        <translation type="unfinished">Die Tasten 1 bis 9 zeigen und verbergen die Schichten.</translation>
    </message>
    <message>
        <source>What holds the door</source>
        <translation type="unfinished">Was die Tür hält</translation>
    </message>
    <message>
        <source>A latch on the striker at one end, two hinges at the other. Everything else only hangs on these.</source>
        <translation type="unfinished">Ein Schloss am Schließkeil an einem Ende, zwei Scharniere am anderen. Alles andere hängt nur daran.</translation>
    </message>
    <message>
        <source>Ask: so what does the skin's seam have to do with opening the door?</source>
        <translation type="unfinished">Fragen: Was hat also die Naht der Außenhaut damit zu tun, dass die Tür aufgeht?</translation>
    </message>
    <message>
        <source>Who sits behind it</source>
        <translation type="unfinished">Wer dahinter sitzt</translation>
    </message>
    <message>
        <source>From the patient's seat. Whatever comes in comes in here.</source>
        <translation type="unfinished">Vom Platz des Patienten. Was hereinkommt, kommt hier herein.</translation>
    </message>
    <message>
        <source>The line from metal to person is room. It is geometry, never injury.</source>
        <translation type="unfinished">Die Linie vom Metall zum Menschen ist Raum. Sie ist Geometrie, nie Verletzung.</translation>
    </message>
    <message>
        <source>Name them</source>
        <translation type="unfinished">Benennen</translation>
    </message>
    <message>
        <source>Point and name: skin, hem, seam, shut face, inner bend, inner panel, bar, latch, striker, hinges.</source>
        <translation type="unfinished">Zeigen und benennen: Außenhaut, Falz, Naht, Stirnfläche, innere Biegung, Innenblech, Träger, Schloss, Schließkeil, Scharniere.</translation>
    </message>
    <message>
        <source>In pairs, then at the scrap door.</source>
        <translation type="unfinished">Zu zweit, dann an der Schrotttür.</translation>
    </message>
    <message>
        <source>Skin and inner panel meet only round the edge, where the skin is folded over.</source>
        <translation type="unfinished">Außenhaut und Innenblech berühren sich nur am Rand, wo die Außenhaut umgefalzt ist.</translation>
    </message>
    <message>
        <source>common practice, no source</source>
        <translation type="unfinished">übliche Praxis, keine Quelle</translation>
    </message>
    <message>
        <source>Names the parts</source>
        <translation type="unfinished">Benennt die Teile</translation>
    </message>
    <message>
        <source>all ten, at the picture or the scrap door</source>
        <translation type="unfinished">alle zehn, am Bild oder an der Schrotttür</translation>
    </message>
    <message>
        <source>Says what holds the door shut</source>
        <translation type="unfinished">Sagt, was die Tür geschlossen hält</translation>
    </message>
    <message>
        <source>latch and hinges, not the skin</source>
        <translation type="unfinished">Schloss und Scharniere, nicht die Außenhaut</translation>
    </message>
    <message>
        <source>Which part surprised you?</source>
        <translation type="unfinished">Welches Teil hat überrascht?</translation>
    </message>
    <message>
        <source>Which of these can you see on a real door, which only feel?</source>
        <translation type="unfinished">Was davon kann man an einer echten Tür sehen, was nur fühlen?</translation>
    </message>
    <message>
        <source>Two sheets, joined round the edge.</source>
        <translation type="unfinished">Zwei Bleche, am Rand verbunden.</translation>
    </message>
    <message>
        <source>Latch and hinges hold the door; the skin's seam does not.</source>
        <translation type="unfinished">Schloss und Scharniere halten die Tür; die Naht der Außenhaut nicht.</translation>
    </message>
    <message>
        <source>The inner bend is the corner to remember.</source>
        <translation type="unfinished">Die innere Biegung ist die Ecke, die man sich merkt.</translation>
    </message>
    <message>
        <source>First bite: edge against bend</source>
        <translation type="unfinished">Erster Ansatz: Kante gegen Biegung</translation>
    </message>
    <message>
        <source>Where the tips bear decides what lets go: the seam of the skin, or the latch.</source>
        <translation type="unfinished">Wo die Spitzen anliegen, entscheidet, was nachgibt: die Naht der Außenhaut oder das Schloss.</translation>
    </message>
    <message>
        <source>this program on one screen, sound not needed</source>
        <translation type="unfinished">dieses Programm auf einem Bildschirm, Ton ist nicht nötig</translation>
    </message>
    <message>
        <source>a bridge sheet for each crew, an evaluation sheet for each seat</source>
        <translation type="unfinished">ein Brückenblatt für jede Mannschaft, ein Bewertungsblatt für jeden Platz</translation>
    </message>
    <message>
        <source>a scrap door to touch, if there is one: hem, shut face and inner bend can be felt</source>
        <translation type="unfinished">eine Schrotttür zum Anfassen, wenn es eine gibt: Falz, Stirnfläche und innere Biegung lassen sich fühlen</translation>
    </message>
    <message>
        <source>your service's own procedure for forcing doors (it comes before this lesson)</source>
        <translation type="unfinished">die Vorschrift der eigenen Wehr zum Öffnen von Türen (sie geht dieser Lektion vor)</translation>
    </message>
    <message>
        <source>The order is the claim, not the forces: no measured force of a whole door is known.</source>
        <translation type="unfinished">Behauptet wird die Reihenfolge, nicht die Kräfte: Keine gemessene Kraft einer ganzen Tür ist bekannt.</translation>
    </message>
    <message>
        <source>One door, one latch, one crash state. A half-engaged latch or a door hit harder can come out otherwise.</source>
        <translation type="unfinished">Eine Tür, ein Schloss, ein Schadensbild. Ein halb eingerastetes Schloss oder eine stärker getroffene Tür kann anders ausgehen.</translation>
    </message>
    <message>
        <source>In these runs the skin leaves its seam and does not tear, for its edge is whole: a nick, a hole or a cut in that edge is where a tear begins, so look for one.</source>
        <translation type="unfinished">In diesen Rechnungen löst sich die Außenhaut von ihrer Naht und reißt nicht, denn ihre Kante ist heil: Eine Kerbe, ein Loch oder ein Schnitt in dieser Kante ist, wo ein Riss beginnt; also danach suchen.</translation>
    </message>
    <message>
        <source>A crew member with hand-tool training</source>
        <translation type="unfinished">Eine Einsatzkraft mit Ausbildung an Handgeräten</translation>
    </message>
    <message>
        <source>names what each tip bears on, says what will let go first and why, and chooses the place for the first bite</source>
        <translation type="unfinished">benennt, worauf jede Spitze anliegt, sagt, was zuerst nachgibt und warum, und wählt die Stelle für den ersten Ansatz</translation>
    </message>
    <message>
        <source>shown a low saloon on its wheels and blocked, its front door straight but jammed, a belted occupant behind it, and a spreader with two kinds of tips</source>
        <translation type="unfinished">gezeigt wird eine niedrige Limousine auf ihren Rädern, unterbaut, die vordere Tür gerade, aber verklemmt, dahinter ein angeschnallter Insasse, und ein Spreizer mit zwei Arten von Spitzen</translation>
    </message>
    <message>
        <source>without help, with the reason, in each of the cases shown that the model has settled</source>
        <translation type="unfinished">ohne Hilfe, mit Begründung, in jedem der gezeigten Fälle, die das Modell gesichert hat</translation>
    </message>
    <message>
        <source>creating openings for access</source>
        <translation type="unfinished">Öffnungen für den Zugang schaffen</translation>
    </message>
    <message>
        <source>narrow tips on the hem lip</source>
        <translation type="unfinished">schmale Spitzen auf der Falzkante</translation>
    </message>
    <message>
        <source>the same tips behind the inner bend</source>
        <translation type="unfinished">dieselben Spitzen hinter der inneren Biegung</translation>
    </message>
    <message>
        <source>wide tips behind the inner bend</source>
        <translation type="unfinished">breite Spitzen hinter der inneren Biegung</translation>
    </message>
    <message>
        <source>on the lip again, with a tool twice as strong</source>
        <translation type="unfinished">noch einmal auf der Falzkante, mit einem doppelt so starken Gerät</translation>
    </message>
    <message>
        <source>Why the first bite matters</source>
        <translation type="unfinished">Warum der erste Ansatz zählt</translation>
    </message>
    <message>
        <source>A person is waiting behind this door. The first place you push decides whether the door opens or only loses its skin.</source>
        <translation type="unfinished">Hinter dieser Tür wartet ein Mensch. Die erste Stelle, an der gedrückt wird, entscheidet, ob die Tür aufgeht oder nur ihre Haut verliert.</translation>
    </message>
    <message>
        <source>Ground rules first: here it is allowed to be wrong. Say what this is: a model of a car that does not exist.
Ask first whether metal work is needed at all: can the person get out, or be helped out, without it?
Training order is not incident order.</source>
        <translation type="unfinished">Zuerst die Grundregel: Hier darf man sich irren. Sagen, was dies ist: ein Modell eines Autos, das es nicht gibt.
Zuerst fragen, ob Arbeit am Metall überhaupt nötig ist: Kann der Mensch ohne sie heraus, allein oder mit Hilfe?
Reihenfolge in der Übung ist nicht Reihenfolge im Einsatz.</translation>
    </message>
    <message>
        <source>What a door edge is made of</source>
        <translation type="unfinished">Woraus eine Türkante besteht</translation>
    </message>
    <message>
        <source>Skin, hem, shut face, inner bend, latch. The skin's edge is folded and often only glued.</source>
        <translation type="unfinished">Außenhaut, Falz, Stirnfläche, innere Biegung, Schloss. Der Rand der Außenhaut ist gefalzt und oft nur geklebt.</translation>
    </message>
    <message>
        <source>Let somebody point at each part before you name it. Take the skin away with key 1, bring it back.
The lip is outermost. The inner bend is the corner at the inboard end of the shut face.</source>
        <translation type="unfinished">Jemanden auf jedes Teil zeigen lassen, bevor Sie es benennen. Die Außenhaut mit Taste 1 wegnehmen und zurückholen.
Die Falzkante liegt ganz außen. Die innere Biegung ist die Ecke am inneren Ende der Stirnfläche.</translation>
    </message>
    <message>
        <source>Tips on the lip: what lets go first?</source>
        <translation type="unfinished">Spitzen auf der Falzkante: Was gibt zuerst nach?</translation>
    </message>
    <message>
        <source>Narrow tips, at the height of the latch, on the hem lip. Say what lets go first, and why.</source>
        <translation type="unfinished">Schmale Spitzen, auf Höhe des Schlosses, auf der Falzkante. Sagen, was zuerst nachgibt, und warum.</translation>
    </message>
    <message>
        <source>Everybody says it aloud or shows a hand before you run it. Nothing is shown before that.</source>
        <translation type="unfinished">Alle sagen es laut oder heben die Hand, bevor ausgeführt wird. Vorher wird nichts gezeigt.</translation>
    </message>
    <message>
        <source>On the lip: the first thing that gave</source>
        <translation type="unfinished">Auf der Falzkante: was zuerst nachgab</translation>
    </message>
    <message>
        <source>First to give: {lip.first}, with the tips open {lip.first_opening} and pushing {lip.first_force}.</source>
        <translation type="unfinished">Zuerst gab nach: {lip.first}, bei {lip.first_opening} Öffnung der Spitzen und {lip.first_force} Druck.</translation>
    </message>
    <message>
        <source>{lip.sentence}
Ask: would pressing harder have helped?</source>
        <translation type="unfinished">{lip.sentence}
Fragen: Hätte stärkeres Drücken geholfen?</translation>
    </message>
    <message>
        <source>{lip.parted} of seam parted. The latch holds.</source>
        <translation type="unfinished">{lip.parted} Naht gingen auf. Das Schloss hält.</translation>
    </message>
    <message>
        <source>For the plan this is called: {lip.effect}. Point at the loose edge: it is sharp, and it takes the hold from the tips.</source>
        <translation type="unfinished">Für den Plan heißt das: {lip.effect}. Auf die lose Kante zeigen: Sie ist scharf, und sie nimmt den Spitzen den Halt.</translation>
    </message>
    <message>
        <source>The same tips, deeper: what lets go first?</source>
        <translation type="unfinished">Dieselben Spitzen, tiefer: Was gibt zuerst nach?</translation>
    </message>
    <message>
        <source>One thing is changed: the tips stand behind the inner bend. What lets go first now?</source>
        <translation type="unfinished">Eines ist geändert: Die Spitzen stehen hinter der inneren Biegung. Was gibt jetzt zuerst nach?</translation>
    </message>
    <message>
        <source>A gap was made first. Same tool, same height, same direction of the push: only the depth is another.</source>
        <translation type="unfinished">Ein Spalt wurde vorher geschaffen. Gleiches Gerät, gleiche Höhe, gleiche Druckrichtung: Nur die Tiefe ist eine andere.</translation>
    </message>
    <message>
        <source>First to give: {bend.first}, with the tips open {bend.first_opening}. Seam parted: {bend.parted}.</source>
        <translation type="unfinished">Zuerst gab nach: {bend.first}, bei {bend.first_opening} Öffnung der Spitzen. Naht aufgegangen: {bend.parted}.</translation>
    </message>
    <message>
        <source>{bend.sentence}
Put both side by side. Ask for one sentence that says what differs and why that decides.</source>
        <translation type="unfinished">{bend.sentence}
Beide nebeneinander stellen. Nach einem Satz fragen, der sagt, was anders ist und warum das entscheidet.</translation>
    </message>
    <message>
        <source>Wider tips in the same place</source>
        <translation type="unfinished">Breitere Spitzen an derselben Stelle</translation>
    </message>
    <message>
        <source>Wide tips behind the bend. Does the first thing to give change?</source>
        <translation type="unfinished">Breite Spitzen hinter der Biegung. Ändert sich, was zuerst nachgibt?</translation>
    </message>
    <message>
        <source>Twice the force on the lip</source>
        <translation type="unfinished">Doppelte Kraft auf der Falzkante</translation>
    </message>
    <message>
        <source>Back on the lip with a tool twice as strong. Does it help?</source>
        <translation type="unfinished">Zurück auf der Falzkante mit einem doppelt so starken Gerät. Hilft das?</translation>
    </message>
    <message>
        <source>Say it in one sentence</source>
        <translation type="unfinished">In einem Satz sagen</translation>
    </message>
    <message>
        <source>Where do the tips go, what lets go first, and when do you stop?</source>
        <translation type="unfinished">Wohin kommen die Spitzen, was gibt zuerst nach, und wann halten Sie an?</translation>
    </message>
    <message>
        <source>Give out the bridge sheet. The next step is a real door, with a safety officer and your own procedure.</source>
        <translation type="unfinished">Das Brückenblatt austeilen. Der nächste Schritt ist eine echte Tür, mit Sicherheitsaufsicht und der eigenen Vorschrift.</translation>
    </message>
    <message>
        <source>Narrow tips on the hem lip, level with the latch. What lets go first?</source>
        <translation type="unfinished">Schmale Spitzen auf der Falzkante, auf Höhe des Schlosses. Was gibt zuerst nach?</translation>
    </message>
    <message>
        <source>Follow the push from the tip: which sheet takes it, and what holds that sheet?</source>
        <translation type="unfinished">Dem Druck von der Spitze aus folgen: Welches Blech nimmt ihn auf, und was hält dieses Blech?</translation>
    </message>
    <message>
        <source>The tips bear on the edge of the skin, so the push goes into the skin and what holds it at its edge.</source>
        <translation type="unfinished">Die Spitzen liegen am Rand der Außenhaut an; also geht der Druck in die Außenhaut und in das, was sie am Rand hält.</translation>
    </message>
    <message>
        <source>The same tips behind the inner bend. What lets go first?</source>
        <translation type="unfinished">Dieselben Spitzen hinter der inneren Biegung. Was gibt zuerst nach?</translation>
    </message>
    <message>
        <source>Which sheet stands behind the tips now, and what is bolted to it?</source>
        <translation type="unfinished">Welches Blech steht jetzt hinter den Spitzen, und was ist daran verschraubt?</translation>
    </message>
    <message>
        <source>The tips bear on the inner structure, and the latch is what holds that to the pillar.</source>
        <translation type="unfinished">Die Spitzen liegen an der inneren Struktur an, und das Schloss ist es, was diese an der Säule hält.</translation>
    </message>
    <message>
        <source>Wide tips behind the inner bend. What lets go first?</source>
        <translation type="unfinished">Breite Spitzen hinter der inneren Biegung. Was gibt zuerst nach?</translation>
    </message>
    <message>
        <source>Has the way of the push changed, or only how wide it is?</source>
        <translation type="unfinished">Hat sich der Weg des Drucks geändert oder nur seine Breite?</translation>
    </message>
    <message>
        <source>The width changes how the sheet under the tips is loaded, not what the push runs into.</source>
        <translation type="unfinished">Die Breite ändert, wie das Blech unter den Spitzen belastet wird, nicht, worauf der Druck trifft.</translation>
    </message>
    <message>
        <source>On the lip with a tool twice as strong. What lets go first?</source>
        <translation type="unfinished">Auf der Falzkante mit einem doppelt so starken Gerät. Was gibt zuerst nach?</translation>
    </message>
    <message>
        <source>How much of its strength did the tool need before?</source>
        <translation type="unfinished">Wie viel seiner Kraft hat das Gerät vorher gebraucht?</translation>
    </message>
    <message>
        <source>The weakest part on the line gives as soon as its own limit is reached; more force in hand does not change which part that is.</source>
        <translation type="unfinished">Das schwächste Teil auf der Linie gibt nach, sobald seine eigene Grenze erreicht ist; mehr Kraft in der Hand ändert nicht, welches Teil das ist.</translation>
    </message>
    <message>
        <source>On the lip, or behind the bend: where does the latch carry more of what it can hold?</source>
        <translation type="unfinished">Auf der Falzkante oder hinter der Biegung: Wo trägt das Schloss mehr von dem, was es halten kann?</translation>
    </message>
    <message>
        <source>Only what goes through the inner structure reaches the latch.</source>
        <translation type="unfinished">Nur was durch die innere Struktur geht, erreicht das Schloss.</translation>
    </message>
    <message>
        <source>The seam lets go before much can arrive at the latch.</source>
        <translation type="unfinished">Die Naht gibt nach, bevor viel am Schloss ankommen kann.</translation>
    </message>
    <message>
        <source>On the lip, a whole edge without a nick, to the end: does the sheet tear?</source>
        <translation type="unfinished">Auf der Falzkante, eine heile Kante ohne Kerbe, bis zum Ende: Reißt das Blech?</translation>
    </message>
    <message>
        <source>Which is the weaker: the metal of the edge, or what holds it?</source>
        <translation type="unfinished">Was ist schwächer: das Metall der Kante oder das, was es hält?</translation>
    </message>
    <message>
        <source>The seam lets the edge go before it is stretched to where it tears. A nick would change that: look, and stop when a tear begins.</source>
        <translation type="unfinished">Die Naht lässt die Kante los, bevor sie so weit gedehnt ist, dass sie reißt. Eine Kerbe würde das ändern: hinsehen, und anhalten, wenn ein Riss beginnt.</translation>
    </message>
    <message>
        <source>On the lip the seam gives first; behind the bend the latch does.</source>
        <translation type="unfinished">Auf der Falzkante gibt die Naht zuerst nach; hinter der Biegung das Schloss.</translation>
    </message>
    <message>
        <source>Twice the force on the lip changes nothing about what gives first.</source>
        <translation type="unfinished">Doppelte Kraft auf der Falzkante ändert nichts daran, was zuerst nachgibt.</translation>
    </message>
    <message>
        <source>The folded and glued outer edge of a door is weak; push between the inner bend and the pillar.</source>
        <translation type="unfinished">Der gefalzte und geklebte Außenrand einer Tür ist schwach; zwischen innerer Biegung und Säule drücken.</translation>
    </message>
    <message>
        <source>More pressure on an edge attack does not change what gives first.</source>
        <translation type="unfinished">Mehr Druck beim Ansatz an der Kante ändert nicht, was zuerst nachgibt.</translation>
    </message>
    <message>
        <source>Sizes up before touching the door</source>
        <translation type="unfinished">Erkundet, bevor die Tür berührt wird</translation>
    </message>
    <message>
        <source>says what holds the door, what is behind it, and whether metal work is needed</source>
        <translation type="unfinished">sagt, was die Tür hält, was dahinter ist und ob Arbeit am Metall nötig ist</translation>
    </message>
    <message>
        <source>Tries the handle first</source>
        <translation type="unfinished">Versucht zuerst den Griff</translation>
    </message>
    <message>
        <source>handle and lock tried before any force</source>
        <translation type="unfinished">Griff und Verriegelung versucht vor jeder Kraft</translation>
    </message>
    <message>
        <source>Has the patient covered and the car steady</source>
        <translation type="unfinished">Lässt den Patienten abdecken und das Auto sichern</translation>
    </message>
    <message>
        <source>cover in place, supports looked at, a word given before the tool moves</source>
        <translation type="unfinished">Abdeckung liegt, Unterbau angesehen, ein Wort gegeben, bevor sich das Gerät bewegt</translation>
    </message>
    <message>
        <source>Names the seat of both tips</source>
        <translation type="unfinished">Benennt den Sitz beider Spitzen</translation>
    </message>
    <message>
        <source>says what each tip bears on, and which side is weaker</source>
        <translation type="unfinished">sagt, worauf jede Spitze anliegt und welche Seite schwächer ist</translation>
    </message>
    <message>
        <source>Spreads in small steps</source>
        <translation type="unfinished">Spreizt in kleinen Schritten</translation>
    </message>
    <message>
        <source>stops to look after each; stops when the skin leaves its edge or begins to tear</source>
        <translation type="unfinished">hält nach jedem an und sieht hin; hält an, wenn die Außenhaut sich vom Rand löst oder zu reißen beginnt</translation>
    </message>
    <message>
        <source>Holds the freed door</source>
        <translation type="unfinished">Hält die gelöste Tür</translation>
    </message>
    <message>
        <source>door tied or held before it can swing or drop; sharp edges covered</source>
        <translation type="unfinished">Tür gebunden oder gehalten, bevor sie schwenken oder fallen kann; scharfe Kanten abgedeckt</translation>
    </message>
    <message>
        <source>What did you say would happen, and what happened?</source>
        <translation type="unfinished">Was sollte nach Ihrer Vorhersage geschehen, und was geschah?</translation>
    </message>
    <message>
        <source>What was different between the two bites, and what followed from that one thing?</source>
        <translation type="unfinished">Was war zwischen den beiden Ansätzen anders, und was folgte aus diesem einen?</translation>
    </message>
    <message>
        <source>What would tell you on a real door, in the first seconds, that you are on the wrong side of the bend?</source>
        <translation type="unfinished">Woran würden Sie an einer echten Tür in den ersten Sekunden merken, dass Sie auf der falschen Seite der Biegung sind?</translation>
    </message>
    <message>
        <source>The line of the push decides: the weakest part on it gives.</source>
        <translation type="unfinished">Die Linie des Drucks entscheidet: Das schwächste Teil darauf gibt nach.</translation>
    </message>
    <message>
        <source>On the lip that is the seam of the skin, and the latch hardly feels it.</source>
        <translation type="unfinished">Auf der Falzkante ist das die Naht der Außenhaut, und das Schloss spürt kaum etwas.</translation>
    </message>
    <message>
        <source>Behind the inner bend the push reaches the latch.</source>
        <translation type="unfinished">Hinter der inneren Biegung erreicht der Druck das Schloss.</translation>
    </message>
    <message>
        <source>Where the model says not settled, look and go in small steps.</source>
        <translation type="unfinished">Wo das Modell nicht gesichert sagt: hinsehen und in kleinen Schritten gehen.</translation>
    </message>
    <message>
        <source>From the top</source>
        <translation type="unfinished">Von oben</translation>
    </message>
    <message>
        <source>Whether a hinge shows at all is not settled: with the tips a centimetre higher, or on a finer lattice, it did not come into sight and the seam went on parting. Once the tool is off the edge springs back a little. Look again before the cut.</source>
        <translation type="unfinished">Ob ein Scharnier überhaupt zu sehen ist, ist nicht gesichert: Mit den Spitzen einen Zentimeter höher oder auf feinerem Gitter kam es nicht zum Vorschein, und die Naht ging weiter auf. Ist das Gerät weg, federt die Kante etwas zurück. Vor dem Schnitt noch einmal hinsehen.</translation>
    </message>
    <message>
        <source>{on.sentence}
What did the rest of the way buy? A longer loose edge, and nothing that was not in sight before.
How much longer is not settled: with the tips a centimetre higher the hinge never showed. And then? Who says stop?</source>
        <translation type="unfinished">{on.sentence}
Was hat der Rest des Wegs gebracht? Eine längere lose Kante, und nichts, was nicht vorher schon zu sehen war.
Wie viel länger, ist nicht gesichert: Mit den Spitzen einen Zentimeter höher war das Scharnier nie zu sehen. Und dann? Wer sagt Halt?</translation>
    </message>
    <message>
        <source>A gap at the window frame, where metal is soft; then short, deep bites behind the bend, worked down the edge.</source>
        <translation type="unfinished">Ein Spalt am Fensterrahmen, wo das Metall weich ist; dann kurze, tiefe Ansätze hinter der Biegung, die Kante hinunter.</translation>
    </message>
    <message>
        <source>How many bites it takes hangs on the door; each further one goes lower than the last. A short one and the next lower came out alike on three lattices; a latch that is jammed takes more.</source>
        <translation type="unfinished">Wie viele Ansätze es braucht, hängt an der Tür; jeder weitere sitzt tiefer als der letzte. Ein kurzer und der nächste tiefer ergaben auf drei Gittern dasselbe; ein verklemmtes Schloss braucht mehr.</translation>
    </message>
    <message>
        <source>The first bite gone on with is not settled: it brings the latch to its limit, and on finer lattices the inner panel folds over the tips and the latch holds. Set a little higher, the seam lets go before the latch does.</source>
        <translation type="unfinished">Der erste Ansatz, weiter gespreizt, ist nicht gesichert: Er bringt das Schloss an seine Grenze, und auf feineren Gittern faltet sich das Innenblech über die Spitzen und das Schloss hält. Etwas höher gesetzt, gibt die Naht vor dem Schloss nach.</translation>
    </message>
    <message>
        <source>The order is the claim, not the forces.</source>
        <translation type="unfinished">Behauptet wird die Reihenfolge, nicht die Kräfte.</translation>
    </message>
    <message>
        <source>frame first, a short bite high on the edge, the next one lower</source>
        <translation type="unfinished">erst der Rahmen, ein kurzer Ansatz hoch an der Kante, der nächste tiefer</translation>
    </message>
    <message>
        <source>frame first, then one long bite high on the edge</source>
        <translation type="unfinished">erst der Rahmen, dann ein langer Ansatz hoch an der Kante</translation>
    </message>
    <message>
        <source>The bar's tip went {lower.opening_of_move_1} with {lower.peak_force_of_move_1} at most: a hand can do that.</source>
        <translation type="unfinished">Die Spitze der Brechstange ging {lower.opening_of_move_1} mit höchstens {lower.peak_force_of_move_1}: Das schafft eine Hand.</translation>
    </message>
    <message>
        <source>{lower.sentence_of_move_1}
Ask what the lever can do and what it cannot. It moves a frame; it does not free a latch.</source>
        <translation type="unfinished">{lower.sentence_of_move_1}
Fragen, was der Hebel kann und was nicht. Er bewegt einen Rahmen; er löst kein Schloss.</translation>
    </message>
    <message>
        <source>High and deep: a short bite</source>
        <translation type="unfinished">Hoch und tief: ein kurzer Ansatz</translation>
    </message>
    <message>
        <source>Wide tips behind the bend, high on the edge. A short bite, then stop and look. What are you looking for?</source>
        <translation type="unfinished">Breite Spitzen hinter der Biegung, hoch an der Kante. Ein kurzer Ansatz, dann anhalten und hinsehen. Wonach sehen Sie?</translation>
    </message>
    <message>
        <source>What must be so before the bite: inner face seen, skin still attached, no less room for the patient.
This bite need not free anything. It makes room for the next.</source>
        <translation type="unfinished">Was vor dem Ansatz so sein muss: Innenfläche zu sehen, Außenhaut noch fest, nicht weniger Raum für den Patienten.
Dieser Ansatz muss nichts lösen. Er schafft Platz für den nächsten.</translation>
    </message>
    <message>
        <source>Stopped, and looked at</source>
        <translation type="unfinished">Angehalten und hingesehen</translation>
    </message>
    <message>
        <source>The tips are open {lower.opening_of_move_2}. The latch carried {lower.latch_of_move_2} of what it can hold; nothing let go, and the seam is whole.</source>
        <translation type="unfinished">Die Spitzen sind {lower.opening_of_move_2} offen. Das Schloss trug {lower.latch_of_move_2} von dem, was es halten kann; nichts gab nach, und die Naht ist heil.</translation>
    </message>
    <message>
        <source>{lower.sentence_of_move_2}
Why stop here? Because the metal still does as it is told: a little further on, the inner panel begins to fold over the tips.</source>
        <translation type="unfinished">{lower.sentence_of_move_2}
Warum hier anhalten? Weil das Metall noch folgt: Ein wenig weiter beginnt das Innenblech, sich über die Spitzen zu falten.</translation>
    </message>
    <message>
        <source>The next bite lower: what lets go?</source>
        <translation type="unfinished">Der nächste Ansatz tiefer: Was gibt nach?</translation>
    </message>
    <message>
        <source>Tips out, down a hand's width, in again just as deep. What lets go first?</source>
        <translation type="unfinished">Spitzen heraus, eine Handbreit tiefer, ebenso tief wieder hinein. Was gibt zuerst nach?</translation>
    </message>
    <message>
        <source>Say the seat of both tips again before they open. What do they bear on, and how far is the latch now?</source>
        <translation type="unfinished">Den Sitz beider Spitzen noch einmal sagen, bevor sie sich öffnen. Worauf liegen sie an, und wie weit ist es noch zum Schloss?</translation>
    </message>
    <message>
        <source>Worked down to the latch</source>
        <translation type="unfinished">Bis zum Schloss hinuntergearbeitet</translation>
    </message>
    <message>
        <source>First to give: {lower.first}, with the tips open {lower.first_opening}. Seam parted in this bite: {lower.parted}.</source>
        <translation type="unfinished">Zuerst gab nach: {lower.first}, bei {lower.first_opening} Öffnung der Spitzen. Naht in diesem Ansatz aufgegangen: {lower.parted}.</translation>
    </message>
    <message>
        <source>{lower.sentence}
The door is free now: who holds it?
If it had held, the next bite would be lower again, and the next. Count them; do not plan them.</source>
        <translation type="unfinished">{lower.sentence}
Die Tür ist jetzt frei: Wer hält sie?
Hätte es gehalten, säße der nächste Ansatz noch tiefer, und der nächste auch. Zählen, nicht planen.</translation>
    </message>
    <message>
        <source>Or go on in the first place?</source>
        <translation type="unfinished">Oder an der ersten Stelle weiter?</translation>
    </message>
    <message>
        <source>The first bite again. This time nobody stops: the tips go on opening where they are. What lets go first?</source>
        <translation type="unfinished">Noch einmal der erste Ansatz. Diesmal hält niemand an: Die Spitzen öffnen weiter, wo sie sind. Was gibt zuerst nach?</translation>
    </message>
    <message>
        <source>This one is talked about and not graded. Ask what the panel will do round the tips meanwhile.</source>
        <translation type="unfinished">Über diese wird gesprochen, sie wird nicht bewertet. Fragen, was das Blech um die Spitzen inzwischen tut.</translation>
    </message>
    <message>
        <source>One long bite: at its limit</source>
        <translation type="unfinished">Ein langer Ansatz: an der Grenze</translation>
    </message>
    <message>
        <source>Here: {top.first}, with the tips open {top.first_opening}; lower down it took {lower.first_opening}. Set a little higher, or run on a finer lattice, it comes out otherwise.</source>
        <translation type="unfinished">Hier: {top.first}, bei {top.first_opening} Öffnung der Spitzen; tiefer brauchte es {lower.first_opening}. Etwas höher gesetzt oder auf feinerem Gitter gerechnet, kommt es anders heraus.</translation>
    </message>
    <message>
        <source>{top.sentence}
Not settled means: do not build on it. A short bite and the next one lower came out alike each time.</source>
        <translation type="unfinished">{top.sentence}
Nicht gesichert heißt: nicht darauf bauen. Ein kurzer Ansatz und der nächste tiefer ergaben jedes Mal dasselbe.</translation>
    </message>
    <message>
        <source>In pairs: draw the bites on the sheet, from the frame down, with what stops each of them.</source>
        <translation type="unfinished">Zu zweit: Die Ansätze auf das Blatt zeichnen, vom Rahmen abwärts, mit dem, was jeden beendet.</translation>
    </message>
    <message>
        <source>Two plans side by side. Which leaves the skin on? Let them change the height of the second bite and run it.</source>
        <translation type="unfinished">Zwei Pläne nebeneinander. Welcher lässt die Außenhaut dran? Die Höhe des zweiten Ansatzes ändern und ausführen lassen.</translation>
    </message>
    <message>
        <source>After a short bite high on the edge, the next one lower, just as deep. What lets go first?</source>
        <translation type="unfinished">Nach einem kurzen Ansatz hoch an der Kante der nächste tiefer, ebenso weit hinein. Was gibt zuerst nach?</translation>
    </message>
    <message>
        <source>What does the inner structure hang on, and which way has the bite come?</source>
        <translation type="unfinished">Woran hängt die innere Struktur, und wohin ist der Ansatz gerückt?</translation>
    </message>
    <message>
        <source>The push goes through the inner structure to what holds the door, and there is less panel on the way that could fold.</source>
        <translation type="unfinished">Der Druck geht durch die innere Struktur zu dem, was die Tür hält, und es liegt weniger Blech auf dem Weg, das sich falten könnte.</translation>
    </message>
    <message>
        <source>The first bite, high on the edge, gone on with where it is. What lets go first?</source>
        <translation type="unfinished">Der erste Ansatz, hoch an der Kante, an seiner Stelle weiter gespreizt. Was gibt zuerst nach?</translation>
    </message>
    <message>
        <source>The push goes through the inner structure to what holds the door, also from higher up; but the panel folds on the way.</source>
        <translation type="unfinished">Der Druck geht durch die innere Struktur zu dem, was die Tür hält, auch von weiter oben; aber das Blech faltet sich auf dem Weg.</translation>
    </message>
    <message>
        <source>Worked down from the frame, to where the latch lets go: what does the patient's room do in the last bite?</source>
        <translation type="unfinished">Vom Rahmen hinuntergearbeitet, bis das Schloss freigibt: Was geschieht im letzten Ansatz mit dem Raum des Patienten?</translation>
    </message>
    <message>
        <source>Which way do the tips push the inner structure?</source>
        <translation type="unfinished">Wohin drücken die Spitzen die innere Struktur?</translation>
    </message>
    <message>
        <source>They stand behind the bend and push the door's end outward.</source>
        <translation type="unfinished">Sie sitzen hinter der Biegung und drücken das Türende nach außen.</translation>
    </message>
    <message>
        <source>Worked down from the window frame, or begun on the hem at the latch: in which plan does the latch carry more of what it can hold?</source>
        <translation type="unfinished">Vom Fensterrahmen hinuntergearbeitet oder auf dem Falz am Schloss begonnen: In welchem Plan trägt das Schloss mehr von dem, was es halten kann?</translation>
    </message>
    <message>
        <source>Worked down from the window frame, or begun on the hem at the latch: which parts more of the seam?</source>
        <translation type="unfinished">Vom Fensterrahmen hinuntergearbeitet oder auf dem Falz am Schloss begonnen: Wo geht mehr von der Naht auf?</translation>
    </message>
    <message>
        <source>Worked down from the top the latch gives first; from the edge the seam does.</source>
        <translation type="unfinished">Von oben nach unten gearbeitet gibt das Schloss zuerst nach; von der Kante aus die Naht.</translation>
    </message>
    <message>
        <source>In the first bite, kept short, nothing gives; in the next, lower, the latch does.</source>
        <translation type="unfinished">Im ersten, kurzen Ansatz gibt nichts nach; im nächsten, tieferen das Schloss.</translation>
    </message>
    <message>
        <source>From the frame one works down the edge: a short bite, off again, the next one lower, until latch or striker shows or lets go.</source>
        <translation type="unfinished">Vom Rahmen aus arbeitet man sich die Kante hinunter: ein kurzer Ansatz, entlasten, der nächste tiefer, bis Schloss oder Schließkeil zu sehen ist oder freigibt.</translation>
    </message>
    <message>
        <source>Works down</source>
        <translation type="unfinished">Arbeitet sich hinunter</translation>
    </message>
    <message>
        <source>tips off, the next bite lower, rather than the same one further</source>
        <translation type="unfinished">Spitzen weg, der nächste Ansatz tiefer, statt denselben weiter</translation>
    </message>
    <message>
        <source>Each bite deep, short, and stopped; the next one lower.</source>
        <translation type="unfinished">Jeder Ansatz tief, kurz und beendet; der nächste tiefer.</translation>
    </message>
    <message>
        <source>forcible-entry bar and spreader on the bench, unpowered</source>
        <translation type="unfinished">Brechstange und Spreizer auf der Werkbank, ohne Antrieb</translation>
    </message>
    <message>
        <source>bridge sheets</source>
        <translation type="unfinished">Brückenblätter</translation>
    </message>
    <message>
        <source>Glass is out of the way before the bar touches the frame.</source>
        <translation type="unfinished">Das Glas ist weg, bevor die Brechstange den Rahmen berührt.</translation>
    </message>
    <message>
        <source>A crew member who has done the first bite</source>
        <translation type="unfinished">Eine Einsatzkraft nach der Stunde über den ersten Ansatz</translation>
    </message>
    <message>
        <source>makes the gap where metal is soft, and says before each bite what it bears on and what stops it</source>
        <translation type="unfinished">schafft den Spalt, wo das Metall weich ist, und sagt vor jedem Ansatz, worauf er anliegt und was ihn beendet</translation>
    </message>
    <message>
        <source>for a straight door, its window gone, a spreader with wide tips and a forcible-entry bar at hand</source>
        <translation type="unfinished">bei einer geraden Tür ohne Scheibe, mit einem Spreizer mit breiten Spitzen und einer Brechstange zur Hand</translation>
    </message>
    <message>
        <source>every bite behind the inner bend, with its stop rule said before the tool moves</source>
        <translation type="unfinished">jeder Ansatz hinter der inneren Biegung, seine Halteregel gesagt, bevor sich das Gerät bewegt</translation>
    </message>
    <message>
        <source>Why not where the latch is?</source>
        <translation type="unfinished">Warum nicht dort, wo das Schloss ist?</translation>
    </message>
    <message>
        <source>You know where the latch is. Why would you begin somewhere else?</source>
        <translation type="unfinished">Sie wissen, wo das Schloss sitzt. Warum würden Sie woanders beginnen?</translation>
    </message>
    <message>
        <source>Let them argue. What is wanted is a place where the tips can get behind the bend.</source>
        <translation type="unfinished">Streiten lassen. Gesucht ist eine Stelle, an der die Spitzen hinter die Biegung kommen.</translation>
    </message>
    <message>
        <source>The frame gives first</source>
        <translation type="unfinished">Der Rahmen gibt zuerst nach</translation>
    </message>
    <message>
        <source>The same door, begun at the edge</source>
        <translation type="unfinished">Dieselbe Tür, am Rand begonnen</translation>
    </message>
    <message>
        <source>Begun on the hem, at the height of the latch. First to give: {edge.first}; {edge.parted} of it parted, and the latch carried {edge.latch} of what it can hold.</source>
        <translation type="unfinished">Auf dem Falz begonnen, auf Höhe des Schlosses. Zuerst gab nach: {edge.first}; {edge.parted} davon gingen auf, und das Schloss trug {edge.latch} von dem, was es halten kann.</translation>
    </message>
    <message>
        <source>{edge.sentence}
A loose, sharp edge, a buried latch, and the next bite is harder.</source>
        <translation type="unfinished">{edge.sentence}
Eine lose, scharfe Kante, ein vergrabenes Schloss, und der nächste Ansatz ist schwerer.</translation>
    </message>
    <message>
        <source>Plan the bites</source>
        <translation type="unfinished">Die Ansätze planen</translation>
    </message>
    <message>
        <source>When do you change tools?</source>
        <translation type="unfinished">Wann wechseln Sie das Gerät?</translation>
    </message>
    <message>
        <source>What does the inner structure hang on?</source>
        <translation type="unfinished">Woran hängt die innere Struktur?</translation>
    </message>
    <message>
        <source>Which of them pushes on the skin?</source>
        <translation type="unfinished">Welcher davon drückt auf die Außenhaut?</translation>
    </message>
    <message>
        <source>Behind the bend the push reaches what holds the door; on the hem it stays in the skin.</source>
        <translation type="unfinished">Hinter der Biegung erreicht der Druck, was die Tür hält; auf dem Falz bleibt er in der Außenhaut.</translation>
    </message>
    <message>
        <source>On the hem the push goes into the skin's seam.</source>
        <translation type="unfinished">Auf dem Falz geht der Druck in die Naht der Außenhaut.</translation>
    </message>
    <message>
        <source>A start at the window frame reaches the latch with less torn metal than a start at the edge. (In the runs shown it is the seam that is spared: a whole edge tears in neither.)</source>
        <translation type="unfinished">Ein Anfang am Fensterrahmen erreicht das Schloss mit weniger zerrissenem Metall als ein Anfang an der Kante. (In den gezeigten Rechnungen wird die Naht geschont: Eine heile Kante reißt in keiner.)</translation>
    </message>
    <message>
        <source>Sizes up before touching anything</source>
        <translation type="unfinished">Erkundet, bevor etwas berührt wird</translation>
    </message>
    <message>
        <source>says what holds the part, what is behind it, whether metal work is needed</source>
        <translation type="unfinished">sagt, was das Teil hält, was dahinter ist, ob Arbeit am Metall nötig ist</translation>
    </message>
    <message>
        <source>Makes the gap high</source>
        <translation type="unfinished">Schafft den Spalt oben</translation>
    </message>
    <message>
        <source>frame bent outward with the hand lever, glass handled first</source>
        <translation type="unfinished">Rahmen mit dem Handhebel nach außen gebogen, vorher das Glas versorgt</translation>
    </message>
    <message>
        <source>Sets each bite behind the bend</source>
        <translation type="unfinished">Setzt jeden Ansatz hinter die Biegung</translation>
    </message>
    <message>
        <source>says the seat of both tips before each spread</source>
        <translation type="unfinished">sagt vor jedem Spreizen den Sitz beider Spitzen</translation>
    </message>
    <message>
        <source>Stops after each bite</source>
        <translation type="unfinished">Hält nach jedem Ansatz an</translation>
    </message>
    <message>
        <source>looks at skin, gap and the patient's side</source>
        <translation type="unfinished">sieht nach Außenhaut, Spalt und der Seite des Patienten</translation>
    </message>
    <message>
        <source>Changes to the cutter in time</source>
        <translation type="unfinished">Wechselt rechtzeitig zum Schneidgerät</translation>
    </message>
    <message>
        <source>What did each bite prepare for the next?</source>
        <translation type="unfinished">Was hat jeder Ansatz für den nächsten vorbereitet?</translation>
    </message>
    <message>
        <source>Where did you stop, and what told you to?</source>
        <translation type="unfinished">Wo haben Sie angehalten, und was sagte es Ihnen?</translation>
    </message>
    <message>
        <source>A gap first, where metal is soft.</source>
        <translation type="unfinished">Erst ein Spalt, wo das Metall weich ist.</translation>
    </message>
    <message>
        <source>The pinch that came back</source>
        <translation type="unfinished">Das Quetschen, das sich rächte</translation>
    </message>
    <message>
        <source>Squeezed at the very end and then from the top is not settled: a bite set a little to one side, or run on a coarser or a finer lattice, parts the seam before the latch lets go, and with the inputs varied the latch let go in fewer than half of the runs.</source>
        <translation type="unfinished">Ganz am Ende gequetscht und dann von oben ist nicht gesichert: Ein etwas daneben gesetzter Ansatz, oder auf gröberem oder feinerem Gitter gerechnet, öffnet die Naht, bevor das Schloss freigibt, und mit veränderten Eingaben gab das Schloss in weniger als der Hälfte der Rechnungen frei.</translation>
    </message>
    <message>
        <source>In the run shown, squeezed at the very end, the latch still lets go first. It is not settled.</source>
        <translation type="unfinished">In der gezeigten Rechnung, ganz am Ende gequetscht, gibt trotzdem zuerst das Schloss nach. Gesichert ist es nicht.</translation>
    </message>
    <message>
        <source>{end.sentence}
The crease is there and does nothing: the push does not press along it. But the squeeze itself parted {end.parted_of_move_1} of seam, and that edge is sharp.
This one is not settled: on other lattices, and with the inputs varied, the seam mostly goes before the latch. Show it and talk.</source>
        <translation type="unfinished">{end.sentence}
Der Knick ist da und tut nichts: Der Druck geht nicht längs zu ihm. Aber das Quetschen selbst öffnete {end.parted_of_move_1} Naht, und diese Kante ist scharf.
Dies ist nicht gesichert: Auf anderen Gittern und mit veränderten Eingaben geht meist die Naht vor dem Schloss. Zeigen und darüber sprechen.</translation>
    </message>
    <message>
        <source>no squeeze, from the window frame and worked down</source>
        <translation type="unfinished">nicht gequetscht, vom Fensterrahmen hinuntergearbeitet</translation>
    </message>
    <message>
        <source>No squeeze: a gap at the window frame, a short bite, the next one lower. First to give: {top.first}, with the tips open {top.first_opening}.</source>
        <translation type="unfinished">Nicht gequetscht: ein Spalt am Fensterrahmen, ein kurzer Ansatz, der nächste tiefer. Zuerst gab nach: {top.first}, bei {top.first_opening} Öffnung der Spitzen.</translation>
    </message>
    <message>
        <source>{top.sentence}
Both pushes of before freed nothing. A gap can be had where metal is soft, and bends no skin inward.</source>
        <translation type="unfinished">{top.sentence}
Beide Drücke von vorher haben nichts gelöst. Ein Spalt ist dort zu haben, wo das Metall weich ist, und biegt keine Haut nach innen.</translation>
    </message>
    <message>
        <source>The push after the squeeze frees nothing; worked down from the top the latch lets go.</source>
        <translation type="unfinished">Der Druck nach dem Quetschen löst nichts; von oben hinuntergearbeitet gibt das Schloss frei.</translation>
    </message>
    <message>
        <source>A squeeze makes a gap fast and leaves a crease. The next push makes the crease bigger, with its direction.</source>
        <translation type="unfinished">Quetschen schafft schnell einen Spalt und hinterlässt einen Knick. Der nächste Druck macht den Knick größer, in seiner Richtung.</translation>
    </message>
    <message>
        <source>a strip of card for each pair: crease it, press its ends</source>
        <translation type="unfinished">ein Streifen Karton für je zwei: knicken und die Enden zusammendrücken</translation>
    </message>
    <message>
        <source>Here the model goes only part of the way with the trade: the crease goes further in, and over the first millimetres the squeezed skin goes in and the other one out; then the corner of the latch edge folds, and the middle of the upper skin hardly moves, squeezed or not.</source>
        <translation type="unfinished">Hier geht das Modell nur einen Teil des Wegs mit der Praxis: Der Knick geht weiter hinein, und über die ersten Millimeter geht die gequetschte Außenhaut nach innen und die andere nach außen; dann faltet sich die Ecke der Schlosskante, und die Mitte der oberen Außenhaut bewegt sich kaum, ob gequetscht oder nicht.</translation>
    </message>
    <message>
        <source>The trade says the whole door follows the crease. In this model the inner panel, which the squeeze had pulled outward, hardly does.</source>
        <translation type="unfinished">Die Praxis sagt, die ganze Tür folge dem Knick. In diesem Modell tut das Innenblech, das durch das Quetschen nach außen gezogen war, es kaum.</translation>
    </message>
    <message>
        <source>A squeeze that leaves less of a crease than the skin was crowned turns nothing round.</source>
        <translation type="unfinished">Ein Quetschen, das einen kleineren Knick hinterlässt, als die Außenhaut gewölbt war, kehrt nichts um.</translation>
    </message>
    <message>
        <source>Where the squeeze is set matters: high and at the very end of the door it is less of a trap than in the middle.</source>
        <translation type="unfinished">Wo gequetscht wird, zählt: Hoch und ganz am Ende der Tür ist es weniger eine Falle als in der Mitte.</translation>
    </message>
    <message>
        <source>says which way a door will fold under a push along the car, from the creases it already has</source>
        <translation type="unfinished">sagt aus den Knicken, die eine Tür schon hat, wohin sie sich unter einem Druck längs zum Auto faltet</translation>
    </message>
    <message>
        <source>shown doors with and without an earlier squeeze</source>
        <translation type="unfinished">gezeigt werden Türen mit und ohne früheres Quetschen</translation>
    </message>
    <message>
        <source>with the reason, and with a stop rule for the patient's side</source>
        <translation type="unfinished">mit Begründung und mit einer Halteregel für die Seite des Patienten</translation>
    </message>
    <message>
        <source>creating openings for access; protecting the patient</source>
        <translation type="unfinished">Öffnungen für den Zugang schaffen; den Patienten schützen</translation>
    </message>
    <message>
        <source>squeezed in the middle, then spread</source>
        <translation type="unfinished">in der Mitte gequetscht, dann gespreizt</translation>
    </message>
    <message>
        <source>the same spread, no squeeze</source>
        <translation type="unfinished">dasselbe Spreizen, kein Quetschen</translation>
    </message>
    <message>
        <source>squeezed at the very end, then from the top</source>
        <translation type="unfinished">ganz am Ende gequetscht, dann von oben</translation>
    </message>
    <message>
        <source>A strip of card</source>
        <translation type="unfinished">Ein Streifen Karton</translation>
    </message>
    <message>
        <source>Crease a strip of card and press its ends together. Which way does it go? Turn it over.</source>
        <translation type="unfinished">Einen Streifen Karton knicken und die Enden zusammendrücken. Wohin geht er? Umdrehen.</translation>
    </message>
    <message>
        <source>Metal remembers its first bend. Everybody should have felt this before the screen shows it.</source>
        <translation type="unfinished">Metall erinnert sich an seine erste Biegung. Alle sollen das gefühlt haben, bevor der Bildschirm es zeigt.</translation>
    </message>
    <message>
        <source>The squeeze looks harmless</source>
        <translation type="unfinished">Das Quetschen sieht harmlos aus</translation>
    </message>
    <message>
        <source>The tips close across the door: a gap, quickly. The upper skin went in {squeezed.upper_skin_of_move_1}; least room for the patient: {squeezed.room_of_move_1}.</source>
        <translation type="unfinished">Die Spitzen schließen sich quer über die Tür: schnell ein Spalt. Die obere Außenhaut ging {squeezed.upper_skin_of_move_1} hinein; kleinster Raum für den Patienten: {squeezed.room_of_move_1}.</translation>
    </message>
    <message>
        <source>{squeezed.sentence_of_move_1}
Ask for a show of hands: good idea or not? Do not say. The skin is now further in than it was crowned out.</source>
        <translation type="unfinished">{squeezed.sentence_of_move_1}
Hände heben lassen: gute Idee oder nicht? Nichts verraten. Die Außenhaut ist jetzt weiter innen, als sie nach außen gewölbt war.</translation>
    </message>
    <message>
        <source>The same push: which way does the skin go?</source>
        <translation type="unfinished">Derselbe Druck: Wohin geht die Außenhaut?</translation>
    </message>
    <message>
        <source>Now spread along the car, high on the latch edge. Which way does the upper skin go?</source>
        <translation type="unfinished">Jetzt längs zum Auto spreizen, hoch an der Schlosskante. Wohin geht die obere Außenhaut?</translation>
    </message>
    <message>
        <source>Point at the crease. The strip of card knew.</source>
        <translation type="unfinished">Auf den Knick zeigen. Der Karton wusste es.</translation>
    </message>
    <message>
        <source>Squeezed first</source>
        <translation type="unfinished">Erst gequetscht</translation>
    </message>
    <message>
        <source>First to give: {squeezed.first}. The middle of the upper skin ended {squeezed.upper_skin} from where it was.
Watch the first few millimetres: the crease begins to go in at once. The corner of the door folds after that.</source>
        <translation type="unfinished">Zuerst gab nach: {squeezed.first}. Die Mitte der oberen Außenhaut stand am Ende {squeezed.upper_skin} von ihrem Platz.
Die ersten Millimeter ansehen: Der Knick beginnt sofort hineinzugehen. Die Ecke der Tür faltet sich danach.</translation>
    </message>
    <message>
        <source>Nobody squeezed</source>
        <translation type="unfinished">Niemand hat gequetscht</translation>
    </message>
    <message>
        <source>The same push from the same place, and no crease to go in: the upper skin moved {alone.upper_skin}, outward. First to give: {alone.first}.</source>
        <translation type="unfinished">Derselbe Druck an derselben Stelle, und kein Knick, der hineingehen könnte: Die obere Außenhaut bewegte sich {alone.upper_skin} nach außen. Zuerst gab nach: {alone.first}.</translation>
    </message>
    <message>
        <source>{alone.sentence}
One thing differs, and it happened a minute ago. On real metal the trade has seen the whole door follow the crease; this model has only its first millimetres.</source>
        <translation type="unfinished">{alone.sentence}
Eines ist anders, und es geschah vor einer Minute. An echtem Metall hat die Praxis gesehen, wie die ganze Tür dem Knick folgt; dieses Modell hat nur die ersten Millimeter davon.</translation>
    </message>
    <message>
        <source>Another way to the gap</source>
        <translation type="unfinished">Ein anderer Weg zum Spalt</translation>
    </message>
    <message>
        <source>If you must squeeze: the very end</source>
        <translation type="unfinished">Wenn Sie quetschen müssen: ganz am Ende</translation>
    </message>
    <message>
        <source>Squeezed high at the very latch end, then from the top: {end.first} with the tips open {end.first_opening}.</source>
        <translation type="unfinished">Hoch ganz am Schlossende gequetscht, dann von oben: {end.first} bei {end.first_opening} Öffnung der Spitzen.</translation>
    </message>
    <message>
        <source>Undo to before the squeeze</source>
        <translation type="unfinished">Zurück vor das Quetschen</translation>
    </message>
    <message>
        <source>Go back to before the squeeze and make the gap another way.</source>
        <translation type="unfinished">Vor das Quetschen zurückgehen und den Spalt anders schaffen.</translation>
    </message>
    <message>
        <source>Undo is the point of the lesson: on a real door there is none.</source>
        <translation type="unfinished">Rückgängig ist der Sinn dieser Lektion: An einer echten Tür gibt es das nicht.</translation>
    </message>
    <message>
        <source>Who watches the inside?</source>
        <translation type="unfinished">Wer sieht nach innen?</translation>
    </message>
    <message>
        <source>Who looks at the patient's side during a push along the car, and what do they call?</source>
        <translation type="unfinished">Wer sieht während eines Drucks längs zum Auto nach der Seite des Patienten, und was ruft er?</translation>
    </message>
    <message>
        <source>Somebody must look: at the tool nothing special is felt.</source>
        <translation type="unfinished">Jemand muss hinsehen: Am Gerät ist nichts Besonderes zu spüren.</translation>
    </message>
    <message>
        <source>The door was squeezed in its middle. The tips spread along the car: which way does the upper skin go?</source>
        <translation type="unfinished">Die Tür wurde in der Mitte gequetscht. Die Spitzen spreizen längs zum Auto: Wohin geht die obere Außenhaut?</translation>
    </message>
    <message>
        <source>Which way is it bent already?</source>
        <translation type="unfinished">Wohin ist sie schon gebogen?</translation>
    </message>
    <message>
        <source>The crease itself goes further in, as a bend does under a push along it; the corner of the door folds before the whole skin follows.</source>
        <translation type="unfinished">Der Knick selbst geht weiter hinein, wie es eine Biegung unter einem Druck längs zu ihr tut; die Ecke der Tür faltet sich, bevor die ganze Außenhaut folgt.</translation>
    </message>
    <message>
        <source>The same push on a door nobody has squeezed: which way does the upper skin go?</source>
        <translation type="unfinished">Derselbe Druck an einer Tür, die niemand gequetscht hat: Wohin geht die obere Außenhaut?</translation>
    </message>
    <message>
        <source>Which way was it made?</source>
        <translation type="unfinished">Wohin wurde sie gewölbt gebaut?</translation>
    </message>
    <message>
        <source>A skin is crowned outward; the corner folds before it bows far.</source>
        <translation type="unfinished">Eine Außenhaut ist nach außen gewölbt; die Ecke faltet sich, bevor sie sich weit durchbiegt.</translation>
    </message>
    <message>
        <source>Squeezed in its middle, then pushed along the car, high on the latch edge: what lets go first?</source>
        <translation type="unfinished">In der Mitte gequetscht, dann längs zum Auto gedrückt, hoch an der Schlosskante: Was gibt zuerst nach?</translation>
    </message>
    <message>
        <source>The tips stand across lip and shut face: which of the two is held less?</source>
        <translation type="unfinished">Die Spitzen stehen quer über Falzkante und Stirnfläche: Was von beiden ist weniger gehalten?</translation>
    </message>
    <message>
        <source>A part of the push goes into the skin's edge, and its seam is the weakest part on the way; the latch holds.</source>
        <translation type="unfinished">Ein Teil des Drucks geht in den Rand der Außenhaut, und deren Naht ist das schwächste Teil auf dem Weg; das Schloss hält.</translation>
    </message>
    <message>
        <source>Squeezed at the very end, then a deep bite from the top: what lets go first?</source>
        <translation type="unfinished">Ganz am Ende gequetscht, dann ein tiefer Ansatz von oben: Was gibt zuerst nach?</translation>
    </message>
    <message>
        <source>Does the push press along the crease?</source>
        <translation type="unfinished">Geht der Druck längs zum Knick?</translation>
    </message>
    <message>
        <source>The push goes behind the bend to what holds the door; the crease is beside its way.</source>
        <translation type="unfinished">Der Druck geht hinter der Biegung zu dem, was die Tür hält; der Knick liegt neben seinem Weg.</translation>
    </message>
    <message>
        <source>Pinching the door across its thickness leaves a crease inward; a later push along the car makes it bigger.</source>
        <translation type="unfinished">Die Tür quer zu ihrer Dicke zu quetschen hinterlässt einen Knick nach innen; ein späterer Druck längs zum Auto macht ihn größer.</translation>
    </message>
    <message>
        <source>Reads the creases</source>
        <translation type="unfinished">Liest die Knicke</translation>
    </message>
    <message>
        <source>points at each crease and says which way it will grow</source>
        <translation type="unfinished">zeigt auf jeden Knick und sagt, wohin er wachsen wird</translation>
    </message>
    <message>
        <source>Posts a watcher</source>
        <translation type="unfinished">Stellt einen Beobachter</translation>
    </message>
    <message>
        <source>somebody sees the patient's side and can stop the tool</source>
        <translation type="unfinished">jemand sieht die Seite des Patienten und kann das Gerät anhalten</translation>
    </message>
    <message>
        <source>What did the squeeze gain, and what did it cost?</source>
        <translation type="unfinished">Was hat das Quetschen gewonnen, und was hat es gekostet?</translation>
    </message>
    <message>
        <source>How would you see on a real door that an earlier push left a crease inward?</source>
        <translation type="unfinished">Wie würden Sie an einer echten Tür sehen, dass ein früherer Druck einen Knick nach innen hinterließ?</translation>
    </message>
    <message>
        <source>The first bend decides the next one.</source>
        <translation type="unfinished">Die erste Biegung entscheidet die nächste.</translation>
    </message>
    <message>
        <source>A gap made by squeezing is paid for later.</source>
        <translation type="unfinished">Ein durch Quetschen geschaffener Spalt wird später bezahlt.</translation>
    </message>
    <message>
        <source>Order of moves matters.</source>
        <translation type="unfinished">Die Reihenfolge der Schritte zählt.</translation>
    </message>
    <message>
        <source>Out from the middle</source>
        <translation type="unfinished">Von der Mitte nach außen</translation>
    </message>
    <message>
        <source>The lower tip works at the height of a face: cover, and head room, before anything.</source>
        <translation type="unfinished">Die untere Spitze arbeitet auf Höhe eines Gesichts: Abdeckung und Platz für den Kopf vor allem anderen.</translation>
    </message>
    <message>
        <source>with the reason, and says what would stop the push</source>
        <translation type="unfinished">mit Begründung, und sagt, was den Druck beenden würde</translation>
    </message>
    <message>
        <source>lower tip on the outer lip</source>
        <translation type="unfinished">untere Spitze auf der Außenlippe</translation>
    </message>
    <message>
        <source>lower tip on the inner lip</source>
        <translation type="unfinished">untere Spitze auf der Innenlippe</translation>
    </message>
    <message>
        <source>A rule with a condition</source>
        <translation type="unfinished">Eine Regel mit Bedingung</translation>
    </message>
    <message>
        <source>Many are taught: spread up and down in the window, and the door goes out. When is that so?</source>
        <translation type="unfinished">Vielen wird beigebracht: im Fenster nach oben und unten spreizen, und die Tür geht nach außen. Wann ist das so?</translation>
    </message>
    <message>
        <source>Rules of thumb come with a condition that is often left out. Today we look for it.</source>
        <translation type="unfinished">Faustregeln kommen mit einer Bedingung, die oft weggelassen wird. Heute suchen wir sie.</translation>
    </message>
    <message>
        <source>The lower tip on the outer lip, the upper one under the roof rail. Which way does the middle of the skin go?</source>
        <translation type="unfinished">Die untere Spitze auf der Außenlippe, die obere unter dem Dachholm. Wohin geht die Mitte der Außenhaut?</translation>
    </message>
    <message>
        <source>Lock the answers before you run it.</source>
        <translation type="unfinished">Die Antworten festlegen, bevor ausgeführt wird.</translation>
    </message>
    <message>
        <source>The skin starts outward</source>
        <translation type="unfinished">Die Außenhaut beginnt nach außen</translation>
    </message>
    <message>
        <source>{outer.sentence}
The crowned skin takes the load and bows the way it is already bowed.</source>
        <translation type="unfinished">{outer.sentence}
Die gewölbte Außenhaut nimmt die Last auf und biegt sich weiter, wie sie schon gebogen ist.</translation>
    </message>
    <message>
        <source>One thing changed: the inner lip</source>
        <translation type="unfinished">Eines geändert: die Innenlippe</translation>
    </message>
    <message>
        <source>Now the lower tip stands on the inner lip. What happens to the patient's room?</source>
        <translation type="unfinished">Jetzt steht die untere Spitze auf der Innenlippe. Was wird aus dem Raum des Patienten?</translation>
    </message>
    <message>
        <source>Same tool, same place along the door, same opening. Only the lip.</source>
        <translation type="unfinished">Gleiches Gerät, gleiche Stelle längs der Tür, gleiche Öffnung. Nur die Lippe.</translation>
    </message>
    <message>
        <source>The inner panel comes in</source>
        <translation type="unfinished">Das Innenblech kommt herein</translation>
    </message>
    <message>
        <source>The inner panel moved {inner.inner} inward; the least room is now {inner.room}.</source>
        <translation type="unfinished">Das Innenblech ging {inner.inner} nach innen; der kleinste Raum ist jetzt {inner.room}.</translation>
    </message>
    <message>
        <source>{inner.sentence}
Look at it from the patient's seat. For the plan this is called: {inner.effect}.</source>
        <translation type="unfinished">{inner.sentence}
Vom Platz des Patienten ansehen. Für den Plan heißt das: {inner.effect}.</translation>
    </message>
    <message>
        <source>Say the condition</source>
        <translation type="unfinished">Die Bedingung sagen</translation>
    </message>
    <message>
        <source>Say the rule again, this time with its condition.</source>
        <translation type="unfinished">Die Regel noch einmal sagen, diesmal mit ihrer Bedingung.</translation>
    </message>
    <message>
        <source>The first second</source>
        <translation type="unfinished">Die erste Sekunde</translation>
    </message>
    <message>
        <source>What would you see in the first second if the tip stood on the wrong lip?</source>
        <translation type="unfinished">Was würden Sie in der ersten Sekunde sehen, wenn die Spitze auf der falschen Lippe stünde?</translation>
    </message>
    <message>
        <source>Bridge sheet. Somebody watches the inside before and during.</source>
        <translation type="unfinished">Brückenblatt. Jemand sieht vorher und währenddessen nach innen.</translation>
    </message>
    <message>
        <source>Lower tip on the belt's outer lip. Which way does the middle of the skin go?</source>
        <translation type="unfinished">Untere Spitze auf der Außenlippe der Brüstung. Wohin geht die Mitte der Außenhaut?</translation>
    </message>
    <message>
        <source>Which way is the skin bowed before anybody pushes?</source>
        <translation type="unfinished">Wohin ist die Außenhaut gebogen, bevor jemand drückt?</translation>
    </message>
    <message>
        <source>The skin is crowned outward and is pressed along its own sheet, so it bows further out.</source>
        <translation type="unfinished">Die Außenhaut ist nach außen gewölbt und wird längs in ihrem Blech gedrückt; also biegt sie sich weiter nach außen.</translation>
    </message>
    <message>
        <source>Lower tip on the inner lip. What happens to the patient's room?</source>
        <translation type="unfinished">Untere Spitze auf der Innenlippe. Was wird aus dem Raum des Patienten?</translation>
    </message>
    <message>
        <source>Which sheet takes the push now?</source>
        <translation type="unfinished">Welches Blech nimmt jetzt den Druck auf?</translation>
    </message>
    <message>
        <source>The inner panel takes the push and bends towards the person.</source>
        <translation type="unfinished">Das Innenblech nimmt den Druck auf und biegt sich zum Menschen hin.</translation>
    </message>
    <message>
        <source>Lower tip on the inner lip. Which way does the inner panel go?</source>
        <translation type="unfinished">Untere Spitze auf der Innenlippe. Wohin geht das Innenblech?</translation>
    </message>
    <message>
        <source>It is pressed off its middle, on the side of the patient.</source>
        <translation type="unfinished">Es wird neben seiner Mitte gedrückt, auf der Seite des Patienten.</translation>
    </message>
    <message>
        <source>Lower tip on the outer lip, or on the inner one: which needs more force?</source>
        <translation type="unfinished">Untere Spitze auf der Außenlippe oder auf der inneren: Was braucht mehr Kraft?</translation>
    </message>
    <message>
        <source>The inner panel is the stiffer of the two.</source>
        <translation type="unfinished">Das Innenblech ist das steifere von beiden.</translation>
    </message>
    <message>
        <source>On the outer lip the skin's middle goes out; on the inner lip it does not.</source>
        <translation type="unfinished">Auf der Außenlippe geht die Mitte der Außenhaut nach außen; auf der Innenlippe nicht.</translation>
    </message>
    <message>
        <source>On the inner lip the patient loses room; on the outer lip not.</source>
        <translation type="unfinished">Auf der Innenlippe verliert der Patient Raum; auf der Außenlippe nicht.</translation>
    </message>
    <message>
        <source>A spread up and down against the belt's outer lip starts the middle of an undented door outward.</source>
        <translation type="unfinished">Ein Spreizen nach oben und unten gegen die Außenlippe der Brüstung lässt die Mitte einer unverbeulten Tür nach außen beginnen.</translation>
    </message>
    <message>
        <source>With the tip on the inner lip the answer changes.</source>
        <translation type="unfinished">Mit der Spitze auf der Innenlippe ändert sich die Antwort.</translation>
    </message>
    <message>
        <source>Names the lip</source>
        <translation type="unfinished">Benennt die Lippe</translation>
    </message>
    <message>
        <source>says which lip the lower tip stands on, and looks</source>
        <translation type="unfinished">sagt, auf welcher Lippe die untere Spitze steht, und sieht hin</translation>
    </message>
    <message>
        <source>Checks the rail</source>
        <translation type="unfinished">Prüft den Holm</translation>
    </message>
    <message>
        <source>says what the upper tip pushes on, and what shows that it gives</source>
        <translation type="unfinished">sagt, worauf die obere Spitze drückt und was zeigt, dass es nachgibt</translation>
    </message>
    <message>
        <source>What else on a wrecked door could turn it round?</source>
        <translation type="unfinished">Was könnte sie an einer Unfalltür sonst umkehren?</translation>
    </message>
    <message>
        <source>The lip decides which sheet takes the push.</source>
        <translation type="unfinished">Die Lippe entscheidet, welches Blech den Druck aufnimmt.</translation>
    </message>
    <message>
        <source>A sheet bows further the way it is bowed.</source>
        <translation type="unfinished">Ein Blech biegt sich weiter, wie es gebogen ist.</translation>
    </message>
    <message>
        <source>Look at the inside in the first second.</source>
        <translation type="unfinished">In der ersten Sekunde nach innen sehen.</translation>
    </message>
    <message>
        <source>High striker</source>
        <translation type="unfinished">Hoch getroffen</translation>
    </message>
    <message>
        <source>The trade warns that pushing forward drags a bar that is bent in along the hips. In these runs, a little to either side and on a coarser lattice too, the room grew; that does not rule it out: post a watcher. Whether the latch lets go is not settled: on the coarser lattice it held to the end.</source>
        <translation type="unfinished">Die Praxis warnt, dass Drücken nach vorn einen eingebogenen Träger über die Hüften zieht. In diesen Rechnungen, auch etwas zu beiden Seiten und auf gröberem Gitter, wuchs der Raum; das schließt es nicht aus: einen Beobachter stellen. Ob das Schloss freigibt, ist nicht gesichert: Auf dem gröberen Gitter hielt es bis zum Ende.</translation>
    </message>
    <message>
        <source>In this run the door comes off its latch. Room: {forward.room_after}. Width to bring the patient out by: {forward.width}.</source>
        <translation type="unfinished">In dieser Rechnung kommt die Tür von ihrem Schloss frei. Raum: {forward.room_after}. Breite, um den Patienten herauszubringen: {forward.width}.</translation>
    </message>
    <message>
        <source>In the run shown the front latch lets go, pushed forward; ripped at the foot it is hardly loaded.</source>
        <translation type="unfinished">In der gezeigten Rechnung gibt das vordere Schloss nach vorn gedrückt frei; am Fuß abgerissen ist es kaum belastet.</translation>
    </message>
    <message>
        <source>How a rip at the foot comes off hangs on where the tip bears and on what else still holds. A little to either side, and on a coarser lattice, it gained no room either; whether the seam parts is not settled.</source>
        <translation type="unfinished">Wie ein Abreißen am Fuß ausgeht, hängt daran, wo die Spitze anliegt und was sonst noch hält. Etwas zu beiden Seiten und auf gröberem Gitter brachte es ebenfalls keinen Raum; ob die Naht aufgeht, ist nicht gesichert.</translation>
    </message>
    <message>
        <source>Bar and pillar lie over the patient's hips. Three plans from one start: what each frees, what room it gives, and when.</source>
        <translation type="unfinished">Träger und Säule liegen über den Hüften des Patienten. Drei Pläne vom selben Anfang: was jeder löst, welchen Raum er gibt, und wann.</translation>
    </message>
    <message>
        <source>a bench model: a ruler hinged at its foot</source>
        <translation type="unfinished">ein Tischmodell: ein Lineal, am Fuß drehbar</translation>
    </message>
    <message>
        <source>One crash state: which plan frees what, and in which order, is the claim, not the lengths.</source>
        <translation type="unfinished">Ein Schadensbild: Behauptet wird, welcher Plan was löst und in welcher Reihenfolge, nicht die Längen.</translation>
    </message>
    <message>
        <source>Whether the freed door can be swung by hand at the end of the fold is not settled: it hangs on where its dent comes to lie beside the pillar. Plan for a door that will not go.</source>
        <translation type="unfinished">Ob sich die gelöste Tür am Ende des Umlegens von Hand schwenken lässt, ist nicht gesichert: Es hängt daran, wo ihre Delle neben der Säule zu liegen kommt. Mit einer Tür rechnen, die nicht geht.</translation>
    </message>
    <message>
        <source>The pillar tears a little in the first press of the fold; how far a tear runs is the least settled thing in this model.</source>
        <translation type="unfinished">Die Säule reißt beim ersten Drücken des Umlegens ein wenig; wie weit ein Riss läuft, ist das am wenigsten Gesicherte in diesem Modell.</translation>
    </message>
    <message>
        <source>What it costs the hands to swing a crushed door past its pillar is not known well.</source>
        <translation type="unfinished">Was es die Hände kostet, eine eingedrückte Tür an ihrer Säule vorbei zu schwenken, ist nicht gut bekannt.</translation>
    </message>
    <message>
        <source>The room told is geometry, not injury. The medical lead sets the pace.</source>
        <translation type="unfinished">Der angegebene Raum ist Geometrie, nicht Verletzung. Die medizinische Leitung bestimmt das Tempo.</translation>
    </message>
    <message>
        <source>A technician with tool training</source>
        <translation type="unfinished">Eine erfahrene Einsatzkraft mit Geräteausbildung</translation>
    </message>
    <message>
        <source>chooses the order of moves, says before each what it frees and what the room will do, and what would stop it</source>
        <translation type="unfinished">wählt die Reihenfolge der Schritte, sagt vor jedem, was er löst und was der Raum tun wird, und was ihn beenden würde</translation>
    </message>
    <message>
        <source>for a car hit in its middle by a tall front: pillar and bar over the hips, both latches holding</source>
        <translation type="unfinished">bei einem Auto, das in der Mitte von einer hohen Front getroffen wurde: Säule und Träger über den Hüften, beide Schlösser halten</translation>
    </message>
    <message>
        <source>with the reason, a watcher posted, and a second plan ready</source>
        <translation type="unfinished">mit Begründung, mit einem Beobachter, und mit einem zweiten Plan bereit</translation>
    </message>
    <message>
        <source>disentangling; creating openings; technician level</source>
        <translation type="unfinished">Befreien; Öffnungen schaffen; Stufe Fortgeschrittene</translation>
    </message>
    <message>
        <source>front door freed, pillar cut open at its head, then folded down and out by a ram</source>
        <translation type="unfinished">vordere Tür gelöst, Säule am Kopf aufgeschnitten, dann von einem Rettungszylinder nach unten und außen umgelegt</translation>
    </message>
    <message>
        <source>the front door pushed straight forward off the pillar</source>
        <translation type="unfinished">die vordere Tür gerade nach vorn von der Säule gedrückt</translation>
    </message>
    <message>
        <source>the foot cut into from behind, then the rear door spread up off the rocker</source>
        <translation type="unfinished">der Fuß von hinten eingeschnitten, dann die hintere Tür vom Schweller nach oben gespreizt</translation>
    </message>
    <message>
        <source>What holds whom?</source>
        <translation type="unfinished">Was hält wen?</translation>
    </message>
    <message>
        <source>The pillar stands over the hips, both doors are still latched. What touches the patient, and what is it tied to?</source>
        <translation type="unfinished">Die Säule steht über den Hüften, beide Türen sind noch verriegelt. Was berührt den Patienten, und woran ist es fest?</translation>
    </message>
    <message>
        <source>Cover, belts, trim off, foot of the pillar looked at for a tensioner, before any tool. Say it and wait for it.
Ask first whether metal work is needed at all, and what the medical lead wants.</source>
        <translation type="unfinished">Abdeckung, Gurte, Verkleidung ab, Fuß der Säule auf einen Straffer angesehen, vor jedem Gerät. Sagen und darauf warten.
Zuerst fragen, ob Arbeit am Metall überhaupt nötig ist und was die medizinische Leitung will.</translation>
    </message>
    <message>
        <source>Trim, seals and panes are off. The nearest metal is {fold.room_after_of_move_1} from the person.</source>
        <translation type="unfinished">Verkleidung, Dichtungen und Scheiben sind ab. Das nächste Metall ist {fold.room_after_of_move_1} vom Menschen entfernt.</translation>
    </message>
    <message>
        <source>{fold.sentence_of_move_1}
Which of these would the blades have met? Only the car maker's rescue sheet can say where they sit on a real car.</source>
        <translation type="unfinished">{fold.sentence_of_move_1}
Welche davon hätten die Klingen getroffen? Wo sie an einem echten Auto sitzen, kann nur das Rettungsdatenblatt des Herstellers sagen.</translation>
    </message>
    <message>
        <source>Forward: what becomes of the room?</source>
        <translation type="unfinished">Nach vorn: Was wird aus dem Raum?</translation>
    </message>
    <message>
        <source>Wide tips deep behind the inner bend push the front door straight forward, off the pillar. What does the patient's room do?</source>
        <translation type="unfinished">Breite Spitzen tief hinter der inneren Biegung drücken die vordere Tür gerade nach vorn, von der Säule weg. Was tut der Raum des Patienten?</translation>
    </message>
    <message>
        <source>The first centimetres count, not the last. Ask for a reason with each answer.</source>
        <translation type="unfinished">Die ersten Zentimeter zählen, nicht die letzten. Nach einem Grund zu jeder Antwort fragen.</translation>
    </message>
    <message>
        <source>Forward: the end</source>
        <translation type="unfinished">Nach vorn: das Ende</translation>
    </message>
    <message>
        <source>{forward.sentence}
The trade warns of the bar here; this run loses no room. But the pillar is where it was: nobody can be brought out yet.</source>
        <translation type="unfinished">{forward.sentence}
Die Praxis warnt hier vor dem Träger; diese Rechnung verliert keinen Raum. Aber die Säule steht, wo sie stand: Noch kann niemand herausgebracht werden.</translation>
    </message>
    <message>
        <source>Ripped at the foot</source>
        <translation type="unfinished">Am Fuß abgerissen</translation>
    </message>
    <message>
        <source>The foot is cut into from behind, the head stays on. The tips push the rear door up off the rocker. What does the room do?</source>
        <translation type="unfinished">Der Fuß ist von hinten eingeschnitten, der Kopf bleibt dran. Die Spitzen drücken die hintere Tür vom Schweller nach oben. Was tut der Raum?</translation>
    </message>
    <message>
        <source>Ask what the tips bear on, and what ties the rear door to the pillar's foot.</source>
        <translation type="unfinished">Fragen, worauf die Spitzen anliegen und was die hintere Tür mit dem Fuß der Säule verbindet.</translation>
    </message>
    <message>
        <source>Ripped: the end</source>
        <translation type="unfinished">Abgerissen: das Ende</translation>
    </message>
    <message>
        <source>{rip.parted} of seam parted, and the tip slid. Room: {rip.room_after}.</source>
        <translation type="unfinished">{rip.parted} Naht gingen auf, und die Spitze rutschte. Raum: {rip.room_after}.</translation>
    </message>
    <message>
        <source>{rip.sentence}
Effort spent, nothing freed: what would the crew have noticed first, and after how long?</source>
        <translation type="unfinished">{rip.sentence}
Aufwand ohne Gewinn: Was hätte die Mannschaft zuerst bemerkt, und nach wie langer Zeit?</translation>
    </message>
    <message>
        <source>Fold: first free the door</source>
        <translation type="unfinished">Umlegen: zuerst die Tür lösen</translation>
    </message>
    <message>
        <source>Folding needs the front door off the pillar. First to give: {fold.first_of_move_2}, with the tips open {fold.first_opening_of_move_2}. Room: {fold.room_after_of_move_2}.</source>
        <translation type="unfinished">Zum Umlegen muss die vordere Tür von der Säule. Zuerst gab nach: {fold.first_of_move_2}, bei {fold.first_opening_of_move_2} Öffnung der Spitzen. Raum: {fold.room_after_of_move_2}.</translation>
    </message>
    <message>
        <source>{fold.sentence_of_move_2}
Then the pillar is cut at its head. {fold.sentence_of_move_4} Ask how they would know that it is through.</source>
        <translation type="unfinished">{fold.sentence_of_move_2}
Dann wird die Säule am Kopf geschnitten. {fold.sentence_of_move_4} Fragen, woran sie merken würden, dass sie durch ist.</translation>
    </message>
    <message>
        <source>Fold: the first press</source>
        <translation type="unfinished">Umlegen: das erste Drücken</translation>
    </message>
    <message>
        <source>A ram from the far pillar, low, onto the flattest spot of the crushed wall. Which way does everything above the foot go?</source>
        <translation type="unfinished">Ein Rettungszylinder von der gegenüberliegenden Säule, niedrig, auf die flachste Stelle der eingedrückten Wand. Wohin geht alles über dem Fuß?</translation>
    </message>
    <message>
        <source>Both ends: who looks at the foot, who at the head? Hold a ruler at its foot and tip it: the higher a point is, the further out it goes.
The doors are not drawn, so that the ram can be seen; keys 1, 2, 4 and 7 bring them back.</source>
        <translation type="unfinished">Beide Enden: Wer sieht nach dem Fuß, wer nach dem Kopf? Ein Lineal am Fuß halten und kippen: Je höher ein Punkt ist, desto weiter geht er hinaus.
Die Türen sind nicht gezeichnet, damit der Zylinder zu sehen ist; die Tasten 1, 2, 4 und 7 bringen sie zurück.</translation>
    </message>
    <message>
        <source>Fold: pressed out</source>
        <translation type="unfinished">Umlegen: hinausgedrückt</translation>
    </message>
    <message>
        <source>For the plan this is called: {fold.effect_of_move_5}. The pillar tears a little as it folds. Look for cracks, and keep clear of them.</source>
        <translation type="unfinished">Für den Plan heißt das: {fold.effect_of_move_5}. Die Säule reißt beim Falten ein wenig. Nach Rissen sehen und ihnen fernbleiben.</translation>
    </message>
    <message>
        <source>Eased: what does the room do?</source>
        <translation type="unfinished">Entlastet: Was tut der Raum?</translation>
    </message>
    <message>
        <source>The pillar leans out now, so the head stands badly. The ram is eased to be set again with a higher foot. What does the room do?</source>
        <translation type="unfinished">Die Säule lehnt jetzt nach außen, also steht der Kopf schlecht. Der Zylinder wird entlastet, um mit höherem Fuß neu gesetzt zu werden. Was tut der Raum?</translation>
    </message>
    <message>
        <source>Say aloud that it will move before anybody touches the ram.</source>
        <translation type="unfinished">Laut sagen, dass sie sich bewegen wird, bevor jemand den Zylinder berührt.</translation>
    </message>
    <message>
        <source>It springs back a part of the way</source>
        <translation type="unfinished">Sie federt ein Stück zurück</translation>
    </message>
    <message>
        <source>From {fold.room_after_of_move_5} to {fold.room_after_of_move_6}. More than at the start, less than a moment ago.</source>
        <translation type="unfinished">Von {fold.room_after_of_move_5} auf {fold.room_after_of_move_6}. Mehr als am Anfang, weniger als eben noch.</translation>
    </message>
    <message>
        <source>Whoever is with the patient must know this before, and say so. What could follow the metal up so that less is lost?</source>
        <translation type="unfinished">Wer beim Patienten ist, muss das vorher wissen und sagen. Was könnte dem Metall nachgesetzt werden, damit weniger verloren geht?</translation>
    </message>
    <message>
        <source>Again, with a higher foot</source>
        <translation type="unfinished">Noch einmal, mit höherem Fuß</translation>
    </message>
    <message>
        <source>The fourth press: room {fold.room_after_of_move_11}. The third one needed {fold.peak_force_of_move_9} at most, this one {fold.peak_force_of_move_11}.</source>
        <translation type="unfinished">Das vierte Drücken: Raum {fold.room_after_of_move_11}. Das dritte brauchte höchstens {fold.peak_force_of_move_9}, dieses {fold.peak_force_of_move_11}.</translation>
    </message>
    <message>
        <source>Second: {fold.sentence_of_move_7}
Third: {fold.sentence_of_move_9}
Fourth: {fold.sentence_of_move_11}
A few degrees to spare is not much. When would they have stopped?</source>
        <translation type="unfinished">Zweites: {fold.sentence_of_move_7}
Drittes: {fold.sentence_of_move_9}
Viertes: {fold.sentence_of_move_11}
Einige Grad Reserve sind nicht viel. Wann hätten sie angehalten?</translation>
    </message>
    <message>
        <source>And the door?</source>
        <translation type="unfinished">Und die Tür?</translation>
    </message>
    <message>
        <source>{fold.sentence_of_move_13} Room {fold.room_after_of_move_13}; width to bring the patient out by: {fold.width_of_move_13}.</source>
        <translation type="unfinished">{fold.sentence_of_move_13} Raum {fold.room_after_of_move_13}; Breite, um den Patienten herauszubringen: {fold.width_of_move_13}.</translation>
    </message>
    <message>
        <source>The latch is off and the room is there, but the crushed door will not swing past its pillar by hand: no way out yet.
Ask for the next move: press once more, spread the door off the pillar, or cut its hinges? Ask which moves could have been left out.</source>
        <translation type="unfinished">Das Schloss ist frei und der Raum ist da, aber die eingedrückte Tür schwenkt nicht von Hand an ihrer Säule vorbei: noch kein Weg hinaus.
Nach dem nächsten Schritt fragen: noch einmal drücken, die Tür von der Säule spreizen oder ihre Scharniere schneiden? Fragen, welche Schritte wegbleiben konnten.</translation>
    </message>
    <message>
        <source>Two ends beside each other</source>
        <translation type="unfinished">Zwei Enden nebeneinander</translation>
    </message>
    <message>
        <source>One start, two plans. What does each leave between the patient and the crew?</source>
        <translation type="unfinished">Ein Anfang, zwei Pläne. Was lässt jeder zwischen Patient und Mannschaft?</translation>
    </message>
    <message>
        <source>Look at the pillar in both. The one plan has thirteen moves, the other two: what does the patient need, and how soon?</source>
        <translation type="unfinished">Die Säule in beiden ansehen. Der eine Plan hat dreizehn Schritte, der andere zwei: Was braucht der Patient, und wie bald?</translation>
    </message>
    <message>
        <source>Write the order of moves</source>
        <translation type="unfinished">Die Reihenfolge der Schritte aufschreiben</translation>
    </message>
    <message>
        <source>In crews: the order, what stops each move, who watches what.</source>
        <translation type="unfinished">In Mannschaften: die Reihenfolge, was jeden Schritt beendet, wer wonach sieht.</translation>
    </message>
    <message>
        <source>Two crews show their plans side by side. Each needs a second plan.</source>
        <translation type="unfinished">Zwei Mannschaften zeigen ihre Pläne nebeneinander. Jede braucht einen zweiten Plan.</translation>
    </message>
    <message>
        <source>Where did room get less?</source>
        <translation type="unfinished">Wo wurde der Raum weniger?</translation>
    </message>
    <message>
        <source>Show each moment at which your plan takes room, or say why it never does.</source>
        <translation type="unfinished">Jeden Moment zeigen, in dem Ihr Plan Raum nimmt, oder sagen, warum er es nie tut.</translation>
    </message>
    <message>
        <source>Easing takes some every time. A plan that takes room at first may still be right for another crash state.</source>
        <translation type="unfinished">Entlasten nimmt jedes Mal etwas. Ein Plan, der am Anfang Raum nimmt, kann bei einem anderen Schadensbild trotzdem richtig sein.</translation>
    </message>
    <message>
        <source>The front door is pushed straight forward off the pillar. What does the patient's room do?</source>
        <translation type="unfinished">Die vordere Tür wird gerade nach vorn von der Säule gedrückt. Was tut der Raum des Patienten?</translation>
    </message>
    <message>
        <source>What does the door hang on once its latch lets go?</source>
        <translation type="unfinished">Woran hängt die Tür, wenn ihr Schloss freigegeben hat?</translation>
    </message>
    <message>
        <source>The door turns about its hinges as it comes off the pillar; the crushed middle goes with it.</source>
        <translation type="unfinished">Die Tür dreht sich um ihre Scharniere, wenn sie von der Säule kommt; die eingedrückte Mitte geht mit.</translation>
    </message>
    <message>
        <source>Pushed forward from deep behind the inner bend: what becomes of the front latch?</source>
        <translation type="unfinished">Tief hinter der inneren Biegung nach vorn gedrückt: Was wird aus dem vorderen Schloss?</translation>
    </message>
    <message>
        <source>The push goes through the inner structure to what holds it.</source>
        <translation type="unfinished">Der Druck geht durch die innere Struktur zu dem, was sie hält.</translation>
    </message>
    <message>
        <source>The foot cut into from behind, then the rear door spread up off the rocker. What does the room do?</source>
        <translation type="unfinished">Der Fuß von hinten eingeschnitten, dann die hintere Tür vom Schweller nach oben gespreizt. Was tut der Raum?</translation>
    </message>
    <message>
        <source>What else still holds the pillar?</source>
        <translation type="unfinished">Was hält die Säule sonst noch?</translation>
    </message>
    <message>
        <source>Head and most of the foot still hold, and the tip slides along the door's edge.</source>
        <translation type="unfinished">Der Kopf und das meiste vom Fuß halten noch, und die Spitze rutscht an der Türkante entlang.</translation>
    </message>
    <message>
        <source>After the first press of the fold the ram is eased. What does the patient's room do?</source>
        <translation type="unfinished">Nach dem ersten Drücken des Umlegens wird der Zylinder entlastet. Was tut der Raum des Patienten?</translation>
    </message>
    <message>
        <source>Is all of the metal's way a fold that stays?</source>
        <translation type="unfinished">Ist der ganze Weg des Metalls eine Faltung, die bleibt?</translation>
    </message>
    <message>
        <source>A part of the way is spring. It comes back each time the ram is eased, though never as far as the start.</source>
        <translation type="unfinished">Ein Teil des Wegs ist Feder. Er kommt bei jedem Entlasten des Zylinders zurück, aber nie bis zum Anfang.</translation>
    </message>
    <message>
        <source>Folded down, or pushed forward: which plan leaves the patient more room at its end?</source>
        <translation type="unfinished">Umgelegt oder nach vorn gedrückt: Welcher Plan lässt dem Patienten am Ende mehr Raum?</translation>
    </message>
    <message>
        <source>In which of them does the pillar move?</source>
        <translation type="unfinished">In welchem davon bewegt sich die Säule?</translation>
    </message>
    <message>
        <source>What lies over the hips is the pillar; only one of the two plans moves it.</source>
        <translation type="unfinished">Was über den Hüften liegt, ist die Säule; nur einer der beiden Pläne bewegt sie.</translation>
    </message>
    <message>
        <source>Pressed out, a pillar cut open at its head gives room; ripped at the foot it does not.</source>
        <translation type="unfinished">Hinausgedrückt gibt eine am Kopf aufgeschnittene Säule Raum; am Fuß abgerissen nicht.</translation>
    </message>
    <message>
        <source>With bar and pillar over the hips and the sill whole, folding the side down and out moves every point above the sill outward.</source>
        <translation type="unfinished">Liegen Träger und Säule über den Hüften und ist der Schweller heil, bewegt das Umlegen der Seite nach unten und außen jeden Punkt über dem Schweller nach außen.</translation>
    </message>
    <message>
        <source>A ram follows its part out in bites: eased, set again where it stands square, pressed again.</source>
        <translation type="unfinished">Ein Rettungszylinder folgt seinem Teil in Ansätzen hinaus: entlastet, gerade stehend neu gesetzt, wieder gedrückt.</translation>
    </message>
    <message>
        <source>Pushing pillar or door forward can drag a bar that is bent in along the hips. (The run shown does not bear it out.)</source>
        <translation type="unfinished">Säule oder Tür nach vorn zu drücken kann einen eingebogenen Träger über die Hüften ziehen. (Die gezeigte Rechnung bestätigt es nicht.)</translation>
    </message>
    <message>
        <source>Strips and looks before cutting</source>
        <translation type="unfinished">Legt frei und sieht nach, bevor geschnitten wird</translation>
    </message>
    <message>
        <source>trim off, tensioner and inflator found or ruled out on the rescue sheet</source>
        <translation type="unfinished">Verkleidung ab, Straffer und Gasgenerator gefunden oder nach dem Rettungsdatenblatt ausgeschlossen</translation>
    </message>
    <message>
        <source>Orders the moves</source>
        <translation type="unfinished">Ordnet die Schritte</translation>
    </message>
    <message>
        <source>says why each comes where it stands</source>
        <translation type="unfinished">sagt, warum jeder an seiner Stelle kommt</translation>
    </message>
    <message>
        <source>Keeps the room</source>
        <translation type="unfinished">Erhält den Raum</translation>
    </message>
    <message>
        <source>a watcher calls; easing is announced; a move that takes room unasked is stopped</source>
        <translation type="unfinished">ein Beobachter ruft; Entlasten wird angesagt; ein Schritt, der ungefragt Raum nimmt, wird angehalten</translation>
    </message>
    <message>
        <source>Has a second plan</source>
        <translation type="unfinished">Hat einen zweiten Plan</translation>
    </message>
    <message>
        <source>says what makes it change</source>
        <translation type="unfinished">sagt, was zum Wechsel führt</translation>
    </message>
    <message>
        <source>At which moves did the patient lose room, and who had been told before?</source>
        <translation type="unfinished">Bei welchen Schritten verlor der Patient Raum, und wem war es vorher gesagt?</translation>
    </message>
    <message>
        <source>What did each plan free, and what was still in the way at its end?</source>
        <translation type="unfinished">Was löste jeder Plan, und was war an seinem Ende noch im Weg?</translation>
    </message>
    <message>
        <source>What in the crash shape made you choose?</source>
        <translation type="unfinished">Was an der Unfallform ließ Sie wählen?</translation>
    </message>
    <message>
        <source>What is tied decides what moves.</source>
        <translation type="unfinished">Was fest ist, entscheidet, was sich bewegt.</translation>
    </message>
    <message>
        <source>Above its foot a folded side goes outward, and springs back a part each time the ram is eased.</source>
        <translation type="unfinished">Über ihrem Fuß geht eine umgelegte Seite nach außen und federt bei jedem Entlasten des Zylinders ein Stück zurück.</translation>
    </message>
    <message>
        <source>Room is not width: the door still has to go.</source>
        <translation type="unfinished">Raum ist nicht Breite: Die Tür muss noch weg.</translation>
    </message>
    <message>
        <source>A watcher at each end, and one with the patient.</source>
        <translation type="unfinished">Ein Beobachter an jedem Ende und einer beim Patienten.</translation>
    </message>
    <message>
        <source>One cut or two</source>
        <translation type="unfinished">Ein Schnitt oder zwei</translation>
    </message>
    <message>
        <source>A second cut makes a pocket for the tips; a cut left short is a tie you do not see.</source>
        <translation type="unfinished">Ein zweiter Schnitt schafft eine Tasche für die Spitzen; ein zu kurzer Schnitt ist eine Verbindung, die man nicht sieht.</translation>
    </message>
    <message>
        <source>cutter and spreader on the bench, unpowered</source>
        <translation type="unfinished">Schneidgerät und Spreizer auf der Werkbank, ohne Antrieb</translation>
    </message>
    <message>
        <source>How far tips go in hangs on their shape, which is assumed: a blunt wedge.</source>
        <translation type="unfinished">Wie weit Spitzen hineingehen, hängt an ihrer Form, die angenommen ist: ein stumpfer Keil.</translation>
    </message>
    <message>
        <source>Pressed apart, raw edges crumple in these runs before the pillar folds.</source>
        <translation type="unfinished">Auseinandergedrückt knüllen rohe Kanten in diesen Rechnungen, bevor sich die Säule faltet.</translation>
    </message>
    <message>
        <source>The runs stand on a coarse lattice; the order of the forces is the claim, not the newtons.</source>
        <translation type="unfinished">Die Rechnungen stehen auf grobem Gitter; behauptet wird die Reihenfolge der Kräfte, nicht die Newton.</translation>
    </message>
    <message>
        <source>A pillar wider than the blades, or harder than the cutter, asks for another place, not for more force.</source>
        <translation type="unfinished">Eine Säule, die breiter ist als die Klingen oder härter als das Schneidgerät, verlangt eine andere Stelle, nicht mehr Kraft.</translation>
    </message>
    <message>
        <source>Where a cut may go on a real car only the car maker's rescue sheet can say.</source>
        <translation type="unfinished">Wo an einem echten Auto geschnitten werden darf, kann nur das Rettungsdatenblatt des Herstellers sagen.</translation>
    </message>
    <message>
        <source>says how many cuts, where, and what each is for, before the first</source>
        <translation type="unfinished">sagt vor dem ersten Schnitt, wie viele, wo und wofür jeder ist</translation>
    </message>
    <message>
        <source>for a pillar free to be folded, shown with its trim off</source>
        <translation type="unfinished">bei einer Säule, die frei zum Umlegen ist, gezeigt ohne Verkleidung</translation>
    </message>
    <message>
        <source>with the reason, and with what shows that a cut is short</source>
        <translation type="unfinished">mit Begründung, und mit dem, was zeigt, dass ein Schnitt zu kurz ist</translation>
    </message>
    <message>
        <source>hand and power tools; creating openings; technician level</source>
        <translation type="unfinished">Hand- und Kraftgeräte; Öffnungen schaffen; Stufe Fortgeschrittene</translation>
    </message>
    <message>
        <source>one cut through the top, then the ram</source>
        <translation type="unfinished">ein Schnitt oben durch, dann der Rettungszylinder</translation>
    </message>
    <message>
        <source>the same, but the cut stops short</source>
        <translation type="unfinished">dasselbe, aber der Schnitt endet zu früh</translation>
    </message>
    <message>
        <source>one cut, the spreader's tips on the raw edge, then the ram</source>
        <translation type="unfinished">ein Schnitt, die Spitzen des Spreizers auf der rohen Kante, dann der Rettungszylinder</translation>
    </message>
    <message>
        <source>a second cut under the first, the tips in the pocket, then the ram</source>
        <translation type="unfinished">ein zweiter Schnitt unter dem ersten, die Spitzen in der Tasche, dann der Rettungszylinder</translation>
    </message>
    <message>
        <source>a pillar hard down to its foot, one cut, then the ram</source>
        <translation type="unfinished">eine Säule, bis zum Fuß hart, ein Schnitt, dann der Rettungszylinder</translation>
    </message>
    <message>
        <source>the same with a relief cut at the foot</source>
        <translation type="unfinished">dasselbe mit einem Entlastungsschnitt am Fuß</translation>
    </message>
    <message>
        <source>What do the tips hold on to?</source>
        <translation type="unfinished">Woran halten sich die Spitzen?</translation>
    </message>
    <message>
        <source>One cut across the top. Where do the tips of the spreader go, and what keeps them there?</source>
        <translation type="unfinished">Ein Schnitt quer oben. Wohin kommen die Spitzen des Spreizers, und was hält sie dort?</translation>
    </message>
    <message>
        <source>Raw edges are thin, sharp, and slope.</source>
        <translation type="unfinished">Rohe Kanten sind dünn, scharf und schräg.</translation>
    </message>
    <message>
        <source>Tips on the raw edge?</source>
        <translation type="unfinished">Spitzen auf der rohen Kante?</translation>
    </message>
    <message>
        <source>The tips are set on the raw edge of the one cut and opened. Then the same with a second cut below the first. What will each hold?</source>
        <translation type="unfinished">Die Spitzen werden auf die rohe Kante des einen Schnitts gesetzt und geöffnet. Dann dasselbe mit einem zweiten Schnitt unter dem ersten. Was wird jeder halten?</translation>
    </message>
    <message>
        <source>Let somebody draw the edge from the side, with the wedge of the closed tips in front of it.</source>
        <translation type="unfinished">Jemanden die Kante von der Seite zeichnen lassen, mit dem Keil der geschlossenen Spitzen davor.</translation>
    </message>
    <message>
        <source>One cut, tips on the edge</source>
        <translation type="unfinished">Ein Schnitt, Spitzen auf der Kante</translation>
    </message>
    <message>
        <source>Ask for the sign on metal: fresh scratches, a tool that walks.</source>
        <translation type="unfinished">Nach dem Zeichen am Metall fragen: frische Kratzer, ein Gerät, das wandert.</translation>
    </message>
    <message>
        <source>Two cuts make a pocket</source>
        <translation type="unfinished">Zwei Schnitte machen eine Tasche</translation>
    </message>
    <message>
        <source>A second cut just below: now there is a shoulder on both sides. The tips pushed up to {pocket.peak_force_of_move_4}.</source>
        <translation type="unfinished">Ein zweiter Schnitt knapp darunter: Jetzt ist auf beiden Seiten eine Schulter. Die Spitzen drückten bis zu {pocket.peak_force_of_move_4}.</translation>
    </message>
    <message>
        <source>{pocket.sentence_of_move_4}
What did the second cut cost, and what did it buy? Which end moved more, and what else could go into the pocket?</source>
        <translation type="unfinished">{pocket.sentence_of_move_4}
Was hat der zweite Schnitt gekostet, und was hat er gebracht? Welches Ende bewegte sich mehr, und was könnte sonst noch in die Tasche?</translation>
    </message>
    <message>
        <source>Through, then the ram: what gives first?</source>
        <translation type="unfinished">Durch, dann der Zylinder: Was gibt zuerst nach?</translation>
    </message>
    <message>
        <source>One cut, all the way through. The ram stands between the far rocker and the pillar. What gives first?</source>
        <translation type="unfinished">Ein Schnitt, ganz durch. Der Rettungszylinder steht zwischen dem gegenüberliegenden Schweller und der Säule. Was gibt zuerst nach?</translation>
    </message>
    <message>
        <source>Ask what the ram stands on, and which way its line will turn as the pillar comes out.
The doors are not drawn, so that the ram can be seen; keys 1, 2, 4 and 7 bring them back.</source>
        <translation type="unfinished">Fragen, worauf der Zylinder steht und wohin sich seine Linie dreht, wenn die Säule hinausgeht.
Die Türen sind nicht gezeichnet, damit der Zylinder zu sehen ist; die Tasten 1, 2, 4 und 7 bringen sie zurück.</translation>
    </message>
    <message>
        <source>Through, then the ram</source>
        <translation type="unfinished">Durch, dann der Zylinder</translation>
    </message>
    <message>
        <source>First to give: {one.first}. The most the ram pushed was {one.peak_force_of_move_3}.</source>
        <translation type="unfinished">Zuerst gab nach: {one.first}. Der Zylinder drückte höchstens {one.peak_force_of_move_3}.</translation>
    </message>
    <message>
        <source>{one.sentence_of_move_3}
Set a little higher or lower it ends the same way: the line stands too far off square at last.
What would its head need to hold longer? When should it have been eased?</source>
        <translation type="unfinished">{one.sentence_of_move_3}
Etwas höher oder tiefer gesetzt endet es ebenso: Die Linie steht zuletzt zu schräg.
Was bräuchte sein Kopf, um länger zu halten? Wann hätte er entlastet werden sollen?</translation>
    </message>
    <message>
        <source>The cut stops short: what changes?</source>
        <translation type="unfinished">Der Schnitt endet zu früh: Was ändert sich?</translation>
    </message>
    <message>
        <source>The same pillar and the same ram, but the blades stopped before the far face. More force, or less? More room, or less?</source>
        <translation type="unfinished">Dieselbe Säule und derselbe Zylinder, aber die Klingen hielten vor der hinteren Wand an. Mehr Kraft oder weniger? Mehr Raum oder weniger?</translation>
    </message>
    <message>
        <source>Ask how a cut comes to be short: blades that stall, a pillar wider than they open, a reinforcement inside.</source>
        <translation type="unfinished">Fragen, wie ein Schnitt zu kurz wird: Klingen, die stehen bleiben, eine Säule, breiter als sie öffnen, eine Verstärkung darin.</translation>
    </message>
    <message>
        <source>A cut that is not through: the pillar stays tied. The ram pushed up to {short.peak_force_of_move_3}, and something else gave.</source>
        <translation type="unfinished">Ein Schnitt, der nicht durch ist: Die Säule bleibt fest. Der Zylinder drückte bis zu {short.peak_force_of_move_3}, und etwas anderes gab nach.</translation>
    </message>
    <message>
        <source>{short.sentence_of_move_2}
{short.sentence_of_move_3}
From the tool it feels like success. Which spots popped, and where?</source>
        <translation type="unfinished">{short.sentence_of_move_2}
{short.sentence_of_move_3}
Vom Gerät aus fühlt es sich wie ein Erfolg an. Welche Punkte sprangen auf, und wo?</translation>
    </message>
    <message>
        <source>A hard foot</source>
        <translation type="unfinished">Ein harter Fuß</translation>
    </message>
    <message>
        <source>The foot is hard. What does a relief cut at its inner side change?</source>
        <translation type="unfinished">Der Fuß ist hart. Was ändert ein Entlastungsschnitt an seiner Innenseite?</translation>
    </message>
    <message>
        <source>Hands first, then run it.
The most the ram pushed: {relieved.peak_force_of_move_4}, without the relief cut {hard.peak_force_of_move_3}.
{hard.sentence_of_move_3}
{relieved.sentence_of_move_4}</source>
        <translation type="unfinished">Erst die Hände, dann ausführen.
Der Zylinder drückte höchstens: {relieved.peak_force_of_move_4}, ohne den Entlastungsschnitt {hard.peak_force_of_move_3}.
{hard.sentence_of_move_3}
{relieved.sentence_of_move_4}</translation>
    </message>
    <message>
        <source>Is it through?</source>
        <translation type="unfinished">Ist er durch?</translation>
    </message>
    <message>
        <source>How do you know that a cut is through before you push?</source>
        <translation type="unfinished">Woran merken Sie, dass ein Schnitt durch ist, bevor Sie drücken?</translation>
    </message>
    <message>
        <source>Look, move it by hand, light behind the gap.</source>
        <translation type="unfinished">Hinsehen, von Hand bewegen, Licht hinter dem Spalt.</translation>
    </message>
    <message>
        <source>The same tips, once on the raw edge of one cut, once between two cuts. Where do they open further?</source>
        <translation type="unfinished">Dieselben Spitzen, einmal auf der rohen Kante eines Schnitts, einmal zwischen zwei Schnitten. Wo öffnen sie weiter?</translation>
    </message>
    <message>
        <source>What do closed tips look like from the side, and what keeps a sloping edge under them?</source>
        <translation type="unfinished">Wie sehen geschlossene Spitzen von der Seite aus, und was hält eine schräge Kante unter ihnen?</translation>
    </message>
    <message>
        <source>A gap as wide as the blades lets no tip in; a second cut makes a shoulder on both sides.</source>
        <translation type="unfinished">Ein Spalt, so breit wie die Klingen, lässt keine Spitze hinein; ein zweiter Schnitt macht auf beiden Seiten eine Schulter.</translation>
    </message>
    <message>
        <source>The same ram on the same pillar: cut all the way, or cut short. Which needs more force?</source>
        <translation type="unfinished">Derselbe Rettungszylinder an derselben Säule: ganz durchgeschnitten oder zu kurz. Was braucht mehr Kraft?</translation>
    </message>
    <message>
        <source>What still ties the pillar to the roof?</source>
        <translation type="unfinished">Was verbindet die Säule noch mit dem Dach?</translation>
    </message>
    <message>
        <source>What is not through is a tie: it pulls until something else gives.</source>
        <translation type="unfinished">Was nicht durch ist, hält fest: Es zieht, bis etwas anderes nachgibt.</translation>
    </message>
    <message>
        <source>And which of the two gives the patient more room?</source>
        <translation type="unfinished">Und was von beiden gibt dem Patienten mehr Raum?</translation>
    </message>
    <message>
        <source>Force is not way.</source>
        <translation type="unfinished">Kraft ist nicht Weg.</translation>
    </message>
    <message>
        <source>The tied pillar bends between its ends and comes out little; then the base and the ram's seat go.</source>
        <translation type="unfinished">Die festgehaltene Säule biegt sich zwischen ihren Enden und kommt wenig heraus; dann gehen die Unterlage und der Sitz des Zylinders.</translation>
    </message>
    <message>
        <source>Cut all the way, pressed out by the ram to the end. What gives first?</source>
        <translation type="unfinished">Ganz durchgeschnitten, vom Zylinder bis zum Ende hinausgedrückt. Was gibt zuerst nach?</translation>
    </message>
    <message>
        <source>The pillar folds at its foot: what happens to the angle under the head?</source>
        <translation type="unfinished">Die Säule faltet sich am Fuß: Was wird aus dem Winkel unter dem Kopf?</translation>
    </message>
    <message>
        <source>As the pillar leans out, the ram's line turns off square until the head holds no longer.</source>
        <translation type="unfinished">Während die Säule nach außen lehnt, dreht sich die Linie des Zylinders aus der Senkrechten, bis der Kopf nicht mehr hält.</translation>
    </message>
    <message>
        <source>A hard foot, with and without a relief cut. Which needs more force?</source>
        <translation type="unfinished">Ein harter Fuß, mit und ohne Entlastungsschnitt. Was braucht mehr Kraft?</translation>
    </message>
    <message>
        <source>Where does the pillar have to fold?</source>
        <translation type="unfinished">Wo muss sich die Säule falten?</translation>
    </message>
    <message>
        <source>A cut into the inner side leaves less of the section to fold.</source>
        <translation type="unfinished">Ein Schnitt in die Innenseite lässt weniger vom Querschnitt zum Falten.</translation>
    </message>
    <message>
        <source>The hard foot with its relief cut, pressed out: does sheet tear?</source>
        <translation type="unfinished">Der harte Fuß mit seinem Entlastungsschnitt, hinausgedrückt: Reißt Blech?</translation>
    </message>
    <message>
        <source>What stands at the end of a cut?</source>
        <translation type="unfinished">Was steht am Ende eines Schnitts?</translation>
    </message>
    <message>
        <source>A cut that ends in the sheet is where a tear begins: eyes on it, hands off it.</source>
        <translation type="unfinished">Ein Schnitt, der im Blech endet, ist, wo ein Riss beginnt: Augen darauf, Hände weg.</translation>
    </message>
    <message>
        <source>The tips open in a pocket and not on a raw edge.</source>
        <translation type="unfinished">Die Spitzen öffnen in einer Tasche und nicht auf einer rohen Kante.</translation>
    </message>
    <message>
        <source>A cut left short asks for more force than one that is through.</source>
        <translation type="unfinished">Ein zu kurzer Schnitt verlangt mehr Kraft als einer, der durch ist.</translation>
    </message>
    <message>
        <source>A relief cut lowers the force at a hard foot.</source>
        <translation type="unfinished">Ein Entlastungsschnitt senkt die Kraft an einem harten Fuß.</translation>
    </message>
    <message>
        <source>A second top cut makes a seat for ram or spreader; without it the seat slips.</source>
        <translation type="unfinished">Ein zweiter Schnitt oben schafft einen Sitz für Zylinder oder Spreizer; ohne ihn rutscht der Sitz.</translation>
    </message>
    <message>
        <source>An incomplete cut is a strong tie: base or rail moves instead.</source>
        <translation type="unfinished">Ein unvollständiger Schnitt hält stark: Stattdessen bewegt sich Unterlage oder Holm.</translation>
    </message>
    <message>
        <source>Says what each cut is for</source>
        <translation type="unfinished">Sagt, wofür jeder Schnitt ist</translation>
    </message>
    <message>
        <source>seat, release or fold</source>
        <translation type="unfinished">Sitz, Lösen oder Falten</translation>
    </message>
    <message>
        <source>Checks that a cut is through</source>
        <translation type="unfinished">Prüft, ob ein Schnitt durch ist</translation>
    </message>
    <message>
        <source>before any push</source>
        <translation type="unfinished">vor jedem Drücken</translation>
    </message>
    <message>
        <source>Covers the cut edges</source>
        <translation type="unfinished">Deckt die Schnittkanten ab</translation>
    </message>
    <message>
        <source>at once</source>
        <translation type="unfinished">sofort</translation>
    </message>
    <message>
        <source>What was the second cut for?</source>
        <translation type="unfinished">Wofür war der zweite Schnitt?</translation>
    </message>
    <message>
        <source>What told you that the cut was short?</source>
        <translation type="unfinished">Was sagte Ihnen, dass der Schnitt zu kurz war?</translation>
    </message>
    <message>
        <source>A cut is made for a purpose.</source>
        <translation type="unfinished">Ein Schnitt hat einen Zweck.</translation>
    </message>
    <message>
        <source>A seat is made, not found.</source>
        <translation type="unfinished">Ein Sitz wird geschaffen, nicht gefunden.</translation>
    </message>
    <message>
        <source>What is not through is a tie.</source>
        <translation type="unfinished">Was nicht durch ist, hält fest.</translation>
    </message>
    <message>
        <source>Ram school</source>
        <translation type="unfinished">Zylinderschule</translation>
    </message>
    <message>
        <source>What a ram's two ends stand on decides more than its force. Most people watch the head and forget the foot.</source>
        <translation type="unfinished">Worauf die beiden Enden eines Rettungszylinders stehen, entscheidet mehr als seine Kraft. Die meisten sehen auf den Kopf und vergessen den Fuß.</translation>
    </message>
    <message>
        <source>ram heads on the bench</source>
        <translation type="unfinished">Zylinderköpfe auf der Werkbank</translation>
    </message>
    <message>
        <source>The runs stand on a coarse lattice; what slips, sinks or stalls first is the claim, not the newtons.</source>
        <translation type="unfinished">Die Rechnungen stehen auf grobem Gitter; behauptet wird, was zuerst rutscht, einsinkt oder stehen bleibt, nicht die Newton.</translation>
    </message>
    <message>
        <source>chooses head, seat and base, and says what will slip or sink first</source>
        <translation type="unfinished">wählt Kopf, Sitz und Unterlage und sagt, was zuerst rutscht oder einsinkt</translation>
    </message>
    <message>
        <source>for an opened side with its pillar free at the top</source>
        <translation type="unfinished">bei einer geöffneten Seite, deren Säule oben frei ist</translation>
    </message>
    <message>
        <source>with the reason, and eases before it slips</source>
        <translation type="unfinished">mit Begründung, und entlastet, bevor er rutscht</translation>
    </message>
    <message>
        <source>power tools; disentangling; technician level</source>
        <translation type="unfinished">Kraftgeräte; Befreien; Stufe Fortgeschrittene</translation>
    </message>
    <message>
        <source>the head on a seal left on</source>
        <translation type="unfinished">der Kopf auf einer nicht abgenommenen Dichtung</translation>
    </message>
    <message>
        <source>the head on painted sheet</source>
        <translation type="unfinished">der Kopf auf lackiertem Blech</translation>
    </message>
    <message>
        <source>the head on bare metal</source>
        <translation type="unfinished">der Kopf auf blankem Metall</translation>
    </message>
    <message>
        <source>a smooth head on bare metal</source>
        <translation type="unfinished">ein glatter Kopf auf blankem Metall</translation>
    </message>
    <message>
        <source>a grooved head on bare metal</source>
        <translation type="unfinished">ein geriffelter Kopf auf blankem Metall</translation>
    </message>
    <message>
        <source>a head with points on bare metal</source>
        <translation type="unfinished">ein Kopf mit Spitzen auf blankem Metall</translation>
    </message>
    <message>
        <source>the foot on a thin wall with nothing behind it</source>
        <translation type="unfinished">der Fuß auf einer dünnen Wand mit nichts dahinter</translation>
    </message>
    <message>
        <source>the foot on the same wall with a rib behind it</source>
        <translation type="unfinished">der Fuß auf derselben Wand mit einer Rippe dahinter</translation>
    </message>
    <message>
        <source>a small ram whose stages give less and less</source>
        <translation type="unfinished">ein kleiner Zylinder, dessen Stufen immer weniger geben</translation>
    </message>
    <message>
        <source>the head off the middle, eased and set again nearer to it</source>
        <translation type="unfinished">der Kopf neben der Mitte, entlastet und näher daran neu gesetzt</translation>
    </message>
    <message>
        <source>A push has two ends</source>
        <translation type="unfinished">Ein Druck hat zwei Enden</translation>
    </message>
    <message>
        <source>Where does the other end stand, and on what?</source>
        <translation type="unfinished">Wo steht das andere Ende, und worauf?</translation>
    </message>
    <message>
        <source>Point at the base first, every time.
The doors are not drawn, so that both ends can be seen; keys 1, 2, 4 and 7 bring them back.</source>
        <translation type="unfinished">Jedes Mal zuerst auf die Unterlage zeigen.
Die Türen sind nicht gezeichnet, damit beide Enden zu sehen sind; die Tasten 1, 2, 4 und 7 bringen sie zurück.</translation>
    </message>
    <message>
        <source>What slips first?</source>
        <translation type="unfinished">Was rutscht zuerst?</translation>
    </message>
    <message>
        <source>A seal left on, paint, bare metal with a smooth head, with grooves, with points: put them in order. Here the seal is still on. What gives first?</source>
        <translation type="unfinished">Eine nicht abgenommene Dichtung, Lack, blankes Metall mit glattem Kopf, mit Riffeln, mit Spitzen: der Reihe nach ordnen. Hier ist die Dichtung noch drauf. Was gibt zuerst nach?</translation>
    </message>
    <message>
        <source>A seal left on is a slide. Strip it. Hands first; then the steps that follow.</source>
        <translation type="unfinished">Eine nicht abgenommene Dichtung ist eine Rutsche. Abnehmen. Erst die Hände; dann die Schritte, die folgen.</translation>
    </message>
    <message>
        <source>On the seal</source>
        <translation type="unfinished">Auf der Dichtung</translation>
    </message>
    <message>
        <source>How far did the part move before the head went?</source>
        <translation type="unfinished">Wie weit bewegte sich das Teil, bevor der Kopf wegging?</translation>
    </message>
    <message>
        <source>On paint</source>
        <translation type="unfinished">Auf Lack</translation>
    </message>
    <message>
        <source>The angle it holds has grown. Is it enough?</source>
        <translation type="unfinished">Der Winkel, den er hält, ist gewachsen. Reicht das?</translation>
    </message>
    <message>
        <source>On bare metal: further, or not?</source>
        <translation type="unfinished">Auf blankem Metall: weiter oder nicht?</translation>
    </message>
    <message>
        <source>The paint is scraped off where the grooved head bears. Does the ram go out further now?</source>
        <translation type="unfinished">Der Lack ist abgeschabt, wo der geriffelte Kopf anliegt. Fährt der Zylinder jetzt weiter aus?</translation>
    </message>
    <message>
        <source>Same angle at first, same ram. Only the surface.</source>
        <translation type="unfinished">Gleicher Winkel am Anfang, gleicher Zylinder. Nur die Oberfläche.</translation>
    </message>
    <message>
        <source>On bare metal</source>
        <translation type="unfinished">Auf blankem Metall</translation>
    </message>
    <message>
        <source>It held for a while: what changed its angle as the part came out? What would you have done before it slipped?</source>
        <translation type="unfinished">Er hielt eine Weile: Was hat seinen Winkel geändert, als das Teil herauskam? Was hätten Sie getan, bevor er rutschte?</translation>
    </message>
    <message>
        <source>Smooth, grooved, pointed</source>
        <translation type="unfinished">Glatt, geriffelt, spitz</translation>
    </message>
    <message>
        <source>The same bare metal under three heads. The smooth one first, then the grooved one; this one has points. What gives first?</source>
        <translation type="unfinished">Dasselbe blanke Metall unter drei Köpfen. Erst der glatte, dann der geriffelte; dieser hat Spitzen. Was gibt zuerst nach?</translation>
    </message>
    <message>
        <source>One word each for what a smooth head, a grooved head and points do to the sheet.</source>
        <translation type="unfinished">Je ein Wort dafür, was ein glatter Kopf, ein geriffelter Kopf und Spitzen dem Blech tun.</translation>
    </message>
    <message>
        <source>Points hold</source>
        <translation type="unfinished">Spitzen halten</translation>
    </message>
    <message>
        <source>With points: {pointed.first}. With grooves: {waffle.first}. With a smooth head: {flat.first}.</source>
        <translation type="unfinished">Mit Spitzen: {pointed.first}. Mit Riffeln: {waffle.first}. Mit glattem Kopf: {flat.first}.</translation>
    </message>
    <message>
        <source>Smooth: {flat.sentence}
Grooved: {waffle.sentence}
Pointed: {pointed.sentence}
What do points cost the sheet they stand on? This run does not say: look at the metal when the tool is off.</source>
        <translation type="unfinished">Glatt: {flat.sentence}
Geriffelt: {waffle.sentence}
Spitz: {pointed.sentence}
Was kosten Spitzen das Blech, auf dem sie stehen? Diese Rechnung sagt es nicht: das Metall ansehen, wenn das Gerät ab ist.</translation>
    </message>
    <message>
        <source>It walks in line</source>
        <translation type="unfinished">Er richtet sich aus</translation>
    </message>
    <message>
        <source>The other end</source>
        <translation type="unfinished">Das andere Ende</translation>
    </message>
    <message>
        <source>The foot stands on a thin wall with nothing behind it. What gives first?</source>
        <translation type="unfinished">Der Fuß steht auf einer dünnen Wand mit nichts dahinter. Was gibt zuerst nach?</translation>
    </message>
    <message>
        <source>Point at the base. Who of the crew can see it from where they stand?</source>
        <translation type="unfinished">Auf die Unterlage zeigen. Wer von der Mannschaft kann sie von seinem Platz aus sehen?</translation>
    </message>
    <message>
        <source>The base sinks</source>
        <translation type="unfinished">Die Unterlage sinkt ein</translation>
    </message>
    <message>
        <source>A thin wall with nothing behind it gives before the pillar folds.</source>
        <translation type="unfinished">Eine dünne Wand mit nichts dahinter gibt nach, bevor sich die Säule faltet.</translation>
    </message>
    <message>
        <source>A plate spreads the load; a rib behind the wall carries it. Look for one.
{thin.sentence}</source>
        <translation type="unfinished">Eine Platte verteilt die Last; eine Rippe hinter der Wand trägt sie. Nach einer suchen.
{thin.sentence}</translation>
    </message>
    <message>
        <source>A rib behind it</source>
        <translation type="unfinished">Eine Rippe dahinter</translation>
    </message>
    <message>
        <source>The same wall with a rib behind the foot. First to give now: {ribbed.first}.</source>
        <translation type="unfinished">Dieselbe Wand mit einer Rippe hinter dem Fuß. Zuerst gab nun nach: {ribbed.first}.</translation>
    </message>
    <message>
        <source>{ribbed.sentence}
How would they find out on a real car what is behind the wall?</source>
        <translation type="unfinished">{ribbed.sentence}
Wie würden sie an einem echten Auto herausfinden, was hinter der Wand ist?</translation>
    </message>
    <message>
        <source>The next stage starts</source>
        <translation type="unfinished">Die nächste Stufe beginnt</translation>
    </message>
    <message>
        <source>When the next stage of the ram starts, its force drops. {stages.sentence}</source>
        <translation type="unfinished">Wenn die nächste Stufe des Zylinders beginnt, fällt seine Kraft. {stages.sentence}</translation>
    </message>
    <message>
        <source>Expect it: say it before it happens.</source>
        <translation type="unfinished">Damit rechnen: sagen, bevor es geschieht.</translation>
    </message>
    <message>
        <source>Ease and set again</source>
        <translation type="unfinished">Entlasten und neu setzen</translation>
    </message>
    <message>
        <source>Off the middle of the wall and about to slip. What do you do?</source>
        <translation type="unfinished">Neben der Mitte der Wand und kurz vor dem Rutschen. Was tun Sie?</translation>
    </message>
    <message>
        <source>What do you watch?</source>
        <translation type="unfinished">Wonach sehen Sie?</translation>
    </message>
    <message>
        <source>Name the two things you look at while it pushes.</source>
        <translation type="unfinished">Die zwei Dinge nennen, nach denen Sie sehen, während er drückt.</translation>
    </message>
    <message>
        <source>Head and base; somebody at each.</source>
        <translation type="unfinished">Kopf und Unterlage; an jedem jemand.</translation>
    </message>
    <message>
        <source>A grooved head on a seal that was left on, the line well off square. What gives first?</source>
        <translation type="unfinished">Ein geriffelter Kopf auf einer nicht abgenommenen Dichtung, die Linie deutlich schräg. Was gibt zuerst nach?</translation>
    </message>
    <message>
        <source>Which of the two surfaces is the slide?</source>
        <translation type="unfinished">Welche der beiden Oberflächen ist die Rutsche?</translation>
    </message>
    <message>
        <source>The line stands further off square than rubber holds.</source>
        <translation type="unfinished">Die Linie steht schräger, als Gummi hält.</translation>
    </message>
    <message>
        <source>The same ram on paint and on bare metal. Where does it go out further?</source>
        <translation type="unfinished">Derselbe Zylinder auf Lack und auf blankem Metall. Wo fährt er weiter aus?</translation>
    </message>
    <message>
        <source>How far off square may the line stand on each?</source>
        <translation type="unfinished">Wie schräg darf die Linie auf jedem stehen?</translation>
    </message>
    <message>
        <source>Bare metal holds at a larger angle, so the ram stays and works.</source>
        <translation type="unfinished">Blankes Metall hält bei einem größeren Winkel; also bleibt der Zylinder stehen und arbeitet.</translation>
    </message>
    <message>
        <source>Bare metal both times: a smooth head, or a grooved one. Where does the ram go out further?</source>
        <translation type="unfinished">Beide Male blankes Metall: ein glatter Kopf oder ein geriffelter. Wo fährt der Zylinder weiter aus?</translation>
    </message>
    <message>
        <source>What keeps steel from sliding on steel?</source>
        <translation type="unfinished">Was hindert Stahl daran, auf Stahl zu rutschen?</translation>
    </message>
    <message>
        <source>The grooves hold at a larger angle than a smooth face.</source>
        <translation type="unfinished">Die Riffeln halten bei einem größeren Winkel als eine glatte Fläche.</translation>
    </message>
    <message>
        <source>A head with points on bare metal. What gives first?</source>
        <translation type="unfinished">Ein Kopf mit Spitzen auf blankem Metall. Was gibt zuerst nach?</translation>
    </message>
    <message>
        <source>At what angle would points let go, and does the line get there?</source>
        <translation type="unfinished">Bei welchem Winkel würden Spitzen loslassen, und kommt die Linie dorthin?</translation>
    </message>
    <message>
        <source>The points bite, and the line never comes to the angle at which they would let go.</source>
        <translation type="unfinished">Die Spitzen beißen, und die Linie kommt nie zu dem Winkel, bei dem sie loslassen würden.</translation>
    </message>
    <message>
        <source>A push has two ends.</source>
        <translation type="unfinished">Ein Druck hat zwei Enden.</translation>
    </message>
    <message>
        <source>The wall under the foot dents before the pillar folds.</source>
        <translation type="unfinished">Die Wand unter dem Fuß dellt ein, bevor sich die Säule faltet.</translation>
    </message>
    <message>
        <source>The same wall with a rib behind the foot. What gives first now?</source>
        <translation type="unfinished">Dieselbe Wand mit einer Rippe hinter dem Fuß. Was gibt jetzt zuerst nach?</translation>
    </message>
    <message>
        <source>If the foot stays, what turns as the pillar comes out?</source>
        <translation type="unfinished">Wenn der Fuß bleibt, was dreht sich, während die Säule herauskommt?</translation>
    </message>
    <message>
        <source>The foot stays; the pillar leans out until the head stands too far off square.</source>
        <translation type="unfinished">Der Fuß bleibt; die Säule lehnt nach außen, bis der Kopf zu schräg steht.</translation>
    </message>
    <message>
        <source>The small stepped ram, to where it goes no further. What gives first?</source>
        <translation type="unfinished">Der kleine Stufenzylinder, bis er nicht weiter geht. Was gibt zuerst nach?</translation>
    </message>
    <message>
        <source>What is left of its force when the next stage comes?</source>
        <translation type="unfinished">Was bleibt von seiner Kraft, wenn die nächste Stufe kommt?</translation>
    </message>
    <message>
        <source>Nothing gives: it stalls, because the next stage has less force than the pillar asks for.</source>
        <translation type="unfinished">Nichts gibt nach: Er bleibt stehen, denn die nächste Stufe hat weniger Kraft, als die Säule verlangt.</translation>
    </message>
    <message>
        <source>On bare metal the ram goes out further than on paint.</source>
        <translation type="unfinished">Auf blankem Metall fährt der Zylinder weiter aus als auf Lack.</translation>
    </message>
    <message>
        <source>Without a rib the base gives first; with one the head does.</source>
        <translation type="unfinished">Ohne Rippe gibt die Unterlage zuerst nach; mit einer der Kopf.</translation>
    </message>
    <message>
        <source>Set nearer to the middle the ram goes out further.</source>
        <translation type="unfinished">Näher an der Mitte gesetzt fährt der Zylinder weiter aus.</translation>
    </message>
    <message>
        <source>The base often gives first.</source>
        <translation type="unfinished">Die Unterlage gibt oft zuerst nach.</translation>
    </message>
    <message>
        <source>Chooses head and seat</source>
        <translation type="unfinished">Wählt Kopf und Sitz</translation>
    </message>
    <message>
        <source>surface stripped, head fits the surface</source>
        <translation type="unfinished">Oberfläche freigelegt, Kopf passt zur Oberfläche</translation>
    </message>
    <message>
        <source>Looks at the base</source>
        <translation type="unfinished">Sieht nach der Unterlage</translation>
    </message>
    <message>
        <source>says what is behind it, plate where there is nothing</source>
        <translation type="unfinished">sagt, was dahinter ist, Platte, wo nichts ist</translation>
    </message>
    <message>
        <source>Eases before it slips</source>
        <translation type="unfinished">Entlastet, bevor er rutscht</translation>
    </message>
    <message>
        <source>moves toward the centre and sets again</source>
        <translation type="unfinished">geht zur Mitte und setzt neu</translation>
    </message>
    <message>
        <source>Keeps people clear</source>
        <translation type="unfinished">Hält Menschen fern</translation>
    </message>
    <message>
        <source>nobody in line with either end</source>
        <translation type="unfinished">niemand in der Linie hinter einem der Enden</translation>
    </message>
    <message>
        <source>Which of these would you have missed from where you stood?</source>
        <translation type="unfinished">Was davon hätten Sie von Ihrem Platz aus übersehen?</translation>
    </message>
    <message>
        <source>Two ends, two watchers.</source>
        <translation type="unfinished">Zwei Enden, zwei Beobachter.</translation>
    </message>
    <message>
        <source>Strip the surface.</source>
        <translation type="unfinished">Die Oberfläche freilegen.</translation>
    </message>
    <message>
        <source>Ease, move, press again.</source>
        <translation type="unfinished">Entlasten, versetzen, wieder drücken.</translation>
    </message>
    <message>
        <source>Three doors</source>
        <translation type="unfinished">Drei Türen</translation>
    </message>
    <message>
        <source>The same push on the hem of three doors: what changes with seam and metal, and what does not.</source>
        <translation type="unfinished">Derselbe Druck auf den Falz von drei Türen: was sich mit Naht und Metall ändert und was nicht.</translation>
    </message>
    <message>
        <source>pieces of skin with a welded and a bonded edge, if there are any</source>
        <translation type="unfinished">Stücke Außenhaut mit geschweißter und mit geklebter Kante, wenn es welche gibt</translation>
    </message>
    <message>
        <source>Seams of every kind are met in cars of every age: look at the door, not at the year.</source>
        <translation type="unfinished">Nähte jeder Art trifft man an Autos jeden Alters: auf die Tür sehen, nicht auf das Baujahr.</translation>
    </message>
    <message>
        <source>Whether the welded skin comes off over a shorter length is not settled.</source>
        <translation type="unfinished">Ob sich die geschweißte Außenhaut über eine kürzere Länge löst, ist nicht gesichert.</translation>
    </message>
    <message>
        <source>The alloy door is an example build; its numbers are in the model card with what they rest on.</source>
        <translation type="unfinished">Die Aluminiumtür ist eine Beispielbauweise; ihre Zahlen stehen im Modellblatt mit dem, worauf sie beruhen.</translation>
    </message>
    <message>
        <source>says what a different seam or metal changes in sound, force and edges, and what it leaves as it was</source>
        <translation type="unfinished">sagt, was eine andere Naht oder ein anderes Metall an Geräusch, Kraft und Kanten ändert und was gleich bleibt</translation>
    </message>
    <message>
        <source>shown the same push on three doors that differ in nothing else</source>
        <translation type="unfinished">gezeigt wird derselbe Druck an drei Türen, die sich in sonst nichts unterscheiden</translation>
    </message>
    <message>
        <source>with one sign on real metal for each</source>
        <translation type="unfinished">mit je einem Zeichen am echten Metall</translation>
    </message>
    <message>
        <source>vehicle anatomy; creating openings for access</source>
        <translation type="unfinished">Aufbau des Fahrzeugs; Öffnungen für den Zugang schaffen</translation>
    </message>
    <message>
        <source>welded seam, steel</source>
        <translation type="unfinished">geschweißte Naht, Stahl</translation>
    </message>
    <message>
        <source>bonded seam, steel</source>
        <translation type="unfinished">geklebte Naht, Stahl</translation>
    </message>
    <message>
        <source>bonded seam, alloy</source>
        <translation type="unfinished">geklebte Naht, Aluminium</translation>
    </message>
    <message>
        <source>Can you see the seam?</source>
        <translation type="unfinished">Kann man die Naht sehen?</translation>
    </message>
    <message>
        <source>Three doors that look alike. What would tell you how the skin is held?</source>
        <translation type="unfinished">Drei Türen, die gleich aussehen. Was würde Ihnen sagen, wie die Außenhaut gehalten ist?</translation>
    </message>
    <message>
        <source>Buttons or dimples along the hem, a bead of glue, a magnet that does not hold.</source>
        <translation type="unfinished">Knöpfe oder Grübchen am Falz, eine Kleberraupe, ein Magnet, der nicht hält.</translation>
    </message>
    <message>
        <source>Wide tips on the hem lip, level with the latch. What lets go first?</source>
        <translation type="unfinished">Breite Spitzen auf der Falzkante, auf Höhe des Schlosses. Was gibt zuerst nach?</translation>
    </message>
    <message>
        <source>Predict for all three before you run the first.</source>
        <translation type="unfinished">Für alle drei vorhersagen, bevor die erste ausgeführt wird.</translation>
    </message>
    <message>
        <source>First to give: {bonded.first}. Largest force {bonded.peak_force}, parted {bonded.parted}.</source>
        <translation type="unfinished">Zuerst gab nach: {bonded.first}. Größte Kraft {bonded.peak_force}, aufgegangen {bonded.parted}.</translation>
    </message>
    <message>
        <source>The same push; the skin is held by spots of weld. What lets go first?</source>
        <translation type="unfinished">Derselbe Druck; die Außenhaut wird von Schweißpunkten gehalten. Was gibt zuerst nach?</translation>
    </message>
    <message>
        <source>Ask what the force will do: run level, or rise and fall?</source>
        <translation type="unfinished">Fragen, was die Kraft tun wird: gleich bleiben oder steigen und fallen?</translation>
    </message>
    <message>
        <source>First to give: {welded.first}. Largest force {welded.peak_force}, torn {welded.torn}.</source>
        <translation type="unfinished">Zuerst gab nach: {welded.first}. Größte Kraft {welded.peak_force}, gerissen {welded.torn}.</translation>
    </message>
    <message>
        <source>{welded.sentence}
Look at the force curve: it rises and falls from weld to weld. On metal: cracks one by one.</source>
        <translation type="unfinished">{welded.sentence}
Die Kraftkurve ansehen: Sie steigt und fällt von Punkt zu Punkt. Am Metall: ein Knacken nach dem anderen.</translation>
    </message>
    <message>
        <source>First to give: {alloy.first}. Parted {alloy.parted}, against {bonded.parted} in steel; neither skin tears, for its edge is whole.</source>
        <translation type="unfinished">Zuerst gab nach: {alloy.first}. Aufgegangen {alloy.parted}, gegen {bonded.parted} bei Stahl; keine der beiden Häute reißt, denn ihre Kante ist heil.</translation>
    </message>
    <message>
        <source>Every place along the edge</source>
        <translation type="unfinished">Jede Stelle an der Kante</translation>
    </message>
    <message>
        <source>The same tool at every place of both edges, each by itself. Where does the latch let go, and where only the skin?</source>
        <translation type="unfinished">Dasselbe Gerät an jeder Stelle beider Kanten, jede für sich. Wo gibt das Schloss frei, und wo nur die Außenhaut?</translation>
    </message>
    <message>
        <source>Ask where they would look for it before you open this step: the map answers at once.
Near the outer edge it is the seam; further in, beside latch or hinges, what holds the door. Dotted places are not settled: say so.
Point at a place for its sentence; a click sets the tips there, and the push can be run.</source>
        <translation type="unfinished">Fragen, wo sie danach suchen würden, bevor dieser Schritt geöffnet wird: Die Karte antwortet sofort.
Nah am Außenrand ist es die Naht; weiter innen, neben Schloss oder Scharnieren, das, was die Tür hält. Gepunktete Stellen sind nicht gesichert: das sagen.
Auf eine Stelle zeigen gibt ihren Satz; ein Klick setzt die Spitzen dorthin, und der Druck kann ausgeführt werden.</translation>
    </message>
    <message>
        <source>What another seam changes</source>
        <translation type="unfinished">Was eine andere Naht ändert</translation>
    </message>
    <message>
        <source>Bonded against welded: only places that come out otherwise are drawn. How many are left?</source>
        <translation type="unfinished">Geklebt gegen geschweißt: Nur Stellen, die anders ausgehen, sind gezeichnet. Wie viele bleiben?</translation>
    </message>
    <message>
        <source>Left half of a place: bonded; right half: welded. Everything blank comes out the same: that is most of the answer.
A broken weld counts as the seam parting.</source>
        <translation type="unfinished">Linke Hälfte einer Stelle: geklebt; rechte Hälfte: geschweißt. Alles Leere geht gleich aus: Das ist der größte Teil der Antwort.
Ein gebrochener Schweißpunkt zählt als aufgehende Naht.</translation>
    </message>
    <message>
        <source>What stayed the same?</source>
        <translation type="unfinished">Was blieb gleich?</translation>
    </message>
    <message>
        <source>Three doors, three curves. What is the same in all of them?</source>
        <translation type="unfinished">Drei Türen, drei Kurven. Was ist in allen gleich?</translation>
    </message>
    <message>
        <source>In all three the latch carried little: {welded.latch}, {bonded.latch}, {alloy.latch} of what it can hold.</source>
        <translation type="unfinished">In allen dreien trug das Schloss wenig: {welded.latch}, {bonded.latch}, {alloy.latch} von dem, was es halten kann.</translation>
    </message>
    <message>
        <source>One sign each</source>
        <translation type="unfinished">Je ein Zeichen</translation>
    </message>
    <message>
        <source>One sign on real metal for each of the three, and where the tips should have been.</source>
        <translation type="unfinished">Ein Zeichen am echten Metall für jede der drei, und wo die Spitzen hätten stehen sollen.</translation>
    </message>
    <message>
        <source>Bonded steel, tips on the lip. What lets go first?</source>
        <translation type="unfinished">Geklebter Stahl, Spitzen auf der Falzkante. Was gibt zuerst nach?</translation>
    </message>
    <message>
        <source>It is the push of the first bite.</source>
        <translation type="unfinished">Es ist der Druck des ersten Ansatzes.</translation>
    </message>
    <message>
        <source>The tips bear on the skin; its seam is the weakest part on the line.</source>
        <translation type="unfinished">Die Spitzen liegen an der Außenhaut an; ihre Naht ist das schwächste Teil auf der Linie.</translation>
    </message>
    <message>
        <source>Welded steel, the same push. What lets go first?</source>
        <translation type="unfinished">Geschweißter Stahl, derselbe Druck. Was gibt zuerst nach?</translation>
    </message>
    <message>
        <source>What holds the skin here?</source>
        <translation type="unfinished">Was hält hier die Außenhaut?</translation>
    </message>
    <message>
        <source>The spots take the place of the bead; they are still what holds the skin.</source>
        <translation type="unfinished">Die Punkte stehen an der Stelle der Raupe; auch sie sind das, was die Außenhaut hält.</translation>
    </message>
    <message>
        <source>Welded steel or bonded steel, the same push on the lip: which needs the larger force?</source>
        <translation type="unfinished">Geschweißter oder geklebter Stahl, derselbe Druck auf die Falzkante: Was braucht die größere Kraft?</translation>
    </message>
    <message>
        <source>A weld holds more than the bit of bead it stands for, until it goes.</source>
        <translation type="unfinished">Ein Schweißpunkt hält mehr als das Stück Raupe, für das er steht, bis er geht.</translation>
    </message>
    <message>
        <source>Bonded alloy, a whole edge without a nick, tips on the lip to the end: does the sheet tear?</source>
        <translation type="unfinished">Geklebtes Aluminium, eine heile Kante ohne Kerbe, Spitzen auf der Falzkante bis zum Ende: Reißt das Blech?</translation>
    </message>
    <message>
        <source>The seam lets the edge go before it is stretched to where it tears. From a nick it would tear, and sooner than steel.</source>
        <translation type="unfinished">Die Naht lässt die Kante los, bevor sie so weit gedehnt ist, dass sie reißt. Von einer Kerbe aus würde sie reißen, und früher als Stahl.</translation>
    </message>
    <message>
        <source>Bonded alloy, tips on the lip to the end: what becomes of the latch?</source>
        <translation type="unfinished">Geklebtes Aluminium, Spitzen auf der Falzkante bis zum Ende: Was wird aus dem Schloss?</translation>
    </message>
    <message>
        <source>Whatever the seam and the metal, the push stays in the skin.</source>
        <translation type="unfinished">Welche Naht und welches Metall auch immer, der Druck bleibt in der Außenhaut.</translation>
    </message>
    <message>
        <source>A push on the hem is the wrong place on all three doors.</source>
        <translation type="unfinished">Ein Druck auf den Falz ist an allen drei Türen die falsche Stelle.</translation>
    </message>
    <message>
        <source>A welded seam lets go in jerks, a bonded one in a long run.</source>
        <translation type="unfinished">Eine geschweißte Naht lässt ruckweise los, eine geklebte in einem langen Zug.</translation>
    </message>
    <message>
        <source>Alloy tears more readily than steel. (Not in the run shown: a whole edge tears in neither.)</source>
        <translation type="unfinished">Aluminium reißt leichter als Stahl. (Nicht in der gezeigten Rechnung: Eine heile Kante reißt in keiner.)</translation>
    </message>
    <message>
        <source>Reads the seam</source>
        <translation type="unfinished">Liest die Naht</translation>
    </message>
    <message>
        <source>looks for spots, bead, magnet, before the first bite</source>
        <translation type="unfinished">sucht vor dem ersten Ansatz nach Punkten, Raupe, Magnet</translation>
    </message>
    <message>
        <source>Says what will differ</source>
        <translation type="unfinished">Sagt, was anders sein wird</translation>
    </message>
    <message>
        <source>sound, force, edges</source>
        <translation type="unfinished">Geräusch, Kraft, Kanten</translation>
    </message>
    <message>
        <source>Stops in time</source>
        <translation type="unfinished">Hält rechtzeitig an</translation>
    </message>
    <message>
        <source>at the first opened edge, whatever the door</source>
        <translation type="unfinished">bei der ersten offenen Kante, welche Tür auch immer</translation>
    </message>
    <message>
        <source>Covers the edges</source>
        <translation type="unfinished">Deckt die Kanten ab</translation>
    </message>
    <message>
        <source>What changed from door to door, and what did not?</source>
        <translation type="unfinished">Was änderte sich von Tür zu Tür, und was nicht?</translation>
    </message>
    <message>
        <source>Which sign would you hear, which only see?</source>
        <translation type="unfinished">Welches Zeichen würden Sie hören, welches nur sehen?</translation>
    </message>
    <message>
        <source>Seam and metal change the sound and the edges.</source>
        <translation type="unfinished">Naht und Metall ändern das Geräusch und die Kanten.</translation>
    </message>
    <message>
        <source>They do not make the edge the right place.</source>
        <translation type="unfinished">Sie machen die Kante nicht zur richtigen Stelle.</translation>
    </message>
    <message>
        <source>Look at the door, not at the year.</source>
        <translation type="unfinished">Auf die Tür sehen, nicht auf das Baujahr.</translation>
    </message>
    <message>
        <source>Tips deep in the gap, past the inner bend, level with the latch.</source>
        <translation type="unfinished">Spitzen tief im Spalt, hinter der inneren Biegung, auf Höhe des Schlosses.</translation>
    </message>
    <message>
        <source>From the belt, inner lip</source>
        <translation type="unfinished">Von der Brüstung, Innenlippe</translation>
    </message>
    <message>
        <source>Tips up and down in the window opening, the lower one on the inner lip of the belt.</source>
        <translation type="unfinished">Spitzen nach oben und unten in der Fensteröffnung, die untere auf der Innenlippe der Brüstung.</translation>
    </message>
    <message>
        <source>From the belt, outer lip</source>
        <translation type="unfinished">Von der Brüstung, Außenlippe</translation>
    </message>
    <message>
        <source>Tips up and down in the window opening, the lower one on the outer lip of the belt.</source>
        <translation type="unfinished">Spitzen nach oben und unten in der Fensteröffnung, die untere auf der Außenlippe der Brüstung.</translation>
    </message>
    <message>
        <source>From the belt, weak rail</source>
        <translation type="unfinished">Von der Brüstung, schwacher Holm</translation>
    </message>
    <message>
        <source>Tips up and down in the window opening; the rail over them is thin and cut at its front end.</source>
        <translation type="unfinished">Spitzen nach oben und unten in der Fensteröffnung; der Holm darüber ist dünn und an seinem vorderen Ende geschnitten.</translation>
    </message>
    <message>
        <source>The cut stops short</source>
        <translation type="unfinished">Der Schnitt endet zu früh</translation>
    </message>
    <message>
        <source>As with one cut, but the blades stop 20 mm before the far face.</source>
        <translation type="unfinished">Wie mit einem Schnitt, aber die Klingen halten 20 mm vor der hinteren Wand an.</translation>
    </message>
    <message>
        <source>From the belt, door dished 180 mm</source>
        <translation type="unfinished">Von der Brüstung, Tür 180 mm eingebeult</translation>
    </message>
    <message>
        <source>A post pressed the door in before; then tips up and down in the window opening.</source>
        <translation type="unfinished">Ein Pfosten drückte die Tür vorher ein; dann Spitzen nach oben und unten in der Fensteröffnung.</translation>
    </message>
    <message>
        <source>From the belt, door dished 60 mm</source>
        <translation type="unfinished">Von der Brüstung, Tür 60 mm eingebeult</translation>
    </message>
    <message>
        <source>Door crush by a cylinder</source>
        <translation type="unfinished">Tür von einem Zylinder eingedrückt</translation>
    </message>
    <message>
        <source>How the bar carries the door, what lets go, and what a wrecked door looks like afterwards.</source>
        <translation type="unfinished">Wie der Träger die Tür trägt, was freigibt und wie eine Unfalltür danach aussieht.</translation>
    </message>
    <message>
        <source>Edge attack at the hinge</source>
        <translation type="unfinished">Angriff am Rand beim Scharnier</translation>
    </message>
    <message>
        <source>Tips shallow in the gap, on the hem lip, level with the upper hinge.</source>
        <translation type="unfinished">Spitzen flach im Spalt, auf der Falzkante, auf Höhe des oberen Scharniers.</translation>
    </message>
    <message>
        <source>Edge attack at the latch</source>
        <translation type="unfinished">Angriff am Rand beim Schloss</translation>
    </message>
    <message>
        <source>Tips shallow in the gap, on the hem lip, level with the latch.</source>
        <translation type="unfinished">Spitzen flach im Spalt, auf der Falzkante, auf Höhe des Schlosses.</translation>
    </message>
    <message>
        <source>First bite, narrow tips behind the bend</source>
        <translation type="unfinished">Erster Ansatz, schmale Spitzen hinter der Biegung</translation>
    </message>
    <message>
        <source>Narrow tips past the inner bend, level with the latch.</source>
        <translation type="unfinished">Schmale Spitzen hinter der inneren Biegung, auf Höhe des Schlosses.</translation>
    </message>
    <message>
        <source>First bite, narrow tips on the lip</source>
        <translation type="unfinished">Erster Ansatz, schmale Spitzen auf der Falzkante</translation>
    </message>
    <message>
        <source>Narrow tips on the hem lip, level with the latch.</source>
        <translation type="unfinished">Schmale Spitzen auf der Falzkante, auf Höhe des Schlosses.</translation>
    </message>
    <message>
        <source>First bite on the lip, twice the force</source>
        <translation type="unfinished">Erster Ansatz auf der Falzkante, doppelte Kraft</translation>
    </message>
    <message>
        <source>Narrow tips on the hem lip, a tool twice as strong.</source>
        <translation type="unfinished">Schmale Spitzen auf der Falzkante, ein doppelt so starkes Gerät.</translation>
    </message>
    <message>
        <source>First bite, wide tips behind the bend</source>
        <translation type="unfinished">Erster Ansatz, breite Spitzen hinter der Biegung</translation>
    </message>
    <message>
        <source>Wide tips past the inner bend, level with the latch.</source>
        <translation type="unfinished">Breite Spitzen hinter der inneren Biegung, auf Höhe des Schlosses.</translation>
    </message>
    <message>
        <source>A gap at the frame with the entry bar, then a deep bite high on the edge, behind the bend.</source>
        <translation type="unfinished">Ein Spalt am Rahmen mit der Brechstange, dann ein tiefer Ansatz hoch an der Kante, hinter der Biegung.</translation>
    </message>
    <message>
        <source>From the top, worked down</source>
        <translation type="unfinished">Von oben nach unten gearbeitet</translation>
    </message>
    <message>
        <source>A gap at the frame with the entry bar, a short, deep bite high on the edge, let off; then the next bite lower.</source>
        <translation type="unfinished">Ein Spalt am Rahmen mit der Brechstange, ein kurzer, tiefer Ansatz hoch an der Kante, entlastet; dann der nächste Ansatz tiefer.</translation>
    </message>
    <message>
        <source>A hard foot on a rocker that gives</source>
        <translation type="unfinished">Ein harter Fuß auf einem Schweller, der nachgibt</translation>
    </message>
    <message>
        <source>A pillar hard in all its walls on a flared foot, cut through at the top and pressed out by a ram.</source>
        <translation type="unfinished">Eine in allen Wänden harte Säule auf ausgestelltem Fuß, oben durchgeschnitten und von einem Rettungszylinder hinausgedrückt.</translation>
    </message>
    <message>
        <source>A hard foot with a relief cut</source>
        <translation type="unfinished">Ein harter Fuß mit Entlastungsschnitt</translation>
    </message>
    <message>
        <source>As with the hard foot, and a cut 60 mm deep into its inner side first.</source>
        <translation type="unfinished">Wie mit dem harten Fuß, und vorher ein 60 mm tiefer Schnitt in seine Innenseite.</translation>
    </message>
    <message>
        <source>A pillar as hard at its foot as above it, cut through at the top and pressed out by a ram.</source>
        <translation type="unfinished">Eine Säule, am Fuß so hart wie darüber, oben durchgeschnitten und von einem Rettungszylinder hinausgedrückt.</translation>
    </message>
    <message>
        <source>High striker: fold down</source>
        <translation type="unfinished">Hoch getroffen: umlegen</translation>
    </message>
    <message>
        <source>The front door freed, the pillar cut open at its head, then a ram from the far pillar, eased and set again with a higher foot as the pillar leans out.</source>
        <translation type="unfinished">Die vordere Tür gelöst, die Säule am Kopf aufgeschnitten, dann ein Rettungszylinder von der gegenüberliegenden Säule, entlastet und mit höherem Fuß neu gesetzt, während die Säule nach außen lehnt.</translation>
    </message>
    <message>
        <source>High striker: push forward</source>
        <translation type="unfinished">Hoch getroffen: nach vorn drücken</translation>
    </message>
    <message>
        <source>The front door is pressed forward off the pillar, straight along the car.</source>
        <translation type="unfinished">Die vordere Tür wird von der Säule nach vorn gedrückt, gerade längs zum Auto.</translation>
    </message>
    <message>
        <source>High striker: rip at the foot</source>
        <translation type="unfinished">Hoch getroffen: am Fuß abreißen</translation>
    </message>
    <message>
        <source>A cut into the foot from behind, then the rear door spread up off the rocker; the head stays on.</source>
        <translation type="unfinished">Ein Schnitt von hinten in den Fuß, dann die hintere Tür vom Schweller nach oben gespreizt; der Kopf bleibt dran.</translation>
    </message>
    <message>
        <source>Lower hinge first</source>
        <translation type="unfinished">Unteres Scharnier zuerst</translation>
    </message>
    <message>
        <source>The latch is free. The gap is opened over the lower hinge, which is cut; then the door is swung wide and let go.</source>
        <translation type="unfinished">Das Schloss ist frei. Der Spalt wird über dem unteren Scharnier geöffnet, das geschnitten wird; dann wird die Tür weit geschwenkt und losgelassen.</translation>
    </message>
    <message>
        <source>One cut, all the way</source>
        <translation type="unfinished">Ein Schnitt, ganz durch</translation>
    </message>
    <message>
        <source>Trim off first, one cut through the pillar high up, then a ram at half its height.</source>
        <translation type="unfinished">Erst die Verkleidung ab, ein Schnitt hoch durch die Säule, dann ein Rettungszylinder auf ihrer halben Höhe.</translation>
    </message>
    <message>
        <source>Pillar and rail pushed in</source>
        <translation type="unfinished">Säule und Holm eingedrückt</translation>
    </message>
    <message>
        <source>The pillar between the doors has been pushed in and has taken the roof rail along.</source>
        <translation type="unfinished">Die Säule zwischen den Türen ist eingedrückt und hat den Dachholm mitgenommen.</translation>
    </message>
    <message>
        <source>Pillar pushed in over the hips</source>
        <translation type="unfinished">Säule über die Hüften eingedrückt</translation>
    </message>
    <message>
        <source>The pillar between the doors has been pushed in; the tips go behind the inner bend of the front door.</source>
        <translation type="unfinished">Die Säule zwischen den Türen ist eingedrückt; die Spitzen gehen hinter die innere Biegung der vorderen Tür.</translation>
    </message>
    <message>
        <source>Squeezed at the very end, then from the top</source>
        <translation type="unfinished">Ganz am Ende gequetscht, dann von oben</translation>
    </message>
    <message>
        <source>A squeeze high at the very latch end, the bar in the gap, then a deep bite behind the bend.</source>
        <translation type="unfinished">Ein Quetschen hoch ganz am Schlossende, die Brechstange im Spalt, dann ein tiefer Ansatz hinter der Biegung.</translation>
    </message>
    <message>
        <source>The tips spread along the car, high on the latch edge, on a door that nobody has squeezed.</source>
        <translation type="unfinished">Die Spitzen spreizen längs zum Auto, hoch an der Schlosskante, an einer Tür, die niemand gequetscht hat.</translation>
    </message>
    <message>
        <source>Squeezed, then spread</source>
        <translation type="unfinished">Gequetscht, dann gespreizt</translation>
    </message>
    <message>
        <source>The tips close across the upper panel for a gap; then they spread along the car, high on the latch edge.</source>
        <translation type="unfinished">Die Spitzen schließen sich für einen Spalt quer über das obere Blech; dann spreizen sie längs zum Auto, hoch an der Schlosskante.</translation>
    </message>
    <message>
        <source>Tips in the pocket</source>
        <translation type="unfinished">Spitzen in der Tasche</translation>
    </message>
    <message>
        <source>A second cut 60 mm under the first, the tips of the spreader in between, then a ram.</source>
        <translation type="unfinished">Ein zweiter Schnitt 60 mm unter dem ersten, die Spitzen des Spreizers dazwischen, dann ein Rettungszylinder.</translation>
    </message>
    <message>
        <source>Wide tips in the pocket</source>
        <translation type="unfinished">Breite Spitzen in der Tasche</translation>
    </message>
    <message>
        <source>As in the pocket, with tips wider than the pillar: they push on its corners.</source>
        <translation type="unfinished">Wie in der Tasche, mit Spitzen breiter als die Säule: Sie drücken auf ihre Ecken.</translation>
    </message>
    <message>
        <source>Rear door, upper hinge first</source>
        <translation type="unfinished">Hintere Tür, oberes Scharnier zuerst</translation>
    </message>
    <message>
        <source>Both latches are free. The gap at the rear door's hinge edge is opened until its upper hinge shows, and it is cut; then the door is swung wide and let go.</source>
        <translation type="unfinished">Beide Schlösser sind frei. Der Spalt an der Scharnierkante der hinteren Tür wird geöffnet, bis ihr oberes Scharnier zu sehen ist, und es wird geschnitten; dann wird die Tür weit geschwenkt und losgelassen.</translation>
    </message>
    <message>
        <source>Head on bare metal</source>
        <translation type="unfinished">Kopf auf blankem Metall</translation>
    </message>
    <message>
        <source>The seal is off and the paint scraped away where the head bears.</source>
        <translation type="unfinished">Die Dichtung ist ab und der Lack abgeschabt, wo der Kopf anliegt.</translation>
    </message>
    <message>
        <source>A smooth head</source>
        <translation type="unfinished">Ein glatter Kopf</translation>
    </message>
    <message>
        <source>A smooth head on bare metal.</source>
        <translation type="unfinished">Ein glatter Kopf auf blankem Metall.</translation>
    </message>
    <message>
        <source>Off the middle, then nearer</source>
        <translation type="unfinished">Neben der Mitte, dann näher</translation>
    </message>
    <message>
        <source>The head stands 35 mm off the wall's middle; then the ram is eased, set 10 mm off it and driven on.</source>
        <translation type="unfinished">Der Kopf steht 35 mm neben der Mitte der Wand; dann wird der Zylinder entlastet, 10 mm daneben gesetzt und weiter ausgefahren.</translation>
    </message>
    <message>
        <source>Head on paint</source>
        <translation type="unfinished">Kopf auf Lack</translation>
    </message>
    <message>
        <source>The seal is off; the head bears on painted sheet.</source>
        <translation type="unfinished">Die Dichtung ist ab; der Kopf liegt auf lackiertem Blech.</translation>
    </message>
    <message>
        <source>A head with points</source>
        <translation type="unfinished">Ein Kopf mit Spitzen</translation>
    </message>
    <message>
        <source>Four points that bite, on bare metal.</source>
        <translation type="unfinished">Vier Spitzen, die beißen, auf blankem Metall.</translation>
    </message>
    <message>
        <source>A base with a rib</source>
        <translation type="unfinished">Eine Unterlage mit Rippe</translation>
    </message>
    <message>
        <source>The foot stands on 1 mm of rocker wall with a rib behind it.</source>
        <translation type="unfinished">Der Fuß steht auf 1 mm Schwellerwand mit einer Rippe dahinter.</translation>
    </message>
    <message>
        <source>Head on a rubber seal</source>
        <translation type="unfinished">Kopf auf einer Gummidichtung</translation>
    </message>
    <message>
        <source>A grooved head on the seal that was left on.</source>
        <translation type="unfinished">Ein geriffelter Kopf auf der nicht abgenommenen Dichtung.</translation>
    </message>
    <message>
        <source>The next stage gives less</source>
        <translation type="unfinished">Die nächste Stufe gibt weniger</translation>
    </message>
    <message>
        <source>A small ram of three stages; each gives less than the one before.</source>
        <translation type="unfinished">Ein kleiner Zylinder mit drei Stufen; jede gibt weniger als die davor.</translation>
    </message>
    <message>
        <source>small stepped ram</source>
        <translation type="unfinished">kleiner Stufenzylinder</translation>
    </message>
    <message>
        <source>A base without a rib</source>
        <translation type="unfinished">Eine Unterlage ohne Rippe</translation>
    </message>
    <message>
        <source>The foot stands on 1 mm of rocker wall with nothing behind it.</source>
        <translation type="unfinished">Der Fuß steht auf 1 mm Schwellerwand mit nichts dahinter.</translation>
    </message>
    <message>
        <source>A grooved head</source>
        <translation type="unfinished">Ein geriffelter Kopf</translation>
    </message>
    <message>
        <source>A grooved head on bare metal.</source>
        <translation type="unfinished">Ein geriffelter Kopf auf blankem Metall.</translation>
    </message>
    <message>
        <source>Tips on the raw edge</source>
        <translation type="unfinished">Spitzen auf der rohen Kante</translation>
    </message>
    <message>
        <source>One cut through the pillar high up, the tips of the spreader set on it, then a ram.</source>
        <translation type="unfinished">Ein Schnitt hoch durch die Säule, die Spitzen des Spreizers darauf gesetzt, dann ein Rettungszylinder.</translation>
    </message>
    <message>
        <source>A relief cut at the foot</source>
        <translation type="unfinished">Ein Entlastungsschnitt am Fuß</translation>
    </message>
    <message>
        <source>As with one cut, and a second one 60 mm deep into the inner side of the foot.</source>
        <translation type="unfinished">Wie mit einem Schnitt, und ein zweiter 60 mm tief in die Innenseite des Fußes.</translation>
    </message>
    <message>
        <source>A soft foot on a rocker that gives</source>
        <translation type="unfinished">Ein weicher Fuß auf einem Schweller, der nachgibt</translation>
    </message>
    <message>
        <source>A pillar of softer and thinner sheet on a flared foot, cut through at the top and pressed out by a ram.</source>
        <translation type="unfinished">Eine Säule aus weicherem und dünnerem Blech auf ausgestelltem Fuß, oben durchgeschnitten und von einem Rettungszylinder hinausgedrückt.</translation>
    </message>
    <message>
        <source>Three doors, edge attack: bonded alloy</source>
        <translation type="unfinished">Drei Türen, Angriff am Rand: geklebt, Aluminium</translation>
    </message>
    <message>
        <source>Wide tips on the hem lip, level with the latch; the door straight, its latch jammed.</source>
        <translation type="unfinished">Breite Spitzen auf der Falzkante, auf Höhe des Schlosses; die Tür gerade, ihr Schloss verklemmt.</translation>
    </message>
    <message>
        <source>Three doors, edge attack: bonded steel</source>
        <translation type="unfinished">Drei Türen, Angriff am Rand: geklebt, Stahl</translation>
    </message>
    <message>
        <source>Three doors, from the top: bonded alloy</source>
        <translation type="unfinished">Drei Türen, von oben: geklebt, Aluminium</translation>
    </message>
    <message>
        <source>A gap at the frame with the entry bar, then deep bites down the edge, behind the bend; the latch jammed.</source>
        <translation type="unfinished">Ein Spalt am Rahmen mit der Brechstange, dann tiefe Ansätze die Kante hinunter, hinter der Biegung; das Schloss verklemmt.</translation>
    </message>
    <message>
        <source>Three doors, from the top: bonded steel</source>
        <translation type="unfinished">Drei Türen, von oben: geklebt, Stahl</translation>
    </message>
    <message>
        <source>Three doors, from the top: welded steel</source>
        <translation type="unfinished">Drei Türen, von oben: geschweißt, Stahl</translation>
    </message>
    <message>
        <source>Three doors, edge attack: welded steel</source>
        <translation type="unfinished">Drei Türen, Angriff am Rand: geschweißt, Stahl</translation>
    </message>
    <message>
        <source>Upper hinge first</source>
        <translation type="unfinished">Oberes Scharnier zuerst</translation>
    </message>
    <message>
        <source>The latch is free. The gap is opened over the upper hinge until the hinge shows, and it is cut; then the door is swung wide and let go.</source>
        <translation type="unfinished">Das Schloss ist frei. Der Spalt wird über dem oberen Scharnier geöffnet, bis es zu sehen ist, und es wird geschnitten; dann wird die Tür weit geschwenkt und losgelassen.</translation>
    </message>
    <message>
        <source>First bite: the lip or the bend</source>
        <translation type="unfinished">Erster Ansatz: die Falzkante oder die Biegung</translation>
    </message>
    <message>
        <source>A straight door, bonded, with a bar. Narrow tips on the hem lip; the same behind the bend; wide tips there; twice the force on the lip.</source>
        <translation type="unfinished">Eine gerade Tür, geklebt, mit Träger. Schmale Spitzen auf der Falzkante; dieselben hinter der Biegung; breite Spitzen dort; doppelte Kraft auf der Falzkante.</translation>
    </message>
    <message>
        <source>On the lip the seam parts before the latch lets go</source>
        <translation type="unfinished">Auf der Falzkante geht die Naht auf, bevor das Schloss freigibt</translation>
    </message>
    <message>
        <source>On the lip the latch carries less than half of what it holds when the seam first parts</source>
        <translation type="unfinished">Auf der Falzkante trägt das Schloss weniger als die Hälfte von dem, was es hält, wenn die Naht zuerst aufgeht</translation>
    </message>
    <message>
        <source>What the latch carries then, over what it holds</source>
        <translation type="unfinished">Was das Schloss dann trägt, zu dem, was es hält</translation>
    </message>
    <message>
        <source>Behind the bend, narrow tips, the latch lets go or is exposed before the seam parts</source>
        <translation type="unfinished">Hinter der Biegung, schmale Spitzen, gibt das Schloss frei oder liegt offen, bevor die Naht aufgeht</translation>
    </message>
    <message>
        <source>The same with wide tips</source>
        <translation type="unfinished">Dasselbe mit breiten Spitzen</translation>
    </message>
    <message>
        <source>More seam parts and sheet tears on the lip than behind the bend, narrow tips</source>
        <translation type="unfinished">Auf der Falzkante geht mehr Naht auf und reißt mehr Blech als hinter der Biegung, schmale Spitzen</translation>
    </message>
    <message>
        <source>Narrow tips behind the bend part and tear more than wide ones there</source>
        <translation type="unfinished">Schmale Spitzen hinter der Biegung öffnen und reißen mehr als breite dort</translation>
    </message>
    <message>
        <source>Twice the force on the lip: the same part gives first</source>
        <translation type="unfinished">Doppelte Kraft auf der Falzkante: dasselbe Teil gibt zuerst nach</translation>
    </message>
    <message>
        <source>Seam parted and sheet torn on the lip</source>
        <translation type="unfinished">Auf der Falzkante aufgegangene Naht und gerissenes Blech</translation>
    </message>
    <message>
        <source>The same behind the bend, narrow tips</source>
        <translation type="unfinished">Dasselbe hinter der Biegung, schmale Spitzen</translation>
    </message>
    <message>
        <source>The same behind the bend, wide tips</source>
        <translation type="unfinished">Dasselbe hinter der Biegung, breite Spitzen</translation>
    </message>
    <message>
        <source>From the top: where the first bite goes</source>
        <translation type="unfinished">Von oben: wohin der erste Ansatz kommt</translation>
    </message>
    <message>
        <source>From the top the latch lets go or is exposed</source>
        <translation type="unfinished">Von oben gibt das Schloss frei oder liegt offen</translation>
    </message>
    <message>
        <source>From the edge it does</source>
        <translation type="unfinished">Vom Rand aus tut es das</translation>
    </message>
    <message>
        <source>The first share less the second</source>
        <translation type="unfinished">Der erste Anteil weniger den zweiten</translation>
    </message>
    <message>
        <source>From the top the patient's room is never less than 10 mm below its start</source>
        <translation type="unfinished">Von oben ist der Raum des Patienten nie mehr als 10 mm unter seinem Anfang</translation>
    </message>
    <message>
        <source>From the top a bite is seated behind the inner bend</source>
        <translation type="unfinished">Von oben sitzt ein Ansatz hinter der inneren Biegung</translation>
    </message>
    <message>
        <source>From the edge 60 % of the work or more goes into seam and tears</source>
        <translation type="unfinished">Vom Rand aus gehen 60 % der Arbeit oder mehr in Naht und Risse</translation>
    </message>
    <message>
        <source>From the top 25 % or less does</source>
        <translation type="unfinished">Von oben tun es 25 % oder weniger</translation>
    </message>
    <message>
        <source>Share of the work in seam and tears, from the edge</source>
        <translation type="unfinished">Anteil der Arbeit in Naht und Rissen, vom Rand aus</translation>
    </message>
    <message>
        <source>The same from the top</source>
        <translation type="unfinished">Dasselbe von oben</translation>
    </message>
    <message>
        <source>Seam parted and sheet torn, from the edge</source>
        <translation type="unfinished">Aufgegangene Naht und gerissenes Blech, vom Rand aus</translation>
    </message>
    <message>
        <source>A straight door, bonded. On the hem lip at the latch; or the entry bar at the frame and a deep bite high on the edge; or that bite kept short and the next one lower.</source>
        <translation type="unfinished">Eine gerade Tür, geklebt. Auf der Falzkante am Schloss; oder die Brechstange am Rahmen und ein tiefer Ansatz hoch an der Kante; oder dieser Ansatz kurz und der nächste tiefer.</translation>
    </message>
    <message>
        <source>Worked down, the latch lets go or is exposed</source>
        <translation type="unfinished">Nach unten gearbeitet gibt das Schloss frei oder liegt offen</translation>
    </message>
    <message>
        <source>It does so in the short first bite already</source>
        <translation type="unfinished">Es tut es schon im kurzen ersten Ansatz</translation>
    </message>
    <message>
        <source>The share worked down less that of one bite from the top</source>
        <translation type="unfinished">Der Anteil nach unten gearbeitet weniger den mit einem Ansatz von oben</translation>
    </message>
    <message>
        <source>Worked down, the patient's room is never less than 10 mm below its start</source>
        <translation type="unfinished">Nach unten gearbeitet ist der Raum des Patienten nie mehr als 10 mm unter seinem Anfang</translation>
    </message>
    <message>
        <source>Most of its limit that the latch carries, in one bite from the top</source>
        <translation type="unfinished">Am meisten, was das Schloss von seiner Grenze trägt, mit einem Ansatz von oben</translation>
    </message>
    <message>
        <source>The same in the short first bite</source>
        <translation type="unfinished">Dasselbe im kurzen ersten Ansatz</translation>
    </message>
    <message>
        <source>The same in the next bite, lower</source>
        <translation type="unfinished">Dasselbe im nächsten, tieferen Ansatz</translation>
    </message>
    <message>
        <source>Seam parted and sheet torn, worked down</source>
        <translation type="unfinished">Aufgegangene Naht und gerissenes Blech, nach unten gearbeitet</translation>
    </message>
    <message>
        <source>High striker: three ways from one start</source>
        <translation type="unfinished">Hoch getroffen: drei Wege vom selben Anfang</translation>
    </message>
    <message>
        <source>A low car hit in its middle by a tall flat face. The side folded down after a cut at the head; the door pressed forward; the foot ripped from behind with no cut at the head.</source>
        <translation type="unfinished">Ein niedriges Auto, in der Mitte von einer hohen ebenen Fläche getroffen. Die Seite nach einem Schnitt am Kopf umgelegt; die Tür nach vorn gedrückt; der Fuß von hinten abgerissen, ohne Schnitt am Kopf.</translation>
    </message>
    <message>
        <source>Folded: the patient's room is never more than 2 mm below its start</source>
        <translation type="unfinished">Umgelegt: der Raum des Patienten ist nie mehr als 2 mm unter seinem Anfang</translation>
    </message>
    <message>
        <source>Folded: 700 mm or more to bring the patient out by at the end</source>
        <translation type="unfinished">Umgelegt: am Ende 700 mm oder mehr, um den Patienten herauszubringen</translation>
    </message>
    <message>
        <source>Both in the same run</source>
        <translation type="unfinished">Beides in derselben Rechnung</translation>
    </message>
    <message>
        <source>Forward: the room is 15 mm less within the first third of the way</source>
        <translation type="unfinished">Nach vorn: der Raum ist im ersten Drittel des Wegs 15 mm weniger</translation>
    </message>
    <message>
        <source>Ripped: the room dips by 2 mm or more</source>
        <translation type="unfinished">Abgerissen: der Raum sinkt um 2 mm oder mehr</translation>
    </message>
    <message>
        <source>Ripped: it is more at the end than at the start</source>
        <translation type="unfinished">Abgerissen: er ist am Ende mehr als am Anfang</translation>
    </message>
    <message>
        <source>Ripped: it dips and then rises</source>
        <translation type="unfinished">Abgerissen: er sinkt und steigt dann</translation>
    </message>
    <message>
        <source>Less room is lost on the way folding than going forward</source>
        <translation type="unfinished">Beim Umlegen geht unterwegs weniger Raum verloren als nach vorn</translation>
    </message>
    <message>
        <source>Folded: a seat of the ram slips</source>
        <translation type="unfinished">Umgelegt: ein Sitz des Zylinders rutscht</translation>
    </message>
    <message>
        <source>Folded: the base gives</source>
        <translation type="unfinished">Umgelegt: die Unterlage gibt nach</translation>
    </message>
    <message>
        <source>Least room on the way below its start, folded</source>
        <translation type="unfinished">Kleinster Raum unterwegs unter seinem Anfang, umgelegt</translation>
    </message>
    <message>
        <source>The same, forward</source>
        <translation type="unfinished">Dasselbe, nach vorn</translation>
    </message>
    <message>
        <source>The same, ripped</source>
        <translation type="unfinished">Dasselbe, abgerissen</translation>
    </message>
    <message>
        <source>Room gained at the end, folded</source>
        <translation type="unfinished">Am Ende gewonnener Raum, umgelegt</translation>
    </message>
    <message>
        <source>Hip's room gained, folded</source>
        <translation type="unfinished">Gewonnener Raum an der Hüfte, umgelegt</translation>
    </message>
    <message>
        <source>Width to bring the patient out by, folded</source>
        <translation type="unfinished">Breite, um den Patienten herauszubringen, umgelegt</translation>
    </message>
    <message>
        <source>Most force, folded</source>
        <translation type="unfinished">Größte Kraft, umgelegt</translation>
    </message>
    <message>
        <source>One cut or two: what a cut leaves behind</source>
        <translation type="unfinished">Ein Schnitt oder zwei: was ein Schnitt zurücklässt</translation>
    </message>
    <message>
        <source>A side whose doors are open. One cut high up or a second below it, tips between the raw ends, then a ram; a cut 20 mm short; a hard foot; relief cuts at the foot.</source>
        <translation type="unfinished">Eine Seite mit offenen Türen. Ein Schnitt hoch oben oder ein zweiter darunter, Spitzen zwischen den rohen Enden, dann ein Rettungszylinder; ein Schnitt 20 mm zu kurz; ein harter Fuß; Entlastungsschnitte am Fuß.</translation>
    </message>
    <message>
        <source>One cut: the tips on the raw edge slip</source>
        <translation type="unfinished">Ein Schnitt: die Spitzen auf der rohen Kante rutschen</translation>
    </message>
    <message>
        <source>Second cut: the tips in the pocket slip</source>
        <translation type="unfinished">Zweiter Schnitt: die Spitzen in der Tasche rutschen</translation>
    </message>
    <message>
        <source>How far the tips open on the raw edge</source>
        <translation type="unfinished">Wie weit die Spitzen auf der rohen Kante öffnen</translation>
    </message>
    <message>
        <source>How far in the pocket</source>
        <translation type="unfinished">Wie weit in der Tasche</translation>
    </message>
    <message>
        <source>Cut short: a tie is left</source>
        <translation type="unfinished">Zu kurz: eine Verbindung bleibt</translation>
    </message>
    <message>
        <source>Cut short: the base gives or spots pop</source>
        <translation type="unfinished">Zu kurz: die Unterlage gibt nach oder Punkte springen auf</translation>
    </message>
    <message>
        <source>Cut through: the base gives or spots pop</source>
        <translation type="unfinished">Durchgeschnitten: die Unterlage gibt nach oder Punkte springen auf</translation>
    </message>
    <message>
        <source>Cut through: the ram's seat slips</source>
        <translation type="unfinished">Durchgeschnitten: der Sitz des Zylinders rutscht</translation>
    </message>
    <message>
        <source>Cut short: the ram's seat slips</source>
        <translation type="unfinished">Zu kurz: der Sitz des Zylinders rutscht</translation>
    </message>
    <message>
        <source>Soft foot: the ram needs 30 kN or less</source>
        <translation type="unfinished">Weicher Fuß: der Zylinder braucht 30 kN oder weniger</translation>
    </message>
    <message>
        <source>Hard foot: it needs more than 2.5 times as much</source>
        <translation type="unfinished">Harter Fuß: er braucht mehr als 2,5-mal so viel</translation>
    </message>
    <message>
        <source>Hard foot: the base gives</source>
        <translation type="unfinished">Harter Fuß: die Unterlage gibt nach</translation>
    </message>
    <message>
        <source>Soft foot: without a relief cut it needs more than 1.67 times as much</source>
        <translation type="unfinished">Weicher Fuß: ohne Entlastungsschnitt braucht er mehr als 1,67-mal so viel</translation>
    </message>
    <message>
        <source>Hard foot: without a relief cut it needs more than 1.67 times as much</source>
        <translation type="unfinished">Harter Fuß: ohne Entlastungsschnitt braucht er mehr als 1,67-mal so viel</translation>
    </message>
    <message>
        <source>Most force of the ram, soft foot</source>
        <translation type="unfinished">Größte Kraft des Zylinders, weicher Fuß</translation>
    </message>
    <message>
        <source>Most force, cut short</source>
        <translation type="unfinished">Größte Kraft, zu kurz geschnitten</translation>
    </message>
    <message>
        <source>Most force, soft foot, relief cut</source>
        <translation type="unfinished">Größte Kraft, weicher Fuß, Entlastungsschnitt</translation>
    </message>
    <message>
        <source>Most force, hard foot</source>
        <translation type="unfinished">Größte Kraft, harter Fuß</translation>
    </message>
    <message>
        <source>Most force, hard foot, relief cut</source>
        <translation type="unfinished">Größte Kraft, harter Fuß, Entlastungsschnitt</translation>
    </message>
    <message>
        <source>Out from the middle, and its condition</source>
        <translation type="unfinished">Von der Mitte nach außen, und die Bedingung dafür</translation>
    </message>
    <message>
        <source>A straight door and two dished ones, the lower tip on the belt's outer lip; and the straight one with the tip on its inner lip, and under a weak roof rail.</source>
        <translation type="unfinished">Eine gerade Tür und zwei eingebeulte, die untere Spitze auf der Außenlippe der Brüstung; und die gerade mit der Spitze auf der Innenlippe und unter einem schwachen Dachholm.</translation>
    </message>
    <message>
        <source>Weak rail: the base gives, that is the rail moves more than the door</source>
        <translation type="unfinished">Schwacher Holm: die Unterlage gibt nach, das heißt, der Holm bewegt sich mehr als die Tür</translation>
    </message>
    <message>
        <source>Sound rail: it does</source>
        <translation type="unfinished">Guter Holm: er tut es</translation>
    </message>
    <message>
        <source>How far the skin's middle goes out, weak rail</source>
        <translation type="unfinished">Wie weit die Mitte der Außenhaut hinausgeht, schwacher Holm</translation>
    </message>
    <message>
        <source>Straight door, outer lip: the skin's middle folds out</source>
        <translation type="unfinished">Gerade Tür, Außenlippe: die Mitte der Außenhaut faltet nach außen</translation>
    </message>
    <message>
        <source>Straight door, inner lip: it does</source>
        <translation type="unfinished">Gerade Tür, Innenlippe: sie tut es</translation>
    </message>
    <message>
        <source>Straight door, inner lip: the inner panel's middle folds in</source>
        <translation type="unfinished">Gerade Tür, Innenlippe: die Mitte des Innenblechs faltet nach innen</translation>
    </message>
    <message>
        <source>Dished by 60 mm, outer lip: the skin's middle folds out</source>
        <translation type="unfinished">60 mm eingebeult, Außenlippe: die Mitte der Außenhaut faltet nach außen</translation>
    </message>
    <message>
        <source>Dished by 180 mm, outer lip: it does</source>
        <translation type="unfinished">180 mm eingebeult, Außenlippe: sie tut es</translation>
    </message>
    <message>
        <source>Dished by 180 mm: the skin's middle is still inboard of its place at the end</source>
        <translation type="unfinished">180 mm eingebeult: die Mitte der Außenhaut liegt am Ende noch innerhalb ihres Platzes</translation>
    </message>
    <message>
        <source>How far the skin's middle goes out, straight, outer lip</source>
        <translation type="unfinished">Wie weit die Mitte der Außenhaut hinausgeht, gerade, Außenlippe</translation>
    </message>
    <message>
        <source>The same, inner lip</source>
        <translation type="unfinished">Dasselbe, Innenlippe</translation>
    </message>
    <message>
        <source>The same, dished by 60 mm</source>
        <translation type="unfinished">Dasselbe, 60 mm eingebeult</translation>
    </message>
    <message>
        <source>The same, dished by 180 mm</source>
        <translation type="unfinished">Dasselbe, 180 mm eingebeult</translation>
    </message>
    <message>
        <source>How far the inner panel's middle goes out, straight, inner lip</source>
        <translation type="unfinished">Wie weit die Mitte des Innenblechs hinausgeht, gerade, Innenlippe</translation>
    </message>
    <message>
        <source>Ram school: head, surface, place and base</source>
        <translation type="unfinished">Zylinderschule: Kopf, Oberfläche, Stelle und Unterlage</translation>
    </message>
    <message>
        <source>A side opened, the pillar free at its head. A grooved head on rubber, paint and bare metal; a smooth and a pointed head; off the middle and set again; a base without a rib and with one; stages.</source>
        <translation type="unfinished">Eine geöffnete Seite, die Säule am Kopf frei. Ein geriffelter Kopf auf Gummi, Lack und blankem Metall; ein glatter und ein spitzer Kopf; neben der Mitte und neu gesetzt; eine Unterlage ohne Rippe und mit einer; Stufen.</translation>
    </message>
    <message>
        <source>On rubber a seat slips</source>
        <translation type="unfinished">Auf Gummi rutscht ein Sitz</translation>
    </message>
    <message>
        <source>On paint a seat slips</source>
        <translation type="unfinished">Auf Lack rutscht ein Sitz</translation>
    </message>
    <message>
        <source>On bare metal, grooved head, a seat slips</source>
        <translation type="unfinished">Auf blankem Metall, geriffelter Kopf, rutscht ein Sitz</translation>
    </message>
    <message>
        <source>On bare metal, smooth head, a seat slips</source>
        <translation type="unfinished">Auf blankem Metall, glatter Kopf, rutscht ein Sitz</translation>
    </message>
    <message>
        <source>On bare metal, points, a seat slips</source>
        <translation type="unfinished">Auf blankem Metall, Spitzen, rutscht ein Sitz</translation>
    </message>
    <message>
        <source>Rubber less paint</source>
        <translation type="unfinished">Gummi weniger Lack</translation>
    </message>
    <message>
        <source>Paint less bare metal</source>
        <translation type="unfinished">Lack weniger blankes Metall</translation>
    </message>
    <message>
        <source>Smooth less grooved</source>
        <translation type="unfinished">Glatt weniger geriffelt</translation>
    </message>
    <message>
        <source>Grooved less points</source>
        <translation type="unfinished">Geriffelt weniger Spitzen</translation>
    </message>
    <message>
        <source>Points cut or go through the sheet</source>
        <translation type="unfinished">Spitzen schneiden oder gehen durch das Blech</translation>
    </message>
    <message>
        <source>The ram presses further on paint than on rubber</source>
        <translation type="unfinished">Der Zylinder drückt auf Lack weiter als auf Gummi</translation>
    </message>
    <message>
        <source>Further on bare metal than on paint</source>
        <translation type="unfinished">Auf blankem Metall weiter als auf Lack</translation>
    </message>
    <message>
        <source>Grooved on bare metal, the line ends within 5 degrees of square</source>
        <translation type="unfinished">Geriffelt auf blankem Metall endet die Linie höchstens 5 Grad neben der Senkrechten</translation>
    </message>
    <message>
        <source>Angle off square at first, grooved on bare metal</source>
        <translation type="unfinished">Winkel zur Senkrechten am Anfang, geriffelt auf blankem Metall</translation>
    </message>
    <message>
        <source>Angle off square at the end</source>
        <translation type="unfinished">Winkel zur Senkrechten am Ende</translation>
    </message>
    <message>
        <source>What is left of the head's angle at first, off the middle</source>
        <translation type="unfinished">Was am Anfang vom Winkel des Kopfs übrig ist, neben der Mitte</translation>
    </message>
    <message>
        <source>The same, eased and set again nearer to it</source>
        <translation type="unfinished">Dasselbe, entlastet und näher daran neu gesetzt</translation>
    </message>
    <message>
        <source>Without a rib the foot sinks 10 mm or more</source>
        <translation type="unfinished">Ohne Rippe sinkt der Fuß 10 mm oder mehr ein</translation>
    </message>
    <message>
        <source>With a rib it does</source>
        <translation type="unfinished">Mit Rippe tut er es</translation>
    </message>
    <message>
        <source>Without a rib the ram needs 25 kN or less</source>
        <translation type="unfinished">Ohne Rippe braucht der Zylinder 25 kN oder weniger</translation>
    </message>
    <message>
        <source>Sinks 10 mm at 25 kN or less</source>
        <translation type="unfinished">Sinkt 10 mm ein bei 25 kN oder weniger</translation>
    </message>
    <message>
        <source>How deep the foot sinks without a rib</source>
        <translation type="unfinished">Wie tief der Fuß ohne Rippe einsinkt</translation>
    </message>
    <message>
        <source>How deep with a rib</source>
        <translation type="unfinished">Wie tief mit Rippe</translation>
    </message>
    <message>
        <source>The next stage comes</source>
        <translation type="unfinished">Die nächste Stufe kommt</translation>
    </message>
    <message>
        <source>The ram stalls</source>
        <translation type="unfinished">Der Zylinder bleibt stehen</translation>
    </message>
    <message>
        <source>Most force of the small stepped ram</source>
        <translation type="unfinished">Größte Kraft des kleinen Stufenzylinders</translation>
    </message>
    <message>
        <source>After the squeeze the patient's room is never less than 15 mm below its start</source>
        <translation type="unfinished">Nach dem Quetschen ist der Raum des Patienten nie mehr als 15 mm unter seinem Anfang</translation>
    </message>
    <message>
        <source>Squeezed, then pushed: the skin's or the inner panel's middle folds in</source>
        <translation type="unfinished">Gequetscht, dann gedrückt: die Mitte von Außenhaut oder Innenblech faltet nach innen</translation>
    </message>
    <message>
        <source>Pushed alone: it does</source>
        <translation type="unfinished">Nur gedrückt: sie tut es</translation>
    </message>
    <message>
        <source>Squeezed at the end, then from the top: it does</source>
        <translation type="unfinished">Am Ende gequetscht, dann von oben: sie tut es</translation>
    </message>
    <message>
        <source>Squeezed less alone</source>
        <translation type="unfinished">Gequetscht weniger nur gedrückt</translation>
    </message>
    <message>
        <source>Squeezed, then pushed: the inner panel's middle folds in</source>
        <translation type="unfinished">Gequetscht, dann gedrückt: die Mitte des Innenblechs faltet nach innen</translation>
    </message>
    <message>
        <source>The skin's middle goes further out in the push alone than after the squeeze</source>
        <translation type="unfinished">Die Mitte der Außenhaut geht beim Drücken allein weiter hinaus als nach dem Quetschen</translation>
    </message>
    <message>
        <source>How far the skin's middle goes out in the push, squeezed before</source>
        <translation type="unfinished">Wie weit die Mitte der Außenhaut beim Drücken hinausgeht, vorher gequetscht</translation>
    </message>
    <message>
        <source>The inner panel's middle</source>
        <translation type="unfinished">Die Mitte des Innenblechs</translation>
    </message>
    <message>
        <source>The skin's middle, pushed alone</source>
        <translation type="unfinished">Die Mitte der Außenhaut, nur gedrückt</translation>
    </message>
    <message>
        <source>The inner panel's middle, pushed alone</source>
        <translation type="unfinished">Die Mitte des Innenblechs, nur gedrückt</translation>
    </message>
    <message>
        <source>Squeezed, then pushed: the latch lets go</source>
        <translation type="unfinished">Gequetscht, dann gedrückt: das Schloss gibt frei</translation>
    </message>
    <message>
        <source>Pushed alone: the latch lets go</source>
        <translation type="unfinished">Nur gedrückt: das Schloss gibt frei</translation>
    </message>
    <message>
        <source>Squeezed at the end: the latch lets go or is exposed</source>
        <translation type="unfinished">Am Ende gequetscht: das Schloss gibt frei oder liegt offen</translation>
    </message>
    <message>
        <source>Three doors: where the verdict stays</source>
        <translation type="unfinished">Drei Türen: wo das Urteil bleibt</translation>
    </message>
    <message>
        <source>A welded steel, a bonded steel and a bonded alloy door, each with its latch jammed: on the hem lip, and from the top down.</source>
        <translation type="unfinished">Eine geschweißte und eine geklebte Stahltür und eine geklebte Aluminiumtür, jede mit verklemmtem Schloss: auf der Falzkante, und von oben hinunter.</translation>
    </message>
    <message>
        <source>From the top the latch lets go, the striker comes out or it is exposed: bonded</source>
        <translation type="unfinished">Von oben gibt das Schloss frei, kommt der Schließkeil heraus oder liegt es offen: geklebt</translation>
    </message>
    <message>
        <source>From the edge it does: bonded</source>
        <translation type="unfinished">Vom Rand aus tut es das: geklebt</translation>
    </message>
    <message>
        <source>From the top the latch lets go, the striker comes out or it is exposed: welded</source>
        <translation type="unfinished">Von oben gibt das Schloss frei, kommt der Schließkeil heraus oder liegt es offen: geschweißt</translation>
    </message>
    <message>
        <source>From the edge it does: welded</source>
        <translation type="unfinished">Vom Rand aus tut es das: geschweißt</translation>
    </message>
    <message>
        <source>From the top the latch lets go, the striker comes out or it is exposed: alloy</source>
        <translation type="unfinished">Von oben gibt das Schloss frei, kommt der Schließkeil heraus oder liegt es offen: Aluminium</translation>
    </message>
    <message>
        <source>From the edge it does: alloy</source>
        <translation type="unfinished">Vom Rand aus tut es das: Aluminium</translation>
    </message>
    <message>
        <source>More seam parts and sheet tears from the edge than from the top: bonded</source>
        <translation type="unfinished">Vom Rand aus geht mehr Naht auf und reißt mehr Blech als von oben: geklebt</translation>
    </message>
    <message>
        <source>More seam parts and sheet tears from the edge than from the top: welded</source>
        <translation type="unfinished">Vom Rand aus geht mehr Naht auf und reißt mehr Blech als von oben: geschweißt</translation>
    </message>
    <message>
        <source>More seam parts and sheet tears from the edge than from the top: alloy</source>
        <translation type="unfinished">Vom Rand aus geht mehr Naht auf und reißt mehr Blech als von oben: Aluminium</translation>
    </message>
    <message>
        <source>All three in the same draw</source>
        <translation type="unfinished">Alle drei in derselben Ziehung</translation>
    </message>
    <message>
        <source>From the edge the force falls in jerks more than 1.3 times as much, welded over bonded</source>
        <translation type="unfinished">Vom Rand aus fällt die Kraft in Rucken mehr als 1,3-mal so viel, geschweißt gegen geklebt</translation>
    </message>
    <message>
        <source>From the top the same part gives first, welded and bonded</source>
        <translation type="unfinished">Von oben gibt dasselbe Teil zuerst nach, geschweißt und geklebt</translation>
    </message>
    <message>
        <source>From the top the same part gives first, alloy and bonded</source>
        <translation type="unfinished">Von oben gibt dasselbe Teil zuerst nach, Aluminium und geklebt</translation>
    </message>
    <message>
        <source>From the edge the same part gives first, welded and bonded</source>
        <translation type="unfinished">Vom Rand aus gibt dasselbe Teil zuerst nach, geschweißt und geklebt</translation>
    </message>
    <message>
        <source>From the edge the same part gives first, alloy and bonded</source>
        <translation type="unfinished">Vom Rand aus gibt dasselbe Teil zuerst nach, Aluminium und geklebt</translation>
    </message>
    <message>
        <source>Seam parted from the edge: bonded</source>
        <translation type="unfinished">Naht vom Rand aus aufgegangen: geklebt</translation>
    </message>
    <message>
        <source>Seam parted from the edge: welded</source>
        <translation type="unfinished">Naht vom Rand aus aufgegangen: geschweißt</translation>
    </message>
    <message>
        <source>Seam parted from the edge: alloy</source>
        <translation type="unfinished">Naht vom Rand aus aufgegangen: Aluminium</translation>
    </message>
    <message>
        <source>Seam parted from the top: bonded</source>
        <translation type="unfinished">Naht von oben aufgegangen: geklebt</translation>
    </message>
    <message>
        <source>Seam parted from the top: welded</source>
        <translation type="unfinished">Naht von oben aufgegangen: geschweißt</translation>
    </message>
    <message>
        <source>Seam parted from the top: alloy</source>
        <translation type="unfinished">Naht von oben aufgegangen: Aluminium</translation>
    </message>
    <message>
        <source>Sheet torn from the top: bonded</source>
        <translation type="unfinished">Blech von oben gerissen: geklebt</translation>
    </message>
    <message>
        <source>Sheet torn from the top: welded</source>
        <translation type="unfinished">Blech von oben gerissen: geschweißt</translation>
    </message>
    <message>
        <source>Sheet torn from the top: alloy</source>
        <translation type="unfinished">Blech von oben gerissen: Aluminium</translation>
    </message>
    <message>
        <source>Most force from the top: bonded</source>
        <translation type="unfinished">Größte Kraft von oben: geklebt</translation>
    </message>
    <message>
        <source>Most force from the top: welded</source>
        <translation type="unfinished">Größte Kraft von oben: geschweißt</translation>
    </message>
    <message>
        <source>Most force from the top: alloy</source>
        <translation type="unfinished">Größte Kraft von oben: Aluminium</translation>
    </message>
    <message>
        <source>First bite</source>
        <translation type="unfinished">Erster Ansatz</translation>
    </message>
    <message>
        <source>Narrow tips on the hem lip: the moment the first thing gave.</source>
        <translation type="unfinished">Schmale Spitzen auf der Falzkante: der Moment, in dem das Erste nachgab.</translation>
    </message>
    <message>
        <source>Narrow tips on the hem lip, to the end.</source>
        <translation type="unfinished">Schmale Spitzen auf der Falzkante, bis zum Ende.</translation>
    </message>
    <message>
        <source>The same tips behind the inner bend, to the end.</source>
        <translation type="unfinished">Dieselben Spitzen hinter der inneren Biegung, bis zum Ende.</translation>
    </message>
    <message>
        <source>skin; door skin; outer panel</source>
        <translation type="unfinished">Haut; Türhaut; Außenblech</translation>
    </message>
    <message>
        <source>folded edge; rolled edge; return flange</source>
        <translation type="unfinished">Umbug; Bördel; gefalzter Rand</translation>
    </message>
    <message>
        <source>hem lip; door edge; edge</source>
        <translation type="unfinished">Falzrand; Türkante; Kante</translation>
    </message>
    <message>
        <source>bond line; glue line; skin bond; welded seam</source>
        <translation type="unfinished">Klebenaht; Kleberaupe; Falznaht; Schweißnaht</translation>
    </message>
    <message>
        <source>end face; closing face; door end; jamb face</source>
        <translation type="unfinished">Schließfläche; Türende; Schlossseite</translation>
    </message>
    <message>
        <source>inside corner; inner edge; inner fold</source>
        <translation type="unfinished">Innenkante; innere Ecke; inneres Eck</translation>
    </message>
    <message>
        <source>inner; inner skin; door frame sheet</source>
        <translation type="unfinished">innere Türschale; Innenschale; Türrahmenblech</translation>
    </message>
    <message>
        <source>window rail; window sill; waist line; belt</source>
        <translation type="unfinished">Fensterbrüstung; Gürtellinie; Fensterschacht</translation>
    </message>
    <message>
        <source>intrusion beam; side impact bar; door beam; reinforcement</source>
        <translation type="unfinished">Seitenaufprallträger; Seitenaufprallschutz; Türverstärkung; Verstärkungsrohr</translation>
    </message>
    <message>
        <source>lock; door lock; rotor</source>
        <translation type="unfinished">Türschloss; Drehfalle; Schlossfalle</translation>
    </message>
    <message>
        <source>pin; latch pin; striker pin; bolt</source>
        <translation type="unfinished">Schließbügel; Schließzapfen; Schließbolzen; Bolzen</translation>
    </message>
    <message>
        <source>upper hinge; lower hinge; hinge leaf</source>
        <translation type="unfinished">Türband; Band; Scharnierblatt</translation>
    </message>
    <message>
        <source>post; B-post; B-pillar; centre post</source>
        <translation type="unfinished">B-Säule; Mittelsäule; Holm zwischen den Türen; Pfosten</translation>
    </message>
    <message>
        <source>sill; rocker panel; side sill</source>
        <translation type="unfinished">Türschweller; Seitenschweller; Einstieg</translation>
    </message>
    <message>
        <source>cant rail; roof edge; side rail</source>
        <translation type="unfinished">Dachkante; Dachrahmen; seitlicher Dachträger</translation>
    </message>
    <message>
        <source>gas generator; bag cylinder</source>
        <translation type="unfinished">Gaspatrone; Druckgasspeicher</translation>
    </message>
    <message>
        <source>pretensioner; belt reel</source>
        <translation type="unfinished">Straffer; Gurtaufroller</translation>
    </message>
    <message>
        <source>wide-tip spreader; hydraulic spreader; arms</source>
        <translation type="unfinished">hydraulischer Spreizer; Rettungsspreizer; Spreizerarme</translation>
    </message>
    <message>
        <source>combination tool; combi tool; cutter-spreader</source>
        <translation type="unfinished">Kombigerät; kombiniertes Rettungsgerät; Schneidspreizer</translation>
    </message>
    <message>
        <source>entry bar; pry bar; hand lever</source>
        <translation type="unfinished">Brecheisen; Stemmeisen; Handhebel</translation>
    </message>
    <message>
        <source>jack; hydraulic ram; pusher</source>
        <translation type="unfinished">Zylinder; Hydraulikzylinder; Drücker</translation>
    </message>
    <message>
        <source>tool tip; jaw end; tine</source>
        <translation type="unfinished">Spreizspitze; Backenende; Zinke</translation>
    </message>
    <message>
        <source>insertion; how deep the tips are; bite depth</source>
        <translation type="unfinished">Eindringtiefe; wie tief die Spitzen sitzen; Ansatztiefe</translation>
    </message>
    <message>
        <source>purchase point; access point; set-up; first bite</source>
        <translation type="unfinished">Ansatzpunkt; Öffnung zum Ansetzen; erster Ansatz</translation>
    </message>
    <message>
        <source>open; pop; force</source>
        <translation type="unfinished">aufdrücken; öffnen; aufbrechen</translation>
    </message>
    <message>
        <source>pinch; crush with the tips; close</source>
        <translation type="unfinished">zusammendrücken; klemmen; schließen</translation>
    </message>
    <message>
        <source>let off; release the tool; back off</source>
        <translation type="unfinished">lösen; Druck ablassen; zurückfahren</translation>
    </message>
    <message>
        <source>weakening cut; notch</source>
        <translation type="unfinished">Schwächungsschnitt; Kerbe</translation>
    </message>
    <message>
        <source>peeling; skinning; skinning out; unzipping the skin</source>
        <translation type="unfinished">Aufschälen; Abschälen; die Haut abziehen; die Haut löst sich</translation>
    </message>
    <message>
        <source>tearing; ripping; shredding</source>
        <translation type="unfinished">Reißen; Einreißen; Zerreißen</translation>
    </message>
    <message>
        <source>rolling out; buckling out; laying out</source>
        <translation type="unfinished">nach außen rollen; nach außen beulen; nach außen umlegen</translation>
    </message>
    <message>
        <source>bunching in; coming in; buckling in</source>
        <translation type="unfinished">hereinkommen; nach innen stauchen; nach innen beulen</translation>
    </message>
    <message>
        <source>pops; lets go; releases; door popped</source>
        <translation type="unfinished">springt auf; lässt los; löst sich; Tür ist auf</translation>
    </message>
    <message>
        <source>walking; kicking out; rolling off; skating</source>
        <translation type="unfinished">wandern; herausspringen; abrollen; abgleiten</translation>
    </message>
    <message>
        <source>bottomed out; out of force; won't move</source>
        <translation type="unfinished">am Anschlag; keine Kraft mehr; bewegt sich nicht</translation>
    </message>
    <message>
        <source>sinking; punching in; pushing through</source>
        <translation type="unfinished">einsinken; eindrücken; durchdrücken</translation>
    </message>
    <message>
        <source>jammed; hung up; stuck; wedged</source>
        <translation type="unfinished">verklemmt; hängt fest; sitzt fest; verkeilt</translation>
    </message>
    <message>
        <source>clearance; space; survival space</source>
        <translation type="unfinished">Abstand; Platz; Überlebensraum</translation>
    </message>
    <message>
        <source>depends; could go either way</source>
        <translation type="unfinished">kommt darauf an; kann so oder so gehen</translation>
    </message>
    <message>
        <source>soft protection; hard protection; shield</source>
        <translation type="unfinished">weicher Schutz; harter Schutz; Schutzdecke</translation>
    </message>
    <message>
        <source>Outer skin</source>
        <translation type="unfinished">Außenhaut</translation>
    </message>
    <message>
        <source>Hem and seam</source>
        <translation type="unfinished">Falz und Naht</translation>
    </message>
    <message>
        <source>Shut face and inner bend</source>
        <translation type="unfinished">Stirnfläche und innere Biegung</translation>
    </message>
    <message>
        <source>On the lip: the end</source>
        <translation type="unfinished">Auf der Falzkante: das Ende</translation>
    </message>
    <message>
        <source>Behind the bend: the end</source>
        <translation type="unfinished">Hinter der Biegung: das Ende</translation>
    </message>
    <message>
        <source>on the hem, at the latch</source>
        <translation type="unfinished">auf dem Falz, am Schloss</translation>
    </message>
    <message>
        <source>On the outer lip</source>
        <translation type="unfinished">Auf der Außenlippe</translation>
    </message>
    <message>
        <source>Cut short</source>
        <translation type="unfinished">Zu kurz geschnitten</translation>
    </message>
    <message>
        <source>Bonded steel</source>
        <translation type="unfinished">Stahl, geklebt</translation>
    </message>
    <message>
        <source>Bonded steel, the end</source>
        <translation type="unfinished">Stahl, geklebt: das Ende</translation>
    </message>
    <message>
        <source>Welded steel</source>
        <translation type="unfinished">Stahl, geschweißt</translation>
    </message>
    <message>
        <source>Welded steel, the end</source>
        <translation type="unfinished">Stahl, geschweißt: das Ende</translation>
    </message>
    <message>
        <source>Bonded alloy</source>
        <translation type="unfinished">Aluminium, geklebt</translation>
    </message>
    <message>
        <source>Bridge sheet.</source>
        <translation type="unfinished">Brückenblatt.</translation>
    </message>
    <message>
        <source>Behind the inner bend</source>
        <translation type="unfinished">Hinter der inneren Biegung</translation>
    </message>
    <message>
        <source>Spread alone</source>
        <translation type="unfinished">Nur gespreizt</translation>
    </message>
    <message>
        <source>A spread up and down in the window opening starts the door outward, on one lip of the belt and under a rail that holds.</source>
        <translation type="unfinished">Ein Spreizen nach oben und unten in der Fensteröffnung lässt die Tür nach außen beginnen, auf der einen Lippe der Brüstung und unter einem Holm, der hält.</translation>
    </message>
    <message>
        <source>says which lip of the belt the lower tip must stand on, what the upper one pushes against, and what to look for in the first moment of the spread</source>
        <translation type="unfinished">sagt, auf welcher Lippe der Brüstung die untere Spitze stehen muss, wogegen die obere drückt und wonach im ersten Moment des Spreizens zu sehen ist</translation>
    </message>
    <message>
        <source>for a straight and for a dished door with its window gone, under a sound and under a weak roof rail</source>
        <translation type="unfinished">bei einer geraden und bei einer eingebeulten Tür ohne Scheibe, unter einem heilen und unter einem schwachen Dachholm</translation>
    </message>
    <message>
        <source>a door dished by a post, lower tip on the outer lip</source>
        <translation type="unfinished">eine von einem Pfosten eingebeulte Tür, untere Spitze auf der Außenlippe</translation>
    </message>
    <message>
        <source>a door dished far deeper, lower tip on the outer lip</source>
        <translation type="unfinished">eine viel tiefer eingebeulte Tür, untere Spitze auf der Außenlippe</translation>
    </message>
    <message>
        <source>a straight door under a thin rail that has lost its front joint</source>
        <translation type="unfinished">eine gerade Tür unter einem dünnen Holm, der seine vordere Verbindung verloren hat</translation>
    </message>
    <message>
        <source>A dished door: which way now?</source>
        <translation type="unfinished">Eine eingebeulte Tür: wohin jetzt?</translation>
    </message>
    <message>
        <source>A post has pushed the middle of this door in. The outer lip again, the same tool. Which way does the middle of the skin go?</source>
        <translation type="unfinished">Ein Pfosten hat die Mitte dieser Tür eingedrückt. Wieder die Außenlippe, dasselbe Gerät. Wohin geht die Mitte der Außenhaut?</translation>
    </message>
    <message>
        <source>Point at the dent: the skin is no longer bowed the way it was made.
The rule of the two steps before says that a sheet bows further the way it is bowed. Is that all there is?</source>
        <translation type="unfinished">Auf die Beule zeigen: Die Außenhaut ist nicht mehr so gebogen, wie sie gemacht wurde.
Die Regel der beiden Schritte davor sagt, dass ein Blech sich weiter biegt, wie es gebogen ist. Ist das alles?</translation>
    </message>
    <message>
        <source>Out of a shallow dent</source>
        <translation type="unfinished">Aus einer flachen Beule</translation>
    </message>
    <message>
        <source>The middle of the skin moved {shallow.skin}, outward; the straight one had moved {outer.skin}.</source>
        <translation type="unfinished">Die Mitte der Außenhaut ging {shallow.skin} nach außen; die der geraden war {outer.skin} gegangen.</translation>
    </message>
    <message>
        <source>{shallow.sentence}
Look along the push: hardly any bow is left, in or out. The belt under the tip folds outward and draws the skin below it along.
So a bow is one reason, and where the tip stands is another.</source>
        <translation type="unfinished">{shallow.sentence}
In Richtung des Drucks sehen: Es ist kaum eine Wölbung übrig, weder nach innen noch nach außen. Die Brüstung unter der Spitze faltet sich nach außen und zieht die Außenhaut darunter mit.
Eine Wölbung ist also ein Grund, und wo die Spitze steht, ein anderer.</translation>
    </message>
    <message>
        <source>A deep dent: what gives first?</source>
        <translation type="unfinished">Eine tiefe Beule: Was gibt zuerst nach?</translation>
    </message>
    <message>
        <source>The same post, much further in. The outer lip again. Does anything let go, and what first?</source>
        <translation type="unfinished">Derselbe Pfosten, viel weiter drin. Wieder die Außenlippe. Gibt etwas nach, und was zuerst?</translation>
    </message>
    <message>
        <source>What has the crash already used up of the seam? Look along the edge before the answers are locked.</source>
        <translation type="unfinished">Was hat der Unfall von der Naht schon verbraucht? An der Kante entlangsehen, bevor die Antworten festgelegt werden.</translation>
    </message>
    <message>
        <source>Out of a deep dent, at a price</source>
        <translation type="unfinished">Aus einer tiefen Beule, um einen Preis</translation>
    </message>
    <message>
        <source>First to give: {deep.first}, with the tips open {deep.first_opening}. More of the seam parted: {deep.parted}. The middle of the skin moved {deep.skin}, outward.</source>
        <translation type="unfinished">Zuerst gab nach: {deep.first}, bei {deep.first_opening} Öffnung der Spitzen. Weiter aufgegangene Naht: {deep.parted}. Die Mitte der Außenhaut ging {deep.skin} nach außen.</translation>
    </message>
    <message>
        <source>What does the upper tip push on?</source>
        <translation type="unfinished">Worauf drückt die obere Spitze?</translation>
    </message>
    <message>
        <source>A straight door and the outer lip, as at first. But the roof rail is thin, and its joint at the front has been cut. What moves?</source>
        <translation type="unfinished">Eine gerade Tür und die Außenlippe, wie am Anfang. Aber der Dachholm ist dünn, und seine Verbindung vorn ist durchtrennt. Was bewegt sich?</translation>
    </message>
    <message>
        <source>Every push has two ends. Which of the two is the stiffer now?</source>
        <translation type="unfinished">Jeder Druck hat zwei Enden. Welches von beiden ist jetzt das steifere?</translation>
    </message>
    <message>
        <source>The roof moves and not the door</source>
        <translation type="unfinished">Das Dach bewegt sich und nicht die Tür</translation>
    </message>
    <message>
        <source>{weak.sentence} The most the tips pushed was {weak.peak_force}; under the sound rail it was {outer.peak_force}.</source>
        <translation type="unfinished">{weak.sentence} Höchstens drückten die Spitzen mit {weak.peak_force}; unter dem heilen Holm waren es {outer.peak_force}.</translation>
    </message>
    <message>
        <source>It gave when the tips were open {weak.first_opening}. From the tool it feels like an easy door.
Who of the crew looks up? Above the rail is the roof, and below it a head.</source>
        <translation type="unfinished">Er gab nach, als die Spitzen {weak.first_opening} offen waren. Am Gerät fühlt es sich an wie eine leichte Tür.
Wer von der Mannschaft sieht nach oben? Über dem Holm ist das Dach, und darunter ein Kopf.</translation>
    </message>
    <message>
        <source>Which lip, which dent, which rail. Where they are not sure: not settled is an answer.
Then let them break one of the conditions in the plan, and run it.</source>
        <translation type="unfinished">Welche Lippe, welche Beule, welcher Holm. Wo sie nicht sicher sind: nicht gesichert ist eine Antwort.
Dann eine der Bedingungen im Plan verletzen und ausführen lassen.</translation>
    </message>
    <message>
        <source>A door dished by a post, lower tip on the outer lip. Which way does the middle of the skin go?</source>
        <translation type="unfinished">Eine von einem Pfosten eingebeulte Tür, untere Spitze auf der Außenlippe. Wohin geht die Mitte der Außenhaut?</translation>
    </message>
    <message>
        <source>Look at the belt, where the push begins: which way can it fold?</source>
        <translation type="unfinished">Auf die Brüstung sehen, wo der Druck beginnt: Wohin kann sie sich falten?</translation>
    </message>
    <message>
        <source>The belt under the tip folds outward and draws the dented skin below it along.</source>
        <translation type="unfinished">Die Brüstung unter der Spitze faltet sich nach außen und zieht die eingebeulte Außenhaut darunter mit.</translation>
    </message>
    <message>
        <source>A door dished far deeper, lower tip on the outer lip. What gives first?</source>
        <translation type="unfinished">Eine viel tiefer eingebeulte Tür, untere Spitze auf der Außenlippe. Was gibt zuerst nach?</translation>
    </message>
    <message>
        <source>How was the edge pulled when the middle went in?</source>
        <translation type="unfinished">Wie wurde an der Kante gezogen, als die Mitte hineinging?</translation>
    </message>
    <message>
        <source>As the dent comes out the skin pulls at an edge that the crash has pulled at before, and its seam goes on parting.</source>
        <translation type="unfinished">Während die Beule herauskommt, zieht die Außenhaut an einer Kante, an der schon der Unfall gezogen hat, und ihre Naht geht weiter auf.</translation>
    </message>
    <message>
        <source>The door dished far deeper, to the end: which way has the middle of the skin gone in this push?</source>
        <translation type="unfinished">Die viel tiefer eingebeulte Tür, bis zum Ende: Wohin ist die Mitte der Außenhaut bei diesem Druck gegangen?</translation>
    </message>
    <message>
        <source>Which way did it go out of the shallow dent?</source>
        <translation type="unfinished">Wohin ging sie aus der flachen Beule?</translation>
    </message>
    <message>
        <source>It comes part of the way back out. In this dent; another shape may do otherwise.</source>
        <translation type="unfinished">Sie kommt einen Teil des Weges wieder heraus. Bei dieser Beule; eine andere Form kann es anders machen.</translation>
    </message>
    <message>
        <source>A straight door, the outer lip, and a thin roof rail that has lost its front joint. What happens first?</source>
        <translation type="unfinished">Eine gerade Tür, die Außenlippe und ein dünner Dachholm, der seine vordere Verbindung verloren hat. Was geschieht zuerst?</translation>
    </message>
    <message>
        <source>The roof rail moves</source>
        <translation type="unfinished">Der Dachholm bewegt sich</translation>
    </message>
    <message>
        <source>Nothing gives: the door goes out as before</source>
        <translation type="unfinished">Nichts gibt nach: Die Tür geht nach außen wie zuvor</translation>
    </message>
    <message>
        <source>A push has two ends: which is the weaker one?</source>
        <translation type="unfinished">Ein Druck hat zwei Enden: Welches ist das schwächere?</translation>
    </message>
    <message>
        <source>What the upper tip stands on is the weaker side, so it goes and the door stays.</source>
        <translation type="unfinished">Worauf die obere Spitze steht, ist die schwächere Seite; also geht sie, und die Tür bleibt.</translation>
    </message>
    <message>
        <source>Under the weak rail, to the end: which way has the middle of the skin gone?</source>
        <translation type="unfinished">Unter dem schwachen Holm, bis zum Ende: Wohin ist die Mitte der Außenhaut gegangen?</translation>
    </message>
    <message>
        <source>Where did the tips' opening go?</source>
        <translation type="unfinished">Wohin ging die Öffnung der Spitzen?</translation>
    </message>
    <message>
        <source>The opening of the tips has gone into the rail.</source>
        <translation type="unfinished">Die Öffnung der Spitzen ging in den Holm.</translation>
    </message>
    <message>
        <source>The skin comes out of a shallow dent and, in these runs, out of a deep one.</source>
        <translation type="unfinished">Die Außenhaut kommt aus einer flachen Beule heraus und, in diesen Rechnungen, aus einer tiefen.</translation>
    </message>
    <message>
        <source>Out of the deep dent the seam parts; out of the shallow one nothing gives.</source>
        <translation type="unfinished">Aus der tiefen Beule geht die Naht auf; aus der flachen gibt nichts nach.</translation>
    </message>
    <message>
        <source>Under a weak rail that has lost its front joint the door's skin hardly moves.</source>
        <translation type="unfinished">Unter einem schwachen Holm, der seine vordere Verbindung verloren hat, bewegt sich die Außenhaut der Tür kaum.</translation>
    </message>
    <message>
        <source>A door dished deep need not start outward. (In the runs shown both dished doors did.)</source>
        <translation type="unfinished">Eine tief eingebeulte Tür muss nicht nach außen beginnen. (In den gezeigten Rechnungen taten es beide eingebeulten.)</translation>
    </message>
    <message>
        <source>Under a weak or cut roof rail the roof moves instead of the door.</source>
        <translation type="unfinished">Unter einem schwachen oder durchtrennten Dachholm bewegt sich das Dach statt der Tür.</translation>
    </message>
    <message>
        <source>Reads the dent</source>
        <translation type="unfinished">Liest die Beule</translation>
    </message>
    <message>
        <source>says how deep the door is pushed in, what that has done to its edges, and that the answer may turn round</source>
        <translation type="unfinished">sagt, wie tief die Tür eingedrückt ist, was das mit ihren Kanten gemacht hat, und dass die Antwort sich umkehren kann</translation>
    </message>
    <message>
        <source>What is the rule, with its conditions?</source>
        <translation type="unfinished">Wie lautet die Regel, mit ihren Bedingungen?</translation>
    </message>
    <message>
        <source>What would tell you that the roof moves and not the door?</source>
        <translation type="unfinished">Was würde Ihnen sagen, dass das Dach sich bewegt und nicht die Tür?</translation>
    </message>
    <message>
        <source>The upper tip needs something stiffer than the door.</source>
        <translation type="unfinished">Die obere Spitze braucht etwas Steiferes als die Tür.</translation>
    </message>
    <message>
        <source>A dented door starts with what the crash has left of it; not settled is an answer.</source>
        <translation type="unfinished">Eine eingebeulte Tür beginnt mit dem, was der Unfall von ihr übrig ließ; nicht gesichert ist eine Antwort.</translation>
    </message>
    <message>
        <source>Two dents, both by one post in one place. The trade warns that a deep dent can turn the answer round; in these runs it did not: the skin came back out of both, out of the deep one with its seam parting. One shape of dent does not settle it.</source>
        <translation type="unfinished">Zwei Beulen, beide von einem Pfosten an einer Stelle. Die Praxis warnt, dass eine tiefe Beule die Antwort umkehren kann; in diesen Rechnungen tat sie es nicht: Die Außenhaut kam aus beiden zurück, aus der tiefen mit aufgehender Naht. Eine Form der Beule entscheidet das nicht.</translation>
    </message>
    <message>
        <source>The two dished doors have a stronger latch and hinges than the straight one, so that a dent holds at its edges, and are solved on a coarser lattice.</source>
        <translation type="unfinished">Die beiden eingebeulten Türen haben ein stärkeres Schloss und stärkere Scharniere als die gerade, damit eine Beule an ihren Rändern hält, und sind auf einem gröberen Gitter gerechnet.</translation>
    </message>
    <message>
        <source>The rail is a box without its roof. In the other runs of this lesson it stands still; the weak one is thin and has lost its front joint. Only both together made it the weaker side.</source>
        <translation type="unfinished">Der Holm ist ein Kasten ohne sein Dach. In den anderen Rechnungen dieser Lektion steht er still; der schwache ist dünn und hat seine vordere Verbindung verloren. Erst beides zusammen machte ihn zur schwächeren Seite.</translation>
    </message>
    <message>
        <source>the foot high on the far pillar, the line coming down on to the wall</source>
        <translation type="unfinished">der Fuß hoch an der fernen Säule, die Linie kommt von oben auf die Wand</translation>
    </message>
    <message>
        <source>the foot low at the far rocker, the line going up to the wall</source>
        <translation type="unfinished">der Fuß tief am fernen Schweller, die Linie geht von unten an die Wand</translation>
    </message>
    <message>
        <source>Where does the line turn?</source>
        <translation type="unfinished">Wohin dreht sich die Linie?</translation>
    </message>
    <message>
        <source>The foot stands higher than the head, and the line is well off square. The pillar folds at its foot: what does the line do?</source>
        <translation type="unfinished">Der Fuß steht höher als der Kopf, und die Linie ist deutlich schräg. Die Säule faltet sich an ihrem Fuß: Was tut die Linie?</translation>
    </message>
    <message>
        <source>Hold a ruler so that it turns about its foot, and a pencil square to it: as the ruler leans out, the pencil's back end rises.
Which of the two feet does that pencil come to point at, the high one or the low one?</source>
        <translation type="unfinished">Ein Lineal so halten, dass es sich um seinen Fuß dreht, und einen Stift senkrecht dazu: Lehnt das Lineal nach außen, hebt sich das hintere Ende des Stifts.
Auf welchen der beiden Füße zeigt der Stift dann, auf den hohen oder den tiefen?</translation>
    </message>
    <message>
        <source>As far off, from below</source>
        <translation type="unfinished">Ebenso schräg, von unten</translation>
    </message>
    <message>
        <source>The same head on the same spot; the foot stands low, at the far rocker, and the line is about as far off square. What does it do now?</source>
        <translation type="unfinished">Derselbe Kopf an derselben Stelle; der Fuß steht tief, am fernen Schweller, und die Linie ist etwa ebenso schräg. Was tut sie jetzt?</translation>
    </message>
    <message>
        <source>One thing is changed: where the other end stands.</source>
        <translation type="unfinished">Eines ist geändert: wo das andere Ende steht.</translation>
    </message>
    <message>
        <source>It walks out of line</source>
        <translation type="unfinished">Er läuft aus der Linie</translation>
    </message>
    <message>
        <source>The foot stands higher than the head, the line well off square. What does the line do as the pillar folds out at its foot?</source>
        <translation type="unfinished">Der Fuß steht höher als der Kopf, die Linie deutlich schräg. Was tut die Linie, während sich die Säule am Fuß nach außen faltet?</translation>
    </message>
    <message>
        <source>Which way does the wall under the head come to face?</source>
        <translation type="unfinished">Wohin schaut die Wand unter dem Kopf dann?</translation>
    </message>
    <message>
        <source>A wall that leans out comes to face upwards, towards a foot that stands high.</source>
        <translation type="unfinished">Eine Wand, die nach außen lehnt, schaut nach oben, zu einem Fuß hin, der hoch steht.</translation>
    </message>
    <message>
        <source>The same head, as far off square, with the foot standing low. What does the line do?</source>
        <translation type="unfinished">Derselbe Kopf, ebenso schräg, der Fuß tief gestellt. Was tut die Linie?</translation>
    </message>
    <message>
        <source>The pillar leans the same way as before.</source>
        <translation type="unfinished">Die Säule lehnt in dieselbe Richtung wie zuvor.</translation>
    </message>
    <message>
        <source>The wall comes to face upwards, away from a foot that stands low.</source>
        <translation type="unfinished">Die Wand schaut nach oben, von einem Fuß weg, der tief steht.</translation>
    </message>
    <message>
        <source>From the low foot, pressed as far as from the high one: what gives first?</source>
        <translation type="unfinished">Vom tiefen Fuß aus, so weit gedrückt wie vom hohen: Was gibt zuerst nach?</translation>
    </message>
    <message>
        <source>How much is left to what a grooved head holds?</source>
        <translation type="unfinished">Wie viel fehlt noch bis zu dem, was ein geriffelter Kopf hält?</translation>
    </message>
    <message>
        <source>The line turns off square until the head holds no longer.</source>
        <translation type="unfinished">Die Linie wird schräger, bis der Kopf nicht mehr hält.</translation>
    </message>
    <message>
        <source>The foot high, or the foot low: from which does the patient get more room by the same length of ram?</source>
        <translation type="unfinished">Der Fuß hoch oder der Fuß tief: Von welchem bekommt der Patient bei gleicher Länge des Zylinders mehr Raum?</translation>
    </message>
    <message>
        <source>What does a ram do that begins to slide?</source>
        <translation type="unfinished">Was tut ein Zylinder, der zu rutschen beginnt?</translation>
    </message>
    <message>
        <source>Not much sets them apart until the head slides: what tells them apart is the hold, not the room.</source>
        <translation type="unfinished">Bis der Kopf rutscht, unterscheidet sie nicht viel: Was sie trennt, ist der Halt, nicht der Raum.</translation>
    </message>
    <message>
        <source>From a high foot the ram comes in line; from a low one it turns out of line.</source>
        <translation type="unfinished">Von einem hohen Fuß aus richtet sich der Zylinder aus; von einem tiefen läuft er aus der Linie.</translation>
    </message>
    <message>
        <source>From a high foot the head holds; from a low one it slips.</source>
        <translation type="unfinished">Von einem hohen Fuß aus hält der Kopf; von einem tiefen rutscht er.</translation>
    </message>
    <message>
        <source>Within the friction angle a ram works and comes in line; beyond it slips; a seal left on slips earlier. (In the runs shown it comes in line from a high foot and turns out of line from a low one.)</source>
        <translation type="unfinished">Innerhalb des Reibungswinkels arbeitet ein Zylinder und richtet sich aus; darüber rutscht er; eine nicht abgenommene Dichtung rutscht früher. (In den gezeigten Rechnungen richtet er sich von einem hohen Fuß aus und läuft von einem tiefen aus der Linie.)</translation>
    </message>
    <message>
        <source>Reads the line</source>
        <translation type="unfinished">Liest die Linie</translation>
    </message>
    <message>
        <source>says before the push which way the line will turn, and where the foot should stand for it</source>
        <translation type="unfinished">sagt vor dem Druck, wohin sich die Linie drehen wird und wo der Fuß dafür stehen sollte</translation>
    </message>
    <message>
        <source>What slipped, what sank, what came in line, and what turned out of it?</source>
        <translation type="unfinished">Was rutschte, was sank ein, was richtete sich aus, und was lief aus der Linie?</translation>
    </message>
    <message>
        <source>A pillar that leans out turns towards a high foot and away from a low one.</source>
        <translation type="unfinished">Eine Säule, die nach außen lehnt, dreht sich zu einem hohen Fuß hin und von einem tiefen weg.</translation>
    </message>
    <message>
        <source>Friction of heads on dirty painted metal is not well known: at which angle a head lets go is shown by order, not by degree.</source>
        <translation type="unfinished">Die Reibung von Köpfen auf schmutzigem, lackiertem Metall ist nicht gut bekannt: Bei welchem Winkel ein Kopf loslässt, wird nach der Reihenfolge gezeigt, nicht nach Grad.</translation>
    </message>
    <message>
        <source>Foot above the head</source>
        <translation type="unfinished">Fuß über dem Kopf</translation>
    </message>
    <message>
        <source>The foot stands high on the far pillar, so the line comes down on to the wall, well off square at first.</source>
        <translation type="unfinished">Der Fuß steht hoch an der fernen Säule, so kommt die Linie von oben auf die Wand, am Anfang deutlich schräg.</translation>
    </message>
    <message>
        <source>Foot below the head</source>
        <translation type="unfinished">Fuß unter dem Kopf</translation>
    </message>
    <message>
        <source>The foot stands low, at the far rocker, so the line goes up to the wall, as far off square at first.</source>
        <translation type="unfinished">Der Fuß steht tief, am fernen Schweller, so geht die Linie von unten an die Wand, am Anfang ebenso schräg.</translation>
    </message>
    <message>
        <source>at the hinge edge: stopped when the upper hinge shows, and cut</source>
        <translation type="unfinished">an der Scharnierkante: angehalten, wenn das obere Scharnier zu sehen ist, und geschnitten</translation>
    </message>
    <message>
        <source>the same spread, not stopped</source>
        <translation type="unfinished">dasselbe Spreizen, nicht angehalten</translation>
    </message>
    <message>
        <source>At the hinge edge: when do you stop?</source>
        <translation type="unfinished">An der Scharnierkante: Wann hören Sie auf?</translation>
    </message>
    <message>
        <source>The door holds, so the other edge: wide tips just past the hem, level with the upper hinge, straight along the car. What gives first, and what are you waiting for?</source>
        <translation type="unfinished">Die Tür hält, also die andere Kante: breite Spitzen knapp hinter dem Falz, auf Höhe des oberen Scharniers, gerade längs des Autos. Was gibt zuerst nach, und worauf warten Sie?</translation>
    </message>
    <message>
        <source>Name what they wait for before the tool moves: the hinge seen from outside, and room round it for the blades. Not more.
In this model the striker of a latch that holds never comes into sight within the tips' way, so the hinge stands for both.</source>
        <translation type="unfinished">Benennen, worauf gewartet wird, bevor sich das Gerät bewegt: das Scharnier von außen zu sehen, und Platz für die Klingen darum. Nicht mehr.
In diesem Modell kommt der Schließkeil eines Schlosses, das hält, auf dem Weg der Spitzen nie in Sicht; so steht das Scharnier für beide.</translation>
    </message>
    <message>
        <source>It shows: stop</source>
        <translation type="unfinished">Es ist zu sehen: halt</translation>
    </message>
    <message>
        <source>The tips are open {seen.opening_of_move_1}, and the hinge shows. Up to here {seen.parted_of_move_1} of seam parted. The spread stops.</source>
        <translation type="unfinished">Die Spitzen sind {seen.opening_of_move_1} offen, und das Scharnier ist zu sehen. Bis hierher gingen {seen.parted_of_move_1} der Naht auf. Das Spreizen endet.</translation>
    </message>
    <message>
        <source>{seen.sentence_of_move_1}
Who says stop: the one at the tool, or the one who looks? Look first whether something other than metal lies at the hinge: wiring, a check strap.</source>
        <translation type="unfinished">{seen.sentence_of_move_1}
Wer sagt halt: wer am Gerät ist oder wer hinsieht? Am Scharnier zuerst nachsehen, ob dort anderes als Metall liegt: Kabel, ein Fangband.</translation>
    </message>
    <message>
        <source>And cut</source>
        <translation type="unfinished">Und schneiden</translation>
    </message>
    <message>
        <source>The tool is off, and the metal has sprung back a little: look again whether the blades fit before they close.
One cut, and whole metal round it. Now the door hangs on the lower hinge and the latch: who holds it before the next cut?</source>
        <translation type="unfinished">Das Gerät ist ab, und das Metall ist ein wenig zurückgefedert: noch einmal sehen, ob die Klingen passen, bevor sie schließen.
Ein Schnitt, und heiles Metall darum. Nun hängt die Tür am unteren Scharnier und am Schloss: Wer hält sie vor dem nächsten Schnitt?</translation>
    </message>
    <message>
        <source>The same spread, not stopped</source>
        <translation type="unfinished">Dasselbe Spreizen, nicht angehalten</translation>
    </message>
    <message>
        <source>Gone on to {on.opening}: {on.parted} of seam parted, against {seen.parted_of_move_1} when stopped. The hinge holds as it did.</source>
        <translation type="unfinished">Weiter bis {on.opening}: {on.parted} der Naht gingen auf, gegen {seen.parted_of_move_1} beim Anhalten. Das Scharnier hält wie zuvor.</translation>
    </message>
    <message>
        <source>Striker or hinge shows, and the blades fit round it. What now?</source>
        <translation type="unfinished">Schließkeil oder Scharnier ist zu sehen, und die Klingen passen darum. Was jetzt?</translation>
    </message>
    <message>
        <source>Stop and cut: a clean cut leaves whole metal. Going on spreading parts more and frees nothing.</source>
        <translation type="unfinished">Anhalten und schneiden: Ein sauberer Schnitt lässt heiles Metall. Weiter zu spreizen öffnet mehr und befreit nichts.</translation>
    </message>
    <message>
        <source>Wide tips just past the hem at the hinge edge, level with the upper hinge. What gives first?</source>
        <translation type="unfinished">Breite Spitzen knapp hinter dem Falz an der Scharnierkante, auf Höhe des oberen Scharniers. Was gibt zuerst nach?</translation>
    </message>
    <message>
        <source>What do the tips bear on, and what holds that at its edge?</source>
        <translation type="unfinished">Woran liegen die Spitzen an, und was hält das an seiner Kante?</translation>
    </message>
    <message>
        <source>The tips roll the edge back, and its seam is the weakest part on the way; the hinge is stronger, so it is cut.</source>
        <translation type="unfinished">Die Spitzen rollen die Kante zurück, und ihre Naht ist das schwächste Teil auf dem Weg; das Scharnier ist stärker, also wird es geschnitten.</translation>
    </message>
    <message>
        <source>Stopped when the hinge shows, or gone on: which parts more of the seam?</source>
        <translation type="unfinished">Angehalten, wenn das Scharnier zu sehen ist, oder weitergemacht: Was öffnet mehr von der Naht?</translation>
    </message>
    <message>
        <source>Does the seam stop parting because something has come into sight?</source>
        <translation type="unfinished">Hört die Naht auf aufzugehen, weil etwas in Sicht gekommen ist?</translation>
    </message>
    <message>
        <source>Every bit of way past the moment goes into the seam.</source>
        <translation type="unfinished">Jedes Stück Weg nach diesem Moment geht in die Naht.</translation>
    </message>
    <message>
        <source>Gone on to the end at the hinge edge: does sheet tear?</source>
        <translation type="unfinished">An der Scharnierkante bis zum Ende weitergemacht: Reißt Blech?</translation>
    </message>
    <message>
        <source>Which is the weaker: the metal of a whole edge, or what holds it?</source>
        <translation type="unfinished">Was ist schwächer: das Metall einer heilen Kante oder das, was sie hält?</translation>
    </message>
    <message>
        <source>The seam lets a whole edge go before it tears. With a nick in it, stop at the first tear: that is the other moment to stop and cut.</source>
        <translation type="unfinished">Die Naht lässt eine heile Kante los, bevor sie reißt. Mit einer Kerbe darin beim ersten Riss anhalten: Das ist der andere Moment, anzuhalten und zu schneiden.</translation>
    </message>
    <message>
        <source>Going on past the moment the hinge shows parts more of the seam.</source>
        <translation type="unfinished">Weiterzumachen, nachdem das Scharnier zu sehen ist, öffnet mehr von der Naht.</translation>
    </message>
    <message>
        <source>As soon as the striker or a hinge shows and the blades fit, cut. (In the runs shown it is a hinge.)</source>
        <translation type="unfinished">Sobald Schließkeil oder ein Scharnier zu sehen ist und die Klingen passen, schneiden. (In den gezeigten Rechnungen ist es ein Scharnier.)</translation>
    </message>
    <message>
        <source>striker or hinge seen, blades fit, spread stopped there, metal left whole</source>
        <translation type="unfinished">Schließkeil oder Scharnier gesehen, Klingen passen, Spreizen dort beendet, Metall heil gelassen</translation>
    </message>
    <message>
        <source>When striker or hinge shows, the cutter finishes.</source>
        <translation type="unfinished">Wenn Schließkeil oder Scharnier zu sehen ist, macht das Schneidgerät fertig.</translation>
    </message>
    <message>
        <source>The upper hinge alone is cut here. What the door does once it hangs on one hinge is another lesson.</source>
        <translation type="unfinished">Hier wird nur das obere Scharnier geschnitten. Was die Tür tut, wenn sie an einem Scharnier hängt, ist eine andere Lektion.</translation>
    </message>
    <message>
        <source>The middle of the skin moved {outer.skin} outward; the inner panel only {outer.inner}.</source>
        <translation type="unfinished">Die Mitte der Außenhaut ging {outer.skin} nach außen; das Innenblech nur {outer.inner}.</translation>
    </message>
    <message>
        <source>Spread on past it</source>
        <translation type="unfinished">Darüber hinaus gespreizt</translation>
    </message>
    <message>
        <source>Wide tips just past the hem roll the door's front edge back level with the upper hinge; when the hinge shows the spread goes on.</source>
        <translation type="unfinished">Breite Spitzen knapp hinter dem Falz rollen die vordere Türkante auf Höhe des oberen Scharniers zurück; wenn das Scharnier zu sehen ist, geht das Spreizen weiter.</translation>
    </message>
    <message>
        <source>Cut when it shows</source>
        <translation type="unfinished">Schneiden, wenn es zu sehen ist</translation>
    </message>
    <message>
        <source>Wide tips just past the hem roll the door's front edge back level with the upper hinge; as soon as the hinge shows the spread stops and the hinge is cut.</source>
        <translation type="unfinished">Breite Spitzen knapp hinter dem Falz rollen die vordere Türkante auf Höhe des oberen Scharniers zurück; sobald das Scharnier zu sehen ist, endet das Spreizen, und das Scharnier wird geschnitten.</translation>
    </message>
    <message>
        <source>The seam parts</source>
        <translation type="unfinished">Die Naht geht auf</translation>
    </message>
    <message>
        <source>Off square at first: {high.off_square}. At the end: {high.off_square_end}. The head holds all the way.</source>
        <translation type="unfinished">Schräg am Anfang: {high.off_square}. Am Ende: {high.off_square_end}. Der Kopf hält den ganzen Weg.</translation>
    </message>
    <message>
        <source>{high.sentence}
The pillar turns towards the line, so the head gains hold as it goes. It need not start square; it must start inside what it holds.
The degrees to spare are those of the worse end: here the foot. Who watches it, high up on the far side?
And look where the ram lies: across the car at the height of shoulders. Beside a patient that place may not be free.</source>
        <translation type="unfinished">{high.sentence}
Die Säule dreht sich zur Linie hin, also gewinnt der Kopf unterwegs an Halt. Er muss nicht senkrecht beginnen; er muss innerhalb dessen beginnen, was er hält.
Die übrigen Grade sind die des schlechteren Endes: hier des Fußes. Wer sieht nach ihm, hoch auf der anderen Seite?
Und ansehen, wo der Zylinder liegt: quer durch das Auto auf Schulterhöhe. Neben einem Patienten ist dieser Platz vielleicht nicht frei.</translation>
    </message>
    <message>
        <source>Off square at first: {low.off_square}. At the end: {low.off_square_end}. The head slips.</source>
        <translation type="unfinished">Schräg am Anfang: {low.off_square}. Am Ende: {low.off_square_end}. Der Kopf rutscht.</translation>
    </message>
    <message>
        <source>{low.sentence}
A pillar that folds at its foot turns away from a line that comes from below.
When would they have eased, and where would they have set it again?</source>
        <translation type="unfinished">{low.sentence}
Eine Säule, die sich am Fuß faltet, dreht sich von einer Linie weg, die von unten kommt.
Wann hätten sie entlastet, und wo hätten sie neu gesetzt?</translation>
    </message>
    <message>
        <source>{strong.sentence}
Here the tool is not the limit; the place is. Let the crews try other depths and find where it turns.</source>
        <translation type="unfinished">{strong.sentence}
Hier ist das Gerät nicht die Grenze; die Stelle ist es. Die Mannschaften andere Tiefen versuchen und finden lassen, wo es umschlägt.</translation>
    </message>
    <message>
        <source>Hands first, then run it. Ease, move toward the middle, press again.
Off the middle: {reset.sentence_of_move_1}
Nearer: {reset.sentence_of_move_3}
A little lower on the wall it came out the other way round, so this one is not settled. Watch the head, wherever it stands.</source>
        <translation type="unfinished">Erst die Hände, dann ausführen. Entlasten, zur Mitte gehen, wieder drücken.
Neben der Mitte: {reset.sentence_of_move_1}
Näher: {reset.sentence_of_move_3}
Etwas tiefer an der Wand ging es andersherum aus, dies ist also nicht gesichert. Nach dem Kopf sehen, wo er auch steht.</translation>
    </message>
    <message>
        <source>The head set well off the middle of the wall. What gives first?</source>
        <translation type="unfinished">Der Kopf deutlich neben der Mitte der Wand gesetzt. Was gibt zuerst nach?</translation>
    </message>
    <message>
        <source>What does a wall do under a head that stands beside its middle?</source>
        <translation type="unfinished">Was tut eine Wand unter einem Kopf, der neben ihrer Mitte steht?</translation>
    </message>
    <message>
        <source>Off the middle the wall turns under the head, and it rolls onto its rim.</source>
        <translation type="unfinished">Neben der Mitte dreht sich die Wand unter dem Kopf, und er rollt auf seinen Rand.</translation>
    </message>
    <message>
        <source>Eased, and set again nearer to the middle of the wall. What gives first now?</source>
        <translation type="unfinished">Entlastet und näher an der Mitte der Wand neu gesetzt. Was gibt jetzt zuerst nach?</translation>
    </message>
    <message>
        <source>What turned under the head before?</source>
        <translation type="unfinished">Was hat sich vorher unter dem Kopf gedreht?</translation>
    </message>
    <message>
        <source>Nearer to the middle the wall hardly turns under the head, so it holds.</source>
        <translation type="unfinished">Näher an der Mitte dreht sich die Wand kaum unter dem Kopf; also hält er.</translation>
    </message>
    <message>
        <source>Whether a head off the middle rolls off hangs on a centimetre of its height: set a little lower it held at first, and slipped when it was set again nearer to the middle.</source>
        <translation type="unfinished">Ob ein Kopf neben der Mitte wegrollt, hängt an einem Zentimeter seiner Höhe: Etwas tiefer gesetzt hielt er zuerst und rutschte, als er näher an der Mitte neu gesetzt war.</translation>
    </message>
    <message>
        <source>{alloy.sentence}
The trade finds alloy tearing sooner; in this model it does so from a nick in the edge. So take smaller steps, and look along the edge first.</source>
        <translation type="unfinished">{alloy.sentence}
Die Praxis findet, dass Aluminium früher reißt; in diesem Modell tut es das von einer Kerbe in der Kante aus. Also kleinere Schritte, und zuerst an der Kante entlangsehen.</translation>
    </message>
    <message>
        <source>{deep.sentence}
Look at the skin's front corner under the window: off its seam it swings out further than anything else. Nobody stands there.
The middle still lies further in than that of a straight door. The trade warns that a deep dent can turn the answer round: it did not here. Treat it as not settled, and watch the inside.
For the plan this is called: {deep.effect}.</source>
        <translation type="unfinished">{deep.sentence}
Auf die vordere Ecke der Außenhaut unter dem Fenster sehen: Von ihrer Naht gelöst schwenkt sie weiter nach außen als alles andere. Niemand steht dort.
Die Mitte liegt noch immer weiter innen als die einer geraden Tür. Die Praxis warnt, dass eine tiefe Beule die Antwort umkehren kann: Hier tat sie es nicht. Als nicht gesichert behandeln und nach innen sehen.
Für den Plan heißt das: {deep.effect}.</translation>
    </message>
    <message>
        <source>bonded seam, steel, from the window frame</source>
        <translation type="unfinished">geklebte Naht, Stahl, vom Fensterrahmen aus</translation>
    </message>
    <message>
        <source>From the window frame: what of the latch?</source>
        <translation type="unfinished">Vom Fensterrahmen aus: Was wird aus dem Schloss?</translation>
    </message>
    <message>
        <source>welded seam, steel, from the window frame</source>
        <translation type="unfinished">geschweißte Naht, Stahl, vom Fensterrahmen aus</translation>
    </message>
    <message>
        <source>bonded seam, alloy, from the window frame</source>
        <translation type="unfinished">geklebte Naht, Aluminium, vom Fensterrahmen aus</translation>
    </message>
    <message>
        <source>From the frame: the other two doors</source>
        <translation type="unfinished">Vom Rahmen aus: die beiden anderen Türen</translation>
    </message>
    <message>
        <source>The same bites on the welded and on the alloy door, both latches jammed. Latch, bite by bite. Welded: {top-welded.latch_of_move_2}, {top-welded.latch_of_move_3}, {top-welded.latch_of_move_4}. Alloy: {top-alloy.latch_of_move_2}, {top-alloy.latch_of_move_3}, {top-alloy.latch_of_move_4} of what it can hold.</source>
        <translation type="unfinished">Dieselben Ansätze an der geschweißten und an der Aluminiumtür, beide Schlösser verklemmt. Das Schloss, Ansatz für Ansatz. Geschweißt: {top-welded.latch_of_move_2}, {top-welded.latch_of_move_3}, {top-welded.latch_of_move_4}. Aluminium: {top-alloy.latch_of_move_2}, {top-alloy.latch_of_move_3}, {top-alloy.latch_of_move_4} von dem, was es halten kann.</translation>
    </message>
    <message>
        <source>Welded, last bite: {top-welded.sentence_of_move_4}
Alloy, last bite: {top-alloy.sentence_of_move_4}
One run each. On a finer lattice the welded door's latch held all three bites, and welds broke instead.</source>
        <translation type="unfinished">Geschweißt, letzter Ansatz: {top-welded.sentence_of_move_4}
Aluminium, letzter Ansatz: {top-alloy.sentence_of_move_4}
Je eine Rechnung. Auf feinerem Gitter hielt das Schloss der geschweißten Tür alle drei Ansätze, und stattdessen brachen Schweißpunkte.</translation>
    </message>
    <message>
        <source>From the window frame the latch is jammed, and which bite frees it is not settled: on a coarser lattice the second does, on a finer one none of the three on either steel door, and a long piece of seam parts. What these steps tell is told of the run shown; their question is talked about and not graded.</source>
        <translation type="unfinished">Vom Fensterrahmen aus ist das Schloss verklemmt, und welcher Ansatz es löst, ist nicht gesichert: Auf gröberem Gitter tut es der zweite, auf feinerem keiner der drei an den beiden Stahltüren, und ein langes Stück Naht geht auf. Was diese Schritte sagen, gilt für die gezeigte Rechnung; ihre Frage wird besprochen und nicht gewertet.</translation>
    </message>
    <message>
        <source>In this run the third bite frees the latch, with the tips open {top-bonded.opening_of_move_4}. Seam parted, bite by bite: {top-bonded.parted_of_move_2}, {top-bonded.parted_of_move_3}, {top-bonded.parted_of_move_4}. On the lip it was {bonded.parted}, and the latch held.</source>
        <translation type="unfinished">In dieser Rechnung löst der dritte Ansatz das Schloss, bei {top-bonded.opening_of_move_4} Öffnung der Spitzen. Aufgegangene Naht, Ansatz für Ansatz: {top-bonded.parted_of_move_2}, {top-bonded.parted_of_move_3}, {top-bonded.parted_of_move_4}. Auf der Falzkante waren es {bonded.parted}, und das Schloss hielt.</translation>
    </message>
    <message>
        <source>First bite: {top-bonded.sentence_of_move_2}
Second: {top-bonded.sentence_of_move_3}
Third: {top-bonded.sentence_of_move_4}
Here too the seam parts, and the high bites free nothing: what tells the two ways apart is the latch. Would a first bite level with the latch have been enough?
Which bite frees a jammed latch is not settled. Say so: on a finer lattice it held all three. When would you change the plan?</source>
        <translation type="unfinished">Erster Ansatz: {top-bonded.sentence_of_move_2}
Zweiter: {top-bonded.sentence_of_move_3}
Dritter: {top-bonded.sentence_of_move_4}
Auch hier geht die Naht auf, und die hohen Ansätze lösen nichts: Was die beiden Wege trennt, ist das Schloss. Hätte ein erster Ansatz auf Höhe des Schlosses gereicht?
Welcher Ansatz ein verklemmtes Schloss löst, ist nicht gesichert. Sagen Sie es: Auf feinerem Gitter hielt es alle drei. Wann würden Sie den Plan wechseln?</translation>
    </message>
    <message>
        <source>In the run shown the bonded door's latch lets go in the third bite from the window frame; on the lip it carries little.</source>
        <translation type="unfinished">In der gezeigten Rechnung gibt das Schloss der geklebten Tür im dritten Ansatz vom Fensterrahmen aus frei; auf der Falzkante trägt es wenig.</translation>
    </message>
    <message>
        <source>The bonded door again, from the other end: a gap at the window frame, then deep bites behind the bend, each lower than the last. The third stands level with the latch. What becomes of the latch?</source>
        <translation type="unfinished">Noch einmal die geklebte Tür, vom anderen Ende: ein Spalt am Fensterrahmen, dann tiefe Ansätze hinter der Biegung, jeder tiefer als der letzte. Der dritte steht auf Höhe des Schlosses. Was wird aus dem Schloss?</translation>
    </message>
    <message>
        <source>What do the tips bear on now? And is the seam spared?</source>
        <translation type="unfinished">Woran liegen die Spitzen jetzt an? Und bleibt die Naht verschont?</translation>
    </message>
    <message>
        <source>From the frame: the third bite</source>
        <translation type="unfinished">Vom Rahmen aus: der dritte Ansatz</translation>
    </message>
    <message>
        <source>Bonded steel, from the window frame and down the edge behind the bend: what becomes of the latch in the third bite?</source>
        <translation type="unfinished">Geklebter Stahl, vom Fensterrahmen aus und die Kante hinab hinter der Biegung: Was wird aus dem Schloss im dritten Ansatz?</translation>
    </message>
    <message>
        <source>What is the inner structure held by, level with the tips?</source>
        <translation type="unfinished">Wovon wird die innere Struktur auf Höhe der Spitzen gehalten?</translation>
    </message>
    <message>
        <source>Behind the bend and level with the latch the push goes through the inner structure to the latch.</source>
        <translation type="unfinished">Hinter der Biegung und auf Höhe des Schlosses geht der Druck durch die innere Struktur zum Schloss.</translation>
    </message>
    <message>
        <source>On the lip the latch lets go on none of the three.</source>
        <translation type="unfinished">Auf der Falzkante gibt das Schloss an keiner der drei frei.</translation>
    </message>
    <message>
        <source>Three doors on the hem lip</source>
        <translation type="unfinished">Drei Türen an der Falzkante</translation>
    </message>
    <message>
        <source>A welded steel, a bonded steel and a bonded alloy door, each with its latch jammed: wide tips on the hem lip.</source>
        <translation type="unfinished">Eine geschweißte und eine geklebte Stahltür und eine geklebte Aluminiumtür, jede mit verklemmtem Schloss: breite Spitzen auf der Falzkante.</translation>
    </message>
    <message>
        <source>The same part gives first, welded and bonded</source>
        <translation type="unfinished">Dasselbe Teil gibt zuerst nach, geschweißt und geklebt</translation>
    </message>
    <message>
        <source>The same part gives first, alloy and bonded</source>
        <translation type="unfinished">Dasselbe Teil gibt zuerst nach, Aluminium und geklebter Stahl</translation>
    </message>
    <message>
        <source>The force falls in jerks more than 1.3 times as much, welded over bonded</source>
        <translation type="unfinished">Die Kraft fällt in Rucken mehr als 1,3-mal so viel, geschweißt gegen geklebt</translation>
    </message>
    <message>
        <source>The force falls in jerks more, welded over bonded</source>
        <translation type="unfinished">Die Kraft fällt in Rucken mehr, geschweißt gegen geklebt</translation>
    </message>
    <message>
        <source>More sheet tears, alloy over bonded steel</source>
        <translation type="unfinished">Mehr Blech reißt, Aluminium gegen geklebten Stahl</translation>
    </message>
    <message>
        <source>The seam parts before the latch lets go: bonded</source>
        <translation type="unfinished">Die Naht löst sich, bevor das Schloss freigibt: geklebt</translation>
    </message>
    <message>
        <source>The latch lets go, the striker comes out or it is exposed: bonded</source>
        <translation type="unfinished">Das Schloss gibt frei, der Schließkeil kommt heraus oder liegt offen: geklebt</translation>
    </message>
    <message>
        <source>The latch carries less than half of what it holds when the seam first parts: bonded</source>
        <translation type="unfinished">Das Schloss trägt weniger als die Hälfte dessen, was es hält, wenn die Naht sich zuerst löst: geklebt</translation>
    </message>
    <message>
        <source>Seam parted: bonded</source>
        <translation type="unfinished">Gelöste Naht: geklebt</translation>
    </message>
    <message>
        <source>Sheet torn: bonded</source>
        <translation type="unfinished">Gerissenes Blech: geklebt</translation>
    </message>
    <message>
        <source>What the force loses in jerks: bonded</source>
        <translation type="unfinished">Was die Kraft in Rucken verliert: geklebt</translation>
    </message>
    <message>
        <source>Most force: bonded</source>
        <translation type="unfinished">Größte Kraft: geklebt</translation>
    </message>
    <message>
        <source>What the latch carries at most, over what it holds: bonded</source>
        <translation type="unfinished">Was das Schloss höchstens trägt, geteilt durch das, was es hält: geklebt</translation>
    </message>
    <message>
        <source>The seam parts before the latch lets go: welded</source>
        <translation type="unfinished">Die Naht löst sich, bevor das Schloss freigibt: geschweißt</translation>
    </message>
    <message>
        <source>The latch lets go, the striker comes out or it is exposed: welded</source>
        <translation type="unfinished">Das Schloss gibt frei, der Schließkeil kommt heraus oder liegt offen: geschweißt</translation>
    </message>
    <message>
        <source>The latch carries less than half of what it holds when the seam first parts: welded</source>
        <translation type="unfinished">Das Schloss trägt weniger als die Hälfte dessen, was es hält, wenn die Naht sich zuerst löst: geschweißt</translation>
    </message>
    <message>
        <source>Seam parted: welded</source>
        <translation type="unfinished">Gelöste Naht: geschweißt</translation>
    </message>
    <message>
        <source>Sheet torn: welded</source>
        <translation type="unfinished">Gerissenes Blech: geschweißt</translation>
    </message>
    <message>
        <source>What the force loses in jerks: welded</source>
        <translation type="unfinished">Was die Kraft in Rucken verliert: geschweißt</translation>
    </message>
    <message>
        <source>Most force: welded</source>
        <translation type="unfinished">Größte Kraft: geschweißt</translation>
    </message>
    <message>
        <source>What the latch carries at most, over what it holds: welded</source>
        <translation type="unfinished">Was das Schloss höchstens trägt, geteilt durch das, was es hält: geschweißt</translation>
    </message>
    <message>
        <source>The seam parts before the latch lets go: alloy</source>
        <translation type="unfinished">Die Naht löst sich, bevor das Schloss freigibt: Aluminium</translation>
    </message>
    <message>
        <source>The latch lets go, the striker comes out or it is exposed: alloy</source>
        <translation type="unfinished">Das Schloss gibt frei, der Schließkeil kommt heraus oder liegt offen: Aluminium</translation>
    </message>
    <message>
        <source>The latch carries less than half of what it holds when the seam first parts: alloy</source>
        <translation type="unfinished">Das Schloss trägt weniger als die Hälfte dessen, was es hält, wenn die Naht sich zuerst löst: Aluminium</translation>
    </message>
    <message>
        <source>Seam parted: alloy</source>
        <translation type="unfinished">Gelöste Naht: Aluminium</translation>
    </message>
    <message>
        <source>Sheet torn: alloy</source>
        <translation type="unfinished">Gerissenes Blech: Aluminium</translation>
    </message>
    <message>
        <source>What the force loses in jerks: alloy</source>
        <translation type="unfinished">Was die Kraft in Rucken verliert: Aluminium</translation>
    </message>
    <message>
        <source>Most force: alloy</source>
        <translation type="unfinished">Größte Kraft: Aluminium</translation>
    </message>
    <message>
        <source>What the latch carries at most, over what it holds: alloy</source>
        <translation type="unfinished">Was das Schloss höchstens trägt, geteilt durch das, was es hält: Aluminium</translation>
    </message>
    <message>
        <source>A straight door, bonded, with a bar. Squeezed in its middle and then pushed along the car; pushed along the car alone; squeezed at the latch end, levered, and a deep bite from the top; the same bite without any squeeze.</source>
        <translation type="unfinished">Eine gerade Tür, geklebt, mit Träger. In der Mitte gequetscht und dann längs zum Auto gedrückt; nur längs zum Auto gedrückt; am Schlossende gequetscht, gehebelt, und ein tiefer Ansatz von oben; derselbe Ansatz ohne jedes Quetschen.</translation>
    </message>
    <message>
        <source>Squeezed, then pushed: the skin under the belt goes in over the first 5 mm of the push</source>
        <translation type="unfinished">Gequetscht, dann gedrückt: die Außenhaut unter der Fensterbrüstung geht auf den ersten 5 mm des Drückens nach innen</translation>
    </message>
    <message>
        <source>Squeezed, then pushed: the upper panel's skin ends further in than it was before the push</source>
        <translation type="unfinished">Gequetscht, dann gedrückt: die Außenhaut des oberen Feldes endet weiter innen als vor dem Drücken</translation>
    </message>
    <message>
        <source>From the window rail, no squeeze: it does</source>
        <translation type="unfinished">Vom Fensterrahmen, ohne Quetschen: sie tut es</translation>
    </message>
    <message>
        <source>Squeezed and pushed along less from the window rail</source>
        <translation type="unfinished">Gequetscht und längs gedrückt weniger vom Fensterrahmen</translation>
    </message>
    <message>
        <source>The upper panel's skin goes further out in the push alone than after the squeeze</source>
        <translation type="unfinished">Die Außenhaut des oberen Feldes geht beim Drücken allein weiter hinaus als nach dem Quetschen</translation>
    </message>
    <message>
        <source>How far the upper panel's skin goes out in the push, squeezed before</source>
        <translation type="unfinished">Wie weit die Außenhaut des oberen Feldes beim Drücken hinausgeht, vorher gequetscht</translation>
    </message>
    <message>
        <source>Pushed alone</source>
        <translation type="unfinished">Nur gedrückt</translation>
    </message>
    <message>
        <source>From the window rail, no squeeze</source>
        <translation type="unfinished">Vom Fensterrahmen, ohne Quetschen</translation>
    </message>
</context>
</TS>
