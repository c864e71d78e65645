import type { Book } from "../data/book";
import type { VisitFields } from "../data/entries";
import type { Session } from "./session";

const names = ["hours_since_mowing", "hours_since_rolling", "dew", "wind", "surface"] as const;

/** The conditions of this observer's visit before, on the same day. */
export function sameDayConditions(book: Book, session: Session): { green: string; set: VisitFields } | undefined {
  const here = book.thing(session.visit)?.values as VisitFields | undefined;
  const earlier = book
    .things("visit")
    .filter(({ thing, values }) => thing < session.visit && values.day === here?.day && values.observer === session.observer)
    .sort((a, b) => (a.thing < b.thing ? 1 : -1));
  for (const { values } of earlier) {
    const fields = values as VisitFields;
    const set = Object.fromEntries(names.flatMap((name) => (fields[name] == null ? [] : [[name, fields[name]]])));
    if (Object.keys(set).length > 0) return { green: fields.green ?? "", set };
  }
  return undefined;
}
