#pragma once

#include "baize/services/people_port.h"
#include "in_transaction.h"

#include <memory>

namespace baize::store_sqlite {

/// services::PeopleStore on the tables of people.
std::unique_ptr<services::PeopleStore> make_people_store(InTransaction write, InTransaction read);

} // namespace baize::store_sqlite
