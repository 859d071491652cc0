-- Makes designs by a seed: houses, roofs, arrays, wiring, labels and papers that differ, each written as people write
-- them. Everything in them is invented; their equipment stands in samples/catalogue.
--
--     lua5.4 generate.lua [--seed S] [--count N] [--from K] [--modules A[..B]] [--planes A[..B]] [--care K] [--out DIR]
--
-- With --out: DIR/000/design-000001.yaml … (a thousand to a folder) and DIR/list with their paths, for --from-list;
-- without it the designs go to stdout, each followed by a line "..." (none after the last). The same seed makes the
-- same bytes, and design K is the same whatever the count. --modules is how many modules each array has (1..60 unless
-- said; up to 2000) and --planes how many planes each roof has (1..12 unless said; small roofs are the more common).
-- With --care, from 1 (nothing wrong or forgotten) to 6, all are drawn up with that care.
--
-- A third of the designs are drawn up with care; the others leave out facts or get something wrong, some often.
-- As a module (dofile), it returns { design = function(seed, number, options) → text }.

local random = math.random
local function pick(list) return list[random(#list)] end
local function chance(share) return random() < share end
local function between(low, high, step) return low + step * random(0, math.tointeger((high - low) // step)) end
local function number(value) return (("%.3f"):format(value):gsub("0+$", ""):gsub("%.$", "")) end
local function feet(value) return number(value) .. " ft" end
local function inches(value) return number(value) .. " in" end
local function amperes(value) return number(value) .. " A" end
local function point(x, y) return "[" .. inches(x) .. ", " .. inches(y) .. "]" end
local function names(list) return "[" .. table.concat(list, ", ") .. "]" end

-- ---- how careful the one is who drew it up ------------------------------------------------------------------------

local care -- { forgets = share of facts left out, errs = share of choices that are wrong }
local cares = {
  { forgets = 0, errs = 0 }, { forgets = 0, errs = 0.003 }, { forgets = 1 / 600, errs = 0.001 },
  { forgets = 1 / 2000, errs = 0.01 }, { forgets = 1 / 80, errs = 0.05 }, { forgets = 1 / 30, errs = 0.15 },
}
-- The first, unless something was got wrong: then one of the others.
local function mostly(good, ...)
  if not chance(care.errs) then return good end
  return (select(random(select("#", ...)), ...))
end

-- ---- writing ------------------------------------------------------------------------------------------------------

local out
-- Without these a design cannot be read, or says something else.
local kept = { name = true, permit_application_date = true, outline = true, edges = true }
local function put(text) out[#out + 1] = text end
-- key, value, key, value, … as lines; nil values (false) are none of its business, some others are forgotten.
local function facts(indent, ...)
  for i = 1, select("#", ...), 2 do
    local key, value = select(i, ...)
    if value ~= false and (kept[key] or not chance(care.forgets)) then put((" "):rep(indent) .. key .. ": " .. tostring(value)) end
  end
end
local function item(indent, name, ...)
  put((" "):rep(indent) .. "- name: " .. name)
  facts(indent + 2, ...)
end
local function inline(...)
  local parts = {}
  for i = 1, select("#", ...), 2 do
    local key, value = select(i, ...)
    if value ~= false and (kept[key] or not chance(care.forgets)) then parts[#parts + 1] = key .. ": " .. tostring(value) end
  end
  return "{" .. table.concat(parts, ", ") .. "}"
end
local function row(indent, ...) put((" "):rep(indent) .. "- " .. inline(...)) end

-- ---- what can be chosen -------------------------------------------------------------------------------------------

local module_models = {
  { name = "Quillon Q440", length = 74, width = 41, voltage = 52.4, power = 440, converter = "Brae D500", string = 10 },
  { name = "Quillon Q405", length = 68, width = 44.6, voltage = 37.2, power = 405, converter = "Brae D500", string = 11 },
}
local kinds = { -- how the array's current is turned, and how many modules that takes at least
  converters = { inverter = "Brae H7600", strings = 2, least = 16, high = 12, output = 32, volts = 380 },
  strings = { inverter = "Fenwick S6000", strings = 2, least = 12, output = 25, volts = 300 },
  micro = { strings = 1, least = 1, high = 11, output = 1.45, volts = 240 },
}
local first = { "Ida", "Bram", "Oda", "Tove", "Emrys", "Lio", "Pia", "Sten", "Wren", "Yara", "Una", "Bly", "Corin" }
local last = { "Pell", "Ollery", "Marsh", "Tarn", "Voss", "Quill", "Hearn", "Sedge", "Brandt", "Lowe", "Harke" }
local streets = { "Heron Row", "Tern Lane", "Moss End", "Kelp Street", "Alder Bank", "Signal Hill", "Mill Turn", "Osier Way" }
local woods = { "Douglas Fir-Larch", "Douglas Fir-Larch", "Hem-Fir", "Southern Pine", "Spruce-Pine-Fir" }
local devices = { 15, 20, 25, 30, 35, 40, 45, 50, 60, 70, 80, 90, 100, 110, 125, 150, 175, 200, 225, 250, 300, 350, 400, 450, 500,
  600, 700, 800, 1000, 1200, 1600, 2000, 2500, 3000, 4000 }
local wires = { { 15, "14 AWG" }, { 20, "12 AWG" }, { 30, "10 AWG" }, { 45, "8 AWG" }, { 60, "6 AWG" }, { 80, "4 AWG" }, { 100, "2 AWG" },
  { 125, "1 AWG" }, { 150, "1/0 AWG" }, { 175, "2/0 AWG" }, { 200, "3/0 AWG" }, { 225, "4/0 AWG" }, { 300, "350 kcmil" },
  { 400, "600 kcmil" }, { 4000, "750 kcmil" } }
local grounds = { { 15, "14 AWG" }, { 20, "12 AWG" }, { 60, "10 AWG" }, { 100, "8 AWG" }, { 200, "6 AWG" }, { 300, "4 AWG" },
  { 400, "3 AWG" }, { 4000, "1/0 AWG" } }
local function device_for(current)
  for i, rating in ipairs(devices) do
    if rating >= current or i == #devices then return mostly(rating, devices[math.max(1, i - 1)], devices[math.max(1, i - 2)]) end
  end
end
local function wire_for(list, rating)
  for i, one in ipairs(list) do
    if rating <= one[1] or i == #list then return mostly(one[2], list[math.max(1, i - 1)][2]) end
  end
end
local function panel_for(rating, sources) -- of those made; what is larger has no model here
  if rating <= 60 and sources <= 4 then return "Alder P60", 60, 8 end
  if rating <= 125 and sources <= 8 then return "Alder P125", 125, 24 end
  if rating <= 225 and sources <= 14 then return "Alder P225", 225, 40 end
  for _, bus in ipairs { 400, 600, 800, 1200, 2000, 4000 } do
    if rating <= bus then return false, bus, 84 end
  end
  return false, 4000, 200
end

-- ---- roofs --------------------------------------------------------------------------------------------------------
-- Planes of one block of a roof, in feet, in the plan of a house whose front looks south. A plane: its corners along
-- the surface, the kind of each edge, the way it falls, and where its (0, 0) lies in plan.

local function plane(name, falls, corners, edges, east, north)
  return { name = name, falls = falls, corners = corners, edges = edges, east = east, north = north }
end
local blocks = {}
blocks.mono = { planes = 1, make = function(l, w, f)
  return { plane("lean", 180, { { 0, 0 }, { l, 0 }, { l, w * f }, { 0, w * f } }, { "eave", "rake", "ridge", "rake" }, 0, 0) }
end }
blocks.gable = { planes = 2, make = function(l, w, f)
  local s = w / 2 * f
  local corners, edges = { { 0, 0 }, { l, 0 }, { l, s }, { 0, s } }, { "eave", "rake", "ridge", "rake" }
  return { plane("south", 180, corners, edges, 0, 0), plane("north", 0, corners, edges, l, w) }
end }
blocks.hip = { planes = 4, make = function(l, w, f)
  local r, s = w / 2, w / 2 * f
  local long, edges = { { 0, 0 }, { l, 0 }, { l - r, s }, { r, s } }, { "eave", "hip", "ridge", "hip" }
  local short, hips = { { 0, 0 }, { w, 0 }, { r, s } }, { "eave", "hip", "hip" }
  return { plane("south", 180, long, edges, 0, 0), plane("north", 0, long, edges, l, w),
    plane("east", 90, short, hips, l, 0), plane("west", 270, short, hips, 0, w) }
end }
-- An L: a gable with a lower gabled wing towards the front.
blocks.ell = { planes = 4, make = function(l, w, f)
  local s, wide, deep = w / 2 * f, math.floor(w * 0.6), math.floor(w * 0.5)
  local half, at, rise = wide / 2, math.floor(l - w * 0.6 - 4), wide / 2 * f
  local back, edges = { { 0, 0 }, { l, 0 }, { l, s }, { 0, s } }, { "eave", "rake", "ridge", "rake" }
  return {
    plane("south", 180, { { 0, 0 }, { at, 0 }, { at + half, rise }, { at + wide, 0 }, { l, 0 }, { l, s }, { 0, s } },
      { "eave", "valley", "valley", "eave", "rake", "ridge", "rake" }, 0, 0),
    plane("north", 0, back, edges, l, w),
    plane("wing-east", 90, { { 0, 0 }, { deep, 0 }, { deep + half, rise }, { 0, rise } }, { "eave", "valley", "ridge", "rake" }, at + wide, -deep),
    plane("wing-west", 270, { { half, 0 }, { half + deep, 0 }, { half + deep, rise }, { 0, rise } }, { "eave", "rake", "ridge", "valley" }, at, half),
  }
end }

-- Blocks side by side that have COUNT planes together.
local function blocks_for(count)
  local list = {}
  while count > 0 do
    local fit = {}
    for _, name in ipairs { "gable", "gable", "hip", "ell" } do
      if blocks[name].planes <= count then fit[#fit + 1] = name end
    end
    if count == 1 or (count > 2 and count % 2 == 1 and chance(0.3)) then fit = { "mono" } end
    list[#list + 1] = pick(fit)
    count = count - blocks[list[#list]].planes
  end
  return list
end

local function roof_of(house, scale)
  local planes, east = {}, 0
  local f = 1 / math.cos(math.atan(house.slope, 12))
  for i, block in ipairs(house.blocks) do
    local wide = math.floor(house.widths[i] * scale / 2) * 2
    local long = math.floor(math.max(wide + 8, house.lengths[i] * scale))
    if block == "mono" then wide = math.floor(wide / 2) end
    for _, one in ipairs(blocks[block].make(long, wide, f)) do
      one.name = (#house.blocks > 1 and ("block%d-"):format(i) or "") .. one.name
      one.block, one.east = i, one.east + east
      planes[#planes + 1] = one
    end
    east = east + long + 12
    house.length, house.width = i == 1 and long or house.length, i == 1 and wide or house.width
  end
  return planes
end

-- The widest free stretch of a plane between two heights, in inches.
local function stretch(corners, low, high)
  local heights = { low, high }
  for _, one in ipairs(corners) do
    local y = one[2] * 12
    if y > low and y < high then heights[#heights + 1] = y end
  end
  local best, from, to = 0, 0, 0
  local function crossings(y)
    local list = {}
    for i, a in ipairs(corners) do
      local b = corners[i % #corners + 1]
      local ay, by = a[2] * 12, b[2] * 12
      if (ay <= y) ~= (by <= y) then list[#list + 1] = 12 * (a[1] + (y - ay) / (by - ay) * (b[1] - a[1])) end
    end
    table.sort(list)
    return list
  end
  local first_line = crossings(low + 0.01)
  for i = 1, #first_line - 1, 2 do
    local left, right = first_line[i], first_line[i + 1]
    for _, y in ipairs(heights) do
      local line, wide, l, r = crossings(y == low and y + 0.01 or y - 0.01), 0, left, left
      for j = 1, #line - 1, 2 do
        local a, b = math.max(left, line[j]), math.min(right, line[j + 1])
        if b - a > wide then wide, l, r = b - a, a, b end
      end
      left, right = l, r
    end
    if right - left > best then best, from, to = right - left, left, right end
  end
  return from, to
end

-- How many modules each string (or branch) takes: about as many as its fellows.
local function shares_of(house)
  local most = house.kind.high or house.module.string
  local count = house.kind.strings * math.ceil(house.wanted / (house.kind.strings * most))
  count = math.min(count, house.wanted)
  local shares = {}
  for i = 1, count do shares[i] = house.wanted // count + (i <= house.wanted % count and 1 or 0) end
  return shares
end

-- Rows of modules from the eave up, plane after plane, until every string has its modules; a row is of one string.
local function rows_of(house)
  local module, rows, left = house.module, {}, house.wanted
  local shares = shares_of(house)
  local string, needed = 1, shares[1]
  local order = {}
  for i, one in ipairs(house.planes) do order[i] = { plane = one, sun = math.abs((one.falls + house.turn) % 360 - 180) * 100 + i } end
  table.sort(order, function(a, b) return a.sun < b.sun end)
  local up, across = module.length, module.width
  if house.orientation == "landscape" then up, across = across, up end
  for _, entry in ipairs(order) do
    local top = 0
    for _, corner in ipairs(entry.plane.corners) do top = math.max(top, corner[2] * 12) end
    top = top - mostly(house.ridge, 4, 12, 17)
    local y, side = between(4, 20, 2), mostly(house.side, 6, 12)
    while left > 0 and y + up <= top do
      local from, to = stretch(entry.plane.corners, y, y + up)
      local x = math.ceil(from + side)
      local most = math.tointeger((to - side - x + 0.5) // (across + 0.5))
      while most > 0 and left > 0 do
        local columns = math.min(most, needed)
        rows[#rows + 1] = { name = "row-" .. #rows + 1, plane = entry.plane, string = string, x = x, y = y, columns = columns, up = up, across = across, reach = to }
        x, most, left = x + columns * (across + 0.5), most - columns, left - columns
        needed = needed - columns
        if needed == 0 then string, needed = string + 1, shares[string + 1] end
      end
      y = y + up + 0.5
    end
    if left == 0 then break end
  end
  return rows, left
end

local function house_of(number_of, options)
  local function within(range, low, high)
    return range and random(range[1], range[2]) or random(low, high)
  end
  local house = {
    title = ("%s %d"):format(pick(streets), number_of),
    owner = pick(first) .. " " .. pick(last),
    slope = between(3, 10, 1), turn = between(-45, 45, 5),
    module = pick(module_models),
    stories = pick { 1, 1, 2 }, exposure = pick { "B", "C", "C" },
    high = between(28, 40, 1), spacing = pick { 16, 24, 24 },
    orientation = chance(0.85) and "portrait" or "landscape",
    ridge = pick { 18, 24, 36, 36 }, side = pick { 36, 36, 40, 48 },
    wanted = within(options.modules, 1, chance(0.5) and 24 or 60),
    blocks = blocks_for(options.planes and within(options.planes) or pick { 1, 2, 2, 2, 2, 4, 4, 4, 6, 8, random(1, 12) }),
    lengths = {}, widths = {},
  }
  repeat house.system = pick { "converters", "strings", "micro" } until house.wanted >= kinds[house.system].least or chance(care.errs)
  house.kind = kinds[house.system]
  for i in ipairs(house.blocks) do
    house.lengths[i], house.widths[i] = i == 1 and between(36, 60, 2) or between(26, 44, 2), between(24, 36, 2)
  end
  local scale = 1
  repeat -- a roof that takes them
    house.planes = roof_of(house, scale)
    house.rows, house.left = rows_of(house)
    scale = scale * 1.12
  until house.left == 0
  house.eave = house.stories * 9 + between(0, 2, 1)
  return house
end

-- ---- site, building, roof -----------------------------------------------------------------------------------------

-- A length up the slope, times this, is its length in plan.
local function level(house) return 1 / math.sqrt(1 + (house.slope / 12) ^ 2) end

local function put_head(house)
  put("title: " .. house.title)
  put("catalogue: [modules, inverters, converters, shutdown, racking]")
  put("\nproject:")
  facts(2, "address", ("%d %s, Marrow Bay"):format(random(1, 400), pick(streets)), "owner", house.owner,
    "installer", "Lantern Roofworks", "installer_license", "LR-" .. random(1000, 9999), "designer", pick(first) .. " " .. pick(last),
    "permit_number", ("B-2026-%04d"):format(random(1, 9999)),
    "permit_application_date", ("2026-%02d-%02d"):format(random(2, 12), random(1, 28)),
    "planned_start", ("2027-%02d-%02d"):format(random(1, 9), random(1, 28)),
    "scope", chance(0.85) and "[roof-mounted PV]" or "[roof-mounted PV, panel replacement]")
  put("\nsite:")
  facts(2, "exposure", mostly(house.exposure, "D"), "elevation", feet(between(5, 900, 5)), "risk_category", mostly("II", "III"),
    "topographic_factor", mostly(1, 1.2, 1.5), "snow_exposure", pick { "fully exposed", "partially exposed", "sheltered" },
    "design_low_temperature", chance(0.5) and ("{is: %d °C, from: data sheet}"):format(between(-18, -4, 1)) or between(-18, -4, 1) .. " °C",
    "design_high_temperature", house.high .. " °C", "distance_to_shore", feet(between(400, 20000, 100)),
    "wind_borne_debris_region", mostly("no", "yes"), "special_wind_region", mostly("no", "yes"))
  put("\nbuilding:")
  local rise = 0 -- of half the highest plane
  local area = 0 -- of all planes in plan: blocks stand beside each other
  for _, one in ipairs(house.planes) do
    for i, corner in ipairs(one.corners) do
      local next_one = one.corners[i % #one.corners + 1]
      rise = math.max(rise, corner[2] * level(house) * house.slope / 24)
      area = area + (corner[1] * next_one[2] - next_one[1] * corner[2]) / 2 * level(house)
    end
  end
  local shorter = math.min(house.length, house.width)
  local longer = math.max(house.length, house.width, math.ceil(area / shorter))
  facts(2, "dwelling_units", mostly(1, 2), "occupancy", mostly("one-family dwelling", "two-family dwelling", "townhouse"),
    "stories", house.stories, "eave_height", feet(house.eave), "mean_roof_height", feet(house.eave + rise),
    "length", feet(longer), "width", feet(shorter),
    "sprinklers", chance(0.1) and "NFPA 13D" or "none", "enclosure", mostly("enclosed", "partially enclosed"),
    "heated", mostly("yes", "no"), "ventilated_attic", pick { "yes", "yes", "no" }, "roof_operations", pick { "yes", "yes", "yes", "no" },
    "year_built", between(1925, 2019, 1), "escape_openings", "none")
end

local function reach_of(house, one)
  local low, high = math.huge, -math.huge
  for _, corner in ipairs(one.corners) do low, high = math.min(low, corner[2]), math.max(high, corner[2]) end
  return (high - low) * level(house)
end

local function put_framing(house, one)
  put("      framing:")
  facts(8, "kind", mostly("rafter", "truss"), "size", pick { "2x6", "2x8", "2x8", "2x10", "2x10" }, "species", pick(woods),
    "grade", pick { "No. 1", "No. 2", "No. 2", "Select Structural" }, "spacing", house.spacing .. " in",
    "span", feet(math.max(between(8, 14, 0.5), math.ceil(reach_of(house, one) / 2 + 0.1))), "held_between", mostly("yes", "no"), "first_at", "0 in", "ceiling_attached", pick { "yes", "no" }, "lower_edge_bracing", mostly("6 ft", "14 ft"),
    "condition", mostly("sound", "sagging", "cracked", "repaired"), "wet_service", mostly("no", "yes"))
end

local function put_obstructions(one)
  local top = 0
  for _, corner in ipairs(one.corners) do top = math.max(top, corner[2] * 12) end
  if top < 60 or chance(0.6) then return put("      obstructions: none") end
  put("      obstructions:")
  for i = 1, random(1, 2) do
    local kind = pick { "pipe", "vent", "skylight", "chimney" }
    local size = ({ pipe = 3, vent = 12, skylight = 24, chimney = 20 })[kind]
    local y = math.floor(top * (0.25 + 0.25 * i))
    local from, to = stretch(one.corners, y, y + size)
    if to - from > size + 12 then -- near an edge, where few modules are
      row(8, "name", "thing-" .. i, "kind", kind, "at", point(math.floor(mostly(to - size - 6, (from + to) / 2)), y), "width", inches(size),
        "length", inches(size), "height", inches(between(6, 36, 6)),
        "guarded", kind == "skylight" and mostly("yes", "no"))
    end
  end
  if out[#out] == "      obstructions:" then out[#out] = "      obstructions: none" end
end

-- Where a block of one slope leans on others, a wall goes up from its top.
local function edges_of(house, one)
  local leans = false
  for _, block in ipairs(house.blocks) do leans = leans or one.name:find("lean") and block ~= "mono" end
  if not leans then return one.edges end
  local edges = {}
  for i, edge in ipairs(one.edges) do edges[i] = edge == "ridge" and "wall" or edge end
  return edges
end

local function put_plane(house, one, of_roof)
  local function joined(list, write)
    local parts = {}
    for i, corner in ipairs(list) do parts[i] = write(corner) end
    return "[" .. table.concat(parts, ", ") .. "]"
  end
  local turn = math.rad(house.turn)
  local east = one.east * math.cos(turn) + one.north * math.sin(turn)
  local north = -one.east * math.sin(turn) + one.north * math.cos(turn)
  local azimuth = (one.falls + house.turn) % 360
  item(4, one.name,
    "outline", joined(one.corners, function(corner) return "[" .. feet(corner[1]) .. ", " .. feet(corner[2]) .. "]" end),
    "edges", joined(edges_of(house, one), tostring),
    "slope", house.slope .. "/12", "azimuth", azimuth .. "°", "plan_origin", "[" .. feet(east) .. ", " .. feet(north) .. "]",
    "structure", one.block == 1 and "dwelling" or of_roof.structures[one.block],
    "faces", ({ [180] = "[street]", [0] = "[rear]", [90] = "[side yard]", [270] = "[driveway]" })[one.falls],
    "covering", of_roof.covering, "covering_fire_class", mostly("A", "B", "C", "unrated"), "layers", mostly(1, 2, 3),
    "age", of_roof.age .. " year", "deck", of_roof.deck, "deck_thickness", of_roof.thickness, "dead_load", of_roof.dead .. " psf",
    "eave_overhang", of_roof.overhang .. " in", "sheds_onto_lower_roof", mostly("no", "yes"), "snow_guards", mostly("no", "yes"))
  put_framing(house, one)
  put_obstructions(one)
end

local function put_roof(house)
  put("\nroof:")
  local has = {}
  for _, block in ipairs(house.blocks) do has[block] = true end
  facts(2, "shape", has.hip and "hip" or (has.gable or has.ell) and "gable" or "monoslope", "fire_class", mostly("C", "A", "unrated"))
  put("  planes:")
  local of_roof = { covering = mostly("composition shingle", "standing seam metal", "concrete tile", "wood shake"), age = mostly(between(1, 15, 1), 22, 30),
    deck = pick { "plywood", "OSB", "plywood", "boards" }, thickness = pick { "7/16 in", "1/2 in", "5/8 in", "3/4 in" }, dead = pick { 7, 8, 8, 9, 10 },
    overhang = between(0, 24, 4), structures = {} }
  if of_roof.covering == "concrete tile" then of_roof.dead = of_roof.dead + 5 end
  for i in ipairs(house.blocks) do of_roof.structures[i] = pick { "dwelling", "dwelling", "attached garage", "porch" } end
  for _, one in ipairs(house.planes) do put_plane(house, one, of_roof) end
end

-- ---- the array ----------------------------------------------------------------------------------------------------

local function put_rails(house, step)
  local rails, stands = {}, {}
  for _, one in ipairs(house.rows) do
    local width = one.columns * (one.across + 0.5) - 0.5
    for side = 1, 2 do
      local at, from, to = math.ceil((one.x + 2) / house.spacing) * house.spacing, one.x - 2, one.x + width + 2
      if at - from > 20 then at = at - house.spacing end -- both ends stand out little
      local count = 1 + math.max(0, math.min(math.ceil((to - 18 - at) / step), math.floor((one.reach - 2 - at) / step))) -- on the plane
      from, to = math.min(from, at - 2), math.max(to, at + (count - 1) * step + 2)
      local rail = { name = one.name .. "-rail-" .. side, plane = one.plane.name, x = from, y = one.y + (side == 1 and 0.25 or 0.75) * one.up, length = to - from }
      rails[#rails + 1] = rail
      stands[#stands + 1] = { name = one.name .. "-foot-" .. side, rail = rail, x = at, count = count }
    end
  end
  put("  rails:")
  for _, rail in ipairs(rails) do row(4, "name", rail.name, "plane", rail.plane, "at", point(rail.x, rail.y), "length", inches(rail.length)) end
  put("  attachment_rows:")
  for _, one in ipairs(stands) do
    local beside = one.rail.x + one.rail.length - one.x - (one.count - 1) * step -- how far they can miss the rafters and stay below the rail
    row(4, "name", one.name, "model", "Hewn F5", "plane", one.rail.plane, "rail", one.rail.name, "at", point(one.x + math.min(mostly(0, 0, 6), beside), one.rail.y),
      "spacing", inches(step), "count", one.count, "stands_on", mostly("rafter", "deck", "blocking"))
  end
end

local function put_array(house)
  put("\nmodule_rows:")
  for _, one in ipairs(house.rows) do
    row(2, "name", one.name, "model", house.module.name, "plane", one.plane.name, "at", point(one.x, one.y), "orientation", house.orientation,
      "columns", one.columns, "rows", 1, "gap", "0.5 in")
  end
  local step = house.spacing * (house.spacing == 16 and mostly(pick { 2, 3 }, 4) or mostly(pick { 1, 2, 2 }, 3))
  local gap = between(3, 4, 0.5)
  put("\nracking:")
  facts(2, "model", "Hewn R10", "mounting", mostly("rails", "shared rails"), "rail_direction", "across the slope", "rails_per_module", 2,
    "rail_spacing", inches(house.rows[1].up / 2), "attachment_spacing", inches(step), "cantilever", inches(mostly(between(20, 22, 1), 12)),
    "height_above_roof", inches(gap + mostly(2, 6)), "gap_below_modules", inches(gap), "module_gap", "0.5 in", "tilt", "0°",
    "weight", number(mostly(9, 2) * house.wanted) .. " lb", "system_fire_class", mostly("A", "B", "C"), "attachment_model", "Hewn F5")
  put_rails(house, step)
end

-- ---- from the array to the panel ----------------------------------------------------------------------------------

local function strings_of(house)
  local list = {}
  for _, one in ipairs(house.rows) do
    local string = list[one.string] or { name = (house.system == "micro" and "branch-" or "string-") .. one.string, rows = {}, modules = 0 }
    list[one.string] = string
    string.rows[#string.rows + 1] = one.name
    string.modules = string.modules + one.columns
  end
  return list
end

local function put_strings(house, strings)
  local micro = house.system == "micro"
  put(micro and "\nstrings: none\nbranches:" or "\nstrings:")
  local inverters = micro and 0 or math.ceil(#strings / house.kind.strings)
  for i, one in ipairs(strings) do
    if micro then
      row(2, "name", one.name, "modules", names(one.rows), "microinverter", "Fenwick M350", "microinverters", mostly(one.modules, one.modules + 1))
    else
      one.inverter = "inverter-" .. (i - 1) // house.kind.strings + 1
      row(2, "name", one.name, "modules", names(one.rows), "has_converters", house.system == "converters" and "yes" or "no",
        "converter", house.system == "converters" and mostly(house.module.converter, "Brae D425"), "inverter", one.inverter,
        "input", house.system == "converters" and 1 or (i - 1) % house.kind.strings + 1, "fused", "no")
    end
  end
  put(micro and "combiners: none\ninverters: none" or "branches: none\ncombiners: none\ninverters:")
  for i = 1, inverters do
    item(2, "inverter-" .. i, "model", house.kind.inverter, "location", mostly(pick { "garage", "outside wall", "basement" }, "bathroom", "attic"),
      "readily_accessible", mostly("yes", "no"), "distance_to_array", feet(between(10, 90, 5)), "working_space", inline("depth", feet(mostly(pick { 3, 3.5, 4 }, 2.5)),
        "width", inches(mostly(36, 28)), "height", "8 ft", "equipment_width", "14 in", "facing", "live parts to none", "door_opens_90", mostly("yes", "no"), "clear_of_storage", mostly("yes", "no")))
  end
  return inverters
end

local function circuit(house, name, role, carries, from, to, more)
  local roof, inside, rating = more.roof or false, more.inside or false, more.rating
  local long = between(6, mostly(60, 300), 1)
  local direct = role == "PV source" or role == "PV output" or role == "converter output"
  item(2, name, "role", role, "carries", names(carries), "from", from, "to", to, "nominal_voltage", (more.volts or 240) .. " V",
    "conductor_size", more.size or wire_for(wires, rating), "conductor_material", "copper", "insulation", more.insulation or "THWN-2",
    "insulation_temperature", "90 °C", "conductors", more.conductors or 4, "current_carrying_conductors", more.carrying or 2,
    "neutral_size", more.neutral and wire_for(wires, rating) or false, "egc_size", more.ground or wire_for(grounds, rating or 20), "egc_material", "copper",
    "neutral", not direct and (more.neutral and "carries load" or "none") or false, "identified", direct and mostly("yes", "no") or false,
    "wiring_method", more.method or mostly("EMT", "PVC 40", "FMC"),
    "raceway_size", not more.method and mostly(not rating and "3/4 in" or rating <= 40 and "3/4 in" or rating <= 60 and "1 in" or rating <= 100 and "1-1/2 in" or "3 in", "1/2 in"),
    "raceway_of", more.with or false,
    "length", feet(long), "ambient_temperature", house.high .. " °C", "on_roof", roof and "yes" or "no",
    "height_above_roof", roof and inches(mostly(2, 0.5)) or false, "ridge_distance", roof and inches(between(8, 60, 2)) or false, "inside_building", inside and "yes" or "no",
    "length_inside", feet(inside and math.min(long, between(2, 30, 1)) or 0), "support_spacing", inches(more.method and 24 or mostly(36, 60, 140)),
    "in_sunlight", roof and "yes" or "no", "dc_and_ac_separated", mostly("yes", "no"), "ocpd", more.ocpd or (rating and "circuit breaker" or "none"),
    "ocpd_rating", rating and amperes(rating) or false, "ocpd_distance", more.distance or false, "ocpd_ends", rating and 1 or 0,
    "connector", more.connector or false, "terminal_temperature", mostly("75 °C", "60 °C"), "ampacity", more.ampacity or false, "listings", more.listings or "none")
end

-- Every second run home lies in the raceway of the one before.
local function beside(i) return i % 2 == 0 and "home-" .. i - 1 end

local function put_dc(house, strings)
  local role = house.system == "converters" and "converter output" or "PV source"
  for i, one in ipairs(strings) do
    if house.system == "strings" then
      circuit(house, "array-" .. i, role, { one.name }, one.name, "home-" .. i, { volts = house.kind.volts, size = mostly("10 AWG", "12 AWG"), insulation = mostly("PV wire", "USE-2"),
        conductors = 2, method = "free air", ground = "6 AWG", roof = true, listings = "[UL 4703]" })
    end
    circuit(house, "home-" .. i, role, { one.name }, house.system == "strings" and "array-" .. i or one.name, one.inverter,
      { with = beside(i), volts = house.kind.volts, size = mostly("10 AWG", "12 AWG", "14 AWG"), conductors = 5, carrying = 4, ground = "10 AWG", roof = true, inside = true, connector = mostly("Teal-4", "Quill-2") })
  end
end

local function put_branches(house, strings, panel_of)
  for i, one in ipairs(strings) do
    circuit(house, "trunk-" .. i, "microinverter branch", { one.name }, one.name, "home-" .. i, { size = "12 AWG", insulation = "trunk cable", conductors = 3, ground = "12 AWG",
      method = "trunk cable", roof = true, rating = one.device, ampacity = "20 A" })
    circuit(house, "home-" .. i, "microinverter branch", { one.name }, "trunk-" .. i, panel_of[one.name], { with = beside(i), size = mostly("10 AWG", "12 AWG"), conductors = 5, carrying = 4,
      roof = true, inside = true, rating = one.device, ground = "10 AWG" })
  end
end

-- What feeds the service, gathered in panels where there are several: { name, current, device }.
local function gather(house, sources)
  local supply = house.side_of == "supply side"
  local many = #sources > 3 or (#sources > 1 and (supply or chance(0.5))) or (supply and house.system == "micro")
  if not many then return {}, sources end
  local panels, per = {}, math.max(6, math.ceil(#sources / 10))
  for i, source in ipairs(sources) do
    local panel = panels[(i - 1) // per + 1]
    if not panel then
      panel = { name = #panels == 0 and "pv-panel" or "pv-panel-" .. #panels + 1, current = 0, sources = {}, carries = {} }
      panels[#panels + 1] = panel
    end
    panel.current = panel.current + source.current
    panel.sources[#panel.sources + 1] = source
    panel.carries[#panel.carries + 1] = source.name
  end
  for _, panel in ipairs(panels) do
    panel.device, panel.feeder = device_for(1.25 * panel.current), panel.name:gsub("panel", "feeder")
  end
  return panels, panels
end

local function put_circuits(house, strings, inverters)
  local sources, panel_of = {}, {}
  for i = 1, house.system == "micro" and #strings or inverters do
    local current = house.system == "micro" and strings[i].modules * house.kind.output or house.kind.output
    sources[i] = { name = house.system == "micro" and strings[i].name or "inverter-" .. i, current = current, run = "inverter-run" .. (i > 1 and "-" .. i or "") }
    sources[i].device = house.system == "micro" and math.min(20, device_for(math.max(12, 1.25 * current))) or device_for(1.25 * current)
    if house.system == "micro" then strings[i].device, sources[i].run = sources[i].device, "home-" .. i end
  end
  house.side_of = #sources <= 6 and chance(0.3) and "supply side" or "load side"
  local panels, last_ones = gather(house, sources)
  local supply = house.side_of == "supply side"
  for _, source in ipairs(sources) do panel_of[source.name] = supply and "pv-disconnect" or "main" end
  for _, panel in ipairs(panels) do
    for _, source in ipairs(panel.sources) do panel_of[source.name] = panel.name end
  end
  put("\ncircuits:")
  if house.system == "micro" then put_branches(house, strings, panel_of) else put_dc(house, strings) end
  local ocpd = supply and #panels == 0 and "fused disconnect" or nil
  for _, source in ipairs(house.system == "micro" and {} or sources) do
    circuit(house, source.run, "inverter output", { source.name }, source.name, panel_of[source.name],
      { conductors = 4, rating = source.device, neutral = true, inside = not supply, ocpd = ocpd })
  end
  local all = {}
  for i, source in ipairs(sources) do all[i] = source.name end
  for _, panel in ipairs(panels) do
    circuit(house, panel.feeder, "combined branches", panel.carries, panel.name, supply and "pv-disconnect" or "main",
      { rating = panel.device, neutral = true, inside = not supply, ocpd = supply and "fused disconnect" or nil })
  end
  house.tap = last_ones[1].device
  if supply then
    circuit(house, "tap-run", "supply-side", all, "pv-disconnect", "service-run", { size = wire_for(wires, math.max(60, house.tap)), rating = house.tap, neutral = true,
      ocpd = "fused disconnect", distance = feet(mostly(6, 14)) })
    circuit(house, "service-run", "service", { "main" }, "revenue", "main", { size = wire_for(wires, 0.8 * house.main), rating = house.main, conductors = 3, ground = "6 AWG" })
  end
  return sources, panels, last_ones
end

-- ---- service, panels, papers --------------------------------------------------------------------------------------

local function put_service(house)
  put("\nservice:")
  facts(2, "rating", amperes(house.main), "disconnect_rating", amperes(mostly(house.main, 100)), "voltage", "240 V", "voltage_to_ground", "120 V", "phases", 1,
    "conductor_size", wire_for(wires, 0.8 * house.main), "conductor_material", "copper", "conductor_ampacity", amperes(math.min(4000, house.main * mostly(0.85, 1.1))),
    "available_fault_current", number(between(5, mostly(9.8, 24), 0.2)) .. " kA", "work", house.main <= 400 and pick { "untouched", "untouched", "replaced" } or "untouched",
    "surge_protection", mostly("yes", "no"), "emergency_disconnect", mostly("yes", "no"))
  put("  load_calculation:")
  facts(4, "floor_area", between(900, 3400, 50) .. " ft²", "small_appliance_circuits", mostly(2, 1), "laundry_circuits", 1, "appliances", between(4, 18, 1) .. " kVA",
    "motors", "0 VA", "heating", pick { "0 VA", "5 kVA" }, "cooling", pick { "0 VA", "3.6 kVA", "7.2 kVA" }, "ev_charging", pick { "0 VA", "0 VA", "9.6 kVA" }, "adds_air_conditioning", "no")
end

local function breaker(name, duty, rating, poles, position, place, ...)
  row(10, "name", name, "duty", duty, "rating", amperes(rating), "poles", poles, "position", position, "place", place, "interrupting_rating", mostly("22 kA", "10 kA"),
    "listed_for_panel", mostly("yes", "no"), "status", duty == "load" and "existing" or "new", ...)
end

local function put_panel(name, rating, of, sources, duty)
  local model, bus, spaces = panel_for(of.bus, #sources)
  local is_main = name == "main"
  item(2, name, "model", model, "is_service_panel", is_main and "yes" or "no", "fed_from", is_main and "none" or "main", "feeder", of.feeder or "none",
    "status", is_main and pick { "existing", "existing", "new" } or "new", "location", mostly(pick { "garage", "outside wall", "basement" }, "clothes closet", "bathroom"), "enclosure_type", "3R",
    "readily_accessible", "yes", "handle_height", mostly("6 ft", "7 ft"), "detached_building", "no", "main_lugs_only", is_main and "no" or "yes", "split_bus", mostly("no", "yes"), "spaces", spaces, "free_spaces", mostly(math.max(between(4, spaces // 2, 1), 2 * #sources), 0), "takes_tandems", "no",
    "interrupting_rating", mostly("22 kA", "10 kA"), "taps_allowed", "no", "surge_protection", not is_main and mostly("yes", "no"), "working_space", inline("depth", feet(mostly(pick { 3, 3.5, 4 }, 2.5)), "width", "36 in", "height", "8 ft",
      "equipment_width", "15 in", "facing", "live parts to none", "door_opens_90", mostly("yes", "no"), "clear_of_storage", mostly("yes", "no")))
  put("    busbars:")
  item(6, "bus", "rating", amperes(bus), "protecting_device", amperes(rating), "fed_at", mostly("end", "center"), "feed_through", mostly("no", "yes"),
    "methods", is_main and "none" or "[sum of breakers]")
  put("        breakers:")
  if is_main then
    breaker("main-breaker", "main", rating, 2, false, "feed end")
    local position = 2
    for i = 1, random(4, 8) do
      local load = pick { { 50, 2 }, { 30, 2 }, { 40, 2 }, { 20, 1 }, { 20, 1 }, { 15, 1 } }
      breaker("load-" .. i, "load", load[1], load[2], position, "between")
      position = position + 2 * load[2]
    end
  end
  for i, one in ipairs(sources) do
    breaker("pv-" .. i, duty, one.device, 2, is_main and math.max(1, spaces - 3 - 4 * ((i - 1) // 2) + (i - 1) % 2) or 4 * ((i - 1) // 2) + 1 + (i - 1) % 2, is_main and (i == 1 and mostly("opposite end", "feed end") or "between") or "between",
      "serves", one.name, "suitable_for_backfeed", mostly("yes", "no"), "fastened_in_place", mostly("no", "yes"), "tandem", mostly("no", "yes"), "protection", mostly("none", "AFCI"))
  end
end

local function put_panels(house, panels, last_ones)
  local supply = house.side_of == "supply side"
  put("\npanels:")
  put_panel("main", house.main, { bus = house.bus }, supply and {} or last_ones, #panels > 0 and "feeder" or "source")
  for _, panel in ipairs(panels) do
    put_panel(panel.name, panel.device, { bus = math.max(1.25 * panel.current, panel.device), feeder = panel.feeder }, panel.sources, "source")
  end
  local of = last_ones[1].name
  local function disconnect(name, role, rating, ...)
    row(2, "name", name, "role", role, "rating", amperes(rating), "voltage_rating", "240 V", "readily_accessible", mostly("yes", "no"), "handle_height", mostly("5 ft", "7 ft"), "load_break", mostly("yes", "no"), "count", 1, "enclosure_type", "3R",
      "interrupting_rating", "22 kA", "working_space", inline("depth", feet(mostly(pick { 3, 3.5, 4 }, 2.5)), "width", "36 in", "height", "8 ft",
        "equipment_width", "12 in", "facing", "live parts to none", "door_opens_90", mostly("yes", "no"), "clear_of_storage", mostly("yes", "no")), ...)
  end
  put("\ndisconnects:")
  disconnect("service-disconnect", "service", house.main, "location", mostly("outside wall", "garage"), "service_rated", "yes", "distance_to_meter", feet(mostly(between(1, 6, 1), 30)), "listings", "[UL 489]")
  disconnect("pv-disconnect", "PV system", house.large, "of", of, "location", mostly("outside wall", "bathroom"), "locked_or_tool", mostly("yes", "no"), "lockable", mostly("yes", "no"),
    "visible_open", "yes", "service_rated", supply and mostly("yes", "no") or "no", "within_sight", "yes", "distance", "6 ft", "distance_to_meter", feet(mostly(between(2, 9, 1), 30)), "listings", "[UL 98]")
  disconnect("utility-disconnect", "utility", house.large, "of", of, "location", "outside wall", "locked_or_tool", "yes", "lockable", mostly("yes", "no"), "visible_open", mostly("yes", "no"),
    "service_rated", "no", "within_sight", "no", "distance", "25 ft", "distance_to_meter", feet(mostly(between(2, 9, 1), 30)), "listings", "[UL 98]")
  row(2, "name", "shutdown-switch", "role", "rapid shutdown", "of", of, "rating", "30 A", "voltage_rating", "600 V", "enclosure_type", "3R", "location", mostly("outside wall", "garage"),
    "readily_accessible", mostly("yes", "no"), "handle_height", "5 ft", "lockable", "yes", "count", 1, "distance_to_meter", "3 ft")
  put("\nmeters:\n  - {name: revenue, revenue: yes, meter_main: no, rating: 200 A, bidirectional: yes, location: outside wall}")
  put("\nother_sources: none")
  put("\ninterconnection:")
  facts(2, "side", house.side_of, "at", supply and "service-run" or "main", "conductors", supply and "tap-run" or last_ones[1].feeder or last_ones[1].run,
    "ocpd_rating", amperes(house.tap), "ocpd_distance", supply and feet(mostly(6, 14)), "inside_building", supply and mostly("no", "yes"), "listed_taps", supply and mostly("yes", "no"),
    "bonded_as_service", supply and mostly("yes", "no"), "instructions_allow_taps", supply and "yes", "nominal_voltage", "240 V")
end

local function put_safety(house)
  local micro, kind = house.system == "micro", house.system
  put("\nrapid_shutdown:")
  facts(2, "method", micro and "microinverters" or kind == "strings" and "module-level devices" or "converters",
    "device", micro and "Fenwick M350" or kind == "strings" and "Brae K15" or house.module.converter, "initiator", "shutdown-switch", "initiators", mostly(1, 2, 7),
    "initiator_location", mostly("outside wall", "attic"), "initiator_readily_accessible", mostly("yes", "no"), "boundary", mostly("1 ft", "6 ft"), "length_inside_building", mostly("0 ft", "6 ft"),
    "voltage_outside", mostly(pick { 0, 12, 30 }, 60) .. " V", "voltage_inside", mostly(between(10, 70, 10), 90) .. " V", "time", mostly(between(5, 30, 5), 40) .. " s", "listings", "[UL 1741]")
  put("\ngrounding:")
  facts(2, "bonding", mostly("listed racking", "none"), "pair_listed", mostly("yes", "no"), "array_egc_size", mostly("6 AWG", "10 AWG"), "array_egc_material", "copper",
    "array_egc_protected", mostly("yes", "no"), "gec_size", house.main > 200 and "1/0 AWG" or mostly("4 AWG", "8 AWG"), "gec_material", "copper",
    "rods", mostly(2, 1), "rod_spacing", mostly("8 ft", "4 ft"), "rod_resistance", mostly("20 Ω", "60 Ω"),
    "electrodes", pick { "[ground rod]", "[concrete-encased, ground rod]", "[water pipe, ground rod]" }, "connected_to_building_system", mostly("yes", "no"),
    "bonded_over_250_volts", mostly("yes", "no"), "ground_fault_protection", mostly("yes", "no"), "ground_fault_indication", mostly("yes", "no"), "solidly_grounded", "no")
end

local function put_labels(house, sources, panels)
  local total = 0
  for _, one in ipairs(sources) do total = total + one.current end
  local supply, micro = house.side_of == "supply side", house.system == "micro"
  local function label(name, kind, place, text, color, reflective, ...)
    if chance(care.errs) then return end
    row(2, "name", name, "kind", kind, "place", place, "text", '"' .. mostly(text, "SOLAR POWER") .. '"', "letter_height", mostly(kind == "emergency disconnect" and "1/2 in" or "3/8 in", "1/4 in"), "color", mostly(color, "red on white"),
      "reflective", reflective and "yes" or false, "permanent", mostly("yes", "no"), ...)
  end
  put("\nlabels:")
  label("shutdown-placard", "rapid shutdown", "service equipment", "SOLAR PV SYSTEM EQUIPPED WITH RAPID SHUTDOWN", "black on yellow", true, "distance", "1 ft")
  label("shutdown-switch-label", "rapid shutdown switch", "rapid shutdown switch", "RAPID SHUTDOWN SWITCH FOR SOLAR PV SYSTEM", "white on red", true, "distance", "1 ft")
  label("pv-disconnect-label", "PV disconnect", "PV disconnect", "PV SYSTEM DISCONNECT", "any")
  if not micro then label("dc-label", "DC maximum voltage", "inverter", "MAXIMUM DC VOLTAGE " .. (house.system == "converters" and 480 or 560) .. " V", "any") end
  label("ac-label", "AC disconnect", "AC disconnect", ("RATED AC OUTPUT %s A, NOMINAL AC VOLTAGE 240 V"):format(number(total)), "any")
  label("directory", "source directory", "service equipment", "SOURCES OF POWER AND THEIR DISCONNECTS, TEL 555-0142", "any")
  label("sources-caution", "multiple sources", "service equipment", "CAUTION: MULTIPLE SOURCES OF POWER", "any")
  if not supply or #panels > 0 then
    label("breaker-label", "interconnection breaker", "main panel", "PV POWER SOURCE", "any")
    label("relocate-label", "do not relocate", "main panel", "WARNING: POWER SOURCE OUTPUT CONNECTION. DO NOT RELOCATE THIS OVERCURRENT DEVICE", "any")
  end
  if #panels > 0 then label("sum-label", "sum of breakers", "panel", "WARNING: SUM OF BREAKERS SHALL NOT EXCEED THE RATING OF THE BUSBAR", "any") end
  if not micro then label("raceway-label", "DC raceway", "DC raceway", "SOLAR PV DC CIRCUIT", "white on red", true, "spacing", mostly("10 ft", "20 ft")) end
  label("inverter-label", "inverter", "inverter", "UTILITY INTERACTIVE", "any")
  label("emergency-label", "emergency disconnect", "meter", "EMERGENCY DISCONNECT, SERVICE DISCONNECT", "white on red")
  label("service-label", "service disconnect", "service equipment", "SERVICE DISCONNECT", "any")
  label("utility-label", "utility disconnect", "AC disconnect", "PV UTILITY DISCONNECT", "any")
  if out[#out] == "\nlabels:" then out[#out] = "\nlabels: none" end
end

local function put_papers(house)
  put("\npapers:")
  for _, kind in ipairs { "site plan", "roof plan", "one-line diagram", "equipment data sheets", "label sheet", "load calculation", "interconnection application", "fire access waiver" } do
    row(2, "name", (kind:gsub(" ", "-")), "kind", kind, "state", mostly(kind:find("^inter") and "submitted" or kind:find("waiver$") and "approved" or "ready", "missing"), "date", ("2026-01-%02d"):format(random(1, 28)),
      "by", pick(first) .. " " .. pick(last), "sealed", "no")
  end
  put("\njobsite:")
  facts(2, "fall_protection", mostly("personal fall arrest", "guardrail", "none", "warning line"), "working_height", feet(house.eave), "ladder_extension", feet(mostly(3, 2)),
    "ladder_base_ratio", mostly(0.25, 0.4), "ladder_tied", mostly("yes", "no"), "modules_by_hoist", mostly("yes", "no"), "skylights_guarded", mostly("yes", "no"),
    "overhead_line_distance", feet(mostly(between(12, 60, 2), 7)), "overhead_line_voltage", pick { "7.2 kV", "240 V" }, "lifters", mostly(2, 1), "lockout_plan", mostly("yes", "no"),
    "perimeter_marked", mostly("yes", "no"), "rescue_plan", mostly("yes", "no"))
  put("  crew:")
  for i = 1, random(2, 4) do
    row(4, "name", ("%s %s %d"):format(pick(first), pick(last), i), "role", i == 1 and mostly("journeyman electrician", "apprentice") or pick { "roofer", "installer" },
      "license", i == 1 and "EJ-" .. random(100, 999) or false, "fall_trained", mostly("yes", "no"), "first_aid", i == 1 and "yes" or "no")
  end
end

local function design(seed, number_of, options)
  math.randomseed(seed, number_of)
  out, care = {}, cares[options and options.care] or pick(cares)
  local house = house_of(number_of, options or {})
  local least = house.wanted * (house.system == "micro" and 1.5 or 2.2) -- amperes, about
  house.main = least > 160 and device_for(2 * least) or pick { 100, 125, 150, 200 }
  house.bus = mostly(house.main <= 125 and least < 20 and 125 or math.max(225, 1.3 * house.main), house.main)
  house.large = math.max(60, device_for(1.4 * least))
  put_head(house)
  put_roof(house)
  put_array(house)
  local strings = strings_of(house)
  local inverters = put_strings(house, strings)
  local sources, panels, last_ones = put_circuits(house, strings, inverters)
  put_service(house)
  put_panels(house, panels, last_ones)
  put_safety(house)
  put_labels(house, sources, panels)
  put_papers(house)
  return table.concat(out, "\n") .. "\n"
end

-- ---- at the command line ------------------------------------------------------------------------------------------

local function refuse()
  io.stderr:write("generate.lua [--seed S] [--count N] [--from K] [--modules A[..B]] [--planes A[..B]] [--care K] [--out DIR]\n")
  os.exit(64)
end

local function options_of(words)
  local options = { seed = 1, count = 1, from = 1 }
  for i = 1, #words, 2 do
    local name, value = words[i]:match("^%-%-(%l+)$"), words[i + 1]
    if not name or not value then refuse() end
    if name == "out" then
      options.out = value
    elseif name == "modules" or name == "planes" then
      local low, high = value:match("^(%d+)%.%.(%d+)$")
      low, high = math.tointeger(low or value), math.tointeger(high or value)
      if not low or low < 1 or high < low or high > (name == "planes" and 12 or 2000) then refuse() end
      options[name] = { low, high }
    elseif name == "care" then
      options.care = math.tointeger(value)
      if not cares[options.care] then refuse() end
    elseif name == "seed" or name == "count" or name == "from" then
      options[name] = math.tointeger(value) or refuse()
    else
      refuse()
    end
  end
  return options
end

local function write(path, text)
  local file = assert(io.open(path, "wb"))
  assert(file:write(text))
  assert(file:close())
end

local function main(words)
  local options, list = options_of(words), {}
  local made = {}
  for number_of = options.from, options.from + options.count - 1 do
    local text = design(options.seed, number_of, options)
    if not options.out then
      assert(io.stdout:write(number_of > options.from and "...\n" or "", text))
    else
      local inner = ("%s/%03d"):format(options.out, (number_of - 1) // 1000)
      if not made[inner] then assert(os.execute("mkdir -p '" .. inner:gsub("'", "'\\''") .. "'")) end
      made[inner] = true
      list[#list + 1] = ("%s/design-%06d.yaml"):format(inner, number_of)
      write(list[#list], text)
    end
  end
  if options.out then write(options.out .. "/list", table.concat(list, "\n") .. (#list > 0 and "\n" or "")) end
end

if arg and arg[0] and arg[0]:find("generate%.lua$") then main(arg) end
return { design = design }
