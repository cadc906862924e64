<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="en" sourcelanguage="en">
<context>
    <name>words</name>
    <message numerus="yes">
        <source> and %n more</source>
        <translation>
            <numerusform> and %n more</numerusform>
            <numerusform> and %n more</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>curve: %n samples; bar: 5 to 95 %; line: half of them; diamond: the table as it is</source>
        <translation>
            <numerusform>curve: %n sample; bar: 5 to 95 %; line: half of them; diamond: the table as it is</numerusform>
            <numerusform>curve: %n samples; bar: 5 to 95 %; line: half of them; diamond: the table as it is</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>and %n more</source>
        <translation>
            <numerusform>and %n more</numerusform>
            <numerusform>and %n more</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>by proportion to the measured bones (median of %n)</source>
        <translation>
            <numerusform>by proportion to the measured bones (median of %n)</numerusform>
            <numerusform>by proportion to the measured bones (median of %n)</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n joints more are out of range</source>
        <translation>
            <numerusform>%n joint more is out of range</numerusform>
            <numerusform>%n joints more are out of range</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n pairs of bones collide apart from any one joint</source>
        <translation>
            <numerusform>%n pair of bones collides apart from any one joint</numerusform>
            <numerusform>%n pairs of bones collide apart from any one joint</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n joints</source>
        <translation>
            <numerusform>%n joint</numerusform>
            <numerusform>%n joints</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n contacts</source>
        <translation>
            <numerusform>%n contact</numerusform>
            <numerusform>%n contacts</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n samples gave no animal that could be built and were left out.</source>
        <translation>
            <numerusform>%n sample gave no animal that could be built and was left out.</numerusform>
            <numerusform>%n samples gave no animal that could be built and were left out.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n bytes</source>
        <translation>
            <numerusform>%n byte</numerusform>
            <numerusform>%n bytes</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>left out %n of %1 declared faces, which could not be used</source>
        <translation>
            <numerusform>left out %n of %1 declared faces, which could not be used</numerusform>
            <numerusform>left out %n of %1 declared faces, which could not be used</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>dropped %n faces naming vertices that are not there</source>
        <translation>
            <numerusform>dropped %n face naming vertices that are not there</numerusform>
            <numerusform>dropped %n faces naming vertices that are not there</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>left out %n points and lines</source>
        <translation>
            <numerusform>left out %n point or line</numerusform>
            <numerusform>left out %n points and lines</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>dropped %n triangles naming vertices that are not there</source>
        <translation>
            <numerusform>dropped %n triangle naming vertices that are not there</numerusform>
            <numerusform>dropped %n triangles naming vertices that are not there</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>dropped %n triangles with a corner that is no number</source>
        <translation>
            <numerusform>dropped %n triangle with a corner that is no number</numerusform>
            <numerusform>dropped %n triangles with a corner that is no number</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>welded %n vertices standing at the same place as another</source>
        <translation>
            <numerusform>welded %n vertex standing at the same place as another</numerusform>
            <numerusform>welded %n vertices standing at the same place as another</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>closed seams at %n vertices</source>
        <translation>
            <numerusform>closed seams at %n vertex</numerusform>
            <numerusform>closed seams at %n vertices</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>dropped %n triangles without area</source>
        <translation>
            <numerusform>dropped %n triangle without area</numerusform>
            <numerusform>dropped %n triangles without area</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>dropped %n triangles given twice</source>
        <translation>
            <numerusform>dropped %n triangle given twice</numerusform>
            <numerusform>dropped %n triangles given twice</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>turned %n triangles over to face as the rest</source>
        <translation>
            <numerusform>turned %n triangle over to face as the rest</numerusform>
            <numerusform>turned %n triangles over to face as the rest</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>turned %n surfaces over, inside out before</source>
        <translation>
            <numerusform>turned %n surface over, inside out before</numerusform>
            <numerusform>turned %n surfaces over, inside out before</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>dropped %n vertices without triangles</source>
        <translation>
            <numerusform>dropped %n vertex without triangles</numerusform>
            <numerusform>dropped %n vertices without triangles</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n holes left open, the longest border %1</source>
        <translation>
            <numerusform>%n hole left open, the longest border %1</numerusform>
            <numerusform>%n holes left open, the longest border %1</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n edges with more than two triangles</source>
        <translation>
            <numerusform>%n edge with more than two triangles</numerusform>
            <numerusform>%n edges with more than two triangles</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n edges where the surface is one-sided</source>
        <translation>
            <numerusform>%n edge where the surface is one-sided</numerusform>
            <numerusform>%n edges where the surface is one-sided</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n surfaces that are not connected</source>
        <translation>
            <numerusform>%n surface that is not connected</numerusform>
            <numerusform>%n surfaces that are not connected</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n hollows inside, counted off the volume</source>
        <translation>
            <numerusform>%n hollow inside, counted off the volume</numerusform>
            <numerusform>%n hollows inside, counted off the volume</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n triangles</source>
        <translation>
            <numerusform>%n triangle</numerusform>
            <numerusform>%n triangles</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n separate pieces</source>
        <translation>
            <numerusform>%n separate piece</numerusform>
            <numerusform>%n separate pieces</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n closed hollows were filled.</source>
        <translation>
            <numerusform>%n closed hollow was filled.</numerusform>
            <numerusform>%n closed hollows were filled.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n specks smaller than eight voxels left out.</source>
        <translation>
            <numerusform>%n speck smaller than eight voxels left out.</numerusform>
            <numerusform>%n specks smaller than eight voxels left out.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Holes in %n bones were closed over.</source>
        <translation>
            <numerusform>Holes in %n bone were closed over.</numerusform>
            <numerusform>Holes in %n bones were closed over.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n joints are not assessed and were held in neutral.</source>
        <translation>
            <numerusform>%n joint is not assessed and was held in neutral.</numerusform>
            <numerusform>%n joints are not assessed and were held in neutral.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n joints bent, %1 within range</source>
        <translation>
            <numerusform>%n joint bent, %1 within range</numerusform>
            <numerusform>%n joints bent, %1 within range</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n joints not assessed</source>
        <translation>
            <numerusform>%n joint not assessed</numerusform>
            <numerusform>%n joints not assessed</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>the table has %n faults; nothing was written</source>
        <translation>
            <numerusform>the table has %n fault; nothing was written</numerusform>
            <numerusform>the table has %n faults; nothing was written</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n joints with facets</source>
        <translation>
            <numerusform>%n joint with facets</numerusform>
            <numerusform>%n joints with facets</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n measured cells are hard to believe</source>
        <translation>
            <numerusform>%n measured cell is hard to believe</numerusform>
            <numerusform>%n measured cells are hard to believe</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n cells blank</source>
        <translation>
            <numerusform>%n cell blank</numerusform>
            <numerusform>%n cells blank</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n pinned</source>
        <translation>
            <numerusform>%n pinned</numerusform>
            <numerusform>%n pinned</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 has %n faults</source>
        <translation>
            <numerusform>%1 has %n fault</numerusform>
            <numerusform>%1 has %n faults</numerusform>
        </translation>
    </message>
</context>
</TS>
