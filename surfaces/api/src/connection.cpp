#include "connection.h"

#include "baize/api/answer.h"
#include "tls.h"

#include <array>
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

Response failure(const Request& request, const std::exception& error) {
  return refusal(500, {"server_error", "request", request.target.substr(0, 200),
                       "something this server can answer; it reports: " + std::string(error.what()),
                       ""});
}

/// Does the work on whatever thread this runs: the answer, or what keeps a request
/// out before its body is read.
template <class Answer>
asio::awaitable<Answer> done(const std::function<Answer(const Request&)>& work,
                             const Request& request) {
  try {
    co_return work(request);
  } catch (const std::exception& error) {
    co_return failure(request, error);
  }
}

/// Does what goes on byte by byte move on fast enough? Single bytes just in time
/// would else hold a connection for ever.
class Pace {
 public:
  explicit Pace(const ServerOptions& options) : options_(options) {}
  bool keeps_up(std::size_t more) {
    bytes_ += static_cast<double>(more);
    const std::chrono::duration<double> over = Clock::now() - since_ - options_.stall_timeout;
    return over.count() <= 0 || bytes_ >= over.count() * static_cast<double>(options_.least_rate);
  }

 private:
  const ServerOptions& options_;
  Clock::time_point since_ = Clock::now();
  double bytes_ = 0;
};

std::string_view view(boost::beast::string_view text) {
  return {text.data(), text.size()};
}

} // namespace

std::string address_of(const Tcp::socket& socket) {
  beast::error_code error;
  const auto remote = socket.remote_endpoint(error);
  return error ? "-" : remote.address().to_string();
}

Connection::Connection(Tcp::socket socket, Hall& hall)
    : stream_(std::move(socket)), buffer_(hall.options.header_limit + 64 * 1024), hall_(hall) {
  hall_.connections.push_back(this);
  count();
  address_ = address_of(stream_.socket());
}

Connection::~Connection() {
  hall_.idle.remove(this);
  hall_.connections.remove(this);
  count();
}

void Connection::count() const {
  if (hall_.options.metrics) {
    hall_.options.metrics->connections(static_cast<std::int64_t>(hall_.connections.size()));
  }
}

void Connection::close() {
  stream_.close();
}

void Connection::give_up() {
  if (vigil_) {
    vigil_->answer.request_stop();
  }
}

std::shared_ptr<Connection::Vigil> Connection::keep_vigil() {
  auto vigil = std::make_shared<Vigil>();
  watch(vigil);
  return vigil;
}

/// A readable socket without bytes is one whose other side has closed. Bytes are
/// the next request, unless they say farewell: that client waits. Runs on the
/// serving thread, as all here.
void Connection::watch(const std::shared_ptr<Vigil>& vigil) {
  auto& socket = stream_.socket();
  const bool secure = stream_.is_secure();
  socket.async_wait(Tcp::socket::wait_read, [=, &socket](const beast::error_code& waited) {
    if (waited || vigil->over) { // over: the socket may be gone
      return;
    }
    std::array<unsigned char, 5> bytes{};
    beast::error_code error;
    socket.non_blocking(true, error);
    const std::size_t seen = socket.receive(asio::buffer(bytes), Tcp::socket::message_peek, error);
    const bool gone = seen == 0 && error != asio::error::would_block;
    if (gone || (secure && may_be_farewell({bytes.data(), seen}))) {
      vigil->answer.request_stop();
    }
  });
}

/// Who comes without TLS where it is served is answered apart.
bool Connection::speaks_plainly() const {
  return hall_.options.tls && !stream_.is_secure();
}

std::uint64_t Connection::body_limit(const Parser& parser, const Answered& answered) const {
  const auto& limit = hall_.options.body_limit;
  return limit && !speaks_plainly() ? limit(answered.method, view(parser.get().target()))
                                    : kDefaultBody;
}

asio::awaitable<void> Connection::run() {
  beast::error_code error;
  stream_.socket().set_option(Tcp::no_delay(true), error);
  if (hall_.tls && !co_await greet()) {
    co_return;
  }
  while (co_await serve_one()) {
  }
  co_await part();
}

/// The handshake, where the first bytes are one of TLS.
asio::awaitable<bool> Connection::greet() {
  beast::error_code error;
  hall_.idle.push_back(this);
  stream_.expires_after(hall_.options.tls->handshake_timeout);
  const bool secure = co_await beast::async_detect_ssl(stream_.plain(), buffer_, told(error));
  if (!error && secure) {
    tls_ = hall_.tls;
    const std::size_t used = co_await stream_.secure(*tls_).async_handshake(
        ssl::stream_base::server, buffer_.data(), told(error));
    buffer_.consume(used);
  }
  hall_.idle.remove(this);
  if (error) {
    stream_.close();
  }
  co_return !error;
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
  Answered answered = begun(parser);
  const std::uint64_t limit = body_limit(parser, answered);
  auto refused = fault_of(parser, limit);
  if (!refused) {
    refused = co_await kept_out(parser, answered);
  }
  if (refused) {
    answered.status = refused->status;
    answered.route = refused->route;
    co_await send(std::move(*refused), parser, false, answered.id);
    tell(answered, since);
    co_return false;
  }
  parser.body_limit(limit);
  if (!co_await read_body(parser)) {
    co_return false;
  }
  Response response = co_await worked_out(parser, answered);
  const bool keep_alive = parser.get().keep_alive() && !hall_.stopping;
  answered.status = response.status;
  answered.route = response.route;
  answered.bytes = response.send_body ? response.body.size() : 0;
  const bool sent = co_await send(std::move(response), parser, keep_alive, answered.id);
  tell(answered, since);
  const bool another = sent && keep_alive && !hall_.stopping;
  co_return another;
}

