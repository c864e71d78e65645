#include "tls_client.h"

#include "api_wire.h"

#include <arpa/inet.h>
#include <array>
#include <cstdlib>
#include <netinet/in.h>
#include <openssl/err.h>
#include <openssl/x509v3.h>
#include <sys/socket.h>
#include <sys/time.h>
#include <unistd.h>

namespace wire {

void TlsClient::trust(const Asked& asked) {
  const auto* bytes = reinterpret_cast<const unsigned char*>(asked.authority.data());
  X509* authority = d2i_X509(nullptr, &bytes, static_cast<long>(asked.authority.size()));
  X509_STORE_add_cert(SSL_CTX_get_cert_store(context_.get()), authority);
  X509_free(authority);
  SSL_CTX_set_verify(context_.get(), asked.verifies ? SSL_VERIFY_PEER : SSL_VERIFY_NONE, nullptr);
  X509_VERIFY_PARAM* rules = SSL_CTX_get0_param(context_.get());
  const bool digits = asked.host.find_first_not_of("0123456789.:") == std::string::npos;
  if (digits) {
    X509_VERIFY_PARAM_set1_ip_asc(rules, asked.host.c_str());
  } else {
    X509_VERIFY_PARAM_set1_host(rules, asked.host.c_str(), asked.host.size());
  }
}

TlsClient::TlsClient(std::uint16_t port, const Asked& asked)
    : context_(SSL_CTX_new(TLS_client_method())), socket_(::socket(AF_INET, SOCK_STREAM, 0)) {
  // As old as the client can be, so that it is the server that refuses.
  SSL_CTX_set_security_level(context_.get(), 0);
  SSL_CTX_set_min_proto_version(context_.get(), 0);
  SSL_CTX_set_max_proto_version(context_.get(), asked.highest);
  trust(asked);
  ssl_.reset(SSL_new(context_.get()));
  const timeval patience{5, 0};
  ::setsockopt(socket_, SOL_SOCKET, SO_RCVTIMEO, &patience, sizeof patience);
  sockaddr_in address{};
  address.sin_family = AF_INET;
  address.sin_port = htons(port);
  address.sin_addr.s_addr = htonl(INADDR_LOOPBACK);
  if (::connect(socket_, reinterpret_cast<const sockaddr*>(&address), sizeof address) != 0) {
    error_ = "no connection";
    return;
  }
  SSL_set_fd(ssl_.get(), socket_);
  SSL_set_tlsext_host_name(ssl_.get(), asked.host.c_str());
  if (!asked.protocols.empty()) {
    SSL_set_alpn_protos(ssl_.get(), reinterpret_cast<const unsigned char*>(asked.protocols.data()),
                        static_cast<unsigned>(asked.protocols.size()));
  }
  ERR_clear_error();
  connected_ = SSL_connect(ssl_.get()) == 1;
  if (!connected_) {
    const long why = SSL_get_verify_result(ssl_.get());
    const char* reason = ERR_reason_error_string(ERR_peek_error());
    error_ = why != X509_V_OK ? X509_verify_cert_error_string(why)
                              : (reason == nullptr ? "ended" : reason);
  }
}

TlsClient::~TlsClient() {
  ::close(socket_);
}

std::string TlsClient::protocol() const {
  const unsigned char* chosen = nullptr;
  unsigned length = 0;
  SSL_get0_alpn_selected(ssl_.get(), &chosen, &length);
  return {reinterpret_cast<const char*>(chosen), length};
}

std::string TlsClient::serial() const {
  const std::unique_ptr<X509, void (*)(X509*)> server(SSL_get1_peer_certificate(ssl_.get()),
                                                      X509_free);
  const std::unique_ptr<BIGNUM, void (*)(BIGNUM*)> number(
      ASN1_INTEGER_to_BN(X509_get0_serialNumber(server.get()), nullptr), BN_free);
  char* digits = BN_bn2hex(number.get());
  std::string text = digits;
  OPENSSL_free(digits);
  return text;
}

void TlsClient::send(const std::string& bytes) const {
  SSL_write(ssl_.get(), bytes.data(), static_cast<int>(bytes.size()));
}

std::string TlsClient::answer() {
  std::array<char, 65536> buffer{};
  for (;;) {
    const std::size_t end = rest_.find("\r\n\r\n");
    if (end != std::string::npos) {
      const std::size_t whole =
          end + 4 + std::strtoul(header_of(rest_, "Content-Length").c_str(), nullptr, 10);
      if (rest_.size() >= whole) {
        std::string one = rest_.substr(0, whole);
        rest_.erase(0, whole);
        return one;
      }
    }
    const int n = SSL_read(ssl_.get(), buffer.data(), static_cast<int>(buffer.size()));
    if (n <= 0) {
      return std::exchange(rest_, {});
    }
    rest_.append(buffer.data(), static_cast<std::size_t>(n));
  }
}

} // namespace wire
