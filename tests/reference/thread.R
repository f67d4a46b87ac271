# Reference values for thread dimensions and measurements over wires, made with R (base only).
#
#   Rscript tests/reference/thread.R > tests/reference/thread.json
#
# Diameters are worked out from each standard's formulas for every size that it lists, and rounded as its tables are:
# inch tables to 0.0001 in with ties to the even digit, metric ones to 0.001 mm. Of a class of ASME B1.5 the tolerance
# is rounded before it is taken off.
#
# A wire of the given diameter is a straight cylinder that lies at an angle `tilt` across the groove. For each point of
# the helicoid, the wire's distance from the screw's axis at which it would touch that point is known; the wire lies at
# the largest of them, and turns to the tilt that lets it in farthest. This says nothing of where it touches.

even <- function(x, digits = 4) {
  scaled <- x * 10^digits
  below <- floor(scaled)
  rest <- scaled - below
  tie <- abs(rest - 0.5) < 1e-7
  (below + ifelse(tie, below %% 2, ifelse(rest > 0.5, 1, 0))) / 10^digits
}
number <- function(x, digits) formatC(x, format = "f", digits = digits)
record <- function(values, digits) {
  paste0("    {", paste0("\"", names(values), "\": ", vapply(values, number, "", digits), collapse = ", "), "}")
}
all.of <- function(name, records) paste0("  \"", name, "\": [\n", paste(records, collapse = ",\n"), "\n  ]")

# ASME B1.5 and B1.8: the preferred series.
acme <- list(
  c(1/4, 16), c(5/16, 14), c(3/8, 12), c(7/16, 12), c(1/2, 10), c(5/8, 8), c(3/4, 6), c(7/8, 6), c(1, 5),
  c(9/8, 5), c(5/4, 5), c(11/8, 4), c(3/2, 4), c(7/4, 4), c(2, 4), c(9/4, 3), c(5/2, 3), c(11/4, 3), c(3, 2),
  c(7/2, 2), c(4, 2), c(9/2, 2), c(5, 2)
)
acme.limits <- function(d, n, height, allowance, by.diameter, by.pitch) {
  p <- 1 / n
  clearance <- if (n <= 10) 0.02 else 0.01
  wide <- by.diameter * sqrt(d) + by.pitch * sqrt(1 / n)
  crest <- max(0.05 * p, 0.005)
  basic <- d - height * p
  screw <- even(basic - allowance * sqrt(d))
  list(
    d = d, n = n,
    screwMajorMax = even(d), screwMajorMin = even(d - even(crest)),
    screwPitchMax = screw, screwPitchMin = even(screw - even(wide)),
    screwMinorMax = even(d - 2 * height * p - clearance),
    screwMinorMin = even(d - 2 * height * p - clearance - 1.5 * wide),
    nutMajorMin = even(d + clearance), nutMajorMax = even(d + 2 * clearance),
    nutPitchMin = even(basic), nutPitchMax = even(even(basic) + even(wide)),
    nutMinorMin = even(d - 2 * height * p), nutMinorMax = even(even(d - 2 * height * p) + even(crest))
  )
}
classes <- list("2G" = c(0.008, 0.006, 0.030), "3G" = c(0.006, 0.0028, 0.014), "4G" = c(0.004, 0.002, 0.010))
acme.table <- function(height, class) {
  k <- classes[[class]]
  vapply(acme, function(s) record(acme.limits(s[1], s[2], height, k[1], k[2], k[3]), 4), "")
}

