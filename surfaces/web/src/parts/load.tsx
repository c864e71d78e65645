import type { ComponentChildren } from "preact";
import { useEffect, useState } from "preact/hooks";
import { Failure } from "../api/client";
import { words } from "../words";

type State<T> = { is: "loading" } | { is: "ready"; value: T } | { is: "failed"; sentence: string };

/** Asks again whenever `key` changes; an answer that comes too late is dropped. */
export function Load<T>(props: {
  of: string;
  ask: () => Promise<T>;
  children: (value: T) => ComponentChildren;
}) {
  const [state, setState] = useState<State<T>>({ is: "loading" });
  const [attempt, setAttempt] = useState(0);
  useEffect(() => {
    let current = true;
    setState({ is: "loading" });
    props.ask().then(
      (value) => current && setState({ is: "ready", value }),
      (problem: unknown) => {
        if (!current) return;
        // What is no refusal is a slip in these pages: let the console say where.
        if (!(problem instanceof Failure)) console.error(problem);
        setState({ is: "failed", sentence: (problem as Error).message });
      },
    );
    return () => {
      current = false;
    };
  }, [props.of, attempt]);

  if (state.is === "ready") return <>{props.children(state.value)}</>;
  if (state.is === "loading")
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
