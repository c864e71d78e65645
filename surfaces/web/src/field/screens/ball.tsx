import type { Mark } from "../core_types";
import { placeOf } from "../capture/offered";
import { goBack, useField, useShown } from "../field";
import { Frame } from "../parts/frame";
import { Sign } from "../parts/signs";

const kinds: Mark["kind"][] = ["bobble", "chatter", "snake"];

/** One ball's marks, to be mended; corrections are entries of their own. */
export function BallPage({ of }: { of: string }) {
  const { acts, act, core, words } = useField();
  const { length, number } = useShown();
  const session = acts.session();
  const seen = session && acts.seen(session);
  const ball = seen?.balls.find((one) => one.thing === of);
  if (!session || !seen || !ball) return <Frame title={words.title} back>{null}</Frame>;
  const marks = ball.marks ?? [];
  const where = (mark: Mark) => {
    const place = placeOf(core, mark.seconds, ball.distance);
    if (place === null) return words.ballPage.hop;
    return place === undefined ? "" : words.ballPage.place(length(place));
  };
  const change = (changed: Mark[]) => act(() => acts.setMarks(session, ball.thing, changed));
  return (
    <Frame title={words.ballPage.title(ball.order)} back end={<button class="go" onClick={goBack}>{words.done}</button>}>
      {marks.length === 0 && <p class="lead">{words.standing("")}</p>}
      <ul class="mark-list">
        {marks.map((mark, at) => (
          <li key={at} class={`marked ${mark.kind}`}>
            <Sign kind={mark.kind} />
            <span>
              <b>{words.marks[mark.kind]}</b>
              <small>{[mark.seconds == null ? "" : words.atTime(number(mark.seconds, 1)), where(mark)].filter(Boolean).join(", ")}</small>
            </span>
            <button class="key small" aria-label={words.ballPage.takeOut(words.marks[mark.kind])} onClick={() => change(marks.filter((_, other) => other !== at))}>×</button>
          </li>
        ))}
      </ul>
      <h2>{words.ballPage.add}</h2>
      <div class="keys" style={{ "--columns": 3 }}>
        {kinds.map((kind) => (
          <button key={kind} class={`key tall marked ${kind}`} onClick={() => change([...marks, { kind }])}>
            <Sign kind={kind} />
            {words.marks[kind]}
          </button>
        ))}
      </div>
      <button class="wide plain" onClick={async () => (await act(() => acts.removeBall(session, seen, ball))) && goBack()}>{words.ballPage.remove}</button>
    </Frame>
  );
}
