import { useId } from "preact/hooks";
import { words } from "../words";

/** Of the open days: solid measured true, striped nobody knows, pale measured not. */
export function TrueStripe(props: { fewest: number; most: number; open: number }) {
  const { fewest, most, open } = props;
  const share = (days: number) => `${open > 0 ? (100 * days) / open : 0}%`;
  const id = useId();
  // A pattern, not a gradient of the style sheet: printed pages keep it.
  return (
    <svg class="stripe" width="100%" height="14" aria-hidden="true">
      <defs>
        <pattern id={id} width="8" height="8" patternUnits="userSpaceOnUse" patternTransform="rotate(35)">
          <rect class="stripe-ground" width="8" height="8" />
          <rect class="stripe-line" width="3" height="8" />
        </pattern>
      </defs>
      <rect class="stripe-not" width="100%" height="14" />
      <rect x={share(fewest)} width={share(most - fewest)} height="14" fill={`url(#${id})`} />
      <rect class="stripe-sure" width={share(fewest)} height="14" />
    </svg>
  );
}

export function TrueBar(props: { fewest: number; most: number; open: number }) {
  const { fewest, most, open } = props;
  return (
    <div class="true-bar">
      <TrueStripe {...props} />
      <p>
        <strong>{words.greens.ofScored(fewest, fewest + open - most)}</strong>, {words.greens.most(most, open)}
      </p>
    </div>
  );
}
