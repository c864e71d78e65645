#pragma once

#include <memory>
#include <openssl/bio.h>
#include <openssl/evp.h>
#include <openssl/x509.h>
#include <openssl/x509v3.h>

namespace baize::certificates {

struct Free {
  void operator()(X509* it) const { X509_free(it); }
  void operator()(EVP_PKEY* it) const { EVP_PKEY_free(it); }
  void operator()(BIO* it) const { BIO_free_all(it); }
  void operator()(X509_EXTENSION* it) const { X509_EXTENSION_free(it); }
  void operator()(NAME_CONSTRAINTS* it) const { NAME_CONSTRAINTS_free(it); }
  void operator()(GENERAL_NAMES* it) const { GENERAL_NAMES_free(it); }
  void operator()(BIGNUM* it) const { BN_free(it); }
};
using Certificate = std::unique_ptr<X509, Free>;
using Key = std::unique_ptr<EVP_PKEY, Free>;
using Bio = std::unique_ptr<BIO, Free>;

} // namespace baize::certificates
