// Who may do what, from the machine that keeps the database.
#include "people.h"

#include "baize/answers/people.h"
#include "commands.h"
#include "table.h"

#include <algorithm>

namespace baize::cli {

std::optional<Desk> desk_of(Session& session) {
  Desk desk;
  desk.store = open_store(session);
  if (!desk.store) {
    return std::nullopt;
  }
  services::PeopleStore* kept = desk.store->people();
  if (kept == nullptr || session.ports.secrets == nullptr) {
    session.refuse({"no_such_service", "people", "", "asked of a database that keeps them", ""});
    return std::nullopt;
  }
  desk.people =
      std::make_unique<services::People>(*kept, *session.ports.secrets, session.ports.seconds);
  return desk;
}

units::Result<std::string> named_club(services::Store& store, const std::string& said) {
  if (said.empty()) {
    return only_club(store);
  }
  const auto clubs = store.clubs();
  if (!clubs) {
    return tl::unexpected(clubs.error());
  }
  const bool here = std::any_of(clubs->begin(), clubs->end(),
                                [&](const services::ClubName& club) { return club.id == said; });
  return here ? units::Result<std::string>(said)
              : units::refuse("no_such_club", "club", said, "a club in the database");
}

void club_option(CLI::App& command, const Options& options) {
  command.add_option("--club", options->club, "The club; not needed where there is one only")
      ->type_name("CLUB");
}
void role_option(CLI::App& command, const Options& options, const char* more) {
  command
      .add_option("--role", options->role,
                  std::string("reader, observer, agronomist or head_greenkeeper") + more)
      ->required()
      ->type_name("ROLE");
}
CLI::App* command(CLI::App& people, Session& session, const char* name, const char* about,
                  Options options, void (*act)(Session&, const PeopleOptions&)) {
  CLI::App* made = people.add_subcommand(name, about);
  on_call(*made, session, std::move(options), act);
  return made;
}

namespace {

using services::Person;

units::Result<Person> find_person(services::PeopleStore& kept, const std::string& name) {
  auto found = kept.person_named(services::name_key(name));
  if (!found) {
    return tl::unexpected(found.error());
  }
  if (!*found) {
    return units::refuse("no_such_person", "name", name, "one of those that people list shows");
  }
  return std::move(**found);
}

units::Result<std::string> password_of(const Session& session, const PeopleOptions& options) {
  return session.ports.read_password
             ? session.ports.read_password(options.password_from_input)
             : units::refuse("no_password", "password", "", "asked for on a terminal");
}

/// "hill: observer; moor: reader"
std::string roles_text(const Person& person) {
  std::string text;
  for (const auto& [club, role] : person.clubs) {
    text += (text.empty() ? "" : "; ") + club + ": " + std::string(services::name(role));
  }
  return text;
}

answers::Json person_json(const Person& person, const std::vector<services::SessionOf>& sessions) {
  answers::Json clubs = answers::Json::array();
  for (const auto& [club, role] : person.clubs) {
    clubs.push_back(answers::Object().put("club", club).put("role", services::name(role)).done());
  }
  return answers::Object()
      .put("name", person.name)
      .put("added", services::instant(person.added))
      .nest("clubs", std::move(clubs))
      .nest("sessions", answers::sessions(sessions, {})["sessions"])
      .done();
}

void list_people(Session& session, const PeopleOptions& options) {
  const auto desk = desk_of(session);
  if (!desk) {
    return;
  }
  const auto all = desk->store->people()->people();
  if (!all) {
    session.refuse(all.error());
    return;
  }
  Table table({words("name"), words("clubs"), number("sessions"), words("last seen")});
  answers::Json json = answers::Json::array();
  for (const Person& person : *all) {
    if (!options.club.empty() && !person.clubs.contains(options.club)) {
      continue;
    }
    const auto sessions = desk->people->sessions(person.id);
    if (!sessions) {
      session.refuse(sessions.error());
      return;
    }
    json.push_back(person_json(person, *sessions));
    table.add({cell(person.name), cell(roles_text(person)),
               cell(static_cast<int>(sessions->size())),
               sessions->empty() ? Cell{} : cell(services::instant(sessions->front().seen))});
  }
  if (session.shape() == Shape::json) {
    session.print(answers::Object().nest("people", std::move(json)).done());
    return;
  }
  table.print(session);
}

/// Says what was done, in the shape that was asked for.
void say(Session& session, const std::string& sentence) {
  if (session.shape() == Shape::json) {
    session.print(answers::Object().put("done", sentence).done());
  } else {
    session.out << sentence << '\n';
  }
}

/// Runs a step that gives nothing, and says its sentence or its refusal.
void finish(Session& session, const units::Result<void>& done, const std::string& sentence) {
  done ? say(session, sentence) : session.refuse(done.error());
}

void add_person(Session& session, const PeopleOptions& options) {
  const auto desk = desk_of(session);
  if (!desk) {
    return;
  }
  const auto club = named_club(*desk->store, options.club);
  const auto role = services::role_named(options.role);
  const auto name = services::person_name(options.name);
  if (!club || !role || !name) {
    session.refuse(!club ? club.error() : !role ? role.error() : name.error());
    return;
  }
  const auto added = password_of(session, options).and_then([&](const std::string& password) {
    return desk->people->add(options.name, password, *club, *role);
  });
  if (!added) {
    session.refuse(added.error());
    return;
  }
  say(session, added->name + " is " + std::string(services::name(*role)) + " at " + *club + ".");
}

/// Finds the person named, and does something with the account.
template <class F>
void with_person(Session& session, const PeopleOptions& options, const std::string& sentence,
                 const F& work) {
  const auto desk = desk_of(session);
  if (!desk) {
    return;
  }
  const auto person = find_person(*desk->store->people(), options.name);
  if (!person) {
    session.refuse(person.error());
    return;
  }
  finish(session, work(*desk, *person), person->name + sentence);
}

void change_role(Session& session, const PeopleOptions& options) {
  const bool out = options.role == "none";
  with_person(session, options, out ? " is out of the club." : " has that role now.",
              [&](const Desk& desk, const Person& person) -> units::Result<void> {
                const auto club = named_club(*desk.store, options.club);
                const auto role = out ? units::Result<services::Role>(services::Role::reader)
                                      : services::role_named(options.role);
                if (!club || !role) {
                  return tl::unexpected(!club ? club.error() : role.error());
                }
                return desk.store->people()->set_role(
                    person.id, *club, out ? std::nullopt : std::optional(*role), false);
              });
}

void cut_off(Session& session, const PeopleOptions& options) {
  with_person(session, options, " is signed out there from this moment.",
              [&](const Desk& desk, const Person& person) {
                return desk.people->end_session(person.id, options.session);
              });
}

void change_password(Session& session, const PeopleOptions& options) {
  with_person(session, options, " has a new password, and is signed out everywhere.",
              [&](const Desk& desk, const Person& person) {
                return password_of(session, options).and_then([&](const std::string& password) {
                  return desk.people->set_password(person.id, password);
                });
              });
}

void remove_person(Session& session, const PeopleOptions& options) {
  with_person(session, options, " has no account here any more; the records stay.",
              [&](const Desk& desk, const Person& person) {
                return desk.store->people()->remove_person(person.id);
              });
}

void name_option(CLI::App& command, const Options& options) {
  command.add_option("name", options->name, "The person's name, as at the sign-in")
      ->required()
      ->type_name("NAME");
}
void password_option(CLI::App& command, const Options& options) {
  command.add_flag("--password-from-input", options->password_from_input,
                   "Read the password from the standard input, one line, instead of asking");
}
void add_accounts(CLI::App& people, Session& session) {
  const auto options = std::make_shared<PeopleOptions>();
  club_option(*command(people, session, "list", "The accounts, with roles and sessions", options,
                       list_people),
              options);
  CLI::App* add =
      command(people, session, "add", "A new account; asks for its password", options, add_person);
  name_option(*add, options);
  club_option(*add, options);
  role_option(*add, options, "");
  password_option(*add, options);
  CLI::App* role = command(people, session, "role", "Another role at a club", options, change_role);
  name_option(*role, options);
  club_option(*role, options);
  role_option(*role, options, "; none: out of the club");
  CLI::App* password =
      command(people, session, "password", "A new password; ends every session of the account",
              options, change_password);
  name_option(*password, options);
  password_option(*password, options);
  CLI::App* off = command(people, session, "cut-off",
                          "End the sessions of a person, at once: a lost phone", options, cut_off);
  name_option(*off, options);
  off->add_option("--session", options->session, "This one only, by its identifier in list --json")
      ->type_name("ID");
  name_option(*command(people, session, "remove", "Take an account away", options, remove_person),
              options);
}

} // namespace

void add_people(CLI::App& app, Session& session) {
  CLI::App* people =
      app.add_subcommand("people", "Who may do what: accounts, invitations, links for reading");
  people->require_subcommand(1);
  people->fallthrough();
  add_accounts(*people, session);
  add_letting_in(*people, session);
}

} // namespace baize::cli
