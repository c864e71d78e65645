#pragma once

#include "baize/api/server.h"

#include <atomic>
#include <future>
#include <optional>
#include <string>
#include <thread>

/// Plain sockets against a running server: what the tests send is sent to the byte.
namespace wire {

/// Connects to 127.0.0.1.
class Client {
 public:
  explicit Client(std::uint16_t port);
  Client(const Client&) = delete;
  Client& operator=(const Client&) = delete;
  ~Client();

  void send(const std::string& bytes) const;
  /// One answer, head and body by its Content-Length (none for `head_only`);
  /// what came of it when the other side hangs up or five seconds pass.
  std::string answer(bool head_only = false);
  /// True when the other side has hung up, within five seconds.
  bool ended() const;

 private:
  bool more();
  int socket_ = -1;
  std::string rest_;
};

int status_of(const std::string& answer);
std::string header_of(const std::string& answer, const std::string& name);
std::string body_of(const std::string& answer);
std::string get(const std::string& target, const std::string& more = "");

/// A server on a free port of 127.0.0.1, stopped at the end.
class Server {
 public:
  explicit Server(baize::api::Handler handler, baize::api::ServerOptions options = {});
  Server(const Server&) = delete;
  Server& operator=(const Server&) = delete;
  ~Server();

  std::uint16_t port() const { return port_; }
  /// Stops it and gives what `serve` gave.
  baize::units::Result<void> stop();

 private:
  baize::api::Handler handler_;
  baize::api::ServerOptions options_;
  std::uint16_t port_ = 0;
  std::optional<baize::units::Result<void>> result_;
  std::jthread thread_;
};

} // namespace wire
