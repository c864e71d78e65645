#include "make.h"

#include <ctime>
#include <openssl/bn.h>
#include <openssl/ec.h>

namespace baize::certificates {

namespace {

constexpr int kAuthorityDays = 3650;
/// Phones whose clock is behind must not find a certificate of tomorrow.
constexpr Instant kBefore = kDay;

// Networks that are nobody's on the open internet: RFC 1918, 3927, 4193, 4291;
// names likewise: RFC 6761, 6762, 8375, and "internal", set aside by ICANN in
// 2024; "lan" is what many routers say (common practice).
constexpr const char* kLocal =
    "critical,permitted;DNS:localhost,permitted;DNS:local,permitted;DNS:home.arpa,"
    "permitted;DNS:internal,permitted;DNS:lan,permitted;IP:10.0.0.0/255.0.0.0,"
    "permitted;IP:172.16.0.0/255.240.0.0,permitted;IP:192.168.0.0/255.255.0.0,"
    "permitted;IP:169.254.0.0/255.255.0.0,permitted;IP:127.0.0.0/255.0.0.0,"
    "permitted;IP:fc00:0:0:0:0:0:0:0/fe00:0:0:0:0:0:0:0,"
    "permitted;IP:fe80:0:0:0:0:0:0:0/ffc0:0:0:0:0:0:0:0,"
    "permitted;IP:0:0:0:0:0:0:0:1/ffff:ffff:ffff:ffff:ffff:ffff:ffff:ffff";

/// P-256, which every phone and browser of the last ten years knows.
Key new_key() {
  return Key(EVP_EC_gen("P-256"));
}

bool add(X509* to, X509* issuer, int kind, const std::string& value) {
  X509V3_CTX context;
  X509V3_set_ctx_nodb(&context);
  X509V3_set_ctx(&context, issuer, to, nullptr, nullptr, 0);
  const std::unique_ptr<X509_EXTENSION, Free> extension(
      X509V3_EXT_conf_nid(nullptr, &context, kind, value.c_str()));
  return extension != nullptr && X509_add_ext(to, extension.get(), -1) == 1;
}

/// 127 random bits: no two certificates of an issuer may share a number.
bool set_number(X509* certificate) {
  const std::unique_ptr<BIGNUM, Free> number(BN_new());
  return number != nullptr &&
         BN_rand(number.get(), 127, BN_RAND_TOP_ONE, BN_RAND_BOTTOM_ANY) == 1 &&
         BN_to_ASN1_INTEGER(number.get(), X509_get_serialNumber(certificate)) != nullptr;
}

bool set_name(X509* certificate, const std::string& name) {
  X509_NAME* subject = X509_get_subject_name(certificate);
  const auto* bytes = reinterpret_cast<const unsigned char*>(name.c_str());
  return X509_NAME_add_entry_by_txt(subject, "O", MBSTRING_UTF8,
                                    reinterpret_cast<const unsigned char*>("Baize"), -1, -1,
                                    0) == 1 &&
         X509_NAME_add_entry_by_txt(subject, "CN", MBSTRING_UTF8, bytes, -1, -1, 0) == 1;
}

/// Version 3, with number, name, times and public key.
Certificate begun(const std::string& name, EVP_PKEY* key, Instant now, int days) {
  Certificate certificate(X509_new());
  const bool good = certificate != nullptr && X509_set_version(certificate.get(), 2) == 1 &&
                    set_number(certificate.get()) && set_name(certificate.get(), name) &&
                    ASN1_TIME_set(X509_getm_notBefore(certificate.get()),
                                  static_cast<std::time_t>(now - kBefore)) != nullptr &&
                    ASN1_TIME_set(X509_getm_notAfter(certificate.get()),
                                  static_cast<std::time_t>(now + days * kDay)) != nullptr &&
                    X509_set_pubkey(certificate.get(), key) == 1;
  return good ? std::move(certificate) : nullptr;
}

std::string constraints(const std::vector<std::string>& own) {
  std::string text = kLocal;
  for (const std::string& name : own) {
    text += ",permitted;DNS:" + name;
  }
  return text;
}

std::string alternatives(const Names& names) {
  std::string text;
  for (const std::string& name : names.hosts) {
    text += (text.empty() ? "DNS:" : ",DNS:") + name;
  }
  for (const std::string& address : names.addresses) {
    text += (text.empty() ? "IP:" : ",IP:") + address;
  }
  return text;
}

} // namespace

Signed make_authority(const std::vector<std::string>& own, Instant now) {
  Signed made{nullptr, new_key()};
  if (made.key == nullptr) {
    return made;
  }
  // The name tells apart the authorities of two machines that a phone trusts.
  Certificate certificate = begun("Baize authority of " + (own.empty() ? "this club" : own.front()),
                                  made.key.get(), now, kAuthorityDays);
  X509* it = certificate.get();
  const bool good = it != nullptr && X509_set_issuer_name(it, X509_get_subject_name(it)) == 1 &&
                    add(it, it, NID_basic_constraints, "critical,CA:TRUE,pathlen:0") &&
                    add(it, it, NID_key_usage, "critical,keyCertSign,cRLSign") &&
                    add(it, it, NID_subject_key_identifier, "hash") &&
                    add(it, it, NID_name_constraints, constraints(own)) &&
                    X509_sign(it, made.key.get(), EVP_sha256()) > 0;
  made.certificate = good ? std::move(certificate) : nullptr;
  return made;
}

Signed make_server(const Signed& authority, const Names& names, Instant now) {
  Signed made{nullptr, new_key()};
  if (made.key == nullptr) {
    return made;
  }
  Certificate certificate = begun("Baize server", made.key.get(), now, kServerDays);
  X509* it = certificate.get();
  X509* issuer = authority.certificate.get();
  const bool good = it != nullptr && X509_set_issuer_name(it, X509_get_subject_name(issuer)) == 1 &&
                    add(it, issuer, NID_basic_constraints, "critical,CA:FALSE") &&
                    add(it, issuer, NID_key_usage, "critical,digitalSignature") &&
                    add(it, issuer, NID_ext_key_usage, "serverAuth") &&
                    add(it, issuer, NID_subject_key_identifier, "hash") &&
                    add(it, issuer, NID_authority_key_identifier, "keyid:always") &&
                    add(it, issuer, NID_subject_alt_name, alternatives(names)) &&
                    X509_sign(it, authority.key.get(), EVP_sha256()) > 0;
  made.certificate = good ? std::move(certificate) : nullptr;
  return made;
}

bool allows(const Signed& authority, const std::string& name, bool is_address) {
  const Names one = is_address ? Names{{}, {name}} : Names{{name}, {}};
  const Signed tried = make_server(authority, one, 0);
  const std::unique_ptr<NAME_CONSTRAINTS, Free> rules(static_cast<NAME_CONSTRAINTS*>(
      X509_get_ext_d2i(authority.certificate.get(), NID_name_constraints, nullptr, nullptr)));
  if (tried.certificate == nullptr || rules == nullptr) {
    return false;
  }
  X509_check_purpose(tried.certificate.get(), -1, 0); // reads the names that are checked next
  return NAME_CONSTRAINTS_check(tried.certificate.get(), rules.get()) == X509_V_OK;
}

} // namespace baize::certificates
