#!/bin/sh
# The ten checks written five ways: verdicts first, and only where all agree the clock. Needs TOP, BUILD (with
# bench_ten in it), FOLDER to work in, and COUNT designs.
set -eu
top=${TOP:?} build=${BUILD:?} folder=${FOLDER:?} count=${COUNT:-3000} passes=${PASSES:-7}
ten=$top/tests/bench/ten
mkdir -p "$build/node" "$folder"
if [ ! -e "$build/node/engines" ]; then
    (
        cd "$build/node"
        [ -e package.json ] || echo '{"private":true,"type":"module"}' >package.json
        npm install --no-audit --no-fund --ignore-scripts --loglevel=error json-rules-engine json-logic-js >engines.log 2>&1 || {
            cat engines.log >&2
            echo "the peers could not be installed: is there a network?" >&2
            exit 1
        }
        touch engines
    )
fi
lua5.4 "$top/tests/bench/generate.lua" --seed 31 --count "$count" --out "$folder/designs"
# Each program is run three times, by turns, so that a slow stretch of the machine falls on all.
: >"$folder/times"
for turn in 1 2 3; do
    "$build/bench_ten" "$folder/designs/list" "$top/samples/catalogue" "$ten/book" "$folder" "$([ $turn = 1 ] && echo 0 || echo "$passes")" >"$folder/ours"
    lua5.4 "$ten/ten.lua" "$folder/facts" "$folder/lua" "$([ $turn = 1 ] && echo 0 || echo "$passes")" >"$folder/theirs"
    BUILD=$build node "$ten/ten.mjs" "$folder/facts" "$folder" "$([ $turn = 1 ] && echo 0 || echo "$passes")" >>"$folder/theirs"
    if [ $turn = 1 ]; then
        for way in hand rules lua logic engine; do LC_ALL=C sort "$folder/$way" >"$folder/$way.sorted"; done
        for way in rules lua logic engine; do
            cmp -s "$folder/hand.sorted" "$folder/$way.sorted" || {
                echo "the verdicts of hand-written C and of \"$way\" differ; nothing is timed:" >&2
                diff "$folder/hand.sorted" "$folder/$way.sorted" | head -n 10 >&2
                exit 1
            }
        done
    else
        cat "$folder/ours" "$folder/theirs" >>"$folder/times"
    fi
done
sed 's/.* //' "$folder/hand" | sort | uniq -c | awk '{ text = text (NR > 1 ? ", " : "") $1 " " $2; all += $1 }
    END { print "  " all " verdicts, the same in all five: " text }'
lua5.4 - "$folder/times" <<'LUA'
local series, checks = {}, 0
for line in io.lines(arg[1]) do
  local name, value = line:match("(%l+) (%S+)")
  if name == "checks" then checks = tonumber(value) end
  series[name] = series[name] or {}
  table.insert(series[name], tonumber(value))
end
local rates = {}
for _, way in ipairs { { "rules", "rules of a book, recorded" }, { "hand", "by hand in C" }, { "lua", "plain Lua on tables" }, { "logic", "json-logic-js" }, { "engine", "json-rules-engine" } } do
  local list = series[way[1]]
  table.sort(list)
  rates[way[1]] = checks / list[(#list + 1) // 2] * 1e6
  print(("  %-42s %9.0f checks/s   (median of %d passes)"):format(way[2], rates[way[1]], #list))
end
print(("  rules / json-rules-engine                  %9.2f   (aim: at least 10)"):format(rates.rules / rates.engine))
print(("  rules / json-logic-js                      %9.2f"):format(rates.rules / rates.logic))
print(("  rules / plain Lua                          %9.3f"):format(rates.rules / rates.lua))
print(("  rules / by hand in C                       %9.4f"):format(rates.rules / rates.hand))
LUA
