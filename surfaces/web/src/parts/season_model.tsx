import { api } from "../api/client";
import { useState } from "preact/hooks";
import type { Estimate, ModelWork, Return, SeasonChecks, SeasonModel } from "../api/schemas";
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
      <ModelChecks club={model.club} />
      <Numbers title={w.how}>
        <p>{w.formula}</p>
        <p class="quiet">{w.source}</p>
      </Numbers>
    </>
  );
}

/** Asked for only when wanted: it costs the server seconds. */
function ModelChecks(props: { club: string }) {
  const [wanted, setWanted] = useState(false);
  if (!wanted)
    return (
      <p>
        <button type="button" onClick={() => setWanted(true)}>
          {w.check}
        </button>{" "}
        <span class="quiet">{w.checkNote}</span>
      </p>
    );
  return (
    <Load of={`checks ${props.club}`} ask={() => api.seasonChecks(props.club)}>
      {(checks) => <CheckFindings checks={checks} />}
    </Load>
  );
}

function CheckFindings(props: { checks: SeasonChecks }) {
  const { surprises, clocks, leaning } = props.checks;
  const settings = useSettings();
  const rows = leaning.fits.flatMap((fit) => fit.methods.map((method) => ({ ...method, times: fit.times })));
  return (
    <section>
      {[surprises, clocks, leaning].map((finding) => finding && <p key={finding.sentence}>{finding.sentence}</p>)}
      {rows.length > 0 && (
        <Numbers title={w.moves}>
          <Table<(typeof rows)[number]>
            caption={w.moves}
            rows={rows}
            columns={[
              { head: w.method, cell: (row) => row.method },
              { head: w.times, number: true, cell: (row) => number(row.times, 1, settings) },
              { head: w.depthMoves, number: true, cell: (row) => number(row.depth, 2, settings) },
              { head: w.rateMoves, number: true, cell: (row) => number(row.rate, 2, settings) },
            ]}
          />
        </Numbers>
      )}
    </section>
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
