import type { Entry, Fields, Kind } from "./entries";

export interface Version {
  entry: string;
  value: unknown;
  by: string;
  at: string;
}

/** What all entries of one thing say together. */
export interface Thing {
  kind: Kind;
  thing: string;
  values: Fields;
  /** fields that stand in several versions until a person chooses */
  conflicts: { field: string; versions: Version[] }[];
  /** entries that no other supersedes: what the next entry is written over */
  heads: string[];
}

const same = (a: unknown, b: unknown) => JSON.stringify(a) === JSON.stringify(b);

/**
 * The same rule as core/journal, which the server uses: of the entries that set
 * a field those stand that no other of them supersedes; of several that differ
 * the one with the greatest id is used. It is here a second time because the
 * screen must be right before the core has loaded, and on a phone that cannot
 * load it; a test holds the two against each other.
 */
export function foldThing(entries: Entry[]): Thing {
  const byId = new Map(entries.map((entry) => [entry.id, entry]));
  const first = entries[0] as Entry;
  const heads = new Set(byId.keys());
  for (const entry of byId.values()) for (const id of entry.over) heads.delete(id);
  const setters = new Map<string, Entry[]>();
  for (const entry of byId.values()) {
    for (const field of Object.keys(entry.set)) setters.set(field, [...(setters.get(field) ?? []), entry]);
  }
  const values: Fields = {};
  const conflicts: Thing["conflicts"] = [];
  for (const [field, all] of setters) {
    const standing = all.length === 1 ? all : standingOf(all, byId);
    const newest = standing.reduce((a, b) => (a.id > b.id ? a : b));
    values[field] = newest.set[field];
    if (standing.some((entry) => !same(entry.set[field], values[field]))) {
      const versions = standing.map((entry) => ({ entry: entry.id, value: entry.set[field], by: entry.by, at: entry.at }));
      conflicts.push({ field, versions: versions.sort((a, b) => (a.entry < b.entry ? -1 : 1)) });
    }
  }
  return { kind: first.kind, thing: first.thing, values, conflicts, heads: [...heads].sort() };
}

function standingOf(setters: Entry[], byId: Map<string, Entry>): Entry[] {
  const under = new Set<string>();
  const walk = (ids: string[]) => {
    const open = [...ids];
    for (let id = open.pop(); id !== undefined; id = open.pop()) {
      if (under.has(id)) continue;
      under.add(id);
      open.push(...(byId.get(id)?.over ?? []));
    }
  };
  for (const entry of setters) walk(entry.over);
  const standing = setters.filter((entry) => !under.has(entry.id));
  // Entries that name each other in a circle cannot come from a phone; then all stand.
  return standing.length > 0 ? standing : setters;
}
