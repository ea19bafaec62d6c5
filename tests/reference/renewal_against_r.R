# Age replacement for Weibull times: reads shape,scale,damp,age on standard input. Writes for each row the least cost a
# day over all ages and its age (optimize), and the cost at the whole number of days given (integrate).
rows <- read.csv(file("stdin"))
for (i in seq_len(nrow(rows))) {
    r <- rows[i, ]
    lasts <- function(t) pweibull(t, r$shape, r$scale, lower.tail = FALSE)
    cost <- function(t) (1 + r$damp * pweibull(t, r$shape, r$scale)) / integrate(lasts, 0, t, rel.tol = 1e-10)$value
    # Far beyond the scale the cost is flat, where optimize alone loses its way.
    ages <- seq(0.5, 6 * r$scale, length.out = 600)
    near <- which.min(sapply(ages, cost))
    best <- optimize(cost, ages[c(max(1, near - 1), min(length(ages), near + 1))], tol = 1e-8)
    whole <- sapply(c(max(1, r$age - 1), r$age, r$age + 1), cost)
    cat(format(c(best$minimum, best$objective, whole), digits = 15), sep = ",")
    cat("\n")
}
