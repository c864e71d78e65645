// Photos: what is told of them, and their bytes.
#include "baize/services/photos.h"

#include "baize/answers/photos.h"
#include "call.h"
#include "reply.h"

namespace baize::api {

namespace {

units::Result<services::PhotoStore*> photo_store(const Call& call) {
  services::PhotoStore* photos = call.context.store.photos();
  if (photos == nullptr || call.context.pictures == nullptr) {
    return units::refuse("no_such_service", "photos", "", "asked of a server that keeps photos");
  }
  return photos;
}

/// The bytes never change under their id, and are for whoever asked only.
Response as_picture(std::string bytes) {
  Response response{200, "image/jpeg", std::move(bytes), true, {}};
  response.headers.emplace_back("Cache-Control", "private, max-age=31536000, immutable");
  response.headers.emplace_back("Content-Security-Policy", "default-src 'none'; sandbox");
  return response;
}

} // namespace

Answer photos(const Call& call) {
  const auto store = photo_store(call);
  if (!store) {
    return tl::unexpected(store.error());
  }
  const std::string* of = call.query("of");
  return services::photos_of(**store, call.ids.front(), of == nullptr ? "" : *of)
      .map([](const auto& all) { return reply(answers::to_json(all)); });
}

Answer picture(const Call& call) {
  const auto store = photo_store(call);
  if (!store) {
    return tl::unexpected(store.error());
  }
  return services::picture_of(**store, call.ids[0], call.ids[1]).map(as_picture);
}

Answer keep_picture(const Call& call) {
  const auto store = photo_store(call);
  if (!store) {
    return tl::unexpected(store.error());
  }
  return services::keep_photo(**store, *call.context.pictures, call.ids[0], call.ids[1],
                              call.request.body, {call.author(), call.context.now()})
      .map([&] { return reply(answers::Object().put("photo", call.ids[1]).done()); });
}

} // namespace baize::api
