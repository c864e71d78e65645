import type { Mark } from "../core_types";
import type { Book } from "../data/book";
import type { Direction, RollFields, TotalFields, VisitFields } from "../data/entries";

/** One roll as it stands now. Absent: not measured, or taken back. */
export interface Ball {
  thing: string;
  visit: string;
  spot: string;
  direction: Direction;
  order: number;
  distance?: number | undefined;
  /** the distance was said to be missing, so it is not asked for again */
  unmeasured: boolean;
  score?: number | undefined;
  marks?: Mark[] | undefined;
  released?: string | undefined;
  stopped?: string | undefined;
}

export interface RunTotal {
  thing: string;
  spot: string;
  direction: Direction;
  total: number;
  total_of: number;
}

export function ballsOf(book: Book, visit: string): Ball[] {
  return book
    .things("roll")
    .filter(({ values }) => values.visit === visit)
    .map(({ thing, values }): Ball => {
      const roll = values as RollFields;
      return {
        thing, visit,
        spot: roll.spot ?? "",
        direction: roll.direction ?? "out",
        order: roll.order ?? 0,
        distance: roll.distance ?? undefined,
        unmeasured: roll.distance === null,
        score: roll.score ?? undefined,
        marks: roll.marks ?? undefined,
        released: roll.released ?? undefined,
        stopped: roll.stopped ?? undefined,
      };
    })
    .sort((a, b) => a.order - b.order || (a.thing < b.thing ? -1 : 1));
}

export function totalsOf(book: Book, visit: string): RunTotal[] {
  return book
    .things("total")
    .filter(({ values }) => values.visit === visit && typeof values.total === "number")
    .map(({ thing, values }) => {
      const run = values as TotalFields;
      return { thing, spot: run.spot ?? "", direction: run.direction ?? "out", total: run.total as number, total_of: run.total_of ?? 0 };
    });
}

export const runOf = <T extends { spot: string; direction: Direction }>(all: T[], spot: string, direction: Direction) =>
  all.filter((one) => one.spot === spot && one.direction === direction);

export function visitFields(book: Book, visit: string): VisitFields {
  return (book.thing(visit)?.values ?? {}) as VisitFields;
}

/** Released, and the stop not yet told. */
export const rolling = (ball: Ball | undefined): ball is Ball =>
  ball !== undefined && ball.released !== undefined && ball.stopped === undefined;
