import type { SeasonReview, VisitPoint } from "../api/schemas";
import { dayParts, length, middleDay, number, score, smallLength } from "../state/format";
import { useSettings } from "../state/settings";
import { words } from "../words";
import { Link } from "./place";
import { Numbers, Table } from "./table";

const w = words.year;

export interface MonthWeather {
  month: number;
  growth: number;
  rain: number | undefined;
  known: number;
}

/** Sums by month of what is known; a month without any rain record has none. */
export function weatherByMonth(weather: SeasonReview["weather"]): MonthWeather[] {
  const rows = new Map<number, MonthWeather>();
  for (const day of weather) {
    const { month } = dayParts(day.day);
    const row = rows.get(month) ?? { month, growth: 0, rain: undefined, known: 0 };
    if (day.growth !== undefined) {
      row.growth += day.growth;
      row.known += 1;
    }
    if (day.rain_mm !== undefined) row.rain = (row.rain ?? 0) + day.rain_mm;
    rows.set(month, row);
  }
  return [...rows.values()];
}

export function YearTables(props: { season: SeasonReview }) {
  const { season } = props;
  const settings = useSettings();
  const visits = [...season.visits].reverse();
  const missing = <span class="quiet">{words.notMeasured}</span>;
  return (
    <>
      <Numbers title={w.visitsTable}>
        <Table<VisitPoint>
          caption={w.visitsTable}
          rows={visits}
          columns={[
            {
              head: words.table.day,
              cell: (visit) => (
                <Link to={{ page: "visit", club: season.club, visit: visit.visit }}>{middleDay(visit.day)}</Link>
              ),
            },
            { head: words.records.score, number: true, cell: (visit) => (visit.score === undefined ? missing : score(visit.score, settings)) },
            {
              head: words.table.spread,
              number: true,
              cell: (visit) =>
                visit.lowest === undefined || visit.highest === undefined
                  ? missing
                  : words.work.band(score(visit.lowest, settings), score(visit.highest, settings)),
            },
            {
              head: words.records.speed,
              number: true,
              cell: (visit) =>
                visit.speed
                  ? `${length(visit.speed.speed_m, settings)} ± ${smallLength(visit.speed.standard_error_m, settings)}`
                  : missing,
            },
            { head: words.table.rolls, number: true, cell: (visit) => visit.scored_rolls },
            { head: words.records.observer, cell: (visit) => visit.observer },
          ]}
        />
      </Numbers>
      {season.weather.length > 0 && (
        <Numbers title={w.weatherTable}>
          <Table
            caption={w.weatherTable}
            rows={weatherByMonth(season.weather)}
            columns={[
              { head: words.table.month, cell: (row) => words.months[row.month - 1] },
              { head: w.growthSum, number: true, cell: (row) => (row.known ? number(row.growth, 1, settings) : missing) },
              { head: w.daysKnown, number: true, cell: (row) => row.known },
              { head: w.rainSum, number: true, cell: (row) => (row.rain === undefined ? missing : number(row.rain, 1, settings)) },
            ]}
          />
        </Numbers>
      )}
    </>
  );
}
