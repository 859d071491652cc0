---@type plumbrule.Rule
-- 2020 let a listed hazard control system (UL 3741) stand for the 80 V; 2023 dropped the array without
-- exposed metal (2023 from memory) and spares open structures that stand apart (690.12 Exception 2).
return {
  title = "Rapid shutdown",
  cite = { ["2017"] = "690.12(A), (B)", ["2020"] = "690.12(A), (B)", ["2023"] = "690.12(A), (B)" },
  about = "rapid_shutdown",
  applies = function(_, book, design)
    if design.modules:count() < 1 then return false end
    if not same(book:edition("nec"), "2023") then return true end
    for _, module in ipairs(design.modules) do
      if not module.plane.structure:is("carport", "shade structure") then return true end
    end
    return false
  end,
  check = function(shutdown, book)
    local edition = tonumber(book:edition("nec"))
    shall.be("The conductors on the building are controlled", not shutdown.method:is("none"))
    shall.not_exceed("Distance outside the array at which they stay live", shutdown.boundary, book.shutdown_boundary)
    shall.not_exceed("Distance inside the building at which they stay live", shutdown.length_inside_building, book.shutdown_inside_length)
    shall.not_exceed("Voltage outside the boundary", shutdown.voltage_outside, book.shutdown_voltage_outside)
    shall.not_exceed("Time to get there", shutdown.time, book.shutdown_time)
    if shutdown.method:is("hazard control system") then
      if edition >= 2020 then
        shall.be("The hazard control system is listed to UL 3741", shutdown.listings:has("UL 3741"))
      else
        review("2017 asks for an array listed or field labeled for rapid shutdown: its label is to be looked at")
      end
    elseif shutdown.method:is("non-exposed array") then
      shall.be("This edition knows the array without exposed metal", edition < 2023)
      review("No conductor or grounded metal within 8 ft of the array is exposed: to be looked at")
    else
      shall.not_exceed("Voltage inside the boundary", shutdown.voltage_inside, book.shutdown_voltage_inside)
    end
  end,
  remedy = "Use listed module-level devices, converters, microinverters or a hazard control system.",
}
