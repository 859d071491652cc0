local function is_in(breaker, panel)
  for _, bus in ipairs(panel.busbars) do
    for _, one in ipairs(bus.breakers) do
      if same(one, breaker) then return true end
    end
  end
  return false
end

---@type plumbrule.Rule
-- The circuit and the panel tell of the same breaker: where they differ, one of the two is wrong. A circuit told to have
-- another device, and that ends at a panel, is fed by that panel's breaker from the utility's side.
return {
  title = "Breaker in the panel and on the circuit",
  cite = "240.4",
  about = "circuit",
  applies = function(circuit)
    local is_single = circuit.role:is("inverter output", "microinverter branch") or circuit.role:is("combined branches") and circuit.carries:count() < 2
    return not circuit.status:is("removed") and is_single
      and (circuit.ocpd:is("circuit breaker") or not circuit.ocpd:is("none") and circuit.to and same(circuit.to:kind_of(), "panel") or false)
  end,
  check = function(circuit, book)
    local breakers, panel = 0, nil
    local is_breaker = circuit.ocpd:is("circuit breaker")
    if circuit.to and same(circuit.to:kind_of(), "panel") then panel = circuit.to end
    for _, carried in ipairs(circuit.carries) do
      if same(carried:kind_of(), "inverter") or same(carried:kind_of(), "branch") then
        for _, breaker in ipairs(carried.breakers) do
          if not breaker.status:is("removed") then
            breakers = breakers + 1
            if panel then
              shall.be(format("Its breaker %s is in panel %s, where the circuit ends", breaker:called(), panel:called()), is_in(breaker, panel))
            end
            if is_breaker then
              shall.be_equal("Rating on the circuit, against the breaker in the panel", circuit.ocpd_rating, breaker.rating)
            else
              shall.not_exceed(format("Its breaker %s, against the largest that protects the conductors", breaker:called()), breaker.rating, circuit:largest_ocpd(tonumber(book:edition("nec"))))
            end
          end
        end
      end
    end
    if breakers < 1 and is_breaker then
      review("A breaker is told to protect this circuit, and no panel shows it: the designer tells which breaker of which panel it is")
    elseif breakers < 1 then
      review("It ends at a panel that shows no breaker for it: the designer tells what is there between its conductors and the bus")
    end
  end,
  remedy = "Tell the same rating on the circuit and in the panel.",
}
