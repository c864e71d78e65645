#include "slices.h"
#include "works_of.h"

#include <algorithm>
#include <tuple>

namespace baize::services {
namespace {

void put_figures(WorkLine& line, const std::vector<LossHere>& losses) {
  double depth = 0;
  double area = 0;
  int depths = 0;
  int areas = 0;
  std::optional<int> least_after;
  std::optional<int> most_by;
  for (const LossHere& here : losses) {
    if (here.loss->depth) {
      depth += *here.loss->depth;
      ++depths;
    }
    if (here.loss->area) {
      area += here.loss->area->score_days;
      ++areas;
      line.losses_open += here.loss->area->ended ? 0 : 1;
    }
    const auto& back = here.loss->under(recovery::kHeadline);
    if (!back.by_days) {
      ++line.censored;
      continue;
    }
    ++line.back;
    line.back_at_lower_standard += here.loss->back_at_lower_standard ? 1 : 0;
    least_after = std::min(least_after.value_or(back.after_days), back.after_days);
    most_by = std::max(most_by.value_or(*back.by_days), *back.by_days);
  }
  if (depths > 0) {
    line.mean_depth = depth / depths;
  }
  if (areas > 0) {
    line.mean_score_days = area / areas;
  }
  line.back_after_days = least_after;
  line.back_by_days = most_by;
}

int greens_touched(const green::Records& records, const green::Work& work) {
  return work.greens.empty() ? static_cast<int>(records.greens.size())
                             : static_cast<int>(work.greens.size());
}

} // namespace

std::vector<WorkLine> work_lines(const green::Records& records, const climate::Weather& weather,
                                 units::Day today) {
  const auto shares = slices(records, today);
  const LossBook book(shares, weather, today);
  std::vector<WorkLine> lines;
  lines.reserve(records.works.size());
  for (const green::Work& work : records.works) {
    WorkLine line;
    line.work = work;
    line.label = work_label(work);
    line.work_class = green::class_of(work);
    line.greens = greens_touched(records, work);
    put_figures(line, book.of(work.id));
    lines.push_back(std::move(line));
  }
  std::sort(lines.begin(), lines.end(), [](const WorkLine& a, const WorkLine& b) {
    return std::tie(b.work.day, b.work.id) < std::tie(a.work.day, a.work.id);
  });
  return lines;
}

} // namespace baize::services
