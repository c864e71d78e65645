// Serves the pages.
#include "commands.h"

namespace baize::cli {

namespace {

void start(Session& session, const ServeSettings& options) {
  ServeSettings settings = options;
  settings.database = session.database_path();
  settings.tls = settings.tls || !settings.certificate.empty();
  if (settings.address.empty()) { // by https for phones: on every address of this machine
    settings.address = settings.tls ? "0.0.0.0" : "127.0.0.1";
  }
  if (const auto served = session.ports.serve(settings, session.out); !served) {
    session.refuse(served.error());
  }
}

void add_secure(CLI::App& command, ServeSettings& options) {
  CLI::Option* tls = command.add_flag(
      "--tls", options.tls,
      "By https, on every address unless --address says otherwise: phones keep the page for the "
      "green only then. Makes an authority of its own, which phones are told to trust");
  CLI::Option* certificate =
      command
          .add_option("--certificate", options.certificate,
                      "By https with a certificate of one's own, PEM, those between it and its "
                      "authority after it")
          ->type_name("FILE");
  CLI::Option* key =
      command.add_option("--key", options.key, "Its private key, PEM")->type_name("FILE");
  certificate->needs(key);
  key->needs(certificate);
  command
      .add_option("--name", options.names,
                  "A name by which others reach this machine; the first is the one for phones")
      ->type_name("NAME");
  command
      .add_option("--http-port", options.http_port,
                  "With https, a further port that shows the way there: 80, so that nobody needs "
                  "to type a port")
      ->type_name("PORT");
  CLI::Option* proxy = command.add_flag(
      "--behind-proxy", options.behind_proxy,
      "A proxy on this machine serves https under --name, and is believed who asks");
  proxy->excludes(tls);
  proxy->excludes(certificate);
}

} // namespace

void add_serve(CLI::App& app, Session& session) {
  auto options = std::make_shared<ServeSettings>();
  constexpr std::uint16_t kPort = 8417;
  options->port = kPort;
  options->address.clear();
  CLI::App* command = app.add_subcommand(
      "serve", "Show the greens in the browser, on this machine only unless told otherwise");
  command->add_option("--port", options->port, "The port; 0 takes any free one")
      ->capture_default_str()
      ->type_name("PORT");
  add_secure(*command, *options);
  command->add_option("--log", options->log, "One line for each answer, to the error stream")
      ->check(CLI::IsMember({"lines", "json", "none"}))
      ->capture_default_str()
      ->type_name("KIND");
  command->add_flag("--metrics-for-all", options->metrics_for_all,
                    "Show /metrics to other machines too");
  command
      ->add_option("--address", options->address,
                   "The address to listen on, 127.0.0.1 where none is given. On any but this "
                   "machine's own, people sign in")
      ->type_name("ADDRESS");
  command->add_flag("--demo", options->demo, "An invented club, in memory only");
  auto* people =
      command->add_flag("--people", options->people, "People sign in, on this machine too");
  command
      ->add_flag("--anyone-may-read-and-write", options->anyone,
                 "Nobody signs in: whoever reaches the address can read and write everything, "
                 "there is no password")
      ->excludes(people);
  on_call(*command, session, options, start);
}

} // namespace baize::cli
