// The page for the owner, as one file.
#include "baize/answers/report_data.h"
#include "commands.h"
#include "files.h"

namespace baize::cli {

namespace {

struct ReportOptions {
  std::string club;
  int year = 0;
  std::string out;
  std::string pdf;
};

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
  const auto page = session.ports.report_page(answers::text(answers::to_json(*data)));
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
