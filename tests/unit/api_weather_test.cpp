// A weather file over HTTP: guessed, shown, corrected, kept.
#include "api_contract.h"
#include "api_fakes.h"

#include <gtest/gtest.h>

namespace {

using made::World;
using nlohmann::json;
namespace services = baize::services;
namespace units = baize::units;

const std::string kWeather = "/api/v1/clubs/c%2F1/weather";

/// Two days; content "bad" has a fault, content "none" is no weather file.
class FakeWeatherFiles : public services::WeatherFiles {
 public:
  units::Result<services::WeatherMapping> guess(const std::string& content) const override {
    if (content == "none") {
      return units::refuse("not_a_weather_file", "file", "", "a table of days");
    }
    services::WeatherMapping mapping;
    mapping.format = "delimited";
    return mapping;
  }
  services::WeatherReading read(const std::string& content,
                                const services::WeatherMapping& mapping) const override {
    services::WeatherReading reading;
    reading.rows = 2;
    if (content == "bad") {
      reading.problems.push_back({"no_such_column", "tmin_c", "Low", "a column", "line 1"});
      return reading;
    }
    const double low = mapping.decimal == ',' ? 2.0 : 1.0;
    for (const int day : {1, 2}) {
      baize::climate::WeatherDay one;
      one.day = *units::make_day(2025, 4, day);
      one.tmin_c = low;
      reading.weather.emplace(one.day, one);
    }
    reading.remarks.push_back({"no_row", "day", "2025-04-03", "there", ""});
    return reading;
  }
  std::vector<std::string> show(const services::WeatherMapping& mapping) const override {
    return {std::string("decimal=") + mapping.decimal};
  }
  units::Result<services::WeatherMapping>
  corrected(services::WeatherMapping mapping,
            const std::vector<std::string>& lines) const override {
    if (lines != std::vector<std::string>{"decimal=,", "header_lines=1"}) {
      return units::refuse("no_such_setting", "map", lines.front(), "a setting");
    }
    mapping.decimal = ',';
    return mapping;
  }
};

struct Weather : ::testing::Test {
  Weather() { world.context.weather_files = &reader; }
  baize::api::Response send(const std::string& query, const std::string& content) const {
    const json body{{"files", {{{"name", "station.csv"}, {"content", content}}}}};
    return world.ask("POST", kWeather + query, body.dump());
  }

  World world;
  FakeWeatherFiles reader;
};

TEST_F(Weather, IsShownAsUnderstoodAndKeptWhenSaid) {
  const auto looked = send("?dry_run=true", "good");
  ASSERT_EQ(looked.status, 200) << looked.body;
  EXPECT_EQ(contract::faults("ImportWeatherAnswer", looked.body), "");
  const json answer = json::parse(looked.body);
  EXPECT_EQ(answer["mapping"], json({"decimal=."}));
  EXPECT_EQ(answer["files"][0]["records"], 2);
  EXPECT_EQ(answer["remarks"][0]["problem"]["place"], "station.csv");
  EXPECT_FALSE(answer.contains("receipt"));
  const auto kept = send("", "good");
  ASSERT_EQ(kept.status, 200) << kept.body;
  EXPECT_EQ(contract::faults("ImportWeatherAnswer", kept.body), "");
  EXPECT_EQ(json::parse(kept.body)["club"], "c/1");
}

TEST_F(Weather, TakesCorrectionsLineByLine) {
  const auto corrected =
      send("?dry_run=true&map=decimal%3D%2C%0D%0A%0Aheader_lines%3D1%0A", "good");
  ASSERT_EQ(corrected.status, 200) << corrected.body;
  EXPECT_EQ(json::parse(corrected.body)["mapping"], json({"decimal=,"}));
  const auto wrong = send("?map=colour%3Dred", "good");
  EXPECT_EQ(wrong.status, 400);
  EXPECT_EQ(json::parse(wrong.body)["problem"]["place"], "station.csv");
}

TEST_F(Weather, RefusesWhatItCannotRead) {
  EXPECT_EQ(send("", "none").status, 400);
  const auto bad = send("", "bad");
  EXPECT_EQ(bad.status, 422);
  EXPECT_EQ(json::parse(bad.body)["problems"][0]["problem"]["place"], "station.csv line 1");
  const json two{{"files", {{{"name", "a"}, {"content", "x"}}, {{"name", "b"}, {"content", "y"}}}}};
  EXPECT_EQ(world.ask("POST", kWeather, two.dump()).status, 400);
  EXPECT_EQ(world.ask("POST", "/api/v1/clubs/none/weather", two.dump()).status, 400);
  world.context.weather_files = nullptr;
  EXPECT_EQ(json::parse(send("", "good").body)["problem"]["code"], "no_such_service");
}

} // namespace
