# A split plot of 120 values, Tukey's and Dunnett's comparisons of twelve means, a recovery
# curve and 2000 draws of a mean, by R and by our stats_comparisons_bench, in one run
# (processor time of both): Rscript comparisons.R PROGRAM
suppressMessages({
  library(boot)
  library(mvtnorm)
})
program <- commandArgs(trailingOnly = TRUE)[1]
here <- dirname(sub("^--file=", "", grep("^--file=", commandArgs(), value = TRUE)))
source(file.path(here, "common.R"))
set.seed(1)
d <- expand.grid(b = factor(1:5), a = factor(1:4), block = factor(1:6))
d$y <- 7 + rnorm(120)
means <- 5 + (0:11 * 7 %% 12) / 4
pairs <- abs(outer(means, means, "-"))[upper.tri(diag(12))]
counts <- c(9, 5, 4, 6, 5, 3, 5, 5, 7, 5, 4, 5)
lambda <- sqrt(counts[-1] / (counts[-1] + 9))
correlation <- outer(lambda, lambda)
diag(correlation) <- 1
x <- 0:39
y <- 8.2 - 3.2 * exp(-0.2 * x) + rnorm(40, 0, 0.15)
values <- (0:49)^2 %% 37
theirs <- c(
  anova_split_plot = per_call(function() summary(aov(y ~ a * b + Error(block / a), d)), 20),
  tukey_twelve = per_call(function() {
    ptukey(pairs / sqrt(1.5 / 5), 12, 48, lower.tail = FALSE)
    qtukey(0.95, 12, 48)
  }, 10),
  # qmvt's search is random; to three digits. p for each of eleven.
  dunnett_twelve = per_call(function() {
    qmvt(0.95, tail = "both.tails", df = 51, corr = correlation)
    for (i in 1:11) pmvt(rep(-2, 11), rep(2, 11), df = 51, corr = correlation)
  }, 2),
  recovery_curve = per_call(function() {
    fit <- nls(y ~ l + (s - l) * exp(-r * x), start = list(l = 8, s = 6, r = 0.1))
    suppressMessages(MASS:::confint.nls(fit, "r"))
  }, 10),
  bootstrap_mean = per_call(function() boot.ci(boot(values, function(v, i) mean(v[i]), 2000), type = c("perc", "bca")), 5)
)
beside(theirs, program)
