import type { TrialAnalysis, TrialComparison } from "../api/schemas";
import { middleDay, number } from "../state/format";
import { useSettings, type Settings } from "../state/settings";
import { words } from "../words";
import { Chart } from "./chart";
import { Numbers, Table } from "./table";
import { How, Notes } from "./trial_work";
import { Said } from "./said";

const w = words.trials;
const c = w.columns;

const p = (value: number, settings: Settings) => (value < 0.001 ? `< ${number(0.001, 3, settings)}` : number(value, 3, settings));

function between(interval: { low: number; high: number }, places: number, settings: Settings): string {
  return w.range(number(interval.low, places, settings), number(interval.high, places, settings));
}

function Means(props: { comparison: TrialComparison; control: string }) {
  const { comparison, control } = props;
  const settings = useSettings();
  return (
    <>
      <h4>{w.meansOf[comparison.of] ?? comparison.of}</h4>
      <p class="quiet">
        {w.lsd(number(comparison.f, 2, settings), comparison.df, comparison.error_df, p(comparison.p, settings), number(comparison.lsd, 2, settings))}
      </p>
      <Table
        caption={w.meansOf[comparison.of] ?? comparison.of}
        rows={comparison.means}
        columns={[
          { head: c.treatment, cell: (mean) => mean.name },
          { head: c.mean, cell: (mean) => number(mean.mean, 2, settings), number: true },
          { head: c.plots, cell: (mean) => mean.plots, number: true },
          { head: c.letters, cell: (mean) => mean.letters },
        ]}
      />
      {comparison.against_control.length > 0 && <h4>{w.control(control)}</h4>}
      {comparison.against_control.length > 0 && (
        <Table
          caption={w.control(control)}
          rows={comparison.against_control}
          columns={[
            { head: c.treatment, cell: (one) => one.name },
            { head: c.difference, cell: (one) => number(one.difference, 2, settings), number: true },
            { head: c.interval, cell: (one) => between(one.interval, 2, settings), number: true },
            { head: c.p, cell: (one) => p(one.p, settings), number: true },
          ]}
        />
      )}
    </>
  );
}

function Back(props: { back: NonNullable<TrialAnalysis["back"]> }) {
  const { back } = props;
  const settings = useSettings();
  return (
    <section>
      <h3>{w.back}</h3>
      <Table
        caption={w.back}
        rows={back.treatments}
        columns={[
          { head: c.treatment, cell: (one) => one.treatment },
          { head: c.median, cell: (one) => number(one.median_days, 1, settings), number: true },
          { head: c.interval, cell: (one) => between(one.interval, 1, settings), number: true },
          { head: c.plots, cell: (one) => one.plots, number: true },
          { head: c.notBack, cell: (one) => one.not_back, number: true },
        ]}
      />
    </section>
  );
}

function Ranks(props: { ordinal: TrialAnalysis["ordinal"] }) {
  const settings = useSettings();
  return (
    <Numbers title={w.ranks}>
      <p class="quiet">{w.ranksNote}</p>
      <Table
        caption={w.ranks}
        rows={props.ordinal.pairs}
        columns={[
          { head: c.treatment, cell: (one) => w.pair(one.first, one.second) },
          { head: w.odds, cell: (one) => number(one.odds, 2, settings), number: true },
          { head: c.interval, cell: (one) => between(one.interval, 2, settings), number: true },
          { head: c.p, cell: (one) => p(one.p, settings), number: true },
        ]}
      />
    </Numbers>
  );
}

function Days(props: { analysis: TrialAnalysis }) {
  const { analysis } = props;
  const settings = useSettings();
  const rows = analysis.days.flatMap((day) =>
    day.analysis.comparisons.slice(0, 1).map((comparison) => ({ day: day.day, comparison })),
  );
  const names = rows[0]?.comparison.means.map((mean) => mean.name) ?? [];
  if (rows.length < 2) return null;
  return (
    <section>
      <h3>{w.picture}</h3>
      <figure aria-label={w.pictureLabel}>
        <Chart
          of={analysis}
          height={300}
          draw={async (width, how) => (await import("../plots/trial")).drawTrial(analysis, width, how)}
        />
        <figcaption>{w.pictureText}</figcaption>
      </figure>
      <Numbers title={w.days}>
        <Table
          caption={w.days}
          rows={rows}
          columns={[
            { head: w.day, cell: (row) => middleDay(row.day) },
            ...names.map((name) => ({
              head: name,
              number: true,
              cell: (row: (typeof rows)[number]) => {
                const mean = row.comparison.means.find((one) => one.name === name);
                return mean ? `${number(mean.mean, 2, settings)} ${mean.letters}` : words.notMeasured;
              },
            })),
            { head: c.p, cell: (row) => p(row.comparison.p, settings), number: true },
          ]}
        />
      </Numbers>
    </section>
  );
}

/** The answer of a trial: the sentence, the picture, the tables. */
export function TrialResult(props: { analysis: TrialAnalysis }) {
  const { analysis } = props;
  return (
    <>
      <p class="lead answer"><Said text={analysis.sentence} /></p>
      <p class="quiet">{w.evidence(analysis.plots, analysis.records, analysis.days.length)}</p>
      <Days analysis={analysis} />
      {analysis.overall.comparisons.length > 0 && (
        <section>
          <h3>{w.overall}</h3>
          {analysis.overall.comparisons.map((comparison) => (
            <Means key={comparison.of} comparison={comparison} control={analysis.control} />
          ))}
        </section>
      )}
      {analysis.back?.usable && <Back back={analysis.back} />}
      {analysis.ordinal.usable && <Ranks ordinal={analysis.ordinal} />}
      <Notes notes={analysis.notes} />
      <How lines={w.howText} />
    </>
  );
}
