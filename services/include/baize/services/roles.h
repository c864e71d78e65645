#pragma once

#include "baize/units/problem.h"

#include <array>
#include <map>
#include <optional>
#include <string>
#include <string_view>

namespace baize::services {

/// What somebody is at one club.
enum class Role { reader, observer, agronomist, head_greenkeeper };

/// What a role may allow.
enum class Right {
  look,  ///< see everything of the club
  enter, ///< hand in what a phone wrote down, and compare trials
  bring, ///< bring in files of records and weather
  people ///< invite, change roles, cut off, make links for reading
};

/// A line of the one table of who may do what.
struct RoleRights {
  Role role;
  std::string_view name;
  bool look;
  bool enter;
  bool bring;
  bool people;
};
inline constexpr std::array<RoleRights, 4> kRoles{{
    {Role::reader, "reader", true, false, false, false},
    {Role::observer, "observer", true, true, false, false},
    {Role::agronomist, "agronomist", true, true, true, false},
    {Role::head_greenkeeper, "head_greenkeeper", true, true, true, true},
}};
inline constexpr std::array<Right, 4> kRights{Right::look, Right::enter, Right::bring,
                                              Right::people};

bool may(Role role, Right right);
std::string_view name(Role role);
std::string_view name(Right right);
/// By its name in the table; absent: there is no such role.
std::optional<Role> parse_role(std::string_view text);
/// The same; refuses "bad_role".
units::Result<Role> role_named(std::string_view text);

/// Whoever asks for something, and what is known of them.
struct Caller {
  enum class Kind {
    everyone, ///< nobody signs in here: all may do all
    nobody,   ///< has not signed in
    person,
    link ///< reads by a link
  };
  Kind kind = Kind::nobody;
  std::string id;      ///< of the person or link
  std::string name;    ///< of the person, or whom the link is for
  std::string session; ///< identifier of the session
  std::map<std::string, Role> clubs;

  /// Has this caller anything to do with the club?
  bool knows(const std::string& club) const;
  bool may(Right right, const std::string& club) const;
  /// At one club at least.
  bool may_somewhere(Right right) const;
};

} // namespace baize::services
