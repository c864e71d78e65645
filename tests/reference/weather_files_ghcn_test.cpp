// Genuine lines of GHCN-Daily (from a public repository's test files; see
// data/SOURCES.md, F1) against what an independent parser read from them, which
// in turn meets the 15 values published in that repository's own test.
#include "baize/weather_files/ghcn.h"
#include "baize/weather_files/reader.h"

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include <fstream>
#include <iterator>
#include <set>
#include <sstream>

namespace baize::weather_files {
namespace {

std::string bytes(const std::string& name) {
  std::ifstream in(std::string(BAIZE_SOURCE_DIR) + "/tests/reference/data/weather_formats/" + name,
                   std::ios::binary);
  EXPECT_TRUE(in) << name;
  return {std::istreambuf_iterator<char>(in), {}};
}

/// As the expected files write it: station,date,element,value,mflag,qflag,sflag.
std::multiset<std::string> lines_of(const GhcnElements& all) {
  std::multiset<std::string> result;
  const auto flag = [](char c) { return c == ' ' ? std::string() : std::string(1, c); };
  for (const Element& one : all.elements) {
    std::ostringstream line;
    line << all.stations[one.station] << ',' << units::iso(one.day) << ',' << all.names[one.name]
         << ',' << one.value << ',' << flag(one.measurement) << ',' << flag(one.quality) << ','
         << flag(one.source);
    result.insert(line.str());
  }
  return result;
}

std::multiset<std::string> expected_lines(const std::string& name) {
  std::istringstream in(bytes(name));
  std::multiset<std::string> result;
  std::string line;
  std::getline(in, line);
  EXPECT_EQ(line, "station,date,element,value,mflag,qflag,sflag");
  while (std::getline(in, line)) {
    result.insert(line);
  }
  return result;
}

class ExpectedFile : public testing::TestWithParam<std::pair<const char*, const char*>> {};

TEST_P(ExpectedFile, IsMetExactly) {
  const auto [file, expected] = GetParam();
  const GhcnElements all = read_ghcn_dly(bytes(file));
  EXPECT_TRUE(all.remarks.empty());
  EXPECT_GT(all.elements.size(), 20U);
  EXPECT_EQ(lines_of(all), expected_lines(expected));
}

INSTANTIATE_TEST_SUITE_P(
    Ghcn, ExpectedFile,
    testing::Values(std::pair{"USW00003870_1980_excerpt.dly", "USW00003870_1980_expected.csv"},
                    std::pair{"USC00411885_excerpt.dly", "USC00411885_expected.csv"},
                    std::pair{"USW00003870_quality_flag_lines.dly",
                              "USW00003870_quality_flag_expected.csv"}));

TEST(GhcnYear, SummaryOfEveryElement) {
  const auto summary = nlohmann::json::parse(bytes("USW00003870_1980_summary.json")).at("summary");
  const GhcnElements all = read_ghcn_dly(bytes("USW00003870_1980_excerpt.dly"));
  for (std::size_t name = 0; name < all.names.size(); ++name) {
    int n = 0;
    double sum = 0;
    int traces = 0;
    for (const Element& one : all.elements) {
      if (one.name == name) {
        ++n;
        sum += one.value;
        traces += one.measurement == 'T' ? 1 : 0;
      }
    }
    const auto& wanted = summary.at(all.names[name]);
    EXPECT_EQ(n, wanted.at("n").get<int>()) << all.names[name];
    EXPECT_EQ(sum, wanted.at("sum").get<double>()) << all.names[name];
    EXPECT_EQ(traces, wanted.at("n_trace").get<int>()) << all.names[name];
  }
}

TEST(GhcnYear, AsWeather) {
  const auto summary = nlohmann::json::parse(bytes("USW00003870_1980_summary.json")).at("summary");
  const std::string content = bytes("USW00003870_1980_excerpt.dly");
  const Reader reader;
  const auto mapping = reader.guess(content);
  ASSERT_TRUE(mapping);
  EXPECT_EQ(mapping->format, "ghcn_dly");
  const auto reading = reader.read(content, *mapping);
  EXPECT_TRUE(reading.problems.empty());
  EXPECT_TRUE(reading.remarks.empty());
  EXPECT_EQ(reading.rows, 60);
  ASSERT_EQ(reading.weather.size(), 366U); // a leap year
  double mean = 0;
  double rain = 0;
  int traces = 0;
  for (const auto& [day, weather] : reading.weather) {
    mean += *climate::mean_temperature_c(weather) / 366;
    rain += *weather.rain_mm;
    traces += weather.rain_trace ? 1 : 0;
    EXPECT_TRUE(!weather.rain_trace || *weather.rain_mm == 0);
  }
  EXPECT_NEAR(mean, summary.at("mean_of_daily_(TMAX+TMIN)/2_C").get<double>(), 1e-9);
  EXPECT_NEAR(rain, summary.at("PRCP").at("sum").get<double>() / 10, 1e-9);
  EXPECT_EQ(traces, summary.at("PRCP").at("n_trace").get<int>());
  const auto first = reading.weather.begin()->second;
  EXPECT_EQ(first.tmax_c, 7.8); // 78 tenths, and no digit more
  EXPECT_EQ(first.tmin_c, 5.0);
  EXPECT_EQ(first.rain_mm, 0.5);
}

TEST(GhcnFlags, AValueThatFailedACheckIsLeftOutAndSaid) {
  services::WeatherMapping mapping;
  mapping.format = "ghcn_dly";
  const auto reading = Reader().read(bytes("USW00003870_quality_flag_lines.dly"), mapping);
  ASSERT_EQ(reading.remarks.size(), 1U);
  EXPECT_EQ(reading.remarks[0].code, "failed_check");
  EXPECT_EQ(reading.remarks[0].place, "1976-07-29");
  EXPECT_EQ(reading.remarks[0].value, "90.7 (flag S)");
  EXPECT_EQ(reading.weather.size(), 30U);
  EXPECT_FALSE(reading.weather.contains(*units::make_day(1976, 7, 29)));
  const auto& trace = reading.weather.at(*units::make_day(1976, 7, 15));
  EXPECT_TRUE(trace.rain_trace);
  EXPECT_EQ(trace.rain_mm, 0.0);
}

TEST(GhcnFlags, MissingPresumedZeroIsNotZero) {
  const std::string content = bytes("USC00411885_excerpt.dly");
  const auto reading = Reader().read(content, *Reader().guess(content));
  const auto presumed =
      std::find_if(reading.remarks.begin(), reading.remarks.end(),
                   [](const units::Problem& one) { return one.code == "presumed_zero"; });
  ASSERT_NE(presumed, reading.remarks.end());
  EXPECT_EQ(presumed->place, "1912-09-01 to 1912-09-30");
  for (const auto& [day, weather] : reading.weather) {
    EXPECT_FALSE(weather.rain_mm) << units::iso(day);
  }
}

} // namespace
} // namespace baize::weather_files
