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
    QString words;  ///< "preserved"
    QColor outline, shaded, inBody;
    int bones = 0;
  };

  /// `toned` false: all bones alike and no entries. `bySource`: each source of found bones has its own colour, as
  /// composite skeletons are shown.
  EvidenceKey(const anatomy::Specimen& specimen, bool toned, bool bySource);

  const std::vector<Entry>& entries() const { return entries_; }
  QColor outlineColour(std::size_t bone) const;
  QColor shadedColour(std::size_t bone) const;
  /// Before a dark body, as published skeletal drawings are: preserved bones white, others grey.
  QColor inBodyColour(std::size_t bone) const;
  /// completenessWords of the specimen.
  QString completeness() const { return completeness_; }

 private:
  std::vector<Entry> entries_;
  std::vector<std::size_t> entryOf_;  // by bone
  QString completeness_;
};

}  // namespace zyga::ui
