#pragma once

#include "baize/services/people.h"
#include "session.h"

#include <memory>
#include <optional>
#include <string>

namespace baize::cli {

struct PeopleOptions {
  std::string name;
  std::string club;
  std::string role;
  std::string session;
  std::string label;
  std::string at = "http://localhost:8417";
  std::string picture; ///< file for the scan code
  int days = 30;
  bool password_from_input = false;
};

/// The open database and what it knows of people; empty: refused already.
struct Desk {
  std::unique_ptr<services::Store> store;
  std::unique_ptr<services::People> people;
};

/// Where it fails it has refused already.
std::optional<Desk> desk_of(Session& session);
/// The club that is named; with no name the only one there is.
units::Result<std::string> named_club(services::Store& store, const std::string& said);

using Options = std::shared_ptr<PeopleOptions>;
CLI::App* command(CLI::App& people, Session& session, const char* name, const char* about,
                  Options options, void (*act)(Session&, const PeopleOptions&));
void club_option(CLI::App& command, const Options& options);
/// `more` is said after the roles there are.
void role_option(CLI::App& command, const Options& options, const char* more);

/// The commands that make invitations and links for reading.
void add_letting_in(CLI::App& people, Session& session);

} // namespace baize::cli
