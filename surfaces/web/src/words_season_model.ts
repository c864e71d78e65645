/** Words of the season model on a green's year. */
export const seasonModelWords = {
  title: "Estimated, day by day",
  about: "Estimated beside what was measured, never instead of it.",
  label: (green: string, year: number) => `Estimated score of ${green} on each day of ${year}`,
  score: "Score, with its 95 % band",
  scoreNote: "dashed: without the works",
  losses: "Points lost to each work",
  chance: "Chance of rolling true",
  today: "today",
  table: "What the model says of the works",
  work: "Work",
  depth: "Depth, points",
  halfLife: (growth: boolean) => (growth ? "Half gone, growth-days" : "Half gone, days"),
  scoreDays: "Lost, score-days",
  back: "Days until at the standard",
  between: (value: string, low: string, high: string) => `${value} (${low} to ${high})`,
  notBack: (days: number) => `not within ${days}`,
  unknown: "not followed",
  how: "How this was computed",
  formula:
    "A run's mean = undisturbed level − sum of depth × exp(−rate × growth-days since the work) + observer + play + line + visit + noise. The level walks slowly at random. All greens are fitted at once by a Kalman filter; each band holds 95 % of the draws.",
  calendar: "There is not enough weather, so losses run on calendar days.",
  source:
    "De Jong (1991) Annals of Statistics 19:1073; Durbin and Koopman (2012) Time Series Analysis by State Space Methods; Carter and Kohn (1994) Biometrika 81:541; growth potential of Gelernter and Stowell (2005).",
};
