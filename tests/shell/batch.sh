#!/bin/sh
# Many designs: a line for each in order, the same bytes whatever the number of workers, and a right end when a
# design, a worker, the reader or the disk gives out. Also under GNU parallel, where that is installed.
set -u
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
failed=0
cd "$TOP/samples" || exit 1

wrong() {
    echo "WRONG: $*" >&2
    failed=1
}
# equal WHAT ACTUAL EXPECTED
equal() {
    [ "$2" = "$3" ] || wrong "$1: is '$2', not '$3'"
}
many() {
    "$PLUMBRULE" check --book marrow-bay --on 2026-08-03 "$@"
}
# The design of each line, and whether each line is a whole one.
designs() {
    sed -n 's/^{"plumbrule":1,"version":"[^"]*","design":"\([^"]*\)",.*}$/\1/p' "$1"
}

# ---- order, bytes, ends --------------------------------------------------------------------------------------
printf 'book: [' >"$work/half.yaml"
printf 'quill-hollow/standing.yaml\n%s\n\nno/such.yaml\nquill-hollow/failing.yaml\n%s\nquill-hollow/unfinished.yaml' \
    "$work/half.yaml" "$TOP/samples" >"$work/list"
grep . "$work/list" >"$work/expected"
for jobs in 1 2 7; do
    many --from-list "$work/list" --jobs $jobs >"$work/lines$jobs" 2>"$work/err"
    equal "end with $jobs jobs" $? 3
    equal "errors told with $jobs jobs" "$(cat "$work/err")" ""
    designs "$work/lines$jobs" | cmp -s - "$work/expected" || wrong "order with $jobs jobs"
    equal "lines with $jobs jobs" "$(wc -l <"$work/lines$jobs")" 6
    cmp -s "$work/lines1" "$work/lines$jobs" || wrong "$jobs jobs write other bytes than one"
done
many --from-list - --jobs 2 <"$work/list" | cmp -s - "$work/lines1" || wrong "list from the standard input"
(while read -r path; do echo "$path"; sleep 0.05; done <"$work/list"; tail -n 1 "$work/list") |
    many --from-list - | cmp -s - "$work/lines1" || wrong "a list that comes slowly"
many --jobs 2 --output "$work/out" --from-list "$work/list"
cmp -s "$work/out" "$work/lines1" || wrong "lines in a file"
head -n 1 "$work/lines1" >"$work/first"
many --format ndjson quill-hollow/standing.yaml | cmp -s - "$work/first" || wrong "one design, one line"
many --jobs 2 quill-hollow/standing.yaml >/dev/null
equal "end of a design that stands" $? 0
many --jobs 2 quill-hollow/standing.yaml quill-hollow/unfinished.yaml >/dev/null
equal "end of one that is open" $? 2
many --jobs 2 quill-hollow/unfinished.yaml quill-hollow/failing.yaml >/dev/null
equal "end of one that fails" $? 1
: >"$work/empty"
many --from-list "$work/empty" >"$work/out" 2>"$work/err"
equal "end of an empty list" "$? $(wc -c <"$work/out")" "3 0"
grep -q "empty: the list names no design, so nothing was checked" "$work/err" || wrong "an empty list is told"
sed 's/$/\r/' "$work/list" >"$work/returns"
many --from-list "$work/returns" --jobs 1 | cmp -s - "$work/lines1" || wrong "a list with carriage returns"

# Odd paths: a NUL, a path no system opens, bytes that are no text.
{ printf 'quill-hollow/standing.yaml\0.bak\n'; head -c 9000 /dev/zero | tr '\0' x; printf '\nfa\377n.yaml\n'; } >"$work/odd"
many --from-list "$work/odd" >"$work/out"
equal "end of odd paths" $? 3
equal "lines of odd paths" "$(grep -c '"code":"[a-z-]*"' "$work/out")" 3
grep -q '"code":"path-bad"' "$work/out" || wrong "a NUL in a path is told"

# ---- mistakes of the command line ----------------------------------------------------------------------------
for arguments in "--jobs 0" "--jobs two" "--jobs 257" "--jobs 2 --format html" "--from-list $work/list --format text"; do
    # shellcheck disable=SC2086
    many $arguments quill-hollow/standing.yaml >"$work/out" 2>"$work/err"
    equal "end of $arguments" "$? $(wc -c <"$work/out")" "64 0"
    [ -s "$work/err" ] || wrong "nothing is said to $arguments"
done
many --from-list "$work/none" >"$work/out" 2>"$work/err"
equal "end of a list that is not there" "$? $(wc -c <"$work/out")" "3 0"
many --from-list "$work" >"$work/out" 2>"$work/err"
equal "end of a list that is a folder" "$? $(wc -c <"$work/out")" "3 0"

# Without descriptors for the pipes of workers nothing is checked, and the end says so.
(ulimit -n 6; many --jobs 2 quill-hollow/standing.yaml quill-hollow/failing.yaml) >"$work/out" 2>"$work/err"
equal "end without workers" "$? $(wc -c <"$work/out")" "70 0"

