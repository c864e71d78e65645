// The command line's people, on a real database with secrets that only pretend.
#include "baize/cli/run.h"
#include "people_world.h"

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include <sstream>

namespace {

using namespace baize;
using people_test::TwoClubs;

class CliPeople : public testing::Test {
 protected:
  CliPeople() {
    ports_.open_store = [this](const std::string& path,
                               bool) -> units::Result<std::unique_ptr<services::Store>> {
      auto store = store_sqlite::SqliteStore::open(path);
      if (!store) {
        return tl::unexpected(store.error());
      }
      return std::unique_ptr<services::Store>(std::move(*store));
    };
    ports_.secrets = &world_.secrets;
    ports_.seconds = [this] { return world_.now; };
    ports_.read_password = [this](bool from_input) -> units::Result<std::string> {
      asked_ = from_input ? "input" : "terminal";
      return password_;
    };
    ports_.scan_code = [](const std::string& text) { return "<svg>" + text + "</svg>"; };
    ports_.author = "tess";
    ports_.default_database = world_.path();
  }
  int run(const std::vector<std::string>& words) {
    std::ostringstream out;
    std::ostringstream err;
    std::vector<const char*> arguments{"baize", "people"};
    for (const std::string& word : words) {
      arguments.push_back(word.c_str());
    }
    const int code =
        cli::run(static_cast<int>(arguments.size()), arguments.data(), ports_, out, err);
    out_ = out.str();
    err_ = err.str();
    return code;
  }
  bool refused(const std::string& words) const { return err_.find(words) != std::string::npos; }
  std::string sign_in(const std::string& name, const std::string& password) {
    const auto in = world_.people->sign_in(name, password, "phone", "1.1.1.1");
    return in ? "in" : in.error().code;
  }

  TwoClubs world_;
  cli::Ports ports_;
  std::string password_ = "nine red flags";
  std::string asked_;
  std::string out_;
  std::string err_;
};

TEST_F(CliPeople, AddsAndLists) {
  EXPECT_EQ(run({"add", "Bea", "--role", "observer", "--club", "hill"}), 0) << err_;
  EXPECT_EQ(out_, "Bea is observer at hill.\n");
  EXPECT_EQ(asked_, "terminal");
  EXPECT_EQ(sign_in("bea", "nine red flags"), "in");
  EXPECT_EQ(run({"list"}), 0);
  EXPECT_NE(out_.find("Bea"), std::string::npos);
  EXPECT_NE(out_.find("hill: observer"), std::string::npos);
  EXPECT_EQ(run({"list", "--json", "--club", "hill"}), 0);
  const auto json = nlohmann::json::parse(out_);
  ASSERT_EQ(json["people"].size(), 5U);
  EXPECT_EQ(json["people"][0]["name"], "Bea");
  EXPECT_EQ(json["people"][0]["sessions"].size(), 1U);
  EXPECT_EQ(out_.find("argon2id"), std::string::npos) << "no hash leaves the database";
  EXPECT_EQ(run({"list", "--csv"}), 0);
  EXPECT_EQ(out_.substr(0, out_.find('\n') - 1), "name,clubs,sessions,last_seen");
}

TEST_F(CliPeople, RefusesInOneSentence) {
  EXPECT_EQ(run({"add", "Bea", "--role", "observer"}), 2) << "two clubs, and none named";
  EXPECT_EQ(run({"add", "Bea", "--role", "owner", "--club", "hill"}), 1);
  EXPECT_TRUE(refused("reader, observer, agronomist or head_greenkeeper"));
  EXPECT_EQ(run({"add", "Bea", "--role", "reader", "--club", "lake"}), 4);
  EXPECT_EQ(asked_, "") << "no password is asked for what cannot be";
  EXPECT_EQ(run({"add", "HILL_READER", "--role", "reader", "--club", "hill"}), 1);
  EXPECT_TRUE(refused("nobody here has yet"));
  password_ = "short";
  EXPECT_EQ(run({"add", "Bea", "--role", "reader", "--club", "hill"}), 1);
  EXPECT_TRUE(refused("10 characters or more"));
  EXPECT_FALSE(refused("short")) << "a password is never said back";
  for (const std::string verb : {"remove", "password", "cut-off"}) {
    EXPECT_EQ(run({verb, "Nobody"}), 4) << verb;
  }
  EXPECT_EQ(run({"add", "Bea", "--password", "nine red flags"}), 2) << "no such option";
}

TEST_F(CliPeople, RolesPasswordsCutOffAndRemove) {
  EXPECT_EQ(run({"role", "hill_reader", "--role", "observer", "--club", "moor"}), 0) << err_;
  EXPECT_EQ(world_.person("hill_reader").clubs.size(), 2U);
  EXPECT_EQ(run({"role", "hill_reader", "--role", "none", "--club", "hill"}), 0);
  EXPECT_EQ(world_.person("hill_reader").clubs.size(), 1U);
  const std::string token = world_.sign_in("hill_reader");
  EXPECT_EQ(run({"cut-off", "hill_reader"}), 0);
  EXPECT_EQ(world_.people->caller(token).value().kind, services::Caller::Kind::nobody);
  EXPECT_EQ(run({"cut-off", "hill_reader"}), 4) << "there is none any more";
  EXPECT_EQ(run({"password", "hill_reader", "--password-from-input"}), 0);
  EXPECT_EQ(asked_, "input");
  EXPECT_EQ(sign_in("hill_reader", people_test::kPassword), "wrong_sign_in");
  EXPECT_EQ(sign_in("hill_reader", "nine red flags"), "in");
  EXPECT_EQ(run({"remove", "hill_reader"}), 0);
  EXPECT_EQ(sign_in("hill_reader", "nine red flags"), "wrong_sign_in");
}

TEST_F(CliPeople, InvitesAndLinks) {
  const contract::Folder folder;
  const std::string picture = folder.file("code.svg");
  EXPECT_EQ(run({"invite", "--role", "observer", "--club", "hill", "--at",
                 "https://greens.example/", "--scan-code", picture}),
            0)
      << err_;
  const std::string url = out_.substr(0, out_.find('\n'));
  ASSERT_EQ(url.rfind("https://greens.example/#/+join/", 0), 0U) << url;
  EXPECT_EQ(contract::bytes_of(picture), "<svg>" + url + "</svg>");
  const std::string token = url.substr(url.rfind('/') + 1);
  EXPECT_TRUE(world_.people->accept(token, "Bea", "nine red flags", "phone", "1.1.1.1"));
  EXPECT_EQ(run({"link", "--label", "Committee", "--days", "9", "--club", "hill", "--json"}), 0);
  const std::string link = nlohmann::json::parse(out_)["url"];
  EXPECT_TRUE(world_.people->open_link(link.substr(link.rfind('/') + 1), "phone", "1.1.1.1"));
  EXPECT_EQ(run({"link", "--label", "Committee", "--days", "0", "--club", "hill"}), 1);
  EXPECT_EQ(run({"invite", "--role", "observer", "--club", "hill", "--scan-code",
                 folder.file("no/such/place.svg")}),
            3);
}

} // namespace
