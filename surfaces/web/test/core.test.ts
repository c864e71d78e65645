// The core as a WebAssembly module answers as the native library does.
import { execFileSync } from "node:child_process";
import { readFileSync } from "node:fs";
import { resolve } from "node:path";
import { beforeAll, expect, test } from "vitest";
import { coreCases, coreModule } from "../scripts/core_module";
import { coreFrom, textCalls, type Core } from "../src/field/core";

let core: Core;
beforeAll(async () => {
  core = await coreFrom(readFileSync(coreModule()));
});

/** Where two answers differ by more than 1e-12 of their size; empty: nowhere. */
function difference(a: unknown, b: unknown, place = ""): string {
  if (typeof a === "number" && typeof b === "number") {
    return Math.abs(a - b) <= 1e-12 * Math.max(Math.abs(a), Math.abs(b)) ? "" : `${place}: ${a} and ${b}`;
  }
  if (a === null || b === null || typeof a !== "object" || typeof b !== "object") {
    return a === b ? "" : `${place}: ${JSON.stringify(a)} and ${JSON.stringify(b)}`;
  }
  const names = [...new Set([...Object.keys(a), ...Object.keys(b)])];
  const part = (of: object, name: string) => (of as Record<string, unknown>)[name];
  return names.map((name) => difference(part(a, name), part(b, name), `${place}/${name}`)).join("");
}

test("differences are found", () => {
  expect(difference({ a: [1, "b"] }, { a: [1 + 1e-13, "b"] })).toBe("");
  expect(difference({ a: [1, "b"] }, { a: [1 + 1e-11, "b"] })).not.toBe("");
  expect(difference({ a: 1 }, { a: 1, b: null })).not.toBe("");
});

test("every case of the native library has the same answer", async () => {
  const root = resolve(__dirname, "../../..");
  const lines = execFileSync(coreCases(), { cwd: root, maxBuffer: 1 << 28, encoding: "utf8" });
  const calls = await textCalls(readFileSync(coreModule()));
  const seen = new Map<string, number>();
  let problems = 0;
  for (const line of lines.split("\n").filter(Boolean)) {
    const [name, takes, native] = JSON.parse(line) as [string, string, string];
    const answer = calls[name]!(Buffer.from(takes, "base64"));
    const found = difference(JSON.parse(answer!), JSON.parse(native));
    if (found) throw new Error(`${name} ${Buffer.from(takes, "base64")}: ${found}`);
    seen.set(name, (seen.get(name) ?? 0) + 1);
    problems += native.startsWith('{"problem"') ? 1 : 0;
  }
  expect([...seen.keys()].sort()).toEqual(Object.keys(core).sort());
  expect([...seen.values()].reduce((a, b) => a + b)).toBeGreaterThan(10000);
  expect(problems).toBeGreaterThan(500);
}, 300_000);

test("typed functions answer and refuse", () => {
  expect(core.offer({ marks: [{ kind: "snake" }] }).ok).toEqual({ score: 8, lowest: 8, highest: 8 });
  expect(core.parse_length({ text: "10'2\"", unit: "ft_in" }).ok?.metres).toBeCloseTo(3.0988, 12);
  const refused = core.run_summary({ rolls: [{ distance: 300 }] });
  expect(refused.problem?.code).toBe("distance_out_of_range");
  expect(refused.ok).toBeUndefined();
});

test("letters of every alphabet come back whole", () => {
  const refused = core.parse_length({ text: "十フィート", unit: "m" });
  expect(refused.problem?.value).toBe("十フィート");
});

test("a thousand large calls do not use up the memory", () => {
  const rolls = Array.from({ length: 90 }, (_, i) => ({ order: i + 1, distance: 3, score: 8, marks: [] }));
  for (let i = 0; i < 1000; ++i) expect(core.run_summary({ rolls }).ok?.total).toBe(720);
}, 60_000);

test("the largest inputs are refused, and do not stop the module", async () => {
  const calls = await textCalls(readFileSync(coreModule()));
  const room = 4 * 1024 * 1024 - 20;
  const lists = ["[".repeat(room / 2) + "]".repeat(room / 2), `[${"0,".repeat(room / 2)}0]`, `[${"[],".repeat(room / 3)}0]`];
  for (const list of lists) {
    const takes = new TextEncoder().encode(`{"marks":${list}}`);
    expect(calls.offer!(takes)).toMatch(/^\{"problem":\{"code":"wrong_type"/);
  }
  expect(calls.offer!(new TextEncoder().encode(" ".repeat(room + 30)))).toContain("input_too_long");
  expect(calls.offer!(new TextEncoder().encode('{"marks":[]}'))).toContain('"score":9');
}, 300_000);
