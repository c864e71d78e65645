import * as Plot from "@observablehq/plot";
import type { Fixture, SeasonReview, WorkTick } from "../api/schemas";
import { dateOf } from "../state/format";
import { words } from "../words";
import { ink, panel, yearDomain, type PanelSize } from "./frame";

interface Placed {
  work: WorkTick;
  text: string;
  lane: number;
  left: boolean;
}

const letterWidth = 7.4;
const laneHeight = 20;

/** Letter and label, or the letter alone where that must do. Side by side where they fit, else
    a lane lower. A label that would run over the edge stands to the left of its line. */
export function lanes(works: WorkTick[], letters: Map<string, string>, size: PanelSize, brief: boolean): Placed[] {
  const [from, to] = yearDomain(size.year).map(Number) as [number, number];
  const inner = size.width - size.marginLeft;
  const spans: { from: number; to: number; lane: number }[] = [];
  return works.map((work) => {
    const x = ((Number(dateOf(work.day)) - from) / (to - from)) * inner;
    const badge = letters.get(work.work) ?? "";
    const half = work.half ? `, ${words.work.half(work.half)}` : "";
    const text = brief ? badge : `${badge}  ${work.label}${half}`;
    const reach = text.length * letterWidth + 14;
    const left = x + reach > inner;
    const span = left ? { from: x - reach, to: x + 4 } : { from: x - 4, to: x + reach };
    // Below every label it would touch, for its line runs down through the lower lanes.
    const touched = spans.filter((other) => other.from < span.to && span.from < other.to);
    const lane = Math.max(-1, ...touched.map((other) => other.lane)) + 1;
    spans.push({ ...span, lane });
    return { work, text, lane, left };
  });
}

/** Works as labelled ticks; closures as bars, routine works as short ticks,
    fixtures as stars. */
export function worksPanel(season: SeasonReview, letters: Map<string, string>, size: PanelSize, brief: boolean) {
  const of = (kind: WorkTick["work_class"]) => season.works.filter((work) => work.work_class === kind);
  const placed = lanes(of("disruptive"), letters, size, brief);
  const count = Math.max(1, ...placed.map((one) => one.lane + 1));
  const base = count + 0.9;
  // A closure may begin the year before and end the year after.
  const [first, end] = yearDomain(size.year);
  const inside = (day: string) => new Date(Math.min(Number(end), Math.max(Number(first), Number(dateOf(day)))));
  const label = (ones: Placed[], left: boolean) =>
    Plot.text(ones, {
      x: (one: Placed) => dateOf(one.work.day), y: (one: Placed) => one.lane + 0.5, text: "text",
      textAnchor: left ? "end" : "start", dx: left ? -6 : 6, fill: ink.text, fontWeight: 600,
    });
  return panel(
    { ...size, height: 20 + (base + 0.5) * laneHeight },
    { domain: [base + 0.5, 0], axis: null },
    [
      Plot.ruleX(placed, {
        x: (one: Placed) => dateOf(one.work.day), y1: (one: Placed) => one.lane + 0.1, y2: base + 0.5,
        stroke: ink.work, strokeWidth: 1.6,
      }),
      label(placed.filter((one) => !one.left), false),
      label(placed.filter((one) => one.left), true),
      Plot.ruleY(of("closing"), {
        y: base,
        x1: (work: WorkTick) => inside(work.day), x2: (work: WorkTick) => inside(work.until ?? work.day),
        stroke: ink.quiet, strokeWidth: 7, strokeOpacity: 0.5,
      }),
      Plot.tickX(of("routine"), {
        x: (work: WorkTick) => dateOf(work.day), y: undefined, stroke: ink.quiet, strokeWidth: 1.2, strokeOpacity: 0.55,
        insetTop: (base - 0.4) * laneHeight, title: "label",
      }),
      Plot.dot(season.fixtures, {
        x: (fixture: Fixture) => dateOf(fixture.days.first), y: base, symbol: "star",
        r: (fixture: Fixture) => 2.5 + 1.5 * fixture.importance, fill: ink.standard, title: "name",
      }),
    ],
  );
}
