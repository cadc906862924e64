<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="zh_CN" sourcelanguage="en">
<context>
    <name>words</name>
    <message>
        <source>Foot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Which foot: LP1, right fore, ...</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pace</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From this print to the next one, of the other side, cm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Next</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From the next print to the one after it, cm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stride</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From this print to the next one of this side, cm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Length</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Of the print, cm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Gauge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From left to right across the direction of travel, cm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ahead</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fore prints: centre ahead of the hind print of its side and number, cm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lift the %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Plant the %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Plant the feet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Place the shoulder blades</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the leg is stretched out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>stopped by %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 %2 from its place, %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drag to move the %1 · Shift lifts it straight up · Alt bends the leg</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drag to move the trunk over its planted feet · Shift tilts it about the hips</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drag to raise or lower the front of the trunk over its planted feet · vertebrae bend the back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Moving the %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Moving the trunk over %1 planted feet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> · Esc puts it back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move the %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move the trunk</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>found</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>deformed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mirrored</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>scaled</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>inferred</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 to %2 %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>unknown</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>unknown: no circumferences</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, circumferences measured</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, circumferences inferred</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>off the ground</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>balanced, %1 inside</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tips, %1 outside</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 beyond</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 near</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of %2 joints</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of %2 joints supported</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>all %1 joints supported</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, %1 not judged</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, 1 contact</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, %1 contacts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>by length</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>by area</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 % %2, %3 cartilage</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, centrum faces parallel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>neutral</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>most dorsiflexed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>most ventriflexed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>highest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lowest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>present</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2 m, neck %3°</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> m</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 to %2 ahead of the fore foot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 to %2 ahead of the neck’s base</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 high</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 ahead</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 mmHg, %2 m</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>column of blood from heart to head, mmHg</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>upright sauropod in one published view</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>down – up, °</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>right – left, °</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>torsion right – left, °</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bar: supported from neutral; dotted: typed; mark: present angle, triangle beyond</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ahead of the neck’s base, m</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>over the ground, m</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 m</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>10 cm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>length</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>snout over the ground, m</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>slope of the neck, °</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hill: %1 draws; bar: 5 to 95 %; stroke: half of them; diamond: the table as it is</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 inside</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 outside</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pose</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add pose “%1”</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rename pose to “%1”</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Delete pose “%1”</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Update pose “%1”</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the neck's base</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the tail's base</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 ahead of %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 behind %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> and %1 to the left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> and %1 to the right</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Neck at its %1 limit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tail at its %1 limit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 at %2, %3; %4 joints turn %5 together</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>snout</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tip</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, %1 of them not judged</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>; part of it would be %1 in the ground</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep the limits of neck and tail</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>facets centred</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>facets centred, centrum faces parallel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Neutral is where the facets of both sides are in greatest contact, their centres on each other.
Taylor, Wedel &amp; Naish 2009, Acta Palaeontol. Pol. 54:213; Vidal et al. 2020, PLoS ONE 15(1):e0227537</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Neutral is where the facets are centred and the faces of the centra are parallel besides; where a centrum is wedged the two pull against each other.
Mallison 2010, Swiss J. Geosci. 103:211; Vidal et al. 2020, PLoS ONE 15(1):e0227537</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A range from bare bone may be off by 5° a joint; flesh may lessen it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ranges that bones alone give were off by up to 5° a joint against the living animal, and soft tissue lessens them in some (ostrich necks) and not in others.
Kuznetsov &amp; Tereschenko 2010; Cobley, Rayfield &amp; Barrett 2013, PLoS ONE 8(8):e72187; Hutson &amp; Hutson 2012</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>About Zygapose</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Zygapose %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Poses a sauropod skeleton and says, joint by joint, whether its bones support the pose.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bare bones give a range; cartilage, muscle and skin made it narrower or wider, and nobody has measured them. A supported pose is possible, not proven; the sample animals are invented.

