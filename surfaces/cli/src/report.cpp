// The page for the owner, as one file.
#include "baize/answers/greens_review.h"
#include "baize/answers/season_review.h"
#include "baize/answers/work_review.h"
#include "commands.h"
#include "files.h"

#include <algorithm>

namespace baize::cli {

namespace {

struct ReportOptions {
  std::string club;
  int year = 0;
  std::string out;
  std::string pdf;
};

answers::Json totals_json(const services::LedgerTotals& totals) {
  return answers::Object()
      .put("greens", totals.greens)
      .put("measured_true", totals.measured_true)
      .put("measured_not", totals.measured_not)
      .put("between_true", totals.between_true)
      .put("unmeasured", totals.unmeasured)
      .put("closed", totals.closed)
      .put("open", totals.open())
      .put("fewest_true", totals.fewest_true())
      .put("most_true", totals.most_true())
      .done();
}

answers::Json basis_json(const services::ReportBasis& basis) {
  return answers::Object()
      .put("visits", basis.visits)
      .put("observers", basis.observers)
      .put("scored_rolls", basis.scored_rolls)
      .put("measured_rolls", basis.measured_rolls)
      .put("weather_days", basis.weather_days)
      .put("weather_days_missing", basis.weather_days_missing)
      .done();
}

/// The lines of the list of works for the report's own works.
std::vector<services::WorkLine> lines_of(const OpenClub& open, const services::ReportData& data) {
  std::vector<services::WorkLine> lines =
      services::work_lines(open.records, open.weather, data.today);
  std::erase_if(lines, [&](const services::WorkLine& line) {
    return std::none_of(data.works.begin(), data.works.end(),
                        [&](const auto& work) { return work.work.id == line.work.id; });
  });
  return lines;
}

std::string report_json(const OpenClub& open, const services::ReportData& data) {
  answers::Json seasons = answers::Json::object();
  for (const services::SeasonReview& season : data.seasons) {
    seasons[season.green] = answers::to_json(season);
  }
  const answers::Json works = answers::to_json(lines_of(open, data));
  return answers::text(answers::Object()
                           .put("club", data.club)
                           .put("club_name", data.club_name)
                           .put("year", data.year)
                           .nest("period", answers::to_json(data.period))
                           .put("year_ended", data.year_ended)
                           .put("today", data.today)
                           .nest("greens", answers::to_json(data.greens))
                           .nest("seasons", seasons)
                           .nest("works", works.at("works"))
                           .nest("totals", totals_json(data.totals))
                           .nest("basis", basis_json(data.basis))
                           .nest("sentences", answers::list(data.sentences))
                           .nest("methods", answers::list(data.methods))
                           .done());
}

void write_report(Session& session, const ReportOptions& options) {
  const auto open = open_club(session, options.club);
  if (!open) {
    return;
  }
  const auto data =
      services::report_data(open->records, open->weather, options.year, session.ports.today);
  if (!data) {
    session.refuse(data.error());
    return;
  }
  const auto page = session.ports.report_page(report_json(*open, *data));
  if (!page) {
    session.refuse(page.error());
    return;
  }
  auto written = write_file(options.out, *page);
  if (written && !options.pdf.empty()) {
    written = session.ports.print_pdf(options.out, options.pdf);
  }
  if (!written) {
    session.refuse(written.error());
    return;
  }
  if (session.shape() == Shape::json) {
    session.print(answers::Object().put("out", options.out).put("pdf", options.pdf).done());
    return;
  }
  for (const std::string& sentence : data->sentences) {
    session.out << sentence << '\n';
  }
  session.out << "Written: " << options.out << (options.pdf.empty() ? "" : " and " + options.pdf)
              << '\n';
}

} // namespace

void add_report(CLI::App& app, Session& session) {
  auto options = std::make_shared<ReportOptions>();
  CLI::App* command =
      app.add_subcommand("report", "A year of a club as one file that opens without a server");
  command->add_option("--club", options->club, "The club; not needed where there is one only")
      ->type_name("CLUB");
  command->add_option("--year", options->year, "The year")->required()->type_name("YEAR");
  command->add_option("--out", options->out, "The file to write; an older one is replaced")
      ->required()
      ->type_name("FILE.html");
  command->add_option("--pdf", options->pdf, "Print it to this file as well; needs Chromium")
      ->type_name("FILE.pdf");
  on_call(*command, session, options, write_report);
}

} // namespace baize::cli
