# Turnbull's curve and the regression on the 731 rows of interval_diabetes.csv, by R
# survival and by our stats_survival_bench, in one run (processor time of both):
# Rscript survival.R PROGRAM
library(survival)
program <- commandArgs(trailingOnly = TRUE)[1]
here <- dirname(sub("^--file=", "", grep("^--file=", commandArgs(), value = TRUE)))
d <- read.csv(file.path(here, "../../tests/reference/data/statistics/survival/interval_diabetes.csv"))
s <- Surv(ifelse(d$left == 0, NA, d$left), ifelse(is.infinite(d$right), NA, d$right),
          type = "interval2")
per_call <- function(f, times) {
  f()
  sum(system.time(for (i in seq_len(times)) f())[1:2]) * 1000 / times
}
theirs <- c(
  diabetes_curve = per_call(function() survfit(s ~ 1), 5),
  "diabetes_regression/weibull" = per_call(function() survreg(s ~ gender, d, dist = "weibull"), 50),
  "diabetes_regression/log_normal" = per_call(function() survreg(s ~ gender, d, dist = "lognormal"), 50),
  "diabetes_regression/log_logistic" = per_call(function() survreg(s ~ gender, d, dist = "loglogistic"), 50)
)
lines <- system2(program, c("--benchmark_filter=diabetes", "--benchmark_format=csv"),
                 stdout = TRUE, stderr = FALSE)
ours <- read.csv(text = lines[grep("^name,", lines):length(lines)])
unit <- c(ns = 1e-6, us = 1e-3, ms = 1, s = 1e3)
for (name in names(theirs)) {
  row <- ours[ours$name == name, ]
  mine <- row$cpu_time * unit[[row$time_unit]]
  cat(sprintf("%-34s R survival %9.3f ms   ours %8.4f ms   ratio %6.1f\n", name, theirs[[name]],
              mine, theirs[[name]] / mine))
}
