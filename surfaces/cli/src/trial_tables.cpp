#include "trial_tables.h"

#include "baize/units/number.h"
#include "table.h"

namespace baize::cli {

namespace {

void print_notes(const Session& session, const std::vector<std::string>& notes) {
  for (const std::string& note : notes) {
    session.out << "Note: " << note << '\n';
  }
}

void print_means(const Session& session, const trials::Comparison& comparison) {
  session.out << "\nMeans, " << comparison.of << " (F "
              << units::show_number(comparison.f, 2, session.decimal()) << " on " << comparison.df
              << " and " << comparison.error_df << " degrees of freedom, p "
              << units::show_number(comparison.p, 4, session.decimal())
              << "; least significant difference "
              << units::show_number(comparison.lsd, 2, session.decimal()) << ")\n";
  Table table({words("treatment"), number("mean"), number("plots"), words("letters")});
  for (const trials::Mean& mean : comparison.means) {
    table.add({cell(mean.name), cell(session, mean.mean, 2), cell(mean.plots), cell(mean.letters)});
  }
  table.print(session.out);
  if (comparison.against_control.empty()) {
    return;
  }
  session.out << "\nAgainst the control\n";
  Table control(
      {words("treatment"), number("difference"), number("from"), number("to"), number("p")});
  for (const trials::AgainstControl& one : comparison.against_control) {
    control.add({cell(one.name), cell(session, one.difference, 2),
                 cell(session, one.interval.low, 2), cell(session, one.interval.high, 2),
                 cell(session, one.p, 4)});
  }
  control.print(session.out);
}

void print_back(const Session& session, const trials::TimeBack& back) {
  session.out << "\nDays back after the treatment\n";
  Table table({words("treatment"), number("median", "days"), number("from"), number("to"),
               number("plots"), number("not back")});
  for (const trials::TreatmentBack& one : back.treatments) {
    table.add({cell(one.treatment), cell(session, one.median, 1),
               cell(session, one.interval.low, 1), cell(session, one.interval.high, 1),
               cell(one.plots), cell(one.not_back)});
  }
  table.print(session.out);
}

void print_ordinal(const Session& session, const trials::Ordinal& ordinal) {
  session.out << "\nScores as ranks: odds of a higher one\n";
  Table table({words("first"), words("second"), number("times as great"), number("from"),
               number("to"), number("p")});
  for (const trials::OddsRatio& one : ordinal.pairs) {
    table.add({cell(one.first), cell(one.second), cell(session, one.odds, 2),
               cell(session, one.interval.low, 2), cell(session, one.interval.high, 2),
               cell(session, one.p, 4)});
  }
  table.print(session.out);
}

/// One line a day, table and treatment, for programs.
void print_csv(const Session& session, const services::TrialAnalysisReview& review) {
  Table table({words("day"), words("of"), words("treatment"), number("mean"), number("plots"),
               words("letters"), number("p")});
  const auto add = [&](const std::string& day, const trials::ValueAnalysis& analysis) {
    for (const trials::Comparison& comparison : analysis.comparisons) {
      for (const trials::Mean& mean : comparison.means) {
        table.add({cell(day), cell(comparison.of), cell(mean.name), cell(session, mean.mean, 2),
                   cell(mean.plots), cell(mean.letters), cell(session, comparison.p, 4)});
      }
    }
  };
  add("all", review.analysis.overall);
  for (const trials::DayAnalysis& day : review.analysis.days) {
    add(units::iso(day.day), day.analysis);
  }
  table.print(session);
}

} // namespace

void print_design(const Session& session, const services::TrialDesignReview& review) {
  session.out << review.sentence << "\n\n" << review.map_text << '\n';
  for (const trials::ErrorDf& one : review.error_df) {
    session.out << "Error degrees of freedom, " << one.of << ": " << one.df << '\n';
  }
  print_notes(session, review.notes);
}

void print_analysis(const Session& session, const services::TrialAnalysisReview& review) {
  if (session.shape() == Shape::csv) {
    print_csv(session, review);
    return;
  }
  session.out << review.sentence << "\nEvidence: " << review.evidence << ", "
              << review.plan.plots.size() << " plots, " << review.analysis.records << " records, "
              << review.analysis.days.size() << " days.\n";
  for (const trials::Comparison& comparison : review.analysis.overall.comparisons) {
    print_means(session, comparison);
  }
  if (review.analysis.back && review.analysis.back->summary.usable) {
    print_back(session, *review.analysis.back);
  }
  if (review.analysis.ordinal.summary.usable) {
    print_ordinal(session, review.analysis.ordinal);
  }
  session.out << '\n';
  print_notes(session, review.notes);
}

} // namespace baize::cli
