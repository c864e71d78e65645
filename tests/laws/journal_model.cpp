#include "laws/journal_model.h"

namespace journal_model {

std::uint64_t Chance::next() {
  std::uint64_t z = (state_ += 0x9e3779b97f4a7c15U);
  z = (z ^ (z >> 30U)) * 0xbf58476d1ce4e5b9U;
  z = (z ^ (z >> 27U)) * 0x94d049bb133111ebU;
  return z ^ (z >> 31U);
}

void Server::take(const std::vector<Entry>& entries) {
  for (const Entry& entry : entries) {
    if (ids.insert(entry.id).second) {
      arrived.push_back(entry);
    }
  }
}

const Entry& Phone::write(const std::string& thing, Value::Members set) {
  Entry entry;
  // The clock's part of the id comes first, so that ids of a phone that runs
  // behind are smaller whatever it writes.
  const std::string digits = std::to_string(5000000 + clock_ + ++last_);
  entry.id = "0190" + digits.substr(0, 4) + "-" + digits.substr(3) + "-7000-8000-00000000000" +
             std::to_string(number_);
  entry.phone = "0190a0b0-0000-7000-8000-00000080000" + std::to_string(number_);
  entry.at = "2026-05-03T07:00:00Z";
  entry.kind = Kind::roll;
  entry.thing = thing;
  entry.set = sorted(std::move(set));
  const Folded folded = fold(of(thing));
  if (const Thing* found = folded.find(Kind::roll, thing)) {
    entry.over = found->heads;
  }
  const std::string id = entry.id;
  waiting_.insert(id);
  return entries_.emplace(id, canonical(std::move(entry))).first->second;
}

void Phone::meet(Server& server, Chance& chance, bool reliable) {
  const auto lost = [&] { return !reliable && chance.one_in(4); };
  std::vector<Entry> sent;
  for (const std::string& id : waiting_) {
    if (!reliable && chance.one_in(5)) {
      continue; // the phone was put away in the middle
    }
    sent.push_back(entries_.at(id));
    if (chance.one_in(3)) {
      sent.push_back(entries_.at(id));
    }
  }
  chance.shuffle(sent);
  if (!sent.empty() && !lost()) {
    server.take(sent);
    if (!lost()) { // the receipt arrives
      for (const Entry& entry : sent) {
        waiting_.erase(entry.id);
      }
    }
  }
  if (!lost()) {
    std::size_t until = server.arrived.size();
    if (!reliable && until > fetched_) {
      until =
          fetched_ + static_cast<std::size_t>(chance.below(static_cast<int>(until - fetched_ + 1)));
    }
    for (std::size_t i = fetched_; i < until; ++i) {
      entries_.emplace(server.arrived[i].id, server.arrived[i]);
    }
    if (!lost()) { // else the same is fetched again
      fetched_ = until;
    }
  }
}

std::vector<Entry> Phone::known() const {
  std::vector<Entry> all;
  for (const auto& [id, entry] : entries_) {
    all.push_back(entry);
  }
  return all;
}

std::vector<Entry> Phone::of(const std::string& thing) const {
  std::vector<Entry> all;
  for (const auto& [id, entry] : entries_) {
    if (entry.thing == thing) {
      all.push_back(entry);
    }
  }
  return all;
}

std::map<std::string, std::map<std::string, std::set<std::string>>>
standing_by_the_rule(const std::vector<Entry>& entries) {
  std::map<std::string, const Entry*> by_id;
  for (const Entry& entry : entries) {
    by_id.emplace(entry.id, &entry);
  }
  // Reached through `over`, by as many rounds as there are entries.
  std::map<std::string, std::set<std::string>> reached;
  for (const auto& [id, entry] : by_id) {
    reached[id].insert(entry->over.begin(), entry->over.end());
  }
  for (bool grew = true; grew;) {
    grew = false;
    for (auto& [id, below] : reached) {
      const std::set<std::string> now = below;
      for (const std::string& next : now) {
        if (const auto further = reached.find(next); further != reached.end()) {
          for (const std::string& one : further->second) {
            grew = below.insert(one).second || grew;
          }
        }
      }
    }
  }
  std::map<std::string, std::map<std::string, std::set<std::string>>> standing;
  for (const auto& [id, entry] : by_id) {
    for (const Member& member : entry->set) {
      bool superseded = false;
      for (const auto& [other, over] : by_id) {
        superseded = superseded || (over->thing == entry->thing && find(over->set, member.name) &&
                                    reached[other].contains(id) && other != id);
      }
      if (!superseded) {
        standing[entry->thing][member.name].insert(id);
      }
    }
  }
  return standing;
}

} // namespace journal_model
