#include "baize/trials/analysis.h"

#include "baize/stats/area_under_curve.h"
#include "baize/units/number.h"

#include <algorithm>
#include <utility>

namespace baize::trials {
namespace {

/// Visits on the day of the treatment come before it: it is done after the first look.
Values after(const Values& values, const std::optional<units::Day>& treated) {
  Values later = values;
  later.days.clear();
  later.by_day.clear();
  for (std::size_t d = 0; d < values.days.size(); ++d) {
    if (!treated || values.days[d] > *treated) {
      later.days.push_back(values.days[d]);
      later.by_day.push_back(values.by_day[d]);
    }
  }
  return later;
}

/// One plot's readings, days after the first day of all.
struct Course {
  std::vector<double> times;
  std::vector<double> readings;
};

Course course_of(const Values& values, std::size_t plot) {
  Course course;
  for (std::size_t d = 0; d < values.days.size(); ++d) {
    if (values.by_day[d][plot]) {
      course.times.push_back(values.days[d] - values.days.front());
      course.readings.push_back(*values.by_day[d][plot]);
    }
  }
  return course;
}

/// The first and last day between which every plot was seen.
std::pair<double, double> shared_days(const std::vector<Course>& courses) {
  double first = 0;
  double last = 1e9;
  for (const Course& course : courses) {
    if (course.times.size() > 1) {
      first = std::max(first, course.times.front());
      last = std::min(last, course.times.back());
    }
  }
  return {first, last};
}

double between(const Course& course, double time) {
  const auto after = std::lower_bound(course.times.begin(), course.times.end(), time);
  const auto i = static_cast<std::size_t>(after - course.times.begin());
  if (*after == time) {
    return course.readings[i];
  }
  const double part = (time - course.times[i - 1]) / (course.times[i] - course.times[i - 1]);
  return course.readings[i - 1] + part * (course.readings[i] - course.readings[i - 1]);
}

/// The course from `first` to `last`, both within it; ends that were not seen are bridged.
Course cut(const Course& course, double first, double last) {
  Course part{{first}, {between(course, first)}};
  for (std::size_t i = 0; i < course.times.size(); ++i) {
    if (course.times[i] > first && course.times[i] < last) {
      part.times.push_back(course.times[i]);
      part.readings.push_back(course.readings[i]);
    }
  }
  part.times.push_back(last);
  part.readings.push_back(between(course, last));
  return part;
}

std::optional<double> height(const Course& course) {
  const auto area = stats::area_under_curve(course.times, course.readings);
  return area.summary.usable ? std::optional(area.mean_height) : std::nullopt;
}

std::vector<std::optional<double>> shared_heights(const std::vector<Course>& courses,
                                                  Analysis& analysis) {
  const auto [first, last] = shared_days(courses);
  std::vector<std::optional<double>> heights;
  for (const Course& course : courses) {
    const bool long_enough = course.times.size() > 1 && last > first;
    analysis.area_lost += long_enough ? 0 : 1;
    heights.push_back(long_enough ? height(cut(course, first, last)) : std::nullopt);
  }
  return heights;
}

std::vector<std::optional<double>> heights(const Values& values, const AnalysisOptions& options,
                                           Analysis& analysis) {
  if (values.days.size() == 1) {
    return values.by_day.front();
  }
  std::vector<Course> courses;
  courses.reserve(values.by_day.front().size());
  for (std::size_t i = 0; i < values.by_day.front().size(); ++i) {
    courses.push_back(course_of(values, i));
  }
  if (options.ordinary_visits) {
    return shared_heights(courses, analysis);
  }
  std::vector<std::optional<double>> heights;
  for (std::size_t i = 0; i < courses.size(); ++i) {
    const bool both_ends = values.by_day.front()[i] && values.by_day.back()[i];
    analysis.area_lost += both_ends ? 0 : 1;
    analysis.interpolated +=
        both_ends ? static_cast<int>(values.days.size() - courses[i].times.size()) : 0;
    heights.push_back(both_ends ? height(courses[i]) : std::nullopt);
  }
  return heights;
}

/// Days on which every plot was seen, which alone can be compared by themselves
/// where visits are ordinary.
bool comparable(const std::vector<std::optional<double>>& values, const AnalysisOptions& options) {
  return !options.ordinary_visits ||
         std::all_of(values.begin(), values.end(), [](const auto& one) { return one.has_value(); });
}

} // namespace

std::optional<units::Problem> AnalysisOptions::problem() const {
  return TimeBackOptions{{}, standard, confidence}.problem();
}

Analysis analyse(const Plan& plan, const Values& all, const AnalysisOptions& options) {
  Analysis result;
  result.quantity = all.quantity;
  result.records = all.records;
  const Values values = after(all, options.treated);
  auto problem = options.problem();
  if (!problem && values.days.empty()) {
    problem = units::Problem{"too_few", "days", "0", "at least one visit after the treatment", ""};
  }
  if (problem) {
    result.summary = stats::refused(*problem);
    return result;
  }
  result.overall = analyse_values(plan, heights(values, options, result), options.confidence);
  result.summary = result.overall.summary;
  for (std::size_t d = 0; d < all.days.size(); ++d) {
    if (comparable(all.by_day[d], options)) {
      result.days.push_back({all.days[d], analyse_values(plan, all.by_day[d], options.confidence)});
    }
  }
  result.repeated = analyse_repeated(plan, values);
  result.ordinal = analyse_ordinal(plan, values, options.confidence);
  if (options.treated) {
    result.back = time_back(plan, all, {*options.treated, options.standard, options.confidence});
  }
  if (result.summary.usable) {
    result.checks =
        check_assumptions(plan, result.overall.values, result.overall.strata.back().residual_df);
  }
  return result;
}

} // namespace baize::trials
