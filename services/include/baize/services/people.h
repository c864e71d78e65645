#pragma once

#include "baize/services/people_port.h"
#include "baize/services/secrets_port.h"
#include "baize/services/tries.h"

#include <functional>
#include <mutex>
#include <string>
#include <vector>

namespace baize::services {

inline constexpr Seconds kDay = 86'400;

/// How long things hold, and how many there may be.
struct PeopleRules {
  Seconds idle = 45 * kDay;   ///< a session not used for so long is over
  Seconds whole = 365 * kDay; ///< and one so old is, used or not
  Seconds seen_step = 3'600;  ///< use is written down no more often
  Seconds invitation = 7 * kDay;
  int most_link_days = 400;
  int most_open = 100; ///< invitations, and links, of one club
  TriesRules by_address{20, 2, 900, kDay, 10'000};
  /// A short longest wait: whoever tries a stranger's name keeps that person out.
  TriesRules by_name{5, 2, 60, kDay, 10'000};
};

/// A session just begun.
struct Begun {
  std::string token; ///< for the cookie; told this once
  Caller caller;
  Seconds ends = 0;
};

/// A token just made, told this once.
template <class T> struct Made {
  T kept;
  std::string token;
};

struct PersonLine {
  Person person;
  Role role = Role::reader;
  std::vector<SessionOf> sessions;
};
/// What whoever keeps a club's people sees: nothing of other clubs.
struct ClubPeople {
  std::vector<PersonLine> people;
  std::vector<Invitation> invitations;
  std::vector<ReadingLink> links;
};

/// Trimmed, 1 to 60 bytes, no control characters. Refuses "bad_name".
units::Result<std::string> person_name(std::string_view text);
/// The form in which two names are compared: letters A to Z as a to z.
std::string name_key(std::string_view name);
/// 10 characters or more, 200 bytes at most. Refuses "bad_password".
units::Result<void> check_password(std::string_view password);
/// RFC 3339 in UTC.
std::string instant(Seconds at);

/// Signing in, and who may do what. Which role may do what is asked of Caller;
/// here callers are already allowed to do what they ask. Safe from many threads.
///
/// Refusals: "wrong_sign_in", "too_many_tries", "too_many_sign_ins",
/// "no_such_invitation", "no_such_link", "no_such_person", "no_such_session",
/// "name_taken", "bad_name", "bad_password", "bad_role", "bad_label", "bad_days",
/// "last_head_greenkeeper", "too_many_open", and the store's own.
class People {
 public:
  template <class T> using Result = units::Result<T>;
  People(PeopleStore& store, Secrets& secrets, std::function<Seconds()> now,
         PeopleRules rules = {});

  /// An unknown name costs the same work, and gets the same answer, as a wrong password.
  Result<Begun> sign_in(const std::string& name, const std::string& password,
                        const std::string& device, const std::string& address);
  /// Opens a link for reading. Refuses "no_such_link".
  Result<Begun> open_link(const std::string& token, const std::string& device,
                          const std::string& address);
  /// Whose session it is; nobody where it is unknown, cut off or over.
  Result<Caller> caller(const std::string& token);
  Result<void> sign_out(const std::string& token);
  /// Seconds until a try from this address, under this name, is looked at.
  Seconds wait(const std::string& name, const std::string& address);

  Result<std::vector<SessionOf>> sessions(const std::string& person);
  /// Refuses "no_such_session".
  Result<void> end_session(const std::string& person, const std::string& session);

  Result<ClubPeople> of_club(const std::string& club);
  /// Refuses "no_such_person" for one who is not of the club.
  Result<void> set_role(const std::string& club, const std::string& person, Role role);
  Result<void> take_out(const std::string& club, const std::string& person);
  Result<void> cut_off(const std::string& club, const std::string& person,
                       const std::string& session);

  Result<Made<Invitation>> invite(const std::string& club, Role role, const std::string& by);
  Result<void> end_invitation(const std::string& club, const std::string& id);
  Result<Invitation> look_at(const std::string& token, const std::string& address);
  /// A new account by the invitation, signed in.
  Result<Begun> accept(const std::string& token, const std::string& name,
                       const std::string& password, const std::string& device,
                       const std::string& address);
  /// The role of the invitation for a person who is signed in.
  Result<void> accept_as(const std::string& token, const std::string& person,
                         const std::string& address);

  Result<Made<ReadingLink>> make_link(const std::string& club, const std::string& label, int days,
                                      const std::string& by);
  Result<void> end_link(const std::string& club, const std::string& id);

  /// A new account, without an invitation. `role` at `club`.
  Result<Person> add(const std::string& name, const std::string& password, const std::string& club,
                     Role role);
  Result<void> set_password(const std::string& person, const std::string& password);

 private:
  Result<Begun> begin(SessionOf session, Caller caller);
  /// An account that is not kept yet. Refuses "bad_name" and "bad_password".
  Result<Person> new_person(const std::string& name, const std::string& password,
                            const std::string& club, Role role);
  /// Counts a try; refuses "too_many_tries".
  Result<void> count_try(const std::string& address, const std::string& key);
  void good_try(const std::string& address, const std::string& key);
  Result<Invitation> valid(const std::string& token, const std::string& address);
  /// Refuses "no_such_person" for one who is not of the club.
  Result<void> need_of_club(const std::string& club, const std::string& person);
  Result<std::string> hash_of_nobody();

  PeopleStore& store_;
  Secrets& secrets_;
  std::function<Seconds()> now_;
  PeopleRules rules_;
  std::mutex mutex_;
  Tries by_address_;
  Tries by_name_;
  std::string hash_of_nobody_;
};

} // namespace baize::services
