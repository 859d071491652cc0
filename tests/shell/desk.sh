# The command line as people and scripts meet it: exit codes, messages, where output goes.
# Needs PLUMBRULE, the program; all it reads it writes itself.
set -u
: "${PLUMBRULE:?the program to test}"
room=$(mktemp -d) || exit 1
trap 'rm -rf "$room"' EXIT
cd "$room" || exit 1
unset PLUMBRULE_BOOKS NO_COLOR
done=0
failed=0

fail() {
    failed=$((failed + 1))
    echo "not so: $*" >&2
    sed 's/^/    out: /' out >&2
    sed 's/^/    err: /' err >&2
}

# ends CODE SENTENCE COMMAND…: runs it and compares the exit code.
ends() {
    wanted=$1 sentence=$2
    shift 2
    "$@" >out 2>err
    is=$?
    done=$((done + 1))
    [ "$is" -eq "$wanted" ] || fail "$sentence (exit $is, not $wanted)"
}

# out TEXT, err TEXT: what was said holds this line's part. out_lacks TEXT: it does not.
out() { done=$((done + 1)); grep -qF -- "$1" out || fail "the output says: $1"; }
err() { done=$((done + 1)); grep -qF -- "$1" err || fail "the error stream says: $1"; }
out_lacks() { done=$((done + 1)); ! grep -qF -- "$1" out || fail "the output does not say: $1"; }
out_is_empty() { done=$((done + 1)); [ ! -s out ] || fail "the output is empty"; }

check() { "$PLUMBRULE" check --books books --book heron-point "$@"; }

mkdir -p books/towns/heron-point books/towns/bad-rule books/towns/empty-town
cat >books/towns/heron-point/book.yaml <<'END'
book: heron-point
title: Town of Heron Point, rooftop PV
maintained_by: Building Desk
role: authority
scope: one-family dwellings, roof-mounted PV
covers: [generator]
deletes:
  - {rule: heron-point/old, from: 2025-01-01, cite: "Ordinance 9"}
waivers:
  - {rule: heron-point/layers, about: "roof_plane:waived", reason: the deck was seen, granted_by: Chief Official, permit: B-7, from: 2026-01-01, until: 2027-01-01}
END
cat >books/towns/heron-point/values.yaml <<'END'
layers_allowed: {kind: number, stricter: smaller, says: layers of covering below an array, entries: [{from: 2020-01-01, is: 1, cite: "Town Code 4-1"}]}
END
cat >books/towns/heron-point/layers.lua <<'END'
return {
  title = "Layers of roof covering",
  cite = "Town Code 4-1",
  about = "roof_plane",
  applies = function(plane, book) return true end,
  check = function(plane, book)
    shall.not_exceed("Layers of covering", plane.layers, book.layers_allowed)
  end,
  remedy = "Strip the roof first.",
}
END
sed -e 's/4-1/4-0/' books/towns/heron-point/layers.lua >books/towns/heron-point/old.lua
for book in bad-rule empty-town; do
    printf 'book: %s\ntitle: %s\nmaintained_by: Desk\nrole: authority\nscope: roofs\n' \
        "$book" "$book" >books/towns/$book/book.yaml
done
sed -e 's/plane.layers,/plane.layrs,/' -e 's/book.layers_allowed/1/' \
    books/towns/heron-point/layers.lua >books/towns/bad-rule/layers.lua

# house NAME LAYERS: a design of one plane.
house() {
    printf 'title: Heron Row\nproject: {permit_number: %s, permit_application_date: 2026-05-04, owner: A. Pell}\nroof:\n  planes:\n    - {name: %s%s}\n' \
        "${4:-B-7}" "$2" "$3" >"$1.yaml"
}
house stands south ', layers: 1'
house fails south ', layers: 2'
house waived waived ', layers: 2'
house other-job waived ', layers: 2' B-8
house open south ''
printf 'title: Heron Row\nroof: {planes: [{name: south, layers: 1}]}\n' >dateless.yaml
printf 'title: Heron Row\nroof:\n  planes:\n    - {name: south, layrs: 1}\n' >misspelt.yaml

# --- without a command ---------------------------------------------------------------------------
ends 64 "no command is a mistake" "$PLUMBRULE"
err "a command is missing"
ends 0 "help is no mistake" "$PLUMBRULE" --help
for command in check books rules calc; do
    out "  $command "
done
ends 0 "the version is told" "$PLUMBRULE" --version
out "plumbrule 0."
ends 64 "an unknown command is a mistake" "$PLUMBRULE" chekc
err "did you mean 'check'?"
ends 64 "a far one lists what there is" "$PLUMBRULE" zzzzzzzz
err "check, books, rules, prove"
ends 0 "each command has help" "$PLUMBRULE" check --help
out "--with-working"
ends 64 "an unknown option is a mistake" "$PLUMBRULE" check --bok x
err "did you mean --book?"
for word in -book -book=heron-point -books -on -output -format; do # getopt would take the rest of the word as an argument
    ends 64 "one dash before a long name" "$PLUMBRULE" check stands.yaml $word heron-point
    err "check has no option $word; did you mean -${word%=*}?"
