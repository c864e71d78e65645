#include "baize/green/work.h"

#include "baize/green/kinds.h"

#include <algorithm>

namespace baize::green {

WorkClass class_of(const Work& work) {
  const WorkKind* kind = find_work_kind(work.kind);
  const WorkClass usual = kind == nullptr ? WorkClass::routine : kind->work_class;
  if (usual == WorkClass::closing || !work.disruptive) {
    return usual;
  }
  return *work.disruptive ? WorkClass::disruptive : WorkClass::routine;
}

bool touches(const Work& work, const std::string& green, const std::string& half) {
  const bool there = work.greens.empty() ||
                     std::find(work.greens.begin(), work.greens.end(), green) != work.greens.end();
  return there && (work.half.empty() || half.empty() || work.half == half);
}

} // namespace baize::green
