#pragma once

#include "baize/api/answer.h"

#include <atomic>
#include <map>
#include <mutex>
#include <string>

/// Store and sheets that live in memory, for tests and benchmarks.
namespace made {

/// Where the made club's answers are.
inline const std::string kClub = "/api/v1/clubs/c%2F1";

class FakeStore : public baize::services::Store {
 public:
  using ClubNames = std::vector<baize::services::ClubName>;
  using Revisions = std::vector<baize::services::Revision>;
  using Files = std::vector<baize::services::ReceivedFile>;
  template <class T> using Result = baize::units::Result<T>;

  void put(const baize::green::Records& records, const baize::climate::Weather& weather);

  Result<ClubNames> clubs() override;
  Result<baize::green::Records> load(const std::string& club) override;
  Result<baize::climate::Weather> weather(const std::string& club) override;
  /// Adds visits with new ids; refuses "unknown_green" for a green not there.
  Result<baize::services::Receipt> keep(const baize::green::Records& records,
                                        const baize::services::Author& author,
                                        const Files& files) override;
  Result<baize::services::Receipt> keep_weather(const std::string& club,
                                                const baize::climate::Weather& weather,
                                                const baize::services::Author& author) override;
  Result<Files> received(const std::string& club) override;
  Result<Revisions> history(const std::string& club, const std::string& kind,
                            const std::string& id) override;
  Result<std::int64_t> change_number() override;

  std::atomic<int> loads{0};
  std::atomic<bool> broken{false}; ///< every call refuses "database_damaged"
  baize::services::Author last_author;
  Files last_files;

 private:
  std::mutex mutex_;
  std::map<std::string, baize::green::Records> records_;
  std::map<std::string, baize::climate::Weather> weather_;
  std::int64_t change_ = 1;
};

/// A content "good" makes one visit more, "bad" a problem, "elsewhere" names another
/// club, "stray" a visit at a green that is not there.
class FakeSheets : public baize::services::Sheets {
 public:
  baize::services::SheetsReading read(const std::vector<baize::services::ReceivedFile>& files,
                                      baize::units::Day today) const override;
  std::vector<baize::services::ReceivedFile>
  write(const baize::green::Records& records,
        const std::vector<baize::services::ReceivedFile>& received) const override;
};

/// A server's inside on a made club, seen on 30 June 2025.
struct World {
  World();
  explicit World(const baize::green::Records& records, const baize::climate::Weather& weather);
  baize::api::Response get(const std::string& target) const;
  baize::api::Response ask(const std::string& method, const std::string& target,
                           const std::string& body = "") const;

  FakeStore store;
  FakeSheets sheets;
  baize::api::ClubsCache clubs{store, 2};
  baize::api::Context context;
};

/// The first header of this name, or empty.
std::string header(const baize::api::Response& response, const std::string& name);

} // namespace made
