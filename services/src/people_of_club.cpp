// Who is at a club, by invitation, link or account.
#include "baize/services/people.h"
#include "baize/units/day.h"

#include <algorithm>

namespace baize::services {

namespace {

constexpr std::size_t kLongestName = 60;
constexpr std::size_t kShortestPassword = 10;
constexpr std::size_t kLongestPassword = 200;

units::Refusal no_invitation() {
  return units::refuse("no_such_invitation", "invitation", "",
                       "one that was not used, taken back or left until it was over");
}

std::string_view trimmed(std::string_view text) {
  const std::size_t first = text.find_first_not_of(' ');
  return first == std::string_view::npos
             ? std::string_view()
             : text.substr(first, text.find_last_not_of(' ') - first + 1);
}

bool fit(std::string_view text) {
  return !text.empty() && text.size() <= kLongestName &&
         std::none_of(text.begin(), text.end(),
                      [](unsigned char c) { return c < 0x20 || c == 0x7F; });
}

std::size_t characters(std::string_view text) {
  return static_cast<std::size_t>(std::count_if(
      text.begin(), text.end(), [](unsigned char c) { return (c & 0xC0U) != 0x80U; }));
}

} // namespace

units::Result<std::string> person_name(std::string_view text) {
  const std::string_view name = trimmed(text);
  if (!fit(name)) {
    return units::refuse("bad_name", "name", std::string(name.substr(0, kLongestName)),
                         "1 to 60 bytes without control characters");
  }
  return std::string(name);
}

std::string name_key(std::string_view name) {
  std::string key(trimmed(name));
  std::transform(key.begin(), key.end(), key.begin(), [](char c) {
    return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
  });
  return key;
}

units::Result<void> check_password(std::string_view password) {
  if (characters(password) < kShortestPassword || password.size() > kLongestPassword) {
    return units::refuse("bad_password", "password", "",
                         "10 characters or more and 200 bytes at most; several words do well");
  }
  return {};
}

std::string instant(Seconds at) {
  const Seconds of_day = ((at % kDay) + kDay) % kDay;
  const auto two = [](Seconds n) { return (n < 10 ? "0" : "") + std::to_string(n); };
  return units::iso(units::Day{static_cast<std::int32_t>((at - of_day) / kDay)}) + "T" +
         two(of_day / 3600) + ":" + two(of_day / 60 % 60) + ":" + two(of_day % 60) + "Z";
}

People::Result<ClubPeople> People::of_club(const std::string& club) {
  auto people = store_.people();
  auto invitations = store_.invitations(club);
  auto links = store_.links(club);
  if (!people || !invitations || !links) {
    return tl::unexpected(!people        ? people.error()
                          : !invitations ? invitations.error()
                                         : links.error());
  }
  ClubPeople all;
  for (Person& person : *people) {
    const auto role = person.clubs.find(club);
    if (role == person.clubs.end()) {
      continue;
    }
    auto sessions_of = sessions(person.id);
    if (!sessions_of) {
      return tl::unexpected(sessions_of.error());
    }
    const Role here = role->second;
    all.people.push_back({std::move(person), here, std::move(*sessions_of)});
  }
  const Seconds now = now_();
  std::erase_if(*invitations, [&](const Invitation& one) { return one.ends <= now; });
  std::erase_if(*links, [&](const ReadingLink& one) { return one.ends <= now; });
  all.invitations = std::move(*invitations);
  all.links = std::move(*links);
  return all;
}

People::Result<void> People::need_of_club(const std::string& club, const std::string& person) {
  const auto all = store_.people();
  if (!all) {
    return tl::unexpected(all.error());
  }
  const bool is = std::any_of(all->begin(), all->end(), [&](const Person& one) {
    return one.id == person && one.clubs.contains(club);
  });
  return is ? Result<void>()
            : units::refuse("no_such_person", "person", person, "a person of this club");
}

People::Result<void> People::set_role(const std::string& club, const std::string& person,
                                      Role role) {
  return need_of_club(club, person).and_then([&] {
    return store_.set_role(person, club, role, true);
  });
}

People::Result<void> People::take_out(const std::string& club, const std::string& person) {
  return need_of_club(club, person).and_then([&] {
    return store_.set_role(person, club, std::nullopt, true);
  });
}

People::Result<void> People::cut_off(const std::string& club, const std::string& person,
                                     const std::string& session) {
  return need_of_club(club, person).and_then([&] { return end_session(person, session); });
}

People::Result<Made<Invitation>> People::invite(const std::string& club, Role role,
                                                const std::string& by) {
  const Seconds now = now_();
  Made<Invitation> made{{secrets_.identifier(), club, role, by, now, now + rules_.invitation},
                        secrets_.token()};
  return store_.tidy(now, now - rules_.idle)
      .and_then([&] {
        return store_.add_invitation(made.kept, secrets_.digest(made.token), rules_.most_open);
      })
      .map([&] { return made; });
}

People::Result<void> People::end_invitation(const std::string& club, const std::string& id) {
  const auto ended = store_.end_invitation(club, id);
  if (!ended) {
    return tl::unexpected(ended.error());
  }
  return *ended ? Result<void>() : no_invitation();
}

People::Result<Invitation> People::valid(const std::string& token, const std::string& address) {
  if (const auto counted = count_try(address, ""); !counted) {
    return tl::unexpected(counted.error());
  }
  auto found = store_.invitation(secrets_.digest(token));
  if (!found) {
    return tl::unexpected(found.error());
  }
  if (!*found || (*found)->ends <= now_()) {
    return no_invitation();
  }
  good_try(address, "");
  return std::move(**found);
}

People::Result<Invitation> People::look_at(const std::string& token, const std::string& address) {
  return valid(token, address);
}

People::Result<Begun> People::accept(const std::string& token, const std::string& name,
                                     const std::string& password, const std::string& device,
                                     const std::string& address) {
  const auto invitation = valid(token, address);
  if (!invitation) {
    return tl::unexpected(invitation.error());
  }
  const auto person = new_person(name, password, invitation->club, invitation->role);
  if (!person) {
    return tl::unexpected(person.error());
  }
  return store_.accept(secrets_.digest(token), *person, true, now_()).and_then([&] {
    SessionOf session;
    session.person = person->id;
    session.device = device;
    return begin(std::move(session), caller_as(*person));
  });
}

People::Result<void> People::accept_as(const std::string& token, const std::string& person,
                                       const std::string& address) {
  return valid(token, address).and_then([&](const Invitation&) {
    Person known;
    known.id = person;
    return store_.accept(secrets_.digest(token), known, false, now_());
  });
}

People::Result<Made<ReadingLink>> People::make_link(const std::string& club,
                                                    const std::string& label, int days,
                                                    const std::string& by) {
  const std::string text(trimmed(label));
  if (!fit(text)) {
    return units::refuse("bad_label", "label", text.substr(0, kLongestName),
                         "whom the link is for, in 1 to 60 bytes");
  }
  if (days < 1 || days > rules_.most_link_days) {
    return units::refuse("bad_days", "days", std::to_string(days),
                         "1 to " + std::to_string(rules_.most_link_days));
  }
  const Seconds now = now_();
  Made<ReadingLink> made{{secrets_.identifier(), club, text, by, now, now + days * kDay, 0},
                         secrets_.token()};
  return store_.tidy(now, now - rules_.idle)
      .and_then(
          [&] { return store_.add_link(made.kept, secrets_.digest(made.token), rules_.most_open); })
      .map([&] { return made; });
}

People::Result<void> People::end_link(const std::string& club, const std::string& id) {
  const auto ended = store_.end_link(club, id);
  if (!ended) {
    return tl::unexpected(ended.error());
  }
  return *ended ? Result<void>()
                : units::refuse("no_such_link", "link", id, "a link of this club that still holds");
}

People::Result<Person> People::new_person(const std::string& name, const std::string& password,
                                          const std::string& club, Role role) {
  const auto good_name = person_name(name);
  const auto good_password = check_password(password);
  if (!good_name || !good_password) {
    return tl::unexpected(!good_name ? good_name.error() : good_password.error());
  }
  return secrets_.password_hash(password).map([&](const std::string& hash) {
    return Person{secrets_.identifier(), *good_name, name_key(*good_name), hash, now_(),
                  {{club, role}}};
  });
}

People::Result<Person> People::add(const std::string& name, const std::string& password,
                                   const std::string& club, Role role) {
  return new_person(name, password, club, role).and_then([&](const Person& person) {
    return store_.add_person(person).map([&] { return person; });
  });
}

People::Result<void> People::set_password(const std::string& person, const std::string& password) {
  return check_password(password)
      .and_then([&] { return secrets_.password_hash(password); })
      .and_then([&](const std::string& hash) { return store_.set_password(person, hash); });
}

} // namespace baize::services
