#include "report_page.h"

#include "baize/assets/assets.h"

namespace baize::apps {

units::Result<std::string> report_page(const std::string& json) {
  auto page = assets::report_page(json);
  if (!page) {
    return units::refuse("pages_not_built", "program", "baize",
                         "built with its pages, which needs Node.js (BAIZE_WEB)");
  }
  return std::move(*page);
}

} // namespace baize::apps
