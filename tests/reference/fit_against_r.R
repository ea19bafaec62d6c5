# Fits every data set on standard input (set,left,right; an empty right is right-censored) with package survival.
# Writes lines: set,family,location,spread,se(location),se(log spread),log likelihood; and set,survivor,time,value.
suppressPackageStartupMessages(library(survival))
data <- read.csv(file("stdin"), colClasses = c("character", "numeric", "numeric"))
control <- survreg.control(rel.tolerance = 1e-12, maxiter = 500)
for (set in unique(data$set)) {
    d <- data[data$set == set, ]
    left <- ifelse(d$left == 0, NA, d$left)
    times <- Surv(left, d$right, type = "interval2")
    for (family in c("weibull", "lognormal")) {
        fit <- survreg(times ~ 1, dist = family, control = control)
        se <- sqrt(diag(vcov(fit)))
        cat(set, family, paste(format(c(coef(fit), fit$scale, se, fit$loglik[2]), digits = 15), collapse = ","), sep = ",")
        cat("\n")
    }
    seen <- is.na(d$right) | d$right == d$left
    curve <- if (all(seen)) survfit(Surv(d$left, !is.na(d$right)) ~ 1) else survfit(times ~ 1)
    for (i in seq_along(curve$time))
        cat(set, "survivor", format(curve$time[i], digits = 15), paste0(format(curve$surv[i], digits = 15), "\n"), sep = ",")
}
