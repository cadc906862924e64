#pragma once

#include <QString>

#include "core/anatomy/marks/mark_plan.h"
#include "core/solid/mesh/fit.h"
#include "ui/document/document.h"
#include "ui/scans/landmark_view.h"

namespace zyga::ui {

/// The work on one mark: what has been brushed or clicked, and what was made of it.
struct MarkTrace {
  std::string mark;
  std::vector<std::uint32_t> triangles;   ///< brushed
  std::vector<Eigen::Vector3d> places_S;  ///< clicked, m
  std::optional<Eigen::Vector3d> made_S;  ///< landmark, or centre of the facet; none until there is enough
  double radius = 0, rms = 0, error = 0;  ///< of ball and ring, m
  bool hollow = false;
};

/// Marks a scanned bone: turns clicks and brushed surface into landmarks and facets of its record, one undoable step
/// each. What was brushed is kept while the editor is open, so that undo and redo bring it back too.
class LandmarkMarks : public QObject {
  Q_OBJECT
 public:
  explicit LandmarkMarks(Document& document, QObject* parent = nullptr);

  /// `bone` must have a scan.
  void setBone(const anatomy::BoneName& bone, std::shared_ptr<const ScanSurface> surface);
  void setSurface(std::shared_ptr<const ScanSurface> surface);
  bool hasScan() const;
  const anatomy::Scan& scan() const;
  const anatomy::Bone& sculpted() const;
  const std::vector<anatomy::WantedMark>& wanted() const { return wanted_; }
  const anatomy::WantedMark* current() const;
  void choose(const std::string& mark);
  bool isMade(const anatomy::WantedMark& mark) const;
  /// How sure the program was of a mark that it suggested and that nobody has accepted yet, 0 to 1.
  std::optional<double> suggested(const anatomy::WantedMark& mark) const;
  /// What can hardly be right, once the bone's surface is ready: of all its marks, and of one.
  const std::vector<anatomy::MarkDoubt>& doubts() const { return doubts_; }
  std::vector<anatomy::MarkDoubt> doubtsOf(const anatomy::WantedMark& mark) const;
  /// Marks that are required and open, that are suggested and not accepted, of this bone or of any scan.
  struct Open {
    int lacking = 0, suggested = 0;
    bool any() const { return lacking + suggested > 0; }
  };
  Open openMarks(const anatomy::Scan& scan) const;
  /// The next mark of the list that is doubted, after the current one; none when none is.
  const anatomy::WantedMark* nextDoubted() const;
  /// So many places down the list, or up.
  void step(int places);
  /// "radius 61.2 mm, residual 0.4 mm"; empty when it has not been made.
  QString made(const anatomy::WantedMark& mark) const;
  /// The same for a narrow column: "0.40 mm", the residual of a facet alone, or "marked".
  QString madeBriefly(const anatomy::WantedMark& mark) const;

  void place(const ScanHit& at);
  void brush(const ScanHit& at, double radius, bool away);
  void endStroke();
  void takeAway();
  /// The current mark, if it was suggested, is taken for made; the next suggested one becomes the current one.
  void accept();
  /// The same for all marks of the bone, in one step.
  void acceptAll();
  /// Back by one clicked place of a ring, or by what was brushed but not yet taken.
  void takeBackPlace();
  void mirrorAll();
  void mirrorCurrent();
  void setOutlineBy(solid::OutlineBy by) { outlineBy_ = by; }

  const std::vector<std::uint32_t>& patch() const { return trace_.triangles; }
  /// Marks to be drawn, the current one as it would be made now.
  std::vector<ShownMark> shown() const;

 signals:
  void changed();
  /// For people: why nothing came of it, or what is odd about it.
  void told(const QString& text);

 private:
  void adoptTrace();
  void doubt();
  void make();
  void makeBall();
  void makeRing();
  void makeFacet(const anatomy::WantedMark& mark);
  void set(const anatomy::WantedMark& mark, const Eigen::Vector3d& p_S,
           const std::optional<anatomy::MarkFit>& fit = {});
  void push(const anatomy::Scan& after, const QString& text);
  Eigen::Vector3d slideOf(anatomy::FacetRole role) const;

  Document& document_;
  anatomy::BoneName bone_;
  std::shared_ptr<const ScanSurface> surface_;
  anatomy::Specimen sculptedAnimal_;
  anatomy::BoneIndex index_;
  std::vector<anatomy::WantedMark> wanted_;
  std::string current_;
  MarkTrace trace_;                ///< of the current mark
  std::vector<MarkTrace> traces_;  ///< of all that were made
  std::vector<anatomy::MarkDoubt> doubts_;
  solid::OutlineBy outlineBy_ = solid::OutlineBy::Ellipse;
};

}  // namespace zyga::ui
