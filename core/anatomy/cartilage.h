#pragma once

namespace zyga::anatomy {

/// Thickness of the cartilage between two centra, % of the caudal bone's functional length, that stands for a grown and
/// for a young sauropod until something is known of the animal: the one grown sauropod that was measured, and the
/// thinner of two young ones (Taylor & Wedel 2013, PLoS ONE 8(10):e78214). Necks only; for trunk and tail: program
/// default, no source.
inline constexpr double kGrownCartilage = 4.5, kYoungCartilage = 15;

}  // namespace zyga::anatomy
