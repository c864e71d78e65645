import { isDeepStrictEqual } from "node:util";
import type { Club } from "../../../src/field/data/club";
import type { Entry, Row } from "../../../src/field/data/entries";
import { foldThing } from "../../../src/field/data/fold";
import { sha256 } from "../../../src/field/photos/sha256";
import { Refused, type HandOver, type Receipt, type Server } from "../../../src/field/sync/server";

export const club: Club = { club: { id: "c", name: "C" }, greens: [], observers: [] };

/** As expect().toEqual, without its cost: plays ask this some million times. */
export function must(wanted: unknown, found: unknown, what: string): void {
  if (!isDeepStrictEqual(found, wanted)) throw new Error(`${what}: ${JSON.stringify(found)}, not ${JSON.stringify(wanted)}`);
}

/** A few turns of the event loop: what else is at work goes on meanwhile. */
export async function turns(count: number): Promise<void> {
  for (let turn = 0; turn < count; turn += 1) await new Promise((next) => setImmediate(next));
}

/** What the network does to one request. */
export type Fate = "well" | "lost" | "answer lost" | "twice" | "late" | "half answered";
export const fates: Fate[] = ["well", "well", "lost", "answer lost", "twice", "late", "half answered"];

/** A club's server as docs/howto/phone_file.md describes it, the simplest that keeps to it. */
export class ModelServer {
  readonly disk = new Map<string, Entry>();
  /** checksums of pictures by photo */
  readonly pictures = new Map<string, string>();
  /** ids in the order in which they were first written down */
  readonly arrivals: string[] = [];
  private readonly onTheWay: HandOver[] = [];

  private keep(body: HandOver): Receipt {
    for (const entry of body.entries) {
      if (this.disk.has(entry.id)) continue;
      this.arrivals.push(entry.id);
      this.disk.set(entry.id, structuredClone(entry));
    }
    const visits = [...this.things().values()]
      .filter((entries) => entries[0]?.kind === "visit" && entries.some(({ id }) => body.entries.some((sent) => sent.id === id)))
      .map((entries) => {
        const { thing, values, conflicts } = foldThing(entries);
        const state = values.done === true && values.removed !== true ? ("accepted" as const) : ("open" as const);
        return { visit: thing, state, problems: [], conflicts: conflicts.length };
      });
    return { kept: body.entries.map(({ id }) => id), refused: [], visits, server_time: new Date(0).toISOString() };
  }

  things(): Map<string, Entry[]> {
    const all = new Map<string, Entry[]>();
    for (const entry of this.disk.values()) all.set(entry.thing, [...(all.get(entry.thing) ?? []), entry]);
    return all;
  }

  /** Nothing but the picture that an entry has told of. */
  private keepPicture(photo: string, bytes: ArrayBuffer): void {
    const sum = sha256(new Uint8Array(bytes));
    const told = [...this.disk.values()].some(({ thing, set }) => thing === photo && set.sha256 === sum);
    if (!told) throw new Refused("no such photo, or not as told");
    this.pictures.set(photo, sum);
  }

  /** What was held up arrives, in whatever order. */
  deliver(chance: (below: number) => number): void {
    while (this.onTheWay.length > 0) this.keep(this.onTheWay.splice(chance(this.onTheWay.length), 1)[0] as HandOver);
  }

  /** The server as one phone reaches it; `told` are the entries whose receipt came through. */
  reachedBy(told: Set<string>, fate: () => Fate, wait: () => number): Server {
    const fetched = async <T>(answer: () => T): Promise<T> => {
      const way = fate();
      await turns(wait());
      if (way !== "well" && way !== "twice" && way !== "half answered") throw new TypeError("Failed to fetch");
      return answer();
    };
    return {
      clubs: () => fetched(() => [{ id: "c", name: "C" }]),
      club: () => fetched(() => ({ club, tag: "1" })),
      entries: (_, since, limit) =>
        fetched(() => {
          const ids = this.arrivals.slice(since, since + limit);
          return { entries: ids.map((id) => this.disk.get(id) as Entry), next: since + ids.length };
        }),
      picture: async (_, photo, bytes) => {
        const way = fate();
        await turns(wait());
        if (way === "lost" || way === "late") throw new TypeError("Failed to fetch");
        if (way === "twice") this.keepPicture(photo, bytes);
        this.keepPicture(photo, bytes);
        if (way === "answer lost") throw new TypeError("Failed to fetch");
      },
      send: async (_, body) => {
        const way = fate();
        await turns(wait());
        if (way === "late") this.onTheWay.push(body);
        if (way === "lost" || way === "late") throw new TypeError("Failed to fetch");
        if (way === "twice") this.keep(body);
        const receipt = this.keep(body);
        await turns(wait());
        if (way === "answer lost") throw new TypeError("Failed to fetch");
        if (way === "half answered") receipt.kept.splice(1 + Math.floor(receipt.kept.length / 2));
        for (const id of receipt.kept) told.add(id);
        return receipt;
      },
    };
  }
}

export const idsOf = (rows: Row[]) => rows.map((row) => row.entry.id);
