---@type plumbrule.Rule
-- From memory, the exceptions, too (control circuits, neutrals of old work under an engineer), which are left out.
return {
  title = "Conductors in parallel",
  cite = { ["2017"] = "310.10(H)", ["2020"] = "310.10(G)", ["2023"] = "310.10(G)" },
  about = "circuit",
  applies = function(circuit) return circuit.parallel_sets > 1 and not circuit.status:is("removed") end,
  check = function(circuit, book)
    shall.be_at_least("Section of each conductor in kcmil (1/0 AWG is the least)", calc.conductor_area { size = circuit.conductor_size }, book.parallel_least)
  end,
  remedy = "Pull one conductor per pole, or several of 1/0 AWG or larger.",
}
