import type { SeasonReview, WorkLoss } from "../api/schemas";
import { middleDay, number } from "../state/format";
import { useSettings } from "../state/settings";
import { letters } from "../state/year";
import { words } from "../words";
import { Interval, inGrowth, Loss, whyNone } from "./interval";
import { Link } from "./place";
import { Numbers } from "./table";

const w = words.work;

/** The year's disruptive works with what each cost this green, then the rest. */
export function YearWorks(props: { season: SeasonReview }) {
  const { season } = props;
  const settings = useSettings();
  const badges = letters(season);
  const label = (loss: WorkLoss) => season.works.find((work) => work.work === loss.work)?.label ?? loss.kind;
  const other = season.works.filter((work) => work.work_class !== "disruptive");
  return (
    <section class="year-works">
      <h2>{words.year.worksTitle}</h2>
      {season.works.length === 0 && <p>{words.year.noWorks}</p>}
      <ol class="work-list">
        {season.losses.map((loss) => {
          const lasting = loss.recovery.find((one) => one.definition === "lasting");
          const growth = lasting && inGrowth(lasting, settings);
          return (
            <li key={loss.work + loss.half}>
              <div class="work-name">
                <h3>
                  <span class="badge">{badges.get(loss.work)}</span>{" "}
                  <Link to={{ page: "work", club: season.club, work: loss.work }}>{label(loss)}</Link>
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
                  <dt>{w.back}: {w.definitions.lasting.name.toLowerCase()}</dt>
                  <dd>
                    {lasting && loss.visits_after > 0 ? <Interval interval={lasting} /> : <span class="quiet">{w.nothingAfter}</span>}
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
