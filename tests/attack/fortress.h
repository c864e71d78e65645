#pragma once

#include "baize/api/answer.h"
#include "baize/api/routes.h"
#include "baize/pictures/jpeg.h"
#include "baize/sheets/trial_csv.h"
#include "baize/weather_files/reader.h"
#include "unit/api_fakes.h"
#include "unit/people_world.h"

#include <optional>
#include <string>
#include <vector>

/// A server with two clubs, and everybody who might ask it for something.
namespace attack {

using namespace baize;

/// One who asks, with what the browser sends along.
struct Asker {
  std::string who;
  std::string cookie;
  std::string origin = "http://localhost";
  std::string fetch_site{};
};

class Fortress {
 public:
  Fortress();

  api::Response ask(const Asker& asker, const api::RouteName& route, const std::string& target,
                    const std::optional<std::string>& body = std::nullopt,
                    const std::optional<std::string>& content_type = std::nullopt) const;
  Asker in_role(const std::string& club, services::Role role);
  Asker by_link(const std::string& club);
  Asker expired();
  Asker cut_off();

  /// The route's path with identifiers of this club's things in it, and, under
  /// `people_of`, those of that club's people, invitations and links.
  std::string target(const api::RouteName& route, const std::string& club,
                     const std::string& people_of);
  /// Nothing of the database has changed since the last call of this or `settle`.
  bool untouched();
  void settle() { before_ = world.contents(); }
  /// The first name or identifier of this club's people and things found in it.
  std::string leak(const std::string& text, const std::string& club);

  people_test::TwoClubs world;
  std::unique_ptr<api::Context> context;

 private:
  struct Things {
    std::string person;
    std::string session;
    std::string invitation;
    std::string link;
    std::string photo;
  };
  void take_photo(const std::string& club, Things& things);
  std::map<std::string, Things> things_;
  made::FakeSheets sheets_;
  const sheets::TrialCsv trial_files_;
  const weather_files::Reader weather_;
  const pictures::Jpeg pictures_;
  std::unique_ptr<api::ClubsCache> clubs_;
  std::string before_;
};

/// A body that the route reads without a fault, or nearly.
std::string good_body(const api::RouteName& route);
/// The type that the route takes.
std::string good_type(const api::RouteName& route);
bool has_body(const api::RouteName& route);
bool changes(const api::RouteName& route);
std::string code_of(const api::Response& response);

} // namespace attack
