#include "files.h"
#include "inspect.h"

#include <algorithm>
#include <filesystem>

namespace baize::certificates {

namespace {

constexpr const char* kAuthorityFile = "baize-authority.pem";
constexpr const char* kServerFile = "baize-server.pem";

std::string file_in(const std::string& folder, const char* name) {
  return (std::filesystem::path(folder.empty() ? "." : folder) / name).string();
}

units::Refusal refuse_certificate(const std::string& file) {
  return units::refuse("certificate_unreadable", "certificate", file,
                       "a file that can be read and holds a certificate in PEM");
}

units::Refusal refuse_key(const std::string& file) {
  return units::refuse("key_unreadable", "key", file,
                       "a file that can be read and holds a private key in PEM without a pass "
                       "phrase");
}

units::Refusal refuse_match(const std::string& key_file, const std::string& certificate_file) {
  return units::refuse("key_not_of_certificate", "key", key_file,
                       "the key that belongs to the certificate in " + certificate_file);
}

units::Refusal refuse_making() {
  return units::refuse("certificate_not_made", "certificate", "new",
                       "one that the cryptographic library makes; it gave none");
}

/// Certificate and key of one file, checked against one another and the clock.
units::Result<Signed> read_pair(const std::string& file, Instant now) {
  const auto text = text_of(file);
  if (!text) {
    return refuse_key(file);
  }
  if (!is_private(file)) {
    return units::refuse("key_not_private", "key", file,
                         "a file that its owner only may read (chmod 600): whoever has this key "
                         "can pretend to be the server");
  }
  Signed pair{read_certificate(*text), read_key(*text)};
  if (pair.certificate == nullptr) {
    return refuse_certificate(file);
  }
  if (pair.key == nullptr) {
    return refuse_key(file);
  }
  if (X509_check_private_key(pair.certificate.get(), pair.key.get()) != 1) {
    return refuse_match(file, file);
  }
  if (auto valid = valid_at(pair.certificate.get(), file, now); !valid) {
    return tl::unexpected(valid.error());
  }
  return pair;
}

units::Result<void> keep_pair(const std::string& file, const Signed& pair, bool first) {
  if (pair.certificate == nullptr || pair.key == nullptr) {
    return refuse_making();
  }
  return write_private(file, pem_of(pair.key.get()) + pem_of(pair.certificate.get()), first);
}

units::Result<Signed> authority_in(const std::string& folder, const std::vector<std::string>& own,
                                   Instant now) {
  const std::string file = file_in(folder, kAuthorityFile);
  if (!exists(file)) {
    for (const std::string& name : own) {
      if (!is_host_name(name)) {
        return units::refuse("bad_host_name", "name", name,
                             "letters, digits, dots and hyphens, such as greens.local");
      }
    }
    if (auto kept = keep_pair(file, make_authority(own, now), true); !kept) {
      return tl::unexpected(kept.error());
    }
  }
  return read_pair(file, now);
}

/// Those that the authority may speak for, each once.
std::vector<std::string> allowed(const Signed& authority, const std::vector<std::string>& names,
                                 bool addresses) {
  std::vector<std::string> kept;
  for (const std::string& name : names) {
    if (std::find(kept.begin(), kept.end(), name) == kept.end() &&
        allows(authority, name, addresses)) {
      kept.push_back(name);
    }
  }
  return kept;
}

bool still_good(const Signed& server, const Signed& authority, const Names& names, Instant now) {
  return X509_verify(server.certificate.get(), authority.key.get()) == 1 &&
         is_for(server.certificate.get(), names) &&
         lasts(server.certificate.get(), kRenewBefore, now);
}

Identity identity_of(const Signed& pair) {
  return {pem_of(pair.certificate.get()), pem_of(pair.key.get())};
}

} // namespace

units::Result<Authority> open_authority(const std::string& folder,
                                        const std::vector<std::string>& own, Instant now) {
  const auto authority = authority_in(folder, own, now);
  if (!authority) {
    return tl::unexpected(authority.error());
  }
  X509* certificate = authority->certificate.get();
  return Authority{file_in(folder, kAuthorityFile), der_of(certificate),
                   fingerprint_of(certificate)};
}

units::Result<Identity> server_identity(const std::string& folder, const Names& names,
                                        const std::vector<std::string>& wanted, Instant now) {
  const auto authority = authority_in(folder, wanted, now);
  if (!authority) {
    return tl::unexpected(authority.error());
  }
  for (const std::string& name : wanted) {
    if (!is_host_name(name) || !allows(*authority, name, false)) {
      return units::refuse("name_not_allowed", "name", name,
                           "one that the authority of this machine may speak for; move " +
                               file_in(folder, kAuthorityFile) +
                               " aside and another is made, which every phone must then trust");
    }
  }
  Names all = names;
  all.hosts.insert(all.hosts.begin(), wanted.begin(), wanted.end());
  all = {allowed(*authority, all.hosts, false), allowed(*authority, all.addresses, true)};
  const std::string file = file_in(folder, kServerFile);
  if (const auto there = read_pair(file, now); there && still_good(*there, *authority, all, now)) {
    return identity_of(*there);
  }
  const Signed made = make_server(*authority, all, now);
  if (auto kept = keep_pair(file, made, false); !kept) {
    return tl::unexpected(kept.error());
  }
  return identity_of(made);
}

units::Result<Identity> given_identity(const std::string& certificate_file,
                                       const std::string& key_file, Instant now) {
  const auto certificates = text_of(certificate_file);
  const Certificate certificate = certificates ? read_certificate(*certificates) : nullptr;
  if (certificate == nullptr) {
    return refuse_certificate(certificate_file);
  }
  const auto key_text = text_of(key_file);
  const Key key = key_text ? read_key(*key_text) : nullptr;
  if (key == nullptr) {
    return refuse_key(key_file);
  }
  if (X509_check_private_key(certificate.get(), key.get()) != 1) {
    return refuse_match(key_file, certificate_file);
  }
  if (auto valid = valid_at(certificate.get(), certificate_file, now); !valid) {
    return tl::unexpected(valid.error());
  }
  return Identity{*certificates, *key_text};
}

} // namespace baize::certificates
