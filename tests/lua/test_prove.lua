-- Cases of books: what they prove, what they refuse, what they leave unsaid.
local lu = require("luaunit")
local cjson = require("cjson")
local plumb = require("plumb")

TestProve = {}

-- A book of one rule and one value, with a file of cases.
local function book(cases, options)
  options = options or {}
  local folder = plumb.folder() .. "/town"
  os.execute("rm -rf '" .. folder .. "' && mkdir -p '" .. folder .. "/cases'")
  plumb.write(folder .. "/book.yaml", "book: town\ntitle: A town\nmaintained_by: Building Department\n"
    .. "role: authority\nscope: dwellings\n" .. (options.more or ""))
  plumb.write(folder .. "/values.yaml", options.values or [[
meter_distance:
  kind: length
  stricter: smaller
  says: how far the utility's disconnect may stand from the meter
  entries: [{from: 2020-01-01, is: 10 ft, cite: Ordinance 1}]
]])
  plumb.write(folder .. "/near-meter.lua", options.rule or [[
return {
  title = "Disconnect near the meter", cite = "Ordinance 1", about = "disconnect",
  applies = function(disconnect) return disconnect.role:is("utility") end,
  check = function(disconnect, book)
    shall.not_exceed("Distance to the meter", disconnect.distance_to_meter, book.meter_distance)
  end,
}
]])
  plumb.write(folder .. "/cases/near-meter.yaml",
    "rule: town/near-meter\ngiven: quill-hollow/standing\non: 2026-08-03\ncases:\n" .. cases)
  return folder
end

local function prove(folder, ...)
  local output, code, errors = plumb.run({ "prove", folder, ... })
  return output, code, errors
end

local function prove_json(folder, ...)
  local output, code, errors = plumb.run({ "prove", folder, "--format", "json", ... })
  local report = cjson.decode(output)
  return report, code, errors
end

local whole = [[
  - says: it stands near
    expect: {kind: pass, actual: 4 ft, limit: 10 ft, margin: 60 %, level: none, cite: Ordinance 1}
  - says: it stands too far away
    with: [{thing: disconnect pv-disconnect, distance_to_meter: 12 ft}]
    expect: {kind: fail, about: "disconnect:pv-disconnect", actual: 12 ft, limit: 10 ft, margin: -20 %, level: error}
  - says: nobody has measured
    without: ["disconnect pv-disconnect: distance_to_meter"]
    expect: {kind: open, missing: "disconnect pv-disconnect: distance_to_meter"}
  - says: there is none
    without: [disconnect pv-disconnect]
    expect: {kind: notApplicable}
  - says: a second one stands too far away
    adding: [{thing: design, disconnects: [{name: other, role: utility, distance_to_meter: 20 ft}]}]
    expect: {kind: fail, about: "disconnect:other", actual: 20 ft}
  - says: for a smaller distance it is too far
    values: {meter_distance: 3 ft}
    expect: {kind: fail, limit: 3 ft}
]]

