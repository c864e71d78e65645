#include "unit/entries_kill.h"

#include <arpa/inet.h>
#include <array>
#include <csignal>
#include <cstdlib>
#include <fcntl.h>
#include <netinet/in.h>
#include <sys/socket.h>
#include <sys/wait.h>
#include <unistd.h>

namespace killed {

namespace {

std::string line_from(int descriptor) {
  std::string line;
  char letter = 0;
  while (::read(descriptor, &letter, 1) == 1 && letter != '\n') {
    line += letter;
  }
  return line;
}

int connected(std::uint16_t port) {
  const int socket = ::socket(AF_INET, SOCK_STREAM | SOCK_CLOEXEC, 0);
  sockaddr_in address{};
  address.sin_family = AF_INET;
  address.sin_port = htons(port);
  address.sin_addr.s_addr = htonl(INADDR_LOOPBACK);
  if (::connect(socket, reinterpret_cast<const sockaddr*>(&address), sizeof address) != 0) {
    ::close(socket);
    return -1;
  }
  return socket;
}

bool send_all(int socket, const std::string& bytes) {
  std::size_t sent = 0;
  while (sent < bytes.size()) {
    const ssize_t now = ::send(socket, bytes.data() + sent, bytes.size() - sent, MSG_NOSIGNAL);
    if (now <= 0) {
      return false;
    }
    sent += static_cast<std::size_t>(now);
  }
  return true;
}

} // namespace

bool Process::start() {
  std::array<int, 2> pipe{};
  if (::pipe2(pipe.data(), O_CLOEXEC) != 0) {
    return false;
  }
  child_ = ::fork();
  if (child_ == 0) {
    ::dup2(pipe[1], STDOUT_FILENO);
    ::execl(BAIZE_PROGRAM, BAIZE_PROGRAM, "serve", "--db", database_.c_str(), "--port", "0",
            static_cast<char*>(nullptr));
    std::_Exit(127);
  }
  ::close(pipe[1]);
  const std::string line = line_from(pipe[0]); // "Baize is at http://127.0.0.1:8417/ ..."
  ::close(pipe[0]);
  const auto colon = line.find(":", line.find("//"));
  port_ = colon == std::string::npos
              ? std::uint16_t{0}
              : static_cast<std::uint16_t>(std::strtoul(line.c_str() + colon + 1, nullptr, 10));
  return port_ != 0;
}

void Process::kill() {
  if (child_ > 0) {
    ::kill(child_, SIGKILL);
    ::waitpid(child_, nullptr, 0);
    child_ = -1;
  }
}

void Process::ask_to_end() const {
  ::kill(child_, SIGTERM);
}

int Process::ended(int seconds) {
  for (int tenth = 0; tenth < seconds * 10; ++tenth) {
    int status = 0;
    if (::waitpid(child_, &status, WNOHANG) == child_) {
      child_ = -1;
      return WIFEXITED(status) ? WEXITSTATUS(status) : -1;
    }
    ::usleep(100'000);
  }
  return -1;
}

std::string post(std::uint16_t port, const std::string& target, const std::string& body) {
  const int socket = connected(port);
  if (socket < 0) {
    return {};
  }
  std::string answer;
  if (send_all(socket, "POST " + target +
                           " HTTP/1.1\r\nHost: localhost\r\nContent-Type: "
                           "application/json\r\nConnection: close\r\nContent-Length: " +
                           std::to_string(body.size()) + "\r\n\r\n" + body)) {
    std::array<char, 4096> piece{};
    for (ssize_t got = 0; (got = ::recv(socket, piece.data(), piece.size(), 0)) > 0;) {
      answer.append(piece.data(), static_cast<std::size_t>(got));
    }
  }
  ::close(socket);
  const auto head = answer.find("\r\n\r\n");
  const auto length = answer.find("Content-Length: ");
  if (answer.rfind("HTTP/1.1 200", 0) != 0 || head == std::string::npos || length > head) {
    return {};
  }
  const std::string whole = answer.substr(head + 4);
  return whole.size() == std::strtoul(answer.c_str() + length + 16, nullptr, 10) ? whole : "";
}

} // namespace killed
