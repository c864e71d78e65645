# Sourced by the comparisons beside it: times of R and of our benchmarks, from one run.

# Of both sides the middle one of five rounds counts: whatever else the machine does falls
# into one of them.
rounds <- 5

# Milliseconds of processor time that one call of f takes, the first left out.
per_call <- function(f, times) {
  f()
  median(vapply(seq_len(rounds), function(i) {
    sum(system.time(for (i in seq_len(times)) f())[1:2]) * 1000 / times
  }, 0))
}

# Runs our benchmark program, and prints its times beside R's, named alike.
beside <- function(theirs, program, filter = ".", them = "R") {
  lines <- system2(program, c(paste0("--benchmark_filter=", filter), "--benchmark_format=csv",
                              paste0("--benchmark_repetitions=", rounds),
                              "--benchmark_report_aggregates_only=true"),
                   stdout = TRUE, stderr = FALSE)
  ours <- read.csv(text = lines[grep("^name,", lines):length(lines)])
  unit <- c(ns = 1e-6, us = 1e-3, ms = 1, s = 1e3)
  for (name in names(theirs)) {
    row <- ours[ours$name == paste0(name, "_median"), ]
    mine <- row$cpu_time * unit[[row$time_unit]]
    cat(sprintf("%-34s %s %9.3f ms   ours %8.4f ms   ratio %6.1f\n", name, them, theirs[[name]],
                mine, theirs[[name]] / mine))
  }
}
