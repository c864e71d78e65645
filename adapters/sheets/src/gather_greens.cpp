#include "gather.h"

#include <algorithm>

namespace baize::sheets {
namespace {

/// A fact about the green as a whole may stand on any of its rows, but the same.
template <class Fact, class Value>
bool agree(const Fact& stated, Value& known, const char* field, const TableReader<GreenRow>& table,
           const green::Green& green, Findings& findings) {
  if (!present(stated)) {
    return true;
  }
  if (!present(known)) {
    known = stated;
    return true;
  }
  if (known == stated) {
    return true;
  }
  findings.problem({"rows_disagree",
                    field,
                    write_value(stated, {}),
                    "'" + write_value(known, {}) + "' as on line " +
                        std::to_string(green.source.line) + ", or empty",
                    {}},
                   table.where(field));
  return false;
}

/// What is known of a green before all its rows are read.
struct Draft {
  std::string name;
  std::optional<green::Grass> grass;
};

bool take_facts(const GreenRow& row, Draft& draft, green::Green& green,
                const TableReader<GreenRow>& table, Findings& findings) {
  return agree(row.name, draft.name, "name", table, green, findings) &&
         agree(row.grass, draft.grass, "grass", table, green, findings) &&
         agree(row.grass_mix, green.grass_mix, "grass_mix", table, green, findings) &&
         agree(row.area_m2, green.area_m2, "area_m2", table, green, findings);
}

void take_spot(const GreenRow& row, green::Green& green) {
  if (!row.half.empty() &&
      std::find(green.halves.begin(), green.halves.end(), row.half) == green.halves.end()) {
    green.halves.push_back(row.half);
  }
  if (!row.spot.empty()) {
    green.spots.push_back({row.spot, row.bearing_deg, row.half});
  }
}

/// works.csv says "all" for every green, and may part ids by commas.
bool bad_id(const GreenRow& row, const TableReader<GreenRow>& table, Findings& findings) {
  if (row.green != "all" && row.green.find(',') == std::string::npos) {
    return false;
  }
  findings.problem({"green_id_not_free",
                    "green",
                    row.green,
                    "an id without a comma, and not 'all', which stands for every green",
                    {}},
                   table.where("green"));
  return true;
}

bool bearing_without_spot(const GreenRow& row, const TableReader<GreenRow>& table,
                          Findings& findings) {
  if (row.spot.empty() && row.bearing_deg) {
    findings.problem({"cell_missing", "spot", {}, "given where its bearing is", {}},
                     table.where("spot"));
    return true;
  }
  return false;
}

} // namespace

void gather_greens(const services::ReceivedFile& file, Gathered& all) {
  TableReader<GreenRow> table(file, all.findings);
  std::vector<std::size_t>& owners = all.owners[file.name];
  std::unordered_map<std::string, std::size_t> places;
  std::vector<Draft> drafts;
  int rows = 0;
  for (GreenRow row; table.next(row);) {
    ++rows;
    if (!table.good() || bad_id(row, table, all.findings) ||
        bearing_without_spot(row, table, all.findings)) {
      continue;
    }
    const auto [at, fresh] = places.emplace(row.green, drafts.size());
    if (fresh) {
      drafts.emplace_back();
      green::Green& green = all.records.greens.emplace_back();
      green.id = row.green;
      green.source = {file.name, table.cells().line};
    }
    green::Green& green = all.records.greens[at->second];
    if (take_facts(row, drafts[at->second], green, table, all.findings)) {
      take_spot(row, green);
    }
    owners.push_back(at->second);
  }
  for (std::size_t i = 0; i < drafts.size(); ++i) {
    green::Green& green = all.records.greens[i];
    green.name = drafts[i].name.empty() ? green.id : drafts[i].name;
    green.grass = drafts[i].grass.value_or(green::Grass::cool);
  }
  report(file, table, rows, all.records.greens.size(), all);
}

} // namespace baize::sheets
