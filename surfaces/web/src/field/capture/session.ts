import type { Direction } from "../data/entries";

/** full: marks, score, distance after each ball. after: the distances when the run is done. */
export type Mode = "full" | "after" | "scores" | "totals" | "speed";
export const modes: Mode[] = ["full", "after", "scores", "totals", "speed"];
export const ballsOfRun = 3;

/** The visit this phone is at work on: kept beside the journal, in the same transaction as its first entry. */
export interface Session {
  club: string;
  visit: string;
  observer: string;
  green: string;
  mode: Mode;
  spot: string;
  first: Direction;
  /** a ball beyond the three is wanted this way */
  extra?: Direction | undefined;
  /** the second observer, who scores the same balls in turn on this phone */
  partner?: { visit: string; observer: string };
  /** scored apart from another phone under this word */
  code?: string;
}

export const other = (direction: Direction): Direction => (direction === "out" ? "back" : "out");
export const watches = (mode: Mode) => mode === "full" || mode === "after" || mode === "scores";
export const measures = (mode: Mode) => mode === "full" || mode === "after" || mode === "speed";
/** Two observers are compared: nothing may be scored for them. */
export const together = (session: Session) => session.partner !== undefined || session.code !== undefined;
export const visitsOf = (session: Session) => [session.visit, ...(session.partner ? [session.partner.visit] : [])];
