# What every comparison uses: the program beside it, data sets, and a verdict.
program <- commandArgs(trailingOnly = TRUE)[1]
first_seed <- as.integer(Sys.getenv("BAIZE_PEER_SEED", "1"))
different <- 0
compared <- 0

# Gives `data` to the program as a table and reads its results: a named vector.
ours <- function(data, ...) {
  sheet <- tempfile(fileext = ".tsv")
  on.exit(unlink(sheet))
  shown <- data
  for (column in names(shown)) {
    if (is.numeric(shown[[column]])) shown[[column]] <- sprintf("%.17g", shown[[column]])
  }
  write.table(shown, sheet, sep = "\t", quote = FALSE, row.names = FALSE)
  lines <- system2(program, c(...), stdin = sheet, stdout = TRUE)
  parts <- strsplit(lines, "\t", fixed = TRUE)
  values <- suppressWarnings(as.numeric(vapply(parts, `[`, "", 2)))
  names(values) <- vapply(parts, `[`, "", 1)
  values
}

# Both agree to `digits` significant digits; near zero, to that many decimals of `scale`.
same <- function(label, mine, theirs, digits = 8, scale = 1e-6) {
  mine <- unname(mine)
  theirs <- unname(theirs)
  ok <- length(mine) == 1 && length(theirs) == 1 && is.finite(mine) && is.finite(theirs) &&
    abs(mine - theirs) <= 10^-digits * max(abs(theirs), scale)
  compared <<- compared + 1
  if (!isTRUE(ok)) {
    different <<- different + 1
    cat(sprintf("DIFFERENT %s: ours %.15g, theirs %.15g\n", label, mine, theirs))
  }
  invisible(ok)
}

# A maximum: ours is at least theirs, short of rounding, and no more than `slack` above it.
at_least <- function(label, mine, theirs, slack = 1e-3) {
  mine <- unname(mine)
  ok <- is.finite(mine) && mine >= theirs - 1e-8 * max(1, abs(theirs)) && mine <= theirs + slack
  compared <<- compared + 1
  if (!isTRUE(ok)) {
    different <<- different + 1
    cat(sprintf("DIFFERENT %s: ours %.15g, theirs %.15g\n", label, mine, theirs))
  }
  invisible(ok)
}

verdict <- function() {
  cat(sprintf("%d numbers compared, %d different\n", compared, different))
  quit(status = if (different > 0 || compared == 0) 1 else 0)
}
