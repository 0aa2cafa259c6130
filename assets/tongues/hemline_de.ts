<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<!-- Draft, not reviewed. Entwurf, nicht geprüft. -->
<TS version="2.1" language="de_DE" sourcelanguage="en_GB">
<context>
    <name>Hemline</name>
    <message>
        <source>In a few words</source>
        <translation type="unfinished">In wenigen Worten</translation>
    </message>
    <message>
        <source>The reason in your own words</source>
        <translation type="unfinished">Der Grund in eigenen Worten</translation>
    </message>
    <message>
        <source>Lock</source>
        <translation type="unfinished">Festlegen</translation>
    </message>
    <message>
        <source>Run the push</source>
        <translation type="unfinished">Den Druck ausführen</translation>
    </message>
    <message>
        <source>Run it and watch (Return)</source>
        <translation type="unfinished">Ausführen und zusehen (Eingabe)</translation>
    </message>
    <message>
        <source>Compare</source>
        <translation type="unfinished">Vergleichen</translation>
    </message>
    <message>
        <source>Prediction and outcome beside each other (R)</source>
        <translation type="unfinished">Vorhersage und Ergebnis nebeneinander (R)</translation>
    </message>
    <message>
        <source>1 step</source>
        <translation type="unfinished">1 Schritt</translation>
    </message>
    <message>
        <source>Hands</source>
        <translation type="unfinished">Hände</translation>
    </message>
    <message>
        <source>Next page</source>
        <translation type="unfinished">Nächste Seite</translation>
    </message>
    <message>
        <source>First look: the parts of a door</source>
        <translation type="unfinished">Erster Blick: die Teile einer Tür</translation>
    </message>
    <message>
        <source>Hold the button or the space bar: the tips open as long as it is down. Return runs the whole move.</source>
        <translation type="unfinished">Knopf oder Leertaste halten: Die Spitzen öffnen, solange gedrückt wird. Eingabe führt den ganzen Schritt aus.</translation>
    </message>
    <message>
        <source>The notes wait until prediction and outcome are compared; F7 shows them in their own window.</source>
        <translation type="unfinished">Die Notizen warten, bis Vorhersage und Ergebnis verglichen sind; F7 zeigt sie in einem eigenen Fenster.</translation>
    </message>
    <message>
        <source>What came out stands here once the push has been run; F7 shows it in its own window.</source>
        <translation type="unfinished">Was herauskam, steht hier, sobald gedrückt worden ist; F7 zeigt es in einem eigenen Fenster.</translation>
    </message>
    <message>
        <source>New here? Menu Help, First look, shows the parts of a door step by step; F1 lists every key.</source>
        <translation type="unfinished">Neu hier? Menü Hilfe, Erster Blick, zeigt die Teile einer Tür Schritt für Schritt; F1 zeigt alle Tasten.</translation>
    </message>
    <message>
        <source>There is no prediction to lock or to compare: key A asks for one before a push.</source>
        <translation type="unfinished">Es gibt keine Vorhersage zum Festlegen oder Vergleichen: Taste A fragt vor einem Druck danach.</translation>
    </message>
    <message>
        <source>Spent: nothing gained</source>
        <translation type="unfinished">Aufwand ohne Gewinn</translation>
    </message>
    <message>
        <source>Level</source>
        <translation type="unfinished">Waagrecht</translation>
    </message>
    <message>
        <source>Across the car</source>
        <translation type="unfinished">Quer zum Auto</translation>
    </message>
    <message>
        <source>Along the car</source>
        <translation type="unfinished">Längs zum Auto</translation>
    </message>
    <message>
        <source>Once the tips open, this column tells what is nearest to giving, where the work goes and the force.</source>
        <translation type="unfinished">Sobald die Spitzen öffnen, sagt diese Spalte, was dem Nachgeben am nächsten ist, wohin die Arbeit geht und die Kraft.</translation>
    </message>
    <message>
        <source>Section plane (key X)</source>
        <translation type="unfinished">Schnittebene (Taste X)</translation>
    </message>
    <message>
        <source>Parts drawn apart (key E)</source>
        <translation type="unfinished">Teile auseinandergezogen (Taste E)</translation>
    </message>
    <message>
        <source>Measure (key M)</source>
        <translation type="unfinished">Messen (Taste M)</translation>
    </message>
    <message>
        <source>Draw on the picture (key N)</source>
        <translation type="unfinished">Auf das Bild zeichnen (Taste N)</translation>
    </message>
    <message>
        <source>Pen</source>
        <translation type="unfinished">Stift</translation>
    </message>
    <message>
        <source>Arrow</source>
        <translation type="unfinished">Pfeil</translation>
    </message>
    <message>
        <source>Width between two points</source>
        <translation type="unfinished">Weite zwischen zwei Punkten</translation>
    </message>
    <message>
        <source>Gap to the next part</source>
        <translation type="unfinished">Spalt zum nächsten Teil</translation>
    </message>
    <message>
        <source>Angle at the second of three points</source>
        <translation type="unfinished">Winkel am zweiten von drei Punkten</translation>
    </message>
    <message>
        <source>Distance to the hip</source>
        <translation type="unfinished">Abstand zur Hüfte</translation>
    </message>
    <message>
        <source>Length of all tears</source>
        <translation type="unfinished">Länge aller Risse</translation>
    </message>
    <message>
        <source>The seam parts: the skin comes off its edge</source>
        <translation type="unfinished">Die Naht geht auf: Die Außenhaut löst sich von ihrer Kante</translation>
    </message>
    <message>
        <source>A weld of the seam breaks</source>
        <translation type="unfinished">Ein Schweißpunkt der Naht reißt</translation>
    </message>
    <message>
        <source>The striker slides out of the fork</source>
        <translation type="unfinished">Der Schließkeil gleitet aus der Gabel</translation>
    </message>
    <message>
        <source>A hinge lets go</source>
        <translation type="unfinished">Ein Scharnier gibt frei</translation>
    </message>
    <message>
        <source>A foot of the bar lets go</source>
        <translation type="unfinished">Ein Fuß des Trägers gibt frei</translation>
    </message>
    <message>
        <source>A spot of the pillar pops</source>
        <translation type="unfinished">Ein Punkt der Säule springt auf</translation>
    </message>
    <message>
        <source>The sheet tears</source>
        <translation type="unfinished">Das Blech reißt</translation>
    </message>
    <message>
        <source>A tip cuts through the sheet</source>
        <translation type="unfinished">Eine Spitze schneidet durch das Blech</translation>
    </message>
    <message>
        <source>The ram's head or foot slips</source>
        <translation type="unfinished">Kopf oder Fuß des Zylinders rutscht</translation>
    </message>
    <message>
        <source>What the tool stands on gives</source>
        <translation type="unfinished">Worauf das Gerät steht, gibt nach</translation>
    </message>
    <message>
        <source>The tool stalls: it can push no further</source>
        <translation type="unfinished">Das Gerät steht: Es kann nicht weiter drücken</translation>
    </message>
    <message>
        <source>Nothing gives, the metal only bends</source>
        <translation type="unfinished">Nichts gibt nach, das Metall biegt sich nur</translation>
    </message>
    <message>
        <source>The tips bear on the outer skin and its seam</source>
        <translation type="unfinished">Die Spitzen drücken auf die Außenhaut und ihre Naht</translation>
    </message>
    <message>
        <source>The push goes through the inner panel to what holds the door</source>
        <translation type="unfinished">Der Druck geht durch das Innenblech zu dem, was die Tür hält</translation>
    </message>
    <message>
        <source>Skin and inner panel share the push</source>
        <translation type="unfinished">Außenhaut und Innenblech teilen sich den Druck</translation>
    </message>
    <message>
        <source>The tips will not keep their seat</source>
        <translation type="unfinished">Die Spitzen halten ihren Sitz nicht</translation>
    </message>
    <message>
        <source>It is the weakest part on the line of the push</source>
        <translation type="unfinished">Es ist das schwächste Teil auf der Linie des Drucks</translation>
    </message>
    <message>
        <source>The push is straight at it</source>
        <translation type="unfinished">Der Druck geht gerade darauf</translation>
    </message>
    <message>
        <source>The metal there was bent before, so it folds on</source>
        <translation type="unfinished">Das Metall war dort schon gebogen und faltet sich weiter</translation>
    </message>
    <message>
        <source>Another reason, in your own words</source>
        <translation type="unfinished">Ein anderer Grund, in eigenen Worten</translation>
    </message>
    <message>
        <source>Outward, away from the occupant</source>
        <translation type="unfinished">Nach außen, vom Insassen weg</translation>
    </message>
    <message>
        <source>Inward, towards the occupant</source>
        <translation type="unfinished">Nach innen, zum Insassen hin</translation>
    </message>
    <message>
        <source>Neither: less than # mm either way</source>
        <translation type="unfinished">Keins von beiden: weniger als # mm in jede Richtung</translation>
    </message>
    <message>
        <source>What gives first?</source>
        <translation type="unfinished">Was gibt zuerst nach?</translation>
    </message>
    <message>
        <source>Which way does the middle of the outer skin go?</source>
        <translation type="unfinished">Wohin geht die Mitte der Außenhaut?</translation>
    </message>
    <message>
        <source>Why? A reason is part of the answer</source>
        <translation type="unfinished">Warum? Ein Grund gehört zur Antwort</translation>
    </message>
    <message>
        <source>Still open: What gives first?</source>
        <translation type="unfinished">Noch offen: Was gibt zuerst nach?</translation>
    </message>
    <message>
        <source>Still open: Which way does the middle of the outer skin go?</source>
        <translation type="unfinished">Noch offen: Wohin geht die Mitte der Außenhaut?</translation>
    </message>
    <message>
        <source>Still open: Why? A reason is part of the answer</source>
        <translation type="unfinished">Noch offen: Warum? Ein Grund gehört zur Antwort</translation>
    </message>
    <message>
        <source>The plan stands at its end: hold Open the tips, or run to a wider opening.</source>
        <translation type="unfinished">Der Plan steht an seinem Ende: „Spitzen öffnen“ halten oder weiter öffnen lassen.</translation>
    </message>
    <message>
        <source>What will this push do? Ask the class (A), or run it (Return).</source>
        <translation type="unfinished">Was wird dieser Druck tun? Die Klasse fragen (A) oder rechnen lassen (Eingabe).</translation>
    </message>
    <message>
        <source>Look at the other plan</source>
        <translation type="unfinished">Den anderen Plan ansehen</translation>
    </message>
    <message>
        <source>Other plan</source>
        <translation type="unfinished">Anderer Plan</translation>
    </message>
    <message>
        <source>Arrows move, Space chooses, digits count hands (most hands choose), Tab goes to the next question.</source>
        <translation type="unfinished">Pfeile bewegen, Leertaste wählt, Ziffern zählen Hände (die meisten wählen), Tab geht zur nächsten Frage.</translation>
    </message>
    <message>
        <source>The tip slips</source>
        <translation type="unfinished">Die Spitze rutscht</translation>
    </message>
    <message>
        <source>A panel folds inward</source>
        <translation type="unfinished">Ein Blech faltet sich nach innen</translation>
    </message>
    <message>
        <source>A panel folds outward</source>
        <translation type="unfinished">Ein Blech faltet sich nach außen</translation>
    </message>
    <message>
        <source>Free: try the plans, no questions</source>
        <translation type="unfinished">Frei: die Pläne ausprobieren, keine Fragen</translation>
    </message>
    <message>
        <source>Guided: each question with its answer</source>
        <translation type="unfinished">Geführt: jede Frage mit ihrer Antwort</translation>
    </message>
    <message>
        <source>Coached: a hint when you want one</source>
        <translation type="unfinished">Begleitet: ein Hinweis, wenn man einen will</translation>
    </message>
    <message>
        <source>Test: no hints, the answers at the end</source>
        <translation type="unfinished">Test: keine Hinweise, die Antworten am Ende</translation>
    </message>
    <message>
        <source>Tip width</source>
        <translation type="unfinished">Breite der Spitze</translation>
    </message>
    <message>
        <source>Tip length</source>
        <translation type="unfinished">Länge der Spitze</translation>
    </message>
    <message>
        <source>Friction</source>
        <translation type="unfinished">Reibung</translation>
    </message>
    <message>
        <source>Ready build</source>
        <translation type="unfinished">Fertige Bauweise</translation>
    </message>
    <message>
        <source>Seam's energy</source>
        <translation type="unfinished">Energie der Naht</translation>
    </message>
    <message>
        <source>Seam's strength</source>
        <translation type="unfinished">Festigkeit der Naht</translation>
    </message>
    <message>
        <source>Unevenness</source>
        <translation type="unfinished">Ungleichmäßigkeit</translation>
    </message>
    <message>
        <source>Gap in the bead</source>
        <translation type="unfinished">Lücke in der Raupe</translation>
    </message>
    <message>
        <source>which hem</source>
        <translation type="unfinished">an welchem Falz</translation>
    </message>
    <message>
        <source>begins at</source>
        <translation type="unfinished">beginnt bei</translation>
    </message>
    <message>
        <source>changes over</source>
        <translation type="unfinished">ändert sich über</translation>
    </message>
    <message>
        <source>Spots apart</source>
        <translation type="unfinished">Punktabstand</translation>
    </message>
    <message>
        <source>Spot in peel</source>
        <translation type="unfinished">Punkt auf Schälen</translation>
    </message>
    <message>
        <source>Spot in shear</source>
        <translation type="unfinished">Punkt auf Scherung</translation>
    </message>
    <message>
        <source>Spot's energy</source>
        <translation type="unfinished">Energie des Punkts</translation>
    </message>
    <message>
        <source>Metal</source>
        <translation type="unfinished">Metall</translation>
    </message>
    <message>
        <source>Skin</source>
        <translation type="unfinished">Außenhaut</translation>
    </message>
    <message>
        <source>Inner panel</source>
        <translation type="unfinished">Innenblech</translation>
    </message>
    <message>
        <source>Width of the hem</source>
        <translation type="unfinished">Breite des Falzes</translation>
    </message>
    <message>
        <source>Depth of the shut face</source>
        <translation type="unfinished">Tiefe der Stirnfläche</translation>
    </message>
    <message>
        <source>Latch</source>
        <translation type="unfinished">Schloss</translation>
    </message>
    <message>
        <source>Striker wedged</source>
        <translation type="unfinished">Schließkeil verklemmt</translation>
    </message>
    <message>
        <source>Pull on handle</source>
        <translation type="unfinished">Zug am Griff</translation>
    </message>
    <message>
        <source>Latch's strength</source>
        <translation type="unfinished">Schlossfestigkeit</translation>
    </message>
    <message>
        <source>Hinges' strength</source>
        <translation type="unfinished">Scharnierfestigkeit</translation>
    </message>
    <message>
        <source>Hinges' axis, from the lip in</source>
        <translation type="unfinished">Scharnierachse, ab Kante</translation>
    </message>
    <message>
        <source>Latch and hinges bend</source>
        <translation type="unfinished">Beschläge geben nach</translation>
    </message>
    <message>
        <source>Bar</source>
        <translation type="unfinished">Träger</translation>
    </message>
    <message>
        <source>Bar's feet hold</source>
        <translation type="unfinished">Trägerfüße halten</translation>
    </message>
    <message>
        <source>Lattice</source>
        <translation type="unfinished">Gitter</translation>
    </message>
    <message>
        <source>The door</source>
        <translation type="unfinished">Die Tür</translation>
    </message>
    <message>
        <source>Note</source>
        <translation type="unfinished">Notiz</translation>
    </message>
    <message>
        <source>Sheet</source>
        <translation type="unfinished">Blatt</translation>
    </message>
    <message>
        <source>Paper</source>
        <translation type="unfinished">Papier</translation>
    </message>
    <message>
        <source>Pictures</source>
        <translation type="unfinished">Bilder</translation>
    </message>
    <message>
        <source>Seats</source>
        <translation type="unfinished">Plätze</translation>
    </message>
    <message>
        <source>Page # of #</source>
        <translation type="unfinished">Seite # von #</translation>
    </message>
    <message>
        <source>not now</source>
        <translation type="unfinished">jetzt nicht</translation>
    </message>
    <message>
        <source>By hand</source>
        <translation type="unfinished">Von Hand</translation>
    </message>
    <message>
        <source>To the contrast</source>
        <translation type="unfinished">Zum Gegenstück</translation>
    </message>
    <message>
        <source>To the edge attack</source>
        <translation type="unfinished">Zum Randangriff</translation>
    </message>
    <message>
        <source>Click the first point</source>
        <translation type="unfinished">Den ersten Punkt anklicken</translation>
    </message>
    <message>
        <source>Click the second point</source>
        <translation type="unfinished">Den zweiten Punkt anklicken</translation>
    </message>
    <message>
        <source>Click the third point</source>
        <translation type="unfinished">Den dritten Punkt anklicken</translation>
    </message>
    <message>
        <source>One display: the notes lie behind key F7; Page Up and Page Down turn the pages, F5 ends.</source>
        <translation type="unfinished">Ein Bildschirm: Die Notizen liegen hinter Taste F7; Bild auf und Bild ab blättern, F5 beendet.</translation>
    </message>
    <message>
        <source>One thing differs</source>
        <translation type="unfinished">Eines ist anders</translation>
    </message>
    <message>
        <source># things differ</source>
        <translation type="unfinished"># Dinge sind anders</translation>
    </message>
    <message>
        <source>Gained: it let go, and no room was lost</source>
        <translation type="unfinished">Gewonnen: Es gab frei, und kein Raum ging verloren</translation>
    </message>
    <message>
        <source>Lost ground: less room than before</source>
        <translation type="unfinished">Boden verloren: weniger Raum als vorher</translation>
    </message>
    <message>
        <source>Stop here: the sheet tears</source>
        <translation type="unfinished">Hier halten: Das Blech reißt</translation>
    </message>
    <message>
        <source>Not settled: do not teach from it</source>
        <translation type="unfinished">Nicht gesichert: nicht daraus lehren</translation>
    </message>
    <message>
        <source>Wrecked: the metal lies as the body left it</source>
        <translation type="unfinished">Unfallschaden: Das Metall liegt, wie der Körper es zurückließ</translation>
    </message>
    <message>
        <source>Done: no room was lost</source>
        <translation type="unfinished">Getan: kein Raum ging verloren</translation>
    </message>
    <message>
        <source>Caution: the blades met a part that trim still hid</source>
        <translation type="unfinished">Vorsicht: Die Klingen trafen ein Teil, das Verkleidung noch verbarg</translation>
    </message>
    <message>
        <source>Eased: the tool is off</source>
        <translation type="unfinished">Entlastet: Das Gerät ist ab</translation>
    </message>
    <message>
        <source>Scored on the model. Practical assessment is separate.</source>
        <translation type="unfinished">Am Modell bewertet. Die praktische Beurteilung ist davon getrennt.</translation>
    </message>
    <message>
        <source>No local rules are in force</source>
        <translation type="unfinished">Keine eigenen Regeln in Kraft</translation>
    </message>
    <message>
        <source>Hold to open the tips, let go to stop (hold Space)</source>
        <translation type="unfinished">Halten öffnet die Spitzen, Loslassen hält an (Leertaste halten)</translation>
    </message>
    <message>
        <source>All of the push goes into the inner panel.</source>
        <translation type="unfinished">Der ganze Druck geht in das Innenblech.</translation>
    </message>
    <message>
        <source>All of the push goes into the outer skin's lip.</source>
        <translation type="unfinished">Der ganze Druck geht in die Kante der Außenhaut.</translation>
    </message>
    <message>
        <source>#% of the push goes into the outer skin's lip, the rest into the inner panel.</source>
        <translation type="unfinished">#% des Drucks gehen in die Kante der Außenhaut, der Rest in das Innenblech.</translation>
    </message>
    <message>
        <source>Tip one stands on the latch edge.</source>
        <translation type="unfinished">Spitze eins steht an der Schlosskante.</translation>
    </message>
    <message>
        <source>Tip one stands on the sill edge.</source>
        <translation type="unfinished">Spitze eins steht an der Schwellerkante.</translation>
    </message>
    <message>
        <source>Tip one stands on the hinge edge.</source>
        <translation type="unfinished">Spitze eins steht an der Scharnierkante.</translation>
    </message>
    <message>
        <source>Tip one stands on the belt.</source>
        <translation type="unfinished">Spitze eins steht an der Brüstung.</translation>
    </message>
    <message>
        <source>Metal to occupant: # mm</source>
        <translation type="unfinished">Metall zum Insassen: # mm</translation>
    </message>
    <message>
        <source>For a screen reader, a caption, or beside a picture.</source>
        <translation type="unfinished">Für ein Vorleseprogramm, eine Bildunterschrift oder neben ein Bild.</translation>
    </message>
    <message>
        <source>For a report: no names, no folders, no text of yours. Read it before you send it.</source>
        <translation type="unfinished">Für einen Bericht: keine Namen, keine Ordner, kein Text von Ihnen. Vor dem Senden lesen.</translation>
    </message>
    <message>
        <source>The part under the pointer alone, each in turn, or all</source>
        <translation type="unfinished">Nur das Teil unter dem Zeiger, eins nach dem anderen, oder alle</translation>
    </message>
    <message>
        <source>Ask again</source>
        <translation type="unfinished">Noch einmal fragen</translation>
    </message>
    <message>
        <source>A new prediction for the push that is selected (A)</source>
        <translation type="unfinished">Eine neue Vorhersage für den gewählten Druck (A)</translation>
    </message>
    <message>
        <source>Put away</source>
        <translation type="unfinished">Weglegen</translation>
    </message>
    <message>
        <source>Back to the reading</source>
        <translation type="unfinished">Zurück zur Ablesung</translation>
    </message>
    <message>
        <source>Prediction</source>
        <translation type="unfinished">Vorhersage</translation>
    </message>
    <message>
        <source>Before the push</source>
        <translation type="unfinished">Vor dem Druck</translation>
    </message>
    <message>
        <source>What came of it</source>
        <translation type="unfinished">Was daraus wurde</translation>
    </message>
    <message>
        <source>Ask: what would have to be different for the other answers to come out?</source>
        <translation type="unfinished">Frage: Was müsste anders sein, damit die anderen Antworten eintreten?</translation>
    </message>
    <message>
        <source>How near each part is to giving</source>
        <translation type="unfinished">Wie nah jedes Teil am Nachgeben ist</translation>
    </message>
    <message>
        <source>Where this move's work went</source>
        <translation type="unfinished">Arbeit dieses Schritts</translation>
    </message>
    <message>
        <source>lifting what has weight</source>
        <translation type="unfinished">Heben von Gewicht</translation>
    </message>
    <message>
        <source>Force of the ram</source>
        <translation type="unfinished">Kraft des Rettungszylinders</translation>
    </message>
    <message>
        <source>Where the work went</source>
        <translation type="unfinished">Wohin die Arbeit ging</translation>
    </message>
    <message>
        <source>Steps of the work and their branches</source>
        <translation type="unfinished">Schritte der Arbeit und ihre Zweige</translation>
    </message>
    <message>
        <source>Steps and branches</source>
        <translation type="unfinished">Schritte und Zweige</translation>
    </message>
    <message>
        <source>Back to the plan</source>
        <translation type="unfinished">Zurück zum Plan</translation>
    </message>
    <message>
        <source>Use this curve</source>
        <translation type="unfinished">Diese Kurve verwenden</translation>
    </message>
    <message>
        <source>Car and tool</source>
        <translation type="unfinished">Auto und Gerät</translation>
    </message>
    <message>
        <source>The car</source>
        <translation type="unfinished">Das Auto</translation>
    </message>
    <message>
        <source>The tool</source>
        <translation type="unfinished">Das Gerät</translation>
    </message>
    <message>
        <source>Force the tool can give at each opening</source>
        <translation type="unfinished">Kraft des Geräts bei jeder Öffnung</translation>
    </message>
    <message>
        <source>Model card</source>
        <translation type="unfinished">Modellblatt</translation>
    </message>
    <message>
        <source>Search this chapter</source>
        <translation type="unfinished">In diesem Kapitel suchen</translation>
    </message>
    <message>
        <source>Table of this chapter</source>
        <translation type="unfinished">Tabelle dieses Kapitels</translation>
    </message>
    <message>
        <source>Run the fast checks now</source>
        <translation type="unfinished">Die schnellen Prüfungen jetzt ausführen</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation type="unfinished">Halt</translation>
    </message>
    <message>
        <source>I have read this</source>
        <translation type="unfinished">Ich habe das gelesen</translation>
    </message>
    <message>
        <source>Text to read</source>
        <translation type="unfinished">Text zum Lesen</translation>
    </message>
    <message>
        <source>Hands counted for this choice</source>
        <translation type="unfinished">Gezählte Hände für diese Wahl</translation>
    </message>
    <message>
        <source>Find an action</source>
        <translation type="unfinished">Eine Aktion finden</translation>
    </message>
    <message>
        <source>Type words: cut, print, larger, answers …</source>
        <translation type="unfinished">Wörter eingeben: Schnitt, drucken, größer, Antworten …</translation>
    </message>
    <message>
        <source>Words of the action</source>
        <translation type="unfinished">Wörter der Aktion</translation>
    </message>
    <message>
        <source>Actions found</source>
        <translation type="unfinished">Gefundene Aktionen</translation>
    </message>
    <message>
        <source>No action has these words. Try fewer, or one of the menus.</source>
        <translation type="unfinished">Keine Aktion hat diese Wörter. Weniger versuchen, oder eines der Menüs.</translation>
    </message>
    <message>
        <source>Keys</source>
        <translation type="unfinished">Tasten</translation>
    </message>
    <message>
        <source>All keys</source>
        <translation type="unfinished">Alle Tasten</translation>
    </message>
    <message>
        <source>Force of the tips over their opening</source>
        <translation type="unfinished">Kraft der Spitzen über ihrer Öffnung</translation>
    </message>
    <message>
        <source>No colours</source>
        <translation type="unfinished">Keine Farben</translation>
    </message>
    <message>
        <source>Ask before the push</source>
        <translation type="unfinished">Vor dem Druck fragen</translation>
    </message>
    <message>
        <source>Choices for the class; nothing is shown before the lock (A)</source>
        <translation type="unfinished">Wahl für die Klasse; vor dem Festlegen wird nichts gezeigt (A)</translation>
    </message>
    <message>
        <source>The same moment of the other plan; Page Down goes on</source>
        <translation type="unfinished">Derselbe Moment des anderen Plans; Bild ab geht weiter</translation>
    </message>
    <message>
        <source>Run it again</source>
        <translation type="unfinished">Noch einmal ausführen</translation>
    </message>
    <message>
        <source>Solve the plan of this step now</source>
        <translation type="unfinished">Den Plan dieses Schritts jetzt rechnen</translation>
    </message>
    <message>
        <source>Put the lesson away</source>
        <translation type="unfinished">Die Lektion weglegen</translation>
    </message>
    <message>
        <source>Plan ›</source>
        <translation type="unfinished">Plan ›</translation>
    </message>
    <message>
        <source>The plan's cards in this place (K brings the lesson back)</source>
        <translation type="unfinished">Die Karten des Plans an dieser Stelle (K bringt die Lektion zurück)</translation>
    </message>
    <message>
        <source>Steps of the lesson</source>
        <translation type="unfinished">Schritte der Lektion</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation type="unfinished">Notizen</translation>
    </message>
    <message>
        <source>Show or hide the notes for the teacher</source>
        <translation type="unfinished">Die Notizen für die Lehrkraft zeigen oder verbergen</translation>
    </message>
    <message>
        <source>For the teacher</source>
        <translation type="unfinished">Für die Lehrkraft</translation>
    </message>
    <message>
        <source>Our own rules</source>
        <translation type="unfinished">Unsere eigenen Regeln</translation>
    </message>
    <message>
        <source>Back</source>
        <translation type="unfinished">Zurück</translation>
    </message>
    <message>
        <source>The step before (Page Up)</source>
        <translation type="unfinished">Der Schritt davor (Bild auf)</translation>
    </message>
    <message>
        <source>Next step</source>
        <translation type="unfinished">Weiter</translation>
    </message>
    <message>
        <source>The next step (Page Down)</source>
        <translation type="unfinished">Der nächste Schritt (Bild ab)</translation>
    </message>
    <message>
        <source>Sheets</source>
        <translation type="unfinished">Blätter</translation>
    </message>
    <message>
        <source>grey, as a copier prints it</source>
        <translation type="unfinished">grau, wie ein Kopierer druckt</translation>
    </message>
    <message>
        <source>in colour</source>
        <translation type="unfinished">in Farbe</translation>
    </message>
    <message>
        <source>1-12, or 3,5,8</source>
        <translation type="unfinished">1-12, oder 3,5,8</translation>
    </message>
    <message>
        <source>Words</source>
        <translation type="unfinished">Wörter</translation>
    </message>
    <message>
        <source>Any word you use for it</source>
        <translation type="unfinished">Jedes Wort, das Sie dafür verwenden</translation>
    </message>
    <message>
        <source>Our own rules, as text</source>
        <translation type="unfinished">Unsere eigenen Regeln, als Text</translation>
    </message>
    <message>
        <source>Put in force</source>
        <translation type="unfinished">In Kraft setzen</translation>
    </message>
    <message>
        <source>Model said, metal did</source>
        <translation type="unfinished">Modell sagte, Metall tat</translation>
    </message>
    <message>
        <source>Seam, metal, latch; no make and no model</source>
        <translation type="unfinished">Naht, Metall, Schloss; keine Marke und kein Modell</translation>
    </message>
    <message>
        <source>way of the tools</source>
        <translation type="unfinished">Weg der Geräte</translation>
    </message>
    <message>
        <source>Change the side and the person</source>
        <translation type="unfinished">Die Seite und die Person ändern</translation>
    </message>
    <message>
        <source>Force, room and exit width in a large window</source>
        <translation type="unfinished">Kraft, Raum und Ausgangsbreite in einem großen Fenster</translation>
    </message>
    <message>
        <source>Force, room and exit width</source>
        <translation type="unfinished">Kraft, Raum und Ausgangsbreite</translation>
    </message>
    <message>
        <source>Title</source>
        <translation type="unfinished">Titel</translation>
    </message>
    <message>
        <source>Nothing may be seen of it now, or nothing has moved yet.</source>
        <translation type="unfinished">Davon darf jetzt nichts gesehen werden, oder es hat sich noch nichts bewegt.</translation>
    </message>
    <message>
        <source>Next curve: force, room, exit width</source>
        <translation type="unfinished">Nächste Kurve: Kraft, Raum, Ausgangsbreite</translation>
    </message>
    <message>
        <source>Exit width</source>
        <translation type="unfinished">Ausgangsbreite</translation>
    </message>
    <message>
        <source>What was surprising; no names</source>
        <translation type="unfinished">Was überraschte; keine Namen</translation>
    </message>
    <message>
        <source>Write it down</source>
        <translation type="unfinished">Aufschreiben</translation>
    </message>
    <message>
        <source>Delete the whole log</source>
        <translation type="unfinished">Das ganze Protokoll löschen</translation>
    </message>
    <message>
        <source>Save as PDF…</source>
        <translation type="unfinished">Als PDF speichern …</translation>
    </message>
    <message>
        <source>Print…</source>
        <translation type="unfinished">Drucken …</translation>
    </message>
    <message>
        <source>The line on the limits of the model stands on every page.</source>
        <translation type="unfinished">Die Zeile über die Grenzen des Modells steht auf jeder Seite.</translation>
    </message>
    <message>
        <source>Press again: every line will be gone</source>
        <translation type="unfinished">Noch einmal drücken: jede Zeile wird gelöscht</translation>
    </message>
    <message>
        <source>Notes for the teacher – Hemline</source>
        <translation type="unfinished">Notizen für die Lehrkraft – Hemline</translation>
    </message>
    <message>
        <source>Shut or open answers</source>
        <translation type="unfinished">Antworten schließen oder öffnen</translation>
    </message>
    <message>
        <source>Answers, ladder, arrow and map (T)</source>
        <translation type="unfinished">Antworten, Leiter, Pfeil und Karte (T)</translation>
    </message>
    <message>
        <source>Notes for the teacher</source>
        <translation type="unfinished">Notizen für die Lehrkraft</translation>
    </message>
    <message>
        <source>Next</source>
        <translation type="unfinished">Weiter</translation>
    </message>
    <message>
        <source>Next page (Page Down)</source>
        <translation type="unfinished">Nächste Seite (Bild ab)</translation>
    </message>
    <message>
        <source>Page before (Page Up)</source>
        <translation type="unfinished">Seite davor (Bild auf)</translation>
    </message>
    <message>
        <source>Ask</source>
        <translation type="unfinished">Fragen</translation>
    </message>
    <message>
        <source>Ask before the push (A)</source>
        <translation type="unfinished">Vor dem Druck fragen (A)</translation>
    </message>
    <message>
        <source>End</source>
        <translation type="unfinished">Beenden</translation>
    </message>
    <message>
        <source>Back to the work (F5)</source>
        <translation type="unfinished">Zurück zur Arbeit (F5)</translation>
    </message>
    <message>
        <source>Copy the report</source>
        <translation type="unfinished">Den Bericht kopieren</translation>
    </message>
    <message>
        <source>Put this away</source>
        <translation type="unfinished">Dies weglegen</translation>
    </message>
    <message>
        <source>The plan on the right</source>
        <translation type="unfinished">Der Plan rechts</translation>
    </message>
    <message>
        <source>Run both</source>
        <translation type="unfinished">Beide ausführen</translation>
    </message>
    <message>
        <source>Work both out from the same start (Return)</source>
        <translation type="unfinished">Beide vom selben Anfang rechnen (Eingabe)</translation>
    </message>
    <message>
        <source>Put it on this car</source>
        <translation type="unfinished">Auf dieses Auto setzen</translation>
    </message>
    <message>
        <source>The other plan's moves, from this start</source>
        <translation type="unfinished">Die Schritte des anderen Plans, von diesem Anfang</translation>
    </message>
    <message>
        <source>One plan</source>
        <translation type="unfinished">Ein Plan</translation>
    </message>
    <message>
        <source>Back to one plan (B)</source>
        <translation type="unfinished">Zurück zu einem Plan (B)</translation>
    </message>
    <message>
        <source>Two plans side by side</source>
        <translation type="unfinished">Zwei Pläne nebeneinander</translation>
    </message>
    <message>
        <source>Side by side</source>
        <translation type="unfinished">Nebeneinander</translation>
    </message>
    <message>
        <source>On the right</source>
        <translation type="unfinished">Rechts</translation>
    </message>
    <message>
        <source>Take this move out of the plan</source>
        <translation type="unfinished">Diesen Schritt aus dem Plan nehmen</translation>
    </message>
    <message>
        <source>Tips on the hem at the latch edge</source>
        <translation type="unfinished">Spitzen auf dem Falz an der Schlosskante</translation>
    </message>
    <message>
        <source>Try the contrast</source>
        <translation type="unfinished">Gegenstück</translation>
    </message>
    <message>
        <source>The same place, the tips behind the inner bend</source>
        <translation type="unfinished">Dieselbe Stelle, die Spitzen hinter der inneren Biegung</translation>
    </message>
    <message>
        <source>Moves of the plan</source>
        <translation type="unfinished">Schritte des Plans</translation>
    </message>
    <message>
        <source>Car, tool ›</source>
        <translation type="unfinished">Auto, Gerät ›</translation>
    </message>
    <message>
        <source>Change the car and the tool</source>
        <translation type="unfinished">Auto und Gerät ändern</translation>
    </message>
    <message>
        <source>Spread</source>
        <translation type="unfinished">Spreizen</translation>
    </message>
    <message>
        <source>Add a spread after the last move</source>
        <translation type="unfinished">Nach dem letzten Schritt ein Spreizen anfügen</translation>
    </message>
    <message>
        <source>Crush</source>
        <translation type="unfinished">Drücken</translation>
    </message>
    <message>
        <source>Add: a rigid body pressed into the side, as in an accident</source>
        <translation type="unfinished">Anfügen: ein starrer Körper, in die Seite gedrückt wie bei einem Unfall</translation>
    </message>
    <message>
        <source>Let off</source>
        <translation type="unfinished">Lösen</translation>
    </message>
    <message>
        <source>Add: let the tool off, the metal springs back</source>
        <translation type="unfinished">Anfügen: das Gerät entlasten, das Metall federt zurück</translation>
    </message>
    <message>
        <source>Add</source>
        <translation type="unfinished">Dazu</translation>
    </message>
    <message>
        <source>Questions</source>
        <translation type="unfinished">Fragen</translation>
    </message>
    <message>
        <source>Done.</source>
        <translation type="unfinished">Fertig.</translation>
    </message>
    <message>
        <source>Answers</source>
        <translation type="unfinished">Antworten</translation>
    </message>
    <message>
        <source>A hint</source>
        <translation type="unfinished">Ein Hinweis</translation>
    </message>
    <message>
        <source>Next question</source>
        <translation type="unfinished">Nächste Frage</translation>
    </message>
    <message>
        <source>Try the plans on the stage; undo as often as you like.</source>
        <translation type="unfinished">Die Pläne auf der Bühne versuchen; beliebig oft rückgängig machen.</translation>
    </message>
    <message>
        <source>What happened</source>
        <translation type="unfinished">Was geschah</translation>
    </message>
    <message>
        <source>Reading</source>
        <translation type="unfinished">Ablesung</translation>
    </message>
    <message>
        <source>Force of the body</source>
        <translation type="unfinished">Kraft des Körpers</translation>
    </message>
    <message>
        <source>Force of the tips</source>
        <translation type="unfinished">Kraft der Spitzen</translation>
    </message>
    <message>
        <source>Nearest to giving</source>
        <translation type="unfinished">Nah am Nachgeben</translation>
    </message>
    <message>
        <source>Moments of the plan</source>
        <translation type="unfinished">Momente des Plans</translation>
    </message>
    <message>
        <source>Back to the start (Home)</source>
        <translation type="unfinished">Zurück zum Anfang (Pos1)</translation>
    </message>
    <message>
        <source>Play the moments (P)</source>
        <translation type="unfinished">Die Momente abspielen (P)</translation>
    </message>
    <message>
        <source>Give up what is being worked out (Esc)</source>
        <translation type="unfinished">Aufgeben, was gerechnet wird (Esc)</translation>
    </message>
    <message>
        <source>Go on from here</source>
        <translation type="unfinished">Von hier weitermachen</translation>
    </message>
    <message>
        <source>Cut the move at this moment and push on from there</source>
        <translation type="unfinished">Den Schritt in diesem Moment enden lassen und von dort weiterdrücken</translation>
    </message>
    <message>
        <source>Run to</source>
        <translation type="unfinished">Bis</translation>
    </message>
    <message>
        <source>Run the plan; this move to the opening beside</source>
        <translation type="unfinished">Den Plan ausführen; diesen Schritt bis zur Öffnung daneben</translation>
    </message>
    <message>
        <source>Opening of the tips to run to</source>
        <translation type="unfinished">Öffnung der Spitzen, bis zu der ausgeführt wird</translation>
    </message>
    <message>
        <source>Open the tips</source>
        <translation type="unfinished">Spitzen öffnen</translation>
    </message>
    <message>
        <source>Run</source>
        <translation type="unfinished">Ausführen</translation>
    </message>
    <message>
        <source>Section across the edge of the door</source>
        <translation type="unfinished">Schnitt quer durch die Türkante</translation>
    </message>
    <message>
        <source>Put these controls away (Esc)</source>
        <translation type="unfinished">Diese Bedienung weglegen (Esc)</translation>
    </message>
    <message>
        <source>What to measure</source>
        <translation type="unfinished">Was gemessen wird</translation>
    </message>
    <message>
        <source>Measured</source>
        <translation type="unfinished">Gemessen</translation>
    </message>
    <message>
        <source>Drag on the picture; saved beside the plan</source>
        <translation type="unfinished">Auf dem Bild ziehen; wird neben dem Plan gespeichert</translation>
    </message>
    <message>
        <source>Together</source>
        <translation type="unfinished">Zusammen</translation>
    </message>
    <message>
        <source>Apart: not where they are</source>
        <translation type="unfinished">Auseinander: nicht, wo sie sind</translation>
    </message>
    <message>
        <source>Take the last one back</source>
        <translation type="unfinished">Das Letzte zurücknehmen</translation>
    </message>
    <message>
        <source>Clear</source>
        <translation type="unfinished">Leeren</translation>
    </message>
    <message>
        <source>Save the picture</source>
        <translation type="unfinished">Das Bild speichern</translation>
    </message>
    <message>
        <source>Size</source>
        <translation type="unfinished">Größe</translation>
    </message>
    <message>
        <source>Caption</source>
        <translation type="unfinished">Bildunterschrift</translation>
    </message>
    <message>
        <source>The line on the limits of the model stands on every picture, and the moment in words lies in the file as its description (alt text).</source>
        <translation type="unfinished">Die Zeile über die Grenzen des Modells steht auf jedem Bild, und der Moment in Worten liegt als Beschreibung (Alternativtext) in der Datei.</translation>
    </message>
    <message>
        <source>What the colours show</source>
        <translation type="unfinished">Was die Farben zeigen</translation>
    </message>
    <message>
        <source>Under the pointer</source>
        <translation type="unfinished">Unter dem Zeiger</translation>
    </message>
    <message>
        <source>Look again</source>
        <translation type="unfinished">Noch einmal nachsehen</translation>
    </message>
    <message>
        <source>Name of the tool</source>
        <translation type="unfinished">Name des Geräts</translation>
    </message>
    <message>
        <source>Keep in the list</source>
        <translation type="unfinished">In der Liste behalten</translation>
    </message>
    <message>
        <source>Kept with your settings, for every plan</source>
        <translation type="unfinished">Bei Ihren Einstellungen behalten, für jeden Plan</translation>
    </message>
    <message>
        <source>Take off</source>
        <translation type="unfinished">Herausnehmen</translation>
    </message>
    <message>
        <source>The plan keeps the tool's numbers</source>
        <translation type="unfinished">Der Plan behält die Zahlen des Geräts</translation>
    </message>
    <message>
        <source>Called</source>
        <translation type="unfinished">Genannt</translation>
    </message>
    <message>
        <source>Fetching and installing the packages (some hundred megabytes the first time) ...</source>
        <translation type="unfinished">Die Pakete werden geholt und eingerichtet (beim ersten Mal einige hundert Megabyte) ...</translation>
    </message>
    <message>
        <source>Preparing the program for quick starts ...</source>
        <translation type="unfinished">Das Programm wird für schnelle Starts vorbereitet ...</translation>
    </message>
    <message>
        <source>Description</source>
        <translation type="unfinished">Beschreibung</translation>
    </message>
    <message>
        <source>Stage: the door in three dimensions</source>
        <translation type="unfinished">Bühne: die Tür in drei Dimensionen</translation>
    </message>
    <message>
        <source>There is no sitting that was left behind.</source>
        <translation type="unfinished">Es ist keine Sitzung zurückgeblieben.</translation>
    </message>
    <message>
        <source>The drill log could not be deleted.</source>
        <translation type="unfinished">Das Übungsprotokoll konnte nicht gelöscht werden.</translation>
    </message>
    <message>
        <source>Hemline</source>
        <translation type="unfinished">Hemline</translation>
    </message>
    <message>
        <source>Setting out the door …</source>
        <translation type="unfinished">Die Tür wird aufgebaut …</translation>
    </message>
    <message>
        <source>Ready plans</source>
        <translation type="unfinished">Fertige Pläne</translation>
    </message>
    <message>
        <source>Single plans</source>
        <translation type="unfinished">Einzelne Pläne</translation>
    </message>
    <message>
        <source>Ready lessons</source>
        <translation type="unfinished">Fertige Lektionen</translation>
    </message>
    <message>
        <source>Recent plans</source>
        <translation type="unfinished">Letzte Pläne</translation>
    </message>
    <message>
        <source>Back to a moment of the work</source>
        <translation type="unfinished">Zurück zu einem Moment der Arbeit</translation>
    </message>
    <message>
        <source>Undo</source>
        <translation type="unfinished">Rückgängig</translation>
    </message>
    <message>
        <source>Redo</source>
        <translation type="unfinished">Wiederholen</translation>
    </message>
    <message>
        <source>No screen answers here, so the demo is drawn to pictures instead of a window.</source>
        <translation type="unfinished">Hier antwortet kein Bildschirm, darum wird die Vorführung als Bilder gezeichnet statt in einem Fenster.</translation>
    </message>
    <message>
        <source>There is nothing to foretell of this move; select a push.</source>
        <translation type="unfinished">An diesem Schritt gibt es nichts vorherzusagen; einen Druck wählen.</translation>
    </message>
    <message>
        <source>File</source>
        <translation type="unfinished">Datei</translation>
    </message>
    <message>
        <source>Open a plan…</source>
        <translation type="unfinished">Einen Plan öffnen …</translation>
    </message>
    <message>
        <source>Save the plan</source>
        <translation type="unfinished">Den Plan speichern</translation>
    </message>
    <message>
        <source>Save the plan as…</source>
        <translation type="unfinished">Den Plan speichern unter …</translation>
    </message>
    <message>
        <source>Save a picture of the stage…</source>
        <translation type="unfinished">Ein Bild der Bühne speichern …</translation>
    </message>
    <message>
        <source>Save the metal of this moment…</source>
        <translation type="unfinished">Das Metall dieses Moments speichern …</translation>
    </message>
    <message>
        <source>Bring back the last sitting</source>
        <translation type="unfinished">Die letzte Sitzung zurückholen</translation>
    </message>
    <message>
        <source>Make the pictures…</source>
        <translation type="unfinished">Bilder machen …</translation>
    </message>
    <message>
        <source>Open a list…</source>
        <translation type="unfinished">Liste öffnen …</translation>
    </message>
    <message>
        <source>Matching pictures</source>
        <translation type="unfinished">Zueinander passende Bilder</translation>
    </message>
    <message>
        <source>Moments</source>
        <translation type="unfinished">Momente</translation>
    </message>
    <message>
        <source>Views, with the layers as they are shown now</source>
        <translation type="unfinished">Ansichten, mit den Schichten wie jetzt gezeigt</translation>
    </message>
    <message>
        <source>Go to a moment on the stage, then take it.</source>
        <translation type="unfinished">Auf der Bühne zu einem Moment gehen, dann nehmen.</translation>
    </message>
    <message>
        <source>Matching pictures from a list…</source>
        <translation type="unfinished">Zueinander passende Bilder nach einer Liste …</translation>
    </message>
    <message>
        <source>Take the moment shown</source>
        <translation type="unfinished">Gezeigten Moment nehmen</translation>
    </message>
    <message>
        <source>Add this view</source>
        <translation type="unfinished">Diese Ansicht dazu</translation>
    </message>
    <message>
        <source>Dark ground</source>
        <translation type="unfinished">Dunkler Grund</translation>
    </message>
    <message>
        <source>Names of parts</source>
        <translation type="unfinished">Namen der Teile</translation>
    </message>
    <message>
        <source>Moments taken</source>
        <translation type="unfinished">Genommene Momente</translation>
    </message>
    <message>
        <source>Views added</source>
        <translation type="unfinished">Ansichten der Liste</translation>
    </message>
    <message>
        <source>Camera of the view</source>
        <translation type="unfinished">Kamera der Ansicht</translation>
    </message>
    <message>
        <source>Colours of the view</source>
        <translation type="unfinished">Farben der Ansicht</translation>
    </message>
    <message>
        <source>Sizes</source>
        <translation type="unfinished">Größen</translation>
    </message>
    <message>
        <source>Styles</source>
        <translation type="unfinished">Arten</translation>
    </message>
    <message>
        <source>Files</source>
        <translation type="unfinished">Dateien</translation>
    </message>
    <message>
        <source>PNG</source>
        <translation type="unfinished">PNG</translation>
    </message>
    <message>
        <source>SVG: words as type</source>
        <translation type="unfinished">SVG: Wörter als Schrift</translation>
    </message>
    <message>
        <source>Three-quarter from behind</source>
        <translation type="unfinished">Schräg von hinten</translation>
    </message>
    <message>
        <source>Close on the latch</source>
        <translation type="unfinished">Nah am Schloss</translation>
    </message>
    <message>
        <source>Close on the hinges</source>
        <translation type="unfinished">Nah an den Scharnieren</translation>
    </message>
    <message>
        <source>From the patient's seat</source>
        <translation type="unfinished">Vom Platz des Patienten</translation>
    </message>
    <message>
        <source>Section from above</source>
        <translation type="unfinished">Schnitt von oben</translation>
    </message>
    <message>
        <source>From above</source>
        <translation type="unfinished">Von oben</translation>
    </message>
    <message>
        <source>In colour</source>
        <translation type="unfinished">In Farbe</translation>
    </message>
    <message>
        <source>In grey, for a copier</source>
        <translation type="unfinished">In Grau, für den Kopierer</translation>
    </message>
    <message>
        <source>Before the push, to foretell on</source>
        <translation type="unfinished">Vor dem Drücken, zum Vorhersagen</translation>
    </message>
    <message>
        <source>Two plans side by side, or one again (B)</source>
        <translation type="unfinished">Zwei Pläne nebeneinander oder wieder einer (B)</translation>
    </message>
    <message>
        <source>Esc stops; what has been worked out stays</source>
        <translation type="unfinished">Esc hält an; was schon berechnet ist, bleibt</translation>
    </message>
    <message>
        <source>B puts another plan beside this one; click the edge to set a tip again</source>
        <translation type="unfinished">B stellt einen anderen Plan daneben; Klick auf die Kante setzt eine Spitze neu</translation>
    </message>
    <message>
        <source>The stage alone: F or Esc brings everything back.</source>
        <translation type="unfinished">Die Bühne allein: F oder Esc bringt alles zurück.</translation>
    </message>
    <message>
        <source>Quit</source>
        <translation type="unfinished">Beenden</translation>
    </message>
    <message>
        <source>Plan</source>
        <translation type="unfinished">Plan</translation>
    </message>
    <message>
        <source>Run the plan</source>
        <translation type="unfinished">Den Plan ausführen</translation>
    </message>
    <message>
        <source>Back to the start</source>
        <translation type="unfinished">Zurück zum Anfang</translation>
    </message>
    <message>
        <source>To the last moment</source>
        <translation type="unfinished">Zum letzten Moment</translation>
    </message>
    <message>
        <source>Play the moments</source>
        <translation type="unfinished">Die Momente abspielen</translation>
    </message>
    <message>
        <source>Slow motion: half, a quarter, an eighth, full</source>
        <translation type="unfinished">Zeitlupe: halb, ein Viertel, ein Achtel, voll</translation>
    </message>
    <message>
        <source>Play again and again: all, round the event, once</source>
        <translation type="unfinished">Immer wieder abspielen: alles, um das Ereignis, einmal</translation>
    </message>
    <message>
        <source>Stop at an event…</source>
        <translation type="unfinished">Bei einem Ereignis halten …</translation>
    </message>
    <message>
        <source>Add a spread</source>
        <translation type="unfinished">Ein Spreizen anfügen</translation>
    </message>
    <message>
        <source>Add a crush by a rigid body</source>
        <translation type="unfinished">Ein Eindrücken durch einen starren Körper anfügen</translation>
    </message>
    <message>
        <source>Add: let the tool off</source>
        <translation type="unfinished">Anfügen: das Gerät entlasten</translation>
    </message>
    <message>
        <source>How likely is this outcome?</source>
        <translation type="unfinished">Wie wahrscheinlich ist dieses Ergebnis?</translation>
    </message>
    <message>
        <source>Go on, or stop at the mark and cut?</source>
        <translation type="unfinished">Weitermachen, oder an der Marke anhalten und schneiden?</translation>
    </message>
    <message>
        <source>Going on, or stopping to cut</source>
        <translation type="unfinished">Weitermachen, oder anhalten und schneiden</translation>
    </message>
    <message>
        <source>Going on</source>
        <translation type="unfinished">Weitermachen</translation>
    </message>
    <message>
        <source>Stopping to cut</source>
        <translation type="unfinished">Anhalten und schneiden</translation>
    </message>
    <message>
        <source>Sheet torn</source>
        <translation type="unfinished">Blech gerissen</translation>
    </message>
    <message>
        <source>Sharp edges</source>
        <translation type="unfinished">Scharfe Kanten</translation>
    </message>
    <message>
        <source>Tips opened to</source>
        <translation type="unfinished">Spitzen geöffnet auf</translation>
    </message>
    <message>
        <source>Door opened by</source>
        <translation type="unfinished">Tür geöffnet um</translation>
    </message>
    <message>
        <source>Let go</source>
        <translation type="unfinished">Losgelassen</translation>
    </message>
    <message>
        <source>Door opened by: with the tool off again.</source>
        <translation type="unfinished">Tür geöffnet um: mit wieder abgesetztem Gerät.</translation>
    </message>
    <message>
        <source>Going on against a cut is asked of a spread: choose one in the plan.</source>
        <translation type="unfinished">Weitermachen gegen Schneiden wird bei einem Spreizen gefragt: wählen Sie eines im Plan.</translation>
    </message>
    <message>
        <source>Working out both ways on: the spread to its end, and stopped at the mark and cut. Esc stops it.</source>
        <translation type="unfinished">Beide Wege werden gerechnet: das Spreizen bis zum Ende, und an der Marke angehalten und geschnitten. Esc hält an.</translation>
    </message>
    <message>
        <source>What flips this outcome?</source>
        <translation type="unfinished">Was kippt dieses Ergebnis?</translation>
    </message>
    <message>
        <source>Ready plan: edge attack</source>
        <translation type="unfinished">Fertiger Plan: Angriff am Rand</translation>
    </message>
    <message>
        <source>Ready plan: behind the bend</source>
        <translation type="unfinished">Fertiger Plan: hinter der Biegung</translation>
    </message>
    <message>
        <source>Teach</source>
        <translation type="unfinished">Lehren</translation>
    </message>
    <message>
        <source>Lock the prediction</source>
        <translation type="unfinished">Die Vorhersage festlegen</translation>
    </message>
    <message>
        <source>Compare prediction and outcome</source>
        <translation type="unfinished">Vorhersage und Ergebnis vergleichen</translation>
    </message>
    <message>
        <source>Two plans side by side, or one again</source>
        <translation type="unfinished">Zwei Pläne nebeneinander, oder wieder einer</translation>
    </message>
    <message>
        <source>Present to a class, or end it</source>
        <translation type="unfinished">Einer Klasse vorführen, oder beenden</translation>
    </message>
    <message>
        <source>Shut answers, ladder, arrow and map, or open them</source>
        <translation type="unfinished">Antworten, Leiter, Pfeil und Karte schließen oder öffnen</translation>
    </message>
    <message>
        <source>Answers shut</source>
        <translation type="unfinished">Antworten geschlossen</translation>
    </message>
    <message>
        <source>Ladder, work and force shut</source>
        <translation type="unfinished">Leiter, Arbeit und Kraft geschlossen</translation>
    </message>
    <message>
        <source>Arrow before the push shut</source>
        <translation type="unfinished">Pfeil vor dem Druck geschlossen</translation>
    </message>
    <message>
        <source>Outcome map and likelihoods shut</source>
        <translation type="unfinished">Ergebniskarte und Wahrscheinlichkeiten geschlossen</translation>
    </message>
    <message>
        <source>Open a lesson…</source>
        <translation type="unfinished">Eine Lektion öffnen …</translation>
    </message>
    <message>
        <source>Lesson or plan beside the stage</source>
        <translation type="unfinished">Lektion oder Plan neben der Bühne</translation>
    </message>
    <message>
        <source>Next step of the lesson</source>
        <translation type="unfinished">Nächster Schritt der Lektion</translation>
    </message>
    <message>
        <source>Step before</source>
        <translation type="unfinished">Schritt davor</translation>
    </message>
    <message>
        <source>Questions of the lesson</source>
        <translation type="unfinished">Fragen der Lektion</translation>
    </message>
    <message>
        <source>Sheets of lesson or plan: print, PDF…</source>
        <translation type="unfinished">Blätter zu Lektion oder Plan: drucken, PDF …</translation>
    </message>
    <message>
        <source>Words of the trade</source>
        <translation type="unfinished">Fachwörter</translation>
    </message>
    <message>
        <source>View</source>
        <translation type="unfinished">Ansicht</translation>
    </message>
    <message>
        <source>Stage only</source>
        <translation type="unfinished">Nur die Bühne</translation>
    </message>
    <message>
        <source>Projector: white ground, large type</source>
        <translation type="unfinished">Beamer: weißer Grund, große Schrift</translation>
    </message>
    <message>
        <source>Dark theme</source>
        <translation type="unfinished">Dunkles Aussehen</translation>
    </message>
    <message>
        <source>Larger type</source>
        <translation type="unfinished">Größere Schrift</translation>
    </message>
    <message>
        <source>Smaller type</source>
        <translation type="unfinished">Kleinere Schrift</translation>
    </message>
    <message>
        <source>Right button turns the picture, left one only sets tips</source>
        <translation type="unfinished">Rechte Taste dreht das Bild, linke setzt nur Spitzen</translation>
    </message>
    <message>
        <source>Moments as stills, no motion</source>
        <translation type="unfinished">Momente als Standbilder, keine Bewegung</translation>
    </message>
    <message>
        <source>Pounds and inches</source>
        <translation type="unfinished">Pfund und Zoll</translation>
    </message>
    <message>
        <source>Next colours</source>
        <translation type="unfinished">Nächste Farben</translation>
    </message>
    <message>
        <source>Next view</source>
        <translation type="unfinished">Nächste Ansicht</translation>
    </message>
    <message>
        <source>View: three-quarter from behind</source>
        <translation type="unfinished">Ansicht: schräg von hinten</translation>
    </message>
    <message>
        <source>View: three-quarter from the front</source>
        <translation type="unfinished">Ansicht: schräg von vorn</translation>
    </message>
    <message>
        <source>View: close on the latch</source>
        <translation type="unfinished">Ansicht: nah am Schloss</translation>
    </message>
    <message>
        <source>View: section from above</source>
        <translation type="unfinished">Ansicht: Schnitt von oben</translation>
    </message>
    <message>
        <source>View: square to the side</source>
        <translation type="unfinished">Ansicht: gerade auf die Seite</translation>
    </message>
    <message>
        <source>View: from the patient's seat</source>
        <translation type="unfinished">Ansicht: vom Platz des Patienten</translation>
    </message>
    <message>
        <source>Back to where you looked from</source>
        <translation type="unfinished">Zurück zum letzten Blick</translation>
    </message>
    <message>
        <source>Section plane</source>
        <translation type="unfinished">Schnittebene</translation>
    </message>
    <message>
        <source>Parts drawn apart</source>
        <translation type="unfinished">Teile auseinandergezogen</translation>
    </message>
    <message>
        <source>Outline of the start shape</source>
        <translation type="unfinished">Umriss der Anfangsform</translation>
    </message>
    <message>
        <source>Measure</source>
        <translation type="unfinished">Messen</translation>
    </message>
    <message>
        <source>Pen and arrows</source>
        <translation type="unfinished">Stift und Pfeile</translation>
    </message>
    <message>
        <source>Plan drawer</source>
        <translation type="unfinished">Schublade Plan</translation>
    </message>
    <message>
        <source>Reading drawer</source>
        <translation type="unfinished">Schublade Ablesung</translation>
    </message>
    <message>
        <source>Full screen</source>
        <translation type="unfinished">Ganzer Bildschirm</translation>
    </message>
    <message>
        <source>Columns and window as at first</source>
        <translation type="unfinished">Spalten und Fenster wie am Anfang</translation>
    </message>
    <message>
        <source>Help</source>
        <translation type="unfinished">Hilfe</translation>
    </message>
    <message>
        <source>Show the caution again</source>
        <translation type="unfinished">Den Warnhinweis noch einmal zeigen</translation>
    </message>
    <message>
        <source>Before metal work on a real car</source>
        <translation type="unfinished">Vor der Arbeit am Metall eines echten Autos</translation>
    </message>
    <message>
        <source>Model card: what this is, and who says so</source>
        <translation type="unfinished">Modellblatt: was dies ist, und wer es sagt</translation>
    </message>
    <message>
        <source>This moment in words</source>
        <translation type="unfinished">Dieser Moment in Worten</translation>
    </message>
    <message>
        <source>Will it run here</source>
        <translation type="unfinished">Läuft es hier</translation>
    </message>
    <message>
        <source>What happened in the program: log, report</source>
        <translation type="unfinished">Was im Programm geschah: Protokoll, Bericht</translation>
    </message>
    <message>
        <source>Find an action by its words…</source>
        <translation type="unfinished">Eine Aktion mit Wörtern finden …</translation>
    </message>
    <message>
        <source>Tip and moments</source>
        <translation type="unfinished">Spitze und Momente</translation>
    </message>
    <message>
        <source>Tip deeper, by 2 mm</source>
        <translation type="unfinished">Spitze tiefer, um 2 mm</translation>
    </message>
    <message>
        <source>Tip less deep, by 2 mm</source>
        <translation type="unfinished">Spitze weniger tief, um 2 mm</translation>
    </message>
    <message>
        <source>Tip deeper, by 10 mm</source>
        <translation type="unfinished">Spitze tiefer, um 10 mm</translation>
    </message>
    <message>
        <source>Tip less deep, by 10 mm</source>
        <translation type="unfinished">Spitze weniger tief, um 10 mm</translation>
    </message>
    <message>
        <source>Push tilted further outward</source>
        <translation type="unfinished">Druck weiter nach außen geneigt</translation>
    </message>
    <message>
        <source>Push tilted further inward</source>
        <translation type="unfinished">Druck weiter nach innen geneigt</translation>
    </message>
    <message>
        <source>Tip up along the edge</source>
        <translation type="unfinished">Spitze die Kante hinauf</translation>
    </message>
    <message>
        <source>Tip down along the edge</source>
        <translation type="unfinished">Spitze die Kante hinunter</translation>
    </message>
    <message>
        <source>Tip up by 50 mm</source>
        <translation type="unfinished">Spitze um 50 mm hinauf</translation>
    </message>
    <message>
        <source>Tip down by 50 mm</source>
        <translation type="unfinished">Spitze um 50 mm hinunter</translation>
    </message>
    <message>
        <source>One moment back</source>
        <translation type="unfinished">Einen Moment zurück</translation>
    </message>
    <message>
        <source>One moment on</source>
        <translation type="unfinished">Einen Moment weiter</translation>
    </message>
    <message>
        <source>Last event, or the page before</source>
        <translation type="unfinished">Letztes Ereignis, oder die Seite davor</translation>
    </message>
    <message>
        <source>Next event, or the next page</source>
        <translation type="unfinished">Nächstes Ereignis, oder die nächste Seite</translation>
    </message>
    <message>
        <source>Space, held</source>
        <translation type="unfinished">Leertaste, gehalten</translation>
    </message>
    <message>
        <source>Open the tips; let go to stop</source>
        <translation type="unfinished">Die Spitzen öffnen; Loslassen hält an</translation>
    </message>
    <message>
        <source>1 to 9</source>
        <translation type="unfinished">1 bis 9</translation>
    </message>
    <message>
        <source>A layer: solid, see-through, off</source>
        <translation type="unfinished">Eine Schicht: voll, durchsichtig, aus</translation>
    </message>
    <message>
        <source>Left button on the door</source>
        <translation type="unfinished">Linke Taste auf der Tür</translation>
    </message>
    <message>
        <source>Put a tip there</source>
        <translation type="unfinished">Dort eine Spitze ansetzen</translation>
    </message>
    <message>
        <source>Left button, drawn</source>
        <translation type="unfinished">Linke Taste, gezogen</translation>
    </message>
    <message>
        <source>Turn the picture (or the right one: menu View)</source>
        <translation type="unfinished">Das Bild drehen (oder die rechte: Menü Ansicht)</translation>
    </message>
    <message>
        <source>The same with Shift</source>
        <translation type="unfinished">Dasselbe mit Umschalt</translation>
    </message>
    <message>
        <source>Shift the picture</source>
        <translation type="unfinished">Das Bild verschieben</translation>
    </message>
    <message>
        <source>Wheel</source>
        <translation type="unfinished">Rad</translation>
    </message>
    <message>
        <source>Nearer, further; after a tip is put: its depth, with Shift its tilt</source>
        <translation type="unfinished">Näher, weiter; nach dem Ansetzen einer Spitze: ihre Tiefe, mit Umschalt ihre Neigung</translation>
    </message>
    <message>
        <source>Ctrl+Wheel</source>
        <translation type="unfinished">Strg+Rad</translation>
    </message>
    <message>
        <source>Depth at any time; with Shift the tilt</source>
        <translation type="unfinished">Jederzeit die Tiefe; mit Umschalt die Neigung</translation>
    </message>
    <message>
        <source>Tab, Shift+Tab</source>
        <translation type="unfinished">Tab, Umschalt+Tab</translation>
    </message>
    <message>
        <source>To the next control, to the one before</source>
        <translation type="unfinished">Zum nächsten Bedienteil, zu dem davor</translation>
    </message>
    <message>
        <source>Alt and a letter</source>
        <translation type="unfinished">Alt und ein Buchstabe</translation>
    </message>
    <message>
        <source>Open a menu</source>
        <translation type="unfinished">Ein Menü öffnen</translation>
    </message>
    <message>
        <source>outer skin</source>
        <translation type="unfinished">Außenhaut</translation>
    </message>
    <message>
        <source>bar</source>
        <translation type="unfinished">Träger</translation>
    </message>
    <message>
        <source>latch and hinges</source>
        <translation type="unfinished">Schloss und Scharniere</translation>
    </message>
    <message>
        <source>pillar between the doors</source>
        <translation type="unfinished">Säule zwischen den Türen</translation>
    </message>
    <message>
        <source>trim, seals and glass</source>
        <translation type="unfinished">Verkleidung, Dichtungen und Glas</translation>
    </message>
    <message>
        <source>occupant</source>
        <translation type="unfinished">Insasse</translation>
    </message>
    <message>
        <source>Plain metal</source>
        <translation type="unfinished">Blankes Metall</translation>
    </message>
    <message>
        <source>Moved out or in</source>
        <translation type="unfinished">Nach außen oder innen bewegt</translation>
    </message>
    <message>
        <source>Seam</source>
        <translation type="unfinished">Naht</translation>
    </message>
    <message>
        <source>Load in the metal</source>
        <translation type="unfinished">Last im Metall</translation>
    </message>
    <message>
        <source>solid</source>
        <translation type="unfinished">voll</translation>
    </message>
    <message>
        <source>see-through</source>
        <translation type="unfinished">durchsichtig</translation>
    </message>
    <message>
        <source>off</source>
        <translation type="unfinished">aus</translation>
    </message>
    <message>
        <source>Answers: what happened, in words</source>
        <translation type="unfinished">Antworten: was geschah, in Worten</translation>
    </message>
    <message>
        <source>Ladder, work and force</source>
        <translation type="unfinished">Leiter, Arbeit und Kraft</translation>
    </message>
    <message>
        <source>Arrow before the push</source>
        <translation type="unfinished">Pfeil vor dem Druck</translation>
    </message>
    <message>
        <source>Outcome map and likelihoods</source>
        <translation type="unfinished">Ergebniskarte und Wahrscheinlichkeiten</translation>
    </message>
    <message>
        <source>springs back when let off</source>
        <translation type="unfinished">federt beim Entlasten zurück</translation>
    </message>
    <message>
        <source>folding the outer skin</source>
        <translation type="unfinished">Falten der Außenhaut</translation>
    </message>
    <message>
        <source>folding the inner panel</source>
        <translation type="unfinished">Falten des Innenblechs</translation>
    </message>
    <message>
        <source>folding the bar</source>
        <translation type="unfinished">Falten des Trägers</translation>
    </message>
    <message>
        <source>folding the pillar</source>
        <translation type="unfinished">Falten der Säule</translation>
    </message>
    <message>
        <source>folding the rocker</source>
        <translation type="unfinished">Falten des Schwellers</translation>
    </message>
    <message>
        <source>folding the roof rail</source>
        <translation type="unfinished">Falten des Dachholms</translation>
    </message>
    <message>
        <source>peeling the seam</source>
        <translation type="unfinished">Schälen der Naht</translation>
    </message>
    <message>
        <source>peeling seam and spots</source>
        <translation type="unfinished">Abschälen von Naht und Punkten</translation>
    </message>
    <message>
        <source>shearing seam and spots</source>
        <translation type="unfinished">Abscheren von Naht und Punkten</translation>
    </message>
    <message>
        <source>shearing the seam</source>
        <translation type="unfinished">Scheren der Naht</translation>
    </message>
    <message>
        <source>pads and seals</source>
        <translation type="unfinished">Polster und Dichtungen</translation>
    </message>
    <message>
        <source>tearing the sheet</source>
        <translation type="unfinished">Reißen des Blechs</translation>
    </message>
    <message>
        <source>cutting</source>
        <translation type="unfinished">Schneiden</translation>
    </message>
    <message>
        <source>the bar's feet</source>
        <translation type="unfinished">Füße des Trägers</translation>
    </message>
    <message>
        <source>friction</source>
        <translation type="unfinished">Reibung</translation>
    </message>
    <message>
        <source>denting what the ram stands on</source>
        <translation type="unfinished">Eindellen, worauf der Zylinder steht</translation>
    </message>
    <message>
        <source>slow flow (model)</source>
        <translation type="unfinished">langsames Fließen (Modell)</translation>
    </message>
    <message>
        <source>dropped</source>
        <translation type="unfinished">gefallen</translation>
    </message>
    <message>
        <source>let go in a jump</source>
        <translation type="unfinished">im Sprung losgelassen</translation>
    </message>
    <message>
        <source>not accounted for</source>
        <translation type="unfinished">nicht zugeordnet</translation>
    </message>
    <message>
        <source>Language: English, or German as a draft</source>
        <translation type="unfinished">Sprache: Englisch, oder Deutsch als Entwurf</translation>
    </message>
    <message>
        <source>key</source>
        <translation type="unfinished">Taste</translation>
    </message>
    <message>
        <source>Kept shut</source>
        <translation type="unfinished">Geschlossen gehalten</translation>
    </message>
    <message>
        <source>Nothing is loaded yet</source>
        <translation type="unfinished">Noch nichts belastet</translation>
    </message>
    <message>
        <source>No work has been done yet</source>
        <translation type="unfinished">Noch keine Arbeit getan</translation>
    </message>
    <message>
        <source>travel</source>
        <translation type="unfinished">Weg</translation>
    </message>
    <message>
        <source>opening</source>
        <translation type="unfinished">Öffnung</translation>
    </message>
    <message>
        <source>force</source>
        <translation type="unfinished">Kraft</translation>
    </message>
    <message>
        <source>Not run yet</source>
        <translation type="unfinished">Noch nicht ausgeführt</translation>
    </message>
    <message>
        <source>Depth</source>
        <translation type="unfinished">Tiefe</translation>
    </message>
    <message>
        <source>Tilt</source>
        <translation type="unfinished">Neigung</translation>
    </message>
    <message>
        <source>Back to the stage</source>
        <translation type="unfinished">Zurück zur Bühne</translation>
    </message>
    <message>
        <source># nodes, ready</source>
        <translation type="unfinished"># Knoten, bereit</translation>
    </message>
    <message>
        <source># nodes, # steps, CHOLMOD, # s</source>
        <translation type="unfinished"># Knoten, # Schritte, CHOLMOD, # s</translation>
    </message>
    <message>
        <source># nodes, # steps, SuperLU, # s</source>
        <translation type="unfinished"># Knoten, # Schritte, SuperLU, # s</translation>
    </message>
    <message>
        <source>Click the door's edge to set tip one</source>
        <translation type="unfinished">Auf die Türkante klicken setzt Spitze eins an</translation>
    </message>
    <message>
        <source>Click what stands still beside it for tip two, or leave it across the gap</source>
        <translation type="unfinished">Für Spitze zwei anklicken, was daneben stillsteht, oder sie jenseits des Spalts lassen</translation>
    </message>
    <message>
        <source>Click the skin to set where along the car the body presses</source>
        <translation type="unfinished">Auf die Haut klicken legt fest, wo am Auto der Körper drückt</translation>
    </message>
    <message>
        <source>wheel: depth, Shift+wheel: tilt, Esc: wheel zooms again</source>
        <translation type="unfinished">Rad: Tiefe, Umschalt+Rad: Neigung, Esc: das Rad holt wieder näher</translation>
    </message>
    <message>
        <source>Point at the edge of the door and click to set the first tip, or open the tips where they stand.</source>
        <translation type="unfinished">Auf die Kante der Tür zeigen und klicken setzt die erste Spitze an; oder die Spitzen öffnen, wo sie stehen.</translation>
    </message>
    <message>
        <source>Do it</source>
        <translation type="unfinished">Tun</translation>
    </message>
    <message>
        <source>Take hold</source>
        <translation type="unfinished">Festhalten</translation>
    </message>
    <message>
        <source>Strip</source>
        <translation type="unfinished">Freilegen</translation>
    </message>
    <message>
        <source>Let the tool off</source>
        <translation type="unfinished">Das Gerät entlasten</translation>
    </message>
    <message>
        <source>Let go to stop</source>
        <translation type="unfinished">Loslassen hält an</translation>
    </message>
    <message>
        <source>Setting out the door</source>
        <translation type="unfinished">Die Tür wird aufgebaut</translation>
    </message>
    <message>
        <source>Getting ready</source>
        <translation type="unfinished">Vorbereiten</translation>
    </message>
    <message>
        <source>Letting go</source>
        <translation type="unfinished">Loslassen</translation>
    </message>
    <message>
        <source>Kept shut by the teacher: key T, or the menu Teach.</source>
        <translation type="unfinished">Von der Lehrkraft geschlossen gehalten: Taste T, oder das Menü Lehren.</translation>
    </message>
    <message>
        <source>Nothing has been pushed yet.</source>
        <translation type="unfinished">Es wurde noch nicht gedrückt.</translation>
    </message>
    <message>
        <source>Outcome map along the door's edges</source>
        <translation type="unfinished">Ergebniskarte entlang der Türkanten</translation>
    </message>
    <message>
        <source>Outcome map: large chart</source>
        <translation type="unfinished">Ergebniskarte: große Tafel</translation>
    </message>
    <message>
        <source>Outcome map</source>
        <translation type="unfinished">Ergebniskarte</translation>
    </message>
    <message>
        <source>Make the map</source>
        <translation type="unfinished">Karte erstellen</translation>
    </message>
    <message>
        <source>Push at every place of the edges, each by itself</source>
        <translation type="unfinished">An jeder Stelle der Kanten drücken, jede für sich</translation>
    </message>
    <message>
        <source>What has been worked out is kept (Esc)</source>
        <translation type="unfinished">Was gerechnet ist, bleibt erhalten (Esc)</translation>
    </message>
    <message>
        <source>Large chart</source>
        <translation type="unfinished">Große Tafel</translation>
    </message>
    <message>
        <source>The chart over the whole window (Ctrl+Shift+M)</source>
        <translation type="unfinished">Die Tafel über dem ganzen Fenster (Ctrl+Shift+M)</translation>
    </message>
    <message>
        <source>In words</source>
        <translation type="unfinished">In Worten</translation>
    </message>
    <message>
        <source>The map in words, to be read or copied</source>
        <translation type="unfinished">Die Karte in Worten, zum Lesen oder Kopieren</translation>
    </message>
    <message>
        <source>Put the map away</source>
        <translation type="unfinished">Karte weglegen</translation>
    </message>
    <message>
        <source>Chart of the outcome map</source>
        <translation type="unfinished">Tafel der Ergebniskarte</translation>
    </message>
    <message>
        <source>Show what changes on another door or with another tool</source>
        <translation type="unfinished">Zeigen, was sich bei anderer Tür oder anderem Gerät ändert</translation>
    </message>
    <message>
        <source>Latch edge</source>
        <translation type="unfinished">Schlosskante</translation>
    </message>
    <message>
        <source>Hinge edge</source>
        <translation type="unfinished">Scharnierkante</translation>
    </message>
    <message>
        <source>lip</source>
        <translation type="unfinished">Falzkante</translation>
    </message>
    <message>
        <source>belt</source>
        <translation type="unfinished">Brüstung</translation>
    </message>
    <message>
        <source>sill</source>
        <translation type="unfinished">Schweller</translation>
    </message>
    <message>
        <source>bend</source>
        <translation type="unfinished">Biegung</translation>
    </message>
    <message>
        <source>behind the bend</source>
        <translation type="unfinished">hinter der Biegung</translation>
    </message>
    <message>
        <source>upper hinge</source>
        <translation type="unfinished">oberes Scharnier</translation>
    </message>
    <message>
        <source>lower hinge</source>
        <translation type="unfinished">unteres Scharnier</translation>
    </message>
    <message>
        <source>seam parting</source>
        <translation type="unfinished">Naht geht auf</translation>
    </message>
    <message>
        <source>weld broken</source>
        <translation type="unfinished">Schweißpunkt reißt</translation>
    </message>
    <message>
        <source>latch free</source>
        <translation type="unfinished">Schloss frei</translation>
    </message>
    <message>
        <source>striker out</source>
        <translation type="unfinished">Schließkeil frei</translation>
    </message>
    <message>
        <source>hinge free</source>
        <translation type="unfinished">Scharnier frei</translation>
    </message>
    <message>
        <source>bar foot free</source>
        <translation type="unfinished">Trägerfuß frei</translation>
    </message>
    <message>
        <source>skin tearing</source>
        <translation type="unfinished">Blech reißt</translation>
    </message>
    <message>
        <source>tip shearing through</source>
        <translation type="unfinished">Spitze geht durch</translation>
    </message>
    <message>
        <source>tip off</source>
        <translation type="unfinished">Spitze abgerutscht</translation>
    </message>
    <message>
        <source>tip slipping</source>
        <translation type="unfinished">Spitze rutscht</translation>
    </message>
    <message>
        <source>stalled</source>
        <translation type="unfinished">Gerät steht</translation>
    </message>
    <message>
        <source>bending</source>
        <translation type="unfinished">biegt sich</translation>
    </message>
    <message>
        <source>holding</source>
        <translation type="unfinished">hält</translation>
    </message>
    <message>
        <source>folding out</source>
        <translation type="unfinished">faltet nach außen</translation>
    </message>
    <message>
        <source>folding in</source>
        <translation type="unfinished">faltet nach innen</translation>
    </message>
    <message>
        <source>cannot be set</source>
        <translation type="unfinished">nicht ansetzbar</translation>
    </message>
    <message>
        <source>Compare with another door or tool…</source>
        <translation type="unfinished">Mit anderer Tür oder anderem Gerät vergleichen…</translation>
    </message>
    <message>
        <source>A map is made of a spread: select one, or add one to the plan.</source>
        <translation type="unfinished">Eine Karte entsteht aus einem Spreizen: eines wählen oder dem Plan hinzufügen.</translation>
    </message>
    <message>
        <source>The outcome map is kept shut; key T opens it.</source>
        <translation type="unfinished">Die Ergebniskarte ist verschlossen; Taste T öffnet sie.</translation>
    </message>
    <message>
        <source>The outcome map is kept shut until prediction and outcome have been compared.</source>
        <translation type="unfinished">Die Ergebniskarte bleibt verschlossen, bis Vorhersage und Ergebnis verglichen sind.</translation>
    </message>
    <message>
        <source>Point at a place, on the chart or on the door; a click sets the tips there.</source>
        <translation type="unfinished">Auf eine Stelle zeigen, auf der Tafel oder an der Tür; ein Klick setzt die Spitzen dorthin.</translation>
    </message>
    <message>
        <source>Outcome map in words</source>
        <translation type="unfinished">Ergebniskarte in Worten</translation>
    </message>
    <message>
        <source>The outcome map in words</source>
        <translation type="unfinished">Die Ergebniskarte in Worten</translation>
    </message>
    <message>
        <source>From the sill up, edge by edge and depth by depth.</source>
        <translation type="unfinished">Vom Schweller aufwärts, Kante für Kante und Tiefe für Tiefe.</translation>
    </message>
    <message>
        <source>Copy the words</source>
        <translation type="unfinished">Worte kopieren</translation>
    </message>
    <message>
        <source>What may happen is kept shut</source>
        <translation type="unfinished">Was geschehen kann, ist verschlossen</translation>
    </message>
    <message>
        <source>Tip one to the next edge: latch, sill, hinge, belt</source>
        <translation type="unfinished">Spitze eins zur nächsten Kante: Schloss, Schweller, Scharnier, Brüstung</translation>
    </message>
    <message>
        <source>Tip two to its next place</source>
        <translation type="unfinished">Spitze zwei an ihren nächsten Platz</translation>
    </message>
    <message>
        <source>Tip two up along its place, or rearward</source>
        <translation type="unfinished">Spitze zwei nach oben oder nach hinten</translation>
    </message>
    <message>
        <source>Tip two down along its place, or forward</source>
        <translation type="unfinished">Spitze zwei nach unten oder nach vorn</translation>
    </message>
    <message>
        <source>Last event, in a lesson too</source>
        <translation type="unfinished">Voriges Ereignis, auch in einer Lektion</translation>
    </message>
    <message>
        <source>Next event, in a lesson too</source>
        <translation type="unfinished">Nächstes Ereignis, auch in einer Lektion</translation>
    </message>
    <message>
        <source>The move's fields</source>
        <translation type="unfinished">Felder des Schritts</translation>
    </message>
    <message>
        <source>Earlier</source>
        <translation type="unfinished">Früher</translation>
    </message>
    <message>
        <source>Later</source>
        <translation type="unfinished">Später</translation>
    </message>
    <message>
        <source>Take out</source>
        <translation type="unfinished">Herausnehmen</translation>
    </message>
    <message>
        <source>There is nothing to set here.</source>
        <translation type="unfinished">Hier ist nichts einzustellen.</translation>
    </message>
    <message>
        <source>Change this move (Ctrl+E)</source>
        <translation type="unfinished">Diesen Schritt ändern (Strg+E)</translation>
    </message>
    <message>
        <source>Other…</source>
        <translation type="unfinished">Anderes…</translation>
    </message>
    <message>
        <source>Add a move of another type, or a wreck before the plan</source>
        <translation type="unfinished">Schritt einer anderen Art anfügen, oder einen Unfall vor dem Plan</translation>
    </message>
    <message>
        <source>Work it out</source>
        <translation type="unfinished">Ausrechnen</translation>
    </message>
    <message>
        <source>Change how the car is wrecked</source>
        <translation type="unfinished">Ändern, wie der Wagen beschädigt wird</translation>
    </message>
    <message>
        <source>Take the wreck out of the plan</source>
        <translation type="unfinished">Unfall aus dem Plan nehmen</translation>
    </message>
    <message>
        <source>Add a squeeze</source>
        <translation type="unfinished">Quetschen anfügen</translation>
    </message>
    <message>
        <source>Add: flex with a forcible-entry bar</source>
        <translation type="unfinished">Anfügen: mit der Brechstange biegen</translation>
    </message>
    <message>
        <source>Add a cut</source>
        <translation type="unfinished">Schnitt anfügen</translation>
    </message>
    <message>
        <source>Add: strip trim, seals, glass</source>
        <translation type="unfinished">Anfügen: Verkleidung, Dichtungen, Glas abnehmen</translation>
    </message>
    <message>
        <source>Add: press with a ram</source>
        <translation type="unfinished">Anfügen: mit dem Rettungszylinder drücken</translation>
    </message>
    <message>
        <source>Add: check a latch or hold it open</source>
        <translation type="unfinished">Anfügen: ein Schloss prüfen oder offen halten</translation>
    </message>
    <message>
        <source>Check a latch or hold it open</source>
        <translation type="unfinished">Ein Schloss prüfen oder offen halten</translation>
    </message>
    <message>
        <source>pull and let go: look</source>
        <translation type="unfinished">ziehen und loslassen: nachsehen</translation>
    </message>
    <message>
        <source>pull and hold it open</source>
        <translation type="unfinished">ziehen und offen halten</translation>
    </message>
    <message>
        <source>Duplicate this car and change one thing</source>
        <translation type="unfinished">Dieses Auto verdoppeln und eines ändern</translation>
    </message>
    <message>
        <source>The twin of this car</source>
        <translation type="unfinished">Der Zwilling dieses Autos</translation>
    </message>
    <message>
        <source>Change one thing on it: both are worked out. Another change takes its place.</source>
        <translation type="unfinished">Ändern Sie eines an ihm: beide werden gerechnet. Eine andere Änderung tritt an ihre Stelle.</translation>
    </message>
    <message>
        <source>Twin of this car, one thing changed</source>
        <translation type="unfinished">Zwilling dieses Autos, eines geändert</translation>
    </message>
    <message>
        <source>Add: take hold of a door</source>
        <translation type="unfinished">Anfügen: eine Tür halten</translation>
    </message>
    <message>
        <source>Add: put the car on blocks</source>
        <translation type="unfinished">Anfügen: Wagen auf Klötze stellen</translation>
    </message>
    <message>
        <source>Put a wreck before the plan</source>
        <translation type="unfinished">Einen Unfall vor den Plan setzen</translation>
    </message>
    <message>
        <source>Change the move</source>
        <translation type="unfinished">Schritt ändern</translation>
    </message>
    <message>
        <source>Put the move earlier</source>
        <translation type="unfinished">Schritt früher stellen</translation>
    </message>
    <message>
        <source>Put the move later</source>
        <translation type="unfinished">Schritt später stellen</translation>
    </message>
    <message>
        <source>Take the move out of the plan</source>
        <translation type="unfinished">Schritt aus dem Plan nehmen</translation>
    </message>
    <message>
        <source>How the car was wrecked: work it out, watch it</source>
        <translation type="unfinished">Wie der Wagen beschädigt wurde: ausrechnen, ansehen</translation>
    </message>
    <message>
        <source>Next card</source>
        <translation type="unfinished">Nächste Karte</translation>
    </message>
    <message>
        <source>Before metal work</source>
        <translation type="unfinished">Vor der Arbeit am Blech</translation>
    </message>
    <message>
        <source>The list before metal work on a real car</source>
        <translation type="unfinished">Die Liste vor der Arbeit an einem echten Wagen</translation>
    </message>
    <message>
        <source>Caution</source>
        <translation type="unfinished">Vorsicht</translation>
    </message>
    <message>
        <source>Add: spread the ends of a cut</source>
        <translation type="unfinished">Anfügen: die Enden eines Schnitts spreizen</translation>
    </message>
    <message>
        <source>Roof rail's wall</source>
        <translation type="unfinished">Dachholmwand</translation>
    </message>
    <message>
        <source>Roof rail held</source>
        <translation type="unfinished">Dachholm gehalten</translation>
    </message>
    <message>
        <source>wrecks: solving what is not kept yet</source>
        <translation type="unfinished">Unfälle: was noch nicht aufbewahrt ist, wird gelöst</translation>
    </message>
    <message>
        <source>Ask the class first (A), or run the push (Return): this would tell what it does.</source>
        <translation type="unfinished">Erst die Klasse fragen (A) oder rechnen lassen (Eingabe): dies würde verraten, was der Druck tut.</translation>
    </message>
    <message>
        <source>Nothing was printed: the printer took no page. Save the sheet as PDF instead.</source>
        <translation type="unfinished">Nichts wurde gedruckt: der Drucker nahm keine Seite an. Das Blatt stattdessen als PDF sichern.</translation>
    </message>
    <message>
        <source>Making the sheet …</source>
        <translation type="unfinished">Das Blatt wird gemacht …</translation>
    </message>
    <message>
        <source>What may happen is kept shut until prediction and outcome have been compared.</source>
        <translation type="unfinished">Was geschehen kann, bleibt verschlossen, bis Vorhersage und Ergebnis verglichen sind.</translation>
    </message>
    <message>
        <source>What may happen is kept shut; key T opens it.</source>
        <translation type="unfinished">Was geschehen kann, ist verschlossen; Taste T öffnet es.</translation>
    </message>
    <message>
        <source>more</source>
        <translation type="unfinished">mehr</translation>
    </message>
    <message>
        <source>[ and ], with Shift for more</source>
        <translation type="unfinished">[ und ], mit Umschalt für mehr</translation>
    </message>
    <message>
        <source>, and .</source>
        <translation type="unfinished">, und .</translation>
    </message>
</context>
</TS>
