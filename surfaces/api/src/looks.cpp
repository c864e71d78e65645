// The handlers that read: from the store's snapshot to a service to its JSON.
#include "baize/answers/consistency_review.h"
#include "baize/answers/fields.h"
#include "baize/answers/greens_review.h"
#include "baize/answers/observers_review.h"
#include "baize/answers/records_view.h"
#include "baize/answers/season_review.h"
#include "baize/answers/store.h"
#include "baize/answers/work_review.h"
#include "baize/units/number.h"
#include "call.h"
#include "reply.h"

#include <limits>

namespace baize::api {

namespace {

using Club = std::shared_ptr<const Snapshot>;

units::Result<Club> club_of(const Call& call) {
  return call.context.clubs.club(call.ids.front(), call.change);
}

template <class T> Answer written(const units::Result<T>& result) {
  return result.map([](const T& value) { return reply(answers::to_json(value)); });
}

units::Result<int> whole(const Call& call, const std::string& name, int absent, int least,
                         int most) {
  const std::string* text = call.query(name);
  if (text == nullptr) {
    return absent;
  }
  const auto value = units::parse_whole(*text);
  if (!value || *value < least || *value > most) {
    return units::refuse("bad_query", name, *text,
                         "a whole number from " + std::to_string(least) + " to " +
                             std::to_string(most));
  }
  return *value;
}

units::Result<std::optional<units::Period>> period_of(const Call& call) {
  const std::string* from = call.query("from");
  const std::string* to = call.query("to");
  if (from == nullptr && to == nullptr) {
    return std::nullopt;
  }
  // An open end reaches to the last day a record can have.
  const auto first = from == nullptr ? units::make_day(1600, 1, 1) : units::parse_iso_day(*from);
  const auto last = to == nullptr ? units::make_day(2600, 12, 31) : units::parse_iso_day(*to);
  if (!first || !last) {
    units::Problem problem = !first ? first.error() : last.error();
    problem.field = !first ? "from" : "to";
    return tl::unexpected(problem);
  }
  if (*last < *first) {
    return units::refuse("bad_query", "to", units::iso(*last),
                         "a day not before 'from', which is " + units::iso(*first));
  }
  return units::Period{*first, *last};
}

} // namespace

Answer healthz(const Call& call) {
  return reply(answers::Object().put("status", "ok").put("change_number", call.change).done());
}

Answer fields(const Call& /*call*/) {
  return reply(answers::fields());
}

Answer clubs(const Call& call) {
  return written(call.context.store.clubs());
}

Answer greens_review(const Call& call) {
  return club_of(call).map([&](const Club& club) {
    return reply(
        answers::to_json(services::greens_review(club->records, club->weather, call.today)));
  });
}

Answer season_review(const Call& call) {
  const auto year = units::parse_whole(call.ids[2]);
  if (!year) {
    return units::refuse("bad_target", "year", call.ids[2], "a calendar year");
  }
  return club_of(call).and_then([&](const Club& club) {
    return written(
        services::season_review(club->records, club->weather, call.ids[1], *year, call.today));
  });
}

Answer works(const Call& call) {
  return club_of(call).map([&](const Club& club) {
    return reply(answers::to_json(services::work_lines(club->records, club->weather, call.today)));
  });
}

Answer work_review(const Call& call) {
  return club_of(call).and_then([&](const Club& club) {
    return written(services::work_review(club->records, club->weather, call.ids[1], call.today));
  });
}

Answer observers_review(const Call& call) {
  return club_of(call).map([&](const Club& club) {
    return reply(answers::to_json(services::observers_review(club->records, call.today)));
  });
}

Answer consistency_review(const Call& call) {
  const auto days = period_of(call);
  if (!days) {
    return tl::unexpected(days.error());
  }
  return club_of(call).map([&](const Club& club) {
    return reply(answers::to_json(services::consistency_review(club->records, *days, call.today)));
  });
}

Answer visits(const Call& call) {
  services::VisitQuery query;
  if (const std::string* green = call.query("green")) {
    query.green = *green;
  }
  const auto days = period_of(call);
  const auto offset = whole(call, "offset", 0, 0, std::numeric_limits<int>::max());
  const auto limit = whole(call, "limit", query.limit, 1, 1000);
  if (!days) {
    return tl::unexpected(days.error());
  }
  if (!offset || !limit) {
    return tl::unexpected(!offset ? offset.error() : limit.error());
  }
  query.days = *days;
  query.offset = *offset;
  query.limit = *limit;
  return club_of(call).and_then(
      [&](const Club& club) { return written(services::visit_page(club->records, query)); });
}

Answer visit_detail(const Call& call) {
  return club_of(call).and_then([&](const Club& club) {
    return written(services::visit_detail(club->records, call.ids[1]));
  });
}

Answer visit_history(const Call& call) {
  const auto revisions = call.context.store.history(call.ids[0], "visit", call.ids[1]);
  if (revisions && revisions->empty()) {
    return units::refuse("no_such_visit", "visit", call.ids[1], "a visit of this club");
  }
  return written(revisions);
}

} // namespace baize::api
