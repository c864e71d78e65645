#pragma once

#include <string_view>
#include <vector>

namespace baize::api {

/// A line of the table of routes, as the OpenAPI file has it.
struct RouteName {
  std::string_view method;
  std::string_view pattern; ///< "/api/v1/clubs/{club}/greens"
};
std::vector<RouteName> route_names();

} // namespace baize::api
