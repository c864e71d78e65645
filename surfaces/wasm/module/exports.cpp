// The module's exports. A block is four bytes of size and so many bytes of
// UTF-8; whoever is given one gives it back.
#include "baize/wasm/functions.h"

#include <cstdint>
#include <cstdlib>
#include <cstring>

#define BAIZE_EXPORT(name) extern "C" __attribute__((export_name(#name)))

namespace {

char* block(const std::string& text) {
  const auto size = static_cast<std::uint32_t>(text.size());
  auto* bytes = static_cast<char*>(std::malloc(sizeof size + text.size()));
  if (bytes != nullptr) {
    std::memcpy(bytes, &size, sizeof size);
    text.copy(bytes + sizeof size, text.size());
  }
  return bytes;
}

} // namespace

/// Room for so many bytes of text; null where there is none.
BAIZE_EXPORT(take) char* take(std::size_t size) {
  return static_cast<char*>(std::malloc(size > 0 ? size : 1));
}

BAIZE_EXPORT(give_back) void give_back(char* bytes) {
  std::free(bytes);
}

#define BAIZE_EXPORT_FUNCTION(name)                                                                \
  BAIZE_EXPORT(name) char* call_##name(const char* text, std::size_t size) {                       \
    return block(baize::wasm::call(#name, {text, size}));                                          \
  }
BAIZE_PHONE_FUNCTIONS(BAIZE_EXPORT_FUNCTION)