# ISO 2902: pitches of each diameter.
trapezoidal <- rbind(
  data.frame(d = 8, p = 1.5),
  expand.grid(d = c(9, 10), p = c(1.5, 2)), expand.grid(d = 11, p = c(2, 3)), expand.grid(d = c(12, 14), p = c(2, 3)),
  expand.grid(d = c(16, 18, 20), p = c(2, 4)), expand.grid(d = seq(22, 28, 2), p = c(3, 5, 8)),
  expand.grid(d = seq(30, 36, 2), p = c(3, 6, 10)), expand.grid(d = c(38, 40, 42), p = c(3, 7, 10)),
  expand.grid(d = 44, p = c(3, 7, 12)), expand.grid(d = seq(46, 52, 2), p = c(3, 8, 12)),
  expand.grid(d = c(55, 60), p = c(3, 9, 14)), expand.grid(d = seq(65, 80, 5), p = c(4, 10, 16)),
  expand.grid(d = c(85, 90, 95), p = c(4, 12, 18)), expand.grid(d = c(100, 110), p = c(4, 12, 20)),
  expand.grid(d = c(120, 130), p = c(6, 14, 22)), expand.grid(d = 140, p = c(6, 14, 24)),
  expand.grid(d = 150, p = c(6, 16, 24)), expand.grid(d = c(160, 170), p = c(6, 16, 28)),
  expand.grid(d = 180, p = c(8, 18, 28)), expand.grid(d = c(190, 200), p = c(8, 18, 32)),
  expand.grid(d = c(210, 220, 230), p = c(8, 20, 36)), expand.grid(d = 240, p = c(8, 22, 36)),
  expand.grid(d = c(250, 260), p = c(12, 22, 40)), expand.grid(d = c(270, 280), p = c(12, 24, 40)),
  expand.grid(d = c(290, 300), p = c(12, 24, 44))
)
clearance <- function(p) ifelse(p < 2, 0.15, ifelse(p <= 5, 0.25, ifelse(p <= 12, 0.5, 1)))
trapezoidal.table <- apply(trapezoidal, 1, function(s) {
  d <- s[["d"]]; p <- s[["p"]]; a <- clearance(p)
  record(list(d = d, p = p, pitch = d - p / 2, screwMinor = d - p - 2 * a, nutMajor = d + 2 * a, nutMinor = d - p), 3)
})

# ISO 68-1, whose height of the sharp triangle is 0.866025404 P.
sixty <- function(d, p) {
  h <- 0.866025404 * p
  list(pitch = d - 2 * 3 / 8 * h, nutMinor = d - 2 * 5 / 8 * h, screwMinor = d - 2 * 17 / 24 * h)
}
metric <- data.frame(
  d = c(3, 3.5, 4, 5, 6, 8, 8, 10, 10, 10, 12, 12, 12, 14, 14, 16, 16, 18, 18, 18, 20, 20, 20, 22, 22, 22, 24, 24, 27,
        27, 30, 30, 33, 33, 36, 36, 39, 39, 42, 42, 45, 45, 48, 48, 52, 52, 56, 56, 60, 60, 64, 64),
  p = c(0.5, 0.6, 0.7, 0.8, 1, 1.25, 1, 1.5, 1.25, 1, 1.75, 1.5, 1.25, 2, 1.5, 2, 1.5, 2.5, 2, 1.5, 2.5, 2, 1.5, 2.5,
        2, 1.5, 3, 2, 3, 2, 3.5, 2, 3.5, 2, 4, 3, 4, 3, 4.5, 3, 4.5, 3, 5, 3, 5, 4, 5.5, 4, 5.5, 4, 6, 4)
)
metric.table <- apply(metric, 1, function(s) record(c(as.list(s), sixty(s[["d"]], s[["p"]])), 3))
inches <- function(sizes, of) vapply(sizes, function(s) record(c(list(d = s[1], n = s[2]), of(s[1], 1 / s[2])), 4), "")
unified <- list(
  c(1/4, 20), c(5/16, 18), c(3/8, 16), c(7/16, 14), c(1/2, 13), c(9/16, 12), c(5/8, 11), c(3/4, 10), c(7/8, 9),
  c(1, 8), c(9/8, 7), c(5/4, 7), c(11/8, 6), c(3/2, 6), c(7/4, 5), c(2, 4.5), c(9/4, 4.5), c(5/2, 4), c(11/4, 4),
  c(3, 4), c(13/4, 4), c(7/2, 4), c(15/4, 4), c(4, 4),
  c(1/4, 28), c(5/16, 24), c(3/8, 24), c(7/16, 20), c(1/2, 20), c(9/16, 18), c(5/8, 18), c(3/4, 16), c(7/8, 14),
  c(1, 12), c(9/8, 12), c(5/4, 12), c(11/8, 12), c(3/2, 12)
)
whitworth <- list(
  c(1/4, 20), c(5/16, 18), c(3/8, 16), c(7/16, 14), c(1/2, 12), c(9/16, 12), c(5/8, 11), c(3/4, 10), c(7/8, 9),
  c(1, 8), c(9/8, 7), c(5/4, 7), c(3/2, 6), c(7/4, 5), c(2, 4.5), c(9/4, 4), c(5/2, 4), c(11/4, 3.5), c(3, 3.5),
  c(13/4, 3.25), c(7/2, 3.25), c(4, 3),
  c(1/4, 26), c(5/16, 22), c(3/8, 20), c(7/16, 18), c(1/2, 16), c(9/16, 16), c(5/8, 14), c(3/4, 12), c(7/8, 11),
  c(1, 10), c(9/8, 9), c(5/4, 9), c(11/8, 8), c(3/2, 8), c(7/4, 7), c(2, 7)
)
# BS 84: the sharp triangle of 55° is cot(27.5°)/2 high, a sixth of it is rounded off at crest and root.
fifty.five <- function(d, p) {
  depth <- 2 / 3 * p / (2 * tan(27.5 * pi / 180))
  list(pitch = d - depth, minor = d - 2 * depth)
}

