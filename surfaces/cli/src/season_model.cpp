// One green's year as the season model sees it.
#include "season_model.h"

#include "baize/answers/season_checks.h"
#include "baize/answers/season_model.h"
#include "progress.h"
#include "table.h"

#include <fmt/format.h>

namespace baize::cli {
namespace {

std::string interval(const season::Estimate& one) {
  return fmt::format("{:.2f} ({:.2f} to {:.2f})", one.value, one.low, one.high);
}

std::string days(const season::Return& one) {
  if (!one.median) {
    return "not within " + std::to_string(one.followed);
  }
  const auto part = [&](const std::optional<int>& day) {
    return day ? std::to_string(*day) : "over " + std::to_string(one.followed);
  };
  return part(one.median) + " (" + part(one.low) + " to " + part(one.high) + ")";
}

void print_days(const Session& session, const services::SeasonModel& model) {
  Table table({words("day"), words("to come"), number("score"), number("low"), number("high"),
               number("undisturbed"), number("chance"), number("standard")});
  for (const season::DayEstimate& day : model.estimates.days) {
    table.add({cell(day.day), cell(std::string(day.to_come ? "yes" : "no")),
               cell(session, day.score, 2), cell(session, day.score_low, 2),
               cell(session, day.score_high, 2), cell(session, day.undisturbed, 2),
               cell(session, day.chance, 3), cell(session, day.standard, 1)});
  }
  table.print(session);
}

void print_works(const Session& session, const services::SeasonModel& model,
                 const season::SeasonFit& fit) {
  const bool growth = fit.model.clock == season::Clock::growth_days;
  Table table({words("day"), words("work"), words("half"), words("depth"),
               words(growth ? "half gone in growth-days" : "half gone in days"),
               words("score-days lost"), words("days within tolerance"),
               words("days at standard")});
  for (const season::WorkEstimate& work : model.estimates.works) {
    table.add({cell(work.loss.day), cell(work.loss.label), cell(work.loss.half),
               cell(interval(work.depth)), cell(interval(work.half_life)),
               cell(interval(work.score_days)), cell(days(work.within_tolerance)),
               cell(days(work.at_standard))});
  }
  table.print(session);
}

void print_observers(const Session& session, const season::SeasonFit& fit) {
  Table table({words("observer"), number("visits"), words("above the mean of all")});
  for (const season::ObserverEstimate& one : fit.observers) {
    table.add({cell(one.observer), cell(one.looks), cell(interval(one.above))});
  }
  table.print(session);
}

season::SeasonFit fitted(const Session& session, const OpenClub& club) {
  Progress progress(session.err, session.ports.show_progress, 0);
  return services::season_fit(club.records, club.weather, session.ports.today,
                              watch(session, progress, "fitting the season model"));
}

void print_leaning(const Session& session, const services::SeasonChecks& checks) {
  Table table({words("method"), number("beliefs", "times as wide"),
               number("depth moves", "standard errors"), number("rate moves", "standard errors")});
  for (const season::Leaning& leaning : checks.checks.leaning) {
    for (const season::Shift& one : leaning.methods) {
      table.add({cell(one.method), cell(session, leaning.times, 1), cell(session, one.depth, 2),
                 cell(session, one.rate, 2)});
    }
  }
  table.print(session);
}

} // namespace

void tell_season_model(Session& session, const OpenClub& club, const std::string& green, int year) {
  const season::SeasonFit fit = fitted(session, club);
  const auto model = services::season_model(fit, club.records, green, year);
  if (!model) {
    session.refuse(model.error());
  } else if (session.shape() == Shape::json) {
    session.print(answers::to_json(*model, fit));
  } else if (session.shape() == Shape::csv) {
    print_days(session, *model);
  } else {
    session.out << model->sentence << "\nEstimated beside what was measured, never instead of it; "
                << "each with its 95 % interval.\n\nWorks\n";
    print_works(session, *model, fit);
    session.out << "\nObservers\n";
    print_observers(session, fit);
    session.out << services::surprises_sentence(season::surprises_of(fit)) << '\n';
    for (const std::string& note : model->notes) {
      session.out << note << '\n';
    }
  }
}

void tell_season_checks(Session& session, const OpenClub& club) {
  const season::SeasonFit fit = fitted(session, club);
  Progress progress(session.err, session.ports.show_progress, 0);
  const auto checks = services::season_checks(
      fit, club.records, club.weather, watch(session, progress, "fitting it three times more"));
  progress.clear();
  if (!checks) {
    session.refuse(checks.error());
  } else if (session.shape() == Shape::json) {
    session.print(answers::to_json(*checks));
  } else if (session.shape() == Shape::csv) {
    print_leaning(session, *checks);
  } else {
    session.out << checks->surprises << '\n' << checks->clocks << '\n' << checks->leaning << "\n\n";
    print_leaning(session, *checks);
  }
}

} // namespace baize::cli
