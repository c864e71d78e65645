// Pictures, and what the entries of phones say of them.
#include "photo_rows.h"

#include "around.h"
#include "sha256.h"

namespace baize::store_sqlite {

namespace {

/// The first column of what a started statement finds.
std::set<std::string> texts(Statement& row) {
  std::set<std::string> all;
  while (row.next()) {
    all.insert(row.text());
  }
  return all;
}

/// The photos that belong or belonged to `of`, or all of them.
std::set<std::string> photos_at(Connection& db, std::int64_t club, const std::string& of) {
  if (of.empty()) {
    Statement& row = db.use(kPhotosSql);
    row.start(club);
    return texts(row);
  }
  Statement& row = db.use("SELECT DISTINCT thing FROM entry WHERE club = ? AND visit = ? AND "
                          "kind = 'photo'");
  row.start(club, of);
  return texts(row);
}

/// The visits and works that photos belong or belonged to.
std::set<std::string> owners(Connection& db, std::int64_t club) {
  Statement& row = db.use(kPhotoOwnersSql);
  row.start(club);
  return texts(row);
}

bool is_here(Connection& db, std::int64_t club, const std::string& photo) {
  Statement& row = db.use("SELECT 1 FROM photo WHERE club = ? AND id = ?");
  row.start(club, photo);
  const bool there = row.next();
  row.stop();
  return there;
}

} // namespace

services::ToldPhotos photos_told(Connection& db, std::int64_t club, const std::string& of) {
  services::ToldPhotos told;
  for (const std::string& photo : photos_at(db, club, of)) {
    entries_of(db, club, photo, told.entries);
    if (is_here(db, club, photo)) {
      told.here.insert(photo);
    }
  }
  for (const std::string& owner : of.empty() ? owners(db, club) : std::set<std::string>{of}) {
    entries_of(db, club, owner, told.entries);
  }
  return told;
}

std::optional<std::string> picture_under(Connection& db, std::int64_t club,
                                         const std::string& photo) {
  Statement& row = db.use("SELECT content FROM photo WHERE club = ? AND id = ?");
  row.start(club, photo);
  std::optional<std::string> content;
  if (row.next()) {
    content = row.text();
  }
  row.stop();
  return content;
}

void keep_picture(Writing& to, const std::string& photo, const std::string& sha256,
                  const std::string& content) {
  const auto there = picture_under(to.db(), to.club(), photo);
  if (there && *there == content) {
    return;
  }
  if (there) {
    fail("photo_differs", "photo", photo,
         "the id of this picture alone: other bytes are kept under it, and pictures never change");
  }
  const std::string found = store_sqlite::sha256(content);
  if (found != sha256) {
    fail("photo_not_as_told", "sha256", found,
         "'" + sha256 + "', the checksum that the entry of photo " + photo + " tells");
  }
  to.db()
      .use("INSERT INTO photo (club, id, change, sha256, content) VALUES (?, ?, ?, ?, ?)")
      .run(to.club(), photo, to.change(), found, Bytes{content});
}

std::int64_t unsound_photos(Connection& db) {
  std::int64_t wrong = 0;
  Statement rows(db.raw(), db.path(), "SELECT sha256, content FROM photo");
  while (rows.next()) {
    const std::string sum = rows.text();
    wrong += sha256(rows.text()) == sum ? 0 : 1;
  }
  return wrong;
}

} // namespace baize::store_sqlite
