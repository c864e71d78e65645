#include "sha256.h"
#include "weather_rows.h"

namespace baize::store_sqlite {

namespace {
std::string newest_sum(Connection& db, std::int64_t club, const std::string& name) {
  Statement& row = db.use("SELECT sha256 FROM received_file WHERE club = ? AND name = ? "
                          "ORDER BY key DESC LIMIT 1");
  row.start(club, name);
  const std::string sum = row.next() ? row.text() : std::string();
  row.stop();
  return sum;
}
} // namespace

std::vector<services::ReceivedFile> load_received(Connection& db, std::int64_t club) {
  Statement& row = db.use(
      "SELECT f.name, c.content FROM received_file f JOIN received_content c ON c.sha256 = "
      "f.sha256 WHERE f.key IN (SELECT max(key) FROM received_file WHERE club = ? GROUP BY name) "
      "ORDER BY f.name");
  row.start(club);
  std::vector<services::ReceivedFile> files;
  while (row.next()) {
    services::ReceivedFile file;
    file.name = row.text();
    file.content = row.text();
    files.push_back(std::move(file));
  }
  return files;
}

void keep_received(Writing& to, const std::vector<services::ReceivedFile>& files) {
  Connection& db = to.db();
  for (const services::ReceivedFile& file : files) {
    const std::string sum = sha256(file.content);
    if (newest_sum(db, to.club(), file.name) == sum) {
      continue;
    }
    db.use("INSERT INTO received_content (sha256, content) VALUES (?, ?) "
           "ON CONFLICT (sha256) DO NOTHING")
        .run(sum, Bytes{file.content});
    db.use("INSERT INTO received_file (club, name, change, sha256) VALUES (?, ?, ?, ?)")
        .run(to.club(), file.name, to.change(), sum);
  }
}

} // namespace baize::store_sqlite
