"""The flights of FlightTwoStage by another hand: plain Python, SciPy's DOP853 (Radau under the canopy), every corner restarted.

Run with:  python3 tests/twins/flight_dop853.py
The numbers it prints stand in tests/Staging.Core.Validation/Twin/FlightScipyTwin.cs.
"""
import math
from scipy.integrate import solve_ivp
from scipy.optimize import brentq

G0, RE, GAMMA, R = 9.80665, 6356766.0, 1.4, 8314.32 / 28.9644
AREA = math.pi / 4 * 0.025**2
MACH = [0, 0.30, 0.60, 0.80, 0.90, 0.95, 1.00, 1.05, 1.10, 1.30, 1.60, 2.50]
CD = [0.42, 0.40, 0.41, 0.45, 0.52, 0.60, 0.70, 0.76, 0.78, 0.74, 0.66, 0.55]
T1 = [0.00, 0.02, 0.05, 0.09, 0.13, 0.17, 0.22, 0.28, 0.36, 0.46, 0.58, 0.70, 0.80, 0.85]
F1 = [0.0, 2.5, 8.0, 17.0, 24.0, 21.0, 14.0, 9.5, 9.2, 8.5, 8.3, 8.1, 6.5, 0.0]
T2 = [0.00, 0.03, 0.08, 0.14, 0.20, 0.27, 0.36, 0.48, 0.66, 0.90, 1.15, 1.40, 1.62, 1.70]
F2 = [0.0, 3.0, 9.0, 14.5, 12.0, 8.0, 6.0, 5.6, 5.65, 5.4, 5.4, 5.3, 4.8, 0.0]
LAG, DELAY, CANOPY, ROD = 0.02, 5.0, 0.05, 1.0


def line(x, xs, ys):
    if x <= xs[0]:
        return ys[0]
    for i in range(len(xs) - 1):
        if x < xs[i + 1]:
            return ys[i] + (ys[i + 1] - ys[i]) * (x - xs[i]) / (xs[i + 1] - xs[i])
    return ys[-1]


def impulse(t, ts, fs):
    total = 0.0
    for i in range(len(ts) - 1):
        if t <= ts[i]:
            break
        end = min(t, ts[i + 1])
        total += 0.5 * (fs[i] + line(end, ts, fs)) * (end - ts[i]) if end < ts[i + 1] else 0.5 * (fs[i] + fs[i + 1]) * (ts[i + 1] - ts[i])
    return total


def air(z):
    H = RE * z / (RE + z)
    T = 288.15 - 0.0065 * H
    p = 101325 * (288.15 / T) ** (G0 / (R * -0.0065))
    return p / (R * T), math.sqrt(GAMMA * R * T)


def fly(degrees, friction, constant, site, tol):
    sine = 1.0 if degrees == 90 else math.sin(math.radians(degrees))
    cosine = 0.0 if degrees == 90 else math.cos(math.radians(degrees))
    I1, I2 = impulse(9, T1, F1), impulse(9, T2, F2)
    light2 = T1[-1] + LAG
    eject = light2 + T2[-1] + DELAY

    def gravity(h):
        return G0 * (RE / (RE + site + h)) ** 2

    def thrust(t):
        if t <= T1[-1]:
            return line(t, T1, F1)
        return line(t - light2, T2, F2) if light2 <= t <= light2 + T2[-1] else 0.0

    def mass(t, dropped):
        m = 0.120 - 0.010 * impulse(min(t, T1[-1]), T1, F1) / I1
        if dropped:
            m -= 0.035 + 0.012 * impulse(max(0.0, min(t - light2, T2[-1])), T2, F2) / I2
        return m

    lift_off = brentq(lambda t: thrust(t) - mass(t, False) * gravity(0) * (sine + friction * cosine) - constant, 1e-6, 0.13, xtol=1e-15)
    stops = sorted({t for t in T1 if t > lift_off} | {light2} | {light2 + t for t in T2} | {eject})
    t, y, guided, falling, out = lift_off, [0.0, 0.0], True, False, {"lift-off": lift_off}

    def rhs(dropped, canopy):
        def f(t, y):
            h, v = y
            rho, a = air(site + h)
            cda = CANOPY if canopy else AREA * line(abs(v) / a, MACH, CD)
            acceleration = (thrust(t) - 0.5 * rho * v * abs(v) * cda) / mass(t, dropped) - gravity(h) * (1 if falling else sine)
            if guided:
                acceleration -= friction * gravity(h) * cosine + constant / mass(t, dropped)
            return [v if falling else v * sine, acceleration]
        return f

    def event(g, direction):
        g.terminal, g.direction = True, direction
        return g

    k = 0
    while True:
        end = stops[k] if k < len(stops) else 5000.0
        dropped, canopy = t >= light2 - 1e-12, t >= eject - 1e-12
        events = [event(lambda t, y: y[0], -1)] if falling else [event(lambda t, y: y[0] - ROD * sine, 1)] if guided else [event(lambda t, y: y[1], -1)]
        s = solve_ivp(rhs(dropped, canopy), (t, end), y, method="Radau" if falling and canopy else "DOP853",
                      rtol=max(tol, 1e-11) if falling and canopy else tol, atol=tol, events=events)
        t, y = float(s.t[-1]), [float(s.y[0][-1]), float(s.y[1][-1])]
        if s.status == 0:
            if abs(end - light2) < 1e-12:
                out["staging height"], out["staging speed"] = y
            k += 1
        elif falling:
            out["landing time"], out["landing speed"] = t, -y[1]
            return out
        elif guided:
            out["guide exit time"], out["guide exit speed"] = t, y[1]
            guided = False
        else:
            out["apogee time"], out["apogee height"] = t, y[0]
            falling = True


if __name__ == "__main__":
    for case in ((90, 0.0, 0.0, 0.0), (75, 0.3, 0.2, 1500.0)):
        for tol in (1e-11, 1e-13):
            print(case, tol, {k: float(f"{v:.12g}") for k, v in fly(*case, tol).items()})
