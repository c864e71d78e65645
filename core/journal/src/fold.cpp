#include "baize/journal/fold.h"

#include "graph.h"

#include <algorithm>
#include <map>
#include <tuple>

namespace baize::journal {
namespace {

Thing fold_thing(const std::vector<const Entry*>& entries) {
  const Graph graph(entries);
  Thing thing;
  thing.kind = entries.front()->kind;
  thing.id = entries.front()->thing;
  thing.heads = graph.heads();
  thing.missing = graph.missing();
  std::map<std::string_view, std::vector<std::size_t>> setters;
  for (std::size_t i = 0; i < entries.size(); ++i) {
    for (const Member& member : entries[i]->set) {
      auto& of = setters[member.name];
      if (of.empty() || of.back() != i) {
        of.push_back(i);
      }
    }
  }
  for (const auto& [name, among] : setters) {
    Field field;
    field.name = name;
    for (const std::size_t one : graph.standing(among)) {
      const Entry& entry = *entries[one];
      field.standing.push_back({entry.id, *find(entry.set, name), entry.by, entry.at});
    }
    thing.fields.push_back(std::move(field));
  }
  return thing;
}

} // namespace

bool Field::conflict() const {
  return std::any_of(standing.begin(), standing.end(),
                     [&](const Standing& one) { return !(one.value == standing.back().value); });
}

const Value* Thing::find(std::string_view field) const {
  const auto at =
      std::lower_bound(fields.begin(), fields.end(), field,
                       [](const Field& one, std::string_view wanted) { return one.name < wanted; });
  const bool there = at != fields.end() && at->name == field && !at->value().nothing();
  return there ? &at->value() : nullptr;
}

bool Thing::removed() const {
  const Value* said = find("removed");
  return said != nullptr && said->flag() != nullptr && *said->flag();
}

int Thing::conflicts() const {
  return static_cast<int>(std::count_if(fields.begin(), fields.end(),
                                        [](const Field& field) { return field.conflict(); }));
}

const Thing* Folded::find(Kind kind, std::string_view id) const {
  const auto key = std::pair(kind, id);
  const auto at =
      std::lower_bound(things.begin(), things.end(), key, [](const Thing& one, const auto& wanted) {
        return std::pair(one.kind, std::string_view(one.id)) < wanted;
      });
  return at != things.end() && at->kind == kind && at->id == id ? &*at : nullptr;
}

Folded fold(std::vector<Entry> entries) {
  for (Entry& entry : entries) {
    entry = canonical(std::move(entry));
  }
  std::sort(entries.begin(), entries.end(), before);
  std::map<std::pair<Kind, std::string_view>, std::vector<const Entry*>> things;
  for (std::size_t i = 0; i < entries.size(); ++i) {
    if (i + 1 == entries.size() || entries[i + 1].id != entries[i].id) {
      things[{entries[i].kind, entries[i].thing}].push_back(&entries[i]);
    }
  }
  Folded folded;
  for (const auto& [key, of] : things) {
    folded.things.push_back(fold_thing(of));
  }
  return folded;
}

std::vector<Conflict> conflicts(const Folded& folded) {
  std::vector<Conflict> all;
  for (const Thing& thing : folded.things) {
    for (const Field& field : thing.fields) {
      if (field.conflict()) {
        all.push_back({thing.kind, thing.id, field.name, field.standing});
      }
    }
  }
  return all;
}

} // namespace baize::journal
