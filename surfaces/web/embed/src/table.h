#pragma once

#include "baize/assets/assets.h"

namespace baize::assets {

/// The files by path in byte order: written by the build from the built pages,
/// or the one page of surfaces/web/embed/not_built.
std::span<const Asset> table();

} // namespace baize::assets
