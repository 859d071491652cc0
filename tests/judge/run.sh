# The core and the second judge on many designs.
#
#     sh run.sh [--count N] [--seed S] [--jobs J] [--modules A..B]
#
# PLUMBRULE is the program, TOP the sources. Ends with 1 where the two disagree, or where a word of the rule language or a
# rule was never held.
set -eu
here=$(cd "$(dirname "$0")" && pwd)
TOP=${TOP:-$(cd "$here/../.." && pwd)}
PLUMBRULE=${PLUMBRULE:-$TOP/build/plumbrule}
count=120 seed=1 jobs=2 modules=
while [ $# -gt 1 ]; do
    case $1 in
        --count) count=$2 ;;
        --seed) seed=$2 ;;
        --jobs) jobs=$2 ;;
        --modules) modules="--modules $2" ;;
        *) echo "run.sh [--count N] [--seed S] [--jobs J] [--modules A..B]" >&2; exit 64 ;;
    esac
    shift 2
done
work=$(mktemp -d)
pids=
trap 'kill $pids 2>/dev/null; rm -rf "$work"' INT TERM
share=0
while [ $share -lt "$jobs" ]; do
    mkdir "$work/$share"
    # shellcheck disable=SC2086 # two words or none
    lua5.4 "$here/check.lua" --top "$TOP" --program "$PLUMBRULE" --work "$work/$share" --count "$count" --seed "$seed" \
        --share "$share/$jobs" $modules >"$work/$share.told" 2>"$work/$share.errors" &
    pids="$pids $!"
    share=$((share + 1))
done
for pid in $pids; do wait "$pid" || true; done
code=0
lua5.4 "$here/sum.lua" "$TOP" "$work"/*.told || code=$?
cat "$work"/*.errors >&2
# Designs that the two disagree on stay, to be looked at.
if [ $code -eq 0 ]; then rm -rf "$work"; else echo "kept: $work" >&2; fi
exit $code
