#pragma once

#include "baize/api/server.h"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace baize::api {

/// How phones come to a server that serves by https.
struct Doorway {
  std::string host; ///< as it stands in an address: "192.168.1.20", "[fd00::1]"
  std::uint16_t port = 0;
  std::vector<std::string> names; ///< hosts that a redirect may lead to, besides
  /// DER of the authority that a phone must first be told to trust; empty where
  /// the certificate is of one that phones trust already.
  std::string authority{};
  std::string fingerprint{}; ///< SHA-256 of it, "AB:CD:..."
  /// A text as a picture to scan, SVG.
  std::function<units::Result<std::string>(const std::string& text)> scan_code{};
};

/// The page /phone: its codes to scan, the steps that make a phone trust the
/// authority, and the authority's certificate to take. None: another path.
std::optional<Response> phone_page(const Doorway& doorway, const Request& request);

/// Answers whoever comes without TLS: with /phone, which a phone must be able to
/// read before it trusts the authority, and else with the way to https. What is
/// sent here was read by anybody: "https_needed".
Response at_the_door(const Doorway& doorway, const Request& request);

/// What comes by TLS goes to the handler, but for /phone. Adds
/// Strict-Transport-Security (RFC 6797) where the certificate is of a public
/// authority and the name a public one; docs/decisions/014-https.md says why not
/// elsewhere.
Response inside(const Doorway& doorway, const Handler& handler, const Request& request);

} // namespace baize::api
