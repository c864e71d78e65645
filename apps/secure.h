#pragma once

#include "baize/api/doorway.h"
#include "baize/cli/ports.h"

#include <string>
#include <vector>

namespace baize::apps {

/// What serving by https stands on.
struct Secure {
  api::Tls tls;
  api::Doorway doorway;           ///< without the port, which is known once it listens
  std::vector<std::string> hosts; ///< that the Host header may hold; empty: any
};

/// From the files that the settings name, or from the authority in the folder,
/// which is made there the first time. Refuses what baize::certificates refuses.
units::Result<Secure> open_secure(const cli::ServeSettings& settings, const std::string& folder);

/// Does the address reach this machine only?
bool this_machine_only(const std::string& address);
/// As it stands before a port: an IPv6 address in brackets.
std::string before_port(const std::string& address);
/// What the terminal says of the ways in, once the port is known.
std::string ways_in(const api::Doorway& doorway);

} // namespace baize::apps
