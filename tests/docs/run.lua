-- Runs every command that the documents show and compares what it prints with what they say it prints.
-- In a block fenced as ```console a line that begins with "$ " is a command, the lines below it are its
-- output; a line "…" stands for any number of lines; "(exit 1)" at the end states an exit code other
-- than 0. Commands run in a folder of their own that holds a copy of samples/; what a block fenced as
-- ```yaml FILE or ```lua FILE shows is written to that file first. `--update` writes the real output in.
local top, program, update = arg[1], arg[2], arg[3] == "--update"

assert(program and program:find("^/"), "usage: run.lua /the/top /the/program [--update]")

local function quote(text) return "'" .. text:gsub("'", "'\\''") .. "'" end

local function read(path)
  local file = assert(io.open(path, "rb"))
  local text = file:read("a")
  file:close()
  return text
end

local function lines_of(text)
  local list = {}
  for line in (text:gsub("\n?$", "\n")):gmatch("([^\n]*)\n") do list[#list + 1] = line end
  return list
end

local function output_of(command)
  local pipe = assert(io.popen(command))
  local text = pipe:read("a")
  local _, _, code = pipe:close()
  return text, code
end

local folder = output_of("mktemp -d"):gsub("\n", "")
os.execute(("mkdir %s/bin && ln -s %s %s/bin/plumbrule && cp -r %s/samples %s/samples"):format(folder, quote(program), folder, quote(top), folder))

local function run(command)
  return output_of(("cd %s && PATH=%s/bin:$PATH PLUMBRULE_BOOKS=%s/books sh -c %s 2>&1"):format(folder, folder, folder, quote(command)))
end

-- Does the shown text, in which "…" stands for any lines, fit the real one?
local function fits(shown, real, s, r)
  s, r = s or 1, r or 1
  while s <= #shown do
    if shown[s] == "…" then
      for skip = r, #real + 1 do
        if fits(shown, real, s + 1, skip) then return true end
      end
      return false
    end
    if shown[s] ~= real[r] then return false end
    s, r = s + 1, r + 1
  end
  return r > #real
end

local commands, wrong = 0, 0

-- One console block: its commands with what is shown below each. Returns the block with real output.
local function check_block(document, block)
  local result, at = {}, 1
  while at <= #block do
    local command = block[at]:match("^%$ (.*)$")
    assert(command, document .. ": a console block begins with a command: " .. block[at])
    result[#result + 1] = block[at]
    at = at + 1
    while command:sub(-1) == "\\" do
      command = command:sub(1, -2) .. block[at]
      result[#result + 1] = block[at]
      at = at + 1
    end
    local shown = {}
    while at <= #block and not block[at]:match("^%$ ") do
      shown[#shown + 1] = block[at]
      at = at + 1
    end
    local text, code = run(command)
    text = text:gsub(folder:gsub("%p", "%%%0"), "."):gsub(top:gsub("%p", "%%%0"), "…")
    local real = text == "" and {} or lines_of(text)
    if code ~= 0 then real[#real + 1] = ("(exit %d)"):format(code) end
    commands = commands + 1
    if fits(shown, real) then
      for _, line in ipairs(shown) do result[#result + 1] = line end
    else
      wrong = wrong + 1
      if not update then
        io.stderr:write(document, ": '", command, "' prints something else:\n", table.concat(real, "\n"), "\n")
      end
      for _, line in ipairs(real) do result[#result + 1] = line end
    end
  end
  return result
end

local function write_file(name, block)
  os.execute(("mkdir -p %s/$(dirname %s)"):format(folder, quote(name)))
  local file = assert(io.open(folder .. "/" .. name, "wb"))
  file:write(table.concat(block, "\n"), "\n")
  file:close()
end

local function check_document(path)
  local result, block, kind, name = {}, nil, nil, nil
  for _, line in ipairs(lines_of(read(path))) do
    local fence, file = line:match("^```(%a*)%s*(%S*)")
    if not block and fence and (fence == "console" or file ~= "") then
      block, kind, name = {}, fence, file
      result[#result + 1] = line
    elseif block and line == "```" then
      if kind == "console" then block = check_block(path, block) else write_file(name, block) end
      for _, inner in ipairs(block) do result[#result + 1] = inner end
      result[#result + 1] = line
      block = nil
    elseif block then
      block[#block + 1] = line
    else
      result[#result + 1] = line
    end
  end
  if update then
    local file = assert(io.open(path, "wb"))
    file:write(table.concat(result, "\n"), "\n")
    file:close()
  end
end

for _, path in ipairs(lines_of(output_of("ls " .. quote(top) .. "/docs/*.md " .. quote(top) .. "/README.md"))) do
  check_document(path)
end
os.execute("rm -rf " .. folder)
io.stderr:write(("%d commands run, %d print something else than the documents say\n"):format(commands, wrong))
os.exit((wrong == 0 or update) and commands > 0 and 0 or 1)
