import type { PadUnit } from "./capture/lengths";
import { modes, type Mode } from "./capture/session";
import type { Direction } from "./data/entries";
import { languages, likelyLanguage, usualDecimal, type Language } from "./words";

/** How this person likes it, and what was used last. Nothing here is a record. */
export interface Prefs {
  language: Language;
  theme: "sun" | "quiet";
  hand: "right" | "left";
  unit: PadUnit;
  decimal: "." | ",";
  buzz: boolean;
  sound: boolean;
  explicit: boolean;
  nearest: boolean;
  club: string;
  observer: string;
  mode: Mode;
  first: Direction;
  /** last spot of each green */
  spots: Record<string, string>;
  green: string;
  device: string;
  rod: string;
  reading: string;
}

const place = "baize.field";

export function readPrefs(text: string | null, desk: string | null, wanted: readonly string[]): Prefs {
  const object = (source: string | null): Record<string, unknown> => {
    try {
      const found: unknown = JSON.parse(source ?? "{}");
      return found !== null && typeof found === "object" ? (found as Record<string, unknown>) : {};
    } catch {
      return {};
    }
  };
  const kept = object(text);
  const units = [kept.unit, object(desk).unit];
  const word = (value: unknown) => (typeof value === "string" ? value : "");
  const language = word(kept.language) in languages ? (kept.language as Language) : likelyLanguage(wanted);
  const spots = kept.spots !== null && typeof kept.spots === "object" ? (kept.spots as Record<string, string>) : {};
  return {
    language,
    theme: kept.theme === "quiet" ? "quiet" : "sun",
    hand: kept.hand === "left" ? "left" : "right",
    unit: units.find((unit): unit is PadUnit => unit === "ft_in" || unit === "cm" || unit === "m") ?? "ft_in",
    decimal: kept.decimal === "," || kept.decimal === "." ? kept.decimal : usualDecimal(language),
    buzz: kept.buzz !== false,
    sound: kept.sound === true,
    explicit: kept.explicit === true,
    nearest: kept.nearest === true,
    club: word(kept.club), observer: word(kept.observer), green: word(kept.green),
    mode: modes.find((mode) => mode === kept.mode) ?? "full",
    first: kept.first === "back" ? "back" : "out",
    spots, device: word(kept.device), rod: word(kept.rod), reading: word(kept.reading),
  };
}

export function loadPrefs(): Prefs {
  try {
    return readPrefs(localStorage.getItem(place), localStorage.getItem("baize.settings"), navigator.languages);
  } catch {
    return readPrefs(null, null, navigator.languages);
  }
}
export function keepPrefs(prefs: Prefs): void {
  try {
    localStorage.setItem(place, JSON.stringify(prefs));
  } catch {
    // Then they hold until the page is closed.
  }
}
