#!/bin/sh
# SARIF against its published schema and a validator, JUnit against our XSD, for one design, several, waived ones
# and ones that cannot be read.
set -eu
here=$(cd "$(dirname "$0")" && pwd)
sh "$here/install.sh"
room=$(mktemp -d)
trap 'rm -rf "$room"' EXIT
cd "$TOP/samples"
printf 'title: "half\n' >"$room/unread.yaml"
write() {
    name=$1
    shift
    "$PLUMBRULE" check "$@" --book marrow-bay --format sarif -o "$room/$name.sarif" || [ $? -le 4 ]
    "$PLUMBRULE" check "$@" --book marrow-bay --format junit -o "$room/$name.junit" || [ $? -le 4 ]
}
write one quill-hollow/failing.yaml
write open quill-hollow/unfinished.yaml
write several quill-hollow/failing.yaml quill-hollow/unfinished.yaml quill-hollow/standing.yaml
write unread "$room/unread.yaml"
write mixed "$room/unread.yaml" quill-hollow/standing.yaml
"$PLUMBRULE" check quill-hollow/failing.yaml quill-hollow/unfinished.yaml --book marrow-bay --format sarif \
    --failures-only -o "$room/failures.sarif" || [ $? -le 2 ]
xmllint --noout --schema "$TOP/tests/schemas/junit.xsd" "$room"/*.junit 2>"$room/xmllint" ||
    { cat "$room/xmllint" >&2; exit 1; }
multitool=$(echo "$BUILD"/node/node_modules/@microsoft/sarif-multitool-linux)
node "$here/formats.mjs" "$multitool/sarif-2.1.0.json" "$room"/*.sarif
# The validator warns of a driver without an address of its own on the network: the program has none.
for file in "$room"/*.sarif; do
    "$multitool/Sarif.Multitool" validate "$file" >"$room/validator" 2>&1 || { cat "$room/validator" >&2; exit 1; }
    if grep -E ': (warning|error) ' "$room/validator" | grep -v SARIF2005; then exit 1; fi
    grep -q 'Analysis completed successfully' "$room/validator" || { cat "$room/validator" >&2; exit 1; }
done
