import { Failure, send } from "./client";
import type { Refusal, Remark, TrialAnalysis, TrialDesign, TrialRequest } from "./schemas";

/** A file as the reader chose it. */
export interface ChosenFile {
  name: string;
  content: string;
}

/** What the server says of a plan and records: the comparison, or every problem's sentence. */
export type TrialAnswer = { is: "compared"; analysis: TrialAnalysis } | { is: "problems"; sentences: string[] };

export async function drawTrial(request: TrialRequest): Promise<TrialDesign> {
  const { body } = await send("trials/design", {}, request);
  return body as TrialDesign;
}

/** Without records: the club's own rolls. */
export async function compareTrialRolls(
  club: string, plan: ChosenFile, query: Record<string, string | undefined>,
): Promise<TrialAnswer> {
  const files = [{ name: plan.name, content: plan.content }];
  return answered(await send(`clubs/${encodeURIComponent(club)}/trials/analyse`, query, { files }, [422]));
}

export async function compareTrial(
  plan: ChosenFile, records: ChosenFile, query: Record<string, string | undefined>,
): Promise<TrialAnswer> {
  // Two files of one name would be refused; the server tells them by their order.
  const name = (file: ChosenFile, otherwise: string) => (plan.name === records.name ? otherwise : file.name);
  const files = [
    { name: name(plan, "trial.csv"), content: plan.content },
    { name: name(records, "trial_records.csv"), content: records.content },
  ];
  return answered(await send("trials/analyse", query, { files }, [422]));
}

function answered({ status, body }: { status: number; body: unknown }): TrialAnswer {
  if (status !== 422) return { is: "compared", analysis: body as TrialAnalysis };
  const problems = (body as { problems?: Remark[] } & Partial<Refusal>).problems;
  if (!problems) throw new Failure((body as Refusal).sentence);
  return { is: "problems", sentences: problems.map((one) => one.sentence) };
}
