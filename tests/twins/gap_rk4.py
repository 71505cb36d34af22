"""A second implementation of the displacement model, for Twin/GapRk4Twin.cs: other state variables, other method, other language.

It integrates pressure, zone volumes and composition masses (the library: masses and energies), takes temperatures from the gas law, finds
dp/dt from the energy balance of each zone with its own algebra, steps with the classical Runge-Kutta method at a fixed step, and conducts heat
into the grain by finite differences (the library: a sum of exponential modes). Problem: StartingGaps.Bore18mm with four 6 mm holes.
Plain Python 3, standard library only:  python3 gap_rk4.py [step in microseconds, default 1]  (half a minute)
"""
import math
import sys

# Products: gas and particles in equilibrium. Air. (StartingGaps, BlackPowderProducts.Nominal, PerfectGas.DryAir)
SHARE, R_GAS, GAMMA_GAS, C_PARTICLE = 0.65, 8.31446261815324 / 0.0356, 1.21, 1010.0
R_P = SHARE * R_GAS
CP_P = SHARE * GAMMA_GAS * R_GAS / (GAMMA_GAS - 1) + (1 - SHARE) * C_PARTICLE
CV_P = CP_P - R_P
R_A = 8314.32 / 28.9644
CV_A = R_A / 0.4
CP_A = CV_A + R_A
P_OUT, T_OUT, T_FLAME = 101325.0, 288.15, 1890.0
# Booster.
V_CHAMBER, P_CHAMBER, D_OPENING, T_OPENING, C_OPENING, D_NOZZLE = 6.2e-6, 8e5, 0.010, 1e-3, 0.8, 0.0035
M_FRAGMENTS, T_FRAGMENTS = 0.19e-3, 25e-3
# Gap: bore, length, four holes of 6 mm a land of 1 mm below the nozzle plane.
BORE, LENGTH, D_HOLE, N_HOLES, LAND = 0.018, 0.120, 0.006, 4, 0.001
AREA = math.pi / 4 * BORE ** 2
VENT = LENGTH - D_HOLE / 2 - LAND
V_POCKET = AREA * (LENGTH - VENT) + 0.3e-6
STIRRING = math.exp(-(LENGTH - VENT) / (1.5 * BORE))
EXCHANGE, THICKNESS, H_WALL, EMISSIVITY, EFFICIENCY = 0.5, BORE, 200.0, 0.5, 0.25
# Grain.
D_THROAT, CONDUCTIVITY, DENSITY, HEAT_CAPACITY, T_IGNITION = 0.0035, 0.3, 1700.0, 920.0, 773.0
BOLTZMANN = 5.670374419e-8
BLEND = 1e-3


def perry(r):
    return 0.8414 - 0.1002 * r + 0.8415 * r ** 2 - 3.9 * r ** 3 + 4.6001 * r ** 4 - 1.6827 * r ** 5


def psi(r, g):
    if r <= (2 / (g + 1)) ** (g / (g - 1)):
        return math.sqrt(g * (2 / (g + 1)) ** ((g + 1) / (g - 1)))
    d = 1 - r
    if d >= BLEND:
        return math.sqrt(2 * g / (g - 1) * (r ** (2 / g) - r ** ((g + 1) / g)))
    quotient = 1.0 if d < 1e-7 else g / (g - 1) * (r ** (2 / g) - r ** ((g + 1) / g)) / d
    x = d / BLEND
    return math.sqrt(BLEND) * x * (45 - 18 * x ** 2 + 5 * x ** 4) / 32 * math.sqrt(2 * quotient)


def orifice(area, coefficient, p_up, gas, p_down):
    r = p_down / p_up
    c = coefficient(r) if callable(coefficient) else coefficient
    return area * c * p_up / math.sqrt(gas.R * gas.T) * psi(r, gas.g)


class Gas:
    """A stirred volume of products and air: masses, and its temperature from the gas law (at p) or from its energy."""

    def __init__(self, products, air, V, p=None, U=None):
        self.m, self.V = products + air, V
        mR, mcv = products * R_P + air * R_A, products * CV_P + air * CV_A
        self.Y, self.R, self.cv = products / self.m, mR / self.m, mcv / self.m
        self.g, self.k = 1 + mR / mcv, mcv / mR
        self.T = p * V / mR if U is None else U / mcv
        self.rho = self.m / V
        self.h = (self.cv + self.R) * self.T
        self.products = self.air = self.energy = 0.0

    def take(self, m, h, Y):
        self.products += m * Y
        self.air += m * (1 - Y)
        self.energy += m * h

    def give(self, m, to=None):
        self.take(-m, self.h, self.Y)
        if to:
            to.take(m, self.h, self.Y)

    def load(self):
        """k V dp + (k + 1) p dV of this volume: energy less what the change of composition takes, k = 1/(g - 1)."""
        return self.energy - self.T * (self.products * CV_P + self.air * CV_A - self.k * (self.products * R_P + self.air * R_A))


class Air:
    R, T, g, h = R_A, T_OUT, 1.4, CP_A * T_OUT


