import { useState } from "preact/hooks";
import { asksDistance, latest, goOf, type Seen, type Step } from "../capture/step";
import { runOf } from "../capture/balls";
import { contradicted, offeredFor, type Offered } from "../capture/offered";
import { startDistance } from "../capture/start_distance";

import { together, watches, type Session } from "../capture/session";
import { greenOf, observerName } from "../data/club";
import { go, useFeel, useField, useShown } from "../field";
import { Frame } from "../parts/frame";
import { LengthPad } from "../parts/length_pad";
import { Line } from "../parts/line";
import { Sign } from "../parts/signs";
import { ScoreKeys } from "../parts/score_keys";
import { Scorecard } from "../parts/scorecard";
import { Release } from "../parts/zone";
import { Undo } from "../parts/undo";

type Standing = Extract<Step, { at: "ready" | "partner" | "spot_done" }>;

/** Between two balls: one glance at the last one, and the next may go. */
export function Stand({ session, seen, step }: { session: Session; seen: Seen; step: Standing }) {
  const { acts, act, core, words, club, live, prefs } = useField();
  const felt = useFeel();
  const [picked, setPicked] = useState<string>();
  const here = seen.balls.filter((ball) => ball.spot === session.spot);
  const newest = step.at === "partner" ? step.ball : latest(here);
  const ball = here.find((one) => one.thing === picked) ?? newest;
  const explicit = prefs.explicit || together(session);
  const offered = explicit && together(session) ? undefined : offeredFor(core, ball);
  const lastOffered = offeredFor(core, newest)?.score;
  const going = goOf(seen, step, explicit || lastOffered === undefined);
  const name = (club && greenOf(club, session.green)?.name) || session.green;

  const release = async (time: number) => {
    if (step.at !== "ready") return;
    setPicked(undefined);
    const made = acts.ball();
    live.current = { ball: made, released: time };
    await act(async () => {
      await acts.release(session, step.direction, step.order, step.last, lastOffered, made);
      felt("release");
    });
  };
  const score = (value: number) => {
    if (!ball) return;
    felt("key");
    void act(() => (step.at === "partner" ? acts.partnerScore(session, seen, ball, value) : acts.score(session, ball.thing, value)));
  };
  const partner = step.at === "partner" ? observerName(club, session.partner?.observer ?? "") : undefined;
  const who = partner ?? (session.partner ? observerName(club, session.observer) : undefined);
  return (
    <Frame title={`${name} · ${session.spot}`} menu class="stand" end={
      <>
        <Undo session={session} />
        <GoOn step={step} going={partner ? "score_first" : going} release={release} agree={() => act(() => acts.agree(session, newest, lastOffered))} />
      </>
    }>
      <Scorecard session={session} seen={seen} chosen={here.length > 0 ? ball : undefined} offered={explicit || newest?.score !== undefined ? undefined : lastOffered} choose={partner ? undefined : (one) => setPicked(one.thing)} />
      {!ball && <Legend />}
      {ball && <RunDone session={session} seen={seen} step={step} offered={explicit ? undefined : lastOffered} />}
      {ball && (
        <div class={partner ? "glance partner" : "glance"}>
          {!partner && ball.marks && <Line ball={ball} guess={startDistance(seen, club, ball.direction, ball.order)} />}
          {watches(session.mode) && <p class="said-of" role="status">{who ? words.scoreBy(who) : offerLine(words, offered, !explicit && ball === newest && ball.score === undefined, contradicted(core, ball) ? ball.score : undefined)}</p>}
          {watches(session.mode) && <ScoreKeys
            score={partner ? undefined : ball.score}
            offered={offered} taken={!explicit && ball === newest} name={who ? words.scoreBy(who) : words.score} choose={score}
          />}
          {!partner && asksDistance(session, ball) && (
            <LengthPad of={ball.thing} start={startDistance(seen, club, ball.direction, ball.order)} value={ball.distance} choose={(metres) => act(() => acts.distance(session, ball.thing, metres))} />
          )}
        </div>
      )}
    </Frame>
  );
}

/** After the last ball of a run: what the run came to, the offer of the last one counted in. */
function RunDone({ session, seen, step, offered }: { session: Session; seen: Seen; step: Standing; offered: number | undefined }) {
  const { core, words } = useField();
  const { small } = useShown();
  const last = step.at === "partner" ? undefined : step.last;
  const turned = step.at === "spot_done" || (step.at === "ready" && last && step.direction !== last.direction);
  if (!core || !last || !turned || session.partner) return null;
  const rolls = runOf(seen.balls, session.spot, last.direction).map((ball) => ({ order: ball.order, distance: ball.distance ?? null, score: ball.score ?? (ball === last ? offered : null) ?? null }));
  const sum = core.run_summary({ rolls }).ok;
  if (!sum) return null;
  const wide = sum.spread_m != null && sum.spread_m > 0.2032;
  return (
    <p class="run-done" role="status">
      <span>{last.direction === "out" ? words.out : words.backWay}</span>
      {sum.total != null && <b>{sum.total}</b>}
      {sum.total != null && <span>{words.run.of(sum.scored)}</span>}
      {sum.spread_m != null && sum.measured > 1 && <span class={wide ? "wide-spread" : ""}>{words.run.spread(small(sum.spread_m))}</span>}
    </p>
  );
}

/** Before the first ball: where the thumb will find what. */
function Legend() {
  const { words } = useField();
  return (
    <ul class="legend">
      {(["snake", "chatter", "bobble"] as const).map((kind) => (
        <li key={kind} class={`marked ${kind}`}>
          <Sign kind={kind} />
          <b>{words.marks[kind]}</b>
          <span>{words.meanings[kind]}</span>
        </li>
      ))}
    </ul>
  );
}

type W = ReturnType<typeof useField>["words"];
function offerLine(words: W, offered: Offered | undefined, taken: boolean, outside: number | undefined) {
  if (outside !== undefined) return words.offer.outside(outside);
  if (!offered) return words.score;
  const band = words.offer.band(offered.lowest, offered.highest);
  return taken && offered.score !== undefined ? words.offer.both(band, words.offer.takes(offered.score)) : band;
}

function GoOn(props: { step: Standing; going: ReturnType<typeof goOf>; release: (time: number) => void; agree: () => Promise<boolean> }) {
  const { words } = useField();
  const { step, going } = props;
  if (going === "score_first") return <p class="go waits">{words.go.scoreFirst}</p>;
  if (going === "summary") {
    return <button class="go" onClick={async () => (await props.agree()) && go("summary")}>{words.go.summary}</button>;
  }
  if (going === "distances") return <button class="go" onClick={props.agree}>{words.go.distances}</button>;
  if (step.at !== "ready") return null;
  const turned = step.last !== undefined && step.last.direction !== step.direction;
  return (
    <Release press={props.release}>
      <strong>{words.go.release(step.order)}</strong>
      <span>{turned ? words.go.turn : `${step.direction === "out" ? words.out : words.backWay} · ${words.go.releaseHint}`}</span>
    </Release>
  );
}
