#include "connection.h"

#include "baize/api/answer.h"

#include <fmt/format.h>

#include <limits>

namespace baize::api {

namespace {

using Clock = std::chrono::steady_clock;
// Completes with the error instead of throwing it.
auto told(beast::error_code& error) {
  return asio::redirect_error(asio::use_awaitable, error);
}

/// Bytes came that are no HTTP; all else is a connection that ended.
bool is_broken(const beast::error_code& error) {
  return error.category() == make_error_code(http::error::bad_method).category() &&
         error != http::error::end_of_stream && error != http::error::partial_message;
}

constexpr std::uint64_t kDefaultBody = 64ULL * 1024;
constexpr std::size_t kDrained = 1024UL * 1024;

/// Works the answer out on whatever thread this runs.
asio::awaitable<Response> worked_out(const Handler& handler, const Request& request) {
  try {
    co_return handler(request);
  } catch (const std::exception& error) {
    co_return refusal(
        500, {"server_error", "request", request.target.substr(0, 200),
              "something this server can answer; it reports: " + std::string(error.what()), ""});
  }
}

} // namespace

Connection::Connection(Tcp::socket socket, Hall& hall)
    : stream_(std::move(socket)), buffer_(hall.options.header_limit + 64 * 1024), hall_(hall) {
  hall_.connections.push_back(this);
  beast::error_code error;
  const auto remote = stream_.socket().remote_endpoint(error);
  address_ = error ? "-" : remote.address().to_string();
}

Connection::~Connection() {
  hall_.idle.remove(this);
  hall_.connections.remove(this);
}

void Connection::close() {
  stream_.close();
}

void Connection::give_up() {
  if (vigil_) {
    vigil_->answer.request_stop();
  }
}

/// A readable socket without bytes is one whose other side has closed. Bytes are
/// the next request: that client waits. Runs on the serving thread, as all here.
std::shared_ptr<Connection::Vigil> Connection::keep_vigil() {
  auto vigil = std::make_shared<Vigil>();
  auto& socket = stream_.socket();
  socket.async_wait(Tcp::socket::wait_read, [vigil, &socket](const beast::error_code& waited) {
    if (waited || vigil->over) { // over: the socket may be gone
      return;
    }
    char byte = 0;
    beast::error_code error;
    socket.non_blocking(true, error);
    const std::size_t seen =
        socket.receive(asio::buffer(&byte, 1), Tcp::socket::message_peek, error);
    if (seen == 0 && error != asio::error::would_block) {
      vigil->answer.request_stop();
    }
  });
  return vigil;
}

asio::awaitable<void> Connection::run() {
  beast::error_code error;
  stream_.socket().set_option(Tcp::no_delay(true), error);
  while (co_await serve_one()) {
  }
  co_await part();
}

/// One request and its answer. False: the connection is to end.
asio::awaitable<bool> Connection::serve_one() {
  beast::error_code error;
  Parser parser;
  parser.header_limit(hall_.options.header_limit);
  // The limit depends on the target and is set when that is known. Beast 1.74
  // takes an absent limit for one of nothing, so this is the largest number.
  parser.body_limit(std::numeric_limits<std::uint64_t>::max());

  hall_.idle.push_back(this);
  stream_.expires_after(hall_.options.idle_timeout);
  co_await http::async_read_header(stream_, buffer_, parser, told(error));
  hall_.idle.remove(this);
  const auto since = Clock::now();
  if (is_broken(error)) {
    co_await send(broken(error), parser, false);
  }
  if (error) {
    co_return false;
  }

  const auto target = parser.get().target();
  const auto method = parser.get().method_string();
  const std::uint64_t limit =
      hall_.options.body_limit
          ? hall_.options.body_limit({method.data(), method.size()}, {target.data(), target.size()})
          : kDefaultBody;
  if (auto fault = fault_of(parser, limit)) {
    const int status = fault->status;
    co_await send(std::move(*fault), parser, false);
    log(parser, status, 0, since);
    co_return false;
  }
  parser.body_limit(limit);
  if (!co_await read_body(parser)) {
    co_return false;
  }

  Request request = request_of(parser);
  vigil_ = keep_vigil();
  request.stop = vigil_->answer.get_token();
  Response response = co_await asio::co_spawn(
      hall_.pool.get_executor(), worked_out(hall_.handler, request), asio::use_awaitable);
  vigil_->over = true;
  vigil_.reset();
  stream_.socket().cancel(error);
  const bool keep_alive = parser.get().keep_alive() && !hall_.stopping;
  const int status = response.status;
  const std::size_t bytes = response.send_body ? response.body.size() : 0;
  const bool sent = co_await send(std::move(response), parser, keep_alive);
  log(parser, status, bytes, since);
  const bool another = sent && keep_alive && !hall_.stopping;
  co_return another;
}

asio::awaitable<bool> Connection::read_body(Parser& parser) {
  beast::error_code error;
  if (!parser.is_done() && beast::iequals(parser.get()[http::field::expect], "100-continue")) {
    http::response<http::empty_body> go_on(http::status::continue_, parser.get().version());
    stream_.expires_after(hall_.options.stall_timeout);
    co_await http::async_write(stream_, go_on, told(error));
    if (error) {
      co_return false;
    }
  }
  while (!parser.is_done()) {
    stream_.expires_after(hall_.options.stall_timeout);
    co_await http::async_read_some(stream_, buffer_, parser, told(error));
    if (is_broken(error)) {
      co_await send(broken(error), parser, false);
    }
    if (error) {
      co_return false;
    }
  }
  co_return true;
}

asio::awaitable<bool> Connection::send(Response response, const Parser& parser, bool keep_alive) {
  beast::error_code error;
  const unsigned version = parser.is_header_done() ? parser.get().version() : 11;
  WireResponse wire = wire_of(std::move(response), version == 10 ? 10 : 11, keep_alive);
  http::response_serializer<http::string_body> serializer(wire);
  while (!serializer.is_done()) {
    stream_.expires_after(hall_.options.stall_timeout);
    co_await http::async_write_some(stream_, serializer, told(error));
    if (error) {
      co_return false;
    }
  }
  co_return true;
}

/// Ends the connection so that the other side can still read the last answer:
/// closing with bytes unread would make the kernel take it back.
asio::awaitable<void> Connection::part() {
  beast::error_code error;
  stream_.socket().shutdown(Tcp::socket::shutdown_send, error);
  stream_.expires_after(std::chrono::seconds(2));
  for (std::size_t drained = 0; !error && drained < kDrained && !hall_.stopping;) {
    buffer_.clear();
    drained += co_await stream_.async_read_some(buffer_.prepare(16384), told(error));
  }
  stream_.close();
}

void Connection::log(const Parser& parser, int status, std::size_t bytes,
                     Clock::time_point since) const {
  if (!hall_.options.log) {
    return;
  }
  const auto method = parser.get().method_string();
  const auto target = parser.get().target();
  const std::chrono::duration<double, std::milli> took = Clock::now() - since;
  hall_.options.log(
      fmt::format("{} {} {} {} {} {:.1f}", address_, fmt::string_view(method.data(), method.size()),
                  fmt::string_view(target.data(), target.size()), status, bytes, took.count()));
}

} // namespace baize::api
