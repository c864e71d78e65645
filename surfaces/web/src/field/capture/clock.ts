const two = (value: number) => String(value).padStart(2, "0");

/** The day on the wall calendar where the phone is: YYYY-MM-DD. */
export function dayOf(time: number): string {
  const at = new Date(time);
  return `${at.getFullYear()}-${two(at.getMonth() + 1)}-${two(at.getDate())}`;
}
/** HH:MM on the clock where the phone is. */
export function timeOf(time: number): string {
  const at = new Date(time);
  return `${two(at.getHours())}:${two(at.getMinutes())}`;
}
