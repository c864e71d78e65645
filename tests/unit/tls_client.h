#pragma once

#include <cstdint>
#include <memory>
#include <openssl/ssl.h>
#include <string>

/// OpenSSL's own client against a running server, at 127.0.0.1.
namespace wire {

struct Asked {
  std::string authority;          ///< DER of whom it trusts
  std::string host = "localhost"; ///< whom it expects; digits are an address
  int highest = 0;                ///< TLS version; 0: any
  std::string protocols{};        ///< for ALPN, each with its length before it
  bool verifies = true;           ///< false: takes any certificate, to look at it
};

class TlsClient {
 public:
  TlsClient(std::uint16_t port, const Asked& asked);
  TlsClient(const TlsClient&) = delete;
  TlsClient& operator=(const TlsClient&) = delete;
  ~TlsClient();

  bool connected() const { return connected_; }
  const std::string& error() const { return error_; } ///< why not
  std::string version() const { return SSL_get_version(ssl_.get()); }
  std::string protocol() const;
  std::string serial() const; ///< of the server's certificate
  void send(const std::string& bytes) const;
  /// One answer by its Content-Length, or what came until the other side ended.
  std::string answer();
  /// Says farewell, as a page that is closed does; the socket stays.
  void farewell() const { SSL_shutdown(ssl_.get()); }

 private:
  struct Free {
    void operator()(SSL_CTX* it) const { SSL_CTX_free(it); }
    void operator()(SSL* it) const { SSL_free(it); }
  };
  void trust(const Asked& asked);
  std::unique_ptr<SSL_CTX, Free> context_;
  std::unique_ptr<SSL, Free> ssl_;
  int socket_ = -1;
  bool connected_ = false;
  std::string error_;
  std::string rest_;
};

} // namespace wire
