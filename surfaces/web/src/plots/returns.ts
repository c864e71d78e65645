import * as Plot from "@observablehq/plot";
import type { Definition, WorkAtGreen } from "../api/schemas";
import { bare, ink } from "./frame";
import { returnRows, type Row } from "./return_rows";

const rowHeight = 24;

/** All greens on one scale of days: a bar from the last visit below to the first back. */
export function drawReturns(greens: WorkAtGreen[], definition: Definition, width: number): Node[] {
  const rows = returnRows(greens, definition);
  if (rows.length === 0) return [];
  const longest = Math.max(10, ...rows.map((row) => row.by));
  const end = longest * 1.06;
  const names = Math.max(...rows.map((row) => row.green.length));
  const closed = rows.filter((row) => !row.open);
  const open = rows.filter((row) => row.open);
  const marginLeft = Math.min(150, 24 + names * 7);
  return [
    bare(Plot.plot({
      className: "plot",
      width,
      height: 40 + rows.length * rowHeight,
      marginLeft, marginRight: 14, marginTop: 6, marginBottom: 28,
      x: { domain: [0, end], label: null },
      y: { domain: rows.map((row) => row.green), label: null, padding: 0.35 },
      style: { fontSize: "14px", fontFamily: "inherit", color: ink.text, background: "none", overflow: "visible" },
      marks: [
        Plot.gridX({ stroke: ink.line, strokeOpacity: 1, ticks: width < 560 ? 5 : 10 }),
        Plot.axisX({ anchor: "bottom", tickSize: 0, color: ink.quiet, fontSize: 13, ticks: width < 560 ? 5 : 10 }),
        Plot.axisY({ anchor: "left", tickSize: 0, fontSize: 14 }),
        // A return seen on the very day of the last visit below would be no bar.
        Plot.barX(closed, { y: "green", x1: "after", x2: (row: Row) => Math.max(row.by, row.after + end / 150), fill: ink.isTrue, rx: 3 }),
        Plot.link(open, {
          y: "green", x1: "after", x2: (row: Row) => Math.min(end, row.after + end / 12),
          stroke: ink.isNot, strokeWidth: 3, markerEnd: "arrow",
        }),
        Plot.dot(open, { y: "green", x: "after", r: 5, symbol: "triangle2", rotate: 180, fill: ink.isNot }),
      ],
    })),
  ];
}
