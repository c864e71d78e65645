// Told to end by a signal, the program finishes what it has begun and nothing else.
#include "contract/folder.h"
#include "unit/api_wire.h"
#include "unit/entries_kill.h"

#include <gtest/gtest.h>

#include <chrono>

namespace {

using wire::Client;
using wire::get;
using wire::status_of;

class ServeStop : public testing::Test {
 protected:
  void SetUp() override { ASSERT_TRUE(process_.start()); }
  std::uint16_t port() const { return process_.port(); }
  contract::Folder folder_;
  killed::Process process_{folder_.file("club.sqlite3")};
};

TEST_F(ServeStop, WithNobodyThereItEndsAtOnce) {
  const Client idle(port());
  process_.ask_to_end();
  EXPECT_TRUE(idle.ended());
  EXPECT_EQ(process_.ended(2), 0);
}

TEST_F(ServeStop, WhatIsUnderWayIsAnsweredAndNothingNewIsTaken) {
  Client busy(port());
  busy.send("POST /api/v1/clubs/none/entries HTTP/1.1\r\nHost: localhost\r\nContent-Type: "
            "application/json\r\nContent-Length: 2\r\n\r\n{");
  Client idle(port());
  idle.send(get("/healthz"));
  EXPECT_EQ(status_of(idle.answer()), 200) << "so the first is being read by now";
  process_.ask_to_end();
  EXPECT_TRUE(idle.ended());
  Client late(port());
  late.send(get("/healthz"));
  EXPECT_EQ(status_of(late.answer()), 0) << "no new connection";
  busy.send("}");
  const std::string answer = busy.answer();
  EXPECT_EQ(status_of(answer), 400) << answer;
  EXPECT_EQ(wire::header_of(answer, "Connection"), "close");
  EXPECT_EQ(process_.ended(2), 0);
}

TEST_F(ServeStop, WhoNeverFinishesHoldsItForFiveSecondsAtMost) {
  Client half(port());
  half.send("POST /api/v1/import HTTP/1.1\r\nHost: localhost\r\nContent-Length: 100\r\n\r\n{");
  Client idle(port());
  idle.send(get("/healthz"));
  EXPECT_EQ(status_of(idle.answer()), 200);
  process_.ask_to_end();
  const auto since = std::chrono::steady_clock::now();
  EXPECT_EQ(process_.ended(15), 0);
  EXPECT_LT(std::chrono::steady_clock::now() - since, std::chrono::seconds(8));
}

} // namespace
