#pragma once

#include <QString>
#include <vector>

#include "core/study/claims/claim.h"

namespace zyga::ui {

class Document;

/// Undoable edits of the project's claims; an index outside the list throws std::out_of_range. Steps with the same
/// non-zero mergeKey that follow each other become one.
void addClaim(Document& document, const study::Claim& claim);
void changeClaim(Document& document, std::size_t index, const study::Claim& claim, int mergeKey = 0);
void removeClaim(Document& document, std::size_t index);

/// The claim in words with a capital letter first: "Head at least 8.5 m high".
QString claimName(const study::Claim& claim);

}  // namespace zyga::ui
