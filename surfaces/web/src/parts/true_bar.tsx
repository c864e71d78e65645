import { words } from "../words";

/** True days of the open ones: solid measured, striped not known, empty not true. */
export function TrueBar(props: { fewest: number; most: number; open: number }) {
  const { fewest, most, open } = props;
  const share = (days: number) => (open > 0 ? (100 * days) / open : 0);
  return (
    <div class="true-bar">
      <svg viewBox="0 0 100 10" preserveAspectRatio="none" aria-hidden="true">
        <rect class="bar-all" width="100" height="10" />
        <rect class="bar-maybe" x={share(fewest)} width={share(most - fewest)} height="10" />
        <rect class="bar-sure" width={share(fewest)} height="10" />
      </svg>
      <span>
        <strong>{words.greens.least(fewest)}</strong>, {words.greens.most(most, open)}
      </span>
    </div>
  );
}
