#include "forwarded.h"

#include "guard.h"

#include <arpa/inet.h>
#include <array>
#include <netinet/in.h>

namespace baize::api {

namespace {

/// As the system writes it; empty where it is no address in digits.
std::string address_in(std::string_view text) {
  text = trimmed(text);
  if (text.size() > 2 && text.front() == '[' && text.back() == ']') {
    text = text.substr(1, text.size() - 2);
  }
  if (text.find('\0') != std::string_view::npos) {
    return {}; // inet_pton would read no further
  }
  const std::string word(text);
  std::array<char, INET6_ADDRSTRLEN> shown{};
  std::array<unsigned char, sizeof(in6_addr)> bytes{};
  for (const int family : {AF_INET, AF_INET6}) {
    if (::inet_pton(family, word.c_str(), bytes.data()) == 1 &&
        ::inet_ntop(family, bytes.data(), shown.data(), shown.size()) != nullptr) {
      return shown.data();
    }
  }
  return {};
}

} // namespace

bool is_this_machine(std::string_view address) {
  return address.substr(0, 4) == "127." || address == "::1" ||
         address.substr(0, 11) == "::ffff:127.";
}

Peer forwarded(const Peer& direct, std::string_view forwarded_for,
               std::string_view forwarded_proto) {
  if (!is_this_machine(direct.address)) {
    return direct;
  }
  const std::size_t comma = forwarded_for.rfind(',');
  const std::string address =
      address_in(comma == std::string_view::npos ? forwarded_for : forwarded_for.substr(comma + 1));
  Peer peer = direct;
  if (!address.empty()) {
    peer.address = address;
  }
  peer.secure = direct.secure || is_word(forwarded_proto, "https");
  return peer;
}

} // namespace baize::api
