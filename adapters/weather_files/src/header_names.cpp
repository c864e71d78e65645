#include "header_names.h"

#include "baize/units/number.h"
#include "fields.h"
#include "text.h"

#include <algorithm>
#include <array>
#include <utility>
#include <vector>

namespace baize::weather_files {

namespace {

struct Alias {
  std::string_view name; ///< words put together, small letters
  const char* field;
};

/// Common column names in English, and a few in Spanish, French and German.
/// A quantity that is not surely ours (pan evaporation, gusts) is not here.
constexpr std::array kAliases{
    Alias{"date", "day"},
    Alias{"day", "day"},
    Alias{"datum", "day"},
    Alias{"fecha", "day"},
    Alias{"dia", "day"},
    Alias{"día", "day"},
    Alias{"jour", "day"},
    Alias{"tag", "day"},
    Alias{"time", "day"},
    Alias{"yyyymmdd", "day"},
    Alias{"dayofmonth", "day"},
    Alias{"dd", "day"},
    Alias{"month", "month"},
    Alias{"mon", "month"},
    Alias{"mes", "month"},
    Alias{"mois", "month"},
    Alias{"monat", "month"},
    Alias{"mm", "month"},
    Alias{"year", "year"},
    Alias{"yr", "year"},
    Alias{"año", "year"},
    Alias{"annee", "year"},
    Alias{"année", "year"},
    Alias{"jahr", "year"},
    Alias{"yyyy", "year"},
    Alias{"tmin", "tmin_c"},
    Alias{"mint", "tmin_c"},
    Alias{"tn", "tmin_c"},
    Alias{"mintemp", "tmin_c"},
    Alias{"tempmin", "tmin_c"},
    Alias{"mintemperature", "tmin_c"},
    Alias{"minimumtemperature", "tmin_c"},
    Alias{"minimumtemp", "tmin_c"},
    Alias{"temperaturemin", "tmin_c"},
    Alias{"temperatureminimum", "tmin_c"},
    Alias{"lowesttemperature", "tmin_c"},
    Alias{"lowtemp", "tmin_c"},
    Alias{"mín", "tmin_c"},
    Alias{"tmín", "tmin_c"},
    Alias{"min", "tmin_c"},
    Alias{"tmax", "tmax_c"},
    Alias{"maxt", "tmax_c"},
    Alias{"tx", "tmax_c"},
    Alias{"maxtemp", "tmax_c"},
    Alias{"tempmax", "tmax_c"},
    Alias{"maxtemperature", "tmax_c"},
    Alias{"maximumtemperature", "tmax_c"},
    Alias{"maximumtemp", "tmax_c"},
    Alias{"temperaturemax", "tmax_c"},
    Alias{"temperaturemaximum", "tmax_c"},
    Alias{"highesttemperature", "tmax_c"},
    Alias{"hightemp", "tmax_c"},
    Alias{"máx", "tmax_c"},
    Alias{"tmáx", "tmax_c"},
    Alias{"max", "tmax_c"},
    Alias{"tmean", "tmean_c"},
    Alias{"tavg", "tmean_c"},
    Alias{"tmed", "tmean_c"},
    Alias{"meantemp", "tmean_c"},
    Alias{"avgtemp", "tmean_c"},
    Alias{"meantemperature", "tmean_c"},
    Alias{"averagetemperature", "tmean_c"},
    Alias{"temperaturemean", "tmean_c"},
    Alias{"tempmean", "tmean_c"},
    Alias{"tempavg", "tmean_c"},
    Alias{"temperature", "tmean_c"},
    Alias{"temp", "tmean_c"},
    Alias{"rain", "rain_mm"},
    Alias{"rainfall", "rain_mm"},
    Alias{"rainfallamount", "rain_mm"},
    Alias{"rainsum", "rain_mm"},
    Alias{"prcp", "rain_mm"},
    Alias{"precip", "rain_mm"},
    Alias{"precipitation", "rain_mm"},
    Alias{"precipitationsum", "rain_mm"},
    Alias{"precipitación", "rain_mm"},
    Alias{"precipitacion", "rain_mm"},
    Alias{"précipitations", "rain_mm"},
    Alias{"lluvia", "rain_mm"},
    Alias{"pluie", "rain_mm"},
    Alias{"niederschlag", "rain_mm"},
    Alias{"regen", "rain_mm"},
    Alias{"et0", "et0_mm"},
    Alias{"eto", "et0_mm"},
    Alias{"referenceet", "et0_mm"},
    Alias{"refet", "et0_mm"},
    Alias{"etref", "et0_mm"},
    Alias{"etref0", "et0_mm"},
    Alias{"referenceevapotranspiration", "et0_mm"},
    Alias{"et0faoevapotranspiration", "et0_mm"},
    Alias{"srad", "solar_mj_m2"},
    Alias{"solar", "solar_mj_m2"},
    Alias{"solarradiation", "solar_mj_m2"},
    Alias{"globalradiation", "solar_mj_m2"},
    Alias{"shortwaveradiationsum", "solar_mj_m2"},
    Alias{"radiation", "solar_mj_m2"},
    Alias{"rs", "solar_mj_m2"},
    Alias{"wind", "wind_m_s"},
    Alias{"windspeed", "wind_m_s"},
    Alias{"meanwindspeed", "wind_m_s"},
    Alias{"windspeedmean", "wind_m_s"},
    Alias{"avgwindspeed", "wind_m_s"},
    Alias{"u2", "wind_m_s"},
    Alias{"viento", "wind_m_s"},
    Alias{"dewpoint", "dew_point_c"},
    Alias{"dewpointtemperature", "dew_point_c"},
    Alias{"tdew", "dew_point_c"},
    Alias{"dewp", "dew_point_c"},
    Alias{"rhmax", "humidity_max_pct"},
    Alias{"maxrh", "humidity_max_pct"},
    Alias{"humiditymax", "humidity_max_pct"},
    Alias{"maxhumidity", "humidity_max_pct"},
    Alias{"relativehumiditymax", "humidity_max_pct"},
    Alias{"rhmin", "humidity_min_pct"},
    Alias{"minrh", "humidity_min_pct"},
    Alias{"humiditymin", "humidity_min_pct"},
    Alias{"minhumidity", "humidity_min_pct"},
    Alias{"relativehumiditymin", "humidity_min_pct"},
};

/// Units as headers write them, their marks left out: "m s-1" is ms1.
constexpr std::array kUnitWords{
    std::pair{"c", "C"},
    std::pair{"degc", "C"},
    std::pair{"degreec", "C"},
    std::pair{"degreesc", "C"},
    std::pair{"celsius", "C"},
    std::pair{"degreescelsius", "C"},
    std::pair{"f", "F"},
    std::pair{"degf", "F"},
    std::pair{"degreef", "F"},
    std::pair{"degreesf", "F"},
    std::pair{"fahrenheit", "F"},
    std::pair{"degreesfahrenheit", "F"},
    std::pair{"mm", "mm"},
    std::pair{"millimetres", "mm"},
    std::pair{"millimeters", "mm"},
    std::pair{"mmday", "mm"},
    std::pair{"mmd", "mm"},
    std::pair{"mmd1", "mm"},
    std::pair{"mmday1", "mm"},
    std::pair{"lm2", "mm"},
    std::pair{"cm", "cm"},
    std::pair{"in", "in"},
    std::pair{"inch", "in"},
    std::pair{"inches", "in"},
    std::pair{"ms", "m/s"},
    std::pair{"mps", "m/s"},
    std::pair{"ms1", "m/s"},
    std::pair{"msec", "m/s"},
    std::pair{"kmh", "km/h"},
    std::pair{"kph", "km/h"},
    std::pair{"kmh1", "km/h"},
    std::pair{"mph", "mph"},
    std::pair{"kn", "kn"},
    std::pair{"kt", "kn"},
    std::pair{"kts", "kn"},
    std::pair{"knots", "kn"},
    std::pair{"mj", "MJ/m2"},
    std::pair{"mjm2", "MJ/m2"},
    std::pair{"mjm2d", "MJ/m2"},
    std::pair{"mjm2day", "MJ/m2"},
    std::pair{"mjm2d1", "MJ/m2"},
    std::pair{"mjm2day1", "MJ/m2"},
    std::pair{"wm2", "W/m2"},
    std::pair{"kwhm2", "kWh/m2"},
    std::pair{"jcm2", "J/cm2"},
    std::pair{"pct", "%"},
    std::pair{"percent", "%"},
};

constexpr std::array<std::string_view, 4> kNoise{"daily", "air", "2m", "station"};

bool word_byte(char c) {
  // Bytes above ASCII belong to letters such as í.
  return (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || static_cast<unsigned char>(c) >= 0x80;
}

/// Small letters in words; "m²" counts as m2 and the degree sign as nothing.
std::vector<std::string> words(std::string_view text) {
  std::string plain = lower(text);
  const auto replace_all = [&plain](std::string_view from, std::string_view to) {
    for (auto at = plain.find(from); at != std::string::npos; at = plain.find(from, at)) {
      plain.replace(at, from.size(), to);
      at += to.size();
    }
  };
  replace_all("°", " ");
  replace_all("²", "2");
  replace_all("⁻¹", "1");
  std::vector<std::string> result;
  std::string word;
  for (const char c : plain + " ") {
    if (word_byte(c)) {
      word += c;
    } else if (!word.empty()) {
      result.push_back(std::exchange(word, {}));
    }
  }
  return result;
}

std::string together(const std::vector<std::string>& parts, std::size_t from, std::size_t to) {
  std::string text;
  for (std::size_t i = from; i < to; ++i) {
    text += parts[i];
  }
  return text;
}

const char* unit_of(std::string_view text) {
  const auto found = std::find_if(kUnitWords.begin(), kUnitWords.end(),
                                  [text](const auto& pair) { return text == pair.first; });
  return found == kUnitWords.end() ? nullptr : found->second;
}

const char* alias_of(std::string_view text) {
  const auto found = std::find_if(kAliases.begin(), kAliases.end(),
                                  [text](const Alias& alias) { return text == alias.name; });
  return found == kAliases.end() ? nullptr : found->field;
}

/// "10m" as 10.
std::optional<double> height(const std::string& word) {
  if (word.size() < 2 || word.back() != 'm') {
    return std::nullopt;
  }
  const auto value = units::parse_number(std::string_view(word).substr(0, word.size() - 1));
  return value && *value >= 0.5 && *value <= 100 ? std::optional(*value) : std::nullopt;
}

/// The text in the last pair of brackets is taken off and returned.
std::optional<std::string> take_brackets(std::string& text) {
  const auto open = text.find_last_of("([");
  const auto close = text.find_last_of(")]");
  if (open == std::string::npos || close == std::string::npos || close < open) {
    return std::nullopt;
  }
  std::string inside = text.substr(open + 1, close - open - 1);
  text = text.substr(0, open) + " " + text.substr(close + 1);
  return inside;
}

std::string unit_in_brackets(const std::string& text) {
  if (trim(text) == "%") {
    return "%";
  }
  const auto parts = words(text);
  const char* unit = unit_of(together(parts, 0, parts.size()));
  return unit != nullptr ? unit : std::string(kUnknownUnit);
}

bool fits(const char* field, const std::string& unit) {
  const auto index = field_index(field);
  const Unit* known = find_unit(unit);
  return index && known != nullptr && std::string_view(fields()[*index].unit) == known->ours;
}

/// The name of the quantity, perhaps with its unit as the last one to three words.
std::optional<HeaderName> named(const std::vector<std::string>& parts) {
  if (const char* field = alias_of(together(parts, 0, parts.size()))) {
    return HeaderName{field, "", {}};
  }
  for (std::size_t tail = 1; tail <= 3 && tail < parts.size(); ++tail) {
    const std::size_t cut = parts.size() - tail;
    const char* unit = unit_of(together(parts, cut, parts.size()));
    const char* field = alias_of(together(parts, 0, cut));
    if (unit != nullptr && field != nullptr && fits(field, unit)) {
      return HeaderName{field, unit, {}};
    }
  }
  return std::nullopt;
}

} // namespace

std::optional<HeaderName> header_name(std::string_view text) {
  std::string rest(text.substr(0, 100)); // no name of a column is longer
  const auto brackets = take_brackets(rest);
  auto parts = words(rest);
  std::optional<double> stated_height;
  const auto is_height = [&stated_height](const std::string& word) {
    const auto found = height(word);
    stated_height = found ? found : stated_height;
    return found.has_value();
  };
  parts.erase(std::remove_if(parts.begin(), parts.end(), is_height), parts.end());
  parts.erase(std::remove_if(parts.begin(), parts.end(),
                             [](const std::string& word) {
                               return std::find(kNoise.begin(), kNoise.end(), word) != kNoise.end();
                             }),
              parts.end());
  auto result = named(parts);
  if (!result) {
    return std::nullopt;
  }
  if (brackets) {
    result->unit = unit_in_brackets(*brackets);
    if (!fits(result->field.c_str(), result->unit)) {
      result->unit = kUnknownUnit;
    }
  }
  if (result->field == "wind_m_s") {
    result->height_m = text == "u2" ? std::optional(2.0) : stated_height;
  }
  return result;
}

} // namespace baize::weather_files
