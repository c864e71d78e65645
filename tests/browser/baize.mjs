// What every browser test needs: the program at work, and a browser to look at it.
import { spawn } from "node:child_process";
import { createRequire } from "node:module";

const web = new URL("../../surfaces/web/package.json", import.meta.url);
const require = createRequire(web);
const { chromium } = require("playwright-core");
const axeSource = require.resolve("axe-core/axe.min.js");

/** The server under test: BAIZE_URL where it is given, else BAIZE_PROGRAM, with its demo club or on a database. */
export async function startServer(database) {
  if (process.env.BAIZE_URL && !database) return { url: process.env.BAIZE_URL.replace(/\/$/, ""), stop: () => {} };
  const program = process.env.BAIZE_PROGRAM;
  if (!program) throw new Error("Neither BAIZE_URL nor BAIZE_PROGRAM says what to test.");
  const { url, child } = await serve(program, database ? ["--db", database, "--port", "0"] : ["--demo", "--port", "0"]);
  return { url, stop: () => child.kill("SIGTERM") };
}

/** Serves, and tells the address that the program prints. */
export async function serve(program, words) {
  const child = spawn(program, ["serve", ...words], { stdio: ["ignore", "pipe", "inherit"] });
  const url = await new Promise((resolve, reject) => {
    let said = "";
    const late = setTimeout(() => reject(new Error(`The server told no address: ${said}`)), 30_000);
    child.stdout.on("data", (text) => {
      said += text;
      const found = /http:\/\/[^\s"]+/.exec(said);
      if (!found) return;
      clearTimeout(late);
      resolve(found[0].replace(/\/$/, ""));
    });
    child.once("exit", (code) => reject(new Error(`The server ended with ${code}: ${said}`)));
  });
  return { url, child };
}

export const startBrowser = () =>
  chromium.launch({
    executablePath: process.env.BAIZE_CHROMIUM ?? "/usr/bin/chromium",
    args: [
      "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run",
      "--disable-background-networking", "--disable-component-update", "--disable-sync",
    ],
  });

export const desk = { width: 1440, height: 900 };
export const phone = { width: 390, height: 844 };

/** A page that writes down whatever goes wrong in it and whatever it asks of elsewhere. */
export async function openPage(browser, viewport = desk) {
  const context = await browser.newContext({ viewport });
  const page = await context.newPage();
  const wrong = [];
  page.on("console", (message) => {
    if (message.type() === "error") wrong.push(message.text());
  });
  page.on("pageerror", (error) => wrong.push(error.message));
  const hosts = new Set();
  page.on("request", (request) => {
    const url = new URL(request.url());
    if (url.protocol.startsWith("http")) hosts.add(url.host);
  });
  return { page, wrong, hosts };
}

/** Breaches of WCAG 2.2 A and AA that axe finds, one line each. */
export async function breaches(page) {
  // Run beside the page's own scripts: its content policy lets no other in.
  await page.evaluate(require("node:fs").readFileSync(axeSource, "utf8"));
  const found = await page.evaluate(() =>
    globalThis.axe.run(document, { runOnly: ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"] }),
  );
  return found.violations.flatMap((rule) =>
    rule.nodes.map((node) => `${rule.id}: ${node.target.join(" ")}: ${node.failureSummary}`),
  );
}

/** Asks the server itself, to hold the page against it. */
export async function ask(url, path) {
  const answer = await fetch(`${url}/api/v1/${path}`);
  if (!answer.ok) throw new Error(`${path}: ${answer.status}`);
  return answer.json();
}

export const heading = (page, text) => page.getByRole("heading", { level: 1, name: text });
export const drawn = (page) => page.waitForSelector(".chart[data-drawn]");
