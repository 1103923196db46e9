source("reflib.R"); options(warn=1)
D<-"../resources/gripwright/statistics/reference/data/"; P<-"../resources/gripwright/statistics/reference/"
w<-function(x,f) write.csv(x,paste0(D,f),row.names=FALSE,quote=FALSE)
num<-function(x) sprintf("%.15g",x)
data(Machines,Rail,Oats,ergoStool,package="nlme")
w(PlantGrowth,"plantgrowth.csv");w(InsectSprays,"insectsprays.csv");w(warpbreaks,"warpbreaks.csv");w(chickwts,"chickwts.csv");w(iris,"iris.csv");w(morley,"morley.csv");w(sleep,"sleep_student1908.csv")
w(Dyestuff,"dyestuff.csv");w(Dyestuff2,"dyestuff2.csv");w(Penicillin,"penicillin.csv");w(sleepstudy,"sleepstudy.csv");w(cake,"cake.csv")
w(data.frame(Machines)[,c("Worker","Machine","score")],"machines.csv");w(data.frame(Rail),"rail.csv");w(data.frame(Oats),"oats.csv");w(data.frame(ergoStool),"ergostool.csv")
w(data.frame(month=as.integer(cycle(nottem)),temp=as.numeric(nottem)),"nottem.csv")
w(mtcars[,c("mpg","hp","wt","cyl")],"mtcars_subset.csv")

## ---- one-way family
ow<-list(plantgrowth=list(PlantGrowth$weight,PlantGrowth$group),insectsprays=list(InsectSprays$count,InsectSprays$spray),chickwts=list(chickwts$weight,chickwts$feed),
 warpbreaks_tension=list(warpbreaks$breaks,warpbreaks$tension),iris_sepal_width=list(iris$Sepal.Width,iris$Species),sleep=list(sleep$extra,sleep$group),morley=list(morley$Speed,factor(morley$Expt)))
map<-list(plantgrowth="plantgrowth.csv weight~group",insectsprays="insectsprays.csv count~spray",chickwts="chickwts.csv weight~feed",warpbreaks_tension="warpbreaks.csv breaks~tension (wool ignored)",iris_sepal_width="iris.csv Sepal.Width~Species",sleep="sleep_student1908.csv extra~group (unpaired)",morley="morley.csv Speed~Expt")
one<-lapply(names(ow),function(n){y<-ow[[n]][[1]];g<-ow[[n]][[2]]; gh<-tryCatch(as.data.frame(rstatix::games_howell_test(data.frame(y=y,g=factor(g)),y~g)),error=function(e) NULL)
 list(data=map[[n]],groups=descr(y,g),omnibus=omnibus(y,g),two_sample=welch_pairs(y,g),games_howell=gh_pairs(y,g),rstatix_games_howell_p=if(!is.null(gh)) gh$p.adj else NULL,tukey_kramer=tk_pairs(y,g),
  modified_z=list(per_group=lapply(split(y,factor(g)),function(v) as.numeric(modz(v))),whole_sample_flagged_3.5=which(abs(modz(y))>3.5)))}); names(one)<-names(ow)
wjson(list(functions=list(descriptive="base::mean, stats::sd, stats::median",two_sample=paste("stats::t.test",VER("stats")),anova=paste("stats::anova(lm)",VER("stats")),welch_anova=paste("stats::oneway.test",VER("stats")),
 brown_forsythe_variances=paste("car::leveneTest(center=median)",VER("car")),bartlett=paste("stats::bartlett.test",VER("stats")),brown_forsythe_means="formula of Brown & Forsythe (1974) Technometrics 16:129, coded in reflib.R omnibus(); stats::pf",
 tukey_kramer=paste("stats::TukeyHSD",VER("stats"),"and p_hp from independent quadrature"),games_howell=paste("formula of Games & Howell (1976); p_ptukey=stats::ptukey, p_hp=independent quadrature; cross-check rstatix::games_howell_test",VER("rstatix"),"(rounds p to 3 significant digits)"),
 modified_z="0.6745*(x-median)/MAD with raw MAD (Iglewicz & Hoaglin 1993), coded in reflib.R modz()"),results=one),paste0(P,"reference_oneway.json"))

