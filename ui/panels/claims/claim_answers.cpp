#include "ui/panels/claims/claim_answers.h"

#include <algorithm>

#include "ui/theme/words.h"

namespace zyga::ui {
namespace {

constexpr int kRest = 200;  // ms without a change before anything is asked

study::Claim withoutSource(study::Claim claim) {
  claim.source.clear();
  return claim;
}

}  // namespace

ClaimAnswers::ClaimAnswers(Document& document, QObject* parent) : QObject(parent), document_(document) {
  wait_.setSingleShot(true);
  wait_.setInterval(kRest);
  connect(&wait_, &QTimer::timeout, this, &ClaimAnswers::start);
  connect(&document_, &Document::changed, this, &ClaimAnswers::follow);
  connect(&worker_, &Worker::progress, this, &ClaimAnswers::progress);
  connect(&worker_, &Worker::busyChanged, this, &ClaimAnswers::busyChanged);
  if (document_.hasProject()) follow(Change::Everything);
}

void ClaimAnswers::follow(Changes what) {
  if (what == Changes(Change::Everything)) known_.clear();
  if (!(what & (Changes(Change::Claims) | Change::Pose | Change::Assumptions | Change::Bones))) return;
  if (what != Changes(Change::Claims))
    for (Known& known : known_) known.current = false;
  worker_.cancel();
  ask();
  emit changed();
}

void ClaimAnswers::ask() {
  const auto& claims = document_.project().claims;
  const bool all = std::all_of(claims.begin(), claims.end(), [this](const study::Claim& claim) {
    const Known* answer = known(withoutSource(claim));
    return answer && answer->current;
  });
  if (all) {
    wait_.stop();
  } else {
    wait_.start();
  }
  emit busyChanged();
}

void ClaimAnswers::cancel() {
  wait_.stop();
  worker_.cancel();
  emit busyChanged();
}

void ClaimAnswers::start() {
  if (!document_.hasProject()) return;
  std::vector<study::Claim> asked;
  for (const study::Claim& claim : document_.project().claims) {
    const study::Claim bare = withoutSource(claim);
    const Known* answer = known(bare);
    const bool twice = std::find(asked.begin(), asked.end(), bare) != asked.end();
    if (!twice && !(answer && answer->current)) asked.push_back(bare);
  }
  // Values of their own for the other thread: the document goes on changing.
  const auto work = [this, asked, specimen = document_.specimen(), articulation = document_.articulation(),
                     assumptions = document_.assumptions(),
                     pose = document_.pose()](const Worker::Control& control) -> Worker::Delivery {
    std::vector<Known> found;
    for (const study::Claim& claim : asked) {
      study::ClaimOptions options;
      options.cancel = &control.cancelled;
      options.progress = [&](std::size_t done, std::size_t total) {
        control.report(found.size() * total + done, asked.size() * total);
      };
      found.push_back({claim, study::answerClaim(specimen, articulation, assumptions, pose, claim, options)});
      if (found.back().answer.cancelled) return {};
    }
    return [this, found = std::move(found)] { take(found); };
  };
  worker_.start(
      work, [this](const QString& cause) { emit failed(tr("A claim cannot be answered: %1.").arg(faultText(cause))); });
}

void ClaimAnswers::take(std::vector<Known> found) {
  for (Known& answer : found) {
    std::erase_if(known_, [&](const Known& known) { return known.claim == answer.claim; });
    known_.push_back(std::move(answer));
  }
  emit changed();
}

const ClaimAnswers::Known* ClaimAnswers::known(const study::Claim& claim) const {
  const auto found =
      std::find_if(known_.begin(), known_.end(), [&](const Known& known) { return known.claim == claim; });
  return found != known_.end() ? &*found : nullptr;
}

const study::ClaimAnswer* ClaimAnswers::find(std::size_t index) const {
  const Known* answer = known(withoutSource(document_.project().claims.at(index)));
  return answer ? &answer->answer : nullptr;
}

bool ClaimAnswers::current(std::size_t index) const {
  const Known* answer = known(withoutSource(document_.project().claims.at(index)));
  return answer && answer->current;
}

}  // namespace zyga::ui
