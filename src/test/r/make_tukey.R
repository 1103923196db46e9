source("reflib.R")
dfs<-c(1,2,2.5,3,4,5,6,8,10,12,15,20,24,30,40,60,120,Inf); ks<-2:8
pg<-expand.grid(q=c(.5,1,2,3,4,5,6,8),k=ks,df=dfs); pg$sf_hp<-mapply(function(q,k,df) ptukey_hp(q,k,df,FALSE),pg$q,pg$k,pg$df); pg$sf_R<-ptukey(pg$q,pg$k,pg$df,lower.tail=FALSE); pg$abs_diff<-abs(pg$sf_hp-pg$sf_R)
qg<-expand.grid(p=c(.90,.95,.99),k=ks,df=dfs[dfs>1]); qg$q_hp<-mapply(qtukey_hp,qg$p,qg$k,qg$df); qg$q_R<-qtukey(qg$p,qg$k,qg$df); qg$abs_diff<-abs(qg$q_hp-qg$q_R)
pg$df<-ifelse(is.infinite(pg$df),"Inf",as.character(pg$df));qg$df<-ifelse(is.infinite(qg$df),"Inf",as.character(qg$df))
wjson(list(note="sf = P(Q>q). *_R = stats::ptukey/qtukey (R 4.2.2). *_hp = independent composite Gauss-Legendre quadrature (reflib.R ptukey_hp), k=2 checked against 2*pt(-q/sqrt(2),df) to <1e-14. Where they differ trust *_hp.",
 identity="k=2: P(Q>q)=2*pt(-q/sqrt(2),df)",ptukey=pg,qtukey=qg),"../resources/gripwright/statistics/reference/reference_tukey.json")
for(d in unique(pg$df)) cat("df",d,"max|ptukey err|",signif(max(pg$abs_diff[pg$df==d]),2)," max|qtukey err|",if(any(qg$df==d)) signif(max(qg$abs_diff[qg$df==d]),2) else NA,"\n")
k2<-pg[pg$k==2,]; cat("k=2 identity max err of hp:",max(abs(k2$sf_hp-2*pt(-k2$q/sqrt(2),as.numeric(k2$df)))),"\n")
