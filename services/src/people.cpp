// Signing in and out, and whose session it is.
#include "baize/services/people.h"

#include <algorithm>

namespace baize::services {

namespace {

units::Refusal wrong_sign_in() {
  return units::refuse("wrong_sign_in", "name or password", "",
                       "those of an account here; after some wrong tries the next must wait");
}

} // namespace

Caller caller_as(const Person& person) {
  return {Caller::Kind::person, person.id, person.name, "", person.clubs};
}

Caller caller_as(const ReadingLink& link) {
  return {Caller::Kind::link, link.id, link.label, "", {{link.club, Role::reader}}};
}

People::People(PeopleStore& store, Secrets& secrets, std::function<Seconds()> now,
               PeopleRules rules)
    : store_(store), secrets_(secrets), now_(std::move(now)), rules_(rules),
      by_address_(rules.by_address), by_name_(rules.by_name) {}

Seconds People::wait(const std::string& name, const std::string& address) {
  const Seconds now = now_();
  const std::lock_guard lock(mutex_);
  return std::max(by_address_.wait(address, now), by_name_.wait(name_key(name), now));
}

People::Result<void> People::count_try(const std::string& address, const std::string& key) {
  const Seconds now = now_();
  const std::lock_guard lock(mutex_);
  const Seconds wait =
      std::max(by_address_.wait(address, now), key.empty() ? 0 : by_name_.wait(key, now));
  if (wait > 0) {
    return units::refuse("too_many_tries", "next try", "at once",
                         std::to_string(wait) + " seconds from now, after so many wrong ones");
  }
  by_address_.begin(address, now);
  if (!key.empty()) {
    by_name_.begin(key, now);
  }
  return {};
}

void People::good_try(const std::string& address, const std::string& key) {
  const std::lock_guard lock(mutex_);
  // Only this try: whoever has an account must not wash off wrong tries with it.
  by_address_.undo(address);
  by_name_.clear(key);
}

/// A password nobody knows, hashed once: what an unknown name is tried against.
People::Result<std::string> People::hash_of_nobody() {
  {
    const std::lock_guard lock(mutex_);
    if (!hash_of_nobody_.empty()) {
      return hash_of_nobody_;
    }
  }
  auto hash = secrets_.password_hash(secrets_.token());
  if (hash) {
    const std::lock_guard lock(mutex_);
    hash_of_nobody_ = *hash;
  }
  return hash;
}

People::Result<Begun> People::sign_in(const std::string& name, const std::string& password,
                                      const std::string& device, const std::string& address) {
  const std::string key = name_key(name);
  if (const auto counted = count_try(address, key); !counted) {
    return tl::unexpected(counted.error());
  }
  // Whether or not the name is known: what comes takes the same time.
  const auto nobody = hash_of_nobody();
  const auto person = store_.person_named(key);
  if (!nobody || !person) {
    return tl::unexpected(!nobody ? nobody.error() : person.error());
  }
  const auto fits = secrets_.password_fits(*person ? (*person)->password_hash : *nobody, password);
  if (!fits) {
    const std::lock_guard lock(mutex_); // nothing was tried
    by_address_.undo(address);
    by_name_.undo(key);
    return tl::unexpected(fits.error());
  }
  if (!*person || !*fits) {
    return wrong_sign_in();
  }
  good_try(address, key);
  SessionOf session;
  session.person = (*person)->id;
  session.device = device;
  return begin(std::move(session), caller_as(**person));
}

People::Result<Begun> People::open_link(const std::string& token, const std::string& device,
                                        const std::string& address) {
  if (const auto counted = count_try(address, ""); !counted) {
    return tl::unexpected(counted.error());
  }
  const auto link = store_.link(secrets_.digest(token));
  if (!link) {
    return tl::unexpected(link.error());
  }
  if (!*link || (*link)->ends <= now_()) {
    return units::refuse("no_such_link", "link", "", "one that was not cut off and is not over");
  }
  good_try(address, "");
  SessionOf session;
  session.link = (*link)->id;
  session.device = device;
  session.ends = (*link)->ends;
  return begin(std::move(session), caller_as(**link));
}

People::Result<Begun> People::begin(SessionOf session, Caller caller) {
  const Seconds now = now_();
  if (const auto tidied = store_.tidy(now, now - rules_.idle); !tidied) {
    return tl::unexpected(tidied.error());
  }
  session.id = secrets_.identifier();
  session.began = now;
  session.seen = now;
  session.ends =
      session.ends == 0 ? now + rules_.whole : std::min(session.ends, now + rules_.whole);
  caller.session = session.id;
  Begun begun{secrets_.token(), std::move(caller), session.ends};
  if (const auto added = store_.add_session(session, secrets_.digest(begun.token)); !added) {
    return tl::unexpected(added.error());
  }
  return begun;
}

People::Result<Caller> People::caller(const std::string& token) {
  if (token.empty()) {
    return Caller{};
  }
  const auto found = store_.session(secrets_.digest(token));
  if (!found) {
    return tl::unexpected(found.error());
  }
  if (!*found) {
    return Caller{};
  }
  const auto& [session, person, link] = **found;
  const Seconds now = now_();
  if (session.ends <= now || now - session.seen >= rules_.idle || (link && link->ends <= now)) {
    return Caller{};
  }
  if (now - session.seen >= rules_.seen_step) {
    // Where it cannot be written down the session is merely over earlier.
    (void)store_.seen(session.id, now);
  }
  Caller known = person ? caller_as(*person) : caller_as(*link);
  known.session = session.id;
  return known;
}

People::Result<void> People::sign_out(const std::string& token) {
  return token.empty() ? Result<void>() : store_.end_session_of(secrets_.digest(token));
}

People::Result<std::vector<SessionOf>> People::sessions(const std::string& person) {
  auto all = store_.sessions(person);
  if (all) {
    const Seconds now = now_();
    std::erase_if(*all, [&](const SessionOf& one) {
      return one.ends <= now || now - one.seen >= rules_.idle;
    });
  }
  return all;
}

People::Result<void> People::end_session(const std::string& person, const std::string& session) {
  const auto ended = store_.end_session(person, session);
  if (!ended) {
    return tl::unexpected(ended.error());
  }
  return *ended
             ? Result<void>()
             : units::refuse("no_such_session", "session", session, "a session that still holds");
}

} // namespace baize::services
