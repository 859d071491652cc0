---@type plumbrule.Rule
return {
  title = "Fire class of the covering",
  cite = "R902.1",
  about = "roof_plane",
  applies = function(plane, book, design)
    return plane.modules:count() > 0 and not (book.roof_fire_class:is("unrated") and design.roof.fire_class:is("unrated"))
  end,
  check = function(plane, book, design)
    -- The town's map or the place of the house may ask for more than the other.
    local asked, told, class = book.roof_fire_class, design.roof.fire_class, plane.covering_fire_class
    if asked:is("A") or told:is("A") then
      shall.be("The covering is of class A", class:is("A"))
    elseif asked:is("B") or told:is("B") then
      shall.be("The covering is of class B or better", class:is("A", "B"))
    else
      shall.be("The covering is of class C or better", class:is("A", "B", "C"))
    end
  end,
  remedy = "Renew the covering with one of the class that is asked for, before the array goes on.",
}
