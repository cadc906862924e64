#include "ui/panels/studies/save_study.h"

#include <QFileInfo>
#include <QImage>
#include <QMimeData>

#include "core/files/disk/atomic_file.h"
#include "core/files/export/study_json.h"
#include "core/files/json/json_write.h"
#include "ui/plots/plot_file.h"
#include "ui/plots/study_plots.h"
#include "ui/words/study_words.h"

namespace zyga::ui {
namespace {

PlotPainter onPaper(const StudyResult& result) {
  return [&result](QPainter& painter, const QRectF& area) { paintStudy(painter, area, result, printInk()); };
}

std::string numbersOf(const Document& document, const StudyResult& result) {
  namespace json = files::json;
  std::vector<std::string> cautionary;
  for (const QString& words : cautions(result)) cautionary.push_back(words.toStdString());
  return json::document(json::object({{"specimen", document.specimen().name},
                                      {"study", files::studyJson(result, toldOf(result))},
                                      {"cautions", json::arrayOf(cautionary)}},
                                     json::Layout::OnLines));
}

}  // namespace

void saveStudy(const Document& document, const StudyResult& result, const QString& file) {
  const QString ending = QFileInfo(file).suffix().toLower();
  const std::filesystem::path path = file.toStdString();
  if (ending == "json") return files::writeWhole(path, numbersOf(document, result));
  const QByteArray bytes = plotBytes(ending, figureSize(kindOf(result)), onPaper(result));
  if (bytes.isEmpty()) {
    throw files::FileError({reason::Id{"study.unknown-ending", 1}, {reason::text(file.toStdString())}});
  }
  files::writeWhole(path, std::string_view(bytes.constData(), static_cast<std::size_t>(bytes.size())));
}

QMimeData* copyOfStudy(const Document& document, const StudyResult& result) {
  const QString name = QString::fromStdString(document.specimen().name);
  QString words = name + QStringLiteral(": ") + title(kindOf(result)) + '\n';
  for (const QString& sentence : sentences(result) + cautions(result)) words += sentence + '\n';
  auto* data = new QMimeData;
  data->setText(words);
  data->setImageData(QImage::fromData(plotBytes("png", figureSize(kindOf(result)), onPaper(result)), "PNG"));
  return data;
}

}  // namespace zyga::ui
