"""Works the figures of session.json out a second time, from the formulas of docs/statistics.md, docs/statistics-classical.md and
docs/comparison.md, by other means than the program: dense covariance matrices in their eigenvectors, midpoint rules of 4,000 values of
tau (60 x 60 of tau and omega for choosing), SciPy's distributions, and plain Monte Carlo where the program uses quasi-random draws.
Run with Python 3.11, NumPy 2.4, SciPy 1.17: python3 reference.py > expected.json"""
import json, math, os
import numpy as np
from scipy import interpolate, optimize, special, stats

HERE = os.path.dirname(os.path.abspath(__file__))
SESSION = json.load(open(os.path.join(HERE, 'session.json')))['session']
TEST, GOAL = SESSION['tests'][0], SESSION['goal']
LABELS = [c['label'] for c in TEST['configurations']]
IDS = [c['id'] for c in TEST['configurations']]
# Smallest differences of the catalogue, internal units (m/s, degrees, rpm, m), and which way each metric serves here.
DEFAULTS = {'clubSpeed': 0.45, 'faceAngle': 0.7, 'spinRate': 250, 'offline': 2}
SERVES = {'clubSpeed': ('higher', None), 'faceAngle': ('near', -1.0), 'spinRate': ('lower', None), 'offline': ('near', 0.0),
          'carry': ('near', 139.0)}


def play():
    """Rows in the order of play: warm-up, settling and set-aside shots count as swings and are not scored; stints in a row with
    one configuration and one club, without a change between, are one."""
    rows, run, swing, before = [], -1, 0, None
    for s in TEST['stints']:
        if before is None or s['changedBefore'] or s['configurationId'] != before['configurationId'] \
                or s['physicalClubId'] != before['physicalClubId']:
            run += 1
        before = s
        for i, x in enumerate(s['shots']):
            swing += 1
            counts = s['kind'] == 'scored' and i >= s['settlingSwings']
            rows.append(dict(k=IDS.index(s['configurationId']), run=run, swing=swing, counts=counts,
                             aside=bool(x['setAsideReason']), v=x['readings']['values']))
    return rows


ROWS = play()
K = len(IDS)
G = np.array([r['k'] for r in ROWS])
RUN = np.array([r['run'] for r in ROWS])
SWING = np.array([r['swing'] for r in ROWS], float)
T = (SWING - SWING.mean()) / (SWING.max() - SWING.min())


def column(metric):
    return np.array([r['v'].get(metric, np.nan) if r['counts'] and not r['aside'] else np.nan for r in ROWS], float)


def design(metric):
    y = column(metric)
    ok = ~np.isnan(y)
    g, t, run, y = G[ok], T[ok], RUN[ok], y[ok]
    X = np.zeros((len(y), K + 1))
    X[np.arange(len(y)), g] = 1
    X[:, K] = t
    w, V = np.linalg.eigh((run[:, None] == run[None, :]).astype(float))
    return V.T @ X, V.T @ y, np.maximum(w, 0)


def solve(X, y, w, tau, P):
    v = 1 + tau * tau * w
    A = X.T @ (X / v[:, None]) + P
    C = np.linalg.inv(A)
    b = C @ (X.T @ (y / v))
    r = y - X @ b
    return b, C, r @ (r / v) + b @ P @ b, -.5 * np.log(v).sum() - .5 * np.linalg.slogdet(A)[1]


