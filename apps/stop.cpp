#include "stop.h"

#include <csignal>

namespace baize::apps {
namespace {

volatile std::sig_atomic_t asked = 0;

bool listen() {
  struct sigaction action{};
  action.sa_handler = [](int) { asked = 1; };
  action.sa_flags = static_cast<int>(SA_RESETHAND);
  return ::sigaction(SIGINT, &action, nullptr) == 0;
}

} // namespace

bool asked_to_stop() {
  static const bool listening = listen();
  return listening && asked != 0;
}

} // namespace baize::apps
