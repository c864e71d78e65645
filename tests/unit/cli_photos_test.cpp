// Photos on the command line, on a real store: brought in by a file, written out.
#include "baize/cli/run.h"
#include "baize/entries_json/entries.h"
#include "baize/pictures/jpeg.h"
#include "baize/store_sqlite/store.h"
#include "contract/folder.h"
#include "unit/green_samples.h"
#include "unit/photo_samples.h"

#include <gtest/gtest.h>

#include <filesystem>
#include <set>
#include <sstream>

namespace {

using namespace photo_test;
namespace fs = std::filesystem;

class CliPhotos : public testing::Test {
 protected:
  CliPhotos() {
    ports_.open_store = [](const std::string& path, bool create) {
      store_sqlite::Options options;
      options.create = create;
      return store_sqlite::SqliteStore::open(path, options).map([](auto store) {
        return std::unique_ptr<services::Store>(std::move(store));
      });
    };
    ports_.pictures = &pictures_;
    ports_.today = samples::kToday;
    ports_.now = "2026-05-03T09:00:00Z";
    ports_.author = "ann";
    ports_.default_database = folder_.file("club.sqlite3");
    green::Records club = samples::records();
    club.visits.clear();
    EXPECT_TRUE(ports_.open_store(ports_.default_database, true)
                    .value()
                    ->keep(club, {"ann", "2026-05-01T00:00:00Z"}, {}));
  }
  int run(const std::vector<std::string>& words) {
    std::vector<const char*> all{"baize"};
    for (const std::string& word : words) {
      all.push_back(word.c_str());
    }
    std::ostringstream out;
    std::ostringstream err;
    const int code = cli::run(static_cast<int>(all.size()), all.data(), ports_, out, err);
    out_ = out.str();
    err_ = err.str();
    return code;
  }
  int import_file(std::vector<entries_json::Picture> pictures) {
    const entries_json::Package package{kPhone,
                                        "2026-05-03T08:00:00Z",
                                        {visit(1, visit_fields()), roll(2, roll_fields()),
                                         photo(3, photo_fields(picture_)),
                                         photo(4, photo_fields(other_), {}, kSecond)},
                                        {},
                                        std::move(pictures)};
    contract::write_bytes(folder_.file("phone.json"), entries_json::write_package(package));
    return run({"import", folder_.file("phone.json")});
  }
  std::set<std::string> files(const std::string& folder) const {
    std::set<std::string> names;
    for (const auto& entry : fs::directory_iterator(folder_.file(folder))) {
      names.insert(entry.path().filename().string());
    }
    return names;
  }
  const std::string kSecond = id(900042);
  const std::string kFile = "2026-05-03_7_" + kPhoto + ".jpg";
  const std::string picture_ = jpeg();
  const std::string other_ = jpeg(40, 40);
  const pictures::Jpeg pictures_;
  contract::Folder folder_;
  cli::Ports ports_;
  std::string out_;
  std::string err_;
};

TEST_F(CliPhotos, AFileOfAPhoneBringsItsPictures) {
  ASSERT_EQ(import_file({{kPhoto, picture_}, {kSecond, other_}}), 0) << err_ << out_;
  EXPECT_NE(out_.find("4 entries, 2 photos; 1 records new"), std::string::npos) << out_;
  ASSERT_EQ(import_file({{kPhoto, picture_}}), 0) << "the same again";
  ASSERT_EQ(run({"photos", "--out", folder_.file("out")}), 0) << err_;
  EXPECT_EQ(contract::bytes_of(folder_.file("out/" + kFile)), picture_);
  EXPECT_EQ(files("out").size(), 3U);
  EXPECT_NE(out_.find("2 photos written to"), std::string::npos) << out_;
}

TEST_F(CliPhotos, APictureThatIsNoneIsToldAndTheRestIsKept) {
  EXPECT_EQ(import_file({{kPhoto, other_}, {kSecond, other_}}), 1);
  EXPECT_NE(out_.find("photo " + kPhoto + ": sha256 is '"), std::string::npos) << out_;
  ASSERT_EQ(run({"photos", "--out", folder_.file("out")}), 0) << err_;
  EXPECT_EQ(files("out"),
            (std::set<std::string>{"2026-05-03_7_" + kSecond + ".jpg", "photos.csv"}));
  EXPECT_NE(out_.find("1 photo written to"), std::string::npos);
  EXPECT_NE(out_.find("1 are still on their phones"), std::string::npos);
  const std::string list = contract::bytes_of(folder_.file("out/photos.csv"));
  EXPECT_EQ(list.substr(0, list.find("\r\n")),
            "file,day,green,visit,work,taken,by,note,size_bytes,sha256");
  EXPECT_NE(list.find("\r\n,2026-05-03,7," + kVisit), std::string::npos) << "without a file";
}

TEST_F(CliPhotos, NoFileIsReplacedAndNothingIsHalfDone) {
  ASSERT_EQ(import_file({{kPhoto, picture_}, {kSecond, other_}}), 0);
  fs::create_directory(folder_.file("out"));
  contract::write_bytes(folder_.file("out/" + kFile), "mine");
  EXPECT_EQ(run({"photos", "--out", folder_.file("out")}), 3);
  EXPECT_NE(err_.find(kFile), std::string::npos) << err_;
  EXPECT_EQ(files("out"), std::set<std::string>{kFile});
  EXPECT_EQ(contract::bytes_of(folder_.file("out/" + kFile)), "mine");
  // The list cannot be written: the pictures before it are taken away again.
  fs::create_directories(folder_.file("half/photos.csv.part"));
  EXPECT_EQ(run({"photos", "--out", folder_.file("half")}), 3);
  EXPECT_TRUE(files("half").empty());
}

TEST_F(CliPhotos, WithoutAPhotoTheListIsEmpty) {
  ASSERT_EQ(run({"photos", "--out", folder_.file("out"), "--json"}), 0);
  EXPECT_EQ(out_, "{\n  \"photos\": []\n}\n");
  EXPECT_EQ(run({"photos", "--out", folder_.file("out2"), "--club", "lake"}), 4);
  EXPECT_EQ(run({"photos"}), 2);
}

} // namespace
