#include "baize/certificates/certificates.h"

#include <algorithm>
#include <arpa/inet.h>
#include <array>
#include <ifaddrs.h>
#include <memory>
#include <net/if.h>
#include <netinet/in.h>
#include <unistd.h>

namespace baize::certificates {

namespace {

bool letter_or_digit(char c) {
  return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9');
}

/// 10/8, 172.16/12, 192.168/16 (RFC 1918) and 169.254/16 (RFC 3927).
bool is_local(const in_addr& address) {
  const std::uint32_t bits = ntohl(address.s_addr);
  return (bits >> 24U) == 10 || (bits >> 20U) == 0xAC1 || (bits >> 16U) == 0xC0A8 ||
         (bits >> 16U) == 0xA9FE;
}

/// fc00::/7 (RFC 4193). Addresses of one link (fe80::) need the name of a network
/// card beside them, which no certificate can hold.
bool is_local(const in6_addr& address) {
  return (address.s6_addr[0] & 0xFEU) == 0xFCU;
}

std::string shown(int family, const void* address) {
  std::array<char, INET6_ADDRSTRLEN> text{};
  return ::inet_ntop(family, address, text.data(), text.size()) == nullptr ? "" : text.data();
}

void add_addresses(std::vector<std::string>& all) {
  ifaddrs* first = nullptr;
  if (::getifaddrs(&first) != 0) {
    return;
  }
  const std::unique_ptr<ifaddrs, void (*)(ifaddrs*)> list(first, ::freeifaddrs);
  std::vector<std::string> v6;
  for (const ifaddrs* it = first; it != nullptr; it = it->ifa_next) {
    if (it->ifa_addr == nullptr || (it->ifa_flags & IFF_UP) == 0) {
      continue;
    }
    if (it->ifa_addr->sa_family == AF_INET) {
      const auto& address = reinterpret_cast<const sockaddr_in*>(it->ifa_addr)->sin_addr;
      if (is_local(address)) {
        all.push_back(shown(AF_INET, &address));
      }
    } else if (it->ifa_addr->sa_family == AF_INET6) {
      const auto& address = reinterpret_cast<const sockaddr_in6*>(it->ifa_addr)->sin6_addr;
      if (is_local(address)) {
        v6.push_back(shown(AF_INET6, &address));
      }
    }
  }
  all.insert(all.end(), v6.begin(), v6.end());
}

} // namespace

bool is_host_name(const std::string& name) {
  constexpr std::size_t kLongest = 253;
  bool begins = true; // of a label
  char last = '.';
  for (const char c : name) {
    const bool good =
        letter_or_digit(c) || (c == '-' && !begins) || (c == '.' && last != '-' && !begins);
    if (!good) {
      return false;
    }
    begins = c == '.';
    last = c;
  }
  return !name.empty() && name.size() <= kLongest && letter_or_digit(last);
}

Names names_of_this_machine() {
  Names names;
  std::array<char, 256> text{};
  const std::string host =
      ::gethostname(text.data(), text.size() - 1) == 0 ? std::string(text.data()) : std::string();
  if (is_host_name(host)) {
    names.hosts.push_back(host);
    if (host.find('.') == std::string::npos) {
      names.hosts.push_back(host + ".local");
    }
  }
  names.hosts.emplace_back("localhost");
  add_addresses(names.addresses);
  names.addresses.emplace_back("127.0.0.1");
  names.addresses.emplace_back("::1");
  return names;
}

} // namespace baize::certificates
