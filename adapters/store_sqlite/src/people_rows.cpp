// Accounts, their roles and their sessions.
#include "people_rows.h"

#include "kind.h"

namespace baize::store_sqlite {

namespace {

services::Role role_of(Connection& db, const std::string& text) {
  const auto role = services::parse_role(text);
  if (!role) {
    fail("database_damaged", "role", text, "one of those there are", db.path());
  }
  return *role;
}

void read_roles(Connection& db, std::int64_t key, services::Person& person) {
  Statement& row = db.use("SELECT c.id, r.role FROM person_role r JOIN club c ON c.key = r.club "
                          "WHERE r.person = ?");
  row.start(key);
  while (row.next()) {
    std::string club = row.text();
    person.clubs.emplace(std::move(club), role_of(db, row.text()));
  }
}

constexpr const char* kPerson = "SELECT key, id, name, name_key, password_hash, added FROM person ";

/// A row of kPerson.
std::pair<std::int64_t, services::Person> read_person(Statement& row) {
  const std::int64_t key = row.integer();
  services::Person person;
  person.id = row.text();
  person.name = row.text();
  person.name_key = row.text();
  person.password_hash = row.text();
  person.added = row.integer();
  return {key, std::move(person)};
}

template <class T>
std::optional<services::Person> find_person(Connection& db, const char* column, const T& value) {
  Statement& row = db.use(std::string(kPerson) + "WHERE " + column + " = ?");
  row.start(value);
  if (!row.next()) {
    return std::nullopt;
  }
  auto [key, person] = read_person(row);
  row.stop();
  read_roles(db, key, person);
  return person;
}

std::int64_t known_person(Connection& db, const std::string& id) {
  Statement& row = db.use("SELECT key FROM person WHERE id = ?");
  row.start(id);
  std::optional<std::int64_t> key;
  if (row.next()) {
    key = row.integer();
  }
  row.stop();
  if (!key) {
    fail("no_such_person", "person", id, "somebody who has an account here");
  }
  return *key;
}

std::int64_t changed_rows(Connection& db) {
  return sqlite3_changes(db.raw());
}

void give_role(Connection& db, std::int64_t person, const std::string& club, services::Role role) {
  db.use("INSERT INTO person_role (person, club, role) VALUES (?, ?, ?) "
         "ON CONFLICT (person, club) DO UPDATE SET role = excluded.role")
      .run(person, known_club(db, club), services::name(role));
}

void need_a_head(Connection& db, const std::string& club, std::int64_t key) {
  Statement& row = db.use("SELECT count(*) FROM person_role WHERE club = ? AND role = ?");
  row.start(key, services::name(services::Role::head_greenkeeper));
  const bool some = row.next() && row.integer() > 0;
  row.stop();
  if (!some) {
    fail("last_head_greenkeeper", "role", club,
         "such that the club keeps one head greenkeeper; name another one first");
  }
}

} // namespace

std::vector<services::Person> all_people(Connection& db) {
  std::vector<std::pair<std::int64_t, services::Person>> found;
  Statement& row = db.use(std::string(kPerson) + "ORDER BY name_key");
  row.start();
  while (row.next()) {
    found.push_back(read_person(row));
  }
  std::vector<services::Person> all;
  for (auto& [key, person] : found) {
    read_roles(db, key, person);
    all.push_back(std::move(person));
  }
  return all;
}

std::optional<services::Person> person_named(Connection& db, const std::string& name_key) {
  return find_person(db, "name_key", name_key);
}

void add_person(Connection& db, const services::Person& person) {
  if (person_named(db, person.name_key)) {
    fail("name_taken", "name", person.name, "one that nobody here has yet");
  }
  db.use("INSERT INTO person (id, name, name_key, password_hash, added) VALUES (?, ?, ?, ?, ?)")
      .run(person.id, person.name, person.name_key, person.password_hash, person.added);
  const std::int64_t key = db.last_key();
  for (const auto& [club, role] : person.clubs) {
    give_role(db, key, club, role);
  }
}

void set_role(Connection& db, const std::string& person, const std::string& club,
              std::optional<services::Role> role, bool keep_one) {
  const std::int64_t key = known_person(db, person);
  const std::int64_t club_key = known_club(db, club);
  if (role) {
    give_role(db, key, club, *role);
  } else {
    db.use("DELETE FROM person_role WHERE person = ? AND club = ?").run(key, club_key);
  }
  if (keep_one) {
    need_a_head(db, club, club_key);
  }
}

void remove_person(Connection& db, const std::string& person) {
  db.use("DELETE FROM person WHERE key = ?").run(known_person(db, person));
}

void set_password(Connection& db, const std::string& person, const std::string& hash) {
  const std::int64_t key = known_person(db, person);
  db.use("UPDATE person SET password_hash = ? WHERE key = ?").run(hash, key);
  db.use("DELETE FROM session WHERE person = ?").run(key);
}

void add_session(Connection& db, const services::SessionOf& session, const std::string& digest) {
  db.use("INSERT INTO session (id, digest, person, link, device, began, seen, ends) VALUES (?, ?, "
         "(SELECT key FROM person WHERE id = ?), (SELECT key FROM reading_link WHERE id = ?), "
         "?, ?, ?, ?)")
      .run(session.id, digest, session.person, session.link, session.device, session.began,
           session.seen, session.ends);
}

namespace {

/// id, device, began, seen, ends.
services::SessionOf read_session(Statement& row) {
  services::SessionOf session;
  session.id = row.text();
  session.device = row.text();
  session.began = row.integer();
  session.seen = row.integer();
  session.ends = row.integer();
  return session;
}

} // namespace

std::optional<services::SessionFound> find_session(Connection& db, const std::string& digest) {
  Statement& row = db.use("SELECT s.id, s.device, s.began, s.seen, s.ends, coalesce(s.person, 0), "
                          "coalesce(l.digest, '') FROM session s LEFT JOIN reading_link l "
                          "ON l.key = s.link WHERE s.digest = ?");
  row.start(digest);
  if (!row.next()) {
    return std::nullopt;
  }
  services::SessionFound found;
  found.session = read_session(row);
  const std::int64_t person = row.integer();
  const std::string link = row.text();
  row.stop();
  if (person != 0) {
    found.person = find_person(db, "key", person);
  } else {
    found.link = find_link(db, link);
  }
  if (!found.person && !found.link) {
    return std::nullopt;
  }
  found.session.person = found.person ? found.person->id : std::string();
  found.session.link = found.link ? found.link->id : std::string();
  return found;
}

std::vector<services::SessionOf> sessions_of(Connection& db, const std::string& person) {
  Statement& row = db.use("SELECT s.id, s.device, s.began, s.seen, s.ends FROM session s "
                          "JOIN person p ON p.key = s.person WHERE p.id = ? "
                          "ORDER BY s.seen DESC, s.key DESC");
  row.start(person);
  std::vector<services::SessionOf> all;
  while (row.next()) {
    all.push_back(read_session(row));
    all.back().person = person;
  }
  return all;
}

bool end_session(Connection& db, const std::string& person, const std::string& session) {
  db.use("DELETE FROM session WHERE person = (SELECT key FROM person WHERE id = ?1) "
         "AND (?2 = '' OR id = ?2)")
      .run(person, session);
  return changed_rows(db) > 0;
}

void tidy_people(Connection& db, services::Seconds now, services::Seconds seen_after) {
  db.use("DELETE FROM session WHERE ends <= ? OR seen <= ?").run(now, seen_after);
  db.use("DELETE FROM invitation WHERE ends <= ?").run(now);
  db.use("DELETE FROM reading_link WHERE ends <= ?").run(now);
}

void accept_invitation(Connection& db, const std::string& digest, const services::Person& person,
                       bool add, services::Seconds now) {
  const auto invitation = find_invitation(db, digest);
  if (!invitation || invitation->ends <= now) {
    fail("no_such_invitation", "invitation", "",
         "one that was not used, taken back or left until it was over");
  }
  db.use("DELETE FROM invitation WHERE digest = ?").run(digest);
  if (add) {
    add_person(db, person);
  }
  give_role(db, known_person(db, person.id), invitation->club, invitation->role);
}

std::int64_t unsound_people(Connection& db) {
  return db.number("SELECT count(*) FROM person WHERE name_key = '' OR "
                   "password_hash NOT LIKE '$argon2id$v=19$m=%' OR length(password_hash) < 90") +
         db.number("SELECT count(*) FROM session WHERE length(digest) <> 64 OR "
                   "(person IS NULL) = (link IS NULL)");
}

} // namespace baize::store_sqlite
