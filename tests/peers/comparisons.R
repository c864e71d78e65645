# R's TukeyHSD, pairwise.t.test, and Dunnett's multivariate t: by mvtnorm (Genz and Bretz,
# about 4 digits) and by R's own integrate() on the product form (about 8 digits).
source("common.R")
suppressMessages(library(mvtnorm))

dunnett_p <- function(t, lambda, df, both) {
  inner <- function(w) integrate(function(z) dnorm(z) * sapply(z, function(zz) {
    high <- pnorm((lambda * zz + w) / sqrt(1 - lambda^2))
    low <- if (both) pnorm((lambda * zz - w) / sqrt(1 - lambda^2)) else 0
    1 - prod(high - low)
  }), -12, 12, rel.tol = 1e-10, subdivisions = 500)$value
  density <- function(s) exp(log(2 * df * s) + dchisq(df * s^2, df, log = TRUE))
  integrate(function(s) sapply(s, function(one) density(one) * inner(t * one)), 0,
            sqrt(qchisq(1e-16, df, lower.tail = FALSE) / df), rel.tol = 1e-9, subdivisions = 500)$value
}

for (round in 1:6) {
  set.seed(1000 * first_seed + round)
  k <- sample(3:6, 1)
  n <- sample(2:12, k, replace = TRUE)
  group <- rep(seq_len(k), n)
  y <- 10 + rnorm(k)[group] + rnorm(length(group))
  mine <- ours(data.frame(y = y, group = group))
  fit <- aov(y ~ factor(group))
  tukey <- TukeyHSD(fit)[[1]]
  for (name in rownames(tukey)) {
    same(paste("tukey p", name), mine[paste("tukey p", name)], tukey[name, "p adj"], 7, 1e-4) # about what ptukey keeps
    # R's qtukey stops at about 4 decimals of the quantile.
    same(paste("tukey low", name), mine[paste("tukey low", name)], tukey[name, "lwr"], 5, 1)
  }
  fisher <- pairwise.t.test(y, group, p.adjust.method = "none")$p.value
  for (i in rownames(fisher)) for (j in colnames(fisher)) if (!is.na(fisher[i, j])) {
    name <- paste0("fisher p ", i, "-", j)
    same(name, mine[name], fisher[i, j], 10)
  }
  lambda <- sqrt(n[-1] / (n[-1] + n[1]))
  correlation <- outer(lambda, lambda)
  diag(correlation) <- 1
  df <- fit$df.residual
  for (i in 2:k) {
    t <- mine[paste("both t", i)]
    same(paste("dunnett", i), mine[paste("both p", i)], dunnett_p(abs(t), lambda, df, TRUE), 7, 1e-3)
    same(paste("greater", i), mine[paste("greater p", i)], dunnett_p(t, lambda, df, FALSE), 7, 1e-3)
    genz <- 1 - pmvt(rep(-abs(t), k - 1), rep(abs(t), k - 1), df = df, corr = correlation,
                     algorithm = GenzBretz(maxpts = 2e5, abseps = 1e-6))
    same(paste("genz", i), mine[paste("both p", i)], as.numeric(genz), 4, 0.1)
  }
  same("critical", dunnett_p(mine["both critical"], lambda, df, TRUE), 0.05, 7)
  same("critical one way", dunnett_p(mine["greater critical"], lambda, df, FALSE), 0.05, 7)
}
verdict()
