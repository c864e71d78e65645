// Layouts: GHCN-Daily format text (sections III and IV) and descriptions of its
// tables, see tests/reference/data/weather_formats/ghcn_daily_layout.json. The
// lines here are invented in those layouts.
#include "baize/weather_files/ghcn.h"
#include "unit/weather_files_given.h"

namespace baize::weather_files {
namespace {

using testing::ElementsAre;
using testing::IsEmpty;

services::WeatherMapping format(const std::string& name) {
  services::WeatherMapping mapping;
  mapping.format = name;
  return mapping;
}

/// One line of a month: `value` with its flags on every day that it has.
std::string dly_line(const std::string& month, const std::string& element, int days,
                     const std::string& value) {
  std::string line = "XX000000001" + month + element;
  for (int day = 1; day <= 31; ++day) {
    line += day <= days ? value : "-9999   ";
  }
  return line + "\n";
}

TEST(GhcnDly, EveryDayOfEveryMonth) {
  const auto all = read_ghcn_dly(dly_line("200402", "TMAX", 29, "  123  0"));
  EXPECT_THAT(all.remarks, IsEmpty());
  EXPECT_EQ(all.elements.size(), 29U);
  EXPECT_EQ(all.elements.back().day, on("2004-02-29"));
  EXPECT_THAT(all.stations, ElementsAre("XX000000001"));
}

TEST(GhcnDly, ADayPastTheMonthsEnd) {
  const auto all = read_ghcn_dly(dly_line("200302", "TMAX", 29, "  123  0"));
  EXPECT_EQ(all.elements.size(), 28U);
  ASSERT_THAT(codes(all.remarks), ElementsAre("day_past_month_end"));
  EXPECT_EQ(units::sentence(all.remarks[0]),
            "line 1: value 29 is '  123', but must be -9999, since the month has no such day.");
}

TEST(GhcnDly, TrimmedBlanksAreNoCut) {
  std::string line = dly_line("200306", "TMAX", 30, "  123  0");
  line.erase(line.find_last_not_of(" \n") + 1);
  EXPECT_EQ(line.size(), 266U);
  const auto all = read_ghcn_dly(line + "\n");
  EXPECT_THAT(all.remarks, IsEmpty());
  EXPECT_EQ(all.elements.size(), 30U);
}

TEST(GhcnDly, ACutLastLineKeepsItsWholeDays) {
  const std::string whole = dly_line("200305", "TMAX", 31, "  123  0");
  // In the flags of the 17th: without its quality flag a value cannot be trusted.
  const auto all = read_ghcn_dly(whole + whole.substr(0, 21 + 16 * 8 + 6));
  EXPECT_EQ(all.elements.size(), 31U + 16U);
  EXPECT_THAT(sentences(all.remarks),
              ElementsAre("line 2: line is '155 columns', but must be 269 columns; its days from "
                          "the 17. on are left out."));
}

TEST(GhcnDly, OtherLinesAreNamed) {
  const std::string good = dly_line("200305", "TMAX", 31, "  123  0");
  const auto all =
      read_ghcn_dly(good + "station,date\n" + dly_line("200313", "TMAX", 1, "   1  0") +
                    "XX00000000120030 TMAX    1  0\n");
  EXPECT_THAT(codes(all.remarks), ElementsAre("not_a_dly_line", "no_such_day", "not_a_dly_line"));
  EXPECT_EQ(all.rows, 1);
}

TEST(GhcnDly, AnUnreadableValueIsNamedByItsDay) {
  std::string line = dly_line("200305", "TMAX", 31, "  123  0");
  line.replace(21 + 8 * 4, 5, " 12x3");
  const auto all = read_ghcn_dly(line);
  EXPECT_EQ(all.elements.size(), 30U);
  ASSERT_THAT(codes(all.remarks), ElementsAre("unreadable"));
  EXPECT_EQ(all.remarks[0].field, "value 5");
}

TEST(GhcnDly, AnElementGivenTwice) {
  const auto reading = Reader().read(dly_line("200305", "TMAX", 31, "  123  0") +
                                         dly_line("200305", "TMAX", 31, "  124  0"),
                                     format("ghcn_dly"));
  ASSERT_THAT(codes(reading.remarks), ElementsAre("day_twice_differs"));
  EXPECT_EQ(reading.remarks[0].place, "2003-05-01 to 2003-05-31");
  EXPECT_EQ(reading.remarks[0].value, "12.3 and 12.4");
  EXPECT_EQ(reading.weather.at(on("2003-05-01")).tmax_c, 12.3);
}

TEST(GhcnDly, TwoStationsAreNotMixed) {
  std::string other = dly_line("200305", "TMAX", 31, "  123  0");
  other[10] = '2';
  const auto reading =
      Reader().read(dly_line("200305", "TMAX", 31, "  123  0") + other, format("ghcn_dly"));
  ASSERT_THAT(codes(reading.problems), ElementsAre("more_than_one_station"));
  EXPECT_EQ(reading.problems[0].value, "XX000000001, XX000000002");
  EXPECT_TRUE(reading.weather.empty());
}

TEST(GhcnDly, ElementsADayHasNoRoomForChangeNothing) {
  const std::string tmax = dly_line("200305", "TMAX", 31, "  123  0");
  const auto alone = Reader().read(tmax, format("ghcn_dly"));
  const auto both =
      Reader().read(tmax + dly_line("200305", "EVAP", 31, "   45  0"), format("ghcn_dly"));
  EXPECT_EQ(alone.weather, both.weather);
  EXPECT_THAT(both.remarks, IsEmpty());
}

TEST(GhcnDly, ATraceThatIsNotZeroContradictsItself) {
  const auto reading = Reader().read(dly_line("200305", "TMAX", 31, "  123  0") +
                                         dly_line("200305", "PRCP", 31, "   56T 0"),
                                     format("ghcn_dly"));
  ASSERT_THAT(codes(reading.remarks), ElementsAre("false_trace"));
  EXPECT_EQ(reading.remarks[0].value, "5.6 (flag T)");
  const auto& day = reading.weather.at(on("2003-05-01"));
  EXPECT_FALSE(day.rain_mm);
  EXPECT_FALSE(day.rain_trace);
}

TEST(GhcnDly, WindAndDewPointInTenths) {
  const auto reading = Reader().read(dly_line("200305", "AWND", 31, "   31  W") +
                                         dly_line("200305", "ADPT", 31, "  -12  W"),
                                     format("ghcn_dly"));
  const auto& day = reading.weather.at(on("2003-05-31"));
  EXPECT_EQ(day.wind_m_s, 3.1);
  EXPECT_EQ(day.dew_point_c, -1.2);
  EXPECT_FALSE(day.wind_height_m);
}

const std::string kWideHeader = "\"STATION\",\"DATE\",\"LATITUDE\",\"LONGITUDE\",\"ELEVATION\","
                                "\"NAME\",\"PRCP\",\"PRCP_ATTRIBUTES\",\"TMAX\","
                                "\"TMAX_ATTRIBUTES\",\"TMIN\",\"TMIN_ATTRIBUTES\"\n";

std::string wide_row(const std::string& date, const std::string& prcp, const std::string& flags,
                     const std::string& tmax, const std::string& tmin) {
  return "\"XX000000001\",\"" + date + "\",\"1.0\",\"2.0\",\"3.0\",\"INVENTED, XX\",\"" + prcp +
         "\",\"" + flags + "\",\"" + tmax + "\",\",,0\",\"" + tmin + "\",\",,0\"\n";
}

TEST(GhcnWide, TenthsWithFlags) {
  const std::string content = kWideHeader +
                              wide_row("2003-05-01", "    5", ",,X,2400", "  178", "  100") +
                              wide_row("2003-05-02", "    0", "T,,X,2400", "  178", "  100") +
                              wide_row("2003-05-03", "  300", ",G,X,2400", "  178", "  100") +
                              wide_row("2003-05-04", "", "", "  178", "-9999");
  const auto mapping = Reader().guess(content);
  ASSERT_TRUE(mapping);
  EXPECT_EQ(mapping->format, "ghcn_wide");
  EXPECT_EQ(mapping->scale.at("tmax_c"), 0.1);
  const auto reading = Reader().read(content, *mapping);
  EXPECT_THAT(codes(reading.remarks), ElementsAre("failed_check", "no_value", "no_value"));
  EXPECT_EQ(reading.weather.at(on("2003-05-01")).rain_mm, 0.5);
  EXPECT_TRUE(reading.weather.at(on("2003-05-02")).rain_trace);
  EXPECT_FALSE(reading.weather.at(on("2003-05-03")).rain_mm);
  EXPECT_EQ(reading.weather.at(on("2003-05-04")).tmax_c, 17.8);
  EXPECT_FALSE(reading.weather.at(on("2003-05-04")).tmin_c);
}

TEST(GhcnWide, MetricAndUsNumbersAreToldApart) {
  const std::string header = "STATION,NAME,DATE,PRCP,TMAX,TMIN\n";
  const std::string metric = header + "XX000000001,\"INVENTED, XX\",2003-07-01,12.7,31.1,20.0\n";
  EXPECT_EQ(Reader().guess(metric)->unit.at("tmax_c"), "C");
  EXPECT_FALSE(Reader().guess(metric)->scale.contains("tmax_c"));
  EXPECT_EQ(read_with(metric).weather.at(on("2003-07-01")).rain_mm, 12.7);
  const std::string us = header + "XX000000001,\"INVENTED, XX\",2003-07-01,0.5,88,68\n";
  EXPECT_EQ(Reader().guess(us)->unit.at("tmax_c"), "F");
  const auto day = read_with(us).weather.at(on("2003-07-01"));
  EXPECT_EQ(day.rain_mm, 12.7);
  EXPECT_EQ(day.tmin_c, 20.0);
}

TEST(GhcnWide, NumbersThatProveNothingAreAskedFor) {
  // A cold spell: 31 may be tenths, whole degrees C or degrees F.
  const std::string content = "STATION,DATE,PRCP,TMAX,TMIN\nXX000000001,2003-01-01,0,31,20\n";
  EXPECT_EQ(Reader().guess(content)->unit.at("tmax_c"), "unknown");
  EXPECT_THAT(codes(read_with(content).problems), ElementsAre("unit_not_known"));
  const auto tenths = read_with(content, {"unit.tmax_c=C", "scale.tmax_c=0.1", "unit.tmin_c=C",
                                          "scale.tmin_c=0.1", "unit.rain_mm=mm"});
  EXPECT_THAT(tenths.problems, IsEmpty());
  EXPECT_EQ(tenths.weather.at(on("2003-01-01")).tmax_c, 3.1);
}

TEST(GhcnWide, ARowOfAnotherLength) {
  const auto all = read_ghcn_wide("STATION,DATE,TMAX\nXX000000001,2003-01-01,178\n"
                                  "XX000000001,2003-01-02\nXX000000001,2003-02-30,178\n"
                                  "XX000000001,2003-01-03,x\nXX000000001,2003-01-0");
  EXPECT_THAT(codes(all.remarks), ElementsAre("cells", "no_such_day", "unreadable", "cut_short"));
}

TEST(GhcnLong, WithAndWithoutAHeader) {
  const std::string rows = "XX000000001,20030501,TMAX,178,,,0,2400\n"
                           "XX000000001,20030501,PRCP,0,T,,0,2400\n"
                           "XX000000001,20030502,TMAX,999,,X,0,\n";
  for (const std::string& content : {rows, "ID,DATE,ELEMENT,DATA_VALUE,M,Q,S,TIME\n" + rows}) {
    const auto mapping = Reader().guess(content);
    ASSERT_TRUE(mapping);
    EXPECT_EQ(mapping->format, "ghcn_long");
    const auto reading = Reader().read(content, *mapping);
    EXPECT_EQ(reading.rows, 3);
    EXPECT_THAT(codes(reading.remarks), ElementsAre("no_value", "failed_check"));
    EXPECT_EQ(reading.weather.at(on("2003-05-01")).tmax_c, 17.8);
    EXPECT_TRUE(reading.weather.at(on("2003-05-01")).rain_trace);
    EXPECT_EQ(reading.weather.size(), 1U);
  }
}

TEST(GhcnLong, BadRowsAreNamed) {
  const auto all =
      read_ghcn_long("XX000000001,20030501,TMAX,178,,,0,\nnonsense\n"
                     "XX000000001,20030231,TMAX,178,,,0,\nXX000000001,20030502,TMAX,1");
  EXPECT_THAT(codes(all.remarks), ElementsAre("not_a_long_row", "no_such_day", "cut_short"));
  EXPECT_EQ(all.elements.size(), 1U);
}

TEST(Ghcn, AFormatNobodyKnows) {
  EXPECT_THAT(codes(Reader().read("x", format("xml")).problems), ElementsAre("no_such_format"));
}

TEST(Ghcn, NothingToReadIsAProblem) {
  for (const char* name : {"ghcn_dly", "ghcn_wide", "ghcn_long"}) {
    EXPECT_THAT(codes(Reader().read("", format(name)).problems), ElementsAre("no_days")) << name;
  }
}

} // namespace
} // namespace baize::weather_files
