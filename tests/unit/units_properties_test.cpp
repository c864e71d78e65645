#include "baize/units/day.h"
#include "baize/units/length.h"
#include "baize/units/number.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>
#include <cstdlib>

namespace {

using namespace baize::units;

const auto kDays =
    rc::gen::inRange(make_day(1600, 1, 1)->since_epoch, make_day(2600, 12, 31)->since_epoch + 1);

RC_GTEST_PROP(DayLaws, WritingAndReadingAgree, ()) {
  const Day day{*kDays};
  RC_ASSERT(parse_iso_day(iso(day)).value() == day);
  const auto [y, m, d] = year_month_day(day);
  RC_ASSERT(make_day(y, m, d).value() == day);
}

RC_GTEST_PROP(DayLaws, TheNextDayIsLater, ()) {
  const Day day{*kDays};
  RC_ASSERT(iso(day) < iso(day + 1));
  RC_ASSERT(day_of_year(day + 1) == day_of_year(day) + 1 || day_of_year(day + 1) == 1);
}

RC_GTEST_PROP(NumberLaws, WritingAndReadingAgree, (double value)) {
  RC_PRE(std::isfinite(value));
  for (const char decimal : {'.', ','}) {
    RC_ASSERT(parse_number(write_number(value, decimal), decimal).value() == value);
  }
}

RC_GTEST_PROP(NumberLaws, ShowingErrsByHalfTheLastPlace, ()) {
  const double value = *rc::gen::inRange(-1000000, 1000000) / 777.0;
  const int places = *rc::gen::inRange(0, 6);
  const double shown = std::strtod(show_number(value, places).c_str(), nullptr);
  RC_ASSERT(std::fabs(shown - value) <= 0.5 * std::pow(10, -places) * (1 + 1e-9) + 1e-12);
}

RC_GTEST_PROP(NumberLaws, ReadingNeverGivesWhatIsNotFinite, (const std::string& text)) {
  const auto read = parse_number(text);
  RC_ASSERT(!read || std::isfinite(*read));
}

RC_GTEST_PROP(LengthLaws, FeetCentimetresAndMetresAgree, ()) {
  const double cm = *rc::gen::inRange(0, 3000000) / 1000.0;
  const Length l = from_centimetres(cm);
  RC_ASSERT(std::fabs(from_feet(feet(l)).metres - l.metres) < 1e-12);
  RC_ASSERT(std::fabs(from_metres(l.metres).metres * 100 - centimetres(l)) < 1e-12);
  RC_ASSERT(std::fabs(feet(l) * 30.48 - cm) < 1e-9);
  const auto by_m = parse_length(write_number(cm / 100), LengthUnit::metre);
  const auto by_cm = parse_length(write_number(cm), LengthUnit::centimetre);
  RC_ASSERT(std::fabs(by_m->metres - by_cm->metres) < 1e-12);
}

RC_GTEST_PROP(LengthLaws, ShownFeetAndInchesReadBackWithinHalfAnInch, ()) {
  const Length l = from_metres(*rc::gen::inRange(0, 30000) / 1000.0);
  const auto back = parse_length(show(l, LengthUnit::foot_inch), LengthUnit::foot_inch);
  RC_ASSERT(back.has_value());
  RC_ASSERT(std::fabs(back->metres - l.metres) <= 0.0127 + 1e-9);
}

} // namespace
