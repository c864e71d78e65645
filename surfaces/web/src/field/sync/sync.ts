import { clubIds, clubOf, keepClub } from "../data/club";
import type { Acknowledged, Book, VisitState } from "../data/book";
import { Refused, SignedOut, type HandOver, type Server } from "./server";

const batch = 200;
const weeks = 3;

export type SyncState = "idle" | "sending" | "offline" | "refused" | "signed_out";

/**
 * Brings the journal to the server and fetches what other phones wrote. May be
 * broken off anywhere and run again: an entry counts as arrived only when the
 * server named it, and the server takes the same entry any number of times.
 */
export class Sync {
  state: SyncState = "idle";
  /** why the server took nothing at all */
  reason = "";
  /** seconds by which the phone's clock is ahead of the server's */
  skew: number | undefined;
  lastDone: number | undefined;
  readonly onTheirWay = new Set<string>();
  private running: Promise<void> | undefined;
  private again = false;
  private readonly watchers = new Set<() => void>();

  constructor(private readonly book: Book, private readonly server: Server, private readonly now: () => number = Date.now) {}

  /** One run at a time; asking again during a run makes one more follow, and that is waited for too. */
  run(): Promise<void> {
    this.again = this.running !== undefined;
    this.running ??= this.runs().finally(() => {
      this.running = undefined;
      this.tell();
    });
    return this.running;
  }

  private async runs(): Promise<void> {
    do {
      this.again = false;
      await this.all();
      this.onTheirWay.clear();
    } while (this.again);
  }

  private async all(): Promise<void> {
    this.set("sending");
    try {
      for (const club of new Set([...clubIds(this.book), ...this.book.rows.map((row) => row.club)])) {
        await this.sendAll(club);
        await this.fetchClub(club);
        await this.fetchEntries(club);
      }
      // Records first: a picture takes as long as a hundred of them.
      if (this.book.pictures > 0) await (await import("./pictures")).sendPictures(this.book, this.server, this.now());
      this.lastDone = this.now();
      this.set("idle");
    } catch (error) {
      this.reason = error instanceof Refused ? error.message : "";
      this.set(error instanceof SignedOut ? "signed_out" : error instanceof Refused ? "refused" : "offline");
    }
  }

  private async sendAll(club: string): Promise<void> {
    for (;;) {
      const rows = this.book.waiting().filter((row) => row.club === club).slice(0, batch);
      if (rows.length === 0) return;
      const body: HandOver = {
        form: "baize-entries", version: 1, phone: this.book.phone,
        sent_at: new Date(this.now()).toISOString(), entries: rows.map((row) => row.entry),
      };
      for (const { id } of body.entries) this.onTheirWay.add(id);
      this.tell();
      const started = this.now();
      const receipt = await this.server.send(club, body);
      this.skew = (started + this.now()) / 2 / 1000 - Date.parse(receipt.server_time) / 1000;
      const answers: Acknowledged[] = [
        ...receipt.kept.map((id) => ({ id, kept: true })),
        ...receipt.refused.map(({ id, problem }) => ({ id, kept: false, sentence: problem.sentence ?? `${problem.field}: ${problem.rule}` })),
      ];
      const others = (receipt.others ?? []).map(({ thing, ...rest }) => ({ visit: thing, ...rest }));
      await this.book.acknowledge(answers, [...receipt.visits, ...others].map(({ visit, state, problems, conflicts }): VisitState => ({ visit, state, problems, conflicts })));
      const named = new Set(answers.map(({ id }) => id));
      // A server that names none of them would be asked for ever.
      if (!rows.some((row) => named.has(row.entry.id))) throw new Error("The server named no entry.");
    }
  }

  private async fetchClub(id: string): Promise<void> {
    const held = clubOf(this.book, id);
    const found = await this.server.club(id, held?.tag);
    if (found === "same") {
      if (held) await keepClub(this.book, { ...held, at: this.now() });
    } else {
      await keepClub(this.book, { ...found, at: this.now() });
    }
  }

  private async fetchEntries(club: string): Promise<void> {
    const oldest = this.now() - weeks * 7 * 86_400_000;
    for (;;) {
      const since = this.book.get<number>(`next ${club}`) ?? 0;
      const { entries, next } = await this.server.entries(club, since, 500);
      const known = new Set(this.book.rows.map((row) => row.entry.thing));
      const wanted = entries.filter((entry) => entry.phone !== this.book.phone && (Date.parse(entry.at) >= oldest || known.has(entry.thing)));
      if (entries.length > 0 || next !== since) await this.book.receive(club, wanted, next);
      if (entries.length === 0 || next <= since) return;
    }
  }

  watch(watcher: () => void): () => void {
    this.watchers.add(watcher);
    return () => this.watchers.delete(watcher);
  }
  private set(state: SyncState): void {
    this.state = state;
    this.tell();
  }
  private tell(): void {
    for (const watcher of this.watchers) watcher();
  }
}
