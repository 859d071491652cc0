---@type plumbrule.Rule
-- The adjustment for many conductors rests on a count that the design tells: here it is held against what the
-- circuit itself brings, and against how many conductors are in the raceway at all. Of a DC circuit two of at
-- the most three do not ground; of an AC circuit two of at the most four do neither ground nor serve as neutral.
return {
  title = "Count of the current-carrying conductors",
  cite = { ["2017"] = "310.15(B)(3)(a), (5)", ["2020"] = "310.15(C)(1), (E), (F)", ["2023"] = "310.15(C)(1), (E), (F)" },
  about = "circuit",
  applies = function(circuit) return not circuit.status:is("removed") end,
  check = function(circuit)
    local told, all, own = circuit.current_carrying_conductors, circuit.conductors, 2
    local is_dc = circuit.role:is("PV source", "PV output", "converter output")
    if circuit.role:is("PV source", "converter output") then own = 2 * largest(circuit.carries:count(), 1) end
    shall.be_at_least("Current-carrying conductors, against those of this circuit alone", told, own * circuit.parallel_sets)
    if circuit.raceway_of or circuit.raceway_guests:count() > 0 then
      shall.be_at_least("Current-carrying conductors, against those of all circuits that share the raceway", told, circuit:carrying_conductors())
    end
    shall.be_at_least("All conductors in the raceway, against those that carry current", all, told)
    -- The neutral is in it, too, whether it counts or not. A fill that rests on fewer would be too small.
    if not is_dc then
      local neutrals = 0
      if not circuit.neutral:is("none") then neutrals = circuit.parallel_sets end
      shall.be_at_least("All conductors in the raceway, against those of this circuit and its neutral", all, own * circuit.parallel_sets + neutrals)
    end
    if is_dc then
      shall.be_at_least("Current-carrying conductors, against two of every three in the raceway", told, all * 2 / 3)
    else
      shall.be_at_least("Current-carrying conductors, against half of all in the raceway", told, all / 2)
    end
  end,
  remedy = "Count every ungrounded conductor in the raceway, those of other circuits too, and neutrals that carry more than the difference.",
}
