// Brings record files in: read, checked, kept, all of them or none.
#include "access.h"
#include "baize/answers/imported.h"
#include "baize/api/import_body.h"
#include "call.h"
#include "query.h"
#include "reply.h"

namespace baize::api {

namespace {

/// Files sent to a club may leave its name out, but not name another club. Files
/// sent to none name it themselves.
std::optional<units::Problem> claim(green::Records& records, const std::string& club) {
  if (club.empty() && records.club.id.empty()) {
    return units::Problem{"club_not_named", "club", "", "named, in club.csv", ""};
  }
  if (club.empty()) {
    return std::nullopt;
  }
  if (records.club.id.empty()) {
    records.club.id = club;
  }
  if (records.club.id == club) {
    return std::nullopt;
  }
  return units::Problem{"club_differs", "club", records.club.id,
                        "'" + club + "', the club the files were sent to", ""};
}

/// A club that the files name, and that is not the caller's to bring records to.
/// One that is not there gets the same answer.
std::optional<units::Problem> not_ours(const Call& call, const std::string& named) {
  if (named.empty() || call.caller.may(services::Right::bring, named)) {
    return std::nullopt;
  }
  return call.caller.knows(named) ? role_problem(call.caller, services::Right::bring, named)
                                  : no_such_club(named);
}

} // namespace

Answer import_files(const Call& call) {
  const auto dry_run = dry_run_of(call);
  if (!dry_run) {
    return tl::unexpected(dry_run.error());
  }
  const auto files = read_import_body(call.request.body);
  if (!files) {
    return tl::unexpected(files.error());
  }
  services::SheetsReading reading = call.context.sheets.read(*files, call.today);
  answers::Imported imported;
  imported.dry_run = *dry_run;
  imported.files = std::move(reading.files);
  imported.problems = std::move(reading.problems);
  imported.remarks = std::move(reading.remarks);
  if (const auto other = not_ours(call, reading.records.club.id)) {
    return tl::unexpected(*other);
  }
  const std::string club = call.ids.empty() ? std::string() : call.ids.front();
  // A file that could not be read says nothing of its club: its own problems come first.
  if (!club.empty() || imported.problems.empty()) {
    if (const auto other = claim(reading.records, club)) {
      imported.problems.push_back(*other);
    }
  }
  if (imported.problems.empty() && !*dry_run) {
    const auto receipt =
        call.context.store.keep(reading.records, {call.author(), call.context.now()}, *files);
    if (!receipt && status_of(receipt.error()) >= 500) {
      return tl::unexpected(receipt.error());
    }
    if (!receipt) {
      imported.problems.push_back(receipt.error());
    } else {
      imported.receipt = *receipt;
      imported.club = reading.records.club.id;
    }
  }
  return reply(answers::to_json(imported), imported.problems.empty() ? 200 : 422);
}

} // namespace baize::api
