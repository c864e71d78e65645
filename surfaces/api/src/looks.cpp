// The handlers that read: from the store's snapshot to a service to its JSON.
#include "access.h"
#include "baize/answers/consistency_review.h"
#include "baize/answers/fields.h"
#include "baize/answers/greens_review.h"
#include "baize/answers/observers_review.h"
#include "baize/answers/records_view.h"
#include "baize/answers/season_review.h"
#include "baize/answers/store.h"
#include "baize/answers/work_review.h"
#include "query.h"
#include "reply.h"

#include <limits>

namespace baize::api {

namespace {

using Club = std::shared_ptr<const Snapshot>;

template <class T> Answer written(const units::Result<T>& result) {
  return result.map([](const T& value) { return reply(answers::to_json(value)); });
}

units::Result<std::optional<units::Period>> period_of(const Call& call) {
  const auto from = day_of(call, "from");
  const auto to = day_of(call, "to");
  if (!from || !to) {
    return tl::unexpected(from ? to.error() : from.error());
  }
  if (!*from && !*to) {
    return std::nullopt;
  }
  // An open end reaches to the last day a record can have.
  const units::Period period{from->value_or(*units::make_day(1600, 1, 1)),
                             to->value_or(*units::make_day(2600, 12, 31))};
  if (period.last < period.first) {
    return units::refuse("bad_query", "to", units::iso(period.last),
                         "a day not before 'from', which is " + units::iso(period.first));
  }
  return period;
}

} // namespace

Answer healthz(const Call& call) {
  return reply(answers::Object().put("status", "ok").put("change_number", call.change).done());
}

Answer fields(const Call& /*call*/) {
  return reply(answers::fields());
}

Answer clubs(const Call& call) {
  return written(clubs_of(call.context, call.caller));
}

Answer greens_review(const Call& call) {
  return club_of(call).map([&](const Club& club) {
    return reply(
        answers::to_json(services::greens_review(club->records, club->weather, call.today)));
  });
}

Answer season_review(const Call& call) {
  const auto year = year_of(call, 2);
  if (!year) {
    return tl::unexpected(year.error());
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
  const auto offset = whole_of(call, "offset", 0, 0, std::numeric_limits<int>::max());
  const auto limit = whole_of(call, "limit", query.limit, 1, 1000);
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
