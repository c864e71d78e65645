import type { Run, VisitDetail } from "../api/schemas";
import { PhotosOf } from "../parts/photos";
import { Link } from "../parts/place";
import { SpeedSteps } from "../parts/speed_steps";
import { Table } from "../parts/table";
import { dayParts, length, longDay, number, score, smallLength } from "../state/format";
import { useSettings, type Settings } from "../state/settings";
import { words } from "../words";
import { Said } from "../parts/said";

const w = words.visit;

interface RollRow {
  direction: string;
  roll: string;
  distance: string;
  marks: string;
  score: string;
}

/** One row for each ball; a run known only by its total is one row. */
export function rollRows(runs: Run[], settings: Settings): RollRow[] {
  return runs.flatMap((run) => {
    const rows = run.rolls.map((roll) => ({
      direction: w.directions[run.direction],
      roll: String(roll.order),
      distance: roll.distance_m === undefined ? words.notMeasured : length(roll.distance_m, settings),
      marks: markWords(roll.marks, settings),
      score: roll.score === undefined ? w.noScore : String(roll.score),
    }));
    if (run.total === undefined) return rows;
    const of = run.total_of === undefined ? "" : w.totalOf(run.total_of);
    const total = { direction: w.directions[run.direction], roll: "", distance: "", marks: "", score: w.total(run.total, of) };
    return [...rows.map((row) => ({ ...row, score: "" })), total];
  });
}

export function markWords(marks: Run["rolls"][number]["marks"], settings: Settings): string {
  if (marks === undefined) return w.marksNotNoted;
  if (marks.length === 0) return w.marksNone;
  return marks
    .map(({ kind, seconds }) =>
      seconds === undefined ? w.marksOf[kind] : `${w.marksOf[kind]} ${w.after(number(seconds, 1, settings))}`,
    )
    .join(", ");
}

export function VisitPageView(props: { club: string; detail: VisitDetail }) {
  const { detail, club } = props;
  const { visit } = detail;
  const settings = useSettings();
  const { speed } = detail;
  const year = dayParts(visit.day).year;
  return (
    <article>
      <header class="page-head">
        <p class="over">
          <Link to={{ page: "records", club }}>{w.back}</Link>
          <Link to={{ page: "year", club, green: visit.green, year }}>{w.season(year)}</Link>
        </p>
        <h1 tabIndex={-1}>{w.title(detail.green_name, longDay(visit.day))}</h1>
      </header>
      <dl class="facts">
        <div class="fact-large">
          <dt>{w.score}</dt>
          <dd>
            {detail.score === undefined ? w.noScore : score(detail.score, settings)}
            {detail.score !== undefined && <small>{w.of(detail.scored_rolls)}</small>}
          </dd>
        </div>
        <div class="fact-large">
          <dt>{w.speed}</dt>
          <dd>
            {speed ? length(speed.speed_m, settings) : w.noSpeed}
            {speed && <small>{w.plusMinus(smallLength(speed.standard_error_m, settings))}</small>}
          </dd>
        </div>
        <Facts detail={detail} />
      </dl>
      {detail.remarks.length > 0 && (
        <section class="remarks">
          <h2>{w.remarks}</h2>
          <ul>
            {detail.remarks.map((remark, index) => (
              <li key={index}><Said text={remark.sentence} /></li>
            ))}
          </ul>
        </section>
      )}
      <PhotosOf club={club} of={visit.id} />
      {visit.runs.length > 0 && <Rolls detail={detail} />}
      {speed && <SpeedSteps spots={detail.spots} />}
      <section>
        <h2>{w.source}</h2>
        <p>
          {visit.source.file ? words.records.line(visit.source.file, visit.source.line) : words.records.noSource}
          {", "}
          {w.id.toLowerCase()} <code>{visit.id}</code>
        </p>
      </section>
    </article>
  );
}

function Facts(props: { detail: VisitDetail }) {
  const { visit } = props.detail;
  const settings = useSettings();
  const { conditions } = visit;
  const hours = (value: number | undefined, name: string) =>
    value === undefined ? [] : [`${w.hours(number(value, 1, settings))} ${name}`];
  const state = [
    ...hours(conditions.hours_since_mowing, w.mowing),
    ...hours(conditions.hours_since_rolling, w.rolling),
    ...(conditions.dew === undefined ? [] : [`${w.dew}: ${conditions.dew}`]),
    ...(conditions.wind === undefined ? [] : [`${w.wind}: ${conditions.wind}`]),
    ...(conditions.surface === undefined ? [] : [`${w.surface}: ${conditions.surface}`]),
  ];
  return (
    <>
      <div>
        <dt>{w.by}</dt>
        <dd>{visit.observer}</dd>
      </div>
      <div>
        <dt>{w.time}</dt>
        <dd>{visit.from ? w.at(visit.from, visit.to) : w.unknown}</dd>
      </div>
      {visit.half && (
        <div>
          <dt>{w.half}</dt>
          <dd>{visit.half}</dd>
        </div>
      )}
      <div>
        <dt>{w.conditions}</dt>
        <dd>{state.length > 0 ? state.join(", ") : w.unknown}</dd>
      </div>
      {visit.note && (
        <div>
          <dt>{w.note}</dt>
          <dd>{visit.note}</dd>
        </div>
      )}
    </>
  );
}

function Rolls(props: { detail: VisitDetail }) {
  const settings = useSettings();
  const { runs } = props.detail.visit;
  const spots = [...new Set(runs.map((run) => run.spot))];
  return (
    <section>
      <h2>{w.rolls}</h2>
      {spots.map((spot) => (
        <Table
          key={spot}
          caption={w.spot(spot)}
          rows={rollRows(runs.filter((run) => run.spot === spot), settings)}
          columns={[
            { head: w.direction, cell: (row) => row.direction },
            { head: w.roll, cell: (row) => row.roll, number: true },
            { head: w.distance, cell: (row) => row.distance, number: true },
            { head: w.marks, cell: (row) => row.marks },
            { head: words.records.score, cell: (row) => row.score, number: true },
          ]}
        />
      ))}
    </section>
  );
}
