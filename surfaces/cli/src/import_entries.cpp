#include "import_entries.h"

#include "baize/answers/hand_in.h"
#include "baize/entries_json/entries.h"
#include "baize/services/photos.h"
#include "files.h"
#include "table.h"

#include <algorithm>
#include <set>

namespace baize::cli {

namespace {

/// The club to hand in to: the one that is told, else the one that the entries name.
units::Result<std::string> club_of(const entries_json::Package& package, const std::string& told) {
  std::set<std::string> named;
  for (const journal::Entry& entry : package.entries) {
    const journal::Value* club = journal::find(entry.set, "club");
    if (club != nullptr && club->text() != nullptr) {
      named.insert(*club->text());
    }
  }
  if (!told.empty()) {
    return told;
  }
  if (named.size() == 1) {
    return *named.begin();
  }
  return units::refuse("wrong_use_club", "--club", "",
                       named.empty() ? "given: no entry says to which club it belongs"
                                     : "given: the entries name more than one club");
}

void add_outcome(Table& table, const services::ThingOutcome& one) {
  std::string why;
  for (const units::Problem& problem : one.problems) {
    why += (why.empty() ? "" : " ") + units::sentence(problem);
  }
  const std::string state(one.removed ? "removed" : answers::word(one.state));
  table.add({cell(std::string(name(one.kind))), cell(one.thing), cell(state), cell(one.conflicts),
             cell(why)});
}

/// ", 2 photos", where there are any.
std::string and_photos(std::size_t photos) {
  return photos == 0 ? "" : ", " + std::to_string(photos) + (photos == 1 ? " photo" : " photos");
}

void print_receipt(Session& session, const services::HandInReceipt& receipt, std::size_t photos) {
  if (session.shape() == Shape::json) {
    session.print(answers::to_json(receipt, session.ports.now));
    return;
  }
  Table table({words("kind"), words("thing"), words("state"), number("conflicts"), words("why")});
  for (const services::ThingOutcome& one : receipt.visits) {
    add_outcome(table, one);
  }
  for (const services::ThingOutcome& one : receipt.others) {
    add_outcome(table, one);
  }
  table.print(session);
  std::ostream& out = session.shape() == Shape::csv ? session.err : session.out;
  for (const services::RefusedEntry& one : receipt.refused) {
    out << units::sentence(one.problem) << '\n';
  }
  for (const units::Problem& remark : receipt.remarks) {
    out << units::remark_sentence(remark) << '\n';
  }
  out << "Kept in " << session.database_path() << ": " << receipt.kept.size() << " entries"
      << and_photos(photos) << "; " << receipt.records.added << " records new, "
      << receipt.records.corrected << " corrected.\n";
}

bool all_well(const services::HandInReceipt& receipt) {
  const auto good = [](const services::ThingOutcome& one) {
    return one.state != services::ThingState::refused;
  };
  return receipt.refused.empty() &&
         std::all_of(receipt.visits.begin(), receipt.visits.end(), good) &&
         std::all_of(receipt.others.begin(), receipt.others.end(), good);
}

units::Result<services::HandInReceipt> hand_in_to(Session& session, services::EntryStore& store,
                                                  const std::string& club,
                                                  entries_json::Package package) {
  services::HandIn given{club, package.phone, package.sent_at, std::move(package.entries)};
  auto receipt = services::hand_in(store, given, {session.ports.author, session.ports.now},
                                   session.ports.today);
  if (receipt) {
    for (entries_json::Unread& unread : package.unread) {
      receipt->refused.push_back({std::move(unread.id), std::move(unread.problem)});
    }
  }
  return receipt;
}

/// Keeps the pictures that the file carries, each by itself; one that is refused is
/// told with the entries that were.
std::size_t keep_pictures(Session& session, services::Store& store, const std::string& club,
                          const std::vector<entries_json::Picture>& pictures,
                          services::HandInReceipt& receipt) {
  std::size_t kept = 0;
  for (const entries_json::Picture& one : pictures) {
    const auto done =
        store.photos() == nullptr || session.ports.pictures == nullptr
            ? units::Result<void>(units::refuse("no_such_service", "photos", "",
                                                "asked of a database that keeps photos"))
            : services::keep_photo(*store.photos(), *session.ports.pictures, club, one.photo,
                                   one.bytes, {session.ports.author, session.ports.now});
    if (done) {
      ++kept;
      continue;
    }
    units::Problem problem = done.error();
    problem.place = "photo " + one.photo;
    receipt.refused.push_back({one.photo, std::move(problem)});
  }
  return kept;
}

void say_only(Session& session, const entries_json::Package& package) {
  for (const entries_json::Unread& unread : package.unread) {
    session.out << units::sentence(unread.problem) << '\n';
  }
  session.out << package.entries.size() << " entries" << and_photos(package.pictures.size())
              << " can be read, " << package.unread.size()
              << " cannot. Nothing was kept, as you asked.\n";
}

} // namespace

bool is_entries_file(const std::vector<std::string>& paths) {
  return paths.size() == 1 && paths.front().ends_with(".json");
}

void import_entries(Session& session, const std::string& path, const std::string& club,
                    bool dry_run) {
  const auto refuse = [&](units::Problem problem) {
    problem.place = problem.place.empty() ? bare_name(path) : problem.place;
    session.refuse(problem);
  };
  const auto content = read_file(path);
  if (!content) {
    return refuse(content.error());
  }
  auto package = entries_json::read_package(*content);
  if (!package) {
    return refuse(package.error());
  }
  if (dry_run) {
    say_only(session, *package);
    session.code = package->unread.empty() ? Exit::fine : Exit::data_problem;
    return;
  }
  const auto to = club_of(*package, club);
  if (!to) {
    return refuse(to.error());
  }
  const auto store = open_store(session);
  if (!store) {
    return;
  }
  if (store->entries() == nullptr) {
    return refuse({"no_such_service", "entries", "", "asked of a database that keeps entries", ""});
  }
  const auto pictures = std::move(package->pictures);
  auto receipt = hand_in_to(session, *store->entries(), *to, std::move(*package));
  if (!receipt) {
    return refuse(receipt.error());
  }
  const std::size_t kept = keep_pictures(session, *store, *to, pictures, *receipt);
  print_receipt(session, *receipt, kept);
  if (!all_well(*receipt)) {
    session.code = Exit::data_problem;
  }
}

} // namespace baize::cli