def exchange(outflow_area, coefficient, inside, p):
    """Volume that leaves to the outside per second."""
    if outflow_area <= 0 or p == P_OUT:
        return 0.0
    if p > P_OUT:
        m = orifice(outflow_area, coefficient, p, inside, P_OUT)
        inside.give(m)
        return m / inside.rho
    m = orifice(outflow_area, coefficient, P_OUT, Air, p)
    inside.take(m, Air.h, 0)
    return -m * R_A * T_OUT / p


def wall_flux(gas):
    """Convection, and radiation of the products to walls that stay at the temperature of the outside [W/m2]."""
    return H_WALL * (gas.T - T_OUT) + EMISSIVITY * gas.Y * BOLTZMANN * (gas.T ** 4 - T_OUT ** 4)


def rates(t, y):
    p, V_hot, V_cold, hp, ha, cp, ca, pp, pa, xp, xa, U = y
    hot, cold, pocket = Gas(hp, ha, V_hot, p), Gas(cp, ca, V_cold, p), Gas(pp, pa, V_POCKET, p)
    chamber = Gas(xp, xa, V_CHAMBER, U=U)
    p_chamber = chamber.rho * chamber.R * chamber.T

    if t < T_FRAGMENTS:
        chamber.take(M_FRAGMENTS * math.pi / (2 * T_FRAGMENTS) * math.sin(math.pi * t / T_FRAGMENTS), CP_P * T_FLAME, 1)
    exchange(math.pi / 4 * D_NOZZLE ** 2, 1.0, chamber, p_chamber)
    opening = math.pi / 4 * (D_OPENING * min(1, t / T_OPENING)) ** 2
    if p_chamber > p:
        chamber.give(orifice(opening, C_OPENING, p_chamber, chamber, p), hot)
    elif p > p_chamber:
        hot.give(orifice(opening, C_OPENING, p, hot, p_chamber), chamber)

    s = min(1, max(0, (V_hot / AREA - VENT) / THICKNESS + 1))
    w = s * s * (3 - 2 * s)
    holes = N_HOLES * math.pi / 4 * D_HOLE ** 2
    stream = exchange(w * holes, perry, hot, p) + exchange((1 - w) * holes, perry, cold, p)
    hot.energy -= wall_flux(hot) * math.pi * BORE * V_hot / AREA
    pocket.energy -= wall_flux(pocket) * (4 * V_POCKET / BORE + AREA)
    u_nozzle = max(0, stream) / AREA * STIRRING
    stirred = EXCHANGE * u_nozzle * AREA
    hot.give(w * stirred * hot.rho, pocket)
    cold.give((1 - w) * stirred * cold.rho, pocket)
    pocket.give(w * stirred * pocket.rho, hot)
    pocket.give((1 - w) * stirred * pocket.rho, cold)

    def move(volume):
        """Volume flow into the pocket (out of it when negative) that keeps its pressure with the tube."""
        if volume >= 0:
            hot.give(w * volume * hot.rho, pocket)
            cold.give((1 - w) * volume * cold.rho, pocket)
        else:
            pocket.give(-w * volume * pocket.rho, hot)
            pocket.give(-(1 - w) * volume * pocket.rho, cold)

    def mismatch():
        dp = pocket.load() / (pocket.k * V_POCKET)
        return sum((z.load() - z.k * z.V * dp) / ((z.k + 1) * p) for z in (hot, cold))

    def slope(unit):
        """How the mismatch answers to a small flow; it is linear in the flow, so undo it by the opposite entry."""
        books = [(z, z.products, z.air, z.energy) for z in (hot, cold, pocket)]
        before = mismatch()
        move(unit)
        after = mismatch()
        for z, a, b, c in books:
            z.products, z.air, z.energy = a, b, c
        return before, (after - before) / unit

    unit = 1e-6
    before, by = slope(unit)
    volume = -before / by
    if volume < 0:
        before, by = slope(-unit)
        volume = -before / by
    move(volume)
    dp = pocket.load() / (pocket.k * V_POCKET)
    dV = [(z.load() - z.k * z.V * dp) / ((z.k + 1) * p) for z in (hot, cold)]

    particles = (1 - SHARE) * pocket.Y
    viscosity = 1.458e-6 * pocket.T ** 1.5 / (pocket.T + 110.4)
    reynolds = (1 - particles) * pocket.rho * u_nozzle * D_THROAT / viscosity
    conductivity = viscosity * (pocket.cv + pocket.R) / 0.7
    convection = 0.763 * math.sqrt(reynolds) * 0.7 ** 0.4 * conductivity / D_THROAT
    impact = EFFICIENCY * particles * pocket.rho * u_nozzle * C_PARTICLE
    seen = dict(T=pocket.T, h=convection + impact, radiation=EMISSIVITY * pocket.Y * BOLTZMANN, front=V_hot / AREA, w=w, Y=pocket.Y,
                p=p, chamber=p_chamber, hot=hot.T, convection=convection, impact=impact)
    return [dp, *dV] + [x for z in (hot, cold, pocket, chamber) for x in (z.products, z.air)] + [chamber.energy], seen


