# R's power functions, and package boot's intervals from our own repeats.
source("common.R")
library(boot)

set.seed(1000 * first_seed)
plans <- data.frame(n = sample(3:200, 60, TRUE), d = runif(60, 0.05, 1.5), k = sample(2:12, 60, TRUE),
                    f = runif(60, 0.05, 0.8), p = runif(60, 0.02, 0.5), q = runif(60, 0.5, 0.98))
mine <- ours(plans)
for (i in seq_len(nrow(plans))) with(plans[i, ], {
  same(paste("two", i), mine[paste("two", i)], power.t.test(n, d, strict = TRUE)$power, 9, 1e-2)
  same(paste("paired", i), mine[paste("paired", i)],
       power.t.test(n, d, type = "paired", alternative = "one.sided")$power, 9, 1e-2)
  ncp <- k * n * f^2
  same(paste("anova", i), mine[paste("anova", i)],
       pf(qf(0.99, k - 1, k * (n - 1)), k - 1, k * (n - 1), ncp, lower.tail = FALSE), 8, 0.2) # pf stops at 1e-9
  same(paste("shares", i), mine[paste("shares", i)], power.prop.test(n, p, q, strict = TRUE)$power, 10, 1e-2)
})
for (round in 1:6) {
  set.seed(1000 * first_seed + round)
  d <- data.frame(x = rgamma(sample(10:30, 1), 3))
  d$y <- d$x * rgamma(nrow(d), 4)
  mine <- ours(d, "bootstrap")
  ratio <- function(data, i) sum(data$y[i]) / sum(data$x[i])
  object <- boot(d, ratio, R = 1999)
  # About the mean of the values with one left out, as Efron and Tibshirani have it.
  influence <- empinf(data = d, statistic = ratio, type = "jack", stype = "i")
  influence <- influence - mean(influence)
  theirs <- boot.ci(object, conf = 0.9, type = c("perc", "bca"), t0 = mine["estimate"],
                    t = mine[names(mine) == "repeat"], L = influence)
  same("a", mine["a"], sum(influence^3) / (6 * sum(influence^2)^1.5), 10)
  # boot draws normal curves, not straight lines, between order statistics.
  same("low", mine["low"], theirs$percent[4], 2.7)
  same("high", mine["high"], theirs$percent[5], 2.7)
  same("bca low", mine["bca low"], theirs$bca[4], 2.7)
  same("bca high", mine["bca high"], theirs$bca[5], 2.7)
}
verdict()
