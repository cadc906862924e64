#include "app/verbs/joint_names.h"

#include <QCoreApplication>
#include <QStringList>
#include <algorithm>
#include <cctype>
#include <numeric>
#include <vector>

#include "app/verbs/verb_words.h"
#include "ui/words/say.h"

namespace zyga::app {
namespace {

constexpr std::size_t kOffered = 4;

std::string lower(std::string text) {
  std::transform(text.begin(), text.end(), text.begin(),
                 [](unsigned char c) { return static_cast<char>(std::tolower(c)); });
  return text;
}

/// Letters to insert, drop or change to make b of a (Levenshtein).
std::size_t lettersApart(const std::string& a, const std::string& b) {
  std::vector<std::size_t> row(b.size() + 1);
  std::iota(row.begin(), row.end(), std::size_t{0});
  for (std::size_t i = 1; i <= a.size(); ++i) {
    std::size_t before = std::exchange(row[0], i);
    for (std::size_t j = 1; j <= b.size(); ++j) {
      const std::size_t change = before + (a[i - 1] == b[j - 1] ? 0 : 1);
      before = std::exchange(row[j], std::min({row[j] + 1, row[j - 1] + 1, change}));
    }
  }
  return row.back();
}

bool joins(const anatomy::Specimen& specimen, const anatomy::Joint& joint, const std::string& bone) {
  return lower(specimen[joint.proximal].id) == bone || lower(specimen[joint.distal].id) == bone;
}

/// Ids of movable joints that may have been meant, nearest first.
std::vector<std::string> nearMatches(const anatomy::Specimen& specimen, const std::string& id) {
  const std::string wanted = lower(id);
  const std::size_t allowed = std::max<std::size_t>(2, wanted.size() / 3);
  std::vector<std::pair<std::size_t, std::string>> found;
  for (const anatomy::Joint& joint : specimen.joints) {
    if (joint.kind == anatomy::JointKind::Fixed) continue;
    const std::size_t apart = joins(specimen, joint, wanted) ? 0 : lettersApart(wanted, lower(joint.id));
    if (apart <= allowed) found.emplace_back(apart, joint.id);
  }
  std::stable_sort(found.begin(), found.end(), [](const auto& a, const auto& b) { return a.first < b.first; });
  std::vector<std::string> ids;
  for (const auto& [apart, name] : found) {
    if (ids.size() < kOffered && apart <= found.front().first + 1) ids.push_back(name);
  }
  return ids;
}

}  // namespace

anatomy::JointIndex movableJoint(const anatomy::Specimen& specimen, const std::string& id) {
  if (const auto joint = specimen.findJoint(id)) {
    if (specimen[*joint].kind == anatomy::JointKind::Fixed)
      refuse(QT_TRANSLATE_NOOP("words", "--joint: %1 does not move"), {id});
    return *joint;
  }
  QStringList names;
  for (const std::string& near : nearMatches(specimen, id)) names << QString::fromStdString(near);
  if (names.isEmpty())
    refuse(
        QT_TRANSLATE_NOOP("words", "--joint: there is no joint %1; a joint is named like C6-C7, Ca1-Ca2, hip.L or jaw"),
        {id});
  refuse(QT_TRANSLATE_NOOP("words", "--joint: there is no joint %1; near it are %2"), {id, ui::inOneLine(names)});
}

}  // namespace zyga::app
