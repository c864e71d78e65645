#include "baize/answers/hand_in.h"

#include "baize/answers/problem.h"
#include "baize/entries_json/entries.h"

namespace baize::answers {

namespace {

Json sentences(const std::vector<units::Problem>& problems) {
  Json all = Json::array();
  for (const units::Problem& problem : problems) {
    all.push_back(units::sentence(problem));
  }
  return all;
}

Json remarks(const std::vector<units::Problem>& problems) {
  Json all = Json::array();
  for (const units::Problem& problem : problems) {
    all.push_back(units::remark_sentence(problem));
  }
  return all;
}

Json refused(const services::RefusedEntry& one) {
  Json problem = to_json(one.problem);
  problem["sentence"] = units::sentence(one.problem);
  return Object().put("id", one.id).nest("problem", std::move(problem)).done();
}

} // namespace

std::string_view word(services::ThingState state) {
  switch (state) {
  case services::ThingState::accepted:
    return "accepted";
  case services::ThingState::refused:
    return "refused";
  case services::ThingState::open:
    return "open";
  }
  return {};
}

namespace {

Json visit(const services::ThingOutcome& one) {
  return Object()
      .put("visit", one.thing)
      .put("state", word(one.state))
      .put("removed", one.removed)
      .nest("problems", sentences(one.problems))
      .put("conflicts", one.conflicts)
      .done();
}

Json other(const services::ThingOutcome& one) {
  return Object()
      .put("kind", name(one.kind))
      .put("thing", one.thing)
      .put("state", word(one.state))
      .put("removed", one.removed)
      .nest("problems", sentences(one.problems))
      .put("conflicts", one.conflicts)
      .done();
}

} // namespace

Json to_json(const services::HandInReceipt& receipt, const std::string& server_time) {
  return Object()
      .nest("kept", list(receipt.kept))
      .nest("refused", list(receipt.refused, refused))
      .nest("visits", list(receipt.visits, visit))
      .nest("others", list(receipt.others, other))
      .nest("remarks", remarks(receipt.remarks))
      .put("server_time", server_time)
      .done();
}

Json to_json(const services::EntriesPage& page) {
  Json entries = Json::array();
  for (const journal::Entry& entry : page.entries) {
    entries.push_back(entries_json::to_json(entry));
  }
  return Object().nest("entries", std::move(entries)).put("next", page.next).done();
}

Json to_json(const std::vector<journal::Conflict>& conflicts) {
  Json all = Json::array();
  for (const journal::Conflict& conflict : conflicts) {
    all.push_back(entries_json::to_json(conflict));
  }
  return Object().nest("conflicts", std::move(all)).done();
}

} // namespace baize::answers
