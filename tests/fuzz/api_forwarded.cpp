// First line: X-Forwarded-Proto; the rest: X-Forwarded-For, which anybody may send.
// Whatever comes, an address is told, and only a proxy here can change it.
#include "forwarded.h"
#include "must.h"

#include <algorithm>
#include <cstdint>

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  using baize::api::forwarded;
  const std::string_view text(reinterpret_cast<const char*>(data), size);
  const std::string_view proto = text.substr(0, text.find('\n'));
  const std::string_view list = text.substr(std::min(text.size(), proto.size() + 1));
  const auto elsewhere = forwarded({"192.0.2.1", false}, list, proto);
  must(elsewhere.address == "192.0.2.1" && !elsewhere.secure);
  const auto here = forwarded({"127.0.0.1", true}, list, proto);
  must(here.secure);
  must(!here.address.empty() && here.address.size() < 46);
  must(here.address.find_first_not_of("0123456789abcdef.:") == std::string::npos);
  must(forwarded({"127.0.0.1", false}, here.address, "").address == here.address);
  return 0;
}
