import type { Direction } from "../data/entries";
import { runOf, rolling, type Ball, type RunTotal } from "./balls";
import { ballsOfRun, other, together, watches, type Session } from "./session";

/** What the person does next. Derived from the journal alone, so a dead battery loses no place. */
export type Step =
  /** the next ball may go; `last` is the one before, still to be scored or measured if need be */
  | { at: "ready"; direction: Direction; order: number; last: Ball | undefined }
  | { at: "rolling"; ball: Ball }
  /** the second observer scores this ball */
  | { at: "partner"; ball: Ball }
  /** a helper calls the distances of a run: this ball's turn */
  | { at: "distances"; direction: Direction; ball: Ball }
  | { at: "total"; direction: Direction }
  /** only speed: the distance of the next ball */
  | { at: "distance"; direction: Direction; order: number }
  /** all balls of the spot are done */
  | { at: "spot_done"; last: Ball | undefined };

export interface Seen {
  session: Session;
  balls: Ball[];
  totals: RunTotal[];
  /** the second observer's balls */
  partnerBalls: Ball[];
}

export function stepOf(seen: Seen): Step {
  const { session, balls } = seen;
  const unfinished = balls.find(rolling);
  if (unfinished) return { at: "rolling", ball: unfinished };
  const here = balls.filter((ball) => ball.spot === session.spot);
  const last = latest(here);
  const waiting = partnerTurn(seen, here);
  if (waiting) return { at: "partner", ball: waiting };
  const order = [session.first, other(session.first)];
  for (const direction of order) {
    const step = ofRun(seen, direction, last);
    if (step) return step;
  }
  if (session.extra) return next(seen, session.extra, last);
  return { at: "spot_done", last };
}

function ofRun(seen: Seen, direction: Direction, last: Ball | undefined): Step | undefined {
  const { session, balls, totals } = seen;
  const run = runOf(balls, session.spot, direction);
  if (session.mode === "totals") {
    return runOf(totals, session.spot, direction).length > 0 ? undefined : { at: "total", direction };
  }
  if (run.length < ballsOfRun) return next(seen, direction, last);
  if (session.mode === "after") {
    const missing = run.find((ball) => ball.distance === undefined && !ball.unmeasured);
    // The last ball is looked at first; its score is taken by going on.
    if (missing && run.every((ball) => ball.score !== undefined)) return { at: "distances", direction, ball: missing };
    if (missing) return { at: "ready", direction, order: run.length + 1, last };
  }
  return undefined;
}

function next(seen: Seen, direction: Direction, last: Ball | undefined): Step {
  const run = runOf(seen.balls, seen.session.spot, direction);
  const order = 1 + run.reduce((most, ball) => Math.max(most, ball.order), 0);
  return seen.session.mode === "speed" ? { at: "distance", direction, order } : { at: "ready", direction, order, last };
}

/** The ball the first observer has scored and the second has not. */
function partnerTurn(seen: Seen, here: Ball[]): Ball | undefined {
  if (!seen.session.partner) return undefined;
  return here.find((ball) => ball.score !== undefined && partnerBall(seen.partnerBalls, ball)?.score === undefined);
}

export const partnerBall = (all: Ball[], ball: Ball) =>
  all.find((one) => one.spot === ball.spot && one.direction === ball.direction && one.order === ball.order);

/** The ball that was rolled last. */
export function latest(balls: Ball[]): Ball | undefined {
  return balls.reduce<Ball | undefined>((newest, ball) => (!newest || ball.thing > newest.thing ? ball : newest), undefined);
}

/** What pressing the great button does now. */
export type Go = "release" | "distances" | "summary" | "score_first";
export function goOf(seen: Seen, step: Step, explicit: boolean): Go {
  const last = step.at === "ready" || step.at === "spot_done" ? step.last : undefined;
  const unscored = last !== undefined && watches(seen.session.mode) && last.score === undefined;
  if (unscored && (explicit || together(seen.session))) return "score_first";
  if (step.at === "spot_done") return "summary";
  if (step.at === "ready" && seen.session.mode === "after") {
    const run = runOf(seen.balls, seen.session.spot, step.direction);
    if (run.length >= ballsOfRun && step.order > run.length && seen.session.extra === undefined) return "distances";
  }
  return "release";
}

/** Is a distance asked for beside the last ball? With a helper only to mend it, when the run is measured. */
export const asksDistance = (session: Session, ball: Ball) =>
  session.mode === "full" || session.mode === "speed" || (session.mode === "after" && (ball.distance !== undefined || ball.unmeasured));
