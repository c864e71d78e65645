#pragma once

#include "baize/services/photos_port.h"
#include "in_transaction.h"

#include <memory>

namespace baize::store_sqlite {

/// services::PhotoStore on the table of photos and their entries.
std::unique_ptr<services::PhotoStore> make_photo_store(InTransaction write, InTransaction read);

} // namespace baize::store_sqlite
