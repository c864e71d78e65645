import type { ComponentChildren } from "preact";
import { createContext } from "preact";
import { useContext } from "preact/hooks";
import { linkTo, type Route } from "../state/route";

/** Gives the address of a place, or nothing where it cannot be followed: a
    report holds greens and works, but no visits. */
export type Linker = (route: Route) => string | undefined;
export const LinkContext = createContext<Linker>(linkTo);

export function Link(props: { to: Route; class?: string; label?: string; children: ComponentChildren }) {
  const href = useContext(LinkContext)(props.to);
  if (!href) return <span class={props.class}>{props.children}</span>;
  return (
    <a href={href} class={props.class} aria-label={props.label}>
      {props.children}
    </a>
  );
}

/** Links to each of these visits, by their running number. */
export function VisitLinks(props: { club: string; visits: string[] }) {
  return (
    <span class="visit-links">
      {props.visits.map((visit) => (
        <Link key={visit} to={{ page: "visit", club: props.club, visit }}>
          {visit}
        </Link>
      ))}
    </span>
  );
}
