import type { SeasonReview, WorkAtGreen } from "../api/schemas";
import { words } from "../words";

/** A, B ... Z, AA ...: the letters that tie a line in the picture to the list. */
export function letter(place: number): string {
  const last = String.fromCharCode(65 + (place % 26));
  return place < 26 ? last : letter(Math.floor(place / 26) - 1) + last;
}

/** Letters of the year's disruptive works, by their identifier. */
export function letters(season: SeasonReview): Map<string, string> {
  const works = season.works.filter((work) => work.work_class === "disruptive");
  return new Map([...new Set(works.map((work) => work.work))].map((work, place) => [work, letter(place)]));
}

/** The standard of a day: the last step at or before it. */
export function standardOn(standards: SeasonReview["standards"], day: string): number {
  let score = standards[0]?.score ?? Infinity;
  for (const step of standards) {
    if (step.from <= day) score = step.score;
  }
  return score;
}

export const greenTitle = (green: WorkAtGreen) =>
  green.loss.half ? `${green.green_name}, ${words.work.half(green.loss.half)}` : green.green_name;
