# Hidden Markov models with misclassified states: package msm. Reads set,spell,day,said on standard input, days on which dry,
# clammy or wet (1 to 3) was said after a session (day 0) on dry skin. For each set of rows and each pair of shares of errors
# (clammy said on dry skin; dry said on clammy skin), writes the log likelihood with those shares held and the chances of
# dampness a day, by the time since the session, estimated.
suppressMessages(library(msm))
rows <- read.csv(file("stdin"))
shares <- list(c(0.02, 0.10), c(0.06, 0.10), c(0.01, 0.05), c(0.02, 0.25))
for (set in unique(rows$set)) {
    d <- rows[rows$set == set, ]
    found <- sapply(shares, function(s) {
        wrong <- rbind(c(1 - s[1], s[1] * 0.75, s[1] * 0.25),
                       c(s[2], (1 - s[2]) * 0.83, (1 - s[2]) * 0.17),
                       c(0.02, 0.13, 0.85))
        moves <- rbind(c(0, 0.1, 0), c(0, 0, -log(0.75)), c(0, 0, 0))
        free <- msm(said ~ day, subject = spell, data = d, qmatrix = moves, ematrix = wrong, initprobs = c(1, 0, 0),
                    obstrue = d$day == 0, pci = c(5, 8), fixedpars = c(2, 4, 6, 7:12),
                    control = list(fnscale = 1000, maxit = 200))
        -free$minus2loglik / 2
    })
    cat(format(found, digits = 15), sep = ",")
    cat("\n")
}
