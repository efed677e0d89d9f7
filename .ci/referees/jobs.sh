#!/usr/bin/env bash
# Makes the jobs that the other referees look at: jobs.sh PROGRAM LIST FOLDER
set -u
program=$1 list=$2 folder=$3
while IFS= read -r line; do
    case $line in '' | '#'*) continue ;; esac
    name=${line%% *}
    eval "arguments=(${line#* })"
    # shellcheck disable=SC2154
    if dotnet "$program" make "${arguments[@]}" --out "$folder/$name" >"$folder/$name.log" 2>&1; then
        echo "ok make $name"
    else
        echo "FAIL make $name"
        sed 's/^/     /' "$folder/$name.log"
    fi
done <"$list"
