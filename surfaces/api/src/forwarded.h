#pragma once

#include <string>
#include <string_view>

namespace baize::api {

/// Who asks, and whether nobody on the way could read it.
struct Peer {
  std::string address; ///< "-" where it is not known
  bool secure = false;
};

/// "127.0.0.1" and "::1" and the like.
bool is_this_machine(std::string_view address);

/// What a proxy on this machine tells of the one it speaks for: the last address
/// of X-Forwarded-For, which the proxy itself has added (those before it may be
/// anybody's invention), and X-Forwarded-Proto. A proxy elsewhere is not believed,
/// nor what is no address.
Peer forwarded(const Peer& direct, std::string_view forwarded_for,
               std::string_view forwarded_proto);

} // namespace baize::api
