import type { Fields, MethodFigure, MethodLine, MethodPair, MethodsReview } from "../api/schemas";
import { Chart } from "../parts/chart";
import { Link } from "../parts/place";
import { Numbers, Table } from "../parts/table";
import { middleDay, number } from "../state/format";
import { linkTo, type Route } from "../state/route";
import { useSettings, type Settings } from "../state/settings";
import { words } from "../words";
import { Said } from "../parts/said";

const w = words.methods;
type MethodsRoute = Extract<Route, { page: "methods" }>;

/** "21 (14 to 31)"; the value alone where one work gives no spread. */
export function figure(of: MethodFigure | undefined, places: number, settings: Settings): string {
  if (!of) return w.unknown;
  const shown = (value: number) => number(value, places, settings);
  if (of.low === undefined || of.high === undefined) return shown(of.value);
  return w.interval(shown(of.value), shown(of.low), shown(of.high));
}

export function MethodsPage(props: { route: MethodsRoute; review: MethodsReview; fields: Fields }) {
  const { route, review } = props;
  const known = review.methods.filter((one) => one.days);
  return (
    <article>
      <header class="page-head">
        <h1 tabIndex={-1}>{w.title}</h1>
        <p class="lead"><Said text={review.sentence} /></p>
        {review.looks > 0 && <p class="quiet">{w.rests(review.works, review.looks)}</p>}
      </header>
      <Filter route={route} fields={props.fields} definition={review.definition} />
      {known.length > 0 && <Medians review={review} methods={known} />}
      {review.methods.length > 0 && <Each review={review} club={route.club} />}
      {review.pairs.length > 0 && <Pairs review={review} />}
      {review.methods.length > 0 && <Curves methods={review.methods} />}
      {review.notes.length > 0 && (
        <section>
          <h2>{w.left}</h2>
          <ul class="plain-list">
            {review.notes.map((note) => (
              <li key={note}><Said text={note} /></li>
            ))}
          </ul>
        </section>
      )}
      <Computed review={review} />
    </article>
  );
}

function Filter(props: { route: MethodsRoute; fields: Fields; definition: MethodsReview["definition"] }) {
  const { route } = props;
  const kinds = props.fields.work_kinds.filter((kind) => kind.work_class !== "closing");
  const asked = kinds.filter((kind) => !route.kind || kind.name === route.kind);
  const parameters = new Map(asked.flatMap((kind) => kind.parameters.map((one) => [one.name, one.title] as const)));
  const go = (change: Partial<MethodsRoute>) => {
    location.hash = linkTo({ ...route, ...change });
  };
  return (
    <form class="filter by-choice" aria-label={w.filter.label} onSubmit={(event) => event.preventDefault()}>
      <label>
        {w.filter.kind}
        <select value={route.kind ?? ""} onChange={(event) => go({ kind: event.currentTarget.value, by: "" })}>
          <option value="">{w.filter.any}</option>
          {kinds.map((kind) => (
            <option key={kind.name} value={kind.name}>{kind.title}</option>
          ))}
        </select>
      </label>
      <label>
        {w.filter.by}
        <select value={route.by ?? ""} onChange={(event) => go({ by: event.currentTarget.value })}>
          <option value="">{w.filter.nothing}</option>
          {[...parameters].map(([name, title]) => (
            <option key={name} value={name}>{title}</option>
          ))}
        </select>
      </label>
      <label>
        {w.filter.definition}
        <select value={props.definition} onChange={(event) => go({ definition: event.currentTarget.value })}>
          {Object.entries(words.work.definitions).map(([name, one]) => (
            <option key={name} value={name}>{one.name}</option>
          ))}
        </select>
      </label>
    </form>
  );
}

function Medians(props: { review: MethodsReview; methods: MethodLine[] }) {
  return (
    <section>
      <h2>{w.medians}</h2>
      <figure aria-label={w.mediansLabel}>
        <Chart
          of={props.review}
          height={56 + props.methods.length * 42}
          draw={async (width, settings) => (await import("../plots/methods")).drawMedians(props.methods, width, settings)}
        />
        <figcaption>{w.mediansText}</figcaption>
      </figure>
    </section>
  );
}

