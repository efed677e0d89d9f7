"""Saving that is killed at fifty random moments leaves whole sets or none: killed.py FOLDER PROGRAM…

The program replaces one job by another and is killed with SIGKILL somewhere on the way. What stands in the place must then be the
old set or the new one, bit for bit, or nothing; the next run must put everything right. The same for many jobs from a table."""
import hashlib
import random
import signal
import subprocess
import sys
import time
from pathlib import Path
from shutil import copytree, rmtree

from verdicts import Verdicts

MOMENTS = 50
PROFILE = "hole-plug-patch"
OLD, NEW = ["--set", "diameter=31"], ["--set", "diameter=36"]
TABLE_ROWS = 6
SEED = int(time.time())


def digest(folder):
    """Of every file's name and content; empty where there is no folder."""
    if not folder.is_dir():
        return ""
    found = hashlib.sha256()
    for file in sorted(p for p in folder.rglob("*") if p.is_file()):
        found.update(str(file.relative_to(folder)).encode() + b"\0" + file.read_bytes() + b"\0")
    return found.hexdigest()


def run(program, *words):
    return subprocess.run([*program, "make", PROFILE, *words], capture_output=True, text=True)


def killed(program, after, *words):
    """Whether it was still at work when it was killed."""
    process = subprocess.Popen([*program, "make", PROFILE, *words], stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)
    time.sleep(after)
    process.send_signal(signal.SIGKILL)
    return process.wait() == -signal.SIGKILL


def one_place(folder, program, verdicts, rng):
    old, new, stage = folder / "old", folder / "new", folder / "stage"
    for place, values in ((old, OLD), (new, NEW)):
        made = run(program, *values, "--out", str(place))
        verdicts.of(f"killed: the {place.name} set is made", [made.stderr] if made.returncode else [])
    sets = {digest(old): "old", digest(new): "new"}
    run(program, *NEW, "--out", str(new), "--replace")
    before = time.monotonic()
    run(program, *NEW, "--out", str(new), "--replace")
    whole = time.monotonic() - before

    found, wrong, caught = {"old": 0, "new": 0, "nothing": 0}, [], 0
    for moment in range(MOMENTS):
        rmtree(stage, ignore_errors=True)
        stage.mkdir()
        place = stage / "job"
        copytree(old, place)
        # Every other one late, where the saving is.
        after = whole * (rng.uniform(0, 1.05) if moment % 2 else rng.uniform(0.6, 1))
        caught += killed(program, after, *NEW, "--out", str(place), "--replace")
        seen = "nothing" if not place.exists() else sets.get(digest(place), "")
        if seen:
            found[seen] += 1
        else:
            wrong.append(f"after {after:.3f} s: {sorted(p.name for p in place.rglob('*'))}")
        before = time.monotonic()
        again = run(program, *NEW, "--out", str(place), "--replace")
        # As long as the last one took: a machine that does other work as well is now slow, now fast.
        whole = time.monotonic() - before
        left = sorted(p.name for p in stage.iterdir())
        if again.returncode != 0 or digest(place) != digest(new) or left != ["job"]:
            wrong.append(f"after {after:.3f} s the next run left {left}: {again.stderr}")
    print(f"   {MOMENTS} moments, seed {SEED}: {caught} were still at work; {found}")
    verdicts.of(f"killed at {MOMENTS} moments, a place holds the old set, the new one or none, and the next run puts it right", wrong)
    verdicts.of("killed: the moments lie within the work", [f"only {caught} did"] if caught < MOMENTS // 4 else [])


def many_places(folder, program, verdicts, rng):
    table, whole = folder / "values.csv", folder / "whole"
    table.write_text("job,diameter\n" + "".join(f"job-{i},{30 + i}\n" for i in range(TABLE_ROWS)))
    before = time.monotonic()
    made = run(program, "--from", str(table), "--out", str(whole))
    took = time.monotonic() - before
    verdicts.of("killed: a table of jobs is made", [made.stderr] if made.returncode else [])
    wanted = {place.name: digest(place) for place in whole.iterdir()}
    wrong, some = [], 0
    for _ in range(MOMENTS // 5):
        stage = folder / "many"
        rmtree(stage, ignore_errors=True)
        killed(program, rng.uniform(0.2, 1) * took, "--from", str(table), "--out", str(stage))
        jobs = [p for p in stage.iterdir() if not p.name.startswith(".")] if stage.exists() else []
        some += 0 < len(jobs) < TABLE_ROWS
        wrong += [p.name for p in jobs if digest(p) != wanted[p.name]]
        run(program, "--from", str(table), "--out", str(stage))
        if {p.name: digest(p) for p in stage.iterdir()} != wanted:
            wrong.append(f"the next run: {sorted(p.name for p in stage.iterdir())}")
    print(f"   {MOMENTS // 5} moments: {some} with some of the jobs made")
    verdicts.of("killed among many jobs, each place holds its whole set or nothing, and the next run makes the rest", wrong)


def main():
    folder, *program = sys.argv[1:]
    folder = Path(folder).resolve()
    folder.mkdir(parents=True, exist_ok=True)
    verdicts = Verdicts()
    rng = random.Random(SEED)
    one_place(folder, program, verdicts, rng)
    many_places(folder, program, verdicts, rng)
    verdicts.end()


main()
