"""Prints the table of tests/bench/run from what the benchmark programs measured; see rows.txt for the form of a row."""
import json
import os
import platform
import re
import sys
import time

SECONDS = {"ns": 1e-9, "us": 1e-6, "ms": 1e-3, "s": 1.0}
SHARES = {"%": 0.01, "": 1.0}


def google_benchmark(path):
    """name -> (value, is a time); of repeated benchmarks the least time, counters from the same run."""
    found = {}
    with open(path) as file:
        runs = json.load(file)["benchmarks"]
    for run in runs:
        if run.get("run_type") == "aggregate":
            continue
        name = re.sub(r"/(repeats:|min_time:|real_time)[^/]*", "", run["name"])
        seconds = run["real_time"] * SECONDS[run["time_unit"]]
        if name in found and found[name][0] <= seconds:
            continue
        found[name] = (seconds, True)
        for key, value in run.items():
            if isinstance(value, float):
                found[f"{name}:{key}"] = (value, False)
    return found


def printed(path):
    """The same from lines "@ NAME VALUE UNIT"; beside it notes, name -> words, from lines "# NAME WORDS", and what
    cannot be measured on this machine, name -> why, from lines "- NAME WORDS"."""
    found, notes, absent = {}, {}, {}
    with open(path) as file:
        for line in file:
            sign, *words = line.split() or [""]
            if sign == "@" and len(words) >= 2:
                unit = words[2] if len(words) > 2 else ""
                is_time = unit in SECONDS
                found[words[0]] = (float(words[1]) * (SECONDS if is_time else SHARES)[unit], is_time)
            elif sign in ("#", "-") and len(words) >= 2:
                (notes if sign == "#" else absent)[words[0]] = " ".join(words[1:])
    return found, notes, absent


def measured(folder, program):
    found, notes, absent = printed(os.path.join(folder, program + ".txt"))
    path = os.path.join(folder, program + ".json")
    if os.path.exists(path) and os.path.getsize(path) > 0:
        found.update(google_benchmark(path))
    return found, notes, absent


def shown(value, is_time):
    if not is_time:
        return f"{value:.4g}"
    for unit in ("ns", "us", "ms"):
        if value < 1000 * SECONDS[unit]:
            return f"{value / SECONDS[unit]:.3g} {unit}"
    return f"{value:.3g} s"


def met(target, ours, ratio):
    times = re.fullmatch(r"ours <= ([\d.]+) x reference", target)
    if times:
        return 1 / ratio <= float(times.group(1))
    what, sign, number, unit = re.fullmatch(r"(ratio|ours)\s*([<>]=)\s*([\d.]+)\s*(\S*)", target).groups()
    limit = float(number) * (SECONDS.get(unit) or SHARES[unit])
    value = ratio if what == "ratio" else ours
    return value >= limit if sign == ">=" else value <= limit


def rows(path, pattern):
    with open(path) as file:
        for line in file:
            if line.strip() and not line.startswith("#") and re.search(pattern, line):
                cells = [cell.strip() for cell in line.split("|")]
                if len(cells) != 6:
                    sys.exit(f"error: {path}: six cells wanted: {line.strip()}")
                yield cells


def row(cells, found, notes, absent):
    """The row as printed, and whether its target was missed."""
    work, program, ours_name, library, reference_name, target = cells
    if ours_name in absent:
        return (work, "-", library, "-", "-", target, "not here", absent[ours_name]), False
    for name in (ours_name, reference_name):
        if name != "-" and name not in found:
            sys.exit(f"error: {program} measured no '{name}'; it measured {', '.join(sorted(found))}")
    ours, is_time = found[ours_name]
    theirs = found[reference_name] if reference_name != "-" else None
    ratio = theirs[0] / ours if theirs and ours > 0 else None
    good = met(target, ours, ratio)
    return (work, shown(ours, is_time), library, shown(*theirs) if theirs else "-", f"{ratio:.3g}" if ratio else "-",
            target, "met" if good else "MISSED", notes.get(ours_name, "")), not good


def main(list_path, folder, pattern):
    table = [("work", "ours", "reference", "its time", "ratio", "target", "", "")]
    results, missed = {}, 0
    for cells in rows(list_path, pattern):
        program = cells[1]
        if program not in results:
            results[program] = measured(folder, program)
        printed_row, bad = row(cells, *results[program])
        table.append(printed_row)
        missed += bad
    widths = [max(len(row[k]) for row in table) for k in range(len(table[0]))]
    load = os.getloadavg()[2]
    print(f"{platform.machine()}, {os.cpu_count()} cores, {time.strftime('%Y-%m-%d')}; least of the repetitions; "
          f"load of the last quarter of an hour {load:.1f}")
    for cells in table:
        print("  ".join(cell.ljust(width) for cell, width in zip(cells, widths)).rstrip())
    return 1 if missed else 0


if __name__ == "__main__":
    sys.exit(main(*sys.argv[1:]))
