# R's nls and its profile intervals (MASS, a spline through the profile: 3 to 4 digits
# with steps of 0.2; with its own longer ones now and then only 2).
source("common.R")
suppressMessages(library(MASS))

for (round in 1:15) {
  set.seed(1000 * first_seed + round)
  x <- sort(runif(sample(12:40, 1), 0, 25))
  y <- 8.2 - 3 * exp(-0.2 * x) + rnorm(length(x), 0, 0.15)
  mine <- ours(data.frame(x = x, y = y))
  fit <- nls(y ~ level + (start - level) * exp(-rate * x), start = list(level = 8, start = 5, rate = 0.2),
             control = nls.control(tol = 1e-7, maxiter = 200))
  theirs <- summary(fit)$coefficients
  # The profile needs R's own, looser stopping rule, and gives up on some data sets.
  loose <- update(fit, control = nls.control())
  ends <- tryCatch(suppressMessages(confint(profile(loose, delta.t = 0.2))), error = function(e) NULL)
  for (name in rownames(theirs)) {
    same(name, mine[name], theirs[name, 1], 6)
    same(paste(name, "se"), mine[paste(name, "se")], theirs[name, 2], 5)
    if (is.null(ends) || anyNA(ends[name, ])) next
    same(paste(name, "low"), mine[paste(name, "low")], ends[name, 1], 3)
    same(paste(name, "high"), mine[paste(name, "high")], ends[name, 2], 3)
  }
  same("ss", mine["ss"], deviance(fit), 9)
}
verdict()