done
ends 0 "a letter with its argument behind it" "$PLUMBRULE" check stands.yaml --books books -bheron-point -fjson
ends 64 "a stack is named book by book" "$PLUMBRULE" check stands.yaml --book heron-point+ours
err "--book names one book, not several: 'heron-point+ours'"
err "for example: --book heron-point --book ours"
ends 64 "an option in place of a command" "$PLUMBRULE" -help
err "'-help' stands where a command is needed; plumbrule --help lists them"
ends 64 "an unknown letter too" "$PLUMBRULE" check -z
err "no option -z"
ends 64 "an option without its argument" "$PLUMBRULE" check house.yaml --book
err "--book needs NAME"
ends 64 "an argument where there is none" "$PLUMBRULE" check --with-working=yes
err "takes no argument"
ends 64 "an unknown format" check stands.yaml --format xml
err "it takes text, json"
ends 64 "an option given twice" check stands.yaml --on 2026-01-01 --on 2026-01-02
err "--on is given twice"


# The manual has each command and its options.
ends 0 "the manual is written" "$PLUMBRULE" --manual
out ".TH PLUMBRULE 1"
out '.B \-f\fR, \fB\-\-format \fIFORMAT'
out "One of: text, json, ndjson, sarif, junit, html."
out "May be given several times."
for command in check explain books rules prove compare draw calc new lint schema; do
    out ".SS plumbrule $command"
done
for code in 0 1 2 3 4 64 70 74; do
    out ".B $code"
done
# --- check ---------------------------------------------------------------------------------------
ends 64 "no design" check
err "no design is named"
ends 64 "no book" "$PLUMBRULE" check stands.yaml
err "no rulebook is named"
ends 64 "no day of the calendar" check stands.yaml --on 2026-02-30
err "--on 2026-05-04"
out_is_empty
ends 0 "what stands" check stands.yaml
out "held against the rules of 2026-05-04"
out "Stands: nothing that must hold fails"
out "Layers of roof covering: roof_plane south"
out "project: owner"
out "heron-point: Town of Heron Point"
out "an aid, not an approval"
ends 1 "what fails" check fails.yaml
out "1  Fails: Layers of roof covering"
out "roof_plane south, fails.yaml:5"
out "Layers of covering: 2; at most 1 is allowed (100 % over)."
out "heron-point, Town Code 4-1 (heron-point/layers)"
out "layers_allowed = 1, set by heron-point from 2020-01-01, Town Code"
out "Strip the roof first."
out "1 finding: 1 fail"
ends 0 "what is waived does not count" check waived.yaml
out "Fails, waived"
out "by Chief Official, permit B-7, until 2027-01-01: the deck was seen"
ends 1 "but only while the waiver is valid" check waived.yaml --on 2027-01-02
out "note: the waiver of heron-point/layers for roof_plane:waived lifts nothing"
ends 1 "and only under its permit" check other-job.yaml
ends 2 "what is open" check open.yaml
out "Cannot be told: roof_plane south: layers is not given."
out "for example: layers: "
out "at open.yaml:5"
ends 3 "a design that is not there" check gone.yaml
out "gone.yaml: there is no such file"
ends 3 "a folder instead of a design" check books
ends 3 "a misspelt fact" check misspelt.yaml
out "misspelt.yaml:4:21:"
out "did you mean 'layers'?"
out "^"
ends 3 "no day to judge by" check dateless.yaml
out "permit_application_date: 2026-05-04"
ends 0 "a day from the command line" check dateless.yaml --on 2026-05-04
ends 3 "a book that is not there" "$PLUMBRULE" check stands.yaml --books books --book heron-pont
out "heron-point"
ends 3 "no rule in force" "$PLUMBRULE" check stands.yaml --books books --book empty-town
out "no rule of the books named is in force"
ends 4 "a rule that is wrong" "$PLUMBRULE" check stands.yaml --books books --book bad-rule
out "layers.lua:7: rule:"
out "layers"
ends 4 "the other books' rules still run" \
    "$PLUMBRULE" check fails.yaml --books books --book heron-point --book bad-rule
out "at most 1 is allowed (100 % over)"

