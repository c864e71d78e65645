let lastTime = 0;
let count = 0;

/**
 * A UUID of version 7 (RFC 9562, 5.7): 48 bits of milliseconds, then, so that
 * ids of one phone sort as they were made, a 12-bit count within the
 * millisecond, then chance.
 */
export function uuid(now = Date.now(), chance = crypto.getRandomValues(new Uint8Array(8))): string {
  if (now > lastTime) {
    lastTime = now;
    count = 0;
  } else if (++count > 0xfff) {
    // The clock stands or went back: the count carries into the next millisecond.
    lastTime += 1;
    count = 0;
  }
  const hex = (value: number, digits: number) => value.toString(16).padStart(digits, "0");
  const time = hex(lastTime, 12);
  const tail = [...chance].map((byte, at) => hex(at === 0 ? (byte & 0x3f) | 0x80 : byte, 2)).join("");
  return `${time.slice(0, 8)}-${time.slice(8)}-7${hex(count, 3)}-${tail.slice(0, 4)}-${tail.slice(4)}`;
}
