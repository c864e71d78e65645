#pragma once

#include "session.h"

namespace baize::cli {

// Each adds one command with its options; what it does runs when it is called.
void add_import(CLI::App& app, Session& session);
void add_export(CLI::App& app, Session& session);
void add_photos(CLI::App& app, Session& session);
void add_serve(CLI::App& app, Session& session);
void add_report(CLI::App& app, Session& session);
void add_season(CLI::App& app, Session& session);
void add_recovery(CLI::App& app, Session& session);
void add_speed(CLI::App& app, Session& session);
void add_score(CLI::App& app, Session& session);
void add_weather(CLI::App& app, Session& session);
void add_backup(CLI::App& app, Session& session);
void add_restore(CLI::App& app, Session& session);
void add_doctor(CLI::App& app, Session& session);
void add_clubs(CLI::App& app, Session& session);
void add_greens(CLI::App& app, Session& session);
void add_visits(CLI::App& app, Session& session);
void add_trial(CLI::App& app, Session& session);
void add_observers(CLI::App& app, Session& session);
void add_consistency(CLI::App& app, Session& session);
void add_methods(CLI::App& app, Session& session);
void add_people(CLI::App& app, Session& session);

} // namespace baize::cli
