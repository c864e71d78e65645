// The core on the phone: the same C++ as in the server, as a WebAssembly module.
// JSON text goes in and comes out; what each function takes and gives stands in
// surfaces/wasm/functions.json.
import address from "baize-core.wasm?url";
import type { Functions, Problem } from "./core_types";

/** What a function gives, or the one problem that kept it from answering. */
export type Answer<T> = { ok: T; problem?: undefined } | { ok?: undefined; problem: Problem };

export type Core = {
  [Name in keyof Functions]: (takes: Functions[Name]["takes"]) => Answer<Functions[Name]["gives"]>;
};

/** A block is four bytes of size (little-endian), then so many bytes of UTF-8. */
interface Module {
  memory: WebAssembly.Memory;
  _initialize(): void;
  /** Room for so many bytes; 0 where there is none. */
  take(size: number): number;
  give_back(block: number): void;
  [name: string]: unknown;
}
type Exported = (text: number, size: number) => number;

const noRoom: Problem = {
  code: "no_room",
  field: "",
  value: "",
  rule: "small enough for this phone's memory",
  sentence: "There is not enough memory on this phone for that.",
};

/** Text in, text out; nothing where the phone has no memory left. */
type TextCall = (takes: Uint8Array) => string | undefined;

function textCall(module: Module, name: string): TextCall {
  const exported = module[name] as Exported;
  return (takes) => {
    const text = module.take(takes.length);
    if (text === 0) return undefined;
    new Uint8Array(module.memory.buffer).set(takes, text);
    const block = exported(text, takes.length);
    module.give_back(text);
    if (block === 0) return undefined;
    // Memory may have grown and moved: looked at anew.
    const size = new DataView(module.memory.buffer).getUint32(block, true);
    const answer = new TextDecoder().decode(new Uint8Array(module.memory.buffer, block + 4, size));
    module.give_back(block);
    return answer;
  };
}

/** The module's functions by name. It asks nothing of its surroundings. */
export async function textCalls(bytes: BufferSource): Promise<Record<string, TextCall>> {
  const { instance } = await WebAssembly.instantiate(bytes, {});
  const module = instance.exports as unknown as Module;
  module._initialize();
  const names = Object.keys(module).filter(
    (name) => !["memory", "_initialize", "take", "give_back"].includes(name),
  );
  return Object.fromEntries(names.map((name) => [name, textCall(module, name)]));
}

/** The core from the module's bytes. */
export async function coreFrom(bytes: BufferSource): Promise<Core> {
  const calls = await textCalls(bytes);
  const typed = Object.entries(calls).map(([name, call]) => [
    name,
    (takes: unknown): Answer<unknown> => {
      const answer = call(new TextEncoder().encode(JSON.stringify(takes)));
      return answer === undefined ? { problem: noRoom } : JSON.parse(answer);
    },
  ]);
  return Object.fromEntries(typed) as Core;
}

let loaded: Promise<Core> | undefined;

/** The core, fetched once; a fetch that failed is tried again at the next call. */
export function loadCore(): Promise<Core> {
  loaded ??= fetched().catch((problem) => {
    loaded = undefined;
    throw problem;
  });
  return loaded;
}

async function fetched(): Promise<Core> {
  const response = await fetch(address);
  if (!response.ok) throw new Error(`${address}: ${response.status}`);
  return coreFrom(await response.arrayBuffer());
}
