import type { RunSpeed, SpotDetail, SpotSpeed } from "../api/schemas";
import { length, number, smallLength } from "../state/format";
import { useSettings, type Settings } from "../state/settings";
import { words } from "../words";

const w = words.visit;

function direction(name: string, run: RunSpeed | undefined, settings: Settings): string[] {
  if (!run) return [];
  const text = w.mean(name, run.rolls, length(run.mean_m, settings), smallLength(run.spread_m, settings));
  return [run.within_tolerance ? text : `${text} (${w.tooWide})`];
}

/** The speed of one spot as the steps that lead to it. */
export function steps(speed: SpotSpeed, settings: Settings): string[] {
  const lines = [
    ...direction(w.directions.out, speed.out, settings),
    ...direction(w.directions.back, speed.back, settings),
  ];
  if (speed.one_direction_only) lines.push(w.oneWay);
  else lines.push(w.plain(length(speed.plain_mean_m, settings)));
  if (speed.slope_corrected_m !== undefined) lines.push(w.corrected(length(speed.slope_corrected_m, settings)));
  if (speed.ratio !== undefined && speed.slope_class)
    lines.push(w.ratio(number(speed.ratio, 2, settings), speed.slope_class));
  lines.push(w.used(length(speed.speed_m, settings), smallLength(speed.standard_error_m, settings)));
  return lines;
}

export function SpeedSteps(props: { spots: SpotDetail[] }) {
  const settings = useSettings();
  const measured = props.spots.filter((spot) => spot.speed);
  return (
    <section>
      <h2>{w.how}</h2>
      {measured.map(({ spot, speed }) => (
        <div key={spot} class="steps">
          <h3>{w.spot(spot)}</h3>
          <ol>
            {speed && steps(speed, settings).map((line) => <li key={line}>{line}</li>)}
          </ol>
          {speed && speed.warnings.length > 0 && (
            <ul class="remarks">
              {speed.warnings.map((warning) => (
                <li key={warning}>{warning}</li>
              ))}
            </ul>
          )}
        </div>
      ))}
      {measured.length > 1 && <p>{w.overSpots(measured.length)}</p>}
    </section>
  );
}
