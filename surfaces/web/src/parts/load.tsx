import type { ComponentChildren } from "preact";
import { useEffect, useState } from "preact/hooks";
import { Failure } from "../api/client";
import { words } from "../words";

type State<T> = { of: string } & ({ is: "loading" } | { is: "ready"; value: T } | { is: "failed"; sentence: string });

/** Asks again whenever `key` changes; an answer that comes too late is dropped. */
export function Load<T>(props: {
  of: string;
  ask: () => Promise<T>;
  children: (value: T) => ComponentChildren;
}) {
  const { of } = props;
  const [state, setState] = useState<State<T>>({ of, is: "loading" });
  const [attempt, setAttempt] = useState(0);
  useEffect(() => {
    let current = true;
    setState({ of, is: "loading" });
    props.ask().then(
      (value) => current && setState({ of, is: "ready", value }),
      (problem: unknown) => {
        if (!current) return;
        // What is no refusal is a slip in these pages: let the console say where.
        if (!(problem instanceof Failure)) console.error(problem);
        setState({ of, is: "failed", sentence: (problem as Error).message });
      },
    );
    return () => {
      current = false;
    };
  }, [of, attempt]);

  // Just asked for something else: what is held belongs to the page before.
  const current = state.of === of;
  if (current && state.is === "ready") return <>{props.children(state.value)}</>;
  if (!current || state.is !== "failed")
    return (
      <p class="loading" role="status">
        {words.loading}
      </p>
    );
  return (
    <section class="notice" role="alert">
      <h1 tabIndex={-1}>{words.failed.title}</h1>
      <p>{state.sentence}</p>
      <button type="button" onClick={() => setAttempt(attempt + 1)}>
        {words.failed.again}
      </button>
    </section>
  );
}
