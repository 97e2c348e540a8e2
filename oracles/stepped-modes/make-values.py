"""
Modes of stepped stiff strings to 15 digits, by a matching matrix in high-precision arithmetic.

On each segment the general solution is a sum of cos, sin, cosh and sinh; the 4x4 matrix that carries
(y, y', E I y'', T y' - E I y''') across it is multiplied up as it stands, with enough digits that the growth of cosh does
no harm. Modes are the zeros of the 2x2 minor that the held ends leave, found by scanning. Nothing is shared with the method
the project uses: no minors are carried along, no scaling, no count.

Run:  python3 make-values.py > values.json      (made with Python 3 and mpmath; the versions are in the file)
"""
import json
import platform

import mpmath as mp

MODES = 16


def transfer(segment, tension, omega):
    length, mu, stiffness = (mp.mpf(x) for x in segment)
    root = mp.sqrt(tension**2 + 4 * stiffness * mu * omega**2)
    a = mp.sqrt((root - tension) / (2 * stiffness))
    b = mp.sqrt((root + tension) / (2 * stiffness))

    def state(k, cosine, sine, sign):
        # derivatives of cosine(k x) and sine(k x); sign = -1 for cos/sin, +1 for cosh/sinh
        columns = []
        c, s = cosine(k * length), sine(k * length)
        for y, dy in ((c, sign * k * s), (s, k * c)):
            d2, d3 = sign * k**2 * y, sign * k**2 * dy
            columns.append([y, dy, stiffness * d2, tension * dy - stiffness * d3])
        return columns

    def at_zero(k, sign):
        columns = []
        for y, dy in ((mp.mpf(1), mp.mpf(0)), (mp.mpf(0), k)):
            d2, d3 = sign * k**2 * y, sign * k**2 * dy
            columns.append([y, dy, stiffness * d2, tension * dy - stiffness * d3])
        return columns

    end = mp.matrix(state(a, mp.cos, mp.sin, -1) + state(b, mp.cosh, mp.sinh, 1)).T
    start = mp.matrix(at_zero(a, -1) + at_zero(b, 1)).T
    return end * start**-1


def characteristic(string, omega):
    whole = mp.eye(4)
    for segment in string["segments"]:
        whole = transfer(segment, mp.mpf(string["tension_N"]), omega) * whole
    rows, columns = ((0, 2), (1, 3)) if string["ends"] == "pinned" else ((0, 1), (2, 3))
    (p, q), (r, s) = [[whole[i, j] for j in columns] for i in rows]
    return p * s - q * r


def modes(string):
    digits = 0
    for length, _, stiffness in string["segments"]:
        digits += length * mp.sqrt(mp.mpf(string["tension_N"]) / stiffness) / mp.log(10)
    mp.mp.dps = int(40 + 3 * digits)
    travel = sum(l * mp.sqrt(mu / mp.mpf(string["tension_N"])) for l, mu, _ in string["segments"])
    step = mp.pi / travel / string.get("scan", 12)
    found, omega = [], step / 1000
    value = characteristic(string, omega)
    while len(found) < MODES:
        following = omega + step
        next_value = characteristic(string, following)
        if mp.sign(value) != mp.sign(next_value):
            low, high, f_low = omega, following, value
            for _ in range(18):
                middle = (low + high) / 2
                f_middle = characteristic(string, middle)
                if mp.sign(f_middle) == mp.sign(f_low):
                    low, f_low = middle, f_middle
                else:
                    high = middle
            root = mp.findroot(lambda w: characteristic(string, w), (low, high), solver="anderson", tol=mp.mpf(10) ** -30, verify=False)
            found.append(float(root / (2 * mp.pi)))
        omega, value = following, next_value
    return found



STRINGS = [
    {"name": "one layer, bare ends 20 and 12 mm", "tension_N": 900, "segments": [[0.02, 0.00746, 0.0145], [1.268, 0.0384, 0.0145], [0.012, 0.00746, 0.0145]]},
    {"name": "long thin core, no bare end at the front", "tension_N": 1100, "segments": [[1.93, 0.09, 0.02], [0.05, 0.0076, 0.02]]},
    {"name": "short stiff tenor string, wide bare ends", "tension_N": 700, "segments": [[0.05, 0.006, 0.01], [0.45, 0.011, 0.01], [0.05, 0.006, 0.01]]},
    {"name": "two layers of unequal ends", "tension_N": 1500, "segments": [[0.015, 0.0123, 0.0405], [0.014, 0.05, 0.0405], [1.1, 0.2, 0.0405], [0.009, 0.05, 0.0405], [0.011, 0.0123, 0.0405]]},
    {"name": "top treble, stiff", "tension_N": 650, "segments": [[0.05, 0.0035, 0.0035]]},
    {"name": "stiffness that changes with the mass", "tension_N": 800, "segments": [[0.2, 0.006, 0.01], [0.5, 0.03, 0.05], [0.3, 0.012, 0.002]]},
    {"name": "heavy lump in the middle", "tension_N": 500, "segments": [[0.4995, 0.006, 0.01], [0.001, 6.0, 0.01], [0.4995, 0.006, 0.01]]},
    {"name": "two heavy halves, nearly alike, joined by a light stretch", "tension_N": 600, "scan": 60, "segments": [[0.4, 0.2, 0.01], [0.2, 0.0005, 0.01], [0.401, 0.2, 0.01]]},
    {"name": "bare end of a tenth of a millimetre", "tension_N": 900, "segments": [[0.0001, 0.00746, 0.0145], [1.2999, 0.0384, 0.0145]]},
]

values = []
for string in STRINGS:
    for ends in ("pinned", "clamped"):
        case = {**string, "ends": ends}
        frequencies = modes(case)
        case.pop("scan", None)
        values.append({**case, "frequencies_Hz": frequencies})

print(json.dumps({"made_with": f"Python {platform.python_version()}, mpmath {mp.__version__}", "values": values}, indent=1))
