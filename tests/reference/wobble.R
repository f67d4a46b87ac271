# Reference values for a wobble once per turn, made with R (base only).
#
#   Rscript tests/reference/wobble.R > tests/reference/wobble.json
#
# Ten stations unevenly spread over the turns of a screw of lead 5 mm, a wobble of 0.02 mm from trough to crest, and
# deviations in so many times the millimetres given. A sine and a cosine are fitted by least squares with a constant;
# `rare` is how many times the deviations are when the F test of both has one chance in 500, and `height` is twice the
# amplitude that is fitted at 0.99 of that.

places <- c(0, 7, 19, 30, 41, 53, 62, 75, 88, 97)
deviations <- c(3, -5, 2, 4, -1, -6, 5, 0, -3, 2) / 1000
angle <- 2 * pi * places / 5

fitted <- function(times) lm(0.01 * sin(angle + 0.4) + times * deviations ~ sin(angle) + cos(angle))
chance <- function(times) {
  f <- summary(fitted(times))$fstatistic
  pf(f[[1]], f[[2]], f[[3]], lower.tail = FALSE)
}
rare <- uniroot(function(times) log(chance(times)) - log(0.002), c(0.1, 5), tol = 1e-12)$root
height <- 2 * sqrt(sum(coef(fitted(0.99 * rare))[2:3]^2))

list.of <- function(x) paste0("[", paste(format(x, trim = TRUE), collapse = ", "), "]")
cat(
  "{\n  \"places\": ", list.of(places), ",\n  \"deviations\": ", list.of(deviations),
  ",\n  \"rare\": ", sprintf("%.9g", rare), ",\n  \"height\": ", sprintf("%.9g", height), "\n}\n",
  sep = ""
)
