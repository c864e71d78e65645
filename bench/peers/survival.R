# Turnbull's curve and the regression on the 731 rows of interval_diabetes.csv, by R
# survival and by our stats_survival_bench, in one run (processor time of both):
# Rscript survival.R PROGRAM
library(survival)
program <- commandArgs(trailingOnly = TRUE)[1]
here <- dirname(sub("^--file=", "", grep("^--file=", commandArgs(), value = TRUE)))
source(file.path(here, "common.R"))
d <- read.csv(file.path(here, "../../tests/reference/data/statistics/survival/interval_diabetes.csv"))
s <- Surv(ifelse(d$left == 0, NA, d$left), ifelse(is.infinite(d$right), NA, d$right),
          type = "interval2")
theirs <- c(
  diabetes_curve = per_call(function() survfit(s ~ 1), 5),
  "diabetes_regression/weibull" = per_call(function() survreg(s ~ gender, d, dist = "weibull"), 50),
  "diabetes_regression/log_normal" = per_call(function() survreg(s ~ gender, d, dist = "lognormal"), 50),
  "diabetes_regression/log_logistic" = per_call(function() survreg(s ~ gender, d, dist = "loglogistic"), 50)
)
beside(theirs, program, "diabetes", "R survival")
