import { useState } from "preact/hooks";
import type { GreenCard, GreensReview } from "../api/schemas";
import { Link } from "../parts/place";
import { Sign, Spark } from "../parts/spark";
import { TrueBar } from "../parts/true_bar";
import { dayParts, length, longDay, middleDay, score, signed } from "../state/format";
import { useSettings } from "../state/settings";
import { words } from "../words";
import { Said } from "../parts/said";

const w = words.greens;
type Order = keyof typeof w.orders;

/** Greens never scored or visited come first: nothing is known of them. */
export function ordered(greens: GreenCard[], order: Order): GreenCard[] {
  const copy = [...greens];
  if (order === "lowest") copy.sort((a, b) => (a.score ?? 0) - (b.score ?? 0));
  if (order === "waiting")
    copy.sort((a, b) => (b.days_since_visit ?? Infinity) - (a.days_since_visit ?? Infinity));
  return copy;
}

const kStaleDays = 28;
const stale = (card: GreenCard) => (card.days_since_visit ?? Infinity) > kStaleDays;

/** Greens below the standard, lowest first, and those not looked at for four weeks. */
export function toLookAt(greens: GreenCard[]): { low: GreenCard[]; stale: GreenCard[] } {
  const low = ordered(greens.filter((card) => card.at_standard === false), "lowest");
  return { low, stale: ordered(greens.filter(stale), "waiting") };
}

function Named(props: { text: string; cards: GreenCard[]; review: GreensReview; shown: (card: GreenCard) => string }) {
  const { cards, review } = props;
  if (cards.length === 0) return null;
  return (
    <p class="look-at">
      {props.text}{" "}
      {cards.map((card, i) => {
        const year = dayParts(card.last_visit ?? review.today).year;
        return (
          <span key={card.green}>
            {i > 0 && ", "}
            <Link to={{ page: "year", club: review.club, green: card.green, year }}>{card.name}</Link> {props.shown(card)}
          </span>
        );
      })}
    </p>
  );
}

/** Kept while the page is open, so that going back does not lose it. */
let lastOrder: Order = "walk";

export function GreensPage(props: { review: GreensReview }) {
  const { review } = props;
  const [order, setOrder] = useState<Order>(lastOrder);
  const settings = useSettings();
  const { low, stale } = toLookAt(review.greens);
  return (
    <article class="greens">
      <header class="page-head">
        <p class="over">{w.asOf(longDay(review.today))}</p>
        <h1 tabIndex={-1}><Said text={review.headline} /></h1>
        <Named text={w.lowest} cards={low} review={review} shown={(card) => `(${score(card.score ?? 0, settings)})`} />
        <Named
          text={w.stale}
          cards={stale}
          review={review}
          shown={(card) => (card.days_since_visit === undefined ? "" : `(${w.days(card.days_since_visit)})`)}
        />
      </header>
      <Reports review={review} />
      <div class="bar">
        <p class="quiet key">
          {w.key}
        </p>
        <label class="pick">
          {w.order}{" "}
          <select value={order} onChange={(event) => {
              lastOrder = event.currentTarget.value as Order;
              setOrder(lastOrder);
            }}>
            {Object.entries(w.orders).map(([value, text]) => (
              <option key={value} value={value}>
                {text}
              </option>
            ))}
          </select>
        </label>
      </div>
      <div class="card-heads" aria-hidden="true">
        <span>{w.green}</span>
        <span>{w.score}</span>
        <span>{w.recent}</span>
        <span>{w.speed}</span>
        <span>{w.work}</span>
        <span>{w.trueDays}</span>
      </div>
      <ol class="cards">
        {ordered(review.greens, order).map((card) => (
          <Card key={card.green} review={review} card={card} />
        ))}
      </ol>
    </article>
  );
}

/** This year's report and, early in the year, the one that is asked for then. */
function Reports(props: { review: GreensReview }) {
  const { year, month } = dayParts(props.review.today);
  const years = month <= 3 ? [year - 1, year] : [year];
  return (
    <p class="reports">
      {years.map((one) => (
        <a key={one} class="button" download href={`api/v1/clubs/${encodeURIComponent(props.review.club)}/years/${one}/report`}>
          {w.report(one)}
        </a>
      ))}
    </p>
  );
}

function Card(props: { review: GreensReview; card: GreenCard }) {
  const { review, card } = props;
  const settings = useSettings();
  const year = dayParts(card.last_visit ?? review.today).year;
  const to = { page: "year", club: review.club, green: card.green, year } as const;
  return (
    <li class={`card${card.fast_but_not_true ? " card-fast" : ""}${stale(card) ? " card-stale" : ""}`}>
      <div class="card-name">
        <h2>
          <Link to={to} class="card-link">
            {card.name}
          </Link>
        </h2>
        <p class="quiet">
          {card.last_visit !== undefined && card.days_since_visit !== undefined ? (
            w.visited(card.days_since_visit)
          ) : (
            w.never
          )}
        </p>
      </div>
      <div class="card-score">
        <span class="label">{w.score}</span>
        {card.score === undefined ? (
          <span class="quiet">{w.notScored}</span>
        ) : (
          <>
            <span class="figure">
              <Sign true={card.at_standard ?? false} /> {score(card.score, settings)}
            </span>
            <span class="quiet">
              {card.at_standard ? w.at : w.below}, {score(card.standard, settings)}
            </span>
          </>
        )}
      </div>
      <div class="card-spark">
        <span class="label">{w.recent}</span>
        <Spark scores={card.recent_scores} standard={card.standard} />
        <span class="quiet">
          {stale(card) ? w.staleTrend : w.trends[card.trend]}
          {!stale(card) && card.trend_points !== undefined && card.trend !== "steady" && ` (${signed(card.trend_points, settings)})`}
        </span>
      </div>
      <div class="card-speed">
        <span class="label">{w.speed}</span>
        {card.speed ? (
          <>
            <span class="figure">{length(card.speed.speed_m, settings)}</span>
            <span class="quiet">{card.speed_day && middleDay(card.speed_day)}</span>
            {card.fast_but_not_true && <span class="flag">{w.fast}</span>}
          </>
        ) : (
          <span class="quiet">{words.notMeasured}</span>
        )}
      </div>
      <div class="card-work">
        <span class="label">{w.work}</span>
        {card.last_work ? (
          <>
            <Link to={{ page: "work", club: review.club, work: card.last_work }} class="initial">{card.last_work_label}</Link>
            {card.days_since_work !== undefined && <span class="quiet">{w.since(card.days_since_work)}</span>}
          </>
        ) : (
          <span class="quiet">{w.noWork}</span>
        )}
      </div>
      <div class="card-true">
        <span class="label">{w.trueDays}</span>
        <TrueBar fewest={card.fewest_true} most={card.most_true} open={card.open_days} />
      </div>
    </li>
  );
}