Request Connection::request_in(Parser& parser, const Answered& answered) const {
  Request request = request_of(parser);
  request.address = answered.address;
  request.id = answered.id;
  request.secure = secure_;
  return request;
}

/// A stranger's large body is not read only to be refused.
asio::awaitable<std::optional<Response>> Connection::kept_out(Parser& parser,
                                                              const Answered& answered) {
  const auto length = parser.content_length();
  const bool large = !parser.is_done() && (!length || *length > kDefaultBody);
  if (!large || !hall_.options.turned_away || speaks_plainly()) {
    co_return std::nullopt;
  }
  const Request head = request_in(parser, answered);
  co_return co_await asio::co_spawn(hall_.pool.get_executor(),
                                    done(hall_.options.turned_away, head), asio::use_awaitable);
}

/// The answer, from another thread, while this one looks whether it is waited for.
asio::awaitable<Response> Connection::worked_out(Parser& parser, Answered& answered) {
  beast::error_code error;
  Request request = request_in(parser, answered);
  vigil_ = keep_vigil();
  request.stop = vigil_->answer.get_token();
  const bool waits = hall_.options.waits && hall_.options.waits(request.method, request.target);
  asio::thread_pool& pool = waits ? hall_.waiting : hall_.pool;
  const Handler& handler = speaks_plainly() ? hall_.options.tls->plain : hall_.handler;
  Response response =
      co_await asio::co_spawn(pool.get_executor(), done(handler, request), asio::use_awaitable);
  vigil_->over = true;
  vigil_.reset();
  stream_.socket().cancel(error);
  co_return response;
}

/// What is known of a request before it is answered.
Answered Connection::begun(const Parser& parser) {
  const auto& message = parser.get();
  Peer peer{address_, stream_.is_secure()};
  if (hall_.options.behind_proxy) {
    // Further lines of the same name follow the first: the proxy's is the last.
    std::string_view last;
    const auto [first, end] = message.equal_range("X-Forwarded-For");
    for (auto line = first; line != end; ++line) {
      last = view(line->value());
    }
    peer = forwarded(peer, last, view(message["X-Forwarded-Proto"]));
  }
  secure_ = peer.secure;
  const std::string_view target = view(message.target());
  Answered answered;
  answered.id = hall_.run + "-" + std::to_string(++hall_.requests);
  answered.address = peer.address;
  answered.method = std::string(view(message.method_string()));
  answered.path = std::string(target.substr(0, target.find('?')));
  return answered;
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
  Pace pace(hall_.options);
  while (!parser.is_done()) {
    stream_.expires_after(hall_.options.stall_timeout);
    const std::size_t more = co_await http::async_read_some(stream_, buffer_, parser, told(error));
    if (is_broken(error)) {
      co_await send(broken(error), parser, false);
    }
    if (error || !pace.keeps_up(more)) {
      co_return false;
    }
  }
  co_return true;
}

asio::awaitable<bool> Connection::send(Response response, const Parser& parser, bool keep_alive,
                                       const std::string& id) {
  beast::error_code error;
  const unsigned version = parser.is_header_done() ? parser.get().version() : 11;
  WireResponse wire = wire_of(std::move(response), version == 10 ? 10 : 11, keep_alive);
  if (!id.empty()) {
    wire.set("X-Request-Id", id);
  }
  http::response_serializer<http::string_body> serializer(wire);
  Pace pace(hall_.options);
  while (!serializer.is_done()) {
    stream_.expires_after(hall_.options.stall_timeout);
    const std::size_t more = co_await http::async_write_some(stream_, serializer, told(error));
    if (error || !pace.keeps_up(more)) {
      co_return false;
    }
  }
  co_return true;
}

/// Ends the connection so that the other side can still read the last answer:
/// closing with bytes unread would make the kernel take it back.
asio::awaitable<void> Connection::part() {
  beast::error_code error;
  stream_.expires_after(std::chrono::seconds(2));
  if (stream_.is_secure()) {
    // Says that the answer was whole; the other side's own farewell, or bytes it
    // still sends, are of no interest.
    co_await stream_.secure().async_shutdown(told(error));
    error.clear();
  }
  stream_.socket().shutdown(Tcp::socket::shutdown_send, error);
  for (std::size_t drained = 0; !error && drained < kDrained && !hall_.stopping;) {
    buffer_.clear();
    drained += co_await stream_.plain().async_read_some(buffer_.prepare(16384), told(error));
  }
  stream_.close();
}

void Connection::tell(Answered& answered, Clock::time_point since) const {
  const std::chrono::duration<double> took = Clock::now() - since;
  constexpr double kMilli = 1000;
  answered.ms = took.count() * kMilli;
  if (hall_.options.metrics) {
    hall_.options.metrics->answered(answered.method, answered.route, answered.status, took.count());
  }
  if (hall_.options.log) {
    hall_.options.log(answered);
  }
}

} // namespace baize::api