For mounts and models that carry weight or stand over people this is not an engineering document; local codes and licensed practice decide.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lateral flexion</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>of length</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>of area</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Overlap by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The published rule counts the facet's length (Cobley, Rayfield &amp; Barrett 2013); area is the stricter reading at the same share</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Overlap by length or area</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Facets must overlap</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At least</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Share of the facet that must stay covered</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Least overlap</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Least overlap %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cartilage</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Neck</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cartilage of the neck</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Trunk</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cartilage of the trunk</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tail</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cartilage of the tail</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Thickness between the centra</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Neck as in…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Thickness found or argued for in other animals, each with its source</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2 %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>None of them is the right value for another animal</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tolerated</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pressing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Share of the facet's length by which facets may enter each other. Author's choice</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tolerated facet pressure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Gaping</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Share of the facet's length by which facets may stand apart. Author's choice</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tolerated facet gap</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Touching</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Depth by which bones may enter each other away from their joint. Author's choice</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tolerated contact</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Near edge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How close to a limit counts as near, as a share of the range. Author's choice</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Near margin</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Neutral articulation</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Definition of neutral</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What stays when neutral moves</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>When an assumption moves the neutral articulation, either the deflections stay and the bones turn, or the bones stay in space and the deflections are recomputed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>when it moves, deflections stay</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>when it moves, bones stay in space</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From now on the bones stay in space when neutral moves; their deflections are recomputed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From now on the deflections stay when neutral moves; the bones turn</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2 · %3 · Esc puts it back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Unsaved work cannot be kept in %1. Save often.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Unsaved work could not be kept for recovery: %1. Save often.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Draw on the ground</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The centre of mass, its plumb line, and the polygon of what touches the ground</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mass and balance, an estimate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not an engineering document: a mount needs an engineer's own reckoning.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hulls around the bones × 1.21 × density; %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From humerus and femur, %1; mean error 25.63 %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>By volume</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>By circumference</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Centre of mass</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On the fore feet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open an animal to weigh it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 m over the ground</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 % of the weight</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not told by mechanics alone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Evidence</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Source</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>source</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How this bone is known</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where that is written, or whose choice it is</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Evidence of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Source of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of %2 found</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Find a bone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bones by region</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measures of the chosen bone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose a bone to see its measures</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> (%1)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, grown into %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: unit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Percent of the centrum's functional length, or millimetres</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Contact between bones cannot be judged: %1. Facets are judged without it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Densities</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Usual values</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>800 kg/m³ for the trunk (used with hulls by Sellers et al. 2012), less for the neck's air spaces, 1000 for limbs: author's choice</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Usual densities</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>kg/m³</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Density of the %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, bones kept in space</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, deflections kept</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One mesh per bone, named by bone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All bones joined into one mesh</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Export meshes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>metres</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>centimetres</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>millimetres</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Z up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Y up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Format</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bones</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Unit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Upward axis</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose a file…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The skeleton is written as it is posed now, in full detail.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>glTF is always in metres with Y up; its nodes follow the joints.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The file itself does not say its unit: choose what the other program expects.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Facets of the joint, to scale</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not known</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>right</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cranial ↑</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New from a measurement table</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measurement tables (*.csv)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All files (*)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Zygapose projects and tables (*.zyga *.csv)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 was opened; remarks on the table: %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save as</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Zygapose project (*.zyga)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save as…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Unsaved work</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“%1” has changes that no file holds.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save them first, or give them up.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Give them up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Go back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is open in another window too. Of two savings the later one stays; save this one under another name to keep both.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 was moved or deleted. What is open here is still whole: save it to write the file anew.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 was changed by another program or window. This window still shows what it had read.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Read it anew</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Changed elsewhere</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“%1” was changed by another program or window since it was opened here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Saving here replaces what was written there. Another name keeps both.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Replace it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All joints</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The bones support every joint as it is posed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Also list the joints that are supported or not judged</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Findings, worst first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>under %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drag a bone of the neck: the neck bends from its root, and the bones' ranges hold it. Ctrl+Z takes it back.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The strip below shows the whole column. Its band is what the bones support, its dot is where the joint is now; drag the dot.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The verdict is at the lower right. Findings on the right side say which joint is beyond its range, and why.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The right mouse button turns the view, the wheel magnifies. F1 lists all keys and gestures.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>First steps</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Send the first steps away; the settings bring them back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Done</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How joints are judged</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Search</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Search the help</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pages of the help</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Help page</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Joint view</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose a joint on the animal or on the strip</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put this joint back to neutral</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>± 5° a joint</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Neutral: %1 (%2 off)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Turn %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 to neutral</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bend the neck, the tail or a limb</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>drag a bone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bend to the side</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shift while dragging a bone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Twist</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl or Alt while dragging a bone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move a foot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>drag it; with Shift straight up and down</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lift or plant a foot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>right click on it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move the trunk over planted feet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>drag the pelvis; with Shift it tilts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Raise or lower the chest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>drag a rib</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose a bone and its joint</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>click</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bend only from this joint on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>double-click</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Turn the view</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>drag with the right button, or beside the animal</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move the view</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>drag with the middle button, or Shift and the right button</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Magnify</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>wheel, + and −</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Turn the chosen joint</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>arrow keys, with Ctrl to twist; with Shift in larger steps</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take a drag back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Esc while dragging</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bend one joint</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>drag its mark up or down</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose a span of joints</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>drag sideways</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bend the whole span</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>drag any mark in it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Go along the column, turn the joint</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>arrow keys</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Turn the chosen joint on its map</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>drag the mark, or arrow keys; with Shift in larger steps</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Try an assumption</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>drag its slider; letting go keeps it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keys and gestures</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On the animal</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On the range strip</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In the panels</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keys</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lengths along the column, from snout to tail tip; the head's height is that of the snout over the ground</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>neck %1 · trunk %2 · tail %3 · total %4 · head at %5 m</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, slider</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ground</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Poses</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Joint</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Assumptions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Findings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Range strip</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The graphics driver was reset. The picture was started anew; your work was not touched.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open a project or a measurement table, or drop one here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Work from %1 on “%2” was not saved.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Recover</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Discard</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Zygapose</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1[*] — Zygapose</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;File</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;New from a table…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Open…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open &amp;recent</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open a sa&amp;mple</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Save</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save &amp;as…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Export meshes…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save &amp;picture…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Quit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Edit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Undo:</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Redo:</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Find a bone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Settings…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Pose</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Mirror left and right</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mirror left and right</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Keep this pose under a name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;View</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From the &amp;left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From the &amp;right</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Dorsal</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Cranial</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ca&amp;udal</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Three-quarter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Perspective</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Frame &amp;all</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Frame the c&amp;hosen bone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dar&amp;k</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pa&amp;nels</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Go to the next panel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Help</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;How joints are judged</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Keys and gestures</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;About Zygapose</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tools</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reach</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Reach</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bend from the &amp;base</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Past the ranges</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep the &amp;gaze</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Lock or unlock the chosen joint</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stand</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>measured</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>inferred: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Value</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Origin</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Facet gap, mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Gap between centra, mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>least %1 of area</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>least %1 of length</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Length shared</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Area shared</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Close this message</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show and bend this motion of every joint (%1)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Motion shown by the range strip</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The bones are still being sculpted. Try again when they are on screen.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save picture</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Exporting %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tracing %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is written.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show folder</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 was not written: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fold</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Close %1; the View menu brings it back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How this is judged (Shift+F1)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Unfold</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Transparent ground, shadow kept</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Metre grid on the ground</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>As on screen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From the left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From the right</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dorsal</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cranial</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Caudal</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Three-quarter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> px</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>View</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Width</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Traced with soft light, beside the window; you can go on posing meanwhile.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Neck to neutral</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Neck to neutral</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Tail to neutral</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tail to neutral</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;All joints to neutral</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All joints to neutral</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Neck to its &amp;limit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tail to its l&amp;imit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep all limits as named &amp;poses</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Neck &amp;dorsal</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tail &amp;dorsal</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Neck &amp;ventral</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tail &amp;ventral</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Neck &amp;left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tail &amp;left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Neck &amp;right</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tail &amp;right</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2. Under %3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Under %1. They are among the named poses now.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shown as a ghost</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The present pose</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Double-click to take this pose</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Named poses</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep the present pose under a name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take this pose</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put the present pose in its place</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rename</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Delete</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show as a ghost beside the present pose</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New pose</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take pose “%1”</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Settings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>That of the desktop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Light</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;High contrast</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show the first &amp;steps</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Language</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Size of the &amp;text</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Theme</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The window is built anew with another language or size of text; your work stays open.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Apply</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tells neither left nor right, so it can't be laid on the ground</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“%1” is no distance in cm; leave the cell blank when it is not known.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of a footprint</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add a footprint</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove a footprint</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The joints of the column appear here, from snout to tail tip</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bend %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 bent together, each by its range; here %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: drag up or down inside it to bend it, Escape lets it go</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Click to show the whole column</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Click to show the %1 alone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>  ·  drag up or down to bend</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>  ·  drag sideways to choose a span</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bend evenly</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Each joint gives the same share of its own range</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bend from the base</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The base and the head's joints bend most and the neck between keeps its shape, as in living tetrapods (Taylor, Wedel &amp; Naish 2009; Vidal, Graf &amp; Berthoz 1986)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Past the ranges</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A drag goes on where the bones would stop it; the joints that break are marked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep the gaze</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A dragged head goes on looking in the same direction as far as its joints allow</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Unlock all</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The bend begins at %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The bend begins at the base of neck or tail</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Begin at the base again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Begin at %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Begin at the chosen joint</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No joint is locked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Locked: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Unlock %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lock %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lock the chosen joint</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from the base</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>past the ranges</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>gaze kept</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 locked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Forget these</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The bones could not be sculpted: %1. Posing and judging go on without them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Stand on the ground</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stand on the ground</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>S&amp;tances</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Feet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>T&amp;runk</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lift or plant the %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Plant all feet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Raise over planted feet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Lower over planted feet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tilt &amp;up about the hips</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tilt &amp;down about the hips</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Lift the %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Plant the %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Plant &amp;all feet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: snout at %2 m, under %3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Beyond range: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Raise the trunk</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lower the trunk</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tilt the trunk</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Feet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shoulder blades</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Slope of the line through the dorsal centra to the horizontal, positive when it rises forwards; and the turn about its length, positive with the left side raised</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hip height</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mean height of the two hip sockets over the ground</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shoulder height</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mean height of the two shoulder sockets over the ground</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hip to shoulder</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Glenoacetabular distance: straight from socket to socket, mean of both sides</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Base of the neck</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Slope of the hindmost cervical's neural canal, positive when it rises forwards</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Base of the tail</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Slope of the line through the first five caudals, positive when it rises backwards</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Right</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Slope</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Along the ribs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Slope of the %1 shoulder blade to the horizontal</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How far the %1 shoulder blade is slid up along the ribs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Both together</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, roll %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>trunk %1, hip %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>on the ground</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 %2 ground</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>over</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>under</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tilted %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lift</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Plant</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Published: at least 55° to the horizontal, 55° to 65° in three genera (Schwarz, Frey &amp; Meyer 2007).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Flatter than what is published. </source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Unlock all joints</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Key to the marks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Supported dorsiflexion and lateral flexion</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What the bones support when this joint is raised or lowered (up, down) and bent to a side (left, right), its torsion as it is. Drag the mark to turn the joint; arrow keys do the same.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>dorsiflexion %1, lateral flexion %2, %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>left %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>right %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 was opened with remarks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 has one fault</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 has %2 faults</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kind</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Column</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is wrong</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What to do</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fault</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>remark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measurement table</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing was opened, and what was open is as it was. Mend the table and open it again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The table is in use. These cells deserve a second look.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Copy all</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Footprints, distances in cm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Trackway</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drop a table of footprints here (foot, pace_cm, next_pace_cm, stride_cm, length_cm), or type them one by one.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open table…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Read footprints from a CSV table</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add print</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A further footprint, with the last one's distances</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove the chosen footprint</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Clear</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove all footprints</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Clear the trackway</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hip height from the length of the hind print</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 × print</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hip is</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pace angulation</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Relative stride</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Speed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The feet on it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bring under the feet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move the trackway to where it lies best under the feet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Step onto it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put every foot onto its nearest print; the trunk comes down as far as the legs need</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Draw the prints</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open a table of footprints</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tables (*.csv)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Trackway from %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing was taken from the table:</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hip height from prints</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bring the trackway under the feet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Step onto the trackway</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The trunk came down by %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not every foot reaches its print; the worst is %1 away.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Under %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Viewport</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The skeleton in its present pose. Arrow keys bend the chosen joint.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This display offers no OpenGL 3.3. A newer graphics driver, or Mesa's software one, is needed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The graphics driver refused a shader: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nudge %1, %2</source>
        <translation type="unfinished"></translation>
    </message>
</context>
</TS>