# Wires: half angle in degrees, pitch, starts, pitch diameter, diameter of the wire, all in millimetres.
over.wires <- function(half, p, starts, e, w) {
  slope <- tan(half * pi / 180)
  round.by <- starts * p / (2 * pi)
  centre <- function(tilt, r, angle) {
    z <- p / 4 + (r - e / 2) * slope + round.by * angle
    away <- r * sin(angle) * sin(tilt) - z * cos(tilt)
    ifelse(abs(away) >= w / 2, -Inf, r * cos(angle) + sqrt(pmax(0, w^2 / 4 - away^2)))
  }
  farthest <- function(tilt) {
    best <- c(e / 2, 0)
    step <- c(p / 3, 0.6)
    for (k in 1:34) {
      r <- best[1] + step[1] * seq(-1, 1, length.out = 41)
      angle <- best[2] + step[2] * seq(-1, 1, length.out = 41)
      values <- outer(r, angle, function(a, b) centre(tilt, a, b))
      at <- arrayInd(which.max(values), dim(values))
      best <- c(r[at[1]], angle[at[2]])
      step <- step * 0.55
    }
    max(values)
  }
  lead <- atan(starts * p / (pi * e))
  2 * optimize(farthest, c(0.3 * lead, 1.7 * lead + 0.01), tol = 1e-9)$objective + w
}
wires <- list(
  c(15, 5, 1, 21.5, 2.6), c(15, 3, 1, 38.5, 1.55), c(15, 4, 1, 98, 2.1), c(15, 5, 2, 21.5, 2.6), c(15, 5, 3, 21.5, 2.7),
  c(15, 5, 4, 21.5, 2.6), c(15, 8, 1, 22, 4.2), c(14.5, 5.08, 1, 22.86, 2.6239), c(14.5, 6.35, 2, 34.925, 3.3),
  c(14.5, 12.7, 1, 69.85, 6.6), c(30, 2.5, 1, 18.376, 1.443), c(30, 2.5, 3, 18.376, 1.5), c(27.5, 3.175, 1, 23.367, 1.8)
)
wires.table <- vapply(wires, function(s) {
  record(list(half = s[1], pitch = s[2], starts = s[3], pitchDiameter = s[4], wire = s[5],
              overWires = over.wires(s[1], s[2], s[3], s[4], s[5])), 7)
}, "")

cat("{\n", paste(c(
  all.of("acme2G", acme.table(0.5, "2G")), all.of("acme3G", acme.table(0.5, "3G")),
  all.of("acme4G", acme.table(0.5, "4G")), all.of("stub2G", acme.table(0.3, "2G")),
  all.of("trapezoidal", trapezoidal.table), all.of("metric", metric.table),
  all.of("unified", inches(unified, sixty)), all.of("whitworth", inches(whitworth, fifty.five)),
  all.of("wires", wires.table)
), collapse = ",\n"), "\n}\n", sep = "")
