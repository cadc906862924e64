#include "ui/sheets/repeatable_pdf.h"

#include <QCryptographicHash>
#include <QHashSeed>
#include <QRegularExpression>

namespace zyga::ui {

SteadyHashes::SteadyHashes() { QHashSeed::setDeterministicGlobalSeed(); }
SteadyHashes::~SteadyHashes() { QHashSeed::resetRandomGlobalSeed(); }

QByteArray withoutClock(QByteArray pdf) {
  const QString text = QString::fromLatin1(pdf);
  static const QRegularExpression date("/(?:CreationDate|ModDate) ?\\(D:(\\d{14})[^)]*\\)");
  for (auto it = date.globalMatch(text); it.hasNext();) {
    const auto match = it.next();
    const qsizetype from = match.capturedStart(1), length = match.capturedEnd(0) - 1 - from;
    // The offset from UTC goes with the date.
    pdf.replace(from, length, QByteArray("20000101000000Z").leftJustified(length, ' ', true));
  }
  static const QRegularExpression identifier("/ID \\[ ?<([0-9A-Fa-f]+)> ?<([0-9A-Fa-f]+)> ?\\]");
  const auto match = identifier.match(text);
  if (!match.hasMatch()) return pdf;
  const auto fill = [&](const QByteArray& bytes) {
    for (const int part : {1, 2}) {
      const qsizetype length = match.capturedLength(part);
      pdf.replace(match.capturedStart(part), length, bytes.leftJustified(length, '0', true));
    }
  };
  fill({});
  fill(QCryptographicHash::hash(pdf, QCryptographicHash::Sha256).toHex());
  return pdf;
}

}  // namespace zyga::ui
