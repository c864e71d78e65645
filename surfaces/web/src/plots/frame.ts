import * as Plot from "@observablehq/plot";
import { dateOf, addDays, dayParts } from "../state/format";
import { words } from "../words";

// Colours come from the page's style, so that light, dark and print need no redraw.
export const ink = {
  text: "var(--ink)",
  quiet: "var(--ink-2)",
  line: "var(--line)",
  isTrue: "var(--true)",
  isNot: "var(--not)",
  accent: "var(--accent)",
  standard: "var(--standard)",
  rain: "var(--rain)",
  growth: "var(--growth)",
  work: "var(--work)",
  band: "var(--band)",
};

/** The calendar year along the bottom of every panel, whatever is known of it. */
export function yearDomain(year: number): [Date, Date] {
  return [dateOf(`${year}-01-01`), dateOf(`${year + 1}-01-01`)];
}

export function monthStarts(year: number): Date[] {
  return words.months.map((_, month) => dateOf(`${year}-${String(month + 1).padStart(2, "0")}-01`));
}

export interface PanelSize {
  width: number;
  height: number;
  year: number;
  marginLeft: number;
  bottom?: boolean;
}

const marginRight = 12;

/** One of the panels that share the year's days, drawn to the same margins. */
export function panel(size: PanelSize, y: Plot.ScaleOptions, marks: Plot.Markish[]): SVGSVGElement | HTMLElement {
  const narrow = size.width < 560;
  const middles = monthStarts(size.year).map((date) => dateOf(addDays(date.toISOString().slice(0, 10), 14)));
  return bare(Plot.plot({
    className: "plot",
    width: size.width,
    height: size.height,
    marginLeft: size.marginLeft,
    marginRight,
    marginTop: 10,
    marginBottom: size.bottom ? 26 : 6,
    x: { type: "utc", domain: yearDomain(size.year), axis: null },
    y: { ...y, label: null },
    style: { fontSize: "13px", fontFamily: "inherit", overflow: "visible", color: ink.text, background: "none" },
    marks: [
      Plot.ruleX(monthStarts(size.year), { stroke: ink.line, strokeWidth: 1 }),
      ...(size.bottom
        ? [
            Plot.text(middles, {
              x: (date: Date) => date,
              text: (date: Date) => {
                const { month } = dayParts(date.toISOString().slice(0, 10));
                return (narrow ? words.monthLetters : words.monthShort)[month - 1] ?? "";
              },
              frameAnchor: "bottom",
              dy: 20,
              fill: ink.quiet,
            }),
          ]
        : []),
      ...marks,
    ],
  }));
}

/** The library's own style element goes: the server's content policy refuses
    styles inside the page, and charts.css says the same. */
export function bare(plot: SVGSVGElement | HTMLElement): SVGSVGElement | HTMLElement {
  for (const style of plot.querySelectorAll("style")) style.remove();
  plot.setAttribute("aria-hidden", "true");
  return plot;
}

export function titled(text: string, node: Node, note?: string): Node {
  const box = document.createElement("div");
  box.className = "panel";
  const title = document.createElement("p");
  title.className = "panel-title";
  title.textContent = text;
  if (note) {
    const small = document.createElement("span");
    small.className = "quiet";
    small.textContent = ` ${note}`;
    title.append(small);
  }
  box.append(title, node);
  return box;
}
