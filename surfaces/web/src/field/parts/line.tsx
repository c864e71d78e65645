import type { Mark } from "../core_types";
import type { Ball } from "../capture/balls";
import { placeOf } from "../capture/offered";
import { rollTime } from "../capture/bands";
import { go, useField, useShown } from "../field";
import { Sign } from "./signs";

/** s = v t - a t^2 / 2 as a share of the whole way: 2 u - u^2, u the share of the time. Only for drawing before the distance is known. */
const share = (seconds: number, run: number) => {
  const u = Math.min(1, Math.max(0, seconds / run));
  return 2 * u - u * u;
};

/** The ball's line from ramp to rest, its marks where they lie. Touch it to mend them. */
export function Line({ ball, guess }: { ball: Ball; guess: number }) {
  const { core, words } = useField();
  const { length, number } = useShown();
  const marks = ball.marks ?? [];
  const whole = ball.distance ?? guess;
  const words_of = (mark: Mark) => {
    const place = ball.distance === undefined ? undefined : placeOf(core, mark.seconds, ball.distance);
    const where = place != null ? length(place) : mark.seconds != null ? words.atTime(number(mark.seconds, 1)) : "";
    return { place, where };
  };
  const at = (mark: Mark) => {
    if (mark.seconds == null) return 0.5;
    const place = placeOf(core, mark.seconds, ball.distance);
    return place != null && ball.distance ? place / ball.distance : share(mark.seconds, rollTime(whole));
  };
  const said = marks.map((mark) => `${words.marks[mark.kind]} ${words_of(mark).where}`).join(", ");
  return (
    <button class="line" onClick={() => go("ball", ball.thing)}>
      <span class="unseen">{words.ballPage.title(ball.order)}. {words.standing(said)}</span>
      {ball.marks && marks.length === 0 && <span class="line-none" aria-hidden="true">{words.standing("")}</span>}
      <span class="line-way" aria-hidden="true" />
      <span class={`line-ball ${ball.distance === undefined ? "unknown" : ""}`} aria-hidden="true" />
      {marks.map((mark, place) => (
        <span key={place} class={place % 2 === 1 ? "line-mark above" : "line-mark"} style={{ "--at": at(mark) }} aria-hidden="true">
          <Sign kind={mark.kind} />
          <small>{words_of(mark).where}</small>
        </span>
      ))}
    </button>
  );
}
