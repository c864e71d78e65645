import type { Ball } from "../capture/balls";
import { runOf } from "../capture/balls";
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

/** The run is rolled and a helper calls the distances, one touch each. */
export function Distances(props: { session: Session; seen: Seen; ball: Ball; direction: Direction }) {
  const { acts, act, words, club } = useField();
  const { session, seen, ball } = props;
  const run = runOf(seen.balls, session.spot, props.direction);
  return (
    <Frame title={titleOf(club, session)} menu class="stand" end={<><Undo session={session} /><p class="go waits">{words.calls}: {words.ball(ball.order)}</p></>}>
      <Scorecard session={session} seen={seen} chosen={ball} />
      <div class="glance">
        <p class="asked">{words.distance} · {words.ball(ball.order)} / {run.length}</p>
        <LengthPad
          of={ball.thing} start={startDistance(seen, club, ball.direction, ball.order)} value={ball.distance}
          choose={(metres) => act(() => acts.distance(session, ball.thing, metres))}
          skip={() => act(() => acts.distance(session, ball.thing, null))}
        />
      </div>
    </Frame>
  );
}
