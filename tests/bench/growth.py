"""Draws what growth_bench measured: time against size, both as logarithms, one line a work. Arguments: the program's
output, the SVG to write."""
import math
import sys

WIDTH, HEIGHT, LEFT, RIGHT, TOP, BOTTOM = 760, 460, 70, 190, 20, 50
NAMES = {"placement": "placement, by bones", "findings": "findings, by judged joints",
         "scanReady": "a scan made ready, by triangles"}
DASHES = ["", "7 4", "2 4"]


def points(path):
    found = {}
    with open(path) as file:
        for line in file:
            words = line.split()
            if words[:1] == ["point"]:
                found.setdefault(words[1], []).append((float(words[2]), float(words[3])))
    return found


def time_text(seconds):
    for unit, name in ((1, "s"), (1e-3, "ms"), (1e-6, "us")):
        if seconds >= unit * 0.999:
            return f"{seconds / unit:.0f} {name}"
    return f"{seconds * 1e9:.0f} ns"


def main(source, target):
    works = points(source)
    sizes = [size for line in works.values() for size, _ in line]
    times = [seconds for line in works.values() for _, seconds in line]
    x0, x1 = math.floor(math.log10(min(sizes))), math.ceil(math.log10(max(sizes)))
    y0, y1 = math.floor(math.log10(min(times))), math.ceil(math.log10(max(times)))
    x = lambda size: LEFT + (math.log10(size) - x0) / (x1 - x0) * (WIDTH - LEFT - RIGHT)
    y = lambda time: HEIGHT - BOTTOM - (math.log10(time) - y0) / (y1 - y0) * (HEIGHT - TOP - BOTTOM)
    out = [f'<svg xmlns="http://www.w3.org/2000/svg" width="{WIDTH}" height="{HEIGHT}" font-family="sans-serif" '
           'font-size="12"><rect width="100%" height="100%" fill="white"/>']
    for power in range(x0, x1 + 1):
        out.append(f'<path d="M{x(10 ** power):.1f} {TOP}V{HEIGHT - BOTTOM}" stroke="#ddd"/><text x="{x(10 ** power):.1f}" '
                   f'y="{HEIGHT - BOTTOM + 18}" text-anchor="middle">{10 ** power:,}</text>')
    for power in range(y0, y1 + 1):
        out.append(f'<path d="M{LEFT} {y(10 ** power):.1f}H{WIDTH - RIGHT}" stroke="#ddd"/><text x="{LEFT - 8}" '
                   f'y="{y(10 ** power) + 4:.1f}" text-anchor="end">{time_text(10 ** power)}</text>')
    for (work, line), dash in zip(works.items(), DASHES):
        path = "L".join(f"{x(size):.1f} {y(seconds):.1f}" for size, seconds in line)
        out.append(f'<path d="M{path}" fill="none" stroke="black" stroke-width="1.6" stroke-dasharray="{dash}"/>')
        out += [f'<circle cx="{x(size):.1f}" cy="{y(seconds):.1f}" r="3"/>' for size, seconds in line]
        size, seconds = line[-1]
        out.append(f'<text x="{x(size) + 8:.1f}" y="{y(seconds) + 4:.1f}">{NAMES.get(work, work)}</text>')
    out.append(f'<text x="{(LEFT + WIDTH - RIGHT) / 2}" y="{HEIGHT - 10}" text-anchor="middle">bones, joints or '
               "triangles; a line that rises as steeply as the grid's diagonal grows in proportion</text></svg>")
    with open(target, "w") as file:
        file.write("\n".join(out) + "\n")


if __name__ == "__main__":
    main(*sys.argv[1:])
