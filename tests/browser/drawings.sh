#!/bin/sh
# Every drawing of every sample, and of designs that are odd, in a browser at three widths: no two texts meet, none
# leaves its sheet, each drawing is named and described. Needs PLUMBRULE, TOP and BUILD as report.sh does.
set -eu
here=$(cd "$(dirname "$0")" && pwd)
sh "$here/install.sh"
room=$(mktemp -d)
trap 'rm -rf "$room"' EXIT
cd "$TOP/samples"
draw() { # name, design, book
    for what in roof one-line panel labels loads; do
        "$PLUMBRULE" draw "$2" --what "$what" --book "$3" --on 2026-08-03 --catalogues "$TOP/samples/catalogue" \
            -o "$room/$1-$what.svg"
        xmllint --noout "$room/$1-$what.svg"
    done
}
for design in */*.yaml; do
    case $design in catalogue/*) continue ;; esac
    book=marrow-bay
    ! grep -q 'Larch Pass' "$design" || book=larch-pass
    draw "$(basename "$design" .yaml)" "$design" "$book"
done
# Nobody told how the planes lie, nor the edges; no run is told; breakers without a place; letters without a height.
sed -e '/^      plan_origin:/d' -e '/^      edges:/d' -e '/^    from: /d' -e '/^    to: /d' -e 's/, position: [0-9]*//' \
    -e 's/, letter_height: [0-9/]* in//' -e '/^    conductor_size:/d' quill-hollow/standing.yaml >"$room/sparse.yaml"
draw sparse "$room/sparse.yaml" marrow-bay
printf 'title: nothing is told\n' >"$room/empty.yaml"
draw empty "$room/empty.yaml" marrow-bay
# Text that would be markup, from right to left, pictures, and long words.
evil="<script>x<\\/script> \\&amp; \\\\\"q\\\\\" ']]> שלום 🏠 WWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWW"
sed -e "s/^title: .*/title: \"$evil\"/" -e "s/address: .*/address: \"$evil\"/" -e "s/designer: .*/designer: \"$evil\"/" \
    -e "s/text: SOLAR PV SYSTEM EQUIPPED WITH RAPID SHUTDOWN/text: \"$evil\"/" \
    -e 's/string-1/"<svg onload=x> \& שלום 🏠 long long name"/g' -e 's/name: range/name: "<b> \& a very long name of a breaker 🏠"/' \
    -e 's/name: stack/name: "<i> \& שלום a long name for a pipe"/' quill-hollow/failing.yaml >"$room/evil.yaml"
draw evil "$room/evil.yaml" marrow-bay
node "$here/drawings.mjs" "$room"/*.svg
