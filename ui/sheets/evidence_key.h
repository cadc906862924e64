#pragma once

#include <QColor>
#include <QString>
#include <vector>

#include "core/anatomy/specimen.h"

namespace zyga::ui {

/// How bones are toned by what is known of them, and what the tones mean.
class EvidenceKey {
 public:
  struct Entry {
    QString words;  ///< "found, 38 bones"
    QColor outline, shaded;
    int bones = 0;
  };

  /// `toned` false: all bones alike and no entries. `bySource`: each source of found bones has its own colour, as
  /// composite skeletons are shown.
  EvidenceKey(const anatomy::Specimen& specimen, bool toned, bool bySource);

  const std::vector<Entry>& entries() const { return entries_; }
  QColor outlineColour(std::size_t bone) const;
  QColor shadedColour(std::size_t bone) const;
  /// "12 of 256 bones found, 4.7 %; 5.9 % with mirrored ones": bones present, and as if each found bone of one side
  /// stood for its fellow too (the two counts of Lacovara et al. 2014, Sci. Rep. 4:6196).
  QString completeness() const { return completeness_; }

 private:
  std::vector<Entry> entries_;
  std::vector<std::size_t> entryOf_;  // by bone
  QString completeness_;
};

}  // namespace zyga::ui
