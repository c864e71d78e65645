// Does the season model's time grow as the clubs do? Small clubs one after another:
// three greens of the demo club and its last year, fitted, and every green's year
// projected. Prints seconds of processor time a club, memory, and what 10,000 take.
//   season_clubs [CLUBS...]    1 100 1000 where none is given
#include "baize/demo/demo_club.h"
#include "baize/season/project.h"

#include <algorithm>
#include <cstdio>
#include <cstdlib>
#include <ctime>
#include <set>
#include <sys/resource.h>
#include <vector>

namespace baize {
namespace {

constexpr int kYear = 2024;
constexpr std::size_t kGreens = 3;

/// The k-th choice of greens, with their visits and works of the year.
green::Records small_club(const green::Records& all, std::size_t k) {
  green::Records club;
  club.club = all.club;
  club.standards = all.standards;
  std::set<std::string> ids;
  for (std::size_t i = 0; i < kGreens; ++i) {
    club.greens.push_back(all.greens[(k + 6 * i) % all.greens.size()]);
    ids.insert(club.greens.back().id);
  }
  const units::Period year = units::calendar_year(kYear);
  for (const green::Visit& visit : all.visits) {
    if (ids.contains(visit.green) && year.holds(visit.day)) {
      club.visits.push_back(visit);
    }
  }
  for (const green::Work& work : all.works) {
    if (year.holds(work.day)) {
      club.works.push_back(work);
    }
  }
  return club;
}

double seconds() {
  return static_cast<double>(std::clock()) / CLOCKS_PER_SEC;
}

long peak_kilobytes() {
  rusage usage{};
  ::getrusage(RUSAGE_SELF, &usage);
  return usage.ru_maxrss;
}

/// Processor seconds of the model of so many clubs.
double measure(const demo::DemoClub& demo, int clubs, int& usable) {
  double spent = 0;
  for (int i = 0; i < clubs; ++i) {
    const green::Records club = small_club(demo.records, static_cast<std::size_t>(i));
    const units::Day end = units::calendar_year(kYear).last;
    const double begin = seconds();
    const auto fit = season::fit_season(season::read_model(club, demo.weather, end));
    for (const green::Green& green : club.greens) {
      const auto year = season::project(fit, club, green.id, "", units::calendar_year(kYear));
      usable += year.summary.usable ? 1 : 0;
    }
    spent += seconds() - begin;
  }
  return spent;
}

void run(std::vector<int> sizes) {
  if (sizes.empty()) {
    sizes = {1, 100, 1000};
  }
  const demo::DemoClub demo = demo::make();
  double first = 0;
  double last = 0;
  std::puts("clubs  seconds  ms a club  against the first  peak MB  green years");
  for (const int clubs : sizes) {
    int usable = 0;
    const double spent = measure(demo, clubs, usable);
    last = spent / clubs;
    first = first == 0 ? last : first;
    std::printf("%5d  %7.2f  %9.2f  %17.2f  %7.1f  %11d\n", clubs, spent, 1000 * last, last / first,
                static_cast<double>(peak_kilobytes()) / 1024, usable);
    std::fflush(stdout);
  }
  std::printf("10,000 such clubs, projected: %.0f s of one core\n", 10000 * last);
}

} // namespace
} // namespace baize

int main(int argc, char** argv) {
  std::vector<int> sizes;
  for (int i = 1; i < argc; ++i) {
    sizes.push_back(std::max(std::atoi(argv[i]), 1));
  }
  baize::run(sizes);
  return 0;
}
