import { render } from "preact";
import { embedded } from "./api/report";
import { ReportPage } from "./pages/report";
import { words } from "./words";
import "./styles";
import "./styles/report.css";

const host = document.getElementById("baize");
const data = embedded(document.getElementById("baize-data")?.textContent ?? "");
document.body.classList.add("report-file");
if (host) render(data ? <ReportPage data={data} /> : <p class="notice">{words.report.empty}</p>, host);
