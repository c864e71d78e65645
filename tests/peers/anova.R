# R's aov() with Error strata, emmeans, and anova() of a multivariate lm for repeated
# measures, on random trials.
source("common.R")
suppressMessages(library(emmeans))

stratum <- function(fit, name) as.data.frame(summary(fit)[[name]][[1]])
compare_stratum <- function(label, mine, table, stratum_name) {
  rows <- trimws(rownames(table))
  for (i in seq_along(rows)) {
    name <- rows[i]
    if (name == "Residuals") {
      same(paste(label, stratum_name, "df"), mine[paste(stratum_name, "df")], table$Df[i], 12)
      same(paste(label, stratum_name, "ss"), mine[paste(stratum_name, "ss")], table$`Sum Sq`[i], 9)
    } else {
      same(paste(label, name, "df"), mine[paste(name, "df")], table$Df[i], 12)
      same(paste(label, name, "ss"), mine[paste(name, "ss")], table$`Sum Sq`[i], 9)
      same(paste(label, name, "f"), mine[paste(name, "f")], table$`F value`[i], 9)
      same(paste(label, name, "p"), mine[paste(name, "p")], table$`Pr(>F)`[i], 8, 1e-12)
    }
  }
}
as_factors <- function(d) { for (n in setdiff(names(d), "y")) d[[n]] <- factor(d[[n]]); d }
errors_of <- function(mine, kind) mine[grepl(paste0(" ", kind, "$"), names(mine))]

