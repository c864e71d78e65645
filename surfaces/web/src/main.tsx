import { render } from "preact";
import { App } from "./app";
import "./styles";

const host = document.getElementById("baize");
if (host) render(<App />, host);
