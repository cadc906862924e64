#include "ui/commands/claim_edits.h"

#include <QCoreApplication>

#include "ui/document/document.h"
#include "ui/document/set_value.h"
#include "ui/theme/words.h"

namespace zyga::ui {
namespace {

using Claims = std::vector<study::Claim>;

QString tr(const char* text) { return QCoreApplication::translate("Claims", text); }

void push(Document& document, Claims after, const QString& text, int mergeKey = 0) {
  const Claims& before = document.project().claims;
  if (before == after) return;
  const auto set = [&document](const Claims& claims) { document.setClaims(claims); };
  document.undoStack().push(new SetValue<Claims>(before, std::move(after), set, text, mergeKey));
}

}  // namespace

QString claimName(const study::Claim& claim) { return capital(text(sentence(claim))); }

void addClaim(Document& document, const study::Claim& claim) {
  Claims claims = document.project().claims;
  claims.push_back(claim);
  push(document, std::move(claims), tr("Add claim “%1”").arg(claimName(claim)));
}

void changeClaim(Document& document, std::size_t index, const study::Claim& claim, int mergeKey) {
  Claims claims = document.project().claims;
  claims.at(index) = claim;
  push(document, std::move(claims), tr("Claim “%1”").arg(claimName(claim)), mergeKey);
}

void removeClaim(Document& document, std::size_t index) {
  Claims claims = document.project().claims;
  const QString name = claimName(claims.at(index));
  claims.erase(claims.begin() + static_cast<std::ptrdiff_t>(index));
  push(document, std::move(claims), tr("Remove claim “%1”").arg(name));
}

}  // namespace zyga::ui
