#include "core/anatomy/plan/plan_table.h"

namespace zyga::anatomy {

// A sauropod of moderate size after the habit of titanosaurs: feet set wide apart, hands without finger bones, a short
// tail of procoelous vertebrae, low spines, a long low skull. Invented; that titanosaurs have these characters: Wilson
// 2002, Zool. J. Linn. Soc. 136:217 (from memory); wide gauge: Wilson & Carrano 1999, Paleobiology 25:252 (from
// memory).
const PlanTable& wideGaugePlan() {
  static const PlanTable plan = [] {
    PlanTable p = highBrowserPlan();
    p.counts = {13, 10, 6, 40};

    p.neck.length = {45, 130, 190, 240, 285, 325, 355, 375, 385, 385, 370, 345, 315};
    p.neck.height = {55, 66, 74, 84, 94, 104, 115, 128, 143, 159, 175, 190, 202};
    p.neck.spine = {58, 100, 108, 120, 134, 150, 168, 188, 210, 234, 258, 278, 292};
    p.neck.reach = {55, 90, 120, 150, 180, 212, 246, 284, 326, 370, 412, 446, 468};
    p.neck.turn = {0, 0, -2, -1.5, -1, -0.5, 0, 0.5, 1.5, 2, 2.5, 3, 3};
    p.neck.width = {1.05, 1.25};
    p.neckFacets.heightOfLength = 0.36;

    p.trunk.length = {280, 250, 232, 224, 220, 218, 216, 215, 215, 216};
    p.trunk.height = {206, 208, 210, 212, 215, 218, 221, 224, 227, 230};
    p.trunk.spine = {330, 350, 368, 384, 396, 404, 410, 414, 416, 416};
    p.trunk.reach = {480, 500, 512, 518, 520, 518, 512, 504, 496, 488};
    // Balls all the way, as in titanosaurs (Wilson 2002, from memory).
    p.trunk.condyle = {0.40, 0.38, 0.36, 0.34, 0.32, 0.31, 0.30, 0.29, 0.28, 0.28};
    p.trunk.turn = {3, 2.5, 2, 1, 0.5, 0, 0, 0, 0.5, 0.5};
    p.trunk.width = {1.15, 1.15};

    p.sacrum.length = {196, 200, 204, 204, 200, 194};
    p.sacrum.height = {232, 232, 230, 228, 226, 224};
    p.sacrum.spine = {415, 412, 406, 398, 388, 376};
    p.sacrum.reach = {560, 590, 610, 615, 605, 585};
    p.sacrum.wedge = 2;

    p.tail.length = rowThrough(40, {{1, 165}, {8, 160}, {16, 168}, {24, 150}, {32, 105}, {40, 45}});
    p.tail.height = rowThrough(40, {{1, 232}, {5, 204}, {10, 168}, {16, 128}, {24, 84}, {32, 48}, {40, 18}});
    p.tail.spine = rowThrough(40, {{1, 370}, {5, 310}, {10, 230}, {16, 158}, {24, 92}, {32, 50}, {40, 13}});
    p.tail.reach = rowThrough(40, {{1, 520}, {4, 440}, {7, 330}, {10, 240}, {14, 160}, {16, 0}});
    p.tail.turn = rowThrough(40, {{1, -0.8}, {10, -0.8}, {18, 0.2}, {26, 0.5}, {40, 0.3}});
    p.tail.width = {1.06, 1.06};
    // Balls behind, deep ones in the first half, fading towards the end.
    p.tail.condyle = rowThrough(40, {{1, 0.30}, {4, 0.34}, {18, 0.28}, {26, 0.16}, {31, 0}, {40, 0}});
    p.characters.column.procoelousTail = 1;

    p.ribs = RibPlan{{640, 1180, 1380, 1500, 1530, 1510, 1430, 1300, 1140, 920},
                     {310, 410, 490, 535, 550, 552, 545, 525, 495, 450},
                     1.3,
                     0.66,
                     {72, 104, 116, 108, 90, 78, 70, 64, 58, 46}};
    p.limbs =
        LimbPlan{0.460, 0.210, 0.185, 0.16, 1.060, 0.920, 0.560, 0.620, 0.300, 1.180, 0.720, 0.750, 0.165, 0.36, 1.10};
    p.skull = {34, {0.965, 0, -0.34}, {0.250, 0, -0.48}, {0.260, 0.80, 0.08}, {0.430, 0.20, 0.36}};
    p.characters.column.hyposphenes = 0;
    p.characters.column.dorsalHollow = 0.45;
    p.characters.column.caudalTops = 0.10;
    p.characters.limbs.fingerBones = 0;
    p.characters.limbs.iliacFlare = 50;
    p.characters.limbs.thighBend = 8;
    p.characters.limbs.kneeBevel = 7;
    return p;
  }();
  return plan;
}

}  // namespace zyga::anatomy
