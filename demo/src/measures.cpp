#include "measures.h"

#include "calendar.h"
#include "ground.h"
#include "random.h"

#include <algorithm>
#include <cmath>
#include <string_view>

namespace baize::demo {
namespace {

class Taker {
 public:
  explicit Taker(DemoClub& club) : club_(club) {}

  void take_day(units::Day day) {
    const climate::WeatherDay& weather = club_.weather.at(day);
    bucket_ =
        std::clamp(bucket_ + weather.rain_mm.value_or(0) - weather.et0_mm.value_or(0), 0.0, 60.0);
    if (in_season(day)) {
      bucket_ = std::max(bucket_, 22.0); // watered when it gets drier than that
    }
    if (in_season(day) && weekday(day) == 1) {
      moisture_and_firmness(day);
    }
    if (in_season(day) && (weekday(day) == 0 || weekday(day) == 3)) {
      clippings(day);
    }
    if (weekday(day) == 0 && (in_season(day) || (day - club_.truth.days.first) / 7 % 4 == 0)) {
      height(day);
    }
    const units::YearMonthDay date = units::year_month_day(day);
    if ((date.month == 3 || date.month == 11) && date.day == 4) {
      organic_matter(day, date.month == 11);
    }
    holes(day);
  }

 private:
  void add(units::Day day, int place, std::string_view kind, double value, int places,
           std::string_view device, int minute) {
    const double unit = places == 0 ? 1 : 10;
    green::Reading reading;
    reading.green = club_.truth.greens[static_cast<std::size_t>(place)].green;
    reading.observer = "mt";
    reading.day = day;
    reading.at = units::Minute{static_cast<std::int16_t>(minute)};
    reading.kind = std::string(kind);
    reading.value = static_cast<double>(std::lround(value * unit)) / unit;
    reading.device = std::string(device);
    reading.id = units::iso(day) + "/" + reading.kind + "/" + reading.green;
    if (reading.kind == "soil_moisture") {
      reading.rod_length_mm = 60;
    }
    club_.records.readings.push_back(reading);
  }

  Chance chance(units::Day day, int place, int what) const {
    return {club_.truth.seed, Purpose::reading, {day.since_epoch, place, what}};
  }

  void moisture_and_firmness(units::Day day) {
    for (int place = 0; place < kGreens; place += 3) {
      Chance luck = chance(day, place, 1);
      const double water = 12 + 0.38 * bucket_ + 1.5 * luck.normal();
      add(day, place, "soil_moisture", std::clamp(water, 5.0, 55.0), 1, "two-rod probe",
          9 * 60 + 30 + 5 * (place / 3));
      add(day, place, "firmness", std::clamp(128 - 1.4 * water + 4 * luck.normal(), 50.0, 150.0), 0,
          "dropped weight", 9 * 60 + 32 + 5 * (place / 3));
    }
  }

  void clippings(units::Day day) {
    const double growth =
        club_.truth.growth[static_cast<std::size_t>(day - club_.truth.days.first)];
    for (const int place : {1, 7, 13}) {
      Chance luck = chance(day, place, 2);
      add(day, place, "clipping_volume", std::max(1.0, 4 + 26 * growth + 3 * luck.normal()), 0,
          "bucket with a scale", 7 * 60 + 10);
    }
  }

  void height(units::Day day) {
    Chance luck = chance(day, 0, 3);
    add(day, 0, "height_of_cut", (in_season(day) ? 3.6 : 5.0) + 0.06 * luck.normal(), 1,
        "prism on the green", 8 * 60);
  }

  void organic_matter(units::Day day, bool autumn) {
    for (int place = 0; place < kGreens; place += 6) {
      Chance luck = chance(day, place, 4);
      const double top = (autumn ? 6.2 : 6.8) + 0.4 * luck.normal();
      add(day, place, "organic_matter_0_20", top, 1, "loss on ignition", 10 * 60);
      add(day, place, "organic_matter_20_40", top - 2.1 + 0.3 * luck.normal(), 1,
          "loss on ignition", 10 * 60);
    }
  }

  /// Every fourth day after a coring, on three greens, by the share of its loss that is over.
  void holes(units::Day day) {
    for (const WorkTruth& work : club_.truth.works) {
      const int since = day - work.day;
      const bool looked_at = work.work.ends_with("/coring") &&
                             (work.green == "2" || work.green == "8" || work.green == "4");
      if (!looked_at || since < 4 || since > 40 || since % 4 != 0) {
        continue;
      }
      const int place = work.green[0] - '1';
      const auto index = static_cast<std::size_t>(since);
      const double left = index < work.loss.size() ? work.loss[index] / work.depth : 0;
      Chance luck = chance(day, place, 5);
      const double closed = std::clamp(100 * (1 - left) + 5 * luck.normal(), 0.0, 100.0);
      // Written to the nearest five, and one half of a split green is enough a day.
      const auto& last = club_.records.readings;
      if (!last.empty() && last.back().day == day && last.back().kind == "holes_closed" &&
          last.back().green == work.green) {
        continue;
      }
      add(day, place, "holes_closed", 5.0 * static_cast<double>(std::lround(closed / 5)), 0,
          "by eye", 10 * 60 + 20 + 5 * place);
    }
  }

  DemoClub& club_;
  double bucket_ = 45; ///< mm of water that the rain and the sun leave, as in January
};

} // namespace

void take_readings(DemoClub& club) {
  Taker taker(club);
  for (units::Day day = club.truth.days.first; day <= club.truth.days.last; ++day) {
    taker.take_day(day);
  }
}

} // namespace baize::demo
