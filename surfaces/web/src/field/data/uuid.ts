const hex = (value: number, digits: number) => value.toString(16).padStart(digits, "0");

/**
 * Makes UUIDs of version 7 (RFC 9562, 5.7): 48 bits of milliseconds, then, so
 * that ids of one phone sort as they were made, a 12-bit count within the
 * millisecond, then chance. Where the clock went back the time does not.
 */
export class Ids {
  private time = 0;
  private count = 0;

  /** No id sorts before this one from now on. */
  after(id: string): void {
    const time = Number.parseInt(id.slice(0, 8) + id.slice(9, 13), 16);
    const count = Number.parseInt(id.slice(15, 18), 16);
    if (time > this.time || (time === this.time && count > this.count)) [this.time, this.count] = [time, count];
  }

  next(now: number, chance = crypto.getRandomValues(new Uint8Array(8))): string {
    if (now > this.time) {
      this.time = now;
      this.count = 0;
    } else if (++this.count > 0xfff) {
      // The count carries into the next millisecond.
      this.time += 1;
      this.count = 0;
    }
    const time = hex(this.time, 12);
    const tail = [...chance].map((byte, at) => hex(at === 0 ? (byte & 0x3f) | 0x80 : byte, 2)).join("");
    return `${time.slice(0, 8)}-${time.slice(8)}-7${hex(this.count, 3)}-${tail.slice(0, 4)}-${tail.slice(4)}`;
  }
}
