#pragma once

#include <QString>

#include "core/files/disk/file_error.h"
#include "ui/document/document.h"
#include "ui/studies/study_job.h"

class QMimeData;

namespace zyga::ui {

/// Writes the figure (svg, pdf, png) or the numbers (json) of a study, by the file's ending. Throws files::FileError.
void saveStudy(const Document& document, const StudyResult& result, const QString& file);

/// Sentences as text and the figure as a picture, for the clipboard. The caller owns it.
QMimeData* copyOfStudy(const Document& document, const StudyResult& result);

}  // namespace zyga::ui
