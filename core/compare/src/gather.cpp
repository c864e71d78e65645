#include "baize/compare/gather.h"

#include <algorithm>
#include <limits>
#include <map>
#include <tuple>

namespace baize::compare {
namespace {

using Surface = std::tuple<units::Day, std::string>; ///< day and half
using Together = std::vector<const recovery::WorkLoss*>;

const green::Work* work_of(const green::Records& share, const std::string& id) {
  const auto found = std::find_if(share.works.begin(), share.works.end(),
                                  [&](const green::Work& work) { return work.id == id; });
  return found == share.works.end() ? nullptr : &*found;
}

/// (after, by]; both on the work's own day: back within a day.
stats::CensoredTime time_of(double after, const std::optional<double>& by, double least) {
  if (!by) {
    return {after, std::numeric_limits<double>::infinity()};
  }
  return {after, std::max(*by, after == 0 ? least : after)};
}

std::optional<stats::CensoredTime> growth_days_of(const recovery::RecoveryInterval& interval) {
  const bool open = !interval.by_days;
  if (!interval.after_growth_days || (!open && !interval.by_growth_days)) {
    return std::nullopt;
  }
  // A frozen interval has no growth in it and says nothing of growth-days.
  if (!open && *interval.by_growth_days <= *interval.after_growth_days) {
    return std::nullopt;
  }
  return time_of(*interval.after_growth_days, interval.by_growth_days, 0);
}

std::optional<double> growth_after(const climate::Weather& weather, units::Day day, int window,
                                   const climate::GrowthOptions& growth) {
  const climate::GrowthDays sum = climate::growth_days(weather, day, day + window, growth);
  const int known = sum.days - sum.missing;
  if (known == 0 || 2 * known < window) {
    return std::nullopt;
  }
  return sum.sum / known;
}

std::string method_of_all(const green::Records& share, const Together& together,
                          const Grouping& grouping) {
  std::set<std::string> methods;
  for (const recovery::WorkLoss* loss : together) {
    if (const green::Work* work = work_of(share, loss->work)) {
      methods.insert(method_of(*work, loss->green, share.works, grouping));
    }
  }
  std::string all;
  for (const std::string& method : methods) {
    all += (all.empty() ? "" : " + ") + method;
  }
  return all;
}

Look look_of(const green::Records& share, const Together& together,
             const recovery::RecoveryInterval& interval, const GatherOptions& options) {
  const recovery::WorkLoss& loss = *together.front();
  Look look;
  look.method = method_of_all(share, together, options.grouping);
  look.club = share.club.id;
  look.green = loss.green;
  look.half = loss.half;
  for (const recovery::WorkLoss* one : together) {
    look.works.push_back(one->work);
  }
  look.day = loss.day;
  std::optional<double> by;
  if (interval.by_days) {
    by = *interval.by_days;
  }
  look.days = time_of(interval.after_days, by, 1);
  if (interval.by_days_if_good) {
    look.days_if_good = time_of(interval.after_days, *interval.by_days_if_good, 1);
  }
  look.growth_days = growth_days_of(interval);
  look.censoring = interval.censoring;
  look.before = loss.before;
  look.depth = loss.depth;
  if (loss.area) {
    look.score_days = loss.area->score_days;
    look.score_days_ended = loss.area->ended;
  }
  look.warm_grass = share.greens.front().grass == green::Grass::warm;
  return look;
}

void note_plans(const green::Records& share, units::Day record_end, const Grouping& grouping,
                Gathered& into) {
  for (const green::Work& work : share.works) {
    if (work.day > record_end && green::class_of(work) == green::WorkClass::disruptive &&
        (grouping.kind.empty() || work.kind == grouping.kind)) {
      into.plans.insert(share.club.id + "/" + work.id);
    }
  }
}

bool wanted(const Together& together, const Grouping& grouping) {
  return grouping.kind.empty() ||
         std::any_of(together.begin(), together.end(),
                     [&](const auto* loss) { return loss->kind == grouping.kind; });
}

} // namespace

std::optional<units::Problem> GatherOptions::problem() const {
  if (growth_window_days < 1 || growth_window_days > 120) {
    return units::Problem{"growth_window_out_of_range", "growth_window_days",
                          std::to_string(growth_window_days), "a whole number from 1 to 120", ""};
  }
  return grouping.problem();
}

void gather(const green::Records& share, const climate::Weather& weather, units::Day record_end,
            const GatherOptions& options, Gathered& into) {
  if (!options.valid() || share.greens.empty()) {
    return;
  }
  const green::Green& green = share.greens.front();
  recovery::Options settings;
  settings.growth = recovery::growth_options_for(green.grass);
  note_plans(share, record_end, options.grouping, into);
  const auto losses = recovery::work_losses(share, weather, green.id, record_end, settings);
  std::map<Surface, Together> together;
  for (const recovery::WorkLoss& loss : losses) {
    together[{loss.day, loss.half}].push_back(&loss);
  }
  for (const auto& [surface, all] : together) {
    if (!wanted(all, options.grouping)) {
      continue;
    }
    const recovery::WorkLoss& loss = *all.front();
    const auto& interval = loss.under(options.definition);
    if (interval.censoring == recovery::Censoring::not_asked) {
      ++into.no_score_before;
    } else if (loss.visits_after == 0) {
      ++into.not_looked_at;
    } else {
      Look look = look_of(share, all, interval, options);
      look.growth = growth_after(weather, loss.day, options.growth_window_days, settings.growth);
      into.looks.push_back(std::move(look));
    }
  }
}

} // namespace baize::compare
