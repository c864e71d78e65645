#pragma once

#include "baize/api/clubs_cache.h"
#include "baize/api/metrics.h"
#include "baize/api/models_cache.h"
#include "baize/services/people.h"
#include "baize/services/pictures_port.h"
#include "baize/services/sheets_port.h"
#include "baize/services/store_port.h"
#include "baize/services/trial_files_port.h"
#include "baize/services/weather_port.h"

#include <functional>
#include <string>
#include <string_view>
#include <vector>

namespace baize::api {

/// A file of the pages, held in memory by the program.
struct Asset {
  std::string content_type;
  std::string_view body;
  std::string etag; ///< with its quotes; differs whenever the body does
};

/// What the routes stand on. Store and sheets are used from many threads at once.
struct Context {
  services::Store& store;
  const services::Sheets& sheets;
  ClubsCache& clubs;
  std::function<units::Day()> today;
  std::function<std::string()> now; ///< RFC 3339, UTC; written beside what is kept
  std::function<const Asset*(std::string_view path)> asset; ///< "/" is the first page; null: none
  /// Who a record brought in over HTTP is said to come from.
  std::string author = "web";
  /// Goes into every ETag; must differ between programs and between stores.
  std::string edition{};
  /// Names that the Host header may hold, without port. A page elsewhere that
  /// makes its own name lead to this machine is refused by it. Empty: any name.
  std::vector<std::string> hosts{"localhost", "127.0.0.1", "[::1]"};
  /// Season models already fitted.
  std::shared_ptr<ModelsCache> models = std::make_shared<ModelsCache>();
  /// Reads and writes the files of trials; null: trials are refused.
  const services::TrialFiles* trial_files = nullptr;
  /// Reads weather files; null: they are refused.
  const services::WeatherFiles* weather_files = nullptr;
  /// Looks at the bytes of photos; null: photos are refused.
  const services::Pictures* pictures = nullptr;
  /// A report's data put into its page, one file; null: reports are refused.
  std::function<units::Result<std::string>(const std::string& json)> report_page{};
  /// What is counted, told at /metrics; null: that is no page.
  std::shared_ptr<Metrics> metrics{};
  /// Figures of others told there too.
  std::function<std::vector<Figure>()> figures{};
  bool metrics_for_all = false; ///< not to this machine only
  /// Who may do what; null: nobody signs in, and all may do all.
  services::People* people = nullptr;
  /// A link as a picture to scan, SVG; null: invitations are told as links only.
  std::function<units::Result<std::string>(const std::string& text)> scan_code{};
};

} // namespace baize::api
