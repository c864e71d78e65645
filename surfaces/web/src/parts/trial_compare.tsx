import { useState } from "preact/hooks";
import { readFile } from "../api/files";
import { compareTrial, compareTrialRolls, type TrialAnswer } from "../api/trials";
import { words } from "../words";
import { TrialResult } from "./trial_result";
import { AnswerPlace, useAnswer } from "./answer";
import { Said } from "./said";

const w = words.trials;

/** Plan and records in, the comparison out; nothing is kept on the server. */
export function TrialCompare(props: { club: string }) {
  const [plan, setPlan] = useState<File>();
  const [records, setRecords] = useState<File>();
  const [treated, setTreated] = useState("");
  const [standard, setStandard] = useState("8");
  const { state, ask } = useAnswer<TrialAnswer>();
  const compare = async (first: File, second: File | undefined) => {
    const planFile = await readFile(first);
    const query = { treated, standard: standard.replace(",", ".") };
    return second
      ? compareTrial(planFile, await readFile(second), query)
      : compareTrialRolls(props.club, planFile, query);
  };
  const file = (label: string, required: boolean, choose: (file: File | undefined) => void) => (
    <label>
      <span>{label}</span>
      <input type="file" accept=".csv,text/csv" required={required} onChange={(event) => choose(event.currentTarget.files?.[0])} />
    </label>
  );
  return (
    <section>
      <h2>{w.analyse}</h2>
      <form
        class="trial-form"
        onSubmit={(event) => {
          event.preventDefault();
          if (plan) ask(() => compare(plan, records));
        }}
      >
        {file(w.fields.plan, true, setPlan)}
        {file(w.fields.records, false, setRecords)}
        <label>
          <span>{w.fields.treated}</span>
          <input type="date" value={treated} onInput={(event) => setTreated(event.currentTarget.value)} />
        </label>
        <label>
          <span>{w.fields.standard}</span>
          <input type="text" inputMode="decimal" value={standard} onInput={(event) => setStandard(event.currentTarget.value)} />
        </label>
        <div class="wide">
          <button type="submit">{w.compare}</button>
        </div>
      </form>
      <AnswerPlace state={state}>
        {(answer) =>
          answer.is === "compared" ? (
            <TrialResult analysis={answer.analysis} />
          ) : (
            <section class="notice" role="alert">
              <h3>{w.problems}</h3>
              <ul class="plain-list">
                {answer.sentences.map((sentence) => (
                  <li key={sentence}><Said text={sentence} /></li>
                ))}
              </ul>
            </section>
          )
        }
      </AnswerPlace>
    </section>
  );
}
