#pragma once

#include <condition_variable>
#include <cstdint>
#include <mutex>

namespace baize::store_sqlite {

/// Writers pass one at a time, in the order they came. A plain mutex promises
/// no order, and under load a writer could wait without end.
class Queue {
 public:
  class Turn {
   public:
    explicit Turn(Queue& queue) : queue_(queue) {
      std::unique_lock lock(queue_.mutex_);
      const std::uint64_t number = queue_.last_++;
      queue_.moved_.wait(lock, [&] { return queue_.served_ == number; });
    }
    Turn(const Turn&) = delete;
    Turn& operator=(const Turn&) = delete;
    ~Turn() {
      const std::lock_guard lock(queue_.mutex_);
      ++queue_.served_;
      queue_.moved_.notify_all();
    }

   private:
    Queue& queue_;
  };

 private:
  std::mutex mutex_;
  std::condition_variable moved_;
  std::uint64_t last_ = 0;
  std::uint64_t served_ = 0;
};

} // namespace baize::store_sqlite
