#include "entries.h"

#include "baize/entries_json/entries.h"

namespace baize::wasm {

std::vector<journal::Entry> read_entries(Reader& reader, const char* field) {
  const Read* list = reader.need_list(field);
  if (list == nullptr) {
    return {};
  }
  entries_json::Package package;
  entries_json::read_entries(*list, package);
  if (!package.unread.empty()) {
    reader.refuse(package.unread.front().problem);
  }
  return std::move(package.entries);
}

} // namespace baize::wasm
