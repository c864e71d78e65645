import { Acts } from "../../../src/field/capture/acts";
import type { Session } from "../../../src/field/capture/session";
import { stepOf } from "../../../src/field/capture/step";
import { Book } from "../../../src/field/data/book";
import { keepClub } from "../../../src/field/data/club";
import type { Entry } from "../../../src/field/data/entries";
import type { Server } from "../../../src/field/sync/server";
import { Sync } from "../../../src/field/sync/sync";
import { visitLines } from "../../../src/field/sync/visit_state";
import { club, must, turns } from "./server";

/** Transactions at work by the storage they belong to, so that a dying phone can lose them. */
const atWork = new Map<string, Set<IDBTransaction>>();
const begin = IDBDatabase.prototype.transaction;
IDBDatabase.prototype.transaction = function (this: IDBDatabase, ...all: Parameters<IDBDatabase["transaction"]>) {
  const made = begin.apply(this, all);
  const open = atWork.get(this.name) ?? new Set();
  atWork.set(this.name, open.add(made));
  for (const end of ["complete", "abort"]) made.addEventListener(end, () => open.delete(made));
  return made;
};

/** A phone whose page may die at any turn of the event loop, and what its owner knows to be kept. */
export class PlayPhone {
  private book: Book | undefined;
  acts!: Acts;
  sync!: Sync;
  /** entries whose touch was answered, in the order of the answers */
  readonly answered: Entry[] = [];
  private seen: string[] = [];
  private touches: Promise<unknown>[] = [];
  clock: number;

  constructor(readonly name: string, private readonly server: Server, readonly told: ReadonlySet<string>, private readonly disk: ReadonlyMap<string, Entry>, clock: number) {
    this.clock = clock;
  }
  get open(): Book {
    return this.book as Book;
  }

  async start(): Promise<void> {
    const book = await Book.open(() => (this.clock += 7), this.name);
    this.book = book;
    const write = book.write.bind(book);
    // What it wrote counts as kept from its answer on.
    book.write = async (...all) => {
      const entries = await write(...all);
      this.answered.push(...entries);
      return entries;
    };
    this.acts = new Acts(book, () => this.clock);
    this.sync = new Sync(book, this.server, () => this.clock);
    const ids = book.rows.map((row) => row.entry.id);
    must(this.seen, ids.slice(0, this.seen.length), "the journal only grows");
    for (const entry of this.answered) must(entry, book.rows.find((row) => row.entry.id === entry.id)?.entry, "what was answered is kept");
    this.wholeTouches();
    for (const { entry } of book.rows) {
      if (entry.kind === "photo" && entry.set.sha256) must(true, (await book.picture(entry.thing)) !== undefined, "the picture of an entry that is kept");
    }
    book.watch(() => this.look());
    this.sync.watch(() => this.look());
    if (!book.get("clubs")) await keepClub(book, { club, at: 0 }).catch(() => undefined);
  }

  /** At every change of the screen: accepted is only what the server has and this phone was told of. */
  private look(): void {
    const { open: book } = this;
    for (const { id, kept } of book.acknowledged.values()) {
      if (!kept || !this.told.has(id) || !this.disk.has(id)) throw new Error(`${id} is acknowledged, and the server has not said so`);
    }
    for (const line of visitLines(book, this.sync.onTheirWay)) {
      if (line.state !== "accepted") continue;
      const own = book.rows.filter(({ entry }) => entry.thing === line.visit || book.thing(entry.thing)?.values.visit === line.visit);
      for (const { entry } of own) if (!this.disk.has(entry.id) || !this.told.has(entry.id)) throw new Error(`${line.visit} is shown as accepted without ${entry.id}`);
    }
    this.seen = book.rows.map((row) => row.entry.id);
  }

  /** Two visits of a pair begin and end in one touch: both or neither. */
  private wholeTouches(): void {
    const rows = this.open.rows;
    for (const { deed, touch, entry } of rows) {
      if (deed !== "start" && deed !== "finish") continue;
      const paired = this.open.thing(entry.thing)?.values.shared_rolls != null;
      must(paired ? 2 : 1, rows.filter((one) => one.touch === touch).length, `entries of one ${deed}`);
    }
  }

  /** A touch; it is not waited for. Where the page is gone, so is who waited for its answer. */
  touch(work: (acts: Acts) => Promise<unknown>): void {
    const { open: book } = this;
    this.touches.push(work(this.acts).catch((problem) => (this.dying || this.book !== book ? undefined : Promise.reject(problem))));
  }
  private dying = false;

  async settle(): Promise<void> {
    await Promise.all(this.touches.splice(0));
  }

  /** Page and browser end at once; what the storage was at is written whole or not at all. */
  async die(loses: boolean): Promise<void> {
    this.dying = true;
    const book = this.open;
    if (loses) for (const one of atWork.get(this.name) ?? []) tryTo(() => one.abort());
    book.close();
    await turns(6);
    await Promise.allSettled(this.touches.splice(0));
    await turns(6);
    this.dying = false;
    await this.start();
  }

  /** The play is over: its storage goes. */
  leave(): void {
    this.open.close();
    indexedDB.deleteDatabase(this.name);
    atWork.delete(this.name);
  }

  session(): Session | undefined {
    return this.acts.session();
  }
  step() {
    const session = this.session();
    return session && stepOf(this.acts.seen(session));
  }
}

function tryTo(work: () => void): void {
  try {
    work();
  } catch {
    // It was done already.
  }
}
