# psych's ICC and cohen.kappa, and base R for limits of agreement and Lin's coefficient.
# The error of the weighted kappa is held against the delta method with numeric derivatives:
# psych's own is 0 for some tables whose kappa is not certain.
source("common.R")
suppressMessages(library(psych))

quadratic_kappa <- function(p) {
  away <- outer(1:5, 1:5, function(i, j) (i - j)^2)
  1 - sum(away * p) / sum(away * outer(rowSums(p), colSums(p)))
}
delta_error <- function(p, n) {
  step <- 1e-5
  slope <- vapply(seq_along(p), function(i) {
    up <- down <- p
    up[i] <- p[i] + step
    down[i] <- p[i] - step
    (quadratic_kappa(up) - quadratic_kappa(down)) / (2 * step)
  }, 0)
  sqrt((sum(p * slope^2) - sum(p * slope)^2) / n)
}

for (round in 1:8) {
  set.seed(2000 * first_seed + round)
  n <- sample(12:60, 1)
  level <- rnorm(n, 3, 0.9)
  judged <- function(shift, sd) pmin(5, pmax(1, round(level + shift + rnorm(n, 0, sd))))
  d <- data.frame(a = judged(0, 0.4), b = judged(0.3, 0.5), c = judged(-0.2, 0.6))
  mine <- ours(d)
  icc <- ICC(d, lmer = FALSE)$results
  rows <- c(ICC1 = 1, ICC2 = 2, ICC3 = 3, ICC1k = 4, ICC2k = 5, ICC3k = 6)
  for (name in names(rows)) {
    same(name, mine[name], icc$ICC[rows[name]])
    same(paste(name, "low"), mine[paste(name, "low")], icc[rows[name], "lower bound"])
    same(paste(name, "high"), mine[paste(name, "high")], icc[rows[name], "upper bound"])
  }
  # A table of all five scores, so that scores nobody gave keep their place.
  table5 <- table(factor(d$a, 1:5), factor(d$b, 1:5))
  kappa <- suppressWarnings(cohen.kappa(matrix(table5, 5)))
  same("kappa", mine["kappa"], kappa$kappa)
  same("weighted kappa", mine["weighted kappa"], kappa$weighted.kappa)
  same("kappa se", mine["kappa se"], sqrt(kappa$var.kappa))
  p <- matrix(table5, 5) / n
  same("weighted kappa se", mine["weighted kappa se"], delta_error(p, n), 6)
  difference <- d$a - d$b
  same("bias", mine["bias"], mean(difference))
  same("bias low", mine["bias low"], t.test(difference)$conf.int[1])
  same("limit low", mine["limit low"], mean(difference) - 1.96 * sd(difference))
  same("limit high", mine["limit high"], mean(difference) + 1.96 * sd(difference))
  whole <- (n - 1) / n
  same("concordance", mine["concordance"], 2 * cov(d$a, d$b) * whole /
         (var(d$a) * whole + var(d$b) * whole + (mean(d$a) - mean(d$b))^2))
  same("correlation", mine["correlation"], cor(d$a, d$b))
}
verdict()
