import { greenOf, type Club } from "../data/club";
import type { Direction } from "../data/entries";
import { runOf } from "./balls";
import { other } from "./session";
import type { Seen } from "./step";

/** What a distance starts from: the ball before it this way, else the other way, else the green's last speed, else 10 ft. */
export function startDistance(seen: Seen, club: Club | undefined, direction: Direction, order: number): number {
  const { session, balls } = seen;
  const measured = (way: Direction, below: number) =>
    runOf(balls, session.spot, way).filter((ball) => ball.order < below && ball.distance !== undefined).at(-1)?.distance;
  const last = club && greenOf(club, session.green)?.last?.speed_m;
  return measured(direction, order) ?? measured(other(direction), Infinity) ?? last ?? 3.048;
}
