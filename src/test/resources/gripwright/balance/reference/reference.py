"""Works the balance of session.json out a second time, by the formulas of docs/balance.md in plain arithmetic: units written out,
normal equations instead of the program's classes, wraps by trying all. Python 3.11, NumPy 2.4, SciPy 1.17:
python3 reference.py > expected.json"""
import json, math, os
import numpy as np
from scipy import optimize

SESSION = json.load(open(os.path.join(os.path.dirname(os.path.abspath(__file__)), 'session.json')))['session']
INCH, OUNCE = 25.4, 28.349523125                     # mm, g; exact by definition
POINT, ZERO, F = 1.75 * OUNCE * INCH, 161 * OUNCE * INCH, 14 * INCH   # g mm, g mm, mm
USUAL_PLACE, USUAL_PLACE_SD = 4.25 * INCH, .25 * INCH
NOISE, WEIGHED, LABEL, MEASURED = .5, .5, 2, 1       # points, g, g, mm
SIZE_AT, LAST_AT, BUTT_AT = 50.8, 152.4, 12.7        # mm


def interp(points, x):
    points = sorted((p['positionMm'], p['diameterMm']) for p in points)
    return float(np.interp(x, [p[0] for p in points], [p[1] for p in points]))


def shaft(club, x):
    return interp(club['shaftDiameters'], x) if club['shaftDiameters'] else 15.24


def length(c):
    return c['grip']['lengthMm'] + c['buildUp']['stretchMm']


def cap(c):
    return c['grip']['capThicknessMm']


def layers(c):
    b = c['buildUp']
    if b['tape'] is None:
        return []
    both = [(b['fullWraps'], 0, length(c)), (b['lowerWraps'], b['lowerFromMm'], min(b['lowerToMm'] or length(c), length(c)))]
    return [(n, a, z, b['tape']['perWrapMm'], b['tape']['arealMassGramsPerSquareMetre']) for n, a, z in both if n]


def tape(c, club):
    """Each wrap pi d long at its own diameter: mass, middle from the butt end, length."""
    out, under = [], 0
    for n, a, z, each, areal in layers(c):
        area = sum(math.pi * (shaft(club, (a + z) / 2) + under + i * each) * (z - a) for i in range(n))
        out.append((area / 1e6 * areal, cap(c) + (a + z) / 2, z - a))
        under += n * each
    return out


def grip(c):
    g = c['grip']
    mass = g['nominalMassGrams'] if g['measuredMassGrams'] is None else g['measuredMassGrams']
    x = USUAL_PLACE if g['balancePointMm'] is None else g['balancePointMm']
    return mass, x + (x - cap(c)) * c['buildUp']['stretchMm'] / g['lengthMm'], length(c) + cap(c)


def on_the_butt(c, club):
    """Mass, place, own inertia in g mm2, SDs of mass and place, for grip, wraps and ballast."""
    m, x, l = grip(c)
    out = [(m, x, m * l * l / 12, LABEL if c['grip']['measuredMassGrams'] is None else WEIGHED,
            USUAL_PLACE_SD if c['grip']['balancePointMm'] is None else MEASURED)]
    out += [(m, x, m * l * l / 12, .3, 2) for m, x, l in tape(c, club)]
    b = c['buildUp']
    return out + ([(b['ballastGrams'], b['ballastPositionMm'] + cap(c), 0, .3, 2)] if b['ballastGrams'] else [])


def head_place(club, c):
    heads = [p['balancePointMm'] + cap(c) for p in club['parts'] if p['kind'] == 'head']
    return heads[0] if heads else club['lengthMm'] - .5 * INCH


def bodies(c, club):
    out = [(p['massGrams'], p['balancePointMm'] + cap(c), p['massGrams'] * p['lengthMm'] ** 2 / 12,
            WEIGHED if p['kind'] in ('head', 'shaft') else .3, 2) for p in club['parts']] + on_the_butt(c, club)
    return out + ([(c['headMassAddedGrams'], head_place(club, c), 0, .3, 2)] if c['headMassAddedGrams'] else [])


def load(c, club, stated=None):
    """What stands on the bare club: mass of unknown place, moment of known, cap, doubt in points."""
    m, x, _ = grip(c)
    wraps = tape(c, club)
    if stated is not None:
        m, wraps = stated, []
    placed = c['grip']['balancePointMm'] is not None
    known = (m * (x - F) if placed else 0) + sum(a * (b - F) for a, b, _ in wraps)
    b = c['buildUp']
    known += b['ballastGrams'] * (b['ballastPositionMm'] + cap(c) - F) if b['ballastGrams'] else 0
    known += c['headMassAddedGrams'] * (head_place(club, c) - F)
    sd = math.hypot((LABEL if c['grip']['measuredMassGrams'] is None else WEIGHED) * (x - F) / POINT,
                    m * MEASURED / POINT if placed else 0)
    return 0 if placed else m, known, cap(c), sd


