#include "core/anatomy/plan/plan_table.h"

namespace zyga::anatomy {

// The column of a mammal of a dog's size, for animals to compare with. Lengths, spines and facets of C3 to C7 and of
// the loins are rounded from an open model of a dog's bones (shared/data, modelled after anatomy, not scanned); the
// rest is common practice, no source.
const PlanTable& mammalPlan() {
  static const PlanTable plan = [] {
    PlanTable p;
    p.counts = {7, 13, 3, 20, 7};
    p.cervicals = {5, 9};
    p.dorsals = {8, 25};
    p.lumbars = {2, 10};
    p.sacrals = {1, 8};
    p.caudals = {1, 50};

    p.neck.length = {14, 40, 30, 37, 31, 25, 17};
    p.neck.height = {10, 11, 12, 12, 12, 12, 12};
    p.neck.spine = {12, 30, 29, 34, 34, 36, 44};
    p.neck.reach = {60, 30, 46, 50, 50, 50, 46};
    p.neck.turn = {0, 0, 0, 0, 1, 3, 6};
    p.neck.width = {1.1, 1.3};
    p.neckFacets = {0.45, 1.35, 0.36, 0.60, 0.08, {45, 35}};

    p.trunk.length = {14.5, 14, 14, 14, 14.5, 15, 15.5, 16, 17, 18, 19, 20, 21};
    p.trunk.height = {12, 12, 12, 12, 12, 12, 12, 12, 12, 12.5, 13, 13, 13};
    p.trunk.spine = {52, 54, 54, 53, 51, 48, 45, 41, 36, 31, 28, 28, 29};
    p.trunk.reach = {42, 40, 38, 37, 36, 36, 36, 36, 36, 36, 36, 38, 42};
    p.trunk.turn = {5, 1, -1, -2, -2, -2, -2, -2, -2, -2, -2, -2, -2};
    p.trunk.width = {1.2, 1.2};
    // Facets that face up in front, and inward from the spine that stands upright on.
    p.trunkFacets = {{1.05, 0.80}, {0.50, 0.50}, {0.40, 0.45}, {18, 66}, 1};

    p.loins.length = {22, 22.5, 22.5, 24, 23, 23, 26};
    p.loins.height = {13, 13.5, 14, 14, 14, 14, 14};
    p.loins.spine = {30, 30, 32, 33, 33, 32, 29};
    p.loins.reach = {48, 56, 62, 68, 72, 74, 70};
    p.loins.turn = {-1, -1, -0.5, 0, 1, 2, 3};
    p.loins.width = {1.3, 1.4};
    p.loinFacets = {{0.76, 0.56}, {0.56, 0.45}, {0.50, 0.44}, {70, 78}, 1};

    p.sacrum.length = {16, 14, 12};
    p.sacrum.height = {12, 9, 7};
    p.sacrum.spine = {24, 20, 16};
    p.sacrum.reach = {46, 40, 34};
    p.sacrum.width = {1.4, 1.4};
    p.sacrum.wedge = 4;
    p.sacrumFacets = {{0.62, 0.62}, {0.50, 0.50}, {0.50, 0.50}, {76, 76}};

    p.tail.length = rowThrough(20, {{1, 13}, {6, 17}, {12, 18}, {20, 6}});
    p.tail.height = rowThrough(20, {{1, 8}, {6, 6}, {12, 5}, {20, 3}});
    p.tail.spine = rowThrough(20, {{1, 13}, {5, 8}, {8, 5}, {20, 3}});
    p.tail.reach = rowThrough(20, {{1, 34}, {4, 22}, {7, 9}, {20, 3}});
    p.tail.turn = rowThrough(20, {{1, -2}, {20, -1}});
    p.tail.width = {1.2, 1.0};
    p.tailFacets.share = 0.35;
    return p;
  }();
  return plan;
}

}  // namespace zyga::anatomy
