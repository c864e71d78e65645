import { openDB, type DBSchema, type IDBPDatabase } from "idb";
import type { Deed, Draft, Entry, Row } from "./entries";
import { foldThing, type Thing } from "./fold";
import { Ids } from "./uuid";

/** What the server said of one entry. */
export interface Acknowledged {
  id: string;
  kept: boolean;
  sentence?: string;
}
/** Where a visit stands with the server, and likewise a reading or a work. */
export interface VisitState {
  visit: string;
  state: "accepted" | "refused" | "open";
  problems: string[];
  conflicts: number;
}
/** The bytes of a photo; they stay for a while after the server has kept them. */
export interface Picture {
  photo: string;
  club: string;
  bytes: ArrayBuffer;
  /** only here so far */
  waits?: 1;
  /** when the server had kept it, by the phone's clock */
  kept?: number;
}
/** What one touch writes besides its entries. */
export interface More {
  undoes?: string;
  kept?: Record<string, unknown>;
  picture?: Picture;
}
interface Shelves extends DBSchema {
  entries: { key: number; value: Row; indexes: { id: string } };
  acknowledged: { key: string; value: Acknowledged };
  visits: { key: string; value: VisitState };
  received: { key: string; value: { id: string; club: string; entry: Entry } };
  kept: { key: string; value: unknown };
  pictures: { key: string; value: Picture; indexes: { waits: number; kept: number } };
}
export const shelfName = "baize-field";
const version = 2;

/**
 * The journal: rows are only ever added, each written to the phone's storage
 * before `write` returns. Everything the screens show is derived from here.
 */
export class Book {
  rows: Row[] = [];
  readonly acknowledged = new Map<string, Acknowledged>();
  readonly visitStates = new Map<string, VisitState>();
  readonly received = new Map<string, { club: string; entry: Entry }>();
  /** how many pictures are on this phone */
  pictures = 0;
  /** photos whose pictures are only here so far, and why the server refused some in this page's life */
  private readonly unsent = new Set<string>();
  readonly picturesRefused = new Map<string, string>();
  phone = "";
  private readonly kept = new Map<string, unknown>();
  private readonly byThing = new Map<string, Entry[]>();
  private readonly folded = new Map<string, Thing>();
  private readonly watchers = new Set<() => void>();
  private readonly ids = new Ids();
  private queue: Promise<unknown> = Promise.resolve();
  changes = 0;

  private constructor(private readonly shelves: IDBPDatabase<Shelves>, private readonly now: () => number) {}

  static async open(now: () => number = Date.now, name = shelfName): Promise<Book> {
    const shelves = await openDB<Shelves>(name, version, {
      upgrade(fresh, from) {
        const pictures = fresh.createObjectStore("pictures", { keyPath: "photo" });
        pictures.createIndex("waits", "waits");
        pictures.createIndex("kept", "kept");
        if (from > 0) return; // the journal of a phone of before stays as it is
        fresh.createObjectStore("entries", { keyPath: "seq", autoIncrement: true }).createIndex("id", "entry.id", { unique: true });
        fresh.createObjectStore("acknowledged", { keyPath: "id" });
        fresh.createObjectStore("visits", { keyPath: "visit" });
        fresh.createObjectStore("received", { keyPath: "id" });
        fresh.createObjectStore("kept");
      },
    });
    const book = new Book(shelves, now);
    await book.read();
    return book;
  }

  /** An id that was never used, greater than all that this phone made before. */
  id(): string {
    return this.ids.next(this.now());
  }

  close(): void {
    this.shelves.close();
  }

  private async read(): Promise<void> {
    const all = this.shelves.transaction(["entries", "acknowledged", "visits", "received", "kept", "pictures"]);
    this.rows = await all.objectStore("entries").getAll();
    for (const one of await all.objectStore("acknowledged").getAll()) this.acknowledged.set(one.id, one);
    for (const one of await all.objectStore("visits").getAll()) this.visitStates.set(one.visit, one);
    for (const one of await all.objectStore("received").getAll()) this.received.set(one.id, one);
    const keys = await all.objectStore("kept").getAllKeys();
    const values = await all.objectStore("kept").getAll();
    this.pictures = await all.objectStore("pictures").count();
    for (const photo of await all.objectStore("pictures").index("waits").getAllKeys()) this.unsent.add(photo);
    await all.done;
    keys.forEach((key, at) => this.kept.set(key, values[at]));
    for (const { entry } of this.received.values()) this.index(entry);
    for (const { entry } of this.rows) {
      this.index(entry);
      // Also where the clock was set back while the page was closed.
      this.ids.after(entry.id);
    }
    const phone = this.kept.get("phone");
    this.phone = typeof phone === "string" ? phone : this.id();
    if (!phone) await this.keep("phone", this.phone);
  }

  private index(entry: Entry): void {
    const all = this.byThing.get(entry.thing) ?? [];
    if (all.some((one) => one.id === entry.id)) return;
    this.byThing.set(entry.thing, [...all, entry]);
    this.folded.delete(entry.thing);
  }

  /**
   * One touch of the person: its entries and what it changes in `kept`, all in
   * one transaction, in the order the touches came in. Resolves when the
   * storage has them. Drafts that depend on what stands are a function: it is
   * asked when the touches before are kept.
   */
  write(club: string, deed: Deed, drafts: Draft[] | (() => Draft[]), more: More = {}): Promise<Entry[]> {
    const done = this.queue.then(() => {
      const ready = typeof drafts === "function" ? drafts() : drafts;
      return ready.length > 0 ? this.writeNow(club, deed, ready, more) : [];
    });
    this.queue = done.catch(() => undefined);
    return done;
  }

