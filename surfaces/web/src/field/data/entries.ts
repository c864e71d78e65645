import type { Mark } from "../core_types";

export type Kind = "visit" | "roll" | "total" | "reading" | "work" | "photo";
export type Direction = "out" | "back";
export type Fields = Record<string, unknown>;

/** What a phone writes down: never changed, never removed. */
export interface Entry {
  id: string;
  phone: string;
  /** the phone's clock, UTC */
  at: string;
  by: string;
  kind: Kind;
  thing: string;
  set: Fields;
  /** the newest entries of this thing that were known when this one was written */
  over: string[];
}

/** What the person did, so that it can be named when it is taken back. */
export type Deed =
  | "start" | "release" | "bobble" | "chatter" | "snake" | "stop" | "score" | "marks"
  | "distance" | "total" | "conditions" | "note" | "finish" | "reading" | "work" | "photo" | "undo" | "solve" | "remove" | "when";

/** An entry as the journal holds it; everything beside `entry` stays on the phone. */
export interface Row {
  seq: number;
  club: string;
  entry: Entry;
  deed: Deed;
  /** entries written by one touch are taken back by one touch */
  touch: string;
  /** the touch that this row takes back */
  undoes?: string;
}

export interface Draft {
  kind: Kind;
  thing: string;
  by: string;
  set: Fields;
}

export interface VisitFields {
  club?: string;
  green?: string;
  half?: string | null;
  observer?: string;
  day?: string;
  from?: string;
  to?: string | null;
  shared_rolls?: string | null;
  hours_since_mowing?: number | null;
  hours_since_rolling?: number | null;
  dew?: string | null;
  wind?: string | null;
  surface?: string | null;
  note?: string | null;
  done?: boolean | null;
  removed?: boolean | null;
}

export interface RollFields {
  visit?: string;
  spot?: string;
  direction?: Direction;
  order?: number;
  distance?: number | null;
  score?: number | null;
  marks?: Mark[] | null;
  released?: string | null;
  stopped?: string | null;
  removed?: boolean | null;
}

export interface TotalFields {
  visit?: string;
  spot?: string;
  direction?: Direction;
  total?: number | null;
  total_of?: number | null;
  removed?: boolean | null;
}

export interface PhotoFields {
  /** the visit it was taken at, or else the work it shows */
  visit?: string;
  work?: string;
  taken?: string;
  /** of the picture's bytes */
  sha256?: string;
  bytes?: number;
  note?: string | null;
  removed?: boolean | null;
}