function TestProve:test_a_book_whose_cases_prove_it_ends_with_0()
  local report, code, errors = prove_json(book(whole), "--stir")
  lu.assertEquals(errors, "")
  lu.assertEquals(code, 0)
  local proof = report.proofs[1]
  lu.assertEquals(#proof.cases, 6)
  lu.assertEquals(proof.not_as_expected, 0)
  lu.assertEquals(#proof.lacks, 0)
  -- Both ways of the value and of the one comparison are noticed.
  lu.assertEquals(proof.stirred.of, 4)
  lu.assertEquals(proof.stirred.noticed, 4)
end

function TestProve:test_each_thing_that_is_otherwise_is_told()
  local wrong = {
    { "{kind: fail}", "expected fail, but it is pass" },
    { "{kind: pass, actual: 5 ft}", "actual: expected 5 ft, but it is 4 ft" },
    { "{kind: pass, actual: 4.01 ft}", "actual: expected 4.01 ft" },
    { "{kind: pass, limit: 11 ft}", "limit: expected 11 ft, but it is 10 ft" },
    { "{kind: pass, limit: 10 A}", "cannot be read" },
    { "{kind: pass, margin: 61 %}", "margin: expected 61 %, but it is 60 %" },
    { "{kind: pass, margin: much}", "margin: expected 'much' cannot be read" },
    { "{kind: pass, actual: many}", "actual: expected 'many' cannot be read" },
    { "{kind: pass, level: error}", "expected the level error, but it is none" },
    { "{kind: pass, cite: Ordinance 2}", "expected the citation Ordinance 2" },
    { "{kind: pass, what: Depth}", "nothing is compared like 'Depth'" },
    { "{kind: pass, option: the other}", "expected the way 'the other', but it is none" },
    { "{kind: pass, about: \"disconnect:nowhere\"}", "there is no finding about disconnect:nowhere" },
    { "{kind: deleted}", "expected that the rule does not hold, but it does" },
  }
  for _, pair in ipairs(wrong) do
    local output, code = prove(book("  - says: one\n    expect: " .. pair[1] .. "\n"))
    lu.assertEquals(code, 1, pair[1])
    lu.assertStrContains((output:gsub("%s+", " ")), pair[2])
  end
end

-- What compares no numbers, words, ways of a group, a point for a person.
function TestProve:test_what_is_no_number_is_held_too()
  local rule = [[
return {
  title = "Disconnect", cite = "Ordinance 1", about = "disconnect",
  applies = function(disconnect) return disconnect.role:is("utility") end,
  check = function(disconnect, book)
    shall.be("It can be locked", disconnect.lockable)
    shall.meet_one_of {
      { "near", function() shall.not_exceed("Distance", disconnect.distance_to_meter, book.meter_distance) end },
      { "seen", function() shall.be("It is in sight", disconnect.within_sight) end },
    }
  end,
}
]]
  local expected = {
    { "{kind: pass, what: It can be locked, actual: yes}", 2, nil },
    { "{kind: pass, what: It can be locked, margin: 5 %}", 1, "margin: expected 5 %, but there is none" },
    { "{kind: pass, what: It can be locked, limit: 5 ft}", 1, "limit: expected 5 ft, but it is" },
    { "{kind: pass, option: near}", 2, nil },
    { "{kind: pass, option: seen}", 1, "expected the way 'seen', but it is 'near'" },
    { "{kind: pass, option: near, what: Distance, actual: 4 ft, margin: 60 %}", 2, nil },
    { "{kind: pass, what: Distance, margin: 61 %}", 1, "margin: expected 61 %, but it is 60 %" },
  }
  for _, one in ipairs(expected) do
    local output, code = prove(book("  - says: one\n    expect: " .. one[1] .. "\n", { rule = rule }))
    lu.assertEquals(code, one[2], one[1] .. output)
    if one[3] then lu.assertStrContains((output:gsub("%s+", " ")), one[3]) end
  end
  local open = "  - says: one\n    without: [\"disconnect pv-disconnect: lockable\"]\n    expect: {kind: open, missing: MISSING}\n"
  local output, code = prove(book(open:gsub("MISSING", "lockable"), { rule = rule }))
  lu.assertEquals(code, 2, output)
  output, code = prove(book(open:gsub("MISSING", "within_sight"), { rule = rule }))
  lu.assertEquals(code, 1)
  lu.assertStrContains((output:gsub("%s+", " ")), "expected 'within_sight' to be missing, but: ")
end

-- Each is a problem with its place, and the program ends with 3.
function TestProve:test_cases_that_cannot_be_are_refused()
  local refused = {
    { "  - says: one\n", "case%-asserts%-nothing", "asserts nothing" },
    { "  - says: one\n    expect: {actual: 4 ft}\n", "case%-asserts%-nothing", "asserts nothing" },
    { "  - says: one\n    expect: {kind: }\n", "case%-asserts%-nothing", "asserts nothing" },
    { "  - says: one\n    expect: {kind: passes}\n", "word", "did you mean 'pass'" },
    { "  - says: one\n    expect: {kind: pass, atcual: 4 ft}\n", "unknown%-key", "did you mean 'actual'" },
    { "  - says: one\n    expect: {kind: open, actual: 4 ft}\n", "number%-needless", "no number decides" },
    { "  - says: one\n    expect: {kind: pass, about: south}\n", "about%-bad", "roof_plane:south" },
    { "  - says: one\n    expect: {kind: pass}\n  - says: two\n    expect: {kind: pass}\n", "case%-twice", "stands here twice" },
    { "  - says: one\n    expect: {kind: pass}\n  - says: one\n    expect: {kind: pass, limit: 10 ft}\n", "case%-twice", "same sentence" },
    { "  - says: one\n    rule: town/near-metre\n    expect: {kind: pass}\n", "rule%-unknown", "did you mean 'town/near%-meter'" },
    { "  - says: one\n    given: quill-hollow/sitting\n    expect: {kind: pass}\n", "design%-unknown", "among the samples" },
    { "  - says: one\n    given: cases/own.yaml\n    expect: {kind: pass}\n", "design%-unknown", "from the book's folder" },
    { "  - says: one\n    with: [{thing: disconnect pv-disconect, lockable: no}]\n    expect: {kind: pass}\n", "change%-of%-nothing", "did you mean 'pv%-disconnect'" },
    { "  - says: one\n    with: [{thing: disconnect, lockable: no}]\n    expect: {kind: pass}\n", "change%-of%-nothing", "things of the kind disconnect: name the one" },
    { "  - says: one\n    with: [{thing: combiner, location: garage}]\n    expect: {kind: pass}\n", "change%-of%-nothing", "the design has no combiner" },
    { "  - says: one\n    with: [{thing: disconect pv, lockable: no}]\n    expect: {kind: pass}\n", "kind%-unknown", "did you mean 'disconnect'" },
    { "  - says: one\n    with: [{thing: disconnect pv-disconnect, lockble: no}]\n    expect: {kind: pass}\n", "unknown%-key", "did you mean 'lockable'" },
    { "  - says: one\n    with: [{thing: disconnect pv-disconnect}]\n    expect: {kind: pass}\n", "change%-empty", "nothing is changed" },
    { "  - says: one\n    with: [{thing: module low-1-1, status: new}]\n    expect: {kind: pass}\n", "change%-of%-row", "change the row" },
    { "  - says: one\n    without: [\"disconnect pv-disconnect: distanc_to_meter\"]\n    expect: {kind: pass}\n", "unknown%-key", "did you mean 'distance_to_meter'" },
    { "  - says: one\n    without: [disconnect pv-disconnect: lockable]\n    expect: {kind: pass}\n", "quotes%-needed", "in quotes" },
    { "  - says: one\n    values: {meter_distanc: 3 ft}\n    expect: {kind: pass}\n", "value%-unknown", "did you mean 'meter_distance'" },
    { "  - says: one\n    values: {meter_distance: 3 A}\n    expect: {kind: pass}\n", "unit%-wrong", "meter_distance" },
    { "  - says: one\n    on: 2026-02-30\n    expect: {kind: pass}\n", "date%-bad", "a day of the calendar" },
    { "  - says: one\n    books: [tonw]\n    expect: {kind: pass}\n", "book%-unknown", "no book tonw" },
  }
  for _, one in ipairs(refused) do
    local report, code, errors = prove_json(book(one[1]))
    lu.assertEquals(code, 3, one[1])
    lu.assertStrMatches(report.problems[1].code, one[2], nil, nil, one[1])
    lu.assertStrContains((errors:gsub("%s+", " ")), (one[3]:gsub("%%", "")))
    lu.assertNotNil(errors:match("near%-meter%.yaml:%d+"), one[1])
    lu.assertStrContains(report.problems[1].place.file, "near-meter.yaml")
  end
end

function TestProve:test_what_no_case_shows_is_told()
  local report, code = prove_json(book("  - says: one\n    expect: {kind: pass}\n", {
    rule = [[
return {
  title = "Two ways", cite = "Ordinance 1", about = "disconnect",
  applies = function(disconnect) return disconnect.role:is("utility") end,
  check = function(disconnect, book)
    shall.meet_one_of {
      { "near", function() shall.not_exceed("Distance", disconnect.distance_to_meter, 10 * ft) end },
      { "in sight", function() shall.be("In sight", disconnect.within_sight) end },
    }
  end,
}
]] }))
  lu.assertEquals(code, 2)
  local lacks = {}
  for _, lack in ipairs(report.proofs[1].lacks) do lacks[lack.kind] = lack end
  lu.assertEquals(lacks.case.lacks, "a failing, an open case")
  lu.assertEquals({ lacks.option.thing, lacks.option.lacks }, { "town/near-meter", "in sight" })
  lu.assertEquals(lacks.value.thing, "meter_distance")
end

function TestProve:test_a_move_that_no_case_notices_is_told()
  local report, code = prove_json(book("  - says: one\n    expect: {kind: pass}\n"), "--stir")
  lu.assertEquals(code, 2)
  local stirred = report.proofs[1].stirred
  lu.assertEquals({ stirred.of, stirred.noticed, stirred.share }, { 4, 0, 0 })
  for _, move in ipairs(stirred.moves) do lu.assertTrue(move.tried) end
  -- A case that stands just inside the limit notices the one step that leaves it outside.
  report = prove_json(book("  - says: one\n    with: [{thing: disconnect pv-disconnect, distance_to_meter: 9.9 ft}]\n"
    .. "    expect: {kind: pass}\n"), "--stir")
  lu.assertEquals(report.proofs[1].stirred.noticed, 2)
  for _, move in ipairs(report.proofs[1].stirred.moves) do lu.assertEquals(move.noticed, move.how == "a step down") end
end

function TestProve:test_yes_and_words_are_stirred_too()
  local values = [[
needs_lock:
  kind: yes or no
  says: whether it must be lockable
  entries: [{from: 2020-01-01, is: yes, cite: Ordinance 1}]
place:
  kind: word
  words: [outside, anywhere]
  says: where it stands
  entries: [{from: 2020-01-01, is: outside, cite: Ordinance 1}]
]]
  local rule = [[
return {
  title = "Disconnect", cite = "Ordinance 1", about = "disconnect",
  applies = function(disconnect) return disconnect.role:is("utility") end,
  check = function(disconnect, book)
    if book.needs_lock then shall.be("Lockable", disconnect.lockable) end
    if book.place:is("outside") then shall.be("Outside", disconnect.location:is("outside wall")) end
    shall.be("Of something", true)
  end,
}
]]
  local cases = [[
  - says: it hangs outside
    expect: {kind: pass}
  - says: it cannot be locked
    with: [{thing: disconnect pv-disconnect, lockable: no}]
    expect: {kind: fail, what: Lockable}
  - says: it hangs in the garage
    with: [{thing: disconnect pv-disconnect, location: garage}]
    expect: {kind: fail, what: Outside}
]]
  local report = prove_json(book(cases, { values = values, rule = rule }), "--stir")
  local stirred = report.proofs[1].stirred
  lu.assertEquals(stirred.of, 5) -- one way each: two values, three comparisons
  lu.assertEquals(stirred.noticed, 5)
end

function TestProve:test_a_comparison_that_no_case_reaches_counts_as_unnoticed()
  local report = prove_json(book("  - says: one\n    expect: {kind: pass, limit: 10 ft}\n", { rule = [[
return {
  title = "Disconnect", cite = "Ordinance 1", about = "disconnect",
  applies = function(disconnect) return disconnect.role:is("utility") end,
  check = function(disconnect, book) -- shall.be("not this", true)
    if disconnect.within_sight then
      shall.be("not reached", true)
    end
    shall.not_exceed("Distance to the meter", disconnect.distance_to_meter, book.meter_distance)
  end,
}
]] }), "--stir")
  local untried = {}
  for _, move in ipairs(report.proofs[1].stirred.moves) do
    if not move.tried then untried[#untried + 1] = move.place.line end
  end
  lu.assertEquals(untried, { 6 })
end

function TestProve:test_a_broken_rule_proves_nothing()
  local output, code, errors = prove(book("  - says: one\n    expect: {kind: open}\n", { rule = [[
return { title = "Broken", cite = "Ordinance 1", about = "disconnect",
  check = function(disconnect) shall.be("x", disconnect.no_such_fact) end }
]] }))
  lu.assertEquals(code, 4)
  lu.assertStrContains(output, "not as expected")
  lu.assertStrContains(errors, "no_such_fact")
end

function TestProve:test_a_rule_that_a_town_deletes()
  local cases = [[
  - says: the code's rule holds before
    on: 2020-06-01
    rule: irc/roof-layers
    books: [town]
    expect: {kind: pass, about: "roof_plane:south"}
  - says: the town has taken it out
    rule: irc/roof-layers
    expect: {kind: deleted}
]]
  local report, code = prove_json(book(cases, { more = "adopts: [{book: irc, edition: 2021, from: 2020-01-01}]\n"
    .. "deletes: [{rule: irc/roof-layers, edition: 2021, from: 2021-01-01, cite: Ordinance 2}]\n" }))
  lu.assertEquals(report.proofs[1].not_as_expected, 0)
  lu.assertEquals(code, 2)
end

function TestProve:test_the_command_line()
  local _, code, errors = plumb.run({ "prove" })
  lu.assertEquals(code, 64)
  lu.assertStrContains(errors, "no rulebook is named")
  _, code, errors = plumb.run({ "prove", "marow-bay" })
  lu.assertEquals(code, 3)
  lu.assertStrContains(errors, "marrow-bay")
end

-- Of a book that is not there nothing is counted, and what the others prove stands.
function TestProve:test_a_book_that_is_not_there()
  local folder = book(whole)
  local output, code = plumb.run({ "prove", "marow-bay" })
  lu.assertEquals({ output, code }, { "", 3 })
  output, code = plumb.run({ "prove", "marow-bay", folder })
  lu.assertEquals({ output:match("^town: 1 rule, 6 cases, all as expected\n"), code }, { output, 3 })
  local report = prove_json("marow-bay", folder)
  lu.assertEquals({ #report.proofs, report.proofs[1].book }, { 1, "town" })
  lu.assertEquals(report.problems[1].code, "book-unknown")
end

-- No case of the books that come with the program comes out otherwise than it says.
function TestProve:test_the_books_of_the_house()
  local output = plumb.run({ "books", "--format", "json" })
  for _, one in ipairs(cjson.decode(output).books) do
    if one.path:find(plumb.top, 1, true) == 1 then
      local said, code, errors = plumb.run({ "prove", one.book })
      lu.assertTrue(code == 0 or code == 2, said .. errors)
    end
  end
end

local result = lu.LuaUnit.run()
plumb.clean()
os.exit(result)
