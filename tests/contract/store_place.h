#pragma once

#include "baize/store_sqlite/store.h"
#include "contract/folder.h"
#include "contract/store_contract.h"

#include <memory>

namespace contract {

class SqlitePlace : public Place {
 public:
  std::unique_ptr<baize::services::Store> open() override {
    auto store = baize::store_sqlite::SqliteStore::open(folder_.file("club.sqlite3"));
    return store ? std::move(*store) : nullptr;
  }

 private:
  Folder folder_;
};

} // namespace contract
