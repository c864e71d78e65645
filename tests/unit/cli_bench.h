#pragma once

#include "baize/cli/run.h"
#include "contract/folder.h"
#include "contract/sample_club.h"

#include <map>
#include <string>
#include <vector>

namespace cli_bench {

using namespace baize;

/// Keeps what it is given, in memory.
class MemoryStore : public services::Store {
 public:
  std::map<std::string, green::Records> records;
  std::map<std::string, climate::Weather> kept_weather;
  std::map<std::string, std::vector<services::ReceivedFile>> files;
  std::vector<services::Author> authors;

  units::Result<std::vector<services::ClubName>> clubs() override;
  units::Result<green::Records> load(const std::string& club) override;
  units::Result<climate::Weather> weather(const std::string& club) override;
  units::Result<services::Receipt> keep(const green::Records& given, const services::Author& author,
                                        const std::vector<services::ReceivedFile>& from) override;
  units::Result<services::Receipt> keep_weather(const std::string& club,
                                                const climate::Weather& given,
                                                const services::Author& author) override;
  units::Result<std::vector<services::ReceivedFile>> received(const std::string& club) override;
  units::Result<std::vector<services::Revision>>
  history(const std::string& club, const std::string& kind, const std::string& id) override;
  units::Result<std::int64_t> change_number() override { return 1; }
};

/// Reads whatever it is told to, and writes what was received.
class ToldSheets : public services::Sheets {
 public:
  services::SheetsReading reading;
  std::vector<services::ReceivedFile> to_write;
  services::SheetsReading read(const std::vector<services::ReceivedFile>& files,
                               units::Day today) const override;
  std::vector<services::ReceivedFile>
  write(const green::Records&, const std::vector<services::ReceivedFile>&) const override {
    return to_write;
  }
};

class ToldWeather : public services::WeatherFiles {
 public:
  services::WeatherReading reading;
  units::Result<services::WeatherMapping> guess(const std::string& content) const override;
  services::WeatherReading read(const std::string& content,
                                const services::WeatherMapping& mapping) const override;
  std::vector<std::string> show(const services::WeatherMapping& mapping) const override;
  units::Result<services::WeatherMapping>
  corrected(services::WeatherMapping mapping, const std::vector<std::string>& lines) const override;
};

/// The whole command line with parts that only pretend.
class Bench {
 public:
  Bench();
  /// Runs one command line without the program's own name.
  int run(const std::vector<std::string>& words);
  const std::string& out() const { return out_; }
  const std::string& err() const { return err_; }
  bool said(const std::string& words) const { return out().find(words) != std::string::npos; }
  bool refused(const std::string& words) const { return err().find(words) != std::string::npos; }
  std::string file(const std::string& name) const { return folder_.file(name); }
  /// Writes a file into the bench's own folder and gives its path.
  std::string put(const std::string& name, const std::string& content) const;

  MemoryStore store;
  ToldSheets sheets;
  ToldWeather weather;
  cli::Ports ports;
  std::vector<std::string> opened; ///< databases, with "!" where it might be made

 private:
  contract::Folder folder_;
  std::string out_;
  std::string err_;
};

} // namespace cli_bench