class Claims:
    """Flat means, drift ~ N(0, sigma^2), tau ~ half-normal(0.5)."""

    def __init__(self, metric, nodes=4000):
        X, y, w = design(metric)
        P = np.zeros((K + 1, K + 1))
        P[K, K] = 1
        self.nu = len(y) - K - 1 + 1
        u = (np.arange(nodes) + .5) / nodes
        out, log = [], []
        for tau, jac in zip(.5 * u / (1 - u), .5 / (1 - u) ** 2):
            b, C, S, ll = solve(X, y, w, tau, P)
            out.append((tau, b, C, S))
            log.append(ll - self.nu / 2 * math.log(S) - .5 * (tau / .5) ** 2 + math.log(jac))
        self.w = np.exp(np.array(log) - max(log))
        self.w /= self.w.sum()
        self.tau = np.array([o[0] for o in out])
        self.b = np.array([o[1] for o in out])
        self.C = np.array([o[2] for o in out])
        self.S = np.array([o[3] for o in out])

    def sigma(self):
        return float(self.w @ np.sqrt(self.S / 2)) * math.exp(special.gammaln((self.nu - 1) / 2) - special.gammaln(self.nu / 2))

    def stint_sd(self):
        return float((self.w * self.tau) @ np.sqrt(self.S / 2)) \
            * math.exp(special.gammaln((self.nu - 1) / 2) - special.gammaln(self.nu / 2))

    def contrast(self, plus, minus=None):
        c = np.zeros(K + 1)
        c[plus] = 1
        if minus is not None:
            c[minus] = -1
        return self.b @ c, np.sqrt(self.S / self.nu * np.einsum('i,nij,j->n', c, self.C, c))

    def above(self, m, se, d):
        return float(self.w @ stats.t.cdf((m - d) / se, self.nu))

    def quantile(self, m, se, p):
        f = lambda x: float(self.w @ stats.t.cdf((x - m) / se, self.nu)) - p
        return optimize.brentq(f, m.min() - 60 * se.max(), m.max() + 60 * se.max(), xtol=1e-12)

    def adjusted(self, m, se, d, sign):
        """1 - Q/2 or Q/2, Q the studentized range by SciPy at 601 places and a cubic spline between (error below 1e-8)."""
        if not hasattr(self, 'range'):
            q = np.linspace(0, 30, 601)
            self.range = interpolate.CubicSpline(q, stats.studentized_range.sf(q, K, self.nu))
        z = sign * (m - d) / se
        q = self.range(np.minimum(30, math.sqrt(2) * abs(z)))
        return float(self.w @ np.where(z > 0, 1 - q / 2, q / 2))

    def draws(self, n, seed):
        rng = np.random.default_rng(seed)
        count = rng.multinomial(n, self.w)
        parts = [self.b[i] + np.sqrt(self.nu / rng.chisquare(self.nu, count[i]))[:, None]
                 * rng.multivariate_normal(np.zeros(K + 1), self.C[i] * self.S[i] / self.nu, count[i], method='cholesky')
                 for i in np.nonzero(count)[0]]
        return np.concatenate(parts)[:, :K]

    def covariance(self):
        """Of the means on the scale of their t, from the variances of means and differences."""
        def var(m, se):
            centre = self.w @ m
            return float(self.w @ (se ** 2 * self.nu / (self.nu - 2) + (m - centre) ** 2)) * (self.nu - 2) / self.nu
        M = np.diag([var(*self.contrast(k)) for k in range(K)])
        for i in range(K):
            for j in range(i):
                M[i, j] = M[j, i] = (M[i, i] + M[j, j] - var(*self.contrast(i, j))) / 2
        return M


def choosing(metric, n=400000, seed=7):
    """Exchangeable means mu ~ N(m, omega^2 sigma^2), omega ~ half-normal(1), m flat."""
    X, y, w = design(metric)
    u = (np.arange(60) + .5) / 60
    nu = len(y) - 1
    H = np.eye(K) - 1 / K
    log, out = [], []
    for tau, j1 in zip(.5 * u / (1 - u), .5 / (1 - u) ** 2):
        for om, j2 in zip(u / (1 - u), 1 / (1 - u) ** 2):
            P = np.zeros((K + 1, K + 1))
            P[:K, :K] = H / om ** 2
            P[K, K] = 1
            b, C, S, ll = solve(X, y, w, tau, P)
            log.append(ll - (K - 1) * math.log(om) - nu / 2 * math.log(S) - 2 * tau ** 2 - .5 * om ** 2 + math.log(j1 * j2))
            out.append((b, C * S / nu))
    W = np.exp(np.array(log) - max(log))
    rng = np.random.default_rng(seed)
    count = rng.multinomial(n, W / W.sum())
    mu = np.concatenate([out[i][0] + np.sqrt(nu / rng.chisquare(nu, count[i]))[:, None]
                         * rng.multivariate_normal(np.zeros(K + 1), out[i][1], count[i], method='cholesky')
                         for i in np.nonzero(count)[0]])
    rng.shuffle(mu)
    return mu[:, :K]


