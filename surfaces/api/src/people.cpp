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
  const auto people = people_in(call.context);
  if (!people) {
    return tl::unexpected(people.error());
  }
  return work(**people)
      .and_then([&] { return (*people)->of_club(call.ids.front()); })
      .map([&](const services::ClubPeople& all) {
        return reply(answers::to_json(all, call.caller));
      });
}

units::Result<services::Role> role_in(const std::map<std::string, std::string>& form) {
  const auto said = form.find("role");
  return services::role_named(said == form.end() ? std::string_view() : said->second);
}

/// Where our own pages are, as whoever asks has reached them.
std::string address_of_pages(const Call& call) {
  return (call.request.secure ? "https://" : "http://") + host_of(call.request, call.target);
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
  const auto people = people_in(call.context);
  if (!role || !people) {
    return tl::unexpected(!role ? role.error() : people.error());
  }
  const auto made = (*people)->invite(call.ids[0], *role, call.author());
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
  const auto people = people_in(call.context);
  if (!form || !people) {
    return tl::unexpected(!form ? form.error() : people.error());
  }
  const auto label = form->find("label");
  const auto days = form->find("days");
  const int number = days == form->end() ? 0 : units::parse_whole(days->second).value_or(0);
  const auto made = (*people)->make_link(
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
