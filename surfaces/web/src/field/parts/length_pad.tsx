import { useEffect, useState } from "preact/hooks";
import { coarse, nearest, toMetres, toSteps } from "../capture/lengths";
import { useFeel, useField, useShown } from "../field";

/**
 * A distance by its last digits: one touch on the inches, or two on the
 * centimetres; the rest is as near as can be to the ball before.
 */
export function LengthPad(props: { of: string; start: number; value: number | undefined; choose: (metres: number) => void; skip?: (() => void) | undefined }) {
  const { prefs, words } = useField();
  const { length } = useShown();
  const felt = useFeel();
  const { unit } = prefs;
  const [tens, setTens] = useState<number>();
  useEffect(() => setTens(undefined), [props.of, unit]);
  const start = toSteps(props.start, unit);
  const give = (steps: number) => {
    felt("key");
    props.choose(toMetres(steps, unit));
  };
  const key = (digit: number) => {
    if (unit === "ft_in") return give(nearest(start, digit, unit));
    if (tens === undefined) return setTens(digit);
    setTens(undefined);
    give(nearest(start, tens * 10 + digit, unit));
  };
  const far = unit === "ft_in" ? words.foot : words.metre;
  const now = toSteps(props.value ?? props.start, unit);
  const shownNow = tens === undefined ? length(props.value ?? props.start) : `… ${tens}_`;
  return (
    <div class="length" role="group" aria-label={`${words.distance}. ${words.pad}`}>
      <div class="length-top">
        <button class="key small" disabled={now <= coarse(unit)} onClick={() => give(now - coarse(unit))}>{far.less}</button>
        <output class={props.value === undefined && tens === undefined ? "length-now start" : "length-now"} aria-live="polite"><small>{words.distance}</small>{shownNow}</output>
        <button class="key small" onClick={() => give(now + coarse(unit))}>{far.more}</button>
      </div>
      <div class={unit === "ft_in" ? "digits inches" : "digits"}>
        {Array.from({ length: unit === "ft_in" ? 12 : 10 }, (_, digit) => (
          <button key={digit} class="key" onClick={() => key(digit)} aria-label={unit === "ft_in" ? length(toMetres(nearest(start, digit, unit), unit)) : String(digit)}>
            {unit === "ft_in" ? `${digit}"` : digit}
          </button>
        ))}
      </div>
      {props.skip && <button class="wide plain" onClick={props.skip}>{words.notMeasured}</button>}
    </div>
  );
}
