// The handler that compares methods: the query becomes the service's options.
#include "baize/answers/methods_review.h"
#include "baize/answers/words.h"
#include "baize/units/number.h"
#include "query.h"
#include "reply.h"

namespace baize::api {

namespace {

std::vector<std::string> parts_of(const std::string& text) {
  std::vector<std::string> parts;
  std::size_t from = 0;
  while (from <= text.size()) {
    const std::size_t comma = std::min(text.find(',', from), text.size());
    parts.push_back(text.substr(from, comma - from));
    from = comma + 1;
  }
  return parts;
}

units::Result<std::vector<double>> cuts_of(const std::string& text) {
  std::vector<double> cuts;
  for (const std::string& part : parts_of(text)) {
    const auto cut = units::parse_number(part);
    if (!cut) {
      return units::refuse("bad_query", "cuts", text, "numbers parted by commas, rising");
    }
    cuts.push_back(*cut);
  }
  return cuts;
}

units::Result<recovery::Definition> definition_of(const std::string& text) {
  for (const auto definition : recovery::kDefinitions) {
    if (answers::word(definition) == text) {
      return definition;
    }
  }
  return units::refuse("bad_query", "definition", text,
                       "one of at_standard, two_running, lasting, own_level");
}

units::Result<services::MethodsQuery> query_of(const Call& call) {
  services::MethodsQuery query;
  compare::Grouping& grouping = query.gather.grouping;
  if (const std::string* kind = call.query("kind")) {
    grouping.kind = *kind;
  }
  if (const std::string* by = call.query("by")) {
    grouping.by = *by;
  }
  if (const std::string* alongside = call.query("alongside")) {
    grouping.alongside = parts_of(*alongside);
  }
  if (const std::string* text = call.query("cuts")) {
    auto cuts = cuts_of(*text);
    if (!cuts) {
      return tl::unexpected(cuts.error());
    }
    grouping.cuts = std::move(*cuts);
  }
  if (const std::string* text = call.query("definition")) {
    const auto definition = definition_of(*text);
    if (!definition) {
      return tl::unexpected(definition.error());
    }
    query.gather.definition = *definition;
  }
  return query;
}

} // namespace

Answer methods_review(const Call& call) {
  const auto query = query_of(call);
  if (!query) {
    return tl::unexpected(query.error());
  }
  const auto club = club_of(call);
  if (!club) {
    return tl::unexpected(club.error());
  }
  const auto review =
      services::compare_methods({{(*club)->records, (*club)->weather}}, *query, call.today);
  return review.map([](const auto& found) { return reply(answers::to_json(found)); });
}

} // namespace baize::api
