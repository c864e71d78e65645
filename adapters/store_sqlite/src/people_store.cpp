#include "people_store.h"

#include "people_rows.h"

namespace baize::store_sqlite {

namespace {

class Roll : public services::PeopleStore {
 public:
  Roll(InTransaction write, InTransaction read)
      : write_(std::move(write)), read_(std::move(read)) {}

  Result<std::vector<services::Person>> people() override {
    return told<std::vector<services::Person>>(read_, all_people);
  }
  Result<std::optional<services::Person>> person_named(const std::string& name_key) override {
    return told<std::optional<services::Person>>(
        read_, [&](Connection& db) { return store_sqlite::person_named(db, name_key); });
  }
  Result<void> add_person(const services::Person& person) override {
    return done(write_, [&](Connection& db) { store_sqlite::add_person(db, person); });
  }
  Result<void> set_role(const std::string& person, const std::string& club,
                        std::optional<services::Role> role, bool keep_one) override {
    return done(write_,
                [&](Connection& db) { store_sqlite::set_role(db, person, club, role, keep_one); });
  }
  Result<void> remove_person(const std::string& person) override {
    return done(write_, [&](Connection& db) { store_sqlite::remove_person(db, person); });
  }
  Result<void> set_password(const std::string& person, const std::string& hash) override {
    return done(write_, [&](Connection& db) { store_sqlite::set_password(db, person, hash); });
  }

  Result<void> add_session(const services::SessionOf& session, const std::string& digest) override {
    return done(write_, [&](Connection& db) { store_sqlite::add_session(db, session, digest); });
  }
  Result<std::optional<services::SessionFound>> session(const std::string& digest) override {
    return told<std::optional<services::SessionFound>>(
        read_, [&](Connection& db) { return find_session(db, digest); });
  }
  Result<void> seen(const std::string& session, services::Seconds at) override {
    return done(write_, [&](Connection& db) {
      db.use("UPDATE session SET seen = ? WHERE id = ?").run(at, session);
    });
  }
  Result<std::vector<services::SessionOf>> sessions(const std::string& person) override {
    return told<std::vector<services::SessionOf>>(
        read_, [&](Connection& db) { return sessions_of(db, person); });
  }
  Result<bool> end_session(const std::string& person, const std::string& session) override {
    return told<bool>(
        write_, [&](Connection& db) { return store_sqlite::end_session(db, person, session); });
  }
  Result<void> end_session_of(const std::string& digest) override {
    return done(write_, [&](Connection& db) {
      db.use("DELETE FROM session WHERE digest = ?").run(digest);
    });
  }
  Result<void> tidy(services::Seconds now, services::Seconds seen_after) override {
    return done(write_, [&](Connection& db) { tidy_people(db, now, seen_after); });
  }

  Result<void> add_invitation(const services::Invitation& invitation, const std::string& digest,
                              int most) override {
    return done(write_, [&](Connection& db) {
      store_sqlite::add_invitation(db, invitation, digest, most);
    });
  }
  Result<std::vector<services::Invitation>> invitations(const std::string& club) override {
    return told<std::vector<services::Invitation>>(
        read_, [&](Connection& db) { return invitations_of(db, club); });
  }
  Result<std::optional<services::Invitation>> invitation(const std::string& digest) override {
    return told<std::optional<services::Invitation>>(
        read_, [&](Connection& db) { return find_invitation(db, digest); });
  }
  Result<bool> end_invitation(const std::string& club, const std::string& id) override {
    return told<bool>(write_,
                      [&](Connection& db) { return remove_of_club(db, "invitation", club, id); });
  }
  Result<void> accept(const std::string& digest, const services::Person& person, bool add,
                      services::Seconds now) override {
    return done(write_, [&](Connection& db) { accept_invitation(db, digest, person, add, now); });
  }

  Result<void> add_link(const services::ReadingLink& link, const std::string& digest,
                        int most) override {
    return done(write_, [&](Connection& db) { store_sqlite::add_link(db, link, digest, most); });
  }
  Result<std::vector<services::ReadingLink>> links(const std::string& club) override {
    return told<std::vector<services::ReadingLink>>(
        read_, [&](Connection& db) { return links_of(db, club); });
  }
  Result<std::optional<services::ReadingLink>> link(const std::string& digest) override {
    return told<std::optional<services::ReadingLink>>(
        read_, [&](Connection& db) { return find_link(db, digest); });
  }
  Result<bool> end_link(const std::string& club, const std::string& id) override {
    return told<bool>(write_,
                      [&](Connection& db) { return remove_of_club(db, "reading_link", club, id); });
  }

 private:
  InTransaction write_;
  InTransaction read_;
};

} // namespace

std::unique_ptr<services::PeopleStore> make_people_store(InTransaction write, InTransaction read) {
  return std::make_unique<Roll>(std::move(write), std::move(read));
}

} // namespace baize::store_sqlite
