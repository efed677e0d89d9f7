#!/usr/bin/env bash
# Shows that the fuzz program bites: plants faults in the engine, one at a time, in a copy of the working tree, and says which
# law and family found each within a minute. Fails when a fault is not found, or when its sed changes nothing.
#
#     bash tests/TemplateForge.Geometry.Fuzz/planted.sh [NUMBER…]      only these faults; by default all
set -euo pipefail
root=$(cd "$(dirname "$0")/../.." && pwd)
engine=src/TemplateForge.Geometry

# One fault a line: file | sed expression | what it is.
faults=(
    'Arrangement/Contacts.cs|s/if (count == 0) return;/if (count >= 0) return;/; s/if (!crossing.Exists) return;/if (!crossing.Exists \|\| crossing.First != crossing.First + 0) return; crossing = crossing with { Second = crossing.First };/|Contacts: of two crossings the second is missed'
)

work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
fuzz=tests/TemplateForge.Geometry.Fuzz
mkdir "$work/tree"
(cd "$root" && git ls-files -z --cached --others --exclude-standard | tar --null -T - -cf - --ignore-failed-read 2>/dev/null) | tar -xf - -C "$work/tree"
