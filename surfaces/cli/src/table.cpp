#include "table.h"

#include "baize/units/number.h"

#include <algorithm>

namespace baize::cli {

Column words(std::string name) {
  return {std::move(name), {}, true};
}
Column number(std::string name, std::string unit) {
  return {std::move(name), std::move(unit), false};
}
Column length(const Session& session, std::string name) {
  return {std::move(name), session.units, false};
}

Cell cell(std::string text) {
  return {text, std::move(text)};
}
Cell cell(const char* text) {
  return cell(std::string(text));
}
Cell cell(int value) {
  return cell(std::to_string(value));
}
Cell cell(units::Day day) {
  return cell(units::iso(day));
}
Cell cell(const std::optional<units::Day>& day) {
  return day ? cell(*day) : Cell{};
}
Cell cell(const Session& session, const std::optional<double>& value, int places) {
  if (!value) {
    return {};
  }
  return {units::show_number(*value, places, session.decimal()),
          units::write_number(*value, session.decimal())};
}

Cell length_cell(const Session& session, const std::optional<double>& metres) {
  if (!metres) {
    return {};
  }
  const units::Length value = units::from_metres(*metres);
  switch (session.length_unit()) {
  case units::LengthUnit::metre:
    return cell(session, metres, 2);
  case units::LengthUnit::centimetre:
    return cell(session, units::centimetres(value), 0);
  case units::LengthUnit::foot:
    return cell(session, units::feet(value), 1);
  case units::LengthUnit::foot_inch:
    break;
  }
  return cell(units::show(value, units::LengthUnit::foot_inch, session.decimal()));
}

namespace {

struct Small {
  const char* unit;
  double metres;
  int places;
};

Small small_unit(const Session& session) {
  switch (session.length_unit()) {
  case units::LengthUnit::metre:
    return {"m", 1, 3};
  case units::LengthUnit::centimetre:
    return {"cm", 0.01, 1};
  default:
    return {"in", units::kMetresPerInch, 1};
  }
}

} // namespace

Column small_length(const Session& session, std::string name) {
  return number(std::move(name), small_unit(session).unit);
}

Cell small_length_cell(const Session& session, const std::optional<double>& metres) {
  const Small small = small_unit(session);
  return metres ? cell(session, *metres / small.metres, small.places) : Cell{};
}

std::string shown_small(const Session& session, double metres) {
  const Small small = small_unit(session);
  return units::show_number(metres / small.metres, small.places, session.decimal()) + " " +
         small.unit;
}

Cell yes_no(bool value) {
  return cell(value ? "yes" : "no");
}

std::string shown_length(const Session& session, double metres) {
  return units::show(units::from_metres(metres), session.length_unit(), session.decimal());
}

std::size_t width(std::string_view text) {
  return static_cast<std::size_t>(std::count_if(text.begin(), text.end(), [](char c) {
    return (static_cast<unsigned char>(c) & 0xc0U) != 0x80U;
  }));
}

namespace {

std::string title(const Column& column) {
  return column.unit.empty() ? column.name : column.name + " (" + column.unit + ")";
}

std::string csv_name(const Column& column) {
  std::string name = column.unit.empty() ? column.name : column.name + "_" + column.unit;
  std::replace(name.begin(), name.end(), ' ', '_');
  return name;
}

std::string quoted(const std::string& text, char delimiter) {
  const std::string special{delimiter, '"', '\n', '\r'};
  if (text.find_first_of(special) == std::string::npos) {
    return text;
  }
  std::string out = "\"";
  for (const char c : text) {
    out += c;
    if (c == '"') {
      out += '"';
    }
  }
  return out + '"';
}

} // namespace

void Table::print(std::ostream& out) const {
  std::vector<std::size_t> widths;
  for (std::size_t i = 0; i < columns_.size(); ++i) {
    std::size_t most = width(title(columns_[i]));
    for (const auto& row : rows_) {
      most = std::max(most, row[i].shown.empty() ? 1 : width(row[i].shown));
    }
    widths.push_back(most);
  }
  const auto line = [&](const auto& text_of) {
    std::string all;
    for (std::size_t i = 0; i < columns_.size(); ++i) {
      const std::string text = text_of(i);
      const std::string blanks(widths[i] - width(text), ' ');
      all += (i == 0 ? "" : "  ") + (columns_[i].left ? text + blanks : blanks + text);
    }
    all.erase(all.find_last_not_of(' ') + 1);
    out << all << '\n';
  };
  line([&](std::size_t i) { return title(columns_[i]); });
  for (const auto& row : rows_) {
    line([&](std::size_t i) { return row[i].shown.empty() ? std::string("-") : row[i].shown; });
  }
}

void Table::print_csv(std::ostream& out, char delimiter) const {
  for (std::size_t i = 0; i < columns_.size(); ++i) {
    out << (i == 0 ? "" : std::string(1, delimiter)) << quoted(csv_name(columns_[i]), delimiter);
  }
  out << "\r\n";
  for (const auto& row : rows_) {
    for (std::size_t i = 0; i < columns_.size(); ++i) {
      out << (i == 0 ? "" : std::string(1, delimiter)) << quoted(row[i].exact, delimiter);
    }
    out << "\r\n";
  }
}

void Table::print(const Session& session) const {
  if (session.shape() == Shape::csv) {
    print_csv(session.out, session.decimal_comma ? ';' : ',');
  } else {
    print(session.out);
  }
}

} // namespace baize::cli