# --- several designs ----------------------------------------------------------------------------
ends 1 "a fail goes before what is open" check open.yaml fails.yaml stands.yaml
out "open.yaml, held against"
out "stands.yaml, held against"
ends 3 "what is unread goes before, and the others still run" check fails.yaml gone.yaml stands.yaml
out "stands.yaml, held against"
ends 0 "each alone as in a row" check stands.yaml waived.yaml
check stands.yaml >one 2>err
check waived.yaml stands.yaml >both 2>err
done=$((done + 1))
tail -n "$(wc -l <one)" both | cmp -s - one || fail "a report does not hang on the one before"
ends 3 "names behind -- are designs" check -- --help
out "--help: there is no such file"

# --- json ----------------------------------------------------------------------------------------
ends 1 "json" check fails.yaml --format json
out '"plumbrule": 1'
out '"rule": "heron-point/layers"'
out '"level": "error"'
out_lacks "Needs action"
ends 1 "two designs, two documents" check fails.yaml stands.yaml -f json
done=$((done + 1))
[ "$(grep -c '^{$' out)" -eq 2 ] || fail "one document for each design"
ends 1 "the same input" check fails.yaml -f json
cp out first
ends 1 "gives the same bytes" check fails.yaml -f json
done=$((done + 1))
cmp -s first out || fail "the same input gives the same bytes"
ends 1 "the working" check fails.yaml --with-working
out "roof_plane south: layers is 2"

# --- colour --------------------------------------------------------------------------------------
escape=$(printf '\033')
ends 1 "no colour but on a terminal" check fails.yaml
out_lacks "$escape"
ends 1 "colour when asked for" check fails.yaml --color always
out "$escape"
out "Fails"
ends 1 "none when asked for none" check fails.yaml --color=never
out_lacks "$escape"
if command -v script >/dev/null 2>&1; then
    on_terminal="'$PLUMBRULE' check --books books --book heron-point fails.yaml"
    TERM=xterm script -qec "$on_terminal" /dev/null >out 2>err </dev/null
    out "$escape"
    NO_COLOR=1 TERM=xterm script -qec "$on_terminal" /dev/null >out 2>err </dev/null
    out_lacks "$escape"
fi

# --- where output goes ---------------------------------------------------------------------------
ends 1 "a file" check fails.yaml -o report.txt
out_is_empty
done=$((done + 1))
grep -q "Needs action" report.txt || fail "the report is in the file"
ends 74 "a folder is no file" check fails.yaml -o books
err "cannot be written"
ends 74 "a folder that is not there" check stands.yaml -o nowhere/report.txt
done=$((done + 1))
[ ! -e nowhere ] || fail "nothing is made"
if [ -e /dev/full ]; then
    ends 74 "a full device" check stands.yaml -o /dev/full
    check stands.yaml >/dev/full 2>err
    is=$?
    done=$((done + 1))
    [ "$is" -eq 74 ] || fail "a full standard output (exit $is)"
    err "cannot be written: No space"
fi
check stands.yaml >&- 2>err
is=$?
done=$((done + 1))
[ "$is" -eq 74 ] || fail "a closed standard output (exit $is)"
"$PLUMBRULE" --help >&- 2>err
is=$?
done=$((done + 1))
[ "$is" -eq 74 ] || fail "help on a closed standard output (exit $is)"
err "cannot be written"
# unread COMMAND…: its reader has gone before it writes a byte, and need not be told: the error stream is as usual.
mkfifo gone
unread() {
    "$@" >out 2>usual
    { read -r _ <gone; "$@" 2>err; echo $? >end; } | { exec <&-; echo >gone; }
    done=$((done + 1))
    [ "$(cat end)" -eq 74 ] && cmp -s err usual || fail "without a reader: $* (exit $(cat end))"
}
for words in "check stands.yaml --book heron-point" "check fails.yaml --book heron-point --format html" \
    "check stands.yaml fails.yaml --book heron-point --jobs 2" "explain stands.yaml --book heron-point --rule heron-point/layers" \
    "rules --book heron-point --on 2026-05-04" "compare heron-point heron-point stands.yaml" "prove heron-point" "lint heron-point" \
    books "schema design" "check nothing.yaml --book heron-point"; do
    # shellcheck disable=SC2086
    unread "$PLUMBRULE" $words --books books
done
for words in calc "draw stands.yaml --what one-line" --help --version --manual; do
    # shellcheck disable=SC2086
    unread "$PLUMBRULE" $words
done
if [ "$(id -u)" -ne 0 ]; then
    cp stands.yaml locked.yaml
    chmod 0 locked.yaml
    ends 3 "a file that may not be read" check locked.yaml
fi

# --- where books come from -----------------------------------------------------------------------
mkdir -p own/heron-point
sed -e 's/Town of Heron Point, rooftop PV/Ours/' -e '/^waivers/,$d' -e '/^deletes/,$d' \
    books/towns/heron-point/book.yaml >own/heron-point/book.yaml
