import type { GreensReview, VisitLine, VisitPage } from "../api/schemas";
import { Link } from "../parts/place";
import { length, middleDay, score } from "../state/format";
import { linkTo, type Route } from "../state/route";
import { useMay } from "../state/session";
import { useSettings } from "../state/settings";
import { words } from "../words";
import { photoWords } from "../words_photos";

const w = words.records;
export const visitsPerPage = 50;
type Records = Extract<Route, { page: "records" }>;

function go(route: Records, change: Partial<Records>): void {
  location.hash = linkTo({ ...route, offset: 0, ...change });
}

export function RecordsPage(props: { route: Records; review: GreensReview; visits: VisitPage }) {
  const { route, visits } = props;
  const bring = useMay("bring", route.club);
  return (
    <article>
      <header class="page-head">
        <h1 tabIndex={-1}>{w.title}</h1>
        <p class="lead">{w.intro(visits.total)}</p>
        <p>
          <Link to={{ page: "photos", club: route.club }}>{photoWords.link}</Link>
        </p>
        {bring && (
          <p>
            <Link to={{ page: "bring", club: route.club }}>{words.bring.link}</Link>
          </p>
        )}
      </header>
      <Filter route={route} review={props.review} />
      {visits.visits.length === 0 ? (
        <p class="notice">{w.none}</p>
      ) : (
        <ol class="visits">
          {visits.visits.map((line) => (
            <Line key={line.visit} club={route.club} line={line} />
          ))}
        </ol>
      )}
      <Pages route={route} visits={visits} />
    </article>
  );
}

function Filter(props: { route: Records; review: GreensReview }) {
  const { route } = props;
  return (
    <form class="filter" aria-label={w.filter} onSubmit={(event) => event.preventDefault()}>
      <label>
        {w.green}
        <select value={route.green ?? ""} onChange={(event) => go(route, { green: event.currentTarget.value })}>
          <option value="">{w.all}</option>
          {props.review.greens.map((card) => (
            <option key={card.green} value={card.green}>
              {card.name}
            </option>
          ))}
        </select>
      </label>
      <label>
        {w.from}
        <input type="date" value={route.from ?? ""} max={route.to} onChange={(event) => go(route, { from: event.currentTarget.value })} />
      </label>
      <label>
        {w.to}
        <input type="date" value={route.to ?? ""} min={route.from} onChange={(event) => go(route, { to: event.currentTarget.value })} />
      </label>
      {(route.green ?? route.from ?? route.to) && (
        <a class="button" href={linkTo({ page: "records", club: route.club })}>
          {w.clear}
        </a>
      )}
    </form>
  );
}

function Line(props: { club: string; line: VisitLine }) {
  const { line } = props;
  const settings = useSettings();
  return (
    <li>
      <Link to={{ page: "visit", club: props.club, visit: line.visit }} class="visit-link">
        {line.green_name}, {middleDay(line.day)}
      </Link>
      <span class="visit-at quiet">
        {[line.at, line.half && words.work.half(line.half), line.observer].filter(Boolean).join(", ")}
      </span>
      <span class="visit-figure">
        <span class="label">{w.score}</span> {line.score === undefined ? <span class="quiet">{words.visit.noScore}</span> : score(line.score, settings)}
      </span>
      <span class="visit-figure">
        <span class="label">{w.speed}</span>{" "}
        {line.speed ? length(line.speed.speed_m, settings) : <span class="quiet">{words.notMeasured}</span>}
      </span>
      <span class="visit-more quiet">
        {w.rollCount(line.rolls)}
        {line.remarks > 0 && <span class="remark-count">{w.look(line.remarks)}</span>}
      </span>
    </li>
  );
}

function Pages(props: { route: Records; visits: VisitPage }) {
  const { route, visits } = props;
  const last = visits.offset + visits.visits.length;
  if (visits.total <= visitsPerPage) return null;
  return (
    <nav class="pager" aria-label={w.pages}>
      {visits.offset > 0 && (
        <a class="button" href={linkTo({ ...route, offset: Math.max(0, visits.offset - visitsPerPage) })}>
          {w.newer}
        </a>
      )}
      <span>{w.range(visits.offset + 1, last, visits.total)}</span>
      {last < visits.total && (
        <a class="button" href={linkTo({ ...route, offset: last })}>
          {w.older}
        </a>
      )}
    </nav>
  );
}
