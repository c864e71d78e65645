#include "baize/api/routes.h"

#include "call.h"

namespace baize::api {

// Every route there is, in the order of surfaces/api/openapi.yaml.
const std::vector<Route>& routes() {
  static const std::vector<Route> table{
      {"GET", "/healthz", {}, false, healthz},
      {"GET", "/api/v1/fields", {}, true, fields},
      {"GET", "/api/v1/clubs", {}, true, clubs},
      {"GET", "/api/v1/clubs/{club}/greens", {"today"}, true, greens_review},
      {"GET", "/api/v1/clubs/{club}/greens/{green}/years/{year}", {"today"}, true, season_review},
      {"GET",
       "/api/v1/clubs/{club}/greens/{green}/years/{year}/model",
       {"today"},
       true,
       season_model},
      {"GET", "/api/v1/clubs/{club}/years/{year}/report", {"today"}, true, report_file},
      {"GET", "/api/v1/clubs/{club}/model/checks", {"today"}, true, season_checks},
      {"GET", "/api/v1/clubs/{club}/works", {"today"}, true, works},
      {"GET", "/api/v1/clubs/{club}/works/{work}", {"today"}, true, work_review},
      {"GET",
       "/api/v1/clubs/{club}/methods",
       {"kind", "by", "cuts", "alongside", "definition", "today"},
       true,
       methods_review},
      {"GET", "/api/v1/clubs/{club}/observers", {"today"}, true, observers_review},
      {"GET",
       "/api/v1/clubs/{club}/consistency",
       {"from", "to", "today"},
       true,
       consistency_review},
      {"GET",
       "/api/v1/clubs/{club}/visits",
       {"green", "from", "to", "offset", "limit"},
       true,
       visits},
      {"GET", "/api/v1/clubs/{club}/visits/{visit}", {}, true, visit_detail},
      {"GET", "/api/v1/clubs/{club}/visits/{visit}/history", {}, true, visit_history},
      {"GET", "/api/v1/clubs/{club}/field", {"today"}, true, field_kit},
      {"GET", "/api/v1/clubs/{club}/entries", {"since", "limit"}, true, entries_since},
      {"POST", "/api/v1/clubs/{club}/entries", {"today"}, false, hand_in},
      {"GET", "/api/v1/clubs/{club}/conflicts", {}, true, conflicts},
      {"POST", "/api/v1/clubs/{club}/import", {"dry_run", "today"}, false, import_files},
      {"POST", "/api/v1/clubs/{club}/weather", {"dry_run", "map", "today"}, false, import_weather},
      {"POST", "/api/v1/import", {"dry_run", "today"}, false, import_files},
      {"POST", "/api/v1/trials/design", {}, false, design_trial},
      {"POST",
       "/api/v1/trials/analyse",
       {"treated", "standard", "confidence"},
       false,
       analyse_trial},
      {"POST",
       "/api/v1/clubs/{club}/trials/analyse",
       {"treated", "until", "standard", "confidence", "today"},
       false,
       analyse_trial_rolls},
  };
  return table;
}

std::vector<RouteName> route_names() {
  std::vector<RouteName> names;
  for (const Route& route : routes()) {
    names.push_back({route.method, route.pattern});
  }
  return names;
}

} // namespace baize::api
