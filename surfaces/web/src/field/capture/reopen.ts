import type { Book } from "../data/book";
import { ballsOf, totalsOf, visitFields } from "./balls";
import type { Mode, Session } from "./session";

/** A visit of this phone as the visit at work again; what was taken down is read from its balls. */
export function sessionOf(book: Book, visit: string): Session {
  const fields = visitFields(book, visit);
  const balls = ballsOf(book, visit);
  const totals = totalsOf(book, visit);
  const first = balls[0] ?? totals[0];
  const scored = balls.some((ball) => ball.score !== undefined || ball.marks !== undefined);
  const measured = balls.some((ball) => ball.distance !== undefined);
  const mode: Mode = balls.length === 0 && totals.length > 0 ? "totals" : !scored && measured ? "speed" : !measured && balls.length > 0 ? "scores" : "full";
  return {
    club: fields.club ?? "", visit, observer: fields.observer ?? "", green: fields.green ?? "", mode,
    spot: first?.spot ?? "a", first: first?.direction ?? "out",
  };
}
