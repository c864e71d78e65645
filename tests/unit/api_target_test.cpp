#include "baize/api/target.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace {

using baize::api::parse_target;

std::vector<std::string> segments(const char* text) {
  const auto target = parse_target(text);
  return target ? target->segments : std::vector<std::string>{"refused"};
}

TEST(Target, SplitsBeforeItDecodes) {
  EXPECT_EQ(segments("/works/2025%2F03%3Acoring"),
            (std::vector<std::string>{"works", "2025/03:coring"}));
  EXPECT_EQ(segments("/"), std::vector<std::string>{""});
  EXPECT_EQ(segments("/a/"), (std::vector<std::string>{"a", ""}));
  EXPECT_EQ(segments("/a+b"), std::vector<std::string>{"a+b"});
}

TEST(Target, DecodesOnce) {
  EXPECT_EQ(segments("/%2525"), std::vector<std::string>{"%25"});
}

// RFC 3986, 2.1: a triplet is % and two hexadecimal digits, of either case.
TEST(Target, RefusesBrokenTriplets) {
  EXPECT_EQ(segments("/%C3%a9"), std::vector<std::string>{"\xC3\xA9"});
  for (const char* text : {"/%", "/%2", "/%2g", "/%G2", "/a?x=%", "/a?%4=1"}) {
    const auto target = parse_target(text);
    ASSERT_FALSE(target) << text;
    EXPECT_EQ(target.error().code, "bad_target");
  }
}

// Ill-formed sequences of the Unicode Standard 15.0, table 3-7: overlong,
// surrogate, beyond U+10FFFF, a lone trail, a cut sequence.
TEST(Target, RefusesWhatIsNoUtf8) {
  for (const char* text : {"/%C0%AF", "/%E0%80%80", "/%ED%A0%80", "/%F4%90%80%80", "/%80",
                           "/%E2%82", "/%F5%80%80%80", "/%FF"}) {
    EXPECT_FALSE(parse_target(text)) << text;
  }
  for (const char* text :
       {"/%C2%80", "/%E0%A0%80", "/%ED%9F%BF", "/%F0%90%80%80", "/%F4%8F%BF%BF"}) {
    EXPECT_TRUE(parse_target(text)) << text;
  }
}

TEST(Target, RefusesOtherForms) {
  for (const char* text : {"", "*", "a/b", "/a b", "/a\tb", "/a#b", "/%00", "/\x80", "?x",
                           "http://host", "ftp://host/"}) {
    EXPECT_FALSE(parse_target(text)) << text;
  }
}

// RFC 9112, 3.2.2: a server must take the absolute form.
TEST(Target, TakesTheAbsoluteForm) {
  const auto target = parse_target("http://localhost:80/a?b=c");
  ASSERT_TRUE(target);
  EXPECT_EQ(target->authority, "localhost:80");
  EXPECT_EQ(target->path, "/a");
  EXPECT_EQ(target->query.at("b"), "c");
}

TEST(Target, ReadsTheQuery) {
  const auto target = parse_target("/a?green=7%26&name=a+b%2B&flag&&empty=");
  ASSERT_TRUE(target);
  EXPECT_EQ(target->query, (std::map<std::string, std::string>{
                               {"green", "7&"}, {"name", "a b+"}, {"flag", ""}, {"empty", ""}}));
  EXPECT_FALSE(parse_target("/a?x=1&x=2"));
  EXPECT_FALSE(parse_target("/a?x=1&%78=2"));
}

std::string encoded(const std::string& text) {
  static const char* digits = "0123456789ABCDEF";
  std::string out;
  for (const char c : text) {
    const auto byte = static_cast<unsigned char>(c);
    out += {'%', digits[byte >> 4U], digits[byte & 15U]};
  }
  return out;
}

RC_GTEST_PROP(Target, EveryAsciiIdentifierComesBack, ()) {
  const auto id =
      *rc::gen::nonEmpty(rc::gen::container<std::string>(rc::gen::inRange<char>(1, 127)));
  const auto target = parse_target("/x/" + encoded(id) + "?id=" + encoded(id));
  RC_ASSERT(target.has_value());
  RC_ASSERT(target->segments.at(1) == id);
  RC_ASSERT(target->query.at("id") == id);
}

RC_GTEST_PROP(Target, AnyBytesAreReadOrRefused, (const std::string& text)) {
  const auto target = parse_target("/" + text);
  RC_ASSERT(target.has_value() || target.error().code == "bad_target");
}

} // namespace
