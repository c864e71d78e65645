#include "sign_in.h"

#include "clock.h"
#include "secure.h"

namespace baize::apps {

namespace {

/// People sign in: asked for, or because others can reach the address or the proxy.
bool people_sign_in(const cli::ServeSettings& settings) {
  // The demo is kept nowhere: it has no accounts and nothing to protect.
  const bool others = settings.behind_proxy || !this_machine_only(settings.address);
  return !settings.anyone && (settings.people || (others && !settings.demo));
}

/// Nobody could ever sign in to a server that knows nobody.
units::Result<void> need_people(services::PeopleStore& kept, const cli::ServeSettings& settings) {
  const auto all = kept.people();
  if (!all) {
    return tl::unexpected(all.error());
  }
  if (all->empty()) {
    return units::refuse("no_people", "people", "none who could sign in",
                         "some before Baize is served at " + settings.address +
                             ": make the first account with baize people add NAME --role "
                             "head_greenkeeper");
  }
  return {};
}

} // namespace

units::Result<SignIn> sign_in_of(services::Store& store, const cli::ServeSettings& settings) {
  SignIn made;
  if (!people_sign_in(settings)) {
    return made;
  }
  if (const auto some = need_people(*store.people(), settings); !some) {
    return tl::unexpected(some.error());
  }
  auto opened = secrets::Sodium::open();
  if (!opened) {
    return tl::unexpected(opened.error());
  }
  made.secrets = std::move(*opened);
  made.people = std::make_unique<services::People>(*store.people(), *made.secrets, seconds);
  return made;
}

} // namespace baize::apps
