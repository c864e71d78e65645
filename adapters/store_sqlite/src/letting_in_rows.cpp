// Invitations and links for reading.
#include "kind.h"
#include "people_rows.h"

namespace baize::store_sqlite {

namespace {

void need_room(Connection& db, const char* table, std::int64_t club, int most) {
  Statement& row = db.use(fmt::format("SELECT count(*) FROM {} WHERE club = ?", table));
  row.start(club);
  const bool room = row.next() && row.integer() < most;
  row.stop();
  if (!room) {
    fail("too_many_open", table, std::to_string(most),
         "fewer that are still good: take some back first");
  }
}

constexpr const char* kInvitation =
    "SELECT i.id, c.id, i.role, i.invited_by, i.made, i.ends FROM invitation i "
    "JOIN club c ON c.key = i.club WHERE ";

services::Invitation read_invitation(Statement& row) {
  services::Invitation one;
  one.id = row.text();
  one.club = row.text();
  one.role = services::parse_role(row.text()).value_or(services::Role::reader);
  one.by = row.text();
  one.made = row.integer();
  one.ends = row.integer();
  return one;
}

constexpr const char* kLink =
    "SELECT l.id, c.id, l.label, l.made_by, l.made, l.ends, "
    "(SELECT count(*) FROM session s WHERE s.link = l.key) FROM reading_link l "
    "JOIN club c ON c.key = l.club WHERE ";

services::ReadingLink read_link(Statement& row) {
  services::ReadingLink one;
  one.id = row.text();
  one.club = row.text();
  one.label = row.text();
  one.by = row.text();
  one.made = row.integer();
  one.ends = row.integer();
  one.opened = row.whole();
  return one;
}

template <class T>
std::vector<T> all(Connection& db, const std::string& sql, const std::string& by,
                   T (*read)(Statement&)) {
  Statement& row = db.use(sql);
  row.start(by);
  std::vector<T> found;
  while (row.next()) {
    found.push_back(read(row));
  }
  return found;
}

template <class T> std::optional<T> first(std::vector<T> found) {
  return found.empty() ? std::nullopt : std::optional<T>(std::move(found.front()));
}

} // namespace

void add_invitation(Connection& db, const services::Invitation& invitation,
                    const std::string& digest, int most) {
  const std::int64_t club = known_club(db, invitation.club);
  need_room(db, "invitation", club, most);
  db.use("INSERT INTO invitation (id, digest, club, role, invited_by, made, ends) "
         "VALUES (?, ?, ?, ?, ?, ?, ?)")
      .run(invitation.id, digest, club, services::name(invitation.role), invitation.by,
           invitation.made, invitation.ends);
}

std::vector<services::Invitation> invitations_of(Connection& db, const std::string& club) {
  return all(db, std::string(kInvitation) + "c.id = ? ORDER BY i.key", club, read_invitation);
}

std::optional<services::Invitation> find_invitation(Connection& db, const std::string& digest) {
  return first(all(db, std::string(kInvitation) + "i.digest = ?", digest, read_invitation));
}

void add_link(Connection& db, const services::ReadingLink& link, const std::string& digest,
              int most) {
  const std::int64_t club = known_club(db, link.club);
  need_room(db, "reading_link", club, most);
  db.use("INSERT INTO reading_link (id, digest, club, label, made_by, made, ends) "
         "VALUES (?, ?, ?, ?, ?, ?, ?)")
      .run(link.id, digest, club, link.label, link.by, link.made, link.ends);
}

std::vector<services::ReadingLink> links_of(Connection& db, const std::string& club) {
  return all(db, std::string(kLink) + "c.id = ? ORDER BY l.key", club, read_link);
}

std::optional<services::ReadingLink> find_link(Connection& db, const std::string& digest) {
  return first(all(db, std::string(kLink) + "l.digest = ?", digest, read_link));
}

bool remove_of_club(Connection& db, const char* table, const std::string& club,
                    const std::string& id) {
  db.use(fmt::format("DELETE FROM {} WHERE id = ? AND club = (SELECT key FROM club WHERE id = ?)",
                     table))
      .run(id, club);
  return sqlite3_changes(db.raw()) > 0;
}

} // namespace baize::store_sqlite
