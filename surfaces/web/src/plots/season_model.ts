import * as Plot from "@observablehq/plot";
import type { ModelDay, SeasonModel } from "../api/schemas";
import { dateOf, number, shortDay } from "../state/format";
import type { Settings } from "../state/settings";
import { seasonModelWords as w } from "../words_season_model";
import { ink, panel, titled, yearDomain, type PanelSize } from "./frame";

const axis = (ticks: number[], format: (v: number) => string = String) =>
  Plot.axisY(ticks, { anchor: "left", tickSize: 0, color: ink.quiet, fontSize: 13, tickFormat: format });
const at = (day: ModelDay) => dateOf(day.day);

function workRules(model: SeasonModel, year: ModelDay[]): Plot.Markish[] {
  const days = new Set(year.map((day) => day.day));
  const works = model.works.filter((work) => days.has(work.day));
  const today = year.find((day) => day.to_come);
  return [
    Plot.ruleX(works, { x: (work: SeasonModel["works"][number]) => dateOf(work.day), stroke: ink.work, strokeDasharray: "4,3", strokeWidth: 1.3 }),
    ...(today ? [Plot.ruleX([today], { x: at, stroke: ink.quiet, strokeWidth: 1 })] : []),
  ];
}

function scorePanel(model: SeasonModel, days: ModelDay[], size: PanelSize, settings: Settings) {
  const low = Math.floor(Math.min(6, ...days.map((day) => day.score_low)));
  const title = (day: ModelDay) =>
    `${shortDay(day.day)}\n${number(day.score, 1, settings)} (${number(day.score_low, 1, settings)} – ${number(day.score_high, 1, settings)})`;
  return panel(size, { domain: [low, 10] }, [
    axis(Array.from({ length: 11 - low }, (_, step) => low + step)),
    Plot.areaY(days, { x: at, y1: "score_low", y2: "score_high", fill: ink.accent, fillOpacity: 0.22 }),
    Plot.line(days, { x: at, y: "standard", curve: "step-after", stroke: ink.standard, strokeWidth: 2 }),
    ...workRules(model, days),
    Plot.line(days, { x: at, y: "undisturbed", stroke: ink.quiet, strokeDasharray: "2,3", strokeWidth: 1.5 }),
    Plot.line(days.filter((day) => !day.to_come), { x: at, y: "score", stroke: ink.accent, strokeWidth: 2 }),
    Plot.line(days.filter((day) => day.to_come), { x: at, y: "score", stroke: ink.accent, strokeWidth: 2, strokeDasharray: "6,4" }),
    Plot.tip(days, Plot.pointerX({ x: at, y: "score", title, fontSize: 14, fill: "var(--paper)", stroke: ink.quiet })),
  ]);
}

function lossPanel(model: SeasonModel, days: ModelDay[], size: PanelSize) {
  const rows = days.flatMap((day) =>
    day.losses.map((loss, place) => ({ at: at(day), loss: Math.max(loss, 0), work: place })));
  const most = Math.max(1, ...days.map((day) => day.losses.reduce((sum, loss) => sum + Math.max(loss, 0), 0)));
  return panel(size, { domain: [0, Math.ceil(most)] }, [
    axis([0, Math.ceil(most)]),
    Plot.areaY(rows, Plot.stackY({
      x: "at", y: "loss", z: "work", fill: ink.work, stroke: "var(--paper)", strokeWidth: 0.8,
      fillOpacity: (row: { work: number }) => (row.work % 2 === 0 ? 0.75 : 0.45),
    } as Plot.AreaYOptions)),
    ...workRules(model, days),
  ]);
}

/** Estimated score with its band, losses by work and the chance of rolling true. */
export function drawSeasonModel(model: SeasonModel, width: number, settings: Settings): Node[] {
  const end = yearDomain(model.year)[1];
  const days = model.days.filter((day) => dateOf(day.day) < end);
  const size: PanelSize = { width, height: width < 560 ? 210 : 250, year: model.year, marginLeft: 42 };
  const whole = (v: number) => `${Math.round(v * 100)}`;
  return [
    titled(w.score, scorePanel(model, days, size, settings), w.scoreNote),
    titled(w.losses, lossPanel(model, days, { ...size, height: 90 })),
    titled(`${w.chance}, %`, panel({ ...size, height: 100, bottom: true }, { domain: [0, 1] }, [
      axis([0, 0.5, 1], whole),
      Plot.areaY(days, { x: at, y: "chance", fill: ink.isTrue, fillOpacity: 0.35 }),
      Plot.line(days, { x: at, y: "chance", stroke: ink.isTrue, strokeWidth: 1.5 }),
      ...workRules(model, days),
    ])),
  ];
}
