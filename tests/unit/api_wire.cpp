#include "api_wire.h"

#include <arpa/inet.h>
#include <array>
#include <cstdlib>
#include <netinet/in.h>
#include <sys/socket.h>
#include <sys/time.h>
#include <unistd.h>

namespace wire {

Client::Client(std::uint16_t port) : socket_(::socket(AF_INET, SOCK_STREAM, 0)) {
  const timeval patience{5, 0};
  ::setsockopt(socket_, SOL_SOCKET, SO_RCVTIMEO, &patience, sizeof patience);
  sockaddr_in address{};
  address.sin_family = AF_INET;
  address.sin_port = htons(port);
  address.sin_addr.s_addr = htonl(INADDR_LOOPBACK);
  if (::connect(socket_, reinterpret_cast<const sockaddr*>(&address), sizeof address) != 0) {
    ::close(socket_);
    socket_ = -1;
  }
}

Client::~Client() {
  ::close(socket_);
}

void Client::send(const std::string& bytes) const {
  for (std::size_t sent = 0; sent < bytes.size();) {
    const ssize_t n = ::send(socket_, bytes.data() + sent, bytes.size() - sent, MSG_NOSIGNAL);
    if (n <= 0) {
      return;
    }
    sent += static_cast<std::size_t>(n);
  }
}

bool Client::more() {
  std::array<char, 65536> buffer{};
  const ssize_t n = ::recv(socket_, buffer.data(), buffer.size(), 0);
  if (n <= 0) {
    return false;
  }
  rest_.append(buffer.data(), static_cast<std::size_t>(n));
  return true;
}

std::string Client::answer(bool head_only) {
  std::size_t end = std::string::npos;
  while ((end = rest_.find("\r\n\r\n")) == std::string::npos) {
    if (!more()) {
      return std::exchange(rest_, {});
    }
  }
  std::size_t whole = end + 4;
  if (!head_only) {
    whole += std::strtoul(header_of(rest_.substr(0, whole), "Content-Length").c_str(), nullptr, 10);
  }
  while (rest_.size() < whole && more()) {
  }
  std::string one = rest_.substr(0, whole);
  rest_.erase(0, whole);
  return one;
}

bool Client::ended() const {
  char byte = 0;
  ssize_t n = 0;
  while ((n = ::recv(socket_, &byte, 1, 0)) > 0) {
  }
  return n == 0 || errno == ECONNRESET;
}

int status_of(const std::string& answer) {
  return answer.rfind("HTTP/1.", 0) == 0 ? std::atoi(answer.c_str() + 9) : 0;
}

std::string header_of(const std::string& answer, const std::string& name) {
  const std::size_t at = answer.find("\r\n" + name + ": ");
  if (at == std::string::npos) {
    return "";
  }
  const std::size_t start = at + name.size() + 4;
  return answer.substr(start, answer.find("\r\n", start) - start);
}

std::string body_of(const std::string& answer) {
  const std::size_t end = answer.find("\r\n\r\n");
  return end == std::string::npos ? "" : answer.substr(end + 4);
}

std::string get(const std::string& target, const std::string& more) {
  return "GET " + target + " HTTP/1.1\r\nHost: localhost\r\n" + more + "\r\n";
}

Server::Server(baize::api::Handler handler, baize::api::ServerOptions options)
    : handler_(std::move(handler)), options_(std::move(options)) {
  std::promise<std::uint16_t> listening;
  options_.listening = [&](std::uint16_t port) { listening.set_value(port); };
  thread_ = std::jthread([this](std::stop_token stop) {
    result_ = baize::api::serve(options_, handler_, std::move(stop));
  });
  port_ = listening.get_future().get();
}

Server::~Server() {
  stop();
}

baize::units::Result<void> Server::stop() {
  if (thread_.joinable()) {
    thread_.request_stop();
    thread_.join();
  }
  return *result_;
}

} // namespace wire
