import type { ReportData } from "./schemas";

/** The data stands in the page itself; a file without it says so. */
export function embedded(text: string): ReportData | undefined {
  try {
    const data = JSON.parse(text) as Partial<ReportData> | null;
    return data?.greens && data.seasons && data.works && data.sentences ? (data as ReportData) : undefined;
  } catch {
    return undefined;
  }
}