def fit(test):
    """Least squares for the bare club (points, at the mean cap) and the place of unmeasured grips."""
    club, confs = test['club'], {c['id']: c for c in test['configurations']}
    layer = sum(p['massGrams'] for p in club['parts'] if p['kind'] == 'tape')
    rows = []
    for r in club['readings']:
        g = r['gripMassGrams'] - layer
        rows.append((r['swingweight']['points'],) + (load(confs[r['configurationId']], club, g) if r['configurationId']
                                                     else (g, 0, 4, WEIGHED * (F - USUAL_PLACE) / POINT)))
    rows += [(c['swingweightRead']['points'],) + load(c, club) for c in test['configurations'] if c['swingweightRead']]
    for s in test['stints']:
        c = confs[s['configurationId']]
        if s['swingweightRead'] and s['swingweightRead'] != c['swingweightRead']:
            rows.append((s['swingweightRead']['points'],) + load(c, club))
    if club['parts']:
        bare, bare_sd = sum(p['massGrams'] for p in club['parts']), WEIGHED
    else:
        masses = []
        for r in club['readings']:
            c = confs[r['configurationId']]
            masses.append(r['totalMassGrams'] - r['gripMassGrams'] - c['headMassAddedGrams'] - c['buildUp']['ballastGrams'])
        for c in test['configurations']:
            if c['totalMassReadGrams']:
                masses.append(c['totalMassReadGrams'] - sum(b[0] for b in on_the_butt(c, club)) - c['headMassAddedGrams'])
        bare, bare_sd = float(np.mean(masses)), math.hypot(WEIGHED, WEIGHED)
    mean_cap = float(np.mean([r[3] for r in rows]))
    A = [[1, g / POINT] for _, g, _, _, _ in rows] + [[0, 1]]
    y = [s - (k - g * F + bare * (c - mean_cap)) / POINT for s, g, k, c, _ in rows] + [USUAL_PLACE]
    v = [NOISE ** 2 + sd ** 2 + (bare_sd * (c - mean_cap) / POINT) ** 2 for _, _, _, c, sd in rows] + [USUAL_PLACE_SD ** 2]
    A, y, w = np.array(A), np.array(y), 1 / np.array(v)
    cov = np.linalg.inv(A.T @ (A * w[:, None]))
    b, x = cov @ A.T @ (w * y)

    def predict(l):
        g, k, c, sd = l
        return b + (k + g * (x - F) + bare * (c - mean_cap)) / POINT, math.sqrt(
            cov[0, 0] + 2 * g / POINT * cov[0, 1] + (g / POINT) ** 2 * cov[1, 1] + (bare_sd * (c - mean_cap) / POINT) ** 2 + sd ** 2)
    return dict(place=x, placeSd=math.sqrt(cov[1, 1]), bare=predict((0, 0, 0, 0)), bareGrams=bare, predict=predict)


def outside(c, club, at, fitted=True):
    g, s = c['grip'], c['buildUp']['stretchMm']
    if fitted and c['fittedDiameters']:
        ends = [d['positionMm'] for d in c['fittedDiameters']]
        meet = min(max(at, min(ends)), max(ends))
        return interp(c['fittedDiameters'], meet) + outside(c, club, at, False) - outside(c, club, meet, False)
    stretch = 1 + s / g['lengthMm']
    D = interp([dict(positionMm=d['positionMm'] * stretch, diameterMm=d['diameterMm']) for d in g['diameters']], at)
    core = g['coreMm']
    under = shaft(club, at) + sum(n * each for n, a, z, each, _ in layers(c) if a <= at <= z)
    t = 1 if g['transferFactor'] is None else g['transferFactor']
    bench, conserved = t * (under - core), math.sqrt(D * D - core * core + under * under) - D
    D += bench if abs(bench) > abs(conserved) else conserved
    return math.sqrt(under ** 2 + (D * D - under ** 2) * g['lengthMm'] / (g['lengthMm'] + s)) if s else D


def figures(parts):
    m = sum(p[0] for p in parts)
    return m, sum(p[0] * p[1] for p in parts) / m, sum(p[0] * (p[1] - F) for p in parts), \
        sum(p[2] + p[0] * p[1] ** 2 for p in parts) / 1e5


