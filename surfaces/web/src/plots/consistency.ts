import * as Plot from "@observablehq/plot";
import type { ConsistencyReview } from "../api/schemas";
import { length, number } from "../state/format";
import type { Settings } from "../state/settings";
import { words } from "../words";
import { bare, ink } from "./frame";
import { drawIntervals, style } from "./intervals";

const w = words.consistency;
type Green = ConsistencyReview["greens"][number];
/** Each green's difference from the club's median of the day. */
export function drawStandings(greens: Green[], width: number, settings: Settings): Node[] {
  const rows = greens.flatMap(({ name, score }) =>
    score ? [{ name, figure: score.difference, out: score.out_of_line }] : [],
  );
  return drawIntervals(rows, 25, width, settings);
}

interface Part {
  of: string;
  name: string;
  share: number;
}

/** Shares of the variance, one bar for each level. */
export function drawParts(review: ConsistencyReview, width: number, settings: Settings): Node[] {
  const parts = (of: string, levels: { name: string; share: number }[]): Part[] =>
    levels.map((level) => ({ of, name: `${of}: ${w.level[level.name] ?? level.name}`, share: level.share * 100 }));
  const rows = [...parts(w.scoreOf, review.score_parts.levels), ...parts(w.speedOf, review.speed_parts.levels)];
  return [
    bare(Plot.plot({
      className: "plot",
      width,
      height: 34 + rows.length * 28,
      marginLeft: 130, marginRight: 44, marginTop: 4, marginBottom: 26,
      x: { domain: [0, 100], label: null },
      y: { domain: rows.map((row) => row.name), label: null, padding: 0.3 },
      style,
      marks: [
        Plot.axisX({ anchor: "bottom", tickSize: 0, color: ink.quiet, fontSize: 13, ticks: 5, tickFormat: (v: number) => `${number(v, 0, settings)} %` }),
        Plot.axisY({ anchor: "left", tickSize: 0, fontSize: 14 }),
        Plot.barX(rows, { y: "name", x: "share", fill: (row: Part) => (row.of === w.scoreOf ? ink.accent : ink.rain), rx: 3 }),
        Plot.text(rows, { y: "name", x: "share", text: (row: Part) => `${number(row.share, 0, settings)} %`, textAnchor: "start", dx: 6, fill: ink.text }),
      ],
    })),
  ];
}

/** Score against speed, a dot for each visit. */
export function drawScatter(points: ConsistencyReview["points"], width: number, settings: Settings): Node[] {
  const title = (point: { green: string; speed_m: number; score: number }) =>
    `${point.green}\n${length(point.speed_m, settings)} · ${number(point.score, 1, settings)}`;
  return [
    bare(Plot.plot({
      className: "plot",
      width,
      height: Math.min(420, Math.max(260, width * 0.55)),
      marginLeft: 34, marginRight: 20, marginTop: 8, marginBottom: 30,
      x: { label: null, inset: 6 },
      y: { label: null, inset: 6 },
      style,
      marks: [
        Plot.gridY({ stroke: ink.line, strokeOpacity: 1, ticks: 5 }),
        Plot.axisX({ anchor: "bottom", tickSize: 0, color: ink.quiet, fontSize: 13, ticks: width < 560 ? 4 : 7, tickFormat: (v: number) => length(v, settings) }),
        Plot.axisY({ anchor: "left", tickSize: 0, color: ink.quiet, fontSize: 13, ticks: 5, tickFormat: (v: number) => number(v, 1, settings) }),
        Plot.dot(points, { x: "speed_m", y: "score", r: 3, fill: ink.accent, fillOpacity: 0.4 }),
        Plot.tip(points, Plot.pointer({ x: "speed_m", y: "score", title, fontSize: 14, fill: "var(--paper)", stroke: ink.quiet })),
      ],
    })),
  ];
}
