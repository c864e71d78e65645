// The body of an import: read or refused; what is read comes back the same
// when written and read again.
#include "baize/api/import_body.h"
#include "must.h"

#include <nlohmann/json.hpp>

#include <cstdint>
#include <string>

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  const std::string body(reinterpret_cast<const char*>(data), size);
  const auto read = baize::api::read_import_body(body);
  if (!read) {
    must(read.error().code == "bad_json" || read.error().code == "bad_import");
    return 0;
  }
  must(!read->empty() && read->size() <= baize::api::kMostFiles);
  nlohmann::json files = nlohmann::json::array();
  for (const auto& file : *read) {
    must(!file.name.empty() && file.name.find('/') == std::string::npos);
    files.push_back({{"name", file.name}, {"content", file.content}});
  }
  const auto again = baize::api::read_import_body(nlohmann::json{{"files", files}}.dump());
  must(again && *again == *read);
  return 0;
}