## ---- mixed models with one random intercept
mx<-list(
 dyestuff=list("dyestuff.csv: y=Yield, no configuration, stint=Batch",Dyestuff$Yield,rep("mean",30),Dyestuff$Batch,NULL),
 dyestuff2=list("dyestuff2.csv: y=Yield, stint=Batch (REML stint variance is exactly 0)",Dyestuff2$Yield,rep("mean",30),Dyestuff2$Batch,NULL),
 rail=list("rail.csv: y=travel, stint=Rail",Rail$travel,rep("mean",18),Rail$Rail,NULL),
 ergostool=list("ergostool.csv: y=effort, configuration=Type, stint=Subject (crossed)",ergoStool$effort,ergoStool$Type,ergoStool$Subject,NULL),
 penicillin=list("penicillin.csv: y=diameter, configuration=sample, stint=plate (crossed)",Penicillin$diameter,Penicillin$sample,Penicillin$plate,NULL),
 machines_worker=list("machines.csv: y=score, configuration=Machine, stint=Worker (crossed)",Machines$score,factor(Machines$Machine),factor(Machines$Worker,ordered=FALSE),NULL),
 machines_nested=list("machines.csv: y=score, configuration=Machine, stint=Worker:Machine (stints nested in configurations, 3x6x3: closest analogue of a session)",Machines$score,factor(Machines$Machine),interaction(Machines$Worker,Machines$Machine,drop=TRUE),NULL),
 cake_nested=list("cake.csv: y=angle, configuration=recipe, stint=recipe:replicate, covariate=temp centred (temp plays the part of drift)",cake$angle,cake$recipe,interaction(cake$recipe,cake$replicate,drop=TRUE),cake$temp),
 sleepstudy_days=list("sleepstudy.csv: y=Reaction, no configuration, stint=Subject, covariate=Days centred (so the mean is at Days=4.5)",sleepstudy$Reaction,rep("mean",180),sleepstudy$Subject,sleepstudy$Days),
 warpbreaks_nested=list("warpbreaks.csv: y=breaks, configuration=tension, stint=wool:tension (boundary/small: 6 stints)",warpbreaks$breaks,warpbreaks$tension,interaction(warpbreaks$wool,warpbreaks$tension),NULL))
mixed<-lapply(mx,function(a){r<-mixed_ref(a[[2]],factor(as.character(a[[3]]),levels=unique(as.character(a[[3]]))),as.character(a[[4]]),a[[5]]); c(list(data=a[[1]]),r)})
# nlme::lme as third implementation
lmec<-nlme::lmeControl(opt="nlminb",msTol=1e-14,tolerance=1e-12,returnObject=TRUE,niterEM=200,msMaxIter=500)
for(n in names(mx)){a<-mx[[n]];d<-data.frame(y=a[[2]],g=factor(as.character(a[[3]])),s=factor(as.character(a[[4]])));if(!is.null(a[[5]]))d$t<-a[[5]]-mean(a[[5]])
 fo<-if(nlevels(d$g)>1) "y~0+g" else "y~1"; if(!is.null(a[[5]])) fo<-paste0(fo,"+t"); m<-tryCatch(nlme::lme(as.formula(fo),random=~1|s,data=d,control=lmec),error=function(e) NULL)
 if(!is.null(m)){v<-nlme::VarCorr(m);mixed[[n]]$nlme_lme<-list(fn=paste("nlme::lme",VER("nlme")),sigma_b=as.numeric(v[1,2]),sigma=m$sigma,sigma_b_full=m$sigma*exp(as.numeric(coef(m$modelStruct$reStruct))[1])) }}
em<-function(f,d){m<-lmerTest::lmer(f,d,control=TIGHT); e<-emmeans::emmeans(m,pairwise~g,lmer.df="kenward-roger"); list(means=as.data.frame(e$emmeans),contrasts_tukey=as.data.frame(e$contrasts))}
mixed$machines_nested$emmeans_kr_tukey<-em(y~g+(1|s),data.frame(y=Machines$score,g=factor(Machines$Machine),s=interaction(Machines$Worker,Machines$Machine)))
mixed$ergostool$emmeans_kr_tukey<-em(y~g+(1|s),data.frame(y=ergoStool$effort,g=ergoStool$Type,s=ergoStool$Subject))
wjson(list(functions=list(lmer=VER("lme4"),satterthwaite=VER("lmerTest"),kenward_roger=VER("pbkrtest"),emmeans=VER("emmeans"),nlme=VER("nlme"),note="'refined' = analytic REML root, >=10 digits; 'lmer' = the packages, good to about 7 digits because an optimiser on the criterion cannot do better; max_rel_diff compares them"),results=mixed),paste0(P,"reference_mixed.json"))
for(n in names(mixed)) cat(sprintf("%-18s sb %.10g s %.10g reml %.10g  n max %d | maxrel %s\n",n,mixed[[n]]$refined$sigma_b,mixed[[n]]$refined$sigma,mixed[[n]]$refined$reml_criterion,mixed[[n]]$refined$n_interior_maxima,paste(signif(unlist(mixed[[n]]$max_rel_diff),2),collapse=" ")),sprintf("   lme %.8g %.8g\n",mixed[[n]]$nlme_lme$sigma_b_full,mixed[[n]]$nlme_lme$sigma))

