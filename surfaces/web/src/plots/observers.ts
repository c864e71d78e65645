import * as Plot from "@observablehq/plot";
import type { AgreementPoint, ObserverLine, PairLine } from "../api/schemas";
import { number, signed } from "../state/format";
import type { Settings } from "../state/settings";
import { words } from "../words";
import { bare, ink } from "./frame";
import { drawIntervals, span, style } from "./intervals";

const w = words.observers;

/** Each observer's lean about the line of the others. */
export function drawLeans(observers: ObserverLine[], width: number, settings: Settings): Node[] {
  const rows = observers.flatMap(({ name, bias }) => (bias ? [{ name, figure: bias }] : []));
  return drawIntervals(rows, 34, width, settings);
}

/** Difference against mean, with bias and limits; `less` is taken off every difference. */
export function drawPair(pair: PairLine, less: number, width: number, settings: Settings): Node[] {
  const { lower_limit: lower, upper_limit: upper, bias } = pair;
  const shifted = (value: number | undefined) => (value === undefined ? undefined : value - less);
  const points = pair.points.map((point) => ({ ...point, difference: point.difference - less }));
  const most = Math.max(1, ...points.map((point) => Math.abs(point.difference))) * 1.08;
  const means = points.map((point) => point.mean);
  const band = bias && bias.low !== undefined ? [{ low: shifted(bias.low), high: shifted(bias.high) }] : [];
  const limits = [shifted(lower?.value), shifted(upper?.value)].filter((one) => one !== undefined);
  const domain = [Math.min(...means) - 0.4, Math.max(...means) + 0.4];
  const largest = Math.max(...points.map((point) => point.items));
  const tip = (point: AgreementPoint) =>
    `${w.meanAxis} ${number(point.mean, 1, settings)}\n${signed(point.difference, settings)} · ${point.items}`;
  return [
    bare(Plot.plot({
      className: "plot",
      width,
      height: 260,
      marginLeft: 40, marginRight: 12, marginTop: 8, marginBottom: 44,
      x: { domain, label: null },
      y: { domain: [-most, most], label: null },
      r: { domain: [0, largest], range: [1.5, Math.max(6, Math.min(13, width / 40))] },
      style,
      marks: [
        Plot.rect(band, { x1: domain[0], x2: domain[1], y1: "low", y2: "high", fill: ink.band }),
        Plot.axisX({ anchor: "bottom", tickSize: 0, color: ink.quiet, fontSize: 13, ticks: 6, label: w.meanAxis, labelAnchor: "center", labelArrow: "none", tickFormat: (v: number) => number(v, 0, settings) }),
        Plot.axisY({ anchor: "left", tickSize: 0, color: ink.quiet, fontSize: 13, ticks: 5, label: null, tickFormat: (v: number) => signed(v, settings) }),
        Plot.ruleY([0], { stroke: ink.standard, strokeWidth: 1.8 }),
        Plot.ruleY(limits, { stroke: ink.text, strokeDasharray: "5,4", strokeWidth: 1.5 }),
        Plot.dot(points, { x: "mean", y: "difference", r: "items", fill: ink.accent, fillOpacity: 0.55, stroke: "var(--paper)", strokeWidth: 0.7 }),
        Plot.ruleY(bias ? [bias.value - less] : [], { stroke: ink.accent, strokeWidth: 2 }),
        Plot.tip(points, Plot.pointer({ x: "mean", y: "difference", title: tip, fontSize: 14, fill: "var(--paper)", stroke: ink.quiet })),
      ],
    })),
  ];
}

type Quarter = ObserverLine["quarters"][number];

/** Every quarter from the first to the last, also those without shared rolls. */
export function quarterNames(observers: ObserverLine[]): string[] {
  const places = observers.flatMap((one) => one.quarters.map((q) => q.year * 4 + q.quarter - 1));
  if (places.length === 0) return [];
  const first = Math.min(...places);
  return Array.from({ length: Math.max(...places) - first + 1 }, (_, i) => nameOf(first + i));
}

const nameOf = (place: number) => `${Math.floor(place / 4)} ${(place % 4) + 1}`;

/** One observer's quarters on the scale of all. */
export function drawDrift(one: ObserverLine, all: ObserverLine[], less: number, width: number, settings: Settings): Node[] {
  const name = (q: Quarter) => nameOf(q.year * 4 + q.quarter - 1);
  const domain = quarterNames(all);
  const taken = (value: number | undefined) => (value === undefined ? undefined : value - less);
  const y = span(all.flatMap((other) => other.quarters.map((q) => q.bias)));
  const firstOfYear = domain.filter((text, i) => i === 0 || text.endsWith(" 1"));
  const title = (q: Quarter) => `${w.quarter(q.year, q.quarter)}\n${signed(q.bias.value - less, settings)} · ${q.balls}`;
  return [
    bare(Plot.plot({
      className: "plot",
      width,
      height: 170,
      marginLeft: 40, marginRight: 10, marginTop: 8, marginBottom: 26,
      x: { type: "point", domain, label: null, padding: 0.5 },
      y: { domain: y, label: null, clamp: true },
      style,
      marks: [
        Plot.axisX({ anchor: "bottom", tickSize: 0, color: ink.quiet, fontSize: 13, ticks: firstOfYear, tickFormat: (text: string) => text.slice(0, 4) }),
        Plot.axisY({ anchor: "left", tickSize: 0, color: ink.quiet, fontSize: 13, ticks: 4, tickFormat: (v: number) => signed(v, settings) }),
        Plot.ruleY([0], { stroke: ink.standard, strokeWidth: 1.8 }),
        Plot.link(one.quarters.filter((q) => q.bias.low !== undefined), {
          x: name, y1: (q: Quarter) => taken(q.bias.low), y2: (q: Quarter) => taken(q.bias.high), stroke: ink.accent, strokeWidth: 4, strokeOpacity: 0.45,
        }),
        Plot.dot(one.quarters, { x: name, y: (q: Quarter) => q.bias.value - less, r: 5, fill: ink.accent, stroke: "var(--paper)" }),
        Plot.tip(one.quarters, Plot.pointerX({ x: name, y: (q: Quarter) => q.bias.value - less, title, fontSize: 14, fill: "var(--paper)", stroke: ink.quiet })),
      ],
    })),
  ];
}
