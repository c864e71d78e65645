#pragma once

#include "make.h"

namespace baize::certificates {

/// The first certificate of PEM text; null: there is none.
Certificate read_certificate(const std::string& pem);
/// The first private key of PEM text, which must have no pass phrase; null: none.
Key read_key(const std::string& pem);
std::string pem_of(X509* certificate);
std::string pem_of(EVP_PKEY* key);
std::string der_of(X509* certificate);
/// SHA-256 of the certificate, "AB:CD:...".
std::string fingerprint_of(X509* certificate);
/// Refuses "certificate_expired" and "certificate_not_yet", naming the file.
units::Result<void> valid_at(X509* certificate, const std::string& file, Instant now);
/// Is it for these names and no others?
bool is_for(X509* certificate, const Names& names);
/// More days than this are left.
bool lasts(X509* certificate, int days, Instant now);

} // namespace baize::certificates
