import type { Ball } from "../capture/balls";
import { runOf } from "../capture/balls";
import { ballsOfRun, measures, other, type Session } from "../capture/session";
import { latest, partnerBall, type Seen } from "../capture/step";
import type { Direction } from "../data/entries";
import { useField, useShown } from "../field";

interface Card {
  session: Session;
  seen: Seen;
  chosen?: Ball | undefined;
  choose?: ((ball: Ball) => void) | undefined;
  /** what pressing on would take for the newest ball */
  offered?: number | undefined;
}

/** The six balls of the spot, three each way, with what each run comes to. */
export function Scorecard(props: Card) {
  const { session } = props;
  return (
    <div class="scorecard">
      {[session.first, other(session.first)].map((direction) => (
        <RunCells key={direction} {...props} direction={direction} />
      ))}
    </div>
  );
}

function RunCells(props: Card & { direction: Direction }) {
  const { session, seen, direction } = props;
  const { core, words } = useField();
  const { number, small } = useShown();
  const run = runOf(seen.balls, session.spot, direction);
  const rolls = run.map(({ order, distance, score }) => ({ order, distance: distance ?? null, score: score ?? null }));
  const sum = core && run.length > 0 ? core.run_summary({ rolls }).ok : undefined;
  const told = runOf(seen.totals, session.spot, direction)[0];
  const total = told?.total ?? sum?.total;
  const cells = Math.max(ballsOfRun, run.length);
  const pending = latest(seen.balls)?.direction === direction ? props.offered : undefined;
  const wide = sum?.spread_m != null && sum.spread_m > 0.2032;
  return (
    <section aria-label={direction === "out" ? words.out : words.backWay}>
      <p class="run-line">
        <b>{direction === "out" ? words.out : words.backWay}</b>
        {total != null && !session.partner && <span class="run-total">{number(total, 0)}{pending !== undefined && `+${pending}`}</span>}
        {sum?.spread_m != null && sum.measured > 1 && (
          <span class={wide ? "wide-spread" : ""}>
            <span class="unseen">{words.run.spread(small(sum.spread_m))}{wide && `, ${words.run.wide}`}</span>
            <span aria-hidden="true">↔ {small(sum.spread_m)}</span>
          </span>
        )}
      </p>
      <div class="cells">
        {Array.from({ length: cells }, (_, at) => <Cell key={at} {...props} ball={run[at]} order={at + 1} />)}
      </div>
    </section>
  );
}

function Cell(props: Card & { ball: Ball | undefined; order: number; direction: Direction }) {
  const { session, seen, ball, order } = props;
  const { words } = useField();
  const { length } = useShown();
  if (!ball) return <div class="cell empty" aria-hidden="true">{order}</div>;
  const theirs = partnerBall(seen.partnerBalls, ball)?.score;
  // Neither score is shown until both are in.
  const score = session.partner ? (theirs === undefined ? undefined : `${ball.score}·${theirs}`) : ball.score;
  const veiled = session.partner !== undefined && theirs === undefined && ball.score !== undefined;
  const distance = ball.distance === undefined ? "" : length(ball.distance);
  const said = `${words.ball(ball.order)} ${props.direction === "out" ? words.out : words.backWay}: ${words.score} ${score ?? "–"}${distance && `, ${distance}`}`;
  const text = (
    <>
      <span class="unseen">{said}</span>
      <b aria-hidden="true">{veiled ? "•" : (score ?? (session.mode === "speed" ? "" : "–"))}</b>
      {measures(session.mode) && <small aria-hidden="true">{distance || "–"}</small>}
    </>
  );
  return props.choose
    ? <button class="cell" aria-pressed={props.chosen?.thing === ball.thing} onClick={() => props.choose?.(ball)}>{text}</button>
    : <div class="cell">{text}</div>;
}
