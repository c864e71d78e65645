import type { Mark } from "../core_types";

export type Zone = Mark["kind"] | "stop";
/** From the top: snake, chatter, bobble, stop; each by the share of the height where it ends. */
export const ends: [Zone, number][] = [["snake", 0.35], ["chatter", 0.58], ["bobble", 0.82], ["stop", 1]];
const border = 28; // px, either side of the line between bobble and stop
export const tooSoon = 0.7; // s: no ball off the ramp stops sooner
const bounce = 0.08; // s: a wet screen tells one touch twice

/** A ball released at 1.83 m/s that slows evenly runs for 2 S / v0. */
export const rollTime = (metres: number) => (2 * metres) / 1.8288;

/**
 * Which zone a touch means. Only one border matters: below it the ball is said
 * to have stopped. A touch within 28 px of that line is read by the clock: a
 * mark in the first four fifths of the time that the last ball took, a stop
 * after it.
 */
export function zoneAt(y: number, height: number, seconds: number, expected: number): Zone {
  const line = (ends[2] as [Zone, number])[1] * height;
  if (Math.abs(y - line) <= border) return seconds < 0.8 * expected ? "bobble" : "stop";
  return (ends.find(([, end]) => y < end * height) ?? (ends[3] as [Zone, number]))[0];
}

/** Nothing, where the touch cannot be meant. */
export function meant(zone: Zone, seconds: number, before: { zone: Zone; seconds: number } | undefined): boolean {
  if (zone === "stop") return seconds >= tooSoon;
  return !(before && before.zone === zone && seconds - before.seconds < bounce);
}
