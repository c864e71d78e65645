#include "people_world.h"

#include "baize/store_sqlite/maintenance.h"
#include "unit/green_samples.h"

#include <fmt/format.h>
#include <gtest/gtest.h>

namespace people_test {

std::string PlainSecrets::token() {
  return fmt::format("token-{:037}", ++last_);
}
std::string PlainSecrets::identifier() {
  return fmt::format("{:020x}", 0xabcd0000 + ++last_);
}
std::string PlainSecrets::digest(std::string_view token) const {
  return fmt::format("{:064x}", std::hash<std::string_view>()(token));
}
units::Result<std::string> PlainSecrets::password_hash(const std::string& password) {
  if (crowded) {
    return units::refuse("too_many_sign_ins", "sign-in", "x", "later");
  }
  return fmt::format("$argon2id$v=19$m=1,t=1,p=1${:080}${}", 0, password);
}
units::Result<bool> PlainSecrets::password_fits(const std::string& hash,
                                                const std::string& password) {
  if (crowded) {
    return units::refuse("too_many_sign_ins", "sign-in", "x", "later");
  }
  ++verified;
  return hash == *password_hash(password);
}

std::string name_at(const std::string& club, services::Role role) {
  return club + "_" + std::string(services::name(role));
}

TwoClubs::TwoClubs() {
  store = store_sqlite::SqliteStore::open(path()).value();
  people = std::make_unique<services::People>(*store->people(), secrets, [this] { return now; });
  for (const std::string club : {"hill", "moor"}) {
    green::Records records = samples::records();
    records.club.id = club;
    records.club.name = club == "hill" ? "Hill under the oaks" : "Moor by the water";
    store->keep(records, {"ann", "2026-05-01T00:00:00Z"}, {}).value();
    for (const services::RoleRights& line : services::kRoles) {
      people->add(name_at(club, line.role), kPassword, club, line.role).value();
    }
    links[club] = people->make_link(club, "committee of " + club, 30, "ann").value().token;
  }
}

std::string TwoClubs::sign_in(const std::string& name, const std::string& address) {
  return people->sign_in(name, kPassword, "phone", address).value().token;
}

services::Person TwoClubs::person(const std::string& name) {
  return kept().person_named(services::name_key(name)).value().value();
}

std::string TwoClubs::contents() const {
  return store_sqlite::examine(path(), samples::kToday).value().sha256;
}

} // namespace people_test
