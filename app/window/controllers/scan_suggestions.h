#pragma once

#include "core/files/project/carried_scans.h"
#include "core/solid/facets/suggest_column.h"
#include "ui/document/document.h"
#include "ui/document/worker.h"

namespace zyga::ui {

class JobReadout;
class MessageBar;

/// Landmarks and facets for the scans of the animal, suggested from their shape and from how they lie beside each
/// other, beside the window. Those that are sure enough go onto the scans as one undo step; the landmark editor shows
/// them as suggested until somebody accepts them.
class ScanSuggestions : public QObject {
  Q_OBJECT
 public:
  ScanSuggestions(Document& document, MessageBar& messages, QWidget& window);

  /// For the status bar.
  QWidget* readout() const;
  bool busy() const { return finder_.busy(); }
  void start();
  /// Marks that vertebrae lack are carried over from the nearest one that has some.
  void carry();

 signals:
  /// Somebody wants to look at the marks of a bone.
  void marksAsked(std::optional<zyga::anatomy::BoneIndex> bone);

 private:
  using Scans = std::vector<files::ProjectScan>;
  void take(const Scans& asked, const solid::ColumnSuggestion& found);
  void takeCarried(const Scans& asked, const Scans& after, const std::vector<files::CarriedTo>& carried);
  void tellNothing(const solid::ColumnSuggestion& found);

  Document& document_;
  MessageBar& messages_;
  Worker finder_;
  JobReadout* readout_;
};

}  // namespace zyga::ui
