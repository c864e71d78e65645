#include "session.h"

#include "baize/answers/problem.h"

#include <algorithm>
#include <array>
#include <string_view>

namespace baize::cli {

Exit exit_of(const units::Problem& problem) {
  constexpr std::array<std::string_view, 24> storage{"disk_full",
                                                     "database_",
                                                     "not_a_baize_database",
                                                     "file_",
                                                     "folder_",
                                                     "checksum_wrong",
                                                     "no_checksum",
                                                     "bad_server_options",
                                                     "not_an_address",
                                                     "no_such_address",
                                                     "port_in_use",
                                                     "port_not_allowed",
                                                     "cannot_listen",
                                                     "pdf_",
                                                     "pages_not_built",
                                                     "no_such_database",
                                                     "certificate_",
                                                     "key_",
                                                     "name_not_allowed",
                                                     "bad_host_name",
                                                     "bad_identity",
                                                     "proxy_elsewhere",
                                                     "no_people",
                                                     "no_randomness"};
  const auto begins = [&](std::string_view with) { return problem.code.rfind(with, 0) == 0; };
  if (problem.code == "stopped") {
    return Exit::stopped;
  }
  if (begins("wrong_use")) {
    return Exit::wrong_use;
  }
  if (std::any_of(storage.begin(), storage.end(), begins)) {
    return Exit::storage;
  }
  return begins("no_such_") ? Exit::not_found : Exit::data_problem;
}

void Session::refuse(const units::Problem& problem) {
  const bool stopped = exit_of(problem) == Exit::stopped;
  err << "baize: "
      << (stopped ? "stopped before the end; there is no result." : units::sentence(problem))
      << '\n';
  if (json) {
    print(answers::with_sentence(problem));
  }
  code = exit_of(problem);
}

std::unique_ptr<services::Store> open_store(Session& session, bool create) {
  auto store = session.ports.open_store(session.database_path(), create);
  if (!store) {
    session.refuse(store.error());
    return nullptr;
  }
  return std::move(*store);
}

units::Result<std::string> only_club(services::Store& store) {
  const auto clubs = store.clubs();
  if (!clubs) {
    return tl::unexpected(clubs.error());
  }
  if (clubs->size() == 1) {
    return clubs->front().id;
  }
  if (clubs->empty()) {
    return units::refuse("no_such_club", "club", "",
                         "one that was brought in before with the command import");
  }
  std::string names;
  for (const services::ClubName& club : *clubs) {
    names += (names.empty() ? "" : ", ") + club.id;
  }
  return units::refuse("wrong_use_club", "--club", "", "one of " + names);
}

units::Result<std::string> club_or_only(services::Store& store, const std::string& said) {
  return said.empty() ? only_club(store) : units::Result<std::string>(said);
}

std::optional<OpenClub> open_club(Session& session, const std::string& club) {
  OpenClub open;
  open.store = open_store(session);
  if (!open.store) {
    return std::nullopt;
  }
  const auto id = club_or_only(*open.store, club);
  if (!id) {
    session.refuse(id.error());
    return std::nullopt;
  }
  auto records = open.store->load(*id);
  if (!records) {
    session.refuse(records.error());
    return std::nullopt;
  }
  auto weather = open.store->weather(*id);
  if (!weather) {
    session.refuse(weather.error());
    return std::nullopt;
  }
  open.records = std::move(*records);
  open.weather = std::move(*weather);
  return open;
}

units::Result<std::string> green_id(const green::Records& records, const std::string& text) {
  for (const green::Green& green : records.greens) {
    if (green.id == text) {
      return green.id;
    }
  }
  std::string ids;
  for (const green::Green& green : records.greens) {
    if (green.name == text) {
      return green.id;
    }
    ids += (ids.empty() ? "" : ", ") + green.id;
  }
  return units::refuse("no_such_green", "green", text, "one of " + ids);
}

} // namespace baize::cli
