#pragma once

#include "baize/services/secrets_port.h"

#include <cstddef>
#include <cstdint>
#include <memory>

namespace baize::secrets {

/// What one password hash may take, and how many at once.
struct Cost {
  std::uint64_t passes = 2;                ///< over the memory, 1 or more
  std::size_t memory = 64UL * 1024 * 1024; ///< bytes, 8192 or more
  int at_once = 2;
  int most_waiting = 16; ///< beyond these a further one is refused
};

/// services::Secrets by libsodium: passwords by Argon2id (RFC 9106, version
/// 0x13), digests of tokens by BLAKE2b with 256 bits (RFC 7693), randomness from
/// the system.
class Sodium : public services::Secrets {
 public:
  /// Refuses "no_randomness" where the system gives none.
  static units::Result<std::unique_ptr<Sodium>> open(const Cost& cost = {});
  ~Sodium() override;

  std::string token() override;
  std::string identifier() override;
  std::string digest(std::string_view token) const override;
  units::Result<std::string> password_hash(const std::string& password) override;
  units::Result<bool> password_fits(const std::string& hash, const std::string& password) override;

 private:
  class Door;
  explicit Sodium(const Cost& cost);
  Cost cost_;
  std::unique_ptr<Door> door_;
};

} // namespace baize::secrets