def doubts(parts):
    m, b, _, _ = figures(parts)
    root = lambda by_mass, by_place: math.sqrt(sum((by_mass(p) * p[3]) ** 2 + (by_place(p) * p[4]) ** 2 for p in parts))
    return dict(massSd=root(lambda p: 1, lambda p: 0), momentSd=root(lambda p: p[1] - F, lambda p: p[0]) / INCH,
                balancePointSd=root(lambda p: (p[1] - b) / m, lambda p: p[0] / m),
                inertiaSd=root(lambda p: p[1] ** 2 + p[2] / p[0], lambda p: 2 * p[0] * p[1]) / 1e5)


def from_parts(test):
    club, f = test['club'], fit(test)
    confs, tree = test['configurations'], []
    for c in confs:
        m, b, M, I = figures(bodies(c, club))
        points, sd = f['predict'](load(c, club))
        tree.append(dict(label=c['label'], mass=m, balancePoint=b, moment=M / INCH, moment12=M / INCH + 2 * m, inertia=I,
                         inertiaAboutBalance=I - m * b * b / 1e5, points=points, pointsSd=sd, **doubts(bodies(c, club)),
                         tapeGrams=sum(t[0] for t in tape(c, club)),
                         diameters={str(p): outside(c, club, p) for p in (50.8, 76.2, 101.6, 127.0, 152.4)}))
    bare = figures([(p['massGrams'], p['balancePointMm'], 0) for p in club['parts']])[2]
    offset = f['bare'][0] - (bare - ZERO) / POINT
    back = []
    for c, t in zip(confs[1:], tree[1:]):
        need = tree[0]['points'] - t['points']
        head, butt = head_place(club, c), BUTT_AT + cap(c)
        d = lengthen(c, club, need)
        back.append(dict(label=c['label'], head=need * POINT / (head - F), butt=need * POINT / (butt - F), length=d,
                         lengthInertia=figures(longer(c, club, d) + on_the_butt(c, club))[3]))
    return dict(configurations=tree, place=f['place'], placeSd=f['placeSd'], bare=f['bare'][0], bareSd=f['bare'][1], offset=offset,
                backwards=back, ballast=ballast(confs, club, tree)), f, offset


def lengthen(c, club, need):
    """The same shaft cut longer by d: mass and balance point from its butt grow with its length, the head's parts move along."""
    def moment(d):
        total = 0
        for p in club['parts']:
            m, x = p['massGrams'], p['balancePointMm']
            if p['kind'] == 'shaft':
                m, x = m * (1 + d / p['lengthMm']), x * (1 + d / p['lengthMm'])
            elif p['kind'] in ('head', 'ferrule', 'epoxy', 'headWeight'):
                x += d
            total += m * (x + cap(c) - F)
        return total + (c['headMassAddedGrams'] * d)
    low, high = (moment(z) - moment(0) - need * POINT for z in (-100, 100))
    return None if low * high > 0 else optimize.brentq(lambda z: moment(z) - moment(0) - need * POINT, -100, 100, xtol=1e-11)


def longer(c, club, d):
    out = [(c['headMassAddedGrams'], head_place(club, c) + d, 0)] if c['headMassAddedGrams'] else []
    for p in club['parts']:
        r = 1 + d / p['lengthMm'] if p['kind'] == 'shaft' else 1
        m, x, l = p['massGrams'] * r, p['balancePointMm'] * r, p['lengthMm'] * r
        x += d if p['kind'] in ('head', 'ferrule', 'epoxy', 'headWeight') else 0
        out.append((m, x + cap(c), m * l * l / 12))
    return out


def ballast(confs, club, tree):
    masses = [sum(b[0] for b in on_the_butt(c, club)) for c in confs]
    heavy = int(np.argmax(masses))
    place = grip(confs[heavy])[1]
    low, most = min(t['points'] for t in tree), max(t['inertia'] for t in tree)
    plans = dict(gripMass=[], swingweight=[], inertia=[])
    for c, t, m in zip(confs, tree, masses):
        ends = cap(c) + length(c)
        plans['gripMass'].append(masses[heavy] - m)
        plans['swingweight'].append((low - t['points']) * POINT / (place - F))
        plans['inertia'].append((most - t['inertia']) * 1e5 / ends ** 2)
    return plans


