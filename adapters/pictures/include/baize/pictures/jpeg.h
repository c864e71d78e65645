#pragma once

#include "baize/services/pictures_port.h"

namespace baize::pictures {

/// services::Pictures for JPEG (ITU-T T.81). The header is read by libjpeg-turbo;
/// nothing is unpacked, so that a small file cannot become a large picture here.
class Jpeg : public services::Pictures {
 public:
  units::Result<services::PictureSize> look(std::string_view bytes) const override;
};

} // namespace baize::pictures
