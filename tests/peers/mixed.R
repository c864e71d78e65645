# Linear mixed models beside R lme4 and lmerTest. Their search stops at six digits of a
# variance or so (tightened here as far as it goes), their degrees of freedom come from
# numerical derivatives.
source("common.R")
suppressMessages({
  library(lme4)
  library(lmerTest)
})

draw <- function(seed, kind) {
  set.seed(seed)
  groups <- sample(8:15, 1)
  d <- expand.grid(rep = 1:4, h0 = 1:5, g = seq_len(groups))
  d <- d[sample(nrow(d), round(0.8 * nrow(d))), ] # unbalanced, in no order
  n <- nrow(d)
  d$x1 <- rnorm(n, 2)
  d$x2 <- as.numeric(d$g %% 2)
  if (kind == "three") d$x2 <- runif(n, -1, 1)
  d$h <- if (kind == "nested") d$g * 100 + d$h0 else d$h0
  effect <- function(id, sd) rnorm(length(unique(id)), sd = sd)[match(id, unique(id))]
  d$y <- 50 + 0.7 * d$x1 - d$x2 + effect(d$g, 1.5) + rnorm(n)
  if (kind %in% c("slopes", "apart", "three")) d$y <- d$y + d$x1 * effect(d$g, 0.6)
  if (kind == "three") d$y <- d$y + d$x2 * effect(d$g, 1.1)
  if (kind %in% c("nested", "crossed", "apart")) d$y <- d$y + effect(d$h, 0.8)
  d[c("y", "x1", "x2", "g", "h")]
}

formulas <- list(
  nested = y ~ x1 + x2 + (1 | g) + (1 | h), crossed = y ~ x1 + x2 + (1 | g) + (1 | h),
  slopes = y ~ x1 + x2 + (x1 | g), apart = y ~ x1 + x2 + (x1 || g) + (1 | h),
  three = y ~ x1 + x2 + (x1 + x2 | g))
tight <- lmerControl(optimizer = "bobyqa", optCtrl = list(rhoend = 1e-9, maxfun = 20000),
                     check.conv.grad = "ignore", check.conv.hess = "ignore")

one_fit <- function(d, kind, full, label) {
  mine <- ours(d, kind, if (full) "full" else "restricted")
  theirs <- suppressMessages(lmer(formulas[[kind]], d, REML = !full, control = tight))
  same(label("usable"), mine["usable"], 1)
  at_least(label("log-likelihood"), mine["loglik"], as.numeric(logLik(theirs)), 1e-6)
  table <- suppressMessages(coef(summary(theirs)))
  at_edge <- isSingular(theirs, tol = 1e-3)
  for (i in 1:3) {
    same(label(paste("b", i)), mine[paste0("b", i - 1)], table[i, 1], 5)
    same(label(paste("e", i)), mine[paste0("e", i - 1)], table[i, 2], 5)
    # With a variance at 0 the likelihood is flat there in ways that derivatives by
    # numbers see differently.
    same(label(paste("df", i)), mine[paste0("df", i - 1)], table[i, 3], if (at_edge) 2 else 4)
  }
  test <- suppressMessages(contestMD(theirs, rbind(c(0, 1, 0), c(0, 0, 1))))
  same(label("F"), mine["f"], test[["F value"]], 4.5)
  same(label("F df"), mine["f_df"], test[["DenDF"]], if (at_edge) 2 else 4)
  same(label("sigma"), mine["sigma"], sigma(theirs), 5)
  found <- VarCorr(theirs)
  effects <- ranef(theirs, condVar = TRUE)
  term <- 0
  for (name in c("g", "h")[c("g", "h") %in% names(effects)]) {
    parts <- found[grepl(paste0("^", name, "([.][0-9]+)?$"), names(found))]
    sds <- unlist(lapply(parts, attr, "stddev"))
    sds <- sds[order(sub(".*[.]", "", names(sds)) != "(Intercept)")]
    last <- nrow(effects[[name]])
    variances <- attr(effects[[name]], "postVar")
    for (i in seq_along(sds)) {
      at <- paste0(term, "_", i - 1)
      # A variance that is nearly 0 is known to few digits of itself.
      same(label(paste("sd", name, i)), mine[paste0("sd", at)], sds[i], 4, scale = 1)
      same(label(paste("first", name, i)), mine[paste0("first", at)], effects[[name]][1, i], 4, scale = 1)
      same(label(paste("last", name, i)), mine[paste0("last", at)], effects[[name]][last, i], 4, scale = 1)
      if (!is.list(variances)) {
        same(label(paste("first sd", name, i)), mine[paste0("first_sd", at)], sqrt(variances[i, i, 1]), 4, scale = 1)
        same(label(paste("last sd", name, i)), mine[paste0("last_sd", at)], sqrt(variances[i, i, last]), 4, scale = 1)
      }
      if (kind %in% c("slopes", "three") && !at_edge && i > 1) {
        same(label(paste("correlation", i)), mine[paste0("cor", at)],
             attr(parts[[1]], "correlation")[i, 1], 4, scale = 1)
      }
    }
    term <- term + 1
  }
}

# lme4 interpolates its profile; the ends agree to about four digits.
profile_of <- function(d, kind, label) {
  mine <- ours(d, kind, "full", "profile")
  theirs <- suppressWarnings(suppressMessages(
    confint(lmer(formulas[[kind]], d, REML = FALSE, control = tight), quiet = TRUE)))
  sds <- switch(kind, crossed = c("sd0_0", "sd1_0"), slopes = c("sd0_0", NA, "sd0_1"))
  if (kind == "crossed" && length(unique(d$h)) > length(unique(d$g))) sds <- rev(sds)
  names <- paste0("profile_", c(sds, "sigma", "b0", "b1", "b2"))
  for (i in which(!grepl("NA", names))) {
    for (end in 1:2) {
      same(label(paste(names[i], end)), mine[paste0(names[i], c("_low", "_high")[end])],
           theirs[i, end], 3, scale = 1)
    }
  }
}

for (seed in first_seed + 0:3) {
  for (kind in names(formulas)) {
    d <- draw(seed * 10 + match(kind, names(formulas)), kind)
    for (full in c(FALSE, TRUE)) {
      one_fit(d, kind, full, function(what) paste(seed, kind, if (full) "ML" else "REML", what))
    }
  }
}
for (kind in c("crossed", "slopes")) {
  profile_of(draw(first_seed, kind), kind, function(what) paste(kind, what))
}
verdict()
