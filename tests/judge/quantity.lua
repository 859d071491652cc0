-- Numbers with a dimension, as plain tables: the second judge's own arithmetic, units and comparison.
-- A dimension is the powers of metre, kilogram, second, ampere, kelvin and radian, joined; "T" is a point on a scale of
-- temperature. Values are kept in those units.
local quantity = {}

local NONE, POINT = "0 0 0 0 0 0", "T"
quantity.none, quantity.point = NONE, POINT

local dimensions = {
  LENGTH = "1 0 0 0 0 0", AREA = "2 0 0 0 0 0", VOLUME = "3 0 0 0 0 0", SECOND_MOMENT = "4 0 0 0 0 0",
  MASS = "0 1 0 0 0 0", TIME = "0 0 1 0 0 0", CURRENT = "0 0 0 1 0 0", TEMPERATURE = POINT,
  TEMPERATURE_DIFFERENCE = "0 0 0 0 1 0", ANGLE = "0 0 0 0 0 1", SPEED = "1 0 -1 0 0 0", FORCE = "1 1 -2 0 0 0",
  LINE_LOAD = "0 1 -2 0 0 0", PRESSURE = "-1 1 -2 0 0 0", WEIGHT_DENSITY = "-2 1 -2 0 0 0", MOMENT = "2 1 -2 0 0 0",
  VOLTAGE = "2 1 -3 -1 0 0", POWER = "2 1 -3 0 0 0", RESISTANCE = "2 1 -3 -2 0 0", LINE_RESISTANCE = "1 1 -3 -2 0 0",
  ENERGY = "2 1 -2 0 0 0", CHARGE = "0 0 1 1 0 0", FREQUENCY = "0 0 -1 0 0 0", PER_TEMPERATURE = "0 0 0 0 -1 0",
  VOLTAGE_PER_TEMPERATURE = "2 1 -3 -1 -1 0", CURRENT_PER_TEMPERATURE = "0 0 0 1 -1 0", PURE_NUMBER = NONE,
}
-- By the name a row of facts has (LENGTH) or a book writes (length, yes or no: nil).
function quantity.dimension(name) return dimensions[name:upper():gsub(" ", "_")] end

-- Inch, pound and standard gravity are exact by definition (24 FR 5348, 1959; 3rd CGPM, 1901).
local INCH, FOOT, POUND = 0.0254, 0.3048, 0.45359237
local LBF, DEGREE = POUND * 9.80665, math.pi / 180
local units = {}
local function of(name, rows)
  units[dimensions[name]] = units[dimensions[name]] or {}
  for unit, factor in pairs(rows) do units[dimensions[name]][unit] = factor end
end
of("PURE_NUMBER", { ["%"] = 0.01, [""] = 1 })
of("LENGTH", { ["in"] = INCH, ft = FOOT, yd = 3 * FOOT, mi = 5280 * FOOT, mm = 0.001, cm = 0.01, m = 1, km = 1000, mil = INCH / 1000 })
of("AREA", { ["ft²"] = FOOT ^ 2, ["in²"] = INCH ^ 2, ["m²"] = 1, ["cm²"] = 1e-4, ["mm²"] = 1e-6, ["sq ft"] = FOOT ^ 2, ["ft2"] = FOOT ^ 2 })
of("VOLUME", { ["in³"] = INCH ^ 3, ["ft³"] = FOOT ^ 3, ["m³"] = 1 })
of("SECOND_MOMENT", { ["in⁴"] = INCH ^ 4 })
of("MASS", { lb = POUND, kg = 1, g = 0.001, oz = POUND / 16, ton = 2000 * POUND })
of("TIME", { s = 1, min = 60, h = 3600, day = 86400, year = 365.25 * 86400, years = 365.25 * 86400 })
of("CURRENT", { A = 1, mA = 0.001, kA = 1000 })
of("TEMPERATURE_DIFFERENCE", { ["°C"] = 1, K = 1, ["°F"] = 5 / 9, ["Δ°C"] = 1, ["Δ°F"] = 5 / 9 })
of("ANGLE", { ["°"] = DEGREE, deg = DEGREE, rad = 1 })
of("SPEED", { mph = 5280 * FOOT / 3600, ["ft/s"] = FOOT, ["m/s"] = 1, ["km/h"] = 1 / 3.6 })
of("FORCE", { lbf = LBF, kip = 1000 * LBF, N = 1, kN = 1000 })
of("LINE_LOAD", { ["lbf/ft"] = LBF / FOOT, plf = LBF / FOOT, ["lbf/in"] = LBF / INCH, ["N/m"] = 1, ["kN/m"] = 1000 })
of("PRESSURE", { psf = LBF / FOOT ^ 2, psi = LBF / INCH ^ 2, ksi = 1000 * LBF / INCH ^ 2, Pa = 1, kPa = 1000, MPa = 1e6 })
of("WEIGHT_DENSITY", { pcf = LBF / FOOT ^ 3, ["kN/m³"] = 1000 })
of("MOMENT", { ["lbf·ft"] = LBF * FOOT, ["lbf·in"] = LBF * INCH, ["N·m"] = 1, Wh = 3600, kWh = 3.6e6, J = 1 })
of("VOLTAGE", { V = 1, mV = 0.001, kV = 1000 })
of("POWER", { W = 1, kW = 1000, MW = 1e6, VA = 1, kVA = 1000 })
of("RESISTANCE", { ["Ω"] = 1, ["mΩ"] = 0.001, ["kΩ"] = 1000 })
of("LINE_RESISTANCE", { ["Ω/kft"] = 1 / (1000 * FOOT), ["Ω/km"] = 0.001 })
of("CHARGE", { Ah = 3600 })
of("FREQUENCY", { Hz = 1 })
of("PER_TEMPERATURE", { ["%/°C"] = 0.01, ["%/K"] = 0.01, ["1/°C"] = 1, ["%/°F"] = 0.018 })
of("VOLTAGE_PER_TEMPERATURE", { ["V/°C"] = 1, ["mV/°C"] = 0.001 })
of("CURRENT_PER_TEMPERATURE", { ["A/°C"] = 1, ["mA/°C"] = 0.001 })
units[POINT] = { ["°C"] = true, ["°F"] = true, K = true }

