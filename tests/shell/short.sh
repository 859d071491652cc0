# Memory that stays short from some point on, on whole designs: told as such, and never a crash. Needs PLUMBRULE and TOP.
# A build whose own needs no address space can be set for (a sanitizer's) is passed over.
set -u
: "${PLUMBRULE:?the program to test}" "${TOP:?the sources}"
room=$(mktemp -d) || exit 1
trap 'rm -rf "$room"' EXIT
limited() { (ulimit -v "$1" && shift && exec "$PLUMBRULE" "$@") >"$room/out" 2>"$room/err"; }
limited 400000 --version || { echo "no limit can be set here: nothing is tried" >&2; exit 0; }
least=20000
until limited "$least" --version; do least=$((least + 500)); done
failed=0 short=0 whole=0
# try CODE WORD…: the same command with more room each time; CODE is how it ends with enough.
try() {
    usual=$1
    shift
    kib=$least
    while [ "$kib" -lt $((least + 9000)) ]; do
        limited "$kib" "$@"
        code=$?
        case $code in
            70) short=$((short + 1)); grep -q memory "$room/err" || { echo "WRONG: 70 without a word of memory: $*" >&2; failed=1; } ;;
            "$usual") whole=$((whole + 1)) ;;
            *) echo "WRONG: $* ends with $code at $kib KiB, not $usual or 70" >&2; head -n 3 "$room/err" >&2; failed=1 ;;
        esac
        kib=$((kib + 190))
    done
}
cd "$TOP/samples" || exit 1
try 2 check quill-hollow/unfinished.yaml --book marrow-bay --format html
try 1 check quill-hollow/failing.yaml --book marrow-bay --format json
try 1 check quill-hollow/failing.yaml --book marrow-bay
try 0 draw quill-hollow/failing.yaml --book marrow-bay --what roof
echo "$short times short, $whole times whole" >&2
[ "$failed" -eq 0 ] && [ "$short" -gt 20 ] && [ "$whole" -gt 4 ]
