# Reference values for the trend since a repair, made with base R.
#
#   Rscript tests/reference/runningIn.R > tests/reference/runningIn.json
#
# Weighted least squares by lm(); the evidence of each course by adaptive quadrature (integrate) over growth, summed over the same settling times, shares and scatters that the program weighs, with its priors.

numbers <- function(x) paste0("[", paste(formatC(x, digits = 9, format = "g"), collapse = ", "), "]")
number <- function(x) formatC(x, digits = 9, format = "g")

sets <- list(
  level    = list(time = c(0, 0.3, 0.55, 1), value = c(0.052, 0.051, 0.053, 0.052), deviation = c(0.002, 0.002, 0.003, 0.002)),
  rising   = list(time = c(0, 0.25, 0.5, 0.75, 1), value = c(0.040, 0.055, 0.071, 0.086, 0.099), deviation = rep(0.002, 5)),
  settling = list(time = c(0, 0.05, 0.15, 0.4, 0.7, 1), value = c(0.030, 0.044, 0.056, 0.061, 0.060, 0.062), deviation = rep(0.0015, 6))
)

scatters <- c(0, 0.002, 0.004, 0.008)
scatter.chance <- c(0.4, 0.25, 0.2, 0.15)
usual <- 0.02
times <- 0.04 * 1.5^(0:9)
shares <- (0:9 + 0.5) / 10

steady <- function(t) t
settle <- function(w) function(t) (1 - exp(-t / w)) / (1 - exp(-1 / w))
slow <- function(w) function(t) log(1 + t / w) / log(1 + 1 / w)
both <- function(w, s) function(t) (1 - s) * settle(w)(t) + s * t

courses <- list(
  steady = list(steady),
  settling = lapply(times, settle),
  slowing = lapply(times, slow),
  "settling-then-steady" = unlist(lapply(times, function(w) lapply(shares, function(s) both(w, s))), recursive = FALSE)
)
chances <- c(constant = 0.2, steady = 0.25, settling = 0.2, slowing = 0.15, "settling-then-steady" = 0.2)

# Density of the observations given what has grown, the level integrated out under a flat prior: the density of their
# differences from the first, which hold no level and are jointly normal.
given <- function(set, growth, amounts, scatter) {
  x <- if (is.null(growth)) rep(0, length(set$time)) else growth(set$time)
  variance <- set$deviation^2 + scatter^2
  root <- chol(diag(variance[-1]) + variance[1])
  whitened <- function(v) backsolve(root, v, transpose = TRUE)
  d <- whitened(set$value[-1] - set$value[1])
  e <- whitened(x[-1] - x[1])
  sapply(amounts, function(b) exp(-0.5 * sum((d - b * e)^2) - sum(log(diag(root))) - length(d) / 2 * log(2 * pi)))
}

evidence <- function(set, growth, scatter) {
  w <- 1 / (set$deviation^2 + scatter^2)
  x <- growth(set$time)
  fit <- lm(set$value ~ x, weights = w)
  se <- sqrt(solve(t(cbind(1, x)) %*% (w * cbind(1, x)))[2, 2])
  from <- max(0, coef(fit)[[2]] - 9 * se)
  to <- max(coef(fit)[[2]], 0) + 9 * se
  prior <- function(b) 2 / (pi * usual * (1 + (b / usual)^2))
  integrate(function(b) prior(b) * given(set, growth, b, scatter), from, to, rel.tol = 1e-6)$value
}

chancesOf <- function(set) {
  over.scatters <- function(f) sum(scatter.chance * sapply(scatters, f))
  found <- c(
    constant = over.scatters(function(s) given(set, NULL, 0, s)),
    sapply(courses, function(growths) mean(sapply(growths, function(g) over.scatters(function(s) evidence(set, g, s)))))
  )
  weighed <- found * chances[names(found)]
  weighed / sum(weighed)
}

written <- lapply(names(sets), function(name) {
  set <- sets[[name]]
  w <- 1 / (set$deviation^2 + 0.002^2)
  fit <- lm(set$value ~ set$time, weights = w)
  covariance <- solve(t(cbind(1, set$time)) %*% (w * cbind(1, set$time)))
  found <- chancesOf(set)
  paste0('"', name, '": {"time": ', numbers(set$time), ', "value": ', numbers(set$value), ', "deviation": ', numbers(set$deviation),
         ', "steady": {"scatter": 0.002, "amount": ', number(coef(fit)[[2]]), ', "amountDeviation": ', number(sqrt(covariance[2, 2])),
         ', "level": ', number(coef(fit)[[1]]), ', "logEvidence": ', number(log(given(set, steady, 0.03, 0.002))), '}',
         ', "chances": {', paste(sprintf('"%s": %s', names(found), sapply(found, number)), collapse = ", "), "}}")
})
cat("{", paste(written, collapse = ", "), "}\n", sep = "")
