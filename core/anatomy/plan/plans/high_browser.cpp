#include "core/anatomy/plan/plan_table.h"

namespace zyga::anatomy {

// A sauropod that feeds high: long fore limbs, a tall skull, a tail of moderate length. Invented.
const PlanTable& highBrowserPlan() {
  static const PlanTable plan = [] {
    PlanTable p;
    p.counts = {13, 11, 5, 52};
    p.cervicals = {2, 19};
    p.dorsals = {9, 14};
    p.sacrals = {4, 6};
    p.caudals = {10, 90};

    p.neck.length = {60, 170, 240, 300, 360, 420, 460, 500, 520, 530, 520, 480, 430};
    p.neck.height = {72, 86, 95, 107, 119, 131, 144, 159, 177, 197, 218, 238, 255};
    p.neck.spine = {75, 135, 145, 163, 182, 204, 228, 258, 296, 340, 392, 440, 480};
    p.neck.reach = {70, 115, 150, 180, 210, 240, 275, 315, 360, 410, 450, 485, 505};
    p.neck.turn = {0, 0, -2, -1.5, -1, 0, 0.5, 1.5, 2.5, 3.5, 4.5, 5, 5};
    p.neck.width = {1.0, 1.18};
    p.neck.condyle = {0.40};
    p.neckFacets.heightOfLength = 0.40;

    p.trunk.length = {350, 300, 275, 265, 260, 258, 256, 255, 255, 258, 262};
    p.trunk.height = {264, 268, 271, 274, 276, 278, 281, 284, 287, 290, 294};
    p.trunk.spine = {525, 560, 595, 625, 648, 664, 674, 681, 686, 690, 694};
    p.trunk.reach = {525, 560, 580, 588, 592, 592, 588, 582, 576, 568, 560};
    p.trunk.turn = {4, 3, 2, 1, 0.5, 0, 0, 0, 0.5, 0.5, 0.5};
    p.trunk.width = {1.1, 1.1};
    p.trunk.condyle = {0.40, 0.36, 0.32, 0.28, 0.25, 0.22, 0.20, 0.19, 0.18, 0.17, 0.16};

    p.sacrum.length = {230, 235, 240, 235, 230};
    p.sacrum.height = {296, 296, 294, 294, 296};
    p.sacrum.spine = {695, 690, 682, 670, 655};
    p.sacrum.reach = {600, 620, 630, 630, 620};
    p.sacrum.width = {1.08, 1.08};
    p.sacrum.wedge = 3;
    p.sacrumFacets = {{1.10, 1.10}, {0.20, 0.20}, {0.22, 0.22}, {16, 16}};

    p.tail.length = rowThrough(52, {{1, 210}, {10, 201}, {20, 218}, {30, 180}, {40, 116}, {52, 40}});
    p.tail.height = rowThrough(52, {{1, 300}, {5, 268}, {10, 216}, {15, 177}, {20, 147}, {30, 94}, {40, 54}, {52, 17}});
    p.tail.spine = rowThrough(52, {{1, 625}, {5, 520}, {8, 420}, {12, 300}, {20, 180}, {30, 95}, {36, 52}, {52, 11}});
    p.tail.reach = rowThrough(52, {{1, 640}, {4, 540}, {7, 400}, {10, 285}, {14, 195}, {17, 0}});
    p.tail.turn = rowThrough(52, {{1, -0.8}, {12, -0.8}, {22, 0.2}, {30, 0.5}, {52, 0.3}});
    p.tail.width = {1.04, 1.04};

    p.ribs = RibPlan{{780, 1400, 1640, 1800, 1840, 1820, 1740, 1600, 1440, 1270, 1000},
                     {330, 450, 565, 610, 632, 638, 626, 600, 565, 520, 465},
                     1.9,
                     0.66,
                     {78, 112, 128, 124, 102, 88, 80, 74, 68, 60, 48}};
    p.limbs =
        LimbPlan{0.520, 0.322, 0.218, 0.20, 1.270, 1.180, 0.830, 0.865, 0.350, 1.500, 0.960, 0.990, 0.215, 0.34, 1.0};
    // Tall skulls have their nostrils in front of the eye.
    p.skull = {32, {0.965, 0, -0.22}, {0.150, 0, -0.43}, {0.330, 0.80, 0.17}, {0.625, 0.42, 0.30}};
    p.characters.column.hyposphenes = 1;
    p.characters.column.caudalTops = 0.17;
    return p;
  }();
  return plan;
}

}  // namespace zyga::anatomy
