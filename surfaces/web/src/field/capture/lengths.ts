// Lengths as a thumb enters them. A foot is 0.3048 m and an inch 0.0254 m, exactly.
export type PadUnit = "ft_in" | "cm" | "m";
const step = (unit: PadUnit) => (unit === "ft_in" ? 0.0254 : 0.01);

/** Whole inches or centimetres. */
export const toSteps = (metres: number, unit: PadUnit) => Math.round(metres / step(unit));
export const toMetres = (steps: number, unit: PadUnit) => Number((steps * step(unit)).toFixed(6));

/**
 * Last digits first: the value that ends in `tail` and lies nearest to the ball
 * before. Inches end in 0 to 11, centimetres in 00 to 99.
 */
export function nearest(before: number, tail: number, unit: PadUnit): number {
  const ring = unit === "ft_in" ? 12 : 100;
  const up = (((tail - before) % ring) + ring) % ring;
  const value = up <= ring / 2 ? before + up : before + up - ring;
  return value > 0 ? value : value + ring;
}

/** One foot or one metre up or down. */
export const coarse = (unit: PadUnit) => (unit === "ft_in" ? 12 : 100);

/** 10'2" or 311 cm or 3.11 m */
export function shown(metres: number, unit: PadUnit, decimal: string): string {
  const steps = toSteps(metres, unit);
  if (unit === "ft_in") return `${Math.floor(steps / 12)}'${steps % 12}"`;
  return unit === "cm" ? `${steps}\u00a0cm` : `${(steps / 100).toFixed(2).replace(".", decimal)}\u00a0m`;
}

/** A spread or an error: 3", 8 cm, 0.08 m */
export function shownSmall(metres: number, unit: PadUnit, decimal: string): string {
  return unit === "ft_in" ? `${Math.round(metres / 0.0254)}"` : shown(metres, unit, decimal);
}
