# How long a shorter session holds in parts of the usual one: survreg of package survival with one covariate, Weibull.
# Reads set,left,right,shorter on standard input, right empty where it was still dry. Writes for each set: logarithm of
# the ratio, log likelihood there, limits of 95 % by the likelihood ratio (survreg with the ratio held, as an offset),
# median after the usual session, and the signed root of the likelihood ratio against 1.
suppressPackageStartupMessages(library(survival))
control <- survreg.control(rel.tolerance = 1e-12, maxiter = 500)
rows <- read.csv(file("stdin"))
for (set in unique(rows$set)) {
    d <- rows[rows$set == set, ]
    d$left[d$left == 0] <- NA
    times <- with(d, Surv(left, right, type = "interval2"))
    best <- survreg(times ~ d$shorter, dist = "weibull", control = control)
    held <- function(x) survreg(times ~ offset(x * d$shorter), dist = "weibull", control = control)$loglik[2]
    ratio <- coef(best)[[2]]
    level <- best$loglik[2] - qchisq(0.95, 1) / 2
    end <- function(to) uniroot(function(x) held(x) - level, sort(c(ratio, to)), tol = 1e-8)$root
    root <- sign(ratio) * sqrt(max(0, 2 * (best$loglik[2] - held(0))))
    median <- exp(coef(best)[[1]]) * log(2)^best$scale
    cat(format(c(ratio, best$loglik[2], end(ratio - 2), end(ratio + 2), median, root), digits = 15), sep = ",")
    cat("\n")
}
