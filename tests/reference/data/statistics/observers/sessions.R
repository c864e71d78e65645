# The figures of sessions.csv by R with psych 2.x: what tests/reference/observers_test.cpp
# holds core/observers to. Run in this folder: Rscript sessions.R
suppressMessages(library(psych))
d <- read.csv("sessions.csv")
sessions <- unique(d$session)
jackknife <- function(figure) {
  whole <- figure(d)
  v <- sapply(sessions, function(s) figure(d[d$session != s, ]))
  g <- length(v)
  se <- sqrt((g - 1) / g * sum((v - mean(v))^2))
  t <- qt(0.975, g - 1)
  c(whole, se, whole - t * se, whole + t * se)
}
spread <- function(x) {
  gap <- x$first - x$second
  n <- tapply(gap, x$session, length)
  n <- n[!is.na(n)]
  a <- anova(lm(gap ~ factor(x$session)))[["Mean Sq"]]
  n0 <- (sum(n) - sum(n^2) / sum(n)) / (length(n) - 1)
  c(a[2], max(0, (a[1] - a[2]) / n0))
}
say <- function(name, values) cat(name, sprintf("%.12f", values), "\n")
say("bias", jackknife(function(x) mean(x$first - x$second)))
say("components", spread(d))
bias <- jackknife(function(x) mean(x$first - x$second))
log_sd <- jackknife(function(x) log(sum(spread(x))) / 2)
# The interval of bias + times sd from those of both: Zou GY (2013) Stat. Methods Med. Res.
# 22:630-642; the error is the limit's own.
limit <- function(times) {
  own <- jackknife(function(x) mean(x$first - x$second) + times * sqrt(sum(spread(x))))
  sd <- times * exp(log_sd[c(1, 3, 4)])
  ends <- sort(sd[2:3]) - sd[1]
  c(own[1:2], own[1] - sqrt((bias[1] - bias[3])^2 + ends[1]^2),
    own[1] + sqrt((bias[4] - bias[1])^2 + ends[2]^2))
}
say("lower", limit(-1.96))
say("upper", limit(1.96))
say("icc", jackknife(function(x) suppressWarnings(suppressMessages(
  ICC(x[, c("first", "second")], lmer = FALSE)$results$ICC[2]))))
weights <- function(power) outer(1:10, 1:10, function(i, j) 1 - (abs(i - j) / 9)^power)
kappa <- function(x, power) {
  counts <- table(factor(x$first, 1:10), factor(x$second, 1:10))
  p <- counts / sum(counts)
  w <- weights(power)
  expected <- outer(rowSums(p), colSums(p))
  (sum(w * p) - sum(w * expected)) / (1 - sum(w * expected))
}
say("kappa2", jackknife(function(x) kappa(x, 2)))
say("kappa1", jackknife(function(x) kappa(x, 1)))
say("psych kappa2", cohen.kappa(as.matrix(d[, c("first", "second")]))$weighted.kappa)
say("ccc", jackknife(function(x) {
  m <- function(a) mean((a - mean(a))^2)
  s12 <- mean((x$first - mean(x$first)) * (x$second - mean(x$second)))
  2 * s12 / (m(x$first) + m(x$second) + (mean(x$first) - mean(x$second))^2)
}))
