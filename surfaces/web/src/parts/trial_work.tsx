import { words } from "../words";
import { Said } from "./said";

export function Notes(props: { notes: string[] }) {
  if (props.notes.length === 0) return null;
  return (
    <section>
      <h3>{words.trials.note}</h3>
      <ul class="plain-list">
        {props.notes.map((note) => (
          <li key={note}><Said text={note} /></li>
        ))}
      </ul>
    </section>
  );
}

export function How(props: { lines: string[] }) {
  return (
    <details class="numbers">
      <summary>{words.trials.how}</summary>
      {props.lines.map((line) => (
        <p key={line}>{line}</p>
      ))}
    </details>
  );
}
