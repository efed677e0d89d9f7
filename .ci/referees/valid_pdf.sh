#!/usr/bin/env bash
# Every PDF of every job, checked against the format by qpdf: valid_pdf.sh FOLDER-OF-JOBS
set -u
cd "$1" || exit 1
while IFS= read -r file; do
    if said=$(qpdf --check "$file" 2>&1); then echo "ok valid: $file"
    else
        echo "FAIL valid: $file"
        sed 's/^/     /' <<<"$said" | head -4
    fi
done < <(find . -name '*.pdf' | sort)
# The check refuses what is broken: the table that says where each object stands, one byte off.
first=$(find . -name '*.pdf' | sort | head -1)
spoiled=$(mktemp)
sed 's/^startxref$/startxre/' "$first" >"$spoiled"
if qpdf --check "$spoiled" >/dev/null 2>&1; then echo "FAIL not refused: $first without its table of objects"
else echo "ok refused: $first without its table of objects"; fi
rm -f "$spoiled"
