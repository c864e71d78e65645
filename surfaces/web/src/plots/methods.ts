import * as Plot from "@observablehq/plot";
import type { MethodLine } from "../api/schemas";
import { number } from "../state/format";
import type { Settings } from "../state/settings";
import { words } from "../words";
import { bare, ink } from "./frame";

const w = words.methods;
const style = { fontSize: "14px", fontFamily: "inherit", color: ink.text, background: "none", overflow: "visible" };

export interface Median {
  name: string;
  value: number;
  low: number;
  high: number;
  cut: boolean;
}

/** Medians with their intervals. The scale is that of methods done more than once;
    what runs off it is cut and marked. */
export function medians(methods: MethodLine[]): { rows: Median[]; most: number } {
  const known = methods.flatMap((one) => (one.days ? [{ name: one.method, works: one.works, days: one.days }] : []));
  const repeated = known.filter((one) => one.works > 1);
  const shown = repeated.length > 0 ? repeated : known;
  const longest = Math.max(1, ...shown.map((one) => one.days.value));
  const most = Math.min(3 * longest, Math.max(1, ...shown.map((one) => one.days.high ?? one.days.value)));
  const cut = (value: number) => Math.min(value, most);
  const rows = known.map(({ name, days }) => ({
    name, value: days.value, low: cut(days.low ?? days.value), high: cut(days.high ?? days.value), cut: (days.high ?? days.value) > most,
  }));
  return { rows, most };
}

/** The row a name stands in takes two lines where it is long. */
function wrapped(name: string, room: number): string {
  if (name.length <= room) return name;
  const at = name.lastIndexOf(" ", room);
  return at < 1 ? name : `${name.slice(0, at)}\n${wrapped(name.slice(at + 1), room)}`;
}

export function drawMedians(methods: MethodLine[], width: number, settings: Settings): Node[] {
  const { rows, most } = medians(methods);
  const narrow = width < 560;
  const room = narrow ? 15 : 30;
  const longest = Math.max(...rows.map((row) => Math.min(room, row.name.length)));
  const label = (name: string) => wrapped(name, room);
  const text = (row: Median) => `${row.name}\n${w.interval(number(row.value, 1, settings), number(row.low, 1, settings), row.cut ? w.offScale : number(row.high, 1, settings))}`;
  return [
    bare(Plot.plot({
      className: "plot",
      width,
      height: 56 + rows.length * 42,
      marginLeft: 16 + longest * 8, marginRight: 20, marginTop: 6, marginBottom: 44,
      x: { domain: [0, most], label: null },
      y: { domain: rows.map((row) => row.name), label: null, padding: 0.4 },
      style,
      marks: [
        Plot.gridX({ stroke: ink.line, strokeOpacity: 1, ticks: narrow ? 5 : 9 }),
        Plot.axisX({ anchor: "bottom", tickSize: 0, color: ink.quiet, fontSize: 13, ticks: narrow ? 5 : 9, label: w.daysAxis, labelAnchor: "center", labelArrow: "none" }),
        Plot.axisY({ anchor: "left", tickSize: 0, fontSize: 14, tickFormat: label }),
        Plot.link(rows, { y: "name", x1: "low", x2: "high", stroke: ink.accent, strokeWidth: 5, strokeOpacity: 0.45 }),
        Plot.text(rows.filter((row) => row.cut), { y: "name", x: "high", text: (row: Median) => (row.value > most ? `${number(row.value, 0, settings)} ▸` : "▸"), textAnchor: "end", fill: ink.text, fontSize: 14, dx: 12, dy: -12 }),
        Plot.dot(rows.filter((row) => row.value <= most), { y: "name", x: "value", r: 6, fill: ink.accent, stroke: "var(--paper)" }),
        Plot.tip(rows, Plot.pointerY({ y: "name", x: (row: Median) => Math.min(row.value, most), title: text, fontSize: 14, fill: "var(--paper)", stroke: ink.quiet })),
      ],
    })),
  ];
}

interface Step {
  day: number;
  least: number;
  most: number;
}

/** Least and greatest share back from each day on at which either changes. */
export function steps(one: MethodLine, last: number): Step[] {
  const ends = one.curve.flatMap((part) => [part.left, part.right ?? last]);
  const days = [...new Set([0, ...ends, last])].filter((day) => day <= last).sort((a, b) => a - b);
  const share = (keep: (part: MethodLine["curve"][number]) => boolean) =>
    one.curve.reduce((sum, part) => sum + (keep(part) ? part.mass : 0), 0);
  return days.map((day) => ({
    day,
    least: share((part) => part.right !== undefined && part.right <= day),
    most: share((part) => part.left <= day),
  }));
}

/** The end of the scale: of methods done more than once, where there are any. */
export function lastDay(methods: MethodLine[]): number {
  const repeated = methods.filter((one) => one.works > 1);
  const ends = (repeated.length > 0 ? repeated : methods).flatMap((one) => one.curve.map((part) => part.right ?? part.left));
  return Math.max(7, ...ends);
}

export function drawCurve(one: MethodLine, last: number, width: number, settings: Settings): Node[] {
  const rows = steps(one, last);
  const percent = (share: number) => `${number(100 * share, 0, settings)} %`;
  return [
    bare(Plot.plot({
      className: "plot",
      width,
      height: 190,
      marginLeft: 48, marginRight: 14, marginTop: 8, marginBottom: 42,
      x: { domain: [0, last], label: null },
      y: { domain: [0, 1], label: null },
      style,
      marks: [
        Plot.axisX({ anchor: "bottom", tickSize: 0, color: ink.quiet, fontSize: 13, ticks: 5, label: w.daysAxis, labelAnchor: "center", labelArrow: "none" }),
        Plot.axisY({ anchor: "left", tickSize: 0, color: ink.quiet, fontSize: 13, ticks: [0, 0.5, 1], tickFormat: percent }),
        Plot.ruleY([0, 0.5, 1], { stroke: ink.line }),
        Plot.areaY(rows, { x: "day", y1: "least", y2: "most", curve: "step-after", fill: ink.band }),
        Plot.line(rows, { x: "day", y: "least", curve: "step-after", stroke: ink.accent, strokeWidth: 2 }),
        Plot.tip(rows, Plot.pointerX({ x: "day", y: "least", title: (row: Step) => `${number(row.day, 0, settings)}: ${percent(row.least)}`, fontSize: 14, fill: "var(--paper)", stroke: ink.quiet })),
      ],
    })),
  ];
}
