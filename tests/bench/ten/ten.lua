-- The ten checks in plain Lua on tables: ten.lua FACTS OUT PASSES writes its verdicts and prints the time of each pass.
-- The facts are read before the clock starts; nothing is recorded but the verdict.
local cjson = require "cjson"
local none = cjson.null
local inch, foot, psf = 0.0254, 0.3048, 4.4482216152605 / (0.3048 * 0.3048)

local function not_exceed(actual, limit)
  return actual <= limit + 1e-9 * math.max(math.abs(actual), math.abs(limit)) and "pass" or "fail"
end
local function fact_not_exceed(actual, limit) return actual == none and "open" or not_exceed(actual, limit) end
local function fact_at_least(actual, limit) return actual == none and "open" or not_exceed(limit, actual) end

local checks = {
  racking = { { "array-height", function(racking) return fact_not_exceed(racking.height_above_roof, 6 * inch) end } },
  busbar = { { "busbar-sum", function(bus)
    local sum = bus.protecting_device
    if sum == none or bus.breakers == none then return "open" end
    for _, breaker in ipairs(bus.breakers) do
      if breaker.duty == none then return "open" end
      if breaker.duty == "source" or breaker.duty == "feeder" then
        if breaker.rating == none then return "open" end
        sum = sum + breaker.rating
      end
    end
    return bus.rating == none and "open" or not_exceed(sum, 1.2 * bus.rating)
  end } },
  circuit = {
    { "circuit-device", function(circuit)
      if circuit.role == none then return "open" end
      if circuit.role ~= "inverter output" then return "notApplicable" end
      if circuit.carries == none then return "open" end
      local sum = 0
      for _, current in ipairs(circuit.carries) do
        if current == none then return "open" end
        sum = sum + current
      end
      return fact_at_least(circuit.ocpd_rating, 1.25 * sum)
    end },
    { "ridge-distance", function(circuit)
      if circuit.on_roof == none then return "open" end
      return circuit.on_roof and fact_at_least(circuit.ridge_distance, 18 * inch) or "notApplicable"
    end },
  },
  roof_plane = {
    { "dead-load", function(plane) return plane.dead_load == none and "open" or not_exceed(plane.dead_load + 3 * psf, 12 * psf) end },
    { "shingle-slope", function(plane)
      if plane.covering == none then return "open" end
      return plane.covering == "composition shingle" and fact_at_least(plane.slope, math.rad(20)) or "notApplicable"
    end },
  },
  disconnect = { { "disconnect-distance", function(disconnect)
    if disconnect.role == none then return "open" end
    return disconnect.role == "utility" and fact_not_exceed(disconnect.distance_to_meter, 10 * foot) or "notApplicable"
  end } },
  label = { { "label-letters", function(label) return fact_at_least(label.letter_height, 0.375 * inch) end } },
  string = { { "module-count", function(string) return fact_not_exceed(string.modules, 10) end } },
  rapid_shutdown = { { "shutdown-voltage", function(shutdown) return fact_not_exceed(shutdown.voltage_inside, 80) end } },
}

local function designs_of(path)
  local designs, lines = {}, {}
  for line in io.lines(path) do
    lines[#lines + 1] = line
    if line:sub(-1) == "]" then
      designs[#designs + 1], lines = cjson.decode(table.concat(lines)), {}
    end
  end
  return designs
end

local function pass(designs, out)
  local fails = 0
  for number, things in ipairs(designs) do
    for _, thing in ipairs(things) do
      for _, check in ipairs(checks[thing.kind]) do
        local verdict = check[2](thing)
        if verdict == "fail" then fails = fails + 1 end
        if out then out:write(number - 1, " ", check[1], " ", thing.name, " ", verdict, "\n") end
      end
    end
  end
  return fails
end

local designs = designs_of(arg[1])
local out = assert(io.open(arg[2], "w"))
pass(designs, out)
assert(out:close())
for _ = 1, tonumber(arg[3]) do
  local start = os.clock()
  pass(designs)
  print(("lua %.1f"):format((os.clock() - start) * 1e6))
end
