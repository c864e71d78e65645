import { api } from "../api/client";
import type { Estimate, ModelWork, Return, SeasonModel } from "../api/schemas";
import { middleDay, number } from "../state/format";
import { useSettings, type Settings } from "../state/settings";
import { words } from "../words";
import { seasonModelWords as w } from "../words_season_model";
import { Chart } from "./chart";
import { Load } from "./load";
import { Numbers, Table } from "./table";
import { Said } from "./said";

/** The year as the season model estimates it; asked for after the page stands. */
export function YearModel(props: { club: string; green: string; year: number }) {
  const { club, green, year } = props;
  return (
    <section class="picture">
      <h2>{w.title}</h2>
      <Load of={`model ${club} ${green} ${year}`} ask={() => api.seasonModel(club, green, year)}>
        {(model) => <Model model={model} />}
      </Load>
    </section>
  );
}

function Model(props: { model: SeasonModel }) {
  const { model } = props;
  const first = `${model.year}-01-01`;
  return (
    <>
      <p>
        <Said text={model.sentence} /> <span class="quiet">{w.about}</span>
      </p>
      <figure aria-label={w.label(model.green_name, model.year)}>
        <Chart
          of={model}
          height={480}
          draw={async (width, settings) => (await import("../plots/season_model")).drawSeasonModel(model, width, settings)}
        />
        <figcaption>{[...(model.clock === "calendar_days" ? [w.calendar] : []), ...model.notes].join(" ")}</figcaption>
      </figure>
      <WorksTable works={model.works.filter((work) => work.day >= first)} growth={model.clock === "growth_days"} />
      <Numbers title={w.how}>
        <p>{w.formula}</p>
        <p class="quiet">{w.source}</p>
      </Numbers>
    </>
  );
}

const spread = (one: Estimate, places: number, settings: Settings) =>
  w.between(number(one.value, places, settings), number(one.low, places, settings), number(one.high, places, settings));

function returned(one: Return): string {
  if (one.followed === 0) return w.unknown;
  if (one.median === undefined) return w.notBack(one.followed);
  const part = (day: number | undefined) => (day === undefined ? `> ${one.followed}` : String(day));
  return w.between(String(one.median), part(one.low), part(one.high));
}

function WorksTable(props: { works: ModelWork[]; growth: boolean }) {
  const settings = useSettings();
  if (props.works.length === 0) return null;
  return (
    <Numbers title={w.table}>
      <Table<ModelWork>
        caption={w.table}
        rows={props.works}
        columns={[
          { head: words.table.day, cell: (work) => middleDay(work.day) },
          { head: w.work, cell: (work) => (work.half ? `${work.label}, ${words.work.half(work.half)}` : work.label) },
          { head: w.depth, number: true, cell: (work) => spread(work.depth, 1, settings) },
          { head: w.halfLife(props.growth), number: true, cell: (work) => spread(work.half_life, 1, settings) },
          { head: w.scoreDays, number: true, cell: (work) => spread(work.score_days, 0, settings) },
          { head: w.back, number: true, cell: (work) => returned(work.at_standard) },
        ]}
      />
    </Numbers>
  );
}
