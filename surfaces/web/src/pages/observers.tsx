import { useState } from "preact/hooks";
import type { Figure, ObserverLine, ObserversReview, PairLine } from "../api/schemas";
import { Chart } from "../parts/chart";
import { Numbers, Table } from "../parts/table";
import { number } from "../state/format";
import { useSettings, type Settings } from "../state/settings";
import { words } from "../words";
import { Said } from "../parts/said";

const w = words.observers;

/** "+0.25 (0.19 to 0.31)"; the value alone where no interval can be drawn. */
export function withInterval(estimate: Figure | undefined, settings: Settings): string {
  if (!estimate) return w.unknown;
  const shown = (value: number) => (value > 0 ? "+" : "") + number(value, 2, settings);
  if (estimate.low === undefined || estimate.high === undefined) return shown(estimate.value);
  return w.interval(shown(estimate.value), shown(estimate.low), shown(estimate.high));
}

export function ObserversPage(props: { review: ObserversReview }) {
  const { review } = props;
  const [corrected, setCorrected] = useState(false);
  const known = review.observers.filter((one) => one.bias);
  return (
    <article>
      <header class="page-head">
        <h1 tabIndex={-1}>{w.title}</h1>
        <p class="lead"><Said text={review.sentence} /></p>
        {review.sessions > 0 && <p class="quiet">{w.shared(review.balls, review.sessions)}</p>}
        {review.waiting > 0 && <p class="quiet">{w.waiting(review.waiting)}</p>}
      </header>
      {review.sessions === 0 && <HowToShare />}
      {known.length > 0 && <Each review={review} />}
      {review.pairs.length > 0 && (
        <label class="tick">
          <input type="checkbox" checked={corrected} onChange={(event) => setCorrected(event.currentTarget.checked)} />
          {w.correct}
        </label>
      )}
      {corrected && <p class="quiet" role="status">{w.corrected}</p>}
      {review.pairs.length > 0 && <Pairs review={review} corrected={corrected} />}
      {known.length > 0 && <Drift observers={known} corrected={corrected} />}
      {review.nearby.length > 0 && (
        <Numbers title={w.nearby}>
          <p class="quiet">{w.nearbyText}</p>
          <ul class="plain-list">
            {review.nearby.map((line) => (
              <li key={line.first + line.second}><Said text={line.sentence} /></li>
            ))}
          </ul>
        </Numbers>
      )}
      <Computed review={review} />
    </article>
  );
}

function HowToShare() {
  return (
    <section class="notice">
      <h2>{w.howTitle}</h2>
      <ol>
        {w.how.map((step) => (
          <li key={step}>{step}</li>
        ))}
      </ol>
    </section>
  );
}

function Each(props: { review: ObserversReview }) {
  const { review } = props;
  const settings = useSettings();
  const known = review.observers.filter((one) => one.bias);
  return (
    <section>
      <h2>{w.each}</h2>
      <figure aria-label={w.eachLabel}>
        <Chart
          of={review}
          height={40 + known.length * 34}
          draw={async (width, chosen) => {
            const { drawLeans } = await import("../plots/observers");
            return drawLeans(known, width, chosen);
          }}
        />
        <figcaption>{w.eachText}</figcaption>
      </figure>
      <ul class="plain-list">
        {review.observers.map((one) => (
          <li key={one.observer}><Said text={one.sentence} /></li>
        ))}
      </ul>
      <Numbers>
        <Table
          caption={w.eachTable}
          rows={review.observers}
          columns={[
            { head: w.observer, cell: (one: ObserverLine) => one.name },
            { head: w.visits, number: true, cell: (one) => one.visits },
            { head: w.sharedRolls, number: true, cell: (one) => one.balls },
            { head: w.difference, number: true, cell: (one) => withInterval(one.bias, settings) },
            { head: w.change, number: true, cell: (one) => change(one, settings) },
            { head: w.offered, number: true, cell: (one) => withInterval(one.correction, settings) },
          ]}
        />
      </Numbers>
    </section>
  );
}

