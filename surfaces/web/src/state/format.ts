import type { Settings } from "./settings";
import { words } from "../words";

const minus = "\u2212";
const metresPerInch = 0.0254; // exact by definition

/** Rounded half away from zero, with trailing zeros kept and the chosen decimal mark. */
export function number(value: number, places: number, settings: Settings): string {
  const factor = 10 ** places;
  // The small share lifts halves that binary fractions hold a hair too low.
  const rounded = Math.round(Math.abs(value) * factor * (1 + Number.EPSILON * 4)) / factor;
  const text = rounded.toFixed(places).replace(".", settings.decimal);
  return value < 0 && rounded !== 0 ? minus + text : text;
}

/** A text with points between digits, with the chosen decimal mark instead. */
export const withDecimal = (text: string, settings: Settings) =>
  settings.decimal === "." ? text : text.replace(/(\d)\.(?=\d)/g, `$1${settings.decimal}`);

/** A length in the chosen unit: 10'2", 3.11 m, 311 cm. */
export function length(metres: number, settings: Settings): string {
  switch (settings.unit) {
    case "m":
      return `${number(metres, 2, settings)}\u00a0m`;
    case "cm":
      return `${number(metres * 100, 0, settings)}\u00a0cm`;
    case "ft_in": {
      const inches = Math.round(Math.abs(metres) / metresPerInch);
      const sign = metres < 0 && inches > 0 ? minus : "";
      return `${sign}${Math.floor(inches / 12)}'${inches % 12}"`;
    }
  }
}

/** A small length, such as an error or a spread: 3", 0.08 m, 8 cm. */
export function smallLength(metres: number, settings: Settings): string {
  return settings.unit === "ft_in"
    ? `${number(metres / metresPerInch, 0, settings)}"`
    : length(metres, settings);
}

export const score = (value: number, settings: Settings) => number(value, 1, settings);

export function signed(value: number, settings: Settings): string {
  const text = number(value, 1, settings);
  return value > 0 && Number(text.replace(",", ".")) !== 0 ? `+${text}` : text;
}

interface DayParts {
  year: number;
  month: number;
  day: number;
}

export function dayParts(iso: string): DayParts {
  const [year = 0, month = 1, day = 1] = iso.split("-").map(Number);
  return { year, month, day };
}

/** 17 March 2025 */
export function longDay(iso: string): string {
  const { year, month, day } = dayParts(iso);
  return words.longDay(day, month, year);
}

/** 17 Mar */
export function shortDay(iso: string): string {
  const { month, day } = dayParts(iso);
  return words.shortDay(day, month);
}

/** 17 Mar 2025 */
export function middleDay(iso: string): string {
  const { year, month, day } = dayParts(iso);
  return words.middleDay(day, month, year);
}

/** Midnight UTC of a club's day: only for drawing, where a day is a number. */
export const dateOf = (iso: string) => new Date(`${iso}T00:00:00Z`);
export const isoOf = (date: Date) => date.toISOString().slice(0, 10);
export function addDays(iso: string, days: number): string {
  const date = dateOf(iso);
  date.setUTCDate(date.getUTCDate() + days);
  return isoOf(date);
}

/** 07:09, on the reader's own clock, of an instant in UTC. */
export function timeOfDay(instant: string): string {
  const at = new Date(instant);
  return `${String(at.getHours()).padStart(2, "0")}:${String(at.getMinutes()).padStart(2, "0")}`;
}
