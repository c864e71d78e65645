#pragma once

#include "database.h"

#include <functional>

namespace baize::store_sqlite {

/// Runs a piece of work in one transaction of the store.
using InTransaction = std::function<units::Result<int>(const std::function<void(Connection&)>&)>;

/// What the work gives, or the problem that kept it from being done.
template <class T, class F> units::Result<T> told(const InTransaction& in, const F& work) {
  T answer{};
  return in([&](Connection& db) { answer = work(db); }).map([&](int) { return std::move(answer); });
}

/// The same for work that gives nothing.
template <class F> units::Result<void> done(const InTransaction& in, const F& work) {
  return in([&](Connection& db) { work(db); }).map([](int) {});
}

} // namespace baize::store_sqlite
