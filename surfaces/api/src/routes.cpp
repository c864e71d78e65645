#include "baize/api/routes.h"

#include "call.h"

namespace baize::api {

namespace {

using services::Right;
constexpr Need kOpen{Need::Where::open};
constexpr Need kKnown{Need::Where::known};
constexpr Need kPerson{Need::Where::person};
constexpr Need kEnterSomewhere{Need::Where::somewhere, Right::enter};
constexpr Need kBringSomewhere{Need::Where::somewhere, Right::bring};
constexpr Need kLook{Need::Where::here, Right::look};
constexpr Need kEnter{Need::Where::here, Right::enter};
constexpr Need kBring{Need::Where::here, Right::bring};
constexpr Need kPeople{Need::Where::here, Right::people};

// Every route there is, in the order of surfaces/api/openapi.yaml, with what
// it needs of its caller.
const std::vector<Route> kRoutes{
    {"GET", "/healthz", kOpen, {}, false, healthz},
    {"GET", "/api/v1/fields", kKnown, {}, true, fields},
    {"GET", "/api/v1/clubs", kKnown, {}, true, clubs},
    {"GET", "/api/v1/clubs/{club}/greens", kLook, {"today"}, true, greens_review},
    {"GET",
     "/api/v1/clubs/{club}/greens/{green}/years/{year}",
     kLook,
     {"today"},
     true,
     season_review},
    {"GET",
     "/api/v1/clubs/{club}/greens/{green}/years/{year}/model",
     kLook,
     {"today"},
     true,
     season_model},
    {"GET", "/api/v1/clubs/{club}/years/{year}/report", kLook, {"today"}, true, report_file},
    {"GET", "/api/v1/clubs/{club}/model/checks", kLook, {"today"}, true, season_checks},
    {"GET", "/api/v1/clubs/{club}/works", kLook, {"today"}, true, works},
    {"GET", "/api/v1/clubs/{club}/works/{work}", kLook, {"today"}, true, work_review},
    {"GET",
     "/api/v1/clubs/{club}/methods",
     kLook,
     {"kind", "by", "cuts", "alongside", "definition", "today"},
     true,
     methods_review},
    {"GET", "/api/v1/clubs/{club}/observers", kLook, {"today"}, true, observers_review},
    {"GET",
     "/api/v1/clubs/{club}/consistency",
     kLook,
     {"from", "to", "today"},
     true,
     consistency_review},
    {"GET",
     "/api/v1/clubs/{club}/visits",
     kLook,
     {"green", "from", "to", "offset", "limit"},
     true,
     visits},
    {"GET", "/api/v1/clubs/{club}/visits/{visit}", kLook, {}, true, visit_detail},
    {"GET", "/api/v1/clubs/{club}/visits/{visit}/history", kLook, {}, true, visit_history},
    {"GET", "/api/v1/clubs/{club}/field", kEnter, {"today"}, true, field_kit},
    {"GET", "/api/v1/clubs/{club}/entries", kEnter, {"since", "limit"}, true, entries_since},
    {"POST", "/api/v1/clubs/{club}/entries", kEnter, {"today"}, false, hand_in, Body::entries},
    {"GET", "/api/v1/clubs/{club}/conflicts", kEnter, {}, true, conflicts},
    {"GET", "/api/v1/clubs/{club}/photos", kLook, {"of"}, true, photos},
    {"GET", "/api/v1/clubs/{club}/photos/{photo}", kLook, {}, false, picture},
    {"PUT", "/api/v1/clubs/{club}/photos/{photo}", kEnter, {}, false, keep_picture, Body::picture},
    {"POST",
     "/api/v1/clubs/{club}/import",
     kBring,
     {"dry_run", "today"},
     false,
     import_files,
     Body::files},
    {"POST",
     "/api/v1/clubs/{club}/weather",
     kBring,
     {"dry_run", "map", "today"},
     false,
     import_weather,
     Body::files},
    {"POST",
     "/api/v1/import",
     kBringSomewhere,
     {"dry_run", "today"},
     false,
     import_files,
     Body::files},
    {"POST", "/api/v1/trials/design", kEnterSomewhere, {}, false, design_trial},
    {"POST",
     "/api/v1/trials/analyse",
     kEnterSomewhere,
     {"treated", "standard", "confidence"},
     false,
     analyse_trial,
     Body::trial},
    {"POST",
     "/api/v1/clubs/{club}/trials/analyse",
     kEnter,
     {"treated", "until", "standard", "confidence", "today"},
     false,
     analyse_trial_rolls,
     Body::trial},
    {"GET", "/api/v1/session", kOpen, {}, false, session},
    {"POST", "/api/v1/session", kOpen, {}, false, sign_in},
    {"DELETE", "/api/v1/session", kOpen, {}, false, sign_out},
    {"GET", "/api/v1/sessions", kPerson, {}, false, own_sessions},
    {"DELETE", "/api/v1/sessions/{session}", kPerson, {}, false, end_own_session},
    {"POST", "/api/v1/invitations/look", kOpen, {}, false, look_at_invitation},
    {"POST", "/api/v1/invitations/accept", kOpen, {}, false, accept_invitation},
    {"GET", "/api/v1/clubs/{club}/people", kPeople, {}, false, people_of_club},
    {"PUT", "/api/v1/clubs/{club}/people/{person}", kPeople, {}, false, set_role},
    {"DELETE", "/api/v1/clubs/{club}/people/{person}", kPeople, {}, false, take_role},
    {"DELETE",
     "/api/v1/clubs/{club}/people/{person}/sessions/{session}",
     kPeople,
     {},
     false,
     cut_off},
    {"POST", "/api/v1/clubs/{club}/invitations", kPeople, {}, false, invite},
    {"DELETE", "/api/v1/clubs/{club}/invitations/{invitation}", kPeople, {}, false, end_invitation},
    {"POST", "/api/v1/clubs/{club}/links", kPeople, {}, false, make_link},
    {"DELETE", "/api/v1/clubs/{club}/links/{link}", kPeople, {}, false, end_link},
};

} // namespace

const std::vector<Route>& routes() {
  return kRoutes;
}

std::vector<RouteName> route_names() {
  std::vector<RouteName> names;
  for (const Route& route : routes()) {
    names.push_back({route.method, route.pattern, route.need});
  }
  return names;
}

} // namespace baize::api
