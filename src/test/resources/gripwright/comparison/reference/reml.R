# REML with drift and stints for rows.csv (the rows of session.json in the order of play; NA where a shot isn't scored or the
# reading is missing; t the swing's place). R 4.2.2, lme4, lmerTest, pbkrtest: Rscript reml.R > reml.csv
suppressMessages({library(lmerTest); library(pbkrtest)})
x <- read.csv("rows.csv"); x$k <- factor(x$k); x$run <- factor(x$run)
cat("metric,of,against,estimate,stintSd,residualSd,satterthwaiteDf,satterthwaiteP,kenwardRogerDf,kenwardRogerP\n")
for (m in names(x)[-(1:3)]) {
  d <- x[!is.na(x[[m]]), ]; d$y <- d[[m]]
  fit <- suppressMessages(lmer(y ~ 0 + k + t + (1 | run), d, control = lmerControl(optimizer = "bobyqa", optCtrl = list(rhoend = 1e-10))))
  if (isSingular(fit)) next
  v <- as.data.frame(VarCorr(fit))$sdcor; b <- fixef(fit); levels <- levels(d$k)
  for (i in seq_along(levels)) for (j in seq_len(i - 1)) {
    L <- setNames(rep(0, length(b)), names(b)); L[i] <- 1; L[j] <- -1
    s <- contest(fit, L, joint = FALSE); q <- contest(fit, L, joint = FALSE, ddf = "Kenward-Roger")
    cat(sprintf("%s,%s,%s,%.10g,%.10g,%.10g,%.10g,%.10g,%.10g,%.10g\n", m, levels[i], levels[j], sum(L * b), v[1], v[2],
                s[["df"]], s[["Pr(>|t|)"]], q[["df"]], q[["Pr(>|t|)"]]))
  }
}
