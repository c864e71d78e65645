import { useState } from "preact/hooks";
import type { TrialDesign, TrialRequest } from "../api/schemas";
import { drawTrial } from "../api/trials";
import { words } from "../words";
import { TrialPlanView } from "./trial_plan";
import { AnswerPlace, useAnswer } from "./answer";

const w = words.trials;

type Layout = NonNullable<TrialRequest["layout"]>;
const layouts = Object.keys(w.layouts) as Layout[];

const start = {
  trial: "", treatments: "", seconds: "", control: "", greens: "", halves: "", first: "",
  blocks: "4", visits: "8", every: "3", seed: "1", plotSd: "0.4", visitSd: "0.5", wholeSd: "0.3",
};
type Fields = typeof start;

const names = (text: string) => text.split(",").map((name) => name.trim()).filter(Boolean);
// A decimal comma is as good as a point.
const value = (text: string) => Number(text.replace(",", "."));

/** Empty fields are left out: the server has its own rules for what is missing. */
export function requestOf(fields: Fields, layout: Layout): TrialRequest {
  const two = layout === "split_plot" || layout === "strip_plot";
  return {
    trial: fields.trial.trim(),
    layout,
    treatments: names(fields.treatments),
    ...(two ? { second_treatments: names(fields.seconds) } : {}),
    ...(fields.control.trim() ? { control: fields.control.trim() } : {}),
    ...(names(fields.greens).length > 0 ? { greens: names(fields.greens) } : {}),
    ...(names(fields.halves).length > 0 ? { halves: names(fields.halves) } : {}),
    ...(fields.first ? { first_visit: fields.first, visits: value(fields.visits) } : {}),
    every_days: value(fields.every),
    blocks: value(fields.blocks),
    seed: value(fields.seed),
    plot_sd: value(fields.plotSd),
    visit_sd: value(fields.visitSd),
    whole_plot_sd: value(fields.wholeSd),
  };
}

export function TrialForm() {
  const [fields, setFields] = useState(start);
  const [layout, setLayout] = useState<Layout>("randomised_blocks");
  const { state, ask } = useAnswer<TrialDesign>();
  const two = layout === "split_plot" || layout === "strip_plot";
  const field = (name: keyof Fields, label: string, more: { type?: string; required?: boolean; wide?: boolean } = {}) => (
    <label class={more.wide ? "wide" : undefined}>
      <span>{label}</span>
      <input
        type={more.type ?? "text"}
        inputMode={more.type === "number" ? "numeric" : undefined}
        required={more.required}
        value={fields[name]}
        onInput={(event) => setFields({ ...fields, [name]: event.currentTarget.value })}
      />
    </label>
  );
  return (
    <section>
      <h2>{w.design}</h2>
      <form
        class="trial-form"
        onSubmit={(event) => {
          event.preventDefault();
          ask(() => drawTrial(requestOf(fields, layout)));
        }}
      >
        {field("trial", w.fields.trial, { required: true })}
        <label>
          <span>{w.fields.layout}</span>
          <select value={layout} onChange={(event) => setLayout(event.currentTarget.value as Layout)}>
            {layouts.map((one) => (
              <option key={one} value={one}>
                {w.layouts[one]}
              </option>
            ))}
          </select>
        </label>
        {field("treatments", w.fields.treatments, { required: true, wide: true })}
        {two && field("seconds", w.fields.seconds, { required: true, wide: true })}
        {field("control", w.fields.control)}
        {field("blocks", layout === "completely_randomised" ? w.fields.replicates : w.fields.blocks, { type: "number", required: true })}
        {field("greens", w.fields.greens)}
        {field("halves", w.fields.halves)}
        {field("first", w.fields.first, { type: "date" })}
        {field("visits", w.fields.visits, { type: "number" })}
        {field("every", w.fields.every, { type: "number" })}
        {field("seed", w.fields.seed, { type: "number", required: true })}
        <details class="numbers wide">
          <summary>{w.spread}</summary>
          <p class="quiet">{w.spreadText}</p>
          <div class="trial-form">
            {field("plotSd", w.fields.plotSd)}
            {field("visitSd", w.fields.visitSd)}
            {two && field("wholeSd", w.fields.wholeSd)}
          </div>
        </details>
        <div class="wide">
          <button type="submit">{w.draw}</button>
        </div>
      </form>
      <AnswerPlace state={state}>{(design) => <TrialPlanView design={design} />}</AnswerPlace>
    </section>
  );
}
