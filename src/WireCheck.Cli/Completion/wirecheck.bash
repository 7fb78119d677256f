# Completes the commands, options and words of wirecheck in bash; files are completed where a file is due.
# Load it with: source wirecheck.bash
_wirecheck() {
  local word="${COMP_WORDS[COMP_CWORD]}"
  local offered
  # The program itself is asked what can stand where the cursor is.
  offered=$(wirecheck "[suggest:${COMP_POINT}]" "${COMP_LINE}" 2>/dev/null)
  COMPREPLY=()
  while IFS= read -r one; do
    [[ -n "$one" && "$one" == "$word"* ]] && COMPREPLY+=("$one")
  done <<<"$offered"
}
complete -o default -F _wirecheck wirecheck
