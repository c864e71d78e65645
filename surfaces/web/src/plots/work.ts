import * as Plot from "@observablehq/plot";
import type { Definition, WorkAtGreen } from "../api/schemas";
import { number, score } from "../state/format";
import type { Settings } from "../state/settings";
import { words } from "../words";
import { bare, ink } from "./frame";

type Day = WorkAtGreen["days"][number];

export interface WorkScale {
  days: [number, number];
  scores: [number, number];
}

/** One scale for all greens of the work, so that they compare at a glance. */
export function workScale(greens: WorkAtGreen[]): WorkScale {
  const days = greens.flatMap((green) => green.days);
  const by = greens.flatMap((green) => green.loss.recovery.map((one) => one.by_days ?? one.after_days));
  const after = Math.max(14, ...by, ...days.map((day) => Math.min(day.days_after, 90)));
  return {
    days: [Math.min(-7, ...days.map((day) => day.days_after)), Math.min(120, after + 3)],
    scores: [Math.floor(Math.min(5, ...days.map((day) => day.score))) - 0.5, 10.2],
  };
}

/** The standard as steps; it is known at the work and on each scored day. */
export function standardSteps(days: Day[], atWork: number, [first, last]: [number, number]): { day: number; score: number }[] {
  const known = [...days.map((day) => ({ day: day.days_after, score: day.standard })), { day: 0, score: atWork }];
  known.sort((a, b) => a.day - b.day);
  return [{ day: first, score: known[0]?.score ?? atWork }, ...known, { day: last, score: known[known.length - 1]?.score ?? atWork }];
}

/** One green before and after the work, with the band that holds its return. */
export function drawWork(green: WorkAtGreen, definition: Definition, scale: WorkScale, width: number, settings: Settings): Node[] {
  const { loss } = green;
  const interval = loss.recovery.find((one) => one.definition === definition);
  const known = interval && interval.censoring !== "not_asked" && loss.visits_after > 0;
  const open = known && interval.by_days === undefined;
  const end = interval?.by_days ?? scale.days[1];
  const inside = (day: Day) => day.days_after <= scale.days[1];
  const days = green.days.filter(inside);
  const isTrue = (day: Day) => day.score >= day.standard;
  const common = { x: "days_after", y: "score" };
  const title = (day: Day) => `${day.days_after} ${words.work.dayAxis}\n${words.records.score} ${score(day.score, settings)}`;
  return [bare(Plot.plot({
    className: "plot",
    width,
    height: 190,
    marginLeft: 30, marginRight: 10, marginTop: 8, marginBottom: 26,
    x: { domain: scale.days, label: null },
    y: { domain: scale.scores, label: null },
    style: { fontSize: "13px", fontFamily: "inherit", color: ink.text, background: "none", overflow: "visible" },
    marks: [
      known
        ? Plot.rect([0], {
            x1: interval.after_days, x2: Math.max(end, interval.after_days + 0.6), y1: scale.scores[0], y2: scale.scores[1],
            fill: ink.band, fillOpacity: open ? 0.45 : 1,
          })
        : null,
      Plot.axisX({ anchor: "bottom", tickSize: 0, color: ink.quiet, fontSize: 13, ticks: width < 300 ? 4 : 6, tickFormat: (v: number) => number(v, 0, settings) }),
      Plot.axisY({ anchor: "left", tickSize: 0, color: ink.quiet, fontSize: 13, ticks: 4, tickFormat: (v: number) => number(v, 0, settings) }),
      definition === "own_level"
        ? Plot.ruleY(loss.before === undefined ? [] : [loss.before], { stroke: ink.standard, strokeWidth: 1.8 })
        : Plot.line(standardSteps(days, loss.standard, scale.days), { x: "day", y: "score", curve: "step-after", stroke: ink.standard, strokeWidth: 1.8 }),
      loss.before === undefined
        ? null
        : Plot.ruleY([loss.before], { x1: scale.days[0], x2: 0, stroke: ink.quiet, strokeWidth: 1.5, strokeDasharray: "2,3" }),
      Plot.ruleX([0], { stroke: ink.work, strokeDasharray: "4,3", strokeWidth: 1.5 }),
      Plot.line(days.filter((day) => day.days_after < 0), { ...common, stroke: ink.quiet, strokeOpacity: 0.5 }),
      Plot.line(days.filter((day) => day.days_after >= 0), { ...common, stroke: ink.quiet, strokeOpacity: 0.5 }),
      Plot.dot(days.filter(isTrue), { ...common, r: 5, fill: ink.isTrue, stroke: "var(--paper)" }),
      Plot.dot(days.filter((day) => !isTrue(day)), { ...common, r: 6, symbol: "triangle2", rotate: 180, fill: ink.isNot, stroke: "var(--paper)" }),
      Plot.tip(days, Plot.pointerX({ ...common, title, fontSize: 14, fill: "var(--paper)", stroke: ink.quiet })),
    ],
  }))];
}
