#pragma once

#include "baize/certificates/certificates.h"
#include "openssl.h"

namespace baize::certificates {

/// A certificate with its key.
struct Signed {
  Certificate certificate;
  Key key;
};

/// Absent members: OpenSSL has no memory or no random numbers.
Signed make_authority(const std::vector<std::string>& own, Instant now);
Signed make_server(const Signed& authority, const Names& names, Instant now);
/// May the authority speak for this one name or address?
bool allows(const Signed& authority, const std::string& name, bool is_address);

} // namespace baize::certificates
