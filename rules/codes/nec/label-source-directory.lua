-- The source's disconnect is the breaker in the service panel: one directory serves for both.
local function disconnects_in_the_service_panel(design)
  if design.interconnection.side:is("supply side") then return false end
  for _, disconnect in ipairs(design.disconnects) do
    if disconnect.role:is("PV system") then
      local is_there = false
      for _, panel in ipairs(design.panels) do
        if not panel.status:is("removed") and panel.is_service_panel and same(panel.location, disconnect.location) then
          for _, bus in ipairs(panel.busbars) do
            for _, breaker in ipairs(bus.breakers) do
              local serves, of = breaker.serves, disconnect.of
              if not breaker.status:is("removed") and serves and of and same(serves:kind_of(), of:kind_of()) and same(serves, of)
                and same(breaker.rating, disconnect.rating) then
                is_there = true
              end
            end
          end
        end
      end
      if not is_there then return false end
    end
  end
  return true
end

-- A word for it and a digit: HOTEL has the first alone.
local function gives_a_number(text)
  local says, digits = false, 0
  for _, word in ipairs({ "TEL", "PHONE", "CALL", "CONTACT", "EMERGENCY" }) do says = says or string.contains(text, word) end
  for digit = 0, 9 do
    if string.contains(text, format("%d", digit)) then digits = digits + 1 end
  end
  return says and digits > 0
end

---@type plumbrule.Rule
-- 2017 asks for it at the disconnects of the sources, too: published by a trade page on labels of 2017. Telephone
-- numbers from 2023, of those who look after the system from elsewhere.
return {
  title = "Label: directory of sources",
  cite = { ["2017"] = "705.10, 690.56(B)", ["2020"] = "705.10", ["2023"] = "705.10" },
  about = "design",
  applies = function(design) return design.modules:count() > 0 end,
  check = function(design, book)
    local at_service, at_source = 0, 0
    for _, label in ipairs(design.labels) do
      if label.kind:is("source directory") then
        if label.place:is("service equipment", "meter", "main panel") then
          at_service = at_service + 1
        elseif label.place:is("PV disconnect", "AC disconnect", "storage disconnect") then
          at_source = at_source + 1
        end
        if same(book:edition("nec"), "2023") then
          shall.be("It gives a telephone number for emergencies (TEL, PHONE, CALL …)", gives_a_number(string.upper(label.text)))
        end
      end
    end
    shall.be_more_than("Directories at the service", at_service, 0)
    if same(book:edition("nec"), "2017") and not disconnects_in_the_service_panel(design) then
      shall.be_more_than("Directories at the disconnects of the sources (2017)", at_source, 0)
    end
  end,
  remedy = "Put a directory at the service that tells where each source is disconnected, in 2017 one at the sources' disconnects, too; from 2023 with a telephone number.",
}
