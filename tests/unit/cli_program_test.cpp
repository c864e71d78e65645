// The program itself, from files to database to answers and back to files.
#include "contract/folder.h"

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include <array>
#include <cstdio>
#include <filesystem>
#include <sys/wait.h>

namespace {

namespace fs = std::filesystem;
using Json = nlohmann::json;

const std::string kClubs = BAIZE_SOURCE_DIR "/tests/clubs/";

class Program : public testing::Test {
 protected:
  /// Runs the program with a database of the test's own; `out` and `err` together.
  int run(const std::string& arguments) {
    const std::string line = "BAIZE_DB='" + database() + "' '" BAIZE_PROGRAM "' " + arguments +
                             " 2>'" + folder.file("err") + "'";
    out.clear();
    FILE* pipe = ::popen(line.c_str(), "r");
    std::array<char, 4096> piece{};
    for (std::size_t got = 0; (got = std::fread(piece.data(), 1, piece.size(), pipe)) > 0;) {
      out.append(piece.data(), got);
    }
    const int status = ::pclose(pipe);
    err = contract::bytes_of(folder.file("err"));
    return WIFEXITED(status) ? WEXITSTATUS(status) : -1;
  }
  Json json(const std::string& arguments) {
    EXPECT_EQ(run(arguments + " --json"), 0) << arguments << "\n" << err;
    return Json::parse(out);
  }
  std::string database() const { return folder.file("deep/club.sqlite3"); }

