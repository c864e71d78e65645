// Serves the pages.
#include "commands.h"

namespace baize::cli {

namespace {

void start(Session& session, const ServeSettings& options) {
  ServeSettings settings = options;
  settings.database = session.database_path();
  if (const auto served = session.ports.serve(settings, session.out); !served) {
    session.refuse(served.error());
  }
}

} // namespace

void add_serve(CLI::App& app, Session& session) {
  auto options = std::make_shared<ServeSettings>();
  constexpr std::uint16_t kPort = 8417;
  options->port = kPort;
  CLI::App* command = app.add_subcommand(
      "serve", "Show the greens in the browser, on this machine only unless told otherwise");
  command->add_option("--port", options->port, "The port; 0 takes any free one")
      ->capture_default_str()
      ->type_name("PORT");
  command
      ->add_option("--address", options->address,
                   "The address to listen on. Whoever reaches it can read and write: there is no "
                   "password")
      ->capture_default_str()
      ->type_name("ADDRESS");
  command->add_flag("--demo", options->demo, "An invented club, in memory only");
  on_call(*command, session, options, start);
}

} // namespace baize::cli
