import type { Remark } from "../api/schemas";
import { words } from "../words";
import { Said } from "./said";

const shownAtMost = 40;

/** Problems or remarks as a list, the first ones of many. */
export function Sentences(props: { title: string; all: Remark[] }) {
  const { all } = props;
  if (all.length === 0) return null;
  return (
    <section>
      <h2>{props.title}</h2>
      <ul class="plain-list">
        {all.slice(0, shownAtMost).map((one, i) => (
          <li key={i}><Said text={one.sentence} /></li>
        ))}
      </ul>
      {all.length > shownAtMost && <p class="quiet">{words.bring.more(all.length - shownAtMost)}</p>}
    </section>
  );
}
