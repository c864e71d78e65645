#include "baize/answers/store.h"

namespace baize::answers {

namespace {

Json club_name(const services::ClubName& club) {
  return Object().put("id", club.id).put("name", club.name).done();
}

Json revision(const services::Revision& revision) {
  Json contents = Json::parse(revision.contents, nullptr, false);
  if (!contents.is_object()) {
    contents = Object().put("text", revision.contents).done();
  }
  return Object()
      .put("number", revision.number)
      .put("author", revision.author)
      .put("at", revision.at)
      .nest("contents", std::move(contents))
      .done();
}

} // namespace

Json to_json(const std::vector<services::ClubName>& clubs) {
  return Object().nest("clubs", list(clubs, club_name)).done();
}

Json to_json(const std::vector<services::Revision>& revisions) {
  return Object().nest("revisions", list(revisions, revision)).done();
}

Json to_json(const services::Receipt& receipt) {
  return Object()
      .put("added", receipt.added)
      .put("corrected", receipt.corrected)
      .put("unchanged", receipt.unchanged)
      .done();
}

} // namespace baize::answers
