import type { Book } from "../data/book";
import type { VisitFields } from "../data/entries";

export type VisitStanding = "open" | "kept" | "sent" | "accepted" | "refused";

export interface VisitLine {
  visit: string;
  fields: VisitFields;
  state: VisitStanding;
  reasons: string[];
  conflicts: number;
  waiting: number;
}

/** This phone's visits, newest first, and how far each has come. */
export function visitLines(book: Book, onTheirWay: ReadonlySet<string>): VisitLine[] {
  const own = new Map<string, string[]>();
  for (const { entry } of book.rows) {
    const visit = entry.kind === "visit" ? entry.thing : String(book.thing(entry.thing)?.values.visit ?? "");
    if (visit) own.set(visit, [...(own.get(visit) ?? []), entry.id]);
  }
  return [...own]
    .flatMap(([visit, ids]) => {
      const thing = book.thing(visit);
      if (!thing || thing.kind !== "visit" || thing.values.removed === true) return [];
      return [lineOf(book, visit, thing.values as VisitFields, ids, onTheirWay)];
    })
    .sort((a, b) => (a.visit < b.visit ? 1 : -1));
}

function lineOf(book: Book, visit: string, fields: VisitFields, ids: string[], onTheirWay: ReadonlySet<string>): VisitLine {
  const waiting = ids.filter((id) => !book.acknowledged.has(id));
  const refused = ids.flatMap((id) => {
    const said = book.acknowledged.get(id);
    return said && !said.kept ? [said.sentence ?? ""] : [];
  });
  const server = book.visitStates.get(visit);
  const reasons = [...refused, ...(server?.state === "refused" ? server.problems : [])];
  let state: VisitStanding = "accepted";
  if (waiting.some((id) => onTheirWay.has(id))) state = "sent";
  else if (fields.done !== true) state = "open";
  else if (waiting.length > 0 || !server) state = "kept";
  else if (reasons.length > 0) state = "refused";
  else if (server.state === "open") state = "kept";
  return { visit, fields, state, reasons, conflicts: server?.conflicts ?? 0, waiting: waiting.length };
}

/** Visits, readings and works of this phone that the records do not hold, and the reason is known. */
export function refusals(book: Book, onTheirWay: ReadonlySet<string>): number {
  const refused = new Set(visitLines(book, onTheirWay).filter((line) => line.state === "refused").map((line) => line.visit));
  for (const { entry } of book.rows) {
    if (entry.kind !== "reading" && entry.kind !== "work") continue;
    const taken = book.thing(entry.thing)?.values.removed === true;
    if (!taken && (book.visitStates.get(entry.thing)?.state === "refused" || book.acknowledged.get(entry.id)?.kept === false)) refused.add(entry.thing);
  }
  return refused.size;
}
