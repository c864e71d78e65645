// Photos on a real store: entry first, bytes after it.
#include "baize/pictures/jpeg.h"
#include "baize/services/hand_in.h"
#include "baize/services/photos.h"
#include "baize/store_sqlite/store.h"
#include "contract/folder.h"
#include "unit/green_samples.h"
#include "unit/photo_samples.h"

#include <gtest/gtest.h>

namespace {

using namespace photo_test;
using services::ThingState;

class PhotosTest : public testing::Test {
 protected:
  void SetUp() override {
    auto opened = store_sqlite::SqliteStore::open(folder_.file("club.sqlite3"));
    ASSERT_TRUE(opened);
    store_ = std::move(*opened);
    green::Records club = samples::records();
    club.visits.clear();
    ASSERT_TRUE(store_->keep(club, {"ann", "2026-05-01T00:00:00Z"}, {}));
  }
  services::HandInReceipt hand_in(std::vector<Entry> entries) {
    auto told =
        services::hand_in(*store_, {"hill", kPhone, "2026-05-03T08:00:00Z", std::move(entries)},
                          {"phone", "2026-05-03T08:00:30Z"}, samples::kToday);
    EXPECT_TRUE(told) << units::sentence(told.error());
    return told ? *told : services::HandInReceipt{};
  }
  std::string keep(const std::string& bytes, const std::string& photo = kPhoto,
                   const std::string& club = "hill") {
    const auto kept = services::keep_photo(*store_->photos(), pictures_, club, photo, bytes,
                                           {"ann", "2026-05-03T08:01:00Z"});
    return kept ? "fine" : kept.error().code;
  }
  std::string picture() {
    const auto bytes = services::picture_of(*store_->photos(), "hill", kPhoto);
    return bytes ? *bytes : bytes.error().code;
  }
  std::vector<services::PhotoLine> photos(const std::string& of = kVisit) {
    return services::photos_of(*store_->photos(), "hill", of).value();
  }
  static std::vector<Entry> whole_visit() {
    return {visit(1, visit_fields()), roll(2, roll_fields())};
  }
  const std::string picture_ = jpeg();
  const pictures::Jpeg pictures_;
  contract::Folder folder_;
  std::unique_ptr<store_sqlite::SqliteStore> store_;
};

TEST_F(PhotosTest, TheEntryFirstAndThenItsBytes) {
  EXPECT_EQ(keep(picture_), "no_such_photo");
  hand_in(whole_visit());
  const auto told = hand_in({photo(3, photo_fields(picture_))});
  ASSERT_EQ(told.others.size(), 1U);
  EXPECT_EQ(told.others[0].kind, Kind::photo);
  EXPECT_EQ(told.others[0].state, ThingState::accepted);
  ASSERT_EQ(photos().size(), 1U);
  EXPECT_FALSE(photos()[0].here);
  EXPECT_EQ(photos()[0].photo.by, "ann");
  EXPECT_EQ(photos()[0].photo.taken, "2026-05-03T07:09:12.000Z");
  EXPECT_EQ(picture(), "no_such_picture");
  EXPECT_EQ(keep(picture_), "fine");
  EXPECT_TRUE(photos()[0].here);
  EXPECT_EQ(picture(), picture_);
}

TEST_F(PhotosTest, TheSameAgainChangesNothing) {
  hand_in(whole_visit());
  hand_in({photo(3, photo_fields(picture_))});
  EXPECT_EQ(keep(picture_), "fine");
  const auto before = *store_->change_number();
  EXPECT_EQ(keep(picture_), "fine");
  EXPECT_EQ(*store_->change_number(), before);
}

TEST_F(PhotosTest, OtherBytesAreRefused) {
  hand_in(whole_visit());
  hand_in({photo(3, photo_fields(picture_))});
  const std::string other = jpeg(40, 40);
  EXPECT_EQ(keep(other), "photo_not_as_told");
  EXPECT_EQ(keep("no picture"), "not_a_jpeg");
  EXPECT_EQ(keep(with_part(picture_, 0xE1, "Exif")), "picture_tells_more");
  EXPECT_EQ(picture(), "no_such_picture") << "nothing of it is kept";
  EXPECT_EQ(keep(picture_), "fine");
  EXPECT_EQ(keep(other), "photo_differs");
  hand_in({photo(4, photo_fields(other), {3})});
  EXPECT_EQ(keep(other), "photo_differs") << "pictures never change, whatever an entry says";
  EXPECT_EQ(picture(), picture_);
}

TEST_F(PhotosTest, APhotoWaitsForItsVisitAndNoVisitForItsPhoto) {
  auto told = hand_in({photo(3, photo_fields(picture_))});
  ASSERT_EQ(told.others.size(), 1U);
  EXPECT_EQ(told.others[0].state, ThingState::refused);
  samples::expect_only(told.others[0].problems, "no_such_visit");
  EXPECT_EQ(keep(picture_), "fine") << "its bytes wait with it";
  EXPECT_TRUE(photos().empty());
  told = hand_in(whole_visit());
  EXPECT_EQ(told.visits[0].state, ThingState::accepted);
  EXPECT_EQ(told.others[0].state, ThingState::accepted);
  EXPECT_EQ(photos().size(), 1U);
  hand_in({photo(4, {{"bytes", text("many")}}, {3})});
  told = hand_in({roll(5, {{"score", number(9)}}, {2})});
  EXPECT_EQ(told.visits[0].state, ThingState::accepted);
  EXPECT_EQ(told.others[0].state, ThingState::refused);
  EXPECT_TRUE(photos().empty());
}

TEST_F(PhotosTest, OfAWork) {
  const std::string work = id(900051);
  hand_in({entry(1, Kind::work, work,
                 {{"club", text("hill")},
                  {"day", text("2026-05-03")},
                  {"done_as", text("coring")},
                  {"greens", Value{Value::List{text("7")}}}})});
  auto set = photo_fields(picture_);
  set[0] = {"work", text(work)};
  EXPECT_EQ(hand_in({photo(2, set)}).others.back().state, ThingState::accepted);
  ASSERT_EQ(photos(work).size(), 1U);
  EXPECT_EQ(photos(work)[0].photo.work, work);
  EXPECT_TRUE(photos().empty());
  EXPECT_EQ(photos("").size(), 1U);
}

TEST_F(PhotosTest, AVisitOfPhotosAloneIsNoRecordAndNoFault) {
  auto told = hand_in({visit(1, visit_fields()), photo(3, photo_fields(picture_))});
  EXPECT_EQ(told.visits[0].state, ThingState::accepted);
  EXPECT_TRUE(store_->load("hill")->visits.empty());
  ASSERT_EQ(photos().size(), 1U);
  EXPECT_EQ(units::iso(photos()[0].day), "2026-05-03");
  EXPECT_EQ(photos()[0].green, "7");
  told = hand_in({roll(2, roll_fields())});
  EXPECT_EQ(store_->load("hill")->visits.size(), 1U);
  told = hand_in({roll(4, {{"removed", flag(true)}}, {2})});
  EXPECT_EQ(told.visits[0].state, ThingState::accepted);
  EXPECT_TRUE(store_->load("hill")->visits.empty()) << "without its only roll it is none again";
  told = hand_in({photo(5, {{"removed", flag(true)}}, {3})});
  EXPECT_EQ(told.visits[0].state, ThingState::refused) << "neither roll nor photo";
}

TEST_F(PhotosTest, WhatWasTakenOutIsShownNowhere) {
  hand_in(whole_visit());
  hand_in({photo(3, photo_fields(picture_))});
  keep(picture_);
  hand_in({photo(4, {{"removed", flag(true)}}, {3})});
  EXPECT_TRUE(photos().empty());
  EXPECT_EQ(picture(), "no_such_photo");
  hand_in({photo(5, {{"removed", flag(false)}}, {4})});
  EXPECT_EQ(picture(), picture_) << "taken back: it is there again";
  hand_in({visit(6, {{"removed", flag(true)}}, {1})});
  EXPECT_TRUE(photos("").empty()) << "with its visit";
}

TEST_F(PhotosTest, ByTheTimeTheyWereTaken) {
  hand_in(whole_visit());
  auto later = photo_fields(picture_);
  later[1].value = text("2026-05-03T07:20:00.000Z");
  later.push_back({"note", text("north edge")});
  hand_in({photo(3, later, {}, id(900040)), photo(4, photo_fields(picture_))});
  ASSERT_EQ(photos().size(), 2U);
  EXPECT_EQ(photos()[0].photo.id, kPhoto);
  EXPECT_EQ(photos()[1].photo.note, "north edge");
}

TEST_F(PhotosTest, AnotherClubsPhotoIsNone) {
  green::Records moor = samples::records();
  moor.club.id = "moor";
  ASSERT_TRUE(store_->keep(moor, {"bea", "2026-05-01T00:00:00Z"}, {}));
  hand_in(whole_visit());
  hand_in({photo(3, photo_fields(picture_))});
  EXPECT_EQ(keep(picture_, kPhoto, "moor"), "no_such_photo");
  EXPECT_EQ(keep(picture_, kPhoto, "lake"), "no_such_club");
  EXPECT_EQ(keep(picture_, kVisit), "no_such_photo") << "a visit is no photo";
  keep(picture_);
  EXPECT_FALSE(services::picture_of(*store_->photos(), "moor", kPhoto));
}

} // namespace
