import { useEffect, useMemo, useState } from "preact/hooks";
import type { DayKind, Ledger } from "../api/schemas";
import { addDays, dayParts, longDay } from "../state/format";
import { words } from "../words";
import { Numbers, Table } from "./table";

const kinds: DayKind[] = ["measured_true", "measured_not", "between_true", "unmeasured", "closed"];
const cell = 24;

/** One day's sign: colour and shape both tell the kind. */
function DaySign(props: { kind: DayKind; x: number; y: number }) {
  const { kind, x, y } = props;
  const inner = cell - 4;
  switch (kind) {
    case "measured_true":
      return <rect class="day-true" x={x + 2} y={y + 2} width={inner} height={inner} rx={4} />;
    case "measured_not":
      return <path class="day-not" d={`M${x + 2},${y + 4}h${inner}l${-inner / 2},${inner - 3}z`} />;
    case "between_true":
      return <rect class="day-between" x={x + 3.5} y={y + 3.5} width={inner - 3} height={inner - 3} rx={4} />;
    case "unmeasured":
      return <circle class="day-unmeasured" cx={x + cell / 2} cy={y + cell / 2} r={2.6} />;
    case "closed":
      return <path class="day-closed" d={`M${x + 6},${y + 6}l${cell - 12},${cell - 12}m0,${12 - cell}l${12 - cell},${cell - 12}`} />;
  }
}

interface LedgerDay {
  iso: string;
  kind: DayKind;
  month: number;
  day: number;
}

export function ledgerDays(ledger: Ledger): LedgerDay[] {
  return ledger.days.map((kind, index) => {
    const iso = addDays(ledger.period.first, index);
    const { month, day } = dayParts(iso);
    return { iso, kind, month, day };
  });
}

/** A row for each month; on a narrow screen a column for each, so that a day
    stays large enough to be told. */
function Calendar(props: { days: LedgerDay[]; upright: boolean }) {
  const { days, upright } = props;
  const left = upright ? 30 : 46;
  const top = 22;
  const width = left + (upright ? 12 : 31) * cell;
  const height = top + (upright ? 31 : 12) * cell;
  const x = (one: { month: number; day: number }) => left + ((upright ? one.month : one.day) - 1) * cell;
  const y = (one: { month: number; day: number }) => top + ((upright ? one.day : one.month) - 1) * cell;
  return (
    <svg class="calendar" viewBox={`0 0 ${width} ${height}`} role="img" aria-label={words.year.ledgerLabel}>
      {[1, 5, 10, 15, 20, 25, 30].map((day) =>
        upright ? (
          <text key={day} x={0} y={y({ month: 1, day }) + 17}>
            {day}
          </text>
        ) : (
          <text key={day} class="middle" x={x({ month: 1, day }) + cell / 2} y={14}>
            {day}
          </text>
        ),
      )}
      {words.monthShort.map((name, index) =>
        upright ? (
          <text key={name} class="middle" x={x({ month: index + 1, day: 1 }) + cell / 2} y={14}>
            {words.monthLetters[index]}
          </text>
        ) : (
          <text key={name} x={0} y={y({ month: index + 1, day: 1 }) + 17}>
            {name}
          </text>
        ),
      )}
      {days.map((one) => (
        <g key={one.iso}>
          <title>{`${longDay(one.iso)}: ${words.dayKinds[one.kind]}`}</title>
          <rect class="day-ground" x={x(one)} y={y(one)} width={cell} height={cell} />
          <DaySign kind={one.kind} x={x(one)} y={y(one)} />
        </g>
      ))}
    </svg>
  );
}

function useNarrow(): boolean {
  const query = useMemo(() => matchMedia("screen and (max-width: 640px)"), []);
  const [narrow, setNarrow] = useState(query.matches);
  useEffect(() => {
    const changed = () => setNarrow(query.matches);
    query.addEventListener("change", changed);
    return () => query.removeEventListener("change", changed);
  }, [query]);
  return narrow;
}

function Key(props: { ledger: Ledger }) {
  return (
    <ul class="ledger-key">
      {kinds.map((kind) => (
        <li key={kind}>
          <svg viewBox={`0 0 ${cell} ${cell}`} width={cell} height={cell} aria-hidden="true">
            <DaySign kind={kind} x={0} y={0} />
          </svg>
          <span>
            <strong>{props.ledger[kind]}</strong> {words.dayKinds[kind]}
          </span>
        </li>
      ))}
    </ul>
  );
}

export function ledgerByMonth(ledger: Ledger): { month: number; counts: Record<DayKind, number> }[] {
  const rows = new Map<number, Record<DayKind, number>>();
  for (const { month, kind } of ledgerDays(ledger)) {
    const counts = rows.get(month) ?? { measured_true: 0, measured_not: 0, between_true: 0, unmeasured: 0, closed: 0 };
    counts[kind] += 1;
    rows.set(month, counts);
  }
  return [...rows].map(([month, counts]) => ({ month, counts }));
}

/** What is known of each day of the year, as picture, counts and sentence. */
export function LedgerCalendar(props: { ledger: Ledger; numbers: boolean }) {
  const { ledger } = props;
  return (
    <section class="ledger">
      <h2>{words.year.ledger}</h2>
      <p class="lead">{words.year.extremes(ledger)}</p>
      <figure>
        <Calendar days={ledgerDays(ledger)} upright={useNarrow()} />
        <figcaption>
          <Key ledger={ledger} />
        </figcaption>
      </figure>
      {props.numbers && (
        <Numbers title={words.year.byMonth}>
          <dl class="rules">
            {kinds.map((kind) => (
              <div key={kind}>
                <dt>{words.dayKinds[kind]}</dt>
                <dd>{words.dayKindRules[kind]}</dd>
              </div>
            ))}
          </dl>
          <Table
            caption={words.year.byMonth}
            rows={ledgerByMonth(ledger)}
            columns={[
              { head: words.table.month, cell: (row) => words.months[row.month - 1] },
              ...kinds.map((kind) => ({
                head: words.dayKinds[kind],
                number: true,
                cell: (row: { counts: Record<DayKind, number> }) => row.counts[kind],
              })),
            ]}
          />
        </Numbers>
      )}
    </section>
  );
}
