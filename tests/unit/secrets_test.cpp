// Hashes against published vectors, and few of them at once.
#include "baize/scan_code/scan_code.h"
#include "baize/secrets/sodium.h"

#include <gtest/gtest.h>

#include <atomic>
#include <regex>
#include <set>
#include <thread>

namespace baize::secrets {
namespace {

std::unique_ptr<Sodium> sodium(const Cost& cost = {}) {
  return Sodium::open(cost).value();
}
constexpr Cost kCheap{1, 8192, 2, 4};

// The encoded hash of test.c in the Argon2 reference implementation (Argon2id,
// version 0x13, two passes, 64 MiB, one lane; "password", "somesalt"), from memory.
TEST(Sodium, KnowsAPasswordHashOfTheReference) {
  const std::string hash = "$argon2id$v=19$m=65536,t=2,p=1$c29tZXNhbHQ$"
                           "CTFhFdXPJO1aFaMaO6Mm5c8y7cJHAph8ArZWb2GRPPc";
  const auto it = sodium();
  EXPECT_TRUE(it->password_fits(hash, "password").value());
  EXPECT_FALSE(it->password_fits(hash, "Password").value());
  EXPECT_FALSE(it->password_fits("no hash", "password").value());
}

// BLAKE2b with 32 bytes, by Python's hashlib, which holds the authors' own code.
TEST(Sodium, DigestsAsBlake2b) {
  const auto it = sodium(kCheap);
  EXPECT_EQ(it->digest("abc"), "bddd813c634239723171ef3fee98579b94964e3bb1cb3e427262c8c068d52319");
  EXPECT_EQ(it->digest(""), "0e5751c026e543b2e8ab2eb06099daa1d1e5df47778f7787faab45cdf12fe3a8");
}

TEST(Sodium, HashesSayHowTheyWereMade) {
  const auto it = sodium();
  const std::string hash = it->password_hash("seven green pins").value();
  // 64 MiB are 65536 KiB, as RFC 9106 counts.
  EXPECT_EQ(hash.rfind("$argon2id$v=19$m=65536,t=2,p=1$", 0), 0U) << hash;
  EXPECT_TRUE(it->password_fits(hash, "seven green pins").value());
  EXPECT_FALSE(it->password_fits(hash, "seven green pin").value());
  EXPECT_NE(it->password_hash("seven green pins").value(), hash) << "another salt each time";
  const auto cheap = sodium(kCheap);
  EXPECT_TRUE(cheap->password_fits(hash, "seven green pins").value()) << "whatever the cost now";
}

TEST(Sodium, TokensAreLongPlainAndNeverTheSame) {
  const auto it = sodium(kCheap);
  std::set<std::string> seen;
  for (int i = 0; i < 1000; ++i) {
    const std::string token = it->token();
    EXPECT_TRUE(std::regex_match(token, std::regex("[A-Za-z0-9_-]{43}"))) << token;
    EXPECT_TRUE(std::regex_match(it->identifier(), std::regex("[0-9a-f]{20}")));
    EXPECT_TRUE(seen.insert(token).second);
  }
}

TEST(Sodium, ACrowdIsRefusedAndNotQueuedWithoutEnd) {
  const auto it = sodium({6, 64UL << 20U, 1, 0});
  std::atomic<bool> over{false};
  std::jthread first([&] {
    // The one below may be a moment quicker; then this one is the one refused.
    while (!it->password_hash("seven green pins")) {
      std::this_thread::yield();
    }
    over = true;
  });
  int refused = 0;
  while (!over) {
    const auto second = it->password_fits("x", "y");
    refused += !second && second.error().code == "too_many_sign_ins" ? 1 : 0;
    std::this_thread::yield();
  }
  EXPECT_GT(refused, 0);
  EXPECT_TRUE(it->password_fits("x", "y")) << "and let in again afterwards";
}

TEST(Sodium, WhoMayWaitIsServedInTheEnd) {
  const auto it = sodium({1, 8UL << 20U, 2, 32});
  std::atomic<int> good{0};
  {
    std::vector<std::jthread> all;
    for (int i = 0; i < 12; ++i) {
      all.emplace_back([&] { good += it->password_hash("seven green pins") ? 1 : 0; });
    }
  }
  EXPECT_EQ(good, 12);
}

} // namespace
} // namespace baize::secrets

namespace baize::scan_code {
namespace {

/// The squares of the picture, without the margin: true is dark.
std::vector<std::vector<bool>> squares(const std::string& svg) {
  std::smatch found;
  EXPECT_TRUE(std::regex_search(svg, found, std::regex(R"re(viewBox="0 0 (\d+) \1")re")));
  const int side = std::stoi(found[1]);
  std::vector<std::vector<bool>> dark(side, std::vector<bool>(side));
  const std::regex run(R"(M(\d+) (\d+)h(\d+)v1H(\d+)z)");
  for (auto it = std::sregex_iterator(svg.begin(), svg.end(), run); it != std::sregex_iterator();
       ++it) {
    for (int x = 0; x < std::stoi((*it)[3]); ++x) {
      dark.at(std::stoi((*it)[2])).at(std::stoi((*it)[1]) + x) = true;
    }
  }
  return dark;
}

// ISO/IEC 18004: version 1 has 21 squares a side, each further one four more; a
// margin of four; in three corners a 7 by 7 finder: a ring, a gap, a 3 by 3 core;
// between them a row and a column that alternate.
TEST(ScanCode, HasTheShapeOfTheStandard) {
  for (const std::string text :
       {"a", "https://greens.example/#/+join/abcdefghijklmnopqrstuvwxyz"}) {
    const auto dark = squares(svg(text).value());
    const int side = static_cast<int>(dark.size()) - 8;
    EXPECT_EQ((side - 21) % 4, 0);
    for (int i = 0; i < side + 8; ++i) {
      for (const int edge : {0, 1, 2, 3, side + 4, side + 7}) {
        EXPECT_FALSE(dark[i][edge] || dark[edge][i]) << "the margin is white";
      }
    }
    for (const auto& [top, left] :
         {std::pair(0, 0), std::pair(0, side - 7), std::pair(side - 7, 0)}) {
      for (int y = 0; y < 7; ++y) {
        for (int x = 0; x < 7; ++x) {
          const int ring = std::max(std::abs(x - 3), std::abs(y - 3));
          EXPECT_EQ(dark[4 + top + y][4 + left + x], ring != 2) << x << " " << y;
        }
      }
    }
    for (int i = 8; i < side - 8; ++i) {
      EXPECT_EQ(dark[4 + 6][4 + i], i % 2 == 0);
      EXPECT_EQ(dark[4 + i][4 + 6], i % 2 == 0);
    }
  }
}

TEST(ScanCode, TooMuchIsRefusedInOneSentence) {
  const auto none = svg(std::string(5000, 'x'));
  ASSERT_FALSE(none);
  EXPECT_EQ(none.error().code, "too_long_to_scan");
}

} // namespace
} // namespace baize::scan_code
