import type { Mark } from "../core_types";
import type { Book } from "../data/book";
import type { Deed, Direction, Draft, Fields, VisitFields } from "../data/entries";
import { lastTouch, takenBack } from "../data/undo";
import { ballsOf, rolling, totalsOf, type Ball } from "./balls";
import { newCode, sharedId } from "./code";
import { dayOf, timeOf } from "./clock";
import { visitsOf, watches, type Mode, type Session } from "./session";
import { partnerBall, type Seen } from "./step";

export interface Wanted {
  club: string;
  green: string;
  half?: string | undefined;
  spot: string;
  first: Direction;
  observer: string;
  mode: Mode;
  partner?: string | undefined;
  code?: string | undefined;
}

const sessionKey = "session";

/** Everything a person does on the green, as entries. Each resolves when they are kept. */
export class Acts {
  constructor(readonly book: Book, private readonly now: () => number = Date.now) {}

  session(): Session | undefined {
    return this.book.get<Session | null>(sessionKey) ?? undefined;
  }
  seen(session: Session): Seen {
    return {
      session,
      balls: ballsOf(this.book, session.visit),
      totals: totalsOf(this.book, session.visit),
      partnerBalls: session.partner ? ballsOf(this.book, session.partner.visit) : [],
    };
  }

  async start(wanted: Wanted): Promise<Session> {
    const day = dayOf(this.now());
    const code = wanted.code ?? (wanted.partner ? newCode() : undefined);
    const shared = code ? { shared_rolls: sharedId(day, wanted.green, code) } : {};
    const from = timeOf(this.now());
    const fields = (observer: string): Fields => ({
      club: wanted.club, green: wanted.green, ...(wanted.half && { half: wanted.half }),
      observer, day, ...(this.began(observer, day, from) ? {} : { from }), ...shared,
    });
    const visit = this.book.id();
    const session: Session = {
      club: wanted.club, visit, observer: wanted.observer, green: wanted.green,
      mode: wanted.mode, spot: wanted.spot, first: wanted.first,
      ...(wanted.partner && { partner: { visit: this.book.id(), observer: wanted.partner } }),
      ...(wanted.code && { code: wanted.code }),
    };
    const drafts: Draft[] = [{ kind: "visit", thing: visit, by: wanted.observer, set: fields(wanted.observer) }];
    if (session.partner) {
      drafts.push({ kind: "visit", thing: session.partner.visit, by: session.partner.observer, set: fields(session.partner.observer) });
    }
    await this.book.write(wanted.club, "start", drafts, { kept: { [sessionKey]: session } });
    return session;
  }

  /**
   * Did this observer begin another visit within the same minute? Nobody is at
   * two greens at once: totals are being typed off a sheet, and the time of the
   * second is not known.
   */
  private began(observer: string, day: string, from: string): boolean {
    return this.book.things("visit").some(({ values }) => values.observer === observer && values.day === day && values.from === from);
  }

  /** The id of a ball that is about to be released. */
  ball(): string {
    return this.book.id();
  }

  private roll(session: Session, ball: string, set: Fields): Draft {
    return { kind: "roll", thing: ball, by: session.observer, set };
  }

  /** The score the marks offer, taken for a watched ball that got none: pressing on agrees with it. */
  private agreed(session: Session, last: Ball | undefined, offered: number | undefined): Draft[] {
    if (!last || last.score !== undefined || !watches(session.mode) || offered === undefined) return [];
    return [this.roll(session, last.thing, { score: offered })];
  }

  async release(session: Session, direction: Direction, order: number, last: Ball | undefined, offered: number | undefined, ball = this.ball()): Promise<string> {
    const set: Fields = {
      visit: session.visit, spot: session.spot, direction, order,
      released: new Date(this.now()).toISOString(), ...(watches(session.mode) && { marks: [] }),
    };
    // Two touches of a wet thumb are one ball.
    const drafts = () =>
      ballsOf(this.book, session.visit).some(rolling) ? [] : [...this.agreed(session, last, offered), this.roll(session, ball, set)];
    const { extra: _, ...usual } = session;
    await this.book.write(session.club, "release", drafts, session.extra ? { kept: { [sessionKey]: usual } } : {});
    return ball;
  }

  /** Going on without another ball: the offer is agreed to. */
  async agree(session: Session, last: Ball | undefined, offered: number | undefined): Promise<void> {
    const drafts = this.agreed(session, last, offered);
    if (drafts.length > 0) await this.book.write(session.club, "score", drafts);
  }

