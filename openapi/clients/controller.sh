#!/bin/sh
# Asks the service for the setpoint of a loop and dials it: one round a call, a call a minute. Without a good answer it dials a
# safe setting instead. Where it is told how to read instruments, it then posts what they show.
#
#   SERVICE      address of the service                         http://127.0.0.1:8080
#   LOOP         key or id of the loop                          needed
#   APPLY        command that takes a setting as its argument   needed
#   FALLBACK     setting that is safe in every phase            needed; the service's own, once known, is used instead
#   MIN, MAX     lowest and highest setting of the pump:        0, 100
#                others are never dialled, except to stop it
#   MAY_STOP     yes: 0 is dialled where the answer says so     yes
#                and calls it feasible, also below MIN. no: never
#   MAX_JUMP     largest change in a round                      100
#   STATE        directory that remembers, one for each loop    needed
#   TIMEOUT      seconds for an answer, and for each command    10
#   READ         command that prints what was measured          none
#   KEY_FILE     file with the access key and nothing else      none
#   ALARM        command that takes a message as its argument   none
#   ALARM_AFTER  rounds without success until it is called      5
#
# READ prints one line a quantity: its name, a space, a number. Names and units: power W, flow L/h, head m, suctionPressure and
# dischargePressure kPa. It runs last, and only if the setting stayed as it was, so that the pump has run steadily since the
# round before. Nothing that it does, and nothing that the service says to its readings, changes the setting or the exit code.
#
# APPLY, READ and ALARM are killed after TIMEOUT with all that they started. ALARM is called once, until a round succeeds again.
#
# Exit codes
#   0  the setpoint was dialled, or a step of MAX_JUMP towards it
#   1  no answer or a wrong one: the fallback was dialled, or a step towards it
#   2  nothing was dialled: a variable is wrong, or another run is at work
#   3  APPLY failed or was killed
#   4  no setting is feasible: the one that the service gives for that case was dialled, or a step towards it
#
# Needs curl, and of every Linux awk, find, flock and timeout.
set -u
LC_ALL=C
export LC_ALL

SERVICE=${SERVICE:-http://127.0.0.1:8080}
LOOP=${LOOP:-}
APPLY=${APPLY:-}
FALLBACK=${FALLBACK:-}
MIN=${MIN:-0}
MAX=${MAX:-100}
MAY_STOP=${MAY_STOP:-yes}
MAX_JUMP=${MAX_JUMP:-100}
STATE=${STATE:-}
TIMEOUT=${TIMEOUT:-10}
READ=${READ:-}
KEY_FILE=${KEY_FILE:-}
ALARM=${ALARM:-}
ALARM_AFTER=${ALARM_AFTER:-5}

# What is longer is not what it should be.
LOOP_LENGTH_MAX=64
NUMBER_LENGTH_MAX=24
STATE_BYTES_MAX=64
KEY_BYTES_MAX=256
READ_BYTES_MAX=256
ANSWER_BYTES_MAX=524288

# Exit code of the command timeout where it has killed.
KILLED=137

# ---- A round, from start to end ----

round() {
  check_what_a_round_needs
  wait_for_other_run
  check_variables
  recall_state
  read_key

  call setpoint
  [ "$status" = 200 ] || fall_back "$(answered)"
  is_dialable "$setting" "$feasible" || fall_back "the answer is no setpoint within $MIN to $MAX"
  setting=$(plain "$setting")
  remember_fallback "$fallback"
  dial "$setting"

  cause=
  if [ "$feasible" = false ]; then
    cause="infeasible: ${reason:-no reason is given}. $summary"
    say "$cause"
  fi
  if [ -n "$READ" ] && [ -z "$refused" ] && is_number "$before" && holds 'a == b' "$before" "$setting"; then
    post_reading "$setting"
  fi
  [ -z "$cause" ] || fail 4 "$cause"
  rm -f "$STATE/failures" "$STATE/alarmed"
  exit 0
}

fall_back() {
  safe=$(recall fallback)
  is_setting "$safe" || safe=$FALLBACK
  say "$1; falling back to $safe"
  dial "$safe"
  fail 1 "$1"
}

# refuse reason: ends a round in which nothing is dialled
refuse() {
  say "$1; nothing is dialled"
  fail 2 "$1"
}

# fail exit-code cause: counts the round as one without success, calls ALARM where these were enough, and ends
fail() {
  failures=$(recall failures)
  is_count "$failures" || failures=0
  failures=$((failures + 1))
  # What cannot be counted is an alarm at once.
  remember failures "$failures" || failures=$ALARM_AFTER
  if [ -n "$ALARM" ] && [ "$failures" -ge "$ALARM_AFTER" ] && ! [ -f "$STATE/alarmed" ]; then
    if limited "$ALARM" "Loop $LOOP: rounds without success: $failures. The last: $2"; then
      remember alarmed yes
    else
      say "ALARM failed; it is called again in the next round"
    fi
  fi
  exit "$1"
}

say() {
  printf '%s\n' "controller: $*" >&2
}

# ---- Before a round ----

# These are checked first, since even the count of failures needs them.
check_what_a_round_needs() {
  for program in awk find flock timeout; do
    command -v "$program" >/dev/null || {
      say "the command $program is needed; nothing is dialled"
      exit 2
    }
  done
  if [ -z "$STATE" ] || ! mkdir -p "$STATE"; then
    say "STATE must be a directory that can be made; nothing is dialled"
    exit 2
  fi
  if ! is_positive "$TIMEOUT" || ! is_count "$ALARM_AFTER"; then
    say "TIMEOUT must be a number above 0, ALARM_AFTER a whole one; nothing is dialled"
    exit 2
  fi
}

# The lock is on the directory, and ends with the process that holds it, in whatever way that ends. The longest round has two
# answers and three commands.
wait_for_other_run() {
  exec 9<"$STATE"
  timeout "$(awk -v a="$TIMEOUT" 'BEGIN { print 5 * a }')" flock 9 || {
    say "another run is at work in $STATE; nothing is dialled"
    exit 2
  }
}

check_variables() {
  case $LOOP in
    '' | *[!A-Za-z0-9-]*) refuse "LOOP must be the key or id of a loop: letters, digits and hyphens" ;;
  esac
  [ "${#LOOP}" -le "$LOOP_LENGTH_MAX" ] || refuse "LOOP must have $LOOP_LENGTH_MAX characters at most"
  [ -n "$APPLY" ] || refuse "APPLY must be a command"
  is_number "$MIN" || refuse "MIN must be a number"
  is_number "$MAX" || refuse "MAX must be a number"
  is_positive "$MAX_JUMP" || refuse "MAX_JUMP must be a number above 0"
  case $MAY_STOP in yes | no) ;; *) refuse "MAY_STOP must be yes or no" ;; esac
  is_setting "$FALLBACK" || refuse "FALLBACK must be a setting within MIN and MAX, and 0 only if the pump may stop"
}

