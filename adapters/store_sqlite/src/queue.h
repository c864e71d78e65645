#pragma once

#include "database.h"

#include <condition_variable>
#include <cstdint>
#include <deque>
#include <exception>
#include <functional>
#include <mutex>
#include <vector>

namespace baize::store_sqlite {

/// One write on its way. `work` says whether it changed anything, and may be
/// called again from the start when what it did was taken back.
struct Write {
  std::function<void(Connection& db, bool& changed)> work;
  bool shares = false; ///< may stand in one transaction with others
  std::exception_ptr error{};
  bool done = false;
  std::condition_variable moved{};
};

/// Writers pass one at a time, in the order they came. A plain mutex promises no
/// order, and under load a writer could wait without end. Writes that may share a
/// transaction and wait behind one another pass together: the commit, which waits
/// for the disk, is then one for all of them.
class Queue {
 public:
  /// So that no transaction lasts long: whoever came first waits for the last.
  static constexpr std::size_t kMostTogether = 64;

  /// Returns when `one` is done. Whoever stands in front calls `run` for all of
  /// his group, in their order; `run` must not throw.
  template <class Run> void pass(Write& one, const Run& run) {
    std::unique_lock lock(mutex_);
    waiting_.push_back(&one);
    one.moved.wait(lock, [&] { return one.done || (!busy_ && waiting_.front() == &one); });
    if (one.done) {
      return;
    }
    busy_ = true;
    const std::vector<Write*> group = next_group();
    lock.unlock();
    run(group);
    lock.lock();
    busy_ = false;
    for (Write* written : group) {
      written->done = true;
      written->moved.notify_one();
    }
    if (!waiting_.empty()) {
      waiting_.front()->moved.notify_one();
    }
  }

  /// Writes that have not begun.
  std::size_t waiting() const {
    const std::lock_guard lock(mutex_);
    return waiting_.size();
  }

 private:
  std::vector<Write*> next_group() {
    std::vector<Write*> group{waiting_.front()};
    waiting_.pop_front();
    while (group.front()->shares && !waiting_.empty() && waiting_.front()->shares &&
           group.size() < kMostTogether) {
      group.push_back(waiting_.front());
      waiting_.pop_front();
    }
    return group;
  }

  mutable std::mutex mutex_;
  std::deque<Write*> waiting_;
  bool busy_ = false;
};

} // namespace baize::store_sqlite
