#include "tls.h"

#include <openssl/ssl.h>

namespace baize::api {

namespace {

// TLS 1.2 (RFC 5246) with what RFC 9325, 4.2 recommends: a key exchange whose keys
// are forgotten, and authenticated encryption. TLS 1.3 has nothing else.
constexpr const char* kCiphers =
    "ECDHE-ECDSA-AES128-GCM-SHA256:ECDHE-RSA-AES128-GCM-SHA256:ECDHE-ECDSA-AES256-GCM-SHA384:"
    "ECDHE-RSA-AES256-GCM-SHA384:ECDHE-ECDSA-CHACHA20-POLY1305:ECDHE-RSA-CHACHA20-POLY1305";

/// RFC 7301: this server speaks HTTP/1.1. Who offers only other protocols is told so.
int choose_protocol(SSL* /*ssl*/, const unsigned char** chosen, unsigned char* length,
                    const unsigned char* offered, unsigned offered_length, void* /*nothing*/) {
  static constexpr unsigned char kOurs[] = "\x08http/1.1";
  unsigned char* found = nullptr;
  if (SSL_select_next_proto(&found, length, kOurs, sizeof kOurs - 1, offered, offered_length) !=
      OPENSSL_NPN_NEGOTIATED) {
    return SSL_TLSEXT_ERR_ALERT_FATAL;
  }
  *chosen = found;
  return SSL_TLSEXT_ERR_OK;
}

units::Refusal refuse_identity(const char* what, const beast::error_code& error) {
  return units::refuse("bad_identity", what, "given",
                       "one that TLS can use; it reports: " + error.message());
}

} // namespace

units::Result<std::shared_ptr<ssl::context>> make_context(const Identity& identity) {
  auto context = std::make_shared<ssl::context>(ssl::context::tls_server);
  SSL_CTX* raw = context->native_handle();
  SSL_CTX_set_min_proto_version(raw, TLS1_2_VERSION);
  SSL_CTX_set_options(raw, SSL_OP_NO_COMPRESSION | SSL_OP_NO_RENEGOTIATION |
                               SSL_OP_CIPHER_SERVER_PREFERENCE);
  SSL_CTX_set_cipher_list(raw, kCiphers);
  SSL_CTX_set_alpn_select_cb(raw, choose_protocol, nullptr);
  SSL_CTX_set_mode(raw, SSL_MODE_RELEASE_BUFFERS); // an idle phone holds no 34 kB
  beast::error_code error;
  context->use_certificate_chain(
      asio::buffer(identity.certificates.data(), identity.certificates.size()), error);
  if (error) {
    return refuse_identity("certificate", error);
  }
  context->use_private_key(asio::buffer(identity.key.data(), identity.key.size()),
                           ssl::context::pem, error);
  if (error) {
    return refuse_identity("key", error);
  }
  return context;
}

bool may_be_farewell(std::span<const unsigned char> bytes) {
  constexpr std::size_t kHeader = 5;
  constexpr unsigned char kAlert = 21;
  constexpr unsigned char kData = 23;
  if (bytes.size() < kHeader) {
    return false;
  }
  // RFC 8446, 5.2: TLS 1.3 hides an alert (2 bytes, its type, 16 of the tag) among
  // the data; a request is longer.
  const bool hidden = bytes[0] == kData && bytes[3] == 0 && bytes[4] == 19;
  return bytes[0] == kAlert || hidden;
}

} // namespace baize::api