read_key() {
  key=
  [ -z "${KEY:-}" ] || say "KEY is not used: put the access key into a file, and name that by KEY_FILE"
  [ -n "$KEY_FILE" ] || return 0
  key=$(head -c "$KEY_BYTES_MAX" "$KEY_FILE")
  case $key in
    '' | *[!A-Za-z0-9_-]*) fall_back "KEY_FILE $KEY_FILE cannot be read, or holds no access key" ;;
  esac
  [ -z "$(find -L "$KEY_FILE" -prune \( -perm -004 -o -perm -002 -o -perm -020 \))" ] ||
    say "others can read or write $KEY_FILE: use chmod 600"
}

# ---- Dialling ----

# dial setting: or a step towards it. Ends the round if APPLY fails.
dial() {
  step=$(plain "$1")
  if is_number "$before"; then
    step=$(plain "$(step_from "$(start_of_step "$1")" "$1")")
  else
    say "$STATE remembers no setting: a first round, or it was lost. MAX_JUMP does not hold in this round"
  fi
  if ! prepare setting "$step"; then
    # Every step would begin at the same setting, and none arrive.
    step=$(plain "$1")
    say "nothing can be written in $STATE: MAX_JUMP does not hold"
  fi
  holds 'a == b' "$step" "$1" || say "from $before to $1 in steps of $MAX_JUMP: now $step"
  apply "$step"
  keep setting
}

apply() {
  limited "$APPLY" "$1"
  code=$?
  if [ "$code" -eq 0 ]; then
    rm -f "$STATE/refused"
    return
  fi
  rm -f "$STATE/setting.new"
  remember refused "$1"
  cause="APPLY failed at setting $1 (exit code $code)"
  [ "$code" -ne "$KILLED" ] || cause="APPLY did not end within $TIMEOUT s at setting $1, and was killed"
  say "$cause"
  fail 3 "$cause"
}

# step_from setting setting: how far MAX_JUMP lets go. Between 0 and MIN there is nothing to dial.
step_from() {
  awk -v from="$1" -v to="$2" -v jump="$MAX_JUMP" -v min="$MIN" -v max="$MAX" 'BEGIN {
    step = to
    if (to - from > jump) {
      step = from + jump
      if (step < min) step = min
    }
    if (from - to > jump) {
      step = from - jump
      if (step > max) step = max
      if (step < min) step = from > min ? min : to
    }
    printf "%.10f", step
  }'
}

