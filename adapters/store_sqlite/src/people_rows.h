#pragma once

#include "baize/services/people_port.h"
#include "database.h"

namespace baize::store_sqlite {

// People and what lets them in, inside one transaction. They refuse by Failure.
std::vector<services::Person> all_people(Connection& db);
std::optional<services::Person> person_named(Connection& db, const std::string& name_key);
void add_person(Connection& db, const services::Person& person);
void set_role(Connection& db, const std::string& person, const std::string& club,
              std::optional<services::Role> role, bool keep_one);
void remove_person(Connection& db, const std::string& person);
void set_password(Connection& db, const std::string& person, const std::string& hash);

void add_session(Connection& db, const services::SessionOf& session, const std::string& digest);
std::optional<services::SessionFound> find_session(Connection& db, const std::string& digest);
std::vector<services::SessionOf> sessions_of(Connection& db, const std::string& person);
bool end_session(Connection& db, const std::string& person, const std::string& session);
void tidy_people(Connection& db, services::Seconds now, services::Seconds seen_after);

void add_invitation(Connection& db, const services::Invitation& invitation,
                    const std::string& digest, int most);
std::vector<services::Invitation> invitations_of(Connection& db, const std::string& club);
std::optional<services::Invitation> find_invitation(Connection& db, const std::string& digest);
void accept_invitation(Connection& db, const std::string& digest, const services::Person& person,
                       bool add, services::Seconds now);

void add_link(Connection& db, const services::ReadingLink& link, const std::string& digest,
              int most);
std::vector<services::ReadingLink> links_of(Connection& db, const std::string& club);
std::optional<services::ReadingLink> find_link(Connection& db, const std::string& digest);
/// Removes an invitation or a link of a club; false where there was none.
bool remove_of_club(Connection& db, const char* table, const std::string& club,
                    const std::string& id);

/// Accounts that nobody can sign in to, and roles at no club: somebody has
/// altered them from outside.
std::int64_t unsound_people(Connection& db);

} // namespace baize::store_sqlite
