import type { ComponentChildren } from "preact";
import { useState } from "preact/hooks";
import { Failure } from "../api/client";
import { words } from "../words";

type State<T> = { is: "waiting" } | { is: "working" } | { is: "ready"; value: T } | { is: "failed"; sentence: string };

/** A form whose answer the server works out; the answer stands below it. */
export function useAnswer<T>() {
  const [state, setState] = useState<State<T>>({ is: "waiting" });
  const ask = (work: () => Promise<T>) => {
    setState({ is: "working" });
    work().then(
      (value) => setState({ is: "ready", value }),
      (problem: unknown) => {
        if (!(problem instanceof Failure)) console.error(problem);
        setState({ is: "failed", sentence: (problem as Error).message });
      },
    );
  };
  return { state, ask };
}

export function AnswerPlace<T>(props: { state: State<T>; children: (value: T) => ComponentChildren }) {
  const { state } = props;
  return (
    <div aria-live="polite" class="worked-out titled">
      {state.is === "working" && <p class="loading">{words.working}</p>}
      {state.is === "failed" && <p class="notice" role="alert">{state.sentence}</p>}
      {state.is === "ready" && props.children(state.value)}
    </div>
  );
}