# A pump that stands still may not start at a small setting: where APPLY has failed at one, the next is larger.
start_of_step() {
  if is_number "$refused" && holds 'a == 0 && b < c' "$before" "$refused" "$1"; then
    printf '%s' "$refused"
  else
    printf '%s' "$before"
  fi
}

# ---- Numbers ----

is_number() {
  case $1 in
    '' | . | *[!0-9.]* | *.*.*) return 1 ;;
  esac
  [ "${#1}" -le "$NUMBER_LENGTH_MAX" ]
}

is_positive() {
  is_number "$1" && holds 'a > 0' "$1" 0
}

is_count() {
  case $1 in
    '' | 0* | *[!0-9]* | ??????????*) return 1 ;;
  esac
}

is_zero() {
  is_number "$1" && holds 'a == 0' "$1" 0
}

is_setting() {
  is_number "$1" && holds 'a >= b && a <= c' "$1" "$MIN" "$MAX" && { [ "$MAY_STOP" = yes ] || ! is_zero "$1"; }
}

# is_dialable setting feasible
is_dialable() {
  case $2 in
    true) is_setting "$1" || { [ "$MAY_STOP" = yes ] && is_zero "$1"; } ;;
    false) is_setting "$1" ;;
    *) return 1 ;;
  esac
}

# holds 'expression of a, b and c' a b c
holds() {
  awk -v a="$2" -v b="$3" -v c="${4:-0}" "BEGIN { exit !($1) }"
}

# No leading zero or point, no zeros at the end, no exponent.
plain() {
  awk -v a="$1" 'BEGIN {
    text = sprintf("%.10f", a)
    sub(/\.?0+$/, "", text)
    printf "%s", text
  }'
}

# ---- What STATE remembers ----
#
#   loop      whose state it is        setting   dialled last          refused  APPLY failed at it last
#   fallback  the service's own        failures  rounds since success  alarmed  whether ALARM was called since

recall() {
  [ -f "$STATE/$1" ] && head -c "$STATE_BYTES_MAX" "$STATE/$1" | tr '\000' '?'
}

recall_state() {
  known=$(recall loop)
  if [ -n "$known" ] && [ "$known" != "$LOOP" ]; then
    say "$STATE was of loop $known; what it remembers is forgotten"
    rm -f "$STATE/setting" "$STATE/refused" "$STATE/fallback" "$STATE/failures" "$STATE/alarmed"
  fi
  remember loop "$LOOP"
  before=$(recall setting)
  refused=$(recall refused)
}

remember_fallback() {
  if is_setting "$1"; then
    remember fallback "$1"
  else
    say "the service gives no fallback within $MIN to $MAX"
  fi
}

# remember name value
remember() {
  prepare "$1" "$2" && keep "$1"
}

# Written beside first and moved then, so that a power cut leaves the old value or the new one. What is there already is not
# written: memory cards wear out.
prepare() {
  rm -f "$STATE/$1.new"
  [ "$(recall "$1")" = "$2" ] || printf '%s\n' "$2" >"$STATE/$1.new"
}

keep() {
  [ ! -f "$STATE/$1.new" ] || mv "$STATE/$1.new" "$STATE/$1"
}

# ---- Commands ----

mark="$$.$(date +%s)"

# limited command arguments ..: for TIMEOUT seconds at most. The command does not inherit the lock (9), which a child that it
# leaves behind would hold.
limited() {
  CONTROLLER_RUN=$mark timeout -s KILL "$TIMEOUT" sh -c 'exec "$@" 9<&-' limited "$@" </dev/null
  ended=$?
  [ "$ended" -ne "$KILLED" ] || kill_what_is_left
  return "$ended"
}

# A child that has left the process group is known by the mark in its environment. More than once, since what is killed may just
# have started another.
kill_what_is_left() {
  for _ in 1 2 3; do
    grep -lsF "CONTROLLER_RUN=$mark" /proc/[0-9]*/environ | while IFS=/ read -r _ _ process _; do
      kill -s KILL "$process"
    done
  done
}

# ---- Readings ----

# measured: prints what READ shows, as members of a JSON object
measured() {
  # shellcheck disable=SC2016 # The inner shell expands these.
  shown=$(limited sh -c '{ "$0" || echo failed; } | head -c "$1"' "$READ" "$READ_BYTES_MAX") || return 1
  members=
  while read -r name value rest; do
    [ -n "$name" ] || continue
    case $name in
      power | flow | head | suctionPressure | dischargePressure) ;;
      *) return 1 ;;
    esac
    case $members in *"\"$name\""*) return 1 ;; esac
    if [ -n "$rest" ] || ! is_number "${value#-}"; then return 1; fi
    members="$members, \"$name\": $(plain "$value")"
  done <<END
$shown
END
  [ -n "$members" ] && printf '%s' "$members"
}

