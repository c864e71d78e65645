// Who keeps a club's people: roles, invitations, links, what is cut off.
#include "baize/answers/people.h"

#include "access.h"
#include "baize/api/form.h"
#include "baize/units/number.h"
#include "reply.h"

namespace baize::api {

namespace {

using services::People;

/// Does something for the club, and answers with how its people stand then.
template <class F> Answer then_all(const Call& call, const F& work) {
  People* people = call.context.people;
  if (people == nullptr) {
    return units::refuse("no_such_service", "people", "", "asked of a server where people sign in");
  }
  return work(*people)
      .and_then([&] { return people->of_club(call.ids.front()); })
      .map([&](const services::ClubPeople& all) {
        return reply(answers::to_json(all, call.caller));
      });
}

units::Result<services::Role> role_in(const std::map<std::string, std::string>& form) {
  const auto said = form.find("role");
  const auto role = said == form.end() ? std::nullopt : services::parse_role(said->second);
  if (!role) {
    return units::refuse("bad_role", "role",
                         said == form.end() ? std::string() : said->second.substr(0, 40),
                         "reader, observer, agronomist or head_greenkeeper");
  }
  return *role;
}

/// Where our own pages are, as whoever asks has reached them.
std::string address_of_pages(const Call& call) {
  const std::string& host =
      call.target.authority.empty() ? call.request.host : call.target.authority;
  return (call.request.secure ? "https://" : "http://") + host;
}

} // namespace

Answer people_of_club(const Call& call) {
  return then_all(call, [](People&) { return units::Result<void>(); });
}

Answer set_role(const Call& call) {
  const auto form = read_form(call.request.body, {"role"});
  const auto role = form.and_then(role_in);
  if (!role) {
    return tl::unexpected(role.error());
  }
  return then_all(call,
                  [&](People& people) { return people.set_role(call.ids[0], call.ids[1], *role); });
}

Answer take_role(const Call& call) {
  return then_all(call, [&](People& people) { return people.take_out(call.ids[0], call.ids[1]); });
}

Answer cut_off(const Call& call) {
  return then_all(
      call, [&](People& people) { return people.cut_off(call.ids[0], call.ids[1], call.ids[2]); });
}

Answer invite(const Call& call) {
  const auto form = read_form(call.request.body, {"role"});
  const auto role = form.and_then(role_in);
  if (!role) {
    return tl::unexpected(role.error());
  }
  if (call.context.people == nullptr) {
    return people_of_club(call);
  }
  const auto made = call.context.people->invite(call.ids[0], *role, call.author());
  if (!made) {
    return tl::unexpected(made.error());
  }
  const std::string url = address_of_pages(call) + "/#/+join/" + made->token;
  const auto picture = call.context.scan_code ? call.context.scan_code(url)
                                              : units::Result<std::string>(std::string());
  if (!picture) {
    return tl::unexpected(picture.error());
  }
  return reply(answers::new_invitation(made->kept, url, *picture));
}

Answer end_invitation(const Call& call) {
  return then_all(call,
                  [&](People& people) { return people.end_invitation(call.ids[0], call.ids[1]); });
}

Answer make_link(const Call& call) {
  const auto form = read_form(call.request.body, {"label", "days"});
  if (!form) {
    return tl::unexpected(form.error());
  }
  if (call.context.people == nullptr) {
    return people_of_club(call);
  }
  const auto label = form->find("label");
  const auto days = form->find("days");
  const int number = days == form->end() ? 0 : units::parse_whole(days->second).value_or(0);
  const auto made = call.context.people->make_link(
      call.ids[0], label == form->end() ? std::string() : label->second, number, call.author());
  if (!made) {
    return tl::unexpected(made.error());
  }
  return reply(answers::new_link(made->kept, address_of_pages(call) + "/#/+link/" + made->token));
}

Answer end_link(const Call& call) {
  return then_all(call, [&](People& people) { return people.end_link(call.ids[0], call.ids[1]); });
}

} // namespace baize::api
