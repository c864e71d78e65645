import { useRef, useState } from "preact/hooks";
import type { Mark } from "../core_types";
import { ends, meant, rollTime, zoneAt, type Zone } from "../capture/bands";
import type { Ball } from "../capture/balls";
import { startDistance } from "../capture/start_distance";
import type { Session } from "../capture/session";
import { useFeel, useField, useShown } from "../field";
import { Sign } from "../parts/signs";
import { Undo } from "../parts/undo";
import { useDown } from "../parts/zone";

interface Said {
  zone: Mark["kind"];
  seconds: number;
  count: number;
}

/**
 * The ball rolls and the eyes are on it: three bands and the stop, found by
 * the thumb. Where it started the ball it stops it; every mark lies above.
 */
export function Rolling({ session, ball, released }: { session: Session; ball: Ball; released: number }) {
  const { acts, act, book, words, club } = useField();
  const felt = useFeel();
  const { number } = useShown();
  const [said, setSaid] = useState<Said>();
  const before = useRef<{ zone: Zone; seconds: number }>();
  const expected = rollTime(startDistance(acts.seen(session), club, ball.direction, ball.order));

  const press = (asked: Zone) => async (time: number, y: number) => {
    const seconds = Math.max(0, (time - released) / 1000);
    // The line between bobble and stop is read by the clock; screen readers name their zone.
    const zone = asked === "bobble" || asked === "stop" ? zoneAt(y, innerHeight, seconds, expected) : asked;
    if (!meant(zone, seconds, before.current)) return felt("no");
    before.current = { zone, seconds };
    if (zone === "stop") {
      if (await act(() => acts.stop(session, ball.thing))) felt("stop");
      return;
    }
    // The hand is told when the phone has it.
    if (!(await act(() => acts.mark(session, ball.thing, zone, seconds)))) return;
    felt(zone);
    setSaid((last) => ({ zone, seconds, count: (last?.count ?? 0) + 1 }));
  };
  return (
    <main class="bands">
      <h1 class="unseen">{words.ball(ball.order)}</h1>
      {ends.map(([zone]) => (
        <Band key={zone} zone={zone} press={press(zone)} ball={ball} />
      ))}
      {/* Here by taking back a stop: then the eyes are on the screen, and may go further back. */}
      {book.entriesOf(ball.thing).some((entry) => "stopped" in entry.set) && <Undo session={session} />}
      <div class="said" role="status">
        {said && (
          <p key={said.count}>
            {words.marks[said.zone]} <small>{words.atTime(number(said.seconds, 1))}</small>
          </p>
        )}
      </div>
    </main>
  );
}

function Band({ zone, press, ball }: { zone: Zone; press: (time: number, y: number) => void; ball: Ball }) {
  const { words } = useField();
  const down = useDown(press);
  if (zone === "stop") {
    return (
      <button class="band stop" {...down}>
        <span class="square" aria-hidden="true" />
        {words.stop}
      </button>
    );
  }
  const count = ball.marks?.filter((mark) => mark.kind === zone).length ?? 0;
  return (
    <button class={`band ${zone}`} {...down}>
      <Sign kind={zone} />
      <span>{words.marks[zone]}</span>
      <span class="pips" aria-hidden="true">{"●".repeat(count)}</span>
    </button>
  );
}
