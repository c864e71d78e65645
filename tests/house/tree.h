#pragma once

#include <filesystem>
#include <string>
#include <vector>

namespace house {

/// The checkout the tests were built from.
std::filesystem::path root();

/// Files below the given folders of the checkout with one of these endings,
/// sorted; what is built or installed into the tree is left out.
std::vector<std::filesystem::path> files(const std::vector<std::string>& folders,
                                         const std::vector<std::string>& endings);

std::vector<std::string> lines(const std::filesystem::path& file);
std::string text(const std::filesystem::path& file);

/// The path as it stands in the checkout, with forward slashes.
std::string shown(const std::filesystem::path& file);

} // namespace house
