-- What the Lua tests share: the program as its users run it, and designs made from the sample house by
-- small changes to its text.
local cjson = require("cjson")

local plumb = {
  program = os.getenv("PLUMBRULE") or "build/plumbrule",
  top = os.getenv("TOP") or ".",
}

local function quote(text) return "'" .. text:gsub("'", "'\\''") .. "'" end

function plumb.read(path)
  local file = assert(io.open(path, "rb"))
  local text = file:read("a")
  file:close()
  return text
end

local function write(path, text)
  local file = assert(io.open(path, "wb"))
  file:write(text)
  file:close()
end

plumb.write = write

-- A folder of the test's own that goes when the test ends.
local folder
function plumb.folder()
  if not folder then
    local pipe = assert(io.popen("mktemp -d"))
    folder = pipe:read("l")
    pipe:close()
  end
  return folder
end
function plumb.clean()
  if folder then os.execute("rm -rf " .. quote(folder)) end
end

-- Runs the program; returns standard output, exit code, standard error.
function plumb.run(arguments)
  local words = {}
  for i, word in ipairs(arguments) do words[i] = quote(word) end
  local errors = plumb.folder() .. "/errors"
  local pipe = assert(io.popen(quote(plumb.program) .. " " .. table.concat(words, " ") .. " 2>" .. quote(errors)))
  local output = pipe:read("a")
  local _, _, code = pipe:close()
  return output, code, plumb.read(errors)
end

function plumb.sample(name) return plumb.read(plumb.top .. "/samples/quill-hollow/" .. name .. ".yaml") end

-- Replaces plain text, which must stand there exactly once (or `times`).
function plumb.change(text, old, new, times)
  local count, from = 0, 1
  local parts = {}
  while true do
    local first, last = text:find(old, from, true)
    if not first then break end
    parts[#parts + 1] = text:sub(from, first - 1)
    parts[#parts + 1] = new
    from, count = last + 1, count + 1
  end
  parts[#parts + 1] = text:sub(from)
  assert(count == (times or 1), ("%q stands %d times, not %d"):format(old, count, times or 1))
  return table.concat(parts)
end

-- Checks a design given as text. Options: books, on, catalogues.
function plumb.check(text, options)
  options = options or {}
  local path = plumb.folder() .. "/design.yaml"
  write(path, text)
  local arguments = { "check", path, "--format", "json", "--catalogues", plumb.top .. "/samples/catalogue" }
  for _, book in ipairs(options.books or { "marrow-bay" }) do
    arguments[#arguments + 1] = "--book"
    arguments[#arguments + 1] = book
  end
  if options.directory then
    arguments[#arguments + 1] = "--books"
    arguments[#arguments + 1] = options.directory
  end
  if options.on then
    arguments[#arguments + 1] = "--on"
    arguments[#arguments + 1] = options.on
  end
  local output, code, errors = plumb.run(arguments)
  local report = cjson.decode(output)
  report.exit, report.errors = code, errors
  return report
end

-- The finding of a rule about a thing ("busbar:main/bus"), or the only one of the rule.
function plumb.find(report, rule, about)
  local found
  for _, finding in ipairs(report.findings) do
    local name = finding.about.kind .. ":" .. finding.about.name
    if finding.rule == rule and (not about or name == about) then
      assert(not found, rule .. " has several findings: say about what")
      found = finding
    end
  end
  return assert(found, ("no finding of %s about %s"):format(rule, about or "anything"))
end

-- How often the part stands in the text, as it is.
function plumb.count(text, part)
  local found, from = 0, 1
  while true do
    local first, last = text:find(part, from, true)
    if not first then return found end
    found, from = found + 1, last + 1
  end
end

-- The test of a finding whose sentence contains `what`; looks into options, too.
function plumb.test(finding, what)
  local function look(tests)
    for _, test in ipairs(tests) do
      if test.what and test.what:find(what, 1, true) then return test end
      for _, option in ipairs(test.options or {}) do
        local inside = look(option.tests)
        if inside then return inside end
      end
    end
  end
  return assert(look(finding.tests), ("%s compares nothing like %q"):format(finding.rule, what))
end

return plumb
