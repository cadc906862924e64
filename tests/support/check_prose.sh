#!/bin/bash
# usage: check_prose.sh SOURCE_FOLDER [--shrink]
# Core says values and reasons, ui/words says sentences: no literal of four words or more stands in core, but in
# assertions and std::logic_error, which only programmers read, and in style sheets. What is still there is counted by file in
# prose_left.txt, which only shrinks: --shrink brings its counts down to what is there.
set -euo pipefail
exec python3 - "$@" <<'PYTHON'
import pathlib
import re
import sys

source = pathlib.Path(sys.argv[1])
shrink = "--shrink" in sys.argv[2:]
left_file = source / "tests/support/prose_left.txt"

TOKEN = re.compile(r'//[^\n]*|/\*.*?\*/|R"(?P<tag>\w*)\((?P<raw>.*?)\)(?P=tag)"|"(?P<text>(?:\\.|[^"\\\n])*)"'
                   r"|'(?:\\.|[^'\\\n])+'", re.S)
FOR_PROGRAMMERS = re.compile(r"\b(?:assert|static_assert|std::logic_error)\s*\(")
WORD = re.compile(r"[A-Za-z][A-Za-z'’-]*")


def ends_of_calls(code):
    """Where calls of assert and logic_error begin and end, in code whose literals are blanked."""
    for call in FOR_PROGRAMMERS.finditer(code):
        depth = 0
        for at in range(call.end() - 1, len(code)):
            depth += {"(": 1, ")": -1}.get(code[at], 0)
            if depth == 0:
                yield call.start(), at
                break


def prose_of(path):
    """Lines and literals of four words or more; literals that stand side by side are one."""
    code = path.read_text(encoding="utf-8")
    blank, literals = list(code), []
    for token in TOKEN.finditer(code):
        text = token["text"] if token["text"] is not None else token["raw"]
        for at in range(*token.span()):
            if code[at] != "\n":
                blank[at] = " "
        if text is None:
            continue
        blank[token.start()] = blank[token.end() - 1] = '"'
        if literals and not "".join(blank[literals[-1][1]:token.start()]).strip():
            start, _, before = literals.pop()
            literals.append((start, token.end(), before + text))
        else:
            literals.append((token.start(), token.end(), text))
    blank = "".join(blank)
    apart = list(ends_of_calls(blank))
    for start, _, text in literals:
        words = re.sub(r"\\[ntr]", " ", text).split()
        style_sheet = "{" in text and "}" in text and ";" in text
        if style_sheet or sum(bool(WORD.search(word)) for word in words) < 4 or any(a < start < b for a, b in apart):
            continue
        if blank[:start].rsplit("\n", 1)[-1].lstrip().startswith("#"):
            continue
        yield code.count("\n", 0, start) + 1, text


left = {}
if left_file.exists():
    for line in left_file.read_text(encoding="utf-8").splitlines():
        if line and not line.startswith("#"):
            path, count = line.rsplit(" ", 1)
            left[path] = int(count)
found = {}
for path in sorted((source / "core").rglob("*")):
    if path.suffix in (".h", ".cpp"):
        name = str(path.relative_to(source))
        if prose := list(prose_of(path)):
            found[name] = prose
faults = 0
for name, prose in found.items():
    if len(prose) > left.get(name, 0):
        faults += 1
        print(f"{name}: {len(prose)} sentences where {left.get(name, 0)} are left; core says values, ui/words sentences:",
              file=sys.stderr)
        for line, text in prose:
            print(f"  {name}:{line}: {text}", file=sys.stderr)
lower = {name: min(count, len(found.get(name, ()))) for name, count in left.items()}
if shrink:
    lines = ["# Sentences that still stand in core, by file; see check_prose.sh. This list only shrinks."]
    lines += [f"{name} {count}" for name, count in sorted(lower.items()) if count]
    left_file.write_text("\n".join(lines) + "\n", encoding="utf-8")
elif lower != left:
    print("fewer sentences are left in core than prose_left.txt says: run tests/support/check_prose.sh . --shrink")
print(f"{sum(map(len, found.values()))} sentences are left in core.")
sys.exit(1 if faults else 0)
PYTHON
