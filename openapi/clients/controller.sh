#!/bin/sh
# Asks for the setpoint of a loop and applies it; on any failure applies a safe setting instead. Where it is told how to read
# instruments, it then posts what they show.
#
#   SERVICE    address of the service                          http://127.0.0.1:8080
#   LOOP       id of the loop                                  needed
#   APPLY      command that takes a setting as its argument    needed
#   FALLBACK   setting that is safe for every phase            needed; the service's own, once known, goes before it
#   MIN, MAX   settings outside are never applied              0, 100
#   MAX_JUMP   largest change from the setting before          100
#   STATE      directory that remembers settings               needed
#   TIMEOUT    seconds to wait for an answer                   10
#   READ       command that prints what was measured           none
#   KEY        access key                                      none
#
# READ prints one line a quantity: its name, a space, a number. Names and units: power W, flow L/h, head m, suctionPressure and
# dischargePressure kPa. It runs last, within TIMEOUT by the command timeout, and only where the setting stayed as it was, so
# that the pump has run steadily since the round before. Nothing that it does, and nothing that becomes of what it prints,
# changes the setting or how this script ends.
#
# Ends with 0 when the setpoint was applied, 1 when the fallback was, 2 when a variable is wrong, 3 when the command failed.
set -u
LC_ALL=C
export LC_ALL

SERVICE=${SERVICE:-http://127.0.0.1:8080}
LOOP=${LOOP:-}
APPLY=${APPLY:-}
FALLBACK=${FALLBACK:-}
MIN=${MIN:-0}
MAX=${MAX:-100}
MAX_JUMP=${MAX_JUMP:-100}
STATE=${STATE:-}
TIMEOUT=${TIMEOUT:-10}
KEY=${KEY:-}
READ=${READ:-}

# A real setting is a few characters; more is not one.
BYTES_MAX=64
READ_BYTES_MAX=256

say() {
  printf '%s\n' "controller: $*" >&2
}

is_number() {
  case $1 in
    '' | . | *[!0-9.]* | *.*.* | ????????????*) return 1 ;;
  esac
}

# holds 'expression of a, b and c' a b c
holds() {
  awk -v a="$2" -v b="$3" -v c="${4:-0}" "BEGIN { exit !($1) }"
}

is_setting() {
  is_number "$1" && holds 'a >= b && a <= c' "$1" "$MIN" "$MAX"
}

remembered() {
  [ -f "$STATE/$1" ] && head -c "$BYTES_MAX" "$STATE/$1"
}

# Written beside and moved, so that a power cut leaves the old value or the new one.
remember() {
  printf '%s\n' "$2" >"$STATE/$1.new" && mv "$STATE/$1.new" "$STATE/$1"
}

# call arguments of curl ..
call() {
  set -- --silent --show-error --fail --max-time "$TIMEOUT" --proto '=http,https' "$@"
  if [ -n "$KEY" ]; then
    # By standard input: what stands on a command line can be read by other users of the machine.
    printf 'header = "Authorization: Bearer %s"\n' "$KEY" | curl --config - "$@"
  else
    curl "$@"
  fi
}

# ask pointer: prints one value of the setpoint
ask() {
  call --max-filesize "$BYTES_MAX" "$SERVICE/v1/loops/$LOOP/setpoint?pointer=$1"
}

apply() {
  if "$APPLY" "$1"; then
    remember setting "$1"
  else
    say "the command failed at setting $1"
    exit 3
  fi
}

fall_back() {
  safe=$(remembered fallback) && is_setting "$safe" || safe=$FALLBACK
  say "$1; falling back to $safe"
  apply "$safe"
  exit 1
}

# As JSON writes a number: no leading zero or point.
plain() {
  awk -v a="$1" 'BEGIN { printf "%.10g", a }'
}

# measured: prints what READ shows, as members of a JSON object
measured() {
  # A command that hangs is killed with all that it started.
  shown=$(timeout -s KILL "$TIMEOUT" sh -c '{ "$0" </dev/null || echo failed; } | head -c "$1"' "$READ" "$READ_BYTES_MAX") || return 1
  members=
  while read -r name value rest; do
    [ -n "$name" ] || continue
    case $name in
      power | flow | head | suctionPressure | dischargePressure) ;;
      *) return 1 ;;
    esac
    case $members in *"\"$name\""*) return 1 ;; esac
    [ -z "$rest" ] && is_number "${value#-}" || return 1
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
  call --output /dev/null --header 'Content-Type: application/json' \
    --data-raw "{\"readings\": [{\"time\": \"$time\", \"setting\": $(plain "$1")$members}]}" \
    "$SERVICE/v1/loops/$LOOP/readings" || say "the reading was not taken"
}

for number in "$MIN" "$MAX" "$MAX_JUMP" "$TIMEOUT"; do
  is_number "$number" || {
    say "MIN, MAX, MAX_JUMP and TIMEOUT must be numbers"
    exit 2
  }
done
holds 'a > b' "$TIMEOUT" 0 || {
  say "TIMEOUT must be above 0"
  exit 2
}
is_setting "$FALLBACK" || {
  say "FALLBACK must be a setting within MIN and MAX"
  exit 2
}
[ -n "$LOOP" ] && [ -n "$APPLY" ] && [ -n "$STATE" ] || {
  say "LOOP, APPLY and STATE are needed"
  exit 2
}
mkdir -p "$STATE" || exit 2

wanted=$(ask /setting) || fall_back "no setpoint"
is_setting "$wanted" || fall_back "the answer is no setting within $MIN to $MAX"
before=$(remembered setting) || before=
if is_number "$before" && holds '(a > b ? a - b : b - a) > c' "$wanted" "$before" "$MAX_JUMP"; then
  fall_back "a jump from $before to $wanted is above $MAX_JUMP"
fi

apply "$wanted"
safe=$(ask /fallback/setting) && is_setting "$safe" && remember fallback "$safe"
if [ -n "$READ" ] && is_number "$before" && holds 'a == b' "$before" "$wanted"; then
  post_reading "$wanted"
fi
exit 0
