# The local level against R written out: the values' exact joint normal distribution (all
# but the level of the first day known up to a constant), and R's own search for the variances.
source("common.R")

# With a diffuse start the likelihood of the differences from the first value is what counts.
exact <- function(y, noise, level) {
  n <- length(y)
  seen <- which(!is.na(y))
  walk <- level * outer(seen, seen, pmin)
  ones <- rep(1, length(seen))
  v <- walk + diag(noise, length(seen))
  vi <- solve(v)
  weight <- sum(vi)
  mean <- sum(vi %*% y[seen]) / weight
  rest <- y[seen] - mean
  log_likelihood <- -0.5 * ((length(seen) - 1) * log(2 * pi) + as.numeric(determinant(v)$modulus) +
                              log(weight) + as.numeric(t(rest) %*% vi %*% rest))
  cross <- level * outer(seq_len(n), seen, pmin)
  fitted <- mean + as.numeric(cross %*% vi %*% rest)
  # Variance of level less its estimate, the unknown start counted in (generalised least squares).
  prior <- level * seq_len(n)
  lack <- 1 - as.numeric(cross %*% vi %*% ones)
  variance <- prior - rowSums((cross %*% vi) * cross) + lack^2 / weight
  list(log_likelihood = log_likelihood, level = fitted, error = sqrt(pmax(variance, 0)))
}

for (round in 1:6) {
  set.seed(3000 * first_seed + round)
  n <- sample(15:60, 1)
  noise <- runif(1, 0.05, 0.5)
  level <- runif(1, 0.005, 0.2)
  y <- 8 + cumsum(rnorm(n, 0, sqrt(level))) + rnorm(n, 0, sqrt(noise))
  y[sample(2:(n - 1), n %/% 4)] <- NA
  mine <- ours(data.frame(y = ifelse(is.na(y), "NA", sprintf("%.17g", y)), noise = noise, level = level))
  theirs <- exact(y, noise, level)
  same("log likelihood", mine["log likelihood"], theirs$log_likelihood)
  for (i in seq_len(n)) {
    same(paste("level", i), mine[paste("level", i)], theirs$level[i])
    same(paste("error", i), mine[paste("error", i)], theirs$error[i])
  }
  best <- optim(log(c(noise, level)), function(p) -exact(y, exp(p[1]), exp(p[2]))$log_likelihood,
                method = "BFGS", control = list(maxit = 500, reltol = 1e-14))
  at_least("fitted likelihood", mine["fitted likelihood"], -best$value)
}
verdict()