function change(one: ObserverLine, settings: Settings): string {
  if (!one.trend) return w.unknown;
  const { per_year: value, low, high, p } = one.trend;
  return `${withInterval({ value, low, high }, settings)}, ${w.p(number(p, 3, settings))}`;
}

function Pairs(props: { review: ObserversReview; corrected: boolean }) {
  const { review, corrected } = props;
  const name = (id: string) => review.observers.find((one) => one.observer === id)?.name ?? id;
  return (
    <section>
      <h2>{w.pairs}</h2>
      <p class="quiet">{w.pairsText}</p>
      <div class="multiples wide">
        {review.pairs.map((pair) => (
          <Pair key={pair.first + pair.second} pair={pair} first={name(pair.first)} second={name(pair.second)} corrected={corrected} width={review.half_width} />
        ))}
      </div>
    </section>
  );
}

function Pair(props: { pair: PairLine; first: string; second: string; corrected: boolean; width: number }) {
  const { pair, first, second, corrected } = props;
  const settings = useSettings();
  const less = corrected && pair.bias ? pair.bias.value : 0;
  const measures = (Object.keys(w.rows) as (keyof typeof w.rows)[]).flatMap((key) => {
    const estimate = pair[key];
    return estimate ? [{ name: w.rows[key], estimate }] : [];
  });
  const places = (value: number | undefined) => (value === undefined ? w.unknown : number(value, 2, settings));
  const share = (value: number | undefined) => number(100 * (value ?? 0), 0, settings);
  return (
    <div>
      <p><Said text={pair.sentence} /></p>
      {pair.points.length > 0 && (
        <figure aria-label={w.pairLabel(first, second)}>
          <figcaption>
            <strong>{w.differenceAxis(first, second)}</strong>
          </figcaption>
          <Chart
            of={`${pair.first} ${pair.second} ${less}`}
            height={260}
            draw={async (width, chosen) => (await import("../plots/observers")).drawPair(pair, less, width, chosen)}
          />
        </figure>
      )}
      {pair.of_runs && <p class="quiet">{w.ofRuns}</p>}
      {pair.equal_share !== undefined && <p class="quiet">{w.within(share(pair.equal_share), share(pair.within_one))}</p>}
      {pair.needed && (
        <p class="quiet">
          {w.needed(number(props.width, 2, settings), pair.needed.sessions_for_bias, pair.needed.sessions_for_limits)}
        </p>
      )}
      {measures.length > 0 && (
        <Numbers>
          <Table
            caption={w.pairLabel(first, second)}
            rows={measures}
            columns={[
              { head: w.coefficient, cell: (row) => row.name },
              { head: w.value, number: true, cell: (row) => places(row.estimate.value) },
              { head: w.from, number: true, cell: (row) => places(row.estimate.low) },
              { head: w.to, number: true, cell: (row) => places(row.estimate.high) },
            ]}
          />
        </Numbers>
      )}
    </div>
  );
}

function Drift(props: { observers: ObserverLine[]; corrected: boolean }) {
  const { observers, corrected } = props;
  return (
    <section>
      <h2>{w.drift}</h2>
      <p class="quiet">{w.driftText}</p>
      <div class="multiples">
        {observers.map((one) => {
          const less = corrected && one.bias ? one.bias.value : 0;
          return (
            <figure key={one.observer} aria-label={w.driftLabel(one.name)}>
              <figcaption>
                <strong>{one.name}</strong>
              </figcaption>
              <Chart
                of={`${one.observer} ${less}`}
                height={170}
                draw={async (width, settings) => (await import("../plots/observers")).drawDrift(one, observers, less, width, settings)}
              />
            </figure>
          );
        })}
      </div>
    </section>
  );
}

function Computed(props: { review: ObserversReview }) {
  const { alpha_ordinal: balls, alpha_interval: runs } = props.review;
  const settings = useSettings();
  return (
    <Numbers title={w.computed}>
      {(balls || runs) && (
        <p>
          {w.group}: {w.alpha(withInterval(balls, settings), withInterval(runs, settings))}
        </p>
      )}
      <ul class="plain-list">
        {w.formulas.map((text) => (
          <li key={text}>{text}</li>
        ))}
      </ul>
    </Numbers>
  );
}
