#!/usr/bin/env bash
# Shows that the fuzz program bites: plants faults in the engine, one at a time, in a copy of the working tree, and says which
# law and family found each within a minute. Fails when a fault is not found, when its sed changes nothing, or when the engine
# with it does not build.
#
#     bash tests/TemplateForge.Geometry.Fuzz/planted.sh [NUMBER…]      only these faults; by default all
set -euo pipefail
root=$(cd "$(dirname "$0")/../.." && pwd)
engine=src/TemplateForge.Geometry
fuzz=tests/TemplateForge.Geometry.Fuzz

# One fault a line, file ~ sed expression ~ what is wrong then.
faults=(
    'Arrangement/Contacts.cs~/crossing\.Second, known, crosses/d~contacts: of two crossings the second is missed'
    'Arrangement/Fans.cs~s/b\.Count : -b\.Count/b.Count : b.Count/~merging: edges that coincide add up where they run against each other'
    'Arrangement/Fans.cs~s/a\.Turn\.Bulge > b\.Turn\.Bulge/a.Turn.Bulge < b.Turn.Bulge/~fan order: two edges between the same nodes lie the wrong way round'
    'Offsetting/Strip.cs~s/radius <= 0/radius < -1e9/~raw offset: an arc goes past its centre'
    'Arrangement/Joining.cs~s/return turn + 2 \* Math\.PI \* Math\.Round.*/return turn;/~joining: arcs that are joined forget whole turns'
    'Arrangement/Ray.cs~s/return falls ? 1 : -1;/return falls ? 1 : 0;/~windings: a ray misses what rises'
)

work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
failed=0
fail() { echo "FAIL $1"; failed=1; }

copy() { mkdir "$1" && tar -C "$root" --null -T "$work/files" -cf - | tar -C "$1" -xf -; }
build() { (cd "$1" && dotnet build -c Release -p:TreatWarningsAsErrors=false -p:RunAnalyzers=false "$fuzz") >"$work/build" 2>&1; }
run() { (cd "$1" && shift && timeout 120 dotnet "$fuzz/bin/Release/net10.0/TemplateForge.Geometry.Fuzz.dll" "$@") 2>/dev/null; }

# The first failure that the engine without a fault does not have.
first_of_its_own() {
    local law family seed number why
    while read -r _ family law _ _ _ seed _ number; do
        read -r why
        if run "$work/whole" --family "$family" --law "${law%:}" --seed "$seed" --from "$number" --cases 1 >/dev/null; then
            echo "    law ${law%:}, family $family, case $number of seed $seed: $why"
            return 0
        fi
    done < <(grep -A 1 '^FAIL' "$work/out" | grep -v '^--')
    return 1
}

(cd "$root" && git ls-files -z --cached --others --exclude-standard | xargs -0 sh -c 'for f; do test -f "$f" && printf "%s\0" "$f"; done; true' _) >"$work/files"
copy "$work/whole"
copy "$work/tree"
build "$work/whole" || { cat "$work/build"; exit 1; }

for ((i = 0; i < ${#faults[@]}; i++)); do
    number=$((i + 1))
    [ $# -eq 0 ] || [[ " $* " == *" $number "* ]] || continue
    IFS='~' read -r file change what <<<"${faults[$i]}"
    echo "== fault $number, $what"
    sound=$work/whole/$engine/$file
    [ -f "$sound" ] || { fail "there is no $file"; continue; }
    sed "$change" "$sound" >"$work/tree/$engine/$file"
    if cmp -s "$sound" "$work/tree/$engine/$file"; then
        fail "the sed changes nothing in $file: $change"
        continue
    fi
    if build "$work/tree"; then
        start=$SECONDS
        run "$work/tree" --minutes 0.9 --failures 10 >"$work/out" && code=0 || code=$?
        took=$((SECONDS - start))
        if [ "$code" -eq 1 ] && found=$(first_of_its_own); then
            echo "found after $took s:"
            echo "$found"
        else
            fail "not found; the program ended with $code after $took s"
        fi
    else
        fail "does not build with it: $(grep -m 1 error "$work/build")"
    fi
    cp "$sound" "$work/tree/$engine/$file"
done
exit "$failed"
