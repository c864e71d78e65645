// phone.mjs PROGRAM MODULE [ROUNDS]: time per call of each function of the core
// on the phone, native and as WebAssembly in this Node, over the cases of
// tests/phone, and the ratio. PROGRAM is phone_cases of a release build:
//   node bench/phone.mjs build/release/tests/phone_cases build/release/surfaces/wasm/core.wasm
import { execFileSync } from "node:child_process";
import { readFileSync } from "node:fs";

const [program, path, rounds = "20"] = process.argv.slice(2);
const limits = { maxBuffer: 1 << 28, encoding: "utf8" };
const native = JSON.parse(execFileSync(program, [rounds], limits));
const cases = execFileSync(program, [], limits)
  .split("\n")
  .filter(Boolean)
  .map((line) => JSON.parse(line))
  .map(([name, takes]) => ({ name, takes: Buffer.from(takes, "base64") }));

const began = performance.now();
const { instance } = await WebAssembly.instantiate(readFileSync(path), {});
const module = instance.exports;
module._initialize();
const loaded = performance.now() - began;

const spent = new Map();
let bytes = 0;
for (let round = 0; round < Number(rounds); ++round) {
  for (const { name, takes } of cases) {
    const begin = performance.now();
    const text = module.take(takes.length);
    new Uint8Array(module.memory.buffer).set(takes, text);
    const block = module[name](text, takes.length);
    bytes += new DataView(module.memory.buffer).getUint32(block, true);
    module.give_back(text);
    module.give_back(block);
    const one = spent.get(name) ?? { time: 0, calls: 0 };
    one.time += performance.now() - begin;
    one.calls += 1;
    spent.set(name, one);
  }
}

console.log(`compiled and started in ${loaded.toFixed(1)} ms; answers of ${native.bytes} and ${bytes} bytes`);
console.log("function        calls   native us   module us   ratio");
for (const [name, { time, calls }] of [...spent].sort()) {
  const us = (1000 * time) / calls;
  const native_us = native[name] / 1000;
  const cells = [calls.toString().padStart(7), native_us.toFixed(2).padStart(11), us.toFixed(2).padStart(11)];
  console.log(`${name.padEnd(14)}${cells.join(" ")} ${(us / native_us).toFixed(1).padStart(7)}`);
}
