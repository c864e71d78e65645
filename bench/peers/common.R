# Sourced by the comparisons beside it: times of R and of our benchmarks, from one run.

# Milliseconds of processor time that one call of f takes, the first left out.
per_call <- function(f, times) {
  f()
  sum(system.time(for (i in seq_len(times)) f())[1:2]) * 1000 / times
}

# Runs our benchmark program, and prints its times beside R's, named alike.
beside <- function(theirs, program, filter = ".", them = "R") {
  lines <- system2(program, c(paste0("--benchmark_filter=", filter), "--benchmark_format=csv"),
                   stdout = TRUE, stderr = FALSE)
  ours <- read.csv(text = lines[grep("^name,", lines):length(lines)])
  unit <- c(ns = 1e-6, us = 1e-3, ms = 1, s = 1e3)
  for (name in names(theirs)) {
    row <- ours[ours$name == name, ]
    mine <- row$cpu_time * unit[[row$time_unit]]
    cat(sprintf("%-34s %s %9.3f ms   ours %8.4f ms   ratio %6.1f\n", name, them, theirs[[name]],
                mine, theirs[[name]] / mine))
  }
}
