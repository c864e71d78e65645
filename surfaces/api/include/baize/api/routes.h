#pragma once

#include "baize/services/roles.h"

#include <string_view>
#include <vector>

namespace baize::api {

/// What a route asks of whoever calls it.
struct Need {
  enum class Where {
    unsaid,    ///< not said: nobody may
    open,      ///< nothing
    known,     ///< a person or a link, whichever club
    person,    ///< a person, no link
    somewhere, ///< the right at one club at least
    here       ///< the right at the club of the path
  };
  Where where = Where::unsaid;
  services::Right right = services::Right::look;
};

/// A line of the table of routes, as the OpenAPI file has it.
struct RouteName {
  std::string_view method;
  std::string_view pattern; ///< "/api/v1/clubs/{club}/greens"
  Need need;
};
std::vector<RouteName> route_names();

} // namespace baize::api
