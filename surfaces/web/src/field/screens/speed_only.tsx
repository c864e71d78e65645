import { useState } from "preact/hooks";
import type { Session } from "../capture/session";
import { startDistance } from "../capture/start_distance";
import type { Seen } from "../capture/step";
import type { Direction } from "../data/entries";
import { useField } from "../field";
import { Frame } from "../parts/frame";
import { LengthPad } from "../parts/length_pad";
import { Scorecard } from "../parts/scorecard";
import { Undo } from "../parts/undo";
import { titleOf } from "./title";

/** Nobody watches the roll; each touch is a ball's distance. An earlier ball may be picked and mended. */
export function SpeedOnly(props: { session: Session; seen: Seen; direction: Direction; order: number }) {
  const { acts, act, words, club } = useField();
  const { session, seen, direction, order } = props;
  const [picked, setPicked] = useState<string>();
  const ball = seen.balls.find((one) => one.thing === picked && one.spot === session.spot);
  const choose = (metres: number) =>
    act(async () => {
      await (ball ? acts.distance(session, ball.thing, metres) : acts.measured(session, direction, order, metres));
      setPicked(undefined);
    });
  const at = ball ?? { direction, order };
  const way = at.direction === "out" ? words.out : words.backWay;
  return (
    <Frame title={titleOf(club, session)} menu class="stand" end={<><Undo session={session} /><p class="go waits">{way} · {words.ball(at.order)}</p></>}>
      <Scorecard session={session} seen={seen} chosen={ball} choose={(one) => setPicked(one.thing === picked ? undefined : one.thing)} />
      <div class="glance">
        <p class="asked">{words.distance} · {way} · {words.ball(at.order)}</p>
        <LengthPad of={`${at.direction} ${at.order}`} start={startDistance(seen, club, at.direction, at.order)} value={ball?.distance} choose={choose} />
      </div>
    </Frame>
  );
}
