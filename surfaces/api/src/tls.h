#pragma once

#include "baize/api/server.h"
#include "stream.h"

#include <memory>
#include <span>

namespace baize::api {

/// TLS 1.2 and 1.3 with ciphers that keep past talks secret, HTTP/1.1 by ALPN.
/// Refuses "bad_identity".
units::Result<std::shared_ptr<ssl::context>> make_context(const Identity& identity);

/// Are these the first bytes of a record that ends a TLS connection, or may end it?
bool may_be_farewell(std::span<const unsigned char> bytes);

} // namespace baize::api
