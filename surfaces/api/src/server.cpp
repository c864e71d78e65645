#include "baize/api/server.h"

#include "connection.h"
#include "tls.h"

#include <fmt/format.h>

#include <csignal>
#include <optional>
#include <random>

namespace baize::api {

namespace {

units::Refusal refuse_listen(const ServerOptions& options, std::uint16_t number,
                             const beast::error_code& error) {
  const std::string port = std::to_string(number);
  if (error == asio::error::address_in_use) {
    return units::refuse("port_in_use", "port", port,
                         "a port that no other program uses at " + options.address);
  }
  if (error == asio::error::access_denied) {
    return units::refuse("port_not_allowed", "port", port,
                         "a port this user may open, 1024 or above");
  }
  if (error == boost::system::errc::address_not_available) {
    return units::refuse("no_such_address", "address", options.address,
                         "an address of this machine");
  }
  return units::refuse("cannot_listen", "port", port,
                       "a port the system opens; it reports: " + error.message());
}

std::optional<units::Problem> problem_of(const ServerOptions& options) {
  const auto bad = [](const char* field, int value, const char* rule) {
    return units::Problem{"bad_server_options", field, std::to_string(value), rule, ""};
  };
  if (options.threads < 1 || options.threads > 256) {
    return bad("threads", options.threads, "a whole number from 1 to 256");
  }
  if (options.waiting_threads < 1 || options.waiting_threads > 256) {
    return bad("waiting_threads", options.waiting_threads, "a whole number from 1 to 256");
  }
  if (options.most_per_address < 1) {
    return bad("most_per_address", options.most_per_address, "a whole number from 1");
  }
  if (options.most_connections < 1 || options.most_connections > 60000) {
    return bad("most_connections", options.most_connections, "a whole number from 1 to 60000");
  }
  if (options.header_limit < 256 || options.header_limit > 1024 * 1024) {
    return bad("header_limit", static_cast<int>(options.header_limit), "from 256 to 1048576 bytes");
  }
  return std::nullopt;
}

units::Result<Tcp::acceptor> listen(asio::io_context& io, const ServerOptions& options,
                                    std::uint16_t port) {
  beast::error_code error;
  const auto address = asio::ip::make_address(options.address, error);
  if (error) {
    return units::refuse("not_an_address", "address", options.address,
                         "an IPv4 or IPv6 address in digits, such as 127.0.0.1");
  }
  const Tcp::endpoint endpoint(address, port);
  Tcp::acceptor acceptor(io);
  acceptor.open(endpoint.protocol(), error);
  if (!error) {
    acceptor.set_option(Tcp::acceptor::reuse_address(true), error);
  }
  if (!error) {
    acceptor.bind(endpoint, error);
  }
  if (!error) {
    acceptor.listen(Tcp::acceptor::max_listen_connections, error);
  }
  if (error) {
    return refuse_listen(options, port, error);
  }
  return acceptor;
}

asio::awaitable<void> attend(Tcp::socket socket, Hall& hall) {
  Connection connection(std::move(socket), hall);
  co_await connection.run();
}

/// Says that all is taken, and hangs up. Who waits for TLS would not understand it.
asio::awaitable<void> turn_away(Tcp::socket socket, bool tls) {
  if (tls) {
    co_return;
  }
  beast::tcp_stream stream(std::move(socket));
  beast::error_code error;
  WireResponse wire = wire_of(too_busy(), 11, false);
  stream.expires_after(std::chrono::seconds(2));
  co_await http::async_write(stream, wire, asio::redirect_error(asio::use_awaitable, error));
  stream.socket().shutdown(Tcp::socket::shutdown_send, error);
}

/// One that is not this machine may not take all places.
bool takes_too_many(const Tcp::socket& socket, const Hall& hall) {
  const std::string address = address_of(socket);
  if (is_this_machine(address)) {
    return false;
  }
  const auto its = std::count_if(hall.connections.begin(), hall.connections.end(),
                                 [&](const Connection* one) { return one->address() == address; });
  return its >= hall.options.most_per_address;
}

asio::awaitable<void> accept_all(Tcp::acceptor& acceptor, Hall& hall) {
  const auto most = static_cast<std::size_t>(hall.options.most_connections);
  while (!hall.stopping) {
    beast::error_code error;
    Tcp::socket socket(acceptor.get_executor());
    co_await acceptor.async_accept(socket, asio::redirect_error(asio::use_awaitable, error));
    if (hall.stopping || error == asio::error::operation_aborted) {
      co_return;
    }
    if (error) { // out of file descriptors, say: let connections end before going on
      asio::steady_timer pause(acceptor.get_executor(), std::chrono::milliseconds(100));
      co_await pause.async_wait(asio::redirect_error(asio::use_awaitable, error));
      continue;
    }
    if ((hall.connections.size() >= most && hall.idle.empty()) || takes_too_many(socket, hall)) {
      asio::co_spawn(acceptor.get_executor(), turn_away(std::move(socket), hall.tls != nullptr),
                     asio::detached);
      continue;
    }
    if (hall.connections.size() >= most) {
      hall.idle.front()->close();
      hall.idle.pop_front();
    }
    asio::co_spawn(acceptor.get_executor(), attend(std::move(socket), hall), asio::detached);
  }
}

/// Takes no more connections, ends the idle ones, and waits for the answers
/// under way until the grace is over; what is still computed then is stopped.
asio::awaitable<void> wind_up(std::list<Tcp::acceptor>& doors, Hall& hall, asio::io_context& io) {
  beast::error_code error;
  for (Tcp::acceptor& door : doors) {
    door.close(error);
  }
  for (Connection* connection : hall.idle) {
    connection->close();
  }
  const auto end = std::chrono::steady_clock::now() + hall.options.grace;
  asio::steady_timer timer(io);
  while (!hall.connections.empty() && std::chrono::steady_clock::now() < end) {
    timer.expires_after(std::chrono::milliseconds(10));
    co_await timer.async_wait(asio::redirect_error(asio::use_awaitable, error));
  }
  for (Connection* connection : hall.connections) {
    connection->give_up();
  }
  io.stop();
}

/// Asks for another identity now and then. One that TLS cannot use is not taken.
asio::awaitable<void> keep_renewed(Hall& hall, asio::io_context& io) {
  asio::steady_timer timer(io);
  while (!hall.stopping) {
    beast::error_code error;
    timer.expires_after(hall.options.tls->ask_every);
    co_await timer.async_wait(asio::redirect_error(asio::use_awaitable, error));
    if (const auto identity = hall.options.tls->renewed()) {
      hall.tls = make_context(*identity).value_or(hall.tls);
    }
  }
}

/// The doors that are asked for, open: that of the address, and the plain one.
units::Result<std::list<Tcp::acceptor>> open_doors(asio::io_context& io,
                                                   const ServerOptions& options) {
  std::list<Tcp::acceptor> doors;
  std::vector<std::uint16_t> ports{options.port};
  if (options.tls && options.tls->plain_port) {
    ports.push_back(*options.tls->plain_port);
  }
  for (const std::uint16_t port : ports) {
    auto door = listen(io, options, port);
    if (!door) {
      return tl::unexpected(door.error());
    }
    doors.push_back(std::move(*door));
  }
  return doors;
}

/// Six digits that differ from one run of the program to the next.
std::string name_of_run() {
  constexpr unsigned kSixDigits = 0xFFFFFF;
  return fmt::format("{:06x}", std::random_device()() & kSixDigits);
}

} // namespace

units::Result<void> serve(const ServerOptions& options, const Handler& handler,
                          std::stop_token stop) {
  if (const auto problem = problem_of(options)) {
    return tl::unexpected(*problem);
  }
  asio::thread_pool pool(static_cast<std::size_t>(options.threads));
  asio::thread_pool waiting(static_cast<std::size_t>(options.waiting_threads));
  Hall hall{options, handler, pool, waiting, nullptr, {}, {}};
  hall.run = name_of_run();
  if (options.tls) {
    auto context = make_context(options.tls->identity);
    if (!context) {
      return tl::unexpected(context.error());
    }
    hall.tls = std::move(*context);
  }
  asio::io_context io(1); // its end destroys what is left of the connections: the hall outlives it
  auto doors = open_doors(io, options);
  if (!doors) {
    return tl::unexpected(doors.error());
  }
  const auto begin_end = [&] {
    if (!std::exchange(hall.stopping, true)) {
      asio::co_spawn(io, wind_up(*doors, hall, io), asio::detached);
    }
  };
  asio::signal_set signals(io);
  if (options.stop_on_signals) {
    signals.add(SIGINT);
    signals.add(SIGTERM);
    signals.async_wait([&](const beast::error_code& error, int) {
      if (!error) {
        begin_end();
      }
    });
  }
  if (options.listening) {
    options.listening(doors->front().local_endpoint().port());
  }
  for (Tcp::acceptor& door : *doors) {
    asio::co_spawn(io, accept_all(door, hall), asio::detached);
  }
  if (options.tls && options.tls->renewed) {
    asio::co_spawn(io, keep_renewed(hall, io), asio::detached);
  }
  {
    const std::stop_callback on_stop(std::move(stop), [&] { asio::post(io, begin_end); });
    io.run();
  }
  waiting.join();
  pool.join(); // answers that outlasted the grace still use the handler
  return {};
}

} // namespace baize::api
