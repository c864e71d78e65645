import type { TrialDesign } from "../api/schemas";
import { number } from "../state/format";
import { useSettings } from "../state/settings";
import { words } from "../words";
import { Table } from "./table";
import { How, Notes } from "./trial_work";
import { Said } from "./said";

const w = words.trials;
const c = w.columns;

const fileOf = (type: string, content: string) => `data:${type};charset=utf-8,${encodeURIComponent(content)}`;

function Files(props: { design: TrialDesign }) {
  const { design } = props;
  const files = [
    { name: "trial.csv", label: w.file.plan, type: "text/csv", content: design.plan_csv },
    { name: "trial_records.csv", label: w.file.sheet, type: "text/csv", content: design.sheet_csv },
    { name: "trial_sheet.html", label: w.file.page, type: "text/html", content: design.sheet_page },
    { name: "trial_map.svg", label: w.file.map, type: "image/svg+xml", content: design.map_svg },
  ];
  return (
    <section>
      <h3>{w.files}</h3>
      <p class="quiet">{w.planKept}</p>
      <p class="trial-files">
        {files.filter((file) => file.content !== "").map((file) => (
          <a key={file.name} class="button" download={file.name} href={fileOf(file.type, file.content)}>
            {file.label}
          </a>
        ))}
      </p>
    </section>
  );
}

/** The drawn layout: what it can find first, then map, files and walk. */
export function TrialPlanView(props: { design: TrialDesign }) {
  const { design } = props;
  const settings = useSettings();
  const walk = [...design.plots].sort((a, b) => (a.walk ?? 0) - (b.walk ?? 0));
  const place = (plot: TrialDesign["plots"][number]) => [plot.green, plot.half].filter(Boolean).join(", ");
  return (
    <>
      <p class="lead answer"><Said text={design.sentence} /></p>
      <section>
        <h3>{w.map}</h3>
        <div class="trial-map" tabIndex={0} role="region" aria-label={w.map}>
          <img src={fileOf("image/svg+xml", design.map_svg)} alt={w.mapLabel(design.trial)} />
        </div>
      </section>
      <Files design={design} />
      <section>
        <h3>{w.walk}</h3>
        <Table
          caption={w.walk}
          rows={walk}
          columns={[
            { head: c.walk, cell: (plot) => plot.walk ?? "", number: true },
            { head: c.plot, cell: (plot) => plot.plot, number: true },
            { head: c.treatment, cell: (plot) => [plot.treatment, plot.second_treatment].filter(Boolean).join(" / ") },
            { head: c.block, cell: (plot) => plot.block ?? "", number: true },
            { head: c.place, cell: place },
          ]}
        />
      </section>
      <section>
        <h3>{w.size}</h3>
        <p class="quiet">{w.sizeText}</p>
        <Table
          caption={w.size}
          rows={design.other_blocks}
          columns={[
            { head: c.blocks, cell: (one) => one.blocks, number: true },
            { head: c.detectable, cell: (one) => number(one.detectable, 1, settings), number: true },
          ]}
        />
      </section>
      <Notes notes={design.notes} />
      <How lines={w.howDesign} />
    </>
  );
}
