#pragma once

#include "asio.h"
#include "baize/api/server.h"
#include "forwarded.h"
#include "stream.h"
#include "wire.h"

#include <list>
#include <memory>
#include <stop_token>

namespace baize::api {

class Connection;

/// Who is at the other end, in digits; "-" where that is not known any more.
std::string address_of(const Tcp::socket& socket);

/// What all connections share. Touched by the serving thread only.
struct Hall {
  const ServerOptions& options;
  const Handler& handler;
  asio::thread_pool& pool;            ///< where answers are worked out
  asio::thread_pool& waiting;         ///< where those wait that wait for the disk
  std::shared_ptr<ssl::context> tls;  ///< of the connections to come; null: plain HTTP
  std::list<Connection*> idle;        ///< waiting for a request, longest first
  std::list<Connection*> connections; ///< every connection
  std::uint64_t requests = 0;
  std::string run{}; ///< tells the requests of one run of the program from another's
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
  const std::string& address() const { return address_; }

 private:
  /// Asks the answer to stop when the client goes away while it is worked out.
  struct Vigil {
    std::stop_source answer;
    bool over = false;
  };
  std::shared_ptr<Vigil> keep_vigil();
  void count() const;
  void watch(const std::shared_ptr<Vigil>& vigil);
  bool speaks_plainly() const;
  std::uint64_t body_limit(const Parser& parser, const Answered& answered) const;
  Request request_in(Parser& parser, const Answered& answered) const;
  asio::awaitable<bool> greet();
  asio::awaitable<bool> serve_one();
  asio::awaitable<std::optional<Response>> kept_out(Parser& parser, const Answered& answered);
  asio::awaitable<Response> worked_out(Parser& parser, Answered& answered);
  asio::awaitable<bool> read_body(Parser& parser);
  asio::awaitable<bool> send(Response response, const Parser& parser, bool keep_alive,
                             const std::string& id = {});
  asio::awaitable<void> part();
  Answered begun(const Parser& parser);
  void tell(Answered& answered, std::chrono::steady_clock::time_point since) const;

  std::shared_ptr<ssl::context> tls_; ///< outlives the stream that uses it
  Stream stream_;
  beast::flat_buffer buffer_;
  Hall& hall_;
  std::string address_;
  bool secure_ = false; ///< the request under way came by https
  std::shared_ptr<Vigil> vigil_;
};

} // namespace baize::api
