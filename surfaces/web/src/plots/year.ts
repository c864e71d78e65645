import * as Plot from "@observablehq/plot";
import type { SeasonReview, VisitPoint, WorkTick } from "../api/schemas";
import { dateOf, length, number, score, shortDay } from "../state/format";
import type { Settings } from "../state/settings";
import { letters, standardOn } from "../state/year";
import { words } from "../words";
import { ink, panel, titled, yearDomain, type PanelSize } from "./frame";
import { worksPanel } from "./works_lane";

type Scored = VisitPoint & { score: number };
const w = words.year;

function disruptive(season: SeasonReview): WorkTick[] {
  return season.works.filter((work) => work.work_class === "disruptive");
}

/** The works run as lines through every panel, so that cause and effect line up. */
function workRules(season: SeasonReview): Plot.Markish[] {
  return [
    Plot.ruleX(disruptive(season), {
      x: (work: WorkTick) => dateOf(work.day), stroke: ink.work, strokeDasharray: "4,3", strokeWidth: 1.3,
    }),
  ];
}

/** Visits that follow each other closely are joined; nothing is drawn over a
    work or over more than three weeks nobody measured. */
export function joined(visits: Scored[], works: WorkTick[]): Scored[][] {
  const runs: Scored[][] = [];
  for (const visit of visits) {
    const run = runs[runs.length - 1];
    const before = run?.[run.length - 1];
    const gap = before ? (dateOf(visit.day).getTime() - dateOf(before.day).getTime()) / 86_400_000 : Infinity;
    const cut = before && works.some((work) => work.day > before.day && work.day <= visit.day);
    if (run && gap <= 21 && !cut) run.push(visit);
    else runs.push([visit]);
  }
  return runs;
}

function scorePanel(season: SeasonReview, size: PanelSize, settings: Settings) {
  const visits = season.visits.filter((visit): visit is Scored => visit.score !== undefined);
  const lowest = Math.min(5, ...visits.map((visit) => visit.lowest ?? visit.score));
  const at = (visit: Scored) => dateOf(visit.day);
  const isTrue = (visit: Scored) => visit.score >= standardOn(season.standards, visit.day);
  const steps = season.standards.map((step) => ({ day: dateOf(step.from), score: step.score }));
  const last = steps[steps.length - 1];
  if (last) steps.push({ day: yearDomain(season.year)[1], score: last.score });
  const title = (visit: Scored) =>
    [shortDay(visit.day), `${w.scoreAxis} ${score(visit.score, settings)}`,
      visit.lowest !== undefined && visit.highest !== undefined
        ? `${score(visit.lowest, settings)} – ${score(visit.highest, settings)}` : "",
      visit.observer].filter(Boolean).join("\n");
  const common = { x: at, y: (visit: Scored) => visit.score };
  return panel(size, { domain: [Math.floor(lowest) - 0.5, 10.2], ticks: 6, tickFormat: (v: number) => number(v, 0, settings) }, [
    Plot.axisY({ anchor: "left", tickSize: 0, color: ink.quiet, fontSize: 13, tickSpacing: 36, tickFormat: (v: number) => String(v) }),
    Plot.line(steps, { x: "day", y: "score", curve: "step-after", stroke: ink.standard, strokeWidth: 2 }),
    ...workRules(season),
    ...joined(visits, disruptive(season)).map((run) =>
      Plot.line(run, { ...common, stroke: ink.quiet, strokeOpacity: 0.45, strokeWidth: 1.2 })),
    Plot.ruleX(visits.filter((visit) => visit.lowest !== undefined && visit.highest !== undefined), {
      x: at, y1: (visit: Scored) => visit.lowest as number, y2: (visit: Scored) => visit.highest as number,
      stroke: ink.text, strokeOpacity: 0.22, strokeWidth: size.width < 560 ? 2 : 3, strokeLinecap: "round",
    }),
    Plot.dot(visits.filter(isTrue), { ...common, r: 5, fill: ink.isTrue, stroke: "var(--paper)" }),
    Plot.dot(visits.filter((visit) => !isTrue(visit)), {
      ...common, r: 6, symbol: "triangle2", rotate: 180, fill: ink.isNot, stroke: "var(--paper)",
    }),
    Plot.tip(visits, Plot.pointerX({ ...common, title, fontSize: 14, fill: "var(--paper)", stroke: ink.quiet })),
  ]);
}