def integrate(dt, end):
    def air(V):
        return P_OUT * V / (R_A * T_OUT)

    slab = 1e-3 * BORE * AREA
    m = P_CHAMBER * V_CHAMBER / (R_P * T_FLAME)
    y = [P_OUT, slab, AREA * VENT - slab, 0, air(slab), 0, air(AREA * VENT - slab), 0, air(V_POCKET), m, 0, m * CV_P * T_FLAME]
    course = []
    for i in range(round(end / dt) + 1):
        t = i * dt
        k1, seen = rates(t, y)
        course.append((t, seen))
        k2, _ = rates(t + dt / 2, [a + dt / 2 * b for a, b in zip(y, k1)])
        k3, _ = rates(t + dt / 2, [a + dt / 2 * b for a, b in zip(y, k2)])
        k4, _ = rates(t + dt, [a + dt * b for a, b in zip(y, k3)])
        y = [a + dt / 6 * (b + 2 * c + 2 * d + e) for a, b, c, d, e in zip(y, k1, k2, k3, k4)]
    return course


def passes(course, key, level):
    for (t0, a), (t1, b) in zip(course, course[1:]):
        if a[key] < level <= b[key]:
            return t0 + (t1 - t0) * (level - a[key]) / (b[key] - a[key])


def grain(course, every, cells, width, growth):
    """Crank-Nicolson on a grid that widens inwards; the flux is taken at the mean of two times and solved for twice."""
    x = [0.0]
    for i in range(cells):
        x.append(x[-1] + width * growth ** i)
    n = len(x)
    dx = [b - a for a, b in zip(x, x[1:])]
    share = [0.5 * ((dx[i - 1] if i else 0) + (dx[i] if i < n - 1 else 0)) for i in range(n)]
    a = CONDUCTIVITY / (DENSITY * HEAT_CAPACITY)
    T = [288.15] * n
    out = [(0.0, T[0])]
    for j in range(every, len(course), every):
        (t0, g0), (t1, g1) = course[j - every], course[j]
        dt = t1 - t0
        q0 = g0['h'] * (g0['T'] - T[0]) + g0['radiation'] * (g0['T'] ** 4 - T[0] ** 4)
        surface = T[0]
        for _ in range(4):
            slope = g1['h'] + 4 * g1['radiation'] * surface ** 3
            q1 = g1['h'] * (g1['T'] - surface) + g1['radiation'] * (g1['T'] ** 4 - surface ** 4)
            lower, diagonal, upper, right = [], [], [], []
            for i in range(n):
                left = a / (dx[i - 1] * share[i]) if i else 0
                rite = a / (dx[i] * share[i]) if i < n - 1 else 0
                change = left * ((T[i - 1] if i else 0) - T[i]) + rite * ((T[i + 1] if i < n - 1 else 0) - T[i])
                lower.append(-0.5 * dt * left)
                upper.append(-0.5 * dt * rite)
                diagonal.append(1 + 0.5 * dt * (left + rite))
                right.append(T[i] + 0.5 * dt * change)
            weight = 0.5 * dt / (DENSITY * HEAT_CAPACITY * share[0])
            diagonal[0] += weight * slope
            right[0] += weight * (q0 + q1 + slope * surface)
            c, d = [upper[0] / diagonal[0]], [right[0] / diagonal[0]]
            for i in range(1, n):
                den = diagonal[i] - lower[i] * c[-1]
                c.append(upper[i] / den)
                d.append((right[i] - lower[i] * d[-1]) / den)
            new = [0.0] * n
            new[-1] = d[-1]
            for i in range(n - 2, -1, -1):
                new[i] = d[i] - c[i] * new[i + 1]
            surface = new[0]
        T = new
        out.append((t1, T[0]))
    return out


def lit(surface):
    for (t0, a), (t1, b) in zip(surface, surface[1:]):
        if a < T_IGNITION <= b:
            return t0 + (t1 - t0) * (T_IGNITION - a) / (b - a)


if __name__ == '__main__':
    step = float(sys.argv[1]) * 1e-6 if len(sys.argv) > 1 else 1e-6
    course = integrate(step, 25e-3)
    print('front at last vent', passes(course, 'w', 0.5), 'products at nozzle', passes(course, 'Y', 0.5))
    print('peak gauge pressure', max(s['p'] for _, s in course) - P_OUT)
    for at in (1e-3, 3e-3, 11e-3):
        t, s = course[round(at / step)]
        print('t', t, {k: s[k] for k in ('p', 'chamber', 'front', 'hot', 'T', 'Y', 'convection', 'impact')})
    every = max(1, round(20e-6 / step))
    coarse, fine = grain(course, every, 480, 0.5e-6, 1.01), grain(course, every, 960, 0.25e-6, 1.005)
    surface = [(t, b + (b - a) / 3) for (t, a), (_, b) in zip(coarse, fine)]  # second order: the error falls to a quarter
    print('grain: lit', lit(surface), 'peak', max(T for _, T in surface), {round(t * 1e3): T for t, T in surface if round(t * 1e3, 6) in (5, 8, 11, 18)})
