#include "trial_sheet_page.h"

#include "baize/trials/map.h"
#include "baize/trials/walk.h"
#include "wording.h"

namespace baize::services {
namespace {

constexpr const char* kStyle =
    "body{font:12pt sans-serif;margin:1.5cm}h1{font-size:16pt;margin:0 0 4pt}"
    "p{margin:0 0 8pt}table{border-collapse:collapse;width:100%}"
    "th,td{border:1px solid #444;padding:3pt 5pt;text-align:left;height:16pt}"
    "th{font-size:9pt}section+section{break-before:page}";

std::string row_of(const trials::Plot& plot, int place) {
  std::string place_name = plot.green.empty() ? "" : "green " + plot.green;
  place_name += plot.half.empty() ? "" : " " + plot.half;
  std::string row = "<tr><td>" + std::to_string(place) + "</td><td><b>" +
                    std::to_string(plot.number) + "</b></td><td>" + trials::escaped(place_name) +
                    "</td>";
  for (int roll = 0; roll < 6; ++roll) {
    row += "<td></td>";
  }
  return row + "<td></td><td></td></tr>\n";
}

} // namespace

std::string trial_sheet_page(const trials::Plan& plan, const std::vector<units::Day>& days) {
  std::string page = "<!doctype html>\n<html lang=\"en\"><meta charset=\"utf-8\"><title>" +
                     trials::escaped(plan.trial) + "</title><style>" + kStyle + "</style>\n";
  for (std::size_t visit = 0; visit < days.size(); ++visit) {
    page += "<section><h1>" + trials::escaped(plan.trial) + ", visit " + std::to_string(visit + 1) +
            ", " + plain(days[visit]) +
            "</h1>\n<p>Observer: ____________ From: ______ To: ______ Dew, wind: ____________</p>\n"
            "<p>Walk in this order. Score each roll 1 to 10; the mean of the six goes into the "
            "file. Treatments are not named here, so that nobody scores what he hopes for.</p>\n"
            "<table><tr><th>Walk</th><th>Plot</th><th>Place</th><th>Out 1</th><th>Out 2</th>"
            "<th>Out 3</th><th>Back 1</th><th>Back 2</th><th>Back 3</th><th>Mean</th>"
            "<th>Note</th></tr>\n";
    int place = 0;
    for (const std::size_t i : trials::walk(plan, static_cast<int>(visit) + 1)) {
      page += row_of(plan.plots[i], ++place);
    }
    page += "</table></section>\n";
  }
  return page + "</html>\n";
}

} // namespace baize::services
