import * as Plot from "@observablehq/plot";
import type { TrialAnalysis } from "../api/schemas";
import { dateOf, number } from "../state/format";
import type { Settings } from "../state/settings";
import { bare, ink } from "./frame";

const colours = [ink.isTrue, ink.isNot, ink.rain, ink.work, ink.standard, ink.growth];
const symbols = ["circle", "square", "triangle", "diamond", "star", "times"] as const;

interface Point {
  name: string;
  day: Date;
  mean: number;
  letters: string;
}

/** Means of the (first) treatment by day; letters where some can be told apart. */
export function trialPoints(analysis: TrialAnalysis): Point[] {
  return analysis.days.flatMap((day) => {
    const means = day.analysis.comparisons[0]?.means ?? [];
    const apart = new Set(means.map((mean) => mean.letters)).size > 1;
    return means.map((mean) => ({ name: mean.name, day: dateOf(day.day), mean: mean.mean, letters: apart ? mean.letters : "" }));
  });
}

/** Words that stand at `points`, each at least a step above the one below it. */
function apart(points: Point[], step: number): (Point & { at: number })[] {
  let below = -Infinity;
  return [...points]
    .sort((a, b) => a.mean - b.mean)
    .map((point) => {
      below = Math.max(point.mean, below + step);
      return { ...point, at: below };
    });
}

export function drawTrial(analysis: TrialAnalysis, width: number, settings: Settings): Node[] {
  const points = trialPoints(analysis);
  const names = [...new Set(points.map((point) => point.name))];
  const values = points.map((point) => point.mean);
  const low = Math.min(...values);
  const high = Math.max(...values);
  const pad = Math.max((high - low) * 0.12, 0.1);
  const height = 300;
  const colour = (name: string) => colours[names.indexOf(name) % colours.length] ?? ink.text;
  const marginRight = Math.min(width * 0.35, 20 + 8 * Math.max(...names.map((name) => name.length)));
  const step = ((high - low + 2 * pad) / (height - 36)) * 14;
  const last = names.flatMap((name) => points.filter((point) => point.name === name).slice(-1));
  const labels = apart(last, step * 1.2);
  const letters = [...new Set(points.map((point) => point.day.getTime()))].flatMap((day) =>
    apart(points.filter((point) => point.letters && point.day.getTime() === day), step));
  return [
    bare(Plot.plot({
      className: "plot",
      width, height,
      marginLeft: 34, marginRight, marginTop: 10, marginBottom: 26,
      x: { type: "utc", label: null },
      y: { domain: [low - pad, Math.max(high + pad, ...[...labels, ...letters].map((label) => label.at + pad))], label: null },
      symbol: { domain: names, range: names.map((_, i) => symbols[i % symbols.length] ?? "circle") },
      style: { fontSize: "13px", fontFamily: "inherit", color: ink.text, background: "none", overflow: "visible" },
      marks: [
        Plot.gridY({ stroke: ink.line, strokeOpacity: 1, ticks: 5 }),
        Plot.axisX({ anchor: "bottom", tickSize: 0, color: ink.quiet, fontSize: 13, ticks: width < 560 ? 4 : 8 }),
        Plot.axisY({ anchor: "left", tickSize: 0, color: ink.quiet, fontSize: 13, ticks: 5, tickFormat: (v: number) => number(v, 1, settings) }),
        ...names.flatMap((name) => {
          const own = points.filter((point) => point.name === name);
          return [
            Plot.lineY(own, { x: "day", y: "mean", stroke: colour(name), strokeWidth: 2 }),
            Plot.dot(own, { x: "day", y: "mean", fill: colour(name), symbol: () => name, r: 4.5 }),
          ];
        }),
        Plot.text(letters, { x: "day", y: "at", text: "letters", dy: -12, fill: (letter: Point) => colour(letter.name), fontSize: 13, fontWeight: 600 }),
        Plot.text(labels, {
          x: "day", y: "at", text: "name", dx: 10, textAnchor: "start", fontSize: 14, fontWeight: 600,
          fill: (label: Point) => colour(label.name),
        }),
      ],
    })),
  ];
}
