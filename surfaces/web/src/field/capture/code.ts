// No letter that is mistaken for another when called across a green.
const letters = "ABCDEFHJKMPRTUVWXY";

/** Four letters for two phones to share: 18^4 = 104,976. */
export function newCode(chance = crypto.getRandomValues(new Uint32Array(4))): string {
  return [...chance].map((number) => letters[number % letters.length]).join("");
}
export const readCode = (text: string) => text.toUpperCase().replace(/[^A-Z]/g, "").slice(0, 4);

/** Both phones come to the same id without a network: day, green and the shared word. */
export const sharedId = (day: string, green: string, code: string) => `${day}-${green}-${code}`;
