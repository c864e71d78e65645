#pragma once

#include "asio.h"
#include "baize/api/server.h"
#include "wire.h"

#include <list>
#include <memory>
#include <stop_token>

namespace baize::api {

class Connection;

/// What all connections share. Touched by the serving thread only.
struct Hall {
  const ServerOptions& options;
  const Handler& handler;
  asio::thread_pool& pool;            ///< where answers are worked out
  std::list<Connection*> idle;        ///< waiting for a request, longest first
  std::list<Connection*> connections; ///< every connection
  bool stopping = false;
};

/// One connection: requests in, answers out, one after another.
class Connection {
 public:
  Connection(Tcp::socket socket, Hall& hall);
  Connection(const Connection&) = delete;
  Connection& operator=(const Connection&) = delete;
  ~Connection();

  asio::awaitable<void> run();
  /// Cuts the connection; `run` then ends by itself.
  void close();
  /// Asks the answer under way to stop.
  void give_up();

 private:
  /// Asks the answer to stop when the client goes away while it is worked out.
  struct Vigil {
    std::stop_source answer;
    bool over = false;
  };
  std::shared_ptr<Vigil> keep_vigil();
  asio::awaitable<bool> serve_one();
  asio::awaitable<bool> read_body(Parser& parser);
  asio::awaitable<bool> send(Response response, const Parser& parser, bool keep_alive);
  asio::awaitable<void> part();
  void log(const Parser& parser, int status, std::size_t bytes,
           std::chrono::steady_clock::time_point since) const;

  beast::tcp_stream stream_;
  beast::flat_buffer buffer_;
  Hall& hall_;
  std::string address_;
  std::shared_ptr<Vigil> vigil_;
};

} // namespace baize::api
