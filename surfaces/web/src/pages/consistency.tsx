import type { ConsistencyReview } from "../api/schemas";
import { Chart } from "../parts/chart";
import { Numbers, Table, type Column } from "../parts/table";
import { length, longDay, number } from "../state/format";
import { useSettings, type Settings } from "../state/settings";
import { words } from "../words";
import { withInterval } from "./observers";
import { Said } from "../parts/said";

const w = words.consistency;
type Green = ConsistencyReview["greens"][number];
type Spot = ConsistencyReview["spots"][number];

export function ConsistencyPage(props: { review: ConsistencyReview }) {
  const { review } = props;
  return (
    <article>
      <header class="page-head">
        <h1 tabIndex={-1}>{w.title}</h1>
        <p class="lead"><Said text={review.sentence} /></p>
        <p class="quiet">{w.period(longDay(review.days.first), longDay(review.days.last), review.visits)}</p>
      </header>
      {review.greens.some((green) => green.score) && <Greens review={review} />}
      {review.score_parts.levels.length + review.speed_parts.levels.length > 0 && <Parts review={review} />}
      {review.points.length > 0 && <Scatter review={review} />}
      <Hours review={review} />
      {review.spots.length > 0 && <Directions spots={review.spots} />}
      <Numbers title={w.computed}>
        <ul class="plain-list">
          {w.formulas.map((text) => (
            <li key={text}>{text}</li>
          ))}
        </ul>
      </Numbers>
    </article>
  );
}

function Greens(props: { review: ConsistencyReview }) {
  const settings = useSettings();
  const { greens } = props.review;
  const compared = greens.filter((green) => green.score);
  const shown = (value: number | undefined, places: number) => (value === undefined ? w.unknown : number(value, places, settings));
  return (
    <section>
      <h2>{w.greens}</h2>
      <figure aria-label={w.greensLabel}>
        <Chart
          of={props.review}
          height={40 + compared.length * 25}
          draw={async (width, chosen) => (await import("../plots/consistency")).drawStandings(compared, width, chosen)}
        />
        <figcaption>{w.greensText}</figcaption>
      </figure>
      <Numbers>
        <Table
          caption={w.greens}
          rows={compared}
          columns={[
            { head: w.green, cell: (green: Green) => green.name },
            { head: w.days, number: true, cell: (green) => green.score?.days },
            { head: w.score, number: true, cell: (green) => shown(green.score?.mean, 2) },
            { head: w.difference, number: true, cell: (green) => withInterval(green.score?.difference, settings) },
            { head: w.z, number: true, cell: (green) => shown(green.score?.robust_z, 1) },
            { head: w.speed, number: true, cell: (green) => (green.speed ? length(green.speed.mean, settings) : w.unknown) },
            { head: w.fast, cell: (green) => (green.fast_but_not_true ? w.yes : w.no) },
          ]}
        />
      </Numbers>
    </section>
  );
}

function Parts(props: { review: ConsistencyReview }) {
  const settings = useSettings();
  const { score_parts: score, speed_parts: speed } = props.review;
  const rows = [
    ...score.levels.map((level) => ({ of: w.scoreOf, ...level })),
    ...speed.levels.map((level) => ({ of: w.speedOf, ...level })),
  ];
  return (
    <section>
      <h2>{w.parts}</h2>
      <figure aria-label={w.partsLabel}>
        <Chart
          of={props.review}
          height={34 + rows.length * 28}
          draw={async (width, chosen) => (await import("../plots/consistency")).drawParts(props.review, width, chosen)}
        />
        <figcaption>{w.partsText}</figcaption>
      </figure>
      <Numbers>
        <Table
          caption={w.partsLabel}
          rows={rows}
          columns={[
            { head: w.of, cell: (row) => row.of },
            { head: w.levelHead, cell: (row) => w.level[row.name] ?? row.name },
            { head: w.groups, number: true, cell: (row) => row.groups },
            { head: w.share, number: true, cell: (row) => number(row.share * 100, 1, settings) },
          ]}
        />
      </Numbers>
    </section>
  );
}

function Scatter(props: { review: ConsistencyReview }) {
  const settings = useSettings();
  const { points, speed_and_score: rank, greens } = props.review;
  const fast = greens.filter((green) => green.fast_but_not_true).map((green) => green.name);
  return (
    <section>
      <h2>{w.scatter}</h2>
      {rank && <p>{w.rank(withInterval(rank.estimate, settings), rank.pairs)}</p>}
      {fast.length > 0 && <p>{w.fastList(fast.join(", "))}</p>}
      <figure aria-label={w.scatterLabel}>
        <Chart
          of={props.review}
          height={300}
          draw={async (width, chosen) => (await import("../plots/consistency")).drawScatter(points, width, chosen)}
        />
        <figcaption>{w.scatterText}</figcaption>
      </figure>
    </section>
  );
}

function Hours(props: { review: ConsistencyReview }) {
  const settings = useSettings();
  const { afternoon_score: score, afternoon_speed_m: speed, score_pairs, speed_pairs } = props.review;
  return (
    <section>
      <h2>{w.hours}</h2>
      {!score && !speed && <p>{w.noHours}</p>}
      {score && <p>{w.afternoonScore(withInterval(score, settings), score_pairs)}</p>}
      {speed && <p>{w.afternoonSpeed(withInterval(speed, settings), speed_pairs)}</p>}
    </section>
  );
}

const columns = (settings: Settings): Column<Spot>[] => [
  { head: w.green, cell: (spot) => spot.name },
  { head: w.spot, cell: (spot) => spot.spot },
  { head: w.visits, number: true, cell: (spot) => spot.visits },
  { head: w.outLessBack, number: true, cell: (spot) => withInterval(spot.score, settings) },
  { head: w.p, number: true, cell: (spot) => (spot.p_all === undefined ? w.unknown : number(spot.p_all, 3, settings)) },
  { head: w.slope, number: true, cell: (spot) => (spot.rise ? number(spot.rise.value, 2, settings) : w.unknown) },
  { head: w.finding, cell: (spot) => w.findings[spot.finding] },
];

function Directions(props: { spots: Spot[] }) {
  const settings = useSettings();
  const apart = props.spots.filter((spot) => spot.finding === "score_apart" || spot.finding === "changing");
  return (
    <section>
      <h2>{w.directions}</h2>
      <p class="quiet">{w.directionsText}</p>
      {apart.length === 0 ? <p>{w.noDirections}</p> : <Table caption={w.directions} rows={apart} columns={columns(settings)} />}
      <Numbers title={w.allSpots}>
        <Table caption={w.allSpots} rows={props.spots} columns={columns(settings)} />
      </Numbers>
    </section>
  );
}
