#pragma once

#include <cstdint>
#include <string>
#include <sys/types.h>

/// The program itself as a server that may be killed at any moment.
namespace killed {

class Process {
 public:
  explicit Process(std::string database) : database_(std::move(database)) {}
  Process(const Process&) = delete;
  Process& operator=(const Process&) = delete;
  ~Process() { kill(); }

  /// Starts it and waits until it says where it stands. False: it did not.
  bool start();
  /// SIGKILL: it has no chance to put anything in order.
  void kill();
  /// SIGTERM: it is asked to end.
  void ask_to_end() const;
  /// Waits for it to end by itself, up to so many seconds; its exit code, -1: it
  /// did not.
  int ended(int seconds);
  std::uint16_t port() const { return port_; }

 private:
  std::string database_;
  pid_t child_ = -1;
  std::uint16_t port_ = 0;
};

/// Posts JSON to 127.0.0.1 over a connection of its own. The body of the answer,
/// empty unless the whole of a 200 arrived.
std::string post(std::uint16_t port, const std::string& target, const std::string& body);

} // namespace killed
