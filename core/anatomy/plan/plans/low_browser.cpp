#include "core/anatomy/plan/plan_table.h"

namespace zyga::anatomy {

// A sauropod after the habit of those with whip tails: short fore limbs, a long low skull, forked spines. Invented.
const PlanTable& lowBrowserPlan() {
  static const PlanTable plan = [] {
    PlanTable p = highBrowserPlan();
    p.counts = {15, 10, 5, 80};

    p.neck.length = {55, 190, 260, 320, 380, 430, 480, 520, 550, 570, 580, 580, 560, 520, 470};
    p.neck.height = {66, 76, 84, 93, 102, 112, 123, 135, 149, 165, 184, 206, 228, 248, 262};
    p.neck.spine = {70, 118, 128, 142, 158, 176, 198, 224, 256, 294, 340, 392, 444, 492, 530};
    p.neck.reach = {64, 100, 130, 158, 186, 214, 244, 278, 316, 358, 402, 446, 484, 512, 530};
    p.neck.turn = {0, 0, -2, -1.5, -1, -0.5, 0, 0, 0.5, 0.5, 0.5, 1, 1, 1, 1};
    p.neck.fork = {0, 0, 0, 0, 0, 0, 0, 0, 20, 50, 85, 120, 150, 175, 190};
    p.neckFacets.heightOfLength = 0.32;

    p.trunk.length = {410, 370, 330, 300, 285, 275, 270, 265, 262, 260};
    p.trunk.height = {262, 264, 266, 268, 271, 274, 278, 282, 286, 290};
    p.trunk.spine = {570, 610, 650, 690, 722, 748, 768, 782, 792, 798};
    p.trunk.reach = {530, 545, 555, 560, 560, 556, 550, 542, 534, 526};
    p.trunk.turn = {1.5, 1.5, 1, 1, 1, 1, 0.5, 0.5, 0.5, 0.5};
    // Nearly flat in front from the fifth on: Hatcher 1901, Mem. Carnegie Mus. 1:1; Wilson & Sereno 1998, Soc. Vertebr.
    // Paleontol. Mem. 5 (both from memory).
    p.trunk.condyle = {0.38, 0.28, 0.19, 0.12, 0.08, 0.07, 0.06, 0.06, 0.05, 0.05};
    p.trunk.fork = {185, 160, 120, 80, 40, 15, 0, 0, 0, 0};

    p.sacrum.length = {220, 230, 235, 230, 225};
    p.sacrum.height = {292, 294, 296, 298, 300};
    p.sacrum.spine = {805, 808, 806, 798, 784};
    p.sacrum.reach = {560, 580, 590, 590, 580};
    p.sacrum.wedge = 2.6;

    p.tail.length =
        rowThrough(80, {{1, 165}, {8, 190}, {20, 275}, {30, 285}, {40, 240}, {50, 165}, {58, 115}, {80, 60}});
    p.tail.height =
        rowThrough(80, {{1, 304}, {5, 270}, {10, 226}, {20, 160}, {30, 110}, {40, 70}, {50, 38}, {60, 24}, {80, 9}});
    p.tail.spine = rowThrough(
        80, {{1, 745}, {5, 610}, {10, 440}, {15, 310}, {20, 220}, {30, 120}, {40, 66}, {50, 26}, {60, 14}, {80, 5}});
    p.tail.reach = rowThrough(80, {{1, 640}, {5, 520}, {9, 370}, {13, 250}, {17, 185}, {20, 0}});
    p.tail.turn = rowThrough(80, {{1, -1.7}, {10, -1.3}, {20, -0.3}, {30, 0.4}, {50, 0.3}, {80, 0.1}});

    p.ribs = RibPlan{{760, 1400, 1650, 1810, 1840, 1790, 1660, 1470, 1260, 1000},
                     {320, 415, 505, 535, 545, 542, 528, 502, 468, 425},
                     0.95,
                     0.66,
                     {76, 112, 126, 120, 98, 84, 76, 68, 60, 48}};
    p.limbs =
        LimbPlan{0.560, 0.230, 0.205, 0.15, 1.240, 1.015, 0.730, 0.775, 0.245, 1.540, 1.000, 1.030, 0.200, 0.27, 0.97};
    // Long skulls have their nostrils far back on top.
    p.skull = {35, {0.965, 0, -0.36}, {0.270, 0, -0.50}, {0.235, 0.80, 0.06}, {0.400, 0.20, 0.36}};
    p.characters.column.chevronsBridged = 0.25;
    p.characters.column.chevronSkids = {0.16, 0.36};
    p.characters.column.caudalLean = {17, 26};
    p.characters.column.caudalTops = 0.10;
    p.characters.column.caudalWings = 0.09;
    p.characters.column.caudalHollows = 0.19;
    return p;
  }();
  return plan;
}

}  // namespace zyga::anatomy
