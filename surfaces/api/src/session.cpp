// Signing in and out, and invitations accepted.
#include "access.h"
#include "baize/answers/people.h"
#include "baize/answers/problem.h"
#include "baize/api/form.h"
#include "reply.h"

#include <algorithm>

namespace baize::api {

namespace {

Answer told(const Call& call, const services::Caller& caller) {
  return clubs_of(call.context, caller).map([&](const std::vector<services::ClubName>& clubs) {
    return reply(answers::session(caller, clubs));
  });
}

/// As long as a session can last; the server itself ends it earlier.
constexpr services::Seconds kCookieFor = 366 * services::kDay;

Answer begun(const Call& call, const services::Begun& begun) {
  return told(call, begun.caller).map([&](Response response) {
    response.headers.emplace_back("Set-Cookie",
                                  session_cookie(call.request, begun.token, kCookieFor));
    return response;
  });
}

/// The session that was there in this browser is over: its cookie is replaced.
Answer begun_anew(const Call& call, services::People& people, const services::Begun& opened) {
  return people.sign_out(session_token(call.request)).and_then([&] { return begun(call, opened); });
}

std::string member(const std::map<std::string, std::string>& form, const std::string& name) {
  const auto found = form.find(name);
  return found == form.end() ? std::string() : found->second;
}

/// A device's name is shown to others: as bad as a person's name can be.
units::Result<std::string> device_of(const std::map<std::string, std::string>& form) {
  auto name = services::person_name(member(form, "device"));
  if (!name) {
    name.error().field = "device";
  }
  return name;
}

/// A refusal of one who tries too often says in a header too how long to wait.
Answer after_try(const Call& call, const std::string& name, units::Problem problem) {
  if (problem.code != "too_many_tries") {
    return tl::unexpected(std::move(problem));
  }
  problem.place = call.target.path.substr(0, 200);
  Response response = reply(answers::with_sentence(problem), 429);
  const services::Seconds wait = call.context.people->wait(name, call.request.address);
  response.headers.emplace_back("Retry-After",
                                std::to_string(std::max<services::Seconds>(wait, 1)));
  return response;
}

/// The person who follows a link to a club of their own stays who they are.
bool sees_already(const Call& call, const services::Begun& opened) {
  return call.caller.kind == services::Caller::Kind::person &&
         call.caller.knows(opened.caller.clubs.begin()->first);
}

Answer open_link(const Call& call, services::People& people, const std::string& token,
                 const std::string& device) {
  const auto opened = people.open_link(token, device, call.request.address);
  if (!opened) {
    return after_try(call, "", opened.error());
  }
  if (sees_already(call, *opened)) {
    return people.sign_out(opened->token).and_then([&] { return told(call, call.caller); });
  }
  return begun(call, *opened);
}

} // namespace

Answer session(const Call& call) {
  return told(call, call.caller);
}

Answer sign_in(const Call& call) {
  const auto people = people_in(call.context);
  const auto form = read_form(call.request.body, {"name", "password", "link", "device"});
  if (!people || !form) {
    return tl::unexpected(!people ? people.error() : form.error());
  }
  const auto device = device_of(*form);
  if (!device) {
    return tl::unexpected(device.error());
  }
  const bool by_name = form->contains("name") && form->contains("password");
  if (form->contains("link") == (form->contains("name") || form->contains("password")) ||
      (!form->contains("link") && !by_name)) {
    return units::refuse("bad_form", "body", "", "an object with name and password, or with link");
  }
  if (form->contains("link")) {
    return open_link(call, **people, form->at("link"), *device);
  }
  const auto opened =
      (*people)->sign_in(form->at("name"), form->at("password"), *device, call.request.address);
  if (!opened) {
    return after_try(call, form->at("name"), opened.error());
  }
  return begun_anew(call, **people, *opened);
}

Answer sign_out(const Call& call) {
  const auto people = people_in(call.context);
  if (!people) {
    return tl::unexpected(people.error());
  }
  return (*people)
      ->sign_out(session_token(call.request))
      .and_then([&] { return told(call, services::Caller{}); })
      .map([&](Response response) {
        response.headers.emplace_back("Set-Cookie", session_cookie(call.request, "", 0));
        return response;
      });
}

Answer own_sessions(const Call& call) {
  return people_in(call.context)
      .and_then([&](services::People* people) { return people->sessions(call.caller.id); })
      .map([&](const std::vector<services::SessionOf>& all) {
        return reply(answers::sessions(all, call.caller));
      });
}

Answer end_own_session(const Call& call) {
  return people_in(call.context)
      .and_then([&](services::People* people) {
        return people->end_session(call.caller.id, call.ids.front());
      })
      .and_then([&] { return own_sessions(call); });
}

Answer look_at_invitation(const Call& call) {
  const auto people = people_in(call.context);
  const auto form = read_form(call.request.body, {"token"});
  if (!people || !form) {
    return tl::unexpected(!people ? people.error() : form.error());
  }
  const auto found = (*people)->look_at(member(*form, "token"), call.request.address);
  if (!found) {
    return after_try(call, "", found.error());
  }
  const auto clubs = call.context.store.clubs();
  if (!clubs) {
    return tl::unexpected(clubs.error());
  }
  const auto club = std::find_if(clubs->begin(), clubs->end(),
                                 [&](const auto& one) { return one.id == found->club; });
  return reply(answers::offer(*found, club == clubs->end() ? found->club : club->name));
}

Answer accept_invitation(const Call& call) {
  const auto people = people_in(call.context);
  const auto form = read_form(call.request.body, {"token", "name", "password", "device"});
  if (!people || !form) {
    return tl::unexpected(!people ? people.error() : form.error());
  }
  const std::string address = call.request.address;
  const auto device = device_of(*form);
  if (!device) {
    return tl::unexpected(device.error());
  }
  const std::string token = member(*form, "token");
  if (!form->contains("name") && !form->contains("password")) {
    if (call.caller.kind != services::Caller::Kind::person) {
      return units::refuse("not_signed_in", "name and password", "",
                           "given for a new account, or a session of a person there");
    }
    const auto accepted = (*people)->accept_as(token, call.caller.id, address);
    if (!accepted) {
      return after_try(call, "", accepted.error());
    }
    return caller_of(call.context, call.request).and_then([&](const services::Caller& now) {
      return told(call, now);
    });
  }
  const auto opened =
      (*people)->accept(token, member(*form, "name"), member(*form, "password"), *device, address);
  if (!opened) {
    return after_try(call, "", opened.error());
  }
  return begun_anew(call, **people, *opened);
}

} // namespace baize::api
