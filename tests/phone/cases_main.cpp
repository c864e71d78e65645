// Prints every case with the native library's answer, one JSON list a line:
// [name, what was given (base64, for its bytes may be broken), the answer].
// surfaces/web/test/core.test.ts reads it. With a number: how long so many
// rounds of all cases take, as nanoseconds a call for each function.
#include "baize/wasm/functions.h"
#include "phone/base64.h"
#include "phone/cases.h"

#include <nlohmann/json.hpp>

#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <map>

namespace {

using nlohmann::json;

void print_answers(const std::vector<phone::Case>& cases) {
  for (const phone::Case& one : cases) {
    const json line = {one.name, phone::base64(one.takes), baize::wasm::call(one.name, one.takes)};
    std::puts(line.dump(-1, ' ', false, json::error_handler_t::replace).c_str());
  }
}

void print_times(const std::vector<phone::Case>& cases, int rounds) {
  std::map<std::string, std::pair<double, int>> spent;
  std::size_t bytes = 0;
  for (int round = 0; round < rounds; ++round) {
    for (const phone::Case& one : cases) {
      const auto begin = std::chrono::steady_clock::now();
      bytes += baize::wasm::call(one.name, one.takes).size();
      const auto end = std::chrono::steady_clock::now();
      auto& [nanoseconds, calls] = spent[one.name];
      nanoseconds += std::chrono::duration<double, std::nano>(end - begin).count();
      ++calls;
    }
  }
  json times = {{"bytes", bytes}};
  for (const auto& [name, one] : spent) {
    times[name] = one.first / one.second;
  }
  std::puts(times.dump().c_str());
}

} // namespace

int main(int count, char** words) {
  const std::vector<phone::Case> cases = phone::all_cases();
  if (count > 1) {
    print_times(cases, std::atoi(words[1]));
  } else {
    print_answers(cases);
  }
  return 0;
}
