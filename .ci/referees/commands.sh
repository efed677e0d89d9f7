#!/usr/bin/env bash
# The program from outside, as a person at a shell meets it: commands.sh PROGRAM PROFILES
set -u
program=$1 profiles=$2
here=$(mktemp -d)
trap 'cd /; umount "$here/full" "$here/locked" 2>/dev/null; rm -rf "$here"' EXIT
cd "$here" || exit 1

tf() { dotnet "$program" "$@"; }
ok() { echo "ok $1"; }
fail() { echo "FAIL $1"; [ $# -gt 1 ] && sed 's/^/     /' "$2" | head -8; }
check() { local what=$1; shift; if "$@" >"$here/check.log" 2>&1; then ok "$what"; else fail "$what" "$here/check.log"; fi; }
set_of() { (cd "$1" && find . -type f -exec sha256sum {} + | sort -k2); }
same() { diff <(set_of "$1") <(set_of "$2"); }

# --- What is right ---------------------------------------------------------------------------------------------------------
check "make with nothing but the profile's name" tf make booster-clearance-notch
check "it writes the six files" test "$(ls out/booster-clearance-notch | tr '\n' ' ')" = "job-sheet.pdf job.json panel-cut.dxf preview.png preview.svg template.pdf "
check "the same again is the same job" tf make booster-clearance-notch
tf make booster-clearance-notch --out twice >/dev/null 2>&1
check "two runs write the same bytes" same out/booster-clearance-notch twice
check "a job made again from its record" tf make --job out/booster-clearance-notch/job.json --out again
check "it is the same, byte for byte" same out/booster-clearance-notch again
env LC_ALL=de_DE.UTF-8 LANG=de_DE.UTF-8 dotnet "$program" make booster-clearance-notch --out german >/dev/null 2>&1
check "the same bytes where 1.5 is written 1,5" same out/booster-clearance-notch german

cp -r "$(dirname "$program")" changed
sed -i 's/default: 190/default: 200/; s/version: 1/version: 2/' changed/profiles/openings/booster-clearance-notch.yaml
sed -i 's/overlap: 12/overlap: 20/' changed/profiles/shop/habits.yaml
dotnet "changed/$(basename "$program")" make --job out/booster-clearance-notch/job.json --out later >/dev/null 2>&1
check "byte for byte after the library has changed" same out/booster-clearance-notch later
dotnet "changed/$(basename "$program")" make booster-clearance-notch --out newer >/dev/null 2>&1
check "and the changed library makes something else" test "$(set_of newer)" != "$(set_of later)"

tf make booster-clearance-notch --hand both --out hands >hands.log 2>&1
check "both hands lie beside each other" test "$(ls hands | tr '\n' ' ')" = "left right "
check "and the one that was not measured is named" grep -qi 'not measured' hands.log
check "list names both profiles" sh -c "dotnet '$program' list | grep -q booster-clearance-notch && dotnet '$program' list | grep -q hole-plug-patch"
check "list as JSON" sh -c "dotnet '$program' list --json | /usr/bin/python3 -m json.tool"
check "show as JSON" sh -c "dotnet '$program' show hole-plug-patch --json | /usr/bin/python3 -m json.tool"
check "make as JSON" sh -c "dotnet '$program' make hole-plug-patch --json --out json | /usr/bin/python3 -m json.tool"
check "the shipped profiles are sound" find "$profiles" -mindepth 2 -name '*.yaml' -not -path '*/shop/*' -exec dotnet "$program" check-profile {} +
check "no escape codes in a pipe" sh -c "! dotnet '$program' list | grep -q \$(printf '\\033')"
for command in list show make check-profile check-dxf completion; do
    check "help of $command has examples" sh -c "dotnet '$program' $command --help | grep -qi example"
done
# On a screen of its own; the colour codes are those of ECMA-48, 8.3.117.
check "a screen has colour" sh -c "script -qec \"dotnet '$program' list notch\" /dev/null </dev/null | grep -q \$(printf '\\033')"
check "but not where NO_COLOR is set, nor is it readied for keys" sh -c "! script -qec \"env TERM=xterm NO_COLOR=1 dotnet '$program' list notch\" /dev/null </dev/null | grep -qE \$(printf '\\033')'\\[([0-9;]*m|\\?1h)'"
check "nor on a terminal that knows none" sh -c "! script -qec \"env TERM=dumb dotnet '$program' list notch\" /dev/null </dev/null | grep -q \$(printf '\\033')"
tf list >/dev/full 2>nowhere.err
code=$?
check "output that cannot be written is told" sh -c "[ $code -eq 1 ] && grep -qE ':[0-9]+:[0-9]+: ' nowhere.err && ! grep -q 'should not have' nowhere.err"
tf list 2>/dev/null | head -1 >first.txt
check "but not output that nobody reads to its end" test "${PIPESTATUS[0]} $(wc -l <first.txt)" = "0 1"

# --- Many jobs from a table ------------------------------------------------------------------------------------------------
tf show hole-plug-patch --csv >headings.csv
check "the headings of a table" grep -q '^job,.*diameter' headings.csv
printf 'job,diameter\r\nfirst,31\r\nsecond,"1 1/4 in"\r\n' >values.csv
check "a table of two jobs" tf make hole-plug-patch --from values.csv --out many
check "each in a folder of its name" test "$(ls many | tr '\n' ' ')" = "first second "
tf make hole-plug-patch --set "diameter=1 1/4 in" --out alone >/dev/null 2>&1
check "the same as the job alone, byte for byte" same alone many/second
check "its cut file passes the check of anyone's" tf check-dxf alone/patch-cut.dxf
check "a job of many made again from its record" tf make --job many/first/job.json --out first-again
check "and the same, byte for byte" same many/first first-again
check "as JSON" sh -c "dotnet '$program' make hole-plug-patch --from values.csv --out many --json | /usr/bin/python3 -m json.tool"

check "a coupon is printed" tf coupon attic --paper letter
check "what was measured on it is entered" tf coupon attic --paper letter --level 169.7 --upright 230.3 --rising 286.1 --falling 286 --measured-on 2026-01-31 --shop own
check "and in inches" tf coupon attic --paper a3 --level "9 13/16 in" --upright "14 15/16 in" --rising "17 7/8 in" --falling "17 7/8 in" --shop own
refuse_day() { ! tf coupon attic --paper letter --level 169.7 --upright 230.3 --rising 286.1 --falling 286 --measured-on 2999-01-01 --shop own; }
check "but not for a day that has not come" refuse_day
check "and corrected" sh -c "dotnet '$program' make hole-plug-patch --paper letter --printer attic --shop own --out attic | grep -q 'corrected for attic'"
check "and made again from the record alone" sh -c "rm -r own; dotnet '$program' make --job attic/job.json --out attic-again"
check "byte for byte" same attic attic-again
check "a roll" tf make hole-plug-patch --paper "roll 610mm" --out roll

# --- What is wrong: one clear message with its place, no success, nothing written ----------------------------------------------
# refuse WHAT WORDS ARGUMENTS…: the message must hold the words.
refuse() {
    local what=$1 words=$2 code
    shift 2
    rm -rf wrong
    tf "$@" >wrong.out 2>wrong.err </dev/null
    code=$?
    if [ $code -eq 0 ] || [ $code -ge 128 ]; then fail "$what: exit code $code" wrong.err
    elif [ -e wrong ]; then fail "$what: something was written"
    elif [ -s wrong.out ]; then fail "$what: says something on standard output" wrong.out
    elif grep -qE '^   at |Unhandled|Exception' wrong.err; then fail "$what: a trace of the program" wrong.err
    elif ! grep -qE ':[0-9]+:[0-9]+: ' wrong.err; then fail "$what: no place" wrong.err
    elif [ "$(grep -cE ':[0-9]+:[0-9]+: ' wrong.err)" -ne 1 ]; then fail "$what: not one message" wrong.err
    elif ! grep -q -- "$words" wrong.err; then fail "$what: not the right words ($words)" wrong.err
    else ok "$what"; fi
}
notch() { refuse "$1" "$2" make booster-clearance-notch --out wrong "${@:3}"; }
printf 'job,diameter\na,31\nb,31 kg\n' >units.csv
refuse "a wrong unit in a table" "units.csv:3:6" make hole-plug-patch --from units.csv --out wrong
printf 'job,diametre\na,31\n' >heading.csv
refuse "a misspelt heading" "diameter" make hole-plug-patch --from heading.csv --out wrong
printf 'job,diameter\na,31,4\n' >cells.csv
refuse "a cell too many" "cells.csv:2:1" make hole-plug-patch --from cells.csv --out wrong
refuse "a release for a file that is not written" "--repair" check-dxf alone/patch-cut.dxf --dxf r12
refuse "a layer that is not there" "Did you mean CUT" check-dxf alone/patch-cut.dxf --layer cutt
refuse "a shell that is none of the three" "zsh" completion ksh
refuse "a misspelt profile" booster-clearance-notch make boster-clearance-notch --out wrong
notch "a misspelt parameter" diameter --set diametr=190
notch "a misspelt paper" letter --paper leter
notch "a misspelt cutter" router --cutter ruoter
notch "a kerf that nobody has measured" "--kerf" --cutter plasma-table
notch "a value out of range" "20 mm to 320 mm" --set diameter=500
notch "not a number" number --set diameter=NaN
notch "1e300" larger --set diameter=1e300
notch "a wrong dimension" angle --set "diameter=30 deg"
notch "a bare gauge" "galv" --set "sheet=18 ga"
notch "a comma for a point" "1.5" --set sheet=1,5
notch "less than 15 mm of panel left" "15 mm" --set panel_depth=150
notch "a hand that is none" hand --hand third
notch "--set without a value" name=value --set diameter
printf 'this: is: not\n  yaml at [all\n' >broken.yaml
refuse "a paper that is none" 500x700mm make hole-plug-patch --paper a33 --out wrong
refuse "an overlap that holds nothing" "5 to 30 mm" make hole-plug-patch --overlap 1mm --out wrong
refuse "a printer that nobody has" coupon make hole-plug-patch --printer attic --out wrong
refuse "a turn that is none" anticlockwise make hole-plug-patch --turn sideways --out wrong
refuse "a coupon printed fit to page" "fit to page" coupon attic --paper letter --level 160 --upright 216 --rising 269 --falling 269
refuse "a file that is not YAML" broken.yaml make broken.yaml --out wrong
printf 'a: &a [x, x]\nb: &b [*a, *a]\nc: &c [*b, *b]\n' >bomb.yaml
refuse "an alias bomb" bomb.yaml make bomb.yaml --out wrong
head -c 3000 /dev/urandom >noise.yaml
refuse "noise" noise.yaml make noise.yaml --out wrong
printf '{"format": "something else"}' >other.json
refuse "a record that is none of ours" other.json make --job other.json --out wrong
refuse "a file that is not there" nowhere.yaml check-profile nowhere.yaml

# --- Folders -------------------------------------------------------------------------------------------------------------------
before=$(set_of out/booster-clearance-notch)
tf make booster-clearance-notch --set clearance=14 >other.log 2>&1
check "a folder with another job is refused" test $? -ne 0
check "and left as it was" test "$before" = "$(set_of out/booster-clearance-notch)"
check "until --replace is given" tf make booster-clearance-notch --set clearance=14 --replace
mkdir mine && echo precious >mine/notes.txt
tf make booster-clearance-notch --out mine --replace >mine.log 2>&1
check "a folder of somebody's own is refused even then" test "$(cat mine/notes.txt)" = precious -a "$(ls mine)" = notes.txt

mkdir locked && mount -t tmpfs -o ro tmpfs locked 2>mount.log
tf make booster-clearance-notch --out locked/wrong >locked.out 2>locked.err
code=$?
check "a read-only folder is told" sh -c "[ $code -ne 0 ] && grep -qE ':[0-9]+:[0-9]+: ' locked.err && ! grep -q '^   at ' locked.err && [ -z \"\$(ls -A locked)\" ]"
mkdir full && mount -t tmpfs -o size=300k tmpfs full 2>mount.log
tf make booster-clearance-notch --out full/wrong >full.out 2>full.err
code=$?
check "a full disk is told, and nothing half-written stays" sh -c "[ $code -ne 0 ] && grep -qE ':[0-9]+:[0-9]+: ' full.err && ! grep -q '^   at ' full.err && [ ! -e full/wrong ] && [ -z \"\$(find full -type f -size +0)\" ]"

# Stopped at any moment: the whole set or none.
whole=$(ls out/booster-clearance-notch | wc -l)
stopped() {
    local signal=$1 times=$2 i count code bad=0 cut_short=0
    for i in $(seq "$times"); do
        rm -rf stop && mkdir stop
        # A shell starts what runs beside it with Ctrl-C ignored; a person's terminal does not.
        env --default-signal=INT dotnet "$program" make booster-clearance-notch --out stop/job >/dev/null 2>&1 &
        local pid=$!
        sleep "$(awk -v r=$RANDOM 'BEGIN { print 0.05 + r / 32768 * 2.2 }')"
        kill "-$signal" $pid 2>/dev/null
        wait $pid 2>/dev/null
        code=$?
        [ $code -eq 0 ] || cut_short=$((cut_short + 1))
        [ "$signal" != INT ] || [ $code -eq 0 ] || [ $code -eq 130 ] || bad=$((bad + 1))
        count=$(ls stop/job 2>/dev/null | wc -l)
        [ "$count" -eq 0 ] || [ "$count" -eq "$whole" ] || bad=$((bad + 1))
        [ "$signal" = KILL ] || [ -z "$(find stop -mindepth 1 -maxdepth 1 -name '.job.*.new')" ] || bad=$((bad + 1))
        if [ "$signal" = KILL ]; then
            tf make booster-clearance-notch --out stop/job >/dev/null 2>&1
            [ "$(ls stop/job | wc -l)" -eq "$whole" ] || bad=$((bad + 1))
        fi
    done
    echo "$times runs, $cut_short cut short, $bad wrong"
    [ "$bad" -eq 0 ] && [ "$cut_short" -gt 0 ]
}
check "Ctrl-C at ten moments leaves the whole set or none" stopped INT 10
check "asked to end at five moments, the same" stopped TERM 5
check "killed at five moments, the same, and the next run works" stopped KILL 5
