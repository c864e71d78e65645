#pragma once

#include "baize/services/roles.h"
#include "baize/units/problem.h"

#include <cstdint>
#include <map>
#include <optional>
#include <string>
#include <vector>

namespace baize::services {

/// Seconds since 1970-01-01T00:00:00Z.
using Seconds = std::int64_t;

/// An account.
struct Person {
  std::string id;
  std::string name;
  std::string name_key;      ///< the name as two are compared; no two are the same
  std::string password_hash; ///< never the password
  Seconds added = 0;
  std::map<std::string, Role> clubs;
};

/// Somebody signed in on one device, or a link opened on one.
struct SessionOf {
  std::string id;
  std::string person; ///< empty where it was opened by a link
  std::string link;   ///< empty where a person signed in
  std::string device;
  Seconds began = 0;
  Seconds seen = 0;
  Seconds ends = 0; ///< at the latest
};

struct Invitation {
  std::string id;
  std::string club;
  Role role = Role::reader;
  std::string by; ///< name of who invites
  Seconds made = 0;
  Seconds ends = 0;
};

/// Lets whoever has it read one club.
struct ReadingLink {
  std::string id;
  std::string club;
  std::string label; ///< whom it is for
  std::string by;
  Seconds made = 0;
  Seconds ends = 0;
  int opened = 0; ///< sessions opened by it
};

/// A session with whoever it is of; one of the two.
struct SessionFound {
  SessionOf session;
  std::optional<Person> person;
  std::optional<ReadingLink> link;
};

/// Whoever asks as this person, or by this link; the session is not known yet.
Caller caller_as(const Person& person);
Caller caller_as(const ReadingLink& link);

/// Keeps who may do what. Of every token only its digest is kept. Each call is
/// one transaction. Nothing here is a record: rows are changed and removed, and
/// the store's change number does not move.
class PeopleStore {
 public:
  template <class T> using Result = units::Result<T>;
  PeopleStore() = default;
  PeopleStore(const PeopleStore&) = delete;
  PeopleStore& operator=(const PeopleStore&) = delete;
  virtual ~PeopleStore() = default;

  virtual Result<std::vector<Person>> people() = 0; ///< by name
  virtual Result<std::optional<Person>> person_named(const std::string& name_key) = 0;
  /// Refuses "name_taken", and "no_such_club" for a role at a club not here.
  virtual Result<void> add_person(const Person& person) = 0;
  /// No role: takes the person out of the club. Refuses "no_such_person",
  /// "no_such_club" and, with `keep_one`, "last_head_greenkeeper" where the club
  /// would be left without one.
  virtual Result<void> set_role(const std::string& person, const std::string& club,
                                std::optional<Role> role, bool keep_one) = 0;
  /// With roles and sessions. Refuses "no_such_person".
  virtual Result<void> remove_person(const std::string& person) = 0;
  /// Ends every session of the person. Refuses "no_such_person".
  virtual Result<void> set_password(const std::string& person, const std::string& hash) = 0;

  virtual Result<void> add_session(const SessionOf& session, const std::string& digest) = 0;
  virtual Result<std::optional<SessionFound>> session(const std::string& digest) = 0;
  virtual Result<void> seen(const std::string& session, Seconds at) = 0;
  virtual Result<std::vector<SessionOf>> sessions(const std::string& person) = 0;
  /// Ends one session of a person, or with an empty identifier all of them.
  /// False: there was none.
  virtual Result<bool> end_session(const std::string& person, const std::string& session) = 0;
  virtual Result<void> end_session_of(const std::string& digest) = 0;
  /// Removes sessions not seen since `seen_after` or over at `now`, and
  /// invitations and links over at `now`.
  virtual Result<void> tidy(Seconds now, Seconds seen_after) = 0;

  /// Refuses "no_such_club", and "too_many_open" where a club has `most` already.
  virtual Result<void> add_invitation(const Invitation& invitation, const std::string& digest,
                                      int most) = 0;
  virtual Result<std::vector<Invitation>> invitations(const std::string& club) = 0;
  virtual Result<std::optional<Invitation>> invitation(const std::string& digest) = 0;
  virtual Result<bool> end_invitation(const std::string& club, const std::string& id) = 0;
  /// Uses an invitation up and gives its role: to a person added with it, or to
  /// one that is there (`person` then has an id only). Refuses "no_such_invitation"
  /// where it was used, taken back or is over at `now`, and "name_taken".
  virtual Result<void> accept(const std::string& digest, const Person& person, bool add,
                              Seconds now) = 0;

  /// Refuses "no_such_club", and "too_many_open" where a club has `most` already.
  virtual Result<void> add_link(const ReadingLink& link, const std::string& digest, int most) = 0;
  virtual Result<std::vector<ReadingLink>> links(const std::string& club) = 0;
  virtual Result<std::optional<ReadingLink>> link(const std::string& digest) = 0;
  /// With every session opened by it.
  virtual Result<bool> end_link(const std::string& club, const std::string& id) = 0;
};

} // namespace baize::services