def serves(metric, mu):
    way, target = SERVES[metric]
    return mu if way == 'higher' else -mu if way == 'lower' else -abs(mu - target)


def metric(name):
    e = Claims(name)
    d = max(DEFAULTS[name], .25 * e.sigma())
    drift = np.zeros(K + 1)
    drift[K] = 1
    m, se = e.b @ drift, np.sqrt(e.S / e.nu * e.C[:, K, K])
    tree = dict(metric=name, smallestDifference=d, residualSd=e.sigma(), stintSd=e.stint_sd(), drift=float(e.w @ m),
                driftInterval=[e.quantile(m, se, .025), e.quantile(m, se, .975)],
                driftPerShot=float(e.w @ m) / (SWING.max() - SWING.min()), means=[], differences=[])
    for k in range(K):
        m, se = e.contrast(k)
        tree['means'].append(dict(label=LABELS[k], value=float(e.w @ m), interval=[e.quantile(m, se, .025), e.quantile(m, se, .975)]))
    mu = serves(name, e.draws(400000, 3)) if SERVES[name][0] == 'near' else None
    if mu is not None:
        pairs = np.stack([mu[:, a] - mu[:, b] for a in range(K) for b in range(a)])
        largest = (abs(pairs - pairs.mean(1, keepdims=True)) / pairs.std(1, keepdims=True)).max(0)

    def simultaneous(beyond, width):
        half = (largest >= abs(beyond) / width).mean() / 2
        return 1 - half if beyond > 0 else half
    for a in range(K):
        for b in range(K):
            if a == b:
                continue
            m, se = e.contrast(a, b)
            q = dict(of=LABELS[a], against=LABELS[b], estimate=float(e.w @ m),
                     interval=[e.quantile(m, se, .025), e.quantile(m, se, .975)], higher=e.above(m, se, 0))
            if mu is None:
                s = 1 if SERVES[name][0] == 'higher' else -1
                up, down = e.above(m, se, d), 1 - e.above(m, se, -d)
                q.update(gain=s * q['estimate'], positive=q['higher'] if s > 0 else 1 - q['higher'], matters=up if s > 0 else down,
                         harms=down if s > 0 else up, same=1 - up - down,
                         mattersAdjusted=e.adjusted(m, se, s * d, s), harmsAdjusted=e.adjusted(m, se, -s * d, -s))
            else:
                gain = mu[:, a] - mu[:, b]
                q.update(gain=gain.mean(), gainSd=gain.std(), positive=(gain > 0).mean(), matters=(gain > d).mean(),
                         harms=(gain < -d).mean(), same=(abs(gain) < d).mean(),
                         mattersAdjusted=simultaneous(gain.mean() - d, gain.std()),
                         harmsAdjusted=simultaneous(-d - gain.mean(), gain.std()))
            tree['differences'].append(q)
    tree['size'] = size(e)
    return tree


