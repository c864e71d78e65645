// What may be kept as a picture: a JPEG, whole, and nothing but the picture.
#include "baize/pictures/jpeg.h"
#include "segments.h"
#include "unit/photo_samples.h"

#include <gtest/gtest.h>

namespace {

using namespace baize;
using photo_test::jpeg;
using photo_test::with_part;

std::string code(std::string_view bytes) {
  const auto looked = pictures::Jpeg().look(bytes);
  return looked ? "fine" : looked.error().code;
}

TEST(Pictures, ASizeAsItWasMade) {
  const auto looked = pictures::Jpeg().look(jpeg(160, 120));
  ASSERT_TRUE(looked) << units::sentence(looked.error());
  EXPECT_EQ(looked->width, 160);
  EXPECT_EQ(looked->height, 120);
}

TEST(Pictures, SeveralScansAreOnePicture) {
  EXPECT_EQ(code(jpeg(64, 64, TJFLAG_PROGRESSIVE)), "fine");
}

TEST(Pictures, UpToFourThousandPixelsASide) {
  EXPECT_EQ(code(jpeg(4000, 8)), "fine");
  EXPECT_EQ(code(jpeg(8, 4000)), "fine");
  EXPECT_EQ(code(jpeg(4001, 8)), "picture_too_large");
  EXPECT_EQ(code(jpeg(8, 4001)), "picture_too_large");
}

TEST(Pictures, CutOffAnywhereItIsNone) {
  const std::string whole = jpeg();
  for (std::size_t size = 0; size < whole.size(); ++size) {
    EXPECT_EQ(code(std::string_view(whole).substr(0, size)), "not_a_jpeg") << size;
  }
}

TEST(Pictures, OtherFilesAreNone) {
  for (const std::string bytes :
       {"", "hello", "\x89PNG\r\n\x1a\n", "GIF89a", "\xff\xd8", "\xff\xd8\xff\xd9", "<svg/>"}) {
    EXPECT_EQ(code(bytes), "not_a_jpeg") << bytes;
  }
}

// The markers' numbers: ITU-T T.81, table B.1. Exif lies in APP1 and begins with
// "Exif" and two zeros (Exif 2.3, JEITA CP-3451C, 4.7.2).
TEST(Pictures, WhatCamerasWriteBesideItIsRefused) {
  const std::string exif("Exif\0\0MM\0*\0\0\0\x08", 14);
  EXPECT_EQ(code(with_part(jpeg(), 0xE1, exif)), "picture_tells_more");
  const auto looked = pictures::Jpeg().look(with_part(jpeg(), 0xE1, exif));
  EXPECT_EQ(units::sentence(looked.error()),
            "picture is 'Exif in APP1', but must be the picture alone, without what a camera "
            "writes beside it (where, when and with what it was taken).");
  for (unsigned char marker = 0xE0; marker <= 0xEF; ++marker) {
    EXPECT_EQ(code(with_part(jpeg(), marker, "some maker's notes")), "picture_tells_more");
  }
  EXPECT_EQ(code(with_part(jpeg(), 0xFE, "by Ann")), "picture_tells_more");
  EXPECT_EQ(code(jpeg() + "and a film behind it"), "picture_tells_more");
}

TEST(Pictures, WhatADecoderNeedsStays) {
  // Adobe's part tells how colours were turned (ITU-T T.872, 6.5.3).
  EXPECT_EQ(code(with_part(jpeg(), 0xEE, std::string("Adobe\0d\0\0\0\0\1", 12))), "fine");
}

// By hand, after ITU-T T.81, B.1: start, a part of 4 bytes, a scan whose coded data
// hold a stuffed byte and a restart, fill bytes before the end.
TEST(Segments, AWalkByHand) {
  const std::string by_hand("\xff\xd8"
                            "\xff\xdb\x00\x04\x01\x02"
                            "\xff\xda\x00\x03\x07"
                            "\x11\xff\x00\x22\xff\xd0\x33"
                            "\xff\xff\xd9",
                            23);
  const auto walk = pictures::walk_over(by_hand);
  EXPECT_TRUE(walk.whole);
  EXPECT_EQ(walk.unwanted, "");
  EXPECT_FALSE(pictures::walk_over(by_hand.substr(0, 22)).whole);
}

TEST(Segments, APartLongerThanTheFileIsNone) {
  EXPECT_FALSE(pictures::walk_over(std::string("\xff\xd8\xff\xe1\x00\x01\xff\xd9", 8)).whole);
  EXPECT_FALSE(pictures::walk_over(std::string("\xff\xd8\xff\xe1\xff\xff\xff\xd9", 8)).whole);
}

} // namespace
