<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<!-- Draft, not reviewed; words of the trade from memory. Entwurf, nicht geprüft; Fachwörter aus dem Gedächtnis. -->
<TS version="2.1" language="de_DE" sourcelanguage="en_GB">
<context>
    <name>Told</name>
    <message>
        <source> and </source>
        <translation type="unfinished"> und </translation>
    </message>
    <message>
        <source> to </source>
        <translation type="unfinished"> bis </translation>
    </message>
    <message>
        <source>latch</source>
        <translation type="unfinished">Schloss</translation>
    </message>
    <message>
        <source>striker</source>
        <translation type="unfinished">Schließkeil</translation>
    </message>
    <message>
        <source>wedged striker</source>
        <translation type="unfinished">verklemmter Schließkeil</translation>
    </message>
    <message>
        <source>rear {part}</source>
        <translation type="unfinished">{part} hinten</translation>
    </message>
    <message>
        <source>front {part}</source>
        <translation type="unfinished">{part} vorn</translation>
    </message>
    <message>
        <source>inner panel</source>
        <translation type="unfinished">Innenblech</translation>
    </message>
    <message>
        <source>hem</source>
        <translation type="unfinished">Falz</translation>
    </message>
    <message>
        <source>hem lip</source>
        <translation type="unfinished">Falzkante</translation>
    </message>
    <message>
        <source>seam</source>
        <translation type="unfinished">Naht</translation>
    </message>
    <message>
        <source>latch plate</source>
        <translation type="unfinished">Schlossplatte</translation>
    </message>
    <message>
        <source>shut face</source>
        <translation type="unfinished">Stirnfläche</translation>
    </message>
    <message>
        <source>shut-face edge</source>
        <translation type="unfinished">Rand der Stirnfläche</translation>
    </message>
    <message>
        <source>behind the inner bend</source>
        <translation type="unfinished">hinter der inneren Biegung</translation>
    </message>
    <message>
        <source>inner bend</source>
        <translation type="unfinished">innere Biegung</translation>
    </message>
    <message>
        <source>belt line</source>
        <translation type="unfinished">Brüstung</translation>
    </message>
    <message>
        <source>belt outer lip</source>
        <translation type="unfinished">Außenlippe der Brüstung</translation>
    </message>
    <message>
        <source>belt inner lip</source>
        <translation type="unfinished">Innenlippe der Brüstung</translation>
    </message>
    <message>
        <source>belt: both lips</source>
        <translation type="unfinished">Brüstung, beide Lippen</translation>
    </message>
    <message>
        <source>both lips</source>
        <translation type="unfinished">beide Lippen</translation>
    </message>
    <message>
        <source>outer lip</source>
        <translation type="unfinished">Außenlippe</translation>
    </message>
    <message>
        <source>inner lip</source>
        <translation type="unfinished">Innenlippe</translation>
    </message>
    <message>
        <source>inner face</source>
        <translation type="unfinished">Innenfläche</translation>
    </message>
    <message>
        <source>in air</source>
        <translation type="unfinished">in der Luft</translation>
    </message>
    <message>
        <source>air</source>
        <translation type="unfinished">Luft</translation>
    </message>
    <message>
        <source>pillar</source>
        <translation type="unfinished">Säule</translation>
    </message>
    <message>
        <source>pillar edge</source>
        <translation type="unfinished">Säulenkante</translation>
    </message>
    <message>
        <source>pillar outside</source>
        <translation type="unfinished">Säulenaußenseite</translation>
    </message>
    <message>
        <source>pillar foot</source>
        <translation type="unfinished">Säulenfuß</translation>
    </message>
    <message>
        <source>pillar head</source>
        <translation type="unfinished">Säulenkopf</translation>
    </message>
    <message>
        <source>hinge pillar</source>
        <translation type="unfinished">Scharniersäule</translation>
    </message>
    <message>
        <source>rocker</source>
        <translation type="unfinished">Schweller</translation>
    </message>
    <message>
        <source>roof rail</source>
        <translation type="unfinished">Dachholm</translation>
    </message>
    <message>
        <source>ground</source>
        <translation type="unfinished">Boden</translation>
    </message>
    <message>
        <source>window frame</source>
        <translation type="unfinished">Fensterrahmen</translation>
    </message>
    <message>
        <source>body</source>
        <translation type="unfinished">Karosserie</translation>
    </message>
    <message>
        <source>bar foot {n}</source>
        <translation type="unfinished">Trägerfuß {n}</translation>
    </message>
    <message>
        <source>bar foot hinge</source>
        <translation type="unfinished">Trägerfuß am Scharnier</translation>
    </message>
    <message>
        <source>bar foot latch</source>
        <translation type="unfinished">Trägerfuß am Schloss</translation>
    </message>
    <message>
        <source>bar foot</source>
        <translation type="unfinished">Trägerfuß</translation>
    </message>
    <message>
        <source>bar feet</source>
        <translation type="unfinished">Trägerfüße</translation>
    </message>
    <message>
        <source>fork</source>
        <translation type="unfinished">Gabel</translation>
    </message>
    <message>
        <source>tip</source>
        <translation type="unfinished">Spitze</translation>
    </message>
    <message>
        <source>the tip</source>
        <translation type="unfinished">die Spitze</translation>
    </message>
    <message>
        <source>cut end</source>
        <translation type="unfinished">Schnittende</translation>
    </message>
    <message>
        <source>stub above the cut</source>
        <translation type="unfinished">Stumpf über dem Schnitt</translation>
    </message>
    <message>
        <source>front door</source>
        <translation type="unfinished">vordere Tür</translation>
    </message>
    <message>
        <source>rear door</source>
        <translation type="unfinished">hintere Tür</translation>
    </message>
    <message>
        <source>far rocker</source>
        <translation type="unfinished">Schweller gegenüber</translation>
    </message>
    <message>
        <source>far pillar</source>
        <translation type="unfinished">Säule gegenüber</translation>
    </message>
    <message>
        <source>tunnel</source>
        <translation type="unfinished">Tunnel</translation>
    </message>
    <message>
        <source>tunnel edge</source>
        <translation type="unfinished">Tunnelkante</translation>
    </message>
    <message>
        <source>tunnel's edge</source>
        <translation type="unfinished">Tunnelkante</translation>
    </message>
    <message>
        <source>latch edge</source>
        <translation type="unfinished">Schlosskante</translation>
    </message>
    <message>
        <source>sill edge</source>
        <translation type="unfinished">Schwellerkante</translation>
    </message>
    <message>
        <source>front inner panel</source>
        <translation type="unfinished">vorderes Innenblech</translation>
    </message>
    <message>
        <source>rear inner panel</source>
        <translation type="unfinished">hinteres Innenblech</translation>
    </message>
    <message>
        <source>weld at {n} m of hem</source>
        <translation type="unfinished">Schweißpunkt bei {n} m des Falzes</translation>
    </message>
    <message>
        <source>weld</source>
        <translation type="unfinished">Schweißpunkt</translation>
    </message>
    <message>
        <source>spot</source>
        <translation type="unfinished">Punkt</translation>
    </message>
    <message>
        <source>spot at {text}</source>
        <translation type="unfinished">Punkt bei {text}</translation>
    </message>
    <message>
        <source>the seam</source>
        <translation type="unfinished">die Naht</translation>
    </message>
    <message>
        <source>the latch</source>
        <translation type="unfinished">das Schloss</translation>
    </message>
    <message>
        <source>a foot of the bar</source>
        <translation type="unfinished">ein Fuß des Trägers</translation>
    </message>
    <message>
        <source>the sheet under the tip</source>
        <translation type="unfinished">das Blech unter der Spitze</translation>
    </message>
    <message>
        <source>the base</source>
        <translation type="unfinished">die Unterlage</translation>
    </message>
    <message>
        <source>a spot of the pillar</source>
        <translation type="unfinished">ein Punkt der Säule</translation>
    </message>
    <message>
        <source>a weld</source>
        <translation type="unfinished">ein Schweißpunkt</translation>
    </message>
    <message>
        <source>a hinge</source>
        <translation type="unfinished">ein Scharnier</translation>
    </message>
    <message>
        <source>the tool</source>
        <translation type="unfinished">das Gerät</translation>
    </message>
    <message>
        <source>the metal</source>
        <translation type="unfinished">das Metall</translation>
    </message>
    <message>
        <source>spot popped</source>
        <translation type="unfinished">Punkt springt auf</translation>
    </message>
    <message>
        <source>seat slipping</source>
        <translation type="unfinished">Sitz rutscht</translation>
    </message>
    <message>
        <source>seat off</source>
        <translation type="unfinished">Sitz verloren</translation>
    </message>
    <message>
        <source>base giving</source>
        <translation type="unfinished">Unterlage gibt nach</translation>
    </message>
    <message>
        <source>next stage</source>
        <translation type="unfinished">nächste Stufe</translation>
    </message>
    <message>
        <source>out of stroke</source>
        <translation type="unfinished">Hub zu Ende</translation>
    </message>
    <message>
        <source>exposed</source>
        <translation type="unfinished">freigelegt</translation>
    </message>
    <message>
        <source>stop here</source>
        <translation type="unfinished">hier halten</translation>
    </message>
    <message>
        <source>cut open</source>
        <translation type="unfinished">aufgeschnitten</translation>
    </message>
    <message>
        <source>cut short</source>
        <translation type="unfinished">Schnitt zu kurz</translation>
    </message>
    <message>
        <source>cut</source>
        <translation type="unfinished">Schnitt</translation>
    </message>
    <message>
        <source>parting</source>
        <translation type="unfinished">geht auf</translation>
    </message>
    <message>
        <source>broken</source>
        <translation type="unfinished">gebrochen</translation>
    </message>
    <message>
        <source>free</source>
        <translation type="unfinished">frei</translation>
    </message>
    <message>
        <source>out</source>
        <translation type="unfinished">außen</translation>
    </message>
    <message>
        <source>in</source>
        <translation type="unfinished">innen</translation>
    </message>
    <message>
        <source>popped</source>
        <translation type="unfinished">aufgesprungen</translation>
    </message>
    <message>
        <source>tearing</source>
        <translation type="unfinished">reißt</translation>
    </message>
    <message>
        <source>slipping</source>
        <translation type="unfinished">rutscht</translation>
    </message>
    <message>
        <source>giving</source>
        <translation type="unfinished">gibt nach</translation>
    </message>
    <message>
        <source>slid</source>
        <translation type="unfinished">gerutscht</translation>
    </message>
    <message>
        <source>gained</source>
        <translation type="unfinished">gewonnen</translation>
    </message>
    <message>
        <source>spent</source>
        <translation type="unfinished">Aufwand ohne Gewinn</translation>
    </message>
    <message>
        <source>lost ground</source>
        <translation type="unfinished">Boden verloren</translation>
    </message>
    <message>
        <source>not settled</source>
        <translation type="unfinished">nicht gesichert</translation>
    </message>
    <message>
        <source>eased</source>
        <translation type="unfinished">entlastet</translation>
    </message>
    <message>
        <source>wrecked</source>
        <translation type="unfinished">beschädigt</translation>
    </message>
    <message>
        <source>not converged</source>
        <translation type="unfinished">nicht zur Ruhe gekommen</translation>
    </message>
    <message>
        <source>skin</source>
        <translation type="unfinished">Außenhaut</translation>
    </message>
    <message>
        <source>inner</source>
        <translation type="unfinished">innen</translation>
    </message>
    <message>
        <source>upper skin</source>
        <translation type="unfinished">obere Außenhaut</translation>
    </message>
    <message>
        <source>trim</source>
        <translation type="unfinished">Verkleidung</translation>
    </message>
    <message>
        <source>glass</source>
        <translation type="unfinished">Glas</translation>
    </message>
    <message>
        <source>the seam parts</source>
        <translation type="unfinished">die Naht geht auf</translation>
    </message>
    <message>
        <source>a weld breaks</source>
        <translation type="unfinished">ein Schweißpunkt reißt</translation>
    </message>
    <message>
        <source>the latch lets go</source>
        <translation type="unfinished">das Schloss gibt frei</translation>
    </message>
    <message>
        <source>the striker comes out of the latch</source>
        <translation type="unfinished">der Schließkeil kommt aus dem Schloss</translation>
    </message>
    <message>
        <source>the {part} lets go</source>
        <translation type="unfinished">{part:nominative} gibt frei</translation>
    </message>
    <message>
        <source>the {part} tears</source>
        <translation type="unfinished">{part:nominative} reißt</translation>
    </message>
    <message>
        <source>a tip cuts through the sheet</source>
        <translation type="unfinished">eine Spitze schneidet durch das Blech</translation>
    </message>
    <message>
        <source>the tip slips along the metal</source>
        <translation type="unfinished">die Spitze rutscht am Metall entlang</translation>
    </message>
    <message>
        <source>the tip comes off the metal</source>
        <translation type="unfinished">die Spitze kommt vom Metall ab</translation>
    </message>
    <message>
        <source>the latch was not holding</source>
        <translation type="unfinished">das Schloss hielt nicht</translation>
    </message>
    <message>
        <source>the latch carried {share} at most</source>
        <translation type="unfinished">das Schloss trug höchstens {share}</translation>
    </message>
    <message>
        <source>all it can hold</source>
        <translation type="unfinished">alles, was es halten kann</translation>
    </message>
    <message>
        <source>most of what it can hold</source>
        <translation type="unfinished">das meiste von dem, was es halten kann</translation>
    </message>
    <message>
        <source>more than half of what it can hold</source>
        <translation type="unfinished">mehr als die Hälfte von dem, was es halten kann</translation>
    </message>
    <message>
        <source>about half of what it can hold</source>
        <translation type="unfinished">etwa die Hälfte von dem, was es halten kann</translation>
    </message>
    <message>
        <source>a third of what it can hold</source>
        <translation type="unfinished">ein Drittel von dem, was es halten kann</translation>
    </message>
    <message>
        <source>a quarter of what it can hold</source>
        <translation type="unfinished">ein Viertel von dem, was es halten kann</translation>
    </message>
    <message>
        <source>a fifth of what it can hold</source>
        <translation type="unfinished">ein Fünftel von dem, was es halten kann</translation>
    </message>
    <message>
        <source>little of what it can hold</source>
        <translation type="unfinished">wenig von dem, was es halten kann</translation>
    </message>
    <message>
        <source>clearance unchanged</source>
        <translation type="unfinished">Abstand unverändert</translation>
    </message>
    <message>
        <source>the inner panel came in {length} towards the patient</source>
        <translation type="unfinished">das Innenblech kam {length} herein, auf die Person zu</translation>
    </message>
    <message>
        <source>The {part} does not hold</source>
        <translation type="unfinished">{part:nominative} hält nicht</translation>
    </message>
    <message>
        <source>its pawl is out already</source>
        <translation type="unfinished">seine Sperrklinke ist schon heraus</translation>
    </message>
    <message>
        <source>The {part} no longer holds</source>
        <translation type="unfinished">{part:nominative} hält nicht mehr</translation>
    </message>
    <message>
        <source>The {part} still holds</source>
        <translation type="unfinished">{part:nominative} hält noch</translation>
    </message>
    <message>
        <source>The {part} is held open</source>
        <translation type="unfinished">{part:nominative} wird offen gehalten</translation>
    </message>
    <message>
        <source>The {part} is free to open</source>
        <translation type="unfinished">{part:nominative} lässt sich öffnen</translation>
    </message>
    <message>
        <source>its fork leans on the pawl with {n} kN</source>
        <translation type="unfinished">seine Drehfalle drückt mit {n} kN auf die Sperrklinke</translation>
    </message>
    <message>
        <source>drawing it takes {n} N at the handle</source>
        <translation type="unfinished">sie zu ziehen braucht {n} N am Griff</translation>
    </message>
    <message>
        <source>the hand gives {n} N</source>
        <translation type="unfinished">die Hand gibt {n} N</translation>
    </message>
    <message>
        <source>{n} N at the handle draw its pawl</source>
        <translation type="unfinished">{n} N am Griff ziehen seine Sperrklinke</translation>
    </message>
    <message>
        <source>nothing presses on its pawl</source>
        <translation type="unfinished">nichts drückt auf seine Sperrklinke</translation>
    </message>
    <message>
        <source>a light pull at the handle draws it</source>
        <translation type="unfinished">ein leichter Zug am Griff zieht sie</translation>
    </message>
    <message>
        <source>While the pawl is in it holds {force}</source>
        <translation type="unfinished">Solange die Sperrklinke sitzt, hält es {force}</translation>
    </message>
    <message>
        <source>Nothing jams its striker</source>
        <translation type="unfinished">Nichts klemmt seinen Schließkeil</translation>
    </message>
    <message>
        <source>With the pawl out the jam is left</source>
        <translation type="unfinished">Ist die Sperrklinke heraus, bleibt das Klemmen</translation>
    </message>
    <message>
        <source>{n} kN to draw the striker out of the fork</source>
        <translation type="unfinished">{n} kN, um den Schließkeil aus der Drehfalle zu ziehen</translation>
    </message>
    <message>
        <source>the door's latch end sprang {length} out</source>
        <translation type="unfinished">das Schlossende der Tür federte {length} nach außen</translation>
    </message>
    <message>
        <source>the door's latch end sprang {length} in</source>
        <translation type="unfinished">das Schlossende der Tür federte {length} nach innen</translation>
    </message>
    <message>
        <source>Check the {part}</source>
        <translation type="unfinished">{part:accusative} prüfen</translation>
    </message>
    <message>
        <source>Hold the {part} open</source>
        <translation type="unfinished">{part:accusative} offen halten</translation>
    </message>
    <message>
        <source>{n} N at the handle</source>
        <translation type="unfinished">{n} N am Griff</translation>
    </message>
    <message>
        <source>nothing is changed</source>
        <translation type="unfinished">nichts wird verändert</translation>
    </message>
    <message>
        <source>held until the end</source>
        <translation type="unfinished">gehalten bis zum Ende</translation>
    </message>
    <message>
        <source>Pull the handle</source>
        <translation type="unfinished">Am Griff ziehen</translation>
    </message>
    <message>
        <source>Pulling the handle</source>
        <translation type="unfinished">Zieht am Griff</translation>
    </message>
    <message>
        <source>Pulled the handle</source>
        <translation type="unfinished">Am Griff gezogen</translation>
    </message>
    <message>
        <source>handle</source>
        <translation type="unfinished">Griff</translation>
    </message>
    <message>
        <source>{n} latch</source>
        <translation type="unfinished">Schloss {n}</translation>
    </message>
    <message>
        <source>The tool is off</source>
        <translation type="unfinished">Das Gerät ist ab</translation>
    </message>
    <message>
        <source>the skin's middle stayed where it was</source>
        <translation type="unfinished">die Mitte der Außenhaut blieb, wo sie war</translation>
    </message>
    <message>
        <source>the skin's middle sprang {length} {way}</source>
        <translation type="unfinished">die Mitte der Außenhaut federte {length} nach {way}</translation>
    </message>
    <message>
        <source>Both tips stood on the door, so what one pushed with the other pushed back with</source>
        <translation type="unfinished">Beide Spitzen standen an der Tür; was die eine drückte, drückte die andere zurück</translation>
    </message>
    <message>
        <source>The tips closed across the door, so skin and inner panel were pressed towards each other</source>
        <translation type="unfinished">Die Spitzen schlossen sich quer über die Tür; Außenhaut und Innenblech wurden gegeneinander gedrückt</translation>
    </message>
    <message>
        <source>The tips closed across the pillar, so its walls were pressed towards each other</source>
        <translation type="unfinished">Die Spitzen schlossen sich quer über die Säule; ihre Wände wurden gegeneinander gedrückt</translation>
    </message>
    <message>
        <source>The tips closed across the {place}, so {what} were pressed towards each other</source>
        <translation type="unfinished">Die Spitzen schlossen sich quer über {place:accusative}; gegeneinander gedrückt: {what}</translation>
    </message>
    <message>
        <source>The tips were {place}; what the other tip stood on was the weaker side of the push</source>
        <translation type="unfinished">Die Spitzen standen {place}; schwächer war, worauf die andere Spitze stand</translation>
    </message>
    <message>
        <source>what the other tip stood on was the weaker side of the push</source>
        <translation type="unfinished">schwächer war, worauf die andere Spitze stand</translation>
    </message>
    <message>
        <source>The tips were on the {place}</source>
        <translation type="unfinished">Die Spitzen standen an {place:dative}</translation>
    </message>
    <message>
        <source>The tips were {place}</source>
        <translation type="unfinished">Die Spitzen standen: {place}</translation>
    </message>
    <message>
        <source>The tips were behind the inner bend</source>
        <translation type="unfinished">Die Spitzen standen hinter der inneren Biegung</translation>
    </message>
    <message>
        <source>on the {place}</source>
        <translation type="unfinished">an {place:dative}</translation>
    </message>
    <message>
        <source>The tips were {place}, so skin and inner structure shared the push</source>
        <translation type="unfinished">Die Spitzen standen {place}; Außenhaut und innere Struktur teilten sich den Druck</translation>
    </message>
    <message>
        <source>The tips were {place}, so the push went into the outer skin and its seam</source>
        <translation type="unfinished">Die Spitzen standen {place}; der Druck ging in die Außenhaut und ihre Naht</translation>
    </message>
    <message>
        <source>The tips were {place}, so the push went through the inner structure to what holds the door</source>
        <translation type="unfinished">Die Spitzen standen {place}; der Druck ging durch die innere Struktur zu dem, was die Tür hält</translation>
    </message>
    <message>
        <source>The tips were {place}, so the inner structure carried the push</source>
        <translation type="unfinished">Die Spitzen standen {place}; die innere Struktur trug den Druck</translation>
    </message>
    <message>
        <source>The latch let go at {length} with the skin still on its seam</source>
        <translation type="unfinished">Das Schloss gab bei {length} frei, die Außenhaut noch an ihrer Naht</translation>
    </message>
    <message>
        <source>with the skin still on its seam</source>
        <translation type="unfinished">die Außenhaut noch an ihrer Naht</translation>
    </message>
    <message>
        <source>the seam had begun to part before</source>
        <translation type="unfinished">die Naht war schon vorher aufgegangen</translation>
    </message>
    <message>
        <source>the seam parted only after</source>
        <translation type="unfinished">die Naht ging erst danach auf</translation>
    </message>
    <message>
        <source>{order}, {length} in all</source>
        <translation type="unfinished">{order}, {length} im Ganzen</translation>
    </message>
    <message>
        <source>The striker slid out of the fork by {length}</source>
        <translation type="unfinished">Der Schließkeil glitt bis {length} aus der Gabel</translation>
    </message>
    <message>
        <source>The {part} let go at {length}</source>
        <translation type="unfinished">{part:nominative} gab bei {length} frei</translation>
    </message>
    <message>
        <source>and tore over {length}</source>
        <translation type="unfinished">und riss über {length}</translation>
    </message>
    <message>
        <source>The outer skin came away over {length} and tore over {n} mm</source>
        <translation type="unfinished">Die Außenhaut löste sich über {length} und riss über {n} mm</translation>
    </message>
    <message>
        <source>The outer skin came away over {length} and tore over {more}</source>
        <translation type="unfinished">Die Außenhaut löste sich über {length} und riss über {more}</translation>
    </message>
    <message>
        <source>The outer skin came away over {length}</source>
        <translation type="unfinished">Die Außenhaut löste sich über {length}</translation>
    </message>
    <message>
        <source>The tips tore {length} of sheet</source>
        <translation type="unfinished">Die Spitzen rissen {length} Blech</translation>
    </message>
    <message>
        <source>The tool stalled at {length}</source>
        <translation type="unfinished">Das Gerät blieb bei {length} stehen</translation>
    </message>
    <message>
        <source>The metal bent</source>
        <translation type="unfinished">Das Metall bog sich</translation>
    </message>
    <message>
        <source>The {part} gave way and moved more than the door</source>
        <translation type="unfinished">{part:nominative} gab nach und bewegte sich mehr als die Tür</translation>
    </message>
    <message>
        <source>The middle of the skin moved {length} outward, nothing let go</source>
        <translation type="unfinished">Die Mitte der Außenhaut ging {length} nach außen, nichts gab frei</translation>
    </message>
    <message>
        <source>The middle of the skin moved {length} inward, nothing let go</source>
        <translation type="unfinished">Die Mitte der Außenhaut ging {length} nach innen, nichts gab frei</translation>
    </message>
    <message>
        <source>The middle of the skin moved {length} outward</source>
        <translation type="unfinished">Die Mitte der Außenhaut ging {length} nach außen</translation>
    </message>
    <message>
        <source>The middle of the skin moved {length} inward</source>
        <translation type="unfinished">Die Mitte der Außenhaut ging {length} nach innen</translation>
    </message>
    <message>
        <source>The middle of the skin moved {length} {way}</source>
        <translation type="unfinished">Die Mitte der Außenhaut ging {length} nach {way}</translation>
    </message>
    <message>
        <source>outward</source>
        <translation type="unfinished">nach außen</translation>
    </message>
    <message>
        <source>inward</source>
        <translation type="unfinished">nach innen</translation>
    </message>
    <message>
        <source>nothing let go</source>
        <translation type="unfinished">nichts gab frei</translation>
    </message>
    <message>
        <source>let go</source>
        <translation type="unfinished">gab frei</translation>
    </message>
    <message>
        <source>what let go: {what}</source>
        <translation type="unfinished">was frei gab: {what}</translation>
    </message>
    <message>
        <source>{part} at {n} mm</source>
        <translation type="unfinished">{part} bei {n} mm</translation>
    </message>
    <message>
        <source>{part} at {n} in</source>
        <translation type="unfinished">{part} bei {n} in</translation>
    </message>
    <message>
        <source>{length} of seam parted</source>
        <translation type="unfinished">{length} Naht gingen auf</translation>
    </message>
    <message>
        <source>The {what} went in {length}</source>
        <translation type="unfinished">{what:nominative} ging {length} hinein</translation>
    </message>
    <message>
        <source>The skin's middle moved {length} {way}</source>
        <translation type="unfinished">Die Mitte der Außenhaut ging {length} nach {way}</translation>
    </message>
    <message>
        <source>the car's pillars and rocker cannot yield in this model</source>
        <translation type="unfinished">Säulen und Schweller des Autos können in diesem Modell nicht nachgeben</translation>
    </message>
    <message>
        <source>The tip on the door slipped {length} along the metal</source>
        <translation type="unfinished">Die Spitze an der Tür rutschte {length} am Metall entlang</translation>
    </message>
    <message>
        <source>The tip on the door slipped {length} along the metal, onto the {seat}</source>
        <translation type="unfinished">Die Spitze an der Tür rutschte {length} am Metall entlang, auf {seat:accusative}</translation>
    </message>
    <message>
        <source>The tip on the door slipped {length} along the metal{onto}</source>
        <translation type="unfinished">Die Spitze an der Tür rutschte {length} am Metall entlang{onto}</translation>
    </message>
    <message>
        <source>onto the {seat}</source>
        <translation type="unfinished">auf {seat:accusative}</translation>
    </message>
    <message>
        <source>the metal behind</source>
        <translation type="unfinished">das Metall dahinter</translation>
    </message>
    <message>
        <source>the metal behind the inner bend</source>
        <translation type="unfinished">das Metall hinter der inneren Biegung</translation>
    </message>
    <message>
        <source>The other tip slipped {length}</source>
        <translation type="unfinished">Die andere Spitze rutschte {length}</translation>
    </message>
    <message>
        <source>Then it came off</source>
        <translation type="unfinished">Dann kam sie ab</translation>
    </message>
    <message>
        <source>the latch has let go</source>
        <translation type="unfinished">das Schloss hat freigegeben</translation>
    </message>
    <message>
        <source>the {part} has let go</source>
        <translation type="unfinished">{part:nominative} hat freigegeben</translation>
    </message>
    <message>
        <source>the striker has come out of the latch</source>
        <translation type="unfinished">der Schließkeil ist aus dem Schloss gekommen</translation>
    </message>
    <message>
        <source>the tip has come off the metal</source>
        <translation type="unfinished">die Spitze ist vom Metall abgekommen</translation>
    </message>
    <message>
        <source>the outer skin has come away over {length}</source>
        <translation type="unfinished">die Außenhaut hat sich über {length} gelöst</translation>
    </message>
    <message>
        <source>the sheet has torn over {length}</source>
        <translation type="unfinished">das Blech ist über {length} gerissen</translation>
    </message>
    <message>
        <source>the tip is slipping</source>
        <translation type="unfinished">die Spitze rutscht</translation>
    </message>
    <message>
        <source>the tip is nearest to slipping, {share}</source>
        <translation type="unfinished">die Spitze ist dem Rutschen am nächsten, {share}</translation>
    </message>
    <message>
        <source>the {part} is nearest to letting go, {share}</source>
        <translation type="unfinished">{part:nominative} ist dem Freigeben am nächsten, {share}</translation>
    </message>
    <message>
        <source>the {part} is nearest to tearing, {share}</source>
        <translation type="unfinished">{part:nominative} ist dem Reißen am nächsten, {share}</translation>
    </message>
    <message>
        <source>the {part} is nearest to stalling, {share}</source>
        <translation type="unfinished">{part:nominative} ist dem Stehenbleiben am nächsten, {share}</translation>
    </message>
    <message>
        <source>the {part} is nearest to parting, {share}</source>
        <translation type="unfinished">{part:nominative} ist dem Aufgehen am nächsten, {share}</translation>
    </message>
    <message>
        <source>the {part} is nearest to giving, {share}</source>
        <translation type="unfinished">{part:nominative} ist dem Nachgeben am nächsten, {share}</translation>
    </message>
    <message>
        <source>the {part} is nearest to {doing}, {share}</source>
        <translation type="unfinished">{part:nominative} ist am nächsten an: {doing}, {share}</translation>
    </message>
    <message>
        <source>the tip is nearest to shearing through the {part}, {share}</source>
        <translation type="unfinished">die Spitze ist am nächsten daran, {part:accusative} zu durchschneiden, {share}</translation>
    </message>
    <message>
        <source>{who} is nearest to {doing}, {share}</source>
        <translation type="unfinished">{who} ist am nächsten an: {doing}, {share}</translation>
    </message>
    <message>
        <source>letting go</source>
        <translation type="unfinished">gibt frei</translation>
    </message>
    <message>
        <source>stalling</source>
        <translation type="unfinished">bleibt stehen</translation>
    </message>
    <message>
        <source>shearing through the {part}</source>
        <translation type="unfinished">durchschneidet {part:accusative}</translation>
    </message>
    <message>
        <source>the tip is shearing through the {part}</source>
        <translation type="unfinished">die Spitze durchschneidet {part:accusative}</translation>
    </message>
    <message>
        <source>the {part} is parting</source>
        <translation type="unfinished">{part:nominative} geht auf</translation>
    </message>
    <message>
        <source>the {part} is letting go</source>
        <translation type="unfinished">{part:nominative} gibt frei</translation>
    </message>
    <message>
        <source>the {part} is tearing</source>
        <translation type="unfinished">{part:nominative} reißt</translation>
    </message>
    <message>
        <source>the {part} is stalling</source>
        <translation type="unfinished">{part:nominative} bleibt stehen</translation>
    </message>
    <message>
        <source>the {part} is giving</source>
        <translation type="unfinished">{part:nominative} gibt nach</translation>
    </message>
    <message>
        <source>the {part} is {doing}</source>
        <translation type="unfinished">{part:nominative}: {doing}</translation>
    </message>
    <message>
        <source>{who} is {doing}</source>
        <translation type="unfinished">{who}: {doing}</translation>
    </message>
    <message>
        <source>nearest to giving: {part} ({event}), {share}</source>
        <translation type="unfinished">dem Nachgeben am nächsten: {part} ({event}), {share}</translation>
    </message>
    <message>
        <source>nearest to giving: {part}, {share}</source>
        <translation type="unfinished">dem Nachgeben am nächsten: {part}, {share}</translation>
    </message>
    <message>
        <source>shorter than a tip's width nothing is gained or lost</source>
        <translation type="unfinished">kürzer als eine Spitzenbreite ist nichts gewonnen oder verloren</translation>
    </message>
    <message>
        <source>as for parted seam</source>
        <translation type="unfinished">wie bei der aufgegangenen Naht</translation>
    </message>
    <message>
        <source>less cannot be seen on the metal</source>
        <translation type="unfinished">weniger ist am Metall nicht zu sehen</translation>
    </message>
    <message>
        <source>one percent of a hip's breadth; below that the envelope itself is not known</source>
        <translation type="unfinished">ein Prozent einer Hüftbreite; darunter ist die Hülle selbst nicht bekannt</translation>
    </message>
    <message>
        <source>less is the give of the seat itself: common practice, no source</source>
        <translation type="unfinished">weniger ist das Nachgeben des Sitzes selbst: gängige Praxis, keine Quelle</translation>
    </message>
    <message>
        <source>about a thumb's dent in a skin</source>
        <translation type="unfinished">etwa eine Daumendelle in einer Haut</translation>
    </message>
    <message>
        <source>At work</source>
        <translation type="unfinished">Bei der Arbeit</translation>
    </message>
    <message>
        <source>Did it</source>
        <translation type="unfinished">Getan</translation>
    </message>
    <message>
        <source>Done</source>
        <translation type="unfinished">Fertig</translation>
    </message>
    <message>
        <source>Settling</source>
        <translation type="unfinished">Kommt zur Ruhe</translation>
    </message>
    <message>
        <source>0°, straight along</source>
        <translation type="unfinished">0°, geradeaus</translation>
    </message>
    <message>
        <source>{n}° outward</source>
        <translation type="unfinished">{n}° nach außen</translation>
    </message>
    <message>
        <source>{n}° inward</source>
        <translation type="unfinished">{n}° nach innen</translation>
    </message>
    <message>
        <source>{n}° out, hands push {force} at most</source>
        <translation type="unfinished">{n}° nach außen, Hände drücken höchstens {force}</translation>
    </message>
    <message>
        <source>{n}° in, hands push {force} at most</source>
        <translation type="unfinished">{n}° nach innen, Hände drücken höchstens {force}</translation>
    </message>
    <message>
        <source>{n}° {way}, hands push {force} at most</source>
        <translation type="unfinished">{n}° {way}, Hände drücken höchstens {force}</translation>
    </message>
    <message>
        <source>Spread at the {edge}</source>
        <translation type="unfinished">Spreizen an {edge:dative}</translation>
    </message>
    <message>
        <source>{length} deep, {along} along</source>
        <translation type="unfinished">{length} tief, {along} entlang</translation>
    </message>
    <message>
        <source>{length} deep, {along} up</source>
        <translation type="unfinished">{length} tief, {along} hoch</translation>
    </message>
    <message>
        <source>{length} deep</source>
        <translation type="unfinished">{length} tief</translation>
    </message>
    <message>
        <source>{length} deep, {along} {way}</source>
        <translation type="unfinished">{length} tief, {along} {way}</translation>
    </message>
    <message>
        <source>{length} along</source>
        <translation type="unfinished">{length} entlang</translation>
    </message>
    <message>
        <source>{length} up</source>
        <translation type="unfinished">{length} hoch</translation>
    </message>
    <message>
        <source>{length} in</source>
        <translation type="unfinished">{length} hinein</translation>
    </message>
    <message>
        <source>{lip}, {length} along</source>
        <translation type="unfinished">{lip}, {length} entlang</translation>
    </message>
    <message>
        <source>tilt {tilt}</source>
        <translation type="unfinished">Neigung {tilt}</translation>
    </message>
    <message>
        <source>opens {length}</source>
        <translation type="unfinished">öffnet {length}</translation>
    </message>
    <message>
        <source>closes {length}</source>
        <translation type="unfinished">schließt {length}</translation>
    </message>
    <message>
        <source>goes in {length}</source>
        <translation type="unfinished">geht {length} hinein</translation>
    </message>
    <message>
        <source>drives out {length}</source>
        <translation type="unfinished">fährt {length} aus</translation>
    </message>
    <message>
        <source>tip goes {length}</source>
        <translation type="unfinished">Spitze geht {length}</translation>
    </message>
    <message>
        <source>{where}, tilt {tilt}</source>
        <translation type="unfinished">{where}, Neigung {tilt}</translation>
    </message>
    <message>
        <source>{length} up the pillar</source>
        <translation type="unfinished">{length} hoch an der Säule</translation>
    </message>
    <message>
        <source>{length} from the hinge edge, {up} up</source>
        <translation type="unfinished">{length} von der Scharnierkante, {up} hoch</translation>
    </message>
    <message>
        <source>{length} from the hinge edge</source>
        <translation type="unfinished">{length} von der Scharnierkante</translation>
    </message>
    <message>
        <source>{length} wide, {along} from the hinge edge, lower end {up} up</source>
        <translation type="unfinished">{length} breit, {along} von der Scharnierkante, unteres Ende {up} hoch</translation>
    </message>
    <message>
        <source>{place}, {length} up</source>
        <translation type="unfinished">{place}, {length} hoch</translation>
    </message>
    <message>
        <source>{kind} head on the {head}</source>
        <translation type="unfinished">Kopf ({kind}) an {head:dative}</translation>
    </message>
    <message>
        <source>{kind} head on the {head}, {length} up</source>
        <translation type="unfinished">Kopf ({kind}) an {head:dative}, {length} hoch</translation>
    </message>
    <message>
        <source>foot on the {foot}, {length} up</source>
        <translation type="unfinished">Fuß an {foot:dative}, {length} hoch</translation>
    </message>
    <message>
        <source>foot on the {foot}</source>
        <translation type="unfinished">Fuß an {foot:dative}</translation>
    </message>
    <message>
        <source>flat</source>
        <translation type="unfinished">flach</translation>
    </message>
    <message>
        <source>waffle</source>
        <translation type="unfinished">Waffel</translation>
    </message>
    <message>
        <source>pointed</source>
        <translation type="unfinished">spitz</translation>
    </message>
    <message>
        <source>cross</source>
        <translation type="unfinished">Kreuz</translation>
    </message>
    <message>
        <source>Swing {door}</source>
        <translation type="unfinished">{door} schwenken</translation>
    </message>
    <message>
        <source>Strap {door} where it is</source>
        <translation type="unfinished">{door} festbinden, wo sie ist</translation>
    </message>
    <message>
        <source>Prop {door} up</source>
        <translation type="unfinished">{door} abstützen</translation>
    </message>
    <message>
        <source>Let go of {door}</source>
        <translation type="unfinished">{door} loslassen</translation>
    </message>
    <message>
        <source>the {n} door</source>
        <translation type="unfinished">Tür {n}</translation>
    </message>
    <message>
        <source>head {length} above where the latch end is</source>
        <translation type="unfinished">Kopf {length} über dem jetzigen Schlossende</translation>
    </message>
    <message>
        <source>bar {length} long</source>
        <translation type="unfinished">Hebel {length} lang</translation>
    </message>
    <message>
        <source>{where}, bar {length} long</source>
        <translation type="unfinished">{where}, Brechstange {length} lang</translation>
    </message>
    <message>
        <source>Cut across the pillar</source>
        <translation type="unfinished">Schnitt quer durch die Säule</translation>
    </message>
    <message>
        <source>Cut into the front door</source>
        <translation type="unfinished">Schnitt in die vordere Tür</translation>
    </message>
    <message>
        <source>Cut into the rear door</source>
        <translation type="unfinished">Schnitt in die hintere Tür</translation>
    </message>
    <message>
        <source>Cut into the front {sheet}</source>
        <translation type="unfinished">Schnitt in die vordere Tür ({sheet})</translation>
    </message>
    <message>
        <source>Cut into the rear {sheet}</source>
        <translation type="unfinished">Schnitt in die hintere Tür ({sheet})</translation>
    </message>
    <message>
        <source>Cut into the {panel} {sheet}</source>
        <translation type="unfinished">Schnitt in {panel} {sheet}</translation>
    </message>
    <message>
        <source>Cut the front {part}</source>
        <translation type="unfinished">{part:accusative} vorn schneiden</translation>
    </message>
    <message>
        <source>Cut the rear {part}</source>
        <translation type="unfinished">{part:accusative} hinten schneiden</translation>
    </message>
    <message>
        <source>Cut the {panel} {part}</source>
        <translation type="unfinished">{part:accusative} schneiden ({panel})</translation>
    </message>
    <message>
        <source>stops {length} short</source>
        <translation type="unfinished">hält {length} davor an</translation>
    </message>
    <message>
        <source>blades open {length}</source>
        <translation type="unfinished">Klingen öffnen {length}</translation>
    </message>
    <message>
        <source>{length} above the foot, from the {side}</source>
        <translation type="unfinished">{length} über dem Fuß, von {side:dative}</translation>
    </message>
    <message>
        <source>{length} above the foot, from the {side}, {depth} in</source>
        <translation type="unfinished">{length} über dem Fuß, von {side:dative}, {depth} hinein</translation>
    </message>
    <message>
        <source>{length} above the foot, from the {side}, stops {short} short</source>
        <translation type="unfinished">{length} über dem Fuß, von {side:dative}, hält {short} davor an</translation>
    </message>
    <message>
        <source>{length} above the foot, from the {side}{short}</source>
        <translation type="unfinished">{length} über dem Fuß, von {side:dative}{short}</translation>
    </message>
    <message>
        <source>from the {edge} at {length}, {depth} in</source>
        <translation type="unfinished">von {edge:dative} bei {length}, {depth} hinein</translation>
    </message>
    <message>
        <source>whole door</source>
        <translation type="unfinished">ganze Tür</translation>
    </message>
    <message>
        <source>Opening the tips</source>
        <translation type="unfinished">Die Spitzen öffnen sich</translation>
    </message>
    <message>
        <source>Opened the tips</source>
        <translation type="unfinished">Spitzen geöffnet</translation>
    </message>
    <message>
        <source>Close the tips</source>
        <translation type="unfinished">Spitzen schließen</translation>
    </message>
    <message>
        <source>Closing the tips</source>
        <translation type="unfinished">Die Spitzen schließen sich</translation>
    </message>
    <message>
        <source>Closed the tips</source>
        <translation type="unfinished">Spitzen geschlossen</translation>
    </message>
    <message>
        <source>Squeeze across the {part}</source>
        <translation type="unfinished">Quetschen quer über {part:accusative}</translation>
    </message>
    <message>
        <source>Squeeze across the rear door's panel</source>
        <translation type="unfinished">Quetschen quer über das Blech der hinteren Tür</translation>
    </message>
    <message>
        <source>rear door's panel</source>
        <translation type="unfinished">Blech der hinteren Tür</translation>
    </message>
    <message>
        <source>Crush by a {shape}</source>
        <translation type="unfinished">Eindrücken durch {shape:accusative}</translation>
    </message>
    <message>
        <source>cylinder</source>
        <translation type="unfinished">Zylinder</translation>
    </message>
    <message>
        <source>flat face</source>
        <translation type="unfinished">ebene Fläche</translation>
    </message>
    <message>
        <source>pole</source>
        <translation type="unfinished">Pfahl</translation>
    </message>
    <message>
        <source>face</source>
        <translation type="unfinished">Fläche</translation>
    </message>
    <message>
        <source>Press it in</source>
        <translation type="unfinished">Eindrücken</translation>
    </message>
    <message>
        <source>Pressing in</source>
        <translation type="unfinished">Es wird eingedrückt</translation>
    </message>
    <message>
        <source>Pressed in</source>
        <translation type="unfinished">Eingedrückt</translation>
    </message>
    <message>
        <source>Press the {part} with a ram</source>
        <translation type="unfinished">{part:accusative} mit dem Rettungszylinder drücken</translation>
    </message>
    <message>
        <source>Drive the ram out</source>
        <translation type="unfinished">Zylinder ausfahren</translation>
    </message>
    <message>
        <source>Driving the ram out</source>
        <translation type="unfinished">Der Zylinder fährt aus</translation>
    </message>
    <message>
        <source>Drove the ram out</source>
        <translation type="unfinished">Zylinder ausgefahren</translation>
    </message>
    <message>
        <source>Put the car on blocks</source>
        <translation type="unfinished">Das Auto auf Klötze stellen</translation>
    </message>
    <message>
        <source>Take the blocks away</source>
        <translation type="unfinished">Die Klötze wegnehmen</translation>
    </message>
    <message>
        <source>The same push then moves the car less, or more</source>
        <translation type="unfinished">Derselbe Druck bewegt das Auto dann weniger oder mehr</translation>
    </message>
    <message>
        <source>At work on the door</source>
        <translation type="unfinished">Bei der Arbeit an der Tür</translation>
    </message>
    <message>
        <source>Held the door</source>
        <translation type="unfinished">Tür gehalten</translation>
    </message>
    <message>
        <source>Flex the {part} with a bar</source>
        <translation type="unfinished">{part:accusative} mit der Brechstange biegen</translation>
    </message>
    <message>
        <source>Pull the bar</source>
        <translation type="unfinished">Am Hebel ziehen</translation>
    </message>
    <message>
        <source>Pulling the bar</source>
        <translation type="unfinished">Am Hebel wird gezogen</translation>
    </message>
    <message>
        <source>Pulled the bar</source>
        <translation type="unfinished">Am Hebel gezogen</translation>
    </message>
    <message>
        <source>Cut</source>
        <translation type="unfinished">Schneiden</translation>
    </message>
    <message>
        <source>Cutting</source>
        <translation type="unfinished">Es wird geschnitten</translation>
    </message>
    <message>
        <source>Spread the ends of the cut</source>
        <translation type="unfinished">Die Enden des Schnitts spreizen</translation>
    </message>
    <message>
        <source>Stripping</source>
        <translation type="unfinished">Es wird freigelegt</translation>
    </message>
    <message>
        <source>Stripped</source>
        <translation type="unfinished">Freigelegt</translation>
    </message>
    <message>
        <source>Strip trim, seals and glass</source>
        <translation type="unfinished">Verkleidung, Dichtungen und Glas abnehmen</translation>
    </message>
    <message>
        <source>Letting the tool off</source>
        <translation type="unfinished">Das Gerät wird entlastet</translation>
    </message>
    <message>
        <source>The metal springs back to what is left of its shape</source>
        <translation type="unfinished">Das Metall federt zurück, so weit seine Form es noch zulässt</translation>
    </message>
    <message>
        <source>The crease that was there before, {length} in, went {more} further in</source>
        <translation type="unfinished">Der Knick von vorher, {length} nach innen, ging {more} weiter hinein</translation>
    </message>
    <message>
        <source>The crease that was there before, {length} in, came {more} back out</source>
        <translation type="unfinished">Der Knick von vorher, {length} nach innen, kam {more} zurück</translation>
    </message>
    <message>
        <source>The crease that was there before, {length} in</source>
        <translation type="unfinished">Der Knick von vorher, {length} nach innen</translation>
    </message>
    <message>
        <source>stayed as it was</source>
        <translation type="unfinished">blieb, wie er war</translation>
    </message>
    <message>
        <source>came {length} back out</source>
        <translation type="unfinished">kam {length} zurück</translation>
    </message>
    <message>
        <source>{crease} stayed as it was</source>
        <translation type="unfinished">{crease} blieb, wie er war</translation>
    </message>
    <message>
        <source>{crease} went {length} further in</source>
        <translation type="unfinished">{crease} ging {length} weiter hinein</translation>
    </message>
    <message>
        <source>{crease} came {length} back out</source>
        <translation type="unfinished">{crease} kam {length} zurück</translation>
    </message>
    <message>
        <source>a bend grows under a push along it</source>
        <translation type="unfinished">eine Biegung wächst unter einem Druck längs zu ihr</translation>
    </message>
    <message>
        <source>{body} on the outer skin</source>
        <translation type="unfinished">{body} an der Außenhaut</translation>
    </message>
    <message>
        <source>Off: {what}</source>
        <translation type="unfinished">Ab: {what}</translation>
    </message>
    <message>
        <source>Now to be seen: {what}</source>
        <translation type="unfinished">Jetzt zu sehen: {what}</translation>
    </message>
    <message>
        <source>The blades stalled on the {where}</source>
        <translation type="unfinished">Die Klingen blieben stehen an: {where}</translation>
    </message>
    <message>
        <source>it would take {force}, they give {gives}</source>
        <translation type="unfinished">nötig wären {force}, sie geben {gives}</translation>
    </message>
    <message>
        <source>Nothing was parted</source>
        <translation type="unfinished">Nichts wurde getrennt</translation>
    </message>
    <message>
        <source>The {where} is cut open over {length} of sheet</source>
        <translation type="unfinished">Aufgeschnitten: {where}, über {length} Blech</translation>
    </message>
    <message>
        <source>The {where} is cut short</source>
        <translation type="unfinished">Zu kurz geschnitten: {where}</translation>
    </message>
    <message>
        <source>{length} of sheet still stand and hold</source>
        <translation type="unfinished">{length} Blech stehen noch und halten</translation>
    </message>
    <message>
        <source>parted over {length}, it still hangs together</source>
        <translation type="unfinished">getrennt über {length}, es hängt noch zusammen</translation>
    </message>
    <message>
        <source>The {where} is cut</source>
        <translation type="unfinished">Geschnitten: {where}</translation>
    </message>
    <message>
        <source>the piece between two cuts came out</source>
        <translation type="unfinished">das Stück zwischen zwei Schnitten kam heraus</translation>
    </message>
    <message>
        <source>trim still hid a restraint part there</source>
        <translation type="unfinished">dort verdeckte die Verkleidung noch ein Rückhaltesystem</translation>
    </message>
    <message>
        <source>strip and look first</source>
        <translation type="unfinished">erst freilegen und nachsehen</translation>
    </message>
    <message>
        <source>restraint part behind trim</source>
        <translation type="unfinished">Rückhaltesystem hinter der Verkleidung</translation>
    </message>
    <message>
        <source>bar's heel beside it</source>
        <translation type="unfinished">Ferse der Brechstange daneben</translation>
    </message>
    <message>
        <source>that is all a hand has</source>
        <translation type="unfinished">mehr hat eine Hand nicht</translation>
    </message>
    <message>
        <source>at the most</source>
        <translation type="unfinished">im Höchstfall</translation>
    </message>
    <message>
        <source>The bar's tip, on the {seat}, went {length}, {let_go}</source>
        <translation type="unfinished">Die Spitze der Brechstange an {seat:dative} ging {length}, {let_go}</translation>
    </message>
    <message>
        <source>{force} at the end of {length} of bar made {tip} at its tip</source>
        <translation type="unfinished">{force} am Ende von {length} Brechstange gaben {tip} an ihrer Spitze</translation>
    </message>
    <message>
        <source>{force} at the end of {length} of bar made {tip} at its tip, {why}</source>
        <translation type="unfinished">{force} am Ende von {length} Brechstange gaben {tip} an ihrer Spitze, {why}</translation>
    </message>
    <message>
        <source>roof inflator</source>
        <translation type="unfinished">Gasgenerator im Dach</translation>
    </message>
    <message>
        <source>roof bag</source>
        <translation type="unfinished">Airbag im Dach</translation>
    </message>
    <message>
        <source>belt tensioner</source>
        <translation type="unfinished">Gurtstraffer</translation>
    </message>
    <message>
        <source>belt anchor</source>
        <translation type="unfinished">Gurtverankerung</translation>
    </message>
    <message>
        <source>restraint inflator behind trim</source>
        <translation type="unfinished">Gasgenerator hinter der Verkleidung</translation>
    </message>
    <message>
        <source>undeployed bag behind trim</source>
        <translation type="unfinished">nicht ausgelöster Airbag hinter der Verkleidung</translation>
    </message>
    <message>
        <source>belt tensioner behind trim</source>
        <translation type="unfinished">Gurtstraffer hinter der Verkleidung</translation>
    </message>
    <message>
        <source>belt anchor behind trim</source>
        <translation type="unfinished">Gurtverankerung hinter der Verkleidung</translation>
    </message>
    <message>
        <source>stripped fittings</source>
        <translation type="unfinished">abgenommene Teile</translation>
    </message>
    <message>
        <source>its near side stands {length} off level</source>
        <translation type="unfinished">die nahe Seite steht {length} aus der Waage</translation>
    </message>
    <message>
        <source>{title}; its near side stands {length} off level</source>
        <translation type="unfinished">{title}; die nahe Seite steht {length} aus der Waage</translation>
    </message>
    <message>
        <source>The {name} was swung by hand</source>
        <translation type="unfinished">{name:nominative} wurde von Hand geschwenkt</translation>
    </message>
    <message>
        <source>The {name} was pushed by hand</source>
        <translation type="unfinished">{name:nominative} wurde von Hand geschoben</translation>
    </message>
    <message>
        <source>The {name} is strapped where it is</source>
        <translation type="unfinished">{name:nominative} ist festgebunden, wo sie ist</translation>
    </message>
    <message>
        <source>The {name} is propped up from the ground</source>
        <translation type="unfinished">{name:nominative} ist vom Boden her abgestützt</translation>
    </message>
    <message>
        <source>The {name} is let go</source>
        <translation type="unfinished">{name:nominative} ist losgelassen</translation>
    </message>
    <message>
        <source>it stays where it was</source>
        <translation type="unfinished">sie bleibt, wo sie war</translation>
    </message>
    <message>
        <source>its latch still holds it</source>
        <translation type="unfinished">ihr Schloss hält sie noch</translation>
    </message>
    <message>
        <source>it swung out by {n}°</source>
        <translation type="unfinished">sie schwang um {n}° hinaus</translation>
    </message>
    <message>
        <source>it swung back by {n}°</source>
        <translation type="unfinished">sie schwang um {n}° zurück</translation>
    </message>
    <message>
        <source>its latch end sank by {length}</source>
        <translation type="unfinished">ihr Schlossende sank um {length}</translation>
    </message>
    <message>
        <source>its latch end rose by {length}</source>
        <translation type="unfinished">ihr Schlossende stieg um {length}</translation>
    </message>
    <message>
        <source>{title}; it stands level</source>
        <translation type="unfinished">{title}; es steht waagerecht</translation>
    </message>
    <message>
        <source>it stands level</source>
        <translation type="unfinished">es steht waagerecht</translation>
    </message>
    <message>
        <source>At the foot {n} of {n2} spots are gone</source>
        <translation type="unfinished">Am Fuß sind {n} von {n2} Punkten fort</translation>
    </message>
    <message>
        <source>trim still hides the belt tensioner there</source>
        <translation type="unfinished">dort verbirgt Verkleidung noch den Gurtstraffer</translation>
    </message>
    <message>
        <source>the belt tensioner shows there</source>
        <translation type="unfinished">dort ist der Gurtstraffer zu sehen</translation>
    </message>
    <message>
        <source>blades that open {length} have room for a last cut</source>
        <translation type="unfinished">Klingen, die {length} öffnen, haben Platz für einen letzten Schnitt</translation>
    </message>
    <message>
        <source>blades that open {length} have no room for a last cut</source>
        <translation type="unfinished">Klingen, die {length} öffnen, haben keinen Platz für einen letzten Schnitt</translation>
    </message>
    <message>
        <source>is a window frame that stands on one node at a foot on this lattice, so it would swing freely and cost the hand nothing; use a smaller car.lattice_spacing_m, such as {n}, or pry at the edge</source>
        <translation type="unfinished">ist ein Fensterrahmen, der auf diesem Gitter an einem Fuß auf einem einzigen Knoten steht, also frei schwenken und die Hand nichts kosten würde; ein kleineres car.lattice_spacing_m nehmen, etwa {n}, oder an der Kante hebeln</translation>
    </message>
    <message>
        <source>car with a long front door</source>
        <translation type="unfinished">Auto mit langer Vordertür</translation>
    </message>
    <message>
        <source>Cautions so far: {parts}</source>
        <translation type="unfinished">Vorsicht bisher: {parts}</translation>
    </message>
    <message>
        <source>the {name} stays as it is</source>
        <translation type="unfinished">{name:nominative} bleibt, wie sie ist</translation>
    </message>
    <message>
        <source>it has turned by {n}°</source>
        <translation type="unfinished">sie hat sich um {n}° gedreht</translation>
    </message>
    <message>
        <source>{force} of hands move it no further</source>
        <translation type="unfinished">{force} von Hand bewegen sie nicht weiter</translation>
    </message>
    <message>
        <source>the {part} stands on the ground with {force}</source>
        <translation type="unfinished">{part:nominative} steht mit {force} auf dem Boden</translation>
    </message>
    <message>
        <source>The tips went {length} in and opened {more}</source>
        <translation type="unfinished">Die Spitzen gingen {length} hinein und öffneten {more}</translation>
    </message>
    <message>
        <source>the cut end went {length} down and {side} out</source>
        <translation type="unfinished">das Schnittende ging {length} nach unten und {side} nach außen</translation>
    </message>
    <message>
        <source>the cut end went {length} down and {side} in</source>
        <translation type="unfinished">das Schnittende ging {length} nach unten und {side} nach innen</translation>
    </message>
    <message>
        <source>the cut end went {length} down and {side} out, the stub {stub} up</source>
        <translation type="unfinished">das Schnittende ging {length} nach unten und {side} nach außen, der Stumpf {stub} nach oben</translation>
    </message>
    <message>
        <source>the cut end went {length} down and {side} in, the stub {stub} up</source>
        <translation type="unfinished">das Schnittende ging {length} nach unten und {side} nach innen, der Stumpf {stub} nach oben</translation>
    </message>
    <message>
        <source>the cut end went {length} down and {side} {way}, the stub {stub} up</source>
        <translation type="unfinished">das Schnittende ging {length} nach unten und {side} {way}, der Stumpf {stub} nach oben</translation>
    </message>
    <message>
        <source>in the pocket on</source>
        <translation type="unfinished">in der Tasche an</translation>
    </message>
    <message>
        <source>at the raw edge of</source>
        <translation type="unfinished">an der rohen Kante von</translation>
    </message>
    <message>
        <source>The tips did not go in between ends {length} apart</source>
        <translation type="unfinished">Die Spitzen gingen nicht zwischen Enden, die {length} auseinander stehen</translation>
    </message>
    <message>
        <source>on the raw edge they slipped off at once</source>
        <translation type="unfinished">an der rohen Kante rutschten sie sofort ab</translation>
    </message>
    <message>
        <source>their noses meet it {n} degrees off the push and hold up to {n2}</source>
        <translation type="unfinished">ihre Nasen treffen sie {n} Grad neben dem Druck und halten bis {n2}</translation>
    </message>
    <message>
        <source>A second cut under the first makes room for them</source>
        <translation type="unfinished">Ein zweiter Schnitt unter dem ersten schafft Platz für sie</translation>
    </message>
    <message>
        <source>The tips slipped off</source>
        <translation type="unfinished">Die Spitzen rutschten ab</translation>
    </message>
    <message>
        <source>The tips held</source>
        <translation type="unfinished">Die Spitzen hielten</translation>
    </message>
    <message>
        <source>{n} spot of the pillar popped</source>
        <translation type="unfinished">{n} Punkt der Säule sprang auf</translation>
    </message>
    <message>
        <source>{n} spots of the pillar popped</source>
        <translation type="unfinished">{n} Punkte der Säule sprangen auf</translation>
    </message>
    <message>
        <source>{n} {spots} of the pillar popped</source>
        <translation type="unfinished">{n} {spots} der Säule aufgesprungen</translation>
    </message>
    <message>
        <source>spots</source>
        <translation type="unfinished">Punkte</translation>
    </message>
    <message>
        <source>The ram went out {length} and the {part} moved {more}</source>
        <translation type="unfinished">Der Zylinder fuhr {length} aus und {part:nominative} bewegte sich {more}</translation>
    </message>
    <message>
        <source>The ram went out {length} and the {part} moved {more}, {let_go}</source>
        <translation type="unfinished">Der Zylinder fuhr {length} aus und {part:nominative} bewegte sich {more}, {let_go}</translation>
    </message>
    <message>
        <source>Both ends held, with {n} degrees to spare</source>
        <translation type="unfinished">Beide Enden hielten, mit {n} Grad Reserve</translation>
    </message>
    <message>
        <source>then the part ran ahead of the ram</source>
        <translation type="unfinished">dann lief das Teil dem Zylinder voraus</translation>
    </message>
    <message>
        <source>The {end} slipped</source>
        <translation type="unfinished">Abgerutscht: {end}</translation>
    </message>
    <message>
        <source>the line stood too far off square to what it pressed on</source>
        <translation type="unfinished">die Linie stand zu schräg zu dem, worauf sie drückte</translation>
    </message>
    <message>
        <source>At the belt the push goes along the line between its tips; it has no tilt to set.</source>
        <translation type="unfinished">An der Brüstung geht der Druck entlang der Linie zwischen den Spitzen; eine Neigung ist dort nicht einzustellen.</translation>
    </message>
    <message>
        <source>none yet (metal stands all along the way out)</source>
        <translation type="unfinished">noch keine (auf dem ganzen Weg hinaus steht Metall)</translation>
    </message>
    <message>
        <source>In the way, by share of the opening: {what}</source>
        <translation type="unfinished">Im Weg, nach Anteil der Öffnung: {what}</translation>
    </message>
    <message>
        <source>front door {n} %</source>
        <translation type="unfinished">vordere Tür {n} %</translation>
    </message>
    <message>
        <source>rear door {n} %</source>
        <translation type="unfinished">hintere Tür {n} %</translation>
    </message>
    <message>
        <source>pillar {n} %</source>
        <translation type="unfinished">Säule {n} %</translation>
    </message>
    <message>
        <source>roof rail {n} %</source>
        <translation type="unfinished">Dachholm {n} %</translation>
    </message>
    <message>
        <source>rocker {n} %</source>
        <translation type="unfinished">Schweller {n} %</translation>
    </message>
    <message>
        <source>Shut at every height from hip to shoulder</source>
        <translation type="unfinished">Auf jeder Höhe von der Hüfte bis zur Schulter zu</translation>
    </message>
    <message>
        <source>Shut from {length} to {length2} above the sill</source>
        <translation type="unfinished">Zu von {length} bis {length2} über dem Schweller</translation>
    </message>
    <message>
        <source>Narrowest {length} above the sill, {length2} free</source>
        <translation type="unfinished">Am engsten {length} über dem Schweller, {length2} frei</translation>
    </message>
    <message>
        <source>Width to bring the patient out by</source>
        <translation type="unfinished">Breite, um den Patienten herauszubringen</translation>
    </message>
    <message>
        <source>{rival}, just as near</source>
        <translation type="unfinished">{rival}, ebenso nah</translation>
    </message>
    <message>
        <source>The tip is {place}</source>
        <translation type="unfinished">Die Spitze ist {place}</translation>
    </message>
    <message>
        <source>The tip is on the {seat}</source>
        <translation type="unfinished">Die Spitze ist auf {seat:dative}</translation>
    </message>
    <message>
        <source>The tip is belt, {lip}</source>
        <translation type="unfinished">Die Spitze ist an der Brüstung: {lip}</translation>
    </message>
    <message>
        <source>The {part} tore where the wreck had left it about to, no tool at work</source>
        <translation type="unfinished">{part:nominative} riss dort, wo der Aufprall es beinahe schon getan hatte, ohne dass ein Werkzeug wirkte</translation>
    </message>
    <message>
        <source>the {part} tears where the wreck had left it about to</source>
        <translation type="unfinished">{part:nominative} reißt dort, wo der Aufprall es beinahe schon getan hatte</translation>
    </message>
    <message>
        <source>left tearing</source>
        <translation type="unfinished">vom Aufprall angerissen</translation>
    </message>
    <message>
        <source>torn by the wreck</source>
        <translation type="unfinished">vom Aufprall angerissen</translation>
    </message>
    <message>
        <source>sheet tearing</source>
        <translation type="unfinished">Blech reißt</translation>
    </message>
    <message>
        <source>The {end} slipped with the ram {out} out and the {part} moved {more}</source>
        <translation type="unfinished">{end}: abgerutscht, der Zylinder {out} ausgefahren; {part:nominative} bewegte sich {more}</translation>
    </message>
    <message>
        <source>The {end} slipped with the ram {out} out and the {part} moved {more}, {let_go}</source>
        <translation type="unfinished">{end}: abgerutscht, der Zylinder {out} ausgefahren; {part:nominative} bewegte sich {more}, {let_go}</translation>
    </message>
    <message>
        <source>and the head rolled onto its rim</source>
        <translation type="unfinished">und der Kopf rollte auf seinen Rand</translation>
    </message>
    <message>
        <source>{n} degrees</source>
        <translation type="unfinished">{n} Grad</translation>
    </message>
    <message>
        <source>just past the {n} degrees it holds</source>
        <translation type="unfinished">knapp über den {n} Grad, die sie hält</translation>
    </message>
    <message>
        <source>The {end} slipped: the line stood too far off square to what it pressed on</source>
        <translation type="unfinished">Abgerutscht: {end}; die Linie stand zu schräg zu dem, worauf sie drückte</translation>
    </message>
    <message>
        <source>{n} degrees, it holds up to {n2}</source>
        <translation type="unfinished">{n} Grad, sie hält bis {n2}</translation>
    </message>
    <message>
        <source>{n} degrees, it holds up to</source>
        <translation type="unfinished">{n} Grad, sie hält bis</translation>
    </message>
    <message>
        <source>ease, set it squarer or give it a better grip, press again</source>
        <translation type="unfinished">entlasten, gerader ansetzen oder besseren Halt geben, noch einmal drücken</translation>
    </message>
    <message>
        <source>The ram never pressed on anything</source>
        <translation type="unfinished">Der Zylinder drückte nie auf etwas</translation>
    </message>
    <message>
        <source>The rocker under the pillar gave before the pillar folded</source>
        <translation type="unfinished">Der Schweller unter der Säule gab nach, bevor die Säule sich faltete</translation>
    </message>
    <message>
        <source>cut the foot for relief, or go elsewhere</source>
        <translation type="unfinished">entlasten Sie den Fuß mit einem Schnitt oder setzen Sie anderswo an</translation>
    </message>
    <message>
        <source>The base gave before the part did and stands {length} deep</source>
        <translation type="unfinished">Die Unterlage gab vor dem Teil nach und steht {length} tief</translation>
    </message>
    <message>
        <source>spread the foot or find a stiffer base</source>
        <translation type="unfinished">den Fuß verbreitern oder eine steifere Unterlage suchen</translation>
    </message>
    <message>
        <source>The ram has no more force at this stage</source>
        <translation type="unfinished">Der Zylinder hat in dieser Stufe keine Kraft mehr</translation>
    </message>
    <message>
        <source>head</source>
        <translation type="unfinished">Kopf</translation>
    </message>
    <message>
        <source>foot</source>
        <translation type="unfinished">Fuß</translation>
    </message>
    <message>
        <source>flat on rubber</source>
        <translation type="unfinished">flach auf Gummi</translation>
    </message>
    <message>
        <source>flat on painted</source>
        <translation type="unfinished">flach auf Lack</translation>
    </message>
    <message>
        <source>flat on bare</source>
        <translation type="unfinished">flach auf blankem Metall</translation>
    </message>
    <message>
        <source>waffle on rubber</source>
        <translation type="unfinished">Waffel auf Gummi</translation>
    </message>
    <message>
        <source>waffle on painted</source>
        <translation type="unfinished">Waffel auf Lack</translation>
    </message>
    <message>
        <source>waffle on bare</source>
        <translation type="unfinished">Waffel auf blankem Metall</translation>
    </message>
    <message>
        <source>pointed on rubber</source>
        <translation type="unfinished">spitz auf Gummi</translation>
    </message>
    <message>
        <source>pointed on painted</source>
        <translation type="unfinished">spitz auf Lack</translation>
    </message>
    <message>
        <source>pointed on bare</source>
        <translation type="unfinished">spitz auf blankem Metall</translation>
    </message>
    <message>
        <source>stepped ram</source>
        <translation type="unfinished">Zylinder mit Stufen</translation>
    </message>
    <message>
        <source>wide-tip spreader</source>
        <translation type="unfinished">Spreizer, breit</translation>
    </message>
    <message>
        <source>let go of it</source>
        <translation type="unfinished">loslassen</translation>
    </message>
    <message>
        <source>as found</source>
        <translation type="unfinished">wie vorgefunden</translation>
    </message>
    <message>
        <source>at its front alone</source>
        <translation type="unfinished">nur vorn</translation>
    </message>
    <message>
        <source>the door's skin is in {length} at its deepest</source>
        <translation type="unfinished">die Außenhaut der Tür ist an der tiefsten Stelle {length} eingedrückt</translation>
    </message>
    <message>
        <source>{name} wedged with {force}</source>
        <translation type="unfinished">{name} verklemmt mit {force}</translation>
    </message>
    <message>
        <source>the pillar is in {length}, {at}</source>
        <translation type="unfinished">die Säule ist {length} eingedrückt, {at}</translation>
    </message>
    <message>
        <source>{n} spots popped</source>
        <translation type="unfinished">{n} Punkte aufgesprungen</translation>
    </message>
    <message>
        <source>let go: {what}</source>
        <translation type="unfinished">frei: {what}</translation>
    </message>
    <message>
        <source>jammed although the handle is pulled: {what}</source>
        <translation type="unfinished">klemmt, obwohl der Griff gezogen ist: {what}</translation>
    </message>
    <message>
        <source>some increments did not converge</source>
        <translation type="unfinished">einige Schritte kamen nicht zur Ruhe</translation>
    </message>
    <message>
        <source>the words below are not settled</source>
        <translation type="unfinished">die Worte darunter sind nicht gesichert</translation>
    </message>
    <message>
        <source>on its wheels</source>
        <translation type="unfinished">auf seinen Rädern</translation>
    </message>
    <message>
        <source>on its side</source>
        <translation type="unfinished">auf der Seite</translation>
    </message>
    <message>
        <source>this side up</source>
        <translation type="unfinished">diese Seite oben</translation>
    </message>
    <message>
        <source>this side down</source>
        <translation type="unfinished">diese Seite unten</translation>
    </message>
    <message>
        <source>{side} block at {n} m</source>
        <translation type="unfinished">Klotz ({side}) bei {n} m</translation>
    </message>
    <message>
        <source>pillar rest</source>
        <translation type="unfinished">Rest der Säule</translation>
    </message>
    <message>
        <source>At {length} ({why}) stop</source>
        <translation type="unfinished">Bei {length} ({why}) halten</translation>
    </message>
    <message>
        <source>going on to {length} tears {torn} and leaves {n} sharp edges</source>
        <translation type="unfinished">weiter bis {length} reißt {torn} und lässt {n} scharfe Kanten</translation>
    </message>
    <message>
        <source>stopping there and cutting tear {torn} and leave {n}</source>
        <translation type="unfinished">dort halten und schneiden reißt {torn} und lässt {n}</translation>
    </message>
    <message>
        <source>stopping there with nothing in sight to cut tears {torn} and leaves {n}</source>
        <translation type="unfinished">dort halten, ohne dass etwas zum Schneiden zu sehen ist, reißt {torn} und lässt {n}</translation>
    </message>
    <message>
        <source>stopping there and {cut} tear {torn} and leave {n}</source>
        <translation type="unfinished">dort halten und {cut}: reißt {torn} und lässt {n}</translation>
    </message>
    <message>
        <source>No gap suffices and nothing tears on this push</source>
        <translation type="unfinished">Kein Spalt reicht, und bei diesem Druck reißt nichts</translation>
    </message>
    <message>
        <source>there is no moment to stop and cut</source>
        <translation type="unfinished">es gibt keinen Moment zum Halten und Schneiden</translation>
    </message>
    <message>
        <source>work of the tips</source>
        <translation type="unfinished">Arbeit der Spitzen</translation>
    </message>
    <message>
        <source>folding skin</source>
        <translation type="unfinished">Falten der Außenhaut</translation>
    </message>
    <message>
        <source>folding inner</source>
        <translation type="unfinished">Falten des Innenblechs</translation>
    </message>
    <message>
        <source>folding bar</source>
        <translation type="unfinished">Falten des Trägers</translation>
    </message>
    <message>
        <source>folding pillar</source>
        <translation type="unfinished">Falten der Säule</translation>
    </message>
    <message>
        <source>folding rail</source>
        <translation type="unfinished">Falten des Dachholms</translation>
    </message>
    <message>
        <source>seam peel</source>
        <translation type="unfinished">Schälen der Naht</translation>
    </message>
    <message>
        <source>seam slip</source>
        <translation type="unfinished">Scheren der Naht</translation>
    </message>
    <message>
        <source>released in a jump</source>
        <translation type="unfinished">im Sprung losgelassen</translation>
    </message>
    <message>
        <source>pillar weld</source>
        <translation type="unfinished">Schweißpunkte der Säule</translation>
    </message>
    <message>
        <source>pillar touch</source>
        <translation type="unfinished">Berührung in der Säule</translation>
    </message>
    <message>
        <source>skin steel</source>
        <translation type="unfinished">Stahl der Außenhaut</translation>
    </message>
    <message>
        <source>inner steel</source>
        <translation type="unfinished">Stahl des Innenblechs</translation>
    </message>
    <message>
        <source>patch steel</source>
        <translation type="unfinished">Stahl der Verstärkung</translation>
    </message>
    <message>
        <source>bar steel</source>
        <translation type="unfinished">Stahl des Trägers</translation>
    </message>
    <message>
        <source>press-hardened steel</source>
        <translation type="unfinished">pressgehärteter Stahl</translation>
    </message>
    <message>
        <source>skin alloy</source>
        <translation type="unfinished">Aluminium der Außenhaut</translation>
    </message>
    <message>
        <source>inner alloy</source>
        <translation type="unfinished">Aluminium des Innenblechs</translation>
    </message>
    <message>
        <source>illustrative</source>
        <translation type="unfinished">zur Anschauung</translation>
    </message>
    <message>
        <source>assumed</source>
        <translation type="unfinished">angenommen</translation>
    </message>
    <message>
        <source>composite skin</source>
        <translation type="unfinished">Haut aus Verbundstoff</translation>
    </message>
    <message>
        <source>low saloon</source>
        <translation type="unfinished">niedrige Limousine</translation>
    </message>
    <message>
        <source>low saloon, bonded steel door</source>
        <translation type="unfinished">niedrige Limousine, geklebte Stahltür</translation>
    </message>
    <message>
        <source>bonded steel door</source>
        <translation type="unfinished">geklebte Stahltür</translation>
    </message>
    <message>
        <source>welded steel door</source>
        <translation type="unfinished">geschweißte Stahltür</translation>
    </message>
    <message>
        <source>mixed steel</source>
        <translation type="unfinished">Stahl, geklebt und geschweißt</translation>
    </message>
    <message>
        <source>Exit width: {text}</source>
        <translation type="unfinished">Ausgangsbreite: {text}</translation>
    </message>
    <message>
        <source>to the person</source>
        <translation type="unfinished">zur Person</translation>
    </message>
    <message>
        <source>The side and the person</source>
        <translation type="unfinished">Die Seite und die Person</translation>
    </message>
    <message>
        <source>Door and tool</source>
        <translation type="unfinished">Tür und Gerät</translation>
    </message>
    <message>
        <source>Only the front door gives here; pillars, rocker and rear door stand still, and a man of middling size sits in front. The whole side gives all of them, and takes minutes where a door takes seconds.</source>
        <translation type="unfinished">Hier gibt nur die vordere Tür nach; Säulen, Schweller und hintere Tür stehen still, und vorn sitzt ein mittelgroßer Mann. Die ganze Seite lässt alle nachgeben und braucht Minuten, wo eine Tür Sekunden braucht.</translation>
    </message>
    <message>
        <source>Sizes are percentiles of a published survey of soldiers (ANSUR II): a real patient may be larger. Room is a distance to metal; nothing here says anything of injury.</source>
        <translation type="unfinished">Die Größen sind Perzentile einer veröffentlichten Messreihe an Soldaten (ANSUR II): ein wirklicher Patient kann größer sein. Raum ist ein Abstand zum Metall; nichts hier sagt etwas über Verletzungen.</translation>
    </message>
    <message>
        <source>Move {text} needs the whole side: take that again, or take the move out of the plan</source>
        <translation type="unfinished">Schritt {text} braucht die ganze Seite: diese wieder nehmen oder den Schritt aus dem Plan nehmen</translation>
    </message>
    <message>
        <source>Moves {text} need the whole side: take that again, or take the moves out of the plan</source>
        <translation type="unfinished">Die Schritte {text} brauchen die ganze Seite: diese wieder nehmen oder die Schritte aus dem Plan nehmen</translation>
    </message>
    <message>
        <source>{value} is too little; use {text}</source>
        <translation type="unfinished">{value} ist zu wenig; verwendbar ist {text}</translation>
    </message>
    <message>
        <source>{value} is too much; use {text}</source>
        <translation type="unfinished">{value} ist zu viel; verwendbar ist {text}</translation>
    </message>
    <message>
        <source>{value} is too thin to be worked out; use 0, where it stands still, or {least} and more</source>
        <translation type="unfinished">{value} ist zu dünn zum Rechnen; 0 verwenden, dann steht es still, oder {least} und mehr</translation>
    </message>
    <message>
        <source>So much metal that gives takes too many triangles; first make them {least} or larger, above</source>
        <translation type="unfinished">So viel Metall, das nachgibt, braucht zu viele Dreiecke; diese oben zuerst {least} oder größer machen</translation>
    </message>
    <message>
        <source>{n} is mild, {n2} press-hardened</source>
        <translation type="unfinished">{n} ist weich, {n2} pressgehärtet</translation>
    </message>
    <message>
        <source>woman, 5th</source>
        <translation type="unfinished">Frau, 5.</translation>
    </message>
    <message>
        <source>woman, 50th</source>
        <translation type="unfinished">Frau, 50.</translation>
    </message>
    <message>
        <source>woman, 95th</source>
        <translation type="unfinished">Frau, 95.</translation>
    </message>
    <message>
        <source>man, 5th</source>
        <translation type="unfinished">Mann, 5.</translation>
    </message>
    <message>
        <source>man, 50th</source>
        <translation type="unfinished">Mann, 50.</translation>
    </message>
    <message>
        <source>man, 95th</source>
        <translation type="unfinished">Mann, 95.</translation>
    </message>
    <message>
        <source>How much of the car</source>
        <translation type="unfinished">Wie viel vom Auto</translation>
    </message>
    <message>
        <source>The person inside</source>
        <translation type="unfinished">Die Person im Auto</translation>
    </message>
    <message>
        <source>Pillar between the doors</source>
        <translation type="unfinished">Säule zwischen den Türen</translation>
    </message>
    <message>
        <source>Pillar's foot and rocker</source>
        <translation type="unfinished">Fuß der Säule und Schweller</translation>
    </message>
    <message>
        <source>Roof rail</source>
        <translation type="unfinished">Dachholm</translation>
    </message>
    <message>
        <source>Rear door, and what is left on</source>
        <translation type="unfinished">Hintere Tür, und was noch daran ist</translation>
    </message>
    <message>
        <source>How the car stands</source>
        <translation type="unfinished">Wie das Auto steht</translation>
    </message>
    <message>
        <source>Worked out</source>
        <translation type="unfinished">Gerechnet wird</translation>
    </message>
    <message>
        <source>Side of the car</source>
        <translation type="unfinished">Seite des Autos</translation>
    </message>
    <message>
        <source>Triangles of the metal</source>
        <translation type="unfinished">Dreiecke des Metalls</translation>
    </message>
    <message>
        <source>{n} is quick, {n2} finer and slower</source>
        <translation type="unfinished">{n} ist schnell, {n2} feiner und langsamer</translation>
    </message>
    <message>
        <source>Size, percentile</source>
        <translation type="unfinished">Größe, Perzentil</translation>
    </message>
    <message>
        <source>Sits</source>
        <translation type="unfinished">Sitzt</translation>
    </message>
    <message>
        <source>Trunk leans back</source>
        <translation type="unfinished">Rumpf lehnt zurück</translation>
    </message>
    <message>
        <source>0 is upright, {n} usual</source>
        <translation type="unfinished">0 ist aufrecht, {n} üblich</translation>
    </message>
    <message>
        <source>Trunk leans away from the door</source>
        <translation type="unfinished">Rumpf lehnt von der Tür weg</translation>
    </message>
    <message>
        <source>0 is upright</source>
        <translation type="unfinished">0 ist aufrecht</translation>
    </message>
    <message>
        <source>Hip to inner panel</source>
        <translation type="unfinished">Hüfte bis Innenblech</translation>
    </message>
    <message>
        <source>{n} to {n2} beside a sound door</source>
        <translation type="unfinished">{n} bis {n2} neben einer heilen Tür</translation>
    </message>
    <message>
        <source>Outer part</source>
        <translation type="unfinished">Äußeres Teil</translation>
    </message>
    <message>
        <source>{n} to {n2} have been published</source>
        <translation type="unfinished">{n} bis {n2} sind veröffentlicht</translation>
    </message>
    <message>
        <source>Yield stress, outer part</source>
        <translation type="unfinished">Fließgrenze, äußeres Teil</translation>
    </message>
    <message>
        <source>Inner wall</source>
        <translation type="unfinished">Innenwand</translation>
    </message>
    <message>
        <source>Yield stress, inner wall</source>
        <translation type="unfinished">Fließgrenze, Innenwand</translation>
    </message>
    <message>
        <source>Inner wall bowed by</source>
        <translation type="unfinished">Innenwand gewölbt um</translation>
    </message>
    <message>
        <source>0 is flat, {n} to {n2} a pressed wall</source>
        <translation type="unfinished">0 ist eben, {n} bis {n2} eine gepresste Wand</translation>
    </message>
    <message>
        <source>Softer foot, up to</source>
        <translation type="unfinished">Weicherer Fuß, bis</translation>
    </message>
    <message>
        <source>0 is one grade, {n} to {n2} a softer foot</source>
        <translation type="unfinished">0 ist eine Güte, {n} bis {n2} ein weicherer Fuß</translation>
    </message>
    <message>
        <source>Yield stress, softer foot</source>
        <translation type="unfinished">Fließgrenze, weicherer Fuß</translation>
    </message>
    <message>
        <source>Spots apart, foot and head</source>
        <translation type="unfinished">Abstand der Punkte, Fuß und Kopf</translation>
    </message>
    <message>
        <source>Thinnest sheet under a spot</source>
        <translation type="unfinished">Dünnstes Blech unter einem Punkt</translation>
    </message>
    <message>
        <source>Head at the roof rail</source>
        <translation type="unfinished">Kopf am Dachholm</translation>
    </message>
    <message>
        <source>still welded</source>
        <translation type="unfinished">noch verschweißt</translation>
    </message>
    <message>
        <source>torn off</source>
        <translation type="unfinished">abgerissen</translation>
    </message>
    <message>
        <source>Foot flares over</source>
        <translation type="unfinished">Fuß weitet sich über</translation>
    </message>
    <message>
        <source>0 is no flare, {n} to {n2} is usual</source>
        <translation type="unfinished">0 ist ohne Weitung, {n} bis {n2} ist üblich</translation>
    </message>
    <message>
        <source>Foot laps over the rocker by</source>
        <translation type="unfinished">Fuß überlappt den Schweller um</translation>
    </message>
    <message>
        <source>Rows of spots on the flare</source>
        <translation type="unfinished">Reihen von Punkten am Fuß</translation>
    </message>
    <message>
        <source>two rows are usual</source>
        <translation type="unfinished">zwei Reihen sind üblich</translation>
    </message>
    <message>
        <source>Stiffener in the foot</source>
        <translation type="unfinished">Versteifung im Fuß</translation>
    </message>
    <message>
        <source>0 is none, {n} to {n2} a usual one</source>
        <translation type="unfinished">0 ist keine, {n} bis {n2} eine übliche</translation>
    </message>
    <message>
        <source>Stiffener reaches up</source>
        <translation type="unfinished">Versteifung reicht hinauf</translation>
    </message>
    <message>
        <source>Rocker's wall</source>
        <translation type="unfinished">Wand des Schwellers</translation>
    </message>
    <message>
        <source>0 stands still, {n} to {n2} a usual one</source>
        <translation type="unfinished">0 steht still, {n} bis {n2} eine übliche</translation>
    </message>
    <message>
        <source>Yield stress, rocker</source>
        <translation type="unfinished">Fließgrenze, Schweller</translation>
    </message>
    <message>
        <source>Bulkheads under the pillar</source>
        <translation type="unfinished">Schotte unter der Säule</translation>
    </message>
    <message>
        <source>in the rocker</source>
        <translation type="unfinished">im Schweller</translation>
    </message>
    <message>
        <source>Wall of the rail</source>
        <translation type="unfinished">Wand des Holms</translation>
    </message>
    <message>
        <source>Yield stress, rail</source>
        <translation type="unfinished">Fließgrenze, Holm</translation>
    </message>
    <message>
        <source>Rail held</source>
        <translation type="unfinished">Holm gehalten</translation>
    </message>
    <message>
        <source>front and rear</source>
        <translation type="unfinished">vorn und hinten</translation>
    </message>
    <message>
        <source>still on</source>
        <translation type="unfinished">noch daran</translation>
    </message>
    <message>
        <source>still in</source>
        <translation type="unfinished">noch darin</translation>
    </message>
    <message>
        <source>Panes</source>
        <translation type="unfinished">Scheiben</translation>
    </message>
    <message>
        <source>Lies</source>
        <translation type="unfinished">Liegt</translation>
    </message>
    <message>
        <source>The car weighs</source>
        <translation type="unfinished">Das Auto wiegt</translation>
    </message>
    <message>
        <source>long front door</source>
        <translation type="unfinished">lange vordere Tür</translation>
    </message>
    <message>
        <source>in front</source>
        <translation type="unfinished">vorn</translation>
    </message>
    <message>
        <source>in the rear</source>
        <translation type="unfinished">hinten</translation>
    </message>
    <message>
        <source>in front alone</source>
        <translation type="unfinished">nur vorn</translation>
    </message>
    <message>
        <source>in the rear alone</source>
        <translation type="unfinished">nur hinten</translation>
    </message>
    <message>
        <source>its wheels</source>
        <translation type="unfinished">den Rädern</translation>
    </message>
    <message>
        <source>blocks too</source>
        <translation type="unfinished">auch auf Klötzen</translation>
    </message>
    <message>
        <source>{n} to {n2}, assumed</source>
        <translation type="unfinished">{n} bis {n2}, angenommen</translation>
    </message>
    <message>
        <source>{n} to {n2} is usual</source>
        <translation type="unfinished">{n} bis {n2} ist üblich</translation>
    </message>
    <message>
        <source>Room to the person, {unit}</source>
        <translation type="unfinished">Raum zur Person, {unit}</translation>
    </message>
    <message>
        <source>Exit width, {unit}</source>
        <translation type="unfinished">Ausgangsbreite, {unit}</translation>
    </message>
    <message>
        <source>Room to each body part</source>
        <translation type="unfinished">Raum zu jedem Körperteil</translation>
    </message>
    <message>
        <source>Room: {text}</source>
        <translation type="unfinished">Raum: {text}</translation>
    </message>
    <message>
        <source>From the nearest point of any sheet; the line on the stage is to a node of the inner metal</source>
        <translation type="unfinished">Vom nächsten Punkt eines Blechs; die Linie auf der Bühne geht zu einem Knoten des inneren Metalls</translation>
    </message>
    <message>
        <source>The longest stretch between the pillars with no metal in it, from hip to shoulder; no rule says how much is enough: local procedure and who treats the patient decide</source>
        <translation type="unfinished">Die längste Strecke zwischen den Säulen ohne Metall darin, von der Hüfte bis zur Schulter; keine Regel sagt, wie viel genügt: die örtliche Vorgehensweise und wer den Patienten behandelt entscheiden</translation>
    </message>
    <message>
        <source>shoulders</source>
        <translation type="unfinished">Schultern</translation>
    </message>
    <message>
        <source>bonded steel door with a few welds</source>
        <translation type="unfinished">geklebte Stahltür mit einigen Schweißpunkten</translation>
    </message>
    <message>
        <source>bonded alloy door</source>
        <translation type="unfinished">geklebte Aluminiumtür</translation>
    </message>
    <message>
        <source>bead gap at the latch</source>
        <translation type="unfinished">Lücke der Raupe am Schloss</translation>
    </message>
    <message>
        <source>bonded steel door, bead missing at the latch</source>
        <translation type="unfinished">geklebte Stahltür, Raupe fehlt am Schloss</translation>
    </message>
    <message>
        <source>uneven bead</source>
        <translation type="unfinished">ungleichmäßige Raupe</translation>
    </message>
    <message>
        <source>bonded steel door, half latched</source>
        <translation type="unfinished">geklebte Stahltür, halb verriegelt</translation>
    </message>
    <message>
        <source>latch held open</source>
        <translation type="unfinished">Schloss offen gehalten</translation>
    </message>
    <message>
        <source>bonded steel door, striker wedged, the handle frees the pawl</source>
        <translation type="unfinished">geklebte Stahltür, Schließkeil verklemmt, der Griff löst die Sperrklinke</translation>
    </message>
    <message>
        <source>jammed latch</source>
        <translation type="unfinished">klemmendes Schloss</translation>
    </message>
    <message>
        <source>bonded steel door, latch jammed</source>
        <translation type="unfinished">geklebte Stahltür, Schloss klemmt</translation>
    </message>
    <message>
        <source>no bar</source>
        <translation type="unfinished">kein Träger</translation>
    </message>
    <message>
        <source>bonded steel door without a bar</source>
        <translation type="unfinished">geklebte Stahltür ohne Träger</translation>
    </message>
    <message>
        <source>cold brittle seam</source>
        <translation type="unfinished">kalte, spröde Naht</translation>
    </message>
    <message>
        <source>The build '{name}' shows an idea</source>
        <translation type="unfinished">Die Bauweise „{name}“ zeigt eine Idee</translation>
    </message>
    <message>
        <source>its numbers are assumed, nothing stands behind them</source>
        <translation type="unfinished">ihre Zahlen sind angenommen, nichts steht dahinter</translation>
    </message>
    <message>
        <source>low car</source>
        <translation type="unfinished">niedriges Auto</translation>
    </message>
    <message>
        <source>tall car</source>
        <translation type="unfinished">hohes Auto</translation>
    </message>
    <message>
        <source>long door</source>
        <translation type="unfinished">lange Tür</translation>
    </message>
    <message>
        <source>whole side</source>
        <translation type="unfinished">ganze Seite</translation>
    </message>
    <message>
        <source>Held</source>
        <translation type="unfinished">Gehalten</translation>
    </message>
    <message>
        <source>front</source>
        <translation type="unfinished">vorn</translation>
    </message>
    <message>
        <source>rear</source>
        <translation type="unfinished">hinten</translation>
    </message>
    <message>
        <source>outside</source>
        <translation type="unfinished">außen</translation>
    </message>
    <message>
        <source>door</source>
        <translation type="unfinished">Tür</translation>
    </message>
    <message>
        <source>up</source>
        <translation type="unfinished">hoch</translation>
    </message>
    <message>
        <source>along</source>
        <translation type="unfinished">entlang</translation>
    </message>
    <message>
        <source>its walls</source>
        <translation type="unfinished">ihre Wände</translation>
    </message>
    <message>
        <source>{n} mm {way} clearance</source>
        <translation type="unfinished">{n} mm {way} Abstand</translation>
    </message>
    <message>
        <source>the {part}</source>
        <translation type="unfinished">{part:nominative}</translation>
    </message>
    <message>
        <source>{part} exposed</source>
        <translation type="unfinished">{part} freigelegt</translation>
    </message>
    <message>
        <source>{part} tearing</source>
        <translation type="unfinished">{part} reißt</translation>
    </message>
    <message>
        <source>belt {lip} lip</source>
        <translation type="unfinished">Brüstung, Lippe {lip}</translation>
    </message>
    <message>
        <source>stage {n}</source>
        <translation type="unfinished">Stufe {n}</translation>
    </message>
    <message>
        <source>body {text}</source>
        <translation type="unfinished">Karosserie {text}</translation>
    </message>
    <message>
        <source>start {text}</source>
        <translation type="unfinished">Anfang {text}</translation>
    </message>
    <message>
        <source>moves</source>
        <translation type="unfinished">Schritte</translation>
    </message>
    <message>
        <source>With what is not known well varied,</source>
        <translation type="unfinished">Mit dem verändert, was nicht gut bekannt ist,</translation>
    </message>
    <message>
        <source>ith what is not known well varied,</source>
        <translation type="unfinished">it dem verändert, was nicht gut bekannt ist,</translation>
    </message>
    <message>
        <source>With what is not known well varied, {text}</source>
        <translation type="unfinished">Wird verändert, was nicht gut bekannt ist: {text}</translation>
    </message>
    <message>
        <source>On a coarse lattice, as a preview only</source>
        <translation type="unfinished">Auf grobem Gitter, nur als Vorschau</translation>
    </message>
    <message>
        <source>for the plan: {what}, {word}</source>
        <translation type="unfinished">für den Plan: {what}, {word}</translation>
    </message>
    <message>
        <source>{n} of {n2} failed or did not settle and count as such</source>
        <translation type="unfinished">{n} von {n2} misslangen oder kamen nicht zur Ruhe und zählen so</translation>
    </message>
    <message>
        <source>what gives first is {word}</source>
        <translation type="unfinished">was zuerst nachgibt, ist {word}</translation>
    </message>
    <message>
        <source>the runs ended there</source>
        <translation type="unfinished">die Rechnungen endeten dort</translation>
    </message>
    <message>
        <source>one run</source>
        <translation type="unfinished">eine Rechnung</translation>
    </message>
    <message>
        <source>{n} runs</source>
        <translation type="unfinished">{n} Rechnungen</translation>
    </message>
    <message>
        <source>one run of {n} failed or did not settle and count as such</source>
        <translation type="unfinished">eine Rechnung von {n} misslang oder kam nicht zur Ruhe und zählt so</translation>
    </message>
    <message>
        <source>{runs} of {n} failed or did not settle and count as such</source>
        <translation type="unfinished">{runs} von {n} misslangen oder kamen nicht zur Ruhe und zählen so</translation>
    </message>
    <message>
        <source>hold no push, so there is nothing to tell; add a spread or a squeeze</source>
        <translation type="unfinished">enthalten keinen Druck, es gibt also nichts zu sagen; ein Spreizen oder Quetschen anfügen</translation>
    </message>
    <message>
        <source>too few runs</source>
        <translation type="unfinished">zu wenige Rechnungen</translation>
    </message>
    <message>
        <source>nothing yet</source>
        <translation type="unfinished">noch nichts</translation>
    </message>
    <message>
        <source>0 is half-way down the shut face, 0.02 to 0.04 m a knuckle's axis</source>
        <translation type="unfinished">0 ist die halbe Tiefe der Stirnfläche, 0.02 bis 0.04 m die Achse eines Gelenks</translation>
    </message>
    <message>
        <source>depth of the hinges' axis</source>
        <translation type="unfinished">Tiefe der Scharnierachse</translation>
    </message>
    <message>
        <source>the runs are too few to say what gives first (so far {what})</source>
        <translation type="unfinished">die Rechnungen sind zu wenige, um zu sagen, was zuerst nachgibt (bisher {what})</translation>
    </message>
    <message>
        <source>drag took {share} of the work: forces are that much too high</source>
        <translation type="unfinished">die Dämpfung nahm {share} der Arbeit: um so viel sind die Kräfte zu hoch</translation>
    </message>
    <message>
        <source>sent to {printer}</source>
        <translation type="unfinished">gesendet an {printer}</translation>
    </message>
    <message>
        <source>The pillar between the doors as a box of sheet on its foot and head, weld by weld; the roof rail as one, where a car is told to have it give</source>
        <translation type="unfinished">Die Säule zwischen den Türen als Blechkasten auf Fuß und Kopf, Punkt für Punkt geschweißt; der Dachholm ebenso, wo ein Auto ihn nachgeben lässt</translation>
    </message>
    <message>
        <source>Rams with heads, feet and stages: the line between their ends, friction, bases that dent; bars of hand tools as levers</source>
        <translation type="unfinished">Rettungszylinder mit Köpfen, Füßen und Stufen: die Linie zwischen ihren Enden, Reibung, Auflager, die sich eindrücken; Stangen von Handwerkzeug als Hebel</translation>
    </message>
    <message>
        <source>Cuts that part sheet and leave raw edges; what blades can reach, and what is seen</source>
        <translation type="unfinished">Schnitte, die Blech trennen und rohe Kanten lassen; was Klingen erreichen und was man sieht</translation>
    </message>
    <message>
        <source>Weight, ground, wheels and blocks: a freed door drops, swings on its check, and carries load where it touches</source>
        <translation type="unfinished">Gewicht, Boden, Räder und Klötze: eine befreite Tür sackt ab, schwingt gegen ihren Türfeststeller und trägt, wo sie aufliegt</translation>
    </message>
    <message>
        <source>Room from metal to a seated person of three sizes, and the width left to bring them out by: distances, nothing else</source>
        <translation type="unfinished">Der Abstand vom Metall zu einem sitzenden Menschen in drei Größen und die Breite, durch die man ihn herausbringt: Abstände, sonst nichts</translation>
    </message>
    <message>
        <source>Trim, seals, panes and restraint parts as things that are there or gone and hide what is behind; they carry nothing</source>
        <translation type="unfinished">Verkleidung, Dichtungen, Scheiben und Rückhalteteile als Dinge, die da sind oder nicht und verdecken, was dahinter liegt; sie tragen nichts</translation>
    </message>
    <message>
        <source>Rust, the strength of trim, glass and seals, and what a restraint part does when it fires</source>
        <translation type="unfinished">Rost, die Festigkeit von Verkleidung, Glas und Dichtungen, und was ein Rückhalteteil tut, wenn es auslöst</translation>
    </message>
    <message>
        <source>Front and rear pillar, roof panel and floor as metal that yields: they stand still; so do rail and rocker, unless a car says that they give</source>
        <translation type="unfinished">Vordere und hintere Säule, Dach und Boden als Metall, das fließt: sie stehen still; ebenso Dachholm und Schweller, wenn ein Auto nicht sagt, dass sie nachgeben</translation>
    </message>
    <message>
        <source>Hands, weight and noise of a tool, and the team: hands-on practice teaches them</source>
        <translation type="unfinished">Hände, Gewicht und Lärm eines Geräts, und die Mannschaft: das lehrt die praktische Übung</translation>
    </message>
    <message>
        <source>the runs are too few to say what gives first (so far {what} each time)</source>
        <translation type="unfinished">die Rechnungen sind zu wenige, um zu sagen, was zuerst nachgibt (bisher jedes Mal {what})</translation>
    </message>
    <message>
        <source>{part} gives first, {word}</source>
        <translation type="unfinished">zuerst gibt nach: {part}, {word}</translation>
    </message>
    <message>
        <source>{part} gives first</source>
        <translation type="unfinished">zuerst gibt nach: {part}</translation>
    </message>
    <message>
        <source>gives first</source>
        <translation type="unfinished">gibt zuerst nach</translation>
    </message>
    <message>
        <source>for the plan</source>
        <translation type="unfinished">für den Plan</translation>
    </message>
    <message>
        <source>true share {n} to {n2} %</source>
        <translation type="unfinished">wahrer Anteil {n} bis {n2} %</translation>
    </message>
    <message>
        <source>true share</source>
        <translation type="unfinished">wahrer Anteil</translation>
    </message>
    <message>
        <source>{n} of {n2} runs have ended</source>
        <translation type="unfinished">{n} von {n2} Rechnungen sind zu Ende</translation>
    </message>
    <message>
        <source>{n} unsure</source>
        <translation type="unfinished">{n} unsicher</translation>
    </message>
    <message>
        <source>{n} of {n2}</source>
        <translation type="unfinished">{n} von {n2}</translation>
    </message>
    <message>
        <source>{n} of {n2}, {n3} unsure</source>
        <translation type="unfinished">{n} von {n2}, {n3} unsicher</translation>
    </message>
    <message>
        <source>run lost</source>
        <translation type="unfinished">Rechnung verloren</translation>
    </message>
    <message>
        <source>is no spread; a map is made of a spread: choose one</source>
        <translation type="unfinished">ist kein Spreizen; eine Karte entsteht aus einem Spreizen: eines wählen</translation>
    </message>
    <message>
        <source>is on the door, and a map has the other tip on the body; leave it out</source>
        <translation type="unfinished">ist an der Tür, und eine Karte hat die andere Spitze an der Karosserie; weglassen</translation>
    </message>
    <message>
        <source>nearly always</source>
        <translation type="unfinished">fast immer</translation>
    </message>
    <message>
        <source>usually</source>
        <translation type="unfinished">meistens</translation>
    </message>
    <message>
        <source>often</source>
        <translation type="unfinished">oft</translation>
    </message>
    <message>
        <source>sometimes</source>
        <translation type="unfinished">manchmal</translation>
    </message>
    <message>
        <source>seldom</source>
        <translation type="unfinished">selten</translation>
    </message>
    <message>
        <source>rarely</source>
        <translation type="unfinished">selten</translation>
    </message>
    <message>
        <source>hardly ever</source>
        <translation type="unfinished">fast nie</translation>
    </message>
    <message>
        <source>always</source>
        <translation type="unfinished">immer</translation>
    </message>
    <message>
        <source>never</source>
        <translation type="unfinished">nie</translation>
    </message>
    <message>
        <source>either way</source>
        <translation type="unfinished">so oder so</translation>
    </message>
    <message>
        <source>{n} and {n2} unsure of {n3} runs cannot be</source>
        <translation type="unfinished">{n} und {n2} unsichere von {n3} Rechnungen kann nicht sein</translation>
    </message>
    <message>
        <source>the seam parts first</source>
        <translation type="unfinished">die Naht geht zuerst auf</translation>
    </message>
    <message>
        <source>a weld breaks first</source>
        <translation type="unfinished">ein Schweißpunkt reißt zuerst</translation>
    </message>
    <message>
        <source>the latch lets go first</source>
        <translation type="unfinished">das Schloss gibt zuerst frei</translation>
    </message>
    <message>
        <source>the striker slides out of the fork first</source>
        <translation type="unfinished">der Schließkeil gleitet zuerst aus der Gabel</translation>
    </message>
    <message>
        <source>a hinge lets go first</source>
        <translation type="unfinished">ein Scharnier gibt zuerst frei</translation>
    </message>
    <message>
        <source>a foot of the bar lets go first</source>
        <translation type="unfinished">ein Fuß des Trägers gibt zuerst frei</translation>
    </message>
    <message>
        <source>a sheet tears first</source>
        <translation type="unfinished">ein Blech reißt zuerst</translation>
    </message>
    <message>
        <source>the tip cuts through the sheet first</source>
        <translation type="unfinished">die Spitze schneidet zuerst durch das Blech</translation>
    </message>
    <message>
        <source>the tip comes off before anything gives</source>
        <translation type="unfinished">die Spitze kommt ab, bevor etwas nachgibt</translation>
    </message>
    <message>
        <source>the tool stalls</source>
        <translation type="unfinished">das Gerät bleibt stehen</translation>
    </message>
    <message>
        <source>the tip slips and nothing gives</source>
        <translation type="unfinished">die Spitze rutscht, und nichts gibt nach</translation>
    </message>
    <message>
        <source>metal bends and nothing gives</source>
        <translation type="unfinished">Metall biegt sich, und nichts gibt nach</translation>
    </message>
    <message>
        <source>nothing gives</source>
        <translation type="unfinished">nichts gibt nach</translation>
    </message>
    <message>
        <source>the metal folds out and nothing gives</source>
        <translation type="unfinished">das Metall faltet nach außen, und nichts gibt nach</translation>
    </message>
    <message>
        <source>the metal folds in and nothing gives</source>
        <translation type="unfinished">das Metall faltet nach innen, und nichts gibt nach</translation>
    </message>
    <message>
        <source>the tips cannot stand</source>
        <translation type="unfinished">die Spitzen können dort nicht stehen</translation>
    </message>
    <message>
        <source>it is not settled what gives first</source>
        <translation type="unfinished">nicht gesichert, was zuerst nachgibt</translation>
    </message>
    <message>
        <source>{length} wide, {deep} deep</source>
        <translation type="unfinished">{length} breit, {deep} tief</translation>
    </message>
    <message>
        <source>tips {length} wide, {deep} deep</source>
        <translation type="unfinished">Spitzen {length} breit, {deep} tief</translation>
    </message>
    <message>
        <source>{car}, tips {tips}, pushing {n} degrees outboard, the other tip straight across the gap</source>
        <translation type="unfinished">{car}, Spitzen {tips}, Druck {n} Grad nach außen, die andere Spitze gerade jenseits des Spalts</translation>
    </message>
    <message>
        <source>Each place is pushed by itself until something gives, {length} at most, on lattices of {first} and {second}</source>
        <translation type="unfinished">Jede Stelle wird für sich gedrückt, bis etwas nachgibt, höchstens {length}, auf Gittern von {first} und {second}</translation>
    </message>
    <message>
        <source>{edge}, {length} above the sill</source>
        <translation type="unfinished">{edge}, {length} über dem Schweller</translation>
    </message>
    <message>
        <source>{edge}, {length} above the sill, {seat}</source>
        <translation type="unfinished">{edge}, {length} über dem Schweller, {seat}</translation>
    </message>
    <message>
        <source>{edge}, {length} up, {in} in: {word}</source>
        <translation type="unfinished">{edge}, {length} hoch, {in} hinein: {word}</translation>
    </message>
    <message>
        <source>{edge}, {seat} ({length} in): {text}</source>
        <translation type="unfinished">{edge}, {seat} ({length} hinein): {text}</translation>
    </message>
    <message>
        <source>{n} of {n2} places come out otherwise, {n3} the same</source>
        <translation type="unfinished">{n} von {n2} Stellen kommen anders heraus, {n3} gleich</translation>
    </message>
    <message>
        <source>{place}, {length} in: {before} becomes {after}</source>
        <translation type="unfinished">{place}, {length} hinein: aus „{before}“ wird „{after}“</translation>
    </message>
    <message>
        <source>none is settled</source>
        <translation type="unfinished">keine ist gesichert</translation>
    </message>
    <message>
        <source>{n} is not settled</source>
        <translation type="unfinished">{n} ist nicht gesichert</translation>
    </message>
    <message>
        <source>{n} are not settled</source>
        <translation type="unfinished">{n} sind nicht gesichert</translation>
    </message>
    <message>
        <source>Of {n} places along the door's edges none is settled</source>
        <translation type="unfinished">Von {n} Stellen an den Türkanten ist keine gesichert</translation>
    </message>
    <message>
        <source>Of {n} places along the door's edges {text}</source>
        <translation type="unfinished">Von {n} Stellen an den Türkanten: {text}</translation>
    </message>
    <message>
        <source>after {n} earlier move</source>
        <translation type="unfinished">nach {n} früheren Schritt</translation>
    </message>
    <message>
        <source>after {n} earlier moves</source>
        <translation type="unfinished">nach {n} früheren Schritten</translation>
    </message>
    <message>
        <source>after {n} earlier {moves}</source>
        <translation type="unfinished">nach {n} früheren {moves}</translation>
    </message>
    <message>
        <source>on a wrecked car</source>
        <translation type="unfinished">an einem beschädigten Auto</translation>
    </message>
    <message>
        <source>{car} on a wrecked car</source>
        <translation type="unfinished">{car}, an einem beschädigten Auto</translation>
    </message>
    <message>
        <source>{car} after {n} earlier move</source>
        <translation type="unfinished">{car}, nach {n} früheren Schritt</translation>
    </message>
    <message>
        <source>{car} after {n} earlier moves</source>
        <translation type="unfinished">{car}, nach {n} früheren Schritten</translation>
    </message>
    <message>
        <source>{word} at {n}</source>
        <translation type="unfinished">{word} bei {n}</translation>
    </message>
    <message>
        <source>at {length}</source>
        <translation type="unfinished">bei {length}</translation>
    </message>
    <message>
        <source>{edge}, {length} above the sill, {seat}: {what}, at {n} mm</source>
        <translation type="unfinished">{edge}, {length} über dem Schweller, {seat}: {what}, bei {n} mm</translation>
    </message>
    <message>
        <source>{word} all along</source>
        <translation type="unfinished">überall {word}</translation>
    </message>
    <message>
        <source>All {n} places come out the same on both</source>
        <translation type="unfinished">Alle {n} Stellen kommen bei beiden gleich heraus</translation>
    </message>
    <message>
        <source>one of the two is not settled, so nowhere does one outcome become another</source>
        <translation type="unfinished">einer der beiden ist nicht gesichert, darum wird nirgends ein Ergebnis zum anderen</translation>
    </message>
    <message>
        <source>{lead}: at each of them {words}</source>
        <translation type="unfinished">{lead}: an jeder davon {words}</translation>
    </message>
    <message>
        <source>at each of them {words}</source>
        <translation type="unfinished">an jeder davon {words}</translation>
    </message>
    <message>
        <source>{before} becomes {after} at {n}</source>
        <translation type="unfinished">an {n} wird „{before}“ zu „{after}“</translation>
    </message>
    <message>
        <source>{word} from {length} to {far}</source>
        <translation type="unfinished">{word} von {length} bis {far}</translation>
    </message>
    <message>
        <source>{words} becomes {after}</source>
        <translation type="unfinished">{words} wird zu {after}</translation>
    </message>
    <message>
        <source>at {n} one of the two is not settled</source>
        <translation type="unfinished">an {n} ist einer der beiden nicht gesichert</translation>
    </message>
    <message>
        <source>Its run was lost: {text}</source>
        <translation type="unfinished">Die Rechnung ging verloren: {text}</translation>
    </message>
    <message>
        <source>Some steps of its run did not come to rest</source>
        <translation type="unfinished">Einige Schritte ihrer Rechnung kamen nicht zur Ruhe</translation>
    </message>
    <message>
        <source>In the same step there was also: {what}</source>
        <translation type="unfinished">Im selben Schritt war auch: {what}</translation>
    </message>
    <message>
        <source>Nearly as close to happening: {what}</source>
        <translation type="unfinished">Fast so nah: {what}</translation>
    </message>
    <message>
        <source>It has not been run on a second lattice</source>
        <translation type="unfinished">Auf einem zweiten Gitter ist es nicht gerechnet</translation>
    </message>
    <message>
        <source>On the second lattice some steps did not come to rest</source>
        <translation type="unfinished">Auf dem zweiten Gitter kamen einige Schritte nicht zur Ruhe</translation>
    </message>
    <message>
        <source>On the second lattice it comes out otherwise: {what}</source>
        <translation type="unfinished">Auf dem zweiten Gitter kommt es anders heraus: {what}</translation>
    </message>
    <message>
        <source>On the second lattice: {text}</source>
        <translation type="unfinished">Auf dem zweiten Gitter: {text}</translation>
    </message>
    <message>
        <source>No place beside it comes out the same</source>
        <translation type="unfinished">Keine Stelle daneben kommt gleich heraus</translation>
    </message>
    <message>
        <source>of the two plans has doors of another size, so their cells are not the same; use one size</source>
        <translation type="unfinished">der beiden Pläne hat Türen anderer Größe, ihre Felder sind also nicht dieselben; eine Größe verwenden</translation>
    </message>
    <message>
        <source>hold no spread, so there is nothing to map; add one</source>
        <translation type="unfinished">enthalten kein Spreizen, es gibt also nichts zu kartieren; eines anfügen</translation>
    </message>
    <message>
        <source>{n} % of its range</source>
        <translation type="unfinished">{n} % seines Bereichs</translation>
    </message>
    <message>
        <source>{what} at {to} instead of {base} ({share}): then {outcome}</source>
        <translation type="unfinished">{what}: {to} statt {base} ({share}); dann {outcome}</translation>
    </message>
    <message>
        <source>As planned {now}; the nearest flip: {flip}</source>
        <translation type="unfinished">Wie geplant: {now}; der nächste Umschlag: {flip}</translation>
    </message>
    <message>
        <source>As planned {now}</source>
        <translation type="unfinished">Wie geplant: {now}</translation>
    </message>
    <message>
        <source>the nearest flip: {text}</source>
        <translation type="unfinished">der nächste Umschlag: {text}</translation>
    </message>
    <message>
        <source>the outcome is {word}</source>
        <translation type="unfinished">das Ergebnis ist {word}</translation>
    </message>
    <message>
        <source>The plan itself does not settle, so nothing can be said of what flips it</source>
        <translation type="unfinished">Der Plan selbst kommt nicht zur Ruhe, darum lässt sich nicht sagen, was ihn kippt</translation>
    </message>
    <message>
        <source>Not told for {names}: runs on the way did not settle</source>
        <translation type="unfinished">Nicht gesagt für {names}: Rechnungen auf dem Weg kamen nicht zur Ruhe</translation>
    </message>
    <message>
        <source>nothing within its range flips it by itself</source>
        <translation type="unfinished">nichts kippt ihn innerhalb seines Bereichs für sich allein</translation>
    </message>
    <message>
        <source>the search has not come to its end</source>
        <translation type="unfinished">die Suche ist noch nicht am Ende</translation>
    </message>
    <message>
        <source>the plan, and the ends of every range</source>
        <translation type="unfinished">der Plan und die Enden jedes Bereichs</translation>
    </message>
    <message>
        <source>halving the way, {n} of {n2}</source>
        <translation type="unfinished">der Weg wird halbiert, {n} von {n2}</translation>
    </message>
    <message>
        <source>running what flips it again</source>
        <translation type="unfinished">was ihn kippt, wird noch einmal gerechnet</translation>
    </message>
    <message>
        <source>{n} N/mm</source>
        <translation type="unfinished">{n} N/mm</translation>
    </message>
    <message>
        <source>a coarser lattice</source>
        <translation type="unfinished">ein gröberes Gitter</translation>
    </message>
    <message>
        <source>a finer lattice</source>
        <translation type="unfinished">ein feineres Gitter</translation>
    </message>
    <message>
        <source>{n} mm to one side</source>
        <translation type="unfinished">{n} mm zur einen Seite</translation>
    </message>
    <message>
        <source>{n} mm to the other side</source>
        <translation type="unfinished">{n} mm zur anderen Seite</translation>
    </message>
    <message>
        <source>the head {n} mm lower</source>
        <translation type="unfinished">den Kopf {n} mm tiefer</translation>
    </message>
    <message>
        <source>the head {n} mm higher</source>
        <translation type="unfinished">den Kopf {n} mm höher</translation>
    </message>
    <message>
        <source>short of its way</source>
        <translation type="unfinished">vor dem Ende seines Wegs</translation>
    </message>
    <message>
        <source>{name}: has not been solved yet; run it to see what happens</source>
        <translation type="unfinished">{name}: noch nicht gerechnet; ausführen, um zu sehen, was geschieht</translation>
    </message>
    <message>
        <source>{name}: the kept result is of model version {n}, this is {n2}; run it again to see what comes out now</source>
        <translation type="unfinished">{name}: Das aufbewahrte Ergebnis ist von Modellversion {n}, dies ist {n2}; neu ausführen, um zu sehen, was jetzt herauskommt</translation>
    </message>
    <message>
        <source>{name}: the plan is another than the one that was kept; run it again</source>
        <translation type="unfinished">{name}: Der Plan ist ein anderer als der aufbewahrte; neu ausführen</translation>
    </message>
    <message>
        <source>Teaching model - not a real car - local procedure first</source>
        <translation type="unfinished">Lehrmodell - kein echtes Auto - örtliche Vorschrift zuerst (Teaching model - not a real car - local procedure first)</translation>
    </message>
    <message>
        <source>Teaching model – not a real car – local procedure first</source>
        <translation type="unfinished">Lehrmodell – kein echtes Auto – örtliche Vorschrift zuerst (Teaching model – not a real car – local procedure first)</translation>
    </message>
    <message>
        <source>never below {n}</source>
        <translation type="unfinished">nie unter {n}</translation>
    </message>
    <message>
        <source>{n} to {n2} times the plan's</source>
        <translation type="unfinished">das {n}- bis {n2}fache des Plans</translation>
    </message>
    <message>
        <source>{n} to {n2} times the plan's, never below {n3}</source>
        <translation type="unfinished">das {n}- bis {n2}fache des Plans, nie unter {n3}</translation>
    </message>
    <message>
        <source>{low} to {high} times the plan's{floor}</source>
        <translation type="unfinished">das {low}- bis {high}fache des Plans{floor}</translation>
    </message>
    <message>
        <source>the plan's, {reach} to either side</source>
        <translation type="unfinished">wie im Plan, {reach} nach beiden Seiten</translation>
    </message>
    <message>
        <source>the hem lip's share of the load</source>
        <translation type="unfinished">Anteil der Falzkante an der Last</translation>
    </message>
    <message>
        <source>the depth of the tips</source>
        <translation type="unfinished">Tiefe der Spitzen</translation>
    </message>
    <message>
        <source>the place of the tips along the edge</source>
        <translation type="unfinished">Stelle der Spitzen an der Kante</translation>
    </message>
    <message>
        <source>how far the door is pushed in</source>
        <translation type="unfinished">wie weit die Tür eingedrückt ist</translation>
    </message>
    <message>
        <source>how uneven the seam is</source>
        <translation type="unfinished">wie ungleichmäßig die Naht ist</translation>
    </message>
    <message>
        <source>the welds' strength in peel</source>
        <translation type="unfinished">Schälfestigkeit der Schweißpunkte</translation>
    </message>
    <message>
        <source>the welds' energy</source>
        <translation type="unfinished">Energie der Schweißpunkte</translation>
    </message>
    <message>
        <source>the distance of the welds</source>
        <translation type="unfinished">Abstand der Schweißpunkte</translation>
    </message>
    <message>
        <source>the latch's strength</source>
        <translation type="unfinished">Festigkeit des Schlosses</translation>
    </message>
    <message>
        <source>the hinges' strength</source>
        <translation type="unfinished">Festigkeit der Scharniere</translation>
    </message>
    <message>
        <source>assumed: how proud of the shut face the hem stands is not known; from taking all to taking 0.6</source>
        <translation type="unfinished">angenommen: wie weit der Falz über die Stirnfläche vorsteht, ist nicht bekannt; vom ganzen Tragen bis zu 0.6</translation>
    </message>
    <message>
        <source>assumed: a trained hand puts a tip to within 5 mm</source>
        <translation type="unfinished">angenommen: eine geübte Hand setzt eine Spitze auf 5 mm genau</translation>
    </message>
    <message>
        <source>serrated tips on painted steel 0.3 to 0.6, from memory</source>
        <translation type="unfinished">gezahnte Spitzen auf lackiertem Stahl 0.3 bis 0.6, aus dem Gedächtnis</translation>
    </message>
    <message>
        <source>assumed: a bow is judged by eye to within 10 mm</source>
        <translation type="unfinished">angenommen: eine Beule wird mit dem Auge auf 10 mm geschätzt</translation>
    </message>
    <message>
        <source>hem adhesive 2-4 kJ/m2 on 10 mm and unrolling the fold 25-40 J/m, from memory; gaps, thin beads and age widen it (assumed)</source>
        <translation type="unfinished">Falzkleber 2-4 kJ/m2 auf 10 mm und Aufrollen des Falzes 25-40 J/m, aus dem Gedächtnis; Lücken, dünne Raupen und Alter erweitern es (angenommen)</translation>
    </message>
    <message>
        <source>peel demands of 4-8 N/mm and measured 12 N/mm (an adhesive maker's public article)</source>
        <translation type="unfinished">Schälforderungen von 4-8 N/mm und gemessene 12 N/mm (öffentlicher Artikel eines Klebstoffherstellers)</translation>
    </message>
    <message>
        <source>assumed: from an even seam to a careless one; each run has a hem of its own (`sim.seam`)</source>
        <translation type="unfinished">angenommen: von einer gleichmäßigen bis zu einer nachlässigen Naht; jede Rechnung hat ihren eigenen Falz (`sim.seam`)</translation>
    </message>
    <message>
        <source>between the minimum and the typical rows of the spot-weld table (AWS D8.1M, from memory)</source>
        <translation type="unfinished">zwischen den Mindest- und den üblichen Zeilen der Schweißpunkttabelle (AWS D8.1M, aus dem Gedächtnis)</translation>
    </message>
    <message>
        <source>assumed: pull-out over one to four millimetres</source>
        <translation type="unfinished">angenommen: Ausziehen über einen bis vier Millimeter</translation>
    </message>
    <message>
        <source>spots 40-60 mm apart: common practice, no source</source>
        <translation type="unfinished">Punkte im Abstand 40-60 mm: gängige Praxis, keine Quelle</translation>
    </message>
    <message>
        <source>sheet tolerance about 0.05 mm on 0.7 mm (EN 10131, from memory); thinning in the press assumed</source>
        <translation type="unfinished">Blechtoleranz etwa 0.05 mm auf 0.7 mm (EN 10131, aus dem Gedächtnis); Ausdünnen in der Presse angenommen</translation>
    </message>
    <message>
        <source>as the skin; deeper drawn, so thinner (assumed)</source>
        <translation type="unfinished">wie die Außenhaut; tiefer gezogen, also dünner (angenommen)</translation>
    </message>
    <message>
        <source>never below UN R11 / GTR 1; how far above is assumed</source>
        <translation type="unfinished">nie unter UN R11 / GTR 1; wie weit darüber, ist angenommen</translation>
    </message>
    <message>
        <source>never below UN R11 / GTR 1; sets often hold 15-40 kN (an estimate of the trade, assumed)</source>
        <translation type="unfinished">nie unter UN R11 / GTR 1; Sätze halten oft 15-40 kN (eine Schätzung des Fachs, angenommen)</translation>
    </message>
    <message>
        <source>assumed: blades are set and stopped by eye, to within 10 mm</source>
        <translation type="unfinished">angenommen: Klingen werden mit dem Auge angesetzt und angehalten, auf 10 mm</translation>
    </message>
    <message>
        <source>assumed: a trained hand sets the ends of a ram to within 20 mm</source>
        <translation type="unfinished">angenommen: eine geübte Hand setzt die Enden eines Zylinders auf 20 mm genau</translation>
    </message>
    <message>
        <source>grades are named by their least yield stress and come up to a quarter above it, from memory</source>
        <translation type="unfinished">Stahlsorten heißen nach ihrer kleinsten Streckgrenze und liegen bis ein Viertel darüber, aus dem Gedächtnis</translation>
    </message>
    <message>
        <source>the strength of the pillar's spots, by the sheet under them</source>
        <translation type="unfinished">Festigkeit der Säulenpunkte, über das Blech darunter</translation>
    </message>
    <message>
        <source>assumed: spots of one setting hold from three quarters to half as much again, as the least and the typical rows of the spot-weld table differ (AWS D8.1M, from memory)</source>
        <translation type="unfinished">angenommen: Punkte einer Einstellung halten von drei Vierteln bis zum Anderthalbfachen, wie sich Mindest- und übliche Zeilen der Schweißpunkttabelle unterscheiden (AWS D8.1M, aus dem Gedächtnis)</translation>
    </message>
    <message>
        <source>the thickness of the pillar's pressed part</source>
        <translation type="unfinished">Dicke des gepressten Teils der Säule</translation>
    </message>
    <message>
        <source>sheet tolerance about 0.07 mm on 1.5 mm (EN 10131, from memory); thinning in the press assumed</source>
        <translation type="unfinished">Blechtoleranz etwa 0.07 mm auf 1.5 mm (EN 10131, aus dem Gedächtnis); Ausdünnen in der Presse angenommen</translation>
    </message>
    <message>
        <source>the thickness of the pillar's inner wall</source>
        <translation type="unfinished">Dicke der inneren Säulenwand</translation>
    </message>
    <message>
        <source>as its pressed part, drawn less (assumed)</source>
        <translation type="unfinished">wie ihr gepresstes Teil, weniger gezogen (angenommen)</translation>
    </message>
    <message>
        <source>the yield stress of the pillar's pressed part</source>
        <translation type="unfinished">Streckgrenze des gepressten Teils der Säule</translation>
    </message>
    <message>
        <source>the yield stress of the pillar's softer foot</source>
        <translation type="unfinished">Streckgrenze des weicheren Säulenfußes</translation>
    </message>
    <message>
        <source>the roof rail's thickness</source>
        <translation type="unfinished">Dicke des Dachholms</translation>
    </message>
    <message>
        <source>as the pillar's pressed part (EN 10131, from memory; thinning assumed)</source>
        <translation type="unfinished">wie das gepresste Teil der Säule (EN 10131, aus dem Gedächtnis; Ausdünnen angenommen)</translation>
    </message>
    <message>
        <source>the friction of the ram's head and foot</source>
        <translation type="unfinished">Reibung von Kopf und Fuß des Zylinders</translation>
    </message>
    <message>
        <source>friction of heads on dirty painted metal is not known; twice between the extremes, assumed</source>
        <translation type="unfinished">Reibung der Köpfe auf schmutzigem lackiertem Metall ist nicht bekannt; das Doppelte zwischen den Enden, angenommen</translation>
    </message>
    <message>
        <source>how high the ram's head stands</source>
        <translation type="unfinished">wie hoch der Kopf des Zylinders steht</translation>
    </message>
    <message>
        <source>how far off the pillar's middle the ram's head stands</source>
        <translation type="unfinished">wie weit neben der Säulenmitte der Kopf des Zylinders steht</translation>
    </message>
    <message>
        <source>{text}, and never over the edge of the wall</source>
        <translation type="unfinished">{text}, und nie über den Rand der Wand</translation>
    </message>
    <message>
        <source>how far from the hinge edge the ram's head stands</source>
        <translation type="unfinished">wie weit von der Scharnierkante der Kopf des Zylinders steht</translation>
    </message>
    <message>
        <source>how far rearward the ram's foot stands</source>
        <translation type="unfinished">wie weit hinten der Fuß des Zylinders steht</translation>
    </message>
    <message>
        <source>the wall under the ram's foot</source>
        <translation type="unfinished">Wand unter dem Fuß des Zylinders</translation>
    </message>
    <message>
        <source>rocker walls of 1.0 to 2.0 mm, from memory</source>
        <translation type="unfinished">Schwellerwände von 1.0 bis 2.0 mm, aus dem Gedächtnis</translation>
    </message>
    <message>
        <source>how high the pillar is cut</source>
        <translation type="unfinished">wie hoch die Säule geschnitten wird</translation>
    </message>
    <message>
        <source>how far the cut stops short</source>
        <translation type="unfinished">wie weit der Schnitt davor anhält</translation>
    </message>
    <message>
        <source>how deep the cut goes</source>
        <translation type="unfinished">wie tief der Schnitt geht</translation>
    </message>
    <message>
        <source>where the door is cut</source>
        <translation type="unfinished">wo die Tür geschnitten wird</translation>
    </message>
    <message>
        <source>the place of the entry bar's tip</source>
        <translation type="unfinished">Stelle der Brechstangenspitze</translation>
    </message>
    <message>
        <source>assumed: a trained hand puts the bar to within 20 mm</source>
        <translation type="unfinished">angenommen: eine geübte Hand setzt die Brechstange auf 20 mm genau</translation>
    </message>
    <message>
        <source>the pull of the hand on the entry bar</source>
        <translation type="unfinished">Zug der Hand an der Brechstange</translation>
    </message>
    <message>
        <source>a hand on a bar pulls with 400 to 700 N: an estimate of the trade, no source</source>
        <translation type="unfinished">eine Hand an einer Brechstange zieht mit 400 bis 700 N: eine Schätzung des Fachs, keine Quelle</translation>
    </message>
    <message>
        <source>how far from the hinge edge the door is squeezed</source>
        <translation type="unfinished">wie weit von der Scharnierkante die Tür gequetscht wird</translation>
    </message>
    <message>
        <source>how high the door is squeezed</source>
        <translation type="unfinished">wie hoch die Tür gequetscht wird</translation>
    </message>
    <message>
        <source>how far the tips go in between the raw ends</source>
        <translation type="unfinished">wie weit die Spitzen zwischen die rohen Enden gehen</translation>
    </message>
    <message>
        <source>how far off the middle the tips go in between the raw ends</source>
        <translation type="unfinished">wie weit neben der Mitte die Spitzen zwischen die rohen Enden gehen</translation>
    </message>
    <message>
        <source>assumed: between raw ends, which are seen from one side, a tip is put to within 10 mm</source>
        <translation type="unfinished">angenommen: zwischen rohen Enden, die man von einer Seite sieht, wird eine Spitze auf 10 mm genau gesetzt</translation>
    </message>
    <message>
        <source>the friction of the tips on a raw edge</source>
        <translation type="unfinished">Reibung der Spitzen an einer rohen Kante</translation>
    </message>
    <message>
        <source>as on painted steel, serrated tips 0.3 to 0.6, from memory; a raw edge bites more (assumed not to)</source>
        <translation type="unfinished">wie auf lackiertem Stahl, gezahnte Spitzen 0.3 bis 0.6, aus dem Gedächtnis; eine rohe Kante greift stärker (hier nicht angenommen)</translation>
    </message>
    <message>
        <source>wreck's move</source>
        <translation type="unfinished">Schritt des Unfalls</translation>
    </message>
    <message>
        <source>{words}: {first} against {second} ({path})</source>
        <translation type="unfinished">{words}: {first} gegen {second} ({path})</translation>
    </message>
    <message>
        <source>skin's thickness</source>
        <translation type="unfinished">Dicke der Außenhaut</translation>
    </message>
    <message>
        <source>inner panel's thickness</source>
        <translation type="unfinished">Dicke des Innenblechs</translation>
    </message>
    <message>
        <source>energy to part a metre of seam</source>
        <translation type="unfinished">Energie, einen Meter Naht zu öffnen</translation>
    </message>
    <message>
        <source>strength of a metre of seam</source>
        <translation type="unfinished">Festigkeit eines Meters Naht</translation>
    </message>
    <message>
        <source>gaps in the bead</source>
        <translation type="unfinished">Lücken in der Raupe</translation>
    </message>
    <message>
        <source>length over which the seam changes</source>
        <translation type="unfinished">Länge, über die sich die Naht ändert</translation>
    </message>
    <message>
        <source>seed of the uneven seam</source>
        <translation type="unfinished">Zufallszahl der ungleichmäßigen Naht</translation>
    </message>
    <message>
        <source>distance between spots</source>
        <translation type="unfinished">Abstand der Punkte</translation>
    </message>
    <message>
        <source>peel strength of a spot</source>
        <translation type="unfinished">Schälfestigkeit eines Punkts</translation>
    </message>
    <message>
        <source>shear strength of a spot</source>
        <translation type="unfinished">Scherfestigkeit eines Punkts</translation>
    </message>
    <message>
        <source>energy to pull out a spot</source>
        <translation type="unfinished">Energie, einen Punkt auszuziehen</translation>
    </message>
    <message>
        <source>force that wedges the striker</source>
        <translation type="unfinished">Kraft, die den Schließkeil verklemmt</translation>
    </message>
    <message>
        <source>pull on the handle</source>
        <translation type="unfinished">Zug am Griff</translation>
    </message>
    <message>
        <source>latch's strength over the rule's</source>
        <translation type="unfinished">Schlossfestigkeit über der Vorschrift</translation>
    </message>
    <message>
        <source>hinges' strength over the rule's</source>
        <translation type="unfinished">Scharnierfestigkeit über der Vorschrift</translation>
    </message>
    <message>
        <source>way latch and hinges bend before they let go</source>
        <translation type="unfinished">Weg, den Schloss und Scharniere nachgeben, bevor sie freigeben</translation>
    </message>
    <message>
        <source>strength of the bar's feet</source>
        <translation type="unfinished">Festigkeit der Trägerfüße</translation>
    </message>
    <message>
        <source>roof rail's wall</source>
        <translation type="unfinished">Wand des Dachholms</translation>
    </message>
    <message>
        <source>roof rail's yield stress</source>
        <translation type="unfinished">Streckgrenze des Dachholms</translation>
    </message>
    <message>
        <source>roof rail held at</source>
        <translation type="unfinished">Dachholm gehalten an</translation>
    </message>
    <message>
        <source>width of the hem</source>
        <translation type="unfinished">Breite des Falzes</translation>
    </message>
    <message>
        <source>depth of the shut face</source>
        <translation type="unfinished">Tiefe der Stirnfläche</translation>
    </message>
    <message>
        <source>size of the lattice</source>
        <translation type="unfinished">Größe des Gitters</translation>
    </message>
    <message>
        <source>side of the car</source>
        <translation type="unfinished">Seite des Autos</translation>
    </message>
    <message>
        <source>tip on the door</source>
        <translation type="unfinished">Spitze an der Tür</translation>
    </message>
    <message>
        <source>other tip</source>
        <translation type="unfinished">andere Spitze</translation>
    </message>
    <message>
        <source>place along it</source>
        <translation type="unfinished">Stelle daran</translation>
    </message>
    <message>
        <source>depth from the lip</source>
        <translation type="unfinished">Tiefe von der Falzkante</translation>
    </message>
    <message>
        <source>height above the sill</source>
        <translation type="unfinished">Höhe über dem Schweller</translation>
    </message>
    <message>
        <source>lip of the belt</source>
        <translation type="unfinished">Lippe der Brüstung</translation>
    </message>
    <message>
        <source>what it stands on</source>
        <translation type="unfinished">worauf sie steht</translation>
    </message>
    <message>
        <source>direction of the push</source>
        <translation type="unfinished">Richtung des Drucks</translation>
    </message>
    <message>
        <source>rigid body's shape</source>
        <translation type="unfinished">Form des starren Körpers</translation>
    </message>
    <message>
        <source>rigid body's width</source>
        <translation type="unfinished">Breite des starren Körpers</translation>
    </message>
    <message>
        <source>rigid body's height</source>
        <translation type="unfinished">Höhe des starren Körpers</translation>
    </message>
    <message>
        <source>rigid body's line</source>
        <translation type="unfinished">Linie des starren Körpers</translation>
    </message>
    <message>
        <source>how far it is pressed in</source>
        <translation type="unfinished">wie weit er eingedrückt wird</translation>
    </message>
    <message>
        <source>width of the tips</source>
        <translation type="unfinished">Breite der Spitzen</translation>
    </message>
    <message>
        <source>length of the pads</source>
        <translation type="unfinished">Länge der Auflagen</translation>
    </message>
    <message>
        <source>length of the arms</source>
        <translation type="unfinished">Länge der Arme</translation>
    </message>
    <message>
        <source>moment the crew hold the tool with</source>
        <translation type="unfinished">Moment, mit dem die Mannschaft das Gerät hält</translation>
    </message>
    <message>
        <source>lean of the pad</source>
        <translation type="unfinished">Schräge der Auflage</translation>
    </message>
    <message>
        <source>tool's body</source>
        <translation type="unfinished">Körper des Geräts</translation>
    </message>
    <message>
        <source>surface under the tip</source>
        <translation type="unfinished">Oberfläche unter der Spitze</translation>
    </message>
    <message>
        <source>stops at</source>
        <translation type="unfinished">hält bei</translation>
    </message>
    <message>
        <source>how it was wrecked</source>
        <translation type="unfinished">wie es beschädigt wurde</translation>
    </message>
    <message>
        <source>how much of the car</source>
        <translation type="unfinished">wie viel vom Auto</translation>
    </message>
    <message>
        <source>saved start</source>
        <translation type="unfinished">gespeicherter Anfang</translation>
    </message>
    <message>
        <source>version of the file's form</source>
        <translation type="unfinished">Version der Dateiform</translation>
    </message>
    <message>
        <source>ready build</source>
        <translation type="unfinished">fertige Bauweise</translation>
    </message>
    <message>
        <source>is {value} already; a twin differs in one thing</source>
        <translation type="unfinished">ist schon {value}; ein Zwilling unterscheidet sich in einem</translation>
    </message>
    <message>
        <source>{n} thing differs</source>
        <translation type="unfinished">{n} Ding ist anders</translation>
    </message>
    <message>
        <source>{many}, first against second</source>
        <translation type="unfinished">{many}, erster gegen zweiten</translation>
    </message>
    <message>
        <source>The metal feels no difference</source>
        <translation type="unfinished">Das Metall merkt keinen Unterschied</translation>
    </message>
    <message>
        <source>In words alone</source>
        <translation type="unfinished">Nur in Worten</translation>
    </message>
    <message>
        <source>is not a field of this plan; check its spelling</source>
        <translation type="unfinished">ist kein Feld dieses Plans; Schreibweise prüfen</translation>
    </message>
    <message>
        <source>cannot be {value}: {error}</source>
        <translation type="unfinished">kann nicht {value} sein: {error}</translation>
    </message>
    <message>
        <source>first plan</source>
        <translation type="unfinished">erster Plan</translation>
    </message>
    <message>
        <source>second plan</source>
        <translation type="unfinished">zweiter Plan</translation>
    </message>
    <message>
        <source>the car of a plan that names none</source>
        <translation type="unfinished">das Auto eines Plans, der keines nennt</translation>
    </message>
    <message>
        <source>pillar, pressed part</source>
        <translation type="unfinished">Säule, gepresstes Teil</translation>
    </message>
    <message>
        <source>pillar, closing part</source>
        <translation type="unfinished">Säule, Schließteil</translation>
    </message>
    <message>
        <source>pillar, soft foot</source>
        <translation type="unfinished">Säule, weicher Fuß</translation>
    </message>
    <message>
        <source>pillar, striker and hinge patches</source>
        <translation type="unfinished">Säule, Verstärkungen für Schließkeil und Scharniere</translation>
    </message>
    <message>
        <source>weak feet</source>
        <translation type="unfinished">schwache Füße</translation>
    </message>
    <message>
        <source>mean over {length}</source>
        <translation type="unfinished">Mittel über {length}</translation>
    </message>
    <message>
        <source>greatest within {length}</source>
        <translation type="unfinished">größte innerhalb {length}</translation>
    </message>
    <message>
        <source>door test, {build}: {word}</source>
        <translation type="unfinished">Türprüfung, {build}: {word}</translation>
    </message>
    <message>
        <source>Door test, {build}</source>
        <translation type="unfinished">Türprüfung, {build}</translation>
    </message>
    <message>
        <source>is {value}; use {low} to {high} ({remedy})</source>
        <translation type="unfinished">ist {value}; {low} bis {high} verwenden ({remedy})</translation>
    </message>
    <message>
        <source>is {value} m; use {low} to {high} m: {remedy}</source>
        <translation type="unfinished">ist {value} m; {low} bis {high} m verwenden: {remedy}</translation>
    </message>
    <message>
        <source>is {value} m; use {low} to {high} m</source>
        <translation type="unfinished">ist {value} m; {low} bis {high} m verwenden</translation>
    </message>
    <message>
        <source>is {value}; use {low} to {high} m</source>
        <translation type="unfinished">ist {value}; {low} bis {high} m verwenden</translation>
    </message>
    <message>
        <source>is {value}; use {low} to {high}</source>
        <translation type="unfinished">ist {value}; {low} bis {high} verwenden</translation>
    </message>
    <message>
        <source>is {value}; use above 0 to {high} m</source>
        <translation type="unfinished">ist {value}; über 0 bis {high} m verwenden</translation>
    </message>
    <message>
        <source>is {value} m; use above 0 to {high} m</source>
        <translation type="unfinished">ist {value} m; über 0 bis {high} m verwenden</translation>
    </message>
    <message>
        <source>is {value}; use above 0 to {high}</source>
        <translation type="unfinished">ist {value}; über 0 bis {high} verwenden</translation>
    </message>
    <message>
        <source>is {value}; use one of: {words}</source>
        <translation type="unfinished">ist {value}; eines davon verwenden: {words}</translation>
    </message>
    <message>
        <source>a pole is about 0.25 m across, another car's front 0.3 to 1.5 m</source>
        <translation type="unfinished">ein Pfahl ist etwa 0.25 m dick, die Front eines anderen Autos 0.3 bis 1.5 m</translation>
    </message>
    <message>
        <source>from its lower to its upper end</source>
        <translation type="unfinished">vom unteren zum oberen Ende</translation>
    </message>
    <message>
        <source>height of its lower end above the door's lowest point</source>
        <translation type="unfinished">Höhe des unteren Endes über dem tiefsten Punkt der Tür</translation>
    </message>
    <message>
        <source>the door runs from about 0 to 1 m behind its hinge edge</source>
        <translation type="unfinished">die Tür reicht von etwa 0 bis 1 m hinter ihrer Scharnierkante</translation>
    </message>
    <message>
        <source>0 is straight inboard</source>
        <translation type="unfinished">0 ist gerade nach innen</translation>
    </message>
    <message>
        <source>about 0.46 m in the quasi-static door test</source>
        <translation type="unfinished">etwa 0.46 m in der quasistatischen Türprüfung</translation>
    </message>
    <message>
        <source>is {value} m, less than the pole is thick; use {least} or more</source>
        <translation type="unfinished">ist {value} m, weniger als der Pfahl dick ist; {least} oder mehr verwenden</translation>
    </message>
    <message>
        <source>sets the body so that it misses the door; move it along or up or down</source>
        <translation type="unfinished">setzt den Körper so, dass er die Tür verfehlt; entlang, hinauf oder hinunter rücken</translation>
    </message>
    <message>
        <source>lets the body reach the {part}, which cannot yield in this model; make it smaller, or move it along, up or down, so that it meets the door alone</source>
        <translation type="unfinished">lässt den Körper dies erreichen: {part}; das kann in diesem Modell nicht nachgeben; kleiner machen oder entlang, hinauf oder hinunter rücken, bis er nur die Tür trifft</translation>
    </message>
    <message>
        <source>is the {place}, which cannot be seen from outside with room for blades that open {length} m; open the gap to it first, or cut elsewhere</source>
        <translation type="unfinished">ist: {place}; von außen nicht zu sehen mit Platz für Klingen, die {length} m öffnen; erst den Spalt dorthin öffnen oder anderswo schneiden</translation>
    </message>
    <message>
        <source>has nothing to strip on a single door; set car.extent to 'side', or leave it out</source>
        <translation type="unfinished">hat an einer einzelnen Tür nichts abzunehmen; car.extent auf 'side' setzen oder weglassen</translation>
    </message>
    <message>
        <source>is the {place}, which no longer holds; leave the cut out</source>
        <translation type="unfinished">ist: {place}; das hält nicht mehr; den Schnitt weglassen</translation>
    </message>
    <message>
        <source>0 is square across the section</source>
        <translation type="unfinished">0 ist gerade quer zum Profil</translation>
    </message>
    <message>
        <source>say how far in the blades go</source>
        <translation type="unfinished">sagen, wie weit die Klingen hineingehen</translation>
    </message>
    <message>
        <source>say how far short of the far face they stop, or 0</source>
        <translation type="unfinished">sagen, wie weit vor der fernen Fläche sie anhalten, oder 0</translation>
    </message>
    <message>
        <source>cutters open 0.14 to 0.21 m</source>
        <translation type="unfinished">Scheren öffnen 0.14 bis 0.21 m</translation>
    </message>
    <message>
        <source>cutters give 400 to 1200 kN</source>
        <translation type="unfinished">Scheren geben 400 bis 1200 kN</translation>
    </message>
    <message>
        <source>keep on the door</source>
        <translation type="unfinished">auf der Tür bleiben</translation>
    </message>
    <message>
        <source>keep between the pillar's foot and head</source>
        <translation type="unfinished">zwischen Fuß und Kopf der Säule bleiben</translation>
    </message>
    <message>
        <source>is for the pillar, whose far face it is measured from; set it to 0, use depth_m</source>
        <translation type="unfinished">gilt für die Säule, von deren ferner Fläche es gemessen wird; auf 0 setzen, depth_m verwenden</translation>
    </message>
    <message>
        <source>needs the whole side; set car.extent to 'side', or cut the front door</source>
        <translation type="unfinished">braucht die ganze Seite; car.extent auf 'side' setzen oder die vordere Tür schneiden</translation>
    </message>
    <message>
        <source>is '{part}', which holds nothing on this car; leave the cut out</source>
        <translation type="unfinished">ist „{part}“, das an diesem Auto nichts hält; den Schnitt weglassen</translation>
    </message>
    <message>
        <source>parts nothing: it is less than half an edge of the lattice; go deeper</source>
        <translation type="unfinished">trennt nichts: es ist weniger als eine halbe Kante des Gitters; tiefer gehen</translation>
    </message>
    <message>
        <source>{n} to {n2} m is usual</source>
        <translation type="unfinished">{n} bis {n2} m ist üblich</translation>
    </message>
    <message>
        <source>{n} to {n2} mm is usual</source>
        <translation type="unfinished">{n} bis {n2} mm ist üblich</translation>
    </message>
    <message>
        <source>{n} to {n2} kg is usual</source>
        <translation type="unfinished">{n} bis {n2} kg ist üblich</translation>
    </message>
    <message>
        <source>{n} to {n2} N/m is usual</source>
        <translation type="unfinished">{n} bis {n2} N/m ist üblich</translation>
    </message>
    <message>
        <source>{n} is usual</source>
        <translation type="unfinished">{n} ist üblich</translation>
    </message>
    <message>
        <source>350e6 is usual</source>
        <translation type="unfinished">350e6 ist üblich</translation>
    </message>
    <message>
        <source>350e6 is mild, 1.0e9 press-hardened</source>
        <translation type="unfinished">350e6 ist weich, 1.0e9 pressgehärtet</translation>
    </message>
    <message>
        <source>350e6 is usual, 180e6 mild, 1.0e9 press-hardened</source>
        <translation type="unfinished">350e6 ist üblich, 180e6 weich, 1.0e9 pressgehärtet</translation>
    </message>
    <message>
        <source>400 to 700 N is a hard pull</source>
        <translation type="unfinished">400 bis 700 N ist ein kräftiger Zug</translation>
    </message>
    <message>
        <source>is {value} m, more than half the bar; set the heel nearer the tip</source>
        <translation type="unfinished">ist {value} m, mehr als die halbe Stange; die Ferse näher zur Spitze setzen</translation>
    </message>
    <message>
        <source>is {value} m; with its heel {heel} m from the tip the bar goes up to {reach} m; move the heel back for more way and less force</source>
        <translation type="unfinished">ist {value} m; mit der Ferse {heel} m von der Spitze geht die Stange bis {reach} m; die Ferse zurücksetzen für mehr Weg und weniger Kraft</translation>
    </message>
    <message>
        <source>is {n}; use -90 (inboard) to 90 (outboard)</source>
        <translation type="unfinished">ist {n}; -90 (nach innen) bis 90 (nach außen) verwenden</translation>
    </message>
    <message>
        <source>is {n} m; the window frame is {n2} m long, use less</source>
        <translation type="unfinished">ist {n} m; der Fensterrahmen ist {n2} m lang, weniger verwenden</translation>
    </message>
    <message>
        <source>is empty; name trim, seals or glass</source>
        <translation type="unfinished">ist leer; trim, seals oder glass nennen</translation>
    </message>
    <message>
        <source>names {word}, which cannot be stripped; use some of: {words}</source>
        <translation type="unfinished">nennt {word}, das sich nicht abnehmen lässt; davon verwenden: {words}</translation>
    </message>
    <message>
        <source>a door opens by about 65 degrees</source>
        <translation type="unfinished">eine Tür öffnet etwa 65 Grad</translation>
    </message>
    <message>
        <source>one person pushes with 200 to 400 N</source>
        <translation type="unfinished">eine Person drückt mit 200 bis 400 N</translation>
    </message>
    <message>
        <source>0 is just under it</source>
        <translation type="unfinished">0 ist gerade darunter</translation>
    </message>
    <message>
        <source>is 'rear', but the car is one door; use door = 'front', or extent = 'side'</source>
        <translation type="unfinished">ist 'rear', aber das Auto ist eine Tür; door = 'front' oder extent = 'side' verwenden</translation>
    </message>
    <message>
        <source>has nothing to do: this car does not stand on its wheels; leave the support out</source>
        <translation type="unfinished">hat nichts zu tun: dieses Auto steht nicht auf seinen Rädern; die Stütze weglassen</translation>
    </message>
    <message>
        <source>has no weight and no ground, so there is nothing to hold; use extent = 'side'</source>
        <translation type="unfinished">hat kein Gewicht und keinen Boden, es gibt also nichts zu halten; extent = 'side' verwenden</translation>
    </message>
    <message>
        <source>is 'ground', which only a whole side on its wheels has; use extent = 'side'</source>
        <translation type="unfinished">ist 'ground', den nur eine ganze Seite auf ihren Rädern hat; extent = 'side' verwenden</translation>
    </message>
    <message>
        <source>is 'ground', which lies under the sill; use edge = 'sill_edge'</source>
        <translation type="unfinished">ist 'ground', der unter dem Schweller liegt; edge = 'sill_edge' verwenden</translation>
    </message>
    <message>
        <source>is {n} m; the door is {n2} m long: stay under it</source>
        <translation type="unfinished">ist {n} m; die Tür ist {n2} m lang: darunter bleiben</translation>
    </message>
    <message>
        <source>the other tip is in the air</source>
        <translation type="unfinished">die andere Spitze ist in der Luft</translation>
    </message>
    <message>
        <source>the noses go in 30 to 80 mm</source>
        <translation type="unfinished">die Nasen gehen 30 bis 80 mm hinein</translation>
    </message>
    <message>
        <source>0 is the middle</source>
        <translation type="unfinished">0 ist die Mitte</translation>
    </message>
    <message>
        <source>is {n} m; between ends {n2} m apart the tool has {n3} m left</source>
        <translation type="unfinished">ist {n} m; zwischen Enden, die {n2} m auseinander stehen, bleiben dem Gerät {n3} m</translation>
    </message>
    <message>
        <source>is 'outer'; a ram inside the car stands on the 'inner' face</source>
        <translation type="unfinished">ist 'outer'; ein Zylinder im Auto steht auf der Fläche 'inner'</translation>
    </message>
    <message>
        <source>puts the ram through the person's {part}; set head or foot elsewhere</source>
        <translation type="unfinished">führt den Zylinder durch den Menschen ({part}); Kopf oder Fuß anderswo ansetzen</translation>
    </message>
    <message>
        <source>is {n}; use 0.2 (ice) to 3 (bites), 1 is usual</source>
        <translation type="unfinished">ist {n}; 0.2 (Eis) bis 3 (greift) verwenden, 1 ist üblich</translation>
    </message>
    <message>
        <source>makes the ram {n} m long when shut and its ends stand {n2} m apart; use a shorter ram or piece, or move an end</source>
        <translation type="unfinished">macht den Zylinder geschlossen {n} m lang, und seine Enden stehen {n2} m auseinander; kürzeren Zylinder oder kürzeres Zwischenstück verwenden oder ein Ende versetzen</translation>
    </message>
    <message>
        <source>leaves the ram {n} m short of its ends, {n2} m apart; use a longer piece or move an end</source>
        <translation type="unfinished">lässt dem Zylinder {n} m bis zu seinen Enden fehlen, {n2} m auseinander; längeres Zwischenstück verwenden oder ein Ende versetzen</translation>
    </message>
    <message>
        <source>needs as many forces as tool.opening_m has openings, at least two</source>
        <translation type="unfinished">braucht so viele Kräfte, wie tool.opening_m Öffnungen hat, mindestens zwei</translation>
    </message>
    <message>
        <source>must rise from one entry to the next</source>
        <translation type="unfinished">muss von einem Eintrag zum nächsten steigen</translation>
    </message>
    <message>
        <source>must be above zero everywhere</source>
        <translation type="unfinished">muss überall über null sein</translation>
    </message>
    <message>
        <source>is {n} m; use more than {n2} m, half the widest opening</source>
        <translation type="unfinished">ist {n} m; mehr als {n2} m verwenden, die Hälfte der weitesten Öffnung</translation>
    </message>
    <message>
        <source>is {n}; use 0 (slides freely) to 10 (bites), 0.3 to 0.6 for serrated tips</source>
        <translation type="unfinished">ist {n}; 0 (gleitet frei) bis 10 (greift) verwenden, 0.3 bis 0.6 für gezahnte Spitzen</translation>
    </message>
    <message>
        <source>is {n} N m; use 0 (goes as it will) to 1e5 (cannot turn)</source>
        <translation type="unfinished">ist {n} N m; 0 (geht, wie es will) bis 1e5 (kann nicht drehen) verwenden</translation>
    </message>
    <message>
        <source>begins at {n} m; use 0, tips that touch, or more</source>
        <translation type="unfinished">beginnt bei {n} m; 0 (Spitzen geschlossen) oder mehr verwenden</translation>
    </message>
    <message>
        <source>is {n}; use -28 (outboard end first) to 28 degrees (inboard end first)</source>
        <translation type="unfinished">ist {n}; -28 (äußeres Ende zuerst) bis 28 Grad (inneres Ende zuerst) verwenden</translation>
    </message>
    <message>
        <source>is on the same point as the tip on the door; move one of the two</source>
        <translation type="unfinished">ist am selben Punkt wie die Spitze an der Tür; eine der beiden versetzen</translation>
    </message>
    <message>
        <source>is {n} m from the tip on the door, so the pads lie on one another; set them {n2} m apart or more</source>
        <translation type="unfinished">ist {n} m von der Spitze an der Tür, die Auflagen liegen also aufeinander; {n2} m oder mehr auseinander setzen</translation>
    </message>
    <message>
        <source>is {n} m from the tip on the door, wider than the tool opens; move it nearer</source>
        <translation type="unfinished">ist {n} m von der Spitze an der Tür, weiter als das Gerät öffnet; näher setzen</translation>
    </message>
    <message>
        <source>is {n} m; with its tips {n2} m apart the tool has 0 to {n3} m left</source>
        <translation type="unfinished">ist {n} m; mit den Spitzen {n2} m auseinander bleiben dem Gerät 0 bis {n3} m</translation>
    </message>
    <message>
        <source>a head's size, or a plate of 0.1 to 0.3 m that spreads the load</source>
        <translation type="unfinished">so groß wie ein Kopf, oder eine Platte von 0.1 bis 0.3 m, die die Last verteilt</translation>
    </message>
    <message>
        <source>{n} to {n2} mm, assumed</source>
        <translation type="unfinished">{n} bis {n2} mm, angenommen</translation>
    </message>
    <message>
        <source>0 is none</source>
        <translation type="unfinished">0 ist keine</translation>
    </message>
    <message>
        <source>0 is straight across from the head</source>
        <translation type="unfinished">0 ist gerade gegenüber vom Kopf</translation>
    </message>
    <message>
        <source>0 is its usual height</source>
        <translation type="unfinished">0 ist seine übliche Höhe</translation>
    </message>
    <message>
        <source>0 is its usual place</source>
        <translation type="unfinished">0 ist seine übliche Stelle</translation>
    </message>
    <message>
        <source>0 is none, 1.0 to 1.5 mm usual</source>
        <translation type="unfinished">0 ist keine, 1.0 bis 1.5 mm üblich</translation>
    </message>
    <message>
        <source>from the pillar's foot to its head</source>
        <translation type="unfinished">vom Fuß der Säule bis zu ihrem Kopf</translation>
    </message>
    <message>
        <source>0 is the wall's middle</source>
        <translation type="unfinished">0 ist die Mitte der Wand</translation>
    </message>
    <message>
        <source>needs as many forces as ram.stage_m has strokes, at least one</source>
        <translation type="unfinished">braucht so viele Kräfte, wie ram.stage_m Hübe hat, mindestens eine</translation>
    </message>
    <message>
        <source>is {value}; use 0.01 to 1 m for each stage</source>
        <translation type="unfinished">ist {value}; 0.01 bis 1 m für jede Stufe verwenden</translation>
    </message>
    <message>
        <source>is {value}; use 1e3 to 1e6 N for each stage</source>
        <translation type="unfinished">ist {value}; 1e3 bis 1e6 N für jede Stufe verwenden</translation>
    </message>
    <message>
        <source>is {n} m: the pillar is {n2} m high; use less</source>
        <translation type="unfinished">ist {n} m: die Säule ist {n2} m hoch; weniger verwenden</translation>
    </message>
    <message>
        <source>is {n} m: the wall is {n2} m wide there; use half of that at most</source>
        <translation type="unfinished">ist {n} m: die Wand ist dort {n2} m breit; höchstens die Hälfte davon verwenden</translation>
    </message>
    <message>
        <source>lies {n} mm off the {part}: it is in the air</source>
        <translation type="unfinished">liegt {n} mm neben {part:dative}: es ist in der Luft</translation>
    </message>
    <message>
        <source>{path} cannot be written ({why}); choose another folder or free some space</source>
        <translation type="unfinished">{path} kann nicht geschrieben werden ({why}); anderen Ordner wählen oder Platz schaffen</translation>
    </message>
    <message>
        <source>cannot be written ({why}); choose another folder or free some space</source>
        <translation type="unfinished">kann nicht geschrieben werden ({why}); anderen Ordner wählen oder Platz schaffen</translation>
    </message>
    <message>
        <source>cannot be written ({why}); choose another folder</source>
        <translation type="unfinished">kann nicht geschrieben werden ({why}); anderen Ordner wählen</translation>
    </message>
    <message>
        <source>cannot be written ({why}); choose another</source>
        <translation type="unfinished">kann nicht geschrieben werden ({why}); einen anderen wählen</translation>
    </message>
    <message>
        <source>is {value}; use {low} to {high} kg (1200 to 1800 is usual)</source>
        <translation type="unfinished">ist {value}; {low} bis {high} kg verwenden (1200 bis 1800 ist üblich)</translation>
    </message>
    <message>
        <source>is no spread; name the index of one</source>
        <translation type="unfinished">ist kein Spreizen; die Nummer eines Spreizens nennen</translation>
    </message>
    <message>
        <source>is {n} m: the tip is in the air outside the lip; use 0 or more</source>
        <translation type="unfinished">ist {n} m: die Spitze ist außerhalb der Falzkante in der Luft; 0 oder mehr verwenden</translation>
    </message>
    <message>
        <source>{a}, {b} m lie off the panel: the tip is in the air</source>
        <translation type="unfinished">{a}, {b} m liegen neben dem Blech: die Spitze ist in der Luft</translation>
    </message>
    <message>
        <source>{text}; the tip is in the air there</source>
        <translation type="unfinished">{text}; die Spitze ist dort in der Luft</translation>
    </message>
    <message>
        <source>is {n} m: the belt runs from {n2} to {n3} m, the tip is in the air</source>
        <translation type="unfinished">ist {n} m: die Brüstung reicht von {n2} bis {n3} m, die Spitze ist in der Luft</translation>
    </message>
    <message>
        <source>is {name}, which is not a ready build; use one of: {words}</source>
        <translation type="unfinished">ist {name}, das keine fertige Bauweise ist; eine davon verwenden: {words}</translation>
    </message>
    <message>
        <source>is {name}, which is not a ready build; use one of: {text}</source>
        <translation type="unfinished">ist {name}, das keine fertige Bauweise ist; eine davon verwenden: {text}</translation>
    </message>
    <message>
        <source>door skins are about 0.0006 to 0.0012 m</source>
        <translation type="unfinished">Türhäute haben etwa 0.0006 bis 0.0012 m</translation>
    </message>
    <message>
        <source>inner panels are about 0.0006 to 0.0015 m</source>
        <translation type="unfinished">Innenbleche haben etwa 0.0006 bis 0.0015 m</translation>
    </message>
    <message>
        <source>hems are about 0.008 to 0.012 m wide</source>
        <translation type="unfinished">Falze sind etwa 0.008 bis 0.012 m breit</translation>
    </message>
    <message>
        <source>0.08 to 0.11 m is usual from lip to inner bend</source>
        <translation type="unfinished">0.08 bis 0.11 m sind von der Falzkante bis zur inneren Biegung üblich</translation>
    </message>
    <message>
        <source>is {length}, more than the shut face is deep ({length2}); use {length3} or less, or a deeper shut face</source>
        <translation type="unfinished">beträgt {length}, mehr als die Stirnfläche tief ist ({length2}); {length3} oder weniger verwenden, oder eine tiefere Stirnfläche</translation>
    </message>
    <message>
        <source>12 to 250 J/m covers weak to very tough beads</source>
        <translation type="unfinished">12 bis 250 J/m umfasst schwache bis sehr zähe Raupen</translation>
    </message>
    <message>
        <source>0 is an even seam, 0.2 to 0.4 a careless one</source>
        <translation type="unfinished">0 ist eine gleichmäßige Naht, 0.2 bis 0.4 eine nachlässige</translation>
    </message>
    <message>
        <source>the length over which the bead's quality changes, about 0.1 m</source>
        <translation type="unfinished">die Länge, über die sich die Güte der Raupe ändert, etwa 0.1 m</translation>
    </message>
    <message>
        <source>spots sit 0.04 to 0.06 m apart</source>
        <translation type="unfinished">Punkte sitzen 0.04 bis 0.06 m auseinander</translation>
    </message>
    <message>
        <source>spots sit 0.03 to 0.06 m apart</source>
        <translation type="unfinished">Punkte sitzen 0.03 bis 0.06 m auseinander</translation>
    </message>
    <message>
        <source>a spot in thin steel holds 1000 to 2500 N in peel</source>
        <translation type="unfinished">ein Punkt in dünnem Stahl hält auf Schälen 1000 bis 2500 N</translation>
    </message>
    <message>
        <source>a spot in thin steel holds 1600 to 4700 N in shear</source>
        <translation type="unfinished">ein Punkt in dünnem Stahl hält auf Scherung 1600 bis 4700 N</translation>
    </message>
    <message>
        <source>2 to 6 J pull a spot out of thin steel</source>
        <translation type="unfinished">2 bis 6 J ziehen einen Punkt aus dünnem Stahl</translation>
    </message>
    <message>
        <source>below 1 the latch would not meet UN R11 / GTR 1</source>
        <translation type="unfinished">unter 1 erfüllte das Schloss UN R11 / GTR 1 nicht</translation>
    </message>
    <message>
        <source>below 1 the hinges would not meet UN R11 / GTR 1</source>
        <translation type="unfinished">unter 1 erfüllten die Scharniere UN R11 / GTR 1 nicht</translation>
    </message>
    <message>
        <source>0 is brittle, 0.01 to 0.02 m a leaf that unfolds</source>
        <translation type="unfinished">0 ist spröde, 0.01 bis 0.02 m ein Blatt, das sich auffaltet</translation>
    </message>
    <message>
        <source>three spot welds and a bracket hold about 25000 N</source>
        <translation type="unfinished">drei Schweißpunkte und ein Winkel halten etwa 25000 N</translation>
    </message>
    <message>
        <source>0 is a free striker, 5000 to 15000 N a wedged one</source>
        <translation type="unfinished">0 ist ein freier Schließkeil, 5000 bis 15000 N ein verklemmter</translation>
    </message>
    <message>
        <source>0 is a rail that stands still, 0.001 to 0.002 m a usual one</source>
        <translation type="unfinished">0 ist ein Holm, der stillsteht, 0.001 bis 0.002 m ein üblicher</translation>
    </message>
    <message>
        <source>a hand pulls 100 to 400 N</source>
        <translation type="unfinished">eine Hand zieht 100 bis 400 N</translation>
    </message>
    <message>
        <source>0.045 m is the default, 0.06 m for a quick look, 0.03 m for reference</source>
        <translation type="unfinished">0.045 m ist die Vorgabe, 0.06 m für einen schnellen Blick, 0.03 m zum Vergleich</translation>
    </message>
    <message>
        <source>is {n}; use a whole number from 0 to {n2}</source>
        <translation type="unfinished">ist {n}; eine ganze Zahl von 0 bis {n2} verwenden</translation>
    </message>
    <message>
        <source>is {n}; use a whole number from 0 on</source>
        <translation type="unfinished">ist {n}; eine ganze Zahl ab 0 verwenden</translation>
    </message>
    <message>
        <source>rocker weld</source>
        <translation type="unfinished">Schweißpunkte des Schwellers</translation>
    </message>
    <message>
        <source>pillar, stiffened foot</source>
        <translation type="unfinished">Säule, versteifter Fuß</translation>
    </message>
    <message>
        <source>folding rocker</source>
        <translation type="unfinished">Falten des Schwellers</translation>
    </message>
    <message>
        <source>does not suit a whole side; use 0.045 to 0.09 m, or 0.05 or more where rail and rocker give</source>
        <translation type="unfinished">passt nicht zu einer ganzen Seite; 0.045 bis 0.09 m verwenden, und 0.05 oder mehr, wo Holm und Schweller beide nachgeben</translation>
    </message>
    <message>
        <source>leaves it no nodes; use a larger car.lattice_spacing_m</source>
        <translation type="unfinished">lässt ihm keine Knoten; größeres car.lattice_spacing_m verwenden</translation>
    </message>
    <message>
        <source>0 is a foot with no flare, 0.2 to 0.3 m is usual</source>
        <translation type="unfinished">0 ist ein Fuß, der sich nicht weitet, 0.2 bis 0.3 m ist üblich</translation>
    </message>
    <message>
        <source>two rows of spots are usual</source>
        <translation type="unfinished">zwei Reihen Schweißpunkte sind üblich</translation>
    </message>
    <message>
        <source>0 is none, 0.001 to 0.002 m a usual one</source>
        <translation type="unfinished">0 ist keine, 0.001 bis 0.002 m eine übliche</translation>
    </message>
    <message>
        <source>0 is a rocker that stands still, 0.001 to 0.002 m a usual one</source>
        <translation type="unfinished">0 ist ein Schweller, der stillsteht, 0.001 bis 0.002 m ein üblicher</translation>
    </message>
    <message>
        <source>350e6 is usual, 1.0e9 press-hardened</source>
        <translation type="unfinished">350e6 ist üblich, 1.0e9 pressgehärtet</translation>
    </message>
    <message>
        <source>is {n}; use 0, a rocker that stands still, or {n2} m and more</source>
        <translation type="unfinished">ist {n}; 0 verwenden, einen Schweller, der stillsteht, oder {n2} m und mehr</translation>
    </message>
    <message>
        <source>is {n}; use 0, a rail that stands still, or {n2} m and more</source>
        <translation type="unfinished">ist {n}; 0 verwenden, einen Holm, der stillsteht, oder {n2} m und mehr</translation>
    </message>
    <message>
        <source>is {value}, but a rail that stands still has no joint to lose; give car.rail_wall_m a wall, or use 'both'</source>
        <translation type="unfinished">ist {value}, aber ein Holm, der stillsteht, hat keine Verbindung zu verlieren; car.rail_wall_m eine Wand geben oder 'both' verwenden</translation>
    </message>
    <message>
        <source>is {n} J/m, too little for the strength; use more than {n2} J/m</source>
        <translation type="unfinished">ist {n} J/m, zu wenig für die Festigkeit; mehr als {n2} J/m verwenden</translation>
    </message>
    <message>
        <source>is {n} J, too little for weld_peel_n; use more than {n2} J</source>
        <translation type="unfinished">ist {n} J, zu wenig für weld_peel_n; mehr als {n2} J verwenden</translation>
    </message>
    <message>
        <source>stand on a welded seam, which has no bead; use seam = 'bonded' or 'mixed'</source>
        <translation type="unfinished">stehen an einer geschweißten Naht, die keine Raupe hat; seam = 'bonded' oder 'mixed' verwenden</translation>
    </message>
    <message>
        <source>is 'composite', which is illustrative and assumed: name its build, car.build = 'composite skin ({why})', or use 'steel' or 'alloy'</source>
        <translation type="unfinished">ist 'composite', zur Anschauung und angenommen: die Bauweise nennen, car.build = 'composite skin ({why})', oder 'steel' oder 'alloy' verwenden</translation>
    </message>
    <message>
        <source>is 0, so nothing wedges the striker of a jammed latch; use about 12000, or latch = 'open'</source>
        <translation type="unfinished">ist 0, also verklemmt nichts den Schließkeil eines klemmenden Schlosses; etwa 12000 oder latch = 'open' verwenden</translation>
    </message>
    <message>
        <source>is {n}; the hem runs from 0 to {n2} m</source>
        <translation type="unfinished">ist {n}; der Falz reicht von 0 bis {n2} m</translation>
    </message>
    <message>
        <source>is {n}; use {n2} to {n3}, where the hem ends</source>
        <translation type="unfinished">ist {n}; {n2} bis {n3} verwenden, wo der Falz endet</translation>
    </message>
    <message>
        <source>1.35 to 2.7 mm have been published</source>
        <translation type="unfinished">1.35 bis 2.7 mm sind veröffentlicht</translation>
    </message>
    <message>
        <source>0 is a pillar of one grade, 0.2 to 0.4 m a softer foot</source>
        <translation type="unfinished">0 ist eine Säule aus einer Sorte, 0.2 bis 0.4 m ein weicherer Fuß</translation>
    </message>
    <message>
        <source>0 is flat, 0.01 to 0.02 m a pressed wall</source>
        <translation type="unfinished">0 ist eben, 0.01 bis 0.02 m eine gepresste Wand</translation>
    </message>
    <message>
        <source>0.08 to 0.15 m beside a sound door, more where pushed inboard</source>
        <translation type="unfinished">0.08 bis 0.15 m neben einer heilen Tür, mehr, wo eingedrückt</translation>
    </message>
    <message>
        <source>0 is upright, 45 degrees far away from the door</source>
        <translation type="unfinished">0 ist aufrecht, 45 Grad weit von der Tür weg</translation>
    </message>
    <message>
        <source>0 is upright, 25 degrees usual, 60 degrees far back</source>
        <translation type="unfinished">0 ist aufrecht, 25 Grad üblich, 60 Grad weit zurück</translation>
    </message>
    <message>
        <source>0 is a pillar of one grade</source>
        <translation type="unfinished">0 ist eine Säule aus einer Sorte</translation>
    </message>
    <message>
        <source>is {value}; name 'foot' and 'head' at most once each</source>
        <translation type="unfinished">ist {value}; 'foot' und 'head' je höchstens einmal nennen</translation>
    </message>
    <message>
        <source>stands beside a wreck, which makes a start of its own; keep one of the two</source>
        <translation type="unfinished">steht neben einem Unfall, der einen eigenen Anfang macht; eines von beiden behalten</translation>
    </message>
    <message>
        <source>is wedged by a number, but a wreck wedges it by its own forces; use latch = 'full', or 'open' for a handle that is pulled, and latch_wedge_n = 0</source>
        <translation type="unfinished">ist durch eine Zahl verklemmt, aber ein Unfall verklemmt ihn durch seine eigenen Kräfte; latch = 'full' verwenden, oder 'open' für einen gezogenen Griff, und latch_wedge_n = 0</translation>
    </message>
    <message>
        <source>is {kind}; a car is wrecked by 'crush' and 'ease': put the rest under moves</source>
        <translation type="unfinished">ist {kind}; ein Auto wird durch 'crush' und 'ease' beschädigt: das Übrige unter moves setzen</translation>
    </message>
    <message>
        <source>make it again from its plan with 'hemline start'</source>
        <translation type="unfinished">ihn aus seinem Plan mit 'hemline start' neu machen</translation>
    </message>
    <message>
        <source>names {name}, which is not there; put the file beside the plan, or {remedy}</source>
        <translation type="unfinished">nennt {name}, das nicht da ist; die Datei neben den Plan legen oder {remedy}</translation>
    </message>
    <message>
        <source>{name} was made by version {n} of the model, this is {n2}; {remedy}</source>
        <translation type="unfinished">{name} stammt von Version {n} des Modells, dies ist {n2}; {remedy}</translation>
    </message>
    <message>
        <source>{name} has been changed since it was made (its hash differs); {remedy}</source>
        <translation type="unfinished">{name} ist seit dem Erstellen geändert worden (die Prüfsumme ist anders); {remedy}</translation>
    </message>
    <message>
        <source>{name} was made on another car ({what}); use that car's numbers, or {remedy}</source>
        <translation type="unfinished">{name} stammt von einem anderen Auto ({what}); dessen Zahlen verwenden oder {remedy}</translation>
    </message>
    <message>
        <source>{name} is not a saved start or is damaged; {remedy}</source>
        <translation type="unfinished">{name} ist kein gespeicherter Anfang oder ist beschädigt; {remedy}</translation>
    </message>
    <message>
        <source>{name} does not fit this car's network ({what}); {remedy}</source>
        <translation type="unfinished">{name} passt nicht zum Netz dieses Autos ({what}); {remedy}</translation>
    </message>
    <message>
        <source>is {n} m, and the pillar is not cut within {n2} mm of that; cut it first, or give the height of its cut</source>
        <translation type="unfinished">ist {n} m, und die Säule ist nicht innerhalb {n2} mm davon geschnitten; erst schneiden oder die Höhe des Schnitts angeben</translation>
    </message>
    <message>
        <source>is {n} m: no raw metal lies under the tips there; use less</source>
        <translation type="unfinished">ist {n} m: dort liegt kein rohes Metall unter den Spitzen; weniger verwenden</translation>
    </message>
    <message>
        <source>finds no metal under it; set it elsewhere</source>
        <translation type="unfinished">findet kein Metall unter sich; anderswo ansetzen</translation>
    </message>
    <message>
        <source>has no metal there any more; choose one where the part still stands</source>
        <translation type="unfinished">hat dort kein Metall mehr; eine Stelle wählen, wo das Teil noch steht</translation>
    </message>
    <message>
        <source>is {n} m and the section there is {n2} m across the blades: come from a narrower side, go where the section is smaller, or take blades that open wider</source>
        <translation type="unfinished">ist {n} m, und der Querschnitt dort misst quer zu den Klingen {n2} m: von einer schmaleren Seite kommen, wo der Querschnitt kleiner ist, oder Klingen nehmen, die weiter öffnen</translation>
    </message>
    <message>
        <source>has no metal the blades could part; choose one further from the edge</source>
        <translation type="unfinished">hat kein Metall, das die Klingen trennen könnten; eine Stelle weiter von der Kante wählen</translation>
    </message>
    <message>
        <source>triangle {n}: it and its three neighbours have six corners on one conic, so their hinge angles cannot tell its curvature; move a node or keep the lattice near-equilateral</source>
        <translation type="unfinished">Dreieck {n}: seine sechs Ecken mit den drei Nachbarn liegen auf einem Kegelschnitt, ihre Winkel sagen seine Krümmung nicht; einen Knoten verschieben oder das Gitter fast gleichseitig halten</translation>
    </message>
    <message>
        <source>a triangle has no area</source>
        <translation type="unfinished">ein Dreieck hat keine Fläche</translation>
    </message>
    <message>
        <source>edge {key} is used twice the same way round: not a manifold sheet</source>
        <translation type="unfinished">Kante {key} wird zweimal gleich herum verwendet: keine Mannigfaltigkeit</translation>
    </message>
    <message>
        <source>does not fit this side: {text}</source>
        <translation type="unfinished">passt nicht zu dieser Seite: {text}</translation>
    </message>
    <message>
        <source>count is {n}; ask for one run or more</source>
        <translation type="unfinished">count ist {n}; eine Rechnung oder mehr verlangen</translation>
    </message>
    <message>
        <source>the worker process ended by itself (exit code {n})</source>
        <translation type="unfinished">der Arbeitsprozess endete von selbst (Code {n})</translation>
    </message>
    <message>
        <source>worker processes end as soon as they start (exit code {n})</source>
        <translation type="unfinished">Arbeitsprozesse enden gleich nach dem Start (Code {n})</translation>
    </message>
    <message>
        <source>stands on the pillar between the doors, which this car is not built with; set car.extent to 'side', or choose a place on the door</source>
        <translation type="unfinished">steht auf der Säule zwischen den Türen, mit der dieses Auto nicht gebaut ist; car.extent auf 'side' setzen oder eine Stelle an der Tür wählen</translation>
    </message>
    <message>
        <source>is {name}, but the car is one door; use panel = 'front', or extent = 'side' for the car</source>
        <translation type="unfinished">ist {name}, aber das Auto ist eine Tür; panel = 'front' oder extent = 'side' für das Auto verwenden</translation>
    </message>
    <message>
        <source>a whole number</source>
        <translation type="unfinished">eine ganze Zahl</translation>
    </message>
    <message>
        <source>a number</source>
        <translation type="unfinished">eine Zahl</translation>
    </message>
    <message>
        <source>a list</source>
        <translation type="unfinished">eine Liste</translation>
    </message>
    <message>
        <source>a table</source>
        <translation type="unfinished">eine Tabelle</translation>
    </message>
    <message>
        <source>text in quotes</source>
        <translation type="unfinished">Text in Anführungszeichen</translation>
    </message>
    <message>
        <source>true or false</source>
        <translation type="unfinished">true oder false</translation>
    </message>
    <message>
        <source>cannot be read: {text}</source>
        <translation type="unfinished">kann nicht gelesen werden: {text}</translation>
    </message>
    <message>
        <source>rules file</source>
        <translation type="unfinished">Regeldatei</translation>
    </message>
    <message>
        <source>is not a field of a {what}; check its spelling, or remove it</source>
        <translation type="unfinished">ist hier kein Feld ({what}); Schreibweise prüfen oder entfernen</translation>
    </message>
    <message>
        <source>is missing; add it</source>
        <translation type="unfinished">fehlt; hinzufügen</translation>
    </message>
    <message>
        <source>is {got}; give {want} instead</source>
        <translation type="unfinished">ist {got}; stattdessen {want} angeben</translation>
    </message>
    <message>
        <source>has the unit '{unit}'; give '{name}' in SI units instead</source>
        <translation type="unfinished">hat die Einheit '{unit}'; stattdessen '{name}' in SI-Einheiten angeben</translation>
    </message>
    <message>
        <source>is {value}; use one of:</source>
        <translation type="unfinished">ist {value}; eines davon verwenden:</translation>
    </message>
    <message>
        <source>is missing; put 'schema_version = {n}' at the top of the file</source>
        <translation type="unfinished">fehlt; 'schema_version = {n}' oben in die Datei setzen</translation>
    </message>
    <message>
        <source>is {value}; use the whole number {n}</source>
        <translation type="unfinished">ist {value}; die ganze Zahl {n} verwenden</translation>
    </message>
    <message>
        <source>is {value}, from a newer Hemline; this one reads up to {n}: update the program</source>
        <translation type="unfinished">ist {value}, von einem neueren Hemline; dieses liest bis {n}: das Programm erneuern</translation>
    </message>
    <message>
        <source>is not valid TOML: {text}; mend that line</source>
        <translation type="unfinished">ist kein gültiges TOML: {text}; diese Zeile ausbessern</translation>
    </message>
    <message>
        <source>is {raw}; use a finite number</source>
        <translation type="unfinished">ist {raw}; eine endliche Zahl verwenden</translation>
    </message>
    <message>
        <source>names {kind}, which never happens; use {text}</source>
        <translation type="unfinished">nennt {kind}, das nie geschieht; davon verwenden: {text}</translation>
    </message>
    <message>
        <source>is {value}; use a number of degrees</source>
        <translation type="unfinished">ist {value}; eine Zahl in Grad verwenden</translation>
    </message>
    <message>
        <source>is the text {raw}; give a plain number without quotes or unit</source>
        <translation type="unfinished">ist der Text {raw}; eine bloße Zahl ohne Anführungszeichen und Einheit angeben</translation>
    </message>
    <message>
        <source>is far too large for a {what}; check that it is the right file</source>
        <translation type="unfinished">ist viel zu groß dafür ({what}); prüfen, ob es die richtige Datei ist</translation>
    </message>
    <message>
        <source>does not exist; check the path</source>
        <translation type="unfinished">gibt es nicht; den Pfad prüfen</translation>
    </message>
    <message>
        <source>is a folder; name the {what}'s file</source>
        <translation type="unfinished">ist ein Ordner; die Datei nennen ({what})</translation>
    </message>
    <message>
        <source>is not a text file in UTF-8; save the {what} as UTF-8 text</source>
        <translation type="unfinished">ist keine Textdatei in UTF-8; als UTF-8-Text speichern ({what})</translation>
    </message>
    <message>
        <source>cannot be read ({why}); check the file</source>
        <translation type="unfinished">kann nicht gelesen werden ({why}); die Datei prüfen</translation>
    </message>
    <message>
        <source>invalid value</source>
        <translation type="unfinished">ungültiger Wert</translation>
    </message>
    <message>
        <source>nvalid value</source>
        <translation type="unfinished">ngültiger Wert</translation>
    </message>
    <message>
        <source>nvalid enum value</source>
        <translation type="unfinished">ngültiger Wert</translation>
    </message>
    <message>
        <source>bond energy too small for its strength: lower the strength or the rise</source>
        <translation type="unfinished">Energie der Verbindung zu klein für ihre Festigkeit: Festigkeit oder Anstieg senken</translation>
    </message>
    <message>
        <source>friction of the tips</source>
        <translation type="unfinished">Reibung der Spitzen</translation>
    </message>
    <message>
        <source>a date</source>
        <translation type="unfinished">ein Datum</translation>
    </message>
    <message>
        <source>a time</source>
        <translation type="unfinished">eine Zeit</translation>
    </message>
    <message>
        <source>rail {text}</source>
        <translation type="unfinished">Holm {text}</translation>
    </message>
    <message>
        <source>first guess</source>
        <translation type="unfinished">erste Schätzung</translation>
    </message>
    <message>
        <source>along the flange</source>
        <translation type="unfinished">am Flansch entlang</translation>
    </message>
    <message>
        <source>{lead}, tried over {length} at {force}: the metal under tip one goes {way}</source>
        <translation type="unfinished">{lead}, über {length} bei {force} versucht: Das Metall unter Spitze eins geht {way}</translation>
    </message>
    <message>
        <source>{lead}, tried over {length} at {force}: the lip goes outward, the panel behind it comes in</source>
        <translation type="unfinished">{lead}, über {length} bei {force} versucht: Die Lippe geht nach außen, das Blech dahinter kommt herein</translation>
    </message>
    <message>
        <source>lip outward, panel in</source>
        <translation type="unfinished">Lippe nach außen, Blech herein</translation>
    </message>
    <message>
        <source>Room to the occupant: {length} less</source>
        <translation type="unfinished">Platz bis zum Insassen: {length} weniger</translation>
    </message>
    <message>
        <source>{lead}, {guess}: the metal under tip one goes {way}</source>
        <translation type="unfinished">{lead}, {guess}: Das Metall unter Spitze eins geht {way}</translation>
    </message>
    <message>
        <source>It is being tried</source>
        <translation type="unfinished">Es wird gerade versucht</translation>
    </message>
    <message>
        <source>A squeeze under the pointer</source>
        <translation type="unfinished">Ein Quetschen unter dem Zeiger</translation>
    </message>
    <message>
        <source>With tip one under the pointer</source>
        <translation type="unfinished">Mit Spitze eins unter dem Zeiger</translation>
    </message>
    <message>
        <source>{way}, neither out nor in</source>
        <translation type="unfinished">{way}, weder nach außen noch nach innen</translation>
    </message>
    <message>
        <source>into the car</source>
        <translation type="unfinished">ins Auto</translation>
    </message>
    <message>
        <source>out of the car</source>
        <translation type="unfinished">aus dem Auto</translation>
    </message>
    <message>
        <source>The push could not be tried beforehand; your plan is untouched</source>
        <translation type="unfinished">Der Druck ließ sich vorher nicht versuchen; Ihr Plan ist unberührt</translation>
    </message>
    <message>
        <source>Write the reason down in a few words</source>
        <translation type="unfinished">Den Grund in wenigen Worten aufschreiben</translation>
    </message>
    <message>
        <source>Still open: {text}</source>
        <translation type="unfinished">Noch offen: {text}</translation>
    </message>
    <message>
        <source>Predictions made with Hemline, and what the model's runs said</source>
        <translation type="unfinished">Vorhersagen mit Hemline, und was die Rechnungen des Modells sagten</translation>
    </message>
    <message>
        <source>No names are kept, hands are numbers</source>
        <translation type="unfinished">Keine Namen werden aufbewahrt, Hände sind Zahlen</translation>
    </message>
    <message>
        <source>unsaved</source>
        <translation type="unfinished">nicht gespeichert</translation>
    </message>
    <message>
        <source>not settled: nothing is compared</source>
        <translation type="unfinished">nicht gesichert: nichts wird verglichen</translation>
    </message>
    <message>
        <source>about the same</source>
        <translation type="unfinished">etwa gleich</translation>
    </message>
    <message>
        <source>at the ram</source>
        <translation type="unfinished">am Zylinder</translation>
    </message>
    <message>
        <source>skin's middle</source>
        <translation type="unfinished">Mitte der Außenhaut</translation>
    </message>
    <message>
        <source>Some steps of the run did not come to rest</source>
        <translation type="unfinished">Einige Schritte der Rechnung kamen nicht zur Ruhe</translation>
    </message>
    <message>
        <source>Two parts were nearly as close to giving</source>
        <translation type="unfinished">Zwei Teile waren dem Nachgeben fast gleich nah</translation>
    </message>
    <message>
        <source>It has not been run beside its own place, so it is not known whether that decides</source>
        <translation type="unfinished">Neben seiner Stelle ist es nicht gerechnet; ob sie entscheidet, ist nicht bekannt</translation>
    </message>
    <message>
        <source>It has not been run on another lattice, so it is not known whether that decides</source>
        <translation type="unfinished">Auf anderem Gitter ist es nicht gerechnet; ob es entscheidet, ist nicht bekannt</translation>
    </message>
    <message>
        <source>Nothing lets go</source>
        <translation type="unfinished">Nichts gibt frei</translation>
    </message>
    <message>
        <source>The ram's head slips</source>
        <translation type="unfinished">Der Kopf des Zylinders rutscht</translation>
    </message>
    <message>
        <source>The base under its foot sinks</source>
        <translation type="unfinished">Die Unterlage unter seinem Fuß sinkt ein</translation>
    </message>
    <message>
        <source>Sheet tears</source>
        <translation type="unfinished">Blech reißt</translation>
    </message>
    <message>
        <source>None of these: it holds to the end</source>
        <translation type="unfinished">Nichts davon: es hält bis zum Ende</translation>
    </message>
    <message>
        <source>It gains: something is freed, no room is lost</source>
        <translation type="unfinished">Gewonnen: etwas wird frei, kein Raum geht verloren</translation>
    </message>
    <message>
        <source>The effort is spent, nothing is freed</source>
        <translation type="unfinished">Der Aufwand ist vertan, nichts wird frei</translation>
    </message>
    <message>
        <source>Ground is lost: the patient has less room</source>
        <translation type="unfinished">Boden geht verloren: Der Patient hat weniger Raum</translation>
    </message>
    <message>
        <source>ram's line</source>
        <translation type="unfinished">Linie des Zylinders</translation>
    </message>
    <message>
        <source>in line</source>
        <translation type="unfinished">gerader</translation>
    </message>
    <message>
        <source>out of line</source>
        <translation type="unfinished">schräger</translation>
    </message>
    <message>
        <source>how far off square a ram's line stood at first</source>
        <translation type="unfinished">wie schräg die Linie eines Zylinders am Anfang stand</translation>
    </message>
    <message>
        <source>the same at the end</source>
        <translation type="unfinished">dasselbe am Ende</translation>
    </message>
    <message>
        <source>It comes nearer to square</source>
        <translation type="unfinished">Sie wird gerader</translation>
    </message>
    <message>
        <source>It turns further off square</source>
        <translation type="unfinished">Sie wird schräger</translation>
    </message>
    <message>
        <source>It stays as it was</source>
        <translation type="unfinished">Sie bleibt, wie sie war</translation>
    </message>
    <message>
        <source>It moves out</source>
        <translation type="unfinished">Sie geht nach außen</translation>
    </message>
    <message>
        <source>It moves in</source>
        <translation type="unfinished">Sie geht nach innen</translation>
    </message>
    <message>
        <source>It hardly moves</source>
        <translation type="unfinished">Sie bewegt sich kaum</translation>
    </message>
    <message>
        <source>It moves in, towards the patient</source>
        <translation type="unfinished">Sie geht nach innen, zum Patienten hin</translation>
    </message>
    <message>
        <source>The patient has more room</source>
        <translation type="unfinished">Der Patient hat mehr Raum</translation>
    </message>
    <message>
        <source>The patient has less room</source>
        <translation type="unfinished">Der Patient hat weniger Raum</translation>
    </message>
    <message>
        <source>The room stays as it was</source>
        <translation type="unfinished">Der Raum bleibt, wie er war</translation>
    </message>
    <message>
        <source>No sheet tears</source>
        <translation type="unfinished">Kein Blech reißt</translation>
    </message>
    <message>
        <source>It holds, with at least half of what it can take</source>
        <translation type="unfinished">Es hält, mit mindestens der Hälfte dessen, was es aushält</translation>
    </message>
    <message>
        <source>It holds, with less than half of what it can take</source>
        <translation type="unfinished">Es hält, mit weniger als der Hälfte dessen, was es aushält</translation>
    </message>
    <message>
        <source>The plan has not been solved, so there is no key</source>
        <translation type="unfinished">Der Plan ist nicht gerechnet, darum gibt es keine Lösung</translation>
    </message>
    <message>
        <source>With {what} it was not run as far</source>
        <translation type="unfinished">Mit dem hier ist es nicht so weit gerechnet: {what}</translation>
    </message>
    <message>
        <source>With {what} the move could not be made</source>
        <translation type="unfinished">Mit dem hier war der Schritt nicht möglich: {what}</translation>
    </message>
    <message>
        <source>With {what} it comes out otherwise</source>
        <translation type="unfinished">Mit dem hier kommt es anders heraus: {what}</translation>
    </message>
    <message>
        <source>They do not begin from the same metal ({a} against {b}): {text}. Put the other plan's moves on this car to compare them</source>
        <translation type="unfinished">Sie beginnen nicht am selben Metall ({a} gegen {b}): {text}. Die Schritte des anderen Plans auf dieses Auto setzen, um sie zu vergleichen</translation>
    </message>
    <message>
        <source>Put the other plan's moves on this car to compare them</source>
        <translation type="unfinished">Die Schritte des anderen Plans auf dieses Auto setzen, um sie zu vergleichen</translation>
    </message>
    <message>
        <source>They do not begin from the same metal ({a} against {b})</source>
        <translation type="unfinished">Sie beginnen nicht am selben Metall ({a} gegen {b})</translation>
    </message>
    <message>
        <source>Both are the same plan; change one thing in it first, or choose another</source>
        <translation type="unfinished">Beide sind derselbe Plan; erst eines darin ändern oder einen anderen wählen</translation>
    </message>
    <message>
        <source>and {n} more</source>
        <translation type="unfinished">und {n} weitere</translation>
    </message>
    <message>
        <source>{what} {a} against {b}</source>
        <translation type="unfinished">{what}: {a} gegen {b}</translation>
    </message>
    <message>
        <source>Took a ready build</source>
        <translation type="unfinished">Fertige Bauweise genommen</translation>
    </message>
    <message>
        <source>Changed the seam</source>
        <translation type="unfinished">Naht geändert</translation>
    </message>
    <message>
        <source>Changed the metal</source>
        <translation type="unfinished">Metall geändert</translation>
    </message>
    <message>
        <source>Changed the skin's thickness</source>
        <translation type="unfinished">Dicke der Außenhaut geändert</translation>
    </message>
    <message>
        <source>Moved the bead's gap</source>
        <translation type="unfinished">Lücke der Raupe verschoben</translation>
    </message>
    <message>
        <source>Changed the bead's gap</source>
        <translation type="unfinished">Lücke der Raupe geändert</translation>
    </message>
    <message>
        <source>of the mean</source>
        <translation type="unfinished">× Mittel</translation>
    </message>
    <message>
        <source>× the rule</source>
        <translation type="unfinished">× Norm</translation>
    </message>
    <message>
        <source>along the hem: down the hinge edge, along the sill, up the latch edge</source>
        <translation type="unfinished">am Falz entlang: die Scharnierkante hinunter, den Schweller entlang, die Schlosskante hinauf</translation>
    </message>
    <message>
        <source>0 is no gap</source>
        <translation type="unfinished">0 ist keine Lücke</translation>
    </message>
    <message>
        <source>Changed: {what}</source>
        <translation type="unfinished">Geändert: {what}</translation>
    </message>
    <message>
        <source>Changed since</source>
        <translation type="unfinished">Seitdem geändert</translation>
    </message>
    <message>
        <source>The bead has {n} gaps; the first is shown here</source>
        <translation type="unfinished">Die Raupe hat {n} Lücken; hier steht die erste</translation>
    </message>
    <message>
        <source>aluminium alloy</source>
        <translation type="unfinished">Aluminium</translation>
    </message>
    <message>
        <source>steel</source>
        <translation type="unfinished">Stahl</translation>
    </message>
    <message>
        <source>alloy</source>
        <translation type="unfinished">Aluminium</translation>
    </message>
    <message>
        <source>composite</source>
        <translation type="unfinished">Verbundstoff</translation>
    </message>
    <message>
        <source>in the door</source>
        <translation type="unfinished">in der Tür</translation>
    </message>
    <message>
        <source>none</source>
        <translation type="unfinished">keine</translation>
    </message>
    <message>
        <source>left out</source>
        <translation type="unfinished">weggelassen</translation>
    </message>
    <message>
        <source>at both pillars</source>
        <translation type="unfinished">an beiden Säulen</translation>
    </message>
    <message>
        <source>at its rear alone</source>
        <translation type="unfinished">nur hinten</translation>
    </message>
    <message>
        <source>{what}: {low} to {high} {unit}</source>
        <translation type="unfinished">{what}: {low} bis {high} {unit}</translation>
    </message>
    <message>
        <source>Stopped on the way: no result</source>
        <translation type="unfinished">Unterwegs angehalten: kein Ergebnis</translation>
    </message>
    <message>
        <source>Run; what happened is kept shut</source>
        <translation type="unfinished">Gerechnet; was geschah, ist geschlossen</translation>
    </message>
    <message>
        <source>Under way</source>
        <translation type="unfinished">Unterwegs</translation>
    </message>
    <message>
        <source>{n} of {n2} runs</source>
        <translation type="unfinished">{n} von {n2} Rechnungen</translation>
    </message>
    <message>
        <source>{words}, about {n} s left</source>
        <translation type="unfinished">{words}, noch etwa {n} s</translation>
    </message>
    <message>
        <source>{words}, about {n} min left</source>
        <translation type="unfinished">{words}, noch etwa {n} min</translation>
    </message>
    <message>
        <source>about {n} s left</source>
        <translation type="unfinished">noch etwa {n} s</translation>
    </message>
    <message>
        <source>about {n} min left</source>
        <translation type="unfinished">noch etwa {n} min</translation>
    </message>
    <message>
        <source>straight across the gap</source>
        <translation type="unfinished">gerade jenseits des Spalts</translation>
    </message>
    <message>
        <source>straight across</source>
        <translation type="unfinished">gerade gegenüber</translation>
    </message>
    <message>
        <source>from {a} to {b}</source>
        <translation type="unfinished">von {a} nach {b}</translation>
    </message>
    <message>
        <source>{length} along it</source>
        <translation type="unfinished">{length} daran entlang</translation>
    </message>
    <message>
        <source>along it</source>
        <translation type="unfinished">daran entlang</translation>
    </message>
    <message>
        <source>a plan without a title</source>
        <translation type="unfinished">ein Plan ohne Titel</translation>
    </message>
    <message>
        <source>The first point of the curve opens less than nothing</source>
        <translation type="unfinished">Der erste Punkt der Kurve öffnet weniger als nichts</translation>
    </message>
    <message>
        <source>The {what} of point {n} is out of any range</source>
        <translation type="unfinished">{what} von Punkt {n} liegt außerhalb jedes Bereichs</translation>
    </message>
    <message>
        <source>Point {n} of the curve opens no wider than the point before it</source>
        <translation type="unfinished">Punkt {n} der Kurve öffnet nicht weiter als der Punkt davor</translation>
    </message>
    <message>
        <source>Point {n} of the curve has no force; give one above zero</source>
        <translation type="unfinished">Punkt {n} der Kurve hat keine Kraft; eine über null angeben</translation>
    </message>
    <message>
        <source>The {what} of point {n} is not a number: “{raw}”</source>
        <translation type="unfinished">{what} von Punkt {n} ist keine Zahl: „{raw}“</translation>
    </message>
    <message>
        <source>left side</source>
        <translation type="unfinished">linke Seite</translation>
    </message>
    <message>
        <source>right side</source>
        <translation type="unfinished">rechte Seite</translation>
    </message>
    <message>
        <source>left</source>
        <translation type="unfinished">links</translation>
    </message>
    <message>
        <source>right</source>
        <translation type="unfinished">rechts</translation>
    </message>
    <message>
        <source>{car}, left side</source>
        <translation type="unfinished">{car}, linke Seite</translation>
    </message>
    <message>
        <source>{car}, right side</source>
        <translation type="unfinished">{car}, rechte Seite</translation>
    </message>
    <message>
        <source>{text}, {side} side</source>
        <translation type="unfinished">{text}, Seite {side}</translation>
    </message>
    <message>
        <source>Move {n} of {n2}: {text}</source>
        <translation type="unfinished">Schritt {n} von {n2}: {text}</translation>
    </message>
    <message>
        <source>Moment {n} of {n2}: {text}</source>
        <translation type="unfinished">Moment {n} von {n2}: {text}</translation>
    </message>
    <message>
        <source>Move {n}: {text}</source>
        <translation type="unfinished">Schritt {n}: {text}</translation>
    </message>
    <message>
        <source>Move {n}</source>
        <translation type="unfinished">Schritt {n}</translation>
    </message>
    <message>
        <source>Metal to occupant: {length}</source>
        <translation type="unfinished">Metall zum Insassen: {length}</translation>
    </message>
    <message>
        <source>Metal to occupant: {length}, at the {part}</source>
        <translation type="unfinished">Metall zum Insassen: {length}, an: {part}</translation>
    </message>
    <message>
        <source>at the {part}</source>
        <translation type="unfinished">an: {part}</translation>
    </message>
    <message>
        <source>{text}, {length} more than at the start</source>
        <translation type="unfinished">{text}, {length} mehr als am Anfang</translation>
    </message>
    <message>
        <source>{text}, {length} less than at the start</source>
        <translation type="unfinished">{text}, {length} weniger als am Anfang</translation>
    </message>
    <message>
        <source>{text}, {length} {way} than at the start</source>
        <translation type="unfinished">{text}, {length} {way} als am Anfang</translation>
    </message>
    <message>
        <source>{length} {way} than at the start</source>
        <translation type="unfinished">{length} {way} als am Anfang</translation>
    </message>
    <message>
        <source>less</source>
        <translation type="unfinished">weniger</translation>
    </message>
    <message>
        <source>as at the start</source>
        <translation type="unfinished">wie am Anfang</translation>
    </message>
    <message>
        <source>Colours: {what}</source>
        <translation type="unfinished">Farben: {what}</translation>
    </message>
    <message>
        <source>No move is planned</source>
        <translation type="unfinished">Kein Schritt ist geplant</translation>
    </message>
    <message>
        <source>with a {tool}, tips {length} wide</source>
        <translation type="unfinished">mit dem Gerät „{tool}“, Spitzen {length} breit</translation>
    </message>
    <message>
        <source>{title}, with a {tool}, tips {length} wide</source>
        <translation type="unfinished">{title}, mit: {tool}, Spitzen {length} breit</translation>
    </message>
    <message>
        <source>The door is being set out</source>
        <translation type="unfinished">Die Tür wird aufgebaut</translation>
    </message>
    <message>
        <source>The tip is on: {seat}</source>
        <translation type="unfinished">Die Spitze steht auf: {seat}</translation>
    </message>
    <message>
        <source>force {force}</source>
        <translation type="unfinished">Kraft {force}</translation>
    </message>
    <message>
        <source>{length}, force {force}</source>
        <translation type="unfinished">{length}, Kraft {force}</translation>
    </message>
    <message>
        <source>{length} open</source>
        <translation type="unfinished">{length} offen</translation>
    </message>
    <message>
        <source>{length} out</source>
        <translation type="unfinished">{length} heraus</translation>
    </message>
    <message>
        <source>{length} gone</source>
        <translation type="unfinished">{length} gegangen</translation>
    </message>
    <message>
        <source>{part}: {kind} at {length}</source>
        <translation type="unfinished">{part}: {kind} bei {length}</translation>
    </message>
    <message>
        <source>So far: {text}</source>
        <translation type="unfinished">Bis jetzt: {text}</translation>
    </message>
    <message>
        <source>So far nothing has given</source>
        <translation type="unfinished">Bis jetzt hat nichts nachgegeben</translation>
    </message>
    <message>
        <source>Opened {name}</source>
        <translation type="unfinished">{name} geöffnet</translation>
    </message>
    <message>
        <source>Ready plan</source>
        <translation type="unfinished">Fertiger Plan</translation>
    </message>
    <message>
        <source>could not be seen</source>
        <translation type="unfinished">nicht zu sehen</translation>
    </message>
    <message>
        <source>In {n} of {n2} drills the metal did first what the model had said</source>
        <translation type="unfinished">In {n} von {n2} Übungen tat das Metall zuerst, was das Modell gesagt hatte</translation>
    </message>
    <message>
        <source>{text}: with so many, the true share lies between {n} and {n2} %</source>
        <translation type="unfinished">{text}: Bei so vielen liegt der wahre Anteil zwischen {n} und {n2} %</translation>
    </message>
    <message>
        <source>No drill has been written down yet: nothing is known of how this model does on your metal</source>
        <translation type="unfinished">Noch ist keine Übung aufgeschrieben: wie dieses Modell zu Ihrem Metall steht, ist nicht bekannt</translation>
    </message>
    <message>
        <source>{n} could not be seen</source>
        <translation type="unfinished">{n} nicht zu sehen</translation>
    </message>
    <message>
        <source>too few to speak of a rate</source>
        <translation type="unfinished">zu wenige für eine Quote</translation>
    </message>
    <message>
        <source>a person</source>
        <translation type="unfinished">ein Mensch</translation>
    </message>
    <message>
        <source>a file</source>
        <translation type="unfinished">eine Datei</translation>
    </message>
    <message>
        <source>a file{ending}</source>
        <translation type="unfinished">eine Datei{ending}</translation>
    </message>
    <message>
        <source>a file ending in {name}</source>
        <translation type="unfinished">eine Datei auf {name}</translation>
    </message>
    <message>
        <source>ending in</source>
        <translation type="unfinished">auf</translation>
    </message>
    <message>
        <source>Setting out the side …</source>
        <translation type="unfinished">Die Seite wird aufgebaut …</translation>
    </message>
    <message>
        <source>Wrecking the car</source>
        <translation type="unfinished">Das Auto wird beschädigt</translation>
    </message>
    <message>
        <source>Working out the plan beside</source>
        <translation type="unfinished">Der Plan daneben wird gerechnet</translation>
    </message>
    <message>
        <source>before the push</source>
        <translation type="unfinished">vor dem Druck</translation>
    </message>
    <message>
        <source>at the end, {length}</source>
        <translation type="unfinished">am Ende, {length}</translation>
    </message>
    <message>
        <source>at the end</source>
        <translation type="unfinished">am Ende</translation>
    </message>
    <message>
        <source>{first}, {length} open</source>
        <translation type="unfinished">{first}, {length} offen</translation>
    </message>
    <message>
        <source>{where}: {plan}, move {n}</source>
        <translation type="unfinished">{where}: {plan}, Schritt {n}</translation>
    </message>
    <message>
        <source>{a} = {b} pictures</source>
        <translation type="unfinished">{a} = {b} Bilder</translation>
    </message>
    <message>
        <source>{a} = {b} picture</source>
        <translation type="unfinished">{a} = {b} Bild</translation>
    </message>
    <message>
        <source>{a} = {b} picture{s}</source>
        <translation type="unfinished">{a} = {b} Bild{s}</translation>
    </message>
    <message>
        <source>Take a moment first: go to it on the stage, then press the button</source>
        <translation type="unfinished">Erst einen Moment nehmen: auf der Bühne hingehen, dann den Knopf drücken</translation>
    </message>
    <message>
        <source>Add a view first</source>
        <translation type="unfinished">Erst eine Ansicht anfügen</translation>
    </message>
    <message>
        <source>Tick at least one size</source>
        <translation type="unfinished">Mindestens eine Größe ankreuzen</translation>
    </message>
    <message>
        <source>Tick at least one style</source>
        <translation type="unfinished">Mindestens einen Stil ankreuzen</translation>
    </message>
    <message>
        <source>Tick at least one kind of file</source>
        <translation type="unfinished">Mindestens eine Dateiart ankreuzen</translation>
    </message>
    <message>
        <source>Three-quarter from the front</source>
        <translation type="unfinished">Schräg von vorn</translation>
    </message>
    <message>
        <source>Named</source>
        <translation type="unfinished">Benannt</translation>
    </message>
    <message>
        <source>Plain</source>
        <translation type="unfinished">Schlicht</translation>
    </message>
    <message>
        <source>no longer in the list: {name}</source>
        <translation type="unfinished">nicht mehr in der Liste: {name}</translation>
    </message>
    <message>
        <source>another picture: {name}</source>
        <translation type="unfinished">ein anderes Bild: {name}</translation>
    </message>
    <message>
        <source>VERDICT CHANGED: {text}</source>
        <translation type="unfinished">ERGEBNIS GEÄNDERT: {text}</translation>
    </message>
    <message>
        <source>{was}, now {now}</source>
        <translation type="unfinished">{was}, jetzt {now}</translation>
    </message>
    <message>
        <source>{what}: {was}, now {now}</source>
        <translation type="unfinished">{what}: {was}, jetzt {now}</translation>
    </message>
    <message>
        <source>cannot be read: {text}; mend that value</source>
        <translation type="unfinished">kann nicht gelesen werden: {text}; diesen Wert ausbessern</translation>
    </message>
    <message>
        <source>are missing; add at least one of the {what}</source>
        <translation type="unfinished">fehlen; mindestens eines davon anfügen: {what}</translation>
    </message>
    <message>
        <source>is {name}; use small letters, digits, - and _</source>
        <translation type="unfinished">ist {name}; kleine Buchstaben, Ziffern, - und _ verwenden</translation>
    </message>
    <message>
        <source>{name} stands there twice; use another name</source>
        <translation type="unfinished">{name} steht zweimal da; einen anderen Namen verwenden</translation>
    </message>
    <message>
        <source>True scale</source>
        <translation type="unfinished">Wahrer Maßstab</translation>
    </message>
    <message>
        <source>seen from outside, from the rear quarter</source>
        <translation type="unfinished">von außen gesehen, schräg von hinten</translation>
    </message>
    <message>
        <source>seen from outside, near the latch</source>
        <translation type="unfinished">von außen gesehen, nah am Schloss</translation>
    </message>
    <message>
        <source>seen from outside, near the hinges</source>
        <translation type="unfinished">von außen gesehen, nah an den Scharnieren</translation>
    </message>
    <message>
        <source>seen from the patient's seat</source>
        <translation type="unfinished">vom Platz des Patienten gesehen</translation>
    </message>
    <message>
        <source>cut level with the latch and seen from above</source>
        <translation type="unfinished">auf Höhe des Schlosses geschnitten und von oben gesehen</translation>
    </message>
    <message>
        <source>seen from above</source>
        <translation type="unfinished">von oben gesehen</translation>
    </message>
    <message>
        <source>A drawing of {car}, {camera}</source>
        <translation type="unfinished">Eine Zeichnung: {car}, {camera}</translation>
    </message>
    <message>
        <source>A drawing of {text}</source>
        <translation type="unfinished">Eine Zeichnung: {text}</translation>
    </message>
    <message>
        <source>The tips are {length} open and push {force}</source>
        <translation type="unfinished">Die Spitzen sind {length} offen und drücken {force}</translation>
    </message>
    <message>
        <source>From the metal to the occupant it is {length}</source>
        <translation type="unfinished">Vom Metall zum Insassen sind es {length}</translation>
    </message>
    <message>
        <source>Plan {hash}, model version {n}</source>
        <translation type="unfinished">Plan {hash}, Modellversion {n}</translation>
    </message>
    <message>
        <source>Source: {author}</source>
        <translation type="unfinished">Quelle: {author}</translation>
    </message>
    <message>
        <source>Licence: {name}</source>
        <translation type="unfinished">Lizenz: {name}</translation>
    </message>
    <message>
        <source>Hemline, model version {n}</source>
        <translation type="unfinished">Hemline, Modellversion {n}</translation>
    </message>
    <message>
        <source>The colours show: {what}</source>
        <translation type="unfinished">Die Farben zeigen: {what}</translation>
    </message>
    <message>
        <source>the steps of the history do not hang together</source>
        <translation type="unfinished">die Schritte der Geschichte hängen nicht zusammen</translation>
    </message>
    <message>
        <source>there are steps 0 to {n}, not {n2}</source>
        <translation type="unfinished">es gibt Schritte 0 bis {n}, nicht {n2}</translation>
    </message>
    <message>
        <source>Start</source>
        <translation type="unfinished">Anfang</translation>
    </message>
    <message>
        <source>tools and techniques</source>
        <translation type="unfinished">Geräte und Technik</translation>
    </message>
    <message>
        <source>strategy and tactics</source>
        <translation type="unfinished">Strategie und Taktik</translation>
    </message>
    <message>
        <source>Debrief</source>
        <translation type="unfinished">Nachbesprechung</translation>
    </message>
    <message>
        <source>What should have come out</source>
        <translation type="unfinished">Was herauskommen sollte</translation>
    </message>
    <message>
        <source>Hazards to name</source>
        <translation type="unfinished">Zu nennende Gefahren</translation>
    </message>
    <message>
        <source>not graded: {text}</source>
        <translation type="unfinished">nicht bewertet: {text}</translation>
    </message>
    <message>
        <source>question {name}: {text}</source>
        <translation type="unfinished">Frage {name}: {text}</translation>
    </message>
    <message>
        <source>none yet</source>
        <translation type="unfinished">noch keine</translation>
    </message>
    <message>
        <source>The metal did first</source>
        <translation type="unfinished">Das Metall tat zuerst</translation>
    </message>
    <message>
        <source>is {value}, which is not there; {remedy}: {text}</source>
        <translation type="unfinished">ist {value}, das nicht da ist; {remedy}: {text}</translation>
    </message>
    <message>
        <source>are missing; add a [[steps]] table with phase and title</source>
        <translation type="unfinished">fehlen; eine Tabelle [[steps]] mit phase und title anfügen</translation>
    </message>
    <message>
        <source>name one of [[plans]]</source>
        <translation type="unfinished">eines aus [[plans]] nennen</translation>
    </message>
    <message>
        <source>name one of [[questions]]</source>
        <translation type="unfinished">eines aus [[questions]] nennen</translation>
    </message>
    <message>
        <source>is empty; give the lesson's {what}</source>
        <translation type="unfinished">ist leer; angeben: {what}</translation>
    </message>
    <message>
        <source>is missing; name the plan whose map is compared</source>
        <translation type="unfinished">fehlt; den Plan nennen, dessen Karte verglichen wird</translation>
    </message>
    <message>
        <source>is missing; name the plan to compare with</source>
        <translation type="unfinished">fehlt; den Plan zum Vergleichen nennen</translation>
    </message>
    <message>
        <source>layers are</source>
        <translation type="unfinished">Schichten sind</translation>
    </message>
    <message>
        <source>a figure begins with the name of one of [[plans]]</source>
        <translation type="unfinished">eine Zahl beginnt mit dem Namen aus [[plans]]</translation>
    </message>
    <message>
        <source>cannot be read: {text}; mend that line</source>
        <translation type="unfinished">kann nicht gelesen werden: {text}; diese Zeile ausbessern</translation>
    </message>
    <message>
        <source>not solved yet</source>
        <translation type="unfinished">noch nicht gerechnet</translation>
    </message>
    <message>
        <source>name the file {name}, which is neither beside the lesson nor a ready plan</source>
        <translation type="unfinished">nennen die Datei {name}, die weder neben der Lektion liegt noch ein fertiger Plan ist</translation>
    </message>
    <message>
        <source>what gave first</source>
        <translation type="unfinished">was zuerst nachgab</translation>
    </message>
    <message>
        <source>how far the tips were open then</source>
        <translation type="unfinished">wie weit die Spitzen dann offen waren</translation>
    </message>
    <message>
        <source>their force then</source>
        <translation type="unfinished">ihre Kraft dann</translation>
    </message>
    <message>
        <source>largest force of the tips</source>
        <translation type="unfinished">größte Kraft der Spitzen</translation>
    </message>
    <message>
        <source>how far the tips opened</source>
        <translation type="unfinished">wie weit die Spitzen öffneten</translation>
    </message>
    <message>
        <source>most the latch carried, of what it can hold</source>
        <translation type="unfinished">das meiste, was das Schloss trug, von dem, was es halten kann</translation>
    </message>
    <message>
        <source>how far the next thing was from giving</source>
        <translation type="unfinished">wie weit das Nächste vom Nachgeben war</translation>
    </message>
    <message>
        <source>seam parted</source>
        <translation type="unfinished">Naht aufgegangen</translation>
    </message>
    <message>
        <source>seam whole</source>
        <translation type="unfinished">Naht ganz</translation>
    </message>
    <message>
        <source>no load</source>
        <translation type="unfinished">keine Last</translation>
    </message>
    <message>
        <source>how far the skin's middle went</source>
        <translation type="unfinished">wie weit die Mitte der Außenhaut ging</translation>
    </message>
    <message>
        <source>how far the inner panel's middle went</source>
        <translation type="unfinished">wie weit die Mitte des Innenblechs ging</translation>
    </message>
    <message>
        <source>how far the upper panel's skin went</source>
        <translation type="unfinished">wie weit die obere Außenhaut ging</translation>
    </message>
    <message>
        <source>how far the upper inner panel went</source>
        <translation type="unfinished">wie weit das obere Innenblech ging</translation>
    </message>
    <message>
        <source>least room to the occupant</source>
        <translation type="unfinished">kleinster Raum zum Insassen</translation>
    </message>
    <message>
        <source>room to the occupant at the end</source>
        <translation type="unfinished">Raum zum Insassen am Ende</translation>
    </message>
    <message>
        <source>width to bring the occupant out by at the end</source>
        <translation type="unfinished">Weite zum Herausbringen des Insassen am Ende</translation>
    </message>
    <message>
        <source>what it meant for the plan</source>
        <translation type="unfinished">was es für den Plan bedeutete</translation>
    </message>
    <message>
        <source>the sentence of the run</source>
        <translation type="unfinished">der Satz der Rechnung</translation>
    </message>
    <message>
        <source>step {n} of {n2}, {phase}</source>
        <translation type="unfinished">Schritt {n} von {n2}, {phase}</translation>
    </message>
    <message>
        <source>look</source>
        <translation type="unfinished">ansehen</translation>
    </message>
    <message>
        <source>predict</source>
        <translation type="unfinished">vorhersagen</translation>
    </message>
    <message>
        <source>run</source>
        <translation type="unfinished">ausführen</translation>
    </message>
    <message>
        <source>compare</source>
        <translation type="unfinished">vergleichen</translation>
    </message>
    <message>
        <source>debrief</source>
        <translation type="unfinished">besprechen</translation>
    </message>
    <message>
        <source>told</source>
        <translation type="unfinished">gesagt</translation>
    </message>
    <message>
        <source>too little</source>
        <translation type="unfinished">zu wenig</translation>
    </message>
    <message>
        <source>fine</source>
        <translation type="unfinished">gut</translation>
    </message>
    <message>
        <source>slow</source>
        <translation type="unfinished">langsam</translation>
    </message>
    <message>
        <source>enough</source>
        <translation type="unfinished">genug</translation>
    </message>
    <message>
        <source>basic render</source>
        <translation type="unfinished">einfaches Zeichnen</translation>
    </message>
    <message>
        <source>Hemline runs here</source>
        <translation type="unfinished">Hemline läuft hier</translation>
    </message>
    <message>
        <source>Install the graphics driver of the machine, or start at the machine and not over a remote desktop</source>
        <translation type="unfinished">Den Grafiktreiber installieren oder am Rechner selbst starten, nicht über Fernzugriff</translation>
    </message>
    <message>
        <source>Each line says what helps</source>
        <translation type="unfinished">Jede Zeile sagt, was hilft</translation>
    </message>
    <message>
        <source>Hemline will not do its full work here: {text}</source>
        <translation type="unfinished">Hemline leistet hier nicht alles: {text}</translation>
    </message>
    <message>
        <source>Hemline runs here; it would be better off with more of: {text}</source>
        <translation type="unfinished">Hemline läuft hier; besser ginge es mit mehr davon: {text}</translation>
    </message>
    <message>
        <source>OpenGL {text}</source>
        <translation type="unfinished">OpenGL {text}</translation>
    </message>
    <message>
        <source>no window can draw</source>
        <translation type="unfinished">kein Fenster kann zeichnen</translation>
    </message>
    <message>
        <source>{text}, nor can still pictures be drawn</source>
        <translation type="unfinished">{text}, auch Standbilder nicht</translation>
    </message>
    <message>
        <source>still pictures can be drawn</source>
        <translation type="unfinished">Standbilder gehen</translation>
    </message>
    <message>
        <source>Close other programs in class</source>
        <translation type="unfinished">Andere Programme im Unterricht schließen</translation>
    </message>
    <message>
        <source>Use a machine with 4 GB or more</source>
        <translation type="unfinished">Einen Rechner mit 4 GB oder mehr verwenden</translation>
    </message>
    <message>
        <source>Close other programs: a run may be slow while memory is moved to disk</source>
        <translation type="unfinished">Andere Programme schließen: eine Rechnung kann langsam sein, solange Speicher ausgelagert wird</translation>
    </message>
    <message>
        <source>memory</source>
        <translation type="unfinished">Speicher</translation>
    </message>
    <message>
        <source>memory free now</source>
        <translation type="unfinished">Speicher jetzt frei</translation>
    </message>
    <message>
        <source>Use lessons with kept results: a run holds the window up on one core</source>
        <translation type="unfinished">Lektionen mit aufbewahrten Ergebnissen verwenden: auf einem Kern hält eine Rechnung das Fenster auf</translation>
    </message>
    <message>
        <source>processor cores</source>
        <translation type="unfinished">Prozessorkerne</translation>
    </message>
    <message>
        <source>screen</source>
        <translation type="unfinished">Bildschirm</translation>
    </message>
    <message>
        <source>drawing</source>
        <translation type="unfinished">Zeichnen</translation>
    </message>
    <message>
        <source>disk</source>
        <translation type="unfinished">Platte</translation>
    </message>
    <message>
        <source>Columns become drawers: F2 the plan, F3 the reading</source>
        <translation type="unfinished">Spalten werden Schubladen: F2 der Plan, F3 die Ablesung</translation>
    </message>
    <message>
        <source>Set the screen to 1024 x 768 or more, or its scaling to 100 %</source>
        <translation type="unfinished">Den Bildschirm auf 1024 x 768 oder mehr stellen, oder seine Skalierung auf 100 %</translation>
    </message>
    <message>
        <source>folder of the settings</source>
        <translation type="unfinished">Ordner der Einstellungen</translation>
    </message>
    <message>
        <source>{path} can be written</source>
        <translation type="unfinished">{path} kann beschrieben werden</translation>
    </message>
    <message>
        <source>{path} cannot be written</source>
        <translation type="unfinished">{path} kann nicht beschrieben werden</translation>
    </message>
    <message>
        <source>Make a folder named settings beside the program, or free this one: nothing is remembered now</source>
        <translation type="unfinished">Einen Ordner namens settings neben dem Programm anlegen oder diesen freigeben: jetzt wird nichts gemerkt</translation>
    </message>
    <message>
        <source>{n} GB left</source>
        <translation type="unfinished">{n} GB frei</translation>
    </message>
    <message>
        <source>Free some room: the sitting and solved results are kept there</source>
        <translation type="unfinished">Platz schaffen: Sitzung und gerechnete Ergebnisse liegen dort</translation>
    </message>
    <message>
        <source>Drawn by the processor: keep the window small if it lags</source>
        <translation type="unfinished">Vom Prozessor gezeichnet: das Fenster klein halten, wenn es hängt</translation>
    </message>
    <message>
        <source>no name</source>
        <translation type="unfinished">kein Name</translation>
    </message>
    <message>
        <source>Not made yet for this car, tool and tilt: {n} places, each pushed by itself on two lattices</source>
        <translation type="unfinished">Für dieses Auto, Gerät und diese Neigung noch nicht gemacht: {n} Stellen, jede für sich auf zwei Gittern gedrückt</translation>
    </message>
    <message>
        <source>It takes some minutes, can be stopped, and goes on later from where it was</source>
        <translation type="unfinished">Es dauert einige Minuten, kann angehalten werden und geht später weiter, wo es war</translation>
    </message>
    <message>
        <source>Left half of a place: {one}</source>
        <translation type="unfinished">Linke Hälfte einer Stelle: {one}</translation>
    </message>
    <message>
        <source>Right half: {two}</source>
        <translation type="unfinished">Rechte Hälfte: {two}</translation>
    </message>
    <message>
        <source>The window goes on meanwhile</source>
        <translation type="unfinished">Das Fenster geht derweil weiter</translation>
    </message>
    <message>
        <source>Pushing at every place: {text}</source>
        <translation type="unfinished">An jeder Stelle wird gedrückt: {text}</translation>
    </message>
    <message>
        <source>On the other</source>
        <translation type="unfinished">Beim anderen</translation>
    </message>
    <message>
        <source>The same on the other</source>
        <translation type="unfinished">Beim anderen dasselbe</translation>
    </message>
    <message>
        <source>{tool}, {length} wide</source>
        <translation type="unfinished">{tool}, {length} breit</translation>
    </message>
    <message>
        <source>another tilt</source>
        <translation type="unfinished">andere Neigung</translation>
    </message>
    <message>
        <source>The marks in {name} are of another version; move the file away to begin anew</source>
        <translation type="unfinished">Die Zeichnungen in {name} sind von anderer Version; die Datei wegschieben, um neu zu beginnen</translation>
    </message>
    <message>
        <source>The marks in {name} cannot be read ({why}); move the file away to begin anew</source>
        <translation type="unfinished">Die Zeichnungen in {name} lassen sich nicht lesen ({why}); die Datei wegschieben, um neu zu beginnen</translation>
    </message>
    <message>
        <source>The marks cannot be saved beside the plan ({why}); save it elsewhere</source>
        <translation type="unfinished">Die Zeichnungen lassen sich nicht neben dem Plan speichern ({why}); ihn anderswo speichern</translation>
    </message>
    <message>
        <source>Nothing has been checked since the program was started</source>
        <translation type="unfinished">Seit dem Start des Programms ist nichts geprüft worden</translation>
    </message>
    <message>
        <source>Modelled</source>
        <translation type="unfinished">Nachgebildet</translation>
    </message>
    <message>
        <source>Failures</source>
        <translation type="unfinished">Mängel</translation>
    </message>
    <message>
        <source>Numbers</source>
        <translation type="unfinished">Zahlen</translation>
    </message>
    <message>
        <source>Checks</source>
        <translation type="unfinished">Prüfungen</translation>
    </message>
    <message>
        <source>Drills</source>
        <translation type="unfinished">Übungen</translation>
    </message>
    <message>
        <source>Varied</source>
        <translation type="unfinished">Verändert</translation>
    </message>
    <message>
        <source>Scenarios</source>
        <translation type="unfinished">Szenarien</translation>
    </message>
    <message>
        <source>Starting the checks …</source>
        <translation type="unfinished">Die Prüfungen beginnen …</translation>
    </message>
    <message>
        <source>{n} of {n2} checks</source>
        <translation type="unfinished">{n} von {n2} Prüfungen</translation>
    </message>
    <message>
        <source>{n} of {n2} checks, {family}</source>
        <translation type="unfinished">{n} von {n2} Prüfungen, {family}</translation>
    </message>
    <message>
        <source>Stopped: {text}</source>
        <translation type="unfinished">Angehalten: {text}</translation>
    </message>
    <message>
        <source>belongs to</source>
        <translation type="unfinished">gehört zu</translation>
    </message>
    <message>
        <source>who says so</source>
        <translation type="unfinished">wer es sagt</translation>
    </message>
    <message>
        <source>model said</source>
        <translation type="unfinished">Modell sagte</translation>
    </message>
    <message>
        <source>metal did</source>
        <translation type="unfinished">Metall tat</translation>
    </message>
    <message>
        <source>lattice</source>
        <translation type="unfinished">Gitter</translation>
    </message>
    <message>
        <source>expected</source>
        <translation type="unfinished">erwartet</translation>
    </message>
    <message>
        <source>got</source>
        <translation type="unfinished">erhalten</translation>
    </message>
    <message>
        <source>error</source>
        <translation type="unfinished">Fehler</translation>
    </message>
    <message>
        <source>verdict</source>
        <translation type="unfinished">Urteil</translation>
    </message>
    <message>
        <source>Squeeze</source>
        <translation type="unfinished">Quetschen</translation>
    </message>
    <message>
        <source>Flex with a bar</source>
        <translation type="unfinished">Mit der Brechstange biegen</translation>
    </message>
    <message>
        <source>Strip trim, seals, glass</source>
        <translation type="unfinished">Verkleidung, Dichtungen, Glas abnehmen</translation>
    </message>
    <message>
        <source>Press with a ram</source>
        <translation type="unfinished">Mit dem Rettungszylinder drücken</translation>
    </message>
    <message>
        <source>Take hold of a door</source>
        <translation type="unfinished">Eine Tür halten</translation>
    </message>
    <message>
        <source>Put on blocks</source>
        <translation type="unfinished">Auf Klötze stellen</translation>
    </message>
    <message>
        <source>Crush by a rigid body</source>
        <translation type="unfinished">Eindrücken durch starren Körper</translation>
    </message>
    <message>
        <source>painted steel</source>
        <translation type="unfinished">lackierter Stahl</translation>
    </message>
    <message>
        <source>bare steel</source>
        <translation type="unfinished">blanker Stahl</translation>
    </message>
    <message>
        <source>rubber seal left on</source>
        <translation type="unfinished">Gummidichtung noch dran</translation>
    </message>
    <message>
        <source>Along it from its foot</source>
        <translation type="unfinished">Daran, ab seinem Fuß</translation>
    </message>
    <message>
        <source>Along the edge</source>
        <translation type="unfinished">An der Kante</translation>
    </message>
    <message>
        <source>Tip one at</source>
        <translation type="unfinished">Spitze eins an</translation>
    </message>
    <message>
        <source>Behind hinge edge</source>
        <translation type="unfinished">Hinter Scharnierkante</translation>
    </message>
    <message>
        <source>Above sill</source>
        <translation type="unfinished">Über Schweller</translation>
    </message>
    <message>
        <source>Bears on</source>
        <translation type="unfinished">Drückt auf</translation>
    </message>
    <message>
        <source>Tip two on</source>
        <translation type="unfinished">Spitze zwei an</translation>
    </message>
    <message>
        <source>Pad leans inboard</source>
        <translation type="unfinished">Auflage neigt einwärts</translation>
    </message>
    <message>
        <source>Tool's body</source>
        <translation type="unfinished">Gerätekörper</translation>
    </message>
    <message>
        <source>Opens</source>
        <translation type="unfinished">Öffnet</translation>
    </message>
    <message>
        <source>Closes</source>
        <translation type="unfinished">Schließt</translation>
    </message>
    <message>
        <source>cylinder, upright</source>
        <translation type="unfinished">Zylinder, aufrecht</translation>
    </message>
    <message>
        <source>pole, upright</source>
        <translation type="unfinished">Pfahl, aufrecht</translation>
    </message>
    <message>
        <source>Body</source>
        <translation type="unfinished">Körper</translation>
    </message>
    <message>
        <source>Width</source>
        <translation type="unfinished">Breite</translation>
    </message>
    <message>
        <source>Height of the body</source>
        <translation type="unfinished">Höhe des Körpers</translation>
    </message>
    <message>
        <source>Lower end above sill</source>
        <translation type="unfinished">Ende über Schweller</translation>
    </message>
    <message>
        <source>Line turned rearward</source>
        <translation type="unfinished">Linie nach hinten</translation>
    </message>
    <message>
        <source>Goes in</source>
        <translation type="unfinished">Geht hinein</translation>
    </message>
    <message>
        <source>Head on</source>
        <translation type="unfinished">Kopf an</translation>
    </message>
    <message>
        <source>Foot on</source>
        <translation type="unfinished">Fuß an</translation>
    </message>
    <message>
        <source>four points</source>
        <translation type="unfinished">vier Spitzen</translation>
    </message>
    <message>
        <source>points</source>
        <translation type="unfinished">Spitzen</translation>
    </message>
    <message>
        <source>Head bears on</source>
        <translation type="unfinished">Kopf drückt auf</translation>
    </message>
    <message>
        <source>Grip</source>
        <translation type="unfinished">Halt</translation>
    </message>
    <message>
        <source>of the usual</source>
        <translation type="unfinished">des Üblichen</translation>
    </message>
    <message>
        <source>Head of the ram</source>
        <translation type="unfinished">Kopf des Zylinders</translation>
    </message>
    <message>
        <source>Ram, shut</source>
        <translation type="unfinished">Zylinder, zu</translation>
    </message>
    <message>
        <source>Piece put on</source>
        <translation type="unfinished">Aufsatz</translation>
    </message>
    <message>
        <source>Drives out</source>
        <translation type="unfinished">Fährt aus</translation>
    </message>
    <message>
        <source>Rearward of the head</source>
        <translation type="unfinished">Hinter dem Kopf</translation>
    </message>
    <message>
        <source>Raised</source>
        <translation type="unfinished">Erhöht</translation>
    </message>
    <message>
        <source>Wall there</source>
        <translation type="unfinished">Wand dort</translation>
    </message>
    <message>
        <source>Rib behind it</source>
        <translation type="unfinished">Rippe dahinter</translation>
    </message>
    <message>
        <source>Tip behind</source>
        <translation type="unfinished">Spitze hinter</translation>
    </message>
    <message>
        <source>Pulled outward</source>
        <translation type="unfinished">Nach außen gezogen</translation>
    </message>
    <message>
        <source>Bar's length</source>
        <translation type="unfinished">Hebellänge</translation>
    </message>
    <message>
        <source>Heel to tip</source>
        <translation type="unfinished">Ferse bis Spitze</translation>
    </message>
    <message>
        <source>Hand pulls at most</source>
        <translation type="unfinished">Hand zieht höchstens</translation>
    </message>
    <message>
        <source>Tip goes</source>
        <translation type="unfinished">Spitze geht</translation>
    </message>
    <message>
        <source>swing it by hand</source>
        <translation type="unfinished">von Hand schwenken</translation>
    </message>
    <message>
        <source>strap it where it is</source>
        <translation type="unfinished">festbinden, wo sie ist</translation>
    </message>
    <message>
        <source>prop it from the ground</source>
        <translation type="unfinished">vom Boden abstützen</translation>
    </message>
    <message>
        <source>How</source>
        <translation type="unfinished">Wie</translation>
    </message>
    <message>
        <source>the pillar</source>
        <translation type="unfinished">die Säule</translation>
    </message>
    <message>
        <source>a door, from an edge</source>
        <translation type="unfinished">eine Tür, von der Kante</translation>
    </message>
    <message>
        <source>a fitting that shows</source>
        <translation type="unfinished">ein sichtbares Teil</translation>
    </message>
    <message>
        <source>Blades turned</source>
        <translation type="unfinished">Klingen gedreht</translation>
    </message>
    <message>
        <source>Blades open</source>
        <translation type="unfinished">Klingen öffnen</translation>
    </message>
    <message>
        <source>Blades' force</source>
        <translation type="unfinished">Klingenkraft</translation>
    </message>
    <message>
        <source>Cut above the foot</source>
        <translation type="unfinished">Schnitt über dem Fuß</translation>
    </message>
    <message>
        <source>Tips from</source>
        <translation type="unfinished">Spitzen von</translation>
    </message>
    <message>
        <source>Off its middle</source>
        <translation type="unfinished">Neben der Mitte</translation>
    </message>
    <message>
        <source>The car stands on</source>
        <translation type="unfinished">Das Auto steht auf</translation>
    </message>
    <message>
        <source>its wheels alone</source>
        <translation type="unfinished">nur seinen Rädern</translation>
    </message>
    <message>
        <source>blocks</source>
        <translation type="unfinished">Klötzen</translation>
    </message>
    <message>
        <source>taken off</source>
        <translation type="unfinished">abgenommen</translation>
    </message>
    <message>
        <source>left on</source>
        <translation type="unfinished">bleibt dran</translation>
    </message>
    <message>
        <source>Trim</source>
        <translation type="unfinished">Verkleidung</translation>
    </message>
    <message>
        <source>Seals</source>
        <translation type="unfinished">Dichtungen</translation>
    </message>
    <message>
        <source>Glass</source>
        <translation type="unfinished">Glas</translation>
    </message>
    <message>
        <source>Door</source>
        <translation type="unfinished">Tür</translation>
    </message>
    <message>
        <source>Stands on</source>
        <translation type="unfinished">Steht auf</translation>
    </message>
    <message>
        <source>Tip two's place</source>
        <translation type="unfinished">Stelle von Spitze zwei</translation>
    </message>
    <message>
        <source>Push tilted outward</source>
        <translation type="unfinished">Druck nach außen geneigt</translation>
    </message>
    <message>
        <source>Across</source>
        <translation type="unfinished">Quer über</translation>
    </message>
    <message>
        <source>a door's panel</source>
        <translation type="unfinished">Blech einer Tür</translation>
    </message>
    <message>
        <source>Above pillar's foot</source>
        <translation type="unfinished">Über dem Säulenfuß</translation>
    </message>
    <message>
        <source>follows the arms</source>
        <translation type="unfinished">folgt den Armen</translation>
    </message>
    <message>
        <source>stands still</source>
        <translation type="unfinished">steht still</translation>
    </message>
    <message>
        <source>Swung outward</source>
        <translation type="unfinished">Nach außen geschwenkt</translation>
    </message>
    <message>
        <source>Hands push at most</source>
        <translation type="unfinished">Hände drücken höchstens</translation>
    </message>
    <message>
        <source>Above where it is</source>
        <translation type="unfinished">Über der jetzigen Lage</translation>
    </message>
    <message>
        <source>Above its foot</source>
        <translation type="unfinished">Über ihrem Fuß</translation>
    </message>
    <message>
        <source>Blades from</source>
        <translation type="unfinished">Klingen von</translation>
    </message>
    <message>
        <source>Stops short by</source>
        <translation type="unfinished">Hält davor um</translation>
    </message>
    <message>
        <source>From the</source>
        <translation type="unfinished">Von</translation>
    </message>
    <message>
        <source>Place on it</source>
        <translation type="unfinished">Stelle daran</translation>
    </message>
    <message>
        <source>Through</source>
        <translation type="unfinished">Durch</translation>
    </message>
    <message>
        <source>Fitting</source>
        <translation type="unfinished">Beschlag</translation>
    </message>
    <message>
        <source>Local rules: {author}, {date}</source>
        <translation type="unfinished">Örtliche Regeln: {author}, {date}</translation>
    </message>
    <message>
        <source>The rules, words and hazards of your own service, shown beside lessons and on sheets</source>
        <translation type="unfinished">Regeln, Wörter und Gefahren Ihrer eigenen Wehr, neben Lektionen und auf Blättern gezeigt</translation>
    </message>
    <message>
        <source>They come before anything this program says</source>
        <translation type="unfinished">Sie gehen allem vor, was dieses Programm sagt</translation>
    </message>
    <message>
        <source>Change every line; keep author and date true</source>
        <translation type="unfinished">Jede Zeile ändern; Verfasser und Datum wahr halten</translation>
    </message>
    <message>
        <source>your service</source>
        <translation type="unfinished">Ihre Wehr</translation>
    </message>
    <message>
        <source>training officer on duty</source>
        <translation type="unfinished">diensthabende Ausbildungsleitung</translation>
    </message>
    <message>
        <source>Stop when the skin begins to tear; the officer decides how to go on</source>
        <translation type="unfinished">Halten, wenn die Haut zu reißen beginnt; die Führung entscheidet, wie es weitergeht</translation>
    </message>
    <message>
        <source>Our second engine carries no cutter: call for it before a post is touched</source>
        <translation type="unfinished">Unser zweites Fahrzeug hat keine Schere: anfordern, bevor eine Säule berührt wird</translation>
    </message>
    <message>
        <source>a word of yours = the word this program uses</source>
        <translation type="unfinished">ein Wort von Ihnen = das Wort dieses Programms</translation>
    </message>
    <message>
        <source>local rules</source>
        <translation type="unfinished">örtliche Regeln</translation>
    </message>
    <message>
        <source>is {value}, from a newer Hemline; update it</source>
        <translation type="unfinished">ist {value}, von einem neueren Hemline; erneuern</translation>
    </message>
    <message>
        <source>was changed by somebody else meanwhile; look at it, then replace it</source>
        <translation type="unfinished">wurde inzwischen von jemand anderem geändert; ansehen, dann ersetzen</translation>
    </message>
    <message>
        <source>are not valid TOML: {text}; mend that line</source>
        <translation type="unfinished">sind kein gültiges TOML: {text}; diese Zeile ausbessern</translation>
    </message>
    <message>
        <source>is empty; local rules are shown with their {field}, so give it</source>
        <translation type="unfinished">ist leer; örtliche Regeln werden damit gezeigt, also angeben: {field}</translation>
    </message>
    <message>
        <source>is {value}; write it as 2026-11-26</source>
        <translation type="unfinished">ist {value}; als 2026-11-26 schreiben</translation>
    </message>
    <message>
        <source>cannot be written ({why})</source>
        <translation type="unfinished">kann nicht geschrieben werden ({why})</translation>
    </message>
    <message>
        <source>Nothing differs that the metal feels</source>
        <translation type="unfinished">Nichts ist anders, was das Metall merkt</translation>
    </message>
    <message>
        <source>after move {n}</source>
        <translation type="unfinished">nach Schritt {n}</translation>
    </message>
    <message>
        <source>the untouched door</source>
        <translation type="unfinished">die unberührte Tür</translation>
    </message>
    <message>
        <source>{words}, its last moment</source>
        <translation type="unfinished">{words}, sein letzter Moment</translation>
    </message>
    <message>
        <source>At the start</source>
        <translation type="unfinished">Am Anfang</translation>
    </message>
    <message>
        <source>Both begin from the same metal: {after}, {hash}</source>
        <translation type="unfinished">Beide beginnen am selben Metall: {after}, {hash}</translation>
    </message>
    <message>
        <source>Each begins from its own metal: {hash} left, {value} right</source>
        <translation type="unfinished">Jeder beginnt an seinem eigenen Metall: {hash} links, {value} rechts</translation>
    </message>
    <message>
        <source>Twin: {changed}</source>
        <translation type="unfinished">Zwilling: {changed}</translation>
    </message>
    <message>
        <source>There is nothing to compare yet: add a move first</source>
        <translation type="unfinished">Es gibt noch nichts zu vergleichen: erst einen Zug anfügen</translation>
    </message>
    <message>
        <source>is the same on this car; a twin differs in one thing</source>
        <translation type="unfinished">ist an diesem Auto ebenso; ein Zwilling unterscheidet sich in einem</translation>
    </message>
    <message>
        <source>cannot be another on a saved start, which is true for its own car alone; put the wreck before the plan instead, and it is worked out on the twin as well</source>
        <translation type="unfinished">kann an einem gespeicherten Anfang nicht anders sein, der nur für sein eigenes Auto gilt; stellen Sie stattdessen den Unfall vor den Plan, er wird dann auch am Zwilling gerechnet</translation>
    </message>
    <message>
        <source>full speed</source>
        <translation type="unfinished">voller Geschwindigkeit</translation>
    </message>
    <message>
        <source>half speed</source>
        <translation type="unfinished">halber Geschwindigkeit</translation>
    </message>
    <message>
        <source>a quarter of the speed</source>
        <translation type="unfinished">einem Viertel der Geschwindigkeit</translation>
    </message>
    <message>
        <source>an eighth of the speed</source>
        <translation type="unfinished">einem Achtel der Geschwindigkeit</translation>
    </message>
    <message>
        <source>played once</source>
        <translation type="unfinished">einmal gespielt</translation>
    </message>
    <message>
        <source>all of it, again and again</source>
        <translation type="unfinished">alles, immer wieder</translation>
    </message>
    <message>
        <source>round the event, again and again</source>
        <translation type="unfinished">um das Ereignis, immer wieder</translation>
    </message>
    <message>
        <source>In the model: {what}</source>
        <translation type="unfinished">Im Modell: {what}</translation>
    </message>
    <message>
        <source>{n} of {n2} as the model has it</source>
        <translation type="unfinished">{n} von {n2}, wie das Modell es hat</translation>
    </message>
    <message>
        <source>Not settled, and not graded</source>
        <translation type="unfinished">Nicht gesichert und nicht bewertet</translation>
    </message>
    <message>
        <source>This run: {what}</source>
        <translation type="unfinished">Diese Rechnung: {what}</translation>
    </message>
    <message>
        <source>{few} not graded: the model is not settled there</source>
        <translation type="unfinished">{few} nicht bewertet: das Modell ist dort nicht gesichert</translation>
    </message>
    <message>
        <source>one question was</source>
        <translation type="unfinished">eine Frage wurde</translation>
    </message>
    <message>
        <source>{n} questions were</source>
        <translation type="unfinished">{n} Fragen wurden</translation>
    </message>
    <message>
        <source>Say first what this is: a teaching model, not a real car; local procedure comes first</source>
        <translation type="unfinished">Zuerst sagen, was dies ist: ein Lehrmodell, kein echtes Auto; die örtliche Vorschrift geht vor</translation>
    </message>
    <message>
        <source>Key A opens the card</source>
        <translation type="unfinished">Taste A öffnet die Karte</translation>
    </message>
    <message>
        <source>Let everyone choose and give a reason, count the hands, then lock it (L)</source>
        <translation type="unfinished">Alle wählen und begründen lassen, Hände zählen, dann festlegen (L)</translation>
    </message>
    <message>
        <source>Return runs it</source>
        <translation type="unfinished">Eingabe führt aus</translation>
    </message>
    <message>
        <source>Let them watch the metal first; words come after</source>
        <translation type="unfinished">Erst das Metall ansehen lassen; Worte kommen danach</translation>
    </message>
    <message>
        <source>Ask what was seen before it is said</source>
        <translation type="unfinished">Fragen, was zu sehen war, bevor es gesagt wird</translation>
    </message>
    <message>
        <source>W plays slower, Y plays it again and again</source>
        <translation type="unfinished">W spielt langsamer, Y immer wieder</translation>
    </message>
    <message>
        <source>Compare with what was foretold (R)</source>
        <translation type="unfinished">Mit dem Vorhergesagten vergleichen (R)</translation>
    </message>
    <message>
        <source>Then: what would have to be different?</source>
        <translation type="unfinished">Dann: Was müsste anders sein?</translation>
    </message>
    <message>
        <source>{text}, its end</source>
        <translation type="unfinished">{text}, sein Ende</translation>
    </message>
    <message>
        <source>What will happen?</source>
        <translation type="unfinished">Was wird geschehen?</translation>
    </message>
    <message>
        <source>The start</source>
        <translation type="unfinished">Der Anfang</translation>
    </message>
    <message>
        <source>{text}, at {length}</source>
        <translation type="unfinished">{text}, bei {length}</translation>
    </message>
    <message>
        <source>Is metal work needed?</source>
        <translation type="unfinished">Ist Arbeit am Metall nötig?</translation>
    </message>
    <message>
        <source>Getting out alone or with a little help comes first, where procedure and medical lead allow it</source>
        <translation type="unfinished">Allein oder mit wenig Hilfe herauskommen geht vor, wo Vorschrift und medizinische Leitung es erlauben</translation>
    </message>
    <message>
        <source>The blades went where it still hid</source>
        <translation type="unfinished">Die Klingen gingen dorthin, wo es noch verborgen war</translation>
    </message>
    <message>
        <source>on blocks in this plan</source>
        <translation type="unfinished">in diesem Plan auf Klötzen</translation>
    </message>
    <message>
        <source>on its side, on no blocks in this plan</source>
        <translation type="unfinished">auf der Seite, in diesem Plan nicht unterbaut</translation>
    </message>
    <message>
        <source>on its wheels alone in this plan</source>
        <translation type="unfinished">in diesem Plan nur auf seinen Rädern</translation>
    </message>
    <message>
        <source>stripped in this plan</source>
        <translation type="unfinished">in diesem Plan freigelegt</translation>
    </message>
    <message>
        <source>not stripped in this plan</source>
        <translation type="unfinished">in diesem Plan nicht freigelegt</translation>
    </message>
    <message>
        <source>off in this plan</source>
        <translation type="unfinished">in diesem Plan ab</translation>
    </message>
    <message>
        <source>still in, in this plan</source>
        <translation type="unfinished">in diesem Plan noch drin</translation>
    </message>
    <message>
        <source>car stable</source>
        <translation type="unfinished">Auto steht sicher</translation>
    </message>
    <message>
        <source>energy isolated</source>
        <translation type="unfinished">Energie abgeschaltet</translation>
    </message>
    <message>
        <source>glass handled</source>
        <translation type="unfinished">Glas versorgt</translation>
    </message>
    <message>
        <source>trim stripped</source>
        <translation type="unfinished">Verkleidung entfernt</translation>
    </message>
    <message>
        <source>belts dealt with</source>
        <translation type="unfinished">Gurte versorgt</translation>
    </message>
    <message>
        <source>patient covered and cared for</source>
        <translation type="unfinished">Patient abgedeckt und betreut</translation>
    </message>
    <message>
        <source>sharp edges</source>
        <translation type="unfinished">scharfe Kanten</translation>
    </message>
    <message>
        <source>stored energy</source>
        <translation type="unfinished">gespeicherte Energie</translation>
    </message>
    <message>
        <source>swinging door</source>
        <translation type="unfinished">schwingende Tür</translation>
    </message>
    <message>
        <source>high voltage</source>
        <translation type="unfinished">Hochspannung</translation>
    </message>
    <message>
        <source>restraint</source>
        <translation type="unfinished">Rückhaltesystem</translation>
    </message>
    <message>
        <source>Before any force</source>
        <translation type="unfinished">Vor jeder Kraft</translation>
    </message>
    <message>
        <source>{text} Then: {looked}</source>
        <translation type="unfinished">{text} Dann: {looked}</translation>
    </message>
    <message>
        <source>Then: {text}</source>
        <translation type="unfinished">Dann: {text}</translation>
    </message>
    <message>
        <source>Neither: less than {length} either way</source>
        <translation type="unfinished">Keins von beiden: weniger als {length} in jede Richtung</translation>
    </message>
    <message>
        <source>less room on the way: {length} at {where}</source>
        <translation type="unfinished">weniger Raum unterwegs: {length} bei {where}</translation>
    </message>
    <message>
        <source>never less room than at the start</source>
        <translation type="unfinished">nie weniger Raum als am Anfang</translation>
    </message>
    <message>
        <source>{said}; {a} at first, {b} at the end; exit width {w}</source>
        <translation type="unfinished">{said}; {a} zuerst, {b} am Ende; Ausgangsweite {w}</translation>
    </message>
    <message>
        <source>{a} at first, {b} at the end</source>
        <translation type="unfinished">{a} zuerst, {b} am Ende</translation>
    </message>
    <message>
        <source>exit width {w}</source>
        <translation type="unfinished">Ausgangsweite {w}</translation>
    </message>
    <message>
        <source>lower leg</source>
        <translation type="unfinished">Unterschenkel</translation>
    </message>
    <message>
        <source>thigh</source>
        <translation type="unfinished">Oberschenkel</translation>
    </message>
    <message>
        <source>pelvis</source>
        <translation type="unfinished">Becken</translation>
    </message>
    <message>
        <source>hip</source>
        <translation type="unfinished">Hüfte</translation>
    </message>
    <message>
        <source>chest</source>
        <translation type="unfinished">Brustkorb</translation>
    </message>
    <message>
        <source>shoulder</source>
        <translation type="unfinished">Schulter</translation>
    </message>
    <message>
        <source>arm</source>
        <translation type="unfinished">Arm</translation>
    </message>
    <message>
        <source>knee</source>
        <translation type="unfinished">Knie</translation>
    </message>
    <message>
        <source>neck</source>
        <translation type="unfinished">Hals</translation>
    </message>
    <message>
        <source>holds a run without body parts; run a plan with car.extent = 'side'</source>
        <translation type="unfinished">enthält eine Rechnung ohne Körperteile; einen Plan mit car.extent = 'side' rechnen</translation>
    </message>
    <message>
        <source>do not begin with one start ({text}); give all plans the same car and the same start</source>
        <translation type="unfinished">beginnen nicht am selben Anfang ({text}); allen Plänen dasselbe Auto und denselben Anfang geben</translation>
    </message>
    <message>
        <source>were solved by different versions of the model; solve them again</source>
        <translation type="unfinished">wurden mit verschiedenen Modellversionen gerechnet; neu rechnen</translation>
    </message>
    <message>
        <source>no tool named {tool}; there are {text}</source>
        <translation type="unfinished">kein Werkzeug namens {tool}; es gibt {text}</translation>
    </message>
    <message>
        <source>Run to {length}</source>
        <translation type="unfinished">Bis {length} ausführen</translation>
    </message>
    <message>
        <source>Went on from {words}</source>
        <translation type="unfinished">Weiter von {words}</translation>
    </message>
    <message>
        <source>Went on after move {n}</source>
        <translation type="unfinished">Weiter nach Schritt {n}</translation>
    </message>
    <message>
        <source>The settings could not be read, so the ordinary ones hold; the old file was put aside as {name}</source>
        <translation type="unfinished">Die Einstellungen waren nicht lesbar, darum gelten die gewöhnlichen; die alte Datei liegt nun als {name} daneben</translation>
    </message>
    <message>
        <source>The settings in {path} cannot be read, so this start uses the ordinary ones</source>
        <translation type="unfinished">Die Einstellungen in {path} sind nicht lesbar, darum nimmt dieser Start die gewöhnlichen</translation>
    </message>
    <message>
        <source>{name} was written by another version of Hemline</source>
        <translation type="unfinished">{name} stammt von einer anderen Version von Hemline</translation>
    </message>
    <message>
        <source>{name} is damaged ({why})</source>
        <translation type="unfinished">{name} ist beschädigt ({why})</translation>
    </message>
    <message>
        <source>slipped {length}</source>
        <translation type="unfinished">{length} gerutscht</translation>
    </message>
    <message>
        <source>the pillar's edge, across the gap</source>
        <translation type="unfinished">der Säulenkante, jenseits des Spalts</translation>
    </message>
    <message>
        <source>the pillar's outside</source>
        <translation type="unfinished">der Säulenaußenseite</translation>
    </message>
    <message>
        <source>the hinge pillar, across the gap</source>
        <translation type="unfinished">der Scharniersäule, jenseits des Spalts</translation>
    </message>
    <message>
        <source>the rocker, across the gap</source>
        <translation type="unfinished">dem Schweller, jenseits des Spalts</translation>
    </message>
    <message>
        <source>the roof rail above the window</source>
        <translation type="unfinished">dem Dachholm über dem Fenster</translation>
    </message>
    <message>
        <source>the latch edge</source>
        <translation type="unfinished">der Schlosskante</translation>
    </message>
    <message>
        <source>the sill edge</source>
        <translation type="unfinished">der Schwellerkante</translation>
    </message>
    <message>
        <source>the hinge edge</source>
        <translation type="unfinished">der Scharnierkante</translation>
    </message>
    <message>
        <source>the belt</source>
        <translation type="unfinished">der Brüstung</translation>
    </message>
    <message>
        <source>Tip two stands on the ground</source>
        <translation type="unfinished">Spitze zwei steht auf dem Boden</translation>
    </message>
    <message>
        <source>Tip two stands on {place}</source>
        <translation type="unfinished">Spitze zwei steht an {place}</translation>
    </message>
    <message>
        <source>Tip one stands on {place}</source>
        <translation type="unfinished">Spitze eins steht an {place}</translation>
    </message>
    <message>
        <source>Letting the tool off has no place on the door</source>
        <translation type="unfinished">Das Entlasten hat keine Stelle an der Tür</translation>
    </message>
    <message>
        <source>Depth belongs to tips in a gap; this move has none there</source>
        <translation type="unfinished">Tiefe gehört zu Spitzen in einem Spalt; dieser Schritt hat dort keine</translation>
    </message>
    <message>
        <source>Tilt belongs to tips in a gap; a squeeze closes square to the panel and a crush keeps its line</source>
        <translation type="unfinished">Neigung gehört zu Spitzen in einem Spalt; Quetschen schließt senkrecht zum Blech, und Eindrücken behält seine Linie</translation>
    </message>
    <message>
        <source>A squeeze sets tip two by itself: on the inner panel, across from tip one</source>
        <translation type="unfinished">Quetschen setzt Spitze zwei von selbst: am Innenblech, gegenüber von Spitze eins</translation>
    </message>
    <message>
        <source>A crush has no tips; click the skin to set where along the car it presses</source>
        <translation type="unfinished">Eindrücken hat keine Spitzen; auf die Haut klicken legt fest, wo am Auto es drückt</translation>
    </message>
    <message>
        <source>Letting the tool off has no tips to place</source>
        <translation type="unfinished">Das Entlasten hat keine Spitzen anzusetzen</translation>
    </message>
    <message>
        <source>Tip two has one place here: {place}</source>
        <translation type="unfinished">Spitze zwei hat hier nur eine Stelle: {place}</translation>
    </message>
    <message>
        <source>thin air</source>
        <translation type="unfinished">leerer Luft</translation>
    </message>
    <message>
        <source>Tip two cannot stand on the {part} here; its place is {text}</source>
        <translation type="unfinished">Spitze zwei kann hier nicht an {part:dative} stehen; ihre Stelle ist an {text}</translation>
    </message>
    <message>
        <source>stops at {what}</source>
        <translation type="unfinished">hält bei {what}</translation>
    </message>
    <message>
        <source>{text} or {more}</source>
        <translation type="unfinished">{text} oder {more}</translation>
    </message>
    <message>
        <source> or </source>
        <translation type="unfinished"> oder </translation>
    </message>
    <message>
        <source>The crew's own tools, by their numbers</source>
        <translation type="unfinished">Die eigenen Geräte der Mannschaft, mit ihren Zahlen</translation>
    </message>
    <message>
        <source>A tool's name is the crew's own; what counts are the numbers</source>
        <translation type="unfinished">Der Name ist der eigene der Mannschaft; es zählen die Zahlen</translation>
    </message>
    <message>
        <source>0.3 to 0.6 for serrated tips; above 2 they bite and never slide</source>
        <translation type="unfinished">0.3 bis 0.6 für gezahnte Spitzen; über 2 greifen sie und gleiten nie</translation>
    </message>
    <message>
        <source>Give the tool a name of your own before it is kept</source>
        <translation type="unfinished">Dem Gerät einen eigenen Namen geben, bevor es aufbewahrt wird</translation>
    </message>
    <message>
        <source>The tool's name is longer than {n} letters; shorten it</source>
        <translation type="unfinished">Der Name des Geräts ist länger als {n} Buchstaben; kürzen</translation>
    </message>
    <message>
        <source>The tool's curve needs as many forces as openings, two at least</source>
        <translation type="unfinished">Die Kurve des Geräts braucht so viele Kräfte wie Öffnungen, mindestens zwei</translation>
    </message>
    <message>
        <source>The tool's {what} is {value}; it goes from {low} to {high} ({usual})</source>
        <translation type="unfinished">Am Gerät ist {what} {value}; möglich ist {low} bis {high} ({usual})</translation>
    </message>
    <message>
        <source>{name} holds no list of tools</source>
        <translation type="unfinished">{name} enthält keine Geräteliste</translation>
    </message>
    <message>
        <source>{name} cannot be read ({why})</source>
        <translation type="unfinished">{name} ist nicht lesbar ({why})</translation>
    </message>
    <message>
        <source>{name}, tool {n}, was left out: {text}</source>
        <translation type="unfinished">{name}, Gerät {n}, wurde weggelassen: {text}</translation>
    </message>
    <message>
        <source>{name} cannot be written ({why}); the tool stays in the plan</source>
        <translation type="unfinished">{name} kann nicht geschrieben werden ({why}); das Gerät bleibt im Plan</translation>
    </message>
    <message>
        <source>Not settled: some steps did not come to rest, so this run says neither yes nor no to anybody's answer</source>
        <translation type="unfinished">Nicht gesichert: Einige Schritte kamen nicht zur Ruhe, darum sagt diese Rechnung zu niemandes Antwort ja oder nein</translation>
    </message>
    <message>
        <source>It is not counted</source>
        <translation type="unfinished">Sie wird nicht gezählt</translation>
    </message>
    <message>
        <source>as foretold</source>
        <translation type="unfinished">wie vorhergesagt</translation>
    </message>
    <message>
        <source>the metal went another way</source>
        <translation type="unfinished">das Metall ging einen anderen Weg</translation>
    </message>
    <message>
        <source>{n} of {n2} hands were for what happened</source>
        <translation type="unfinished">{n} von {n2} Händen waren für das, was geschah</translation>
    </message>
    <message>
        <source>How near it was: {part} carried at most {n} of what it can hold {until}</source>
        <translation type="unfinished">Wie nah es war: {part} trug höchstens {n} dessen, was es halten kann, {until}</translation>
    </message>
    <message>
        <source>in this push</source>
        <translation type="unfinished">in diesem Druck</translation>
    </message>
    <message>
        <source>before something else gave</source>
        <translation type="unfinished">bevor etwas anderes nachgab</translation>
    </message>
    <message>
        <source>It went {length} {way}</source>
        <translation type="unfinished">Sie ging {length} {way}</translation>
    </message>
    <message>
        <source>{text}, at {length} and {force}</source>
        <translation type="unfinished">{text}, bei {length} und {force}</translation>
    </message>
    <message>
        <source>{n} hands counted, not compared</source>
        <translation type="unfinished">{n} Hände gezählt, nicht verglichen</translation>
    </message>
    <message>
        <source>It stayed within {length}</source>
        <translation type="unfinished">Sie blieb innerhalb {length}</translation>
    </message>
    <message>
        <source>It stayed within{length}</source>
        <translation type="unfinished">Sie blieb innerhalb {length}</translation>
    </message>
    <message>
        <source>read the two together</source>
        <translation type="unfinished">beides zusammen lesen</translation>
    </message>
    <message>
        <source>As far as it went: {text}</source>
        <translation type="unfinished">So weit es ging: {text}</translation>
    </message>
    <message>
        <source>Not settled: some steps did not come to rest</source>
        <translation type="unfinished">Nicht gesichert: Einige Schritte kamen nicht zur Ruhe</translation>
    </message>
    <message>
        <source>This is the car before its wreck, not yet what the first move finds: work the wreck out first</source>
        <translation type="unfinished">Dies ist das Auto vor seinem Unfall, noch nicht, was der erste Schritt vorfindet: erst den Unfall ausrechnen</translation>
    </message>
    <message>
        <source>Work it out again to watch</source>
        <translation type="unfinished">Zum Zusehen neu ausrechnen</translation>
    </message>
    <message>
        <source>Watch it</source>
        <translation type="unfinished">Ansehen</translation>
    </message>
    <message>
        <source>Before the plan: a saved start</source>
        <translation type="unfinished">Vor dem Plan: ein gespeicherter Anfang</translation>
    </message>
    <message>
        <source>Before the plan</source>
        <translation type="unfinished">Vor dem Plan</translation>
    </message>
    <message>
        <source>Not worked out yet: the car is shown as it was before</source>
        <translation type="unfinished">Noch nicht ausgerechnet: das Auto ist gezeigt, wie es vorher war</translation>
    </message>
    <message>
        <source>Not read yet: the car is shown as it was before</source>
        <translation type="unfinished">Noch nicht gelesen: das Auto ist gezeigt, wie es vorher war</translation>
    </message>
    <message>
        <source>Pressed in {length} of {whole}</source>
        <translation type="unfinished">{length} von {whole} eingedrückt</translation>
    </message>
    <message>
        <source>Kept results are shown; the wreck itself has not been worked out here</source>
        <translation type="unfinished">Aufbewahrte Ergebnisse sind gezeigt; der Unfall selbst ist hier nicht ausgerechnet</translation>
    </message>
    <message>
        <source>As it was found: {text}</source>
        <translation type="unfinished">Wie vorgefunden: {text}</translation>
    </message>
    <message>
        <source>The car before its wreck</source>
        <translation type="unfinished">Das Auto vor seinem Unfall</translation>
    </message>
    <message>
        <source>so far {text}</source>
        <translation type="unfinished">bisher {text}</translation>
    </message>
    <message>
        <source>Went in {length}</source>
        <translation type="unfinished">{length} hineingegangen</translation>
    </message>
    <message>
        <source>Running the plan many times: {text}</source>
        <translation type="unfinished">Der Plan wird viele Male gerechnet: {text}</translation>
    </message>
    <message>
        <source>Esc stops it</source>
        <translation type="unfinished">Esc hält an</translation>
    </message>
    <message>
        <source>What may happen is kept shut until prediction and outcome have been compared</source>
        <translation type="unfinished">Was geschehen kann, ist verschlossen, bis Vorhersage und Ergebnis verglichen sind</translation>
    </message>
    <message>
        <source>until prediction and outcome have been compared</source>
        <translation type="unfinished">bis Vorhersage und Ergebnis verglichen sind</translation>
    </message>
    <message>
        <source>key T opens it</source>
        <translation type="unfinished">Taste T öffnet es</translation>
    </message>
    <message>
        <source>A plan from a file…</source>
        <translation type="unfinished">Ein Plan aus einer Datei …</translation>
    </message>
    <message>
        <source>A plan from a file</source>
        <translation type="unfinished">Ein Plan aus einer Datei</translation>
    </message>
    <message>
        <source>First compare prediction and outcome, or put the card away</source>
        <translation type="unfinished">Erst Vorhersage und Ergebnis vergleichen oder die Karte weglegen</translation>
    </message>
    <message>
        <source>There is no other plan to put beside this one: open or change one first</source>
        <translation type="unfinished">Es gibt keinen anderen Plan zum Danebenstellen: erst einen öffnen oder ändern</translation>
    </message>
    <message>
        <source>Step {n}: {text}</source>
        <translation type="unfinished">Schritt {n}: {text}</translation>
    </message>
    <message>
        <source>The runs were lost through a fault of the program; your plan is untouched</source>
        <translation type="unfinished">Die Rechnungen gingen durch einen Fehler des Programms verloren; Ihr Plan ist unberührt</translation>
    </message>
    <message>
        <source>many runs</source>
        <translation type="unfinished">viele Rechnungen</translation>
    </message>
    <message>
        <source>The checks could not be started: {text}</source>
        <translation type="unfinished">Die Prüfungen ließen sich nicht starten: {text}</translation>
    </message>
    <message>
        <source>The checks met a fault of the program: {text}</source>
        <translation type="unfinished">Die Prüfungen trafen auf einen Fehler des Programms: {text}</translation>
    </message>
    <message>
        <source>A check met a fault of the program: {text}</source>
        <translation type="unfinished">Eine Prüfung traf auf einen Fehler des Programms: {text}</translation>
    </message>
    <message>
        <source>{scale}, plan {hash}, model {n}</source>
        <translation type="unfinished">{scale}, Plan {hash}, Modell {n}</translation>
    </message>
    <message>
        <source>The pictures could not be made</source>
        <translation type="unfinished">Die Bilder ließen sich nicht machen</translation>
    </message>
    <message>
        <source>There is no move to take a moment of: add a spread first</source>
        <translation type="unfinished">Es gibt keinen Schritt, von dem ein Moment zu nehmen wäre: erst ein Spreizen anfügen</translation>
    </message>
    <message>
        <source>This one is in the list already</source>
        <translation type="unfinished">Dieser steht schon in der Liste</translation>
    </message>
    <message>
        <source>Making the pictures: {n} of {n2}</source>
        <translation type="unfinished">Die Bilder werden gemacht: {n} von {n2}</translation>
    </message>
    <message>
        <source>Making the pictures: {n} of {n2}, {name}</source>
        <translation type="unfinished">Die Bilder werden gemacht: {n} von {n2}, {name}</translation>
    </message>
    <message>
        <source>Stopped after {n} of {n2} pictures: {text}</source>
        <translation type="unfinished">Nach {n} von {n2} Bildern angehalten: {text}</translation>
    </message>
    <message>
        <source>working out {name}</source>
        <translation type="unfinished">{name} wird gerechnet</translation>
    </message>
    <message>
        <source>{n} picture with captions and alt texts: {text}</source>
        <translation type="unfinished">{n} Bild mit Bildunterschriften und Alternativtexten: {text}</translation>
    </message>
    <message>
        <source>{n} pictures with captions and alt texts: {text}</source>
        <translation type="unfinished">{n} Bilder mit Bildunterschriften und Alternativtexten: {text}</translation>
    </message>
    <message>
        <source>{n} {many} with captions and alt texts: {text}</source>
        <translation type="unfinished">{n} {many} mit Bildunterschriften und Alternativtexten: {text}</translation>
    </message>
    <message>
        <source>Open a list of figures</source>
        <translation type="unfinished">Eine Bilderliste öffnen</translation>
    </message>
    <message>
        <source>Lists of figures (*.toml)</source>
        <translation type="unfinished">Bilderlisten (*.toml)</translation>
    </message>
    <message>
        <source>Folder for the pictures</source>
        <translation type="unfinished">Ordner für die Bilder</translation>
    </message>
    <message>
        <source>{name} was not opened: {text}</source>
        <translation type="unfinished">{name} wurde nicht geöffnet: {text}</translation>
    </message>
    <message>
        <source>{name} was not written: {text}</source>
        <translation type="unfinished">{name} wurde nicht geschrieben: {text}</translation>
    </message>
    <message>
        <source>{name} was not {what}: {text}</source>
        <translation type="unfinished">{name} wurde nicht {what}: {text}</translation>
    </message>
    <message>
        <source>opened</source>
        <translation type="unfinished">geöffnet</translation>
    </message>
    <message>
        <source>written</source>
        <translation type="unfinished">geschrieben</translation>
    </message>
    <message>
        <source>saved</source>
        <translation type="unfinished">gespeichert</translation>
    </message>
    <message>
        <source>the process that draws ended by itself</source>
        <translation type="unfinished">der zeichnende Prozess endete von selbst</translation>
    </message>
    <message>
        <source>it is a scenario and no plan; run it with "hemline scenario"</source>
        <translation type="unfinished">es ist ein Szenario und kein Plan; mit „hemline scenario“ ausführen</translation>
    </message>
    <message>
        <source>it is a list of figures and no plan; menu File, Matching pictures, opens it</source>
        <translation type="unfinished">es ist eine Bilderliste und kein Plan; Menü Datei, Zusammengehörige Bilder, öffnet sie</translation>
    </message>
    <message>
        <source>it is a lesson; menu Teach, Open a lesson, opens it</source>
        <translation type="unfinished">es ist eine Lektion; Menü Lehren, Eine Lektion öffnen, öffnet sie</translation>
    </message>
    <message>
        <source>it {text}</source>
        <translation type="unfinished">es {text}</translation>
    </message>
    <message>
        <source>Plans (*.toml)</source>
        <translation type="unfinished">Pläne (*.toml)</translation>
    </message>
    <message>
        <source>Neither choices nor this sitting can be kept: free some space, or ask for the right to write in {path}</source>
        <translation type="unfinished">Weder Wahl noch Sitzung lassen sich aufbewahren: Platz schaffen oder um das Recht bitten, hier zu schreiben: {path}</translation>
    </message>
    <message>
        <source>Neither choices nor this sitting can be kept: free some space, or ask for the right to write in</source>
        <translation type="unfinished">Weder Wahl noch Sitzung lassen sich aufbewahren: Platz schaffen oder um das Recht bitten, hier zu schreiben:</translation>
    </message>
    <message>
        <source>Mesh with its numbers (*.vtu)</source>
        <translation type="unfinished">Netz mit seinen Zahlen (*.vtu)</translation>
    </message>
    <message>
        <source>Shapes with their parts (*.glb)</source>
        <translation type="unfinished">Formen mit ihren Teilen (*.glb)</translation>
    </message>
    <message>
        <source>Plain shape (*.stl)</source>
        <translation type="unfinished">Bloße Form (*.stl)</translation>
    </message>
    <message>
        <source>Table of the nodes (*.csv)</source>
        <translation type="unfinished">Tabelle der Knoten (*.csv)</translation>
    </message>
    <message>
        <source>Untouched shells for a solver (*.inp)</source>
        <translation type="unfinished">Unberührte Schalen für einen Löser (*.inp)</translation>
    </message>
    <message>
        <source>{text}: at the next start, beim nächsten Start</source>
        <translation type="unfinished">{text}: beim nächsten Start</translation>
    </message>
    <message>
        <source>Ready plan: the contrast</source>
        <translation type="unfinished">Fertiger Plan: das Gegenstück</translation>
    </message>
    <message>
        <source>Open a plan</source>
        <translation type="unfinished">Einen Plan öffnen</translation>
    </message>
    <message>
        <source>Save the metal of this moment</source>
        <translation type="unfinished">Das Metall dieses Moments speichern</translation>
    </message>
    <message>
        <source>What this machine has</source>
        <translation type="unfinished">Was dieser Rechner hat</translation>
    </message>
    <message>
        <source>What was found, a word for it, and what to do</source>
        <translation type="unfinished">Was gefunden wurde, ein Wort dafür, und was zu tun ist</translation>
    </message>
    <message>
        <source>What happened in the program</source>
        <translation type="unfinished">Was im Programm geschah</translation>
    </message>
    <message>
        <source>Log and machine</source>
        <translation type="unfinished">Protokoll und Rechner</translation>
    </message>
    <message>
        <source>The moment in words</source>
        <translation type="unfinished">Der Moment in Worten</translation>
    </message>
    <message>
        <source>Hemline was not closed the last time</source>
        <translation type="unfinished">Hemline wurde letztes Mal nicht geschlossen</translation>
    </message>
    <message>
        <source>Everything is as it was at {text}</source>
        <translation type="unfinished">Alles ist, wie es war: {text}</translation>
    </message>
    <message>
        <source>Everything is as it was</source>
        <translation type="unfinished">Alles ist, wie es war</translation>
    </message>
    <message>
        <source>{text} File, Bring back the last sitting: shows it again</source>
        <translation type="unfinished">{text} Datei, Die letzte Sitzung zurückholen: zeigt sie wieder</translation>
    </message>
    <message>
        <source>File, Bring back the last sitting: shows it again</source>
        <translation type="unfinished">Datei, Die letzte Sitzung zurückholen: zeigt sie wieder</translation>
    </message>
    <message>
        <source>There is no sitting that was left behind</source>
        <translation type="unfinished">Es gibt keine zurückgelassene Sitzung</translation>
    </message>
    <message>
        <source>What was kept of the last sitting could not be read; it was put aside as {name}</source>
        <translation type="unfinished">Was von der letzten Sitzung aufbewahrt war, ist nicht lesbar; es liegt nun als {name} daneben</translation>
    </message>
    <message>
        <source>Run the plan to its end, or open a lesson: a sheet is made from what came out</source>
        <translation type="unfinished">Den Plan bis zum Ende ausführen oder eine Lektion öffnen: ein Blatt entsteht aus dem, was herauskam</translation>
    </message>
    <message>
        <source>Save the sheet</source>
        <translation type="unfinished">Das Blatt speichern</translation>
    </message>
    <message>
        <source>Making the sheet: {name} …</source>
        <translation type="unfinished">Das Blatt wird gemacht: {name} …</translation>
    </message>
    <message>
        <source>A plan</source>
        <translation type="unfinished">Ein Plan</translation>
    </message>
    <message>
        <source>Open a lesson</source>
        <translation type="unfinished">Eine Lektion öffnen</translation>
    </message>
    <message>
        <source>Lessons (*.toml)</source>
        <translation type="unfinished">Lektionen (*.toml)</translation>
    </message>
    <message>
        <source>Fields of this lesson that Hemline does not know: {text}</source>
        <translation type="unfinished">Felder dieser Lektion, die Hemline nicht kennt: {text}</translation>
    </message>
    <message>
        <source>No lesson is open; the menu Teach opens one</source>
        <translation type="unfinished">Keine Lektion ist offen; das Menü Lehren öffnet eine</translation>
    </message>
    <message>
        <source>This lesson asks nothing that a run could answer; its check is at the end of its steps</source>
        <translation type="unfinished">Diese Lektion fragt nichts, was eine Rechnung beantworten könnte; ihre Prüfung steht am Ende der Schritte</translation>
    </message>
    <message>
        <source>What is put in force replaces what was; the old file is kept beside it</source>
        <translation type="unfinished">Was in Kraft gesetzt wird, ersetzt das Alte; die alte Datei bleibt daneben</translation>
    </message>
    <message>
        <source>The model says of this plan: first to give, {what}</source>
        <translation type="unfinished">Das Modell sagt zu diesem Plan: zuerst gibt nach: {what}</translation>
    </message>
    <message>
        <source>Run the plan first</source>
        <translation type="unfinished">Erst den Plan ausführen</translation>
    </message>
    <message>
        <source>The rules before them lie in {name}</source>
        <translation type="unfinished">Die Regeln davor liegen in {name}</translation>
    </message>
    <message>
        <source>In force</source>
        <translation type="unfinished">In Kraft</translation>
    </message>
    <message>
        <source>The drill log could not be written in {path}</source>
        <translation type="unfinished">Das Übungsprotokoll ließ sich nicht schreiben in {path}</translation>
    </message>
    <message>
        <source>The drill log could not be deleted</source>
        <translation type="unfinished">Das Übungsprotokoll ließ sich nicht löschen</translation>
    </message>
    <message>
        <source>The local rules were not read: {text}</source>
        <translation type="unfinished">Die örtlichen Regeln wurden nicht gelesen: {text}</translation>
    </message>
    <message>
        <source>Not put in force</source>
        <translation type="unfinished">Nicht in Kraft gesetzt</translation>
    </message>
    <message>
        <source>The program met a fault</source>
        <translation type="unfinished">Das Programm traf auf einen Fehler</translation>
    </message>
    <message>
        <source>what you did is kept</source>
        <translation type="unfinished">was Sie taten, ist aufbewahrt</translation>
    </message>
    <message>
        <source>Help, What happened in the program, has a report</source>
        <translation type="unfinished">Hilfe, Was im Programm geschah, hat einen Bericht</translation>
    </message>
    <message>
        <source>Layer {n}</source>
        <translation type="unfinished">Schicht {n}</translation>
    </message>
    <message>
        <source>runs: {n} of {n2}</source>
        <translation type="unfinished">Rechnungen: {n} von {n2}</translation>
    </message>
    <message>
        <source>{n} failed or not settled</source>
        <translation type="unfinished">{n} misslungen oder nicht gesichert</translation>
    </message>
    <message>
        <source>{text}: {n} of {n2} runs</source>
        <translation type="unfinished">{text}: {n} von {n2} Rechnungen</translation>
    </message>
    <message>
        <source>The map was lost through a fault of the program; your plan is untouched</source>
        <translation type="unfinished">Die Karte ging durch einen Fehler des Programms verloren; Ihr Plan ist unberührt</translation>
    </message>
    <message>
        <source>In a cell that changes the left half is the first, the right half the second</source>
        <translation type="unfinished">In einem Feld, das sich ändert, ist die linke Hälfte der erste, die rechte der zweite</translation>
    </message>
    <message>
        <source>model {n}</source>
        <translation type="unfinished">Modell {n}</translation>
    </message>
    <message>
        <source>Set tip one at a place of the map</source>
        <translation type="unfinished">Spitze eins an eine Stelle der Karte gesetzt</translation>
    </message>
    <message>
        <source>map: {n} of about {n2} runs</source>
        <translation type="unfinished">Karte: {n} von etwa {n2} Rechnungen</translation>
    </message>
    <message>
        <source>What changes: {a}; {b}</source>
        <translation type="unfinished">Was sich ändert: {a}; {b}</translation>
    </message>
    <message>
        <source>Added: {what}</source>
        <translation type="unfinished">Angefügt: {what}</translation>
    </message>
    <message>
        <source>Put move {n} at place {n2}</source>
        <translation type="unfinished">Schritt {n} an Stelle {n2} gesetzt</translation>
    </message>
    <message>
        <source>Took out what was before the plan</source>
        <translation type="unfinished">Herausgenommen, was vor dem Plan war</translation>
    </message>
    <message>
        <source>Took out move {n}</source>
        <translation type="unfinished">Schritt {n} herausgenommen</translation>
    </message>
    <message>
        <source>No move is chosen</source>
        <translation type="unfinished">Kein Schritt ist gewählt</translation>
    </message>
    <message>
        <source>It cannot be done so: {text}</source>
        <translation type="unfinished">So geht es nicht: {text}</translation>
    </message>
    <message>
        <source>A prediction is open: compare it before the plan is changed</source>
        <translation type="unfinished">Eine Vorhersage ist offen: erst vergleichen, dann den Plan ändern</translation>
    </message>
    <message>
        <source>Changed the wreck: {what}</source>
        <translation type="unfinished">Unfall geändert: {what}</translation>
    </message>
    <message>
        <source>Took a move out of the wreck</source>
        <translation type="unfinished">Einen Schritt aus dem Unfall genommen</translation>
    </message>
    <message>
        <source>The plan begins with a saved start; take that out before another wreck</source>
        <translation type="unfinished">Der Plan beginnt mit einem gespeicherten Anfang; erst diesen herausnehmen, dann ein anderer Unfall</translation>
    </message>
    <message>
        <source>Added to the wreck</source>
        <translation type="unfinished">Dem Unfall angefügt</translation>
    </message>
    <message>
        <source>Stops at {what}</source>
        <translation type="unfinished">Hält bei {what}</translation>
    </message>
    <message>
        <source>Goes on past {what}</source>
        <translation type="unfinished">Geht weiter über {what}</translation>
    </message>
    <message>
        <source>A prediction is open: nothing of the outcome is shown</source>
        <translation type="unfinished">Eine Vorhersage ist offen: vom Ergebnis wird nichts gezeigt</translation>
    </message>
    <message>
        <source>Lock it (L)</source>
        <translation type="unfinished">Festlegen (L)</translation>
    </message>
    <message>
        <source>The prediction is locked</source>
        <translation type="unfinished">Die Vorhersage ist festgelegt</translation>
    </message>
    <message>
        <source>Run the push (Return), then compare (R)</source>
        <translation type="unfinished">Den Druck ausführen (Eingabe), dann vergleichen (R)</translation>
    </message>
    <message>
        <source>Prediction and outcome are compared</source>
        <translation type="unfinished">Vorhersage und Ergebnis sind verglichen</translation>
    </message>
    <message>
        <source>Answers are shut (T opens them)</source>
        <translation type="unfinished">Antworten sind geschlossen (T öffnet sie)</translation>
    </message>
    <message>
        <source>Page {n} of {n2}</source>
        <translation type="unfinished">Seite {n} von {n2}</translation>
    </message>
    <message>
        <source>the disk is full; free some space and run it again</source>
        <translation type="unfinished">die Platte ist voll; Platz schaffen und noch einmal ausführen</translation>
    </message>
    <message>
        <source>the disk is full; free some space and try again</source>
        <translation type="unfinished">die Platte ist voll; Platz schaffen und noch einmal versuchen</translation>
    </message>
    <message>
        <source>your share of the disk is used up; free some space and run it again</source>
        <translation type="unfinished">Ihr Anteil der Platte ist aufgebraucht; Platz schaffen und noch einmal ausführen</translation>
    </message>
    <message>
        <source>your share of the disk is used up; free some space and try again</source>
        <translation type="unfinished">Ihr Anteil der Platte ist aufgebraucht; Platz schaffen und noch einmal versuchen</translation>
    </message>
    <message>
        <source>may not be used by you; choose another place or ask for the right to it</source>
        <translation type="unfinished">dürfen Sie nicht verwenden; einen anderen Ort wählen oder um das Recht bitten</translation>
    </message>
    <message>
        <source>stands on a disk that is read-only; choose another place</source>
        <translation type="unfinished">steht auf einer schreibgeschützten Platte; einen anderen Ort wählen</translation>
    </message>
    <message>
        <source>lies under something that is not a folder; check the path</source>
        <translation type="unfinished">liegt unter etwas, das kein Ordner ist; den Pfad prüfen</translation>
    </message>
    <message>
        <source>is a folder; name a file</source>
        <translation type="unfinished">ist ein Ordner; eine Datei nennen</translation>
    </message>
    <message>
        <source>is a file; name a folder</source>
        <translation type="unfinished">ist eine Datei; einen Ordner nennen</translation>
    </message>
    <message>
        <source>has too long a name; choose a shorter one</source>
        <translation type="unfinished">hat einen zu langen Namen; einen kürzeren wählen</translation>
    </message>
    <message>
        <source>cannot be used ({why}); choose another place</source>
        <translation type="unfinished">kann nicht verwendet werden ({why}); einen anderen Ort wählen</translation>
    </message>
    <message>
        <source>{place} above the sill</source>
        <translation type="unfinished">{place} über dem Schweller</translation>
    </message>
    <message>
        <source>{place} behind the hinges</source>
        <translation type="unfinished">{place} hinter den Scharnieren</translation>
    </message>
    <message>
        <source>{place} outboard of the belt</source>
        <translation type="unfinished">{place} außerhalb der Brüstung</translation>
    </message>
    <message>
        <source>Width {text}: along the car {a}, outboard {b}, up {c}</source>
        <translation type="unfinished">Weite {text}: längs {a}, nach außen {b}, hoch {c}</translation>
    </message>
    <message>
        <source>Width {length}</source>
        <translation type="unfinished">Weite {length}</translation>
    </message>
    <message>
        <source>Gap {length}</source>
        <translation type="unfinished">Spalt {length}</translation>
    </message>
    <message>
        <source>Angle {text}</source>
        <translation type="unfinished">Winkel {text}</translation>
    </message>
    <message>
        <source>Distance {text}</source>
        <translation type="unfinished">Abstand {text}</translation>
    </message>
    <message>
        <source>{length} torn</source>
        <translation type="unfinished">{length} gerissen</translation>
    </message>
    <message>
        <source>{part} alone</source>
        <translation type="unfinished">nur: {part}</translation>
    </message>
    <message>
        <source>Work out the wreck</source>
        <translation type="unfinished">Den Unfall ausrechnen</translation>
    </message>
    <message>
        <source>{n} nodes</source>
        <translation type="unfinished">{n} Knoten</translation>
    </message>
    <message>
        <source>{n} steps</source>
        <translation type="unfinished">{n} Schritte</translation>
    </message>
    <message>
        <source>New plan</source>
        <translation type="unfinished">Neuer Plan</translation>
    </message>
    <message>
        <source>Something went wrong inside the program</source>
        <translation type="unfinished">Im Programm ging etwas schief</translation>
    </message>
    <message>
        <source>your plan is untouched</source>
        <translation type="unfinished">Ihr Plan ist unberührt</translation>
    </message>
    <message>
        <source>The report says where</source>
        <translation type="unfinished">Der Bericht sagt, wo</translation>
    </message>
    <message>
        <source>The solver's process ended by itself; your plan is untouched. Run it again to start another</source>
        <translation type="unfinished">Der rechnende Prozess endete von selbst; Ihr Plan ist unberührt. Noch einmal ausführen startet einen neuen</translation>
    </message>
    <message>
        <source>Help, Will it run here: says what helps</source>
        <translation type="unfinished">Hilfe, Läuft es hier: sagt, was hilft</translation>
    </message>
    <message>
        <source>No window can draw in three dimensions here, so the stage shows still pictures</source>
        <translation type="unfinished">Hier kann kein Fenster dreidimensional zeichnen, darum zeigt die Bühne Standbilder</translation>
    </message>
    <message>
        <source>all else works as it does</source>
        <translation type="unfinished">alles andere geht wie sonst</translation>
    </message>
    <message>
        <source>Nothing can be drawn in three dimensions here</source>
        <translation type="unfinished">Hier lässt sich nichts dreidimensional zeichnen</translation>
    </message>
    <message>
        <source>Section, ladder, work, force and sentence work as they do</source>
        <translation type="unfinished">Schnitt, Leiter, Arbeit, Kraft und Satz gehen wie sonst</translation>
    </message>
    <message>
        <source>Tip one: {text}</source>
        <translation type="unfinished">Spitze eins: {text}</translation>
    </message>
    <message>
        <source>Tip two: {text}</source>
        <translation type="unfinished">Spitze zwei: {text}</translation>
    </message>
    <message>
        <source>Tip one: {seat}. Tip two: {other}</source>
        <translation type="unfinished">Spitze eins: {seat}. Spitze zwei: {other}</translation>
    </message>
    <message>
        <source>Next: {text}</source>
        <translation type="unfinished">Als Nächstes: {text}</translation>
    </message>
    <message>
        <source>Wait until the metal has come to rest</source>
        <translation type="unfinished">Warten, bis das Metall zur Ruhe gekommen ist</translation>
    </message>
    <message>
        <source>Set tip one</source>
        <translation type="unfinished">Spitze eins gesetzt</translation>
    </message>
    <message>
        <source>Set tip two</source>
        <translation type="unfinished">Spitze zwei gesetzt</translation>
    </message>
    <message>
        <source>A tip would be in the air on the {part} here</source>
        <translation type="unfinished">Eine Spitze wäre hier an {part:dative} in der Luft</translation>
    </message>
    <message>
        <source>Tip two follows on the inner panel</source>
        <translation type="unfinished">Spitze zwei folgt am Innenblech</translation>
    </message>
    <message>
        <source>Set tip one first: click the edge of the door</source>
        <translation type="unfinished">Erst Spitze eins setzen: auf die Kante der Tür klicken</translation>
    </message>
    <message>
        <source>Ctrl+E changes the move</source>
        <translation type="unfinished">Strg+E ändert den Schritt</translation>
    </message>
    <message>
        <source>{share} of the push goes into the outer skin's lip, the rest into the inner panel</source>
        <translation type="unfinished">{share} des Drucks gehen in die Kante der Außenhaut, der Rest in das Innenblech</translation>
    </message>
    <message>
        <source>Lock the prediction first (L), or put the card away</source>
        <translation type="unfinished">Erst die Vorhersage festlegen (L) oder die Karte weglegen</translation>
    </message>
    <message>
        <source>Run the push to its end first (Return)</source>
        <translation type="unfinished">Den Druck erst bis zum Ende ausführen (Eingabe)</translation>
    </message>
    <message>
        <source>There is nothing to foretell of this move; select a push</source>
        <translation type="unfinished">Zu diesem Schritt gibt es nichts vorherzusagen; einen Druck wählen</translation>
    </message>
    <message>
        <source>it holds for this sitting</source>
        <translation type="unfinished">sie gilt für diese Sitzung</translation>
    </message>
    <message>
        <source>{path} cannot be written; the prediction is kept in {other}</source>
        <translation type="unfinished">{path} kann nicht geschrieben werden; die Vorhersage liegt in {other}</translation>
    </message>
    <message>
        <source>The prediction could not be written to {name} ({why}); it holds for this sitting</source>
        <translation type="unfinished">Die Vorhersage ließ sich nicht nach {name} schreiben ({why}); sie gilt für diese Sitzung</translation>
    </message>
    <message>
        <source>The prediction could not be written to {name}</source>
        <translation type="unfinished">Die Vorhersage ließ sich nicht schreiben: {name}</translation>
    </message>
    <message>
        <source>Tip one on another edge</source>
        <translation type="unfinished">Spitze eins an einer anderen Kante</translation>
    </message>
    <message>
        <source>Tip two on another seat</source>
        <translation type="unfinished">Spitze zwei an einem anderen Sitz</translation>
    </message>
    <message>
        <source>Moved tip two</source>
        <translation type="unfinished">Spitze zwei versetzt</translation>
    </message>
    <message>
        <source>Moved the tip along the edge</source>
        <translation type="unfinished">Spitze an der Kante versetzt</translation>
    </message>
    <message>
        <source>Depth {length}</source>
        <translation type="unfinished">Tiefe {length}</translation>
    </message>
    <message>
        <source>Tilt {text}</source>
        <translation type="unfinished">Neigung {text}</translation>
    </message>
    <message>
        <source>No choice can be changed after this, and nothing of the outcome is shown before it (L)</source>
        <translation type="unfinished">Danach lässt sich keine Wahl mehr ändern, und davor wird vom Ergebnis nichts gezeigt (L)</translation>
    </message>
    <message>
        <source>Locked at {at}</source>
        <translation type="unfinished">Festgelegt um {at}</translation>
    </message>
    <message>
        <source>Run the push (Return) and watch the metal</source>
        <translation type="unfinished">Den Druck ausführen (Eingabe) und das Metall ansehen</translation>
    </message>
    <message>
        <source>then compare</source>
        <translation type="unfinished">dann vergleichen</translation>
    </message>
    <message>
        <source>Watch the push to its end</source>
        <translation type="unfinished">Den Druck bis zum Ende ansehen</translation>
    </message>
    <message>
        <source>compare when the class is ready</source>
        <translation type="unfinished">vergleichen, wenn die Klasse so weit ist</translation>
    </message>
    <message>
        <source>the rest</source>
        <translation type="unfinished">das Übrige</translation>
    </message>
    <message>
        <source>{n} steps, {n2} end</source>
        <translation type="unfinished">{n} Schritte, {n2} Ende</translation>
    </message>
    <message>
        <source>{n} steps, {n2} ends</source>
        <translation type="unfinished">{n} Schritte, {n2} Enden</translation>
    </message>
    <message>
        <source>{n} steps, {n2} {ends}</source>
        <translation type="unfinished">{n} Schritte, {n2} {ends}</translation>
    </message>
    <message>
        <source>Nothing is lost</source>
        <translation type="unfinished">Nichts geht verloren</translation>
    </message>
    <message>
        <source>the present one</source>
        <translation type="unfinished">der jetzige</translation>
    </message>
    <message>
        <source>Step {n} of {n2}: {text}</source>
        <translation type="unfinished">Schritt {n} von {n2}: {text}</translation>
    </message>
    <message>
        <source>Changed the tool's tip width</source>
        <translation type="unfinished">Breite der Spitze geändert</translation>
    </message>
    <message>
        <source>Changed the tool's tip length</source>
        <translation type="unfinished">Länge der Spitze geändert</translation>
    </message>
    <message>
        <source>Changed the tool's friction</source>
        <translation type="unfinished">Reibung geändert</translation>
    </message>
    <message>
        <source>Changed the tool's {what}</source>
        <translation type="unfinished">Gerät geändert: {what}</translation>
    </message>
    <message>
        <source>Changed the tool's curve</source>
        <translation type="unfinished">Kurve des Geräts geändert</translation>
    </message>
    <message>
        <source>{what} of point {n}</source>
        <translation type="unfinished">{what} von Punkt {n}</translation>
    </message>
    <message>
        <source>Took the {tool}</source>
        <translation type="unfinished">Genommen: {tool}</translation>
    </message>
    <message>
        <source>Hands for: {text}</source>
        <translation type="unfinished">Hände für: {text}</translation>
    </message>
    <message>
        <source>not chosen</source>
        <translation type="unfinished">nicht gewählt</translation>
    </message>
    <message>
        <source>chosen</source>
        <translation type="unfinished">gewählt</translation>
    </message>
    <message>
        <source>{text}, {n} hands</source>
        <translation type="unfinished">{text}, {n} Hände</translation>
    </message>
    <message>
        <source>{n} hands</source>
        <translation type="unfinished">{n} Hände</translation>
    </message>
    <message>
        <source>{n} found; first: {words}</source>
        <translation type="unfinished">{n} gefunden; zuerst: {words}</translation>
    </message>
    <message>
        <source>Colours from {low} to {high}</source>
        <translation type="unfinished">Farben von {low} bis {high}</translation>
    </message>
    <message>
        <source>Step {n}, {phase}: {text}</source>
        <translation type="unfinished">Schritt {n}, {phase}: {text}</translation>
    </message>
    <message>
        <source>Bridge sheet: from the screen to the metal</source>
        <translation type="unfinished">Brückenblatt: vom Bildschirm zum Metall</translation>
    </message>
    <message>
        <source>Bridge sheet</source>
        <translation type="unfinished">Brückenblatt</translation>
    </message>
    <message>
        <source>Evaluation sheet, by seat number</source>
        <translation type="unfinished">Bewertungsblatt, nach Platznummer</translation>
    </message>
    <message>
        <source>Evaluation sheet</source>
        <translation type="unfinished">Bewertungsblatt</translation>
    </message>
    <message>
        <source>Handout for the class</source>
        <translation type="unfinished">Handzettel für die Klasse</translation>
    </message>
    <message>
        <source>Drill log</source>
        <translation type="unfinished">Übungsprotokoll</translation>
    </message>
    <message>
        <source>Log: what the model said, what the metal did</source>
        <translation type="unfinished">Protokoll: was das Modell sagte, was das Metall tat</translation>
    </message>
    <message>
        <source>The next drills</source>
        <translation type="unfinished">Die nächsten Übungen</translation>
    </message>
    <message>
        <source>One line a drill: by plan and date, with no names and no make. A drill that could not be seen counts neither way.</source>
        <translation type="unfinished">Eine Zeile je Übung: nach Plan und Datum, ohne Namen und ohne Marke. Eine Übung, bei der nichts zu sehen war, zählt weder so noch so.</translation>
    </message>
    <message>
        <source>Write it down before anybody talks it over.</source>
        <translation type="unfinished">Aufschreiben, bevor jemand darüber spricht.</translation>
    </message>
    <message>
        <source>The model said</source>
        <translation type="unfinished">Das Modell sagte</translation>
    </message>
    <message>
        <source>Agree</source>
        <translation type="unfinished">Stimmt</translation>
    </message>
    <message>
        <source>Door, note</source>
        <translation type="unfinished">Tür, Notiz</translation>
    </message>
    <message>
        <source>yes</source>
        <translation type="unfinished">ja</translation>
    </message>
    <message>
        <source>no</source>
        <translation type="unfinished">nein</translation>
    </message>
    <message>
        <source>Test on paper, with its key</source>
        <translation type="unfinished">Test auf Papier, mit Lösung</translation>
    </message>
    <message>
        <source>Review sheet for experts</source>
        <translation type="unfinished">Prüfblatt für Fachleute</translation>
    </message>
    <message>
        <source>Review sheet</source>
        <translation type="unfinished">Prüfblatt</translation>
    </message>
    <message>
        <source>The whole lesson on paper</source>
        <translation type="unfinished">Die ganze Lektion auf Papier</translation>
    </message>
    <message>
        <source>Letter</source>
        <translation type="unfinished">Letter</translation>
    </message>
    <message>
        <source>Table: {what}</source>
        <translation type="unfinished">Tabelle: {what}</translation>
    </message>
    <message>
        <source>also called</source>
        <translation type="unfinished">heißt auch</translation>
    </message>
    <message>
        <source>The last page</source>
        <translation type="unfinished">Die letzte Seite</translation>
    </message>
    <message>
        <source>The contrast</source>
        <translation type="unfinished">Das Gegenstück</translation>
    </message>
    <message>
        <source>Edge attack</source>
        <translation type="unfinished">Angriff am Rand</translation>
    </message>
    <message>
        <source>A wreck before the plan</source>
        <translation type="unfinished">Ein Unfall vor dem Plan</translation>
    </message>
    <message>
        <source>Answered: {text}</source>
        <translation type="unfinished">Geantwortet: {text}</translation>
    </message>
    <message>
        <source>Question {n} of {n2}</source>
        <translation type="unfinished">Frage {n} von {n2}</translation>
    </message>
    <message>
        <source>Question {n} of {n2}{told}</source>
        <translation type="unfinished">Frage {n} von {n2}{told}</translation>
    </message>
    <message>
        <source>Stop at an event: none chosen (J)</source>
        <translation type="unfinished">Bei einem Ereignis halten: keines gewählt (J)</translation>
    </message>
    <message>
        <source>The tool is drawn back and the metal springs back (Space)</source>
        <translation type="unfinished">Das Gerät wird zurückgezogen, und das Metall federt zurück (Leertaste)</translation>
    </message>
    <message>
        <source>Stop at an event</source>
        <translation type="unfinished">Bei einem Ereignis halten</translation>
    </message>
    <message>
        <source>Played at {pace} (W)</source>
        <translation type="unfinished">Abgespielt mit {pace} (W)</translation>
    </message>
    <message>
        <source>Slow motion: {pace}</source>
        <translation type="unfinished">Zeitlupe: mit {pace}</translation>
    </message>
    <message>
        <source>Played {text} (Y)</source>
        <translation type="unfinished">Gespielt: {text} (Y)</translation>
    </message>
    <message>
        <source>Played at {text} (Y)</source>
        <translation type="unfinished">{text} (Y)</translation>
    </message>
    <message>
        <source>Again and again: {text}</source>
        <translation type="unfinished">Immer wieder: {text}</translation>
    </message>
    <message>
        <source>Stops at {n} of the events (J)</source>
        <translation type="unfinished">Hält bei {n} der Ereignisse (J)</translation>
    </message>
    <message>
        <source>all</source>
        <translation type="unfinished">alles</translation>
    </message>
    <message>
        <source>event</source>
        <translation type="unfinished">Ereignis</translation>
    </message>
    <message>
        <source>The section is drawn for tips in a gap at the door's edge</source>
        <translation type="unfinished">Der Schnitt wird für Spitzen in einem Spalt an der Türkante gezeichnet</translation>
    </message>
    <message>
        <source>{what}: less ({keys})</source>
        <translation type="unfinished">{what}: weniger ({keys})</translation>
    </message>
    <message>
        <source>{what}: more ({keys})</source>
        <translation type="unfinished">{what}: mehr ({keys})</translation>
    </message>
    <message>
        <source>Where the section plane stands</source>
        <translation type="unfinished">Wo die Schnittebene steht</translation>
    </message>
    <message>
        <source>How far the parts are drawn apart</source>
        <translation type="unfinished">Wie weit die Teile auseinandergezogen sind</translation>
    </message>
    <message>
        <source>PNG pictures (*.png)</source>
        <translation type="unfinished">PNG-Bilder (*.png)</translation>
    </message>
    <message>
        <source>Size of the picture</source>
        <translation type="unfinished">Größe des Bildes</translation>
    </message>
    <message>
        <source>Width of the picture</source>
        <translation type="unfinished">Breite des Bildes</translation>
    </message>
    <message>
        <source>Height of the picture</source>
        <translation type="unfinished">Höhe des Bildes</translation>
    </message>
    <message>
        <source>Caption of the picture</source>
        <translation type="unfinished">Unterschrift des Bildes</translation>
    </message>
    <message>
        <source>this plan's own</source>
        <translation type="unfinished">des Plans eigenes</translation>
    </message>
    <message>
        <source>A name of the crew's own, no maker's; what counts are the numbers</source>
        <translation type="unfinished">Ein eigener Name der Mannschaft, keiner eines Herstellers; es zählen die Zahlen</translation>
    </message>
    <message>
        <source>place on the picture</source>
        <translation type="unfinished">Ort auf dem Bild</translation>
    </message>
    <message>
        <source>Room to the nearest body part, mm</source>
        <translation type="unfinished">Raum zum nächsten Körperteil, mm</translation>
    </message>
    <message>
        <source>share of the plan's way (tools' travel, all moves)</source>
        <translation type="unfinished">Anteil am Weg des Plans (Gerätewege, alle Schritte)</translation>
    </message>
    <message>
        <source>Before</source>
        <translation type="unfinished">Vorher</translation>
    </message>
    <message>
        <source>After</source>
        <translation type="unfinished">Nachher</translation>
    </message>
    <message>
        <source>three triangles share an edge</source>
        <translation type="unfinished">drei Dreiecke teilen eine Kante</translation>
    </message>
    <message>
        <source>whole</source>
        <translation type="unfinished">ganz</translation>
    </message>
    <message>
        <source>parted</source>
        <translation type="unfinished">aufgegangen</translation>
    </message>
    <message>
        <source>full</source>
        <translation type="unfinished">voll</translation>
    </message>
    <message>
        <source>to the occupant</source>
        <translation type="unfinished">zum Insassen</translation>
    </message>
    <message>
        <source>{length} to the occupant</source>
        <translation type="unfinished">{length} zum Insassen</translation>
    </message>
    <message>
        <source>{text} – Hemline</source>
        <translation type="unfinished">{text} – Hemline</translation>
    </message>
    <message>
        <source>Changed from: {plan}</source>
        <translation type="unfinished">Geändert von: {plan}</translation>
    </message>
    <message>
        <source>Running the plan</source>
        <translation type="unfinished">Der Plan wird ausgeführt</translation>
    </message>
    <message>
        <source>{force} at {length}</source>
        <translation type="unfinished">{force} bei {length}</translation>
    </message>
    <message>
        <source>Spread the ends of a cut</source>
        <translation type="unfinished">Die Enden eines Schnitts spreizen</translation>
    </message>
    <message>
        <source>{n} of {n2} as the model has it. {text}</source>
        <translation type="unfinished">{n} von {n2}, wie das Modell es hat. {text}</translation>
    </message>
    <message>
        <source>Not settled, and not graded. {why} This run: {what}</source>
        <translation type="unfinished">Nicht gesichert und nicht bewertet. {why} Diese Rechnung: {what}</translation>
    </message>
    <message>
        <source>means</source>
        <translation type="unfinished">bedeutet</translation>
    </message>
    <message>
        <source>hinge</source>
        <translation type="unfinished">Scharnier</translation>
    </message>
    <message>
        <source>inflator</source>
        <translation type="unfinished">Gasgenerator</translation>
    </message>
    <message>
        <source>spreader</source>
        <translation type="unfinished">Spreizer</translation>
    </message>
    <message>
        <source>narrow-tip combi</source>
        <translation type="unfinished">Kombigerät mit schmalen Spitzen</translation>
    </message>
    <message>
        <source>forcible-entry bar</source>
        <translation type="unfinished">Brechstange</translation>
    </message>
    <message>
        <source>ram</source>
        <translation type="unfinished">Rettungszylinder</translation>
    </message>
    <message>
        <source>gap</source>
        <translation type="unfinished">Spalt</translation>
    </message>
    <message>
        <source>squeeze</source>
        <translation type="unfinished">Quetschen</translation>
    </message>
    <message>
        <source>ease</source>
        <translation type="unfinished">Entlasten</translation>
    </message>
    <message>
        <source>relief cut</source>
        <translation type="unfinished">Entlastungsschnitt</translation>
    </message>
    <message>
        <source>jam</source>
        <translation type="unfinished">Klemmen</translation>
    </message>
    <message>
        <source>room</source>
        <translation type="unfinished">Raum</translation>
    </message>
    <message>
        <source>patient cover</source>
        <translation type="unfinished">Patientenschutz</translation>
    </message>
    <message>
        <source>The thin painted sheet on the outside of a door. It is folded round the inner structure at its edge</source>
        <translation type="unfinished">Das dünne lackierte Blech außen an einer Tür. An ihrer Kante ist es um die innere Struktur gefalzt</translation>
    </message>
    <message>
        <source>The fold that holds the skin's edge round the inner flange: three sheets thick, often only glued</source>
        <translation type="unfinished">Die Faltung, die den Rand der Außenhaut um den inneren Flansch hält: drei Bleche dick, oft nur geklebt</translation>
    </message>
    <message>
        <source>The outermost edge of the hem. A tip that bears here pushes on the skin and its seam</source>
        <translation type="unfinished">Die äußerste Kante des Falzes. Eine Spitze, die hier ansetzt, drückt auf die Außenhaut und ihre Naht</translation>
    </message>
    <message>
        <source>The joint of skin and inner structure along the hem: bonded, welded in spots, or mixed</source>
        <translation type="unfinished">Die Verbindung von Außenhaut und innerer Struktur am Falz: geklebt, punktgeschweißt oder gemischt</translation>
    </message>
    <message>
        <source>The door's end face that you see when the door is open; the latch sits in it</source>
        <translation type="unfinished">Die Stirnseite der Tür, die man bei offener Tür sieht; in ihr sitzt das Schloss</translation>
    </message>
    <message>
        <source>The corner where the shut face turns into the inner panel: a strong line to push behind</source>
        <translation type="unfinished">Die Ecke, wo die Stirnfläche in das Innenblech übergeht: eine starke Linie, hinter der gedrückt wird</translation>
    </message>
    <message>
        <source>The sheet facing the occupant; it carries latch, hinges and the bar</source>
        <translation type="unfinished">Das Blech zum Insassen hin; es trägt Schloss, Scharniere und Träger</translation>
    </message>
    <message>
        <source>The upper edge of the door's body, where the window comes out. It has an outer and an inner lip</source>
        <translation type="unfinished">Die Oberkante des Türkörpers, wo das Fenster herauskommt. Sie hat eine äußere und eine innere Lippe</translation>
    </message>
    <message>
        <source>The reinforcement inside the door between its two ends; a tie as well as a shield</source>
        <translation type="unfinished">Der Seitenaufprallschutz in der Tür zwischen ihren beiden Enden; ein Zugband ebenso wie ein Schild</translation>
    </message>
    <message>
        <source>The part in the door that grips the striker and holds the door shut</source>
        <translation type="unfinished">Das Teil in der Tür, das den Schließkeil greift und die Tür zuhält</translation>
    </message>
    <message>
        <source>The loop or pin on the pillar that the latch grips</source>
        <translation type="unfinished">Der Bügel oder Zapfen an der Säule, den das Schloss greift</translation>
    </message>
    <message>
        <source>What the door turns on; two of them hold its front edge to the pillar</source>
        <translation type="unfinished">Worum sich die Tür dreht; zwei davon halten ihre Vorderkante an der Säule</translation>
    </message>
    <message>
        <source>What stands between the doors; its foot joins the rocker, its head the roof rail</source>
        <translation type="unfinished">Was zwischen den Türen steht; ihr Fuß trifft den Schweller, ihr Kopf den Dachholm</translation>
    </message>
    <message>
        <source>The box section below the doors, from wheel arch to wheel arch</source>
        <translation type="unfinished">Der Kasten unter den Türen, von Radhaus zu Radhaus</translation>
    </message>
    <message>
        <source>The box section above the doors, along the edge of the roof</source>
        <translation type="unfinished">Der Kasten über den Türen, am Rand des Dachs entlang</translation>
    </message>
    <message>
        <source>What fills an airbag; some store gas under pressure. Find it on the car maker's rescue sheet before cutting</source>
        <translation type="unfinished">Was einen Airbag füllt; manche speichern Gas unter Druck. Vor dem Schneiden im Rettungsdatenblatt des Herstellers suchen</translation>
    </message>
    <message>
        <source>What pulls a seat belt tight; it may sit in the pillar's foot and may not have fired</source>
        <translation type="unfinished">Was einen Gurt strafft; er kann im Säulenfuß sitzen und nicht ausgelöst haben</translation>
    </message>
    <message>
        <source>The powered tool that opens two arms against each other; its tips push on one line with equal force</source>
        <translation type="unfinished">Das kraftbetriebene Gerät, das zwei Arme gegeneinander öffnet; seine Spitzen drücken auf einer Linie mit gleicher Kraft</translation>
    </message>
    <message>
        <source>A tool that both cuts and spreads; narrower tips and less force than a spreader</source>
        <translation type="unfinished">Ein Gerät, das schneidet und spreizt; schmalere Spitzen und weniger Kraft als ein Spreizer</translation>
    </message>
    <message>
        <source>A hand lever to make a first gap; its force is what one person can pull</source>
        <translation type="unfinished">Ein Handhebel für einen ersten Spalt; seine Kraft ist, was ein Mensch ziehen kann</translation>
    </message>
    <message>
        <source>A powered tool that pushes its two ends apart; one or more stages</source>
        <translation type="unfinished">Ein kraftbetriebenes Gerät, das seine beiden Enden auseinanderdrückt; eine oder mehr Stufen</translation>
    </message>
    <message>
        <source>The end of a spreader's arm. Its flat, the pad, is what bears on the metal</source>
        <translation type="unfinished">Das Ende eines Spreizerarms. Seine flache Seite, die Auflage, drückt auf das Metall</translation>
    </message>
    <message>
        <source>How far the middle of the pad is from the lip, inboard. It decides which sheet takes the push</source>
        <translation type="unfinished">Wie weit die Mitte der Auflage von der Falzkante nach innen liegt. Sie entscheidet, welches Blech den Druck nimmt</translation>
    </message>
    <message>
        <source>The first place made for the tips to go in</source>
        <translation type="unfinished">Die erste Öffnung, in die die Spitzen gehen</translation>
    </message>
    <message>
        <source>Open the tips against door and pillar, slowly, and watch both sides</source>
        <translation type="unfinished">Die Spitzen langsam gegen Tür und Säule öffnen und beide Seiten beobachten</translation>
    </message>
    <message>
        <source>Close the tips across the door. It makes a gap fast and leaves a crease that later pushes make bigger</source>
        <translation type="unfinished">Die Spitzen quer über die Tür schließen. Das macht schnell einen Spalt und hinterlässt einen Knick, den spätere Drücke vergrößern</translation>
    </message>
    <message>
        <source>Let the tool off; the metal springs back to what is left of its shape</source>
        <translation type="unfinished">Das Gerät entlasten; das Metall federt zurück, so weit seine Form es noch zulässt</translation>
    </message>
    <message>
        <source>A cut that makes a part fold where you want it to</source>
        <translation type="unfinished">Ein Schnitt, nach dem ein Teil dort faltet, wo man es will</translation>
    </message>
    <message>
        <source>The skin leaves the inner flange along the hem. The latch is not nearer to opening for it</source>
        <translation type="unfinished">Die Außenhaut verlässt am Falz den inneren Flansch. Das Schloss ist dadurch dem Öffnen nicht näher</translation>
    </message>
    <message>
        <source>A sheet cracks and the crack runs. Stop: it leaves sharp edges and takes the hold from the tips</source>
        <translation type="unfinished">Ein Blech reißt, und der Riss läuft. Halt: er hinterlässt scharfe Kanten und nimmt den Spitzen den Halt</translation>
    </message>
    <message>
        <source>The metal folds away from the patient and stays there</source>
        <translation type="unfinished">Das Metall faltet vom Patienten weg und bleibt dort</translation>
    </message>
    <message>
        <source>The metal folds towards the patient and stays there. Stop and look</source>
        <translation type="unfinished">Das Metall faltet zum Patienten hin und bleibt dort. Halten und nachsehen</translation>
    </message>
    <message>
        <source>The latch no longer holds the striker; the door hangs on its hinges and can swing or spring</source>
        <translation type="unfinished">Das Schloss hält den Schließkeil nicht mehr; die Tür hängt an ihren Scharnieren und kann schwingen oder federn</translation>
    </message>
    <message>
        <source>A tip slides along the metal instead of moving it</source>
        <translation type="unfinished">Eine Spitze gleitet am Metall entlang, statt es zu bewegen</translation>
    </message>
    <message>
        <source>The tool is at its limit and nothing moves. Something stronger than you think is on the line: rethink</source>
        <translation type="unfinished">Das Gerät ist am Ende, und nichts bewegt sich. Etwas Stärkeres als gedacht liegt auf der Linie: neu überlegen</translation>
    </message>
    <message>
        <source>What was meant to stand still moves more than what was meant to move</source>
        <translation type="unfinished">Was stillstehen sollte, bewegt sich mehr als das, was sich bewegen sollte</translation>
    </message>
    <message>
        <source>A latch the handle cannot free, often because the crash presses the striker into the fork</source>
        <translation type="unfinished">Ein Schloss, das der Griff nicht löst, oft weil der Unfall den Schließkeil in die Gabel drückt</translation>
    </message>
    <message>
        <source>The least distance from metal to the occupant's envelope. It is geometry, never injury</source>
        <translation type="unfinished">Der kleinste Abstand vom Metall zur Hülle des Insassen. Er ist Geometrie, nie Verletzung</translation>
    </message>
    <message>
        <source>The runs disagree, or did not come to rest: the model cannot say. A full answer</source>
        <translation type="unfinished">Die Rechnungen widersprechen sich oder kamen nicht zur Ruhe: das Modell kann es nicht sagen. Eine volle Antwort</translation>
    </message>
    <message>
        <source>What is kept between tool, metal or glass and the patient</source>
        <translation type="unfinished">Was zwischen Gerät, Metall oder Glas und dem Patienten gehalten wird</translation>
    </message>
    <message>
        <source>The push, before it starts</source>
        <translation type="unfinished">Der Druck, bevor er beginnt</translation>
    </message>
    <message>
        <source>Where do both tips bear: on the lip, on the shut face, behind the inner bend? Which side is weaker? What is between metal and patient?</source>
        <translation type="unfinished">Wo setzen beide Spitzen an: auf der Falzkante, auf der Stirnfläche, hinter der inneren Biegung? Welche Seite ist schwächer? Was ist zwischen Metall und Patient?</translation>
    </message>
    <message>
        <source>The word to spread, called and answered</source>
        <translation type="unfinished">Das Wort zum Spreizen, gerufen und beantwortet</translation>
    </message>
    <message>
        <source>Tips seated square before any force; tool steady in both hands</source>
        <translation type="unfinished">Spitzen vor jeder Kraft satt angesetzt; Gerät ruhig in beiden Händen</translation>
    </message>
    <message>
        <source>A tip in the air, a hand or a hose on the line, the patient not covered</source>
        <translation type="unfinished">Eine Spitze in der Luft, eine Hand oder ein Schlauch auf der Linie, der Patient nicht abgedeckt</translation>
    </message>
    <message>
        <source>The seam parts: the skin leaves its edge</source>
        <translation type="unfinished">Die Naht geht auf: die Außenhaut verlässt ihre Kante</translation>
    </message>
    <message>
        <source>The outer skin opens along its edge, the shut face behind it does not move</source>
        <translation type="unfinished">Die Außenhaut öffnet sich an ihrer Kante, die Stirnfläche dahinter bewegt sich nicht</translation>
    </message>
    <message>
        <source>A long tearing or zipping sound, or a tick at each weld</source>
        <translation type="unfinished">Ein langes Reißen wie ein Reißverschluss, oder ein Tick bei jedem Schweißpunkt</translation>
    </message>
    <message>
        <source>Easy travel at a low, level force: the tool hardly works</source>
        <translation type="unfinished">Leichter Weg bei niedriger, gleicher Kraft: das Gerät arbeitet kaum</translation>
    </message>
    <message>
        <source>Stop at the first hand's breadth of opened edge. Set the tips deeper, behind the inner bend</source>
        <translation type="unfinished">Bei der ersten Handbreit offener Kante halten. Die Spitzen tiefer setzen, hinter die innere Biegung</translation>
    </message>
    <message>
        <source>The skin comes off its flange in steps, leaving round buttons or holes</source>
        <translation type="unfinished">Die Außenhaut löst sich stufenweise vom Flansch und lässt runde Knöpfe oder Löcher</translation>
    </message>
    <message>
        <source>Single sharp cracks</source>
        <translation type="unfinished">Einzelne scharfe Knalle</translation>
    </message>
    <message>
        <source>Force builds, then falls away with a jerk, again and again</source>
        <translation type="unfinished">Kraft baut sich auf und fällt mit einem Ruck ab, immer wieder</translation>
    </message>
    <message>
        <source>Stop when the second weld goes and the latch has not moved</source>
        <translation type="unfinished">Halten, wenn der zweite Schweißpunkt geht und das Schloss sich nicht bewegt hat</translation>
    </message>
    <message>
        <source>A crack runs from an edge; bright metal, curled strips</source>
        <translation type="unfinished">Ein Riss läuft von einer Kante; blankes Metall, eingerollte Streifen</translation>
    </message>
    <message>
        <source>A ripping sound that goes on while the tips open</source>
        <translation type="unfinished">Ein Reißgeräusch, solange die Spitzen öffnen</translation>
    </message>
    <message>
        <source>The force falls and stays low</source>
        <translation type="unfinished">Die Kraft fällt und bleibt niedrig</translation>
    </message>
    <message>
        <source>Stop at once. Cover the edge. Take a deeper or wider bite, or change to the cutter</source>
        <translation type="unfinished">Sofort halten. Die Kante abdecken. Tiefer oder breiter ansetzen oder zur Schere wechseln</translation>
    </message>
    <message>
        <source>The tip sinks into the metal instead of moving it</source>
        <translation type="unfinished">Die Spitze sinkt in das Metall, statt es zu bewegen</translation>
    </message>
    <message>
        <source>A dull punch</source>
        <translation type="unfinished">Ein dumpfer Schlag</translation>
    </message>
    <message>
        <source>A sudden give, the tool turning in the hands</source>
        <translation type="unfinished">Ein plötzliches Nachgeben, das Gerät dreht sich in den Händen</translation>
    </message>
    <message>
        <source>Stop. Wider tips, another place, or two sheets under the tip</source>
        <translation type="unfinished">Halt. Breitere Spitzen, eine andere Stelle oder zwei Bleche unter der Spitze</translation>
    </message>
    <message>
        <source>The latch lets go</source>
        <translation type="unfinished">Das Schloss gibt frei</translation>
    </message>
    <message>
        <source>The gap at the latch jumps open; the shut face stands away from the pillar</source>
        <translation type="unfinished">Der Spalt am Schloss springt auf; die Stirnfläche steht von der Säule ab</translation>
    </message>
    <message>
        <source>One loud bang</source>
        <translation type="unfinished">Ein lauter Knall</translation>
    </message>
    <message>
        <source>The force drops to almost nothing; the door is loose</source>
        <translation type="unfinished">Die Kraft fällt fast auf nichts; die Tür ist lose</translation>
    </message>
    <message>
        <source>Stop. Hold the door: it can swing, spring or drop. Look for what still ties it</source>
        <translation type="unfinished">Halt. Die Tür halten: sie kann schwingen, federn oder fallen. Nachsehen, was sie noch bindet</translation>
    </message>
    <message>
        <source>The striker slides out of its fork</source>
        <translation type="unfinished">Der Schließkeil gleitet aus seiner Gabel</translation>
    </message>
    <message>
        <source>The striker comes out of the latch without breaking it</source>
        <translation type="unfinished">Der Schließkeil kommt aus dem Schloss, ohne es zu brechen</translation>
    </message>
    <message>
        <source>A scrape, then quiet</source>
        <translation type="unfinished">Ein Schaben, dann Ruhe</translation>
    </message>
    <message>
        <source>A force that slowly gets less</source>
        <translation type="unfinished">Eine Kraft, die langsam nachlässt</translation>
    </message>
    <message>
        <source>Stop when it is out; hold the door</source>
        <translation type="unfinished">Halten, wenn er heraus ist; die Tür halten</translation>
    </message>
    <message>
        <source>The front edge of the door moves on its own; the door sags</source>
        <translation type="unfinished">Die Vorderkante der Tür bewegt sich für sich; die Tür sackt ab</translation>
    </message>
    <message>
        <source>One loud bang at the hinge</source>
        <translation type="unfinished">Ein lauter Knall am Scharnier</translation>
    </message>
    <message>
        <source>The tool jumps; the door's weight comes on</source>
        <translation type="unfinished">Das Gerät springt; das Gewicht der Tür kommt dazu</translation>
    </message>
    <message>
        <source>Stop. Support the door before the next move; the other hinge carries it all</source>
        <translation type="unfinished">Halt. Die Tür vor dem nächsten Schritt stützen; das andere Scharnier trägt alles</translation>
    </message>
    <message>
        <source>The middle of the door jumps; the bar's end shows</source>
        <translation type="unfinished">Die Mitte der Tür springt; das Ende des Trägers zeigt sich</translation>
    </message>
    <message>
        <source>A crack from inside the door</source>
        <translation type="unfinished">Ein Knacken aus der Tür</translation>
    </message>
    <message>
        <source>A jump without the tips having moved</source>
        <translation type="unfinished">Ein Sprung, ohne dass die Spitzen sich bewegt haben</translation>
    </message>
    <message>
        <source>Stop. Look at the patient's side before going on</source>
        <translation type="unfinished">Halt. Vor dem Weitermachen auf die Seite des Patienten sehen</translation>
    </message>
    <message>
        <source>A tip slips</source>
        <translation type="unfinished">Eine Spitze rutscht</translation>
    </message>
    <message>
        <source>Fresh scratches in the paint beside the tip; the pad is not where it was</source>
        <translation type="unfinished">Frische Kratzer im Lack neben der Spitze; die Auflage ist nicht mehr, wo sie war</translation>
    </message>
    <message>
        <source>A scrape or a squeal</source>
        <translation type="unfinished">Ein Schaben oder Quietschen</translation>
    </message>
    <message>
        <source>The tool walks or turns in the hands</source>
        <translation type="unfinished">Das Gerät wandert oder dreht sich in den Händen</translation>
    </message>
    <message>
        <source>Ease off, clean or strip the place, set the tip again, square and deeper</source>
        <translation type="unfinished">Entlasten, die Stelle säubern oder freilegen, die Spitze neu setzen, gerade und tiefer</translation>
    </message>
    <message>
        <source>A tip came off its place</source>
        <translation type="unfinished">Eine Spitze kam von ihrer Stelle ab</translation>
    </message>
    <message>
        <source>The tip stands free beside the metal</source>
        <translation type="unfinished">Die Spitze steht frei neben dem Metall</translation>
    </message>
    <message>
        <source>A snap, then nothing</source>
        <translation type="unfinished">Ein Schnappen, dann nichts</translation>
    </message>
    <message>
        <source>No force at all, and a kick of the tool</source>
        <translation type="unfinished">Gar keine Kraft, und ein Stoß des Geräts</translation>
    </message>
    <message>
        <source>Stop. Everybody clear. Start again with a new gap</source>
        <translation type="unfinished">Halt. Alle weg. Mit einem neuen Spalt von vorn beginnen</translation>
    </message>
    <message>
        <source>Nothing moves on either side</source>
        <translation type="unfinished">Auf keiner Seite bewegt sich etwas</translation>
    </message>
    <message>
        <source>The pump labours</source>
        <translation type="unfinished">Die Pumpe müht sich</translation>
    </message>
    <message>
        <source>Full force and no travel</source>
        <translation type="unfinished">Volle Kraft und kein Weg</translation>
    </message>
    <message>
        <source>Let go. Something stronger than you think is on the line: look again, choose another place</source>
        <translation type="unfinished">Loslassen. Etwas Stärkeres als gedacht liegt auf der Linie: neu nachsehen, eine andere Stelle wählen</translation>
    </message>
    <message>
        <source>The metal folds out</source>
        <translation type="unfinished">Das Metall faltet nach außen</translation>
    </message>
    <message>
        <source>The middle of the door, or its inner face, comes away from the patient</source>
        <translation type="unfinished">Die Mitte der Tür oder ihre Innenfläche entfernt sich vom Patienten</translation>
    </message>
    <message>
        <source>Creaking, no ripping</source>
        <translation type="unfinished">Knarren, kein Reißen</translation>
    </message>
    <message>
        <source>A force that rises slowly with the travel</source>
        <translation type="unfinished">Eine Kraft, die langsam mit dem Weg steigt</translation>
    </message>
    <message>
        <source>Stop as soon as there is room for the next, deeper bite</source>
        <translation type="unfinished">Halten, sobald Raum für den nächsten, tieferen Ansatz ist</translation>
    </message>
    <message>
        <source>The metal folds in</source>
        <translation type="unfinished">Das Metall faltet nach innen</translation>
    </message>
    <message>
        <source>The inner panel comes nearer to the patient; an old crease gets deeper</source>
        <translation type="unfinished">Das Innenblech kommt dem Patienten näher; ein alter Knick wird tiefer</translation>
    </message>
    <message>
        <source>The one who watches the patient's side says so</source>
        <translation type="unfinished">Wer die Seite des Patienten beobachtet, sagt es</translation>
    </message>
    <message>
        <source>Nothing special at the tool: somebody must look</source>
        <translation type="unfinished">Am Gerät nichts Besonderes: jemand muss hinsehen</translation>
    </message>
    <message>
        <source>Stop at the first sign. Ease off. Another place, or another order of moves</source>
        <translation type="unfinished">Beim ersten Anzeichen halten. Entlasten. Eine andere Stelle oder eine andere Reihenfolge</translation>
    </message>
    <message>
        <source>A ram's head or foot slips</source>
        <translation type="unfinished">Kopf oder Fuß eines Zylinders rutscht</translation>
    </message>
    <message>
        <source>The head is no longer square; a seal or paint is rubbed off beside it</source>
        <translation type="unfinished">Der Kopf steht nicht mehr gerade; daneben ist Dichtung oder Lack abgerieben</translation>
    </message>
    <message>
        <source>A squeal, a knock</source>
        <translation type="unfinished">Ein Quietschen, ein Klopfen</translation>
    </message>
    <message>
        <source>The ram turns in the hands</source>
        <translation type="unfinished">Der Zylinder dreht sich in den Händen</translation>
    </message>
    <message>
        <source>Ease, strip the place, move toward the centre, press again. Nobody in line with either end</source>
        <translation type="unfinished">Entlasten, die Stelle freilegen, zur Mitte rücken, neu drücken. Niemand in der Linie beider Enden</translation>
    </message>
    <message>
        <source>The ram's next stage starts</source>
        <translation type="unfinished">Die nächste Stufe des Zylinders beginnt</translation>
    </message>
    <message>
        <source>A thinner piston shows</source>
        <translation type="unfinished">Ein dünnerer Kolben zeigt sich</translation>
    </message>
    <message>
        <source>The pump changes its note</source>
        <translation type="unfinished">Die Pumpe ändert ihren Ton</translation>
    </message>
    <message>
        <source>Less force from here on</source>
        <translation type="unfinished">Ab hier weniger Kraft</translation>
    </message>
    <message>
        <source>Go on only if less force will do; else set the ram anew, shorter</source>
        <translation type="unfinished">Nur weiter, wenn weniger Kraft reicht; sonst den Zylinder neu setzen, kürzer</translation>
    </message>
    <message>
        <source>The base gives</source>
        <translation type="unfinished">Die Unterlage gibt nach</translation>
    </message>
    <message>
        <source>The foot sinks in, or the far side moves, and the part to be moved does not</source>
        <translation type="unfinished">Der Fuß sinkt ein, oder die andere Seite bewegt sich, und das Teil, das sich bewegen soll, nicht</translation>
    </message>
    <message>
        <source>A crunch behind you</source>
        <translation type="unfinished">Ein Knirschen hinter Ihnen</translation>
    </message>
    <message>
        <source>Travel without result</source>
        <translation type="unfinished">Weg ohne Ergebnis</translation>
    </message>
    <message>
        <source>Stop. A plate, a rib behind the wall, or another base</source>
        <translation type="unfinished">Halt. Eine Platte, eine Rippe hinter der Wand oder eine andere Unterlage</translation>
    </message>
    <message>
        <source>The cut is through</source>
        <translation type="unfinished">Der Schnitt ist durch</translation>
    </message>
    <message>
        <source>Light through the cut; the edges stand apart</source>
        <translation type="unfinished">Licht durch den Schnitt; die Kanten stehen auseinander</translation>
    </message>
    <message>
        <source>A bang as the blades close</source>
        <translation type="unfinished">Ein Knall, wenn die Klingen schließen</translation>
    </message>
    <message>
        <source>The tool drops free: hold it</source>
        <translation type="unfinished">Das Gerät fällt frei: festhalten</translation>
    </message>
    <message>
        <source>Cover the edges before the next move</source>
        <translation type="unfinished">Die Kanten vor dem nächsten Schritt abdecken</translation>
    </message>
    <message>
        <source>The cut is short</source>
        <translation type="unfinished">Der Schnitt ist zu kurz</translation>
    </message>
    <message>
        <source>A strip of metal still bridges the cut</source>
        <translation type="unfinished">Ein Streifen Metall überbrückt noch den Schnitt</translation>
    </message>
    <message>
        <source>No bang</source>
        <translation type="unfinished">Kein Knall</translation>
    </message>
    <message>
        <source>The part does not move by hand</source>
        <translation type="unfinished">Das Teil bewegt sich nicht von Hand</translation>
    </message>
    <message>
        <source>Do not push on it: finish the cut first. What is not through is a tie</source>
        <translation type="unfinished">Nicht darauf drücken: erst den Schnitt beenden. Was nicht durch ist, bindet</translation>
    </message>
    <message>
        <source>The blades met a restraint part still behind trim</source>
        <translation type="unfinished">Die Klingen trafen auf ein Rückhaltesystem noch hinter der Verkleidung</translation>
    </message>
    <message>
        <source>What is behind the trim here, before anything is cut: strip it and look</source>
        <translation type="unfinished">Was hier hinter der Verkleidung ist, bevor geschnitten wird: freilegen und nachsehen</translation>
    </message>
    <message>
        <source>The word to stop, from whoever sees it first</source>
        <translation type="unfinished">Das Wort zum Halten, von dem, der es zuerst sieht</translation>
    </message>
    <message>
        <source>Stop. Strip the trim, read the car maker's rescue sheet, move the cut</source>
        <translation type="unfinished">Halt. Verkleidung entfernen, Rettungsdatenblatt des Herstellers lesen, den Schnitt verlegen</translation>
    </message>
    <message>
        <source>Striker or hinge is in reach of the blades</source>
        <translation type="unfinished">Schließkeil oder Scharnier ist in Reichweite der Klingen</translation>
    </message>
    <message>
        <source>The part can be seen whole, with room for the blades round it</source>
        <translation type="unfinished">Das Teil ist ganz zu sehen, mit Platz für die Klingen darum</translation>
    </message>
    <message>
        <source>Stop spreading. One clean cut now</source>
        <translation type="unfinished">Nicht weiter spreizen. Jetzt ein sauberer Schnitt</translation>
    </message>
    <message>
        <source>A freed part stands on the ground</source>
        <translation type="unfinished">Ein befreites Teil steht auf dem Boden</translation>
    </message>
    <message>
        <source>The door's corner on the ground; the car rises</source>
        <translation type="unfinished">Die Ecke der Tür am Boden; das Auto hebt sich</translation>
    </message>
    <message>
        <source>A scrape on the road</source>
        <translation type="unfinished">Ein Schaben auf der Straße</translation>
    </message>
    <message>
        <source>More force, and the car moves</source>
        <translation type="unfinished">Mehr Kraft, und das Auto bewegt sich</translation>
    </message>
    <message>
        <source>Stop. Lift and hold the part; look at the supports again</source>
        <translation type="unfinished">Halt. Das Teil heben und halten; die Stützen neu ansehen</translation>
    </message>
    <message>
        <source>The model cannot say what comes next here: look at both sides</source>
        <translation type="unfinished">Das Modell kann nicht sagen, was hier als Nächstes kommt: auf beide Seiten sehen</translation>
    </message>
    <message>
        <source>Small spreads, and stop after each</source>
        <translation type="unfinished">In kleinen Schritten spreizen und nach jedem halten</translation>
    </message>
    <message>
        <source>restraints</source>
        <translation type="unfinished">Rückhaltesysteme</translation>
    </message>
    <message>
        <source>stability</source>
        <translation type="unfinished">Standsicherheit</translation>
    </message>
    <message>
        <source>Restraint systems that have not fired may sit in posts, roof edge, seats, doors and pillar foot. Strip trim and look, and read the car maker's rescue sheet, before a post is pushed or cut. Systems can stay live after the battery is off; parts fired once may fire again</source>
        <translation type="unfinished">Nicht ausgelöste Rückhaltesysteme können in Säulen, Dachrand, Sitzen, Türen und Säulenfuß sitzen. Verkleidung entfernen und nachsehen und das Rettungsdatenblatt des Herstellers lesen, bevor an einer Säule gedrückt oder geschnitten wird. Systeme können nach dem Abklemmen der Batterie wirksam bleiben; einmal ausgelöste Teile können noch einmal auslösen</translation>
    </message>
    <message>
        <source>Treat it as live. Orange cables and the battery are not touched and not cut; a silent car is not a car that is off. The car maker's rescue sheet says how it is made safe</source>
        <translation type="unfinished">Als unter Spannung behandeln. Orangefarbene Kabel und die Batterie werden nicht berührt und nicht geschnitten; ein leises Auto ist kein ausgeschaltetes Auto. Das Rettungsdatenblatt des Herstellers sagt, wie es gesichert wird</translation>
    </message>
    <message>
        <source>Tempered glass bursts into grains, laminated glass is cut and makes dust: eye and breathing protection for crew and patient, and a cover</source>
        <translation type="unfinished">Einscheibenglas zerspringt in Körner, Verbundglas wird geschnitten und staubt: Augen- und Atemschutz für Mannschaft und Patient, und eine Abdeckung</translation>
    </message>
    <message>
        <source>Torn skins and cut posts are sharp. Cover each edge as it appears. A plan that tears less leaves fewer</source>
        <translation type="unfinished">Gerissene Häute und geschnittene Säulen sind scharf. Jede Kante abdecken, sobald sie entsteht. Ein Plan, der weniger reißt, hinterlässt weniger davon</translation>
    </message>
    <message>
        <source>What is pushed or bent can let go at once. Nobody between tool and car; keep clear as local procedure says; call before acting</source>
        <translation type="unfinished">Was gedrückt oder gebogen ist, kann plötzlich loslassen. Niemand zwischen Gerät und Auto; Abstand halten nach örtlicher Vorschrift; vor dem Handeln rufen</translation>
    </message>
    <message>
        <source>Forcing moves the car. Support first, and look at the supports again after every big move</source>
        <translation type="unfinished">Kraft bewegt das Auto. Erst stützen, und die Stützen nach jeder großen Bewegung neu ansehen</translation>
    </message>
    <message>
        <source>A freed door swings, drops or springs. Tie it or hold it; keep it off the ground, where it can lift the car</source>
        <translation type="unfinished">Eine befreite Tür schwingt, fällt oder federt. Binden oder halten; vom Boden weghalten, wo sie das Auto heben kann</translation>
    </message>
    <message>
        <source>Afterwards</source>
        <translation type="unfinished">Danach</translation>
    </message>
    <message>
        <source>Handout</source>
        <translation type="unfinished">Handzettel</translation>
    </message>
    <message>
        <source>Test</source>
        <translation type="unfinished">Test</translation>
    </message>
    <message>
        <source>What do you say?</source>
        <translation type="unfinished">Was sagen Sie?</translation>
    </message>
    <message>
        <source>Before any real door</source>
        <translation type="unfinished">Vor jeder echten Tür</translation>
    </message>
    <message>
        <source>What this lesson does not say</source>
        <translation type="unfinished">Was diese Lektion nicht sagt</translation>
    </message>
    <message>
        <source>Word</source>
        <translation type="unfinished">Wort</translation>
    </message>
    <message>
        <source>Seat number (no name)</source>
        <translation type="unfinished">Platznummer (kein Name)</translation>
    </message>
    <message>
        <source>Date</source>
        <translation type="unfinished">Datum</translation>
    </message>
    <message>
        <source>Right, of all</source>
        <translation type="unfinished">Richtig, von allen</translation>
    </message>
    <message>
        <source>One answer to each</source>
        <translation type="unfinished">Eine Antwort je Frage</translation>
    </message>
    <message>
        <source>The model has settled none of the questions</source>
        <translation type="unfinished">Das Modell hat keine der Fragen gesichert</translation>
    </message>
    <message>
        <source>For the teacher. It is what the runs themselves say</source>
        <translation type="unfinished">Für die Lehrkraft. Es ist, was die Rechnungen selbst sagen</translation>
    </message>
    <message>
        <source>{few} left out: the model is not settled there</source>
        <translation type="unfinished">{few} weggelassen: das Modell ist dort nicht gesichert</translation>
    </message>
    <message>
        <source>Show them and talk</source>
        <translation type="unfinished">Zeigen und besprechen</translation>
    </message>
    <message>
        <source>One question is</source>
        <translation type="unfinished">Eine Frage ist</translation>
    </message>
    <message>
        <source>{n} questions are</source>
        <translation type="unfinished">{n} Fragen sind</translation>
    </message>
    <message>
        <source>Question</source>
        <translation type="unfinished">Frage</translation>
    </message>
    <message>
        <source>In the model, and why</source>
        <translation type="unfinished">Im Modell, und warum</translation>
    </message>
    <message>
        <source>Training order is not incident order</source>
        <translation type="unfinished">Die Reihenfolge der Übung ist nicht die des Einsatzes</translation>
    </message>
    <message>
        <source>Before metal work: scene protected, car steady, energy isolated, patient covered and cared for</source>
        <translation type="unfinished">Vor der Arbeit am Metall: Einsatzstelle gesichert, Auto steht fest, Energie abgeschaltet, Patient abgedeckt und betreut</translation>
    </message>
    <message>
        <source>Your service's procedure and licensed, hands-on practice come first</source>
        <translation type="unfinished">Die Vorschrift Ihrer Wehr und praktische, zugelassene Übung gehen vor</translation>
    </message>
    <message>
        <source>striker out of its fork</source>
        <translation type="unfinished">Schließkeil aus seiner Gabel</translation>
    </message>
    <message>
        <source>foot of the bar</source>
        <translation type="unfinished">Fuß des Trägers</translation>
    </message>
    <message>
        <source>sheet, by tearing</source>
        <translation type="unfinished">Blech, durch Reißen</translation>
    </message>
    <message>
        <source>head or foot of the ram</source>
        <translation type="unfinished">Kopf oder Fuß des Zylinders</translation>
    </message>
    <message>
        <source>base</source>
        <translation type="unfinished">Unterlage</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation type="unfinished">nichts</translation>
    </message>
    <message>
        <source>First to give</source>
        <translation type="unfinished">Zuerst gibt nach</translation>
    </message>
    <message>
        <source>This sheet is kept by seat number, in your service's records</source>
        <translation type="unfinished">Dieses Blatt wird nach Platznummer aufbewahrt, in den Unterlagen Ihrer Wehr</translation>
    </message>
    <message>
        <source>On the screen, and on the metal</source>
        <translation type="unfinished">Auf dem Bildschirm, und am Metall</translation>
    </message>
    <message>
        <source>What happened on the metal</source>
        <translation type="unfinished">Was am Metall geschah</translation>
    </message>
    <message>
        <source>S satisfactory, U unsatisfactory. A step marked U has its reason, and is tried again by itself</source>
        <translation type="unfinished">S bestanden, U nicht bestanden. Ein Schritt mit U hat seinen Grund und wird für sich wiederholt</translation>
    </message>
    <message>
        <source>Claims of the lesson as a whole</source>
        <translation type="unfinished">Aussagen der ganzen Lektion</translation>
    </message>
    <message>
        <source>Standards named</source>
        <translation type="unfinished">Genannte Normen</translation>
    </message>
    <message>
        <source>Steps</source>
        <translation type="unfinished">Schritte</translation>
    </message>
    <message>
        <source>Questions, and what the runs say</source>
        <translation type="unfinished">Fragen, und was die Rechnungen sagen</translation>
    </message>
    <message>
        <source>To end with</source>
        <translation type="unfinished">Zum Schluss</translation>
    </message>
    <message>
        <source>Limits, and hazards to name</source>
        <translation type="unfinished">Grenzen, und zu nennende Gefahren</translation>
    </message>
    <message>
        <source>Lesson</source>
        <translation type="unfinished">Lektion</translation>
    </message>
    <message>
        <source>On the screen</source>
        <translation type="unfinished">Auf dem Bildschirm</translation>
    </message>
    <message>
        <source>Look</source>
        <translation type="unfinished">Sehen</translation>
    </message>
    <message>
        <source>Listen</source>
        <translation type="unfinished">Hören</translation>
    </message>
    <message>
        <source>Feel</source>
        <translation type="unfinished">Fühlen</translation>
    </message>
    <message>
        <source>Place</source>
        <translation type="unfinished">Ort</translation>
    </message>
    <message>
        <source>Door: seam, metal, latch (no make)</source>
        <translation type="unfinished">Tür: Naht, Metall, Schloss (keine Marke)</translation>
    </message>
    <message>
        <source>Tool</source>
        <translation type="unfinished">Gerät</translation>
    </message>
    <message>
        <source>No run of the model stands behind this sheet; the signs are those of the trade</source>
        <translation type="unfinished">Hinter diesem Blatt steht keine Rechnung des Modells; die Zeichen sind die des Fachs</translation>
    </message>
    <message>
        <source>Try (first, second)</source>
        <translation type="unfinished">Versuch (erster, zweiter)</translation>
    </message>
    <message>
        <source>Step, and what is looked for</source>
        <translation type="unfinished">Schritt, und worauf geachtet wird</translation>
    </message>
    <message>
        <source>Reason (for each U)</source>
        <translation type="unfinished">Grund (für jedes U)</translation>
    </message>
    <message>
        <source>Again</source>
        <translation type="unfinished">Noch einmal</translation>
    </message>
    <message>
        <source>Evaluator's signature</source>
        <translation type="unfinished">Unterschrift der bewertenden Person</translation>
    </message>
    <message>
        <source>Signed by the one evaluated</source>
        <translation type="unfinished">Unterschrift der bewerteten Person</translation>
    </message>
    <message>
        <source>{author}, {date}. Licence {licence}. Piloted on: {pilot}. Level: {level}. For: {level2}</source>
        <translation type="unfinished">{author}, {date}. Lizenz {licence}. Erprobt am: {pilot}. Stufe: {level}. Für: {level2}</translation>
    </message>
    <message>
        <source>Licence {name}</source>
        <translation type="unfinished">Lizenz {name}</translation>
    </message>
    <message>
        <source>Piloted on: {pilot}</source>
        <translation type="unfinished">Erprobt am: {pilot}</translation>
    </message>
    <message>
        <source>Level: {level}</source>
        <translation type="unfinished">Stufe: {level}</translation>
    </message>
    <message>
        <source>For: {level2}</source>
        <translation type="unfinished">Für: {level2}</translation>
    </message>
    <message>
        <source>Claim</source>
        <translation type="unfinished">Aussage</translation>
    </message>
    <message>
        <source>Source</source>
        <translation type="unfinished">Quelle</translation>
    </message>
    <message>
        <source>To change</source>
        <translation type="unfinished">Zu ändern</translation>
    </message>
    <message>
        <source>Standard</source>
        <translation type="unfinished">Norm</translation>
    </message>
    <message>
        <source>Edition</source>
        <translation type="unfinished">Ausgabe</translation>
    </message>
    <message>
        <source>What for</source>
        <translation type="unfinished">Wofür</translation>
    </message>
    <message>
        <source>Clause read by, on</source>
        <translation type="unfinished">Abschnitt gelesen von, am</translation>
    </message>
    <message>
        <source>Reviewed by (post)</source>
        <translation type="unfinished">Geprüft von (Funktion)</translation>
    </message>
    <message>
        <source>Owner of the procedure</source>
        <translation type="unfinished">Zuständig für die Vorschrift</translation>
    </message>
    <message>
        <source>Signatures</source>
        <translation type="unfinished">Unterschriften</translation>
    </message>
    <message>
        <source>Car</source>
        <translation type="unfinished">Auto</translation>
    </message>
    <message>
        <source>Next nearest</source>
        <translation type="unfinished">Als Nächstes</translation>
    </message>
    <message>
        <source>{text}, {n} % away</source>
        <translation type="unfinished">{text}, {n} % entfernt</translation>
    </message>
    <message>
        <source>Questions on it</source>
        <translation type="unfinished">Fragen dazu</translation>
    </message>
    <message>
        <source>{n}, of them not graded: {text}</source>
        <translation type="unfinished">{n}, davon nicht bewertet: {text}</translation>
    </message>
    <message>
        <source>Says so</source>
        <translation type="unfinished">Sagt wer</translation>
    </message>
    <message>
        <source>this model, version {n}; plan {hash}</source>
        <translation type="unfinished">dieses Modell, Version {n}; Plan {hash}</translation>
    </message>
    <message>
        <source>Kept result</source>
        <translation type="unfinished">Aufbewahrtes Ergebnis</translation>
    </message>
    <message>
        <source>Right / to change</source>
        <translation type="unfinished">Richtig / zu ändern</translation>
    </message>
    <message>
        <source>Level, session</source>
        <translation type="unfinished">Stufe, Einheit</translation>
    </message>
    <message>
        <source>{level}; {session}; about {n} min</source>
        <translation type="unfinished">{level}; {session}; etwa {n} min</translation>
    </message>
    <message>
        <source>Who</source>
        <translation type="unfinished">Wer</translation>
    </message>
    <message>
        <source>Does what</source>
        <translation type="unfinished">Tut was</translation>
    </message>
    <message>
        <source>Given what</source>
        <translation type="unfinished">Womit</translation>
    </message>
    <message>
        <source>How well</source>
        <translation type="unfinished">Wie gut</translation>
    </message>
    <message>
        <source>Standards</source>
        <translation type="unfinished">Normen</translation>
    </message>
    <message>
        <source>{author}, {date}; licence {licence}</source>
        <translation type="unfinished">{author}, {date}; Lizenz {licence}</translation>
    </message>
    <message>
        <source>For the class</source>
        <translation type="unfinished">Für die Klasse</translation>
    </message>
    <message>
        <source>none named</source>
        <translation type="unfinished">keine genannt</translation>
    </message>
    <message>
        <source>no date</source>
        <translation type="unfinished">kein Datum</translation>
    </message>
    <message>
        <source>not yet</source>
        <translation type="unfinished">noch nicht</translation>
    </message>
    <message>
        <source>To have ready</source>
        <translation type="unfinished">Bereitzuhalten</translation>
    </message>
    <message>
        <source>To have read</source>
        <translation type="unfinished">Zu lesen</translation>
    </message>
    <message>
        <source>What is modelled</source>
        <translation type="unfinished">Was nachgebildet ist</translation>
    </message>
    <message>
        <source>What is not</source>
        <translation type="unfinished">Was nicht</translation>
    </message>
    <message>
        <source>Known failures</source>
        <translation type="unfinished">Bekannte Mängel</translation>
    </message>
    <message>
        <source>Where the lattice decides</source>
        <translation type="unfinished">Wo das Gitter entscheidet</translation>
    </message>
    <message>
        <source>Every number</source>
        <translation type="unfinished">Jede Zahl</translation>
    </message>
    <message>
        <source>What is varied in many runs</source>
        <translation type="unfinished">Was in vielen Rechnungen verändert wird</translation>
    </message>
    <message>
        <source>What scenarios came to</source>
        <translation type="unfinished">Was Szenarien ergaben</translation>
    </message>
    <message>
        <source>A teaching model of the side of one invented car: two doors on three pillars, and a person inside. It shows order and direction: which part gives first, and which way the metal goes. It is not a real car, and forces of whole doors are estimates. Local procedure and hands-on practice with a licensed instructor come first</source>
        <translation type="unfinished">Ein Lehrmodell der Seite eines erfundenen Autos: zwei Türen an drei Säulen und ein Mensch darin. Es zeigt Reihenfolge und Richtung: welches Teil zuerst nachgibt, und wohin das Metall geht. Es ist kein echtes Auto, und Kräfte ganzer Türen sind Schätzungen. Örtliche Vorschrift und praktische Übung mit zugelassener Lehrkraft gehen vor</translation>
    </message>
    <message>
        <source>Outer skin, inner panel and shut face as sheets of metal that stretch, bend, yield and keep their creases</source>
        <translation type="unfinished">Außenhaut, Innenblech und Stirnfläche als Bleche, die sich dehnen, biegen, fließen und ihre Knicke behalten</translation>
    </message>
    <message>
        <source>The seam all along the hem: a bead that opens and slips and costs energy per metre, spot welds, or both</source>
        <translation type="unfinished">Die Naht am ganzen Falz: eine Raupe, die aufgeht und rutscht und je Meter Energie kostet, Schweißpunkte oder beides</translation>
    </message>
    <message>
        <source>Latch and hinges that hold on a stiffened patch and let go at a load no lower than the law asks</source>
        <translation type="unfinished">Schloss und Scharniere, die an einer versteiften Stelle halten und nicht unter der vorgeschriebenen Last freigeben</translation>
    </message>
    <message>
        <source>The bar with its feet, the belt strips and the window frame as beams that bend and yield</source>
        <translation type="unfinished">Der Träger mit seinen Füßen, die Brüstungsleisten und der Fensterrahmen als Balken, die sich biegen und fließen</translation>
    </message>
    <message>
        <source>Contact of the door with the body's flange, of skin on inner panel, of both on the bar: pressure, never a pull</source>
        <translation type="unfinished">Berührung der Tür mit dem Flansch der Karosserie, der Haut mit dem Innenblech, beider mit dem Träger: Druck, nie Zug</translation>
    </message>
    <message>
        <source>Tips as pads with a width and a length that hold by friction and slip; where they lie decides which sheet carries them</source>
        <translation type="unfinished">Spitzen als Auflagen mit Breite und Länge, die durch Reibung halten und rutschen; wo sie liegen, entscheidet, welches Blech sie trägt</translation>
    </message>
    <message>
        <source>Tears that run from a free edge where the sheet is pulled hardest, and cost energy per length on any lattice</source>
        <translation type="unfinished">Risse, die von einer freien Kante laufen, wo das Blech am stärksten gezogen wird, und auf jedem Gitter je Länge Energie kosten</translation>
    </message>
    <message>
        <source>A rigid cylinder, face or pole pressed into the side, as a door gets wrecked</source>
        <translation type="unfinished">Ein starrer Zylinder, eine Fläche oder ein Pfahl, in die Seite gedrückt, wie eine Tür beschädigt wird</translation>
    </message>
    <message>
        <source>Each push as small increments at rest, with books: work in is energy stored or spent, to 2 %</source>
        <translation type="unfinished">Jeder Druck als kleine ruhende Schritte, mit Büchern: hineingesteckte Arbeit ist gespeicherte oder verbrauchte Energie, auf 2 %</translation>
    </message>
    <message>
        <source>Speed, shock and vibration: every moment is at rest</source>
        <translation type="unfinished">Tempo, Stoß und Schwingung: jeder Moment ruht</translation>
    </message>
    <message>
        <source>A crash at speed: a door is wrecked here by a slow, rigid press</source>
        <translation type="unfinished">Ein Unfall mit Tempo: eine Tür wird hier durch langsames, starres Drücken beschädigt</translation>
    </message>
    <message>
        <source>Rust, paint, trim, glass, airbags and the restraints</source>
        <translation type="unfinished">Rost, Lack, Verkleidung, Glas, Airbags und die Rückhaltesysteme</translation>
    </message>
    <message>
        <source>Roof, rear door and floor as metal that yields; the body round the door stands still</source>
        <translation type="unfinished">Dach, hintere Tür und Boden als Metall, das nachgibt; die Karosserie um die Tür steht still</translation>
    </message>
    <message>
        <source>Slip costing more energy than peel: the seam spends the same per metre whichever way it goes</source>
        <translation type="unfinished">Dass Scheren mehr Energie kostet als Schälen: die Naht verbraucht je Meter dasselbe, wie sie auch geht</translation>
    </message>
    <message>
        <source>Sheets of one part touching themselves when they fold flat</source>
        <translation type="unfinished">Dass Bleche eines Teils sich selbst berühren, wenn sie flach falten</translation>
    </message>
    <message>
        <source>Injury: clearance is a distance to an envelope, never a statement about a person</source>
        <translation type="unfinished">Verletzung: der Abstand ist einer zu einer Hülle, nie eine Aussage über einen Menschen</translation>
    </message>
    <message>
        <source>No public force-opening curve of a real door is known: the order and the direction are the claim, the kilonewtons are not</source>
        <translation type="unfinished">Keine öffentliche Kraft-Öffnungs-Kurve einer echten Tür ist bekannt: behauptet werden Reihenfolge und Richtung, nicht die Kilonewton</translation>
    </message>
    <message>
        <source>How much of the load the hem lip carries hangs on millimetres of seat; near the middle the program says not settled</source>
        <translation type="unfinished">Wie viel der Last die Falzkante trägt, hängt an Millimetern des Sitzes; nahe der Mitte sagt das Programm: nicht gesichert</translation>
    </message>
    <message>
        <source>The quick arrow before a push is elastic and right in three of four places; the whole one tries 3.5 mm of the push and is right in more than 95 of 100</source>
        <translation type="unfinished">Der schnelle Pfeil vor einem Druck ist elastisch und an drei von vier Stellen richtig; der ganze versucht 3.5 mm des Drucks und ist in mehr als 95 von 100 richtig</translation>
    </message>
    <message>
        <source>The ladder names the part that gives first in about seven of eight cases, one increment before</source>
        <translation type="unfinished">Die Leiter nennt das Teil, das zuerst nachgibt, in etwa sieben von acht Fällen einen Schritt vorher</translation>
    </message>
    <message>
        <source>A welded door lets go in larger steps than a bonded one, 1.2 to 1.5 times; 1.3 is asked of it</source>
        <translation type="unfinished">Eine geschweißte Tür gibt in größeren Stufen frei als eine geklebte, 1.2- bis 1.5-mal; 1.3 wird verlangt</translation>
    </message>
    <message>
        <source>Clamped edges bend too easily on a coarse lattice: 13 % on twelve triangles a side, 3-4 % on twenty-four</source>
        <translation type="unfinished">Eingespannte Kanten biegen auf grobem Gitter zu leicht: 13 % bei zwölf Dreiecken je Seite, 3-4 % bei vierundzwanzig</translation>
    </message>
    <message>
        <source>A door pressed in by a cylinder is drawn off its frame too soon: its mean over 305 mm is 6.4 kN, half the rule's floor is 7.8</source>
        <translation type="unfinished">Eine vom Zylinder eingedrückte Tür wird zu früh von ihrem Rahmen gezogen: ihr Mittel über 305 mm ist 6.4 kN, die halbe Vorschrift ist 7.8</translation>
    </message>
    <message>
        <source>Bent metal is up to 5 % too strong at two and a half times first yield</source>
        <translation type="unfinished">Gebogenes Metall ist beim Zweieinhalbfachen des ersten Fließens bis 5 % zu stark</translation>
    </message>
    <message>
        <source>With what is not known varied (64 runs, 45 mm), the seam parts first on the hem lip in all of them, but the latch then carries more than half of what it holds in 20</source>
        <translation type="unfinished">Wird verändert, was nicht bekannt ist (64 Rechnungen, 45 mm), geht an der Falzkante in allen zuerst die Naht auf, aber das Schloss trägt dann in 20 mehr als die Hälfte dessen, was es hält</translation>
    </message>
    <message>
        <source>Behind the inner bend what gives first is not settled then: narrow tips free the latch first in 47 of 64 runs, part the seam in 14; wide tips 44 and 17</source>
        <translation type="unfinished">Hinter der inneren Biegung ist dann nicht gesichert, was zuerst nachgibt: schmale Spitzen lösen in 47 von 64 Rechnungen zuerst das Schloss, öffnen in 14 die Naht; breite 44 und 17</translation>
    </message>
    <message>
        <source>On the hem lip the skin is told to tear too soon, when the lip is stretched to a third of where its metal necks. Where it begins hangs on the lattice (15 to 85 mm of opening on six lattices), and so does how far seam and tear run after 40 mm: not settled</source>
        <translation type="unfinished">An der Falzkante reißt die Haut zu früh, wenn die Kante auf ein Drittel dessen gedehnt ist, wo ihr Metall einschnürt. Wo es beginnt, hängt am Gitter (15 bis 85 mm Öffnung auf sechs Gittern), ebenso, wie weit Naht und Riss nach 40 mm laufen: nicht gesichert</translation>
    </message>
    <message>
        <source>A skin creased in by a squeeze goes further in under a push along the car, one that is not squeezed begins to go out; what comes after the first millimetres hangs on the seat, for the corner of the latch edge folds, and the inner panel does not follow as the trade says</source>
        <translation type="unfinished">Eine durch Quetschen nach innen geknickte Haut geht unter einem Druck längs des Autos weiter hinein, eine nicht gequetschte beginnt nach außen zu gehen; was nach den ersten Millimetern kommt, hängt am Sitz, denn die Ecke der Schlosskante faltet, und das Innenblech folgt nicht, wie das Fach sagt</translation>
    </message>
    <message>
        <source>gives</source>
        <translation type="unfinished">gibt nach</translation>
    </message>
    <message>
        <source>the map is not whole yet</source>
        <translation type="unfinished">die Karte ist noch nicht vollständig</translation>
    </message>
    <message>
        <source>taken out</source>
        <translation type="unfinished">herausgenommen</translation>
    </message>
    <message>
        <source>Untitled</source>
        <translation type="unfinished">Ohne Titel</translation>
    </message>
    <message>
        <source>grounded</source>
        <translation type="unfinished">steht auf dem Boden</translation>
    </message>
    <message>
        <source>The section is drawn for tips in a gap at the door's edge.</source>
        <translation type="unfinished">Der Schnitt wird für Spitzen in einem Spalt an der Türkante gezeichnet.</translation>
    </message>
    <message>
        <source>front door trim</source>
        <translation type="unfinished">Verkleidung der vorderen Tür</translation>
    </message>
    <message>
        <source>rear door trim</source>
        <translation type="unfinished">Verkleidung der hinteren Tür</translation>
    </message>
    <message>
        <source>lower pillar trim</source>
        <translation type="unfinished">untere Säulenverkleidung</translation>
    </message>
    <message>
        <source>upper pillar trim</source>
        <translation type="unfinished">obere Säulenverkleidung</translation>
    </message>
    <message>
        <source>roof edge trim</source>
        <translation type="unfinished">Dachrandverkleidung</translation>
    </message>
    <message>
        <source>front door seal</source>
        <translation type="unfinished">Dichtung der vorderen Tür</translation>
    </message>
    <message>
        <source>rear door seal</source>
        <translation type="unfinished">Dichtung der hinteren Tür</translation>
    </message>
    <message>
        <source>front pane</source>
        <translation type="unfinished">vordere Scheibe</translation>
    </message>
    <message>
        <source>rear pane</source>
        <translation type="unfinished">hintere Scheibe</translation>
    </message>
    <message>
        <source>door trim</source>
        <translation type="unfinished">Türverkleidung</translation>
    </message>
    <message>
        <source>door seal</source>
        <translation type="unfinished">Türdichtung</translation>
    </message>
    <message>
        <source>pane</source>
        <translation type="unfinished">Scheibe</translation>
    </message>
    <message>
        <source>at the raw edge of the {what}</source>
        <translation type="unfinished">an der rohen Kante von {what:dative}</translation>
    </message>
    <message>
        <source>in the pocket on the {what}</source>
        <translation type="unfinished">in der Tasche an {what:dative}</translation>
    </message>
    <message>
        <source>front near wheel</source>
        <translation type="unfinished">nahes Vorderrad</translation>
    </message>
    <message>
        <source>front far wheel</source>
        <translation type="unfinished">fernes Vorderrad</translation>
    </message>
    <message>
        <source>rear near wheel</source>
        <translation type="unfinished">nahes Hinterrad</translation>
    </message>
    <message>
        <source>rear far wheel</source>
        <translation type="unfinished">fernes Hinterrad</translation>
    </message>
    <message>
        <source>{length} in all</source>
        <translation type="unfinished">{length} im Ganzen</translation>
    </message>
    <message>
        <source>the seam parted with it, {length} in all</source>
        <translation type="unfinished">die Naht ging mit ihm auf, {length} im Ganzen</translation>
    </message>
    <message>
        <source>the seam parted with it, {length}</source>
        <translation type="unfinished">die Naht ging mit ihm auf, {length}</translation>
    </message>
    <message>
        <source>The latch let go at {length} with no more of the seam parted</source>
        <translation type="unfinished">Das Schloss gab bei {length} frei, ohne dass mehr von der Naht aufging</translation>
    </message>
    <message>
        <source>with no more of the seam parted</source>
        <translation type="unfinished">ohne dass mehr von der Naht aufging</translation>
    </message>
    <message>
        <source>{length} into the car</source>
        <translation type="unfinished">{length} ins Auto</translation>
    </message>
    <message>
        <source>{length} out of the car</source>
        <translation type="unfinished">{length} aus dem Auto</translation>
    </message>
    <message>
        <source>bonded steel</source>
        <translation type="unfinished">Stahl geklebt</translation>
    </message>
    <message>
        <source>welded steel</source>
        <translation type="unfinished">Stahl geschweißt</translation>
    </message>
    <message>
        <source>bonded alloy</source>
        <translation type="unfinished">Aluminium geklebt</translation>
    </message>
    <message>
        <source>bonded bead</source>
        <translation type="unfinished">geklebt</translation>
    </message>
    <message>
        <source>spot welded</source>
        <translation type="unfinished">geschweißt</translation>
    </message>
    <message>
        <source>a bead and spots</source>
        <translation type="unfinished">beides</translation>
    </message>
    <message>
        <source>fully latched</source>
        <translation type="unfinished">ganz zu</translation>
    </message>
    <message>
        <source>half latched</source>
        <translation type="unfinished">halb zu</translation>
    </message>
    <message>
        <source>held open</source>
        <translation type="unfinished">offen gehalten</translation>
    </message>
    <message>
        <source>bar foot rear</source>
        <translation type="unfinished">hinterer Trägerfuß</translation>
    </message>
    <message>
        <source>bar foot front</source>
        <translation type="unfinished">vorderer Trägerfuß</translation>
    </message>
    <message>
        <source>opening, mm</source>
        <translation type="unfinished">Öffnung, mm</translation>
    </message>
    <message>
        <source>opening, in</source>
        <translation type="unfinished">Öffnung, in</translation>
    </message>
    <message>
        <source>force, kN</source>
        <translation type="unfinished">Kraft, kN</translation>
    </message>
    <message>
        <source>force, lbf</source>
        <translation type="unfinished">Kraft, lbf</translation>
    </message>
    <message>
        <source>Look at</source>
        <translation type="unfinished">Ansehen</translation>
    </message>
    <message>
        <source>{name}: the kept results are missing or of another plan or model version; run them again</source>
        <translation type="unfinished">{name}: Die aufbewahrten Ergebnisse fehlen oder gehören zu anderem Plan oder anderer Modellversion; neu ausführen</translation>
    </message>
    <message>
        <source>Open</source>
        <translation type="unfinished">Einstieg</translation>
    </message>
    <message>
        <source>Show</source>
        <translation type="unfinished">Zeigen</translation>
    </message>
    <message>
        <source>Try</source>
        <translation type="unfinished">Versuchen</translation>
    </message>
    <message>
        <source>Check</source>
        <translation type="unfinished">Prüfen</translation>
    </message>
    <message>
        <source>operations</source>
        <translation type="unfinished">Einsatz</translation>
    </message>
    <message>
        <source>awareness</source>
        <translation type="unfinished">Grundwissen</translation>
    </message>
    <message>
        <source>technician</source>
        <translation type="unfinished">Fachkraft</translation>
    </message>
    <message>
        <source>step {n} of {n2}, open</source>
        <translation type="unfinished">Schritt {n} von {n2}, Einstieg</translation>
    </message>
    <message>
        <source>step {n} of {n2}, show</source>
        <translation type="unfinished">Schritt {n} von {n2}, Zeigen</translation>
    </message>
    <message>
        <source>step {n} of {n2}, try</source>
        <translation type="unfinished">Schritt {n} von {n2}, Versuchen</translation>
    </message>
    <message>
        <source>step {n} of {n2}, check</source>
        <translation type="unfinished">Schritt {n} von {n2}, Prüfen</translation>
    </message>
    <message>
        <source>{level}, step {n} of {n2}, open</source>
        <translation type="unfinished">{level}, Schritt {n} von {n2}, Einstieg</translation>
    </message>
    <message>
        <source>{level}, step {n} of {n2}, show</source>
        <translation type="unfinished">{level}, Schritt {n} von {n2}, Zeigen</translation>
    </message>
    <message>
        <source>{level}, step {n} of {n2}, try</source>
        <translation type="unfinished">{level}, Schritt {n} von {n2}, Versuchen</translation>
    </message>
    <message>
        <source>{level}, step {n} of {n2}, check</source>
        <translation type="unfinished">{level}, Schritt {n} von {n2}, Prüfen</translation>
    </message>
    <message>
        <source>hinge patch</source>
        <translation type="unfinished">Scharnierverstärkung</translation>
    </message>
    <message>
        <source>latch patch</source>
        <translation type="unfinished">Schlossverstärkung</translation>
    </message>
    <message>
        <source>latch wrap</source>
        <translation type="unfinished">Schlossumgriff</translation>
    </message>
    <message>
        <source>latch pillar</source>
        <translation type="unfinished">Schlosssäule</translation>
    </message>
    <message>
        <source>front pillar</source>
        <translation type="unfinished">vordere Säule</translation>
    </message>
    <message>
        <source>rear pillar</source>
        <translation type="unfinished">hintere Säule</translation>
    </message>
    <message>
        <source>middle pillar</source>
        <translation type="unfinished">mittlere Säule</translation>
    </message>
    <message>
        <source>{energy} sprung</source>
        <translation type="unfinished">{energy} gefedert</translation>
    </message>
    <message>
        <source>{text} + {energy} sprung</source>
        <translation type="unfinished">{text} + {energy} gefedert</translation>
    </message>
    <message>
        <source>the key</source>
        <translation type="unfinished">die Lösung</translation>
    </message>
    <message>
        <source>fresh</source>
        <translation type="unfinished">aktuell</translation>
    </message>
    <message>
        <source>licence</source>
        <translation type="unfinished">Lizenz</translation>
    </message>
    <message>
        <source>Correct</source>
        <translation type="unfinished">Richtig</translation>
    </message>
    <message>
        <source>Scored on the model</source>
        <translation type="unfinished">Am Modell bewertet</translation>
    </message>
    <message>
        <source>Practical assessment is separate</source>
        <translation type="unfinished">Die praktische Prüfung ist davon getrennt</translation>
    </message>
    <message>
        <source>Step {n}, {phase}</source>
        <translation type="unfinished">Schritt {n}, {phase}</translation>
    </message>
    <message>
        <source>the seat of the ram, by slipping</source>
        <translation type="unfinished">der Sitz des Rettungszylinders, durch Rutschen</translation>
    </message>
    <message>
        <source>a sheet, by tearing</source>
        <translation type="unfinished">ein Blech, durch Reißen</translation>
    </message>
    <message>
        <source>the striker, out of its fork</source>
        <translation type="unfinished">der Schließkeil, aus seiner Gabel</translation>
    </message>
    <message>
        <source>the pillar's edge</source>
        <translation type="unfinished">die Säulenkante</translation>
    </message>
    <message>
        <source>{what}: {value} - {word}</source>
        <translation type="unfinished">{what}: {value} - {word}</translation>
    </message>
    <message>
        <source>folder of the settings: {path} can be written - {word}</source>
        <translation type="unfinished">Ordner der Einstellungen: {path} kann beschrieben werden - {word}</translation>
    </message>
    <message>
        <source>folder of the settings: {path} cannot be written - {word}</source>
        <translation type="unfinished">Ordner der Einstellungen: {path} kann nicht beschrieben werden - {word}</translation>
    </message>
    <message>
        <source>drawing: {value}; still pictures can be drawn - {word}</source>
        <translation type="unfinished">Zeichnen: {value}; Standbilder können gezeichnet werden - {word}</translation>
    </message>
    <message>
        <source>drawing: {value}, nor can still pictures be drawn - {word}</source>
        <translation type="unfinished">Zeichnen: {value}, auch Standbilder können nicht gezeichnet werden - {word}</translation>
    </message>
    <message>
        <source>good</source>
        <translation type="unfinished">gut</translation>
    </message>
    <message>
        <source>} or Shift+D</source>
        <translation type="unfinished">} oder Umschalt+D</translation>
    </message>
    <message>
        <source>{ or Shift+S</source>
        <translation type="unfinished">{ oder Umschalt+S</translation>
    </message>
    <message>
        <source>read from kept shapes</source>
        <translation type="unfinished">aus gespeicherten Formen gelesen</translation>
    </message>
    <message>
        <source>as it was</source>
        <translation type="unfinished">wie zuvor</translation>
    </message>
    <message>
        <source>bent</source>
        <translation type="unfinished">gebogen</translation>
    </message>
    <message>
        <source>creased</source>
        <translation type="unfinished">geknickt</translation>
    </message>
    <message>
        <source>folded</source>
        <translation type="unfinished">gefaltet</translation>
    </message>
    <message>
        <source>crushed</source>
        <translation type="unfinished">gestaucht</translation>
    </message>
    <message>
        <source>Folded most: {part}, {length} {way} the door's lower edge, {n} kJ/m²</source>
        <translation type="unfinished">Am stärksten gefaltet: {part}, {length} {way} der Türunterkante, {n} kJ/m²</translation>
    </message>
    <message>
        <source>Folded most: {part}, {length} {way} the door's lower edge, {n} kJ/m², {step}</source>
        <translation type="unfinished">Am stärksten gefaltet: {part}, {length} {way} der Türunterkante, {n} kJ/m², {step}</translation>
    </message>
    <message>
        <source>{n} kJ/m²</source>
        <translation type="unfinished">{n} kJ/m²</translation>
    </message>
    <message>
        <source>Creased or more: {n} % of the sheets</source>
        <translation type="unfinished">Geknickt oder mehr: {n} % der Bleche</translation>
    </message>
    <message>
        <source>No sheet has been bent for good</source>
        <translation type="unfinished">Kein Blech ist bleibend gebogen</translation>
    </message>
    <message>
        <source>Read from kept shapes, to about a tenth</source>
        <translation type="unfinished">Aus gespeicherten Formen gelesen, auf etwa ein Zehntel</translation>
    </message>
    <message>
        <source>Where it folded</source>
        <translation type="unfinished">Wo es faltete</translation>
    </message>
    <message>
        <source>Mark at {length}: go on, or stop and cut? (Ctrl+K)</source>
        <translation type="unfinished">Marke bei {length}: weiter, oder anhalten und schneiden? (Ctrl+K)</translation>
    </message>
    <message>
        <source>Go on, or stop and cut? (Ctrl+K)</source>
        <translation type="unfinished">Weiter, oder anhalten und schneiden? (Ctrl+K)</translation>
    </message>
    <message>
        <source>Go on, or cut?</source>
        <translation type="unfinished">Weiter, oder schneiden?</translation>
    </message>
    <message>
        <source>What going on costs against stopping to cut: both worked out</source>
        <translation type="unfinished">Was Weitermachen kostet gegen Anhalten und Schneiden: beides durchgerechnet</translation>
    </message>
    <message>
        <source>pillar tearing</source>
        <translation type="unfinished">Säule reißt</translation>
    </message>
    <message>
        <source>rail tearing</source>
        <translation type="unfinished">Dachholm reißt</translation>
    </message>
    <message>
        <source>rocker tearing</source>
        <translation type="unfinished">Schweller reißt</translation>
    </message>
    <message>
        <source>One of {n} ready plans of “{title}”</source>
        <translation type="unfinished">Einer von {n} fertigen Plänen zu „{title}“</translation>
    </message>
    <message>
        <source>Save the plan as</source>
        <translation type="unfinished">Den Plan speichern unter</translation>
    </message>
    <message>
        <source>Matching pictures from a list</source>
        <translation type="unfinished">Zueinander passende Bilder nach einer Liste</translation>
    </message>
    <message>
        <source>Sheets of lesson or plan: print, PDF</source>
        <translation type="unfinished">Blätter zu Lektion oder Plan: drucken, PDF</translation>
    </message>
    <message>
        <source>Find an action by its words</source>
        <translation type="unfinished">Eine Aktion mit Wörtern finden</translation>
    </message>
    <message>
        <source>Save a picture of the stage</source>
        <translation type="unfinished">Ein Bild der Bühne speichern</translation>
    </message>
    <message>
        <source>Picture saved: {path}</source>
        <translation type="unfinished">Bild gespeichert: {path}</translation>
    </message>
    <message>
        <source>The rules, words and hazards of your own service, shown beside lessons and on sheets.</source>
        <translation type="unfinished">Die Regeln, Wörter und Gefahren der eigenen Wehr, gezeigt neben Lektionen und auf Blättern.</translation>
    </message>
    <message>
        <source>They come before anything this program says. Change every line; keep author and date true.</source>
        <translation type="unfinished">Sie gehen allem vor, was dieses Programm sagt. Jede Zeile ändern; Verfasser und Datum wahr halten.</translation>
    </message>
    <message>
        <source>Stop when the skin begins to tear; the officer decides how to go on.</source>
        <translation type="unfinished">Halten, wenn die Außenhaut zu reißen beginnt; die Führungskraft entscheidet, wie es weitergeht.</translation>
    </message>
    <message>
        <source>Our second engine carries no cutter: call for it before a post is touched.</source>
        <translation type="unfinished">Unser zweites Fahrzeug hat kein Schneidgerät: anfordern, bevor eine Säule berührt wird.</translation>
    </message>
    <message>
        <source>purchase</source>
        <translation type="unfinished">Ansatzpunkt</translation>
    </message>
</context>
<context>
    <name>nominative</name>
    <message>
        <source>latch</source>
        <translation type="unfinished">das Schloss</translation>
    </message>
    <message>
        <source>upper hinge</source>
        <translation type="unfinished">das obere Scharnier</translation>
    </message>
    <message>
        <source>lower hinge</source>
        <translation type="unfinished">das untere Scharnier</translation>
    </message>
    <message>
        <source>striker</source>
        <translation type="unfinished">der Schließkeil</translation>
    </message>
    <message>
        <source>wedged striker</source>
        <translation type="unfinished">der verklemmte Schließkeil</translation>
    </message>
    <message>
        <source>rear {part:nominative}</source>
        <translation type="unfinished">{part:nominative} hinten</translation>
    </message>
    <message>
        <source>front {part:nominative}</source>
        <translation type="unfinished">{part:nominative} vorn</translation>
    </message>
    <message>
        <source>outer skin</source>
        <translation type="unfinished">die Außenhaut</translation>
    </message>
    <message>
        <source>inner panel</source>
        <translation type="unfinished">das Innenblech</translation>
    </message>
    <message>
        <source>hem</source>
        <translation type="unfinished">der Falz</translation>
    </message>
    <message>
        <source>hem lip</source>
        <translation type="unfinished">die Falzkante</translation>
    </message>
    <message>
        <source>seam</source>
        <translation type="unfinished">die Naht</translation>
    </message>
    <message>
        <source>latch plate</source>
        <translation type="unfinished">die Schlossplatte</translation>
    </message>
    <message>
        <source>shut face</source>
        <translation type="unfinished">die Stirnfläche</translation>
    </message>
    <message>
        <source>shut-face edge</source>
        <translation type="unfinished">der Rand der Stirnfläche</translation>
    </message>
    <message>
        <source>belt line</source>
        <translation type="unfinished">die Brüstung</translation>
    </message>
    <message>
        <source>belt outer lip</source>
        <translation type="unfinished">die Außenlippe der Brüstung</translation>
    </message>
    <message>
        <source>belt inner lip</source>
        <translation type="unfinished">die Innenlippe der Brüstung</translation>
    </message>
    <message>
        <source>belt, both lips</source>
        <translation type="unfinished">die Brüstung mit beiden Lippen</translation>
    </message>
    <message>
        <source>inner face</source>
        <translation type="unfinished">die Innenfläche</translation>
    </message>
    <message>
        <source>pillar</source>
        <translation type="unfinished">die Säule</translation>
    </message>
    <message>
        <source>pillar edge</source>
        <translation type="unfinished">die Säulenkante</translation>
    </message>
    <message>
        <source>pillar outside</source>
        <translation type="unfinished">die Außenseite der Säule</translation>
    </message>
    <message>
        <source>pillar foot</source>
        <translation type="unfinished">der Säulenfuß</translation>
    </message>
    <message>
        <source>pillar head</source>
        <translation type="unfinished">der Säulenkopf</translation>
    </message>
    <message>
        <source>hinge pillar</source>
        <translation type="unfinished">die Scharniersäule</translation>
    </message>
    <message>
        <source>rocker</source>
        <translation type="unfinished">der Schweller</translation>
    </message>
    <message>
        <source>roof rail</source>
        <translation type="unfinished">der Dachholm</translation>
    </message>
    <message>
        <source>ground</source>
        <translation type="unfinished">der Boden</translation>
    </message>
    <message>
        <source>window frame</source>
        <translation type="unfinished">der Fensterrahmen</translation>
    </message>
    <message>
        <source>bar</source>
        <translation type="unfinished">der Träger</translation>
    </message>
    <message>
        <source>bar foot</source>
        <translation type="unfinished">der Trägerfuß</translation>
    </message>
    <message>
        <source>bar foot {n}</source>
        <translation type="unfinished">der Trägerfuß {n}</translation>
    </message>
    <message>
        <source>bar foot hinge</source>
        <translation type="unfinished">der Trägerfuß am Scharnier</translation>
    </message>
    <message>
        <source>bar foot latch</source>
        <translation type="unfinished">der Trägerfuß am Schloss</translation>
    </message>
    <message>
        <source>tip</source>
        <translation type="unfinished">die Spitze</translation>
    </message>
    <message>
        <source>tool</source>
        <translation type="unfinished">das Gerät</translation>
    </message>
    <message>
        <source>front door</source>
        <translation type="unfinished">die vordere Tür</translation>
    </message>
    <message>
        <source>rear door</source>
        <translation type="unfinished">die hintere Tür</translation>
    </message>
    <message>
        <source>door</source>
        <translation type="unfinished">die Tür</translation>
    </message>
    <message>
        <source>far rocker</source>
        <translation type="unfinished">der Schweller gegenüber</translation>
    </message>
    <message>
        <source>far pillar</source>
        <translation type="unfinished">die Säule gegenüber</translation>
    </message>
    <message>
        <source>tunnel edge</source>
        <translation type="unfinished">die Tunnelkante</translation>
    </message>
    <message>
        <source>front inner panel</source>
        <translation type="unfinished">das vordere Innenblech</translation>
    </message>
    <message>
        <source>rear inner panel</source>
        <translation type="unfinished">das hintere Innenblech</translation>
    </message>
    <message>
        <source>latch edge</source>
        <translation type="unfinished">die Schlosskante</translation>
    </message>
    <message>
        <source>hinge edge</source>
        <translation type="unfinished">die Scharnierkante</translation>
    </message>
    <message>
        <source>sill edge</source>
        <translation type="unfinished">die Schwellerkante</translation>
    </message>
    <message>
        <source>belt</source>
        <translation type="unfinished">die Brüstung</translation>
    </message>
    <message>
        <source>cylinder</source>
        <translation type="unfinished">der Zylinder</translation>
    </message>
    <message>
        <source>face</source>
        <translation type="unfinished">die Fläche</translation>
    </message>
    <message>
        <source>flat face</source>
        <translation type="unfinished">die ebene Fläche</translation>
    </message>
    <message>
        <source>pole</source>
        <translation type="unfinished">der Pfahl</translation>
    </message>
    <message>
        <source>weld at {n} m of hem</source>
        <translation type="unfinished">der Schweißpunkt bei {n} m des Falzes</translation>
    </message>
    <message>
        <source>cut end</source>
        <translation type="unfinished">das Schnittende</translation>
    </message>
    <message>
        <source>head</source>
        <translation type="unfinished">der Kopf</translation>
    </message>
    <message>
        <source>foot</source>
        <translation type="unfinished">der Fuß</translation>
    </message>
    <message>
        <source>bar foot rear</source>
        <translation type="unfinished">der hintere Trägerfuß</translation>
    </message>
    <message>
        <source>bar foot front</source>
        <translation type="unfinished">der vordere Trägerfuß</translation>
    </message>
</context>
<context>
    <name>accusative</name>
    <message>
        <source>latch</source>
        <translation type="unfinished">das Schloss</translation>
    </message>
    <message>
        <source>upper hinge</source>
        <translation type="unfinished">das obere Scharnier</translation>
    </message>
    <message>
        <source>lower hinge</source>
        <translation type="unfinished">das untere Scharnier</translation>
    </message>
    <message>
        <source>striker</source>
        <translation type="unfinished">den Schließkeil</translation>
    </message>
    <message>
        <source>rear {part:accusative}</source>
        <translation type="unfinished">{part:accusative} hinten</translation>
    </message>
    <message>
        <source>front {part:accusative}</source>
        <translation type="unfinished">{part:accusative} vorn</translation>
    </message>
    <message>
        <source>outer skin</source>
        <translation type="unfinished">die Außenhaut</translation>
    </message>
    <message>
        <source>inner panel</source>
        <translation type="unfinished">das Innenblech</translation>
    </message>
    <message>
        <source>hem</source>
        <translation type="unfinished">den Falz</translation>
    </message>
    <message>
        <source>hem lip</source>
        <translation type="unfinished">die Falzkante</translation>
    </message>
    <message>
        <source>seam</source>
        <translation type="unfinished">die Naht</translation>
    </message>
    <message>
        <source>latch plate</source>
        <translation type="unfinished">die Schlossplatte</translation>
    </message>
    <message>
        <source>shut face</source>
        <translation type="unfinished">die Stirnfläche</translation>
    </message>
    <message>
        <source>shut-face edge</source>
        <translation type="unfinished">den Rand der Stirnfläche</translation>
    </message>
    <message>
        <source>behind the inner bend</source>
        <translation type="unfinished">das Metall hinter der inneren Biegung</translation>
    </message>
    <message>
        <source>metal behind the inner bend</source>
        <translation type="unfinished">das Metall hinter der inneren Biegung</translation>
    </message>
    <message>
        <source>belt line</source>
        <translation type="unfinished">die Brüstung</translation>
    </message>
    <message>
        <source>belt outer lip</source>
        <translation type="unfinished">die Außenlippe der Brüstung</translation>
    </message>
    <message>
        <source>belt inner lip</source>
        <translation type="unfinished">die Innenlippe der Brüstung</translation>
    </message>
    <message>
        <source>belt, both lips</source>
        <translation type="unfinished">beide Lippen der Brüstung</translation>
    </message>
    <message>
        <source>belt: both lips</source>
        <translation type="unfinished">beide Lippen der Brüstung</translation>
    </message>
    <message>
        <source>inner face</source>
        <translation type="unfinished">die Innenfläche</translation>
    </message>
    <message>
        <source>pillar</source>
        <translation type="unfinished">die Säule</translation>
    </message>
    <message>
        <source>pillar edge</source>
        <translation type="unfinished">die Säulenkante</translation>
    </message>
    <message>
        <source>pillar outside</source>
        <translation type="unfinished">die Außenseite der Säule</translation>
    </message>
    <message>
        <source>hinge pillar</source>
        <translation type="unfinished">die Scharniersäule</translation>
    </message>
    <message>
        <source>rocker</source>
        <translation type="unfinished">den Schweller</translation>
    </message>
    <message>
        <source>roof rail</source>
        <translation type="unfinished">den Dachholm</translation>
    </message>
    <message>
        <source>ground</source>
        <translation type="unfinished">den Boden</translation>
    </message>
    <message>
        <source>window frame</source>
        <translation type="unfinished">den Fensterrahmen</translation>
    </message>
    <message>
        <source>bar</source>
        <translation type="unfinished">den Träger</translation>
    </message>
    <message>
        <source>door</source>
        <translation type="unfinished">die Tür</translation>
    </message>
    <message>
        <source>front door</source>
        <translation type="unfinished">die vordere Tür</translation>
    </message>
    <message>
        <source>rear door</source>
        <translation type="unfinished">die hintere Tür</translation>
    </message>
    <message>
        <source>edge</source>
        <translation type="unfinished">die Kante</translation>
    </message>
    <message>
        <source>panel</source>
        <translation type="unfinished">das Blech</translation>
    </message>
    <message>
        <source>cylinder</source>
        <translation type="unfinished">einen Zylinder</translation>
    </message>
    <message>
        <source>flat face</source>
        <translation type="unfinished">eine ebene Fläche</translation>
    </message>
    <message>
        <source>pole</source>
        <translation type="unfinished">einen Pfahl</translation>
    </message>
    <message>
        <source>whole door</source>
        <translation type="unfinished">die ganze Tür</translation>
    </message>
</context>
<context>
    <name>dative</name>
    <message>
        <source>latch</source>
        <translation type="unfinished">dem Schloss</translation>
    </message>
    <message>
        <source>upper hinge</source>
        <translation type="unfinished">dem oberen Scharnier</translation>
    </message>
    <message>
        <source>lower hinge</source>
        <translation type="unfinished">dem unteren Scharnier</translation>
    </message>
    <message>
        <source>striker</source>
        <translation type="unfinished">dem Schließkeil</translation>
    </message>
    <message>
        <source>rear {part:dative}</source>
        <translation type="unfinished">{part:dative} hinten</translation>
    </message>
    <message>
        <source>front {part:dative}</source>
        <translation type="unfinished">{part:dative} vorn</translation>
    </message>
    <message>
        <source>outer skin</source>
        <translation type="unfinished">der Außenhaut</translation>
    </message>
    <message>
        <source>inner panel</source>
        <translation type="unfinished">dem Innenblech</translation>
    </message>
    <message>
        <source>hem</source>
        <translation type="unfinished">dem Falz</translation>
    </message>
    <message>
        <source>hem lip</source>
        <translation type="unfinished">der Falzkante</translation>
    </message>
    <message>
        <source>seam</source>
        <translation type="unfinished">der Naht</translation>
    </message>
    <message>
        <source>latch plate</source>
        <translation type="unfinished">der Schlossplatte</translation>
    </message>
    <message>
        <source>shut face</source>
        <translation type="unfinished">der Stirnfläche</translation>
    </message>
    <message>
        <source>shut-face edge</source>
        <translation type="unfinished">dem Rand der Stirnfläche</translation>
    </message>
    <message>
        <source>belt line</source>
        <translation type="unfinished">der Brüstung</translation>
    </message>
    <message>
        <source>belt outer lip</source>
        <translation type="unfinished">der Außenlippe der Brüstung</translation>
    </message>
    <message>
        <source>belt inner lip</source>
        <translation type="unfinished">der Innenlippe der Brüstung</translation>
    </message>
    <message>
        <source>belt, both lips</source>
        <translation type="unfinished">der Brüstung mit beiden Lippen</translation>
    </message>
    <message>
        <source>inner face</source>
        <translation type="unfinished">der Innenfläche</translation>
    </message>
    <message>
        <source>pillar</source>
        <translation type="unfinished">der Säule</translation>
    </message>
    <message>
        <source>pillar edge</source>
        <translation type="unfinished">der Säulenkante</translation>
    </message>
    <message>
        <source>pillar outside</source>
        <translation type="unfinished">der Außenseite der Säule</translation>
    </message>
    <message>
        <source>pillar foot</source>
        <translation type="unfinished">dem Säulenfuß</translation>
    </message>
    <message>
        <source>pillar head</source>
        <translation type="unfinished">dem Säulenkopf</translation>
    </message>
    <message>
        <source>hinge pillar</source>
        <translation type="unfinished">der Scharniersäule</translation>
    </message>
    <message>
        <source>rocker</source>
        <translation type="unfinished">dem Schweller</translation>
    </message>
    <message>
        <source>roof rail</source>
        <translation type="unfinished">dem Dachholm</translation>
    </message>
    <message>
        <source>ground</source>
        <translation type="unfinished">dem Boden</translation>
    </message>
    <message>
        <source>thin air</source>
        <translation type="unfinished">der leeren Luft</translation>
    </message>
    <message>
        <source>window frame</source>
        <translation type="unfinished">dem Fensterrahmen</translation>
    </message>
    <message>
        <source>bar</source>
        <translation type="unfinished">dem Träger</translation>
    </message>
    <message>
        <source>door</source>
        <translation type="unfinished">der Tür</translation>
    </message>
    <message>
        <source>front door</source>
        <translation type="unfinished">der vorderen Tür</translation>
    </message>
    <message>
        <source>rear door</source>
        <translation type="unfinished">der hinteren Tür</translation>
    </message>
    <message>
        <source>edge</source>
        <translation type="unfinished">der Kante</translation>
    </message>
    <message>
        <source>far rocker</source>
        <translation type="unfinished">dem Schweller gegenüber</translation>
    </message>
    <message>
        <source>far pillar</source>
        <translation type="unfinished">der Säule gegenüber</translation>
    </message>
    <message>
        <source>tunnel edge</source>
        <translation type="unfinished">der Tunnelkante</translation>
    </message>
    <message>
        <source>front inner panel</source>
        <translation type="unfinished">dem vorderen Innenblech</translation>
    </message>
    <message>
        <source>rear inner panel</source>
        <translation type="unfinished">dem hinteren Innenblech</translation>
    </message>
    <message>
        <source>latch edge</source>
        <translation type="unfinished">der Schlosskante</translation>
    </message>
    <message>
        <source>hinge edge</source>
        <translation type="unfinished">der Scharnierkante</translation>
    </message>
    <message>
        <source>sill edge</source>
        <translation type="unfinished">der Schwellerkante</translation>
    </message>
    <message>
        <source>belt</source>
        <translation type="unfinished">der Brüstung</translation>
    </message>
    <message>
        <source>cylinder</source>
        <translation type="unfinished">einem Zylinder</translation>
    </message>
    <message>
        <source>flat face</source>
        <translation type="unfinished">einer ebenen Fläche</translation>
    </message>
    <message>
        <source>pole</source>
        <translation type="unfinished">einem Pfahl</translation>
    </message>
    <message>
        <source>outside</source>
        <translation type="unfinished">der Außenseite</translation>
    </message>
    <message>
        <source>front</source>
        <translation type="unfinished">vorn</translation>
    </message>
    <message>
        <source>rear</source>
        <translation type="unfinished">hinten</translation>
    </message>
    <message>
        <source>the ground</source>
        <translation type="unfinished">dem Boden</translation>
    </message>
    <message>
        <source>latch pillar</source>
        <translation type="unfinished">der Schlosssäule</translation>
    </message>
</context>
</TS>
