// The texts of photos on the desk pages.
export const photoWords = {
  title: "Photos",
  intro: (n: number) => (n === 1 ? "1 photo taken on the green" : `${n} photos taken on the green`),
  none: "No photo was taken on the green yet. A visit's menu on the phone has Photos, and so has each work of the diary.",
  link: "Photos",
  /** for who does not see it */
  of: (time: string, note: string) => (note ? `Photo taken at ${time}: ${note}` : `Photo taken at ${time}`),
  work: "the work",
  visit: "visits of that day",
  waiting: "still on its phone",
};