  async mark(session: Session, ball: string, kind: Mark["kind"], seconds: number | undefined): Promise<void> {
    const one: Mark = seconds === undefined ? { kind } : { kind, seconds: Math.round(seconds * 100) / 100 };
    await this.book.write(session.club, kind, () => {
      const marks = (this.book.thing(ball)?.values.marks as Mark[] | null) ?? [];
      return [this.roll(session, ball, { marks: [...marks, one] })];
    });
  }
  setMarks(session: Session, ball: string, marks: Mark[]) {
    return this.book.write(session.club, "marks", [this.roll(session, ball, { marks })]);
  }
  stop(session: Session, ball: string) {
    return this.book.write(session.club, "stop", [this.roll(session, ball, { stopped: new Date(this.now()).toISOString() })]);
  }
  score(session: Session, ball: string, score: number) {
    return this.book.write(session.club, "score", [this.roll(session, ball, { score })]);
  }
  distance(session: Session, ball: string, distance: number | null) {
    return this.book.write(session.club, "distance", [this.roll(session, ball, { distance })]);
  }
  /** Speed alone: the ball and its distance in one touch. */
  measured(session: Session, direction: Direction, order: number, distance: number) {
    const set = { visit: session.visit, spot: session.spot, direction, order, distance };
    const { extra: _, ...usual } = session;
    return this.book.write(session.club, "distance", [this.roll(session, this.book.id(), set)], session.extra ? { kept: { [sessionKey]: usual } } : {});
  }
  removeBall(session: Session, seen: Seen, ball: Ball) {
    const twin = partnerBall(seen.partnerBalls, ball);
    return this.book.write(session.club, "remove", [
      this.roll(session, ball.thing, { removed: true }),
      ...(twin ? [{ ...this.roll(session, twin.thing, { removed: true }), by: session.partner?.observer ?? session.observer }] : []),
    ]);
  }

  partnerScore(session: Session, seen: Seen, ball: Ball, score: number) {
    const partner = session.partner;
    if (!partner) return Promise.resolve([]);
    const twin = partnerBall(seen.partnerBalls, ball);
    const set: Fields = twin
      ? { score }
      : { visit: partner.visit, spot: ball.spot, direction: ball.direction, order: ball.order, score };
    return this.book.write(session.club, "score", [{ kind: "roll", thing: twin?.thing ?? this.book.id(), by: partner.observer, set }]);
  }

  total(session: Session, direction: Direction, total: number, of: number) {
    const held = totalsOf(this.book, session.visit).find((one) => one.spot === session.spot && one.direction === direction);
    const set: Fields = held
      ? { total, total_of: of }
      : { visit: session.visit, spot: session.spot, direction, total, total_of: of };
    return this.book.write(session.club, "total", [{ kind: "total", thing: held?.thing ?? this.book.id(), by: session.observer, set }]);
  }

  visit(session: Session, deed: Deed, set: VisitFields) {
    return this.book.write(session.club, deed, [{ kind: "visit", thing: session.visit, by: session.observer, set: { ...set } }]);
  }

  /** Closes the visit; one that was closed before and only mended keeps its end, and one without a ball or a photo is none. */
  async finish(session: Session, at = this.now()): Promise<void> {
    if (this.book.thing(session.visit)?.values.done === true) return this.leave();
    const { balls, totals } = this.seen(session);
    const ends = (thing: string): Fields => ({ done: true, ...(this.book.thing(thing)?.values.from != null && { to: timeOf(at) }) });
    const pictured = (visit: string) => this.book.things("photo").some(({ values }) => values.visit === visit);
    const drafts = visitsOf(session).map((thing): Draft => ({
      kind: "visit", thing, set: balls.length + totals.length > 0 || pictured(thing) ? ends(thing) : { removed: true },
      by: thing === session.visit ? session.observer : (session.partner?.observer ?? session.observer),
    }));
    await this.book.write(session.club, "finish", drafts, { kept: { [sessionKey]: null, lastSession: session } });
  }

  /** Where the next ball goes: another spot, another end first, a ball more. */
  move(session: Session, change: Partial<Pick<Session, "spot" | "first" | "extra" | "mode">>) {
    return this.book.keep(sessionKey, { ...session, ...change });
  }
  /** Back to a visit that was closed, to mend it. */
  reopen(session: Session) {
    return this.book.keep(sessionKey, session);
  }
  leave(): Promise<void> {
    return this.book.keep(sessionKey, null);
  }

  remove(club: string, by: string, kind: "reading" | "work", thing: string) {
    return this.book.write(club, "remove", [{ kind, thing, by, set: { removed: true } }]);
  }

  async reading(club: string, by: string, set: Fields): Promise<void> {
    await this.book.write(club, "reading", [{ kind: "reading", thing: this.book.id(), by, set }]);
  }
  async work(club: string, by: string, set: Fields): Promise<string> {
    const thing = this.book.id();
    await this.book.write(club, "work", [{ kind: "work", thing, by, set }]);
    return thing;
  }

  /** What `undo` would take back now. */
  undoable(session: Session): Deed | undefined {
    return lastTouch(this.book, this.things(session))?.deed;
  }
  async undo(session: Session): Promise<Deed | undefined> {
    const last = lastTouch(this.book, this.things(session));
    if (!last) return undefined;
    const kept = last.deed === "start" ? { kept: { [sessionKey]: null } } : {};
    await this.book.write(session.club, "undo", takenBack(this.book, last.rows), { undoes: last.touch, ...kept });
    return last.deed;
  }
  private things(session: Session): Set<string> {
    const visits = visitsOf(session);
    return new Set(
      this.book.rows.map(({ entry }) => entry).filter((entry) => visits.includes(entry.thing) || this.belongs(entry.thing, visits)).map((entry) => entry.thing),
    );
  }
  private belongs(thing: string, visits: string[]): boolean {
    return visits.includes(String(this.book.thing(thing)?.values.visit));
  }
}
