---@type plumbrule.Rule
return {
  title = "Fire class of racking and modules",
  cite = "R902.4",
  about = "racking",
  check = function(racking, book, design)
    local model = racking.model
    shall.be("The racking is listed to UL 2703", model.listings:has("UL 2703"))
    local last -- one test for each run of like modules
    for _, module in ipairs(design.modules) do
      if not last or not same(last.model, module.model) or not same(last.plane, module.plane) then
        shall.be(format("The racking's fire class holds for %s", module.model.fire_type), model.fire_types:has(tostring(module.model.fire_type)))
        shall.be_at_least(format("Slope of %s", module.plane:called()), module.plane.slope, model.fire_minimum_slope, deg)
        last = module
      end
    end
    shall.be("The system has a fire class", not racking.system_fire_class:is("unrated"))
    shall.be("The racking's listing has a fire class", not model.fire_class:is("unrated"))
    -- The town's map or the place of the house may ask for more than the other; no system is better than its listing.
    local asked, told = book.roof_fire_class, design.roof.fire_class
    if asked:is("A") or told:is("A") then
      shall.be("Modules and racking together are of class A", racking.system_fire_class:is("A"))
      shall.be("The racking's listing is for class A", model.fire_class:is("A"))
    elseif asked:is("B") or told:is("B") then
      shall.be("Modules and racking together are of class B or better", racking.system_fire_class:is("A", "B"))
      shall.be("The racking's listing is for class B or better", model.fire_class:is("A", "B"))
    elseif asked:is("C") or told:is("C") then
      shall.be("Modules and racking together are of class C or better", racking.system_fire_class:is("A", "B", "C"))
      shall.be("The racking's listing is for class C or better", model.fire_class:is("A", "B", "C"))
    end
  end,
  remedy = "Use racking whose listing gives the class that is asked for, and modules of a type that it names.",
}
