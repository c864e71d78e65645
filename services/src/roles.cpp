#include "baize/services/roles.h"

#include <algorithm>

namespace baize::services {

bool may(Role role, Right right) {
  for (const RoleRights& line : kRoles) {
    if (line.role == role) {
      switch (right) {
      case Right::look:
        return line.look;
      case Right::enter:
        return line.enter;
      case Right::bring:
        return line.bring;
      case Right::people:
        return line.people;
      }
    }
  }
  return false;
}

std::string_view name(Role role) {
  for (const RoleRights& line : kRoles) {
    if (line.role == role) {
      return line.name;
    }
  }
  return {};
}

std::string_view name(Right right) {
  switch (right) {
  case Right::look:
    return "look";
  case Right::enter:
    return "enter";
  case Right::bring:
    return "bring";
  case Right::people:
    return "people";
  }
  return {};
}

std::optional<Role> parse_role(std::string_view text) {
  for (const RoleRights& line : kRoles) {
    if (line.name == text) {
      return line.role;
    }
  }
  return std::nullopt;
}

units::Result<Role> role_named(std::string_view text) {
  constexpr std::size_t kShown = 40;
  const auto role = parse_role(text);
  if (!role) {
    return units::refuse("bad_role", "role", std::string(text.substr(0, kShown)),
                         "reader, observer, agronomist or head_greenkeeper");
  }
  return *role;
}

bool Caller::knows(const std::string& club) const {
  return kind == Kind::everyone || (kind != Kind::nobody && clubs.contains(club));
}

bool Caller::may(Right right, const std::string& club) const {
  if (kind == Kind::everyone) {
    return true;
  }
  const auto found = clubs.find(club);
  return kind != Kind::nobody && found != clubs.end() && services::may(found->second, right);
}

bool Caller::may_somewhere(Right right) const {
  return kind == Kind::everyone ||
         (kind != Kind::nobody && std::any_of(clubs.begin(), clubs.end(), [&](const auto& one) {
            return services::may(one.second, right);
          }));
}

} // namespace baize::services
