#!/usr/bin/env bash
# The tool package: packed, installed and used from an empty folder: tool.sh REPOSITORY FOLDER
set -u
repository=$1 folder=$2
mkdir -p "$folder/empty" "$folder/package"
check() { local what=$1; shift; if "$@" >"$folder/log" 2>&1; then echo "ok $what"; else echo "FAIL $what"; tail -8 "$folder/log" | sed 's/^/     /'; fi; }

check "tool: packed" dotnet pack "$repository/src/TemplateForge.Cli" -c Release --no-build -o "$folder/package"
# No source but the folder: what is installed is what was packed just now.
printf '<configuration><packageSources><clear /><add key="here" value="%s" /></packageSources></configuration>\n' "$folder/package" >"$folder/nuget.config"
export NUGET_PACKAGES="$folder/cache"
check "tool: installed" dotnet tool install TemplateForge.Cli --tool-path "$folder/bin" --configfile "$folder/nuget.config"
cd "$folder/empty" || exit 1
check "tool: lists the library, which travels with it" sh -c "'$folder/bin/templateforge' list | grep -q booster-clearance-notch"
check "tool: makes a profile from an empty folder" "$folder/bin/templateforge" make booster-clearance-notch
check "tool: all files are there" test "$(find out/booster-clearance-notch -type f | wc -l)" -eq 6
check "tool: uninstalled" dotnet tool uninstall TemplateForge.Cli --tool-path "$folder/bin"
