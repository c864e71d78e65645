import type { Core } from "../core";
import type { Ball } from "./balls";

export interface Offered {
  score: number | undefined;
  lowest: number;
  highest: number;
}
/** What the marks of a ball suggest; nothing where they were not watched or the core is missing. */
export function offeredFor(core: Core | undefined, ball: Ball | undefined): Offered | undefined {
  if (!core || !ball?.marks) return undefined;
  const { ok } = core.offer({ marks: ball.marks });
  return ok && { score: ok.score ?? undefined, lowest: ok.lowest, highest: ok.highest };
}
export const contradicted = (core: Core | undefined, ball: Ball): boolean =>
  core !== undefined && ball.marks !== undefined && ball.score !== undefined &&
  core.contradicts({ marks: ball.marks, score: ball.score }).ok?.contradicts === true;

/** Metres from the ramp. Null: within the ramp's own hops. Absent: not to be known. */
export function placeOf(core: Core | undefined, seconds: number | null | undefined, distance: number | undefined): number | null | undefined {
  if (!core || seconds == null || distance === undefined) return undefined;
  const { ok } = core.place_of_mark({ seconds, distance });
  return ok ? ok.metres : undefined;
}
