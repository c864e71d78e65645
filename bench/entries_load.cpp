// 500 phones hand in at once, over HTTP, to a server with its store on disk;
// and the same bytes to a server of the same parts that only sends them back.
// Prints p50 and p99 of both and exits with 1 when any answer was wrong.
#include "baize/api/answer.h"
#include "baize/api/server.h"
#include "baize/entries_json/entries.h"
#include "baize/store_sqlite/store.h"
#include "contract/folder.h"
#include "unit/api_fakes.h"
#include "unit/green_samples.h"
#include "unit/journal_samples.h"

#include <boost/asio.hpp>
#include <boost/beast.hpp>

#include <algorithm>
#include <chrono>
#include <cstdio>
#include <future>
#include <sys/resource.h>
#include <thread>

namespace {

namespace asio = boost::asio;
namespace http = boost::beast::http;
using Tcp = asio::ip::tcp;
using namespace journal_test;
using Clock = std::chrono::steady_clock;

constexpr int kPhones = 500;
constexpr int kPostsEach = 4;
constexpr int kRolls = 6;

/// A visit of one run and back, as a phone hands it in.
std::string body_of(int number) {
  auto fields = visit_fields();
  for (auto& member : fields) {
    if (member.name == "day") {
      member.value = text(units::iso(samples::kToday - number));
    }
  }
  const std::string visit_id = id(100000 + number);
  std::vector<Entry> entries{entry(1000000 + 10 * number, Kind::visit, visit_id, fields)};
  for (int i = 0; i < kRolls; ++i) {
    auto rolls = roll_fields(1 + i % 3);
    for (auto& member : rolls) {
      if (member.name == "visit") {
        member.value = text(visit_id);
      } else if (member.name == "direction") {
        member.value = text(i < 3 ? "out" : "back");
      }
    }
    entries.push_back(
        entry(1000001 + 10 * number + i, Kind::roll, id(2000000 + 10 * number + i), rolls));
  }
  return entries_json::write_package({kPhone, "2026-05-03T08:00:00Z", std::move(entries), {}});
}

struct Times {
  std::vector<double> ms;
  int errors = 0;
};

/// One phone: a connection of its own, its visits one after the other.
asio::awaitable<void> phone(int number, std::uint16_t port, const std::vector<std::string>& bodies,
                            const std::string& expected, Times& times) {
  try {
    boost::beast::tcp_stream stream(co_await asio::this_coro::executor);
    co_await stream.async_connect({asio::ip::address_v4::loopback(), port}, asio::use_awaitable);
    boost::beast::flat_buffer buffer;
    for (int i = 0; i < kPostsEach; ++i) {
      http::request<http::string_body> request(http::verb::post, "/api/v1/clubs/hill/entries", 11);
      request.set(http::field::host, "localhost");
      request.set(http::field::content_type, "application/json");
      request.body() = bodies[static_cast<std::size_t>(number * kPostsEach + i)];
      request.prepare_payload();
      const auto begin = Clock::now();
      co_await http::async_write(stream, request, asio::use_awaitable);
      http::response<http::string_body> response;
      co_await http::async_read(stream, buffer, response, asio::use_awaitable);
      times.ms.push_back(std::chrono::duration<double, std::milli>(Clock::now() - begin).count());
      const bool good =
          response.result_int() == 200 && response.body().find(expected) != std::string::npos;
      times.errors += good ? 0 : 1;
    }
  } catch (const std::exception&) {
    times.errors += 1;
  }
}

Times all_at_once(std::uint16_t port, const std::vector<std::string>& bodies,
                  const std::string& expected) {
  asio::io_context io(1);
  Times times;
  for (int i = 0; i < kPhones; ++i) {
    asio::co_spawn(io, phone(i, port, bodies, expected, times), asio::detached);
  }
  io.run();
  return times;
}

void print(const char* name, Times& times) {
  std::sort(times.ms.begin(), times.ms.end());
  const auto at = [&](double part) {
    return times.ms.empty()
               ? 0.0
               : times
                     .ms[static_cast<std::size_t>(part * static_cast<double>(times.ms.size() - 1))];
  };
  std::printf("%-14s %5zu posts, %d errors: p50 %8.1f ms, p99 %8.1f ms, most %8.1f ms\n", name,
              times.ms.size(), times.errors, at(0.5), at(0.99), at(1));
}

asio::awaitable<void> echo_one(Tcp::socket socket) {
  boost::beast::tcp_stream stream(std::move(socket));
  boost::beast::flat_buffer buffer;
  try {
    for (;;) {
      http::request<http::string_body> request;
      co_await http::async_read(stream, buffer, request, asio::use_awaitable);
      http::response<http::string_body> response(http::status::ok, 11);
      response.body() = std::move(request.body());
      response.prepare_payload();
      co_await http::async_write(stream, response, asio::use_awaitable);
    }
  } catch (const std::exception&) { // the phone has hung up
  }
}

asio::awaitable<void> echo(Tcp::acceptor& acceptor) {
  for (;;) {
    Tcp::socket socket = co_await acceptor.async_accept(asio::use_awaitable);
    asio::co_spawn(acceptor.get_executor(), echo_one(std::move(socket)), asio::detached);
  }
}

Times against_echo(const std::vector<std::string>& bodies) {
  asio::io_context io(1);
  Tcp::acceptor acceptor(io, {asio::ip::address_v4::loopback(), 0});
  asio::co_spawn(io, echo(acceptor), asio::detached);
  const std::uint16_t port = acceptor.local_endpoint().port();
  std::thread server([&] { io.run(); });
  Times times = all_at_once(port, bodies, "baize-entries");
  io.stop();
  server.join();
  return times;
}

Times against_baize(const std::vector<std::string>& bodies, std::size_t& kept) {
  const contract::Folder folder;
  auto store = std::move(*store_sqlite::SqliteStore::open(folder.file("club.sqlite3")));
  green::Records club = samples::records();
  club.visits.clear();
  (void)store->keep(club, {"ann", "2026-05-01T00:00:00Z"}, {});
  const made::FakeSheets sheets;
  api::ClubsCache clubs(*store);
  const api::Context context{*store,
                             sheets,
                             clubs,
                             [] { return samples::kToday; },
                             [] { return std::string("2026-05-03T08:00:00Z"); },
                             [](std::string_view) { return nullptr; }};
  std::promise<std::uint16_t> listening;
  api::ServerOptions options;
  options.body_limit = api::body_limit;
  options.waits = api::waits;
  options.listening = [&](std::uint16_t port) { listening.set_value(port); };
  std::jthread server([&](const std::stop_token& stop) {
    (void)api::serve(
        options, [&](const api::Request& request) { return api::answer(context, request); }, stop);
  });
  Times times = all_at_once(listening.get_future().get(), bodies, "\"accepted\"");
  server.request_stop();
  server.join();
  kept = store->load("hill")->visits.size();
  const store_sqlite::WriteFigures figures = store->figures();
  std::printf("%lld writes in %lld commits\n", static_cast<long long>(figures.writes),
              static_cast<long long>(figures.commits));
  return times;
}

} // namespace

int main() {
  const rlimit many{8192, 8192};
  (void)::setrlimit(RLIMIT_NOFILE, &many);
  std::vector<std::string> bodies;
  for (int i = 0; i < kPhones * kPostsEach; ++i) {
    bodies.push_back(body_of(i));
  }
  std::printf("%d connections at once, %d visits each, %zu bytes a visit\n", kPhones, kPostsEach,
              bodies.front().size());
  Times bare = against_echo(bodies);
  print("bare echo", bare);
  std::size_t kept = 0;
  Times times = against_baize(bodies, kept);
  print("baize on disk", times);
  std::printf("visits kept: %zu of %zu\n", kept, bodies.size());
  return times.errors == 0 && bare.errors == 0 && kept == bodies.size() ? 0 : 1;
}
