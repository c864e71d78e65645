import type { SpotSummaryGives } from "../core_types";
import { runOf, visitFields } from "../capture/balls";
import { dayOf } from "../capture/clock";
import { lastHere } from "../capture/last_here";
import type { Session } from "../capture/session";
import { partnerBall, type Seen } from "../capture/step";
import { greenOf, observerName } from "../data/club";
import { go, useField, useShown } from "../field";
import { Frame } from "../parts/frame";
import { Scorecard } from "../parts/scorecard";
import { Undo } from "../parts/undo";
import { pairOf } from "../sync/pair";
import { greenName, titleOf } from "./title";

/** After six: what the spot came to, and against last time. */
export function Summary() {
  const { acts, act, book, core, words, club, prefs, prefer } = useField();
  const session = acts.session() as Session;
  const seen = acts.seen(session);
  const sum = core && summed(core, session, seen, lastHere(book, session, club));
  const finish = async () => {
    const greens = club?.greens ?? [];
    const next = greens[(greens.findIndex((green) => green.id === session.green) + 1) % Math.max(1, greens.length)];
    if (!(await act(() => acts.finish(session)))) return;
    prefer({ green: next?.id ?? "", spots: { ...prefs.spots, [session.green]: session.spot } });
    go("home");
  };
  const title = titleOf(club, session);
  return (
    <Frame title={title} menu class="summary" end={<><Undo session={session} /><button class="go" onClick={finish}>{words.go.finish(greenName(club, session.green))}</button></>}>
      <Scorecard session={session} seen={seen} choose={(ball) => go("ball", ball.thing)} />
      {sum && <Figures sum={sum} last={club && greenOf(club, session.green)?.last} />}
      <Problems session={session} />
      {session.partner && <Together session={session} seen={seen} />}
      {!session.partner && visitFields(book, session.visit).shared_rolls && <Apart session={session} />}
      <div class="keys" style={{ "--columns": 2 }}>
        <button class="key" onClick={() => go("conditions")}>{words.menu.conditions}</button>
        <button class="key" onClick={() => go("note")}>{words.menu.note}</button>
        <button class="key" onClick={() => go("spots")}>{words.spot.another}</button>
        <button class="key" onClick={async () => (await act(() => acts.move(session, { extra: session.first }))) && go("visit")}>{words.spot.extra}</button>
      </div>
    </Frame>
  );
}

function summed(core: NonNullable<ReturnType<typeof useField>["core"]>, session: Session, seen: Seen, last: ReturnType<typeof lastHere>) {
  const rolls = (direction: "out" | "back") =>
    runOf(seen.balls, session.spot, direction).map(({ order, distance, score, marks }) => ({ order, distance: distance ?? null, score: score ?? null, marks: marks ?? null }));
  const total = (direction: "out" | "back") => {
    const told = runOf(seen.totals, session.spot, direction)[0];
    return told ? { total: told.total, total_of: told.total_of } : null;
  };
  return core.spot_summary({ out: rolls("out"), back: rolls("back"), totals: { out: total("out"), back: total("back") }, last: last ?? null }).ok;
}

function Figures({ sum, last }: { sum: SpotSummaryGives; last: { day: string; score_mean?: number | null } | null | undefined }) {
  const { words } = useField();
  const { length, small, number, day } = useShown();
  const { score, speed, change } = sum;
  return (
    <div class="figures">
      <section>
        <h2>{words.spot.mean}</h2>
        <p class="figure">{score ? number(score.mean, 1) : "–"}</p>
        <p>{last?.score_mean != null ? words.spot.lastScore(number(last.score_mean, 1), day(last.day)) : words.spot.noLast}</p>
      </section>
      {speed && (
        <section>
          <h2>{words.spot.speed}</h2>
          <p class="figure">{length(speed.metres)} <small>± {small(speed.error)}</small></p>
          <p>{speed.out != null && speed.back != null ? words.spot.both(length(speed.out), length(speed.back)) : words.spot.oneWay}</p>
          {speed.method === "slope_formula" && <p>{words.spot.byFormula}</p>}
          {speed.slope_class && speed.slope_class !== "gentle" && <p class="strong">{words.spot.slopes[speed.slope_class]}</p>}
          {change.metres != null && <p>{changed(words, small, change.metres, change.real)}</p>}
        </section>
      )}
    </div>
  );
}

/** What would keep the visit out of the records, told before the server does. */
function Problems({ session }: { session: Session }) {
  const { book, core } = useField();
  const things = [...book.things("roll"), ...book.things("total")].filter(({ values }) => values.visit === session.visit).map(({ thing }) => thing);
  if (!core || things.length === 0) return null;
  const entries = [session.visit, ...things].flatMap((thing) => [...book.entriesOf(thing)]);
  const problems = core.check_visit({ entries, today: dayOf(Date.now()) }).ok?.problems ?? [];
  if (problems.length === 0) return null;
  return <ul class="notice" lang="en">{problems.map((one) => <li key={one.sentence}>{one.sentence}</li>)}</ul>;
}

function changed(words: ReturnType<typeof useField>["words"], small: (metres: number) => string, metres: number, real: boolean | null): string {
  const size = small(Math.abs(metres));
  const said = /^0\D/.test(size) && !/[1-9]/.test(size) ? words.spot.equal : metres < 0 ? words.spot.less(size) : words.spot.more(size);
  return real === null ? said : `${said}: ${real ? words.spot.real : words.spot.notTold}`;
}

function Together({ session, seen }: { session: Session; seen: Seen }) {
  const { words, club } = useField();
  const both = seen.balls.flatMap((ball) => {
    const theirs = partnerBall(seen.partnerBalls, ball)?.score;
    return ball.score !== undefined && theirs !== undefined ? [[ball.score, theirs] as const] : [];
  });
  return (
    <p class="lead">
      {words.spot.pair(observerName(club, session.observer), observerName(club, session.partner?.observer ?? ""))}:{" "}
      {words.spot.pairApart(both.filter(([mine, theirs]) => mine !== theirs).length)}
    </p>
  );
}

function Apart({ session }: { session: Session }) {
  const { book, words } = useField();
  const pair = pairOf(book, session.visit);
  return <p class="lead">{pair ? words.spot.pairApart(pair.apart) : words.spot.pairWaits}</p>;
}
