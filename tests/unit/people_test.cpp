// Signing in, sessions, invitations, links and roles, on a real store.
#include "people_world.h"

#include <gtest/gtest.h>

namespace people_test {
namespace {

using services::Caller;
using services::kDay;
using services::Role;

template <class T> std::string code(const units::Result<T>& result) {
  return result ? "fine" : result.error().code;
}
Caller of(TwoClubs& world, const std::string& token) {
  return world.people->caller(token).value();
}

TEST(People, SignsInByNameWhateverItsCase) {
  TwoClubs world;
  const std::string token = world.sign_in("  HILL_Observer ");
  const Caller caller = of(world, token);
  EXPECT_EQ(caller.kind, Caller::Kind::person);
  EXPECT_EQ(caller.name, "hill_observer");
  EXPECT_EQ(caller.clubs, (std::map<std::string, Role>{{"hill", Role::observer}}));
  EXPECT_EQ(of(world, "forged").kind, Caller::Kind::nobody);
  EXPECT_EQ(of(world, "").kind, Caller::Kind::nobody);
}

TEST(People, AnUnknownNameAndAWrongPasswordAreTheSame) {
  TwoClubs world;
  const auto wrong = world.people->sign_in("hill_observer", "not this one", "phone", "10.0.0.1");
  const int work = world.secrets.verified;
  const auto unknown = world.people->sign_in("somebody", "not this one", "phone", "10.0.0.1");
  ASSERT_FALSE(wrong || unknown);
  EXPECT_EQ(wrong.error(), unknown.error());
  EXPECT_EQ(work, 1);
  EXPECT_EQ(world.secrets.verified, 2) << "the same work";
}

TEST(People, WrongTriesWaitByNameAndByAddress) {
  TwoClubs world;
  const auto wrong = [&](const std::string& name, const std::string& address) {
    return code(world.people->sign_in(name, "not this one", "phone", address));
  };
  for (int i = 0; i < 6; ++i) {
    EXPECT_EQ(wrong("hill_observer", "10.0.0." + std::to_string(i)), "wrong_sign_in");
  }
  const int work = world.secrets.verified;
  EXPECT_EQ(wrong("hill_observer", "10.0.0.9"), "too_many_tries");
  EXPECT_EQ(code(world.people->sign_in("hill_observer", kPassword, "phone", "10.0.0.9")),
            "too_many_tries")
      << "the right one too";
  EXPECT_EQ(world.secrets.verified, work) << "no password is looked at";
  for (int i = 0; i < 6; ++i) {
    EXPECT_EQ(wrong("nobody", "10.0.1." + std::to_string(i)), "wrong_sign_in");
  }
  EXPECT_EQ(wrong("nobody", "10.0.1.9"), "too_many_tries") << "known or not";
  EXPECT_GT(world.people->wait("hill_observer", "10.0.0.9"), 0);
  world.now += 3;
  EXPECT_EQ(code(world.people->sign_in("hill_observer", kPassword, "phone", "10.0.0.9")), "fine");
  EXPECT_EQ(wrong("hill_observer", "10.0.0.9"), "wrong_sign_in") << "forgotten after a good one";

  for (int i = 0; i < 21; ++i) {
    wrong("name " + std::to_string(i), "10.9.9.9");
  }
  EXPECT_EQ(wrong("another", "10.9.9.9"), "too_many_tries");
  EXPECT_EQ(code(world.people->look_at("forged", "10.9.9.9")), "too_many_tries");
  EXPECT_EQ(code(world.people->open_link("forged", "phone", "10.9.9.9")), "too_many_tries");
}

// Whoever has an account must not be able to wash off wrong tries with it.
TEST(People, AGoodSignInDoesNotClearTheAddress) {
  TwoClubs world;
  int wrong = 0;
  for (; wrong < 60; ++wrong) {
    world.now += 1;
    if (code(world.people->sign_in("name " + std::to_string(wrong), "wrong one", "p", "6.6.6.6")) ==
        "too_many_tries") {
      break;
    }
    (void)world.people->sign_in("moor_reader", kPassword, "p", "6.6.6.6");
  }
  EXPECT_LE(wrong, 25);
}

TEST(People, ACrowdCostsNobodyATry) {
  TwoClubs world;
  EXPECT_EQ(code(world.people->sign_in("hill_observer", "wrong one", "p", "1.1.1.1")),
            "wrong_sign_in");
  world.secrets.crowded = true;
  for (int i = 0; i < 30; ++i) {
    EXPECT_EQ(code(world.people->sign_in("hill_observer", kPassword, "p", "1.1.1.1")),
              "too_many_sign_ins");
  }
  world.secrets.crowded = false;
  EXPECT_EQ(code(world.people->sign_in("hill_observer", kPassword, "p", "1.1.1.1")), "fine");
}

TEST(People, SessionsEndIdleOldSignedOutAndCutOff) {
  TwoClubs world;
  const std::string idle = world.sign_in("hill_observer");
  const std::string used = world.sign_in("hill_observer");
  for (int day = 0; day < 44; ++day) {
    world.now += kDay;
    ASSERT_EQ(of(world, used).kind, Caller::Kind::person) << day;
  }
  world.now += kDay;
  EXPECT_EQ(of(world, idle).kind, Caller::Kind::nobody);
  EXPECT_EQ(of(world, used).kind, Caller::Kind::person);
  EXPECT_EQ(world.people->sessions(world.person("hill_observer").id).value().size(), 1U);
  for (int month = 0; month < 11; ++month) {
    world.now += 29 * kDay;
    (void)of(world, used);
  }
  world.now += 29 * kDay;
  EXPECT_EQ(of(world, used).kind, Caller::Kind::nobody) << "older than a year, though used";

  const std::string here = world.sign_in("hill_observer");
  const std::string there = world.sign_in("hill_observer");
  ASSERT_TRUE(world.people->sign_out(there));
  EXPECT_EQ(of(world, there).kind, Caller::Kind::nobody);
  const Caller caller = of(world, here);
  EXPECT_EQ(code(world.people->end_session(caller.id, "none")), "no_such_session");
  EXPECT_EQ(code(world.people->cut_off("moor", caller.id, caller.session)), "no_such_person");
  EXPECT_EQ(code(world.people->cut_off("hill", caller.id, caller.session)), "fine");
  EXPECT_EQ(of(world, here).kind, Caller::Kind::nobody) << "from this moment";
}

TEST(People, OnlyDigestsAndHashesAreKept) {
  TwoClubs world;
  const std::string token = world.sign_in("hill_observer");
  const auto invitation = world.people->invite("hill", Role::reader, "ann").value();
  const std::string bytes =
      contract::bytes_of(world.path()) + contract::bytes_of(world.path() + "-wal");
  EXPECT_NE(bytes.find("hill_observer"), std::string::npos) << "the file is what is looked into";
  EXPECT_EQ(bytes.find(token), std::string::npos);
  EXPECT_EQ(bytes.find(invitation.token), std::string::npos);
  EXPECT_EQ(bytes.find(world.links["hill"]), std::string::npos);
}

TEST(People, AnInvitationIsGoodOnceAndNotForLong) {
  TwoClubs world;
  const auto made = world.people->invite("hill", Role::observer, "ann").value();
  EXPECT_EQ(world.people->look_at(made.token, "2.2.2.2").value().by, "ann");
  const auto join = [&](const std::string& token, const std::string& name,
                        const std::string& password = kPassword) {
    return world.people->accept(token, name, password, "phone", "2.2.2.2");
  };
  EXPECT_EQ(code(join(made.token, "", kPassword)), "bad_name");
  EXPECT_EQ(code(join(made.token, "Bea\n")), "bad_name");
  EXPECT_EQ(code(join(made.token, std::string(61, 'b'))), "bad_name");
  EXPECT_EQ(code(join(made.token, "Bea", "too short")), "bad_password");
  EXPECT_EQ(code(join(made.token, "Bea", std::string(201, 'x'))), "bad_password");
  EXPECT_EQ(code(join(made.token, "HILL_READER")), "name_taken");
  const auto joined = join(made.token, "Bea");
  ASSERT_TRUE(joined);
  EXPECT_EQ(of(world, joined->token).clubs.at("hill"), Role::observer);
  EXPECT_EQ(code(join(made.token, "Cid")), "no_such_invitation");
  EXPECT_EQ(code(world.people->look_at(made.token, "2.2.2.2")), "no_such_invitation");

  const auto late = world.people->invite("hill", Role::observer, "ann").value();
  world.now += 7 * kDay;
  EXPECT_EQ(code(join(late.token, "Cid")), "no_such_invitation");
  const auto back = world.people->invite("hill", Role::observer, "ann").value();
  EXPECT_EQ(code(world.people->end_invitation("moor", back.kept.id)), "no_such_invitation");
  EXPECT_EQ(code(world.people->end_invitation("hill", back.kept.id)), "fine");
  EXPECT_EQ(code(join(back.token, "Cid")), "no_such_invitation");
}

TEST(People, WhoHasAnAccountTakesAnInvitationWithIt) {
  TwoClubs world;
  const std::string token = world.sign_in("moor_agronomist");
  const auto made = world.people->invite("hill", Role::agronomist, "ann").value();
  EXPECT_EQ(code(world.people->accept_as(made.token, of(world, token).id, "3.3.3.3")), "fine");
  EXPECT_EQ(of(world, token).clubs.size(), 2U);
  EXPECT_EQ(code(world.people->accept_as(made.token, of(world, token).id, "3.3.3.3")),
            "no_such_invitation");
}

TEST(People, ALinkReadsOneClubUntilItIsCutOffOrOver) {
  TwoClubs world;
  const auto opened = world.people->open_link(world.links["hill"], "browser", "4.4.4.4");
  ASSERT_TRUE(opened);
  const Caller caller = of(world, opened->token);
  EXPECT_EQ(caller.kind, Caller::Kind::link);
  EXPECT_TRUE(caller.may(services::Right::look, "hill"));
  EXPECT_FALSE(caller.may(services::Right::enter, "hill"));
  EXPECT_FALSE(caller.knows("moor"));
  const auto club = world.people->of_club("hill").value();
  ASSERT_EQ(club.links.size(), 1U);
  EXPECT_EQ(club.links[0].opened, 1);
  EXPECT_EQ(code(world.people->end_link("moor", club.links[0].id)), "no_such_link");
  EXPECT_EQ(code(world.people->end_link("hill", club.links[0].id)), "fine");
  EXPECT_EQ(of(world, opened->token).kind, Caller::Kind::nobody) << "with all it opened";
  EXPECT_EQ(code(world.people->open_link(world.links["hill"], "b", "4.4.4.4")), "no_such_link");

  const auto other = world.people->open_link(world.links["moor"], "browser", "4.4.4.4").value();
  world.now += 30 * kDay;
  EXPECT_EQ(of(world, other.token).kind, Caller::Kind::nobody);
  EXPECT_EQ(code(world.people->make_link("hill", "  ", 3, "ann")), "bad_label");
  EXPECT_EQ(code(world.people->make_link("hill", "owner", 0, "ann")), "bad_days");
  EXPECT_EQ(code(world.people->make_link("hill", "owner", 401, "ann")), "bad_days");
  EXPECT_EQ(code(world.people->make_link("lake", "owner", 4, "ann")), "no_such_club");
}

TEST(People, AClubKeepsOneHeadGreenkeeper) {
  TwoClubs world;
  const std::string head = world.person("hill_head_greenkeeper").id;
  const std::string reader = world.person("hill_reader").id;
  EXPECT_EQ(code(world.people->set_role("hill", head, Role::reader)), "last_head_greenkeeper");
  EXPECT_EQ(code(world.people->take_out("hill", head)), "last_head_greenkeeper");
  EXPECT_EQ(world.person("hill_head_greenkeeper").clubs.at("hill"), Role::head_greenkeeper);
  EXPECT_EQ(code(world.people->set_role("hill", reader, Role::head_greenkeeper)), "fine");
  EXPECT_EQ(code(world.people->take_out("hill", head)), "fine");
  EXPECT_EQ(code(world.people->set_role("moor", reader, Role::reader)), "no_such_person")
      << "who is not of the club is not seen from it";
}

TEST(People, TooManyOpenInvitationsAreRefused) {
  TwoClubs world;
  for (int i = 0; i < 100; ++i) {
    ASSERT_TRUE(world.people->invite("hill", Role::reader, "ann"));
  }
  EXPECT_EQ(code(world.people->invite("hill", Role::reader, "ann")), "too_many_open");
  world.now += 8 * kDay;
  EXPECT_EQ(code(world.people->invite("hill", Role::reader, "ann")), "fine");
}

TEST(People, ANewPasswordEndsEverySession) {
  TwoClubs world;
  const std::string token = world.sign_in("hill_reader");
  EXPECT_EQ(code(world.people->set_password(of(world, token).id, "another long one")), "fine");
  EXPECT_EQ(of(world, token).kind, Caller::Kind::nobody);
  EXPECT_EQ(code(world.people->sign_in("hill_reader", "another long one", "p", "5.5.5.5")), "fine");
}

TEST(People, RemovedWithEverySession) {
  TwoClubs world;
  const std::string token = world.sign_in("hill_reader");
  EXPECT_EQ(code(world.kept().remove_person(of(world, token).id)), "fine");
  EXPECT_EQ(of(world, token).kind, Caller::Kind::nobody);
  EXPECT_EQ(code(world.kept().remove_person("none")), "no_such_person");
}

// RFC 3339; the seconds by GNU date: date -u -d @1790000000.
TEST(People, TellsTimesInUtc) {
  EXPECT_EQ(services::instant(0), "1970-01-01T00:00:00Z");
  EXPECT_EQ(services::instant(1'790'000'000), "2026-09-21T14:13:20Z");
  EXPECT_EQ(services::instant(-1), "1969-12-31T23:59:59Z");
}

} // namespace
} // namespace people_test
