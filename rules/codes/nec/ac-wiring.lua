---@type plumbrule.Rule
-- From memory. Single conductors in the open are for the DC side; on the AC side a cable or a raceway holds them. The
-- cable of microinverters is part of their listing. Of service conductors the utility has its own rules.
return {
  title = "AC conductors in a cable or raceway",
  cite = { ["2017"] = "300.3(A), 310.10(D), 690.31(A)", ["2020"] = "300.3(A), 310.10(D), 690.31(A)", ["2023"] = "300.3(A), 310.10(D), 690.31(A)" },
  about = "circuit",
  applies = function(circuit)
    return not circuit.status:is("removed")
      and circuit.role:is("inverter output", "microinverter branch", "combined branches", "supply-side", "feeder", "feeder tap")
      and circuit.wiring_method:is("free air", "cable tray", "trunk cable", "UF cable")
  end,
  check = function(circuit)
    if circuit.wiring_method:is("trunk cable") then
      shall.be("Trunk cable is between microinverters", circuit.role:is("microinverter branch"))
      if circuit.inside_building then
        review("The cable between microinverters is told to run inside the building, too: the inspector looks whether its listing and its maker let it")
      end
    end
    if circuit.wiring_method:is("trunk cable", "free air", "cable tray") then
      shall.be("The conductors are in a cable", circuit.insulation:is("trunk cable", "TC-ER"))
    end
    if not circuit.insulation:is("trunk cable") and circuit.in_sunlight then
      shall.be("Marked sunlight resistant", circuit.sunlight_resistant)
    end
  end,
  remedy = "Run the conductors in a raceway, or use a cable that is made for the open.",
}