# ---- readers and disks that give out -------------------------------------------------------------------------
for i in 1 2 3 4 5 6; do grep -v '^$' "$work/list"; echo; done >"$work/longer"
many --from-list "$work/longer" --jobs 2 >/dev/full 2>"$work/err"
equal "end on a full disk" $? 74
grep -q 'No space' "$work/err" || wrong "a full disk is told"
{ many --from-list "$work/longer" --jobs 2 2>"$work/err"; echo $? >"$work/end"; } 2>/dev/null | head -c 100 >/dev/null
equal "end with a reader that leaves" "$(cat "$work/end")" 74
equal "what is told of it" "$(cat "$work/err")" ""
mkfifo "$work/gone"
many --from-list "$work/longer" --jobs 2 --output "$work/gone" 2>"$work/err" &
head -c 100 "$work/gone" >/dev/null
wait $!
equal "end with a reader of a pipe by name that leaves" $? 74
grep -q 'cannot be written: Broken pipe' "$work/err" || wrong "an output by name that breaks off is told"
many --from-list "$work/longer" --jobs 2 >&- 2>"$work/err"
equal "end without an output" $? 74
grep -q 'cannot be written' "$work/err" || wrong "an output that is closed is told"
echo before >"$work/kept"
(ulimit -f 1; trap '' XFSZ; many --from-list "$work/longer" --jobs 2 --output "$work/kept") 2>"$work/err"
equal "end with a limit on files" $? 74
equal "the old file" "$(cat "$work/kept")" before
equal "drafts left behind" "$(find "$work" -name 'kept.new*')" ""
(ulimit -f 1; trap '' XFSZ; many --from-list "$work/longer" --jobs 2) >"$work/cut" 2>"$work/err"
equal "lines cut in a file" "$(tail -c 1 "$work/cut")" ""
equal "half lines" "$(grep -vc '^{.*}$' "$work/cut")" 0

# ---- how far it is, on a terminal only -----------------------------------------------------------------------
if command -v script >/dev/null; then
    # Whoever reads takes its time, so that the batch does, too, however fast it is.
    script -qec "'$PLUMBRULE' check --book marrow-bay --on 2026-08-03 --from-list '$work/longer' |
        { sleep 2; cat; } >'$work/out'" "$work/typescript" </dev/null >/dev/null
    grep -q "[0-9]* of $(wc -l <"$work/out") designs, [0-9]* a second, 0:0[0-9]:[0-9][0-9] left" "$work/typescript" ||
        wrong "how far it is: $(cat "$work/typescript")"
    equal "half lines beside it" "$(grep -vc '^{.*}$' "$work/out")" 0
fi

# ---- workers that are lost, signals --------------------------------------------------------------------------
# The list stays open, so that the batch waits and nothing hangs on how fast it is.
begin() {
    rm -f "$work/fifo" "$work/out" # or lines of the batch before could be taken for this one's
    mkfifo "$work/fifo"
    : >"$work/out"
    "$PLUMBRULE" check --book marrow-bay --on 2026-08-03 --from-list - --jobs 2 "$@" <"$work/fifo" >"$work/out" \
        2>"$work/err" &
    batch=$!
    exec 9>"$work/fifo"
}
# await WHAT COMMAND…: until it ends well; that takes a minute at most, on a machine that is busy too.
await() {
    what=$1 turns=0
    shift
    until "$@"; do
        turns=$((turns + 1))
        [ $turns -lt 600 ] || { wrong "waited in vain: $what"; return 1; }
        sleep 0.1
    done
}
has_lines() { [ "$(wc -l <"$work/out")" -ge "$1" ]; }
await_lines() { await "line $1" has_lines "$1"; }
workers_of() { ps -o pid= --ppid "$1" | tr -d ' '; }
# Two workers, and none of those named.
are_replaced() {
    there=$(workers_of $batch)
    for worker in "$@"; do
        case " $(echo $there) " in *" $worker "*) return 1 ;; esac
    done
    [ "$(echo "$there" | grep -c .)" -eq 2 ]
}
are_gone() {
    for worker in "$@"; do
        case $(ps -o stat= -p "$worker") in '' | Z*) ;; *) return 1 ;; esac
    done
}
# A path waits in the pipe of each of these stopped workers: it has been handed a design. The list is their descriptor 0.
are_handed() {
    python3 - "$@" <<'END'
import fcntl, os, stat, struct, sys, termios
def waiting(process):
    most = 0
    for name in os.listdir(f"/proc/{process}/fd"):
        path = f"/proc/{process}/fd/{name}"
        if name != "0" and stat.S_ISFIFO(os.stat(path).st_mode):
            end = os.open(path, os.O_RDONLY | os.O_NONBLOCK)
            most = max(most, struct.unpack("i", fcntl.ioctl(end, termios.FIONREAD, bytes(4)))[0])
            os.close(end)
    return most
sys.exit(0 if all(waiting(process) > 0 for process in sys.argv[1:]) else 1)
END
}
begin
echo quill-hollow/standing.yaml >&9
await_lines 1
lost=$(workers_of $batch)
# shellcheck disable=SC2086
kill -KILL $lost
# shellcheck disable=SC2086
await "other workers" are_replaced $lost
grep -v '^$' "$work/list" >&9
exec 9>&-
wait $batch
equal "end with lost workers replaced" $? 3
sed 1d "$work/out" | cmp -s - "$work/lines1" || wrong "lines after workers were lost"