function speedPanel(season: SeasonReview, size: PanelSize, settings: Settings) {
  const visits = season.visits.flatMap((visit) => (visit.speed ? [{ day: visit.day, ...visit.speed }] : []));
  if (visits.length === 0) return undefined;
  type Speed = (typeof visits)[number];
  const at = (visit: Speed) => dateOf(visit.day);
  // Round ticks in the unit shown: whole feet read better than odd metres.
  const foot = settings.unit === "ft_in" ? 0.3048 : 0.5;
  const low = Math.floor(Math.min(...visits.map((v) => v.speed_m - v.standard_error_m)) / foot) * foot;
  const high = Math.ceil(Math.max(...visits.map((v) => v.speed_m + v.standard_error_m)) / foot) * foot;
  const ticks = Array.from({ length: Math.round((high - low) / foot) + 1 }, (_, step) => low + step * foot);
  const title = (visit: Speed) => `${shortDay(visit.day)}\n${w.speedAxis} ${length(visit.speed_m, settings)}`;
  return panel(size, { domain: [low, high] }, [
    Plot.axisY(ticks.filter((_, step) => ticks.length < 6 || step % 2 === 0), {
      anchor: "left", tickSize: 0, color: ink.quiet, fontSize: 13, tickFormat: (v: number) => tickLength(v, settings),
    }),
    ...workRules(season),
    Plot.ruleX(visits, {
      x: at, y1: (v: Speed) => v.speed_m - v.standard_error_m, y2: (v: Speed) => v.speed_m + v.standard_error_m,
      stroke: ink.accent, strokeOpacity: 0.4, strokeWidth: 2,
    }),
    Plot.dot(visits, { x: at, y: "speed_m", r: 5, symbol: "diamond", fill: ink.accent, stroke: "var(--paper)" }),
    Plot.tip(visits, Plot.pointerX({ x: at, y: "speed_m", title, fontSize: 14, fill: "var(--paper)", stroke: ink.quiet })),
  ]);
}

function tickLength(metres: number, settings: Settings): string {
  if (settings.unit === "m") return number(metres, 1, settings);
  if (settings.unit === "cm") return number(metres * 100, 0, settings);
  return `${Math.round(metres / 0.3048)}'`;
}

function weatherPanels(season: SeasonReview, size: PanelSize, low: boolean): Node[] {
  const growth = season.weather.map((day) => ({ at: dateOf(day.day), growth: day.growth ?? NaN }));
  const rain = season.weather.flatMap((day) => (day.rain_mm ? [{ at: dateOf(day.day), rain: day.rain_mm }] : []));
  const axis = (ticks: number[]) => Plot.axisY(ticks, { anchor: "left", tickSize: 0, color: ink.quiet, fontSize: 13 });
  const highest = Math.max(20, ...rain.map((day) => day.rain));
  return [
    titled(w.growthAxis, panel({ ...size, height: low ? 46 : 84 }, { domain: [0, 1] }, [
      axis([0, 1]),
      Plot.areaY(growth, { x: "at", y: "growth", fill: ink.growth, fillOpacity: 0.75 }),
      ...workRules(season),
    ])),
    titled(w.rainAxis, panel({ ...size, height: low ? 66 : 104, bottom: true }, { domain: [0, highest] }, [
      axis([0, Math.floor(highest / 20) * 20]),
      Plot.ruleX(rain, { x: "at", y: "rain", stroke: ink.rain, strokeWidth: Math.max(1, size.width / 520) }),
      ...workRules(season),
    ])),
  ];
}

/** The panels of one green's year, one under the other on the same days. */
export function drawYear(season: SeasonReview, width: number, settings: Settings, low = false): Node[] {
  const height = low ? 128 : width < 560 ? 240 : 290;
  const size: PanelSize = { width, height, year: season.year, marginLeft: 42 };
  const weather = season.weather.length > 0 ? weatherPanels(season, size, low) : [];
  const bottom = weather.length === 0;
  const speed = speedPanel(season, { ...size, height: low ? 80 : 150, bottom }, settings);
  const levels = season.standards.map((step) => step.score);
  const level = (value: number) => number(value, Number.isInteger(value) ? 0 : 1, settings);
  return [
    titled(w.works, worksPanel(season, letters(season), size, low || width < 560)),
    titled(w.scoreAxis, scorePanel(season, { ...size, bottom: bottom && !speed }, settings),
      levels.length > 0 ? w.standardLine(level(Math.min(...levels)), level(Math.max(...levels))) : undefined),
    ...(speed ? [titled(w.speedAxis, speed)] : []),
    ...weather,
  ];
}
