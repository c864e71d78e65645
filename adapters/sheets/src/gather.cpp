#include "gather.h"

#include <algorithm>

namespace baize::sheets {
namespace {

using services::ReceivedFile;

constexpr std::array<std::string_view, 9> kNames{
    kFile<ClubRow>, kFile<GreenRow>,   kFile<ObserverRow>, kFile<RollRow>,    kFile<VisitRow>,
    kFile<WorkRow>, kFile<ReadingRow>, kFile<FixtureRow>,  kFile<StandardRow>};
constexpr std::array<std::string_view, 3> kRequired{kFile<ClubRow>, kFile<GreenRow>,
                                                    kFile<RollRow>};

void check_names(const std::vector<ReceivedFile>& files, Findings& findings) {
  std::set<std::string> seen;
  for (const ReceivedFile& file : files) {
    const std::string bare = bare_name(file.name);
    if (!known_file(file)) {
      findings.problem(
          {"unknown_file",
           "file name",
           file.name,
           "one of the set; the nearest is '" + nearest(bare, {kNames.begin(), kNames.end()}) + "'",
           {}},
          {file.name, 0, {}});
    } else if (!seen.insert(bare).second) {
      findings.problem({"file_twice", "file name", file.name, "given once only", {}},
                       {file.name, 0, {}});
    }
  }
  for (const std::string_view name : kRequired) {
    if (!seen.contains(std::string(name))) {
      findings.problem({"file_missing", "file", {}, "among the files given", {}},
                       {std::string(name), 0, {}});
    }
  }
}

/// Without a list of observers, those who are named are taken as found.
void imply_observers(Gathered& all) {
  const auto imply = [&](const std::string& id, const green::Source& source) {
    if (!id.empty() && all.implied.insert(id).second) {
      all.records.observers.push_back({id, id, std::nullopt, source});
    }
  };
  for (const green::Visit& visit : all.records.visits) {
    imply(visit.observer, visit.source);
  }
  for (const green::Reading& reading : all.records.readings) {
    imply(reading.observer, reading.source);
  }
  if (all.implied.empty()) {
    return;
  }
  std::string ids;
  for (const std::string& id : all.implied) {
    ids += (ids.empty() ? "" : ", ") + id;
  }
  all.findings.remark({"observers_implied",
                       "list of observers",
                       {},
                       "given for observers to have names; taken as found: " + ids,
                       {}},
                      {std::string(kFile<ObserverRow>), 0, {}});
}

} // namespace

std::string bare_name(std::string_view name) {
  const auto slash = name.find_last_of("/\\");
  std::string bare(slash == std::string_view::npos ? name : name.substr(slash + 1));
  std::transform(bare.begin(), bare.end(), bare.begin(), [](char c) {
    return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
  });
  return bare;
}

bool known_file(const ReceivedFile& file) {
  const std::string bare = bare_name(file.name);
  return std::find(kNames.begin(), kNames.end(), bare) != kNames.end();
}

const ReceivedFile* find_file(const std::vector<ReceivedFile>& files, std::string_view name) {
  for (const ReceivedFile& file : files) {
    if (bare_name(file.name) == name) {
      return &file;
    }
  }
  return nullptr;
}

Gathered gather(const std::vector<ReceivedFile>& files) {
  Gathered all;
  check_names(files, all.findings);
  using Reader = void (*)(const ReceivedFile&, Gathered&);
  // Later files name what earlier ones declare.
  constexpr std::array<std::pair<std::string_view, Reader>, 9> kReaders{
      {{kFile<ClubRow>, gather_club},
       {kFile<GreenRow>, gather_greens},
       {kFile<ObserverRow>, gather_observers},
       {kFile<RollRow>, gather_rolls},
       {kFile<VisitRow>, gather_visits},
       {kFile<ReadingRow>, gather_readings},
       {kFile<WorkRow>, gather_works},
       {kFile<FixtureRow>, gather_fixtures},
       {kFile<StandardRow>, gather_standards}}};
  for (const auto& [name, read] : kReaders) {
    if (const ReceivedFile* file = find_file(files, name)) {
      read(*file, all);
    }
  }
  if (find_file(files, kFile<ObserverRow>) == nullptr) {
    imply_observers(all);
  }
  return all;
}

} // namespace baize::sheets
