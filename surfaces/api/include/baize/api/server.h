#pragma once

#include "baize/api/http.h"
#include "baize/units/problem.h"

#include <chrono>
#include <cstdint>
#include <functional>
#include <stop_token>
#include <string>
#include <string_view>

namespace baize::api {

using Handler = std::function<Response(const Request&)>;

/// How to serve. Everything but the handler has a default fit for one machine.
struct ServerOptions {
  std::string address = "127.0.0.1";
  std::uint16_t port = 0; ///< 0: any free one
  int threads = 2;        ///< that work out answers, 1 to 256; sockets have one of their own
  int most_connections = 512;
  std::uint32_t header_limit = 16 * 1024; ///< bytes
  /// Bytes of body allowed, by method and target. Absent: 64 KiB.
  std::function<std::uint64_t(std::string_view method, std::string_view target)> body_limit;
  std::chrono::milliseconds idle_timeout{60'000};  ///< for a request to come in up to its body
  std::chrono::milliseconds stall_timeout{20'000}; ///< without a byte of body read or answer taken
  std::chrono::milliseconds grace{5'000};          ///< for answers under way when told to stop
  bool stop_on_signals = false;                    ///< SIGINT and SIGTERM stop it
  /// Called once it listens, with the port chosen, from the serving thread.
  std::function<void(std::uint16_t port)> listening;
  /// One line for each answer: address, method, target, status, bytes,
  /// milliseconds. Called from the serving thread. Absent: none.
  std::function<void(const std::string& line)> log;
};

/// Serves HTTP/1.1 until told to stop; blocks. Answers are worked out on a small
/// pool of threads, so neither idle clients nor slow answers keep others
/// waiting. When all connections are taken the one idle longest is closed.
/// Refuses before serving: "bad_server_options", "not_an_address",
/// "no_such_address", "port_in_use", "port_not_allowed", "cannot_listen".
units::Result<void> serve(const ServerOptions& options, const Handler& handler,
                          std::stop_token stop);

} // namespace baize::api
