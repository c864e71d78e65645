/** Fractional parts of roots of the first primes, 32 bits each (FIPS 180-4, 4.2.2 and 5.3.3). */
function constants(): { rounds: number[]; start: number[] } {
  const rounds: number[] = [];
  const start: number[] = [];
  const bits = (value: number) => ((value - Math.floor(value)) * 2 ** 32) | 0;
  for (let number = 2; rounds.length < 64; number += 1) {
    let prime = true;
    for (let by = 2; by * by <= number; by += 1) if (number % by === 0) prime = false;
    if (!prime) continue;
    if (start.length < 8) start.push(bits(Math.sqrt(number)));
    rounds.push(bits(Math.cbrt(number)));
  }
  return { rounds, start };
}

const turn = (value: number, by: number) => (value >>> by) | (value << (32 - by));

function block(state: Int32Array, rounds: number[], data: DataView, at: number, w: Int32Array): void {
  for (let i = 0; i < 16; i += 1) w[i] = data.getInt32(at + 4 * i);
  for (let i = 16; i < 64; i += 1) {
    const [a, b] = [w[i - 15] as number, w[i - 2] as number];
    const s0 = turn(a, 7) ^ turn(a, 18) ^ (a >>> 3);
    const s1 = turn(b, 17) ^ turn(b, 19) ^ (b >>> 10);
    w[i] = (w[i - 16] as number) + s0 + (w[i - 7] as number) + s1;
  }
  let [a, b, c, d, e, f, g, h] = state as unknown as [number, number, number, number, number, number, number, number];
  for (let i = 0; i < 64; i += 1) {
    const t1 = (h + (turn(e, 6) ^ turn(e, 11) ^ turn(e, 25)) + ((e & f) ^ (~e & g)) + (rounds[i] as number) + (w[i] as number)) | 0;
    const t2 = ((turn(a, 2) ^ turn(a, 13) ^ turn(a, 22)) + ((a & b) ^ (a & c) ^ (b & c))) | 0;
    [h, g, f, e, d, c, b, a] = [g, f, e, (d + t1) | 0, c, b, a, (t1 + t2) | 0];
  }
  [a, b, c, d, e, f, g, h].forEach((value, i) => (state[i] = (state[i] as number) + value));
}

/**
 * SHA-256 (FIPS 180-4), 64 hexadecimal digits. Of our own, because a browser has
 * one only on pages that came by https.
 */
export function sha256(bytes: Uint8Array): string {
  const { rounds, start } = constants();
  const padded = new Uint8Array(((bytes.length + 8) >> 6 << 6) + 64);
  padded.set(bytes);
  padded[bytes.length] = 0x80;
  const data = new DataView(padded.buffer);
  data.setUint32(padded.length - 8, Math.floor(bytes.length / 2 ** 29));
  data.setUint32(padded.length - 4, bytes.length * 8);
  const state = new Int32Array(start);
  const w = new Int32Array(64);
  for (let at = 0; at < padded.length; at += 64) block(state, rounds, data, at, w);
  return [...state].map((word) => (word >>> 0).toString(16).padStart(8, "0")).join("");
}
