#pragma once

#include "baize/answers/json.h"
#include "baize/services/people.h"
#include "baize/services/store_port.h"

namespace baize::answers {

/// Who asks, and what that caller may do at each of these clubs.
Json session(const services::Caller& caller, const std::vector<services::ClubName>& clubs);
Json sessions(const std::vector<services::SessionOf>& all, const services::Caller& caller);
Json to_json(const services::ClubPeople& all, const services::Caller& caller);
Json offer(const services::Invitation& invitation, const std::string& club_name);
/// `picture`: the link as SVG to scan, or empty.
Json new_invitation(const services::Invitation& invitation, const std::string& url,
                    const std::string& picture);
Json new_link(const services::ReadingLink& link, const std::string& url);

} // namespace baize::answers
