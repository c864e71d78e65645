import { useField } from "../field";

const keys = ["1", "2", "3", "4", "5", "6", "7", "8", "9", "mark", "0", "less"] as const;

/** Figures for a wet thumb; the decimal mark is the reader's. `text` holds a point. */
export function NumberPad(props: { text: string; change: (text: string) => void; signed?: boolean }) {
  const { prefs, words } = useField();
  const { text, change } = props;
  const press = (key: (typeof keys)[number]) => {
    if (key === "less") return change(text.slice(0, -1));
    if (key === "mark") return change(text.includes(".") ? text : `${text || "0"}.`);
    if (text.replace(/\D/g, "").length < 6) change(text + key);
  };
  return (
    <div class="number-pad" role="group">
      {keys.map((key) => (
        <button key={key} class="key" onClick={() => press(key)} aria-label={key === "less" ? words.undo : undefined}>
          {key === "mark" ? prefs.decimal : key === "less" ? "⌫" : key}
        </button>
      ))}
      {props.signed && <button class="key span" onClick={() => change(text.startsWith("-") ? text.slice(1) : `-${text}`)}>+ / −</button>}
    </div>
  );
}
/** Absent where nothing stands. */
export const numberOf = (text: string): number | undefined => (/\d/.test(text) && Number.isFinite(Number(text)) ? Number(text) : undefined);
