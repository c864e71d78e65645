import type { GreensReview, SeasonReview } from "../api/schemas";
import { Chart } from "../parts/chart";
import { LedgerCalendar } from "../parts/ledger";
import { Link } from "../parts/place";
import { YearModel } from "../parts/season_model";
import { YearTables } from "../parts/year_tables";
import { YearWorks } from "../parts/year_works";
import { number, shortDay } from "../state/format";
import { linkTo } from "../state/route";
import { useSettings } from "../state/settings";
import { words } from "../words";

const w = words.year;

export function YearPage(props: { season: SeasonReview; review: GreensReview }) {
  const { season, review } = props;
  return (
    <article>
      <header class="page-head">
        <Neighbours season={season} review={review} />
        <h1 tabIndex={-1}>{w.title(season.green_name, season.year)}</h1>
        <p class="lead">{season.visits.length === 0 ? w.noVisits : w.ledgerSentence(season.ledger)}</p>
        <Years season={season} review={review} />
      </header>
      <YearPicture season={season} numbers />
      {season.visits.length > 0 && <YearModel club={season.club} green={season.green} year={season.year} />}
      <LedgerCalendar ledger={season.ledger} numbers />
      <YearWorks season={season} />
    </article>
  );
}

/** The picture with its caption; the numbers beneath where they are wanted. */
export function YearPicture(props: { season: SeasonReview; numbers: boolean; fixedWidth?: number }) {
  const { season } = props;
  const settings = useSettings();
  const { optimum_c, spread_c } = season.growth_options;
  const fixtures = season.fixtures.map((one) => `${one.name}, ${shortDay(one.days.first)}`).join("; ");
  const notes = [
    props.numbers ? w.pictureText : "",
    season.weather.length === 0
      ? w.noWeather
      : props.numbers
        ? w.growthSettings(number(optimum_c, 1, settings), number(spread_c, 1, settings))
        : "",
    season.weather.length > 0 && season.weather_days_missing > 0 ? w.weatherMissing(season.weather_days_missing) : "",
    fixtures && w.fixtures(fixtures),
  ];
  return (
    <section class="picture">
      <h2>{w.picture}</h2>
      <figure aria-label={w.pictureLabel(season.green_name, season.year)}>
        <Chart
          of={season}
          height={props.fixedWidth ? 440 : 640}
          fixedWidth={props.fixedWidth}
          draw={async (width, chosen) => (await import("../plots/year")).drawYear(season, width, chosen, props.fixedWidth !== undefined)}
        />
        <figcaption>{notes.filter(Boolean).join(" ")}</figcaption>
      </figure>
      {props.numbers && <YearTables season={season} />}
    </section>
  );
}

function Years(props: { season: SeasonReview; review: GreensReview }) {
  const { season, review } = props;
  return (
    <nav class="years" aria-label={w.years}>
      {[...review.years].reverse().map((year) => (
        <a
          key={year}
          href={linkTo({ page: "year", club: review.club, green: season.green, year })}
          aria-current={year === season.year ? "page" : undefined}
        >
          {year}
        </a>
      ))}
    </nav>
  );
}

function Neighbours(props: { season: SeasonReview; review: GreensReview }) {
  const { season, review } = props;
  const place = review.greens.findIndex((card) => card.green === season.green);
  const before = review.greens[place - 1];
  const after = place < 0 ? undefined : review.greens[place + 1];
  const to = (green: string) => ({ page: "year", club: review.club, green, year: season.year }) as const;
  return (
    <p class="over">
      {before && (
        <Link to={to(before.green)} label={`${w.previous}: ${before.name}`}>
          ‹ {before.name}
        </Link>
      )}
      {after && (
        <Link to={to(after.green)} label={`${w.next}: ${after.name}`}>
          {after.name} ›
        </Link>
      )}
    </p>
  );
}
