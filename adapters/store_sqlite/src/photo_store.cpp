#include "photo_store.h"

#include "around.h"
#include "photo_rows.h"

namespace baize::store_sqlite {

namespace {

class Album : public services::PhotoStore {
 public:
  Album(InTransaction write, InTransaction read)
      : write_(std::move(write)), read_(std::move(read)) {}

  units::Result<services::ToldPhotos> photos_told(const std::string& club,
                                                  const std::string& of) override {
    return told<services::ToldPhotos>(read_, [&](Connection& db) {
      return store_sqlite::photos_told(db, known_club(db, club), of);
    });
  }
  units::Result<std::vector<journal::Entry>> photo_told(const std::string& club,
                                                        const std::string& photo) override {
    return told<std::vector<journal::Entry>>(read_, [&](Connection& db) {
      std::vector<journal::Entry> entries;
      entries_of(db, known_club(db, club), photo, entries);
      return entries;
    });
  }
  units::Result<void> keep_picture(const std::string& club, const std::string& photo,
                                   const std::string& sha256, const std::string& content,
                                   const services::Author& author) override {
    return done(write_, [&](Connection& db) {
      known_club(db, club);
      Writing to(db, club, author);
      store_sqlite::keep_picture(to, photo, sha256, content);
    });
  }
  units::Result<std::optional<std::string>> picture(const std::string& club,
                                                    const std::string& photo) override {
    return told<std::optional<std::string>>(
        read_, [&](Connection& db) { return picture_under(db, known_club(db, club), photo); });
  }

 private:
  InTransaction write_;
  InTransaction read_;
};

} // namespace

std::unique_ptr<services::PhotoStore> make_photo_store(InTransaction write, InTransaction read) {
  return std::make_unique<Album>(std::move(write), std::move(read));
}

} // namespace baize::store_sqlite