function Each(props: { review: MethodsReview; club: string }) {
  const settings = useSettings();
  const { methods } = props.review;
  const loss = (one: MethodLine) => {
    const text = figure(one.score_days, 1, settings);
    return one.losses_open > 0 && one.score_days ? w.atLeast(text) : text;
  };
  const works = methods.flatMap((one) => one.work_list.map((work) => ({ method: one.method, ...work })));
  return (
    <section>
      <h2>{w.table}</h2>
      <Table
        caption={w.tableText}
        rows={methods}
        columns={[
          { head: w.method, cell: (one: MethodLine) => one.method },
          { head: w.works, number: true, cell: (one) => one.works },
          { head: w.looks, number: true, cell: (one) => one.looks },
          { head: w.open, number: true, cell: (one) => one.censored },
          { head: w.days, number: true, cell: (one) => figure(one.days, 0, settings) },
          { head: w.growthDays, number: true, cell: (one) => figure(one.growth_days, 0, settings) },
          { head: w.depth, number: true, cell: (one) => figure(one.depth, 1, settings) },
          { head: w.scoreDays, number: true, cell: loss },
        ]}
      />
      <Numbers title={w.worksTitle}>
        <Table
          caption={w.worksTitle}
          rows={works}
          columns={[
            { head: w.day, cell: (work: (typeof works)[number]) => middleDay(work.day) },
            { head: w.method, cell: (work) => work.method },
            { head: w.work, cell: (work) => <Link to={{ page: "work", club: work.club, work: work.work }}>{work.work}</Link> },
            { head: w.looks, number: true, cell: (work) => work.looks },
          ]}
        />
      </Numbers>
    </section>
  );
}

/** Pairs done more than once before others, those told apart first, then the nearest to it. */
export function surestFirst(pairs: MethodPair[]): MethodPair[] {
  const rank = (pair: MethodPair) => (pair.told_apart ? 0 : pair.evidence !== "one_work" && pair.days ? 1 : 2);
  return [...pairs].sort((a, b) => rank(a) - rank(b) || (a.p ?? 1) - (b.p ?? 1));
}

function Pairs(props: { review: MethodsReview }) {
  const settings = useSettings();
  const pairs = surestFirst(props.review.pairs);
  const foremost = pairs.filter((pair) => pair.days).slice(0, 5);
  return (
    <section>
      <h2>{w.differences}</h2>
      <ul class="plain-list">
        {foremost.map((pair) => (
          <li key={pair.first + pair.second}>
            <Said text={pair.sentence} /> <span class="quiet"><Said text={pair.caution} /></span>
          </li>
        ))}
      </ul>
      <Numbers title={w.allPairs}>
        <Table
          caption={w.pairsTable}
          rows={pairs}
          columns={[
            { head: w.first, cell: (pair: MethodPair) => pair.first },
            { head: w.second, cell: (pair) => pair.second },
            { head: w.days, number: true, cell: (pair) => figure(pair.days, 1, settings) },
            { head: w.p, number: true, cell: (pair) => (pair.p === undefined ? w.unknown : number(pair.p, 3, settings)) },
            { head: w.depth, number: true, cell: (pair) => figure(pair.depth, 1, settings) },
            { head: w.scoreDays, number: true, cell: (pair) => figure(pair.score_days, 1, settings) },
            { head: w.needed, number: true, cell: (pair) => pair.works_needed ?? w.unknown },
            { head: w.evidence, cell: (pair) => w.evidences[pair.evidence] },
          ]}
        />
      </Numbers>
    </section>
  );
}

function Curves(props: { methods: MethodLine[] }) {
  const { methods } = props;
  return (
    <section>
      <h2>{w.curves}</h2>
      <p class="quiet">{w.curvesText}</p>
      <div class="multiples">
        {methods
          .filter((one) => one.curve.length > 0)
          .map((one) => (
            <figure key={one.method} aria-label={w.curveLabel(one.method)}>
              <figcaption>
                <strong>{one.method}</strong> · {w.worksOf(one.works, one.looks)}
              </figcaption>
              <Chart
                of={`${one.method} ${one.looks} ${one.censored}`}
                height={190}
                draw={async (width, settings) => {
                  const { drawCurve, lastDay } = await import("../plots/methods");
                  return drawCurve(one, lastDay(methods), width, settings);
                }}
              />
            </figure>
          ))}
      </div>
    </section>
  );
}

function Computed(props: { review: MethodsReview }) {
  const { review } = props;
  const settings = useSettings();
  const factor = (sd: number) => number(Math.exp(sd), 2, settings);
  const tried = review.tried.map((one) => `${w.distributions[one.distribution]} ${number(one.log_likelihood, 2, settings)}`);
  const facts = [
    w.definition(words.work.definitions[review.definition].rule),
    ...(review.estimated ? [] : [w.notEstimated(review.reason ?? "")]),
    ...(review.df === undefined ? [] : [w.spread(factor(review.work_sd ?? 0), factor(review.look_scale ?? 0), review.df)]),
    ...(tried.length === 0 ? [] : [w.tried(w.distributions[review.distribution], tried.join("; "))]),
    ...review.adjustments.map((one) =>
      one.used ? w.adjusted[one.name](number(one.reference ?? 0, 2, settings)) : `${w.notAdjusted[one.name]}: ${one.reason ?? ""}.`,
    ),
  ];
  return (
    <Numbers title={w.computed}>
      <ul class="plain-list">
        {[...facts, ...w.formulas].map((text) => (
          <li key={text}>{text}</li>
        ))}
      </ul>
    </Numbers>
  );
}
