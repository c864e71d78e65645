#pragma once

#include "asio.h"

#include <boost/asio/ssl.hpp>

#include <optional>

namespace baize::api {

namespace ssl = boost::asio::ssl;

/// A connection's bytes, plain at first and encrypted after `secure`. Both look
/// alike to whoever reads and writes, so that HTTP is written once; time limits
/// are those of the connection beneath.
class Stream {
 public:
  using executor_type = beast::tcp_stream::executor_type;
  explicit Stream(Tcp::socket socket) : plain_(std::move(socket)) {}

  executor_type get_executor() { return plain_.get_executor(); }
  Tcp::socket& socket() { return plain_.socket(); }
  beast::tcp_stream& plain() { return plain_; }
  template <class Duration> void expires_after(Duration time) { plain_.expires_after(time); }
  void close() { plain_.close(); }

  bool is_secure() const { return secure_.has_value(); }
  ssl::stream<beast::tcp_stream&>& secure(ssl::context& context) {
    return secure_.emplace(plain_, context);
  }
  ssl::stream<beast::tcp_stream&>& secure() { return *secure_; }

  template <class Buffers, class Token>
  auto async_read_some(const Buffers& buffers, Token&& token) {
    return asio::async_initiate<Token, void(beast::error_code, std::size_t)>(
        [this](auto handler, const Buffers& into) {
          if (secure_) {
            secure_->async_read_some(into, std::move(handler));
          } else {
            plain_.async_read_some(into, std::move(handler));
          }
        },
        token, buffers);
  }
  template <class Buffers, class Token>
  auto async_write_some(const Buffers& buffers, Token&& token) {
    return asio::async_initiate<Token, void(beast::error_code, std::size_t)>(
        [this](auto handler, const Buffers& from) {
          if (secure_) {
            secure_->async_write_some(from, std::move(handler));
          } else {
            plain_.async_write_some(from, std::move(handler));
          }
        },
        token, buffers);
  }

 private:
  beast::tcp_stream plain_;
  std::optional<ssl::stream<beast::tcp_stream&>> secure_;
};

} // namespace baize::api
