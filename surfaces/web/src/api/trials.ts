import { send } from "./client";
import { sendFiles, type ChosenFile } from "./files";
import type { Remark, TrialAnalysis, TrialDesign, TrialRequest } from "./schemas";

/** What the server says of a plan and records: the comparison, or every problem's sentence. */
export type TrialAnswer = { is: "compared"; analysis: TrialAnalysis } | { is: "problems"; sentences: string[] };
type Query = Record<string, string | undefined>;

export async function drawTrial(request: TrialRequest): Promise<TrialDesign> {
  const { body } = await send("trials/design", {}, request);
  return body as TrialDesign;
}

/** Without records: the club's own rolls. */
export const compareTrialRolls = (club: string, plan: ChosenFile, query: Query) =>
  compared(`clubs/${encodeURIComponent(club)}/trials/analyse`, query, [plan]);

export function compareTrial(plan: ChosenFile, records: ChosenFile, query: Query): Promise<TrialAnswer> {
  // Two files of one name would be refused; the server tells them by their order.
  const name = (file: ChosenFile, otherwise: string) => (plan.name === records.name ? otherwise : file.name);
  return compared("trials/analyse", query, [
    { name: name(plan, "trial.csv"), content: plan.content },
    { name: name(records, "trial_records.csv"), content: records.content },
  ]);
}

async function compared(path: string, query: Query, files: ChosenFile[]): Promise<TrialAnswer> {
  const answer = await sendFiles<TrialAnalysis & { problems?: Remark[] }>(path, query, files);
  return answer.problems
    ? { is: "problems", sentences: answer.problems.map((one) => one.sentence) }
    : { is: "compared", analysis: answer };
}
