#include "ui/panels/claims/claims_model.h"

#include <algorithm>

#include "core/files/project/project_measures.h"
#include "core/study/claims/claim_book.h"
#include "ui/panels/findings_model.h"
#include "ui/words/claim_words.h"
#include "ui/words/say.h"

namespace zyga::ui {
namespace {

constexpr int kRest = 200;  // ms without a change before anything is asked

study::Claim withoutSource(study::Claim claim) {
  claim.source.clear();
  return claim;
}

/// A probability takes about so many times as long as an answer.
constexpr double kSampling = 4;

/// Puts one claim to the bones. What goes wrong is part of what is known.
ClaimAnswers::Known answered(const range::Scenario& scenario, const study::Claim& claim, const task::Task& task) {
  ClaimAnswers::Known known{claim, scenario, nullptr, {}, true};
  try {
    known.answer = study::claimBook().answer(scenario, claim, task);
  } catch (const std::exception& error) {
    known.failure = sayFailure(error);
  }
  return known;
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
  if (what & Change::Specimen) known_.clear();
  if (!(what & (Changes(Change::Claims) | Change::Pose | Change::Assumptions | Change::Bones | Change::Contact)))
    return;
  if (what != Changes(Change::Claims))
    for (Known& known : known_) known.current = false;
  worker_.cancel();
  ask();
  emit changed();
}

void ClaimAnswers::ask() {
  const auto& claims = document_.project().claims;
  const bool all = std::all_of(claims.begin(), claims.end(), [this](const study::Claim& claim) {
    const Known* found = known(withoutSource(claim));
    return found && found->complete();
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
  std::vector<Known> asked;  // those that are answered already lack their probability only
  for (const study::Claim& claim : document_.project().claims) {
    const study::Claim bare = withoutSource(claim);
    const Known* found = known(bare);
    const bool twice = std::any_of(asked.begin(), asked.end(), [&](const Known& other) { return other.claim == bare; });
    if (twice || (found && found->complete())) continue;
    asked.push_back(found && found->current ? *found : Known{bare, document_.scenario(), nullptr, {}, true});
  }
  worker_.start([this, asked, scenario = document_.scenario(), measures = files::measuresOf(document_.project())](
                    const Worker::Control& control) mutable -> Worker::Delivery {
    const double each = 1 / (static_cast<double>(asked.size()) * (1 + kSampling));
    double done = 0;
    const auto next = [&](double share) {
      const task::Task task = control.task.part(done, std::min(1.0, done + share));
      done += share;
      return task;
    };
    for (Known& known : asked) {
      const task::Task task = next(each);
      if (!known.answer) known = answered(scenario, known.claim, task);
      if (control.task.cancelled()) return {};
    }
    control.show([this, asked] { take(asked); });
    std::vector<study::Claim> claims;
    for (const Known& known : asked)
      if (known.answered()) claims.push_back(known.claim);
    const auto found = study::claimBook().probabilities(scenario, claims, measures, {}, control.task.part(done, 1));
    if (found.size() != claims.size()) return {};
    auto probability = found.begin();
    for (Known& known : asked)
      if (known.answered()) known.probability = *probability++;
    return [this, asked] { take(asked); };
  });
}

void ClaimAnswers::take(const std::vector<Known>& found) {
  for (const Known& one : found) {
    if (!one.failure.isEmpty()) emit failed(tr("%1 could not be tested: %2.").arg(claimName(one.claim), one.failure));
    std::erase_if(known_, [&](const Known& known) { return known.claim == one.claim; });
    known_.push_back(one);
  }
  emit changed();
}

const ClaimAnswers::Known* ClaimAnswers::known(const study::Claim& claim) const {
  const auto found =
      std::find_if(known_.begin(), known_.end(), [&](const Known& known) { return known.claim == claim; });
  return found != known_.end() ? &*found : nullptr;
}

const ClaimAnswers::Known* ClaimAnswers::find(std::size_t index) const {
  return known(withoutSource(document_.project().claims.at(index)));
}

bool ClaimAnswers::answering() const {
  const auto& claims = document_.project().claims;
  return busy() && std::any_of(claims.begin(), claims.end(), [this](const study::Claim& claim) {
           const Known* found = known(withoutSource(claim));
           return !found || !found->current;
         });
}

bool ClaimAnswers::complete(std::size_t index) const {
  const Known* found = find(index);
  return found && found->complete();
}

ClaimsModel::ClaimsModel(Document& document, ClaimAnswers& answers, QObject* parent)
    : QAbstractListModel(parent), document_(document), answers_(answers) {
  if (document_.hasProject()) rows_ = static_cast<int>(document_.project().claims.size());
  connect(&document_, &Document::changed, this, &ClaimsModel::follow);
  connect(&answers_, &ClaimAnswers::changed, this, [this] {
    if (rows_ > 0) emit dataChanged(index(0), index(rows_ - 1));
  });
}

/// Rows are told to come and go at the end; dataChanged tells the rest.
void ClaimsModel::follow(Changes what) {
  if (!(what & Change::Claims)) return;
  const int wanted = static_cast<int>(document_.project().claims.size());
  if (what & Change::Specimen) {
    beginResetModel();
    rows_ = wanted;
    return endResetModel();
  }
  if (wanted > rows_) {
    beginInsertRows({}, rows_, wanted - 1);
    rows_ = wanted;
    endInsertRows();
  } else if (wanted < rows_) {
    beginRemoveRows({}, wanted, rows_ - 1);
    rows_ = wanted;
    endRemoveRows();
  }
  if (rows_ > 0) emit dataChanged(index(0), index(rows_ - 1));
}

int ClaimsModel::rowCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : rows_; }

range::Level ClaimsModel::levelOf(std::size_t row) const {
  const ClaimAnswers::Known* known = answers_.find(row);
  if (!known || !known->answered()) return range::Level::NotJudged;
  return known->answer->supported ? range::Level::Supported : range::Level::Beyond;
}

QString ClaimsModel::stateOf(std::size_t row) const {
  const ClaimAnswers::Known* known = answers_.find(row);
  if (!known) return tr("testing");
  return known->answer ? claimState(*known->answer) : tr("failed");
}

QVariant ClaimsModel::data(const QModelIndex& index, int role) const {
  const auto row = static_cast<std::size_t>(index.row());
  if (!index.isValid() || row >= document_.project().claims.size()) return {};
  const study::Claim& claim = document_.project().claims[row];
  switch (role) {
    case Qt::DisplayRole:
      return claimWithSource(claim);
    case Qt::AccessibleTextRole:
      return tr("%1: %2").arg(claimName(claim), stateOf(row));
    case Qt::ToolTipRole:
      return capital(stateOf(row));
    case FindingsModel::kLevelRole:
      return static_cast<int>(levelOf(row));
    case FindingsModel::kContactRole:
      return false;
    default:
      return {};
  }
}

}  // namespace zyga::ui
