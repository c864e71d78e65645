import { File as NodeFile } from "node:buffer";
import { webcrypto } from "node:crypto";

// Node.js 18, Debian 12's own, keeps what browsers have everywhere in modules.
globalThis.crypto ??= webcrypto as Crypto;
globalThis.File ??= NodeFile as unknown as typeof File;
