import * as Plot from "@observablehq/plot";
import type { Figure } from "../api/schemas";
import { signed } from "../state/format";
import type { Settings } from "../state/settings";
import { bare, ink } from "./frame";

export const style = { fontSize: "14px", fontFamily: "inherit", color: ink.text, background: "none", overflow: "visible" };

/** A scale that shows zero and every end of an interval. */
export function span(estimates: Figure[], least = 0.5): [number, number] {
  const ends = estimates.flatMap((one) => [one.low ?? one.value, one.high ?? one.value]);
  const most = Math.max(least, ...ends.map(Math.abs)) * 1.1;
  return [-most, most];
}

export interface IntervalRow {
  name: string;
  figure: Figure;
  /** Marked as apart from the rest. */
  out?: boolean;
}

/** One row for each name: a dot with its interval about the line of no difference. */
export function drawIntervals(rows: IntervalRow[], rowHeight: number, width: number, settings: Settings): Node[] {
  const names = Math.max(...rows.map((row) => row.name.length));
  const middle = (row: IntervalRow) => row.figure.value;
  const out = (row: IntervalRow) => row.out === true;
  const ticks = width < 560 ? 5 : 9;
  return [
    bare(Plot.plot({
      className: "plot",
      width,
      height: 40 + rows.length * rowHeight,
      marginLeft: Math.min(170, 20 + names * 8), marginRight: 14, marginTop: 6, marginBottom: 28,
      x: { domain: span(rows.map((row) => row.figure)), label: null },
      y: { domain: rows.map((row) => row.name), label: null, padding: 0.4 },
      style,
      marks: [
        Plot.gridX({ stroke: ink.line, strokeOpacity: 1, ticks }),
        Plot.axisX({ anchor: "bottom", tickSize: 0, color: ink.quiet, fontSize: 13, ticks, tickFormat: (v: number) => signed(v, settings) }),
        Plot.axisY({ anchor: "left", tickSize: 0, fontSize: 14 }),
        Plot.ruleX([0], { stroke: ink.standard, strokeWidth: 1.8 }),
        Plot.link(rows.filter((row) => row.figure.low !== undefined), {
          y: "name", x1: (row: IntervalRow) => row.figure.low, x2: (row: IntervalRow) => row.figure.high,
          stroke: (row: IntervalRow) => (out(row) ? ink.isNot : ink.accent), strokeWidth: 5, strokeOpacity: 0.4,
        }),
        Plot.dot(rows.filter((row) => !out(row)), { y: "name", x: middle, r: 5, fill: ink.accent, stroke: "var(--paper)" }),
        Plot.dot(rows.filter(out), { y: "name", x: middle, r: 6, symbol: "triangle2", rotate: 180, fill: ink.isNot, stroke: "var(--paper)" }),
        Plot.tip(rows, Plot.pointerY({ y: "name", x: middle, title: (row: IntervalRow) => `${row.name}\n${signed(middle(row), settings)}`, fontSize: 14, fill: "var(--paper)", stroke: ink.quiet })),
      ],
    })),
  ];
}