def size(e):
    """Line and curve of the means over the diameter at 2 in, mass left out; lack of fit by Paule and Mandel."""
    x = np.array([[f['diameterMm'] for f in c['fittedDiameters'] if f['positionMm'] == 50.8][0] for c in TEST['configurations']])
    x = np.round(x / .05) * .05
    mean, C = e.w @ e.b[:, :K], e.covariance()
    tree = {}
    for name, degree in (('slope', 1), ('curvature', 2)):
        X = np.vander(x - x.mean(), degree + 1, increasing=True)
        rest = K - degree - 1

        def fit(extra):
            V = np.linalg.inv(C + extra * np.eye(K))
            cov = np.linalg.inv(X.T @ V @ X)
            b = cov @ X.T @ V @ mean
            r = mean - X @ b
            return b, cov, r @ V @ r
        extra = 0 if fit(0)[2] <= rest else optimize.brentq(lambda z: fit(z)[2] - rest, 0, 1e4 * np.trace(C), xtol=1e-14)
        b, cov, _ = fit(extra)
        c = np.trace(C) / K
        df = e.nu if extra == 0 else (c + extra) ** 2 / (c * c / e.nu + extra ** 2 / rest)
        factor = math.factorial(degree)
        h = stats.t.ppf(.975, df) * math.sqrt(cov[degree, degree])
        tree[name] = [factor * b[degree], factor * (b[degree] - h), factor * (b[degree] + h)]
    return tree


def squares(name):
    y = column(name)
    ok = ~np.isnan(y)
    ss, f = np.zeros(K), np.zeros(K)
    for r in set(RUN[ok]):
        z = y[ok & (RUN == r)]
        k = G[ok & (RUN == r)][0]
        ss[k] += ((z - z.mean()) ** 2).sum()
        f[k] += len(z) - 1
    return ss, f


def spread(name):
    ss, f = squares(name)
    s0 = ss.sum() / f.sum()
    v, n = (6 * s0 + ss) / (6 + f), 6 + f
    tree = dict(metric=name, ratios=[])
    for a in range(K):
        for b in range(K):
            if a == b:
                continue
            R = math.sqrt(v[a] / v[b])
            below = lambda c: stats.f.cdf((c / R) ** 2, n[b], n[a])

            def adjusted(p):
                z = stats.norm.ppf(p)
                q = stats.studentized_range.sf(abs(z) * math.sqrt(2), K, np.inf)
                return 1 - q / 2 if z > 0 else q / 2
            tree['ratios'].append(dict(of=LABELS[a], against=LABELS[b], ratio=R,
                                       interval=[R * math.sqrt(stats.f.ppf(p, n[b], n[a])) for p in (.025, .975)], steadier=below(1),
                                       matters=adjusted(below(.8)), harms=adjusted(1 - below(1.25)), same=below(1.25) - below(.8)))
    return tree


def feel():
    score, count = np.full(K, np.nan), np.zeros(K)
    for k in range(K):
        answers = []
        for s in TEST['stints']:
            f = s['feel']
            points = [f[x] for x in ('comfort', 'control', 'confidence') if f[x] is not None]
            points += [7 - 2 * abs(f[x]) for x in ('headWeight', 'size') if f[x] is not None]
            points += [{'yes': 7, 'unsure': 4, 'no': 1}[f['wouldPlay']]] if f['wouldPlay'] else []
            if s['configurationId'] == IDS[k] and points:
                answers.append(np.mean(points))
        score[k], count[k] = np.mean(answers), len(answers)
    return score, count


