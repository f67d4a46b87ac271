# Reference values for the profile, made with R (lm of base R; gam of mgcv, REML).
#
#   Rscript tests/reference/profiles.R > tests/reference/profiles.json
#
# Three slides of 300 mm travel, 13 stations of two repeats each, normal scatter of 0.004 mm, graduation 0.001 mm:
# even, tapered, and with one soft patch.

suppressMessages(library(mgcv))
set.seed(20260314)

positions <- rep(seq(0, 300, by = 25), times = 2)
scatter <- 0.004
read <- function(truth) round(truth(positions) + rnorm(length(positions), sd = scatter), 3)

numbers <- function(x) paste0("[", paste(formatC(x, digits = 7, format = "fg"), collapse = ", "), "]")
object <- function(...) {
  parts <- list(...)
  paste0("{", paste(sprintf('"%s": %s', names(parts), unlist(parts)), collapse = ", "), "}")
}
fitted <- function(model, at) {
  found <- predict(model, newdata = data.frame(x = at), se.fit = TRUE)
  c(at = numbers(at), fit = numbers(found$fit), se = numbers(found$se.fit))
}

even <- read(function(x) 0.18 + 0 * x)
even.fit <- lm(even ~ 1)

taper <- read(function(x) 0.08 + 0.20 * x / 300)
taper.fit <- lm(y ~ x, data = data.frame(y = taper, x = positions))

patch <- read(function(x) 0.10 + 0.25 * exp(-0.5 * ((x - 140) / 45)^2))
patch.fit <- gam(y ~ s(x, k = 12), data = data.frame(y = patch, x = positions), method = "REML")

ends <- c(0, 300)
along <- seq(0, 300, by = 12.5)
cat(object(
  positions = numbers(positions),
  even = object(readings = numbers(even),
                mean = formatC(coef(even.fit)[[1]], digits = 7, format = "fg"),
                se = formatC(summary(even.fit)$coefficients[1, 2], digits = 7, format = "fg"),
                sigma = formatC(summary(even.fit)$sigma, digits = 7, format = "fg")),
  taper = do.call(object, as.list(c(readings = numbers(taper), fitted(taper.fit, ends),
                                    sigma = formatC(summary(taper.fit)$sigma, digits = 7, format = "fg")))),
  patch = do.call(object, as.list(c(readings = numbers(patch), fitted(patch.fit, along),
                                    sigma = formatC(sqrt(patch.fit$sig2), digits = 7, format = "fg"))))
), "\n", sep = "")
