#include "baize/secrets/sodium.h"

#include <array>
#include <cerrno>
#include <condition_variable>
#include <mutex>
#include <sodium.h>
#include <utility>
#include <vector>

namespace baize::secrets {

/// Lets few in at once: each hash takes its memory, and a crowd at the sign-in
/// must not take all there is.
class Sodium::Door {
 public:
  Door(int at_once, int most_waiting) : free_(at_once), most_waiting_(most_waiting) {}

  class Pass {
   public:
    explicit Pass(Door* door) : door_(door) {}
    Pass(Pass&& other) noexcept : door_(std::exchange(other.door_, nullptr)) {}
    Pass(const Pass&) = delete;
    Pass& operator=(const Pass&) = delete;
    Pass& operator=(Pass&&) = delete;
    ~Pass() {
      if (door_ != nullptr) {
        door_->leave();
      }
    }

   private:
    Door* door_;
  };

  units::Result<Pass> enter() {
    std::unique_lock lock(mutex_);
    if (free_ == 0 && waiting_ >= most_waiting_) {
      return units::refuse("too_many_sign_ins", "sign-in", "too many at this moment",
                           "tried again in a few seconds");
    }
    ++waiting_;
    changed_.wait(lock, [&] { return free_ > 0; });
    --waiting_;
    --free_;
    return Pass(this);
  }

 private:
  void leave() {
    {
      const std::lock_guard lock(mutex_);
      ++free_;
    }
    changed_.notify_one();
  }

  std::mutex mutex_;
  std::condition_variable changed_;
  int free_;
  int most_waiting_;
  int waiting_ = 0;
};

namespace {

std::string random_text(std::size_t bytes) {
  std::vector<unsigned char> raw(bytes);
  randombytes_buf(raw.data(), raw.size());
  constexpr int kVariant = sodium_base64_VARIANT_URLSAFE_NO_PADDING;
  std::string text(sodium_base64_encoded_len(bytes, kVariant), '\0');
  sodium_bin2base64(text.data(), text.size(), raw.data(), raw.size(), kVariant);
  text.resize(text.size() - 1); // its closing zero
  return text;
}

std::string hexadecimal(const unsigned char* bytes, std::size_t size) {
  std::string text(size * 2 + 1, '\0');
  sodium_bin2hex(text.data(), text.size(), bytes, size);
  text.resize(size * 2);
  return text;
}

units::Refusal no_memory() {
  return units::refuse("too_many_sign_ins", "memory", "too little for a password",
                       "free again; try in a few seconds");
}

} // namespace

units::Result<std::unique_ptr<Sodium>> Sodium::open(const Cost& cost) {
  if (sodium_init() < 0) {
    return units::refuse("no_randomness", "system", "no random numbers",
                         "able to give random numbers");
  }
  return std::unique_ptr<Sodium>(new Sodium(cost));
}

Sodium::Sodium(const Cost& cost)
    : cost_(cost), door_(std::make_unique<Door>(cost.at_once, cost.most_waiting)) {}
Sodium::~Sodium() = default;

std::string Sodium::token() {
  constexpr std::size_t kBytes = 32;
  return random_text(kBytes);
}

std::string Sodium::identifier() {
  constexpr std::size_t kBytes = 10;
  std::array<unsigned char, kBytes> raw{};
  randombytes_buf(raw.data(), raw.size());
  return hexadecimal(raw.data(), raw.size());
}

std::string Sodium::digest(std::string_view token) const {
  std::array<unsigned char, 32> sum{};
  crypto_generichash(sum.data(), sum.size(), reinterpret_cast<const unsigned char*>(token.data()),
                     token.size(), nullptr, 0);
  return hexadecimal(sum.data(), sum.size());
}

units::Result<std::string> Sodium::password_hash(const std::string& password) {
  const auto pass = door_->enter();
  if (!pass) {
    return tl::unexpected(pass.error());
  }
  std::array<char, crypto_pwhash_STRBYTES> text{};
  if (crypto_pwhash_str_alg(text.data(), password.data(), password.size(), cost_.passes,
                            cost_.memory, crypto_pwhash_ALG_ARGON2ID13) != 0) {
    return no_memory();
  }
  return std::string(text.data());
}

units::Result<bool> Sodium::password_fits(const std::string& hash, const std::string& password) {
  const auto pass = door_->enter();
  if (!pass) {
    return tl::unexpected(pass.error());
  }
  errno = 0;
  const bool fits = crypto_pwhash_str_verify(hash.c_str(), password.data(), password.size()) == 0;
  if (!fits && errno == ENOMEM) {
    return no_memory();
  }
  return fits;
}

} // namespace baize::secrets
