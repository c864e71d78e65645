#pragma once

#include "baize/services/people_port.h"
#include "database.h"

#include <functional>
#include <memory>

namespace baize::store_sqlite {

/// Runs a piece of work in one transaction of the store.
using InTransaction = std::function<units::Result<int>(const std::function<void(Connection&)>&)>;

/// services::PeopleStore on the tables of people.
std::unique_ptr<services::PeopleStore> make_people_store(InTransaction write, InTransaction read);

} // namespace baize::store_sqlite
