#pragma once

#include "baize/units/problem.h"

#include <cstdint>
#include <string>
#include <vector>

namespace baize::certificates {

/// Seconds since 1970-01-01T00:00:00Z.
using Instant = std::int64_t;
inline constexpr Instant kDay = 86400;

/// A server's certificate, with those between it and a root where there are any,
/// and its private key; PEM text.
struct Identity {
  std::string certificates;
  std::string key;
  friend bool operator==(const Identity&, const Identity&) = default;
};

/// What may be known of an authority: its key stays in its file.
struct Authority {
  std::string file;
  std::string certificate; ///< DER
  std::string fingerprint; ///< SHA-256 of it, "AB:CD:..."
};

/// Under which a server is reached.
struct Names {
  std::vector<std::string> hosts;     ///< "greens.local"
  std::vector<std::string> addresses; ///< "192.168.1.20", "fe80::1"
  friend bool operator==(const Names&, const Names&) = default;
};

/// Host name, host name with .local, localhost, and the addresses of this
/// machine's networks that are not of the open internet (RFC 1918, 3927, 4193);
/// the first of them is the one that others most likely reach.
Names names_of_this_machine();
/// Letters, digits, dots and hyphens; what a host may be called (RFC 1123, 2.1).
bool is_host_name(const std::string& name);

/// Reads the authority kept in the folder (baize-authority.pem, mode 0600), or
/// makes it: an EC key on P-256, CA:TRUE with path length 0, ten years, and name
/// constraints (RFC 5280, 4.2.1.10), so that it can speak for `own` names and
/// names and addresses of local networks and for nothing else, even where its key
/// is stolen. Refuses "folder_unwritable", "key_unreadable", "key_not_private"
/// (others may read the file), "certificate_unreadable", "key_not_of_certificate",
/// "certificate_expired", "certificate_not_yet", "bad_host_name".
units::Result<Authority> open_authority(const std::string& folder,
                                        const std::vector<std::string>& own, Instant now);

/// Days that a server's certificate is valid: phones refuse more than 825.
inline constexpr int kServerDays = 90;
/// It is renewed when it has fewer days than this.
inline constexpr int kRenewBefore = 30;

/// The server's certificate kept in the folder (baize-server.pem, mode 0600), or a
/// new one of its authority where there is none, it is due, broken, or made for
/// other names. Names that the authority may not speak for are left out, but for
/// those in `wanted`: "name_not_allowed". Refuses as open_authority too.
units::Result<Identity> server_identity(const std::string& folder, const Names& names,
                                        const std::vector<std::string>& wanted, Instant now);

/// Files of one's own. Refuses "certificate_unreadable", "key_unreadable" (also
/// with a pass phrase), "key_not_of_certificate", "certificate_expired",
/// "certificate_not_yet".
units::Result<Identity> given_identity(const std::string& certificate_file,
                                       const std::string& key_file, Instant now);

} // namespace baize::certificates
