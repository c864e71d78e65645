#include "baize/answers/people.h"

namespace baize::answers {

namespace {

using services::Caller;
using services::instant;

const char* word(Caller::Kind kind) {
  switch (kind) {
  case Caller::Kind::everyone:
    return "everyone";
  case Caller::Kind::person:
    return "person";
  case Caller::Kind::link:
    return "link";
  case Caller::Kind::nobody:
    break;
  }
  return "nobody";
}

Json own_club(const Caller& caller, const services::ClubName& club) {
  Object json;
  json.put("id", club.id).put("name", club.name);
  if (const auto role = caller.clubs.find(club.id); role != caller.clubs.end()) {
    json.put("role", services::name(role->second));
  }
  Json may = Json::array();
  for (const services::Right right : services::kRights) {
    if (caller.may(right, club.id)) {
      may.push_back(services::name(right));
    }
  }
  return json.nest("may", std::move(may)).done();
}

Json session_line(const services::SessionOf& one, const Caller& caller) {
  return Object()
      .put("id", one.id)
      .put("device", one.device)
      .put("began", instant(one.began))
      .put("seen", instant(one.seen))
      .put("ends", instant(one.ends))
      .put("this", one.id == caller.session)
      .done();
}

Json session_lines(const std::vector<services::SessionOf>& all, const Caller& caller) {
  Json lines = Json::array();
  for (const services::SessionOf& one : all) {
    lines.push_back(session_line(one, caller));
  }
  return lines;
}

Json invitation_line(const services::Invitation& one) {
  return Object()
      .put("id", one.id)
      .put("role", services::name(one.role))
      .put("by", one.by)
      .put("made", instant(one.made))
      .put("ends", instant(one.ends))
      .done();
}

Json link_line(const services::ReadingLink& one) {
  return Object()
      .put("id", one.id)
      .put("label", one.label)
      .put("by", one.by)
      .put("made", instant(one.made))
      .put("ends", instant(one.ends))
      .put("opened", one.opened)
      .done();
}

} // namespace

Json session(const Caller& caller, const std::vector<services::ClubName>& clubs) {
  Object json;
  json.put("sign_in", caller.kind != Caller::Kind::everyone).put("caller", word(caller.kind));
  if (!caller.name.empty()) {
    json.put("name", caller.name);
  }
  Json own = Json::array();
  for (const services::ClubName& club : clubs) {
    own.push_back(own_club(caller, club));
  }
  return json.nest("clubs", std::move(own)).done();
}

Json sessions(const std::vector<services::SessionOf>& all, const Caller& caller) {
  return Object().nest("sessions", session_lines(all, caller)).done();
}

Json to_json(const services::ClubPeople& all, const Caller& caller) {
  Json people = Json::array();
  for (const services::PersonLine& line : all.people) {
    people.push_back(Object()
                         .put("id", line.person.id)
                         .put("name", line.person.name)
                         .put("role", services::name(line.role))
                         .put("you", line.person.id == caller.id)
                         .nest("sessions", session_lines(line.sessions, caller))
                         .done());
  }
  return Object()
      .nest("people", std::move(people))
      .nest("invitations", list(all.invitations, invitation_line))
      .nest("links", list(all.links, link_line))
      .done();
}

Json offer(const services::Invitation& invitation, const std::string& club_name) {
  return Object()
      .put("club", invitation.club)
      .put("club_name", club_name)
      .put("role", services::name(invitation.role))
      .put("by", invitation.by)
      .put("ends", instant(invitation.ends))
      .done();
}

Json new_invitation(const services::Invitation& invitation, const std::string& url,
                    const std::string& picture) {
  return Object()
      .put("id", invitation.id)
      .put("role", services::name(invitation.role))
      .put("ends", instant(invitation.ends))
      .put("url", url)
      .put("scan_code", picture)
      .done();
}

Json new_link(const services::ReadingLink& link, const std::string& url) {
  return Object()
      .put("id", link.id)
      .put("label", link.label)
      .put("ends", instant(link.ends))
      .put("url", url)
      .done();
}

} // namespace baize::answers
