// What a phone fetches before it goes out, hands in, and asks for afterwards.
#include "baize/entries_json/entries.h"

#include "baize/answers/hand_in.h"
#include "guard.h"
#include "inflate.h"
#include "query.h"
#include "reply.h"

#include <algorithm>

namespace baize::api {

namespace {

/// Larger than any hand-in: 5000 entries with long notes.
constexpr std::size_t kMostInflated = 32UL * 1024 * 1024;

units::Result<services::EntryStore*> entry_store(const Call& call) {
  services::EntryStore* entries = call.context.store.entries();
  if (entries == nullptr) {
    return units::refuse("no_such_service", "entries", "", "asked of a server that keeps entries");
  }
  return entries;
}

units::Result<std::string> inflated_body(const Call& call) {
  const std::string& encoding = call.request.content_encoding;
  if (is_word(encoding, "gzip")) {
    return inflated(call.request.body, kMostInflated);
  }
  if (encoding.empty() || is_word(encoding, "identity")) {
    return call.request.body;
  }
  return units::refuse("encoding_not_known", "content encoding", encoding.substr(0, 100),
                       "gzip, or none");
}

/// The newest day that a phone may write of. A demo's calendar stands still at
/// its last day; whoever tries a phone on it rolls today.
units::Day newest_day(const Call& call, const std::string& now) {
  constexpr std::size_t kDayOnly = 10; // of YYYY-MM-DDTHH:MM:SSZ
  const auto wall = units::parse_iso_day(now.substr(0, kDayOnly));
  return wall ? std::max(call.today, *wall) : call.today;
}

} // namespace

Answer field_kit(const Call& call) {
  const auto club = club_of(call);
  if (!club) {
    return tl::unexpected(club.error());
  }
  return reply(answers::to_json(services::field_kit((*club)->records, call.today)));
}

Answer hand_in(const Call& call) {
  const auto store = entry_store(call);
  if (!store) {
    return tl::unexpected(store.error());
  }
  const auto body = inflated_body(call);
  if (!body) {
    return tl::unexpected(body.error());
  }
  auto package = entries_json::read_package(*body);
  if (!package) {
    return tl::unexpected(package.error());
  }
  if (!package->pictures.empty()) {
    return units::refuse("pictures_apart", "photos", std::to_string(package->pictures.size()),
                         "sent apart, each picture to its own path; only a file carries them");
  }
  const bool signed_in = call.caller.kind == services::Caller::Kind::person;
  const services::Author author{signed_in ? call.author() : "phone " + package->phone,
                                call.context.now()};
  auto receipt = services::hand_in(
      **store, {call.ids.front(), package->phone, package->sent_at, std::move(package->entries)},
      author, newest_day(call, author.at));
  if (!receipt) {
    return tl::unexpected(receipt.error());
  }
  for (entries_json::Unread& unread : package->unread) {
    receipt->refused.push_back({std::move(unread.id), std::move(unread.problem)});
  }
  if (call.context.metrics) {
    call.context.metrics->handed_in(static_cast<std::int64_t>(receipt->kept.size()),
                                    static_cast<std::int64_t>(receipt->refused.size()));
  }
  return reply(answers::to_json(*receipt, author.at));
}

Answer entries_since(const Call& call) {
  constexpr int kGreatest = 2'000'000'000;
  constexpr int kUsual = 1000;
  const auto store = entry_store(call);
  const auto since = whole_of(call, "since", 0, 0, kGreatest);
  const auto limit =
      whole_of(call, "limit", kUsual, 1, static_cast<int>(entries_json::kMostEntries));
  if (!store || !since || !limit) {
    return tl::unexpected(!store ? store.error() : !since ? since.error() : limit.error());
  }
  return (*store)
      ->entries_since(call.ids.front(), *since, *limit)
      .map([](const services::EntriesPage& page) { return reply(answers::to_json(page)); });
}

Answer conflicts(const Call& call) {
  const auto store = entry_store(call);
  if (!store) {
    return tl::unexpected(store.error());
  }
  return services::open_conflicts(**store, call.ids.front())
      .map([](const std::vector<journal::Conflict>& all) { return reply(answers::to_json(all)); });
}

} // namespace baize::api
