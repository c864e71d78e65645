#include "baize/answers/photos.h"

namespace baize::answers {

namespace {

Json line(const services::PhotoLine& one) {
  const journal::Photo& photo = one.photo;
  const bool at_visit = !photo.visit.empty();
  return Object()
      .put("photo", photo.id)
      .put(at_visit ? "visit" : "work", at_visit ? photo.visit : photo.work)
      .put("taken", photo.taken)
      .put("by", photo.by)
      .put("note", photo.note)
      .put("sha256", photo.sha256)
      .put("bytes", photo.bytes)
      .put("here", one.here)
      .put("day", one.day)
      .put("green", one.green)
      .done();
}

} // namespace

Json to_json(const std::vector<services::PhotoLine>& photos) {
  return Object().nest("photos", list(photos, line)).done();
}

} // namespace baize::answers
