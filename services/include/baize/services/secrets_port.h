#pragma once

#include "baize/units/problem.h"

#include <string>
#include <string_view>

namespace baize::services {

/// Randomness and hashing, from outside. Safe from many threads.
class Secrets {
 public:
  Secrets() = default;
  Secrets(const Secrets&) = delete;
  Secrets& operator=(const Secrets&) = delete;
  virtual ~Secrets() = default;

  /// A token nobody can guess: 256 random bits, in characters that a link can hold.
  virtual std::string token() = 0;
  /// An identifier nobody has yet: 80 random bits, in letters and digits.
  virtual std::string identifier() = 0;
  /// What is kept in the place of a token: cannot be turned back.
  virtual std::string digest(std::string_view token) const = 0;
  /// What is kept in the place of a password. Takes memory and time on purpose;
  /// few at once. Refuses "too_many_sign_ins".
  virtual units::Result<std::string> password_hash(const std::string& password) = 0;
  /// Is it the password of this hash? As much work, and refuses likewise.
  virtual units::Result<bool> password_fits(const std::string& hash,
                                            const std::string& password) = 0;
};

} // namespace baize::services
