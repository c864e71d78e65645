#include "baize/services/hand_in.h"

#include "outcomes.h"

#include <algorithm>
#include <cstdlib>
#include <set>

namespace baize::services {
namespace {

/// An entry that names a club names the one it was sent to.
std::optional<units::Problem> other_club(const journal::Entry& entry, const std::string& club) {
  const journal::Value* said = journal::find(entry.set, "club");
  if (said == nullptr || said->text() == nullptr || *said->text() == club) {
    return std::nullopt;
  }
  return units::Problem{"club_differs", "club", journal::shown(*said),
                        "'" + club + "', the club that the entries were sent to",
                        "entry " + entry.id};
}

std::optional<units::Problem> wrong_alone(const journal::Entry& entry, const std::string& club) {
  const auto problems = journal::check(entry);
  return problems.empty() ? other_club(entry, club) : problems.front();
}

units::Problem differs(const std::string& id) {
  return {"entry_differs", "id", id,
          "the id of this entry alone: another one is kept under it, and entries never change",
          "entry " + id};
}

units::Problem too_many(const std::string& id) {
  return {"too_many_entries", "thing", "one more",
          "a thing of fewer than " + std::to_string(kMostOfThing) + " entries", "entry " + id};
}

/// Parts what may be kept from what is refused alone. Of two with one id and
/// different contents in one hand-in, the first is kept.
std::vector<journal::Entry> sifted(const HandIn& given, std::vector<RefusedEntry>& refused) {
  std::vector<journal::Entry> good;
  for (const journal::Entry& entry : given.entries) {
    if (auto problem = wrong_alone(entry, given.club)) {
      refused.push_back({entry.id, std::move(*problem)});
    } else {
      good.push_back(journal::canonical(entry));
    }
  }
  return good;
}

void compare_clocks(const HandIn& given, const std::string& now,
                    std::vector<units::Problem>& remarks) {
  constexpr std::int64_t kTolerated = 300'000; // milliseconds
  const auto phone = journal::parse_instant(given.sent_at);
  const auto server = journal::parse_instant(now);
  if (phone && server && std::abs(*phone - *server) > kTolerated) {
    const std::int64_t minutes = (*phone - *server) / 60000;
    remarks.push_back({"clock_differs", "sent_at", given.sent_at,
                       "the server's time, " + now + ": the phone's clock is " +
                           std::to_string(std::abs(minutes)) + " minutes " +
                           (minutes > 0 ? "ahead" : "behind"),
                       ""});
  }
  const auto ahead = std::find_if(given.entries.begin(), given.entries.end(), [&](const auto& one) {
    const auto at = journal::parse_instant(one.at);
    return at && phone && *at > *phone + kTolerated;
  });
  if (ahead != given.entries.end()) {
    remarks.push_back({"clock_differs", "at", ahead->at,
                       "no later than the time of sending, " + given.sent_at,
                       "entry " + ahead->id});
  }
}

} // namespace

units::Result<HandInReceipt> hand_in(EntryStore& store, const HandIn& given, const Author& author,
                                     units::Day today) {
  HandInReceipt receipt;
  const std::vector<journal::Entry> good = sifted(given, receipt.refused);
  compare_clocks(given, author.at, receipt.remarks);
  Outcomes outcomes(given.club, today + 1);
  const auto kept = store.keep_entries(
      given.club, good, author, [&](const Around& around) { return outcomes.decide(around); });
  if (!kept) {
    return tl::unexpected(kept.error());
  }
  receipt.kept = kept->kept;
  std::sort(receipt.kept.begin(), receipt.kept.end());
  receipt.kept.erase(std::unique(receipt.kept.begin(), receipt.kept.end()), receipt.kept.end());
  for (const std::string& id : kept->differing) {
    receipt.refused.push_back({id, differs(id)});
  }
  for (const std::string& id : kept->crowded) {
    receipt.refused.push_back({id, too_many(id)});
  }
  receipt.records = kept->receipt;
  std::set<std::string> touched;
  for (const journal::Entry& entry : good) {
    touched.insert(entry.thing);
  }
  outcomes.tell(touched, receipt);
  return receipt;
}

units::Result<std::vector<journal::Conflict>> open_conflicts(EntryStore& store,
                                                             const std::string& club) {
  auto entries = store.branched(club);
  if (!entries) {
    return tl::unexpected(entries.error());
  }
  return conflicts(journal::fold(std::move(*entries)));
}

} // namespace baize::services
