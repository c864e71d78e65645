import { headline, type SeasonReview, type WorkLoss } from "../api/schemas";
import { middleDay, number, shortDay } from "../state/format";
import { useSettings } from "../state/settings";
import { letters } from "../state/year";
import { words } from "../words";
import { Interval, inGrowth, Loss, whyNone } from "./interval";
import { Link } from "./place";
import { Numbers, Table } from "./table";

const w = words.work;

const labelOf = (season: SeasonReview, loss: WorkLoss) =>
  season.works.find((work) => work.work === loss.work)?.label ?? loss.kind;

/** The year's disruptive works with what each cost this green, then the rest. */
export function YearWorks(props: { season: SeasonReview }) {
  const { season } = props;
  const settings = useSettings();
  const badges = letters(season);
  const other = season.works.filter((work) => work.work_class !== "disruptive");
  return (
    <section class="year-works">
      <h2>{words.year.worksTitle}</h2>
      {season.works.length === 0 && <p>{words.year.noWorks}</p>}
      <ol class="work-list">
        {season.losses.map((loss) => {
          const back = loss.recovery.find((one) => one.definition === headline);
          const growth = back && inGrowth(back, settings);
          return (
            <li key={loss.work + loss.half}>
              <div class="work-name">
                <h3>
                  <span class="badge">{badges.get(loss.work)}</span>{" "}
                  <Link to={{ page: "work", club: season.club, work: loss.work }} class="initial">
                    {labelOf(season, loss)}
                  </Link>
                </h3>
                <p class="quiet">
                  {middleDay(loss.day)}
                  {loss.half && `, ${w.half(loss.half)}`}
                </p>
              </div>
              <dl class="costs">
                <div>
                  <dt>{w.fall}</dt>
                  <dd>{loss.depth === undefined ? <span class="quiet">{whyNone(loss)}</span> : w.points(number(loss.depth, 1, settings))}</dd>
                </div>
                <div>
                  <dt>{w.back}: {w.definitions[headline].name.toLowerCase()}</dt>
                  <dd>
                    {back && loss.visits_after > 0 ? <Interval interval={back} /> : <span class="quiet">{w.nothingAfter}</span>}
                    {growth && <span class="quiet under">{growth} {w.growth.toLowerCase()}</span>}
                  </dd>
                </div>
                <div>
                  <dt>{w.lossUnit}</dt>
                  <dd>
                    <Loss area={loss.area} why={whyNone(loss)} />
                  </dd>
                </div>
              </dl>
            </li>
          );
        })}
      </ol>
      {other.length > 0 && (
        <Numbers title={`${words.works.routine} (${other.length})`}>
          <ul class="plain-list">
            {other.map((work) => (
              <li key={work.work}>
                <Link to={{ page: "work", club: season.club, work: work.work }}>{work.label}</Link>{" "}
                <span class="quiet">{middleDay(work.day)}</span>
              </li>
            ))}
          </ul>
        </Numbers>
      )}
    </section>
  );
}

/** The same as one small table, for paper. */
export function YearWorksTable(props: { season: SeasonReview }) {
  const { season } = props;
  const settings = useSettings();
  const badges = letters(season);
  if (season.losses.length === 0) return <p>{words.works.noDisruptive}</p>;
  const unknown = <span class="quiet">{words.unknown}</span>;
  const quiet = (loss: WorkLoss) => <span class="quiet">{whyNone(loss)}</span>;
  return (
    <section class="year-works">
      <h2>{words.year.worksTitle}</h2>
      <Table<WorkLoss>
        caption={words.report.tableCaption}
        rows={season.losses}
        columns={[
          {
            head: words.works.work,
            cell: (loss) => `${badges.get(loss.work) ?? ""}  ${labelOf(season, loss)}${loss.half && `, ${w.half(loss.half)}`}`,
          },
          { head: words.works.day, cell: (loss) => shortDay(loss.day) },
          { head: w.before, number: true, cell: (loss) => (loss.before === undefined ? quiet(loss) : number(loss.before, 1, settings)) },
          { head: w.fall, number: true, cell: (loss) => (loss.depth === undefined ? unknown : number(loss.depth, 1, settings)) },
          {
            head: words.works.back,
            cell: (loss) => {
              const back = loss.recovery.find((one) => one.definition === headline);
              return back && loss.visits_after > 0 ? <Interval interval={back} /> : quiet(loss);
            },
          },
          { head: w.lossUnit, number: true, cell: (loss) => <Loss area={loss.area} why={words.unknown} /> },
        ]}
      />
    </section>
  );
}
