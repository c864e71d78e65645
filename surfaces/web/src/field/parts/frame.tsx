import type { ComponentChildren } from "preact";
import { go, goBack, useField } from "../field";
import { refusals } from "../sync/visit_state";

/** What a page stands in: a bar on top, a column, and at the thumb what goes on. */
export function Frame(props: { title: string; back?: boolean; menu?: boolean; end?: ComponentChildren; children: ComponentChildren; class?: string }) {
  const { words } = useField();
  return (
    <div class={`frame ${props.class ?? ""}`}>
      <header class="bar">
        {props.back && <button class="bar-button" onClick={goBack} aria-label={words.back}><Arrow /></button>}
        {props.menu && <button class="bar-button" onClick={() => go("menu")} aria-label={words.menu.title}><Bars /></button>}
        <h1>{props.title}</h1>
        <Standing />
      </header>
      <main class="column">{props.children}</main>
      {props.end && <footer class="thumb">{props.end}</footer>}
    </div>
  );
}

const Arrow = () => (
  <svg viewBox="0 0 24 24" aria-hidden="true"><path d="M15 4 7 12l8 8" /></svg>
);
const Bars = () => (
  <svg viewBox="0 0 24 24" aria-hidden="true"><path d="M4 6h16M4 12h16M4 18h16" /></svg>
);

/** Where everything that was written stands, on every page. */
function Standing() {
  const { book, sync, words } = useField();
  const entries = book.waiting().length;
  const pictures = book.picturesWaiting().length;
  const waiting = entries + pictures;
  const refused = refusals(book, sync.onTheirWay);
  const [sign, text] =
    refused > 0 ? ["refused", words.kept.refusedCount(refused)]
    : sync.state === "sending" && waiting > 0 ? ["sent", words.kept.sending]
    : waiting > 0 ? ["kept", entries > 0 ? words.kept.waiting(entries) : words.kept.photos(pictures)]
    : ["accepted", words.kept.all];
  return (
    <button class={`standing ${sign}`} onClick={() => go("kept")}>
      <span class="unseen">{words.menu.kept}: {text}</span>
      <i aria-hidden="true" />
      {sign !== "accepted" && <span aria-hidden="true">{sign === "refused" ? refused : waiting}</span>}
    </button>
  );
}

/** One of a few, each a key of its own. */
export function Keys<T extends string | number>(props: {
  of: readonly T[];
  chosen: T | undefined;
  text: (value: T) => ComponentChildren;
  name: string;
  choose: (value: T) => void;
  columns?: number;
}) {
  return (
    <div class="keys" role="group" aria-label={props.name} style={{ "--columns": props.columns ?? props.of.length }}>
      {props.of.map((value) => (
        <button key={value} class="key" aria-pressed={props.chosen === value} onClick={() => props.choose(value)}>
          {props.text(value)}
        </button>
      ))}
    </div>
  );
}

export function Row(props: { label: string; value: string; go: () => void }) {
  return (
    <button class="row" onClick={props.go}>
      <span class="label">{props.label}</span>
      <span class="value">{props.value}</span>
      <svg viewBox="0 0 24 24" aria-hidden="true"><path d="m9 5 7 7-7 7" /></svg>
    </button>
  );
}

/** The way to sign in, and back here afterwards. */
export function SignIn() {
  return <a class="wide" href="../#/+sign-in?to=field">{useField().words.kept.signIn}</a>;
}