# Others stand in for workers that took all they may: no design is lost on the way, and no worker is called lost.
begin
echo "$work/half.yaml" >&9
await_lines 1
former=$(workers_of $batch)
yes "$work/half.yaml" | head -n 2000 >&9
await_lines 2001
# shellcheck disable=SC2086
await "workers that took their fill are replaced" are_replaced $former
exec 9>&-
wait $batch
equal "end with workers that took their fill" $? 3
equal "errors told of workers that took their fill" "$(cat "$work/err")" ""
equal "lines of workers that took their fill" "$(sort "$work/out" | uniq -c | awk '{ print $1 }')" 2001

# Where no process is to be had a worker goes on beyond its fill; where there is none at all, that is told. A limit counts
# for others than root, so root becomes one of whom nothing else runs.
few() { # whoever looks for leaks at the end would need a process, too
    most=$1
    shift
    ASAN_OPTIONS=detect_leaks=0 setpriv --reuid=64321 --regid=64321 --clear-groups prlimit --nproc="$most" "$PLUMBRULE" "$@"
}
few_check() {
    few "$1" check --book marrow-bay --on 2026-08-03 --jobs 1 --from-list - >"$work/out" 2>"$work/err"
}
if [ "$(id -u)" = 0 ] && few 9 --version >/dev/null 2>&1; then
    yes no-such-design.yaml | head -n 500 | few_check 2
    equal "end where a worker cannot be replaced" $? 3
    equal "errors told where a worker cannot be replaced" "$(grep -v '^profiling:' "$work/err")" "" # counts lie with root
    equal "lines where a worker cannot be replaced" "$(sort "$work/out" | uniq -c | awk '{ print $1 }')" 500
    echo no-such-design.yaml | few_check 1
    equal "end without a worker" "$? $(wc -c <"$work/out")" "70 0"
    grep -q "no worker can be started" "$work/err" || wrong "that there is no worker is told"
else
    echo "root alone can take processes away: not tried" >&2
fi

# A worker is stopped, then killed at its work: its design has a line that says so, the others have theirs.
begin
echo quill-hollow/standing.yaml >&9
await_lines 1
stopped=$(workers_of $batch)
# shellcheck disable=SC2086
kill -STOP $stopped
printf 'quill-hollow/standing.yaml\nquill-hollow/failing.yaml\nquill-hollow/unfinished.yaml\n' >&9
# shellcheck disable=SC2086
await "a design for each worker" are_handed $stopped
# shellcheck disable=SC2086
kill -KILL $stopped
exec 9>&-
wait $batch
equal "end with a design cut off" $? 70
equal "what is told of it" "$(grep -c 'its check was cut off: see its line' "$work/err")" 1
equal "designs cut off" "$(grep -c '"code":"worker-lost"' "$work/out")" 2
equal "a design cut off is no pass" "$(grep '"code":"worker-lost"' "$work/out" | grep -c '"kind":"pass"')" 0
equal "lines with a design cut off" "$(designs "$work/out" | tr '\n' ' ')" \
    "quill-hollow/standing.yaml quill-hollow/standing.yaml quill-hollow/failing.yaml quill-hollow/unfinished.yaml "

for signal in TERM HUP; do
    begin
    cat "$work/longer" >&9
    await_lines 3
    workers=$(workers_of $batch)
    equal "workers before $signal" "$(echo "$workers" | grep -c .)" 2
    kill -$signal $batch
    wait $batch 2>/dev/null
    end=$?
    exec 9>&-
    equal "end by $signal" "$(kill -l $end)" $signal
    equal "half lines after $signal" "$(grep -vc '^{.*}$' "$work/out")" 0
    # shellcheck disable=SC2086
    await "the end of workers after $signal" are_gone $workers
done
# What a shell runs behind itself ignores SIGINT: this one runs in front.
mkfifo "$work/endless"
(cat "$work/list"; sleep 3) >"$work/endless" &
timeout -s INT --preserve-status 1.5 "$PLUMBRULE" check --book marrow-bay --on 2026-08-03 --from-list - \
    --output "$work/kept" <"$work/endless" 2>"$work/err"
equal "end by INT" "$(kill -l $?)" INT
equal "the old file after INT" "$(cat "$work/kept")" before
equal "drafts left behind after INT" "$(find "$work" -name 'kept.new*')" ""

# ---- under GNU parallel --------------------------------------------------------------------------------------
if command -v parallel >/dev/null; then
    # The recipe of docs/many-designs.md.
    grep . "$work/list" | parallel --will-cite --keep-order --pipe -N 2 --sshlogin 1/:,1/: \
        "$PLUMBRULE check --from-list - --book marrow-bay --on 2026-08-03" >"$work/out" 2>"$work/err"
    cmp -s "$work/out" "$work/lines1" || wrong "lines under GNU parallel"
else
    echo "GNU parallel is not installed: its recipe is not run" >&2
fi
exit $failed
