# Tab completion in a zsh of its own on a terminal of its own: the tab key is pressed, and what stands on the line then is written
# down. What is typed stands before the sign of that key, what becomes of it behind it.
zmodload zsh/zpty
lines=(
    'templateforge ma⇥templateforge make '
    'cd . && templateforge ma⇥cd . && templateforge make '
    'NO_COLOR=1 templateforge ma⇥NO_COLOR=1 templateforge make '
    'true; templateforge make booster-cl⇥true; templateforge make booster-clearance-notch '
    'templateforge make hole-plug-patch --set diam⇥templateforge make hole-plug-patch --set diameter='
    'true | templateforge make hole-plug-patch --set "hole=rounded⇥true | templateforge make hole-plug-patch --set "hole=rounded_rectangle" '
    'templateforge check-dxf only-f⇥templateforge check-dxf only-file.dxf '
    'templateforge check-dxf ⇥templateforge check-dxf only-file.dxf '
)
folder=$(mktemp -d)
mkdir $folder/here && cd $folder/here && touch only-file.dxf

zpty tab TERM=xterm zsh -f -i
zpty -w tab "PS1= PS2=; autoload -Uz compinit; compinit -u -d $folder/dump; source <(templateforge completion zsh)"
zpty -w tab "written() { print -r -- \"\$BUFFER\" >>$folder/lines; BUFFER= }; zle -N written; bindkey '^I' complete-word; bindkey '^X' written; : >$folder/lines"
await() { for i in {1..200}; do (( $(wc -l 2>/dev/null <$folder/lines || echo -1) >= $1 )) && return; sleep 0.1; done }
await 0
for (( n = 1; n <= $#lines; n++ )); do
    typed=${lines[n]%%⇥*} wanted=${lines[n]#*⇥}
    zpty -w -n tab "$typed"$'\t\x18'
    await $n
    found=$(tail -1 $folder/lines 2>/dev/null)
    if [[ $found == "$wanted" ]]; then print -r -- "ok zsh: $typed⇥"; else print -r -- "FAIL zsh: $typed⇥ gave '$found', not '$wanted'"; fi
done
zpty -d tab
rm -rf $folder
