import { createContext } from "preact";
import { useContext } from "preact/hooks";
import type { Acts } from "./capture/acts";
import { shown, shownSmall } from "./capture/lengths";
import type { Core } from "./core";
import type { Book } from "./data/book";
import type { Club } from "./data/club";
import { feel, type Feeling } from "./feel";
import type { Prefs } from "./prefs";
import type { Sync } from "./sync/sync";
import type { Words } from "./words";

/** A ball released in this page's life: only then are its marks timed. */
export interface Live {
  ball: string;
  /** of the touch, on the page's own clock, ms */
  released: number;
}

/** What every part of the page may use. */
export interface Field {
  book: Book;
  acts: Acts;
  sync: Sync;
  /** absent until loaded, and on a phone that cannot load it: nothing is offered then */
  core: Core | undefined;
  prefs: Prefs;
  prefer(change: Partial<Prefs>): void;
  words: Words;
  club: Club | undefined;
  live: { current: Live | undefined };
  /** runs what a touch asks for; what the storage refuses is told on the whole screen */
  act(work: () => Promise<unknown>): Promise<boolean>;
}

export const FieldContext = createContext<Field | undefined>(undefined);
export function useField(): Field {
  const field = useContext(FieldContext);
  if (!field) throw new Error("outside of the page");
  return field;
}

export function useShown() {
  const { prefs, words } = useField();
  const decimal = (text: string) => text.replace(".", prefs.decimal);
  return {
    length: (metres: number | null | undefined) => (metres == null ? words.none : shown(metres, prefs.unit, prefs.decimal)),
    small: (metres: number) => shownSmall(metres, prefs.unit, prefs.decimal),
    number: (value: number, places: number) => decimal(value.toFixed(places)),
    day: (iso: string) => new Date(`${iso}T12:00:00`).toLocaleDateString(prefs.language === "en" ? "en-GB" : prefs.language, { day: "numeric", month: "short" }),
  };
}
export function useFeel() {
  const { prefs } = useField();
  return (what: Feeling) => feel(what, prefs);
}

export type Page =
  | "home" | "visit" | "menu" | "conditions" | "note" | "reading" | "work" | "kept" | "settings"
  | "green" | "observer" | "mode" | "pair" | "spots" | "ball" | "summary" | "when" | "photos";
export interface Place {
  page: Page;
  of: string;
}
export const go = (page: Page, of = "") => (location.hash = `#${page}${of && `/${encodeURIComponent(of)}`}`);
export const goBack = () => (history.length > 1 ? history.back() : go("visit"));
export function placeOf(hash: string): Place {
  const [page = "", of = ""] = hash.replace(/^#/, "").split("/");
  return { page: (page || "visit") as Page, of: decodeURIComponent(of) };
}
