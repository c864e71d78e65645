import type { Book } from "./book";
import type { Deed, Draft, Entry, Row } from "./entries";
import { foldThing } from "./fold";

/** The last touch among `things` that has not been taken back. */
export function lastTouch(book: Book, things: ReadonlySet<string>): { touch: string; deed: Deed; rows: Row[] } | undefined {
  const taken = new Set(book.rows.flatMap((row) => (row.undoes ? [row.undoes] : [])));
  for (let at = book.rows.length - 1; at >= 0; at -= 1) {
    const row = book.rows[at] as Row;
    if (row.undoes || taken.has(row.touch) || !things.has(row.entry.thing)) continue;
    return { touch: row.touch, deed: row.deed, rows: book.rows.filter((one) => one.touch === row.touch) };
  }
  return undefined;
}

/**
 * The entries that take a touch back: every field it set goes back to what it
 * was without that touch, and a thing it began is taken out.
 */
export function takenBack(book: Book, rows: Row[]): Draft[] {
  const gone = new Set(rows.map((row) => row.entry.id));
  const byThing = new Map<string, Entry[]>();
  for (const { entry } of rows) byThing.set(entry.thing, [...(byThing.get(entry.thing) ?? []), entry]);
  return [...byThing].map(([thing, entries]) => {
    const first = entries[0] as Entry;
    const earlier = under(first, book.entriesOf(thing)).filter((entry) => !gone.has(entry.id));
    if (earlier.length === 0) return { kind: first.kind, thing, by: first.by, set: { removed: true } };
    const before = foldThing([...earlier]).values;
    const fields = new Set(entries.flatMap((entry) => Object.keys(entry.set)));
    const set = Object.fromEntries([...fields].map((field) => [field, field in before ? before[field] : null]));
    return { kind: first.kind, thing, by: first.by, set };
  });
}

/** What was known of its thing when an entry was written. Clocks of two phones say nothing of that; `over` does. */
function under(entry: Entry, all: readonly Entry[]): Entry[] {
  const known = new Set<string>();
  const open = [...entry.over];
  for (let id = open.pop(); id !== undefined; id = open.pop()) {
    if (known.has(id)) continue;
    known.add(id);
    open.push(...(all.find((one) => one.id === id)?.over ?? []));
  }
  return all.filter((one) => known.has(one.id));
}
