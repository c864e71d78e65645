import type { WorkLine } from "../api/schemas";
import { Link } from "../parts/place";
import { middleDay, number } from "../state/format";
import { useSettings, type Settings } from "../state/settings";
import { words } from "../words";

const w = words.works;

export const newestFirst = (works: WorkLine[]) =>
  [...works].sort((a, b) => b.work.day.localeCompare(a.work.day) || a.work.id.localeCompare(b.work.id));

export function backText(line: WorkLine): string {
  const { back_after_days: after, back_by_days: by, back, censored } = line;
  if (after === undefined || by === undefined) return censored > 0 ? w.censored(censored) : "";
  const days = words.work.withinDays(after, by);
  if (censored === 0) return days;
  return `${w.backOf(back, back + censored)}, ${days}`;
}

/** The three costs of a work as a row of figures. */
export function Costs(props: { line: WorkLine; settings: Settings }) {
  const { line, settings } = props;
  const unknown = <span class="quiet">{words.notMeasured}</span>;
  return (
    <dl class="costs">
      <div>
        <dt>{w.fall}</dt>
        <dd>{line.mean_depth === undefined ? unknown : w.points(number(line.mean_depth, 1, settings))}</dd>
      </div>
      <div>
        <dt>{w.back}</dt>
        <dd>{backText(line) || unknown}</dd>
      </div>
      <div>
        <dt>{w.cost}</dt>
        <dd>
          {line.mean_score_days === undefined
            ? unknown
            : (line.losses_open > 0 ? w.scoreDaysAtLeast : w.scoreDays)(number(line.mean_score_days, 1, settings))}
        </dd>
      </div>
    </dl>
  );
}

export function WorksPage(props: { club: string; works: WorkLine[] }) {
  const settings = useSettings();
  const works = newestFirst(props.works);
  const disruptive = works.filter((line) => line.work_class === "disruptive");
  const other = works.filter((line) => line.work_class !== "disruptive");
  const to = (line: WorkLine) => ({ page: "work", club: props.club, work: line.work.id }) as const;
  return (
    <article>
      <header class="page-head">
        <h1 tabIndex={-1}>{w.title}</h1>
        <p class="lead">{works.length === 0 ? w.empty : disruptive.length === 0 ? w.noDisruptive : w.intro}</p>
      </header>
      {disruptive.length > 0 && (
        <>
          <ol class="work-list">
            {disruptive.map((line) => (
              <li key={line.work.id}>
                <div class="work-name">
                  <h2>
                    <Link to={to(line)} class="initial">
                      {line.label}
                    </Link>
                  </h2>
                  <p class="quiet">
                    {middleDay(line.work.day)}, {words.work.onGreens(line.greens)}
                  </p>
                </div>
                <Costs line={line} settings={settings} />
              </li>
            ))}
          </ol>
          <p class="quiet">{w.note}</p>
        </>
      )}
      {other.length > 0 && (
        <details class="numbers">
          <summary>{`${w.routine} (${other.length})`}</summary>
          <ul class="plain-list">
            {other.map((line) => (
              <li key={line.work.id}>
                <Link to={to(line)}>{line.label}</Link>{" "}
                <span class="quiet">
                  {middleDay(line.work.day)}, {words.work.onGreens(line.greens)}
                </span>
              </li>
            ))}
          </ul>
        </details>
      )}
    </article>
  );
}
