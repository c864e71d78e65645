import { createContext } from "preact";
import { useContext } from "preact/hooks";

export type LengthUnit = "ft_in" | "m" | "cm";
export type DecimalMark = "." | ",";
export interface Settings {
  unit: LengthUnit;
  decimal: DecimalMark;
}

const place = "baize.settings";
export const startSettings: Settings = { unit: "ft_in", decimal: "." };

/** What was chosen before; anything unreadable counts as not chosen. */
export function readSettings(text: string | null): Settings {
  let found: Partial<Settings> = {};
  try {
    found = (JSON.parse(text ?? "{}") ?? {}) as Partial<Settings>;
  } catch {
    // Somebody else's text under our name: start afresh.
  }
  return {
    unit: found.unit === "m" || found.unit === "cm" ? found.unit : startSettings.unit,
    decimal: found.decimal === "," ? "," : startSettings.decimal,
  };
}

// Storage may be forbidden (a report opened from a file, a private window).
export function loadSettings(): Settings {
  try {
    return readSettings(localStorage.getItem(place));
  } catch {
    return startSettings;
  }
}

export function keepSettings(settings: Settings): void {
  try {
    localStorage.setItem(place, JSON.stringify(settings));
  } catch {
    // The choice then holds until the page is closed.
  }
}

export const SettingsContext = createContext<Settings>(startSettings);
export const useSettings = () => useContext(SettingsContext);
