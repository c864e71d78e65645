#include "baize/answers/ledger.h"

#include "baize/answers/words.h"

namespace baize::answers {

namespace {

Json day_kind(const recovery::DayKind& kind) {
  return Json(word(kind));
}

} // namespace

Json to_json(const recovery::Ledger& ledger) {
  return Object()
      .nest("period", to_json(ledger.period))
      .nest("days", list(ledger.days, day_kind))
      .put("measured_true", ledger.measured_true)
      .put("measured_not", ledger.measured_not)
      .put("between_true", ledger.between_true)
      .put("unmeasured", ledger.unmeasured)
      .put("closed", ledger.closed)
      .put("open", ledger.open())
      .put("fewest_true", ledger.fewest_true())
      .put("most_true", ledger.most_true())
      .done();
}

} // namespace baize::answers