# post_reading setting
post_reading() {
  time=$(date -u +%Y-%m-%dT%H:%M:%SZ)
  members=$(measured) || {
    say "READ shows nothing that can be posted"
    return
  }
  call readings --header 'Content-Type: application/json' \
    --data-raw "{\"readings\": [{\"time\": \"$time\", \"setting\": $(plain "$1")$members}]}"
  [ "$status" = 201 ] || say "the reading was not taken: $(answered)"
}

# ---- The service ----

# call path arguments of curl ..: sets these variables; what the answer lacks is empty
call() {
  status='' setting='' feasible='' reason='' summary='' fallback='' detail=''
  while read -r name value; do
    case $name in
      status) status=$value ;;
      setting) setting=$value ;;
      feasible) feasible=$value ;;
      reason) reason=$value ;;
      summary) summary=$value ;;
      fallback) fallback=$value ;;
      detail) detail=$value ;;
    esac
  done <<END
$(fetch "$@" | pick)
END
}

# How the service answered, for the log.
answered() {
  if [ -z "$status" ]; then
    printf '%s' "no whole answer from $SERVICE"
  else
    printf '%s' "the service answered $status${detail:+: $detail}"
  fi
}

# fetch path arguments of curl ..: prints the answer, and on a line behind it status and exit code of curl. The key goes by
# standard input, since other users of the machine can read a command line.
fetch() {
  path=$1
  shift
  { [ -z "$key" ] || printf 'header = "Authorization: Bearer %s"\n' "$key"; } | {
    curl -q --config - --silent --show-error --globoff --proto '=http,https' --max-time "$TIMEOUT" \
      --header 'Accept: application/json' --write-out '\n%{http_code}' "$@" --url "${SERVICE%/}/v1/loops/$LOOP/$path"
    printf ' %s' "$?"
  } | head -c "$ANSWER_BYTES_MAX"
}

# Reads a whole answer, so that all values are of one moment, and prints the few that are needed, a line each: name, space,
# value. Of an answer that did not arrive in full it prints nothing, of one that is no JSON the status alone. It reads from the
# pipe, since a shell would drop bytes of 0; no byte of 1 is in JSON, so that all is one record.
pick() {
  awk '
    function need(path, kind, name) {
      kinds[path] = kind
      names[path] = name
    }
    function found(path, kind, text) {
      if (!(path in kinds)) return
      # Two members of one name would be two answers.
      if (seen[path]++) exit 1
      gsub(/\\"/, "\"", text)
      if (kind == kinds[path]) lines = lines names[path] " " substr(text, 1, 500) "\n"
    }
    function next_char() {
      while (substr(json, at, 1) ~ /^[ \t\r\n]$/) at++
      return substr(json, at, 1)
    }
    function string(   from, c) {
      if (next_char() != "\"") exit 1
      from = ++at
      while ((c = substr(json, at, 1)) != "\"") {
        if (c < " ") exit 1
        at += c == "\\" ? 2 : 1
      }
      return substr(json, from, at++ - from)
    }
    function word(   text) {
      if (!match(substr(json, at, 40), /^[-+.0-9A-Za-z]+/)) exit 1
      text = substr(json, at, RLENGTH)
      at += RLENGTH
      if (text !~ /^(true|false|null|-?(0|[1-9][0-9]*)(\.[0-9]+)?([eE][-+]?[0-9]+)?)$/) exit 1
      return text
    }
    function value(path, depth,   c) {
      if (depth > 100) exit 1
      c = next_char()
      if (c == "{") list(path, depth, "}")
      else if (c == "[") list(path, depth, "]")
      else if (c == "\"") found(path, "string", string())
      else found(path, "word", word())
    }
    function list(path, depth, last,   name, c) {
      at++
      if (next_char() == last) { at++; return }
      do {
        if (last == "}") {
          name = string()
          if (next_char() != ":") exit 1
          at++
        }
        value(path SUBSEP name, depth + 1)
        c = next_char()
        if (c != last && c != ",") exit 1
        at++
      } while (c != last)
    }
    BEGIN {
      RS = "\001"
      need(SUBSEP "setting", "word", "setting")
      need(SUBSEP "feasible", "word", "feasible")
      need(SUBSEP "reason", "string", "reason")
      need(SUBSEP "summary", "string", "summary")
      need(SUBSEP "fallback" SUBSEP "setting", "word", "fallback")
      need(SUBSEP "detail", "string", "detail")
    }
    { json = $0 }
    END {
      end = length(json) - 5
      if (NR != 1 || substr(json, end) !~ /^\n[1-9][0-9][0-9] 0$/) exit 1
      print "status", substr(json, end + 1, 3)
      json = substr(json, 1, end - 1)
      at = 1
      value("", 0)
      if (next_char() != "") exit 1
      printf "%s", lines
    }'
}

round
