#pragma once

#include <string_view>

namespace baize::api {

/// The page /phone, with {host}, {port}, {codes}, {trust} to be put in.
extern const std::string_view kPhonePage;
/// The steps to trust the authority, with {fingerprint}.
extern const std::string_view kTrustSteps;
extern const std::string_view kPhoneStyle;

} // namespace baize::api
