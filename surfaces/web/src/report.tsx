import { render } from "preact";
import type { ReportData } from "./api/schemas";
import { ReportPage } from "./pages/report";
import { words } from "./words";
import "./styles";
import "./styles/report.css";

/** The data stands in the page itself; a file without it says so. */
export function embedded(text: string): ReportData | undefined {
  try {
    const data = JSON.parse(text) as Partial<ReportData> | null;
    return data?.greens && data.seasons && data.works ? (data as ReportData) : undefined;
  } catch {
    return undefined;
  }
}

const host = document.getElementById("baize");
const data = embedded(document.getElementById("baize-data")?.textContent ?? "");
document.body.classList.add("report-file");
if (host) render(data ? <ReportPage data={data} /> : <p class="notice">{words.report.empty}</p>, host);
