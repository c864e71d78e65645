#pragma once

#include "baize/api/http.h"
#include "baize/api/metrics.h"
#include "baize/units/problem.h"

#include <chrono>
#include <cstdint>
#include <functional>
#include <memory>
#include <optional>
#include <stop_token>
#include <string>
#include <string_view>

namespace baize::api {

using Handler = std::function<Response(const Request&)>;

/// What a server shows of itself: its certificate, with those between it and a
/// root where there are any, and its private key; PEM text.
struct Identity {
  std::string certificates;
  std::string key;
};

/// Serving by https.
struct Tls {
  Identity identity;
  /// Asked now and then while serving, on the serving thread: another identity
  /// for the connections to come, or none where all is as before.
  std::function<std::optional<Identity>()> renewed{};
  std::chrono::milliseconds ask_every{3'600'000};
  std::chrono::milliseconds handshake_timeout{10'000};
  /// Answers whoever comes without TLS, at the same port and at `plain_port`.
  Handler plain{};
  std::optional<std::uint16_t> plain_port{}; ///< a further port for them, 80 say
};

/// An answer that was given, for the log. No query, header or body is in it.
struct Answered {
  std::string id;
  std::string address;
  std::string method;
  std::string path;
  std::string_view route; ///< empty: none was found
  int status = 0;
  std::size_t bytes = 0; ///< of the answer's body
  double ms = 0;         ///< from the whole header to the last byte given to the system
};

/// How to serve. Everything but the handler has a default fit for one machine.
struct ServerOptions {
  std::string address = "127.0.0.1";
  std::uint16_t port = 0; ///< 0: any free one
  int threads = 2;        ///< that work out answers, 1 to 256; sockets have one of their own
  /// Threads for requests that mostly wait for the disk, 1 to 256: so many may
  /// share one commit, and none waits behind a long computation.
  int waiting_threads = 32;
  /// Which requests those are. Absent: none.
  std::function<bool(std::string_view method, std::string_view target)> waits{};
  int most_connections = 512;
  int most_per_address = 128;             ///< of them from one address that is not this machine
  std::uint32_t header_limit = 16 * 1024; ///< bytes
  /// Bytes of body allowed, by method and target. Absent: 64 KiB.
  std::function<std::uint64_t(std::string_view method, std::string_view target)> body_limit;
  /// Asked before a body of more than 64 KiB is read, with a request that has none
  /// yet: the refusal of who may not send it. Absent: every body is read.
  std::function<std::optional<Response>(const Request&)> turned_away{};
  std::chrono::milliseconds idle_timeout{60'000};  ///< for a request to come in up to its body
  std::chrono::milliseconds stall_timeout{20'000}; ///< without a byte of body read or answer taken
  /// A body or an answer may take as long as it likes as long as it moves on: after
  /// the stall timeout at no fewer bytes a second than this, on the mean.
  std::size_t least_rate = 512;
  std::chrono::milliseconds grace{5'000}; ///< for answers under way when told to stop
  bool stop_on_signals = false;           ///< SIGINT and SIGTERM stop it
  /// Called once it listens, with the port chosen, from the serving thread.
  std::function<void(std::uint16_t port)> listening;
  /// Each answer. Called from the serving thread. Absent: none.
  std::function<void(const Answered&)> log{};
  std::shared_ptr<Metrics> metrics{}; ///< where answers are counted; null: nowhere
  std::optional<Tls> tls{};           ///< absent: plain HTTP
  /// Believe X-Forwarded-For and X-Forwarded-Proto of a proxy on this machine.
  bool behind_proxy = false;
};

/// Serves HTTP/1.1 until told to stop; blocks. Answers are worked out on a small
/// pool of threads, so neither idle clients nor slow answers keep others
/// waiting. When all connections are taken the one idle longest is closed.
/// Refuses before serving: "bad_server_options", "bad_identity", "not_an_address",
/// "no_such_address", "port_in_use", "port_not_allowed", "cannot_listen".
units::Result<void> serve(const ServerOptions& options, const Handler& handler,
                          std::stop_token stop);

} // namespace baize::api
