// English texts of the page that compares greens, spots and directions.
import type { DirectionFinding } from "./api/schemas";

const count = (n: number, one: string, many = `${one}s`) => `${n} ${n === 1 ? one : many}`;

const findings: Record<DirectionFinding, string> = {
  too_few: "too few visits both ways",
  alike: "both ways alike",
  slope: "steady slope",
  score_apart: "one way scores lower",
  changing: "changes from visit to visit",
};

export const consistencyWords = {
  title: "Consistency",
  period: (from: string, to: string, visits: number) => `${from} to ${to}, ${count(visits, "visit")}.`,
  greens: "Greens against the club",
  greensText: "Points above or below the club's median on the same days; the bar holds 95 chances in 100. A triangle is out of line: its robust z lies beyond 3.5.",
  greensLabel: "Difference of each green from the club's median",
  green: "Green", score: "Score", difference: "From the club", z: "Robust z", speed: "Speed", days: "Days", fast: "Fast, not true", yes: "yes", no: "no",
  parts: "Where the differences lie",
  partsText: "Shares of the variance of one ball's score, and of a spot's speed: between greens, between visits to one green, between spots of one visit, between directions, and what is left to the single ball.",
  partsLabel: "Shares of the variance by level",
  scoreOf: "Score", speedOf: "Speed",
  level: { green: "greens", visit: "visits", spot: "spots", direction: "directions", ball: "balls" } as Record<string, string>,
  levelHead: "Between", groups: "Groups", share: "Share, %", of: "Of",
  scatter: "Speed against score",
  scatterText: "Each dot is a visit: the faster to the right, the truer to the top. Were speed a sign of trueness, the dots would rise along a line.",
  scatterLabel: "Score against speed, visit by visit",
  rank: (value: string, pairs: number) => `Rank correlation ${value}, ${count(pairs, "visit")}.`,
  fastList: (names: string) => `Fast but not true: ${names}.`,
  hours: "Hour of the day",
  afternoonScore: (value: string, pairs: number) =>
    `In the afternoon the score differs from the mornings about it by ${value} points (${count(pairs, "pair")} within a week).`,
  afternoonSpeed: (value: string, pairs: number) =>
    `In the afternoon the speed differs by ${value} m (${count(pairs, "pair")}).`,
  noHours: "No afternoon visit has a morning within a week beside it.",
  directions: "Out against back",
  directionsText: "Out less back, in points, paired by visit; p is corrected for the number of spots. A slope is the ground's and stays; what changes from visit to visit is grass, mowing or wind.",
  noDirections: "At no spot can the two directions be told apart.",
  allSpots: "All spots",
  spot: "Spot", visits: "Visits", outLessBack: "Out less back", p: "p", slope: "Slope, %", finding: "Finding",
  findings,
  computed: "How this was computed",
  formulas: [
    "Greens: on each day with three greens or more, a green's mean less the median of all; then the mean over days, its error leaving out one day at a time. Robust z = 0.6745 (level − median) / MAD of the greens' levels, beyond 3.5 out of line (Iglewicz and Hoaglin 1993).",
    "Shares: analysis of variance of groups within groups, each mean square set equal to its expectation for sizes as they are (Searle, Casella and McCulloch 1992; Gates and Shiue 1962). A component below 0 is shown as 0.",
    "Speed against score: Spearman's rank correlation (1904); its interval leaves out one green at a time.",
    "Directions: paired t over visits, p by Holm (1979). Apparent slope 7/5 v² / (4 g) (1/out − 1/back) with v = 1.8288 m/s (Penner 2002); whether it is the same at every visit by Cochran's Q (1954), with 0.10 m for the error of one ball.",
    "Afternoon: each visit from noon on, less the mean of the nearest mornings before and after within a week, with no disruptive work between; the interval leaves out one green at a time. Common practice, no source.",
    "Of visits that share their balls one counts.",
  ],
  unknown: "not known",
};
