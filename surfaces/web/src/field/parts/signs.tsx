import type { Mark } from "../core_types";

// Each mark as its path along the line: it hops, it rattles, it swerves.
const paths: Record<Mark["kind"], string> = {
  bobble: "M4 40c4-24 14-24 18 0 3-17 10-17 13 0 2-10 7-10 9 0",
  chatter: "M2 34l5-8 5 12 5-12 5 12 5-12 5 12 5-12 5 8",
  snake: "M2 32c8-18 14-18 20-4s12 14 24-6",
};
export function Sign(props: { kind: Mark["kind"] }) {
  return (
    <svg class="sign" viewBox="0 0 48 48" aria-hidden="true">
      <path d={paths[props.kind]} />
    </svg>
  );
}
