// Photos over HTTP: answers against their schemas, headers, and each refusal.
#include "baize/pictures/jpeg.h"
#include "baize/services/hand_in.h"
#include "baize/store_sqlite/store.h"
#include "contract/folder.h"
#include "unit/api_contract.h"
#include "unit/api_fakes.h"
#include "unit/green_samples.h"
#include "unit/photo_samples.h"

#include <gtest/gtest.h>

namespace {

using namespace photo_test;
using nlohmann::json;

const std::string kPath = "/api/v1/clubs/hill/photos/" + kPhoto;

class ApiPhotos : public testing::Test {
 protected:
  void SetUp() override {
    store_ = store_sqlite::SqliteStore::open(folder_.file("club.sqlite3")).value();
    ASSERT_TRUE(store_->keep(samples::records(), {"ann", "2026-05-01T00:00:00Z"}, {}));
    clubs_ = std::make_unique<api::ClubsCache>(*store_, 2);
    context_ = std::unique_ptr<api::Context>(
        new api::Context{*store_, sheets_, *clubs_, [] { return samples::kToday; },
                         [] { return std::string("2026-05-03T08:00:10Z"); },
                         [](std::string_view) { return nullptr; }});
    context_->pictures = &pictures_;
    const services::HandIn given{
        "hill",
        kPhone,
        "2026-05-03T08:00:00Z",
        {visit(1, visit_fields()), roll(2, roll_fields()), photo(3, photo_fields(picture_))}};
    ASSERT_TRUE(
        services::hand_in(*store_, given, {"phone", "2026-05-03T08:00:00Z"}, samples::kToday));
  }
  api::Response ask(const std::string& method, const std::string& target,
                    const std::string& body = "", const std::string& type = "image/jpeg") const {
    api::Request request;
    request.method = method;
    request.target = target;
    request.host = "localhost";
    request.content_type = method == "PUT" ? type : "";
    request.body = body;
    return api::answer(*context_, request);
  }
  static std::string code(const api::Response& response) {
    EXPECT_EQ(contract::faults("Refusal", response.body), "");
    return json::parse(response.body, nullptr, false)["problem"]["code"];
  }
  json photos(const std::string& query) const {
    const auto response = ask("GET", "/api/v1/clubs/hill/photos" + query);
    EXPECT_EQ(response.status, 200);
    EXPECT_EQ(contract::faults("Photos", response.body), "");
    return json::parse(response.body, nullptr, false)["photos"];
  }
  const std::string picture_ = jpeg();
  const pictures::Jpeg pictures_;
  made::FakeSheets sheets_;
  contract::Folder folder_;
  std::unique_ptr<store_sqlite::SqliteStore> store_;
  std::unique_ptr<api::ClubsCache> clubs_;
  std::unique_ptr<api::Context> context_;
};

TEST_F(ApiPhotos, APictureGoesInAndComesOut) {
  EXPECT_EQ(photos("?of=" + kVisit)[0]["here"], false);
  EXPECT_EQ(code(ask("GET", kPath)), "no_such_picture");
  for (int time = 0; time < 2; ++time) {
    const auto kept = ask("PUT", kPath, picture_);
    EXPECT_EQ(kept.status, 200) << kept.body;
    EXPECT_EQ(contract::faults("KeptPicture", kept.body), "");
    EXPECT_EQ(made::header(kept, "Cache-Control"), "no-store");
  }
  const auto got = ask("GET", kPath);
  EXPECT_EQ(got.status, 200);
  EXPECT_EQ(got.body, picture_);
  EXPECT_EQ(got.content_type, "image/jpeg");
  EXPECT_EQ(made::header(got, "X-Content-Type-Options"), "nosniff");
  EXPECT_EQ(made::header(got, "Cache-Control"), "private, max-age=31536000, immutable");
  EXPECT_EQ(made::header(got, "Content-Security-Policy"), "default-src 'none'; sandbox");
  EXPECT_FALSE(ask("HEAD", kPath).send_body);
  EXPECT_EQ(photos("?of=" + kVisit)[0]["here"], true);
  EXPECT_EQ(photos("").size(), 1U);
  EXPECT_EQ(photos("?of=v1"), json::array());
}

TEST_F(ApiPhotos, EachRefusalHasItsStatus) {
  const auto refused = [&](const std::string& path, const std::string& body, int status,
                           const std::string& wanted) {
    const auto response = ask("PUT", path, body);
    EXPECT_EQ(response.status, status) << response.body;
    EXPECT_EQ(code(response), wanted);
  };
  refused(kPath, "", 400, "not_a_jpeg");
  refused(kPath, picture_ + "x", 400, "picture_tells_more");
  refused(kPath, jpeg(4001, 8), 400, "picture_too_large");
  refused(kPath, jpeg(8, 8), 400, "photo_not_as_told");
  refused("/api/v1/clubs/hill/photos/" + id(7), picture_, 404, "no_such_photo");
  refused("/api/v1/clubs/gone/photos/" + kPhoto, picture_, 404, "no_such_club");
  EXPECT_EQ(ask("PUT", kPath, picture_).status, 200);
  refused(kPath, jpeg(8, 8), 409, "photo_differs");
  const auto typed = ask("PUT", kPath, picture_, "application/json");
  EXPECT_EQ(typed.status, 415);
  EXPECT_EQ(code(typed), "not_a_jpeg");
  EXPECT_EQ(code(ask("GET", "/api/v1/clubs/hill/photos/" + id(7))), "no_such_photo");
}

TEST_F(ApiPhotos, ABodyOfOneAndAHalfMebibytes) {
  EXPECT_EQ(api::body_limit("PUT", kPath), 1536U * 1024);
  EXPECT_TRUE(api::waits("PUT", kPath));
  EXPECT_FALSE(api::waits("GET", kPath));
}

TEST_F(ApiPhotos, AServerWithoutPicturesSaysSo) {
  context_->pictures = nullptr;
  EXPECT_EQ(code(ask("PUT", kPath, picture_)), "no_such_service");
  EXPECT_EQ(code(ask("GET", kPath)), "no_such_service");
}

} // namespace
