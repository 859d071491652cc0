-- The second judge: runs the rules of the books in force over a design, without the core, and says what each finds.
local words = require("words")
local outcome = require("outcome")
local design = require("design")
local calls = require("calls")

local judge = {}

-- One room for all; what stands in it is set anew for each design, and each rule's chunk runs anew.
local room, chunks = {}, {}
local function card_of(path, used)
  room.environment = room.environment or words.environment(room, used)
  chunks[path] = chunks[path] or assert(loadfile(path, "t", room.environment))
  return chunks[path]()
end

local function settle(finding, tests)
  finding.kind, finding.tests = outcome.all_of(tests), tests
  finding.level = outcome.level_of(finding.kind, tests)
  finding.begins = outcome.message_begins(finding.kind, tests)
  return finding
end

local function left_by(signal)
  if type(signal) ~= "table" then return { relation = "broken", what = "the rule could not be run to its end", why = signal, normative = "shall", kind = "open" } end
  if signal.unasked then return { relation = "unasked", what = signal.unasked, normative = "shall", kind = "open" } end
  return words.note_of(signal)
end

-- Runs one function of the card; returns what it answered, or nothing where it was left.
local function run(f, thing)
  local is_done, answer = pcall(f, words.thing(thing, room), words.book_of(room), words.thing(room.design.root, room))
  if is_done then return true, answer end
  return false, left_by(answer)
end

local function judge_thing(card, thing)
  local finding = {}
  room.tests, room.depth = nil, 0
  if card.applies then
    local is_done, answer = run(card.applies, thing)
    if is_done and type(answer) ~= "boolean" then is_done, answer = false, left_by("applies() answers true or false") end
    if not is_done then return settle(finding, { answer }) end
    if not answer then
      finding.kind, finding.tests, finding.level, finding.begins = "notApplicable", {}, "none", "Does not apply here"
      return finding
    end
  end
  local tests = {}
  room.tests = tests
  local is_done, note = run(card.check, thing)
  if is_done and #tests == 0 then is_done, note = false, left_by("the check recorded nothing") end
  if not is_done then table.insert(tests, note) end
  return settle(finding, tests)
end

local function name_of(made, thing)
  local title = made.root.facts.title
  return thing == made.root and title.state == "given" and title.is or thing.path
end

local function cite_of(card, edition)
  return type(card.cite) == "table" and card.cite[edition] or card.cite
end

-- Nothing to look at: told that there is none, or open where there may be some.
local function judge_absence(made, card)
  local untold = made.untold[card.about]
  local finding = {}
  if untold then
    return settle(finding, { { relation = "missing", fact = design.name_fact(untold.thing, untold.row), normative = "shall", kind = "open" } })
  end
  if #(made.all[card.about] or {}) > 0 then return nil end
  finding.kind, finding.tests, finding.level, finding.begins = "notApplicable", {}, "none", "Does not apply here"
  return finding
end

-- All findings in order, each {rule, about, kind, level, cite, tests, begins}. `told`: see calls.lua. `used` counts words.
function judge.review(made, resolved, told, used, counts)
  local findings = {}
  room.design, room.model, room.books = made, made.model, resolved
  for _, book in ipairs(resolved.stack) do
    for _, name in ipairs(book.rules) do
      local path = book.at .. "/" .. name .. ".lua"
      room.calls = calls.asking(nil, counts)
      local card = card_of(path, used)
      local function add(finding, thing)
        finding.rule, finding.about = book.name .. "/" .. name, thing.kind.name .. ":" .. name_of(made, thing)
        finding.cite, finding.has_cites = cite_of(card, book.edition), type(card.cite) == "table"
        findings[#findings + 1] = finding
      end
      for _, thing in ipairs(made.all[card.about] or {}) do
        room.calls = calls.asking(told[book.name .. "/" .. name .. "|" .. thing.kind.name .. ":" .. name_of(made, thing)], counts)
        add(judge_thing(card, thing), thing)
      end
      local absence = judge_absence(made, card)
      if absence then add(absence, made.root) end
    end
  end
  return findings
end

return judge
