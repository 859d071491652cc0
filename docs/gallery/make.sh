#!/bin/sh
# Makes the pictures of docs/gallery.md anew from the samples. Needs what tests/run.sh installs and a built
# program: PLUMBRULE, else build/plumbrule.
set -eu
top=$(cd "$(dirname "$0")/../.." && pwd)
export TOP="$top" BUILD="${BUILD:-$top/build}"
program=${PLUMBRULE:-$top/build/plumbrule}
sh "$top/tests/browser/install.sh"
room=$(mktemp -d)
trap 'rm -rf "$room"' EXIT
cd "$top/samples"
for name in standing failing unfinished; do
    "$program" check "quill-hollow/$name.yaml" --book marrow-bay --format html -o "$room/$name.html" || [ $? -le 2 ]
done
node "$top/docs/gallery/take.mjs" "$room" "$top/docs/gallery"
pdftoppm -r 60 -png -f 1 -l 1 "$room/letter.pdf" "$room/letter"
mv "$room"/letter-*.png "$top/docs/gallery/letter.png"
