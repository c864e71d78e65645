#include "baize/services/photos.h"

#include "baize/journal/records.h"

#include <algorithm>
#include <tuple>

namespace baize::services {
namespace {

template <class Made> const Made* find(const std::vector<Made>& all, const std::string& id) {
  const auto at =
      std::find_if(all.begin(), all.end(), [&](const Made& one) { return one.record.id == id; });
  return at == all.end() ? nullptr : &*at;
}

template <class Made> bool taken_out(const std::vector<Made>& all, const std::string& id) {
  const Made* one = find(all, id);
  return one != nullptr && one->removed;
}

/// The photo with the day and green of what it belongs to. A visit or work that
/// is not told whole yet has no day; then it is the one on which it was taken.
PhotoLine line_of(const journal::Photo& photo, const journal::MadeRecords& records) {
  PhotoLine line;
  line.photo = photo;
  if (const auto* visit = find(records.visits, photo.visit)) {
    line.day = visit->record.day;
    line.green = visit->record.green;
  } else if (const auto* work = find(records.works, photo.work)) {
    line.day = work->record.day;
    line.green = work->record.greens.size() == 1 ? work->record.greens.front() : "";
  }
  constexpr std::size_t kDayOnly = 10; // of YYYY-MM-DDTHH:MM:SSZ
  if (line.day == units::Day{}) {
    line.day = units::parse_iso_day(photo.taken.substr(0, kDayOnly)).value_or(units::Day{});
  }
  return line;
}

bool is_shown(const journal::Made<journal::Photo>& made, const journal::MadeRecords& records,
              const std::string& of) {
  const journal::Photo& photo = made.record;
  const std::string& owner = photo.visit.empty() ? photo.work : photo.visit;
  return !made.removed && made.problems.empty() && (of.empty() || owner == of) &&
         !taken_out(records.visits, photo.visit) && !taken_out(records.works, photo.work);
}

/// What the entries say of a photo; absent: none speaks of it.
units::Result<journal::Thing> told_of(PhotoStore& store, const std::string& club,
                                      const std::string& photo) {
  return store.photo_told(club, photo).and_then([&](std::vector<journal::Entry> entries) {
    const journal::Folded folded = journal::fold(std::move(entries));
    const journal::Thing* thing = folded.find(journal::Kind::photo, photo);
    return thing != nullptr
               ? units::Result<journal::Thing>(*thing)
               : units::refuse("no_such_photo", "photo", photo.substr(0, 100),
                               "a photo of this club, of which its phone has handed in the entry");
  });
}

} // namespace

units::Result<std::vector<PhotoLine>> photos_of(PhotoStore& store, const std::string& club,
                                                const std::string& of) {
  auto told = store.photos_told(club, of);
  if (!told) {
    return tl::unexpected(told.error());
  }
  const journal::MadeRecords made = journal::records(journal::fold(std::move(told->entries)));
  std::vector<PhotoLine> lines;
  for (const auto& one : made.photos) {
    if (is_shown(one, made, of)) {
      lines.push_back(line_of(one.record, made));
      lines.back().here = told->here.contains(one.record.id);
    }
  }
  std::sort(lines.begin(), lines.end(), [](const PhotoLine& a, const PhotoLine& b) {
    return std::tie(a.photo.taken, a.photo.id) < std::tie(b.photo.taken, b.photo.id);
  });
  return lines;
}

units::Result<void> keep_photo(PhotoStore& store, const Pictures& pictures, const std::string& club,
                               const std::string& photo, const std::string& content,
                               const Author& author) {
  if (const auto looked = pictures.look(content); !looked) {
    return tl::unexpected(looked.error());
  }
  return told_of(store, club, photo).and_then([&](const journal::Thing& thing) {
    const journal::Value* sha256 = thing.find("sha256");
    const std::string* told = sha256 == nullptr ? nullptr : sha256->text();
    return store.keep_picture(club, photo, told == nullptr ? "" : *told, content, author);
  });
}

units::Result<std::string> picture_of(PhotoStore& store, const std::string& club,
                                      const std::string& photo) {
  const auto told = told_of(store, club, photo);
  if (!told || told->removed()) {
    return told ? units::refuse("no_such_photo", "photo", photo, "one that was not taken out")
                : tl::unexpected(told.error());
  }
  const auto content = store.picture(club, photo);
  if (!content) {
    return tl::unexpected(content.error());
  }
  if (!*content) {
    return units::refuse("no_such_picture", "photo", photo,
                         "one whose picture its phone has sent; so far only its entry has come");
  }
  return **content;
}

} // namespace baize::services