  contract::Folder folder;
  std::string out;
  std::string err;
};

TEST_F(Program, BringsAClubInAndGivesItBackByteForByte) {
  const std::string club = kClubs + "larch_hollow";
  EXPECT_EQ(run("import '" + club + "' --dry-run"), 0) << out << err;
  EXPECT_FALSE(fs::exists(database())) << "a dry run makes nothing";
  const Json first = json("import '" + club + "'");
  EXPECT_GT(first["receipt"]["added"], 10);
  const Json again = json("import '" + club + "'");
  EXPECT_EQ(again["receipt"]["added"], 0);
  EXPECT_EQ(again["receipt"]["corrected"], 0);
  EXPECT_EQ(again["receipt"]["unchanged"], first["receipt"]["added"]);

  ASSERT_EQ(run("export '" + folder.file("out") + "'"), 0) << err;
  int files = 0;
  for (const auto& entry : fs::directory_iterator(club)) {
    const std::string name = entry.path().filename().string();
    EXPECT_EQ(contract::bytes_of(folder.file("out/" + name)),
              contract::bytes_of(entry.path().string()))
        << name;
    ++files;
  }
  EXPECT_EQ(files, 9);
}

TEST_F(Program, AnswersAboutTheClub) {
  ASSERT_EQ(run("import '" + kClubs + "larch_hollow'"), 0) << out << err;
  EXPECT_EQ(json("clubs")["clubs"][0]["id"], "larch_hollow");
  const Json visits = json("visits");
  EXPECT_GT(visits["total"], 0);
  EXPECT_EQ(visits["visits"][0]["source"]["file"], "rolls.csv");
  EXPECT_EQ(json("season --green 1 --year 2025")["green"], "1");
  EXPECT_FALSE(json("recovery")["works"].empty());
  EXPECT_EQ(run("greens"), 0);
  EXPECT_NE(out.find("1. Grün (Mühle)"), std::string::npos);
  EXPECT_EQ(run("season --green 99 --year 2025"), 4);
  EXPECT_EQ(run("clubs --db '" + folder.file("none.sqlite3") + "'"), 3);
  EXPECT_NE(err.find("none.sqlite3"), std::string::npos);
  EXPECT_FALSE(fs::exists(folder.file("none.sqlite3")));
}

TEST_F(Program, RefusesAwkwardFilesWholeAndWithTheirPlaces) {
  int clubs = 0;
  for (const auto& entry : fs::directory_iterator(kClubs)) {
    const std::string name = entry.path().filename().string();
    if (name.rfind("awkward", 0) != 0) {
      continue;
    }
    ++clubs;
    EXPECT_EQ(run("import '" + entry.path().string() + "'"), 1) << name << out;
    EXPECT_NE(out.find(" line "), std::string::npos) << name << out;
    EXPECT_NE(out.find("Nothing was kept"), std::string::npos) << name;
    EXPECT_FALSE(fs::exists(database())) << name;
  }
  EXPECT_GE(clubs, 4);
}

TEST_F(Program, BringsInWeatherWithTheRecords) {
  const std::string weather =
      BAIZE_SOURCE_DIR "/tests/reference/data/weather_formats/USW00003870_1980_excerpt.dly";
  const Json told = json("import '" + kClubs + "larch_hollow' --weather '" + weather + "'");
  EXPECT_EQ(told["files"].back()["name"], "USW00003870_1980_excerpt.dly");
  EXPECT_GT(told["files"].back()["records"], 20);
  EXPECT_EQ(run("weather '" + weather + "'"), 0) << err;
  EXPECT_NE(out.find("format=ghcn_dly"), std::string::npos);
}

// A file that a phone saved: into the database, and out again among the club's own files.
TEST_F(Program, TakesAPhonesFileAndGivesItsVisitsBack) {
  ASSERT_EQ(run("import '" + kClubs + "larch_hollow'"), 0);
  const std::string id = "0190a0b0-0000-7000-8000-00000000000";
  const Json visit{{"club", "larch_hollow"}, {"green", "1"},    {"observer", "ab"},
                   {"day", "2026-05-03"},    {"from", "06:45"}, {"done", true}};
  const Json roll{{"visit", id + "8"}, {"spot", "A"},   {"direction", "out"},
                  {"order", 1},        {"distance", 3}, {"score", 8}};
  Json file{{"form", "baize-entries"},
            {"version", 1},
            {"phone", id + "9"},
            {"sent_at", "2026-05-03T05:00:00Z"},
            {"entries", Json::array()}};
  const auto add = [&](const char* number, const char* kind, const char* thing, const Json& set) {
    file["entries"].push_back({{"id", id + number},
                               {"phone", id + "9"},
                               {"at", "2026-05-03T04:50:00.000Z"},
                               {"by", "ab"},
                               {"kind", kind},
                               {"thing", id + thing},
                               {"set", set},
                               {"over", Json::array()}});
  };
  add("1", "visit", "8", visit);
  add("2", "roll", "7", roll);
  const std::string path = folder.file("phone.json");
  contract::write_bytes(path, file.dump());
  EXPECT_EQ(run("import '" + path + "' --dry-run"), 0) << err;
  EXPECT_NE(out.find("2 entries can be read"), std::string::npos) << out;
  const Json receipt = json("import '" + path + "'");
  EXPECT_EQ(receipt["kept"].size(), 2U);
  EXPECT_EQ(receipt["visits"][0]["state"], "accepted") << receipt.dump();
  EXPECT_EQ(run("import '" + path + "'"), 0) << "again, as a table";
  EXPECT_NE(out.find("0 records new, 0 corrected"), std::string::npos) << out;
  ASSERT_EQ(run("export '" + folder.file("out") + "'"), 0) << err;
  const std::string rolls = contract::bytes_of(folder.file("out/rolls.csv"));
  EXPECT_NE(rolls.find("03.05.2026;06:45;;ab;1;;A;out;1;"), std::string::npos) << rolls;
  EXPECT_NE(rolls.find(";8;;;" + id + "8"), std::string::npos) << rolls;
  EXPECT_EQ(run("doctor"), 0) << out;
  contract::write_bytes(path, "{\"form\": \"baize-entries\"}");
  EXPECT_NE(run("import '" + path + "'"), 0);
  EXPECT_NE(err.find("the entries: version is missing"), std::string::npos) << err;
}

TEST_F(Program, BacksUpExaminesAndRestores) {
  ASSERT_EQ(run("import '" + kClubs + "larch_hollow'"), 0);
  const std::string copy = "'" + folder.file("copy.sqlite3") + "'";
  EXPECT_EQ(run("backup " + copy), 0) << err;
  EXPECT_EQ(run("backup " + copy), 3) << "a backup replaces nothing";
  EXPECT_EQ(run("doctor " + copy), 0) << out;
  EXPECT_EQ(run("restore " + copy), 3);
  EXPECT_EQ(run("restore " + copy + " --force"), 0) << err;
  EXPECT_TRUE(fs::exists(database() + ".replaced"));
  EXPECT_EQ(json("clubs")["clubs"].size(), 1U);
  contract::write_bytes(database(), "no database at all, but long enough to be looked at");
  EXPECT_EQ(run("doctor"), 3);
  EXPECT_EQ(run("clubs"), 3);
  EXPECT_EQ(run("restore " + copy + " --force"), 0) << err;
  EXPECT_EQ(run("clubs"), 0);
}

// Others could reach that address, and nobody could sign in.
TEST_F(Program, ServesNoNetworkBeforeSomebodyHasAnAccount) {
  ASSERT_EQ(run("import '" + kClubs + "larch_hollow'"), 0) << out << err;
  for (const std::string how :
       {"--address 0.0.0.0", "--people", "--tls --address 127.0.0.1 --people",
        "--behind-proxy --name greens.example"}) {
    EXPECT_EQ(run("serve --port 0 " + how), 3) << how;
    EXPECT_NE(err.find("baize people add"), std::string::npos) << err;
  }
  EXPECT_EQ(run("serve --port 0 --people --anyone-may-read-and-write"), 2);
  EXPECT_EQ(run("people add Bea --role owner --password-from-input < /dev/null"), 1);
  EXPECT_EQ(run("people add Bea --role reader --password-from-input < /dev/null"), 1);
  EXPECT_NE(err.find("password"), std::string::npos) << err;
  contract::write_bytes(folder.file("password"), "nine red flags\n");
  EXPECT_EQ(
      run("people add Bea --role reader --password-from-input < '" + folder.file("password") + "'"),
      0)
      << err;
  const Json people = json("people list");
  EXPECT_EQ(people["people"][0]["name"], "Bea");
  ASSERT_EQ(run("doctor"), 0) << out;
  EXPECT_NE(out.find("no head greenkeeper"), std::string::npos) << out;
}

} // namespace
