import * as Plot from "@observablehq/plot";
import type { ConsistencyReview } from "../api/schemas";
import { length, number, signed } from "../state/format";
import type { Settings } from "../state/settings";
import { words } from "../words";
import { bare, ink } from "./frame";
import { span } from "./observers";

const w = words.consistency;
const style = { fontSize: "14px", fontFamily: "inherit", color: ink.text, background: "none", overflow: "visible" };
type Green = ConsistencyReview["greens"][number];
type Standing = NonNullable<Green["score"]>;
interface Row {
  name: string;
  score: Standing;
}

/** Each green's difference from the club's median of the day. */
export function drawStandings(greens: Green[], width: number, settings: Settings): Node[] {
  const rows: Row[] = greens.flatMap((green) => (green.score ? [{ name: green.name, score: green.score }] : []));
  const x = span(rows.map((row) => row.score.difference));
  const names = Math.max(...rows.map((row) => row.name.length));
  const middle = (row: Row) => row.score.difference.value;
  const out = (row: Row) => row.score.out_of_line;
  return [
    bare(Plot.plot({
      className: "plot",
      width,
      height: 40 + rows.length * 25,
      marginLeft: Math.min(150, 20 + names * 8), marginRight: 14, marginTop: 6, marginBottom: 28,
      x: { domain: x, label: null },
      y: { domain: rows.map((row) => row.name), label: null, padding: 0.4 },
      style,
      marks: [
        Plot.gridX({ stroke: ink.line, strokeOpacity: 1, ticks: width < 560 ? 5 : 9 }),
        Plot.axisX({ anchor: "bottom", tickSize: 0, color: ink.quiet, fontSize: 13, ticks: width < 560 ? 5 : 9, tickFormat: (v: number) => signed(v, settings) }),
        Plot.axisY({ anchor: "left", tickSize: 0, fontSize: 14 }),
        Plot.ruleX([0], { stroke: ink.standard, strokeWidth: 1.8 }),
        Plot.link(rows.filter((row) => row.score.difference.low !== undefined), {
          y: "name", x1: (row: Row) => row.score.difference.low, x2: (row: Row) => row.score.difference.high,
          stroke: (row: Row) => (out(row) ? ink.isNot : ink.accent), strokeWidth: 5, strokeOpacity: 0.4,
        }),
        Plot.dot(rows.filter((row) => !out(row)), { y: "name", x: middle, r: 5, fill: ink.accent, stroke: "var(--paper)" }),
        Plot.dot(rows.filter(out), { y: "name", x: middle, r: 6, symbol: "triangle2", rotate: 180, fill: ink.isNot, stroke: "var(--paper)" }),
        Plot.tip(rows, Plot.pointerY({ y: "name", x: middle, title: (row: Row) => `${row.name}\n${signed(middle(row), settings)}`, fontSize: 14, fill: "var(--paper)", stroke: ink.quiet })),
      ],
    })),
  ];
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
