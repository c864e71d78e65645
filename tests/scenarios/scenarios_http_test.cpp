// The text tables of this folder, asked over HTTP: real sockets, and the same
// figures as the core and the command line.
#include "scenarios/scenario.h"
#include "scenarios/told.h"
#include "unit/api_fakes.h"
#include "unit/api_wire.h"

#include <gtest/gtest.h>

namespace baize::scenarios {
namespace {

using Json = nlohmann::json;

class HttpScenarios : public ::testing::TestWithParam<std::filesystem::path> {
 protected:
  HttpScenarios()
      : scenario(read_scenario(GetParam()).value()), world(scenario.records, scenario.weather),
        server(
            [this](const api::Request& request) { return api::answer(world.context, request); }) {
    world.context.today = [this] { return scenario.record_end; };
  }

  Json get(const std::string& target) const {
    wire::Client client(server.port());
    client.send(wire::get("/api/v1/clubs/" + scenario.records.club.id + target));
    const std::string answer = client.answer();
    EXPECT_EQ(wire::status_of(answer), 200) << target << "\n" << answer;
    return Json::parse(wire::body_of(answer), nullptr, false);
  }

  Json loss_of(const Row& row) const {
    const Json work = get("/works/" + row.text("work"));
    for (const Json& green : work["greens"]) {
      if (is_loss_of(row, green["loss"])) {
        return green["loss"];
      }
    }
    ADD_FAILURE() << "line " << row.line << ": no such loss";
    return Json::object();
  }

  Scenario scenario;
  made::World world;
  wire::Server server;
};

TEST_P(HttpScenarios, Losses) {
  for (const Row& row : scenario.losses) {
    expect_loss(row, loss_of(row));
  }
}

TEST_P(HttpScenarios, Recovery) {
  for (const Row& row : scenario.recovery) {
    expect_interval(row, loss_of(row));
  }
}

TEST_P(HttpScenarios, Ledgers) {
  for (const Row& row : scenario.ledgers) {
    const std::string year = season_of(row, scenario.record_end);
    if (!year.empty()) {
      expect_ledger(row, get("/greens/" + row.text("green") + "/years/" + year)["ledger"]);
    }
  }
}

INSTANTIATE_TEST_SUITE_P(Files, HttpScenarios,
                         ::testing::ValuesIn(scenario_files(BAIZE_SOURCE_DIR "/tests/scenarios")),
                         [](const auto& one) { return one.param.stem().string(); });

} // namespace
} // namespace baize::scenarios
