// The C library of WebAssembly writes its last words (a failed assertion, no
// memory left) to a stream of its surroundings. The core has no surroundings:
// these take the imports' place, so that the module asks nothing of the page.
#include <cstdint>
#include <cstdlib>

namespace {
constexpr std::int32_t kNoSuchStream = 8; // __WASI_ERRNO_BADF
} // namespace

// The names are the C library's.
// NOLINTBEGIN(bugprone-reserved-identifier,cert-dcl37-c,cert-dcl51-cpp)
extern "C" {

std::int32_t __imported_wasi_snapshot_preview1_fd_close(std::int32_t) {
  return kNoSuchStream;
}

std::int32_t __imported_wasi_snapshot_preview1_fd_seek(std::int32_t, std::int64_t, std::int32_t,
                                                       std::int32_t) {
  return kNoSuchStream;
}

std::int32_t __imported_wasi_snapshot_preview1_fd_write(std::int32_t, std::int32_t, std::int32_t,
                                                        std::int32_t) {
  return kNoSuchStream;
}
}
// NOLINTEND(bugprone-reserved-identifier,cert-dcl37-c,cert-dcl51-cpp)