cp books/towns/heron-point/values.yaml books/towns/heron-point/layers.lua own/heron-point/
PLUMBRULE_BOOKS=own ends 0 "books from the environment" "$PLUMBRULE" check stands.yaml --book heron-point
out "heron-point: Ours"
PLUMBRULE_BOOKS=own ends 0 "--books goes before it" check stands.yaml
out "heron-point: Town of Heron Point"
PLUMBRULE_BOOKS=nowhere:own ends 0 "it may name several" "$PLUMBRULE" books
out "heron-point: Ours"
for command in "check stands.yaml --book heron-point" "rules --book heron-point" "draw stands.yaml" \
    "compare stands.yaml --book heron-point" "prove heron-point" "lint heron-point" books; do
    # shellcheck disable=SC2086 # words of a command line
    ends 3 "${command%% *}: a folder of books that is not there" "$PLUMBRULE" $command --books books --books nowhere
    err "nowhere: there is no such folder; --books takes a folder that holds rulebooks"
    out_is_empty
done
ends 3 "a folder of catalogues that is not there" check stands.yaml --catalogues nowhere
err "nowhere: there is no such folder; --catalogues takes a folder that holds catalogues"
err "--catalogues equipment"
ends 3 "a file instead of a folder" check stands.yaml --catalogues stands.yaml
err "stands.yaml: this is a file; --catalogues takes the folder that holds catalogues"
for option in book books catalogues output format color from-list; do
    ends 64 "--$option with nothing" check stands.yaml "--$option" ""
    err "--$option needs "
    ends 64 "--$option and then another option" check stands.yaml "--$option" --with-working
    err "--$option needs "
    err ", not '--with-working'"
done
ends 64 "an empty word" check stands.yaml ""
err "a word of the command line is empty; check takes DESIGN"
mkdir bare
ends 0 "a folder that holds none is one" check stands.yaml --catalogues bare --books bare
if [ "$(id -u)" -ne 0 ]; then
    mkdir -m 0 locked
    ends 3 "a folder that may not be read" check stands.yaml --books locked
    err "locked: the folder may not be read"
    cp -R books sealed
    printf 'editions: [1]\n' >>sealed/towns/heron-point/book.yaml
    mkdir -m 0 sealed/towns/heron-point/1
    ends 3 "rules that may not be read" "$PLUMBRULE" check stands.yaml --books sealed --book heron-point@1
    out "the rules of this edition cannot be read"
fi
ends 0 "books are listed" "$PLUMBRULE" books --books books
out "heron-point: Town of Heron Point"
out "authority"
out "books/towns/heron-point"
ends 0 "as JSON too" "$PLUMBRULE" books --books books --format json
out '"book": "heron-point"'
ends 64 "books takes no name" "$PLUMBRULE" books heron-point

# --- rules ---------------------------------------------------------------------------------------
ends 0 "rules are listed" "$PLUMBRULE" rules --books books --book heron-point --on 2026-05-04
out "heron-point/layers: Layers of roof covering"
out "heron-point/old (deleted)"
out "Ordinance 9"
out "1 in force, 1 deleted."
ends 0 "before it was deleted" "$PLUMBRULE" rules --books books --book heron-point --on 2024-12-31
out "2 in force, 0 deleted."
ends 0 "as JSON too" "$PLUMBRULE" rules --books books --book heron-point --on 2026-05-04 -f json
out '"holds": false'
ends 64 "no day" "$PLUMBRULE" rules --books books --book heron-point
err "--on 2026-05-04"
ends 3 "no such book" "$PLUMBRULE" rules --books books --book heron-pont --on 2026-05-04
err "heron-point"

# --- calc ----------------------------------------------------------------------------------------
ends 0 "calculators are listed" "$PLUMBRULE" calc
out "cold_voltage"
out "temperature in °C, from -60 to"
cold() { "$PLUMBRULE" calc cold_voltage modules=10 open_circuit_voltage='49.5 V' "$@"; }
ends 0 "one is run" cold temperature='-10 °C' coefficient='-0.27 %/°C'
out "voltage = 541.778 V"
out "Working"
ends 64 "an unknown calculator" "$PLUMBRULE" calc cold_votage
err "did you mean 'cold_voltage'?"
ends 64 "an unknown input" cold temprature='-10 °C'
err "did you mean temperature"
ends 64 "an input without its unit" cold temperature=-10
err "temperature:"
err "temperature in °C, from -60 to"
ends 64 "an input of the wrong kind" cold temperature='10 V'
err "temperature in °C"
ends 64 "an input out of its range" cold temperature='-100 °C'
err "from -60 to"
ends 64 "an input left out" cold
err "temperature: it is not given"
ends 64 "no INPUT=VALUE" cold temperature
err "is no INPUT=VALUE"
ends 64 "an input given twice" cold modules=11 temperature='-10 °C'
err "given twice"

echo "$done checks, $failed failed" >&2
[ "$failed" -eq 0 ] && [ "$done" -gt 0 ]
