#pragma once

#include "baize/services/people.h"
#include "baize/store_sqlite/store.h"
#include "contract/folder.h"

#include <atomic>
#include <map>
#include <memory>
#include <string>

/// Two clubs in one database, each with somebody in every role and a link.
namespace people_test {

using namespace baize;

/// Tokens that count up; hashes that can be read. Fast, and never outside tests.
class PlainSecrets : public services::Secrets {
 public:
  std::string token() override;
  std::string identifier() override;
  std::string digest(std::string_view token) const override;
  units::Result<std::string> password_hash(const std::string& password) override;
  units::Result<bool> password_fits(const std::string& hash, const std::string& password) override;
  std::atomic<int> verified{0}; ///< times a password was tried
  std::atomic<bool> crowded{false};

 private:
  std::atomic<int> last_{0};
};

inline const std::string kPassword = "seven green pins";

class TwoClubs {
 public:
  TwoClubs();
  TwoClubs(const TwoClubs&) = delete;
  TwoClubs& operator=(const TwoClubs&) = delete;

  std::string path() const { return folder_.file("clubs.sqlite3"); }
  services::PeopleStore& kept() { return *store->people(); }
  /// Signs in; the token.
  std::string sign_in(const std::string& name, const std::string& address = "10.0.0.1");
  services::Person person(const std::string& name);
  /// Of every row in the database.
  std::string contents() const;

  services::Seconds now = 1'790'000'000;
  PlainSecrets secrets;
  std::unique_ptr<store_sqlite::SqliteStore> store;
  std::unique_ptr<services::People> people;
  /// By club: the token of a link for reading.
  std::map<std::string, std::string> links;

 private:
  contract::Folder folder_;
};

/// Names at a club: "hill_observer" ...
std::string name_at(const std::string& club, services::Role role);

} // namespace people_test
