# Have the spells of a person become shorter? A permutation test that knows no forecast: reads set,days on standard input,
# in the order lived. The statistic is the greatest standardized difference of the mean logarithm between the spells
# after a change point and those before it. Writes for each set: the difference at that point (after minus before), the
# number of spells before it, and the share of 2000 orders drawn at random whose statistic is as great.
set.seed(24)
rows <- read.csv(file("stdin"))
greatest <- function(x) {
    n <- length(x)
    at <- 5:(n - 3)
    before <- cumsum(x)[at - 1] / (at - 1)
    after <- (sum(x) - cumsum(x)[at - 1]) / (n - at + 1)
    z <- (before - after) / sqrt(1 / (at - 1) + 1 / (n - at + 1))
    best <- which.max(z)
    c(z[best], after[best] - before[best], at[best] - 1)
}
for (set in unique(rows$set)) {
    x <- log(rows$days[rows$set == set])
    seen <- greatest(x)
    drawn <- replicate(2000, greatest(sample(x))[1])
    cat(format(c(seen[2], seen[3], mean(drawn >= seen[1])), digits = 15), sep = ",")
    cat("\n")
}
