import { webcrypto } from "node:crypto";

// Node.js 18, Debian 12's own, keeps what browsers call `crypto` in a module.
globalThis.crypto ??= webcrypto as Crypto;
