#include "photos.h"

#include "fields.h"

#include <algorithm>

namespace baize::journal {
namespace {

/// Whoever named the picture took it.
std::string named_by(const Thing& thing) {
  const auto at = std::find_if(thing.fields.begin(), thing.fields.end(),
                               [](const Field& field) { return field.name == "sha256"; });
  return at == thing.fields.end() ? std::string() : at->standing.back().by;
}

bool is_sha256(const std::string& text) {
  constexpr std::size_t kDigits = 64;
  return text.size() == kDigits && text.find_first_not_of("0123456789abcdef") == std::string::npos;
}

template <class Record> bool has(const std::vector<Record>& all, const std::string& id) {
  return std::any_of(all.begin(), all.end(), [&](const auto& one) { return one.record.id == id; });
}

/// One visit or one work, and it must be here.
void look_at_owner(const Photo& photo, const MadeRecords& made, Fields& fields) {
  if (photo.visit.empty() == photo.work.empty()) {
    fields.note("photo_of_what", "visit", photo.visit,
                "the visit that it was taken at, or else work, the work that it shows");
  } else if (!photo.visit.empty() && !has(made.visits, photo.visit)) {
    fields.note("no_such_visit", "visit", photo.visit,
                "the visit it belongs to, which is not here");
  } else if (!photo.work.empty() && !has(made.works, photo.work)) {
    fields.note("no_such_work", "work", photo.work, "the work it belongs to, which is not here");
  }
}

void look_at_picture(Photo& photo, Fields& fields) {
  fields.present("sha256");
  photo.sha256 = fields.text("sha256");
  if (!photo.sha256.empty() && !is_sha256(photo.sha256)) {
    fields.note("not_a_sha256", "sha256", shown(Value{photo.sha256}),
                "64 hexadecimal digits in lower case");
  }
  fields.present("bytes");
  const auto bytes = fields.whole("bytes");
  photo.bytes = bytes.value_or(0);
  if (bytes && (*bytes < 1 || *bytes > kMostPhotoBytes)) {
    fields.note("bytes_out_of_range", "bytes", std::to_string(*bytes),
                "from 1 to " + std::to_string(kMostPhotoBytes));
  }
}

Made<Photo> photo_of(const Thing& thing, const MadeRecords& records) {
  Made<Photo> made;
  made.record.id = thing.id;
  made.removed = thing.removed();
  made.conflicts = thing.conflicts();
  made.record.by = named_by(thing);
  Fields fields(thing, made.problems);
  made.record.visit = fields.text("visit");
  made.record.work = fields.text("work");
  look_at_owner(made.record, records, fields);
  fields.present("taken");
  fields.instant("taken");
  const Value* taken = thing.find("taken");
  made.record.taken = taken == nullptr || taken->text() == nullptr ? "" : *taken->text();
  look_at_picture(made.record, fields);
  made.record.note = fields.text("note");
  fields.finish();
  return made;
}

} // namespace

void add_photos(const Folded& folded, MadeRecords& made) {
  for (const Thing& thing : folded.things) {
    if (thing.kind == Kind::photo) {
      made.photos.push_back(photo_of(thing, made));
    }
  }
}

} // namespace baize::journal
