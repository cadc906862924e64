#include "core/anatomy/plan/plan_table.h"

namespace zyga::anatomy {

// The column of a large running bird, for animals to compare with. Height and spread of the neck's facets over its
// lengths are near those of the ostrich of an open landmark set (LucyEmmaRoberts/VertebralEvolution: 0.19 and 0.22 in
// front, 0.30 and 0.29 at the neck's root); the rest is common practice, no source. Saddle-shaped faces stand as flat
// ones; the vertebrae that have grown into the pelvis are sacrals.
const PlanTable& birdPlan() {
  static const PlanTable plan = [] {
    PlanTable p;
    p.counts = {15, 6, 10, 6};
    p.cervicals = {9, 25};
    p.dorsals = {3, 10};
    p.sacrals = {5, 23};
    p.caudals = {3, 12};

    p.neck.length = {12, 34, 40, 44, 48, 52, 56, 59, 62, 64, 66, 66, 64, 60, 54};
    p.neck.height = {9, 10, 11, 12, 13, 13.5, 14, 14.5, 15, 16, 17, 18.5, 20, 22, 24};
    p.neck.spine = {10, 17, 18, 19, 20, 20, 20, 20, 21, 22, 24, 28, 34, 42, 52};
    p.neck.reach = {16, 24, 28, 31, 34, 36, 38, 40, 42, 45, 49, 54, 60, 66, 72};
    p.neck.turn = {0, 0, -5, -4, -3, -2, -1, 0, 2, 4, 5, 5, 4, 3, 2};
    p.neck.width = {1.4, 1.6};
    p.neckFacets = {0.20, 0.65, 0.20, 0.40, 0.05, {30, 30}};

    p.trunk.length = {48, 45, 43, 42, 42, 42};
    p.trunk.height = {25, 26, 27, 28, 28, 28};
    p.trunk.spine = {64, 72, 76, 78, 78, 78};
    p.trunk.reach = {84, 92, 96, 96, 94, 92};
    p.trunk.width = {1.2, 1.1};
    p.trunkFacets = {{1.00, 1.05}, {0.40, 0.36}, {0.50, 0.34}, {25, 15}, 2};

    p.sacrum.length = {36, 34, 32, 30, 28, 27, 26, 25, 24, 23};
    p.sacrum.height = {28, 28, 27, 26, 24, 22, 20, 18, 16, 15};
    p.sacrum.spine = {76, 76, 74, 72, 68, 64, 58, 52, 46, 40};
    p.sacrum.reach = {90, 88, 86, 84, 82, 80, 76, 70, 64, 58};
    p.sacrum.width = {1.1, 1.1};
    p.sacrumFacets = {{1.05, 1.05}, {0.36, 0.36}, {0.34, 0.34}, {15, 15}};

    p.tail.length = {22, 21, 20, 19, 18, 26};
    p.tail.height = {14, 13, 12, 11, 10, 9};
    p.tail.spine = {30, 26, 22, 18, 15, 14};
    p.tail.reach = {56, 50, 44, 36, 26, 12};
    p.tail.turn = {4, 4, 4, 4, 4, 4};
    p.tail.width = {1.1, 1.1};
    p.tailFacets = {{0.9, 0.9}, {0.3, 0.3}, 3, 2.2, 0.3, 40, 0.84};
    return p;
  }();
  return plan;
}

}  // namespace zyga::anatomy
