import type { Definition, RecoveryInterval, WorkAtGreen, WorkReview } from "../api/schemas";
import { dayParts, longDay, number, score } from "../state/format";
import { useSettings } from "../state/settings";
import { greenTitle } from "../state/year";
import { words } from "../words";
import { inGrowth, Interval, Loss, noneSeen, whyNone } from "./interval";
import { Link, VisitLinks } from "./place";
import { Numbers, Table } from "./table";
import { Said } from "./said";

const w = words.work;
/** Every green of the work under the chosen definition. */
export function WorkTable(props: { review: WorkReview; definition: Definition }) {
  const { review, definition } = props;
  const settings = useSettings();
  const quiet = (text: string) => <span class="quiet">{text}</span>;
  const interval = (green: WorkAtGreen) => green.loss.recovery.find((one) => one.definition === definition);
  const year = dayParts(review.work.day).year;
  return (
    <Table<WorkAtGreen>
      caption={`${w.back}: ${w.definitions[definition].name.toLowerCase()}, ${w.definitions[definition].rule}`}
      rows={review.greens}
      columns={[
        {
          head: w.green,
          cell: (green) => (
            <Link to={{ page: "year", club: review.club, green: green.loss.green, year }}>{greenTitle(green)}</Link>
          ),
        },
        { head: w.before, number: true, cell: ({ loss }) => (loss.before === undefined ? quiet(w.noBefore) : score(loss.before, settings)) },
        { head: w.lowest, number: true, cell: ({ loss }) => (loss.trough === undefined ? quiet(w.nothingAfter) : score(loss.trough, settings)) },
        { head: w.fall, number: true, cell: ({ loss }) => fall(loss) },
        {
          head: w.elapsed,
          cell: (green) => {
            const one = interval(green);
            return one && green.loss.visits_after > 0 ? <Interval interval={one} /> : quiet(w.nothingAfter);
          },
        },
        { head: w.growth, cell: (green) => growthCell(interval(green)) },
        { head: w.lossUnit, number: true, cell: ({ loss }) => <Loss area={loss.area} why={whyNone(loss)} /> },
      ]}
    />
  );

  function fall(loss: WorkAtGreen["loss"]) {
    if (loss.depth === undefined) return quiet(whyNone(loss));
    return noneSeen(loss.area) ? quiet(w.noneSeen) : number(loss.depth, 1, settings);
  }

  function growthCell(one: RecoveryInterval | undefined) {
    return (one && inGrowth(one, settings)) ?? "";
  }
}

/** One green under all four definitions, each printed, with its visits. */
export function FourDefinitions(props: { club: string; green: WorkAtGreen }) {
  const { club, green } = props;
  const { loss } = green;
  const settings = useSettings();
  return (
    <Numbers title={greenTitle(green)}>
      {loss.notes.map((note) => (
        <p key={note}><Said text={note} /></p>
      ))}
      <Table<RecoveryInterval>
        caption={`${greenTitle(green)}, ${longDay(loss.day)}`}
        rows={loss.recovery}
        columns={[
          {
            head: w.definitionColumn,
            cell: (one) => (
              <>
                {w.definitions[one.definition].name}
                <span class="quiet under">{w.definitions[one.definition].rule}</span>
              </>
            ),
          },
          { head: w.elapsed, cell: (one) => <Interval interval={one} /> },
          { head: w.growth, cell: (one) => inGrowth(one, settings) ?? "" },
          { head: w.visits, cell: (one) => <VisitLinks club={club} visits={one.visits} /> },
        ]}
      />
      {loss.before_visits.length > 0 && (
        <p>
          {w.before}: <VisitLinks club={club} visits={loss.before_visits} />
        </p>
      )}
    </Numbers>
  );
}