-- A number in a unit, in the units of the dimension; nil: no such unit.
function quantity.from(number, unit, dimension)
  if dimension == POINT then
    if unit == "°C" then return number + 273.15 end
    if unit == "°F" then return (number + 459.67) * 5 / 9 end
    return unit == "K" and number or nil
  end
  local factor = units[dimension] and units[dimension][unit]
  return factor and number * factor
end

-- So many of a unit whose dimension nobody tells; °C is a difference then. nil: no such unit.
local dimension_with = {}
for dimension, known in pairs(units) do
  for unit in pairs(dimension ~= POINT and dimension ~= NONE and known or {}) do dimension_with[unit] = dimension end
end
function quantity.known(unit, number)
  local dimension = dimension_with[unit]
  return dimension and quantity.of(quantity.from(number, unit, dimension), dimension)
end

-- What a base unit of ours stands for: "m/s²" and the like, where no other name is known.
local base = { m = 1, kg = 2, s = 3, A = 4, K = 5, rad = 6 }
function quantity.spelled(unit)
  local plain = unit:gsub("[()]", ""):gsub("·", "*"):gsub("²", "2"):gsub("³", "3"):gsub("⁴", "4"):gsub("%^", "")
  local powers, sign = { 0, 0, 0, 0, 0, 0 }, 1
  for part, joint in (plain .. "*"):gmatch("([^*/]+)([*/])") do
    local name, power = part:match("^(%a+)(%d*)$")
    if not base[name] and part ~= "1" then return nil end
    if name then powers[base[name]] = sign * (math.tointeger(tonumber(power)) or 1) end
    if joint == "/" then sign = -1 end
  end
  return table.concat(powers, " ")
end

-- ---- arithmetic -----------------------------------------------------------------------------------------------------

local meta = {}
quantity.meta = meta
function quantity.is(value) return getmetatable(value) == meta end

local function finite(number)
  if number ~= number or number == math.huge or number == -math.huge then error("a number came out not finite", 0) end
  return number
end
quantity.finite = finite

-- A quantity, or the plain number that one without a dimension is.
function quantity.of(number, dimension)
  finite(number)
  if dimension == NONE then return number end
  if dimension == POINT and number < 0 then error("below absolute zero", 0) end
  return setmetatable({ number = number, dimension = dimension }, meta)
end

local function take(value)
  if quantity.is(value) then return value.number, value.dimension end
  if math.type(value) then return finite(value), NONE end
  error("one cannot calculate with a " .. type(value), 0)
end

