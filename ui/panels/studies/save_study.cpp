#include "ui/panels/studies/save_study.h"

#include <QFileInfo>
#include <QImage>
#include <QMimeData>

#include "core/files/disk/atomic_file.h"
#include "core/files/json/json.h"
#include "core/files/json/json_layout.h"
#include "ui/plots/plot_file.h"
#include "ui/theme/words.h"

namespace zyga::ui {
namespace {

PlotPainter onPaper(const StudyResult& result) {
  return [&result](QPainter& painter, const QRectF& area) { paintStudy(painter, area, result, printInk()); };
}

std::string numbersOf(const Document& document, const StudyResult& result) {
  std::vector<std::string> cautionary;
  for (const std::string& words : cautions(result)) cautionary.push_back(files::jsonString(words));
  return files::onLines({files::member("specimen", files::jsonString(document.specimen().name)),
                         files::member("study", json(result)), files::member("cautions", files::list(cautionary))},
                        "", '{', '}') +
         "\n";
}

}  // namespace

void saveStudy(const Document& document, const StudyResult& result, const QString& file) {
  const QString ending = QFileInfo(file).suffix().toLower();
  const std::filesystem::path path = file.toStdString();
  if (ending == "json") return files::writeWhole(path, numbersOf(document, result));
  const QByteArray bytes = plotBytes(ending, paperSize(result), onPaper(result));
  if (bytes.isEmpty()) {
    throw files::FileError(file.toStdString() + ": a figure is written as svg, pdf or png, numbers as json");
  }
  files::writeWhole(path, std::string_view(bytes.constData(), static_cast<std::size_t>(bytes.size())));
}

QMimeData* copyOfStudy(const Document& document, StudyKind kind, const StudyResult& result) {
  QString words = text(document.specimen().name) + QStringLiteral(": ") + title(kind) + '\n';
  for (const std::string& sentence : sentences(result)) words += text(sentence) + '\n';
  for (const std::string& sentence : cautions(result)) words += text(sentence) + '\n';
  auto* data = new QMimeData;
  data->setText(words);
  data->setImageData(QImage::fromData(plotBytes("png", paperSize(result), onPaper(result)), "PNG"));
  return data;
}

}  // namespace zyga::ui
