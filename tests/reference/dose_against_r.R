# Accelerated failure time with a dose: survreg of package survival. Reads set,left,right,dose on standard input, right
# empty where it was still dry. Writes for each set and family: location, log scale and log likelihood with the power
# held at 1/2 (an offset), then the power estimated and the log likelihood there.
library(survival)
rows <- read.csv(file("stdin"))
for (set in unique(rows$set)) for (family in c("weibull", "lognormal")) {
    d <- rows[rows$set == set, ]
    d$left[d$left == 0] <- NA
    times <- with(d, Surv(left, right, type = "interval2"))
    held <- survreg(times ~ offset(0.5 * log(d$dose)), dist = family)
    free <- survreg(times ~ log(d$dose), dist = family)
    cat(format(c(coef(held)[[1]], log(held$scale), held$loglik[2], coef(free)[[2]], free$loglik[2]), digits = 15), sep = ",")
    cat("\n")
}
