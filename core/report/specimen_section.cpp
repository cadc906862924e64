#include <algorithm>
#include <map>

#include "core/anatomy/completeness.h"
#include "core/anatomy/summary.h"
#include "core/report/sections.h"
#include "core/report/words.h"

namespace zyga::report {
namespace {

using anatomy::Evidence;

Table lengthsTable(const anatomy::Summary& s, Numbers& numbers) {
  const std::vector<std::tuple<const char*, const char*, double>> lengths{
      {"snout to tail tip along the column", "length.total", s.total},
      {"skull", "length.skull", s.skull},
      {"neck", "length.neck", s.neck},
      {"trunk", "length.trunk", s.trunk},
      {"sacrum", "length.sacrum", s.sacrum},
      {"tail", "length.tail", s.tail},
      {"humerus", "length.humerus", s.humerus},
      {"femur", "length.femur", s.femur}};
  Table table{
      "Lengths of the column are sums of functional lengths, without condyles.", {"length", "m"}, {true, false}, {}};
  for (const auto& [words, key, value] : lengths) {
    table.rows.push_back({words, fixed(value, 3)});
    numbers.push_back({key, value, "m"});
  }
  return table;
}

std::size_t evidenceColumn(Evidence evidence) {
  switch (evidence) {
    case Evidence::Found:
    case Evidence::FoundDeformed:
      return 0;
    case Evidence::Mirrored:
      return 1;
    case Evidence::Scaled:
      return 2;
    case Evidence::Inferred:
      break;
  }
  return 3;
}

Table regionsTable(const anatomy::Specimen& specimen) {
  std::map<anatomy::Region, std::array<std::size_t, 4>> regions;
  for (const anatomy::Bone& bone : specimen.bones) ++regions[regionOf(bone.name)][evidenceColumn(bone.evidence)];
  Table table{"", {"region", "found", "mirrored", "scaled", "inferred"}, {true, false, false, false, false}, {}};
  for (const auto& [region, counts] : regions) {
    table.rows.push_back({std::string(title(region))});
    for (const std::size_t count : counts) table.rows.back().push_back(count > 0 ? std::to_string(count) : "");
  }
  return table;
}

/// Sources of bones that are not inferred, as they are written, with how many bones each gives.
Table sourcesTable(const anatomy::Specimen& specimen) {
  std::map<std::string, std::size_t> sources;
  for (const anatomy::Bone& bone : specimen.bones)
    if (bone.evidence != Evidence::Inferred) ++sources[bone.source.empty() ? "no source given" : bone.source];
  Table table{"", {"source", "bones"}, {true, false}, {}};
  for (const auto& [source, count] : sources) table.rows.push_back({source, std::to_string(count)});
  return table;
}

}  // namespace

Section specimenSection(const Matter& matter, Numbers& numbers) {
  const anatomy::RegionCounts& counts = matter.project.specimen.counts;
  Section section;
  section.heading = "Specimen";
  section.sentences = {matter.project.table.name + ": " + std::to_string(counts.cervical) + " cervicals, " +
                       std::to_string(counts.dorsal) + " dorsals, " + std::to_string(counts.sacral) + " sacrals, " +
                       std::to_string(counts.caudal) + " caudals; limbs and skull on the plan of a " +
                       std::string(toText(matter.project.table.plan)) + "."};
  section.tables = {lengthsTable(summarise(matter.project.specimen), numbers)};
  return section;
}

Section evidenceSection(const Matter& matter, Numbers& numbers) {
  const anatomy::Completeness known = completeness(matter.project.specimen);
  numbers.push_back({"completeness.bones", static_cast<double>(known.bones), ""});
  numbers.push_back({"completeness.found", static_cast<double>(known.found), ""});
  numbers.push_back({"completeness.found_or_mirrored", static_cast<double>(known.withMirrored), ""});
  Section section;
  section.heading = "Evidence";
  section.sentences = {std::to_string(known.found) + " of " + counted(known.bones, "bone", "bones") +
                           " found: " + percent(known.share(), 1) + ".",
                       "Where a left bone counts for its right and the other way round: " +
                           std::to_string(known.withMirrored) + ", " + percent(known.shareWithMirrored(), 1) + "."};
  section.tables = {regionsTable(matter.project.specimen)};
  if (Table sources = sourcesTable(matter.project.specimen); !sources.rows.empty())
    section.tables.push_back(std::move(sources));
  section.cautions = {"Counted as in Lacovara et al. 2014, Sci. Rep. 4:6196."};
  return section;
}

}  // namespace zyga::report
