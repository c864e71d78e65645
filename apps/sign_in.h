#pragma once

#include "baize/cli/ports.h"
#include "baize/secrets/sodium.h"
#include "baize/services/people.h"

#include <memory>

namespace baize::apps {

/// Secrets and people of a server where people sign in; both null where nobody does.
struct SignIn {
  std::unique_ptr<secrets::Sodium> secrets;
  std::unique_ptr<services::People> people;
};

/// Refuses "no_people" where people must sign in and nobody has an account.
units::Result<SignIn> sign_in_of(services::Store& store, const cli::ServeSettings& settings);

} // namespace baize::apps
