# Reference values for positioning readings, made with R (base only).
#
#   Rscript tests/reference/positioning.R > tests/reference/positioning.json
#
# Nine targets unevenly spaced over 300 mm, five runs each way, normal scatter of 0.003 mm, graduation 0.001 mm: lost
# motion of 0.08 mm, a lead that is long by 0.02 mm over the travel, and the flank that drives while advancing worn by
# 0.03 mm about 140 mm. Quantities after ISO 230-2; `chance` is the range about the fitted straight line that means
# of such scatter do not exceed in 99 of 100 surveys.

set.seed(20260314)

targets <- c(0, 37, 76, 112, 151, 187, 226, 262, 299)
m <- length(targets)
n <- 5
graduation <- 0.001

lead <- 0.02 * targets / 300
patch <- 0.03 * exp(-0.5 * ((targets - 140) / 40)^2)
read <- function(truth) {
  matrix(round((targets + truth + rnorm(m * n, sd = 0.003)) / graduation) * graduation, m, n)
}
up <- read(lead - 0.04 - patch)
down <- read(lead + 0.04)

x.up <- rowMeans(up - targets)
x.down <- rowMeans(down - targets)
s.up <- apply(up - targets, 1, sd)
s.down <- apply(down - targets, 1, sd)
B <- x.up - x.down
R <- pmax(2 * s.up + 2 * s.down + abs(B), 4 * s.up, 4 * s.down)
spread <- function(...) diff(range(...))

about.line <- function(y) spread(residuals(lm(y ~ targets)))
# Residuals of many surveys at once, by the projection that takes the line off.
ones.and.targets <- cbind(1, targets)
off.line <- diag(m) - ones.and.targets %*% solve(crossprod(ones.and.targets), t(ones.and.targets))
chance <- function(s, draws = 200000) {
  freedom <- m * (n - 1)
  scatter <- sqrt(sum(s^2) * (n - 1) / rchisq(draws, freedom))
  means <- matrix(rnorm(m * draws), m) * rep(scatter, each = m) / sqrt(n)
  left <- off.line %*% means
  quantile(apply(left, 2, max) - apply(left, 2, min), 0.99, names = FALSE)
}

number <- function(x) trimws(formatC(x, digits = 10, format = "fg"))
numbers <- function(x) paste0("[", paste(number(x), collapse = ", "), "]")
rows <- function(x) paste0("[", paste(apply(x, 1, numbers), collapse = ", "), "]")
object <- function(...) {
  parts <- list(...)
  paste0("{", paste(sprintf('"%s": %s', names(parts), unlist(parts)), collapse = ", "), "}")
}
each.way <- function(up, down, both) {
  object(advancing = number(up), retracting = number(down), bidirectional = number(both))
}

cat(object(
  targets = numbers(targets),
  readings = object(advancing = rows(up), retracting = rows(down)),
  advancing = object(deviation = numbers(x.up), standardDeviation = numbers(s.up), repeatability = numbers(4 * s.up)),
  retracting = object(deviation = numbers(x.down), standardDeviation = numbers(s.down),
                      repeatability = numbers(4 * s.down)),
  reversals = numbers(B),
  repeatabilities = numbers(R),
  reversal = number(max(abs(B))),
  meanReversal = number(mean(B)),
  repeatability = each.way(4 * max(s.up), 4 * max(s.down), max(R)),
  meanDeviationRange = number(spread((x.up + x.down) / 2)),
  systematicDeviation = each.way(spread(x.up), spread(x.down), spread(x.up, x.down)),
  accuracy = each.way(spread(x.up - 2 * s.up, x.up + 2 * s.up), spread(x.down - 2 * s.down, x.down + 2 * s.down),
                      spread(x.up - 2 * s.up, x.up + 2 * s.up, x.down - 2 * s.down, x.down + 2 * s.down)),
  range = object(advancing = number(about.line(x.up)), retracting = number(about.line(x.down))),
  chance = object(advancing = number(chance(s.up)), retracting = number(chance(s.down)))
), "\n", sep = "")
