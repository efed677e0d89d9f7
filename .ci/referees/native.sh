#!/usr/bin/env bash
# The native program against the plain one, byte for byte: native.sh NATIVE-FOLDER PLAIN-PROGRAM LIST PLAIN-JOBS FOLDER
#
# Every job of the list is made again by the native program, moved to another folder, from an empty one, in turns in countries that
# write 1,5 for 1.5, that have an İ, and where it is another day; then some by the plain program there.
set -u
native=$1 plain=$2 list=$3 jobs=$4 folder=$5
mkdir -p "$folder/empty" "$folder/native" "$folder/plain"
cp -r "$native" "$folder/program"
places=("LC_ALL=de_DE.UTF-8 LANG=de_DE.UTF-8 TZ=Europe/Berlin" "LC_ALL=tr_TR.UTF-8 LANG=tr_TR.UTF-8 TZ=Pacific/Kiritimati" "LC_ALL=C LANG=C TZ=America/Anchorage")
repository=$(cd "$(dirname "$list")/../.." && pwd)
cd "$folder/empty" || exit 1

if [ "$(find "$folder/program" -maxdepth 1 -type f | wc -l)" -le 3 ]; then echo "ok native: a program, a library and the profiles"
else echo "FAIL native: more than a program, a library and the profiles"; ls "$folder/program"; fi

i=0
while IFS= read -r line; do
    case $line in '' | '#'*) continue ;; esac
    name=${line%% *}
    eval "arguments=(${line#* })"
    # Folders in the list are the repository's.
    arguments=("${arguments[@]/#.ci\//$repository/.ci/}")
    read -ra place <<<"${places[i % 3]}"
    # shellcheck disable=SC2154
    if ! env "${place[@]}" "$folder/program/templateforge" make "${arguments[@]}" --out "$folder/native/$name" >"$folder/$name.log" 2>&1; then
        echo "FAIL native $name"
        sed 's/^/     /' "$folder/$name.log" | head -8
    elif diff -r "$jobs/$name" "$folder/native/$name" >"$folder/$name.diff"; then echo "ok native $name, ${place[2]}"
    else
        echo "FAIL native $name, ${place[*]}"
        sed 's/^/     /' "$folder/$name.diff" | head -8
    fi
    if [ $((i % 20)) -lt 2 ]; then
        env "${place[@]}" dotnet "$plain" make "${arguments[@]}" --out "$folder/plain/$name" >"$folder/$name.log" 2>&1
        if diff -r "$jobs/$name" "$folder/plain/$name" >"$folder/$name.diff"; then echo "ok plain $name, ${place[2]}"
        else echo "FAIL plain $name, ${place[*]}"; head -8 "$folder/$name.diff"; fi
    fi
    i=$((i + 1))
done <"$list"
