#include "core/report/gather.h"

#include "core/range/neutral.h"
#include "core/report/sections.h"

namespace zyga::report {
namespace {

Matter matterOf(const files::Project& project, const std::string& poseName, const kinematics::Pose& pose) {
  Matter matter{project, poseName, pose, range::articulate(project.specimen, project.assumptions), {}, {}};
  matter.X_WB = place(project.specimen, matter.articulation, pose);
  matter.assessment = assess(project.specimen, matter.articulation, project.assumptions, pose);
  return matter;
}

class Gatherer {
 public:
  Gatherer(const Matter& matter, const Options& options) : matter_(matter), options_(options) {
    out_.report.title = matter.project.table.name;
  }

  std::optional<Gathered> run() {
    if (options_.claimsOnly)
      claimPage();
    else
      everything();
    if (cancelled()) return {};
    tell(1);
    return std::move(out_);
  }

 private:
  bool cancelled() const { return options_.cancel && *options_.cancel; }
  void tell(double share) const {
    if (options_.progress) options_.progress(share);
  }
  void add(Section section) { out_.report.sections.push_back(std::move(section)); }
  Numbers& numbers() { return out_.report.numbers; }

  void claimPage() {
    out_.report.subtitle = "Claims put to the bones; pose: " + matter_.poseName;
    add(claimsSection(matter_, numbers(), options_));
    add(assumptionsSection(matter_, numbers()));
    add(cautionsSection(matter_));
  }

  void everything() {
    out_.report.subtitle = "What the bones support; pose: " + matter_.poseName;
    add(poseSection(matter_, numbers()));
    add(findingsSection(matter_, numbers()));
    add(claimsSection(matter_, numbers(), options_));
    tell(0.2);
    add(specimenSection(matter_, numbers()));
    add(evidenceSection(matter_, numbers()));
    add(assumptionsSection(matter_, numbers()));
    add(neckLimitsSection(matter_, numbers()));
    tell(0.3);
    if (options_.studies) studies();
    add(massSection(matter_, numbers()));
    add(cautionsSection(matter_));
    add(anglesSection(matter_, numbers()));
  }

  /// A specimen that lacks what a study needs (a skull, dorsals) has no such section.
  void studies() {
    study::Watch watch;
    watch.cancel = options_.cancel;
    attempt([&] {
      out_.elevation = study::elevation(matter_.subject());
      add(elevationSection(*out_.elevation, numbers()));
    });
    attempt([&] {
      study::EnvelopeOptions flat;
      flat.space = false;
      out_.envelope = study::envelope(matter_.subject(), flat, watch);
      if (out_.envelope) add(envelopeSection(*out_.envelope, numbers()));
    });
    tell(0.6);
    attempt([&] {
      out_.ranges = study::rangeChart(matter_.subject(), watch);
      if (out_.ranges) add(rangesSection(*out_.ranges));
    });
    tell(0.9);
    attempt([&] {
      out_.pressure = study::pressure(matter_.subject());
      add(pressureSection(*out_.pressure, numbers()));
    });
  }

  template <class Work>
  void attempt(Work work) {
    if (cancelled()) return;
    try {
      work();
    } catch (const std::invalid_argument&) {
    }
  }

  const Matter& matter_;
  const Options& options_;
  Gathered out_;
};

}  // namespace

std::optional<Gathered> gather(const files::Project& project, const std::string& poseName, const kinematics::Pose& pose,
                               const Options& options) {
  const Matter matter = matterOf(project, poseName, pose);
  return Gatherer(matter, options).run();
}

}  // namespace zyga::report
