# Reference values for what scatter may bring about, made with R (base only).
#
#   Rscript tests/reference/scatter.R > tests/reference/scatter.json
#
# Repeatability is lognormal about 0.4 graduations (0.004 mm where the graduation is finer than 0.01 mm), deviation 0.5
# of its logarithm; a reading's variance is that, squared, and a rectangle of one graduation for each rounding. Given a
# sum of squares with its degrees of freedom, `tail` integrates the chance of a difference over what the variance may
# be, and `reach` is the difference that has a given chance.

weighed <- function(f, squares, freedom, step, roundings) {
  variance <- function(z) (0.4 * max(step, 0.01) * exp(0.5 * z))^2 + roundings * step^2 / 12
  weight <- function(z) exp(-z^2 / 2 - freedom / 2 * log(variance(z) / variance(0)) - squares / 2 / variance(z))
  over <- function(g) integrate(g, -8, 8, rel.tol = 1e-11, subdivisions = 2000)$value
  over(function(z) weight(z) * f(variance(z))) / over(weight)
}
tail <- function(difference, squares, freedom, step = 0.01, roundings = 1, times = 1, besides = 0) {
  weighed(function(v) pnorm(-difference / sqrt(times * v + besides)), squares, freedom, step, roundings)
}
reach <- function(chance, ...) {
  uniroot(function(d) log(tail(d, ...)) - log(chance), c(1e-6, 1), tol = 1e-12)$root
}
rounding <- 0.01^2 / 12

number <- function(x) sprintf("%.9g", x)
values <- c(
  # Chance of a difference.
  tailOfNothing = tail(0.02, 0, 0),
  tailOfTwelve = tail(0.02, 12 * 0.006^2, 12),
  tailOfPairs = tail(0.03, 8 * 0.01^2, 8, roundings = 2, times = 1.5, besides = 0.005^2),
  tailOfFine = tail(0.012, 5 * 0.003^2, 5, step = 0.001),
  deviationOfTwelve = sqrt(weighed(identity, 12 * 0.006^2, 12, 0.01, 1)),
  # A value among three equal ones, beside two stations of two equal ones each, agrees with them at 1 in 100 both ways.
  slipPutRight = reach(0.005, 0, 4, times = 4 / 3),
  # One of three repeats, the other two equal, at one chance in 500 for three looks both ways: its distance to them.
  thirdOfThree = reach(0.002 / 6, 0, 1, times = 3 / 2),
  # Two readings at one of three stations, the others read twice alike, at one chance in 500 for the three pairs: apart.
  secondOfTwo = sqrt(2) * reach(0.002 / 3 / 2, 0, 2),
  # Chance that one reading lies 0.02 off the mean of two, or 0.03 off one, after five or two degrees of freedom.
  offTwo = 2 * tail(0.02, 0, 5, times = 3 / 2),
  offOne = 2 * tail(0.03, 0, 2, times = 2),
  # End float from two equal readings against the least of three stations, read twice, one chance in 500 for the three.
  endFloat = reach(0.002 / 3, 0, 2, times = 1, besides = 2 * rounding),
  # Slope per reading of three stations read forth and back, orders 5, 3 and 1 apart, at one chance in 500 both ways.
  driftOfThree = reach(0.001, 0, 2) / sqrt((25 + 9 + 1) / 2)
)
cat("{\n", paste0("  \"", names(values), "\": ", number(values), collapse = ",\n"), "\n}\n", sep = "")