## ---- bivariate
bi<-list(ellipse_sepal=lapply(split(iris,iris$Species),function(d) ellipse_ref(d$Sepal.Length,d$Sepal.Width)),ellipse_petal=lapply(split(iris,iris$Species),function(d) ellipse_ref(d$Petal.Length,d$Petal.Width)),
 hotelling_sepal=hotelling_pairs(iris[,1:2],iris$Species),hotelling_petal=hotelling_pairs(iris[,3:4],iris$Species),hotelling_mtcars_4_8cyl=hotelling_pairs(mtcars[mtcars$cyl!=6,c("mpg","wt")],mtcars$cyl[mtcars$cyl!=6]),ellipse_mtcars=lapply(split(mtcars,mtcars$cyl),function(d) ellipse_ref(d$mpg,d$wt)))
wjson(list(functions=list(ellipse="base::eigen(stats::cov) and stats::qchisq / qf; angle = major axis from the x axis towards y, degrees in (-90,90]",hotelling="closed form in reflib.R; manova_check = stats::manova + summary(test='Hotelling-Lawley'), exact for two groups",columns="x first, y second: Sepal.Length,Sepal.Width / Petal.Length,Petal.Width / mpg,wt"),results=bi),paste0(P,"reference_bivariate.json"))

## ---- quadratic response
qd<-list(oats=quad_ref(Oats$nitro,Oats$yield),nottem=quad_ref(as.integer(cycle(nottem)),as.numeric(nottem)),cake_temp=quad_ref(cake$temp,cake$angle),mtcars_hp=quad_ref(mtcars$hp,mtcars$mpg))
set.seed(20240611); boot<-function(x,y,B=40000){X<-cbind(1,x-mean(x),(x-mean(x))^2);Q<-qr(X);n<-length(y);f<-qr.fitted(Q,y);e<-y-f;e<-e*sqrt(n/(n-3)); v<-numeric(B)
 for(b in 1:B){ cc<-qr.coef(Q,f+sample(e,n,TRUE)); v[b]<- -cc[2]/(2*cc[3])}; list(kind="residual bootstrap, residuals scaled by sqrt(n/(n-p)), percentile, B=40000, seed 20240611 (R Mersenne-Twister, sample.kind Rejection); reproducible only in R, compare to about 2-3 digits",lo=unname(quantile(v,.025)+mean(x)),hi=unname(quantile(v,.975)+mean(x)),median=median(v)+mean(x))}
qd$oats$bootstrap<-boot(Oats$nitro,Oats$yield);qd$nottem$bootstrap<-boot(as.integer(cycle(nottem)),as.numeric(nottem))
wjson(list(functions="stats::lm (R 4.2.2); Fieller interval from coefficients and vcov, reflib.R quad_ref()",data=list(oats="oats.csv yield~nitro (blocks ignored)",nottem="nottem.csv temp~month",cake_temp="cake.csv angle~temp (Fieller unbounded)",mtcars_hp="mtcars_subset.csv mpg~hp"),results=qd),paste0(P,"reference_quadratic.json"))
for(n in names(qd)) cat(n,qd[[n]]$vertex,qd[[n]]$fieller$type,unlist(qd[[n]]$fieller[-1]),qd[[n]]$delta_lo,qd[[n]]$delta_hi,unlist(qd[[n]]$bootstrap[-1]),"\n")

## ---- distributions
g<-expand.grid(df=c(1,1.5,2,2.37,3,5,7.8,10,20,50.5,200,1e4),t=c(.1,.5,1,2,3,6,20)); pt_<-data.frame(df=g$df,t=g$t,cdf=pt(g$t,g$df),sf=pt(g$t,g$df,lower.tail=FALSE))
g2<-expand.grid(df=c(1,1.5,2,2.37,3,5,7.8,10,20,50.5,200,1e4),p=c(.6,.9,.95,.975,.995,.9995)); qt_<-data.frame(df=g2$df,p=g2$p,q=qt(g2$p,g2$df))
g3<-expand.grid(df1=c(1,2,3,7),df2=c(2,3.7,8,20,120),F=c(.2,1,2.5,5,15)); pf_<-data.frame(g3,sf=pf(g3$F,g3$df1,g3$df2,lower.tail=FALSE)); g4<-expand.grid(df1=c(1,2,3,7),df2=c(2,3.7,8,20,120),p=c(.9,.95,.99)); qf_<-data.frame(g4,q=qf(g4$p,g4$df1,g4$df2))
g5<-expand.grid(df=c(1,2,3,5.5,10),x=c(.1,1,3,5.991,20)); pc_<-data.frame(g5,sf=pchisq(g5$x,g5$df,lower.tail=FALSE)); zz<-c(-8,-5,-3,-1.96,-.5,0,.1,1,2.5,4,6)
wjson(list(source="stats::pt, qt, pf, qf, pchisq, qchisq, pnorm, qnorm, R 4.2.2",pt=pt_,qt=qt_,pf=pf_,qf=qf_,pchisq=pc_,qchisq=data.frame(p=c(.5,.9,.95,.99),df2=qchisq(c(.5,.9,.95,.99),2)),pnorm=data.frame(z=zz,cdf=pnorm(zz),sf=pnorm(zz,lower.tail=FALSE))),paste0(P,"reference_distributions.json"))
