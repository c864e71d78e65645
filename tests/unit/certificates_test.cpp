// What a club's own authority makes: held against OpenSSL's own verification, as a
// phone would do it (RFC 5280).
#include "baize/certificates/certificates.h"
#include "contract/folder.h"
#include "inspect.h"

#include <gtest/gtest.h>

#include <filesystem>
#include <fstream>
#include <openssl/pem.h>
#include <sys/stat.h>

namespace {

using namespace baize;
using namespace baize::certificates;

constexpr Instant kNow = 1'780'000'000; // 2026-05-28
const Names kNames{{"greens", "greens.local", "localhost"}, {"192.168.1.20", "fd00::20"}};

class CertificatesTest : public testing::Test {
 protected:
  std::string folder() const { return folder_.file("data"); }
  std::string file(const char* name) const { return folder_.file(std::string("data/") + name); }
  Authority authority(Instant now = kNow) {
    const auto opened = open_authority(folder(), {"greens"}, now);
    EXPECT_TRUE(opened) << units::sentence(opened.error());
    return opened ? *opened : Authority{};
  }
  Identity server(const Names& names = kNames, Instant now = kNow) {
    const auto made = server_identity(folder(), names, {}, now);
    EXPECT_TRUE(made) << units::sentence(made.error());
    return made ? *made : Identity{};
  }
  contract::Folder folder_;
};

void write(const std::string& path, const std::string& text) {
  std::filesystem::create_directories(std::filesystem::path(path).parent_path());
  std::ofstream(path, std::ios::binary) << text;
}

/// X509_V_OK, or why a client that trusts the authority would refuse the server.
int verified(X509* authority, X509* server, const char* host, Instant now) {
  const std::unique_ptr<X509_STORE, void (*)(X509_STORE*)> store(X509_STORE_new(), X509_STORE_free);
  const std::unique_ptr<X509_STORE_CTX, void (*)(X509_STORE_CTX*)> context(X509_STORE_CTX_new(),
                                                                           X509_STORE_CTX_free);
  X509_STORE_add_cert(store.get(), authority);
  X509_STORE_CTX_init(context.get(), store.get(), server, nullptr);
  X509_VERIFY_PARAM* rules = X509_STORE_CTX_get0_param(context.get());
  X509_VERIFY_PARAM_set_time(rules, static_cast<std::time_t>(now));
  X509_VERIFY_PARAM_set_purpose(rules, X509_PURPOSE_SSL_SERVER);
  X509_VERIFY_PARAM_set_flags(rules, X509_V_FLAG_X509_STRICT);
  X509_VERIFY_PARAM_set1_host(rules, host, 0);
  X509_verify_cert(context.get());
  return X509_STORE_CTX_get_error(context.get());
}

Certificate from_der(const std::string& der) {
  const auto* bytes = reinterpret_cast<const unsigned char*>(der.data());
  return Certificate(d2i_X509(nullptr, &bytes, static_cast<long>(der.size())));
}

TEST_F(CertificatesTest, TheAuthorityIsMadeOnceAndForItsOwnerOnly) {
  const Authority first = authority();
  EXPECT_EQ(first.file, file("baize-authority.pem"));
  EXPECT_EQ(first.fingerprint.size(), 95U) << "32 bytes in hexadecimal, with colons";
  struct stat is{};
  ASSERT_EQ(::stat(first.file.c_str(), &is), 0);
  EXPECT_EQ(is.st_mode & 0777U, 0600U);
  EXPECT_EQ(authority(kNow + 3000 * kDay).fingerprint, first.fingerprint);
  const Certificate certificate = from_der(first.certificate);
  EXPECT_EQ(X509_check_ca(certificate.get()), 1);
  EXPECT_EQ(X509_get_pathlen(certificate.get()), 0);
  EXPECT_EQ(fingerprint_of(certificate.get()), first.fingerprint);
}

TEST_F(CertificatesTest, AClientThatTrustsTheAuthorityTrustsTheServer) {
  const Certificate own = from_der(authority().certificate);
  const Certificate made = read_certificate(server().certificates);
  EXPECT_EQ(verified(own.get(), made.get(), "greens.local", kNow), X509_V_OK);
  EXPECT_EQ(verified(own.get(), made.get(), "localhost", kNow), X509_V_OK);
  EXPECT_EQ(X509_check_ip_asc(made.get(), "192.168.1.20", 0), 1);
  EXPECT_EQ(X509_check_ip_asc(made.get(), "fd00::20", 0), 1);
  EXPECT_EQ(X509_check_ip_asc(made.get(), "192.168.1.21", 0), 0);
  EXPECT_EQ(verified(own.get(), made.get(), "greens.example", kNow), X509_V_ERR_HOSTNAME_MISMATCH);
  EXPECT_EQ(verified(own.get(), made.get(), "localhost", kNow + (kServerDays + 1) * kDay),
            X509_V_ERR_CERT_HAS_EXPIRED);
}

// Whoever steals the key can still not pretend to be a bank (RFC 5280, 4.2.1.10).
TEST_F(CertificatesTest, TheAuthorityCannotSpeakForTheOpenInternet) {
  const Signed own = make_authority({"greens"}, kNow);
  for (const Names& names : {Names{{"bank.example"}, {}}, Names{{"localhost"}, {"93.184.216.34"}},
                             Names{{"notlocal"}, {}}, Names{{"localhost"}, {"2001:db8::1"}}}) {
    const Signed made = make_server(own, names, kNow);
    EXPECT_EQ(verified(own.certificate.get(), made.certificate.get(), names.hosts[0].c_str(), kNow),
              X509_V_ERR_PERMITTED_VIOLATION);
  }
  EXPECT_TRUE(allows(own, "greens", false));
  EXPECT_TRUE(allows(own, "anything.local", false));
  EXPECT_TRUE(allows(own, "10.1.2.3", true));
  EXPECT_FALSE(allows(own, "bank.example", false));
  EXPECT_FALSE(allows(own, "8.8.8.8", true));
}

TEST_F(CertificatesTest, TheServersIsKeptUntilItIsDue) {
  authority(kNow - 10 * kDay);
  const Identity first = server();
  EXPECT_EQ(server(kNames, kNow + (kServerDays - kRenewBefore - 1) * kDay), first);
  const Identity renewed = server(kNames, kNow + (kServerDays - kRenewBefore + 1) * kDay);
  EXPECT_NE(renewed, first);
  EXPECT_EQ(server(kNames, kNow + (kServerDays - kRenewBefore + 2) * kDay), renewed);
  EXPECT_NE(server(kNames, kNow - 2 * kDay), renewed) << "the clock was put back";
}

TEST_F(CertificatesTest, OtherNamesOrABrokenFileMakeAnother) {
  const Identity first = server();
  const Identity other = server({{"greens"}, {"192.168.1.21"}});
  EXPECT_NE(other, first);
  write(file("baize-server.pem"), "nonsense");
  const Identity again = server({{"greens"}, {"192.168.1.21"}});
  EXPECT_NE(again, other);
  EXPECT_EQ(server({{"greens"}, {"192.168.1.21"}}), again);
}

TEST_F(CertificatesTest, NamesOfTheOpenInternetAreLeftOutUnlessAskedFor) {
  authority();
  const Identity made = server({{"greens", "greens.example"}, {"192.168.1.20", "93.184.216.34"}});
  const Certificate certificate = read_certificate(made.certificates);
  EXPECT_TRUE(is_for(certificate.get(), {{"greens"}, {"192.168.1.20"}}));
  const auto asked = server_identity(folder(), kNames, {"greens.example"}, kNow);
  ASSERT_FALSE(asked);
  EXPECT_EQ(asked.error().code, "name_not_allowed");
  const auto fresh = server_identity(folder_.file("other"), kNames, {"greens.example"}, kNow);
  EXPECT_TRUE(fresh) << "an authority made for the name may speak for it";
}

TEST_F(CertificatesTest, AnAuthorityThatCannotBeUsedIsRefused) {
  const auto code = [&](Instant now) {
    const auto opened = open_authority(folder(), {"greens"}, now);
    return opened ? std::string("opened") : opened.error().code;
  };
  const std::string path = authority().file;
  EXPECT_EQ(code(kNow + 3651 * kDay), "certificate_expired");
  EXPECT_EQ(code(kNow - 30 * kDay), "certificate_not_yet");
  ::chmod(path.c_str(), 0644);
  EXPECT_EQ(code(kNow), "key_not_private");
  const Signed one = make_authority({"a"}, kNow);
  const Signed two = make_authority({"b"}, kNow);
  write(path, pem_of(one.key.get()) + pem_of(two.certificate.get()));
  ::chmod(path.c_str(), 0600);
  EXPECT_EQ(code(kNow), "key_not_of_certificate");
  write(path, "nonsense");
  EXPECT_EQ(code(kNow), "certificate_unreadable");
  EXPECT_EQ(open_authority(folder_.file("new"), {"a,DNS:bank.example"}, kNow).error().code,
            "bad_host_name");
}

TEST_F(CertificatesTest, AFolderThatCannotBeWrittenIsSaidPlainly) {
  write(folder_.file("plain"), "a file and no folder");
  const auto opened = open_authority(folder_.file("plain"), {"greens"}, kNow);
  ASSERT_FALSE(opened);
  EXPECT_EQ(opened.error().code, "folder_unwritable");
  EXPECT_NE(units::sentence(opened.error()).find("plain"), std::string::npos);
}

std::string with_pass_phrase(EVP_PKEY* key) {
  const Bio bio(BIO_new(BIO_s_mem()));
  std::string phrase = "phrase";
  PEM_write_bio_PKCS8PrivateKey(bio.get(), key, EVP_aes_256_cbc(), phrase.data(), 6, nullptr,
                                nullptr);
  char* bytes = nullptr;
  const long size = BIO_get_mem_data(bio.get(), &bytes);
  return {bytes, static_cast<std::size_t>(size)};
}

TEST_F(CertificatesTest, FilesOfOnesOwnAreReadAndCheckedAgainstOneAnother) {
  const Signed own = make_authority({"greens"}, kNow);
  const Signed made = make_server(own, kNames, kNow);
  const Signed other = make_server(own, kNames, kNow);
  const std::string certificate = folder_.file("c.pem");
  const std::string key = folder_.file("k.pem");
  const std::string chain = pem_of(made.certificate.get()) + pem_of(own.certificate.get());
  write(certificate, chain);
  write(key, pem_of(made.key.get()));
  EXPECT_EQ(*given_identity(certificate, key, kNow), (Identity{chain, pem_of(made.key.get())}));
  const auto code = [&](Instant now = kNow) {
    return given_identity(certificate, key, now).error().code;
  };
  EXPECT_EQ(code(kNow + 91 * kDay), "certificate_expired");
  EXPECT_EQ(code(kNow - 2 * kDay), "certificate_not_yet");
  write(key, pem_of(other.key.get()));
  EXPECT_EQ(code(), "key_not_of_certificate");
  write(key, with_pass_phrase(made.key.get()));
  EXPECT_EQ(code(), "key_unreadable");
  std::filesystem::remove(key);
  EXPECT_EQ(code(), "key_unreadable");
  write(certificate, "nonsense");
  EXPECT_EQ(code(), "certificate_unreadable");
  std::filesystem::remove(certificate);
  EXPECT_EQ(code(), "certificate_unreadable");
}

TEST(HostNames, AreLettersDigitsDotsAndHyphens) {
  for (const char* good : {"a", "greens", "greens.local", "g-1.club.example", "7"}) {
    EXPECT_TRUE(is_host_name(good)) << good;
  }
  for (const char* bad : {"", ".", "a.", ".a", "a..b", "-a", "a-", "a-.b", "a b", "a,DNS:b", "a/b",
                          "gr\xC3\xBCn", "a\n"}) {
    EXPECT_FALSE(is_host_name(bad)) << bad;
  }
  EXPECT_FALSE(is_host_name(std::string(254, 'a')));
}

TEST(HostNames, OfThisMachineHoldItself) {
  const Names names = names_of_this_machine();
  EXPECT_NE(std::find(names.hosts.begin(), names.hosts.end(), "localhost"), names.hosts.end());
  EXPECT_NE(std::find(names.addresses.begin(), names.addresses.end(), "127.0.0.1"),
            names.addresses.end());
}

} // namespace
