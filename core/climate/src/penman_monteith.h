#pragma once

#include "baize/climate/evapotranspiration.h"

namespace baize::climate {

/// What the equation's two forms share, each in the unit of its period.
struct Balance {
  double available = 0; ///< net radiation less soil heat, MJ per m2
  double slope = 0;
  double psychrometric = 0;
  double temperature_c = 0;
  double wind_2m_m_s = 0;
  double deficit_kpa = 0;
};

/// The equation's own shape (eq. 6 and 53); `numerator` is 900 a day and 37 an hour.
double penman_monteith_mm(const Balance& balance, double numerator);

/// What keeps the daily equation from being worked: something missing, out of
/// its range, or swapped.
std::optional<units::Problem> input_problem(const Et0Inputs& inputs);

} // namespace baize::climate
