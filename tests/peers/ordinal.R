# Ordinal regression beside R MASS::polr, which stops at a relative gain of 1e-8 in the
# deviance unless told otherwise.
source("common.R")
suppressMessages(library(MASS))

draw <- function(seed, levels) {
  set.seed(seed)
  n <- 300
  d <- data.frame(x1 = rnorm(n, 3), x2 = rbinom(n, 1, 0.4), weight = sample(1:3, n, TRUE))
  latent <- 0.8 * d$x1 - 0.9 * d$x2 + rlogis(n)
  d$category <- as.integer(cut(latent, quantile(latent, seq(0, 1, length.out = levels + 1)),
                               include.lowest = TRUE))
  d
}

for (seed in first_seed + 0:9) {
  for (link in c("logit", "probit")) {
    d <- draw(seed, 3 + seed %% 5)
    label <- function(what) paste(seed, link, what)
    mine <- ours(d, link)
    fit <- function(formula) polr(formula, d, weights = weight, Hess = TRUE,
                                  method = if (link == "logit") "logistic" else "probit",
                                  control = list(reltol = 1e-15, maxit = 1000))
    d$category <- factor(d$category, ordered = TRUE)
    theirs <- fit(category ~ x1 + x2)
    same(label("usable"), mine["usable"], 1)
    at_least(label("log-likelihood"), -mine["deviance"] / 2, -deviance(theirs) / 2, 1e-6)
    same(label("ratio"), mine["ratio"], deviance(fit(category ~ 1)) - deviance(theirs), 6)
    # Their second derivatives are differences of the gradient.
    errors <- sqrt(diag(vcov(theirs)))
    for (i in 1:2) {
      same(label(paste("b", i)), mine[paste0("b", i - 1)], coef(theirs)[i], 5)
      same(label(paste("b error", i)), mine[paste0("be", i - 1)], errors[i], 5)
    }
    for (i in seq_along(theirs$zeta)) {
      same(label(paste("threshold", i)), mine[paste0("t", i - 1)], theirs$zeta[i], 5, scale = 0.1)
      same(label(paste("threshold error", i)), mine[paste0("te", i - 1)], errors[2 + i], 5)
    }
    shares <- predict(theirs, data.frame(x1 = 0.5, x2 = 1), type = "probs")
    for (i in seq_along(shares)) same(label(paste("p", i)), mine[paste0("p", i - 1)], shares[i], 4)
  }
}
verdict()