def overall(metrics):
    d = {m['metric']: m['smallestDifference'] for m in metrics}
    n = 400000
    mu = {m: choosing(m, n, 11 + i) for i, m in enumerate(('faceAngle', 'clubSpeed', 'spinRate', 'carry'))}
    rng = np.random.default_rng(5)
    ss, f = squares('offline')
    s0 = ss.sum() / f.sum()
    sd = np.sqrt((6 * s0 + ss) / rng.chisquare(6 + f, (n, K)))
    over = lambda m: (serves(m, mu[m]) - serves(m, mu[m])[:, :1])
    gains = {'faceAngle': over('faceAngle') / d['faceAngle'], 'offline': (sd[:, :1] - sd) / (.2 * math.sqrt(s0)),
             'clubSpeed': over('clubSpeed') / d['clubSpeed']}
    weights = {p['metric']: p['weight'] / max(q['weight'] for q in GOAL['primaries']) for p in GOAL['primaries']}
    total = sum(weights[m] * gains[m] for m in gains)
    points, count = feel()
    noise = rng.standard_normal((n, K)) / np.sqrt(count)
    total = total + GOAL['feelWeight'] / (1 - GOAL['feelWeight']) * (points - points[0] + noise - noise[:, :1])
    kept = {q['metric']: over(q['metric']) >= -q['mostLoss'] for q in GOAL['guardrails']}
    allowed = np.logical_and.reduce(list(kept.values()))
    best = np.argmax(np.where(allowed, total, -np.inf), axis=1)
    return [dict(label=LABELS[k], expectedGain=total[:, k].mean(), gainSd=total[:, k].std(), probabilityBest=(best == k).mean(),
                 worthIt=None if k == 0 else ((total[:, k] > 1) & allowed[:, k]).mean(),
                 parts={m: gains[m][:, k].mean() for m in gains}, kept={m: kept[m][:, k].mean() for m in kept}) for k in range(K)]


def best(name):
    return [float(x) for x in np.bincount(np.argmax(serves(name, choosing(name)), axis=1), minlength=K) / 400000]


def equal_spreads(name):
    """Brown and Forsythe's test of equal variances."""
    y = column(name)
    f, p = stats.levene(*[y[(G == k) & ~np.isnan(y)] for k in range(K)], center='median')
    return dict(metric=name, f=float(f), p=float(p))


def patterns():
    tree = []
    for k in range(K):
        z = np.array([[r['v'].get('carry', np.nan), r['v'].get('offline', np.nan)] for r in ROWS
                      if r['counts'] and not r['aside'] and r['k'] == k])
        across = z[:, 1]
        z = z[~np.isnan(z).any(axis=1)]
        n, w = len(z), np.linalg.eigvalsh(np.cov(z.T))
        q = 2 * (n - 1) * (n + 1) / (n * (n - 2)) * stats.f.ppf(.95, 2, n - 2)
        miss = lambda sign: float(stats.t.cdf((sign * across.mean() - 9.144) / across.std(ddof=1) / math.sqrt(1 + 1 / len(across)),
                                              len(across) - 1))
        tree.append(dict(label=LABELS[k], shots=n, semiMajor95=math.sqrt(q * w[1]), semiMinor95=math.sqrt(q * w[0]),
                         left=miss(-1), right=miss(1)))
    return tree


def mishits():
    tree = []
    for k in range(K):
        n = sum(r['counts'] and r['k'] == k for r in ROWS)
        x = sum(r['counts'] and r['aside'] and r['k'] == k for r in ROWS)
        tree.append(dict(label=LABELS[k], shots=n, setAside=x,
                         interval=[0 if x == 0 else stats.beta.ppf(.025, x + .5, n - x + .5), stats.beta.ppf(.975, x + .5, n - x + .5)],
                         scored=n - x, swings=int((G == k).sum()), stints=len({r['run'] for r in ROWS if r['counts'] and r['k'] == k})))
    return tree


metrics = [metric(m) for m in ('clubSpeed', 'faceAngle', 'spinRate', 'offline')]
print(json.dumps(dict(metrics=metrics, best={m: best(m) for m in ('clubSpeed', 'faceAngle', 'spinRate')}, spread=[spread('offline'), spread('faceAngle')],
                      overall=overall(metrics), patterns=patterns(), mishits=mishits(),
                      equalSpreads=[equal_spreads(m) for m in ('clubSpeed', 'ballSpeed', 'clubPath', 'faceAngle', 'spinRate', 'carry',
                                                               'offline', 'strikeSideways', 'strikeUp')]), indent=1, default=float))
