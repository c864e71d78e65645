#include "secure.h"

#include "baize/certificates/certificates.h"
#include "baize/scan_code/scan_code.h"
#include "clock.h"

#include <fmt/format.h>

#include <algorithm>

namespace baize::apps {

namespace {

api::Identity shown(const certificates::Identity& identity) {
  return {identity.certificates, identity.key};
}

/// The identity as it is now: made, read, or renewed.
using Find = std::function<units::Result<certificates::Identity>()>;

/// Asks for the identity again while serving; says once why it cannot be renewed.
std::function<std::optional<api::Identity>()> watch(const Find& find,
                                                    certificates::Identity current) {
  return [find, current = std::move(current),
          complained = false]() mutable -> std::optional<api::Identity> {
    auto found = find();
    if (!found) {
      if (!std::exchange(complained, true)) {
        fmt::print(stderr, "The certificate is not renewed: {}\n", units::sentence(found.error()));
      }
      return std::nullopt;
    }
    if (*found == current) {
      return std::nullopt;
    }
    current = std::move(*found);
    return shown(current);
  };
}

units::Result<Secure> with(const Find& find) {
  auto identity = find();
  if (!identity) {
    return tl::unexpected(identity.error());
  }
  Secure secure;
  secure.tls.identity = shown(*identity);
  secure.tls.renewed = watch(find, std::move(*identity));
  return secure;
}

bool any_address(const std::string& address) {
  return address == "0.0.0.0" || address == "::";
}

/// By which a phone most likely comes: the name it is told, the address listened
/// on, or the first of this machine's.
std::string host_for(const cli::ServeSettings& settings, const certificates::Names& names) {
  if (!settings.names.empty()) {
    return settings.names.front();
  }
  return before_port(any_address(settings.address) ? names.addresses.front() : settings.address);
}

} // namespace

bool this_machine_only(const std::string& address) {
  return address.rfind("127.", 0) == 0 || address == "::1" || address == "localhost";
}

std::string before_port(const std::string& address) {
  return address.find(':') == std::string::npos ? address : "[" + address + "]";
}

units::Result<Secure> open_secure(const cli::ServeSettings& settings, const std::string& folder) {
  certificates::Names names = certificates::names_of_this_machine();
  if (!settings.certificate.empty()) {
    auto secure = with([settings] {
      return certificates::given_identity(settings.certificate, settings.key, seconds());
    });
    if (secure) {
      secure->doorway.host = host_for(settings, names);
      secure->doorway.names = settings.names;
      secure->doorway.scan_code = scan_code::svg;
    }
    return secure;
  }
  const std::vector<std::string> own =
      settings.names.empty() ? names.hosts : settings.names; // what the authority is made for
  const auto authority = certificates::open_authority(folder, own, seconds());
  if (!authority) {
    return tl::unexpected(authority.error());
  }
  auto secure = with([folder, wanted = settings.names] {
    return certificates::server_identity(folder, certificates::names_of_this_machine(), wanted,
                                         seconds());
  });
  if (!secure) {
    return secure;
  }
  names.hosts.insert(names.hosts.end(), settings.names.begin(), settings.names.end());
  secure->hosts = names.hosts;
  for (const std::string& address : names.addresses) {
    secure->hosts.push_back(before_port(address));
  }
  secure->doorway = {host_for(settings, names),
                     0,
                     secure->hosts,
                     authority->certificate,
                     authority->fingerprint,
                     scan_code::svg};
  return secure;
}

std::string ways_in(const api::Doorway& doorway) {
  std::string text =
      fmt::format("Baize is at https://{}:{}/ (Ctrl+C ends it)\n", doorway.host, doorway.port);
  text +=
      fmt::format("For phones: http://{}:{}/phone shows the steps\n", doorway.host, doorway.port);
  if (!doorway.fingerprint.empty()) {
    text += "SHA-256 fingerprint of this machine's authority, to compare with the phone's:\n  " +
            doorway.fingerprint + "\n";
  }
  return text;
}

} // namespace baize::apps
