#pragma once

#include <QString>

#include "core/report/gather.h"
#include "ui/report/report_figures.h"

namespace zyga::ui {

/// The bytes of a report by ending: "pdf" or "html"; empty for another one. `pose`: the traced picture, null for none.
/// Needs a QGuiApplication.
std::string reportBytes(const QString& ending, const report::Gathered& gathered, const QImage& pose);

}  // namespace zyga::ui
