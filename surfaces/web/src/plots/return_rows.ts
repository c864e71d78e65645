import type { Definition, RecoveryInterval, WorkAtGreen } from "../api/schemas";
import { greenTitle } from "../state/year";

export interface Row {
  green: string;
  after: number;
  by: number;
  open: boolean;
}

/** One row for each green whose return can be asked for at all. */
export function returnRows(greens: WorkAtGreen[], definition: Definition): Row[] {
  return greens.flatMap((green) => {
    const one = green.loss.recovery.find((interval: RecoveryInterval) => interval.definition === definition);
    if (!one || one.censoring === "not_asked" || green.loss.visits_after === 0) return [];
    const open = one.by_days === undefined;
    return [{ green: greenTitle(green), after: one.after_days, by: one.by_days ?? one.after_days, open }];
  });
}
