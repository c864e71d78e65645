// Who may do what: the table, and what a caller makes of it.
#include "baize/services/roles.h"
#include "baize/services/tries.h"

#include <gtest/gtest.h>

namespace baize::services {
namespace {

TEST(Roles, TheTableByHand) {
  // As docs/howto/people.md tells it.
  const std::map<std::string, std::string> told{{"reader", "look"},
                                                {"observer", "look enter"},
                                                {"agronomist", "look enter bring"},
                                                {"head_greenkeeper", "look enter bring people"}};
  std::map<std::string, std::string> found;
  for (const RoleRights& line : kRoles) {
    std::string rights;
    for (const Right right : kRights) {
      if (may(line.role, right)) {
        rights += (rights.empty() ? "" : " ") + std::string(name(right));
      }
    }
    found[std::string(line.name)] = rights;
    EXPECT_EQ(parse_role(line.name), line.role);
    EXPECT_EQ(name(line.role), line.name);
  }
  EXPECT_EQ(found, told);
  EXPECT_FALSE(parse_role("owner"));
  EXPECT_FALSE(parse_role(""));
}

TEST(Roles, AHigherRoleLosesNothing) {
  for (std::size_t i = 1; i < kRoles.size(); ++i) {
    for (const Right right : kRights) {
      EXPECT_LE(may(kRoles[i - 1].role, right), may(kRoles[i].role, right)) << name(right);
    }
  }
}

TEST(Roles, ACallerMayWhatTheRoleAtThatClubSays) {
  Caller caller;
  caller.clubs = {{"hill", Role::observer}, {"moor", Role::reader}};
  EXPECT_FALSE(caller.may(Right::look, "hill")) << "nobody has signed in";
  EXPECT_FALSE(caller.knows("hill"));
  caller.kind = Caller::Kind::person;
  EXPECT_TRUE(caller.may(Right::enter, "hill"));
  EXPECT_FALSE(caller.may(Right::enter, "moor"));
  EXPECT_FALSE(caller.may(Right::look, "lake"));
  EXPECT_FALSE(caller.knows("lake"));
  EXPECT_TRUE(caller.may_somewhere(Right::enter));
  EXPECT_FALSE(caller.may_somewhere(Right::people));
  Caller all;
  all.kind = Caller::Kind::everyone;
  EXPECT_TRUE(all.may(Right::people, "lake"));
  EXPECT_TRUE(all.knows("lake"));
  EXPECT_TRUE(all.may_somewhere(Right::people));
}

TEST(Tries, WaitsDoubleAfterTheFreeOnes) {
  Tries tries({3, 2, 10, 1000, 100});
  std::vector<Seconds> waits;
  for (int i = 0; i < 8; ++i) {
    waits.push_back(tries.wait("a", 50));
    tries.begin("a", 50);
  }
  // By hand: three free, then 2, 4, 8, and never more than 10.
  EXPECT_EQ(waits, (std::vector<Seconds>{0, 0, 0, 0, 2, 4, 8, 10}));
  EXPECT_EQ(tries.wait("a", 53), 7);
  EXPECT_EQ(tries.wait("a", 60), 0);
  EXPECT_EQ(tries.wait("b", 50), 0) << "another name";
}

TEST(Tries, AreForgottenAndTakenBack) {
  Tries tries({1, 2, 10, 100, 100});
  tries.begin("a", 0);
  tries.begin("a", 0);
  EXPECT_EQ(tries.wait("a", 0), 2);
  EXPECT_EQ(tries.wait("a", 100), 0);
  tries.begin("a", 100);
  EXPECT_EQ(tries.wait("a", 100), 0) << "the old ones count no more";
  tries.undo("a");
  EXPECT_EQ(tries.kept(), 0U);
  tries.undo("a");
  tries.begin("a", 0);
  tries.begin("a", 0);
  tries.clear("a");
  EXPECT_EQ(tries.wait("a", 0), 0);
}

TEST(Tries, AClockSetBackLocksNobodyOutForLonger) {
  Tries tries({0, 2, 10, 1000, 100});
  for (int i = 0; i < 9; ++i) {
    tries.begin("a", 900);
  }
  EXPECT_EQ(tries.wait("a", 100), 10);
}

TEST(Tries, AFloodOfNamesForgetsNoneThatFailedOften) {
  Tries tries({1, 2, 600, 86'400, 100});
  for (int i = 0; i < 5; ++i) {
    tries.begin("tried often", 0);
  }
  for (int i = 0; i < 5000; ++i) {
    tries.begin(std::to_string(i), 1 + i / 100);
    EXPECT_LE(tries.kept(), 100U);
  }
  EXPECT_GT(tries.wait("tried often", 2), 0);
}

} // namespace
} // namespace baize::services
