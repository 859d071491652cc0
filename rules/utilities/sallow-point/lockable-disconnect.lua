-- Is a source on a breaker of this panel, or of one that it feeds? No design has a chain of more than eight.
local function is_behind(design, thing, panel, depth)
  for _, other in ipairs(design.panels) do
    if same(other, panel) and not panel.status:is("removed") and depth < 8 then
      for _, bus in ipairs(panel.busbars) do
        for _, breaker in ipairs(bus.breakers) do
          local serves = not breaker.status:is("removed") and breaker.serves or nil
          if serves and same(serves:kind_of(), thing:kind_of()) and same(serves, thing) then return true end
          if serves and same(serves:kind_of(), "panel") and is_behind(design, thing, serves, depth + 1) then return true end
        end
      end
    end
  end
  return false
end

local function opens(design, disconnect, thing)
  local of = disconnect.of
  if not of then return false end
  if same(of:kind_of(), thing:kind_of()) then return same(of, thing) end
  if same(of:kind_of(), "panel") then return is_behind(design, thing, of, 0) end
  return same(of:kind_of(), "string") and same(thing:kind_of(), "inverter") and same(of.inverter, thing)
end

---@type plumbrule.Rule
return {
  title = "Disconnect in the utility's reach",
  cite = "Sallow Point sheet 5",
  about = "design",
  applies = function(design) return design.modules:count() > 0 end,
  check = function(design, book)
    local switches = 0
    for _, disconnect in ipairs(design.disconnects) do
      if disconnect.role:is("utility") then
        switches = switches + 1
        shall.be("It can be locked open", disconnect.lockable)
        shall.be("Its open contacts are visible", disconnect.visible_open)
        shall.be("It is readily accessible", disconnect.readily_accessible)
        shall.be("It is outside", disconnect.location:is("outside wall", "ground"))
        shall.not_exceed("Its distance from the meter", disconnect.distance_to_meter, book.utility_disconnect_distance)
      end
    end
    shall.be_more_than("Disconnects for the utility", switches, 0)
    local function is_opened(thing)
      for _, disconnect in ipairs(design.disconnects) do
        if disconnect.role:is("utility") and opens(design, disconnect, thing) then return true end
      end
      return false
    end
    if switches > 0 then
      for _, inverter in ipairs(design.inverters) do
        if inverter.status:is("new") then shall.be(format("One of them opens %s", inverter:called()), is_opened(inverter)) end
      end
      for _, branch in ipairs(design.branches) do
        shall.be(format("One of them opens %s", branch:called()), is_opened(branch))
      end
    end
  end,
  remedy = "Put a lockable switch with visible contacts outside, beside the meter.",
}
