#include "baize/answers/estimate.h"

namespace baize::answers {

Json estimate(const observers::Estimate& estimate) {
  Object object;
  object.put("value", estimate.value).put("se", estimate.se);
  if (estimate.interval) {
    object.put("low", estimate.interval->low).put("high", estimate.interval->high);
  }
  return object.done();
}

} // namespace baize::answers