  private async writeNow(club: string, deed: Deed, drafts: Draft[], more: More) {
    const at = new Date(this.now()).toISOString();
    const touch = this.id();
    const heads = new Map<string, string[]>();
    const rows = drafts.map(({ kind, thing, by, set }): Omit<Row, "seq"> => {
      const id = this.id();
      const over = heads.get(thing) ?? this.thing(thing)?.heads ?? [];
      heads.set(thing, [id]);
      return { club, deed, touch, entry: { id, phone: this.phone, at, by, kind, thing, set, over }, ...(more.undoes && { undoes: more.undoes }) };
    });
    const { picture } = more;
    const shelf = this.shelves.transaction(["entries", "kept", "pictures"], "readwrite", { durability: "strict" });
    const [, seqs] = await Promise.all([
      picture && shelf.objectStore("pictures").add(picture), // first: what is too large leaves nothing behind
      Promise.all(rows.map((row) => shelf.objectStore("entries").add(row as Row))),
      ...Object.entries(more.kept ?? {}).map(([key, value]) => shelf.objectStore("kept").put(value, key)),
      shelf.done,
    ]);
    for (const [key, value] of Object.entries(more.kept ?? {})) this.kept.set(key, value);
    if (picture) {
      this.pictures += 1;
      this.unsent.add(picture.photo);
    }
    rows.forEach((row, place) => {
      this.rows.push({ ...row, seq: seqs[place] as number });
      this.index(row.entry);
    });
    this.changed();
    return rows.map((row) => row.entry);
  }

  /** Small things beside the journal: the phone's id, the club's list, the visit at work. */
  get<T>(key: string): T | undefined {
    return this.kept.get(key) as T | undefined;
  }
  async keep(key: string, value: unknown): Promise<void> {
    await this.shelves.put("kept", value, key);
    this.kept.set(key, value);
    this.changed();
  }

  async acknowledge(answers: Acknowledged[], visits: VisitState[]): Promise<void> {
    const shelf = this.shelves.transaction(["acknowledged", "visits"], "readwrite", { durability: "strict" });
    await Promise.all([
      ...answers.map((one) => shelf.objectStore("acknowledged").put(one)),
      ...visits.map((one) => shelf.objectStore("visits").put(one)),
      shelf.done,
    ]);
    for (const one of answers) this.acknowledged.set(one.id, one);
    for (const one of visits) this.visitStates.set(one.visit, one);
    this.changed();
  }

  /** What was refused is sent once more. */
  async forgetRefusals(): Promise<void> {
    const refused = [...this.acknowledged.values()].filter((one) => !one.kept);
    const shelf = this.shelves.transaction("acknowledged", "readwrite");
    await Promise.all([...refused.map(({ id }) => shelf.store.delete(id)), shelf.done]);
    for (const { id } of refused) this.acknowledged.delete(id);
    this.changed();
  }

  /** Entries of other phones; what is here already is passed over. */
  async receive(club: string, entries: Entry[], next: number): Promise<void> {
    const shelf = this.shelves.transaction(["received", "kept"], "readwrite");
    const key = `next ${club}`;
    await Promise.all([
      ...entries.map((entry) => shelf.objectStore("received").put({ id: entry.id, club, entry })),
      shelf.objectStore("kept").put(next, key),
      shelf.done,
    ]);
    this.kept.set(key, next);
    for (const entry of entries) {
      this.received.set(entry.id, { club, entry });
      this.index(entry);
    }
    this.changed();
  }

  thing(id: string): Thing | undefined {
    const ready = this.folded.get(id);
    if (ready) return ready;
    const entries = this.byThing.get(id);
    if (!entries?.length) return undefined;
    const made = foldThing(entries);
    this.folded.set(id, made);
    return made;
  }
  entriesOf(thing: string): readonly Entry[] {
    return this.byThing.get(thing) ?? [];
  }
  things(kind: Thing["kind"]): Thing[] {
    return [...this.byThing.keys()].flatMap((id) => {
      const thing = this.thing(id);
      return thing?.kind === kind && thing.values.removed !== true ? [thing] : [];
    });
  }

  /** Rows that the server has neither kept nor refused. */
  waiting(): Row[] {
    return this.rows.filter((row) => !this.acknowledged.has(row.entry.id));
  }

  /** Photos whose pictures are only here. One that was taken out before it was sent stays here. */
  picturesWaiting(): string[] {
    return [...this.unsent].filter((photo) => this.thing(photo)?.values.removed !== true);
  }
  async picture(photo: string): Promise<Picture | undefined> {
    const shelf = this.shelves.transaction("pictures");
    const [found] = await Promise.all([shelf.store.get(photo), shelf.done]);
    return found;
  }
  async pictureKept({ waits: _, ...picture }: Picture): Promise<void> {
    await this.shelves.put("pictures", { ...picture, kept: this.now() });
    this.unsent.delete(picture.photo);
    this.changed();
  }
  /** Lets the pictures go that the server had kept before that time. */
  async letPicturesGo(before: number): Promise<void> {
    const shelf = this.shelves.transaction("pictures", "readwrite");
    const drop = async (photos: string[]) => (await Promise.all(photos.map((photo) => shelf.store.delete(photo)))).length;
    const old = shelf.store.index("kept").getAllKeys(IDBKeyRange.upperBound(before));
    const [dropped] = await Promise.all([old.then(drop), shelf.done]);
    this.pictures -= dropped;
  }

  watch(watcher: () => void): () => void {
    this.watchers.add(watcher);
    return () => this.watchers.delete(watcher);
  }
  private changed(): void {
    this.changes += 1;
    for (const watcher of this.watchers) watcher();
  }
}
