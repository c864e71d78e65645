#pragma once

#include "baize/climate/weather.h"
#include "baize/green/club.h"
#include "baize/recovery/ledger.h"
#include "baize/recovery/work_loss.h"

#include <rapidcheck.h>

#include <string>
#include <vector>

namespace baize::laws {

/// The days of every invented record: 120 from 2025-03-01.
inline constexpr units::Day kFirst{20148};
inline constexpr int kDays = 120;
inline constexpr units::Day kLast{kFirst.since_epoch + kDays - 1};

/// Any club of two greens, the first with halves: visits with and without times and halves, rolls
/// and totals, works of all classes on greens and halves, seasons of the standard.
rc::Gen<green::Records> any_records();
/// One visit to a green on a day at spot "main" (no half), with one to three scored rolls.
rc::Gen<green::Visit> any_visit(const std::string& id, const std::string& green, units::Day day);
/// Some days of weather, some of them without a temperature.
rc::Gen<climate::Weather> any_weather();

/// Every figure to its last bit, so that two results can be compared byte by byte.
std::string print(const std::vector<recovery::WorkLoss>& losses);
std::string print(const recovery::Ledger& ledger);

std::vector<recovery::WorkLoss> losses_of(const green::Records& records,
                                          const climate::Weather& weather = {});

} // namespace baize::laws
