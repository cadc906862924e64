#pragma once

#include <QString>

#include "core/files/project/project.h"
#include "core/study/mass/balance.h"

namespace zyga::ui {

/// "7.0 to 10.4 t", or kg below a tonne.
QString massWords(const study::MassRange& mass);
/// "98–112°" from rad, "1.20–1.40 m", "unknown"; one number where least and most read the same.
QString angleWords(const std::optional<study::Spread>& spread);
QString amountWords(const std::optional<study::Spread>& spread, int decimals, const QString& unit);

/// Mass by the circumferences of the project's humerus and femur, and whether they were measured: "17.7 to 30.0 t, from
/// inferred circumferences".
QString circumferenceWords(const files::Project& project);

/// One line on mass and balance, for the title of a folded panel.
QString balanceInShort(const study::Balance& balance);

}  // namespace zyga::ui