def from_readings(test):
    club, f = test['club'], fit(test)
    r = test['club']['readings'][0]
    first = test['configurations'][0]
    whole = r['totalMassGrams'] * (r['balancePointMm'] - F)
    bare = whole - r['gripMassGrams'] * (f['place'] - F) - (r['totalMassGrams'] - r['gripMassGrams']) * cap(first)
    tree = []
    for c in test['configurations']:
        g, k, thick, _ = load(c, club)
        mass = f['bareGrams'] + c['headMassAddedGrams'] + sum(b[0] for b in on_the_butt(c, club))
        moment = bare + k + f['bareGrams'] * thick + g * (f['place'] - F)
        tree.append(dict(label=c['label'], mass=mass, balancePoint=F + moment / mass, moment=moment / INCH,
                         points=f['predict'](load(c, club))[0], pointsSd=f['predict'](load(c, club))[1]))
    return dict(configurations=tree)


def wraps(c, tested_on, club):
    """Whole wraps that come nearest to the tested size, at 2 in first and then at the last place for the lower hand."""
    def with_wraps(full, lower):
        return dict(c, buildUp=dict(c['buildUp'], fullWraps=full, lowerWraps=lower))
    want = {p: outside(c, tested_on, p) for p in (SIZE_AT, LAST_AT)}
    off = lambda p, full, lower: outside(with_wraps(full, lower), club, p) - want[p]
    full = min(range(13), key=lambda n: abs(off(SIZE_AT, n, c['buildUp']['lowerWraps'])))
    lower = min(range(13), key=lambda n: abs(off(LAST_AT, full, n)))
    return with_wraps(full, lower), off(SIZE_AT, full, lower), off(LAST_AT, full, lower)


def set_plan(test, offset):
    club = test['club']
    c0 = [c for c in test['configurations'] if c['id'] == SESSION['advisedConfigurationId']][0]
    gamer = [c for c in test['configurations'] if c['gamer']][0]
    part = lambda kind: [p for p in club['parts'] if p['kind'] == kind][0]
    layer = part('tape')['massGrams']
    tree = []
    for s in SESSION['set']:
        c, off, lower_off = wraps(c0, club, s) if s['shaftDiameters'] else (c0, None, None)
        on = s if s['shaftDiameters'] else club
        bare_grams = s['totalMassGrams'] - s['gripOffGrams'] if s['totalMassGrams'] else \
            sum(p['massGrams'] for p in club['parts'] if p['kind'] != 'tape')
        predicted = s['presentSwingweight']['points'] - (s['gripOffGrams'] * (USUAL_PLACE - F) + bare_grams * cap(gamer)) / POINT
        bare = s['bareSwingweight']['points'] if s['bareSwingweight'] else predicted
        fitted = on_the_butt(c, on) + [(layer, cap(c) + length(c) / 2, layer * length(c) ** 2 / 12, 0, 0)]
        points = bare + (sum(b[0] * (b[1] - F) for b in fitted) + bare_grams * cap(c)) / POINT
        head = s['lengthMm'] - (club['lengthMm'] - head_place(club, c))
        row = dict(club=s['name'], full=c['buildUp']['fullWraps'], lower=c['buildUp']['lowerWraps'], off=off, lowerOff=lower_off,
                   barePredicted=predicted, regripped=points, head=head)
        inertia = None
        if s['totalMassGrams']:
            shaft_length = head - cap(c) - (part('head')['balancePointMm'] - part('shaft')['lengthMm'])
            share = part('shaft')['balancePointMm'] / part('shaft')['lengthMm']
            first = (bare - offset) * POINT + ZERO + F * bare_grams
            h = (first - bare_grams * share * shaft_length) / (head - cap(c) - share * shaft_length)
            rest = bare_grams - h
            inertia = figures(fitted + [(h, head, 0), (rest, share * shaft_length + cap(c), rest * shaft_length ** 2 / 12)])[3]
            mass = bare_grams + sum(b[0] for b in fitted)
            row.update(balancePoint=F + ((points - offset) * POINT + ZERO) / mass, mass=mass, inertia=inertia)
        if s['target'] == 'commonInertia':
            row['headMass'] = (s['targetInertiaKgCm2'] - inertia) * 1e5 / head ** 2
        else:
            want = s['targetSwingweight'] if s['target'] == 'value' else s['presentSwingweight']
            row['headMass'] = (want['points'] - points) * POINT / (head - F)
        tree.append(row)
    return tree


parts, _, offset = from_parts(SESSION['tests'][0])
rows = set_plan(SESSION['tests'][0], offset)
stock = dict(grips=len(rows), wraps=sum(r['full'] + r['lower'] for r in rows), cost=len(rows) * 11.5,
             headTape=sum(r['headMass'] for r in rows if .5 <= r['headMass'] <= 6))
print(json.dumps(dict(parts=parts, readings=from_readings(SESSION['tests'][1]), set=rows, stock=stock), indent=1))
