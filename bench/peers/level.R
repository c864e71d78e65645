# The local level over 3,650 days by R's stats (KalmanLike, KalmanSmooth, StructTS) and by
# our stats_state_space_bench, in one run (processor time of both), the same values:
# Rscript level.R PROGRAM
program <- commandArgs(trailingOnly = TRUE)[1]
here <- dirname(sub("^--file=", "", grep("^--file=", commandArgs(), value = TRUE)))
source(file.path(here, "common.R"))
day <- 0:3649
y <- 7.5 + sin(day / 50) + ((day * 37) %% 11 - 5) / 10
# A start of which nothing is known, as StructTS writes it.
model <- list(T = matrix(1), Z = 1, h = 0.1, V = matrix(0.001), a = 0, P = matrix(1e6), Pn = matrix(1e6))
theirs <- c(
  level_of_ten_years = per_call(function() {
    KalmanLike(y, model)
    KalmanSmooth(y, model)
  }, 50),
  fit_of_ten_years = per_call(function() StructTS(y, "level"), 5)
)
beside(theirs, program, "ten_years")
