// A body of entries: read or refused; what is read passes every rule of an entry
// alone, folds, makes records or says why not, and comes back the same when
// written and read again.
#include "baize/entries_json/entries.h"

#include "baize/journal/records.h"
#include "must.h"

#include <cstdint>
#include <string_view>

namespace {

void fold_both_ways(std::vector<baize::journal::Entry> entries) {
  namespace journal = baize::journal;
  const journal::Folded folded = journal::fold(entries);
  for (const journal::Thing& thing : folded.things) {
    must(!thing.heads.empty() && !thing.fields.empty());
    for (const journal::Field& field : thing.fields) {
      must(!field.standing.empty());
    }
  }
  (void)journal::records(folded);
  (void)journal::conflicts(folded);
  std::vector<journal::Entry> turned(entries.rbegin(), entries.rend());
  turned.insert(turned.end(), entries.begin(), entries.end());
  must(journal::fold(turned) == folded);
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  using namespace baize;
  const std::string_view body(reinterpret_cast<const char*>(data), size);
  const auto package = entries_json::read_package(body);
  if (!package) {
    must(!package.error().code.empty() && !package.error().rule.empty());
    return 0;
  }
  for (const journal::Entry& entry : package->entries) {
    must(journal::check(entry).empty());
  }
  const auto again = entries_json::read_package(entries_json::write_package(*package));
  must(again && again->entries == package->entries && again->unread.empty());
  fold_both_ways(package->entries);
  return 0;
}
