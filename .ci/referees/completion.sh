#!/usr/bin/env bash
# Tab completion as the shells run it: completion.sh FOLDER-OF-THE-PROGRAM
set -u
export PATH="$1:$PATH"

# In this very bash: what the tab key would leave to choose from on a line.
source <(templateforge completion bash)
after() {
    COMP_LINE=$1 COMP_POINT=${#1} COMPREPLY=()
    $(complete -p templateforge | sed 's/.*-F \([^ ]*\) .*/\1/')
    echo "${COMPREPLY[*]-}"
}
says() {
    local found
    found=$(after "$1")
    if [ "$found" = "$2" ]; then echo "ok bash: $1⇥"; else echo "FAIL bash: $1⇥ gave '$found', not '$2'"; fi
}
says "templateforge ma" "make"
says "templateforge make booster-cl" "booster-clearance-notch"
says "templateforge make booster-clearance-notch --pap" "--paper"
says "templateforge make booster-clearance-notch --paper lett" "letter"
says "templateforge make booster-clearance-notch --cutter plas" "plasma-table"
says "templateforge make booster-clearance-notch --set diam" "diameter="
says "templateforge make hole-plug-patch --set hole=rounded" "rounded_rectangle"
says "templateforge make hole-plug-patch --out " ""
# Where nothing is said bash offers files.
if complete -p templateforge | grep -q -- '-o default'; then echo "ok bash: files where a file is meant"; else echo "FAIL bash: no files"; fi

if command -v zsh >/dev/null; then zsh -f "$(dirname "$0")/completion.zsh"; else echo "   no zsh here"; fi

if command -v pwsh >/dev/null; then
    found=$(pwsh -NoProfile -Command '
        templateforge completion powershell | Out-String | Invoke-Expression
        foreach ($line in "templateforge make booster-cl", "cd .; templateforge make booster-cl") {
            ([System.Management.Automation.CommandCompletion]::CompleteInput($line, $line.Length, $null)).CompletionMatches.CompletionText
        }')
    if [ "$found" = $'booster-clearance-notch\nbooster-clearance-notch' ]; then echo "ok PowerShell"; else echo "FAIL PowerShell gave '$found'"; fi
else
    echo "   no PowerShell here"
fi