split_plot <- function() {
  r <- sample(3:6, 1); a <- sample(2:4, 1); b <- sample(2:5, 1)
  d <- expand.grid(B = 1:b, A = 1:a, blk = 1:r)
  d$whole <- (d$blk - 1) * a + d$A
  d$y <- 50 + rnorm(r, 0, 3)[d$blk] + rnorm(r * a, 0, 4)[d$whole] + 2 * d$A * (d$B == 2) + rnorm(nrow(d), 0, 2)
  d <- d[sample(nrow(d)), ]
  f <- as_factors(d)
  fit <- suppressWarnings(aov(y ~ A * B + Error(blk + whole), f)) # one lies within the other
  mine <- ours(d, "pairs")
  compare_stratum("split", mine, stratum(fit, "Error: blk"), "blk")
  compare_stratum("split", mine, stratum(fit, "Error: whole"), "whole")
  compare_stratum("split", mine, stratum(fit, "Error: Within"), "plots")
  # Standard errors of all differences: lme4's REML is the analysis of variance where
  # no variance is 0, so only trials with clear ones are compared; its search ends at
  # about 4 digits, and at a false end where a variance is small.
  mixed <- suppressWarnings(suppressMessages(lmerTest::lmer(y ~ A * B + (1 | blk) + (1 | whole), f)))
  ms <- function(name) tail(stratum(fit, name)$`Mean Sq`, 1)
  if (ms("Error: blk") > 1.5 * ms("Error: whole") && ms("Error: whole") > 1.5 * ms("Error: Within")) {
    pairs <- as.data.frame(pairs(emmeans(mixed, ~ B + A, lmer.df = "satterthwaite"), adjust = "none"))
    same("split differences", sum(abs(errors_of(mine, "difference"))), sum(abs(pairs$estimate)), 6)
    same("split se", sum(errors_of(mine, "se")), sum(pairs$SE), 4)
    same("split df", sum(sort(errors_of(mine, "df")[grepl("^[0-9]", names(errors_of(mine, "df")))])), sum(pairs$df), 2.5)
  }
}
strip_plot <- function() {
  r <- sample(3:5, 1); a <- sample(2:4, 1); b <- sample(2:4, 1)
  d <- expand.grid(B = 1:b, A = 1:a, blk = 1:r)
  d$cross <- (d$blk - 1) * a + d$A
  d$down <- (d$blk - 1) * b + d$B
  d$y <- rnorm(nrow(d), 1e3, 2) + rnorm(r * a, 0, 4)[d$cross] + rnorm(r * b, 0, 4)[d$down]
  f <- as_factors(d)
  fit <- suppressWarnings(aov(y ~ A * B + Error(blk + cross + down), f))
  mine <- ours(d)
  compare_stratum("strip", mine, stratum(fit, "Error: cross"), "cross")
  compare_stratum("strip", mine, stratum(fit, "Error: down"), "down")
  compare_stratum("strip", mine, stratum(fit, "Error: Within"), "plots")
}
# Blocks with lost plots: the regression on blocks and treatments is exact.
lost_plots <- function() {
  r <- sample(3:6, 1); a <- sample(3:6, 1)
  d <- expand.grid(A = 1:a, blk = 1:r)
  d$y <- 20 + rnorm(r)[d$blk] + d$A + rnorm(nrow(d))
  d$y[sample(nrow(d), sample(1:3, 1))] <- NA
  if (any(table(d$A[!is.na(d$y)]) == 0) || any(table(d$blk[!is.na(d$y)]) == 0)) return()
  shown <- d
  shown$y <- ifelse(is.na(d$y), "NA", sprintf("%.17g", d$y))
  mine <- ours(shown, "pairs")
  f <- as_factors(d)
  fit <- lm(y ~ blk + A, f)
  table <- anova(fit)
  same("lost df", mine["plots df"], table["Residuals", "Df"], 12)
  same("lost rest", mine["plots ss"], table["Residuals", "Sum Sq"], 9)
  same("lost ss", mine["A ss"], table["A", "Sum Sq"], 9)
  same("lost p", mine["A p"], table["A", "Pr(>F)"], 8, 1e-12)
  pairs <- as.data.frame(pairs(emmeans(fit, "A"), adjust = "none"))
  for (i in seq_len(nrow(pairs))) {
    same("lost difference", errors_of(mine, "difference")[i], pairs$estimate[i], 9)
    same("lost se", errors_of(mine, "se")[i], pairs$SE[i], 9)
  }
}
repeated <- function() {
  g <- sample(2:3, 1); n <- sample(4:8, 1); k <- sample(3:6, 1)
  between <- expand.grid(plot = 1:n, M = 1:g)
  between$plot <- seq_len(nrow(between))
  wide <- matrix(rnorm(nrow(between) * k), ncol = k) %*% chol(0.8^abs(outer(1:k, 1:k, "-"))) +
    outer(between$M, seq_len(k)) / 2
  d <- data.frame(T = rep(1:k, each = nrow(wide)), M = rep(between$M, k), plot = rep(between$plot, k), y = as.vector(wide))
  mine <- ours(d, "time", 1)
  fit <- lm(wide ~ factor(between$M))
  idata <- data.frame(T = factor(1:k))
  theirs <- anova(fit, X = ~1, idata = idata, test = "Spherical")
  heading <- attr(theirs, "heading")
  same("gg", mine["gg"], as.numeric(sub(".*: *", "", grep("Greenhouse", heading, value = TRUE))), 3)
  hf <- as.numeric(sub(".*: *", "", grep("Huynh", heading, value = TRUE)))
  same("hf", mine["hf"], min(1, hf), 3)
  same("time f", mine["T f"], theirs[1, "F"], 9)
  same("both f", mine["M:T f"], theirs[2, "F"], 9)
  same("time gg p", mine["T p gg"], theirs[1, "G-G Pr"], 7, 1e-10)
  same("both gg p", mine["M:T p gg"], theirs[2, "G-G Pr"], 7, 1e-10)
  # R goes on with an epsilon above 1, which no epsilon can be.
  if (hf < 1) same("both hf p", mine["M:T p hf"], theirs[2, "H-F Pr"], 7, 1e-10)
}

for (round in 1:12) {
  set.seed(1000 * first_seed + round)
  split_plot()
  strip_plot()
  lost_plots()
  repeated()
}
verdict()
