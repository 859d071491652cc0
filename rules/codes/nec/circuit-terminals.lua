---@type plumbrule.Rule
-- The first of three separate tests: 125 % of the current, nothing corrected.
return {
  title = "Conductors at their terminals",
  cite = { ["2017"] = "110.14(C), 690.8(B)(1)", ["2020"] = "110.14(C), 690.8(B)(1), 705.28(B)", ["2023"] = "110.14(C), 690.8(B)(1), 705.28(B)" },
  about = "circuit",
  applies = function(circuit)
    return not circuit.status:is("removed")
      and circuit.role:is("PV source", "PV output", "converter output", "inverter output", "microinverter branch", "combined branches", "supply-side")
  end,
  check = function(circuit, book)
    shall.be_at_least(format("Ampacity in the column of the terminals, against %s %% of the current", 100 * book.continuous_factor),
      circuit:terminal_ampacity(), book.continuous_factor * circuit:design_current())
  end,
  remedy = "Use a larger conductor, or terminals marked for a higher temperature.",
}
