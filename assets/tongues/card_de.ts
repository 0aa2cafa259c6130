<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<!-- Draft, not reviewed; words of the trade from memory. Entwurf, nicht geprüft; Fachwörter aus dem Gedächtnis. -->
<TS version="2.1" language="de_DE" sourcelanguage="en_GB">
<context>
    <name>Card</name>
    <message>
        <source>On the hem lip the skin of a whole hem does not tear up to 100 mm of opening; how near it comes to necking at the tips' ends hangs on the lattice (0.6, 0.9 and 1.0 on 45, 36 and 30 mm). From a cut in the hem it tears.</source>
        <translation type="unfinished">Auf der Falzkante reißt die Außenhaut eines heilen Falzes bis 100 mm Öffnung nicht; wie nah sie an den Enden der Spitzen dem Einschnüren kommt, hängt am Gitter (0,6, 0,9 und 1,0 auf 45, 36 und 30 mm). Von einem Schnitt im Falz aus reißt sie.</translation>
    </message>
    <message>
        <source>On the hem lip, before 60 mm of opening, the seam runs ahead on the usual lattice: 1.2 to 1.3 times as far as on 30 mm, 1.6 times at 50 mm, where it runs up to the belt at one go.</source>
        <translation type="unfinished">Auf der Falzkante läuft die Naht vor 60 mm Öffnung auf dem üblichen Gitter voraus: 1,2- bis 1,3-mal so weit wie auf 30 mm, 1,6-mal bei 50 mm, wo sie in einem Zug bis zur Brüstung läuft.</translation>
    </message>
    <message>
        <source>The ladder names the part that gives first in more than three of four cases one increment before, and in about half of them at half the opening.</source>
        <translation type="unfinished">Die Leiter nennt das Teil, das zuerst nachgibt, einen Schritt vorher in mehr als drei von vier Fällen, und bei halber Öffnung in etwa der Hälfte.</translation>
    </message>
    <message>
        <source>A welded door lets go in larger steps than a bonded one, 1.1 times as built; the trade expects more.</source>
        <translation type="unfinished">Eine geschweißte Tür gibt in größeren Schritten nach als eine geklebte, 1,1-mal wie gebaut; die Praxis erwartet mehr.</translation>
    </message>
    <message>
        <source>With what is not known varied (64 runs a door, 60 mm), the seam gives first on the hem lip of welded, bonded and alloy doors in every draw; the welded one lets go in larger steps in 55, by more than 1.3 times in 33, and the alloy skin, expected to tear more, tears in none.</source>
        <translation type="unfinished">Variiert man, was nicht bekannt ist (64 Läufe je Tür, 60 mm), gibt auf der Falzkante geschweißter, geklebter und Aluminiumtüren in jeder Ziehung die Naht zuerst nach; die geschweißte gibt in 55 in größeren Schritten nach, in 33 um mehr als das 1,3-Fache, und die Aluminiumhaut, von der man mehr Risse erwartet, reißt in keiner.</translation>
    </message>
    <message>
        <source>A door dished 180 mm is drawn outward by a vertical spread as a straight one is, and stays inboard; the trade warns that it may not be.</source>
        <translation type="unfinished">Eine 180 mm eingebeulte Tür wird von einem senkrechten Spreizen nach außen gezogen wie eine gerade und bleibt innen; die Praxis warnt, dass es anders kommen kann.</translation>
    </message>
    <message>
        <source>High striker: pressing the door forward or ripping the base takes no room here, where the trade says that it does (0 of 14 draws each). Folding never does (14 of 14), as the trade says.</source>
        <translation type="unfinished">Hoch getroffen: Die Tür nach vorn zu drücken oder den Fuß abzureißen nimmt hier keinen Raum, wo die Praxis sagt, dass es das tut (je 0 von 14 Ziehungen). Umlegen nimmt nie welchen (14 von 14), wie die Praxis sagt.</translation>
    </message>
    <message>
        <source>A hard foot without a flare asks 1.7 times the ram's force of a soft one, where the trade says 2.5 or the base gives: its spots let go before its metal. With a flare, hard walls and a rocker that gives it asks 3.6 times and the base gives; the ready soft one, of thin sheet (1.2 and 1.0 mm), asks 7 to 9 kN where the trade tells 11 to 23: its plastic moment allows no more; of 2.0 and 1.5 mm it asks 16.</source>
        <translation type="unfinished">Ein harter Fuß ohne Ausstellung verlangt 1,7-mal die Zylinderkraft eines weichen, wo die Praxis 2,5 sagt oder dass die Unterlage nachgibt: Seine Punkte geben vor seinem Metall nach. Mit Ausstellung, harten Wänden und einem Schweller, der nachgibt, verlangt er 3,6-mal so viel und die Unterlage gibt nach; der fertige weiche, aus dünnem Blech (1,2 und 1,0 mm), verlangt 7 bis 9 kN, wo die Praxis 11 bis 23 nennt: Sein plastisches Moment erlaubt nicht mehr; aus 2,0 und 1,5 mm verlangt er 16.</translation>
    </message>
    <message>
        <source>A level ram gets steeper to a pillar that leans out: on the ready ram plans it ends further from square than it began.</source>
        <translation type="unfinished">Ein waagrechter Zylinder steht immer schräger zu einer Säule, die nach außen lehnt: Auf den fertigen Zylinderplänen endet er weiter neben der Senkrechten, als er begann.</translation>
    </message>
    <message>
        <source>A freed door sinks further with the upper hinge cut first than with the lower, as the trade says; whether it comes down on the ground is not settled: the corner of its sill lip is caught by the rocker's edge on some lattices and slides past it on others.</source>
        <translation type="unfinished">Eine gelöste Tür sinkt weiter, wenn das obere Scharnier vor dem unteren geschnitten wird, wie die Praxis sagt; ob sie auf den Boden kommt, ist nicht gesichert: Die Ecke ihrer Schwellerlippe wird auf manchen Gittern von der Schwellerkante gehalten und gleitet auf anderen daran vorbei.</translation>
    </message>
    <message>
        <source>on the hem lip at the latch, to 100 mm</source>
        <translation type="unfinished">auf der Falzkante am Schloss, bis 100 mm</translation>
    </message>
    <message>
        <source>what gives, in order</source>
        <translation type="unfinished">was nachgibt, der Reihe nach</translation>
    </message>
    <message>
        <source>tips slip, seam, skin folds out</source>
        <translation type="unfinished">Spitzen rutschen, Naht, Außenhaut faltet nach außen</translation>
    </message>
    <message>
        <source>tips slip and seam</source>
        <translation type="unfinished">Spitzen rutschen und Naht</translation>
    </message>
    <message>
        <source>the same from the usual lattice down: 45, 36 and 30 mm</source>
        <translation type="unfinished">gleich ab dem üblichen Gitter: 45, 36 und 30 mm</translation>
    </message>
    <message>
        <source>what gives first</source>
        <translation type="unfinished">was zuerst nachgibt</translation>
    </message>
    <message>
        <source>the same on all</source>
        <translation type="unfinished">auf allen gleich</translation>
    </message>
    <message>
        <source>on the hem lip at the latch</source>
        <translation type="unfinished">auf der Falzkante am Schloss</translation>
    </message>
    <message>
        <source>highest force</source>
        <translation type="unfinished">größte Kraft</translation>
    </message>
    <message>
        <source>the same within a seventh from the usual lattice down (36 mm: 3.0 kN)</source>
        <translation type="unfinished">auf ein Siebtel gleich ab dem üblichen Gitter (36 mm: 3,0 kN)</translation>
    </message>
    <message>
        <source>force at which the latch lets go</source>
        <translation type="unfinished">Kraft, bei der das Schloss freigibt</translation>
    </message>
    <message>
        <source>the same within a twentieth</source>
        <translation type="unfinished">auf ein Zwanzigstel gleich</translation>
    </message>
    <message>
        <source>on the hem lip at the latch, to 40 mm</source>
        <translation type="unfinished">auf der Falzkante am Schloss, bis 40 mm</translation>
    </message>
    <message>
        <source>a fifth apart (36 mm: 231 mm); at 50 mm 1.6 times, at 20 mm 1.3 times</source>
        <translation type="unfinished">ein Fünftel auseinander (36 mm: 231 mm); bei 50 mm 1,6-mal, bei 20 mm 1,3-mal</translation>
    </message>
    <message>
        <source>on the hem lip at the latch, to 60 mm</source>
        <translation type="unfinished">auf der Falzkante am Schloss, bis 60 mm</translation>
    </message>
    <message>
        <source>the same within a tenth (36 mm: 470 mm)</source>
        <translation type="unfinished">auf ein Zehntel gleich (36 mm: 470 mm)</translation>
    </message>
    <message>
        <source>seam parted, skin torn</source>
        <translation type="unfinished">Naht aufgegangen, Außenhaut gerissen</translation>
    </message>
    <message>
        <source>the same within a tenth from 60 to 100 mm of opening (36 mm: 778 mm, none)</source>
        <translation type="unfinished">auf ein Zehntel gleich von 60 bis 100 mm Öffnung (36 mm: 778 mm, keiner)</translation>
    </message>
    <message>
        <source>Metals</source>
        <translation type="unfinished">Metalle</translation>
    </message>
    <message>
        <source>Fittings and bar</source>
        <translation type="unfinished">Beschläge und Träger</translation>
    </message>
    <message>
        <source>Seam and contact</source>
        <translation type="unfinished">Naht und Kontakt</translation>
    </message>
    <message>
        <source>Ready builds</source>
        <translation type="unfinished">Fertige Bauweisen</translation>
    </message>
    <message>
        <source>Weight, ground and stands</source>
        <translation type="unfinished">Gewicht, Boden und Stützen</translation>
    </message>
    <message>
        <source>Rams and bars</source>
        <translation type="unfinished">Rettungszylinder und Brechstangen</translation>
    </message>
    <message>
        <source>Outcome</source>
        <translation type="unfinished">Ergebnis</translation>
    </message>
    <message>
        <source>The person</source>
        <translation type="unfinished">Der Mensch</translation>
    </message>
    <message>
        <source>Increments, drag and limits of the solver</source>
        <translation type="unfinished">Schritte, Dämpfung und Grenzen des Lösers</translation>
    </message>
    <message>
        <source>seam, energy to part a metre</source>
        <translation type="unfinished">Naht, Energie zum Öffnen eines Meters</translation>
    </message>
    <message>
        <source>seam, peel strength</source>
        <translation type="unfinished">Naht, Schälfestigkeit</translation>
    </message>
    <message>
        <source>seam, variation along the hem</source>
        <translation type="unfinished">Naht, Schwankung entlang des Falzes</translation>
    </message>
    <message>
        <source>seam, length over which it varies</source>
        <translation type="unfinished">Naht, Länge, über die sie schwankt</translation>
    </message>
    <message>
        <source>seam, which varied hem</source>
        <translation type="unfinished">Naht, welcher schwankende Falz</translation>
    </message>
    <message>
        <source>spot welds, pitch</source>
        <translation type="unfinished">Schweißpunkte, Abstand</translation>
    </message>
    <message>
        <source>spot weld, peel strength</source>
        <translation type="unfinished">Schweißpunkt, Festigkeit auf Schälen</translation>
    </message>
    <message>
        <source>spot weld, shear strength</source>
        <translation type="unfinished">Schweißpunkt, Festigkeit auf Scherung</translation>
    </message>
    <message>
        <source>spot weld, energy to pull it out</source>
        <translation type="unfinished">Schweißpunkt, Energie zum Ausreißen</translation>
    </message>
    <message>
        <source>latch, force wedging the striker</source>
        <translation type="unfinished">Schloss, Kraft, die den Schließkeil verklemmt</translation>
    </message>
    <message>
        <source>door handle, pull</source>
        <translation type="unfinished">Türgriff, Zug</translation>
    </message>
    <message>
        <source>latch, strength over the rule's floor</source>
        <translation type="unfinished">Schloss, Festigkeit zur Untergrenze der Vorschrift</translation>
    </message>
    <message>
        <source>hinges, strength over the rule's floor</source>
        <translation type="unfinished">Scharniere, Festigkeit zur Untergrenze der Vorschrift</translation>
    </message>
    <message>
        <source>hinges' axis, in from the lip</source>
        <translation type="unfinished">Scharnierachse, ab der Falzkante nach innen</translation>
    </message>
    <message>
        <source>latch and hinges, way they bend before they let go</source>
        <translation type="unfinished">Schloss und Scharniere, Weg, den sie sich biegen, bevor sie freigeben</translation>
    </message>
    <message>
        <source>bar's foot, strength</source>
        <translation type="unfinished">Trägerfuß, Festigkeit</translation>
    </message>
    <message>
        <source>roof rail, wall</source>
        <translation type="unfinished">Dachholm, Wand</translation>
    </message>
    <message>
        <source>roof rail, yield stress</source>
        <translation type="unfinished">Dachholm, Streckgrenze</translation>
    </message>
    <message>
        <source>roof rail, width of its triangles</source>
        <translation type="unfinished">Dachholm, Breite seiner Dreiecke</translation>
    </message>
    <message>
        <source>lattice, spacing</source>
        <translation type="unfinished">Gitter, Abstand</translation>
    </message>
    <message>
        <source>tip, length of the pad</source>
        <translation type="unfinished">Spitze, Länge der Auflage</translation>
    </message>
    <message>
        <source>force curve, openings</source>
        <translation type="unfinished">Kraftkurve, Öffnungen</translation>
    </message>
    <message>
        <source>force curve, forces</source>
        <translation type="unfinished">Kraftkurve, Kräfte</translation>
    </message>
    <message>
        <source>arm, length</source>
        <translation type="unfinished">Arm, Länge</translation>
    </message>
    <message>
        <source>tip, friction on painted steel</source>
        <translation type="unfinished">Spitze, Reibung auf lackiertem Stahl</translation>
    </message>
    <message>
        <source>tool, moment the crew hold it with</source>
        <translation type="unfinished">Gerät, Moment, mit dem die Mannschaft es hält</translation>
    </message>
    <message>
        <source>tip, dent of the sheet under a pad that leans</source>
        <translation type="unfinished">Spitze, Delle des Blechs unter einer schrägen Auflage</translation>
    </message>
    <message>
        <source>tip, force below which it follows and does not slip</source>
        <translation type="unfinished">Spitze, Kraft, unter der sie folgt und nicht rutscht</translation>
    </message>
    <message>
        <source>squeezing over spreading force</source>
        <translation type="unfinished">Quetschkraft zu Spreizkraft</translation>
    </message>
    <message>
        <source>latch, floor along, across, up</source>
        <translation type="unfinished">Schloss, Untergrenze längs, quer, nach oben</translation>
    </message>
    <message>
        <source>half-latched, floor</source>
        <translation type="unfinished">halb verriegelt, Untergrenze</translation>
    </message>
    <message>
        <source>both hinges, floor along, across, up</source>
        <translation type="unfinished">beide Scharniere, Untergrenze längs, quer, nach oben</translation>
    </message>
    <message>
        <source>latch and hinge, stiffness</source>
        <translation type="unfinished">Schloss und Scharnier, Steifigkeit</translation>
    </message>
    <message>
        <source>striker in the fork, friction</source>
        <translation type="unfinished">Schließkeil in der Gabel, Reibung</translation>
    </message>
    <message>
        <source>fork, flanks that grip the striker</source>
        <translation type="unfinished">Gabel, Flanken, die den Schließkeil fassen</translation>
    </message>
    <message>
        <source>pawl, share of the striker's load</source>
        <translation type="unfinished">Sperrklinke, Anteil an der Last des Schließkeils</translation>
    </message>
    <message>
        <source>handle, force gained at the pawl</source>
        <translation type="unfinished">Griff, Kraftgewinn an der Sperrklinke</translation>
    </message>
    <message>
        <source>latch on its striker, stiffness</source>
        <translation type="unfinished">Schloss an seinem Schließkeil, Steifigkeit</translation>
    </message>
    <message>
        <source>reinforcement behind latch and hinges, thickness</source>
        <translation type="unfinished">Verstärkung hinter Schloss und Scharnieren, Dicke</translation>
    </message>
    <message>
        <source>bar, diameter of the tube</source>
        <translation type="unfinished">Träger, Durchmesser des Rohrs</translation>
    </message>
    <message>
        <source>bar, wall of the tube</source>
        <translation type="unfinished">Träger, Wand des Rohrs</translation>
    </message>
    <message>
        <source>bar's foot, its half sizes on the shut face</source>
        <translation type="unfinished">Trägerfuß, seine halben Maße auf der Stirnfläche</translation>
    </message>
    <message>
        <source>latch and hinge, half size of the housing</source>
        <translation type="unfinished">Schloss und Scharnier, halbes Maß des Gehäuses</translation>
    </message>
    <message>
        <source>inner panel, thickening near latch and hinges</source>
        <translation type="unfinished">Innenblech, Verdickung nahe Schloss und Scharnieren</translation>
    </message>
    <message>
        <source>inner panel, width of the thicker zones</source>
        <translation type="unfinished">Innenblech, Breite der dickeren Zonen</translation>
    </message>
    <message>
        <source>belt strip: E A [N], E I [N m²], plastic moment [N m]</source>
        <translation type="unfinished">Brüstungsleiste: E A [N], E I [N m²], plastisches Moment [N m]</translation>
    </message>
    <message>
        <source>window frame: E A [N], E I [N m²], plastic moment [N m]</source>
        <translation type="unfinished">Fensterrahmen: E A [N], E I [N m²], plastisches Moment [N m]</translation>
    </message>
    <message>
        <source>inner panel, its swages against a flat sheet</source>
        <translation type="unfinished">Innenblech, seine Sicken gegen ein ebenes Blech</translation>
    </message>
    <message>
        <source>striker and hinge leaf on the pillar, half size</source>
        <translation type="unfinished">Schließkeil und Scharnierblatt an der Säule, halbes Maß</translation>
    </message>
    <message>
        <source>gap blades leave between raw edges</source>
        <translation type="unfinished">Spalt, den Klingen zwischen rohen Kanten lassen</translation>
    </message>
    <message>
        <source>raw edge on the other, stiffness per node</source>
        <translation type="unfinished">rohe Kante auf der anderen, Steifigkeit je Knoten</translation>
    </message>
    <message>
        <source>raw edges, slip beyond which they no longer press</source>
        <translation type="unfinished">rohe Kanten, Versatz, ab dem sie nicht mehr drücken</translation>
    </message>
    <message>
        <source>fitting, how far off the blades' plane its middle may lie to be cut</source>
        <translation type="unfinished">Beschlag, wie weit seine Mitte neben der Klingenebene liegen darf, um geschnitten zu werden</translation>
    </message>
    <message>
        <source>cut sheet, ultimate shear over strength</source>
        <translation type="unfinished">geschnittenes Blech, Scherbruch zu Festigkeit</translation>
    </message>
    <message>
        <source>cut fitting, way over which its pin is sheared</source>
        <translation type="unfinished">geschnittener Beschlag, Weg, auf dem sein Bolzen abgeschert wird</translation>
    </message>
    <message>
        <source>cut bar, turn it is bent through first</source>
        <translation type="unfinished">geschnittener Träger, Drehung, um die er sich vorher biegt</translation>
    </message>
    <message>
        <source>cutter, between the open blades</source>
        <translation type="unfinished">Schneidgerät, zwischen den offenen Klingen</translation>
    </message>
    <message>
        <source>cutter, force in the notch</source>
        <translation type="unfinished">Schneidgerät, Kraft in der Kerbe</translation>
    </message>
    <message>
        <source>room a pair of closed tips or a ram's head needs</source>
        <translation type="unfinished">Raum, den ein Paar geschlossener Spitzen oder ein Zylinderkopf braucht</translation>
    </message>
    <message>
        <source>closed tips, thickness at the nose</source>
        <translation type="unfinished">geschlossene Spitzen, Dicke an der Nase</translation>
    </message>
    <message>
        <source>closed tips, how far behind the nose they have their whole thickness</source>
        <translation type="unfinished">geschlossene Spitzen, wie weit hinter der Nase sie ihre ganze Dicke haben</translation>
    </message>
    <message>
        <source>metal at a raw edge that carries tips which do not go in</source>
        <translation type="unfinished">Metall an einer rohen Kante, das Spitzen trägt, die nicht hineingehen</translation>
    </message>
    <message>
        <source>hinge's knuckle, its axis in from the outer face</source>
        <translation type="unfinished">Scharniergelenk, seine Achse ab der Außenfläche nach innen</translation>
    </message>
    <message>
        <source>hinge's knuckle, height</source>
        <translation type="unfinished">Scharniergelenk, Höhe</translation>
    </message>
    <message>
        <source>wing's turned edge beside the shut line, depth</source>
        <translation type="unfinished">umgelegter Rand des Kotflügels neben der Türfuge, Tiefe</translation>
    </message>
    <message>
        <source>front pillar's face, how far it stands back behind the wing's edge</source>
        <translation type="unfinished">Fläche der vorderen Säule, wie weit sie hinter dem Kotflügelrand zurücksteht</translation>
    </message>
    <message>
        <source>blade's thickness with room to move it</source>
        <translation type="unfinished">Dicke der Klinge mit Raum, sie zu bewegen</translation>
    </message>
    <message>
        <source>blade's thickness at its tip</source>
        <translation type="unfinished">Dicke der Klinge an ihrer Spitze</translation>
    </message>
    <message>
        <source>how far from its tip it has its whole thickness</source>
        <translation type="unfinished">wie weit hinter ihrer Spitze sie ihre ganze Dicke hat</translation>
    </message>
    <message>
        <source>half the breadth of what one sees a fitting through</source>
        <translation type="unfinished">halbe Breite der Öffnung, durch die ein Beschlag zu sehen ist</translation>
    </message>
    <message>
        <source>half the breadth of the fitting looked for</source>
        <translation type="unfinished">halbe Breite des Beschlags, nach dem gesehen wird</translation>
    </message>
    <message>
        <source>how far blades reach past a fitting</source>
        <translation type="unfinished">wie weit Klingen über einen Beschlag hinausreichen</translation>
    </message>
    <message>
        <source>blades' own length</source>
        <translation type="unfinished">Länge der Klingen selbst</translation>
    </message>
    <message>
        <source>a fitting's own seat, not in the blades' way</source>
        <translation type="unfinished">der eigene Sitz eines Beschlags, nicht im Weg der Klingen</translation>
    </message>
    <message>
        <source>breadth of one blade</source>
        <translation type="unfinished">Breite einer Klinge</translation>
    </message>
    <message>
        <source>half the breadth blades sweep beside their plane</source>
        <translation type="unfinished">halbe Breite, die Klingen neben ihrer Ebene überstreichen</translation>
    </message>
    <message>
        <source>spots lower than this above the sill are the foot's</source>
        <translation type="unfinished">Punkte, die tiefer als dies über dem Schweller liegen, gehören zum Fuß</translation>
    </message>
    <message>
        <source>heaviest piece that is taken out by hand</source>
        <translation type="unfinished">schwerstes Stück, das von Hand herausgenommen wird</translation>
    </message>
    <message>
        <source>how far outboard it is laid</source>
        <translation type="unfinished">wie weit außen es abgelegt wird</translation>
    </message>
    <message>
        <source>striker and hinge reinforcement, thickness on top of the wall</source>
        <translation type="unfinished">Verstärkung für Schließkeil und Scharnier, Dicke auf der Wand</translation>
    </message>
    <message>
        <source>spot in 1 mm sheet, least force in peel</source>
        <translation type="unfinished">Punkt in 1 mm Blech, kleinste Kraft auf Schälen</translation>
    </message>
    <message>
        <source>spot, power of the thickness in peel</source>
        <translation type="unfinished">Punkt, Potenz der Dicke beim Schälen</translation>
    </message>
    <message>
        <source>spots as made over the least asked</source>
        <translation type="unfinished">Punkte, wie gemacht, zum Mindestmaß</translation>
    </message>
    <message>
        <source>spot, way over which it is pulled out</source>
        <translation type="unfinished">Punkt, Weg, auf dem er ausgerissen wird</translation>
    </message>
    <message>
        <source>flange on rocker and rail, stiffness per node</source>
        <translation type="unfinished">Flansch auf Schweller und Holm, Steifigkeit je Knoten</translation>
    </message>
    <message>
        <source>flange, slip beyond which it no longer stands on them</source>
        <translation type="unfinished">Flansch, Versatz, ab dem er nicht mehr darauf steht</translation>
    </message>
    <message>
        <source>pressed part, thickness</source>
        <translation type="unfinished">gepresstes Teil, Dicke</translation>
    </message>
    <message>
        <source>closing part, thickness</source>
        <translation type="unfinished">Schließteil, Dicke</translation>
    </message>
    <message>
        <source>thinnest sheet under a spot</source>
        <translation type="unfinished">dünnstes Blech unter einem Punkt</translation>
    </message>
    <message>
        <source>soft foot, height</source>
        <translation type="unfinished">weicher Fuß, Höhe</translation>
    </message>
    <message>
        <source>stiffener in the foot, thickness</source>
        <translation type="unfinished">Versteifung im Fuß, Dicke</translation>
    </message>
    <message>
        <source>stiffener in the foot, height</source>
        <translation type="unfinished">Versteifung im Fuß, Höhe</translation>
    </message>
    <message>
        <source>spots along a rocker's web and bulkheads, distance</source>
        <translation type="unfinished">Punkte entlang von Steg und Schotten eines Schwellers, Abstand</translation>
    </message>
    <message>
        <source>pillar's pressed part, thickness of a plan's side</source>
        <translation type="unfinished">gepresstes Teil der Säule, Dicke bei der Seite eines Plans</translation>
    </message>
    <message>
        <source>pillar's closing part, thickness of a plan's side</source>
        <translation type="unfinished">Schließteil der Säule, Dicke bei der Seite eines Plans</translation>
    </message>
    <message>
        <source>pillar's pressed part, yield stress</source>
        <translation type="unfinished">gepresstes Teil der Säule, Streckgrenze</translation>
    </message>
    <message>
        <source>pillar's closing part, yield stress</source>
        <translation type="unfinished">Schließteil der Säule, Streckgrenze</translation>
    </message>
    <message>
        <source>softer foot of a plan's side, height</source>
        <translation type="unfinished">weicherer Fuß der Seite eines Plans, Höhe</translation>
    </message>
    <message>
        <source>softer foot, yield stress</source>
        <translation type="unfinished">weicherer Fuß, Streckgrenze</translation>
    </message>
    <message>
        <source>spots of foot and head, distance</source>
        <translation type="unfinished">Punkte von Fuß und Kopf, Abstand</translation>
    </message>
    <message>
        <source>spots of foot and head, thinnest sheet</source>
        <translation type="unfinished">Punkte von Fuß und Kopf, dünnstes Blech</translation>
    </message>
    <message>
        <source>flare of the pillar's foot over the rocker</source>
        <translation type="unfinished">Ausstellung des Säulenfußes über dem Schweller</translation>
    </message>
    <message>
        <source>flared foot, how far it laps down over the rocker</source>
        <translation type="unfinished">ausgestellter Fuß, wie weit er über den Schweller hinunterreicht</translation>
    </message>
    <message>
        <source>flared foot, rows of spots</source>
        <translation type="unfinished">ausgestellter Fuß, Reihen von Punkten</translation>
    </message>
    <message>
        <source>stiffener in the foot of a plan's side, thickness</source>
        <translation type="unfinished">Versteifung im Fuß der Seite eines Plans, Dicke</translation>
    </message>
    <message>
        <source>stiffener in the foot of a plan's side, height</source>
        <translation type="unfinished">Versteifung im Fuß der Seite eines Plans, Höhe</translation>
    </message>
    <message>
        <source>wall of a rocker that gives</source>
        <translation type="unfinished">Wand eines Schwellers, der nachgibt</translation>
    </message>
    <message>
        <source>wall of a rocker that gives, yield stress</source>
        <translation type="unfinished">Wand eines Schwellers, der nachgibt, Streckgrenze</translation>
    </message>
    <message>
        <source>occupant, backward lean of the trunk</source>
        <translation type="unfinished">Insasse, Rücklehnung des Rumpfs</translation>
    </message>
    <message>
        <source>occupant, trunk's lean away from the door</source>
        <translation type="unfinished">Insasse, Neigung des Rumpfs von der Tür weg</translation>
    </message>
    <message>
        <source>occupant, from the hip to the panel</source>
        <translation type="unfinished">Insasse, von der Hüfte zum Blech</translation>
    </message>
    <message>
        <source>pillar's lattice over the doors'</source>
        <translation type="unfinished">Gitter der Säule zu dem der Türen</translation>
    </message>
    <message>
        <source>pillar's lattice, coarsest</source>
        <translation type="unfinished">Gitter der Säule, gröbstes</translation>
    </message>
    <message>
        <source>exit width, how far outboard of the sill metal still counts</source>
        <translation type="unfinished">Ausgangsbreite, bis wie weit außerhalb des Schwellers Metall noch zählt</translation>
    </message>
    <message>
        <source>wreck, plastic strain that counts as creased</source>
        <translation type="unfinished">Unfall, plastische Dehnung, die als geknickt zählt</translation>
    </message>
    <message>
        <source>seam, slip strength over peel strength</source>
        <translation type="unfinished">Naht, Scherfestigkeit zu Schälfestigkeit</translation>
    </message>
    <message>
        <source>seam, opening at full strength</source>
        <translation type="unfinished">Naht, Öffnung bei voller Festigkeit</translation>
    </message>
    <message>
        <source>spot weld, opening at full strength</source>
        <translation type="unfinished">Schweißpunkt, Öffnung bei voller Festigkeit</translation>
    </message>
    <message>
        <source>hem fold, turn to unroll it</source>
        <translation type="unfinished">Falz, Drehung zum Aufbiegen</translation>
    </message>
    <message>
        <source>bare hem fold, slip over opening strength</source>
        <translation type="unfinished">bloßer Falz, Scher- zu Öffnungsfestigkeit</translation>
    </message>
    <message>
        <source>bare flange, energy</source>
        <translation type="unfinished">bloßer Flansch, Energie</translation>
    </message>
    <message>
        <source>seam, stiffness against closing</source>
        <translation type="unfinished">Naht, Steifigkeit gegen Schließen</translation>
    </message>
    <message>
        <source>spot weld, stiffness against closing</source>
        <translation type="unfinished">Schweißpunkt, Steifigkeit gegen Schließen</translation>
    </message>
    <message>
        <source>mastic along the bar, strength</source>
        <translation type="unfinished">Kitt am Träger entlang, Festigkeit</translation>
    </message>
    <message>
        <source>mastic along the bar, energy</source>
        <translation type="unfinished">Kitt am Träger entlang, Energie</translation>
    </message>
    <message>
        <source>sheet on sheet, stiffness per node</source>
        <translation type="unfinished">Blech auf Blech, Steifigkeit je Knoten</translation>
    </message>
    <message>
        <source>alloy door, skin, thickness</source>
        <translation type="unfinished">Aluminiumtür, Außenhaut, Dicke</translation>
    </message>
    <message>
        <source>alloy door, inner panel, thickness</source>
        <translation type="unfinished">Aluminiumtür, Innenblech, Dicke</translation>
    </message>
    <message>
        <source>bead with spots, pitch of the spots</source>
        <translation type="unfinished">Raupe mit Punkten, Abstand der Punkte</translation>
    </message>
    <message>
        <source>bead with a gap, where the latch is along the hem</source>
        <translation type="unfinished">Raupe mit Lücke, wo das Schloss am Falz liegt</translation>
    </message>
    <message>
        <source>jammed striker, force</source>
        <translation type="unfinished">verklemmter Schließkeil, Kraft</translation>
    </message>
    <message>
        <source>tensile strength over yield stress</source>
        <translation type="unfinished">Zugfestigkeit zu Streckgrenze</translation>
    </message>
    <message>
        <source>tip cutting through, shear over tensile strength</source>
        <translation type="unfinished">Spitze, die durchschneidet, Scherung zu Zugfestigkeit</translation>
    </message>
    <message>
        <source>tip cutting through, tensile strength over yield stress</source>
        <translation type="unfinished">Spitze, die durchschneidet, Zugfestigkeit zu Streckgrenze</translation>
    </message>
    <message>
        <source>shear over tensile strength</source>
        <translation type="unfinished">Scherung zu Zugfestigkeit</translation>
    </message>
    <message>
        <source>neck, least force over its strength</source>
        <translation type="unfinished">Einschnürung, kleinste Kraft zu ihrer Festigkeit</translation>
    </message>
    <message>
        <source>tear line, how far off its way an edge may lie (cosine)</source>
        <translation type="unfinished">Risslinie, wie weit eine Kante neben ihrem Weg liegen darf (Kosinus)</translation>
    </message>
    <message>
        <source>neck, share of its opening over which it takes up force</source>
        <translation type="unfinished">Einschnürung, Anteil ihrer Öffnung, über den sie Kraft aufnimmt</translation>
    </message>
    <message>
        <source>gravity</source>
        <translation type="unfinished">Schwerkraft</translation>
    </message>
    <message>
        <source>ground, stiffness per node</source>
        <translation type="unfinished">Boden, Steifigkeit je Knoten</translation>
    </message>
    <message>
        <source>ground, friction of a steel edge</source>
        <translation type="unfinished">Boden, Reibung einer Stahlkante</translation>
    </message>
    <message>
        <source>edges on faces, stiffness per node</source>
        <translation type="unfinished">Kanten auf Flächen, Steifigkeit je Knoten</translation>
    </message>
    <message>
        <source>door check, moment that moves an open door</source>
        <translation type="unfinished">Türfeststeller, Moment, das eine offene Tür bewegt</translation>
    </message>
    <message>
        <source>door check, stiffness at the latch end</source>
        <translation type="unfinished">Türfeststeller, Steifigkeit am Schlossende</translation>
    </message>
    <message>
        <source>body nodes, distance</source>
        <translation type="unfinished">Knoten der Karosserie, Abstand</translation>
    </message>
    <message>
        <source>door, window regulator and motor</source>
        <translation type="unfinished">Tür, Fensterheber und Motor</translation>
    </message>
    <message>
        <source>door, latch, rods and handle</source>
        <translation type="unfinished">Tür, Schloss, Gestänge und Griff</translation>
    </message>
    <message>
        <source>door, lining, armrest and loudspeaker</source>
        <translation type="unfinished">Tür, Verkleidung, Armlehne und Lautsprecher</translation>
    </message>
    <message>
        <source>door, seals and wiring</source>
        <translation type="unfinished">Tür, Dichtungen und Kabel</translation>
    </message>
    <message>
        <source>car, share of its weight on the front wheels</source>
        <translation type="unfinished">Auto, Anteil des Gewichts auf den Vorderrädern</translation>
    </message>
    <message>
        <source>wheel, spring rate</source>
        <translation type="unfinished">Rad, Federrate</translation>
    </message>
    <message>
        <source>tyre pushed sideways, stiffness</source>
        <translation type="unfinished">Reifen zur Seite gedrückt, Steifigkeit</translation>
    </message>
    <message>
        <source>tyre, friction</source>
        <translation type="unfinished">Reifen, Reibung</translation>
    </message>
    <message>
        <source>axles, behind the front door's hinge edge</source>
        <translation type="unfinished">Achsen, hinter der Scharnierkante der vorderen Tür</translation>
    </message>
    <message>
        <source>wheels, inboard of the door's lip</source>
        <translation type="unfinished">Räder, innerhalb der Falzkante der Tür</translation>
    </message>
    <message>
        <source>stack of blocks, stiffness</source>
        <translation type="unfinished">Stapel von Klötzen, Steifigkeit</translation>
    </message>
    <message>
        <source>blocks, share of the weight they carry</source>
        <translation type="unfinished">Klötze, Anteil des Gewichts, den sie tragen</translation>
    </message>
    <message>
        <source>blocks, behind the front door's hinge edge</source>
        <translation type="unfinished">Klötze, hinter der Scharnierkante der vorderen Tür</translation>
    </message>
    <message>
        <source>bars that keep the body rigid</source>
        <translation type="unfinished">Stäbe, die die Karosserie starr halten</translation>
    </message>
    <message>
        <source>grounded, least force on the ground</source>
        <translation type="unfinished">auf dem Boden, kleinste Kraft auf dem Boden</translation>
    </message>
    <message>
        <source>hands, stiffness</source>
        <translation type="unfinished">Hände, Steifigkeit</translation>
    </message>
    <message>
        <source>hands, drag a node and step</source>
        <translation type="unfinished">Hände, Dämpfung je Knoten und Schritt</translation>
    </message>
    <message>
        <source>strap, stiffness</source>
        <translation type="unfinished">Gurtband, Steifigkeit</translation>
    </message>
    <message>
        <source>prop, stiffness</source>
        <translation type="unfinished">Stütze, Steifigkeit</translation>
    </message>
    <message>
        <source>smooth head on paint, friction</source>
        <translation type="unfinished">glatter Kopf auf Lack, Reibung</translation>
    </message>
    <message>
        <source>smooth head on bare steel, friction</source>
        <translation type="unfinished">glatter Kopf auf blankem Stahl, Reibung</translation>
    </message>
    <message>
        <source>grooved head on a seal, friction</source>
        <translation type="unfinished">geriffelter Kopf auf einer Dichtung, Reibung</translation>
    </message>
    <message>
        <source>grooved head on paint, friction</source>
        <translation type="unfinished">geriffelter Kopf auf Lack, Reibung</translation>
    </message>
    <message>
        <source>grooved head on bare steel, friction</source>
        <translation type="unfinished">geriffelter Kopf auf blankem Stahl, Reibung</translation>
    </message>
    <message>
        <source>foot plate, friction</source>
        <translation type="unfinished">Fußplatte, Reibung</translation>
    </message>
    <message>
        <source>points of a pointed head</source>
        <translation type="unfinished">Spitzen eines spitzen Kopfs</translation>
    </message>
    <message>
        <source>point, width where it stands in the sheet</source>
        <translation type="unfinished">Spitze des Kopfs, Breite, wo sie im Blech steht</translation>
    </message>
    <message>
        <source>tunnel's edge, slope of its normal</source>
        <translation type="unfinished">Tunnelkante, Neigung ihrer Normalen</translation>
    </message>
    <message>
        <source>place taken to lie on a sheet, farthest off it</source>
        <translation type="unfinished">Stelle, die als auf einem Blech liegend gilt, weitester Abstand davon</translation>
    </message>
    <message>
        <source>ram, half its thickness</source>
        <translation type="unfinished">Zylinder, halbe Dicke</translation>
    </message>
    <message>
        <source>one press, longest</source>
        <translation type="unfinished">ein Drücken, längstes</translation>
    </message>
    <message>
        <source>foot over wall as a boss, least</source>
        <translation type="unfinished">Fuß zu Wand als Nabe, kleinstes</translation>
    </message>
    <message>
        <source>foot over wall as a boss, most</source>
        <translation type="unfinished">Fuß zu Wand als Nabe, größtes</translation>
    </message>
    <message>
        <source>ram, stiffness</source>
        <translation type="unfinished">Zylinder, Steifigkeit</translation>
    </message>
    <message>
        <source>slipping head, followed in steps of</source>
        <translation type="unfinished">rutschender Kopf, verfolgt in Schritten von</translation>
    </message>
    <message>
        <source>base giving, least way</source>
        <translation type="unfinished">Unterlage gibt nach, kleinster Weg</translation>
    </message>
    <message>
        <source>entry bar, farthest turn</source>
        <translation type="unfinished">Brechstange, weiteste Drehung</translation>
    </message>
    <message>
        <source>entry bar, length of its tip on the metal</source>
        <translation type="unfinished">Brechstange, Länge ihrer Spitze auf dem Metall</translation>
    </message>
    <message>
        <source>seam parted, least length</source>
        <translation type="unfinished">Naht aufgegangen, kleinste Länge</translation>
    </message>
    <message>
        <source>sheet torn, least length</source>
        <translation type="unfinished">Blech gerissen, kleinste Länge</translation>
    </message>
    <message>
        <source>metal moved, least way</source>
        <translation type="unfinished">Metall bewegt, kleinster Weg</translation>
    </message>
    <message>
        <source>crease, least depth that is told</source>
        <translation type="unfinished">Knick, kleinste Tiefe, die gemeldet wird</translation>
    </message>
    <message>
        <source>crease, how far round its deepest place it is read</source>
        <translation type="unfinished">Knick, wie weit um seine tiefste Stelle er abgelesen wird</translation>
    </message>
    <message>
        <source>clearance, least change</source>
        <translation type="unfinished">Abstand, kleinste Änderung</translation>
    </message>
    <message>
        <source>metal bent, least energy</source>
        <translation type="unfinished">Metall gebogen, kleinste Energie</translation>
    </message>
    <message>
        <source>knee's axis behind its front</source>
        <translation type="unfinished">Achse des Knies hinter seiner Vorderseite</translation>
    </message>
    <message>
        <source>spread, opening an increment</source>
        <translation type="unfinished">Spreizen, Öffnung je Schritt</translation>
    </message>
    <message>
        <source>spread, first opening in finer steps</source>
        <translation type="unfinished">Spreizen, erste Öffnung in feineren Schritten</translation>
    </message>
    <message>
        <source>ram, way an increment</source>
        <translation type="unfinished">Zylinder, Weg je Schritt</translation>
    </message>
    <message>
        <source>body pressed in, way an increment</source>
        <translation type="unfinished">eingedrückter Körper, Weg je Schritt</translation>
    </message>
    <message>
        <source>drag, a node and increment</source>
        <translation type="unfinished">Dämpfung, je Knoten und Schritt</translation>
    </message>
    <message>
        <source>an increment is halved at most so often</source>
        <translation type="unfinished">ein Schritt wird höchstens so oft halbiert</translation>
    </message>
    <message>
        <source>a step that gains more counts as failed</source>
        <translation type="unfinished">ein Schritt, der mehr gewinnt, zählt als misslungen</translation>
    </message>
    <message>
        <source>out of balance, of the tips' force</source>
        <translation type="unfinished">Ungleichgewicht, zur Kraft der Spitzen</translation>
    </message>
    <message>
        <source>barrier, radius of its edges</source>
        <translation type="unfinished">Barriere, Radius ihrer Kanten</translation>
    </message>
    <message>
        <source>bending, shares of three parallel parts</source>
        <translation type="unfinished">Biegung, Anteile von drei parallelen Teilen</translation>
    </message>
    <message>
        <source>they yield at, of first yield</source>
        <translation type="unfinished">sie fließen bei, zum ersten Fließen</translation>
    </message>
    <message>
        <source>beams, slope past the plastic moment</source>
        <translation type="unfinished">Balken, Steigung über dem plastischen Moment</translation>
    </message>
    <message>
        <source>latch, depth of the fork</source>
        <translation type="unfinished">Schloss, Tiefe der Gabel</translation>
    </message>
    <message>
        <source>a falling part has come to rest below</source>
        <translation type="unfinished">ein fallendes Teil ist zur Ruhe gekommen unter</translation>
    </message>
    <message>
        <source>from memory: 0.65-0.8 mm for skins of bake-hardening steel; a public page gives 0.6-1.2 mm</source>
        <translation type="unfinished">aus dem Gedächtnis: 0,65-0,8 mm für Außenhäute aus Bake-Hardening-Stahl; eine öffentliche Seite nennt 0,6-1,2 mm</translation>
    </message>
    <message>
        <source>assumed: adhesive 20-40 J/m and unrolling the hem fold 25-40 J/m; 12 to 250 are worth trying</source>
        <translation type="unfinished">angenommen: Kleber 20-40 J/m und Aufbiegen des Falzes 25-40 J/m; 12 bis 250 sind einen Versuch wert</translation>
    </message>
    <message>
        <source>from memory: 4-12 N/mm for hem-flange epoxy; it barely matters beside the energy</source>
        <translation type="unfinished">aus dem Gedächtnis: 4-12 N/mm für Falzkleber auf Epoxidbasis; neben der Energie zählt sie kaum</translation>
    </message>
    <message>
        <source>assumed: 25-60 mm is usual</source>
        <translation type="unfinished">angenommen: 25-60 mm sind üblich</translation>
    </message>
    <message>
        <source>from memory: between the least and the typical rows of a spot-weld table</source>
        <translation type="unfinished">aus dem Gedächtnis: zwischen der kleinsten und der üblichen Zeile einer Punktschweißtabelle</translation>
    </message>
    <message>
        <source>assumed: pulled out over about two millimetres</source>
        <translation type="unfinished">angenommen: über etwa zwei Millimeter ausgerissen</translation>
    </message>
    <message>
        <source>assumed: a firm pull by hand</source>
        <translation type="unfinished">angenommen: ein fester Zug von Hand</translation>
    </message>
    <message>
        <source>estimate: real latches hold 10-25 kN; the floor is un-regulation-2010</source>
        <translation type="unfinished">geschätzt: echte Schlösser halten 10-25 kN; die Untergrenze ist un-regulation-2010</translation>
    </message>
    <message>
        <source>estimate: a set often holds 15-40 kN</source>
        <translation type="unfinished">geschätzt: ein Satz hält oft 15-40 kN</translation>
    </message>
    <message>
        <source>assumed: 0 stands for half-way down the shut face; a knuckle's axis stands 20-40 mm in, from memory</source>
        <translation type="unfinished">angenommen: 0 steht für die halbe Tiefe der Stirnfläche; die Achse eines Gelenks liegt 20-40 mm innen, aus dem Gedächtnis</translation>
    </message>
    <message>
        <source>assumed: none until asked for; a leaf that unfolds or a striker that bends over gives 10-20 mm</source>
        <translation type="unfinished">angenommen: nichts, bis danach gefragt wird; ein Blatt, das sich aufbiegt, oder ein Schließkeil, der sich umbiegt, gibt 10-20 mm</translation>
    </message>
    <message>
        <source>assumed: three spot welds and a folded bracket</source>
        <translation type="unfinished">angenommen: drei Schweißpunkte und ein gefalteter Halter</translation>
    </message>
    <message>
        <source>from memory: outer face to trim 120-200 mm, gap between the sheets 60-110 mm</source>
        <translation type="unfinished">aus dem Gedächtnis: Außenfläche bis Verkleidung 120-200 mm, Abstand der Bleche 60-110 mm</translation>
    </message>
    <message>
        <source>assumed: it stands still unless a plan gives it a wall; 1.0-2.0 mm, from memory</source>
        <translation type="unfinished">angenommen: er steht still, wenn ein Plan ihm keine Wand gibt; 1,0-2,0 mm, aus dem Gedächtnis</translation>
    </message>
    <message>
        <source>assumed: 260-600 MPa is usual, from memory</source>
        <translation type="unfinished">angenommen: 260-600 MPa sind üblich, aus dem Gedächtnis</translation>
    </message>
    <message>
        <source>numerical: two columns on each wall</source>
        <translation type="unfinished">numerisch: zwei Spalten je Wand</translation>
    </message>
    <message>
        <source>numerical: 60 mm for previews, 30 mm to compare</source>
        <translation type="unfinished">numerisch: 60 mm für Vorschauen, 30 mm zum Vergleich</translation>
    </message>
    <message>
        <source>assumed; read at ten openings as nfpa-1936-2015 does</source>
        <translation type="unfinished">angenommen; abgelesen an zehn Öffnungen, wie es nfpa-1936-2015 tut</translation>
    </message>
    <message>
        <source>assumed: a spreader of type AS of en-13204-2016, stronger as it opens</source>
        <translation type="unfinished">angenommen: ein Spreizer der Art AS nach en-13204-2016, stärker, je weiter er öffnet</translation>
    </message>
    <message>
        <source>from memory: 0.3-0.6 for serrated tips</source>
        <translation type="unfinished">aus dem Gedächtnis: 0,3-0,6 für gezahnte Spitzen</translation>
    </message>
    <message>
        <source>assumed: about 200 N at half a metre</source>
        <translation type="unfinished">angenommen: etwa 200 N in einem halben Meter</translation>
    </message>
    <message>
        <source>assumed: half a tool's weight</source>
        <translation type="unfinished">angenommen: das halbe Gewicht eines Geräts</translation>
    </message>
    <message>
        <source>common practice: about half, no source</source>
        <translation type="unfinished">übliche Praxis: etwa die Hälfte, keine Quelle</translation>
    </message>
    <message>
        <source>from memory: 180-240 MPa, bake-hardening class 180 (EN 10268)</source>
        <translation type="unfinished">aus dem Gedächtnis: 180-240 MPa, Bake-Hardening-Klasse 180 (EN 10268)</translation>
    </message>
    <message>
        <source>assumed: 1.4 times the yield stress, about 300 MPa over 210 MPa</source>
        <translation type="unfinished">angenommen: 1,4-mal die Streckgrenze, etwa 300 MPa zu 210 MPa</translation>
    </message>
    <message>
        <source>from memory: 100-400 kJ/m² for thin mild sheet, low confidence</source>
        <translation type="unfinished">aus dem Gedächtnis: 100-400 kJ/m² für dünnes weiches Blech, wenig gesichert</translation>
    </message>
    <message>
        <source>from memory: 120-220 MPa, deep-drawing class (EN 10346)</source>
        <translation type="unfinished">aus dem Gedächtnis: 120-220 MPa, Tiefziehklasse (EN 10346)</translation>
    </message>
    <message>
        <source>from memory: 340-420 MPa, low-alloy class 340 (EN 10268)</source>
        <translation type="unfinished">aus dem Gedächtnis: 340-420 MPa, niedriglegierte Klasse 340 (EN 10268)</translation>
    </message>
    <message>
        <source>from memory: 950-1200 MPa, martensitic or press-hardened</source>
        <translation type="unfinished">aus dem Gedächtnis: 950-1200 MPa, martensitisch oder pressgehärtet</translation>
    </message>
    <message>
        <source>assumed: a bar is a beam, which does not tear</source>
        <translation type="unfinished">angenommen: ein Träger ist ein Balken, der nicht reißt</translation>
    </message>
    <message>
        <source>press-hardened-2026; at least 950 MPa</source>
        <translation type="unfinished">press-hardened-2026; mindestens 950 MPa</translation>
    </message>
    <message>
        <source>assumed: half of mild steel's, from memory lower, low confidence</source>
        <translation type="unfinished">angenommen: die Hälfte von weichem Stahl, aus dem Gedächtnis weniger, wenig gesichert</translation>
    </message>
    <message>
        <source>abdellah-2023; another alloy and thickness, assumed to hold here</source>
        <translation type="unfinished">abdellah-2023; eine andere Legierung und Dicke, hier als gültig angenommen</translation>
    </message>
    <message>
        <source>assumed: less strained than the skin, alloy-sheet-2026</source>
        <translation type="unfinished">angenommen: weniger gedehnt als die Außenhaut, alloy-sheet-2026</translation>
    </message>
    <message>
        <source>un-regulation-2010; up assumed equal to across</source>
        <translation type="unfinished">un-regulation-2010; nach oben wie quer angenommen</translation>
    </message>
    <message>
        <source>un-regulation-2010; up assumed</source>
        <translation type="unfinished">un-regulation-2010; nach oben angenommen</translation>
    </message>
    <message>
        <source>assumed: about a millimetre at the floor</source>
        <translation type="unfinished">angenommen: etwa ein Millimeter bei der Untergrenze</translation>
    </message>
    <message>
        <source>from memory: steel on steel, 0.1-0.3 in handbooks</source>
        <translation type="unfinished">aus dem Gedächtnis: Stahl auf Stahl, 0,1-0,3 in Handbüchern</translation>
    </message>
    <message>
        <source>assumed: twice as far from the fork's pivot</source>
        <translation type="unfinished">angenommen: doppelt so weit vom Drehpunkt der Gabel</translation>
    </message>
    <message>
        <source>assumed; from memory 1.2-2.0 mm of its own beside the panel</source>
        <translation type="unfinished">angenommen; aus dem Gedächtnis 1,2-2,0 mm eigene neben dem Blech</translation>
    </message>
    <message>
        <source>assumed: a pressed channel 30 x 12 x 1 mm</source>
        <translation type="unfinished">angenommen: ein gepresstes U-Profil 30 x 12 x 1 mm</translation>
    </message>
    <message>
        <source>estimate: plastic at about 0.7 kN on a 0.4 m upright</source>
        <translation type="unfinished">geschätzt: plastisch bei etwa 0,7 kN auf einem Steg von 0,4 m</translation>
    </message>
    <message>
        <source>assumed: its layers stand this many times further apart</source>
        <translation type="unfinished">angenommen: seine Lagen stehen so viele Male weiter auseinander</translation>
    </message>
    <message>
        <source>assumed: a blunt wedge</source>
        <translation type="unfinished">angenommen: ein stumpfer Keil</translation>
    </message>
    <message>
        <source>common practice: 30-60 mm, no source</source>
        <translation type="unfinished">übliche Praxis: 30-60 mm, keine Quelle</translation>
    </message>
    <message>
        <source>assumed: as the patches'</source>
        <translation type="unfinished">angenommen: wie die der Verstärkungen</translation>
    </message>
    <message>
        <source>from memory: 200-300 mm; none by default</source>
        <translation type="unfinished">aus dem Gedächtnis: 200-300 mm; ohne Angabe keiner</translation>
    </message>
    <message>
        <source>from memory: 1.0-2.0 mm; none by default</source>
        <translation type="unfinished">aus dem Gedächtnis: 1,0-2,0 mm; ohne Angabe keine</translation>
    </message>
    <message>
        <source>assumed: as the roof rail's</source>
        <translation type="unfinished">angenommen: wie die des Dachholms</translation>
    </message>
    <message>
        <source>numerical: 26 mm beside 45 mm</source>
        <translation type="unfinished">numerisch: 26 mm neben 45 mm</translation>
    </message>
    <message>
        <source>assumed: half a person's depth</source>
        <translation type="unfinished">angenommen: die halbe Tiefe eines Menschen</translation>
    </message>
    <message>
        <source>from memory: lap shear 10-25 MPa on a 10 mm bead over 4-12 N/mm of peel</source>
        <translation type="unfinished">aus dem Gedächtnis: Überlappscherung 10-25 MPa auf einer 10 mm breiten Raupe, dazu 4-12 N/mm auf Schälen</translation>
    </message>
    <message>
        <source>assumed: only the energy per metre matters (turon-2007)</source>
        <translation type="unfinished">angenommen: nur die Energie je Meter zählt (turon-2007)</translation>
    </message>
    <message>
        <source>estimate: 25-40 J/m for 0.7 mm of skin steel is 0.9-1.5 rad</source>
        <translation type="unfinished">geschätzt: 25-40 J/m für 0,7 mm Stahl der Außenhaut sind 0,9-1,5 rad</translation>
    </message>
    <message>
        <source>assumed: it slides as easily as it opens</source>
        <translation type="unfinished">angenommen: er gleitet so leicht, wie er sich öffnet</translation>
    </message>
    <message>
        <source>assumed: it still rubs</source>
        <translation type="unfinished">angenommen: er reibt noch</translation>
    </message>
    <message>
        <source>numerical: as stiff closing as opening</source>
        <translation type="unfinished">numerisch: beim Schließen so steif wie beim Öffnen</translation>
    </message>
    <message>
        <source>assumed: soft, lets go early</source>
        <translation type="unfinished">angenommen: weich, gibt früh frei</translation>
    </message>
    <message>
        <source>assumed: 300 MPa over 210 MPa</source>
        <translation type="unfinished">angenommen: 300 MPa zu 210 MPa</translation>
    </message>
    <message>
        <source>from memory: 0.8 for mild steel, 0.6-0.65 for strong</source>
        <translation type="unfinished">aus dem Gedächtnis: 0,8 für weichen Stahl, 0,6-0,65 für festen</translation>
    </message>
    <message>
        <source>from memory: 0.4-0.7 on asphalt or concrete</source>
        <translation type="unfinished">aus dem Gedächtnis: 0,4-0,7 auf Asphalt oder Beton</translation>
    </message>
    <message>
        <source>numerical: as sheet on sheet</source>
        <translation type="unfinished">numerisch: wie Blech auf Blech</translation>
    </message>
    <message>
        <source>from memory: 15-50 N m with the hinges</source>
        <translation type="unfinished">aus dem Gedächtnis: 15-50 N m mit den Scharnieren</translation>
    </message>
    <message>
        <source>from memory: 0.35 m² of 4 mm glass</source>
        <translation type="unfinished">aus dem Gedächtnis: 0,35 m² Glas von 4 mm</translation>
    </message>
    <message>
        <source>from memory: 55-65 % where the front wheels drive</source>
        <translation type="unfinished">aus dem Gedächtnis: 55-65 %, wo die Vorderräder antreiben</translation>
    </message>
    <message>
        <source>from memory: suspension 20-30 N/mm in series with a tyre of 200</source>
        <translation type="unfinished">aus dem Gedächtnis: Federung 20-30 N/mm in Reihe mit einem Reifen von 200</translation>
    </message>
    <message>
        <source>assumed: a tenth of a door's weight</source>
        <translation type="unfinished">angenommen: ein Zehntel des Gewichts einer Tür</translation>
    </message>
    <message>
        <source>numerical: a tenth of a tool's</source>
        <translation type="unfinished">numerisch: ein Zehntel von der eines Geräts</translation>
    </message>
    <message>
        <source>from memory: about 0.15 on paint, wet</source>
        <translation type="unfinished">aus dem Gedächtnis: etwa 0,15 auf Lack, nass</translation>
    </message>
    <message>
        <source>from memory: grooved, on scraped metal</source>
        <translation type="unfinished">aus dem Gedächtnis: geriffelt, auf abgeschabtem Metall</translation>
    </message>
    <message>
        <source>assumed: its two faces share the foot evenly</source>
        <translation type="unfinished">angenommen: seine zwei Flächen teilen sich den Fuß gleichmäßig</translation>
    </message>
    <message>
        <source>from memory: 70 to 100 mm across</source>
        <translation type="unfinished">aus dem Gedächtnis: 70 bis 100 mm im Durchmesser</translation>
    </message>
    <message>
        <source>assumed: as a spreader's tips</source>
        <translation type="unfinished">angenommen: wie die Spitzen eines Spreizers</translation>
    </message>
    <message>
        <source>common practice, no source: less is the give of the seat</source>
        <translation type="unfinished">übliche Praxis, keine Quelle: weniger ist das Nachgeben des Sitzes</translation>
    </message>
    <message>
        <source>assumed: forks and blades are 25-50 mm wide</source>
        <translation type="unfinished">angenommen: Gabeln und Blätter sind 25-50 mm breit</translation>
    </message>
    <message>
        <source>assumed: as for the seam</source>
        <translation type="unfinished">angenommen: wie für die Naht</translation>
    </message>
    <message>
        <source>assumed: less cannot be seen</source>
        <translation type="unfinished">angenommen: weniger ist nicht zu sehen</translation>
    </message>
    <message>
        <source>assumed: less is a dent</source>
        <translation type="unfinished">angenommen: weniger ist eine Delle</translation>
    </message>
    <message>
        <source>assumed: a hand's breadth</source>
        <translation type="unfinished">angenommen: eine Handbreit</translation>
    </message>
    <message>
        <source>assumed: below it the body's envelope itself is not known</source>
        <translation type="unfinished">angenommen: darunter ist die Hülle des Körpers selbst nicht bekannt</translation>
    </message>
    <message>
        <source>estimate: about a thumb's dent in a skin</source>
        <translation type="unfinished">geschätzt: etwa eine Daumendelle in einer Außenhaut</translation>
    </message>
    <message>
        <source>ansur-2012; each size taken alone, so nobody is at one percentile in all</source>
        <translation type="unfinished">ansur-2012; jedes Maß für sich genommen, also ist niemand in allem auf einem Perzentil</translation>
    </message>
    <message>
        <source>ansur-2012; sitting height less stature plus acromial height</source>
        <translation type="unfinished">ansur-2012; Sitzhöhe weniger Körpergröße plus Schulterhöhe</translation>
    </message>
    <message>
        <source>assumed: about half a head's breadth and length together</source>
        <translation type="unfinished">angenommen: etwa die Hälfte von Breite und Länge eines Kopfs zusammen</translation>
    </message>
    <message>
        <source>assumed: a neck of some 0.38 m girth</source>
        <translation type="unfinished">angenommen: ein Hals von rund 0,38 m Umfang</translation>
    </message>
    <message>
        <source>assumed: half the trunk between arms that hang down</source>
        <translation type="unfinished">angenommen: der halbe Rumpf zwischen hängenden Armen</translation>
    </message>
    <message>
        <source>assumed: some 0.31 m girth</source>
        <translation type="unfinished">angenommen: rund 0,31 m Umfang</translation>
    </message>
    <message>
        <source>assumed: some 0.35 m girth</source>
        <translation type="unfinished">angenommen: rund 0,35 m Umfang</translation>
    </message>
    <message>
        <source>numerical: 0.5 to 10 mm gave the same verdict in a trial</source>
        <translation type="unfinished">numerisch: 0,5 bis 10 mm gaben in einem Versuch dasselbe Urteil</translation>
    </message>
    <message>
        <source>numerical: friction goes by the last step</source>
        <translation type="unfinished">numerisch: Reibung geht nach dem letzten Schritt</translation>
    </message>
    <message>
        <source>numerical: 20 to 200 cost 1 % of the work at most in a trial</source>
        <translation type="unfinished">numerisch: 20 bis 200 kosteten in einem Versuch höchstens 1 % der Arbeit</translation>
    </message>
    <message>
        <source>numerical: contacts that let go and close again can make some</source>
        <translation type="unfinished">numerisch: Kontakte, die loslassen und wieder schließen, können welche erzeugen</translation>
    </message>
    <message>
        <source>textbook: fitted to the moment-curvature of a strip that yields from its faces in</source>
        <translation type="unfinished">Lehrbuch: angepasst an Moment und Krümmung eines Streifens, der von seinen Flächen her fließt</translation>
    </message>
    <message>
        <source>textbook: as above</source>
        <translation type="unfinished">Lehrbuch: wie oben</translation>
    </message>
    <message>
        <source>numerical: keeps the tangent definite</source>
        <translation type="unfinished">numerisch: hält die Tangente definit</translation>
    </message>
    <message>
        <source>Young's modulus</source>
        <translation type="unfinished">Elastizitätsmodul</translation>
    </message>
    <message>
        <source>Poisson's ratio</source>
        <translation type="unfinished">Querdehnzahl</translation>
    </message>
    <message>
        <source>yield stress</source>
        <translation type="unfinished">Streckgrenze</translation>
    </message>
    <message>
        <source>hardening</source>
        <translation type="unfinished">Verfestigung</translation>
    </message>
    <message>
        <source>density</source>
        <translation type="unfinished">Dichte</translation>
    </message>
    <message>
        <source>tension at which it necks</source>
        <translation type="unfinished">Spannung, bei der es einschnürt</translation>
    </message>
    <message>
        <source>energy of tearing</source>
        <translation type="unfinished">Reißenergie</translation>
    </message>
    <message>
        <source>stress at which it gives</source>
        <translation type="unfinished">Spannung, bei der sie nachgibt</translation>
    </message>
    <message>
        <source>reinforcement steel</source>
        <translation type="unfinished">Stahl der Verstärkung</translation>
    </message>
    <message>
        <source>thickness</source>
        <translation type="unfinished">Dicke</translation>
    </message>
    <message>
        <source>from memory</source>
        <translation type="unfinished">aus dem Gedächtnis</translation>
    </message>
    <message>
        <source>estimate</source>
        <translation type="unfinished">geschätzt</translation>
    </message>
    <message>
        <source>numerical</source>
        <translation type="unfinished">numerisch</translation>
    </message>
    <message>
        <source>textbook</source>
        <translation type="unfinished">Lehrbuch</translation>
    </message>
    <message>
        <source>common practice</source>
        <translation type="unfinished">übliche Praxis</translation>
    </message>
    <message>
        <source>no source</source>
        <translation type="unfinished">keine Quelle</translation>
    </message>
    <message>
        <source>as above</source>
        <translation type="unfinished">wie oben</translation>
    </message>
    <message>
        <source>illustrative only</source>
        <translation type="unfinished">nur zur Anschauung</translation>
    </message>
    <message>
        <source>a penalty</source>
        <translation type="unfinished">eine Strafsteifigkeit</translation>
    </message>
    <message>
        <source>a seed</source>
        <translation type="unfinished">ein Startwert</translation>
    </message>
    <message>
        <source>woman</source>
        <translation type="unfinished">Frau</translation>
    </message>
    <message>
        <source>man</source>
        <translation type="unfinished">Mann</translation>
    </message>
    <message>
        <source>5th percentile</source>
        <translation type="unfinished">5. Perzentil</translation>
    </message>
    <message>
        <source>50th</source>
        <translation type="unfinished">50. Perzentil</translation>
    </message>
    <message>
        <source>95th</source>
        <translation type="unfinished">95. Perzentil</translation>
    </message>
    <message>
        <source>sitting height</source>
        <translation type="unfinished">Sitzhöhe</translation>
    </message>
    <message>
        <source>eye above the seat</source>
        <translation type="unfinished">Auge über dem Sitz</translation>
    </message>
    <message>
        <source>shoulder above the seat</source>
        <translation type="unfinished">Schulter über dem Sitz</translation>
    </message>
    <message>
        <source>elbow above the seat</source>
        <translation type="unfinished">Ellbogen über dem Sitz</translation>
    </message>
    <message>
        <source>hip breadth</source>
        <translation type="unfinished">Hüftbreite</translation>
    </message>
    <message>
        <source>shoulder breadth</source>
        <translation type="unfinished">Schulterbreite</translation>
    </message>
    <message>
        <source>buttock to knee</source>
        <translation type="unfinished">Gesäß bis Knie</translation>
    </message>
    <message>
        <source>sole to under the knee</source>
        <translation type="unfinished">Sohle bis unter das Knie</translation>
    </message>
    <message>
        <source>seat to top of thigh</source>
        <translation type="unfinished">Sitz bis Oberseite des Oberschenkels</translation>
    </message>
    <message>
        <source>radius</source>
        <translation type="unfinished">Radius</translation>
    </message>
    <message>
        <source>trunk</source>
        <translation type="unfinished">Rumpf</translation>
    </message>
    <message>
        <source>upper arm</source>
        <translation type="unfinished">Oberarm</translation>
    </message>
    <message>
        <source>calf</source>
        <translation type="unfinished">Unterschenkel</translation>
    </message>
    <message>
        <source>low confidence</source>
        <translation type="unfinished">wenig gesichert</translation>
    </message>
    <message>
        <source>none until asked for</source>
        <translation type="unfinished">nichts, bis danach gefragt wird</translation>
    </message>
    <message>
        <source>none by default</source>
        <translation type="unfinished">ohne Angabe keiner</translation>
    </message>
    <message>
        <source>two</source>
        <translation type="unfinished">zwei</translation>
    </message>
    <message>
        <source>{rule} class {n} (EN {n2})</source>
        <translation type="unfinished">Klasse {rule} {n} (EN {n2})</translation>
    </message>
    <message>
        <source>at least {length}</source>
        <translation type="unfinished">mindestens {length}</translation>
    </message>
    <message>
        <source>rows {n} x {n2}</source>
        <translation type="unfinished">Reihen {n} x {n2}</translation>
    </message>
    <message>
        <source>{n} across</source>
        <translation type="unfinished">{n} quer</translation>
    </message>
    <message>
        <source>{n} across at {n2}°</source>
        <translation type="unfinished">{n} quer bei {n2}°</translation>
    </message>
    <message>
        <source>cantilever strip, ν {n}: tip</source>
        <translation type="unfinished">Kragstreifen, ν {n}: Ende</translation>
    </message>
    <message>
        <source>of P L³ / 3 E I</source>
        <translation type="unfinished">von P L³ / 3 E I</translation>
    </message>
    <message>
        <source>cantilever strip, ν {n}: tip between beam and plate</source>
        <translation type="unfinished">Kragstreifen, ν {n}: Ende zwischen Balken und Platte</translation>
    </message>
    <message>
        <source>elastica, P L² / E I = {n}: {what} of the tip</source>
        <translation type="unfinished">Elastica, P L² / E I = {n}: {what} des Endes</translation>
    </message>
    <message>
        <source>of the length</source>
        <translation type="unfinished">der Länge</translation>
    </message>
    <message>
        <source>elastica {n}, {what}</source>
        <translation type="unfinished">Elastica {n}, {what}</translation>
    </message>
    <message>
        <source>deflection</source>
        <translation type="unfinished">Durchbiegung</translation>
    </message>
    <message>
        <source>rise</source>
        <translation type="unfinished">Anheben</translation>
    </message>
    <message>
        <source>shortening</source>
        <translation type="unfinished">Verkürzung</translation>
    </message>
    <message>
        <source>way</source>
        <translation type="unfinished">Weg</translation>
    </message>
    <message>
        <source>cantilever under end shear, {n} of the load: {what}</source>
        <translation type="unfinished">Kragarm unter Endquerkraft, {n} der Last: {what}</translation>
    </message>
    <message>
        <source>(length {n})</source>
        <translation type="unfinished">(Länge {n})</translation>
    </message>
    <message>
        <source>end shear, {what}</source>
        <translation type="unfinished">Endquerkraft, {what}</translation>
    </message>
    <message>
        <source>the couple did not settle on the strip's end</source>
        <translation type="unfinished">das Kräftepaar kam am Ende des Streifens nicht zur Ruhe</translation>
    </message>
    <message>
        <source>strip rolled up, {n} of a circle: {what} of the end</source>
        <translation type="unfinished">aufgerollter Streifen, {n} eines Kreises: {what} des Endes</translation>
    </message>
    <message>
        <source>residual {n} N under an end couple</source>
        <translation type="unfinished">Restkraft {n} N unter einem Kräftepaar am Ende</translation>
    </message>
    <message>
        <source>box cut along two edges: head's deflection of the channel left</source>
        <translation type="unfinished">Kasten an zwei Kanten aufgeschnitten: Durchbiegung des Kopfs des restlichen U-Profils</translation>
    </message>
    <message>
        <source>box cut along two edges</source>
        <translation type="unfinished">Kasten an zwei Kanten aufgeschnitten</translation>
    </message>
    <message>
        <source>stocky box, pulled wall cut out: force at which the channel left is plastic</source>
        <translation type="unfinished">gedrungener Kasten, gezogene Wand herausgeschnitten: Kraft, bei der das restliche U-Profil plastisch ist</translation>
    </message>
    <message>
        <source>stocky box, pulled wall cut out</source>
        <translation type="unfinished">gedrungener Kasten, gezogene Wand herausgeschnitten</translation>
    </message>
    <message>
        <source>pulled box cut through: energy released</source>
        <translation type="unfinished">gezogener Kasten durchgeschnitten: frei gewordene Energie</translation>
    </message>
    <message>
        <source>box cut through: pull at its head over that of the whole one</source>
        <translation type="unfinished">Kasten durchgeschnitten: Zug am Kopf zu dem des ganzen</translation>
    </message>
    <message>
        <source>slip z</source>
        <translation type="unfinished">Versatz z</translation>
    </message>
    <message>
        <source>slip x</source>
        <translation type="unfinished">Versatz x</translation>
    </message>
    <message>
        <source>slip y</source>
        <translation type="unfinished">Versatz y</translation>
    </message>
    <message>
        <source>{what} pulled apart, {way}: work</source>
        <translation type="unfinished">{what} auseinandergezogen, {way}: Arbeit</translation>
    </message>
    <message>
        <source>{what} pulled apart, {way}: energy booked</source>
        <translation type="unfinished">{what} auseinandergezogen, {way}: gebuchte Energie</translation>
    </message>
    <message>
        <source>{what} pulled with {n} % slip: strength on the ellipse</source>
        <translation type="unfinished">{what} mit {n} % Versatz gezogen: Festigkeit auf der Ellipse</translation>
    </message>
    <message>
        <source>of the ellipse</source>
        <translation type="unfinished">der Ellipse</translation>
    </message>
    <message>
        <source>one bond</source>
        <translation type="unfinished">eine Bindung</translation>
    </message>
    <message>
        <source>stretched sheet</source>
        <translation type="unfinished">gedehntes Blech</translation>
    </message>
    <message>
        <source>plates</source>
        <translation type="unfinished">Platten</translation>
    </message>
    <message>
        <source>free edges</source>
        <translation type="unfinished">freie Ränder</translation>
    </message>
    <message>
        <source>strips bent far</source>
        <translation type="unfinished">weit gebogene Streifen</translation>
    </message>
    <message>
        <source>sheets far out of plane</source>
        <translation type="unfinished">Bleche weit aus ihrer Ebene</translation>
    </message>
    <message>
        <source>buckling</source>
        <translation type="unfinished">Knicken und Beulen</translation>
    </message>
    <message>
        <source>yielding</source>
        <translation type="unfinished">Fließen</translation>
    </message>
    <message>
        <source>cut members</source>
        <translation type="unfinished">geschnittene Bauteile</translation>
    </message>
    <message>
        <source>seams</source>
        <translation type="unfinished">Nähte</translation>
    </message>
    <message>
        <source>cracks</source>
        <translation type="unfinished">Risse</translation>
    </message>
    <message>
        <source>running cracks</source>
        <translation type="unfinished">laufende Risse</translation>
    </message>
    <message>
        <source>rules</source>
        <translation type="unfinished">Vorschriften</translation>
    </message>
    <message>
        <source>side-door crush</source>
        <translation type="unfinished">Seitentür eingedrückt</translation>
    </message>
    <message>
        <source>every run</source>
        <translation type="unfinished">jede Rechnung</translation>
    </message>
    <message>
        <source>facts of the trade</source>
        <translation type="unfinished">Tatsachen der Praxis</translation>
    </message>
    <message>
        <source>three lattices</source>
        <translation type="unfinished">drei Gitter</translation>
    </message>
    <message>
        <source>more than</source>
        <translation type="unfinished">mehr als</translation>
    </message>
    <message>
        <source>pushed back</source>
        <translation type="unfinished">zurückgedrückt</translation>
    </message>
    <message>
        <source>at most</source>
        <translation type="unfinished">höchstens</translation>
    </message>
    <message>
        <source>at least</source>
        <translation type="unfinished">mindestens</translation>
    </message>
    <message>
        <source>less than</source>
        <translation type="unfinished">weniger als</translation>
    </message>
    <message>
        <source>a solved specimen</source>
        <translation type="unfinished">eine gelöste Probe</translation>
    </message>
    <message>
        <source>thick round plate, {edge}, {load} load: collapse</source>
        <translation type="unfinished">dicke runde Platte, {edge}, {load} Last: Traglast</translation>
    </message>
    <message>
        <source>clamped</source>
        <translation type="unfinished">eingespannt</translation>
    </message>
    <message>
        <source>supported</source>
        <translation type="unfinished">aufgelagert</translation>
    </message>
    <message>
        <source>even</source>
        <translation type="unfinished">gleichmäßige</translation>
    </message>
    <message>
        <source>point</source>
        <translation type="unfinished">Einzel-</translation>
    </message>
    <message>
        <source>an increment of the sagging plate did not converge</source>
        <translation type="unfinished">ein Schritt der durchhängenden Platte kam nicht zur Ruhe</translation>
    </message>
    <message>
        <source>{n} rings</source>
        <translation type="unfinished">{n} Ringe</translation>
    </message>
    <message>
        <source>eight bends along the arm are coarse beside the bond's edge; on half the spacing it is 3 % soft</source>
        <translation type="unfinished">acht Biegestellen am Arm sind neben dem Rand der Bindung grob; auf halbem Abstand ist es 3 % weich</translation>
    </message>
    <message>
        <source>{n} mm arms</source>
        <translation type="unfinished">Arme von {n} mm</translation>
    </message>
    <message>
        <source>double cantilever, {what}: compliance</source>
        <translation type="unfinished">Doppelkragbalken, {what}: Nachgiebigkeit</translation>
    </message>
    <message>
        <source>double cantilever, {what}: load at which the crack runs</source>
        <translation type="unfinished">Doppelkragbalken, {what}: Last, bei der der Riss läuft</translation>
    </message>
    <message>
        <source>double cantilever, {what}: work less stored is what the parted bond took</source>
        <translation type="unfinished">Doppelkragbalken, {what}: Arbeit weniger Gespeichertes ist, was die geöffnete Bindung nahm</translation>
    </message>
    <message>
        <source>double cantilever, {what}: load</source>
        <translation type="unfinished">Doppelkragbalken, {what}: Last</translation>
    </message>
    <message>
        <source>double cantilever</source>
        <translation type="unfinished">Doppelkragbalken</translation>
    </message>
    <message>
        <source>end-notched bar</source>
        <translation type="unfinished">am Ende gekerbter Stab</translation>
    </message>
    <message>
        <source>the {what} did not open steadily</source>
        <translation type="unfinished">{what}: öffnete sich nicht gleichmäßig</translation>
    </message>
    <message>
        <source>past {n} m the whole door is drawn off its frame and loses what its bar had held</source>
        <translation type="unfinished">über {n} m wird die ganze Tür von ihrem Rahmen gezogen und verliert, was ihr Träger gehalten hatte</translation>
    </message>
    <message>
        <source>crush of a known curve: {stage} resistance</source>
        <translation type="unfinished">Eindrücken nach bekannter Kurve: Widerstand, {stage}</translation>
    </message>
    <message>
        <source>door with its bar crushed by a cylinder: {stage} resistance, at least half the floor</source>
        <translation type="unfinished">Tür mit Träger von einem Zylinder eingedrückt: Widerstand, {stage}, mindestens die halbe Untergrenze</translation>
    </message>
    <message>
        <source>door with its bar crushed by a cylinder: {stage} resistance, at most twice the floor</source>
        <translation type="unfinished">Tür mit Träger von einem Zylinder eingedrückt: Widerstand, {stage}, höchstens die doppelte Untergrenze</translation>
    </message>
    <message>
        <source>door with no bar crushed by a cylinder: {stage} resistance, against the door with its bar</source>
        <translation type="unfinished">Tür ohne Träger von einem Zylinder eingedrückt: Widerstand, {stage}, gegen die Tür mit Träger</translation>
    </message>
    <message>
        <source>initial</source>
        <translation type="unfinished">anfangs</translation>
    </message>
    <message>
        <source>intermediate</source>
        <translation type="unfinished">dazwischen</translation>
    </message>
    <message>
        <source>peak</source>
        <translation type="unfinished">Spitze</translation>
    </message>
    <message>
        <source>of the whole door's</source>
        <translation type="unfinished">der ganzen Tür</translation>
    </message>
    <message>
        <source>{n} mm steps</source>
        <translation type="unfinished">Schritte von {n} mm</translation>
    </message>
    <message>
        <source>{n} increments of the crush did not settle</source>
        <translation type="unfinished">{n} Schritte des Eindrückens kamen nicht zur Ruhe</translation>
    </message>
    <message>
        <source>{n} mm door</source>
        <translation type="unfinished">Tür {n} mm</translation>
    </message>
    <message>
        <source>mm door</source>
        <translation type="unfinished">mm Tür</translation>
    </message>
    <message>
        <source>{n} mm side</source>
        <translation type="unfinished">Seite {n} mm</translation>
    </message>
    <message>
        <source>{tips} tips on the hem lip at the latch, {n} m up: what gives first</source>
        <translation type="unfinished">{tips} Spitzen auf der Falzkante am Schloss, {n} m hoch: was zuerst nachgibt</translation>
    </message>
    <message>
        <source>{tips} tips on the hem lip at the latch, {n} m up: the latch meanwhile</source>
        <translation type="unfinished">{tips} Spitzen auf der Falzkante am Schloss, {n} m hoch: das Schloss inzwischen</translation>
    </message>
    <message>
        <source>wide</source>
        <translation type="unfinished">breite</translation>
    </message>
    <message>
        <source>narrow</source>
        <translation type="unfinished">schmale</translation>
    </message>
    <message>
        <source>of its limit</source>
        <translation type="unfinished">seiner Grenze</translation>
    </message>
    <message>
        <source>tips on the hem lip at the hinge edge, {n} m up: what gives first</source>
        <translation type="unfinished">Spitzen auf der Falzkante an der Scharnierkante, {n} m hoch: was zuerst nachgibt</translation>
    </message>
    <message>
        <source>tips behind the inner bend at the latch, {n} m up: what gives first</source>
        <translation type="unfinished">Spitzen hinter der inneren Biegung am Schloss, {n} m hoch: was zuerst nachgibt</translation>
    </message>
    <message>
        <source>wide tips on the hem lip: peak force against narrow tips'</source>
        <translation type="unfinished">breite Spitzen auf der Falzkante: größte Kraft gegen die schmaler Spitzen</translation>
    </message>
    <message>
        <source>wide tips on the hem lip: force when the seam begins to part against narrow tips'</source>
        <translation type="unfinished">breite Spitzen auf der Falzkante: Kraft, wenn die Naht aufzugehen beginnt, gegen die schmaler Spitzen</translation>
    </message>
    <message>
        <source>hem lip with {n} times the force it takes: what gives first</source>
        <translation type="unfinished">Falzkante mit {n}-mal der nötigen Kraft: was zuerst nachgibt</translation>
    </message>
    <message>
        <source>vertical spread on the belt's outer lip, {n} m back: skin's middle out</source>
        <translation type="unfinished">senkrechtes Spreizen auf der Außenlippe der Brüstung, {n} m hinten: Mitte der Außenhaut nach außen</translation>
    </message>
    <message>
        <source>latch held open, tips behind the inner bend: peak force against a latched door's</source>
        <translation type="unfinished">Schloss offen gehalten, Spitzen hinter der inneren Biegung: größte Kraft gegen die einer verriegelten Tür</translation>
    </message>
    <message>
        <source>of the latched door's</source>
        <translation type="unfinished">der verriegelten Tür</translation>
    </message>
    <message>
        <source>welded twin on the hem lip: drops above 15 % of the peak, against the bonded door's</source>
        <translation type="unfinished">geschweißter Zwilling auf der Falzkante: Abfälle über 15 % der größten Kraft, gegen die der geklebten Tür</translation>
    </message>
    <message>
        <source>alloy twin, lip beside a cut in the hem: torn length against the steel door's</source>
        <translation type="unfinished">Aluminiumzwilling, Kante neben einem Schnitt im Falz: gerissene Länge gegen die der Stahltür</translation>
    </message>
    <message>
        <source>the other way</source>
        <translation type="unfinished">umgekehrt</translation>
    </message>
    <message>
        <source>{what} pulled {way} the car: lets go</source>
        <translation type="unfinished">{what}, {way} zum Auto gezogen: gibt frei</translation>
    </message>
    <message>
        <source>latch of the ready car pulled {way} the car: holds</source>
        <translation type="unfinished">Schloss des fertigen Autos, {way} zum Auto gezogen: hält</translation>
    </message>
    <message>
        <source>the pull on the {what} did not end with that fitting alone</source>
        <translation type="unfinished">der Zug endete nicht mit diesem Beschlag allein: {what}</translation>
    </message>
    <message>
        <source>along the car</source>
        <translation type="unfinished">längs zum Auto</translation>
    </message>
    <message>
        <source>across the car</source>
        <translation type="unfinished">quer zum Auto</translation>
    </message>
    <message>
        <source>one diagonal</source>
        <translation type="unfinished">eine Diagonale</translation>
    </message>
    <message>
        <source>lattice of {what}</source>
        <translation type="unfinished">Gitter, {what}</translation>
    </message>
    <message>
        <source>lattice at {n}°</source>
        <translation type="unfinished">Gitter bei {n}°</translation>
    </message>
    <message>
        <source>free plate twisted, ν {n}, {kind}, corner {what}: rise</source>
        <translation type="unfinished">freie Platte verdreht, ν {n}, {kind}, Ecke {what}: Anheben</translation>
    </message>
    <message>
        <source>free plate bent, ν {n}, {kind}: curvature along</source>
        <translation type="unfinished">freie Platte gebogen, ν {n}, {kind}: Krümmung längs</translation>
    </message>
    <message>
        <source>of 12 M / E t³</source>
        <translation type="unfinished">von 12 M / E t³</translation>
    </message>
    <message>
        <source>free plate bent, ν {n}, {kind}: saddle</source>
        <translation type="unfinished">freie Platte gebogen, ν {n}, {kind}: Sattel</translation>
    </message>
    <message>
        <source>of the curvature along</source>
        <translation type="unfinished">der Krümmung längs</translation>
    </message>
    <message>
        <source>{n} mm pillar</source>
        <translation type="unfinished">Säule {n} mm</translation>
    </message>
    <message>
        <source>the tunnel's edge close by</source>
        <translation type="unfinished">die Tunnelkante nahebei</translation>
    </message>
    <message>
        <source>goes through</source>
        <translation type="unfinished">geht durch</translation>
    </message>
    <message>
        <source>{kind} head on a {what} wall, on paint, {n} mm off its middle</source>
        <translation type="unfinished">Kopf ({kind}) an einer Wand ({what}), auf Lack, {n} mm neben ihrer Mitte</translation>
    </message>
    <message>
        <source>{kind} head on 0.6 mm of mild inner wall, pressed hard</source>
        <translation type="unfinished">Kopf ({kind}) auf 0,6 mm weicher Innenwand, fest gedrückt</translation>
    </message>
    <message>
        <source>ram from {n} to {n2} m up, grooved head on {what}</source>
        <translation type="unfinished">Zylinder von {n} auf {n2} m Höhe, geriffelter Kopf auf {what}</translation>
    </message>
    <message>
        <source>bare metal</source>
        <translation type="unfinished">blankes Metall</translation>
    </message>
    <message>
        <source>bonded lap of {n} mm steel: peak shear</source>
        <translation type="unfinished">geklebte Überlappung, Stahl {n} mm: größte Scherung</translation>
    </message>
    <message>
        <source>bonded lap of {n} mm steel</source>
        <translation type="unfinished">geklebte Überlappung, Stahl {n} mm</translation>
    </message>
    <message>
        <source>{n} stations</source>
        <translation type="unfinished">{n} Stellen</translation>
    </message>
    <message>
        <source>{n} triangles</source>
        <translation type="unfinished">{n} Dreiecke</translation>
    </message>
    <message>
        <source>distorted patch, ν {n}: inner points on the linear field</source>
        <translation type="unfinished">verzerrtes Feld, ν {n}: innere Punkte auf dem linearen Feld</translation>
    </message>
    <message>
        <source>of the field</source>
        <translation type="unfinished">des Felds</translation>
    </message>
    <message>
        <source>distorted patch, ν {n}: direct stress</source>
        <translation type="unfinished">verzerrtes Feld, ν {n}: Normalspannung</translation>
    </message>
    <message>
        <source>distorted patch, ν {n}: shear stress</source>
        <translation type="unfinished">verzerrtes Feld, ν {n}: Schubspannung</translation>
    </message>
    <message>
        <source>pulled bar, ν {n}, lattice at {n2}°: lengthening</source>
        <translation type="unfinished">gezogener Stab, ν {n}, Gitter bei {n2}°: Verlängerung</translation>
    </message>
    <message>
        <source>pulled bar, ν {n}, lattice at {n2}°: narrowing</source>
        <translation type="unfinished">gezogener Stab, ν {n}, Gitter bei {n2}°: Einschnürung</translation>
    </message>
    <message>
        <source>sheared panel, ν {n}, lattice at {n2}°: shear modulus</source>
        <translation type="unfinished">gescherte Scheibe, ν {n}, Gitter bei {n2}°: Schubmodul</translation>
    </message>
    <message>
        <source>strip stretched evenly, lattice turned by {n} degrees: edge told {what} to necking</source>
        <translation type="unfinished">gleichmäßig gedehnter Streifen, Gitter um {n} Grad gedreht: Rand gemeldet {what} bis zum Einschnüren</translation>
    </message>
    <message>
        <source>of the metal's own</source>
        <translation type="unfinished">von der des Metalls</translation>
    </message>
    <message>
        <source>the strip folds back within {n} cm, less than two of these triangles; on half the spacing it is 0.9 % off</source>
        <translation type="unfinished">der Streifen faltet sich innerhalb von {n} cm zurück, weniger als zwei dieser Dreiecke; auf halbem Abstand liegt es 0,9 % daneben</translation>
    </message>
    <message>
        <source>strip peeled at a right angle: load per width</source>
        <translation type="unfinished">rechtwinklig geschälter Streifen: Last je Breite</translation>
    </message>
    <message>
        <source>strip peeled at a right angle: energy spent on the seam</source>
        <translation type="unfinished">rechtwinklig geschälter Streifen: in der Naht verbrauchte Energie</translation>
    </message>
    <message>
        <source>strip folded right back and peeled: load per width</source>
        <translation type="unfinished">ganz zurückgefalteter, geschälter Streifen: Last je Breite</translation>
    </message>
    <message>
        <source>two strips pulled apart: load per width</source>
        <translation type="unfinished">zwei Streifen auseinandergezogen: Last je Breite</translation>
    </message>
    <message>
        <source>{what}: load on half the spacing</source>
        <translation type="unfinished">{what}: Last auf halbem Abstand</translation>
    </message>
    <message>
        <source>{what}: seam energy on half the spacing</source>
        <translation type="unfinished">{what}: Nahtenergie auf halbem Abstand</translation>
    </message>
    <message>
        <source>strip peeled at a right angle</source>
        <translation type="unfinished">rechtwinklig geschälter Streifen</translation>
    </message>
    <message>
        <source>strip folded right back and peeled</source>
        <translation type="unfinished">ganz zurückgefalteter, geschälter Streifen</translation>
    </message>
    <message>
        <source>two strips pulled apart</source>
        <translation type="unfinished">zwei auseinandergezogene Streifen</translation>
    </message>
    <message>
        <source>strip of {n} MPa peeled: yield only adds to the load</source>
        <translation type="unfinished">Streifen von {n} MPa geschält: Fließen erhöht nur die Last</translation>
    </message>
    <message>
        <source>strip of {n} MPa peeled: the seam's own share stays</source>
        <translation type="unfinished">Streifen von {n} MPa geschält: der eigene Anteil der Naht bleibt</translation>
    </message>
    <message>
        <source>strip of {n} MPa peeled: seam, folding and stored energy together</source>
        <translation type="unfinished">Streifen von {n} MPa geschält: Naht, Falten und gespeicherte Energie zusammen</translation>
    </message>
    <message>
        <source>the strip's end could not be lifted without peeling it</source>
        <translation type="unfinished">das Ende des Streifens ließ sich nicht heben, ohne ihn zu schälen</translation>
    </message>
    <message>
        <source>the strip did not peel steadily</source>
        <translation type="unfinished">der Streifen schälte sich nicht gleichmäßig</translation>
    </message>
    <message>
        <source>tapering pillar: head's deflection per kN</source>
        <translation type="unfinished">sich verjüngende Säule: Durchbiegung des Kopfs je kN</translation>
    </message>
    <message>
        <source>tapering pillar: head's deflection</source>
        <translation type="unfinished">sich verjüngende Säule: Durchbiegung des Kopfs</translation>
    </message>
    <message>
        <source>pillar in torsion (Bredt): stiffness</source>
        <translation type="unfinished">Säule auf Torsion (Bredt): Steifigkeit</translation>
    </message>
    <message>
        <source>kN m/rad</source>
        <translation type="unfinished">kN m/rad</translation>
    </message>
    <message>
        <source>kN m</source>
        <translation type="unfinished">kN m</translation>
    </message>
    <message>
        <source>stocky pillar: plastic moment at the foot</source>
        <translation type="unfinished">gedrungene Säule: plastisches Moment am Fuß</translation>
    </message>
    <message>
        <source>stocky pillar: plastic moment</source>
        <translation type="unfinished">gedrungene Säule: plastisches Moment</translation>
    </message>
    <message>
        <source>thin pillar of {n} MPa: moment at which it buckles and folds</source>
        <translation type="unfinished">dünne Säule von {n} MPa: Moment, bei dem sie beult und faltet</translation>
    </message>
    <message>
        <source>an increment of the folding box did not converge</source>
        <translation type="unfinished">ein Schritt des faltenden Kastens kam nicht zur Ruhe</translation>
    </message>
    <message>
        <source>squeeze across the upper panel by {n} mm: the crease it leaves against the skin's crown there</source>
        <translation type="unfinished">Quetschen quer über das obere Blech um {n} mm: der Knick, der bleibt, gegen die Wölbung der Außenhaut dort</translation>
    </message>
    <message>
        <source>squeezed first, then pushed along the car, {n} m up: the skin in the first 5 mm, out</source>
        <translation type="unfinished">erst gequetscht, dann längs zum Auto gedrückt, {n} m hoch: die Außenhaut auf den ersten 5 mm, nach außen</translation>
    </message>
    <message>
        <source>the same push on a door not squeezed, {n} m up: the skin in the first 5 mm, out</source>
        <translation type="unfinished">derselbe Druck an einer nicht gequetschten Tür, {n} m hoch: die Außenhaut auf den ersten 5 mm, nach außen</translation>
    </message>
    <message>
        <source>squeezed first, then pushed along the car by 60 mm, {n} m up: the skin, out</source>
        <translation type="unfinished">erst gequetscht, dann 60 mm längs zum Auto gedrückt, {n} m hoch: die Außenhaut, nach außen</translation>
    </message>
    <message>
        <source>pushed along the car by 60 mm, not squeezed, {n} m up: the skin, out, against squeezed</source>
        <translation type="unfinished">60 mm längs zum Auto gedrückt, nicht gequetscht, {n} m hoch: die Außenhaut, nach außen, gegen gequetscht</translation>
    </message>
    <message>
        <source>tube {n} x {n2}, {n3} MPa, span {n4} m</source>
        <translation type="unfinished">Rohr {n} x {n2}, {n3} MPa, Stützweite {n4} m</translation>
    </message>
    <message>
        <source>strip bent to {n} times first yield: moment</source>
        <translation type="unfinished">Streifen bis {n}-mal zum ersten Fließen gebogen: Moment</translation>
    </message>
    <message>
        <source>of first yield</source>
        <translation type="unfinished">des ersten Fließens</translation>
    </message>
    <message>
        <source>strip bent far: plastic moment</source>
        <translation type="unfinished">weit gebogener Streifen: plastisches Moment</translation>
    </message>
    <message>
        <source>strip bent to {n} times first yield: curvature that stays</source>
        <translation type="unfinished">Streifen bis {n}-mal zum ersten Fließen gebogen: Krümmung, die bleibt</translation>
    </message>
    <message>
        <source>of the largest</source>
        <translation type="unfinished">der größten</translation>
    </message>
    <message>
        <source>{what}: stiffness</source>
        <translation type="unfinished">{what}: Steifigkeit</translation>
    </message>
    <message>
        <source>{what}: first yield</source>
        <translation type="unfinished">{what}: erstes Fließen</translation>
    </message>
    <message>
        <source>{what}: collapse {text}</source>
        <translation type="unfinished">{what}: Traglast {text}</translation>
    </message>
    <message>
        <source>{what}: stiffness between clamps</source>
        <translation type="unfinished">{what}: Steifigkeit zwischen Einspannungen</translation>
    </message>
    <message>
        <source>an increment of the bent strip did not converge</source>
        <translation type="unfinished">ein Schritt des gebogenen Streifens kam nicht zur Ruhe</translation>
    </message>
    <message>
        <source>an increment of the tube did not converge</source>
        <translation type="unfinished">ein Schritt des Rohrs kam nicht zur Ruhe</translation>
    </message>
    <message>
        <source>{n} segments</source>
        <translation type="unfinished">{n} Abschnitte</translation>
    </message>
    <message>
        <source>between clamps</source>
        <translation type="unfinished">zwischen Einspannungen</translation>
    </message>
    <message>
        <source>on two supports</source>
        <translation type="unfinished">auf zwei Stützen</translation>
    </message>
    <message>
        <source>a clamped edge is second order but soft, 8 / n² on a beam of n segments; another plate code is as far off</source>
        <translation type="unfinished">ein eingespannter Rand ist zweiter Ordnung, aber weich, 8 / n² an einem Balken aus n Abschnitten; ein anderes Plattenprogramm liegt ebenso weit daneben</translation>
    </message>
    <message>
        <source>even load</source>
        <translation type="unfinished">gleichmäßige Last</translation>
    </message>
    <message>
        <source>point load</source>
        <translation type="unfinished">Einzellast</translation>
    </message>
    <message>
        <source>square plate, {edge}, {load}: α of the middle</source>
        <translation type="unfinished">quadratische Platte, {edge}, {load}: α der Mitte</translation>
    </message>
    <message>
        <source>square plate, {edge}, {load}, lattice at {n}°: α of the middle</source>
        <translation type="unfinished">quadratische Platte, {edge}, {load}, Gitter bei {n}°: α der Mitte</translation>
    </message>
    <message>
        <source>square plate, {edge}, {load}</source>
        <translation type="unfinished">quadratische Platte, {edge}, {load}</translation>
    </message>
    <message>
        <source>square plate, {load}: lattice at {n}° against 0°</source>
        <translation type="unfinished">quadratische Platte, {load}: Gitter bei {n}° gegen 0°</translation>
    </message>
    <message>
        <source>circular plate, {edge}, {load}: middle</source>
        <translation type="unfinished">runde Platte, {edge}, {load}: Mitte</translation>
    </message>
    <message>
        <source>circular plate, {edge}, {load}</source>
        <translation type="unfinished">runde Platte, {edge}, {load}</translation>
    </message>
    <message>
        <source>two columns of even-strain triangles on a wall of 50 to 60 mm; 20 mm triangles meet it</source>
        <translation type="unfinished">zwei Spalten Dreiecke gleicher Dehnung auf einer Wand von 50 bis 60 mm; Dreiecke von 20 mm treffen es</translation>
    </message>
    <message>
        <source>roof rail held at both ends: middle's deflection per kN</source>
        <translation type="unfinished">Dachholm, an beiden Enden gehalten: Durchbiegung der Mitte je kN</translation>
    </message>
    <message>
        <source>roof rail held at both ends: middle's deflection</source>
        <translation type="unfinished">Dachholm, an beiden Enden gehalten: Durchbiegung der Mitte</translation>
    </message>
    <message>
        <source>stocky roof rail held at both ends: plastic collapse under a load in its middle</source>
        <translation type="unfinished">gedrungener Dachholm, an beiden Enden gehalten: plastische Traglast unter einer Last in der Mitte</translation>
    </message>
    <message>
        <source>thin roof rail cut at its front: load at which it buckles and folds</source>
        <translation type="unfinished">dünner Dachholm, vorn geschnitten: Last, bei der er beult und faltet</translation>
    </message>
    <message>
        <source>an increment of the rail did not converge</source>
        <translation type="unfinished">ein Schritt des Holms kam nicht zur Ruhe</translation>
    </message>
    <message>
        <source>{n} of {n2} rows hold</source>
        <translation type="unfinished">{n} von {n2} Zeilen halten</translation>
    </message>
    <message>
        <source>{n} of {n2} rows hold, {n3} known to miss</source>
        <translation type="unfinished">{n} von {n2} Zeilen halten, {n3} verfehlen bekanntermaßen</translation>
    </message>
    <message>
        <source>none unexpected</source>
        <translation type="unfinished">keine unerwartet</translation>
    </message>
    <message>
        <source>{n} unexpected</source>
        <translation type="unfinished">{n} unerwartet</translation>
    </message>
    <message>
        <source>{n} known to miss</source>
        <translation type="unfinished">{n} verfehlen bekanntermaßen</translation>
    </message>
    <message>
        <source>pass</source>
        <translation type="unfinished">bestanden</translation>
    </message>
    <message>
        <source>FAIL</source>
        <translation type="unfinished">VERFEHLT</translation>
    </message>
    <message>
        <source>FAIL, known</source>
        <translation type="unfinished">VERFEHLT, bekannt</translation>
    </message>
    <message>
        <source>pass, was known to fail</source>
        <translation type="unfinished">bestanden, galt als verfehlt</translation>
    </message>
    <message>
        <source>Known to miss: {text}</source>
        <translation type="unfinished">Verfehlt bekanntermaßen: {text}</translation>
    </message>
    <message>
        <source>rocker held at both ends: deflection at the foot per kN</source>
        <translation type="unfinished">Schweller, an beiden Enden gehalten: Durchbiegung am Fuß je kN</translation>
    </message>
    <message>
        <source>rocker held at both ends and turned at the foot (Bredt, Batho): stiffness</source>
        <translation type="unfinished">Schweller, an beiden Enden gehalten und am Fuß verdreht (Bredt, Batho): Steifigkeit</translation>
    </message>
    <message>
        <source>stocky rocker held at both ends: plastic collapse under a load at the foot</source>
        <translation type="unfinished">gedrungener Schweller, an beiden Enden gehalten: plastische Traglast unter einer Last am Fuß</translation>
    </message>
    <message>
        <source>thin rocker held at both ends: load at which it buckles and folds</source>
        <translation type="unfinished">dünner Schweller, an beiden Enden gehalten: Last, bei der er beult und faltet</translation>
    </message>
    <message>
        <source>stocky rocker held at both ends and turned at the foot: plastic torque (sand heap)</source>
        <translation type="unfinished">gedrungener Schweller, an beiden Enden gehalten und am Fuß verdreht: plastisches Torsionsmoment (Sandhügel)</translation>
    </message>
    <message>
        <source>rocker held at both ends: deflection at the foot</source>
        <translation type="unfinished">Schweller, an beiden Enden gehalten: Durchbiegung am Fuß</translation>
    </message>
    <message>
        <source>an increment of the rocker did not converge</source>
        <translation type="unfinished">ein Schritt des Schwellers kam nicht zur Ruhe</translation>
    </message>
    <message>
        <source>two to three columns of even-strain triangles on a wall 130 to 150 mm wide dent too late</source>
        <translation type="unfinished">zwei bis drei Spalten Dreiecke gleicher Dehnung auf einer 130 bis 150 mm breiten Wand beulen zu spät</translation>
    </message>
    <message>
        <source>textbook formula, from memory</source>
        <translation type="unfinished">Lehrbuchformel, aus dem Gedächtnis</translation>
    </message>
    <message>
        <source>law of conservation</source>
        <translation type="unfinished">Erhaltungssatz</translation>
    </message>
    <message>
        <source>the program on another lattice</source>
        <translation type="unfinished">das Programm auf einem anderen Gitter</translation>
    </message>
    <message>
        <source>{what}: finer is nearer</source>
        <translation type="unfinished">{what}: feiner ist näher</translation>
    </message>
    <message>
        <source>of the coarse error</source>
        <translation type="unfinished">des groben Fehlers</translation>
    </message>
    <message>
        <source>push {what}: reactions equal loads</source>
        <translation type="unfinished">Druck, {what}: Reaktionen gleich Lasten</translation>
    </message>
    <message>
        <source>of the tip force</source>
        <translation type="unfinished">der Spitzenkraft</translation>
    </message>
    <message>
        <source>push {what}: moments balance</source>
        <translation type="unfinished">Druck, {what}: Momente im Gleichgewicht</translation>
    </message>
    <message>
        <source>m times the tip force</source>
        <translation type="unfinished">m mal Spitzenkraft</translation>
    </message>
    <message>
        <source>push {what}: work is stored or spent</source>
        <translation type="unfinished">Druck, {what}: Arbeit ist gespeichert oder verbraucht</translation>
    </message>
    <message>
        <source>of the work</source>
        <translation type="unfinished">der Arbeit</translation>
    </message>
    <message>
        <source>door turned by {n} rad as one: energy</source>
        <translation type="unfinished">Tür als Ganzes um {n} rad gedreht: Energie</translation>
    </message>
    <message>
        <source>push {what}: the mirrored car mirrors the answer</source>
        <translation type="unfinished">Druck, {what}: das gespiegelte Auto spiegelt die Antwort</translation>
    </message>
    <message>
        <source>sheet in section</source>
        <translation type="unfinished">Blech im Schnitt</translation>
    </message>
    <message>
        <source>end-notched bar: compliance</source>
        <translation type="unfinished">am Ende gekerbter Stab: Nachgiebigkeit</translation>
    </message>
    <message>
        <source>end-notched bar: load at which the crack runs</source>
        <translation type="unfinished">am Ende gekerbter Stab: Last, bei der der Riss läuft</translation>
    </message>
    <message>
        <source>bonded lap of {n} mm steel that bends: peak shear</source>
        <translation type="unfinished">geklebte Überlappung, Stahl {n} mm, der sich biegt: größte Scherung</translation>
    </message>
    <message>
        <source>the crack of the notched bar did not run</source>
        <translation type="unfinished">der Riss des gekerbten Stabs lief nicht</translation>
    </message>
    <message>
        <source>{n} layers an arm</source>
        <translation type="unfinished">{n} Lagen je Arm</translation>
    </message>
    <message>
        <source>{n} layers a sheet</source>
        <translation type="unfinished">{n} Lagen je Blech</translation>
    </message>
    <message>
        <source>slit ring, {n} of the load: rise of the {lip} end</source>
        <translation type="unfinished">geschlitzter Ring, {n} der Last: Anheben am Ende ({lip})</translation>
    </message>
    <message>
        <source>(radii {n}, {n2})</source>
        <translation type="unfinished">(Radien {n}, {n2})</translation>
    </message>
    <message>
        <source>slit ring, {lip} end</source>
        <translation type="unfinished">geschlitzter Ring, Ende ({lip})</translation>
    </message>
    <message>
        <source>outer</source>
        <translation type="unfinished">außen</translation>
    </message>
    <message>
        <source>clamped disc held in its plane, q a⁴ / E h⁴ = {n}: sag</source>
        <translation type="unfinished">eingespannte Scheibe, in ihrer Ebene gehalten, q a⁴ / E h⁴ = {n}: Durchhang</translation>
    </message>
    <message>
        <source>clamped square held in its plane, q a⁴ / E h⁴ = {n}: sag</source>
        <translation type="unfinished">eingespanntes Quadrat, in seiner Ebene gehalten, q a⁴ / E h⁴ = {n}: Durchhang</translation>
    </message>
    <message>
        <source>the corner of the freed door's sill lip comes to stand on the rocker's edge and carries it; whether it slides past hangs on the lattice and on where the hinges' axis lies</source>
        <translation type="unfinished">die Ecke der Schwellerlippe der gelösten Tür kommt auf der Schwellerkante zu stehen und trägt sie; ob sie vorbeigleitet, hängt am Gitter und daran, wo die Scharnierachse liegt</translation>
    </message>
    <message>
        <source>the wrecked door is a stretched skin that slackens when its edge is pressed forward, and the hinge by which a rip would pull went in the wreck; a rail and a rocker that give change nothing</source>
        <translation type="unfinished">die Unfalltür ist eine gespannte Haut, die erschlafft, wenn ihr Rand nach vorn gedrückt wird, und das Scharnier, an dem ein Abreißen ziehen würde, ging im Unfall; ein Holm und ein Schweller, die nachgeben, ändern nichts</translation>
    </message>
    <message>
        <source>{what}: they</source>
        <translation type="unfinished">{what}: sie</translation>
    </message>
    <message>
        <source>they</source>
        <translation type="unfinished">sie</translation>
    </message>
    <message>
        <source>slip</source>
        <translation type="unfinished">rutschen</translation>
    </message>
    <message>
        <source>hold</source>
        <translation type="unfinished">halten</translation>
    </message>
    <message>
        <source>latch free, door open, {hinge} first: the ground carries</source>
        <translation type="unfinished">Schloss frei, Tür offen, zuerst {hinge}: der Boden trägt</translation>
    </message>
    <message>
        <source>latch free, door open, upper hinge first: lowest point over the sill, against lower hinge first</source>
        <translation type="unfinished">Schloss frei, Tür offen, oberes Scharnier zuerst: tiefster Punkt über dem Schweller, gegen unteres Scharnier zuerst</translation>
    </message>
    <message>
        <source>sill pushed up from the ground: the car on its wheels rises, against one on blocks</source>
        <translation type="unfinished">Schweller vom Boden hochgedrückt: das Auto auf seinen Rädern steigt, gegen eines auf Klötzen</translation>
    </message>
    <message>
        <source>sill pushed up from the ground: opening on wheels, against that on blocks</source>
        <translation type="unfinished">Schweller vom Boden hochgedrückt: Öffnung auf Rädern, gegen die auf Klötzen</translation>
    </message>
    <message>
        <source>vertical spread, outer lip, door dished 180 mm before: skin's middle out of a sound door's</source>
        <translation type="unfinished">senkrechtes Spreizen, Außenlippe, Tür vorher 180 mm eingebeult: Mitte der Außenhaut außerhalb der einer heilen Tür</translation>
    </message>
    <message>
        <source>the same: skin's middle out in the push itself</source>
        <translation type="unfinished">dasselbe: Mitte der Außenhaut beim Drücken selbst nach außen</translation>
    </message>
    <message>
        <source>vertical spread on the belt's inner lip, {n} m back: {part}'s middle out</source>
        <translation type="unfinished">senkrechtes Spreizen auf der Innenlippe der Brüstung, {n} m hinten: Mitte nach außen ({part})</translation>
    </message>
    <message>
        <source>door intruded to the person, {what} first: room lost on the way</source>
        <translation type="unfinished">Tür bis zum Menschen eingedrungen, zuerst {what}: unterwegs verlorener Raum</translation>
    </message>
    <message>
        <source>door intruded to the person, pushed back first: room gained at the end</source>
        <translation type="unfinished">Tür bis zum Menschen eingedrungen, zuerst zurückgedrückt: am Ende gewonnener Raum</translation>
    </message>
    <message>
        <source>high striker, drawn {n} times: {text}</source>
        <translation type="unfinished">hoch getroffen, {n}-mal gezogen: {text}</translation>
    </message>
    <message>
        <source>one top cut, tips on the raw edge</source>
        <translation type="unfinished">ein Schnitt oben, Spitzen auf der rohen Kante</translation>
    </message>
    <message>
        <source>a second cut under it, tips in the pocket</source>
        <translation type="unfinished">ein zweiter Schnitt darunter, Spitzen in der Tasche</translation>
    </message>
    <message>
        <source>a dished skin is drawn outward as a straight one is: it comes out of its dent by a third</source>
        <translation type="unfinished">eine eingebeulte Außenhaut wird nach außen gezogen wie eine gerade: sie kommt um ein Drittel aus ihrer Delle</translation>
    </message>
    <message>
        <source>the intruded door's latch let go in the wreck: it is no intruded door then</source>
        <translation type="unfinished">das Schloss der eingedrungenen Tür gab im Unfall frei: dann ist sie keine eingedrungene Tür</translation>
    </message>
    <message>
        <source>{what} first: increments did not settle</source>
        <translation type="unfinished">zuerst {what}: Schritte kamen nicht zur Ruhe</translation>
    </message>
    <message>
        <source>{what}, kept draws of model {n}</source>
        <translation type="unfinished">{what}, aufbewahrte Ziehungen von Modell {n}</translation>
    </message>
    <message>
        <source>, from memory</source>
        <translation type="unfinished">, aus dem Gedächtnis</translation>
    </message>
    <message>
        <source>, formula</source>
        <translation type="unfinished">, Formel</translation>
    </message>
    <message>
        <source>on the usual lattice the seam runs ahead, by 5 mm of opening at 20 mm and by 8 at 40</source>
        <translation type="unfinished">auf dem üblichen Gitter läuft die Naht voraus, um 5 mm Öffnung bei 20 mm und um 8 bei 40</translation>
    </message>
    <message>
        <source>the seam runs up to the belt in one snap, at 50 mm on the usual lattice and at 55 mm on the finest</source>
        <translation type="unfinished">die Naht läuft in einem Ruck bis zur Brüstung, bei 50 mm auf dem üblichen Gitter und bei 55 mm auf dem feinsten</translation>
    </message>
    <message>
        <source>{what}, {n} mm: what happens, in order, as on the finest lattice</source>
        <translation type="unfinished">{what}, {n} mm: was geschieht, der Reihe nach, wie auf dem feinsten Gitter</translation>
    </message>
    <message>
        <source>{what}, {n} mm: highest force, most over least of three lattices</source>
        <translation type="unfinished">{what}, {n} mm: größte Kraft, größte zu kleinster von drei Gittern</translation>
    </message>
    <message>
        <source>on the lip, {n} mm: seam parted, most over least of three lattices</source>
        <translation type="unfinished">auf der Falzkante, {n} mm: aufgegangene Naht, größte zu kleinster von drei Gittern</translation>
    </message>
    <message>
        <source>{what}, {n} mm: skin's middle out, most less least of three lattices</source>
        <translation type="unfinished">{what}, {n} mm: Mitte der Außenhaut nach außen, größte weniger kleinste von drei Gittern</translation>
    </message>
    <message>
        <source>the load is below the solver's force limit: nothing was solved</source>
        <translation type="unfinished">die Last liegt unter der Kraftgrenze des Lösers: nichts wurde gelöst</translation>
    </message>
    <message>
        <source>residual {n} N after {n2} iterations</source>
        <translation type="unfinished">Restkraft {n} N nach {n2} Iterationen</translation>
    </message>
    <message>
        <source>mirror {what}</source>
        <translation type="unfinished">Spiegel {what}</translation>
    </message>
    <message>
        <source>strip pressed along, {ends}: buckling load</source>
        <translation type="unfinished">längs gedrückter Streifen, {ends}: Knicklast</translation>
    </message>
    <message>
        <source>strip bowed {way}, pressed with {n} of its buckling load: its bow</source>
        <translation type="unfinished">Streifen, vorgebogen nach {way}, mit {n} seiner Knicklast gedrückt: seine Biegung</translation>
    </message>
    <message>
        <source>flat strip, {n} of its buckling load 0.2 mm {way} of its middle: away from the load</source>
        <translation type="unfinished">ebener Streifen, {n} seiner Knicklast 0,2 mm neben der Mitte, {way}: von der Last weg</translation>
    </message>
    <message>
        <source>buckling strip, {ends}</source>
        <translation type="unfinished">knickender Streifen, {ends}</translation>
    </message>
    <message>
        <source>column at {what} of its buckling load: tip {way}</source>
        <translation type="unfinished">Stütze bei {what} ihrer Knicklast: Ende {way}</translation>
    </message>
    <message>
        <source>across</source>
        <translation type="unfinished">quer</translation>
    </message>
    <message>
        <source>supported square plate pressed on two edges: buckling stress</source>
        <translation type="unfinished">aufgelagerte quadratische Platte, an zwei Rändern gedrückt: Beulspannung</translation>
    </message>
    <message>
        <source>buckling plate</source>
        <translation type="unfinished">beulende Platte</translation>
    </message>
    <message>
        <source>test metal</source>
        <translation type="unfinished">Prüfmetall</translation>
    </message>
    <message>
        <source>cut strip clamped along its edges: pull at which it tears</source>
        <translation type="unfinished">angeschnittener Streifen, an den Rändern eingespannt: Zug, bei dem er reißt</translation>
    </message>
    <message>
        <source>tear across a lattice turned by {n} degrees: energy of a straight metre</source>
        <translation type="unfinished">Riss quer durch ein um {n} Grad gedrehtes Gitter: Energie eines geraden Meters</translation>
    </message>
    <message>
        <source>trousers that do not yield: mean force of the tear</source>
        <translation type="unfinished">Hosenprobe, die nicht fließt: mittlere Kraft des Reißens</translation>
    </message>
    <message>
        <source>trousers that do not yield: energy per torn length</source>
        <translation type="unfinished">Hosenprobe, die nicht fließt: Energie je gerissener Länge</translation>
    </message>
    <message>
        <source>rising evenly</source>
        <translation type="unfinished">gleichmäßig steigend</translation>
    </message>
    <message>
        <source>spreader rising evenly from 20 to 60 kN: highest of ten readings</source>
        <translation type="unfinished">Spreizer, gleichmäßig von 20 auf 60 kN steigend: höchste von zehn Ablesungen</translation>
    </message>
    <message>
        <source>spreader rising evenly from 20 to 60 kN: lowest of ten readings</source>
        <translation type="unfinished">Spreizer, gleichmäßig von 20 auf 60 kN steigend: niedrigste von zehn Ablesungen</translation>
    </message>
    <message>
        <source>ready spreader as type {what}: least force</source>
        <translation type="unfinished">fertiger Spreizer als Art {what}: kleinste Kraft</translation>
    </message>
    <message>
        <source>ready spreader as type {what}: distance</source>
        <translation type="unfinished">fertiger Spreizer als Art {what}: Weg</translation>
    </message>
    <message>
        <source>spreader of 0.8 kN on the hem lip: force at which it stalls</source>
        <translation type="unfinished">Spreizer von 0,8 kN auf der Falzkante: Kraft, bei der er stehen bleibt</translation>
    </message>
    <message>
        <source>virtual work, tips {n} mm deep: energy gained per opening is the tip's force</source>
        <translation type="unfinished">virtuelle Arbeit, Spitzen {n} mm tief: gewonnene Energie je Öffnung ist die Kraft der Spitze</translation>
    </message>
    <message>
        <source>did not stall</source>
        <translation type="unfinished">blieb nicht stehen</translation>
    </message>
    <message>
        <source>residual {n} N early in a push</source>
        <translation type="unfinished">Restkraft {n} N früh in einem Druck</translation>
    </message>
    <message>
        <source>neither tears: up to 100 mm on a whole hem the seam parts and the lip is not stretched to necking</source>
        <translation type="unfinished">keine reißt: bis 100 mm geht an einem heilen Falz die Naht auf, und die Kante wird nicht bis zum Einschnüren gedehnt</translation>
    </message>
    <message>
        <source>from the top: what gives first</source>
        <translation type="unfinished">von oben: was zuerst nachgibt</translation>
    </message>
    <message>
        <source>begun on the hem at the latch, 100 mm: the latch meanwhile</source>
        <translation type="unfinished">auf dem Falz am Schloss begonnen, 100 mm: das Schloss inzwischen</translation>
    </message>
    <message>
        <source>from the top until the latch is free: torn length against the edge attack's</source>
        <translation type="unfinished">von oben, bis das Schloss frei ist: gerissene Länge gegen die des Angriffs am Rand</translation>
    </message>
    <message>
        <source>stopped when the skin begins to tear, and cut: torn length against going on to 100 mm</source>
        <translation type="unfinished">angehalten, wenn die Außenhaut zu reißen beginnt, und geschnitten: gerissene Länge gegen das Weitermachen bis 100 mm</translation>
    </message>
    <message>
        <source>going on against stopping and cutting, tool off: further out at the inner structure's latch edge</source>
        <translation type="unfinished">Weitermachen gegen Anhalten und Schneiden, Gerät ab: weiter außen an der Schlosskante der inneren Struktur</translation>
    </message>
    <message>
        <source>nothing gave</source>
        <translation type="unfinished">nichts gab nach</translation>
    </message>
    <message>
        <source>{name} {n}, from memory</source>
        <translation type="unfinished">{name} {n}, aus dem Gedächtnis</translation>
    </message>
    <message>
        <source>{name} {n}, formula</source>
        <translation type="unfinished">{name} {n}, Formel</translation>
    </message>
    <message>
        <source>thicknesses</source>
        <translation type="unfinished">Dicken</translation>
    </message>
    <message>
        <source>draws</source>
        <translation type="unfinished">Ziehungen</translation>
    </message>
    <message>
        <source>slips</source>
        <translation type="unfinished">rutscht</translation>
    </message>
    <message>
        <source>holds</source>
        <translation type="unfinished">hält</translation>
    </message>
    <message>
        <source>pinned</source>
        <translation type="unfinished">gelenkig</translation>
    </message>
    <message>
        <source>cantilever</source>
        <translation type="unfinished">Kragstreifen</translation>
    </message>
    <message>
        <source>peel</source>
        <translation type="unfinished">Schälen</translation>
    </message>
    <message>
        <source>mix</source>
        <translation type="unfinished">gemischt</translation>
    </message>
    <message>
        <source>steep</source>
        <translation type="unfinished">steil</translation>
    </message>
    <message>
        <source>nearest</source>
        <translation type="unfinished">am nächsten</translation>
    </message>
    <message>
        <source>furthest</source>
        <translation type="unfinished">am weitesten</translation>
    </message>
    <message>
        <source>strip stretched evenly, lattice turned by {n} degrees: edge told nearest to necking</source>
        <translation type="unfinished">gleichmäßig gedehnter Streifen, Gitter um {n} Grad gedreht: der dem Einschnüren nächste Rand</translation>
    </message>
    <message>
        <source>strip stretched evenly, lattice turned by {n} degrees: edge told furthest to necking</source>
        <translation type="unfinished">gleichmäßig gedehnter Streifen, Gitter um {n} Grad gedreht: der vom Einschnüren fernste Rand</translation>
    </message>
    <message>
        <source>latch fully latched pulled {way} the car: lets go</source>
        <translation type="unfinished">Schloss, ganz verriegelt, {way} zum Auto gezogen: gibt frei</translation>
    </message>
    <message>
        <source>latch half latched pulled {way} the car: lets go</source>
        <translation type="unfinished">Schloss, halb verriegelt, {way} zum Auto gezogen: gibt frei</translation>
    </message>
    <message>
        <source>hinge pulled {way} the car: lets go</source>
        <translation type="unfinished">Scharnier, {way} zum Auto gezogen: gibt frei</translation>
    </message>
    <message>
        <source>type AS</source>
        <translation type="unfinished">Art AS</translation>
    </message>
    <message>
        <source>ready spreader as type AS: least force</source>
        <translation type="unfinished">fertiger Spreizer als Art AS: kleinste Kraft</translation>
    </message>
    <message>
        <source>ready spreader as type AS: distance</source>
        <translation type="unfinished">fertiger Spreizer als Art AS: Weg</translation>
    </message>
    <message>
        <source>curved</source>
        <translation type="unfinished">gewölbt</translation>
    </message>
    <message>
        <source>ram from the far rocker to {n} m up, grooved head on {what}</source>
        <translation type="unfinished">Zylinder vom Schweller gegenüber auf {n} m Höhe, geriffelter Kopf auf {what:dative}</translation>
    </message>
    <message>
        <source>ram from the tunnel's edge close by to {n} m up, grooved head on {what}</source>
        <translation type="unfinished">Zylinder von der Tunnelkante nahebei auf {n} m Höhe, geriffelter Kopf auf {what:dative}</translation>
    </message>
    <message>
        <source>paint</source>
        <translation type="unfinished">Lack</translation>
    </message>
    <message>
        <source>no limit</source>
        <translation type="unfinished">keine Grenze</translation>
    </message>
    <message>
        <source>evenly</source>
        <translation type="unfinished">gleichmäßig</translation>
    </message>
    <message>
        <source>peak at the plan's</source>
        <translation type="unfinished">am häufigsten beim Wert des Plans</translation>
    </message>
    <message>
        <source>peak at the plan's, by ratio</source>
        <translation type="unfinished">am häufigsten beim Wert des Plans, im Verhältnis</translation>
    </message>
    <message>
        <source>apart by {n} %</source>
        <translation type="unfinished">{n} % auseinander</translation>
    </message>
    <message>
        <source>no figure</source>
        <translation type="unfinished">keine Zahl</translation>
    </message>
    <message>
        <source>{title}, {n} mm (of an older model, {n2})</source>
        <translation type="unfinished">{title}, {n} mm (von einem älteren Modell, {n2})</translation>
    </message>
    <message>
        <source>{title}, {n} and {n2} mm (of an older model, {n3})</source>
        <translation type="unfinished">{title}, {n} und {n2} mm (von einem älteren Modell, {n3})</translation>
    </message>
    <message>
        <source>{n} ({n2} to {n3}) mm</source>
        <translation type="unfinished">{n} ({n2} bis {n3}) mm</translation>
    </message>
    <message>
        <source>{n} ({n2} to {n3}) kN</source>
        <translation type="unfinished">{n} ({n2} bis {n3}) kN</translation>
    </message>
    <message>
        <source>{n} ({n2} to {n3}) deg</source>
        <translation type="unfinished">{n} ({n2} bis {n3}) Grad</translation>
    </message>
    <message>
        <source>deg</source>
        <translation type="unfinished">Grad</translation>
    </message>
    <message>
        <source>{n} ({n2} to {n3}) %</source>
        <translation type="unfinished">{n} ({n2} bis {n3}) %</translation>
    </message>
    <message>
        <source>{n} ({n2} to {n3})</source>
        <translation type="unfinished">{n} ({n2} bis {n3})</translation>
    </message>
    <message>
        <source>aws-welds-2013; from memory</source>
        <translation type="unfinished">aws-welds-2013; aus dem Gedächtnis</translation>
    </message>
    <message>
        <source>push</source>
        <translation type="unfinished">Druck</translation>
    </message>
    <message>
        <source>what</source>
        <translation type="unfinished">was</translation>
    </message>
    <message>
        <source>number</source>
        <translation type="unfinished">Zahl</translation>
    </message>
    <message>
        <source>value</source>
        <translation type="unfinished">Wert</translation>
    </message>
    <message>
        <source>scenario</source>
        <translation type="unfinished">Szenario</translation>
    </message>
    <message>
        <source>asked</source>
        <translation type="unfinished">gefragt</translation>
    </message>
    <message>
        <source>runs</source>
        <translation type="unfinished">Rechnungen</translation>
    </message>
    <message>
        <source>plan</source>
        <translation type="unfinished">Plan</translation>
    </message>
    <message>
        <source>note</source>
        <translation type="unfinished">Notiz</translation>
    </message>
    <message>
        <source>A door pressed in by a cylinder is drawn off its frame too soon: its mean over 305 mm is 0.53 of the rule's floor on the lattice of model version 4 and 0.41 to 0.59 on earlier ones: not settled.</source>
        <translation type="unfinished">Eine von einem Zylinder eingedrückte Tür wird zu früh von ihrem Rahmen gezogen: Ihr Mittel über 305 mm liegt auf dem Gitter der Modellversion 4 bei 0,53 der Untergrenze der Vorschrift und auf früheren bei 0,41 bis 0,59: nicht gesichert.</translation>
    </message>
    <message>
        <source>A skin creased in by a squeeze goes further in under a push along the car (15 to 24 mm after 60 mm of opening), one that is not squeezed begins to go out and ends in by 4 to 13 mm; in the first 5 mm the squeezed skin hardly moves, for the corner of the latch edge folds, and the inner panel does not follow as the trade says.</source>
        <translation type="unfinished">Eine durch Quetschen nach innen geknickte Außenhaut geht unter einem Druck längs zum Auto weiter hinein (15 bis 24 mm nach 60 mm Öffnung), eine nicht gequetschte beginnt nach außen und endet 4 bis 13 mm innen; auf den ersten 5 mm bewegt sich die gequetschte Außenhaut kaum, denn die Ecke der Schlosskante faltet sich, und das Innenblech folgt nicht, wie die Praxis sagt.</translation>
    </message>
    <message>
        <source>the latch edge's top corner folds at about 3 kN, a tenth of what buckles the panel: in the first 5 mm the squeezed skin stays where it is within 1 mm, and a skin not squeezed goes out by 3 to 4 mm</source>
        <translation type="unfinished">die obere Ecke der Schlosskante faltet bei etwa 3 kN, einem Zehntel dessen, was das Blech beult: auf den ersten 5 mm bleibt die gequetschte Außenhaut auf 1 mm, wo sie ist, und eine nicht gequetschte geht 3 bis 4 mm hinaus</translation>
    </message>
    <message>
        <source>the same, {n} m up: the skin in the first 5 mm, out, against a door not squeezed</source>
        <translation type="unfinished">dasselbe, {n} m hoch: die Außenhaut auf den ersten 5 mm, nach außen, gegen eine nicht gequetschte Tür</translation>
    </message>
    <message>
        <source>an increment of the member did not converge</source>
        <translation type="unfinished">ein Schritt des Bauteils kam nicht zur Ruhe</translation>
    </message>
    <message>
        <source>what gives, highest force, seam parted</source>
        <translation type="unfinished">was nachgibt, größte Kraft, gelöste Naht</translation>
    </message>
    <message>
        <source>On the hem at the hinge</source>
        <translation type="unfinished">Am Falz beim Scharnier</translation>
    </message>
    <message>
        <source>seam, folds out; 4.2 kN; 691 mm</source>
        <translation type="unfinished">Naht, faltet nach außen; 4,2 kN; 691 mm</translation>
    </message>
    <message>
        <source>seam; 3.2 kN; 568 mm</source>
        <translation type="unfinished">Naht; 3,2 kN; 568 mm</translation>
    </message>
    <message>
        <source>36 mm: seam; 3.1 kN; 584 mm</source>
        <translation type="unfinished">36 mm: Naht; 3,1 kN; 584 mm</translation>
    </message>
    <message>
        <source>the same from the usual lattice down</source>
        <translation type="unfinished">gleich ab dem üblichen Gitter</translation>
    </message>
    <message>
        <source>First bite on the lip, narrow tips</source>
        <translation type="unfinished">Erster Ansatz auf der Falzkante, schmale Spitzen</translation>
    </message>
    <message>
        <source>seam; 6.9 kN; 722 mm</source>
        <translation type="unfinished">Naht; 6,9 kN; 722 mm</translation>
    </message>
    <message>
        <source>seam; 2.7 kN; 708 mm</source>
        <translation type="unfinished">Naht; 2,7 kN; 708 mm</translation>
    </message>
    <message>
        <source>36 mm: seam; 2.9 kN; 778 mm</source>
        <translation type="unfinished">36 mm: Naht; 2,9 kN; 778 mm</translation>
    </message>
    <message>
        <source>First bite behind the bend, narrow tips</source>
        <translation type="unfinished">Erster Ansatz hinter der Biegung, schmale Spitzen</translation>
    </message>
    <message>
        <source>latch; 16.2 kN</source>
        <translation type="unfinished">Schloss; 16,2 kN</translation>
    </message>
    <message>
        <source>latch; 15.9 kN</source>
        <translation type="unfinished">Schloss; 15,9 kN</translation>
    </message>
    <message>
        <source>36 mm: latch; 15.8 kN</source>
        <translation type="unfinished">36 mm: Schloss; 15,8 kN</translation>
    </message>
    <message>
        <source>First bite behind the bend, wide tips</source>
        <translation type="unfinished">Erster Ansatz hinter der Biegung, breite Spitzen</translation>
    </message>
    <message>
        <source>latch; 15.6 kN</source>
        <translation type="unfinished">Schloss; 15,6 kN</translation>
    </message>
    <message>
        <source>36 mm: latch; 15.9 kN</source>
        <translation type="unfinished">36 mm: Schloss; 15,9 kN</translation>
    </message>
    <message>
        <source>From the top, one bite</source>
        <translation type="unfinished">Von oben, ein Ansatz</translation>
    </message>
    <message>
        <source>latch; 9.5 kN</source>
        <translation type="unfinished">Schloss; 9,5 kN</translation>
    </message>
    <message>
        <source>latch at 20 mm; 9.0 kN</source>
        <translation type="unfinished">Schloss bei 20 mm; 9,0 kN</translation>
    </message>
    <message>
        <source>latch holds at 0.95 of its limit; 8.4 kN</source>
        <translation type="unfinished">Schloss hält mit 0,95 seiner Grenze; 8,4 kN</translation>
    </message>
    <message>
        <source>not settled: the inner panel folds sooner on finer lattices (36 mm: 0.94 of the limit, latch at 65 mm); the next bites lower free it on all</source>
        <translation type="unfinished">nicht gesichert: das Innenblech faltet auf feineren Gittern früher (36 mm: 0,94 der Grenze, Schloss bei 65 mm); die nächsten Ansätze weiter unten lösen es auf allen</translation>
    </message>
    <message>
        <source>Belt, outer lip</source>
        <translation type="unfinished">Brüstung, äußere Kante</translation>
    </message>
    <message>
        <source>nothing; 2.7 kN</source>
        <translation type="unfinished">nichts; 2,7 kN</translation>
    </message>
    <message>
        <source>nothing; 2.2 kN</source>
        <translation type="unfinished">nichts; 2,2 kN</translation>
    </message>
    <message>
        <source>the same way, its force 1.2 times apart</source>
        <translation type="unfinished">derselbe Weg, die Kraft 1,2-fach auseinander</translation>
    </message>
    <message>
        <source>Belt, inner lip</source>
        <translation type="unfinished">Brüstung, innere Kante</translation>
    </message>
    <message>
        <source>folds in; 7.2 kN</source>
        <translation type="unfinished">faltet nach innen; 7,2 kN</translation>
    </message>
    <message>
        <source>folds in; 7.3 kN</source>
        <translation type="unfinished">faltet nach innen; 7,3 kN</translation>
    </message>
    <message>
        <source>Belt, weak window rail</source>
        <translation type="unfinished">Brüstung, schwacher Fensterrahmen</translation>
    </message>
    <message>
        <source>rail gives; 1.2 kN</source>
        <translation type="unfinished">Rahmen gibt nach; 1,2 kN</translation>
    </message>
    <message>
        <source>Door dished by 60 mm</source>
        <translation type="unfinished">Tür 60 mm eingedellt</translation>
    </message>
    <message>
        <source>folds out; 2.5 kN</source>
        <translation type="unfinished">faltet nach außen; 2,5 kN</translation>
    </message>
    <message>
        <source>folds out; 1.7 kN</source>
        <translation type="unfinished">faltet nach außen; 1,7 kN</translation>
    </message>
    <message>
        <source>36 mm: folds out; 1.9 kN</source>
        <translation type="unfinished">36 mm: faltet nach außen; 1,9 kN</translation>
    </message>
    <message>
        <source>Door dished by 180 mm</source>
        <translation type="unfinished">Tür 180 mm eingedellt</translation>
    </message>
    <message>
        <source>seam and folds out; 4.7 kN; 412 mm</source>
        <translation type="unfinished">Naht und faltet nach außen; 4,7 kN; 412 mm</translation>
    </message>
    <message>
        <source>seam, folds out; 3.9 kN; 462 mm</source>
        <translation type="unfinished">Naht, faltet nach außen; 3,9 kN; 462 mm</translation>
    </message>
    <message>
        <source>folds out, seam; 2.1 kN; 627 mm</source>
        <translation type="unfinished">faltet nach außen, Naht; 2,1 kN; 627 mm</translation>
    </message>
    <message>
        <source>not settled: order, force (1.8 times) and length (1.4 times); cause not found</source>
        <translation type="unfinished">nicht gesichert: Reihenfolge, Kraft (1,8-fach) und Länge (1,4-fach); Ursache nicht gefunden</translation>
    </message>
    <message>
        <source>Three doors, on the lip: bonded steel</source>
        <translation type="unfinished">Drei Türen, auf der Falzkante: Stahl geklebt</translation>
    </message>
    <message>
        <source>seam, folds out; 4.0 kN; 741 mm</source>
        <translation type="unfinished">Naht, faltet nach außen; 4,0 kN; 741 mm</translation>
    </message>
    <message>
        <source>seam; 3.1 kN; 737 mm</source>
        <translation type="unfinished">Naht; 3,1 kN; 737 mm</translation>
    </message>
    <message>
        <source>Three doors, on the lip: welded steel</source>
        <translation type="unfinished">Drei Türen, auf der Falzkante: Stahl geschweißt</translation>
    </message>
    <message>
        <source>welds; 7.2 kN; 551 mm</source>
        <translation type="unfinished">Schweißpunkte; 7,2 kN; 551 mm</translation>
    </message>
    <message>
        <source>welds, skin tears 76 mm; 6.5 kN; 300 mm</source>
        <translation type="unfinished">Schweißpunkte, Außenhaut reißt 76 mm; 6,5 kN; 300 mm</translation>
    </message>
    <message>
        <source>36 mm: welds, skin tears 79 mm; 4.8 kN; 200 mm</source>
        <translation type="unfinished">36 mm: Schweißpunkte, Außenhaut reißt 79 mm; 4,8 kN; 200 mm</translation>
    </message>
    <message>
        <source>the same parts in the same order from the usual lattice down; force 1.3 and length 1.5 times apart, cause not found</source>
        <translation type="unfinished">dieselben Teile in derselben Reihenfolge ab dem üblichen Gitter; Kraft 1,3- und Länge 1,5-fach auseinander, Ursache nicht gefunden</translation>
    </message>
    <message>
        <source>Three doors, on the lip: bonded alloy</source>
        <translation type="unfinished">Drei Türen, auf der Falzkante: Aluminium geklebt</translation>
    </message>
    <message>
        <source>seam, folds out; 4.5 kN; 1091 mm</source>
        <translation type="unfinished">Naht, faltet nach außen; 4,5 kN; 1091 mm</translation>
    </message>
    <message>
        <source>seam; 3.4 kN; 857 mm</source>
        <translation type="unfinished">Naht; 3,4 kN; 857 mm</translation>
    </message>
    <message>
        <source>36 mm: seam; 3.2 kN; 849 mm</source>
        <translation type="unfinished">36 mm: Naht; 3,2 kN; 849 mm</translation>
    </message>
    <message>
        <source>Three doors, from the top: bonded steel, latch jammed</source>
        <translation type="unfinished">Drei Türen, von oben: Stahl geklebt, Schloss klemmt</translation>
    </message>
    <message>
        <source>latch in the second bite; 16.6 kN</source>
        <translation type="unfinished">Schloss im zweiten Ansatz; 16,6 kN</translation>
    </message>
    <message>
        <source>latch in the third bite; 14.1 kN; 510 mm</source>
        <translation type="unfinished">Schloss im dritten Ansatz; 14,1 kN; 510 mm</translation>
    </message>
    <message>
        <source>36 mm: latch holds three bites; 13.3 kN; 570 mm</source>
        <translation type="unfinished">36 mm: Schloss hält drei Ansätze; 13,3 kN; 570 mm</translation>
    </message>
    <message>
        <source>not settled: the inner panel folds sooner on finer lattices, and the seam parts instead</source>
        <translation type="unfinished">nicht gesichert: das Innenblech faltet auf feineren Gittern früher, und stattdessen löst sich die Naht</translation>
    </message>
    <message>
        <source>Three doors, from the top: welded steel, latch jammed</source>
        <translation type="unfinished">Drei Türen, von oben: Stahl geschweißt, Schloss klemmt</translation>
    </message>
    <message>
        <source>latch in the second bite; 15.6 kN</source>
        <translation type="unfinished">Schloss im zweiten Ansatz; 15,6 kN</translation>
    </message>
    <message>
        <source>latch in the second bite; 14.5 kN</source>
        <translation type="unfinished">Schloss im zweiten Ansatz; 14,5 kN</translation>
    </message>
    <message>
        <source>36 mm: latch holds three bites; 12.9 kN; 300 mm</source>
        <translation type="unfinished">36 mm: Schloss hält drei Ansätze; 12,9 kN; 300 mm</translation>
    </message>
    <message>
        <source>Three doors, from the top: bonded alloy, latch jammed</source>
        <translation type="unfinished">Drei Türen, von oben: Aluminium geklebt, Schloss klemmt</translation>
    </message>
    <message>
        <source>latch in the first bite; 12.6 kN</source>
        <translation type="unfinished">Schloss im ersten Ansatz; 12,6 kN</translation>
    </message>
    <message>
        <source>latch in the second bite; 14.2 kN; 80 mm</source>
        <translation type="unfinished">Schloss im zweiten Ansatz; 14,2 kN; 80 mm</translation>
    </message>
    <message>
        <source>36 mm: latch in the second bite; 13.7 kN; 110 mm</source>
        <translation type="unfinished">36 mm: Schloss im zweiten Ansatz; 13,7 kN; 110 mm</translation>
    </message>
    <message>
        <source>Spread along the car, not squeezed</source>
        <translation type="unfinished">Längs gespreizt, nicht gequetscht</translation>
    </message>
    <message>
        <source>seam; 6.4 kN; 165 mm</source>
        <translation type="unfinished">Naht; 6,4 kN; 165 mm</translation>
    </message>
    <message>
        <source>seam; 5.6 kN; 143 mm</source>
        <translation type="unfinished">Naht; 5,6 kN; 143 mm</translation>
    </message>
    <message>
        <source>36 mm: seam; 6.2 kN; 126 mm</source>
        <translation type="unfinished">36 mm: Naht; 6,2 kN; 126 mm</translation>
    </message>
    <message>
        <source>Squeezed, then spread along the car</source>
        <translation type="unfinished">Gequetscht, dann längs gespreizt</translation>
    </message>
    <message>
        <source>seam; 6.9 kN; 203 mm</source>
        <translation type="unfinished">Naht; 6,9 kN; 203 mm</translation>
    </message>
    <message>
        <source>seam; 6.9 kN; 185 mm</source>
        <translation type="unfinished">Naht; 6,9 kN; 185 mm</translation>
    </message>
    <message>
        <source>36 mm: seam; 6.7 kN; 126 mm</source>
        <translation type="unfinished">36 mm: Naht; 6,7 kN; 126 mm</translation>
    </message>
    <message>
        <source>the same, its length 1.5 times apart</source>
        <translation type="unfinished">gleich, die Länge 1,5-fach auseinander</translation>
    </message>
    <message>
        <source>Squeezed at the end, then one bite from the top</source>
        <translation type="unfinished">Am Ende gequetscht, dann ein Ansatz von oben</translation>
    </message>
    <message>
        <source>seam; 9.5 kN; 138 mm</source>
        <translation type="unfinished">Naht; 9,5 kN; 138 mm</translation>
    </message>
    <message>
        <source>latch; 8.9 kN; 60 mm</source>
        <translation type="unfinished">Schloss; 8,9 kN; 60 mm</translation>
    </message>
    <message>
        <source>36 mm: seam; 8.9 kN; 79 mm</source>
        <translation type="unfinished">36 mm: Naht; 8,9 kN; 79 mm</translation>
    </message>
    <message>
        <source>not settled, as from the top</source>
        <translation type="unfinished">nicht gesichert, wie von oben</translation>
    </message>
    <message>
        <source>Crushed by a cylinder, 457 mm</source>
        <translation type="unfinished">Von einem Zylinder eingedrückt, 457 mm</translation>
    </message>
    <message>
        <source>latch and seam; 19.5 kN; 434 mm</source>
        <translation type="unfinished">Schloss und Naht; 19,5 kN; 434 mm</translation>
    </message>
    <message>
        <source>latch and seam; 18.2 kN; 128 mm</source>
        <translation type="unfinished">Schloss und Naht; 18,2 kN; 128 mm</translation>
    </message>
    <message>
        <source>36 mm: seam, latch; 17.9 kN; 244 mm</source>
        <translation type="unfinished">36 mm: Naht, Schloss; 17,9 kN; 244 mm</translation>
    </message>
    <message>
        <source>force within a tenth; the seam's length hangs on when the latch goes</source>
        <translation type="unfinished">Kraft auf ein Zehntel gleich; die Länge der Naht hängt daran, wann das Schloss freigibt</translation>
    </message>
    <message>
        <source>From the top, in one bite, the latch comes near its limit on every lattice and lets go within 60 mm on 60 and 45 mm alone, for the inner panel folds sooner the finer the lattice; a next bite lower frees it on all, with a jammed latch not. With what is not known varied (16 draws, 60 mm) one bite frees it in 6, a short one and the next lower in all 16, a bite on the hem lip in none.</source>
        <translation type="unfinished">Von oben, in einem Ansatz, kommt das Schloss auf jedem Gitter nahe an seine Grenze und gibt innerhalb von 60 mm nur auf 60 und 45 mm frei, denn das Innenblech faltet früher, je feiner das Gitter ist; ein nächster Ansatz weiter unten löst es auf allen, ein verklemmtes Schloss nicht. Mit dem Unbekannten variiert (16 Ziehungen, 60 mm) löst es ein Ansatz in 6, ein kurzer und der nächste tiefer in allen 16, ein Ansatz auf der Falzkante in keiner.</translation>
    </message>
</context>
<context>
    <name>dative</name>
    <message>
        <source>bare metal</source>
        <translation type="unfinished">blankem Metall</translation>
    </message>
    <message>
        <source>paint</source>
        <translation type="unfinished">Lack</translation>
    </message>
</context>
</TS>
