import type { LossArea, RecoveryInterval } from "../api/schemas";
import { number } from "../state/format";
import { useSettings, type Settings } from "../state/settings";
import { words } from "../words";

const w = words.work;

/** "after 9, by 14 days", or why no end is known. */
export function elapsed(interval: RecoveryInterval): string {
  if (interval.censoring === "not_asked") return w.censoring.not_asked;
  if (interval.by_days !== undefined) return w.withinDays(interval.after_days, interval.by_days);
  return w.open(interval.after_days);
}

export function inGrowth(interval: RecoveryInterval, settings: Settings): string | undefined {
  const { after_growth_days: after, by_growth_days: by } = interval;
  if (interval.censoring !== "none" || after === undefined || by === undefined) return undefined;
  return w.within(number(after, 1, settings), number(by, 1, settings));
}

/** Elapsed days, with the reason beneath where no end is known. */
export function Interval(props: { interval: RecoveryInterval }) {
  const { censoring } = props.interval;
  const reason = censoring === "record_ends" || censoring === "next_work" ? w.censoring[censoring] : "";
  return (
    <>
      {elapsed(props.interval)}
      {reason && <span class="quiet under">{reason}</span>}
    </>
  );
}

/** Already back when first looked at, days after the work: a fall may have been and gone. */
export const noneSeen = (area: LossArea | undefined) => area !== undefined && area.score_days === 0 && area.high >= 0.05;

export function Loss(props: { area: LossArea | undefined; why: string }) {
  const settings = useSettings();
  const { area } = props;
  if (!area) return <span class="quiet">{props.why}</span>;
  return (
    <>
      {noneSeen(area) ? w.noneSeen : number(area.score_days, 1, settings)}{" "}
      <span class="quiet">
        ({w.band(number(area.low, 1, settings), number(area.high, 1, settings))})
      </span>
      {!area.ended && <span class="quiet under">{w.notEnded}</span>}
    </>
  );
}

/** Why there is no fall or loss: never a zero in its place. */
export function whyNone(loss: { before?: number; visits_after: number }): string {
  if (loss.before === undefined) return w.noBefore;
  return loss.visits_after === 0 ? w.nothingAfter : words.notMeasured;
}
