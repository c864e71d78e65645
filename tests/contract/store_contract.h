#pragma once

#include "baize/services/entries_port.h"
#include "baize/services/store_port.h"

#include <gtest/gtest.h>

#include <functional>
#include <memory>
#include <string>
#include <vector>

namespace contract {

/// Somewhere a store keeps its records, empty at first. open() may be called
/// again, in the same process or in another, and finds what was kept before.
class Place {
 public:
  Place() = default;
  Place(const Place&) = delete;
  Place& operator=(const Place&) = delete;
  virtual ~Place() = default;
  virtual std::unique_ptr<baize::services::Store> open() = 0;
};

struct StoreMaker {
  std::string name;
  std::function<std::unique_ptr<Place>()> make;
};

/// The stores of this test program, given by its own file.
std::vector<StoreMaker> makers();

/// What every services::Store must do. An implementation runs it with
///   INSTANTIATE_TEST_SUITE_P(Name, StoreContract, testing::Values(StoreMaker{...}));
/// beside store_contract.cpp, store_contract_threads.cpp, store_contract_entries.cpp and
/// sample_club.cpp, and gives makers().
class StoreContract : public testing::TestWithParam<StoreMaker> {
 protected:
  StoreContract() : place_(GetParam().make()), store_(place_->open()) {}
  Place& place() { return *place_; }
  baize::services::Store& store() { return *store_; }
  void reopen() {
    store_.reset();
    store_ = place_->open();
  }
  void close() { store_.reset(); }

 private:
  std::unique_ptr<Place> place_;
  std::unique_ptr<baize::services::Store> store_;
};

/// Decides that nothing follows from what was handed in.
inline baize::services::Decision nothing(const baize::services::Around& /*around*/) {
  return {};
}

} // namespace contract
