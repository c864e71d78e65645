import { score } from "../state/format";
import { useSettings } from "../state/settings";
import { words } from "../words";

const width = 132;
const height = 40;
const edge = 6;

/** The last scored days as a small line, with the standard behind it. */
export function Spark(props: { scores: number[]; standard: number }) {
  const settings = useSettings();
  const { scores, standard } = props;
  if (scores.length === 0) return <span class="quiet">{words.greens.notScored}</span>;
  const low = Math.min(standard - 1, ...scores);
  const high = Math.max(standard + 1, ...scores);
  const x = (place: number) => edge + ((place + 12 - scores.length) / 11) * (width - 2 * edge);
  const y = (value: number) => height - edge - ((value - low) / (high - low)) * (height - 2 * edge);
  const line = scores.map((value, place) => `${x(place).toFixed(1)},${y(value).toFixed(1)}`).join(" ");
  const last = scores[scores.length - 1] as number;
  const label = words.greens.spark(scores.map((value) => score(value, settings)).join(", "));
  return (
    <svg class="spark" viewBox={`0 0 ${width} ${height}`} width={width} height={height} role="img" aria-label={label}>
      <line class="standard" x1={0} x2={width} y1={y(standard)} y2={y(standard)} />
      <polyline points={line} />
      <Shape true={last >= standard} x={x(scores.length - 1)} y={y(last)} size={5} />
    </svg>
  );
}

/** True is a disc, not true a triangle on its point: the shape says it too. */
export function Shape(props: { true: boolean; x: number; y: number; size: number }) {
  const { x, y, size } = props;
  return props.true ? (
    <circle class="is-true" cx={x} cy={y} r={size} />
  ) : (
    <path class="is-not" d={`M${x - size * 1.15},${y - size * 0.8}h${size * 2.3}l${-size * 1.15},${size * 2}z`} />
  );
}

export function Sign(props: { true: boolean }) {
  return (
    <svg class="sign" viewBox="0 0 16 16" width="16" height="16" aria-hidden="true">
      <Shape true={props.true} x={8} y={8} size={6} />
    </svg>
  );
}
