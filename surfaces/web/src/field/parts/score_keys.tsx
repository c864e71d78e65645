import type { Offered } from "../capture/offered";
import { useField } from "../field";

/** 1 to 10 in two rows. The offer is filled in already, but paler than what a person said. */
export function ScoreKeys(props: { score: number | undefined; offered: Offered | undefined; taken: boolean; name: string; choose: (score: number) => void }) {
  const { words } = useField();
  const { score, offered } = props;
  return (
    <div class="scores" role="group" aria-label={props.name}>
      {Array.from({ length: 10 }, (_, at) => at + 1).map((value) => {
        const within = offered !== undefined && value >= offered.lowest && value <= offered.highest;
        const offer = score === undefined && offered?.score === value;
        return (
          <button
            key={value}
            class={`score ${within ? "within" : ""} ${offer ? (props.taken ? "offer" : "offer open") : ""}`}
            aria-pressed={score === value}
            aria-label={`${words.score} ${value}${offer ? `. ${words.offer.takes(value)}` : ""}`}
            onClick={() => props.choose(value)}
          >
            {value}
          </button>
        );
      })}
    </div>
  );
}
