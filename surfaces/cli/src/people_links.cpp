// Invitations and links for reading, made where the database is.
#include "files.h"
#include "people.h"

namespace baize::cli {

namespace {

/// Where the pages are, without a slash at the end.
std::string pages_at(const PeopleOptions& options) {
  std::string at = options.at;
  while (!at.empty() && at.back() == '/') {
    at.pop_back();
  }
  return at;
}

units::Result<void> write_picture(const Session& session, const std::string& url,
                                  const std::string& file) {
  if (file.empty()) {
    return {};
  }
  if (!session.ports.scan_code) {
    return units::refuse("no_such_service", "scan code", "", "drawn by a program that can");
  }
  return session.ports.scan_code(url).and_then(
      [&](const std::string& picture) { return write_file(file, picture); });
}

void say_link(Session& session, const std::string& url, services::Seconds ends,
              const std::string& sentence) {
  if (session.shape() == Shape::json) {
    session.print(answers::Object().put("url", url).put("ends", services::instant(ends)).done());
  } else {
    session.out << url << '\n' << sentence << services::instant(ends) << ".\n";
  }
}

void invite(Session& session, const PeopleOptions& options) {
  const auto desk = desk_of(session);
  if (!desk) {
    return;
  }
  const auto club = named_club(*desk->store, options.club);
  const auto role = services::role_named(options.role);
  if (!club || !role) {
    session.refuse(!club ? club.error() : role.error());
    return;
  }
  const auto made = desk->people->invite(*club, *role, session.ports.author);
  if (!made) {
    session.refuse(made.error());
    return;
  }
  const std::string url = pages_at(options) + "/#/+join/" + made->token;
  if (const auto drawn = write_picture(session, url, options.picture); !drawn) {
    session.refuse(drawn.error());
    return;
  }
  say_link(session, url, made->kept.ends,
           "For one person, as " + options.role + " at " + *club + ", until ");
}

void make_link(Session& session, const PeopleOptions& options) {
  const auto desk = desk_of(session);
  if (!desk) {
    return;
  }
  const auto made = named_club(*desk->store, options.club).and_then([&](const std::string& club) {
    return desk->people->make_link(club, options.label, options.days, session.ports.author);
  });
  if (!made) {
    session.refuse(made.error());
    return;
  }
  say_link(session, pages_at(options) + "/#/+link/" + made->token, made->kept.ends,
           "Whoever has it can read the club, and change nothing, until ");
}

void at_option(CLI::App& command, const Options& options) {
  command.add_option("--at", options->at, "Where the pages are, as the other person reaches them")
      ->capture_default_str()
      ->type_name("ADDRESS");
}

} // namespace

void add_letting_in(CLI::App& people, Session& session) {
  const auto options = std::make_shared<PeopleOptions>();
  CLI::App* joining = command(people, session, "invite",
                              "A link by which one person makes an account", options, invite);
  club_option(*joining, options);
  role_option(*joining, options, "");
  at_option(*joining, options);
  joining->add_option("--scan-code", options->picture, "Write the link as a picture to scan, SVG")
      ->type_name("FILE");
  CLI::App* link = command(people, session, "link",
                           "A link for reading one club, for a committee say", options, make_link);
  club_option(*link, options);
  at_option(*link, options);
  link->add_option("--label", options->label, "Whom it is for")->required()->type_name("TEXT");
  link->add_option("--days", options->days, "How long it is good for, 1 to 400")
      ->capture_default_str()
      ->type_name("DAYS");
}

} // namespace baize::cli
