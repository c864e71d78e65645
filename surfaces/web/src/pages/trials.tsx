import { TrialCompare } from "../parts/trial_compare";
import { TrialForm } from "../parts/trial_form";
import { words } from "../words";

const w = words.trials;

/** A trial before and after: the layout is drawn here, and its records compared. */
export function TrialsPage(props: { club: string }) {
  return (
    <article>
      <header class="page-head">
        <h1 tabIndex={-1}>{w.title}</h1>
        <p class="lead">{w.intro}</p>
        <p class="quiet">{w.caution}</p>
      </header>
      <TrialForm />
      <TrialCompare club={props.club} />
    </article>
  );
}
