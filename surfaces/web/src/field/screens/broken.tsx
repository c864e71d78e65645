import type { Ball } from "../capture/balls";
import type { Session } from "../capture/session";
import type { Seen } from "../capture/step";
import { useField, useShown } from "../field";
import { Frame } from "../parts/frame";
import { Undo } from "../parts/undo";

/** The phone died while a ball rolled: nothing is asked twice but what became of it. */
export function Broken({ session, seen, ball }: { session: Session; seen: Seen; ball: Ball }) {
  const { acts, act, words } = useField();
  const { number } = useShown();
  const marks = ball.marks?.map((mark) => `${words.marks[mark.kind]} ${words.atTime(number(mark.seconds ?? 0, 1))}`).join(", ") ?? "";
  return (
    <Frame
      title={words.broken.title(ball.order)} menu
      end={<><Undo session={session} /><button class="go" onClick={() => act(() => acts.stop(session, ball.thing))}>{words.broken.goOn}</button></>}
    >
      <p class="lead">{words.broken.text}</p>
      {ball.marks && <p class="lead strong">{words.standing(marks)}</p>}
      <button class="wide" onClick={() => act(() => acts.removeBall(session, seen, ball))}>{words.broken.again}</button>
    </Frame>
  );
}
