import type { Book } from "../data/book";
import { greenOf, type Club } from "../data/club";
import { ballsOf, runOf, visitFields } from "./balls";
import type { Session } from "./session";

interface LastRolls {
  out: { distance: number | null }[];
  back: { distance: number | null }[];
}

/** The last reading at this spot: this phone's own rolls where it has them, else the speed that the server told. */
export function lastHere(book: Book, session: Session, club: Club | undefined): LastRolls | { metres: number } | undefined {
  const earlier = book
    .things("visit")
    .filter(({ thing, values }) => thing < session.visit && values.green === session.green && values.club === session.club)
    .sort((a, b) => (a.thing < b.thing ? 1 : -1));
  for (const { thing } of earlier) {
    if (visitFields(book, thing).removed) continue;
    const balls = ballsOf(book, thing).filter((ball) => ball.distance !== undefined);
    const rolls = (direction: "out" | "back") => runOf(balls, session.spot, direction).map(({ distance }) => ({ distance: distance ?? null }));
    const out = rolls("out");
    const back = rolls("back");
    if (out.length + back.length > 0) return { out, back };
  }
  const speed = club && greenOf(club, session.green)?.last?.speed_m;
  return speed ? { metres: speed } : undefined;
}