local joined_before = {}
local function joined(a, b, sign)
  local key = a .. (sign > 0 and "*" or "/") .. b
  if joined_before[key] then return joined_before[key] end
  if a == POINT or b == POINT then error("a temperature cannot be multiplied", 0) end
  local powers, other = {}, b:gmatch("%S+")
  for power in a:gmatch("%S+") do powers[#powers + 1] = math.tointeger(power) + sign * math.tointeger(other()) end
  joined_before[key] = table.concat(powers, " ")
  return joined_before[key]
end

local DIFFERENCE = dimensions.TEMPERATURE_DIFFERENCE
function meta.__add(left, right)
  local a, of_a = take(left)
  local b, of_b = take(right)
  if of_a == POINT and of_b == DIFFERENCE or of_a == DIFFERENCE and of_b == POINT then return quantity.of(a + b, POINT) end
  if of_a ~= of_b or of_a == POINT then error("these cannot be added", 0) end
  return quantity.of(a + b, of_a)
end
function meta.__sub(left, right)
  local a, of_a = take(left)
  local b, of_b = take(right)
  if of_a == POINT and of_b == POINT then return quantity.of(a - b, DIFFERENCE) end
  if of_a == POINT and of_b == DIFFERENCE then return quantity.of(a - b, POINT) end
  if of_a ~= of_b then error("these cannot be subtracted", 0) end
  return quantity.of(a - b, of_a)
end
function meta.__mul(left, right)
  local a, of_a = take(left)
  local b, of_b = take(right)
  return quantity.of(a * b, joined(of_a, of_b, 1))
end
function meta.__div(left, right)
  local a, of_a = take(left)
  local b, of_b = take(right)
  if b == 0 then error("the divisor is zero", 0) end
  return quantity.of(a / b, joined(of_a, of_b, -1))
end
function meta.__unm(value)
  local a, of_a = take(value)
  if of_a == POINT then error("a temperature cannot be turned round", 0) end
  return quantity.of(-a, of_a)
end
function meta.__concat() error("a quantity cannot be joined", 0) end
function meta.__index(_, name) error("a quantity has no " .. tostring(name), 0) end

function quantity.root(value)
  local number, dimension = take(value)
  if number < 0 then error("no root of a negative number", 0) end
  local halves = {}
  if dimension == POINT then error("a temperature has no root", 0) end
  for power in dimension:gmatch("%S+") do
    local half = math.tointeger(power) / 2
    if half ~= half // 1 then error("this has no square root", 0) end
    halves[#halves + 1] = math.tointeger(half)
  end
  return quantity.of(math.sqrt(number), table.concat(halves, " "))
end

-- -1, 0 or 1; the same within a billionth of the larger of the two.
function quantity.order_of(a, b)
  if a == b or math.abs(a - b) <= 1e-9 * math.max(math.abs(a), math.abs(b)) then return 0 end
  return a < b and -1 or 1
end
function quantity.order(left, right)
  local a, of_a = take(left)
  local b, of_b = take(right)
  if of_a ~= of_b then error("these cannot be compared", 0) end
  return quantity.order_of(a, b)
end
function meta.__lt(a, b) return quantity.order(a, b) < 0 end
function meta.__le(a, b) return quantity.order(a, b) <= 0 end

-- ---- reading ----------------------------------------------------------------------------------------------------

local function number_of(text)
  local sign, rest = text:match("^([-+]?)(.*)$")
  local factor = sign == "-" and -1 or 1
  local whole, above, below = rest:match("^(%d+)[- ](%d+)/(%d+)$")
  if whole then return factor * (tonumber(whole) + tonumber(above) / tonumber(below)) end
  above, below = rest:match("^([%d.]+)[/:]([%d.]+)$")
  if above then return factor * tonumber(above) / tonumber(below), tonumber(above), tonumber(below) end
  return rest:match("^%d[%d.eE+-]*$") and tonumber(rest) and factor * tonumber(rest)
end

-- "18 in", "1 ft 6 in", "5/12", "-0.27 %/°C", as a number in the dimension's units; nil: not understood.
function quantity.read(text, dimension)
  local whole, rise, run = number_of(text)
  if whole and dimension == dimensions.ANGLE and rise then return math.atan(rise, run) end
  if whole then return dimension == NONE and whole or nil end
  local feet, inches = text:match("^(%S+) ?ft (%S+) ?in$")
  if feet then return number_of(feet) * FOOT + number_of(inches) * INCH end
  local number, unit = text:match("^([-+]?%d[%d./-]*%d) *([^%d%s].*)$")
  if not number then number, unit = text:match("^([-+]?%d[%d.e+-]*) *([^%d%s].*)$") end
  if not number then number, unit = text:match("^([-+]?%d+ %d+/%d+) *([^%d%s].*)$") end
  local value = number and number_of(number)
  return value and quantity.from(value, unit, dimension)
end

-- The units that a rule knows by name.
quantity.words = {}
for word, row in pairs({
  inch = "in", ft = "ft", yd = "yd", mi = "mi", mm = "mm", cm = "cm", m = "m", km = "km", sq_in = "in²", sq_ft = "ft²", sq_m = "m²",
  lb = "lb", kg = "kg", s = "s", min = "min", h = "h", day = "day", year = "year", mA = "mA", A = "A", kA = "kA", mV = "mV", V = "V",
  kV = "kV", W = "W", kW = "kW", VA = "VA", kVA = "kVA", ohm = "Ω", Wh = "Wh", kWh = "kWh", lbf = "lbf", kip = "kip", N = "N", kN = "kN",
  plf = "lbf/ft", psf = "psf", psi = "psi", ksi = "ksi", Pa = "Pa", kPa = "kPa", pcf = "pcf", mph = "mph", deg = "°",
}) do quantity.words[word] = assert(quantity.known(row, 1), word) end
quantity.words.delta_C = quantity.of(1, DIFFERENCE)
quantity.words.delta_F = quantity.of(5 / 9, DIFFERENCE)

return quantity
