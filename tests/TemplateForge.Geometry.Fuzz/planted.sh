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
    'Arrangement/Contacts.cs~/crossing\.Second, known/d~contacts: of two crossings the second is missed'
    'Arrangement/Fans.cs~s/b\.Count : -b\.Count/b.Count : b.Count/~merging: edges that coincide add up where they run against each other'
    'Arrangement/Fans.cs~s/a\.Turn\.Bulge > b\.Turn\.Bulge/a.Turn.Bulge < b.Turn.Bulge/~fan order: two edges between the same nodes lie the wrong way round'
    'Offsetting/Strip.cs~s/radius < Tolerance\.Merge/radius < -1e9/~raw offset: an arc goes past its centre'
    'Arrangement/Joining.cs~s/return turn + 2 \* Math\.PI \* Math\.Round.*/return turn;/~joining: arcs that are joined forget whole turns'
    'Arrangement/Ray.cs~s/return falls ? 1 : -1;/return falls ? 1 : 0;/~windings: a ray misses what rises'
)

work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
tree=$work/tree
mkdir "$tree"
(cd "$root" && git ls-files -z --cached --others --exclude-standard | xargs -0 -I{} sh -c 'test -f "$1" && printf "%s\0" "$1"' _ {}) >"$work/files"
tar -C "$root" --null -T "$work/files" -cf - | tar -C "$tree" -xf -

failed=0
fail() { echo "FAIL $1"; failed=1; }

for ((i = 0; i < ${#faults[@]}; i++)); do
    number=$((i + 1))
    [ $# -eq 0 ] || [[ " $* " == *" $number "* ]] || continue
    IFS='~' read -r file change what <<<"${faults[$i]}"
    echo "== fault $number, $what"
    source=$tree/$engine/$file
    [ -f "$source" ] || { fail "there is no $file"; continue; }
    cp "$source" "$work/whole"
    sed -i "$change" "$source"
    if cmp -s "$source" "$work/whole"; then
        fail "the sed changes nothing in $file: $change"
        continue
    fi
    if (cd "$tree" && dotnet build -c Release -p:TreatWarningsAsErrors=false -p:RunAnalyzers=false "$fuzz") >"$work/build" 2>&1; then
        code=0
        start=$SECONDS
        (cd "$tree" && timeout 90 dotnet "$fuzz/bin/Release/net10.0/TemplateForge.Geometry.Fuzz.dll" --minutes 1 --failures 1) >"$work/out" 2>/dev/null || code=$?
        if [ "$code" -eq 1 ]; then
            echo "found after $((SECONDS - start)) s:"
            grep -m 1 -A 1 '^FAIL' "$work/out" | sed 's/^FAIL/    /'
        else
            fail "not found; the program ended with $code"
        fi
    else
        fail "does not build with it: $(grep -m 1 error "$work/build")"
    fi
    cp "$work/whole" "$source"
done
exit "$failed"
