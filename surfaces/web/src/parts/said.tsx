import { useSettings } from "../state/settings";
import { withDecimal } from "../state/format";

/** A sentence of the server's, with the chosen decimal mark in its numbers. */
export function Said(props: { text: string }) {
  return <>{withDecimal(props.text, useSettings())}</>;
}
