#include "fortress.h"

#include "baize/services/hand_in.h"
#include "baize/services/photos.h"
#include "unit/green_samples.h"
#include "unit/photo_samples.h"

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

namespace attack {

Fortress::Fortress() {
  clubs_ = std::make_unique<api::ClubsCache>(*world.store, 4);
  context = std::unique_ptr<api::Context>(
      new api::Context{*world.store, sheets_, *clubs_, [] { return samples::kToday; },
                       [] { return std::string("2026-09-21T14:13:20Z"); },
                       [](std::string_view) { return nullptr; }});
  context->people = world.people.get();
  context->trial_files = &trial_files_;
  context->weather_files = &weather_;
  context->pictures = &pictures_;
  context->report_page = [](const std::string& json) { return "<!doctype html>" + json; };
  for (const std::string club : {"hill", "moor"}) {
    Things things;
    things.person = world.person(people_test::name_at(club, services::Role::observer)).id;
    world.sign_in(people_test::name_at(club, services::Role::observer));
    things.session = world.kept().sessions(things.person).value().front().id;
    things.invitation = world.people->invite(club, services::Role::reader, "x").value().kept.id;
    things.link = world.kept().links(club).value().front().id;
    take_photo(club, things);
    things_[club] = things;
  }
  settle();
}

/// A photo of a visit, with its picture; each club's has an id of its own.
void Fortress::take_photo(const std::string& club, Things& things) {
  namespace made = photo_test;
  const bool hill = club == "hill";
  things.photo = made::id(hill ? 900041 : 900042);
  const std::string picture = made::jpeg();
  auto fields = made::visit_fields();
  fields[0].value = made::text(club);
  const auto of = made::id(hill ? 900001 : 900002);
  const services::HandIn given{
      club,
      made::kPhone,
      "2026-05-03T08:00:00Z",
      {made::entry(hill ? 1 : 2, made::Kind::visit, of, fields),
       made::photo(hill ? 3 : 4, made::photo_fields(picture, of), {}, things.photo)}};
  const services::Author author{"phone", "2026-05-03T08:00:00Z"};
  EXPECT_TRUE(services::hand_in(*world.store->entries(), given, author, samples::kToday));
  EXPECT_TRUE(
      services::keep_photo(*world.store->photos(), pictures_, club, things.photo, picture, author));
}

api::Response Fortress::ask(const Asker& asker, const api::RouteName& route,
                            const std::string& target, const std::optional<std::string>& body,
                            const std::optional<std::string>& content_type) const {
  api::Request request;
  request.method = std::string(route.method);
  request.target = target;
  request.host = "localhost";
  request.address = "10.0.0.1";
  request.cookie = asker.cookie;
  request.origin = changes(route) ? asker.origin : "";
  request.fetch_site = asker.fetch_site;
  if (has_body(route)) {
    request.body = body.value_or(good_body(route));
    request.content_type = content_type.value_or(good_type(route));
  }
  return api::answer(*context, request);
}

Asker Fortress::in_role(const std::string& club, services::Role role) {
  const std::string name = people_test::name_at(club, role);
  Asker asker{name, "baize_session=" + world.sign_in(name)};
  settle();
  return asker;
}

Asker Fortress::by_link(const std::string& club) {
  const auto opened = world.people->open_link(world.links[club], "browser", "10.0.0.2");
  settle();
  return {"link of " + club, "other=1; baize_session=" + opened.value().token};
}

Asker Fortress::expired() {
  services::SessionOf old;
  old.id = "over";
  old.person = world.person("hill_head_greenkeeper").id;
  old.device = "phone";
  old.began = world.now - 1000;
  old.seen = world.now - 1000;
  old.ends = world.now;
  EXPECT_TRUE(world.kept().add_session(old, world.secrets.digest("over")));
  settle();
  return {"expired", "baize_session=over"};
}

Asker Fortress::cut_off() {
  const std::string token = world.sign_in("hill_head_greenkeeper");
  const auto caller = world.people->caller(token).value();
  EXPECT_TRUE(world.people->cut_off("hill", caller.id, caller.session));
  settle();
  return {"cut off", "baize_session=" + token};
}

std::string Fortress::target(const api::RouteName& route, const std::string& club,
                             const std::string& people_of) {
  const Things& things = things_[people_of];
  std::string path(route.pattern);
  for (const auto& [id, value] :
       std::map<std::string, std::string>{{"{club}", club},
                                          {"{green}", "7"},
                                          {"{year}", "2026"},
                                          {"{work}", "w1"},
                                          {"{visit}", "v1"},
                                          {"{person}", things.person},
                                          {"{session}", things.session},
                                          {"{invitation}", things.invitation},
                                          {"{link}", things.link},
                                          {"{photo}", things.photo}}) {
    if (const auto at = path.find(id); at != std::string::npos) {
      path.replace(at, id.size(), value);
    }
  }
  EXPECT_EQ(path.find('{'), std::string::npos) << path << ": say here what stands for it";
  return path;
}

bool Fortress::untouched() {
  const std::string now = world.contents();
  const bool same = now == before_;
  before_ = now;
  return same;
}

std::string Fortress::leak(const std::string& text, const std::string& club) {
  const Things& things = things_[club];
  std::vector<std::string> secrets{club == "hill" ? "Hill under" : "Moor by",
                                   "committee of " + club,
                                   things.person,
                                   things.session,
                                   things.invitation,
                                   things.link,
                                   things.photo};
  for (const services::RoleRights& line : services::kRoles) {
    secrets.push_back(people_test::name_at(club, line.role));
    secrets.push_back(world.person(people_test::name_at(club, line.role)).id);
  }
  for (const std::string& secret : secrets) {
    if (text.find(secret) != std::string::npos) {
      return secret;
    }
  }
  return {};
}

std::string good_body(const api::RouteName& route) {
  const std::string_view path = route.pattern;
  const auto ends = [&](std::string_view with) { return path.ends_with(with); };
  if (ends("/session")) {
    return R"({"name":"hill_observer","password":"wrong password","device":"phone"})";
  }
  if (ends("/look") || ends("/accept")) {
    return ends("/look")
               ? R"({"token":"forged"})"
               : R"({"token":"forged","name":"Eve","password":"long enough","device":"x"})";
  }
  if (ends("/links")) {
    return R"({"label":"eve","days":3})";
  }
  if (ends("/people/{person}") || ends("/invitations")) {
    return R"({"role":"head_greenkeeper"})";
  }
  if (ends("/entries")) {
    return R"({"form":"baize-entries","version":1,"phone":"0192f0c1-2a3b-7c4d-8e5f-0123456789ab",)"
           R"("sent_at":"2026-05-03T08:00:00.000Z","entries":[]})";
  }
  if (ends("/photos/{photo}")) {
    return photo_test::jpeg();
  }
  return R"({"files":[{"name":"rolls.csv","content":"good"}]})";
}

std::string good_type(const api::RouteName& route) {
  return route.pattern.ends_with("/photos/{photo}") ? "image/jpeg" : "application/json";
}

bool has_body(const api::RouteName& route) {
  return route.method == "POST" || route.method == "PUT";
}
bool changes(const api::RouteName& route) {
  return route.method != "GET";
}

std::string code_of(const api::Response& response) {
  const auto json = nlohmann::json::parse(response.body, nullptr, false);
  return json.is_object() && json.contains("problem") ? json["problem"].value("code", "") : "";
}

} // namespace attack
