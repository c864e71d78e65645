#include "baize/journal/fold.h"

#include "answers.h"
#include "baize/entries_json/entries.h"
#include "entries.h"

namespace baize::wasm {

Answer fold(const Read& takes) {
  Reader reader(takes);
  std::vector<journal::Entry> entries = read_entries(reader, "entries");
  if (reader.problem()) {
    return reader.refusal();
  }
  return entries_json::to_json(journal::fold(std::move(entries)));
}

} // namespace baize::wasm
