import { useEffect, useState } from "preact/hooks";
import type { Session } from "../capture/session";
import { useField } from "../field";

/** Takes back the last touch, whatever it was, and says what that was. */
export function Undo({ session }: { session: Session }) {
  const { acts, act, words } = useField();
  const [said, setSaid] = useState("");
  const deed = acts.undoable(session);
  useEffect(() => {
    if (!said) return;
    const timer = setTimeout(() => setSaid(""), 2500);
    return () => clearTimeout(timer);
  }, [said]);
  if (!deed) return null;
  return (
    <button
      class="undo"
      aria-label={`${words.undo}: ${words.deeds[deed]}`}
      onClick={() => act(async () => {
        const taken = await acts.undo(session);
        if (taken) setSaid(words.undone(words.deeds[taken]));
      })}
    >
      <svg viewBox="0 0 24 24" aria-hidden="true"><path d="M8 5 3.5 9.5 8 14M4 9.5h10a5.5 5.5 0 0 1 0 11H9" /></svg>
      <small>{words.deeds[deed]}</small>
      <span role="status" class={said ? "toast" : "unseen"}>{said}</span>
    </button>
  );
}
