# The local level over 3,650 days by R's stats (KalmanLike, KalmanSmooth, StructTS) and by
# our stats_state_space_bench, in one run (processor time of both), the same values:
# Rscript level.R PROGRAM
program <- commandArgs(trailingOnly = TRUE)[1]
day <- 0:3649
y <- 7.5 + sin(day / 50) + ((day * 37) %% 11 - 5) / 10
# A start of which nothing is known, as StructTS writes it.
model <- list(T = matrix(1), Z = 1, h = 0.1, V = matrix(0.001), a = 0, P = matrix(1e6), Pn = matrix(1e6))
per_call <- function(f, times) {
  f()
  sum(system.time(for (i in seq_len(times)) f())[1:2]) * 1000 / times
}
theirs <- c(
  level_of_ten_years = per_call(function() {
    KalmanLike(y, model)
    KalmanSmooth(y, model)
  }, 50),
  fit_of_ten_years = per_call(function() StructTS(y, "level"), 5)
)
lines <- system2(program, c("--benchmark_filter=ten_years", "--benchmark_format=csv"),
                 stdout = TRUE, stderr = FALSE)
ours <- read.csv(text = lines[grep("^name,", lines):length(lines)])
unit <- c(ns = 1e-6, us = 1e-3, ms = 1, s = 1e3)
for (name in names(theirs)) {
  row <- ours[ours$name == name, ]
  mine <- row$cpu_time * unit[[row$time_unit]]
  cat(sprintf("%-20s R %9.3f ms   ours %8.4f ms   ratio %6.1f\n", name, theirs[[name]], mine,
              theirs[[name]] / mine))
}
