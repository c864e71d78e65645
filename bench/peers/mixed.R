# 20,000 rows in 1,000 groups, one factor and crossed with a second one, by R lme4 and by
# our mixed_times, in one run: Rscript mixed.R PROGRAM. lme4 with degrees of freedom of
# lmerTest is timed as well, since ours always has them.
suppressMessages({
  library(lme4)
  library(lmerTest)
})
program <- commandArgs(trailingOnly = TRUE)[1]

draw <- function(levels) {
  set.seed(3)
  n <- 20000
  d <- data.frame(x1 = rnorm(n), g = sample(1000, n, TRUE), h = sample(levels, n, TRUE))
  d$x2 <- d$g %% 2
  d$y <- 7 + 0.3 * d$x1 + rnorm(1000, sd = 0.7)[d$g] + rnorm(levels, sd = 0.5)[d$h] + rnorm(n)
  d
}

ours <- function(d, kind) {
  sheet <- tempfile(fileext = ".tsv")
  on.exit(unlink(sheet))
  shown <- d
  for (column in c("y", "x1")) shown[[column]] <- sprintf("%.17g", d[[column]])
  write.table(shown, sheet, sep = "\t", quote = FALSE, row.names = FALSE)
  lines <- strsplit(system2(program, kind, stdin = sheet, stdout = TRUE), "\t", fixed = TRUE)
  setNames(as.numeric(vapply(lines, `[`, "", 2)), vapply(lines, `[`, "", 1))
}

least_ms <- function(f, times = 5) {
  min(vapply(seq_len(times), function(i) system.time(f())[["elapsed"]], 0)) * 1000
}

for (case in list(c("one-factor", 10), c("crossed", 20), c("crossed", 200))) {
  levels <- as.integer(case[2])
  d <- draw(levels)
  formula <- if (case[1] == "crossed") y ~ x1 + x2 + (1 | g) + (1 | h) else y ~ x1 + x2 + (1 | g)
  fit <- suppressMessages(lme4::lmer(formula, d))
  plain <- least_ms(function() suppressMessages(lme4::lmer(formula, d)))
  with_df <- least_ms(function() summary(lmerTest::lmer(formula, d)), 2)
  mine <- ours(d, case[1])
  cat(sprintf("%-10s %3d  lme4 %7.1f ms  with df %8.1f ms  ours %6.2f ms  ratio %5.1f (with df %6.1f)  log-likelihood ours - theirs %.1e\n",
              case[1], levels, plain, with_df, mine[["ms"]], plain / mine[["ms"]],
              with_df / mine[["ms"]], mine[["loglik"]] - as.numeric(logLik(fit))))
}
