#include "inspect.h"

#include <algorithm>
#include <array>
#include <ctime>
#include <openssl/pem.h>

namespace baize::certificates {

namespace {

Bio reading(const std::string& text) {
  return Bio(BIO_new_mem_buf(text.data(), static_cast<int>(text.size())));
}

std::string written(BIO* bio) {
  char* bytes = nullptr;
  const long size = BIO_get_mem_data(bio, &bytes);
  return size > 0 ? std::string(bytes, static_cast<std::size_t>(size)) : std::string();
}

/// "No pass phrase", where OpenSSL would ask at the terminal.
int nobody_to_ask(char* /*buffer*/, int /*size*/, int /*writing*/, void* /*nothing*/) {
  return 0;
}

/// As certificates write it: "Nov 25 21:00:00 2026 GMT".
std::string shown(const ASN1_TIME* time) {
  const Bio bio(BIO_new(BIO_s_mem()));
  return bio != nullptr && ASN1_TIME_print(bio.get(), time) == 1 ? written(bio.get()) : "unknown";
}

} // namespace

Certificate read_certificate(const std::string& pem) {
  const Bio bio = reading(pem);
  return Certificate(
      bio == nullptr ? nullptr : PEM_read_bio_X509(bio.get(), nullptr, nobody_to_ask, nullptr));
}

Key read_key(const std::string& pem) {
  const Bio bio = reading(pem);
  return Key(bio == nullptr ? nullptr
                            : PEM_read_bio_PrivateKey(bio.get(), nullptr, nobody_to_ask, nullptr));
}

std::string pem_of(X509* certificate) {
  const Bio bio(BIO_new(BIO_s_mem()));
  return bio != nullptr && PEM_write_bio_X509(bio.get(), certificate) == 1 ? written(bio.get())
                                                                           : "";
}

std::string pem_of(EVP_PKEY* key) {
  const Bio bio(BIO_new(BIO_s_mem()));
  return bio != nullptr && PEM_write_bio_PKCS8PrivateKey(bio.get(), key, nullptr, nullptr, 0,
                                                         nullptr, nullptr) == 1
             ? written(bio.get())
             : "";
}

std::string der_of(X509* certificate) {
  const Bio bio(BIO_new(BIO_s_mem()));
  return bio != nullptr && i2d_X509_bio(bio.get(), certificate) == 1 ? written(bio.get()) : "";
}

std::string fingerprint_of(X509* certificate) {
  std::array<unsigned char, EVP_MAX_MD_SIZE> digest{};
  unsigned size = 0;
  std::string text;
  if (X509_digest(certificate, EVP_sha256(), digest.data(), &size) != 1) {
    return text;
  }
  static constexpr std::string_view kDigits = "0123456789ABCDEF";
  for (unsigned i = 0; i < size; ++i) {
    text += i == 0 ? "" : ":";
    text += kDigits[digest.at(i) >> 4U];
    text += kDigits[digest.at(i) & 15U];
  }
  return text;
}

units::Result<void> valid_at(X509* certificate, const std::string& file, Instant now) {
  auto then = static_cast<std::time_t>(now);
  if (X509_cmp_time(X509_get0_notAfter(certificate), &then) <= 0) {
    return units::refuse("certificate_expired", "certificate", file,
                         "valid now; it ended on " + shown(X509_get0_notAfter(certificate)));
  }
  if (X509_cmp_time(X509_get0_notBefore(certificate), &then) > 0) {
    return units::refuse("certificate_not_yet", "certificate", file,
                         "valid now, by this machine's clock; it begins on " +
                             shown(X509_get0_notBefore(certificate)));
  }
  return {};
}

bool is_for(X509* certificate, const Names& names) {
  const std::unique_ptr<GENERAL_NAMES, Free> there(static_cast<GENERAL_NAMES*>(
      X509_get_ext_d2i(certificate, NID_subject_alt_name, nullptr, nullptr)));
  const std::size_t wanted = names.hosts.size() + names.addresses.size();
  if (there == nullptr || static_cast<std::size_t>(sk_GENERAL_NAME_num(there.get())) != wanted) {
    return false;
  }
  return std::all_of(names.hosts.begin(), names.hosts.end(),
                     [&](const std::string& name) {
                       return X509_check_host(certificate, name.data(), name.size(),
                                              X509_CHECK_FLAG_NEVER_CHECK_SUBJECT, nullptr) == 1;
                     }) &&
         std::all_of(names.addresses.begin(), names.addresses.end(), [&](const std::string& name) {
           return X509_check_ip_asc(certificate, name.c_str(), 0) == 1;
         });
}

bool lasts(X509* certificate, int days, Instant now) {
  auto then = static_cast<std::time_t>(now + days * kDay);
  auto today = static_cast<std::time_t>(now);
  return X509_cmp_time(X509_get0_notAfter(certificate), &then) > 0 &&
         X509_cmp_time(X509_get0_notBefore(certificate), &today) < 0;
}

} // namespace baize::certificates
